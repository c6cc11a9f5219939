import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CATALOGUE, tellAs } from '../../core/findings/index.ts';
import { PRINT_KINDS } from '../../core/print/kinds.ts';

const folder = resolve(import.meta.dirname, '../../core/print');

function sources(path: string): readonly string[] {
  if (!statSync(path).isDirectory()) return path.endsWith('kinds.ts') ? [] : [readFileSync(path, 'utf8')];
  return readdirSync(path).flatMap((name) => sources(join(path, name)));
}

const reported = new Set(
  sources(folder).flatMap((source) =>
    [...source.matchAll(/\bcode: '([a-z]+(?:-[a-z]+)*)'/g)].map((match) => match[1]!),
  ),
);

describe('findings of printing', () => {
  test('every code that printing reports has one kind, and no other kind has it', () => {
    expect(PRINT_KINDS.map(({ code }) => code).sort()).toEqual([...reported].sort());
    const others = new Set(CATALOGUE.map(({ code }) => code));
    expect(PRINT_KINDS.filter(({ code }) => others.has(code))).toEqual([]);
  });

  test.each(PRINT_KINDS)('$code says its sample in a sentence', (kind) => {
    const fact = { code: kind.code, from: 0, to: 0, data: kind.sample! };
    const telling = { terms: 'us', labels: [], node: null, text: '' } as const;
    const { message, severity } = tellAs(kind, [{ size: null, fact }], telling);
    expect(message).toMatch(/^\p{Lu}.*[.]$/u);
    expect(message).not.toMatch(/undefined|NaN|\[object|""/);
    expect(severity).toBe(kind.severity);
    expect(kind.title).toMatch(/^\p{Lu}[^.]*$/u);
    expect(kind.reason).toMatch(/[.]$/);
  });

  test('characters of one text are told in one sentence', () => {
    const kind = PRINT_KINDS.find(({ code }) => code === 'character-not-printable')!;
    const facts = ['\u05DC', '\u05D5', '\u05DC'].map((character) => ({
      size: null,
      fact: {
        code: kind.code,
        from: 0,
        to: 0,
        data: { character, words: '\u05DC\u05D5\u05DC', instead: '' },
      },
    }));
    expect(tellAs(kind, facts, { terms: 'us', labels: [], node: null, text: '' }).message).toBe(
      'The fonts have no "\u05DC" and "\u05D5", which stand in "\u05DC\u05D5\u05DC"; they are left out.',
    );
  });

  test('a character that is left out is said to be', () => {
    const data = { character: '\u{1F9F6}', codePoint: 'U+1F9F6', words: 'Yarn \u{1F9F6}', instead: '' };
    const kind = PRINT_KINDS.find(({ code }) => code === 'character-not-printable')!;
    const fact = { code: kind.code, from: 0, to: 0, data };
    expect(
      tellAs(kind, [{ size: null, fact }], { terms: 'us', labels: [], node: null, text: '' }).message,
    ).toBe('The fonts have no "\u{1F9F6}", which stands in "Yarn \u{1F9F6}"; it is left out.');
  });
});
