import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import {
  countOver,
  displayLength,
  formatBothLengths,
  formatLength,
  formatNumber,
  formatWeight,
  formatYarnLength,
  fromInches,
  gramsToOunces,
  inUnit,
  metresOfYards,
  metresToYards,
  ouncesToGrams,
  parseQuantity,
  rational,
  roundTo,
  roundUpTo,
  toCm,
  toNumber,
  yardsToMetres,
} from '../../core/trade/units.ts';

const exact = (value: number) => rational(value)!;

describe('factors of 16 CFR 500.19', () => {
  it('an inch is exactly 2.54 centimetres', () => {
    expect(fromInches(exact(1)).toFraction()).toBe('127/50');
  });
  it('a yard is exactly 0.9144 metres', () => {
    expect(yardsToMetres(exact(1)).toString()).toBe('0.9144');
  });
  it('an ounce is 28.3495 grams as printed there', () => {
    expect(formatNumber(ouncesToGrams(exact(1)), 'decimal', 4)).toBe('28.3495');
  });
  it('a gram is 0.0352740 ounces as printed there', () => {
    expect(toNumber(gramsToOunces(exact(1)))).toBeCloseTo(0.035274, 7);
  });
});

it('the exact avoirdupois ounce is 28.349523125 g (from memory)', () => {
  expect(ouncesToGrams(exact(1)).toString()).toBe('28.349523125');
});

describe('shown lengths, worked from the exact factor', () => {
  it.each([
    [1, '2.54', 2.5],
    [4, '10.16', 10],
    [7.25, '18.415', 18.5],
    [16.5, '41.91', 42],
    [36, '91.44', 91.5],
    [60, '152.4', 152.5],
  ])('%s in is %s cm, shown as %s cm', (inches, centimetres, shown) => {
    const length = fromInches(exact(inches));
    expect(length.toString()).toBe(centimetres);
    expect(toNumber(displayLength(length, 'cm'))).toBe(shown);
  });
  it.each([
    [1, 0.3937, 0.5],
    [10, 3.937, 4],
    [18.5, 7.2835, 7.25],
    [42, 16.5354, 16.5],
    [91.5, 36.0236, 36],
    [152.5, 60.0394, 60],
  ])('%s cm is %s in, shown as %s in', (centimetres, inches, shown) => {
    const length = toCm(exact(centimetres), 'cm');
    expect(toNumber(inUnit(length, 'in'))).toBeCloseTo(inches, 4);
    expect(toNumber(displayLength(length, 'in'))).toBe(shown);
  });
});

describe('yarn lengths and weights, worked from the exact factors', () => {
  it.each([
    [metresToYards(exact(100)), '109.36'],
    [yardsToMetres(exact(100)), '91.44'],
    [gramsToOunces(exact(50)), '1.76'],
    [gramsToOunces(exact(100)), '3.53'],
    [ouncesToGrams(exact(3.5)), '99.22'],
    [ouncesToGrams(exact(1.75)), '49.61'],
  ])('%s reads %s', (value, shown) => {
    expect(formatNumber(value)).toBe(shown);
  });
  // 170 × 0.9144 = 155.448; 219 × 0.9144 = 200.2536; 125 × 0.9144 = 114.3; 312.5 × 0.9144 = 285.75.
  it.each([
    [170, 155.4],
    [219, 200.3],
    [125, 114.3],
    [312.5, 285.8],
  ])('%s yards are kept as %s metres', (yards, metres) => {
    expect(metresOfYards(yards)).toBe(metres);
  });
  it('prints lengths to buy up to the next five', () => {
    expect(formatYarnLength(exact(361), 'metric')).toBe('365 m');
    // What a maker typed in yards, kept to a tenth of a metre, is printed as typed (1 yd = 0.9144 m exactly).
    for (const yards of [5, 1360, 1205, 400, 995])
      expect(formatYarnLength(exact(metresOfYards(yards)), 'imperial')).toBe(`${yards} yd`);
    expect(formatYarnLength(exact(361), 'imperial')).toBe('395 yd');
    expect(formatWeight(exact(50), 'metric')).toBe('50 g');
    expect(formatWeight(exact(50), 'imperial')).toBe('1.76 oz');
  });
});

describe('gauge: 4 inches is not 10 centimetres (true value = n / 1.016)', () => {
  it.each([
    [12, 11.811],
    [14, 13.78],
    [16, 15.748],
    [20, 19.685],
  ])('%s stitches over 4 in are %s over 10 cm', (count, expected) => {
    const over = countOver(exact(count), fromInches(exact(4)), exact(10));
    expect(toNumber(over!)).toBeCloseTo(expected, 3);
  });
  it('has no answer for a gauge over nothing', () => {
    expect(countOver(exact(12), exact(0), exact(10))).toBeNull();
  });
});

describe('rounding', () => {
  it.each([
    [0.25, 0.5, 0.5],
    [-0.25, 0.5, -0.5],
    [0.125, 0.25, 0.25],
    [0.375, 0.25, 0.5],
    [-0.375, 0.25, -0.5],
    [0.12, 0.25, 0],
  ])('%s to the nearest %s is %s, halves away from zero', (value, step, expected) => {
    expect(toNumber(roundTo(exact(value), exact(step)))).toBe(expected);
  });
  it('is never further than half a step, and the same on both sides of zero', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e6, max: 1e6 }), fc.integer({ min: 1, max: 997 }), (top, bottom) => {
        const value = new Fraction(top, bottom);
        const step = new Fraction(1, 4);
        const rounded = roundTo(value, step);
        expect(rounded.sub(value).abs().lte(new Fraction(1, 8))).toBe(true);
        expect(roundTo(value.neg(), step).equals(rounded.neg())).toBe(true);
        expect(roundUpTo(value, step).gte(value)).toBe(true);
      }),
    );
  });
});

describe('writing', () => {
  it.each([
    [36.5, 'glyph', '36½'],
    [36.5, 'slash', '36 1/2'],
    [36.5, 'decimal', '36.5'],
    [0.75, 'glyph', '¾'],
    [0.125, 'slash', '1/8'],
    [5, 'glyph', '5'],
    [-2.25, 'glyph', '−2¼'],
    [-0.001, 'decimal', '0'],
    [0.1, 'glyph', '0.1'],
    [1.005, 'decimal', '1.01'],
  ] as const)('%s as %s is %s', (value, style, expected) => {
    expect(formatNumber(exact(value), style)).toBe(expected);
  });
  it('shows each unit from the exact length, the edition’s own first', () => {
    const length = toCm(exact(92.5), 'cm');
    expect(formatLength(length, 'metric')).toBe('92.5 cm');
    expect(formatLength(length, 'imperial')).toBe('36½ in');
    expect(formatBothLengths(length, 'imperial', { style: 'slash' })).toBe('36 1/2 in / 92.5 cm');
    expect(formatLength(fromInches(exact(0.125)), 'imperial', { fineness: 'small' })).toBe('⅛ in');
  });
});

describe('reading quantities', () => {
  it.each([
    ['14 cm', 14, 'cm'],
    ['14cm', 14, 'cm'],
    ['5½ in', 5.5, 'in'],
    ['36 1/2"', 36.5, 'in'],
    ['36-1/2 inches', 36.5, 'in'],
    ['3/4 in.', 0.75, 'in'],
    ['¾ in', 0.75, 'in'],
    ['-5 %', -5, '%'],
    ['−5%', -5, '%'],
    ['+2.5 cm', 2.5, 'cm'],
    ['2,5 cm', 2.5, 'cm'],
    ['.5 in', 0.5, 'in'],
    ['6 mm', 6, 'mm'],
    ['12', 12, 'none'],
    ['5 per cent', 5, '%'],
    ['-0', 0, 'none'],
  ])('%s', (text, value, unit) => {
    expect(parseQuantity(text)).toEqual({ value, unit });
  });
  it.each([
    '',
    'cm',
    '5 stone',
    '1/0 in',
    '3 1/0 in',
    '1,000 cm',
    '5 cm 3',
    '2.5½ in',
    '--5',
    '5 5 cm',
    '9'.repeat(400),
  ])('%s is none', (text) => {
    expect(parseQuantity(text)).toBeNull();
  });
  it('answers any text', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const read = parseQuantity(text);
        expect(read === null || Number.isFinite(read.value)).toBe(true);
      }),
    );
  });
  it('reads back what it writes', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 4000 }),
        fc.constantFrom('glyph', 'slash', 'decimal'),
        (eighths, style) => {
          const value = new Fraction(eighths, 8);
          const text = `${formatNumber(value, style as 'glyph', 3)} in`;
          expect(parseQuantity(text)).toEqual({ value: eighths / 8, unit: 'in' });
        },
      ),
    );
  });
});

describe('numbers', () => {
  it('are taken as their decimals read', () => {
    expect(exact(0.1).toFraction()).toBe('1/10');
    expect(exact(1e-7).toFraction()).toBe('1/10000000');
    expect(exact(1e21).toFraction()).toBe('1000000000000000000000');
    expect(rational(1, 3)!.toFraction()).toBe('1/3');
  });
  it('that are none give null', () => {
    expect([
      rational(Number.NaN),
      rational(1, 0),
      toCm(Number.POSITIVE_INFINITY, 'in'),
      fromInches(Number.NaN),
    ]).toEqual([null, null, null, null]);
  });
  it('come back as they were', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        // Adding 0 makes a negative zero a plain one, as a fraction has it.
        expect(toNumber(exact(value))).toBe(value + 0);
      }),
      { examples: [[955743455342124.9], [5e-324], [Number.MAX_VALUE]] },
    );
  });
});
