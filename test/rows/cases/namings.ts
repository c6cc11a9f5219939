/**
 * Written rows: what rows call things: stitches named where they are first worked, corners, the meshes of filet, stitches
 * told by their colour alone. Must not repeat a passage of another case file.
 */
import { sc, uk, us } from '../swatch.ts';
import type { RowCase } from '../types.ts';

const grannyRing = [
  'Ch 4, sl st in first ch to form ring.',
  'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, (3 dc, ch 2) 3 times in ring, join with sl st in top of beg ch-3. (12 dc, 4 ch-2 corner sps)',
];

const filet = [
  'Ch 38',
  'Row 1: Dc in 8th ch from hook, [ch 2, skip 2 ch, dc in next ch] across, turn. 11 mesh',
];

export const namings: readonly RowCase[] = [
  // Named where first worked
  us(
    'a shell named behind its group',
    // 5 * 6 dc and 6 sc; then ch 3 and 5 * (6 dc and 1 dc)
    [
      'Ch 32.',
      'Row 1: Sc in 2nd ch from hook, *sk 2 ch, (3 dc, ch 1, 3 dc) in next ch (shell made), sk 2 ch, sc in next ch; rep from * across, turn. (5 shells, 6 sc)',
      'Row 2: Ch 3, *shell in ch-1 sp of next shell, ch 1, dc in next sc; rep from * across, turn. (5 shells)',
    ],
    [32, 36, 36],
    { spaces: [0, 5, 10] },
  ),
  us(
    'a stitch that only this pattern knows, named behind its group',
    // 5 * 4 dc and 6 sc; then ch 3 and 5 * (4 dc and 1 dc)
    [
      'Ch 32.',
      'Row 1: Sc in 2nd ch from hook, *sk 2 ch, (2 dc, ch 1, 2 dc) in next ch (leaf made), sk 2 ch, sc in next ch; rep from * across, turn. (6 sc)',
      'Row 2: Ch 3, *leaf in ch-1 sp of next leaf, dc in next sc; rep from * across, turn. (5 leaves)',
    ],
    [32, 26, 26],
  ),
  us(
    'a crossing named behind its last stitch',
    // ch 3 and 10 pairs over 20 sts, twice
    [
      ...sc(21),
      'Row 2: Ch 3, turn, *sk next st, dc in next st, dc in skipped st (cross st made); rep from * across. (10 cross sts)',
      'Row 3: Ch 3, turn, *cross st over next 2 sts; rep from * across.',
    ],
    [22, 21, 21, 21],
  ),
  us(
    'of a beginning group and a whole one of the same name the whole one is meant',
    // 4 corners of 6 dc; then 4 * (6 + 3)
    [
      ...grannyRing,
      'Rnd 2: Sl st in next 2 dc and in next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp (corner made), ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp (corner made), ch 1; rep from * around, join. (24 dc)',
      'Rnd 3: Sl st to corner sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, 3 dc in next ch-1 sp, ch 1, *corner in next corner, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * around, join. (36 dc)',
    ],
    [4, 12, 24, 36],
  ),
  us(
    'a wrong number of stitches in rows worked by such a name',
    [
      'Ch 32.',
      'Row 1: Sc in 2nd ch from hook, *sk 2 ch, (2 dc, ch 1, 2 dc) in next ch (fan made), sk 2 ch, sc in next ch; rep from * across, turn.',
      'Row 2: Ch 3, *fan in ch-1 sp of next fan, dc in next sc; rep from * across, turn. (31 dc)',
    ],
    [32, 26, 26],
    { findings: [{ row: 2, code: 'stated-count-wrong', saying: ['31', '26'] }] },
  ),

  us(
    'increase and decrease by signs of equality on one line',
    [
      'inc = 2 hdc in same st; dec = hdc2tog',
      'Ch 21.',
      'Row 1: hdc in 2nd ch from hook and each ch. (20)',
      'Row 2: ch 1, inc, hdc 18, inc. (22)',
      'Row 3: ch 1, dec, hdc 18, dec. (20)',
    ],
    [21, 20, 22, 20],
  ),
  us(
    'a list of abbreviations on one line is no row',
    [
      'Abbreviations: ch - chain; sc - single crochet; st(s) - stitch(es); sl st - slip stitch; inc - increase',
      'Rnd 1: 6 sc in MR',
      'Rnd 2: inc around (12)',
    ],
    [6, 12],
  ),
  us(
    'a stitch among abbreviations ends where the next begins',
    [
      'Abbreviations: Shell = 5 dc in same st; sc = single crochet',
      'Ch 14.',
      'Row 1: Sc in 2nd ch from hook, *sk 2 ch, shell in next ch, sk 2 ch, sc in next ch; rep from * across. (2 shells)',
    ],
    [14, 13],
  ),

  // Corners
  us(
    'a corner defined by a sign of equality',
    [
      'Corner = (3 dc, ch 2, 3 dc)',
      ...grannyRing,
      'Rnd 2: Sl st in next 2 dc and in next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *corner in next ch-2 sp, ch 1; rep from * around, join. (24 dc)',
    ],
    [4, 12, 24],
  ),
  us(
    'a corner among the special stitches, and corners worked into',
    [
      'Special stitches:',
      'Corner: (3 dc, ch 2, 3 dc) in indicated sp.',
      '',
      ...grannyRing,
      'Rnd 2: Sl st in next 2 dc and in next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *work corner in next ch-2 sp, ch 1; rep from * around, join. (24 dc)',
      'Rnd 3: Sl st to corner, ch 3, (2 dc, ch 2, 3 dc) in same corner, ch 1, 3 dc in next ch-1 sp, ch 1, *corner in next corner, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * around, join. (36 dc)',
    ],
    [4, 12, 24, 36],
  ),
  us(
    'a corner that nothing defines is named as such',
    [
      ...grannyRing,
      'Rnd 2: Sl st to corner, ch 3, (2 dc, ch 2, 3 dc) in same corner, ch 1, *corner in next ch-2 sp, ch 1; rep from * around, join.',
    ],
    [4, 12, null],
    { findings: [{ row: 2, code: 'special-not-defined', words: 'corner', saying: ['corner'] }] },
  ),

  // Groups that go by the name of clusters
  us(
    'clusters of a granny',
    ['Rnd 1: MR, ch 3, 2 dc, (ch 2, 3 dc) 3 times, ch 2, join. (4 clusters, 4 ch-2 sps)'],
    [12],
  ),
  us(
    'a wrong number of such clusters',
    ['Rnd 1: MR, ch 3, 2 dc, (ch 2, 3 dc) 3 times, ch 2, join. (5 clusters)'],
    [12],
    { findings: [{ row: 0, code: 'stated-count-wrong', saying: ['5', '4'] }] },
  ),
  us(
    'spaces between such clusters',
    // edge groups of 2 and 9 of 3: 2 + 27 + 2; then ch 3, 10 gaps of 3 dc, 1 dc
    [
      ...sc(31),
      'Row 2: Ch 3, dc in same st, *sk 2 sts, 3 dc in next st; rep from * to last 3 sts, sk 2 sts, 2 dc in last st, turn. (31 dc)',
      'Row 3: Ch 3, *3 dc in next sp between clusters; rep from * across, dc in top of tch, turn. (32 dc)',
    ],
    [32, 31, 31, 32],
  ),

  // Filet
  us(
    'meshes as places and as what is counted',
    // 12 posts; then 12 + 9 * 2 with two meshes open
    [
      ...filet,
      'Row 2: Ch 5, skip first mesh, dc in next dc, [2 dc in next mesh, dc in next dc] 9 times, ch 2, dc in 3rd ch of ch-5, turn. 9 blocks, 2 mesh',
      'Row 3: Ch 5, dc in next dc, [ch 2, skip 2 dc, dc in next dc] 9 times, ch 2, dc in 3rd ch of ch-5, turn. (11 open mesh)',
    ],
    [38, 12, 30, 12],
    { spaces: [0, 11, 2, 11] },
  ),
  us(
    'too many open meshes beside the blocks',
    [
      ...filet,
      'Row 2: Ch 5, skip first mesh, dc in next dc, [2 dc in next mesh, dc in next dc] 9 times, ch 2, dc in 3rd ch of ch-5, turn. (9 blocks, 3 open mesh)',
    ],
    [38, 12, 30],
    { findings: [{ row: 2, code: 'stated-count-wrong', saying: ['3', '2'] }] },
  ),

  // Colours
  us(
    'stitches told by their colour alone, in the stitch of the row below',
    [
      'Ch 25 with A.',
      'Row 1: With A, dc in 4th ch from hook and in each ch across, turn. (23 dc)',
      'Row 2: Ch 3 (counts as dc), 4 A, 8 B, 10 A, turn.',
      'Row 3: Ch 3, (6) A, (10) B, (6) A, turn. (23)',
    ],
    [25, 23, 23, 23],
    { byKind: [null, null, { dc: 23 }, null] },
  ),
  us(
    'colours in repeats, and glued to their numbers',
    [
      ...sc(24),
      'Row 2: Ch 1, 4 B, (4 A, 4 B) twice, 4 A. Turn.',
      'Row 3: Ch 1, sc 4A, 4B, 8A, 4B, 4A, turn.',
      'Row 4: Ch 1, (A) x 6, (B) x 12, (A) x 6, turn.',
      'Row 5: Ch 1, 6A 12B 6A, turn.',
      'Row 6: Ch 1, 5 white, 14 dark red, 5 white.',
      'Row 7: Ch 1, turn, A x 6, B x 12, A x 6.',
    ],
    [25, 24, 24, 24, 24, 24, 24, 24],
  ),
  us(
    'one stitch too many in the last colour',
    [...sc(24), 'Row 2: Ch 1, 4 A, 12 B, 9 A, turn.'],
    [25, 24, null],
    { findings: [{ row: 2, code: 'place-does-not-exist', words: '9 A', saying: ['9', '8'] }] },
  ),
  uk(
    'the colours of what is worked into each stitch',
    [
      'Make 25ch in A.',
      '1st row: 1dc in 2nd ch from hook, 1dc in each ch to end, turn. (24 dc)',
      '2nd row: 1ch, 1dc in each st: 3 in A, 18 in B, 3 in A, turn.',
    ],
    [25, 24, 24],
  ),
];
