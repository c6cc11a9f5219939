/**
 * Written rows: passages as they stand in British garment patterns, most of them for several sizes.
 */
import { lines, type RowCase } from '../types.ts';

const base = (first: number, ...rest: readonly number[]): readonly string[] => {
  const list = (add: number): string =>
    rest.length > 0 ? `${first + add} (${rest.map((n) => n + add).join(', ')})` : `${first + add}`;
  return [
    `Make ${list(1)} ch.`,
    `Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. ${list(0)} dc.`,
  ];
};

export const garments: readonly RowCase[] = [
  {
    name: 'back worked straight in htr',
    terms: 'uk',
    text: lines(
      ...base(70, 76, 82),
      'Row 2: 1 ch, 1 htr in first st, 1 htr in each st to end, turn. 70 (76, 82) htr.',
      'Rows 3–40 (42, 44): Rep Row 2.',
    ),
    counts: [
      [71, 77, 83],
      [70, 76, 82],
      [70, 76, 82],
      [70, 76, 82],
    ],
  },
  {
    name: 'waist decreases and increases',
    terms: 'uk',
    // 60 - 2 + 2; 66 - 2 + 2
    text: lines(
      ...base(60, 66),
      'Row 2: 1 ch, dc2tog, 1 dc in each dc to last 2 dc, dc2tog, turn. 58 (64) sts.',
      'Row 3: 1 ch, 1 dc in each st to end, turn.',
      'Row 4: 1 ch, 2 dc in first dc, 1 dc in each dc to last dc, 2 dc in last dc, turn. 60 (66) dc.',
    ),
    counts: [
      [61, 67],
      [60, 66],
      [58, 64],
      [58, 64],
      [60, 66],
    ],
  },
  {
    name: 'armholes and straight on',
    terms: 'uk',
    // 60 - 2 * 4 = 52, 68 - 2 * 5 = 58, 76 - 2 * 6 = 64
    text: lines(
      ...base(60, 68, 76),
      'Row 2: Ss over first 4 (5, 6) sts, 1 ch, 1 dc in each dc to last 4 (5, 6) sts, turn, leaving rem sts unworked. 52 (58, 64) dc.',
      'Rows 3–10: 1 ch, 1 dc in each dc to end, turn.',
      'Row 11: 1 ch, dc2tog, 1 dc in each dc to last 2 dc, dc2tog, turn. 50 (56, 62) sts.',
    ),
    counts: [
      [61, 69, 77],
      [60, 68, 76],
      [52, 58, 64],
      [52, 58, 64],
      [50, 56, 62],
    ],
  },
  {
    name: 'sleeve increases from a range that differs by size',
    terms: 'uk',
    // 5, 6, 7 rows of plus 2: 30 + 10, 32 + 12, 34 + 14
    text: lines(
      ...base(30, 32, 34),
      'Rows 2–6 (7, 8): 1 ch, 2 dc in first dc, 1 dc in each dc to last dc, 2 dc in last dc, turn. 40 (44, 48) dc.',
    ),
    counts: [
      [31, 33, 35],
      [30, 32, 34],
      [40, 44, 48],
    ],
  },
  {
    name: 'raglan round from the top, chain corners',
    terms: 'uk',
    // 40 and 48: 4 corners of (1 dc, 2 ch, 1 dc) in one dc: 40 - 4 + 8 = 44; 48 - 4 + 8 = 52
    // 40: 5 + c + 8 + c + 10 + c + 8 + c + 5 = 36 + 4; 48: 6 + c + 10 + c + 12 + c + 10 + c + 6 = 44 + 4
    text: lines(
      'Make 40 (48) ch, join with ss in first ch to form a ring.',
      'Rnd 1: 1 ch, 1 dc in each ch around, join with ss in first dc. 40 (48) dc.',
      'Rnd 2: 1 ch, 1 dc in each of next 5 (6) dc, (1 dc, 2 ch, 1 dc) in next dc, 1 dc in each of next 8 (10) dc, (1 dc, 2 ch, 1 dc) in next dc, 1 dc in each of next 10 (12) dc, (1 dc, 2 ch, 1 dc) in next dc, 1 dc in each of next 8 (10) dc, (1 dc, 2 ch, 1 dc) in next dc, 1 dc in each of last 5 (6) dc, join with ss in first dc. 44 (52) dc.',
      'Rnd 3: 1 ch, *1 dc in each dc to next 2ch-sp, (1 dc, 2 ch, 1 dc) in 2ch-sp; rep from * 3 more times, 1 dc in each dc to end, join with ss in first dc. 52 (60) dc.',
    ),
    // rnd 3: every dc once and 2 more in each of 4 corners
    counts: [null, [40, 48], [44, 52], [52, 60]],
    spaces: [null, [0, 0], [4, 4], [4, 4]],
  },
  {
    name: 'body and sleeves divided with underarm chains',
    terms: 'uk',
    // 64 = 10 + 12 + 20 + 12 + 10; body 40 and two chains of 6
    text: lines(
      ...base(64),
      'Row 2: 1 ch, 1 dc in each of next 10 dc, 6 ch, miss 12 dc, 1 dc in each of next 20 dc, 6 ch, miss 12 dc, 1 dc in each of last 10 dc, turn. (40 dc, 2 ch-sps)',
      'Row 3: 1 ch, 1 dc in each dc and each ch to end, turn. (52 dc)',
    ),
    counts: [65, 64, 40, 52],
    spaces: [0, 0, 2, 0],
  },
  {
    name: 'neck shaping at one side only',
    terms: 'uk',
    // 24 - 1 - 1
    text: lines(
      ...base(24),
      'Row 2: 1 ch, 1 dc in each dc to last 2 dc, dc2tog, turn. (23 sts)',
      'Row 3: 1 ch, dc2tog, 1 dc in each dc to end, turn. (22 sts)',
    ),
    counts: [25, 24, 23, 22],
  },
  {
    name: 'divide for the neck, first side',
    terms: 'uk',
    text: lines(
      ...base(50, 54),
      'Row 2: 1 ch, 1 dc in each of next 16 (17) dc, turn, leaving rem 34 (37) sts unworked. 16 (17) dc.',
      'Row 3: 1 ch, dc2tog, 1 dc in each dc to end, turn. 15 (16) sts.',
    ),
    counts: [
      [51, 55],
      [50, 54],
      [16, 17],
      [15, 16],
    ],
  },
  {
    name: 'rib sideways in back loops',
    terms: 'uk',
    text: lines(
      'Make 11 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (10 dc)',
      'Rows 2–70 (76, 82): 1 ch, 1 dc in BLO of each dc to end, turn. (10 dc)',
    ),
    counts: [
      [11, 11, 11],
      [10, 10, 10],
      [10, 10, 10],
    ],
  },
  {
    name: 'yoke rounds with a repeat that grows',
    terms: 'uk',
    // 8 repeats of 8, 9: 64 → 72 → 80
    text: lines(
      'Make 64 ch, join with ss in first ch to form a ring.',
      'Rnd 1: 1 ch, 1 dc in each ch around, join with ss in first dc. (64 dc)',
      'Rnd 2: 1 ch, *1 dc in each of next 7 dc, 2 dc in next dc; rep from * around, join with ss in first dc. (72 dc)',
      'Rnd 3: 1 ch, *1 dc in each of next 8 dc, 2 dc in next dc; rep from * around, join with ss in first dc. (80 dc)',
    ),
    counts: [null, 64, 72, 80],
  },
  {
    name: 'sleeve cap of rows that lose 1 at each end',
    terms: 'uk',
    // 40 - 2 * 6
    text: lines(...base(40), 'Rows 2–7: 1 ch, dc2tog, 1 dc in each st to last 2 sts, dc2tog, turn. (28 sts)'),
    counts: [41, 40, 28],
  },
  {
    name: 'front bands with buttonholes by size',
    terms: 'uk',
    // 30 = 3 + 4 * (2 + 4) + 3; 36 = 3 + 5 * 6 + 3: buttonholes 4 (5)
    text: lines(
      ...base(30, 36),
      'Row 2: 1 ch, 1 dc in each of next 3 dc, (2 ch, miss 2 dc, 1 dc in each of next 4 dc) 4 (5) times, 1 dc in each of last 3 dc, turn. 22 (26) dc.',
      'Row 3: 1 ch, 1 dc in each of next 3 dc, (1 dc in each of next 4 dc, 2 dc in next 2ch-sp) 4 (5) times, 1 dc in each of last 3 dc, turn. 30 (36) dc.',
    ),
    counts: [
      [31, 37],
      [30, 36],
      [22, 26],
      [30, 36],
    ],
    spaces: [
      [0, 0],
      [0, 0],
      [4, 5],
      [0, 0],
    ],
  },
  {
    name: 'lace tr yoke, 3 ch to count',
    terms: 'uk',
    // 25 and 31 = 1 + 3n: 9, 11 tr; 8, 10 spaces
    text: lines(
      ...base(25, 31),
      'Row 2: 5 ch (counts as 1 tr, 2 ch), miss first 3 dc, 1 tr in next dc, *2 ch, miss 2 dc, 1 tr in next dc; rep from * to end, turn. 9 (11) tr, 8 (10) ch-sps.',
    ),
    counts: [
      [26, 32],
      [25, 31],
      [9, 11],
    ],
    spaces: [
      [0, 0],
      [0, 0],
      [8, 10],
    ],
  },
  {
    name: 'edge stitch and pattern stitch by size',
    terms: 'uk',
    // 1 + 2n + 1: 22, 26: n = 10, 12
    text: lines(
      ...base(22, 26),
      'Row 2: 1 ch, 1 dc in first dc, (1 htr in next dc, 1 tr in next dc) 10 (12) times, 1 dc in last dc, turn. 22 (26) sts.',
    ),
    counts: [
      [23, 27],
      [22, 26],
      [22, 26],
    ],
    byKind: [null, null, { dc: [2, 2], htr: [10, 12], tr: [10, 12] }],
  },
  {
    name: 'gathered cuff',
    terms: 'uk',
    // 48 / 3 = 16 * 2 = 32; 54 / 3 = 18 * 2 = 36
    text: lines(
      'Make 48 (54) ch, join with ss in first ch to form a ring.',
      'Rnd 1: 1 ch, 1 dc in each ch around, join with ss in first dc.',
      'Rnd 2: 1 ch, (1 dc in next dc, dc2tog) 16 (18) times, join with ss in first dc. 32 (36) sts.',
    ),
    counts: [null, [48, 54], [32, 36]],
  },
  {
    name: 'sizes in groups of brackets',
    terms: 'uk',
    text: lines(
      'Make 51 (55, 59) (63, 67, 71) ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 50 (54, 58) (62, 66, 70) dc.',
      'Row 2: 1 ch, dc2tog, 1 dc in each of next 46 (50, 54) (58, 62, 66) dc, dc2tog, turn. 48 (52, 56) (60, 64, 68) sts.',
    ),
    counts: [
      [51, 55, 59, 63, 67, 71],
      [50, 54, 58, 62, 66, 70],
      [48, 52, 56, 60, 64, 68],
    ],
  },
  {
    name: 'ten sizes in one list',
    terms: 'uk',
    text: lines(
      'Make 41 (45, 49, 53, 57, 61, 65, 69, 73, 77) ch.',
      'Row 1: 1 htr in 2nd ch from hook, 1 htr in each ch to end, turn. 40 (44, 48, 52, 56, 60, 64, 68, 72, 76) htr.',
    ),
    counts: [
      [41, 45, 49, 53, 57, 61, 65, 69, 73, 77],
      [40, 44, 48, 52, 56, 60, 64, 68, 72, 76],
    ],
  },
  {
    name: 'size word before the number of the row',
    terms: 'uk',
    text: lines(
      'Sizes S (M, L)',
      ...base(20, 24, 28),
      'Sizes M (L) only:',
      'Row 2: 1 ch, 2 dc in first dc, 1 dc in each dc to end, turn. 25 (29) dc.',
      'All sizes:',
      'Row 3: 1 ch, 1 dc in each dc to end, turn. 20 (25, 29) dc.',
    ),
    counts: [
      [21, 25, 29],
      [20, 24, 28],
      [null, 25, 29],
      [20, 25, 29],
    ],
  },
  {
    name: 'thumb: sc in each st and each ch UK',
    terms: 'uk',
    text: lines(
      'Make 20 ch, join with a ss.',
      'Rnd 1: 1 ch, 1 dc in each ch, join. (20)',
      'Rnd 2: 1 ch, 1 dc in next 3 dc, 5 ch, miss 5 dc, 1 dc in each dc to end, join.',
      'Rnd 3: 1 ch, 1 dc in each dc and in each of 5 ch, join. (20)',
    ),
    counts: [null, 20, 15, 20],
  },
  {
    name: 'a band whose name stands on the line of its first row',
    terms: 'uk',
    // 24 as said; 2, three times (2 missed, 4), 2 missed and 2: 16 and 4 spaces, two in each of them: 24
    text: lines(
      ...base(10),
      'Rows 2 to 12: 1 ch, 1 dc in each dc to end, turn.',
      'Fasten off.',
      'Buttonband: With RS facing, join yarn to bottom corner of right front and work 24 dc evenly up the edge, turn.',
      'Next row: 1 ch, 1 dc in first 2 dc, *2 ch, miss 2 dc, 1 dc in next 4 dc; rep from * to last 4 dc, 2 ch, miss 2 dc, 1 dc in last 2 dc, turn.',
      'Next row: 1 ch, 1 dc in each dc and 2 dc in each 2-ch sp to end. 24 dc.',
    ),
    counts: [11, 10, 10, 24, 16, 24],
    spaces: [0, 0, 0, 0, 4, 0],
  },
  {
    name: 'the second side of a neck, with the same side facing',
    terms: 'us',
    // 29 = 10 + 9 left behind + 10
    text: lines(
      'Ch 31.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn. (29 dc)',
      'Row 2: Ch 3 (counts as dc), dc in next 9 sts, leave remaining sts unworked, turn. (10 dc)',
      'Fasten off.',
      'Second side: With same side facing as Row 2, skip next 9 unworked sts of Row 1, join yarn in next st.',
      'Row 2: Ch 3 (counts as dc), dc in next 9 sts, turn. (10 dc)',
    ),
    counts: [31, 29, 10, 10],
  },
  {
    name: 'a piece that is laid on its side for the row along its ends',
    terms: 'us',
    // 20 rows, one stitch in each end
    text: lines(
      'Ch 11.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Rows 2-20: Ch 1, sc in each st across, turn.',
      'Turn work 90 degrees and work along the ends of the rows.',
      'Row 21: Ch 1, sc in each row end, turn. (20 sc)',
    ),
    counts: [11, 10, 10, 20],
  },
  {
    name: 'a row whose number the first sizes do not have, and a decrease too few in one size of it',
    terms: 'us',
    // 28 - 1 = 27; 32 - 1 = 31, not 30; the first two sizes go on with their 20 and 24
    text: lines(
      'Sizes: XS (S, M, L)',
      'Ch 21 (25, 29, 33).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 20 (24, 28, 32) sc',
      'Row – (–, 2, 2): Ch 1, sc2tog, sc in each sc across, turn. – (–, 27, 30) sc',
      'Row 2 (2, 3, 3): Ch 1, sc in each sc across, turn. 20 (24, 27, 31) sc',
    ),
    counts: [
      [21, 25, 29, 33],
      [20, 24, 28, 32],
      [null, null, 27, 31],
      [20, 24, 27, 31],
    ],
    findings: [
      {
        row: 2,
        code: 'stated-count-wrong',
        severity: 'error',
        words: '30',
        sizes: [3],
        saying: ['L', '30', '31', '1'],
      },
    ],
  },
];
