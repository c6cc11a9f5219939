/**
 * Old patterns to be brought in, each in the style of yet another house: leaflets with stops and dashes, blogs with
 * small pictures, tables of two units, steps, lists of the sizes. All are invented. Their counts were worked out by
 * hand from the words.
 */
import { study } from '../../core/study/index.ts';
import { blockLabel } from '../../core/study/labels.ts';
import type { OldPattern } from './old-patterns.ts';

const leaflet: OldPattern = {
  style: 'leaflet, heads with a stop and a dash, abbreviations with stops',
  terms: 'uk',
  title: 'THE LINNET MATINEE COAT',
  sizes: ['3 months', '6 months', '9 months'],
  text: `THE LINNET MATINEE COAT
To fit a baby of 3 months (6 months, 9 months)

MATERIALS.—4 (4, 5) ozs. of Merrow 3-ply Baby Wool. A No. 11 (3 mm.) crochet hook. 3 small buttons. 1 yd. of ribbon.

MEASUREMENTS.—Chest, 18 (19, 20) ins. Length, 10 (10½, 11) ins. Sleeve seam, 5½ (6, 6½) ins.

TENSION.—6 tr. to 1 in.

ABBREVIATIONS.—Ch., chain; s.s., slip stitch; d.c., double crochet; tr., treble; st., stitch; rep., repeat; beg., beginning; rem., remain.

Note.—The turning chain counts as the first stitch throughout.

THE BACK.—Make 59 (63, 67) ch.
1st row.—1 tr. into 4th ch. from hook, 1 tr. into each ch. to end, turn. 57 (61, 65) tr.
2nd row.—3 ch., miss 1st tr., 1 tr. into each tr. to end, turn.
Rep. the 2nd row until work measures 6 (6½, 7) ins. from beg.
Shape armholes. Next row.—S.s. over 4 tr., 3 ch., 1 tr. into each tr. to last 3 tr., turn. 51 (55, 59) tr.
Work 8 rows straight. Fasten off.

THE SLEEVES (both alike).—Make 35 (37, 39) ch.
1st row.—1 tr. into 4th ch. from hook, 1 tr. into each ch. to end, turn. 33 (35, 37) tr.
2nd row.—3 ch., 1 tr. into st. at base of ch., 1 tr. into each tr. to last tr., 2 tr. into last tr., turn. 35 (37, 39) tr.
Fasten off.

TO MAKE UP.—Press lightly with a warm iron over a damp cloth. Join side and sleeve seams. Sew on buttons.
`,
  // Two of the chains passed over stand with one for a treble; 4 and 3 trebles stay at the armholes: 6 fewer.
  pieces: [
    {
      name: 'THE BACK',
      counts: [
        [59, 63, 67],
        [57, 61, 65],
        [57, 61, 65],
        [57, 61, 65],
        [51, 55, 59],
        [51, 55, 59],
      ],
    },
    {
      name: 'THE SLEEVES',
      make: 2,
      counts: [
        [35, 37, 39],
        [33, 35, 37],
        [35, 37, 39],
      ],
    },
  ],
  also: ({ lines, notions, sizes }) => [
    lines.map(({ name }) => name),
    notions.map(({ name, amount, cord }) => [name, amount, cord]),
    sizes.map(({ age }) => age),
  ],
  expected: [
    ['chest', 'length', 'sleeve seam'],
    [
      ['small buttons', { all: 3 }, false],
      ['yd. of ribbon', { all: 1 }, true],
    ],
    [
      [0.25, 0.25],
      [0.5, 0.5],
      [0.75, 0.75],
    ],
  ],
};

const pictures: OldPattern = {
  style: 'blog with small pictures about its heads, a colour changed between rounds',
  terms: 'us',
  title: 'Bramble the Hedgehog 🦔 – Free Crochet Pattern',
  told: ['spiral-not-said'],
  sizes: ['One size'],
  text: `Bramble the Hedgehog 🦔 – Free Crochet Pattern

Hi makers! I'm so happy to share my little hedgehog with you. He is about 9 cm tall and loves apples. 🍎

⭐ MATERIALS ⭐
🧶 Yarn: DK cotton (50 g = 125 m)
   • Colour A: brown – 25 g
   • Colour B: cream – 15 g
🪝 Hook: 2.5 mm
👀 Safety eyes: 6 mm (2 pcs)
✂️ Scissors, tapestry needle, stuffing

⭐ ABBREVIATIONS (US terms) ⭐
mr – magic ring
ch – chain
sc – single crochet
inc – increase (2 sc in the same stitch)
dec – invisible decrease
sl st – slip stitch
(..) x 6 – repeat 6 times
[12] – stitches at the end of the round

⭐ BODY ⭐ (start with cream)
R1: 6 sc in mr [6]
R2: inc x 6 [12]
R3: (1 sc, inc) x 6 [18]
R4: (2 sc, inc) x 6 [24]
R5–R8: sc in all 24 st [24]
Change to brown.
R9: (3 sc, inc) x 6 [30]
R10–R12: sc in all 30 st [30]
Place the eyes between R6 and R7, with 6 stitches between them.
R13: (3 sc, dec) x 6 [24]
R14: (2 sc, dec) x 6 [18]
Start stuffing.
R15: (1 sc, dec) x 6 [12]
R16: dec x 6 [6]
Fasten off and weave in the end.

⭐ EARS ⭐ (make 2 – brown)
R1: 6 sc in mr [6]
R2: sc in all 6 st [6]
Fasten off, leaving a long tail for sewing.

⭐ FEET ⭐ (make 4 – cream)
R1: 5 sc in mr [5]
R2: (inc) x 5 [10]
Sl st in the next st. Fasten off.

⭐ ASSEMBLY ⭐
1. Sew the ears between R9 and R10.
2. Sew the feet to R5.

Thank you for crocheting with me! Please don't sell or share this pattern. 💛
`,
  // 6 more in each round of increases, and 6 fewer in each of decreases.
  pieces: [
    {
      name: 'BODY (start with cream)',
      counts: [6, 12, 18, 24, 24, 24, 30, 30, 30, 24, 18, 12, 6],
    },
    { name: 'EARS (brown)', make: 2, counts: [6, 6] },
    { name: 'FEET (cream)', make: 4, counts: [5, 10] },
  ],
  also: ({ pieces, notions }) => [
    // The colour is changed behind the rounds that are worked again, not in the first of them.
    pieces[0]!.blocks.slice(4, 7).map(({ type }) => type),
    notions.map(({ name, amount }) => [name, amount]),
  ],
  expected: [
    ['row', 'repeat', 'prose'],
    [
      ['Safety eyes: 6 mm', { all: 2 }],
      ['Scissors', null],
      ['tapestry needle', null],
      ['stuffing', null],
    ],
  ],
};

const leaders: OldPattern = {
  style: 'sizes by letters over a table of two units, counts behind leading dots',
  terms: 'uk',
  title: 'BANKSIA BOLERO',
  told: ['piece-without-rows', 'piece-not-put-together'],
  sizes: ['A', 'B', 'C', 'D', 'E'],
  text: `BANKSIA BOLERO
Sizes A (B, C, D, E)

Size                 A     B     C     D     E
To fit bust    cm   80    90   100   110   120
               in   32    36    40    44    48
Garment measures cm 86    96   106   116   126
Length         cm   40    41    43    44    46
Sleeve length  cm   12    12    13    13    14

YOU WILL NEED
Merrow 8 ply cotton (50g balls, 113m): 5 (6, 7, 7, 8) balls
4.00mm crochet hook
Wool needle
Two 20mm buttons

TENSION
17 sts and 10 rows to 10cm over trebles, using 4.00mm hook.

This pattern is written in Australian/UK terms.

SPECIAL ABBREVIATIONS
tr2tog = [yoh, draw up a loop in next st, yoh, draw through 2 loops] twice, yoh, draw through all 3 loops.

BACK
Make 75 (83, 92, 100, 109) ch.
1st Row: 1tr in 4th ch from hook, 1tr in each ch to end ..... 73 (81, 90, 98, 107) tr.
2nd Row: 3ch, miss 1st tr, 1tr in each tr to end, working last tr in 3rd of 3ch.
Rep 2nd row 18 (19, 20, 20, 21) times.
Shape Armholes
Next Row: Ss across first 5 (6, 7, 8, 9) tr, 3ch, 1tr in each tr to last 4 (5, 6, 7, 8) tr, turn ..... 65 (71, 78, 84, 91) tr.
Rep 2nd row 16 (16, 17, 18, 18) times.
Fasten off.

RIGHT FRONT
Make 38 (42, 47, 51, 55) ch.
1st Row: 1tr in 4th ch from hook, 1tr in each ch to end ..... 36 (40, 45, 49, 53) tr.
2nd Row: 3ch, miss 1st tr, 1tr in each tr to end, working last tr in 3rd of 3ch.
Rep 2nd row 18 (19, 20, 20, 21) times.
Fasten off.

LEFT FRONT
Work to correspond with Right Front.

MAKE UP
Do not press. Using backstitch, join seams.
`,
  // 3 of the chains stand for a treble: 2 fewer; 5 (6, 7, 8, 9) less the one that 3ch stands on, and 4 (5, 6, 7, 8).
  pieces: [
    {
      name: 'BACK',
      counts: [
        [75, 83, 92, 100, 109],
        [73, 81, 90, 98, 107],
        [73, 81, 90, 98, 107],
        [73, 81, 90, 98, 107],
        [65, 71, 78, 84, 91],
        [65, 71, 78, 84, 91],
      ],
    },
    {
      name: 'RIGHT FRONT',
      counts: [
        [38, 42, 47, 51, 55],
        [36, 40, 45, 49, 53],
        [36, 40, 45, 49, 53],
        [36, 40, 45, 49, 53],
      ],
    },
    { name: 'LEFT FRONT', counts: [] },
  ],
  also: ({ lines, yarns, notions, notes, specials }) => [
    lines.map(({ name }) => name),
    Object.values(yarns[0]!.metres),
    notions.map(({ name, amount }) => [name, amount]),
    notes.length,
    specials[0]!.text.text.slice(0, 4),
  ],
  expected: [
    ['body bust', 'garment measures', 'length', 'sleeve length'],
    // 5 (6, 7, 7, 8) balls of 113 m.
    [565, 678, 791, 791, 904],
    [
      ['Wool needle', null],
      ['20mm buttons', { all: 2 }],
    ],
    0,
    '[yoh',
  ],
};

const ranges: OldPattern = {
  style: 'ranges to fit, a ball in square brackets, a count behind a long dash',
  terms: 'us',
  title: 'Kestrel Raglan',
  told: ['yarn-not-fastened-off', 'finishing-not-given'],
  sizes: ['XS', 'S', 'M', 'L', 'XL'],
  text: `Kestrel Raglan

SKILL LEVEL: Intermediate

SIZES
XS (S, M, L, XL)
Sample shown in size S with 4" of positive ease.

MEASUREMENTS
To Fit Bust: 28–30 (32–34, 36–38, 40–42, 44–46) in / 71–76 (81–86, 91.5–96.5, 101.5–106.5, 112–117) cm
Finished Bust: 34 (38, 42, 46, 50) in / 86.5 (96.5, 106.5, 117, 127) cm
Finished Length: 22 (22½, 23, 23½, 24) in / 56 (57, 58.5, 59.5, 61) cm

YARN
Harrier Worsted [100% Superwash Merino; 218 yd/200 m per 3½ oz/100 g]: Heather, 5 (5, 6, 7, 7) skeins

HOOK
Size H-8 (5 mm), or size needed to obtain gauge

NOTIONS
Locking stitch markers (4); yarn needle

GAUGE
14 hdc and 11 rnds = 4" [10 cm] in half double crochet, after blocking.

PATTERN NOTES
• Yoke is worked in joined rounds from the neck down.
• Ch 2 at beg of rnd does not count as a stitch.

SPECIAL STITCHES
Inc corner: (hdc, ch 1, hdc) in indicated sp.

YOKE
Ch 68 (72, 76, 76, 80); being careful not to twist, join with sl st to form a ring.
Rnd 1 (RS): Ch 2, hdc in each of next 22 (24, 26, 26, 28) ch, ch 1, hdc in each of next 12 ch, ch 1, hdc in each of next 22 (24, 26, 26, 28) ch, ch 1, hdc in each of next 12 ch, ch 1; join with sl st in first hdc—68 (72, 76, 76, 80) hdc and 4 ch-1 sps.
Rnd 2: Ch 2, *hdc in each hdc to next ch-1 sp, (hdc, ch 1, hdc) in ch-1 sp; rep from * 3 more times, hdc in each hdc to end; join with sl st in first hdc—76 (80, 84, 84, 88) hdc and 4 ch-1 sps.
Rnds 3–14 (15, 16, 18, 20): Rep Rnd 2—172 (184, 196, 212, 232) hdc and 4 ch-1 sps at end of last rnd.

SLEEVES (make 2)
Ch 40 (42, 46, 50, 54); join with sl st to form a ring.
Rnd 1: Ch 2, hdc in each ch around; join with sl st in first hdc—40 (42, 46, 50, 54) hdc.
Rnds 2–40: Ch 2, hdc in each st around; join with sl st in first hdc.
Fasten off.

FINISHING
Weave in ends. Block to measurements.
`,
  // 8 more in each of 1 + 12 (13, 14, 16, 18) rounds.
  pieces: [
    {
      name: 'YOKE',
      counts: [
        [68, 72, 76, 76, 80],
        [68, 72, 76, 76, 80],
        [76, 80, 84, 84, 88],
        [172, 184, 196, 212, 232],
      ],
    },
    {
      name: 'SLEEVES',
      make: 2,
      counts: Array.from({ length: 4 }, () => [40, 42, 46, 50, 54]),
    },
  ],
  also: ({ lines, yarns, hooks, notions }) => [
    lines.map(({ name }) => name),
    [yarns[0]!.name, yarns[0]!.ballMetres, Object.values(yarns[0]!.metres)],
    hooks.map(({ mm, purpose }) => [mm, purpose]),
    notions.map(({ name, amount }) => [name, amount]),
  ],
  expected: [
    ['body bust from', 'body bust up to', 'finished bust', 'finished length', 'yoke repeated rows'],
    ['Harrier Worsted: Heather', 200, [1000, 1000, 1200, 1400, 1400]],
    [[5, 'or size needed to obtain gauge']],
    [
      ['Locking stitch markers', { all: 4 }],
      ['yarn needle', null],
    ],
  ],
};

const steps: OldPattern = {
  style: 'steps by numbers with a gap behind, the sizes in the title',
  terms: 'uk',
  title: 'Rope Basket, small (large)',
  told: ['spiral-not-said'],
  sizes: ['small', 'large'],
  text: `Rope Basket, small (large)
Pattern by Tamsin Oddfellow, 2019. All rights reserved.

What you need
  T-shirt yarn: 120 (200) m
  9 mm hook
  a stitch marker
Size: about 15 (20) cm across and 10 (14) cm high

Words used (UK): ch, chain; dc, double crochet; ss, slip stitch

How to make the base
 1  With 9 mm hook make a slip ring. Work 6 dc into the ring. (6)
 2  2 dc in each st. (12)
 3  *1 dc, 2 dc in next; rep from * 5 more times. (18)
 4  *2 dc, 2 dc in next; rep from * 5 more times. (24)
 5  *3 dc, 2 dc in next; rep from * 5 more times. (30)
    Large size only:
 6  *4 dc, 2 dc in next; rep from * 5 more times. (36)

How to make the side
 Next round  Working in back loops only, 1 dc in each st. (30, 36)
 Work 7 (10) rounds of dc.
 Handle round  5 (6) dc, 5 ch, miss 5 sts, 10 (13) dc, 5 ch, miss 5 sts, 5 (7) dc. 
 Last round  1 dc in each dc, 5 dc in each ch loop. (30, 36)
 Ss in next st, cut yarn, weave in.
`,
  // 6 more in each round; 5 chains over 5 twice are 10 fewer, and all again.
  pieces: [
    {
      name: 'How to make the base and How to make the side',
      counts: [6, 12, 18, 24, 30, [null, 36], [30, 36], [30, 36], [20, 26], [30, 36]],
    },
  ],
  also: ({ lines, yarns, hooks, notions }) => [
    lines.map(({ name }) => name),
    Object.values(yarns[0]!.metres),
    hooks.map(({ mm, purpose }) => [mm, purpose]),
    notions.map(({ name }) => name),
  ],
  expected: [['across', 'height'], [120, 200], [[9, '']], ['stitch marker']],
};

const colours: OldPattern = {
  style: 'yarn and its colours on one line, a motif in three colours',
  terms: 'uk',
  title: 'SUNDIAL HEXAGON THROW',
  told: ['pieces-in-words-off'],
  sizes: ['One size'],
  text: `SUNDIAL HEXAGON THROW
Designed by Perrin Ashlock for Hob & Daughters

Difficulty **
Size  One size, 110 x 130 cm, 68 hexagons
Yarn  Hob Aran (100g/200m); 3 balls in A Teal, 3 balls in B Straw, 5 balls in C Chalk
Hook  5mm
Tension  One hexagon measures 15 cm from edge to edge.
Notes  This pattern uses UK crochet terms throughout. Beg 3-ch counts as 1tr throughout.

Hexagon
With A, make 6ch, ss into 1st ch to form a ring.
Rnd 1: 3ch, 1tr into ring, 1ch, (2tr, 1ch) 5 times into ring, ss into 3rd of 3-ch. Fasten off A. 12 tr, 6 ch-sps
Rnd 2: Join B in any ch-sp, 3ch, (1tr, 1ch, 2tr) into same sp, *1tr into each of next 2 tr, (2tr, 1ch, 2tr) into next ch-sp; rep from * 4 times, 1tr into each of next 2 tr, ss into 3rd of 3-ch. Fasten off B. 36 tr, 6 ch-sps
Rnd 3: Join C in any ch-sp, 3ch, (1tr, 1ch, 2tr) into same sp, *1tr into each of next 6 tr, (2tr, 1ch, 2tr) into next ch-sp; rep from * 4 times, 1tr into each of next 6 tr, ss into 3rd of 3-ch. Fasten off. 60 tr, 6 ch-sps

Making up
Lay the hexagons out and join with dc in C.
Border
Join C in any st, work 1 round of dc evenly around the edge.
`,
  // 12; then 2 and 4 on each of six sides, then 6 and 4.
  pieces: [{ name: 'Hexagon', counts: [6, 12, 36, 60] }],
  also: ({ yarns }) => yarns.map(({ key, name, metres }) => [key, name, metres['size-1']]),
  expected: [
    ['A', 'Hob Aran, Teal', 600],
    ['B', 'Hob Aran, Straw', 600],
    ['C', 'Hob Aran, Chalk', 1000],
  ],
};

const sock: OldPattern = {
  style: 'sock in three parts, each on the one before, rows until a flap has so many',
  terms: 'us',
  title: 'Peat Bog Socks',
  told: ['turning-chain-placed-two-ways', 'yarn-not-fastened-off'],
  sizes: ['Child', 'Women', 'Men'],
  text: `Peat Bog Socks
v1.2 · March 2021 · Wick & Warren

Sizes: Child [Women, Men]
Foot circumference: 18 [22, 26] cm
Yarn: any sock yarn, 60 [90, 110] g (75% wool / 25% nylon; 420 m / 100 g)
Hooks: 2.5 mm and 3 mm
Gauge: 26 sc × 30 rounds = 10 × 10 cm with the larger hook

US terms. Worked from the cuff down, in spirals.

CUFF (2.5 mm hook)
Ch 13.
Row 1. Sc in 2nd ch from hook and in each ch across. Ch 1, turn. (12 sts)
Row 2. Sc in back loop of each st across. Ch 1, turn. (12 sts)
Rows 3–44 [52, 60]. Repeat Row 2.
Sl st the last row and the foundation together.

LEG (3 mm hook)
Round 1. Work 44 [52, 60] sc along the row ends of the cuff. (44 [52, 60] sts)
Rounds 2–25 [30, 35]. Sc in each st around.

HEEL FLAP
Row 1. Sc in next 22 [26, 30] sts, turn, leaving the rest for the instep. (22 [26, 30] sts)
Row 2. Ch 1, sc in each st across, turn.
Repeat Row 2 until the flap has 16 [20, 24] rows.
`,
  // 12 of 13 chains; as many round the ends of 44 [52, 60] rows; half of them for the heel.
  pieces: [
    { name: 'CUFF (2.5 mm hook)', counts: [13, 12, 12, 12] },
    { name: 'LEG (3 mm hook)', counts: Array.from({ length: 3 }, () => [44, 52, 60]) },
    { name: 'HEEL FLAP', counts: Array.from({ length: 3 }, () => [22, 26, 30]) },
  ],
  also: ({ pieces, lines }) => [
    pieces.map(({ start }) => (start.kind === 'edges' ? start.edges[0]!.kind : start.kind)),
    lines.map(({ name }) => name),
  ],
  expected: [
    ['chain', 'row-ends', 'top'],
    ['foot circumference', 'cuff repeated rows', 'leg repeated rows'],
  ],
};

const translated: OldPattern = {
  style: 'translated style: ROW 1 = 3 dc, from *-* the whole row',
  terms: 'us',
  title: 'Bay Wrap / shawl',
  sizes: ['One size'],
  text: `Bay Wrap / shawl

English (US) terms

Measures: Width: 180 cm. Height: 70 cm.
Materials: Ingeborg Wool Thin from Fjord (lace weight) 50 g = 400 m: 100 g light grey no. 07.
Hook: 3.5 mm
Crochet tension: 20 dc x 10 rows = 10 x 10 cm.

CROCHET INFORMATION:
Replace the first dc at the beginning of the row with 3 ch.

PATTERN:
The shawl is worked from one corner.

SHAWL:
Work 4 ch with hook size 3.5 mm.
ROW 1: Work 2 dc in 4th ch from hook = 3 dc. Turn.
ROW 2: 3 ch, 1 dc in first dc, 1 dc in next dc, 2 dc in last dc = 5 dc. Turn.
ROW 3: 3 ch, 1 dc in first dc, 1 dc in each dc until 1 dc remains, 2 dc in last dc = 7 dc. Turn.
Repeat ROW 3 until there are 61 dc on the row.
Now work the edge:
EDGE ROW 1: Work 1 sc in first dc, * 5 ch, skip 3 dc, 1 sc in next dc *, work from *-* the whole row = 15 ch-spaces. Turn.
EDGE ROW 2: Work 1 ch, skip first sc, * 5 sc in next ch-space, skip 1 sc *, work from *-* the whole row = 75 sc. Cut and fasten the yarn.
`,
  // 2 more in each row up to 61; then 15 loops over 60, and 5 in each of them.
  pieces: [
    { name: 'SHAWL', counts: [4, 3, 5, 7, 61] },
    { name: 'Now work the edge', counts: [16, 75] },
  ],
  also: ({ lines, gauges, notes, hooks }) => [
    lines.map(({ name }) => name),
    gauges.map(({ stitches, rows }) => [stitches, rows]),
    notes.map(({ text }) => text),
    hooks.length,
  ],
  expected: [
    ['width', 'height'],
    [[20, 10]],
    ['Replace the first dc at the beginning of the row with 3 ch.', 'The shawl is worked from one corner.'],
    1,
  ],
};

const listed: OldPattern = {
  style: 'a list of the sizes with the head of each, numbers between slashes in labels too',
  terms: 'us',
  title: 'MOLE HILL BEANIE',
  told: ['spiral-not-said'],
  sizes: ['Baby', 'Child', 'Adult'],
  text: `MOLE HILL BEANIE

Available sizes:
 - Baby (head 40 cm)
 - Child (head 48 cm)
 - Adult (head 56 cm)
Numbers are given as Baby / Child / Adult.

Finished circumference: 36 / 44 / 52 cm. Height: 15 / 18 / 21 cm.

Supplies:
1 / 1 / 1 ball worsted weight yarn (100 g, 170 m)
Crochet hooks 5 mm + 5.5 mm
Faux fur pompom (optional)

Gauge: 14 hdc × 11 rows to 10 cm with 5.5 mm hook

Brim (5 mm)
Chain 8 / 9 / 10.
Row 1: 1 sc in 2nd chain from hook and in every chain. Turn. [7 / 8 / 9]
Row 2: Chain 1. 1 sc blo in every stitch. Turn. [7 / 8 / 9]
Row 3 to 50 / 62 / 72: Same as row 2.
Join the short ends.

Body (5.5 mm)
Round 1: Chain 1. Work 50 / 62 / 72 hdc around the edge of the brim. Slip stitch to join. [50 / 62 / 72]
Round 2: Chain 1. 1 hdc in every stitch. Slip stitch to join. [50 / 62 / 72]
Round 3 to 14 / 17 / 20: Same as round 2.
Decrease round 1: Chain 1. *(1 hdc, hdc2tog)* to last 2 / 2 / 0 stitches, hdc in last 2 / 2 / 0. [34 / 42 / 48]
Decrease round 2: Chain 1. hdc2tog all around. Slip stitch to join. [17 / 21 / 24]
Cut yarn, thread it through the stitches and pull tight.
`,
  // (1, 2 together) 16 / 20 / 24 times and 2 / 2 / 0 more; then halved.
  pieces: [
    {
      name: 'Brim (5 mm)',
      counts: [
        [8, 9, 10],
        [7, 8, 9],
        [7, 8, 9],
        [7, 8, 9],
      ],
    },
    {
      name: 'Body (5.5 mm)',
      counts: [
        [50, 62, 72],
        [50, 62, 72],
        [50, 62, 72],
        [34, 42, 48],
        [17, 21, 24],
      ],
    },
  ],
  also: ({ lines, hooks }) => [lines.map(({ name }) => name), hooks.map(({ mm, purpose }) => [mm, purpose])],
  expected: [
    ['head', 'finished circumference', 'height', 'brim repeated rows', 'body repeated rows'],
    [
      [5, ''],
      [5.5, ''],
    ],
  ],
};

const tabs: OldPattern = {
  style: 'a table between tabs with the yarn of each size, a thumb round, next rounds as another',
  terms: 'us',
  title: 'Tide Line Wristers',
  sizes: ['S', 'M', 'L'],
  text: `Tide Line Wristers
	S	M	L
Hand	17 cm	19 cm	21 cm
Length	12.5 cm	12.5 cm	14 cm
Yarn	45 g	50 g	60 g

Yarn: Dulse Sport (100% wool), 328 yds / 300 m per 100 g
Hook: US E/4 (3.5 mm)
Gauge: 22 sts / 16 rows in hdc = 4 inches

US abbreviations: ch chain, hdc half double crochet, sl st slip stitch, st(s) stitch(es), flo front loop only

Wrister – make two
Foundation: Ch 36 (40, 44), sl st to first ch, without twisting.
Rnd 1: Ch 1, hdc in each ch around, sl st to first hdc. 36 (40, 44) hdc
Rnd 2: Ch 1, hdc flo around, sl st to first hdc.
Rnds 3-12: As Rnd 2.
Thumb rnd: Ch 1, hdc in next 2 sts, ch 6 (7, 8), sk 6 (7, 8) sts, hdc to end, sl st to first hdc. 30 (33, 36) hdc, 1 ch-sp
Next rnd: Ch 1, hdc in each st and ch around, sl st to first hdc. 36 (40, 44) hdc
Next 6 (6, 8) rnds: As Rnd 2.
Fasten off.
`,
  // 6 (7, 8) chains over as many: 6 (7, 8) fewer, and all again.
  pieces: [
    {
      name: 'Wrister',
      make: 2,
      counts: [
        [36, 40, 44],
        [36, 40, 44],
        [36, 40, 44],
        [36, 40, 44],
        [30, 33, 36],
        [36, 40, 44],
        [36, 40, 44],
      ],
    },
  ],
  also: ({ yarns, notes }) => [
    yarns.map(({ name, ballMetres, metres }) => [name, ballMetres, Object.values(metres)]),
    notes.length,
  ],
  expected: [
    // 45 (50, 60) g of 300 m to 100 g.
    [['Dulse Sport', 300, [135, 150, 180]]],
    0,
  ],
};

const inPassing: OldPattern = {
  style: 'a set-up row before Row 1, and a stitch that the rows name in passing',
  terms: 'us',
  title: 'Teasel Scarf',
  sizes: ['One size'],
  text: `Teasel Scarf
US terms
Hook: 5 mm

Ch 32.
Set-up row: Sc in 2nd ch from hook and in each ch across, turn. (31 sc)
Row 1: Ch 1, sc in first st, *sk 2 sts, (3 dc, ch 1, 3 dc) in next st (shell made), sk 2 sts, sc in next st; rep from * across, turn. (5 shells, 6 sc)
Row 2: Ch 3, *shell in ch-1 sp of next shell, ch 1, dc in next sc; rep from * across, turn. (5 shells)
Rep Row 2 for a total of 20 rows.
Fasten off.
`,
  // 5 * 6 and 6; then ch 3 and 5 * (6 and 1), the shells met again in each row
  pieces: [{ name: 'Teasel Scarf', counts: [32, 31, 36, 36, 36] }],
  also: (pattern) => {
    const [piece] = study(pattern).pieces;
    return [
      pattern.specials.map(({ nameUs, text }) => [nameUs, text.text]),
      piece!.blocks.map((block) => blockLabel(piece!, block)?.text ?? null).slice(0, 5),
    ];
  },
  expected: [
    [['shell', '(3 dc, ch 1, 3 dc) in next st']],
    ['Foundation', 'Set-up row', 'Row 1', 'Row 2', 'Rows 3–20'],
  ],
};

const nested: OldPattern = {
  style: 'lists in the brackets of counts, buttons for each size under the hook',
  terms: 'uk',
  title: "Heron's Nest Cardigan",
  told: ['yarn-not-fastened-off'],
  sizes: ['2', '4', '6', '8'],
  text: `Heron's Nest Cardigan
Sizes: 2 [4, 6, 8] yrs
Finished chest: 60 [64, 69, 74] cm

Yarn: Marsh DK (50g = 120m), 5 [6, 7, 8] balls Sea Green
Hook: 4mm
5 [5, 6, 6] buttons, 12 mm

Tension: 18 tr x 10 rows = 10cm

UK terms

BACK
Ch 56 [60, 65, 69].
Row 1: Tr in 4th ch from hook and each ch to end. [54 [58, 63, 67] tr]
Row 2: Ch 3, tr in each tr to end. Turn.
Rows 3-14 [16, 18, 20]: as row 2.

Armholes:
Next row: Sl st over 4 sts, ch 3, tr to last 4 sts, turn. [47 [51, 56, 60] tr]
Next row: Ch 3, tr2tog, tr to last 3 sts, tr2tog, tr in last st. [45 [49, 54, 58] tr]
Work 8 [9, 10, 11] rows straight.
Fasten off.

LEFT FRONT
Ch 29 [31, 33, 35].
Row 1: Tr in 4th ch from hook and each ch to end. [27 [29, 31, 33] tr]
Rows 2-14 [16, 18, 20]: Ch 3, tr in each tr to end. Turn.

BUTTON BAND
With RS facing, join yarn to lower edge of left front.
Row 1: Work 40 [44, 48, 52] dc evenly up front edge, turn.
Row 2: Ch 1, dc in each dc. Turn. [40 [44, 48, 52] dc]
Buttonhole row: Ch 1, dc in first 2 dc, *ch 2, miss 2 dc, dc in next 6 dc; rep from * 3 more times, dc to end.
Fasten off.

FINISHING
Sew shoulder and side seams. Sew on buttons.
`,
  // 2 fewer than chains; 3 and 4 stay at the armholes, then 2 go; 8 of the band are left behind 4 gaps.
  pieces: [
    {
      name: 'BACK and Armholes',
      counts: [
        [56, 60, 65, 69],
        [54, 58, 63, 67],
        [54, 58, 63, 67],
        [54, 58, 63, 67],
        [47, 51, 56, 60],
        [45, 49, 54, 58],
        [45, 49, 54, 58],
      ],
    },
    {
      name: 'LEFT FRONT',
      counts: [
        [29, 31, 33, 35],
        [27, 29, 31, 33],
        [27, 29, 31, 33],
        [27, 29, 31, 33],
      ],
    },
    {
      name: 'BUTTON BAND',
      counts: [
        [40, 44, 48, 52],
        [40, 44, 48, 52],
        [32, 36, 40, 44],
      ],
    },
  ],
  also: ({ notions, hooks }) => [
    notions.map(({ name, amount }) => [name, amount]),
    hooks.map(({ mm, purpose }) => [mm, purpose]),
  ],
  expected: [
    [['buttons, 12 mm', { each: { 'size-1': 5, 'size-2': 5, 'size-3': 6, 'size-4': 6 } }]],
    [[4, '']],
  ],
};

const dashed: OldPattern = {
  style: 'small letters, counts behind a long dash, the ends woven in behind the last',
  terms: 'us',
  title: 'COPPER BEECH COWL',
  sizes: ['One size'],
  text: `COPPER BEECH COWL
Pattern no. 27

A squishy cowl in one skein.

What you'll need
1 skein Thicket Bulky, 100 g, 100 m, 100% wool
8 mm hook
darning needle

Finished size 60 cm around, 25 cm high

Stitch count multiple: any multiple of 3

Instructions (US)
Foundation: fhdc 60, join to first st with sl st.
Round 1: ch 2 (doesn't count as a stitch), hdc in same stitch and in each stitch around, join. — 60 hdc
Round 2: ch 2, *fpdc around next st, hdc in next 2 sts* around, join. — 60 sts
Round 3: ch 2, *fpdc around fpdc, hdc in next 2 hdc* around, join. — 60 sts
Repeat round 3 until 12 rounds are done.
Last round: ch 1, sc in each st around, join, fasten off. — 60 sc
Weave in ends.
`,
  // Nothing changes the 60.
  pieces: [{ name: 'COPPER BEECH COWL', counts: [60, 60, 60, 60, 60, 60] }],
  also: ({ lines, pieces }) => [
    lines.map(({ name }) => name),
    pieces[0]!.blocks.map((block) => (block.type === 'prose' ? block.text.text : '')).at(-1),
  ],
  expected: [['circumference', 'height'], 'Weave in ends.'],
};

const shortRounds: OldPattern = {
  style: 'rounds as Rd, letters of colours under their yarn, copies as 2x',
  terms: 'us',
  title: 'Little Lamb Lovey',
  told: ['abbreviation-not-explained'],
  sizes: ['One size'],
  text: `Little Lamb Lovey
Materials
Cuddle Cotton — 50 g/ 125 m
  - White (W) x 2
  - Grey (G) x 1
Hook 3 mm
Eyes 8 mm (2)

Stitches: mc, sc, inc, dec, sl (US terms)

Notes
Rounds are worked in spirals. Fasten off every piece.

Head (G)
Rd 1: 6 sc in mc
Rd 2: 6 inc (12)
Rd 3: (1 sc, 1 inc) x 6 (18)
Rd 4: (2 sc, 1 inc) x 6 (24)
Rd 5-9: 24 sc
Rd 10: (2 sc, 1 dec) x 6 (18)
Insert the eyes between rd 7 and 8.
Rd 11: (1 sc, 1 dec) x 6 (12)
Rd 12: 6 dec (6)
Close.

Ear (G, 2x)
Rd 1: 6 sc in mc (6)
Rd 2: 6 inc (12)
Rd 3-6: 12 sc (12)
Fold flat: 6 sc through both layers (6)

Blanket (W)
Ch 3
Row 1: 2 dc in 3rd ch from hook, turn (3)
Row 2: ch 2, 2 dc in first st, 1 dc in next st, 2 dc in last st, turn (5)

Assembly
Sew the ears to the head, and the head to the middle of the blanket.
`,
  pieces: [
    { name: 'Head (G)', counts: [6, 12, 18, 24, 24, 24, 18, 12, 6] },
    { name: 'Ear (G)', make: 2, counts: [6, 12, 12, 12, 6] },
    { name: 'Blanket (W)', counts: [3, 3, 5] },
  ],
  also: ({ yarns, notions, abbreviations }) => [
    yarns.map(({ key, name, metres }) => [key, name, metres['size-1']]),
    notions.map(({ name, amount }) => [name, amount]),
    Object.keys(abbreviations),
  ],
  expected: [
    [
      ['W', 'Cuddle Cotton, White', 250],
      ['G', 'Cuddle Cotton, Grey', 125],
    ],
    [['Eyes 8 mm', { all: 2 }]],
    [],
  ],
};

export const furtherStyles: readonly OldPattern[] = [
  leaflet,
  pictures,
  leaders,
  ranges,
  steps,
  colours,
  sock,
  translated,
  listed,
  tabs,
  inPassing,
  nested,
  dashed,
  shortRounds,
];
