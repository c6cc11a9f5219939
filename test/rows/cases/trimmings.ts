/**
 * Counts said in every way, right and with one mistake; markers, colours, joins, rings, ovals and decreases; numbers that may be read in two ways.
 * Each count was worked out by hand.
 */
import { lines, type RowCase } from '../types.ts';

export const trimmings: readonly RowCase[] = [
  {
    name: 'counts',
    terms: 'us',
    text: lines(
      'Ch 11.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. Total 10 sc.',
      'Row 2: Ch 3 (counts as dc), dc in next st, *ch 1, sk 1 st, dc in next st; rep from * across, turn: 6 dc and 4 ch-1 sps.',
      'Row 3: Ch 1, sc in each dc and in each ch-1 sp across. – 10 sc.',
      'Row 4: Ch 2 (counts as hdc), hdc in next st and in each st across, turn – 10 sts counting beg ch.',
      'Row 5: Ch 3, dc in next 9 sts, turn. 9 dc + turning ch.',
      'Row 6: Ch 1, 2 sc in first st, sc in next 8 sts, 2 sc in last, turn [12].',
      'Row 7: Ch 1, (sc, hdc) in each of next 6 sts, sc in last 6 sts, turn. (18 sts: 12 sc, 6 hdc)',
      'Row 8: Ch 1, sc in each st across = 18 sts.',
    ),
    counts: [11, 10, 6, 10, 10, 10, 12, 18, 18],
    spaces: [null, null, 4, null, null, null, null, null, null],
  },
  {
    name: 'counts, one wrong in each',
    terms: 'us',
    text: lines(
      'Ch 11.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. Total 11 sc.',
      'Row 2: Ch 3 (counts as dc), dc in next st, *ch 1, sk 1 st, dc in next st; rep from * across, turn: 6 dc and 5 ch-1 sps.',
      'Row 3: Ch 1, sc in each dc and in each ch-1 sp across. – 9 sc.',
      'Row 4: Ch 2 (counts as hdc), hdc in next st and in each st across, turn – 10 sts not counting beg ch.',
      'Row 5: Ch 1, (sc, hdc) in each of next 5 sts, sc in last 5 sts, turn. (15 sts: 10 sc, 6 hdc)',
    ),
    counts: [11, 10, 6, 10, 10, 15],
    spaces: [null, null, 4, null, null, null],
    findings: [
      { row: 1, code: 'stated-count-wrong' },
      { row: 2, code: 'stated-count-wrong' },
      { row: 3, code: 'stated-count-wrong' },
      { row: 4, code: 'stated-count-wrong' },
      { row: 5, code: 'stated-count-wrong' },
    ],
  },
  {
    name: 'markers and colours',
    terms: 'us',
    text: lines(
      'With A, ch 31.',
      'Row 1: With A, sc in 2nd ch from hook and in each ch across, change to B in last st, turn.',
      'Row 2: With B, ch 1, sc in first 10 sts, pm in last st made, sc in each st across, turn. (30)',
      'Row 3: Ch 1, sc in each st to marker, 3 sc in marked st (move marker up to center sc), sc across. Drop B, pick up A.',
      'Row 4: In MC, ch 1, sc in each st to 1 st before marker, sc3tog, sc across.',
    ),
    counts: [31, 30, 30, 32, 30],
  },
  {
    name: 'markers',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. Place marker in first st and move it up each rnd.',
      'Rnd 2: 2 sc in each st around, replace marker.',
      'Rnd 3: *Sc in next st, 2 sc in next st; rep from * to marker. (18)',
      'Rnd 4: Sc in each st around, moving marker up, do not join.',
      'Rnd 5: With CC, [sc2tog, sc in next st] 6 times, switch back to MC on last st.',
      'Rnds 6 & 7: Sc around. (12 sc each rnd)',
      'Rnd 8: Sc2tog 6 times, sl st to next st. Fasten off, leaving a long tail for sewing.',
    ),
    counts: [6, 12, 18, 18, 12, 12, 6],
  },
  {
    name: 'joins as before',
    terms: 'us',
    text: lines(
      'Ch 30; join with sl st in first ch to form ring, being careful not to twist.',
      'Rnd 1: Ch 1, sc in same ch as join, sc in each ch around, sl st in first sc to join. (30 sc)',
      'Rnd 2: Ch 4 (counts as dc and ch 1), sk next st, *dc in next st, ch 1, sk next st; rep from * around, join as before in 3rd ch of beg ch-4. (15 dc, 15 ch-1 sps)',
      'Rnd 3: Sl st in first ch-1 sp, ch 1, 2 sc in same sp, 2 sc in each ch-1 sp around; ss to 1st sc, turn.',
      'Rnd 4: Ch 1, working on WS, sc in each st around, join. Turn.',
      'Rnd 5: Ch 1, *sc in next 2 sts, ch 5, sk 3 sts; rep from * 4 more times, sc in next 2 sts, ch 5, sk 3 sts, join.',
    ),
    counts: [30, 30, 15, 30, 30, 12],
    spaces: [null, null, 15, null, null, 6],
  },
  {
    name: 'close loop with hdc',
    terms: 'us',
    text: lines(
      'Rnd 1: 8 sc in magic ring; join.',
      'Rnd 2: Ch 1, sc in first st, *ch 5, sc in next st; rep from * 6 more times, ch 2, dc in first sc to close the loop. (8 loops)',
      'Rnd 3: Ch 1, sc in same loop, *ch 5, sc in next ch-5 loop; rep from * around, ch 2, dc in first sc to form last loop.',
      'Rnd 4: Ch 3, 2 dc in same loop, *4 dc in next loop; rep from * around, dc in first loop; join to top of ch-3.',
    ),
    counts: [8, 8, 8, 32],
    spaces: [null, 8, 8, null],
  },
  {
    name: 'foundations',
    terms: 'us',
    text: lines(
      '38 ch.',
      'Row 1: Dc in 4th ch from hook (the 3 skipped ch count as a dc), dc in each ch across, turn.',
      'Row 2: Ch 1, sc in each dc, turn.',
    ),
    counts: [38, 36, 36],
  },
  {
    name: 'foundation side',
    terms: 'us',
    text: lines(
      'Chain 18 (22, 26), turn.',
      'Row 1: Starting in 2nd ch from hook, work 1 sc in each ch to end. 17 (21, 25) sc.',
      'Row 2: 1 ch to turn, 1 sc in each sc to end.',
    ),
    counts: [null, [17, 21, 25], [17, 21, 25]],
  },
  {
    name: 'foundation no from hook',
    terms: 'us',
    text: lines(
      'Ch 20.',
      'Row 1: Ch 1, sc in each ch across, turn.',
      'Row 2: Ch 3, skip first st, dc in each st to end.',
    ),
    counts: [null, 20, 20],
  },
  {
    name: 'ring forms',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 4, sl st in first ch to form a ring, ch 3 (counts as dc), 11 dc in ring, sl st in top of ch-3.',
      'Rnd 2: Ch 1, 2 sc in each st around. (24)',
    ),
    counts: [12, 24],
  },
  {
    name: 'ring forms, spelt out',
    terms: 'us',
    text: lines(
      'Ch 5, join with sl st to form a ring.',
      'Round 1. Ch 1, work 16 sc into ring, join.',
      'Round 2. Ch 6, *miss next st, dc in next st, ch 3; rep from * to end, join to 3rd of 6 ch.',
    ),
    counts: [null, 16, 8],
    spaces: [null, null, 8],
  },
  {
    name: 'oval',
    terms: 'us',
    text: lines(
      'Ch 9.',
      'Rnd 1: Sc in 2nd ch from hook, sc in next 6 ch, 3 sc in last ch, working on other side of chain, sc in next 6 ch, 2 sc in last ch. (18)',
      'Rnd 2: 2 sc in next st, sc in next 6 sts, 2 sc in each of next 3 sts, sc in next 6 sts, 2 sc in each of last 2 sts. (24)',
    ),
    counts: [9, 18, 24],
  },
  {
    name: 'decreases',
    terms: 'us',
    text: lines(
      'Ch 31.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, dec over next 2 sts, sc to last 2 sts, dec over last 2, turn.',
      'Row 3: Ch 1, skip first st, sc in each st to last 2 sts, skip 1 st, sc in last st, turn.',
      'Row 4: Ch 1, dec 1 st at each end, sc across, turn.',
      'Row 5: Ch 1, sc across, dec 6 sts evenly. Turn.',
      'Row 6: Ch 3, dc3tog, dc in each st to last 4 sts, dc3tog over next 3 sts, dc in last st, turn.',
    ),
    counts: [31, 30, 28, 26, 24, 18, 14],
  },
  {
    name: 'traps',
    terms: 'us',
    text: lines(
      'Ch 31.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, *sc in next 3 sts, inc; rep from * 6 times, sc in last 2 sts, turn. (37 sts)',
      'Row 3: Ch 1, (sc 3, inc) * 6, sc across, turn.',
      'Row 4: Ch 1, dc 4 times in next st, sc next 4, sc x 4, 2 dc in next, sc across. (47)',
      'Row 5: Ch 1, *sc in next 8 sts, inc; rep from * 4 times (5 in all), sc in last 2. (52)',
    ),
    counts: [31, 30, 37, 43, 47, 52],
  },
  {
    name: 'older English',
    terms: 'uk',
    text: lines(
      'Commence with 26 chain.',
      '1st row: Miss 1 ch, 1 d.c. into each ch to end, turn. (25)',
      '2nd row: 3 ch, miss 1 d.c., 1 treble into each d.c. taking up the back loop only, to end, turn.',
      '3rd row: 3 ch, miss 1 tr, 1 tr into next tr, * 1 ch, miss 1 tr, 1 tr into next; repeat 10 times from *, 1 tr into last.',
    ),
    counts: [26, 25, 25, null],
  },
  {
    name: 'beg cluster',
    terms: 'us',
    text: lines(
      'Ch 6, join with sl st in first ch to form ring. ',
      'Rnd 1: Ch 3, dc2tog in ring (counts as beg cl), ch 3, *dc3tog in ring, ch 3; rep from * 4 more times; join to top of beg cl. (6 cl, 6 ch-3 sps)',
      'Rnd 2: Sl st in next ch-3 sp, ch 1, 5 sc in same sp, 5 sc in each ch-3 sp around, join.',
    ),
    counts: [null, 6, 30],
    spaces: [null, 6, null],
  },
];
