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
Rows 2-20000: Ch 1, sc in each st across.
Row 20001: Ch 1, sc in each st across.`,
};
