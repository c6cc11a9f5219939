/**
 * Rows and the trees they are read as. A case is two lines: the row, and under it, indented, the tree as
 * `compact` prints it (items, then stated counts, then codes of facts). A row in UK terms, of a document
 * with so many sizes, or with names of its own, begins with them: `uk|`, `4|`, `us<shell,mg>|`. The forms are
 * common practice of the trade; where a row came from a published idiom, the reference names it.
 */
import { describe, expect, it } from 'vitest';
import { readRow } from '../../core/notation/index.ts';
import { houses } from './cases/houses.ts';
import { idioms } from './cases/idioms.ts';
import { makers } from './cases/makers.ts';
import { passages } from './cases/passages.ts';
import { shorthand } from './cases/shorthand.ts';
import { row } from './compact.ts';

const TABLES = { idioms, passages, makers, houses, shorthand };

interface Case {
  readonly terms: 'us' | 'uk';
  readonly sizes: number | null;
  readonly names: readonly string[];
  readonly text: string;
  readonly tree: string;
}

function casesOf(table: string): Case[] {
  const lines = table.split('\n').filter((line) => line !== '');
  const cases: Case[] = [];
  for (let i = 0; i + 1 < lines.length; i += 2) {
    const [, terms, sizes, names, text] = /^(?:(uk|us)?(\d+)?(?:<([^>]*)>)?\|)?(.*)$/u.exec(lines[i]!)!;
    cases.push({
      terms: terms === 'uk' ? 'uk' : 'us',
      sizes: sizes ? Number(sizes) : null,
      names: names ? names.split(',') : [],
      text: text!,
      tree: lines[i + 1]!.trim(),
    });
  }
  return cases;
}

for (const [name, table] of Object.entries(TABLES)) {
  describe(name, () => {
    const cases = casesOf(table);
    it.each(cases.map((one) => [one.text, one] as const))('%s', (_, one) => {
      expect(row(readRow(one.text, one))).toBe(one.tree);
    });
  });
}
