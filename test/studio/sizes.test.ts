/** The place "Sizes" in a real browser: the grid by keys and mouse, the clipboard, sentences, forms, access. */
import fs from 'node:fs';
import { createRequire } from 'node:module';
import type { Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { exampleIn, openStudio, type Studio } from './harness.ts';

const axe = fs.readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
let studio: Studio;
let page: Page;

beforeAll(async () => {
  studio = await openStudio({ page: { permissions: ['clipboard-read', 'clipboard-write'] } });
});

afterAll(async () => {
  const { complaints } = studio;
  await studio.close();
  expect(complaints).toEqual([]);
});

beforeEach(async () => {
  page = await exampleIn(studio, /vest/i);
  await page.getByRole('button', { name: 'cm', exact: true }).click();
  await page.keyboard.press('Control+2');
  await cell('bust', 'XS').waitFor();
});

afterEach(() => page.close());

const grid = () => page.getByRole('grid');
const rowOf = (line: string) =>
  grid()
    .getByRole('row')
    .filter({ has: page.locator(`th[aria-label^="${line}, "]`) });
const sizes = () => page.locator('.size-head button > span:first-child').allTextContents();
const LABELS = ['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X', '6X'];
const cell = (line: string, size: string) => rowOf(line).getByRole('gridcell').nth(LABELS.indexOf(size));
const value = (line: string, size: string) => cell(line, size).locator('.cell-value').textContent();
const eventually = (read: () => Promise<unknown>) => expect.poll(read, { timeout: 45_000 });
const told = () => page.locator('.sizes-foot [role="status"]').textContent();
const focused = () => page.evaluate(() => document.activeElement?.getAttribute('data-cell'));

test('typing over a cell is worked through at once, undone in one step, and cannot hold what is no amount', async () => {
  const before = await value('panel stitches', 'M');
  await cell('bust', 'M').click();
  await page.keyboard.type('110 cm');
  await page.keyboard.press('Enter');
  await eventually(() => value('bust', 'M')).toBe('110 cm');
  await eventually(() => value('panel stitches', 'M')).not.toBe(before);
  expect(await cell('bust', 'M').textContent()).toContain('typed over the chart');
  await page.keyboard.press('Control+z');
  await eventually(() => value('panel stitches', 'M')).toBe(before);
  await cell('bust', 'M').click();
  await page.keyboard.type('wide');
  await page.keyboard.press('Enter');
  expect(await told()).toContain('“wide” is not an amount');
  await page.keyboard.press('Escape');
  expect(await value('bust', 'M')).not.toContain('wide');
});

test('keys lead through the grid, ranges copy and paste as tables, and fill', async () => {
  await cell('ease', 'S').click();
  await page.keyboard.type('10 cm');
  await page.keyboard.press('Tab');
  await page.keyboard.type('12');
  await page.keyboard.press('Enter');
  await eventually(() => value('ease', 'M')).toBe('12 cm');
  await cell('ease', 'S').click();
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('Control+c');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe('10 cm\t12 cm');
  await cell('ease', 'L').click();
  await page.keyboard.press('Control+v');
  await eventually(() => value('ease', 'XL')).toBe('12 cm');
  expect(await told()).toBe('2 cells were filled.');
  await page.evaluate(() => navigator.clipboard.writeText('7 cm\tlots\n1\t2'));
  await page.keyboard.press('Control+v');
  await eventually(() => value('ease', 'L')).toBe('7 cm');
  expect(await value('ease', 'XL')).toBe('12 cm');
  expect(await told()).toContain('“lots” for ease, XL');
  await cell('ease', 'L').click();
  for (let i = 0; i < 2; i++) await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('Control+r');
  await eventually(() => value('ease', '2X')).toBe('7 cm');
  await page.keyboard.press('Delete');
  await eventually(() => value('ease', 'XL')).toContain('–');
  await page.keyboard.press('Control+z');
  await eventually(() => value('ease', 'XL')).toBe('7 cm');
});

/** Presses in one cell and lets go in another. */
async function drag(from: Locator, to: Locator): Promise<void> {
  const [a, b] = [(await from.boundingBox())!, (await to.boundingBox())!];
  await page.mouse.move(a.x + a.width / 2, a.y + 20);
  await page.mouse.down();
  await page.mouse.move((a.x + b.x) / 2 + a.width / 2, a.y + 20, { steps: 3 });
  await page.mouse.move(b.x + b.width / 2, b.y + 20, { steps: 3 });
  await page.mouse.up();
}

const chosen = () => page.locator('td[aria-selected="true"]').count();

test('a range is dragged over with the mouse, filled to the right, cut, and put down elsewhere', async () => {
  await cell('ease', 'XS').click();
  await page.keyboard.type('9 cm');
  await page.keyboard.press('Enter');
  await drag(cell('ease', 'XS'), cell('ease', 'M'));
  expect(await chosen()).toBe(3);
  await page.getByRole('button', { name: 'Fill right' }).click();
  await eventually(() => value('ease', 'M')).toBe('9 cm');
  expect(await value('ease', 'S')).toBe('9 cm');
  // Over two lines, from the lower right to the upper left.
  await drag(cell('ease', 'M'), cell('armhole', 'S'));
  expect(await chosen()).toBe(4);
  const armhole = await value('armhole', 'M');
  await drag(cell('ease', 'S'), cell('ease', 'M'));
  await page.keyboard.press('Control+x');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe('9 cm\t9 cm');
  await eventually(() => value('ease', 'S')).toContain('–');
  expect(await told()).toBe('2 cells emptied.');
  expect(await value('armhole', 'M')).toBe(armhole);
  await cell('ease', '2X').click();
  await page.keyboard.press('Control+v');
  await eventually(() => value('ease', '3X')).toBe('9 cm');
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await eventually(() => value('ease', 'S')).toBe('9 cm');
});

test('what a spreadsheet copies is pasted cell by cell: quoted, with decimal commas, ended by a line end', async () => {
  await cell('ease', 'XS').click();
  // As spreadsheets put a range on the clipboard: a table for those who read HTML, and plain text with tabs.
  await page.evaluate(() =>
    navigator.clipboard.write([
      new ClipboardItem({
        'text/html': new Blob(
          ['<table><tr><td>7,5</td><td>8 1/2</td><td>"9 cm"</td></tr><tr><td>50</td></tr></table>'],
          { type: 'text/html' },
        ),
        'text/plain': new Blob(['7,5\t8 1/2\t"9 cm"\r\n50\t\t\r\n'], { type: 'text/plain' }),
      }),
    ]),
  );
  const worked = await value('finished chest', 'S');
  await page.keyboard.press('Control+v');
  await eventually(() => value('ease', 'XS')).toBe('7.5 cm');
  expect(await value('ease', 'S')).toBe('8.5 cm');
  expect(await value('ease', 'M')).toBe('9 cm');
  // The line below is worked out: what falls on it is left, and told.
  expect(await told()).toContain('3 cells were filled.');
  await eventually(() => value('finished chest', 'S')).not.toBe(worked);
});

test('by keyboard alone: from a cell to the line’s head, its fields and back; lines and sizes move', async () => {
  await cell('bust', 'XS').click();
  await page.keyboard.press('ArrowLeft');
  expect(await focused()).toBe('0 -1');
  await page.keyboard.press('F2');
  await page.keyboard.press('End');
  await page.keyboard.type(' girth');
  await page.keyboard.press('Enter');
  await eventually(() => rowOf('finished chest').locator('.sentence').textContent()).toContain(
    'bust girth + ease',
  );
  await page.keyboard.press('Escape');
  expect(await focused()).toBe('0 -1');
  await page.keyboard.press('Alt+ArrowDown');
  await eventually(focused).toBe('1 -1');
  expect(await told()).toContain('bust girth is now 2 of');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Alt+ArrowRight');
  await eventually(sizes).toEqual(['S', 'XS', ...LABELS.slice(2)]);
  await page.keyboard.press('Control+z');
  await eventually(sizes).toEqual(LABELS);
});

test.each([
  ['Control+ArrowRight', '1 4', `1 ${LABELS.length - 1}`],
  ['Control+ArrowLeft', '1 4', '1 0'],
  ['Control+ArrowUp', '2 4', '0 4'],
  ['Control+End', '1 4', 'the last cell'],
  ['Control+Home', '1 4', '-1 -1'],
  ['Control+Home', '2 -1', '-1 -1'],
])('%s goes to the end of the sheet that it points to', async (key, from, to) => {
  await page.locator(`[data-cell="${from}"]`).focus();
  await page.keyboard.press(key);
  const last = await page.locator('td[data-cell]').last().getAttribute('data-cell');
  await eventually(focused).toBe(to === 'the last cell' ? last : to);
});

test('a formula is typed with names offered and mistakes told before it is given', async () => {
  await rowOf('finished chest')
    .getByRole('button', { name: /^Formula/ })
    .click();
  await page.keyboard.press('Control+a');
  await page.keyboard.type('bust + eas');
  await page.getByRole('option', { name: 'ease', exact: true }).waitFor();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Tab');
  await page.keyboard.type(' + bsut');
  await page.locator('.trial.error', { hasText: 'bsut' }).waitFor();
  for (let i = 0; i < 7; i++) await page.keyboard.press('Backspace');
  await page.keyboard.type(' + 2 cm');
  await page.locator('.trial', { hasText: 'Would come to' }).waitFor();
  await page.keyboard.press('Enter');
  await eventually(() => rowOf('finished chest').locator('.sentence').textContent()).toContain(
    'bust + ease + 2 cm',
  );
});

test('a cell of a line that is alike for all sizes tells that only one size was changed', async () => {
  await rowOf('ease')
    .getByRole('combobox', { name: /^Alike or size by size/ })
    .selectOption('all');
  const before = await value('ease', 'S');
  await cell('ease', 'XS').click();
  await page.keyboard.type('9 cm');
  await page.keyboard.press('Enter');
  await eventually(() => value('ease', 'XS')).toBe('9 cm');
  expect(await value('ease', 'S')).toBe(before);
  expect(await told()).toContain('“ease” was alike for all sizes. Only XS was changed');
  // It is not told of what comes after.
  await cell('ease', 'S').click();
  await page.keyboard.type('8 cm');
  await page.keyboard.press('Enter');
  await eventually(told).toBe('');
});

test('a line is added, named and removed; who names a line is said before it goes', async () => {
  await page.getByLabel('Add a line').selectOption('typed');
  await page.getByRole('button', { name: 'Add', exact: true }).click();
  await page.keyboard.type('strap');
  await page.keyboard.press('Enter');
  await eventually(() => rowOf('strap').count()).toBe(1);
  // Nobody was in the sheet before: it is the last.
  expect(await page.locator('th.line-head').last().getAttribute('data-line')).toBe(
    await rowOf('strap').locator('th').first().getAttribute('data-line'),
  );
  await page.keyboard.press('Escape');
  await page.keyboard.press('Delete');
  const dialog = page.getByRole('dialog');
  expect(await dialog.textContent()).toContain('Nothing else names it.');
  await dialog.getByRole('button', { name: 'Remove' }).click();
  await eventually(() => rowOf('strap').count()).toBe(0);
  await cell('bust', 'XS').click();
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Delete');
  expect(await dialog.textContent()).toContain('the line “finished chest”');
  await dialog.getByRole('button', { name: 'Keep it' }).click();
});

test.each([
  ['a line', '0 -1'],
  ['the first size', '-1 0'],
  ['the last size', `-1 ${LABELS.length - 1}`],
])('the focus stays in the sheet when %s is removed', async (_, head) => {
  await page.locator(`[data-cell="${head}"]`).focus();
  await page.keyboard.press('Delete');
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Remove' }).click();
  await dialog.waitFor({ state: 'detached' });
  await eventually(focused).toMatch(/^-?\d+ -?\d+$/);
});

test('a line of rows is right as soon as its length is given', async () => {
  await page.getByLabel('Add a line').selectOption('rows');
  await page.getByRole('button', { name: 'Add', exact: true }).click();
  await page.keyboard.type('strap rows');
  await page.keyboard.press('Enter');
  await rowOf('strap rows')
    .getByRole('button', { name: /^Width or length/ })
    .click();
  await page.keyboard.type('20 in');
  await page.keyboard.press('Enter');
  // The vest's gauge is 16 rows in 4 in.
  await eventually(() => value('strap rows', 'M')).toBe('80');
  expect(await rowOf('strap rows').locator('.item-findings').count()).toBe(0);
});

test('sizes come from a chart whose source is told, and are changed in a form', async () => {
  await page.getByRole('button', { name: 'Add sizes…' }).click();
  await page.getByLabel('From', { exact: true }).selectOption('baby');
  expect(await page.getByRole('dialog').textContent()).toContain('Source: Craft Yarn Council.');
  await page.getByLabel('6mo', { exact: true }).check();
  await page.getByRole('button', { name: 'Add 1 size' }).click();
  await eventually(sizes).toEqual([...LABELS, '6mo']);
  await page.locator('.size-head button').last().click();
  await page.getByLabel('Label').fill('6 months');
  await page.getByRole('button', { name: 'Done' }).click();
  await eventually(sizes).toEqual([...LABELS, '6 months']);
});

describe('access', () => {
  test.each(['light', 'dark'] as const)(
    'axe finds nothing in the %s theme, formula and form open too',
    async (theme) => {
      await page.evaluate((name) => {
        document.documentElement.dataset.theme = name;
      }, theme);
      await page.evaluate(axe);
      const violations = () =>
        page.evaluate(async () => {
          const { violations } = await (window as unknown as { axe: typeof import('axe-core') }).axe.run();
          return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`);
        });
      expect(await violations()).toEqual([]);
      await rowOf('bust').getByRole('button', { name: 'More about bust' }).click();
      await rowOf('finished chest')
        .getByRole('button', { name: /^Formula/ })
        .click();
      await page.keyboard.type('zzz');
      await page.locator('.trial.error').waitFor();
      expect(await violations()).toEqual([]);
      await page.keyboard.press('Enter');
      await page.locator('.slot mark.error', { hasText: 'zzz' }).waitFor();
      await page.locator('.size-head button').first().click();
      expect(await violations()).toEqual([]);
    },
  );
});

test('a finding of a line is gone to from the review, once, and mended there', async () => {
  await rowOf('finished chest')
    .getByRole('button', { name: /^Formula/ })
    .click();
  await page.keyboard.type('bust + eaes');
  await page.keyboard.press('Enter');
  await rowOf('finished chest').locator('mark.error').waitFor();
  await page.keyboard.press('Control+5');
  await page
    .getByRole('button', { name: /^Go there: .*eaes/ })
    .first()
    .click();
  await eventually(focused).toBe(await rowOf('finished chest').locator('th').getAttribute('data-cell'));
  await page.keyboard.press('Control+1');
  await page.keyboard.press('Control+2');
  await grid().waitFor();
  expect(await focused()).toBeNull();
  await rowOf('finished chest').getByRole('button', { name: 'Write "ease"' }).click();
  await eventually(() => rowOf('finished chest').locator('mark.error').count()).toBe(0);
  expect(await rowOf('finished chest').locator('.sentence').textContent()).toContain('bust + ease');
});

test('the keys of filling are taken in the place Sizes only, wherever the focus is there', async () => {
  await page.evaluate(() => {
    const taken: boolean[] = [];
    Object.assign(window, { taken });
    // After the studio's own listener.
    window.addEventListener('keydown', (event) => {
      if (event.ctrlKey && 'rd'.includes(event.key)) taken.push(event.defaultPrevented);
      event.preventDefault();
    });
  });
  const pressed = async () => {
    await page.keyboard.press('Control+r');
    await page.keyboard.press('Control+d');
    return page.evaluate(() => (window as unknown as { taken: boolean[] }).taken.splice(0));
  };
  await grid().locator('td').first().click();
  expect(await pressed()).toEqual([true, true]);
  await page.getByLabel('Add a line').focus();
  expect(await pressed()).toEqual([true, true]);
  await page.getByRole('button', { name: 'Add sizes…' }).click();
  const before = await grid().textContent();
  expect(await pressed()).toEqual([true, true]);
  expect(await grid().textContent()).toBe(before);
  await page.getByRole('dialog').getByRole('button', { name: 'Cancel' }).click();
  for (const place of ['1', '3', '4', '5']) {
    await page.keyboard.press(`Control+${place}`);
    await page.locator('.sizes-tools').waitFor({ state: 'detached' });
    expect(await pressed()).toEqual([false, false]);
  }
});
