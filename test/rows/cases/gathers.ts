/**
 * Stitches told loop by loop, changes in every so many stitches, chains that are a part of the stitch beside them or none
 * of it, numbers behind the names of their sizes. Counts are worked out by hand.
 */
import { lines, type RowCase } from '../types.ts';

const practice = 'common practice, no source';

export const gathers: readonly RowCase[] = [
  {
    name: 'Ch 1, sc across, working 2 sc in every 5th st',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Ch 1, sc across, working 2 sc in every 5th st.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Ch 1, sc in each st across, skipping every fifth stitch',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Ch 1, sc in each st across, skipping every fifth stitch.',
    ),
    final: 16,
    source: practice,
  },
  {
    name: 'Ch 1, sc in first 18 sts, (insert hook in next st, yo, pull up a loop)',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Ch 1, sc in first 18 sts, (insert hook in next st, yo, pull up a loop) twice, yo, pull through all 3 loops on hook.',
    ),
    final: 19,
    source: practice,
  },
  {
    name: 'Ch 1, (insert hook in next st, yo and draw up a loop) 2 times, yo and',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Ch 1, (insert hook in next st, yo and draw up a loop) 2 times, yo and draw through all 3 loops on hook, sc in each st to end.',
    ),
    final: 19,
    source: practice,
  },
  {
    name: 'Ch 1, draw up a lp in each of first 2 sts, yo, draw through all 3 lps',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Ch 1, draw up a lp in each of first 2 sts, yo, draw through all 3 lps on hook, sc in each st across.',
    ),
    final: 19,
    source: practice,
  },
  {
    name: 'Ch 1, sc in first st, draw up a loop in each of next 2 sts, yo and thr',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Ch 1, sc in first st, draw up a loop in each of next 2 sts, yo and through 3 loops (dec made), sc in each rem st.',
    ),
    final: 19,
    source: practice,
  },
  {
    name: 'Ch 1, *(yo, insert hook in next st, yo, pull up loop, yo, pull through',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Ch 1, *(yo, insert hook in next st, yo, pull up loop, yo, pull through 2 loops) twice, yo, pull through all 3 loops; rep from * across.',
    ),
    final: 10,
    source: practice,
  },
  {
    name: 'Ch 1, sc in next st, yo, insert hook around post of next st, pull up a',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Ch 1, sc in next st, yo, insert hook around post of next st, pull up a loop, (yo, pull through 2 loops) twice (FPdc made), sc in each st across.',
    ),
    final: 20,
    source: practice,
  },
  {
    name: 'Ch 2 (does not count as a st), hdc in first st, *hdc2tog over same st',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Ch 2 (does not count as a st), hdc in first st, *hdc2tog over same st as last hdc and next st; rep from * across.',
    ),
    final: 20,
    source: practice,
  },
  {
    name: 'Ch 3, dc in next 16 sts, dc3tog over next 2 sts and last st',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Ch 3, dc in next 16 sts, dc3tog over next 2 sts and last st.',
    ),
    final: 18,
    source: practice,
  },
  {
    name: 'Ch 1, sc in next 12 sts only, leave rest unworked',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Ch 1, sc in next 12 sts only, leave rest unworked.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Sc evenly around, increasing 6 sts',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: 2 sc in each st around. (12)',
      'Rnd 3: Sc evenly around, increasing 6 sts.',
    ),
    final: 18,
    source: practice,
  },
  {
    name: 'Sc even',
    terms: 'us',
    text: lines('Rnd 1: 6 sc in magic ring. (6)', 'Rnd 2: 2 sc in each st around. (12)', 'Rnd 3: Sc even.'),
    final: 12,
    source: practice,
  },
  {
    name: 'Sc evenly around',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: 2 sc in each st around. (12)',
      'Rnd 3: Sc evenly around.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Sc in 8, (hdc, 2 dc, hdc) in next st, sc in 3',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: 2 sc in each st around. (12)',
      'Rnd 3: Sc in 8, (hdc, 2 dc, hdc) in next st, sc in 3.',
    ),
    final: 15,
    source: practice,
  },
  {
    name: 'Work a round of sc',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: 2 sc in each st around. (12)',
      'Rnd 3: Work a round of sc.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'One round sc',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: 2 sc in each st around. (12)',
      'Rnd 3: One round sc.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Single crochet around in each stitch',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: 2 sc in each st around. (12)',
      'Rnd 3: Single crochet around in each stitch.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 2, hdc in same st as joining, 2 hdc in next st, *hdc in next st, 2',
    terms: 'us',
    text: lines(
      'Ch 4, sl st in first ch to form ring.',
      'Rnd 1: Ch 3 (counts as first dc), 11 dc in ring, join with sl st in top of beg ch-3. (12 dc)',
      'Rnd 2: Ch 2, hdc in same st as joining, 2 hdc in next st, *hdc in next st, 2 hdc in next st; rep from * around, join.',
    ),
    final: 18,
    source: practice,
  },
  {
    name: 'Ch 3, 2-dc cl in same st, ch 2, *3-dc cl in next st, ch 2; rep from *',
    terms: 'us',
    text: lines(
      'Ch 4, sl st in first ch to form ring.',
      'Rnd 1: Ch 3 (counts as first dc), 11 dc in ring, join with sl st in top of beg ch-3. (12 dc)',
      'Rnd 2: Ch 3, 2-dc cl in same st, ch 2, *3-dc cl in next st, ch 2; rep from * around, join to top of first cl.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 3, dc2tog in same st, ch 2, *dc3tog in next st, ch 2; rep from * ar',
    terms: 'us',
    text: lines(
      'Ch 4, sl st in first ch to form ring.',
      'Rnd 1: Ch 3 (counts as first dc), 11 dc in ring, join with sl st in top of beg ch-3. (12 dc)',
      'Rnd 2: Ch 3, dc2tog in same st, ch 2, *dc3tog in next st, ch 2; rep from * around, join.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 3, 2 dc in same st, ch 1, sk next st, *3 dc in next st, ch 1, sk ne',
    terms: 'us',
    text: lines(
      'Ch 4, sl st in first ch to form ring.',
      'Rnd 1: Ch 3 (counts as first dc), 11 dc in ring, join with sl st in top of beg ch-3. (12 dc)',
      'Rnd 2: Ch 3, 2 dc in same st, ch 1, sk next st, *3 dc in next st, ch 1, sk next st; rep from * around, join.',
    ),
    final: 18,
    source: practice,
  },
  {
    name: '3 ch, 1 tr in st at base of ch, 1 tr in each st to end',
    terms: 'uk',
    text: lines(
      'Make 22 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 21 dc.',
      'Row 2: 3 ch, 1 tr in st at base of ch, 1 tr in each st to end.',
    ),
    final: 22,
    source: practice,
  },
  {
    name: 'Ch 1, sc in first S: 40, M: 50, L: 60 sts, sc in each st across',
    terms: 'us',
    text: lines(
      'Sizes: S (M, L)',
      'Ch S: 51, M: 61, L: 71.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (S: 50, M: 60, L: 70 sc)',
      'Row 2: Ch 1, sc in first S: 40, M: 50, L: 60 sts, sc in each st across.',
    ),
    final: [50, 60, 70],
    source: practice,
  },
  {
    name: 'Ch 1, sc in each st to last S: 5, M: 6, L: 7 sts, turn, leaving rest u',
    terms: 'us',
    text: lines(
      'Sizes: S (M, L)',
      'Ch S: 51, M: 61, L: 71.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (S: 50, M: 60, L: 70 sc)',
      'Row 2: Ch 1, sc in each st to last S: 5, M: 6, L: 7 sts, turn, leaving rest unworked.',
    ),
    final: [45, 54, 63],
    source: practice,
  },
];
