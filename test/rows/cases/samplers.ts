/**
 * Written rows: a sampler of wordings that are rarer than they are difficult. Must not repeat a passage of
 * another case file.
 */
import { dc, sc, uk, ukDc, ukTr, us } from '../swatch.ts';
import type { RowCase } from '../types.ts';

export const samplers: readonly RowCase[] = [
  us(
    'each of the next, the following and the remaining',
    [
      ...sc(20),
      'Row 2: Ch 1, sc in each of the next 8 sts, hdc in each of the following 4 sts, sc in each of the remaining 8 sts, turn. (20 sts)',
    ],
    [21, 20, 20],
    { byKind: [null, null, { sc: 16, hdc: 4 }] },
  ),
  us(
    'all but the last',
    [
      ...sc(20),
      'Row 2: Ch 1, sc in each st across to last st, 2 sc in last st, turn. (21 sc)',
      'Row 3: Ch 1, sc in all sts, turn. (21 sc)',
    ],
    [21, 20, 21, 21],
  ),
  us(
    'shell in every third stitch',
    // 22: dc, (sk 2, shell in next) * 6, sk 2, dc
    [
      ...sc(22),
      'Row 2: Ch 3 (counts as dc), *sk next 2 sts, (2 dc, ch 1, 2 dc) in next st; rep from * to last 3 sts, sk next 2 sts, dc in last st, turn. (6 shells, 2 dc)',
    ],
    [23, 22, 26],
    { spaces: [0, 0, 6] },
  ),
  us(
    'brackets for the repeat and a rest behind it',
    // 23 = 1 + 4 * 5 + 2
    [
      ...sc(23),
      'Row 2: Ch 1, sc in first st, [ch 3, sk next 3 sts, sc in next st] 5 times, sc in last 2 sts, turn. (8 sc, 5 ch-3 sps)',
    ],
    [24, 23, 8],
    { spaces: [0, 0, 5] },
  ),
  us(
    'nested brackets across',
    // 26 = 1 + 5 * 5: ((ch 1, sk 1, dc) twice, dc in next) 5 times
    [
      ...dc(26),
      'Row 2: Ch 3 (counts as dc), {[ch 1, sk next st, dc in next st] twice, dc in next st} across, turn. (16 dc, 10 ch-1 sps)',
    ],
    [28, 26, 16],
    { spaces: [0, 0, 10] },
  ),
  us(
    'repeat between asterisks',
    // 24 = 4 * 6
    [
      ...sc(24),
      'Row 2: Ch 1, *sc in next 2 sts, hdc in next st, dc in next st, hdc in next st, sc in next st* repeat between *s to end, turn. (24 sts)',
    ],
    [25, 24, 24],
  ),
  us(
    'rep from asterisk three times more',
    // 20 = 5 * 4
    [
      ...sc(20),
      'Row 2: Ch 1, *sc in next 4 sts, ch 1, rep from * 3 times more, sc in last 4 sts, turn. (20 sc, 4 ch-1 sps)',
    ],
    [21, 20, 20],
    { spaces: [0, 0, 4] },
  ),
  us(
    'decrease over the first three',
    [
      ...sc(21),
      'Row 2: Ch 1, sc3tog over first 3 sts, sc in next 15 sts, sc3tog over last 3 sts, turn. (17 sts)',
    ],
    [22, 21, 17],
  ),
  us(
    'dc3tog at both ends of a row that begins with a chain of 2',
    [
      ...sc(21),
      'Row 2: Ch 2 (does not count as st), dc3tog, dc in each st to last 3 sts, dc3tog, turn. (17 sts)',
    ],
    [22, 21, 17],
  ),
  us(
    'row that ends in the space of the turning chain',
    // 11 sps; row 3: 3 in each of 10, 3 in the turning space
    [
      ...sc(23),
      'Row 2: Ch 4 (counts as dc and ch 1), sk next st, dc in next st, *ch 1, sk next st, dc in next st; rep from * across, turn. (12 dc, 11 ch-1 sps)',
      'Row 3: Ch 1, sc in first dc, *sc in next ch-1 sp, sc in next dc; rep from * to turning ch, sc in sp of turning ch, sc in 3rd ch of turning ch, turn. (23 sc)',
    ],
    [24, 23, 12, 23],
  ),
  us(
    'groups of three on a chain with edge stitches',
    [
      'Ch 23.',
      'Row 1: 2 dc in 4th ch from hook, *sk 2 ch, 3 dc in next ch; rep from * to last ch, dc in last ch, turn. (22 dc)',
    ],
    // 23 = 4 + 3 * 6 + 1: 3 + 18 + 1
    [23, 22],
  ),
  us(
    'side told in the count',
    [
      'Ch 16.',
      'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. 15 sc made.',
      'Row 2 (WS): Ch 1, sc in each sc across, turn. -- 15 sc --',
    ],
    [16, 15, 15],
  ),
  us(
    'count with kinds and a total',
    [
      ...sc(20),
      'Row 2: Ch 1, *sc in next st, dc in next st; rep from * across, turn. (10 sc, 10 dc: 20 sts total)',
    ],
    [21, 20, 20],
  ),
  us(
    'post stitches in the row by fp and bp behind the stitch',
    [
      ...dc(20),
      'Row 2: Ch 2 (counts as hdc), *dc FP in next st, dc BP in next st; rep from * to last st, hdc in last st, turn. (20 sts)',
    ],
    [22, 20, 20],
  ),
  us(
    'front post cluster over two',
    [
      ...dc(14),
      'Row 2: Ch 1, sc in first 2 sts, *FPdc2tog around next 2 sts, ch 1, sc in next 2 sts; rep from * across, turn.',
    ],
    // 2 + 4 * 3: 2 + 3 + 6 = 11
    [16, 14, 11],
    { spaces: [0, 0, 3] },
  ),
  us(
    'shoulders: even row count told in words',
    [
      ...sc(30),
      'Rows 2-11: Work even in sc. (30 sc)',
      'Row 12: Ch 1, sc in first 10 sts, leave remaining 20 sts unworked. Fasten off. (10 sc)',
    ],
    { final: 10 },
  ),
  us(
    'one row for two labels: odd and even',
    [
      ...sc(12),
      'Row 2 and all even rows: Ch 1, sc in each st across, turn. (12 sc)',
      'Row 3: Ch 3 (counts as dc), dc in next st and in each st across, turn. (12 dc)',
    ],
    { final: 12 },
  ),
  us(
    'inc one stitch at each end in words',
    [...sc(20), 'Row 2: Ch 1, work in sc, increasing 1 st at each end, turn. (22 sc)'],
    { final: 22 },
  ),
  us(
    'space in the wrong size of chain',
    [
      ...sc(19),
      'Row 2: Ch 1, sc in first st, *ch 2, sk next 2 sts, sc in next st; rep from * across, turn. (6 ch-2 sps)',
      'Row 3: Ch 1, sc in first sc, *3 sc in next ch-3 sp, sc in next sc; rep from * across, turn.',
    ],
    [20, 19, 7, null],
    { findings: [{ row: 3, code: ['place-does-not-exist', 'repeat-does-not-fit'], words: 'ch-3 sp' }] },
  ),
  // UK
  uk(
    'alternate stitches',
    [
      ...ukDc(21),
      '2nd row: 4ch (counts as 1tr, 1ch), miss first 2dc, *1tr in next dc, 1ch, miss 1dc; rep from * to last dc, 1tr in last dc, turn. [11 tr]',
    ],
    // miss 2, then 2n, last 1: 18 = 9 * 2: 1 + 9 + 1
    [22, 21, 11],
    { spaces: [0, 0, 10] },
  ),
  uk(
    'bars of one treble and 2 ch filled to blocks at the edges only',
    [
      'Make 32ch.',
      '1st row: 1tr in 8th ch from hook, *2ch, miss 2ch, 1tr in next ch; rep from * to end, turn. [9 sps]',
      '2nd row: 3ch (counts as 1tr), 2tr in 1st sp, 1tr in next tr, *2ch, miss 2ch, 1tr in next tr; rep from * to last sp, 2tr in last sp, 1tr in 3rd of turning ch, turn. [7 sps]',
    ],
    // 10 tr; 4 + 7 + 2 + 1 = 14
    [32, 10, 14],
    { spaces: [0, 9, 7] },
  ),
  uk(
    'work as given, dc in dc and tr in tr',
    [
      ...ukDc(20),
      '2nd row: 1ch, *1dc in next dc, 1tr in next dc; rep from * to end, turn.',
      '3rd row: 1ch, 1dc in each tr and 1tr in each dc to end, turn. [20 sts]',
    ],
    [21, 20, 20, 20],
  ),
  uk(
    'front edge in trebles, told as row-ends',
    [
      ...ukTr(15),
      'Rows 2-8: 3ch (counts as 1tr), miss 1st tr, 1tr in each tr to end, 1tr in top of tch, turn. [15 tr]',
      'Edging: 1ch, 2dc in each row-end to end. [16 dc]',
    ],
    { final: 16 },
  ),
  uk(
    'yfwd-less eyelets: miss and chain by turns',
    [
      ...ukTr(25),
      'Eyelet row: 4ch (counts as 1tr and 1ch), miss next tr, 1tr in next tr, *1ch, miss next tr, 1tr in next tr; rep from * to end, turn. [13 tr, 12 eyelets]',
    ],
    [27, 25, 13],
    { spaces: [0, 0, 12] },
  ),
  uk(
    'sizes with dashes where nothing is worked',
    [
      'Sizes: S (M, L)',
      'Make 31 (35, 39) ch.',
      'Row 1: 1dc in 2nd ch from hook, 1dc in each ch to end, turn. [30 (34, 38) dc]',
      'Row 2: 1ch, dc2tog – (1, 2) times, 1dc in each dc to end, turn. [30 (33, 36) dc]',
    ],
    [
      [31, 35, 39],
      [30, 34, 38],
      [30, 33, 36],
    ],
  ),
  us(
    'linen stitch whose skipped chains are a space and a stitch, said in that order',
    // 24 chains less 4 are 20, ten pairs: 10 + 1 sc and the chains as one; a space in each pair and one before
    [
      'Ch 24.',
      'Row 1: Sc in 4th ch from hook (skipped chs count as ch-1 sp and sc), *ch 1, sk next ch, sc in next ch; rep from * across, turn. (12 sc, 11 ch-1 sps)',
    ],
    [24, 12],
    { spaces: [0, 11] },
  ),
  us(
    'colours named behind their stitches, with and without a word before',
    [
      ...sc(20),
      'Row 2: Ch 1, 3 sc A, 14 sc B, 3 sc A, turn. (20 sc)',
      'Row 3: Ch 1, sc in next 3 sts with MC, sc in next 14 sts with CC, sc in last 3 sts with MC, turn. (20 sc)',
      'Row 4: Ch 1, 3 sc (MC), 14 sc (CC), 3 sc (MC), turn. (20 sc)',
      'Row 5: Ch 1, *2 sc white, 3 sc dark green; rep from * across, turn. (20 sc)',
    ],
    [21, 20, 20, 20, 20, 20],
  ),
];
