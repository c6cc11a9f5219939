/**
 * Written rows: chevrons, waves and other patterns whose increases and decreases cancel out.
 */
import { lines, type RowCase } from '../types.ts';

const ukDc = (n: number): readonly string[] => [
  `Make ${n + 1} ch.`,
  'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.',
];

export const ripples: readonly RowCase[] = [
  {
    name: 'chevron of 14 with three together',
    terms: 'uk',
    // 5 + 1 + 5 + 3 = 14 used, 5 + 3 + 5 + 1 = 14 made, 3 times
    text: lines(
      ...ukDc(42),
      'Row 2: 1 ch, *1 dc in each of next 5 dc, 3 dc in next dc, 1 dc in each of next 5 dc, dc3tog; rep from * to end, turn. (42 sts)',
      'Rows 3–12: Rep Row 2. (42 sts)',
    ),
    counts: [43, 42, 42, 42],
    byKind: [null, null, { dc: 39, dc3tog: 3 }, null],
    source: 'common practice, no source',
  },
  {
    name: 'chevron of 13 with 2 missed in the valley',
    terms: 'uk',
    // 5 + 1 + 5 + 2 = 13 used, 5 + 3 + 5 = 13 made, 3 times
    text: lines(
      ...ukDc(39),
      'Row 2: 1 ch, *1 dc in each of next 5 dc, 3 dc in next dc, 1 dc in each of next 5 dc, miss 2 dc; rep from * to end, turn. (39 dc)',
    ),
    counts: [40, 39, 39],
    byKind: [null, null, { dc: 39 }],
  },
  {
    name: 'feather and fan of 18',
    terms: 'uk',
    // 6 + 6 + 6 used; 3 + 12 + 3 made; twice
    text: lines(
      ...ukDc(36),
      'Row 2: 2 ch (does not count as a st), *(tr2tog) 3 times, (2 tr in next st) 6 times, (tr2tog) 3 times; rep from * to end, turn. (36 sts)',
    ),
    counts: [37, 36, 36],
    byKind: [null, null, { tr: 24, tr2tog: 12 }],
  },
  {
    name: 'wave of short and tall stitches',
    terms: 'uk',
    // 2 + 2 + 2 + 2 + 2 = 10
    text: lines(
      ...ukDc(20),
      'Row 2: 1 ch, *1 dc in each of next 2 sts, 1 htr in each of next 2 sts, 1 tr in each of next 2 sts, 1 dtr in each of next 2 sts, 1 tr in each of next 2 sts; rep from * to end, turn. (20 sts)',
    ),
    counts: [21, 20, 20],
    byKind: [null, null, { dc: 4, htr: 4, tr: 8, dtr: 4 }],
  },
  {
    name: 'chevron by size',
    terms: 'uk',
    // 14 * 3, 14 * 4, 14 * 5
    text: lines(
      'Make 43 (57, 71) ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 42 (56, 70) dc.',
      'Row 2: 1 ch, *1 dc in each of next 5 dc, 3 dc in next dc, 1 dc in each of next 5 dc, dc3tog; rep from * to end, turn. 42 (56, 70) sts.',
    ),
    counts: [
      [43, 57, 71],
      [42, 56, 70],
      [42, 56, 70],
    ],
    byKind: [null, null, { dc: [39, 52, 65], dc3tog: [3, 4, 5] }],
  },
  {
    name: 'chevron straight on the chain',
    terms: 'uk',
    // worked chains 2 * 14 = 28
    text: lines(
      'Make 29 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each of next 4 ch, 3 dc in next ch, 1 dc in each of next 5 ch, dc3tog, 1 dc in each of next 5 ch, 3 dc in next ch, 1 dc in each of next 5 ch, dc3tog over last 3 ch, turn. (28 sts)',
    ),
    counts: [29, 28],
  },
  {
    name: 'zigzag of htr with two together twice',
    terms: 'uk',
    // used: 4 + 1 + 1 + 4 + 2 + 2 = 14; made: 4 + 2 + 2 + 4 + 1 + 1 = 14
    text: lines(
      ...ukDc(28),
      'Row 2: 1 ch, *1 htr in each of next 4 sts, 2 htr in each of next 2 sts, 1 htr in each of next 4 sts, (htr2tog) twice; rep from * to end, turn. (28 sts)',
    ),
    counts: [29, 28, 28],
    byKind: [null, null, { htr: 24, htr2tog: 4 }],
  },
  {
    name: 'ripple with ch-2 peaks',
    terms: 'uk',
    // 13 used: 5 + 1 + 5 + 2; made 5 + 2 + 5 = 12 and a space, twice
    text: lines(
      ...ukDc(26),
      'Row 2: 1 ch, *1 dc in each of next 5 dc, (1 dc, 2 ch, 1 dc) in next dc, 1 dc in each of next 5 dc, miss 2 dc; rep from * to end, turn. (24 dc, 2 ch-sps)',
    ),
    counts: [27, 26, 24],
    spaces: [0, 0, 2],
  },
  {
    name: 'chevron of 14 with three together',
    terms: 'us',
    text: lines(
      'Fsc 28.',
      'Row 1: Ch 1, *sc in next 5 sts, 3 sc in next st, sc in next 5 sts, sc3tog; rep from * across, turn. (28 sts)',
      'Row 2: Ch 1, *sc in next 5 sts, 3 sc in next st, sc in next 5 sts, sc3tog; rep from * across, turn. (28 sts)',
    ),
    counts: [28, 28, 28],
  },
  {
    name: 'ripple of dc with 2 skipped',
    terms: 'us',
    // 6 + 1 + 6 + 2 = 15 used, 6 + 3 + 6 = 15 made
    text: lines(
      'Fsc 45.',
      'Row 1: Ch 2 (does not count as a st), *dc in next 6 sts, 3 dc in next st, dc in next 6 sts, sk 2 sts; rep from * across, turn. (45 dc)',
    ),
    counts: [45, 45],
  },
];
