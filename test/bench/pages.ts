/**
 * Pages of the studio for measuring: a long pattern or an example open in a real browser, over a start of the
 * program of its own. It measures nothing itself.
 */
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { compose } from '../../core/document/compose.ts';
import { writeContainer } from '../../core/document/container.ts';
import { chromiumHere, startChromium } from '../studio/chromium.ts';
import { builtStudio } from '../studio/harness.ts';
import { buildProgram, startProgram } from '../studio/program.ts';
import { say } from './measure.ts';
import { longPattern } from './patterns.ts';

/** The part of the measuring that every page needs. */
export interface Bench {
  readonly program: string;
  /** A folder for files, taken away afterwards. */
  readonly home: string;
}

/** Builds what is measured and runs it; where there is no Chromium it says so and runs nothing. */
export async function withBench(run: (bench: Bench) => Promise<void>): Promise<void> {
  if (chromiumHere() === null) {
    say('The studio is not measured: there is no Chromium here (name one in CHROMIUM).');
    return;
  }
  await builtStudio();
  const program = await buildProgram();
  const home = fs.realpathSync(fs.mkdtempSync(join(tmpdir(), 'bench-')));
  try {
    await run({ program, home });
  } finally {
    fs.rmSync(home, { recursive: true, force: true });
    fs.rmSync(dirname(program), { recursive: true, force: true });
  }
}

/** Starts a browser with these words, and ends it. */
export async function withBrowser(words: readonly string[], run: (browser: Browser) => Promise<void>) {
  const browser = await startChromium(words);
  try {
    await run(browser);
  } finally {
    await browser.close();
  }
}

/** A file of 12 sizes and so many rows. */
export function longFile({ home }: Bench, rows: number): string {
  const path = join(home, `rows-${rows}.turnchain`);
  fs.writeFileSync(path, writeContainer(compose(longPattern({ sizes: 12, rows, stitches: 200 })), new Map()));
  return path;
}

/** Runs `use` on a page on a start of its own, with a file open; `still`: nothing on it moves. */
export async function onPage<T>(
  { program: path, home }: Bench,
  browser: Browser,
  { file, still }: { readonly file: string; readonly still: boolean },
  use: (page: Page) => Promise<T>,
): Promise<T> {
  const program = await startProgram(path, home, [file]);
  const context = await browser.newContext({
    viewport: { width: 1280, height: 900 },
    reducedMotion: still ? 'reduce' : 'no-preference',
  });
  try {
    const page = await context.newPage();
    page.setDefaultTimeout(120_000);
    await page.goto(program.address, { waitUntil: 'commit' });
    return await use(page);
  } finally {
    await context.close();
    await program.kill();
    fs.rmSync(join(home, 'data'), { recursive: true, force: true });
  }
}

/** Puts the caret at the end of a row, once the pattern has been studied. */
export async function caretIn(page: Page, at: number): Promise<void> {
  const row = page.locator('.row .words').nth(at);
  await page
    .locator('.row .label-words', { hasText: /^Row \d+/ })
    .nth(at)
    .waitFor();
  await row.scrollIntoViewIfNeeded();
  await row.click({ position: { x: 6, y: 8 } });
  await page.keyboard.press('End');
  await page.waitForTimeout(1000);
}
