/** A length takes more stitches or rows than any piece has. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace, length, number, perSize } from './phrases.ts';

export const fitTooMany: FindingKind = {
  code: 'fit-too-many',
  severity: 'error',
  title: 'A length takes more stitches or rows than any piece has',
  reason: 'Such a length is a slip of the keyboard.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${formulaPlace(data)} comes to ${length(data, 'asked')}, which would take more than ${number(data, 'limit')} stitches or rows; is a number or a unit mistyped?`,
    ),
  example: null,
  sample: {
    line: 'back stitches',
    field: 'length',
    asked: '900000 cm',
    askedIn: '354330.75 in',
    askedCm: 900000,
    limit: 20000,
  },
};
