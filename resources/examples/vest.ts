/**
 * The Saltings Vest: an example of a garment in two panels, with a repeat that every size must be fitted to,
 * bands picked up along edges, and ten sizes. The designer and all names are invented.
 */
import type { Gauge, Hook, Line, Notion, Pattern, Size } from '../../core/document/pattern.ts';
import { NO_WORKBOOK } from '../../core/document/workbook.ts';
import {
  bodyLine,
  each,
  easeLine,
  edge,
  formulaLine,
  inches,
  plain,
  rowsLine,
  sampleOf,
  stitchesLine,
  text,
  typedLine,
  Writer,
} from './build.ts';

const sizes: readonly Size[] = [
  ...['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X'].map(
    (label): Size => ({
      id: `size-${label.toLowerCase()}`,
      label,
      audience: 'woman',
      chart: label,
      age: null,
    }),
  ),
  // Beyond the council's chart: measurements of our own, in the chart's steps.
  { id: 'size-6x', label: '6X', audience: 'woman', chart: null, age: null },
];

const hooks: readonly Hook[] = [
  { id: 'hook-body', mm: 4.5, purpose: 'for the panels, or the size that gives the gauge' },
  { id: 'hook-bands', mm: 4, purpose: 'for the bands' },
];

const gauges: readonly Gauge[] = [
  {
    id: 'gauge-v',
    pattern: 'V-stitch pattern (8 repeats of 2 rows)',
    stitches: 16,
    rows: 16,
    width: inches(4),
    height: inches(4),
    blocked: true,
    stretch: null,
    hook: 'hook-body',
    rounds: false,
  },
  {
    id: 'gauge-rib',
    pattern: 'post stitch rib',
    stitches: 18,
    rows: 16,
    width: inches(4),
    height: inches(4),
    blocked: true,
    stretch: null,
    hook: 'hook-bands',
    rounds: true,
  },
];

const lines: readonly Line[] = [
  bodyLine('bust', 'bust', { 'size-6x': inches(66) }, { printed: 'To fit bust up to' }),
  bodyLine('cross back', 'cross_back', { 'size-6x': inches(19) }),
  bodyLine('armhole', 'armhole_depth', { 'size-6x': inches(11) }),
  easeLine('ease', { all: inches(5) }),
  formulaLine('finished chest', 'bust + ease', { printed: 'Finished bust', fits: 'bust' }),
  // A multiple of 6 plus 2: an even number of V-stitches, so that the neck stands in the middle.
  stitchesLine('panel stitches', 'finished chest ÷ 2', 'gauge-v', 6, 2),
  formulaLine('panel V-stitches', '(panel stitches − 2) ÷ 3'),
  typedLine('side length', { all: inches(12.75) }, { printed: 'Hem to armhole' }),
  rowsLine('panel rows', 'side length', 'gauge-v', 2, 1),
  // The larger the chest beside the shoulders, the more of it is left at the underarm.
  formulaLine('yoke width', 'cross back + (width of panel stitches − cross back) × 35 %'),
  stitchesLine('underarm stitches', '(width of panel stitches − yoke width) ÷ 2', 'gauge-v', 3, 0),
  formulaLine('yoke stitches', 'panel stitches − 2 × underarm stitches'),
  formulaLine('yoke V-stitches', '(yoke stitches − 2) ÷ 3'),
  formulaLine('armhole length', 'armhole + 1.5 in', { printed: 'Armhole depth' }),
  rowsLine('armhole rows', 'armhole length', 'gauge-v', 2, 0),
  typedLine('neck width', each(sizes, [8.25, 8.25, 8.5, 8.5, 8.75, 9, 9, 9.5, 9.5, 9.75], inches)),
  stitchesLine(
    'shoulder stitches',
    '(width of panel stitches − 2 × width of underarm stitches − neck width) ÷ 2',
    'gauge-v',
    3,
    2,
  ),
  formulaLine('shoulder V-stitches', '(shoulder stitches − 2) ÷ 3'),
  formulaLine('neck stitches', 'yoke stitches − 2 × shoulder stitches'),
  typedLine('neck drop', each(sizes, [4, 4, 4, 4.5, 4.5, 4.5, 5, 5, 5, 5], inches)),
  rowsLine('neck rows', 'neck drop', 'gauge-v', 2, 0),
  formulaLine('front yoke rows', 'armhole rows − neck rows'),
  formulaLine('full length', 'length of panel rows + length of armhole rows', { printed: 'Hem to shoulder' }),
  formulaLine('neckband stitches', '2 × neck stitches + 2 × neck rows + 2'),
  formulaLine('armband stitches', '2 × underarm stitches + 2 × armhole rows + 2'),
  typedLine('band rounds', { all: plain(5) }),
  formulaLine('band depth', '1.25 in'),
];

const notions: readonly Notion[] = [
  {
    id: 'notion-markers',
    name: 'Stitch markers',
    amount: { all: 4 },
    smallPart: false,
    cord: false,
    price: null,
  },
  {
    id: 'notion-needle',
    name: 'Yarn needle',
    amount: { all: 1 },
    smallPart: false,
    cord: false,
    price: null,
  },
];

// The rows of the V-stitch pattern, which every part goes on with.
const solidRow = (stitches: string) =>
  `Ch 1, sc in each hdc and in each ch-1 sp across, working last sc in top of turning ch, turn. ({${stitches}} sc)`;
const vRow = (repeats: string) =>
  `Ch 2 (counts as hdc), sk first 2 sts, V-st in next st, *sk 2 sts, V-st in next st; rep from * to last 2 sts, sk next st, hdc in last st, turn. ({${repeats}} V-sts, 2 hdc)`;
/** V-stitches over part of the row below, after the turning chain. */
const vRowPart = (repeats: string) =>
  `ch 2 (counts as hdc), sk next st, V-st in next st, *sk 2 sts, V-st in next st; rep from * {${repeats} − 2} more times, sk next st, hdc in next st, turn`;

const panel = new Writer('panel');
panel.foundation('Ch {panel stitches + 1}.');
const panelFirst = panel.row('Sc in 2nd ch from hook and in each ch across, turn. ({panel stitches} sc)');
const panelV = panel.row(vRow('panel V-stitches'));
const panelSolid = panel.row(solidRow('panel stitches'));
panel.untilTotal(panelV, panelSolid, 'panel rows');
panel.prose(
  'Fasten off. The last row is a WS row of sc. For a longer or shorter vest work 2 rows more or fewer here for each ½ in (1.3 cm), the same on both panels, and allow for it when you buy yarn.',
);

const back = new Writer('back');
back.prose(
  'Take one panel. The {underarm stitches} sts at each side of its last row stay unworked: they are the underarms.',
);
back.row(
  `With RS facing, sk first {underarm stitches} sts, join yarn with sl st in next st, ${vRowPart('yoke V-stitches')}, leaving last {underarm stitches} sts unworked. ({yoke V-stitches} V-sts, 2 hdc)`,
);
back.row(solidRow('yoke stitches'));
const backV = back.row(vRow('yoke V-stitches'));
const backSolid = back.row(solidRow('yoke stitches'));
back.untilTotal(backV, backSolid, 'armhole rows');
back.prose(
  'Fasten off. Count {shoulder stitches} sts from each end of the last row and place a marker after them: these are the shoulders, and the {neck stitches} sts between the markers are the back neck.',
);

const front = new Writer('front');
front.prose('Take the other panel.');
front.row(
  `With RS facing, sk first {underarm stitches} sts, join yarn with sl st in next st, ${vRowPart('yoke V-stitches')}, leaving last {underarm stitches} sts unworked. ({yoke V-stitches} V-sts, 2 hdc)`,
);
front.row(solidRow('yoke stitches'));
const frontV = front.row(vRow('yoke V-stitches'));
const frontSolid = front.row(solidRow('yoke stitches'));
front.untilTotal(frontV, frontSolid, 'front yoke rows');
front.prose('Do not fasten off. The shoulders are worked one after the other.');

const left = new Writer('left-shoulder');
left.prose('This is the left shoulder as the vest is worn. Go on with the same yarn.');
left.row(
  'Ch 2 (counts as hdc), sk first 2 sts, V-st in next st, *sk 2 sts, V-st in next st; rep from * {shoulder V-stitches − 2} more times, sk next st, hdc in next st, turn, leaving rem sts unworked. ({shoulder V-stitches} V-sts, 2 hdc)',
);
left.row(solidRow('shoulder stitches'));
const leftV = left.row(vRow('shoulder V-stitches'));
const leftSolid = left.row(solidRow('shoulder stitches'));
left.untilTotal(leftV, leftSolid, 'neck rows');
left.prose('Fasten off, leaving a long tail for the seam.');

const right = new Writer('right-shoulder');
right.prose('The next {neck stitches} sts of the Front are the front neck and stay unworked.');
right.row(
  `With RS facing, sk next {neck stitches} sts (the front neck), join yarn with sl st in next st, ${vRowPart('shoulder V-stitches')}. ({shoulder V-stitches} V-sts, 2 hdc)`,
);
right.row(solidRow('shoulder stitches'));
const rightV = right.row(vRow('shoulder V-stitches'));
const rightSolid = right.row(solidRow('shoulder stitches'));
right.untilTotal(rightV, rightSolid, 'neck rows');
right.prose('Fasten off, leaving a long tail for the seam.');
right.heading('Blocking and seams');
right.prose(
  'Block all pieces to their measurements. With RS together, whipstitch each front shoulder to the back shoulder, stitch to stitch. Whipstitch the side seams from hem to underarm, row to row. The seams take up no width.',
);

const rib =
  'Ch 2 (does not count as a st), *FPhdc around next st, BPhdc around next st; rep from * around; join with sl st in first FPhdc.';

const neckband = new Writer('neckband');
neckband.prose('Work the bands with the 4 mm hook. Every row-end takes 1 sc, and so does every seam.');
neckband.round(
  'With RS facing, join yarn with sl st in first st (beside the right shoulder seam, at the back neck), ch 1, sc in same st, sc in each of next {neck stitches − 1} sts (back neck), sc in next seam, sc in each of next {neck rows} row-ends (left side), sc in each of next {neck stitches} sts (front neck), sc in each of next {neck rows} row-ends (right side), sc in next seam; join with sl st in first sc. ({neckband stitches} sc)',
);
neckband.prose('The next round draws the two corners of the front neck together: 2 sts fewer at each.');
neckband.round(
  'Ch 2 (does not count as a st), hdc in each of next {neck stitches + neck rows} sts, hdc3tog over next 3 sts, hdc in each of next {neck stitches − 4} sts, hdc3tog over next 3 sts, hdc in each of next {neck rows} sts; join with sl st in first hdc. ({neckband stitches − 4} sts)',
  { title: 'Corner' },
);
const neckRib = neckband.round(`${rib} ({neckband stitches − 4} sts)`);
neckband.untilTotal(neckRib, neckRib, 'band rounds');
neckband.prose('Fasten off.');

const armband = new Writer('armband');
armband.prose(
  'Begin at the underarm, beside the side seam. The left armband goes up the front and down the back, the right armband up the back and down the front; the counts are the same.',
);
armband.round(
  'With RS facing, join yarn with sl st in first st (the underarm st to the left of the side seam), ch 1, sc in same st, sc in each of next {underarm stitches − 1} sts, sc in each of next {armhole rows} row-ends, sc in next seam (the shoulder), sc in each of next {armhole rows} row-ends, sc in each of next {underarm stitches} sts, sc in next seam (the side); join with sl st in first sc. ({armband stitches} sc)',
);
armband.prose('The next round draws the two corners of the underarm together: 2 sts fewer at each.');
armband.round(
  'Ch 2 (does not count as a st), hdc in each of next {underarm stitches − 1} sts, hdc3tog over next 3 sts, hdc in each of next {2 × armhole rows − 3} sts, hdc3tog over next 3 sts, hdc in each of next {underarm stitches} sts; join with sl st in first hdc. ({armband stitches − 4} sts)',
  { title: 'Corner' },
);
const armRib = armband.round(`${rib} ({armband stitches − 4} sts)`);
armband.untilTotal(armRib, armRib, 'band rounds');
armband.prose('Fasten off.');

const own = { sizes, lines, gauges, tolerance: inches(0.75) };

const lineIdOf = (name: string): string => lines.find((line) => line.name === name)!.id;

export const vest: Pattern = {
  about: {
    title: 'Saltings Vest',
    designer: 'Ilse Quillfeather',
    level: 2,
    description:
      'A boxy vest to throw over a shirt, in a calm stitch of small Vs between rows of single crochet. Two straight panels carry a narrower yoke, so that the shoulders sit where they should in every size; neck and armholes are finished with bands of post stitch rib. Amounts of yarn are estimates from the finished sample, with 15% to spare; keep the ball bands until you have made your first panel.',
    construction:
      'Front and back begin as two equal panels at the hem and are worked upwards in rows. At the underarm some stitches are left at each side and the yoke goes on over the rest; the front divides for a square neck. After the shoulder and side seams the neckband and the armbands are worked in rounds from the edges.',
    garment: 'vest',
    cover: null,
    version: '1.0',
    date: '2026-11-25',
    copyright:
      '© 2026 Ilse Quillfeather. For your own use. You are welcome to sell what you make from this pattern in small numbers with credit to the designer; please do not share, copy or sell the pattern itself.',
    contact: 'patterns@quillfeather.example',
    care: 'Wash by hand in cool water, press the water out in a towel and dry flat to shape. Do not iron the rib.',
    language: 'en',
    fit: 'Boxy: choose the size with a finished bust 4 to 6 in / 10 to 15 cm larger than yours. The bands are worked with a smaller hook, so that they draw in a little; the neckband stretches over the head.',
  },
  terms: 'us',
  units: 'imperial',
  ...own,
  sample: 'size-m',
  hooks,
  notions,
  yarns: [
    {
      id: 'yarn-main',
      key: null,
      name: 'A light yarn (DK), smooth and round',
      weight: 3,
      fibre: '55% cotton, 45% wool',
      ballGrams: 50,
      ballMetres: 112,
      ballPrice: 7.5,
      metres: {},
    },
  ],
  specials: [
    {
      id: 'special-v',
      nameUs: 'V-stitch',
      nameUk: 'V-stitch',
      abbrUs: 'V-st',
      abbrUk: 'V-st',
      text: text('(hdc, ch 1, hdc) in st indicated'),
    },
  ],
  abbreviations: {},
  notes: [
    text(
      'The V-stitch pattern works over a multiple of 3 sts plus 2 and repeats 2 rows: an RS row of V-stitches and a WS row of sc, which puts one sc in each hdc and one in each ch-1 sp.',
    ),
    text(
      'In the rows, ch 2 at the beginning counts as the first hdc, and the last st of the next row is worked in the top of it. Ch 1 at the beginning of a row or round never counts as a st. In the rounds of the bands, ch 2 does not count either.',
    ),
    text(
      'To try the gauge, ch 27 and work 20 rows of the pattern (26 sts, 8 V-sts). Wash and dry the swatch as you will the vest, then measure in the middle.',
    ),
    text('RS is the side that shows the V-stitches towards you as you work them.'),
  ],
  pieces: [
    panel.piece('Panels', { kind: 'chain' }, 'WS', {
      make: 2,
      meets: [{ mine: edge('panel', 'row-ends'), other: edge('panel', 'row-ends') }],
    }),
    back.piece('Back', { kind: 'edges', edges: [edge('panel', 'top')], round: false }, 'RS'),
    front.piece('Front', { kind: 'edges', edges: [edge('panel', 'top')], round: false }, 'RS'),
    left.piece('Left Front Shoulder', { kind: 'edges', edges: [edge('front', 'top')], round: false }, 'RS', {
      meets: [{ mine: edge('left-shoulder', 'top'), other: edge('back', 'top', 'shoulder stitches') }],
    }),
    right.piece(
      'Right Front Shoulder',
      {
        kind: 'edges',
        edges: [edge('front', 'top', 'neck stitches + shoulder stitches')],
        round: false,
      },
      'RS',
      { meets: [{ mine: edge('right-shoulder', 'top'), other: edge('back', 'top', 'shoulder stitches') }] },
    ),
    neckband.piece(
      'Neckband',
      {
        kind: 'edges',
        edges: [
          edge('back', 'top', 'neck stitches'),
          edge('', 'seam'),
          edge('left-shoulder', 'row-ends'),
          edge('front', 'top', 'neck stitches'),
          edge('right-shoulder', 'row-ends'),
          edge('', 'seam'),
        ],
        round: true,
      },
      'RS',
      { gauge: 'gauge-rib' },
    ),
    armband.piece(
      'Armbands',
      {
        kind: 'edges',
        edges: [
          edge('panel', 'top', 'underarm stitches'),
          edge('front', 'row-ends', 'front yoke rows'),
          edge('left-shoulder', 'row-ends', 'neck rows'),
          edge('', 'seam'),
          edge('back', 'row-ends', 'armhole rows'),
          edge('panel', 'top', 'underarm stitches'),
          edge('', 'seam'),
        ],
        round: true,
      },
      'RS',
      { make: 2, gauge: 'gauge-rib' },
    ),
  ],
  finishing: [text('Weave in all ends along the seams. Damp the bands, pat them flat and let them dry.')],
  cautions: [],
  charts: [
    {
      id: 'chart-v',
      piece: 'panel',
      first: panelFirst.id,
      last: panelSolid.id,
      size: '',
      title: 'V-stitch fabric',
    },
  ],
  // Invented demo data: what the maker keeps, none of which is printed but the amounts of yarn.
  workbook: {
    ...NO_WORKBOOK,
    yarnMargin: 15,
    pricing: {
      currency: 'USD',
      hourly: 14,
      other: [{ name: 'Parcel and label', amount: 6.5 }],
      profit: 10,
      fee: 6.5,
    },
    makings: [
      sampleOf('size-m', 373, 31),
      {
        id: 'making-tester',
        kind: 'tester',
        by: 'Bryn Fallowmere',
        size: 'size-2x',
        state: 'finished',
        used: [{ yarn: 'yarn-main', piece: '', grams: 497, metres: null }],
        hours: 43,
        swatch: null,
        measured: {},
        note: 'Invented for this example.',
      },
    ],
    people: [
      {
        id: 'person-example',
        name: 'Wilmot Sedgeley',
        base: 'size-l',
        values: { [lineIdOf('bust')]: inches(41.5), [lineIdOf('side length')]: inches(14) },
        note: 'Invented for this example.',
      },
    ],
  },
};
