/** A gauge lacks a number. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted, text } from './phrases.ts';

export const gaugeIncomplete: FindingKind = {
  code: 'gauge-incomplete',
  severity: 'error',
  title: 'A gauge lacks a number',
  reason: "Widths need the gauge's stitches, lengths its rows.",
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    return `the ${voice.gauge} ${text(data, 'gauge') === '' ? '' : `in ${quoted(data, 'gauge')} `}has no number of ${text(data, 'missing')}, so ${quoted(data, 'line')} has no value; measure a swatch and enter it`;
  },
  example: null,
  sample: { line: 'back rows', field: 'length', gauge: 'half double crochet', missing: 'rows' },
};
