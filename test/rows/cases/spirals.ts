/**
 * Written rows: continuous rounds without a join, as toys and amigurumi are written.
 */
import { lines, type RowCase } from '../types.ts';

const circle = 'published flat circle numbers (sc 6 a round), resources stitch geometry';

export const spirals: readonly RowCase[] = [
  {
    name: 'work in a continuous spiral',
    terms: 'us',
    text: lines(
      'Rnd 1: 8 hdc in a magic circle; do not join, work in a continuous spiral.',
      'Rnd 2: 2 hdc in each st around; do not join, work in continuous rounds. (16)',
    ),
    counts: [8, 16],
  },
  {
    name: 'short labels and inc',
    terms: 'us',
    text: lines(
      'R1: 6 sc in magic ring (6)',
      'R2: inc x 6 (12)',
      'R3: (sc, inc) x 6 (18)',
      'R4: (2 sc, inc) x 6 (24)',
      'R5: (3 sc, inc) x 6 (30)',
    ),
    counts: [6, 12, 18, 24, 30],
    source: circle,
  },
  {
    name: 'star as the times sign',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in MR [6]',
      'Rnd 2: inc * 6 [12]',
      'Rnd 3: (sc, inc) * 6 [18]',
      'Rnd 4: (3 sc) * 6 [18]',
    ),
    counts: [6, 12, 18, 18],
  },
  {
    name: 'inc in each st',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. Do not join. (6)',
      'Rnd 2: Inc in each st around. (12)',
      'Rnd 3: [Sc in next st, inc in next st] around. (18)',
      'Rnd 4: Sc in each st around. (18)',
    ),
    counts: [6, 12, 18, 18],
    findings: [{ row: 1, code: 'definition-assumed', severity: 'note', words: 'Inc' }],
  },
  {
    name: 'invisible decreases close the ball',
    terms: 'us',
    // 24 → 18 → 12 → 6
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: 2 sc in each st around. (12)',
      'Rnd 3: *Sc in next st, 2 sc in next st; rep from * around. (18)',
      'Rnd 4: *Sc in next 2 sts, 2 sc in next st; rep from * around. (24)',
      'Rnds 5-8: Sc in each st around. (24)',
      'Rnd 9: *Sc in next 2 sts, inv dec; rep from * around. (18)',
      'Rnd 10: *Sc in next st, inv dec; rep from * around. (12)',
      'Rnd 11: Inv dec 6 times. Fasten off. (6)',
    ),
    counts: [6, 12, 18, 24, 24, 18, 12, 6],
  },
  {
    name: 'dec x 6',
    terms: 'us',
    text: lines(
      'R1: 6 sc in mr (6)',
      'R2: inc x 6 (12)',
      'R3-R4: sc in each st around (12)',
      'R5: dec x 6 (6)',
    ),
    counts: [6, 12, 12, 6],
  },
  {
    name: 'start in the 2nd ch from hook',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 2, 7 sc in 2nd ch from hook, place marker. (7 sc)',
      'Rnd 2: 2 sc in each sc around, move marker up. (14 sc)',
      'Rnd 3: (Sc in next sc, 2 sc in next sc) 7 times. (21 sc)',
    ),
    final: 21,
  },
  {
    name: 'numbered list without the word round',
    terms: 'us',
    text: lines(
      '1. 6 sc in magic ring. (6)',
      '2. 2 sc in each st around. (12)',
      '3. (Sc in next st, inc) 6 times. (18)',
    ),
    counts: [6, 12, 18],
  },
  {
    name: 'uneven increases that keep the hexagon away',
    terms: 'us',
    // 1 + 2 + 5 * (2 + 2) + 1 = 24 over 18: sc, inc, (2 sc, inc) * 5, sc
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: Inc in each st. (12)',
      'Rnd 3: (Sc, inc) 6 times. (18)',
      'Rnd 4: Sc, inc, (2 sc, inc) 5 times, sc. (24)',
    ),
    counts: [6, 12, 18, 24],
  },
  {
    name: 'marker at the end of the round',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring, pm in last st. (6)',
      'Rnd 2: 2 sc in each st around, ending at marker; move marker. (12)',
    ),
    counts: [6, 12],
  },
  {
    name: 'range of plain rounds with "to"',
    terms: 'us',
    text: lines(
      'Rnd 1: 8 sc in adjustable ring. (8)',
      'Rnd 2: 2 sc in each st around. (16)',
      'Rounds 3 to 9: Sc in each st around. (16 sts)',
    ),
    counts: [8, 16, 16],
  },
  {
    name: 'spiral of two sizes',
    terms: 'us',
    // 6 or 8 to begin with, doubled, then 1.5 times
    text: lines(
      'Rnd 1: 6 (8) sc in magic ring.',
      'Rnd 2: 2 sc in each st around. 12 (16) sts',
      'Rnd 3: *Sc in next st, 2 sc in next st; rep from * around. 18 (24) sts',
    ),
    counts: [
      [6, 8],
      [12, 16],
      [18, 24],
    ],
  },
  {
    name: 'ear: leaves a thread and fastens off',
    terms: 'us',
    text: lines(
      'Rnd 1: 4 sc in magic ring (4)',
      'Rnd 2: (sc in next st, 2 sc in next st) twice (6)',
      'Rnd 3: (sc in next 2 sts, 2 sc in next st) twice (8)',
      'Rnd 4: sc in each st around (8). Fasten off, leaving a long tail.',
    ),
    counts: [4, 6, 8, 8],
  },
  {
    name: 'short labels and inc',
    terms: 'uk',
    text: lines(
      'Rnd 1: 6 dc in magic ring (6)',
      'Rnd 2: inc x 6 (12)',
      'Rnd 3: (1 dc, inc) x 6 (18)',
      'Rnd 4: (2 dc, inc) x 6 (24)',
    ),
    counts: [6, 12, 18, 24],
    source: circle,
  },
  {
    name: '2 dc in each st',
    terms: 'uk',
    text: lines(
      'Round 1: 6 dc into magic loop. (6 dc)',
      'Round 2: 2 dc in each dc. (12 dc)',
      'Round 3: (1 dc in next dc, 2 dc in next dc) 6 times. (18 dc)',
      'Rounds 4–6: 1 dc in each dc. (18 dc)',
      'Round 7: (1 dc in next dc, dc2tog) 6 times. (12 sts)',
    ),
    counts: [6, 12, 18, 18, 12],
  },
  {
    name: 'start in the 2nd ch from hook',
    terms: 'uk',
    text: lines(
      'Make 2 ch.',
      'Rnd 1: 6 dc in 2nd ch from hook. (6 dc)',
      'Rnd 2: 2 dc in each dc around. (12 dc)',
    ),
    counts: [2, 6, 12],
  },
  {
    name: 'dc2tog closes the top',
    terms: 'uk',
    // 30 → 24 → 12
    text: lines(
      'Make 30 ch, join with ss in first ch to form a ring.',
      'Round 1: 1 dc in each ch around. Do not join; work in a spiral. (30 dc)',
      'Round 2: (1 dc in each of next 3 dc, dc2tog) 6 times. (24)',
      'Round 3: (dc2tog) 12 times. (12)',
    ),
    counts: [null, 30, 24, 12],
  },
  {
    name: 'words for the number of times',
    terms: 'uk',
    text: lines(
      'Round 1: 6 dc in magic ring. (6)',
      'Round 2: *2 dc in next dc; rep from * five more times. (12)',
      'Round 3: *1 dc in next dc, 2 dc in next dc; rep from * five more times. (18)',
    ),
    counts: [6, 12, 18],
  },
  {
    name: 'limb worked even for many rounds',
    terms: 'uk',
    text: lines(
      'R1: 5 dc in magic ring. [5]',
      'R2: 2 dc in each st. [10]',
      'R3-14: 1 dc in each st. [10]',
      'R15: (1 dc in each of next 3 sts, dc2tog) twice. [8]',
    ),
    counts: [5, 10, 10, 8],
  },
  {
    name: 'increases told alone: the stitches between are plain',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: 2 sc in each st around. (12)',
      'Rnd 3: Inc in every 3rd st. (16)',
    ),
    counts: [6, 12, 16],
  },
];
