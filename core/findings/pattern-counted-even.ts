/** Work "in pattern" within a row is counted stitch for stitch. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';

export const patternCountedEven: FindingKind = {
  code: 'pattern-counted-even',
  severity: 'note',
  title: 'Work in pattern is counted one stitch for each',
  reason:
    'Inside a row of shaping "patt to last 4 sts" leaves the stitches to the maker. They can be counted only if the pattern there makes as many as it takes.',
  message: (_, voice) =>
    `"${voice.words}" is counted as one st into each; where the pattern there makes more or fewer, write the row out`,
  example: `Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)
Row 2: Ch 1, sc2tog, patt to last 2 sts, sc2tog, turn. (18 sc)`,
};
