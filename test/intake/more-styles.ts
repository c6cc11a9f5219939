/**
 * Old patterns to be brought in, each in the style of yet another house: books in columns, capitals, blocks for each
 * size, rounds in lists, filet. All are invented. Their counts were worked out by hand from the words.
 */
import type { OldPattern } from './old-patterns.ts';

const capitals: OldPattern = {
  style: 'everything in capitals, sizes in three kinds of brackets, dashes behind the labels',
  terms: 'us',
  title: 'THE GANNET VEST',
  sizes: ['XS', 'S', 'M', 'L', 'XL', '2XL'],
  text: `THE GANNET VEST
a design by Orla Penhallow

SIZES XS {S} (M, L) [XL, 2XL]

FINISHED CHEST 86 {94} (102, 110) [118, 126] CM

MATERIALS
FEN ARAN, 100 G / 160 M: 4 {4} (5, 5) [6, 6] BALLS
HOOK 5.5 MM
TAPESTRY NEEDLE

GAUGE 14 HDC X 10 ROWS = 10 CM

ABBREVIATIONS (US)
CH = CHAIN
HDC = HALF DOUBLE CROCHET
SL ST = SLIP STITCH
ST = STITCH
SK = SKIP
RS = RIGHT SIDE

BACK
CH 62 {68} (74, 78) [84, 90].
ROW 1 (RS) - HDC IN 3RD CH FROM HOOK AND IN EACH CH ACROSS, TURN. (60 {66} (72, 76) [82, 88] HDC)
ROW 2 - CH 2 (DOES NOT COUNT AS A ST), HDC IN EACH ST ACROSS, TURN.
ROWS 3-30 - REP ROW 2.
ROW 31 - SL ST IN FIRST 4 {4} (5, 5) [6, 6] STS, CH 2, HDC IN EACH ST TO LAST 4 {4} (5, 5) [6, 6] STS, TURN. (52 {58} (62, 66) [70, 76] HDC)
ROWS 32-48 - REP ROW 2.
FASTEN OFF.

FRONT
WORK AS FOR BACK.

FINISHING
SEW SHOULDER SEAMS. SEW SIDE SEAMS.
`,
  // 2 chains passed over are no stitch; 4 {4} (5, 5) [6, 6] and as many again stay behind at the armholes.
  pieces: ['BACK', 'FRONT'].map((name) => ({
    name,
    counts: [
      [62, 68, 74, 78, 84, 90],
      [60, 66, 72, 76, 82, 88],
      [60, 66, 72, 76, 82, 88],
      [60, 66, 72, 76, 82, 88],
      [52, 58, 62, 66, 70, 76],
      [52, 58, 62, 66, 70, 76],
    ],
  })),
  also: ({ about, lines, gauges, notions }) => [
    about.designer,
    lines.map(({ name }) => name),
    gauges.map(({ stitches, rows }) => [stitches, rows]),
    notions.length,
  ],
  expected: ['Orla Penhallow', ['finished chest'], [[14, 10]], 1],
};

const columns: OldPattern = {
  style: 'columns of a book, words parted at the ends of lines, a running head with its page',
  terms: 'uk',
  title: 'Teasel Cushion',
  sizes: ['One size'],
  text: `Merrow & Fell Collection No. 4                                        18
Teasel Cushion
by Ivo Larksworth
UK crochet terms are used through-
out.
MATERIALS
4 x 50g balls of Merrow Cotton DK
(125m) in Straw
4mm crochet hook
40cm cushion pad
TENSION
17 tr and 9 rows to 10cm over treble
fabric using a 4mm hook.
MEASUREMENTS
Approx. 40cm x 40cm.
ABBREVIATIONS
ch = chain; dc = double crochet; tr =
treble; ss = slip stitch; st = stitch; rep
= repeat; RS = right side; WS = wrong
side.
FRONT
Using a 4mm hook, make 70ch.
Row 1: (RS) 1tr in 4th ch from hook
(missed 3ch count as 1tr), 1tr in each
ch to end, turn. (68 tr)
Row 2: 3ch (counts as 1tr), miss first
tr, 1tr in each tr to end, working last
tr in top of turning chain, turn.
Row 3: 1ch (does not count as a st),
1dc in each tr to end, turn. (68 dc)
Row 4: 3ch (counts as 1tr), miss first
dc, 1tr in each dc to end, turn.
Rep Rows 3 and 4 until work mea-
sures 40cm, ending with a Row 3.
Fasten off.
Merrow & Fell Collection No. 4                                        19
BACK
Work as given for Front.
TO MAKE UP
Place front and back to-
gether with WS facing and join with dc
around three sides. Insert cush-
ion pad and join the fourth side.
`,
  // 3 of 70 chains are passed over and stand for a treble: 68, and no row changes that.
  pieces: ['FRONT', 'BACK'].map((name) => ({ name, counts: [70, 68, 68, 68, 68] })),
  also: ({ about, abbreviations, yarns, notes, finishing }) => ({
    designer: about.designer,
    rep: abbreviations.rep,
    metres: Object.values(yarns[0]!.metres),
    notes: notes.length,
    finishing: finishing.map(({ text }) => text),
  }),
  expected: {
    designer: 'Ivo Larksworth',
    rep: 'repeat',
    // 4 balls of 125 m.
    metres: [500],
    notes: 1,
    finishing: [
      'Place front and back together with WS facing and join with dc around three sides. Insert cushion pad and join the fourth side.',
    ],
  },
};

const evenRows: OldPattern = {
  style: '"Row 2 and all even-numbered rows", odd rows alone after it',
  terms: 'us',
  title: 'Larkspur Table Runner',
  sizes: ['One size'],
  text: `Larkspur Table Runner

Skill level: easy
US terms

Finished size: 12 x 48 inches

You need: 300 yards of fingering weight cotton; steel hook size 1.75 mm; yarn needle.

Gauge: 28 sts and 14 rows = 4 inches in pattern

Pattern notes: Chain-3 at the beginning of a row counts as first double crochet. Multiple of 4 + 2, plus 2 for the turning chain.

Runner

Ch 86.

Row 1: Dc in 4th ch from hook and in each ch across. Turn. (84 dc)

Row 2 and all even-numbered rows: Ch 1, sc in each st across. Turn. (84 sc)

Row 3: Ch 3, dc in next st, *sk 1 st, 2 dc in next st; rep from * to last 2 sts, dc in last 2 sts. Turn. (84 dc)

Row 5: Ch 3, dc in each st across. Turn. (84 dc)

Row 7: Ch 3, dc in each st across. Turn. (84 dc)

Row 9: Ch 3, dc in each st across. Turn. (84 dc)

Fasten off. Weave in ends.
`,
  // 3 of 86 chains are passed over and count: 84. Row 3 has 2, 40 pairs over 80 stitches, and 2. Rows 4, 6 and 8 are Row 2.
  pieces: [{ name: 'Runner', counts: [86, 84, 84, 84, 84, 84, 84, 84, 84, 84] }],
};

const table: OldPattern = {
  style: 'a table of the sizes by numbers, hooks with their purposes in brackets, "as row 2"',
  terms: 'us',
  title: 'Bracken Cardi-Wrap',
  sizes: ['1', '2', '3'],
  text: `Bracken Cardi-Wrap

Terms: US

Size	To fit bust (cm)	To fit bust (in)	Length (cm)
1	86	34	50
2	96	38	52
3	106	42	54

Yarn: Hollow Sport, 50 g = 180 m, 900 (1000, 1100) m
Hooks: 4 mm (main), 3.5 mm (edging)

Gauge: 18 sc x 20 rows = 10 cm square

Main panel

Foundation: ch 91 (101, 111)
Row 1: sc in 2nd ch from hook, sc in each ch to end, turn – 90 (100, 110) sc
Row 2: ch 1, sc in each sc to end, turn – 90 (100, 110) sc
Row 3 to 60 (64, 68): as row 2

Neck edging

With 3.5 mm hook
Row 1: join yarn at corner, ch 1, work 54 (58, 62) sc evenly along side edge, turn – 54 (58, 62) sc
Row 2: ch 1, sc in each sc, turn – 54 (58, 62) sc
Fasten off
`,
  pieces: [
    {
      name: 'Main panel',
      counts: [
        [91, 101, 111],
        [90, 100, 110],
        [90, 100, 110],
        [90, 100, 110],
      ],
    },
    {
      name: 'Neck edging',
      counts: [
        [54, 58, 62],
        [54, 58, 62],
      ],
    },
  ],
  also: ({ hooks, yarns }) => [
    hooks.map(({ mm, purpose }) => [mm, purpose]),
    Object.values(yarns[0]!.metres),
  ],
  expected: [
    [
      [4, 'main'],
      [3.5, 'edging'],
    ],
    [900, 1000, 1100],
  ],
};

const bySize: OldPattern = {
  style: 'a block of rows for each size, and then all together',
  terms: 'uk',
  title: 'Dunlin Mittens',
  sizes: ['Child', 'Adult small', 'Adult large'],
  text: `Dunlin Mittens

UK terminology

To fit: Child (Adult small, Adult large)
Hand circumference 15 (18, 21) cm

Yarn: 60 (80, 100) g of DK wool
Hook: 4mm
Tension: 18 dc x 20 rounds = 10 cm

Cuff and hand (make 2)

Child size only
Make 28 ch, ss in first ch to form a ring.
Round 1: 1 ch, 1 dc in each ch around, ss in first dc. (28 dc)
Rounds 2-20: 1 ch, 1 dc in each dc around, ss in first dc. (28 dc)

Adult small only
Make 32 ch, ss in first ch to form a ring.
Round 1: 1 ch, 1 dc in each ch around, ss in first dc. (32 dc)
Rounds 2-24: 1 ch, 1 dc in each dc around, ss in first dc. (32 dc)

Adult large only
Make 36 ch, ss in first ch to form a ring.
Round 1: 1 ch, 1 dc in each ch around, ss in first dc. (36 dc)
Rounds 2-28: 1 ch, 1 dc in each dc around, ss in first dc. (36 dc)

All sizes
Next round: 1 ch, *dc2tog, 1 dc in each of next 2 dc; rep from * around, ss in first st. (21 (24, 27) sts)
Fasten off. Weave in ends.
`,
  // Each size has its own ring and rounds; then every 4 stitches become 3.
  pieces: [
    {
      name: 'Cuff and hand',
      make: 2,
      counts: [
        ...[28, 28, 28, 28].map((count) => [count, null, null]),
        ...[32, 32, 32, 32].map((count) => [null, count, null]),
        ...[36, 36, 36, 36].map((count) => [null, null, count]),
        [21, 24, 27],
      ],
    },
  ],
};

const rounds: OldPattern = {
  style: 'toy, rounds as numbers with a bracket, counts in square ones, abbreviations with the letters Abbr.',
  terms: 'us',
  title: 'PIP THE DORMOUSE',
  sizes: ['One size'],
  text: `*** PIP THE DORMOUSE ***
(c) Moss & Thimble, personal use only

You will need:
- DK cotton in fawn (main) and cream
- hook 2.5mm
- 6mm safety eyes x2
- fibrefill
- stitch marker

Abbr. (US): MR = magic ring, sc = single crochet, inc = 2 sc in one st, dec = invisible decrease, sl st = slip stitch, FO = fasten off, BLO = back loops only

HEAD (fawn)
1) 6 sc in MR [6]
2) inc x6 [12]
3) (sc, inc) x6 [18]
4) (2 sc, inc) x6 [24]
5-8) sc around (4 rounds) [24]
Place eyes between rounds 6 and 7, 5 sts apart.
9) (2 sc, dec) x6 [18]
10) (sc, dec) x6 [12]
Stuff.
11) dec x6 [6]
FO, close the hole.

BODY (fawn)
1) 6 sc in MR [6]
2) inc x6 [12]
3) BLO sc around [12]
4)-6) sc around [12]
FO, leave a tail for sewing.

EAR x2 (cream)
1) 5 sc in MR, don't join, ch 1, turn [5]
2) inc in each st [10]
FO.

TAIL
Ch 15, sl st in 2nd ch from hook and in each ch [14]. FO.

ASSEMBLY
Sew everything together.
`,
  pieces: [
    { name: 'HEAD (fawn)', counts: [6, 12, 18, 24, 24, 24, 18, 12, 6] },
    { name: 'BODY (fawn)', counts: [6, 12, 12, 12, 12] },
    { name: 'EAR (cream)', make: 2, counts: [5, 10] },
    { name: 'TAIL', counts: [14] },
  ],
  also: ({ notions, abbreviations }) => [notions.map(({ name }) => name), abbreviations.FO],
  expected: [['6mm safety eyes x2', 'fibrefill', 'stitch marker'], 'fasten off'],
};

const filet: OldPattern = {
  style: 'filet, its mesh and block explained line by line',
  terms: 'us',
  title: 'Heron Filet Curtain',
  sizes: ['One size'],
  text: `Heron Filet Curtain

US crochet terms.

Materials
Size 10 crochet cotton, 400 yards
1.65 mm steel hook

Gauge
12 mesh and 13 rows = 4 inches (10 cm)

Special Stitches
Open mesh (om): ch 2, sk next 2 sts, dc in next dc
Block (bl): dc in next 3 sts

Curtain

Row 1: Ch 63, dc in 4th ch from hook and in each ch across, turn. (61 dc)

Row 2: Ch 3 (counts as first dc), dc in next 3 dc, om 18 times, dc in next 3 dc, turn. (18 om)

Row 3: Ch 3, dc in next 3 dc, *ch 2, dc in next dc; rep from * 17 more times, dc in next 3 dc, turn.

Row 4: Ch 3, dc in next 3 dc, *2 dc in next ch-2 sp, dc in next dc; rep from * across to last 3 dc, dc in last 3 dc, turn. (61 dc)

Fasten off.
`,
  // 61; then 4 and 3 at the ends and 18 alone with 2 chains before each: 25. All spaces filled again: 25 and 36.
  pieces: [{ name: 'Curtain', counts: [61, 25, 25, 61] }],
  also: ({ specials }) => specials.map(({ nameUs, abbrUs, text }) => [nameUs, abbrUs, text.text]),
  expected: [
    ['Open mesh', 'om', 'ch 2, sk next 2 sts, dc in next dc'],
    ['Block', 'bl', 'dc in next 3 sts'],
  ],
};

const atTheSameTime: OldPattern = {
  style: 'a sleeve in pattern as set, shaped at the same time',
  terms: 'us',
  title: 'Sandling Cardigan Sleeve',
  sizes: ['Small', 'Medium', 'Large'],
  text: `Sandling Cardigan Sleeve

A sleeve with shaping at both sides.

US terms
Sizes: Small (Medium, Large)

Yarn: DK, 4 (4, 5) balls of 50 g, 120 m each
Hook: US G-6 (4 mm)

Gauge: 16 dc and 9 rows = 4 in

Sleeve (make 2)

Ch 40 (44, 48).

Row 1 (WS): Dc in 4th ch from hook (skipped ch count as dc) and in each ch across, turn. 38 (42, 46) dc.

Row 2: Ch 3 (counts as dc), dc in each st across, turn.

Inc row: Ch 3, dc in same st, dc in each st across to last st, 2 dc in last st, turn. 40 (44, 48) dc.

Work in pattern as set, AT THE SAME TIME, inc 1 st at each end of every 4th row 5 (5, 6) times. 50 (54, 60) dc.

Work even until sleeve measures 17 (17½, 18) in.

Shape cap
Next row: Sl st in first 5 (5, 6) sts, ch 3, dc in each st across to last 4 (4, 5) sts, turn. 42 (46, 50) dc.
Next row: Ch 3, dc2tog, dc in each st across to last 3 sts, dc2tog, dc in last st, turn. 40 (44, 48) dc.
Rep last row 4 (5, 6) times. 32 (34, 36) dc.
Fasten off.
`,
  // 2 more in the increase row, 2 more 5 (5, 6) times; 4 (4, 5) at either end of the cap; 2 fewer, and 4 (5, 6) times 2.
  pieces: [
    {
      name: 'Sleeve',
      make: 2,
      counts: [
        [40, 44, 48],
        [38, 42, 46],
        [38, 42, 46],
        [40, 44, 48],
        [50, 54, 60],
        [50, 54, 60],
        [42, 46, 50],
        [40, 44, 48],
        [32, 34, 36],
      ],
    },
  ],
};

const pointers: OldPattern = {
  style: 'pointers behind the labels, counts in curly brackets, two rows joined by a sign',
  terms: 'uk',
  title: 'FURZE SHAWLETTE',
  sizes: ['One size'],
  text: `FURZE SHAWLETTE
- - - - - - - - - - - -
TERMS: UK | LEVEL: Beginner
YARN: 1 x 100g skein, Hob 4ply, 400m
HOOK: 4.00mm
TENSION: not critical

Set-up row » 4ch, 2tr in 4th ch from hook, turn. {3 tr}
Row 1 » 3ch (counts as tr), 2tr in st at base of ch, 1tr, 3tr in last st, turn. {7 tr}
Row 2 » 3ch, 2tr in st at base of ch, tr to last st, 3tr in last st, turn. {11 tr}
Row 3 » 3ch, 2tr in st at base of ch, tr to last st, 3tr in last st, turn. {15 tr}
Row 4 » 1ch, dc in each st, turn. {15 dc}
Rows 5 & 6 » rep Rows 2 & 3. {23 tr}

Edging » ss in first st, *5ch, miss 1 st, ss in next st* rep to end.

Block to size.
`,
  // 4 more in every row of trebles; the edging has a slip stitch in the first and in each of 11 pairs.
  pieces: [{ name: 'FURZE SHAWLETTE', counts: [3, 7, 11, 15, 15, 23, 12] }],
};

const angles: OldPattern = {
  style: 'hat, counts between angle brackets, rounds for some sizes, a part that goes on under its own head',
  terms: 'uk',
  title: 'QUILLON HAT',
  sizes: ['Baby', 'Child', 'Adult'],
  text: `QUILLON HAT
UK terms

Sizing
Baby / Child / Adult
Circumference: 40 / 48 / 56 cm

You will need
Yarn A: 50/70/90 g aran, grey
Yarn B: 20 g aran, rust
5mm hook

Tension 14 tr = 10cm

Crown
Using A, make a magic ring.
Round 1. 3ch, 11tr in ring, join. <12>
Round 2. 3ch, 1tr in same place, 2tr in each tr round, join. <24>
Round 3. 3ch, 2tr in next tr, *1tr in next tr, 2tr in next tr* to end, join. <36>
Round 4. 3ch, 1tr in next tr, 2tr in next tr, *1tr in each of next 2 tr, 2tr in next tr* to end, join. <48>
Round 5. Child and Adult only: 3ch, 1tr in each of next 2 tr, 2tr in next tr, *1tr in each of next 3 tr, 2tr in next tr* to end, join. <- / 60 / 60>
Round 6. Adult only: 3ch, 1tr in each of next 3 tr, 2tr in next tr, *1tr in each of next 4 tr, 2tr in next tr* to end, join. <- / - / 72>

Sides
Next 7 / 9 / 11 rounds. 3ch, 1tr in each tr round, join. <48 / 60 / 72>
Change to B.
Next round. 1ch, 1dc in each tr round, join. <48 / 60 / 72>
Fasten off.
`,
  // 12 more in every round, as far as the size goes.
  pieces: [
    {
      name: 'Crown and Sides',
      counts: [0, 12, 24, 36, 48, [null, 60, 60], [null, null, 72], [48, 60, 72], [48, 60, 72], [48, 60, 72]],
    },
  ],
  also: ({ lines, gauges, yarns }) => [
    lines.map(({ name }) => name)[0],
    gauges.map(({ stitches }) => stitches),
    yarns.map(({ key }) => key),
  ],
  expected: ['circumference', [14], ['A', 'B']],
};

export const moreStyles: readonly OldPattern[] = [
  capitals,
  columns,
  evenRows,
  table,
  bySize,
  rounds,
  filet,
  atTheSameTime,
  pointers,
  angles,
];
