/**
 * How a term is spelt in the other terminology once it is known to be one: the author's capitals, hyphens
 * and number, and "crochet" where that market says it. It judges nothing.
 */
import type { Terms } from '../trade/stitches.ts';
import { gapAfter, joined, type TermText, type TermToken } from './term-tokens.ts';
import { abbreviation, nameWords, type StitchPhrase } from './term-words.ts';

/** A longer name around a base stitch. */
export interface Compound {
  /** The separators on its sides, "" on a side where nothing of the name stands. */
  readonly before: string;
  readonly after: string;
  /** The word beside it begins with a capital. */
  readonly title: boolean;
}

const PREFIXES = new Set(
  'post extended foundation linked crossed reverse spike standing invisible raised elongated'.split(' '),
);
const SUFFIXES = new Set(
  (
    'cluster clusters bobble bobbles popcorn popcorns puff puffs shell shells fan fans decrease decreases ' +
    'increase increases dec inc v'
  ).split(' '),
);

/** What a base stitch stands in when it is part of a longer name, such as a post stitch; else null. */
export function compoundAt(source: TermText, at: number, last: number): Compound | null {
  const before = source.tokens[at - 1];
  const next = source.tokens[last + 1];
  const led = before !== undefined && joined(source, at - 1) && PREFIXES.has(before.word);
  const followed =
    next !== undefined &&
    joined(source, last) &&
    (SUFFIXES.has(next.word) ||
      (next.kind === 'number' && /^tog(?:ether)?$/.test(source.tokens[last + 2]?.word ?? '')));
  if (!led && !followed) return null;
  const word = followed && next.kind === 'number' ? source.tokens[last + 2]! : next;
  const beside = led ? before : word!;
  return {
    before: led ? gapAfter(source, at - 1) : '',
    after: followed ? gapAfter(source, last) : '',
    title: /^\p{Lu}/u.test(beside.text),
  };
}

/** "half dc" → "half tr"; "double tr" → "trtr". */
export function abbreviated(
  phrase: StitchPhrase,
  tokens: readonly TermToken[],
  separators: readonly string[],
  to: Terms,
): string {
  const ending = phrase.plural ? 's' : '';
  const [first, second] = [tokens[0]!, tokens.at(-1)!];
  const model = second.text.slice(0, second.text.length - ending.length);
  if (first.word === 'half') {
    return first.text + separators[0]! + likeCase(model, abbreviation('t3', to)) + ending;
  }
  return likeCase(model, abbreviation(phrase.base, to)) + ending;
}

/** A full name in the other terms, with the author's separators and capitals. */
export function named(
  phrase: StitchPhrase,
  tokens: readonly TermToken[],
  separators: readonly string[],
  to: Terms,
  whole: Compound | null,
): string {
  const words = [...nameWords(phrase.base, to, whole !== null || phrase.style !== 'name')];
  if (phrase.plural) words.push(`${words.pop()!}s`);
  const closes = (word: string): boolean => /^crochets?$/.test(word);
  const had = closes(tokens.at(-1)!.word);
  const has = closes(words.at(-1)!);
  const inner = [...separators];
  const beforeCrochet = had ? inner.pop() : undefined;
  const wanted = words.length - (has ? 2 : 1);
  while (inner.length > wanted) inner.shift();
  while (inner.length < wanted) inner.unshift(inner[0] ?? beforeCrochet ?? ' ');
  if (has) inner.push(beforeCrochet ?? (whole?.before || whole?.after || ' '));
  const text = words.map((word, index) => (index === 0 ? word : inner[index - 1]! + word)).join('');
  const model = tokens.map((token) => token.text).join(' ');
  const capital = tokens.length === 1 && /^\p{Lu}/u.test(model);
  return capital && whole?.title && model !== model.toUpperCase() ? titled(text) : likeCase(model, text);
}

/** Gives a text the capitals of a model: all capitals, every word, the first letter, or none. */
export function likeCase(model: string, text: string): string {
  const parts = model.match(/\p{L}[\p{L}\p{M}]*/gu) ?? [];
  const letters = parts.join('');
  if (letters.length > 1 && letters === letters.toUpperCase() && letters !== letters.toLowerCase()) {
    return text.toUpperCase();
  }
  if (parts.length > 1 && parts.every((part) => /^\p{Lu}/u.test(part))) return titled(text);
  if (parts[0] && /^\p{Lu}/u.test(parts[0])) return text.replace(/\p{L}/u, (letter) => letter.toUpperCase());
  return text;
}

const titled = (text: string): string =>
  text.replace(/\p{L}[\p{L}\p{M}]*/gu, (word) => word[0]!.toUpperCase() + word.slice(1));
