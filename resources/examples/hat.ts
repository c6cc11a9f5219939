/**
 * The Skerry Hat: an example worked from the crown down in rounds, in seven sizes from newborn to large adult,
 * written in UK terms. The designer and all names are invented.
 */
import type { Gauge, Hook, Line, Notion, Pattern, Size } from '../../core/document/pattern.ts';
import { NO_WORKBOOK } from '../../core/document/workbook.ts';
import {
  bodyLine,
  cm,
  each,
  easeLine,
  formulaLine,
  inches,
  percent,
  plain,
  rowsLine,
  sampleOf,
  sheetOf,
  sizesWhere,
  stitchesLine,
  text,
  typedLine,
  valuesOf,
  Writer,
} from './build.ts';

const size = (id: string, label: string, audience: Size['audience'], age: Size['age']): Size => ({
  id,
  label,
  audience,
  chart: null,
  age,
});

const sizes: readonly Size[] = [
  size('size-newborn', 'Newborn', 'baby', [0, 0.25]),
  size('size-3-6-months', '3–6 months', 'baby', [0.25, 0.5]),
  size('size-6-12-months', '6–12 months', 'baby', [0.5, 1]),
  size('size-toddler', 'Toddler', 'child', [1, 3]),
  size('size-child', 'Child', 'child', [4, 10]),
  size('size-adult', 'Adult', 'other', null),
  size('size-large', 'Large adult', 'other', null),
];

const hooks: readonly Hook[] = [
  { id: 'hook-hat', mm: 4.5, purpose: 'for the hat, or the size that gives the tension' },
  { id: 'hook-band', mm: 4, purpose: 'for the band' },
];

const gauges: readonly Gauge[] = [
  {
    id: 'gauge-htr',
    pattern: 'half treble',
    stitches: 16,
    rows: 12,
    width: cm(10),
    height: cm(10),
    blocked: true,
    stretch: null,
    hook: 'hook-hat',
    rounds: true,
  },
];

const heads = each(sizes, [36, 41, 45, 49, 52, 56, 60], cm);

const lines: readonly Line[] = [
  bodyLine('head', 'head', 'each' in heads ? heads.each : {}, { printed: 'To fit head' }),
  easeLine('ease', { all: percent(-5) }),
  formulaLine('finished hat', 'head + ease', { printed: 'Hat circumference', fits: 'head' }),
  // A multiple of 4, so that the last crown round has 4 or 8 increases, evenly, and the rib comes out.
  stitchesLine('hat stitches', 'finished hat', 'gauge-htr', 4, 0),
  formulaLine('full crown rounds', 'hat stitches ÷ 8 − 1, rounded up to 1'),
  formulaLine('last increases', 'hat stitches − 8 × full crown rounds'),
  formulaLine('stitches between', '8 × full crown rounds ÷ last increases − 1'),
  // From the edge of the crown to the brow: depths of finished hats as designers publish them.
  typedLine('depth', each(sizes, [3.5, 4, 4.25, 4.75, 5, 5.25, 5.5], inches)),
  typedLine('band rounds', each(sizes, [3, 3, 3, 4, 4, 4, 5], plain)),
  formulaLine('band depth', 'band rounds × 10 cm ÷ 12'),
  rowsLine('side rounds', 'depth − band depth', 'gauge-htr', 1, 0),
  formulaLine('hat rounds', 'full crown rounds + 1 + side rounds + band rounds'),
  formulaLine('hat height', 'hat rounds × 10 cm ÷ 12', { printed: 'Crown to brim' }),
];

const notions: readonly Notion[] = [
  {
    id: 'notion-marker',
    name: 'Stitch marker',
    amount: { all: 1 },
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

const own = { sizes, lines, gauges, tolerance: cm(2) };
const sheet = sheetOf(own);

/** Rounds of the crown that are drawn: further ones go on in the same way. */
const CHARTED = 6;

const BEGIN = 'Ch 2 (does not count as a st),';
const JOIN = 'join with ss in first htr.';

const work = new Writer('hat');
work.heading('Crown');
const crownFirst = work.round(
  `Make a magic ring, ch 2 (does not count as a st), 8 htr in ring, ${JOIN} (8 htr)`,
);
work.round(`${BEGIN} 2 htr in each st around, ${JOIN} (16 htr)`);
work.round(`${BEGIN} *1 htr in next st, 2 htr in next st; rep from * around, ${JOIN} (24 htr)`);
// Every further round has one stitch more between the increases, in the sizes whose crown is so large.
let charted = crownFirst;
const most = Math.max(...valuesOf(sheet, 'full crown rounds'));
for (let round = 4; round <= most; round++) {
  const working = sizesWhere(sheet, 'full crown rounds', (rounds) => rounds >= round);
  const made = work.round(
    `${BEGIN} *1 htr in each of next ${round - 2} sts, 2 htr in next st; rep from * around, ${JOIN} (${8 * round} htr)`,
    working.length === sizes.length ? {} : { sizes: working },
  );
  if (round <= CHARTED) charted = made;
}
work.prose(
  'The last increase round has {last increases} increases, so that the hat comes to its size. The crown should lie flat; if it cups, try a larger hook, if it ruffles, a smaller one.',
);
work.round(
  `${BEGIN} *1 htr in each of next {stitches between} sts, 2 htr in next st; rep from * around, ${JOIN} ({hat stitches} htr)`,
  { title: 'Last increase' },
);
work.heading('Sides');
const side = work.round(`${BEGIN} 1 htr in each st around, ${JOIN} ({hat stitches} htr)`);
work.forRows(side, side, 'side rounds − 1');
work.prose(
  'Try the hat on, or measure: it should reach the brow when the band, another {band depth}, is added. Work a round more or fewer if you like.',
);
work.heading('Band');
work.prose('Change to the 4 mm hook. The rib is worked over an even number of sts.');
work.round(
  'Ch 3 (does not count as a st), 1 tr in each st around, join with ss in first tr. ({hat stitches} tr)',
);
const rib = work.round(
  'Ch 2 (does not count as a st), *1 FPtr around next st, 1 BPtr around next st; rep from * around, join with ss in first FPtr. ({hat stitches} sts)',
);
work.forRows(rib, rib, 'band rounds − 2');
work.prose('Fasten off.');

export const hat: Pattern = {
  about: {
    title: 'Skerry Hat',
    designer: 'Ilse Quillfeather',
    level: 2,
    description:
      'A plain warm hat for the whole family, from a flat crown of half trebles down to a springy band of raised stitches. It is quick, it has no seam to sew, and you can try it on as you go. Amounts of yarn are estimates from the finished sample, with 15% to spare.',
    construction:
      'Worked from the crown down in joined rounds with the right side out. The crown grows by 8 sts a round, the sides are straight, and the band is worked on with a smaller hook.',
    garment: 'hat',
    cover: null,
    version: '1.0',
    date: '2026-11-25',
    copyright:
      '© 2026 Ilse Quillfeather. For your own use. You are welcome to sell what you make from this pattern in small numbers with credit to the designer; please do not share, copy or sell the pattern itself.',
    contact: 'patterns@quillfeather.example',
    care: 'Machine wash at 30 °C / 86 °F on a gentle cycle, dry flat.',
    language: 'en',
    fit: 'Close: the hat is a little smaller than the head, and stretches to it. Measure the head just above the ears and choose the nearest size.',
  },
  terms: 'uk',
  units: 'metric',
  ...own,
  sample: 'size-adult',
  hooks,
  notions,
  yarns: [
    {
      id: 'yarn-main',
      key: null,
      name: 'A light yarn (DK), soft and washable',
      weight: 3,
      fibre: '100% superwash wool',
      ballGrams: 50,
      ballMetres: 115,
      ballPrice: null,
      metres: {},
    },
  ],
  specials: [],
  abbreviations: {},
  notes: [
    text(
      'The chain at the beginning of a round never counts as a st: work the first st of the round in the same place as the joining ss, and join to that first st.',
    ),
    text(
      'Raised stitches are worked around the post of the st below: FPtr from the front, so that the st stands out, BPtr from the back, so that it sinks in.',
    ),
    text(
      'Your crown is your tension square: after 6 rounds it should be about 10 cm (4 in) across. Mark the first st of the round if you find it hard to see.',
    ),
  ],
  pieces: [work.piece('Hat', { kind: 'chain' }, 'RS')],
  finishing: [
    text(
      'Close the hole of the ring and weave in all ends on the wrong side, running each through several sts so that none can work loose. Wash and dry the hat over a bowl of about its size.',
    ),
  ],
  cautions: [
    'This hat is made without ties, pompoms or buttons. Please add none to the sizes for babies and toddlers.',
  ],
  charts: [
    {
      id: 'chart-crown',
      piece: 'hat',
      first: crownFirst.id,
      last: charted.id,
      size: '',
      title: 'Crown',
    },
  ],
  workbook: { ...NO_WORKBOOK, yarnMargin: 15, makings: [sampleOf('size-adult', 64, 5)] },
};
