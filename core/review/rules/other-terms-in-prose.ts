/** Prose uses words of the market that the pattern is not written for. */
import { quote, text } from '../../findings/phrases.ts';
import { termText } from '../../notation/term-tokens.ts';
import type { Terms } from '../../trade/stitches.ts';
import { onlyIn } from '../../trade/terms.ts';
import { remembered } from '../remember.ts';
import { found, type Rule } from '../rule.ts';
import { textsOf } from '../texts.ts';

/** Words of one market alone that are plain English too, or that both markets write. */
const AMBIGUOUS: ReadonlySet<string> = new Set(['miss', 'tension', 'ss', 'yo', 'yoh', 'sk']);

/** Names in full that only one market has; "double crochet" and "treble" belong to both. */
const NAMES: Readonly<Record<Terms, readonly string[]>> = {
  us: ['single crochet', 'half double crochet', 'half double', 'gauge swatch'],
  uk: ['half treble', 'half treble crochet', 'tension square', 'tension swatch'],
};

function wordsOnlyIn(terms: Terms): ReadonlyMap<string, string> {
  const words = [...onlyIn[terms].map((each) => each.replace(/\s*\(.*$/u, '')), ...NAMES[terms]];
  return new Map(
    words.filter((word) => !AMBIGUOUS.has(word.toLowerCase())).map((word) => [word.toLowerCase(), word]),
  );
}

const ONLY: Readonly<Record<Terms, ReadonlyMap<string, string>>> = {
  us: wordsOnlyIn('us'),
  uk: wordsOnlyIn('uk'),
};

const MARKET: Readonly<Record<Terms, string>> = { us: 'US', uk: 'UK' };

/** Places of words that only `terms` has. A line that names both markets compares them, and is left alone. */
const placesOf = remembered((prose, under): readonly { from: number; to: number }[] => {
  const terms: Terms = under === 'us' ? 'us' : 'uk';
  const source = termText(prose, 'prose');
  const places: { from: number; to: number }[] = [];
  for (let at = 0; at < source.tokens.length; ) {
    let taken = 1;
    const first = source.tokens[at]!;
    if (!first.address && !source.lines[first.line]!.compares) {
      for (let count = 3; count > 0; count--) {
        const tokens = source.tokens.slice(at, at + count);
        const words = tokens.map((token) => token.word).join(' ');
        if (tokens.length < count || !(ONLY[terms].has(words) || ONLY[terms].has(words.replace(/s$/u, ''))))
          continue;
        places.push({ from: first.from, to: tokens.at(-1)!.to });
        taken = count;
        break;
      }
    }
    at += taken;
  }
  return places;
});

export const otherTermsInProse: Rule = {
  code: 'other-terms-in-prose',
  severity: 'warning',
  title: "Prose uses the other market's terms",
  reason:
    'The same letters mean different stitches in US and UK terms. One word of the other market makes a reader doubt all of them.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    return `${quote(voice.words || text(data, 'words'))} is a ${text(data, 'other')} term in a pattern written in ${text(data, 'own')} terms; write it in ${text(data, 'own')} terms, and the other edition converts it`;
  },
  example: null,
  sample: { words: 'half treble', own: 'US', other: 'UK' },
  check: (study) => {
    const { terms } = study.pattern;
    const other: Terms = terms === 'us' ? 'uk' : 'us';
    return textsOf(study.pattern).flatMap(({ node, text, kind }) => {
      if (kind !== 'prose') return [];
      return placesOf(text, other).map((span) =>
        found(
          otherTermsInProse,
          study,
          { node, text, ...span },
          {
            words: text.slice(span.from, span.to),
            own: MARKET[terms],
            other: MARKET[other],
          },
        ),
      );
    });
  },
};
