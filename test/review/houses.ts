/**
 * Whole patterns in other house styles than the examples', with nothing wrong in them: what the technical edit
 * must leave alone. Invented: a scarf in one size with turning chains at the ends of rows, a blanket square of a
 * UK house with two colours, a cowl in a spiral with numbers typed by hand.
 */
import type { Block, Pattern, Piece, Size } from '../../core/document/pattern.ts';
import { text } from '../../core/document/writer.ts';
import { blankPattern } from '../../core/outlines/blank.ts';

const cm = (value: number) => ({ value, unit: 'cm' as const });

interface Row {
  readonly words: string;
  readonly form?: 'row' | 'round' | 'foundation';
}

const rows = (id: string, all: readonly Row[]): readonly Block[] =>
  all.map(({ words, form = 'row' }, i) => ({
    type: 'row',
    id: `${id}-${i}`,
    text: text(words),
    sizes: null,
    form,
    title: null,
  }));

const again = (id: string, first: string, last: string, total: string): Block => ({
  type: 'repeat',
  id,
  first,
  last,
  until: { kind: 'total', rows: total },
  sizes: null,
});

const prose = (id: string, words: string): Block => ({ type: 'prose', id, text: text(words), sizes: null });

const piece = (
  id: string,
  name: string,
  blocks: readonly Block[],
  firstSide: Piece['firstSide'] = 'RS',
): Piece => ({ id, name, make: 1, start: { kind: 'chain' }, firstSide, gauge: '', blocks, meets: [] });

function begun(terms: Pattern['terms'], title: string, about: Partial<Pattern['about']>): Pattern {
  const base = blankPattern({ title, terms, units: 'metric', date: '2026-03-01' });
  return {
    ...base,
    about: {
      ...base.about,
      designer: 'Odd Quillfeather',
      copyright: '© 2026 Odd Quillfeather. For your own use.',
      contact: 'https://quillfeather.example/help',
      care: 'Wash by hand and dry flat.',
      ...about,
    },
    lines: [],
  };
}

const sized = (label: string): Size => ({
  id: `size-${label.toLowerCase()}`,
  label,
  audience: 'other',
  chart: null,
  age: null,
});

const gauge = (pattern: string, stitches: number, high: number, rounds: boolean) => ({
  id: 'gauge',
  pattern,
  stitches,
  rows: high,
  width: cm(10),
  height: cm(10),
  blocked: true,
  stretch: null,
  hook: 'hook',
  rounds,
});

const yarn = (id: string, key: string | null, name: string, metres: Readonly<Record<string, number>>) => ({
  id,
  key,
  name,
  weight: 3,
  fibre: '100% wool',
  ballGrams: 50,
  ballMetres: 120,
  ballPrice: null,
  metres,
});

const needle = {
  id: 'needle',
  name: 'Tapestry needle',
  amount: null,
  smallPart: false,
  cord: false,
  price: null,
};

/** Whole words in rows, chains at the ends of rows, semicolons, one size. */
const scarf: Pattern = {
  ...begun('us', 'Breakwater Scarf', {
    garment: 'scarf',
    description:
      'A long scarf of half double crochet, worked end to end. It’s restful, and the last row comes soon.',
    construction: 'Worked back and forth in rows from one short end to the other.',
  }),
  sizes: [sized('One size')],
  sample: 'size-one size',
  lines: [
    {
      id: 'length',
      name: 'scarf length',
      printed: 'Scarf length',
      note: null,
      kind: 'typed',
      values: { all: cm(150) },
    },
  ],
  gauges: [gauge('half double crochet', 15, 12, false)],
  hooks: [{ id: 'hook', mm: 5, purpose: '' }],
  yarns: [yarn('wool', null, 'A light wool', { 'size-one size': 420 })],
  notions: [needle],
  notes: [
    text('Chain at the end of each row, then turn.'),
    text('Gauge: 15 half double crochet and 12 rows = 10 cm (4 in).'),
  ],
  pieces: [
    piece('scarf', 'Scarf', [
      ...rows('scarf', [
        { words: 'Chain 32.', form: 'foundation' },
        {
          words:
            'Half double crochet in 3rd chain from hook (the skipped chains do not count as a stitch) and in each chain across; chain 2 (does not count as a stitch), turn. (30 half double crochet)',
        },
        { words: 'Half double crochet in each stitch across; chain 2 (does not count as a stitch), turn.' },
      ]),
      again('scarf-r', 'scarf-2', 'scarf-2', '180'),
      prose('scarf-p', 'Fasten off. The scarf should measure 150 cm (59 in).'),
    ]),
  ],
  finishing: [text('Weave in the ends with the tapestry needle. Block to 20 cm × 150 cm (8 in × 59 in).')],
};

/** A UK house: "miss", numbers before stitches, two colours, capitals for rounds named. */
const square: Pattern = {
  ...begun('uk', 'Slipway Square', {
    garment: 'blanket square',
    description: 'A square in two colours to make a blanket of. Twelve of them cover a pram, forty a bed.',
    construction: 'Worked from the centre in joined rounds, always with the right side facing.',
  }),
  sizes: [sized('Square')],
  sample: 'size-square',
  gauges: [gauge('tr groups', 16, 8, true)],
  hooks: [{ id: 'hook', mm: 4, purpose: 'for everything' }],
  yarns: [
    yarn('a', 'A', 'A light wool in stone', { 'size-square': 12 }),
    yarn('b', 'B', 'The same in blue', { 'size-square': 16 }),
  ],
  notes: [
    text('Rounds 1 and 2 are worked in A, Round 3 in B. “Next corner” is the next ch-2 sp.'),
    text('3 ch at the beginning of a round counts as 1 tr.'),
  ],
  pieces: [
    piece('square', 'Square', [
      ...rows('square', [
        {
          words:
            'With A, make a magic ring, 3 ch (counts as 1 tr), 2 tr in ring, 2 ch, *3 tr in ring, 2 ch; rep from * twice more, join with ss in top of 3 ch. (12 tr, 4 ch-2 sps)',
          form: 'round',
        },
        {
          words:
            'Ss in each of next 2 tr and in next ch-2 sp, 3 ch (counts as 1 tr), (2 tr, 2 ch, 3 tr) in same ch-2 sp, *(3 tr, 2 ch, 3 tr) in next ch-2 sp; rep from * twice more, join with ss in top of 3 ch. (24 tr, 4 ch-2 sps)',
          form: 'round',
        },
      ]),
      prose('square-p', 'Fasten off A. Change to B.'),
    ]),
  ],
  finishing: [text('Weave in all ends on the wrong side and pin the square out to 9 cm (3½ in).')],
};

/** A spiral, with numbers typed by hand in four sizes and a hyphen in every range. */
const cowl: Pattern = {
  ...begun('us', 'Harbor Cowl', {
    garment: 'cowl',
    description: 'A plain cowl for grey days and colder ones, worked round and round without a seam.',
    construction:
      'Worked in a spiral from the lower edge up. Do not join rounds; move the marker up instead.',
    fit: 'The cowl sits loosely: choose the size 5-10 cm (2-4 in) larger than your neck.',
  }),
  sizes: [sized('XS'), sized('S'), sized('M'), sized('L')],
  sample: 'size-s',
  gauges: [gauge('single crochet', 16, 18, true)],
  hooks: [{ id: 'hook', mm: 4.5, purpose: 'for the cowl' }],
  yarns: [
    yarn('wool', null, 'A light wool', { 'size-xs': 150, 'size-s': 165, 'size-m': 180, 'size-l': 195 }),
  ],
  notions: [
    { ...needle },
    { id: 'marker', name: 'Stitch marker', amount: { all: 1 }, smallPart: false, cord: false, price: null },
  ],
  notes: [text('Mark the first st of each round and move the marker up as you go.')],
  pieces: [
    piece(
      'cowl',
      'Cowl',
      [
        ...rows('cowl', [
          { words: 'Ch 80 (88, 96, 104), join with sl st in first ch to form a ring.', form: 'foundation' },
          { words: 'Ch 1, sc in each ch around; do not join. [80 (88, 96, 104) sc]', form: 'round' },
          { words: 'Sc in each st around; do not join. [80 (88, 96, 104) sc]', form: 'round' },
        ]),
        again('cowl-r', 'cowl-2', 'cowl-2', '36'),
        prose('cowl-p', 'There are 80 (88, 96, 104) sts. The cowl should measure 20 cm (8 in). Fasten off.'),
      ],
      'RS',
    ),
  ],
  finishing: [text('Weave in both ends.')],
};

export const houses = { scarf, square, cowl } as const;
