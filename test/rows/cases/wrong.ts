/**
 * Written rows that are wrong: one mistake each, the code it must be reported under, the words it must
 * point at and the numbers its message must hold.
 */
import { lines, type RowCase } from '../types.ts';

const usSc = (n: number): readonly string[] => [
  `Ch ${n + 1}.`,
  'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
];
const ukDc = (n: number): readonly string[] => [
  `Make ${n + 1} ch.`,
  'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.',
];

export const wrong: readonly RowCase[] = [
  // Repeats that do not fit
  {
    name: 'repeat of 3 plus 1 over 66',
    terms: 'us',
    // 1 + 21 * 3 = 64, 2 left
    text: lines(
      'Fsc 66.',
      'Row 1: Ch 1, sc in first st, *ch 2, sk 2 sts, sc in next st; rep from * across, turn.',
    ),
    counts: [66, null],
    findings: [
      {
        row: 1,
        code: 'repeat-does-not-fit',
        severity: 'error',
        words: '*ch 2, sk 2 sts, sc in next st; rep from * across',
        saying: ['21', '2', '3', '1', '66', '64', '67'],
      },
    ],
  },
  {
    name: 'shells of 6 plus 1 over 20',
    terms: 'us',
    // 1 + 3 * 6 = 19, 1 left
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in first st, *sk 2 sts, 5 dc in next st, sk 2 sts, sc in next st; rep from * across, turn.',
    ),
    counts: [21, 20, null],
    findings: [
      {
        row: 2,
        code: 'repeat-does-not-fit',
        words: '*sk 2 sts, 5 dc in next st, sk 2 sts, sc in next st; rep from * across',
        saying: ['3', '6', '20', '19', '25'],
      },
    ],
  },
  {
    name: 'band of alternating posts, odd',
    terms: 'us',
    // 20 * 2 = 40, 1 left
    text: lines(
      'Ch 41, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 3 (does not count as a st), dc in each ch around; join with sl st in first dc. (41 dc)',
      'Rnd 2: Ch 2 (does not count as a st), *FPdc around next st, BPdc around next st; rep from * around; join with sl st in first FPdc.',
    ),
    counts: [null, 41, null],
    findings: [
      {
        row: 2,
        code: 'repeat-does-not-fit',
        words: '*FPdc around next st, BPdc around next st; rep from * around',
        saying: ['20', '2', '41', '40', '42'],
      },
    ],
    source: 'common practice, no source: a band of alternating posts needs an even number',
  },
  {
    name: 'one size of three does not fit',
    terms: 'us',
    // 26 = 6 * 4 + 2
    text: lines(
      'Fsc 24 (26, 28).',
      'Row 1: Ch 1, *sc in next 3 sts, 2 sc in next st; rep from * across, turn.',
    ),
    counts: [
      [24, 26, 28],
      [30, null, 35],
    ],
    findings: [{ row: 1, code: 'repeat-does-not-fit', sizes: [1], saying: ['26', '2', '4', '24', '28'] }],
  },
  {
    name: 'repeat with a tail of 2 over 21',
    terms: 'us',
    // 21 - 2 = 19 = 6 * 3 + 1; 20 and 23 fit
    text: lines(
      ...usSc(21),
      'Row 2: Ch 1, *sc in next 2 sts, dc in next st; rep from * to last 2 sts, sc in last 2 sts, turn.',
    ),
    counts: [22, 21, null],
    findings: [{ row: 2, code: 'repeat-does-not-fit', saying: ['6', '1', '3', '21', '20', '23'] }],
  },
  {
    name: 'mesh on a chain that is one too long',
    terms: 'us',
    // 30 - 8 = 22 = 7 * 3 + 1; 29 and 32 fit
    text: lines(
      'Ch 30.',
      'Row 1: Dc in 8th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across, turn.',
    ),
    counts: [30, null],
    findings: [
      {
        row: 1,
        code: 'repeat-does-not-fit',
        words: '*ch 2, sk 2 ch, dc in next ch; rep from * across',
        saying: ['29', '32'],
      },
    ],
  },
  {
    name: 'last repeat cut short at ** does not fit',
    terms: 'us',
    // 3 + 5n: 24 = 23 + 1; 23 and 28 fit
    text: lines(
      'Fsc 24.',
      'Row 1: Ch 2 (does not count as a st), *dc in next 3 sts**, ch 2, sk 2 sts; rep from * across, ending last rep at **, turn.',
    ),
    counts: [24, null],
    findings: [{ row: 1, code: 'repeat-does-not-fit', saying: ['24', '23', '28'] }],
  },
  {
    name: 'bracket around that does not fit',
    terms: 'us',
    // 6 * 5 = 30, 2 left
    text: lines(
      'Ch 32, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around; join with sl st in first sc. (32 sc)',
      'Rnd 2: Ch 1, (sc in next 3 sts, sc2tog) around; join with sl st in first sc.',
    ),
    counts: [null, 32, null],
    findings: [
      {
        row: 2,
        code: 'repeat-does-not-fit',
        words: '(sc in next 3 sts, sc2tog) around',
        saying: ['6', '2', '5', '32', '30', '35'],
      },
    ],
  },
  {
    name: 'increase round does not fit',
    terms: 'us',
    // 20 = 6 * 3 + 2
    text: lines(
      'Rnd 1: 10 sc in magic ring. (10)',
      'Rnd 2: 2 sc in each st around. (20)',
      'Rnd 3: *Sc in next 2 sts, 2 sc in next st; rep from * around.',
    ),
    counts: [10, 20, null],
    findings: [{ row: 2, code: 'repeat-does-not-fit', saying: ['6', '2', '3', '20', '18', '21'] }],
  },
  {
    name: 'repeat of 4 over 23',
    terms: 'uk',
    // 5 * 4 = 20, 3 left
    text: lines(
      ...ukDc(23),
      'Row 2: 1 ch, *1 dc in each of next 3 dc, 2 dc in next dc; rep from * to end, turn.',
    ),
    counts: [24, 23, null],
    findings: [
      {
        row: 2,
        code: 'repeat-does-not-fit',
        severity: 'error',
        words: '*1 dc in each of next 3 dc, 2 dc in next dc; rep from * to end',
        saying: ['5', '3', '4', '23', '20', '24'],
      },
    ],
  },
  {
    name: 'mesh of 3 plus 1 over 26',
    terms: 'uk',
    // 1 + 8 * 3 = 25, 1 left; 25 and 28 fit
    text: lines(
      ...ukDc(26),
      'Row 2: 3 ch (counts as 1 tr), miss first dc, *2 ch, miss 2 dc, 1 tr in next dc; rep from * to end, turn.',
    ),
    counts: [27, 26, null],
    findings: [{ row: 2, code: 'repeat-does-not-fit', saying: ['8', '3', '26', '25', '28'] }],
  },
  {
    name: 'two sizes of four do not fit',
    terms: 'uk',
    // over 6: 30 fits, 34 = 5 * 6 + 4, 36 fits, 40 = 6 * 6 + 4
    text: lines(
      'Row 1: Work 30 (34, 36, 40) fdc, turn.',
      'Row 2: 1 ch, *1 dc in each of next 4 sts, dc2tog; rep from * to end, turn.',
    ),
    counts: [
      [30, 34, 36, 40],
      [25, null, 30, null],
    ],
    findings: [{ row: 1, code: 'repeat-does-not-fit', sizes: [1, 3], saying: ['34', '40'] }],
  },
  // More than is there
  {
    name: '25 stitches over 20',
    terms: 'us',
    text: lines(...usSc(20), 'Row 2: Ch 1, sc in next 25 sts, turn.'),
    counts: [21, 20, null],
    findings: [
      {
        row: 2,
        code: 'place-does-not-exist',
        severity: 'error',
        words: 'sc in next 25 sts',
        saying: ['25', '20'],
      },
    ],
  },
  {
    name: 'second phrase runs out',
    terms: 'us',
    // 12 used, 8 there, 10 asked
    text: lines(...usSc(20), 'Row 2: Ch 1, sc in next 12 sts, hdc in next 10 sts, turn.'),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'place-does-not-exist', words: 'hdc in next 10 sts', saying: ['10', '8'] }],
  },
  {
    name: 'one time too many',
    terms: 'us',
    // 6 * 4 = 24 over 20
    text: lines(...usSc(20), 'Row 2: Ch 1, [sc in next 3 sts, 2 sc in next st] 6 times, turn.'),
    counts: [21, 20, null],
    findings: [
      {
        row: 2,
        code: ['place-does-not-exist', 'repeat-does-not-fit'],
        words: '[sc in next 3 sts, 2 sc in next st] 6 times',
      },
    ],
  },
  {
    name: 'too many in the largest size',
    terms: 'us',
    text: lines(
      'Ch 21 (25, 29).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, sc in next 20 (24, 30) sts, turn.',
    ),
    counts: [
      [21, 25, 29],
      [20, 24, 28],
      [20, 24, null],
    ],
    findings: [
      { row: 2, code: 'place-does-not-exist', sizes: [2], words: '20 (24, 30)', saying: ['30', '28'] },
    ],
  },
  {
    name: 'decrease after the last stitch',
    terms: 'us',
    text: lines(...usSc(20), 'Row 2: Ch 1, sc in next 19 sts, sc2tog over next 2 sts, turn.'),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'place-does-not-exist', words: 'sc2tog over next 2 sts' }],
  },
  {
    name: '24 stitches over 20',
    terms: 'uk',
    text: lines(...ukDc(20), 'Row 2: 1 ch, 1 dc in each of next 24 dc, turn.'),
    counts: [21, 20, null],
    findings: [
      {
        row: 2,
        code: 'place-does-not-exist',
        severity: 'error',
        words: '1 dc in each of next 24 dc',
        saying: ['24', '20'],
      },
    ],
  },
  {
    name: 'a count beyond every row is a slip of the keys',
    terms: 'us',
    text: lines('Ch 900000000.', 'Row 1: Sc in 2nd ch from hook and in each ch across, turn.'),
    counts: [null, null],
    findings: [{ row: 0, code: ['too-many-stitches', 'number-too-large'], words: '900000000' }],
  },
  {
    name: 'a count beyond every row is a slip of the keys',
    terms: 'uk',
    text: lines(...ukDc(20), 'Row 2: 1 ch, 900000000 dc in next dc, 1 dc in each of next 19 dc, turn.'),
    counts: [21, 20, null],
    findings: [{ row: 2, code: ['too-many-stitches', 'number-too-large'], words: '900000000' }],
  },
  // Less than is there
  {
    name: '5 left without a word',
    terms: 'us',
    text: lines(...usSc(20), 'Row 2: Ch 1, sc in next 15 sts, turn.'),
    counts: [21, 20, 15],
    findings: [{ row: 2, code: 'stitches-left-unworked', saying: ['5'] }],
  },
  {
    name: 'one time too few',
    terms: 'us',
    // 4 * 4 = 16, 4 left
    text: lines(...usSc(20), 'Row 2: Ch 1, [sc in next 3 sts, 2 sc in next st] 4 times, turn.'),
    counts: [21, 20, 20],
    findings: [{ row: 2, code: 'stitches-left-unworked', saying: ['4'] }],
  },
  {
    name: 'top of the turning chain forgotten',
    terms: 'us',
    text: lines(
      'Ch 22.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn. (20 dc)',
      'Row 2: Ch 3 (counts as dc), dc in next 18 dc, turn.',
    ),
    counts: [22, 20, 19],
    findings: [{ row: 2, code: 'stitches-left-unworked' }],
  },
  {
    name: 'left in one size',
    terms: 'us',
    text: lines(
      'Ch 21 (25, 29).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, sc in next 20 (22, 28) sts, turn.',
    ),
    counts: [
      [21, 25, 29],
      [20, 24, 28],
      [20, 22, 28],
    ],
    findings: [{ row: 2, code: 'stitches-left-unworked', sizes: [1], saying: ['2'] }],
  },
  {
    name: 'stitches left at the end of a round',
    terms: 'us',
    // 5 * 3 = 15 of 18
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: (Sc in next st, 2 sc in next st) 3 times. (9)',
      'Rnd 3: 2 sc in each st around. (18)',
      'Rnd 4: Ch 1, (sc in next 2 sts, 2 sc in next st) 5 times; join with sl st in first sc.',
    ),
    counts: [6, 9, 18, 20],
    findings: [{ row: 3, code: 'stitches-left-unworked', saying: ['3'] }],
  },
  {
    name: '8 left without a word',
    terms: 'uk',
    text: lines(...ukDc(20), 'Row 2: 1 ch, 1 dc in each of next 12 dc, turn.'),
    counts: [21, 20, 12],
    findings: [{ row: 2, code: 'stitches-left-unworked', saying: ['8'] }],
  },
  // Places that are not there
  {
    name: 'space in a row without spaces',
    terms: 'us',
    text: lines(...usSc(20), 'Row 2: Ch 1, sc in first st, 2 sc in next ch-2 sp, sc in next 19 sts, turn.'),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'place-does-not-exist', severity: 'error', words: 'next ch-2 sp' }],
  },
  {
    name: 'space of the wrong length',
    terms: 'us',
    text: lines(
      'Fsc 13.',
      'Row 1: Ch 1, sc in first st, *ch 3, sk 2 sts, sc in next st; rep from * across, turn. (5 sc, 4 ch-3 sps)',
      'Row 2: Ch 1, sc in first sc, 3 sc in next ch-5 sp, sc in next sc, turn.',
    ),
    counts: [13, 5, null],
    findings: [{ row: 2, code: 'place-does-not-exist', words: 'next ch-5 sp' }],
  },
  {
    name: 'a kind of stitch that the row before lacks',
    terms: 'us',
    text: lines(...usSc(20), 'Row 2: Ch 1, sc in next tr, sc in next 19 sts, turn.'),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'place-does-not-exist', words: 'next tr' }],
  },
  {
    name: 'a shell that the row before lacks',
    terms: 'us',
    text: lines(
      'Shell: 5 dc in same st.',
      ...usSc(20),
      'Row 2: Ch 1, sc in first st, sc in 3rd dc of next shell, sc in next 18 sts, turn.',
    ),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'place-does-not-exist', words: 'next shell' }],
  },
  {
    name: '5th ch of a turning chain of 3',
    terms: 'us',
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 3 (counts as dc), sk first st, dc in next 19 sts, turn. (20 dc)',
      'Row 2: Ch 1, sc in next 19 dc, sc in 5th ch of turning ch, turn.',
    ),
    counts: [20, 20, null],
    findings: [{ row: 2, code: 'place-does-not-exist', words: '5th ch of turning ch' }],
  },
  {
    name: 'k-th chain beyond the foundation',
    terms: 'us',
    text: lines('Ch 6.', 'Row 1: Dc in 8th ch from hook, turn.'),
    counts: [6, null],
    findings: [{ row: 1, code: 'place-does-not-exist', words: '8th ch from hook' }],
  },
  {
    name: 'space in a row without spaces',
    terms: 'uk',
    text: lines(
      ...ukDc(20),
      'Row 2: 1 ch, 1 dc in first dc, 2 dc in next 2ch-sp, 1 dc in each of next 19 dc, turn.',
    ),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'place-does-not-exist', severity: 'error', words: 'next 2ch-sp' }],
  },
  {
    name: 'a kind of stitch that the row before lacks',
    terms: 'uk',
    text: lines(...ukDc(20), 'Row 2: 1 ch, 1 dc in next dtr, 1 dc in each of next 19 dc, turn.'),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'place-does-not-exist', words: 'next dtr' }],
  },
  // Passed over without saying so
  {
    name: 'next dc walks over sc',
    terms: 'us',
    // worked back: dc, sc, dc, sc …; the second dc lies behind an sc
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, *sc in next st, dc in next st; rep from * across, turn. (20 sts)',
      'Row 2: Ch 1, sc in next dc, sc in next dc, sc in last 17 sts, turn.',
    ),
    counts: [20, 20, null],
    findings: [{ row: 2, code: 'stitches-passed-over', words: 'sc in next dc' }],
  },
  {
    name: 'next hdc walks over 3 sc',
    terms: 'us',
    // worked back: the 3 hdc are last, so they come first; then 3 sc lie before the next hdc
    text: lines(
      'Fsc 9.',
      'Row 1: Ch 1, hdc in next 3 sts, sc in next 3 sts, hdc in last 3 sts, turn. (9 sts)',
      'Row 2: Ch 1, sc in next 3 hdc, sc in next hdc, sc in last 2 hdc, turn.',
    ),
    counts: [9, 9, null],
    findings: [{ row: 2, code: 'stitches-passed-over', words: 'sc in next hdc' }],
  },
  {
    name: 'next tr walks over dc',
    terms: 'uk',
    text: lines(
      ...ukDc(20),
      'Row 2: 1 ch, *1 dc in next st, 1 tr in next st; rep from * to end, turn. (20 sts)',
      'Row 3: 1 ch, 1 dc in next tr, 1 dc in next tr, 1 dc in each of last 17 sts, turn.',
    ),
    counts: [21, 20, 20, null],
    findings: [{ row: 3, code: 'stitches-passed-over', words: '1 dc in next tr' }],
  },
  // Words
  {
    name: 'shell without a definition',
    terms: 'us',
    text: lines(
      'Fsc 25.',
      'Row 1: Ch 1, sc in first st, *sk 2 sts, shell in next st, sk 2 sts, sc in next st; rep from * across, turn.',
    ),
    counts: [25, null],
    findings: [{ row: 1, code: 'special-not-defined', words: 'shell' }],
  },
  {
    name: 'fan without a definition',
    terms: 'us',
    text: lines(
      'Fsc 25.',
      'Row 1: Ch 1, sc in first st, *sk 2 sts, fan in next st, sk 2 sts, sc in next st; rep from * across, turn.',
    ),
    counts: [25, null],
    findings: [{ row: 1, code: ['special-not-defined', 'word-not-read'], words: 'fan' }],
  },
  {
    name: 'shell without a definition',
    terms: 'uk',
    text: lines(
      'Row 1: Work 25 fdc, turn.',
      'Row 2: 1 ch, 1 dc in first st, *miss 2 sts, shell in next st, miss 2 sts, 1 dc in next st; rep from * to end, turn.',
    ),
    counts: [25, null],
    findings: [{ row: 1, code: 'special-not-defined', words: 'shell' }],
  },
  {
    name: 'a slip of the keys, suggestion',
    terms: 'us',
    text: lines(...usSc(20), 'Row 2: Ch 1, ddc in each st across, turn.'),
    counts: [21, 20, null],
    read: [true, true, false],
    findings: [{ row: 2, code: 'word-not-read', words: 'ddc', saying: ['dc'] }],
  },
  {
    name: 'a slip of the keys in the middle of a row',
    terms: 'us',
    text: lines(...usSc(20), 'Row 2: Ch 1, sc in next 5 sts, shc in next 10 sts, sc in last 5 sts, turn.'),
    counts: [21, 20, null],
    read: [true, true, false],
    findings: [{ row: 2, code: 'word-not-read', words: 'shc' }],
  },
  {
    name: 'a word nobody knows; the next row is still read',
    terms: 'us',
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, flurble in each st across, turn.',
      'Row 3: Ch 1, sc in each st across, turn.',
    ),
    counts: [21, 20, null, null],
    read: [true, true, false, true],
    findings: [{ row: 2, code: 'word-not-read', words: 'flurble' }],
  },
  {
    name: 'a slip of the keys, suggestion',
    terms: 'uk',
    text: lines(...ukDc(20), 'Row 2: 1 ch, 1 dcc in each st to end, turn.'),
    counts: [21, 20, null],
    read: [true, true, false],
    findings: [{ row: 2, code: 'word-not-read', words: 'dcc', saying: ['dc'] }],
  },
  {
    name: 'UK half treble in a US text',
    terms: 'us',
    text: lines(...usSc(20), 'Row 2: Ch 1, htr in each st across, turn.'),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'other-terms', words: 'htr', saying: ['hdc'] }],
  },
  {
    name: 'US single crochet in a UK text',
    terms: 'uk',
    text: lines(...ukDc(20), 'Row 2: 1 ch, 1 sc in each st to end, turn.'),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'other-terms', words: 'sc', saying: ['dc'] }],
  },
  {
    name: 'US half double in a UK text',
    terms: 'uk',
    text: lines(...ukDc(20), 'Row 2: 1 ch, 1 hdc in each st to end, turn.'),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'other-terms', words: 'hdc', saying: ['htr'] }],
  },
  {
    name: 'US sc2tog in a UK text',
    terms: 'uk',
    text: lines(...ukDc(20), 'Row 2: 1 ch, sc2tog, 1 dc in each st to end, turn.'),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'other-terms', words: 'sc2tog', saying: ['dc2tog'] }],
  },
  // Marks without their partner
  {
    name: 'star without its repeat',
    terms: 'us',
    text: lines(...usSc(20), 'Row 2: Ch 1, *sc in next 3 sts, 2 sc in next st, turn.'),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'repeat-not-closed', words: '*sc in next 3 sts, 2 sc in next st' }],
  },
  {
    name: 'round bracket without its partner',
    terms: 'us',
    text: lines(...usSc(20), 'Row 2: Ch 1, (sc in next 3 sts, 2 sc in next st 5 times, turn.'),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'bracket-not-closed', words: '(sc in next 3 sts' }],
  },
  {
    name: 'square bracket without its partner',
    terms: 'uk',
    text: lines(...ukDc(20), 'Row 2: 1 ch, [1 dc in each of next 3 dc, 2 dc in next dc 5 times, turn.'),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'bracket-not-closed', words: '[1 dc in each of next 3 dc' }],
  },
  {
    name: 'star without its repeat',
    terms: 'uk',
    text: lines(...ukDc(20), 'Row 2: 1 ch, *1 dc in each of next 3 dc, 2 dc in next dc, turn.'),
    counts: [21, 20, null],
    findings: [{ row: 2, code: 'repeat-not-closed', words: '*1 dc in each of next 3 dc' }],
  },
  // Sizes
  {
    name: 'a list shorter than the others',
    terms: 'us',
    text: lines(
      'Ch 21 (25, 29, 33).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 20 (24, 28, 32) sc',
      'Row 2: Ch 1, sc in next 20 (24, 28) sts, turn.',
    ),
    counts: [[21, 25, 29, 33], [20, 24, 28, 32], null],
    findings: [{ row: 2, code: 'sizes-differ-in-length', words: '20 (24, 28)', saying: ['3', '4'] }],
  },
  {
    name: 'a list longer than the others',
    terms: 'uk',
    text: lines(
      'Make 21 (25, 29) ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 20 (24, 28) dc.',
      'Row 2: 1 ch, 1 dc in each of next 20 (24, 28, 32) dc, turn.',
    ),
    counts: [null, null, null],
    findings: [{ row: 2, code: 'sizes-differ-in-length', words: '20 (24, 28, 32)', saying: ['4', '3'] }],
  },
  // Edge chains
  {
    name: 'dc in 5th ch leaves an odd chain',
    terms: 'us',
    text: lines('Ch 22.', 'Row 1: Dc in 5th ch from hook and in each ch across, turn.'),
    counts: [22, null],
    findings: [{ row: 1, code: 'edge-chain-unclear', words: '5th ch from hook' }],
  },
  {
    name: 'dc in 7th ch leaves an odd chain',
    terms: 'us',
    text: lines(
      'Ch 27.',
      'Row 1: Dc in 7th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * to last 2 ch, dc in last 2 ch, turn.',
    ),
    // 27 - 7 = 20 = 6 * 3 + 2
    counts: [27, null],
    findings: [{ row: 1, code: 'edge-chain-unclear', words: '7th ch from hook' }],
  },
  {
    name: 'tr in 6th ch leaves an odd chain',
    terms: 'us',
    text: lines('Ch 22.', 'Row 1: Tr in 6th ch from hook and in each ch across, turn.'),
    counts: [22, null],
    findings: [{ row: 1, code: 'edge-chain-unclear', words: '6th ch from hook' }],
  },
  {
    name: 'tr in 5th ch leaves an odd chain',
    terms: 'uk',
    text: lines('Make 22 ch.', 'Row 1: 1 tr in 5th ch from hook, 1 tr in each ch to end, turn.'),
    counts: [22, null],
    findings: [{ row: 1, code: 'edge-chain-unclear', words: '5th ch from hook' }],
  },
  // Starts and orders
  {
    name: 'a first row with nothing under it',
    terms: 'us',
    text: 'Row 1: Ch 1, sc in each st across, turn.',
    counts: [null],
    findings: [{ row: 0, code: 'nothing-to-work-into' }],
  },
  {
    name: 'a round with nothing under it',
    terms: 'us',
    text: 'Rnd 1: Ch 1, 2 sc in each st around.',
    counts: [null],
    findings: [{ row: 0, code: 'nothing-to-work-into' }],
  },
  {
    name: 'a first row with nothing under it',
    terms: 'uk',
    text: 'Row 1: 1 ch, 1 dc in each st to end, turn.',
    counts: [null],
    findings: [{ row: 0, code: 'nothing-to-work-into' }],
  },
  {
    name: 'a row number left out',
    terms: 'us',
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in each st across, turn.',
      'Row 4: Ch 1, sc in each st across, turn. (20 sc)',
    ),
    counts: [21, 20, 20, 20],
    findings: [{ row: 3, code: 'row-number-out-of-order', words: 'Row 4' }],
  },
  {
    name: 'a row number twice',
    terms: 'us',
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in each st across, turn.',
      'Row 2: Ch 1, hdc in each st across, turn. (20 hdc)',
    ),
    counts: [21, 20, 20, 20],
    findings: [{ row: 3, code: 'row-number-out-of-order', words: 'Row 2' }],
  },
  {
    name: 'a range that overlaps the row before',
    terms: 'uk',
    text: lines(
      ...ukDc(20),
      'Rows 2–6: 1 ch, 1 dc in each dc to end, turn.',
      'Row 5: 1 ch, 1 dc in each dc to end, turn. (20 dc)',
    ),
    counts: [21, 20, 20, 20],
    findings: [{ row: 3, code: 'row-number-out-of-order', words: 'Row 5' }],
  },
  {
    name: 'as a row that is not there',
    terms: 'us',
    text: lines(...usSc(20), 'Row 2: Ch 1, sc in each st across, turn.', 'Row 3: As Row 9.'),
    counts: [21, 20, 20, null],
    findings: [{ row: 3, code: 'row-not-known', words: 'Row 9', saying: ['9'] }],
  },
  {
    name: 'repeat of a row that is not there',
    terms: 'uk',
    text: lines(...ukDc(20), 'Row 2: 1 ch, 1 dc in each dc to end, turn.', 'Rows 3–8: Rep Row 7.'),
    counts: [21, 20, 20, null],
    findings: [{ row: 3, code: 'row-not-known', words: 'Row 7', saying: ['7'] }],
  },
  // Notes that are no mistakes
  {
    name: 'hdc turning chain left open is a note',
    terms: 'us',
    text: lines('Fsc 20.', 'Row 1: Ch 2, hdc in each st across, turn.'),
    counts: [20, null],
    findings: [{ row: 1, code: 'turning-chain-assumed', severity: 'note' }],
    clean: false,
    source: 'published sources are split on the hdc turning chain, resources stitch geometry',
  },
  {
    name: 'htr turning chain left open is a note',
    terms: 'uk',
    text: lines('Row 1: Work 20 fdc, turn.', 'Row 2: 2 ch, 1 htr in each st to end, turn.'),
    counts: [20, null],
    findings: [{ row: 1, code: 'turning-chain-assumed', severity: 'note' }],
    clean: false,
    source: 'published sources are split on the hdc turning chain, resources stitch geometry',
  },
  // Two mistakes
  {
    name: 'two mistakes in two rows are both found',
    terms: 'us',
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in each st across, turn. (21 sc)',
      'Row 3: Ch 1, *sc in next 2 sts, 2 sc in next st; rep from * across, turn.',
    ),
    // row 3: 20 = 6 * 3 + 2
    counts: [21, 20, 20, null],
    findings: [
      { row: 2, code: 'stated-count-wrong', words: '21 sc', saying: ['21', '20'] },
      { row: 3, code: 'repeat-does-not-fit', saying: ['20', '18', '21'] },
    ],
  },
  {
    name: 'a tail of 1 over an even number',
    terms: 'uk',
    // 1 + 2n: 20 = 1 + 9 * 2 + 1; 19 and 21 fit
    text: lines(
      ...ukDc(20),
      'Row 2: 1 ch, 1 dc in first dc, *1 ch, miss 1 dc, 1 dc in next dc; rep from * to end, turn.',
    ),
    counts: [21, 20, null],
    findings: [
      {
        row: 2,
        code: 'repeat-does-not-fit',
        words: '*1 ch, miss 1 dc, 1 dc in next dc; rep from * to end',
        saying: ['9', '2', '20', '19', '21'],
      },
    ],
  },
  {
    name: 'chevron of 14 over 40',
    terms: 'uk',
    // 2 * 14 = 28, 12 left; 28 and 42 fit
    text: lines(
      ...ukDc(40),
      'Row 2: 1 ch, *1 dc in each of next 5 dc, 3 dc in next dc, 1 dc in each of next 5 dc, dc3tog; rep from * to end, turn.',
    ),
    counts: [41, 40, null],
    findings: [{ row: 2, code: 'repeat-does-not-fit', saying: ['2', '12', '14', '40', '28', '42'] }],
  },
  {
    name: 'increase round does not fit in one size',
    terms: 'uk',
    // over 6: 72 fits, 80 = 13 * 6 + 2, 90 fits
    text: lines(
      'Make 72 (80, 90) ch, join with ss in first ch to form a ring.',
      'Rnd 1: 1 ch, 1 dc in each ch around, join with ss in first dc.',
      'Rnd 2: 1 ch, *1 dc in each of next 5 dc, 2 dc in next dc; rep from * around, join with ss in first dc.',
    ),
    counts: [null, [72, 80, 90], [84, null, 105]],
    findings: [
      { row: 2, code: 'repeat-does-not-fit', sizes: [1], saying: ['13', '2', '6', '80', '78', '84'] },
    ],
  },
  {
    name: 'mesh on a chain that is two too long',
    terms: 'uk',
    // 31 - 8 = 23 = 7 * 3 + 2; 29 and 32 fit
    text: lines(
      'Make 31 ch.',
      'Row 1: 1 tr in 8th ch from hook, *2 ch, miss 2 ch, 1 tr in next ch; rep from * to end, turn.',
    ),
    counts: [31, null],
    findings: [{ row: 1, code: 'repeat-does-not-fit', saying: ['29', '32'] }],
  },
  {
    name: 'one time too few',
    terms: 'uk',
    // 5 * 4 = 20 of 24
    text: lines(...ukDc(24), 'Row 2: 1 ch, (1 dc in each of next 2 dc, dc2tog) 5 times, turn.'),
    counts: [25, 24, 15],
    findings: [{ row: 2, code: 'stitches-left-unworked', saying: ['4'] }],
  },
  {
    name: 'left in the two larger sizes',
    terms: 'uk',
    text: lines(
      'Make 21 (25, 29) ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.',
      'Row 2: 1 ch, 1 dc in each of next 20 dc, turn.',
    ),
    counts: [
      [21, 25, 29],
      [20, 24, 28],
      [20, 20, 20],
    ],
    findings: [{ row: 2, code: 'stitches-left-unworked', sizes: [1, 2], saying: ['4', '8'] }],
  },
  {
    name: 'top of the turning chain forgotten',
    terms: 'uk',
    text: lines(
      'Make 22 ch.',
      'Row 1: 1 tr in 4th ch from hook, 1 tr in each ch to end, turn. (20 tr)',
      'Row 2: 3 ch (counts as 1 tr), miss first tr, 1 tr in each of next 18 tr, turn.',
    ),
    counts: [22, 20, 19],
    findings: [{ row: 2, code: 'stitches-left-unworked' }],
  },
  {
    name: 'too many in the smallest size',
    terms: 'uk',
    text: lines(
      'Make 21 (25, 29) ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.',
      'Row 2: 1 ch, 1 dc in each of next 22 (24, 28) dc, turn.',
    ),
    counts: [
      [21, 25, 29],
      [20, 24, 28],
      [null, 24, 28],
    ],
    findings: [
      { row: 2, code: 'place-does-not-exist', sizes: [0], words: '22 (24, 28)', saying: ['22', '20'] },
    ],
  },
  {
    name: 'space of the wrong length',
    terms: 'uk',
    text: lines(
      ...ukDc(13),
      'Row 2: 1 ch, 1 dc in first dc, *3 ch, miss 2 dc, 1 dc in next dc; rep from * to end, turn. (5 dc, 4 ch-sps)',
      'Row 3: 1 ch, 1 dc in first dc, 3 dc in next 6ch-sp, turn.',
    ),
    counts: [14, 13, 5, null],
    findings: [{ row: 3, code: 'place-does-not-exist', words: 'next 6ch-sp' }],
  },
  {
    name: 'a word nobody knows; the next row is still read',
    terms: 'uk',
    text: lines(
      ...ukDc(20),
      'Row 2: 1 ch, 1 brindle in each st to end, turn.',
      'Row 3: 1 ch, 1 dc in each st to end, turn.',
    ),
    counts: [21, 20, null, null],
    read: [true, true, false, true],
    findings: [{ row: 2, code: 'word-not-read', words: 'brindle' }],
  },
  {
    name: 'a first row that speaks of a chain nobody made',
    terms: 'uk',
    text: 'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.',
    counts: [null],
    findings: [{ row: 0, code: ['nothing-to-work-into', 'place-does-not-exist'] }],
  },
  {
    name: 'a row number left out',
    terms: 'uk',
    text: lines(
      ...ukDc(20),
      'Row 2: 1 ch, 1 dc in each dc to end, turn.',
      'Row 5: 1 ch, 1 dc in each dc to end, turn. (20 dc)',
    ),
    counts: [21, 20, 20, 20],
    findings: [{ row: 3, code: 'row-number-out-of-order', words: 'Row 5' }],
  },
  {
    name: 'as a row that is not there',
    terms: 'uk',
    text: lines(...ukDc(20), 'Row 2: 1 ch, 1 dc in each dc to end, turn.', 'Row 3: As Row 8.'),
    counts: [21, 20, 20, null],
    findings: [{ row: 3, code: 'row-not-known', words: 'Row 8', saying: ['8'] }],
  },
  {
    name: 'dtr in 6th ch leaves an odd chain',
    terms: 'uk',
    // 6 - 1 - 4 = 1
    text: lines('Make 22 ch.', 'Row 1: 1 dtr in 6th ch from hook, 1 dtr in each ch to end, turn.'),
    counts: [22, null],
    findings: [{ row: 1, code: 'edge-chain-unclear', words: '6th ch from hook' }],
  },
  {
    name: 'band of raised stitches, odd',
    terms: 'uk',
    // 22 * 2 = 44, 1 left
    text: lines(
      'Make 45 ch, join with ss in first ch to form a ring.',
      'Rnd 1: 3 ch (does not count as a st), 1 tr in each ch around, join with ss in first tr. (45 tr)',
      'Rnd 2: 2 ch (does not count as a st), *1 FPtr around next tr, 1 BPtr around next tr; rep from * around, join with ss in first FPtr.',
    ),
    counts: [null, 45, null],
    findings: [{ row: 2, code: 'repeat-does-not-fit', saying: ['22', '2', '45', '44', '46'] }],
    source: 'common practice, no source: a band of alternating posts needs an even number',
  },
  {
    name: 'V-st taken in its usual meaning is a note',
    terms: 'uk',
    // 20 = 3 + 5 * 3 + 2: 6 Vs and 2 tr
    text: lines(
      ...ukDc(20),
      'Row 2: 3 ch (counts as 1 tr), miss first 2 dc, V-st in next dc, *miss 2 dc, V-st in next dc; rep from * to last 2 dc, miss 1 dc, 1 tr in last dc, turn.',
    ),
    counts: [21, 20, 14],
    spaces: [0, 0, 6],
    findings: [{ row: 2, code: 'definition-assumed', severity: 'note', words: 'V-st' }],
  },
  {
    name: 'letters slipped in the words of places: each told at its word, the rest worked',
    terms: 'us',
    text: lines(
      'Ch 11.',
      'Row 1: Sc in 2nd ch from hok and in each ch across, turn. (10 sc)',
      'Row 2: Ch 1, sc in nxt st, sc in each st acros, turn. (10 sc)',
      'Row 3: Ch 1, sc in frist st, sc in eahc st to lst st, sc in last st, turn. (10 sc)',
    ),
    counts: [11, 10, 10, 10],
    read: [true, false, false, false],
    findings: [
      { row: 1, code: 'word-not-read', words: 'hok', saying: ['"hook"'] },
      { row: 2, code: 'word-not-read', words: 'nxt', saying: ['"next"'] },
      { row: 2, code: 'word-not-read', words: 'acros', saying: ['"across"'] },
      { row: 3, code: 'word-not-read', words: 'frist', saying: ['"first"'] },
      { row: 3, code: 'word-not-read', words: 'eahc', saying: ['"each"'] },
      { row: 3, code: 'word-not-read', words: 'lst', saying: ['"last"'] },
    ],
  },
  {
    name: 'each wrong number of a count is told at its own words',
    terms: 'us',
    text: lines(
      'Ch 13.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (12 sc)',
      'Row 2: Ch 3 (counts as dc), dc in next st, ch 1, sk 1, dc in next 2 sts, ch 2, sk 2, dc in last 5 sts, turn. (4 dc, 3 ch-1 sps, 2 ch-2 sps)',
    ),
    // 2 + 2 + 5 dc, 1 of each space
    counts: [13, 12, 9],
    findings: [
      { row: 2, code: 'stated-count-wrong', words: '4 dc', saying: ['4', '9'] },
      { row: 2, code: 'stated-count-wrong', words: '3 ch-1 sps', saying: ['3', '1'] },
      { row: 2, code: 'stated-count-wrong', words: '2 ch-2 sps', saying: ['2', '1'] },
    ],
  },
  {
    name: 'a stitch defined by itself makes nothing',
    terms: 'us',
    text: lines(
      'Shell: 5 shell in next st.',
      ...usSc(9),
      'Row 2: Ch 1, shell in next st, sc in each st across.',
    ),
    // The first of 9 is used and nothing made in it.
    counts: [10, 9, 8],
    findings: [{ row: 2, code: 'definition-in-circle', severity: 'error', words: 'shell in next st' }],
  },
  {
    name: 'the last stitch left without a word',
    terms: 'us',
    text: lines(...usSc(15), 'Row 2: Ch 1, *sc in next st; rep from * to last st.'),
    counts: [16, 15, 14],
    findings: [{ row: 2, code: 'stitches-left-unworked', severity: 'error', saying: ['1', '15'] }],
  },
  {
    name: 'more are to be left than there are',
    terms: 'us',
    text: lines(
      'Ch 11.',
      'Row 1: Sc in 2nd ch from hook and in each ch across.',
      'Row 2: Ch 1, sc in each st to last 12 sts.',
    ),
    counts: [11, 10, 0],
    findings: [
      {
        row: 2,
        code: 'place-does-not-exist',
        words: 'to last 12 sts',
        severity: 'error',
        saying: ['12', '10', '2'],
      },
    ],
    source: 'common practice, no source',
  },
  {
    name: 'more are to be left than there are behind the first stitches',
    terms: 'uk',
    text: lines(
      '11 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end.',
      'Row 2: 1 ch, 1 dc in next 4 sts, 1 dc in each st to last 8 sts.',
    ),
    counts: [11, 10, 4],
    findings: [
      {
        row: 2,
        code: 'place-does-not-exist',
        words: 'to last 8 sts',
        severity: 'error',
        saying: ['8', '6', '2'],
      },
    ],
    source: 'common practice, no source',
  },
  // A decrease, an ordinal and a chain that are not what the words around them say
  {
    name: 'sc3tog over 2 sts',
    terms: 'us',
    text: lines(...usSc(12), 'Row 2: Ch 1, sc3tog over next 2 sts, sc in each st to end.'),
    findings: [
      {
        row: 2,
        code: 'together-differs',
        severity: 'warning',
        words: 'sc3tog over next 2 sts',
        saying: ['3', '2'],
      },
    ],
    source: 'common practice, no source',
  },
  {
    name: 'the 3rd st behind the third',
    terms: 'us',
    // 3 used, 2 passed over, 1 more: 12 - 2 = 10
    text: lines(...usSc(12), 'Row 2: Ch 1, sc in first 3 sts, sc in 3rd st, sc in each st to end.'),
    counts: [13, 12, 10],
    findings: [
      { row: 2, code: 'stitches-passed-over', severity: 'warning', words: 'in 3rd st', saying: ['2'] },
    ],
    source: 'common practice, no source',
  },
  {
    name: 'the 3rd ch from hook of a single chain',
    terms: 'us',
    text: lines(...usSc(12), 'Row 2: Ch 1, turn, sc in 3rd ch from hook, sc in each st to end.'),
    findings: [
      {
        row: 2,
        code: 'place-does-not-exist',
        severity: 'error',
        words: 'sc in 3rd ch from hook',
        saying: ['no ch'],
      },
    ],
    source: 'common practice, no source',
  },
  {
    name: 'a number with no row behind it',
    terms: 'us',
    text: lines(...usSc(12), 'Row 2:', 'Row 3: Ch 1, sc in each st across.'),
    findings: [{ row: 2, code: 'row-works-nothing', severity: 'warning', words: 'Row 2:', saying: [] }],
    source: 'common practice, no source',
  },
  {
    name: 'a round of V-stitches on an odd number',
    terms: 'us',
    // V-stitches in the 1st, 3rd, 5th and 7th of 7 sts: the last stands right beside the first
    text: lines(
      'Rnd 1: 7 sc in magic ring.',
      'Rnd 2: Ch 5 (counts as dc, ch 2), dc in same st, *sk 1 st, (dc, ch 2, dc) in next st; rep from * around, join with sl st to 3rd ch of ch-5.',
    ),
    counts: [7, 8],
    findings: [
      {
        row: 1,
        code: 'gap-left-out',
        severity: 'note',
        words: '*sk 1 st, (dc, ch 2, dc) in next st; rep from * around',
        saying: ['1 st', '8'],
      },
    ],
    source: 'common practice, no source',
  },
];
