/**
 * Numbers as prose tells them: in figures, in words, as a list of one a size, or as a figure of the sheet. It reads
 * them for every size; whether they are right is the rules' concern.
 */
import { FIGURE } from '../document/pattern.ts';
import { BELOW_TWENTY, TENS } from '../notation/numerals.ts';
import type { BlockStudy } from '../study/index.ts';
import { typedLists } from '../study/typed-lists.ts';

/** A number below a hundred in words, "twenty-four", as a source for patterns. */
export const NUMBER_WORD = `(?:(?:${TENS.join('|')})(?:[- ](?:${BELOW_TWENTY.slice(0, 9).join('|')}))?|${[...BELOW_TWENTY].reverse().join('|')})`;

/** One number, in figures or in words. */
export const ONE_NUMBER = String.raw`(?:\d{1,5}|${NUMBER_WORD}(?!\p{L}))`;

/** A number, a list of one a size, or a figure. */
export const TOLD_NUMBER = String.raw`(?:\d{1,5}(?: ?[([][\d–—, :;-]+[)\]])*|${NUMBER_WORD}(?!\p{L})|${FIGURE})`;

/** The number that figures or words tell; null where they tell none. */
export function numberTold(words: string): number | null {
  if (/^\d+$/u.test(words)) return Number(words);
  const [first = '', last] = words.toLowerCase().split(/[- ]/u);
  const ten = TENS.indexOf(first);
  if (ten >= 0) return (ten + 2) * 10 + (last === undefined ? 0 : BELOW_TWENTY.indexOf(last) + 1);
  const small = BELOW_TWENTY.indexOf(first);
  return small < 0 ? null : small + 1;
}

/**
 * What words of a text tell in every size; null where that is not known. `own` = the block that the text belongs to,
 * which knows the values of its figures; `from` = where the words stand in it.
 */
export function valuesTold(
  words: string,
  sizes: number,
  { own, text, from }: { readonly own: BlockStudy | null; readonly text: string; readonly from: number },
): readonly (number | null)[] | null {
  if (words === FIGURE) {
    const index = text.slice(0, from).split(FIGURE).length - 1;
    return own?.figures[index]?.map(({ count }) => count) ?? null;
  }
  const one = numberTold(words);
  if (one !== null) return new Array<number>(sizes).fill(one);
  const [list] = typedLists(words, sizes);
  return list?.values.map((value) => (value === null ? null : Number(value))) ?? null;
}
