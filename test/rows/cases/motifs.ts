/**
 * Motifs in the round: squares, hexagons, triangles, flowers, doilies, joined to one another as they are made, right
 * and wrong. Counts are worked out by hand.
 */
import { lines, type RowCase } from '../types.ts';

export const motifs: readonly RowCase[] = [
  {
    name: 'a dc that forms the last loop of a size named',
    terms: 'us',
    text: lines(
      'Ch 6, sl st in first ch to form ring.',
      'Rnd 1: Ch 1, 16 sc in ring; join in first sc.',
      'Rnd 2: Ch 1, sc in first sc, (ch 5, sk next sc, sc in next sc) around to last sc; end with ch 2, sk last sc, dc in first sc to form last ch-5 lp: 8 lps.',
      'Rnd 3: Ch 1, sc in lp just formed, (ch 5, sc in next lp) around, ch 5, join with sl st in first sc.',
    ),
    counts: [6, 16, 8, 8],
    spaces: [0, 0, 8, 8],
    source: 'common practice, no source',
  },
  {
    name: 'the round closes on the first of five chains',
    terms: 'uk',
    text: lines(
      '6 ch, ss to form ring.',
      '1st Rnd: 1 ch, 12 dc in ring, ss to first dc.',
      '2nd Rnd: 5 ch, miss 1 dc, *1 dc in next dc, 4 ch, miss 1 dc; rep from * 4 times more, ss to 1st of 5 ch. 6 loops.',
    ),
    counts: [6, 12, 6],
    spaces: [0, 0, 6],
    source: 'common practice, no source',
  },
  {
    name: 'Granny square, "corner" wording',
    terms: 'us',
    text: lines(
      'Ch 4, sl st to first ch to form ring.',
      'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * two more times, sl st to top of ch 3 to close.',
      'Rnd 2: Sl st into next 2 dc and into ch-2 sp. Ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * around, sl st to top of ch 3 to close.',
      'Rnd 3: Sl st into next 2 dc and into ch-2 sp. Ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, 3 dc in ch-1 sp, ch 1, *(3 dc, ch 2, 3 dc) in corner ch-2 sp, ch 1, 3 dc in ch-1 sp, ch 1; rep from * around, sl st to top of ch 3 to close.',
    ),
    counts: [null, 12, 24, 36],
    spaces: [null, 4, 8, 12],
  },
  {
    name: 'Granny triangle',
    terms: 'us',
    text: lines(
      'Rnd 1: Magic ring, ch 3 (counts as 1 dc), 3 dc in ring, ch 3, (4 dc in ring, ch 3) twice, join with sl st to top of ch-3. (12 dc, 3 ch-3 sps)',
      'Rnd 2: Ch 3, dc in next 3 dc, (3 dc, ch 3, 3 dc) in ch-3 sp, *dc in next 4 dc, (3 dc, ch 3, 3 dc) in ch-3 sp; rep from * once more, join. (30 dc, 3 ch-3 sps)',
      'Rnd 3: Ch 1, sc in each dc around, working 3 sc in each ch-3 sp, join with sl st in first sc. (39 sc)',
    ),
    counts: [12, 30, 39],
    spaces: [3, 3, null],
  },
  {
    name: 'Hexagon granny',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 4 (counts as dc and ch 1), (dc, ch 1) 11 times in magic ring, sl st in 3rd ch of beg ch-4. (12 dc, 12 ch-1 sps)',
      'Rnd 2: Sl st in ch-1 sp, ch 3, (dc, ch 2, 2 dc) in same sp, 2 dc in next sp, *(2 dc, ch 2, 2 dc) in next sp, 2 dc in next sp; rep from * around, join. (36 dc, 6 ch-2 sps)',
      'Rnd 3: Ch 3, dc in next dc, (2 dc, ch 2, 2 dc) in ch-2 sp, *dc in next 6 dc, (2 dc, ch 2, 2 dc) in ch-2 sp; rep from * 4 times more, dc in last 4 dc, join with sl st in top of beg ch-3. (60 dc, 6 ch-2 sps)',
    ),
    counts: [12, 36, 60],
    spaces: [12, 6, 6],
  },
  {
    name: 'join as you go square',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3, 2 dc in magic ring, (ch 3, 3 dc) 3 times in ring, ch 3, join with sl st in top of ch-3. (12 dc, 4 ch-3 sps)',
      'Rnd 2 (joining rnd): Ch 3, dc in next 2 dc, (2 dc, ch 1, sl st in corresponding corner sp of first square, ch 1, 2 dc) in next ch-3 sp, *dc in next 3 dc, (2 dc, ch 3, 2 dc) in next ch-3 sp; rep from * around, join.',
    ),
    counts: [12, 28],
    spaces: [4, null],
  },
  {
    name: 'Doily rounds with pineapple start',
    terms: 'us',
    text: lines(
      'Ch 6, join with sl st to form ring.',
      'Rnd 1: Ch 3 (counts as first dc), 15 dc in ring; join with sl st in 3rd ch of beg ch-3: 16 dc.',
      'Rnd 2: Ch 5 (counts as first dc plus ch 2), (dc in next dc, ch 2) around; join with sl st in 3rd ch of beg ch-5: 16 ch-2 sps.',
      'Rnd 3: Sl st in first ch-2 sp, ch 3, 2 dc in same sp, ch 1, (3 dc in next ch-2 sp, ch 1) around; join with sl st in top of beg ch-3: 48 dc.',
      'Rnd 4: Sl st in next 2 dc and in next ch-1 sp, ch 1, sc in same sp, ch 5, (sc in next ch-1 sp, ch 5) around; join with sl st in first sc: 16 ch-5 lps.',
      'Rnd 5: Sl st in next 2 chs, ch 1, sc in same lp, (ch 6, sc in next lp) around, ch 3, dc in first sc to form last lp: 16 lps.',
    ),
    counts: [null, 16, 16, 48, 16, 16],
    spaces: [null, null, 16, 16, 16, 16],
  },
  {
    name: 'flower layered',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 10 sc in magic ring; join with sl st in first sc. (10 sc)',
      'Rnd 2: *Ch 3, sk next sc, sl st in next sc; rep from * around. (5 ch-3 lps)',
      'Rnd 3: (Sl st, ch 1, hdc, 3 dc, hdc, ch 1, sl st) in each ch-3 lp around. (5 petals)',
    ),
    counts: [10, 5, null],
    spaces: [null, 5, null],
  },
  {
    name: 'flower sc petals joined',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 6 sc in magic ring, sl st in first sc. (6 sc)',
      'Rnd 2: Ch 1, sc in same st as sl st, ch 4, (sc in next sc, ch 4) 5 times, sl st in first sc. (6 sc, 6 ch-4 sps)',
      'Rnd 3: (Sc, hdc, 2 dc, tr, 2 dc, hdc, sc) in each ch-4 sp, sl st in first sc. (6 petals of 9 sts)',
    ),
    counts: [6, 6, 54],
    spaces: [null, 6, null],
  },
  {
    name: 'square brackets sizes',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 2, work 8 [8, 10, 10] sc in 2nd ch from hook, join with sl st in first sc. 8 [8, 10, 10] sc',
      'Rnd 2: Ch 1, 2 sc in each sc around, join. 16 [16, 20, 20] sc',
      'Rnd 3: Ch 1, *sc in next sc, 2 sc in next sc; rep from * around, join. 24 [24, 30, 30] sc',
    ),
    counts: [
      [8, 8, 10, 10],
      [16, 16, 20, 20],
      [24, 24, 30, 30],
    ],
  },
  {
    name: 'flower petals with sl st between and next',
    terms: 'us',
    text: lines(
      'Ch 4, join with sl st to form ring.',
      'Rnd 1: Ch 1, 12 sc in ring, join with sl st in first sc. (12 sc)',
      'Rnd 2: *Ch 2, dc in same st, 2 dc in next st, (dc, ch 2, sl st) in next st, sl st in next st; rep from * around.',
    ),
    counts: [null, 12, null],
  },
  {
    name: 'flower: (ch 3, 2 tr, ch 3, sl st)',
    terms: 'us',
    text: lines(
      'Rnd 1: 5 sc in magic ring, sl st in first sc to join. (5)',
      'Rnd 2: (Ch 3, 2 tr, ch 3, sl st) in each st around. (5 petals)',
    ),
    counts: [5, null],
  },
  {
    name: 'rose strip',
    terms: 'us',
    text: lines(
      'Ch 33.',
      'Row 1: (Dc, ch 1, dc) in 5th ch from hook, *ch 1, sk 1 ch, (dc, ch 1, dc) in next ch; rep from * across to end.',
    ),
    counts: [33, null],
  },
  {
    name: 'layered flower with sps behind',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, (sc in ring, ch 3) 6 times; join with sl st in first sc. (6 ch-3 sps)',
      'Rnd 2: Ch 1, (sc, hdc, dc, hdc, sc) in each ch-3 sp around; join. (6 petals)',
      'Rnd 3: Ch 1, working behind petals, *sc around post of next sc on rnd 1, ch 4; rep from * around; join. (6 ch-4 sps)',
      'Rnd 4: Ch 1, (sc, hdc, 3 dc, hdc, sc) in each ch-4 sp around; join. (6 petals)',
    ),
    counts: [6, 30, 6, 42],
    spaces: [6, null, 6, null],
  },
  {
    name: 'square with post stitches',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3, 2 dc in magic ring, (ch 2, 3 dc in ring) three times, ch 2, sl st in top of ch-3. (12 dc, 4 ch-2 sps)',
      'Rnd 2: Ch 3, *FPdc around next dc, dc in next dc, (2 dc, ch 2, 2 dc) in ch-2 sp, dc in next dc; rep from * around omitting last dc, sl st in top of ch-3. (28 sts)',
    ),
    counts: [12, 28],
    spaces: [4, 4],
  },
  {
    name: 'solid square "in each dc to corner"',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3, 2 dc in magic ring, [ch 2, 3 dc in ring] 3 times, ch 2, join with sl st in 3rd ch of beg ch-3. [12 dc]',
      'Rnd 2: Ch 3, dc in next 2 dc, [(2 dc, ch 2, 2 dc) in next ch-2 sp, dc in next 3 dc] 3 times, (2 dc, ch 2, 2 dc) in last ch-2 sp, join. [28 dc]',
      'Rnd 3: Ch 3, *dc in each dc to ch-2 sp, (2 dc, ch 2, 2 dc) in ch-2 sp; rep from * 3 more times, dc in each rem dc, join. [44 dc]',
      'Rnd 4: Ch 1, sc in same st, sc in each dc around, working (sc, ch 1, sc) in each corner sp, join with sl st in first sc. [52 sc]',
    ),
    counts: [12, 28, 44, 52],
    spaces: [4, 4, 4, 4],
  },
  {
    name: 'square wrong corner',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3, 2 dc in magic ring, [ch 2, 3 dc in ring] 3 times, ch 2, join with sl st in 3rd ch of beg ch-3. [12 dc]',
      'Rnd 2: Ch 3, dc in next 2 dc, [(2 dc, ch 2, 2 dc) in next ch-3 sp, dc in next 3 dc] 3 times, (2 dc, ch 2, 2 dc) in last ch-2 sp, join. [28 dc]',
    ),
    counts: [12, null],
    spaces: [4, null],
    findings: [
      { row: 1, code: 'place-does-not-exist' },
      { row: 1, code: ['stated-count-wrong', 'stitches-passed-over'] },
    ],
  },
  {
    name: 'pineapple doily part',
    terms: 'us',
    text: lines(
      'Ch 6, join with sl st to form a ring.',
      'Rnd 1: Ch 3 (counts as dc), 17 dc in ring, join with sl st in top of beg ch-3. (18 dc)',
      'Rnd 2: Ch 4 (counts as dc, ch 1), dc in same st, *ch 3, sk next 2 dc, (dc, ch 1, dc) in next dc; rep from * around, ch 3, sk last 2 dc, join with sl st in 3rd ch of beg ch-4. (6 V-sts, 6 ch-3 sps)',
      'Rnd 3: Sl st in ch-1 sp, ch 3, (dc, ch 2, 2 dc) in same sp, *ch 2, sc in next ch-3 sp, ch 2, (2 dc, ch 2, 2 dc) in next ch-1 sp; rep from * around, ch 2, sc in last ch-3 sp, ch 2, join with sl st in top of beg ch-3.',
    ),
    counts: [null, 18, 12, 30],
    spaces: [null, null, 12, 18],
  },
  {
    name: 'doily chain loops growing',
    terms: 'us',
    text: lines(
      'Rnd 1: 12 sc in magic ring; join with sl st in first sc.',
      'Rnd 2: Ch 1, sc in same sc as joining, (ch 3, sk next sc, sc in next sc) 5 times, ch 3, sk last sc; join with sl st in first sc. (6 ch-3 lps)',
      'Rnd 3: Sl st in next ch, sc in next ch-3 lp, (ch 5, sc in next ch-3 lp) 5 times, ch 5; join with sl st in first sc. (6 ch-5 lps)',
      'Rnd 4: (7 sc in next ch-5 lp) 6 times; join with sl st in first sc. (42 sc)',
      'Rnd 5: Ch 1, (sc in next 6 sc, picot, sc in next sc) around; join. (42 sc, 6 picots)',
    ),
    counts: [12, 6, 6, 42, 42],
    spaces: [null, 6, 6, null, null],
  },
  {
    name: 'doily tall-stitch join',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 5 (counts as tr and ch 1), (tr, ch 1) 11 times in magic ring; join with sl st in 4th ch of beg ch-5. (12 tr, 12 ch-1 sps)',
      'Rnd 2: Ch 1, sc in first tr, ch 5, (sc in next tr, ch 5) 10 times, sc in last tr, ch 2, dc in first sc (counts as last ch-5 lp). (12 lps)',
      'Rnd 3: Ch 1, sc in lp just formed, ch 5, (sc in next lp, ch 5) 11 times; join with sl st in first sc. (12 lps)',
    ),
    counts: [12, 12, 12],
    spaces: [12, 12, 12],
  },
  {
    name: 'UK doily old style',
    terms: 'uk',
    text: lines(
      'Commence with 8 ch., join with s.s. to form a ring.',
      '1st rnd: 1 d.c. into ring, * 5 ch., 1 d.c. into ring; rep. from * 4 times more, 5 ch., s.s. to 1st d.c.',
      '2nd rnd: s.s. to centre of 1st loop, 1 d.c. into loop, * 6 ch., 1 d.c. into next loop; rep. from * all round, 6 ch., s.s. to 1st d.c.',
      '3rd rnd: into each loop work 1 d.c., 1 h.tr., 5 tr., 1 h.tr., 1 d.c.; s.s. to 1st d.c. Fasten off.',
    ),
    counts: [null, 6, 6, 54],
    spaces: [null, 6, 6, null],
  },
  {
    name: 'coaster spiral hdc with sc sl st ending',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 2, (sc, hdc, 6 dc) in 2nd ch from hook. (8 sts)',
      'Rnd 2: 2 dc in each st around. (16 dc)',
      'Rnd 3: (Dc in next st, 2 dc in next st) 8 times. (24 dc)',
      'Rnd 4: Dc in next 21 sts, hdc in next st, sc in next st, sl st in next st. (24 sts)',
    ),
    counts: [8, 16, 24, 24],
  },
  {
    name: 'afghan octagon',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc throughout), 15 dc in magic ring, sl st to top of ch-3. (16 dc)',
      'Rnd 2: Ch 3, 2 dc in same st, dc in next st, *3 dc in next st, dc in next st; rep from * around, sl st to top of ch-3. (32 dc)',
      'Rnd 3: Sl st in next dc, ch 3, 2 dc in same st, dc in next 3 dc, *3 dc in next dc, dc in next 3 dc; rep from * around, join. (48 dc)',
    ),
    counts: [16, 32, 48],
  },
  {
    name: 'granny circle',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 15 dc in magic ring; join with sl st in top of ch-3. (16 dc)',
      'Rnd 2: Ch 4 (counts as dc + ch 1), *dc in next dc, ch 1; rep from * around; join with sl st in 3rd ch of ch-4. (16 dc, 16 ch-1 sps)',
      'Rnd 3: Sl st in ch-1 sp, ch 3, dc in same sp, ch 1, *2 dc in next ch-1 sp, ch 1; rep from * around; join. (32 dc, 16 ch-1 sps)',
      'Rnd 4: Sl st in next dc and in ch-1 sp, ch 3, 2 dc in same sp, ch 1, *3 dc in next ch-1 sp, ch 1; rep from * around; join. (48 dc, 16 ch-1 sps)',
    ),
    counts: [16, 16, 32, 48],
    spaces: [null, 16, 16, 16],
  },
  {
    name: 'circle to square granny',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3, 11 dc in magic ring, join in top of ch-3. (12 dc)',
      'Rnd 2: Ch 3, dc in same place, 2 dc in each dc around, join. (24 dc)',
      'Rnd 3: Ch 1, sc in same place, *hdc in next st, 2 dc in next st, (tr, ch 2, tr) in next st, 2 dc in next st, hdc in next st, sc in next st; rep from * around, omitting last sc, join with sl st in first sc. (36 sts, 4 ch-2 sps)',
    ),
    counts: [12, 24, 36],
    spaces: [null, null, 4],
  },
  {
    name: 'solid hexagon',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3, 11 dc in magic ring; sl st in 3rd ch of beg ch-3. (12 dc)',
      'Rnd 2: Ch 3, dc in base of ch-3, ch 1, *2 dc in each of next 2 dc, ch 1; rep from * 4 more times, 2 dc in last dc; sl st in 3rd ch of beg ch-3. (24 dc, 6 ch-1 sps)',
      'Rnd 3: Ch 3, dc in next dc, (dc, ch 1, dc) in ch-1 sp, *dc in next 4 dc, (dc, ch 1, dc) in next ch-1 sp; rep from * around to last 2 dc, dc in last 2 dc; join. (36 dc, 6 ch-1 sps)',
    ),
    counts: [12, 24, 36],
    spaces: [null, 6, 6],
  },
  {
    name: 'triangle solid',
    terms: 'us',
    text: lines('Rnd 1: Ch 4 (counts as tr), (2 dc, ch 2, tr, ch 2, 2 dc, tr, ch 2) in magic ring. Join.'),
    counts: [7],
  },
  {
    name: 'african flower hexagon',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), dc in magic ring, ch 1, (2 dc in ring, ch 1) 5 times, join with sl st in top of ch-3. (12 dc, 6 ch-1 sps)',
      'Rnd 2: Sl st in next dc and in ch-1 sp, ch 3, (dc, ch 1, 2 dc) in same sp, *(2 dc, ch 1, 2 dc) in next ch-1 sp; rep from * around, join. (24 dc, 6 ch-1 sps)',
      'Rnd 3: Sl st in next dc and in ch-1 sp, ch 3, 6 dc in same sp, *7 dc in next ch-1 sp; rep from * around, join. (42 dc)',
      'Rnd 4: Ch 1, *sc in next 7 dc, dc in sp between groups on Rnd 2; rep from * around, join. (42 sc, 6 dc)',
    ),
    counts: [12, 24, 42, null],
    spaces: [6, 6, null, null],
  },
  {
    name: 'sunflower with popcorns',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 8 sc in magic ring, join with sl st in first sc. (8 sc)',
      'Rnd 2: Ch 3 (counts as dc), dc in same st, 2 dc in each st around, join. (16 dc)',
      'Rnd 3: Ch 3, beg popcorn in same st, ch 2, *popcorn in next st, ch 2; rep from * around, join in top of beg popcorn. (16 popcorns, 16 ch-2 sps)',
      'Rnd 4: Sl st in ch-2 sp, ch 3, 2 dc in same sp, 3 dc in each ch-2 sp around, join. (48 dc)',
    ),
    counts: [8, 16, 16, 48],
    spaces: [null, null, 16, null],
  },
  {
    name: 'sunburst clusters',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3, 11 dc in magic ring; join. (12 dc)',
      'Rnd 2: Beg cl in same st, ch 2, (cl in next dc, ch 2) 11 times; join with sl st in top of beg cl. (12 cl, 12 ch-2 sps)',
      'Rnd 3: Sl st in ch-2 sp, ch 1, 3 sc in same sp, 3 sc in each ch-2 sp around; join. (36 sc)',
    ),
    counts: [12, 12, 36],
    spaces: [null, 12, null],
  },
  {
    name: 'snowflake',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 4 (counts as dc and ch 1), (dc, ch 1) 5 times in magic ring; join with sl st in 3rd ch of beg ch-4. (6 dc, 6 ch-1 sps)',
      'Rnd 2: Ch 1, (sc, ch 3, sc) in each ch-1 sp around; join with sl st in first sc. (12 sc, 6 ch-3 sps)',
      'Rnd 3: Sl st in ch-3 sp, ch 1, (sc, ch 5, sl st in 3rd ch from hook, ch 2, sc) in same sp, *(sc, ch 5, sl st in 3rd ch from hook, ch 2, sc) in next ch-3 sp; rep from * around; join.',
    ),
    counts: [6, 12, 12],
    spaces: [6, 6, null],
  },
  {
    name: 'heart',
    terms: 'us',
    text: lines('Rnd 1: In magic ring: ch 3, 3 tr, 3 dc, ch 1, tr, ch 1, 3 dc, 3 tr, ch 2, sl st.'),
    counts: [null],
  },
  {
    name: 'leaf',
    terms: 'us',
    text: lines(
      'Ch 10.',
      'Rnd 1: Sl st in 2nd ch from hook, sc in next ch, hdc in next ch, dc in next 3 ch, hdc in next ch, sc in next ch, (sc, ch 2, sc) in last ch, working along opposite side, sc in next ch, hdc in next ch, dc in next 3 ch, hdc in next ch, sc in next ch, sl st in last ch. Fasten off.',
    ),
    counts: [10, null],
    spaces: [null, 1],
  },
  {
    name: 'mandala posts',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3, 15 dc in magic ring, sl st to first dc. (16 dc)',
      'Rnd 2: Ch 2, FPdc around same st, dc in same st, *FPdc around next st, dc in same st; rep from * around, sl st to first FPdc. (32 sts)',
    ),
    counts: [16, 32],
  },
  {
    name: 'mandala chain spaces',
    terms: 'us',
    text: lines(
      'Rnd 1: 12 dc in magic ring, ss to first dc. (12)',
      'Rnd 2: (ch 3, sk 1 dc, ss in next dc) x 6.',
      'Rnd 3: (sc, hdc, 3 dc, hdc, sc) in each ch-3 sp. (42)',
    ),
    counts: [12, 6, 42],
    spaces: [null, 6, null],
  },
  {
    name: 'coaster UK "tr into ring"',
    terms: 'us',
    text: lines(
      '4 ch, join with a ss into ring.',
      '1st round: 3 ch (stands for first tr), 11 tr into ring, ss into 3rd of 3 ch. (12 tr)',
      '2nd round: 3 ch, 1 tr into same place as ss, 2 tr into each tr all round, ss into 3rd of 3 ch. (24 tr)',
      '3rd round: 1 ch, 1 dc into same place as ss, 5 ch, * miss 2 tr, 1 dc into next tr, 5 ch; repeat from * all round, ss into first dc. (8 loops)',
    ),
    counts: [null, 12, 24, 8],
    spaces: [null, null, null, 8],
  },
  {
    name: 'old UK doily edges',
    terms: 'uk',
    text: lines(
      '1st round.—Work 24 treble into ring, joining with a slip-stitch.',
      '2nd round.—3 chain, 1 treble on each treble with 1 chain between each; join.',
    ),
    counts: [24, 24],
    spaces: [null, 24],
  },
  {
    name: 'older English motif',
    terms: 'uk',
    text: lines(
      'Commence with 6 chain; join in a ring.',
      '1st round: 3 chain (to stand for a treble), 2 treble into ring, *2 chain, 3 treble into ring, repeat from * twice, 2 chain, slip-stitch into top of 3 chain.',
      '2nd round: slip-stitch along to the corner, 3 chain, 2 treble, 2 chain, 3 treble all into the same space, *1 chain, 3 treble, 2 chain, 3 treble into next space; repeat from * twice, 1 chain, slip-stitch to 3 chain.',
    ),
    counts: [null, 12, 24],
    spaces: [null, 4, 8],
  },
  {
    name: 'shawl-like circle in rnd chain 3 join stitched',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 5 (counts as dc, ch 2), (dc, ch 2) 7 times in magic ring, join with sl st in 3rd ch of beg ch-5. 8 dc, 8 ch-2 sps',
      'Rnd 2: Sl st in ch-2 sp, ch 3, 3 dc in same sp, ch 1, (4 dc, ch 1) in each ch-2 sp around, join with sl st in top of ch-3. 32 dc, 8 ch-1 sps',
      'Rnd 3: Sl st in next 3 dc and in ch-1 sp, ch 3, 4 dc in same sp, ch 2, *5 dc in next ch-1 sp, ch 2; rep from * around, join. 40 dc, 8 ch-2 sps',
    ),
    counts: [8, 32, 40],
    spaces: [8, 8, 8],
  },
  {
    name: 'pineapples proper',
    terms: 'us',
    text: lines(
      'Ch 5, sl st to form ring.',
      'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, (ch 3, 3 dc in ring) 3 times, ch 3; join with sl st in top of ch-3. 12 dc, 4 ch-3 sps',
      'Rnd 2: Sl st in next 2 dc and in ch-3 sp, ch 3, (dc, ch 2, 2 dc) in same sp, ch 2, (2 dc, ch 2, 2 dc, ch 2) in each ch-3 sp around; join.',
      'Rnd 3: Sl st in next dc and ch-2 sp, ch 3, (dc, ch 2, 2 dc) in same sp, ch 1, 8 dc in next ch-2 sp, ch 1, *(2 dc, ch 2, 2 dc) in next ch-2 sp, ch 1, 8 dc in next ch-2 sp, ch 1; rep from * around; join.',
    ),
    counts: [null, 12, 16, 48],
    spaces: [null, 4, 8, 12],
  },
  {
    name: 'UK granny hexagon colours',
    terms: 'uk',
    text: lines(
      'Round 1: With A, 3 ch (counts as 1 tr), 1 tr, (1 ch, 2 tr) 5 times into magic ring, 1 ch, ss into 3rd of 3 ch. Fasten off A.',
      'Round 2: Join B in any 1-ch sp, 3 ch, (1 tr, 1 ch, 2 tr) in same sp, (2 tr, 1 ch, 2 tr) in each 1-ch sp to end, ss in 3rd of 3 ch. Fasten off B.',
      'Round 3: Join C in any 1-ch sp, 3 ch, (1 tr, 1 ch, 2 tr) in same sp, 2 tr between next 2 groups, *(2 tr, 1 ch, 2 tr) in next 1-ch sp, 2 tr between next 2 groups; rep from * to end, ss in 3rd of 3 ch.',
    ),
    counts: [12, 24, 36],
    spaces: [6, 6, 6],
  },
  {
    name: 'wrong flower petals',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 10 sc in magic ring, join. (10 sc)',
      'Rnd 2: *Ch 3, sk 2 sc, sl st in next sc; rep from * around. (5 ch-3 lps)',
    ),
    counts: [10, null],
    findings: [
      { row: 1, code: 'repeat-does-not-fit' },
      { row: 1, code: 'stated-count-wrong' },
    ],
  },
  {
    name: 'doily old numbers',
    terms: 'uk',
    text: lines(
      '1st rnd: 8 ch, join in a ring with ss.',
      '2nd rnd: 3 ch (1st tr), 23 tr in ring, ss in 3rd of 3 ch.',
      '3rd rnd: 5 ch (1st tr and 2 ch), * miss 1 tr, 1 tr in next tr, 2 ch, rep from * all round, ending with ss in 3rd of 5 ch.',
      '4th rnd: 3 ch, 3 tr in first sp, * 4 tr in next sp, rep from * all round, ending ss in 3rd of 3 ch.',
    ),
    counts: [null, 24, 12, 48],
    spaces: [null, null, 12, null],
  },
  {
    name: 'square tile with corners in sc',
    terms: 'us',
    text: lines(
      'Rnd 1: 8 sc in magic ring, join with sl st in first sc. (8 sc)',
      'Rnd 2: Ch 1, *sc in next st, (sc, ch 2, sc) in next st; rep from * around, join. (12 sc, 4 ch-2 sps)',
      'Rnd 3: Ch 1, *sc in each sc to corner, (sc, ch 2, sc) in corner sp; rep from * around, sc in last st, join. (20 sc, 4 ch-2 sps)',
    ),
    counts: [8, 12, 20],
    spaces: [null, 4, 4],
  },
  {
    name: 'square tile, 3 sc corners',
    terms: 'us',
    text: lines(
      'Rnd 1: 8 sc in magic ring, join with sl st in first sc. (8 sc)',
      'Rnd 2: Ch 1, *3 sc in next st, sc in next st; rep from * around, join. (16 sc)',
      'Rnd 3: Ch 1, sc in next st, *3 sc in next st, sc in next 3 sts; rep from * around, ending last rep with sc in last 2 sts, join. (24 sc)',
    ),
    counts: [8, 16, 24],
  },
  {
    name: 'flower: centre + petals, UK short',
    terms: 'uk',
    text: lines(
      '6 ch, ss to form ring.',
      '1st rnd: 1 ch, 12 dc in ring, ss to 1st dc.',
      '2nd rnd: * 3 ch, 1 tr in each of next 2 dc, 3 ch, ss in next dc; rep from * 3 times more. Fasten off.',
    ),
    counts: [null, 12, null],
  },
  {
    name: 'layered flower, sc behind each petal in ch loop style',
    terms: 'us',
    text: lines(
      'Ch 5, join to form ring.',
      'Rnd 1: Ch 6 (counts as dc and ch 3), (dc in ring, ch 3) 5 times, join in 3rd ch of ch-6. (6 ch-3 sps)',
      'Rnd 2: (Sc, hdc, 3 dc, hdc, sc) in each ch-3 sp around, join in first sc. (6 petals)',
    ),
    counts: [null, 6, 42],
    spaces: [null, 6, null],
  },
  {
    name: 'irish rose chain behind',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 5 (counts as dc, ch 2), (dc, ch 2) 5 times in magic ring, join. (6 ch-2 sps)',
      'Rnd 2: Ch 1, (sc, hdc, dc, hdc, sc) in each ch-2 sp. (30 sts)',
      'Rnd 3: (Ch 4, sl st in sp between next 2 petals) 6 times. (6 ch-4 lps)',
      'Rnd 4: (Sc, hdc, 3 dc, hdc, sc) in each ch-4 lp. (42 sts)',
    ),
    counts: [6, 30, null, 42],
    spaces: [6, null, 6, null],
  },
  {
    name: 'square wrong count of dc',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3, 2 dc in magic ring, (ch 2, 3 dc in ring) 3 times, ch 2, join in top of ch-3. (12 dc, 4 ch-2 sps)',
      'Rnd 2: Ch 3, dc in next 2 dc, *(2 dc, ch 2, 2 dc) in ch-2 sp, dc in next 3 dc; rep from * 2 more times, (2 dc, ch 2, 2 dc) in last ch-2 sp, join. (32 dc, 4 ch-2 sps)',
    ),
    counts: [12, 28],
    spaces: [4, 4],
    findings: [{ row: 1, code: 'stated-count-wrong' }],
  },
  {
    name: 'square wrong dc between',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3, 2 dc in magic ring, (ch 2, 3 dc in ring) 3 times, ch 2, join in top of ch-3. (12 dc, 4 ch-2 sps)',
      'Rnd 2: Ch 3, dc in next 3 dc, *(2 dc, ch 2, 2 dc) in ch-2 sp, dc in next 3 dc; rep from * around, join.',
    ),
    counts: [12, null],
    spaces: [4, null],
    findings: [
      {
        row: 1,
        code: [
          'stitches-passed-over',
          'place-does-not-exist',
          'repeat-does-not-fit',
          'stitches-left-unworked',
        ],
      },
    ],
  },
  {
    name: 'doily loops of which the last spans no stitch',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 16 sc in magic ring, join. (16 sc)',
      'Rnd 2: Ch 1, sc in first sc, *ch 4, sk 2 sc, sc in next sc; rep from * around, ch 4, join.',
    ),
    counts: [16, 6],
    spaces: [null, 6],
  },
  {
    name: 'doily wrong name of loop',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 16 sc in magic ring, join. (16 sc)',
      'Rnd 2: Ch 1, sc in first sc, *ch 4, sk next sc, sc in next sc; rep from * around to last sc, ch 4, sk last sc, join. (8 ch-4 sps)',
      'Rnd 3: Ch 1, (sc, hdc, dc, hdc, sc) in each ch-5 sp around, join.',
    ),
    counts: [16, 8, null],
    spaces: [null, 8, null],
    findings: [{ row: 2, code: 'place-does-not-exist' }],
  },
  {
    name: 'granny square joined corner hdc',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 4 (counts as dc and ch 1), [3 dc in ring, ch 1] 3 times in magic ring, 2 dc in ring, join with sl st in 3rd ch of beg ch-4. (12 dc, 4 ch-1 sps)',
      'Rnd 2: Sl st in ch-1 sp, ch 4, 3 dc in same sp, *ch 1, (3 dc, ch 1, 3 dc) in next ch-1 sp; rep from * 2 times more, ch 1, 2 dc in first ch-1 sp, join with sl st in 3rd ch of beg ch-4. (24 dc, 8 ch-1 sps)',
    ),
    counts: [12, 24],
    spaces: [4, 8],
  },
  {
    name: 'granny rectangle',
    terms: 'us',
    text: lines(
      'Ch 12.',
      'Rnd 1: (2 dc, ch 2, 3 dc) in 4th ch from hook, ch 1, sk 3 ch, 3 dc in next ch, ch 1, sk 3 ch, (3 dc, ch 2, 3 dc, ch 2, 3 dc) in last ch; working along other side, ch 1, sk 3 ch, 3 dc in next ch, ch 1, sk 3 ch, 3 dc in same ch as first group, ch 2, join with sl st in top of beg ch.',
    ),
    counts: [12, null],
  },
  {
    name: 'granny half hexagon flat turned',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 4 (counts as dc, ch 1), (2 dc, ch 1) 3 times in magic ring, dc in ring, turn. (8 dc, 4 ch-1 sps)',
    ),
    counts: [8],
    spaces: [4],
  },
  {
    name: 'circle hdc with ch1 joins in first st',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 12 hdc into magic ring; join to first hdc with sl st. (12)',
      'Rnd 2: Ch 1, 2 hdc into same st and each st around; join to first hdc with sl st. (24)',
      'Rnd 3: Ch 1, hdc into same st, 2 hdc into next st, *hdc into next st, 2 hdc into next st; repeat from * around; join to first hdc with sl st. (36)',
    ),
    counts: [12, 24, 36],
  },
  {
    name: 'leaf UK both sides',
    terms: 'uk',
    text: lines(
      'Make 12 ch.',
      'Round 1: 1 dc into 2nd ch from hook, 1 htr into next ch, 1 tr into each of next 6 ch, 1 htr into next ch, 1 dc into next ch, 3 dc into last ch, working along other side of ch, 1 dc into next ch, 1 htr into next ch, 1 tr into each of next 6 ch, 1 htr into next ch, 1 dc into next ch, ss into first dc.',
    ),
    counts: [12, 23],
  },
  {
    name: 'circle variants: st at base of beg ch',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc throughout), 11 dc in magic ring; join with sl st in top of ch-3. (12 dc)',
      'Rnd 2: Ch 3, dc in st at base of ch-3, 2 dc in each st around; join in 3rd ch of beg ch-3. (24 dc)',
    ),
    counts: [12, 24],
  },
  {
    name: 'circle variants: same st as beg ch',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc throughout), 11 dc in magic ring; join with sl st in top of ch-3. (12 dc)',
      'Rnd 2: Ch 3, 1 dc in same st as beg ch-3, *2 dc in next st; rep from * around; slip stitch into the top of the beginning chain 3. (24 dc)',
    ),
    counts: [12, 24],
  },
  {
    name: 'circle variants: joining st',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc throughout), 11 dc in magic ring; join with sl st in top of ch-3. (12 dc)',
      'Rnd 2: Ch 3, dc in joining st, 2 dc in next 11 sts, join to 3rd chain. (24 dc)',
    ),
    counts: [12, 24],
    findings: [{ row: 1, code: 'each-not-said' }],
  },
  {
    name: 'circle variants: two dc in every dc',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc throughout), 11 dc in magic ring; join with sl st in top of ch-3. (12 dc)',
      'Rnd 2: Ch 3, dc in first dc, two dc in every dc around, close with sl st. (24 dc)',
    ),
    counts: [12, 24],
  },
  {
    name: 'circle variants: sl st into top of initial chain',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc throughout), 11 dc in magic ring; join with sl st in top of ch-3. (12 dc)',
      'Rnd 2: Ch 3, 2 dc in next dc, (1 dc in next dc, 2 dc in next dc) repeat around, sl st into top of initial chain. (18 dc)',
    ),
    counts: [12, 18],
  },
  {
    name: 'circle variants: standing dc counts as first',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc throughout), 11 dc in magic ring; join with sl st in top of ch-3. (12 dc)',
      'Rnd 2: Standing dc in same st, dc in same st, 2 dc in each of next 11 dc, join in top of first dc. (24 dc)',
    ),
    counts: [12, 24],
  },
  {
    name: 'circle variants: ch 2 in place of ch 3',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc throughout), 11 dc in magic ring; join with sl st in top of ch-3. (12 dc)',
      'Rnd 2: Ch 2 (counts as dc), dc in same st, 2 dc in each st around, join in top of ch-2. (24 dc)',
    ),
    counts: [12, 24],
  },
  {
    name: 'circle variants: chainless start',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc throughout), 11 dc in magic ring; join with sl st in top of ch-3. (12 dc)',
      'Rnd 2: Work a chainless starting dc in first st, dc in same st, 2 dc in each rem st, join. (24 dc)',
    ),
    counts: [12, 24],
  },
  {
    name: 'circle variants: 2 dc in ea',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc throughout), 11 dc in magic ring; join with sl st in top of ch-3. (12 dc)',
      'Rnd 2: ch 3, dc in same, 2 dc in ea dc, join w/ sl st to top of ch 3. (24 dc)',
    ),
    counts: [12, 24],
  },
  {
    name: 'circle variants: spoke chain',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc throughout), 11 dc in magic ring; join with sl st in top of ch-3. (12 dc)',
      'Rnd 2: Ch 5 (counts as dc, ch 2), *dc in next dc, ch 2; rep from * 10 times more, sl st in 3rd ch of ch-5. (12 dc, 12 ch-2 sps)',
    ),
    counts: [12, 12],
    spaces: [null, 12],
  },
  {
    name: 'circle variants: sc, ch 1 between',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 12 sc in magic ring; join with sl st in first sc. (12 sc)',
      'Rnd 2: Ch 1, sc in same st, ch 1, *sc in next st, ch 1; rep from * around; join. (12 sc, 12 ch-1 sps)',
    ),
    counts: [12, 12],
    spaces: [null, 12],
  },
  {
    name: 'circle variants: dc in spaces between dc',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc throughout), 11 dc in magic ring; join with sl st in top of ch-3. (12 dc)',
      'Rnd 2: Sl st in sp between ch-3 and next dc, ch 3, dc in same sp, 2 dc in each sp between dc around; join. (24 dc)',
    ),
    counts: [12, 24],
  },
  {
    name: 'circle variants: third loop',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 12 sc in magic ring; join with sl st in first sc. (12 sc)',
      'Rnd 2: Ch 1, 2 hdc in each st around; join. (24 hdc)',
      'Rnd 3: Ch 1, working in 3rd loop, hdc in each st around; join. (24 hdc)',
    ),
    counts: [12, 24, 24],
  },
  {
    name: 'circle variants: petals of 5 dc',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 12 sc in magic ring; join with sl st in first sc. (12 sc)',
      'Rnd 2: *Sk next sc, 5 dc in next sc, sk next sc, sl st in next sc; rep from * around. (3 petals)',
    ),
    counts: [12, 18],
  },
  {
    name: 'circle variants: sl st between petals, ch 3 petals',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 12 sc in magic ring; join with sl st in first sc. (12 sc)',
      'Rnd 2: *Ch 3, 2 dc in same sc, 2 dc in next sc, ch 3, sl st in same sc, sl st in next sc; rep from * 5 more times.',
    ),
    counts: [12, null],
  },
  {
    name: 'circle variants: crossed dc',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc throughout), 11 dc in magic ring; join with sl st in top of ch-3. (12 dc)',
      'Rnd 2: Ch 3, dc in joining sl st of previous rnd, *sk next dc, dc in next dc, dc in skipped dc; rep from * 4 times more, sk 1 dc; join.',
    ),
    counts: [12, null],
  },
  {
    name: 'circle variants: FPdc inc',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc throughout), 11 dc in magic ring; join with sl st in top of ch-3. (12 dc)',
      'Rnd 2: Ch 3, FPdc around same st, *dc in next st, FPdc around same st; rep from * around; join. (24 sts)',
    ),
    counts: [12, 24],
  },
  {
    name: 'circle variants: bead of cluster 3-dc',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 12 sc in magic ring; join with sl st in first sc. (12 sc)',
      'Rnd 2: Ch 3, dc2tog in same st (counts as 3-dc cl), ch 3, *sk next st, 3-dc cl in next st, ch 3; rep from * around, sk last st; join with sl st in top of first cl. (6 cls, 6 ch-3 sps)',
    ),
    counts: [12, 6],
    spaces: [null, 6],
  },
  {
    name: 'circle variants: (cl, ch 2) in every st',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 12 sc in magic ring; join with sl st in first sc. (12 sc)',
      'Rnd 2: Ch 2, dc in same st (counts as first 2-dc cl), ch 2, (2-dc cl in next st, ch 2) 11 times; join. (12 clusters)',
    ),
    counts: [12, 12],
    spaces: [null, 12],
  },
  {
    name: 'circle variants: puffs UK',
    terms: 'uk',
    text: lines(
      'Rnd 1: 1 ch, 10 dc in magic ring, ss in first dc. (10 dc)',
      'Rnd 2: 2 ch, *puff st in next dc, 2 ch; rep from * to end, ss in top of first puff. (10 puffs, 10 2-ch sps)',
    ),
    counts: [10, 10],
    spaces: [null, 10],
  },
  {
    name: 'granny: last side omitted ch',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, (ch 2, 3 dc in ring) 3 times, ch 2; join with sl st in top of ch-3. (12 dc, 4 ch-2 sps)',
      'Rnd 2: Sl st to corner ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, *ch 1, (3 dc, ch 2, 3 dc) in next corner; rep from * twice more, ch 1; join. (24 dc)',
    ),
    counts: [12, 24],
    spaces: [4, 8],
  },
  {
    name: 'granny: each corner',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, (ch 2, 3 dc in ring) 3 times, ch 2; join with sl st in top of ch-3. (12 dc, 4 ch-2 sps)',
      'Rnd 2: Sl st to ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same corner, (3 dc, ch 2, 3 dc) in each of next 3 corners; join. (24 dc, 4 ch-2 sps)',
    ),
    counts: [12, 24],
    spaces: [4, 4],
  },
  {
    name: 'granny: without brackets',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, (ch 2, 3 dc in ring) 3 times, ch 2; join with sl st in top of ch-3. (12 dc, 4 ch-2 sps)',
      'Rnd 2: Sl st to ch-2 sp, ch 3, 2 dc, ch 2, 3 dc in same sp, *ch 1, 3 dc, ch 2, 3 dc in next ch-2 sp; rep from * around, ch 1; join. (24 dc, 4 ch-2 sps, 4 ch-1 sps)',
    ),
    counts: [12, 24],
    spaces: [4, 8],
  },
  {
    name: 'granny: joined to another at two corners',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, (ch 2, 3 dc in ring) 3 times, ch 2; join with sl st in top of ch-3. (12 dc, 4 ch-2 sps)',
      'Rnd 2: Sl st to ch-2 sp, ch 3, 2 dc in same sp, ch 1, sl st in corner ch-2 sp of adjacent square, ch 1, 3 dc in same sp, sl st between corresponding 3-dc groups of adjacent square, 3 dc in next ch-2 sp, ch 1, sl st in next corner of adjacent square, ch 1, 3 dc in same sp, *ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * once more, ch 1; join.',
    ),
    counts: [12, 24],
    spaces: [4, null],
  },
  {
    name: 'granny: sc edging 3 in corner',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, (ch 2, 3 dc in ring) 3 times, ch 2; join with sl st in top of ch-3. (12 dc, 4 ch-2 sps)',
      'Rnd 2: Ch 1, sc in each dc and 3 sc in each ch-2 sp around; join. (24 sc)',
    ),
    counts: [12, 24],
    spaces: [4, null],
  },
  {
    name: 'granny: hdc border picot corner',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, (ch 2, 3 dc in ring) 3 times, ch 2; join with sl st in top of ch-3. (12 dc, 4 ch-2 sps)',
      'Rnd 2: Ch 1, hdc in each dc around, (hdc, ch 2, hdc) in each corner sp; join. (20 hdc, 4 ch-2 sps)',
    ),
    counts: [12, 20],
    spaces: [4, 4],
  },
  {
    name: 'granny: wrong corners said',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, (ch 2, 3 dc in ring) 3 times, ch 2; join with sl st in top of ch-3. (12 dc, 4 ch-2 sps)',
      'Rnd 2: Ch 1, hdc in each dc around, (hdc, ch 2, hdc) in each corner sp; join. (20 hdc, 6 ch-2 sps)',
    ),
    counts: [12, 20],
    spaces: [4, 4],
    findings: [{ row: 1, code: 'stated-count-wrong' }],
  },
  {
    name: 'granny: wrong twice more',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, (ch 2, 3 dc in ring) 3 times, ch 2; join with sl st in top of ch-3. (12 dc, 4 ch-2 sps)',
      'Rnd 2: Sl st to corner ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, *ch 1, (3 dc, ch 2, 3 dc) in next corner; rep from * 3 times more, ch 1; join.',
    ),
    counts: [12, null],
    spaces: [4, null],
    findings: [{ row: 1, code: 'place-does-not-exist' }],
  },
];
