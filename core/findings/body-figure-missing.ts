/** The chart has no figure for a size. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { audienceName, sizesOf } from './measures.ts';
import { quoted, text } from './phrases.ts';

export const bodyFigureMissing: FindingKind = {
  code: 'body-figure-missing',
  severity: 'error',
  title: 'The chart has no figure for a size',
  reason: 'Published charts have gaps; none is filled by guessing.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `the chart for ${audienceName(data)} gives no "${text(data, 'measure').replaceAll('_', ' ')}" for ${sizesOf(facts)}, so ${quoted(data, 'line')} has no value there; type it`;
  },
  example: null,
  sample: { line: 'chest', field: '', size: '5X', measure: 'chest', audience: 'man', chart: '5X' },
};
