/**
 * Written rows: the habits of printing houses: stars of other shapes, counts behind a colon or in bold letters, how far
 * rows go on, chains that stand for a loop without saying so. Must not repeat a passage of another case file.
 */
import { sc, uk, us } from '../swatch.ts';
import type { RowCase } from '../types.ts';

const plain = (n: number): readonly string[] => [...sc(n), 'Row 2: Ch 1, sc in each st across, turn.'];

/** A row that states its 19 stitches in one form, and with one too few in the same form. */
const stated = (form: (n: number) => string): readonly RowCase[] => [
  us(`a count as "${form(19)}"`, [...sc(19), `Row 2: Ch 1, turn, sc in each st${form(19)}`], [20, 19, 19]),
  us(
    `a wrong count as "${form(18)}"`,
    [...sc(19), `Row 2: Ch 1, turn, sc in each st${form(18)}`],
    [20, 19, 19],
    { findings: [{ row: 2, code: 'stated-count-wrong', words: '18', saying: ['18', '19'] }] },
  ),
];

export const houses: readonly RowCase[] = [
  // Marks
  us(
    'a printed star marks the repeat, and counts stand behind a colon',
    [
      'Ch 16.',
      'Row 1: Sc in second ch from hook and in each ch across: 15 sc.',
      'Row 2: Ch 1, turn; sc in each sc across: 15 sc.',
      'Row 3: Ch 1, turn; sc in first sc, ★ ch 1, skip next sc, sc in next sc; repeat from ★ across: 8 sc and 7 ch-1 sps.',
    ],
    [16, 15, 15, 8],
    { spaces: [null, null, 0, 7] },
  ),
  us(
    'stars and double stars of the same shape',
    // corners of 6 dc; 4 * 6 = 24
    [
      'Ch 5; join with slip st to form a ring.',
      'Rnd 1: Ch 3 (counts as first dc, now and throughout), 2 dc in ring, ch 3, (3 dc in ring, ch 3) 3 times; join with slip st to first dc: 12 dc and 4 ch-3 sps.',
      'Rnd 2: Slip st in next 2 dc and in next ch-3 sp, ch 3, (2 dc, ch 3, 3 dc) in same sp, ch 1, ★ (3 dc, ch 3, 3 dc) in next ch-3 sp, ch 1; repeat from ★ 2 times more; join with slip st to first dc, finish off: 24 dc and 8 sps.',
    ],
    [5, 12, 24],
    { spaces: [null, 4, 8] },
  ),
  us(
    'the end of a row before a colon is no name of a stitch',
    [...sc(12), 'Row 2: Ch 1; sc in next 12 sc: 12 sc.', 'Row 3: Ch 1, turn; sc2tog across: 6 sts.'],
    [13, 12, 12, 6],
  ),

  // Counts
  ...stated((n) => `. **${n} sts**`),
  ...stated((n) => `. *(${n} sts)*`),
  ...stated((n) => `. _${n} sts_`),
  ...stated((n) => ` // ${n} sc`),
  ...stated((n) => ` / ${n}`),
  ...stated((n) => `. |${n} sc|`),
  ...stated((n) => `. ~${n} sts~`),
  ...stated((n) => `. #${n}`),
  ...stated((n) => `. Sts: ${n}`),
  ...stated((n) => `. Sts = ${n}`),
  ...stated((n) => `, giving ${n} sts.`),
  ...stated((n) => ` to give ${n} sc.`),
  ...stated((n) => `; total of ${n} sc.`),
  ...stated((n) => `. Count ${n}.`),
  ...stated((n) => `. Leaves ${n} sts.`),

  // How far rows go on
  us(
    'a total of rows is that of the piece',
    // 20 in Row 1, one more in each of Rows 2 to 10
    [
      ...sc(20),
      'Row 2: Ch 1, 2 sc in first st, sc in each st across, turn. (21)',
      'Repeat Row 2 for a total of 10 rows. (29 sts)',
      'Row 11: Ch 1, sc in each st across. (29)',
    ],
    [21, 20, 21, 29, 29],
  ),
  us(
    'a total of more rows is from here',
    // 8 rows after Row 2
    [
      ...sc(20),
      'Row 2: Ch 1, 2 sc in first st, sc in each st across, turn. (21)',
      'Repeat Row 2 for a total of 8 more rows. (29 sts)',
      'Row 11: Ch 1, sc in each st across. (29)',
    ],
    [21, 20, 21, 29, 29],
  ),
  us(
    'two rows by turns for so many rows in all',
    [
      ...plain(20),
      'Row 3: Ch 1, hdc in each st across, turn.',
      'Rep Rows 2-3 for 40 rows total.',
      'Row 41: Ch 1, sc2tog, sc in each st across. (19)',
    ],
    [21, 20, 20, 20, 20, 19],
  ),
  us(
    'how often, and the rows that makes in all',
    [
      ...plain(20),
      'Repeat Row 2 28 more times for a total of 30 rows.',
      'Row 31: Ch 1, sc in each st across.',
    ],
    [21, 20, 20, 20, 20],
  ),
  us(
    'worked even for a total of rows',
    [
      ...plain(20),
      'Work even in sc for a total of 12 rows.',
      'Row 13: Ch 1, sc2tog, sc in each st across. (19)',
    ],
    [21, 20, 20, 20, 19],
  ),
  us(
    'two rows repeated to a row that is told by its number',
    [
      ...plain(20),
      'Row 3: Ch 1, hdc in each st across, turn.',
      'Rep Rows 2 and 3 to Row 40.',
      'Row 41: Ch 1, sc2tog, sc in each st across. (19)',
    ],
    [21, 20, 20, 20, 20, 19],
  ),
  us(
    'one row repeated through a row that is still to come',
    [
      ...sc(20),
      'Row 2: Ch 1, 2 sc in first st, sc in each st across, turn.',
      'Rep Row 2 through Row 10. (29 sts)',
      'Row 11: Ch 1, sc in each st across. (29)',
    ],
    [21, 20, 21, 29, 29],
  ),
  us(
    'one row through another that is there already are both',
    // Rows 2 and 3 twice more: two more sts in each pass
    [
      ...sc(20),
      'Row 2: Ch 1, 2 sc in first st, sc in each st across, turn. (21)',
      'Row 3: Ch 1, sc in each st across, turn. (21)',
      'Rep Row 2 through Row 3 twice. (23)',
    ],
    [21, 20, 21, 21, 23],
  ),
  us(
    'to a row whose number differs by size',
    [
      'Sizes: S (M, L)',
      'Ch 21 (25, 29).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. [20 (24, 28) sc]',
      'Row 2: Ch 1, 2 sc in first st, sc in each st across, turn.',
      'Rep Row 2 to Row 5 (6, 8). [24 (29, 35)]',
      'Row 6 (7, 9): Ch 1, sc across. [24 (29, 35)]',
    ],
    [
      [21, 25, 29],
      [20, 24, 28],
      [21, 25, 29],
      [24, 29, 35],
      [24, 29, 35],
    ],
  ),
  us(
    'small letters for rows, in the reference too',
    [
      'ch 12',
      'r1: sc in 2nd ch from hook, sc across. (11)',
      'r2: ch 1, turn. sc across. (11)',
      'r3-r6: repeat r2. (11)',
    ],
    [12, 11, 11, 11],
  ),
  us(
    'a row and all after it, as "onwards"',
    [...sc(11), 'Row 2 onwards: Ch 1, turn, sc across.'],
    [12, 11, 11],
  ),
  us(
    'a row and all after it, as "and on"',
    [...sc(11), 'Row 2 and on: Ch 1, sc across, turn.'],
    [12, 11, 11],
  ),
  us(
    'a row and all after it, as "every row after"',
    [...sc(11), 'Row 2 and every row after: Ch 1, sc across. Turn.'],
    [12, 11, 11],
  ),
  us(
    'a row and all after it, as "to end"',
    [...sc(11), 'Rows 2 to end: Ch 1, sc in each st. Turn.'],
    [12, 11, 11],
  ),

  // Chains that stand for a loop
  us(
    'two chains before a first stitch in a space are the loop at the edge',
    // ch 40: 3 passed over, 19 sc with 18 spaces between; each row goes into the 18 and the loop
    [
      'Ch 40.',
      'Row 1: Sc in 4th ch from hook, (ch 1, skip 1, sc in next ch) to end, turn. 19 sc',
      'Row 2: Ch 2, sc in first ch-1 sp, (ch 1, sc in next ch-1 sp) to end, working last sc in turning ch sp, turn.',
      'Rows 3-20: Rep Row 2.',
    ],
    [40, 19, 19, 19],
    { spaces: [null, 19, 19, 19] },
  ),
  us(
    'the loop at the edge is made at the end of the row before',
    [
      'Ch 40.',
      'Row 1: Sc in 4th ch from hook, *ch 1, skip 1, sc in next ch, repeat from * to end. Ch 2, turn.',
      'Row 2: *Sc in next ch-1 sp, ch 1, repeat from * to end, sc in ch-2 sp at the end. Ch 2, turn.',
      'Row 3: Rep Row 2.',
    ],
    [40, 19, 19, 19],
  ),
  uk(
    'the loop at the edge in UK terms',
    // ch 34: 3 missed, 16 dc with 15 spaces between
    [
      'Ch 34.',
      'Row 1: Dc into 4th ch from hook, *1ch, miss 1 ch, 1dc into next ch; rep from * to end. Turn. (16dc)',
      'Row 2: 2ch, 1dc into first 1ch-sp, *1ch, miss 1dc, 1dc into next 1ch-sp; rep from * to end, working last dc into 2ch-sp. Turn. (16dc)',
      'Row 3: Rep row 2.',
    ],
    [34, 16, 16, 16],
  ),

  // A ring that is one chain
  us(
    'chains shorter than the stitch count where the round joins to their top',
    [
      'Rnd 1: Ch 3, 11 dc in 3rd ch from hook, join with sl st in top of beg ch-3.',
      'Rnd 2: Ch 3, dc in same st, 2 dc in each st around, join. (24 dc)',
    ],
    [12, 24],
  ),
  us(
    'chains shorter than the stitch count where the count shows it',
    ['Rnd 1: Ch 3, 11 dc in 3rd ch from hook (12 dc), join.'],
    [12],
  ),
  us(
    'chains shorter than the stitch do not count where the count is right without them',
    ['Rnd 1: Ch 3, 12 dc in 3rd ch from hook, join with sl st in first dc. (12 dc)'],
    [12],
  ),
  us(
    'the top of a chain counted from the chain that all went into',
    ['Rnd 1: Ch 4, 15 dc in 4th ch from hook; join with sl st in 4th ch of beg ch-4. (16 dc)'],
    [16],
  ),
  us(
    'a beginning cluster in brackets with its chain',
    [
      'Rnd 1: Ch 4, 15 dc in 4th ch from hook; join with sl st in top of ch-4. (16 dc)',
      'Rnd 2: (Ch 3, 2-dc cl) in same st as joining, ch 1, *3-dc cl in next st, ch 1; rep from * around; join in top of first cl. (16 cl)',
    ],
    [16, 16],
    { spaces: [0, 16] },
  ),
  us(
    'a beginning decrease in brackets with its chain, in a corner',
    [
      'Ch 4, join.',
      'Rnd 1: Ch 1, 8 sc in ring, join.',
      'Rnd 2: Ch 1, sc in same st, *ch 3, sk 1, sc in next st; rep from * 2 more times, ch 3, join.',
      'Rnd 3: Sl st in ch-3 sp, (ch 3, dc2tog, ch 3, dc3tog) in same sp, ch 2, *(dc3tog, ch 3, dc3tog) in next ch-3 sp, ch 2; rep from * around, join to top of first cl. (8 cl)',
    ],
    [4, 8, 4, 8],
  ),

  // Small words
  us(
    'foundation stitches joined into a ring',
    [
      'Rnd 1: 60 fdc, join into a ring with sl st in first fdc.',
      'Rnd 2: Ch 3, dc in each st around, join. (60 dc)',
    ],
    [60, 60],
  ),
  us(
    'a chain joined into a round',
    [
      'Ch 48, join into a round with sl st in first ch.',
      'Rnd 1: Ch 1, sc in each ch around, join in first sc.',
    ],
    [48, 48],
  ),
  us(
    'a round joined to the top of its chain, which is not told further',
    ['Rnd 1: Ch 3, 9 hdc in 3rd ch from hook, sl st in top of ch. (10)'],
    [10],
  ),
  us(
    'a cable into the skipped stitches by their number in words',
    [
      ...sc(10),
      'Row 2: Ch 1, turn, sc in first 3 sts, skip 2, fptr around next 2, fptr around first skipped st, fptr around second skipped st, sc in last 3 sts. (10 sts)',
    ],
    [11, 10, 10],
    { byKind: [null, null, { sc: 6, fptr: 4 }] },
  ),
];
