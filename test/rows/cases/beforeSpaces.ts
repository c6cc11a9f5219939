/**
 * Rows that stop so many stitches before a space or a corner.
 */
import { lines, type RowCase } from '../types.ts';

const practice = 'common practice, no source';

export const beforeSpaces: readonly RowCase[] = [
  {
    name: 'Ch 1, turn, sc in each st to 2 sts before ch-2 sp, sc2tog, 3 sc in ch-2 sp, sc2tog, sc to end',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in next 9 ch, ch 2, sk 1 ch, sc in last 9 ch. (19 sc, 1 ch-2 sp)',
      'Row 2: Ch 1, turn, sc in each st to 2 sts before ch-2 sp, sc2tog, 3 sc in ch-2 sp, sc2tog, sc to end.',
    ),
    final: 20,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc to 1 st before next ch-2 sp, 2 sc in next st, (sc, ch 2, sc) in ch-2 sp, 2 sc in next st, sc to end',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in next 9 ch, ch 2, sk 1 ch, sc in last 9 ch. (19 sc, 1 ch-2 sp)',
      'Row 2: Ch 1, turn, sc to 1 st before next ch-2 sp, 2 sc in next st, (sc, ch 2, sc) in ch-2 sp, 2 sc in next st, sc to end.',
    ),
    final: 23,
    spaces: [null, null, 1],
    source: practice,
  },
  {
    name: 'Ch 3, turn, dc to 2 sts before center ch-2 sp, dc2tog, ch 2, dc2tog, dc to end',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in next 9 ch, ch 2, sk 1 ch, sc in last 9 ch. (19 sc, 1 ch-2 sp)',
      'Row 2: Ch 3, turn, dc to 2 sts before center ch-2 sp, dc2tog, ch 2, dc2tog, dc to end.',
    ),
    final: 17,
    spaces: [null, null, 1],
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc to 3 sts before the ch-2 sp, ch 1, sk 3 sts, 2 sc in ch-2 sp, ch 1, sk 3 sts, sc to end',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in next 9 ch, ch 2, sk 1 ch, sc in last 9 ch. (19 sc, 1 ch-2 sp)',
      'Row 2: Ch 1, turn, sc to 3 sts before the ch-2 sp, ch 1, sk 3 sts, 2 sc in ch-2 sp, ch 1, sk 3 sts, sc to end.',
    ),
    final: 15,
    spaces: [null, null, 2],
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc to 2 sts before corner, sc2tog, (sc, ch 2, sc) in corner, sc2tog, sc to end',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in next 9 ch, ch 2, sk 1 ch, sc in last 9 ch. (19 sc, 1 ch-2 sp)',
      'Row 2: Ch 1, turn, sc to 2 sts before corner, sc2tog, (sc, ch 2, sc) in corner, sc2tog, sc to end.',
    ),
    final: 19,
    spaces: [null, null, 1],
    source: practice,
  },
];
