/**
 * Written rows: increases and decreases within a row. An increase of m in one stitch adds m - 1, n worked
 * together take n - 1 away.
 */
import { lines, type RowCase } from '../types.ts';

const usStart = (n: number): readonly string[] => [
  `Ch ${n + 1}.`,
  'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
];
const ukStart = (n: number): readonly string[] => [
  `Make ${n + 1} ch.`,
  'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.',
];

export const shaping: readonly RowCase[] = [
  {
    name: 'the chain as one leg of a decrease',
    terms: 'us',
    text: lines(
      'Ch 22.',
      'Row 1: Dc in 4th ch from hook and in each ch across. (20 dc)',
      'Row 2: Ch 2, dc in next dc (counts as dc2tog), dc in each dc across to last 2 sts, dc2tog. (18 sts)',
    ),
    counts: [22, 20, 18],
    source: 'common practice, no source',
  },
  {
    name: 'one at the near end, two at the far end: the chain is the other one',
    terms: 'us',
    // 4 + 4, then 2 more at each end and 1 more on either side of the middle: 8, 14, … 62
    text: lines(
      'Ch 4, join with sl st to form a ring.',
      'Row 1: Ch 3, 3 dc in ring, ch 2, 4 dc in ring, turn.',
      'Row 2: Ch 3, dc in same st, dc in each dc to ch-2 sp, (2 dc, ch 2, 2 dc) in ch-2 sp, dc in each dc to last st, 2 dc in last st, turn.',
      'Rows 3-10: Rep Row 2.',
    ),
    counts: [4, 8, 14, 62],
    spaces: [0, 1, 1, 1],
    source: 'common practice, no source',
  },
  {
    name: 'two sc in first and last',
    terms: 'us',
    text: lines(
      ...usStart(20),
      'Row 2: Ch 1, 2 sc in first sc, sc in each sc across to last sc, 2 sc in last sc, turn. (22 sc)',
    ),
    counts: [21, 20, 22],
    byKind: [null, { sc: 20 }, { sc: 22 }],
  },
  {
    name: 'increase in the middle',
    terms: 'us',
    // 10 + 3 + 10
    text: lines(
      ...usStart(21),
      'Row 2: Ch 1, sc in next 10 sts, 3 sc in next st, sc in each rem st across, turn. (23 sc)',
    ),
    counts: [22, 21, 23],
  },
  {
    name: 'inc at each end, counted decreases as sc2tog',
    terms: 'us',
    // sc2tog takes 2: 20 - 2
    text: lines(...usStart(20), 'Row 2: Ch 1, sc2tog, sc in next 16 sts, sc2tog, turn. (18 sts)'),
    counts: [21, 20, 18],
    byKind: [null, null, { sc2tog: 2, sc: 16 }],
  },
  {
    name: 'sc2tog over first 2 and last 2',
    terms: 'us',
    text: lines(
      ...usStart(20),
      'Row 2: Ch 1, sc2tog over first 2 sts, sc in each st across to last 2 sts, sc2tog over last 2 sts, turn. (18 sc)',
    ),
    counts: [21, 20, 18],
  },
  {
    name: 'sc3tog',
    terms: 'us',
    // 9 + 1 + 9
    text: lines(...usStart(21), 'Row 2: Ch 1, sc in next 9 sts, sc3tog, sc in last 9 sts, turn. (19)'),
    counts: [22, 21, 19],
    byKind: [null, null, { sc: 18, sc3tog: 1 }],
  },
  {
    name: 'dc2tog beside a counting chain',
    terms: 'us',
    // ch 3 over st 1; dc2tog over 2 and 3; dc in 4 to 17 = 14; dc2tog over 18, 19; dc in 20: 1 + 1 + 14 + 1 + 1 = 18
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 3 (counts as dc), dc2tog over next 2 sts, dc in next 14 sts, dc2tog over next 2 sts, dc in last st, turn. (18 sts)',
    ),
    counts: [20, 18],
    byKind: [null, { dc: 16, dc2tog: 2 }],
  },
  {
    name: 'dc increase at each end, chain counts',
    terms: 'us',
    // ch 3 and dc in the same st = 2; 18 dc; 2 dc in the last = 22
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 3 (counts as dc), dc in same st, dc in next 18 sts, 2 dc in last st, turn. (22 dc)',
    ),
    counts: [20, 22],
    byKind: [null, { dc: 22 }],
  },
  {
    name: 'dc increase into the turning chain',
    terms: 'us',
    // row 1: 20 dc; row 2: ch 3 and dc in first = 2; next 18 = 18; 2 dc in top = 2
    text: lines(
      'Ch 22.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn. (20 dc)',
      'Row 2: Ch 3 (counts as dc), dc in first dc, dc in next 18 dc, 2 dc in top of turning ch, turn. (22 dc)',
    ),
    counts: [22, 20, 22],
  },
  {
    name: 'inc as a word',
    terms: 'us',
    text: lines(...usStart(12), 'Row 2: Ch 1, inc, sc in next 10 sts, inc, turn. (14 sc)'),
    counts: [13, 12, 14],
    findings: [{ row: 2, code: 'definition-assumed', severity: 'note', words: 'inc' }],
  },
  {
    name: 'inc and dec defined before the rows',
    terms: 'us',
    // (1 + 2) and dec = 1: 6 * (1 + 2 + 1) over 6 * (1 + 1 + 2)
    text: lines(
      'Inc: 2 sc in same st.',
      'Dec: sc2tog over next 2 sts.',
      '',
      'Fsc 24.',
      'Row 1: Ch 1, *sc in next st, inc in next st, dec over next 2 sts; rep from * across, turn. (24 sts)',
    ),
    counts: [24, 24],
  },
  {
    name: 'dec as a word over next 2',
    terms: 'us',
    text: lines(
      ...usStart(20),
      'Row 2: Ch 1, sc in next 9 sts, dec over next 2 sts, sc in next 9 sts, turn. (19 sc)',
    ),
    counts: [21, 20, 19],
    findings: [{ row: 2, code: 'definition-assumed', severity: 'note', words: 'dec' }],
  },
  {
    name: 'sc next 2 tog',
    terms: 'us',
    text: lines(...usStart(20), 'Row 2: Ch 1, sc next 2 sts tog, sc in each st across, turn. (19 sc)'),
    counts: [21, 20, 19],
  },
  {
    name: 'skip one as a decrease',
    terms: 'us',
    text: lines(
      ...usStart(20),
      'Row 2: Ch 1, sc in first st, sk next st, sc in next 16 sts, sk next st, sc in last st, turn. (18 sc)',
    ),
    counts: [21, 20, 18],
    byKind: [null, null, { sc: 18 }],
  },
  {
    name: 'decreases spread by a repeat',
    terms: 'us',
    // 30 / 5 = 6 repeats of 4
    text: lines('Fsc 30.', 'Row 1: Ch 1, *sc in next 3 sts, sc2tog; rep from * across, turn. (24 sts)'),
    counts: [30, 24],
    byKind: [null, { sc: 18, sc2tog: 6 }],
  },
  {
    name: 'inc in every 3rd st',
    terms: 'us',
    // sts 3, 6, … 18 doubled
    text: lines(...usStart(18), 'Row 2: Ch 1, sc across, inc in every 3rd st, turn. (24 sc)'),
    counts: [19, 18, 24],
  },
  {
    name: 'increase of four in a corner',
    terms: 'us',
    // 10 + 5 + 10
    text: lines(
      ...usStart(21),
      'Row 2: Ch 1, sc in next 10 sts, 5 sc in next st, sc in last 10 sts. (25 sc)',
    ),
    counts: [22, 21, 25],
  },
  {
    name: 'shaping by size',
    terms: 'us',
    // 20, 24, 28 less 2
    text: lines(
      'Ch 21 (25, 29).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 20 (24, 28) sc',
      'Row 2: Ch 1, sc2tog, sc in next 16 (20, 24) sts, sc2tog, turn. 18 (22, 26) sts',
    ),
    counts: [
      [21, 25, 29],
      [20, 24, 28],
      [18, 22, 26],
    ],
    byKind: [null, null, { sc2tog: [2, 2, 2], sc: [16, 20, 24] }],
  },
  {
    name: 'hdc2tog',
    terms: 'us',
    // 1 + 10 * 1 + 1 over 1 + 20 + 1
    text: lines('Fsc 22.', 'Row 1: Ch 1, hdc in first st, (hdc2tog) 10 times, hdc in last st. (12 sts)'),
    counts: [22, 12],
    byKind: [null, { hdc: 2, hdc2tog: 10 }],
  },
  {
    name: 'tr3tog at both ends of the row',
    terms: 'us',
    // ch 3 does not count: tr3tog + 14 + tr3tog over 20
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 3 (does not count as a st), tr3tog over first 3 sts, tr in next 14 sts, tr3tog over last 3 sts. (16 sts)',
    ),
    counts: [20, 16],
    byKind: [null, { tr: 14, tr3tog: 2 }],
  },
  {
    name: 'two dc in first and last',
    terms: 'uk',
    text: lines(
      ...ukStart(20),
      'Row 2: 1 ch, 2 dc in first dc, 1 dc in each dc to last dc, 2 dc in last dc, turn. (22 dc)',
    ),
    counts: [21, 20, 22],
    byKind: [null, { dc: 20 }, { dc: 22 }],
  },
  {
    name: 'dc2tog at each end',
    terms: 'uk',
    text: lines(...ukStart(20), 'Row 2: 1 ch, dc2tog, 1 dc in each of next 16 dc, dc2tog, turn. (18 sts)'),
    counts: [21, 20, 18],
    byKind: [null, null, { dc2tog: 2, dc: 16 }],
  },
  {
    name: 'dc2tog to last 2 sts',
    terms: 'uk',
    text: lines(
      ...ukStart(20),
      'Row 2: 1 ch, dc2tog over first 2 sts, 1 dc in each st to last 2 sts, dc2tog over last 2 sts, turn. (18 dc)',
    ),
    counts: [21, 20, 18],
  },
  {
    name: 'dc3tog',
    terms: 'uk',
    text: lines(
      ...ukStart(21),
      'Row 2: 1 ch, 1 dc in each of next 9 dc, dc3tog, 1 dc in each of last 9 dc, turn. 19 sts.',
    ),
    counts: [22, 21, 19],
  },
  {
    name: 'tr2tog beside a counting chain',
    terms: 'uk',
    // 1 + 1 + 14 + 1 + 1
    text: lines(
      ...ukStart(20),
      'Row 2: 3 ch (counts as 1 tr), miss first st, tr2tog over next 2 sts, 1 tr in each of next 14 sts, tr2tog over next 2 sts, 1 tr in last st, turn. (18 sts)',
    ),
    counts: [21, 20, 18],
    byKind: [null, null, { tr: 16, tr2tog: 2 }],
  },
  {
    name: 'tr increase at each end, chain counts',
    terms: 'uk',
    text: lines(
      ...ukStart(20),
      'Row 2: 3 ch (counts as 1 tr), 1 tr in same st, 1 tr in each of next 18 sts, 2 tr in last st, turn. (22 tr)',
    ),
    counts: [21, 20, 22],
  },
  {
    name: 'decreases spread by a repeat',
    terms: 'uk',
    // 28 / 7 = 4 repeats of 6
    text: lines(...ukStart(28), 'Row 2: 1 ch, (1 dc in each of next 5 dc, dc2tog) 4 times, turn. (24 sts)'),
    counts: [29, 28, 24],
    byKind: [null, null, { dc: 20, dc2tog: 4 }],
  },
  {
    name: 'miss one as a decrease',
    terms: 'uk',
    text: lines(
      ...ukStart(20),
      'Row 2: 1 ch, 1 dc in first dc, miss 1 dc, 1 dc in each of next 16 dc, miss 1 dc, 1 dc in last dc, turn. 18 dc.',
    ),
    counts: [21, 20, 18],
  },
  {
    name: 'htr2tog by size',
    terms: 'uk',
    // 24 - 2, 28 - 2
    text: lines(
      'Make 25 (29) ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end.',
      'Row 2: 1 ch, htr2tog, 1 htr in each of next 20 (24) sts, htr2tog, turn. 22 (26) sts.',
    ),
    counts: [
      [25, 29],
      [24, 28],
      [22, 26],
    ],
  },
  {
    name: 'raglan corners in a flat row',
    terms: 'uk',
    // 40 sts: 5 + (1 → 3) + 8 + (1 → 3) + 10 + (1 → 3) + 8 + (1 → 3) + 5 = 40 used, 48 made
    text: lines(
      ...ukStart(40),
      'Row 2 (RS): 1 ch, 1 dc in each of next 5 dc, 3 dc in next dc, 1 dc in each of next 8 dc, 3 dc in next dc, 1 dc in each of next 10 dc, 3 dc in next dc, 1 dc in each of next 8 dc, 3 dc in next dc, 1 dc in each of last 5 dc, turn. (48 dc)',
    ),
    counts: [41, 40, 48],
  },
  {
    name: 'a triangle from the middle, to and in its centre space',
    terms: 'us',
    // each side grows by 3: 3, 6, 9
    text: lines(
      'Ch 4, join with sl st to form ring.',
      'Row 1: Ch 3, 2 dc in ring, ch 2, 3 dc in ring, turn. (6 dc, 1 ch-2 sp)',
      'Row 2: Ch 3, dc in first st, dc in each st to center ch-2 sp, (2 dc, ch 2, 2 dc) in center sp, dc in each st to last st, 2 dc in last st, turn. (12 dc)',
      'Row 3: Ch 3, dc in first st, dc in each dc to corner, (2 dc, ch 2, 2 dc) in ch-2 sp, dc in each dc across to last st, 2 dc in last st, turn. (18 dc)',
    ),
    counts: [4, 6, 12, 18],
    spaces: [0, 1, 1, 1],
    source: 'common practice, no source',
  },
  {
    name: 'to the centre stitch, and to one before it',
    terms: 'us',
    // 21: 2 tog, 7, 3 tog over 10 to 12, 7, 2 tog: 1 + 7 + 1 + 7 + 1 = 17; then 8 + 3 + 8 = 19
    text: lines(
      'Ch 22.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (21 sc)',
      'Row 2: Ch 1, sc2tog, sc in each st to 1 st before center st, sc3tog, sc in each st to last 2 sts, sc2tog, turn. (17 sts)',
      'Row 3: Ch 1, sc in each st to center st, 3 sc in center st, place marker in center st of 3, sc in each st to end. (19 sc)',
    ),
    counts: [22, 21, 17, 19],
    source: 'common practice, no source',
  },
  {
    name: 'a decrease over the last stitch and the turning chain',
    terms: 'us',
    // each row one fewer: the dc and the turning chain become one
    text: lines(
      'Ch 30.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn. (28 dc)',
      'Row 2: Ch 3, dc in each dc across to last 2 sts, dc2tog over last dc and tch, turn.',
      'Row 3: Ch 3, dc in next 24 dc, dc2tog over next dc and turning ch, turn.',
      'Row 4: Ch 3, dc to last 2 sts, dc2tog (last dc and top of tch), turn.',
      'Row 5: Ch 3, dc to last 2 sts, work last 2 sts tog, turn.',
    ),
    counts: [30, 28, 27, 26, 25, 24],
    source: 'common practice, no source',
  },
];
