/** The chart has no such measurement. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { audienceName, sizesOf } from './measures.ts';
import { quoted, text } from './phrases.ts';

export const bodyMeasureMissing: FindingKind = {
  code: 'body-measure-missing',
  severity: 'error',
  title: 'The chart has no such measurement',
  reason: 'Each chart measures its own parts of the body.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `the chart for ${audienceName(data)} does not measure "${text(data, 'measure').replaceAll('_', ' ')}", so ${quoted(data, 'line')} has no value for ${sizesOf(facts)}; choose another measurement, or type it`;
  },
  example: null,
  sample: { line: 'hip', field: '', size: '6mo', measure: 'hip', audience: 'hand', chart: 'M' },
};
