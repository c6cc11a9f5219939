/** The largest pattern that anyone may write, in a real browser: it opens, and what is typed stands there. */
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { compose } from '../../core/document/compose.ts';
import { writeContainer } from '../../core/document/container.ts';
import { longPattern } from '../bench/patterns.ts';
import { openStudio } from './harness.ts';

const SIZES = 50;
const ROWS = 3000;

test('50 sizes × 3,000 rows open; typing goes on while they are worked out, and its counts come', async () => {
  const folder = fs.mkdtempSync(join(tmpdir(), 'large-'));
  const file = join(folder, 'long.turnchain');
  const pattern = longPattern({ sizes: SIZES, rows: ROWS, stitches: 200 });
  fs.writeFileSync(file, writeContainer(compose(pattern), new Map()));
  const studio = await openStudio({ open: file });
  const page = await studio.window();
  page.setDefaultTimeout(120_000);
  const row = page.locator('.row .words').nth(1);
  await row.click();
  await page.keyboard.press('End');
  await page.keyboard.type(' Mark this row.');
  expect(await row.textContent()).toMatch(/ Mark this row\.$/);
  expect(await page.locator('.row').count()).toBe(ROWS + 1);
  const counts = page
    .getByRole('grid', { name: /ledger/i })
    .getByRole('row', { name: /^Row 2\b/ })
    .getByRole('gridcell');
  await expect.poll(() => counts.count(), { timeout: 120_000 }).toBeGreaterThan(0);
  // Beside a wide text not all sizes have room; those shown have a number each.
  await expect
    .poll(async () => (await counts.allTextContents()).every((text) => /^\d+$/.test(text)), {
      timeout: 120_000,
    })
    .toBe(true);
  await page.keyboard.press('Enter');
  await page.keyboard.type('Ch 1, scc in each st across, turn.');
  await page.locator('mark.error', { hasText: /^scc$/ }).waitFor();
  await page.keyboard.press('Control+End');
  await page.keyboard.type('x');
  expect(await page.locator('.manuscript .words').last().textContent()).toMatch(/x$/);
  await page.keyboard.press('Control+2');
  await page
    .getByRole('grid')
    .getByRole('row')
    .nth(1)
    .getByRole('gridcell')
    .nth(SIZES - 1)
    .waitFor();
  const { complaints } = studio;
  await studio.close();
  fs.rmSync(folder, { recursive: true, force: true });
  expect(complaints).toEqual([]);
}, 360_000);
