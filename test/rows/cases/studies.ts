/**
 * Edges of first rows, short rows, rows in pattern, ripples and corners, right and with one mistake.
 * Each count was worked out by hand.
 */
import { lines, type RowCase } from '../types.ts';

export const studies: readonly RowCase[] = [
  {
    name: 'first row edges',
    terms: 'us',
    text: lines(
      'Ch 20.',
      'Row 1: Dc in 8th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across, turn.',
      'Row 2: Ch 5, sk first ch-2 sp, dc in next dc, *ch 2, dc in next dc; rep from * across, ch 2, dc in 5th ch of skipped ch-7, turn.',
      'Row 3: Ch 3, 2 dc in first ch-2 sp, dc in next dc, *2 dc in next sp, dc in next dc; rep from * across, ending 2 dc in last sp, dc in 3rd ch of ch-5. (16 dc)',
    ),
    counts: [20, 6, 6, 16],
    spaces: [null, 5, 5, null],
  },
  {
    name: 'first row in the sixth chain',
    terms: 'us',
    text: lines(
      'Ch 20.',
      'Row 1: Dc in 6th ch from hook, *ch 1, sk 1 ch, dc in next ch; rep from * across, turn. (9 dc, 8 ch-1 sps)',
    ),
    counts: [20, 9],
    spaces: [null, 8],
  },
  {
    name: 'odd edge',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Dc in 7th ch from hook, *ch 1, sk 1 ch, dc in next ch; rep from * across, turn.',
    ),
    counts: [21, null],
    findings: [{ row: 1, code: 'edge-chain-unclear' }],
  },
  {
    name: 'jumper body',
    terms: 'uk',
    text: lines(
      'Sizes: 1 (2, 3)',
      'Make 62 (66, 70) ch.',
      'Foundation row: 1 dc into 2nd ch from hook, 1 dc into each ch to end, turn. 61 (65, 69) dc.',
      '1st row (RS): 1 ch, 1 dc into first dc, *1 tr into next dc, 1 dc into next dc; rep from * to end, turn.',
      '2nd row: 3 ch (counts as 1 tr), miss first dc, *1 dc into next tr, 1 tr into next dc; rep from * to end, turn.',
      'Rep these 2 rows until work measures 30 cm, ending with a WS row.',
      'Shape raglan',
      'Next row: Ss over first 4 sts, 1 ch, 1 dc into next st, patt to last 4 sts, turn.',
      'Next row: 1 ch, dc2tog, work in patt to last 2 sts, dc2tog, turn.',
    ),
    counts: [
      [62, 66, 70],
      [61, 65, 69],
      [61, 65, 69],
      [61, 65, 69],
      [61, 65, 69],
      [53, 57, 61],
      [51, 55, 59],
    ],
  },
  {
    name: 'shoulder short rows',
    terms: 'us',
    text: lines(
      'Ch 31.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (30)',
      'Row 2: Ch 1, sc in first 20 sts, turn, leaving rem 10 sts unworked.',
      'Row 3: Ch 1, sc in each st across, turn.',
      'Row 4: Ch 1, sc in each of first 10 sts, turn, leaving rem sts unworked.',
      'Row 5: Ch 1, sc in each st across, turn.',
    ),
    counts: [31, 30, 20, 20, 10, 10],
  },
  {
    name: 'short rows planted',
    terms: 'us',
    text: lines(
      'Ch 31.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (30)',
      'Row 2: Ch 1, sc in first 20 sts, turn, leaving rem 12 sts unworked.',
    ),
    counts: [31, 30, 20],
    findings: [{ row: 2, code: 'stitches-left-unworked' }],
  },
  {
    name: 'wrong repeat in pattern lace two sizes',
    terms: 'us',
    text: lines(
      'Sizes: S (M)',
      'Ch 32 (38).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 31 (37) sc',
      'Row 2: Ch 1, sc in first st, *ch 3, sk 3 sts, sc in next st; rep from * across, turn.',
    ),
    counts: [null, [31, 37], null],
    findings: [{ row: 2, code: 'repeat-does-not-fit' }],
  },
  {
    name: 'space that is not there',
    terms: 'us',
    text: lines(
      'Rnd 1: 8 sc in magic ring, join.',
      'Rnd 2: Ch 3, dc in same st, 2 dc in each st around, join to top of ch-3.',
      'Rnd 3: Ch 1, 2 sc in each ch-1 sp around, join.',
    ),
    counts: [8, 16, null],
    findings: [{ row: 2, code: 'place-does-not-exist' }],
  },
  {
    name: 'mark that is not there',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, sc in each st to marker, 3 sc in marked st, sc across, turn.',
    ),
    counts: [null, 20, null],
    findings: [{ row: 2, code: 'place-does-not-exist' }],
  },
  {
    name: 'passed over',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      '1st row: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.',
      '2nd row: 3 ch (counts as 1 tr), 1 tr in next dc, *1 ch, 1 tr in each of next 2 dc; rep from * to end, turn.',
      '3rd row: 3 ch, miss first tr, 1 tr in next tr, *1 ch, 1 tr in each of next 2 tr; rep from * to end.',
    ),
    counts: [null, 20, 20, 20],
    spaces: [null, null, 9, 9],
  },
  {
    name: 'decreasing crown wrong start',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 64; join to form ring.',
      'Rnd 2: Ch 1, sc in each ch around, join.',
      'Rnd 3: Ch 1, *sc in next 6 sts, sc2tog; rep from * around, join. (56)',
      'Rnd 4: Ch 1, *sc in next 5 sts, sc2tog; rep from * around, join. (49)',
      'Rnd 5: Ch 1, *sc in next 4 sts, sc2tog; rep from * 7 times more, join. (40)',
      'Rnd 6: Ch 1, [sc in next 3 sts, sc2tog] 9 times, join.',
    ),
    counts: [64, 64, 56, 48, 40, null],
    findings: [
      { row: 3, code: 'stated-count-wrong' },
      { row: 5, code: 'place-does-not-exist' },
    ],
  },
  {
    name: 'long posts a row below',
    terms: 'us',
    text: lines(
      'Ch 16.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, sc in first 2 sts, *FPtr around next sc 1 row below, sk next sc, sc in next 2 sts; rep from * to last st, sc in last st, turn.',
    ),
    counts: [16, 15, 15],
  },
  {
    name: 'x-st',
    terms: 'us',
    text: lines(
      'Ch 18.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn. (16 dc)',
      'Row 2: Ch 3 (counts as dc), *sk next dc, dc in next dc, dc in skipped dc; rep from * across to last st, dc in last st, turn. (16 dc)',
      'Row 3: Ch 1, sc in each of first 4 dc, hdc in each of next 4 dc, dc in each of next 4 dc, tr in each of last 4 dc, turn.',
    ),
    counts: [18, 16, 16, 16],
  },
  {
    name: 'mitered square',
    terms: 'us',
    text: lines(
      'Ch 22.',
      'Row 1: Sc in 2nd ch from hook and in next 9 ch, sk 1 ch, sc in last 10 ch, turn. (20 sc)',
      'Row 2: Ch 1, sc in first 9 sts, sk 2 sts, sc in last 9 sts, turn. (18 sc)',
    ),
    counts: [22, 20, 18],
  },
  {
    name: 'ripple',
    terms: 'us',
    text: lines(
      'Ch 29.',
      'Row 1: 2 sc in 2nd ch from hook, sc in next 4 ch, [sc2tog] twice, sc in next 4 ch, *2 sc in each of next 2 ch, sc in next 4 ch, [sc2tog] twice, sc in next 4 ch; rep from * to last ch, 2 sc in last ch, turn.',
      'Row 2: Ch 1, 2 sc in first st, sc in next 4 sts, (sc2tog) twice, sc in next 4 sts, *2 sc in each of next 2 sts, sc in next 4 sts, (sc2tog) twice, sc in next 4 sts; rep from * to last st, 2 sc in last st, turn. (28 sc)',
    ),
    counts: [29, 28, 28],
  },
  {
    name: 'sleeve top down rounds with evenly',
    terms: 'us',
    text: lines(
      'Ch 40, join.',
      'Rnds 1-6: Ch 1, sc in each st around, join. (40)',
      'Rnd 7: Ch 1, sc2tog, sc in each st around to last 2 sts, sc2tog, join. (38)',
      'Rnds 8-11: Ch 1, sc around; join.',
      'Rnd 12: Rep Rnd 7. (36)',
      'Rep Rnds 8-12 three more times. (30 sts)',
      'Next rnd: Ch 1, dec 6 sts evenly around, join. (24)',
    ),
    counts: [40, 40, 38, 38, 36, 30, 24],
  },
];
