/**
 * Written rows: no labels, numbered lists, and labels in unusual forms.
 */
import { lines, type RowCase } from '../types.ts';

export const unlabelled: readonly RowCase[] = [
  {
    name: 'rows on lines of their own, no labels',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Ch 1, sc in each st across, turn. (20 sc)',
      'Ch 1, sc2tog, sc in each st across, turn. (19 sts)',
    ),
    counts: [21, 20, 20, 19],
  },
  {
    name: 'label with a hyphen',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1 - Sc in 2nd ch from hook and in each ch across. Turn.',
      'Row 2 - Ch 1. Sc in each st across. Turn. (20 sc)',
    ),
    counts: [21, 20, 20],
  },
  {
    name: 'ordinal labels',
    terms: 'us',
    text: lines(
      'Ch 21.',
      '1st row: Sc in 2nd ch from hook and in each ch across, turn.',
      '2nd row: Ch 1, sc in each st across, turn. (20 sc)',
      '3rd row: Ch 1, 2 sc in first st, sc in each st across, turn. (21 sc)',
    ),
    counts: [21, 20, 20, 21],
  },
  {
    name: 'R with a number and a colon',
    terms: 'us',
    text: lines(
      'Ch 16.',
      'R1: sc in 2nd ch from hook and in each ch across, turn (15)',
      'R2: ch 1, sc in each st across, turn (15)',
    ),
    counts: [16, 15, 15],
  },
  {
    name: 'numbered list of rows',
    terms: 'us',
    text: lines(
      'Ch 16.',
      '1. Sc in 2nd ch from hook and in each ch across, turn. (15)',
      '2. Ch 1, sc in each st across, turn. (15)',
      '3. Ch 1, sc2tog, sc in next 11 sts, sc2tog, turn. (13)',
    ),
    counts: [16, 15, 15, 13],
  },
  {
    name: 'next row, and names instead of numbers',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Next row (dec): Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. (18 sts)',
      'Dec row: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. (16 sts)',
      'Next row: Ch 1, sc in each st across. (16 sc)',
    ),
    counts: [21, 20, 18, 16, 16],
  },
  {
    name: 'sides in labels',
    terms: 'us',
    text: lines(
      'Ch 13.',
      'Row 1 (WS): Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2 (RS): Ch 1, *sc in next st, hdc in next st; rep from * across, turn. (12 sts)',
    ),
    counts: [13, 12, 12],
  },
  {
    name: 'capitals throughout',
    terms: 'us',
    text: lines(
      'CH 13.',
      'ROW 1: SC IN 2ND CH FROM HOOK AND IN EACH CH ACROSS, TURN. (12 SC)',
      'ROW 2: CH 1, *SC IN NEXT 2 STS, SC2TOG; REP FROM * ACROSS, TURN. (9 STS)',
    ),
    counts: [13, 12, 9],
  },
  {
    name: 'line break inside a row',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook',
      '  and in each ch across, turn. (20 sc)',
      'Row 2: Ch 1, *sc in next 3 sts,',
      '  2 sc in next st; rep from * across. (25 sc)',
    ),
    counts: [21, 20, 25],
  },
  {
    name: 'words that are not rows round the rows',
    terms: 'us',
    text: lines(
      'Ch 13.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. Mark this row as right side. (12 sc)',
      'Row 2: With B, ch 1, sc in each st across, changing to A in last st, turn. (12 sc)',
    ),
    counts: [13, 12, 12],
  },
  {
    name: 'rows on lines of their own, no labels',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      '1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (20 dc)',
      '1 ch, 1 dc in each dc to end, turn. (20 dc)',
    ),
    counts: [21, 20, 20],
  },
  {
    name: 'ordinals with a side and a full stop',
    terms: 'uk',
    text: lines(
      'Make 22 ch.',
      '1st row (RS). 1 tr in 4th ch from hook, 1 tr in each ch to end, turn. 20 tr.',
      '2nd row. 1 ch, 1 dc in each tr to end, 1 dc in top of turning ch, turn. 20 dc.',
    ),
    counts: [22, 20, 20],
  },
  {
    name: 'range with an ampersand',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.',
      'Rows 2 & 3: 1 ch, 1 dc in each dc to end, turn. 20 dc.',
      '4th and 5th rows: 1 ch, dc2tog, 1 dc in each st to end, turn. 18 sts.',
    ),
    counts: [21, 20, 20, 18],
  },
  {
    name: 'colour changes among the words',
    terms: 'uk',
    text: lines(
      'With A, make 21 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (20 dc)',
      'Row 2: Change to B. 1 ch, 1 dc in each dc to end, turn. (20 dc)',
    ),
    counts: [21, 20, 20],
  },
  {
    name: 'numbered list of rows',
    terms: 'uk',
    text: lines(
      'Make 16 ch.',
      '1. 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (15)',
      '2. 1 ch, 1 dc in each dc to end, turn. (15)',
      '3. 1 ch, dc2tog, 1 dc in each of next 11 dc, dc2tog, turn. (13)',
    ),
    counts: [16, 15, 15, 13],
  },
  {
    name: 'next row, and names instead of numbers',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      'Foundation row: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (20 dc)',
      'Next row (inc): 1 ch, 2 dc in first dc, 1 dc in each dc to last dc, 2 dc in last dc, turn. (22 dc)',
      'Inc row: 1 ch, 2 dc in first dc, 1 dc in each dc to last dc, 2 dc in last dc, turn. (24 dc)',
    ),
    counts: [21, 20, 22, 24],
  },
  {
    name: 'capitals throughout',
    terms: 'uk',
    text: lines(
      'MAKE 13 CH.',
      'ROW 1: 1 DC IN 2ND CH FROM HOOK, 1 DC IN EACH CH TO END, TURN. (12 DC)',
      'ROW 2: 1 CH, *1 DC IN EACH OF NEXT 2 DC, DC2TOG; REP FROM * TO END, TURN. (9 STS)',
    ),
    counts: [13, 12, 9],
  },
  {
    name: 'line break inside a row',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      'Row 1: 1 dc in 2nd ch from hook,',
      '1 dc in each ch to end, turn. (20 dc)',
      'Row 2: 1 ch, *1 dc in each of next 3 dc,',
      '2 dc in next dc; rep from * to end, turn. (25 dc)',
    ),
    counts: [21, 20, 25],
  },
  {
    name: 'round with a hyphen and the word in full',
    terms: 'uk',
    text: lines(
      'Round 1 - 6 dc into magic ring. 6 dc.',
      'Round 2 - 2 dc in each dc around. 12 dc.',
      'Round 3 - *1 dc in next dc, 2 dc in next dc. Repeat from * to end. 18 dc.',
    ),
    counts: [6, 12, 18],
  },
];
