/**
 * Written rows: what lies beside the plain row: borders whose corners are among their stitches, labels of parts, lace that
 * leaves the end of a row, chains before "first 4 sts". Must not repeat a passage of another case file.
 */
import { sc, uk, us } from '../swatch.ts';
import type { RowCase } from '../types.ts';

const square = [...sc(20), 'Rows 2-20: Ch 1, turn, sc across. (20 sc)'];

export const byways: readonly RowCase[] = [
  us(
    'corners of a border that is worked evenly are among its stitches',
    [
      ...square,
      'Edging: Ch 1, sc evenly around entire piece, working 3 sc in each corner, join with sl st in first sc. (84 sc)',
    ],
    [21, 20, 20, 84],
  ),
  us(
    'a border that begins with a side, and ends with the corners of the top',
    // 98 + 3 + 97 + 3 + 98 + 3 + 97 + 3
    [
      'Ch 100.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (99 sc)',
      'Rows 2-100: Ch 1, turn, sc in each st across. (99 sc)',
      'Border Rnd 1: Ch 1, do not turn, work 98 sc evenly down side, 3 sc in corner, 97 sc along bottom edge, 3 sc in corner, 98 sc up side, 3 sc in corner, sc in next 97 sts, 3 sc in last corner, join.',
    ],
    [100, 99, 99, 402],
  ),
  us(
    'a sleeve told with its number on the line of its first row',
    // 6 chains and 20 skipped stitches of each armhole
    [
      'Ch 100, join.',
      'Rnd 1: Ch 1, sc in each ch around, join. (100 sc)',
      'Rnd 2: Ch 1, sc in first 15 sts, ch 6, skip next 20 sts (armhole), sc in next 30 sts, ch 6, skip next 20 sts (armhole), sc in last 15 sts, join. (60 sc, 12 ch)',
      'Rnd 3: Ch 1, sc in each st and ch around, join. (72 sc)',
      'Sleeve (make 2): Join yarn at underarm, ch 1, sc in each of 6 chs and in each of 20 skipped sts around, join. (26 sc)',
    ],
    [100, 100, 60, 72, 26],
  ),
  us(
    'stitches worked evenly around an opening that is named',
    [
      'Ch 40, join.',
      'Rnd 1: Ch 1, sc in each ch around, join. (40)',
      'Neckband: Join yarn at center back, ch 1, work 60 sc evenly around neck opening, join. (60 sc)',
      'Rnd 2: Ch 1, 48 sc evenly around top of cuff. (48)',
    ],
    [40, 40, 60, 48],
  ),
  us(
    'slip stitches in back loops are stitches, at the beginning too',
    [
      'Ch 21.',
      'Row 1: Sl st in 2nd ch from hook and in next 4 ch, hdc in next 15 ch, turn. (20 sts)',
      'Row 2: Ch 1, hdc blo in first 15 sts, sl st blo in last 5 sts, turn. (20 sts)',
      'Row 3: Ch 1, sl st blo in first 5 sts, hdc blo in last 15 sts, turn. (20 sts)',
    ],
    [21, 20, 20, 20],
  ),
  uk(
    'gaps before the stitch that is next, whatever group it is of',
    // 12 pairs, then 3 in each of 12 gaps that are two apart
    [
      'Round 1: 4ch, 11tr in 4th ch from hook, ss in top of 4ch. (12tr)',
      'Round 2: 3ch, 1tr in same place, 2tr in each tr to end, ss in top of 3ch. (24tr)',
      'Round 3: ss in sp between 3ch and next tr, 3ch, 2tr in same sp, miss 2 sts, *3tr in sp before next tr, miss 2 sts; rep from * to end, ss. (36tr)',
    ],
    [12, 24, 36],
  ),
  uk(
    'a round behind the making up of its piece, on one line',
    // 60 round the edge of 60 rows; then 6 * 9
    [
      'Make 13 ch.',
      'Row 1: 1 htr in 2nd ch from hook, 1 htr in each ch to end, turn. (12 htr)',
      'Row 2: 1 ch (does not count as st), 1 htr into back loop only of each htr to end, turn.',
      'Rep row 2 until 60 rows have been worked.',
      'Join short ends with dc. Working round top edge: Rnd 1: 1 ch, 60 dc evenly round, ss to first dc. (60 dc)',
      'Rnd 2: 1 ch, (8 dc, dc2tog) 6 times, ss. (54 dc)',
    ],
    [13, 12, 12, 12, 60, 54],
  ),
  uk(
    'picots closed on the last stitch, in a repeat',
    [
      'Make 31 ch.',
      'Row 1: dc into 2nd ch from hook and each ch to end. (30dc)',
      'Edging: *1dc in next 3 dc, 3ch, ss in last dc (picot); rep from * to end. Fasten off. (30dc, 10 picots)',
    ],
    [31, 30, 30],
  ),
  us(
    'the opposite side in short',
    [
      'Ch 10.',
      'Rnd 1: 2 hdc in 3rd ch from hook, hdc in next 6 ch, 6 hdc in last ch; working along opp side of ch, hdc in next 6 ch, 3 hdc in last ch, join to top of ch-2. (24 hdc)',
    ],
    [10, 24],
  ),
  us(
    'a part told on the line of its first row, behind a count without a full stop',
    [
      'Ch 31.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. 30',
      'Rows 2-24: Ch 1, turn, sc across. 30',
      'Sleeve: Join yarn at side edge, ch 1, work 24 sc evenly along row ends. (24 sc)',
    ],
    [31, 30, 30, 24],
  ),
  us(
    'a round that ends in "each", and the next one in its own line',
    [
      'Rnd 1: 6 sc in MR',
      'Rnd 2: 2 sc in each',
      'Rnd 3: *sc, 2 sc in next; rep around',
      'Rnds 4-8: sc around',
      'Heel Row 9: ch 1, sc in next 9 sts, turn, leave rem sts unworked',
    ],
    [6, 12, 18, 18, 9],
  ),
  us(
    'a range of rounds with spaces before a bracket',
    [
      'Rnd 1) 6 sc in a magic ring [6]',
      'Rnd 2) inc in each st around [12]',
      'Rnd 3 - 7) sc in each st around [12]',
      'Rnd 8) (sc, inc) 6 times [18]',
    ],
    [6, 12, 12, 18],
  ),
  us(
    'what a row does that is worked again adds nothing to it',
    // 3 in Row 1, one more in every row
    [
      'Ch 2.',
      'Row 1: 3 sc in 2nd ch from hook, turn. 3',
      'Row 2: Ch 1, 2 sc in first st, sc in each st to end, turn. 4',
      'Row 3: Ch 1, sc in each st to last st, 2 sc in last st, turn. 5',
      'Rows 4 to 11: Repeat rows 2 & 3, increasing 1 st each row. (13 sts)',
    ],
    [2, 3, 4, 5, 13],
  ),
  us(
    'lace that leaves at the end of a row what it passed at its beginning',
    [
      'Ch 6, join with sl st to form ring.',
      'Row 1: Ch 3, 2 dc in ring, ch 3, 3 dc in ring, turn.',
      'Row 2: Sl st in next 2 dc and in ch-3 sp, ch 3, (2 dc, ch 3, 3 dc) in same sp, turn.',
      'Row 3: Sl st to ch-3 sp, (ch 3, 2 dc, ch 5, 3 dc) in sp, turn.',
    ],
    [6, 6, 6, 6],
  ),
  us(
    'slip stitches at the beginning excuse nothing that is left between other stitches',
    [...sc(20), 'Row 2: Sl st in next 4 sts, ch 1, sc in next 10 sts, turn.'],
    [21, 20, null],
    { findings: [{ row: 2, code: 'stitches-left-unworked' }] },
  ),
  us(
    'a chain before so many first stitches is none of them',
    // 4 and 23 hdc beside a thumb of 5; then 4 + 5 + 23
    [
      'Ch 32, join.',
      'Rnd 1: Ch 2, hdc in each ch around, join. (32)',
      'Rnd 2: Ch 2, hdc in first 4 sts, ch 5, sk next 5 sts, hdc in rem 23 sts, join.',
      'Rnd 3: Ch 2, hdc in first 4 sts, hdc in each of 5 chs, hdc in last 23 sts, join. (32)',
    ],
    [32, 32, 27, 32],
  ),
  us(
    'herringbone stitches by their short word',
    [
      'Ch 21.',
      'Row 1: Hhdc in 2nd ch from hook and across (20).',
      'Row 2: ch 1, turn, herringbone hdc across (20)',
    ],
    [21, 20, 20],
  ),
  us(
    'waistcoat stitches are one into each',
    [
      'Ch 30, join.',
      'Rnd 1: Ch 1, sc in each ch around, join. (30)',
      'Rnd 2: Ch 1, waistcoat stitch in each st around, join. (30)',
    ],
    [30, 30, 30],
  ),
  us(
    'a first group passes over half of its own width beside the edge',
    // the edge, 7 groups of 4 and the last dc; the edge has no space
    [
      'Ch 33.',
      'Row 1: (2 dc, ch 1, 2 dc) in 6th ch from hook, *sk 3 ch, (2 dc, ch 1, 2 dc) in next ch; rep from * to last 3 ch, sk 2 ch, dc in last ch, turn. (7 shells, 2 dc)',
      'Row 2: Ch 3, (2 dc, ch 1, 2 dc) in each ch-1 sp across, dc in top of tch, turn.',
    ],
    [33, 30, 30],
    { spaces: [0, 7, 7] },
  ),
  us(
    'a first group of stitches alone leaves a space beside the edge, which a granny works into',
    // the edge, 6 groups of 3, the last dc; then 3 in the first space, in each of 5 between groups, and in the last
    [
      'Ch 24.',
      'Row 1: 3 dc in 6th ch from hook, *skip 2 ch, 3 dc in next ch; repeat from * to last 3 ch, skip 2 ch, 1 dc in last ch. Turn. (20 dc)',
      'Row 2: Ch 3, 2 dc in first space, 3 dc in each space between groups, 3 dc in turning ch space.',
    ],
    [24, 20, 21],
  ),
  us(
    'a colour alone at the head of a round',
    [
      'Rnd 1: MC, ch 4 (counts as dc + ch 1), [dc, ch 1] 11 times in ring, ss to 3rd of ch 4. (12 dc, 12 ch-1 sps)',
    ],
    [12],
  ),
  us(
    'an invisible join',
    [
      'Ch 24, join with sl st to form ring.',
      'Rnd 1: Ch 1, sc in each ch around, join with invisible join. (24)',
    ],
    [24, 24],
  ),
  us(
    'a repeat that does not tell its beginning, with what ends it',
    // ch 3, 9 pairs, 1 at the end
    [...sc(20), 'Row 2: Ch 3, fpdc in next st, dc in next st, rep across ending with dc in last st. (20)'],
    [21, 20, 20],
    { findings: [{ row: 2, code: 'repeat-start-not-said' }] },
  ),
  us(
    'a chain with a space leaves the stitch under that space, whose pairs then do not fit',
    // 1 + 2 * 9 of 20
    [
      ...sc(20),
      'Row 2: Ch 4 (counts as dc, ch 1), sk next st, dc in next st, *ch 1, sk next st, dc in next st; rep from * across.',
    ],
    [21, 20, null],
    { findings: [{ row: 2, code: 'repeat-does-not-fit', saying: ['19', '21'] }] },
  ),
  us(
    'a round that begins with one chain and joins to the third of three',
    [
      'Ch 24, join with sl st to form ring.',
      'Rnd 1: Ch 1, sc in each ch around, join in 3rd ch of beg ch-3.',
    ],
    [24, 24],
    { findings: [{ row: 1, code: 'place-does-not-exist', words: '3rd ch of beg ch-3' }] },
  ),
  us(
    'a bare "repeat" goes on as long as there is room',
    ['Rnd 1: 12 sc in magic ring. (12)', 'Rnd 2: sc in next 5 sts, 2 sc in next st; repeat. (14)'],
    [12, 14],
    { findings: [{ row: 1, code: 'repeat-start-not-said' }] },
  ),
  us(
    'chains at the end of a row, for the next one',
    [
      ...sc(20),
      'Row 2: Ch 1, sc in each st across; ch 6 at end of row, turn.',
      'Row 3: Sc in 2nd ch from hook and in next 4 ch, sc in each sc across. (25)',
    ],
    [21, 20, 20, 25],
  ),
  us(
    'semicolons between the stitches of a bracket',
    ['Rnd 1: 12 sc in magic ring. (12)', 'Rnd 2: (1 sc; 1 inc) x 6 = (18)'],
    [12, 18],
  ),
  us(
    'a round that goes on in the same way',
    [
      'Rnd 1: 12 sc in magic ring. (12)',
      'Rnd 2: sc in next st, 2 sc in next st, continue in this way to end of round. (18)',
    ],
    [12, 18],
    { findings: [{ row: 1, code: 'repeat-start-not-said' }] },
  ),
  us(
    'rounds that say that they go on in a spiral',
    [
      'Rnd 1: 12 sc in magic ring. (12)',
      'Rnd 2: Working in a spiral, sc in each st around. (12)',
      'Rnd 3: Sc in each st around in a spiral.',
    ],
    [12, 12, 12],
  ),
  uk(
    'a count that says for how many the chain counts',
    [
      'Make 21ch.',
      'Row 1: 1dc in 2nd ch from hook, 1dc in each ch to end, turn. (20 dc)',
      'Row 2: 2 ch, 1 htr in 2nd dc, 1 htr in each dc to end. (20 htr, counting 2 ch as 1)',
    ],
    [21, 20, 20],
  ),
  us(
    'a loop stitch that nothing defines is named as such',
    [...sc(15), 'Row 2: Ch 1, turn, loop st in each st across. (15)'],
    [16, 15, 15],
    { findings: [{ row: 2, code: 'special-not-defined', saying: ['loop st'] }] },
  ),
];
