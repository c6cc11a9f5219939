/**
 * Written rows: swatches in the manner of a stitch dictionary, most of them the whole of a pattern repeat.
 * Must not repeat a passage of another case file.
 */
import { dc, sc, uk, ukDc, ukTr, us } from '../swatch.ts';
import type { RowCase } from '../types.ts';

export const dictionary: readonly RowCase[] = [
  us(
    'half shells at the edges, then shells between them',
    // 28 = 4 + 3 + 3 * 6 + 3: 3 + 1 + 3 * 6 + 3; row 2: 1 + 4 * 6
    [
      'Ch 28.',
      'Row 1 (RS): 2 dc in 4th ch from hook, sk 2 ch, sc in next ch, *sk 2 ch, 5 dc in next ch, sk 2 ch, sc in next ch; rep from * to last 3 ch, sk 2 ch, 3 dc in last ch, turn. (25 sts)',
      'Row 2: Ch 1, sc in first dc, *sk 2 dc, 5 dc in next sc, sk 2 dc, sc in next dc; rep from * across, working last sc in top of turning ch, turn. (4 shells, 5 sc)',
    ],
    [28, 25, 25],
  ),
  us(
    'V of two dc and ch 2, told over and over',
    // 25 = 5 + 3 * 6 + 2
    [
      'Ch 25.',
      'Row 1: (Dc, ch 2, dc) in 5th ch from hook, *sk next 2 ch, (dc, ch 2, dc) in next ch; rep from * to last 2 ch, sk next ch, dc in last ch, turn.',
      'Row 2: Ch 3 (counts as dc), *(dc, ch 2, dc) in next ch-2 sp; rep from * across, dc in top of tch, turn. (16 dc, 7 ch-2 sps)',
    ],
    [25, 16, 16],
    { spaces: [0, 7, 7] },
  ),
  us(
    'ripple of 12 plus 3 with pairs in the peaks',
    // 39 = 4 + 12 * 2 + 11: 2 + 24 + 10; row 2: 1 + 12 + 12 + 11 = 36
    [
      'Ch 39.',
      'Row 1: Dc in 4th ch from hook, *dc in each of next 3 ch, (dc2tog over next 2 ch) twice, dc in each of next 3 ch, 2 dc in each of next 2 ch; rep from * to last 11 ch, dc in each of next 3 ch, (dc2tog over next 2 ch) twice, dc in each of next 3 ch, 2 dc in last ch, turn. (36 dc)',
      'Row 2: Ch 3 (counts as dc), dc in first st, *dc in each of next 3 sts, (dc2tog over next 2 sts) twice, dc in each of next 3 sts, 2 dc in each of next 2 sts; rep from *, ending last rep with 2 dc in top of tch, turn. (36 dc)',
    ],
    [39, 36, 36],
  ),
  us(
    'mesh set off by half a space',
    // 22 - 6 = 16 = 8 * 2: 10 dc, 9 sps; row 2: 1 + 9 + 1
    [
      'Ch 22.',
      'Row 1: Dc in 6th ch from hook, *ch 1, sk 1 ch, dc in next ch; rep from * across, turn. (9 ch-1 sps)',
      'Row 2: Ch 3 (counts as dc), dc in first ch-1 sp, *ch 1, dc in next ch-1 sp; rep from * across, dc in 4th of 5 skipped ch, turn. (11 dc, 8 ch-1 sps)',
    ],
    [22, 10, 11],
    { spaces: [0, 9, 8] },
  ),
  us(
    'lacets and bars',
    // 25 = 1 + 4 * 6
    [
      ...dc(25),
      'Row 2: Ch 6 (counts as dc and ch 3), sk next 2 dc, sc in next dc, ch 3, sk next 2 dc, dc in next dc, *ch 3, sk next 2 dc, sc in next dc, ch 3, sk next 2 dc, dc in next dc; rep from * across, turn. (5 dc, 4 sc)',
      'Row 3: Ch 8 (counts as dc and ch 5), sk next sc, dc in next dc, *ch 5, sk next sc, dc in next dc; rep from * across, working last dc in 3rd ch of beg ch-6, turn. (4 ch-5 sps)',
      'Row 4: Ch 3 (counts as dc), *dc in next 5 ch, dc in next dc; rep from * across, working last dc in 3rd ch of beg ch-8, turn. (25 dc)',
    ],
    [27, 25, 9, 5, 25],
    { spaces: [0, 0, 8, 4, 0] },
  ),
  us(
    'clusters between chains, filled again',
    // 21 = 2 + 2 * 9 + 1
    [
      'Cl: (Yo, insert hook in st, yo and pull up a lp, yo and draw through 2 lps) 3 times in same st, yo and draw through all 4 lps on hook.',
      ...sc(21),
      'Row 2: Ch 4 (counts as dc and ch 1), sk next st, *cl in next st, ch 1, sk next st; rep from * to last st, dc in last st, turn. (9 cl, 2 dc, 10 ch-1 sps)',
      'Row 3: Ch 3 (counts as dc), dc in next ch-1 sp, *dc in next cl, dc in next ch-1 sp; rep from * across, dc in 3rd ch of beg ch-4, turn. (21 dc)',
    ],
    [22, 21, 11, 21],
    { spaces: [0, 0, 10, 0] },
  ),
  us(
    'crossed pairs between edge stitches',
    [
      ...sc(20),
      'Row 2: Ch 3 (counts as dc), *sk next st, dc in next st, dc in skipped st; rep from * to last st, dc in last st, turn. (9 crossed pairs)',
      'Row 3: Ch 1, sc in each st across, turn. (20 sc)',
    ],
    [21, 20, 20, 20],
  ),
  us(
    'cables of four raised trebles',
    // 22 = 1 + 2 + 3 * 6 + 1
    [
      ...dc(22),
      'Row 2 (WS): Ch 1, sc in each st across, turn. (22 sc)',
      'Row 3: Ch 3 (counts as dc), dc in next 2 sts, *sk next 2 sts, FPtr around each of next 2 sts 2 rows below, working in front of last 2 sts made, FPtr around each of 2 skipped sts 2 rows below, dc in next 2 sts; rep from * to last st, dc in last st, turn. (22 sts)',
    ],
    [24, 22, 22, 22],
  ),
  us(
    'raised stitches on every second, the stitch behind passed',
    // 17 = 1 + 2 * 8
    [
      ...dc(17),
      'Row 2: Ch 1, sc in each st across, turn. (17 sc)',
      'Row 3: Ch 1, sc in first st, *FPdc around next dc 2 rows below, sk next sc on current row, sc in next sc; rep from * across, turn. (9 sc, 8 FPdc)',
    ],
    [19, 17, 17, 17],
    { byKind: [null, null, null, { sc: 9, FPdc: 8 }] },
  ),
  us(
    'basketweave of fours with an edge stitch',
    // 22 = 1 + 8 * 2 + 4 + 1
    [
      ...dc(22),
      'Row 2: Ch 3 (counts as dc here and throughout), *FPdc around each of next 4 sts, BPdc around each of next 4 sts; rep from * to last 5 sts, FPdc around each of next 4 sts, dc in top of tch, turn. (22 sts)',
      'Row 3: Ch 3, *BPdc around each of next 4 sts, FPdc around each of next 4 sts; rep from * to last 5 sts, BPdc around each of next 4 sts, dc in last st, turn.',
      'Rows 4 and 5: Rep Rows 2 and 3.',
      'Row 6: Rep Row 3.',
    ],
    { final: 22 },
  ),
  us(
    'seed of sc and dc, even',
    [
      ...sc(20),
      'Row 2: Ch 1, *sc in next st, dc in next st; rep from * across, turn. (10 sc, 10 dc)',
      'Row 3: Ch 1, *sc in next dc, dc in next sc; rep from * across, turn.',
    ],
    [21, 20, 20, 20],
  ),
  us(
    'slip stitch and half double by turns',
    [
      ...sc(20),
      'Row 2: Ch 1, *sl st in next st, hdc in next st; rep from * across, turn. (20 sts)',
      'Row 3: Ch 1, *sl st in next hdc, hdc in next sl st; rep from * across, turn. (20 sts)',
    ],
    [21, 20, 20, 20],
  ),
  us(
    'picot trellis',
    // 25 = 1 + 4 * 5 + 4; row 3: 1 + 6 * 2 + 1
    [
      ...sc(25),
      'Row 2: Ch 1, sc in first st, *ch 5, sk next 3 sts, (sc, ch 3, sc) in next st; rep from * to last 4 sts, ch 5, sk next 3 sts, sc in last st, turn.',
      'Row 3: Ch 5 (counts as dc and ch 2), (sc, ch 3, sc) in next ch-5 sp, *ch 5, (sc, ch 3, sc) in next ch-5 sp; rep from * across, ch 2, dc in last sc, turn.',
    ],
    [26, 25, 12, 14],
  ),
  us(
    'open fans and Vs over them',
    // 26 = 2 + 8 * 3: 1 + 3 * 6; row 2: 2 + 3 * 3
    [
      'Ch 26.',
      'Row 1 (RS): Sc in 2nd ch from hook, *sk next 3 ch, (dc, [ch 1, dc] 4 times) in next ch, sk next 3 ch, sc in next ch; rep from * across, turn. (3 fans)',
      'Row 2: Ch 4 (counts as dc and ch 1), dc in first sc, *ch 2, sc in center dc of next fan, ch 2, (dc, ch 1, dc) in next sc; rep from * across, turn.',
    ],
    [26, 19, 11],
    { spaces: [0, 12, 10] },
  ),
  us(
    'bobbles on the wrong side by their abbreviation',
    // 25 = 3 + 6 * 3 + 4
    [
      'MB (make bobble): *Yo, insert hook in st, yo, pull up lp, yo, pull through 2 lps; rep from * 4 more times in same st, yo, pull through all 6 lps on hook.',
      ...sc(25),
      'Row 2 (WS): Ch 1, sc in first 3 sts, *MB in next st, sc in next 5 sts; rep from * to last 4 sts, MB in next st, sc in last 3 sts, turn. (4 bobbles)',
      'Row 3: Ch 1, sc in each st across, turn. (25 sc)',
    ],
    [26, 25, 25, 25],
    { byKind: [null, null, { sc: 21 }, { sc: 25 }], units: [null, null, { MB: 4 }, null] },
  ),
  us(
    'wheels of ten plus six',
    // 37 = 3 + 10 * 3 + 4: 2 + 30 + 4; row 2: 2 + 3 * 4 + 1; row 3: 4 + 3 * 10 + 2
    [
      'CL: Work 1 dc over each of the number of sts given, leaving last lp of each on hook, yo and draw through all lps on hook.',
      'Ch 37.',
      'Row 1 (WS): Sc in 2nd ch from hook, sc in next ch, *sk 3 ch, 7 dc in next ch, sk 3 ch, sc in each of next 3 ch; rep from * to last 4 ch, sk 3 ch, 4 dc in last ch, turn. (36 sts)',
      'Row 2: Ch 1, sc in each of first 2 sts, *ch 3, CL over next 7 sts, ch 3, sc in each of next 3 sts; rep from * to last 4 sts, ch 3, CL over last 4 sts, turn.',
      'Row 3: Ch 3 (counts as dc), 3 dc in first CL, *sk ch-3 sp, sc in each of next 3 sc, sk ch-3 sp, 7 dc in top of next CL; rep from * to last 2 sc, sc in each of last 2 sc, turn. (36 sts)',
    ],
    [37, 36, 15, 36],
    { spaces: [0, 0, 7, 0] },
  ),
  us(
    'sedge of three in one',
    // 23 = 2 + 3 * 6 + 3: 2 + 18 + 1; row 2: 1 + 3 * 6 + 2
    [
      'Ch 23.',
      'Row 1: (Hdc, dc) in 2nd ch from hook, *sk next 2 ch, (sc, hdc, dc) in next ch; rep from * to last 3 ch, sk next 2 ch, sc in last ch, turn. (21 sts)',
      'Row 2: Ch 1, (hdc, dc) in first sc, *sk next 2 sts, (sc, hdc, dc) in next sc; rep from * to last 2 sts, sk next st, sc in last st, turn. (21 sts)',
    ],
    [23, 21, 21],
  ),
  us(
    'sedge of three whose tail asks for one too many',
    // 1 + 3n + 3 = 21 has no n; 19 and 22 have
    [
      'Ch 23.',
      'Row 1: (Hdc, dc) in 2nd ch from hook, *sk next 2 ch, (sc, hdc, dc) in next ch; rep from * to last 3 ch, sk next 2 ch, sc in last ch, turn. (21 sts)',
      'Row 2: Ch 1, (hdc, dc) in first sc, *sk next 2 sts, (sc, hdc, dc) in next st; rep from * to last 3 sts, sk next 2 sts, sc in last st, turn.',
    ],
    [23, 21, null],
    {
      findings: [
        {
          row: 2,
          code: 'repeat-does-not-fit',
          words: 'rep from * to last 3 sts',
          saying: ['19', '22', '21'],
        },
      ],
    },
  ),
  us(
    'sc and dc in every second stitch',
    // 21 = 1 + 2 * 9 + 2
    [
      ...sc(21),
      'Row 2: Ch 1, (sc, dc) in first st, *sk next st, (sc, dc) in next st; rep from * to last 2 sts, sk next st, sc in last st, turn. (21 sts)',
    ],
    [22, 21, 21],
    { byKind: [null, null, { sc: 11, dc: 10 }] },
  ),
  us(
    'small Vs of sc and groups over them',
    // 24 = 3 + 3 * 6 + 3: 1 + 14 + 1; 2 + 21; 1 + 14 + 1
    [
      'Ch 24.',
      'Row 1: Sc in 2nd ch from hook, sk next ch, *(sc, ch 2, sc) in next ch, sk next 2 ch; rep from * to last 3 ch, (sc, ch 2, sc) in next ch, sk next ch, sc in last ch, turn. (7 ch-2 sps)',
      'Row 2: Ch 3 (counts as dc), 3 dc in each ch-2 sp across, dc in last sc, turn. (23 dc)',
      'Row 3: Ch 1, sc in first dc, *(sc, ch 2, sc) in center dc of next 3-dc group; rep from * across, sc in top of tch, turn. (7 ch-2 sps)',
    ],
    [24, 16, 23, 16],
    { spaces: [0, 7, 0, 7] },
  ),
  us(
    'arches of seven over five',
    // 19 = 3 + 8 * 2; 2 + 2 * 2 + 1
    [
      ...sc(19),
      'Row 2: Ch 1, sc in first 3 sts, *ch 7, sk next 5 sts, sc in next 3 sts; rep from * across, turn. (2 arches)',
      'Row 3: Ch 1, sc in first 2 sc, *ch 3, sk next sc, sc in next ch-7 loop, ch 3, sk next sc, sc in next sc; rep from * once more, sc in last sc, turn. (7 sc, 4 ch-3 sps)',
    ],
    [20, 19, 9, 7],
    { spaces: [0, 0, 2, 4] },
  ),
  us(
    'shells on a count that is not theirs',
    // 1 + 4n: 24 leaves 3; 21 and 25 fit
    [
      ...sc(24),
      'Row 2: Ch 1, sc in first st, *sk next st, 3 dc in next st, sk next st, sc in next st; rep from * across, turn.',
    ],
    [25, 24, null],
    {
      findings: [
        { row: 2, code: 'repeat-does-not-fit', words: 'rep from * across', saying: ['3', '21', '25'] },
      ],
    },
  ),
  us(
    'shells counted one too many',
    [
      'Ch 32.',
      'Row 1: Sc in 2nd ch from hook, *sk next 2 ch, 5 dc in next ch, sk next 2 ch, sc in next ch; rep from * across, turn. (6 shells, 6 sc)',
    ],
    // 31 = 1 + 6 * 5
    [32, 31],
    { findings: [{ row: 1, code: 'stated-count-wrong', words: '6 shells', saying: ['6', '5'] }] },
  ),
  us(
    'long trebles down into the row that was skipped',
    // 23 = 3 + 4 * 5: 18 dc; 18 sc and 5 tr
    [
      ...sc(23),
      'Row 2: Ch 3 (counts as dc), dc in next 2 sts, *ch 1, sk next st, dc in next 3 sts; rep from * across, turn. (18 dc, 5 ch-1 sps)',
      'Row 3: Ch 1, sc in first 3 dc, *working over ch-1 sp, tr in skipped st 2 rows below, sc in next 3 dc; rep from * across, turn. (18 sc, 5 tr)',
    ],
    [24, 23, 18, 23],
    { spaces: [0, 0, 5, 0], byKind: [null, null, null, { sc: 18, tr: 5 }] },
  ),
  us(
    'spike stitches every third',
    // 22 = 1 + 3 * 7
    [
      'Spike st: Insert hook in st 2 rows below, pull up a lp to height of row, yo and pull through both lps on hook.',
      ...sc(22),
      'Rows 2 and 3: Ch 1, sc in each st across, turn.',
      'Row 4: Ch 1, sc in first st, *spike st in next st, sc in next 2 sts; rep from * across, turn. (22 sts)',
    ],
    { final: 22 },
  ),
  us(
    'chain and sc in a bracket across',
    [
      ...sc(21),
      'Row 2: Ch 1, sc in first st, (ch 1, sk next st, sc in next st) across, turn. (11 sc, 10 ch-1 sps)',
      'Row 3: Ch 1, sc in first st, (sc in next ch-1 sp, ch 1, sk next sc) across to last 2 sts, sc in next ch-1 sp, sc in last sc, turn.',
    ],
    [22, 21, 11, 12],
    { spaces: [0, 0, 10, 9] },
  ),
  // UK
  uk(
    'fans of seven half set off',
    // 29 = 1 + 8 * 3 + 4: 1 + 3 * 8 + 4
    [
      ...ukDc(29),
      '2nd row: 1ch, 1dc in 1st dc, *miss 3dc, 7tr in next dc, miss 3dc, 1dc in next dc; rep from * to last 4dc, miss 3dc, 4tr in last dc, turn.',
      '3rd row: 1ch, 1dc in 1st tr, *miss 3tr, 7tr in next dc, miss 3tr, 1dc in next tr; rep from * to end, miss 3tr, 4tr in last dc, turn.',
    ],
    [30, 29, 29, 29],
  ),
  uk(
    'grouped trebles, two ch between',
    // 26 = 1 + 3 * 8 + 1: 2 + 16 + ... pairs in each third
    [
      ...ukDc(26),
      '2nd row: 3ch (counts as 1tr), *miss 2dc, 2tr in next dc, 1ch; rep from * to last dc, 1tr in last dc, turn. [8 pairs]',
      '3rd row: 3ch, *2tr in next 1ch-sp, 1ch; rep from * to end, 1tr in top of 3ch, turn. [8 pairs]',
    ],
    [27, 26, 18, 18],
    { spaces: [0, 0, 8, 8] },
  ),
  uk(
    'wattle: three in one, miss two',
    // 23 = 3 used first; 2 + 3n + 3
    [
      'Make 24ch.',
      '1st row: Miss 2ch (count as 1dc), *(1dc, 1ch, 1tr) in next ch, miss 2ch; rep from * to last ch, 1dc in last ch, turn. [7 groups]',
      '2nd row: 1ch (counts as 1dc), miss 1st dc and next tr, *(1dc, 1ch, 1tr) in next 1ch-sp, miss 1dc and 1tr; rep from * to last 1ch-sp, (1dc, 1ch, 1tr) in last 1ch-sp, miss next dc, 1dc in top of turning ch, turn. [7 groups]',
    ],
    // 24 - 2 = 22 = 3 * 7 + 1: 1 + 14 + 1
    [24, 16, 16],
    { spaces: [0, 7, 7] },
  ),
  uk(
    'bobbles set off, 4 plus 1',
    // 21 = 2 + 4 * 4 + 3
    [
      'MB: 5tr in next st, leaving last loop of each on hook, yoh and draw through all 6 loops.',
      ...ukDc(21),
      '2nd row (WS): 1ch, 1dc in each of first 2 sts, *MB, 1dc in each of next 3 sts; rep from * to last 3 sts, MB, 1dc in each of last 2 sts, turn. [5 bobbles]',
      '3rd row: 1ch, 1dc in each st to end, turn. [21 sts]',
      '4th row: 1ch, 1dc in each of first 4 sts, *MB, 1dc in each of next 3 sts; rep from * to last st, 1dc in last st, turn. [4 bobbles]',
    ],
    [22, 21, 21, 21, 21],
    { units: [null, null, { MB: 5 }, null, { MB: 4 }] },
  ),
  uk(
    'relief rib, edge trebles worked in the top',
    // 21
    [
      ...ukTr(21),
      '2nd row: 3ch (counts as 1tr), *1rtrf round next tr, 1rtrb round next tr; rep from * to last st, 1tr in top of tch, turn. [21 sts]',
      '3rd row: 3ch, 1rtrf round each rtrf and 1rtrb round each rtrb to last st, 1tr in top of 3ch, turn.',
    ],
    // 1 + 2n + 1 = 21 has no n: 19 stitches between the edges are odd
    [23, 21, null, null],
    {
      findings: [
        { row: 2, code: 'repeat-does-not-fit', words: 'rep from * to last st', saying: ['20', '22'] },
      ],
    },
  ),
  uk(
    'tulip lace: chain loops and blocks of 3',
    // 31 = 1 + 6 * 5: row 2: 1 + 5; row 3: 3tr in each loop
    [
      ...ukDc(31),
      '2nd row: 1ch, 1dc in 1st dc, *5ch, miss 5dc, 1dc in next dc; rep from * to end, turn. [5 loops]',
      '3rd row: 3ch (counts as 1tr), *3tr in next 5ch-loop, 1tr in next dc; rep from * to end, turn. [21 tr]',
    ],
    [32, 31, 6, 21],
    { spaces: [0, 0, 5, 0] },
  ),
  uk(
    'extended double crochet told in full',
    [
      'Make 21ch.',
      'Row 1: 1 extended double crochet in 3rd ch from hook and in each ch to end, turn. [20 sts]',
      'Row 2: 2ch (counts as 1 exdc), miss first st, 1 exdc in each st to end, 1 exdc in top of tch, turn. [20 sts]',
    ],
    [21, 20, 20],
  ),
  uk(
    'trebles and chains at both edges',
    // 23: 4ch = tr + 1; miss 1; 1 + 2 * 10 ... 12 tr, 11 sps
    [
      ...ukTr(23),
      'Row 2: 4ch (counts as 1tr and 1ch), miss first 2 tr, 1tr in next tr, *1ch, miss 1tr, 1tr in next tr; rep from * to end, working last tr in top of tch, turn. [12 tr, 11 1ch-sps]',
      'Row 3: 3ch (counts as 1tr), 1tr in first 1ch-sp, 1tr in next tr, *1tr in next 1ch-sp, 1tr in next tr; rep from * to end, working last tr in 3rd of 4ch, turn. [23 tr]',
    ],
    [25, 23, 12, 23],
    { spaces: [0, 0, 11, 0] },
  ),
  us(
    'three together that begin in the same stitch',
    // 21: 1, 10 of them, 1 in the stitch of the last leg
    [
      ...sc(21),
      'Row 2: Ch 1, sc in first st, *sc3tog beginning in same st as last st, ch 1; rep from * across, sc in same st as last leg, turn.',
    ],
    [22, 21, 12],
    { spaces: [0, 0, 10] },
  ),
];
