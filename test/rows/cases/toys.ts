/**
 * Written rows: passages as they stand in British patterns for toys and small things in the round.
 */
import { lines, type RowCase } from '../types.ts';

export const toys: readonly RowCase[] = [
  {
    name: 'head: grow, keep, shrink',
    terms: 'uk',
    text: lines(
      'Rnd 1: 6 dc in magic ring. (6)',
      'Rnd 2: (2 dc in next dc) 6 times. (12)',
      'Rnd 3: (1 dc, 2 dc in next dc) 6 times. (18)',
      'Rnd 4: (2 dc, 2 dc in next dc) 6 times. (24)',
      'Rnds 5–8: 1 dc in each dc around. (24)',
      'Rnd 9: (1 dc in each of next 2 dc, dc2tog) 6 times. (18)',
      'Rnd 10: (1 dc in next dc, dc2tog) 6 times. (12)',
      'Rnd 11: (dc2tog) 6 times. Fasten off. (6)',
    ),
    counts: [6, 12, 18, 24, 24, 18, 12, 6],
    source: 'published flat circle numbers, resources stitch geometry',
  },
  {
    name: 'ears: two sides of a small cone',
    terms: 'uk',
    text: lines(
      'Rnd 1: 4 dc in magic ring. (4)',
      'Rnd 2: (1 dc in next dc, 2 dc in next dc) twice. (6)',
      'Rnd 3: 1 dc in each dc around. (6)',
      'Rnd 4: (1 dc in each of next 2 dc, 2 dc in next dc) twice. (8)',
    ),
    counts: [4, 6, 6, 8],
  },
  {
    name: 'arm: bobble for a thumb',
    terms: 'uk',
    text: lines(
      'MB: tr4tog in same st.',
      'Rnd 1: 8 dc in magic ring. (8)',
      'Rnd 2: 1 dc in each of next 3 dc, MB in next dc, 1 dc in each of last 4 dc. (8)',
      'Rnd 3: 1 dc in each st around. (8)',
    ),
    counts: [8, 8, 8],
    units: [null, { MB: 1 }, null],
  },
  {
    name: 'foot: oval that turns up',
    terms: 'uk',
    // 6 chains worked: 1 + 4 + 3 + 4 + 2 = 14
    text: lines(
      'Make 7 ch.',
      'Rnd 1: 1 dc in 2nd ch from hook, 1 dc in each of next 4 ch, 3 dc in last ch, working on other side of ch, 1 dc in each of next 4 ch, 2 dc in last ch. (14 dc)',
      'Rnds 2 and 3: 1 dc in each dc around. (14 dc)',
      'Rnd 4: 1 dc in each of next 4 dc, (dc2tog) 3 times, 1 dc in each of last 4 dc. (11 sts)',
    ),
    // 4 + 6 + 4 = 14 used, 4 + 3 + 4 = 11 made
    counts: [7, 14, 14, 11],
  },
  {
    name: 'inc and dec as words',
    terms: 'uk',
    text: lines(
      'R1: 6 dc in magic ring [6]',
      'R2: inc in each st [12]',
      'R3: (dc, inc) x 6 [18]',
      'R4: (dc, dec) x 6 [12]',
      'R5: dec x 6 [6]',
    ),
    counts: [6, 12, 18, 12, 6],
  },
  {
    name: 'inv dec',
    terms: 'uk',
    text: lines(
      'Rnd 1: 8 dc in magic ring. (8)',
      'Rnd 2: 2 dc in each dc. (16)',
      'Rnd 3: (1 dc in each of next 2 dc, inv dec) 4 times. (12)',
    ),
    counts: [8, 16, 12],
  },
  {
    name: 'body in stripes',
    terms: 'uk',
    text: lines(
      'Rnd 1: With A, 7 dc in magic ring. (7 dc)',
      'Rnd 2: 2 dc in each dc around. (14 dc)',
      'Rnd 3: Change to B. 1 dc in each dc around. (14 dc)',
      'Rnd 4: Change to A. (1 dc in next dc, 2 dc in next dc) 7 times. (21 dc)',
    ),
    counts: [7, 14, 14, 21],
  },
  {
    name: 'tail of chains and slip stitches',
    terms: 'uk',
    text: lines('Make 9 ch.', 'Row 1: Ss in 2nd ch from hook, ss in each ch to end. Fasten off. (8 ss)'),
    counts: [9, 8],
  },
  {
    name: 'uneven shaping of a snout',
    terms: 'uk',
    // 3 + 3 * 2 + 3 … over 12: 3 dc, (2 in next) 3 times, 3 dc, (2 in next) 3 times = 3 + 6 + 3 + 6 = 18
    text: lines(
      'Rnd 1: 6 dc in magic ring. (6)',
      'Rnd 2: 2 dc in each dc. (12)',
      'Rnd 3: 1 dc in each of next 3 dc, (2 dc in next dc) 3 times, 1 dc in each of next 3 dc, (2 dc in next dc) 3 times. (18)',
    ),
    counts: [6, 12, 18],
  },
  {
    name: 'hat for a toy with a brim in the front loop',
    terms: 'uk',
    text: lines(
      'Rnd 1: 6 dc in magic ring. (6)',
      'Rnd 2: 2 dc in each dc. (12)',
      'Rnds 3–5: 1 dc in each dc. (12)',
      'Rnd 6: 2 dc in front loop only of each dc. (24)',
    ),
    counts: [6, 12, 12, 24],
  },
  {
    name: 'leaf worked down one side of a chain and up the other',
    terms: 'uk',
    // 7 chains worked: 1 + 1 + 2 + 1 + 1 = 6, then 3 in the last; other side 1 + 1 + 2 + 1 + 1 = 6: 15
    text: lines(
      'Make 8 ch.',
      'Rnd 1: 1 dc in 2nd ch from hook, 1 htr in next ch, 1 tr in each of next 2 ch, 1 htr in next ch, 1 dc in next ch, 3 dc in last ch, working on other side of ch, 1 dc in next ch, 1 htr in next ch, 1 tr in each of next 2 ch, 1 htr in next ch, 1 dc in last ch, join with ss in first dc. (15 sts)',
    ),
    counts: [8, 15],
    byKind: [null, { dc: 7, htr: 4, tr: 4 }],
  },
  {
    name: 'flower with five petals',
    terms: 'uk',
    // 5 petals of 5 and 5 dc between them
    text: lines(
      'Rnd 1: 10 dc in magic ring, join with ss in first dc. (10 dc)',
      'Rnd 2: 1 ch, *(1 dc, 1 htr, 1 tr, 1 htr, 1 dc) in next dc, 1 dc in next dc; rep from * around, join with ss in first dc. (30 sts)',
    ),
    counts: [10, 30],
    byKind: [null, { dc: 15, htr: 10, tr: 5 }],
  },
  {
    name: 'ears: leave rest, fold flat, sc through both',
    terms: 'us',
    text: lines(
      'Rnd 1: 4 sc in magic ring. (4)',
      'Rnd 2: 2 sc in each st around. (8)',
      'Rnds 3-5: Sc in each st around. (8)',
      'Row 6: Flatten piece and sc through both layers in next 4 sts. (4)',
    ),
    final: 4,
  },
  {
    name: 'tube folded flat, the layers told before the stitches',
    terms: 'us',
    text: lines(
      'Rnd 1: 12 sc in magic ring. (12 sc)',
      'Rnds 2-5: Sc in each st around. (12 sc)',
      'Row 6: Fold flat. Working through both layers, sc in each st across. Fasten off. (6 sc)',
    ),
    // 12 lie in two layers of 6
    counts: [12, 12, 6],
  },
  {
    name: 'tube folded flat, sc across through both layers UK',
    terms: 'uk',
    text: lines(
      'Rnd 1: 12 dc in magic ring. (12 dc)',
      'Rnds 2-5: 1 dc in each st around. (12 dc)',
      'Row 6: Flatten, 1 dc across through both layers. Fasten off. (6 dc)',
    ),
    counts: [12, 12, 6],
  },
];
