/**
 * Words that a row may go on with: stitches and their abbreviations in the pattern's terms, special stitches,
 * places. Lines are offered behind an equals sign, as figures. It proposes; the reader decides what words mean.
 */
import type { Line, Pattern, Special } from '../../../core/document/pattern.ts';
import { foldName } from '../../../core/grading/index.ts';
import type { Terms } from '../../../core/trade/stitches.ts';
import { namesOf, stitchTerms } from '../../../core/trade/terms.ts';

export interface Proposal {
  /** What is put in: words, or the expression of a figure. */
  readonly words: string;
  readonly isFigure: boolean;
  /** What it means, beside it in the list. */
  readonly meaning: string;
}

/** What is being typed at the caret: the words so far and how long they are in the text. */
export interface Typed {
  readonly prefix: string;
  readonly isFigure: boolean;
  /** Length of what the proposal replaces. */
  readonly length: number;
}

/** Places and turns of phrase that rows are full of. Common practice, no source. */
const PHRASES: readonly string[] = [
  'in next st',
  'in each st across',
  'in each st around',
  'in same st',
  'in first st',
  'in last st',
  'in top of turning ch',
  'in next ch-1 sp',
  'in next ch-2 sp',
  'in 2nd ch from hook',
  'in each ch across',
  'rep from * across',
  'rep from * around',
  'rep from * to last st',
  'turn',
  'join with sl st in first st',
  'fasten off',
  'counts as',
  'does not count as a st',
  'place marker',
];

const inTerms = new Map<Terms, readonly Proposal[]>();

/** Names of the trade in one market's terms: abbreviations with their names, then phrases. */
function tradeWords(terms: Terms): readonly Proposal[] {
  const known = inTerms.get(terms);
  if (known !== undefined) return known;
  const made = new Map<string, Proposal>();
  for (const { id } of stitchTerms) {
    const { abbr, name } = namesOf(id, terms);
    if (!made.has(abbr)) made.set(abbr, { words: abbr, isFigure: false, meaning: name });
    if (name !== abbr && !made.has(name)) made.set(name, { words: name, isFigure: false, meaning: abbr });
  }
  for (const words of PHRASES) made.set(words, { words, isFigure: false, meaning: '' });
  const list = [...made.values()];
  inTerms.set(terms, list);
  return list;
}

function ownWords(specials: readonly Special[], terms: Terms): readonly Proposal[] {
  return specials.flatMap(({ nameUs, nameUk, abbrUs, abbrUk }) => {
    const [name, abbr] = terms === 'us' ? [nameUs, abbrUs] : [nameUk, abbrUk];
    return [
      ...(abbr === '' ? [] : [{ words: abbr, isFigure: false, meaning: name }]),
      ...(name === '' || name === abbr ? [] : [{ words: name, isFigure: false, meaning: abbr }]),
    ];
  });
}

const lineWords = (lines: readonly Line[]): readonly Proposal[] =>
  lines
    .filter(({ name }) => name.trim() !== '')
    .map(({ name }) => ({ words: name, isFigure: true, meaning: '' }));

/** Letters before they can be taken for the beginning of something. */
const LEAST = 2;
/** Proposals at one time. */
export const MOST = 8;

/** What is being typed at the end of a text: a word or two of letters, or the name of a line behind "=". */
export function typedAt(before: string): Typed | null {
  const figure = /(?:^|[\s(*[,;])(=([\p{L}\p{N} '’_-]{0,40}))$/u.exec(before);
  if (figure !== null && !figure[2]!.startsWith(' ')) {
    return { prefix: figure[2]!, isFigure: true, length: figure[1]!.length };
  }
  const word = /(?:^|[\s(*[,;\d])([\p{L}][\p{L}\d-]*)$/u.exec(before);
  if (word === null || word[1]!.length < LEAST) return null;
  return { prefix: word[1]!, isFigure: false, length: word[1]!.length };
}

/** What could follow, the shortest first. Empty when what is typed is a whole word already. */
export function proposals(typed: Typed, pattern: Pattern): readonly Proposal[] {
  if (typed.isFigure) {
    const wanted = foldName(typed.prefix);
    return lineWords(pattern.lines)
      .filter(({ words }) => foldName(words).startsWith(wanted) || foldName(words).includes(` ${wanted}`))
      .slice(0, MOST);
  }
  const wanted = typed.prefix.toLowerCase();
  const all = [...ownWords(pattern.specials, pattern.terms), ...tradeWords(pattern.terms)];
  if (all.some(({ words }) => words.toLowerCase() === wanted)) return [];
  return all
    .filter(({ words }) => words.toLowerCase().startsWith(wanted))
    .sort((a, b) => a.words.length - b.words.length)
    .slice(0, MOST);
}
