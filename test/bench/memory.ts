/**
 * Measures what an hour's edits leave in the memory of the studio's page: one edit a second, made as fast as they
 * can be, in a pattern that ends as long as it began.
 */
import type { CDPSession, Page } from 'playwright-core';
import { say } from './measure.ts';
import { caretIn, longFile, onPage, withBench, withBrowser } from './pages.ts';

const EDITS = 3600;
const ROWS = 100;

interface Memory {
  /** Megabytes. */
  readonly heap: number;
  readonly nodes: number;
}

/** What is in memory when nothing is under way and all that is not needed is gone. */
async function settled(page: Page, client: CDPSession): Promise<Memory> {
  await page.waitForTimeout(3000);
  await client.send('HeapProfiler.collectGarbage');
  await client.send('HeapProfiler.collectGarbage');
  const { usedSize } = await client.send('Runtime.getHeapUsage');
  const { metrics } = await client.send('Performance.getMetrics');
  return { heap: usedSize / 1024 / 1024, nodes: metrics.find(({ name }) => name === 'Nodes')?.value ?? 0 };
}

/** Memory at the start and after each quarter. Writes a few words and takes them back, over and over. */
async function hour(page: Page): Promise<readonly Memory[]> {
  await caretIn(page, ROWS / 2);
  const client = await page.context().newCDPSession(page);
  await client.send('Performance.enable');
  const quarters: Memory[] = [];
  for (let edit = 0; edit <= EDITS; edit++) {
    if (edit % (EDITS / 4) === 0) quarters.push(await settled(page, client));
    await page.keyboard.press(edit % 60 < 30 ? 'x' : 'Backspace');
  }
  return quarters;
}

await withBench((bench) =>
  withBrowser([], async (browser) => {
    const quarters = await onPage(bench, browser, { file: longFile(bench, ROWS), still: true }, hour);
    const [, first, , , last] = quarters;
    say(
      `${EDITS.toLocaleString('en')} edits in 12 sizes × ${ROWS} rows: ${quarters.map(({ heap }) => heap.toFixed(1)).join(', ')} MB in the page at the start and after each quarter (the last ${((last?.heap ?? Number.NaN) / (first?.heap ?? Number.NaN)).toFixed(2)} times the first quarter); nodes ${quarters.map(({ nodes }) => nodes).join(', ')}`,
    );
  }),
);
