/** Figures in rows: what an expression gives each size, and what is said when it gives no number. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compileExpression, evaluate } from '../../core/grading/figure.ts';
import { toNumber } from '../../core/trade/units.ts';
import {
  all,
  body,
  cm,
  ease,
  formula,
  grade,
  percent,
  shaping,
  spread,
  stitches,
  typed,
  women,
} from './sheets.ts';

const sheet = grade(
  [
    body('bust', 'bust'),
    stitches('back stitches', 'bust ÷ 2', { multiple: 4 }),
    typed('hem', all(cm(3))),
    ease('snug', all(percent(-5))),
    shaping('neckline', { start: 'back stitches', end: 'back stitches − 20' }),
    shaping('impossible', { end: '19' }),
    spread('yoke'),
    formula('broken', 'bst'),
  ],
  women('S', 'M', 'L'),
);

describe('a figure', () => {
  // Bust 32, 36, 40 in (Craft Yarn Council, published): 16, 18, 20 in across at 16 sts per 4 in.
  it.each([
    ['back stitches', [64, 72, 80]],
    ['Back Stitches − 2', [62, 70, 78]],
    ['back stitches ÷ 2 − 3', [29, 33, 37]],
    ['back stitches ÷ 4 × 2 + 1 st', [33, 37, 41]],
    ['12', [12, 12, 12]],
  ])('%s counts', (expression, counts) => {
    const results = counts.map((_, size) => evaluate(expression, sheet, size));
    expect(results.map((result) => result.count)).toEqual(counts);
    expect(results.flatMap((result) => result.facts)).toEqual([]);
    expect(results[0]!.value).toMatchObject({ dimension: 'count' });
  });

  it('may be a length', () => {
    const { value, count, facts } = evaluate('hem + 1 in', sheet, 0);
    expect([value?.dimension, count, facts]).toEqual(['length', null, []]);
    expect(value && 'value' in value && toNumber(value.value)).toBe(5.54);
  });

  it('gives the schedule or the spread of a line named alone', () => {
    expect(evaluate('neckline', sheet, 0).value).toMatchObject({
      dimension: 'schedule',
      schedule: { from: 64, to: 44 },
    });
    expect(evaluate('the yoke', sheet, 0).value).toMatchObject({ dimension: 'spread' });
    expect(evaluate('impossible', sheet, 0)).toMatchObject({
      value: null,
      facts: [],
      waitsFor: ['impossible'],
    });
    expect(evaluate('neckline + 1', sheet, 0).facts).toMatchObject([{ code: 'formula-no-number' }]);
  });

  it.each([
    ['back stitches ÷ 5', 'count-not-whole', { value: 12.8 }],
    ['back stitches − 80', 'count-negative', { value: -16 }],
    ['hem − 4 cm', 'length-negative', { value: '−1 cm', valueCm: -1 }],
    ['snug', 'count-is-percent', { value: -0.05 }],
    ['bak stitches', 'formula-unknown-name', { nearest: 'back stitches' }],
    ['', 'formula-empty', {}],
    ['back stitches + hem', 'formula-mixed', { first: 'count', second: 'length' }],
  ])('%s: %s', (expression, code, data) => {
    expect(evaluate(expression, sheet, 0)).toMatchObject({
      value: null,
      count: null,
      facts: [{ code, data }],
    });
  });

  it('waits for a line without a value', () => {
    expect(evaluate('broken + 1', sheet, 0)).toMatchObject({ value: null, facts: [], waitsFor: ['broken'] });
  });

  it('has nothing for a size that is not there', () => {
    expect(evaluate('back stitches', sheet, 9)).toMatchObject({
      value: null,
      count: null,
      waitsFor: ['back stitches'],
    });
  });

  it('is read once', () => {
    const first = compileExpression('back stitches − 2', sheet.vocabulary);
    expect(compileExpression('back stitches − 2', sheet.vocabulary)).toBe(first);
    expect(evaluate(first, sheet, 0).count).toBe(62);
  });

  it('never throws, and gives a value or a reason', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.integer({ min: -1, max: 3 }), (text, size) => {
        const { value, facts, waitsFor } = evaluate(text, sheet, size);
        expect(value !== null || facts.length + waitsFor.length > 0).toBe(true);
      }),
    );
  });
});
