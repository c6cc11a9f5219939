/** What no start shows is loaded later: the maker is told where the host does not give it, and may ask again. */
import { afterEach, expect, test } from 'vitest';
import { exampleIn, openStudio, type Studio } from './harness.ts';

let studio: Studio | null = null;
afterEach(async () => {
  await studio?.close();
  studio = null;
});

const LATER = '**/later-parts-*.js';

test('a place that could not be loaded is told, and comes when it is asked for again', async () => {
  studio = await openStudio();
  const first = await studio.window();
  await first.context().route(LATER, (route) => route.abort());
  const page = await exampleIn(studio, /vest/i);
  const sizes = page.getByRole('link', { name: 'Sizes' });
  const told = page.getByRole('dialog', { name: 'This part of the studio could not be loaded' });
  await sizes.click();
  await told.waitFor();
  await told.getByRole('button', { name: 'Close' }).click();
  await page.getByRole('link', { name: 'Write' }).click();
  await page.locator('.row .words').first().waitFor();
  await page.context().unroute(LATER);
  await sizes.click();
  await page.getByRole('grid').first().waitFor();
  // The browser itself says in its console that the file was not given, and nothing else went wrong.
  expect(studio.complaints.filter((said) => !said.includes('later-parts'))).toEqual([]);
});

test('keys pressed before a dialog is there are its own, and Escape gives it up', async () => {
  studio = await openStudio();
  const first = await studio.window();
  let give = (): void => undefined;
  const given = new Promise<void>((done) => {
    give = done;
  });
  await first.context().route(LATER, async (route) => {
    await given;
    await route.continue();
  });
  const page = await exampleIn(studio, /vest/i);
  const row = page.locator('.row .words').first();
  await row.click({ position: { x: 6, y: 8 } });
  const before = await row.textContent();
  await page.keyboard.press('Control+k');
  await page.keyboard.type('x');
  await page.keyboard.press('Escape');
  await page.keyboard.press('z');
  expect(await row.textContent()).toContain('z');
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+k');
  await page.keyboard.type('prinq');
  await page.keyboard.press('Backspace');
  await page.keyboard.type('t');
  give();
  const search = page.getByRole('dialog').getByRole('combobox');
  await search.waitFor();
  await expect.poll(() => search.inputValue()).toBe('print');
  expect(await row.textContent()).toBe(before);
});
