/**
 * Measures the studio in a real browser without a window: how long a key takes to be painted in a long pattern,
 * how long a start takes to the first key, and whether an hour's edits leave anything behind in memory. The
 * yardsticks are taken in the same run: a bare editable text, and a short pattern. Where there is no Chromium it
 * says so and measures nothing.
 */
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, CDPSession, Page } from 'playwright-core';
import { compose } from '../../core/document/compose.ts';
import { writeContainer } from '../../core/document/container.ts';
import { chromiumHere, startChromium } from '../studio/chromium.ts';
import { buildPage, buildProgram, type Program, startProgram } from '../studio/program.ts';
import { inMs, median, percentile, say } from './measure.ts';
import { longPattern } from './patterns.ts';

const root = process.argv[2] ?? '.';
/** Keys of one measurement, and the pause between them: a quick typist's ten a second. */
const KEYS = 200;
const PAUSE_MS = 100;
/** One edit a second for an hour. */
const HOUR = 3600;
/** A frame is drawn as soon as there is something to draw, so that waiting for a screen is not measured. */
const UNTIMED = ['--disable-frame-rate-limit', '--disable-gpu-vsync'];
const TEXT = 'Sc in next st, dc in next st, ch 1, sk 1 st, turn the work now. ';

interface Probe {
  painted: number[];
  tasks: number[];
}

/** Notes in the page, for each key, when what it changed was painted, and every task over 50 ms. */
async function probe(page: Page): Promise<void> {
  await page.evaluate(() => {
    const probe: Probe = { painted: [], tasks: [] };
    Object.assign(window, { probe });
    addEventListener(
      'keydown',
      ({ timeStamp }) => {
        requestAnimationFrame(() => {
          // A message sent while a frame is made comes after it was painted.
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => probe.painted.push(performance.now() - timeStamp);
          port2.postMessage(null);
        });
      },
      true,
    );
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) probe.tasks.push(duration);
    }).observe({ type: 'longtask' });
  });
}

/** Processor time of the page's main thread so far, in milliseconds. */
async function threadTime(client: CDPSession): Promise<number> {
  const { metrics } = await client.send('Performance.getMetrics');
  return (metrics.find(({ name }) => name === 'ThreadTime')?.value ?? Number.NaN) * 1000;
}

interface Typed {
  readonly painted: readonly number[];
  readonly tasks: readonly number[];
  /** Processor time for a key, all that came of it included. */
  readonly cpu: number;
}

/** Types where the caret is. */
async function typed(page: Page): Promise<Typed> {
  await page.keyboard.type(TEXT.slice(0, 20), { delay: PAUSE_MS });
  await page.waitForTimeout(1500);
  const client = await page.context().newCDPSession(page);
  await client.send('Performance.enable', { timeDomain: 'threadTicks' });
  await probe(page);
  const before = await threadTime(client);
  for (let at = 0; at < KEYS; at++) {
    await page.keyboard.press(TEXT[at % TEXT.length] === ' ' ? 'Space' : TEXT[at % TEXT.length]!);
    await page.waitForTimeout(PAUSE_MS);
  }
  await page.waitForTimeout(1500);
  const cpu = ((await threadTime(client)) - before) / KEYS;
  const { painted, tasks } = await page.evaluate(() => (window as unknown as { probe: Probe }).probe);
  return { painted, tasks, cpu };
}

const told = ({ painted, tasks, cpu }: Typed): string =>
  `key to paint ${inMs(median(painted))} median, ${inMs(percentile(painted, 0.95))} at the 95th percentile, ${inMs(Math.max(...painted))} at most; ${inMs(cpu)} of processor a key; ${tasks.length} tasks over 50 ms${tasks.length > 0 ? ` (longest ${inMs(Math.max(...tasks))})` : ''}`;

function longFile(folder: string, rows: number): string {
  const path = join(folder, `rows-${rows}.turnchain`);
  fs.writeFileSync(path, writeContainer(compose(longPattern({ sizes: 12, rows, stitches: 200 })), new Map()));
  return path;
}

class Bench {
  readonly #browser: Browser;
  readonly #program: string;
  readonly #home: string;

  constructor(browser: Browser, program: string, home: string) {
    this.#browser = browser;
    this.#program = program;
    this.#home = home;
  }

  /** A page on a start of its own with a file open, ended when `use` is done. */
  async with<T>(file: string, use: (page: Page, program: Program, begun: number) => Promise<T>): Promise<T> {
    const begun = performance.now();
    const program = await startProgram(this.#program, this.#home, [file]);
    const context = await this.#browser.newContext({ viewport: { width: 1280, height: 900 } });
    try {
      const page = await context.newPage();
      page.setDefaultTimeout(120_000);
      await page.goto(program.address, { waitUntil: 'commit' });
      return await use(page, program, begun);
    } finally {
      await context.close();
      await program.kill();
      fs.rmSync(join(this.#home, 'data'), { recursive: true, force: true });
    }
  }

  async bare(): Promise<Typed> {
    const page = await this.#browser.newPage();
    await page.setContent('<p contenteditable="true" style="width: 30em">Ch 1, </p>');
    await page.locator('p').click();
    await page.keyboard.press('End');
    const result = await typed(page);
    await page.close();
    return result;
  }

  /** Types in the middle row of a pattern of so many rows. */
  long(rows: number): Promise<Typed> {
    return this.with(longFile(this.#home, rows), async (page) => {
      await caretIn(page, Math.floor(rows / 2));
      return typed(page);
    });
  }

  /** From the command to the first key that is painted, and how much of it passed before the page was asked for. */
  start(file: string): Promise<readonly [whole: number, host: number]> {
    const begun = performance.now();
    return this.with(file, async (page) => {
      const host = performance.now() - begun;
      const row = page.locator('.row .words').first();
      await row.waitFor();
      await row.click({ position: { x: 6, y: 8 } });
      const before = await row.textContent();
      await page.keyboard.press('x');
      await page.waitForFunction(
        (old) => document.querySelector('.row .words')?.textContent !== old,
        before,
        { polling: 'raf' },
      );
      return [performance.now() - begun, host] as const;
    });
  }

  /** Heap of the page after each quarter of an hour's edits, in megabytes, and its nodes. */
  hour(rows: number): Promise<readonly { readonly heap: number; readonly nodes: number }[]> {
    return this.with(longFile(this.#home, rows), async (page) => {
      await caretIn(page, Math.floor(rows / 2));
      const client = await page.context().newCDPSession(page);
      await client.send('Performance.enable');
      const quarters: { heap: number; nodes: number }[] = [];
      // Writes a line and takes it back, over and over: the pattern ends as long as it began.
      for (let edit = 0; edit <= HOUR; edit++) {
        if (edit % (HOUR / 4) === 0) quarters.push(await settled(page, client));
        await page.keyboard.press(edit % 60 < 30 ? 'x' : 'Backspace');
      }
      return quarters;
    });
  }
}

/** What is in memory when nothing is under way and all that is not needed is gone. */
async function settled(page: Page, client: CDPSession) {
  await page.waitForTimeout(3000);
  await client.send('HeapProfiler.collectGarbage');
  await client.send('HeapProfiler.collectGarbage');
  const { usedSize } = await client.send('Runtime.getHeapUsage');
  const { metrics } = await client.send('Performance.getMetrics');
  return { heap: usedSize / 1024 / 1024, nodes: metrics.find(({ name }) => name === 'Nodes')?.value ?? 0 };
}

/** Puts the caret at the end of a row, once the pattern has been studied. */
async function caretIn(page: Page, at: number): Promise<void> {
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

async function studio(): Promise<void> {
  if (chromiumHere() === null) {
    say('The studio is not measured: there is no Chromium here (name one in CHROMIUM).');
    return;
  }
  buildPage();
  const program = await buildProgram();
  const home = fs.realpathSync(fs.mkdtempSync(join(tmpdir(), 'bench-')));
  const browser = await startChromium(UNTIMED);
  const bench = new Bench(browser, program, home);
  try {
    say('In Chromium without a window and without a screen’s pace:');
    const bare = await bench.bare();
    say(`  a bare editable text: ${told(bare)}`);
    const short = await bench.long(50);
    say(`  12 sizes × 50 rows: ${told(short)}`);
    const long = await bench.long(500);
    say(`  12 sizes × 500 rows: ${told(long)}`);
    say(
      `  a key in 500 rows costs ${(long.cpu / short.cpu).toFixed(1)} times the processor of one in 50, and ${(long.cpu / bare.cpu).toFixed(1)} times that of a bare text`,
    );
    const example = join(root, 'resources/examples/boxy-vest.turnchain');
    const starts: (readonly [number, number])[] = [];
    for (let i = 0; i < 5; i++) starts.push(await bench.start(example));
    say(
      `  start to first key with an example: ${(median(starts.map(([whole]) => whole)) / 1000).toFixed(2)} s (median of 5), ${(median(starts.map(([, host]) => host)) / 1000).toFixed(2)} s of it before the page is asked for`,
    );
    const quarters = await bench.hour(100);
    const [first, , , last] = quarters.slice(1);
    say(
      `  ${HOUR.toLocaleString('en')} edits, heap at the start and after each quarter: ${quarters.map(({ heap }) => heap.toFixed(1)).join(', ')} MB (last to first quarter ${((last?.heap ?? 0) / (first?.heap ?? 1)).toFixed(2)}); nodes ${quarters.map(({ nodes }) => nodes).join(', ')}`,
    );
  } finally {
    await browser.close();
    fs.rmSync(home, { recursive: true, force: true });
    fs.rmSync(join(program, '..'), { recursive: true, force: true });
  }
}

await studio();
