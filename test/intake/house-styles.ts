/**
 * More old patterns to be brought in, each in the style of another house: magazines, leaflets, blogs, wrappers. All
 * are invented. Their counts were worked out by hand from the words.
 */
import type { OldPattern } from './old-patterns.ts';

const magazine: OldPattern = {
  style: 'magazine, sizes in square brackets with colons, a second unit in round ones',
  terms: 'uk',
  title: 'HEATHCOTE SLIPOVER',
  sizes: ['81 cm', '86 cm', '91 cm', '97 cm', '102 cm'],
  text: `HEATHCOTE SLIPOVER
Design: Pella Thornquist

A neat slipover in half treble for cool evenings.

MEASUREMENTS
To fit bust      81 [86:91:97:102] cm (32 [34:36:38:40] in)
Actual bust      88 [93:98:104:109] cm (34½ [36½:38½:41:43] in)
Length           52 [53:54:55:56] cm (20½ [21:21¼:21¾:22] in)
Figures in square brackets [ ] refer to larger sizes; where there is only one set of figures this applies to all sizes.

MATERIALS
6 [6:7:7:8] 50g balls of Merrow Soft 4-ply (170m per ball) in Sage 412
3.00mm crochet hook
4 stitch markers

TENSION
24 htr and 18 rows to 10cm measured over half treble fabric using 3.00mm hook, or size required to obtain correct tension.

ABBREVIATIONS
beg, beginning; ch, chain; cont, continue; htr, half treble; rep, repeat; RS, right side; ss, slip stitch; st(s), stitch(es); tog, together; WS, wrong side.

BACK
Using 3.00mm hook make 107 [113:119:127:133] ch.
Foundation row (RS): 1 htr into 3rd ch from hook (missed 2 ch do not count as a st), 1 htr into each ch to end, turn. 105 [111:117:125:131] sts.
1st row: 2 ch (does not count as a st), 1 htr into each htr to end, turn.
Rep 1st row until back measures 34 [34:35:35:36] cm from beg, ending with a WS row.
Shape armholes
Next row: Ss into each of first 6 [6:7:8:8] sts, 2 ch, 1 htr into each st to last 6 [6:7:8:8] sts, turn. 93 [99:103:109:115] sts.
Next row: 2 ch, htr2tog, 1 htr into each st to last 2 sts, htr2tog, turn. 91 [97:101:107:113] sts.
Next row: 2 ch, 1 htr into each st to end, turn.
Rep last row until armholes measure 18 [19:19:20:20] cm.
Fasten off.

FRONT
Work as given for Back.

TO MAKE UP
Join shoulder seams. Join side seams.
`,
  // 2 chains passed over are no stitch; 6 [6:7:8:8] and as many again stay behind at the armholes, then 2 go.
  pieces: [
    {
      name: 'BACK',
      counts: [
        [107, 113, 119, 127, 133],
        [105, 111, 117, 125, 131],
        [105, 111, 117, 125, 131],
        [105, 111, 117, 125, 131],
        [93, 99, 103, 109, 115],
        [91, 97, 101, 107, 113],
        [91, 97, 101, 107, 113],
        [91, 97, 101, 107, 113],
      ],
    },
    {
      name: 'FRONT',
      counts: [
        [107, 113, 119, 127, 133],
        [105, 111, 117, 125, 131],
        [105, 111, 117, 125, 131],
        [105, 111, 117, 125, 131],
        [93, 99, 103, 109, 115],
        [91, 97, 101, 107, 113],
        [91, 97, 101, 107, 113],
        [91, 97, 101, 107, 113],
      ],
    },
  ],
  also: ({ lines, yarns, notions, abbreviations }) => ({
    lines: lines.map(({ kind, name }) => [kind, name]),
    metres: Object.values(yarns[0]!.metres),
    ball: [yarns[0]!.ballGrams, yarns[0]!.ballMetres],
    notions: notions.map(({ name, amount }) => [name, amount]),
    beg: abbreviations.beg,
  }),
  expected: {
    lines: [
      ['body', 'body bust'],
      ['typed', 'actual bust'],
      ['typed', 'length'],
    ],
    // 6 [6:7:7:8] balls of 170 m.
    metres: [1020, 1020, 1190, 1190, 1360],
    ball: [50, 170],
    notions: [['stitch markers', { all: 4 }]],
    beg: 'beginning',
  },
};

const leaflet: OldPattern = {
  style: 'leaflet of long ago, heads with a stop and a dash, stops behind the letters',
  terms: 'uk',
  title: 'THE ROSEMARY BED-JACKET',
  sizes: ['One size'],
  text: `THE ROSEMARY BED-JACKET
Leaflet No. 212. Price 6d.

MATERIALS.—8 ozs. of Lorrimer 3-ply wool; a No. 9 crochet hook; 1½ yards of narrow ribbon.
MEASUREMENTS.—To fit a 34 to 36 inch bust. Length from shoulder, 20 inches.
TENSION.—6 trebles to 1 inch; 3 rows of trebles to 1 inch.
ABBREVIATIONS.—Ch., chain; d.c., double crochet; tr., treble; s.s., slip stitch; st., stitch; ins., inches.

THE BACK.
Commence with 98 ch.
1st Row.—1 tr. into the 4th ch. from the hook, 1 tr. into each ch. to end, turn. (96 tr.)
2nd Row.—3 ch. (to stand for 1st tr.), miss 1st tr., 1 tr. into each tr. to end, working the last tr. into the top of the turning ch., turn.
3rd Row.—1 ch., 1 d.c. into each tr. to end, turn.
4th Row.—3 ch., miss 1st d.c., 1 tr. into each d.c. to end, turn.
Repeat the 3rd and 4th rows 12 times.
Next Row.—S.s. over 8 tr., 3 ch., 1 tr. into each tr. to last 7 tr., turn.
Work 2 rows in tr. without shaping. Fasten off.

THE SLEEVES (both alike).
Commence with 50 ch.
1st Row.—1 d.c. into the 2nd ch. from the hook, 1 d.c. into each ch. to end, turn. (49 d.c.)
2nd Row.—1 ch., 2 d.c. into 1st d.c., 1 d.c. into each d.c. to last d.c., 2 d.c. into last d.c., turn. (51 d.c.)
3rd to 10th Rows.—1 ch., 1 d.c. into each d.c. to end, turn.
Fasten off.

TO MAKE UP.
Press lightly on the wrong side with a warm iron over a damp cloth. Sew up the seams. Run the ribbon through the neck.
`,
  // 98 chains, 3 passed over stand for a treble: 96. 8 trebles passed with slip stitches, of which the last is the place of the chain, 7 left: 82.
  pieces: [
    { name: 'THE BACK', counts: [98, 96, 96, 96, 96, 96, 82, 82] },
    { name: 'THE SLEEVES', make: 2, counts: [50, 49, 51, 51, 51] },
  ],
  also: ({ hooks, gauges, finishing }) => [
    hooks.map(({ mm }) => mm),
    gauges.map(({ stitches, rows, width }) => [stitches, rows, width]),
    finishing.length,
  ],
  expected: [[3.5], [[6, 3, { value: 1, unit: 'in' }]], 1],
};

const blog: OldPattern = {
  style: 'blog, small pictures before heads and items, steps with numbers',
  terms: 'us',
  title: 'The Willowbrook Headband',
  sizes: ['One size'],
  text: `🌿 Free Crochet Pattern: The Willowbrook Headband 🌿

Hi friends! I'm so excited to share this quick make with you today. It works up in an evening and it makes a lovely gift.

📏 Size
One size, about 4 in x 20 in (10 cm x 51 cm)

🧶 What You'll Need
✨ Worsted weight yarn (#4), about 90 yards
✨ 5.0 mm (H-8) crochet hook
✨ Tapestry needle
✨ Scissors

📐 Gauge
16 sts x 10 rows = 4 in in pattern

📖 Stitches & Abbreviations (US Terms)
✨ ch – chain
✨ sc – single crochet
✨ hdc – half double crochet
✨ st/sts – stitch/stitches
✨ BLO – back loop only

💡 Notes
✨ The ch 1 at the start of a row does not count as a stitch.
✨ Turn at the end of every row.

Let's Get Started!

Step 1: The Band

Chain 17.

Row 1: Hdc in the 2nd chain from the hook and in each ch across. Turn. (16 hdc)

Row 2: Ch 1, hdc in BLO of each st across. Turn. (16 hdc)

Rows 3-50: Repeat Row 2. (16 hdc)

Fasten off, leaving a long tail for sewing.

Step 2: The Cuff

Chain 7.

Row 1: Sc in the 2nd chain from the hook and in each ch across. Turn. (6 sc)

Rows 2-12: Ch 1, sc in each st across. Turn. (6 sc)

Fasten off.

🪡 Finishing
1. Sew the short ends of the band together.
2. Wrap the cuff around the seam.
3. Sew the ends of the cuff together and weave in all ends.

Happy hooking! 💚
If you make one, tag me!
`,
  // Chains less one.
  pieces: [
    { name: 'Step 1: The Band', counts: [17, 16, 16, 16] },
    { name: 'Step 2: The Cuff', counts: [7, 6, 6, 6] },
  ],
  also: ({ hooks, gauges, yarns, notions, notes, finishing }) => ({
    hooks: hooks.map(({ mm }) => mm),
    gauge: gauges.map(({ stitches, rows }) => [stitches, rows]),
    yarn: yarns.map(({ weight }) => weight),
    notions: notions.map(({ name }) => name),
    notes: notes.slice(0, 2).map(({ text }) => text),
    finishing: finishing.slice(0, 3).map(({ text }) => text),
  }),
  expected: {
    hooks: [5],
    gauge: [[16, 10]],
    yarn: [4],
    notions: ['Tapestry needle', 'Scissors'],
    notes: ['The ch 1 at the start of a row does not count as a stitch.', 'Turn at the end of every row.'],
    finishing: [
      '1. Sew the short ends of the band together.',
      '2. Wrap the cuff around the seam.',
      '3. Sew the ends of the cuff together and weave in all ends.',
    ],
  },
};

const toy: OldPattern = {
  style: 'toy, abbreviations between bars, colours as a list, "Rnd 3 & 4"',
  terms: 'us',
  title: 'Bramble the Hedgehog',
  sizes: ['One size'],
  text: `Bramble the Hedgehog
Amigurumi pattern by Junia Applecote
Finished size: 12 cm tall

Yarn: DK weight cotton, 50 g = 125 m
- 1 ball Oatmeal (colour A)
- 1 ball Bark (colour B)
Hook: 2.75 mm
Also: pair of 8 mm safety eyes, toy filling, yarn needle

US crochet terms
MR: magic ring | sc: single crochet | inc: increase (2 sc in one st) | dec: invisible decrease | st: stitch | FO: fasten off

Work in continuous spiral rounds unless otherwise stated.

HEAD & BODY
Start with colour A.
R1: 6 sc in MR [6]
R2: inc in each st around [12]
R3: (1 sc, inc) x 6 [18]
R4: (2 sc, inc) x 6 [24]
R5 - R7: sc in each st [24]
Change to colour B.
R8: (3 sc, inc) x 6 [30]
R9-R14: sc in each st around [30] (6 rounds)
R15: (3 sc, dec) x 6 [24]
R16: (2 sc, dec) x 6 [18]
Insert the eyes between R5 and R6. Begin to stuff.
R17: (1 sc, dec) x 6 [12]
R18: dec x 6 [6]
FO and close the hole.

EARS (make 2, colour A)
R1: 5 sc in MR [5]
R2: inc x 5 [10]
Rnd 3 & 4: sc around [10]
FO leaving a tail for sewing.

FEET - make 4
R1: 6 sc in MR [6]
R2: (sc, inc) x 3 [9]
R3: sc around [9]
sl st, FO.

ASSEMBLY
1. Sew the ears to R7.
2. Sew the feet to the underside.
3. Embroider a nose.
`,
  // Six more or six fewer in every round of increases or decreases.
  pieces: [
    { name: 'HEAD & BODY', counts: [6, 12, 18, 24, 24, 24, 30, 30, 30, 24, 18, 12, 6] },
    { name: 'EARS (colour A)', make: 2, counts: [5, 10, 10, 10] },
    { name: 'FEET', make: 4, counts: [6, 9, 9] },
  ],
  also: ({ yarns, notions, abbreviations }) => ({
    yarns: yarns.map(({ key, name, ballGrams, metres }) => [key, name, ballGrams, Object.values(metres)]),
    notions: notions.map(({ name, amount }) => [name, amount]),
    fo: abbreviations.FO,
  }),
  expected: {
    yarns: [
      ['A', 'DK weight cotton, Oatmeal (colour A)', 50, [125]],
      ['B', 'Bark (colour B)', 50, [125]],
    ],
    notions: [
      ['8 mm safety eyes', { all: 2 }],
      ['toy filling', null],
      ['yarn needle', null],
    ],
    fo: 'fasten off',
  },
};

const tabbed: OldPattern = {
  style: "a table of the sizes first, tabs between its cells, a typewriter's dashes",
  terms: 'us',
  title: 'Quarry Lane Tunic',
  sizes: ['1', '2', '3', '4', '5', '6'],
  text: `Quarry Lane Tunic

Size\t1\t2\t3\t4\t5\t6
To fit bust (in)\t32\t36\t40\t44\t48\t52
Finished bust (in)\t36\t40\t44\t48\t52\t56
Length (in)\t26\t26½\t27\t27½\t28\t28½
Yarn (yds)\t900\t1000\t1100\t1250\t1350\t1500

Sport weight yarn; E-4 (3.5 mm) hook; tapestry needle

Gauge: 20 sts and 22 rows = 4" in single crochet

Pattern is written in US terminology. Instructions are given for size 1, with sizes 2, 3, 4, 5 and 6 in parentheses.

Notes: Ch 1 at the beginning of a row does not count as a stitch.

Back Panel
Ch 91 (101, 111, 121, 131, 141).
Row 1 (RS): Sc in second ch from hook and in each remaining ch, turn--90 (100, 110, 120, 130, 140) sc.
Row 2: Ch 1, sc in each sc across, turn.
Rows 3-80 (80, 82, 82, 84, 84): Repeat Row 2.
Row 81 (81, 83, 83, 85, 85): Ch 1, sc2tog, sc in each sc to last 2 sc, sc2tog, turn--88 (98, 108, 118, 128, 138) sc.
Fasten off.

Front Panel
Work same as Back Panel.

Finishing: Sew shoulder seams. Sew side seams.
`,
  // Chains less one; a decrease at either end takes 2. The front is worked as the back.
  pieces: [
    {
      name: 'Back Panel',
      counts: [
        [91, 101, 111, 121, 131, 141],
        [90, 100, 110, 120, 130, 140],
        [90, 100, 110, 120, 130, 140],
        [90, 100, 110, 120, 130, 140],
        [88, 98, 108, 118, 128, 138],
      ],
    },
    {
      name: 'Front Panel',
      counts: [
        [91, 101, 111, 121, 131, 141],
        [90, 100, 110, 120, 130, 140],
        [90, 100, 110, 120, 130, 140],
        [90, 100, 110, 120, 130, 140],
        [88, 98, 108, 118, 128, 138],
      ],
    },
  ],
  also: ({ lines, yarns }) => [
    lines.slice(0, 3).map(({ kind, name }) => [kind, name]),
    Object.values(yarns[0]!.metres),
  ],
  expected: [
    [
      ['body', 'body bust'],
      ['typed', 'finished bust'],
      ['typed', 'length'],
    ],
    // 900 (1000, 1100, 1250, 1350, 1500) yards of 0.9144 m.
    [823, 914.4, 1005.8, 1143, 1234.4, 1371.6],
  ],
};

const slashed: OldPattern = {
  style: 'sizes and numbers with slashes and no colons, commas before decimals, yarn in grams',
  terms: 'us',
  title: 'COPPERFIELD SWEATER',
  // The sleeve is left off after six rows.
  told: ['typed-measurement-off'],
  sizes: ['XS', 'S', 'M', 'L', 'XL'],
  text: `COPPERFIELD SWEATER
Sizes XS/S/M/L/XL
Finished chest 90/98/106/114/122 cm
Length 50/52/54/56/58 cm
Sleeve length 44/44/45/45/46 cm

You need: 450/500/550/600/650 g of aran yarn (50 g = 85 m), hook 5,5 mm, stitch markers

Gauge: 13 dc x 7.5 rows = 10 x 10 cm with hook 5,5 mm

Explanation of signs: text between * * is repeated.
US terms are used.
Ch 3 at the beginning of the row counts as 1 dc.

BACK PIECE
Chain 60/65/71/76/81.
Row 1: 1 dc in the 4th ch from the hook, 1 dc in each ch to the end = 58/63/69/74/79 dc. Turn.
Row 2: ch 3, 1 dc in each dc to the end = 58/63/69/74/79 dc. Turn.
Repeat row 2 until the piece measures 30/31/32/33/34 cm.
Fasten off.

SLEEVE (make 2)
Chain 32/32/34/36/36.
Row 1: 1 dc in the 4th ch from the hook, 1 dc in each ch to the end = 30/30/32/34/34 dc. Turn.
Row 2: ch 3, 1 dc in each dc to the end. Turn.
Row 3: ch 3, 1 dc in the same dc, 1 dc in each dc until 1 dc remains, 2 dc in the last dc = 32/32/34/36/36 dc. Turn.
Rows 4-6: as row 2.
Fasten off.

ASSEMBLY
Sew the shoulder seams. Sew in the sleeves. Weave in the ends.
`,
  // 3 chains passed over are a dc: two fewer than chains. Row 3 of the sleeve gives one at either end.
  pieces: [
    {
      name: 'BACK PIECE',
      counts: [
        [60, 65, 71, 76, 81],
        [58, 63, 69, 74, 79],
        [58, 63, 69, 74, 79],
        [58, 63, 69, 74, 79],
      ],
    },
    {
      name: 'SLEEVE',
      make: 2,
      counts: [
        [32, 32, 34, 36, 36],
        [30, 30, 32, 34, 34],
        [30, 30, 32, 34, 34],
        [32, 32, 34, 36, 36],
        [32, 32, 34, 36, 36],
      ],
    },
  ],
  also: ({ lines, yarns, hooks }) => [
    lines.map(({ name }) => name),
    Object.values(yarns[0]!.metres),
    hooks.map(({ mm }) => mm),
  ],
  expected: [
    ['finished chest', 'length', 'sleeve length'],
    // 450 g at 85 m for 50 g are 765 m.
    [765, 850, 935, 1020, 1105],
    [5.5],
  ],
};

const columns: OldPattern = {
  style: 'abbreviations in two columns, rows over several lines, how a number comes about in brackets',
  terms: 'us',
  title: 'Penrose Place Mats (set of 2)',
  // Worked to 17 of its 18 inches.
  told: ['typed-measurement-off'],
  sizes: ['One size'],
  text: `Penrose Place Mats (set of 2)

Intermediate

MEASUREMENTS
Approx 13 x 18 inches each

MATERIALS
Cotton worsted weight yarn, approx 200 yds per mat. Size US I/9 (5.5 mm) crochet hook. Tapestry needle.

GAUGE
14 sc and 16 rows = 4 inches. Exact gauge is not essential.

ABBREVIATIONS
ch(s)    chain(s)              rep    repeat
dc       double crochet        sc     single crochet
RS       right side            sk     skip
sl st    slip stitch           st(s)  stitch(es)

PATTERN NOTE
Multiple of 4 sts + 1; add 1 for foundation chain.

MAT
Ch 46. (11 × 4 + 1, plus 1)
Row 1 (WS) Sc in 2nd ch from hook and each ch across. Turn. 45 sc total.
Row 2 (RS) Ch 1, sc in first sc, * sk next sc, 3 dc in
next sc, sk next sc, sc in next sc; rep from * to
end of row. Turn. 45 sts total.
Row 3 Ch 3 (counts as dc), dc in first sc, * sk next dc,
sc in next dc, sk next dc, 3 dc in next sc; rep from *
to last 4 sts, sk next dc, sc in next dc, sk next dc, 2
dc in last sc. Turn. 45 sts total.
Row 4 Ch 1, sc in first dc, * sk next dc, 3 dc in next sc, sk next dc, sc in next dc; rep from * to end, working last sc in top of turning ch. Turn.
Rep Rows 3 and 4 until mat measures 17 inches, ending with a Row 4.
Fasten off.

FINISHING
1) Weave in ends.
2) Block to measurements.
`,
  // 46 chains less one: 1 and 11 times 4. Row 3: 2, ten times 4, then 1 and 2.
  pieces: [{ name: 'MAT', counts: [46, 45, 45, 45, 45, 45] }],
  also: ({ about, hooks, finishing, abbreviations }) => [
    about.level,
    hooks.map(({ mm }) => mm),
    finishing.length,
    abbreviations,
  ],
  expected: [3, [5.5], 2, { rep: 'repeat', RS: 'right side' }],
};

const bold: OldPattern = {
  style: 'bold labels, a table between bars, counts in square brackets behind the row',
  terms: 'uk',
  title: 'The Lowmoor Cardigan',
  sizes: ['2 yrs', '4 yrs', '6 yrs', '8 yrs'],
  text: `The Lowmoor Cardigan

Child sizes: 2 yrs (4 yrs, 6 yrs, 8 yrs)

| | 2 yrs | 4 yrs | 6 yrs | 8 yrs |
|---|---|---|---|---|
| Chest, finished | 60 cm | 65 cm | 70 cm | 75 cm |
| Length | 32 cm | 36 cm | 40 cm | 44 cm |
| Sleeve | 22 cm | 26 cm | 29 cm | 33 cm |

**Yarn:** 3 (4, 4, 5) skeins of Tarn DK (100 g, 210 m; 75% wool, 25% nylon)
**Hook:** 4 mm
**Notions:** 5 (5, 6, 6) buttons, 15 mm; stitch markers; darning needle
**Tension:** 16 htr x 12 rows = 10 cm square, blocked
**Terms:** UK

**Back**

**Foundation:** ch 50 (54, 58, 62).
**Row 1:** htr in 3rd ch from hook and each ch across [48 (52, 56, 60) sts]
**Row 2:** ch 2 (does not count as st), turn, htr in each st across.
**Rows 3–24 (26, 28, 32):** as row 2.
**Row 25 (27, 29, 33):** ch 2, turn, htr2tog, htr in each st to last 2, htr2tog [46 (50, 54, 58) sts]
Fasten off.

**Left front**

**Foundation:** ch 26 (28, 30, 32).
**Row 1:** htr in 3rd ch from hook and each ch across [24 (26, 28, 30) sts]
**Rows 2–24 (26, 28, 32):** ch 2, turn, htr in each st across.
Fasten off.

**Right front**
Work as for left front.

**Button band**
Join yarn at lower edge of right front.
**Row 1:** ch 1, 36 (39, 42, 48) dc evenly up the front edge.
Fasten off.

**To finish**
1. Sew shoulder and side seams.
2. Sew on 5 (5, 6, 6) buttons.
3. Weave in ends.
`,
  // The 2 chains passed over are no stitch, which only the counts tell on the fronts.
  pieces: [
    {
      name: 'Back',
      counts: [
        [50, 54, 58, 62],
        [48, 52, 56, 60],
        [48, 52, 56, 60],
        [48, 52, 56, 60],
        [46, 50, 54, 58],
      ],
    },
    {
      name: 'Left front',
      counts: [
        [26, 28, 30, 32],
        [24, 26, 28, 30],
        [24, 26, 28, 30],
        [24, 26, 28, 30],
      ],
    },
    {
      name: 'Right front',
      counts: [
        [26, 28, 30, 32],
        [24, 26, 28, 30],
        [24, 26, 28, 30],
        [24, 26, 28, 30],
      ],
    },
    { name: 'Button band', counts: [[36, 39, 42, 48]] },
  ],
  also: ({ lines, yarns, notions, sizes }) => ({
    ages: sizes.map(({ age }) => age?.[0] ?? null),
    lines: lines.slice(0, 3).map(({ name }) => name),
    yarn: [yarns[0]!.fibre, yarns[0]!.ballGrams, Object.values(yarns[0]!.metres)],
    notions: notions.map(({ name }) => name),
  }),
  expected: {
    ages: [2, 4, 6, 8],
    lines: ['chest, finished', 'length', 'sleeve'],
    yarn: ['75% wool, 25% nylon', 100, [630, 840, 840, 1050]],
    notions: ['buttons, 15 mm', 'stitch markers', 'darning needle'],
  },
};

const months: OldPattern = {
  style: 'sizes by months, "Round 1." with a stop, a row range whose end differs by size',
  terms: 'us',
  title: 'Puddleduck Baby Bonnet',
  sizes: ['0-3 months', '3-6 months', '6-12 months'],
  text: `Puddleduck Baby Bonnet
Sizes: 0-3 months (3-6 months, 6-12 months)
Finished brim: 33 (37, 41) cm

What you need
- Baby-soft DK acrylic, 1 ball (50 g / 150 m)
- 4 mm hook
- 60 cm of ribbon

Gauge
18 hdc x 13 rows = 10 cm x 10 cm.

Abbreviations (US)
ch: chain, hdc: half double crochet, sl st: slip stitch, st: stitch

The ch-2 at the beginning of each round does not count as a stitch.

Back circle
Round 1. Make a magic ring, ch 2, 10 hdc into ring, join with sl st to first hdc — 10 sts
Round 2. Ch 2, 2 hdc in each st around, join — 20 sts
Round 3. Ch 2, *hdc in next st, 2 hdc in next st*, repeat from * to * 10 times in total, join — 30 sts
Round 4. Ch 2, *hdc in next 2 sts, 2 hdc in next st*, repeat from * to * 10 times in total, join — 40 sts
Size 6-12 months only:
Round 5. Ch 2, *hdc in next 3 sts, 2 hdc in next st*, repeat from * to * 10 times in total, join — 50 sts

Sides
All sizes: From here you work in rows.
Row 1. Ch 2, hdc in next 34 (34, 42) sts, turn, leaving the rest unworked — 34 (34, 42) sts
Row 2. Ch 2, hdc in each st across, turn — 34 (34, 42) sts
Rows 3 to 9 (10, 11). Repeat row 2.
Fasten off and weave in ends.

Care: machine wash at 30 degrees.
`,
  // Ten more in every round; the third size has one more round.
  pieces: [
    { name: 'Back circle', counts: [10, 20, 30, 40, [null, null, 50]] },
    {
      name: 'Sides',
      counts: [
        [34, 34, 42],
        [34, 34, 42],
        [34, 34, 42],
      ],
    },
  ],
  also: ({ sizes, about }) => [sizes.map(({ age }) => age), about.care],
  expected: [
    [
      [0, 0.25],
      [0.25, 0.5],
      [0.5, 1],
    ],
    'machine wash at 30 degrees.',
  ],
};

const capitals: OldPattern = {
  style: 'typed in capitals',
  terms: 'us',
  title: "GRANDMA'S CORNER RIPPLE AFGHAN",
  sizes: ['One size'],
  text: `GRANDMA'S CORNER RIPPLE AFGHAN

SIZE: ABOUT 45 X 60 INCHES

MATERIALS: WORSTED WEIGHT 4-PLY YARN - 21 OZ. DARK GREEN, 14 OZ. CREAM. SIZE J CROCHET HOOK.

GAUGE: 15 SC = 4 INCHES, 16 ROWS = 4 INCHES

WITH GREEN, CH 167.
ROW 1: SC IN 2ND CH FROM HOOK AND IN EACH CH ACROSS, TURN. (166 SC)
ROW 2: CH 1, 2 SC IN FIRST SC, *SC IN NEXT 6 SC, SK NEXT 2 SC, SC IN NEXT 6 SC, 3 SC IN NEXT SC; REP FROM * ACROSS TO LAST 15 STS, SC IN NEXT 6 SC, SK 2 SC, SC IN NEXT 6 SC, 2 SC IN LAST SC, TURN. (166 SC)
REP ROW 2 UNTIL PIECE MEASURES 60 INCHES, CHANGING COLOR EVERY 10 ROWS.
FASTEN OFF.
`,
  // 167 chains less one. Row 2: 2, ten times 6 + 6 + 3, then 6 + 6 + 2.
  pieces: [{ name: "GRANDMA'S CORNER RIPPLE AFGHAN", counts: [167, 166, 166, 166] }],
  also: ({ hooks, gauges }) => [
    hooks.map(({ mm }) => mm),
    gauges.map(({ pattern, stitches }) => [pattern, stitches]),
  ],
  expected: [[6], [['sc', 15]]],
};

const mitts: OldPattern = {
  style: 'mitts, one hand as the other, amounts of materials under heads of their own',
  terms: 'us',
  title: 'Drystone Fingerless Mitts',
  sizes: ['S', 'M', 'L'],
  text: `Drystone Fingerless Mitts
Version 1.2

SIZES
S, M, L
To fit hand circumference: 17.5 (19, 20.5) cm [7 (7.5, 8) inches]

MATERIALS
Yarn: fingering weight, 75% merino / 25% nylon, 100 g = 400 m, 1 skein
Hook: 3.25 mm (US D-3) or size to obtain gauge
2 stitch markers, tapestry needle

GAUGE
24 sc and 28 rnds = 10 cm

NOTES
- US terms.
- The mitts are worked from the cuff up, in joined rounds, without turning.
- Ch 1 at the beginning of a round does not count as a stitch.

LEFT MITT
Ch 42 (46, 50), join with sl st in first ch to form a ring.
Rnd 1: Ch 1, sc in each ch around, join with sl st in first sc. 42 (46, 50) sc.
Rnds 2-20: Ch 1, sc in each sc around, join.
Rnd 21 (thumb gusset): Ch 1, sc in next 20 (22, 24) sts, 2 sc in each of next 2 sts, sc in each st to end, join. 44 (48, 52) sc.
Rnd 22: Ch 1, sc in each sc around, join.
Rnd 23: Ch 1, sc in next 20 (22, 24) sts, 2 sc in next st, sc in next 2 sts, 2 sc in next st, sc in each st to end, join. 46 (50, 54) sc.
Rnd 24: As Rnd 22.
Rnd 25: Ch 1, sc in next 20 (22, 24) sts, ch 4, sk next 6 sts, sc in each st to end, join. 40 (44, 48) sc, 1 ch-4 sp.
Rnd 26: Ch 1, sc in each st around, working 4 sc in each ch-4 sp, join. 44 (48, 52) sc.
Rnds 27-32: Ch 1, sc in each sc around, join.
Fasten off.

RIGHT MITT
Work as for Left Mitt.

FINISHING
Weave in ends. Block lightly.
`,
  // Two more in Rounds 21 and 23; 6 passed over in Round 25, and 4 in their space after.
  pieces: [
    {
      name: 'LEFT MITT',
      counts: [
        [42, 46, 50],
        [42, 46, 50],
        [42, 46, 50],
        [42, 46, 50],
        [44, 48, 52],
        [44, 48, 52],
        [46, 50, 54],
        [46, 50, 54],
        [40, 44, 48],
        [44, 48, 52],
        [44, 48, 52],
        [44, 48, 52],
      ],
    },
    {
      name: 'RIGHT MITT',
      counts: [
        [42, 46, 50],
        [42, 46, 50],
        [42, 46, 50],
        [42, 46, 50],
        [44, 48, 52],
        [44, 48, 52],
        [46, 50, 54],
        [46, 50, 54],
        [40, 44, 48],
        [44, 48, 52],
        [44, 48, 52],
        [44, 48, 52],
      ],
    },
  ],
  also: ({ yarns, notions, hooks }) => [
    yarns.map(({ name, fibre, metres }) => [name, fibre, Object.values(metres)]),
    notions.map(({ name, amount }) => [name, amount]),
    hooks.map(({ mm }) => mm),
  ],
  expected: [
    [['fingering weight', '75% merino / 25% nylon', [400, 400, 400]]],
    [
      ['stitch markers', { all: 2 }],
      ['tapestry needle', null],
    ],
    [3.25],
  ],
};

const sentences: OldPattern = {
  style: 'whole sentences, rounds numbered in words, materials in a sentence',
  terms: 'us',
  title: 'A Little Market Bag',
  // Nothing says that the rounds go on in a spiral.
  told: ['spiral-not-said'],
  sizes: ['One size'],
  text: `A Little Market Bag

You will need 150 g of any DK cotton, a 4.5 mm hook and a stitch marker. The bag is worked in rounds from the base up and measures about 30 cm across. It is written with American stitch names.

The base

Round one: Make a slip knot and chain 2. Work 6 single crochet into the second chain from the hook. (6 stitches)
Round two: Work 2 single crochet in each stitch around. (12 stitches)
Round three: *Single crochet in the next stitch, 2 single crochet in the next stitch. Repeat from * around. (18 stitches)
Round four: *Single crochet in the next 2 stitches, 2 single crochet in the next stitch. Repeat from * around. (24 stitches)
Round five: *Single crochet in the next 3 stitches, 2 single crochet in the next stitch. Repeat from * around. (30 stitches)

The sides

Round six: *Chain 3, skip 1 stitch, single crochet in the next stitch. Repeat from * around. (15 chain-3 spaces)
Round seven: *Chain 3, single crochet in the next chain space. Repeat from * around.
Rounds eight to twenty: Repeat round seven.

The handle

Round twenty-one: Work 2 single crochet in each chain space around. (30 stitches)
Fasten off and weave in your ends.
`,
  // Six more in every round of the base; 15 times 2 are passed over for 15 spaces.
  pieces: [{ name: 'The base, The sides and The handle', counts: [6, 12, 18, 24, 30, 15, 15, 15, 30] }],
  also: ({ yarns, hooks, notions }) => [
    yarns.length,
    hooks.map(({ mm }) => mm),
    notions.map(({ name }) => name),
  ],
  expected: [1, [4.5], ['stitch marker']],
};

const brackets: OldPattern = {
  style: 'eight sizes in two brackets, short labels, counts behind arrows',
  terms: 'us',
  title: 'FOXGLOVE MESH TOP',
  sizes: ['1', '2', '3', '4', '5', '6', '7', '8'],
  text: `FOXGLOVE MESH TOP  |  Pattern No. 17  |  v2.1, March 2019
© Wrenna Caddick Designs

SIZE GUIDE
1 (2, 3, 4)(5, 6, 7, 8)
Bust: 84 (94, 104, 114)(124, 134, 144, 154) cm
Ease: designed to be worn with 5-10 cm positive ease.

YARN: 100% cotton, 4 ply, 50g/180m; 5 (6, 6, 7)(8, 8, 9, 10) balls.
HOOK: 3.5mm
GAUGE: 20 dc x 11 rows = 10cm/4" (after blocking)
TERMS: US. Difficulty: 3/5

STITCHES USED: ch - chain // dc - double crochet // sl st - slip stitch // sk - skip // st(s) - stitch(es)

FRONT AND BACK ALIKE (make 2)
Set up: ch 87 (97, 107, 117)(127, 137, 147, 157)
R1: dc in 4th ch from hook (skipped chs count as 1st dc), dc in each ch to end. Turn >> 85 (95, 105, 115)(125, 135, 145, 155)
R2: ch 3 (counts as dc), dc in next st, *ch 1, sk 1 st, dc in next st* to last st, dc in last st. Turn >> 44 (49, 54, 59)(64, 69, 74, 79) dc + 41 (46, 51, 56)(61, 66, 71, 76) ch-sps
R3: ch 3, dc in each dc and ch-sp to end. Turn >> 85 (95, 105, 115)(125, 135, 145, 155)
R4-R31: rep R2-R3 fourteen times
FO.

FINISHING
1. Wash and block both panels.
2. Seam the shoulders over 25 (28, 31, 34)(36, 39, 42, 45) sts each side.
3. Seam the sides, leaving 18 (19, 20, 21)(22, 23, 24, 25) cm open for the armholes.
`,
  // 3 chains passed over are a dc: two fewer than chains. Row 2: 2, a dc in every second of the rest but the last, and 1.
  pieces: [
    {
      name: 'FRONT AND BACK ALIKE',
      make: 2,
      counts: [
        [87, 97, 107, 117, 127, 137, 147, 157],
        [85, 95, 105, 115, 125, 135, 145, 155],
        [44, 49, 54, 59, 64, 69, 74, 79],
        [85, 95, 105, 115, 125, 135, 145, 155],
        [85, 95, 105, 115, 125, 135, 145, 155],
      ],
    },
  ],
  also: ({ about, yarns, finishing, pieces }) => ({
    fit: about.fit,
    metres: Object.values(yarns[0]!.metres),
    finishing: finishing.length,
    start: pieces[0]!.blocks[0]!.type,
  }),
  expected: {
    fit: 'designed to be worn with 5-10 cm positive ease.',
    metres: [900, 1080, 1080, 1260, 1440, 1440, 1620, 1800],
    finishing: 3,
    start: 'row',
  },
};

const small: OldPattern = {
  style: 'small letters, counts said four ways',
  terms: 'us',
  title: 'Cobble Coasters',
  sizes: ['One size'],
  text: `Cobble Coasters
a quick pattern from Thistle Yard

supplies
scraps of worsted cotton
hook - 4.25 mm
tapestry needle

gauge
not important

stitches (us)
ch - chain
dc - double crochet
sc - single crochet
sl st - slip stitch

Pattern Notes:
• beginning ch 3 counts as dc
• join each round with a slip stitch to the top of the ch 3

coaster
Rnd 1 - ch 4, 11 dc in 4th ch from hook, join. = 12 stitches
Rnd 2 - ch 3, dc in same st, 2 dc in each st around, join. (24 dc total)
Rnd 3 - ch 3, 2 dc in next st, [dc in next st, 2 dc in next st] repeat around, join. – 36 sts.
Rnd 4 - ch 1, sc in same st, sc in next st, 2 sc in next st, [sc in next 2 sts, 2 sc in next st] 11 times, join with sl st to first sc. Total: 48 sc
fasten off.

(c) 2016 thistle yard. please don't sell.
`,
  // 12 more in every round.
  pieces: [{ name: 'coaster', counts: [12, 24, 36, 48] }],
  also: ({ abbreviations, notes }) => [abbreviations, notes[0]!.text],
  expected: [{}, 'beginning ch 3 counts as dc'],
};

const wrapper: OldPattern = {
  style: 'wrapper, a table in columns with its units apart, sizes by letters, rows said of',
  terms: 'uk',
  title: 'BRIGHTWELL',
  // The neckband is told in a sentence.
  told: ['piece-without-rows'],
  sizes: ['A', 'B', 'C', 'D'],
  text: `BRIGHTWELL
Lady's Jumper in Double Crochet

*** *** ***

MEASUREMENTS
                            A       B       C       D
To fit bust        cm      81-86   91-97  102-107 112-117
                   in      32-34   36-38   40-42   44-46
Actual size        cm      94     104     114     124
                   in      37      41      45     48¾

MATERIALS
Ravensbourne Double Knitting 50g balls
                   10      11      12      14
One 4.00 mm crochet hook. Three small buttons.

ABBREVIATIONS
Ch = chain; dc = double crochet; dc2tog = (insert hook in next st, yoh, draw loop through) twice, yoh, draw through all 3 loops; rem = remain(ing); st = stitch. 
Instructions are given for size A. Sizes B, C and D are given in round brackets.
UK terminology is used.

TENSION
17 sts and 20 rows = 10 cm (4 in) over dc on 4.00 mm hook.

BACK
Make 81 (89, 98, 106) ch.
1st row (right side): 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. [80 (88, 97, 105) sts]
2nd row: 1 ch (does not count as st), 1 dc in each dc to end, turn.
2nd row forms dc fabric. Continue in dc until work measures 36 (36, 37, 37) cm, ending after a wrong side row.

Shape raglans
Next row: Ss across 5 (6, 7, 8) sts, 1 ch, dc to last 5 (6, 7, 8) sts, turn. [70 (76, 83, 89) sts]
Next row: 1 ch, dc2tog, dc to last 2 sts, dc2tog, turn. [68 (74, 81, 87) sts]
Rep the last row 10 (12, 14, 15) times more. [48 (50, 53, 57) sts rem]
Fasten off.

FRONT
Work exactly as given for Back.

NECKBAND
Join raglan seams. With right side facing, work 1 round dc evenly round neck edge.
`,
  // Chains less one; 5 (6, 7, 8) at either side, then 2 in each of 11 (13, 15, 16) rows.
  pieces: [
    {
      name: 'BACK',
      counts: [
        [81, 89, 98, 106],
        [80, 88, 97, 105],
        [80, 88, 97, 105],
        [80, 88, 97, 105],
        [70, 76, 83, 89],
        [68, 74, 81, 87],
        [48, 50, 53, 57],
      ],
    },
    {
      name: 'FRONT',
      counts: [
        [81, 89, 98, 106],
        [80, 88, 97, 105],
        [80, 88, 97, 105],
        [80, 88, 97, 105],
        [70, 76, 83, 89],
        [68, 74, 81, 87],
        [48, 50, 53, 57],
      ],
    },
    { name: 'NECKBAND', counts: [] },
  ],
  also: ({ lines, notions, hooks }) => [
    lines.map(({ name }) => name),
    notions.map(({ name, amount }) => [name, amount]),
    hooks.map(({ mm }) => mm),
  ],
  expected: [['body bust from', 'body bust up to', 'actual size'], [['small buttons', { all: 3 }]], [4]],
};

const commas: OldPattern = {
  style: 'sizes beside the title, lists with commas and no brackets, numbered materials',
  terms: 'us',
  title: 'Sparrow Lane Cardigan',
  sizes: ['2T', '4T', '6', '8'],
  text: `Sparrow Lane Cardigan | Kids' sizes 2T, 4T, 6, 8

Materials list
1. DK superwash (#3 light): 400, 450, 550, 600 yards
2. US G/6 (4.0mm) hook
3. Five 3/4" buttons
4. Tapestry needle

Gauge: 18 hdc and 14 rows to 4 inches.

Special terms: "Work even" means to continue without increasing or decreasing.

Body (worked in one piece to underarms)
Ch 91, 97, 103, 109.
Row 1: Hdc in 2nd ch from hook and each ch across; 90, 96, 102, 108 hdc.
Row 2: Ch 1, turn; hdc in each hdc across; 90, 96, 102, 108 hdc.
Work even until body measures 7, 8, 9, 10 inches.

Right front
Row 1: Ch 1, turn; hdc in first 20, 22, 23, 25 hdc; leave remaining hdc unworked; 20, 22, 23, 25 hdc.
Rows 2 through 12: Ch 1, turn; hdc in each hdc across.
Fasten off.

Sleeves (make 2)
Ch 31, 33, 35, 37.
Row 1: Hdc in 2nd ch from hook and each ch across; 30, 32, 34, 36 hdc.
Rows 2-20: Ch 1, turn; hdc in each hdc across.
Fasten off.

Assembly
Sew shoulder seams. Set in sleeves. Sew on buttons.
`,
  // Chains less one; the front goes on over the first 20, 22, 23 and 25.
  pieces: [
    {
      name: 'Body (worked in one piece to underarms)',
      counts: [
        [91, 97, 103, 109],
        [90, 96, 102, 108],
        [90, 96, 102, 108],
        [90, 96, 102, 108],
      ],
    },
    {
      name: 'Right front',
      counts: [
        [20, 22, 23, 25],
        [20, 22, 23, 25],
        [20, 22, 23, 25],
      ],
    },
    {
      name: 'Sleeves',
      make: 2,
      counts: [
        [31, 33, 35, 37],
        [30, 32, 34, 36],
        [30, 32, 34, 36],
        [30, 32, 34, 36],
      ],
    },
  ],
  also: ({ yarns, hooks, notions }) => [
    yarns.map(({ name, metres }) => [name, Object.values(metres)]),
    hooks.map(({ mm }) => mm),
    notions.map(({ name, amount }) => [name, amount]),
  ],
  expected: [
    [['DK superwash (#3 light)', [365.8, 411.5, 502.9, 548.6]]],
    [4],
    [
      ['Five 3/4" buttons', null],
      ['Tapestry needle', null],
    ],
  ],
};

const doily: OldPattern = {
  style: 'leaflet with its number before the name, heads in capitals with a stop',
  terms: 'us',
  title: 'PRIMROSE DOILY',
  sizes: ['One size'],
  text: `No. 1417. PRIMROSE DOILY
Size 9 inches in diameter

American terms.

MATERIALS REQUIRED. 1 ball mercerised cotton No. 40, steel hook size 1.25 mm.

Ch 6, join with sl st to form a ring.
1st rnd: Ch 3, 15 dc in ring, sl st in top of ch 3 (16 dc, counting ch 3).
2nd rnd: Ch 4, * dc in next dc, ch 1. Repeat from * around, sl st in 3rd st of ch 4. (16 sps)
3rd rnd: Sl st in sp, ch 3, dc in same sp, * ch 2, 2 dc in next sp. Repeat from * around, ch 2, sl st in top of ch 3. (32 dc)
4th to 6th rnds: Sl st in next dc and in sp, ch 3, dc in same sp, * ch 3, 2 dc in next sp. Repeat from * around, ch 3, sl st in top of ch 3.
Break off.
Starch lightly and press.
`,
  // 15 and the chain: 16; a space before each; two in each space.
  pieces: [{ name: 'PRIMROSE DOILY', counts: [6, 16, 16, 32, 32, 32] }],
  also: ({ about, hooks, yarns, lines }) => [
    about.description,
    hooks.map(({ mm }) => mm),
    yarns.map(({ name }) => name),
    lines.map(({ name }) => name),
  ],
  expected: ['No. 1417.', [1.25], ['1 ball mercerised cotton No. 40'], ['size']],
};

const waves: OldPattern = {
  style: 'heads between waves, a farewell behind the pattern',
  terms: 'uk',
  title: 'FENNEL BABY BLANKET',
  sizes: ['One size'],
  text: `FENNEL BABY BLANKET

Hello and welcome! Please read the whole pattern before you begin :)

~ DETAILS ~
Yarn: Lamb & Lint "Cloudlet" aran (100g/200m) x 5 balls
Hook: 5mm
Size: approx. 80cm x 100cm
Tension: not critical!

~ STITCHES (UK) ~
ch = chain // dc = double crochet // tr = treble // st = stitch // rep = repeat

~ PATTERN ~
Foundation row: ch 122
Row 1: dc into 2nd ch from hook, dc into each ch to end. [121 dc]
Row 2: ch 3 (counts as 1st tr), skip 1st st, tr into next 2 sts, *ch 2, skip 2 sts, tr into next 2 sts; rep from * to last 2 sts, tr into last 2 sts. [63 tr, 29 ch-2 sps]
Row 3: ch 1, dc into each tr and 2 dc into each ch-2 sp to end. [121 dc]
Repeat rows 2-3 until your blanket measures 100cm, ending on a row 3.

Fasten off and weave in ends.

Thank you! x
`,
  // 122 chains less one. Row 2: 3, then 29 times 2, and 2: 63 in trebles, with 29 spaces.
  pieces: [{ name: 'FENNEL BABY BLANKET', counts: [122, 121, 63, 121, 121] }],
  also: ({ yarns, pieces, abbreviations }) => [
    yarns.map(({ ballGrams, metres }) => [ballGrams, Object.values(metres)]),
    pieces.length,
    abbreviations,
  ],
  expected: [[[100, [1000]]], 1, { rep: 'repeat' }],
};

/** Every one of them, in plain text. */
export const houseStyles: readonly OldPattern[] = [
  magazine,
  leaflet,
  blog,
  toy,
  tabbed,
  slashed,
  columns,
  bold,
  months,
  capitals,
  mitts,
  sentences,
  brackets,
  small,
  wrapper,
  commas,
  doily,
  waves,
];
