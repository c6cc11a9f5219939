/**
 * No text of any kind makes the reader or the engine throw or hang: plain noise, words of the trade in any order,
 * and damaged rows put to the search for a multiple and worked twice. `npm run verify:long` runs many more cases.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findMultiple } from '../../core/study/multiple.ts';
import { reportRows } from '../../core/study/rows.ts';
import { check, damaged, NUMBERS, RUNS, SIGNS, words } from './damage.ts';

describe('any text at all', () => {
  test('noise is answered', { timeout: 5_400_000 }, () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 400 }),
        fc.constantFrom('us' as const, 'uk' as const),
        check,
      ),
      { numRuns: Math.ceil(RUNS / 3) },
    );
  });

  test('words of the trade in any order are answered', { timeout: 5_400_000 }, () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...words, ...SIGNS, ...NUMBERS), { maxLength: 80 }),
        fc.constantFrom('us' as const, 'uk' as const),
        (list, terms) => check(list.join(' '), terms),
      ),
      { numRuns: RUNS },
    );
  });

  test('the multiple of damaged rows is found or not, without harm', { timeout: 5_400_000 }, () => {
    fc.assert(
      fc.property(damaged, ({ text, terms }) => {
        const found = findMultiple(text, terms);
        if (found !== null) expect(found.multiple).toBeGreaterThan(0);
      }),
      { numRuns: Math.ceil(RUNS / 30) },
    );
  });

  test('working a text twice gives the same', { timeout: 5_400_000 }, () => {
    fc.assert(
      fc.property(damaged, ({ text, terms }) => {
        expect(reportRows(text, terms)).toEqual(reportRows(text, terms));
      }),
      { numRuns: Math.ceil(RUNS / 10) },
    );
  });
});
