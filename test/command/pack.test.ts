/** `turnchain pack`: an archive for each market with PDFs, listing and pictures; what it refuses; exit codes. */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { PNG } from 'pngjs';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { savePattern } from '../../app/services/files.ts';
import { compose } from '../../core/document/compose.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import { outside } from '../print/tools.ts';
import { command } from './harness.ts';
import { right, wrong } from './patterns.ts';

let folder: string;
let out: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'pack-'));
  out = join(folder, 'shop');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

async function saved(pattern: Pattern): Promise<string> {
  const path = join(folder, 'panel.turnchain');
  expect(await savePattern(path, compose(pattern), new Map())).toMatchObject({ ok: true });
  return path;
}
const entriesOf = (name: string) => unzipSync(readFileSync(join(out, name)));

test('packs the pattern’s own market: both papers, the listing and the first page', async () => {
  const { code, out: told } = await command(['pack', await saved(right), '--out', out]);
  expect(code).toBe(0);
  const names = [
    'listing.txt',
    'harbour-vest_us_a4_standard_all-sizes_v1.0.pdf',
    'harbour-vest_us_letter_standard_all-sizes_v1.0.pdf',
    'harbour-vest_us_page-1.png',
  ];
  expect(told).toBe(
    `${[join(out, 'harbour-vest_us_shop_v1.0.zip'), ...names.map((name) => `  ${name}`)].join('\n')}\n`,
  );
  expect(readdirSync(out)).toEqual(['harbour-vest_us_shop_v1.0.zip']);
  const entries = entriesOf('harbour-vest_us_shop_v1.0.zip');
  expect(Object.keys(entries)).toEqual(names);
  expect(outside('pdftotext', ['FILE', '-'], entries[names[1]!]!)).toContain('US terms');
  // Letter is 8½ by 11 inches (ANSI/ASME Y14.1), 612 by 792 points.
  expect(outside('pdfinfo', ['FILE'], entries[names[2]!]!)).toMatch(/Page size:\s+612 x 792 pts/u);
  // The picture is of the first PDF: A4, 210 by 297 mm (ISO 216).
  const { width, height } = PNG.sync.read(Buffer.from(entries[names[3]!]!));
  expect(height / width).toBeCloseTo(297 / 210, 2);
}, 60_000);

test('packs each market apart, in one edition, with the pages asked for and the listing told', async () => {
  const ran = await command([
    ...['pack', await saved(right), '--out', out, '--terms', 'us,uk', '--paper', 'a4'],
    ...['--edition', 'large-print', '--pictures', '2,1', '--listing'],
  ]);
  expect(ran.code).toBe(0);
  expect(readdirSync(out)).toEqual(['harbour-vest_uk_shop_v1.0.zip', 'harbour-vest_us_shop_v1.0.zip']);
  const entries = entriesOf('harbour-vest_uk_shop_v1.0.zip');
  expect(Object.keys(entries)).toEqual([
    'listing.txt',
    'harbour-vest_uk_a4_large-print_all-sizes_v1.0.pdf',
    'harbour-vest_uk_page-2.png',
    'harbour-vest_uk_page-1.png',
  ]);
  const listing = new TextDecoder().decode(entries['listing.txt']);
  expect(listing).toContain('Terms: UK terms');
  expect(ran.out).toContain(`\n${listing}\n`);
}, 60_000);

test('packs no pictures where none are asked for', async () => {
  await command(['pack', await saved(right), '--out', out, '--paper', 'a4', '--pictures', '']);
  expect(Object.keys(entriesOf('harbour-vest_us_shop_v1.0.zip'))).toEqual([
    'listing.txt',
    'harbour-vest_us_a4_standard_all-sizes_v1.0.pdf',
  ]);
}, 60_000);

test.each([
  ['no folder', [], 'Say where the archive goes: --out and a folder.'],
  ['pages that are none', ['--out', 'x', '--pictures', '1,two'], 'not “1,two”'],
  ['a page before the first', ['--out', 'x', '--pictures', '0'], 'not “0”'],
  ['an edition that is none', ['--out', 'x', '--edition', 'huge'], 'large-print'],
])('refuses %s', async (_, words, why) => {
  const { code, err } = await command(['pack', await saved(right), ...words]);
  expect(code).toBe(2);
  expect(err.replace(/\s+/gu, ' ')).toContain(why);
});

test('packs nothing of a pattern with errors, unless it is told to', async () => {
  const path = await saved(wrong);
  const refused = await command(['pack', path, '--out', out]);
  expect([refused.code, refused.out]).toEqual([2, '']);
  expect(refused.err.replace(/\s+/gu, ' ')).toContain('The pattern has errors, so nothing was packed');
  expect(readdirSync(folder)).toEqual(['panel.turnchain']);
  const anyway = await command(['pack', path, '--out', out, '--paper', 'a4', '--pictures', '', '--anyway']);
  expect(anyway.code).toBe(1);
  expect(readdirSync(out)).toEqual(['harbour-vest_us_shop_v1.0.zip']);
}, 60_000);

test('leaves a folder that cannot be one alone, and writes nothing when it is stopped', async () => {
  const path = await saved(right);
  const file = join(folder, 'a-file');
  writeFileSync(file, '');
  expect(await command(['pack', path, '--out', file])).toMatchObject({ code: 2, out: '' });
  const stopped = await command(['pack', path, '--out', out], { signal: AbortSignal.abort() });
  expect(stopped).toMatchObject({ code: 130, out: '' });
  expect(stopped.err).toContain('Stopped. Archives that are whole stay.');
  expect(readdirSync(out)).toEqual([]);
}, 60_000);
