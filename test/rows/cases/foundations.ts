/**
 * Written rows: foundations and first rows. Chain n, first stitch in the k-th chain from the hook: the
 * chains from k to n are worked, n - k + 1 stitches, plus one where the skipped chains count as a stitch.
 */
import { lines, type RowCase } from '../types.ts';

const rule = 'published foundation rule (sc +1, hdc +1, dc +2 chains), resources stitch geometry';

export const foundations: readonly RowCase[] = [
  {
    name: 'numbers above twenty in words',
    terms: 'us',
    text: lines(
      'Chain one hundred and twelve.',
      'Row one: Single crochet in second chain from hook and in each chain across. Turn. (one hundred eleven single crochet)',
      'Row two: Chain one, single crochet in next twenty sts, skip next thirty-one sts, sc in last sixty sts. (80)',
    ),
    counts: [112, 111, 80],
  },
  {
    name: 'sc in 2nd ch from hook, 10 sts on 11 ch',
    terms: 'us',
    text: lines('Ch 11.', 'Row 1: Sc in 2nd ch from hook and in each ch across. (10 sc)'),
    counts: [11, 10],
    byKind: [null, { sc: 10 }],
    spaces: [0, 0],
    source: rule,
  },
  {
    name: 'sc, words for numbers and a bracketed count',
    terms: 'us',
    text: lines(
      'Chain 21.',
      'Row 1 (RS): Sc in second ch from hook, sc in each of next 19 ch, turn. [20 sts]',
    ),
    counts: [21, 20],
    source: rule,
  },
  {
    name: 'sc, rest of the chain named "remaining"',
    terms: 'us',
    text: lines('Ch 31.', 'ROW 1. SC IN 2ND CH FROM HOOK AND IN EACH REMAINING CH. TURN. 30 SC.'),
    counts: [31, 30],
  },
  {
    name: 'hdc in 3rd ch, skipped chains count, 10 sts on 11 ch',
    terms: 'us',
    // chains 3 to 11 = 9, and the edge stitch = 10
    text: lines(
      'Ch 11.',
      'Row 1: Hdc in 3rd ch from hook (the 2 skipped ch count as hdc), hdc in each ch across. 10 hdc',
    ),
    counts: [11, 10],
    byKind: [null, { hdc: 10 }],
    source: rule,
  },
  {
    name: 'hdc in 3rd ch, skipped chain does not count',
    terms: 'us',
    text: lines(
      'Ch 12.',
      'Row 1: Hdc in 3rd ch from hook (skipped ch does not count), hdc in each ch to end. (10 hdc)',
    ),
    counts: [12, 10],
    source: 'published hdc variant, resources stitch geometry',
  },
  {
    name: 'hdc in 2nd ch',
    terms: 'us',
    text: lines('Ch 16.', 'Row 1: Hdc in 2nd ch from hook and in each ch across – 15 hdc.'),
    counts: [16, 15],
    source: 'published hdc variant (1 ch, does not count), resources stitch geometry',
  },
  {
    name: 'dc in 4th ch, 10 sts on 12 ch',
    terms: 'us',
    // chains 4 to 12 = 9, and the edge stitch = 10
    text: lines('Ch 12.', 'Row 1: Dc in 4th ch from hook and in each ch across. (10 dc)'),
    counts: [12, 10],
    byKind: [null, { dc: 10 }],
    source: rule,
  },
  {
    name: 'dc in 4th ch, skipped chains said to count',
    terms: 'us',
    text: lines(
      'Ch 38.',
      'Row 1: Dc in 4th ch from hook (the 3 skipped ch count as a dc) and in each ch across, turn. 36 dc',
    ),
    counts: [38, 36],
    source: rule,
  },
  {
    name: 'dc in 4th ch, skipped chains said not to count',
    terms: 'us',
    text: lines(
      'Ch 33.',
      'Row 1: Dc in 4th ch from hook (skipped chs do not count as a st), dc in each ch across. (30 dc)',
    ),
    counts: [33, 30],
    byKind: [null, { dc: 30 }],
  },
  {
    name: 'dc in 3rd ch, skipped chains said not to count',
    terms: 'us',
    text: lines(
      'Ch 26.',
      'Row 1: Dc in 3rd ch from hook (skipped ch does not count as a st) and in each ch across. (24 dc)',
    ),
    counts: [26, 24],
    source: 'published short turning chain variant, resources stitch geometry',
  },
  {
    name: 'tr in 5th ch',
    terms: 'us',
    // chains 5 to 24 = 20, and the edge stitch = 21
    text: lines('Ch 24.', 'Row 1: Tr in 5th ch from hook and in each ch across, turn. (21 tr)'),
    counts: [24, 21],
    byKind: [null, { tr: 21 }],
    source: 'resources stitch geometry (from memory there)',
  },
  {
    name: 'dtr in 6th ch',
    terms: 'us',
    // chains 6 to 20 = 15, and the edge stitch = 16
    text: lines('Ch 20.', 'Row 1: Dtr in 6th ch from hook, dtr in each ch across. (16 dtr)'),
    counts: [20, 16],
    source: 'resources stitch geometry (from memory there)',
  },
  {
    name: 'foundation and row on one line',
    terms: 'us',
    text: 'Ch 21. Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
    counts: [21, 20],
  },
  {
    name: 'foundation chain inside the row',
    terms: 'us',
    text: 'Row 1: Ch 21, sc in 2nd ch from hook and in each ch across. (20 sc)',
    final: 20,
  },
  {
    name: 'foundation row with a side',
    terms: 'us',
    text: lines(
      'With A, ch 27.',
      'Foundation row (WS): Sc in 2nd ch from hook and in each ch across. (26 sc)',
    ),
    counts: [27, 26],
  },
  {
    name: 'set-up row',
    terms: 'us',
    text: lines('Ch 34.', 'Set-up row: Dc in 4th ch from hook, dc in each ch across. 32 dc.'),
    counts: [34, 32],
  },
  {
    name: 'row without "from hook" after its own turning chain',
    terms: 'us',
    // the ch 1 stands beside the 20 foundation chains
    text: lines('Ch 20.', 'Row 1: Ch 1, sc in each ch across. (20 sc)'),
    counts: [20, 20],
  },
  {
    name: 'first chain skipped in words',
    terms: 'us',
    text: lines('Ch 21.', 'Row 1: Skip first ch, sc in each ch across. (20 sc)'),
    counts: [21, 20],
  },
  {
    name: 'three chains skipped in words, counting',
    terms: 'us',
    // 22 - 3 = 19, and the edge stitch = 20
    text: lines('Ch 22.', 'Row 1: Skip first 3 ch (counts as first dc), dc in each ch across. (20 dc)'),
    counts: [22, 20],
  },
  {
    name: 'fsc alone',
    terms: 'us',
    text: lines('Fsc 36.', 'Row 1: Ch 1, sc in each st across. (36 sc)'),
    counts: [36, 36],
  },
  {
    name: 'fsc as a numbered row',
    terms: 'us',
    text: lines('Row 1: Fsc 36, turn. (36 fsc)', 'Row 2: Ch 1, sc in each st across, turn. (36 sc)'),
    counts: [36, 36],
    byKind: [{ fsc: 36 }, { sc: 36 }],
  },
  {
    name: 'fdc worked as a number',
    terms: 'us',
    text: 'Row 1: Work 24 fdc, turn. (24 sts)',
    counts: [24],
    byKind: [{ fdc: 24 }],
  },
  {
    name: 'ring of chains, sc',
    terms: 'us',
    text: lines(
      'Ch 4, sl st in first ch to form a ring.',
      'Rnd 1: Ch 1, 8 sc in ring; join with sl st in first sc. (8 sc)',
    ),
    counts: [null, 8],
    byKind: [null, { sc: 8 }],
  },
  {
    name: 'ring of chains, dc',
    terms: 'us',
    text: lines(
      'Ch 5, join with sl st to form ring.',
      'Rnd 1: Ch 3 (counts as dc), 15 dc in ring; join with sl st in top of beg ch-3. (16 dc)',
    ),
    counts: [null, 16],
    byKind: [null, { dc: 16 }],
  },
  {
    name: 'magic ring',
    terms: 'us',
    text: 'Rnd 1: 6 sc in magic ring. (6 sc)',
    counts: [6],
  },
  {
    name: 'work into an adjustable ring',
    terms: 'us',
    text: 'Rnd 1: Work 6 sc into adjustable ring. (6)',
    counts: [6],
  },
  {
    name: 'make a magic ring first',
    terms: 'us',
    text: 'Rnd 1: Make a magic ring, ch 1, 8 hdc in ring, join with sl st in first hdc. (8 hdc)',
    counts: [8],
    byKind: [{ hdc: 8 }],
  },
  {
    name: 'round into the 2nd of 2 chains',
    terms: 'us',
    text: lines('Ch 2.', 'Rnd 1: 6 sc in 2nd ch from hook. (6 sc)'),
    counts: [2, 6],
  },
  {
    name: 'round into the 4th of 4 chains, edge counts',
    terms: 'us',
    text: lines(
      'Ch 4.',
      'Rnd 1: 11 dc in 4th ch from hook (3 skipped ch count as first dc); join with sl st in top of beg ch-3. (12 dc)',
    ),
    counts: [4, 12],
    byKind: [null, { dc: 12 }],
  },
  {
    name: 'foundation of several sizes',
    terms: 'us',
    // n - 2 each: 36, 40, 44, 48
    text: lines(
      'Ch 38 (42, 46, 50).',
      'Row 1: Dc in 4th ch from hook and in each ch across. 36 (40, 44, 48) dc.',
    ),
    counts: [
      [38, 42, 46, 50],
      [36, 40, 44, 48],
    ],
  },
  {
    name: 'uneven first row: two kinds side by side',
    terms: 'us',
    // 20 chains worked: 10 pairs
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook, dc in next ch, *sc in next ch, dc in next ch; rep from * across. (20 sts)',
    ),
    counts: [21, 20],
    byKind: [null, { sc: 10, dc: 10 }],
  },
  {
    name: 'dc in 2nd ch from hook',
    terms: 'uk',
    text: lines('Make 11 ch.', 'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (10 dc)'),
    counts: [11, 10],
    byKind: [null, { dc: 10 }],
    source: rule,
  },
  {
    name: 'dc, chain counted before the word',
    terms: 'uk',
    text: lines('38 ch.', 'Row 1: 1 dc in 2nd ch from hook, 1 dc into each ch to end. 37 dc.'),
    counts: [38, 37],
  },
  {
    name: 'make a chain of so many',
    terms: 'uk',
    text: lines(
      'Make a chain of 40.',
      '1st row: 1 dc into 2nd ch from hook, 1 dc into each ch to end, turn. 39 sts.',
    ),
    counts: [40, 39],
  },
  {
    name: 'htr in 3rd ch, skipped chains count',
    terms: 'uk',
    text: lines(
      'Ch 21.',
      'Row 1: 1 htr in 3rd ch from hook (missed 2 ch count as 1 htr), 1 htr in each ch to end. (20 htr)',
    ),
    counts: [21, 20],
    byKind: [null, { htr: 20 }],
    source: rule,
  },
  {
    name: 'htr in 3rd ch, skipped chains do not count',
    terms: 'uk',
    text: lines(
      'Ch 32.',
      'Row 1: Htr in 3rd ch from hook (missed ch do not count as a st), htr in each ch to end. [30 htr]',
    ),
    counts: [32, 30],
  },
  {
    name: 'htr in 2nd ch',
    terms: 'uk',
    text: lines('Make 19 ch.', 'Row 1: 1 htr in 2nd ch from hook, 1 htr in each ch to end, turn – 18 htr.'),
    counts: [19, 18],
  },
  {
    name: 'tr in 4th ch',
    terms: 'uk',
    // chains 4 to 32 = 29, and the edge stitch = 30
    text: lines('Ch 32.', 'Row 1: 1 tr in 4th ch from hook, 1 tr in each ch to end, turn. (30 tr)'),
    counts: [32, 30],
    byKind: [null, { tr: 30 }],
    source: rule,
  },
  {
    name: 'tr in 4th ch, said to count',
    terms: 'uk',
    text: lines(
      'Ch 27.',
      'Row 1 (RS): Tr in 4th ch from hook (missed 3 ch count as 1 tr), tr in each ch to end. 25 tr.',
    ),
    counts: [27, 25],
  },
  {
    name: 'dtr in 5th ch',
    terms: 'uk',
    // chains 5 to 28 = 24, and the edge stitch = 25
    text: lines('Make 28 ch.', 'Row 1: 1 dtr in 5th ch from hook, 1 dtr in each ch to end. (25 dtr)'),
    counts: [28, 25],
    byKind: [null, { dtr: 25 }],
  },
  {
    name: 'trtr in 6th ch',
    terms: 'uk',
    text: lines('Make 20 ch.', 'Row 1: 1 trtr in 6th ch from hook, 1 trtr in each ch to end. (16 trtr)'),
    counts: [20, 16],
  },
  {
    name: 'first chain missed in words',
    terms: 'uk',
    text: lines('Make 21 ch.', 'Row 1: Miss 1 ch, 1 dc in each ch to end. (20 dc)'),
    counts: [21, 20],
  },
  {
    name: 'row without "from hook" after its own turning chain',
    terms: 'uk',
    text: lines('Make 20 ch.', 'Row 1: 1 ch, 1 dc in each ch to end, turn. (20 dc)'),
    counts: [20, 20],
  },
  {
    name: 'magic loop',
    terms: 'uk',
    text: 'Rnd 1: 6 dc into magic loop. (6 dc)',
    counts: [6],
    byKind: [{ dc: 6 }],
  },
  {
    name: 'ring of chains, tr',
    terms: 'uk',
    text: lines(
      'Make 6 ch, join with ss to form a ring.',
      'Round 1: 3 ch (counts as 1 tr), 15 tr in ring, join with ss in 3rd ch. 16 tr.',
    ),
    counts: [null, 16],
    byKind: [null, { tr: 16 }],
  },
  {
    name: 'foundation double crochet',
    terms: 'uk',
    text: lines('Row 1: Work 30 fdc, turn. (30 sts)', 'Row 2: 1 ch, 1 dc in each st to end, turn. (30 dc)'),
    counts: [30, 30],
  },
  {
    name: 'foundation of several sizes, square brackets',
    terms: 'uk',
    text: lines(
      'Make 61 [67, 73] ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end. 60 [66, 72] dc.',
    ),
    counts: [
      [61, 67, 73],
      [60, 66, 72],
    ],
  },
  {
    name: 'a number that stands for any even one',
    terms: 'us',
    text: lines(
      'Ch an even number, e.g. 20.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (19 sc)',
    ),
    counts: [20, 19],
  },
  {
    name: 'a number that stands for any of a multiple UK',
    terms: 'uk',
    text: lines(
      'Make a ch any multiple of 6 plus 4, for example 22.',
      'Row 1: 1 dc in 2nd ch from hook and in each ch to end. (21 dc)',
    ),
    counts: [22, 21],
  },
  {
    name: 'two stitches in the 5th chain leave no chain in doubt',
    terms: 'us',
    text: lines(
      'Ch 20.',
      'Row 1: 2 dc in 5th ch from hook, *sk 2 ch, 2 dc in next ch; rep from * across. (13 dc)',
    ),
    // 4 chains are a dc; chain 5, then every 3rd up to 20: 6 places of 2
    counts: [20, 13],
  },
  {
    name: 'stitches counted from the hook, without a word that goes in',
    terms: 'us',
    text: lines('Ch 2.', 'Row 1: 7 dc from 2nd ch from hook.'),
    counts: [2, 7],
    source: 'common practice, no source',
  },
];
