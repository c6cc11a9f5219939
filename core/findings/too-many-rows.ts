/** More rows than any piece has. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { number } from './phrases.ts';

export const tooManyRows: FindingKind = {
  code: 'too-many-rows',
  severity: 'error',
  title: 'More rows than any piece has',
  reason: 'A piece of more rows than could be made is a slip of the keyboard; it is not worked further.',
  message: (facts) =>
    `the piece has more than ${number(facts[0]!.fact.data, 'limit')} rows by here and was not worked further; is a number mistyped?`,
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across.
Row 2: Ch 1, sc in first st, sk 1 st, sc in next st, leave rem sts unworked.
Rows 3-90000: Ch 1, 2 sc in each st across.`,
};
