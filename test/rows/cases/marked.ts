/**
 * Markers put into one of the stitches just made, each followed by a row that stops at the marker: its count shows
 * which stitch was marked. Worked out by hand; the wordings are common practice, no source.
 */
import { lines, type RowCase } from '../types.ts';

const source = 'common practice, no source';

/** Stitches that the third row works before it meets the marked one of three in the middle of nine. */
const BEFORE: readonly (readonly [words: string, before: number])[] = [
  // The group is the 4th, 5th and 6th stitch; from the other end these are the 6th, 5th and 4th.
  ['pm in first of these 3 sts', 5],
  ['move marker to first of these sts', 5],
  ['move marker up to first sc of the inc', 5],
  ['pm in 2nd of these 3 sts', 4],
  ['pm in 2nd of the 3 sc just made', 4],
  ['move marker to second of these sts', 4],
  ['pm in center st of 3', 4],
  ['move marker to center sc of these 3 sc', 4],
  ['move marker up to center sc', 4],
  ['pm in middle st', 4],
  ['pm in 3rd of these 3 sts', 3],
  ['pm in last of these sts', 3],
  ['pm in last st made', 3],
  ['(pm in center sc of the 3 sc just made)', 4],
  ['(place marker in last st made)', 3],
  // Counted along the row, not among those just made.
  ['pm in 2nd st', 7],
];

/** Rows over the third of seven stitches, which is marked, and what the next row works before it meets the marker. */
const CARRIED: readonly (readonly [row: string, before: number])[] = [
  // Nothing is said of the marker: it stays with its stitch.
  ['Ch 1, sc in each st across, turn.', 2],
  ['Ch 1, sc in each st across (moving markers up), turn.', 2],
  ['Ch 1, sc in each st across, move markers up, turn.', 2],
  // From the other end the marked one is the fifth: of three in it, the middle one.
  ['Ch 1, sc in each st to marked st, 3 sc in marked st, sc in each st across, turn.', 3],
  // It goes elsewhere, or away.
  ['Ch 1, sc in next st, pm in last st made, sc in each st across, turn.', 6],
];

export const marked: readonly RowCase[] = [
  ...BEFORE.map(
    ([words, before]): RowCase => ({
      name: `${words}, and the next row stops there`,
      terms: 'us',
      text: lines(
        'Ch 8.',
        'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (7 sc)',
        `Row 2: Ch 1, sc in next 3 sts, 3 sc in next st, ${words}, sc in last 3 sts, turn. (9 sc)`,
        'Row 3: Ch 1, sc in each st to marked st, turn, leaving rem sts unworked.',
      ),
      counts: [8, 7, 9, before],
      source,
    }),
  ),
  {
    // The gore stands between the markers: 12, then 14 with 4 in the gore, then 16 with 6.
    name: 'a thumb gore whose two markers move outward with its increases',
    terms: 'us',
    text: lines(
      'Ch 12, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around, join with sl st in first sc. (12 sc)',
      'Rnd 2: Ch 1, sc in next 5 sts, sc in next st, pm in last st made, sc in next st, pm in last st made, sc in each st around, join with sl st in first sc. (12 sc)',
      'Rnd 3: Ch 1, sc in each st to marked st, 2 sc in marked st (move marker to first of these sts), sc in each st to next marked st, 2 sc in marked st (move marker to second of these sts), sc in each st around, join with sl st in first sc. (14 sc)',
      'Rnd 4: Ch 1, sc in each st to marked st, 2 sc in marked st (move marker to first of the 2 sc just made), sc in each st to next marked st, 2 sc in marked st (move marker to second of the 2 sc just made), sc in each st around, join with sl st in first sc. (16 sc)',
      'Rnd 5: Ch 1, sc in each st to marked st, ch 1, sk next 6 sts, sc in each st around, join with sl st in first sc. (10 sc, 1 ch-1 sp)',
    ),
    counts: [12, 12, 12, 14, 16, 10],
    source,
  },
  {
    name: 'a thumb gore that grows on every second round, its markers moved up in those between',
    terms: 'us',
    text: lines(
      'Ch 12, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 1, sc in next 6 ch, pm in last st made, sc in next ch, pm in last st made, sc in each ch around, join with sl st in first sc. (12 sc)',
      'Rnd 2: Ch 1, sc in each st around, moving markers up, join with sl st in first sc. (12 sc)',
      'Rnd 3: Ch 1, sc in each st to marked st, 2 sc in marked st (move marker to first of these sts), sc in each st to next marked st, 2 sc in marked st (move marker to last of these sts), sc in each st around, join with sl st in first sc. (14 sc)',
      'Rnd 4: Ch 1, sc in each st around, join with sl st in first sc. (14 sc)',
      // Before the gore 5 sts, in it 4, after it 5.
      'Rnd 5: Ch 1, sc in each st to marked st, ch 1, sk next 4 sts, sc in next 5 sts, join with sl st in first sc. (10 sc, 1 ch-1 sp)',
    ),
    counts: [12, 12, 12, 14, 14, 10],
    source,
  },
  ...CARRIED.map(
    ([words, before]): RowCase => ({
      name: `a marker two rows below, over: ${words}`,
      terms: 'us',
      text: lines(
        'Ch 8.',
        'Row 1: Sc in 2nd ch from hook, sc in next 2 ch, pm in last st made, sc in each ch across, turn. (7 sc)',
        `Row 2: ${words}`,
        'Row 3: Ch 1, sc in each st to marked st, turn, leaving rem sts unworked.',
      ),
      final: before,
      source,
    }),
  ),
];
