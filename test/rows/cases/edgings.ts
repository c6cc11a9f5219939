/**
 * Written rows: blankets, borders and edgings in British terms.
 */
import { lines, type RowCase } from '../types.ts';

const ukDc = (n: number): readonly string[] => [
  `Make ${n + 1} ch.`,
  `Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (${n} dc)`,
];

export const edgings: readonly RowCase[] = [
  {
    name: 'a count for each edge, which add up',
    terms: 'us',
    // 29 + 30 + 29 + 30
    text: lines(
      'Ch 30.',
      'Row 1: Sc in 2nd ch from hook and across.',
      'Rows 2-30: Ch 1, turn, sc across.',
      'Rnd 1: Ch 1, turn, sc in each sc across (29 sc), ch 2, sc in end of each row down side (30 sc), ch 2, sc in each free loop of beg ch (29 sc), ch 2, sc in end of each row up side (30 sc), ch 2, join.',
    ),
    counts: [30, 29, 29, 118],
    spaces: [0, 0, 0, 4],
    source: 'common practice, no source',
  },
  {
    name: 'a count for each edge, one of them wrong',
    terms: 'us',
    text: lines(
      'Ch 30.',
      'Row 1: Sc in 2nd ch from hook and across.',
      'Rows 2-30: Ch 1, turn, sc across.',
      'Rnd 1: Ch 1, turn, sc in each sc across (29 sc), ch 2, sc in end of each row down side (33 sc), ch 2, sc in each free loop of beg ch (29 sc), ch 2, sc in end of each row up side (30 sc), ch 2, join.',
    ),
    counts: [30, 29, 29, 118],
    spaces: [0, 0, 0, 4],
    findings: [{ row: 4, code: 'stated-count-wrong' }],
  },
  {
    name: 'a border from edge to edge of a square, its corners named',
    terms: 'us',
    // 4 times 18 and 4 times 3
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Rows 2-20: Ch 1, sc in each sc across, turn.',
      'Rnd 1: Ch 1, 3 sc in first st, sc in next 18 sts, 3 sc in last st, work 18 sc evenly down side, 3 sc in corner, 18 sc along bottom, 3 sc in corner, 18 sc evenly up side, join. (84 sc)',
    ),
    counts: [21, 20, 20, 84],
    source: 'common practice, no source',
  },
  {
    name: 'a border that begins in a corner',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Rows 2-20: Ch 1, sc in each sc across, turn.',
      'Rnd 1: Ch 1, 3 sc in corner, sc in next 18 sts, 3 sc in corner, 20 sc evenly along side, 3 sc in corner, sc in next 18 ch along foundation ch, 3 sc in corner, 20 sc evenly along side, join. (88 sc)',
    ),
    counts: [21, 20, 20, 88],
    source: 'common practice, no source',
  },
  {
    name: 'all four sides, the number at the end',
    terms: 'uk',
    text: lines(
      'Ch 21.',
      'Row 1: Dc in 2nd ch from hook and in each ch across, turn.',
      'Rows 2-20: Ch 1, dc in each dc across, turn.',
      'Rnd 1: Ch 1, dc evenly around all four sides, working 3 dc in each corner, ss to first dc. (88 dc)',
    ),
    counts: [21, 20, 20, 88],
    source: 'common practice, no source',
  },
  {
    name: 'a corner where there is none',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, sc in next 5 sts, 3 sc in corner, sc in each st across.',
    ),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'place-does-not-exist' }],
  },
  {
    name: 'moss stitch over a chain',
    terms: 'uk',
    // 21 = 1 + 10 * 2: 11 dc, 10 spaces; row 3: 1 dc in first, 1 dc in sp, (1 ch, miss 1, 1 dc in sp) 9 times, 1 dc in last = 12 dc, 9 spaces
    text: lines(
      ...ukDc(21),
      'Row 2: 1 ch, 1 dc in first dc, *1 ch, miss 1 dc, 1 dc in next dc; rep from * to end, turn. (11 dc, 10 ch-sps)',
      'Row 3: 1 ch, 1 dc in first dc, 1 dc in next ch-sp, *1 ch, miss 1 dc, 1 dc in next ch-sp; rep from * to last dc, 1 dc in last dc, turn. (12 dc, 9 ch-sps)',
    ),
    counts: [22, 21, 11, 12],
    spaces: [0, 0, 10, 9],
  },
  {
    name: 'scallops of 5 tr',
    terms: 'uk',
    // 25 = 1 + 4 * 6
    text: lines(
      ...ukDc(25),
      'Row 2: 1 ch, 1 dc in first dc, *miss 2 dc, 5 tr in next dc, miss 2 dc, 1 dc in next dc; rep from * to end. Fasten off. (25 sts)',
    ),
    counts: [26, 25, 25],
    byKind: [null, null, { dc: 5, tr: 20 }],
  },
  {
    name: 'scallops joined with ss',
    terms: 'uk',
    text: lines(
      ...ukDc(25),
      'Row 2: 1 ch, 1 dc in first dc, *miss 1 dc, 5 tr in next dc, miss 1 dc, ss in next dc; rep from * to end. Fasten off.',
    ),
    // 1 dc, 6 * 5 tr and 6 ss worked as fabric
    counts: [26, 25, 37],
    byKind: [null, null, { dc: 1, tr: 30 }],
  },
  {
    name: 'crab stitch',
    terms: 'uk',
    text: lines(...ukDc(20), 'Row 2: 1 ch, 1 rev dc in each dc to end. Fasten off. (20 sts)'),
    counts: [21, 20, 20],
  },
  {
    name: 'picots on every fourth',
    terms: 'uk',
    text: lines(
      'Picot: 3 ch, ss in 3rd ch from hook.',
      ...ukDc(24),
      'Row 2: 1 ch, *1 dc in each of next 4 dc, picot; rep from * to end. (24 dc, 6 picots)',
    ),
    counts: [25, 24, 24],
  },
  {
    name: 'block stripes of 3 tr in spaces',
    terms: 'uk',
    // 26 = 1 + 8 * 3 + 1: 1 + 8 * 3 + 1 tr
    text: lines(
      ...ukDc(26),
      'Row 2: 3 ch (counts as 1 tr), miss first dc, *miss 2 dc, 3 tr in next dc; rep from * to last dc, 1 tr in last dc, turn. (26 tr)',
    ),
    counts: [27, 26, 26],
  },
  {
    name: 'border with a space in each corner',
    terms: 'uk',
    text: lines(
      'Rnd 1: 3 ch (counts as 1 tr), 2 tr in magic ring, *2 ch, 3 tr in ring; rep from * twice more, 2 ch, join with ss in top of 3 ch. (12 tr)',
      'Rnd 2: 1 ch, *1 dc in each of next 3 tr, (1 dc, 2 ch, 1 dc) in next ch-sp; rep from * around, join with ss in first dc. (20 dc, 4 ch-sps)',
    ),
    // 4 * (3 + 2) = 20
    counts: [12, 20],
    spaces: [4, 4],
  },
  {
    name: 'spaces of 1 ch on a chain, then filled',
    terms: 'uk',
    text: lines(
      'Make 22 ch.',
      'Row 1: 1 dc in 2nd ch from hook, *1 ch, miss 1 ch, 1 dc in next ch; rep from * to end, turn. (11 dc, 10 ch-sps)',
      'Row 2: 1 ch, 1 dc in each dc and each ch-sp to end, turn. (21 dc)',
    ),
    counts: [22, 11, 21],
    spaces: [0, 10, 0],
  },
  {
    name: 'trellis of 5 ch',
    terms: 'uk',
    // 25 = 1 + 6 * 4; row 3: 5 ch = 1 tr + 2 ch; 1 dc in each of 6 loops with 5 ch between; 2 ch, 1 tr in last: 2 tr + 6 dc = 8; spaces 1 + 5 + 1 = 7
    text: lines(
      ...ukDc(25),
      'Row 2: 1 ch, 1 dc in first dc, *5 ch, miss 3 dc, 1 dc in next dc; rep from * to end, turn. (7 dc, 6 ch-sps)',
      'Row 3: 5 ch (counts as 1 tr, 2 ch), 1 dc in next 5ch-sp, *5 ch, 1 dc in next 5ch-sp; rep from * to end, 2 ch, 1 tr in last dc, turn.',
    ),
    counts: [26, 25, 7, 8],
    spaces: [0, 0, 6, 7],
    byKind: [null, null, { dc: 7 }, { dc: 6, tr: 2 }],
    source: 'common practice, no source',
  },
  {
    name: 'crossed stitches on an edge',
    terms: 'uk',
    text: lines(
      ...ukDc(22),
      'Row 2: 3 ch (counts as 1 tr), miss first dc, *miss 1 dc, 1 tr in next dc, 1 tr in missed dc; rep from * to last dc, 1 tr in last dc, turn. (22 tr)',
    ),
    counts: [23, 22, 22],
  },
  {
    name: 'shells with a space, in 2ch-sp of next shell',
    terms: 'uk',
    // 26 = 1 + 4 * 6 + 1; 2 + 4 * 4 = 18, 4 spaces
    text: lines(
      'Shell: (2 tr, 2 ch, 2 tr) in place indicated.',
      ...ukDc(26),
      'Row 2: 3 ch (counts as 1 tr), miss first dc, *miss 2 dc, shell in next dc, miss 3 dc; rep from * to last dc, 1 tr in last dc, turn. (4 shells)',
      'Row 3: 3 ch (counts as 1 tr), shell in 2ch-sp of each shell to end, 1 tr in top of turning ch, turn. (4 shells)',
    ),
    counts: [27, 26, 18, 18],
    spaces: [0, 0, 4, 4],
    units: [null, null, { shell: 4 }, { shell: 4 }],
  },
  {
    name: 'doily start of dtr groups',
    terms: 'uk',
    // 4 ch counts: 24 dtr in all, 8 groups of 3 with 3 ch between: 8 spaces
    text: lines(
      'Make 8 ch, join with ss to form a ring.',
      'Rnd 1: 4 ch (counts as 1 dtr), 2 dtr in ring, 3 ch, (3 dtr, 3 ch) 7 times in ring, join with ss in top of 4 ch. (24 dtr, 8 ch-sps)',
    ),
    counts: [null, 24],
    spaces: [null, 8],
  },
  {
    name: 'coaster: circle of tr with spaces between pairs',
    terms: 'uk',
    // rnd 1: 12 tr; rnd 2: 12 pairs = 24 tr, 12 spaces
    text: lines(
      'Rnd 1: 3 ch (counts as 1 tr), 11 tr in magic ring, join with ss in top of 3 ch. (12 tr)',
      'Rnd 2: 3 ch (counts as 1 tr), 1 tr in same st, 1 ch, (2 tr in next tr, 1 ch) 11 times, join with ss in top of 3 ch. (24 tr, 12 ch-sps)',
      'Rnd 3: Ss in next tr and in next ch-sp, 1 ch, 3 dc in same sp, 3 dc in each ch-sp around, join with ss in first dc. (36 dc)',
    ),
    counts: [12, 24, 36],
    spaces: [0, 12, 0],
  },
  {
    name: 'corner to corner: the first block and its turn',
    terms: 'uk',
    text: lines('Make 6 ch.', 'Row 1: 1 tr in 4th ch from hook, 1 tr in each of next 2 ch, turn. (4 tr)'),
    // the missed 3 ch count as a tr: 1 + 3
    counts: [6, 4],
  },
  {
    name: 'linked squares: dc round in back loops',
    terms: 'uk',
    text: lines(
      'Rnd 1: 1 ch, 12 dc in magic ring, join with ss in first dc. (12 dc)',
      'Rnd 2: 1 ch, *1 dc in BLO of each of next 2 dc, (1 dc, 2 ch, 1 dc) in next dc; rep from * around, join with ss in first dc. (16 dc, 4 ch-sps)',
    ),
    counts: [12, 16],
    spaces: [0, 4],
  },
  {
    name: 'a number along an edge without "evenly" or "each" is all of it',
    terms: 'us',
    // 10 rows have 10 ends: 14 at one side, 19 of 20 chains' other sides, 14 at the other.
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Rows 2-10: Ch 1, sc in each st across, turn.',
      'Fasten off. With RS facing, join yarn in first row-end.',
      'Row 1: Work 14 sc along the row ends. (14 sc)',
    ),
    counts: [21, 20, 20, 14],
    source: 'common practice, no source',
  },
  {
    name: 'edges of a front by their names',
    terms: 'us',
    // 8 + 6 + 6
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Ch 1, work 8 sc up right front edge, 6 sc across back neck, 6 sc down left front edge, turn. (20 sc)',
    ),
    counts: [21, 20, 20],
    source: 'common practice, no source',
  },
  {
    name: 'rows until a piece by its name has so many, a starred part over the whole row',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Ch 1, sc in first st, *sc in next st*, work from *-* the whole row, turn. (20 sc)',
      'Repeat Row 2 until the heel flap has 16 rows.',
      'Thumb row: Ch 1, sc in first 10 sts, turn, leaving rem sts unworked. (10 sc)',
    ),
    counts: [21, 20, 20, 20, 10],
    source: 'common practice, no source',
  },
  {
    name: 'the last row of a range for each size, between slashes',
    terms: 'us',
    text: lines(
      'Sizes: S (M, L)',
      'Ch 8 / 9 / 10.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (7 / 8 / 9)',
      'Row 2: Ch 1, sc in each st across, turn.',
      'Row 3 to 50 / 62 / 72: Same as row 2. (7 / 8 / 9)',
    ),
    counts: [
      [8, 9, 10],
      [7, 8, 9],
      [7, 8, 9],
      [7, 8, 9],
    ],
    source: 'common practice, no source',
  },
  {
    name: 'V-stitches between plain ends, one too many said',
    terms: 'us',
    // 14 sts: the chain, a V in the 3rd, 6th, 9th and 12th, and the last; 4 Vs and 2 hdc.
    text: lines(
      'V-stitch (V-st): (hdc, ch 1, hdc) in st indicated.',
      'Ch 15.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (14 sc)',
      'Row 2: Ch 2 (counts as hdc), sk first 2 sts, V-st in next st, *sk 2 sts, V-st in next st; rep from * to last 2 sts, sk next st, hdc in last st, turn. (5 V-sts, 2 hdc)',
    ),
    counts: [15, 14, 10],
    findings: [{ row: 2, code: 'stated-count-wrong', words: '(5 V-sts, 2 hdc)', saying: ['5', '4'] }],
    source: 'common practice, no source',
  },
  {
    name: 'a count behind a dash before the ends are woven in',
    terms: 'us',
    text: lines(
      'Rnd 1: Fhdc 60, join with sl st in first st. (60)',
      'Rnd 2: Ch 1, sc in each st around, join, fasten off. — 60 sc Weave in ends.',
    ),
    counts: [60, 60],
    source: 'common practice, no source',
  },
  {
    name: 'a band evenly up an edge by its name',
    terms: 'uk',
    text: lines(
      'Make 28 ch.',
      'Row 1: 1 tr in 4th ch from hook, 1 tr in each ch to end, turn. (26 tr)',
      'Row 2: 1 ch, work 40 dc evenly up front edge, turn. (40 dc)',
      'Buttonhole row: 1 ch, 1 dc in first 2 dc, *2 ch, miss 2 dc, 1 dc in next 6 dc; rep from * 3 more times, 1 dc in each dc to end. (32 dc)',
    ),
    // 2, four times 6, and 6 of the 40 are left behind four gaps of 2.
    counts: [28, 26, 40, 32],
    source: 'common practice, no source',
  },
  ...[
    'at the right corner of the long edge',
    'at right-hand corner',
    'at the right-hand end of the top edge',
    'at one end of the long edge',
    'at the beginning of the straight edge',
    'to the left-hand corner of the short side',
  ].map(
    (where): RowCase => ({
      name: `an edging joined ${where}`,
      terms: 'us',
      text: lines(
        'Ch 10.',
        'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (9 sc)',
        'Row 2: Ch 1, sc in each st across. Fasten off. (9 sc)',
        `Row 3: With RS facing, join yarn with sl st ${where}, ch 1, 2 sc in each row-end across, turn. (4 sc)`,
      ),
      counts: [10, 9, 9, 4],
      source: 'common practice, no source',
    }),
  ),
];
