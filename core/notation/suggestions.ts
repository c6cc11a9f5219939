/**
 * Finds the known word that a mistyped one was meant to be, when one edit away.
 */
import type { Lexicon } from './lexicon.ts';

/** The word meant by one that is mistyped behind a stitch and its number ("sc2tg"): only "tog" can stand there. */
export const suggestionBehindNumber = (word: string): string | null => (oneEdit(word, 'tog') ? 'tog' : null);

/** Nearest known word to a mistyped one, one edit away, or null. */
export function suggestion(word: string, lexicon: Lexicon): string | null {
  if (word.length < 2 || word.length > 24) return null;
  if (word === 'sl') return 'sl st';
  const single = word.replace(/(.)\1/u, '$1');
  const known = [...lexicon.bases.keys(), ...PLAIN_WORDS, ...lexicon.names, ...lexicon.runs.keys()];
  // A letter typed twice is the likeliest slip; then two letters exchanged; then any one letter.
  if (single !== word && known.includes(single)) return single;
  const near = known.filter((candidate) => oneEdit(word, candidate));
  return (
    near.find((candidate) => candidate.length === word.length && sameLetters(candidate, word)) ??
    near[0] ??
    null
  );
}

function sameLetters(a: string, b: string): boolean {
  return [...a].sort().join('') === [...b].sort().join('');
}

const PLAIN_WORDS = [
  'ch',
  'sl st',
  'inc',
  'dec',
  'next',
  'each',
  'rep',
  'turn',
  'join',
  'across',
  'around',
  'skip',
  'same',
  'last',
  'first',
  'cluster',
  'shell',
  'picot',
  'bobble',
  'popcorn',
  'puff',
  'single',
  'double',
  'treble',
  'crochet',
  'times',
  'ring',
];

/** True when one letter more, less, other, or two neighbours exchanged makes `a` into `b`. */
export function oneEdit(a: string, b: string): boolean {
  if (a === b || Math.abs(a.length - b.length) > 1) return false;
  let head = 0;
  while (head < a.length && head < b.length && a[head] === b[head]) head++;
  let tail = 0;
  while (
    tail < a.length - head &&
    tail < b.length - head &&
    a[a.length - 1 - tail] === b[b.length - 1 - tail]
  ) {
    tail++;
  }
  const left = a.length - head - tail;
  const right = b.length - head - tail;
  if (left <= 1 && right <= 1) return true;
  return left === 2 && right === 2 && a[head] === b[head + 1] && a[head + 1] === b[head];
}
