/**
 * Written rows: wordings gleaned from house styles that the other files do not have: lists without a star, stitches by
 * their number, the others between every fourth, brackets of two sorts. Must not repeat a passage of another case file.
 */
import { dc, sc, uk, ukTr, us } from '../swatch.ts';
import type { RowCase } from '../types.ts';

export const gleanings: readonly RowCase[] = [
  // A list without a star: the row's own count says that all of it goes round
  us(
    'a list without a star, taken as a repeat by its count',
    [
      'Rnd 1: 6 sc in MR (6)',
      'Rnd 2: inc in each st (12)',
      'Rnd 3: sc 1, inc around (18)',
      'Rnd 4: 2 sc, inc around (24)',
      'Rnd 5: sc in next 2 sts, dec around (18)',
    ],
    [6, 12, 18, 24, 18],
    {
      findings: [
        { row: 2, code: 'repeat-start-not-said', words: 'around', severity: 'warning' },
        { row: 3, code: 'repeat-start-not-said', words: 'around' },
        { row: 4, code: 'repeat-start-not-said', words: 'around' },
      ],
    },
  ),
  us(
    'sk 1, dc 1 across, by its count',
    [...sc(20), 'Row 2: Ch 1, sk 1, dc 1 across, turn. (10 dc)'],
    [21, 20, 10],
    { findings: [{ row: 2, code: 'repeat-start-not-said', words: 'across' }] },
  ),
  us(
    'a list whose last stitch alone goes across',
    [...sc(21), 'Row 2: Ch 1, sc in first st, dc 1 across, turn. (21 sts)'],
    [22, 21, 21],
  ),
  us(
    'a list that comes out neither way keeps to its words',
    [...sc(20), 'Row 2: Ch 1, sk 1, dc 1 across, turn. (12 dc)'],
    [21, 20, 19],
    { findings: [{ row: 2, code: 'stated-count-wrong', words: '12 dc', saying: ['12', '19'] }] },
  ),
  us(
    'a group at the end of a list without a star',
    [...sc(20), 'Row 2: Ch 1, sk 1, (sc, dc) in next st across, turn. (20 sts)'],
    [21, 20, 20],
    { findings: [{ row: 2, code: 'repeat-start-not-said', words: 'across' }] },
  ),
  us(
    'stars round what goes into each',
    [...sc(14), 'Row 2: Ch 1, *sc, dc* in each st across, turn. (28 sts)'],
    [15, 14, 28],
  ),

  // The others
  us(
    'increases in every other, one in the others',
    [...sc(20), 'Row 2: Ch 1, 2 sc in every 2nd st and 1 sc in the others across, turn. (30 sc)'],
    [21, 20, 30],
  ),
  us(
    'increases in every fourth, with a rest',
    // 22 = 5 * 4 + 2
    [...sc(22), 'Row 2: Ch 1, 2 sc in every 4th st, sc in all other sts, turn. (27 sc)'],
    [23, 22, 27],
  ),
  us(
    'a count off by one beside the others',
    [...sc(22), 'Row 2: Ch 1, 2 sc in every 4th st, sc in all others, turn. (28 sc)'],
    [23, 22, 27],
    { findings: [{ row: 2, code: 'stated-count-wrong', words: '28 sc', saying: ['28', '27'] }] },
  ),
  us(
    'the others behind a few',
    [...sc(22), 'Row 2: Ch 1, sc in first 5 sts, dc in the others, turn. (22 sts)'],
    [23, 22, 22],
  ),

  // Stitches by their number
  us(
    'stitches by their number',
    // 2 + 3 + 2 + 7; 1 + 4 + 7 and a space
    [
      ...sc(12),
      'Row 2: Ch 1, 2 sc in st 1, sc in sts 2-4, 2 sc in st 5, sc in sts 6-12, turn. (14 sc)',
      'Row 3: Ch 3 (counts as dc), dc in sts 2-5, ch 2, sk sts 6 and 7, dc in sts 8 to 14, turn. (12 dc)',
    ],
    [13, 12, 14, 12],
    { spaces: [0, 0, 0, 1] },
  ),
  us(
    'a stitch whose number has been used',
    [...sc(12), 'Row 2: Ch 1, sc in sts 1-5, 2 sc in st 5, sc in sts 7-12, turn.'],
    [13, 12, null],
    { findings: [{ row: 2, code: 'place-does-not-exist', words: 'st 5', saying: ['5', '6'] }] },
  ),
  us('a number left out', [...sc(12), 'Row 2: Ch 1, sc in sts 1-5, sc in sts 8-12, turn.'], [13, 12, 10], {
    findings: [{ row: 2, code: 'stitches-passed-over', words: 'sts 8-12', saying: ['2'] }],
  }),
  us(
    'a number that the row below has not',
    [...sc(12), 'Row 2: Ch 1, sc in each of next 6 sts, sc in sts 14-15, turn.'],
    [13, 12, null],
    { findings: [{ row: 2, code: 'place-does-not-exist', words: 'sts 14-15', saying: ['14', '12'] }] },
  ),

  // Stops by number
  us(
    'to the third space',
    // 11 + 10 = 21; 5 + 3 + 15
    [
      ...sc(21),
      'Row 2: Ch 1, sc in first st, *ch 1, sk 1, sc in next st; rep from * across, turn. (11 sc, 10 ch-1 sps)',
      'Row 3: Ch 1, sc in each st and sp to 3rd ch-1 sp, 3 sc in ch-1 sp, sc in each st and sp to end, turn. (23 sc)',
    ],
    [22, 21, 11, 23],
  ),
  us(
    'to a fifth space of three',
    [
      ...sc(7),
      'Row 2: Ch 1, sc in first st, *ch 1, sk 1, sc in next st; rep from * across, turn. (4 sc, 3 ch-1 sps)',
      'Row 3: Ch 1, sc in each st and sp to 5th ch-1 sp, turn.',
    ],
    [8, 7, 4, null],
    { findings: [{ row: 3, code: 'place-does-not-exist', words: 'to 5th ch-1 sp', saying: ['5', '3'] }] },
  ),
  us(
    'lace to the last stitch, over the rest of a group',
    // 3 + 3 + 3 + 3; and 6 more
    [
      'Row 1: Ch 4 (counts as dc), (2 dc, ch 2, 3 dc) in 4th ch from hook, turn. (6 dc)',
      'Row 2: Ch 3 (counts as dc here and throughout), 2 dc in first st, ch 1, (3 dc, ch 2, 3 dc) in ch-2 sp, ch 1, 3 dc in last st, turn. (12 dc)',
      'Row 3: Ch 3, 2 dc in first st, ch 1, *3 dc in next ch-1 sp, ch 1*; rep between * * to ch-2 sp, (3 dc, ch 2, 3 dc) in ch-2 sp, ch 1, **3 dc in next ch-1 sp, ch 1**; rep between ** to last st, 3 dc in last st, turn. (18 dc)',
    ],
    [6, 12, 18],
    { spaces: [1, 3, 5] },
  ),

  // Heads, brackets, hyphens
  us(
    'a purpose at the head of the row',
    [
      'Sizes: S (M, L)',
      'Ch 84 (91, 98), join with sl st to form ring.',
      'Rnd 1: Ch 2 (does not count as a st here and throughout), dc in each ch around, join. 84 (91, 98) sts',
      'Rnd 2: Ch 2, *dc in next 6 sts, 2 dc in next st; rep from * around, join. 96 (104, 112) sts',
      'Divide for sleeves: Ch 2, dc in next 14 (15, 16) sts, ch 4, sk 20 (22, 24) sts, dc in next 28 (30, 32) sts, ch 4, sk 20 (22, 24) sts, dc in last 14 (15, 16) sts, join. 56 (60, 64) dc + 8 ch',
    ],
    { final: [56, 60, 64] },
  ),
  us(
    'a bracket closed by another sort',
    [...sc(24), 'Row 2: Ch 1, [sc in next 3 sts, 2 sc in next st) 6 times, turn. (30 sc)'],
    [25, 24, 30],
    {
      clean: false,
      findings: [{ row: 2, code: 'bracket-not-closed', words: '[', severity: 'error', saying: [')'] }],
    },
  ),
  us(
    'hyphens between number, stitch and place',
    [...sc(24), 'Row 2: Ch-1; sc-in first 12 sts; 3-sc in next st; sc in last 11 sts; turn - [26 sc]'],
    [25, 24, 26],
  ),
  us(
    'the last stitch said without its name',
    [
      ...dc(19),
      'Row 2: Ch 2 (counts as hdc), skip first st, hdc in third loop of each st to end, working last st in top of t-ch, turn. (19 hdc)',
      'Row 3: Ch 4 (counts as dc and ch 1), skip first 2 sts, *dc in next st, ch 1, skip next st; rep from * to end, working last st in top of tch, turn. (10 dc, 9 ch-1 sps)',
    ],
    [21, 19, 19, 10],
  ),
  us(
    'hook cut short',
    [
      'Ch 31',
      'Row 1: sc in 2nd ch from hk, *ch 1, sk 1 ch, sc in next ch; rep from * to last ch, sc in last ch; turn.',
    ],
    [31, 16],
  ),
  uk(
    'the last loop, with its chains in front',
    [
      ...ukTr(31),
      'Row 2 (RS): 1ch, 1dc in first tr, *5ch, miss 4 tr, 1dc in next tr; rep from * to end, working last dc in top of 3ch, turn. (6 loops)',
      'Row 3: 6ch (counts as 1tr and 3ch), *1dc in next 5ch-loop, 5ch; rep from * 4 times more, 1dc in last 5ch-loop, 3ch, 1tr in last dc, turn.',
    ],
    [33, 31, 7, 8],
    { spaces: [0, 0, 6, 7] },
  ),
  us(
    'a length with full stop and bracket inside a remark',
    [...sc(20), 'Row 2: Ch 1, sc in each st across, turn. Piece should measure approx 5 in. (13 cm) wide.'],
    [21, 20, 20],
  ),
  us(
    'a bobble told loop by loop behind its name',
    [
      ...sc(11),
      'Row 2: Ch 1, sc in first 5 sts, make bobble as follows: (yo, insert hook in next st, yo, pull up a loop, yo, pull through 2 loops) 3 times in same st, yo, pull through all 4 loops on hook, sc in last 5 sts, turn. (11 sts)',
    ],
    [12, 11, 11],
  ),
  us(
    'pairs that cross, counted as pairs',
    [
      ...dc(20),
      'Row 2: Ch 3 (counts as dc), *sk next st, dc in next st, dc in skipped st (crossed dc made); rep from * to last st, dc in last st; turn. (20 sts; 9 crossed dc)',
    ],
    [22, 20, 20],
  ),
  us(
    'in pattern behind the row into the chain',
    [
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Rows 2-9: Work in pattern as established.',
    ],
    [21, 20, 20],
  ),
  us(
    'more in the last stitches than there are, told once',
    [
      ...sc(24),
      'Row 2: With A, ch 1, sc in first 5 sts changing to B in last st, with B sc in next 15 sts, changing to A in last st, with A sc in last 5 sts, turn.',
    ],
    [25, 24, 24],
    { findings: [{ row: 2, code: 'place-does-not-exist', words: 'last 5 sts', saying: ['5', '4'] }] },
  ),
];
