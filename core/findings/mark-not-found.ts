/** A mark that is referred to is not there. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted } from './phrases.ts';

export const markNotFound: FindingKind = {
  code: 'mark-not-found',
  severity: 'error',
  title: 'A mark that is referred to is not there',
  reason: '"Ending last rep at **" needs that sign inside the repeat.',
  message: (facts) =>
    `${quoted(facts[0]!.fact.data, 'sign')} is referred to, but it does not stand in this repeat; put it where the last repeat is to end`,
  example: `Ch 14.
Row 1: Sc in 2nd ch from hook and in each ch across.
Row 2: Ch 1, sc in first st, *ch 2, sk 2 sts, sc in next st, sc in next st; rep from * across, ending last rep at **.`,
};
