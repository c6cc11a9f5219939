/**
 * The catalogue holds every kind there is: each file of the folder, each code that the core can report, each
 * code once.
 */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CATALOGUE, kindOf } from '../../core/findings/index.ts';
import { RULES } from '../../core/review/index.ts';

const core = resolve(import.meta.dirname, '../../core');

/** Files of the folder that hold no kind. */
const PARTS = ['catalogue', 'index', 'kind', 'measures', 'phrases', 'tell', 'voice'];

function sources(folder: string): readonly string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory()
      ? sources(path)
      : name.endsWith('.ts')
        ? [readFileSync(path, 'utf8')]
        : [];
  });
}

const reporting = ['notation', 'fabric', 'grading', 'study'].flatMap((folder) => sources(join(core, folder)));

/** Codes as they are reported: in a fact that is built, or as the first word of a call that reports. */
const REPORTED = [
  /\bcode: '([a-z]+(?:-[a-z]+)*)'/g,
  /(?:\b|#)(?:fact|note|problem|unread|atFormula|own|factOf|made)\(\s*(?:\w+,\s*){0,2}'([a-z]+(?:-[a-z]+)+)'/g,
  /\bfactOn\([^']*'([a-z]+(?:-[a-z]+)+)'/g,
  /(?:const code = |factOn\()[^;]*?\? '([a-z]+(?:-[a-z]+)+)'/g,
  /(?:const code = |factOn\()[^;]*?\? '[a-z-]+' : '([a-z]+(?:-[a-z]+)+)'/g,
  /^ {2}\| '(formula-[a-z-]+)'/gm,
];

const reported = new Set(
  reporting.flatMap((source) =>
    REPORTED.flatMap((pattern) => [...source.matchAll(pattern)].map((match) => match[1]!)),
  ),
);

describe('the catalogue', () => {
  it('lists the folder, each kind under its file’s name', () => {
    const files = readdirSync(join(core, 'findings'))
      .map((name) => name.replace('.ts', ''))
      .filter((name) => !PARTS.includes(name));
    expect(CATALOGUE.map(({ code }) => code).sort()).toEqual(files.sort());
  });

  it('has every code once, rules of the technical edit included', () => {
    const codes = [...CATALOGUE, ...RULES.filter(({ code }) => code !== 'term-in-doubt')].map(
      ({ code }) => code,
    );
    expect(new Set(codes).size).toBe(codes.length);
    for (const code of codes) expect(code).toMatch(/^[a-z]+(-[a-z]+)*$/);
  });

  it('has a kind for every code that is reported', () => {
    expect(reported.size).toBeGreaterThan(60);
    const known = new Set(CATALOGUE.map(({ code }) => code));
    expect([...reported].filter((code) => !known.has(code))).toEqual([]);
  });

  it('has no kind that nothing reports', () => {
    const text = reporting.join('\n');
    expect(CATALOGUE.filter(({ code }) => !text.includes(`'${code}'`)).map(({ code }) => code)).toEqual([]);
  });

  it('knows no kind by another name', () => {
    expect(() => kindOf('no-such-finding')).toThrow('no-such-finding');
  });

  it.each([...CATALOGUE, ...RULES])('$code: has a title and a reason', ({ title, reason }) => {
    expect(title).toMatch(/^\p{Lu}[^.]*[^.\s]$/u);
    expect(reason).toMatch(/^[\p{Lu}"].*[.]$/u);
  });
});
