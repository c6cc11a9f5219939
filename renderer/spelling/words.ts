/**
 * Which stretches of a text are words that can be misspelt: no numbers, no addresses, no abbreviations in capitals,
 * no words of the trade. Of a row, only its asides. It knows no dictionary.
 */
import { readRow } from '../../core/notation/index.ts';
import type { Item } from '../../core/notation/tree.ts';
import { isTradeWord } from '../../core/trade/known-words.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import type { TextToSpell, WordAt } from './protocol.ts';

const WORD = /[\p{L}\p{N}]+(?:['’]\p{L}+)*/gu;
/** Addresses of the web and of mail. */
const ADDRESS = /\S*(?:@|:\/\/|www\.)\S*/giu;

const isSpelt = (word: string): boolean =>
  word.length > 1 && !/\p{N}/u.test(word) && !/^\p{Lu}{2,5}s?$/u.test(word) && !isTradeWord(word);

/** Places of the words in a text that are to be looked up. */
export function wordsToSpell({ text, isRow }: TextToSpell, terms: Terms): readonly WordAt[] {
  const addresses = [...text.matchAll(ADDRESS)].map((match) => [match.index, match.index + match[0].length]);
  const stretches = isRow ? asidesOf(text, terms) : [[0, text.length] as const];
  const found: WordAt[] = [];
  for (const match of text.matchAll(WORD)) {
    const [from, to] = [match.index, match.index + match[0].length];
    if (!isSpelt(match[0]) || addresses.some(([a, b]) => from >= a! && to <= b!)) continue;
    if (stretches.some(([a, b]) => from >= a && to <= b)) found.push([from, to]);
  }
  return found;
}

function asidesOf(text: string, terms: Terms): readonly WordAt[] {
  const found: WordAt[] = [];
  const visit = (items: readonly Item[]): void => {
    for (const item of items) {
      if (item.type === 'aside') found.push([item.from, item.to]);
      if (item.type === 'group' || item.type === 'repeat') visit(item.items);
    }
  };
  visit(readRow(text, { terms, figures: true, label: false }).items);
  return found;
}
