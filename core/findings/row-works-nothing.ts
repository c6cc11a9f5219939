/** A numbered row has no work in it. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';

export const rowWorksNothing: FindingKind = {
  code: 'row-works-nothing',
  severity: 'warning',
  title: 'A numbered row works no stitch',
  reason:
    'A row that stands in the text without work makes every number after it one too high, and leaves the reader looking for what has been lost.',
  message: () =>
    'this row works no stitch; write what is worked in it, or take it out and let the rows after it move up by one',
  example: `Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Row 2:`,
};
