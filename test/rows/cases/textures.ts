/**
 * Written rows: clusters, bobbles, popcorns, puffs (one stitch each) and picots (none).
 */
import { lines, type RowCase } from '../types.ts';

const practice =
  'common practice, no source: a cluster, bobble, popcorn or puff is one stitch of the next row, a picot none';

export const textures: readonly RowCase[] = [
  {
    name: 'the chain stands for the taller of two stitches in turn',
    terms: 'us',
    // each row begins with the stitch that the row below has second
    text: lines(
      'Ch 22.',
      'Row 1: Sc in 2nd ch from hook, *dc in next ch, sc in next ch; rep from * across, turn. (21 sts)',
      'Row 2: Ch 3, *sc in next dc, dc in next sc; rep from * across, turn.',
    ),
    counts: [22, 21, 21],
    findings: [{ row: 2, code: 'turning-chain-assumed' }],
    source: 'common practice, no source',
  },
  {
    name: 'a chain shorter than its stitch counts where nothing else comes out',
    terms: 'us',
    // 26 = the chain, three times 8 and the last stitch
    text: lines(
      'Ch 28.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn.',
      'Row 2: Ch 2, *FPdc around each of next 4 sts, BPdc around each of next 4 sts; rep from * to last st, hdc in last st, turn.',
    ),
    counts: [28, 26, 26],
    findings: [{ row: 2, code: 'turning-chain-assumed' }],
    source: 'common practice, no source',
  },
  {
    name: 'two chains skipped before a dc count where the row says so by its count',
    terms: 'us',
    text: lines('Ch 21.', 'Row 1: Dc in 3rd ch from hook and in each ch across, turn. (20 dc)'),
    counts: [21, 20],
    findings: [{ row: 1, code: 'turning-chain-assumed' }],
    source: 'common practice, no source',
  },
  {
    name: 'cluster over one stitch, ch 1 between',
    terms: 'us',
    // cl in first, (ch 1, sk 1, cl) 10 times over 20: 11 clusters, 10 spaces
    text: lines(
      'Cluster (cl): dc3tog in same st.',
      'Fsc 21.',
      'Row 1: Ch 2 (does not count as a st), cl in first st, *ch 1, sk next st, cl in next st; rep from * across, turn. (11 cl, 10 ch-1 sps)',
    ),
    counts: [21, 11],
    spaces: [0, 10],
    units: [null, { cl: 11 }],
    source: practice,
  },
  {
    name: 'cluster over three stitches',
    terms: 'us',
    // 22 = 1 + 7 * 3, each cluster uses 3: 1 + 7 = 8, 7 spaces
    text: lines(
      'Cl: dc3tog over next 3 sts.',
      'Fsc 22.',
      'Row 1: Ch 1, sc in first st, *ch 2, cl over next 3 sts; rep from * across, turn.',
    ),
    counts: [22, 8],
    spaces: [0, 7],
    units: [null, { cl: 7 }],
  },
  {
    name: 'bobbles among sc',
    terms: 'us',
    // 21 = 1 + 5 * 4: 16 sc and 5 bobbles
    text: lines(
      'Bobble (bo): dc5tog in same st.',
      'Fsc 21.',
      'Row 1 (WS): Ch 1, sc in first st, *sc in next 3 sts, bo in next st; rep from * across, turn. (5 bobbles)',
      'Row 2: Ch 1, sc in each st across, turn. (21 sc)',
    ),
    counts: [21, 21, 21],
    units: [null, { bo: 5 }, null],
    byKind: [null, { sc: 16 }, { sc: 21 }],
    source: practice,
  },
  {
    name: 'popcorns with a chain behind',
    terms: 'us',
    // 17 = 1 + 4 * 4: 13 hdc and 4 popcorns
    text: lines(
      'Popcorn (pc): 5 dc in same st, drop loop from hook, insert hook in first dc of group, pull dropped loop through.',
      'Fsc 17.',
      'Row 1: Ch 1, hdc in first st, *hdc in next 3 sts, pc in next st; rep from * across, turn. (17 sts)',
    ),
    counts: [17, 17],
    units: [null, { pc: 4 }],
    byKind: [null, { hdc: 13 }],
    source: practice,
  },
  {
    name: 'puffs with spaces',
    terms: 'us',
    // 20 / 2 = 10 puffs, 10 spaces
    text: lines(
      'Puff st (puff): [Yo, insert hook in st, yo and pull up a loop] 3 times in same st, yo and draw through all loops on hook.',
      'Ch 20, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around; join with sl st in first sc. (20 sc)',
      'Rnd 2: Ch 1, *puff in next st, ch 1, sk next st; rep from * around; join with sl st in first puff. (10 puffs)',
    ),
    counts: [null, 20, 10],
    spaces: [null, 0, 10],
    units: [null, null, { puff: 10 }],
    source: practice,
  },
  {
    name: 'dc3tog in one stitch written out',
    terms: 'us',
    // 19 = 1 + 9 * 2: 1 + 9 * 2 with ch 1 over the skipped one: 10 sts, 9 spaces
    text: lines(
      'Fsc 19.',
      'Row 1: Ch 1, sc in first st, *ch 1, sk next st, dc3tog in next st; rep from * across, turn.',
    ),
    counts: [19, 10],
    spaces: [0, 9],
    byKind: [null, { sc: 1, dc3tog: 9 }],
  },
  {
    name: 'picot edging',
    terms: 'us',
    // 24 sc, picots on top
    text: lines(
      'Picot: Ch 3, sl st in 3rd ch from hook.',
      'Fsc 24.',
      'Row 1: Ch 1, *sc in next 3 sts, picot; rep from * across. Fasten off. (24 sc, 8 picots)',
    ),
    counts: [24, 24],
    byKind: [null, { sc: 24 }],
    source: practice,
  },
  {
    name: 'picot in parentheses in the row',
    terms: 'us',
    text: lines(
      'Fsc 21.',
      'Row 1: Ch 1, sc in first st, *sc in next 3 sts, picot (ch 3, sl st in first ch), sc in next st; rep from * across. (21 sc)',
    ),
    counts: [21, 21],
  },
  {
    name: 'picot in the round',
    terms: 'us',
    // 3 * 12 = 36
    text: lines(
      'Picot: ch 4, sl st in 4th ch from hook.',
      'Ch 36, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 1, *sc in next 3 ch, picot; rep from * around; join with sl st in first sc. (36 sc)',
    ),
    counts: [null, 36],
  },
  {
    name: 'cluster with a chain that closes it',
    terms: 'us',
    // 12 clusters around 12 sts, 12 spaces
    text: lines(
      'Cl: dc3tog in same st.',
      'Rnd 1: Ch 1, 12 sc in magic ring; join with sl st in first sc. (12 sc)',
      'Rnd 2: Ch 2 (does not count), *cl in next sc, ch 2; rep from * around; join with sl st in first cl. (12 cl, 12 ch-2 sps)',
      'Rnd 3: Ch 1, 3 sc in each ch-2 sp around; join with sl st in first sc. (36 sc)',
    ),
    counts: [12, 12, 36],
    spaces: [0, 12, 0],
  },
  {
    name: 'abbreviated cluster with a number',
    terms: 'us',
    // 15 = 1 + 7 * 2
    text: lines(
      '3-dc cluster (3-dc cl): dc3tog in st indicated.',
      'Fsc 15.',
      'Row 1: Ch 1, sc in first st, *3-dc cl in next st, sc in next st; rep from * across, turn. (15 sts)',
    ),
    counts: [15, 15],
  },
  {
    name: 'reverse sc edging',
    terms: 'us',
    text: lines('Fsc 24.', 'Row 1: Ch 1, reverse sc in each st across. Fasten off. (24)'),
    counts: [24, 24],
  },
  {
    name: 'crossed stitches: skip, work, go back',
    terms: 'us',
    // 10 = 5 crossed pairs
    text: lines(
      'Fsc 12.',
      'Row 1: Ch 1, hdc in first st, *sk next st, dc in next st, dc in skipped st; rep from * to last st, hdc in last st, turn. (12 sts)',
    ),
    counts: [12, 12],
    byKind: [null, { hdc: 2, dc: 10 }],
  },
  {
    name: 'cables of 4: skip 2, work 2, work the skipped 2',
    terms: 'us',
    // 18 = 1 + 4 * 4 + 1
    text: lines(
      'Fsc 18.',
      'Row 1: Ch 1, sc in first st, *skip next 2 sts, tr in next 2 sts, working in front of tr just made, tr in 2 skipped sts; rep from * to last st, sc in last st, turn. (18 sts)',
    ),
    counts: [18, 18],
    byKind: [null, { sc: 2, tr: 16 }],
  },
  {
    name: 'bobbles among dc',
    terms: 'uk',
    // 21 = 1 + 5 * 4
    text: lines(
      'MB (make bobble): tr5tog in same st.',
      'Row 1: Work 21 fdc, turn.',
      'Row 2 (WS): 1 ch, 1 dc in first st, *1 dc in each of next 3 sts, MB in next st; rep from * to end, turn. (21 sts)',
      'Row 3: 1 ch, 1 dc in each st to end, turn. (21 dc)',
    ),
    counts: [21, 21, 21],
    source: practice,
  },
  {
    name: 'cluster of tr',
    terms: 'uk',
    text: lines(
      'Cl: tr3tog in same st.',
      'Row 1: Work 21 fdc, turn.',
      'Row 2: 2 ch (does not count as a st), cl in first st, *1 ch, miss 1 st, cl in next st; rep from * to end, turn. (11 cl)',
    ),
    counts: [21, 11],
    spaces: [0, 10],
    units: [null, { cl: 11 }],
    source: practice,
  },
  {
    name: 'popcorns in the round',
    terms: 'uk',
    // (pc, 2 ch, miss 1) 8 times over 16: 8 sts, 8 spaces
    text: lines(
      'PC: 5 tr in same st, remove hook, insert in first tr, draw loop through.',
      'Rnd 1: 1 ch, 16 dc in magic ring, join with ss in first dc. (16 dc)',
      'Rnd 2: 1 ch, *PC in next dc, 2 ch, miss 1 dc; rep from * around, join with ss in first PC. (8 PC, 8 ch-sps)',
    ),
    counts: [16, 8],
    spaces: [0, 8],
    units: [null, { PC: 8 }],
    source: practice,
  },
  {
    name: 'puffs and htr',
    terms: 'uk',
    // 20 / 4: 3 htr, PS
    text: lines(
      'PS: (yrh, insert hook in st, yrh and draw up a loop) 4 times in same st, yrh and draw through all loops on hook.',
      'Row 1: Work 21 fdc, turn.',
      'Row 2: 1 ch, 1 htr in first st, *PS in next st, 1 htr in each of next 3 sts; rep from * to end, turn. (21 sts)',
    ),
    counts: [21, 21],
    units: [null, { PS: 5 }],
    byKind: [null, { htr: 16 }],
    source: practice,
  },
  {
    name: 'picot edging',
    terms: 'uk',
    text: lines(
      'Picot: 3 ch, ss in first of these ch.',
      'Row 1: Work 24 fdc, turn.',
      'Row 2: 1 ch, *1 dc in each of next 4 sts, picot; rep from * to end. Fasten off. (24 dc)',
    ),
    counts: [24, 24],
    byKind: [null, { dc: 24 }],
  },
  {
    name: 'crossed tr',
    terms: 'uk',
    text: lines(
      'Row 1: Work 22 fdc, turn.',
      'Row 2: 3 ch (counts as 1 tr), miss first st, *miss 1 st, 1 tr in next st, 1 tr in missed st; rep from * to last st, 1 tr in last st, turn. (22 tr)',
    ),
    counts: [22, 22],
  },
  {
    name: 'tr3tog in one stitch by size',
    terms: 'uk',
    // (n - 1) / 2 clusters + 1: n = 15, 19: 8, 10; spaces 7, 9
    text: lines(
      'Make 16 (20) ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 15 (19) dc.',
      'Row 2: 1 ch, 1 dc in first dc, *1 ch, miss 1 dc, tr3tog in next dc; rep from * to end, turn.',
    ),
    counts: [
      [16, 20],
      [15, 19],
      [8, 10],
    ],
    spaces: [
      [0, 0],
      [0, 0],
      [7, 9],
    ],
  },
  {
    name: 'linen stitch whose edges are turning chains with room under them',
    terms: 'us',
    // 24 ch: sc in every second from the 4th on, 11, the edge's chain a space; then a sc in every space
    text: lines(
      'Ch 24.',
      'Row 1: Sc in 4th ch from hook, *ch 1, sk 1, sc in next ch; rep from * across, turn.',
      'Row 2: Ch 2, sc in next ch-1 sp, *ch 1, sc in next ch-1 sp; rep from * to end, working last sc in ch-3 sp, turn.',
      'Row 3: Ch 2, sc in ch-1 sp, *ch 1, sc in next ch-1 sp; rep from * across, with last sc in beg ch-2 sp, turn.',
    ),
    counts: [24, 11, 11, 11],
    spaces: [0, 11, 11, 11],
    source: practice,
  },
  {
    name: 'a cable over two rows, both first stitches said in brackets',
    terms: 'us',
    text: lines(
      'Ch 20.',
      'Row 1: Dc in 4th ch from hook (counts as 2 dc) and in each ch across, turn.',
      'Row 2: Ch 2 (counts as hdc), bpdc around each of next 2 sts, dc in next 2 sts, skip 3 sts, bptr around each of next 3 sts, working in front of tr just made, bptr around each of 3 skipped sts, dc in next 2 sts, bpdc around each of next 2 sts, dc in next 2 sts, hdc in top of tch, turn.',
    ),
    counts: [20, 18, 18],
    source: practice,
  },
  {
    name: 'a bobble told by what the hook does, defined as a special stitch on one line',
    terms: 'us',
    text: lines(
      'Special stitch: Bobble (bo): [Yo, insert hook in st, yo and pull up a loop, yo and pull through 2 loops] 5 times in same st, yo and pull through all 6 loops on hook.',
      'Ch 24.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, sc in first 3 sts, *bo in next st, sc in next 3 sts; rep from * across, turn.',
    ),
    counts: [24, 23, 23],
    source: practice,
  },
  {
    name: 'a V-stitch behind the one word "Special"',
    terms: 'us',
    text: lines(
      'Special: V-st = (dc, ch 1, dc) in same st or sp.',
      'Ch 31.',
      'Row 1: V-st in 5th ch from hook, *sk 2 ch, V-st in next ch; rep from * to last 2 chs, sk next ch, dc in last ch, turn. (9 V-sts)',
      'Row 2: Ch 3, V-st in ch-1 sp of each V-st across, dc in top of beg ch, turn. 9 V-sts.',
    ),
    counts: [31, 20, 20],
    spaces: [0, 9, 9],
    source: practice,
  },
];
