/**
 * No text of any kind makes the reader or the engine throw or hang: real rows with words swapped, cut, doubled
 * and numbers blown up, and plain noise. `npm run verify:long` runs 100,000 cases; a case that hangs fails by the
 * test's own time limit.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findMultiple } from '../../core/study/multiple.ts';
import { reportRows } from '../../core/study/rows.ts';
import { corpus } from './corpus.ts';

const RUNS = Number(process.env.TURNCHAIN_RUNS ?? 1500);

const texts = Object.values(corpus).flatMap((cases) => cases.map(({ text, terms }) => ({ text, terms })));
const words = [...new Set(texts.flatMap(({ text }) => text.split(/\s+/)))];

const NUMBERS = [
  '0',
  '1',
  '2',
  '7',
  '99',
  '1000',
  '123456',
  '999999999999',
  '12 (14, 16)',
  '(3, 4)',
  '–',
  '-5',
  '1/2',
  '½',
];
const SIGNS = [
  '(',
  ')',
  '[',
  ']',
  '{',
  '}',
  '*',
  '**',
  ';',
  ',',
  '.',
  ':',
  '\n',
  '\n\n',
  '=',
  '–',
  '×',
  '"',
  "'",
  '\uFFFC',
  '\u00AD',
  '\u00A0',
  '🧶',
  '\u202E',
];

/** One small damage to a text. */
const damage = fc.oneof(
  fc.tuple(fc.nat(400), fc.constantFrom(...words)).map(
    ([at, word]) =>
      (parts: string[]) =>
        parts.splice(at % (parts.length + 1), 0, word),
  ),
  fc.nat(400).map((at) => (parts: string[]) => parts.splice(at % (parts.length + 1), 1)),
  fc.tuple(fc.nat(400), fc.nat(40)).map(
    ([at, n]) =>
      (parts: string[]) =>
        parts.splice(at % (parts.length + 1), n),
  ),
  fc.tuple(fc.nat(400), fc.constantFrom(...NUMBERS)).map(([at, n]) => (parts: string[]) => {
    const i = parts.findIndex((part, k) => k >= at % (parts.length + 1) && /\d/.test(part));
    if (i >= 0) parts[i] = parts[i]!.replace(/\d+/, n);
  }),
  fc.tuple(fc.nat(400), fc.constantFrom(...SIGNS)).map(
    ([at, sign]) =>
      (parts: string[]) =>
        parts.splice(at % (parts.length + 1), 0, sign),
  ),
  fc.tuple(fc.nat(400), fc.nat(400), fc.nat(30)).map(([from, to, n]) => (parts: string[]) => {
    parts.splice(
      to % (parts.length + 1),
      0,
      ...parts.slice(from % (parts.length + 1), (from % (parts.length + 1)) + n),
    );
  }),
);

const mutated = fc
  .tuple(fc.constantFrom(...texts), fc.array(damage, { minLength: 1, maxLength: 8 }))
  .map(([{ text, terms }, damages]) => {
    const parts: string[] = text.split(/(?<=\s)/);
    for (const change of damages) change(parts);
    return { text: parts.join(''), terms };
  });

/** What every report holds, whatever the text was. */
function check(text: string, terms: 'us' | 'uk'): void {
  const report = reportRows(text, terms);
  for (const row of report.rows) {
    expect(row.from).toBeGreaterThanOrEqual(0);
    expect(row.to).toBeLessThanOrEqual(text.length);
    expect(row.text).toBe(text.slice(row.from, row.to));
    row.counts.forEach((count, size) => {
      if (count === null) return;
      const sum = Object.values(row.byKind).reduce((total, numbers) => total + (numbers[size] ?? 0), 0);
      expect(sum).toBe(count);
    });
    for (const finding of row.findings) {
      expect(finding.from).toBeGreaterThanOrEqual(0);
      expect(finding.to).toBeLessThanOrEqual(text.length);
      expect(finding.message).not.toMatch(/undefined|null|NaN|\[object/);
    }
  }
}

/** Texts that once made the reader throw. */
const ONCE_BROKE = ['Rnd 1\t6 sc in magic ring\t½\nRnd 2\tinc x 6\t12\nRnd 3\t(sc, inc) x 6\t18'];

describe('any text at all', () => {
  test.each(ONCE_BROKE)('%j is answered', (text) => {
    check(text, 'us');
    check(text, 'uk');
  });

  test('real rows, damaged, are answered', { timeout: 5_400_000 }, () => {
    fc.assert(
      fc.property(mutated, ({ text, terms }) => check(text, terms)),
      { numRuns: RUNS },
    );
  });

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
      fc.property(mutated, ({ text, terms }) => {
        const found = findMultiple(text, terms);
        if (found !== null) expect(found.multiple).toBeGreaterThan(0);
      }),
      { numRuns: Math.ceil(RUNS / 30) },
    );
  });

  test('working a text twice gives the same', { timeout: 600_000 }, () => {
    fc.assert(
      fc.property(mutated, ({ text, terms }) => {
        expect(reportRows(text, terms)).toEqual(reportRows(text, terms));
      }),
      { numRuns: Math.ceil(RUNS / 10) },
    );
  });
});
