/**
 * Written rows: several sizes in every style of writing them, with sizes that skip a number, rows for some
 * sizes only, and row numbers that differ by size.
 */
import { lines, type RowCase } from '../types.ts';

export const sizes: readonly RowCase[] = [
  {
    name: 'rows for all sizes but some, in every place that may be said, and none for a stitch left out',
    terms: 'us',
    text: lines(
      'Sizes: S (M, L)',
      'Ch 11 (13, 15).',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (10 (12, 14) sc)',
      'Row 2: All sizes except S: Ch 1, 2 sc in first st, sc in each st across.',
      'Row 3 (all sizes but S): Ch 1, sc across.',
      'All sizes except for S and M: Row 4: Ch 1, sc across.',
      'Row 5: Every size but L, ch 1, sc across.',
      'All sizes apart from size S:',
      'Row 6: Ch 1, sc across.',
      'All sizes: Row 7: Ch 1, sc in all but last st.',
    ),
    counts: [
      [11, 13, 15],
      [10, 12, 14],
      [null, 13, 15],
      [null, 13, 15],
      [null, null, 15],
      [10, 13, null],
      [null, 13, 15],
      [9, 12, 14],
    ],
  },
  {
    name: 'each further size in brackets of its own, the last without',
    terms: 'us',
    text: lines(
      'Ch 61 (67) (73) 79.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. 60 (66) (72) 78 sc.',
    ),
    counts: [
      [61, 67, 73, 79],
      [60, 66, 72, 78],
    ],
  },
  {
    name: 'a chain of four sizes that nothing else announces',
    terms: 'us',
    text: lines(
      'Ch 61, 67, 73, 79.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (60, 66, 72, 78) sc.',
    ),
    counts: [
      [61, 67, 73, 79],
      [60, 66, 72, 78],
    ],
  },
  {
    name: 'a range of rows for each size',
    terms: 'us',
    // 2 more in each of 4, 6 and 8 rows
    text: lines(
      'Ch 21 (25, 29).',
      'Row 1: Sc in 2nd ch from hook and in each ch across. 20 (24, 28) sc.',
      'Rows 2-5 (2-7, 2-9): Ch 1, turn, 2 sc in first st, sc across to last st, 2 sc in last st. 28 (36, 44) sc.',
      'Row 6 (8, 10): Ch 1, turn, sc across.',
    ),
    counts: [
      [21, 25, 29],
      [20, 24, 28],
      [28, 36, 44],
      [28, 36, 44],
    ],
  },
  {
    name: 'a row for sizes that are never named',
    terms: 'us',
    text: lines(
      'Ch 21 (25, 29).',
      'Row 1: Sc in 2nd ch from hook and in each ch across.',
      'Row 2 (Sizes M and L only): Ch 1, turn, sc across.',
    ),
    counts: [[21, 25, 29], [20, 24, 28], null],
    findings: [{ row: 2, code: 'row-for-unknown-size' }],
  },
  {
    name: 'a count that is one number short is told once',
    terms: 'us',
    text: lines('Ch 21 (25, 29).', 'Row 1: Sc in 2nd ch from hook and in each ch across. 20 (24) sc.'),
    counts: [
      [21, 25, 29],
      [20, 24, 28],
    ],
    findings: [{ row: 1, code: 'sizes-differ-in-length' }],
  },
  {
    name: 'round brackets and commas',
    terms: 'us',
    text: lines(
      'Ch 25 (29, 33, 37).',
      'Row 1: Sc in 2nd ch from hook and in each ch across. 24 (28, 32, 36) sc',
    ),
    counts: [
      [25, 29, 33, 37],
      [24, 28, 32, 36],
    ],
  },
  {
    name: 'round brackets and hyphens',
    terms: 'us',
    text: lines('Ch 25 (29-33-37).', 'Row 1: Sc in 2nd ch from hook and in each ch across. 24 (28-32-36) sc'),
    counts: [
      [25, 29, 33, 37],
      [24, 28, 32, 36],
    ],
  },
  {
    name: 'colons, no blank',
    terms: 'us',
    text: lines('Ch 25(29:33:37).', 'Row 1: Sc in 2nd ch from hook and in each ch across. 24(28:32:36) sts'),
    counts: [
      [25, 29, 33, 37],
      [24, 28, 32, 36],
    ],
  },
  {
    name: 'square brackets',
    terms: 'us',
    text: lines('Ch 25 [29, 33].', 'Row 1: Sc in 2nd ch from hook and in each ch across. 24 [28, 32] sc'),
    counts: [
      [25, 29, 33],
      [24, 28, 32],
    ],
  },
  {
    name: 'two groups of brackets',
    terms: 'us',
    text: lines(
      'Ch 25 (29, 33) (37, 41).',
      'Row 1: Sc in 2nd ch from hook and in each ch across. 24 (28, 32) (36, 40) sc',
    ),
    counts: [
      [25, 29, 33, 37, 41],
      [24, 28, 32, 36, 40],
    ],
  },
  {
    name: 'round, then square, then braces',
    terms: 'us',
    text: lines(
      'Ch 25 (29, 33) [37, 41] {45}.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. 24 (28, 32) [36, 40] {44} sc',
    ),
    counts: [
      [25, 29, 33, 37, 41, 45],
      [24, 28, 32, 36, 40, 44],
    ],
  },
  {
    name: 'twelve sizes',
    terms: 'us',
    text: lines(
      'Ch 31 (33, 35, 37, 39, 41) (43, 45, 47, 49, 51, 53).',
      'Row 1: Hdc in 2nd ch from hook and in each ch across. 30 (32, 34, 36, 38, 40) (42, 44, 46, 48, 50, 52) hdc',
    ),
    counts: [
      [31, 33, 35, 37, 39, 41, 43, 45, 47, 49, 51, 53],
      [30, 32, 34, 36, 38, 40, 42, 44, 46, 48, 50, 52],
    ],
  },
  {
    name: 'one number holds for every size',
    terms: 'us',
    // 24, 28, 32 = 4 + 16, 20, 24 + 4
    text: lines(
      'Ch 25 (29, 33).',
      'Row 1: Sc in 2nd ch from hook and in each ch across.',
      'Row 2: Ch 1, sc in next 4 sts, hdc in next 16 (20, 24) sts, sc in last 4 sts, turn.',
    ),
    counts: [
      [25, 29, 33],
      [24, 28, 32],
      [24, 28, 32],
    ],
    byKind: [null, null, { sc: [8, 8, 8], hdc: [16, 20, 24] }],
  },
  {
    name: 'a size key before the rows',
    terms: 'us',
    text: lines(
      'Sizes: S (M, L, XL)',
      'Ch 41 (45, 49, 53).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 40 (44, 48, 52) sc',
      'Row 2: Ch 1, sc in each st across, turn.',
    ),
    counts: [
      [41, 45, 49, 53],
      [40, 44, 48, 52],
      [40, 44, 48, 52],
    ],
  },
  {
    name: 'commas alone after a size key',
    terms: 'us',
    text: lines(
      'For sizes S, M, L, XL:',
      'Ch 41, 45, 49, 53.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 40, 44, 48, 52 sc.',
    ),
    counts: [
      [41, 45, 49, 53],
      [40, 44, 48, 52],
    ],
  },
  {
    name: 'zero for a size that skips it',
    terms: 'us',
    // 24: 24; 28: 2 increases of 1 at the ends; 24 + 0, 28 + 2
    text: lines(
      'Ch 25 (29).',
      'Row 1: Sc in 2nd ch from hook and in each ch across.',
      'Row 2: Ch 1, sc in next 24 (20) sts, [2 sc in next st] 0 (8) times, turn. 24 (36) sc',
    ),
    counts: [
      [25, 29],
      [24, 28],
      [24, 36],
    ],
  },
  {
    name: 'dash for a size that skips it',
    terms: 'us',
    text: lines(
      'Ch 25 (29, 33).',
      'Row 1: Sc in 2nd ch from hook and in each ch across.',
      'Row 2: Ch 1, sc in next 24 (24, 24) sts, [2 sc in next st] – (4, 8) times, turn. 24 (32, 40) sc',
    ),
    // 24; 24 + 8; 24 + 16
    counts: [
      [25, 29, 33],
      [24, 28, 32],
      [24, 32, 40],
    ],
  },
  {
    name: 'rows for the larger sizes only',
    terms: 'us',
    // XL and L grow by 2 in row 3; row 4 works all sizes
    text: lines(
      'Sizes: S (M, L, XL)',
      'Ch 21 (25, 29, 33).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 20 (24, 28, 32) sc',
      'Row 2: Ch 1, sc in each st across, turn.',
      'Sizes L (XL) only:',
      'Row 3: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. 30 (34) sc',
      'All sizes:',
      'Row 4: Ch 1, sc in each st across, turn. 20 (24, 30, 34) sc',
    ),
    counts: [
      [21, 25, 29, 33],
      [20, 24, 28, 32],
      [20, 24, 28, 32],
      [null, null, 30, 34],
      [20, 24, 30, 34],
    ],
  },
  {
    name: 'rows for one size only, slash between sizes',
    terms: 'us',
    text: lines(
      'Sizes S (M, L)',
      'Ch 21 (25, 29).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'S/M only:',
      'Row 2: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. 18 (22) sts',
      'All sizes:',
      'Row 3: Ch 1, sc in each st across, turn. 18 (22, 28) sc',
    ),
    counts: [
      [21, 25, 29],
      [20, 24, 28],
      [18, 22, null],
      [18, 22, 28],
    ],
  },
  {
    name: 'row numbers that differ by size',
    terms: 'us',
    text: lines(
      'Ch 21 (25, 29).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 20 (24, 28) sc',
      'Rows 2-8 (10, 12): Ch 1, sc in each st across, turn.',
      'Row 9 (11, 13): Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. 18 (22, 26) sts',
    ),
    counts: [
      [21, 25, 29],
      [20, 24, 28],
      [20, 24, 28],
      [18, 22, 26],
    ],
  },
  {
    name: 'ranges that differ by size carry shaping',
    terms: 'us',
    // 5, 6, 7 rows of minus 2: 30 - 10, 34 - 12, 38 - 14
    text: lines(
      'Ch 31 (35, 39).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Rows 2–6 (7, 8): Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. 20 (22, 24) sts',
    ),
    counts: [
      [31, 35, 39],
      [30, 34, 38],
      [20, 22, 24],
    ],
  },
  {
    name: 'repeats that differ by size',
    terms: 'us',
    // 18, 24 → 24, 32
    text: lines(
      'Rnd 1: 6 (8) sc in magic ring.',
      'Rnd 2: 2 sc in each st around.',
      'Rnd 3: (Sc in next st, 2 sc in next st) 6 (8) times. 18 (24) sts',
      'Rnd 4: (Sc in next 2 sts, 2 sc in next st) 6 (8) times. 24 (32) sts',
    ),
    counts: [
      [6, 8],
      [12, 16],
      [18, 24],
      [24, 32],
    ],
  },
  {
    name: 'underarm split by size',
    terms: 'us',
    // 60, 68: front … 10 (12) sc, sk 10, ch 4, 20 (24) sc, sk 10, ch 4, 10 (12) sc: 60 = 10 + 10 + 20 + 10 + 10; 68 = 12 + 10 + 24 + 10 + 12
    text: lines(
      'Fsc 60 (68).',
      'Row 1: Ch 1, sc in next 10 (12) sts, ch 4, sk next 10 sts, sc in next 20 (24) sts, ch 4, sk next 10 sts, sc in last 10 (12) sts, turn. 40 (48) sc and 2 ch-4 sps',
      'Row 2: Ch 1, sc in each sc and in each ch across, turn. 48 (56) sc',
    ),
    counts: [
      [60, 68],
      [40, 48],
      [48, 56],
    ],
    spaces: [
      [0, 0],
      [2, 2],
      [0, 0],
    ],
  },
  {
    name: 'round brackets and commas',
    terms: 'uk',
    text: lines(
      'Make 62 (68, 74) ch.',
      'Row 1: 1 tr in 4th ch from hook, 1 tr in each ch to end, turn. 60 (66, 72) tr.',
    ),
    counts: [
      [62, 68, 74],
      [60, 66, 72],
    ],
  },
  {
    name: 'round brackets and colons',
    terms: 'uk',
    text: lines(
      'Make 62(68:74:80) ch.',
      'Row 1: 1 tr into 4th ch from hook, 1 tr into each ch to end, turn. 60(66:72:78) tr.',
    ),
    counts: [
      [62, 68, 74, 80],
      [60, 66, 72, 78],
    ],
  },
  {
    name: 'square brackets and colons',
    terms: 'uk',
    text: lines(
      'Make 62 [68: 74: 80] ch.',
      '1st row: 1 tr into 4th ch from hook, 1 tr into each ch to end, turn. 60 [66: 72: 78] sts.',
    ),
    counts: [
      [62, 68, 74, 80],
      [60, 66, 72, 78],
    ],
  },
  {
    name: 'repeat by size to a tail',
    terms: 'uk',
    // 26, 32 = 2 + 6n: (3 dc, 3 tr) n times, 2 dc
    text: lines(
      'Make 27 (33) ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.',
      'Row 2: 1 ch, *1 dc in each of next 3 dc, 1 tr in each of next 3 dc; rep from * to last 2 dc, 1 dc in each of last 2 dc, turn.',
    ),
    counts: [
      [27, 33],
      [26, 32],
      [26, 32],
    ],
    byKind: [null, null, { dc: [14, 17], tr: [12, 15] }],
  },
  {
    name: 'rows for some sizes only',
    terms: 'uk',
    text: lines(
      'Sizes: 1 (2, 3)',
      'Make 31 (35, 39) ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 30 (34, 38) dc.',
      'Size 3 only:',
      'Row 2: 1 ch, dc2tog, 1 dc in each st to last 2 sts, dc2tog, turn. 36 sts.',
      'All sizes:',
      'Row 3: 1 ch, 1 dc in each st to end, turn. 30 (34, 36) dc.',
    ),
    counts: [
      [31, 35, 39],
      [30, 34, 38],
      [null, null, 36],
      [30, 34, 36],
    ],
  },
  {
    name: 'ranges that differ by size',
    terms: 'uk',
    text: lines(
      'Make 21 (23) ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 20 (22) dc.',
      'Rows 2 to 11 (13): 1 ch, 1 dc in each dc to end, turn. 20 (22) dc.',
      'Row 12 (14): 1 ch, 2 dc in first dc, 1 dc in each dc to end, turn. 21 (23) dc.',
    ),
    counts: [
      [21, 23],
      [20, 22],
      [20, 22],
      [21, 23],
    ],
  },
  {
    name: 'increase round by size',
    terms: 'uk',
    // 72 / 6 = 12 → 84; 80 / 8 = 10 → 90; 90 / 9 = 10 → 100
    text: lines(
      'Make 72 (80, 90) ch, join with ss in first ch to form a ring.',
      'Rnd 1: 1 ch, 1 dc in each ch around, join with ss in first dc. 72 (80, 90) dc.',
      'Rnd 2: 1 ch, (1 dc in each of next 5 (7, 8) dc, 2 dc in next dc) 12 (10, 10) times, join with ss in first dc. 84 (90, 100) dc.',
    ),
    counts: [null, [72, 80, 90], [84, 90, 100]],
  },
  {
    name: 'capital size letters in a line of their own',
    terms: 'uk',
    text: lines(
      'XS (S, M, L, XL)',
      '',
      'Make 51 (55, 59, 63, 67) ch.',
      'ROW 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end. [50 (54, 58, 62, 66) dc]',
    ),
    counts: [
      [51, 55, 59, 63, 67],
      [50, 54, 58, 62, 66],
    ],
  },
  {
    name: 'dash for a size that skips it',
    terms: 'uk',
    // 20: 10 + 10; 24: 10 + 4 dc2tog? 10 + (dc2tog) 2 times + 10 = 22
    text: lines(
      'Make 21 (25) ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end.',
      'Row 2: 1 ch, 1 dc in each of next 10 dc, (dc2tog) – (2) times, 1 dc in each of last 10 dc, turn. 20 (22) sts.',
    ),
    counts: [
      [21, 25],
      [20, 24],
      [20, 22],
    ],
  },
  {
    name: 'a count for each size in one bracket, the stitch named once',
    terms: 'us',
    // 6 (7, 8) + 2 + rest: two more in each size; the last number is one too many
    text: lines(
      'Ch 31 (35, 39).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (30, 34, 38 sc)',
      'Row 2: Ch 1, sc in next 6 (7, 8) sts, 2 sc in next st, sc in each st to last 7 (8, 9) sts, 2 sc in next st, sc to end, turn. (32, 36, 41 sc)',
    ),
    counts: [
      [31, 35, 39],
      [30, 34, 38],
      [32, 36, 40],
    ],
    findings: [
      { row: 2, code: 'stated-count-wrong', words: '32, 36, 41 sc', saying: ['In size 3', '41', '40'] },
    ],
  },
  {
    name: 'one row for one size and for all others, in one line',
    terms: 'us',
    text: lines(
      'Sizes: S, M, L, XL',
      'Ch 21 (25, 29, 33).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Size S only: Ch 1, sc across, turn. All other sizes: Ch 1, sc2tog, sc across, turn.',
    ),
    counts: [
      [21, 25, 29, 33],
      [20, 24, 28, 32],
      [20, null, null, null],
      [null, 23, 27, 31],
    ],
    source: 'common practice, no source',
  },
  {
    name: 'a range of rows for each size, with commas alone',
    terms: 'us',
    // 2 more in each of 4, 6 and 8 rows
    text: lines(
      'Sizes: S (M, L)',
      'Ch 21 (25, 29).',
      'Row 1: Sc in 2nd ch from hook and in each ch across. 20 (24, 28) sc.',
      'Rows 2-5, 2-7, 2-9: Ch 1, turn, 2 sc in first st, sc across to last st, 2 sc in last st. 28 (36, 44) sc.',
      'Row 6 (8, 10): Ch 1, turn, sc across.',
    ),
    counts: [
      [21, 25, 29],
      [20, 24, 28],
      [28, 36, 44],
      [28, 36, 44],
    ],
  },
];
