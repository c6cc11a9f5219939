/**
 * Written rows: joined rounds. The flat circle of a stitch starts with its number and adds it every round:
 * round r has start * r stitches.
 */
import { lines, type RowCase } from '../types.ts';

const circle = 'published flat circle numbers (sc 6, hdc 8, dc 12), resources stitch geometry';

export const rounds: readonly RowCase[] = [
  {
    name: 'flat circle of sc, 6 a round',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring; join with sl st in first sc. (6 sc)',
      'Rnd 2: Ch 1, 2 sc in each st around; join with sl st in first sc. (12 sc)',
      'Rnd 3: Ch 1, *sc in next st, 2 sc in next st; rep from * around; join. (18 sc)',
      'Rnd 4: Ch 1, *sc in next 2 sts, 2 sc in next st; rep from * around; join. (24 sc)',
      'Rnd 5: Ch 1, *sc in next 3 sts, 2 sc in next st; rep from * around; join. (30 sc)',
    ),
    counts: [6, 12, 18, 24, 30],
    byKind: [null, null, null, null, { sc: 30 }],
    source: circle,
  },
  {
    name: 'flat circle of hdc, 8 a round, ch 1 not counted',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1 (does not count as a st throughout), 8 hdc in magic ring, sl st in first hdc to join. (8 hdc)',
      'Rnd 2: Ch 1, 2 hdc in each st around, sl st in first hdc to join. (16 hdc)',
      'Rnd 3: Ch 1, (hdc in next st, 2 hdc in next st) around, sl st in first hdc to join. (24 hdc)',
      'Rnd 4: Ch 1, (hdc in next 2 sts, 2 hdc in next st) 8 times, sl st in first hdc to join. (32 hdc)',
    ),
    counts: [8, 16, 24, 32],
    source: circle,
  },
  {
    name: 'flat circle of dc, 12 a round, ch 3 counted',
    terms: 'us',
    // rnd 2: ch 3 and dc in the same st, 2 in each of 11 = 24; rnd 3: ch 3, 2 in next, 11 * 3 = 36
    // rnd 4: ch 3, 1, 2, then 11 * 4 = 48
    text: lines(
      'Rnd 1: Ch 3 (counts as first dc here and throughout), 11 dc in magic ring; join with sl st in top of beg ch-3. (12 dc)',
      'Rnd 2: Ch 3, dc in same st, 2 dc in each dc around; join with sl st in top of beg ch-3. (24 dc)',
      'Rnd 3: Ch 3, 2 dc in next st, *dc in next st, 2 dc in next st; rep from * around; join with sl st in top of beg ch-3. (36 dc)',
      'Rnd 4: Ch 3, dc in next st, 2 dc in next st, *dc in next 2 sts, 2 dc in next st; rep from * around; join with sl st in top of beg ch-3. (48 dc)',
    ),
    counts: [12, 24, 36, 48],
    byKind: [{ dc: 12 }, { dc: 24 }, { dc: 36 }, { dc: 48 }],
    source: circle,
  },
  {
    name: 'flat circle of dc, chain not counted',
    terms: 'us',
    text: lines(
      'Note: Beg ch-2 does not count as a stitch.',
      'Rnd 1: Ch 2, 12 dc in magic ring, join with sl st in first dc. (12)',
      'Rnd 2: Ch 2, 2 dc in each st around, join with sl st in first dc. (24)',
      'Rnd 3: Ch 2, [dc in next st, 2 dc in next st] 12 times, join with sl st in first dc. (36)',
    ),
    counts: [12, 24, 36],
    byKind: [{ dc: 12 }, { dc: 24 }, { dc: 36 }],
    source: circle,
  },
  {
    name: 'even rounds of sc on a chain ring of stitches',
    terms: 'us',
    text: lines(
      'Ch 40; being careful not to twist, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around; join with sl st in first sc. (40 sc)',
      'Rnd 2: Ch 1, sc in same st as join and in each st around; join with sl st in first sc. (40 sc)',
    ),
    counts: [null, 40, 40],
  },
  {
    name: 'joined round turned at its end',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 10 sc in magic ring; join with sl st in first sc, turn. (10)',
      'Rnd 2: Ch 1, 2 sc in each sc around; join with sl st in first sc, turn. (20)',
      'Rnd 3: Ch 1, sc in each sc around; join with sl st in first sc. (20)',
    ),
    counts: [10, 20, 20],
  },
  {
    name: 'dc even round over a counted chain',
    terms: 'us',
    text: lines(
      'Ch 4, join with sl st to form a ring.',
      'Rnd 1: Ch 3 (counts as dc), 15 dc in ring; join with sl st in 3rd ch of beg ch-3. (16 dc)',
      'Rnd 2: Ch 3 (counts as dc), dc in next dc and in each dc around; join with sl st in 3rd ch of beg ch-3. (16 dc)',
    ),
    counts: [null, 16, 16],
  },
  {
    name: 'wheel: dc and ch 1 around',
    terms: 'us',
    // ch 4 = dc + space; 11 more: 12 dc, 12 spaces; next round 2 sc a space
    text: lines(
      'Ch 6, join with sl st to form ring.',
      'Rnd 1: Ch 4 (counts as dc, ch 1), (dc, ch 1) 11 times in ring; join with sl st in 3rd ch of beg ch-4. (12 dc, 12 ch-1 sps)',
      'Rnd 2: Sl st in first ch-1 sp, ch 1, 3 sc in same sp, 3 sc in each ch-1 sp around; join with sl st in first sc. (36 sc)',
    ),
    counts: [null, 12, 36],
    spaces: [null, 12, 0],
    source: 'common practice, no source',
  },
  {
    name: 'decrease rounds',
    terms: 'us',
    // 24 → 18 → 12 → 6
    text: lines(
      'Ch 24, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around; join. (24)',
      'Rnd 2: Ch 1, *sc in next 2 sts, sc2tog; rep from * around; join. (18)',
      'Rnd 3: Ch 1, *sc in next st, sc2tog; rep from * around; join. (12)',
      'Rnd 4: Ch 1, (sc2tog) 6 times; join. Fasten off. (6)',
    ),
    counts: [null, 24, 18, 12, 6],
    byKind: [null, null, { sc: 12, sc2tog: 6 }, { sc: 6, sc2tog: 6 }, { sc2tog: 6 }],
  },
  {
    name: 'decrease spread evenly, said in words',
    terms: 'us',
    text: lines(
      'Ch 36, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around; join. (36 sc)',
      'Rnd 2: Ch 1, sc in each st around, dec 6 sts evenly around; join. (30 sc)',
    ),
    counts: [null, 36, 30],
  },
  {
    name: 'hat crown by size',
    terms: 'us',
    // 8 * 3; then (2 + 1) * 8 = 32 … sizes 2 and 3 go on: 24 / 24 / 24, then 32
    text: lines(
      'Sizes: Baby (Child, Adult)',
      'Rnd 1: Ch 1, 8 (9, 10) hdc in magic ring; join with sl st in first hdc. 8 (9, 10) hdc',
      'Rnd 2: Ch 1, 2 hdc in each st around; join with sl st in first hdc. 16 (18, 20) hdc',
      'Rnd 3: Ch 1, *hdc in next st, 2 hdc in next st; rep from * around; join with sl st in first hdc. 24 (27, 30) hdc',
      'Rnd 4: Ch 1, *hdc in next 2 sts, 2 hdc in next st; rep from * around; join with sl st in first hdc. 32 (36, 40) hdc',
    ),
    counts: [
      [8, 9, 10],
      [16, 18, 20],
      [24, 27, 30],
      [32, 36, 40],
    ],
  },
  {
    name: 'hexagon: 6 corners of 2 a round',
    terms: 'us',
    // rnd 1: 12; rnd 2: 6 * (1 + 3) = 24; rnd 3: ch 3, 1 then … 6 * (3 + 3) = 36 with the chain as first dc
    text: lines(
      'Rnd 1: Ch 2 (does not count), 12 dc in magic ring; join with sl st in first dc. (12 dc)',
      'Rnd 2: Ch 2 (does not count), *dc in next dc, 3 dc in next dc; rep from * around; join with sl st in first dc. (24 dc)',
      'Rnd 3: Ch 2 (does not count), *dc in next 2 dc, 3 dc in next dc, dc in next dc; rep from * around; join with sl st in first dc. (36 dc)',
    ),
    counts: [12, 24, 36],
  },
  {
    name: 'sc square from a ring, corners ch 2',
    terms: 'us',
    // rnd 1: 8 sc; rnd 2: 4 * (1 + 1 + ch 2 + 1) = 12 sc, 4 spaces; rnd 3: 4 * (2 + 3) = 20 sc, 4 spaces
    text: lines(
      'Rnd 1: 8 sc in magic ring; join with sl st in first sc. (8 sc)',
      'Rnd 2: Ch 1, *sc in next sc, (sc, ch 2, sc) in next sc; rep from * around; join with sl st in first sc. (12 sc, 4 ch-2 sps)',
      'Rnd 3: Ch 1, *sc in next 2 sc, (sc, ch 2, sc) in next ch-2 sp, sc in next sc; rep from * around; join with sl st in first sc. (20 sc, 4 ch-2 sps)',
    ),
    counts: [8, 12, 20],
    spaces: [0, 4, 4],
  },
  {
    name: 'flat circle of dc, 6 a round',
    terms: 'uk',
    text: lines(
      'Round 1: 6 dc in magic loop, join with ss in first dc. (6 dc)',
      'Round 2: 1 ch, 2 dc in each st to end, join with ss in first dc. (12 dc)',
      'Round 3: 1 ch, *1 dc in next st, 2 dc in next st; rep from * to end, join with ss in first dc. (18 dc)',
      'Round 4: 1 ch, *1 dc in each of next 2 sts, 2 dc in next st; rep from * to end, join with ss in first dc. (24 dc)',
    ),
    counts: [6, 12, 18, 24],
    source: circle,
  },
  {
    name: 'flat circle of tr, 12 a round, 3 ch counted',
    terms: 'uk',
    text: lines(
      'Rnd 1: 3 ch (counts as 1 tr throughout), 11 tr in magic loop, ss in top of 3 ch to join. (12 tr)',
      'Rnd 2: 3 ch, 1 tr in same st, 2 tr in each st around, ss in top of 3 ch to join. (24 tr)',
      'Rnd 3: 3 ch, 2 tr in next st, *1 tr in next st, 2 tr in next st; rep from * around, ss in top of 3 ch to join. (36 tr)',
    ),
    counts: [12, 24, 36],
    byKind: [{ tr: 12 }, { tr: 24 }, { tr: 36 }],
    source: circle,
  },
  {
    name: 'flat circle of htr, 8 a round',
    terms: 'uk',
    text: lines(
      'Note: 2 ch at start of round does not count as a stitch.',
      'Round 1 - 2 ch, 8 htr into magic ring, join with ss in first htr. (8 htr)',
      'Round 2 - 2 ch, 2 htr in each st around, join with ss in first htr. (16 htr)',
      'Round 3 - 2 ch, (1 htr in next st, 2 htr in next st) 8 times, join with ss in first htr. (24 htr)',
    ),
    counts: [8, 16, 24],
    source: circle,
  },
  {
    name: 'even rounds on a chain ring',
    terms: 'uk',
    text: lines(
      'Make 60 (66, 72) ch, join with ss in first ch to form a ring, taking care not to twist.',
      'Rnd 1: 1 ch, 1 dc in each ch around, join with ss in first dc. 60 (66, 72) dc.',
      'Rnd 2: 1 ch, 1 htr in each st around, join with ss in first htr. 60 (66, 72) htr.',
    ),
    counts: [null, [60, 66, 72], [60, 66, 72]],
  },
  {
    name: 'decrease rounds',
    terms: 'uk',
    // 40 → 32 → 24
    text: lines(
      'Make 40 ch, join with ss in first ch to form a ring.',
      'Rnd 1: 1 ch, 1 dc in each ch around, join with ss in first dc. (40 dc)',
      'Rnd 2: 1 ch, *1 dc in each of next 3 dc, dc2tog; rep from * around, join with ss in first dc. (32 sts)',
      'Rnd 3: 1 ch, *1 dc in each of next 2 sts, dc2tog; rep from * around, join with ss in first dc. (24 sts)',
    ),
    counts: [null, 40, 32, 24],
  },
  {
    name: 'wheel of dtr and 2 ch',
    terms: 'uk',
    // 6 ch = dtr + 2 ch; 7 more: 8 dtr, 8 spaces; then 3 dc a space = 24
    text: lines(
      'Make 6 ch, join with ss to form a ring.',
      'Rnd 1: 6 ch (counts as 1 dtr, 2 ch), (1 dtr, 2 ch) 7 times in ring, join with ss in 4th ch of 6 ch. (8 dtr, 8 ch-sps)',
      'Rnd 2: Ss in first ch-sp, 1 ch, 3 dc in same sp, 3 dc in each ch-sp around, join with ss in first dc. (24 dc)',
    ),
    counts: [null, 8, 24],
    spaces: [null, 8, 0],
  },
  {
    name: 'yoke increase by size',
    terms: 'uk',
    // 60 / 6 = 10 → 70; 72 / 6 = 12 → 84; 84 / 6 = 14 → 98
    text: lines(
      'Make 60 (72, 84) ch, join with ss in first ch to form a ring.',
      'Rnd 1: 1 ch, 1 dc in each ch around, join with ss in first dc.',
      'Rnd 2 (inc): 1 ch, *1 dc in each of next 5 dc, 2 dc in next dc; rep from * around, join with ss in first dc. 70 (84, 98) dc.',
    ),
    counts: [null, [60, 72, 84], [70, 84, 98]],
  },
];
