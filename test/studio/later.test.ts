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
