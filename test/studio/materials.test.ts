/** The place "Materials" in a real browser: its forms, what follows from them, the pattern's own terms, access. */
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
});

afterAll(async () => {
  const { complaints } = studio;
  await studio.close();
  expect(complaints).toEqual([]);
});

beforeEach(async () => {
  page = await exampleIn(studio, /hat/i);
  await page.keyboard.press('Control+3');
  await page.locator('.materials').waitFor();
});

afterEach(() => page.close());

const section = (name: string) => page.getByRole('region', { name, exact: true });
const eventually = (read: () => Promise<unknown>) => expect.poll(read, { timeout: 45_000 });
const names = (list: string) => section(list).locator('.material legend').first().textContent();

test('amounts tell whole balls, items move by keys and go, and undoing brings all back', async () => {
  const yarn = section('Yarn').getByRole('listitem').first();
  await yarn.getByRole('textbox', { name: /^Metres of .*, size Newborn$/ }).fill('300');
  await page.keyboard.press('Enter');
  // 115 m in a ball: by hand.
  await eventually(() => yarn.locator('.amount').first().textContent()).toContain('3 balls');
  await page.keyboard.press('Control+z');
  // Undone, nothing is typed: the example prints what its sample tells.
  await eventually(() => yarn.locator('.amount').first().textContent()).not.toContain('ball');
  const first = await names('Hooks');
  await section('Hooks').getByLabel('Millimetres').first().focus();
  await page.keyboard.press('Alt+ArrowDown');
  await eventually(() => names('Hooks')).not.toBe(first);
  await section('Hooks')
    .getByRole('button', { name: /^Remove/ })
    .first()
    .click();
  await eventually(() => names('Hooks')).toBe(first);
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await eventually(() => names('Hooks')).toBe(first);
  expect(await section('Hooks').getByLabel('Millimetres').count()).toBe(2);
});

test('what is typed after a hook is added is its size', async () => {
  await section('Hooks').getByRole('button', { name: 'Add a hook' }).focus();
  await page.keyboard.press('Enter');
  await page.keyboard.type('3.5');
  await page.keyboard.press('Tab');
  expect(await section('Hooks').getByLabel('Millimetres').last().inputValue()).toBe('3.5');
});

test('a pattern in UK terms asks in its own terms, and for its own names first', async () => {
  await section('Special stitches').getByRole('button', { name: 'Add a special stitch' }).focus();
  await page.keyboard.press('Enter');
  await page.keyboard.type('ripple');
  await page.keyboard.press('Tab');
  expect(await section('Special stitches').getByLabel('Name in UK terms').inputValue()).toBe('ripple');
  await section('Tension').getByRole('button', { name: 'Add a tension' }).click();
  const pattern = section('Tension').getByLabel('Pattern stitch').last();
  expect(await pattern.getAttribute('placeholder')).toMatch(/^half treble/);
});

test('a cord on a hat for babies is warned of; what cannot be read is not taken', async () => {
  await section('Notions').getByRole('button', { name: 'Add a notion' }).click();
  await page.keyboard.type('chin tie');
  await page.keyboard.press('Enter');
  const notion = section('Notions').getByRole('group', { name: 'chin tie' });
  await notion.getByLabel('A cord: tie, drawstring, ribbon').check();
  await eventually(() => section('Cautions').textContent()).toContain('accredited laboratory');
  const width = section('Tension').getByLabel('over a width of').first();
  await width.fill('wide');
  await page.keyboard.press('Enter');
  expect(await width.getAttribute('aria-invalid')).toBe('true');
  await page.keyboard.press('Escape');
  expect(await width.inputValue()).toBe('10 cm');
});

test('reading in the other terms changes no word; rewriting does, as one step', async () => {
  const stitch = section('Tension').getByLabel('Pattern stitch');
  await page.getByRole('button', { name: 'US terms', exact: true }).click();
  const converted = section('Gauge').getByLabel('Pattern stitch');
  expect(await converted.inputValue()).toBe('half double crochet');
  expect(await converted.getAttribute('readonly')).not.toBeNull();
  await page.getByRole('button', { name: 'UK terms', exact: true }).click();
  expect(await stitch.inputValue()).toBe('half treble');
  await page.getByRole('button', { name: 'Change to US terms…' }).click();
  await page.getByRole('button', { name: 'Rewrite in US terms' }).click();
  await eventually(() => converted.inputValue()).toBe('half double crochet');
  expect(await converted.getAttribute('readonly')).toBeNull();
  expect(await page.locator('.materials-told').textContent()).toContain('in US terms now');
  await page.keyboard.press('Control+z');
  await eventually(() => stitch.inputValue()).toBe('half treble');
});

test.each(['light', 'dark'] as const)('axe finds nothing in the %s theme', async (theme) => {
  await page.evaluate((name) => {
    document.documentElement.dataset.theme = name;
  }, theme);
  await section('Special stitches').getByRole('button', { name: 'Add a special stitch' }).click();
  await section('Abbreviations').getByRole('button', { name: 'Add an abbreviation' }).click();
  await page.evaluate(axe);
  const violations = await page.evaluate(async () => {
    const { violations: found } = await (window as unknown as { axe: typeof import('axe-core') }).axe.run();
    return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`);
  });
  expect(violations).toEqual([]);
});
