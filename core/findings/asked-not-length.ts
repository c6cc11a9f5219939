/** A line is fitted to something that is no length. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { amount, formulaPlace, perSize } from './phrases.ts';

export const askedNotLength: FindingKind = {
  code: 'asked-not-length',
  severity: 'error',
  title: 'A line is fitted to something that is no length',
  reason: 'Stitches and rows are fitted to a width or a height.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${formulaPlace(data)} comes to ${amount(data, 'value')}, but stitches and rows are fitted to a length; give it in cm or in`,
    ),
  example: null,
  sample: { line: 'back stitches', field: 'length', valueDimension: 'count', value: 48 },
};
