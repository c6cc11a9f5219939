/**
 * Measures the studio in a real browser without a window: how long a key takes to be painted in a long pattern,
 * and how long a start takes to the first key. The yardsticks are taken in the same run: a bare editable text,
 * and a short pattern.
 */
import { join } from 'node:path';
import type { Browser, CDPSession, Page } from 'playwright-core';
import { inMs, median, percentile, say } from './measure.ts';
import { type Bench, caretIn, longFile, onPage, withBench, withBrowser } from './pages.ts';

const root = process.argv[2] ?? '.';
/** Keys of one measurement, and the pause between them: a quick typist's ten a second. */
const KEYS = 200;
const PAUSE_MS = 100;
/**
 * Frames are drawn as soon as there is something to draw, so that waiting for a screen is not measured. Movement
 * is off then: without a screen's pace it would be drawn without end.
 */
const UNPACED = ['--disable-frame-rate-limit', '--disable-gpu-vsync'];
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

async function bare(browser: Browser): Promise<Typed> {
  const page = await browser.newPage();
  await page.setContent('<p contenteditable="true" style="width: 30em">Ch 1, </p>');
  await page.locator('p').click();
  await page.keyboard.press('End');
  const result = await typed(page);
  await page.close();
  return result;
}

/** Types in the middle row of a pattern of so many rows. */
function long(bench: Bench, browser: Browser, rows: number, still: boolean): Promise<Typed> {
  return onPage(bench, browser, { file: longFile(bench, rows), still }, async (page) => {
    await caretIn(page, Math.floor(rows / 2));
    return typed(page);
  });
}

/** From the command to the first key that is painted, and how much of it passed before the page was asked for. */
async function start(bench: Bench, browser: Browser): Promise<readonly [whole: number, host: number]> {
  const begun = performance.now();
  const file = join(root, 'resources/examples/boxy-vest.turnchain');
  return onPage(bench, browser, { file, still: true }, async (page) => {
    const host = performance.now() - begun;
    const row = page.locator('.row .words').first();
    await row.click({ position: { x: 6, y: 8 } });
    const before = await row.textContent();
    await page.keyboard.press('x');
    await page.waitForFunction((old) => document.querySelector('.row .words')?.textContent !== old, before, {
      polling: 'raf',
    });
    return [performance.now() - begun, host] as const;
  });
}

await withBench(async (bench) => {
  await withBrowser(UNPACED, async (browser) => {
    say('In Chromium without a window, a frame as soon as there is something to draw, nothing moving:');
    const text = await bare(browser);
    say(`  a bare editable text: ${told(text)}`);
    const few = await long(bench, browser, 50, true);
    say(`  12 sizes × 50 rows: ${told(few)}`);
    const many = await long(bench, browser, 500, true);
    say(`  12 sizes × 500 rows: ${told(many)}`);
    say(
      `  a key in 500 rows costs ${(many.cpu / few.cpu).toFixed(1)} times the processor of one in 50, and ${(many.cpu / text.cpu).toFixed(1)} times that of a bare text`,
    );
  });
  await withBrowser([], async (browser) => {
    say('With 60 frames a second, each key waiting for the next:');
    say(`  a bare editable text: ${told(await bare(browser))}`);
    say(`  12 sizes × 500 rows: ${told(await long(bench, browser, 500, false))}`);
    const starts: (readonly [number, number])[] = [];
    for (let i = 0; i < 5; i++) starts.push(await start(bench, browser));
    const [whole, host] = [starts.map(([ms]) => ms), starts.map(([, ms]) => ms)];
    say(
      `  start to first key with an example: ${(median(whole) / 1000).toFixed(2)} s (median of 5), ${(median(host) / 1000).toFixed(2)} s of it before the page is asked for`,
    );
  });
});
