/**
 * Which addresses may leave the program, as plain functions: the web and mail, in the maker's own browser.
 * Nothing is opened here.
 */

const PASSED = new Set(['http:', 'https:', 'mailto:']);
const LONGEST = 2_000;

/**
 * The address as it would be opened, or null when it is not to be. What is judged is what a browser would make
 * of the text (WHATWG URL), not how it looks; an address with a name and password in it is refused, because
 * that is how one place is made to look like another.
 */
export function linkToOpen(text: string): string | null {
  if (text.length > LONGEST || !URL.canParse(text)) return null;
  const url = new URL(text);
  if (!PASSED.has(url.protocol)) return null;
  if (url.username !== '' || url.password !== '') return null;
  if (url.protocol !== 'mailto:' && url.hostname === '') return null;
  return url.href;
}
