/**
 * Written rows: the English of older needlework books.
 */
import { lines, type RowCase } from '../types.ts';

export const older: readonly RowCase[] = [
  {
    name: 'double into each loop',
    terms: 'uk',
    text: lines(
      'Make a chain of 31.',
      '1st row: Miss 1 chain, 1 double crochet into each chain to end. (30 double crochet)',
      '2nd row: 1 chain, 1 double crochet into each stitch to end. (30 double crochet)',
    ),
    counts: [31, 30, 30],
  },
  {
    name: 'chain, miss and treble in full',
    terms: 'uk',
    // 23 = 8 + 5 * 3: 7 trebles, 6 spaces
    text: lines(
      'Make a chain of 23.',
      '1st row: 1 treble into the 8th chain from hook, *2 chain, miss 2 chain, 1 treble into next chain; repeat from * to end.',
    ),
    counts: [23, 7],
    spaces: [0, 6],
  },
  {
    name: 'taking up the back loop',
    terms: 'uk',
    text: lines(
      'Make a chain of 21.',
      '1st row: 1 double crochet into 2nd chain from hook, 1 double crochet into each chain to end, turn.',
      '2nd row: 1 chain, 1 double crochet into each stitch, taking up the back loop only, to end, turn.',
    ),
    counts: [21, 20, 20],
  },
  {
    name: 'repeat 4 times from *',
    terms: 'uk',
    // 4 more: 5 * 5 over 5 * 4 = 25 over 20
    text: lines(
      'Make a chain of 21.',
      '1st row: 1 dc into 2nd ch from hook, 1 dc into each ch to end, turn.',
      '2nd row: 1 ch, *1 dc into each of next 3 dc, 2 dc into next dc, repeat 4 times from *, turn. (25 dc)',
    ),
    counts: [21, 20, 25],
    source: 'common practice: old books mean so many times more',
  },
  {
    name: 'long treble',
    terms: 'uk',
    text: lines(
      'Make a chain of 28.',
      '1st row: 1 long treble into the 5th chain from hook, 1 long treble into each chain to end. (25 sts)',
    ),
    counts: [28, 25],
    source: 'memory: long treble is the older name of the UK double treble',
  },
  {
    name: 'work 1 treble into each',
    terms: 'uk',
    text: lines(
      'Commence with 32 chain.',
      '1st Row. Work 1 treble into the 4th chain from hook, 1 treble into each chain to end, turn. (30 trebles)',
    ),
    counts: [32, 30],
  },
  {
    name: 'join in a ring, treble in full',
    terms: 'uk',
    text: lines(
      'Make 6 chain and join into a ring with a slip stitch.',
      '1st round: 3 chain (to stand for 1 treble), 15 treble into ring, join with a slip stitch to top of 3 chain. (16 treble)',
    ),
    counts: [null, 16],
  },
  {
    name: 'chain a number, single crochet in full',
    terms: 'us',
    text: lines(
      'Make a chain of 31 stitches.',
      '1st row. Work 1 single crochet into 2nd chain from hook, 1 single crochet into each chain to end of row, turn. (30 single crochet)',
      '2nd row. Chain 1, 1 single crochet into each stitch to end of row, turn.',
    ),
    counts: [31, 30, 30],
  },
  {
    name: 'double crochet in full with chain 3 to turn',
    terms: 'us',
    text: lines(
      'Chain 22.',
      '1st row: 1 double crochet in 4th chain from hook, 1 double crochet in each chain to end, chain 3 (counts as 1 double crochet), turn.',
      '2nd row: Skip first stitch, 1 double crochet in each of next 18 stitches, 1 double crochet in top of turning chain. (20 double crochet)',
    ),
    counts: [22, 20, 20],
  },
  {
    name: 'half double crochet and increases in full',
    terms: 'us',
    text: lines(
      'Chain 4, join with slip stitch to form a ring.',
      'Round 1: Chain 1, work 8 half double crochet in ring. (8)',
      'Round 2: Work 2 half double crochet in each stitch around. (16)',
      'Round 3: *Work 1 half double crochet in next stitch, 2 half double crochet in next stitch; repeat from * around. (24)',
    ),
    counts: [null, 8, 16, 24],
  },
  {
    name: 'a repeat that is cut short before an ordinal is no name of a piece',
    terms: 'uk',
    text: lines(
      '40 ch.',
      '1st Row: 1 dc in 2nd ch from hook, 1 dc in each ch to end. (39 dc)',
      '2nd Row: 1 ch, 1 dc in each dc to end.',
      'Rep. 2nd row until work measures 13 ins.',
    ),
    counts: [40, 39, 39, 39],
  },
  {
    name: 'each loop of a plain row is its stitches UK',
    terms: 'uk',
    text: lines(
      '40 ch.',
      '1st row: 1 dc in 2nd ch from hook, 1 dc in each ch to end. (39 dc)',
      '2nd row: 1 ch to turn, 1 double into each loop, taking up the back loop. (39 dc)',
    ),
    counts: [40, 39, 39],
  },
  {
    name: 'the hook before the chain with no comma between, and what rows come to',
    terms: 'uk',
    text: lines(
      'Using 3.00mm hook make 81 ch.',
      '1st row: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. [80 sts]',
      '2nd row: 1 ch, 1 dc in each dc to end, turn.',
      '2nd row forms dc fabric. Continue in dc until work measures 36 cm, ending after a wrong side row.',
      'Next row: 1 ch, dc2tog, dc to last 2 sts, dc2tog, turn. [78 sts]',
    ),
    counts: [81, 80, 80, 80, 78],
  },
  {
    name: 'rows repeated behind a label with a stop',
    terms: 'us',
    text: lines(
      'Ch 12.',
      'Row 1. Sc in 2nd ch from hook and in each ch across, turn. (11 sc)',
      'Row 2. Ch 1, sc in each sc across, turn.',
      'Rows 3 to 9. Repeat row 2.',
      'Row 10. Ch 1, sc2tog, sc in each sc across. (10 sc)',
    ),
    counts: [12, 11, 11, 11, 10],
  },
  {
    name: 'a slip knot, and numbers of rounds in words',
    terms: 'us',
    text: lines(
      'Round one: Make a slip knot and chain 2. Work 6 single crochet into the second chain from the hook. (6 stitches)',
      'Round two: Work 2 single crochet in each stitch around. (12 stitches)',
    ),
    counts: [6, 12],
  },
  {
    name: 'how the chain comes about, in brackets behind it',
    terms: 'us',
    text: lines(
      'Ch 46. (11 × 4 + 1, plus 1)',
      'Row 1 (WS) Sc in 2nd ch from hook and each ch across. Turn. 45 sc total.',
    ),
    counts: [46, 45],
  },
  {
    name: 'short labels in a repeat of rows, counts behind arrows',
    terms: 'us',
    // 2, then a dc in every second of 82, and 1: 44, with 41 spaces
    text: lines(
      'Ch 87.',
      'R1: dc in 4th ch from hook (skipped chs count as 1st dc), dc in each ch to end. Turn >> 85',
      'R2: ch 3 (counts as dc), dc in next st, *ch 1, sk 1 st, dc in next st* to last st, dc in last st. Turn >> 44 dc + 41 ch-sps',
      'R3: ch 3, dc in each dc and ch-sp to end. Turn >> 85',
      'R4-R31: rep R2-R3 fourteen times',
    ),
    counts: [87, 85, 44, 85, 85],
    spaces: [0, 0, 41, 0, 0],
  },
  {
    name: 'lengths of the sizes between slashes, colours changed on the way',
    terms: 'us',
    text: lines(
      'Ch 12/14/16.',
      'Row 1: Sc in 2nd ch from hook and in each ch, turn. (11/13/15 sc)',
      'Row 2: Ch 1, sc in each sc. Turn.',
      'Repeat row 2 until the piece measures 30/31/32 cm, changing color every 10 rows.',
    ),
    counts: [
      [12, 14, 16],
      [11, 13, 15],
      [11, 13, 15],
      [11, 13, 15],
    ],
  },
];
