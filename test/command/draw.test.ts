/** `turnchain draw`: the files it writes and what it says when something cannot be drawn. */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { savePattern } from '../../app/services/files.ts';
import { compose } from '../../core/document/compose.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import { command } from './harness.ts';
import { right } from './patterns.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'command-draw-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

async function saved(pattern: Pattern): Promise<string> {
  const path = join(folder, 'panel.turnchain');
  expect(await savePattern(path, compose(pattern), new Map())).toMatchObject({ ok: true });
  return path;
}

const gauged: Pattern = {
  ...right,
  gauges: [
    {
      id: 'gauge-own',
      pattern: 'single crochet',
      stitches: 20,
      rows: 20,
      width: { value: 10, unit: 'cm' },
      height: { value: 10, unit: 'cm' },
      blocked: true,
      stretch: null,
      hook: null,
      rounds: false,
    },
  ],
};

test('one drawing with all sizes, where nothing is chosen', async () => {
  const out = join(folder, 'drawings');
  const ran = await command(['draw', await saved(gauged), '--out', out]);
  const file = 'harbour-vest_schematic_back_us_all-sizes.svg';
  expect(ran).toEqual({ code: 0, out: `${join(out, file)}\n`, err: '' });
  const svg = readFileSync(join(out, file), 'utf8');
  expect(svg).toMatch(/^<svg [^>]*role="img"/);
  // 60, 64, 68 and 72 stitches of half a centimetre: 11¾ in is 30 cm to the nearest quarter.
  expect(svg.replaceAll('\u00A0', ' ')).toContain('30 (32, 34, 36) cm / 11¾ (12½, 13½, 14¼) in');
  const again = await command(['draw', await saved(gauged), '--out', out]);
  expect(again.code).toBe(0);
  expect(readFileSync(join(out, file), 'utf8')).toBe(svg);
  expect(readdirSync(out)).toEqual([file]);
});

test('each size alone, in the units asked for', async () => {
  const ran = await command([
    'draw',
    await saved(gauged),
    '--out',
    folder,
    '--sizes',
    'S,XL',
    '--units',
    'imperial',
  ]);
  expect(ran.code).toBe(0);
  expect(
    ran.out
      .trim()
      .split('\n')
      .map((line) => line.slice(folder.length + 1)),
  ).toEqual(['harbour-vest_schematic_back_us_size-s.svg', 'harbour-vest_schematic_back_us_size-xl.svg']);
  const svg = readFileSync(join(folder, 'harbour-vest_schematic_back_us_size-xl.svg'), 'utf8');
  expect(svg.replaceAll('\u00A0', ' ')).toContain('14¼ in / 36 cm');
  expect(svg).not.toContain('11¾');
});

test('without a gauge it says what is missing', async () => {
  const ran = await command(['draw', await saved({ ...gauged, gauges: [] }), '--out', folder]);
  expect(ran).toEqual({
    code: 1,
    out: '',
    err: 'Back cannot be drawn yet: give its gauge, in stitches and in rows, under Materials.\nturnchain draw: There is nothing to draw; no file was written.\n',
  });
});

test.each([
  [['draw'], 'Say which file'],
  [['draw', 'x.turnchain', '--units', 'miles'], 'takes metric or imperial'],
  [['draw', 'x.turnchain', '--out', ''], 'Say where the drawings go'],
])('%j is refused', async (words, says) => {
  const ran = await command(words);
  expect(ran.code).toBe(2);
  expect(ran.err).toContain(says);
});

test('a size that is not there, and a folder that is a file', async () => {
  const path = await saved(gauged);
  expect((await command(['draw', path, '--out', folder, '--sizes', 'XXL'])).err).toContain(
    'has no size “XXL”',
  );
  writeFileSync(join(folder, 'taken'), '');
  const ran = await command(['draw', path, '--out', join(folder, 'taken')]);
  expect([ran.code, ran.err]).toEqual([
    2,
    'turnchain draw: “taken” is a file, not a folder for the drawings. Name another folder. No drawing was written.\n',
  ]);
});

test('the stitch charts that the pattern keeps, with their key, in the terms asked for', async () => {
  const [piece] = right.pieces;
  const rows = piece!.blocks.filter(({ type }) => type === 'row');
  const charted: Pattern = {
    ...right,
    charts: [
      {
        id: 'chart-own',
        piece: piece!.id,
        first: rows[0]!.id,
        last: rows[rows.length - 1]!.id,
        size: '',
        title: 'Fabric',
      },
      { id: 'chart-gone', piece: 'gone', first: 'x', last: 'y', size: '', title: 'Edging' },
    ],
  };
  const out = join(folder, 'charts');
  const ran = await command(['draw', await saved(charted), '--out', out, '--what', 'chart', '--terms', 'uk']);
  const [file] = readdirSync(out);
  expect(file).toMatch(/^harbour-vest_chart_fabric_uk_size-.+\.svg$/);
  expect(ran.code).toBe(1);
  expect(ran.err).toContain('Edging: The piece that this chart shows is no longer in the pattern.');
  const svg = readFileSync(join(out, file!), 'utf8');
  // The pattern is in US terms: its sc is a UK double crochet.
  expect(svg).toContain('double crochet');
  expect(svg).not.toContain('single crochet');
});
