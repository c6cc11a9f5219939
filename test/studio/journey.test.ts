/**
 * The whole job by hand and keyboard, in a real browser: from a blank pattern to printed PDFs in both terms, and
 * the PDFs read by Poppler. The counts expected were worked out by hand from the women's chart and the gauge.
 */
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openStudio, type Studio } from './harness.ts';

let studio: Studio;
let page: Page;

beforeAll(async () => {
  studio = await openStudio();
  page = await studio.window();
}, 240_000);
afterAll(() => studio.close());

/**
 * By hand: bust, middle of the women's chart (Craft Yarn Council, as reprinted): 33, 37, 41, 45 and 49 in, and 5 cm
 * of ease; half of it at 16 stitches in 10 cm, to the nearest whole number. S: (83.82 + 5) ÷ 2 × 1.6 = 71.06.
 */
const STITCHES = [71, 79, 87, 95, 104];
/** 40 cm at 20 rows in 10 cm is 80 rows, an even number, in every size. */
const ROWS = 80;

const list = (numbers: readonly number[]) => `${numbers[0]} (${numbers.slice(1).join(', ')})`;
const eventually = (read: () => Promise<unknown>) => expect.poll(read, { timeout: 45_000 });
const rows = () => page.locator('.row .words');

async function run(command: string): Promise<void> {
  await page.keyboard.press('Control+k');
  await page.getByRole('combobox', { name: 'Command' }).fill(command);
  await page.keyboard.press('Enter');
}

/** Puts a figure in at the caret: by key, with its expression typed. */
async function figure(expression: string): Promise<void> {
  await page.keyboard.press('Control+Enter');
  await page.keyboard.type(expression);
  await page.keyboard.press('Enter');
  await page.locator('.figure-form').waitFor({ state: 'detached' });
}

async function addLine(kind: string, name: string): Promise<void> {
  await page.getByLabel('Add a line').selectOption(kind);
  await page.getByRole('button', { name: 'Add', exact: true }).click();
  await page.keyboard.type(name);
  await page.keyboard.press('Enter');
}

async function fillFormula(field: string, words: string): Promise<void> {
  await page.getByRole('button', { name: new RegExp(`^${field}`) }).click();
  await page.keyboard.press('Control+a');
  await page.keyboard.type(words);
  await page.keyboard.press('Enter');
}

/** A picture of one colour. */
function picture(): Buffer {
  const png = new PNG({ width: 640, height: 480 });
  for (let at = 0; at < png.data.length; at += 4) png.data.set([140, 160, 150, 255], at);
  return PNG.sync.write(png);
}

test('a pattern is begun, graded, written, mended, illustrated, read in both terms, printed and exported', async () => {
  // A blank document.
  await page.getByRole('button', { name: 'New pattern…' }).click();
  await page.getByLabel('Title').fill('Harbour Top');
  await page.getByLabel('Written in').selectOption('us');
  await page.getByLabel('Measured in').selectOption('metric');
  await page.getByRole('button', { name: 'Begin the pattern' }).click();
  await page.getByRole('textbox', { name: 'Manuscript' }).waitFor();

  // Sizes from the chart: the blank has S to XL; one more is added.
  await page.keyboard.press('Control+2');
  await page.getByRole('button', { name: 'Add sizes…' }).click();
  await page.getByLabel('2X', { exact: true }).check();
  await page.getByRole('button', { name: 'Add 1 size' }).click();

  // The gauge, its hook and the yarn.
  await page.keyboard.press('Control+3');
  const section = (title: string) => page.getByRole('region', { name: title });
  await section('Hooks').getByRole('button', { name: 'Add' }).click();
  await section('Hooks').getByLabel('Millimetres').fill('4.5');
  await page.keyboard.press('Tab');
  await section('Gauge').getByRole('button', { name: 'Add' }).click();
  await section('Gauge').getByLabel('Pattern stitch').fill('single crochet');
  await section('Gauge').getByLabel('Stitches').fill('16');
  await section('Gauge').getByLabel('Rows').fill('20');
  await page.keyboard.press('Tab');

  // Lines: stitches for half the bust, a length, and its rows.
  await page.keyboard.press('Control+2');
  await addLine('stitches', 'panel stitches');
  await fillFormula('Width or length asked for, panel stitches', 'finished bust ÷ 2');
  await page.getByLabel('Gauge, panel stitches').selectOption({ label: 'single crochet' });
  await addLine('typed', 'length');
  const cells = (line: string) =>
    page
      .getByRole('grid')
      .getByRole('row')
      .filter({ has: page.locator(`th[aria-label^="${line}, "]`) })
      .getByRole('gridcell');
  await cells('length').first().click();
  await page.keyboard.type('40 cm');
  await page.keyboard.press('Enter');
  await cells('length').first().click();
  for (let i = 0; i < 4; i++) await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('Control+r');
  await addLine('rows', 'panel rows');
  await fillFormula('Width or length asked for, panel rows', 'length');
  await page.getByLabel('Gauge, panel rows').selectOption({ label: 'single crochet' });
  await page.getByLabel('Rows of the repeat, panel rows').fill('2');
  await page.keyboard.press('Tab');
  await page.getByLabel('Last row of the repeat, panel rows').fill('2');
  await page.keyboard.press('Tab');
  await eventually(async () =>
    (await cells('panel stitches').locator('.cell-value').allTextContents()).map(Number),
  ).toEqual(STITCHES);
  await eventually(async () =>
    (await cells('panel rows').locator('.cell-value').allTextContents()).map(Number),
  ).toEqual(STITCHES.map(() => ROWS));

  // The first piece, row by row, with a mistake that its fix mends.
  await page.keyboard.press('Control+1');
  await rows().first().click();
  await page.keyboard.type('Ch ');
  await figure('panel stitches + 1');
  await page.keyboard.type('.');
  await page.keyboard.press('Enter');
  await page.keyboard.type('Sc in 2nd ch from hook and in each ch across, turn.');
  await page.keyboard.press('Enter');
  await page.keyboard.type('Ch 1, scc in each st across, turn.');
  await page.locator('mark.error', { hasText: /^scc$/ }).waitFor();
  await page.locator('mark.error', { hasText: /^scc$/ }).click();
  await page.keyboard.press('Control+.');
  await eventually(() => rows().nth(2).textContent()).toBe('Ch 1, sc in each st across, turn.');
  await run('Repeat of rows');
  await page.keyboard.press('Enter');
  const form = page.getByRole('dialog');
  await form.getByLabel('From').selectOption({ label: 'Row 2' });
  await form.getByLabel('To').selectOption({ label: 'Row 2' });
  await form.getByLabel('How long').selectOption('total');
  await form.getByLabel('Rows in the piece').fill('panel rows');
  await form.getByRole('button', { name: 'Done' }).click();
  await page.getByText(`Rows 3–${ROWS}`).first().waitFor();

  // A second piece: a band of the same stitches.
  await page.getByRole('button', { name: 'Add a piece' }).first().click();
  await page.locator('.manuscript:focus').waitFor();
  await page.keyboard.type('Band');
  await page.keyboard.press('Enter');
  await page.keyboard.type('Ch 13.');
  await page.keyboard.press('Enter');
  await page.keyboard.type(
    'Hdc in 3rd ch from hook (the skipped ch do not count) and in each ch across, turn.',
  );
  await page.keyboard.press('Enter');
  await page.keyboard.type('Ch 2 (does not count as a st), hdc in BLO of each st across, turn.');
  const counts = (row: string) =>
    page
      .getByRole('grid', { name: /ledger/i })
      .getByRole('row', { name: row })
      .getByRole('gridcell');
  // Words may follow the number: that nothing says yet how the band ends.
  await eventually(async () =>
    (await counts('Row 2 (WS), Band').allTextContents()).map((text) => Number.parseInt(text, 10)),
  ).toEqual(STITCHES.map(() => 11));

  // A photograph, described.
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), run('Photograph')]);
  await chooser.setFiles({ name: 'top.png', mimeType: 'image/png', buffer: picture() });
  await page
    .getByLabel(/^What the photograph shows/)
    .last()
    .fill('The top laid flat, front up.');
  await page.keyboard.press('Tab');

  // Saved in a file.
  await page.keyboard.press('Control+s');
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Save here' }).click();
  await eventually(() => page.getByTestId('file-state').textContent()).toContain('Saved');

  // The other market's terms, on screen only.
  await page.getByRole('button', { name: 'UK terms' }).click();
  const shown = () => rows().nth(1).locator('.converted').first().getAttribute('data-shown');
  await eventually(shown).toBe('Dc');
  expect(await page.getByTestId('file-state').textContent()).toContain('Saved');
  await page.getByRole('button', { name: 'US terms', exact: true }).click();
  await eventually(() => page.locator('.converted').count()).toBe(0);
  expect(await rows().nth(1).textContent()).toContain('Sc in 2nd ch from hook');

  // The pages as they will be printed.
  await page.keyboard.press('Control+6');
  await page.locator('.pdf-page canvas').first().waitFor();
  await eventually(() => page.locator('.pdf-text').first().textContent()).toContain('Harbour Top');

  // Exported in both terms, and read by another program.
  await page.getByRole('button', { name: 'Export…' }).click();
  // There is no folder to go into: Enter takes this one.
  await eventually(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Use this folder');
  await page.keyboard.press('Enter');
  await eventually(() => page.getByRole('region', { name: 'Export PDFs' }).textContent()).toContain(
    '2 PDFs are in',
  );
  const pdfs = fs.readdirSync(studio.folder).filter((name) => name.endsWith('.pdf'));
  expect(pdfs.toSorted()).toEqual([
    'harbour-top_uk_a4_standard_all-sizes_v1.0.pdf',
    'harbour-top_us_a4_standard_all-sizes_v1.0.pdf',
  ]);
  const text = (terms: string) =>
    execFileSync('pdftotext', [
      '-layout',
      join(studio.folder, pdfs.find((name) => name.includes(`_${terms}_`))!),
      '-',
    ])
      .toString()
      .replace(/\s+/g, ' ');
  const [us, uk] = [text('us'), text('uk')];
  const chains = list(STITCHES.map((n) => n + 1));
  for (const words of [us, uk]) {
    expect(words).toContain(`Ch ${chains}.`);
    expect(words.split(`(${list(STITCHES)} sts)`)).toHaveLength(4); // three rows of the panel
    expect(words).toContain(`Rows 3–${ROWS}: Rep Row 2.`);
    expect(words.split('(11 sts)')).toHaveLength(3);
  }
  for (const name of pdfs) {
    const images = execFileSync('pdfimages', ['-list', join(studio.folder, name)]).toString();
    expect(images.trim().split('\n').length).toBeGreaterThan(2); // a head of two lines, then the photograph
  }
  expect(us).toContain('Sc in 2nd ch from hook and in each ch across, turn.');
  expect(uk).toContain('Dc in 2nd ch from hook and in each ch across, turn.');
  expect(us).toContain('Hdc in 3rd ch from hook');
  expect(uk).toContain('Htr in 3rd ch from hook');
  expect(studio.complaints).toEqual([]);
}, 240_000);
