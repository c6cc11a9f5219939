/**
 * An invented pattern, written once in US and once in UK terms: a shell-edged top in four sizes with a panel
 * (repeat, shaping, rows for some sizes only) and a neckband that starts from it. For tests of printed editions.
 */
import {
  type Block,
  FIGURE,
  type FigureText,
  type Line,
  type Pattern,
  type RowBlock,
  type Size,
} from '../../core/document/pattern.ts';
import { NO_WORKBOOK } from '../../core/document/workbook.ts';
import type { Terms } from '../../core/trade/stitches.ts';

/** Text with its figures between braces: "Ch {chain}" . */
export function text(written: string): FigureText {
  const figures: string[] = [];
  const plain = written.replace(/\{([^}]*)\}/g, (_, expression: string) => {
    figures.push(expression);
    return FIGURE;
  });
  return { text: plain, figures };
}

export function row(id: string, written: string, more: Partial<RowBlock> = {}): RowBlock {
  return { type: 'row', id, text: text(written), sizes: null, form: 'row', title: null, ...more };
}

const size = (id: string, label: string, chart: string): Size => ({
  id,
  label,
  audience: 'woman',
  chart,
  age: null,
});

export const SIZES: readonly Size[] = [
  size('s', 'S', 'S'),
  size('m', 'M', 'M'),
  size('l', 'L', 'L'),
  size('x', 'XL', 'XL'),
];

const base = { printed: null, note: null };
const cm = (value: number) => ({ value, unit: 'cm' as const });
const each = (values: readonly number[], unit: 'cm' | 'none' = 'cm') => ({
  each: Object.fromEntries(SIZES.map((one, i) => [one.id, { value: values[i]!, unit }])),
});

const lines: readonly Line[] = [
  { ...base, id: 'l1', name: 'bust', printed: 'Bust', kind: 'typed', values: each([86, 97, 107, 117]) },
  { ...base, id: 'l2', name: 'ease', kind: 'ease', values: { all: cm(6) } },
  {
    ...base,
    id: 'l3',
    name: 'finished bust',
    printed: 'Finished bust',
    kind: 'formula',
    formula: 'bust + ease',
  },
  {
    ...base,
    id: 'l4',
    name: 'panel stitches',
    kind: 'stitches',
    length: 'finished bust ÷ 2',
    gauge: 'g1',
    state: 'relaxed',
    multiple: 2,
    plus: 0,
    rounding: 'nearest',
    parity: 'even',
    counts: 'stitches',
    extra: 0,
    tolerance: null,
  },
  {
    ...base,
    id: 'l5',
    name: 'body length',
    printed: 'Length',
    kind: 'typed',
    values: each([40, 42, 43, 45]),
  },
  {
    ...base,
    id: 'l6',
    name: 'body rows',
    kind: 'rows',
    length: 'body length',
    gauge: 'g1',
    cycle: 2,
    endOn: 1,
    before: 1,
    rounding: 'nearest',
    tolerance: null,
  },
  { ...base, id: 'l7', name: 'neck stitches', kind: 'formula', formula: 'panel stitches − 2 × shapings' },
  { ...base, id: 'l8', name: 'shapings', kind: 'typed', values: each([5, 6, 7, 7], 'none') },
  { ...base, id: 'l10', name: 'band stitches', kind: 'typed', values: each([64, 68, 76, 84], 'none') },
  {
    ...base,
    id: 'l9',
    name: 'yoke shaping',
    kind: 'shaping',
    start: 'panel stitches',
    end: 'neck stitches',
    rows: '14',
    perEnd: 1,
    ends: 2,
    step: 1,
  },
];

/** The pattern by an author who writes in the given terms. */
export function pattern(terms: Terms): Pattern {
  const t = (us: string, uk: string): string => (terms === 'us' ? us : uk);
  const panel: readonly Block[] = [
    row('p0', 'ch {panel stitches + 1}', { form: 'foundation' }),
    row(
      'p1',
      t(
        'sc in 2nd ch from hook and in each ch across, turn. ({panel stitches} sc)',
        'dc in 2nd ch from hook and in each ch across, turn. ({panel stitches} dc)',
      ),
    ),
    row('p2', t('Ch 1, sc in each st across, turn', 'Ch 1, dc in each st across, turn')),
    row(
      'p3',
      t(
        'Ch 2 (does not count as a st), hdc in each st across, turn',
        'Ch 2 (does not count as a st), htr in each st across, turn',
      ),
    ),
    {
      type: 'repeat',
      id: 'p4',
      first: 'p2',
      last: 'p3',
      until: { kind: 'total', rows: 'body rows' },
      sizes: null,
    },
    {
      type: 'photo',
      id: 'p4a',
      media: {
        id: 'aa',
        alt: t('The panel in sc and hdc rows', 'The panel in dc and htr rows'),
        caption: null,
      },
    },
    { type: 'heading', id: 'p4b', text: 'Yoke' },
    row('p4c', t('Ch 1, sc in each st across, turn', 'Ch 1, dc in each st across, turn'), {
      sizes: ['l', 'x'],
    }),
    {
      type: 'shaping',
      id: 'p5',
      line: 'yoke shaping',
      shaped: row(
        'p5a',
        t(
          'Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn',
          'Ch 1, dc2tog, dc in each st to last 2 sts, dc2tog, turn',
        ),
      ),
      even: row('p5b', t('Ch 1, sc in each st across, turn', 'Ch 1, dc in each st across, turn')),
      sizes: null,
    },
    {
      type: 'prose',
      id: 'p6',
      text: text('Fasten off, leaving a tail of 30 (32, 34, 36) cm'),
      sizes: null,
    },
  ];
  const band: readonly Block[] = [
    row(
      'b1',
      t(
        'With RS facing, ch 1, work {band stitches} sc evenly around; join with sl st in first sc',
        'With RS facing, ch 1, work {band stitches} dc evenly around; join with ss in first dc',
      ),
      { form: 'round' },
    ),
    row(
      'b2',
      t(
        'Ch 1, *sc in next st, skip 1 st, shell in next st, skip 1 st; rep from * around; join with sl st in first sc',
        'Ch 1, *dc in next st, miss 1 st, shell in next st, miss 1 st; rep from * around; join with ss in first dc',
      ),
      { form: 'round', title: 'Shell' },
    ),
  ];
  return {
    about: {
      title: 'Saltmarsh Top',
      designer: 'Édith Kołodziej-Nuñez',
      level: 2,
      description: t(
        'A boxy top in rows of single crochet and half double crochet. Skip the band if you like a raw edge; choose a color that hides ends.',
        'A boxy top in rows of double crochet and half treble crochet. Skip the band if you like a raw edge; choose a colour that hides ends.',
      ),
      construction: 'Two panels worked flat, with a band in rounds.',
      garment: 'top',
      cover: null,
      version: '1.2',
      date: '2026-04-18',
      copyright: '© 2026 Édith Kołodziej-Nuñez. You may sell what you make.',
      contact: 'Write to the address on your receipt.',
      care: 'Wash by hand at 30 °C and dry flat',
      language: 'en',
      fit: t('Made to be worn with a little ease.', 'Made to be worn with a little ease.'),
    },
    terms,
    units: 'metric',
    sizes: SIZES,
    sample: 'm',
    tolerance: cm(2),
    lines: lines.map((line) =>
      line.id === 'l1'
        ? {
            ...base,
            id: 'l1',
            name: 'bust',
            printed: 'Bust',
            kind: 'body',
            measure: 'bust',
            bound: 'upper',
            overtyped: {
              s: cm(86),
              m: cm(97),
              l: cm(107),
              x: cm(117),
            },
          }
        : line.id === 'l3'
          ? { ...line, note: 'bust' }
          : line,
    ),
    gauges: [
      {
        id: 'g1',
        pattern: t(
          'rows of single crochet and half double crochet',
          'rows of double crochet and half treble crochet',
        ),
        stitches: 16,
        rows: 14,
        width: cm(10),
        height: cm(10),
        blocked: true,
        stretch: null,
        hook: 'h1',
        rounds: false,
      },
    ],
    yarns: [
      {
        id: 'y1',
        key: null,
        name: 'Any smooth yarn',
        weight: 4,
        fibre: '60 % cotton, 40 % linen',
        ballGrams: 100,
        ballMetres: 180,
        ballPrice: null,
        metres: { s: 512, m: 588.4, l: 641, x: 720 },
      },
    ],
    hooks: [
      { id: 'h1', mm: 5, purpose: 'for the panels' },
      { id: 'h2', mm: 4.5, purpose: 'for the band' },
    ],
    notions: [
      { id: 'n1', name: 'Stitch markers', amount: { all: 4 }, smallPart: false, cord: false, price: null },
      {
        id: 'n2',
        name: 'buttons, 15 mm across',
        amount: { each: { s: 5, m: 5, l: 6, x: 6 } },
        smallPart: true,
        cord: false,
        price: null,
      },
      { id: 'n3', name: 'yarn needle', amount: null, smallPart: false, cord: false, price: null },
    ],
    specials: [
      {
        id: 's1',
        nameUs: 'Shell',
        nameUk: 'Shell',
        abbrUs: 'sh',
        abbrUk: 'sh',
        text: text(t('5 dc in next st', '5 tr in next st')),
      },
    ],
    abbreviations: {},
    notes: [
      text(
        t(
          'The turning ch of the sc rows does not count as a st',
          'The turning ch of the dc rows does not count as a st',
        ),
      ),
      text(
        t(
          'Check your gauge: hook sizes differ between makers',
          'Check your tension: hook sizes differ between makers',
        ),
      ),
    ],
    pieces: [
      {
        id: 'panel',
        name: 'Front and back',
        make: 2,
        start: { kind: 'chain' },
        firstSide: 'RS',
        gauge: '',
        blocks: panel,
        meets: [],
      },
      {
        id: 'band',
        name: 'Neckband',
        make: 1,
        start: {
          kind: 'edges',
          round: true,
          edges: [
            { piece: 'panel', kind: 'top', amount: null, which: 1 },
            { piece: 'panel', kind: 'seam', amount: null, which: 1 },
            { piece: 'panel', kind: 'row-ends', amount: '8', which: 1 },
            { piece: 'panel', kind: 'seam', amount: null, which: 1 },
          ],
        },
        firstSide: 'RS',
        gauge: '',
        blocks: band,
        meets: [],
      },
    ],
    finishing: [
      text('Block both panels to the measurements'),
      text(
        t(
          'Sew the sides, leaving {body length} open; work 2 sc in each row-end of the armholes',
          'Sew the sides, leaving {body length} open; work 2 dc in each row-end of the armholes',
        ),
      ),
    ],
    cautions: [],
    charts: [],
    workbook: NO_WORKBOOK,
  };
}
