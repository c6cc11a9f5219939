/** The manuscript in a real browser: typing, findings and their fixes, figures, composition, undoing, terms. */
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { caretAtEnd } from './hands.ts';
import { exampleIn, openStudio, type Studio } from './harness.ts';

let studio: Studio;
let page: Page;

beforeAll(async () => {
  studio = await openStudio();
}, 180_000);
beforeEach(async () => {
  page = await exampleIn(studio, /vest/i);
});
afterEach(async () => {
  await page.close();
  expect(studio.complaints).toEqual([]);
});
afterAll(() => studio.close());

const words = (at: number) => page.locator('.row .words').nth(at);
const label = (at: number) => page.locator('.row .label-words').nth(at);

/** Waits for what would come of itself, where a test holds that nothing does. */
const settled = () =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 100))));

const endOf = (at: number): Promise<void> => caretAtEnd(words(at));

/** A new row under the first two of the first piece, with these words. */
async function newRow(text: string): Promise<void> {
  await endOf(1);
  await page.keyboard.press('Enter');
  await page.keyboard.type(text);
}

/** Undoes step by step until something is so: how many steps typing makes depends on the pauses in it. */
async function undoUntil(isSo: () => Promise<boolean>): Promise<void> {
  for (let i = 0; i < 12 && !(await isSo()); i++) await page.keyboard.press('Control+z');
  expect(await isSo()).toBe(true);
}

const selection = () => page.evaluate(() => String(getSelection()));
const eventually = (read: () => Promise<string | null>) => expect.poll(read, { timeout: 45_000 });

describe('typing', () => {
  test('Enter begins a row, whose label and the labels behind it are worked out', async () => {
    await newRow('Ch 1, sc in each st across, turn.');
    await eventually(() => label(2).textContent()).toBe('Row 2 (RS)');
    expect(await label(3).textContent()).toBe('Row 3 (WS)');
    expect(await words(2).textContent()).toBe('Ch 1, sc in each st across, turn.');
  });

  test('a typed label goes, and undoing brings it back', async () => {
    await newRow('Rnd 2: Ch 1, turn.');
    expect(await words(2).textContent()).toBe('Ch 1, turn.');
    await eventually(() => label(2).textContent()).toContain('Rnd');
    await undoUntil(async () => (await words(2).textContent()) === 'Rnd 2:');
  });

  test('the label of several rows becomes a repeat with Enter, and undoing brings it back', async () => {
    const before = await page.locator('.repeat').count();
    await newRow('Rows 2-5: Ch 1, sc in each st across, turn.');
    await page.keyboard.press('Enter');
    await page.keyboard.type('Ch 1, turn.');
    expect(await words(2).textContent()).toBe('Ch 1, sc in each st across, turn.');
    expect(await page.locator('.repeat').count()).toBe(before + 1);
    await eventually(() => label(3).textContent()).toContain('6');
    await undoUntil(async () => (await words(2).textContent())?.startsWith('Rows 2-5: ') ?? false);
    expect(await page.locator('.repeat').count()).toBe(before);
  });

  test.each([
    ['Enter takes a line that is only begun', 'Ch =panel', 'Enter', 'panel stitches'],
    ['a full stop ends one that is typed out', 'Ch =panel stitches + 1', '.', 'panel stitches + 1'],
    ['Enter ends one that is typed out', 'Ch =panel stitches + 1', 'Enter', 'panel stitches + 1'],
  ])('behind “=”, %s', async (_, typed, key, expression) => {
    await newRow(typed);
    await page.keyboard.press(key);
    const figure = words(2).locator('.figure');
    await figure.waitFor();
    await eventually(() => figure.textContent()).toMatch(/^\d+$/);
    await figure.click();
    await page.keyboard.press('Enter');
    await eventually(() => page.locator('.figure-form').getByRole('combobox').inputValue()).toBe(expression);
  });

  test('words that could follow are accepted by Tab, and Enter does not accept what nobody chose', async () => {
    await newRow('Ch 1, hd');
    const list = page.getByRole('listbox');
    await list.getByRole('option', { name: /^hdc/ }).first().waitFor();
    await page.keyboard.press('ArrowDown');
    await eventually(() => page.getByRole('textbox').getAttribute('aria-activedescendant')).not.toBeNull();
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Escape');
    await list.waitFor({ state: 'detached' });
    await page.keyboard.press('Backspace');
    await page.keyboard.type('d');
    await list.waitFor();
    await page.keyboard.press('Tab');
    expect(await words(2).textContent()).toBe('Ch 1, hdc');
    await page.keyboard.type(', 2 hd');
    await list.waitFor();
    await page.keyboard.press('Enter');
    expect(await words(2).textContent()).toBe('Ch 1, hdc, 2 hd');
    expect(await words(3).textContent()).toBe('');
  });

  test('Escape, then Tab leaves the manuscript', async () => {
    await endOf(1);
    await page.keyboard.press('Escape');
    await page.keyboard.press('Tab');
    const inside = () => page.evaluate(() => document.activeElement?.classList.contains('manuscript'));
    expect(await inside()).toBe(false);
    // Keys on the buttons among the texts are the buttons' own.
    const rows = await page.locator('.row').count();
    const special = page.getByRole('button', { name: 'Add a special stitch' });
    await special.focus();
    await page.keyboard.press('Enter');
    expect(await page.locator('.row').count()).toBe(rows);
    expect(await page.locator('.special').count()).toBe(2);
    expect(await inside()).toBe(true);
  });
});

describe('what cannot be done', () => {
  test('is told where it is seen', async () => {
    await endOf(1);
    for (let i = 0; i < 4; i++) await page.keyboard.press('Control+a');
    await page.keyboard.press('Delete');
    const told = page.getByText('The selection reaches over more than one part of the pattern.');
    await told.waitFor();
    expect((await told.boundingBox())!.width).toBeGreaterThan(100);
  });
});

describe('findings', () => {
  test('a mistake is marked at its words, told by F8, and mended by its fix; undoing brings it back', async () => {
    await newRow('Ch 1, scc in each st across, turn.');
    await page.locator('mark.error', { hasText: /^scc$/ }).waitFor();
    await page.keyboard.press('Home');
    await page.keyboard.press('F8');
    expect(await selection()).toBe('scc');
    const panel = page.getByRole('complementary', { name: 'Finding at the caret' });
    expect(await panel.textContent()).toContain('Mistake.');
    expect(await page.getByRole('status').first().textContent()).toContain('scc');
    await page.keyboard.press('Control+.');
    expect(await words(2).textContent()).toBe('Ch 1, sc in each st across, turn.');
    await expect.poll(() => page.locator('mark', { hasText: 'scc' }).count()).toBe(0);
    await page.keyboard.press('Control+z');
    expect(await words(2).textContent()).toBe('Ch 1, scc in each st across, turn.');
  });

  test('marks move with their words, and a fix goes where the words are today', async () => {
    await newRow('scc in each st across, turn.');
    await page.locator('mark.error', { hasText: /^scc$/ }).waitFor();
    await page.keyboard.press('Home');
    await page.keyboard.type('Ch 1, ');
    await page.locator('mark', { hasText: /^scc$/ }).click();
    await page.getByRole('button', { name: /Write sc/ }).click();
    expect(await words(2).textContent()).toBe('Ch 1, sc in each st across, turn.');
  });
});

describe('figures', () => {
  test('a figure is put in by key, shows its value, and is changed by Enter', async () => {
    await newRow('Ch 1, sc in next  sts.');
    for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('Control+Enter');
    await page.getByRole('combobox').fill('panel stitches - 2');
    await page.locator('.figure-form .size-values').getByText('84').waitFor();
    await page.keyboard.press('Enter');
    await eventually(() => words(2).textContent()).toBe('Ch 1, sc in next 84 sts.');
    await page.keyboard.press('Home');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.getByRole('combobox').fill('panel stitches − 4');
    await page.keyboard.press('Enter');
    await eventually(() => words(2).textContent()).toBe('Ch 1, sc in next 82 sts.');
  });

  test('a figure is put in by an equals sign and the beginning of a line’s name', async () => {
    await newRow('Sc in next =panel s');
    await page.getByRole('option', { name: /panel stitches/ }).waitFor();
    await page.keyboard.press('Tab');
    await page.keyboard.type(' sts.');
    await eventually(() => words(2).textContent()).toBe('Sc in next 86 sts.');
  });

  test('an expression that cannot be read says why before it is put in', async () => {
    await newRow('Sc in next ');
    await page.keyboard.press('Control+Enter');
    await page.getByRole('combobox').fill('no such line');
    await page.locator('.trial.problem').waitFor();
    expect(await page.locator('.trial.problem').textContent()).toContain('no such line');
    await page.keyboard.press('Escape');
  });
});

describe('one undoing', () => {
  test('goes back over text, a form and text again', async () => {
    await newRow('Ch 1, turn.');
    await page.locator('.repeat .sentence').first().click();
    const before = await page.locator('.repeat .sentence').first().textContent();
    await page.getByLabel('How long').selectOption('times');
    await page.getByRole('button', { name: 'Done' }).click();
    await eventually(() => page.locator('.repeat .sentence').first().textContent()).not.toBe(before);
    await endOf(0);
    await page.keyboard.type(' Mark the row.');
    await undoUntil(async () => !(await words(0).textContent())!.includes('M'));
    const sentence = () => page.locator('.repeat .sentence').first().textContent();
    await page.keyboard.press('Control+z');
    await eventually(sentence).toBe(before);
    expect(await words(2).textContent()).toBe('Ch 1, turn.');
    await undoUntil(async () => (await words(2).textContent()) !== 'Ch 1, turn.');
    for (let i = 0; i < 24; i++) await page.keyboard.press('Control+Shift+z');
    await eventually(() => words(0).textContent()).toContain('Mark the row.');
    expect(await words(2).textContent()).toBe('Ch 1, turn.');
    await eventually(sentence).not.toBe(before);
  });

  test('tells of what another place shows', async () => {
    await endOf(0);
    await page.keyboard.type(' Turn.');
    await page.keyboard.press('Control+2');
    await page.locator('.sizes').waitFor();
    await page.keyboard.press('Control+z');
    await page.getByText('Undone in Write.').waitFor();
    await page.keyboard.press('Control+Shift+z');
    await page.getByText('Done again in Write.').waitFor();
    await page.keyboard.press('Control+1');
    expect(await words(0).textContent()).toContain('Turn.');
    await page.keyboard.press('Control+z');
    await eventually(() => words(0).textContent()).not.toContain('Turn.');
    expect(await page.getByText('Undone in Write.').count()).toBe(0);
  });

  test('tells in the manuscript too what another place shows', async () => {
    await page.keyboard.press('Control+2');
    await page.getByLabel('Sample in size').selectOption({ label: 'XL' });
    await page.keyboard.press('Control+1');
    await endOf(0);
    await page.keyboard.press('Control+z');
    await page.getByText('Undone in Sizes.').waitFor();
    await page.keyboard.press('Control+y');
    await page.getByText('Done again in Sizes.').waitFor();
    await page.keyboard.type(' Turn.');
    await page.keyboard.press('Control+z');
    await page.getByText('Done again in Sizes.').waitFor({ state: 'detached' });
  });
});

test('what is told of a passage that was pasted goes when the passage goes', async () => {
  await endOf(1);
  await page.locator('.manuscript').evaluate((manuscript) => {
    const data = new DataTransfer();
    data.setData('text/plain', 'Row 8: Ch 1, sc in each st across, turn.\nRow 9: Ch 1, turn.');
    manuscript.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
    );
  });
  await page.locator('.paste-note').waitFor();
  await undoUntil(async () => (await page.locator('.paste-note').count()) === 0);
  expect(await page.locator('.row .words').allTextContents()).not.toContain('Ch 1, turn.');
});

describe('an input method', () => {
  test('composes undisturbed: nothing in its paragraph changes until it is done', async () => {
    await newRow('scc in each st across, ');
    await page.locator('mark.error', { hasText: /^scc$/ }).waitFor();
    const client = await page.context().newCDPSession(page);
    await page.evaluate(() => {
      const row = getSelection()!.anchorNode!.parentElement!.closest('.text')!;
      const seen: string[] = [];
      Object.assign(window, { seen });
      new MutationObserver((records) => {
        for (const { type, target } of records)
          seen.push(`${type} ${target instanceof Element ? target.className : 'text'}`);
      }).observe(row, { subtree: true, childList: true, attributes: true, characterData: true });
    });
    await client.send('Input.imeSetComposition', { text: 't', selectionStart: 1, selectionEnd: 1 });
    await client.send('Input.imeSetComposition', { text: 'tu', selectionStart: 2, selectionEnd: 2 });
    // A report of what was typed so far comes meanwhile, and waits.
    await page.waitForTimeout(800);
    await client.send('Input.imeSetComposition', { text: 'tur', selectionStart: 3, selectionEnd: 3 });
    await page.waitForTimeout(300);
    const seen = await page.evaluate(() => (window as unknown as { seen: string[] }).seen);
    expect(seen.filter((change) => change !== 'characterData text').length).toBeLessThanOrEqual(1);
    await client.send('Input.insertText', { text: 'turn' });
    await page.keyboard.type('.');
    await eventually(() => words(2).textContent()).toBe('scc in each st across, turn.');
    await undoUntil(async () => !(await words(2).textContent())!.startsWith('scc in each st across, t'));
  });
});

describe('the other market’s terms', () => {
  test('are shown over the words, which stay as they are and cannot be typed in', async () => {
    const row = words(1);
    const authored = await row.textContent();
    await page.getByRole('button', { name: 'UK terms' }).click();
    await page.locator('.row .converted').first().waitFor({ state: 'attached' });
    expect(await row.textContent()).toBe(authored);
    expect(await row.locator('.converted').first().getAttribute('data-shown')).toBe('Dc');
    expect(await page.getByRole('textbox', { name: 'Manuscript' }).getAttribute('contenteditable')).toBe(
      'false',
    );
    // Nor can a piece be added that nobody could write.
    expect(await page.getByRole('button', { name: 'Add a piece' }).count()).toBe(0);
    await page.keyboard.press('Control+2');
    await page.getByLabel('Tension, panel stitches').waitFor();
    await page.keyboard.press('Control+1');
    await page.getByRole('button', { name: 'US terms', exact: true }).click();
    await expect.poll(() => page.locator('.converted').count()).toBe(0);
    await endOf(1);
    await page.keyboard.type(' Turn.');
    expect(await row.textContent()).toBe(`${authored} Turn.`);
  });
});

describe('while reading in the other terms', () => {
  test.each([
    ['a repeat', '.repeat .sentence'],
    ['a piece', '.piece-head'],
    ['a row', '.row .label'],
  ])('the form of %s is not open, and the way back opens it', async (_, part) => {
    await page.getByRole('button', { name: 'UK terms' }).click();
    await page.locator('.row .converted').first().waitFor({ state: 'attached' });
    await page.locator(part).first().click();
    const note = page.getByRole('dialog', { name: 'Details cannot be changed now' });
    expect(await note.textContent()).toContain('You are reading in UK terms.');
    expect(await note.locator('input, select, textarea').count()).toBe(0);
    await page.keyboard.press('Escape');
    await note.waitFor({ state: 'detached' });
    await page.locator(part).first().click();
    await note.getByRole('button', { name: 'Back to US terms' }).click();
    await page.locator('dialog.form').waitFor();
    expect(await page.locator('.converted').count()).toBe(0);
  });
});

test('a place that was gone to once is not gone to again when Write comes back', async () => {
  await newRow('scc in each st across.');
  await page.locator('mark.error', { hasText: /^scc$/ }).waitFor();
  await page.keyboard.press('Control+5');
  await page
    .getByRole('button', { name: /^Go there: .*scc/ })
    .first()
    .click();
  await page.getByRole('textbox', { name: 'Manuscript' }).waitFor();
  await eventually(selection).toBe('scc');
  await page.keyboard.press('Control+Home');
  await page.keyboard.press('Control+6');
  await page.locator('.manuscript').waitFor({ state: 'detached' });
  await page.keyboard.press('Control+1');
  await words(1).waitFor();
  await settled();
  expect(await selection()).toBe('');
  await page.keyboard.type('A ');
  expect(await page.locator('.manuscript .title .words').first().textContent()).toMatch(/^A /);
});

test('a piece offers its next row and a repeat, and a row that is not written yet is not told as wrong', async () => {
  const piece = page.locator('.piece').first();
  const rows = piece.locator('.row');
  const before = await rows.count();
  await piece.getByRole('button', { name: 'Add a row', exact: true }).click();
  await expect.poll(() => rows.count()).toBe(before + 1);
  await page.locator('.finding-whole.unwritten').waitFor();
  const current = page.locator('.ledger-row.is-current');
  expect(await current.count()).toBe(1);
  expect(await current.locator('.has-error').count()).toBe(0);
  await page.keyboard.type('Ch 1, sc in each st across, turn.');
  await eventually(() => rows.last().locator('.words').textContent()).toBe(
    'Ch 1, sc in each st across, turn.',
  );
  const repeats = await piece.locator('.repeat').count();
  await piece.getByRole('button', { name: 'Add a repeat of rows' }).click();
  await expect.poll(() => piece.locator('.repeat').count()).toBe(repeats + 1);
});

test('a piece that starts from edges names the pieces, and takes no seam for one', async () => {
  const head = page.locator('.piece', { hasText: 'Neckband' }).last().locator('.piece-head');
  await eventually(() => head.textContent()).toBe(
    'Make one · starts from Back, Left Front Shoulder, Front, Right Front Shoulder (102 sts) · first row is the right side',
  );
});

test('coming back to Write, the caret is in view again', async () => {
  await words(20).click();
  await page.keyboard.press('Control+5');
  await page.locator('.review').waitFor();
  await page.keyboard.press('Control+1');
  await page.locator('.manuscript').waitFor();
  await expect
    .poll(() => words(20).evaluate((row) => row.getBoundingClientRect().top), { timeout: 20_000 })
    .toBeLessThan(900);
  expect(await words(20).evaluate((row) => row.getBoundingClientRect().top)).toBeGreaterThan(0);
});

test('a new piece is not told at once that nothing is written in it', async () => {
  await page.locator('.manuscript').getByRole('button', { name: 'Add a piece' }).click();
  await page.locator('.finding-whole.unwritten').waitFor();
  await settled();
  const panel = page.getByRole('complementary', { name: 'Finding at the caret' });
  expect(await panel.count()).toBe(0);
  await page.keyboard.type('Pocket');
  await settled();
  expect(await panel.count()).toBe(0);
});

test('spelling is checked with the dictionaries of the page, and a box turns it off', async () => {
  const misspelt = page.locator('.misspelt');
  const description = page.locator('.manuscript .description');
  await description.click();
  await page.keyboard.press('Control+End');
  await page.locator('.manuscript .title').first().click();
  await page.keyboard.press('End');
  await page.keyboard.type(' Qwerrtz');
  await description.click();
  await page.keyboard.press('End');
  await page.keyboard.type(' A comfortabel one.');
  await misspelt.filter({ hasText: /^comfortabel$/ }).waitFor();
  expect(await misspelt.filter({ hasText: 'Qwerrtz' }).count()).toBe(0);
  await page.keyboard.press('Control+k');
  await page.getByRole('combobox', { name: 'Command' }).fill('look and spelling');
  await page.keyboard.press('Enter');
  const box = page.getByRole('checkbox', { name: /^Check spelling/ });
  await box.uncheck();
  await expect.poll(() => misspelt.count()).toBe(0);
  await box.check();
  await misspelt.first().waitFor();
});

test('a part in which nothing stands yet is gone to from the outline, and begun, by keys', async () => {
  await page.close();
  page = await exampleIn(studio, /Slackwater/);
  await page.keyboard.press('F6');
  await page.keyboard.press('Home');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await eventually(() => page.evaluate(() => document.activeElement?.textContent ?? null)).toBe(
    'Add a special stitch',
  );
  await page.keyboard.press('Enter');
  await page.locator('.special .words').waitFor();
  await page.keyboard.type('5 dc in next st.');
  await eventually(() => page.locator('.special .words').textContent()).toBe('5 dc in next st.');
});

test('in a narrow window a place begins at its top, and is come back to where it was left', async () => {
  await page.setViewportSize({ width: 640, height: 450 });
  const down = () => page.locator('main').evaluate((main) => main.scrollTop);
  await page.keyboard.press('Control+3');
  await page.locator('.materials').waitFor();
  await page.locator('main').evaluate((main) => {
    main.scrollTop = 900;
  });
  await page.keyboard.press('Control+5');
  await page.locator('.review-summary').waitFor();
  expect(await down()).toBe(0);
  await page.keyboard.press('Control+3');
  await page.locator('.materials').waitFor();
  expect(await down()).toBe(900);
});
