/**
 * A maker's hands: putting the caret where a click alone does not, and keys faster than the page, one after the other
 * without waiting for what the page makes of them, as the keys of a quick typist wait on a busy machine.
 */
import type { Locator, Page } from 'playwright-core';

/** Windows' codes of keys that type nothing (UI Events, W3C, "Legacy key attributes"). */
const CODES: Readonly<Record<string, number>> = {
  Backspace: 8,
  Enter: 13,
  Escape: 27,
  PageUp: 33,
  PageDown: 34,
  End: 35,
  Home: 36,
  ArrowLeft: 37,
  ArrowUp: 38,
  ArrowRight: 39,
  ArrowDown: 40,
};

interface Key {
  readonly key: string;
  readonly code: string;
  readonly windowsVirtualKeyCode: number;
  readonly modifiers: number;
  readonly text?: string;
}

/** A key by its name ("Home"), with "Control+" or "Shift+" before it, or by the letter that it types. */
function keyOf(name: string): Key {
  const parts = name.length === 1 ? [name] : name.split('+');
  const key = parts.at(-1)!;
  const modifiers = (parts.includes('Control') ? 2 : 0) + (parts.includes('Shift') ? 8 : 0);
  const code = CODES[key];
  if (code !== undefined) {
    const text = key === 'Enter' && modifiers === 0 ? { text: '\r' } : {};
    return { key, code: key, windowsVirtualKeyCode: code, modifiers, ...text };
  }
  const isTyped = !parts.includes('Control');
  return {
    key,
    code: /\d/.test(key) ? `Digit${key}` : /[a-z]/i.test(key) ? `Key${key.toUpperCase()}` : '',
    windowsVirtualKeyCode: /[a-z\d]/i.test(key) ? key.toUpperCase().charCodeAt(0) : 0,
    modifiers,
    ...(isTyped ? { text: key } : {}),
  };
}

/** A key of its own, or letters to type. */
export type Stroke = { readonly press: string } | { readonly type: string };
export const press = (key: string): Stroke => ({ press: key });
export const type = (text: string): Stroke => ({ type: text });

/** Puts all keys in at once; resolves when the page has had each of them. */
export async function atOnce(page: Page, strokes: readonly Stroke[]): Promise<void> {
  const client = await page.context().newCDPSession(page);
  const keys = strokes.flatMap((stroke) => ('press' in stroke ? [stroke.press] : [...stroke.type]));
  await Promise.all(
    keys.flatMap((name) => {
      const { text, ...key } = keyOf(name);
      const down = text === undefined ? { type: 'rawKeyDown' as const } : { type: 'keyDown' as const, text };
      return [
        client.send('Input.dispatchKeyEvent', { ...key, ...down }),
        client.send('Input.dispatchKeyEvent', { ...key, type: 'keyUp' }),
      ];
    }),
  );
  await client.detach();
}

/** Waits until the page has drawn what came of the last keys. */
export const drawn = (page: Page): Promise<unknown> =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));

/** The caret behind the last word of a text: the End key goes only to the end of the line that is clicked. */
export async function caretAtEnd(words: Locator): Promise<void> {
  await words.click();
  await words.evaluate((row) => {
    getSelection()!.selectAllChildren(row);
    getSelection()!.collapseToEnd();
    // The page hears of it a moment later: a key that comes before would go where the click was.
    return new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
  });
}
