/**
 * The Slackwater Tee: an example worked from the neck down, with increases at four corners whose pace differs
 * by size, sleeves worked on from the openings of the yoke, and nine sizes. The designer and all names are
 * invented.
 */
import type { Gauge, Hook, Line, Notion, Pattern, Size } from '../../core/document/pattern.ts';
import { NO_WORKBOOK } from '../../core/document/workbook.ts';
import {
  bodyLine,
  cm,
  each,
  easeLine,
  edge,
  formulaLine,
  plain,
  rowsLine,
  sampleOf,
  shapingLine,
  stitchesLine,
  text,
  typedLine,
  Writer,
} from './build.ts';

const sizes: readonly Size[] = ['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X'].map((label) => ({
  id: `size-${label.toLowerCase()}`,
  label,
  audience: 'woman',
  chart: label,
  age: null,
}));

const hooks: readonly Hook[] = [
  { id: 'hook-tee', mm: 4.5, purpose: 'for the tee, or the size that gives the gauge' },
  { id: 'hook-bands', mm: 4, purpose: 'for the bands' },
];

const gauges: readonly Gauge[] = [
  {
    id: 'gauge-hdc',
    pattern: 'half double crochet',
    stitches: 16,
    rows: 12,
    width: cm(10),
    height: cm(10),
    blocked: true,
    stretch: null,
    hook: 'hook-tee',
    rounds: true,
  },
];

const lines: readonly Line[] = [
  bodyLine('bust', 'bust', {}, { printed: 'To fit bust up to' }),
  bodyLine('upper arm', 'upper_arm', {}),
  bodyLine('armhole', 'armhole_depth', {}),
  easeLine('ease', { all: cm(5) }),
  formulaLine('finished bust', 'bust + ease', { printed: 'Finished bust', fits: 'bust' }),
  // A multiple of 4: front and back are equal, and each has a middle.
  stitchesLine('body stitches', 'finished bust', 'gauge-hdc', 4, 0),
  typedLine('underarm width', each(sizes, [3.75, 5, 5, 6.25, 7.5, 8.75, 10, 12.5, 13.75], cm)),
  stitchesLine('underarm chains', 'underarm width', 'gauge-hdc', 2, 0, { counts: 'chains' }),
  formulaLine('front stitches', 'body stitches ÷ 2 − underarm chains'),
  formulaLine('finished upper arm', 'upper arm + 6 cm', { printed: 'Finished upper arm', fits: 'upper arm' }),
  stitchesLine('sleeve stitches', 'finished upper arm', 'gauge-hdc', 2, 0),
  formulaLine('sleeve top stitches', 'sleeve stitches − underarm chains'),
  typedLine('front neck stitches', each(sizes, [30, 32, 34, 34, 36, 36, 38, 38, 38], plain)),
  typedLine('shoulder stitches', each(sizes, [18, 18, 18, 20, 20, 20, 20, 20, 22], plain)),
  formulaLine('neck stitches', '2 × front neck stitches + 2 × shoulder stitches'),
  // Increases that body and sleeves share come first, those of the body alone after them.
  formulaLine('body increases', '(front stitches − front neck stitches) ÷ 2'),
  formulaLine('shared increases', '(sleeve top stitches − shoulder stitches) ÷ 2'),
  formulaLine('own increases', 'body increases − shared increases'),
  formulaLine('yoke depth', 'armhole + 3.5 cm', { printed: 'Yoke depth' }),
  rowsLine('yoke rounds', 'yoke depth', 'gauge-hdc', 1, 0),
  formulaLine('own rounds', '(yoke rounds − 1) × own increases ÷ body increases, rounded down to 1'),
  formulaLine('shared rounds', 'yoke rounds − 1 − own rounds'),
  formulaLine('stitches after shared', 'neck stitches + 8 × shared increases'),
  formulaLine('yoke stitches', 'stitches after shared + 4 × own increases'),
  shapingLine('raglan', 'neck stitches', 'stitches after shared', 'shared rounds', 2, 4),
  shapingLine('body shaping', 'stitches after shared', 'yoke stitches', 'own rounds', 1, 4),
  typedLine('side length', { all: cm(33) }),
  typedLine('hem rounds', { all: plain(4) }),
  rowsLine('body rounds', 'side length − hem rounds × 10 cm ÷ 12', 'gauge-hdc', 1, 0),
  formulaLine('side made', 'length of body rounds + hem rounds × 10 cm ÷ 12', { printed: 'Underarm to hem' }),
  formulaLine('full length', 'length of yoke rounds + side made', { printed: 'Neck edge to hem' }),
  typedLine('sleeve length', { all: cm(11.5) }),
  typedLine('cuff rounds', { all: plain(3) }),
  rowsLine('sleeve rounds', 'sleeve length − cuff rounds × 10 cm ÷ 12', 'gauge-hdc', 1, 0),
  formulaLine('sleeve made', 'length of sleeve rounds + cuff rounds × 10 cm ÷ 12', {
    printed: 'Underarm to cuff',
  }),
  formulaLine('arm opening', 'upper arm + 3 cm', { printed: 'Cuff edge' }),
  stitchesLine('cuff stitches', 'arm opening', 'gauge-hdc', 2, 0),
  shapingLine('sleeve shaping', 'sleeve stitches', 'cuff stitches', 'sleeve rounds − 2', 1, 2),
  typedLine('neckband rounds', { all: plain(3) }),
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

const BEGIN = 'Ch 2 (does not count as a st),';
const JOIN = 'join with sl st in first hdc.';
const rib = (count: string) =>
  `${BEGIN} *FPdc around next st, BPdc around next st; rep from * around; join with sl st in first FPdc. ({${count}} sts)`;

const yoke = new Writer('yoke');
yoke.prose(
  'Use the 4.5 mm hook, or one a size larger for the chain if your chains are tight. Rounds begin at the center back. Take care not to twist the chain.',
);
yoke.foundation('Ch {neck stitches}, join with sl st in first ch to form a ring.');
yoke.round(
  `${BEGIN} hdc in each of next {front neck stitches ÷ 2} ch, ch 1, hdc in each of next {shoulder stitches} ch, ch 1, hdc in each of next {front neck stitches} ch, ch 1, hdc in each of next {shoulder stitches} ch, ch 1, hdc in each of last {front neck stitches ÷ 2} ch; ${JOIN} ({neck stitches} hdc, 4 ch-1 sps)`,
);
yoke.prose(
  'The 4 ch-1 sps are the corners: half the back, a sleeve, the front, a sleeve and the other half of the back lie between them. Place a marker in each, and move the markers up as you go. Body and sleeves now grow together, by 2 sts at each corner.',
);
yoke.shaping(
  'raglan',
  `${BEGIN} *hdc in each hdc to next ch-1 sp, (hdc, ch 1, hdc) in ch-1 sp; rep from * 3 more times, hdc in each hdc to end; ${JOIN}`,
  `${BEGIN} *hdc in each hdc to next ch-1 sp, ch 1, sk ch-1 sp; rep from * 3 more times, hdc in each hdc to end; ${JOIN}`,
);
yoke.prose(
  'There are {stitches after shared} sts: {front neck stitches + 2 × shared increases} for the front and for the back, and {sleeve top stitches} for each sleeve. The sleeves are wide enough now; from here only front and back grow, by 1 st at each corner.',
);
yoke.shaping(
  'body shaping',
  `${BEGIN} *hdc in each hdc to next ch-1 sp, (hdc, ch 1) in ch-1 sp, hdc in each hdc to next ch-1 sp, (ch 1, hdc) in ch-1 sp; rep from * once more, hdc in each hdc to end; ${JOIN}`,
  `${BEGIN} *hdc in each hdc to next ch-1 sp, ch 1, sk ch-1 sp; rep from * 3 more times, hdc in each hdc to end; ${JOIN}`,
);
yoke.prose(
  'There are {yoke stitches} sts: {front stitches} for the front and for the back, and {sleeve top stitches} for each sleeve. Try the yoke on: it should reach the underarm. Do not fasten off.',
);

const body = new Writer('body');
body.round(
  `${BEGIN} hdc in each of next {front stitches ÷ 2} sts, ch {underarm chains}, sk next ch-1 sp, sk next {sleeve top stitches} sts, sk next ch-1 sp, hdc in each of next {front stitches} sts, ch {underarm chains}, sk next ch-1 sp, sk next {sleeve top stitches} sts, sk next ch-1 sp, hdc in each of last {front stitches ÷ 2} sts; ${JOIN} ({2 × front stitches} hdc)`,
  { title: 'Dividing' },
);
body.round(`${BEGIN} hdc in each hdc and in each ch to end; ${JOIN} ({body stitches} hdc)`);
const bodyEven = body.round(`${BEGIN} hdc in each st around; ${JOIN} ({body stitches} hdc)`);
body.untilTotal(bodyEven, bodyEven, 'body rounds');
body.prose(
  'For a longer or shorter tee work more or fewer rounds here; 6 rounds are 5 cm / 2 in. Change to the 4 mm hook.',
);
const hemRib = body.round(rib('body stitches'), { title: 'Hem' });
body.forRows(hemRib, hemRib, 'hem rounds − 1');
body.prose('Fasten off.');

const sleeve = new Writer('sleeve');
sleeve.prose(
  'With the 4.5 mm hook and RS facing, begin where the underarm chain ends and the waiting sts begin. The underarm is worked along the other side of its chain.',
);
sleeve.round(
  `Join yarn with sl st in first st (of the sleeve), ch 2 (does not count as a st), hdc in each of next {sleeve top stitches} sts, hdc in each of next {underarm chains} ch (along the underarm); ${JOIN} ({sleeve stitches} hdc)`,
);
sleeve.round(`${BEGIN} hdc in each st around; ${JOIN} ({sleeve stitches} hdc)`);
sleeve.prose('The sleeve narrows by 1 st on either side of the underarm.');
sleeve.shaping(
  'sleeve shaping',
  `${BEGIN} hdc2tog over next 2 sts, hdc in each st to last {underarm chains + 2} sts, hdc2tog over next 2 sts, hdc in each st to end; ${JOIN}`,
  `${BEGIN} hdc in each st around; ${JOIN}`,
);
sleeve.prose('There are {cuff stitches} sts. Change to the 4 mm hook.');
const cuffRib = sleeve.round(rib('cuff stitches'), { title: 'Cuff' });
sleeve.forRows(cuffRib, cuffRib, 'cuff rounds − 1');
sleeve.prose('Fasten off.');

const neckband = new Writer('neckband');
neckband.prose(
  'Work the neckband with the 4 mm hook. It draws the neck edge in; if it is too tight for the head, use the larger hook for its first round.',
);
neckband.round(
  'With RS facing, join yarn with sl st in first ch (at the center back), ch 1, sc in each ch around; join with sl st in first sc. ({neck stitches} sc)',
);
const neckRib = neckband.round(rib('neck stitches'));
neckband.untilTotal(neckRib, neckRib, 'neckband rounds');
neckband.prose('Fasten off.');

const own = { sizes, lines, gauges, tolerance: cm(2) };

export const tee: Pattern = {
  about: {
    title: 'Slackwater Tee',
    designer: 'Ilse Quillfeather',
    level: 3,
    description:
      'An easy short-sleeved tee without a seam, worked from a wide round neck downwards so that you can try it on at every stage. Every size has its own pace of increases at the four corners of the yoke: first body and sleeves grow together, then the body alone, so that larger sizes get room at the bust and not at the arm. Amounts of yarn are estimates from the finished sample, with 15% to spare.',
    construction:
      'Worked in joined rounds from the neck down with the right side out. The yoke grows at four corners; at the underarm a few chains bridge each sleeve, and the body goes on to the hem. The sleeves are worked from the stitches left waiting and the other side of the underarm chains. A narrow rib finishes the neck, the sleeves and the hem.',
    garment: 'tee',
    cover: null,
    version: '1.0',
    date: '2026-11-25',
    copyright:
      '© 2026 Ilse Quillfeather. For your own use. You are welcome to sell what you make from this pattern in small numbers with credit to the designer; please do not share, copy or sell the pattern itself.',
    contact: 'patterns@quillfeather.example',
    care: 'Machine wash at 30 °C / 86 °F in a laundry bag, pull into shape and dry flat.',
    language: 'en',
    fit: 'Standard: choose the size with a finished bust 4 to 10 cm / 1½ to 4 in larger than yours. The bands are worked with a smaller hook, so that they draw in a little.',
  },
  terms: 'us',
  units: 'metric',
  ...own,
  sample: 'size-m',
  hooks,
  notions,
  yarns: [
    {
      id: 'yarn-main',
      key: null,
      name: 'A light yarn (DK) with drape',
      weight: 3,
      fibre: '60% cotton, 40% viscose',
      ballGrams: 100,
      ballMetres: 230,
      ballPrice: null,
      metres: {},
    },
  ],
  specials: [],
  abbreviations: {},
  notes: [
    text(
      'The ch 2 at the beginning of a round does not count as a st: work the first st of the round in the same place as the joining sl st, and join to that first st.',
    ),
    text('Ch-1 sps at the corners are not counted as sts.'),
    text(
      'Gauge is measured in rounds, and the number of rounds matters as much as the number of sts: it gives the depth of the yoke. If your rounds are too tall or too short, try holding the yarn in another way before you change the hook.',
    ),
  ],
  pieces: [
    yoke.piece('Yoke', { kind: 'chain' }, 'RS'),
    body.piece('Body', { kind: 'edges', edges: [edge('yoke', 'top')], round: true }, 'RS'),
    sleeve.piece('Sleeves', { kind: 'edges', edges: [edge('body', 'opening')], round: true }, 'RS', {
      make: 2,
    }),
    neckband.piece('Neckband', { kind: 'edges', edges: [edge('yoke', 'foundation')], round: true }, 'RS'),
  ],
  finishing: [
    text(
      'Close the small gaps at the ends of the underarm chains with the tails and weave in all ends. Wash the tee, dry it flat to its measurements and let the rib draw in.',
    ),
  ],
  cautions: [],
  charts: [],
  workbook: { ...NO_WORKBOOK, yarnMargin: 15, makings: [sampleOf('size-m', 423, 36)] },
};
