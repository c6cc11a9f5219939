/**
 * Written rows: stitches worked in one loop of the stitch, in the bar behind it, or between two stitches.
 * The loop changes nothing in the count.
 */
import { lines, type RowCase } from '../types.ts';

export const loops: readonly RowCase[] = [
  {
    name: 'in BLO',
    terms: 'us',
    text: lines(
      'Ch 13.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (12 sc)',
      'Row 2: Ch 1, sc in BLO of each st across, turn. (12 sc)',
    ),
    counts: [13, 12, 12],
  },
  {
    name: 'blo sc',
    terms: 'us',
    text: lines(
      'Fsc 12.',
      'Row 1: Ch 1, sc in first st, blo sc in next 10 sts, sc in last st, turn. (12)',
      'Row 2: Ch 1, sc blo across, turn. (12)',
    ),
    counts: [12, 12, 12],
  },
  {
    name: 'working in back loops only',
    terms: 'us',
    text: lines('Fsc 15.', 'Row 1: Ch 1, working in back loops only, hdc in each st across, turn. (15 hdc)'),
    counts: [15, 15],
    byKind: [null, { hdc: 15 }],
  },
  {
    name: 'in front loop only of each',
    terms: 'us',
    text: lines('Fsc 15.', 'Row 1: Ch 1, sc in front loop only of each st across, turn. (15 sc)'),
    counts: [15, 15],
  },
  {
    name: 'in flo, alternately with blo',
    terms: 'us',
    text: lines(
      'Fsc 16.',
      'Row 1: Ch 1, *sc in FLO of next st, sc in BLO of next st; rep from * across, turn. (16 sc)',
    ),
    counts: [16, 16],
  },
  {
    name: 'third loop',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 10 hdc in magic ring; join with sl st in first hdc. (10 hdc)',
      'Rnd 2: Ch 1, 2 hdc in each st around; join with sl st in first hdc. (20 hdc)',
      'Rnd 3: Ch 1, hdc in third loop of each st around; join with sl st in first hdc. (20 hdc)',
    ),
    counts: [10, 20, 20],
  },
  {
    name: 'between stitches',
    terms: 'us',
    // 14 dc leave 13 gaps: ch 3 and 13 = 14
    text: lines(
      'Fsc 14.',
      'Row 1: Ch 3 (does not count as a st), dc in each st across, turn. (14 dc)',
      'Row 2: Ch 3 (counts as dc), dc in each sp between sts across, turn. (14 dc)',
    ),
    counts: [14, 14, 14],
    clean: false,
  },
  {
    name: 'linen: ch 1 and sc in spaces',
    terms: 'us',
    // 13 sts: sc, (ch 1, sk 1, sc) 6 times = 7 sc, 6 spaces; row 2: sc, sc in sp, (ch 1, sc in sp) 5 times, sc in last = 8 sc, 5 spaces
    text: lines(
      'Fsc 13.',
      'Row 1: Ch 1, sc in first st, *ch 1, sk next st, sc in next st; rep from * across, turn. (7 sc, 6 ch-1 sps)',
      'Row 2: Ch 1, sc in first sc, sc in next ch-1 sp, *ch 1, sk next sc, sc in next ch-1 sp; rep from * to last sc, sc in last sc, turn. (8 sc, 5 ch-1 sps)',
      'Row 3: Ch 1, sc in first sc, *ch 1, sk next sc, sc in next ch-1 sp; rep from * to last 2 sc, ch 1, sk next sc, sc in last sc, turn. (7 sc, 6 ch-1 sps)',
    ),
    counts: [13, 7, 8, 7],
    spaces: [0, 6, 5, 6],
    source: 'common practice, no source',
  },
  {
    name: 'ribbed brim in short words',
    terms: 'us',
    text: lines(
      'Ch 9.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (8)',
      'Rows 2-60: Ch 1, sc tbl in each st across, turn. (8)',
    ),
    counts: [9, 8, 8],
  },
  {
    name: 'in BLO',
    terms: 'uk',
    text: lines(
      'Make 13 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (12 dc)',
      'Row 2: 1 ch, 1 dc in BLO of each dc to end, turn. (12 dc)',
    ),
    counts: [13, 12, 12],
    byKind: [null, { dc: 12 }, null],
  },
  {
    name: 'dc tbl',
    terms: 'uk',
    text: lines(
      'Make 11 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end.',
      'Row 2: 1 ch, dc tbl to end, turn. (10 dc)',
    ),
    counts: [11, 10, 10],
  },
  {
    name: 'through the front loop',
    terms: 'uk',
    text: lines(
      'Row 1: Work 18 fdc, turn.',
      'Row 2: 1 ch, 1 htr in front loop only of each st to end, turn. (18 htr)',
    ),
    counts: [18, 18],
  },
  {
    name: 'slip stitch rib',
    terms: 'uk',
    text: lines(
      'Make 11 ch.',
      'Row 1: Ss in 2nd ch from hook, ss in each ch to end, turn. (10 ss)',
      'Row 2: 1 ch, ss in back loop only of each st to end, turn. (10 ss)',
    ),
    counts: [11, 10, 10],
  },
  {
    name: 'back bar of htr',
    terms: 'uk',
    text: lines(
      'Rnd 1: 1 ch, 9 htr in magic ring, join with ss in first htr. (9 htr)',
      'Rnd 2: 1 ch, 2 htr in third loop of each st around, join with ss in first htr. (18 htr)',
    ),
    counts: [9, 18],
  },
  {
    name: 'into each loop across, the stitch at either end passed over',
    terms: 'us',
    text: lines(
      'Ch 10.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, sc in first st, *ch 4, skip next st, sc in next st; rep from * across, turn. (5 sc, 4 ch-4 sps)',
      'Row 3: Ch 1, 4 sc in each ch-4 sp across.',
    ),
    counts: [10, 9, 5, 16],
    spaces: [0, 0, 4, 0],
    source: 'common practice, no source',
  },
  {
    name: 'into each loop across, the chain standing for one end and nothing for the other',
    terms: 'us',
    text: lines(
      'Ch 10.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, sc in first st, *ch 4, skip next st, sc in next st; rep from * to end of row, turn (5 sts)',
      'Row 3: Ch 3 (counts as dc), 4 dc in each ch-4 sp across.',
    ),
    counts: [10, 9, 5, 17],
    spaces: [0, 0, 4, 0],
    findings: [{ row: 3, code: 'stitches-left-unworked', saying: ['1 st'] }],
    source: 'common practice, no source',
  },
];
