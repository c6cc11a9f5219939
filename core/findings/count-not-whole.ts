/** A number of stitches or rows is not whole. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { amount, formulaPlace, perSize } from './phrases.ts';

export const countNotWhole: FindingKind = {
  code: 'count-not-whole',
  severity: 'error',
  title: 'A number of stitches or rows is not whole',
  reason: 'Half a stitch cannot be worked.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${formulaPlace(data)} comes to ${amount(data, 'value')}, but stitches and rows are whole; add "rounded to 1" or choose numbers that divide`,
    ),
  example: null,
  sample: { figure: 'back stitches ÷ 2', valueDimension: 'count', value: 30.5 },
};
