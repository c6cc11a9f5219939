/**
 * What leaves the studio beside the pattern for sale, clicked through in a real browser and looked at on the disk: the
 * archive for a shop, the errata against a version that was kept, one person's own sheet; and typed numbers of an old
 * pattern that are taken as figures.
 */
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { violations } from './axe.ts';
import { atOnce, press, type } from './hands.ts';
import { exampleIn, openStudio, type Studio } from './harness.ts';

let places: string;
let studio: Studio;

let page: Page;

beforeAll(async () => {
  places = fs.realpathSync(fs.mkdtempSync(join(tmpdir(), 'selling-')));
  studio = await openStudio();
}, 240_000);
beforeEach(() => {
  for (const name of fs.readdirSync(studio.folder)) fs.rmSync(join(studio.folder, name), { recursive: true });
});
afterEach(() => page.close());
afterAll(async () => {
  await studio.close();
  fs.rmSync(places, { recursive: true, force: true });
  expect(studio.complaints).toEqual([]);
});

const eventually = (read: () => Promise<unknown>) => expect.poll(read, { timeout: 60_000 });
const written = () => fs.readdirSync(studio.folder).toSorted();
/** The words of a PDF as poppler reads them, on one line. */
const words = (pdf: string): string =>
  execFileSync('pdftotext', ['-layout', pdf, '-']).toString().replace(/\s+/gu, ' ');
const useFolder = () => page.getByRole('button', { name: 'Use this folder' }).click();

test('for the shop: the listing is copied, and each market’s archive holds what it says', async () => {
  page = await exampleIn(studio, /Skerry/);
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.keyboard.press('Control+6');
  const shop = page.getByRole('region', { name: 'For the shop' });
  const listing = shop.getByLabel('Text of the listing');
  await eventually(() => listing.inputValue()).toContain('Sizes: ');
  await shop.getByRole('button', { name: 'Copy the listing' }).click();
  await page.getByText('The listing was copied.').waitFor();
  const shown = await listing.inputValue();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(shown);

  const pictures = shop.getByLabel('Pictures of pages');
  const pack = shop.getByRole('button', { name: 'Pack…' });
  await pictures.fill('1, 99');
  await shop.getByText(/^Give page numbers from 1 to \d+/u).waitFor();
  expect(await pack.isDisabled()).toBe(true);
  expect(await violations(page)).toEqual([]);
  await pictures.fill('1, 3');
  for (const terms of ['US terms', 'UK terms'])
    await shop.getByRole('checkbox', { name: terms }).setChecked(true);
  await shop.getByRole('checkbox', { name: 'Letter' }).setChecked(false);
  await pack.click();
  await useFolder();
  await shop.getByText(/^2 archives are in /u).waitFor({ timeout: 90_000 });
  expect(
    (await shop.getByRole('list', { name: 'Archives written' }).getByRole('listitem').allTextContents()).map(
      (name) => name.trim(),
    ),
  ).toEqual(['skerry-hat_uk_shop_v1.0.zip', 'skerry-hat_us_shop_v1.0.zip']);
  expect(written()).toEqual(['skerry-hat_uk_shop_v1.0.zip', 'skerry-hat_us_shop_v1.0.zip']);
  expect(await violations(page)).toEqual([]);
  for (const terms of ['us', 'uk']) {
    const entries = unzipSync(fs.readFileSync(join(studio.folder, `skerry-hat_${terms}_shop_v1.0.zip`)));
    expect(Object.keys(entries)).toEqual([
      'listing.txt',
      `skerry-hat_${terms}_a4_standard_all-sizes_v1.0.pdf`,
      `skerry-hat_${terms}_page-1.png`,
      `skerry-hat_${terms}_page-3.png`,
    ]);
    const text = new TextDecoder().decode(entries['listing.txt']);
    expect(text).toContain(terms === 'us' ? 'Terms: US terms' : 'Terms: UK terms');
    // A page of A4 is 210 mm by 297 mm (ISO 216), whatever the picture's resolution.
    const png = PNG.sync.read(Buffer.from(entries[`skerry-hat_${terms}_page-3.png`]!));
    expect(png.height / png.width).toBeCloseTo(297 / 210, 2);
    expect(new Set(png.data).size).toBeGreaterThan(2);
    const pdf = join(places, `${terms}.pdf`);
    fs.writeFileSync(pdf, entries[`skerry-hat_${terms}_a4_standard_all-sizes_v1.0.pdf`]!);
    expect(words(pdf)).toContain(terms === 'us' ? 'US terms' : 'UK terms');
  }
}, 240_000);

test('errata against an earlier version: a sheet in each of the terms, with what was and what to read', async () => {
  page = await exampleIn(studio, /Skerry/);
  const saved = () => eventually(() => page.getByTestId('file-state').textContent()).toContain('· Saved');
  const row = page.locator('.row .words').nth(1);
  await row.click();
  await page.keyboard.press('Control+s');
  await page.getByRole('dialog').getByRole('button', { name: 'Save here' }).click();
  await saved();
  const before = ((await row.textContent()) ?? '').trim();
  // On the last of its lines, at the end of which the row ends.
  const { height } = (await row.boundingBox())!;
  await row.click({ position: { x: 12, y: height - 6 } });
  await atOnce(page, [press('End'), type(' Mark the first st.')]);
  await eventually(() => row.textContent()).toContain('Mark the first st.');
  const after = ((await row.textContent()) ?? '').trim();
  // The count is printed behind the row's words.
  const printed = `${before.replace(' (16 htr)', '')} Mark the first st. (16 htr)`;
  expect(after).toContain(' Mark the first st.');
  await page.keyboard.press('Control+s');
  await saved();
  await page.keyboard.press('Control+k');
  await page.getByRole('combobox', { name: 'Command' }).fill('earlier versions');
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog', { name: 'Earlier versions' });
  await dialog.getByRole('listitem').getByRole('button').first().click();
  await dialog.getByRole('button', { name: 'Errata against this one…' }).click();
  await useFolder();
  await dialog
    .getByRole('status')
    .getByText(/\.pdf.*\.pdf\.$/u)
    .waitFor({ timeout: 90_000 });
  expect(await violations(page)).toEqual([]);
  const told = await dialog.getByRole('status').textContent();
  expect(told).toMatch(/^1 correction since that version\. Both are called version 1\.0: /u);
  for (const terms of ['us', 'uk']) {
    const name = `skerry-hat_errata_${terms}_a4_v1.0.pdf`;
    expect(told).toContain(name);
    const sheet = words(join(studio.folder, name));
    // The hat is in UK terms; a htr of UK terms is a hdc of US terms (Craft Yarn Council).
    const stitch = terms === 'uk' ? 'htr' : 'hdc';
    const of = (text: string) =>
      terms === 'uk' ? text : text.replaceAll('htr', 'hdc').replace('with ss', 'with sl st');
    expect(sheet).toContain(`Rnd 2 Was: ${of(before)} Read: ${of(printed)}`);
    expect(sheet).toContain(`(16 ${stitch})`);
    expect(sheet).toContain(terms === 'uk' ? 'UK terms' : 'US terms');
  }
}, 240_000);

test('made to measure: the sheet has that person’s numbers, and no pattern for sale has them', async () => {
  page = await exampleIn(studio, /Saltings/);
  await page.keyboard.press('Control+7');
  await page.getByRole('button', { name: 'Show the column of Wilmot Sedgeley' }).click();
  const column = page.getByRole('region', { name: /Private column of Wilmot Sedgeley/u });
  const field = column.getByRole('textbox', { name: 'bust, own measurement' });
  await field.fill('43¼ in');
  await field.press('Enter');
  await eventually(() =>
    column.getByRole('row', { name: /^bust/u }).getByRole('cell').last().textContent(),
  ).toBe('43¼ in');
  await page.getByRole('button', { name: 'Print the sheet of Wilmot Sedgeley…' }).click();
  await useFolder();
  await page.getByText(/^Printed: .*made for one person and not for sale/u).waitFor({ timeout: 90_000 });
  const [sheet, ...others] = written();
  expect([sheet, others]).toEqual(['saltings-vest_us_letter_standard_made-for-wilmot-sedgeley_v1.0.pdf', []]);
  const own = words(join(studio.folder, sheet!));
  expect(own).toContain('Made to measure for Wilmot Sedgeley · not for sale');
  // 43¼ in are 109.855 cm (an inch is 2.54 cm), printed to the half centimetre.
  expect(own).toMatch(/110 cm[^.]{0,20}43¼ in|43¼ in[^.]{0,20}110 cm/u);
  // One size: no list of sizes stands in its rows.
  expect(own).not.toMatch(/\b[Cc]h \d+ \(\d+,/u);
  await page.keyboard.press('Control+6');
  const shop = page.getByRole('region', { name: 'For the shop' });
  await eventually(() => shop.getByLabel('Text of the listing').inputValue()).toContain('Sizes: ');
  await shop.getByLabel('Pictures of pages').fill('');
  await shop.getByRole('button', { name: 'Pack…' }).click();
  await useFolder();
  await shop.getByText(/^1 archive is in /u).waitFor({ timeout: 90_000 });
  const entries = unzipSync(fs.readFileSync(join(studio.folder, 'saltings-vest_us_shop_v1.0.zip')));
  expect(Object.keys(entries)).toEqual([
    'listing.txt',
    'saltings-vest_us_a4_standard_all-sizes_v1.0.pdf',
    'saltings-vest_us_letter_standard_all-sizes_v1.0.pdf',
  ]);
  for (const [name, bytes] of Object.entries(entries)) {
    const file = join(places, name);
    fs.writeFileSync(file, bytes);
    const sold = name.endsWith('.pdf') ? words(file) : fs.readFileSync(file, 'utf8');
    expect(sold, name).toMatch(/Saltings Vest/u);
    expect(sold, name).not.toMatch(/Wilmot|Sedgeley|43¼|made to measure/iu);
  }
}, 300_000);

const OLD = `Mudflat Cowl
by Ines Fallow

Sizes: S (M, L)
Finished width: 45 (51, 57) cm
Finished depth: 20 (22, 24) cm
Gauge: 14 sc and 16 rows = 10 cm

Band
Ch 64 (72, 81).
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (63 (71, 80) sc)
Row 2: Ch 1, sc in each st across, turn. (63 (71, 80) sc)
Block it to 45 (51, 57) cm across.
The depth is 20 (22, 24) cm.
Fold it at 20 (22, 24) cm.
`;

test('numbers of an old pattern that are a line’s in every size become figures, and words again', async () => {
  page = await studio.window();
  await page.getByRole('button', { name: 'Bring in a pattern…' }).click();
  const dialog = page.getByRole('dialog', { name: 'Bring in a pattern' });
  await dialog.getByRole('textbox', { name: /paste/u }).fill(OLD);
  await dialog.getByRole('button', { name: 'Read it' }).click();
  const offered = dialog.getByRole('group', { name: 'Numbers that could be figures' });
  await offered.waitFor();
  expect(await offered.getByRole('checkbox').count()).toBe(4);
  expect(await violations(page)).toEqual([]);
  await offered.getByRole('checkbox', { name: /^45 \(51, 57\) cm/u }).check();
  await dialog.getByRole('button', { name: 'Make the pattern' }).click();
  const figures = page.locator('.manuscript .figure');
  await eventually(() => figures.count()).toBe(1);
  expect(await figures.textContent()).toContain('finished width');
  await page.keyboard.press('Control+5');
  const left = page.getByRole('region', { name: 'Numbers that could be figures' });
  await left.getByRole('button', { name: 'Look for such numbers' }).click();
  await left.getByText('2 lists of numbers could be figures.').waitFor();
  expect(await violations(page)).toEqual([]);
  await left.getByRole('button', { name: 'Make a figure of 20 (22, 24) cm' }).first().click();
  await left.getByText('1 list of numbers could be figures.').waitFor();
  await left.getByRole('button', { name: 'Make a figure of 20 (22, 24) cm' }).click();
  await left.getByText('No typed numbers are those of a line in every size.').waitFor();
  await page.keyboard.press('Control+1');
  await eventually(() => figures.count()).toBe(3);
  await page.keyboard.press('Control+z');
  await eventually(() => figures.count()).toBe(2);
  await eventually(() => page.locator('.manuscript').textContent()).toContain('Fold it at 20 (22, 24) cm.');
}, 240_000);
