/**
 * Written rows: rounds worked round both sides of a foundation chain.
 */
import { lines, type RowCase } from '../types.ts';

export const ovals: readonly RowCase[] = [
  {
    name: 'oval: starting place before a colon',
    terms: 'us',
    // 7 + 3 + 6 + 2
    text: lines(
      'Ch 9.',
      'Rnd 1: Starting in 2nd ch from hook: sc 7, 3 sc in last ch, rotate to work on opposite side of foundation ch: sc 6, 2 sc in last. (18)',
    ),
    counts: [9, 18],
    source: 'common practice, no source',
  },
  {
    name: 'oval: starting place as a sentence',
    terms: 'us',
    // 7 + 3 + 6 + 2
    text: lines(
      'Ch 9.',
      'Rnd 1: Start in 2nd ch from hook. Sc in each of first 7 ch, 3 sc in last ch, rotate to work on opposite side of foundation ch: sc 6, 2 sc in last. (18)',
    ),
    counts: [9, 18],
    source: 'common practice, no source',
  },
  {
    name: 'oval of sc, 3 in the last ch, 2 in the first',
    terms: 'us',
    // 10 chains worked: 1 + 8 + 3 on one side, 8 + 2 on the other = 22
    text: lines(
      'Ch 11.',
      'Rnd 1: Sc in 2nd ch from hook, sc in next 8 ch, 3 sc in last ch; working along opposite side of foundation ch, sc in next 8 ch, 2 sc in last ch; join with sl st in first sc. (22 sc)',
    ),
    counts: [11, 22],
    source: 'common practice, no source',
  },
  {
    name: 'oval of sc and its increase round',
    terms: 'us',
    // rnd 1: 2 + 4 + 3 + 4 + 1 = 14 over 6 chains: 2 in 2nd ch, next 4, 3 in last; other side: 4, then 1 in the first
    // rnd 2: ends: (2, 2), 4, (2, 2, 2), 4, 2: 14 + 6 = 20
    text: lines(
      'Ch 7.',
      'Rnd 1: 2 sc in 2nd ch from hook, sc in next 4 ch, 3 sc in last ch; working on other side of ch, sc in next 4 ch, sc in same ch as first 2 sc. (14 sc)',
      'Rnd 2: 2 sc in each of next 2 sts, sc in next 4 sts, 2 sc in each of next 3 sts, sc in next 4 sts, 2 sc in last st. (20 sc)',
    ),
    counts: [7, 14, 20],
    source: 'common practice, no source',
  },
  {
    name: 'oval, rotate to work on the other side',
    terms: 'us',
    // 5 chains worked: 4 + 3 on one side, 3 + 2 on the other = 12
    text: lines(
      'Ch 6.',
      'Rnd 1: Sc in 2nd ch from hook, sc in next 3 ch, 3 sc in last ch, rotate to work along opposite side of ch, sc in next 3 ch, 2 sc in last ch. (12 sc)',
    ),
    counts: [6, 12],
  },
  {
    name: 'bag base by size',
    terms: 'us',
    // ch n: 2nd ch to the one before the last: n - 2, 3 in last, back n - 3, 2 in the first: 2n
    // n = 13: 11 + 3 + 10 + 2 = 26; n = 17: 15 + 3 + 14 + 2 = 34
    text: lines(
      'Ch 13 (17).',
      'Rnd 1: Sc in 2nd ch from hook, sc in next 10 (14) ch, 3 sc in last ch; working along other side of foundation ch, sc in next 10 (14) ch, 2 sc in last ch; join. 26 (34) sc',
    ),
    counts: [
      [13, 17],
      [26, 34],
    ],
  },
  {
    name: 'oval of dc',
    terms: 'uk',
    text: lines(
      'Make 11 ch.',
      'Rnd 1: 1 dc in 2nd ch from hook, 1 dc in each of next 8 ch, 3 dc in last ch, working along other side of ch, 1 dc in each of next 8 ch, 2 dc in last ch, join with ss in first dc. (22 dc)',
    ),
    counts: [11, 22],
  },
  {
    name: 'oval of dc in a spiral',
    terms: 'uk',
    // 9 chains worked: 8 + 3, then 7 + 2 = 20; next round: ends doubled
    // rnd 2: 1 → 2, 7, three doubled = 6, 7, two doubled = 4: sts 1 + 7 + 3 + 7 + 2 = 20 used; 2 + 7 + 6 + 7 + 4 = 26 made
    text: lines(
      'Ch 10.',
      'Rnd 1: 1 dc in 2nd ch from hook, 1 dc in each of next 7 ch, 3 dc in last ch; working on opposite side of ch, 1 dc in each of next 7 ch, 2 dc in last ch. (20 dc)',
      'Rnd 2: 2 dc in next dc, 1 dc in each of next 7 dc, 2 dc in each of next 3 dc, 1 dc in each of next 7 dc, 2 dc in each of last 2 dc. (26 dc)',
    ),
    counts: [10, 20, 26],
  },
];
