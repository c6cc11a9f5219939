/** A number is larger than any pattern needs. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { number, quoted } from './phrases.ts';

export const numberTooLarge: FindingKind = {
  code: 'number-too-large',
  severity: 'error',
  title: 'A number is larger than any pattern needs',
  reason: 'A number of that size is a slip of the keyboard; it is taken as the largest that can be worked.',
  message: (facts) =>
    `${quoted(facts[0]!.fact.data, 'words')} is more than any row needs, so it is taken as ${number(facts[0]!.fact.data, 'limit')}; is it mistyped?`,
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across.
Row 2: Ch 1, sc in next 99999999 sts.`,
};
