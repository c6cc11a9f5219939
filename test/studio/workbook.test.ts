/** The place "Workbook" in a real browser: what follows from makings, the price, one person's private column. */
import fs from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { exampleIn, openStudio, type Studio } from './harness.ts';

const axe = fs.readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
let studio: Studio;
let page: Page;

beforeAll(async () => {
  studio = await openStudio();
}, 240_000);

afterAll(async () => {
  const { complaints } = studio;
  await studio.close();
  expect(complaints).toEqual([]);
});

beforeEach(async () => {
  page = await exampleIn(studio, /Saltings/);
  await page.keyboard.press('Control+7');
  await page.getByRole('region', { name: /, for each size$/ }).waitFor({ timeout: 60_000 });
}, 120_000);

afterEach(() => page.close());

const eventually = (read: () => Promise<unknown>) => expect.poll(read, { timeout: 45_000 });
const yarn = () => page.getByRole('region', { name: /, for each size$/ });
/** The cells of a row by its head. */
const cells = async (head: string) =>
  yarn()
    .getByRole('row', { name: new RegExp(`^${head}`) })
    .getByRole('cell')
    .allTextContents();

async function violations(): Promise<readonly string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { violations: found } = await (window as unknown as { axe: typeof import('axe-core') }).axe.run();
    return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`);
  });
}

test('yarn of every size follows the margin and what was weighed, each in one step back', async () => {
  const before = await cells('Metres to buy');
  expect(before).toHaveLength(10);
  expect(await page.locator('.workbook').textContent()).toContain(
    'from your sample in M and one tester in 2X',
  );
  const margin = page.getByRole('textbox', { name: 'To spare, in percent' });
  await margin.fill('0');
  await margin.press('Enter');
  // Without a margin what is bought is what is used.
  await eventually(async () => (await cells('Metres to buy')).map((cell) => `${cell} m`)).toEqual(
    await cells('As used'),
  );
  await page.keyboard.press('Control+z');
  await eventually(() => cells('Metres to buy')).toEqual(before);
  const grams = page.getByRole('textbox', { name: 'Grams' }).first();
  await grams.fill('746');
  await grams.press('Enter');
  // Twice the grams of the sample, the tester as before: more for every size.
  await eventually(async () => Number((await cells('Metres to buy'))[0])).toBeGreaterThan(Number(before[0]));
  await eventually(() => page.getByRole('region', { name: 'What was made' }).textContent()).toContain(
    'less yarn',
  );
  await page.keyboard.press('Control+z');
  await eventually(() => cells('Metres to buy')).toEqual(before);
}, 180_000);

test('the focus stays in the list while all that was made is removed', async () => {
  const list = page.getByRole('region', { name: 'Samples, testers, swatches', exact: true });
  const removes = list.getByRole('button', { name: /^Remove: / });
  for (let left = await removes.count(); left > 0; left--) {
    await removes.first().focus();
    await page.keyboard.press('Enter');
    await eventually(() => removes.count()).toBe(left - 1);
    expect(await list.evaluate((element) => element.contains(document.activeElement))).toBe(true);
  }
  await list.getByRole('button', { name: 'Add a sample, tester or swatch' }).waitFor();
});

test('a person’s private column takes own measurements, and stands beside the sizes', async () => {
  await page.getByRole('button', { name: 'Show the column of Wilmot Sedgeley' }).click();
  const column = page.getByRole('region', { name: /Private column of Wilmot Sedgeley/ });
  await column.waitFor({ timeout: 45_000 });
  const bust = column.getByRole('row', { name: /^bust/ });
  await eventually(() => bust.textContent()).toContain('41½ in');
  const field = column.getByRole('textbox', { name: 'bust, own measurement' });
  await field.fill('43 in');
  await field.press('Enter');
  await eventually(() => bust.getByRole('cell').last().textContent()).toBe('43 in');
  const found = { column: await violations() };
  await page.keyboard.press('Control+2');
  const head = page.getByRole('columnheader', { name: /private/ });
  await head.waitFor({ timeout: 45_000 });
  expect(await head.textContent()).toContain('Wilmot Sedgeley');
  await eventually(() => page.locator('.sizing-row .private-cell').nth(1).textContent()).toBe('43 in');
  expect({ ...found, sizes: await violations() }).toEqual({ column: [], sizes: [] });
  // Nobody else sees it: the pages for sale name nobody.
  await page.getByRole('combobox', { name: 'Private column of' }).selectOption('');
  await eventually(() => page.locator('.private-cell').count()).toBe(0);
}, 180_000);

test('the price adds up in the maker’s currency, and a wrong one is not taken', async () => {
  const bought = page.getByRole('region', { name: 'With whole balls bought' });
  const price = () =>
    bought
      .getByRole('row', { name: /^Price/ })
      .getByRole('cell')
      .first()
      .textContent();
  expect(await price()).toMatch(/^\$\d/);
  const currency = page.getByRole('textbox', { name: 'Currency' });
  await currency.fill('euro');
  await currency.press('Enter');
  await eventually(() => currency.getAttribute('aria-invalid')).toBe('true');
  await currency.fill('EUR');
  await currency.press('Enter');
  await eventually(price).toMatch(/^€\d/);
  const hourly = page.getByRole('textbox', { name: 'An hour of your work' });
  await hourly.fill('');
  await hourly.press('Enter');
  await eventually(() => page.locator('.workbook').textContent()).toContain(
    'A price still needs what an hour',
  );
}, 180_000);

test('in a narrow window nothing is cut off but tables that scroll by themselves', async () => {
  await page.setViewportSize({ width: 420, height: 800 });
  const over = await page.evaluate(() => {
    const place = document.querySelector('.workbook')!;
    return place.scrollWidth - place.clientWidth;
  });
  expect(over).toBeLessThanOrEqual(1);
  expect(await violations()).toEqual([]);
}, 120_000);
