/** A length stands where a number is needed. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { amount, formulaPlace, perSize } from './phrases.ts';

export const countIsLength: FindingKind = {
  code: 'count-is-length',
  severity: 'error',
  title: 'A length stands where a number is needed',
  reason: 'Stitches and rows are counted.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${formulaPlace(data)} comes to ${amount(data, 'value')}, a length, where a number of stitches or rows is needed; name a stitches or rows line`,
    ),
  example: null,
  sample: { line: 'sleeve shaping', field: 'start', value: '30 cm', valueIn: '11¾ in', valueCm: 30 },
};
