/**
 * Which words and phrases of one terminology are stitches of the ladder, and how the other terminology
 * writes them: the words only, in lower case. Context and capitals are not looked at here.
 */
import type { BaseStitch, Terms } from '../trade/stitches.ts';
import { stitchAbbreviation, stitchName, wordTerms } from '../trade/terms.ts';

/** A phrase that names a ladder stitch. */
export interface StitchPhrase {
  readonly base: BaseStitch;
  /** `name`: "double crochet"; `short`: without "crochet" ("half treble"); `bare`: one common word ("treble"); `abbr`: "half dc". */
  readonly style: 'name' | 'short' | 'bare' | 'abbr';
  readonly plural: boolean;
}

/** A word, spelling or yarn weight and what the other market says. */
export interface WordPhrase {
  readonly entry: string;
  readonly kind: 'instruction' | 'word' | 'spelling' | 'weight' | 'system';
  readonly replacement: string;
}

type Styled = readonly [phrase: string, base: BaseStitch, style: StitchPhrase['style']];

/** Phrases beside the table's own names (common practice, and the table's further names). */
const PHRASES: Readonly<Record<Terms, readonly Styled[]>> = {
  us: [
    ['single', 't1', 'bare'],
    ['half double', 't2', 'short'],
    ['half dc', 't2', 'abbr'],
    ['double', 't3', 'bare'],
    ['triple crochet', 't4', 'name'],
    ['triple', 't4', 'bare'],
    ['treble', 't4', 'bare'],
    ['double triple crochet', 't5', 'name'],
    ['double treble', 't5', 'short'],
    ['double tr', 't5', 'abbr'],
    ['triple triple crochet', 't6', 'name'],
    ['triple treble', 't6', 'short'],
    ['triple tr', 't6', 'abbr'],
    ['trip tr', 't6', 'abbr'],
    ['tr tr', 't6', 'abbr'],
    ['quadruple treble', 't7', 'short'],
    ['quad tr', 't7', 'abbr'],
  ],
  uk: [
    ['double', 't1', 'bare'],
    ['half treble', 't2', 'short'],
    ['half tr', 't2', 'abbr'],
    ['treble', 't3', 'bare'],
    ['double treble', 't4', 'short'],
    ['long treble', 't4', 'short'],
    ['double tr', 't4', 'abbr'],
    ['triple treble', 't5', 'short'],
    ['triple tr', 't5', 'abbr'],
    ['trip tr', 't5', 'abbr'],
    ['tr tr', 't5', 'abbr'],
    ['quadruple treble', 't6', 'short'],
    ['quad tr', 't6', 'abbr'],
    ['quintuple treble', 't7', 'short'],
    ['quin tr', 't7', 'abbr'],
  ],
};

const TALL: readonly BaseStitch[] = ['t1', 't2', 't3', 't4', 't5', 't6', 't7'];

function stitchPhrases(terms: Terms): Map<string, StitchPhrase> {
  const phrases = new Map<string, StitchPhrase>();
  const add = (phrase: string, base: BaseStitch, style: StitchPhrase['style']): void => {
    phrases.set(phrase, { base, style, plural: false });
    phrases.set(`${phrase}s`, { base, style, plural: true });
  };
  for (const base of TALL) add(stitchName(base, terms), base, 'name');
  for (const [phrase, base, style] of PHRASES[terms]) add(phrase, base, style);
  return phrases;
}

function wordPhrases(from: Terms, to: Terms): Map<string, WordPhrase> {
  const phrases = new Map<string, WordPhrase>();
  for (const { id, kind, pairs, alsoUs, alsoUk } of wordTerms) {
    for (const pair of pairs) {
      const key = pair[from].toLowerCase();
      if (!phrases.has(key)) phrases.set(key, { entry: id, kind, replacement: pair[to] });
    }
    for (const [met, stands] of (from === 'us' ? alsoUs : alsoUk) ?? []) {
      const pair = pairs.find((item) => item[from] === stands);
      if (pair) phrases.set(met, { entry: id, kind, replacement: pair[to] });
    }
  }
  return phrases;
}

const STITCH_PHRASES: Readonly<Record<Terms, ReadonlyMap<string, StitchPhrase>>> = {
  us: stitchPhrases('us'),
  uk: stitchPhrases('uk'),
};

const WORD_PHRASES: Readonly<Record<Terms, ReadonlyMap<string, WordPhrase>>> = {
  us: wordPhrases('us', 'uk'),
  uk: wordPhrases('uk', 'us'),
};

/** Longest phrase of either table, in words. */
export const LONGEST_PHRASE = 4;

const firstWords = (terms: Terms): ReadonlySet<string> =>
  new Set(
    [...STITCH_PHRASES[terms].keys(), ...WORD_PHRASES[terms].keys()].map((phrase) => phrase.split(' ')[0]!),
  );

const FIRST_WORDS: Readonly<Record<Terms, ReadonlySet<string>>> = {
  us: firstWords('us'),
  uk: firstWords('uk'),
};

/** Whether a word begins any phrase of a terminology: most words of a text begin none. */
export function beginsPhrase(word: string, terms: Terms): boolean {
  return FIRST_WORDS[terms].has(word);
}

/** The ladder stitch that a phrase (lower case, single spaces) names in a terminology; null if none. */
export function stitchPhrase(phrase: string, terms: Terms): StitchPhrase | null {
  return STITCH_PHRASES[terms].get(phrase) ?? null;
}

/** What the other market says for a word of this one; null where both say the same. */
export function wordPhrase(phrase: string, terms: Terms): WordPhrase | null {
  return WORD_PHRASES[terms].get(phrase) ?? null;
}

/**
 * The words that name a stitch in a terminology, singular, last word to be made plural by the caller. In
 * UK compounds "crochet" is dropped after treble; in US terms it always stands.
 */
export function nameWords(base: BaseStitch, terms: Terms, compound: boolean): readonly string[] {
  const words = stitchName(base, terms).split(' ');
  return terms === 'uk' && compound && base !== 't1' ? words.slice(0, -1) : words;
}

/** A run of letters cut into what stands before the base stitch, the base, and what stands after it. */
export interface Run {
  readonly before: string;
  readonly written: string;
  readonly after: string;
  readonly base: BaseStitch;
}

/** Abbreviations that name a ladder stitch as one run of letters. */
const ABBREVIATIONS: Readonly<Record<Terms, readonly (readonly [string, BaseStitch])[]>> = {
  us: [
    ['quadtr', 't7'],
    ['trtr', 't6'],
    ['ttr', 't6'],
    ['qtr', 't7'],
    ['dtr', 't5'],
    ['hdc', 't2'],
    ['trc', 't4'],
    ['dc', 't3'],
    ['sc', 't1'],
    ['tr', 't4'],
  ],
  uk: [
    ['quadtr', 't6'],
    ['quintr', 't7'],
    ['trtr', 't5'],
    ['ttr', 't5'],
    ['qtr', 't6'],
    ['dtr', 't4'],
    ['htr', 't2'],
    ['htc', 't2'],
    ['dc', 't1'],
    ['tr', 't3'],
  ],
};

/** What may be glued before an abbreviation: posts, ways of working, loops. */
const BEFORE: ReadonlySet<string> = new Set(
  'fp bp rf rb e ex ext f fnd fdn l lk lnk r rev x cr sp std blo flo bl fl'.split(' '),
);

/** What may be glued behind one: plurals, posts, decreases, what it is made into, loops. */
const AFTER: ReadonlySet<string> = new Set(
  's f b fp bp rf rb tog inc incs dec decs cl cls bo pc sh blo flo tbl sp sps'.split(' '),
);

/** Cuts a run of letters (lower case) such as "fpdc", "dcs", "rtrf"; null when it holds no base stitch. */
export function cutRun(run: string, terms: Terms): Run | null {
  if (run.length > 16 || !/[cr]/.test(run)) return null;
  for (const [written, base] of ABBREVIATIONS[terms]) {
    const at = run.indexOf(written);
    if (at < 0) continue;
    const before = run.slice(0, at);
    const after = run.slice(at + written.length);
    const herringbone = before === 'h' && base === 't2';
    if (before !== '' && !herringbone && !BEFORE.has(before)) continue;
    if (after !== '' && !AFTER.has(after)) continue;
    return { before, written, after, base };
  }
  return null;
}

/** A ladder stitch's abbreviation in a terminology. */
export function abbreviation(base: BaseStitch, terms: Terms): string {
  return stitchAbbreviation(base, terms);
}
