/** A formula divides by 0. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace, perSize } from './phrases.ts';

export const formulaDividedByZero: FindingKind = {
  code: 'formula-divided-by-zero',
  severity: 'error',
  title: 'A formula divides by 0',
  reason: 'Nothing can be divided by 0, or rounded to steps of 0.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) => `${formulaPlace(data)} divides by 0, or rounds to 0, so it has no value`,
    ),
  example: null,
  sample: { line: 'cuff stitches', field: 'formula' },
};
