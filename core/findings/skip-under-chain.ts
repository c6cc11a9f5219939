/** A stitch missed behind the turning chain is the one under it. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';

export const skipUnderChain: FindingKind = {
  code: 'skip-under-chain',
  severity: 'note',
  title: 'The stitch skipped at the start is the one under the turning chain',
  reason:
    'Older patterns write "3 ch, miss 1 dc" for the stitch that the chain itself stands on; others mean one more. Only one of them comes out even.',
  message: (_, voice) =>
    `"${voice.words}" is taken to be the st that the turning chain stands on, since otherwise the row would not come out, or would lose a st by the way; "skip first st" would say it`,
  example: `Ch 14.
Row 1: Sc in 2nd ch from hook and in each ch across. (13 sc)
Row 2: Ch 3, sk 1 sc, dc in next 3 sc, *ch 1, sk 1 sc, dc in next 3 sc; rep from * to last sc, dc in last sc.`,
};
