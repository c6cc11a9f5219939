/** The page that says what the technical edit checks names findings that there are, and leaves out no rule. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { CATALOGUE } from '../../core/findings/index.ts';
import { RULES } from '../../core/review/index.ts';

const page = readFileSync(new URL('../../resources/technical-edit.md', import.meta.url), 'utf8');
const named = [...page.matchAll(/`([a-z]+(?:-[a-z]+)+)`/g)].map((match) => match[1]!);

/** Rules over what testers measured speak of the workbook, and not of what an editor checks. */
const ELSEWHERE = ['tester-measured-off'];

test('every code on the page is a finding', () => {
  const codes = new Set([...CATALOGUE, ...RULES].map(({ code }) => code));
  expect(named.filter((code) => !codes.has(code))).toEqual([]);
});

test('every rule stands on the page', () => {
  const told = new Set([...named, ...ELSEWHERE]);
  expect(RULES.map(({ code }) => code).filter((code) => !told.has(code))).toEqual([]);
});
