/** The commands of the workbook: yarn and hours, the price, one person's sheet. Numbers by hand. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { savePattern } from '../../app/services/files.ts';
import { compose } from '../../core/document/compose.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import { type Making, NO_WORKBOOK, type Person } from '../../core/document/workbook.ts';
import { command } from './harness.ts';
import { right } from './patterns.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'workbook-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

async function saved(pattern: Pattern): Promise<string> {
  const path = join(folder, 'panel.turnchain');
  expect(await savePattern(path, compose(pattern), new Map())).toMatchObject({ ok: true });
  return path;
}

const sample: Making = {
  id: 'a',
  kind: 'sample',
  by: '',
  size: 'size-s',
  state: 'finished',
  used: [{ yarn: '', piece: '', grams: 100, metres: null }],
  hours: 10,
  swatch: null,
  measured: {},
  note: '',
};
const person: Person = { id: 'p', name: 'Odo Brack', base: 'size-m', values: {}, note: '' };
const [yarn] = right.yarns;
const made: Pattern = {
  ...right,
  yarns: [{ ...yarn!, ballGrams: 50, ballMetres: 100, ballPrice: 5 }],
  workbook: {
    ...NO_WORKBOOK,
    pricing: { currency: 'GBP', hourly: 10, other: [], profit: 0, fee: 0 },
    makings: [sample],
    people: [person],
  },
};

describe('yarn', () => {
  test('lists every size with what it rests on', async () => {
    const { code, out } = await command(['yarn', await saved(made)]);
    // S is the sample: 100 g, 200 m; with ten percent 220 m, 110 g, 3 balls; ten hours.
    expect(out).toMatch(/metres, as used +200 /);
    expect(out).toMatch(/metres +220 /);
    expect(out).toMatch(/grams +110 /);
    expect(out).toMatch(/balls +3 /);
    expect(out).toMatch(/hours +10 /);
    expect(out).toContain('from your sample in S');
    expect(code).toBe(0);
  });

  test('says what is missing where nothing was made', async () => {
    const { out } = await command(['yarn', await saved(right)]);
    expect(out).toContain('No amount: nothing that was made of this pattern');
    expect(out).toContain('No hours: nothing that was made says how long it took.');
  });

  test('for programs', async () => {
    const report = JSON.parse((await command(['yarn', await saved(made), '--json'])).out);
    expect(Object.keys(report)).toEqual(['sizes', 'margin', 'yarns', 'hours', 'testers']);
    expect(report.yarns[0].sizes[0].metres).toBeCloseTo(200, 6);
    expect(report.yarns[0].basis.makings).toEqual([{ kind: 'sample', size: 'size-s' }]);
  });
});

describe('price', () => {
  test('adds up, with whole balls and with what is used', async () => {
    const { out, code } = await command(['price', await saved(made)]);
    // S: 3 balls of £5 and ten hours of £10 are £115; 2.2 balls and the hours £111.
    expect(out).toMatch(/price +£115\.00 /);
    expect(out).toMatch(/price +£111\.00 /);
    expect(code).toBe(0);
  });

  test('names what it still needs', async () => {
    const { out } = await command(['price', await saved(right)]);
    expect(out).toContain('A price still needs');
    expect(out).toContain('what an hour of your work is to bring');
    const { out: json } = await command(['price', await saved(right), '--json']);
    expect(JSON.parse(json).sizes[0].bought).toBeNull();
  });
});

describe('measured', () => {
  test('a size that lends the rest and is gone is told, with the one that lends it now', async () => {
    const gone = {
      ...made,
      workbook: { ...made.workbook, people: [{ ...person, base: 'size-gone' }] },
    };
    const { code, err } = await command([
      'measured',
      await saved(gone),
      'odo brack',
      '--out',
      join(folder, 'p'),
    ]);
    expect(code).toBe(0);
    expect(err.replace(/\s+/gu, ' ')).toMatch(/is not in the pattern any more; size \S+ lends it now/u);
  });

  test('writes the sheet of one person, known by name', async () => {
    const pdf = join(folder, 'pdf');
    const { code, out } = await command(['measured', await saved(made), 'odo brack', '--out', pdf]);
    expect(code).toBe(0);
    const [file] = readdirSync(pdf);
    expect(file).toMatch(/made-for-odo-brack/);
    expect(readFileSync(join(pdf, file!)).subarray(0, 5).toString()).toBe('%PDF-');
    expect(out).toContain(file!);
  });

  test.each<[string, (path: string) => readonly string[], string]>([
    ['without a name', (path) => ['measured', path, '--out', 'x'], 'Say whose sheet'],
    ['without a folder', (path) => ['measured', path, 'Odo Brack'], 'Say where the PDF goes'],
    ['for somebody unknown', (path) => ['measured', path, 'Una', '--out', 'x'], 'There are Odo Brack'],
  ])('is refused %s', async (_, words, why) => {
    const { code, err } = await command(words(await saved(made)));
    expect(err).toContain(why);
    expect(code).toBe(2);
  });
});

describe('figures that nothing can be reckoned from', () => {
  test('a sample in a size that was taken out is told, and no amount is made up', async () => {
    const gone = { ...made, workbook: { ...made.workbook, makings: [{ ...sample, size: 'size-gone' }] } };
    const { out } = await command(['yarn', await saved(gone)]);
    const words = out.replace(/\s+/gu, ' ');
    expect(words).toContain('No amount: what was weighed cannot be reckoned with');
    expect(words).toContain('No hours: what was told cannot be reckoned with');
    expect(words).toContain(
      "A sample's figures are not reckoned with, because its size is not among the sizes",
    );
  });

  test.each([['yarn'], ['price']])(
    '%s of a pattern without sizes says so, and prints no empty table',
    async (name) => {
      const { out } = await command([name, await saved({ ...made, sizes: [], sample: null })]);
      expect(out.replace(/\s+/gu, ' ')).toContain('the pattern has no sizes');
      expect(out).not.toContain('costs in all');
    },
  );
});
