/**
 * Bags, blankets, cowls, collars and ponchos, and toys in the shortest writing, right and with one mistake.
 * Each count was worked out by hand.
 */
import { lines, type RowCase } from '../types.ts';

export const accessories: readonly RowCase[] = [
  {
    name: 'tee body lengths and neckband',
    terms: 'us',
    text: lines(
      'Sizes: S (M, L, XL)',
      'Neckband: With A, ch 7.',
      'Row 1: Sc in back bump of 2nd ch from hook and in back bump of each ch across, turn. 6 sc',
      'Rows 2–80 (84, 88, 92): Ch 1, sc in blo of each st across, turn. 6 sc',
      'Do not fasten off. Rotate to work in row ends.',
      'Rnd 1: Ch 1, work 80 (84, 88, 92) sc evenly in row ends, join with sl st in first sc. 80 (84, 88, 92) sc',
    ),
    counts: [
      [7, 7, 7, 7],
      [6, 6, 6, 6],
      [6, 6, 6, 6],
      [80, 84, 88, 92],
    ],
  },
  {
    name: 'market bag base and sides',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 4, sl st in first ch to form ring; ch 3 (counts as dc now and throughout), work 13 dc in ring, sl st in top of ch-3 to join. (14 dc)',
      'Rnd 2: Ch 3, 1 dc in same st, 2 dc in each st around, join. (28 dc)',
      'Rnd 3: *Ch 4, skip 1 st, sc in next st; rep from * around, ending with sl st in base of first ch-4. (14 ch-4 loops)',
    ),
    counts: [14, 28, 14],
    spaces: [null, null, 14],
  },
  {
    name: 'market bag mesh',
    terms: 'us',
    text: lines(
      'Rnd 1: 28 sc in magic ring, join.',
      'Rnd 2: Ch 1, sc in first st, ch 4, sk 1 st, *sc in next st, ch 4, sk 1 st; rep from * around, join. (14 ch-4 loops)',
      'Rnd 3: Sl st to middle of first ch-4 loop, ch 1, sc in same loop, ch 5, *sc in next ch-4 loop, ch 5; rep from * around, join. (14 ch-5 loops)',
      'Rnds 4-10: Sl st to middle of first ch-5 loop, ch 1, sc in same loop, ch 5, *sc in next loop, ch 5; rep from * around, join.',
      'Rnd 11: Ch 1, 3 sc in each loop around, join. (42)',
    ),
    counts: [28, 14, 14, 14, 42],
    spaces: [null, 14, 14, 14, null],
  },
  {
    name: 'potholder corner',
    terms: 'uk',
    text: lines(
      '2 ch.',
      '1st row: 3 dc in 2nd ch from hook, turn.',
      '2nd row: 1 ch, 1 dc in first st, 3 dc in next st, 1 dc in last st, turn. (5 dc)',
      '3rd row: 1 ch, 1 dc in each of first 2 sts, 3 dc in next st, 1 dc in each of last 2 sts, turn. (7 dc)',
    ),
    counts: [2, 3, 5, 7],
  },
  {
    name: 'collar, increases every other round planted',
    terms: 'us',
    text: lines(
      'Sizes: S (L)',
      'Ch 60 (70), join.',
      'Rnd 1: Ch 1, sc in each ch around, join.',
      'Rnd 2: Ch 1, *sc in next 9 sts, 2 sc in next st; rep from * around, join. 66 (77) sc',
      'Rnd 3: Ch 1, sc in each st around, join.',
      'Rnd 4: Ch 1, *sc in next 10 sts, 2 sc in next st; rep from * around, join. 72 (83) sc',
    ),
    counts: [
      [60, 70],
      [60, 70],
      [66, 77],
      [66, 77],
      [72, 84],
    ],
    findings: [{ row: 4, code: 'stated-count-wrong' }],
  },
  {
    name: 'baby blanket border of shells',
    terms: 'us',
    text: lines(
      'Ch 27.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn. (25 dc)',
      'Rows 2-12: Ch 3, dc in next dc and in each dc across, turn. (25 dc)',
      'Row 13: Ch 1, sc in first dc, *sk 2 dc, 5 dc in next dc, sk 2 dc, sc in next dc; rep from * across, turn. (4 shells, 5 sc)',
      'Row 14: Ch 3, 2 dc in first sc, *sc in center dc of next shell, 5 dc in next sc; rep from * across, ending with sc in center dc of last shell, 3 dc in last sc.',
    ),
    counts: [27, 25, 25, 25, 25],
    repeats: [null, null, null, 4, null],
  },
  {
    name: 'cowl puff',
    terms: 'us',
    text: lines(
      'Ch 60, join with sl st to first ch.',
      'Rnd 1: Ch 2 (does not count), hdc in each ch around, sl st to first hdc. (60)',
      'Rnd 2: Ch 1, *puff st in next st, ch 1, sk 1 st; rep from * around, sl st to first puff. (30 puffs, 30 ch-1 sps)',
      'Rnd 3: Sl st to ch-1 sp, ch 2 (does not count), 2 hdc in each ch-1 sp around, sl st to first hdc. (60 hdc)',
    ),
    counts: [60, 60, 30, 60],
    spaces: [null, null, 30, null],
  },
  {
    name: 'amigurumi shorthand',
    terms: 'us',
    text: lines(
      'R1: 6sc in MR (6)',
      'R2: 6inc (12)',
      'R3: (1sc, inc)*6 (18)',
      'R4: 18sc (18)',
      'R5: 5sc, 3inc, 10sc (21)',
      'R6: 6sc, dec, 2sc, dec, 9sc (19)',
      'R7: (dec, 7sc)*2, 1sc (17)',
      'R8: 17sc blo (17)',
      'R9: (dec)*8, sc (9)',
    ),
    counts: [6, 12, 18, 18, 21, 19, 17, 17, 9],
  },
  {
    name: 'amigurumi shorthand, mistakes',
    terms: 'us',
    text: lines('R1: 6sc in MR (6)', 'R2: 6inc (12)', 'R3: (1sc, inc)*6 (19)', 'R4: 17sc (18)'),
    counts: [6, 12, 18, 17],
    findings: [
      { row: 2, code: 'stated-count-wrong' },
      { row: 3, code: 'stated-count-wrong' },
      { row: 3, code: 'stitches-left-unworked' },
    ],
  },
  {
    name: 'yoke lace rounds sizes',
    terms: 'uk',
    text: lines(
      'Sizes: 1 [2, 3]',
      '96 [108, 120] ch, join with ss to form a ring.',
      '1st round: 1 ch, 1 dc in each ch to end, ss to first dc. 96 [108, 120] dc.',
      '2nd round: 4 ch (counts as 1 tr, 1 ch), miss next dc, *1 tr in next dc, 1 ch, miss 1 dc; rep from * to end, ss to 3rd of 4 ch. 48 [54, 60] tr.',
      '3rd round: 1 ch, *1 dc in next tr, 1 dc in next 1-ch sp; rep from * to end, ss to first dc.',
      '4th round: 3 ch, 1 tr in same place as ss, 1 ch, *miss 2 dc, (2 tr, 1 ch) in next dc; rep from * to last 2 dc, miss 2 dc, ss to top of 3 ch.',
    ),
    counts: [
      [96, 108, 120],
      [96, 108, 120],
      [48, 54, 60],
      [96, 108, 120],
      [64, 72, 80],
    ],
    spaces: [null, null, [48, 54, 60], null, [32, 36, 40]],
  },
  {
    name: 'poncho chain corners',
    terms: 'us',
    text: lines(
      'Ch 80; join.',
      'Rnd 1: Ch 3 (counts as dc), dc in next 38 ch, (2 dc, ch 2, 2 dc) in next ch, dc in next 39 ch, (2 dc, ch 2, 2 dc) in last ch; join.',
      'Rnd 2: Ch 3, dc in each dc to first ch-2 sp, (2 dc, ch 2, 2 dc) in ch-2 sp, dc in each dc to next ch-2 sp, (2 dc, ch 2, 2 dc) in ch-2 sp, dc in each rem dc; join.',
      'Rnds 3-6: Rep Rnd 2. (126 dc)',
    ),
    counts: [80, 86, 94, 126],
    spaces: [null, 2, 2, 2],
  },
  {
    name: 'washcloth seed',
    terms: 'us',
    text: lines(
      'Ch 22.',
      'Row 1: (Sc, dc) in 2nd ch from hook, *sk next ch, (sc, dc) in next ch; rep from * across, turn.',
      'Row 2: Ch 1, sk first dc, (sc, dc) in next sc, *sk next dc, (sc, dc) in next sc; rep from * across, turn.',
    ),
    counts: [22, 22, 22],
  },
];
