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
];
