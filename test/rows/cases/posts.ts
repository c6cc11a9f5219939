/**
 * Written rows: front and back post stitches and the bands made of them. A post stitch uses one stitch.
 */
import { lines, type RowCase } from '../types.ts';

export const posts: readonly RowCase[] = [
  {
    name: 'band of alternating posts in the round, even',
    terms: 'us',
    text: lines(
      'Ch 40, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 3 (does not count as a st), dc in each ch around; join with sl st in first dc. (40 dc)',
      'Rnd 2: Ch 2 (does not count as a st), *FPdc around next dc, BPdc around next dc; rep from * around; join with sl st in first FPdc. (40 sts)',
      'Rnd 3: Ch 2 (does not count as a st), *FPdc around next FPdc, BPdc around next BPdc; rep from * around; join with sl st in first FPdc. (40 sts)',
    ),
    counts: [null, 40, 40, 40],
    byKind: [null, { dc: 40 }, { FPdc: 20, BPdc: 20 }, { FPdc: 20, BPdc: 20 }],
    source: 'common practice, no source: a band of alternating front and back posts needs an even number',
  },
  {
    name: 'band of posts in rows with edge stitches',
    terms: 'us',
    // 22 = 1 + 20 + 1
    text: lines(
      'Fsc 22.',
      'Row 1: Ch 2 (counts as hdc), sk first st, dc in next 20 sts, hdc in last st, turn. (22 sts)',
      'Row 2: Ch 2 (counts as hdc), sk first st, *fpdc around next st, bpdc around next st; rep from * to last st, hdc in top of turning ch, turn. (22 sts)',
    ),
    counts: [22, 22, 22],
    byKind: [null, { hdc: 2, dc: 20 }, { hdc: 2, fpdc: 10, bpdc: 10 }],
  },
  {
    name: 'one post stitch at a time, "front post" in full',
    terms: 'us',
    text: lines(
      'Fsc 12.',
      'Row 1: Ch 3 (does not count as a st), dc in each st across, turn. (12 dc)',
      'Row 2: Ch 2 (does not count as a st), front post dc around each of next 6 dc, back post dc around each of last 6 dc, turn. (12 sts)',
    ),
    counts: [12, 12, 12],
  },
  {
    name: 'dc around the post from the front',
    terms: 'us',
    text: lines(
      'Fsc 12.',
      'Row 1: Ch 3 (does not count as a st), dc in each st across, turn.',
      'Row 2: Ch 1, *sc in next st, dc around the post of next dc from the front; rep from * across, turn. (12 sts)',
    ),
    counts: [12, 12, 12],
  },
  {
    name: 'FPtr two rows below, the stitch behind skipped',
    terms: 'us',
    // 20 = 5 * 4: (3 sc, FPtr) 5 times; the st behind each FPtr is the skipped one
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 3 (does not count as a st), dc in each st across, turn. (20 dc)',
      'Row 2: Ch 1, sc in each st across, turn. (20 sc)',
      'Row 3: Ch 1, *sc in next 3 sts, FPtr around post of dc 2 rows below, sk st behind FPtr; rep from * across, turn. (20 sts)',
    ),
    counts: [20, 20, 20, 20],
    byKind: [null, null, null, { sc: 15, FPtr: 5 }],
  },
  {
    name: 'post cable crossing',
    terms: 'us',
    // 16 = 4 + 4 + 8
    text: lines(
      'Fsc 16.',
      'Row 1: Ch 3 (does not count as a st), dc in each st across, turn.',
      'Row 2: Ch 2 (does not count as a st), dc in next 6 sts, sk 2 sts, FPtr around next 2 sts, FPtr around 2 skipped sts, dc in last 6 sts, turn. (16 sts)',
    ),
    counts: [16, 16, 16],
  },
  {
    name: 'rib of posts by size',
    terms: 'us',
    text: lines(
      'Ch 60 (64, 68), join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 2 (does not count as a st), hdc in each ch around; join with sl st in first hdc. 60 (64, 68) hdc',
      'Rnd 2: Ch 2 (does not count as a st), *FPhdc around next st, BPhdc around next st; rep from * around; join with sl st in first FPhdc. 60 (64, 68) sts',
    ),
    counts: [null, [60, 64, 68], [60, 64, 68]],
    byKind: [null, null, { FPhdc: [30, 32, 34], BPhdc: [30, 32, 34] }],
  },
  {
    name: 'post stitches in twos',
    terms: 'us',
    // 24 / 4
    text: lines(
      'Ch 24, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 3 (does not count), dc in each ch around; join with sl st in first dc.',
      'Rnd 2: Ch 2 (does not count), (FPdc around next 2 sts, BPdc around next 2 sts) 6 times; join with sl st in first FPdc. (24)',
    ),
    counts: [null, 24, 24],
  },
  {
    name: 'band of raised trebles in the round',
    terms: 'uk',
    text: lines(
      'Make 40 ch, join with ss in first ch to form a ring.',
      'Rnd 1: 3 ch (does not count as a st), 1 tr in each ch around, join with ss in first tr. (40 tr)',
      'Rnd 2: 2 ch (does not count as a st), *1 FPtr around next tr, 1 BPtr around next tr; rep from * around, join with ss in first FPtr. (40 sts)',
    ),
    counts: [null, 40, 40],
    byKind: [null, { tr: 40 }, { FPtr: 20, BPtr: 20 }],
  },
  {
    name: 'rtrf and rtrb in rows',
    terms: 'uk',
    // 2 ch and htr at the edges, 20 between
    text: lines(
      'Make 23 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (22 dc)',
      'Row 2: 2 ch (counts as 1 htr), miss first st, 1 tr in each of next 20 sts, 1 htr in last st, turn. (22 sts)',
      'Row 3: 2 ch (counts as 1 htr), miss first st, *1 rtrf around next st, 1 rtrb around next st; rep from * to last st, 1 htr in top of turning ch, turn. (22 sts)',
    ),
    counts: [23, 22, 22, 22],
    byKind: [null, null, { htr: 2, tr: 20 }, { htr: 2, rtrf: 10, rtrb: 10 }],
  },
  {
    name: 'front raised treble in full',
    terms: 'uk',
    text: lines(
      'Row 1: Work 12 fdc, turn.',
      'Row 2: 3 ch (does not count as a st), 1 tr in each st to end, turn.',
      'Row 3: 1 ch, *1 dc in next st, raised treble front around next st; rep from * to end, turn. (12 sts)',
    ),
    counts: [12, 12, 12],
  },
  {
    name: 'FPdc is the short one in UK terms',
    terms: 'uk',
    text: lines(
      'Row 1: Work 16 fdc, turn.',
      'Row 2: 1 ch, 1 FPdc around each st to end, turn. (16 FPdc)',
      'Row 3: 1 ch, 1 dc in each st to end, turn. (16 dc)',
    ),
    counts: [16, 16, 16],
    byKind: [null, { FPdc: 16 }, { dc: 16 }],
  },
  {
    name: 'rib of posts by size',
    terms: 'uk',
    text: lines(
      'Make 80 (88, 96, 104) ch, join with ss in first ch to form a ring.',
      'Rnd 1: 3 ch (does not count as a st), 1 tr in each ch around, join with ss in first tr.',
      'Rnd 2: 2 ch (does not count as a st), *1 FPtr around next st, 1 BPtr around next st; rep from * around, join with ss in first st. 80 (88, 96, 104) sts.',
    ),
    counts: [null, [80, 88, 96, 104], [80, 88, 96, 104]],
    byKind: [null, null, { FPtr: [40, 44, 48, 52], BPtr: [40, 44, 48, 52] }],
  },
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
    name: 'petals in three layers, each behind the last',
    terms: 'us',
    text: lines(
      'Ch 6, join with sl st to form ring.',
      'Rnd 1: Ch 1, 12 sc in ring, join.',
      'Rnd 2: Ch 1, sc in first st, *ch 3, sk 1, sc in next st; rep from * to last st, ch 3, sk last st, join. (6 sc)',
      'Rnd 3: (Sl st, ch 2, 3 dc, ch 2, sl st) in each ch-3 sp around. (6 petals)',
      'Rnd 4: Working behind petals, *ch 4, sl st around post of next sc on Rnd 2; rep from * around. (6 ch-4 sps)',
      'Rnd 5: (Sl st, ch 2, 5 dc, ch 2, sl st) in each ch-4 sp around. (6 petals)',
      'Rnd 6: Working behind petals into the sl sts of Rnd 4, ch 1, *sc in next sl st, ch 5; rep from * around, join. (6 sc)',
    ),
    // 12; 6; 6 * (1 + 3 + 1); 6; 6 * (1 + 5 + 1); 6
    counts: [null, 12, 6, 30, 6, 42, 6],
    spaces: [null, 0, 6, 12, 6, 12, 6],
  },
];
