/** A length to fit is 0 or below. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace, length, perSize } from './phrases.ts';

export const fitNotPositive: FindingKind = {
  code: 'fit-not-positive',
  severity: 'error',
  title: 'A length to fit is 0 or below',
  reason: 'There is nothing to work.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) => `${formulaPlace(data)} comes to ${length(data, 'asked')}; a length above 0 is needed`,
    ),
  example: null,
  sample: {
    line: 'back stitches',
    field: 'length',
    asked: '−5 cm',
    askedIn: '−2 in',
    askedCm: -5,
    limit: 20000,
  },
};
