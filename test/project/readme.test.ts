/**
 * What the README shows is what the program says: the texts of its tour are run through the command line.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { translate } from '../../core/notation/translate.ts';
import { findMultiple } from '../../core/study/multiple.ts';
import { reportRows } from '../../core/study/rows.ts';

const root = resolve(import.meta.dirname, '../..');
const readme = readFileSync(join(root, 'README.md'), 'utf8');

describe('the README', () => {
  test('opens with the job, in one paragraph', () => {
    const [title, job] = readme.split('\n\n');
    expect(title).toBe('# Turnchain');
    expect(job).toMatch(/^An independent crochet designer makes garments/);
  });

  test('gives the two commands word for word', () => {
    expect(readme).toContain('npm ci && npm start');
    expect(readme).toContain('npm ci && npm run verify');
  });

  test('shows the counts and the finding that its rows have', () => {
    const [, shown] = /\$ cat swatch\.txt\n([\s\S]*?)\n\n/.exec(readme)!;
    const { rows } = reportRows(shown!, 'us');
    for (const { label, counts, byKind } of rows) {
      const name = label === '' ? 'Foundation' : label.replace(/:$/, '');
      expect(readme).toMatch(new RegExp(`${name} +${counts[0]} +${Object.keys(byKind)[0]}`));
    }
    const findings = rows.flatMap((row) => row.findings).filter(({ severity }) => severity === 'error');
    expect(findings).toHaveLength(1);
    expect(readme).toContain(findings[0]!.message);
  });

  test('shows a multiple that is found', () => {
    const mesh = 'Ch 23.\nRow 1: Dc in 8th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across.';
    expect(findMultiple(mesh, 'us')).toEqual({ multiple: 3, plus: 5, from: 8 });
    expect(readme).toContain('a multiple of 3 chains plus 5: 8, 11, 14');
  });

  test('shows a conversion that is made', () => {
    const [, before] = /echo "([^"]+)"/.exec(readme)!;
    expect(readme).toContain(translate(before!, 'us', 'uk').text);
  });

  test('shows pictures that are there, each with a description', () => {
    const pictures = [...readme.matchAll(/!\[([^\]]+)\]\(([^)]+)\)/g)];
    expect(pictures.length).toBeGreaterThanOrEqual(3);
    for (const [, alt, path] of pictures) {
      expect(alt!.length).toBeGreaterThan(20);
      expect(existsSync(join(root, path!))).toBe(true);
    }
  });
});
