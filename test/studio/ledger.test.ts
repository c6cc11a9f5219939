/**
 * The ledger and the outline in a real browser: rows of both stand in line while typing, wrapping, scrolling and
 * zooming; keys lead through the cells; pieces are put in order by keys and by dragging.
 */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { caretAtEnd } from './hands.ts';
import { exampleIn, openStudio, type Studio } from './harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
}, 240_000);

afterAll(async () => {
  expect(studio.complaints).toEqual([]);
  await studio.close();
});

/** How far each ledger row on screen is from its row of the manuscript: the largest of all four edges' differences. */
function worst(page: Page): Promise<{ rows: number; off: number }> {
  return page.evaluate(() => {
    const rows = [...document.querySelectorAll<HTMLElement>('.ledger-row')];
    const blocks = [...document.querySelectorAll<HTMLElement>('.manuscript [data-block]')];
    let off = 0;
    for (const row of rows) {
      const block = blocks.find((other) => other.dataset.block === row.dataset.row);
      const [a, b] = [row.getBoundingClientRect(), block?.getBoundingClientRect()];
      off = Math.max(
        off,
        b === undefined ? 9999 : Math.abs(a.top - b.top),
        Math.abs(a.bottom - (b?.bottom ?? 0)),
      );
    }
    return { rows: rows.length, off };
  });
}

async function inLine(page: Page): Promise<void> {
  // Two frames: what was asked of the page has been drawn.
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  const { rows, off } = await worst(page);
  expect(rows).toBeGreaterThan(2);
  expect(off).toBeLessThanOrEqual(1);
}

const firstRow = (page: Page) => page.locator('.piece .row .words').nth(2);

describe('the ledger', () => {
  test('labels of sizes stand whole, each word on one line', async () => {
    const page = await exampleIn(studio, /Skerry/);
    await page.setViewportSize({ width: 1600, height: 900 });
    await page.keyboard.press('Control+2');
    await page.getByRole('button', { name: 'Add sizes…' }).click();
    await page.getByLabel('From', { exact: true }).selectOption({ label: 'the chart for hands' });
    await page.getByLabel('Woman', { exact: true }).check();
    await page.getByLabel('Child 3-14 years', { exact: true }).check();
    await page.getByRole('button', { name: 'Add 2 sizes' }).click();
    await page.keyboard.press('Control+1');
    const labels = page.locator('.ledger-label > span:first-child');
    await labels.filter({ hasText: /^Woman$/ }).waitFor();
    const broken = await labels.evaluateAll((all) =>
      all.flatMap((label) => {
        const text = label.firstChild!;
        const isCut = label.scrollHeight > label.clientHeight + 1;
        const lines = [...label.textContent!.matchAll(/[^\s-]+/g)].map((word) => {
          const range = document.createRange();
          range.setStart(text, word.index);
          range.setEnd(text, word.index + word[0].length);
          return new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size;
        });
        return isCut || lines.some((count) => count > 1) ? [`${label.textContent}: ${lines} ${isCut}`] : [];
      }),
    );
    expect(broken).toEqual([]);
    await page.close();
  });

  test('stays in line with the rows', async () => {
    const page = await exampleIn(studio, /Slackwater/);
    await caretAtEnd(firstRow(page));
    await inLine(page);
    // Two sentences wrap the row at least once more.
    for (let i = 0; i < 2; i++) {
      await page.keyboard.type(' Work with care and count the stitches, twice.');
      await inLine(page);
    }
    await page.setViewportSize({ width: 860, height: 900 });
    await inLine(page);
    await page.locator('.write').evaluate((scroller) => scroller.scrollBy(0, 500));
    await inLine(page);
    // Zooming to 200 % gives the page half as many pixels of its own.
    await page.setViewportSize({ width: 640, height: 450 });
    await firstRow(page).click();
    await inLine(page);
    await page.close();
  }, 180_000);

  test('is a grid that keys lead through, and tells about each cell', async () => {
    const page = await exampleIn(studio, /Slackwater/);
    const grid = page.getByRole('grid', { name: /^Ledger/ });
    await firstRow(page).click();
    await page.keyboard.press('Shift+F6');
    const cell = page.locator('.ledger-cell:focus');
    await cell.waitFor();
    const before = await cell.getAttribute('data-size');
    await page.keyboard.press('ArrowRight');
    expect(await page.locator('.ledger-cell:focus').getAttribute('data-size')).not.toBe(before);
    expect(await page.getByRole('tooltip').textContent()).toMatch(/\d+ stitches/);
    await page.keyboard.press('Control+End');
    const rows = Number(await grid.getAttribute('aria-rowcount'));
    await page.locator(`[aria-rowindex="${rows}"] .ledger-cell:focus`).waitFor();
    // The first row comes into view below the head, not behind it.
    await page.keyboard.press('Control+Home');
    await page.locator('[aria-rowindex="2"] .ledger-cell:focus').waitFor();
    const hidden = await page.evaluate(() => {
      const head = document.querySelector('.ledger-head')!.getBoundingClientRect();
      return head.bottom - document.activeElement!.getBoundingClientRect().top;
    });
    expect(hidden).toBeLessThanOrEqual(0);
    // The head: choosing a size puts it in focus.
    await page.keyboard.press('Control+ArrowUp');
    await page.keyboard.press('Control+ArrowLeft');
    await page.keyboard.press('Enter');
    await page.locator('.ledger-label.in-focus', { hasText: 'XS' }).waitFor();
    await page.keyboard.press('Escape');
    expect(await page.evaluate(() => document.activeElement?.className)).toContain('manuscript');
    await page.close();
  });

  test('marks a wrong count, and Enter leads to its words', async () => {
    const page = await exampleIn(studio, /Slackwater/);
    const row = page.locator('.piece').last().locator('.row .words').first();
    await caretAtEnd(row);
    await page.keyboard.type(' (3 sts)');
    const wrong = page.locator('.ledger-cell.has-error').first();
    await wrong.waitFor();
    expect(await wrong.textContent()).toMatch(/\d+.*wrong/s);
    await page.keyboard.press('Shift+F6');
    await page.locator('.ledger-cell:focus').waitFor();
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => getSelection()?.toString().includes('sts'));
    await page.close();
  });

  test('folds to the size in focus in a narrow window', async () => {
    const page = await exampleIn(studio, /Slackwater/);
    await page.setViewportSize({ width: 400, height: 800 });
    await page.locator('.ledger-sheet.is-folded').waitFor();
    expect(await page.locator('.ledger-label').count()).toBe(1);
    await page.getByRole('combobox', { name: 'Size in focus' }).selectOption({ label: 'L' });
    await firstRow(page).click();
    await inLine(page);
    await page.close();
  });
});

describe('the outline', () => {
  const names = (page: Page) => page.locator('[role="treeitem"][data-piece] .outline-name').allInnerTexts();

  test('puts pieces in order by keys, and tells', async () => {
    const page = await exampleIn(studio, /Slackwater/);
    const [first, second, ...rest] = await names(page);
    await page.keyboard.press('F6');
    while (!((await page.locator(':focus').textContent()) ?? '').startsWith(first!))
      await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Alt+ArrowDown');
    await expect.poll(() => names(page)).toEqual([second, first, ...rest]);
    await page
      .getByRole('status')
      .filter({ hasText: `${first} is now piece 2 of` })
      .waitFor({ state: 'attached' });
    await page.keyboard.press('Control+z');
    await expect.poll(() => names(page)).toEqual([first, second, ...rest]);
    await page.close();
  });

  test('and by dragging', async () => {
    const page = await exampleIn(studio, /Slackwater/);
    const before = await names(page);
    const items = page.locator('[role="treeitem"][data-piece]');
    const from = (await items.last().boundingBox())!;
    const to = (await items.first().boundingBox())!;
    await page.mouse.move(from.x + 60, from.y + 10);
    await page.mouse.down();
    await page.mouse.move(from.x + 60, from.y - 20);
    await page.mouse.move(to.x + 60, to.y + 4);
    await page.locator('.drops-before').waitFor({ state: 'attached' });
    await page.mouse.up();
    await expect.poll(() => names(page)).toEqual([before.at(-1), ...before.slice(0, -1)]);
    await page.close();
  });

  test('and with a finger', async () => {
    const touched = await openStudio({ page: { hasTouch: true } });
    const page = await exampleIn(touched, /Slackwater/);
    const before = await names(page);
    const items = page.locator('[role="treeitem"][data-piece]');
    const from = (await items.last().locator('.outline-handle').boundingBox())!;
    const to = (await items.first().boundingBox())!;
    const x = from.x + from.width / 2;
    const client = await page.context().newCDPSession(page);
    const finger = (type: 'touchStart' | 'touchMove' | 'touchEnd', y?: number) =>
      client.send('Input.dispatchTouchEvent', { type, touchPoints: y === undefined ? [] : [{ x, y }] });
    await finger('touchStart', from.y + from.height / 2);
    for (let step = 1; step <= 6; step++)
      await finger('touchMove', from.y + ((to.y + 4 - from.y) * step) / 6);
    await page.locator('.drops-before').waitFor({ state: 'attached' });
    await finger('touchEnd');
    await expect.poll(() => names(page)).toEqual([before.at(-1), ...before.slice(0, -1)]);
    const { complaints } = touched;
    await touched.close();
    expect(complaints).toEqual([]);
  });
});
