/**
 * Written rows: parts of garments and accessories (bands, armholes, necks, sleeves, shawls, edges), in several
 * sizes and in every style of brackets. Must not repeat a passage of another case file.
 */
import { dc, sc, uk, ukDc, ukTr, us } from '../swatch.ts';
import type { RowCase } from '../types.ts';

export const workroom: readonly RowCase[] = [
  us(
    'rib of 60 rows, body picked up along it',
    [
      'Waistband',
      'Ch 11.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)',
      'Rows 2-60: Ch 1, sc in BLO of each st across, turn. (10 sc)',
      'Do not fasten off.',
      'Body',
      'Row 1 (RS): Ch 1, working in ends of rows, sc in each row-end across, turn. (60 sc)',
      'Row 2: Ch 3 (counts as dc), dc in next st and in each st across, turn. (60 dc)',
    ],
    { final: 60 },
  ),
  us(
    'armhole decreases over a range that differs by size',
    // 72 - 2 * 3, 80 - 2 * 4, 88 - 2 * 5
    [
      'Sizes: S (M, L)',
      'Ch 73 (81, 89).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 72 (80, 88) sc',
      'Rows 2-4 (5, 6): Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn.',
      'Next row: Ch 1, sc in each st across. Fasten off. 66 (72, 78) sc',
    ],
    { final: [66, 72, 78] },
  ),
  us(
    'sleeve: groups of rows repeated by size',
    // 40 + 2 * 7, 44 + 2 * 8, 48 + 2 * 9
    [
      'Sizes: S (M, L)',
      'Ch 41 (45, 49).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 40 (44, 48) sc',
      'Row 2 (inc): Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. 42 (46, 50) sc',
      'Rows 3-5: Ch 1, sc in each st across, turn.',
      'Rep Rows 2-5 six (seven, eight) more times. 54 (60, 66) sc',
    ],
    { final: [54, 60, 66] },
  ),
  us(
    'button band: holes, then filled',
    // 3 + 11 * 5 + 2 + 2 = 62
    [
      ...sc(62),
      'Row 2: Ch 1, sc in first 3 sts, *ch 2, sk 2 sts, sc in next 9 sts; rep from * 4 more times, ch 2, sk 2 sts, sc in last 2 sts, turn. (6 buttonholes)',
      'Row 3: Ch 1, *sc in each sc to next ch-2 sp, 2 sc in ch-2 sp; rep from * 5 more times, sc in last 3 sc, turn. (62 sc)',
    ],
    [63, 62, 50, 62],
    { spaces: [0, 0, 6, 0] },
  ),
  us(
    'button band whose last hole runs off the end',
    // 3 + 11 * 5 = 58, ch 2 sk 2 = 60, sc in last 4 is more than the 2 left
    [
      ...sc(62),
      'Row 2: Ch 1, sc in first 3 sts, *ch 2, sk 2 sts, sc in next 9 sts; rep from * 4 more times, ch 2, sk 2 sts, sc in next 4 sts, turn.',
    ],
    [63, 62, null],
    { findings: [{ row: 2, code: 'place-does-not-exist', words: 'next 4 sts', saying: ['4', '2'] }] },
  ),
  us(
    'shawl in groups of three from a ring',
    // 8; 14
    [
      'Ch 4, join with sl st to form a ring.',
      'Row 1: Ch 4 (counts as dc and ch 1), (3 dc, ch 2, 3 dc, ch 1, dc) in ring, turn. (8 dc)',
      'Row 2: Ch 4, 3 dc in first ch-1 sp, ch 1, (3 dc, ch 2, 3 dc) in ch-2 sp, ch 1, 3 dc in last ch-1 sp, ch 1, dc in 3rd ch of beg ch-4, turn. (14 dc)',
    ],
    [null, 8, 14],
    { spaces: [null, 3, 5] },
  ),
  us(
    'triangle shawl of dc, six more in every row',
    [
      'Row 1: Ch 4, 2 dc in 4th ch from hook, ch 2, 3 dc in same ch, turn. (6 dc)',
      'Row 2: Ch 3 (counts as dc here and throughout), dc in first st, dc in next 2 sts, (2 dc, ch 2, 2 dc) in ch-2 sp, dc in next 2 sts, 2 dc in last st, turn. (12 dc)',
      'Row 3: Ch 3, dc in first st, dc in each st to ch-2 sp, (2 dc, ch 2, 2 dc) in ch-2 sp, dc in each st to last st, 2 dc in last st, turn. (18 dc)',
      'Rows 4-8: Rep Row 3. (48 dc at end of Row 8)',
    ],
    { final: 48 },
  ),
  us(
    'shawl from the neck with an increase at both edges and a spine stitch',
    // 5; 2 + 1 + 3 + 1 + 2 = 9; 2 + 3 + 3 + 3 + 2 = 13
    [
      'Row 1 (RS): Ch 2, 5 sc in 2nd ch from hook, turn. (5 sc)',
      'Row 2: Ch 1, 2 sc in first st, sc in next st, 3 sc in next st (spine), sc in next st, 2 sc in last st, turn. (9 sc)',
      'Row 3: Ch 1, 2 sc in first st, sc in each of next 3 sts, 3 sc in next st, sc in each of next 3 sts, 2 sc in last st, turn. (13 sc)',
    ],
    { final: 13 },
  ),
  us(
    'neck: first side, sizes, decreases at the neck edge',
    // 22 - 1 - 1, 25, 28
    [
      'Sizes: S (M, L)',
      'Ch 67 (75, 83).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 66 (74, 82) sc',
      'Row 2: Ch 1, sc in next 20 (23, 26) sts, sc2tog, turn, leaving rem sts unworked. 21 (24, 27) sc',
      'Row 3: Ch 1, sc2tog, sc in each st across, turn. 20 (23, 26) sc',
      'Fasten off.',
      'Second side: With RS facing, sk next 22 (24, 26) sts of Row 1, join yarn in next st.',
      'Row 2: Ch 1, sc2tog starting in same st, sc in each st across, turn. 21 (24, 27) sc',
    ],
    { final: [21, 24, 27] },
  ),
  us(
    'shoulder in three steps',
    // 24 - 8 - 8
    [
      ...sc(24),
      'Row 2: Ch 1, sc in next 16 sts, turn, leave rem 8 sts unworked. (16 sc)',
      'Row 3: Sl st in first 8 sts, ch 1, sc in same st as last sl st, sc in each st across, turn.',
    ],
    // the last slip stitch and the sc share a stitch: 16 - 7
    [25, 24, 16, 9],
  ),
  us(
    'hdc raglan with ch-2 corners in flat rows, by size',
    // S: 6 + 8 + 18 + 8 + 6 = 46 in 5 parts and 4 corners of (hdc, ch 2, hdc)
    [
      'Sizes: S (M)',
      'Ch 51 (59).',
      'Row 1: Hdc in 3rd ch from hook (skipped chs do not count), hdc in next 5 (6) ch, (hdc, ch 2, hdc) in next ch, hdc in next 8 (9) ch, (hdc, ch 2, hdc) in next ch, hdc in next 17 (21) ch, (hdc, ch 2, hdc) in next ch, hdc in next 8 (9) ch, (hdc, ch 2, hdc) in next ch, hdc in next 6 (7) ch, turn. 53 (61) hdc',
      'Row 2: Ch 1, *hdc in each st to next ch-2 sp, (hdc, ch 2, hdc) in ch-2 sp; rep from * 3 more times, hdc in each st to end, turn. 61 (69) hdc, 4 ch-2 sps',
    ],
    // 49 chains worked: 6+8+17+8+6 = 45 and 4 corners: 45 + 8 = 53; M: 7+9+21+9+7 = 53 + 8 = 61, 57 chains
    [
      [51, 59],
      [53, 61],
      [61, 69],
    ],
    { spaces: [0, 4, 4].map((n) => [n, n]) },
  ),
  us(
    'a count wrong in one size only',
    [
      'Sizes: XS (S, M, L)',
      'Ch 61 (67, 73, 79).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 60 (66, 72, 78) sc',
      'Row 2: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. 58 (64, 72, 76) sc',
    ],
    [
      [61, 67, 73, 79],
      [60, 66, 72, 78],
      [58, 64, 70, 76],
    ],
    { findings: [{ row: 2, code: 'stated-count-wrong', words: '72', sizes: [2], saying: ['72', '70'] }] },
  ),
  us(
    'a repeat that fits three sizes of four',
    // 1 + 6n: 61, 67, 73 fit; 80 leaves 1, 79 and 85 fit
    [
      'Sizes: XS (S, M, L)',
      'Ch 62 (68, 74, 81).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 61 (67, 73, 80) sc',
      'Row 2: Ch 1, sc in first st, *sk 2 sts, 5 dc in next st, sk 2 sts, sc in next st; rep from * across, turn.',
    ],
    [
      [62, 68, 74, 81],
      [61, 67, 73, 80],
      [61, 67, 73, null],
    ],
    {
      findings: [
        {
          row: 2,
          code: 'repeat-does-not-fit',
          words: 'rep from * across',
          sizes: [3],
          saying: ['80', '79', '85'],
        },
      ],
    },
  ),
  us(
    'sizes in square and round brackets',
    [
      'Sizes: XS (S, M) [L, XL]',
      'Ch 41 (45, 49) [53, 57].',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 40 (44, 48) [52, 56] sc',
      'Row 2: Ch 1, sc in first 10 (11, 12) [13, 14] sts, 2 sc in next st, sc in next 18 (20, 22) [24, 26] sts, 2 sc in next st, sc in each st to end, turn. 42 (46, 50) [54, 58] sc',
    ],
    [
      [41, 45, 49, 53, 57],
      [40, 44, 48, 52, 56],
      [42, 46, 50, 54, 58],
    ],
  ),
  us(
    'sizes with colons and hyphens',
    [
      'To fit: S(M:L)',
      'Ch 32(36:40).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 31(35:39) sts',
      'Row 2: Ch 1, sc in first 3(5:7) sts, *ch 1, sk 1, sc in next st; rep from * 11 more times, sc in each st to end, turn. 19(23:27) sc, 12 ch-1 sps',
    ],
    // 3 + 24 + 4: 3 + 12 + 4 = 19; 5 + 12 + 6; 7 + 12 + 8
    [
      [32, 36, 40],
      [31, 35, 39],
      [19, 23, 27],
    ],
    {
      spaces: [
        [0, 0, 0],
        [0, 0, 0],
        [12, 12, 12],
      ],
    },
  ),
  us(
    'a size that skips the row',
    [
      'Sizes: S (M, L)',
      'Ch 31 (35, 39).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 30 (34, 38) sc',
      'Size L only:',
      'Row 2: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. 40 sc',
      'All sizes:',
      'Next row: Ch 1, sc in each st across, turn. 30 (34, 40) sc',
    ],
    { final: [30, 34, 40] },
  ),
  us(
    'nothing to skip in the smallest size',
    // S: 10 + 20; M: 10, sk 2, 10 ...
    [
      'Sizes: S (M)',
      'Ch 31 (35).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 30 (34) sc',
      'Row 2: Ch 1, sc in first 15 sts, sk next 0 (4) sts, sc in last 15 sts, turn. 30 sc',
    ],
    [
      [31, 35],
      [30, 34],
      [30, 30],
    ],
  ),
  us(
    'collar spread along an edge and shaped',
    [
      'Collar',
      'Fsc 64.',
      'Row 1: Ch 1, sc in each st across, turn. (64 sc)',
      'Row 2: Ch 1, *sc in next 7 sts, 2 sc in next st; rep from * across, turn. (72 sc)',
      'Row 3: Ch 1, *sc in next 8 sts, 2 sc in next st; rep from * across, turn. (80 sc)',
      'Row 4: Ch 1, *sc in next 9 sts, inc in next st; rep from * 7 more times, turn. (88 sc)',
    ],
    [64, 64, 72, 80, 88],
  ),
  us(
    'slip stitch rib with sc at both ends',
    [
      'Ch 21.',
      'Row 1: Sl st in 2nd ch from hook and in each ch across, turn. (20 sl sts)',
      'Row 2: Ch 1, sc in first st, sl st in BLO of each st to last st, sc in last st, turn. (20 sts)',
    ],
    [21, 20, 20],
  ),
  us(
    'hem with picots on every third',
    // 31 = 1 + 3 * 10
    [
      ...sc(31),
      'Row 2: Ch 1, sc in first st, *sc in next 2 sts, (sc, ch 3, sl st in sc just made) in next st; rep from * across. Fasten off. (31 sc, 10 picots)',
    ],
    [32, 31, 31],
  ),
  us(
    'mitten cuff flat, then thumb gap',
    // 28: 10 + ch 5 over 5 + 13
    [
      ...sc(28),
      'Row 2: Ch 1, sc in next 10 sts, ch 5, sk next 5 sts, sc in next 13 sts, turn. (23 sc, 1 ch-5 sp)',
      'Row 3: Ch 1, sc in next 13 sts, 5 sc in ch-5 sp, sc in last 10 sts, turn. (28 sc)',
    ],
    [29, 28, 23, 28],
    { spaces: [0, 0, 1, 0] },
  ),
  us(
    'heel: short rows that leave one more each time',
    [
      ...sc(16),
      'Row 2: Ch 1, sc in next 15 sts, turn. (15)',
      'Row 3: Ch 1, sc in next 14 sts, turn. (14)',
      'Row 4: Ch 1, sc in next 13 sts, turn. (13)',
      'Row 5: Ch 1, sc in next 12 sts, turn. (12)',
    ],
    [17, 16, 15, 14, 13, 12],
  ),
  us(
    'pleat: three layers told as a skip',
    [
      ...sc(30),
      'Row 2: Ch 3 (counts as dc), dc in next 9 sts, sk next 5 sts, dc in each of next 15 sts, turn. (25 dc)',
    ],
    [31, 30, 25],
  ),
  us(
    'strap widened at its end',
    [
      'Ch 7.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (6 sc)',
      'Rows 2-40: Ch 1, sc in each sc across, turn.',
      'Row 41: Ch 1, 2 sc in each of first 2 sts, sc in next 2 sts, 2 sc in each of last 2 sts, turn. (10 sc)',
      'Row 42: Ch 1, sc in first 4 sts, ch 2, sk 2 sts, sc in last 4 sts, turn. (8 sc, 1 ch-2 sp)',
    ],
    { final: 8 },
  ),
  us(
    'lace yoke in tr with chains by size',
    // 1 + 4n: tr, ch 3 over 3; S: 41 = 1 + 40: 11 tr, 10 sps; M: 49: 13 tr, 12
    [
      'Sizes: S (M)',
      'Ch 42 (50).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 41 (49) sc',
      'Row 2: Ch 7 (counts as tr and ch 3), sk next 3 sts, tr in next st, *ch 3, sk next 3 sts, tr in next st; rep from * across, turn. 11 (13) tr, 10 (12) ch-3 sps',
      'Row 3: Ch 1, sc in first tr, *3 sc in next ch-3 sp, sc in next tr; rep from * across, working last sc in 4th ch of beg ch-7, turn. 41 (49) sc',
    ],
    [
      [42, 50],
      [41, 49],
      [11, 13],
      [41, 49],
    ],
    {
      spaces: [
        [0, 0],
        [0, 0],
        [10, 12],
        [0, 0],
      ],
    },
  ),
  us(
    'front edge: three in every two rows, told as a total',
    [
      ...dc(20),
      'Rows 2-20: Ch 3 (counts as dc), dc in next dc and in each dc across, turn. (20 dc)',
      'Edging',
      'Row 1: With RS facing, join yarn at lower corner, ch 1, work 40 sc evenly along row-ends, turn. (40 sc)',
      'Row 2: Ch 1, sc in first 2 sts, *ch 3, sk 1 st, sc in next st; rep from * across, turn.',
    ],
    // 2 + 2n = 40, n = 19: 2 + 19
    { final: 21 },
  ),
  us(
    'two sc in the end of each dc row',
    [
      ...dc(12),
      'Rows 2-10: Ch 3 (counts as dc), dc in next st and in each st across, turn. (12 dc)',
      'Do not turn. Rotate to work along side.',
      'Row 11: Ch 1, 2 sc in end of each row across, turn. (20 sc)',
    ],
    { final: 20 },
  ),
  us(
    'tie cord of slip stitches',
    ['Ch 90.', 'Row 1: Sl st in 2nd ch from hook and in each ch across. Fasten off. (89 sl sts)'],
    [90, 89],
  ),
  us(
    'decreases evenly told by a repeat and its rest',
    // 50 = (6 + 2) * 6 + 2: 7 * 6 + 2
    [
      ...sc(50),
      'Row 2: Ch 1, *sc in next 6 sts, sc2tog over next 2 sts; rep from * to last 2 sts, sc in last 2 sts, turn. (44 sc)',
    ],
    [51, 50, 44],
  ),
  us(
    'decreases evenly whose rest is miscounted',
    // 50 = 8 * 5 + 10; 8n + 4 has 44 and 52
    [
      ...sc(50),
      'Row 2: Ch 1, *sc in next 6 sts, sc2tog over next 2 sts; rep from * to last 4 sts, sc in last 4 sts, turn. (44 sc)',
    ],
    [51, 50, null],
    {
      findings: [
        {
          row: 2,
          code: 'repeat-does-not-fit',
          words: 'rep from * to last 4 sts',
          saying: ['50', '44', '52'],
        },
      ],
    },
  ),
  us(
    'neck stitches that are not there',
    [...sc(20), 'Row 2: Ch 1, sc in next 12 sts, sk next 6 sts, sc in next 4 sts, turn.'],
    [21, 20, null],
    { findings: [{ row: 2, code: 'place-does-not-exist', words: 'next 4 sts', saying: ['4', '2'] }] },
  ),
  us(
    'a space that no row has made',
    [...sc(20), 'Row 2: Ch 1, sc in first 5 sts, 3 sc in next ch-3 sp, sc in each st across, turn.'],
    [21, 20, null],
    { findings: [{ row: 2, code: 'place-does-not-exist', words: 'next ch-3 sp' }] },
  ),
  us(
    'two stitches left without a word',
    [...sc(20), 'Row 2: Ch 1, sc in first 18 sts, turn.'],
    [21, 20, 18],
    { findings: [{ row: 2, code: 'stitches-left-unworked', saying: ['2', '20'] }] },
  ),
  // UK
  uk(
    'htr increases at both ends',
    [
      'Make 33ch.',
      '1st row: 1htr in 3rd ch from hook (missed ch count as 1htr), 1htr in each ch to end, turn. [32 htr]',
      '2nd row: 2ch (counts as 1htr), 1htr in st at base of 2ch, 1htr in each st to last st, 2htr in last st, turn. [34 htr]',
      '3rd row: As 2nd row. [36 htr]',
    ],
    [33, 32, 34, 36],
  ),
  uk(
    'armhole: ss over, then work to last few',
    [
      'Sizes: 81 (86, 91) cm',
      'Make 61 (65, 69) ch.',
      '1st row: 1dc in 2nd ch from hook, 1dc in each ch to end, turn. [60 (64, 68) dc]',
      '2nd row: Ss across first 4 (5, 6) dc, 1ch, 1dc in each dc to last 4 (5, 6) dc, turn. [52 (54, 56) dc]',
      '3rd row: 1ch, dc2tog, 1dc in each dc to last 2 dc, dc2tog, turn. [50 (52, 54) dc]',
    ],
    { final: [50, 52, 54] },
  ),
  uk(
    'V neck by tr3tog and tr2tog',
    [
      ...ukTr(30),
      '2nd row: 3ch (counts as 1tr), miss first tr, 1tr in each of next 11 tr, tr3tog, turn and leave rem sts. [13 tr]',
      '3rd row: 3ch, miss first st, 1tr in next st, 1tr in each st to end, working last tr in top of 3ch, turn. [13 tr]',
    ],
    [32, 30, 13, 13],
  ),
  uk(
    'band of dc with buttonholes of 3 ch',
    // 4 + 3 + (8 + 3) * 4 + 4 = 55
    [
      ...ukDc(55),
      'Buttonhole row: 1ch, 1dc in each of first 4dc, [3ch, miss 3dc, 1dc in each of next 8dc] 4 times, 3ch, miss 3dc, 1dc in each of last 4dc, turn. [5 buttonholes]',
      'Next row: 1ch, 1dc in each dc and 3dc in each 3ch-loop to end, turn. [55 dc]',
    ],
    [56, 55, 40, 55],
    { spaces: [0, 0, 5, 0] },
  ),
  uk(
    'collar worked wider with 2dc every 8th',
    [
      ...ukDc(64),
      '2nd row: 1ch, *1dc in each of next 7dc, 2dc in next dc; rep from * to end, turn. (72 sts.)',
      '3rd row: 1ch, 1dc into each st to end, turn.',
    ],
    [65, 64, 72, 72],
  ),
  uk(
    'square-bracket sizes with slashes',
    [
      'Sizes 1/2/3/4',
      'Make 41/45/49/53 ch.',
      'Row 1: 1dc in 2nd ch from hook, 1dc in each ch to end, turn. 40/44/48/52 dc',
      'Row 2: 1ch, 1dc in each of first 19/21/23/25 dc, 2dc in each of next 2dc, 1dc in each dc to end, turn. 42/46/50/54 dc',
    ],
    [
      [41, 45, 49, 53],
      [40, 44, 48, 52],
      [42, 46, 50, 54],
    ],
  ),
  uk(
    'pocket lining joined in',
    [
      ...ukDc(40),
      '2nd row: 1ch, 1dc in each of first 8dc, miss next 14dc, 14ch, 1dc in each of last 18dc, turn. [26 dc, 14ch]',
      '3rd row: 1ch, 1dc in each of next 18dc, 1dc in each of next 14ch, 1dc in each of last 8dc, turn. [40 dc]',
    ],
    [41, 40, 26, 40],
  ),
  uk(
    'older English sleeve',
    [
      'Commence with 41 chain.',
      '1st row: Miss 1 chain, work 1 double crochet into each chain. (40 double crochet.)',
      '2nd row: 1 chain to turn, 2 double crochet into the first stitch, 1 double crochet into each stitch to the last, 2 double crochet into the last. (42 double crochet.)',
      '3rd row: 1 chain to turn, 1 double crochet into each double crochet.',
    ],
    [41, 40, 42, 42],
  ),
  uk(
    'gusset: inc either side of a marked stitch',
    [
      ...ukDc(21),
      '2nd row: 1ch, 1dc in each of next 10dc, 2dc in next dc, pm in last st made, 1dc in each of last 10dc, turn. [22 dc]',
      '3rd row: 1ch, 1dc in each dc to marked st, 2dc in marked st, 1dc in each dc to end, turn. [23 dc]',
    ],
    [22, 21, 22, 23],
  ),
  uk(
    'miscounted band told against its kinds',
    // 4 + 8 * 4 + 4 = 40 dc, 5 loops
    [
      ...ukDc(55),
      '2nd row: 1ch, 1dc in each of first 4dc, [3ch, miss 3dc, 1dc in each of next 8dc] 4 times, 3ch, miss 3dc, 1dc in each of last 4dc, turn. [42 dc, 5 3ch-loops]',
    ],
    [56, 55, 40],
    { findings: [{ row: 2, code: 'stated-count-wrong', words: '42 dc', saying: ['42', '40'] }] },
  ),
];
