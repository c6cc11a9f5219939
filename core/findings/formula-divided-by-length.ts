/** A formula divides a number by a length. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace } from './phrases.ts';

export const formulaDividedByLength: FindingKind = {
  code: 'formula-divided-by-length',
  severity: 'error',
  title: 'A formula divides a number by a length',
  reason: 'Only a length can be divided by a length.',
  message: (facts) =>
    `${formulaPlace(facts[0]!.fact.data)} divides something that is not a length by a length; divide by a plain number, or make both sides lengths`,
  example: null,
  sample: { line: 'cuff stitches', field: 'formula' },
};
