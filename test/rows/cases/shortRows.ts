/**
 * Written rows: rows that stop before the end, go back over what was left, or begin after slip stitches
 * that only travel.
 */
import { lines, type RowCase } from '../types.ts';

const usSc = (n: number): readonly string[] => [
  `Ch ${n + 1}.`,
  `Row 1: Sc in 2nd ch from hook and in each ch across, turn. (${n} sc)`,
];
const ukDc = (n: number): readonly string[] => [
  `Make ${n + 1} ch.`,
  `Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (${n} dc)`,
];

export const shortRows: readonly RowCase[] = [
  {
    name: 'over all of what a short row left: the count alone says it',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20)',
      'Row 2: Ch 1, sc in next 14 sts, leave remaining sts unworked, turn.',
      'Row 3: Ch 1, sc in each st across, turn.',
      'Row 4: Ch 1, sc in each st across, turn. (20)',
    ),
    counts: [21, 20, 14, 14, 20],
    source: 'common practice, no source',
  },
  {
    name: 'over all of what a short row left: each unworked stitch of the row',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20)',
      'Row 2: Ch 1, sc in next 14 sts, leave remaining sts unworked, turn.',
      'Row 3: Ch 1, sc in each st across, turn.',
      'Row 4: Ch 1, sc in each st across, and in each unworked st of Row 1, turn. (20)',
    ),
    counts: [21, 20, 14, 14, 20],
    source: 'common practice, no source',
  },
  {
    name: 'over all of what a short row left: said as a remark',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20)',
      'Row 2: Ch 1, sc in next 14 sts, leave remaining sts unworked, turn.',
      'Row 3: Ch 1, sc in each st across, turn.',
      'Row 4: Ch 1, sc in each st across, working into the unworked sts of Row 1, turn. (20)',
    ),
    counts: [21, 20, 14, 14, 20],
    source: 'common practice, no source',
  },
  {
    name: 'over all of what a short row left: each of the unworked',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20)',
      'Row 2: Ch 1, sc in next 14 sts, leave remaining sts unworked, turn.',
      'Row 3: Ch 1, sc in each st across, turn.',
      'Row 4: Ch 1, sc in next 14 sts, sc in each of the unworked sts, turn. (20)',
    ),
    counts: [21, 20, 14, 14, 20],
    source: 'common practice, no source',
  },
  {
    name: 'two short rows leave stitches, and a row goes over both',
    terms: 'us',
    // 8, the 6 left by the second short row and the 6 left by the first
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20)',
      'Row 2: Ch 1, sc in next 14 sts, leave remaining sts unworked, turn.',
      'Row 3: Ch 1, sc in each st across, turn.',
      'Row 4: Ch 1, sc in next 8 sts, leave rem sts unworked, turn.',
      'Row 5: Ch 1, sc in each st across, turn.',
      'Row 6: Ch 1, sc in next 8 sts, sc in next 6 unworked sts of Row 3, sc in next 6 unworked sts of Row 1. (20)',
    ),
    counts: [21, 20, 14, 14, 8, 8, 20],
    source: 'common practice, no source',
  },
  {
    name: 'a wrong count behind short rows is still told',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20)',
      'Row 2: Ch 1, sc in next 14 sts, leave remaining sts unworked, turn.',
      'Row 3: Ch 1, sc in each st across, turn.',
      'Row 4: Ch 1, sc in each st across, turn. (19)',
    ),
    counts: [21, 20, 14, 14, 14],
    findings: [{ row: 4, code: 'stated-count-wrong' }],
  },
  {
    name: 'leave the rest unworked',
    terms: 'us',
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in next 12 sts, turn, leaving rem sts unworked. (12 sc)',
      'Row 3: Ch 1, sc in each st across, turn. (12 sc)',
    ),
    counts: [21, 20, 12, 12],
  },
  {
    name: 'leaving last 4 sts unworked',
    terms: 'us',
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in each st across to last 4 sts, turn, leaving last 4 sts unworked. (16 sc)',
    ),
    counts: [21, 20, 16],
  },
  {
    name: 'to last 4 sts, turn',
    terms: 'us',
    text: lines(...usSc(20), 'Row 2: Ch 1, sc in each st to last 4 sts, turn. (16 sc)'),
    counts: [21, 20, 16],
    clean: false,
  },
  {
    name: 'leave remaining stitches, sentence of its own',
    terms: 'us',
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in next 10 sts. Leave rem 10 sts unworked. Turn. (10 sc)',
      'Row 3: Ch 1, sc2tog, sc in next 8 sts, turn. (9 sts)',
    ),
    counts: [21, 20, 10, 9],
  },
  {
    name: 'armholes: slip stitches travel, and the end is left',
    terms: 'us',
    // 4 + 12 + 4 = 20
    text: lines(
      ...usSc(20),
      'Row 2: Sl st in first 4 sts, ch 1, sc in next 12 sts, turn, leaving last 4 sts unworked. (12 sc)',
      'Row 3: Ch 1, sc in each sc across, turn. (12 sc)',
    ),
    counts: [21, 20, 12, 12],
    byKind: [null, null, { sc: 12 }, { sc: 12 }],
    source: 'common practice: slip stitches that travel at the start of a row are not stitches of the row',
  },
  {
    name: 'armholes: slip stitch into the stitch that is then worked',
    terms: 'us',
    // slips over 4 and into the 5th; sc in the same 5th and 11 more = 12; 4 left
    text: lines(
      ...usSc(20),
      'Row 2: Sl st in first 5 sts, ch 1, sc in same st as last sl st, sc in next 11 sts, turn, leaving last 4 sts unworked. (12 sc)',
    ),
    counts: [21, 20, 12],
  },
  {
    name: 'armholes by size',
    terms: 'us',
    // 40 - 8, 46 - 10, 52 - 12
    text: lines(
      'Ch 41 (47, 53).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 40 (46, 52) sc',
      'Row 2: Sl st across first 4 (5, 6) sts, ch 1, sc in each st across to last 4 (5, 6) sts, turn, leaving rem sts unworked. 32 (36, 40) sc',
    ),
    counts: [
      [41, 47, 53],
      [40, 46, 52],
      [32, 36, 40],
    ],
  },
  {
    name: 'armholes in dc, the chain counts',
    terms: 'us',
    // slips over 3 and into the 4th, where ch 3 stands; 13 dc; 3 left: 3 + 1 + 13 + 3 = 20
    text: lines(
      'Fsc 20.',
      'Row 1: Sl st in first 4 sts, ch 3 (counts as dc), dc in next 13 sts, turn, leaving last 3 sts unworked. (14 dc)',
    ),
    counts: [20, 14],
    byKind: [null, { dc: 14 }],
  },
  {
    name: 'shoulder steps of slip stitches at the end of the row',
    terms: 'us',
    // sl sts that are fabric count: 15 sc and 5 sl sts
    text: lines(...usSc(20), 'Row 2: Ch 1, sc in next 15 sts, sl st in last 5 sts, turn.'),
    counts: [21, 20, 20],
    byKind: [null, null, { sc: 15 }],
  },
  {
    name: 'neck: first side, then fasten off',
    terms: 'us',
    text: lines(
      ...usSc(30),
      'Row 2: Ch 1, sc in next 10 sts, turn, leaving rem 20 sts unworked. (10 sc)',
      'Row 3: Ch 1, sc2tog, sc in each st across, turn. (9 sts)',
      'Row 4: Ch 1, sc in each st across. Fasten off. (9 sc)',
    ),
    counts: [31, 30, 10, 9, 9],
  },
  {
    name: 'heel-like short rows',
    terms: 'us',
    // each row leaves one more at its end
    text: lines(
      ...usSc(10),
      'Row 2: Ch 1, sc in next 9 sts, leave last st unworked, turn. (9)',
      'Row 3: Ch 1, sc in next 8 sts, leave last st unworked, turn. (8)',
      'Row 4: Ch 1, sc in next 7 sts, leave last st unworked, turn. (7)',
    ),
    counts: [11, 10, 9, 8, 7],
  },
  {
    name: 'leave the rest unworked',
    terms: 'uk',
    text: lines(
      ...ukDc(20),
      'Row 2: 1 ch, 1 dc in each of next 12 dc, turn, leaving rem sts unworked. (12 dc)',
      'Row 3: 1 ch, 1 dc in each dc to end, turn. (12 dc)',
    ),
    counts: [21, 20, 12, 12],
  },
  {
    name: 'leaving last 4 dc unworked',
    terms: 'uk',
    text: lines(
      ...ukDc(20),
      'Row 2: 1 ch, 1 dc in each dc to last 4 dc, turn, leaving last 4 dc unworked. 16 dc.',
    ),
    counts: [21, 20, 16],
  },
  {
    name: 'armholes: ss over 4',
    terms: 'uk',
    text: lines(
      ...ukDc(20),
      'Row 2: Ss over first 4 sts, 1 ch, 1 dc in each of next 12 sts, turn, leaving last 4 sts unworked. (12 dc)',
      'Row 3: 1 ch, dc2tog, 1 dc in each of next 8 sts, dc2tog, turn. (10 sts)',
    ),
    counts: [21, 20, 12, 10],
  },
  {
    name: 'armholes by size in tr',
    terms: 'uk',
    // ss over 4 (5) and into the next, 3 ch there; 31 (33) tr; 4 (5) left: 4 + 32 + 4 = 40; 5 + 34 + 5 = 44
    text: lines(
      'Row 1: Work 40 (44) fdc, turn.',
      'Row 2: Ss in each of first 5 (6) sts, 3 ch (counts as 1 tr), 1 tr in each of next 31 (33) sts, turn, leaving last 4 (5) sts unworked. 32 (34) tr.',
    ),
    counts: [
      [40, 44],
      [32, 34],
    ],
  },
  {
    name: 'turned twice on the way, in one row',
    terms: 'us',
    // 5 of the second turn and the 15 that the first left
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in first 5 sts, turn, ch 1, sc in 5 sts, turn, ch 1, sc in next 5 sts, sc in rem 15 sts, turn. (20 sc)',
      'Row 3: Ch 1, dc in each st across, turn. (20 dc)',
    ),
    counts: [21, 20, 20, 20],
  },
  {
    name: 'turned on the way, with one stitch more than there is',
    terms: 'us',
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in first 5 sts, turn, ch 1, sc in 6 sts, turn, ch 1, sc in next 5 sts, sc in rem 15 sts, turn. (20 sc)',
    ),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'place-does-not-exist', words: '6 sts', saying: ['6', '5'] }],
  },
  {
    name: 'the row back from a short row has no more than that',
    terms: 'uk',
    text: lines(
      ...ukDc(18),
      'Row 2: 1 ch, 1 dc in each of first 7 dc, turn, leaving rem sts unworked. (7 dc)',
      'Row 3: 1 ch, 1 dc in each of next 8 dc, turn.',
    ),
    counts: [19, 18, 7, null],
    findings: [{ row: 3, code: 'place-does-not-exist', words: 'next 8 dc', saying: ['8', '7'] }],
  },
  {
    name: 'the round behind the rows of a heel goes on over what they left',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in MR (6)',
      'Rnd 2: 2 sc in each st (12)',
      'Rnd 3: (sc 1, 2 sc in next st) x 6 (18)',
      'Row 4: Sc in next 12 sts, turn, leaving rem sts unworked. (12)',
      'Row 5: Ch 1, sc in next 12 sts, turn. (12)',
      'Rnd 6: Ch 1, sc in next 12 sts, sc in next 6 sts. (18)',
    ),
    counts: [6, 12, 18, 12, 12, 18],
    source: 'common practice, no source',
  },
];
