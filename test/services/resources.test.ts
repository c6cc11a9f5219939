import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openPattern } from '../../app/services/files.ts';
import { examples, fontsFolder, packageFolder } from '../../app/services/resources.ts';
import { FONT_FILES } from '../../core/print/fonts.ts';
import { startWords } from '../../renderer/words/dialogs.ts';

test('the fonts are there', () => {
  for (const file of Object.values(FONT_FILES)) expect(fs.existsSync(join(fontsFolder(), file))).toBe(true);
});

test('every example opens', async () => {
  for (const { name, path } of examples()) {
    expect(name).toMatch(/^[a-z0-9-]+$/);
    expect(await openPattern(path)).toMatchObject({ ok: true, migratedFrom: null });
  }
});

test('the start screen describes every example, and no other', () => {
  expect(Object.keys(startWords.exampleWords).toSorted()).toEqual(examples().map(({ name }) => name));
});

test('the package is found from the bundle and from the sources', () => {
  const folder = fs.mkdtempSync(join(tmpdir(), 'package-'));
  fs.mkdirSync(join(folder, 'resources', 'fonts'), { recursive: true });
  expect(packageFolder(join(folder, 'dist', 'turnchain.mjs'))).toBe(folder);
  expect(packageFolder(join(folder, 'app', 'services', 'resources.ts'))).toBe(folder);
  fs.rmSync(folder, { recursive: true });
  expect(() => packageFolder(join(folder, 'dist', 'turnchain.mjs'))).toThrow(/not installed whole/);
});
