import { describe, expect, it } from 'vitest';
import { fitOf, fits } from '../../core/trade/ease.ts';
import { fromInches } from '../../core/trade/units.ts';

describe('fits', () => {
  // Craft Yarn Council's five names with the inches that an article on ease reprints beside them.
  it.each([
    [-1, 'very close'],
    [0, 'very close'],
    [1, 'close'],
    [3, 'standard'],
    [5, 'loose'],
    [6.5, 'oversized'],
  ])('%s in of ease is %s: bands of ease as reprinted', (inches, name) => {
    expect(fitOf(fromInches(inches)!).names[0]).toBe(name);
  });

  it('leave no ease between two bands', () => {
    expect(fits[0]!.least).toBeNull();
    expect(fits.at(-1)!.most).toBeNull();
    for (const [i, { most }] of fits.slice(0, -1).entries())
      expect(most!.equals(fits[i + 1]!.least!)).toBe(true);
  });
});
