/**
 * Rounds whose beginning ends their last pass: a gap that is not said again, a chain that is a leg of the first cluster.
 */
import { lines, type RowCase } from '../types.ts';

const practice = 'common practice, no source';

export const closings: readonly RowCase[] = [
  {
    name: 'Ch 3, dc2tog in same st, ch 3, *dc3tog in next st, ch 3; rep from * around, join to top of first cluster',
    terms: 'us',
    text: lines(
      'Ch 3, join.',
      'Rnd 1: 8 sc in ring.',
      'Rnd 2: Ch 3, dc2tog in same st, ch 3, *dc3tog in next st, ch 3; rep from * around, join to top of first cluster.',
    ),
    final: 8,
    spaces: [null, null, 8],
    source: practice,
  },
  {
    name: 'Ch 3, dc2tog in same st, ch 3, *dc3tog in next st, ch 3; rep from * around, join',
    terms: 'us',
    text: lines(
      'Ch 3, join.',
      'Rnd 1: 8 sc in ring.',
      'Rnd 2: Ch 3, dc2tog in same st, ch 3, *dc3tog in next st, ch 3; rep from * around, join.',
    ),
    final: 8,
    spaces: [null, null, 8],
    source: practice,
  },
  {
    name: 'Ch 4, tr2tog in same st, *ch 4, tr3tog in next st; rep from * around, ch 4, join',
    terms: 'us',
    text: lines(
      'Ch 3, join.',
      'Rnd 1: 8 sc in ring.',
      'Rnd 2: Ch 4, tr2tog in same st, *ch 4, tr3tog in next st; rep from * around, ch 4, join.',
    ),
    final: 8,
    spaces: [null, null, 8],
    source: practice,
  },
  {
    name: 'Ch 3, 3-dc cl in same st, ch 2, *4-dc cl in next st, ch 2; rep from * around, join',
    terms: 'us',
    text: lines(
      'Ch 3, join.',
      'Rnd 1: 8 sc in ring.',
      'Rnd 2: Ch 3, 3-dc cl in same st, ch 2, *4-dc cl in next st, ch 2; rep from * around, join.',
    ),
    final: 8,
    spaces: [null, null, 8],
    source: practice,
  },
  {
    name: 'Ch 3, 2-dc cl in same st, *ch 2, 3-dc cl in next st; rep from * around, ch 2, join',
    terms: 'us',
    text: lines(
      'Ch 3, join.',
      'Rnd 1: 8 sc in ring.',
      'Rnd 2: Ch 3, 2-dc cl in same st, *ch 2, 3-dc cl in next st; rep from * around, ch 2, join.',
    ),
    final: 8,
    spaces: [null, null, 8],
    source: practice,
  },
  {
    name: 'Ch 3, (2-dc cl, ch 3, 3-dc cl) in same st, *ch 1, sk 1, (3-dc cl, ch 3, 3-dc cl) in next st; rep from * 2 more times, ch 1, sk 1, join',
    terms: 'us',
    text: lines(
      'Ch 3, join.',
      'Rnd 1: 8 sc in ring.',
      'Rnd 2: Ch 3, (2-dc cl, ch 3, 3-dc cl) in same st, *ch 1, sk 1, (3-dc cl, ch 3, 3-dc cl) in next st; rep from * 2 more times, ch 1, sk 1, join.',
    ),
    final: 8,
    spaces: [null, null, 8],
    source: practice,
  },
  {
    name: 'Ch 3, dc in same st, *ch 1, 2 dc in next st; rep from * around, ch 1, join',
    terms: 'us',
    text: lines(
      'Ch 3, join.',
      'Rnd 1: 8 sc in ring.',
      'Rnd 2: Ch 3, dc in same st, *ch 1, 2 dc in next st; rep from * around, ch 1, join.',
    ),
    final: 16,
    spaces: [null, null, 8],
    source: practice,
  },
  {
    name: 'Ch 3, 4-dc cluster in same st, ch 3, *sk 1, 5-dc cluster in next, ch 3; rep around, join to top of first cluster',
    terms: 'us',
    text: lines(
      'Ch 3, join.',
      'Rnd 1: 8 sc in ring.',
      'Rnd 2: Ch 3, 4-dc cluster in same st, ch 3, *sk 1, 5-dc cluster in next, ch 3; rep around, join to top of first cluster.',
    ),
    final: 4,
    spaces: [null, null, 4],
    source: practice,
  },
  {
    name: 'Ch 2, dc in same st, *ch 2, dc2tog in next st; rep from * around, ch 2, join',
    terms: 'us',
    text: lines(
      'Ch 3, join.',
      'Rnd 1: 8 sc in ring.',
      'Rnd 2: Ch 2, dc in same st, *ch 2, dc2tog in next st; rep from * around, ch 2, join.',
    ),
    final: 8,
    spaces: [null, null, 8],
    source: practice,
  },
  {
    name: 'Ch 3, turn, dc in same st, dc2tog over next 2 sts, dc in each st across',
    terms: 'us',
    text: lines(
      'Ch 22.',
      'Row 1: Dc in 4th ch from hook and in each ch across. (20 dc)',
      'Row 2: Ch 3, turn, dc in same st, dc2tog over next 2 sts, dc in each st across.',
    ),
    final: 20,
    source: practice,
  },
  {
    name: 'Ch 6, *sk 1 sc, dc in next sc, ch 3; rep from * around, join in 3rd ch of ch-6',
    terms: 'us',
    text: lines(
      'Ch 3, join.',
      'Rnd 1: 8 sc in ring.',
      'Rnd 2: Ch 6, *sk 1 sc, dc in next sc, ch 3; rep from * around, join in 3rd ch of ch-6.',
    ),
    final: 4,
    spaces: [null, null, 4],
    source: practice,
  },
  {
    name: 'Ch 5, dc in same st, *sk 1 sc, (dc, ch 2, dc) in next sc; rep from * around, join in 3rd ch of ch-5',
    terms: 'us',
    text: lines(
      'Ch 3, join.',
      'Rnd 1: 8 sc in ring.',
      'Rnd 2: Ch 5, dc in same st, *sk 1 sc, (dc, ch 2, dc) in next sc; rep from * around, join in 3rd ch of ch-5.',
    ),
    final: 8,
    spaces: [null, null, 4],
    source: practice,
  },
  {
    name: 'Ch 3, 4 dc in same st, *sk 1 st, 5 dc in next st; rep from * around, join',
    terms: 'us',
    text: lines(
      'Ch 3, join.',
      'Rnd 1: 8 sc in ring.',
      'Rnd 2: Ch 3, 4 dc in same st, *sk 1 st, 5 dc in next st; rep from * around, join.',
    ),
    final: 20,
    source: practice,
  },
  {
    name: 'Ch 1, (sc, ch 3, sc) in first st, *sk 1, (sc, ch 3, sc) in next; rep from * around, join to first sc',
    terms: 'us',
    text: lines(
      'Ch 3, join.',
      'Rnd 1: 8 sc in ring.',
      'Rnd 2: Ch 1, (sc, ch 3, sc) in first st, *sk 1, (sc, ch 3, sc) in next; rep from * around, join to first sc.',
    ),
    final: 8,
    spaces: [null, null, 4],
    source: practice,
  },
  {
    name: 'Ch 4 (counts as dc, ch 1), (dc, ch 1) twice in same st, *sk 1 st, (dc, ch 1) 3 times in next st; rep from * around, join',
    terms: 'us',
    text: lines(
      'Ch 3, join.',
      'Rnd 1: 8 sc in ring.',
      'Rnd 2: Ch 4 (counts as dc, ch 1), (dc, ch 1) twice in same st, *sk 1 st, (dc, ch 1) 3 times in next st; rep from * around, join.',
    ),
    final: 12,
    spaces: [null, null, 12],
    source: practice,
  },
];
