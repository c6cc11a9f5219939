/** A number of stitches or rows is below 0. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { amount, formulaPlace, perSize } from './phrases.ts';

export const countNegative: FindingKind = {
  code: 'count-negative',
  severity: 'error',
  title: 'A number of stitches or rows is below 0',
  reason: 'Fewer than none cannot be worked.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${formulaPlace(data)} comes to ${amount(data, 'value')}, and fewer than 0 cannot be worked`,
    ),
  example: null,
  sample: { figure: 'back stitches − 80', valueDimension: 'count', value: -14 },
};
