/**
 * Written rows: flat rows worked even, with every way of saying what the turning chain is. Each case works
 * over a known number of stitches and must end with it again.
 */
import { lines, type RowCase } from '../types.ts';

const rule =
  'published: a counting turning chain stands over the first stitch and is worked into at its top; one that does not count is never worked into';

export const flat: readonly RowCase[] = [
  {
    name: 'sc rows, ch 1 at the start',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Ch 1, sc in each sc across, turn. (20 sc)',
    ),
    counts: [21, 20, 20],
    byKind: [null, { sc: 20 }, { sc: 20 }],
    spaces: [0, 0, 0],
    source: rule,
  },
  {
    name: 'sc rows, ch 1 and turn in the row before',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, ch 1, turn. 20 sc',
      'Row 2: Sc in each sc across, ch 1, turn. 20 sc',
      'Row 3: Sc in each sc across. 20 sc',
    ),
    counts: [21, 20, 20, 20],
  },
  {
    name: 'sc rows, turn before the chain',
    terms: 'us',
    text: lines(
      'Ch 16.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (15)',
      'Row 2: Turn, ch 1, sc in first st and in each st across. (15)',
    ),
    counts: [16, 15, 15],
  },
  {
    name: 'sc rows, chain said not to count',
    terms: 'us',
    text: lines(
      'Ch 16.',
      'Row 1: Sc in 2nd ch from hook, sc in ea ch across, turn.',
      'Row 2: Ch 1 (does not count as a st), sc in ea st across, turn. (15 sc)',
    ),
    counts: [16, 15, 15],
  },
  {
    name: 'hdc rows, ch 2 counts',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Hdc in 3rd ch from hook (skipped ch count as hdc) and in each ch across, turn. (20 hdc)',
      'Row 2: Ch 2 (counts as hdc), skip first st, hdc in each st across, turn. (20 hdc)',
    ),
    counts: [21, 20, 20],
    byKind: [null, { hdc: 20 }, { hdc: 20 }],
    source: rule,
  },
  {
    name: 'hdc rows, ch 2 does not count',
    terms: 'us',
    text: lines(
      'Ch 22.',
      'Row 1: Hdc in 3rd ch from hook (skipped ch does not count) and in each ch across, turn. (20 hdc)',
      'Row 2: Ch 2 (does not count as a st), hdc in each st across, turn. (20 hdc)',
    ),
    counts: [22, 20, 20],
    byKind: [null, { hdc: 20 }, { hdc: 20 }],
    source: rule,
  },
  {
    name: 'hdc rows, ch 1',
    terms: 'us',
    text: lines(
      'Ch 19.',
      'Row 1: Hdc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, hdc in first st and in each st across, turn. (18 hdc)',
    ),
    counts: [19, 18, 18],
  },
  {
    name: 'hdc rows, the chain settled in a note for all rows',
    terms: 'us',
    text: lines(
      'Note: Ch 2 at beginning of row does not count as a stitch.',
      'Fsc 18.',
      'Row 1: Ch 2, hdc in each st across, turn. (18 hdc)',
      'Row 2: Ch 2, hdc in each st across, turn. (18 hdc)',
    ),
    counts: [18, 18, 18],
  },
  {
    name: 'hdc rows, a note that it counts throughout',
    terms: 'us',
    // ch 2, then the other 17
    text: lines(
      'Notes: Beginning ch-2 counts as first hdc throughout.',
      'Fsc 18.',
      'Row 1: Ch 2, hdc in next st and in each st across, turn. (18 hdc)',
      'Row 2: Ch 2, hdc in next st and in each st across, turn. (18 hdc)',
    ),
    counts: [18, 18, 18],
    byKind: [null, { hdc: 18 }, { hdc: 18 }],
  },
  {
    name: 'dc rows, ch 3 counts, last dc in the turning chain',
    terms: 'us',
    // row 2: ch 3, 18 dc, dc in top = 20
    text: lines(
      'Ch 22.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn. (20 dc)',
      'Row 2: Ch 3 (counts as dc), dc in next dc and in each dc across, ending with dc in top of turning ch, turn. (20 dc)',
    ),
    counts: [22, 20, 20],
    byKind: [null, { dc: 20 }, { dc: 20 }],
    source: rule,
  },
  {
    name: 'dc rows, counts throughout said once in the first row that has it',
    terms: 'us',
    text: lines(
      'Ch 22.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn. (20 dc)',
      'Row 2: Ch 3 (counts as first dc here and throughout), skip first dc, dc in next 18 dc, dc in top of turning ch, turn.',
      'Row 3: Ch 3, dc in next 18 dc, dc in top of turning ch, turn. (20 dc)',
    ),
    counts: [22, 20, 20, 20],
  },
  {
    name: 'dc rows, skip first st shows that the chain counts',
    terms: 'us',
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 3, skip first st, dc in each st across, turn. (20 dc)',
      'Row 2: Ch 3, sk first dc, dc in each of next 18 dc, dc in top of tch, turn. (20 dc)',
    ),
    counts: [20, 20, 20],
    byKind: [null, { dc: 20 }, { dc: 20 }],
  },
  {
    name: 'dc rows, ch 3 at the end of the row before',
    terms: 'us',
    text: lines(
      'Ch 22.',
      'Row 1: Dc in 4th ch from hook and in each ch across, ch 3 (counts as dc), turn. (20 dc)',
      'Row 2: Skip first st, dc in next 18 sts, dc in top of turning ch, ch 1, turn. (20 dc)',
      'Row 3: Sc in each st across. (20 sc)',
    ),
    counts: [22, 20, 20, 20],
    byKind: [null, { dc: 20 }, { dc: 20 }, { sc: 20 }],
  },
  {
    name: 'dc rows, ch 3 said not to count',
    terms: 'us',
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 3 (does not count as st), dc in first st and in each st across, turn. (20 dc)',
      'Row 2: Ch 3, dc in first st and in each st across, turn. (20 dc)',
    ),
    counts: [20, 20, 20],
    byKind: [null, { dc: 20 }, { dc: 20 }],
  },
  {
    name: 'dc rows, ch 2 with the first dc in the first st',
    terms: 'us',
    text: lines('Fsc 20.', 'Row 1: Ch 2, dc in first st and in each st across, turn. (20 dc)'),
    counts: [20, 20],
    byKind: [null, { dc: 20 }],
  },
  {
    name: 'dc rows, a note for all rows that ch 3 counts',
    terms: 'us',
    text: lines(
      'NOTES',
      'Turning ch-3 counts as a dc throughout.',
      '',
      'Ch 17.',
      'Row 1: Dc in 4th ch from hook and in each ch across. (15 dc)',
      'Row 2: Ch 3, turn, dc in next 13 dc, dc in top of turning ch. (15 dc)',
    ),
    counts: [17, 15, 15],
  },
  {
    name: 'dc rows, a note for all rows that the turning chain does not count',
    terms: 'us',
    text: lines(
      'Note: Turning chains do not count as stitches.',
      'Fsc 24.',
      'Row 1: Ch 3, dc in each st across, turn.',
      'Row 2: Ch 3, dc in each st across, turn.',
      'Row 3: Ch 1, sc in each st across.',
    ),
    counts: [24, 24, 24, 24],
    byKind: [null, { dc: 24 }, { dc: 24 }, { sc: 24 }],
  },
  {
    name: 'dc over sc and sc over dc',
    terms: 'us',
    // row 3: 19 dc and the top of the chain
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 3 (counts as dc), skip first sc, dc in each sc across, turn.',
      'Row 3: Ch 1, sc in each dc across, sc in top of turning ch, turn. (20 sc)',
    ),
    counts: [21, 20, 20, 20],
    byKind: [null, { sc: 20 }, { dc: 20 }, { sc: 20 }],
  },
  {
    name: 'tr rows, ch 4 counts',
    terms: 'us',
    text: lines(
      'Ch 24.',
      'Row 1: Tr in 5th ch from hook and in each ch across, turn. (21 tr)',
      'Row 2: Ch 4 (counts as tr), tr in next 19 tr, tr in top of turning ch, turn. (21 tr)',
    ),
    counts: [24, 21, 21],
    byKind: [null, { tr: 21 }, { tr: 21 }],
  },
  {
    name: 'chain longer than the stitch: dc and space',
    terms: 'us',
    // 21 sts: ch 4 over the first, then (ch 1, sk 1, dc) 10 times: 11 dc, 10 spaces
    text: lines(
      'Fsc 21.',
      'Row 1: Ch 4 (counts as dc, ch 1), sk next st, dc in next st, *ch 1, sk next st, dc in next st; rep from * across. (11 dc, 10 ch-1 sps)',
    ),
    counts: [21, 11],
    spaces: [0, 10],
    byKind: [null, { dc: 11 }],
  },
  {
    name: 'slip stitch rows are fabric',
    terms: 'us',
    text: lines(
      'Ch 13.',
      'Row 1: Sl st in 2nd ch from hook and in each ch across, turn. (12 sl sts)',
      'Row 2: Ch 1, sl st in blo of each st across, turn. (12 sl sts)',
    ),
    counts: [13, 12, 12],
  },
  {
    name: 'number before, behind and inside',
    terms: 'us',
    text: lines(
      'Ch 13.',
      'Row 1: Sc in 2nd ch from hook, sc in next 11 ch. (12)',
      'Row 2: Ch 1, 4 sc, sc 4, sc in each of next 4, turn. (12)',
    ),
    counts: [13, 12, 12],
  },
  {
    name: 'full names',
    terms: 'us',
    text: lines(
      'Chain 15.',
      'Row 1: Single crochet in 2nd chain from hook and in each chain across, turn. (14 single crochet)',
      'Row 2: Chain 1, single crochet in each stitch across. (14 stitches)',
    ),
    counts: [15, 14, 14],
  },
  {
    name: 'mixed kinds in one row',
    terms: 'us',
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, sc in first 5 sts, hdc in next 5 sts, dc in next 5 sts, tr in last 5 sts. (20 sts)',
    ),
    counts: [20, 20],
    byKind: [null, { sc: 5, hdc: 5, dc: 5, tr: 5 }],
  },
  {
    name: '1 ch to turn',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      '1st row: 1 dc in 2nd ch from hook, 1 dc in each ch to end, 1 ch, turn. 20 dc.',
      '2nd row: 1 dc in each dc to end, 1 ch to turn. 20 dc.',
      '3rd row: 1 dc in each dc to end. 20 dc.',
    ),
    counts: [21, 20, 20, 20],
    byKind: [null, { dc: 20 }, { dc: 20 }, { dc: 20 }],
  },
  {
    name: '1 ch said not to count throughout',
    terms: 'uk',
    text: lines(
      'Ch 21.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.',
      'Row 2: 1 ch (does not count as a st here and throughout), 1 dc in each dc to end, turn.',
      'Row 3: 1 ch, 1 dc in each dc to end, turn. (20 dc)',
    ),
    counts: [21, 20, 20, 20],
  },
  {
    name: '3 ch counts as 1 tr',
    terms: 'uk',
    text: lines(
      'Ch 22.',
      'Row 1: 1 tr in 4th ch from hook, 1 tr in each ch to end, turn. (20 tr)',
      'Row 2: 3 ch (counts as 1 tr), miss first tr, 1 tr in each of next 18 tr, 1 tr in top of turning ch, turn. (20 tr)',
    ),
    counts: [22, 20, 20],
    byKind: [null, { tr: 20 }, { tr: 20 }],
    source: rule,
  },
  {
    name: 'miss first st shows that the chain counts',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end.',
      'Row 2: 3 ch, miss first dc, 1 tr in each dc to end. (20 tr)',
      'Row 3: 3 ch, miss first tr, 1 tr in each of next 18 tr, 1 tr in 3rd of 3 ch. (20 tr)',
    ),
    counts: [21, 20, 20, 20],
    byKind: [null, { dc: 20 }, { tr: 20 }, { tr: 20 }],
  },
  {
    name: '2 ch counts as 1 htr',
    terms: 'uk',
    text: lines(
      'Ch 21.',
      'Row 1: 1 htr in 3rd ch from hook (missed 2 ch count as 1 htr), 1 htr in each ch to end, turn. (20 htr)',
      'Row 2: 2 ch (counts as 1 htr), miss first htr, 1 htr in each st to end, turn. (20 htr)',
    ),
    counts: [21, 20, 20],
    byKind: [null, { htr: 20 }, { htr: 20 }],
  },
  {
    name: '2 ch does not count as a st',
    terms: 'uk',
    text: lines(
      'Row 1: Work 22 fdc, turn.',
      'Row 2: 2 ch (does not count as a st), 1 htr in each st to end, turn. (22 htr)',
    ),
    counts: [22, 22],
  },
  {
    name: '4 ch counts as dtr',
    terms: 'uk',
    text: lines(
      'Make 28 ch.',
      'Row 1: 1 dtr in 5th ch from hook, 1 dtr in each ch to end, turn. (25 dtr)',
      'Row 2: 4 ch (counts as 1 dtr), 1 dtr in each of next 23 dtr, 1 dtr in top of turning ch. (25 dtr)',
    ),
    counts: [28, 25, 25],
  },
  {
    name: 't-ch in the notes',
    terms: 'uk',
    text: lines(
      'Note: 3 ch at start of row counts as 1 tr throughout.',
      'Make 32 ch.',
      'Row 1: 1 tr in 4th ch from hook, 1 tr in each ch to end, turn. (30 tr)',
      'Row 2: 3 ch, miss first tr, 1 tr in each of next 28 tr, 1 tr in top of t-ch, turn. (30 tr)',
    ),
    counts: [32, 30, 30],
  },
  {
    name: 'tr rows, chain made and counted at the end of the row before',
    terms: 'uk',
    text: lines(
      'Ch 22.',
      'Row 1: 1 tr in 4th ch from hook, 1 tr in each ch to end, 3 ch (counts as 1 tr), turn.',
      'Row 2: Miss first tr, 1 tr in each of next 18 tr, 1 tr in top of turning ch, 1 ch, turn.',
      'Row 3: 1 dc in each st to end. (20 dc)',
    ),
    counts: [22, 20, 20, 20],
    byKind: [null, { tr: 20 }, { tr: 20 }, { dc: 20 }],
  },
  {
    name: '4 ch counts as tr and space',
    terms: 'uk',
    // 25 sts: 4 ch over the first, then (1 ch, miss 1, 1 tr) 12 times in all: 13 tr, 12 spaces
    text: lines(
      'Make 26 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end. (25 dc)',
      'Row 2: 4 ch (counts as 1 tr, 1 ch), miss first 2 dc, 1 tr in next dc, *1 ch, miss 1 dc, 1 tr in next dc; rep from * to end. (13 tr, 12 ch-sps)',
    ),
    counts: [26, 25, 13],
    spaces: [0, 0, 12],
  },
  {
    name: 'several sizes worked even',
    terms: 'uk',
    text: lines(
      'Make 41 (45, 49) ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 40 (44, 48) dc.',
      'Row 2: 1 ch, 1 htr in first st, 1 htr in each st to end, turn. 40 (44, 48) htr.',
    ),
    counts: [
      [41, 45, 49],
      [40, 44, 48],
      [40, 44, 48],
    ],
    byKind: [null, { dc: [40, 44, 48] }, { htr: [40, 44, 48] }],
  },
  {
    name: 'mixed kinds in one row',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end.',
      'Row 2: 1 ch, 1 dc in each of next 5 dc, 1 htr in each of next 5 dc, 1 tr in each of next 5 dc, 1 dtr in each of last 5 dc. (20 sts)',
    ),
    counts: [21, 20, 20],
    byKind: [null, { dc: 20 }, { dc: 5, htr: 5, tr: 5, dtr: 5 }],
  },
];
