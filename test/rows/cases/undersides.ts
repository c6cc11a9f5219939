/**
 * Rows along the other side of a foundation, along the sides of a piece and over its top, begun with or without turning;
 * and counts of groups and of passes. Each count was worked out by hand.
 */
import { lines, type RowCase } from '../types.ts';

export const undersides: readonly RowCase[] = [
  {
    name: 'border begun without turning',
    terms: 'us',
    // 10 sc x 10 rows: corner 2, side 10, corner 3, 8 ch, corner 3, side 10, then the top's first: 3, 8 sc, 1 in same st
    text: lines(
      'Ch 11.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Rows 2-10: Ch 1, sc in each st across, turn. Do not turn at end of last row.',
      'Border: Ch 1, 2 sc in same st, sc in end of each row down side, 3 sc in first ch of foundation, sc in each of next 8 ch, 3 sc in last ch, sc in end of each of next 10 rows up other side, 3 sc in first st, sc in next 8 sts, sc in same st as first sc, join.',
    ),
    counts: [null, 10, 10, 48],
  },
  {
    name: 'side border only',
    terms: 'us',
    text: lines(
      'Ch 11.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Rows 2-6: Ch 1, sc in each st across, turn.',
      'Row 7: Ch 1, sc in each st across, do not turn.',
      'Edging row: Ch 1, working in row ends, sc in end of each row down left side edge, turn.',
      'Next row: Ch 1, sc in each sc, fasten off.',
    ),
    counts: [null, 10, 10, 10, 7, 7],
  },
  {
    name: 'across the top last',
    terms: 'us',
    text: lines(
      'Ch 9.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Rows 2-8: Ch 1, sc in each st across, turn.',
      'Row 9: Ch 1, sc in each st across. Do not turn.',
      'Border: Ch 1, sc in end of each row to corner, 3 sc in first foundation ch, sc in next 6 ch, 3 sc in last ch, sc in end of each row to top, 3 sc in first st, sc in each st across to last st, 3 sc in last st; join with sl st in first sc.',
    ),
    counts: [null, 8, 8, 8, null],
  },
  {
    name: 'border rnd',
    terms: 'us',
    text: lines(
      'Ch 11.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Rows 2-10: Ch 1, sc in each st across, turn.',
      'Rnd 1: Ch 1, 3 sc in first st, sc in next 8 sts, 3 sc in last st, sc in end of each of next 10 rows, working along foundation chain, 3 sc in first ch, sc in each of next 8 ch, 3 sc in last ch, sc in end of each of next 10 rows, join with sl st in first sc.',
    ),
    counts: [null, 10, 10, 48],
  },
  {
    name: 'crab',
    terms: 'us',
    text: lines(
      'Ch 11.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 3, sk 1, dc in next 7 sts, sc2tog. Do not turn.',
      'Row 3: Ch 1, reverse sc in same st, reverse sc in each st across. Fasten off.',
    ),
    counts: [null, 10, 9, 9],
  },
  {
    name: 'yarn joined to the foundation chain',
    terms: 'us',
    text: lines(
      'Ch 13.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn.',
      'Row 2: Ch 3, dc in next st and in each st across. Fasten off.',
      'Edging: Join yarn in first ch of foundation chain, ch 1, sc in each ch across. Fasten off.',
    ),
    counts: [null, 11, 11, 11],
  },
  {
    name: 'along the opposite side',
    terms: 'us',
    text: lines(
      'Ch 13.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn.',
      'Row 2: Ch 3, dc in next st and in each st across, do not turn.',
      'Edging: Working along opposite side of foundation ch, sc in each ch across. Fasten off.',
    ),
    counts: [null, 11, 11, 11],
  },
  {
    name: 'free loops of the foundation',
    terms: 'us',
    text: lines(
      'Ch 13.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn.',
      'Row 2: Ch 3, dc in next st and in each st across. Fasten off.',
      'Edging: With RS facing, working in free loops of foundation ch, join B with sl st in first ch, ch 1, sc in same ch and in each ch across. Fasten off.',
    ),
    counts: [null, 11, 11, 11],
  },
  {
    name: 'free loops counted',
    terms: 'us',
    text: lines(
      'Ch 13.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn.',
      'Row 2: Ch 3, dc in next st and in each st across. Fasten off.',
      'Edging: Join B with sc in first free loop of foundation ch, sc in next 10 free loops.',
    ),
    counts: [null, 11, 11, 11],
  },
  {
    name: 'base of each chain',
    terms: 'us',
    text: lines(
      'Ch 13.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn.',
      'Edging: Working along foundation chain, sc in base of each ch across. Fasten off.',
    ),
    counts: [null, 11, 11],
  },
  {
    name: 'base of each stitch, after a turning chain',
    terms: 'us',
    text: lines(
      'Ch 13.',
      'Row 1: Dc in 4th ch from hook and in each ch across, do not turn.',
      'Edging: Ch 1, working along opposite side of foundation ch, sc in base of each st across. Fasten off.',
    ),
    counts: [null, 11, 11],
  },
  {
    name: 'bases skipped under a chain',
    terms: 'us',
    text: lines(
      'Ch 13.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn.',
      'Edging: Working in base of row 1, *sc in base of next 2 dc, ch 1, skip base of next dc; rep from * 2 more times, sc in base of each of next 2 sts.',
    ),
    counts: [null, 11, 8],
    spaces: [null, null, 3],
  },
  {
    name: 'other side of the base chain',
    terms: 'uk',
    text: lines(
      'Make 13 ch.',
      '1st row: 1 tr in 4th ch from hook, 1 tr in each ch to end. Fasten off.',
      'Edging row: Join yarn to other side of base chain, 1 ch, 1 dc in each ch to end.',
      'Next row: Rejoin yarn to first ch of foundation chain, 1 dc in base of each tr to end.',
    ),
    counts: [null, 11, 11, null],
  },
  {
    name: 'feet of foundation stitches',
    terms: 'us',
    text: lines(
      'Fsc 12.',
      'Row 1: Ch 3 (counts as dc), dc in next st and in each st across. Fasten off.',
      'Edging: Join yarn in first ch of other side of foundation, ch 1, 2 sc in each ch across.',
    ),
    counts: [12, 12, 24],
  },
  {
    name: 'border from the foundation up and over the top',
    terms: 'us',
    // 8 sc by 6 rows: chain 8, corner 2 more each of 4, sides 6: 8+6+8+6+8
    text: lines(
      'Ch 9.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Rows 2-6: Ch 1, sc in each st across, turn. Fasten off after Row 6.',
      'Border: Working along foundation ch, join B with sc in first ch, 2 sc in same ch, sc in next 6 ch, 3 sc in last ch, sc in end of each of next 6 rows, 3 sc in first st, sc in next 6 sts, 3 sc in last st, sc in end of each of next 6 rows; join.',
    ),
    counts: [null, 8, 8, 36],
  },
  {
    name: 'lower edge rounds',
    terms: 'us',
    text: lines(
      'Ch 40, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around; join.',
      'Rnds 2-5: Ch 1, sc in each st around; join.',
      'Rnd 6: Ch 1, *sc in next 8 sts, sc2tog; rep from * around; join. Fasten off.',
      'Lower edge: Join yarn in any ch on opposite side of foundation, ch 1, *sc in next 4 ch, ch 3, sk 1 ch; rep from * around; join.',
    ),
    counts: [40, 40, 40, 36, 32],
    spaces: [null, null, null, null, 8],
  },
  {
    name: 'a chain that the row below has not',
    terms: 'us',
    text: lines(
      'Ch 13.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, sc in each ch across, turn.',
    ),
    counts: [null, 11, null],
    findings: [{ row: 2, code: 'place-does-not-exist' }],
  },
  {
    name: 'groups between groups',
    terms: 'us',
    text: lines(
      'Ch 24.',
      'Row 1: 3 dc in 6th ch from hook, *sk 2 ch, 3 dc in next ch; rep from * to last 3 ch, sk 2 ch, dc in last ch, turn. (6 groups)',
      'Row 2: Ch 3, *3 dc in sp between next 2 groups; rep from * across, dc in top of tch, turn. (9 groups)',
    ),
    counts: [24, 20, 17],
    findings: [{ row: 2, code: 'stated-count-wrong', words: '(9 groups)' }],
  },
  {
    name: 'groups round a square',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * twice more; join to top of beg ch-3. (4 groups)',
      'Rnd 2: Sl st to next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * around; join. (8 3-dc groups)',
      'Rnd 3: Sl st to next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, 3 dc in next ch-1 sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * around; join. (10 groups of 3 dc)',
    ),
    counts: [12, 24, 36],
    spaces: [4, 8, 12],
    findings: [{ row: 2, code: 'stated-count-wrong' }],
  },
  {
    name: 'last pass goes over the stitch to stop at',
    terms: 'us',
    text: lines(
      'Ch 16.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, *sc in next 2 sts, ch 1, sk 1 st; rep from * to last st.',
    ),
    counts: [null, 15, null],
    findings: [{ row: 2, code: 'repeat-does-not-fit' }],
  },
  {
    name: 'seventh of six repeats',
    terms: 'us',
    text: lines('Rnd 1: 6 sc in magic ring.', 'Rnd 2: Inc in each st around.', 'Rnd 3: (sc, inc) x 7.'),
    counts: [6, 12, null],
    findings: [{ row: 2, code: 'place-does-not-exist' }],
  },
  {
    name: 'repeats for stated passes',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: Inc in each st around. (12)',
      'Rnd 3: *Sc in next st, 2 sc in next st; rep from * 5 more times. (18)',
      'Rnd 4: [Sc in next 2 sts, inc] 6 times. (24)',
      'Rnd 5: (3 sc, inc) x 6 (30)',
    ),
    counts: [6, 12, 18, 24, 30],
    repeats: [null, null, 6, 6, 6],
  },
];
