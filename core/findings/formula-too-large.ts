/** A formula comes to a number that is no measurement. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace } from './phrases.ts';

export const formulaTooLarge: FindingKind = {
  code: 'formula-too-large',
  severity: 'error',
  title: 'A formula comes to a number that is no measurement',
  reason: 'A number of so many digits is a slip of the keyboard.',
  message: (facts) =>
    `${formulaPlace(facts[0]!.fact.data)} comes to a number larger or finer than any measurement; is one mistyped?`,
  example: null,
  sample: { line: 'cuff stitches', field: 'formula' },
};
