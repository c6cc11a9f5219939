/** Bringing in an old pattern in a real browser: pasted words and a document, the review, the pattern that comes of it. */
import fs from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { EXAMPLES } from '../../app/command/examples.ts';
import { openPattern } from '../../app/services/files.ts';
import { bookletOf } from '../../core/print/edition.ts';
import { layOut } from '../../core/print/layout.ts';
import { writePages } from '../../core/print/pen.ts';
import { study } from '../../core/study/index.ts';
import { valuesOf } from '../../resources/examples/build.ts';
import { docx, heading, p, table } from '../intake/documents.ts';
import { resources } from '../print/tools.ts';
import { drawn } from './hands.ts';
import { openStudio, type Studio } from './harness.ts';

const axe = fs.readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
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

async function violations(): Promise<readonly string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { violations: found } = await (window as unknown as { axe: typeof import('axe-core') }).axe.run();
    return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`);
  });
}

const dialog = () => page.getByRole('dialog', { name: 'Bring in a pattern' });

// 23 chains leave 22 sc; the second row is one stitch off on purpose.
const WORDS = `Mudflat Cowl
by Ines Fallow

Sizes: S (M)
Gauge: 14 sc and 16 rows = 10 cm

Band
Ch 23 (27).
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (22 (26) sc)
Row 2: Ch 1, sc in each st across, turn. (23 (26) sc)
Row 3: Ch 1, hdc in each st across, turn. (22 (26) hdc)
`;

test('pasted words are shown with what is in doubt, and become an unsaved pattern', async () => {
  page = await studio.window();
  await page.getByRole('button', { name: 'Bring in a pattern…' }).click();
  await dialog().getByRole('textbox', { name: /paste/u }).fill(WORDS);
  await dialog().getByRole('button', { name: 'Read it' }).click();
  await dialog().getByText('3 of 4 rows are followed; 1 needs you.').waitFor();
  await dialog().getByText('Band, Row 2').waitFor();
  expect(await dialog().getByRole('radio', { name: /US/u }).isChecked()).toBe(true);
  expect(await violations()).toEqual([]);
  await dialog().getByRole('textbox', { name: 'Title' }).fill('Mudflat Cowl, again');
  await dialog().getByRole('button', { name: 'Make the pattern' }).click();
  await page.locator('.manuscript').getByText('Ch 1, hdc in each st across, turn.').waitFor();
  expect(await page.locator('.manuscript').textContent()).toContain('Mudflat Cowl, again');
  // In the review the doubt waits until it was looked at.
  await page.keyboard.press('Control+5');
  const waiting = page.getByRole('region', { name: /Brought in/u });
  await waiting.waitFor();
  expect(await violations()).toEqual([]);
  const looked = waiting.getByRole('button', { name: /^Looked at/u });
  for (let left = await looked.count(); left > 0; left--) await looked.first().click();
  await waiting.waitFor({ state: 'detached' });
}, 120_000);

test('a document of a word processor', async () => {
  const file = join(fs.mkdtempSync(join(tmpdir(), 'intake-')), 'lichen-coaster.docx');
  fs.writeFileSync(
    file,
    docx(
      [
        heading('Coaster'),
        table([
          ['Rnd', 'Instruction', 'Stitches'],
          ['1', '6 sc in magic ring', '6'],
          ['2', '2 sc in each st around', '12'],
        ]),
        p('Fasten off.'),
      ].join(''),
    ),
  );
  page = await studio.window();
  await page.getByRole('button', { name: 'Bring in a pattern…' }).click();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    dialog().getByRole('button', { name: 'Choose a file…' }).click(),
  ]);
  await chooser.setFiles(file);
  await dialog().getByText('2 of 2 rows are followed.').waitFor();
  await dialog().getByRole('button', { name: 'Make the pattern' }).click();
  await page.locator('.manuscript').getByText('2 sc in each st around').waitFor();
  fs.rmSync(file);
}, 120_000);

test('the pictures of a document come along, and are saved with the pattern', async () => {
  page = await studio.window();
  await page.getByRole('button', { name: 'Bring in a pattern…' }).click();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    dialog().getByRole('button', { name: 'Choose a file…' }).click(),
  ]);
  await chooser.setFiles(join(import.meta.dirname, '../intake/files/cardigan.docx'));
  await dialog().getByText('3 pictures come along.').waitFor();
  await dialog().getByRole('button', { name: 'Make the pattern' }).click();
  const images = page.locator('.manuscript img.photo-image');
  await images.nth(2).waitFor();
  await page.waitForFunction(() =>
    [...document.querySelectorAll<HTMLImageElement>('.manuscript img.photo-image')].every(
      ({ complete, naturalWidth }) => complete && naturalWidth > 0,
    ),
  );
  expect(await images.evaluateAll((all) => all.map((image) => (image as HTMLImageElement).alt))).toEqual([
    'The cardigan on a hanger, seen from the front',
    'Two rows of double crochet, close up',
    '',
  ]);
  expect(
    await images.evaluateAll((all) =>
      all.map((image) => [
        (image as HTMLImageElement).naturalWidth,
        (image as HTMLImageElement).naturalHeight,
      ]),
    ),
  ).toEqual([
    [80, 50],
    [60, 90],
    [50, 50],
  ]);
  await page.keyboard.press('Control+s');
  await page.getByLabel('Name of the file').fill('cardigan');
  await page.getByRole('dialog').getByRole('button', { name: 'Save here' }).click();
  await expect.poll(() => page.getByTestId('file-state').textContent()).toContain('· Saved');
  const opened = await openPattern(join(studio.folder, 'cardigan.turnchain'));
  if (!opened.ok) throw new Error(opened.error.message);
  expect(opened.media.size).toBe(3);
}, 120_000);

test('a PDF that was printed: its rows come back with their counts', async () => {
  const of = study(EXAMPLES['boxy-vest']!);
  const { booklet } = bookletOf(of, { terms: 'us', sizes: 'all' });
  const pages = layOut(booklet, { paper: 'a4', edition: 'standard' }, resources);
  const buffer = Buffer.from(await writePages(pages, booklet, resources));
  page = await studio.window();
  await page.getByRole('button', { name: 'Bring in a pattern…' }).click();
  const choose = async (name: string, bytes: Buffer) => {
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      dialog().getByRole('button', { name: 'Choose a file…' }).click(),
    ]);
    await chooser.setFiles({ name, mimeType: 'application/pdf', buffer: bytes });
  };
  await choose('damaged.pdf', buffer.subarray(0, 2000));
  await dialog().getByRole('alert').getByText('damaged or locked').waitFor();
  await choose('vest.pdf', buffer);
  await dialog()
    .getByText(/rows are followed/u)
    .waitFor();
  expect(await dialog().getByRole('textbox', { name: 'Title' }).inputValue()).toBe('Saltings Vest');
  await dialog().getByRole('button', { name: 'Make the pattern' }).click();
  const panels = page.locator('.piece').first();
  await panels.getByText('Rows 3–51').or(panels.getByText('Rows 4–51')).first().waitFor();
  await panels.locator('.row .words').first().scrollIntoViewIfNeeded();
  // The chain of each size that is in view: panel stitches and one to turn.
  const chains = valuesOf(of.sheet, 'panel stitches').map((stitches) => String(Number(stitches) + 1));
  await expect
    .poll(() => page.locator('.ledger-row').first().locator('.ledger-count').allInnerTexts())
    .toEqual(chains.slice(0, 8));
}, 120_000);

test('terms that the words do not show are asked for; what is no document is told', async () => {
  page = await studio.window();
  await page.getByRole('button', { name: 'Bring in a pattern…' }).click();
  await dialog().getByRole('textbox', { name: /paste/u }).fill('Cowl\nCh 24.\nRow 1: Dc in each ch across.');
  await dialog().getByRole('button', { name: 'Read it' }).click();
  const make = dialog().getByRole('button', { name: 'Make the pattern' });
  await make.waitFor();
  expect(await make.isDisabled()).toBe(true);
  expect(await violations()).toEqual([]);
  await dialog().getByRole('radio', { name: /UK/u }).check();
  await page.waitForFunction(() =>
    [...document.querySelectorAll('dialog button')].some(
      (b) => b.textContent === 'Make the pattern' && !(b as HTMLButtonElement).disabled,
    ),
  );
  await dialog().getByRole('button', { name: 'Another pattern' }).click();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    dialog().getByRole('button', { name: 'Choose a file…' }).click(),
  ]);
  await chooser.setFiles({
    name: 'x.docx',
    mimeType: 'application/octet-stream',
    buffer: Buffer.from('PK\u0003\u0004 nothing'),
  });
  await dialog().getByRole('alert').getByText('not a .docx document').waitFor();
}, 120_000);

test('words that were pasted are left only when the maker says so, however often Escape is pressed', async () => {
  page = await studio.window();
  await page.getByRole('button', { name: 'Bring in a pattern…' }).click();
  const paste = dialog().getByRole('textbox', { name: /paste/u });
  const asked = page.getByRole('dialog', { name: 'Leave what you are bringing in?' });
  await paste.fill(WORDS);
  // A browser closes a dialog on its own when Escape is pressed again and again.
  for (let times = 0; times < 5; times++) await page.keyboard.press('Escape');
  await drawn(page);
  if (!(await asked.isVisible())) await page.keyboard.press('Escape');
  await asked.getByRole('button', { name: 'Go on with it' }).click();
  await asked.waitFor({ state: 'detached' });
  expect(await paste.inputValue()).toBe(WORDS);
  await dialog().getByRole('button', { name: 'Read it' }).click();
  await dialog().getByRole('textbox', { name: 'Title' }).fill('Mudflat Cowl, again');
  await dialog().getByRole('button', { name: 'Cancel' }).click();
  await asked.getByRole('button', { name: 'Go on with it' }).click();
  expect(await dialog().getByRole('textbox', { name: 'Title' }).inputValue()).toBe('Mudflat Cowl, again');
  await page.keyboard.press('Escape');
  await asked.getByRole('button', { name: 'Leave it' }).click();
  await dialog().waitFor({ state: 'detached' });
  // Nothing was brought yet: nothing is asked.
  await page.getByRole('button', { name: 'Bring in a pattern…' }).click();
  await paste.waitFor();
  await page.keyboard.press('Escape');
  await dialog().waitFor({ state: 'detached' });
  expect(await asked.count()).toBe(0);
}, 120_000);
