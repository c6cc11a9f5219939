/**
 * The place "Drawings" in a real browser: schematics of the pattern on the desk, for all sizes and for one, nested,
 * larger, in both units; kept up with the text; saved as a file; and the painter's text as a browser reads it.
 */
import fs from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { type Scene, words } from '../../core/drawing/scene.ts';
import { paintSvg } from '../../core/drawing/svg.ts';
import { exampleIn, openStudio, type Studio } from './harness.ts';

let studio: Studio;
let page: Page;

beforeAll(async () => {
  studio = await openStudio();
}, 240_000);
afterAll(async () => {
  const { complaints } = studio;
  await studio.close();
  expect(complaints).toEqual([]);
});
beforeEach(async () => {
  page = await exampleIn(studio, /hat/i);
  await page.keyboard.press('Control+4');
  await page.locator('.schematic svg').first().waitFor();
});
afterEach(() => page.close());

const cells = () => page.locator('.schematic td.numbers').allTextContents();
const eventually = (read: () => Promise<unknown>) => expect.poll(read, { timeout: 45_000 });
const plain = async () => (await cells()).map((text) => text.replaceAll('\u00A0', ' '));

test('shows each size, the outlines of all, either units, and follows the zoom', async () => {
  // Half of 28, 32, 34 … stitches round at 16 to 10 cm; see the hat's own sheet.
  expect((await plain())[0]).toMatch(/^17\.5 \(20, 21\.5, 24, 25, 26\.5, 29\) cm/);
  await page.getByRole('combobox', { name: 'Sizes', exact: true }).selectOption({ label: 'Size Toddler' });
  await eventually(plain).toEqual(['24 cm / 9¼ in', expect.stringMatching(/^20 cm/)]);
  await page.getByRole('button', { name: 'in', exact: true }).click();
  await eventually(async () => (await plain())[0]).toBe('9¼ in / 24 cm');
  await page.getByRole('combobox', { name: 'Sizes', exact: true }).selectOption({ label: 'All sizes' });
  await page.getByRole('checkbox', { name: 'Outlines of all sizes' }).check();
  // Six sizes are drawn about the one in focus.
  await eventually(() => page.locator('.schematic [data-name="other size"]').count()).toBe(6);
  await page.getByRole('combobox', { name: 'Size of the drawings' }).selectOption({ label: '100 %' });
  const width = () => page.locator('.schematic svg').evaluate((svg) => svg.getBoundingClientRect().width);
  const before = await width();
  await page.getByRole('combobox', { name: 'Size of the drawings' }).selectOption({ label: '200 %' });
  await eventually(async () => Math.round(((await width()) / before) * 100)).toBe(200);
});

test('in a narrow window a drawing is as wide as there is room, its letters still to be read', async () => {
  const drawing = page.locator('.schematic svg').first();
  await drawing.waitFor();
  await page.setViewportSize({ width: 420, height: 800 });
  const frame = page.locator('.schematic .drawing').first();
  await eventually(() => frame.evaluate((box) => box.scrollWidth <= box.clientWidth)).toBe(true);
  const letter = () =>
    drawing
      .locator('text')
      .first()
      .evaluate((text) => text.getBoundingClientRect().height);
  await eventually(async () => (await letter()) >= 9).toBe(true);
  await page.getByRole('combobox', { name: 'Size of the drawings' }).selectOption({ label: '200 %' });
  await eventually(() => frame.evaluate((box) => box.scrollWidth > box.clientWidth)).toBe(true);
});

test('tells in words what it shows', async () => {
  const drawing = page.getByRole('img', { name: 'Hat' });
  await drawing.waitFor();
  const told = await drawing.evaluate(
    (svg) => document.getElementById(svg.getAttribute('aria-describedby')!)!.textContent,
  );
  expect(told).toMatch(/^Schematic of Hat\. A, Width, lying flat: 17\.5 \(20, /);
});

test('is drawn again when the text changes, and only says so when it is in front', async () => {
  await page.keyboard.press('Control+1');
  const last = page.locator('.piece .words', { hasText: 'FPtr around next st' }).last();
  await last.click();
  await page.keyboard.press('End');
  await page.keyboard.press('Enter');
  await page.keyboard.type('1 tr in each st around, join with ss in first tr.');
  await page.keyboard.press('Control+4');
  // One round more, and with it 0.8 cm: 15 → 16 cm in the smallest size.
  await eventually(async () => (await plain())[1]).toMatch(/^16 \(/);
});

test('is saved as a file', async () => {
  await page.getByRole('button', { name: 'Save the drawing…: schematic of Hat' }).click();
  await page.getByRole('dialog').waitFor();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^(Choose|Use|Take)/ })
    .click();
  const path = join(studio.folder, 'skerry-hat-schematic-hat-uk-all-sizes.svg');
  await eventually(async () => fs.existsSync(path)).toBe(true);
  expect(fs.readFileSync(path, 'utf8')).toContain('<style>');
});

test('the painter’s text is well-formed whatever was typed, as a browser reads it', async () => {
  const typed = ['<script>alert(1)</script>', '"&\'', ']]>', '\u0000\u0007', '\uD800x', 'a\uFFFEb', '&amp;'];
  for (const text of typed) {
    const scene: Scene = { width: 10, height: 10, title: text, alt: text, shapes: [words(text, 0, 0)] };
    const read = await page.evaluate(
      (svg) => {
        const { documentElement } = new DOMParser().parseFromString(svg, 'image/svg+xml');
        return [documentElement.nodeName, documentElement.querySelector('text')?.textContent ?? null];
      },
      paintSvg(scene, { id: text, standalone: false }),
    );
    // biome-ignore lint/suspicious/noControlCharactersInRegex: what XML forbids is left out
    expect(read).toEqual(['svg', text.replace(/[\u0000\u0007\uD800\uFFFE]/g, '')]);
  }
});
