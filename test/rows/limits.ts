/**
 * Rows of published styles that the program does not follow yet, each with what a maker counts. A test holds
 * that they still disagree: one that comes right moves to `cases`.
 */
import { unfollowed } from './cases/wardrobe.ts';
import { lines, type RowCase } from './types.ts';

export const limits: readonly RowCase[] = [
  ...unfollowed,
  {
    name: 'flower: second layer behind the petals',
    terms: 'us',
    text: lines(
      'Ch 6, join with sl st to form ring.',
      'Rnd 1: Ch 1, (sc in ring, ch 3) 6 times, join with sl st in first sc. (6 sc)',
      'Rnd 2: Ch 1, (sc, hdc, dc, hdc, sc) in each ch-3 sp around, join. (6 petals)',
      'Rnd 3: Working behind petals, ch 1, (BPsc around next sc on Rnd 1, ch 5) 6 times, join. (6 ch-5 sps)',
      'Rnd 4: Ch 1, (sc, hdc, 3 dc, hdc, sc) in each ch-5 sp around, join. (42 sts)',
    ),
    // 30; 6 sc + 6 sp; 42
    counts: [null, 6, 30, 6, 42],
    spaces: [null, 6, 0, 6, 0],
  },
  {
    name: 'ears: leave rest, fold flat, sc through both',
    terms: 'us',
    text: lines(
      'Rnd 1: 4 sc in magic ring. (4)',
      'Rnd 2: 2 sc in each st around. (8)',
      'Rnds 3-5: Sc in each st around. (8)',
      'Row 6: Flatten piece and sc through both layers in next 4 sts. (4)',
    ),
    final: 4,
  },
  {
    name: 'mesh bag: last loop closed by tr',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 12 sc in magic ring; join. (12 sc)',
      'Rnd 2: *Ch 5, sk next sc, sc in next sc; rep from * 4 more times, ch 2, dc in joining sl st. (6 lps)',
    ),
    spaces: [null, 6],
  },
];
