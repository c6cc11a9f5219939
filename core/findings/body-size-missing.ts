/** A size is not in the chart. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { sizesOf } from './measures.ts';
import { quoted, text } from './phrases.ts';

export const bodySizeMissing: FindingKind = {
  code: 'body-size-missing',
  severity: 'error',
  title: 'A size is not in the chart',
  reason: "Body measurements come from a chart by the size's name in it.",
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const chart = text(data, 'chart');
    return `${quoted(data, 'line')} has no measurement for ${sizesOf(facts)}: ${chart === '' ? 'the size is not joined to a size of the chart' : `the chart has no size "${chart}"`}; choose a chart size, or type the measurement`;
  },
  example: null,
  sample: { line: 'bust', field: '', size: 'M', measure: 'bust', audience: 'woman', chart: null },
};
