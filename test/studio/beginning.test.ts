/** First steps of a maker who has never seen the studio, in a real browser: nothing is asked or blamed for nothing. */
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { exampleIn, openStudio, type Studio } from './harness.ts';

let studio: Studio;
let page: Page;

beforeAll(async () => {
  studio = await openStudio();
}, 180_000);
beforeEach(async () => {
  page = await studio.window();
});
afterEach(async () => {
  await page.close();
  expect(studio.complaints).toEqual([]);
});
afterAll(() => studio.close());

const manuscript = () => page.getByRole('textbox', { name: 'Manuscript' });
const review = () => page.getByRole('link', { name: /^Review/ });

async function begin(): Promise<void> {
  await page.getByRole('button', { name: 'New pattern…' }).click();
  await page.getByRole('textbox', { name: 'Title' }).press('Enter');
  await manuscript().waitFor();
}

async function close(): Promise<void> {
  await page.keyboard.press('Control+k');
  await page.getByRole('combobox', { name: 'Command' }).fill('close pattern');
  await page.keyboard.press('Enter');
}

test('a pattern begun without a title has none until one is typed, and no mistake while nothing is written', async () => {
  await begin();
  await page.keyboard.press('Control+5');
  await page.getByText('No row is written yet; begin with the first one of "Panel".').waitFor();
  expect(await review().textContent()).toBe('Review');
  expect(await page.locator('.outline-tally.is-errors').count()).toBe(0);
  await page.keyboard.press('Control+1');
  await manuscript().waitFor();
  await page.keyboard.type('Harbour Top');
  await expect.poll(() => page.getByRole('heading', { level: 1 }).textContent()).toBe('Harbour Top');
});

test('a pattern in no file is closed only after asking, in words for one that was never saved', async () => {
  await begin();
  await close();
  const asked = page.getByRole('dialog', { name: 'Save the changes to “Untitled pattern”?' });
  await asked.getByText('The pattern is in no file yet. Without saving, all of it is lost.').waitFor();
  await asked.getByRole('button', { name: 'Don’t save' }).click();
  await page.getByRole('button', { name: 'New pattern…' }).waitFor();
});

test('an example that was only looked at is closed without a question, one that was changed is not', async () => {
  await page.close();
  page = await exampleIn(studio, /hat/i);
  await close();
  await page.getByRole('button', { name: /hat/i }).first().click();
  await manuscript().waitFor();
  await page.keyboard.type('My ');
  await close();
  await page.getByRole('dialog', { name: /^Save the changes to “My Skerry Hat”/ }).waitFor();
});

test('what a garment outline still needs is asked for at its field', async () => {
  await page.getByRole('button', { name: 'New pattern…' }).click();
  await page.getByRole('radio', { name: /^A hat in rounds/ }).check();
  await page.getByLabel('Stitches').fill('15');
  await page.getByRole('textbox', { name: 'Title' }).press('Enter');
  await page.getByRole('alert').waitFor();
  const field = page.getByLabel('Rows or rounds');
  expect(await field.evaluate((element) => element === document.activeElement)).toBe(true);
  expect(await field.getAttribute('aria-invalid')).toBe('true');
  await field.fill('12');
  await page.getByLabel('Hook (mm)').fill('5,0');
  await page.keyboard.press('Enter');
  await manuscript().waitFor();
  await expect.poll(() => review().textContent()).toBe('Review');
});

test('a maker who stays with the pattern on the desk still has what was chosen for the new one', async () => {
  await begin();
  await page.keyboard.press('Control+k');
  await page.getByRole('combobox', { name: 'Command' }).fill('new pattern');
  await page.keyboard.press('Enter');
  const form = page.getByRole('dialog', { name: 'New pattern' });
  await form.getByLabel('Title').fill('Driftwood Hat');
  await form.getByRole('radio', { name: /A hat in rounds/ }).check();
  await form.getByLabel('Hook (mm)').fill('4.5');
  await form.getByRole('button', { name: 'Begin the pattern' }).click();
  await form.getByLabel('Stitches', { exact: true }).fill('15');
  await form.getByLabel('Rows or rounds').fill('10');
  await form.getByRole('button', { name: 'Begin the pattern' }).click();
  const asked = page.getByRole('dialog', { name: 'Save the changes to “Untitled pattern”?' });
  await asked.getByRole('button', { name: 'Cancel' }).click();
  await asked.waitFor({ state: 'detached' });
  expect(await form.getByLabel('Title').inputValue()).toBe('Driftwood Hat');
  expect(await form.getByLabel('Hook (mm)').inputValue()).toBe('4.5');
  await form.getByRole('button', { name: 'Begin the pattern' }).click();
  await asked.getByRole('button', { name: 'Don’t save' }).click();
  await expect.poll(() => page.getByRole('heading', { level: 1 }).textContent()).toBe('Driftwood Hat');
  await form.waitFor({ state: 'detached' });
});

test('what is begun and not written yet is no mistake: a piece, a row, a line of the sizing sheet', async () => {
  await begin();
  await page.locator('.manuscript').getByRole('button', { name: 'Add a piece' }).click();
  await page.locator('.piece').nth(1).waitFor();
  await page.locator('.piece .title .words').first().click();
  await page.keyboard.press('End');
  await page.keyboard.press('Enter');
  await page.keyboard.type('Ch 11.');
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('.ledger .ledger-count').allTextContents()).toContain('11');
  // Not a number stands beside rows without words.
  const counts = await page.locator('.ledger tbody .ledger-count').allTextContents();
  expect(counts.filter((count) => count.trim() === '0')).toEqual([]);
  await page.keyboard.press('Control+2');
  await page.getByLabel('Add a line').selectOption('typed');
  await page.getByRole('button', { name: 'Add', exact: true }).click();
  await page.keyboard.press('Control+5');
  await page.getByText(/has no rows; write them/).waitFor();
  expect(await review().textContent()).toBe('Review');
  expect(await page.getByText('Mistake', { exact: true }).count()).toBe(0);
  await page.keyboard.press('Control+1');
  await manuscript().waitFor();
  const told = await page.getByRole('tree').getByRole('treeitem').allTextContents();
  expect(told).toContain('Piece 2');
  expect(await page.locator('.outline-tally.is-errors').count()).toBe(0);
});

test('a command that cannot be done says why', async () => {
  await begin();
  await page.keyboard.press('Control+k');
  const list = page.getByRole('listbox', { name: 'Find a command' });
  for (const [name, why] of [
    ['Earlier versions', 'the pattern is in no file yet; save it first'],
    ['Undo', 'nothing to undo'],
  ]) {
    await page.getByRole('combobox', { name: 'Command' }).fill(name!);
    await list
      .getByRole('option', { name: new RegExp(name!) })
      .getByText(why!)
      .waitFor();
  }
});
