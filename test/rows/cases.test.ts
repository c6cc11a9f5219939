/**
 * Runs the corpus of written rows through the row report. Holds no expectation of its own: each case
 * states what a maker would count, and a failure shows only the parts that differ.
 */
import { describe, expect, test } from 'vitest';
import { compare } from './compare.ts';
import { corpus } from './corpus.ts';

for (const [group, cases] of Object.entries(corpus)) {
  describe(group, () => {
    test.each(cases.map((c) => [`${c.terms}: ${c.name}`, c] as const))('%s', (_name, c) => {
      const { actual, expected } = compare(c);
      expect(actual, c.text).toEqual(expected);
    });

    test('no two cases have the same name and terms', () => {
      const names = cases.map((c) => `${c.terms}: ${c.name}`);
      expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
    });
  });
}

test('no text stands in two cases', () => {
  const texts = Object.values(corpus).flatMap((cases) => cases.map((c) => `${c.terms}\n${c.text}`));
  const seen = new Set<string>();
  expect(texts.filter((text) => seen.size === seen.add(text).size)).toEqual([]);
});
