/**
 * Patterns made at random within the limits of the document, for tests of laws that hold for every pattern.
 * They are well formed and rarely sensible: names point at things that exist, numbers mean nothing.
 */
import fc from 'fast-check';
import type {
  Block,
  Edge,
  FigureText,
  Line,
  Media,
  Pattern,
  PerSize,
  Piece,
  Quantity,
  RowBlock,
} from '../../core/document/pattern.ts';
import { FIGURE } from '../../core/document/pattern.ts';
import { tidyText } from '../../core/document/words.ts';
import type { Workbook } from '../../core/document/workbook.ts';

/** Words of the trade and characters that have gone wrong elsewhere. */
const SCRAPS = [
  'Ch 3',
  'dc in next st',
  'sk 2 sts',
  '*',
  '; rep from * across',
  '(2 dc, ch 2, 2 dc)',
  'turn.',
  ' ',
  '½',
  '×',
  '–',
  'é',
  '🧶',
  '"',
  '\\',
  '<b>',
  '12 (14, 16)',
  '\u00AD',
];

export const plainText: fc.Arbitrary<string> = fc
  .oneof(
    {
      weight: 3,
      arbitrary: fc.array(fc.constantFrom(...SCRAPS), { maxLength: 6 }).map((all) => all.join('')),
    },
    { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 12 }).map(tidyText) },
  )
  .map((text) => text.slice(0, 180))
  .map(tidyText);

const expression = fc.oneof(plainText, fc.constantFrom('back stitches', 'back stitches − 2'));

export const figureText: fc.Arbitrary<FigureText> = fc
  .tuple(plainText, fc.array(fc.tuple(expression, plainText), { maxLength: 3 }))
  .map(([before, after]) => ({
    text: before + after.map(([, text]) => FIGURE + text).join(''),
    figures: after.map(([figure]) => figure),
  }));

/** Finite, in bounds, and no negative zero: JSON has none. */
const number = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => (value === 0 ? 0 : value));
const count = fc.nat({ max: 5_000 });
const amount = number(0, 5_000);

const quantity: fc.Arbitrary<Quantity> = fc.record({
  value: number(-10_000, 10_000),
  unit: fc.constantFrom('cm', 'mm', 'in', '%', 'none'),
});

function perSize<T>(ids: readonly string[], value: fc.Arbitrary<T>): fc.Arbitrary<PerSize<T>> {
  return fc.oneof(
    value.map((all) => ({ all })),
    each(ids, value).map((values) => ({ each: values })),
  );
}

/** A value for some of the sizes. */
function each<T>(ids: readonly string[], value: fc.Arbitrary<T>): fc.Arbitrary<Record<string, T>> {
  return fc
    .tuple(fc.subarray([...ids]), fc.array(value, { minLength: ids.length, maxLength: ids.length }))
    .map(([chosen, values]) => Object.fromEntries(chosen.map((id, at) => [id, values[at]!])));
}

const orNull = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });

const media: fc.Arbitrary<Media> = fc.record({
  id: fc.stringMatching(/^[0-9a-f]{32}$/),
  alt: plainText,
  caption: orNull(plainText),
});

const rounding = fc.constantFrom('nearest', 'up', 'down' as const);
const reference = (ids: readonly string[]) => fc.constantFrom('', ...ids);

type WithoutId<T> = T extends unknown ? Omit<T, 'id'> : never;

function line(sizes: readonly string[], gauges: readonly string[]): fc.Arbitrary<WithoutId<Line>> {
  const base = { name: plainText, printed: orNull(plainText), note: orNull(plainText) };
  const gauge = reference(gauges);
  return fc.oneof(
    fc.record({
      ...base,
      kind: fc.constant('body' as const),
      measure: plainText,
      bound: fc.constantFrom('lower', 'middle', 'upper' as const),
      overtyped: each(sizes, quantity),
    }),
    fc.record({
      ...base,
      kind: fc.constantFrom('typed' as const, 'ease' as const),
      values: perSize(sizes, quantity),
    }),
    fc.record({ ...base, kind: fc.constant('formula' as const), formula: expression }),
    fc.record({
      ...base,
      kind: fc.constant('stitches' as const),
      length: expression,
      gauge,
      state: fc.constantFrom('relaxed', 'stretched' as const),
      multiple: count,
      plus: fc.integer({ min: -50, max: 50 }),
      rounding,
      parity: fc.constantFrom('any', 'even', 'odd' as const),
      counts: fc.constantFrom('stitches', 'spaces', 'repeats', 'chains' as const),
      extra: fc.integer({ min: -50, max: 50 }),
      tolerance: orNull(quantity),
    }),
    fc.record({
      ...base,
      kind: fc.constant('rows' as const),
      length: expression,
      gauge,
      cycle: count,
      endOn: count,
      before: count,
      rounding,
      tolerance: orNull(quantity),
    }),
    fc.record({
      ...base,
      kind: fc.constant('shaping' as const),
      start: expression,
      end: expression,
      rows: expression,
      perEnd: count,
      ends: count,
      step: count,
    }),
    fc.record({
      ...base,
      kind: fc.constant('spread' as const),
      changes: expression,
      over: expression,
      change: fc.constantFrom('inc', 'dec' as const),
      form: fc.constantFrom('flat', 'round' as const),
      stitch: fc.constantFrom('t1', 't3'),
    }),
  );
}

function edge(pieces: readonly string[]): fc.Arbitrary<Edge> {
  return fc.record({
    piece: reference(pieces),
    kind: fc.constantFrom('top', 'foundation', 'row-ends', 'opening', 'seam'),
    amount: orNull(expression),
    which: fc.integer({ min: 1, max: 9 }),
  });
}

const forSizes = (sizes: readonly string[]) => orNull(fc.subarray([...sizes]));

const row = (sizes: readonly string[]): fc.Arbitrary<WithoutId<RowBlock>> =>
  fc.record({
    type: fc.constant('row' as const),
    text: figureText,
    sizes: forSizes(sizes),
    form: fc.constantFrom('row', 'round', 'foundation' as const),
    title: orNull(plainText),
  });

/** One to three blocks in order, the last of which may point back at the first. */
function blocks(piece: string, sizes: readonly string[]): fc.Arbitrary<readonly Block[]> {
  const id = (at: number, end = '') => `${piece}-block-${at}${end}`;
  const anyOf = fc.oneof(
    {
      weight: 4,
      arbitrary: row(sizes).map(
        (made) =>
          (at: number): Block => ({ ...made, id: id(at) }),
      ),
    },
    fc
      .record({
        sizes: forSizes(sizes),
        until: fc.oneof(
          expression.map((times) => ({ kind: 'times' as const, times })),
          expression.map((rows) => ({ kind: 'rows' as const, rows })),
          expression.map((rows) => ({ kind: 'total' as const, rows })),
        ),
      })
      .map((made) => (at: number): Block => {
        const before = at === 0 ? '' : id(at - 1);
        return { ...made, type: 'repeat', id: id(at), first: before, last: before };
      }),
    fc.record({ line: plainText, sizes: forSizes(sizes), shaped: row(sizes), even: row(sizes) }).map(
      ({ shaped, even, ...made }) =>
        (at: number): Block => ({
          ...made,
          type: 'shaping',
          id: id(at),
          shaped: { ...shaped, id: id(at, '-shaped') },
          even: { ...even, id: id(at, '-even') },
        }),
    ),
    fc.record({ text: figureText, sizes: forSizes(sizes) }).map(
      (made) =>
        (at: number): Block => ({ ...made, type: 'prose', id: id(at) }),
    ),
    plainText.map(
      (text) =>
        (at: number): Block => ({ type: 'heading', id: id(at), text }),
    ),
    media.map(
      (shown) =>
        (at: number): Block => ({ type: 'photo', id: id(at), media: shown }),
    ),
  );
  return fc.array(anyOf, { maxLength: 5 }).map((made) => made.map((block, at) => block(at)));
}

function piece(id: string, pieces: readonly string[], sizes: readonly string[]): fc.Arbitrary<Piece> {
  return fc.record({
    id: fc.constant(id),
    name: plainText,
    make: fc.integer({ min: 0, max: 4 }),
    start: fc.oneof(
      fc.constant({ kind: 'chain' as const }),
      fc.record({
        kind: fc.constant('edges' as const),
        edges: fc.array(edge(pieces), { maxLength: 3 }),
        round: fc.boolean(),
      }),
    ),
    firstSide: orNull(fc.constantFrom('RS', 'WS')),
    gauge: fc.constantFrom('', 'gauge-0'),
    blocks: blocks(id, sizes),
    meets: fc.array(fc.record({ mine: edge(pieces), other: edge(pieces) }), { maxLength: 2 }),
  });
}

const ids = (kind: string, most: number): fc.Arbitrary<readonly string[]> =>
  fc.nat({ max: most }).map((n) => Array.from({ length: n }, (_, at) => `${kind}-${at}`));

/** Lists whose items get the ids given, in order. */
const withIds = <T>(given: readonly string[], item: fc.Arbitrary<T>): fc.Arbitrary<(T & { id: string })[]> =>
  fc.tuple(...given.map((id) => item.map((made) => ({ ...made, id }))));

/** Records of every kind about the sizes, lines, pieces and yarns given. */
function workbook(
  sizes: readonly string[],
  lines: readonly string[],
  pieces: readonly string[],
  items: readonly string[],
): fc.Arbitrary<Workbook> {
  const date = fc.constantFrom('', '2024-02-29');
  return fc.record({
    yarnMargin: number(0, 50),
    pricing: fc.record({
      currency: fc.constantFrom('', 'EUR', 'GBP'),
      hourly: orNull(amount),
      other: fc.array(fc.record({ name: plainText, amount }), { maxLength: 2 }),
      profit: number(0, 100),
      fee: number(0, 99),
    }),
    makings: withIds(
      items.map((id) => `making-${id}`),
      fc.record({
        kind: fc.constantFrom('sample', 'tester', 'swatch' as const),
        by: plainText,
        size: reference(sizes),
        state: fc.constantFrom('asked', 'working', 'finished' as const),
        used: fc.array(
          fc.record({
            yarn: reference(items.map((id) => `yarn-${id}`)),
            piece: reference(pieces),
            grams: orNull(amount),
            metres: orNull(amount),
          }),
          { maxLength: 2 },
        ),
        hours: orNull(amount),
        swatch: orNull(
          fc.record({ stitch: fc.constantFrom('t1', 't3'), stitches: count, rows: count, chains: count }),
        ),
        measured: each(lines, quantity),
        note: plainText,
      }),
    ),
    people: withIds(
      items.map((id) => `person-${id}`),
      fc.record({ name: plainText, base: reference(sizes), values: each(lines, quantity), note: plainText }),
    ),
    accepted: fc.array(
      fc.record({
        code: plainText,
        node: reference(pieces),
        words: plainText,
        reason: plainText,
        date,
      }),
      { maxLength: 2 },
    ),
    doubts: fc.array(fc.record({ node: reference(pieces), why: plainText }), { maxLength: 2 }),
  });
}

/** A pattern within the limits: every list may be empty, every kind of line and block occurs. */
export const anyPattern: fc.Arbitrary<Pattern> = fc
  .tuple(ids('size', 4), ids('gauge', 2), ids('hook', 2), ids('line', 6), ids('piece', 3), ids('item', 2))
  .chain(([sizes, gauges, hooks, lineIds, pieces, items]) =>
    fc.record({
      about: fc.record({
        title: plainText,
        designer: plainText,
        level: fc.constantFrom(1, 2, 3, 4 as const),
        description: plainText,
        construction: plainText,
        garment: plainText,
        cover: orNull(media),
        version: plainText,
        date: fc.constantFrom('', '2024-02-29', '1999-12-31'),
        copyright: plainText,
        contact: plainText,
        care: plainText,
        language: fc.constantFrom('en', 'en-US', 'en-GB'),
        fit: plainText,
      }),
      terms: fc.constantFrom('us', 'uk' as const),
      units: fc.constantFrom('metric', 'imperial' as const),
      sizes: withIds(
        sizes,
        fc.record({
          label: plainText,
          audience: fc.constantFrom(
            'woman',
            'man',
            'child',
            'youth',
            'baby',
            'head',
            'hand',
            'foot',
            'other' as const,
          ),
          chart: orNull(plainText),
          age: orNull(fc.tuple(number(0, 3), number(3, 16))),
        }),
      ),
      sample: orNull(fc.constantFrom('size-0', ...sizes)),
      tolerance: quantity,
      lines: withIds(lineIds, line(sizes, gauges)),
      gauges: withIds(
        gauges,
        fc.record({
          pattern: plainText,
          stitches: amount,
          rows: amount,
          width: quantity,
          height: quantity,
          blocked: fc.boolean(),
          stretch: orNull(fc.record({ lies: quantity, worn: quantity })),
          hook: orNull(fc.constantFrom('hook-0', ...hooks)),
          rounds: fc.boolean(),
        }),
      ),
      yarns: withIds(
        items.map((id) => `yarn-${id}`),
        fc.record({
          key: orNull(plainText),
          name: plainText,
          weight: orNull(fc.integer({ min: 0, max: 7 })),
          fibre: plainText,
          ballGrams: orNull(amount),
          ballMetres: orNull(amount),
          ballPrice: orNull(amount),
          metres: each(sizes, amount),
        }),
      ),
      hooks: withIds(hooks, fc.record({ mm: number(0, 25), purpose: plainText })),
      notions: withIds(
        items.map((id) => `notion-${id}`),
        fc.record({
          name: plainText,
          amount: orNull(perSize(sizes, amount)),
          smallPart: fc.boolean(),
          cord: fc.boolean(),
          price: orNull(amount),
        }),
      ),
      specials: withIds(
        items.map((id) => `special-${id}`),
        fc.record({
          nameUs: plainText,
          nameUk: plainText,
          abbrUs: plainText,
          abbrUk: plainText,
          text: figureText,
        }),
      ),
      abbreviations: fc.dictionary(plainText, plainText, { maxKeys: 3 }),
      notes: fc.array(figureText, { maxLength: 3 }),
      pieces: fc.tuple(...pieces.map((id) => piece(id, pieces, sizes))),
      finishing: fc.array(figureText, { maxLength: 3 }),
      cautions: fc.array(plainText, { maxLength: 2 }),
      charts: withIds(
        items.map((id) => `chart-${id}`),
        fc.record({
          piece: reference(pieces),
          first: reference(pieces),
          last: reference(pieces),
          size: reference(sizes),
          title: plainText,
        }),
      ),
      workbook: workbook(sizes, lineIds, pieces, items),
    }),
  );
