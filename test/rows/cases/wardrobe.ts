/**
 * Written rows: flat fabric and garment passages in many house styles, most of them whole small swatches
 * of a stitch dictionary or a run of shaping. Must not repeat a passage of another case file.
 */
import { type Expected, lines, type RowCase } from '../types.ts';

type Rest = Partial<Omit<RowCase, 'name' | 'terms' | 'text' | 'counts'>>;

/** Counts of every entry, or `{ final }` where the division into entries is not the point. */
type Counts = NonNullable<RowCase['counts']> | { readonly final: Expected };

const stated = (counts: Counts): Pick<RowCase, 'counts' | 'final'> =>
  'final' in counts ? counts : { counts };

const us = (name: string, text: readonly string[], counts: Counts, rest: Rest = {}): RowCase => ({
  name,
  terms: 'us',
  text: lines(...text),
  ...stated(counts),
  ...rest,
});

const uk = (name: string, text: readonly string[], counts: Counts, rest: Rest = {}): RowCase => ({
  name,
  terms: 'uk',
  text: lines(...text),
  ...stated(counts),
  ...rest,
});

/** `n` sc over a chain. */
const sc = (n: number): readonly string[] => [
  `Ch ${n + 1}.`,
  `Row 1: Sc in 2nd ch from hook and in each ch across, turn. (${n} sc)`,
];

/** `n` dc of which the turning chain is one. */
const dc = (n: number): readonly string[] => [
  `Ch ${n + 2}.`,
  `Row 1: Dc in 4th ch from hook (3 skipped chs count as first dc) and in each ch across, turn. (${n} dc)`,
];

/** `n` UK double crochet over a chain. */
const ukDc = (n: number): readonly string[] => [
  `Ch ${n + 1}.`,
  `Row 1: 1dc in 2nd ch from hook, 1dc in each ch to end, turn. [${n} dc]`,
];

/** `n` UK trebles of which the turning chain is one. */
const ukTr = (n: number): readonly string[] => [
  `Ch ${n + 2}.`,
  `Row 1: 1tr in 4th ch from hook, 1tr in each ch to end, turn. [${n} tr]`,
];

export const wardrobe: readonly RowCase[] = [
  // Linen and moss stitch
  us(
    'moss stitch on skipped chains',
    // 22 - 3 = 19 = 1 + 2 * 9; row 2: 9 sps and the turning space
    [
      'Ch 22.',
      'Row 1: Sc in 4th ch from hook, *ch 1, sk next ch, sc in next ch; rep from * to end, turn.',
      'Row 2: Ch 2, sk first sc, sc in next ch-1 sp, *ch 1, sk next sc, sc in next ch-1 sp; rep from * across, working last sc in turning-ch sp, turn.',
    ],
    [22, 10, 10],
  ),
  us(
    'linen stitch, spaces over spaces',
    // 21 = 1 + 2 * 10: 11 sc, 10 sps; row 3: first sc, 10 sps, last sc = 12 sc, 9 sps between the sps' sc
    [
      'Ch 22.',
      'Row 1 (WS): Sc in 2nd ch from hook, *ch 1, skip next ch, sc in next ch; repeat from * across, turn. (11 sc, 10 ch-1 spaces)',
      'Row 2 (RS): Ch 1, sc in first sc, sc in next ch-1 space, *ch 1, skip next sc, sc in next ch-1 space; repeat from * to last sc, sc in last sc, turn. (12 sc, 9 ch-1 spaces)',
      'Row 3: Ch 1, sc in first sc, *ch 1, skip next sc, sc in next ch-1 space; repeat from * to last 2 sc, ch 1, skip next sc, sc in last sc, turn. (11 sc, 10 ch-1 spaces)',
    ],
    [22, 11, 12, 11],
    { spaces: [0, 10, 9, 10] },
  ),
  uk(
    'moss stitch told with bracketed spaces',
    [
      'Ch 24.',
      'Row 1: 1dc in 4th ch from hook, *1ch, miss 1ch, 1dc in next ch; rep from * to end, turn. [11 dc]',
      'Row 2: 2ch, *1dc in next 1ch-sp, 1ch, miss 1dc; rep from * to end, 1dc in sp made by turning ch, turn. [11 dc]',
    ],
    // 24 - 3 = 21 = 1 + 2 * 10; row 2: 10 sps, and one in the turning space
    [24, 11, 11],
  ),
  // V-stitch
  us(
    'V-stitch rows, edge dc at both sides',
    [
      'V-st: (Dc, ch 1, dc) in same st or sp.',
      'Ch 22.',
      'Row 1: V-st in 5th ch from hook, *sk 2 ch, V-st in next ch; rep from * to last 2 ch, sk 1 ch, dc in last ch, turn. (6 V-sts, 2 dc)',
      'Row 2: Ch 3 (counts as dc here and throughout), V-st in ch-1 sp of each V-st across, dc in top of turning ch, turn. (6 V-sts, 2 dc)',
      'Row 3: Rep Row 2.',
    ],
    // 22 - 4 = 18 from the 5th: 1 + 3 * 5 = 16, then 2: 6 V = 12 dc, edge, last dc
    [22, 14, 14, 14],
    { units: [null, { 'V-st': 6 }, { 'V-st': 6 }, null] },
  ),
  us(
    'V-stitch with half spaces',
    [
      ...sc(20),
      'Row 2: Ch 3 (counts as dc), sk next st, *(dc, ch 1, dc) in next st, sk 2 sts; rep from * to last 3 sts, (dc, ch 1, dc) in next st, sk 1 st, dc in last st, turn.',
      'Row 3: Ch 3, (dc, ch 1, dc) in each ch-1 sp across, dc in top of ch-3, turn.',
    ],
    // 20 = 2 + 3n + 3: n = 5: 6 V = 12 + 2
    [21, 20, 14, 14],
    { spaces: [0, 0, 6, 6] },
  ),
  uk(
    'double V-stitch from a dictionary',
    [
      '1 V = work (1tr, 1ch, 1tr) into same place.',
      'Make 25 ch.',
      '1st row: 1 V into 5th ch from hook, *miss 2ch, 1 V into next ch; rep from * to last 2ch, miss 1ch, 1tr into last ch, turn.',
      '2nd row: 3ch, 1 V into sp at centre of each V to end, 1tr into top of turning ch, turn.',
      'Rep 2nd row.',
    ],
    // 25 - 4 = 21 = 1 + 3 * 6 + 2: 7 V = 14 + 2
    { final: 16 },
  ),
  // Granny rows

  // Mesh and filet
  us(
    'filet, block over space and space over block',
    // row 1: dc in 8th ch, 29 - 8 = 21 = 3 * 7: 8 spaces, 9 dc; row 2: edge, 2 blocks (6 dc), 4 spaces (4 dc), 2 blocks (6): 17
    [
      'Ch 29.',
      'Row 1: Dc in 8th ch from hook, *ch 2, sk next 2 chs, dc in next ch; rep from * across, turn. (8 ch-2 sps)',
      'Row 2: Ch 3 (counts as dc), (2 dc in next ch-2 sp, dc in next dc) twice, (ch 2, dc in next dc) 4 times, 2 dc in next ch-2 sp, dc in next dc, 2 dc in last sp, dc in 5th ch of turning ch-7, turn. (17 dc, 4 ch-2 sps)',
      'Row 3: Ch 5 (counts as dc, ch 2), sk next 2 dc, dc in next dc, ch 2, sk next 2 dc, dc in next dc, (2 dc in next sp, dc in next dc) 4 times, (ch 2, sk 2 dc, dc in next dc) twice, turn. (17 dc, 4 ch-2 sps)',
    ],
    // row 3: edge, 2, then 4 * 3 = 12, 2: 17
    [29, 9, 17, 17],
    { spaces: [0, 8, 4, 4] },
  ),
  us(
    'mesh that slopes in at both ends',
    [
      ...dc(21),
      'Row 2: Ch 4 (counts as dc and ch 1), sk next st, dc in next st, *ch 1, sk next st, dc in next st; rep from * across, turn. (11 dc, 10 ch-1 sps)',
      'Row 3: Ch 3 (counts as dc), dc in next dc, *ch 1, dc in next dc; rep from * to last sp, dc in 3rd ch of beg ch-4, turn. (11 dc, 8 ch-1 sps)',
    ],
    // row 3: edge + dc in 2nd dc, then dc in dc 3..10 (8 sps), dc in 3rd ch: 11
    [23, 21, 11, 11],
    { spaces: [0, 0, 10, 8] },
  ),
  uk(
    'filet lattice, 10 spaces with a block in every second',
    [
      'Make 32ch.',
      '1st row: 1tr into 8th ch from hook, *2ch, miss 2ch, 1tr into next ch, rep from * to end. [9 spaces]',
      '2nd row: 5ch (count as 1tr, 2ch), miss 1st tr, 1tr into next tr, *2tr into next 2ch-sp, 1tr into next tr, 2ch, 1tr into next tr, rep from * to end, working last tr into 5th of 7ch at beg of previous row.',
    ],
    // 32 - 8 = 24 = 8 * 3: 9 spaces, 10 tr; row 2: 2 tr, 4 * (2 + 1 + 1) = 18 tr, 5 spaces
    [32, 10, 18],
    { spaces: [0, 9, 5] },
  ),
  us(
    'chain-loop mesh worked into loops',
    [
      'Ch 24.',
      'Row 1: Sc in 8th ch from hook, *ch 5, sk 3 ch, sc in next ch; rep from * across, turn. (4 sc, 5 loops)',
      'Row 2: Ch 5, sc in next ch-5 sp, *ch 5, sc in next ch-5 loop; rep from * across, working last sc in turning-ch loop, turn.',
    ],
    // 24 - 8 = 16 = 4 * 4: 5 sc
    [24, 5, null],
    { findings: [{ row: 1, code: 'stated-count-wrong', words: '4 sc', saying: ['4', '5'] }] },
  ),
  us(
    'diamond net',
    [
      ...sc(21),
      'Row 2: Ch 1, sc in first sc, *ch 5, sk next 3 sc, sc in next sc; rep from * across, turn. (5 ch-5 lps)',
      'Row 3: Ch 5 (counts as dc and ch 2), sc in next ch-5 lp, *ch 5, sc in next lp; rep from * to last sc, ch 2, dc in last sc, turn. (4 ch-5 lps, 2 ch-2 sps)',
      'Row 4: Ch 1, sc in first dc, *ch 5, sc in next ch-5 lp; rep from * to last sp, ch 5, sc in 3rd ch of turning ch, turn.',
    ],
    // 21 = 1 + 4 * 5: 6 sc, 5 lps; row 3: dc + 5 sc + dc; row 4: 1 + 4 + 1
    [22, 21, 6, 7, 6],
    { spaces: [0, 0, 5, 6, 5] },
  ),
  // Shells
  us(
    'shells in the centre of shells',
    [
      'Shell: 5 dc in indicated st.',
      'Foundation Ch: Ch 26.',
      'Row 1: Sc in 2nd ch from hook, *sk next 2 chs, shell in next ch, sk next 2 chs, sc in next ch; rep from * across, turn. (4 shells, 5 sc)',
      'Row 2: Ch 3 (counts as dc), 2 dc in same st, *sc in center dc of next shell, shell in next sc; rep from * across, ending with 3 dc in last sc instead of a full shell, turn.',
    ],
    // 25 = 1 + 4 * 6: 20 + 5; row 2: 3 + 4 sc + 3 shells of 5 + 3 = 25
    [26, 25, 25],
  ),
  us(
    'half shells at the edges, ending last repeat',
    [
      'Ch 32.',
      'Row 1: Sc in 2nd ch from hook, *sk 2 ch, 5 dc in next ch, sk 2 ch, sc in next ch; rep from * across, turn.',
      'Row 2: Ch 3 (counts as first dc), 2 dc in first sc, *sk 2 dc, sc in next dc, sk 2 dc, 5 dc in next sc; rep from * across, ending last rep with 3 dc in last sc, turn.',
      'Row 3: Ch 1, sc in first dc, *sk 2 dc, 5 dc in next sc, sk 2 dc, sc in next dc; rep from * across, working last sc in top of turning ch, turn.',
    ],
    // 31 = 1 + 5 * 6; row 2: 3 + 5 sc + 4 * 5 + 3 = 31; row 3: 1 + 5 * 6
    [32, 31, 31, 31],
  ),
  us(
    'lacy shells, named stitch with chains',
    [
      'Special stitch: Shell = (2 dc, ch 1, 2 dc) in same st or space.',
      ...sc(25),
      'Row 2: Ch 3 (counts as dc), sk next 2 sts, *shell in next st, sk next 3 sts; rep from * to last 2 sts, dc in last st, turn.',
    ],
    // 25 = 1 + 2 + 4n + 2 leaves 1 to be passed over with no word: last 2: dc in last passes one; 25 - 5 = 20 = 5 * 4
    [26, 25, null],
    { findings: [{ row: 2, code: 'stitches-passed-over', words: 'dc in last st' }] },
  ),
  us(
    'lacy shells kept level',
    [
      'Special stitch: Shell = (2 dc, ch 1, 2 dc) in same st or space.',
      ...sc(23),
      'Row 2: Ch 3 (counts as dc), sk next 2 sts, *shell in next st, sk next 3 sts; rep from * to last 4 sts, shell in next st, sk 2 sts, dc in last st, turn. (5 shells, 2 dc)',
      'Row 3: Ch 3, *shell in ch-1 sp of next shell; rep from * across, dc in top of turning ch, turn. (5 shells, 2 dc)',
    ],
    // 23 = 3 + 4n + 4, n = 4: 5 shells = 20 + 2
    [24, 23, 22, 22],
    { units: [null, null, { shell: 5 }, { shell: 5 }] },
  ),
  uk(
    'scallops over a base of dc',
    [
      ...ukDc(25),
      '2nd row: 1ch, 1dc into first dc, *miss 2dc, 5tr into next dc, miss 2dc, 1dc into next dc; rep from * to end, turn. [4 shells]',
      '3rd row: 3ch (counts as 1tr), 2tr into first dc, *miss 2tr, 1dc into next tr, miss 2tr, 5tr into next dc; rep from * to end, ending last rep with 3tr into last dc, turn.',
    ],
    [26, 25, 25, 25],
  ),
  // Ripples and chevrons
  us(
    'peaks and valleys, dc ripple in published wording',
    [
      'Ch 45.',
      'Row 1: 2 dc in 4th ch from hook (skipped chs count as first dc), dc in next 4 chs, (dc2tog over next 2 chs) twice, dc in next 4 chs, *2 dc in each of next 2 chs, dc in next 4 chs, (dc2tog over next 2 chs) twice, dc in next 4 chs; rep from * to last ch, 2 dc in last ch, turn.',
    ],
    // 45 - 3 = 42 = 1 + 4 + 4 + 4 + 14n + 1: 42 - 14 = 28 = 2 * 14: 1 + 2 + 4 + 2 + 4 = 13; each rep 4 + 4 + 2 + 4 = 14; 2: 13 + 28 + 2 = 43
    [45, 43],
  ),
  us(
    'feather and fan chevron with skipped valleys',
    [
      'Ch 37.',
      'Row 1: Sc in 2nd ch from hook, *sc in next 5 ch, 3 sc in next ch, sc in next 5 ch, sk next ch; rep from * to end, turn.',
    ],
    // 36 - 1 = 35; a repeat uses 12: 2 repeats, 11 left
    [37, null],
    { findings: [{ row: 1, code: 'repeat-does-not-fit', saying: ['2', '11'] }] },
  ),
  us(
    'single crochet ripple in back loops',
    [
      'Ch 28.',
      'Row 1: Sc in 2nd ch from hook, sc in next 5 ch, 3 sc in next ch, sc in next 6 ch, *sk 1 ch, sc in next 6 ch, 3 sc in next ch, sc in next 6 ch; rep from * across, turn. (30 sc)',
      'Row 2: Ch 1, working in back loops only, sk first sc, sc in next 6 sc, 3 sc in next sc, sc in next 6 sc, *sk 2 sc, sc in next 6 sc, 3 sc in next sc, sc in next 6 sc; rep from * to last sc, leave last sc unworked, turn.',
    ],
    // 27 = 13 + 14n: n = 1: row 1 = 6 + 3 + 6 + 15 = 30. row 2: 1 + 13 + 15 + 1 = 30: 15 + 15
    [28, 30, 30],
  ),
  uk(
    'wave with tr3tog and 3 tr',
    [
      'Make 27ch.',
      '1st row: 1tr into 4th ch from hook, 1tr into each of next 3ch, tr3tog over next 3ch, 1tr into each of next 4ch, *3tr into next ch, 1tr into each of next 4ch, tr3tog over next 3ch, 1tr into each of next 4ch; rep from * to last ch, 2tr into last ch, turn.',
    ],
    // 27 - 3 = 24 = 4 + 3 + 4 + 12n + 1 = 12 + 12: 1 + 4 + 1 + 4 = 10; 3 + 4 + 1 + 4 = 12; 2 → 24
    [27, 24],
  ),
  // Clusters and bobbles
  us(
    'bobble rows set off against sc',
    [
      'Bobble (bo): (Yo, insert hook in st, yo and pull up a loop, yo and draw through 2 loops) 5 times in same st, yo and draw through all 6 loops on hook.',
      ...sc(19),
      'Row 2 (WS): Ch 1, sc in first 3 sc, *bobble in next sc, sc in next 3 sc; rep from * across, turn. (4 bobbles, 15 sc)',
      'Row 3: Ch 1, sc in each st across, turn. (19 sc)',
      'Row 4: Ch 1, sc in first sc, bo in next sc, *sc in next 3 sc, bo in next sc; rep from * to last sc, sc in last sc, turn. (5 bobbles, 14 sc)',
    ],
    // 19 = 3 + 4 * 4; row 4: 2 + 4 * 4 + 1 = 19: 5 bo, 1 + 12 + 1 sc
    [20, 19, 19, 19, 19],
  ),
  us(
    'three-dc clusters with chains between',
    [
      'Cl: dc3tog in same st.',
      ...sc(21),
      'Row 2: Ch 3 (counts as dc), *cl in next st, ch 1, sk next st; rep from * to last 2 sts, cl in next st, dc in last st, turn. (10 cl, 9 ch-1 sps, 2 dc)',
      'Row 3: Ch 3, *cl in next ch-1 sp, ch 1; rep from * to last sp, cl in last sp, dc in next cl, dc in turning ch, turn.',
    ],
    // 21 = 1 + 2n + 2, n = 9: 10 cl. row 3: after edge, cl in each sp passes the cl: first cl passed over — one may pass over it into a space; 9 cl, dc in last cl, dc: 12
    [22, 21, 12, 12],
  ),
  us(
    'puff rows with the puff told in words',
    [
      'Puff st: [Yo, insert hook in st, yo, draw up a lp] 3 times in same st, yo, draw through all 7 lps on hook, ch 1 to close.',
      ...sc(20),
      'Row 2: Ch 2 (does not count as a st), *puff st in next st, ch 1, sk next st; rep from * across, turn. (10 puff sts)',
    ],
    [21, 20, 10],
  ),
  uk(
    'popcorns in a dc ground',
    [
      'PC = 5tr in same st, remove hook from loop, insert in first tr and draw loop through.',
      ...ukDc(17),
      'Row 2: 1ch, 1dc in each of first 2 dc, *1PC in next dc, 1dc in each of next 3 dc; rep from * to last 3 dc, 1PC in next dc, 1dc in each of last 2 dc, turn. [4 PC, 13 dc]',
    ],
    // 17 = 2 + 4 * 3 + 3
    [18, 17, 17],
  ),
  // Posts and cables
  us(
    'post rib with dc borders',
    [
      ...dc(20),
      'Row 2: Ch 2 (counts as hdc), *FPdc around next dc, BPdc around next dc; rep from * to last st, hdc in top of turning ch, turn.',
      'Rows 3-8: Rep Row 2.',
    ],
    [22, 20, 20, 20],
  ),
  us(
    'cable of 4 crossed over front',
    [
      'C4F: Skip next 2 sts, FPtr around each of next 2 sts, working in front of sts just made, FPtr around each of 2 skipped sts.',
      ...dc(16),
      'Row 2: Ch 3 (counts as dc), dc in next 5 sts, C4F, dc in next 6 sts, turn. (16 sts)',
    ],
    [18, 16, 16],
  ),
  us(
    'crossed dc told in the row',
    [
      ...dc(18),
      'Row 2: Ch 3 (counts as dc), *sk next dc, dc in next dc, working behind dc just made, dc in skipped dc; rep from * to last st, dc in top of turning ch, turn. (18 dc)',
    ],
    [20, 18, 18],
  ),
  uk(
    'crossed trebles with a name',
    [
      'Crossed pair: miss next st, 1tr in next st, 1tr in missed st.',
      ...ukTr(20),
      'Row 2: 3ch (counts as 1tr), miss first st, *work crossed pair; rep from * to last st, 1tr in top of 3ch, turn.',
    ],
    [22, 20, 20],
  ),
  uk(
    'raised trebles rib, rtrf and rtrb',
    [
      ...ukTr(20),
      'Row 2: 2ch (counts as 1htr), miss first st, *1rtrf round next st, 1rtrb round next st; rep from * to last st, 1htr in top of turning ch, turn. [20 sts]',
    ],
    // 1 + 9 * 2 + 1
    [22, 20, 20],
  ),
  us(
    'spike stitch rows',
    [
      'Spike st: Insert hook in st one row below next st, yo and draw up a loop to height of current row, yo, draw through both loops.',
      ...sc(17),
      'Row 2: Ch 1, sc in each sc across, turn. (17)',
      'Row 3: Ch 1, sc in first sc, *spike st in next st, sc in next st; rep from * across, turn. (17 sts)',
    ],
    [18, 17, 17, 17],
  ),
  us(
    'star stitch edge even of picots',
    [
      ...sc(25),
      'Row 2: Ch 1, sc in first 3 sc, *ch 3, sl st in 3rd ch from hook (picot made), sc in next 3 sc; rep from * to last sc, sc in last sc, fasten off.',
    ],
    // 25 = 3 + 3 * 7 + 1
    [26, 25, 25],
  ),
  us(
    'picot named, in the middle of arches',
    [
      'Picot: ch 3, sl st in first ch made.',
      ...sc(22),
      'Row 2: Ch 1, sc in first st, *ch 3, sk 2 sts, (sc, picot, sc) in next st; rep from * to last 3 sts, ch 3, sk 2 sts, sc in last st, turn.',
    ],
    // 22 = 1 + 3 * 6 + 3: 1 + 12 + 1 = 14
    [23, 22, 14],
  ),

  // Armholes, necks and shoulders
  us(
    'underarm by slip stitches in a garment back, four sizes',
    // 60 - 10 = 50, 68 - 12 = 56, 76 - 14 = 62, 84 - 16 = 68; then two rows of minus 2
    [
      'To fit sizes S (M, L, XL)',
      'Ch 61 (69, 77, 85).',
      'Row 1 (RS): Sc in second ch from hook and in each remaining ch, turn. 60 (68, 76, 84) sts.',
      'Shape Armholes',
      'Row 2: Sl st in each of first 5 (6, 7, 8) sts, ch 1, sc in each st to last 5 (6, 7, 8) sts, turn, leave remaining sts unworked. 50 (56, 62, 68) sts.',
      'Row 3: Ch 1, sc2tog, sc in each st across to last 2 sts, sc2tog, turn. 48 (54, 60, 66) sts.',
      'Row 4: As row 3. 46 (52, 58, 64) sts.',
    ],
    [
      [61, 69, 77, 85],
      [60, 68, 76, 84],
      [50, 56, 62, 68],
      [48, 54, 60, 66],
      [46, 52, 58, 64],
    ],
  ),
  us(
    'first and second side of a neck, yarn attached after skipped stitches',
    // 40: 14 + 12 + 14; 44: 15 + 14 + 15
    [
      'Ch 41 (45).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 40 (44) sc.',
      'First Side:',
      'Row 2: Ch 1, sc in first 14 (15) sts, turn; leave remaining sts unworked.',
      'Row 3: Ch 1, sc2tog, sc in each st across, turn. 13 (14) sts.',
      'Row 4: Ch 1, sc in each st across. Fasten off.',
      'Second Side:',
      'Row 2: With RS facing, skip next 12 (14) unworked sts on Row 1, attach yarn in next st, ch 1, sc in same st and in each st across, turn. 14 (15) sts.',
      'Row 3: Ch 1, sc in each st to last 2 sts, sc2tog, turn. 13 (14) sts.',
    ],
    [
      [41, 45],
      [40, 44],
      [14, 15],
      [13, 14],
      [13, 14],
      [14, 15],
      [13, 14],
    ],
  ),
  us(
    'shoulder steps of slip stitches',
    // 24: 24 - 6 at the start = 18, then stop 6 before the end = 12
    [
      ...sc(24),
      'Row 2: Sl st across first 6 sts, sc in each st across, turn. (18 sc)',
      'Row 3: Ch 1, sc in first 12 sc, turn. Leave remaining 6 sts unworked. (12 sc)',
    ],
    [25, 24, 18, 12],
  ),
  us(
    'shoulder slope in heights',
    [
      ...dc(21),
      'Row 2: Ch 1, sl st in first 7 sts, sc in next 5 sts, hdc in next 4 sts, dc in last 5 sts, turn. (5 sc, 4 hdc, 5 dc)',
    ],
    [23, 21, null],
    { byKind: [null, null, { sc: 5, hdc: 4, dc: 5 }] },
  ),
  // Raglan
  us(
    'top-down raglan in rows, increases at markers',
    // 4 corners of +2 on every row: 60 → 68; (dc, ch 1, dc) at 4 marked sts: 60 - 4 + 8 = 64 dc and 4 sps
    [
      ...dc(60),
      'Row 2 (RS): Ch 3 (counts as dc), dc in next 9 sts, (dc, ch 1, dc) in next st, dc in next 8 sts, (dc, ch 1, dc) in next st, dc in next 20 sts, (dc, ch 1, dc) in next st, dc in next 8 sts, (dc, ch 1, dc) in next st, dc in last 10 sts, turn. (64 dc, 4 ch-1 sps)',
      'Row 3: Ch 3, *dc in each dc to next ch-1 sp, (dc, ch 1, dc) in ch-1 sp; rep from * 3 more times, dc in each dc to end, turn. (72 dc, 4 ch-1 sps)',
      'Row 4: Ch 3, dc in each dc across to first corner sp, [2 dc, ch 1, 2 dc] in corner sp, *dc in each dc to next corner sp, [2 dc, ch 1, 2 dc] in corner sp; rep from * twice more, dc in each remaining dc, turn. (88 dc)',
    ],
    [62, 60, 64, 72, 88],
    { spaces: [0, 0, 4, 4, 4] },
  ),
  uk(
    'raglan increases either side of markers, 4 sizes',
    // 54 (58, 62, 66) - 4 + 4 * 3 = + 8
    [
      'Make 56 (60, 64, 68)ch.',
      'Row 1: 1tr in 4th ch from hook, 1tr in each ch to end, turn. [54 (58, 62, 66) tr]',
      'Row 2: 3ch (counts as 1tr), 1tr in each of next 8 (9, 10, 11) tr, 3tr in next tr, 1tr in each of next 6 tr, 3tr in next tr, 1tr in each of next 20 (22, 24, 26) tr, 3tr in next tr, 1tr in each of next 6 tr, 3tr in next tr, 1tr in each of last 9 (10, 11, 12) tr, turn. [62 (66, 70, 74) tr]',
    ],
    // 9 + 1 + 6 + 1 + 20 + 1 + 6 + 1 + 9 = 54
    [
      [56, 60, 64, 68],
      [54, 58, 62, 66],
      [62, 66, 70, 74],
    ],
  ),
  // Bracket styles
  uk(
    'sizes in round brackets after a colon list',
    [
      'To fit bust: 81 (86: 91: 97: 102) cm',
      'Ch 71 (75: 79: 83: 87).',
      '1st row: 1dc in 2nd ch from hook, 1dc in each ch to end. 70 (74: 78: 82: 86) dc.',
      '2nd row: 1ch, 1dc in each of first 10 (11: 12: 13: 14) dc, miss next dc, 1dc in each dc to end. 69 (73: 77: 81: 85) dc.',
    ],
    [
      [71, 75, 79, 83, 87],
      [70, 74, 78, 82, 86],
      [69, 73, 77, 81, 85],
    ],
  ),
  us(
    'sizes by slashes',
    [
      'Sizes: S/M/L/XL',
      'Ch 31/35/39/43.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (30/34/38/42 sc)',
      'Row 2: Ch 1, sc2tog, sc in next 26/30/34/38 sts, sc2tog, turn. (28/32/36/40 sts)',
    ],
    [
      [31, 35, 39, 43],
      [30, 34, 38, 42],
      [28, 32, 36, 40],
    ],
  ),
  us(
    'sizes in nested brackets of three kinds',
    [
      'Ch 41 (45, 49) [53, 57] {61, 65}.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 40 (44, 48) [52, 56] {60, 64} sc',
      'Row 2: Ch 1, 2 sc in first st, sc in next 38 (42, 46) [50, 54] {58, 62} sts, 2 sc in last st, turn. 42 (46, 50) [54, 58] {62, 66} sc',
    ],
    [
      [41, 45, 49, 53, 57, 61, 65],
      [40, 44, 48, 52, 56, 60, 64],
      [42, 46, 50, 54, 58, 62, 66],
    ],
  ),
  us(
    'sizes with bars and spaces',
    [
      'XS (S, M | L, XL, 2X)',
      'Ch 31 (33, 35 | 37, 39, 41).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 30 (32, 34 | 36, 38, 40) sts',
    ],
    [
      [31, 33, 35, 37, 39, 41],
      [30, 32, 34, 36, 38, 40],
    ],
  ),
  us(
    'sizes with dashes between',
    [
      'Sizes: S-M-L',
      'Ch 31-35-39.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (30-34-38 sc)',
    ],
    [
      [31, 35, 39],
      [30, 34, 38],
    ],
  ),
  uk(
    'square brackets for larger sizes and a dash',
    [
      'Sizes: 1st [2nd:3rd:4th]',
      'Make 21 [23:25:27]ch.',
      'Row 1: 1dc in 2nd ch from hook, 1dc in each ch to end. 20 [22:24:26] dc.',
      'Row 2: 1ch, 1dc in each of next 20 [22:22:22] dc, (2dc in next dc) -[-:2:4] times, turn. 20 [22:26:30] dc.',
    ],
    [
      [21, 23, 25, 27],
      [20, 22, 24, 26],
      [20, 22, 26, 30],
    ],
  ),
  us(
    'no space before the bracket, spaces after commas left out',
    [
      'Ch 31(35,39,43).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. [30(34,38,42)sc]',
      'Row 2: Ch 1, sc in next 10(12,14,16)sts, ch 10, sk next 10 sts, sc in last 10(12,14,16)sts, turn.',
      'Row 3: Ch 1, sc in each st and ch across, turn. [30(34,38,42)sc]',
    ],
    [
      [31, 35, 39, 43],
      [30, 34, 38, 42],
      [20, 24, 28, 32],
      [30, 34, 38, 42],
    ],
  ),
  // Per-size rows
  us(
    'rows for two of the sizes',
    // S 20, M 24, L 28; M and L only: - 2 → 22, 26
    [
      'Sizes: S (M, L)',
      'Ch 21 (25, 29).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 20 (24, 28) sc.',
      'Sizes M and L ONLY',
      'Next row: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. – (22, 26) sts.',
      'ALL SIZES',
      'Next row: Ch 1, sc in each st across, turn. 20 (22, 26) sc.',
    ],
    [
      [21, 25, 29],
      [20, 24, 28],
      [null, 22, 26],
      [20, 22, 26],
    ],
  ),
  us(
    'sizes by number, for the largest only',
    [
      'Sizes: XS (S, M, L)',
      'Ch 21 (23, 25, 27).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 20 (22, 24, 26) sc.',
      'For size L only:',
      'Row 2: Ch 1, 2 sc in first st, sc in each st across, turn. 27 sc.',
      'For all sizes:',
      'Row 2 (2, 2, 3): Ch 1, sc in each st across, turn. 20 (22, 24, 27) sc.',
    ],
    [
      [21, 23, 25, 27],
      [20, 22, 24, 26],
      [null, null, null, 27],
      [20, 22, 24, 27],
    ],
  ),
  uk(
    'sizes named inside the row',
    [
      'Sizes: 8 (10, 12)',
      'Make 31 (35, 39)ch.',
      'Row 1: 1dc in 2nd ch from hook, 1dc in each ch to end, turn. [30 (34, 38) dc]',
      '2nd and 3rd sizes only: Row 2: 1ch, dc2tog, 1dc in each dc to end, turn. [- (33, 37) sts]',
    ],
    [
      [31, 35, 39],
      [30, 34, 38],
      [null, 33, 37],
    ],
  ),
  // Rows in words
  us(
    'even rows in words',
    [
      ...sc(18),
      'Row 2: Turn, chain one, and work one single crochet in every stitch across. (18 sc)',
      'Row 3: Turn, ch 1, work 2 sc in the first st, 1 sc in each of the next 16 sts, and 2 sc in the last st. (20 sc)',
      'Row 4: Turn, ch 1, work even. (20 sc)',
    ],
    [19, 18, 18, 20, 20],
  ),
  us(
    'dec at each end in words',
    [
      ...sc(24),
      'Row 2: Ch 1, dec 1 st at each end of row, turn. (22 sts)',
      'Row 3: Ch 1, sc across, inc 1 st at end of row, turn. (23 sts)',
      'Row 4: Ch 1, sc in each st, decreasing 1 st at beg of row, turn. (22 sts)',
      'Row 5: Ch 1, sc across, decreasing 2 sts evenly spaced, turn. (20 sts)',
    ],
    [25, 24, 22, 23, 22, 20],
  ),
  us(
    'increases spread evenly',
    [
      ...sc(30),
      'Row 2: Ch 1, sc across, increasing 6 sts evenly across row, turn. (36 sc)',
      'Row 3: Ch 1, sc in each sc across, inc 4 sc evenly spaced. (40 sc)',
    ],
    [31, 30, 36, 40],
  ),
  uk(
    'British shaping words over several rows',
    // 50 - 2 * 4 = 42, then - 2 * 3 = 36
    [
      ...ukDc(50),
      'Next row: 1ch, 1dc in each dc to end, turn.',
      'Dec 1 st at each end of next 4 rows. [42 sts]',
      'Dec 1 st at both ends of next and 2 foll alt rows. [36 sts]',
    ],
    { final: 36 },
  ),
  uk(
    'straight until it measures',
    [
      'Make 41 (43, 45)ch.',
      'Foundation row: 1dc in 2nd ch from hook, 1dc in each ch to end, turn. [40 (42, 44) dc]',
      'Patt row: 1ch, 1dc in each dc to end, turn.',
      'Rep last row until back measures 30 (31, 32) cm from beg, ending with a WS row.',
      'Next row: Ss across first 4 sts, 1ch, 1dc in each dc to last 4 sts, turn. [32 (34, 36) dc]',
    ],
    { final: [32, 34, 36] },
  ),
  // Row-ends and seams
  us(
    'edging along row-ends of a swatch',
    [
      'Ch 13.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (12 sc)',
      'Rows 2-20: Ch 1, sc in each sc across, turn. (12 sc)',
      'Ribbing',
      'Row 1: Ch 1, working along side edge, sc in end of each row, turn. (20 sc)',
      'Row 2: Ch 1, hdc in each st across. (20 hdc)',
    ],
    [13, 12, 12, 20, 20],
  ),

  // Turning chains
  us(
    'turning ch 2 for dc counted',
    [
      'Ch 20.',
      'Row 1: Dc in third ch from hook (beg ch-2 counts as first dc), dc in each ch to end, turn. (19 dc)',
      'Row 2: Ch 2 (counts as first dc now and throughout), sk first dc, dc in each of next 17 dc, dc in top of ch-2, turn. (19 dc)',
    ],
    [20, 19, 19],
  ),
  us(
    'chainless starting dc',
    [
      ...sc(15),
      'Row 2: Pull up a loop, work a chainless starting dc in first st, dc in each st across, turn. (15 dc)',
      'Row 3: Csdc, dc in next 14 sts. (15 dc)',
    ],
    [16, 15, 15, 15],
  ),
  us(
    'stacked single crochet at the start',
    [
      ...sc(15),
      'Row 2: Stacked sc in first st (counts as dc), dc in next st and in each st across, turn. (15 dc)',
    ],
    [16, 15, 15],
  ),
  us(
    'standing dc with a new colour',
    [...sc(16), 'Row 2: With B, standing dc in first st, dc in each st across, turn. (16 dc)'],
    [17, 16, 16],
  ),
  us(
    'turning chain in a note at the head, plural form',
    [
      'NOTE: Turning chs do not count as sts unless otherwise noted.',
      'Ch 17.',
      'Row 1: Hdc in 3rd ch from hook and in each ch across. (15 hdc)',
      'Row 2: Ch 2, turn, hdc in each hdc across. (15 hdc)',
      'Row 3: Ch 2, turn, hdc2tog, hdc in each st to last 2 sts, hdc2tog. (13 hdc)',
    ],
    [17, 15, 15, 13],
  ),
  us(
    'ch 1 to count as a stitch',
    [
      'Ch 16.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (15 sc)',
      'Row 2: Ch 1 (counts as sc), sk first st, sc in each st across, turn. (15 sc)',
      'Row 3: Ch 1 (counts as sc), sk first st, sc in next 13 sts, sc in turning ch, turn. (15 sc)',
    ],
    [16, 15, 15, 15],
  ),
  us(
    'ch 3 placed before the turn',
    [
      'Ch 19.',
      'Row 1: Dc in 4th ch from hook and each ch across, ch 3, turn. (17 dc)',
      'Row 2: Sk first dc, dc in next dc and each dc across, dc in top of ch-3, ch 1, turn. (17 dc)',
      'Row 3: Sc in each dc across, ending with sc in top of t-ch. (17 sc)',
    ],
    [19, 17, 17, 17],
  ),
  uk(
    'turn words before the chain',
    [
      'Make 17ch.',
      'Row 1: Work 1htr in 3rd ch from hook (missed 2ch counts as 1htr), 1htr in each ch to end. [16 htr]',
      'Row 2: Turn, 2ch (counts as 1htr), miss st at base of ch, 1htr in each st to end, working last htr in top of tch. [16 htr]',
    ],
    [17, 16, 16],
  ),
  uk(
    'first stitch said to be missed in brackets',
    [
      ...ukTr(14),
      'Row 2: 3ch (stands for 1st tr), 1tr in 2nd tr, 1tr in each of next 11 tr, 1tr in top of 3ch. Turn. [14 tr]',
      'Row 3: 3ch, *1tr in next tr; rep from * ending 1tr in 3rd of 3ch. [14 tr]',
    ],
    [16, 14, 14, 14],
  ),
  uk(
    'trtr and dtr with their chains',
    [
      ...ukDc(11),
      'Row 2: 4ch (counts as 1dtr), miss first st, 1dtr in each st to end, turn. [11 dtr]',
      'Row 3: 5ch (counts as 1trtr), miss first st, 1trtr in each st to end, working last trtr in 4th of 4ch, turn. [11 trtr]',
    ],
    [12, 11, 11, 11],
  ),
  us(
    'extended stitches',
    [
      'Esc (extended single crochet): Insert hook in st, yo and pull up a loop, yo and draw through 1 loop, yo and draw through both loops.',
      'Ch 18.',
      'Row 1: Esc in 3rd ch from hook and in each ch across, turn. (16 esc)',
      'Row 2: Ch 2 (does not count), esc in each st across, turn. (16 esc)',
    ],
    [18, 16, 16],
  ),
  // Foundations
  us(
    'loosely chained foundation',
    [
      'With larger hook, loosely ch 28.',
      'Change to smaller hook.',
      'Row 1: Dc in 4th ch from hook (first 3 chs count as dc), dc in each rem ch across; turn. 26 dc.',
    ],
    [28, 26],
  ),
  us(
    'foundation dc of the chainless kind',
    [
      'Foundation Row (RS): Work 24 Fdc, turn. (24 dc)',
      'Row 1: Ch 3 (counts as dc), dc in next 23 sts, turn. (24 dc)',
    ],
    [24, 24],
  ),
  uk(
    'dc into the back bumps of the chain',
    [
      'Using 4mm hook and yarn A, make 21ch.',
      'Row 1 (RS): Working into back bump of chain, 1dc into 2nd ch from hook, 1dc into each ch to end. Turn. [20 sts]',
      'Row 2: 1ch (does not count as st throughout), 1dc into each st. Turn. [20 sts]',
    ],
    [21, 20, 20],
  ),
  // Stated counts
  us(
    'counts in many forms',
    [
      'Ch 25. (25 ch)',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn – 24 sc made.',
      'Row 2: Ch 1, sc in each sc across, turn. <24 sc>',
      'Row 3: Ch 1, sc in each sc across, turn: 24 sc.',
      'Row 4: Ch 1, sc in each sc across; 24 sts total. Turn.',
      'Row 5: Ch 1, sc in each sc across. Turn. You should have 24 sts.',
      'Row 6: Ch 1, sc in each sc across. (Total: 24 sc)',
      'Row 7: Ch 1, turn, sc in each sc across = 24 sc.',
      'Row 8: Ch 1, turn, sc in each sc across ...24 sts',
      'Row 9: Ch 1, turn, sc in each sc across. {24}',
      'Row 10: Ch 1, turn, sc in each sc across. Stitch count: 24',
    ],
    [25, 24, 24, 24, 24, 24, 24, 24, 24, 24, 24],
  ),
  uk(
    'counts with the tally of chains in British form',
    [
      ...ukDc(21),
      'Row 2: 4ch (counts as 1tr and 1ch), miss first 2 sts, 1tr in next st, *1ch, miss 1 st, 1tr in next st; rep from * to end, turn. [11 tr, 10 1ch-sps]',
      'Row 3: 1ch, 1dc in first tr, *1dc in next 1ch-sp, 1dc in next tr; rep from * to end, working last dc in 3rd of 4ch, turn. [21 sts]',
      'Row 4: 1ch, 1dc in each dc to end. 21dc.',
    ],
    [22, 21, 11, 21, 21],
  ),
  us(
    'count for each of many kinds',
    [
      ...sc(21),
      'Row 2: Ch 1, sc in first 3 sts, hdc in next 3 sts, dc in next 3 sts, tr in next 3 sts, dc in next 3 sts, hdc in next 3 sts, sc in last 3 sts, turn. (6 sc, 6 hdc, 6 dc & 3 tr)',
    ],
    [22, 21, 21],
  ),
  // Labels
  us(
    'labels of many houses',
    [
      'FOUNDATION: Ch 15.',
      'ROW 1 [RS]: Sc in 2nd ch from hook and in each ch across, turn. (14)',
      'R2 - ch 1, sc in each st across, turn. (14)',
      'Row three: Ch 1, sc in each st across, turn. (14)',
      '4th Row (wrong side): Ch 1, sc in each st across, turn. (14)',
      'Row 5 (right side facing). Ch 1, sc in each st across, turn. (14)',
      '6. Ch 1, sc in each st across, turn. (14)',
      'Row #7: Ch 1, sc in each st across, turn. (14)',
      'Rows 8 & 9: Ch 1, sc in each st across, turn. (14)',
      'Rows 10 through 12: Ch 1, sc in each st across, turn. (14)',
      'Row 13 (Decrease Row): Ch 1, sc2tog, sc in each st across, turn. (13)',
      'Row 14 - Inc row: Ch 1, 2 sc in first st, sc in each st across, turn. (14)',
    ],
    [15, 14, 14, 14, 14, 14, 14, 14, 14, 14, 13, 14],
  ),
  uk(
    'labels in words, British',
    [
      'Foundation chain: Make 15ch.',
      'Base row: 1dc in 2nd ch from hook, 1dc in each ch to end. 14 dc.',
      '1st row (WS). 1ch, 1dc in each dc to end.',
      '2nd row. 1ch, 1dc in each dc to end.',
      '3rd and 4th rows. 1ch, 1dc in each dc to end.',
      'Rows 5, 6, 7. 1ch, 1dc in each dc to end. 14 dc.',
      'Inc row. 1ch, 2dc in first dc, 1dc in each dc to end. 15 dc.',
      'Last row: 1ch, 1dc in each dc to end. Fasten off. 15 dc.',
    ],
    [15, 14, 14, 14, 14, 14, 15, 15],
  ),
  // Whole rows
  us(
    'repeat of pairs, different in each size',
    // 30 - 2 - 2 * 4 = 20; 34 - 2 - 2 * 5 = 22
    [
      'Ch 31 (35).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 30 (34) sc.',
      'Row 2: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. 28 (32) sts.',
      'Row 3: Ch 1, sc in each st across, turn.',
      'Rep Rows 2 and 3 four (five) more times. 20 (22) sts.',
    ],
    { final: [20, 22] },
  ),
  us(
    'repeat until a number of stitches remains',
    [
      ...sc(21),
      'Row 2: Ch 1, sc2tog, sc in each st across to last 2 sts, sc2tog, turn. (19 sc)',
      'Rep Row 2 until 5 sts remain.',
      'Next Row: Ch 1, sk 1 st, sc in next st, (sk 1 st, sc in next st) once, sk last st, turn. (2 sc)',
    ],
    { final: 2 },
  ),
  uk(
    'row as a row with an exception',
    [
      ...ukDc(20),
      'Row 2: 1ch, 1dc in each dc to end, turn.',
      'Row 3: As Row 2, but working in BLO.',
      'Rows 4 and 5: As Row 2.',
      'Row 6: As 3rd row. [20 dc]',
    ],
    [21, 20, 20, 20, 20, 20],
  ),
  uk(
    'rep these two rows until',
    [
      ...ukDc(12),
      '2nd row: 1ch, 2dc in first dc, 1dc in each dc to end, turn. [13 dc]',
      '3rd row: 1ch, 1dc in each dc to last dc, 2dc in last dc, turn. [14 dc]',
      'Rep 2nd and 3rd rows until there are 22 dc.',
    ],
    { final: 22 },
  ),

  // Wrong rows in garments
  us(
    'armhole count off by the underarm of one side',
    // 60 - 12 = 48
    [
      ...sc(60),
      'Row 2: Sl st in first 6 sts, ch 1, sc in each st to last 6 sts, turn, leaving rem sts unworked. (54 sc)',
      'Row 3: Ch 1, sc in each st across, turn. (48 sc)',
    ],
    [61, 60, 48, 48],
    { findings: [{ row: 2, code: 'stated-count-wrong', words: '54 sc', saying: ['54', '48', '6'] }] },
  ),
  us(
    'one size of five has its count wrong',
    // 36 + 2, 40 + 2, 44 + 2, 48 + 2, 52 + 2
    [
      'Sizes: XS (S, M, L, XL)',
      'Ch 37 (41, 45, 49, 53).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. [36 (40, 44, 48, 52) sc]',
      'Row 2: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. [38 (42, 46, 52, 54) sc]',
    ],
    [
      [37, 41, 45, 49, 53],
      [36, 40, 44, 48, 52],
      [38, 42, 46, 50, 54],
    ],
    { findings: [{ row: 2, code: 'stated-count-wrong', sizes: [3], saying: ['L', '52', '50'] }] },
  ),
  us(
    'stitches by size that do not add up to the row',
    // 15 + 20 + 15 = 50; 16 + 22 + 16 = 54, but 56 are there
    [
      'Ch 51 (57).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 50 (56) sc.',
      'Row 2: Ch 1, sc in next 15 (16) sts, hdc in next 20 (22) sts, sc in next 15 (16) sts, turn.',
    ],
    [[51, 57], [50, 56], null],
    { findings: [{ row: 2, code: 'stitches-left-unworked', sizes: [1], saying: ['2', '56'] }] },
  ),
  us(
    'more named than there are',
    [...sc(20), 'Row 2: Ch 1, sc in next 8 sts, 2 sc in next st, sc in next 12 sts, turn.'],
    [21, 20, null],
    { findings: [{ row: 2, code: 'place-does-not-exist', words: 'in next 12 sts', saying: ['11'] }] },
  ),
  us(
    'shell repeat on the wrong chain',
    // 30 - 1 = 29 = 1 + 6 * 4 + 4
    [
      'Ch 30.',
      'Row 1: Sc in 2nd ch from hook, *sk 2 chs, 5 dc in next ch, sk 2 chs, sc in next ch; rep from * across, turn.',
    ],
    [30, null],
    {
      findings: [
        { row: 1, code: 'repeat-does-not-fit', words: '*sk 2 chs, 5 dc', saying: ['4', '6', '26', '32'] },
      ],
    },
  ),
  us(
    'dc row forgets the turning chain',
    [...dc(20), 'Row 2: Ch 3 (counts as dc), dc in next 18 dc, turn. (20 dc)'],
    [22, 20, 19],
    {
      findings: [{ row: 2, code: 'stated-count-wrong', words: '20 dc', saying: ['20', '19'] }],
      clean: false,
    },
  ),
  us(
    'a typing error in a stitch name',
    [...sc(12), 'Row 2: Ch 2 (does not count as a st), hcd in each st across, turn.'],
    [13, 12, null],
    {
      findings: [{ row: 2, code: 'word-not-read', words: 'hcd', saying: ['hdc'] }],
      read: [true, true, false],
    },
  ),
  uk(
    'missing tr count in one of two kinds',
    // 21: 11 dc and 10 tr
    [
      ...ukDc(21),
      'Row 2: 1ch, 1dc in first dc, *1tr in next dc, 1dc in next dc; rep from * to end, turn. [10 dc, 10 tr]',
    ],
    [22, 21, 21],
    { findings: [{ row: 2, code: 'stated-count-wrong', words: '10 dc', saying: ['10', '11'] }] },
  ),
  uk(
    'chevron on a count that does not fit',
    [
      ...ukDc(42),
      'Row 2: 1ch, *2dc in next dc, 1dc in each of next 4 dc, miss 2 dc, 1dc in each of next 4 dc, 2dc in next dc; rep from * to end, turn.',
    ],
    // a repeat uses 1 + 4 + 2 + 4 + 1 = 12: 3 repeats, 6 left
    [43, 42, null],
    { findings: [{ row: 2, code: 'repeat-does-not-fit', saying: ['3', '6', '12', '36', '48'] }] },
  ),
  uk(
    'decrease row count typed from the row before',
    [
      'Make 61 (65, 69)ch.',
      'Row 1: 1dc in 2nd ch from hook, 1dc in each ch to end, turn. 60 (64, 68) dc.',
      'Row 2: 1ch, dc2tog, 1dc in each dc to last 2 dc, dc2tog, turn. 60 (64, 68) dc.',
    ],
    [
      [61, 65, 69],
      [60, 64, 68],
      [58, 62, 66],
    ],
    { findings: [{ row: 2, code: 'stated-count-wrong', words: '60 (64, 68)', saying: ['60', '58', '66'] }] },
  ),
  us(
    'numbers of one list missing a size',
    [
      'Ch 31 (35, 39).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 30 (34, 38) sc.',
      'Row 2: Ch 1, sc in next 10 (12) sts, sc2tog, sc in each st across, turn.',
    ],
    [[31, 35, 39], [30, 34, 38], null],
    { findings: [{ row: 2, code: 'sizes-differ-in-length', words: '10 (12)' }] },
  ),
  us(
    'filet row that works one block too many',
    [
      'Ch 20.',
      'Row 1: Dc in 8th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across, turn. (5 sps)',
      'Row 2: Ch 3 (counts as dc), (2 dc in next ch-2 sp, dc in next dc) 6 times, turn.',
    ],
    // 20 - 8 = 12 = 4 * 3: 5 spaces
    [20, 6, null],
    { findings: [{ row: 2, code: ['place-does-not-exist', 'repeat-does-not-fit'] }] },
  ),
  // Houses: sentences, capitals, upper-case stitches
  us(
    'capitals throughout',
    [
      'CH 21.',
      'ROW 1: SC IN 2ND CH FROM HOOK AND IN EACH CH ACROSS. TURN. (20 SC)',
      'ROW 2: CH 3 (COUNTS AS DC), SKIP FIRST ST, DC IN EACH ST ACROSS. TURN. (20 DC)',
      'ROW 3: CH 1, *SC IN NEXT DC, SKIP NEXT DC, 3 DC IN NEXT DC, SKIP NEXT DC; REP FROM * ACROSS. TURN. (5 SC, 15 DC)',
    ],
    [21, 20, 20, 20],
  ),
  us(
    'sentences with no commas',
    [
      'Ch 15.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. Turn. 14 sc.',
      'Row 2: Ch 1. Sc in first 2 sts. *Ch 2. Skip 2 sts. Sc in next 2 sts. Repeat from * to end of row. Turn. 8 sc and 3 ch-2 sps.',
      'Row 3: Ch 1. Sc in first 2 sts. *2 sc in ch-2 sp. Sc in next 2 sts. Repeat from * to end of row. Turn. 14 sc.',
    ],
    [15, 14, 8, 14],
  ),
  us(
    'numbers first, toy-like shorthand in a flat piece',
    [
      'Ch 13',
      'Row 1: 12 sc starting in 2nd ch from hook, turn (12)',
      'Row 2: Ch 1, 5 sc, inc, inc, 5 sc, turn (14)',
      'Row 3: Ch 1, 1 sc, dec, 8 sc, dec, 1 sc, turn (12)',
      'Row 4: Ch 1, [1 sc, 1 inc] x6, turn (18)',
    ],
    [13, 12, 14, 12, 18],
  ),
  uk(
    'British shorthand with no spaces',
    [
      'Make 16ch.',
      'Row 1: 1htr in 3rd ch from hook (2ch count as 1htr), 1htr in each ch to end. (15sts)',
      'Row 2: 2ch (counts as 1htr), 1htr in next st, htr2tog, 1htr in each st to last 4 sts, htr2tog, 1htr in each of last 2 sts. (13sts)',
      'Row 3: 2ch (counts as 1htr), 2htr in next st, 1htr in each st to last 2 sts, 2htr in next st, 1htr in last st. (15sts)',
    ],
    [16, 15, 13, 15],
  ),
  uk(
    'dc2tog spelt as work two together',
    [
      ...ukDc(18),
      'Row 2: 1ch, dc next 2 dc tog, 1dc in each dc to last 2 dc, dc last 2 dc tog, turn. [16 dc]',
      'Row 3: 1ch, work 2 dc together, 1dc in each dc to end, turn. [15 dc]',
    ],
    [19, 18, 16, 15],
  ),
  us(
    'older American style with periods',
    [
      'Ch. 22.',
      '1st row: 1 s.c. in 2nd ch. from hook, 1 s.c. in each ch. to end of row. Ch. 3, turn.',
      '2nd row: Skip 1st s.c., * 1 d.c. in next s.c., ch. 1, skip 1 s.c.; repeat from * to last 2 s.c., 1 d.c. in each of last 2 s.c.',
    ],
    // 21: edge, then 9 * 2 = 18, then 2: 1 + 9 + 2
    [22, 21, 12],
  ),
  // Pineapple and fans
  us(
    'pineapple rows over tr fans',
    [
      'Shell: (2 dc, ch 2, 2 dc) in same space.',
      ...sc(17),
      'Row 2: Ch 3 (counts as dc), sk 2 sts, (2 dc, ch 2, 2 dc) in next st, ch 2, sk 4 sts, 7 tr in next st, ch 2, sk 4 sts, (2 dc, ch 2, 2 dc) in next st, sk 2 sts, dc in last st, turn. (10 dc, 7 tr)',
      'Row 3: Ch 3, shell in next ch-2 sp, ch 2, sk next ch-2 sp, sc in next tr, (ch 3, sc in next tr) 6 times, ch 2, sk next ch-2 sp, shell in next ch-2 sp, dc in top of turning ch, turn. (10 dc, 7 sc, 6 ch-3 lps)',
      'Row 4: Ch 3, shell in next shell, ch 3, sc in next ch-3 lp, (ch 3, sc in next ch-3 lp) 5 times, ch 3, shell in next shell, dc in top of turning ch, turn. (10 dc, 6 sc)',
    ],
    // 17 = 1 + 2 + 1 + 4 + 1 + 4 + 1 + 2 + 1
    [18, 17, 17, 17, 16],
  ),
  us(
    'fans and V-stitches in turn',
    [
      'V-st: (dc, ch 1, dc) in st or sp indicated.',
      'Fan: 5 dc in st or sp indicated.',
      ...sc(21),
      'Row 2: Ch 3 (counts as dc), dc in first sc, *sk 3 sc, V-st in next sc, sk 3 sc, fan in next sc... rep from * to last 4 sc, sk 3 sc, 2 dc in last sc, turn.',
    ],
    // 21 = 1 + 8n + 4: n = 2: 2 + 2 * (2 + 5) + 2
    [22, 21, 18],
  ),
  us(
    'block stitch, three dc in spaces',
    [
      ...sc(20),
      'Row 2: Ch 1, sc in first st, *ch 2, sk 2 sts, sc in next st; rep from * to last st, sc in last st, turn.',
      'Row 3: Ch 3 (counts as dc), *3 dc in next ch-2 sp; rep from * across, dc in last sc, turn. (20 dc)',
    ],
    // 20 = 1 + 3 * 6 + 1: 8 sc, 6 sps; row 3: 1 + 18 + 1
    [21, 20, 8, 20],
  ),
  uk(
    'brick stitch blocks',
    [
      'Make 23 ch.',
      '1st row: 1dc into 2nd ch from hook, 1dc into next ch, *4ch, miss 4ch, 1dc into each of next 2ch; rep from * to last 2ch, 1dc into each of last 2ch, turn.',
      '2nd row: 3ch (counts as 1tr), miss first dc, 1tr into next dc, *1tr into each dc to next 4ch loop, 4tr into 4ch loop; rep from * twice more, 1tr into each dc to end, turn.',
    ],
    // 22 = 2 + 6 * 3 + 2: 2 + 6 + 2 = 10 dc, 3 loops; row 2: 10 + 12
    [23, 10, 22],
  ),
  us(
    'alternating fp and bp basketweave with its repeat of rows',
    [
      ...dc(18),
      'Row 2: Ch 2 (counts as hdc), sk first st, *FPdc around each of next 4 sts, BPdc around each of next 4 sts; rep from * to last st, hdc in top of turning ch, turn. (18 sts)',
      'Row 3: Ch 2 (counts as hdc), sk first st, *BPdc around each of next 4 sts, FPdc around each of next 4 sts; rep from * to last st, hdc in top of turning ch, turn. (18 sts)',
      'Rows 4–5: Rep Rows 2–3.',
      'Rows 6-9: Rep Rows 2-5.',
    ],
    [20, 18, 18, 18, 18, 18],
  ),
  us(
    'hdc in the third loop',
    [
      'Ch 14.',
      'Row 1: Hdc in 3rd ch from hook (skipped chs do not count as a st), hdc in each ch across, turn. (12 hdc)',
      'Row 2: Ch 2 (does not count as a st here and throughout), hdc in 3rd loop of each st across, turn. (12 hdc)',
      'Row 3: Ch 2, hdc in BLO of first st, hdc in third loop of next 10 sts, hdc in both loops of last st, turn. (12 hdc)',
    ],
    [14, 12, 12, 12],
  ),
  us(
    'short rows that are picked up again',
    [
      ...sc(20),
      'Row 2: Ch 1, sc in first 10 sts, turn, leaving remaining sts unworked. (10 sc)',
      'Row 3: Ch 1, sc in each st across, turn. (10 sc)',
      'Row 4: Ch 1, sc in each of 10 sc, sc in next 5 unworked sts of Row 1, turn. (15 sc)',
      'Row 5: Ch 1, sc in each sc across, turn. (15 sc)',
      'Row 6: Ch 1, sc in each of 15 sc, sc in rem 5 unworked sts of Row 1, turn. (20 sc)',
    ],
    [21, 20, 10, 10, 15, 15, 20],
  ),
  // Joining panels
  us(
    'front band over row-ends and neck',
    [
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Rows 2-30: Ch 1, sc in each sc across, turn. (20 sc)',
      'Edging: Ch 1, sc in each st across to last st, 3 sc in last st, then work 30 sc evenly along row-ends. Fasten off. (52 sc)',
    ],
    // 19 + 3 + 30
    [21, 20, 20, 52],
  ),
  us(
    'pick up along row ends, two per dc row',
    [
      ...dc(12),
      'Rows 2-10: Ch 3 (counts as dc), dc in each st across, turn. (12 dc)',
      'Row 11: Ch 1, rotate piece, working in row-ends, work 2 sc in end of each row across, turn. (20 sc)',
    ],
    // 10 rows of dc: 20
    [14, 12, 12, 20],
  ),

  // Ways of telling a row
  us(
    'the colon list of sizes in a heading of the pattern',
    [
      'Instructions are for size Small; changes for sizes Medium and Large are in parentheses.',
      'Ch 31 (35, 39).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 30 (34, 38) sc.',
      'Row 2: Ch 1, work 30 (34, 38) sc, turn.',
    ],
    [
      [31, 35, 39],
      [30, 34, 38],
      [30, 34, 38],
    ],
  ),
  us(
    'size filter after the label',
    [
      'Sizes: S (M, L)',
      'Ch 21 (25, 29).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 20 (24, 28) sc.',
      'Row 2 (sizes M and L only): Ch 1, sc2tog, sc in each st across, turn. – (23, 27) sts.',
      'Next row (all sizes): Ch 1, sc in each st across, turn. 20 (23, 27) sts.',
    ],
    [
      [21, 25, 29],
      [20, 24, 28],
      [null, 23, 27],
      [20, 23, 27],
    ],
  ),
  us(
    'first dc named as the second of the row',
    [
      ...dc(16),
      'Row 2: Ch 3 (counts as dc), dc in second dc and in each dc across, dc in top of turning ch, turn. (16 dc)',
    ],
    [18, 16, 16],
  ),
  us(
    'V-neck rows: decrease at neck edge only',
    [
      ...sc(22),
      'Row 2: Ch 1, sc in each st to last 2 sts, dec 1 (neck edge), turn. (21 sts)',
      'Row 3: Ch 1, sc2tog for neck edge, sc in each st across, turn. (20 sts)',
      'Row 4: Work even. (20 sts)',
      'Row 5: Ch 1, dec at neck edge, sc in each st across, turn. (19 sts)',
    ],
    [23, 22, 21, 20, 20, 19],
  ),
  us(
    'mitten-like flat piece: work to 3 before the end',
    [
      ...sc(25),
      'Row 2: Ch 1, sc in first st, sc2tog, sc to last 3 sts, sc2tog, sc in last st, turn. (23 sts)',
      'Row 3: Ch 1, sc in first st, sk next st, sc across until 2 sts rem, sk 1 st, sc in last st, turn. (21 sc)',
      'Row 4: Ch 1, sc in each st to within last 2 sts, sc2tog, turn. (20 sts)',
      'Row 5: Ch 1, sc in each st except last, turn, leaving last st unworked. (19 sc)',
    ],
    [26, 25, 23, 21, 20, 19],
  ),
  us(
    'center stitch increases of a shawl',
    [
      'Ch 4, join with sl st to form a ring.',
      'Row 1 (RS): Ch 4 (counts as dc and ch 1), (3 dc, ch 2, 3 dc, ch 1, dc) in ring, turn. (8 dc)',
      'Row 2: Ch 4 (counts as dc and ch 1), 3 dc in ch-1 sp, ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, (3 dc, ch 1, dc) in last sp, turn. (14 dc)',
    ],
    // 1 + 3 + 3 + 1; 1 + 3 + 6 + 3 + 1
    [null, 8, 14],
  ),
  us(
    'triangle from a corner with increases at both ends',
    [
      'Ch 2.',
      'Row 1: 3 sc in 2nd ch from hook, turn. (3 sc)',
      'Row 2: Ch 1, 2 sc in first st, sc in next st, 2 sc in last st, turn. (5 sc)',
      'Row 3: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. (7 sc)',
      'Rows 4-10: Rep Row 3. (21 sc)',
    ],
    // 7 + 2 * 7
    [2, 3, 5, 7, 21],
  ),
  us(
    'rows of alternate stitches with a comma list of places',
    [
      ...sc(16),
      'Row 2: Ch 1, (sc, dc) in first st, sk next st, *(sc, dc) in next st, sk next st; rep from * across, turn. (16 sts)',
      'Row 3: Ch 1, *sk dc, (sc, dc) in next sc; rep from * across, turn. (8 sc, 8 dc)',
    ],
    [17, 16, 16, 16],
  ),
  us(
    'suzette from a dictionary, last st said',
    [
      'Ch 18 (multiple of 2).',
      'Row 1: (Sc, dc) in 2nd ch from hook, *sk next ch, (sc, dc) in next ch; rep from * to last 2 chs, sk next ch, sc in last ch, turn.',
      'Row 2: Ch 1, (sc, dc) in first sc, *sk next dc, (sc, dc) in next sc; rep from * to last 2 sts, sk next dc, sc in last sc, turn.',
    ],
    // 17: 1 + 2 * 7 + 2: 8 pairs and 1
    [18, 17, 17],
  ),
  us(
    'griddle stitch',
    [
      'Ch 17.',
      'Row 1: Dc in 3rd ch from hook (skipped chs count as sc), *sc in next ch, dc in next ch; rep from * to end, turn. (16 sts)',
      'Row 2: Ch 2 (counts as sc), sk first dc, dc in next sc, *sc in next dc, dc in next sc; rep from * to end, working last dc in top of turning ch, turn. (16 sts)',
    ],
    [17, 16, 16],
  ),
  us(
    'waffle stitch rows',
    [
      ...dc(20),
      'Row 2: Ch 3 (counts as dc), sk first st, FPdc around next st, *dc in next 2 sts, FPdc around next st; rep from * to last 3 sts, dc in next 3 sts, turn. (20 sts)',
      'Row 3: Ch 3 (counts as dc), sk first st, dc in next 2 sts, *FPdc around each of next 2 sts, dc in next st; rep from * to last 2 sts, FPdc around next st, dc in last st, turn. (20 sts)',
    ],
    // row 2: 2 + 3n + 3: n = 5; row 3: 3 + 3n + 2: n = 5
    [22, 20, 20, 20],
  ),
  uk(
    'colour rows by letter in brackets',
    [
      ...ukDc(20),
      'Row 2 (col B): 1ch, 1dc in each of first 3 sts, *1RtrF round next st 2 rows below, 1dc in each of next 3 sts; rep from * to last st, 1dc in last st. [20 sts]',
    ],
    // 3 + 4 * 4 + 1; the raised treble takes the place of the stitch behind it
    [21, 20, 20],
  ),
  uk(
    'back loop rib, tbl and BLO in British words',
    [
      'Make 13ch.',
      'Row 1: 1dc in 2nd ch from hook and each ch to end. [12 dc]',
      'Row 2: 1ch, working into back loops only, 1dc in each dc to end. [12 dc]',
      'Row 3: 1ch, 1dc blo in each st to end. [12 dc]',
      'Row 4: 1ch, 1dcblo in each st to end. [12 dc]',
      'Row 5: 1ch, 1dc through back loop of each dc to end. [12 dc]',
      'Row 6: 1ch, 1dc tbl in each dc to end. [12 dc]',
    ],
    [13, 12, 12, 12, 12, 12, 12],
  ),
  uk(
    'sleeve top: ss, rows of both ends, fasten off',
    [
      'Make 45 (49)ch.',
      'Row 1: 1htr in 2nd ch from hook, 1htr in each ch to end, turn. [44 (48) htr]',
      'Row 2: Ss in first 4 htr, 1ch, 1htr in same st as last ss, 1htr in each htr to last 3 htr, turn. [38 (42) htr]',
      'Row 3: 1ch, htr2tog, 1htr in each htr to last 2 htr, htr2tog, turn. [36 (40) htr]',
      'Rows 4–9: As row 3. [24 (28) htr]',
    ],
    // 44 - 3 - 3 = 38; 38 - 2 - 2 * 6 = 24
    [
      [45, 49],
      [44, 48],
      [38, 42],
      [36, 40],
      [24, 28],
    ],
  ),
  uk(
    'counts that name the decreases as plain stitches',
    [...ukDc(30), 'Row 2: 1ch, dc2tog, 1dc in each dc to last 2 dc, dc2tog, turn. [29 dc]'],
    [31, 30, 28],
    // two decreases are two of the 28: the count is 1 too high
    { findings: [{ row: 2, code: 'stated-count-wrong', words: '29 dc', saying: ['29', '28', '1'] }] },
  ),
  us(
    'mesh increased with a chain at the end of the row',
    [
      'Ch 19.',
      'Row 1: Dc in 6th ch from hook (counts as dc, ch 1, sk 1), *ch 1, sk 1 ch, dc in next ch; rep from * to end, turn. (8 ch-1 sps)',
      'Row 2: Ch 4 (counts as dc, ch 1), *dc in next dc, ch 1; rep from * to last sp, dc in 4th ch of turning ch, turn. (9 dc, 8 ch-1 sps)',
    ],
    // 6th ch: 3 + 1 + 1; 19 - 6 = 13 is not even: 6 passes and 1 ch is left
    [19, null, null],
    { findings: [{ row: 1, code: ['repeat-does-not-fit', 'stitches-left-unworked'] }] },
  ),
  us(
    'mesh with a chain that fits',
    [
      'Ch 20.',
      'Row 1: Dc in 6th ch from hook, *ch 1, sk 1 ch, dc in next ch; rep from * to end, turn. (9 dc, 8 ch-1 sps)',
      'Row 2: Ch 4 (counts as dc, ch 1), sk first dc and ch-1 sp, *dc in next dc, ch 1, sk next ch-1 sp; rep from * to turning ch, dc in 4th ch of beg ch, turn. (9 dc, 8 ch-1 sps)',
    ],
    [20, 9, 9],
    { spaces: [0, 8, 8] },
  ),

  // Repeats that close without "from *"
  us(
    'starred part, then repeat to end',
    [
      ...sc(41),
      'Row 2: Ch 1, sc in first st, *dc in next st, sc in next st; repeat to end, turn. (21 sc, 20 dc)',
      'Row 3: Ch 1, *sc in next st, dc in next st*, rep to last st, sc in last st, turn. (21 sc, 20 dc)',
      'Row 4: Ch 1, sc in first st. *Sc in next st, dc in next st*. Repeat to end. Turn. (21 sc, 20 dc)',
    ],
    [42, 41, 41, 41, 41],
  ),
  us(
    'no commas before the stars',
    [
      ...sc(41),
      'Row 2: Ch 1 sc in first st *sk 1, 3 dc in next st, sk 1, sc in next st* repeat to end (41 sts)',
    ],
    // 1 + 10 * 4
    [42, 41, 41],
  ),
  us(
    'loops told after and before the stitch',
    [
      'Ch 41.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (40 sc)',
      'Row 2: Ch 1, hdc blo across, turn. (40)',
      'Row 3: Ch 1, hdc-blo in each st across, turn. (40)',
      'Row 4: Ch 1, blo hdc across, turn. (40)',
      'Row 5: Ch 1, BLsc in each st across, turn. (40)',
      'Row 6: Ch 1, sc BL of each st across, turn. (40)',
      'Row 7: Ch 1, FLO: sc in each st across, turn. (40)',
    ],
    [41, 40, 40, 40, 40, 40, 40, 40],
  ),
  us(
    'next rows, so many',
    [
      ...sc(40),
      'Next 4 rows: Ch 1, sc2tog, sc in each st across, turn. (36 sts)',
      'Next 2 Rows: Ch 1, sc in each st across, turn. (36 sc)',
    ],
    [41, 40, 36, 36],
  ),
  uk(
    'only part of the row, told in short words',
    [
      ...ukDc(40),
      'Shape neck',
      'Next row: 1ch, work in dc across first 12 sts, turn, leave rem sts. [12 dc]',
      'Next row: 1ch, dc2tog, dc to end. [11 sts]',
    ],
    [41, 40, 12, 11],
  ),
  uk(
    'a bare turn with the count of the short side',
    // the count says that the row stops there
    [
      ...ukDc(40),
      'Next row: 1ch, 1dc in each of next 12 dc, turn. [12 dc]',
      'Next row: 1ch, 1dc in each dc to end, turn. [12 dc]',
    ],
    [41, 40, 12, 12],
  ),
  us(
    'first shoulder with reasons in brackets',
    [
      ...sc(40),
      'Row 2: Ch 1, sc in next 15 sts, turn, leaving remaining 25 sts for second side. (15 sc)',
      'Row 3: Ch 1, sc in each st across. Turn. Working on these 15 sts only:',
      'Row 4: Ch 1, sc in each st across. (15 sc)',
    ],
    [41, 40, 15, 15, 15],
  ),
  us(
    'foundation stitches added at the end of a row',
    [
      ...sc(40),
      'Row 2: Ch 1, sc in each st across, work 10 fsc at end of row, turn. (50 sc)',
      'Row 3: Ch 1, sc in each st across, turn. (50 sc)',
    ],
    [41, 40, 50, 50],
  ),
  uk(
    'straight decreases to the end in a sentence of their own',
    [
      ...ukDc(40),
      'Next row (dec): 1ch, dc2tog, dc to last 2 sts, dc2tog. 38 sts.',
      'Cont in dc, dec 1 st at each end of every foll 4th row until 30 sts rem.',
      'Next row: 1ch, dc to end. [30 dc]',
    ],
    { final: 30 },
  ),
  uk(
    'shape armholes, ss and straight on',
    [
      ...ukDc(40),
      'Shape armholes',
      'Next row: Ss over 4 sts, 1ch, dc to last 4 sts, turn. [32 sts]',
      'Next row: 1ch, dc2tog, dc to last 2 sts, dc2tog, turn. [30 sts]',
    ],
    [41, 40, 32, 30],
  ),
  us(
    'body goes on after a heading',
    [
      'Ribbing',
      'Ch 9.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (8 sc)',
      'Rows 2-30: Ch 1, sc in BLO of each st across, turn. (8 sc)',
      'Body',
      'Row 1: Ch 1, work 30 sc evenly along side edge of ribbing, turn. (30 sc)',
      'Row 2: Ch 3 (counts as dc), dc in each st across, turn. (30 dc)',
      'Yoke',
      'Row 3: Ch 1, sc in each st across, turn. (30 sc)',
    ],
    [9, 8, 8, 30, 30, 30],
  ),
  us(
    'stitches passed over between a space and the turning chain',
    [
      'Shell = (2 dc, ch 2, 2 dc) in space.',
      ...sc(11),
      'Row 2: Ch 3 (counts as dc), sk 4 sts, (2 dc, ch 2, 2 dc) in next st, sk 4 sts, dc in last st, turn. (6 dc)',
      'Row 3: Ch 3 (counts as dc), shell in ch-2 sp, dc in top of turning ch, turn. (6 dc)',
    ],
    // 11 = 1 + 4 + 1 + 4 + 1
    [12, 11, 6, 6],
    {
      source:
        'common practice, no source: a shell worked into the space of a shell passes over its legs unsaid',
    },
  ),
  us(
    'last group in the space of the turning chain',
    [
      ...sc(9),
      'Row 2: Ch 4 (counts as dc and ch 1), sk first 2 sts, *3 dc in next st, ch 1, sk 2 sts; rep from * once more, dc in last st, turn. (8 dc, 3 ch-1 sps)',
      'Row 3: Ch 3 (counts as dc), 2 dc in first ch-1 sp, ch 1, 3 dc in next ch-1 sp, ch 1, 3 dc in turning-ch sp, turn. (9 dc)',
    ],
    // 9 = 2 + 3 * 2 + 1; 1 + 6 + 1; row 3: 1 + 2 + 3 + 3
    [10, 9, 8, 9],
    {
      source: 'common practice, no source: a group in the space of the turning chain leaves its top unworked',
    },
  ),
  us(
    'foundation chain and a turning chain apart',
    ['Ch 30, plus 1 for turning.', 'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (30 sc)'],
    [31, 30],
  ),
  us(
    'repeat of whole rows with an offset start',
    [
      ...sc(30),
      'Row 2 (Dec Row): Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. (28 sts)',
      'Row 3: Ch 1, sc in each st across, turn.',
      'Rows 4-11: Repeat Rows 2-3 four times more. (20 sts)',
      'Rows 12 and 13: Rep Dec Row. (16 sts)',
    ],
    [31, 30, 28, 28, 20, 16],
  ),
  us(
    'linen stitch, chains counted among the stitches',
    // 11 sc and 10 ch-1 sps stand over 21 chains
    [
      'Ch 22.',
      'Row 1: Sc in 2nd ch from hook, *ch 1, sk 1 ch, sc in next ch; rep from * across, turn. (21 sts, counting each ch-1 as a st)',
      'Row 2: Ch 1, sc in first st, *sc in next ch-1 sp, ch 1, sk next sc; rep from * to last 2 sts, sc in next ch-1 sp, sc in last sc, turn.',
    ],
    [22, 11, 12],
    { spaces: [0, 10, 9] },
  ),
  us(
    'granny stitch rows worked flat',
    // 23 sc: 3ch edge, (sk 2, 3 dc) ... row 2: edge, 7 groups; row 3: see
    [
      ...sc(23),
      'Row 2: Ch 3 (counts as dc), sk next st, *3 dc in next st, sk 2 sts; rep from * to last 3 sts, 3 dc in next st, sk 1 st, dc in last st, turn. (7 groups, 2 dc)',
      'Row 3: Ch 3, dc in sp between first dc and first group, 3 dc in each sp between groups across, 2 dc in last sp between last group and turning ch, turn.',
    ],
    // 23 = 2 + 3n + 3, n = 6: 7 groups of 3 and 2; row 3: 2 + 6 * 3 + 2
    [24, 23, 23, 22],
  ),
  uk(
    'filet in blocks and spaces, UK wording',
    [
      'Make 35ch.',
      '1st row: 1tr into 8th ch from hook, *2ch, miss 2ch, 1tr into next ch, rep from * to end. [10 spaces]',
      '2nd row: 5ch (count as 1tr, 2ch), miss 1st tr, 1tr into next tr, *2tr into next 2ch-sp, 1tr into next tr, 2ch, 1tr into next tr, rep from * to end, working last tr into 3rd of 7ch at beg of previous row.',
    ],
    // 35 - 8 = 27 = 9 * 3: 10 spaces, 11 tr; row 2: space, then (block, space) 4.5 times does not fit: 9 left
    [35, 11, null],
    { findings: [{ row: 2, code: 'repeat-does-not-fit' }] },
  ),
  uk(
    'fan stitch with a dictionary heading',
    [
      'Multiple of 8 sts + 1 (add 1 for base chain).',
      'Make 34 ch.',
      '1st row (right side): work 1dc into 2nd ch from hook, *miss 3ch, 7tr into next ch, miss 3ch, 1dc into next ch; rep from * to end, turn.',
      '2nd row: 3ch (count as 1tr), 1tr into first st, *3ch, miss 3tr, 1dc into next tr, 3ch, miss 3tr, (1tr, 1ch, 1tr) into next dc; rep from * to end, omitting 1ch and last tr at end of last rep, turn.',
    ],
    // 33 = 1 + 4 * 8: 28 + 5; row 2: the last V is 1 tr: 2 + 4 dc + 3 * 2 + 1 = 13
    [34, 33, 13],
  ),
  us(
    'V-neck divided at the middle',
    // 33: 16, skip 1, 16
    [
      ...sc(33),
      'Left Front',
      'Row 2: Ch 1, sc in next 14 sc, sc2tog, turn, leaving rem 17 sc unworked. (15 sts)',
      'Row 3: Ch 1, sc in each st across, turn. (15 sts)',
      'Right Front',
      'Row 2: Sk next unworked st of Row 1, join yarn with sl st in next st, ch 1, sc2tog beginning in same st, sc in each st across, turn. (15 sts)',
    ],
    [34, 33, 15, 15, 15],
  ),
  us(
    'double crochet shells with sc, edge told as half shell',
    [
      'Half Shell: 3 dc in same st.',
      'Full shell: 5 dc in same st.',
      ...sc(19),
      'Row 2: Ch 3, 2 dc in same st as turning ch (half shell made), *sk 2 sts, sc in next st, sk 2 sts, 5 dc in next st; rep from * across, ending with 3 dc in last st, turn.',
    ],
    // 19 = 1 + 6 * 3: 3 + 3 sc + 2 * 5 + 3
    [20, 19, 19],
  ),
  uk(
    'groups of trebles between groups, spaces between stitches',
    [
      'Make 23ch.',
      'Row 1: 1dc in 2nd ch from hook, 1dc in next ch, *2ch, miss 2ch, 1dc in next ch; rep from * to last 2ch, 1dc in each of last 2ch, turn. [10 dc, 6 2ch-sps]',
      'Row 2: 3ch (counts as 1tr), 3tr in each 2ch-sp to end, 1tr in last dc, turn. [20 tr]',
      'Row 3: 3ch (counts as 1tr), 1tr in same st, 3tr in each sp between groups to end, 2tr in top of 3ch, turn. [19 tr]',
    ],
    // 22 = 2 + 3 * 6 + 2: 2 + 6 + 2; 1 + 18 + 1; 2 + 5 * 3 + 2
    [23, 10, 20, 19],
  ),
  us(
    'rib of the cuff in back loops, then along its side',
    [
      'Cuff: Ch 9.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (8 sc)',
      'Rows 2-36: Ch 1, sc in BLO of each sc across, turn. (8 sc)',
      'Do not fasten off. Ch 1, rotate to work along long edge.',
      'Row 1: Work 36 sc evenly along side edge of cuff, working 1 sc in end of each row, turn. (36 sc)',
      'Row 2: Ch 3 (counts as dc), dc in each st across, turn. (36 dc)',
    ],
    { final: 36 },
  ),
  us(
    'counts with remain and there are',
    [
      ...sc(30),
      'Row 2: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn—28 sts remain.',
      'Row 3: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. 26 sts rem.',
      'Row 4: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. There are now 24 sts.',
      'Row 5: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. (2 sts decreased; 22 sts)',
      'Row 6: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. [2 sts inc’d; 24 sts total]',
      'Row 7: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. (+2, 26 sts)',
      'Row 8: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. Inc 2; 28 sc.',
    ],
    [31, 30, 28, 26, 24, 22, 24, 26, 28],
  ),
  uk(
    'dart in short rows of heights',
    [
      ...ukDc(24),
      'Row 2: 1ch, 1dc in each of next 8 sts, ss in next st, turn, leaving rem sts unworked.',
      'Row 3: 1ch, miss ss, 1dc in each of next 8 sts, turn.',
      'Row 4: 1ch, 1dc in each dc to end of short row, 1dc in ss, 1dc in each rem st of Row 1, turn. [24 dc]',
    ],
    // 8 + 1 + 15
    [25, 24, null, 8, 24],
  ),
  us(
    'corner to corner blocks',
    [
      'Ch 6.',
      'Row 1: Dc in 4th ch from hook, dc in next 2 chs, turn. (1 block)',
      'Row 2: Ch 6, dc in 4th ch from hook, dc in next 2 chs, (sl st, ch 3, 3 dc) in ch-3 sp of previous block, turn. (2 blocks)',
    ],
    [6, 4, null],
  ),
  uk(
    'second side of neck, rejoin to next free st',
    // 50: 18 + 14 + 18
    [
      ...ukDc(50),
      '2nd row: 1ch, 1dc in each of first 18 sts, turn and complete this side first.',
      '3rd row: 1ch, dc2tog, 1dc in each dc to end, turn. [17 sts]',
      '4th row: 1ch, 1dc in each st to last 2 sts, dc2tog. Fasten off. [16 sts]',
      'With RS facing, miss centre 14 sts, rejoin yarn to next st and work as follows:',
      'Next row: 1ch, 1dc in same place as join, 1dc in each dc to end, turn. [18 sts]',
      'Next row: 1ch, 1dc in each st to last 2 sts, dc2tog, turn. [17 sts]',
    ],
    [51, 50, 18, 17, 16, 18, 17],
  ),
  us(
    'work in pattern as established',
    [
      ...sc(21),
      'Row 2: Ch 1, sc in first sc, *dc in next sc, sc in next sc; rep from * across, turn. (11 sc, 10 dc)',
      'Row 3: Ch 3 (counts as dc), *sc in next dc, dc in next sc; rep from * across, turn. (10 sc, 11 dc)',
      'Rows 4-11: Work even in established pattern, repeating Rows 2 and 3.',
      'Row 12: Rep Row 2. (21 sts)',
    ],
    [22, 21, 21, 21, 21, 21],
  ),
  uk(
    'older printed style, each told with into',
    [
      'Commence with 26 ch.',
      '1st row: Miss 1 ch, 1 d.c. into each ch to end. [25 d.c.]',
      '2nd row: 3 ch, miss 1 d.c., 1 tr. into each of next 3 d.c., * 1 ch, miss 1 d.c., 1 tr. into each of next 3 d.c.; rep. from * to last d.c., 1 tr. into last d.c.',
    ],
    // 3 ch is a tr, then 3: 4; 25 - 4 - 1 = 20 = 5 * 4: 15 tr; last 1: 20 tr, 5 sps
    [26, 25, 20],
    { spaces: [0, 0, 5] },
  ),
];
