/** What is being typed in a field and not given yet, in a real browser: saving, leaving and other keys lose none of it. */
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { exampleIn, openStudio, type Studio } from './harness.ts';

let studio: Studio;
let page: Page;

beforeAll(async () => {
  studio = await openStudio();
}, 180_000);
beforeEach(async () => {
  page = await exampleIn(studio, /A vest of two panels/);
});
afterEach(async () => {
  await page.close();
  expect(studio.complaints).toEqual([]);
});
afterAll(() => studio.close());

const press = (key: string) => page.keyboard.press(key);
const designer = () => page.getByLabel('Designer');
const state = () => page.getByTestId('file-state').textContent();

async function typeDesigner(name: string): Promise<void> {
  await designer().click();
  await press('Control+a');
  await page.keyboard.type(name);
}

test('going to another place by key keeps it', async () => {
  await press('Control+3');
  await typeDesigner('Wren Aldwater');
  await press('Control+1');
  await page.locator('.manuscript').waitFor();
  await press('Control+3');
  expect(await designer().inputValue()).toBe('Wren Aldwater');
});

test('saving saves it, and typing goes on where it was', async () => {
  await press('Control+3');
  await typeDesigner('Wren');
  await press('Control+s');
  await page.getByRole('dialog').getByRole('button', { name: 'Save here' }).click();
  await expect.poll(state).toContain('· Saved');
  await page.keyboard.type(' Aldwater');
  await press('Control+s');
  await expect.poll(state).toContain('· Saved');
  await page.keyboard.type(' jr');
  await press('Tab');
  expect(await designer().inputValue()).toBe('Wren Aldwater jr');
  expect(await state()).toContain('Changes not saved');
  await press('Control+z');
  await expect.poll(() => designer().inputValue()).toBe('Wren Aldwater');
  await press('Control+z');
  await expect.poll(() => designer().inputValue()).toBe('Wren');
});

test('a field is typed in again once a dialog over it is closed', async () => {
  await press('Control+3');
  await typeDesigner('Wren');
  await press('Control+k');
  await page.getByRole('combobox', { name: 'Command' }).fill('size');
  await press('Escape');
  await page.locator('dialog[open]').waitFor({ state: 'detached' });
  await page.keyboard.type(' Aldwater');
  expect(await designer().inputValue()).toBe('Wren Aldwater');
});

test('a photograph that is asked for in the search for commands comes to the caret', async () => {
  await page.locator('.row .words').nth(2).click();
  await press('End');
  const asked = page.waitForEvent('filechooser');
  await press('Control+k');
  await page.getByRole('combobox', { name: 'Command' }).fill('photograph');
  await press('Enter');
  const chooser = await asked;
  await chooser.setFiles({ name: 'p.png', mimeType: 'image/png', buffer: await page.screenshot() });
  await page.locator('.blocks .photo').waitFor();
});

test('a cell that is being typed in is saved, and has the focus after that', async () => {
  await press('Control+2');
  const cell = page
    .locator('tr', { has: page.locator('th[aria-label^="ease, "]') })
    .getByRole('gridcell')
    .first();
  await cell.click();
  await page.keyboard.type('7 in');
  await press('Control+s');
  await page.getByLabel('Name of the file').fill('cell');
  await page.getByRole('dialog').getByRole('button', { name: 'Save here' }).click();
  await expect.poll(state).toContain('· Saved');
  await expect.poll(() => cell.textContent()).toContain('7 in');
  expect(await cell.evaluate((element) => element === document.activeElement)).toBe(true);
});

test('closing asks about it', async () => {
  await press('Control+3');
  await typeDesigner('Wren Aldwater');
  await press('Control+k');
  await page.getByRole('combobox', { name: 'Command' }).fill('close pattern');
  await press('Enter');
  await page.getByRole('dialog', { name: /^Save the changes/ }).waitFor();
});

test('a form stays open at the keys of places, with what is typed in it', async () => {
  await page.locator('.row .words').first().click();
  await press('Control+Enter');
  const field = page.getByRole('combobox', { name: 'Line, or a short sum of lines' });
  await page.keyboard.type('panel stitches');
  await press('Control+2');
  await press('F8');
  expect(await field.inputValue()).toBe('panel stitches');
  expect(await page.locator('.sizes').count()).toBe(0);
});

test('undoing in a form that is not given yet is the field’s, and leaves the rows alone', async () => {
  const row = page.locator('.row .words').nth(2);
  await row.click();
  await press('End');
  await page.keyboard.type(' Turn.');
  const before = await row.textContent();
  await press('Control+Enter');
  const field = page.getByRole('combobox', { name: 'Line, or a short sum of lines' });
  await page.keyboard.type('panel');
  await press('Control+z');
  await expect.poll(() => field.inputValue()).not.toBe('panel');
  await press('Escape');
  await field.waitFor({ state: 'detached' });
  expect(await row.textContent()).toBe(before);
});
