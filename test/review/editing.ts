/**
 * Faults of the kinds that a technical editor looks for in words, materials and lengths, planted in the clean
 * pattern, and what only looks like them. Invented; the expected numbers are worked out beside them.
 */
import type { Block, Pattern, Piece } from '../../core/document/pattern.ts';
import { vest } from '../../resources/examples/vest.ts';
import { cm, inBlock, inLine, note, type Plant, repeat, reword, row, size, written } from './builder.ts';

export interface Planted {
  readonly name: string;
  readonly plant: Plant;
  readonly code: string;
  readonly node?: string | null;
  /** The words that the finding points at, where it points at words. */
  readonly at?: readonly [from: number, to: number];
  /** The same, as words. */
  readonly words?: string;
  readonly sizes?: readonly number[];
  readonly saying?: readonly (string | RegExp)[];
  /** What the fix puts in their place; null where there is none. */
  readonly fix?: string | null;
}

export const all =
  (...plants: readonly Plant[]): Plant =>
  (pattern) =>
    plants.reduce((of, plant) => plant(of), pattern);

export const about =
  (change: Partial<Pattern['about']>): Plant =>
  (pattern) => ({ ...pattern, about: { ...pattern.about, ...change } });

export const finishing =
  (text: string): Plant =>
  (pattern) => ({ ...pattern, finishing: [...pattern.finishing, written(text)] });

/** A paragraph after a block. */
export const prose = (after: string, text: string): Plant =>
  inBlock(after, (block) => [
    block,
    { type: 'prose', id: `${after}-prose`, text: written(text), sizes: null } satisfies Block,
  ]);

export const notion =
  (name: string, amount: Pattern['notions'][number]['amount'] = { all: 1 }): Plant =>
  (pattern) => ({
    ...pattern,
    notions: [
      ...pattern.notions,
      { id: `notion-${pattern.notions.length}`, name, amount, smallPart: false, cord: false, price: null },
    ],
  });

export const hook =
  (mm: number, purpose = ''): Plant =>
  (pattern) => ({ ...pattern, hooks: [...pattern.hooks, { id: `hook-${mm}`, mm, purpose }] });

/** The first yarn gets the letter A, and others come after it. */
export const yarns =
  (...keys: readonly string[]): Plant =>
  (pattern) => {
    const [first] = pattern.yarns;
    return {
      ...pattern,
      yarns: ['A', ...keys].map((key) => ({
        ...first!,
        id: key === 'A' ? 'yarn' : `yarn-${key.toLowerCase()}`,
        key,
        name: `Worsted wool ${key}`,
      })),
    };
  };

const piece = (id: string, name: string): Piece => ({
  id,
  name,
  make: 1,
  start: { kind: 'chain' },
  firstSide: 'RS',
  gauge: '',
  blocks: [
    { ...(row(`${id}-0`, 'Ch 21.') as Extract<Block, { type: 'row' }>), form: 'foundation' },
    row(`${id}-1`, 'Sc in 2nd ch from hook and in each ch across, turn. (20 sc)'),
    row(`${id}-2`, 'Ch 1, sc in each st across, turn.'),
    repeat(`${id}-3`, `${id}-2`, `${id}-2`, '20'),
    { type: 'prose', id: `${id}-4`, text: written('Fasten off.'), sizes: null },
  ],
  meets: [],
});

/** Bodies 10 cm narrower than the panels, 90, 100 and 110 cm all round, or as wide as said. */
const worn = (...bodies: readonly number[]): Plant =>
  all(
    (pattern) => ({
      ...pattern,
      lines: [
        {
          id: 'bust',
          name: 'bust',
          printed: 'To fit bust',
          note: null,
          kind: 'body',
          measure: 'bust',
          bound: 'upper',
          overtyped: Object.fromEntries(
            ['s', 'm', 'l'].map((label, i) => [`size-${label}`, cm(bodies[i] ?? 80 + 10 * i)]),
          ),
        },
        ...pattern.lines,
      ],
    }),
    inLine('around', { note: 'bust' }),
  );

/** Rows fitted to the nearest, even or odd: 72, 76 and 79 for 40, 42 and 44 cm at 18 rows in 10 cm. */
const oddRows: Plant = inLine('rows', { cycle: 1, endOn: 1 });

/** A block left out. */
const without = (id: string): Plant => inBlock(id, () => []);

/** A row repeated so many times more in some sizes. */
const more = (after: string, of: string, rows: number, ...labels: readonly string[]): Plant =>
  inBlock(after, (block) => [
    block,
    {
      type: 'repeat',
      id: `${after}-more`,
      first: of,
      last: of,
      until: { kind: 'rows', rows: String(rows) },
      sizes: labels.map((label) => size(label).id),
    } satisfies Block,
  ]);

/** A ball worked in a spiral, which the finishing sews on. */
const roundsOf = (words: readonly string[]): Plant =>
  all(
    (pattern) => ({
      ...pattern,
      pieces: [
        ...pattern.pieces,
        {
          ...piece('knob', 'Knob'),
          blocks: [
            ...['6 sc in magic ring.', ...words].map(
              (text, i): Block => ({
                ...(row(`knob-${i}`, text) as Extract<Block, { type: 'row' }>),
                form: 'round',
              }),
            ),
            { type: 'prose', id: 'knob-end', text: written('Fasten off.'), sizes: null },
          ],
        },
      ],
    }),
    (pattern) => ({ ...pattern, finishing: [...pattern.finishing, written('Sew the knob to the front.')] }),
  );
const spiral = roundsOf(['2 sc in each st around.', 'Sc in each st around.', 'Sc in each st around.']);

export const withPiece =
  (id: string, name: string): Plant =>
  (pattern) => ({ ...pattern, pieces: [...pattern.pieces, piece(id, name)] });

const strips: Plant = all(withPiece('strips', 'Strips'), finishing('Sew the strips on.'), (pattern) => ({
  ...pattern,
  pieces: pattern.pieces.map((own) => (own.id === 'strips' ? { ...own, make: 4 } : own)),
}));

/** Four sizes, so that steps can be compared. */
const four: Plant = (pattern) => ({
  ...pattern,
  sizes: [...pattern.sizes, size('XL')],
  yarns: pattern.yarns.map((yarn) => ({ ...yarn, metres: { ...yarn.metres, 'size-xl': 680 } })),
});
const five: Plant = (pattern) => ({
  ...four(pattern),
  sizes: [...four(pattern).sizes, size('2X')],
  yarns: four(pattern).yarns.map((yarn) => ({ ...yarn, metres: { ...yarn.metres, 'size-2x': 740 } })),
});

const typed = (id: string, ...values: readonly number[]): Plant =>
  inLine(id, {
    values: {
      each: Object.fromEntries(
        values.map((value, i) => [`size-${['s', 'm', 'l', 'xl', '2x'][i]}`, cm(value)]),
      ),
    },
  });

const uk: Plant = all(
  (pattern) => ({ ...pattern, terms: 'uk' }),
  (pattern) => ({
    ...pattern,
    gauges: pattern.gauges.map((gauge) => ({ ...gauge, pattern: 'double crochet' })),
    pieces: pattern.pieces.map((each) => ({
      ...each,
      blocks: each.blocks.map((block) =>
        block.type === 'row'
          ? {
              ...block,
              text: {
                ...block.text,
                text: block.text.text.replace(/Sc/g, 'Dc').replace(/\bsc\b/g, 'dc'),
              },
            }
          : block,
      ),
    })),
    finishing: [written('Join the sides with ss, leaving 20 cm (8 in) for each armhole.')],
  }),
);

const special =
  (nameUs: string, nameUk: string): Plant =>
  (pattern) => ({
    ...pattern,
    specials: [{ id: 'fan', nameUs, nameUk, abbrUs: '', abbrUk: '', text: written('5 dc in next st') }],
    notes: [written('Each fan covers 5 sts.')],
  });

export const editing: readonly Planted[] = [
  {
    name: 'a gap to be filled in',
    plant: note('The sample weighs TBD and took an evening.'),
    code: 'leftover-text',
    node: 'notes:0',
    words: 'TBD',
  },
  {
    name: 'empty brackets in a row',
    plant: reword('front-2', 'Ch 1, sc in each st across, turn. ()'),
    code: 'leftover-text',
    node: 'front-2',
    words: '()',
  },
  {
    name: 'a place for a link',
    plant: note('See the tutorial [link].'),
    code: 'leftover-text',
    words: '[link]',
  },
  {
    name: 'a name that was never given',
    plant: withPiece('pocket', 'New piece'),
    code: 'leftover-text',
    node: 'pocket',
    saying: ['New piece'],
  },
  {
    name: 'no version and no way to write',
    plant: about({ version: '', contact: '' }),
    code: 'edition-not-stated',
    node: 'cover:title',
    saying: ['its version and where to write'],
  },
  { name: 'no care', plant: about({ care: '' }), code: 'edition-not-stated', node: 'cover:care' },
  {
    name: 'another gauge in a note',
    plant: note('Before you begin: 18 sts and 20 rows = 10 cm (4 in).'),
    code: 'gauge-in-words-differs',
    node: 'notes:0',
    saying: ['18 sts and 20 rows', '16 sts and 18 rows over 10 cm'],
  },
  {
    name: 'a hook that nobody listed',
    plant: note('Work the edging with the 3.5 mm hook.'),
    code: 'hook-not-listed',
    node: 'notes:0',
    words: '3.5 mm',
    saying: ['4.5 mm'],
  },
  {
    name: 'a hook by its letter',
    // US H-8 is 5 mm (resources/trade/hooks.json).
    plant: note('Work the edging with a size H hook.'),
    code: 'hook-not-listed',
    words: 'size H',
  },
  {
    name: 'a second hook without a purpose',
    plant: hook(3),
    code: 'hook-not-used',
    node: 'hook-3',
    saying: ['3 mm'],
  },
  {
    name: 'a colour that is not on the list',
    plant: all(
      yarns('B'),
      note('Stripes: rows of A and B.'),
      reword('front-2', 'Ch 1, sc in each st across, change to C, turn.'),
    ),
    code: 'yarn-not-listed',
    node: 'front-2',
    saying: ['A and B'],
  },
  {
    name: 'a letter in a note that no yarn has',
    plant: note('Hold the float of yarn B loosely.'),
    code: 'yarn-not-listed',
    words: 'B',
  },
  {
    name: 'a third colour that no row takes up',
    plant: all(yarns('B', 'C'), note('Work two rows in A, then two rows in B.')),
    code: 'yarn-not-used',
    node: 'yarn-c',
    saying: ['"C"'],
  },
  {
    name: 'one size with a tenth of its yarn',
    plant: (pattern) => ({
      ...pattern,
      yarns: pattern.yarns.map((yarn) => ({ ...yarn, metres: { ...yarn.metres, 'size-m': 56 } })),
    }),
    code: 'yarn-amount-out-of-line',
    node: 'yarn',
    sizes: [1],
    saying: ['56 m of yarn is little'],
  },
  {
    name: 'buttons in the finishing alone',
    plant: finishing('Sew the buttons to the left front.'),
    code: 'notion-not-listed',
    node: 'finishing:1',
    words: 'buttons',
  },
  {
    name: 'a zip that no text mentions',
    plant: notion('Zip, 40 cm (16 in)'),
    code: 'notion-not-used',
    node: 'notion-0',
  },
  {
    name: 'buttons without a number for one size',
    plant: all(
      notion('Buttons, 20 mm', { each: { 'size-s': 5, 'size-m': 6 } }),
      finishing('Sew the buttons on.'),
    ),
    code: 'notion-amount-not-given',
    node: 'notion-0',
    sizes: [2],
    saying: ['size L takes'],
  },
  {
    name: 'one button more than is listed',
    plant: all(notion('Buttons', { all: 5 }), finishing('Sew six small buttons to the left front.')),
    code: 'notion-amount-short',
    node: 'finishing:1',
    words: 'six small buttons',
    saying: ['6 of "Buttons"', 'list 5'],
  },
  {
    name: 'more buttons in the largest size alone',
    plant: all(notion('Buttons', { all: 6 }), finishing('Sew 5 (6, 7) buttons to the left front.')),
    code: 'notion-amount-short',
    sizes: [2],
  },
  {
    name: 'a special stitch that UK readers get no name for',
    plant: special('fan', ''),
    code: 'special-name-missing',
    node: 'fan',
    saying: ['no UK name'],
  },
  {
    name: 'one row that spells a short form out',
    plant: reword('back-2', 'Ch 1, sc in each stitch across, turn.'),
    code: 'wording-differs',
    node: 'back-2',
    words: 'stitch',
    fix: 'st',
  },
  {
    name: 'chains written close up',
    plant: reword('back-2', 'Ch1, sc in each st across, turn.'),
    code: 'wording-differs',
    node: 'back-2',
    words: 'Ch1',
    saying: ['"ch 3"'],
  },
  {
    name: 'a full stop where others have a comma',
    plant: reword('back-2', 'Ch 1, sc in each st across. Turn.'),
    code: 'wording-differs',
    node: 'back-2',
    words: '.',
    fix: null,
  },
  {
    name: 'a semicolon where others have a comma',
    plant: reword('back-2', 'Ch 1, sc in each st across; turn.'),
    code: 'wording-differs',
    node: 'back-2',
    words: ';',
    fix: ',',
  },
  {
    name: 'small letters for a row named in a note',
    plant: all(note('Take care in Row 1.'), note('See Row 2.'), note('As in row 2, work loosely.')),
    code: 'wording-differs',
    node: 'notes:2',
    words: 'row',
    fix: 'Row',
  },
  {
    name: 'a chain-space with a hyphen among others without',
    plant: all(note('Each ch 2 sp counts, and so does the last ch 2 sp.'), note('Mark the first ch-2 sp.')),
    code: 'wording-differs',
    node: 'notes:1',
    words: 'ch-2',
    fix: 'ch 2',
  },
  {
    name: 'both spellings of one word',
    plant: all(note('The center is open, and the center stays so.'), note('Mark the centre.')),
    code: 'wording-differs',
    words: 'centre',
    fix: 'center',
  },
  {
    name: 'the same word twice',
    plant: note('Turn the the work.'),
    code: 'word-repeated',
    node: 'notes:0',
    words: 'the the',
    fix: 'the',
  },
  {
    name: 'the same small word twice in a row',
    plant: reword('back-2', 'Ch 1, sc in in each st across, turn.'),
    code: 'word-repeated',
    node: 'back-2',
    words: 'in in',
  },
  {
    name: 'two spaces',
    plant: note('Turn  the work.'),
    code: 'punctuation-slip',
    words: '  ',
    fix: ' ',
  },
  {
    name: 'two full stops',
    plant: note('Turn the work..'),
    code: 'punctuation-slip',
    words: '..',
    fix: '.',
  },
  {
    name: 'a space before a comma',
    plant: note('Turn , and go on.'),
    code: 'punctuation-slip',
    words: ' ,',
    fix: ',',
  },
  {
    name: 'words that want to be clicked',
    plant: note('For a film of the join click here.'),
    code: 'link-not-plain',
    words: 'click here',
  },
  {
    name: 'an address that browsers warn of',
    plant: about({ contact: 'http://harbour.example/help' }),
    code: 'link-not-plain',
    node: 'cover:contact',
    fix: 'https://harbour.example/help',
  },
  {
    name: 'a length in centimetres alone',
    plant: note('Leave a tail of 30 cm for the seam.'),
    code: 'length-in-one-unit',
    node: 'notes:0',
    words: '30 cm',
    // 30 cm is 11.81 in, shown to the quarter inch.
    fix: '30 cm (11¾ in)',
  },
  {
    name: 'a length in two units that differ',
    plant: note('Leave a tail of 20 cm (10 in) for the seam.'),
    code: 'units-disagree',
    node: 'notes:0',
    words: '20 cm (10 in)',
    // 20 cm is 7.87 in.
    saying: ['20 cm is 7¾ in'],
  },
  {
    name: 'a photograph described by its file',
    plant: about({ cover: { id: 'p', alt: 'IMG_2041.jpg', caption: null } }),
    code: 'photo-not-described',
    node: 'cover:title',
  },
  {
    name: 'a chart of a row that was taken out',
    plant: (pattern) => ({
      ...pattern,
      charts: [{ id: 'chart', piece: 'front', first: 'front-1', last: 'gone', size: '', title: 'The edge' }],
    }),
    code: 'chart-without-rows',
    node: 'chart',
    saying: ['The edge'],
  },
  {
    name: 'a row against the notes, in so many words',
    plant: all(
      note('Ch 1 at the beginning of a row does not count as a st.'),
      reword('back-2', 'Ch 1 (counts as sc), sk first st, sc in each st across, turn.'),
    ),
    code: 'turning-chain-contradicted',
    node: 'back-2',
    saying: ['ch 1', 'does not count'],
  },
  {
    name: 'a row against the notes by what it skips',
    plant: all(
      note('Ch 1 at the beginning of a row does not count as a st.'),
      reword('back-2', 'Ch 1, sk first st, sc in each st across, turn.'),
    ),
    code: 'turning-chain-contradicted',
    node: 'back-2',
    words: 'sk first st',
  },
  {
    name: 'a chain at the end of one row',
    plant: all(
      inBlock('back-1', (block) => [
        { ...block, text: written('Sc in 2nd ch from hook and in each ch across, ch 1, turn.') } as Block,
      ]),
      reword('back-2', 'Sc in each st across, turn.'),
      inBlock('front-2', (block) => [block, row('front-21', 'Ch 1, sc in each st across, turn.')]),
    ),
    code: 'turning-chain-placed-two-ways',
    node: 'back-1',
    words: 'ch 1',
    saying: ['at the end'],
  },
  {
    name: 'a spiral that is worked in rows',
    plant: note('The vest is worked in a spiral without a seam.'),
    code: 'rounds-contradicted',
    node: 'notes:0',
    words: 'in a spiral',
  },
  {
    name: 'joined rounds that are called a spiral, with the last one left open',
    plant: all(
      roundsOf([
        ...Array.from({ length: 9 }, () => 'Ch 1, sc in each st around; join with sl st in first sc.'),
        'Ch 1, sc in next 3 sts, leave rem sts unworked.',
      ]),
      note('The knob is worked in a spiral.'),
    ),
    code: 'rounds-contradicted',
    node: 'notes:0',
    words: 'in a spiral',
    saying: ['in rounds that are joined'],
  },
  {
    name: 'a right side that is the wrong one',
    plant: reword('back-2', 'With RS facing, ch 1, sc in each st across, turn.'),
    code: 'side-of-work-off',
    node: 'back-2',
    sizes: [0, 1, 2],
    saying: ['say RS', 'WS faces'],
  },
  {
    name: 'a last row said to be the other side’s',
    // Rows are fitted to end on an even number: the last is a WS row.
    plant: prose('back-3', 'The last row is an RS row.'),
    code: 'side-of-work-off',
    node: 'back-3-prose',
    saying: ['it is WS'],
  },
  {
    name: 'a row number from a longer version',
    // The longest piece has 80 rows: 44 cm at 18 rows over 10 cm is 79.2, 80 to end on an even row.
    plant: note('Place a thread at the end of Row 96.'),
    code: 'row-in-words-not-there',
    node: 'notes:0',
    words: 'Row 96',
    saying: ['80 rows'],
  },
  {
    name: 'a count in a paragraph',
    // 45, 50 and 55 cm at 16 sts over 10 cm are 72, 80 and 88 sts.
    plant: prose('back-2', 'There are 72 (80, 90) sts now.'),
    code: 'count-in-words-off',
    node: 'back-2-prose',
    sizes: [2],
    saying: ['90 sts', '88, 2 fewer'],
  },
  {
    name: 'two numbers for three sizes, in a note',
    plant: note('Leave 20 (22, 24, 26) sts for the neck.'),
    code: 'size-list-wrong-length',
    node: 'notes:0',
    words: '20 (22, 24, 26)',
    saying: ['4 numbers for 3 sizes, 1 too many'],
  },
  {
    name: 'the numbers of a line typed by hand',
    plant: prose('back-2', 'Keep to 72 (80, 88) sts.'),
    code: 'typed-numbers-of-line',
    node: 'back-2-prose',
    words: '72 (80, 88)',
    saying: ['panel stitches'],
  },
  {
    name: 'a size that jumps out and falls back',
    // Steps of 5 cm: 45, 50, 55, 60; 65 for the third lies 10 off, and 60 after it is less.
    plant: all(four, typed('height', 40, 42, 52, 46), typed('width', 45, 50, 55, 60)),
    code: 'size-step-out-of-line',
    node: 'height',
    sizes: [2],
    saying: ['42 cm, 52 cm, 46 cm', 'about 44 cm'],
  },
  {
    name: 'a jump in a list typed in a note',
    plant: all(
      four,
      typed('height', 40, 42, 44, 46),
      typed('width', 45, 50, 55, 60),
      note('Leave 20 (22, 42, 26) sts for the neck.'),
    ),
    code: 'size-step-out-of-line',
    node: 'notes:0',
    words: '20 (22, 42, 26)',
    sizes: [2],
  },
  {
    name: 'a size with rows that no other has',
    // At 18 rows in 10 cm, even: 72, 76, 80 and 82 rows; 20 more in L make 100.
    plant: all(
      four,
      typed('height', 40, 42, 44, 46),
      typed('width', 45, 50, 55, 60),
      more('front-3', 'front-2', 20, 'L'),
    ),
    code: 'row-count-out-of-line',
    node: 'front',
    sizes: [2],
    saying: ['76, 100, 82', 'about 79'],
  },
  {
    name: 'a size with the rows of the size before it',
    // 72, 80, 86, 94 and 100 rows; 6 more in M make the 86 of L.
    plant: all(
      five,
      typed('height', 40, 44, 48, 52, 56),
      typed('width', 45, 50, 55, 60, 65),
      more('front-3', 'front-2', 6, 'M'),
    ),
    code: 'row-count-out-of-line',
    node: 'front',
    sizes: [2],
    saying: ['86, 86, 94', 'no more than the size before it'],
  },
  {
    name: 'a row that passes over all of the stitches',
    plant: inBlock('front-2', (block) => [
      block,
      row('front-on', 'Ch 1, sk next {panel stitches} sts, sc in each rem st across, turn.'),
    ]),
    code: 'row-leaves-nothing',
    node: 'front-on',
    sizes: [0, 1, 2],
    saying: ['leaves no stitches'],
  },
  {
    name: 'work until a length that its rows have passed',
    // 72 rows at 18 in 10 cm are 40 cm.
    plant: inBlock('front-3', (block) => [
      block,
      row('front-on', 'Rep Row 2 until piece measures 30 cm (12 in) from beginning.'),
    ]),
    code: 'length-until-off',
    node: 'front-on',
    saying: ['30 cm', '72 rows before it make 40 cm'],
  },
  {
    name: 'work until a length that the rows given do not come to',
    plant: prose('front-2', 'Work on in sc until the piece measures 30 cm (12 in).'),
    code: 'length-until-off',
    node: 'front-2-prose',
    words: '30 cm',
    saying: ['the 72 rows that are given make 40 cm'],
  },
  {
    name: 'a piece whose yarn is left on the hook',
    plant: without('back-4'),
    code: 'yarn-not-fastened-off',
    node: 'back-3',
    saying: ['the end of "Back"'],
  },
  {
    name: 'a yarn joined while the one before hangs on the hook',
    plant: inBlock('front-3', (block) => [
      block,
      row('front-edge', 'With RS facing, join yarn with sl st in first st, ch 1, sc in each st across.'),
    ]),
    code: 'yarn-not-fastened-off',
    node: 'front-edge',
    words: 'With RS facing, join yarn with sl st in first st',
  },
  {
    name: 'rounds in a spiral that nothing announces',
    plant: spiral,
    code: 'spiral-not-said',
    node: 'knob',
    saying: ['"Knob"'],
  },
  {
    name: 'a gauge of rounds for panels in rows',
    plant: (pattern) => ({
      ...pattern,
      gauges: pattern.gauges.map((gauge) => ({ ...gauge, rounds: true })),
    }),
    code: 'gauge-worked-otherwise',
    node: 'front',
    saying: ['"Front" is worked in rows'],
  },
  {
    name: 'two panels and no word of a seam',
    plant: (pattern) => ({ ...pattern, finishing: [written('Weave in all ends.')] }),
    code: 'finishing-not-given',
    node: null,
    saying: ['2 pieces are made apart'],
  },
  {
    name: 'a length that the rows do not make',
    plant: prose('back-3', 'The piece should measure 30 cm (12 in).'),
    code: 'length-in-words-off',
    node: 'back-3-prose',
    sizes: [0, 1, 2],
    // 72 rows at 18 over 10 cm are 40 cm.
    saying: ['72 rows', '40 cm'],
  },
  {
    name: 'a typed width that the piece does not have',
    plant: all(withPiece('pocket', 'Pocket'), finishing('Sew the pocket on.'), (pattern) => ({
      ...pattern,
      lines: [
        ...pattern.lines,
        {
          id: 'pocket-width',
          name: 'pocket width',
          printed: 'Pocket width',
          note: null,
          kind: 'typed',
          values: { all: cm(16) },
        },
      ],
    })),
    code: 'typed-measurement-off',
    node: 'pocket-width',
    // 20 sc at 16 over 10 cm are 12.5 cm.
    saying: ['16 cm', '12.5 cm'],
  },
  {
    name: 'a pocket that nothing joins',
    plant: withPiece('pocket', 'Pocket'),
    code: 'piece-not-put-together',
    node: 'pocket',
    saying: ['Pocket'],
  },
  {
    name: 'sleeves from another pattern',
    plant: finishing('Sew in the sleeves.'),
    code: 'piece-in-words-not-there',
    node: 'finishing:1',
    words: 'sleeves',
  },
  {
    name: 'a repeat in the brackets of the sizes',
    plant: reword('back-2', 'Ch 1, (sc in next st) 72 (80, 88) times, turn.'),
    code: 'repeat-in-size-brackets',
    node: 'back-2',
    words: '(sc in next st)',
    saying: ['in round brackets', 'square ones'],
    fix: '[sc in next st]',
  },
  {
    name: 'a repeat in the brackets that a figure is printed in',
    plant: reword('back-2', 'Ch 1, (sc in next st, sc in next st) 36 times, turn. ({panel stitches} sc)'),
    code: 'repeat-in-size-brackets',
    node: 'back-2',
    words: '(sc in next st, sc in next st)',
    fix: '[sc in next st, sc in next st]',
  },
  {
    name: 'sizes and a repeat in square brackets, as the house has its sizes',
    plant: all(
      reword('back-2', 'Ch 1, [sc in next st] 72[80, 88] times, turn.'),
      reword('back-0', 'Ch 73[81, 89].'),
      reword('front-0', 'Ch 73[81, 89].'),
    ),
    code: 'repeat-in-size-brackets',
    node: 'back-2',
    words: '[sc in next st]',
    saying: ['in square brackets', 'round ones'],
    fix: '(sc in next st)',
  },
  {
    name: 'one repeat in round brackets among others in square ones',
    plant: all(
      reword('front-1', 'Sc in 2nd ch from hook, [sc in next ch] 5 times, sc in each ch across, turn.'),
      reword('front-2', 'Ch 1, [sc in next 2 sts] twice, sc in each st across, turn.'),
      reword('back-2', 'Ch 1, (sc in next 2 sts) twice, sc in each st across, turn.'),
    ),
    code: 'brackets-differ',
    node: 'back-2',
    words: '(sc in next 2 sts)',
    saying: ['repeats stand in square brackets', 'here in round ones'],
    fix: '[sc in next 2 sts]',
  },
  {
    name: 'sizes in square brackets where figures are printed in round ones',
    plant: note('Leave 20 [22, 24] sts for the neck.'),
    code: 'brackets-differ',
    node: 'notes:0',
    words: '20 [22, 24]',
    saying: ['numbers for the sizes stand in round brackets'],
    fix: '20 (22, 24)',
  },
  {
    name: 'an oversized vest with 10 cm of ease',
    plant: all(worn(), about({ description: 'An oversized, plain vest of two panels.' })),
    code: 'fit-in-words-off',
    node: 'cover:description',
    words: 'oversized',
    saying: ['at least 15 cm (6 in) wider than the body', '"All round" comes out 10 cm (4 in) wider'],
  },
  {
    name: 'advice on fit that begins with another fit',
    plant: all(worn(), about({ fit: 'Oversized: choose the size 10 cm (4 in) larger than your bust.' })),
    code: 'fit-in-words-off',
    node: 'cover:fit',
    at: [0, 9],
    fix: 'Standard',
  },
  {
    name: 'a close fit that one size has not',
    // 100 cm round a bust of 80 cm.
    plant: all(worn(90, 80, 110), note('The vest has a close fit.')),
    code: 'fit-in-words-off',
    node: 'notes:0',
    words: 'close fit',
    sizes: [1],
    saying: ['no more than 5 cm (2 in) wider', 'comes out 20 cm (7¾ in) wider'],
  },
  {
    name: 'a roomy garment that is narrower than its wearer',
    plant: all(worn(80, 90, 114), note('It is roomy.')),
    code: 'fit-in-words-off',
    node: 'notes:0',
    words: 'roomy',
    sizes: [2],
    saying: ['comes out 4 cm (1½ in) narrower'],
  },
  {
    name: 'a piece that ends on the right side in one size',
    plant: oddRows,
    code: 'last-side-differs',
    node: 'front-3',
    sizes: [2],
    saying: ['in size L', 'after a right-side row, in the others after a wrong-side one'],
  },
  {
    name: 'terms of the other market',
    plant: note('This pattern is written in UK terms.'),
    code: 'terms-said-otherwise',
    node: 'notes:0',
    words: 'pattern is written in UK terms',
    saying: ['US terms', 'take the sentence out'],
  },
  {
    name: 'a spelling of the other market',
    plant: note('Change Colour at the end of the row.'),
    code: 'spelling-of-other-market',
    node: 'notes:0',
    words: 'Colour',
    fix: 'Color',
  },
  {
    // 70 + 40 = 110.
    name: 'fibres of more than the whole',
    plant: (pattern) => ({
      ...pattern,
      yarns: pattern.yarns.map((each) => ({ ...each, fibre: '70% wool, 40% cotton' })),
    }),
    code: 'fibre-not-whole',
    node: 'yarn',
    saying: ['110%'],
  },
  {
    // 2000 m in 100 g.
    name: 'a ball with a nought too many',
    plant: (pattern) => ({
      ...pattern,
      yarns: pattern.yarns.map((each) => ({ ...each, ballGrams: 100, ballMetres: 2000 })),
    }),
    code: 'ball-figures-off',
    node: 'yarn',
    saying: ['2000 m in 100 g', 'too long'],
  },
  {
    name: 'a hook that is listed twice',
    plant: (pattern) => ({
      ...pattern,
      hooks: [...pattern.hooks, { id: 'again', mm: pattern.hooks[0]!.mm, purpose: 'for the edging' }],
    }),
    code: 'hook-size-off',
    node: 'again',
    saying: ['listed twice'],
  },
  {
    name: 'four sizes of which there are three',
    plant: about({ description: 'A vest in four sizes.' }),
    code: 'sizes-in-words-off',
    node: 'cover:description',
    words: 'in four sizes',
    saying: ['there are 3 sizes'],
  },
  {
    name: 'a size that was taken out',
    plant: note('In size XL leave the last row out.'),
    code: 'sizes-in-words-off',
    node: 'notes:0',
    words: 'size XL',
    saying: ['S, M and L'],
  },
  {
    name: 'ages that have changed places',
    plant: (pattern) => ({ ...pattern, sizes: [size('S', [4, 6]), size('M', [2, 4]), size('L', [6, 8])] }),
    code: 'size-ages-out-of-order',
    node: 'size-m',
    saying: ['S and M'],
  },
  {
    name: 'two pieces of one name',
    plant: (pattern) => ({ ...pattern, pieces: [...pattern.pieces, piece('other', 'Front')] }),
    code: 'name-used-twice',
    node: 'other',
    saying: ['"Front"'],
  },
  {
    name: 'a growth that no row has',
    plant: note('The panel increases by 2 sts every row.'),
    code: 'growth-in-words-off',
    node: 'notes:0',
    words: 'increases by 2 sts every row',
  },
  {
    // 18 rows in 10 cm: 4 rows are 2.2 cm.
    name: 'rows that are not so high',
    plant: note('4 rows are 4 cm (1½ in).'),
    code: 'rows-in-words-off',
    node: 'notes:0',
    words: '4 rows are 4 cm',
    saying: ['2 cm'],
  },
  {
    name: 'a page by its number',
    plant: note('See page 4 for the seams.'),
    code: 'page-in-words',
    node: 'notes:0',
    words: 'See page 4',
  },
  {
    name: 'sleeves that are made once',
    plant: all(
      (pattern) => ({ ...pattern, pieces: [...pattern.pieces, piece('sleeve', 'Sleeves')] }),
      finishing('Sew in the sleeves.'),
    ),
    code: 'copies-not-said',
    node: 'sleeve',
  },
  {
    name: 'letters explained in the other terms',
    plant: all((pattern) => ({ ...pattern, abbreviations: { sc: 'double crochet' } })),
    code: 'abbreviation-explained-otherwise',
    node: 'abbreviation:sc',
    saying: ['"single crochet"'],
  },
  {
    name: 'a band that goes on with a yarn that is cut',
    plant: (pattern) => ({
      ...pattern,
      pieces: [
        ...pattern.pieces,
        {
          ...piece('band', 'Band'),
          start: {
            kind: 'edges',
            edges: [{ piece: 'back', kind: 'top', amount: null, which: 1 }],
            round: false,
          },
          blocks: [
            row('band-1', 'Ch 1, sc in each st across, turn.'),
            { type: 'prose', id: 'band-2', text: written('Fasten off.'), sizes: null },
          ],
        } satisfies Piece,
      ],
    }),
    code: 'yarn-fastened-off-early',
    node: 'band-1',
    saying: ['"Back"'],
  },
  {
    name: 'a round joined to a stitch of another round',
    plant: (pattern) => ({
      ...pattern,
      pieces: [
        ...pattern.pieces,
        {
          ...piece('ball', 'Ball'),
          blocks: [
            {
              ...(row(
                'ball-1',
                'Make a magic ring, ch 1, 6 sc in ring; join with sl st in first dc. (6 sc)',
              ) as Extract<Block, { type: 'row' }>),
              form: 'round',
            },
            { type: 'prose', id: 'ball-2', text: written('Fasten off.'), sizes: null },
          ],
        } satisfies Piece,
      ],
    }),
    code: 'join-names-other-stitch',
    node: 'ball-1',
    words: 'in first dc',
    saying: ['"sc"'],
  },
  {
    name: 'a bracket of a sentence left open',
    plant: note('Leave a tail (for the seam.'),
    code: 'punctuation-slip',
    node: 'notes:0',
    words: '(',
    saying: ['does not close'],
  },
  {
    name: 'an address that ends too early',
    plant: about({ contact: 'help@harbour' }),
    code: 'link-not-plain',
    node: 'cover:contact',
    words: 'help@harbour',
  },
  {
    name: 'two temperatures',
    plant: about({ care: 'Wash at 30 °C (104 °F).' }),
    code: 'units-disagree',
    node: 'cover:care',
    words: '30 °C (104 °F)',
    saying: ['86 °F'],
  },
  {
    name: 'a back that sends to the front',
    plant: all((pattern) => ({
      ...pattern,
      pieces: [
        ...pattern.pieces,
        { ...piece('other', 'Other'), blocks: [row('other-1', 'Work as for Back.')] } satisfies Piece,
      ],
    })),
    code: 'piece-not-known',
    node: 'other-1',
    saying: ['the rows of "Back" are not worked from these words', 'made twice'],
  },
  {
    name: 'an ease of another garment',
    // 10 cm in every size.
    plant: all(worn(), about({ fit: 'Choose the size 20 to 25 cm (8 to 10 in) larger than your bust.' })),
    code: 'ease-in-words-off',
    node: 'cover:fit',
    words: '20 to 25 cm (8 to 10 in) larger than your',
    saying: ['"All round" is 10 cm (4 in) wider than the body', 'change the words, or the ease'],
  },
  {
    name: 'positive ease where one size has none',
    plant: all(
      worn(80, 90, 114),
      note('The vest is meant to be worn with 10–20 cm / 4–8 in of positive ease.'),
    ),
    code: 'ease-in-words-off',
    node: 'notes:0',
    words: '10–20 cm / 4–8 in of positive ease',
    sizes: [2],
    saying: ['In size L', '4 cm (1½ in) narrower than the body'],
  },
  {
    name: 'a strip too many in the description',
    plant: all(strips, about({ description: 'A plain vest with five narrow strips.' })),
    code: 'pieces-in-words-off',
    node: 'cover:description',
    words: 'five narrow strips',
    saying: ['"Strips" is made 4 times'],
  },
  {
    name: 'numbers of a line with one of them slipped',
    // The panels of the vest of ten sizes.
    plant: () => ({
      ...vest,
      notes: [written('Count 68 (80, 86, 92, 104, 110, 116, 128, 143, 140) sts.'), ...vest.notes],
    }),
    code: 'typed-numbers-near-line',
    node: 'notes:0',
    words: '68 (80, 86, 92, 104, 110, 116, 128, 143, 140)',
    sizes: [8],
    saying: ['"panel stitches" but for size 5X, where it has 134 and not 143'],
  },
  {
    name: 'a hook with another letter',
    plant: note('Use the 4.5 mm (US J-10) hook.'),
    code: 'units-disagree',
    node: 'notes:0',
    words: '4.5 mm (US J-10)',
    saying: ['two different hooks', '4.5 mm is US 7'],
  },
  {
    name: 'sizes in another order',
    plant: note('Numbers are given for sizes M (S, L).'),
    code: 'sizes-in-words-off',
    node: 'notes:0',
    words: 'sizes M (S, L)',
    saying: ['in another order than the pattern'],
  },
  {
    name: 'a number still to be filled in',
    plant: note('Work XX rows more for a longer vest.'),
    code: 'leftover-text',
    node: 'notes:0',
    words: 'XX',
  },
  {
    name: 'a swatch on a chain that its repeat does not work on',
    // The V-stitches of the vest stand on 3 times a number and 3 chains.
    plant: () => ({
      ...vest,
      notes: [written('For the gauge swatch ch 25 and work in the pattern.'), ...vest.notes],
    }),
    code: 'swatch-in-words-off',
    node: 'notes:0',
    words: 'ch 25',
    saying: ['no chain that the rows of "Panels" come out on', 'ch 24 or ch 27 would do'],
  },
];

/** What looks like a fault of these kinds and is none. */
export const sound: readonly {
  readonly name: string;
  readonly plant: Plant;
  readonly except?: readonly string[];
}[] = [
  { name: 'the pattern in UK terms', plant: uk },
  { name: 'an aside that is not empty, and a pause', plant: note('Work on (loosely) … and rest.') },
  { name: 'the gauge again, in inches', plant: note('Check that 16 sts and 18 rows = 4 in (10 cm).') },
  { name: 'the listed hook by its size', plant: note('Go on with the 4.5 mm hook.') },
  { name: 'a hook with a purpose', plant: hook(4, 'for the edging') },
  { name: 'two colours, each used', plant: all(yarns('B'), note('Work two rows in A, then two rows in B.')) },
  { name: 'a colour by its own name', plant: reword('front-2', 'Ch 1, sc in each st across, turn.') },
  { name: 'buttons that are left off', plant: note('This vest is worn open, without buttons.') },
  {
    name: 'a buttonhole and a button band',
    plant: note('There is no need for a buttonhole or a button band.'),
  },
  {
    name: 'a needle that is implied',
    plant: all(notion('Yarn needle', null), finishing('Weave in the ends.')),
  },
  {
    name: 'buttons in two lots',
    plant: all(notion('Buttons', { all: 6 }), finishing('Sew 3 buttons to each front.')),
  },
  { name: 'tools at hand', plant: all(notion('Scissors', null), notion('Tape measure', null)) },
  {
    name: 'whole words in notes beside short forms in rows',
    plant: note('Each stitch of a round sits between two stitches of the round below.'),
  },
  { name: 'a sentence that begins with a row', plant: all(note('See Row 2.'), note('Row 2 sets the edge.')) },
  { name: 'rows that are counted', plant: all(note('See Row 2.'), note('Work 2 rows 3 times.')) },
  {
    name: 'words that may stand twice',
    plant: note('Work very very loosely, so that that edge stays wide.'),
  },
  { name: 'two stitches of one name in a row', plant: reword('back-2', 'Ch 1, sc in each st across, turn.') },
  {
    name: 'a photograph described in a word or two',
    plant: about({ cover: { id: 'p', alt: 'Harbour vest.', caption: null } }),
  },
  { name: 'an address in full', plant: about({ contact: 'https://harbour.example/help' }) },
  { name: 'a length in both units', plant: note('Leave a tail of 30 cm (12 in) for the seam.') },
  { name: 'a range in both units', plant: note('Leave 4 to 6 in / 10 to 15 cm of yarn.') },
  { name: 'half an inch', plant: note('Work 2 rows more for each ½ in (1.3 cm).') },
  {
    name: 'stitches that go in something',
    plant: reword('back-2', 'Ch 1, sc 2 in first st, sc in next st, sk 1 st, sc in each st across, turn.'),
    except: ['count-drifts', 'stitches-passed-over', 'wording-differs'],
  },
  {
    name: 'notes that part two chains by their place',
    plant: all(
      note('Ch 1 at the beginning of a row counts as a st in the bands.'),
      note('Ch 1 at the beginning of a row does not count as a st elsewhere.'),
    ),
  },
  {
    name: 'a note that the rows follow',
    plant: note('Ch 1 at the beginning of a row does not count as a st.'),
  },
  { name: 'what it is not', plant: note('The vest is not worked in joined rounds.') },
  {
    name: 'the right side where it faces',
    plant: reword('front-1', 'With RS facing, sc in 2nd ch from hook and in each ch across, turn.'),
  },
  { name: 'the side of the last row', plant: prose('back-3', 'The last row is a WS row.') },
  { name: 'a row that is there', plant: note('Place a thread at the end of Row 40.') },
  { name: 'a count that is right', plant: prose('back-2', 'There are {panel stitches} sts now.') },
  { name: 'a count for a part of the row', plant: prose('back-2', 'There are 10 sts for each shoulder.') },
  { name: 'a list for two sizes that are named', plant: note('For sizes M and L leave 20 (22) sts.') },
  { name: 'a list of one number a size', plant: note('Leave 20 (22, 24) sts for the neck.') },
  {
    name: 'two lengths in one sentence',
    plant: note('The swatch is 15 cm wide and 10 cm high (6 by 4 in).'),
  },
  {
    name: 'steps that grow',
    plant: all(four, typed('height', 40, 42, 45, 49), typed('width', 45, 50, 55, 62)),
  },
  {
    name: 'a length that the rows make',
    plant: prose('back-3', 'The piece should measure 40 (42, 44) cm / 16 (16½, 17½) in.'),
  },
  {
    name: 'a length across',
    plant: prose('back-3', 'The piece should measure 45 (50, 55) cm / 18 (20, 22) in across.'),
  },
  {
    name: 'a pocket that is sewn on',
    plant: all(withPiece('pocket', 'Pocket'), finishing('Sew the pocket to the front.')),
  },
  {
    name: 'pieces that are joined all together',
    plant: all(withPiece('gusset', 'Gusset'), finishing('Join all pieces with sl sts.')),
  },
  { name: 'edges that are no pieces', plant: finishing('Sew the sleeve openings flat.') },
  {
    name: 'yarn that the notes cut for all pieces',
    plant: all(without('front-4'), without('back-4'), note('Fasten off after each piece.')),
  },
  {
    name: 'yarn that is kept',
    plant: all(without('back-4'), prose('back-3', 'Do not fasten off.')),
  },
  {
    name: 'yarn drawn through what is left',
    plant: all(without('back-4'), prose('back-3', 'Cut the yarn and draw it through the last loop.')),
  },
  {
    name: 'a yarn joined after one was cut, within a row',
    plant: all(
      without('front-4'),
      inBlock('front-3', (block) => [
        block,
        row('front-off', 'Ch 1, sc in each st across. Fasten off.'),
        row('front-edge', 'With WS facing, join yarn with sl st in first st, ch 1, sc in each st across.'),
        row('front-end', 'Fasten off.'),
      ]),
    ),
    except: ['length-in-words-off', 'pieces-do-not-meet'],
  },
  {
    name: 'a spiral whose last round is joined',
    plant: all(
      roundsOf([
        ...Array.from({ length: 5 }, () => 'Sc in each st around.'),
        'Sc in each st around; join with sl st in first sc.',
      ]),
      note('The knob is worked in a spiral.'),
    ),
  },
  { name: 'a spiral that the notes announce', plant: all(spiral, note('The knob is worked in a spiral.')) },
  {
    name: 'a spiral whose rounds are marked',
    plant: all(spiral, note('Mark the first st of each round.')),
  },
  {
    name: 'work until a length, before the rows that make it and after them',
    plant: all(
      prose('front-2', 'Work on in sc until the piece measures 40 (42, 44) cm / 16 (16½, 17½) in.'),
      prose('back-3', 'Work until the piece measures 40 (42, 44) cm / 16 (16½, 17½) in.'),
    ),
  },
  {
    name: 'work until a length that its rows have still before them',
    plant: inBlock('front-2', (block) => [
      block,
      row('front-on', 'Rep Row 2 until piece measures 20 cm (8 in) from beginning.'),
    ]),
    except: ['pieces-do-not-meet'],
  },
  {
    name: 'a pair that is worn as two',
    plant: (pattern) => ({
      ...pattern,
      about: { ...pattern.about, garment: 'mitts', title: 'Harbour mitts' },
      pieces: pattern.pieces.slice(0, 1).map((own) => ({ ...own, make: 2, meets: [] })),
      finishing: [written('Weave in all ends.')],
    }),
  },
  {
    name: 'short forms that only the labels of rows have',
    plant: (pattern) => ({ ...pattern, abbreviations: { RS: 'right side', WS: 'wrong side' } }),
  },
  {
    name: 'a typed length that the rows are worked on to',
    plant: all(
      withPiece('pocket', 'Pocket'),
      finishing('Sew the pocket on.'),
      inBlock('pocket-3', () => [row('pocket-3', 'Rep Row 2 until pocket measures 16 cm (6½ in).')]),
      (pattern) => ({
        ...pattern,
        lines: [
          ...pattern.lines,
          {
            id: 'pocket-length',
            name: 'pocket length',
            printed: 'Pocket length',
            note: null,
            kind: 'typed',
            values: { all: cm(16) },
          },
        ],
      }),
    ),
  },
  {
    name: 'work until a length from a place within',
    plant: prose('front-3', 'Work until the band measures 5 cm (2 in) from the armhole.'),
  },
  {
    name: 'rows that grow, with one small step for rounding',
    // 40, 42, 43, 44 and 46 cm at 18 rows in 10 cm, even: 72, 76, 78, 80 and 82.
    plant: all(five, typed('height', 40, 42, 43, 44, 46), typed('width', 45, 50, 55, 60, 65)),
  },
  {
    name: 'a seam told in a paragraph of a piece',
    plant: all(
      (pattern) => ({ ...pattern, finishing: [] }),
      prose('back-3', 'Sew the side edges of both panels.'),
    ),
  },
  { name: 'an apostrophe and inches', plant: note('The maker\'s own swatch was 4" (10 cm) wide.') },
  {
    name: 'repeats in square brackets beside sizes in round ones',
    plant: reword('back-2', 'Ch 1, [sc in next st] {panel stitches} times, turn.'),
  },
  {
    name: 'stitches in one place in round brackets, repeats in square ones',
    plant: reword('back-2', 'Ch 1, [(sc, ch 1, sc) in next st, sk 1 st] 36 (40, 44) times, turn.'),
    except: ['count-drifts', 'stitches-passed-over', 'pieces-do-not-meet', 'wording-differs'],
  },
  {
    name: 'a repeat that goes out of the way of the sizes, and one that need not',
    plant: all(
      reword('front-1', 'Sc in 2nd ch from hook, (sc in next ch) 5 times, sc in each ch across, turn.'),
      reword('front-2', 'Ch 1, (sc in next 2 sts) twice, sc in each st across, turn.'),
      reword('back-2', 'Ch 1, [sc in next st] {panel stitches} times, turn.'),
    ),
  },
  {
    name: 'sizes in square brackets throughout',
    plant: all(reword('back-0', 'Ch 73[81, 89].'), reword('front-0', 'Ch 73[81, 89].')),
  },
  {
    name: 'the fit that the ease makes, and others that are denied, offered or of a part',
    plant: all(
      worn(),
      about({ description: 'A vest with a standard fit.', fit: 'Standard: it is not oversized.' }),
      note('For an oversized fit choose a larger size. Work a snug cuff and fitted sleeve caps.'),
      note('If you like a close-fitting vest, use a smaller hook. A classic vest for every day.'),
    ),
    except: ['hook-not-listed', 'piece-in-words-not-there'],
  },
  {
    name: 'an oversized vest for children',
    plant: all(
      (pattern) => ({ ...pattern, sizes: ['S', 'M', 'L'].map((label) => size(label, [8, 10])) }),
      worn(),
      about({ description: 'An oversized vest.' }),
    ),
  },
  { name: 'a fit of what has no body to compare', plant: about({ description: 'An oversized vest.' }) },
  {
    name: 'a side that differs and is told',
    plant: all(
      oddRows,
      prose('front-3', 'Sizes S and M end after a WS row, size L after a RS row.'),
      prose('back-3', 'In size L the last row is on the right side.'),
    ),
  },
  {
    name: 'a row more that is told to one size alone',
    plant: all(more('front-3', 'front-2', 1, 'L'), more('back-3', 'back-2', 1, 'L')),
    except: ['row-count-out-of-line', 'count-drifts'],
  },
  {
    name: 'pieces without sides',
    plant: all(oddRows, (pattern) => ({
      ...pattern,
      pieces: pattern.pieces.map((each) => ({ ...each, firstSide: null })),
    })),
  },
  {
    name: 'brackets that are spoken of',
    plant: note('Figures in square brackets [ ] refer to larger sizes; so do those in ( ) parentheses.'),
  },
  {
    name: 'rows by their short labels, and a version',
    plant: all(note('Place the eyes between R5 and R6.'), note('This is v2 of the pattern.')),
    except: ['row-in-words-not-there', 'notion-not-listed'],
  },
  { name: 'a word with what is left of another', plant: note("You'll need the chart's first row.") },
  {
    name: 'two sides, and both again in the other unit',
    plant: note('The swatch is 4 in x 8 in (10 cm x 20 cm).'),
  },
  {
    name: 'a stitch more at either end where the chain counts',
    plant: all(
      note('Ch 3 at the beginning of a row counts as a dc.'),
      reword('front-2', 'Ch 3, dc in first st, dc in each st to last st, 2 dc in last st, turn.'),
    ),
    except: [
      'count-drifts',
      'stitches-passed-over',
      'wording-differs',
      'pieces-do-not-meet',
      'gauge-worked-otherwise',
      'finished-measurement-off',
      'meeting-without-edge',
      'row-count-out-of-line',
      'turning-chain-assumed',
      'caution-printed',
    ],
  },
  {
    name: 'a chain of another length than that of which the notes speak',
    plant: all(
      note('Beginning ch 3 counts as dc.'),
      reword('front-2', 'Ch 1, sc in same st, sc in each st across, turn.'),
    ),
    except: ['count-drifts', 'stitches-passed-over', 'wording-differs'],
  },
  {
    name: 'a gauge that does not matter',
    plant: all(note('Gauge is not important for a toy.'), (pattern) => ({
      ...pattern,
      gauges: [],
      lines: [],
    })),
    except: ['formula-unknown-name', 'figure-waits', 'repeat-of-nothing', 'place-does-not-exist'],
  },
  { name: 'its own terms', plant: note('This pattern is written in US terms.') },
  {
    name: 'the terms compared',
    plant: note('In UK terms sc is double crochet.'),
    except: ['other-terms-in-prose', 'term-in-doubt'],
  },
  {
    name: 'the sizes as they are',
    plant: all(about({ description: 'A vest in three sizes.' }), note('In size M work one row more.')),
    except: ['row-count-out-of-line'],
  },
  { name: 'some of the sizes', plant: note('For two sizes the last row is left out.') },
  {
    name: 'fibres that round to ninety-nine',
    plant: (pattern) => ({
      ...pattern,
      yarns: pattern.yarns.map((each) => ({ ...each, fibre: '33% wool, 33% silk, 33% linen' })),
    }),
  },
  { name: 'rows as high as they are', plant: note('18 rows are 10 cm (4 in).') },
  { name: 'a list numbered by letters, and a smile', plant: note('a) Front; b) back :)') },
  { name: 'an address and a yarn by its number', plant: about({ contact: 'help@harbour.example' }) },
  { name: 'a temperature in both scales', plant: about({ care: 'Wash at 40 °C / 104 °F.' }) },
  {
    name: 'a band that joins its yarn',
    plant: (pattern) => ({
      ...pattern,
      pieces: [
        ...pattern.pieces,
        {
          ...piece('band', 'Band'),
          start: {
            kind: 'edges',
            edges: [{ piece: 'back', kind: 'top', amount: null, which: 1 }],
            round: false,
          },
          blocks: [
            row('band-1', 'Join yarn with sl st in first st, ch 1, sc in each st across.'),
            { type: 'prose', id: 'band-2', text: written('Fasten off.'), sizes: null },
          ],
        } satisfies Piece,
      ],
    }),
    except: ['last-side-differs'],
  },
  {
    name: 'inches and then a place',
    plant: note('Over 4 in in the pattern (10 cm) count again.'),
    except: ['length-in-one-unit'],
  },
  {
    name: 'the ease that there is, of the sample, of a part, for another taste, within an inch',
    plant: all(
      worn(),
      about({ fit: 'Standard: choose the size 8 to 13 cm (3 to 5 in) larger than your bust.' }),
      note('The sample is worn with 20 cm (8 in) of positive ease.'),
      note('If you like a roomy vest, choose a size 25 cm (10 in) larger than your bust.'),
      note('The armholes are 25 cm (10 in) larger than your arm.'),
      note('The vest has about 12 cm (4¾ in) of positive ease.'),
    ),
  },
  {
    name: 'pieces that are counted right, some of several, and both sides',
    plant: all(
      strips,
      about({ description: 'A plain vest with four narrow strips.' }),
      note('Sew two of the strips to both sides.'),
    ),
  },
  {
    name: 'numbers that are near those of a line by chance',
    // The neckband of the vest has 34 seven times and then 40; three values of it are others here.
    plant: () => ({
      ...vest,
      notes: [written('Mark 34 (34, 34, 34, 34, 34, 36, 40, 40, 42) sts.'), ...vest.notes],
    }),
    except: ['caution-printed'],
  },
  { name: 'a hook by its size and letter', plant: note('Use the 4.5 mm (US 7) hook, or a 4.5 mm (G) one.') },
  { name: 'sizes in their order', plant: note('Numbers are given for sizes S (M, L).') },
  {
    name: 'colours that are called by their names',
    plant: all(yarns('B'), (pattern) => ({
      ...pattern,
      yarns: pattern.yarns.map((yarn, i) => ({ ...yarn, name: ['Worsted, brown', 'Worsted, cream'][i]! })),
      notes: [written('Begin with cream, and change to brown at the yoke.')],
    })),
  },
  {
    name: 'a hook in the name of a piece',
    plant: all(hook(4), (pattern) => ({
      ...pattern,
      pieces: pattern.pieces.map((own, i) => (i === 0 ? { ...own, name: `${own.name} (4 mm hook)` } : own)),
    })),
  },
  {
    name: 'swatches on chains that work, of another stitch, and a chain of something else',
    plant: () => ({
      ...vest,
      notes: [
        written('For the gauge swatch ch 30 and work in the pattern (29 sts, 9 V-sts).'),
        written('For a gauge swatch of the rib, ch 25 and work in hdc.'),
        written('Check your gauge. Ch 1 is never counted in the pattern.'),
        ...vest.notes,
      ],
    }),
    except: ['caution-printed'],
  },
];
