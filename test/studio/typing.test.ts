/**
 * Typing faster than the page works, after every way in which the caret moves, while reports of the study come in:
 * what was typed stands in the document, whole, where the caret was put.
 */
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { atOnce, press, type Stroke, type } from './hands.ts';
import { exampleIn, openStudio, type Studio } from './harness.ts';

let studio: Studio;
let page: Page;

beforeAll(async () => {
  studio = await openStudio();
}, 240_000);
beforeEach(async () => {
  page = await exampleIn(studio, /vest/i);
});
afterEach(async () => {
  await page.close();
  expect(studio.complaints).toEqual([]);
});
afterAll(() => studio.close());

/** Texts of the manuscript, in their order: the title, the cover's, notes, rows …, the last page's. */
const texts = () => page.locator('.manuscript .words').allTextContents();
/** The first row, on one line: the title of its piece is above it, another row below. */
const ROW = 0;
/** Its index among the texts. */
const rowAt = () =>
  page
    .locator('.manuscript .words')
    .evaluateAll((all, row) => all.indexOf(document.querySelectorAll<HTMLElement>('.row .words')[row]!), ROW);
/** Presses at its beginning. */
const clickRow = () =>
  page
    .locator('.row .words')
    .nth(ROW)
    .click({ position: { x: 5, y: 8 } });

const at = (text: string, offset: number, words: string) =>
  text.slice(0, offset) + words + text.slice(offset);

interface Jump {
  readonly name: string;
  readonly keys: readonly Stroke[];
  /** The texts after `TYPED` was typed, from those before; `row` is where the caret was. */
  readonly gives: (before: readonly string[], row: number) => readonly string[];
}

const changed = (before: readonly string[], index: number, change: (text: string) => string) =>
  before.with(index, change(before[index]!));

const TYPED = 'Qu1ck.';
const end = (text: string) => text + TYPED;

const JUMPS: readonly Jump[] = [
  { name: 'nothing but the press', keys: [], gives: (all, row) => changed(all, row, (t) => TYPED + t) },
  { name: 'End', keys: [press('End')], gives: (all, row) => changed(all, row, end) },
  {
    name: 'End and Home',
    keys: [press('End'), press('Home')],
    gives: (all, row) => changed(all, row, (t) => TYPED + t),
  },
  {
    name: 'arrows to the right',
    keys: [press('ArrowRight'), press('ArrowRight'), press('ArrowRight')],
    gives: (all, row) => changed(all, row, (t) => at(t, 3, TYPED)),
  },
  {
    name: 'an arrow back into the text above',
    keys: [press('ArrowLeft')],
    gives: (all, row) => changed(all, row - 1, end),
  },
  {
    name: 'an arrow down',
    keys: [press('ArrowDown'), press('Home')],
    gives: (all, row) => changed(all, row + 1, (t) => TYPED + t),
  },
  {
    name: 'an arrow up',
    keys: [press('ArrowUp'), press('End')],
    gives: (all, row) => changed(all, row - 1, end),
  },
  {
    name: 'Control and End',
    keys: [press('Control+End')],
    gives: (all) => changed(all, all.length - 1, end),
  },
  {
    name: 'Control and End, where the caret is there already',
    keys: [press('Control+End'), press('Control+End'), press('Control+End')],
    gives: (all) => changed(all, all.length - 1, end),
  },
  {
    name: 'Control and Home',
    keys: [press('Control+Home')],
    gives: (all) => changed(all, 0, (t) => TYPED + t),
  },
  {
    name: 'Control and End, and letters taken away there',
    keys: [press('Control+End'), press('Backspace'), press('Backspace')],
    gives: (all) => changed(all, all.length - 1, (t) => t.slice(0, -2) + TYPED),
  },
  {
    name: 'End and a new row',
    keys: [press('End'), press('Enter')],
    gives: (all, row) => all.toSpliced(row + 1, 0, TYPED),
  },
  {
    name: 'words undone',
    keys: [press('End'), type('lost'), press('Control+z')],
    gives: (all, row) => changed(all, row, end),
  },
  {
    name: 'a form opened and closed',
    keys: [press('End'), press('Control+Shift+Enter'), press('Escape')],
    gives: (all, row) => changed(all, row, end),
  },
  {
    name: 'the form of a figure opened and closed',
    keys: [press('End'), press('Control+Enter'), press('Escape')],
    gives: (all, row) => changed(all, row, end),
  },
  {
    name: 'the list of commands opened and closed',
    keys: [press('End'), press('Control+k'), press('Escape')],
    gives: (all, row) => changed(all, row, end),
  },
  {
    name: 'the bar to find opened and closed',
    keys: [press('End'), press('Control+f'), press('Escape')],
    gives: (all, row) => changed(all, row, end),
  },
  {
    name: 'the list of words opened and closed',
    keys: [press('End'), type(' hd'), press('Escape')],
    gives: (all, row) => changed(all, row, (t) => `${t} hd${TYPED}`),
  },
  {
    name: 'another place and back',
    keys: [press('End'), press('Control+2'), press('Control+1')],
    gives: (all, row) => changed(all, row, end),
  },
  {
    name: 'all other places and back',
    keys: [press('End'), ...['3', '4', '5', '1'].map((place) => press(`Control+${place}`))],
    gives: (all, row) => changed(all, row, end),
  },
];

test.each(JUMPS)('after $name', async ({ keys, gives }) => {
  const [before, row] = [await texts(), await rowAt()];
  await clickRow();
  await atOnce(page, [...keys, type(TYPED)]);
  await expect.poll(texts).toEqual(gives(before, row));
  // What was drawn is what the document holds: another place and back draws it anew.
  await page.keyboard.press('Control+3');
  await page.locator('.manuscript').waitFor({ state: 'detached' });
  await page.keyboard.press('Control+1');
  await expect.poll(texts).toEqual(gives(before, row));
});

/** Numbers that look like chance and are the same each time (a linear congruence, Park and Miller 1988). */
function numbers(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state * 48_271) % 2_147_483_647;
    return state % below;
  };
}

/** Letters that the pattern has not, so that those typed can be told from all others. */
const LETTERS = 'ßøðþæŧħł';
const KEYS = ['Home', 'End', 'ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'PageUp', 'PageDown'];

test.each([1, 2])('no letter is lost among keys in any order (%i)', async (seed) => {
  const any = numbers(seed);
  const keys = [...KEYS, 'Control+Home', 'Control+End'];
  const letters = async () =>
    [...(await texts()).join('')]
      .filter((c) => LETTERS.includes(c))
      .sort()
      .join('');
  expect(await letters()).toBe('');
  let typed = '';
  await clickRow();
  for (let round = 0; round < 25; round++) {
    const strokes: Stroke[] = [];
    for (let jump = 0; jump < 3; jump++) {
      const word = Array.from({ length: 3 }, () => LETTERS[any(LETTERS.length)]).join('');
      strokes.push(press(keys[any(keys.length)]!), type(word));
      typed += word;
    }
    await atOnce(page, strokes);
    // Now and then a pause in which the study answers, and otherwise none.
    if (any(3) === 0) await page.waitForTimeout(any(200));
  }
  await expect.poll(letters).toBe([...typed].sort().join(''));
});

test('an arrow leads past what has a place of its own, and what is typed there is text', async () => {
  const last = page.locator('.manuscript .fit .words');
  await last.click();
  const before = await texts();
  const fit = before.indexOf((await last.textContent())!);
  await last.evaluate((words) => {
    getSelection()!.selectAllChildren(words);
    getSelection()!.collapseToEnd();
  });
  await atOnce(page, [press('ArrowDown'), press('End'), type(TYPED)]);
  await expect.poll(texts).toEqual(changed(before, fit + 1, end));
});

test('the caret is the maker’s at once after a focus that no press brought, at the very beginning too', async () => {
  const before = await texts();
  const editor = page.locator('.manuscript');
  await clickRow();
  await editor.evaluate((element: HTMLElement) => element.blur());
  // A press counts for 300 ms.
  await page.waitForTimeout(350);
  await editor.evaluate((element: HTMLElement) => element.focus());
  await atOnce(page, [press('Control+Home'), type(TYPED)]);
  await expect.poll(texts).toEqual(changed(before, 0, (text) => TYPED + text));
});
