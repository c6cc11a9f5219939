/**
 * Finds lists of one number a size that the author typed in running text: "12 (14, 16)", "30 (32, 34½) cm",
 * "24 (26, 28) [30, 32]", "8 (–, 10)". It knows no sizes but how many there are, and judges no list.
 */
import type { Span } from '../finding.ts';

export interface TypedList extends Span {
  /** One a size, as typed; null for a dash. */
  readonly values: readonly (string | null)[];
}

const NUMBER = String.raw`(?:\d{1,5}(?:\.\d{1,3})?[½¼¾⅓⅔⅛⅜⅝⅞]?|[½¼¾⅓⅔⅛⅜⅝⅞]|[–—-])`;
const GROUP = String.raw`[ \u00A0]?(?:\(${NUMBER}(?:[,:;][ \u00A0]?${NUMBER})*\)|\[${NUMBER}(?:[,:;][ \u00A0]?${NUMBER})*\])`;
const LIST = new RegExp(String.raw`(?<![\p{L}\p{N}.,/½¼¾-])${NUMBER}(?:${GROUP}){1,8}`, 'gu');
const ONE = new RegExp(NUMBER, 'gu');

/** Every number with others in brackets after it, however many there are. */
export function writtenLists(text: string): readonly TypedList[] {
  // Most texts have no bracket; looking for one is much quicker than looking for a list.
  if (!text.includes('(') && !text.includes('[')) return [];
  return [...text.matchAll(LIST)].map((match) => ({
    from: match.index,
    to: match.index + match[0].length,
    values: (match[0].match(ONE) ?? []).map((word) => (/\d|[½¼¾⅓⅔⅛⅜⅝⅞]/.test(word) ? word : null)),
  }));
}

/** Every list of `sizes` numbers in the text, in order. */
export function typedLists(text: string, sizes: number): readonly TypedList[] {
  return writtenLists(text).filter(({ values }) => values.length === sizes);
}
