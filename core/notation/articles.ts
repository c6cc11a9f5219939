/**
 * The article before a term that is converted: "a worsted yarn" is "an aran yarn", "an sc" is "a dc". It decides by the
 * sound that a name begins with, and leaves what may be no article. Common practice, no source.
 */
import { gapAfter, type TermText } from './term-tokens.ts';

export interface Article {
  /** Where it begins in the text. */
  readonly from: number;
  /** What stands there and before the term, and what is to stand there. */
  readonly original: string;
  readonly replacement: string;
}

/** Letters whose names begin with a vowel: "an S", "a T". */
const VOWEL_NAMES = /^[aefhilmnorsx]/iu;

/** The article before token `at`, where the term that stands there now asks for the other one; else null. */
export function articleBefore(source: TermText, at: number, term: string): Article | null {
  const token = source.tokens[at - 1];
  if (token === undefined || (token.word !== 'a' && token.word !== 'an')) return null;
  const gap = gapAfter(source, at - 1);
  if (!/^[ \u00a0]+$/u.test(gap) || isYarn(source, at - 1)) return null;
  // What has no vowel is read letter by letter, or as the words that it stands for.
  const isSpelt = !/^\p{L}*[aeiou]/iu.test(term);
  // "a sc" is read out as words, and so is "a dc": only "an" shows that letters are said.
  if (isSpelt && token.word === 'a') return null;
  const wanted = (isSpelt ? VOWEL_NAMES : /^[aeio]/iu).test(term) ? 'an' : 'a';
  if (wanted === token.word) return null;
  const written = token.text[0]! + wanted.slice(1);
  return { from: token.from, original: token.text + gap, replacement: written + gap };
}

/** "yarn A worsted": a capital within a sentence is a name. */
function isYarn({ tokens, text }: TermText, at: number): boolean {
  const token = tokens[at]!;
  return (
    token.text === 'A' && !/(?:^|[.!?:;\n([])\s*$/u.test(text.slice(Math.max(0, token.from - 4), token.from))
  );
}
