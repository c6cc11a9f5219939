/**
 * Written rows: jottings as makers put them down for themselves: repeats that name their bracket by its signs, rows
 * repeated without saying which, remarks in brackets behind a label. Must not repeat a passage of another case file.
 */
import { sc, uk, ukDc, us } from '../swatch.ts';
import type { RowCase } from '../types.ts';

export const jottings: readonly RowCase[] = [
  // Repeats by their bracket
  us(
    'a dash before the repeat of a bracket',
    // 1 + 9 * 3 + 2
    [
      ...sc(30),
      'Row 2: Ch 1; 1 sc in first st; (skip next st, 4 sc in next st, skip next st) - repeat to last 2 sts; 1 sc in each of last 2 sts. Turn. (39 sc)',
    ],
    [31, 30, 39],
  ),
  us(
    'a repeat that names its bracket by its signs',
    [
      ...sc(30),
      'Row 2: ch1, sc in 1st st, {dc in next st, sc in next st} repeat { } to last st, sc in last st, turn. (30 sts)',
    ],
    [31, 30, 30],
  ),
  us(
    'a repeat from one sign to the other',
    [...sc(20), 'Row 2: Ch 1, [sc in next 3 sts, 2 sc in next st], rep from [ to ] across, turn. (25 sc)'],
    [21, 20, 25],
  ),
  us(
    'a repeat by its signs that does not fit',
    [...sc(22), 'Row 2: Ch 1, [sc in next 3 sts, 2 sc in next st] repeat [ ] across, turn.'],
    [23, 22, null],
    {
      findings: [
        { row: 2, code: 'repeat-does-not-fit', words: 'repeat [ ] across', saying: ['22', '20', '24'] },
      ],
    },
  ),
  us(
    'until one is left, in the words of talk',
    // 2 + 9 * 3 + 1
    [
      ...sc(30),
      'Row 2: Ch 3 (counts as dc), dc in next st, *ch 1, skip 1 st, 1 dc in each of next 2 sts; repeat from * until you have 1 st left, dc in last st, turn. (21 dc, 9 ch-1 sps)',
    ],
    [31, 30, 21],
  ),
  us(
    'one bracket too many before the number',
    [...sc(20), 'Row 2: Ch 1, (sc in next 3 sts, dc in next 2 sts)) 4 times, turn. (20 sts)'],
    [21, 20, 20],
    { clean: false, findings: [{ row: 2, code: 'bracket-not-opened', words: ')', severity: 'warning' }] },
  ),

  // Rows again
  us(
    'repeat for more rows, which row unsaid',
    [
      ...sc(30),
      'Row 2: Sc 1 in each st, ch 1, turn. Repeat for 8 more rows.',
      'Row 11: 2 sc in each st across. (60 sc)',
    ],
    { final: 60 },
  ),
  us(
    'repeat until there are so many rows',
    [
      ...sc(30),
      'Row 2: Sc 1 in each st, ch 1, turn.',
      'Repeat until you have 10 rows total.',
      'Row 11: Sc in each st across. (30 sc)',
    ],
    { final: 30 },
  ),

  // Remarks
  us(
    'a count after the last row',
    // 40 - 4 * 2
    [...sc(40), 'Rows 2-5: Ch 1, sc2tog, sc across to last 2 sts, sc2tog, turn. (32 sc after last row)'],
    [41, 40, 32],
  ),
  us(
    'a wrong count at the end of the row',
    [
      ...sc(40),
      'Rows 2-5: Ch 1, sc2tog, sc across to last 2 sts, sc2tog, turn. (34 sc at the end of this row)',
    ],
    [41, 40, 32],
    { findings: [{ row: 2, code: 'stated-count-wrong', words: '34 sc', saying: ['34', '32'] }] },
  ),
  uk(
    'what the row is, in brackets behind the label',
    // 1 + 6 * 5 = 31
    [
      ...ukDc(31),
      'Next row: (dec row) 1ch, 1dc in first st, [dc2tog, 1dc in each of next 3 sts] 6 times, turn. 25 sts.',
    ],
    [32, 31, 25],
  ),
  uk(
    'a hook and a chain without a comma, in sizes',
    [
      'Using 4mm hook make 74[80:86]ch.',
      'Foundation row: (RS) 1tr in 4th ch from hook, 1tr in each ch to end. 72[78:84]tr.',
    ],
    [
      [74, 80, 86],
      [72, 78, 84],
    ],
  ),
  us(
    'rows seamed into a tube between two parts',
    [
      'Ch 10.',
      'Row 1: Sc in 2nd ch from hook and each rem ch, turn. (9)',
      'Row 2: Ch 1, sl st in BLO across, turn. (9)',
      'Rows 3-28: Repeat Row 2.',
      'Sl st first and last row together to form a tube.',
      'Hand',
      'Rnd 1: Ch 1, work 28 sc evenly around edge of cuff. Join. (28 sc)',
    ],
    { final: 28 },
  ),
  us(
    'a tube closed through both sides',
    [
      'Rnd 1: 5 sc in mr (5 sts)',
      'Rnd 2: 2 sc in next, 1 sc in next, 2 sc in next, 1 sc in next, 2 sc in last (8 sts)',
      'Rnd 3 - 9: 1 sc in each st around (8 sts)',
      'Fold flat and sc through both sides across. (4 sts)',
    ],
    { final: 4 },
  ),
  us(
    'decreases at the beginning and at the end of the row, apart',
    [...sc(30), 'Row 2: Ch 1, sc2tog at beg of row, sc across, sc2tog at end of row, turn. (28)'],
    [31, 30, 28],
  ),
  us(
    'joined w a slip stitch',
    [
      'Ch 60, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 2 (does not count as a st), dc in each ch around, sl st in first dc to join.',
      'Rnds 2-4: Ch 2 (does not count as a st), (fpdc around next st, bpdc around next st) around, join w sl st to 1st fpdc. [60]',
    ],
    { final: 60 },
  ),
  us(
    'a border whose foundation is worked to its last chain',
    // (3 + 8) * 4
    [
      ...sc(10),
      'Rows 2-10: Ch 1, sc in each st across, turn.',
      'Border: Ch 1, 3 sc in first st, sc in each st to last st, 3 sc in last st, work 8 sc evenly down side edge, 3 sc in first ch of foundation, sc in each ch to last ch of foundation, 3 sc in last ch, work 8 sc evenly up other side; join with sl st in first sc. (44 sc)',
    ],
    { final: 44 },
  ),

  // Where a loop, a centre or a marker lies
  us(
    'where the third loop lies, in brackets',
    [...sc(20), 'Row 2: Ch 1, hdc in third loop (behind the st) of each st across, turn. 20 hdc'],
    [21, 20, 20],
  ),
  uk(
    'the centre of a shell, in brackets and in words, to the last shell',
    // 3 + 3 * 6 + 1 + 3
    [
      ...ukDc(25),
      'Row 2: 1ch, 1dc in first dc, *miss 2dc, 5tr in next dc, miss 2dc, 1dc in next dc; rep from * to end. (4 shells)',
      'Row 3: 3ch (counts as 1tr), 2tr in first dc, *miss 2tr, 1dc in next tr (centre of shell), miss 2tr, 5tr in next dc; rep from * to last shell, 1dc in centre tr of last shell, 3tr in last dc. (25 sts)',
    ],
    [26, 25, 25, 25],
  ),
  us(
    'a marker in the space just made',
    // 10 + 2 + 10; 11 + 2 + 11
    [
      ...sc(21),
      'Row 2: Ch 1, sc in next 10 sts, (sc, ch 2, sc) in next st, placing marker in ch-2 sp, sc in next 10 sts. Turn. 22 sts',
      'Row 3: Ch 1, sc to marked sp, (sc, ch 2, sc) in marked sp moving marker up, sc to end. Turn. 24 sts',
    ],
    [22, 21, 22, 24],
    { spaces: [0, 0, 1, 1] },
  ),

  // What the hands do besides
  us(
    'stitches pushed to the right side',
    [
      ...sc(21),
      'Row 2 (WS): Ch 1, sc in first st, *tr in next st, sc in next st; rep from * across, pushing tr sts to RS of work. Turn. 21 sts',
    ],
    [22, 21, 21],
  ),
  us(
    'loops drawn up to a fraction of an inch',
    [...sc(21), 'Row 2: Ch 1, sc in each st across, drawing up each loop to 1/2" (1.5 cm). Turn. 21 sts'],
    [22, 21, 21],
  ),
  us(
    'beads slid up on the way',
    [
      ...sc(21),
      'Row 2: Ch 1, *slide bead up to hook, sc in next st, sc in next 2 sts; rep from * across. Turn. (21 sc)',
    ],
    [22, 21, 21],
  ),
  us(
    'herringbone',
    [...sc(20), 'Row 2: Ch 2 (does not count as st), herringbone hdc in each st across, turn. (20 hdc)'],
    [21, 20, 20],
  ),

  // Short forms of rows
  us(
    'rounds that are a number alone',
    [
      'Rnd 1: MR 8',
      'Rnd 2: inc x8 (16)',
      'Rnd 3: (1, inc) x8 (24)',
      'Rnd 4-7: 24',
      'Rnd 8: (2, dec) x6 (18)',
    ],
    [8, 16, 24, 24, 18],
  ),
  us(
    'a number alone that is one too many',
    ['Rnd 1: MR 8', 'Rnd 2: inc x8 (16)', 'Rnd 3: 17'],
    [8, 16, null],
    { findings: [{ row: 2, code: 'place-does-not-exist', words: '17', saying: ['17', '16'] }] },
  ),
  uk(
    'as another row, by its number alone',
    [
      'Make 27ch.',
      '1st row: 1tr in 4th ch from hook, 1tr in each ch to end, turn. [25 tr]',
      '2nd row: 3ch, miss 1st tr, 1tr in each tr to end, 1tr in top of turning ch.',
      '3rd row: As 2nd.',
      'Rep 2nd row 6 times more. [25 tr]',
    ],
    { final: 25 },
  ),

  // Wrong at one place, told at that place
  us(
    'joined in a chain that the beginning has not',
    [
      'Ch 18, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 3 (counts as dc), dc in next ch and in each ch around; join with sl st in 4th ch of beg ch-3. (18 dc)',
    ],
    [null, 18],
    { findings: [{ row: 1, code: 'place-does-not-exist', words: '4th ch of beg ch-3', saying: ['4', '3'] }] },
  ),
  us(
    'the sixth stitch of a shell of five',
    [
      'Shell: 5 dc in st indicated.',
      ...sc(25),
      'Row 2: Ch 1, sc in first st, *sk 2 sts, shell in next st, sk 2 sts, sc in next st; rep from * across. (4 shells)',
      'Row 3: Ch 3, 2 dc in first sc, *sc in 6th dc of next shell, shell in next sc; rep from * across, ending with 3 dc in last sc.',
    ],
    [26, 25, 25, null],
    {
      findings: [{ row: 3, code: 'place-does-not-exist', words: '6th dc of next shell', saying: ['6', '5'] }],
    },
  ),
  us(
    'a yarn dropped to the front',
    [
      ...sc(14),
      'Row 2: Ch 1, sc in first 7 sts; change to B; sc in last 7 sts; drop A to front. Turn. (14 sc)',
    ],
    [15, 14, 14],
  ),

  // Rounds closed by a stitch, heights that only the count shows
  us(
    'closed at the top of the chain by a stitch, begun in its space',
    // 3 * 4; 3 + 6 * 3 + 3
    [
      'Ch 4, join.',
      'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, (ch 2, 3 dc in ring) 3 times, ch 1, sc in top of beg ch-3 (counts as ch-2 sp). 12 dc',
      'Rnd 2: Ch 3 (counts as dc), 2 dc in sp formed by joining sc, *ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * twice more, ch 1, 3 dc in first sp, ch 1, sc in top of ch-3. 24 dc',
    ],
    [null, 12, 24],
    { spaces: [null, 4, 8] },
  ),
  us(
    'two chains before tall post stitches, counted',
    // 1 + 3 * 8 + 1
    [
      'Ch 28.',
      'Row 1: Dc in 4th ch from hook (3 skipped chs count as first dc), dc in each ch across, turn. (26 dc)',
      'Row 2: Ch 2, *skip 3 sts, FPtr around each of next 3 sts, working in front of sts just made FPtr around each of 3 skipped sts, dc in next 2 sts; rep from * across, hdc in last st. Turn. 26 sts',
    ],
    [28, 26, 26],
  ),
  uk(
    'rows on the stitches of a strap',
    [
      ...ukDc(24),
      'Next row: 1ch, 1dc in each of first 6dc, turn and work on these 6 sts only for strap.',
      'Work 10 rows dc on these 6 sts. Fasten off.',
    ],
    { final: 6 },
  ),
  us(
    'a bracket and a count cut off in the middle of lace: every row is answered',
    [
      'Ch 32.',
      'Row 1:in the others Sc in 2nd ch from hook and in each ch across, turn. (31 sc)',
      'Row 2. ch 1, sc in first sc, * sk 2 sc, (dc, ch 1, dc, ch 1, in next sc, sk next 2 sc, sc in next sc, rep from * to end. Turn.',
      'Row 3: Ch 4 (counts as+ ch 1), dc in first sc, *sk next dc, sc in next dc, sk next dc, (dc, ch 1, dc, ch 1, dc) in next sc; rep from * across, ending last rep with (dc, ch 1, dc) in last sc. Turn.',
    ],
    { final: null },
    { clean: false, findings: [{ row: 2, code: 'bracket-not-closed', words: '(' }] },
  ),
];
