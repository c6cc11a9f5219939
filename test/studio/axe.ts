/** What axe-core (rules of WCAG 2.2 AA among them) finds on a page as it is. */
import fs from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const axe = fs.readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Each violation with where it stands. */
export async function violations(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { violations: found } = await (window as unknown as { axe: typeof import('axe-core') }).axe.run();
    return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`);
  });
}
