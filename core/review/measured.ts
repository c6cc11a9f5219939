/**
 * Lengths that a text gives: whether they are taken along the rows from the beginning of the piece, and whether rows
 * go on until a tape says so. It reads words; whether a length is right is the rules' concern.
 */
import type { Item } from '../notation/tree.ts';

/** Not along the rows, or from a place within the piece. */
const ASIDE =
  /^[^.;]{0,40}?\b(?:wide|across|around|square|diameter|circumference|each way|from (?!(?:the )?(?:beginning|beg|start|foundation|bottom|lower edge|hem|cast|first row|ring|center|centre)))/iu;
const WIDE = /\b(?:width|circumference|diameter|gap|opening|loop|tail|chain|tie|cord)\b[^.;]*$/iu;

/** Letters on either side of a length that say what is measured: no more are looked at, however long the text. */
const NEAR = 120;

/** Whether a length at a place of a text is taken along the rows, from where the piece begins. */
export const isAlongRows = (text: string, from: number, to: number): boolean =>
  !ASIDE.test(text.slice(to, to + NEAR)) && !WIDE.test(text.slice(Math.max(0, from - NEAR), from));

/** "Rep Rows 2 and 3 until piece measures …" and the like: how many rows that is, only the maker's tape knows. */
export const isMeasured = (items: readonly Item[]): boolean =>
  items.some((item) => (item.type === 'rows-again' || item.type === 'even') && item.until !== null);
