/**
 * Tells a Tunisian row by its words. Reads nothing.
 */
import type { Cursor } from './cursor.ts';
import type { Token } from './lexer.ts';

const SURE = new Set([
  'return',
  'retp',
  'retpass',
  'forward',
  'fwp',
  'fwd',
  'tunisian',
  'tss',
  'tks',
  'tps',
  'trs',
]);

/** More loops than any one stitch draws up. */
const MANY = 6;

const known = new WeakMap<readonly Token[], boolean>();

/** Does the row say that it goes out and back, or is it worked in such stitches? Else a loop drawn up is one of several. */
export function isTunisian(c: Cursor): boolean {
  let found = known.get(c.tokens);
  if (found === undefined) {
    found = c.tokens.some((token, i) => {
      if (SURE.has(token.word)) return true;
      const before = c.tokens[i - 1];
      return token.word === 'lps' && c.tokens[i + 1]?.word === 'on' && (before?.value ?? 0) > MANY;
    });
    known.set(c.tokens, found);
  }
  return found;
}
