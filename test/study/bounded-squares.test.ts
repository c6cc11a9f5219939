/** Least squares with bounds, against worked examples, certified data and what an answer must fulfil. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundedSquares } from '../../core/study/bounded-squares.ts';

const free = (n: number) => ({
  lower: new Array<number>(n).fill(-1e9),
  upper: new Array<number>(n).fill(1e9),
});
const atLeastNothing = (n: number) => ({ ...free(n), lower: new Array<number>(n).fill(0) });

/**
 * Norris: linear regression, 36 observations (y, x), from the Statistical Reference Datasets of NIST. Certified:
 * B0 = −0.262323073774029, B1 = 1.00211681802045.
 */
const NORRIS =
  `0.1 0.2 338.8 337.4 118.1 118.2 888.0 884.6 9.2 10.1 228.1 226.5 668.5 666.3 998.5 996.3 449.1 448.6
 778.9 777.0 559.2 558.2 0.3 0.4 0.1 0.6 778.1 775.5 668.8 666.9 339.3 338.0 448.9 447.5 10.8 11.6 557.7 556.0
 228.3 228.1 998.0 995.8 888.8 887.6 119.6 120.2 0.3 0.3 0.6 0.3 557.6 556.8 339.3 339.1 888.0 887.2 998.5 999.0
 778.9 779.0 10.2 11.1 117.6 118.3 228.9 229.2 668.4 669.1 449.2 448.9 0.2 0.5`
    .trim()
    .split(/\s+/u)
    .map(Number);

describe('least squares with bounds', () => {
  test('solves the normal equations of a worked example', () => {
    // The line nearest to (0, 6), (1, 0), (2, 0), Strang, Introduction to Linear Algebra, section 4.3, from memory:
    // AᵀA = [3 3; 3 5], Aᵀb = [6; 0], so x = (5, −3).
    const rows = [
      [1, 0],
      [1, 1],
      [1, 2],
    ];
    const [a, b] = boundedSquares(rows, [6, 0, 0], free(2), [0, 0]);
    expect(a).toBeCloseTo(5, 10);
    expect(b).toBeCloseTo(-3, 10);
    // Held at −1, the slope leaves the mean of 6 + 0, 0 + 1 and 0 + 2, which is 3.
    const held = boundedSquares(rows, [6, 0, 0], { lower: [-1e9, -1], upper: [1e9, 1e9] }, [0, 0]);
    expect(held[0]).toBeCloseTo(3, 10);
    expect(held[1]).toBeCloseTo(-1, 10);
  });

  test('comes to the certified line of the Norris data', () => {
    expect(NORRIS).toHaveLength(72);
    const rows = NORRIS.flatMap((_, i) => (i % 2 === 1 ? [[1, NORRIS[i]!]] : []));
    const right = NORRIS.filter((_, i) => i % 2 === 0);
    const [b0, b1] = boundedSquares(rows, right, free(2), [0, 0]);
    expect(b0).toBeCloseTo(-0.262323073774029, 9);
    expect(b1).toBeCloseTo(1.00211681802045, 12);
  });

  test.each([
    // The examples of SciPy's documentation of `optimize.nnls`, from memory.
    { b: [2, 1, 1], x: [1.5, 1] },
    { b: [-1, -1, -1], x: [0, 0] },
  ])('keeps to nothing or more as a well-known library does: $x', ({ b, x }) => {
    const rows = [
      [1, 0],
      [1, 0],
      [0, 1],
    ];
    const found = boundedSquares(rows, b, atLeastNothing(2), [0, 0]);
    found.forEach((value, i) => {
      expect(value).toBeCloseTo(x[i]!, 10);
    });
  });

  test('leaves what the data say nothing of where it began', () => {
    // Two unknowns that only occur together: 2x + 2y = 8. One of them moves, and the sum is right.
    const [x = 0, y = 0] = boundedSquares([[2, 2]], [8], atLeastNothing(2), [1, 1]);
    expect(x + y).toBeCloseTo(4, 10);
    expect(boundedSquares([[1, 0]], [3], atLeastNothing(2), [0, 7])).toEqual([3, 7]);
    expect(boundedSquares([], [], atLeastNothing(2), [0.5, -1])).toEqual([0.5, 0]);
  });

  test('an answer stays within its bounds and no side step is better', () => {
    const value = fc.double({ min: -10, max: 10, noNaN: true });
    const problem = fc.integer({ min: 1, max: 6 }).chain((n) =>
      fc.record({
        n: fc.constant(n),
        rows: fc.array(fc.array(value, { minLength: n, maxLength: n }), { minLength: 1, maxLength: 8 }),
        right: fc.array(value, { minLength: 8, maxLength: 8 }),
        lower: fc.array(fc.double({ min: -3, max: 0, noNaN: true }), { minLength: n, maxLength: n }),
        upper: fc.array(fc.double({ min: 0, max: 3, noNaN: true }), { minLength: n, maxLength: n }),
      }),
    );
    fc.assert(
      fc.property(problem, ({ n, rows, right, lower, upper }) => {
        const x = boundedSquares(rows, right, { lower, upper }, new Array<number>(n).fill(0));
        const wrong = (at: readonly number[]) =>
          rows.reduce((sum, row, r) => {
            const off = row.reduce((part, a, i) => part + a * at[i]!, 0) - right[r]!;
            return sum + off * off;
          }, 0);
        const least = wrong(x);
        x.forEach((own, i) => {
          expect(own).toBeGreaterThanOrEqual(lower[i]!);
          expect(own).toBeLessThanOrEqual(upper[i]!);
          // The sum of squares is convex: where no step along an unknown helps, none does.
          for (const step of [-1, -1e-3, 1e-3, 1]) {
            const other = [...x];
            other[i] = Math.min(upper[i]!, Math.max(lower[i]!, own + step));
            expect(wrong(other)).toBeGreaterThanOrEqual(least - 1e-6 * (1 + least));
          }
        });
      }),
      { numRuns: 300 },
    );
  });

  test('answers with numbers whatever it is given', () => {
    const any = fc.oneof(fc.double(), fc.constantFrom(0, 1e300, -1e300, 1e-300, Number.NaN));
    fc.assert(
      fc.property(
        fc.array(fc.array(any, { minLength: 2, maxLength: 2 }), { maxLength: 4 }),
        fc.array(any),
        (rows, right) => {
          const x = boundedSquares(rows, right, { lower: [0, 0], upper: [2, 2] }, [1, 1]);
          for (const value of x) expect(value >= 0 && value <= 2).toBe(true);
        },
      ),
      { numRuns: 300 },
    );
  });
});
