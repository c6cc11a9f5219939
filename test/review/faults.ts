/**
 * Faults as an editor meets them, planted one by one in copies of the examples: a wrong number, a word put in or
 * left out, a line of the sheet, a thing of the materials. Each says which finding it must give, where, at which
 * words and in which sizes. Invented; the numbers are worked out beside them.
 */
import type { Block, Line, Pattern } from '../../core/document/pattern.ts';
import { text as figured } from '../../core/document/writer.ts';
import { stitchesBySize } from '../../core/review/cautions.ts';
import { study } from '../../core/study/index.ts';
import { hat } from '../../resources/examples/hat.ts';
import { tee } from '../../resources/examples/tee.ts';
import { vest } from '../../resources/examples/vest.ts';
import { about, both, finish, line, note, notion, type Plant, piece, swap, typed } from './plants.ts';

export const examples = { vest, hat, tee } as const;
export type Example = keyof typeof examples;

export interface Fault {
  readonly in: Example;
  readonly name: string;
  readonly plant: Plant;
  readonly code: string;
  /** Node of the finding; a part of a text in it where ids are made by the writer; null = the whole pattern. */
  readonly at: string | null | { readonly text: string };
  /** The words pointed at, figures by their expression in brackets. */
  readonly words?: string;
  /** Labels of the sizes concerned; left out where it is not of sizes or of all. */
  readonly sizes?: readonly string[];
  /** The beginning of its sentence, with the numbers. */
  readonly saying?: string;
  /** Other mistakes that follow from the same fault. */
  readonly follows?: readonly string[];
}

/** A change of the repeat of a piece. */
const repeatOf = (id: string, change: Partial<Extract<Block, { type: 'repeat' }>>): Plant =>
  piece(id, ({ blocks }) => ({
    blocks: blocks.map((block) => (block.type === 'repeat' ? { ...block, ...change } : block)),
  }));

const VEST_V = 'sk 2 sts, V-st in next st; rep from * to last 2 sts';

const noMakings: Plant = (pattern) => ({ ...pattern, workbook: { ...pattern.workbook, makings: [] } });

/** Metres typed for every size, about what its stitches take (4.5 cm each), changed as the fault has it. */
function typedYarn(pattern: Pattern, change: (metres: number, size: string) => number): Pattern {
  const stitches = stitchesBySize(study(pattern));
  const metres = Object.fromEntries(
    pattern.sizes.map(({ id }, i) => [id, Math.round(change(stitches[i]! * 0.045, id))]),
  );
  return { ...pattern, yarns: pattern.yarns.map((yarn) => ({ ...yarn, metres })) };
}

/** A tester's hat for an adult: what it took, or how wide it came out. */
const tested =
  ({ grams, around }: { readonly grams?: number; readonly around?: number }): Plant =>
  (pattern) => ({
    ...pattern,
    workbook: {
      ...pattern.workbook,
      makings: [
        ...pattern.workbook.makings,
        {
          id: 'making-tester',
          kind: 'tester',
          by: 'Nim',
          size: 'size-adult',
          state: 'finished',
          used: grams === undefined ? [] : [{ yarn: 'yarn-main', piece: '', grams, metres: null }],
          hours: null,
          swatch: null,
          measured: around === undefined ? {} : { 'line-finished-hat': { value: around, unit: 'cm' } },
          note: '',
        },
      ],
    },
  });

export const faults: readonly Fault[] = [
  // What reading notices.
  {
    in: 'tee',
    name: 'a letter too many in a stitch',
    plant: swap('hdc in each hdc and in each ch to end', 'hddc in each hdc and in each ch to end'),
    code: 'word-not-read',
    at: { text: 'hddc in each' },
    words: 'hddc',
    follows: ['stated-count-wrong'],
  },
  {
    in: 'vest',
    name: 'a repeat that never closes',
    plant: swap(
      `*${VEST_V}, sk next st, hdc in last st`,
      '*sk 2 sts, V-st in next st, sk next st, hdc in last st',
    ),
    code: 'repeat-not-closed',
    at: { text: '*sk 2 sts, V-st in next st, sk' },
    words: '*',
    follows: [
      'edge-too-short',
      'meeting-without-edge',
      'pieces-do-not-meet',
      'place-does-not-exist',
      'repeat-does-not-fit',
      'stated-count-wrong',
      'stitches-left-unworked',
    ],
  },
  {
    in: 'hat',
    name: 'a repeat that never opens',
    plant: swap('*1 FPtr around next st, 1 BPtr', '1 FPtr around next st, 1 BPtr'),
    code: 'repeat-not-opened',
    at: { text: '1 FPtr around' },
    follows: ['stated-count-wrong', 'stitches-left-unworked'],
  },
  {
    in: 'tee',
    name: 'a bracket left open',
    plant: swap('(hdc, ch 1, hdc) in ch-1 sp', '(hdc, ch 1, hdc in ch-1 sp'),
    code: 'bracket-not-closed',
    at: { text: '(hdc, ch 1, hdc in' },
    words: '(',
  },
  {
    in: 'vest',
    name: 'a list with a number missing, in a row',
    plant: swap('hdc in each of next {neck stitches − 4} sts', 'hdc in each of next 24 (24, 24, 24, 30) sts'),
    code: 'sizes-differ-in-length',
    at: { text: '24 (24, 24' },
    words: '24 (24, 24, 24, 30)',
    follows: ['stated-count-wrong', 'stitches-left-unworked'],
  },
  {
    in: 'hat',
    name: 'a US stitch in a UK row',
    plant: swap('1 htr in each st around', '1 hdc in each st around'),
    code: 'other-terms',
    at: { text: '1 hdc in each' },
    words: 'hdc',
  },
  {
    in: 'vest',
    name: 'a special stitch that nobody defined',
    plant: swap(
      'sk 2 sts, V-st in next st; rep from * to last 2 sts',
      'sk 2 sts, shell in next st; rep from * to last 2 sts',
    ),
    code: 'special-not-defined',
    at: { text: 'shell in next st' },
    words: 'shell',
    follows: [
      'edge-too-short',
      'meeting-without-edge',
      'pieces-do-not-meet',
      'place-does-not-exist',
      'repeat-does-not-fit',
      'stated-count-wrong',
      'stitches-left-unworked',
    ],
  },
  {
    in: 'hat',
    name: 'a repeat that forgot how often',
    plant: swap('1 BPtr around next st; rep from * around, join', '1 BPtr around next st*, join'),
    code: 'times-missing',
    at: { text: 'around next st*, join' },
    follows: ['stated-count-wrong', 'stitches-left-unworked'],
  },
  // What working notices.
  {
    in: 'hat',
    name: 'a stated count of another round',
    plant: swap('(24 htr)', '(26 htr)'),
    code: 'stated-count-wrong',
    at: { text: '(26 htr)' },
    words: '(26 htr)',
  },
  {
    in: 'tee',
    name: 'a stated figure of the wrong line',
    plant: swap(
      'join with sl st in first sc. ({neck stitches} sc)',
      'join with sl st in first sc. ({neck stitches + 2} sc)',
    ),
    code: 'stated-count-wrong',
    at: { text: 'sc in each ch around' },
    words: '([neck stitches + 2] sc)',
  },
  {
    in: 'hat',
    name: 'a repeat one stitch too long',
    plant: swap(
      '*1 htr in next st, 2 htr in next st; rep from * around',
      '*1 htr in each of next 2 sts, 2 htr in next st; rep from * around',
    ),
    code: 'repeat-does-not-fit',
    at: { text: '*1 htr in each of next 2 sts, 2 htr' },
    follows: ['stated-count-wrong'],
  },
  {
    in: 'vest',
    name: 'a side of the neck that is one row-end too long',
    plant: swap(
      'sc in each of next {neck rows} row-ends (left side)',
      'sc in each of next {neck rows + 1} row-ends (left side)',
    ),
    code: 'place-does-not-exist',
    at: { text: '(left side)' },
    follows: ['repeat-does-not-fit', 'stated-count-wrong'],
  },
  {
    in: 'tee',
    name: 'stitches of the row below forgotten',
    plant: swap(
      'hdc in each of last {front neck stitches ÷ 2} ch',
      'hdc in each of next {front neck stitches ÷ 2 − 3} ch',
    ),
    code: 'stitches-left-unworked',
    at: { text: '{front neck stitches ÷ 2 − 3}' },
    follows: [
      'count-in-words-off',
      'place-does-not-exist',
      'repeat-does-not-fit',
      'shaping-not-as-planned',
      'stated-count-wrong',
    ],
  },
  {
    in: 'vest',
    name: 'a skip left out',
    plant: swap(
      '*sk 2 sts, V-st in next st; rep from * to last 2 sts, sk next st, hdc in last st',
      '*V-st in next st; rep from * to last 2 sts, hdc in last st',
    ),
    code: 'stated-count-wrong',
    at: { text: '*V-st in next st; rep' },
    follows: ['stitches-left-unworked', 'too-many-stitches'],
  },
  {
    in: 'vest',
    name: 'a repeat beyond the rows there are',
    plant: repeatOf('panel', { until: { kind: 'total', rows: '2' } }),
    code: 'repeat-beyond-total',
    at: 'panel-5',
  },
  {
    in: 'vest',
    name: 'a seam of more stitches than there are',
    plant: piece('neckband', ({ start }) => ({
      start:
        start.kind === 'edges'
          ? {
              ...start,
              edges: start.edges.map((edge, i) =>
                i === 0 ? { ...edge, amount: 'neck stitches + 500' } : edge,
              ),
            }
          : start,
    })),
    code: 'edge-too-short',
    at: 'neckband',
  },
  {
    in: 'tee',
    name: 'a sleeve from an opening that is not there',
    plant: piece('sleeve', ({ start }) => ({
      start:
        start.kind === 'edges'
          ? { ...start, edges: start.edges.map((edge) => ({ ...edge, which: 3 })) }
          : start,
    })),
    code: 'edge-not-there',
    at: 'sleeve',
    follows: ['count-in-words-off', 'place-does-not-exist', 'shaping-not-as-planned', 'stated-count-wrong'],
  },
  {
    in: 'hat',
    name: 'a row to be worked as one that is not there',
    plant: swap('Fasten off.', 'Rep Row 99.'),
    code: 'row-in-words-not-there',
    at: { text: 'Rep Row 99.' },
    words: 'Row 99',
  },
  // What grading notices.
  {
    in: 'vest',
    name: 'a name mistyped in a formula',
    plant: line('finished chest', { formula: 'bust + eese' } as Partial<Line>),
    code: 'formula-unknown-name',
    at: 'line-finished-chest',
    words: 'eese',
    follows: [
      'figure-waits',
      'place-does-not-exist',
      'repeat-does-not-fit',
      'stated-count-wrong',
      'stitches-left-unworked',
    ],
  },
  {
    in: 'tee',
    name: 'lines that wait for one another',
    plant: line('yoke depth', { formula: 'full length − side made' } as Partial<Line>),
    code: 'line-circle',
    at: 'line-yoke-depth',
    follows: [
      'count-in-words-off',
      'place-does-not-exist',
      'repeat-does-not-fit',
      'shaping-not-as-planned',
      'shaping-without-line',
      'stated-count-wrong',
    ],
  },
  {
    in: 'hat',
    name: 'a length added to a count',
    plant: line('hat height', { formula: 'hat rounds + depth' } as Partial<Line>),
    code: 'formula-mixed',
    at: 'line-hat-height',
  },
  {
    in: 'vest',
    name: 'a size that measures less than the one before',
    plant: typed('neck width', 'size-l', 4),
    code: 'size-step-out-of-line',
    at: 'line-neck-width',
    sizes: ['L'],
  },
  {
    in: 'hat',
    name: 'two sizes of one name',
    plant: (pattern) => ({
      ...pattern,
      sizes: pattern.sizes.map((size) => (size.id === 'size-large' ? { ...size, label: 'Adult' } : size)),
    }),
    code: 'size-labels-equal',
    at: null,
    sizes: ['Adult', 'Adult'],
  },
  {
    in: 'tee',
    name: 'a sample of no size',
    plant: (pattern) => ({ ...pattern, sample: 'gone' }),
    code: 'sample-size-missing',
    at: null,
  },
  {
    in: 'vest',
    name: 'a gauge that was taken away',
    plant: line('panel rows', { gauge: 'gauge-gone' } as Partial<Line>),
    code: 'gauge-missing',
    at: 'line-panel-rows',
    follows: ['figure-waits'],
  },
  {
    in: 'tee',
    name: 'a shaping that has no room',
    plant: line('shared rounds', { formula: '3' } as Partial<Line>),
    code: 'shaping-too-many',
    at: 'line-raglan',
    follows: [
      'count-in-words-off',
      'place-does-not-exist',
      'repeat-does-not-fit',
      'shaping-not-as-planned',
      'shaping-without-line',
      'stated-count-wrong',
    ],
  },
  {
    in: 'hat',
    name: 'head sizes out of order',
    plant: line('head', {
      overtyped: {
        ...(hat.lines[0] as Extract<Line, { kind: 'body' }>).overtyped,
        'size-child': { value: 48, unit: 'cm' },
      },
    } as Partial<Line>),
    code: 'size-values-out-of-order',
    at: 'line-head',
    sizes: ['Toddler', 'Child'],
    follows: ['repeat-does-not-fit', 'stated-count-wrong'],
  },
  // The technical edit, rule by rule.
  {
    in: 'hat',
    name: 'a row that was brought in and is unsure',
    plant: (pattern) => ({
      ...pattern,
      workbook: {
        ...pattern.workbook,
        doubts: [{ node: 'notes:1', why: 'This may belong to the row before.' }],
      },
    }),
    code: 'brought-in-unsure',
    at: 'notes:1',
  },
  {
    in: 'vest',
    name: 'a gap in the notes',
    plant: note('The sample took ??? hours.'),
    code: 'leftover-text',
    at: 'notes:4',
    words: '???',
  },
  {
    in: 'tee',
    name: 'a cover without a designer',
    plant: about({ designer: '' }),
    code: 'cover-incomplete',
    at: 'cover:designer',
  },
  {
    in: 'hat',
    name: 'no copyright',
    plant: about({ copyright: ' ' }),
    code: 'edition-not-stated',
    at: 'cover:copyright',
  },
  {
    in: 'vest',
    name: 'a gauge without rows',
    plant: (pattern) => ({
      ...pattern,
      gauges: pattern.gauges.map((gauge) => (gauge.id === 'gauge-rib' ? { ...gauge, rows: 0 } : gauge)),
    }),
    code: 'gauge-not-given',
    at: 'gauge-rib',
  },
  {
    in: 'tee',
    name: 'an old gauge in the notes',
    plant: swap(
      'Gauge is measured in rounds',
      'Gauge is 18 sts and 13 rounds = 10 cm (4 in), measured in rounds',
    ),
    code: 'gauge-in-words-differs',
    at: 'notes:2',
  },
  {
    in: 'hat',
    name: 'no hook',
    plant: (pattern) => ({
      ...pattern,
      hooks: [],
      gauges: pattern.gauges.map((gauge) => ({ ...gauge, hook: null })),
    }),
    code: 'hook-not-given',
    at: null,
  },
  {
    in: 'vest',
    name: 'the bands with another hook',
    plant: swap('Work the bands with the 4 mm hook', 'Work the bands with the 3.5 mm hook'),
    code: 'hook-not-listed',
    at: { text: 'with the 3.5 mm hook' },
    words: '3.5 mm',
  },
  {
    in: 'tee',
    name: 'a hook for nothing',
    plant: (pattern) => ({ ...pattern, hooks: [...pattern.hooks, { id: 'hook-third', mm: 6, purpose: '' }] }),
    code: 'hook-not-used',
    at: 'hook-third',
  },
  {
    in: 'hat',
    name: 'a yarn without its weight',
    plant: (pattern) => ({ ...pattern, yarns: pattern.yarns.map((yarn) => ({ ...yarn, weight: null })) }),
    code: 'yarn-not-given',
    at: 'yarn-main',
  },
  {
    in: 'vest',
    name: 'no amount of yarn, and no sample to reckon one from',
    plant: noMakings,
    code: 'yarn-amount-not-given',
    at: 'yarn-main',
  },
  {
    in: 'tee',
    name: 'yarn of one size with a figure lost',
    plant: both(noMakings, (pattern) =>
      typedYarn(pattern, (metres, size) => (size === 'size-l' ? metres / 10 : metres)),
    ),
    code: 'yarn-amount-out-of-line',
    at: 'yarn-main',
    sizes: ['L'],
  },
  {
    in: 'hat',
    name: 'a stripe in a yarn that nobody has',
    plant: note('For stripes work every second round in colour B.'),
    code: 'yarn-not-listed',
    at: 'notes:3',
    words: 'B',
  },
  {
    in: 'tee',
    name: 'a second yarn that is never used',
    plant: (pattern) => ({
      ...pattern,
      yarns: [
        ...pattern.yarns.map((yarn) => ({ ...yarn, key: 'MC' })),
        {
          ...pattern.yarns[0]!,
          id: 'yarn-second',
          key: 'CC',
          name: 'The same yarn, second colour',
          metres: Object.fromEntries(pattern.sizes.map(({ id }) => [id, 0])),
        },
      ],
      notes: [...pattern.notes, figured('Work everything in MC.')],
    }),
    code: 'yarn-not-used',
    at: 'yarn-second',
  },
  {
    in: 'vest',
    name: 'a zip that is not on the list',
    plant: finish('Sew the zip into the front edge.'),
    code: 'notion-not-listed',
    at: 'finishing:1',
    words: 'zip',
  },
  {
    in: 'hat',
    name: 'elastic for nothing',
    plant: notion('Hat elastic, 1 m', null),
    code: 'notion-not-used',
    at: 'notion-new',
  },
  {
    in: 'vest',
    name: 'buttons without a number',
    plant: both(notion('Buttons, 15 mm', null), finish('Sew the buttons to the left shoulder.')),
    code: 'notion-amount-not-given',
    at: 'notion-new',
  },
  {
    in: 'tee',
    name: 'more markers than are listed',
    plant: swap('Place a marker in each', 'Place 8 markers in them'),
    code: 'notion-amount-short',
    at: { text: 'Place 8 markers' },
    words: '8 markers',
  },
  {
    in: 'vest',
    name: 'a short form of the designer’s own',
    plant: note('Mark the BOR with a thread.'),
    code: 'abbreviation-not-explained',
    at: 'notes:4',
    words: 'BOR',
  },
  {
    in: 'tee',
    name: 'an explanation for nothing',
    plant: (pattern) => ({ ...pattern, abbreviations: { lgsh: 'large shell' } }),
    code: 'abbreviation-not-used',
    at: 'abbreviation:lgsh',
  },
  {
    in: 'tee',
    name: 'a special stitch for nothing',
    plant: (pattern) => ({
      ...pattern,
      specials: [
        {
          id: 'special-fan',
          nameUs: 'fan',
          nameUk: 'fan',
          abbrUs: '',
          abbrUk: '',
          text: figured('5 dc in st indicated'),
        },
      ],
    }),
    code: 'special-not-used',
    at: 'special-fan',
  },
  {
    in: 'vest',
    name: 'a special stitch without its UK name',
    plant: (pattern) => ({
      ...pattern,
      specials: pattern.specials.map((special) => ({ ...special, nameUk: '', abbrUk: '' })),
    }),
    code: 'special-name-missing',
    at: 'special-v',
  },
  {
    in: 'vest',
    name: 'a word that may be a stitch',
    plant: note('Work a treble at each corner, then fasten off the double.'),
    code: 'term-in-doubt',
    at: 'notes:4',
  },
  {
    in: 'hat',
    name: 'a US word in the notes',
    plant: swap(
      'Raised stitches are worked around the post of the st below',
      'Raised stitches are worked around the post of the hdc below',
    ),
    code: 'other-terms-in-prose',
    at: 'notes:1',
    words: 'hdc',
  },
  {
    in: 'tee',
    name: 'one “skip” among many “sk”',
    plant: swap(
      'sk next ch-1 sp, sk next {sleeve top stitches} sts',
      'skip next ch-1 sp, sk next {sleeve top stitches} sts',
    ),
    code: 'wording-differs',
    at: { text: 'skip next ch-1 sp' },
    words: 'skip',
  },
  {
    in: 'vest',
    name: 'a comma where semicolons stand',
    plant: swap('V-st in next st; rep from * {shoulder', 'V-st in next st, rep from * {shoulder'),
    code: 'wording-differs',
    at: { text: 'V-st in next st, rep from * {shoulder' },
    words: ',',
  },
  {
    in: 'hat',
    name: 'a word that stands twice',
    plant: swap('it has no seam to sew', 'it has has no seam to sew'),
    code: 'word-repeated',
    at: 'cover:description',
    words: 'has has',
  },
  {
    in: 'tee',
    name: 'two full stops',
    plant: swap('Do not fasten off.', 'Do not fasten off..'),
    code: 'punctuation-slip',
    at: { text: 'Do not fasten off..' },
    words: '..',
  },
  {
    in: 'vest',
    name: 'words to click',
    plant: note('For a film of the corner round click here.'),
    code: 'link-not-plain',
    at: 'notes:4',
    words: 'click here',
  },
  {
    in: 'hat',
    name: 'a length in one unit',
    plant: finish('Leave a tail of 20 cm.'),
    code: 'length-in-one-unit',
    at: 'finishing:1',
    words: '20 cm',
  },
  {
    in: 'hat',
    name: 'ten centimetres that are six inches',
    plant: swap('about 10 cm (4 in) across', 'about 10 cm (6 in) across'),
    code: 'units-disagree',
    at: 'notes:2',
    words: '10 cm (6 in)',
  },
  {
    in: 'hat',
    name: 'rows that are all still to be written',
    plant: piece('hat', () => ({ blocks: [], meets: [] })),
    code: 'rows-not-begun',
    at: 'hat',
    follows: ['chart-without-rows'],
  },
  {
    in: 'vest',
    name: 'a piece that has a name alone',
    plant: (pattern) => ({
      ...pattern,
      pieces: [
        ...pattern.pieces,
        { ...pattern.pieces[0]!, id: 'pocket', name: 'Pocket', blocks: [], meets: [], make: 1 },
      ],
      finishing: [...pattern.finishing, figured('Sew the pocket on.')],
    }),
    code: 'piece-without-rows',
    at: 'pocket',
  },
  {
    in: 'tee',
    name: 'a row without words',
    plant: piece('body', ({ blocks }) => ({
      blocks: [
        ...blocks,
        { type: 'row', id: 'empty', text: figured(' '), sizes: null, form: 'round', title: null },
      ],
    })),
    code: 'row-without-words',
    at: 'empty',
  },
  {
    in: 'hat',
    name: 'a cover photograph without a description',
    plant: about({ cover: { id: 'p', alt: '', caption: null } }),
    code: 'photo-not-described',
    at: 'cover:title',
  },
  {
    in: 'vest',
    name: 'a chart of a row that was taken out',
    plant: (pattern) => ({
      ...pattern,
      charts: [{ id: 'chart-v', piece: 'panel', first: 'gone', last: 'gone', size: '', title: 'The Vs' }],
    }),
    code: 'chart-without-rows',
    at: 'chart-v',
  },
  {
    in: 'tee',
    name: 'a round against the notes',
    plant: swap(
      'ch 2 (does not count as a st), hdc in each of next {sleeve top',
      'ch 2 (counts as hdc), hdc in each of next {sleeve top',
    ),
    code: 'turning-chain-contradicted',
    at: { text: 'ch 2 (counts as hdc), hdc in each of next {sleeve top' },
    follows: ['place-does-not-exist'],
  },
  {
    in: 'vest',
    name: 'a turning chain at the end of a row',
    plant: both(
      swap(
        'Sc in 2nd ch from hook and in each ch across, turn.',
        'Sc in 2nd ch from hook and in each ch across, ch 2 (counts as hdc), turn.',
      ),
      swap('Ch 2 (counts as hdc), sk first 2 sts, V-st in next st', 'Sk first 2 sts, V-st in next st'),
    ),
    code: 'turning-chain-placed-two-ways',
    at: { text: 'across, ch 2 (counts as hdc), turn' },
    follows: [
      'edge-too-short',
      'meeting-without-edge',
      'pieces-do-not-meet',
      'place-does-not-exist',
      'repeat-does-not-fit',
      'stated-count-wrong',
      'stitches-left-unworked',
    ],
  },
  {
    in: 'hat',
    name: 'joined rounds that are called a spiral',
    plant: swap('from the crown down in joined rounds', 'from the crown down in a continuous spiral'),
    code: 'rounds-contradicted',
    at: 'cover:construction',
    words: 'in a continuous spiral',
  },
  {
    in: 'vest',
    name: 'the side of the last row',
    plant: swap('The last row is a WS row of sc.', 'The last row is an RS row of sc.'),
    code: 'side-of-work-off',
    at: { text: 'The last row is an RS row' },
  },
  {
    in: 'vest',
    name: 'a row of a longer version',
    plant: note('Place a thread at the end of Row 140.'),
    code: 'row-in-words-not-there',
    at: 'notes:4',
    words: 'Row 140',
  },
  {
    in: 'tee',
    name: 'a count in a paragraph',
    plant: swap('There are {cuff stitches} sts.', 'There are {cuff stitches + 2} sts.'),
    code: 'count-in-words-off',
    at: { text: 'There are {cuff stitches + 2} sts.' },
    words: '[cuff stitches + 2]',
  },
  {
    in: 'hat',
    name: 'a round that misses its first stitch',
    plant: swap(
      '1 htr in each st around, join with ss in first htr. ({hat stitches} htr)',
      'miss first st, 1 htr in each st around, join with ss in first htr.',
    ),
    code: 'count-drifts',
    at: 'hat-17',
    follows: ['repeat-does-not-fit', 'stated-count-wrong'],
  },
  {
    in: 'vest',
    name: 'a list of the wrong length in a note',
    plant: note('Leave 20 (22, 24, 26) sts for the back neck.'),
    code: 'size-list-wrong-length',
    at: 'notes:4',
    words: '20 (22, 24, 26)',
  },
  {
    in: 'tee',
    name: 'the numbers of a line typed',
    plant: note('In the neck are 30 (32, 34, 34, 36, 36, 38, 38, 38) sts at the front.'),
    code: 'typed-numbers-of-line',
    at: 'notes:3',
    words: '30 (32, 34, 34, 36, 36, 38, 38, 38)',
  },
  {
    in: 'hat',
    name: 'a depth with its digits turned',
    plant: typed('depth', 'size-child', 8.5),
    code: 'size-step-out-of-line',
    at: 'line-depth',
    sizes: ['Child'],
  },
  {
    in: 'vest',
    name: 'a length in words that the rows do not make',
    plant: swap(
      'Fasten off. The last row is a WS row of sc.',
      'The panel should measure 20 in / 51 cm. Fasten off. The last row is a WS row of sc.',
    ),
    code: 'length-in-words-off',
    at: { text: 'The panel should measure' },
    words: '20 in',
  },
  {
    in: 'hat',
    name: 'a typed height in the table',
    plant: (pattern) => ({
      ...pattern,
      lines: [
        ...pattern.lines,
        {
          id: 'line-typed',
          name: 'typed height',
          printed: 'Hat height',
          note: null,
          kind: 'typed',
          values: { all: { value: 10, unit: 'cm' } },
        },
      ],
    }),
    code: 'typed-measurement-off',
    at: 'line-typed',
  },
  {
    in: 'vest',
    name: 'a bust that the panels miss',
    plant: (pattern) => ({
      ...pattern,
      lines: [
        ...pattern.lines,
        {
          id: 'line-all-round',
          name: 'all round',
          printed: 'All round',
          note: null,
          kind: 'formula',
          formula: 'width of panel stitches × 2',
        },
      ],
    }),
    code: 'finished-measurement-off',
    at: 'line-all-round',
    sizes: ['XS', 'S', 'L', 'XL', '3X', '4X', '6X'],
  },
  {
    in: 'vest',
    name: 'a shoulder that is a repeat narrower than the back’s',
    plant: piece('left-shoulder', ({ meets }) => ({
      meets: meets.map((meeting) => ({
        ...meeting,
        other: { ...meeting.other, amount: 'shoulder stitches − 3' },
      })),
    })),
    code: 'pieces-do-not-meet',
    at: 'left-shoulder',
  },
  {
    in: 'vest',
    name: 'a seam with an edge that is not there',
    plant: piece('left-shoulder', ({ meets }) => ({
      meets: meets.map((meeting) => ({
        ...meeting,
        other: { ...meeting.other, kind: 'opening' as const, amount: null },
      })),
    })),
    code: 'meeting-without-edge',
    at: 'left-shoulder',
  },
  {
    in: 'tee',
    name: 'a pocket that is sewn nowhere',
    plant: (pattern) => ({
      ...pattern,
      pieces: [
        ...pattern.pieces,
        {
          id: 'pocket',
          name: 'Pocket',
          make: 1,
          start: { kind: 'chain' },
          firstSide: 'RS',
          gauge: '',
          meets: [],
          blocks: [
            {
              type: 'row',
              id: 'pocket-1',
              text: figured(
                'Ch 20. Hdc in 3rd ch from hook (the skipped ch do not count as a st) and in each ch across, turn. (18 hdc)',
              ),
              sizes: null,
              form: 'row',
              title: null,
            },
          ],
        },
      ],
    }),
    code: 'piece-not-put-together',
    at: 'pocket',
  },
  {
    in: 'hat',
    name: 'ears from another hat',
    plant: finish('Sew the ears to the crown.'),
    code: 'piece-in-words-not-there',
    at: 'finishing:1',
    words: 'ears',
  },
  {
    in: 'hat',
    name: 'a tie on a hat for babies',
    plant: both(
      notion('Ribbon for a tie', { all: 1 }, { cord: true }),
      finish('Sew the ribbon to the band.'),
    ),
    code: 'cord-on-child-size',
    at: 'notion-new',
    sizes: ['Newborn', '3–6 months', '6–12 months', 'Toddler', 'Child'],
  },
  {
    in: 'hat',
    name: 'a pompom on a hat for babies',
    plant: finish('Make a pompom and sew it to the crown.'),
    code: 'small-part-on-child-size',
    at: 'finishing:1',
    words: 'pompom',
    sizes: ['Newborn', '3–6 months', '6–12 months', 'Toddler'],
  },
  {
    in: 'hat',
    name: 'a yarn that sheds',
    plant: (pattern) => ({
      ...pattern,
      yarns: pattern.yarns.map((yarn) => ({ ...yarn, fibre: '70% mohair, 30% silk' })),
    }),
    code: 'caution-printed',
    at: null,
    words:
      'The caution "Shedding yarn for babies" is printed, because of what this pattern makes, for whom and of what.',
  },
  {
    in: 'hat',
    name: 'yarn for a third of what the sample took',
    // The adult sample took 64 g of a yarn of 115 m to 50 g: 147 m for some 4,000 stitches.
    plant: (pattern) => typedYarn(pattern, (metres) => metres / 3),
    code: 'yarn-amount-off',
    at: 'yarn-main',
  },
  {
    in: 'hat',
    name: 'a tester who used twice the yarn',
    plant: tested({ grams: 128 }),
    code: 'tester-used-off',
    at: 'yarn-main',
    sizes: ['Adult'],
  },
  {
    in: 'hat',
    name: 'a tester’s hat that came out far too wide',
    plant: tested({ around: 70 }),
    code: 'tester-measured-off',
    at: 'line-finished-hat',
    sizes: ['Adult'],
  },
  {
    in: 'vest',
    name: 'a shoulder whose yarn is left on the hook',
    plant: swap('Fasten off, leaving a long tail for the seam.', 'Leave a long tail for the seam.'),
    code: 'yarn-not-fastened-off',
    at: 'left-shoulder-6',
  },
  {
    in: 'tee',
    name: 'a piece made twice, and no word of a seam',
    plant: (pattern) => ({
      ...pattern,
      pieces: pattern.pieces.slice(0, 1).map((each) => ({ ...each, make: 2 })),
      finishing: [figured('Wash it and dry it flat.')],
    }),
    code: 'finishing-not-given',
    at: null,
    follows: [],
  },
  {
    in: 'vest',
    name: 'one size with 16 rows more',
    // The back has 32, 34, 36, 38 … rows: 54 in L.
    plant: piece('back', ({ blocks }) => ({
      blocks: blocks.flatMap((block): readonly Block[] =>
        block.type === 'repeat'
          ? [block, { ...block, id: 'back-more', until: { kind: 'rows', rows: '16' }, sizes: ['size-l'] }]
          : [block],
      ),
    })),
    code: 'row-count-out-of-line',
    at: 'back',
    sizes: ['L'],
  },
  {
    in: 'vest',
    name: 'a last row that passes over all of the shoulder',
    plant: piece('left-shoulder', ({ blocks }) => ({
      blocks: blocks.flatMap((block): readonly Block[] =>
        block.type === 'repeat'
          ? [
              block,
              {
                type: 'row',
                id: 'left-last',
                text: figured('Ch 1, sk next {shoulder stitches} sts, sc in each rem st across, turn.'),
                sizes: null,
                form: 'row',
                title: null,
              },
            ]
          : [block],
      ),
    })),
    code: 'row-leaves-nothing',
    at: 'left-last',
    follows: ['pieces-do-not-meet'],
  },
  {
    in: 'vest',
    name: 'work until a length that the panel’s rows do not make',
    // 51 rows make the 12¾ in from the hem to the armhole.
    plant: swap(
      'Fasten off. The last row',
      'Work until the panel measures 20 cm (8 in). Fasten off. The last row',
    ),
    code: 'length-until-off',
    at: { text: 'Work until the panel measures' },
    words: '20 cm',
  },
  {
    in: 'hat',
    name: 'a ball in a spiral that nothing announces',
    plant: (pattern) => ({
      ...pattern,
      notes: pattern.notes.slice(0, 2),
      pieces: [
        ...pattern.pieces,
        {
          ...pattern.pieces[0]!,
          id: 'ball',
          name: 'Ball',
          blocks: [
            '6 dc in magic ring. (6 dc)',
            '2 dc in each st around. (12 dc)',
            'Dc in each st around. (12 dc)',
          ].map(
            (words, i): Block => ({
              type: 'row',
              id: `ball-${i}`,
              text: figured(words),
              sizes: null,
              form: 'round',
              title: null,
            }),
          ),
        },
      ],
    }),
    code: 'spiral-not-said',
    at: 'ball',
  },
  {
    in: 'hat',
    name: 'a swatch in rows for a hat in rounds',
    plant: (pattern) => ({
      ...pattern,
      gauges: pattern.gauges.map((gauge) => ({ ...gauge, rounds: false })),
    }),
    code: 'gauge-worked-otherwise',
    at: 'hat',
  },
  {
    in: 'vest',
    name: 'a repeat in round brackets in a row with a list of counts',
    plant: swap(`*${VEST_V}`, '(sk 2 sts, V-st in next st) to last 2 sts'),
    code: 'repeat-in-size-brackets',
    at: { text: '(sk 2 sts, V-st in next st)' },
    words: '(sk 2 sts, V-st in next st)',
  },
  {
    in: 'hat',
    name: 'two rounds with their repeats in two kinds of brackets',
    plant: both(
      swap(
        '*1 htr in next st, 2 htr in next st; rep from * around',
        '[1 htr in next st, 2 htr in next st] 8 times',
      ),
      swap(
        '*1 htr in each of next 2 sts, 2 htr in next st; rep from * around',
        '(1 htr in each of next 2 sts, 2 htr in next st) 8 times',
      ),
    ),
    code: 'brackets-differ',
    at: { text: '(1 htr in each of next 2 sts' },
    words: '(1 htr in each of next 2 sts, 2 htr in next st)',
  },
  {
    in: 'vest',
    name: 'a boxy vest that is called close-fitting',
    plant: swap('A boxy vest', 'A close-fitting vest'),
    code: 'fit-in-words-off',
    at: 'cover:description',
    words: 'close-fitting',
  },
  {
    in: 'vest',
    name: 'a pocket with a row more in one size',
    plant: (pattern) => ({
      ...pattern,
      lines: [
        ...pattern.lines,
        {
          id: 'line-pocket',
          name: 'pocket rows',
          printed: null,
          note: null,
          kind: 'typed',
          values: {
            each: Object.fromEntries(
              pattern.sizes.map(({ id }) => [
                id,
                { value: id === 'size-l' ? 21 : 20, unit: 'none' as const },
              ]),
            ),
          },
        },
      ],
      pieces: [
        ...pattern.pieces,
        {
          ...pattern.pieces[0]!,
          id: 'pocket',
          name: 'Pocket',
          start: { kind: 'chain' },
          meets: [],
          blocks: [
            ...[
              'Ch 21.',
              'Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
              'Ch 1, sc in each st across, turn. (20 sc)',
            ].map(
              (words, i): Block => ({
                type: 'row',
                id: `pocket-${i}`,
                text: figured(words),
                sizes: null,
                form: i === 0 ? 'foundation' : 'row',
                title: null,
              }),
            ),
            {
              type: 'repeat',
              id: 'pocket-rest',
              first: 'pocket-2',
              last: 'pocket-2',
              until: { kind: 'total', rows: 'pocket rows' },
              sizes: null,
            },
            { type: 'prose', id: 'pocket-off', text: figured('Fasten off.'), sizes: null },
          ],
        },
      ],
    }),
    code: 'last-side-differs',
    at: 'pocket-rest',
    sizes: ['L'],
  },
];
