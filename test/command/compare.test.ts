/** `turnchain compare`: text, JSON and the sheet; exit codes. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { savePattern } from '../../app/services/files.ts';
import { compose } from '../../core/document/compose.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import { piece, row, smallPattern } from '../study/builder.ts';
import { command } from './harness.ts';

const folder = mkdtempSync(join(tmpdir(), 'compare-'));
afterAll(() => rmSync(folder, { recursive: true }));

const version = (number: string, chains: number): Pattern => ({
  ...smallPattern(),
  about: { ...smallPattern().about, title: 'Quay Scarf', version: number, date: '2026-03-01' },
  pieces: [
    piece('s', 'Scarf', [
      row('r', `Ch ${chains}.`, { form: 'foundation' }),
      row('q', 'Sc in 2nd ch from hook and in each ch across.'),
    ]),
  ],
});
const [older, newer] = [join(folder, 'old.turnchain'), join(folder, 'new.turnchain')];

beforeAll(async () => {
  await savePattern(older, compose(version('1.0', 21)), new Map());
  await savePattern(newer, compose(version('1.1', 23)), new Map());
});

test('tells was and read at the row', async () => {
  const ran = await command(['compare', older, newer]);
  expect(ran.code).toBe(1);
  // 21 chains make 20 sc, 23 make 22.
  expect(ran.out).toBe(`Quay Scarf: From version 1.0 of March 1, 2026 to version 1.1 of March 1, 2026

Scarf
  Foundation
    was: Ch 21.
    read: Ch 23.
  Row 1 (RS)
    was: Sc in 2nd ch from hook and in each ch across. (20 sts)
    read: Sc in 2nd ch from hook and in each ch across. (22 sts)
`);
});

test('the same version has none', async () => {
  const ran = await command(['compare', newer, newer]);
  expect(ran).toMatchObject({ code: 0, err: '' });
  expect(ran.out).toContain('Nothing in the instructions has changed.');
});

test('as JSON in UK terms, with the sheet as a PDF', async () => {
  const out = join(folder, 'errata.pdf');
  const ran = await command(['compare', older, newer, '--json', '--terms', 'uk', '--out', out]);
  const report = JSON.parse(ran.out);
  expect(report).toMatchObject({ terms: 'uk', from: { version: '1.0' }, to: { version: '1.1' } });
  expect(report.errata[1]).toMatchObject({ kind: 'changed', sizes: null });
  expect(report.errata[1].read).toContain('Dc in 2nd ch');
  expect(ran.err).toBe(`${out}  1 page\n`);
  expect(readFileSync(out).subarray(0, 5).toString()).toBe('%PDF-');
});

test('says when buyers cannot tell the two versions apart', async () => {
  const path = join(folder, 'again.turnchain');
  await savePattern(path, compose(version('1.0', 23)), new Map());
  const ran = await command(['compare', older, path]);
  expect(ran.code).toBe(1);
  expect(ran.err).toBe(
    'Both are called version 1.0: give this one a new number, so that buyers can tell\nthem apart.\n',
  );
});

test('two files are asked for', async () => {
  expect(await command(['compare', older])).toMatchObject({ code: 2 });
  expect((await command(['compare', older, join(folder, 'none.turnchain')])).err).toContain('none.turnchain');
});
