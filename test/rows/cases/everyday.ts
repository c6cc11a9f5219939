/**
 * Written rows: what beginners' patterns of dishcloths, blankets, squares and toys contain, in plain wording.
 */
import { lines, type RowCase } from '../types.ts';

const square = 'Rnd 1: Ch 3, 2 dc in magic ring, (ch 2, 3 dc) 3 times, ch 2; join. (12 dc)';

export const everyday: readonly RowCase[] = [
  // Corners
  {
    name: 'border of a square: 2nd round with corners',
    terms: 'us',
    text: lines(
      square,
      'Rnd 2: Ch 1, sc in each dc around, working 3 sc in each ch-2 corner sp; join. (24 sc)',
      'Rnd 3: Ch 1, sc in each sc around, working 3 sc in 2nd sc of each 3-sc corner; join. (32 sc)',
    ),
    // 12 + 4*3 = 24; 24 + 4*2 = 32
    counts: [12, 24, 32],
  },
  {
    name: 'corners of a solid square, said in many ways',
    terms: 'us',
    text: lines(
      square,
      'Rnd 2: Ch 3, dc in each dc around, working (2 dc, ch 2, 2 dc) in each corner; join. (28 dc)',
      'Rnd 3: Ch 3, dc in each dc around with (2 dc, ch 2, 2 dc) in each ch-2 corner sp; join.',
      'Rnd 4: Ch 3, dc in each dc and (2 dc, ch 2, 2 dc) in each corner sp around; join.',
      'Rnd 5: Ch 1, sc in each st around and 3 sc in each corner; join.',
      'Rnd 6: Ch 1, sc in each sc around, 3 sc in center sc of each corner; join.',
      'Rnd 7: Ch 1, sc around, working 3 sc in each corner st; join.',
    ),
    // + 4*4 each; 60 + 4*3; + 4*2; + 4*2
    counts: [12, 28, 44, 60, 72, 80, 88],
    spaces: [4, 4, 4, 4, 0, 0, 0],
  },
  {
    name: 'corners of a solid square UK',
    terms: 'uk',
    text: lines(
      'Round 1: 3 ch (counts as 1 tr throughout), 2 tr into magic ring, (2 ch, 3 tr) 3 times, 2 ch, ss to top of 3 ch. (12 tr)',
      'Round 2: 3 ch, 1 tr in each tr around, working (2 tr, 2 ch, 2 tr) into each corner sp, join with a ss. (28 tr)',
      'Round 3: 1 ch, 1 dc in each tr around, working 3 dc in each corner, join. (40 dc)',
      'Round 4: 1 ch, 1 dc in each dc around, working 3 dc in centre dc of each corner, join. (48 dc)',
    ),
    counts: [12, 28, 40, 48],
  },
  {
    name: 'a square of single crochet grown at its corners',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 8 sc in magic ring; join. (8 sc)',
      'Rnd 2: Ch 1, *3 sc in next sc, sc in next sc; rep from * 3 times more; join. (16 sc)',
      'Rnd 3: Ch 1, sc in each sc around, working 3 sc in each corner sc; join. (24 sc)',
      'Rnd 4: Ch 1, sc in each sc around, working 3 sc in center sc of each 3-sc corner; join. (32 sc)',
    ),
    counts: [8, 16, 24, 32],
  },
  {
    name: 'small corners round a square',
    terms: 'us',
    text: lines(
      square,
      'Rnd 2: Ch 1, sc in each dc around, working (sc, ch 2, sc) in each corner sp; join. (20 sc)',
      'Rnd 3: Ch 1, sc in each st around, working 3 sc in each corner ch-2 sp; join.',
    ),
    counts: [12, 20, 32],
    spaces: [4, 4, 0],
  },
  {
    name: 'wrong: corners where there are none',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 8 sc in magic ring; join. (8 sc)',
      'Rnd 2: Ch 1, sc in each sc around, working 3 sc in each corner; join.',
    ),
    counts: [8, 8],
    findings: [{ row: 1, code: 'place-does-not-exist', words: 'in each corner' }],
  },
  {
    name: 'wrong: spaces where there are none',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 8 sc in magic ring; join. (8 sc)',
      'Rnd 2: Ch 1, sc in each sc around, working (sc, ch 1, sc) in each ch-1 sp; join.',
    ),
    counts: [8, 8],
    findings: [{ row: 1, code: 'place-does-not-exist', words: 'in each ch-1 sp', saying: ['ch-1 sp'] }],
  },

  // Chains with the turning chain apart
  {
    name: 'foundation "plus 1 for turning"',
    terms: 'us',
    text: lines(
      'Ch 28, plus 1 for turning.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. Turn. 28 sc.',
      'Row 2: Ch 1. *Sc in next st, dc in next st* across. Turn.',
    ),
    counts: [29, 28, 28],
  },
  {
    name: 'foundation "+ 1 turning chain" UK',
    terms: 'uk',
    text: lines(
      'Chain 30 + 1 turning chain.',
      'Row 1: dc in second ch from hook, then dc in every ch to end (30 dc). Turn.',
    ),
    counts: [31, 30],
  },
  {
    name: 'foundation "+ 3 (counts as first dc)", several sizes',
    terms: 'us',
    text: lines(
      'Ch 30 (34, 38) + 3 (counts as first dc).',
      'Row 1: Dc in 4th ch from hook and in each ch across. 31 (35, 39) dc.',
    ),
    counts: [
      [33, 37, 41],
      [31, 35, 39],
    ],
  },
  {
    name: 'into the second chain and across',
    terms: 'us',
    text: lines('Ch 21.', 'Row 1: Sc in 2nd ch from hook and across. (20 sc)'),
    counts: [21, 20],
  },
  // Rounds in the shortest words
  {
    name: 'a line "FO." behind the last count',
    terms: 'us',
    text: lines('R1: 6sc in MR (6)', 'R2: inc x6 (12)', 'R3-5: sc around (12)', 'R6: dec x 6 (6)', 'FO.'),
    counts: [6, 12, 12, 6],
  },
  {
    name: 'a list and "around"',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: 2 sc in each sc around. (12)',
      'Rnd 3: Sc in next sc, 2 sc in next sc, around. (18)',
      'Rnd 4: Sc 1, dec, around. (12)',
    ),
    counts: [6, 12, 18, 12],
    findings: [
      { row: 2, code: 'repeat-start-not-said', severity: 'warning', words: 'around' },
      { row: 3, code: 'repeat-start-not-said', severity: 'warning', words: 'around' },
    ],
  },
  {
    name: '"first sc" at the head of a repeat',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring.',
      'Rnd 2: 2 sc in each sc around. 12 sc',
      'Rnd 3: *Sc in first sc, 2 sc in next sc; rep from * around. 18 sc',
      'Rnd 4: [Sc in first 2 sc, 2 sc in next sc] 6 times. 24 sc',
    ),
    counts: [6, 12, 18, 24],
  },
  // Rows called by their names
  {
    name: 'dec row, repeated by its name',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and each ch across. (20)',
      'Dec Row: Ch 1, sc2tog, sc to last 2 sts, sc2tog, turn. (18)',
      'Rep Dec Row 3 more times. (12)',
      'Next Row: Ch 1, sc in each sc across. (12)',
    ),
    final: 12,
  },
  {
    name: 'inc row on every 4th row',
    terms: 'us',
    text: lines(
      'Fsc 20.',
      'Row 1 (Inc Row): Ch 1, 2 sc in first st, sc to last st, 2 sc in last st, turn.',
      'Row 2: Ch 1, sc in each sc across, turn.',
      'Rep Inc Row on every 4th row 2 times more. (26)',
    ),
    final: 26,
  },
  {
    name: 'increase row every other row UK',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      '1st row: 1 dc into 2nd ch from hook, 1 dc into each ch to end, turn. (20 dc)',
      'Increase row: 1 ch, 2 dc into first dc, 1 dc into each dc to last dc, 2 dc into last dc, turn. (22 dc)',
      'Rep increase row every alternate row 3 times more. (28 dc)',
    ),
    final: 28,
  },
  {
    name: 'wrong: no row of that name',
    terms: 'us',
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, 2 sc in first st, sc to last st, 2 sc in last st, turn.',
      'Rep Inc Row 2 times more. (26)',
    ),
    counts: [20, 22, 22],
    findings: [
      { row: 2, code: 'word-not-read', words: 'Inc Row' },
      { row: 2, code: 'stated-count-wrong', saying: ['26', '22'] },
    ],
  },
  // Places
  {
    name: 'groups named by their stitches',
    terms: 'us',
    text: lines(
      square,
      'Rnd 2: Sl st in next 2 dc and in next sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, *(3 dc, ch 2, 3 dc) in next sp; rep from * around; join.',
      'Rnd 3: Sl st in next 2 dc and in next sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, *3 dc between next two 3-dc groups, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times, 3 dc between next two groups; join.',
    ),
    counts: [12, 24, 36],
  },
  {
    name: 'shawl: up to the space of the spine',
    terms: 'us',
    text: lines(
      'Row 1: Make a magic ring. Ch 3 (counts as dc throughout), 2 dc, ch 2, 3 dc in ring. Turn. (6 dc)',
      'Row 2: Ch 3, 2 dc in first st, dc in next 2 sts, (2 dc, ch 2, 2 dc) in ch-2 sp, dc in next 2 sts, 3 dc in last st, turn. (14 dc)',
      'Row 3: Ch 3, 2 dc in same st, dc in each st to ch-2 sp, (2 dc, ch 2, 2 dc) in ch-2 sp, dc in each st to last st, 3 dc in last st. Turn. 22 dc.',
    ),
    // each: 2 more at either edge, 4 at the spine
    counts: [6, 14, 22],
  },
  {
    name: 'shawl begun in the first chain of four',
    terms: 'us',
    text: lines('Row 1: Ch 4 (counts as ch 1, dc), (2 dc, ch 2, 3 dc) in first ch. Turn. (6 dc)'),
    counts: [6],
    spaces: [1],
  },
  {
    name: 'wrong: a group in each sc over the dc between them',
    terms: 'us',
    text: lines(
      'Ch 20.',
      'Row 1: (Sc, dc) in 2nd ch from hook, *sk next ch, (sc, dc) in next ch; rep from * across. Turn.',
      'Row 2: Ch 1, (sc, dc) in each sc across. Turn.',
    ),
    counts: [20, 20, 20],
    findings: [{ row: 2, code: 'stitches-passed-over', words: 'in each sc across', saying: ['1'] }],
  },
];
