/**
 * Written rows: instructions that work whole rows again, for so many rows or times, or as an earlier row.
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

export const wholeRows: readonly RowCase[] = [
  {
    name: 'a row said again behind a count without a full stop',
    terms: 'uk',
    text: lines(
      'Ch 41.',
      'Row 1: Dc in 2nd ch from hook, dc to end. 40 sts',
      'Next row: 1ch, dc2tog, dc to last 2 sts, dc2tog. 38 sts',
      'Rep last row 3 times more. 32 sts.',
      'Work 5 rows straight.',
    ),
    counts: [41, 40, 38, 32, 32],
    source: 'common practice, no source',
  },
  {
    name: 'range worked with its own words',
    terms: 'us',
    text: lines(...usSc(20), 'Rows 2-10: Ch 1, sc in each st across, turn. (20 sc)'),
    counts: [21, 20, 20],
  },
  {
    name: 'Rows: rep Row 2',
    terms: 'us',
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in each st across, turn. (20 sc)',
      'Rows 3–10: Rep Row 2.',
      'Row 11: Ch 1, sc2tog, sc in each st across, turn. (19 sts)',
    ),
    counts: [21, 20, 20, 20, 19],
  },
  {
    name: 'a repeated row that decreases',
    terms: 'us',
    // row 2: 18; rows 3 to 6: 4 * 2 less = 10
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. (18 sts)',
      'Rows 3-6: Repeat Row 2. (10 sts)',
    ),
    counts: [21, 20, 18, 10],
  },
  {
    name: 'a repeated row that increases, by size',
    terms: 'us',
    // 10, 12 + 2 = 12, 14; 4 (5) more rows of 2: 20, 24
    text: lines(
      'Ch 11 (13).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 10 (12) sc',
      'Row 2: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. 12 (14) sc',
      'Rows 3-6 (7): Rep Row 2. 20 (24) sc',
    ),
    counts: [
      [11, 13],
      [10, 12],
      [12, 14],
      [20, 24],
    ],
  },
  {
    name: 'two rows by turns, ending on the first of them',
    terms: 'us',
    // rows 4 to 60 are 57: row 60 is a Row 2
    text: lines(
      ...usSc(21),
      'Row 2: Ch 1, dc in first st, *ch 1, sk 1 st, dc in next st; rep from * across, turn. (11 dc, 10 ch-1 sps)',
      'Row 3: Ch 1, sc in each dc and in each ch-1 sp across, turn. (21 sc)',
      'Rows 4-60: Rep Rows 2 and 3, ending with a Row 2.',
    ),
    counts: [22, 21, 11, 21, 11],
    spaces: [0, 0, 10, 0, 10],
  },
  {
    name: 'two rows by turns, ending on the second',
    terms: 'us',
    // rows 4 to 31 are 28
    text: lines(
      ...usSc(21),
      'Row 2: Ch 1, dc in first st, *ch 1, sk 1 st, dc in next st; rep from * across, turn.',
      'Row 3: Ch 1, sc in each dc and in each ch-1 sp across, turn.',
      'Rows 4-31: Rep Rows 2 and 3.',
    ),
    counts: [22, 21, 11, 21, 21],
    spaces: [0, 0, 10, 0, 0],
  },
  {
    name: 'rep last 2 rows so many more times',
    terms: 'us',
    // rows 2 and 3: 18; 5 times more: 18 - 10 = 8
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. (18 sts)',
      'Row 3: Ch 1, sc in each st across, turn. (18 sts)',
      'Rep last 2 rows 5 more times. (8 sts)',
    ),
    final: 8,
  },
  {
    name: 'rep Rows 2 and 3 so many times',
    terms: 'us',
    // rows 4 to 9: three pairs, one decrease of 2 each: 18 - 6 = 12
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn.',
      'Row 3: Ch 1, sc in each st across, turn. (18 sts)',
      'Rows 4-9: Rep Rows 2 and 3 three times. (12 sts)',
    ),
    counts: [21, 20, 18, 18, 12],
  },
  {
    name: 'rows listed with commas and "and"',
    terms: 'us',
    text: lines(
      ...usSc(20),
      'Rows 2, 3 and 4: Ch 1, sc in each st across, turn.',
      'Row 5: Ch 1, hdc in each st across, turn. (20 hdc)',
    ),
    counts: [21, 20, 20, 20],
  },
  {
    name: 'as Row 2',
    terms: 'us',
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, 2 sc in first st, sc in each st across, turn. (21 sc)',
      'Row 3: Ch 1, sc in each st across, turn.',
      'Row 4: As Row 2. (22 sc)',
      'Row 5: As Row 3.',
    ),
    counts: [21, 20, 21, 21, 22, 22],
  },
  {
    name: 'two lists of rows that go by turns',
    terms: 'us',
    // rows 4 to 9 alternate; row 8 is a Row 2, row 9 a Row 3
    text: lines(
      ...usSc(21),
      'Row 2: Ch 1, dc in first st, *ch 1, sk 1 st, dc in next st; rep from * across, turn.',
      'Row 3: Ch 1, sc in each dc and in each ch-1 sp across, turn.',
      'Rows 4, 6, 8: As Row 2.',
      'Rows 5, 7, 9: As Row 3.',
    ),
    counts: [22, 21, 11, 21, 11, 21],
  },
  {
    name: 'same as Row 2',
    terms: 'us',
    text: lines(
      ...usSc(12),
      'Row 2: Ch 1, 2 sc in each st across, turn. (24 sc)',
      'Row 3: Same as Row 2. (48 sc)',
    ),
    counts: [13, 12, 24, 48],
  },
  {
    name: 'all even rows given at once',
    terms: 'us',
    // row 3: 22; row 4 even; row 5: 24
    text: lines(
      ...usSc(20),
      'Row 2 and all even rows: Ch 1, sc in each st across, turn.',
      'Row 3: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. (22 sc)',
      'Row 5: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. (24 sc)',
    ),
    // the second entry is Row 2 (20) and Row 4 (22): which of them it shows is not stated here
    counts: [21, 20, null, 22, 24],
  },
  {
    name: 'work even in pattern for 8 rows',
    terms: 'us',
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in each st across, turn.',
      'Rows 3-10: Work even in pattern. (20 sc)',
      'Row 11: Ch 1, sc in next 20 sts. Fasten off.',
    ),
    counts: [21, 20, 20, 20, 20],
  },
  {
    name: 'work even, without numbers',
    terms: 'us',
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in each st across, turn.',
      'Work even for 8 rows.',
      'Row 11: Ch 1, sc in next 20 sts. (20 sc)',
    ),
    final: 20,
  },
  {
    name: 'rep until a length',
    terms: 'us',
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in each st across, turn.',
      'Rep Row 2 until piece measures 10 in. (25 cm), ending with a WS row.',
      'Next row: Ch 1, sc2tog, sc in next 16 sts, sc2tog, turn. (18 sts)',
    ),
    final: 18,
  },
  {
    name: 'decrease at each end of every 4th row',
    terms: 'us',
    // rows 3 to 14 hold 12 rows: 3 decrease rows of 2: 20 - 6
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in each st across, turn.',
      'Rows 3-14: Work in sc, dec 1 st at each end of every 4th row. (14 sc)',
    ),
    counts: [21, 20, 20, 14],
  },
  {
    name: 'decrease at each end of every row until so many remain',
    terms: 'us',
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in each st across, turn.',
      'Dec 1 st at each end of every row until 8 sts rem.',
    ),
    final: 8,
  },
  {
    name: 'decrease at each end of every other row so many times',
    terms: 'us',
    // 4 decrease rows of 2: 20 - 8
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in each st across, turn.',
      'Dec 1 st at each end of every other row 4 times. (12 sts)',
    ),
    final: 12,
  },
  {
    name: 'increase at each end by size',
    terms: 'us',
    // 20 + 5 * 2, 22 + 6 * 2
    text: lines(
      'Ch 21 (23).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 20 (22) sc',
      'Row 2: Ch 1, sc in each st across, turn.',
      'Inc 1 st at each end of every 4th row 5 (6) times. 30 (34) sts',
    ),
    final: [30, 34],
  },
  {
    name: 'rounds repeated',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: 2 sc in each st around. (12)',
      'Rnd 3: Sc in each st around. (12)',
      'Rnds 4-9: Rep Rnd 3.',
      'Rnd 10: (Sc2tog) 6 times. (6)',
    ),
    counts: [6, 12, 12, 12, 6],
  },
  {
    name: 'a second piece begins again at Row 1',
    terms: 'us',
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, sc in each st across. Fasten off.',
      '',
      'Ch 11.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)',
    ),
    counts: [21, 20, 20, 11, 10],
  },
  {
    name: 'Row n: rep Row 2, one row',
    terms: 'us',
    text: lines(
      ...usSc(16),
      'Row 2: Ch 1, *sc in next st, 2 sc in next st; rep from * across, turn. (24 sc)',
      'Row 3: Rep Row 2. (36 sc)',
    ),
    counts: [17, 16, 24, 36],
  },
  {
    name: 'four rows by turns',
    terms: 'us',
    // rows 6 to 13: two rounds of four rows; rows 2 to 5: +2, even, -1, even = 21 after row 5 from 20; 23 after 13
    text: lines(
      ...usSc(20),
      'Row 2: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. (22 sc)',
      'Row 3: Ch 1, sc in each st across, turn. (22 sc)',
      'Row 4: Ch 1, sc2tog, sc in each st across, turn. (21 sts)',
      'Row 5: Ch 1, sc in each st across, turn. (21 sc)',
      'Rows 6–13: Rep Rows 2–5 twice. (23 sc)',
    ),
    counts: [21, 20, 22, 22, 21, 21, 23],
  },
  {
    name: 'Rows: rep 2nd row',
    terms: 'uk',
    text: lines(
      ...ukDc(20),
      'Row 2: 1 ch, 1 dc in each dc to end, turn. (20 dc)',
      'Rows 3 to 12: As Row 2.',
      'Row 13: 1 ch, dc2tog, 1 dc in each dc to end, turn. (19 sts)',
    ),
    counts: [21, 20, 20, 20, 19],
  },
  {
    name: 'ordinal labels and "rep 2nd row"',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      '1st row: 1 dc into 2nd ch from hook, 1 dc into each ch to end, turn. 20 dc.',
      '2nd row: 1 ch, 1 dc into each dc to end, turn. 20 dc.',
      '3rd to 8th rows: Rep 2nd row.',
      '9th row: 1 ch, 2 dc into first dc, 1 dc into each dc to end, turn. 21 dc.',
    ),
    counts: [21, 20, 20, 20, 21],
  },
  {
    name: 'as Row 1 lists',
    terms: 'uk',
    text: lines(
      ...ukDc(20),
      'Row 2: 1 ch, dc2tog, 1 dc in each st to last 2 sts, dc2tog, turn. (18 sts)',
      'Row 3: 1 ch, 1 dc in each st to end, turn.',
      'Row 4: as Row 2. (16 sts)',
      'Row 5: as Row 3. (16 dc)',
    ),
    counts: [21, 20, 18, 18, 16, 16],
  },
  {
    name: 'work straight for 6 rows',
    terms: 'uk',
    text: lines(
      ...ukDc(20),
      'Row 2: 1 ch, 1 dc in each dc to end, turn.',
      'Rows 3–8: Work straight in dc. (20 dc)',
    ),
    counts: [21, 20, 20, 20],
  },
  {
    name: 'rep last 2 rows until so many stitches',
    terms: 'uk',
    // 3 more: 18 → 12
    text: lines(
      ...ukDc(20),
      'Row 2: 1 ch, dc2tog, 1 dc in each st to last 2 sts, dc2tog, turn.',
      'Row 3: 1 ch, 1 dc in each st to end, turn. (18 dc)',
      'Rep last 2 rows three more times. (12 dc)',
    ),
    final: 12,
  },
  {
    name: 'dec 1 st at each end of next and every foll alt row until',
    terms: 'uk',
    text: lines(
      ...ukDc(20),
      'Row 2: 1 ch, 1 dc in each dc to end, turn.',
      'Dec 1 st at each end of next and every foll alt row until 10 sts rem.',
    ),
    final: 10,
  },
  {
    name: 'dec at both ends of every 4th row, then every 2nd row, by size',
    terms: 'uk',
    // 40 - 2 * (3 + 2) = 30; 46 - 2 * (4 + 3) = 32
    text: lines(
      'Make 41 (47) ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 40 (46) dc.',
      'Row 2: 1 ch, 1 dc in each dc to end, turn.',
      'Dec 1 st at each end of every 4th row 3 (4) times, then every 2nd row 2 (3) times. 30 (32) sts.',
    ),
    final: [30, 32],
  },
  {
    name: 'dec at each end of next row, then every 2nd row in one size only',
    terms: 'uk',
    // 20 - 2 * (1 + 0) = 18; 26 - 2 * (1 + 2) = 20: the dash is of the 2nd rows, not of the next row
    text: lines(
      'Make 21 (27) ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 20 (26) dc.',
      'Row 2: 1 ch, 1 dc in each dc to end, turn.',
      'Dec 1 st at each end of next row, then every 2nd row – (2) times. 18 (20) sts.',
    ),
    final: [18, 20],
  },
  {
    name: 'rounds by turns',
    terms: 'uk',
    // rnds 4 to 7 go 2, 3, 2, 3, and rnd 2 adds 2: 12 → 14 → 16
    text: lines(
      'Rnd 1: 10 dc in magic ring. (10 dc)',
      'Rnd 2: 2 dc in each of next 2 dc, 1 dc in each dc to end. (12 dc)',
      'Rnd 3: 1 dc in each dc to end. (12 dc)',
      'Rnds 4–7: Rep Rnds 2 and 3 twice. (16 dc)',
    ),
    counts: [10, 12, 12, 16],
  },
  {
    name: 'tr rows repeated with a counting chain',
    terms: 'uk',
    text: lines(
      'Make 32 ch.',
      'Row 1: 1 tr in 4th ch from hook, 1 tr in each ch to end, turn. (30 tr)',
      'Row 2: 3 ch (counts as 1 tr), miss first tr, 1 tr in each of next 28 tr, 1 tr in top of turning ch, turn. (30 tr)',
      'Rows 3–20: Rep Row 2. (30 tr)',
    ),
    counts: [32, 30, 30, 30],
  },
  {
    name: 'a second piece begins again at Row 1',
    terms: 'uk',
    text: lines(
      ...ukDc(10),
      'Row 2: 1 ch, 1 dc in each dc to end. Fasten off.',
      '',
      'Make 7 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (6 dc)',
    ),
    counts: [11, 10, 10, 7, 6],
  },
  {
    name: 'rows again until so many are there, and "this row" behind its own words',
    terms: 'us',
    // rows 3 to 12 plain; then 4 decreasing rows of 2 each
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, sc in each st across, turn.',
      'Rep Row 2 until there are 12 rows.',
      'Next row: Ch 1, sc2tog, sc to last 2 sts, sc2tog, turn. Rep this row 3 times more.',
    ),
    counts: [21, 20, 20, 20, 18, 12],
    source: 'common practice, no source',
  },
  ...[
    'until 9 rows have been worked',
    'until a total of 9 rows have been completed',
    'until you have worked 9 rows',
    'until 9 rows are done in all',
    'until the piece has 9 rows',
  ].map((until) => ({
    name: `rows again ${until}`,
    terms: 'uk' as const,
    // 3 tr in row 1, one more in each row: 3 + 8 in row 9.
    text: lines(
      'Ch 4.',
      'Row 1: 2 tr in 4th ch from hook, turn. (3 tr)',
      'Row 2: Ch 3 (counts as 1st tr), tr in st at base of ch, tr in each st across, turn. (4 tr)',
      'Row 3: Ch 3, tr in each st to last st, 2 tr in last st, turn. (5 tr)',
      `Rep Rows 2 and 3 ${until}.`,
    ),
    counts: [4, 3, 4, 5, 11],
    source: 'common practice, no source',
  })),
  {
    name: 'rounds even, how many and in what said last',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6 sc)',
      'Rnd 2: 2 sc in each st around. (12 sc)',
      'Continue in sc without increasing for 5 rounds.',
      'Rnd 8: *Sc2tog; rep from * around. (6 sc)',
    ),
    counts: [6, 12, 12, 6],
    source: 'common practice, no source',
  },
  {
    name: 'a stitch around for so many rounds',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6 sc)',
      'Rnd 2: 2 sc in each st around. (12 sc)',
      'Sc around for five more rounds.',
      'Rnd 8: *Sc2tog; rep from * around. (6 sc)',
    ),
    counts: [6, 12, 12, 6],
    source: 'common practice, no source',
  },
  {
    name: 'rounds even, and their numbers behind',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6 sc)',
      'Rnd 2: 2 sc in each st around. (12 sc)',
      'Then work even in sc for 5 rounds (Rnds 3-7).',
      'Rnd 8: *Sc2tog; rep from * around. (6 sc)',
    ),
    counts: [6, 12, 12, 6],
    source: 'common practice, no source',
  },
  {
    name: 'rounds straight, and how each is worked',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6 sc)',
      'Rnd 2: 2 sc in each st around. (12 sc)',
      'Now work 5 rounds straight, 1 sc in each st.',
      'Rnd 8: *Sc2tog; rep from * around. (6 sc)',
    ),
    counts: [6, 12, 12, 6],
    source: 'common practice, no source',
  },
  {
    name: 'more rounds even in a stitch',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6 sc)',
      'Rnd 2: 2 sc in each st around. (12 sc)',
      'Work 5 more rounds even in sc.',
      'Rnd 8: *Sc2tog; rep from * around. (6 sc)',
    ),
    counts: [6, 12, 12, 6],
    source: 'common practice, no source',
  },
  {
    name: 'one in each for so many rounds',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6 sc)',
      'Rnd 2: 2 sc in each st around. (12 sc)',
      '1 sc in each st for 5 rnds.',
      'Rnd 8: *Sc2tog; rep from * around. (6 sc)',
    ),
    counts: [6, 12, 12, 6],
    source: 'common practice, no source',
  },
];
