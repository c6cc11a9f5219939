/** A row worked again names stitches that are no longer there. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';

export const namesNotFollowed: FindingKind = {
  code: 'names-not-followed',
  severity: 'note',
  title: 'A repeated row names the stitches as they stood at first',
  reason:
    'A row written over plain stitches says "in next sc"; worked again over a pattern row, another stitch may stand there. Makers go on stitch by stitch.',
  message: (_, voice) =>
    `worked again at "${voice.words}", the row names stitches that do not stand there; each is worked into the next st, and "in next st" would be right every time`,
  example: `Ch 10.
Row 1: Sc in 2nd ch from hook and in each ch across. (9 sc)
Row 2: Ch 1, sc in first sc, *dc in next sc, sc in next sc; rep from * across.
Row 3: Ch 3 (counts as dc), *sc in next dc, dc in next sc; rep from * across.
Rows 4-7: Rep Rows 2 and 3.`,
};
