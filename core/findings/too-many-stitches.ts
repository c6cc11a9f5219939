/** More stitches than any row has. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';

export const tooManyStitches: FindingKind = {
  code: 'too-many-stitches',
  severity: 'error',
  title: 'More stitches than any row has',
  reason: 'A row of more stitches than could be made is a slip of the keyboard; it is not worked further.',
  message: () =>
    'this makes more stitches than any row could have, so the row was not worked to its end; is a number mistyped?',
  example: `Ch 900000.
Row 1: Sc in 2nd ch from hook and in each ch across.`,
};
