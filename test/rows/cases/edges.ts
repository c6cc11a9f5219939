/**
 * Written rows: first rows of mesh and filet, where the chains before the first stitch are an edge stitch,
 * a space and skipped base. With turning height T (dc 3, tr 4) and the first stitch in the k-th chain, half
 * of k - 1 - T is the space and half the base under it.
 */
import { lines, type RowCase } from '../types.ts';

const mesh = 'common practice, no source: ch-2 mesh on a multiple of 3 plus 5, first dc in the 8th chain';

export const edges: readonly RowCase[] = [
  {
    name: 'ch-2 mesh, dc in 8th ch',
    terms: 'us',
    // 8 chains hold dc, sp, dc; (29 - 8) / 3 = 7 more: 9 dc, 8 spaces
    text: lines(
      'Ch 29.',
      'Row 1: Dc in 8th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across, turn. (9 dc, 8 ch-2 sps)',
    ),
    counts: [29, 9],
    spaces: [0, 8],
    byKind: [null, { dc: 9 }],
    source: mesh,
  },
  {
    name: 'ch-2 mesh, several sizes',
    terms: 'us',
    // (35 - 8) / 3 = 9, 10, 11 repeats: 11, 12, 13 dc; 10, 11, 12 spaces
    text: lines(
      'Ch 35 (38, 41).',
      'Row 1 (RS): Dc in 8th ch from hook, *ch 2, skip next 2 chs, dc in next ch; repeat from * across.',
    ),
    counts: [
      [35, 38, 41],
      [11, 12, 13],
    ],
    spaces: [
      [0, 0, 0],
      [10, 11, 12],
    ],
    source: mesh,
  },
  {
    name: 'ch-2 mesh, edge said in words',
    terms: 'us',
    // (23 - 8) / 3 = 5: 7 dc, 6 spaces
    text: lines(
      'Ch 23.',
      'Row 1: Dc in 8th ch from hook (skipped ch count as dc and ch-2 sp), [ch 2, sk next 2 ch, dc in next ch] 5 times.',
    ),
    counts: [23, 7],
    spaces: [0, 6],
    source: mesh,
  },
  {
    name: 'ch-1 mesh, dc in 6th ch',
    terms: 'us',
    // 6 chains hold dc, sp, dc; (20 - 6) / 2 = 7: 9 dc, 8 spaces
    text: lines(
      'Ch 20.',
      'Row 1: Dc in 6th ch from hook, *ch 1, sk next ch, dc in next ch; rep from * across. {8 ch-1 sps}',
    ),
    counts: [20, 9],
    spaces: [0, 8],
    source: 'common practice, no source',
  },
  {
    name: 'ch-3 mesh, dc in 10th ch',
    terms: 'us',
    // 10 - 1 - 3 = 6: space 3 over base 3; (30 - 10) / 4 = 5: 7 dc, 6 spaces
    text: lines(
      'Ch 30.',
      'Row 1: Dc in 10th ch from hook, *ch 3, sk 3 ch, dc in next ch; rep from * to end.',
    ),
    counts: [30, 7],
    spaces: [0, 6],
    source: 'common practice, no source',
  },
  {
    name: 'ch-1 mesh of tr, tr in 7th ch',
    terms: 'us',
    // 7 - 1 - 4 = 2: space 1 over base 1; (21 - 7) / 2 = 7: 9 tr, 8 spaces
    text: lines('Ch 21.', 'Row 1: Tr in 7th ch from hook, *ch 1, sk 1 ch, tr in next ch; rep from * across.'),
    counts: [21, 9],
    spaces: [0, 8],
    source: 'common practice, no source',
  },
  {
    name: 'ch-2 mesh of tr, tr in 9th ch',
    terms: 'us',
    // 9 - 1 - 4 = 4: space 2 over base 2; (30 - 9) / 3 = 7: 9 tr, 8 spaces
    text: lines(
      'Ch 30.',
      'Row 1: Tr in 9th ch from hook, *ch 2, sk 2 ch, tr in next ch; rep from * across. (9 tr)',
    ),
    counts: [30, 9],
    spaces: [0, 8],
    source: 'common practice, no source',
  },
  {
    name: 'solid row over ch-2 mesh has 3n + 1 dc',
    terms: 'us',
    // n = 8 spaces: 3 * 8 + 1 = 25
    text: lines(
      'Ch 29.',
      'Row 1: Dc in 8th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across.',
      'Row 2: Ch 3 (counts as dc), *2 dc in next ch-2 sp, dc in next dc; rep from * to last sp, 2 dc in last sp, dc in top of turning ch. (25 dc)',
    ),
    counts: [29, 9, 25],
    spaces: [0, 8, 0],
    byKind: [null, { dc: 9 }, { dc: 25 }],
    source: 'common practice, no source: a solid row over n spaces has 3n + 1 dc',
  },
  {
    name: 'mesh over a solid row goes back to n spaces',
    terms: 'us',
    // ch 5 is dc and space; 25 sts = 1 + 8 * 3; the repeat 7 times and the tail
    text: lines(
      'Ch 27.',
      'Row 1: Dc in 4th ch from hook and in each ch across. (25 dc)',
      'Row 2: Ch 5 (counts as dc and ch 2), sk next 2 dc, dc in next dc, *ch 2, sk 2 dc, dc in next dc; rep from * across. (9 dc, 8 ch-2 sps)',
    ),
    counts: [27, 25, 9],
    spaces: [0, 0, 8],
    source: 'common practice, no source',
  },
  {
    name: 'mesh, solid, mesh: rows alternate for good',
    terms: 'us',
    text: lines(
      'Ch 29.',
      'Row 1: Dc in 8th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across.',
      'Row 2: Ch 3 (counts as dc), *2 dc in next ch-2 sp, dc in next dc; rep from * to last sp, 2 dc in last sp, dc in top of turning ch.',
      'Row 3: Ch 5 (counts as dc and ch 2), sk first 3 dc, dc in next dc, *ch 2, sk 2 dc, dc in next dc; rep from * across.',
      'Row 4: Ch 3 (counts as dc), *2 dc in next ch-2 sp, dc in next dc; rep from * to last sp, 2 dc in last sp, dc in 3rd ch of turning ch.',
      'Rows 5-60: Rep Rows 3 and 4.',
    ),
    // the ch 5 stands over the first of the 3 skipped dc; rows 5 to 60 are 56 rows and end on Row 4
    counts: [29, 9, 25, 9, 25, 25],
    spaces: [0, 8, 0, 8, 0, 0],
    source: 'common practice, no source: rows alternate for good',
  },
  {
    name: 'ch-2 mesh, tr in 8th ch',
    terms: 'uk',
    text: lines(
      'Make 29 ch.',
      'Row 1: 1 tr in 8th ch from hook, *2 ch, miss 2 ch, 1 tr in next ch; rep from * to end, turn. (8 ch-sps, 9 tr)',
    ),
    counts: [29, 9],
    spaces: [0, 8],
    byKind: [null, { tr: 9 }],
    source: mesh,
  },
  {
    name: 'ch-1 mesh, tr in 6th ch',
    terms: 'uk',
    // (26 - 6) / 2 = 10: 12 tr, 11 spaces
    text: lines(
      'Ch 26.',
      'Row 1: Tr in 6th ch from hook, *ch 1, miss next ch, tr in next ch; rep from * to end.',
    ),
    counts: [26, 12],
    spaces: [0, 11],
    source: 'common practice, no source',
  },
  {
    name: 'ch-2 mesh of dtr, dtr in 9th ch',
    terms: 'uk',
    // (24 - 9) / 3 = 5: 7 dtr, 6 spaces
    text: lines(
      'Make 24 ch.',
      'Row 1: 1 dtr in 9th ch from hook, *2 ch, miss 2 ch, 1 dtr in next ch; rep from * to end.',
    ),
    counts: [24, 7],
    spaces: [0, 6],
    source: 'common practice, no source',
  },
  {
    name: 'ch-1 mesh of dtr, dtr in 7th ch',
    terms: 'uk',
    // (17 - 7) / 2 = 5: 7 dtr, 6 spaces
    text: lines(
      'Make 17 ch.',
      'Row 1: 1 dtr in 7th ch from hook, (1 ch, miss 1 ch, 1 dtr in next ch) 5 times.',
    ),
    counts: [17, 7],
    spaces: [0, 6],
    source: 'common practice, no source',
  },
  {
    name: 'solid row over ch-1 mesh has 2n + 1 tr',
    terms: 'uk',
    // (26 - 6) / 2 = 10: 11 spaces; 2 * 11 + 1 = 23
    text: lines(
      'Ch 26.',
      'Row 1: 1 tr in 6th ch from hook, *1 ch, miss 1 ch, 1 tr in next ch; rep from * to end, turn.',
      'Row 2: 3 ch (counts as 1 tr), *1 tr in next ch-sp, 1 tr in next tr; rep from * to last sp, 1 tr in last sp, 1 tr in top of turning ch, turn. (23 tr)',
    ),
    counts: [26, 12, 23],
    spaces: [0, 11, 0],
    source: 'common practice, no source',
  },
  {
    name: 'mesh on mesh, turning chain of 5',
    terms: 'uk',
    // 9 tr and 8 spaces stand over 9 tr and 8 spaces
    text: lines(
      'Make 29 ch.',
      'Row 1: 1 tr in 8th ch from hook, *2 ch, miss 2 ch, 1 tr in next ch; rep from * to end, turn.',
      'Row 2: 5 ch (counts as 1 tr and 2 ch), miss first tr, 1 tr in next tr, *2 ch, 1 tr in next tr; rep from * to last sp, 2 ch, 1 tr in top of turning ch, turn.',
    ),
    counts: [29, 9, 9],
    spaces: [0, 8, 8],
    byKind: [null, { tr: 9 }, { tr: 9 }],
    source: 'common practice, no source',
  },
  {
    name: 'ch-2 mesh of several sizes, hyphened list',
    terms: 'uk',
    // (26 - 8) / 3 = 6, 8, 10 repeats: 8, 10, 12 tr; 7, 9, 11 spaces
    text: lines(
      'Make 26 (32-38) ch.',
      'Row 1: 1 tr in 8th ch from hook, *2 ch, miss 2 ch, 1 tr in next ch; rep from * to end. 7 (9-11) sps.',
    ),
    counts: [
      [26, 32, 38],
      [8, 10, 12],
    ],
    spaces: [
      [0, 0, 0],
      [7, 9, 11],
    ],
    source: mesh,
  },
  {
    name: 'filet blocks and spaces on a first row',
    terms: 'us',
    // 3 + 3 chains at the hook: dc in 4th, next 2 and the base; block = 4 dc shared
    // dc in 4th ch: edge + 1, next 2: 4 dc on chains 3..6 of 33; then (ch 2, sk 2, dc) uses 3, (3 dc) uses 3
    // 33 - 6 = 27: *space 3, block 3* 4 times = 24, then a last space 3 = 27
    // dc: 4 + 4 * (1 + 3) + 1 = 21; spaces: 4 + 1 = 5
    text: lines(
      'Ch 33.',
      'Row 1: Dc in 4th ch from hook, dc in next 2 ch, *ch 2, sk 2 ch, dc in next ch, dc in next 3 ch; rep from * 3 times more, ch 2, sk 2 ch, dc in last ch.',
    ),
    counts: [33, 21],
    spaces: [0, 5],
    source: 'common practice, no source',
  },
];
