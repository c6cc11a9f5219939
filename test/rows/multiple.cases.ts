/**
 * Which foundation counts a stitch pattern works on. `plus` is compared modulo `multiple`, since a pattern
 * on a multiple of 3 plus 5 is also one on a multiple of 3 plus 2.
 */
import { lines, type MultipleCase } from './types.ts';

export const multiples: readonly MultipleCase[] = [
  {
    name: 'open mesh of ch-2 spaces',
    terms: 'us',
    text: lines(
      'Ch 29.',
      'Row 1: Dc in 8th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across, turn.',
    ),
    multiple: 3,
    plus: 5,
    source: 'common practice, no source: multiple of 3 plus 5 with the first dc in the 8th chain',
  },
  {
    name: 'open mesh and solid rows by turns',
    terms: 'us',
    text: lines(
      'Ch 29.',
      'Row 1: Dc in 8th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across, turn.',
      'Row 2: Ch 3 (counts as dc), *2 dc in next ch-2 sp, dc in next dc; rep from * to last sp, 2 dc in last sp, dc in top of turning ch, turn.',
    ),
    multiple: 3,
    plus: 5,
    source: 'common practice, no source',
  },
  {
    name: 'sc rows',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, sc in each st across, turn.',
    ),
    multiple: 1,
    plus: 1,
    source: 'published foundation rule',
  },
  {
    name: 'shells of 5',
    terms: 'us',
    text: lines(
      'Ch 38.',
      'Row 1: Sc in 2nd ch from hook, *sk 2 ch, 5 dc in next ch, sk 2 ch, sc in next ch; rep from * across, turn.',
    ),
    multiple: 6,
    plus: 2,
    source: 'common practice, no source',
  },
  {
    name: 'shells of 5, two rows',
    terms: 'us',
    text: lines(
      'Shell: 5 dc in same st.',
      'Ch 38.',
      'Row 1: Sc in 2nd ch from hook, *sk 2 ch, shell in next ch, sk 2 ch, sc in next ch; rep from * across, turn.',
      'Row 2: Ch 3 (counts as dc), 2 dc in first sc, *sk 2 dc, sc in next dc, sk 2 dc, shell in next sc; rep from * to last 6 sts, sk 2 dc, sc in next dc, sk 2 dc, 3 dc in last sc, turn.',
    ),
    multiple: 6,
    plus: 2,
  },
  {
    name: 'filet over 1',
    terms: 'us',
    // 6 + 2k
    text: lines(
      'Ch 20.',
      'Row 1: Dc in 6th ch from hook, *ch 1, sk 1 ch, dc in next ch; rep from * across, turn.',
    ),
    multiple: 2,
    plus: 0,
  },
  {
    name: 'V-stitches in a round, every other stitch',
    terms: 'us',
    // 2k stitches round, a V-stitch and a gap each
    text: lines(
      'Ch 24, join with sl st to first ch.',
      'Rnd 1: Ch 1, sc in each ch around, join.',
      'Rnd 2: Ch 5 (counts as dc, ch 2), dc in same st, *sk 1 st, (dc, ch 2, dc) in next st; rep from * around, join to 3rd ch of ch-5.',
    ),
    multiple: 2,
    plus: 2,
  },
  {
    name: 'mesh of ch 3',
    terms: 'us',
    // 10 + 4k
    text: lines(
      'Ch 30.',
      'Row 1: Dc in 10th ch from hook, *ch 3, sk 3 ch, dc in next ch; rep from * across, turn.',
    ),
    multiple: 4,
    plus: 2,
  },
  {
    name: 'pairs of sc and dc',
    terms: 'us',
    // 1 turning chain, 2 each
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook, dc in next ch, *sc in next ch, dc in next ch; rep from * across, turn.',
    ),
    multiple: 2,
    plus: 1,
  },
  {
    name: 'sc rows, then a repeat of 3',
    terms: 'us',
    // 3n stitches on 3n + 1 chains
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, *sc in next 2 sts, dc in next st; rep from * across, turn.',
    ),
    multiple: 3,
    plus: 1,
  },
  {
    name: 'sc rows, then a repeat of 3 and a tail of 2',
    terms: 'us',
    // 3n + 2 stitches, one chain more
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, *sc in next 2 sts, dc in next st; rep from * to last 2 sts, sc in last 2 sts, turn.',
    ),
    multiple: 3,
    plus: 0,
  },
  {
    name: 'dc rows, then a repeat of 4',
    terms: 'us',
    // 4n stitches on 4n + 2 chains
    text: lines(
      'Ch 22.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn. ',
      'Row 2: Ch 1, *sc in next 3 sts, hdc in next st; rep from * across, turn.',
    ),
    multiple: 4,
    plus: 2,
  },
  {
    name: 'two rows with different repeats',
    terms: 'us',
    // stitches must be a multiple of 2 and of 3, so of 6; chains one more
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, *sc in next st, hdc in next st; rep from * across, turn.',
      'Row 3: Ch 1, *sc in next 2 sts, dc in next st; rep from * across, turn.',
    ),
    multiple: 6,
    plus: 1,
  },
  {
    name: 'V-stitches with edge dc',
    terms: 'us',
    // stitches 3k + 2 on chains 3k + 3
    text: lines(
      'V-st: (dc, ch 1, dc) in same st.',
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 3 (counts as dc), sk first st, *sk 1 st, V-st in next st, sk 1 st; rep from * to last st, dc in last st, turn.',
    ),
    multiple: 3,
    plus: 0,
  },
  {
    name: 'loops of ch 5',
    terms: 'us',
    // 1 + 4k worked chains
    text: lines(
      'Ch 22.',
      'Row 1: Sc in 2nd ch from hook, *ch 5, sk 3 ch, sc in next ch; rep from * across, turn.',
    ),
    multiple: 4,
    plus: 2,
  },
  {
    name: 'band of posts in rows',
    terms: 'us',
    // 2k + 2 stitches (an edge stitch at each side) on 2k + 4 chains
    text: lines(
      'Ch 24.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn.',
      'Row 2: Ch 2 (counts as hdc), sk first st, *FPdc around next st, BPdc around next st; rep from * to last st, hdc in top of turning ch, turn.',
    ),
    multiple: 2,
    plus: 0,
  },
  {
    name: 'fans of 7',
    terms: 'us',
    // 1 + 8k worked chains
    text: lines(
      'Ch 26.',
      'Row 1: Sc in 2nd ch from hook, *sk 3 ch, 7 dc in next ch, sk 3 ch, sc in next ch; rep from * across, turn.',
    ),
    multiple: 8,
    plus: 2,
  },
  {
    name: 'ripple of 14 with sc3tog',
    terms: 'us',
    // each repeat: 5 + 1 (3 in one) + 5 + (3 together: 3) = 14 worked stitches, made 5 + 3 + 5 + 1 = 14
    text: lines(
      'Ch 43.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, *sc in next 5 sts, 3 sc in next st, sc in next 5 sts, sc3tog; rep from * across, turn.',
    ),
    multiple: 14,
    plus: 1,
  },
  {
    name: 'open mesh of 2 ch and tr',
    terms: 'uk',
    text: lines(
      'Make 29 ch.',
      'Row 1: 1 tr in 8th ch from hook, *2 ch, miss 2 ch, 1 tr in next ch; rep from * to end, turn.',
    ),
    multiple: 3,
    plus: 5,
    source: 'common practice, no source',
  },
  {
    name: 'dc rows',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.',
      'Row 2: 1 ch, 1 dc in each dc to end, turn.',
    ),
    multiple: 1,
    plus: 0,
  },
  {
    name: 'shells of 5 tr',
    terms: 'uk',
    text: lines(
      'Make 38 ch.',
      'Row 1: 1 dc in 2nd ch from hook, *miss 2 ch, 5 tr in next ch, miss 2 ch, 1 dc in next ch; rep from * to end, turn.',
    ),
    multiple: 6,
    plus: 2,
  },
  {
    name: 'filet over 1 in tr',
    terms: 'uk',
    text: lines(
      'Make 26 ch.',
      'Row 1: 1 tr in 6th ch from hook, *1 ch, miss 1 ch, 1 tr in next ch; rep from * to end, turn.',
    ),
    multiple: 2,
    plus: 4,
  },
  {
    name: 'tr blocks, last repeat at **',
    terms: 'uk',
    // 5k + 3 stitches on 5k + 4 chains
    text: lines(
      'Make 24 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.',
      'Row 2: 2 ch (does not count as a st), *1 tr in each of next 3 sts**, 2 ch, miss 2 sts; rep from * to end, ending last rep at **, turn.',
    ),
    multiple: 5,
    plus: 4,
  },
  {
    name: 'bobbles of 4 plus 1',
    terms: 'uk',
    // 4k + 1 stitches on 4k + 2 chains
    text: lines(
      'MB: tr5tog in same st.',
      'Make 22 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.',
      'Row 2: 1 ch, 1 dc in first st, *1 dc in each of next 3 sts, MB in next st; rep from * to end, turn.',
    ),
    multiple: 4,
    plus: 2,
  },
  {
    name: 'round in pairs of raised trebles',
    terms: 'uk',
    // a ring of an even number of chains
    text: lines(
      'Make 40 ch, join with ss in first ch to form a ring.',
      'Rnd 1: 3 ch (does not count as a st), 1 tr in each ch around, join with ss in first tr.',
      'Rnd 2: 2 ch (does not count as a st), *1 FPtr around next tr, 1 BPtr around next tr; rep from * around, join with ss in first FPtr.',
    ),
    multiple: 2,
    plus: 0,
    source: 'common practice, no source: a band of alternating posts needs an even number',
  },
  {
    name: 'round of fans of 8',
    terms: 'uk',
    text: lines(
      'Make 32 ch, join with ss in first ch to form a ring.',
      'Rnd 1: 1 ch, 1 dc in each ch around, join with ss in first dc.',
      'Rnd 2: 1 ch, *1 dc in next dc, miss 3 dc, 7 tr in next dc, miss 3 dc; rep from * around, join with ss in first dc.',
    ),
    multiple: 8,
    plus: 0,
  },
  {
    name: 'dtr mesh',
    terms: 'uk',
    // 9 + 3k
    text: lines(
      'Make 24 ch.',
      'Row 1: 1 dtr in 9th ch from hook, *2 ch, miss 2 ch, 1 dtr in next ch; rep from * to end, turn.',
    ),
    multiple: 3,
    plus: 0,
  },
  {
    name: 'tr rows, head and tail beside a repeat',
    terms: 'uk',
    // stitches 1 (3 ch) + 4k + 1 on one chain more than the dc: 4k + 3
    text: lines(
      'Make 23 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.',
      'Row 2: 3 ch (counts as 1 tr), miss first dc, *2 ch, miss 2 dc, 1 tr in each of next 2 dc; rep from * to last st, 1 tr in last st, turn.',
    ),
    multiple: 4,
    plus: 3,
  },
  {
    name: 'moss of sc and ch 1',
    terms: 'us',
    text: lines(
      'Ch 20.',
      'Row 1: Sc in 2nd ch from hook, *ch 1, sk 1 ch, sc in next ch; rep from * across, turn.',
      'Row 2: Ch 1, sc in first sc, *sc in next ch-1 sp, ch 1, sk next sc; rep from * to last sp, sc in last sp, sc in last sc, turn.',
    ),
    multiple: 2,
    plus: 0,
    source: 'from memory of published stitch patterns; the arithmetic is of the rows',
  },
  {
    name: 'half shells at both edges',
    terms: 'us',
    text: lines(
      'Ch 28.',
      'Row 1: 2 dc in 4th ch from hook, sk 2 ch, sc in next ch, *sk 2 ch, 5 dc in next ch, sk 2 ch, sc in next ch; rep from * to last 3 ch, sk 2 ch, 3 dc in last ch, turn.',
    ),
    multiple: 6,
    plus: 4,
    source: 'from memory of published stitch patterns; the arithmetic is of the rows',
  },
  {
    name: 'ripple of 12 with pairs',
    terms: 'us',
    text: lines(
      'Ch 39.',
      'Row 1: Dc in 4th ch from hook, *dc in each of next 3 ch, (dc2tog over next 2 ch) twice, dc in each of next 3 ch, 2 dc in each of next 2 ch; rep from * to last 11 ch, dc in each of next 3 ch, (dc2tog over next 2 ch) twice, dc in each of next 3 ch, 2 dc in last ch, turn.',
    ),
    multiple: 12,
    plus: 3,
    source: 'from memory of published stitch patterns; the arithmetic is of the rows',
  },
  {
    name: 'wheels of 10',
    terms: 'us',
    text: lines(
      'Ch 37.',
      'Row 1: Sc in 2nd ch from hook, sc in next ch, *sk 3 ch, 7 dc in next ch, sk 3 ch, sc in each of next 3 ch; rep from * to last 4 ch, sk 3 ch, 4 dc in last ch, turn.',
    ),
    multiple: 10,
    plus: 7,
    source: 'from memory of published stitch patterns; the arithmetic is of the rows',
  },
  {
    name: 'basketweave of fours',
    terms: 'us',
    text: lines(
      'Ch 24.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn.',
      'Row 2: Ch 3 (counts as dc), *FPdc around each of next 4 sts, BPdc around each of next 4 sts; rep from * to last 5 sts, FPdc around each of next 4 sts, dc in last st, turn.',
    ),
    multiple: 8,
    plus: 0,
    source: 'from memory of published stitch patterns; the arithmetic is of the rows',
  },
  {
    name: 'groups of 3',
    terms: 'us',
    text: lines(
      'Ch 23.',
      'Row 1: 2 dc in 4th ch from hook, *sk 2 ch, 3 dc in next ch; rep from * to last ch, dc in last ch, turn.',
    ),
    multiple: 3,
    plus: 2,
    source: 'from memory of published stitch patterns; the arithmetic is of the rows',
  },
  {
    name: 'bobbles of 4 in the middle',
    terms: 'uk',
    text: lines(
      'Make 22ch.',
      '1st row: 1dc in 2nd ch from hook, 1dc in each ch to end, turn.',
      '2nd row: 1ch, 1dc in each of first 2dc, *5tr cluster in next dc, 1dc in each of next 3dc; rep from * to last 3dc, 5tr cluster in next dc, 1dc in each of last 2dc, turn.',
    ),
    multiple: 4,
    plus: 2,
    source: 'from memory of published stitch patterns; the arithmetic is of the rows',
  },
  {
    name: 'sedge of 3',
    terms: 'us',
    text: lines(
      'Ch 23.',
      'Row 1: (Hdc, dc) in 2nd ch from hook, *sk 2 ch, (sc, hdc, dc) in next ch; rep from * to last 3 ch, sk 2 ch, sc in last ch, turn.',
    ),
    multiple: 3,
    plus: 2,
    source: 'from memory of published stitch patterns; the arithmetic is of the rows',
  },
  {
    name: 'shells of 6 and loops of 4 together',
    terms: 'us',
    text: lines(
      'Ch 26.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, sc in first st, *sk 2 sts, 5 dc in next st, sk 2 sts, sc in next st; rep from * across, turn.',
      'Row 3: Ch 1, sc in first st, *ch 3, sk 3 sts, sc in next st; rep from * across, turn.',
    ),
    multiple: 12,
    plus: 2,
    source: 'from memory of published stitch patterns; the arithmetic is of the rows',
  },
  {
    name: 'crossed pairs',
    terms: 'us',
    text: lines(
      'Ch 22.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn.',
      'Row 2: Ch 3 (counts as dc), *sk next st, dc in next st, dc in skipped st; rep from * to last st, dc in last st, turn.',
    ),
    multiple: 2,
    plus: 0,
    source: 'from memory of published stitch patterns; the arithmetic is of the rows',
  },
  {
    name: 'cables of 4 and 2 between',
    terms: 'us',
    text: lines(
      'Ch 24.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, sc in each st across, turn.',
      'Row 3: Ch 3 (counts as dc), dc in next 2 sts, *sk next 2 sts, FPtr around each of next 2 sts 2 rows below, working in front of last 2 sts made, FPtr around each of 2 skipped sts 2 rows below, dc in next 2 sts; rep from * to last st, dc in last st, turn.',
    ),
    multiple: 6,
    plus: 0,
    source: 'from memory of published stitch patterns; the arithmetic is of the rows',
  },
  {
    name: 'lacets',
    terms: 'us',
    text: lines(
      'Ch 27.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn.',
      'Row 2: Ch 6 (counts as dc and ch 3), sk next 2 dc, sc in next dc, ch 3, sk next 2 dc, dc in next dc, *ch 3, sk next 2 dc, sc in next dc, ch 3, sk next 2 dc, dc in next dc; rep from * across, turn.',
    ),
    multiple: 6,
    plus: 3,
    source: 'from memory of published stitch patterns; the arithmetic is of the rows',
  },
  {
    name: 'sc and dc in every second',
    terms: 'us',
    text: lines(
      'Ch 22.',
      'Row 1: (Sc, dc) in 2nd ch from hook, *sk 1 ch, (sc, dc) in next ch; rep from * to last 2 ch, sk 1 ch, sc in last ch, turn.',
    ),
    multiple: 2,
    plus: 0,
    source: 'from memory of published stitch patterns; the arithmetic is of the rows',
  },
  {
    name: 'chevron of 14 with 3 tr',
    terms: 'uk',
    text: lines(
      'Make 44ch.',
      '1st row: 1tr in 4th ch from hook, *1tr in each of next 5ch, tr3tog over next 3ch, 1tr in each of next 5ch, 3tr in next ch; rep from * to last 13ch, 1tr in each of next 5ch, tr3tog over next 3ch, 1tr in each of next 4ch, 2tr in last ch, turn.',
    ),
    multiple: 14,
    plus: 3,
    source: 'from memory of published stitch patterns; the arithmetic is of the rows',
  },
  {
    name: 'ripple of 11 with 2 skipped',
    terms: 'us',
    text: lines(
      'Ch 24.',
      'Row 1: 2 sc in 2nd ch from hook, *sc in next 4 ch, sk 2 ch, sc in next 4 ch, 3 sc in next ch; rep from * to last 11 ch, sc in next 4 ch, sk 2 ch, sc in next 4 ch, 2 sc in last ch, turn.',
    ),
    multiple: 11,
    plus: 2,
    source: 'from memory of published stitch patterns; the arithmetic is of the rows',
  },
  {
    name: 'Vs between loops of 5',
    terms: 'us',
    text: lines(
      'Ch 32.',
      'Row 1: Sc in 2nd ch from hook, *ch 5, sk 4 ch, (dc, ch 3, dc) in next ch, ch 5, sk 4 ch, sc in next ch; rep from * across, turn.',
    ),
    multiple: 10,
    plus: 2,
    source: 'from memory of published stitch patterns; the arithmetic is of the rows',
  },
];
