/**
 * Stitch charts in the place "Drawings" in a real browser: shown with their key and in words, changed by choosing rows,
 * added, moved and removed, all of it by edits that undo takes back.
 */
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { violations } from './axe.ts';
import { exampleIn, openStudio, type Studio } from './harness.ts';

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
  page = await exampleIn(studio, /hat/i);
  await page.keyboard.press('Control+4');
  await page.locator('.chart svg').first().waitFor();
});
afterEach(() => page.close());

const eventually = (read: () => Promise<unknown>) => expect.poll(read, { timeout: 45_000 });
const rows = () => page.locator('.chart [data-name^="row "]').count();
const charts = () => page.locator('.drawings .material').count();

test('a chart is shown with its key, and told in words', async () => {
  // The crown: six rounds of half trebles.
  expect(await rows()).toBe(6);
  expect(await page.locator('.chart [data-name^="key "]').count()).toBeGreaterThan(4);
  await page.getByText('In words', { exact: true }).click();
  const told = await page.locator('.chart details p').textContent();
  expect(told).toContain('Round 1, anticlockwise: ch 2 (not counted), 8 htr in the ring, join with ss.');
});

test.each([1280, 640, 420])('in a window %i px wide the letters of its key can be read', async (width) => {
  await page.setViewportSize({ width, height: 900 });
  const letters = page.locator('.chart .drawing').last().locator('text').filter({ hasText: 'half treble' });
  // A line is some 1.3 times as high as its letters: no letters are smaller than 9 px.
  await eventually(async () => (await letters.first().boundingBox())!.height).toBeGreaterThan(11.5);
});

test('other rows are chosen, and undo takes the choice back', async () => {
  await page.getByRole('combobox', { name: 'To', exact: true }).selectOption({ index: 2 });
  await eventually(rows).toBe(3);
  await page.keyboard.press('Control+z');
  await eventually(rows).toBe(6);
});

test('a chart is added, moved and removed', async () => {
  await page.getByRole('button', { name: 'Add a chart' }).click();
  await eventually(charts).toBe(2);
  await eventually(() => page.locator('.chart').count()).toBe(2);
  await page.getByRole('button', { name: 'Move up: Chart 2' }).click();
  await eventually(() => page.locator('.drawings .material legend').first().textContent()).toBe('Chart 1');
  await page.getByRole('button', { name: 'Remove: Chart 1' }).click();
  await eventually(charts).toBe(1);
  expect(await page.locator('.drawings .material legend').first().textContent()).toBe('Crown');
});

test('nothing in it is hard to use for those who see it otherwise or not at all', async () => {
  expect(await violations(page)).toEqual([]);
  // What is seen on the button begins its name (WCAG 2.2, 2.5.3 Label in Name).
  const save = page.locator('.chart figcaption button');
  expect(await save.getAttribute('aria-label')).toContain((await save.textContent())!.trim());
});
