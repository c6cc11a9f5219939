/**
 * Written rows: granny squares and other groups in spaces. Walking on to the next space passes the group
 * before it without a word, as published squares do.
 */
import { lines, type RowCase } from '../types.ts';

const practice = 'common practice, no source';

export const granny: readonly RowCase[] = [
  {
    name: 'the corner that the hook was brought to: corner and corner sp',
    terms: 'us',
    // 4 corners of 6 dc with a space, and 4 spaces between them
    text: lines(
      'Ch 4, join to form ring.',
      'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, [3 dc, ch 2] 3 times in ring, join.',
      'Rnd 2: Sl st to corner, ch 3, (2 dc, ch 2, 3 dc) in corner sp, [ch 1, (3 dc, ch 2, 3 dc) in next corner sp] 3 times, ch 1, join.',
    ),
    counts: [4, 12, 24],
    spaces: [0, 4, 8],
    source: 'common practice, no source',
  },
  {
    name: 'the corner that the hook was brought to: a space and corner',
    terms: 'us',
    // 4 corners of 6 dc with a space, and 4 spaces between them
    text: lines(
      'Ch 4, join to form ring.',
      'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, [3 dc, ch 2] 3 times in ring, join.',
      'Rnd 2: Sl st over to ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in corner, *ch 1, (3 dc, ch 2, 3 dc) in next corner; rep from * around, ch 1, join.',
    ),
    counts: [4, 12, 24],
    spaces: [0, 4, 8],
    source: 'common practice, no source',
  },
  {
    name: 'granny square, three rounds with ch 1 between groups',
    terms: 'us',
    // rnd 1: 4 groups of 3 = 12, 4 corner spaces
    // rnd 2: 8 groups = 24; 4 corners + 4 sides = 8 spaces
    // rnd 3: 4 corners of 2 groups + 4 sides of 1 = 12 groups = 36; 4 corners + 8 = 12 spaces
    text: lines(
      'Ch 4, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 3 (counts as dc throughout), 2 dc in ring, *ch 2, 3 dc in ring; rep from * 2 more times, ch 2; join with sl st in top of beg ch-3. (12 dc, 4 ch-2 sps)',
      'Rnd 2: Sl st in next 2 dc and in next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, *ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times, ch 1; join with sl st in top of beg ch-3. (24 dc)',
      'Rnd 3: Sl st in next 2 dc and in next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, *ch 1, 3 dc in next ch-1 sp, ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times, ch 1, 3 dc in next ch-1 sp, ch 1; join with sl st in top of beg ch-3. (36 dc)',
    ),
    counts: [null, 12, 24, 36],
    spaces: [null, 4, 8, 12],
    byKind: [null, { dc: 12 }, { dc: 24 }, { dc: 36 }],
    source: practice,
  },
  {
    name: 'granny square in a magic ring, bracketed groups',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, ch 2, [3 dc, ch 2] 3 times in ring, join with sl st in top of ch-3. (12 dc, 4 ch-2 sps)',
      'Rnd 2: Sl st to next ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp, ch 1, [(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1] 3 times, join with sl st in top of ch-3. (24 dc, 4 ch-2 sps, 4 ch-1 sps)',
    ),
    counts: [12, 24],
    spaces: [4, 8],
    source: practice,
  },
  {
    name: 'granny square, new colour attached in a corner',
    terms: 'us',
    text: lines(
      'Rnd 1: With A, ch 3 (counts as dc), 2 dc in magic ring, *ch 3, 3 dc in ring; rep from * twice more, ch 3; join with sl st in top of beg ch-3. Fasten off A.',
      'Rnd 2: Join B with sl st in any ch-3 sp, ch 3 (counts as dc), (2 dc, ch 3, 3 dc) in same sp, *(3 dc, ch 3, 3 dc) in next ch-3 sp; rep from * 2 more times; join with sl st in top of beg ch-3. (24 dc)',
    ),
    counts: [12, 24],
    spaces: [4, 4],
    source: practice,
  },
  {
    name: 'granny triangle',
    terms: 'us',
    // 3 corners: rnd 1 9 dc; rnd 2 18 dc, 3 + 3 spaces
    text: lines(
      'Ch 4, sl st in first ch to form ring.',
      'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, (ch 3, 3 dc in ring) twice, ch 3; join with sl st in top of beg ch-3. (9 dc)',
      'Rnd 2: Sl st in next 2 dc and in ch-3 sp, ch 3 (counts as dc), (2 dc, ch 3, 3 dc) in same sp, *ch 1, (3 dc, ch 3, 3 dc) in next ch-3 sp; rep from * once more, ch 1; join with sl st in top of beg ch-3. (18 dc)',
    ),
    counts: [null, 9, 18],
    spaces: [null, 3, 6],
    source: practice,
  },
  {
    name: 'border of sc round a granny square',
    terms: 'us',
    // rnd 2: 12 dc and 4 spaces; each dc 1 sc, each space (2 sc, ch 2, 2 sc): 12 + 16 = 28 sc, 4 spaces
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, *ch 2, 3 dc in ring; rep from * 2 more times, ch 2; join with sl st in top of beg ch-3. (12 dc)',
      'Rnd 2: Ch 1, *sc in next 3 sts, (2 sc, ch 2, 2 sc) in next ch-2 sp; rep from * around; join with sl st in first sc. (28 sc, 4 ch-2 sps)',
    ),
    counts: [12, 28],
    spaces: [4, 4],
  },
  {
    name: 'solid granny square',
    terms: 'us',
    // rnd 1: 12; rnd 2: each side 3 + corner 4 = 7 * 4 = 28
    text: lines(
      'Note: Ch 3 counts as dc.',
      'Rnd 1: Ch 3, 2 dc in magic ring, (ch 2, 3 dc in ring) 3 times, ch 2, join with sl st in top of ch-3. (12 dc)',
      'Rnd 2: Ch 3, dc in next 2 dc, *(2 dc, ch 2, 2 dc) in next ch-2 sp, dc in next 3 dc; rep from * 2 more times, (2 dc, ch 2, 2 dc) in last ch-2 sp, join with sl st in top of ch-3. (28 dc)',
    ),
    counts: [12, 28],
    spaces: [4, 4],
    byKind: [{ dc: 12 }, { dc: 28 }],
    source: practice,
  },
  {
    name: 'granny square, two rounds',
    terms: 'uk',
    text: lines(
      'Make 4 ch, join with ss to form a ring.',
      'Round 1: 3 ch (counts as 1 tr), 2 tr in ring, (2 ch, 3 tr in ring) 3 times, 2 ch, join with ss in top of 3 ch. (12 tr, 4 ch-sps)',
      'Round 2: Ss in each of next 2 tr and in next ch-sp, 3 ch (counts as 1 tr), (2 tr, 2 ch, 3 tr) in same ch-sp, *1 ch, (3 tr, 2 ch, 3 tr) in next ch-sp; rep from * twice more, 1 ch, join with ss in top of 3 ch. (24 tr)',
    ),
    counts: [null, 12, 24],
    spaces: [null, 4, 8],
    source: practice,
  },
  {
    name: 'granny stripes in rows',
    terms: 'uk',
    // base 20 dc = 2 + 3 * 6: 3 ch, miss 2 … groups of 3 in every third st
    // row 2: 3 ch + (miss 2, 3 tr in next) 6 times uses 18, 1 tr in last: 1 + 18 + 1 = 20
    text: lines(
      'Make 21 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (20 dc)',
      'Row 2: 3 ch (counts as 1 tr), miss first st, *miss 1 st, 3 tr in next st, miss 1 st; rep from * to last st, 1 tr in last st, turn. (20 tr)',
    ),
    counts: [21, 20, 20],
    source: practice,
  },
  {
    name: 'corner square of several sizes',
    terms: 'uk',
    // groups of 3, 4, 5
    text: lines(
      'Rnd 1: 3 ch (counts as 1 tr), 2 (3, 4) tr in magic ring, *2 ch, 3 (4, 5) tr in ring; rep from * twice more, 2 ch, join with ss in top of 3 ch. 12 (16, 20) tr.',
    ),
    counts: [[12, 16, 20]],
    spaces: [[4, 4, 4]],
  },
  {
    name: 'border of dc round a square',
    terms: 'uk',
    // 12 + 4 * 3 = 24
    text: lines(
      'Rnd 1: 3 ch (counts as 1 tr), 2 tr in magic ring, (2 ch, 3 tr in ring) 3 times, 2 ch, join with ss in top of 3 ch.',
      'Rnd 2: 1 ch, *1 dc in each of next 3 tr, 3 dc in next ch-sp; rep from * around, join with ss in first dc. (24 dc)',
    ),
    counts: [12, 24],
    spaces: [4, 0],
  },
  {
    name: 'an edging whose last pass ends within its own repeat',
    terms: 'us',
    // 36 dc and 8 ch-1 sps get one sc each, 4 corners two: 36 + 8 + 8 = 52
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, (ch 2, 3 dc in ring) 3 times, ch 2, join with sl st in top of ch-3.',
      'Rnd 2: Sl st in next 2 dc and in ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * around, join.',
      'Rnd 3: Sl st in next 2 dc and in ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, 3 dc in next ch-1 sp, ch 1, *(3 dc, ch 2, 3 dc) in next corner sp, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * 2 more times, join.',
      'Rnd 4: Ch 1, sc in same st as join, sc in next 2 dc, *(sc, ch 2, sc) in corner sp, sc in next 3 dc, [sc in ch-1 sp, sc in next 3 dc] twice; rep from * around, ending sc in last ch-1 sp; join.',
    ),
    counts: [12, 24, 36, 52],
    spaces: [4, 8, 12, 4],
    source: practice,
  },
  {
    name: 'going to the last space over others of its kind',
    terms: 'us',
    // 2 + 3 * (1 + 2) + 1 = 12; of 6 spaces 3 are used and the last: 2 are passed over
    text: lines(
      'Rnd 1: 12 sc in magic ring, join.',
      'Rnd 2: Ch 1, *sc in next 2 sts, ch 2; rep from * around, join. (12 sc, 6 ch-2 sps)',
      'Rnd 3: Ch 1, sc in first 2 sc, *sc in ch-2 sp, sc in next 2 sc; rep from * 2 more times, sc in last ch-2 sp; join.',
    ),
    counts: [12, 12, 12],
    spaces: [0, 6, 0],
    findings: [
      {
        row: 2,
        code: 'stitches-passed-over',
        words: 'in last ch-2 sp',
        severity: 'warning',
        saying: ['2 ch-2 sps'],
      },
    ],
  },
  {
    name: 'the space before a group, after a group, between groups of so many',
    terms: 'us',
    // rnd 2: 4 corners of 2 groups; rnd 3: 4 corners and a group in each of 4 sides; rnd 4: a side has two gaps
    text: lines(
      'Ch 4, sl st in first ch to form ring.',
      'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 1, (3 dc in ring, ch 1) 3 times, sl st in top of ch-3.',
      'Rnd 2: Sl st in next 2 dc and in next ch-1 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in space before next 3-dc group, ch 1; rep from * around, sl st in top of ch-3.',
      'Rnd 3: Sl st in next 2 dc and in next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, *3 dc in ch-1 sp before next group, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times, 3 dc in ch-1 sp after last group, sl st in top of ch-3.',
      'Rnd 4: Sl st in next 2 dc and in corner sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, *[3 dc in sp between 3-dc groups] twice, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times, [3 dc between next 2 groups of 3 dc] twice, join.',
    ),
    counts: [4, 12, 24, 36, 48],
    spaces: [0, 4, 8, 4, 4],
    source: practice,
  },
  {
    name: 'yarn joined with a stitch in a space, before or after its name, and a group without brackets',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 4, sl st in 4th ch from hook to form ring, ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times, sl st in top of ch-3. (12 dc, 4 ch-2 sps)',
      'Rnd 2: Join with standing dc in any ch-2 space, 2 dc, ch 2, 3 dc in same sp; *3 dc, ch 2, 3 dc in next ch-2 sp; repeat from * around; join to first dc. (24 dc)',
      'Rnd 3: Attach yarn in any ch-2 space with a standing dc, (2 dc, ch 2, 3 dc) in same sp, *3 dc between next 2 groups, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times, 3 dc between groups; join. (36 dc)',
    ),
    counts: [12, 24, 36],
    spaces: [4, 4, 4],
    source: practice,
  },
];
