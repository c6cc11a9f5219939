/**
 * Written rows: V-stitches, shells and fans, defined in the text. A shell's name in a row brings its
 * stitches to the count and one unit to the units.
 */
import { lines, type RowCase } from '../types.ts';

const practice = 'common practice, no source';

export const shells: readonly RowCase[] = [
  {
    name: 'shells of 5 on a chain',
    terms: 'us',
    // 37 worked chains = 1 + 6 * 6: 7 sc + 6 * 5 dc
    text: lines(
      'Ch 38.',
      'Row 1: Sc in 2nd ch from hook, *sk 2 ch, 5 dc in next ch, sk 2 ch, sc in next ch; rep from * across, turn. (37 sts)',
    ),
    counts: [38, 37],
    byKind: [null, { sc: 7, dc: 30 }],
    source: practice,
  },
  {
    name: 'shells of 5, three rows with a defined shell',
    terms: 'us',
    // row 2: 3 + 5 * (1 + 5) + 1 + 3 = 37, 5 shells; row 3: 7 sc + 6 shells = 37
    text: lines(
      'Special stitch: Shell: 5 dc in same st.',
      'Ch 38.',
      'Row 1: Sc in 2nd ch from hook, *sk 2 ch, shell in next ch, sk 2 ch, sc in next ch; rep from * across, turn. (7 sc, 6 shells)',
      'Row 2: Ch 3 (counts as dc), 2 dc in first sc, *sk 2 dc, sc in next dc, sk 2 dc, shell in next sc; rep from * to last 6 sts, sk 2 dc, sc in next dc, sk 2 dc, 3 dc in last sc, turn.',
      'Row 3: Ch 1, sc in first dc, *sk 2 dc, shell in next sc, sk 2 dc, sc in next dc; rep from * across, turn. (7 sc, 6 shells)',
    ),
    counts: [38, 37, 37, 37],
    units: [null, { shell: 6 }, { shell: 5 }, { shell: 6 }],
    source: practice,
  },
  {
    name: 'shell with a space, shell in shell',
    terms: 'us',
    // 26 sts = 1 + 4 * 6 + 1; row 1: ch 3 + 4 * 4 + 1 = 18, 4 spaces; row 2 the same
    text: lines(
      'Shell (sh): (2 dc, ch 2, 2 dc) in st or sp indicated.',
      'Fsc 26.',
      'Row 1: Ch 3 (counts as dc), sk first st, *sk 2 sts, shell in next st, sk 3 sts; rep from * to last st, dc in last st, turn. (4 shells, 2 dc)',
      'Row 2: Ch 3 (counts as dc), shell in ch-2 sp of each shell across, dc in top of turning ch, turn. (4 shells)',
    ),
    counts: [26, 18, 18],
    spaces: [0, 4, 4],
    units: [null, { shell: 4 }, { shell: 4 }],
    source: practice,
  },
  {
    name: 'shell in centre of next shell',
    terms: 'us',
    text: lines(
      'Shell: (3 dc, ch 1, 3 dc) in same place.',
      'Fsc 24.',
      'Row 1: Ch 1, sc in first st, *sk 3 sts, shell in next st, sk 3 sts, sc in next st; rep from * to last 7 sts, sk 3 sts, shell in next st, sk 2 sts, sc in last st, turn.',
      'Row 2: Ch 3 (counts as dc), sk first sc, shell in center of next shell, sc in next sc, *shell in center of next shell, sc in next sc; rep from * to last shell, shell in center of last shell, dc in last sc, turn.',
    ),
    // row 1: 24 = 1 + 8 + 8 + 7: 3 shells of 6 and 4 sc = 22, 3 spaces
    // row 2: ch 3, shell, sc, shell, sc, shell, dc = 1 + 18 + 2 + 1 = 22
    counts: [24, 22, 22],
    spaces: [0, 3, 3],
    units: [null, { shell: 3 }, { shell: 3 }],
    source: practice,
  },
  {
    name: 'V-st defined, over 20 sts',
    terms: 'us',
    // 20 = 1 + 6 * 3 + 1: 2 + 6 * 2 = 14, 6 spaces
    text: lines(
      'V-st: (dc, ch 1, dc) in same st or sp.',
      'Fsc 20.',
      'Row 1: Ch 3 (counts as dc), sk first st, *sk 1 st, V-st in next st, sk 1 st; rep from * to last st, dc in last st, turn. (6 V-sts, 2 dc)',
      'Row 2: Ch 3 (counts as dc), V-st in each ch-1 sp across, dc in top of turning ch, turn. (6 V-sts)',
    ),
    counts: [20, 14, 14],
    spaces: [0, 6, 6],
    units: [null, { 'V-st': 6 }, { 'V-st': 6 }],
    source: practice,
  },
  {
    name: 'V-st taken in its usual meaning',
    terms: 'us',
    text: lines(
      'Fsc 20.',
      'Row 1: Ch 3 (counts as dc), sk first 2 sts, V-st in next st, *sk 2 sts, V-st in next st; rep from * to last 2 sts, sk 1 st, dc in last st, turn.',
    ),
    // 20: 2 + 1 + 5 * 3 + 1 + 1: 6 V-sts
    counts: [20, 14],
    spaces: [0, 6],
    units: [null, { 'V-st': 6 }],
    findings: [{ row: 1, code: 'definition-assumed', severity: 'note', words: 'V-st' }],
  },
  {
    name: 'V written out',
    terms: 'us',
    // 22 = 1 + 7 * 3: 7 Vs of hdc
    text: lines(
      'Fsc 22.',
      'Row 1: Ch 1, hdc in first st, *sk 1 st, (hdc, ch 1, hdc) in next st, sk 1 st; rep from * across, turn. (15 hdc, 7 ch-1 sps)',
    ),
    counts: [22, 15],
    spaces: [0, 7],
    byKind: [null, { hdc: 15 }],
  },
  {
    name: 'shells in the round',
    terms: 'us',
    // 24 / 6 = 4: 4 sc + 4 * 5
    text: lines(
      'Shell: 5 dc in st indicated.',
      'Ch 24, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around; join with sl st in first sc. (24)',
      'Rnd 2: Ch 1, *sc in next sc, sk 2 sc, shell in next sc, sk 2 sc; rep from * around; join with sl st in first sc. (4 sc, 4 shells)',
    ),
    counts: [null, 24, 24],
    units: [null, null, { shell: 4 }],
  },
  {
    name: 'fan of dc and ch 1',
    terms: 'us',
    // fan: 4 dc, 3 spaces; 25 = 1 + 8 * 3: sc, (sk 3, fan, sk 3, sc) 3 times = 4 sc + 12 dc, 9 spaces
    text: lines(
      'Fan: (dc, ch 1) 3 times, dc, all in same st.',
      'Fsc 25.',
      'Row 1: Ch 1, sc in first st, *sk 3 sts, fan in next st, sk 3 sts, sc in next st; rep from * across, turn. (3 fans, 4 sc)',
    ),
    counts: [25, 16],
    spaces: [0, 9],
    units: [null, { fan: 3 }],
  },
  {
    name: 'half shell and beg shell defined',
    terms: 'us',
    // 13 = 1 + 6 * 2: half shell 3 (ch 3 counts), sc, shell 5, sc, half shell 3 = 13
    text: lines(
      'Beg half shell: Ch 3 (counts as dc), 2 dc in same st.',
      'Half shell: 3 dc in same st.',
      'Shell: 5 dc in same st.',
      'Fsc 13.',
      'Row 1: Beg half shell in first st, *sk 2 sts, sc in next st, sk 2 sts, shell in next st; rep from * to last 6 sts, sk 2 sts, sc in next st, sk 2 sts, half shell in last st, turn.',
    ),
    counts: [13, 13],
    units: [null, { shell: 1, 'half shell': 1 }],
  },
  {
    name: 'shells by size',
    terms: 'us',
    // 6n + 1 sts: 25, 31, 37: 4, 5, 6 shells
    text: lines(
      'Shell = 5 dc in next st.',
      'Ch 26 (32, 38).',
      'Row 1: Sc in 2nd ch from hook, *sk 2 ch, shell in next ch, sk 2 ch, sc in next ch; rep from * across, turn. 4 (5, 6) shells.',
    ),
    counts: [
      [26, 32, 38],
      [25, 31, 37],
    ],
    units: [null, { shell: [4, 5, 6] }],
  },
  {
    name: 'shell edging of a straight edge',
    terms: 'us',
    // 25 = 1 + 6 * 4: 7 sc + 6 * 5
    text: lines(
      'Fsc 25.',
      'Row 1: Ch 1, sc in first st, *sk 1 st, 5 hdc in next st, sk 1 st, sc in next st; rep from * across. Fasten off. (37 sts)',
    ),
    counts: [25, 37],
    byKind: [null, { sc: 7, hdc: 30 }],
  },
  {
    name: 'shells of 5 on a chain',
    terms: 'uk',
    text: lines(
      'Make 38 ch.',
      'Row 1: 1 dc in 2nd ch from hook, *miss 2 ch, 5 tr in next ch, miss 2 ch, 1 dc in next ch; rep from * to end, turn. (37 sts)',
    ),
    counts: [38, 37],
    byKind: [null, { dc: 7, tr: 30 }],
    source: practice,
  },
  {
    name: 'shell defined, in 3rd tr of next shell',
    terms: 'uk',
    // row 1: 25 = 1 + 4 * 6, 4 shells; row 2: 3 ch + 2 tr, (dc, shell) 3 times, dc, 3 tr = 3 + 18 + 1 + 3 = 25
    text: lines(
      'Shell: 5 tr in same st.',
      'Make 26 ch.',
      'Row 1: 1 dc in 2nd ch from hook, *miss 2 ch, shell in next ch, miss 2 ch, 1 dc in next ch; rep from * to end, turn. (4 shells)',
      'Row 2: 3 ch (counts as 1 tr), 2 tr in first dc, *1 dc in 3rd tr of next shell, shell in next dc; rep from * to last shell, 1 dc in 3rd tr of last shell, 3 tr in last dc, turn. (3 shells)',
    ),
    counts: [26, 25, 25],
    units: [null, { shell: 4 }, { shell: 3 }],
    source: practice,
  },
  {
    name: 'V-st defined, V in V',
    terms: 'uk',
    text: lines(
      'V-st: (1 tr, 1 ch, 1 tr) in same st or sp.',
      'Row 1: Work 20 fdc, turn.',
      'Row 2: 3 ch (counts as 1 tr), miss first 2 sts, V-st in next st, *miss 2 sts, V-st in next st; rep from * to last 2 sts, miss 1 st, 1 tr in last st, turn. (6 V-sts)',
      'Row 3: 3 ch (counts as 1 tr), V-st in 1ch-sp of each V-st to end, 1 tr in top of turning ch, turn. (6 V-sts)',
    ),
    counts: [20, 14, 14],
    spaces: [0, 6, 6],
    units: [null, { 'V-st': 6 }, { 'V-st': 6 }],
  },
  {
    name: 'fans in the round',
    terms: 'uk',
    // 32 / 8 = 4: dc, miss 3, 7 tr, miss 3
    text: lines(
      'Fan: 7 tr in same st.',
      'Make 32 ch, join with ss in first ch to form a ring.',
      'Rnd 1: 1 ch, 1 dc in each ch around, join with ss in first dc. (32 dc)',
      'Rnd 2: 1 ch, *1 dc in next dc, miss 3 dc, fan in next dc, miss 3 dc; rep from * around, join with ss in first dc. (4 fans)',
    ),
    counts: [null, 32, 32],
    units: [null, null, { fan: 4 }],
  },
  {
    name: 'shells written out, by size',
    terms: 'uk',
    // 4n + 1: 21, 29: 5, 7 shells of 3 htr; 6 + 15 = 21, 8 + 21 = 29
    text: lines(
      'Make 22 (30) ch.',
      'Row 1: 1 dc in 2nd ch from hook, *miss 1 ch, 3 htr in next ch, miss 1 ch, 1 dc in next ch; rep from * to end. 21 (29) sts.',
    ),
    counts: [
      [22, 30],
      [21, 29],
    ],
    byKind: [null, { dc: [6, 8], htr: [15, 21] }],
  },
  {
    name: 'scallops with a picot in the middle',
    terms: 'uk',
    // 25 = 1 + 4 * 6: 5 dc + 4 * 6 tr
    text: lines(
      'Picot: 3 ch, ss in first ch.',
      'Row 1: Work 25 fdc, turn.',
      'Row 2: 1 ch, 1 dc in first st, *miss 2 sts, (3 tr, picot, 3 tr) in next st, miss 2 sts, 1 dc in next st; rep from * to end. Fasten off.',
    ),
    counts: [25, 29],
    byKind: [null, { dc: 5, tr: 24 }],
  },
  {
    name: 'corner to corner: blocks rising and falling',
    terms: 'us',
    text: lines(
      'Ch 6.',
      'Row 1: Dc in 4th ch from hook, dc in next 2 chs, turn. (1 block)',
      'Row 2: Ch 6, dc in 4th ch from hook, dc in next 2 chs, (sl st, ch 3, 3 dc) in ch-3 sp of previous block, turn. (2 blocks)',
      'Row 3: Ch 6, dc in 4th ch from hook, dc in next 2 chs, *(sl st, ch 3, 3 dc) in ch-3 sp of next block; rep from * across, turn. (3 blocks)',
      'Row 4: Ch 6, dc in 4th ch from hook, dc in next 2 chs, (sl st, ch 3, 3 dc) in each ch-3 sp across, turn. (4 blocks)',
      'Row 5: Sl st in first 3 sts, sl st in ch-3 sp, ch 3, 3 dc in same sp, *(sl st, ch 3, 3 dc) in next ch-3 sp; rep from * to last block, sl st in last ch-3 sp, turn. (3 blocks)',
    ),
    // The chain of a block is its edge stitch or its space: 4; 4 + 4; 4 + 2 * 4; 4 + 3 * 4; 4 + 2 * 4 + 1 sl st.
    counts: [6, 4, 8, 12, 16, 13],
    spaces: [0, 0, 1, 2, 3, 2],
    source: 'common practice, no source: corner-to-corner in blocks of a chain and three stitches',
  },
  {
    name: 'corner to corner: tiles hung on to those below, stitch by stitch',
    terms: 'us',
    text: lines(
      'Row 1: Ch 6, dc in 4th ch from hook and in next 2 chs. (1 tile)',
      'Row 2: Ch 6, turn, dc in 4th ch from hook and in next 2 chs, sl st in ch-3 sp of tile below, ch 3, 3 dc in same sp. (2 tiles)',
      'Row 3: Ch 6, turn, dc in 4th ch from hook and in next 2 chs, *sl st in ch-3 sp of next tile, ch 3, 3 dc in same sp; rep from * to end. (3 tiles)',
      'Row 4: Turn, sl st in first 3 dc and in ch-3 sp, ch 3 (counts as dc), 3 dc in same sp, *sl st in next ch-3 sp, ch 3, 3 dc in same sp; rep from * to last tile, sl st in ch-3 sp of last tile. (2 tiles)',
    ),
    // 4; 4 + 4; 4 + 2 * 4; 4 + 4 + 1
    counts: [4, 8, 12, 9],
    spaces: [0, 1, 2, 1],
    source: 'common practice, no source: corner-to-corner in blocks of a chain and three stitches',
  },
  ...['prev block', 'previous tile', 'the first tile', 'last block'].map(
    (which): RowCase => ({
      name: `corner to corner: hung on to the space of ${which}, and no other piece`,
      terms: 'us',
      text: lines(
        'Ch 6.',
        'Row 1: Dc in 4th ch from hook, dc in next 2 chs, turn.',
        `Row 2: Ch 6, dc in 4th ch from hook and in next 2 chs, sl st in ch-3 sp of ${which}, ch 3, 3 dc in same sp, turn.`,
      ),
      counts: [6, 4, 8],
      spaces: [0, 0, 1],
    }),
  ),
  {
    name: 'between the two stitches of a V that has no chain and no name of its own in the row below',
    terms: 'us',
    text: lines(
      'V-st: 2 dc in same st.',
      'Ch 14.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (13 sc)',
      'Row 2: Ch 3 (counts as dc), sk 1 st, *2 dc in next st, sk 1 st; rep from * across, ending dc in last st, turn. (12 dc)',
      'Row 3: Ch 3 (counts as dc), *2 dc between the 2 dc of next V-st; rep from * across, dc in top of tch, turn. (12 dc)',
    ),
    // 1 + 5 * 2 + 1
    counts: [14, 13, 12, 12],
  },
  {
    name: 'three stitches defined on one line',
    terms: 'us',
    // 3 + 3 * (1 + 5) + 1 + 3 = 25 over 1 + 3 * 6 + 6 = 25
    text: lines(
      'Shell: 5 dc in next st. Half shell: 3 dc in next st. Beg shell: ch 3, 2 dc in same st.',
      'Ch 26.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (25 sc)',
      'Row 2: Beg shell, *sk 2 sts, sc in next st, sk 2 sts, shell in next st; rep from * to last 6 sts, sk 2 sts, sc in next st, sk 2 sts, half shell in last st.',
    ),
    counts: [26, 25, 25],
    spaces: [0, 0, 0],
  },
  {
    name: 'two stitches defined on one line',
    terms: 'uk',
    // 1 + 3 * (5 + 1) = 19; then 1 + 3 * (2 * 3) = 19
    text: lines(
      'Shell: 5 tr in next st; Small shell: 2 tr in next st.',
      'Make 20 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (19 dc)',
      'Row 2: 1 ch, 1 dc in first st, *miss 2 sts, shell in next st, miss 2 sts, 1 dc in next st; rep from * to end.',
    ),
    counts: [20, 19, 19],
  },
];
