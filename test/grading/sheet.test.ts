/** The sheet as a whole: order of need, circles, and working out again only what an edit touches. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Gauge, Line, Quantity, Size } from '../../core/document/pattern.ts';
import { gradeSheet, lineNamed, type Sheet } from '../../core/grading/sheet.ts';
import {
  all,
  bare,
  body,
  cm,
  codes,
  each,
  ease,
  formula,
  gauge,
  grade,
  inches,
  numbers,
  percent,
  rows,
  shaping,
  spread,
  stitches,
  typed,
  women,
} from './sheets.ts';

describe('lines that need each other', () => {
  it('are worked out in order of need, whatever their order', () => {
    const sheet = grade([formula('c', 'b × 2'), formula('b', 'a × 2'), typed('a', all(cm(5)))]);
    expect(numbers(sheet, 'c')).toEqual([20]);
  });

  it('have one value for each size', () => {
    const sheet = grade([typed('a', each(cm(5), inches(2))), formula('b', 'a + 1 cm')], women('S', 'M', 'L'));
    expect(numbers(sheet, 'b')).toEqual([6, 6.08, null]);
    expect(sheet.lines[1]!.sizes[2]!.waitsFor).toEqual(['a']);
  });

  it('say it at each line of a circle, and the others still work', () => {
    const sheet = grade([
      formula('a', 'b + 1 cm'),
      formula('b', 'c + 1 cm'),
      formula('c', 'a + 1 cm'),
      formula('self', 'self + 1 cm'),
      formula('after', 'a + 2 cm'),
      formula('free', '3 cm'),
    ]);
    expect(sheet.lines.map(({ line }) => codes(sheet, line.name))).toEqual([
      ['line-circle'],
      ['line-circle'],
      ['line-circle'],
      ['line-circle'],
      [],
      [],
    ]);
    expect(sheet.lines[0]!.facts[0]).toMatchObject({
      from: 0,
      to: 8,
      data: { line: 'a', field: 'formula', lines: ['a', 'b', 'c'] },
    });
    expect(sheet.lines[3]!.facts[0]!.data.lines).toEqual(['self']);
    expect(numbers(sheet, 'free')).toEqual([3]);
    expect(sheet.lines[4]!.sizes[0]!.waitsFor).toEqual(['a']);
  });

  it('tell names taken twice, and names that are none', () => {
    const sheet = grade([
      typed('back hip', all(cm(5))),
      { ...typed('Back-hip', all(cm(6))), id: 'second' },
      typed('12', all(cm(7))),
      formula('a', 'back hip'),
    ]);
    expect(sheet.lines.map(({ line }) => codes(sheet, line.name))).toEqual([
      [],
      ['line-name-repeated'],
      ['line-name-unusable'],
      [],
    ]);
    expect(numbers(sheet, 'a')).toEqual([5]);
    expect(lineNamed(sheet, 'BACK  HIP')?.line.id).toBe('back hip');
    expect(lineNamed(sheet, 'front hip')).toBeNull();
  });

  it('work for a chain of thousands', () => {
    const chain = Array.from({ length: 5000 }, (_, i) => formula(`n${i + 1}`, `n${i} + 1 cm`)).reverse();
    const sheet = grade([...chain, typed('n0', all(cm(0)))]);
    expect(numbers(sheet, 'n5000')).toEqual([5000]);
  });
});

const sizes = women('S', 'M', 'L');
const gauges = [gauge(16, 4, 'in')];
const lines: readonly Line[] = [
  body('bust', 'bust'),
  ease('ease', all(cm(10))),
  formula('finished bust', 'bust + ease'),
  stitches('back stitches', 'finished bust ÷ 2', { multiple: 2 }),
  typed('length', all(cm(56))),
  rows('body rows', 'length', { cycle: 2, endOn: 2 }),
  formula('neck', 'back stitches ÷ 2 rounded to 2'),
  shaping('neckline', { start: 'back stitches', end: 'neck', rows: 'body rows', step: 1 }),
  spread('yoke', { changes: '6', over: 'back stitches' }),
];

describe('after an edit', () => {
  const before = gradeSheet(sizes, lines, gauges, cm(2));
  const again = (
    next: readonly Line[],
    at: readonly Size[] = sizes,
    using: readonly Gauge[] = gauges,
    tolerance: Quantity = cm(2),
  ) => gradeSheet(at, next, using, tolerance, before);
  const kept = (sheet: Sheet) =>
    sheet.lines.filter((result) => before.lines.includes(result)).map(({ line }) => line.name);

  it('nothing changed gives the sheet itself', () => {
    expect(again(lines)).toBe(before);
    expect(again([...lines], [...sizes], [...gauges], cm(2))).toBe(before);
  });

  it('only what depends on the edited line is another object', () => {
    const next = lines.map((line) => (line.name === 'length' ? typed('length', all(cm(60))) : line));
    const sheet = again(next);
    expect(kept(sheet)).toEqual(['bust', 'ease', 'finished bust', 'back stitches', 'neck', 'yoke']);
    expect(sheet.lines).toEqual(gradeSheet(sizes, next, gauges, cm(2)).lines);
  });

  it('stops where the values come out the same', () => {
    const next = lines.map((line) =>
      line.name === 'finished bust' ? formula('finished bust', 'ease + bust') : line,
    );
    expect(kept(again(next))).toEqual(
      lines.map((line) => line.name).filter((name) => name !== 'finished bust'),
    );
  });

  it('keeps the values of a size that the edit does not touch', () => {
    const next = lines.map((line) =>
      line.name === 'bust' ? body('bust', 'bust', 'lower', { z2: cm(120) }) : line,
    );
    const after = again(next).lines[3]!;
    const was = before.lines[3]!;
    expect(after.sizes.map((size, index) => size === was.sizes[index])).toEqual([true, true, false]);
  });

  it('a new line disturbs no other, nor does another gauge', () => {
    expect(kept(again([...lines, typed('hem', all(cm(3)))]))).toHaveLength(lines.length);
    expect(kept(again(lines, sizes, [...gauges, { ...gauge(9, 4, 'in'), id: 'other' }]))).toHaveLength(
      lines.length,
    );
    expect(kept(again(lines, sizes, [gauge(14, 4, 'in')]))).toEqual([
      'bust',
      'ease',
      'finished bust',
      'length',
    ]);
  });

  it('a name that becomes known is read at once', () => {
    const waiting = gradeSheet(sizes, [formula('a', 'hem + 1 cm')], gauges, cm(2));
    expect(codes(waiting, 'a')).toEqual(['formula-unknown-name']);
    const sheet = gradeSheet(
      sizes,
      [waiting.lines[0]!.line, typed('hem', all(cm(3)))],
      gauges,
      cm(2),
      waiting,
    );
    expect(numbers(sheet, 'a')).toEqual([4, 4, 4]);
  });

  it('comes to the same as from scratch, whatever the edits', () => {
    const names = ['a', 'b', 'c', 'd', 'e', 'f'];
    const operand = fc.oneof(
      fc.constantFrom(...names, 'width of b', 'half of c', '5 cm', '3', '4 %', '0', 'gg'),
    );
    const text = fc
      .array(fc.tuple(operand, fc.constantFrom('+', '−', '×', '÷')), { minLength: 1, maxLength: 3 })
      .map((parts) => parts.map(([word, sign], index) => (index === 0 ? word : `${sign} ${word}`)).join(' '));
    const amount = fc.constantFrom(
      all(cm(50)),
      all(inches(20)),
      all(bare(40)),
      all(percent(5)),
      each(cm(40), cm(45)),
    );
    const lineOf = (name: string): fc.Arbitrary<Line> =>
      fc.oneof(
        text.map((words) => formula(name, words)),
        amount.map((values) => typed(name, values)),
        amount.map((values) => ease(name, values)),
        fc.constant(body(name, 'hips')),
        text.chain((words) =>
          fc.integer({ min: 1, max: 6 }).map((multiple) => stitches(name, words, { multiple })),
        ),
        text.map((words) => rows(name, words)),
        fc.tuple(text, text).map(([start, end]) => shaping(name, { start, end })),
        text.map((changes) => spread(name, { changes })),
      );
    const sheetOf = fc.tuple(...names.map(lineOf));
    type Edit = (state: State) => State;
    interface State {
      readonly sizes: readonly Size[];
      readonly lines: readonly Line[];
      readonly gauges: readonly Gauge[];
      readonly tolerance: Quantity;
    }
    const edit: fc.Arbitrary<Edit> = fc.oneof(
      fc.constantFrom(...names).chain((name) =>
        lineOf(name).map(
          (line): Edit =>
            (state) => ({ ...state, lines: state.lines.map((each) => (each.id === name ? line : each)) }),
        ),
      ),
      fc.constantFrom(...names).map(
        (name): Edit =>
          (state) => ({ ...state, lines: state.lines.filter((each) => each.id !== name) }),
      ),
      fc.constantFrom(...names).chain((name) =>
        lineOf(name).map(
          (line): Edit =>
            (state) => ({ ...state, lines: [line, ...state.lines.filter((each) => each.id !== name)] }),
        ),
      ),
      fc.tuple(fc.constantFrom(...names), fc.constantFrom(...names)).map(
        ([name, other]): Edit =>
          (state) => ({
            ...state,
            lines: state.lines.map((line) => (line.id === name ? { ...line, name: other } : line)),
          }),
      ),
      fc.constantFrom(12, 16, 20).map(
        (count): Edit =>
          (state) => ({ ...state, gauges: [gauge(count, 4, 'in')] }),
      ),
      fc.constantFrom(1, 2, 3).map(
        (value): Edit =>
          (state) => ({ ...state, tolerance: cm(value) }),
      ),
      fc.constantFrom(['S'], ['S', 'M'], ['M', 'S', 'L'], ['9X']).map(
        (labels): Edit =>
          (state) => ({ ...state, sizes: women(...labels) }),
      ),
      fc.constant<Edit>((state) => ({ ...state, lines: [...state.lines].reverse() })),
    );
    fc.assert(
      fc.property(sheetOf, fc.array(edit, { maxLength: 8 }), (start, edits) => {
        let state: State = { sizes: women('S', 'M'), lines: start, gauges, tolerance: cm(2) };
        const fresh = () => gradeSheet(state.sizes, state.lines, state.gauges, state.tolerance);
        const first = fresh();
        let sheet = first;
        for (const change of edits) {
          state = change(state);
          sheet = gradeSheet(state.sizes, state.lines, state.gauges, state.tolerance, sheet);
          expect(sheet.lines).toEqual(fresh().lines);
          // From an older sheet, as after an undo, too.
          expect(gradeSheet(state.sizes, state.lines, state.gauges, state.tolerance, first).lines).toEqual(
            sheet.lines,
          );
        }
      }),
      { numRuns: 150 },
    );
  });
});

it('never throws, and gives a value or a reason, whatever numbers a line holds', () => {
  const number = fc.oneof(
    fc.constantFrom(0, -0, 1, 2, -1, 0.5, 1e-300, 1e300, 2 ** 53, Number.NaN, Infinity, -Infinity),
    fc.integer({ min: -50, max: 5000 }),
    fc.double(),
  );
  const unit = fc.constantFrom('cm' as const, 'mm' as const, 'in' as const, '%' as const, 'none' as const);
  const quantity = fc.record({ value: number, unit });
  const state = fc.constantFrom('relaxed' as const, 'stretched' as const);
  const parity = fc.constantFrom('any' as const, 'even' as const, 'odd' as const);
  const counts = fc.constantFrom('stitches' as const, 'repeats' as const);
  const rounding = fc.constantFrom('nearest' as const, 'up' as const, 'down' as const);
  const tolerance = fc.option(quantity);
  const some = fc.constantFrom(
    'a',
    'b',
    'a × b',
    'a ÷ b',
    'a + b',
    '40',
    '20 cm',
    'a rounded to 3',
    'width of s',
  );
  const any = fc.tuple(
    quantity.map((value) => typed('a', all(value))),
    quantity.map((value) => ease('b', all(value))),
    some.map((text) => formula('f', text)),
    fc
      .record({ multiple: number, plus: number, extra: number, state, parity, counts, rounding, tolerance })
      .chain((rest) => some.map((text) => stitches('s', text, rest))),
    fc
      .record({ cycle: number, endOn: number, before: number, rounding, tolerance })
      .chain((rest) => some.map((text) => rows('r', text, rest))),
    fc
      .record({ start: some, end: some, rows: some, perEnd: number, ends: number, step: number })
      .map((rest) => shaping('h', rest)),
    fc.record({ changes: some, over: some }).map((rest) => spread('p', rest)),
    quantity.map((value) => body('y', 'bust', 'upper', { z1: value })),
  );
  const anyGauge = fc
    .record({
      stitches: number,
      rows: number,
      width: quantity,
      height: quantity,
      stretch: fc.option(fc.record({ lies: quantity, worn: quantity })),
    })
    .map((rest): Gauge => ({ ...gauge(16, 4, 'in'), ...rest }));
  fc.assert(
    fc.property(any, anyGauge, quantity, (some, at, general) => {
      const sheet = gradeSheet(women('S', 'M'), some, [at], general);
      for (const { facts, sizes } of sheet.lines) {
        for (const size of sizes) {
          const reasons = facts.length + size.facts.length + size.waitsFor.length;
          expect(size.value !== null || reasons > 0).toBe(true);
        }
      }
    }),
    { numRuns: 1000 },
  );
});

it('grades 12 sizes of 60 lines', () => {
  const labels = ['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X', 'XS', 'S', 'M'];
  const many = Array.from({ length: 6 }, (_, part) => {
    const of = (name: string) => `${name} ${part}`;
    return [
      body(of('bust'), 'bust'),
      ease(of('ease'), all(percent(5))),
      formula(of('finished bust'), `${of('bust')} + ${of('ease')}`),
      stitches(of('back stitches'), `half of ${of('finished bust')}`, { multiple: 4, plus: 2 }),
      formula(of('real bust'), `width of ${of('back stitches')} × 2`),
      rows(of('rows'), '56 cm + 1 in', { cycle: 2, endOn: 2 }),
      formula(of('neck'), `${of('back stitches')} ÷ 3 rounded to 2`),
      shaping(of('neckline'), { start: of('back stitches'), end: of('neck'), rows: of('rows'), step: 1 }),
      spread(of('yoke'), { changes: '6', over: of('back stitches') }),
      formula(of('rest'), `larger of ${of('back stitches')} − ${of('neck')} and 2`),
    ];
  }).flat();
  const at = women(...labels);
  expect(gradeSheet(at, many, gauges, cm(2)).lines).toHaveLength(60);
});
