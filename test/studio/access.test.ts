/**
 * Access in a real browser: every place, dialog and strip by axe-core (rules of WCAG 2.2 AA among them) in both
 * themes, and the way from the start screen to the review by keyboard alone.
 */
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { violations } from './axe.ts';
import { exampleIn, openStudio, type Studio } from './harness.ts';

let studio: Studio;
let page: Page;

beforeAll(async () => {
  studio = await openStudio();
}, 240_000);
afterEach(async () => {
  await page.close();
  expect(studio.complaints).toEqual([]);
});
afterAll(() => studio.close());

const press = (key: string) => page.keyboard.press(key);

async function run(command: string): Promise<void> {
  await press('Control+k');
  await page.getByRole('combobox', { name: 'Command' }).fill(command);
  await press('Enter');
}

async function shut(): Promise<void> {
  await press('Escape');
  await page.locator('dialog[open]').waitFor({ state: 'detached' });
}

describe.each(['light', 'dark'] as const)('axe finds nothing in the %s theme', (theme) => {
  const dressed = () =>
    page.evaluate((name) => {
      document.documentElement.dataset.theme = name;
    }, theme);

  test('at the start, in its dialogs, and in those of files', async () => {
    page = await studio.window();
    await page.getByRole('button', { name: 'New pattern…' }).waitFor();
    await dressed();
    const found: Record<string, readonly string[]> = { start: await violations(page) };
    for (const [name, open] of [
      ['new', () => run('new pattern')],
      ['bring', () => run('bring in a pattern')],
      ['commands', () => press('Control+k')],
      ['keys', () => press('F1')],
      ['theme', () => run('look and spelling')],
      ['about', () => run('about turnchain')],
      ['folders', () => press('Control+o')],
    ] as const) {
      await open();
      await page.locator('dialog[open] h2, dialog[open] input').first().waitFor();
      found[name] = await violations(page);
      await shut();
    }
    for (const [name, list] of Object.entries(found)) expect(list, name).toEqual([]);
  }, 120_000);

  test('in every place', async () => {
    page = await exampleIn(studio, /Slackwater/);
    await dressed();
    const found: Record<string, readonly string[]> = { write: await violations(page) };
    await page.locator('.piece').last().locator('.words').last().click();
    await press('End');
    await page.locator('.manuscript').evaluate((manuscript) => {
      const data = new DataTransfer();
      data.setData(
        'text/plain',
        'Pocket\nCh 14.\nRow 1: Sc in 2nd ch from hook and in each ch across. (12 sc)',
      );
      manuscript.dispatchEvent(
        new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
      );
    });
    await page.locator('.paste-note').waitFor();
    found.pasted = await violations(page);
    await press('Control+f');
    await page.getByRole('textbox', { name: 'Find', exact: true }).fill('st');
    found.find = await violations(page);
    await press('Escape');
    for (const [name, key, part] of [
      ['sizes', '2', '.sizes'],
      ['materials', '3', '.materials'],
      ['drawings', '4', '.schematic svg'],
      ['review', '5', '.review'],
      ['print', '6', '.print'],
      ['workbook', '7', '.workbook'],
    ] as const) {
      await press(`Control+${key}`);
      await page.locator(part).first().waitFor();
      found[name] = await violations(page);
    }
    for (const [name, list] of Object.entries(found)) expect(list, name).toEqual([]);
  }, 120_000);
});

test('by keyboard alone: a pattern is begun, a row written, the review gone to and left', async () => {
  page = await studio.window();
  await page.getByRole('button', { name: 'New pattern…' }).waitFor();
  /** What has the focus, held to be something that can be seen to have it. */
  const focused = async () => {
    const { name, isSeen } = await page.evaluate(() => {
      const element = document.activeElement!;
      const { outlineStyle, outlineWidth } = getComputedStyle(element);
      const isText = element.matches('.manuscript, input, textarea, select');
      return {
        name: element === document.body ? 'body' : (element.textContent ?? '').trim().slice(0, 60),
        isSeen: isText || (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2),
      };
    });
    expect(name).not.toBe('body');
    expect(isSeen, `focus is seen on “${name}”`).toBe(true);
    return name;
  };
  const isInManuscript = () => page.evaluate(() => document.activeElement!.classList.contains('manuscript'));
  /** Tabs until the focus is on a thing of this name. */
  const tabTo = async (name: RegExp, key = 'Tab') => {
    for (let i = 0; i < 60; i++) {
      await press(key);
      if (name.test(await focused())) return;
    }
    throw new Error(`The focus never came to ${name}.`);
  };
  await tabTo(/^New pattern/);
  await press('Enter');
  await page.getByRole('dialog').waitFor();
  await focused();
  await tabTo(/^Begin the pattern$/);
  await press('Enter');
  await page.locator('.manuscript').waitFor();
  await expect.poll(() => page.evaluate(() => document.activeElement !== document.body)).toBe(true);
  for (let i = 0; i < 60 && !(await isInManuscript()); i++) {
    await press('Tab');
    await focused();
  }
  expect(await isInManuscript()).toBe(true);
  await press('Control+End');
  await page.keyboard.type('Weave in all ends.');
  await expect
    .poll(() => page.locator('.manuscript').textContent(), { timeout: 20_000 })
    .toContain('Weave in all ends.');
  await press('Escape');
  await press('Escape');
  await press('Tab');
  expect(await isInManuscript()).toBe(false);
  await focused();
  await press('Control+5');
  await page.locator('.review').first().waitFor();
  await expect.poll(() => page.evaluate(() => document.activeElement !== document.body)).toBe(true);
  await tabTo(/./);
  await press('Control+1');
  await page.locator('.manuscript').waitFor();
  await expect.poll(() => page.evaluate(() => document.activeElement !== document.body)).toBe(true);
  await focused();
  expect(await page.locator('.manuscript').textContent()).toContain('Weave in all ends.');
}, 120_000);

test.each([1280, 640, 420])(
  'Tab goes through Print as it is seen, %i px wide',
  async (width) => {
    page = await exampleIn(studio, /Skerry/);
    await page.setViewportSize({ width, height: 800 });
    await press('Control+6');
    await page.locator('.pdf-page canvas').first().waitFor();
    /** Tops of what Tab comes to, column by column, as if nothing were scrolled. */
    const tops = await page.locator('.print').evaluate((print) => {
      const columns: number[][] = [[], []];
      for (const element of print.querySelectorAll<HTMLElement>(
        'select, input, textarea, button, [tabindex]',
      )) {
        if (element.matches(':disabled')) continue;
        const { left, top } = element.getBoundingClientRect();
        let scrolled = 0;
        for (let above = element.parentElement; above !== null; above = above.parentElement)
          scrolled += above.scrollTop;
        const isBeside = element.matches('.pdf-pages') && left > 200;
        columns[isBeside ? 1 : 0]!.push(Math.round(top + scrolled));
      }
      return columns;
    });
    expect(tops[0]!.length).toBeGreaterThan(15);
    expect(tops[0]).toEqual(tops[0]!.toSorted((a, b) => a - b));
    expect(tops[1]!.length).toBe(width > 900 ? 1 : 0);
  },
  120_000,
);

test.each([1280, 1000, 640, 420])(
  'a long title takes no room from the menu, %i px wide',
  async (width) => {
    page = await exampleIn(studio, /Skerry/);
    await page.setViewportSize({ width, height: 800 });
    const menu = page.getByRole('button', { name: 'Menu', exact: true });
    const before = await menu.boundingBox();
    expect(before!.y).toBeLessThan(20);
    await page.locator('.manuscript .title .words').first().click();
    await page.keyboard.type(
      ' for everybody in the family, in rounds, with a band and a bobble or without, long '.repeat(2),
    );
    const name = page.getByRole('heading', { level: 1 });
    await expect.poll(() => name.textContent()).toContain('or without');
    expect(await menu.boundingBox()).toEqual(before);
    const { x, width: wide } = (await name.boundingBox())!;
    expect(x + wide).toBeLessThanOrEqual(before!.x);
  },
  120_000,
);

test.each([1280, 1000, 640, 420])(
  'Tab goes through the bar as it is seen, %i px wide',
  async (width) => {
    page = await exampleIn(studio, /Skerry/);
    await page.setViewportSize({ width, height: 800 });
    const seen = () =>
      page.locator('.bar').evaluate((bar) =>
        [...bar.querySelectorAll('a, button')].map((element) => {
          const { left, top, height } = element.getBoundingClientRect();
          return { line: Math.round((top + height / 2) / 20), left };
        }),
      );
    await expect
      .poll(async () => {
        const places = await seen();
        const sorted = places.toSorted((a, b) => a.line - b.line || a.left - b.left);
        return JSON.stringify(places) === JSON.stringify(sorted);
      })
      .toBe(true);
  },
  120_000,
);

test('what is taken away by keyboard leaves the focus near it', async () => {
  const name = () => page.evaluate(() => document.activeElement?.id || document.activeElement?.textContent);
  page = await exampleIn(studio, /A vest of two panels/);
  await page.locator('.row .words').nth(1).click();
  await press('End');
  await page.keyboard.type(' (99 sc)');
  await press('Control+5');
  // A fix of words that were typed on meanwhile is not made.
  await page.getByRole('button', { name: 'Put it right' }).first().waitFor();
  await page.locator('#review-summary small').waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Put it right' }).first().focus();
  await press('Enter');
  await expect.poll(name).toBe('review-summary');
  await press('Control+7');
  await page.getByRole('button', { name: 'Remove: weight 1' }).first().focus();
  await press('Enter');
  await expect.poll(name).toBe('Add a weight');
  await press('Control+s');
  await page.getByRole('dialog').getByRole('button', { name: 'Save here' }).click();
  await expect.poll(() => page.getByTestId('file-state').textContent()).toContain('· Saved');
  await run('close pattern');
  await page
    .getByRole('button', { name: /^Take Saltings Vest/ })
    .first()
    .focus();
  await press('Enter');
  await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toBe('start');
}, 120_000);
