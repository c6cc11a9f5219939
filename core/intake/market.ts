/**
 * Whether a text is written in US or in UK terms, with what speaks for either: what it says itself, words that only
 * one market uses, and turning chains that fit the heights of its stitches. It guesses in the open: the evidence is
 * shown, and where it is thin or speaks for both the maker is asked.
 */

import type { Terms } from '../trade/stitches.ts';
import { onlyIn } from '../trade/terms.ts';
import { evidenceWords } from './sentences.ts';

export interface Evidence {
  readonly terms: Terms;
  /** How much it weighs: what the text says itself more than any word. */
  readonly weight: number;
  /** A sentence. */
  readonly why: string;
}

export interface MarketGuess {
  /** The likelier terms; null where nothing speaks for either. */
  readonly terms: Terms | null;
  /** Whether they can be taken without asking. */
  readonly sure: boolean;
  readonly evidence: readonly Evidence[];
}

const SAID: readonly (readonly [Terms, RegExp])[] = [
  [
    'us',
    /\b(?:U\.?S\.?A?\.?|American|north american)\s+(?:crochet\s+)?(?:terms?|terminology|abbreviations?|stitch names)\b|\b(?:terms?|terminology|abbreviations?|stitches)\s*[(:–-]\s*U\.?S\b/giu,
  ],
  [
    'uk',
    /\b(?:U\.?K\.?|British|english)\s+(?:crochet\s+)?(?:terms?|terminology|abbreviations?|stitch names)\b|\b(?:terms?|terminology|abbreviations?|stitches)\s*[(:–-]\s*U\.?K\b/giu,
  ],
];

/** A US word that UK texts use as well, or the other way round, is no evidence. */
const SHARED: ReadonlySet<string> = new Set(['sk', 'yoh (also some US)']);
/** Words of ordinary English, which weigh little. */
const ORDINARY: ReadonlySet<string> = new Set(['miss', 'tension', 'yo']);

/** Names and spellings of one market beside the letters of the tables (common practice, no source). */
const MORE: readonly (readonly [Terms, RegExp, number])[] = [
  ['us', /\bsingle crochet\b/giu, 4],
  ['us', /\bhalf double crochet\b/giu, 4],
  ['uk', /\bhalf treble\b/giu, 4],
  ['us', /\bgauge\b/giu, 1],
  ['us', /\bcolors?\b/giu, 1],
  ['uk', /\bcolours?\b/giu, 1],
  ['uk', /\bmiss(?:ing)? (?:the )?(?:next|first|last|\d)/giu, 2],
];

/** Chains that begin a row and say what they stand for, or where the first stitch goes: heights tell the stitch. */
const CHAINS: readonly (readonly [Terms, RegExp])[] = [
  [
    'us',
    /\bch(?:ain)?\s?3\s?[,(]?\s?\(?(?:at the (?:start|beginning) of (?:a|each|every) (?:row|rnd|round) )?counts as (?:a |1 |first |one )?dc\b/giu,
  ],
  ['us', /\bch(?:ain)?\s?4\s?[,(]?\s?\(?counts as (?:a |1 |first |one )?tr\b/giu],
  ['uk', /\bch(?:ain)?\s?3\s?[,(]?\s?\(?counts as (?:a |1 |first |one )?tr\b/giu],
  ['uk', /\bch(?:ain)?\s?4\s?[,(]?\s?\(?counts as (?:a |1 |first |one )?dtr\b/giu],
  ['uk', /\b3\s?ch\s?\(?(?:counts as|=) (?:a |1 |first |one )?tr\b/giu],
  ['us', /\bdc in (?:the )?(?:4th|fourth) ch\b/giu],
  ['uk', /\bdc in(?:to)? (?:the )?(?:2nd|second) ch\b/giu],
  ['uk', /\btr in(?:to)? (?:the )?(?:4th|fourth) ch\b/giu],
  ['us', /\btr in (?:the )?(?:5th|fifth) ch\b/giu],
];

const times = (text: string, pattern: RegExp): readonly string[] =>
  [...text.matchAll(pattern)].map(([found]) => found);

/** The terms that a text is likely written in. */
export function guessMarket(written: string): MarketGuess {
  // A text all in capitals has no names to be told from words.
  const text = /\p{Ll}/u.test(written) ? written : written.toLowerCase();
  const evidence: Evidence[] = [];
  for (const [terms, pattern] of SAID) {
    const [first] = times(text, pattern);
    if (first !== undefined) evidence.push({ terms, weight: 20, why: evidenceWords.said(first.trim()) });
  }
  for (const terms of ['us', 'uk'] as const) {
    for (const word of onlyIn[terms]) {
      if (SHARED.has(word)) continue;
      const found = times(text, new RegExp(`(?<![\\p{L}])${word}s?(?![\\p{L}])`, 'giu'));
      // "SC" or "Miss" in capitals may be a name.
      const met = found.filter((one) => one !== one.toUpperCase() || one.length > 2).length;
      if (met > 0)
        evidence.push({
          terms,
          weight: (ORDINARY.has(word) ? 1 : 4) * Math.min(met, 5),
          why: evidenceWords.word(terms, word, met),
        });
    }
  }
  for (const [terms, pattern, weight] of MORE) {
    const found = times(text, pattern);
    if (found.length > 0)
      evidence.push({
        terms,
        weight: weight * Math.min(found.length, 3),
        why: evidenceWords.word(terms, found[0]!.toLowerCase(), found.length),
      });
  }
  for (const [terms, pattern] of CHAINS) {
    const [first] = times(text, pattern);
    if (first !== undefined) evidence.push({ terms, weight: 6, why: evidenceWords.chain(terms, first) });
  }
  const sum = (terms: Terms) =>
    evidence.reduce((all, one) => all + (one.terms === terms ? one.weight : 0), 0);
  const [us, uk] = [sum('us'), sum('uk')];
  const terms = us === uk ? null : us > uk ? 'us' : 'uk';
  const [most, least] = [Math.max(us, uk), Math.min(us, uk)];
  return {
    terms,
    sure: most >= 4 && least * 3 <= most,
    evidence: evidence.sort((a, b) => b.weight - a.weight),
  };
}
