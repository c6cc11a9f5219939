/**
 * Written rows: every way of repeating a part of a row, with tails, inside each other, cut short and
 * counted in total or as so many more.
 */
import { lines, type RowCase } from '../types.ts';

const practice =
  'common practice: rep … more times comes on top of the first working, (…) so many times is all of it';

export const repeats: readonly RowCase[] = [
  {
    name: 'the last of several goes into the turning chain',
    terms: 'uk',
    // 4 + 9 times 6 = 58; blocks of 4 tr, 9 spaces
    text: lines(
      'Make 60 ch.',
      '1st row: 1 tr into 4th ch from hook, 1 tr into each ch to end.',
      '2nd row: 3 ch, 1 tr into each of next 3 tr, *2 ch, miss 2 tr, 1 tr into each of next 4 tr; repeat from * to end, working last tr into turning ch.',
    ),
    counts: [60, 58, 40],
    spaces: [0, 0, 9],
    source: 'common practice, no source',
  },
  {
    name: 'the last of several, told behind a comma',
    terms: 'uk',
    text: lines(
      'Make 60 ch.',
      '1st row: 1 tr into 4th ch from hook, 1 tr into each ch to end.',
      '2nd row: 3 ch, 1 tr into each of next 3 tr, *2 ch, miss 2 tr, 1 tr into each of next 4 tr; repeat from * to end, last tr into turning ch.',
    ),
    counts: [60, 58, 40],
    spaces: [0, 0, 9],
    source: 'common practice, no source',
  },
  {
    name: 'ends with three and the turning chain',
    terms: 'us',
    // blocks of 4 dc and spaces of 2 ch: 16 dc, 3 spaces; the last block's last stitch is the turning chain
    text: lines(
      'Ch 24.',
      'Row 1: Dc in 4th ch from hook, dc in next 2 ch, *ch 2, sk 2 ch, dc in next 4 ch; rep from * across, turn.',
      'Row 2: Ch 3, sk first dc, dc in next 3 dc, *ch 2, dc in next 4 dc; rep from * across, ending with dc in last 3 dc and in top of beg ch.',
    ),
    counts: [24, 16, 16],
    spaces: [0, 3, 3],
    source: 'common practice, no source',
  },
  {
    name: 'ends with three and the turning chain, of the last repeat',
    terms: 'us',
    // blocks of 4 dc and spaces of 2 ch: 16 dc, 3 spaces; the last block's last stitch is the turning chain
    text: lines(
      'Ch 24.',
      'Row 1: Dc in 4th ch from hook, dc in next 2 ch, *ch 2, sk 2 ch, dc in next 4 ch; rep from * across, turn.',
      'Row 2: Ch 3, sk first dc, dc in next 3 dc, *ch 2, dc in next 4 dc; rep from * across, ending last rep with dc in last 3 dc and in top of beg ch.',
    ),
    counts: [24, 16, 16],
    spaces: [0, 3, 3],
    source: 'common practice, no source',
  },
  {
    name: 'ends with the turning chain alone, for the last of four',
    terms: 'us',
    // blocks of 4 dc and spaces of 2 ch: 16 dc, 3 spaces; the last block's last stitch is the turning chain
    text: lines(
      'Ch 24.',
      'Row 1: Dc in 4th ch from hook, dc in next 2 ch, *ch 2, sk 2 ch, dc in next 4 ch; rep from * across, turn.',
      'Row 2: Ch 3, sk first dc, dc in next 3 dc, *ch 2, dc in next 4 dc; rep from * across, ending with dc in top of beg ch.',
    ),
    counts: [24, 16, 16],
    spaces: [0, 3, 3],
    source: 'common practice, no source',
  },
  {
    name: 'rep from * across',
    terms: 'us',
    // 20 / 4 = 5 * 5
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, *sc in next 3 sts, 2 sc in next st; rep from * across, turn. (25 sc)',
    ),
    counts: [20, 25],
  },
  {
    name: 'rep from * to end',
    terms: 'us',
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, *Sc in next 3 sts, 2 sc in next st. Rep from * to end. Turn. (25 sc)',
    ),
    counts: [20, 25],
  },
  {
    name: 'rep from * so many more times',
    terms: 'us',
    // 1 + 4 = 5 times
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, *sc in next 3 sts, 2 sc in next st; rep from * 4 more times, turn. (25 sc)',
    ),
    counts: [20, 25],
    source: practice,
  },
  {
    name: 'rep from * so many times means more',
    terms: 'us',
    // 1 + 4 = 5 times
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, *sc in next 3 sts, 2 sc in next st; rep from * 4 times, turn. (25 sc)',
    ),
    counts: [20, 25],
    source: practice,
  },
  {
    name: 'rep from * so many times in total',
    terms: 'us',
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, *sc in next 3 sts, 2 sc in next st; rep from * 5 times in total, turn. (25 sc)',
    ),
    counts: [20, 25],
  },
  {
    name: 'so many times in all',
    terms: 'us',
    text: lines(
      'Fsc 18.',
      'Row 1: Ch 1, *sc in next st, 2 sc in next st; rep from * 9 times in all, turn. (27 sc)',
    ),
    counts: [18, 27],
  },
  {
    name: 'between two stars, so many times',
    terms: 'us',
    text: lines(
      'Fsc 18.',
      'Row 1: Ch 1, *sc in next 2 sts, sc2tog, sc in next 2 sts* 3 times in total, turn. (15 sts)',
    ),
    // 18 / 6 = 3 * 5
    counts: [18, 15],
  },
  {
    name: 'repeat between two stars across',
    terms: 'us',
    text: lines(
      'Fsc 18.',
      'Row 1: Ch 1, *sc in next st, hdc in next st*, rep between * and * across, turn. (18 sts)',
    ),
    counts: [18, 18],
    byKind: [null, { sc: 9, hdc: 9 }],
  },
  {
    name: 'repeat with a tail: to last 2 sts',
    terms: 'us',
    // 20 = 6 * 3 + 2: 12 sc, 6 dc + 2 sc
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, *sc in next 2 sts, dc in next st; rep from * to last 2 sts, sc in last 2 sts, turn. (20 sts)',
    ),
    counts: [20, 20],
    byKind: [null, { sc: 14, dc: 6 }],
  },
  {
    name: 'repeat with a tail: to within last 2 sts',
    terms: 'us',
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, *sc in next 2 sts, dc in next st; rep from * to within last 2 sts, sc in last 2 sts, turn.',
    ),
    counts: [20, 20],
  },
  {
    name: 'repeat with a tail: until 2 sts remain',
    terms: 'us',
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, *sc in next 2 sts, dc in next st; rep from * until 2 sts remain, sc in each of last 2 sts, turn.',
    ),
    counts: [20, 20],
  },
  {
    name: 'repeat with a tail that says nothing of a stop',
    terms: 'us',
    // "across" leaves what the tail needs: 6 * 3 + 2
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, *sc in next 2 sts, dc in next st; rep from * across, ending with sc in last 2 sts, turn.',
    ),
    counts: [20, 20],
    byKind: [null, { sc: 14, dc: 6 }],
  },
  {
    name: 'head, repeat and tail',
    terms: 'us',
    // 2 + 5 * 3 + 3 = 20: increases 5
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, sc in first 2 sts, *2 sc in next st, sc in next 2 sts; rep from * to last 3 sts, sc in last 3 sts, turn. (25 sc)',
    ),
    counts: [20, 25],
  },
  {
    name: 'square brackets, so many times',
    terms: 'us',
    text: lines('Fsc 24.', 'Row 1: Ch 1, [sc in next 2 sts, sc2tog] 6 times, turn. (18 sts)'),
    counts: [24, 18],
    byKind: [null, { sc: 12, sc2tog: 6 }],
  },
  {
    name: 'round brackets and a times sign',
    terms: 'us',
    text: lines('Fsc 24.', 'Row 1: Ch 1, (sc 2, sc2tog) x 6, turn. (18 sts)'),
    counts: [24, 18],
  },
  {
    name: 'braces',
    terms: 'us',
    text: lines('Fsc 24.', 'Row 1: Ch 1, {sc in next 2 sts, sc2tog} 6 times, turn. (18 sts)'),
    counts: [24, 18],
  },
  {
    name: 'bracket and across',
    terms: 'us',
    text: lines('Fsc 24.', 'Row 1: Ch 1, [sc in next 2 sts, sc2tog], across, turn. (18 sts)'),
    counts: [24, 18],
  },
  {
    name: 'twice in words',
    terms: 'us',
    // 8 + 2 + 8 … (3 sc, 2 in 1) twice = 10 over 8; 12 more
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, (sc in next 3 sts, 2 sc in next st) twice, sc in next 12 sts, turn. (22 sc)',
    ),
    counts: [20, 22],
  },
  {
    name: 'once more',
    terms: 'us',
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, *sc in next 9 sts, 2 sc in next st; rep from * once more, turn. (22 sc)',
    ),
    counts: [20, 22],
  },
  {
    name: 'braces inside brackets',
    terms: 'us',
    // {1 + 2} twice = 6 over 4, and 2 = 8 over 6; 4 times: 32 over 24
    text: lines(
      'Fsc 24.',
      'Row 1: Ch 1, [{sc in next st, 2 sc in next st} twice, sc in next 2 sts] 4 times, turn. (32 sc)',
    ),
    counts: [24, 32],
  },
  {
    name: 'brackets inside stars',
    terms: 'us',
    // over 4 sts 1 + 3 * 2 = 7; 5 times: 35 over 20
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, *sc in next st, [2 sc in next st] 3 times; rep from * across, turn. (35 sc)',
    ),
    counts: [20, 35],
  },
  {
    name: 'double stars inside stars',
    terms: 'us',
    // inner: (2 sc, sc2tog) twice = 6 over 8; outer adds 1 sc = 7 over 9; 3 times: 21 over 27
    text: lines(
      'Fsc 27.',
      'Row 1: Ch 1, *sc in next st, **sc in next 2 sts, sc2tog; rep from ** once more; rep from * 2 more times, turn. (21 sts)',
    ),
    counts: [27, 21],
    byKind: [null, { sc: 15, sc2tog: 6 }],
  },
  {
    name: 'ending last rep at **',
    terms: 'us',
    // 23 = 4 * 5 + 3: dc 3 each 5 times = 15, ch 2 over 2 four times
    text: lines(
      'Fsc 23.',
      'Row 1: Ch 2 (does not count as a st), *dc in next 3 sts**, ch 2, sk 2 sts; rep from * across, ending last rep at **, turn. (15 dc, 4 ch-2 sps)',
    ),
    counts: [23, 15],
    spaces: [0, 4],
    source: 'published meaning of an ending at **, resources conventions',
  },
  {
    name: 'ending last rep with',
    terms: 'us',
    // 25 = 1 + 6 * 4: *ch 3, sk 3, sc* with the last sc
    text: lines(
      'Fsc 25.',
      'Row 1: Ch 1, sc in first st, *ch 3, sk 3 sts, sc in next st; rep from * across, ending last rep with sc in last st, turn. (7 sc)',
    ),
    counts: [25, 7],
    spaces: [0, 6],
  },
  {
    name: 'omitting the last chain',
    terms: 'us',
    // 10 dc, a ch 1 after each but the last
    text: lines(
      'Fsc 10.',
      'Row 1: Ch 2 (does not count as a st), *dc in next st, ch 1; rep from * across, omitting last ch 1, turn. (10 dc, 9 ch-1 sps)',
    ),
    counts: [10, 10],
    spaces: [0, 9],
  },
  {
    name: 'last stitch alone in the tail',
    terms: 'us',
    // 22 = 7 * 3 + 1: 8 dc, 7 spaces
    text: lines(
      'Fsc 22.',
      'Row 1: Ch 2 (does not count as a st), *dc in next st, ch 2, sk 2 sts; rep from * to last st, dc in last st, turn. (8 dc, 7 ch-2 sps)',
    ),
    counts: [22, 8],
    spaces: [0, 7],
  },
  {
    name: 'two repeats in one row',
    terms: 'us',
    // (sc, 2 sc in next) 4 times = 12 over 8; 4 sc; the same again: 12 + 4 + 12 = 28 over 20
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, (sc in next st, 2 sc in next st) 4 times, sc in next 4 sts, (2 sc in next st, sc in next st) 4 times, turn. (28 sc)',
    ),
    counts: [20, 28],
  },
  {
    name: 'dagger as the mark',
    terms: 'us',
    text: lines(
      'Fsc 21.',
      'Row 1: Ch 1, †sc in next 2 sts, hdc in next st; rep from † across, turn. (21 sts)',
    ),
    counts: [21, 21],
    byKind: [null, { sc: 14, hdc: 7 }],
  },
  {
    name: 'full stop inside the repeat',
    terms: 'us',
    text: lines('Fsc 20.', 'Row 1: Ch 1. *Sc in next 3 sts. Sc2tog. Rep from * across. Turn. 16 sts.'),
    // 20 / 5 = 4 * 4
    counts: [20, 16],
  },
  {
    name: 'every other stitch doubled',
    terms: 'us',
    // 20 sts, 10 doubled, by a repeat of two
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, hdc in first st, 2 hdc in next st, *hdc in next st, 2 hdc in next st; repeat from * across. (30 hdc)',
    ),
    counts: [20, 30],
  },
  {
    name: 'repeat around in brackets',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 12 sc in magic ring; join with sl st in first sc. (12)',
      'Rnd 2: Ch 1, (sc in next 2 sts, 2 sc in next st) around; join with sl st in first sc. (16)',
      'Rnd 3: Ch 1, [sc in next 3 sts, 2 sc in next st] around, join with sl st in first sc. (20)',
    ),
    counts: [12, 16, 20],
  },
  {
    name: 'repeat by size',
    terms: 'us',
    // 24, 28, 32 over 4: 6, 7, 8 times 5 = 30, 35, 40
    text: lines(
      'Fsc 24 (28, 32).',
      'Row 1: Ch 1, *sc in next 3 sts, 2 sc in next st; rep from * 5 (6, 7) more times, turn. 30 (35, 40) sc',
    ),
    counts: [
      [24, 28, 32],
      [30, 35, 40],
    ],
  },
  {
    name: 'rep from * to end',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end.',
      'Row 2: 1 ch, *1 dc in each of next 3 dc, 2 dc in next dc; rep from * to end, turn. (25 dc)',
    ),
    counts: [21, 20, 25],
  },
  {
    name: 'rep from * four times more',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end.',
      'Row 2: 1 ch, *1 dc in each of next 3 dc, 2 dc in next dc; rep from * four times more, turn. (25 dc)',
    ),
    counts: [21, 20, 25],
  },
  {
    name: 'repeat with a tail: to last 2 sts',
    terms: 'uk',
    text: lines(
      'Row 1: Work 20 fdc, turn.',
      'Row 2: 1 ch, *1 dc in each of next 2 sts, 1 tr in next st; rep from * to last 2 sts, 1 dc in each of last 2 sts, turn. (20 sts)',
    ),
    counts: [20, 20],
    byKind: [null, { dc: 14, tr: 6 }],
  },
  {
    name: 'ending with, and the top of the turning chain',
    terms: 'uk',
    // 21 tr: 3 ch, (1 ch, miss 1, 1 tr) 10 times, the last tr in the chain: 11 tr, 10 spaces
    text: lines(
      'Make 23 ch.',
      'Row 1: 1 tr in 4th ch from hook, 1 tr in each ch to end, turn. (21 tr)',
      'Row 2: 3 ch (counts as 1 tr), *1 ch, miss 1 tr, 1 tr in next tr; rep from * to last 2 sts, 1 ch, miss 1 tr, 1 tr in top of turning ch, turn. (11 tr, 10 ch-sps)',
    ),
    counts: [23, 21, 11],
    spaces: [0, 0, 10],
  },
  {
    name: 'nested brackets',
    terms: 'uk',
    // (1 tr, 1 ch, miss 1) twice, 1 tr in each of next 2: 6 used, 4 tr and 2 spaces; 4 times, 1 tr: 25 used, 17 tr, 8 spaces
    text: lines(
      'Row 1: Work 25 fdc, turn.',
      'Row 2: 2 ch (does not count as a st), [(1 tr in next st, 1 ch, miss 1 st) twice, 1 tr in each of next 2 sts] 4 times, 1 tr in last st, turn. (17 tr)',
    ),
    counts: [25, 17],
    spaces: [0, 8],
  },
  {
    name: 'ending last rep at **',
    terms: 'uk',
    text: lines(
      'Row 1: Work 23 fdc, turn.',
      'Row 2: 2 ch (does not count as a st), *1 tr in each of next 3 sts**, 2 ch, miss 2 sts; rep from * to end, ending last rep at **, turn. (15 tr)',
    ),
    counts: [23, 15],
    spaces: [0, 4],
  },
  {
    name: 'brackets and x',
    terms: 'uk',
    text: lines('Row 1: Work 24 fdc, turn.', 'Row 2: 1 ch, (4 dc, dc2tog) x 4, turn. (20 sts)'),
    counts: [24, 20],
  },
  {
    name: 'repeat by size in brackets',
    terms: 'uk',
    // 30, 36, 42 over 6: 5, 6, 7 times 7
    text: lines(
      'Row 1: Work 30 (36, 42) fdc, turn.',
      'Row 2: 1 ch, [1 dc in each of next 5 sts, 2 dc in next st] 5 (6, 7) times, turn. 35 (42, 49) dc.',
    ),
    counts: [
      [30, 36, 42],
      [35, 42, 49],
    ],
  },
  {
    name: 'rep from * once',
    terms: 'uk',
    text: lines(
      'Row 1: Work 20 fdc, turn.',
      'Row 2: 1 ch, *1 dc in each of next 8 sts, dc2tog; rep from * once more, turn. (18 sts)',
    ),
    counts: [20, 18],
  },
  {
    name: 'so many times in all',
    terms: 'uk',
    text: lines(
      'Row 1: Work 18 fdc, turn.',
      'Row 2: 1 ch, *1 dc in next st, 2 dc in next st; rep from * 9 times in all, turn. (27 dc)',
    ),
    counts: [18, 27],
  },
  {
    name: 'head, repeat and tail',
    terms: 'uk',
    // 2 + 5 * 3 + 3 = 20, 5 increases
    text: lines(
      'Row 1: Work 20 fdc, turn.',
      'Row 2: 1 ch, 1 dc in each of first 2 sts, *2 dc in next st, 1 dc in each of next 2 sts; rep from * to last 3 sts, 1 dc in each of last 3 sts, turn. (25 dc)',
    ),
    counts: [20, 25],
  },
  {
    name: 'until 2 sts remain',
    terms: 'uk',
    text: lines(
      'Row 1: Work 20 fdc, turn.',
      'Row 2: 1 ch, *1 dc in each of next 2 sts, 1 htr in next st; rep from * until 2 sts remain, 1 dc in each of last 2 sts, turn. (20 sts)',
    ),
    counts: [20, 20],
    byKind: [null, { dc: 14, htr: 6 }],
  },
  {
    name: 'twice in words',
    terms: 'uk',
    // (3 + 2) twice over 8, 12 more
    text: lines(
      'Row 1: Work 20 fdc, turn.',
      'Row 2: 1 ch, (1 dc in each of next 3 sts, 2 dc in next st) twice, 1 dc in each of next 12 sts, turn. (22 dc)',
    ),
    counts: [20, 22],
  },
  {
    name: 'double stars inside stars',
    terms: 'uk',
    // (2 + dc2tog) twice over 8 and 1: 9 used, 7 made; 3 times
    text: lines(
      'Row 1: Work 27 fdc, turn.',
      'Row 2: 1 ch, *1 dc in next st, **1 dc in each of next 2 sts, dc2tog; rep from ** once more; rep from * 2 more times, turn. (21 sts)',
    ),
    counts: [27, 21],
    byKind: [null, { dc: 15, dc2tog: 6 }],
  },
  {
    name: 'to end, with a tail that names what it works',
    terms: 'uk',
    // 6 * 3 + 2
    text: lines(
      'Row 1: Work 20 fdc, turn.',
      'Row 2: 1 ch, *1 dc in each of next 2 sts, 1 htr in next st; rep from * to end, ending with 1 dc in each of last 2 sts, turn.',
    ),
    counts: [20, 20],
    byKind: [null, { dc: 14, htr: 6 }],
  },
  {
    name: 'two repeats in one row',
    terms: 'uk',
    text: lines(
      'Row 1: Work 20 fdc, turn.',
      'Row 2: 1 ch, (1 dc in next st, 2 dc in next st) 4 times, 1 dc in each of next 4 sts, (2 dc in next st, 1 dc in next st) 4 times, turn. (28 dc)',
    ),
    counts: [20, 28],
  },
  {
    name: 'up to the turning chain over plain stitches',
    terms: 'us',
    // 20: the ch 3, 6 times 3 between, the dc in the turning chain
    text: lines(
      'Ch 22.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn.',
      'Row 2: Ch 3, *sk next 2 dc, 3 dc in next dc; rep from * across to tch, dc in tch, turn.',
      'Row 3: Ch 3, *sk next 2 dc, 3 dc in next dc; rep from * to turning chain, dc in top of turning chain, turn.',
    ),
    counts: [22, 20, 20, 20],
    source: practice,
  },
  {
    name: 'up to the turning chain in spaces, the last stitch before it passed over',
    terms: 'us',
    // 24 ch: 11 dc, 10 spaces; the edge's chain holds the last space
    text: lines(
      'Ch 24.',
      'Row 1: Dc in 6th ch from hook, *ch 1, sk next ch, dc in next ch; rep from * across, turn.',
      'Row 2: Ch 1, sc in first dc, *ch 1, sc in next ch-1 sp; rep from * to turning ch, ch 1, sc in top of turning ch, turn.',
    ),
    counts: [24, 11, 11],
    spaces: [0, 10, 10],
    source: practice,
  },
  {
    name: 'up to the turning chain with stitches over',
    terms: 'us',
    // 19: one under the chain, the turning chain, 17 between: 5 times 3 and 2
    text: lines(
      'Ch 21.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn.',
      'Row 2: Ch 3, *sk next 2 dc, 3 dc in next dc; rep from * to tch, dc in tch, turn.',
    ),
    counts: [21, 19, 17],
    findings: [{ row: 2, code: 'repeat-does-not-fit', saying: ['17 or 20'] }],
    source: practice,
  },
  {
    name: 'which of the skipped stitches',
    terms: 'us',
    text: lines(
      'Ch 22.',
      'Row 1: Dc in 4th ch from hook (beg ch counts as dc), *skip next 2 chs, dc in next ch, dc in 2nd skipped ch, dc in first skipped ch; rep from * across, turn.',
      'Row 2: Ch 3 (counts as dc), *skip next 2 dc, dc in next dc, dc in last skipped dc, dc in 1st skipped dc; rep from * to last st, dc in top of turning ch, turn.',
      'Row 3: Ch 3 (counts as dc), *sk next 2 dc, dc in next dc, dc in 2 skipped dc; rep from * across to tch, dc in tch.',
    ),
    counts: [22, 20, 20, 20],
    source: practice,
  },
  {
    name: 'missed stitches by number',
    terms: 'uk',
    text: lines(
      'Ch 25.',
      'Row 1: 1 dc in 2nd ch from hook and in each ch to end, turn.',
      'Row 2: 3 ch, *miss 3 dc, 1 tr in each of next 2 dc, 1 tr in third missed dc, tr in 2nd missed dc, 1 tr in first missed dc; rep from * to last 3 sts, tr in last 3 sts, turn.',
    ),
    counts: [25, 24, 24],
    source: practice,
  },
];
