/**
 * The review in a real browser, by keys: a finding is let stand with a reason, set apart, taken back; undo follows;
 * the report for an editor is written; axe finds nothing with the form open and with accepted findings shown.
 */
import fs from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { exampleIn, openStudio, type Studio } from './harness.ts';

const axe = fs.readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
}, 240_000);
afterAll(async () => {
  expect(studio.complaints).toEqual([]);
  await studio.close();
});

async function violations(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { violations: found } = await (window as unknown as { axe: typeof import('axe-core') }).axe.run();
    return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`);
  });
}

/** The hat with one thing to find: a length in a single unit at the end of its last paragraph. */
async function hatInReview(): Promise<Page> {
  const page = await exampleIn(studio, /Skerry/);
  await page.locator('.piece').last().locator('.prose .words, .words').last().click();
  await page.keyboard.press('End');
  await page.keyboard.type(' Leave a tail of 20 cm.');
  await page.keyboard.press('Control+5');
  await page.locator('.review-item', { hasText: '20 cm' }).waitFor();
  return page;
}

test('a finding is let stand with a reason, and taken back', async () => {
  const page = await hatInReview();
  const open = page.locator('.review-item', { hasText: '20 cm' });
  await open.getByRole('button', { name: /^Let it stand/ }).focus();
  await page.keyboard.press('Enter');
  const why = page.getByLabel(/^Why it may stand/);
  await why.waitFor();
  expect(await why.evaluate((field) => field === document.activeElement)).toBe(true);
  const found: Record<string, readonly string[]> = { form: await violations(page) };
  await page.keyboard.type('The shop sells in');
  // Going elsewhere and coming back: the reason is gone on with.
  await page.keyboard.press('Control+1');
  await page.locator('.manuscript').waitFor();
  await page.keyboard.press('Control+5');
  await why.click();
  await page.keyboard.press('End');
  await page.keyboard.type(' one country only.');
  await page.keyboard.press('Enter');
  const accepted = page.getByRole('region', { name: /^Accepted/ });
  await accepted.getByText('The shop sells in one country only.', { exact: false }).waitFor();
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('review-summary');
  for (const theme of ['light', 'dark']) {
    await page.evaluate((name) => {
      document.documentElement.dataset.theme = name;
    }, theme);
    found[theme] = await violations(page);
  }
  for (const [name, list] of Object.entries(found)) expect(list, name).toEqual([]);
  await accepted.getByRole('button', { name: /^Take back/ }).focus();
  await page.keyboard.press('Enter');
  await accepted.waitFor({ state: 'detached' });
  await open.waitFor();
  await page.keyboard.press('Control+z');
  await accepted.waitFor();
  await page.getByRole('button', { name: 'Report for an editor…' }).click();
  await page.locator('dialog[open]').getByRole('button', { name: 'Use this folder' }).click();
  await page
    .locator('.review-report', { hasText: 'Written: skerry-hat_uk_a4_technical-edit_v1.0.pdf' })
    .waitFor();
  const [name] = fs.readdirSync(studio.folder).filter((file) => file.endsWith('.pdf'));
  expect(fs.readFileSync(join(studio.folder, name!)).subarray(0, 5).toString()).toBe('%PDF-');
  await page.close();
}, 120_000);
