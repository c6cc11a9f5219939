/**
 * Written rows: scraps of wording that were met late: loops that an earlier round left, skipped stitches by the short
 * word, counts behind a dash, chains told by their multiple. Must not repeat a passage of another case file.
 */
import { sc, uk, us } from '../swatch.ts';
import type { RowCase } from '../types.ts';

const toy = [
  'Rnd 1: 6 sc in magic ring. (6)',
  'Rnd 2: 2 sc in each st. (12)',
  'Rnd 3: Sc in BLO in each st. (12)',
  'Rnd 4: Sc in each st. (12)',
];

export const scraps: readonly RowCase[] = [
  // Loops of an earlier row
  us(
    'front loops left by an earlier round, said first',
    [
      ...toy,
      'Rnd 5: Working in the unworked front loops of Rnd 2, join with sc in any st, sc in each st around. (12)',
    ],
    [6, 12, 12, 12, 12],
  ),
  us(
    'front loops left by an earlier row, as the place',
    [
      ...sc(22),
      'Row 2: Sl st in BLO across. (22)',
      'Row 3: Ch 2, hdc in unworked front loops of Row 1 across. (22)',
    ],
    [23, 22, 22, 22],
  ),
  us(
    'yarn joined in a front loop of an earlier round',
    [
      ...toy.slice(0, 3),
      'Rnd 4: Join yarn in any front loop of Rnd 2, ch 1, *3 dc in next front loop; rep from * around. (36)',
    ],
    [6, 12, 12, 36],
  ),
  us(
    'loops of the row below by its number',
    [...sc(18), 'Row 2: Ch 1, sc in back loops of Row 1 across. (18 sc)'],
    [19, 18, 18],
  ),

  // What was skipped, by the short word
  us(
    'crossed stitches over a stitch skipped',
    // 2 + 12 * 2 + 1
    [
      ...sc(27),
      'Row 2: Ch 3 (counts as dc), dc in next st, *sk 1 st, dc in next st, dc in sk st (crossed st made); rep from * to last st, dc in last st. (27 dc)',
    ],
    [28, 27, 27],
  ),
  us(
    'a cable over three stitches skipped',
    // 3 + 3 * (3 + 3 + 2) + 5 = 32; 3 + 6 + 5 dc, 18 tr
    [
      ...sc(32),
      'Row 2: Ch 3 (counts as dc), dc in next 2 sts, *sk 3 sts, tr in next 3 sts, working in front of tr just made, tr in 3 sk sts (cable made), dc in next 2 sts; rep from * 2 more times, dc in last 5 sts. (32 sts)',
    ],
    [33, 32, 32],
    { byKind: [null, null, { dc: 14, tr: 18 }] },
  ),
  us(
    'a skip without a comma stays a skip',
    [...sc(20), 'Row 2: Ch 1, (sc in next st sk 1 st) 10 times, turn. (10 sc)'],
    [21, 20, 10],
  ),

  // Ends of rows
  us(
    'a count behind a dash, after a number',
    [
      'Ch 8.',
      'Row 1: Sc in 2nd ch from hook and each ch across - 7 sts.',
      'Row 2: Ch 1, turn, sc 3, 3 sc in next, sc 3 - 9 sts.',
    ],
    [8, 7, 9],
  ),
  us(
    'a wrong count behind a dash, after a number',
    [...sc(7), 'Row 2: Ch 1, turn, sc 3, 3 sc in next, sc 3 - 10 sts.'],
    [8, 7, 9],
    { findings: [{ row: 2, code: 'stated-count-wrong', words: '10 sts', saying: ['10', '9'] }] },
  ),
  us(
    'a slip stitch to even out the last round',
    [...toy, 'Rnd 5: Sc in each st, sl st in next st to even out. Fasten off. (12)'],
    [6, 12, 12, 12, 12],
  ),
  uk(
    'ending in the turning chain',
    [
      'Make 122 ch.',
      'Row 1: 1 htr in 3rd ch from hook (counts as 2 htr), 1 htr in each ch to end. 121 htr.',
      'Row 2: 2 ch (counts as htr), miss st at base of ch, htr in each st to end, ending in top of 2 ch. 121 htr.',
    ],
    [122, 121, 121],
  ),

  // Rows again, and even rows
  us(
    'rows held together by a bracket and worked again, by size',
    [
      'Ch 62 (66, 72).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 61 (65, 71) sc.',
      'Row 2: Ch 1, sc in each st across, turn.',
      'Row 3: Ch 1, sc2tog, sc in each st across to last 2 sts, sc2tog, turn. 59 (63, 69) sc.',
      'Rep [Rows 2 and 3] 5 (6, 7) times more. 49 (51, 55) sc.',
    ],
    { final: [49, 51, 55] },
  ),
  us('stitches worked even, without a turn', [...sc(14), 'Row 2: Sc even. [14]', 'Rows 3-8: Sc even. [14]'], {
    final: 14,
  }),
  us(
    'stitches worked even are one for each, whatever is stated',
    [...sc(14), 'Rows 2-6: Sc even. [13]'],
    [15, 14, 14],
    { findings: [{ row: 2, code: 'stated-count-wrong', words: '13', saying: ['13', '14'] }] },
  ),

  // Chains by their multiple
  us(
    'a multiple with the number of the sample in a bracket',
    [
      'Chain a multiple of 6 + 2 (I used 26).',
      'Row 1: Sc in second chain from hook, *skip 2 chains, 5 dc in next chain (shell made), skip 2 chains, sc in next chain; repeat from * to end, turn. (4 shells, 5 sc)',
    ],
    [26, 25],
  ),
  us(
    'a multiple with the number that is shown',
    ['Ch any multiple of 6, plus 2 (26 shown).', 'Row 1: Sc in 2nd ch from hook and in each ch across. (25)'],
    [26, 25],
  ),
  us(
    'a multiple alone is tried with a few repeats, and that is told',
    [
      'Ch a multiple of 4 + 2.',
      'Row 1: Sc in 2nd ch from hook, *ch 3, sk 3 ch, sc in next ch; rep from * across, turn.',
    ],
    [18, 5],
    { findings: [{ row: 0, code: 'chain-by-multiple', words: 'a multiple of 4 + 2', severity: 'note' }] },
  ),
  uk(
    'a labelled chain by its multiple, with the number that is used here',
    [
      'Foundation chain: make a multiple of 3 ch plus 2 (here 32).',
      'Row 1: 1 dc into 2nd ch from hook, 1 dc into each ch to end. (31 dc)',
    ],
    [32, 31],
  ),
  us(
    'a labelled chain counted in stitches',
    [
      'Foundation chain: 24 stitches.',
      'Row 1: Turn, skip 1 ch, 23 sc.',
      'Row 2: Ch 1, turn, sc2tog, 19 sc, sc2tog. (21)',
    ],
    [24, 23, 21],
  ),
  us(
    'where the last stitch lies, in a bracket behind the last ones',
    // 2 + 4 * 6 + 3 + 2 = 31
    [
      'Ch 33.',
      'Row 1: Dc in 4th ch from hook (counts as 2 dc) and in each ch across. 31 dc. Turn.',
      'Row 2: Ch 1, sc in first 2 dc, *ch 3, sk 3 dc, sc in next 3 dc; rep from * across, ending last repeat with sc in last 2 dc (last sc in top of ch). Turn. (16 sc, 5 ch-3 sps)',
    ],
    [33, 31, 16],
  ),
  us(
    'slip stitches in the back of each stitch that is next',
    [
      'Ch 4, join to form ring.',
      'Rnd 1: Ch 1, 8 sc in ring, join. (8 sc)',
      'Rnd 2: *Ch 3, sl st in back of next sc; rep from * around. (8 ch-3 sps)',
    ],
    { final: 8 },
  ),
  us(
    'from one stitch of a kind to the next, over petals that the round does not mention',
    // 5 passes, one to each sc; the petal behind the last sc is passed over as the others are
    [
      'Ch 6, join with sl st to form ring.',
      'Rnd 1: Ch 1, *sc in ring, ch 1, 3 dc in ring, ch 1; rep from * 4 more times. Join to first sc. (5 sc, 15 dc, 10 ch-1 sps)',
      'Rnd 2: *Ch 3, sl st in back of next sc; rep from * around. (5 ch-3 sps)',
    ],
    { final: 5 },
    {
      spaces: [null, 10, 5],
      clean: false,
      findings: [
        { row: 2, code: 'stitches-passed-over', words: 'next sc', severity: 'warning', saying: ['3'] },
      ],
    },
  ),
  us(
    'increases with rows worked even between them',
    // 2, then 5 times every 4th row: rows 2, 6, … 22
    [
      ...sc(28),
      'Row 2: Ch 1, turn, 2 sc in first sc, sc to last sc, 2 sc in last sc. 30 sc.',
      'Rep Row 2 5 times more, working 3 rows even between. 40 sc.',
      'Row 23: Ch 1, turn, sc across. (40 sc)',
    ],
    { final: 40 },
  ),
  uk(
    'groups of three between pairs',
    [
      'Make 4 ch and join with ss into a ring.',
      '1st round: 3 ch (counts as 1 tr), 11 tr into ring, ss to 3rd ch. (12 tr)',
      '2nd round: Join B in any tr, 3 ch (counts as 1 tr), 1 tr in same tr, 2 tr in each tr to end, ss to 3rd ch. (24 tr)',
      '3rd round: Join C between any 2 tr pairs, 3 ch (counts as 1 tr), 2 tr in same sp, 3 tr in each sp between pairs, ss to 3rd ch. (36 tr)',
    ],
    { final: 36 },
  ),
  us(
    'a repeat in stars, with nothing said but that it is one',
    [
      'R1. 5 sc in magic ring. Do not join. (5)',
      'R2. 2 sc in each. (10)',
      'R3. *1 sc, inc*, rep (15)',
      'R4. *2 sc, inc*, rep (20)',
      'R5-6. Sc around. (20)',
    ],
    [5, 10, 15, 20, 20],
  ),
];
