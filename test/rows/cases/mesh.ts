/**
 * Written rows: chain-spaces, mesh, filet and lace loops over rows that are already there.
 */
import { lines, type RowCase } from '../types.ts';

const practice = 'common practice, no source';

export const mesh: readonly RowCase[] = [
  {
    name: 'the last stitch goes into the chain after two more',
    terms: 'us',
    // 9 spaces between 10 dc; the skipped chains of row 1 are a dc and a space, and so is ch 5
    text: lines(
      'Ch 32.',
      'Row 1: Dc in 8th ch from hook, *ch 2, skip 2 ch, dc in next ch; repeat from * across, turn. (9 sps)',
      'Row 2: Ch 5 (counts as dc, ch 2), skip first dc, *dc in next dc, ch 2; rep from * to last sp, skip 2 ch, dc in next ch, turn. (10 dc)',
      'Row 3: Ch 5, skip first dc and 2 ch, *dc in next dc, ch 2, skip 2 ch; rep from * across to last st, dc in next ch. (10 dc)',
    ),
    counts: [32, 10, 10, 10],
    spaces: [0, 9, 9, 9],
    source: practice,
  },
  {
    name: 'loops of ch 5 and sc',
    terms: 'us',
    // 21 = 1 + 4 * 5: 6 sc, 5 loops
    text: lines(
      'Fsc 21.',
      'Row 1: Ch 1, sc in first st, *ch 5, sk 3 sts, sc in next st; rep from * across, turn. (6 sc, 5 ch-5 loops)',
    ),
    counts: [21, 6],
    spaces: [0, 5],
    source: practice,
  },
  {
    name: 'sc in every space of a mesh',
    terms: 'us',
    // 8 spaces of 2 sc + 9 dc = 25
    text: lines(
      'Ch 29.',
      'Row 1: Dc in 8th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across, turn.',
      'Row 2: Ch 1, sc in first dc, *2 sc in next ch-2 sp, sc in next dc; rep from * to last sp, 2 sc in last sp, sc in top of turning ch. (25 sc)',
    ),
    counts: [29, 9, 25],
    spaces: [0, 8, 0],
  },
  {
    name: 'each dc and each space, one phrase',
    terms: 'us',
    // 21 sts: 11 dc, 10 spaces; row 2: 11 + 10
    text: lines(
      'Fsc 21.',
      'Row 1: Ch 1, dc in first st, *ch 1, sk next st, dc in next st; rep from * across, turn. (11 dc)',
      'Row 2: Ch 1, sc in each dc and in each ch-1 sp across, turn. (21 sc)',
    ),
    counts: [21, 11, 21],
    spaces: [0, 10, 0],
  },
  {
    name: 'two in each space, one in each dc',
    terms: 'us',
    // 25 = 1 + 8 * 3: 9 dc, 8 spaces; row 2: 2 * 8 + 9
    text: lines(
      'Fsc 25.',
      'Row 1: Ch 1, dc in first st, *ch 2, sk 2 sts, dc in next st; rep from * across, turn.',
      'Row 2: Ch 1, 2 sc in each sp, 1 sc in each dc across, turn. (25 sc)',
    ),
    counts: [25, 9, 25],
    spaces: [0, 8, 0],
  },
  {
    name: 'mesh on mesh with a ch 5',
    terms: 'us',
    // 25 sts: 9 dc, 8 spaces; over again
    text: lines(
      'Fsc 25.',
      'Row 1: Ch 5 (counts as dc, ch 2), sk first 3 sts, dc in next st, *ch 2, sk 2 sts, dc in next st; rep from * across, turn. (9 dc, 8 ch-2 sps)',
      'Row 2: Ch 5 (counts as dc, ch 2), sk first dc, *dc in next dc, ch 2; rep from * to last sp, dc in 3rd ch of beg ch-5, turn. (9 dc, 8 ch-2 sps)',
    ),
    // row 2: ch 5 over dc 1, dc 2 to 8 each with ch 2 = 7, dc in the chain: 1 + 7 + 1 = 9; spaces 1 + 7 = 8
    counts: [25, 9, 9],
    spaces: [0, 8, 8],
    source: practice,
  },
  {
    name: 'filet: spaces turned to blocks',
    terms: 'us',
    // 9 dc, 8 spaces; row 2: dc 1, block over sp 1 … blocks over the first 4 spaces, spaces over the other 4
    // dc: 1 + 4 * 3 + 4 * 1 = 17; spaces 4
    text: lines(
      'Fsc 25.',
      'Row 1: Ch 2 (does not count as a st), dc in first st, *ch 2, sk 2 sts, dc in next st; rep from * across, turn. (9 dc, 8 sps)',
      'Row 2: Ch 2 (does not count as a st), dc in first dc, (2 dc in next ch-2 sp, dc in next dc) 4 times, (ch 2, dc in next dc) 4 times, turn. (17 dc, 4 sps)',
    ),
    counts: [25, 9, 17],
    spaces: [0, 8, 4],
    source: practice,
  },
  {
    name: 'filet: blocks turned to spaces',
    terms: 'us',
    // 25 dc; dc, (ch 2, sk 2, dc) 3 times = 10 sts, dc in next 6, (ch 2, sk 2, dc) 3 times = 9: 25 used
    // dc: 1 + 3 + 6 + 3 = 13; spaces 6
    text: lines(
      'Fsc 25.',
      'Row 1: Ch 2 (does not count as a st), dc in first st, [ch 2, sk next 2 sts, dc in next st] 3 times, dc in next 6 sts, [ch 2, sk next 2 sts, dc in next st] 3 times, turn.',
    ),
    counts: [25, 13],
    spaces: [0, 6],
  },
  {
    name: 'picking the space under the turning chain',
    terms: 'us',
    // row 1: ch 4 = dc + sp; 11 dc, 10 spaces; row 2: 2 sc in each of 10 spaces and 1 in the top
    text: lines(
      'Fsc 21.',
      'Row 1: Ch 4 (counts as dc, ch 1), sk first 2 sts, dc in next st, *ch 1, sk next st, dc in next st; rep from * across, turn. (11 dc, 10 ch-1 sps)',
      'Row 2: Ch 1, 2 sc in each ch-1 sp across, sc in 3rd ch of turning ch. (21 sc)',
    ),
    counts: [21, 11, 21],
    spaces: [0, 10, 0],
    // the first dc stays unworked, of which the row says nothing
    clean: false,
  },
  {
    name: 'into one chain of a space',
    terms: 'us',
    // 13 sts: 4 loops of ch 3 over 2 (1 + 4 * 3); row 2: sc, (sc in 2nd ch of next ch-3 sp, sc in next sc) 4 times = 9
    text: lines(
      'Fsc 13.',
      'Row 1: Ch 1, sc in first st, *ch 3, sk 2 sts, sc in next st; rep from * across, turn. (5 sc, 4 ch-3 sps)',
      'Row 2: Ch 1, sc in first sc, *sc in 2nd ch of next ch-3 sp, sc in next sc; rep from * across, turn. (9 sc)',
    ),
    counts: [13, 5, 9],
    spaces: [0, 4, 0],
  },
  {
    name: 'a chain bridge worked into stitch by stitch',
    terms: 'us',
    // 5 + ch 4 over 4 skipped + 11: row 2 works 5 + 4 + 11
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, sc in next 5 sts, ch 4, sk 4 sts, sc in next 11 sts, turn. (16 sc, 1 ch-4 sp)',
      'Row 2: Ch 1, sc in next 11 sts, sc in next 4 ch, sc in next 5 sts, turn. (20 sc)',
    ),
    counts: [20, 16, 20],
    spaces: [0, 1, 0],
  },
  {
    name: 'buttonhole filled from its space',
    terms: 'us',
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 1, sc in next 8 sts, ch 3, skip next 3 sts, sc in last 9 sts, turn.',
      'Row 2: Ch 1, sc in next 9 sts, 3 sc in next ch-3 sp, sc in last 8 sts, turn. (20 sc)',
    ),
    counts: [20, 17, 20],
    spaces: [0, 1, 0],
  },
  {
    name: 'loops in the round, slip stitches to the middle of the first',
    terms: 'us',
    // 24 / 3 = 8 loops; rnd 3: sc in each of 8 loops, ch 5 between
    text: lines(
      'Ch 24, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around; join with sl st in first sc. (24 sc)',
      'Rnd 2: Ch 1, sc in first sc, ch 5, *sk next 2 sc, sc in next sc, ch 5; rep from * to last 2 sc, sk last 2 sc; join with sl st in first sc. (8 ch-5 sps)',
      'Rnd 3: Sl st in next 3 ch, ch 1, sc in same sp, ch 5, *sc in next ch-5 sp, ch 5; rep from * around; join with sl st in first sc. (8 ch-5 sps)',
    ),
    // rnd 2: 1 + 7 sc over 24 = 1 + 7 * 3 + 2
    counts: [null, 24, 8, 8],
    spaces: [null, 0, 8, 8],
    source: practice,
  },
  {
    name: 'mesh by size',
    terms: 'us',
    // 1 + 3n: 25, 31, 37: 9, 11, 13 dc
    text: lines(
      'Fsc 25 (31, 37).',
      'Row 1: Ch 1, hdc in first st, *ch 2, sk 2 sts, hdc in next st; rep from * across, turn. 8 (10, 12) ch-2 sps.',
    ),
    counts: [
      [25, 31, 37],
      [9, 11, 13],
    ],
    spaces: [
      [0, 0, 0],
      [8, 10, 12],
    ],
  },
  {
    name: 'loops of 5 ch and dc',
    terms: 'uk',
    text: lines(
      'Make 22 ch.',
      'Row 1: 1 dc in 2nd ch from hook, *5 ch, miss 3 ch, 1 dc in next ch; rep from * to end, turn. (6 dc, 5 ch-sps)',
    ),
    // 1 + 4 * 5 = 21 worked chains
    counts: [22, 6],
    spaces: [0, 5],
    source: practice,
  },
  {
    name: 'dc in every loop',
    terms: 'uk',
    // row 2: 4 dc in each of 5 spaces = 20
    text: lines(
      'Make 22 ch.',
      'Row 1: 1 dc in 2nd ch from hook, *5 ch, miss 3 ch, 1 dc in next ch; rep from * to end, turn.',
      'Row 2: 1 ch, 4 dc in each 5ch-sp to end. (20 dc)',
    ),
    counts: [22, 6, 20],
    spaces: [0, 5, 0],
    // the dc at either side stay unworked, of which the row says nothing
    clean: false,
  },
  {
    name: 'each tr and each space',
    terms: 'uk',
    // 12 tr, 11 spaces: 23
    text: lines(
      'Ch 26.',
      'Row 1: 1 tr in 6th ch from hook, *1 ch, miss 1 ch, 1 tr in next ch; rep from * to end, turn. (12 tr, 11 ch-sps)',
      'Row 2: 1 ch, 1 dc in each tr and each ch-sp to end, 1 dc in top of turning ch, turn. (23 dc)',
    ),
    counts: [26, 12, 23],
    spaces: [0, 11, 0],
  },
  {
    name: 'filet: half blocks, half spaces',
    terms: 'uk',
    // 25 dc: 1 tr, (2 ch, miss 2, 1 tr) 4 times = 13 sts, 1 tr in each of next 12: 1 + 4 + 12 = 17, 4 spaces
    text: lines(
      'Make 26 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end. (25 dc)',
      'Row 2: 3 ch (counts as 1 tr), miss first dc, (2 ch, miss 2 dc, 1 tr in next dc) 4 times, 1 tr in each of next 12 dc, turn. (17 tr, 4 ch-sps)',
    ),
    counts: [26, 25, 17],
    spaces: [0, 0, 4],
    source: practice,
  },
  {
    name: 'buttonhole',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (20 dc)',
      'Row 2: 1 ch, 1 dc in each of next 8 dc, 2 ch, miss 2 dc, 1 dc in each of next 10 dc, turn.',
      'Row 3: 1 ch, 1 dc in each of next 10 dc, 2 dc in next 2ch-sp, 1 dc in each of last 8 dc, turn. (20 dc)',
    ),
    counts: [21, 20, 18, 20],
    spaces: [0, 0, 1, 0],
  },
  {
    name: 'mesh bag: last loop closed by tr',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 12 sc in magic ring; join. (12 sc)',
      'Rnd 2: *Ch 5, sk next sc, sc in next sc; rep from * 4 more times, ch 2, dc in joining sl st. (6 lps)',
    ),
    spaces: [null, 6],
  },
  {
    name: 'solid row over a mesh, the ending after the last space',
    terms: 'us',
    text: lines(
      'Ch 24.',
      'Row 1: Sc in 2nd ch from hook and each ch. (23 sc)',
      'Row 2: Ch 4 (counts as dc, ch 1), sk next st, dc in next st, *ch 1, sk 1, dc in next st; rep from * to within last 2 sts, ch 1, sk 1, dc in last st. (12 dc, 11 ch-1 sps)',
      'Row 3: Ch 1, sc in first dc, *sc in ch-1 sp, sc in next dc; rep from * ending with 1 sc in 3rd ch of turning ch. (23 sc)',
    ),
    // 12 dc and 11 spaces: the last pass is short by the dc that the turning chain is
    counts: [24, 23, 12, 23],
  },
  {
    name: 'last loop closed by a dc in the first chain',
    terms: 'us',
    text: lines(
      'Ch 10, join with sl st to form a ring.',
      'Rnd 1: Ch 3 (counts as dc), 15 dc in ring, ss to top of beg ch-3. (16 dc)',
      'Rnd 2: *Ch 5, sk 1, sc in next st; rep from * 6 more times, ch 2, dc in first ch to close the loop. (8 lps)',
    ),
    counts: [10, 16, null],
    spaces: [0, 0, 8],
  },
  {
    name: 'chains of the turning chain skipped, and worked into by name',
    terms: 'us',
    // 20 ch: 1 + 5 spaces; row 3: 1 + 4 * 3 + 2 + 1
    text: lines(
      'Ch 20.',
      'Row 1: Dc in 8th ch from hook, *ch 2, skip next 2 ch, dc in next ch; rep from * across, turn.',
      'Row 2: Ch 5, *dc in next dc, ch 2; rep from * to turning ch, skip 2 ch of turning ch, dc in next ch, turn.',
      'Row 3: Ch 3, *2 dc in next sp, dc in next dc; rep from * 3 more times, 2 dc in turning ch sp, dc in next ch of turning ch.',
    ),
    counts: [20, 6, 6, 16],
    spaces: [0, 5, 5, 0],
    source: 'common practice, no source',
  },
  {
    name: 'each stitch and space up to the last space',
    terms: 'us',
    // 11 dc and 10 spaces: all of them once
    text: lines(
      'Ch 24.',
      'Row 1: Dc in 6th ch from hook, *ch 1, sk next ch, dc in next ch; rep from * across, turn. (11 dc, 10 ch-1 sps)',
      'Row 2: Ch 1, sc in each dc and ch-1 sp to last sp, sc in last sp, sc in 3rd ch of ch-4, turn.',
    ),
    counts: [24, 11, 21],
    spaces: [0, 10, 0],
    source: 'common practice, no source',
  },
];
