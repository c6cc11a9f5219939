/**
 * Written rows: spirals, joined rounds, squares, doilies, flowers, hats and mittens, in the many styles of
 * leaflets, old books and chat messages: what a reader of rounds may meet.
 */
import { type Expected, lines, type RowCase } from '../types.ts';

const spiral = (name: string, text: string, final: number): RowCase => ({
  name: `over 24: ${name}`,
  terms: 'us',
  text: lines(
    'Rnd 1: 6 sc in magic ring. (6)',
    'Rnd 2: 2 sc in each st around. (12)',
    'Rnd 3: (Sc in next st, inc) 6 times. (18)',
    'Rnd 4: (Sc in next 2 sts, inc) 6 times. (24)',
    text,
  ),
  final,
});
const ukSpiral = (name: string, text: string, final: number): RowCase => ({
  name: `over 24: ${name}`,
  terms: 'uk',
  text: lines(
    'Rnd 1: 6 dc in magic ring. (6)',
    'Rnd 2: 2 dc in each st around. (12)',
    'Rnd 3: (1 dc, 2 dc in next st) 6 times. (18)',
    'Rnd 4: (2 dc, 2 dc in next st) 6 times. (24)',
    text,
  ),
  final,
});
/** Rounds worked after `first`; the numbers are those of the last. */
const after =
  (start: string, terms: RowCase['terms'], first: string) =>
  (name: string, rounds: string | readonly string[], final: Expected, spaces: Expected = 0): RowCase => {
    const each = typeof rounds === 'string' ? [rounds] : rounds;
    return {
      name: `${start}: ${name}`,
      terms,
      text: lines(first, ...each),
      final,
      spaces: [null, ...each.map((_, i) => (i === each.length - 1 ? spaces : null))],
    };
  };
const circle = after(
  'on 12 dc',
  'us',
  'Rnd 1: Ch 3 (counts as dc throughout), 11 dc in magic ring; join with sl st in top of beg ch-3. (12 dc)',
);
const onRing = after('in the ring', 'us', 'Ch 5, join with sl st in first ch to form ring.');
const ukCircle = after(
  'on 12 tr',
  'uk',
  'Rnd 1: Ch 3 (counts as tr throughout), 11 tr into magic ring, join with ss into top of beg 3-ch. (12 tr)',
);
const ukOnRing = after('in the ring', 'uk', 'Make 5 ch, join with ss to form a ring.');

export const circles: readonly RowCase[] = [
  // Spirals of toys
  {
    name: 'ball in the shortest style',
    terms: 'us',
    text: lines(
      'R1: 6 sc in MR (6)',
      'R2: 6 inc (12)',
      'R3: [sc, inc]*6 (18)',
      'R4: [2sc, inc]*6 (24)',
      'R5-8: sc around (24)',
      'R9: [2sc, dec]*6 (18)',
      'R10: [sc, dec]*6 (12)',
      'R11: 6 dec (6)',
    ),
    counts: [6, 12, 18, 24, 24, 18, 12, 6],
  },
  {
    name: 'bare numbers for single crochets',
    terms: 'us',
    // (3 + inc) * 6 over 24 = 30
    text: lines(
      'R1: MR 6 (6)',
      'R2: inc*6 (12)',
      'R3: [1, inc]*6 (18)',
      'R4: [2, inc]*6 (24)',
      'R5: [3, inc]*6 (30)',
    ),
    counts: [6, 12, 18, 24, 30],
  },
  {
    name: 'run-together numbers: sc5, inc, sc5',
    terms: 'us',
    // 12: 5 + 2 + 5 + 2 -> uses 5+1+5+1 = 12, makes 14
    text: lines(
      'Rnd 1: 6sc in MR [6]',
      'Rnd 2: inc x6 [12]',
      'Rnd 3: sc5, inc, sc5, inc [14]',
      'Rnd 4: sc14 [14]',
      'Rnd 5: sc5, dec, sc5, dec [12]',
    ),
    counts: [6, 12, 14, 14, 12],
  },
  {
    name: 'sc in next 10, (inc, sc) twice',
    terms: 'us',
    // 10 + 4 = 14 used, 10 + 6 = 16
    text: lines(
      'Ch 14, join with sl st to first ch to form a ring.',
      'Rnd 1: Sc in each ch around. (14)',
      'Rnd 2: Sc in next 10, (inc, sc) twice. (16)',
      'Rnd 3: Sc in next 11, (inc, sc in next st) twice, sc in next st. (18)',
    ),
    // rnd 3: 11 + 4 + 1 = 16 used, 11 + 6 + 1 = 18
    counts: [null, 14, 16, 18],
  },
  {
    name: 'inc x 3 among plain stitches',
    terms: 'us',
    // 18: 6 + 3 + 6 + 3 = 18 used, 6 + 6 + 6 + 6 = 24
    text: lines(
      'Rnd 1: Sc 6 in magic ring. (6)',
      'Rnd 2: Inc x 6. (12)',
      'Rnd 3: (Sc 1, inc) x 6. (18)',
      'Rnd 4: Sc 6, inc x 3, sc 6, inc x 3. (24)',
      'Rnd 5: Sc 7, dec x 3, sc 11. (21)',
    ),
    // rnd 5: 7 + 6 + 11 = 24 used, 7+3+11 = 21
    counts: [6, 12, 18, 24, 21],
  },
  {
    name: 'remarks about stuffing and eyes between the rounds',
    terms: 'us',
    text: lines(
      'Rnd 1: Work 6 sc into a magic ring. (6 sts)',
      'Rnd 2: Inc in each st around. (12 sts)',
      'Rnd 3: *Sc in next st, inc; rep from * around. (18 sts)',
      'Rnds 4-6: Sc in each st around. (18 sts)',
      'Insert safety eyes between Rnds 4 and 5, about 4 sts apart.',
      'Rnd 7: *Sc in next st, dec; rep from * around. (12 sts)',
      'Begin to stuff firmly.',
      'Rnd 8: Dec around. (6 sts)',
      'Fasten off, leaving a long tail for sewing.',
    ),
    final: 6,
  },
  {
    name: 'colour changes in brackets',
    terms: 'us',
    text: lines(
      'Rnd 1: (A) 6 sc in magic ring. (6)',
      'Rnd 2: (A) 2 sc in each st around. (12)',
      'Rnd 3: (B) (sc in next st, inc in next st) x 6. (18)',
    ),
    counts: [6, 12, 18],
  },
  {
    name: 'change to B in the last stitch',
    terms: 'us',
    text: lines(
      'Rnd 1: With MC, 8 sc in magic ring. (8)',
      'Rnd 2: 2 sc in each st around, changing to CC in last st. (16)',
      'Rnd 3: With CC, sc in each st around; change to MC in last yo. (16)',
      'Rnd 4: (Sc in next 3 sts, inc in next st) 4 times. Cut CC. (20)',
    ),
    counts: [8, 16, 16, 20],
  },
  {
    name: 'inv dec and invdec',
    terms: 'us',
    text: lines(
      'Rnd 1: 8 sc in a magic circle. (8)',
      'Rnd 2: 2 sc in each st. (16)',
      'Rnd 3: sc in each st. (16)',
      'Rnd 4: (sc in next 2 sts, inv dec) 4 times. (12)',
      'Rnd 5: (sc in next st, invdec) 4 times. (8)',
      'Rnd 6: (inv. dec.) 4 times. (4)',
    ),
    counts: [8, 16, 16, 12, 8, 4],
  },
  {
    name: 'sc inc and sc dec',
    terms: 'us',
    text: lines(
      'Round 1: 6 sc into MC (magic circle). 6 sts',
      'Round 2: 6 sc inc. 12 sts',
      'Round 3: (1 sc, 1 sc inc) x 6. 18 sts',
      'Round 4: (1 sc, 1 sc dec) x 6. 12 sts',
    ),
    counts: [6, 12, 18, 12],
  },
  {
    name: 'numbers with full stops',
    terms: 'us',
    text: lines(
      '1. 6 sc in magic ring (6)',
      '2. 2 sc in each st (12)',
      '3. (1 sc, 2 sc in next st) x 6 (18)',
      '4. (2 sc, 2 sc in next st) x 6 (24)',
      '5.-7. sc around (24)',
      '8. (2 sc, sc2tog) x 6 (18)',
    ),
    counts: [6, 12, 18, 24, 24, 18],
  },
  {
    name: 'numbers with closing brackets',
    terms: 'us',
    text: lines(
      '1) 6 sc in MR (6)',
      '2) inc in all 6 sts (12)',
      '3) *sc 1, inc* repeat 6 times (18)',
      '4) *sc 2, inc* rep 6 times (24)',
      '5-6) sc in all 24 sts (24)',
    ),
    counts: [6, 12, 18, 24, 24],
  },
  {
    name: 'inc in all, rep around',
    terms: 'us',
    text: lines(
      'Rd 1: 6 sc in MR',
      'Rd 2: inc around',
      'Rd 3: sc, inc, rep around',
      'Rd 4: sc in next 2, inc, rep around (24)',
    ),
    counts: [6, 12, 18, 24],
    findings: [
      { row: 2, code: 'repeat-start-not-said', severity: 'warning' },
      { row: 3, code: 'repeat-start-not-said', severity: 'warning' },
    ],
  },
  {
    name: 'rnd in capitals',
    terms: 'us',
    text: lines(
      'RND 1: 6 SC IN MAGIC RING. (6)',
      'RND 2: 2 SC IN EACH ST AROUND. (12)',
      'RND 3: *SC IN NEXT ST, 2 SC IN NEXT ST; REP FROM * AROUND. (18)',
      'RND 4: (SC IN NEXT 4 STS, SC2TOG) 3 TIMES. (15)',
    ),
    counts: [6, 12, 18, 15],
  },
  {
    name: 'ch 2 and 6 in 2nd ch from hook',
    terms: 'us',
    text: lines(
      'Ch 2.',
      'Rnd 1: 6 sc in 2nd ch from hook. (6)',
      'Rnd 2: Work 2 sc in each sc around. (12)',
      'Rnd 3: *1 sc in next sc, 2 sc in next sc, repeat from * around. (18)',
    ),
    counts: [2, 6, 12, 18],
  },
  {
    name: 'arm left open and pressed flat',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring [6]',
      'Rnd 2: [inc] repeat 6 times [12]',
      'Rnds 3 - 9: sc in all 12 st [12]',
      'Rnd 10: dec, sc in next 10 st [11]',
    ),
    // 2 + 10 = 12 used, 11
    counts: [6, 12, 12, 11],
  },
  {
    name: 'snout: oval and inc in next n',
    terms: 'us',
    text: lines(
      'Ch 5. Stitches are worked around both sides of the foundation chain.',
      'Rnd 1: start in second ch from the hook, inc in this st, sc in next 2 ch, 4 sc in last ch. Continue on the other side of the chain, sc in next 2 ch. [10]',
      'Rnd 2: inc in next 2 st, sc in next 2 st, inc in next 4 st, sc in next 2 st [16]',
    ),
    // rnd 1: 2 + 2 + 4 + 2 = 10; rnd 2: 2 + 2 + 4 + 2 = 10 used; 4 + 2 + 8 + 2 = 16
    final: 16,
  },
  {
    name: 'sc in next n st, dec, repeat n times',
    terms: 'us',
    // 24 / 4 = 6
    text: lines(
      'Ch 24, sl st in first ch to make a ring, making sure chain isn’t twisted.',
      'Rnd 1: sc in all 24 ch [24]',
      'Rnd 2: [sc in next 2 st, dec] repeat 6 times [18]',
      'Rnd 3: [sc in next st, dec] repeat 6 times [12]',
    ),
    counts: [null, 24, 18, 12],
  },
  {
    name: 'uneven round of body',
    terms: 'us',
    // 18: 2+1+4+1+4... = sc 3, inc, sc 3, (inc) 4 , sc 3, inc, sc 3 : uses 3+1+3+4+3+1+3 = 18; makes 3+2+3+8+3+2+3 = 24
    text: lines(
      'Rnd 1: 6 sc in MR',
      'Rnd 2: inc 6 times (12)',
      'Rnd 3: (sc, inc) 6x (18)',
      'Rnd 4: sc 3, inc, sc 3, inc 4 times, sc 3, inc, sc 3 (24)',
      'Rnd 5: sc 24 (24)',
    ),
    counts: [6, 12, 18, 24, 24],
  },
  {
    name: 'slip stitch end of a spiral',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. Do not join; work in a spiral, placing a marker in the first st of each rnd.',
      'Rnd 2: 2 sc in each sc around, moving marker up. (12 sc)',
      'Rnd 3: (Sc in next sc, 2 sc in next sc) 6 times. (18 sc)',
      'Rnd 4: Sc in each sc around, sl st in next sc. Fasten off. (18 sc)',
    ),
    // the slip stitch closes the spiral over the first stitch
    counts: [6, 12, 18, 18],
  },
  {
    name: 'picking up marks of an oval with hdc and sl st',
    terms: 'us',
    // heart top etc: sl st 2, sc 2, hdc 4, sc 2, sl st 2 = 12
    text: lines(
      'Rnd 1: 6 sc in MR (6)',
      'Rnd 2: 6 inc (12)',
      'Rnd 3: sl st 2, sc 2, hdc 4, sc 2, sl st 2 (12)',
      'Rnd 4: 12 sc (12)',
    ),
    counts: [6, 12, 12, 12],
  },
  {
    name: 'UK spiral, dc2tog and 2 dc in next st in words',
    terms: 'uk',
    text: lines(
      'Round 1: work 6 dc into a magic ring (6)',
      'Round 2: dc2inc in each st (12)',
      'Round 3: (1 dc, dc2inc) 6 times (18)',
      'Rounds 4 to 6: dc in each st (18)',
      'Round 7: (1 dc, dc2tog) to end (12)',
      'Round 8: dc2tog all round (6)',
    ),
    counts: [6, 12, 18, 18, 12, 6],
  },
  {
    name: 'UK: dc 6 times into a ring, dc2 into next st',
    terms: 'uk',
    text: lines(
      'Rnd 1 dc 6 times into ring (6)',
      'Rnd 2 (dc2 into next st) 6 times (12)',
      'Rnd 3 (dc1, dc2 into next st) 6 times (18)',
      'Rnds 4-6 dc (18)',
      'Rnd 7 (dc1, dc2tog) 6 times (12)',
      'Rnd 8 (dc2tog) 6 times (6)',
    ),
    counts: [6, 12, 18, 18, 12, 6],
  },
  {
    name: 'round with an even note and count after equals',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring = 6',
      'Rnd 2: inc in each st around = 12 sts',
      'Rnd 3: (1 sc, inc) x6 = 18 sts',
    ),
    counts: [6, 12, 18],
  },
  {
    name: 'count of a wrong round',
    terms: 'us',
    text: lines('R1: 6 sc in MR (6)', 'R2: 6 inc (12)', 'R3: [sc, inc]*6 (18)', 'R4: [sc 2, inc]*5 (24)'),
    counts: [6, 12, 18, null],
    findings: [{ row: 3, code: 'stitches-left-unworked' }],
  },
  // Rings and joins
  { name: 'ring: into a magic ring', terms: 'us', text: 'Rnd 1: 6 sc into a magic ring. (6)', counts: [6] },
  { name: 'ring: in a magic ring', terms: 'us', text: 'Rnd 1: Work 6 sc in a magic ring. (6)', counts: [6] },
  { name: 'ring: into magic loop', terms: 'uk', text: 'Round 1: 6 dc into magic loop. (6)', counts: [6] },
  {
    name: 'ring: make a magic ring and',
    terms: 'us',
    text: 'Rnd 1: Make a magic ring and work 6 sc into the ring. (6)',
    counts: [6],
  },
  {
    name: 'ring: with A, make a magic ring, ch 1',
    terms: 'us',
    text: 'Rnd 1: With A, make a magic ring, ch 1, 8 hdc in ring, sl st in first hdc to join. Pull ring closed. (8 hdc)',
    counts: [8],
  },
  {
    name: 'ring: adjustable ring',
    terms: 'us',
    text: 'Rnd 1: Make an adjustable ring, ch 1, 6 sc into ring. Pull tail to close. (6 sc)',
    counts: [6],
  },
  {
    name: 'ring: sliding loop',
    terms: 'us',
    text: 'Rnd 1: Make a sliding loop, ch 2 (does not count as a st), 10 dc in loop, join. (10 dc)',
    counts: [10],
  },
  { name: 'ring: start 6 sc in mr', terms: 'us', text: 'R1: start with 6 sc in a MR (6)', counts: [6] },
  { name: 'ring: MR, 6 sc', terms: 'us', text: 'R1: MR, 6 sc (6)', counts: [6] },
  { name: 'ring: 6sc in MR', terms: 'us', text: 'R1. 6sc in MR (6)', counts: [6] },
  { name: 'ring: mc 6 sc', terms: 'us', text: 'R1: 6 sc in mc (6)', counts: [6] },
  { name: 'ring: magic ring with 6 sc', terms: 'us', text: 'Rnd 1: Magic ring with 6 sc. (6)', counts: [6] },
  { name: 'ring: magic ring and a bare number', terms: 'us', text: 'R1: Magic ring 6 (6 sts)', counts: [6] },
  {
    name: 'ring: on its own line',
    terms: 'us',
    text: lines('Make a magic ring.', 'Rnd 1: Ch 1, 6 sc into the ring, join with sl st to first sc. [6]'),
    final: 6,
  },
  {
    name: 'ring: ch 4, sl st in first ch, into circle',
    terms: 'us',
    text: lines(
      'Ch 4 and join with a sl st to form a ring.',
      'Rnd 1: Ch 3, work 11 dc into centre of ring, sl st to top of ch-3. 12 dc.',
    ),
    final: 12,
  },
  {
    name: 'ring: ss to first ch, in ring',
    terms: 'uk',
    text: lines('Ch4, join with ss into a ring.', 'Rnd 1: Ch3, 11tr into ring, ss to top of 3-ch. 12 tr'),
    final: 12,
  },
  {
    name: 'ring: ss into 1st ch to form ring',
    terms: 'uk',
    text: lines(
      'Make 5ch, ss into 1st ch to form a ring.',
      'Round 1: 3ch (counts as 1tr), 1tr, [2ch, 2tr] 3 times into ring, 2ch, ss into top of 3ch.',
    ),
    counts: [null, 8],
    spaces: [null, 4],
  },
  {
    name: 'ring: foundation ring',
    terms: 'uk',
    text: lines(
      'Foundation ring: Using yarn A, make 6ch and join with ss into 1st ch to form a ring.',
      'Round 1: 1ch, 12dc into ring, ss into 1st dc. (12 dc)',
    ),
    final: 12,
  },
  {
    name: 'join: ss to 1st dc',
    terms: 'uk',
    text: lines(
      'Rnd 1: 1 ch, 8 dc into magic ring, ss to 1st dc. 8 dc',
      'Rnd 2: 1 ch, 2 dc in each dc around, ss to 1st dc. 16 dc',
      'Rnd 3: 1 ch, [1 dc, 2 dc in next dc] 8 times, ss to 1st dc. 24 dc',
    ),
    counts: [8, 16, 24],
  },
  {
    name: 'join: slip stitch to join, ch 2 does not count',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 2 (does not count as st here and throughout), 10 dc in magic ring, slip stitch to first dc. (10 dc)',
      'Rnd 2: Ch 2, 2 dc in each dc around, slip stitch to first dc. (20 dc)',
      'Rnd 3: Ch 2, *1 dc in next dc, 2 dc in next dc, repeat from * around, slip stitch to first dc. (30 dc)',
    ),
    counts: [10, 20, 30],
  },
  {
    name: 'join: invisible join',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring, join with sl st to first sc. (6)',
      'Rnd 2: Ch 1, 2 sc in each st around, fasten off with an invisible join to first sc. (12)',
    ),
    counts: [6, 12],
  },
  {
    name: 'join: needle join',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 8 sc in magic ring; join. (8)',
      'Rnd 2: Ch 1, 2 sc in each sc around; needle join to first sc. (16)',
    ),
    counts: [8, 16],
  },
  {
    name: 'join: sl st into top of first dc to close',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as 1 dc), work 13 dc in magic ring, sl st into top of ch 3 to close the round. (14)',
      'Rnd 2: Ch 3, 1 dc into same st, 2 dc into each st around, sl st into top of ch 3. (28)',
    ),
    counts: [14, 28],
  },
  {
    name: 'join: in 3rd ch of ch-3',
    terms: 'us',
    text: lines(
      'Rnd 1: (RS) Ch 3, 9 dc in magic ring; join in 3rd ch of ch-3. Fasten off. (10 dc)',
      'Rnd 2: Join B with sl st in any dc, ch 3, dc in same dc, 2 dc in each dc around; join in 3rd ch of ch-3. (20 dc)',
    ),
    counts: [10, 20],
  },
  {
    name: 'standing stitches',
    terms: 'us',
    text: lines(
      'Rnd 1: With A, 12 dc in magic ring, sl st in first dc to join. Fasten off. (12 dc)',
      'Rnd 2: With B, standing dc in any st, dc in same st, 2 dc in each st around, sl st in first dc to join. (24 dc)',
    ),
    counts: [12, 24],
  },
  {
    name: 'standing stitch of a new colour, sc',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring; join. Fasten off. (6 sc)',
      'Rnd 2: Join new color with a standing sc in any st, sc in same st, 2 sc in each st around; join. (12 sc)',
    ),
    counts: [6, 12],
  },
  {
    name: 'attach yarn in any st',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 10 sc in magic ring, join. Fasten off. (10 sc)',
      'Rnd 2: Attach yarn B in any st, ch 1, 2 sc in same st and in each st around, join. (20 sc)',
    ),
    counts: [10, 20],
  },
  {
    name: 'join with sc in any st',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 12 sc in magic ring; join. Fasten off. (12 sc)',
      'Rnd 2: Join B with sc in any sc, ch 3, sk next sc, *sc in next sc, ch 3, sk next sc; rep from * around; join in first sc. (6 sc, 6 ch-3 sps)',
    ),
    counts: [12, 6],
    spaces: [0, 6],
  },
  {
    name: 'close with hdc as last space',
    terms: 'us',
    // 1 + 5 = 6 sc, 5 loops of ch 3 and one of ch 1, hdc; the closing stitch is part of its loop
    text: lines(
      'Rnd 1: Ch 1, 12 sc in magic ring; join. (12 sc)',
      'Rnd 2: Ch 1, sc in same st, *ch 3, sk next st, sc in next st; rep from * 4 times more, ch 1, sk last st, hdc in first sc to form last lp. (6 ch-3 lps)',
      'Rnd 3: Ch 1, sc in same lp, *ch 4, sc in next lp; rep from * around, ch 2, dc in first sc to form last lp. (6 lps)',
    ),
    byKind: [{ sc: 12 }, { sc: 6 }, { sc: 6 }],
    spaces: [0, 6, 6],
  },
  {
    name: 'last ch 2, dc in first sc',
    terms: 'us',
    // 16 / 2 = 8: 7 loops of ch 5 and one of ch 2, dc
    text: lines(
      'Rnd 1: 16 sc in magic ring; join with sl st in first sc. (16 sc)',
      'Rnd 2: Ch 1, sc in same sc as join, *ch 5, sk next sc, sc in next sc; rep from * around to last sc, sk last sc, ch 2, dc in first sc to form last loop. (8 loops)',
      'Rnd 3: Ch 1, sc in loop just made, *ch 6, sc in next ch-5 loop; rep from * around, ch 3, dc in first sc. (8 loops)',
    ),
    byKind: [{ sc: 16 }, { sc: 8 }, { sc: 8 }],
    spaces: [0, 8, 8],
  },
  {
    name: 'ch 5, sc in next lp',
    terms: 'us',
    text: lines(
      'Ch 5, join with sl st to form ring.',
      'Rnd 1: Ch 1, (sc in ring, ch 5) 6 times; join with sl st in first sc. (6 ch-5 lps)',
      'Rnd 2: Sl st to center of first lp, ch 1, sc in same lp, ch 5, *sc in next lp, ch 5; rep from * around; join. (6 sc, 6 lps)',
      'Rnd 3: Sl st in next 2 ch, ch 1, (sc, ch 5, sc) in same lp, ch 5, *(sc, ch 5, sc) in next lp, ch 5; rep from * around; join. (12 sc, 12 lps)',
    ),
    counts: [null, 6, 6, 12],
    spaces: [null, 6, 6, 12],
  },
  // Hexagons, hats, mittens, bags, flowers
  {
    name: 'hexagon with corners of (dc, ch 2, dc)',
    terms: 'us',
    // rnd 1: 6 * 2 = 12 dc, 6 sps; rnd 2: 6*(2+2) = 24 dc, 6 sps; rnd 3: 6*(4+2)=36
    text: lines(
      'Ch 5, sl st in first ch to form ring.',
      'Rnd 1: Ch 3 (counts as dc), dc in ring, (ch 1, 2 dc in ring) 5 times, ch 1; join with sl st in top of beg ch-3. (12 dc, 6 ch-1 sps)',
      'Rnd 2: Ch 3, dc in next dc, *(dc, ch 1, dc) in next ch-1 sp, dc in next 2 dc; rep from * around, ending with (dc, ch 1, dc) in last ch-1 sp; join. (24 dc, 6 ch-1 sps)',
    ),
    counts: [null, 12, 24],
    spaces: [null, 6, 6],
  },
  {
    name: 'hexagon of clusters by sides',
    terms: 'uk',
    text: lines(
      'Make 6ch, join with ss to form a ring.',
      '1st round: 3ch (counts as 1tr), 1tr in ring, *1ch, 2tr in ring; rep from * 4 times, 1ch, join with ss to top of 3ch. (6 groups of 2tr)',
      '2nd round: ss in next tr and into 1ch-sp, 3ch, (1tr, 1ch, 2tr) in same sp, *(2tr, 1ch, 2tr) in next 1ch-sp; rep from * 4 times, join with ss to top of 3ch.',
    ),
    // 6 * 4 = 24 tr, 6 sp
    counts: [null, 12, 24],
    spaces: [null, 6, 6],
  },
  {
    name: 'octagon coaster',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 15 dc in magic ring; sl st in top of ch-3 to join. (16 dc)',
      'Rnd 2: Ch 3, dc in same st, dc in next st, *2 dc in next st, dc in next st; rep from * around; sl st in top of ch-3 to join. (24 dc)',
      'Rnd 3: Ch 3, (dc, ch 2, dc) in next st, dc in next st, *dc in next st, (dc, ch 2, dc) in next st, dc in next st; rep from * around; sl st in top of ch-3 to join. (32 dc, 8 ch-2 sps)',
    ),
    // 24 / 3 = 8 : each 4 dc = 32
    counts: [16, 24, 32],
    spaces: [0, 0, 8],
  },
  {
    name: 'hat crown of hdc, joined, inc named',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 2 (does not count as st now and throughout), 11 hdc in magic ring, join to first hdc with sl st. (11)',
      'Rnd 2: Ch 2, 2 hdc in each hdc around, join. (22)',
      'Rnd 3: Ch 2, *2 hdc in next hdc, hdc in next hdc*, repeat from * to * around, join. (33)',
      'Rnd 4: Ch 2, *2 hdc in next hdc, hdc in each of next 2 hdc*, rep between * around, join. (44)',
      'Rnds 5-8: Ch 2, hdc in each hdc around, join. (44)',
    ),
    counts: [11, 22, 33, 44, 44],
  },
  {
    name: 'hat by size, crown',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 10 (10, 12) hdc in magic ring; join. [10 (10, 12) hdc]',
      'Rnd 2: Ch 1, 2 hdc in each st around; join. [20 (20, 24) hdc]',
      'Rnd 3: Ch 1, *hdc in next st, 2 hdc in next st; rep from * around; join. [30 (30, 36) hdc]',
    ),
    counts: [
      [10, 10, 12],
      [20, 20, 24],
      [30, 30, 36],
    ],
  },
  {
    name: 'hat bottom up: brim seamed then picked up',
    terms: 'us',
    // 60 picked up; 60/10 = 6 : 54
    text: lines(
      'Ch 60, join with sl st in first ch, taking care not to twist.',
      'Rnd 1: Ch 1, sc in same ch as join and in each ch around; join with sl st in first sc. [60 sts]',
      'Rnd 2: Ch 1, *sc in next 8 sts, sc2tog; rep from * around; join. [54 sts]',
      'Rnd 3: Ch 1, *sc in next 7 sts, sc2tog; rep from * around; join. [48 sts]',
      'Rnd 4: Ch 1, (sc2tog) around; join. [24 sts]',
    ),
    counts: [null, 60, 54, 48, 24],
  },
  {
    name: 'hat bottom up, dc, ss joins in UK',
    terms: 'uk',
    text: lines(
      'Ch 48, ss in first ch to join into a ring.',
      'Round 1: Ch 3 (counts as 1 tr throughout), 1 tr in each ch to end, ss in 3rd ch of 3-ch. 48 tr.',
      'Round 2: Ch 3, 1 tr in each of next 5 tr, tr2tog, *1 tr in each of next 6 tr, tr2tog, rep from * to end, ss in 3rd ch of 3-ch. 42 tr.',
    ),
    // 48: 3ch + 5 + tog = 8; 6 groups of 8 → 7 each = 42
    counts: [null, 48, 42],
  },
  {
    name: 'crown decrease, all tog',
    terms: 'us',
    text: lines(
      'Ch 12, join with sl st to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around, join. (12 sc)',
      'Rnd 2: Ch 1, sc2tog 6 times, join. (6 sc) Fasten off, leaving a 10" tail. Weave tail through remaining sts and pull tight.',
    ),
    counts: [null, 12, 6],
  },
  {
    name: 'post ribbing on a neckband',
    terms: 'us',
    text: lines(
      'Ch 60, join with sl st to form a ring.',
      'Rnd 1: Ch 3 (counts as dc), dc in each ch around, join with sl st in top of beg ch-3. (60 dc)',
      'Rnd 2: Ch 2 (counts as first FPdc), *BPdc around next dc, FPdc around next dc; rep from * to last st, BPdc around last st; join with sl st to top of beg ch-2.',
    ),
    counts: [null, 60, 60],
  },
  {
    name: 'post rib: fptr, bptr around',
    terms: 'uk',
    text: lines(
      'Make 40 ch, join with a ss, being careful not to twist ch.',
      'Rnd 1: 3 ch, 1 tr in each ch to end, ss in top of 3 ch. (40 tr)',
      'Rnd 2: 2 ch, *1 RtrF round next tr, 1 RtrB round next tr; rep from * to last tr, 1 RtrF round last tr; ss to top of 2 ch. (40 sts)',
    ),
    counts: [null, 40, 40],
  },
  {
    name: 'post rib in condensed style',
    terms: 'us',
    text: lines(
      'Ch 36, sl st to join.',
      'Rnd 1: Ch 2 (does not count as a st), 36 hdc around, sl st to first hdc. (36)',
      'Rnd 2: Ch 2, (FPdc, BPdc) around, sl st to first FPdc. (36)',
      'Rnd 3: Ch 2, *FPdc in FPdc, BPdc in BPdc; rep from * around, sl st to first st. (36)',
    ),
    counts: [null, 36, 36, 36],
  },
  {
    name: 'sleeve in joined and turned rounds',
    terms: 'us',
    // 40 - 2 = 38, - 2 = 36
    text: lines(
      'Ch 40, join with sl st to form a ring.',
      'Rnd 1 (RS): Ch 1, sc in each ch around, join with sl st in first sc, turn. (40 sc)',
      'Rnd 2 (WS): Ch 1, sc2tog, sc in each sc around to last 2 sc, sc2tog, join with sl st in first st, turn. (38 sc)',
      'Rnds 3-6: Ch 1, sc in each st around, join with sl st in first sc, turn. (38 sc)',
      'Rnd 7: Rep Rnd 2. (36 sc)',
    ),
    counts: [null, 40, 38, 38, 36],
  },
  {
    name: 'cuff: dec evenly',
    terms: 'us',
    text: lines(
      'Ch 36, join with sl st to form a ring.',
      'Rnd 1: Ch 1, hdc in each ch around, join. (36 hdc)',
      'Rnd 2: Ch 1, sc around, dec 6 sts evenly spaced, join. (30 sc)',
      'Rnd 3: Ch 1, sc in each sc around, inc 4 sc evenly around, join. (34 sc)',
    ),
    counts: [null, 36, 30, 34],
  },
  {
    name: 'mitten: thumb opening skip and chain',
    terms: 'us',
    // 32 - 6 = 26 sc and a space of 6; 26 + 6 = 32
    text: lines(
      'Ch 32, join with sl st in first ch.',
      'Rnd 1: Ch 1, sc in each ch around, join. (32 sc)',
      'Rnd 2: Ch 1, sc in next 2 sts, ch 6, sk next 6 sts, sc in each st around, join. (26 sc, 1 ch-6 sp)',
      'Rnd 3: Ch 1, sc in each sc and in each ch around, join. (32 sc)',
    ),
    counts: [null, 32, 26, 32],
    spaces: [null, 0, 1, 0],
  },
  {
    name: 'mitten thumb gusset',
    terms: 'us',
    text: lines(
      'Ch 28, join with sl st to form ring.',
      'Rnd 1: Ch 1, sc in each ch around; join. (28 sc)',
      'Rnd 2: Ch 1, 2 sc in first st, sc in next st, 2 sc in next st, sc in each rem st around; join. (30 sc)',
      'Rnd 3: Ch 1, 2 sc in first st, sc in next 3 sts, 2 sc in next st, sc in each rem st around; join. (32 sc)',
    ),
    counts: [null, 28, 30, 32],
  },
  {
    name: 'mitten: thumb opening in UK',
    terms: 'uk',
    text: lines(
      'Make 30ch, join into a ring with a ss.',
      '1st round: 1ch, 1dc in each ch to end, ss in first dc. (30dc)',
      '2nd round: 1ch, 1dc in each of next 3dc, 5ch, miss next 5dc, 1dc in each dc to end, ss in first dc.',
      '3rd round: 1ch, 1dc in each of next 3dc, 5dc in 5ch-sp, 1dc in each dc to end, ss in first dc. (30dc)',
    ),
    // 3 + 22 = 25 dc, 1 sp
    counts: [null, 30, 25, 30],
    spaces: [null, 0, 1, 0],
  },
  {
    name: 'bag base: oval of sc, 4 in the end',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Rnd 1: 2 sc in 2nd ch from hook, sc in next 18 ch, 4 sc in last ch; working along opposite side of foundation ch, sc in next 18 ch, 2 sc in last ch (same ch as first 2 sc); join with sl st in first sc. (44 sc)',
      'Rnd 2: Ch 1, 2 sc in each of next 2 sts, sc in next 18 sts, 2 sc in each of next 4 sts, sc in next 18 sts, 2 sc in each of last 2 sts; join. (52 sc)',
    ),
    // 20 chains: 2 + 18 + 4 + 18 + 2 = 44; rnd 2: 4+18+8+18+4 = 52
    counts: [21, 44, 52],
  },
  {
    name: 'bag base in the short style',
    terms: 'us',
    // 10 chains (ch 11): 9 sc, 3 in last, other side 8, inc = 2 -> 9+3+8+2 = 22
    text: lines(
      'Ch 11',
      'R1: sc in 2nd ch from hook, sc 8, 3 sc in last ch, rotate, sc 8, inc in last ch (22)',
      'R2: inc, sc 8, inc x 3, sc 8, inc x 2 (28)',
      'R3: sc, inc, sc 8, [sc, inc] x 3, sc 8, [sc, inc] x 2 (34)',
    ),
    // R2: 1+8+3+8+2 = 22 used; 2+8+6+8+4 = 28; R3: 2+8+6+8+4 = 28 used; 3+8+9+8+6 = 34
    counts: [11, 22, 28, 34],
  },
  {
    name: 'flower: petals in loops',
    terms: 'us',
    // 6 sc, 6 ch-3; petals (sc, hdc, 3 dc, hdc, sc) = 7 * 6 = 42
    text: lines(
      'Ch 4, join with sl st to form a ring.',
      'Rnd 1: Ch 1, *sc in ring, ch 3; rep from * 5 more times, join with sl st in first sc. (6 ch-3 sps)',
      'Rnd 2: (Sl st, ch 1, sc, hdc, 3 dc, hdc, sc) in each ch-3 sp around, join. Fasten off. (6 petals)',
    ),
    counts: [null, 6, null],
    spaces: [null, 6, null],
    byKind: [null, { sc: 6 }, { sc: 12, hdc: 12, dc: 18 }],
  },
  {
    name: 'flower: petals, sc hdc dc',
    terms: 'us',
    text: lines(
      'Ch 5, sl st to form ring.',
      'Rnd 1: Ch 1, 10 sc in ring, sl st in first sc. (10 sc)',
      'Rnd 2: *Ch 4, sk next sc, sl st in next sc; rep from * 4 more times. (5 ch-4 lps)',
      'Rnd 3: In each ch-4 lp work (sc, hdc, 3 dc, hdc, sc), join. (5 petals)',
    ),
    // 5 * 7 = 35
    counts: [null, 10, null, 35],
    spaces: [null, 0, 5, 0],
  },
  {
    name: 'flower UK: (1dc, 1htr, 3tr, 1htr, 1dc)',
    terms: 'uk',
    text: lines(
      '6 ch, ss to join into a ring.',
      'Rnd 1: 1 ch, [1 dc into ring, 3 ch] 5 times, ss into first dc.',
      'Rnd 2: [1 dc, 1 htr, 3 tr, 1 htr, 1 dc] into each 3-ch sp, ss into first dc. 5 petals.',
    ),
    counts: [null, 5, 35],
    spaces: [null, 5, 0],
  },
  // Squares and borders
  {
    name: 'granny: ch 3, 2 dc, ch 2 joins',
    terms: 'us',
    text: lines(
      'Ch 4, sl st to first ch to form a ring.',
      'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * twice more, sl st to top of ch-3. (4 groups)',
      'Rnd 2: Sl st across to first ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * twice more, sl st to top of ch-3.',
      'Rnd 3: Sl st to corner sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, 3 dc in next ch-1 sp, ch 1, *(3 dc, ch 2, 3 dc) in corner sp, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * around, sl st to top of ch-3.',
    ),
    // 12 dc 4 sp; 24, 4+4=8; 36, 4 + 8 = 12
    counts: [null, 12, 24, 36],
    spaces: [null, 4, 8, 12],
  },
  {
    name: 'granny: no chains between groups',
    terms: 'us',
    text: lines(
      'Rnd 1: In magic ring, ch 3 (counts as dc), 2 dc, (ch 2, 3 dc) 3 times, ch 2, join with sl st in top of ch-3. (12 dc)',
      'Rnd 2: Sl st in next 2 dc and in ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same corner, *(3 dc, ch 2, 3 dc) in next corner; rep from * 2 more times, join. (24 dc)',
      'Rnd 3: Sl st in next 2 dc and in corner sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, 3 dc in sp between groups, *(3 dc, ch 2, 3 dc) in next corner, 3 dc in sp between groups; rep from * around, join. (36 dc)',
    ),
    counts: [12, 24, 36],
    spaces: [4, 4, 4],
  },
  {
    name: 'granny UK: 3tr groups, corner',
    terms: 'uk',
    text: lines(
      'Using A, make 4ch and join with a ss to form a ring.',
      'Round 1: 5ch (counts as 1tr and 2ch), [3tr into ring, 2ch] 3 times, 2tr into ring, ss to 3rd of 5ch.',
      'Round 2: Ss into corner sp, 5ch, 3tr into same sp, *1ch, [3tr, 2ch, 3tr] into next 2ch sp; rep from * twice more, 1ch, 2tr into first sp, ss to 3rd of 5ch. Fasten off.',
    ),
    // rnd 1: 1 + 9 + 2 = 12 tr, 4 sp; rnd 2: 1 + 3 + 18 + 2 = 24; spaces 1(5ch) + 3*(1+1) + 1 = 8
    counts: [null, 12, 24],
    spaces: [null, 4, 8],
  },
  {
    name: 'granny: join new colour in any corner',
    terms: 'us',
    text: lines(
      'Rnd 1: With A, in magic ring: ch 3, 2 dc, ch 2, [3 dc, ch 2] 3 times; join with sl st in 3rd ch of ch-3. Fasten off A.',
      'Rnd 2: Join B with sl st in any ch-2 sp, ch 3, 2 dc in same sp, ch 2, 3 dc in same sp, [ch 1, 3 dc in next ch-2 sp, ch 2, 3 dc in same sp] 3 times, ch 1; join with sl st in 3rd ch of ch-3. Fasten off B.',
    ),
    counts: [12, 24],
    spaces: [4, 8],
  },
  {
    name: 'solid granny: ch 2 corners, dc in each',
    terms: 'us',
    // rnd 1: 12 dc, 4 sps; rnd 2: 12 + 4*4 = 28; rnd 3: 28 + 16 = 44
    text: lines(
      'Rnd 1: Ch 3 (counts as dc throughout), 2 dc in magic ring, (ch 2, 3 dc) 3 times in ring, ch 2, sl st in top of ch 3 to join. (12 dc, 4 ch-2 corners)',
      'Rnd 2: Ch 3, dc in next 2 dc, *(2 dc, ch 2, 2 dc) in corner, dc in next 3 dc; repeat from * twice more, (2 dc, ch 2, 2 dc) in last corner, sl st in top of ch 3. (28 dc, 4 ch-2 corners)',
      'Rnd 3: Ch 3, dc in each dc to corner, *(2 dc, ch 2, 2 dc) in corner, dc in each dc to next corner; repeat from * twice more, (2 dc, ch 2, 2 dc) in last corner, dc in each rem dc, sl st in top of ch 3. (44 dc)',
    ),
    counts: [12, 28, 44],
    spaces: [4, 4, 4],
  },
  {
    name: 'solid square: dc corners (2 dc, ch 1, 2 dc) UK',
    terms: 'uk',
    text: lines(
      'Ch 4, ss in first ch to form a ring.',
      'Rnd 1: ch 3 (counts as 1 tr), 2 tr into ring, ch 2, *3 tr into ring, ch 2, rep from * twice, ss in 3rd ch of beg 3-ch.',
      'Rnd 2: ch 3, 1 tr in each of next 2 tr, *(2 tr, ch 2, 2 tr) in next 2-ch sp, 1 tr in each of next 3 tr, rep from * twice, (2 tr, ch 2, 2 tr) in last 2-ch sp, ss in 3rd ch of beg 3-ch. 28 tr.',
    ),
    counts: [null, 12, 28],
    spaces: [null, 4, 4],
  },
  {
    name: 'solid square: 3 dc in corner stitch',
    terms: 'us',
    // 4 * 4 = 16
    text: lines(
      'Rnd 1: 8 sc in magic ring, join. (8)',
      'Rnd 2: Ch 1, *sc in next st, 3 sc in next st; rep from * around, join. (16)',
      'Rnd 3: Ch 1, sc in next 2 sts, 3 sc in next st, *sc in next 3 sts, 3 sc in next st; rep from * 2 more times, sc in last st, join. (24)',
    ),
    // rnd 3: 2+1+ 3*4 + 1 = 16 used; 2+3+18+1 = 24
    counts: [8, 16, 24],
  },
  {
    name: 'sc square: (sc, ch 2, sc) in each ch-2 sp',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, (2 sc, ch 2) 4 times in magic ring, sl st to first sc. (8 sc, 4 ch-2 sps)',
      'Rnd 2: Ch 1, sc in next 2 sc, (sc, ch 2, sc) in corner ch-2 sp, *sc in next 2 sc, (sc, ch 2, sc) in corner ch-2 sp; rep from * around, sl st to first sc. (16 sc, 4 ch-2 sps)',
    ),
    counts: [8, 16],
    spaces: [4, 4],
  },
  {
    name: 'wrong: circle to square, stated too small',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 11 dc in magic ring, join. (12 dc)',
      'Rnd 2: Ch 3, dc in same st, 2 dc in each dc around, join. (24 dc)',
      'Rnd 3: Ch 1, *sc in next 2 sts, hdc in next st, (2 dc, ch 2, 2 dc) in next st, hdc in next st, sc in next st; rep from * 3 more times, join. (32 sts, 4 ch-2 sps)',
    ),
    // 2 + 1 + 4 + 1 + 1 = 9 over 6, four times = 36
    counts: [12, 24, 36],
    findings: [{ row: 2, code: 'stated-count-wrong', words: '(32 sts, 4 ch-2 sps)', saying: ['32', '36'] }],
  },
  {
    name: 'border round a blanket: sc evenly, 3 in corners',
    terms: 'us',
    text: lines(
      'Ch 22.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn. (20 dc)',
      'Rows 2-4: Ch 3, dc in next dc and in each dc across, turn. (20 dc)',
      'Rnd 1: Ch 1, 3 sc in first dc, sc in next 18 dc, 3 sc in last dc, work 2 sc in end of each row, 3 sc in first ch of foundation, sc in next 18 ch, 3 sc in last ch, 2 sc in end of each row; join with sl st in first sc. (64 sc)',
    ),
    // 3 + 18 + 3 + 8 + 3 + 18 + 3 + 8 = 64
    final: 64,
  },
  {
    name: 'border in UK: 3 dc in each corner',
    terms: 'uk',
    text: lines(
      'Rnd 1: 3 ch, 2 tr in magic ring, [2 ch, 3 tr] 3 times in ring, 2 ch, ss in top of 3 ch. (12 tr)',
      'Edging: 1 ch, 1 dc in each tr and 3 dc in each 2-ch sp around, ss in first dc. Fasten off. (24 dc)',
    ),
    counts: [12, 24],
  },
  {
    name: 'picot border',
    terms: 'us',
    // 24 / 3 = 8 picots
    text: lines(
      'Picot: Ch 3, sl st in 3rd ch from hook.',
      'Rnd 1: Ch 3 (counts as dc), 23 dc in magic ring; join. (24 dc)',
      'Rnd 2: Ch 1, *sc in next 3 sts, picot; rep from * around; join. (24 sc, 8 picots)',
    ),
    counts: [24, 24],
  },
  {
    name: 'picot border, bracketed',
    terms: 'us',
    text: lines(
      'Rnd 1: 12 dc in magic ring; join with sl st in first dc. (12 dc)',
      'Rnd 2: Ch 1, *(sc, ch 3, sc) in next dc, sc in next dc; rep from * around; join with sl st in first sc. (18 sc, 6 ch-3 sps)',
    ),
    counts: [12, 18],
    spaces: [0, 6],
  },
  {
    name: 'crab stitch round',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 16 sc in magic ring; join with sl st in first sc. (16 sc)',
      'Rnd 2: Ch 1, working from left to right, rev sc in each sc around; join with sl st in first st. Fasten off. (16)',
    ),
    counts: [16, 16],
  },
  {
    name: 'crab stitch UK',
    terms: 'uk',
    text: lines(
      'Rnd 1: 1 ch, 16 dc in magic ring; ss in first dc. (16 dc)',
      'Rnd 2: 1 ch, 1 crab st in each dc around; ss in first st. Fasten off.',
    ),
    counts: [16, 16],
  },
  {
    name: 'shell border in the round',
    terms: 'us',
    // 36 sc / 6 = 6 shells
    text: lines(
      'Ch 36, join with sl st to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around; join. (36 sc)',
      'Rnd 2: Ch 1, *sc in next st, sk 2 sts, 5 dc in next st, sk 2 sts; rep from * around; join. (6 shells)',
    ),
    counts: [null, 36, 36],
  },
  {
    name: 'doily start: dc ch1, then clusters',
    terms: 'us',
    text: lines(
      'Cluster (cl): [Yo, insert hook in sp, yo, pull up a loop, yo, draw through 2 loops] 3 times, yo, draw through all 4 loops on hook.',
      'Rnd 1: Ch 4 (counts as dc, ch 1), (dc, ch 1) 7 times in magic ring; join with sl st in 3rd ch of beg ch-4. (8 dc, 8 ch-1 sps)',
      'Rnd 2: Sl st in next ch-1 sp, ch 2, dc2tog in same sp (beg cl made), ch 3, (cl in next ch-1 sp, ch 3) 7 times; join in top of beg cl. (8 cl, 8 ch-3 sps)',
      'Rnd 3: Sl st in next ch-3 sp, ch 1, (sc, ch 3, sc) in same sp, ch 3, *(sc, ch 3, sc) in next ch-3 sp, ch 3; rep from * around; join. (16 sc)',
    ),
    counts: [8, 8, 16],
    spaces: [8, 8, 16],
  },
  {
    name: 'mandala: V-sts then 3 dc',
    terms: 'us',
    text: lines(
      'V-st: (Dc, ch 1, dc) in same st.',
      'Rnd 1: Ch 2, 12 hdc in magic ring, join with sl st to first hdc. (12)',
      'Rnd 2: Ch 4 (counts as dc and ch-1), dc in same st, V-st in each st around, join with sl st to 3rd ch of ch-4. (12 V-sts)',
      'Rnd 3: Sl st into ch-1 sp, ch 3 (counts as dc), 2 dc in same sp, 3 dc in each ch-1 sp around, join with sl st to top of ch-3. (36 dc)',
    ),
    // the ch 4, dc stands for the first of 12 V-sts: 24 dc, 12 spaces; 12 * 3 = 36
    counts: [12, 24, 36],
    spaces: [0, 12, 0],
  },
  // Older, condensed and pasted wording
  {
    name: 'old: 1 double into each loop',
    terms: 'uk',
    text: lines(
      'Make a chain of 40, join with a slip stitch to form a ring.',
      '1st round. 1 chain, 1 double into each chain to end, slip stitch to first double. (40 double)',
      '2nd round. 1 chain, 1 double into each double to end, slip stitch to first double.',
    ),
    counts: [null, 40, 40],
  },
  {
    name: 'old: 3 chain, miss 2, 1 double into next',
    terms: 'uk',
    // 24 / 3 = 8
    text: lines(
      'Commence with 24 chain, join with a ss.',
      '1st round: 1 d.c. into each ch., ss to first d.c.',
      '2nd round: 1 d.c. into first d.c., *3 ch., miss 2 d.c., 1 d.c. into next d.c.; rep. from * 6 times, 3 ch., ss to first d.c.',
    ),
    counts: [null, 24, 8],
    spaces: [null, 0, 8],
  },
  {
    name: 'old: 1 d tr, 1 ch, to stand for',
    terms: 'uk',
    // 1 + 11 = 12
    text: lines(
      '6 ch, join with ss into a ring.',
      '1st round: 5 ch (to stand for 1 d tr and 1 ch), *1 d tr into ring, 1 ch; repeat from * 10 times more, ss to 4th of 5 ch. (12 d tr)',
    ),
    counts: [null, 12],
    spaces: [null, 12],
  },
  {
    name: 'old: repeat all round',
    terms: 'uk',
    text: lines(
      'Make 8 chain, join in a ring with a slip stitch.',
      '1st round: 3 chain, 23 treble into the ring, slip stitch to 3rd of 3 chain.',
      '2nd round: 1 double crochet into same place as slip stitch, * 5 chain, miss 2 treble, 1 double crochet into next treble; repeat from * all round, ending with 5 chain, slip stitch to first double crochet.',
    ),
    // 24 / 3 = 8
    counts: [null, 24, 8],
    spaces: [null, 0, 8],
  },
  {
    name: 'old: ending last repeat',
    terms: 'uk',
    text: lines(
      '8 ch., join with a s.s. into a ring.',
      '1st rnd.: 3 ch., 15 tr. into ring, s.s. to top of 3 ch.',
      '2nd rnd.: 4 ch., * 1 tr. into next tr., 1 ch.; rep. from * to end, s.s. to 3rd of 4 ch. (16 sps.)',
    ),
    counts: [null, 16, 16],
    spaces: [null, 0, 16],
  },
  {
    name: 'old US: single and double in full',
    terms: 'us',
    text: lines(
      'Chain 6, join with slip stitch to form a ring.',
      '1st round: Chain 3, 17 double crochet in ring, join with slip stitch in 3rd stitch of starting chain.',
      '2nd round: * Chain 5, skip 2 double crochet, 1 single crochet in next double crochet; repeat from * around. (6 loops)',
    ),
    counts: [null, 18, 6],
    spaces: [null, 0, 6],
  },
  {
    name: 'old US: s c, d c apart',
    terms: 'us',
    text: lines(
      'Ch 6, join with sl st.',
      '1st rnd: Ch 1, 12 s c in ring, sl st in 1st s c.',
      '2nd rnd: * Ch 4, skip 1 s c, s c in next s c. Repeat from * around. (6 lps)',
    ),
    counts: [null, 12, 6],
    spaces: [null, 0, 6],
  },
  {
    name: 'old US: Starting at center',
    terms: 'us',
    text: lines(
      'Starting at center, ch 8, join with sl st to form ring.',
      '1st rnd: Ch 3, 23 dc in ring, sl st in top of ch-3.',
      '2nd rnd: Ch 5, * skip 1 dc, dc in next dc, ch 2; rep from * around, join last ch 2 with sl st in 3rd ch of ch-5. (12 sps)',
    ),
    counts: [null, 24, 12],
    spaces: [null, 0, 12],
  },
  {
    name: 'condensed: slashes',
    terms: 'us',
    text: lines('R1: 6 sc/MR (6)', 'R2: 2 sc/each st (12)'),
    counts: [6, 12],
  },
  {
    name: 'condensed: 2sc in ea',
    terms: 'us',
    text: lines(
      'Rnd 1: 8 sc in ring',
      'Rnd 2: 2 sc in ea sc (16)',
      'Rnd 3: (sc in ea of next 3 sc, 2 sc in next) 4x (20)',
    ),
    final: 20,
  },
  {
    name: 'condensed: sc in each st, star around',
    terms: 'us',
    text: lines(
      'R1: 6sc in magic ring',
      'R2: inc in ea st around (12)',
      'R3: *sc, inc* around (18)',
      'R4: *sc in 2, inc* around (24)',
      'R5: *3 sc, inc* around (30)',
    ),
    counts: [6, 12, 18, 24, 30],
  },
  {
    name: 'condensed: sc 1, inc 1',
    terms: 'us',
    text: lines(
      'R1: 6 sc in MR (6)',
      'R2: inc 6 (12)',
      'R3: (sc 1, inc 1) x6 (18)',
      'R4: (sc 2, inc 1) x 6 (24)',
      'R5: (sc 2, dec 1) x 6 (18)',
    ),
    counts: [6, 12, 18, 24, 18],
  },
  {
    name: 'condensed: numbers before x',
    terms: 'us',
    text: lines('R1: MR, 6sc (6)', 'R2: 6x inc (12)', 'R3: 6x (sc, inc) (18)', 'R4: 6 x [2sc, inc] (24)'),
    counts: [6, 12, 18, 24],
  },
  {
    name: 'condensed: X and V style',
    terms: 'us',
    text: lines(
      'Abbreviations: X = sc, V = inc, A = dec',
      'R1: 6X in MR (6)',
      'R2: 6V (12)',
      'R3: (X, V)*6 (18)',
      'R4: (X, A)*6 (12)',
    ),
    counts: [6, 12, 18, 12],
  },
  {
    name: 'condensed: repeat 6 times after a semicolon',
    terms: 'us',
    text: lines(
      'Rnd 1 - 6 sc in magic ring (6 sts)',
      'Rnd 2 - 2 sc in each st (12 sts)',
      'Rnd 3 - 1 sc in first st, 2 sc in next st; repeat 5 more times (18 sts)',
    ),
    counts: [6, 12, 18],
    findings: [{ row: 2, code: 'repeat-start-not-said', severity: 'warning' }],
  },
  {
    name: 'condensed: hyphens in brackets for counts',
    terms: 'us',
    text: lines('Rnd 1: 6 sc in magic ring -6-', 'Rnd 2: inc x6 -12-'),
    counts: [6, 12],
  },
  {
    name: 'condensed: = and sts',
    terms: 'us',
    text: lines('R1 6sc in MR =6', 'R2 6inc =12', 'R3 6(1sc, 1inc) =18', 'R4 6(2sc, 1inc) =24'),
    counts: [6, 12, 18, 24],
  },
  {
    name: 'condensed: bullets',
    terms: 'us',
    text: lines(
      '• Rnd 1: 6 sc in magic ring (6)',
      '• Rnd 2: inc in each st (12)',
      '• Rnd 3: (sc, inc) × 6 (18)',
    ),
    counts: [6, 12, 18],
  },
  {
    name: 'condensed: bold round labels from a web page',
    terms: 'us',
    text: lines('**Round 1:** 6 sc in magic ring. (6)', '**Round 2:** 2 sc in each st around. (12)'),
    counts: [6, 12],
  },
  {
    name: 'condensed: times sign after bracket, dots',
    terms: 'us',
    text: lines('Rnd. 1: 6 sc in MR … 6', 'Rnd. 2: inc ×6 … 12'),
    counts: [6, 12],
  },
  {
    name: 'pasted: nbsp and times',
    terms: 'us',
    text: lines(
      'Rnd\u00a01: 6\u00a0sc in MR\u00a0(6)',
      'Rnd\u00a02: inc\u00a0×\u00a06\u00a0(12)',
      'Rnd\u00a03: (sc\u00a0in next\u00a0st, inc)\u00a0×\u00a06\u00a0(18)',
    ),
    counts: [6, 12, 18],
  },
  {
    name: 'pasted: curly quotes as inches and zero width space',
    terms: 'us',
    text: lines(
      '\u200bRnd 1: 8 hdc in magic ring.\u200b (8)',
      'Rnd 2: 2 hdc in each st around. (16) Circle should measure 2½” across.',
      '\ufeffRnd 3: (hdc in next st, 2 hdc in next st) 8 times. (24)',
    ),
    counts: [8, 16, 24],
  },
  {
    name: 'pasted: full-width signs',
    terms: 'us',
    text: lines('R1：6 sc in MR（6）', 'R2：inc × 6（12）', 'R3：（sc，inc）× 6（18）'),
    counts: [6, 12, 18],
  },
  {
    name: 'pasted: all capitals joined round',
    terms: 'us',
    text: lines(
      'CH 4, JOIN WITH SL ST TO FORM A RING.',
      'RND 1: CH 3 (COUNTS AS DC), 11 DC IN RING; JOIN WITH SL ST IN TOP OF CH-3. (12 DC)',
      'RND 2: CH 3, DC IN SAME ST, 2 DC IN EACH DC AROUND; JOIN. (24 DC)',
    ),
    counts: [null, 12, 24],
  },
  {
    name: 'pasted: all capitals UK',
    terms: 'uk',
    text: lines(
      'MAKE 6CH, SS TO FORM RING.',
      'ROUND 1: 1CH, 12DC INTO RING, SS IN FIRST DC. 12DC.',
      'ROUND 2: 3CH, 1TR IN SAME DC, *2TR IN NEXT DC; REP FROM * TO END, SS IN TOP OF 3CH. 24TR.',
    ),
    counts: [null, 12, 24],
  },
  {
    name: 'pasted: line broken in the middle',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 11 dc in',
      'magic ring; join with sl st in top of',
      'beg ch-3. (12 dc)',
      'Rnd 2: Ch 3, dc in same st, 2 dc in',
      'each dc around; join. (24 dc)',
    ),
    counts: [12, 24],
  },
  {
    name: 'pasted: columns of round and count by tabs',
    terms: 'us',
    text: lines('Rnd 1\t6 sc in magic ring\t6', 'Rnd 2\tinc x 6\t12', 'Rnd 3\t(sc, inc) x 6\t18'),
    counts: [6, 12, 18],
  },
  // Wrong rounds, doilies, turned rounds, colours
  {
    name: 'wrong: spiral round with one pass too few',
    terms: 'us',
    text: lines('R1: 6 sc in MR (6)', 'R2: inc x 6 (12)', 'R3: (sc, inc) x 5 (18)'),
    counts: [6, 12, 15],
    // 5 * 2 = 10 of 12 used, 15 made
    findings: [
      { row: 2, code: 'stitches-left-unworked', saying: ['2', '12'] },
      { row: 2, code: 'stated-count-wrong', saying: ['18', '15'] },
    ],
  },
  {
    name: 'wrong: spiral round too long',
    terms: 'us',
    text: lines('R1: 6 sc in MR (6)', 'R2: inc x 6 (12)', 'R3: (2 sc, inc) x 6 (24)'),
    counts: [6, 12, null],
    findings: [{ row: 2, code: ['place-does-not-exist', 'repeat-does-not-fit'] }],
  },
  {
    name: 'wrong: dec round misnumbered',
    terms: 'us',
    // 24 / 3 = 8 passes of (sc, dec) = 16, stated 12
    text: lines(
      'R1: 6 sc in MR (6)',
      'R2: inc x 6 (12)',
      'R3: (sc, inc) x 6 (18)',
      'R4: (2 sc, inc) x 6 (24)',
      'R5: (sc, dec) around (12)',
    ),
    counts: [6, 12, 18, 24, 16],
    findings: [{ row: 4, code: 'stated-count-wrong', saying: ['12', '16'] }],
  },
  {
    name: 'wrong: corner count of a granny square',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, (ch 2, 3 dc in ring) twice, ch 2; join. (12 dc)',
    ),
    counts: [9],
    findings: [{ row: 0, code: 'stated-count-wrong', saying: ['12', '9'] }],
  },
  {
    name: 'wrong: a round is missing in the numbers',
    terms: 'us',
    text: lines(
      'Rnd 1: 8 sc in magic ring. (8)',
      'Rnd 2: 2 sc in each st around. (16)',
      'Rnd 4: (Sc, 2 sc in next st) around. (24)',
    ),
    counts: [8, 16, 24],
    findings: [{ row: 2, code: 'row-number-out-of-order', words: '4' }],
  },
  {
    name: 'wrong: US word in a UK round',
    terms: 'uk',
    text: lines('Rnd 1: 6 sc in magic ring. (6)', 'Rnd 2: 2 sc in each st. (12)'),
    findings: [{ row: 0, code: 'other-terms', words: 'sc' }],
  },
  {
    name: 'wrong: picot lace round does not divide',
    terms: 'us',
    // 20 / 3 = 6, 2 left
    text: lines(
      'Rnd 1: Ch 3, 19 dc in magic ring; join with sl st in top of beg ch-3. (20 dc)',
      'Rnd 2: Ch 1, *sc in next dc, ch 3, sk 2 dc; rep from * around; join.',
    ),
    counts: [20, null],
    findings: [{ row: 1, code: 'repeat-does-not-fit', saying: ['20', '6', '2'] }],
  },
  {
    name: 'pineapple: base of 6 dtr, then ch-1',
    terms: 'us',
    // 4 * 8 = 32 tr; 4 * 8 = 32 loops; each pineapple uses 7 loops and skips 1: 4 * 7 = 28 sc, 4 * 6 = 24 + 4 = 28 loops
    text: lines(
      'Ch 4, join with sl st to form ring.',
      'Rnd 1: Ch 1, (sc, ch 5) 4 times in ring; join in first sc. (4 ch-5 lps)',
      'Rnd 2: Sl st in first lp, ch 4 (counts as tr), 7 tr in same lp, ch 2, *8 tr in next lp, ch 2; rep from * around; join in top of ch-4. (32 tr)',
      'Rnd 3: Ch 1, sc in same st, (ch 3, sc in next tr) 7 times, ch 3, sk next ch-2 sp, *sc in next tr, (ch 3, sc in next tr) 7 times, ch 3, sk next ch-2 sp; rep from * around; join in first sc. (32 sc)',
      'Rnd 4: Sl st in first ch-3 lp, ch 1, sc in same lp, (ch 3, sc in next lp) 6 times, ch 5, sk next lp, *sc in next lp, (ch 3, sc in next lp) 6 times, ch 5, sk next lp; rep from * around; join. (28 sc, 24 ch-3 lps, 4 ch-5 sps)',
    ),
    counts: [null, 4, 32, 32, 28],
    spaces: [null, 4, 4, 32, 28],
  },
  {
    name: 'doily: dc, ch 2 wheel in tens',
    terms: 'us',
    text: lines(
      'Ch 6, join.',
      'Rnd 1: Ch 3, 19 dc in ring, join in top of ch-3. (20 dc)',
      'Rnd 2: Ch 5 (counts as dc, ch 2), sk next dc, *dc in next dc, ch 2, sk next dc; rep from * around, join in 3rd ch of ch-5. (10 dc, 10 ch-2 sps)',
      'Rnd 3: Sl st in ch-2 sp, ch 3, 3 dc in same sp, 4 dc in each ch-2 sp around, join. (40 dc)',
      'Rnd 4: Ch 1, sc in same st, ch 5, sk 3 dc, *sc in next dc, ch 5, sk 3 dc; rep from * around, join. (10 sc)',
    ),
    counts: [null, 20, 10, 40, 10],
    spaces: [null, 0, 10, 0, 10],
  },
  {
    name: 'doily UK: 3dtr clusters and ch loops',
    terms: 'uk',
    text: lines(
      '6 ch, join with ss to form a ring.',
      'Rnd 1: 4 ch (counts as 1 dtr), 2 dtr into ring, (3 ch, 3 dtr into ring) 5 times, 3 ch, ss into top of 4 ch. (18 dtr)',
      'Rnd 2: ss into next 2 dtr and into 3-ch sp, 1 ch, (1 dc, 5 ch, 1 dc) into same sp, 5 ch, *(1 dc, 5 ch, 1 dc) into next 3-ch sp, 5 ch; rep from * 4 times more, ss into first dc. (12 loops)',
    ),
    counts: [null, 18, 12],
    spaces: [null, 6, 12],
  },
  {
    name: 'turned rounds UK',
    terms: 'uk',
    text: lines(
      'Make 30 ch, ss to join into a ring.',
      'Rnd 1: 1 ch, 1 dc into each ch, ss to join, turn. (30 dc)',
      'Rnd 2: 1 ch, 1 dc into each dc, ss to join, turn. (30 dc)',
    ),
    counts: [null, 30, 30],
  },
  {
    name: 'top of a bag: handles',
    terms: 'us',
    // 60 - 20 = 40; 40 + 2 * 15 = 70
    text: lines(
      'Ch 60, join with sl st to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around. (60)',
      'Rnd 2: Sc in next 10 sts, ch 15, sk 10 sts, sc in next 20 sts, ch 15, sk 10 sts, sc in next 10 sts. (40 sc, 2 ch-15 sps)',
      'Rnd 3: Sc in next 10 sts, 15 sc in ch-15 sp, sc in next 20 sts, 15 sc in ch-15 sp, sc in next 10 sts. (70 sc)',
    ),
    counts: [null, 60, 40, 70],
    spaces: [null, 0, 2, 0],
  },
  {
    name: 'last stitch of rnd: sc in next n sts x times',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: [2 sc in next st] 6 times. (12)',
      'Rnd 3: [1 sc in next st, 2 sc in next st] to end. (18)',
      'Rnd 4: [2 sc in next st, 1 sc in each of next 2 sts] to end. (24)',
      'Rnds 5 and 6: 1 sc in each st to end. (24)',
    ),
    counts: [6, 12, 18, 24, 24],
  },
  {
    name: 'offset increases',
    terms: 'us',
    // 24: sc 2, inc, (sc 3, inc) x5, sc 1 = 3 + 20 + 1 = 24; 30
    text: lines(
      'Rnd 1: 6 sc in MR (6)',
      'Rnd 2: inc x 6 (12)',
      'Rnd 3: (sc 1, inc) x 6 (18)',
      'Rnd 4: sc 1, inc, (sc 2, inc) x 5, sc 1 (24)',
      'Rnd 5: sc 2, inc, (sc 3, inc) x 5, sc 1 (30)',
    ),
    counts: [6, 12, 18, 24, 30],
  },
  {
    name: 'uneven decreases with colours',
    terms: 'us',
    text: lines(
      'Rnd 1: 8 sc in MR (8)',
      'Rnd 2: inc x 8 (16)',
      'Rnd 3: (A) sc 4, (B) sc 8, (A) sc 4 (16)',
      'Rnd 4: A: sc 4, B: dec x 4, A: sc 4 (12)',
    ),
    counts: [8, 16, 16, 12],
  },
  {
    name: 'colour by number: sc 3 in A',
    terms: 'us',
    text: lines(
      'Rnd 1: 8 sc in MR (8)',
      'Rnd 2: inc x 8 (16)',
      'Rnd 3: sc 3 in A, sc 10 in B, sc 3 in A (16)',
    ),
    counts: [8, 16, 16],
  },
  {
    name: 'in colour UK',
    terms: 'uk',
    text: lines(
      'Rnd 1: in main colour, 6 dc in magic ring (6)',
      'Rnd 2: 2 dc in each st (12)',
      'Change to white.',
      'Rnd 3: (1 dc, 2 dc in next st) 6 times (18)',
    ),
    final: 18,
  },
  {
    name: 'bobble nose',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring (6)',
      'Rnd 2: inc in all 6 sts (12)',
      'Rnd 3: sc in next 5 sts, bobble st in next st, sc in next 6 sts (12)',
    ),
    counts: [6, 12, 12],
  },
  {
    name: 'sc in all n sts',
    terms: 'us',
    text: lines(
      'Rnd 1: 8 sc in magic ring (8)',
      'Rnd 2: inc in all 8 sts (16)',
      'Rnds 3-5: sc in all 16 sts [3 rounds]',
      'Rnd 6: dec 8 times (8)',
    ),
    counts: [8, 16, 16, 8],
  },
  {
    name: 'hdc spiral of a slouchy hat',
    terms: 'us',
    text: lines(
      'Round 1: work 10 hdc in a magic ring — 10 sts.',
      'Round 2: work 2 hdc in each st around — 20 sts.',
      'Round 3: *work 1 hdc in next st, 2 hdc in next st; rep from * to end of round — 30 sts.',
      'Round 4: work even — 30 sts.',
    ),
    counts: [10, 20, 30, 30],
  },
  {
    name: 'around with from-to of repeat counts',
    terms: 'us',
    text: lines(
      'Rnd 1: 8 dc in magic ring, sl st in first dc to join. (8 dc)',
      'Rnd 2: Ch 3 (counts as dc), dc in same st as joining, (2 dc in next st) 7 times, sl st in 3rd ch of ch-3. (16 dc)',
      'Rnd 3: Ch 3, 2 dc in next st, (dc in next st, 2 dc in next st) 7 times, sl st in 3rd ch of ch-3. (24 dc)',
    ),
    counts: [8, 16, 24],
  },
  {
    name: 'dc circle with beg ch counted and inc at the join',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 4 (counts as dc plus 3 chs), 11 dc in 4th ch from hook, join with sl st in top of beg ch. (12 dc)',
      'Rnd 2: Ch 3, dc at base of ch-3, 2 dc in each st around, join. (24 dc)',
    ),
    counts: [12, 24],
  },
  {
    name: 'first ring in 4th ch from hook',
    terms: 'us',
    text: lines(
      'Ch 4.',
      'Rnd 1: 11 dc in 4th ch from hook (skipped chs count as first dc), join with sl st in top of skipped chs. (12 dc)',
      'Rnd 2: Ch 3 (counts as first dc), dc in same st, 2 dc in each st around, join. (24 dc)',
    ),
    counts: [4, 12, 24],
  },
  {
    name: 'ribbed ring band: brim then rounds in row-ends',
    terms: 'us',
    // 24 rows of ribbing, 1 sc in each row-end
    text: lines(
      'Ch 7.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (6 sc)',
      'Rows 2-24: Ch 1, sc in BLO of each st across, turn. (6 sc)',
      'Sl st short ends together to form a ring.',
      'Rnd 1: Ch 1, working in ends of rows, sc in each row-end around, join. (24 sc)',
    ),
    final: 24,
  },
  // One round over a spiral of 24
  spiral('24 sc around', 'Rnd 5: 24 sc around (24)', 24),
  spiral('sc 24', 'R5: sc 24 [24]', 24),
  spiral('sc in each of the 24 sts', 'Rnd 5: Sc in each of the 24 sts around. (24)', 24),
  spiral('24 sts total', 'Rnd 5: Sc in each st around. 24 sts total.', 24),
  spiral('range with rounds in brackets', 'Rnds 5-9 (5 rnds): Sc in each st around. (24)', 24),
  spiral('range Rnd 5 to Rnd 9', 'Rnd 5 to Rnd 9: Sc in each st around. (24)', 24),
  spiral('range through', 'Rnds 5 through 9: Sc in each st around. (24 sc)', 24),
  spiral('range + sign', 'Rnd 5+6: sc in each st around (24)', 24),
  spiral('range comma and', 'Rnds 5, 6, and 7: Sc in each st around. (24)', 24),
  spiral('range tilde', 'R5~7: sc around (24)', 24),
  spiral('range ampersand', 'Rnds 5 & 6: Sc in each st around. (24)', 24),
  spiral('BLO colon', 'Rnd 5: BLO: sc in each st around. (24)', 24),
  spiral('BLO sc 24', 'Rnd 5: (BLO) sc 24 (24)', 24),
  spiral('working in back loops only', 'Rnd 5: Working in back loops only, sc in each st around. (24)', 24),
  spiral('in back loop', 'Rnd 5: Sc in back loop of each st around. (24)', 24),
  spiral('FLO inc', 'Rnd 5: In FLO, inc in each st around. (48)', 48),
  spiral('star six times', 'Rnd 5: *Sc in next 3 sts, inc; rep from * 5 more times. (30)', 30),
  spiral('rep *to*', 'Rnd 5: *sc 3, inc*, rep *to* 6 times (30)', 30),
  spiral(
    'repeat between asterisks',
    'Rnd 5: *sc in next 3 sts, inc in next st*, repeat between asterisks 5 more times (30)',
    30,
  ),
  spiral('six times in a word', 'Rnd 5: [3 sc, inc] six times. 30 sts.', 30),
  spiral('x6 with no blank', 'Rnd 5: (3sc,inc)x6 (30)', 30),
  spiral('6x after', 'Rnd 5: (3sc, inc) 6x (30)', 30),
  spiral('times star', 'Rnd 5: (3sc, inc) * 6 (30)', 30),
  spiral('inc first', 'Rnd 5: *Inc in next st, sc in next 3 sts*; rep around. (30)', 30),
  spiral('2 sc in next first', 'Rnd 5: *2 sc in next, 1 sc in next 3; repeat from * around. (30)', 30),
  spiral('2sc in next', 'Rnd 5: (2sc in next st, sc in next 3 sts) rep 6 times (30)', 30),
  spiral('dec first', 'Rnd 5: *sc2tog, sc in next 2 sts, rep from * to end of rnd. (18)', 18),
  spiral('sc2tog over', 'Rnd 5: (Sc2tog over next 2 sts, sc in next 2 sts) 6 times. (18)', 18),
  spiral('dec over', 'Rnd 5: (Sc in next 2 sts, dec over next 2 sts) 6 times. (18)', 18),
  spiral('dec 1', 'Rnd 5: [Dec 1, sc 2] x 6. 18 sc.', 18),
  spiral('sc dec', 'Rnd 5: (sc dec, 2 sc) x 6 (18)', 18),
  spiral('12 dec', 'Rnd 5: dec x 12. Stuff the head firmly before closing. (12)', 12),
  spiral(
    'sc2tog around',
    'Rnd 5: Sc2tog around; finish off, leaving a long tail. Weave tail through front loops of last rnd and pull tight to close. (12)',
    12,
  ),
  spiral('sl st end', 'Rnd 5: sc in each st around, sl st in first sc, FO and weave in ends. (24)', 24),
  spiral('sl st to next st', 'Rnd 5: Sc 24, sl st to next st, fasten off. (24)', 24),
  spiral('last 4', 'Rnd 5: Sc in next 20 sts, inc in each of last 4 sts. (28)', 28),
  spiral('hdc mid', 'Rnd 5: Sc 8, hdc 4, dc 4, hdc 4, sc 4. (24)', 24),
  spiral('leave rest', 'Rnd 5: Sc 12, leave remaining 12 sts unworked. (12)', 12),
  spiral('3 sc in', 'Rnd 5: Sc 11, 3 sc in next st, sc 11, 3 sc in next st (28)', 28),
  spiral(
    'inc in next n sts',
    'Rnd 5: Inc in next 6 sts, sc in next 6 sts, inc in next 6 sts, sc in next 6 sts. (36)',
    36,
  ),
  spiral('6 inc', 'Rnd 5: 6 inc, 6 sc, 6 inc, 6 sc (36)', 36),
  spiral('inc (2 sc in same st)', 'Rnd 5: inc (2 sc in same st) in next st, sc in next 23 sts (25)', 25),
  spiral(
    'work sc',
    'Rnd 5: Work 1 sc in each of the next 10 sts, dec twice, 1 sc in each of the next 10 sts. (22)',
    22,
  ),
  spiral('dec three times', 'Rnd 5: sc in next 9 sts, (dec) 3 times, sc in next 9 sts (21)', 21),
  spiral('sk 1', 'Rnd 5: (Sc 3, sk 1) x 6 (18)', 18),
  spiral('skip and sc', 'Rnd 5: *Skip next st, sc in next 3 sts; rep from * around. (18)', 18),
  spiral('join B', 'Rnd 5: Join B. Sc in each st around. Fasten off A. (24)', 24),
  spiral('with B dash', 'Rnd 5 – with B: sc in each st around – 24 sts', 24),
  spiral('color name label', 'Rnd 5 (white): sc in each st around (24)', 24),
  spiral('Colour change in last st', 'Rnd 5: Sc in each st around, change to white in last st (24)', 24),
  spiral('stuff remark inside', 'Rnd 5: (sc 2, dec) x 6, stuff as you go (18)', 18),
  spiral('marker', 'Rnd 5: Sc in each st around; move marker to last st. (24)', 24),
  spiral('pm in first st', 'Rnd 5: Sc in first st (pm), sc in each st around. (24)', 24),
  spiral('popcorn', 'Rnd 5: (Sc in next 5 sts, popcorn in next st) 4 times. (24)', 24),
  spiral('ch 2 sk 2', 'Rnd 5: Sc 5, ch 4, sk 4, sc 15. (20)', 20),
  ukSpiral('dc each', 'Rnd 5: 1 dc in each dc. (24)', 24),
  ukSpiral('dc2tog mid', 'Rnd 5: (dc 2, dc2tog) 6 times. (18)', 18),
  ukSpiral('dc in next 3, 2dc', 'Rnd 5: (dc in next 3 sts, 2dc in next st) to end. (30)', 30),
  ukSpiral('3 dc, dc2 in next', 'Rnd 5: *3 dc, dc 2 in next st; rep from * 5 times more. (30)', 30),
  ukSpiral('miss', 'Rnd 5: *Miss 1 dc, dc in next 3 dc; rep from * around. (18)', 18),
  ukSpiral('dc2inc', 'Rnd 5: (dc3, dc2inc) rep 6 times (30)', 30),
  ukSpiral('inc1', 'Rnd 5: [dc 3, inc 1] 6 times (30)', 30),
  ukSpiral('dc into every st', 'Rnd 5: Dc into every stitch all the way round. (24)', 24),
  ukSpiral('work straight', 'Rnds 5-7: Work straight in dc. (24)', 24),
  // One round over a ring or a circle of 12
  circle('join to', 'Rnd 2: Ch 3, dc in same st, 2 dc in each st around; sl st to top of beg ch-3. (24)', 24),
  circle(
    'join: join to first st',
    'Rnd 2: Ch 3, dc in same st, 2 dc in each st around, join to top of ch 3 with sl st. (24)',
    24,
  ),
  circle(
    'join: sl st in beg ch-3',
    'Rnd 2: Ch 3, dc in same st, 2 dc in each st around. Sl st in 3rd ch of beg ch-3. (24)',
    24,
  ),
  circle('join: sl st join', 'Rnd 2: Ch 3, dc in same st, [2 dc in next st] around, sl st join. (24)', 24),
  circle('join: slst', 'Rnd 2: Ch3, dc in same st, 2dc in ea st around, slst to ch3 (24)', 24),
  circle(
    'join in top of',
    'Rnd 2: Ch 3, 1 more dc in same st, 2 dc in each of next 11 sts, join in top of ch-3. (24)',
    24,
  ),
  circle(
    'join: sl st to close',
    'Rnd 2: Ch 3, dc in same stitch, (2 dc in next stitch) 11 times, sl st into 3rd chain to close. (24)',
    24,
  ),
  circle(
    'ch 3 dc in next, 2 dc',
    'Rnd 2: Ch 3, 2 dc in next dc, *1 dc in next dc, 2 dc in next dc* 5 times, join. (18)',
    18,
  ),
  circle('at base', 'Rnd 2: Ch 3, dc in base of ch-3, 2 dc in each dc around; join. (24 dc)', 24),
  circle(
    'ch-1 inc sc',
    'Rnd 2: Ch 1, sc in same st, 2 sc in next st, *sc in next st, 2 sc in next st; rep from * around; join in first sc. (18 sc)',
    18,
  ),
  circle(
    'ch 2 hdc not counted',
    'Rnd 2: Ch 2 (does not count), hdc in same st as join, 2 hdc in next st, *hdc in next st, 2 hdc in next st; rep from * around; join in first hdc. (18 hdc)',
    18,
  ),
  circle(
    'in each dc and ch',
    'Rnd 2: Ch 4 (counts as dc, ch 1), *dc in next dc, ch 1; rep from * around, sl st in 3rd ch of ch 4. (12 dc, 12 ch-1 sps)',
    12,
    12,
  ),
  circle(
    'dc, ch 1 between posts',
    'Rnd 2: Sl st in sp between ch-3 and next dc, ch 3, dc in same sp, *2 dc in sp between next 2 dc; rep from * around; join. (24 dc)',
    24,
  ),
  circle(
    'standing dc',
    'Rnd 2: Fasten off A. With B, make a standing dc in any dc, dc in same dc, 2 dc in each rem dc around; join to first dc. (24 dc)',
    24,
  ),
  circle(
    'attach with sl st',
    'Rnd 2: Attach B with sl st to any dc, ch 3, dc in same dc, 2 dc in each dc around; join. (24 dc)',
    24,
  ),
  circle(
    'join with sc',
    'Rnd 2: Join B with a sc in any dc, sc in same dc, 2 sc in each dc around; join in first sc. (24 sc)',
    24,
  ),
  circle(
    'starting in any',
    'Rnd 2: Starting in any dc with B, ch 1, 2 sc in each dc around; join. (24 sc)',
    24,
  ),
  circle(
    'draw up a loop',
    'Rnd 2: Draw up a lp of B in any dc, ch 1, 2 sc in same dc and in each dc around; join. (24 sc)',
    24,
  ),
  circle(
    'puffs',
    'Rnd 2: Ch 1, (puff st in next dc, ch 2) around; join in top of first puff st. (12 puff sts, 12 ch-2 sps)',
    12,
    12,
  ),
  circle(
    'fans',
    'Rnd 2: Ch 1, sc in first dc, *sk next dc, 5 dc in next dc, sk next dc, sc in next dc; rep from * around, omitting last sc; join in first sc. (18 sts)',
    18,
  ),
  circle(
    'petals hdc',
    'Rnd 2: *Ch 2, 2 dc in same st, ch 2, sl st in same st, sl st in next st; rep from * 11 more times. Fasten off. (12 petals)',
    null,
    null,
  ),
  circle(
    'petals in pairs',
    'Rnd 2: *Ch 1, (hdc, 2 dc) in next dc, (2 dc, hdc) in next dc, sl st in next dc; rep from * 3 more times. Fasten off. (4 petals)',
    null,
    null,
  ),
  circle(
    '(sc, ch 3, sc) around',
    'Rnd 2: Ch 1, (sc, ch 3, sc) in each dc around; join. (24 sc, 12 ch-3 sps)',
    24,
    12,
  ),
  circle(
    'ch 3 sk 1',
    'Rnd 2: Ch 1, sc in same dc, ch 3, sk 1, (sc in next dc, ch 3, sk 1) around; join in first sc. (6 sc, 6 ch-3 lps)',
    6,
    6,
  ),
  circle(
    'loops of 5 then sc in loop',
    [
      'Rnd 2: Ch 1, *sc in next dc, ch 5, sk next dc; rep from * around; join in first sc. (6 lps)',
      'Rnd 3: Sl st in next 3 chs, ch 1, sc in same lp, ch 7, (sc in next lp, ch 7) 5 times; join in first sc. (6 lps)',
    ],
    6,
    6,
  ),
  circle(
    '7 dc in each lp',
    [
      'Rnd 2: Ch 1, *sc in next dc, ch 5, sk next dc; rep from * around; join in first sc. (6 lps)',
      'Rnd 3: *(Sc, hdc, 5 dc, hdc, sc) in next lp; rep from * around; join. (54 sts)',
    ],
    54,
  ),
  onRing('12 dc in ring, no count', 'Rnd 1: Ch 3, 11 dc in ring, join in top of ch.', 12),
  onRing(
    '(sc, ch 3) in ring',
    'Rnd 1: (Sc, ch 3) 6 times in ring, join with sl st in first sc. (6 sc)',
    6,
    6,
  ),
  onRing('sixteen sc', 'Rnd 1: Ch 1, work 16 sc in ring, sl st in first sc. (16)', 16),
  onRing('sc into centre', 'Rnd 1: Ch 1, 8 sc into center of ring. Join with sl st. (8)', 8),
  onRing(
    'beg cl',
    'Rnd 1: Ch 3, dc2tog in ring (counts as dc3tog), *ch 3, dc3tog in ring; rep from * 4 more times, ch 3; join in top of first cluster. (6 clusters)',
    6,
    6,
  ),
  onRing(
    'ring granny starting ch 5',
    'Rnd 1: Ch 5 (counts as dc, ch 2), (3 dc in ring, ch 2) 3 times, 2 dc in ring; join in 3rd ch of beg ch-5. (12 dc, 4 ch-2 sps)',
    12,
    4,
  ),
  onRing(
    'ring hdc join',
    'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, (ch 3, 3 dc in ring) 3 times, hdc in top of beg ch-3 (counts as ch-3 sp). (12 dc, 4 sps)',
    12,
    4,
  ),
  onRing('ring 5 petals', 'Rnd 1: (Ch 3, 2 dc, ch 3, sl st in ring) 5 times. Fasten off.', null, null),
  ukCircle(
    'join',
    'Rnd 2: Ch 3, 1 tr into same st, 2 tr into each tr around, ss into top of 3-ch. (24 tr)',
    24,
  ),
  ukCircle(
    'ss to top',
    'Rnd 2: 3 ch, 1 tr in st at base of 3 ch, 2 tr in each tr to end, ss to 3rd ch. (24 tr)',
    24,
  ),
  ukCircle(
    'dc and ch',
    'Rnd 2: 1 ch, 1 dc in same place, *3 ch, miss 1 tr, 1 dc in next tr; rep from * to last tr, 3 ch, miss last tr, ss in first dc. (6 dc, 6 3-ch sps)',
    6,
    6,
  ),
  ukCircle(
    '4 ch',
    'Rnd 2: 4 ch (counts as 1 tr and 1 ch), [1 tr in next tr, 1 ch] to end, ss in 3rd of 4 ch. (12 tr)',
    12,
    12,
  ),
  ukCircle(
    'join yarn B',
    'Rnd 2: Join B with ss to any st, 3 ch, 1 tr in same st, 2 tr in each st to end, join with ss to 3rd of 3 ch. (24 tr)',
    24,
  ),
  ukCircle('dc2tog', 'Rnd 2: 1 ch, [dc2tog] 6 times, ss in first st. (6 sts)', 6),
  ukCircle(
    'shells',
    'Rnd 2: 1 ch, *1 dc in next tr, miss 1 tr, 5 tr in next tr, miss 1 tr; rep from * twice more, ss to first dc. (18 sts)',
    18,
  ),
  ukOnRing(
    'square',
    'Rnd 1: 3 ch, 2 tr into ring, *2 ch, 3 tr into ring; rep from * twice more, 2 ch, ss to top of first 3 ch. (12 tr)',
    12,
    4,
  ),
  ukOnRing(
    '2 tr',
    'Rnd 1: 3 ch (counts as first tr), 2 tr, 2 ch, (3 tr, 2 ch) 3 times all into ring, ss to 3rd ch of starting 3 ch. (12 tr)',
    12,
    4,
  ),
  ukOnRing('sl st', 'Rnd 1: 1 ch, 12 dc in ring, sl st to first dc. (12 dc)', 12),
  ukOnRing(
    '3tr clusters',
    'Rnd 1: 3 ch, tr2tog into ring, *3 ch, tr3tog into ring; rep from * 4 times more, 3 ch, ss into top of first cluster. (6 clusters)',
    6,
    6,
  ),
  // Evenly, thumbs, ovals, yokes, grannies, loops
  {
    name: 'dec evenly, then the next number',
    terms: 'us',
    text: lines(
      'Ch 36, join with sl st to form a ring.',
      'Rnd 1: Ch 1, hdc in each ch around, join. (36 hdc)',
      'Rnd 2: Ch 1, sc in each st around, dec 6 sts evenly spaced, join. (30 sc)',
      'Rnd 3: Ch 1, sc in each sc around, join. (30 sc)',
    ),
    counts: [null, 36, 30, 30],
  },
  {
    name: 'decreasing evenly',
    terms: 'us',
    text: lines(
      'Ch 36, join with sl st to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around, join. (36 sc)',
      'Rnd 2: Ch 1, sc around, decreasing 6 sts evenly spaced, join. (30 sc)',
      'Rnd 3: Ch 1, sc in each sc around, join. (30 sc)',
    ),
    counts: [null, 36, 30, 30],
  },
  {
    name: 'loops: every other loop missed',
    terms: 'us',
    text: lines(
      'Ch 16, join with sl st to form ring.',
      'Rnd 1: Ch 1, *sc in next ch, ch 3, sk next ch; rep from * around; join. (8 sc, 8 lps)',
      'Rnd 2: Sl st in first lp, ch 1, sc in same lp, ch 5, sk next lp, *sc in next lp, ch 5, sk next lp; rep from * around; join. (4 sc)',
    ),
    counts: [null, 8, 4],
  },
  {
    name: 'loops: one to each',
    terms: 'us',
    text: lines(
      'Ch 16, join with sl st to form ring.',
      'Rnd 1: Ch 1, *sc in next ch, ch 3, sk next ch; rep from * around; join. (8 sc, 8 lps)',
      'Rnd 2: Sl st in first lp, ch 1, sc in same lp, ch 5, *sc in next lp, ch 5; rep from * around; join. (8 sc)',
    ),
    counts: [null, 8, 8],
  },
  {
    name: 'ss in top of 3 ch',
    terms: 'uk',
    text: 'Rnd 1: 3 ch, 2 tr in magic ring, [2 ch, 3 tr in ring] 3 times, 2 ch, ss in top of 3 ch. (12 tr)',
    counts: [12],
  },
  {
    name: 'ss in top of 3 ch, counted',
    terms: 'uk',
    text: 'Rnd 1: 3 ch (counts as 1 tr), 2 tr in magic ring, [2 ch, 3 tr in ring] 3 times, 2 ch, ss in top of 3 ch. (12 tr)',
    counts: [12],
  },
  {
    name: 'ss in top of 3 ch, 11 tr',
    terms: 'uk',
    text: 'Rnd 1: 3 ch, 11 tr in magic ring, ss in top of 3 ch. (12 tr)',
    counts: [12],
  },
  {
    name: 'join with ss in top of 3 ch',
    terms: 'uk',
    text: 'Rnd 1: 3 ch, 11 tr in magic ring, join with ss in top of 3 ch. (12 tr)',
    counts: [12],
  },
  {
    name: 'sl st to first sc',
    terms: 'us',
    text: 'Rnd 1: Ch 1, 6 sc in magic ring, sl st to first sc. (6)',
    counts: [6],
  },
  {
    name: 'sl st in top of beg ch-3',
    terms: 'us',
    text: 'Rnd 1: Ch 3, 11 dc in magic ring, sl st in top of beg ch-3. (12)',
    counts: [12],
  },
  {
    name: 'sl st to first sc over chains',
    terms: 'us',
    text: lines(
      'Ch 20, sl st to first ch to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around, sl st to first sc. (20)',
    ),
    counts: [null, 20],
  },
  {
    name: 'ss to first dc over chains',
    terms: 'uk',
    text: lines('Make 20 ch, ss to first ch.', 'Rnd 1: 1 ch, 1 dc in each ch, ss to first dc. (20)'),
    counts: [null, 20],
  },
  {
    name: 'ss to top of 3 ch over chains',
    terms: 'uk',
    text: lines(
      'Make 20 ch, ss in first ch to form a ring.',
      'Rnd 1: 3 ch, 1 tr in each ch to end, ss to top of 3 ch. (20)',
    ),
    counts: [null, 20],
  },
  {
    name: 'decreases and sc to end',
    terms: 'us',
    text: lines(
      'Ch 20, sl st to first ch to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around, sl st to first sc. (20)',
      'Rnd 2: Ch 1, sc2tog, sc in next 8 sts, sc2tog, sc to end, sl st to first st. (18)',
    ),
    counts: [null, 20, 18],
  },
  {
    name: 'sc in next 3 ch (thumb)',
    terms: 'us',
    text: lines(
      'Ch 20, join with sl st to form ring.',
      'Rnd 1: Ch 1, sc in each ch around, join. (20)',
      'Rnd 2: Ch 1, sc 3, ch 5, sk 5, sc 12, join. (15 sc, 1 ch-5 sp)',
      'Rnd 3: Ch 1, sc in next 3 sc, sc in next 5 ch, sc in next 12 sc, join. (20)',
    ),
    counts: [null, 20, 15, 20],
  },
  {
    name: 'thumb: sc in each st and ch',
    terms: 'us',
    text: lines(
      'Ch 20, join with sl st to form ring.',
      'Rnd 1: Ch 1, sc in each ch around, join. (20)',
      'Rnd 2: Ch 1, sc 3, ch 5, sk 5, sc 12, join. (15 sc, 1 ch-5 sp)',
      'Rnd 3: Ch 1, sc in each st and ch around, join. (20)',
    ),
    counts: [null, 20, 15, 20],
  },
  {
    name: 'oval: other side of ch, no verb',
    terms: 'us',
    text: lines(
      'Ch 9.',
      'Rnd 1: Sc in 2nd ch from hook and next 6 chs, 3 sc in last ch, working in unused lps on opposite side of starting ch, sc in next 6 chs, 2 sc in next ch, join with sl st in first sc. (18 sc)',
      'Rnd 2: Ch 1, 2 sc in first st, sc in next 6 sts, 2 sc in each of next 3 sts, sc in next 6 sts, 2 sc in each of last 2 sts, join. (24 sc)',
    ),
    counts: [9, 18, 24],
  },
  {
    name: 'oval: do not turn; other side',
    terms: 'us',
    text: lines(
      'Ch 7',
      'R1: sc in 2nd ch from hook, sc 4, 3 sc in last ch; on other side of ch: sc 4, inc (14)',
      'R2: inc, sc 4, inc x3, sc 4, inc x2 (20)',
    ),
    counts: [7, 14, 20],
  },
  {
    name: 'oval UK: along the other side',
    terms: 'uk',
    text: lines(
      '6 ch.',
      'Rnd 1: 1 dc into 2nd ch from hook, 1 dc into each of next 3 ch, 3 dc into last ch, do not turn, work along other side of foundation ch: 1 dc into each of next 3 ch, 2 dc into last ch, ss to first dc. (12 dc)',
    ),
    counts: [6, 12],
  },
  {
    name: 'sleeve picked up round armhole by size',
    terms: 'us',
    text: lines(
      'Ch 40 (44, 48), join with sl st to form a ring.',
      'Rnd 1: Ch 1, sc in each ch around, join. [40 (44, 48) sc]',
      'Rnd 2: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, join. [38 (42, 46) sc]',
      'Rnds 3-5: Ch 1, sc in each st around, join. [38 (42, 46) sc]',
    ),
    counts: [
      [40, 44, 48],
      [40, 44, 48],
      [38, 42, 46],
      [38, 42, 46],
    ],
  },
  {
    name: 'hat by size in UK',
    terms: 'uk',
    text: lines(
      'Rnd 1: 2 ch, 10 (11, 12) htr into magic ring, ss to first htr. [10 (11, 12) htr]',
      'Rnd 2: 2 ch, 2 htr in each st to end, ss to first htr. [20 (22, 24) htr]',
    ),
    counts: [
      [10, 11, 12],
      [20, 22, 24],
    ],
  },
  {
    name: 'raglan yoke from the top in rounds',
    terms: 'us',
    text: lines(
      'Ch 40, join with sl st to form a ring.',
      'Rnd 1: Ch 3 (counts as dc), dc in next 12 ch, (dc, ch 1, dc) in next ch, dc in next 6 ch, (dc, ch 1, dc) in next ch, dc in next 12 ch, (dc, ch 1, dc) in next ch, dc in next 5 ch, (dc, ch 1, dc) in last ch; join. (44 dc, 4 ch-1 sps)',
      'Rnd 2: Ch 3, *dc in each dc to next ch-1 sp, (dc, ch 1, dc) in ch-1 sp; rep from * 3 more times, dc in last dc; join. (52 dc)',
    ),
    // 1+12+1+6+1+12+1+5+1 = 40 used; 1+12+2+6+2+12+2+5+2 = 44; 44 + 8 = 52
    counts: [null, 44, 52],
    spaces: [null, 4, 4],
  },
  {
    name: 'granny: (3 dc, ch 2, 3 dc) in each corner, 3 dc in each sp',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3, 2 dc in magic ring, (ch 2, 3 dc) 3 times, ch 2; join. (12 dc, 4 ch-2 sps)',
      'Rnd 2: Sl st to ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * around; join. (24 dc)',
      'Rnd 3: Sl st to ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, *ch 1, 3 dc in next ch-1 sp, ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 times, ch 1, 3 dc in last ch-1 sp, ch 1; join. (36 dc)',
    ),
    counts: [12, 24, 36],
    spaces: [4, 8, 12],
  },
  {
    name: 'granny: starting a round in the space by turning',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3, 2 dc in magic ring, (ch 2, 3 dc) 3 times, ch 2; join, turn. (12 dc, 4 ch-2 sps)',
      'Rnd 2: Sl st in ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, [ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp] 3 times, ch 1; join, turn. (24 dc)',
    ),
    counts: [12, 24],
    spaces: [4, 8],
  },
  {
    name: 'granny hexagon',
    terms: 'us',
    text: lines(
      'Ch 6, join with sl st to form ring.',
      'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 1, (3 dc in ring, ch 1) 5 times; join. (18 dc, 6 ch-1 sps)',
      'Rnd 2: Sl st to ch-1 sp, ch 3, (2 dc, ch 1, 3 dc) in same sp, (3 dc, ch 1, 3 dc) in each ch-1 sp around; join. (36 dc, 6 ch-1 sps)',
    ),
    counts: [null, 18, 36],
    spaces: [null, 6, 6],
  },
  {
    name: 'round cluster flower UK condensed',
    terms: 'uk',
    text: lines(
      'Ch4, ss to form ring.',
      'Rnd 1: ch3 (counts as tr), 1tr in ring, ch2, [2tr in ring, ch2] x5, ss to top of ch3. (12tr, 6 ch2-sp)',
      'Rnd 2: ss to ch2-sp, ch3, (1tr, ch2, 2tr) in same sp, [(2tr, ch2, 2tr) in next ch2-sp] x5, ss to top of ch3. (24tr, 6 ch2-sp)',
    ),
    counts: [null, 12, 24],
    spaces: [null, 6, 6],
  },
  {
    name: 'blanket border: sc, corner (sc, ch 2, sc)',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3, 2 dc in magic ring, (ch 2, 3 dc) 3 times, ch 2; join. (12 dc)',
      'Rnd 2: Ch 1, sc in same st and in next 2 dc, (sc, ch 2, sc) in next corner sp, *sc in next 3 dc, (sc, ch 2, sc) in next corner sp; rep from * around; join in first sc. (20 sc, 4 ch-2 sps)',
    ),
    counts: [12, 20],
    spaces: [4, 4],
  },
  {
    name: 'spiral with marker sentence',
    terms: 'us',
    text: lines(
      'Rnd 1: 7 sc in magic ring, do not join. Place marker for beginning of rnd and move marker up as each rnd is completed. (7 sc)',
      'Rnd 2: 2 sc in each sc around. (14 sc)',
    ),
    counts: [7, 14],
  },
  {
    name: 'spiral note before',
    terms: 'us',
    text: lines(
      'Work in continuous rounds; do not join. Use a stitch marker to mark the first st of each rnd.',
      'Rnd 1: Ch 2, 6 sc in 2nd ch from hook. (6 sc)',
      'Rnd 2: 2 sc in each sc around. (12 sc)',
    ),
    final: 12,
  },
  {
    name: 'mesh bag in a spiral',
    terms: 'us',
    text: lines(
      'Rnd 1: 12 sc in magic ring. (12 sc)',
      'Rnd 2: (Ch 5, sk 1 sc, sc in next sc) 6 times. (6 ch-5 lps)',
      'Rnd 3: (Ch 6, sc in next lp) 6 times. (6 ch-6 lps)',
    ),
    counts: [12, 6, 6],
    spaces: [0, 6, 6],
  },
  {
    name: 'into a magic ring, work',
    terms: 'us',
    text: lines('Rnd 1: Into a magic ring, work 6 sc. (6)', 'Rnd 2: *Sc 1, ch 1; rep from * around. (6 sc)'),
    counts: [6, 6],
    spaces: [0, 6],
  },
  {
    name: 'in an adjustable ring',
    terms: 'us',
    text: lines('Rnd 1: Work 8 sc in an adjustable ring. (8)', 'Rnd 2: 2 sc in each sc around. (16)'),
    counts: [8, 16],
  },
  {
    name: 'make 6 dc in a magic loop',
    terms: 'uk',
    text: lines('Rnd 1: Make 6 dc in a magic loop. (6)', 'Rnd 2: 2 dc in each dc. (12)'),
    counts: [6, 12],
  },
  {
    name: 'count after a full stop, slip stitch before it',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 3, 11 dc in magic ring, sl st in top of ch-3. 12 dc.',
      'Rnd 2: Ch 3, dc in same st, 2 dc in each dc around, sl st in top of ch-3. 24 dc.',
    ),
    counts: [12, 24],
  },
  {
    name: 'count after a dash, slip stitch before it',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 8 hdc in magic ring, sl st in first hdc – 8 hdc.',
      'Rnd 2: Ch 1, 2 hdc in each hdc around, sl st in first hdc – 16 hdc.',
    ),
    counts: [8, 16],
  },
  {
    name: 'repeat from * n times, n in total by the count',
    terms: 'us',
    // 12 / 2 = 6 passes in all; the words alone may mean 6 more, the round and its count do not
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: Inc in each st around. (12)',
      'Rnd 3: *Sc in next st, inc; repeat from * 6 times. (18)',
    ),
    counts: [6, 12, 18],
  },
  {
    name: 'border as a label',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 12 sc in magic ring; join with sl st in first sc. (12 sc)',
      'Border: Ch 1, 2 sc in each sc around; join with sl st in first sc. (24 sc)',
    ),
    counts: [12, 24],
  },
  {
    name: 'edging as a label',
    terms: 'us',
    text: lines(
      'Rnd 1: Ch 1, 12 sc in magic ring; join with sl st in first sc. (12 sc)',
      'Edging: Ch 1, *(sc, ch 3, sc) in next sc, sk next sc; rep from * around; join with sl st in first sc. (12 sc)',
    ),
    counts: [12, 12],
    spaces: [0, 6],
  },
  {
    name: 'rounds after rows start at 1',
    terms: 'us',
    text: lines(
      'Ch 11.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)',
      'Rows 2-10: Ch 1, sc in each sc across, turn. (10 sc)',
      'Rnd 1: Ch 1, 3 sc in first sc, sc in next 8 sc, 3 sc in last sc, sc in each row-end across, 3 sc in first ch, sc in next 8 ch, 3 sc in last ch, sc in each row-end across; join. (48 sc)',
    ),
    // 3 + 8 + 3 + 10 + 3 + 8 + 3 + 10 = 48
    final: 48,
  },
  {
    name: 'wrong: a stitch is left after the last corner',
    terms: 'us',
    // 36 / 6 = 6: 6 * 7 = 42; the passes work 6, 7, 7 … sc up to the corner: 6 + 5 * 7 = 41 of 42, 41 + 12 = 53
    text: lines(
      'Ch 36, join with sl st to form a ring.',
      'Rnd 1: Ch 1, *sc in next 5 ch, (sc, ch 1, sc) in next ch; rep from * around; join. (42 sc, 6 ch-1 sps)',
      'Rnd 2: Ch 1, *sc in each sc to next ch-1 sp, (sc, ch 1, sc) in ch-1 sp; rep from * 5 more times; join.',
    ),
    counts: [null, 42, 53],
    findings: [{ row: 2, code: 'stitches-left-unworked', saying: ['1'] }],
  },
  {
    name: 'loops whose last one a stitch in the first closes, said as the last pass',
    terms: 'us',
    // 12 loops each; the last of round 4 is 3 chains and a dc
    text: lines(
      'Rnd 1: Ch 6, join with sl st to form ring. Ch 1, 12 sc in ring, join with sl st in first sc.',
      'Rnd 2: Ch 1, sc in same st, *ch 5, sc in next sc; rep from * around, ch 2, dc in first sc to form last ch-5 sp.',
      'Rnd 3: Ch 1, sc in same sp, *ch 6, sc in next ch-5 sp; rep from * around, ending with ch 3, dc in first sc.',
      'Rnd 4: Ch 1, sc in sp just formed, *7 dc in next sc, sc in next sp; rep from * around, 7 dc in last sc, join with sl st in first sc.',
    ),
    counts: [12, 12, 12, 96],
    spaces: [0, 12, 12, 0],
    source: 'common practice, no source',
  },
];
