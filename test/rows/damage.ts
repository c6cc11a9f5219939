/**
 * Texts to try the reader and the engine with: real rows with words swapped, cut, doubled and numbers blown up;
 * and what every report of a text holds, whatever the text was.
 */
import fc from 'fast-check';
import { expect } from 'vitest';
import { reportRows } from '../../core/study/rows.ts';
import { corpus } from './corpus.ts';

/** Cases of one test: few as a rule, many in the long mode. */
export const RUNS = Number(process.env.TURNCHAIN_RUNS ?? 1500);

const texts = Object.values(corpus).flatMap((cases) => cases.map(({ text, terms }) => ({ text, terms })));
export const words = [...new Set(texts.flatMap(({ text }) => text.split(/\s+/)))];

export const NUMBERS = [
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
export const SIGNS = [
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

/** A real row or several, damaged in up to eight places. */
export const damaged = fc
  .tuple(fc.constantFrom(...texts), fc.array(damage, { minLength: 1, maxLength: 8 }))
  .map(([{ text, terms }, damages]) => {
    const parts: string[] = text.split(/(?<=\s)/);
    for (const change of damages) change(parts);
    return { text: parts.join(''), terms };
  });

/** What every report holds, whatever the text was. */
export function check(text: string, terms: 'us' | 'uk'): void {
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
