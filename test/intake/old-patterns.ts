/**
 * Old patterns in the styles of different houses, to be brought in. All are invented. Beside each stands what it
 * must become: pieces with the count of every row and size, worked out by hand from the words.
 */
import type { Terms } from '../../core/trade/stitches.ts';

export interface OldPattern {
  readonly style: string;
  readonly text: string;
  readonly terms: Terms;
  readonly title: string;
  readonly sizes: readonly string[];
  /** Rows that are left for the maker; none where not said. */
  readonly open?: number;
  /** Findings that are true of it, by their codes; none where not said. */
  readonly told?: readonly string[];
  /** By piece: its name, how many are made, and for each written row or repeat the stitches in every size. */
  readonly pieces: readonly {
    readonly name: string;
    readonly make?: number;
    /** A number is the same in every size; null = not worked in that size. */
    readonly counts: readonly (number | readonly (number | null)[])[];
  }[];
  /** What else must be found, by path into the pattern. */
  readonly also?: (found: import('../../core/document/pattern.ts').Pattern) => unknown;
  readonly expected?: unknown;
}

const amigurumi: OldPattern = {
  style: 'amigurumi, R1: and (12)',
  terms: 'us',
  title: 'Pebble the Seal',
  sizes: ['One size'],
  text: `Pebble the Seal
by Mara Quillfeather

A small seal that fits in the palm of your hand. Worked in one piece from the nose back, then two flippers.

Skill level: Easy

MATERIALS
• DK cotton (50 g/115 m), 1 ball in Slate (A) and 1 ball in Foam (B)
• 2.5 mm crochet hook
• 2 safety eyes, 6 mm
• Fibrefill, tapestry needle, stitch marker

Abbreviations (US terms)
MR = magic ring
sc = single crochet
inc = 2 sc in next st
dec = sc2tog
st(s) = stitch(es)

NOTES
Work in a spiral. Do not join unless told to.

BODY (with A)
R1: 6 sc in MR (6)
R2: inc x 6 (12)
R3: (sc 1, inc) x 6 (18)
R4: (sc 2, inc) x 6 (24)
R5-8: sc in each st around (24)
R9: (sc 2, dec) x 6 (18)
R10: (sc 1, dec) x 6 (12)
Stuff firmly.
R11: dec x 6 (6)
Fasten off, leaving a long tail.

FLIPPER (make 2)
With B
R1: 6 sc in MR [6]
R2: (sc 1, inc) x 3 [9]
R3-4: sc around [9]
Fasten off.

ASSEMBLY
Sew the flippers to the sides of the body between R6 and R7.
Weave in all ends.

© Mara Quillfeather. Please do not sell this pattern.
`,
  pieces: [
    { name: 'BODY (with A)', counts: [6, 12, 18, 24, 24, 24, 18, 12, 6] },
    { name: 'FLIPPER', make: 2, counts: [6, 9, 9, 9] },
  ],
  also: ({ about, hooks, notions, yarns, finishing }) => ({
    designer: about.designer,
    level: about.level,
    copyright: about.copyright,
    hooks: hooks.map(({ mm }) => mm),
    eyes: notions[0],
    yarns: yarns.map(({ key, weight, ballGrams, ballMetres }) => [key, weight, ballGrams, ballMetres]),
    finishing: finishing.length,
  }),
  expected: {
    designer: 'Mara Quillfeather',
    level: 2,
    copyright: '© Mara Quillfeather. Please do not sell this pattern.',
    hooks: [2.5],
    eyes: expectNotion('safety eyes, 6 mm', 2),
    yarns: [
      ['A', 3, 50, 115],
      ['B', 3, 50, 115],
    ],
    finishing: 2,
  },
};

function expectNotion(name: string, amount: number) {
  return { id: 'b4', name, amount: { all: amount }, smallPart: true, cord: false, price: null };
}

const blanket: OldPattern = {
  style: 'UK blanket, 1st row, chains before the letters',
  terms: 'uk',
  title: 'HARBOUR LIGHT BLANKET',
  sizes: ['One size'],
  text: `HARBOUR LIGHT BLANKET
Designed by Ines Fallow

Measurements
Finished size: 90 x 110 cm

You will need
8 x 50 g balls of double knitting wool
4 mm crochet hook

Tension
16 tr and 9 rows to 10 cm

Abbreviations: ch - chain; dc - double crochet; tr - treble; sp - space; st(s) - stitch(es)

To make
Make 33 ch.
1st row: 1 tr in 4th ch from hook, 1 tr in each ch to end. (31 tr)
2nd row: 3 ch (counts as 1 tr), miss first tr, 1 tr in each tr to end, working last tr in top of turning ch, turn. (31 tr)
3rd row: 1 ch, 1 dc in each st to end, turn. (31 dc)
4th row: 3 ch (counts as 1 tr), miss first dc, 1 tr in each dc to end, turn. (31 tr)
Rows 5-28: Repeat rows 3 and 4 twelve times. (31 tr)
Fasten off.

Making up
Sew in all ends. Press lightly under a damp cloth.
`,
  // 33 chains: 3 passed over are a treble, 30 more make 31. Every row has as many.
  pieces: [{ name: 'HARBOUR LIGHT BLANKET', counts: [33, 31, 31, 31, 31, 31] }],
  also: ({ gauges, lines, units, hooks }) => ({
    gauge: gauges.map(({ pattern, stitches, rows, width }) => [pattern, stitches, rows, width]),
    lines: lines.map((line) => [line.name, 'values' in line ? line.values : null]),
    units,
    hook: hooks.map(({ mm }) => mm),
  }),
  expected: {
    gauge: [['tr', 16, 9, { value: 10, unit: 'cm' }]],
    lines: [
      ['width', { all: { value: 90, unit: 'cm' } }],
      ['length', { all: { value: 110, unit: 'cm' } }],
    ],
    units: 'metric',
    hook: [4],
  },
};

const sweater: OldPattern = {
  style: 'sweater in four sizes, lists in square brackets and colons',
  terms: 'us',
  title: 'Saltmarsh Pullover',
  sizes: ['XS', 'S', 'M', 'L'],
  text: `Saltmarsh Pullover

A plain pullover in two flat pieces and a pair of sleeves.

SIZES
XS[S:M:L]
To fit bust: 76[81:86:91] cm / 30[32:34:36] in
Finished bust: 87[93:98:104] cm
Length: 50[51:52:53] cm

MATERIALS
Worsted weight wool, 100 g = 200 m: 5[6:6:7] balls
5 mm (US H-8) hook for the body, or size needed to obtain gauge
4 buttons, 15 mm

GAUGE
14 sts and 16 rows = 10 cm in single crochet, blocked

BACK
Ch 62[66:70:74].
Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. 61[65:69:73] sts
Row 2: Ch 1, sc in each st across, turn.
Rows 3-40[42:44:46]: Rep Row 2.
Dec Row: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. 59[63:67:71] sts
Next Row: Ch 1, sc in each st across. Fasten off.

SLEEVES (make 2)
Ch 31[33:33:35].
Row 1: Sc in 2nd ch from hook and in each ch across, turn. 30[32:32:34] sc.
Inc Row 2: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. 32[34:34:36] sc.
Sizes M and L only:
Row 3: Ch 1, sc in each st across, turn.

FINISHING
Block the pieces. Sew the shoulders and the sides.
`,
  // Chains less one; a decrease at either end takes 2, an increase at either end gives 2.
  pieces: [
    {
      name: 'BACK',
      counts: [
        [62, 66, 70, 74],
        [61, 65, 69, 73],
        [61, 65, 69, 73],
        [61, 65, 69, 73],
        [59, 63, 67, 71],
        [59, 63, 67, 71],
      ],
    },
    {
      name: 'SLEEVES',
      make: 2,
      counts: [
        [31, 33, 33, 35],
        [30, 32, 32, 34],
        [32, 34, 34, 36],
        [null, null, 34, 36],
      ],
    },
  ],
  also: ({ lines, hooks, gauges, yarns }) => ({
    lines: lines.slice(0, 3).map((line) => [line.kind, line.printed]),
    bust: lines[0]?.kind === 'body' ? Object.values(lines[0].overtyped).map(({ value }) => value) : null,
    hook: hooks.map(({ mm, purpose }) => [mm, purpose]),
    gauge: gauges.map(({ pattern, stitches, rows, blocked }) => [pattern, stitches, rows, blocked]),
    metres: yarns.map(({ metres }) => Object.values(metres)),
    rows: lines.find(({ name }) => name.includes('repeated')),
  }),
  expected: {
    lines: [
      ['body', 'To fit bust'],
      ['typed', 'Finished bust'],
      ['typed', 'Length'],
    ],
    bust: [76, 81, 86, 91],
    hook: [[5, 'for the body, or size needed to obtain gauge']],
    gauge: [['single crochet', 14, 16, true]],
    metres: [[1000, 1200, 1200, 1400]],
    // Rows 3 to 40, 42, 44 and 46.
    rows: {
      id: 'b11',
      name: 'back repeated rows',
      printed: null,
      note: null,
      kind: 'typed',
      values: {
        each: {
          'size-1': { value: 38, unit: 'none' },
          'size-2': { value: 40, unit: 'none' },
          'size-3': { value: 42, unit: 'none' },
          'size-4': { value: 44, unit: 'none' },
        },
      },
    },
  },
};

const hat: OldPattern = {
  style: 'hat, sizes and lists with slashes, rounds joined',
  terms: 'us',
  title: 'Tidewater Beanie',
  sizes: ['S', 'M', 'L'],
  text: `# Tidewater Beanie #

Size: S/M/L
To fit head: 53/56/59 cm

Yarn: Aran weight wool, 100 g (160 m)
Hook: size J
Notions: stitch marker

Gauge: 12 hdc and 9 rnds = 10 cm

This pattern is written in US terms.

Crown
Rnd 1: Make a magic ring, ch 2 (does not count as a st), 8 hdc in ring, join with sl st in first hdc. (8 hdc)
Rnd 2: Ch 2, 2 hdc in each st around, join with sl st in first hdc. (16 hdc)
Rnd 3: Ch 2, *hdc in next st, 2 hdc in next st; rep from * around, join with sl st in first hdc. (24 hdc)
Rnd 4: Ch 2, *hdc in next 2 sts, 2 hdc in next st; rep from * around, join with sl st in first hdc. (32 hdc)
Sizes M/L only:
Rnd 5: Ch 2, *hdc in next 3 sts, 2 hdc in next st; rep from * around, join with sl st in first hdc. (40 hdc)
Size L only:
Rnd 6: Ch 2, *hdc in next 4 sts, 2 hdc in next st; rep from * around, join with sl st in first hdc. (48 hdc)
All sizes:
Next rnd: Ch 2, hdc in each st around, join with sl st in first hdc. – 32/40/48 hdc

To finish
Weave in the ends.
`,
  pieces: [
    {
      name: 'Crown',
      counts: [8, 16, 24, 32, [null, 40, 40], [null, null, 48], [32, 40, 48]],
    },
  ],
  also: ({ hooks, workbook }) => [
    hooks.map(({ mm }) => mm),
    workbook.doubts.some(({ why }) => why.includes('US size')),
  ],
  // US J is 6 mm (Craft Yarn Council, hook sizes).
  expected: [[6], true],
};

const square: OldPattern = {
  style: 'square, "Round" written out, stitches and spaces counted',
  terms: 'us',
  title: 'Lantern Square',
  sizes: ['One size'],
  text: `Lantern Square

Finished measurements: 10 cm square
You will need: any yarn and a hook to suit it.

Special Stitches:
Corner (cnr): (3 dc, ch 2, 3 dc) in indicated sp.

Instructions
Ch 4, join with sl st to form ring.
Round 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; repeat from * 2 more times, join with sl st in top of ch-3. (12 dc, 4 ch-2 sps)
Round 2: Sl st in next 2 dc and in ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp, *cnr in next ch-2 sp; repeat from * 2 more times, join with sl st in top of ch-3. (24 dc, 4 ch-2 sps)
Fasten off.
`,
  // A ring of 4 chains. Round 2: a corner of 6 dc in each of 4 spaces.
  pieces: [{ name: 'Lantern Square', counts: [4, 12, 24] }],
  also: ({ specials }) => specials.map(({ nameUs, abbrUs, text }) => [nameUs, abbrUs, text.text]),
  expected: [['Corner', 'cnr', '(3 dc, ch 2, 3 dc) in indicated sp.']],
};

const newsletter: OldPattern = {
  style: 'newsletter, wrapped at 72 columns',
  terms: 'us',
  title: 'The Wren Street Washcloth',
  sizes: ['One size'],
  text: `THE WREN STREET CROCHET LETTER                              Number 31
========================================================================

The Wren Street Washcloth

This month's pattern is a washcloth for a rainy evening. It uses up the
last of a ball of cotton, and a beginner will have it finished before
the kettle has boiled twice.

Materials: about 40 g of worsted weight cotton; a 5 mm hook; a blunt
needle for the ends.

Gauge is not important.

Ch 26.
Row 1: Sc in 2nd ch from hook, *dc in next ch, sc in next ch; rep from *
across, turn. = 25 sts
Row 2: Ch 3 (counts as first dc), skip first st, *sc in next dc, dc in
next sc; rep from * across, turn. = 25 sts
Row 3: Ch 1, sc in first st, *dc in next sc, sc in next dc; rep from *
across, turn. = 25 sts
Rows 4-21: Rep Rows 2 and 3.
Fasten off and weave in the ends.
`,
  // 26 chains less the turning chain: 25; one sc, then 12 pairs.
  pieces: [{ name: 'The Wren Street Washcloth', counts: [26, 25, 25, 25, 25] }],
};

const pdf: OldPattern = {
  style: 'copied from a PDF: page numbers, a running head, broken lines, ligatures',
  terms: 'us',
  title: 'Fieldfare Scarf',
  sizes: ['One size'],
  text: `Fieldfare Scarf
A long, soft scarf in alternating rows.
1
\fFieldfare Scarf
Supplies
Fingering weight yarn, 400 m
3.5 mm hook

Pattern Notes
Ch 3 counts as first dc through-
out.
2
\fFieldfare Scarf
Scarf
Ch 43.
Row 1: Dc in 4th ch from hook (the skipped ch count as the ﬁrst dc) and in each
3
\fFieldfare Scarf
ch across, turn. (41 dc)
Row 2: Ch 1, sc in each st across,
turn. (41 sc)
Row 3: Ch 3, sk ﬁrst st, dc in each st
across, turn. (41 dc)
Rows 4-80: Rep Rows 2 and 3, ending with a Row 2.
4
`,
  // 43 chains: 3 skipped are a dc, 40 more make 41.
  pieces: [{ name: 'Scarf', counts: [43, 41, 41, 41, 41] }],
  also: ({ notes, hooks, about }) => [
    notes.map(({ text }) => text),
    hooks.map(({ mm }) => mm),
    about.description,
  ],
  expected: [['Ch 3 counts as first dc throughout.'], [3.5], 'A long, soft scarf in alternating rows.'],
};

const bilingual: OldPattern = {
  style: 'headings in two languages',
  terms: 'us',
  title: 'Topflappen Möwe / Gull Pot Holder',
  sizes: ['One size'],
  text: `Topflappen Möwe / Gull Pot Holder

Material / Materials
Cotton, 50 g / 85 m, 2 balls
Hook 4 mm

Maschenprobe / Gauge
18 sc and 20 rows = 10 cm

Abkürzungen / Abbreviations
sc = single crochet (feste Masche)
ch = chain (Luftmasche)

Vorderseite / Front
Ch 29.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (28 sc)
Rows 2 to 30: Ch 1, sc in each st across, turn. (28 sc)

Rückseite / Back
Ch 29.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (28 sc)
Rows 2–30: Ch 1, sc in each st across, turn. (28 sc)

Fertigstellung / Finishing
Sew both pieces together.
`,
  pieces: [
    { name: 'Vorderseite / Front', counts: [29, 28, 28, 28] },
    { name: 'Rückseite / Back', counts: [29, 28, 28, 28] },
  ],
};

const counted: OldPattern = {
  style: 'abbreviations in the middle, counts in every form',
  terms: 'us',
  title: 'Ladder Runner',
  sizes: ['One size'],
  text: `Ladder Runner

Strip One
Foundation: Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)
Row 2: Ch 1, 2 sc in first st, sc in each st across, turn. [21 sts]
Row 3: Ch 1, 2 sc in first st, sc in each st across, turn. – 22 sts
Row 4: Ch 1, 2 sc in first st, sc in each st across, turn. — 23.
Row 5: Ch 1, 2 sc in first st, sc in each st across, turn. = 24 sc
Row 6: Ch 1, 2 sc in first st, sc in each st across, turn. {25}
Row 7: Ch 1, 2 sc in first st, sc in each st across, turn: 26 sts.

Abbreviations
ch: chain
hdc: half double crochet
sc: single crochet
sk: skip

Strip Two
Foundation: Ch 22.
Row 1: Hdc in 3rd ch from hook (the skipped ch do not count as a st) and in each ch across, turn. (20 hdc)
Row 2: Ch 2 (does not count as a st), hdc2tog, hdc in each st across, turn. (19 sts: 1 hdc2tog, 18 hdc)
`,
  // Strip One: 20 and one more in every row. Strip Two: the 2 chains passed over are no stitch; then one fewer.
  pieces: [
    { name: 'Strip One', counts: [21, 20, 21, 22, 23, 24, 25, 26] },
    { name: 'Strip Two', counts: [22, 20, 19] },
  ],
};

const waistcoat: OldPattern = {
  style: 'UK waistcoat, two groups of brackets, sizes by their place',
  terms: 'uk',
  title: "Child's Creel Waistcoat",
  sizes: ['2', '4', '6', '8', '10'],
  text: `Child's Creel Waistcoat

Sizes: 2 (4, 6) (8, 10) years
To fit chest: 53 (58, 64) (69, 71) cm / 21 (23, 25) (27, 28) in

Materials: 3 (3, 4) (4, 5) balls of 8 ply cotton, 50 g/100 m; 4 mm hook; 5 (5, 6) (6, 6) buttons

Tension: 18 htr and 14 rows = 10 cm on 4 mm hook

Notes
2 ch at the start of a row does not count as a stitch.

Back
Ch 50 (54, 60) (64, 66).
Row 1 (WS): 1 htr in 3rd ch from hook, 1 htr in each ch to end, turn. (48 (52, 58) (62, 64) htr)
Row 2: 2 ch, 1 htr in each st to end, turn.
Rows 3 to 20: As row 2.
2nd and 3rd sizes only:
Next row: 2 ch, htr2tog, 1 htr in each st to last 2 sts, htr2tog, turn.
All sizes:
Next row: 2 ch, 1 htr in each st to end. 48 (50, 56) (62, 64) htr

Care
Wash by hand.
`,
  // Two chains are passed over in every size; the second and third size lose 2.
  pieces: [
    {
      name: 'Back',
      counts: [
        [50, 54, 60, 64, 66],
        [48, 52, 58, 62, 64],
        [48, 52, 58, 62, 64],
        [48, 52, 58, 62, 64],
        [null, 50, 56, null, null],
        [48, 50, 56, 62, 64],
      ],
    },
  ],
  also: ({ sizes, notions, yarns, about, pieces }) => ({
    ages: sizes.map(({ age }) => age?.[0] ?? null),
    buttons: notions.map(({ name, amount, smallPart }) => [
      name,
      amount !== null && 'each' in amount ? Object.values(amount.each) : amount,
      smallPart,
    ]),
    metres: Object.values(yarns[0]!.metres),
    care: about.care,
    first: pieces[0]!.firstSide,
  }),
  expected: {
    ages: [2, 4, 6, 8, 10],
    buttons: [['buttons', [5, 5, 6, 6, 6], true]],
    metres: [300, 300, 400, 400, 500],
    care: 'Wash by hand.',
    first: 'WS',
  },
};

const shawl: OldPattern = {
  style: 'shawl, special stitches over several lines, notes, rows without numbers',
  terms: 'us',
  title: 'Causeway Shawl',
  sizes: ['One size'],
  text: `**Causeway Shawl**
A crochet pattern by Odell Marr

Stitch Guide
Shell (sh): 5 dc in next st.
V-stitch (V-st) - (Dc, ch 1, dc) in next st or sp.

Pattern Notes
1. Ch 3 counts as first dc throughout.
2. The shawl grows by 4 stitches in every row.

SHAWL
Chain 4.
Row 1: 4 dc in 4th ch from hook (the skipped ch count as a dc), turn. 5 dc.
Row 2: Ch 3, dc in first st, 2 dc in next st, dc in next st, 2 dc in next st, 2 dc in last st, turn. 9 dc.
Row 3: Ch 3, dc in first st, dc in next 3 sts, 3 dc in next st, dc in next 3 sts, 2 dc in last st, turn. 13 dc.
Edging Row: Ch 1, sc in first st, *sk 2 sts, sh in next st, sk 2 sts, sc in next st; rep from * across. Fasten off.
`,
  // Row 2: 1 + 1 + 2 + 1 + 2 + 2 = 9. Row 3: 2 + 3 + 3 + 3 + 2 = 13. Edging: sc, then 2 × (5 dc, sc) = 13.
  pieces: [{ name: 'SHAWL', counts: [4, 5, 9, 13, 13] }],
  also: ({ specials, about }) => [specials.map(({ nameUs, abbrUs }) => [nameUs, abbrUs]), about.designer],
  expected: [
    [
      ['Shell', 'sh'],
      ['V-stitch', 'V-st'],
    ],
    'Odell Marr',
  ],
};

const cowl: OldPattern = {
  style: 'cowl, materials without heads of their own, gauge with "in" behind the centimetres',
  terms: 'us',
  title: 'Fernhollow Cowl',
  sizes: ['Small', 'Medium', 'Large'],
  text: `Fernhollow Cowl
by Marta Lind

A quick cowl in the round with a little lace.

SIZES
Small (Medium, Large)
Circumference: 56 (61, 66) cm / 22 (24, 26) in

MATERIALS
Aran weight wool, 100 g / 180 m per ball: 2 (2, 3) balls
5.5 mm (I) hook
Stitch marker, tapestry needle

GAUGE
14 sts and 8 rows = 10 cm in dc

ABBREVIATIONS (US)
ch - chain
dc - double crochet
sk: skip

SPECIAL STITCHES
V-st: (dc, ch 1, dc) in the same st

NOTES
Ch 3 at the start of a round counts as a dc.

COWL
Ch 78 (84, 93), join with a sl st, being careful not to twist.
Rnd 1: Ch 3, dc in each ch around, join. 78 (84, 93) dc
Rnd 2: Ch 3, dc in next 2 sts, *sk 1, V-st in next st, sk 1; rep from * around, join.
Rnd 3: Ch 3, dc in each st and ch-1 sp around, join. Fasten off.

FINISHING
Weave in ends. Block lightly.

(c) Marta Lind 2014
`,
  // Rnd 2: 3 + 2 × 25 (27, 30) = 53 (57, 63); Rnd 3: and the 25 (27, 30) spaces: 78 (84, 93).
  pieces: [
    {
      name: 'COWL',
      counts: [
        [78, 84, 93],
        [78, 84, 93],
        [53, 57, 63],
        [78, 84, 93],
      ],
    },
  ],
  also: ({ hooks, notions, gauges }) => ({
    hooks: hooks.map(({ mm }) => mm),
    notions: notions.map(({ name }) => name),
    gauge: gauges.map(({ stitches, rows, width }) => [stitches, rows, width.value, width.unit]),
  }),
  expected: {
    hooks: [5.5],
    notions: ['Stitch marker', 'tapestry needle'],
    gauge: [[14, 8, 10, 'cm']],
  },
};

/** Every pattern, in plain text. */
export const oldPatterns: readonly OldPattern[] = [
  amigurumi,
  blanket,
  sweater,
  hat,
  square,
  newsletter,
  pdf,
  bilingual,
  counted,
  waistcoat,
  shawl,
  cowl,
];
