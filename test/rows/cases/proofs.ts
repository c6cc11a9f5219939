/**
 * Written rows: the proof-reader's pile. Small swatches and parts in mixed house styles, many with the one
 * fault that a tester would find. Must not repeat a passage of another case file.
 */
import { dc, sc, uk, ukDc, ukTr, us } from '../swatch.ts';
import type { RowCase } from '../types.ts';

export const proofs: readonly RowCase[] = [
  us(
    'blocks of three on an odd chain, told by its own count',
    // 4 + 4n + ...: dc, 2 dc, (ch 1, sk 1, 3 dc)
    [
      'Ch 25.',
      'Row 1: Dc in 4th ch from hook, dc in next ch, *ch 1, sk next ch, dc in next 3 ch; rep from * across, turn. (18 dc, 5 ch-1 sps)',
      'Row 2: Ch 4 (counts as dc and ch 1), sk first 3 dc, 3 dc in next ch-1 sp, *ch 1, sk next 3 dc, 3 dc in next ch-1 sp; rep from * to last 3 sts, ch 1, sk next 2 dc, dc in top of tch, turn. (17 dc, 6 ch-1 sps)',
    ],
    // 25 - 5 = 20 = 5 * 4: 3 + 15; row 2: 1 + 15 + 1
    [25, 18, 17],
    { spaces: [0, 5, 6] },
  ),
  us(
    'a tail of 3 in a row whose rest is 2',
    // 1 + 3n + 3 = 24 has no n; 22 and 25 do
    [
      ...sc(24),
      'Row 2: Ch 1, sc in first st, *ch 2, sk next 2 sts, sc in next st; rep from * to last 3 sts, dc in last 3 sts, turn.',
    ],
    [25, 24, null],
    { findings: [{ row: 2, code: 'repeat-does-not-fit', saying: ['24', '22', '25'] }] },
  ),
  us(
    'more repeats than there is room for',
    [...sc(20), 'Row 2: Ch 1, *sc in next 3 sts, sc2tog; rep from * 4 more times, turn.'],
    [21, 20, null],
    { findings: [{ row: 2, code: 'place-does-not-exist', severity: 'error' }] },
  ),
  us(
    'fewer repeats than there are stitches',
    // 3 * 5 = 15 of 20
    [...sc(20), 'Row 2: Ch 1, (sc in next 3 sts, sc2tog) 3 times, turn.'],
    [21, 20, 12],
    { findings: [{ row: 2, code: 'stitches-left-unworked', saying: ['5', '20'] }] },
  ),
  us(
    'the turning chain counted in the row and left out of the number',
    [...dc(20), 'Row 2: Ch 3 (counts as dc), dc in next st and in each st across, turn. (19 dc)'],
    [22, 20, 20],
    { findings: [{ row: 2, code: 'stated-count-wrong', words: '19 dc', saying: ['19', '20'] }] },
  ),
  us(
    'a shell where no shell was made',
    [
      'Shell: 5 dc in same st.',
      ...sc(25),
      'Row 2: Ch 3 (counts as dc), sc in center dc of next shell, turn.',
    ],
    [26, 25, null],
    { findings: [{ row: 2, code: 'place-does-not-exist', words: 'next shell' }] },
  ),
  us(
    'a row that skips a row number',
    [...sc(10), 'Row 3: Ch 1, sc in each st across, turn. (10 sc)'],
    [11, 10, 10],
    { findings: [{ row: 2, code: 'row-number-out-of-order', words: '3' }] },
  ),
  us(
    'a word misspelt in the middle of a right row',
    [...sc(10), 'Row 2: Ch 1, sc in first 4 sts, hcd in next 2 sts, sc in last 4 sts, turn.'],
    [11, 10, null],
    {
      read: [true, true, false],
      findings: [{ row: 2, code: 'word-not-read', words: 'hcd', saying: ['hdc'] }],
    },
  ),
  us(
    'corner of a flat border with three in one',
    // 18: 9 + 3 + 8
    [...sc(18), 'Row 2: Ch 1, sc in first 9 sts, 3 sc in next st, sc in last 8 sts. Fasten off. (20 sc)'],
    [19, 18, 20],
  ),
  us(
    'open ladder of double trebles',
    // 6 + 1 ... 1 + 3n: 22
    [
      ...sc(22),
      'Row 2: Ch 7 (counts as dtr and ch 2), sk next 2 sts, dtr in next st, *ch 2, sk next 2 sts, dtr in next st; rep from * across, turn. (8 dtr, 7 ch-2 sps)',
      'Row 3: Ch 1, sc in first dtr, *2 sc in next ch-2 sp, sc in next dtr; rep from * across, ending with sc in 5th ch of beg ch-7, turn. (22 sc)',
    ],
    [23, 22, 8, 22],
    { spaces: [0, 0, 7, 0] },
  ),
  us(
    'puffs set in a V over spaces',
    // 19 = 1 + 3 * 6: V of puffs in each third
    [
      'Puff: (Yo, insert hook, yo and pull up a lp) 3 times in same st, yo and draw through all 7 lps.',
      ...sc(19),
      'Row 2: Ch 3 (counts as dc), sk next st, *(puff, ch 1, puff) in next st, sk next 2 sts; rep from * to last 2 sts, sk next st, dc in last st, turn.',
    ],
    // 2 + 3n + 2 = 19: n = 5: 10 puffs and 2 dc
    [20, 19, 12],
    { spaces: [0, 0, 5] },
  ),
  us(
    'rows by number with ampersand, then a plain one',
    [
      ...sc(16),
      'Rows 2 & 3: Ch 1, sc in each st across, turn. (16 sc)',
      'Row 4: Ch 1, *sc in next st, dc in next st; rep from * across, turn. (8 sc, 8 dc)',
      'Row 5: Rep Row 2.',
    ],
    { final: 16 },
  ),
  us(
    'long row in sentences',
    [
      'Chain 32.',
      'Row 1. Single crochet in second chain from hook. Single crochet in each remaining chain. Turn. 31 single crochet.',
      'Row 2. Chain 1. Single crochet in first 3 stitches. *Chain 3, skip next stitch, single crochet in next 3 stitches. Repeat from * across. Turn. 24 single crochet and 7 chain-3 spaces.',
    ],
    // 31 = 3 + 4 * 7: 3 + 21
    [32, 31, 24],
    { spaces: [0, 0, 7] },
  ),
  us(
    'wrap of stripes: colours change at the end of the row',
    [
      'With A, ch 26.',
      'Row 1: With A, sc in 2nd ch from hook and in each ch across, change to B in last st, turn. (25 sc)',
      'Row 2: With B, ch 1, sc in first st, *dc in next st, sc in next st; rep from * across, changing to A in last st, turn. (13 sc, 12 dc)',
    ],
    [26, 25, 25],
  ),
  us(
    'raised rib over an even number with edge half doubles',
    [
      ...dc(24),
      'Row 2: Ch 2 (counts as hdc here and throughout), *FPdc around next st, BPdc around next st; rep from * to last st, hdc in top of tch, turn. (24 sts)',
      'Rows 3-6: Rep Row 2.',
    ],
    { final: 24 },
  ),
  us(
    'neckline drawn in by every third stitch skipped',
    // 60 / 3 * 2
    [...sc(60), 'Row 2: Ch 1, *sc in next 2 sts, sk next st; rep from * across, turn. (40 sc)'],
    [61, 60, 40],
  ),
  us(
    'ruffle: two in each, then three in each',
    [
      ...sc(15),
      'Row 2: Ch 3 (counts as dc), dc in same st, 2 dc in each st across, turn. (30 dc)',
      'Row 3: Ch 3 (counts as dc), 2 dc in same st, 3 dc in each st across, turn. (90 dc)',
    ],
    [16, 15, 30, 90],
  ),
  us(
    'sizes in three groups of brackets',
    [
      'Sizes: XS (S, M) (L, XL) (2X, 3X)',
      'Ch 31 (33, 35) (37, 39) (41, 43).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 30 (32, 34) (36, 38) (40, 42) sc',
      'Row 2: Ch 1, sc2tog, sc in next 26 (28, 30) (32, 34) (36, 38) sts, sc2tog, turn. 28 (30, 32) (34, 36) (38, 40) sc',
    ],
    [
      [31, 33, 35, 37, 39, 41, 43],
      [30, 32, 34, 36, 38, 40, 42],
      [28, 30, 32, 34, 36, 38, 40],
    ],
  ),
  us(
    'one size has a stitch too few for its row',
    [
      'Sizes: S (M, L)',
      'Ch 31 (35, 39).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 30 (34, 38) sc',
      'Row 2: Ch 1, sc in next 10 (12, 14) sts, ch 6 (6, 6), sk next 6 sts, sc in next 14 (17, 18) sts, turn.',
    ],
    // S: 30; M: 12 + 6 + 17 = 35 of 34; L: 38
    [
      [31, 35, 39],
      [30, 34, 38],
      [24, null, 32],
    ],
    {
      findings: [
        { row: 2, code: 'place-does-not-exist', words: '14 (17, 18)', sizes: [1], saying: ['17', '16'] },
      ],
    },
  ),
  // UK
  uk(
    'solid scallops over a trellis',
    // 25 = 1 + 4 * 6
    [
      ...ukDc(25),
      '2nd row: 1ch, 1dc in first dc, *5ch, miss 3dc, 1dc in next dc; rep from * to end, turn. [6 loops]',
      '3rd row: 1ch, 1dc in first dc, *5tr in next 5ch loop, 1dc in next dc; rep from * to end, turn. [6 scallops]',
    ],
    [26, 25, 7, 37],
  ),
  uk(
    'tr rows whose turning chain is not worked into',
    [
      'Make 22ch.',
      '1st row: 1tr in 4th ch from hook (missed ch do not count), 1tr in each ch to end, turn. [19 tr]',
      '2nd row: 3ch (does not count as a st), 1tr in each tr to end, turn. [19 tr]',
    ],
    [22, 19, 19],
  ),
  uk(
    'dec at each end by missing',
    [
      ...ukDc(20),
      '2nd row: 1ch, miss first dc, 1dc in each dc to last 2 dc, miss next dc, 1dc in last dc, turn. [18 dc]',
    ],
    [21, 20, 18],
  ),
  uk(
    'stepped shoulder by ss at the start',
    [
      ...ukTr(24),
      '2nd row: Ss over first 6 tr, 3ch (counts as 1tr), miss next tr, 1tr in each tr to end, turn. [18 tr]',
    ],
    [26, 24, 18],
  ),
  uk(
    'half trebles in the back loop of every row',
    [
      'Make 16ch.',
      'Row 1: 1htr in 3rd ch from hook (2 missed ch do not count), 1htr in each ch to end, turn. [14 htr]',
      'Rows 2-20: 2ch (does not count), 1htr tbl in each htr to end, turn.',
    ],
    { final: 14 },
  ),
  uk(
    'a loop too many stated',
    [
      ...ukDc(25),
      '2nd row: 1ch, 1dc in first dc, *5ch, miss 3dc, 1dc in next dc; rep from * to end, turn. [7 5ch-loops]',
    ],
    [26, 25, 7],
    { findings: [{ row: 2, code: 'stated-count-wrong', saying: ['7', '6'] }] },
  ),
  uk(
    'cluster rows with a chain between, told by leaving loops',
    // 25 = 1 + 2 * 12
    [
      '1CL = [yrh, insert hook in st, yrh and draw loop through, yrh and draw through 2 loops] 3 times in same st, yrh and draw through all 4 loops.',
      ...ukDc(25),
      '2nd row: 3ch (counts as 1tr), *1CL in next dc, 1ch, miss 1dc; rep from * to last 2 dc, 1CL in next dc, 1tr in last dc, turn. [12 CL]',
    ],
    // 1 + 2n + 2 = 25: n = 11: 12 CL, 2 tr, 11 sps
    [26, 25, 14],
    { spaces: [0, 0, 11] },
  ),
  uk(
    'picot points every fifth',
    // 26 = 1 + 5 * 5
    [
      ...ukDc(26),
      'Edging row: 1ch, 1dc in first dc, *1dc in each of next 5dc, 3ch, ss in last dc made; rep from * to end. Fasten off. [26 dc, 5 picots]',
    ],
    [27, 26, 26],
  ),
];
