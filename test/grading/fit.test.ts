/** Fitting lengths to stitches and rows: the arithmetic of gauge, repeats, parity, stretch and tolerance. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Quantity } from '../../core/document/pattern.ts';
import type { RowsLine, StitchesLine } from '../../core/grading/fit.ts';
import { densityOf, fitRows, fitStitches, validCounts } from '../../core/grading/fit.ts';
import { type Length, toCm, toNumber } from '../../core/trade/units.ts';
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
  stitches,
  typed,
  women,
} from './sheets.ts';

const length = (quantity: Quantity): Length => toCm(quantity.value, quantity.unit as 'cm')!;
const stitchesLine = (rest: Partial<StitchesLine> = {}) => stitches('s', 'asked', rest) as StitchesLine;
const rowsLine = (rest: Partial<RowsLine> = {}) => rows('r', 'asked', rest) as RowsLine;

describe('stitches over a width', () => {
  it.each([
    // Gauge arithmetic as handbooks give it: stitches ÷ width of the swatch × width wanted (common practice).
    ['16 per 4 in over 20 in', gauge(16, 4, 'in'), inches(20), {}, 80],
    ['14 per 4 in over 20 in', gauge(14, 4, 'in'), inches(20), {}, 70],
    ['18 per 10 cm over 50 cm', gauge(18, 10, 'cm'), cm(50), {}, 90],
    ['a fraction of a stitch in the gauge: 13.5 per 10 cm over 40 cm', gauge(13.5, 10, 'cm'), cm(40), {}, 54],
    // 4 in are 10.16 cm: the same 60 in take 240 stitches at 16 per 4 in and 244 at 16 per 10 cm.
    ['16 per 4 in over 60 in', gauge(16, 4, 'in'), inches(60), {}, 240],
    ['16 per 10 cm over 60 in', gauge(16, 10, 'cm'), inches(60), {}, 244],
    // Repeats: 70 = 11 × 6 + 4.
    ['multiple of 6 plus 4', gauge(14, 4, 'in'), inches(20), { multiple: 6, plus: 4 }, 70],
    ['multiple of 6 plus 1', gauge(14, 4, 'in'), inches(20), { multiple: 6, plus: 1 }, 73],
    [
      'multiple of 6 plus 1, down',
      gauge(14, 4, 'in'),
      inches(20),
      { multiple: 6, plus: 1, rounding: 'down' },
      67,
    ],
    ['multiple of 8, up', gauge(14, 4, 'in'), inches(20), { multiple: 8, rounding: 'up' }, 72],
    ['multiple of 8 less 1', gauge(14, 4, 'in'), inches(20), { multiple: 8, plus: -1 }, 71],
    ['a tie goes up', gauge(10, 10, 'cm'), cm(12), { multiple: 4, plus: 2 }, 14],
    ['half a stitch goes up', gauge(10, 10, 'cm'), cm(12.5), {}, 13],
    // Even and odd.
    ['even', gauge(10, 10, 'cm'), cm(13), { parity: 'even' }, 14],
    ['odd', gauge(10, 10, 'cm'), cm(13.9), { parity: 'odd' }, 13],
    ['multiple of 3 plus 1, even', gauge(10, 10, 'cm'), cm(19), { multiple: 3, plus: 1, parity: 'even' }, 22],
    [
      'multiple of 4 plus 1 is odd already',
      gauge(10, 10, 'cm'),
      cm(19),
      { multiple: 4, plus: 1, parity: 'odd' },
      21,
    ],
    // Repeats and spaces counted instead of stitches; extras take no width.
    ['repeats', gauge(14, 4, 'in'), inches(20), { multiple: 6, plus: 4, counts: 'repeats' }, 11],
    [
      'even repeats',
      gauge(14, 4, 'in'),
      inches(20),
      { multiple: 6, plus: 4, counts: 'repeats', parity: 'even' },
      12,
    ],
    ['spaces', gauge(7, 10, 'cm'), cm(60), { counts: 'spaces' }, 42],
    ['chains with 1 to turn', gauge(16, 4, 'in'), inches(20), { counts: 'chains', extra: 1 }, 81],
    ['even before the extra', gauge(16, 4, 'in'), inches(20), { parity: 'even', extra: 1 }, 81],
  ] as const)('%s', (_, at, asked, rest, number) => {
    const { fitted, facts } = fitStitches(length(asked), stitchesLine(rest), at, cm(1000));
    expect(facts).toEqual([]);
    expect(fitted?.number).toBe(number);
  });

  it('reads a gauge exactly, per 4 in and per 10 cm', () => {
    // 16 stitches per 4 in are 15.748 per 10 cm (units table: 16 ÷ 1.016).
    expect(toNumber(densityOf(gauge(16, 4, 'in')).stitches!.mul(10))).toBeCloseTo(15.748, 3);
    expect(densityOf(gauge(16, 4, 'in')).stitches!.equals('1600/1016')).toBe(true);
    expect(densityOf(gauge(20, 10, 'cm')).stitches!.equals(2)).toBe(true);
  });

  it('fits a stretched edge to the width it is worn at', () => {
    // Lies at 36 cm, worn at 42: 17 % longer. A 56 cm head needs 48 cm lying: 96 stitches at 20 per 10 cm.
    const band = gauge(20, 10, 'cm', 20, { lies: cm(36), worn: cm(42) });
    const { fitted, facts } = fitStitches(length(cm(56)), stitchesLine({ state: 'stretched' }), band, cm(2));
    expect(facts).toEqual([]);
    expect(fitted).toMatchObject({ number: 96, state: 'stretched' });
    expect(toNumber(fitted!.got)).toBe(56);
    expect(fitStitches(length(cm(48)), stitchesLine(), band, cm(2)).fitted?.number).toBe(96);
  });

  it('says when the gauge has no stretch to be worn at', () => {
    const { fitted, facts } = fitStitches(
      length(cm(50)),
      stitchesLine({ state: 'stretched' }),
      gauge(10, 10, 'cm'),
      cm(2),
    );
    expect(facts).toMatchObject([{ code: 'gauge-no-stretch', data: { gauge: 'single crochet' } }]);
    expect(fitted?.number).toBe(50);
  });

  it('tells repeats, stitches and extras apart', () => {
    const line = stitchesLine({ multiple: 6, plus: 4, counts: 'repeats', extra: 2 });
    const { fitted } = fitStitches(length(inches(20)), line, gauge(14, 4, 'in'), cm(2));
    expect(fitted).toMatchObject({ number: 11, repeats: 11, total: 72 });
    expect(toNumber(fitted!.got)).toBeCloseTo(50.8, 10);
  });
});

describe('rows over a length', () => {
  it.each([
    ['10 per 4 in over 12 in', gauge(10, 4, 'in'), inches(12), {}, 30],
    ['ending on row 2 of 2', gauge(10, 4, 'in'), inches(12.4), { cycle: 2, endOn: 2 }, 32],
    ['ending on row 1 of 2', gauge(10, 4, 'in'), inches(12.1), { cycle: 2, endOn: 1 }, 31],
    ['a tie goes up', gauge(10, 4, 'in'), inches(12), { cycle: 2, endOn: 1 }, 31],
    ['row 3 of 4 after 5 rows', gauge(10, 10, 'cm'), cm(40), { cycle: 4, endOn: 3, before: 5 }, 40],
    ['row 3 of 4 after 4 rows', gauge(10, 10, 'cm'), cm(40), { cycle: 4, endOn: 3, before: 4 }, 39],
    ['down', gauge(10, 10, 'cm'), cm(41.9), { cycle: 4, endOn: 4, rounding: 'down' }, 40],
    ['up', gauge(10, 10, 'cm'), cm(40.1), { cycle: 4, endOn: 4, rounding: 'up' }, 44],
  ] as const)('%s', (_, at, asked, rest, number) => {
    const { fitted, facts } = fitRows(length(asked), rowsLine(rest), at, cm(1000));
    expect(facts).toEqual([]);
    expect(fitted?.number).toBe(number);
  });
});

describe('what is said of a fit', () => {
  const sixtyFour = { ...gauge(64, 99.5, 'cm') };

  it('past the tolerance, with the numbers and the neighbours that fit', () => {
    const line = stitchesLine({ multiple: 4, tolerance: cm(2) });
    const { fitted, facts } = fitStitches(length(cm(102)), line, sixtyFour, cm(2));
    expect(fitted?.number).toBe(64);
    expect(facts).toMatchObject([
      {
        code: 'fit-off',
        from: 0,
        to: 'asked'.length,
        data: {
          number: 64,
          counts: 'stitches',
          asked: '102 cm',
          askedCm: 102,
          askedIn: '40¼ in',
          got: '99.5 cm',
          gotCm: 99.5,
          off: '2.5 cm',
          offCm: 2.5,
          less: true,
          limit: '2 cm',
          fewer: 60,
          more: 68,
        },
      },
    ]);
  });

  it.each([
    // Half a repeat of 4 stitches is 3.1 cm here: no nearer number comes.
    ['half a repeat when that is larger', { multiple: 4 }, 102, cm(2), 0],
    [
      'half a step when only every second repeat is even',
      { multiple: 3, parity: 'even' as const },
      106,
      cm(2),
      0,
    ],
    ['the tolerance when half a repeat is smaller', { rounding: 'down' as const }, 102, cm(0.9), 1],
    ['exactly at the tolerance', { multiple: 4, tolerance: cm(2.5) }, 102, cm(2), 0],
    [
      'a percentage of what was asked: 2 % of 102 is 2.04',
      { multiple: 4, tolerance: percent(2) },
      102,
      cm(9),
      1,
    ],
    [
      'a percentage of what was asked: 3 % of 102 is 3.06',
      { multiple: 4, tolerance: percent(3) },
      102,
      cm(1),
      0,
    ],
    [
      '2 cm when the pattern states a bare number',
      { multiple: 1, rounding: 'up' as const, plus: 2 },
      102,
      { value: 9, unit: 'none' as const },
      0,
    ],
  ])('%s', (_, rest, asked, tolerance, count) => {
    expect(fitStitches(length(cm(asked)), stitchesLine(rest), sixtyFour, tolerance).facts).toHaveLength(
      count,
    );
  });

  it.each([
    [
      'multiple of 2 plus 1 is never even',
      { multiple: 2, plus: 1, parity: 'even' as const },
      cm(50),
      'fit-parity-impossible',
      51,
    ],
    ['below one repeat', { multiple: 60, plus: 1, tolerance: cm(2) }, cm(10), 'fit-below-smallest', 61],
    ['no repeat of nothing', { multiple: 0 }, cm(50), 'fit-multiple-invalid', null],
    ['half a stitch over', { multiple: 2, plus: 0.5 }, cm(50), 'fit-multiple-invalid', null],
    ['nothing asked', {}, cm(0), 'fit-not-positive', null],
    ['less than nothing asked', {}, cm(-4), 'fit-not-positive', null],
    ['more than anyone works', {}, cm(2_000_000), 'fit-too-many', null],
  ])('%s', (_, rest, asked, code, number) => {
    const { fitted, facts } = fitStitches(length(asked), stitchesLine(rest), gauge(10, 10, 'cm'), cm(2));
    expect(facts.map((fact) => fact.code)).toEqual([code]);
    expect(fitted?.number ?? null).toBe(number);
  });

  it.each([
    [gauge(0, 10, 'cm')],
    [gauge(Number.NaN, 10, 'cm')],
    [gauge(10, 0, 'cm')],
    [{ ...gauge(10, 10, 'cm'), width: percent(10), height: percent(10) }],
  ])('a gauge that gives no number: %j', (at) => {
    const code = 'gauge-incomplete';
    expect(fitStitches(length(cm(50)), stitchesLine(), at, cm(2))).toMatchObject({
      fitted: null,
      facts: [{ code }],
    });
    expect(fitRows(length(cm(50)), rowsLine(), at, cm(2))).toMatchObject({ fitted: null, facts: [{ code }] });
  });

  it.each([[{ cycle: 0 }], [{ cycle: 2, endOn: 3 }], [{ cycle: 2, endOn: 0 }], [{ before: -1 }]])(
    'rows that end nowhere: %j',
    (rest) => {
      const { fitted, facts } = fitRows(length(cm(50)), rowsLine(rest), gauge(10, 10, 'cm'), cm(2));
      expect(fitted).toBeNull();
      expect(facts.map((fact) => fact.code)).toEqual(['fit-cycle-invalid']);
    },
  );
});

describe('laws of fitting', () => {
  const lines = fc.record({
    multiple: fc.integer({ min: 1, max: 24 }),
    plus: fc.integer({ min: -5, max: 30 }),
    parity: fc.constantFrom('any' as const, 'even' as const, 'odd' as const),
    rounding: fc.constantFrom('nearest' as const, 'up' as const, 'down' as const),
    counts: fc.constantFrom('stitches' as const, 'repeats' as const),
  });
  const lengths = fc.integer({ min: 1, max: 3000 }).map((mm) => ({ value: mm / 10, unit: 'cm' as const }));
  const gauges = fc.integer({ min: 1, max: 90 }).map((half) => gauge(half / 2, 4, 'in'));

  it('the number is valid, and the nearest (or next) of all that are', () => {
    fc.assert(
      fc.property(lines, lengths, gauges, (rest, asked, at) => {
        const { fitted } = fitStitches(length(asked), stitchesLine(rest), at, cm(2));
        const { multiple, plus, parity, counts, rounding } = rest;
        const isRight = (k: number) => {
          const counted = counts === 'repeats' ? k : k * multiple + plus;
          return (
            parity === 'any' || !validCounts(rest) || Math.abs(counted % 2) === (parity === 'odd' ? 1 : 0)
          );
        };
        const ideal = toNumber(length(asked)) * (at.stitches / 10.16);
        const most = Math.ceil((ideal + Math.abs(plus)) / multiple) + 40;
        const valid = Array.from({ length: most }, (_, index) => index + 1)
          .filter((k) => k * multiple + plus >= 1 && isRight(k))
          .map((k) => k * multiple + plus);
        expect(valid).toContain(fitted!.total);
        const allowed = valid.filter((n) =>
          rounding === 'up' ? n >= ideal - 1e-9 : rounding === 'down' ? n <= ideal + 1e-9 : true,
        );
        const best = Math.min(
          ...(allowed.length > 0 ? allowed : valid.slice(0, 1)).map((n) => Math.abs(n - ideal)),
        );
        expect(Math.abs(fitted!.total - ideal)).toBeCloseTo(best, 6);
      }),
    );
  });

  it('what is got is the number laid out at the gauge, and the difference is the rest', () => {
    fc.assert(
      fc.property(lines, lengths, gauges, (rest, asked, at) => {
        const fitted = fitStitches(length(asked), stitchesLine(rest), at, cm(2)).fitted!;
        expect(fitted.got.mul(densityOf(at).stitches!).equals(fitted.total)).toBe(true);
        expect(fitted.asked.add(fitted.difference).equals(fitted.got)).toBe(true);
      }),
    );
  });

  it('rows end on the row of the cycle that was asked for', () => {
    const cycles = fc.integer({ min: 1, max: 12 }).chain((cycle) =>
      fc.record({
        cycle: fc.constant(cycle),
        endOn: fc.integer({ min: 1, max: cycle }),
        before: fc.integer({ min: 0, max: 9 }),
      }),
    );
    fc.assert(
      fc.property(cycles, lengths, gauges, (rest, asked, at) => {
        const { number } = fitRows(length(asked), rowsLine(rest), at, cm(2)).fitted!;
        expect((number - rest.before) % rest.cycle).toBe(rest.endOn % rest.cycle);
        expect(number).toBeGreaterThanOrEqual(rest.before + rest.endOn);
      }),
    );
  });
});

describe('fitting the standard body', () => {
  // Craft Yarn Council, women: bust XS 28, S 32, M 36, L 40 in (lower bounds; published). Half the bust and
  // 4 in of ease at 16 stitches per 4 in: (28 + 4) ÷ 2 × 4 = 64, and 8 more for every 4 in.
  it('gives each size of the chart its stitches', () => {
    const sheet = grade(
      [
        body('bust', 'bust'),
        ease('ease', all(inches(4))),
        formula('finished bust', 'bust + ease'),
        stitches('back stitches', 'finished bust ÷ 2'),
        formula('really', 'width of back stitches × 2'),
        body('upper bust', 'bust', 'upper'),
        body('middle bust', 'bust', 'middle'),
      ],
      women('XS', 'S', 'M', 'L'),
    );
    expect(numbers(sheet, 'back stitches')).toEqual([64, 72, 80, 88]);
    expect(numbers(sheet, 'really')).toEqual([81.28, 91.44, 101.6, 111.76]);
    expect(numbers(sheet, 'upper bust')).toEqual([76.2, 86.36, 96.52, 106.68]);
    expect(numbers(sheet, 'middle bust')).toEqual([73.66, 83.82, 93.98, 104.14]);
    expect(sheet.lines.flatMap(({ line }) => codes(sheet, line.name))).toEqual([]);
  });

  it('uses what was typed over the chart, for that size only', () => {
    const sheet = grade([body('bust', 'bust', 'lower', { z1: cm(90) })], women('M', 'L'));
    expect(numbers(sheet, 'bust')).toEqual([91.44, 90]);
  });

  it.each([
    ['a size the chart has not', [{ ...women('M')[0]!, chart: '7X' }], 'bust', 'body-size-missing'],
    ['no size chosen', [{ ...women('M')[0]!, chart: null }], 'bust', 'body-size-missing'],
    ['no chart at all', [{ ...women('M')[0]!, audience: 'other' as const }], 'bust', 'body-size-missing'],
    ['a measure the chart has not', women('M'), 'elbow', 'body-measure-missing'],
    [
      'a figure not confirmed',
      [{ ...women('4X')[0]!, audience: 'man' as const }],
      'chest',
      'body-figure-missing',
    ],
  ])('says what is missing: %s', (_, sizes, measure, code) => {
    const sheet = grade([body('it', measure)], sizes);
    expect(codes(sheet, 'it')).toEqual([code]);
    expect(numbers(sheet, 'it')).toEqual([null]);
  });

  it.each([
    [
      'in some sizes',
      [bare(8.5), bare(9), inches(10)],
      ['line-missing-unit', 'line-missing-unit'],
      [null, null],
    ],
    ['in one', [inches(8.5), bare(9), inches(10)], ['line-missing-unit'], [21.59, null]],
    ['in none', [inches(8.5), cm(23), inches(10)], [], [21.59, 23]],
    ['in all, as numbers have', [bare(8), bare(9), bare(10)], [], [8, 9]],
    // Nothing is as long in every unit.
    ['where it is nothing', [bare(0), cm(9), cm(10)], [], [0, 9]],
  ])('says where typed lengths lack a unit: %s', (_, values, expected, first) => {
    const sheet = grade([typed('wrist', each(...values))], women('S', 'M', 'L'));
    expect(codes(sheet, 'wrist')).toEqual(expected);
    expect(numbers(sheet, 'wrist').slice(0, 2)).toEqual(first);
  });

  it('says where a line has no unit, no value or no gauge', () => {
    const sheet = grade(
      [
        body('bust', 'bust', 'lower', { z0: { value: 90, unit: 'none' } }),
        body('waist', 'waist', 'lower', { z0: percent(5) }),
        ease('ease', all({ value: 5, unit: 'none' })),
        ease('none', all({ value: 0, unit: 'none' })),
        typed('depth', { each: {} }),
        typed('broken', all(cm(Number.NaN))),
        stitches('back', '50 cm', { gauge: 'lost' }),
        stitches('sleeve', '50'),
        rows('rise', 'back'),
      ],
      women('M'),
    );
    expect(sheet.lines.map(({ line }) => codes(sheet, line.name))).toEqual([
      ['line-missing-unit'],
      ['line-not-length'],
      ['line-missing-unit'],
      [],
      ['line-value-missing'],
      ['line-value-missing'],
      ['gauge-missing'],
      ['asked-not-length'],
      [],
    ]);
  });
});
