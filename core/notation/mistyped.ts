/**
 * Mistyped words of a place or a repeat ("in nxt st", "from hok"): finds the word meant, one letter away, by
 * reading the row again with it. It corrects no stitch, since another stitch is another row, and no text.
 */
import type { Fact } from '../finding.ts';
import { canonical, type Token } from './lexer.ts';
import { oneEdit } from './suggestions.ts';

/** What a place, a repeat or an ending is made of. */
const WORDS = [
  'next',
  'each',
  'every',
  'in',
  'into',
  'from',
  'hook',
  'st',
  'sts',
  'stitch',
  'stitches',
  'chain',
  'chains',
  'space',
  'sp',
  'sps',
  'loop',
  'across',
  'around',
  'to',
  'end',
  'last',
  'first',
  'same',
  'turn',
  'turning',
  'rep',
  'repeat',
  'join',
  'and',
  'with',
  'skip',
  'row',
  'round',
  'ring',
  'magic',
  'of',
  'top',
  'beginning',
  'back',
  'front',
  'only',
  'both',
  'over',
  'post',
  'between',
  'behind',
  'corner',
  'center',
  'centre',
  'other',
  'until',
  'remain',
  'remaining',
  'marker',
  'more',
  'times',
  'twice',
  'once',
  'leaving',
  'unworked',
  'previous',
  'following',
];

const KNOWN = new Set(WORDS.flatMap((word) => [word, canonical(word)]));

/** Words tried for one that is mistyped, and readings of one row. */
const MOST_TRIED = 4;
const MOST_READINGS = 16;
/** A longer row is no maker's, and is not read again. */
const MOST_TOKENS = 300;

/** A word read as another: where it stands and what it was read as. */
export interface Mistyped {
  readonly token: Token;
  readonly meant: string;
}

/** Words of places one edit away, the likeliest first: letters exchanged or doubled, then any one letter. */
function near(word: string): readonly string[] {
  if (word.length < 3 || word.length > 12 || KNOWN.has(word)) return [];
  const letters = (of: string) => [...of].sort().join('');
  const single = word.replace(/(.)\1/u, '$1');
  const rank = (meant: string) =>
    letters(meant) === letters(word) ? 0 : meant === single ? 1 : meant.length > word.length ? 2 : 3;
  return WORDS.filter((meant) => oneEdit(word, meant))
    .sort((a, b) => rank(a) - rank(b))
    .slice(0, MOST_TRIED);
}

/** How much of the text was not read. */
function unread(facts: readonly Fact[]): number {
  return facts.reduce((n, fact) => n + (fact.code === 'word-not-read' ? fact.to - fact.from : 0), 0);
}

/**
 * The reading of `tokens` with its mistyped words put right, where that makes more of it read, and which they
 * were; null when `first`, the reading as written, stands.
 */
export function mended<Reading extends { readonly facts: readonly Fact[] }>(
  tokens: readonly Token[],
  first: Reading,
  isStitch: (word: string) => boolean,
  read: (tokens: readonly Token[]) => Reading,
): { readonly reading: Reading; readonly mistyped: readonly Mistyped[] } | null {
  if (tokens.length > MOST_TOKENS) return null;
  let best = first;
  let now = tokens;
  const mistyped: Mistyped[] = [];
  let readings = 0;
  for (let i = 0; i < tokens.length && readings < MOST_READINGS; i++) {
    const token = tokens[i]!;
    if (token.kind !== 'word' || isStitch(token.word)) continue;
    const doubtful = best.facts.some(
      (fact) => fact.code === 'word-not-read' && token.from >= fact.from && token.to <= fact.to,
    );
    if (!doubtful) continue;
    for (const meant of near(token.word)) {
      readings += 1;
      const tried = now.with(i, { ...token, word: canonical(meant) });
      const reading = read(tried);
      if (unread(reading.facts) >= unread(best.facts)) continue;
      best = reading;
      now = tried;
      mistyped.push({ token, meant });
      break;
    }
  }
  return mistyped.length > 0 ? { reading: best, mistyped } : null;
}
