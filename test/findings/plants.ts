/**
 * For every kind of finding that needs a whole pattern: a sizing sheet, or pieces, that raise it. Invented
 * numbers, three sizes. They hold no expectation but the code.
 */
import type { Block, Line, Pattern, Piece, Size } from '../../core/document/pattern.ts';
import * as sheets from '../grading/sheets.ts';
import { note, repeat, row, written } from '../review/builder.ts';

const { all, bare, body, cm, ease, each, formula, percent, printed, rows, shaping, spread, stitches, typed } =
  sheets;

type PlantedSheet = (pattern: Pattern) => Pattern;

const sizes: readonly Size[] = sheets.women('S', 'M', 'L');

/** A pattern of lines alone. */
const withLines =
  (...lines: readonly Line[]): PlantedSheet =>
  (pattern) => ({
    ...pattern,
    sizes,
    sample: 'z0',
    lines,
    gauges: [sheets.gauge(16, 10, 'cm', 18)],
    pieces: [],
  });

const formulas = (text: string): PlantedSheet =>
  withLines(body('bust', 'bust'), formula('finished bust', text));
const three = (...values: readonly number[]) => each(...values.map(cm));

/** A pattern with one more piece of these blocks. */
const withBlocks =
  (
    blocks: readonly Block[],
    lines: readonly Line[] = [],
    start: Piece['start'] = { kind: 'chain' },
  ): PlantedSheet =>
  (pattern) => ({
    ...pattern,
    lines: [...pattern.lines, ...lines],
    pieces: [
      ...pattern.pieces,
      { id: 'extra', name: 'Extra', make: 1, start, firstSide: 'RS', gauge: '', blocks, meets: [] },
    ],
  });

const chained = [
  row('r0', 'Ch 41.'),
  row('r1', 'Sc in 2nd ch from hook and in each ch across, turn.'),
  row('r2', 'Ch 1, sc in each st across, turn.'),
];

const taper = shaping('taper', { start: '40', end: '30', rows: '20' });
const shapingBlock = (line: string, shaped: string): Block => ({
  type: 'shaping',
  id: 'taper-block',
  line,
  shaped: row('t1', shaped) as Extract<Block, { type: 'row' }>,
  even: row('t2', 'Ch 1, sc in each st across, turn.') as Extract<Block, { type: 'row' }>,
  sizes: null,
});

/** A pattern with one more piece whose last row is this, `{taper}` a shaping that its sheet plans. */
export const FIGURED = (text: string): PlantedSheet =>
  withBlocks([...chained, row('figured', text)], [taper, typed('front rows', all(bare(8)))]);

const edge = (kind: 'opening' | 'row-ends', amount: string | null): Piece['start'] => ({
  kind: 'edges',
  edges: [{ piece: 'front', kind, amount, which: 1 }],
  round: false,
});

export const PLANTS: Readonly<Record<string, PlantedSheet>> = {
  'formula-empty': formulas(''),
  'formula-bracket-open': formulas('(bust + 4 cm'),
  'formula-bracket-close': formulas('bust + 4 cm)'),
  'formula-rounding-unread': formulas('bust rounded to the moon'),
  'formula-too-long': formulas(`bust${' + 1 cm'.repeat(200)}`),
  'formula-too-deep': formulas(`${'('.repeat(60)}bust${')'.repeat(60)}`),
  'formula-unknown-name': formulas('bsut + 4 cm'),
  'formula-operand-missing': formulas('bust +'),
  'formula-operator-missing': formulas('bust 4 cm'),
  'formula-unread': formulas('bust & 4 cm'),
  'formula-choice-of-one': formulas('larger of bust'),
  'formula-missing-unit': formulas('bust + 4'),
  'formula-mixed': withLines(
    body('bust', 'bust'),
    stitches('back stitches', 'bust'),
    formula('finished bust', 'bust + back stitches'),
  ),
  'formula-area': formulas('bust × bust'),
  'formula-divided-by-length': formulas('4 ÷ bust'),
  'formula-divided-by-zero': formulas('bust ÷ 0'),
  'formula-too-large': formulas(`bust × ${'9'.repeat(60)}`),
  'formula-not-fitted': formulas('width of bust'),
  'formula-no-number': withLines(shaping('taper'), formula('twice', 'taper × 2')),
  'line-circle': withLines(formula('a line', 'b line'), formula('b line', 'a line')),
  'line-name-unusable': withLines(formula('12', '4 cm')),
  'line-name-repeated': withLines(typed('length', all(cm(40))), typed('length', all(cm(42)))),
  'line-value-missing': withLines(typed('length', { each: { z0: cm(40) } })),
  'line-missing-unit': withLines(ease('ease', all(bare(5)))),
  'line-not-length': withLines(body('bust', 'bust', 'lower', { z1: percent(5) })),
  'body-size-missing': (pattern) => ({
    ...withLines(body('bust', 'bust'))(pattern),
    sizes: sizes.map((size) => ({ ...size, chart: null })),
  }),
  'body-measure-missing': withLines(body('tail', 'tail_length')),
  'body-figure-missing': (pattern) => ({
    ...withLines(body('chest', 'chest'))(pattern),
    sizes: [{ id: 'z0', label: '4X', audience: 'man', chart: '4X', age: null }],
  }),
  'asked-not-length': withLines(stitches('back stitches', '48')),
  'count-is-length': withLines(body('bust', 'bust'), shaping('taper', { start: 'bust' })),
  'count-is-percent': withLines(shaping('taper', { start: '5 %' })),
  'count-not-whole': withLines(shaping('taper', { start: '61 ÷ 2' })),
  'count-negative': withLines(shaping('taper', { start: '4 − 18' })),
  'length-negative': withBlocks([
    { type: 'prose', id: 'p', text: written('Measure {panel width − 90 cm}.'), sizes: null },
  ]),
  'gauge-missing': withLines({ ...stitches('back stitches', '40 cm', { gauge: 'other' }) }),
  'gauge-incomplete': (pattern) => ({
    ...withLines(rows('back rows', '40 cm'))(pattern),
    gauges: [sheets.gauge(16, 10, 'cm', 0)],
  }),
  'gauge-no-stretch': withLines(stitches('brim stitches', '40 cm', { state: 'stretched' })),
  'fit-multiple-invalid': withLines(stitches('back stitches', '40 cm', { multiple: 0 })),
  'fit-cycle-invalid': withLines(rows('back rows', '40 cm', { cycle: 2, endOn: 3 })),
  'fit-parity-impossible': withLines(
    stitches('brim stitches', '40 cm', { multiple: 2, plus: 1, parity: 'even' }),
  ),
  'fit-not-positive': withLines(stitches('back stitches', '4 cm − 6 cm')),
  'fit-too-many': withLines(stitches('back stitches', '9000000 cm')),
  'fit-off': withLines(
    typed('width', three(40, 44, 48)),
    stitches('back stitches', 'width', { multiple: 16, tolerance: cm(1) }),
  ),
  'fit-below-smallest': withLines(
    typed('width', three(4, 5, 6)),
    stitches('back stitches', 'width', { multiple: 48, tolerance: cm(1) }),
  ),
  'shaping-invalid': withLines(shaping('taper', { perEnd: 0 })),
  'shaping-uneven': withLines(shaping('taper', { start: '41' })),
  'shaping-too-many': withLines(shaping('taper', { rows: '6' })),
  'spread-too-many': withLines(spread('increases', { changes: '60' })),
  'size-label-empty': (pattern) => ({
    ...pattern,
    sizes: pattern.sizes.map((size, i) => (i === 1 ? { ...size, label: '' } : size)),
  }),
  'size-labels-equal': (pattern) => ({
    ...pattern,
    sizes: pattern.sizes.map((size) => ({ ...size, label: 'M' })),
  }),
  'sample-size-missing': (pattern) => ({ ...pattern, sample: null }),
  'size-values-equal': withLines(printed(typed('bust', three(40, 42, 42)))),
  'size-values-out-of-order': withLines(printed(typed('length', three(40, 44, 42)))),
  'sizes-come-out-equal': withLines(printed(typed('length', three(40, 42, 42)))),

  'figure-waits': withBlocks(
    [row('r0', 'Ch {no gauge}.')],
    [stitches('no gauge', '40 cm', { gauge: 'other' })],
  ),
  'figure-not-a-count': withBlocks([row('r0', 'Ch {panel width}.')]),
  'repeat-of-nothing': withBlocks([...chained, repeat('again', 'gone', 'gone', '20')]),
  'repeat-beyond-total': withBlocks([...chained, repeat('again', 'r2', 'r2', '1')]),
  'shaping-without-line': withBlocks([...chained, shapingBlock('gone', 'Ch 1, sc in each st across, turn.')]),
  'shaping-not-as-planned': withBlocks(
    [...chained, shapingBlock('taper', 'Ch 1, sc2tog, sc in each st across, turn.')],
    [taper],
  ),
  'edge-not-there': withBlocks([row('r1', 'Sc in each st across.')], [], edge('opening', null)),
  'edge-too-short': withBlocks([row('r1', 'Sc in each row-end across.')], [], edge('row-ends', '500')),
  'label-not-expected': withBlocks([row('r0', 'Row 1: Ch 41.'), ...chained.slice(1)]),
  'too-deep': withBlocks([
    ...chained,
    row('deep', `Ch 1, ${'('.repeat(60)}sc${') twice'.repeat(60)}, turn.`),
  ]),
  'term-in-doubt': note('Fasten off the double.'),
};
