/**
 * The program killed while somebody types in a real browser: the next start offers the work, and of the words
 * typed only those of the last two seconds may be missing.
 */
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startChromium } from './chromium.ts';
import { builtStudio } from './harness.ts';
import { buildProgram, type Program, startProgram } from './program.ts';

const AT_MOST = 2000;

let home: string;
let path: string;
let browser: Browser;
const programs: Program[] = [];

beforeAll(async () => {
  home = fs.realpathSync(fs.mkdtempSync(join(tmpdir(), 'studio-kill-')));
  await builtStudio();
  path = await buildProgram();
  browser = await startChromium();
}, 240_000);

afterAll(async () => {
  await browser?.close();
  for (const program of programs) await program.kill();
  if (path) fs.rmSync(dirname(path), { recursive: true, force: true });
  fs.rmSync(home, { recursive: true, force: true });
});

/** A start of the program, and a page on it. */
async function start(): Promise<{ program: Program; page: Page }> {
  const program = await startProgram(path, home);
  programs.push(program);
  const page = await browser.newPage();
  page.setDefaultTimeout(30_000);
  await page.goto(program.address);
  return { program, page };
}

const words = (page: Page) => page.locator('.row .words').nth(2);

/** Watches how long the page stood still at most: a machine that is busy keeps nobody's promises. */
async function watchStalls(page: Page): Promise<() => Promise<number>> {
  await page.evaluate(() => {
    let before = performance.now();
    Object.assign(window, { stall: 0 });
    setInterval(() => {
      const now = performance.now();
      const seen = window as unknown as { stall: number };
      seen.stall = Math.max(seen.stall, now - before - 20);
      before = now;
    }, 20);
  });
  return () => page.evaluate(() => (window as unknown as { stall: number }).stall);
}

/** What a next start offers is gone on with. */
async function recovered(): Promise<{ program: Program; page: Page }> {
  const next = await start();
  const offered = next.page.getByRole('region', { name: /not saved|recover/i });
  await offered.getByRole('listitem').first().waitFor();
  expect(await offered.getByRole('listitem').count()).toBe(1);
  await offered.getByRole('button').first().click();
  return next;
}

/** Given up for good, so that the next round begins with nothing. */
async function giveUp({ page, program }: { program: Program; page: Page }): Promise<void> {
  await page.close({ runBeforeUnload: false });
  await program.kill();
  fs.rmSync(join(home, 'data'), { recursive: true });
}

/**
 * Types words without a pause until the time is up, and so much longer as the page stood still; which were on
 * the page, and when.
 */
async function typeFor(
  page: Page,
  ms: number,
  stalls: () => Promise<number>,
): Promise<{ word: string; at: number }[]> {
  const typed: { word: string; at: number }[] = [];
  const begin = performance.now();
  for (let n = 0; performance.now() - begin < ms + (await stalls()); n++) {
    const word = `word${n}`;
    await page.keyboard.type(`${word} `);
    typed.push({ word, at: performance.now() });
  }
  return typed;
}

describe('the program killed while words are typed', () => {
  test.each([2700, 3900, 5200])('after %i ms', { timeout: 180_000 }, async (ms) => {
    const { program, page } = await start();
    await page.getByRole('button', { name: /vest/i }).first().click();
    await page
      .locator('.row .words')
      .nth(1)
      .click({ position: { x: 6, y: 8 } });
    await page.keyboard.press('End');
    await page.keyboard.press('Enter');
    const stalls = await watchStalls(page);
    const typed = await typeFor(page, ms, stalls);
    const end = performance.now();
    await program.kill();
    const stall = await stalls();
    // The page is still there, with all of the words, and says what has happened.
    expect(await words(page).textContent()).toContain(typed.at(-1)!.word);
    await page.keyboard.type('more');
    await page
      .getByText(/does not answer/)
      .first()
      .waitFor();
    await page.close({ runBeforeUnload: false });

    const next = await recovered();
    const found = (await words(next.page).textContent()) ?? '';
    const due = typed.filter(({ at }) => at < end - AT_MOST - stall);
    expect(due.length, `the page stood still for ${Math.round(stall)} ms`).toBeGreaterThan(0);
    for (const { word } of due) expect(found).toContain(`${word} `);
    await giveUp(next);
  });
});

/** Long enough for what was typed to be due, however slow the page was. */
const due = async (page: Page, stalls: () => Promise<number>): Promise<void> => {
  const before = await stalls();
  await page.waitForTimeout(AT_MOST);
  await page.waitForTimeout((await stalls()) - before);
};

/** Where something is typed and left standing there, and where it is found again. */
const fields: Record<string, { type(page: Page): Promise<void>; find(page: Page): Promise<void> }> = {
  'a field of Materials': {
    type: async (page) => {
      await page.keyboard.press('Control+3');
      await page.getByLabel('Designer').click();
      await page.keyboard.press('Control+a');
      await page.keyboard.type('Wren Aldwater');
    },
    find: async (page) => {
      await page.keyboard.press('Control+3');
      expect(await page.getByLabel('Designer').inputValue()).toBe('Wren Aldwater');
    },
  },
  'the name of a line': {
    type: async (page) => {
      await page.keyboard.press('Control+2');
      await page.locator('.line-name').first().click();
      await page.keyboard.press('Control+a');
      await page.keyboard.type('around the middle');
    },
    find: async (page) => {
      await page.keyboard.press('Control+2');
      expect(await page.locator('.line-name').first().inputValue()).toBe('around the middle');
    },
  },
  'a reason in Review': {
    type: async (page) => {
      await page.locator('.piece .words').last().click();
      await page.keyboard.press('End');
      await page.keyboard.type(' Leave a tail of 20 cm.');
      await page.keyboard.press('Control+5');
      await page
        .locator('.review-item', { hasText: '20 cm' })
        .getByRole('button', { name: /^Let it stand/ })
        .click();
      await page.keyboard.type('The shop sells in one');
    },
    find: async (page) => {
      await page.keyboard.press('Control+5');
      expect(await page.getByLabel(/^Why it may stand/).inputValue()).toBe('The shop sells in one');
    },
  },
};

describe('the program killed with words standing in', () => {
  test.each(Object.entries(fields))('%s', { timeout: 180_000 }, async (_, { type, find }) => {
    const { program, page } = await start();
    await page.getByRole('button', { name: /vest/i }).first().click();
    await page.locator('.row .words').first().waitFor();
    const stalls = await watchStalls(page);
    await type(page);
    await due(page, stalls);
    await program.kill();
    await page.close({ runBeforeUnload: false });
    const next = await recovered();
    await next.page.locator('.row .words').first().waitFor();
    await find(next.page);
    await giveUp(next);
  });
});
