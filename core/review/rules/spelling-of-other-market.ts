/** Prose spells an ordinary word as the other market does. */
import { quote, text } from '../../findings/phrases.ts';
import type { Terms } from '../../trade/stitches.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';

/** Ordinary words of patterns that the markets spell in two ways. Common practice, no source. */
const PAIRS: readonly (readonly [us: string, uk: string])[] = [
  ['color', 'colour'],
  ['colors', 'colours'],
  ['colored', 'coloured'],
  ['center', 'centre'],
  ['centers', 'centres'],
  ['fiber', 'fibre'],
  ['fibers', 'fibres'],
  ['favorite', 'favourite'],
  ['neighboring', 'neighbouring'],
];

const toOther: Readonly<Record<Terms, ReadonlyMap<string, string>>> = {
  us: new Map(PAIRS.map(([us, uk]) => [uk, us])),
  uk: new Map(PAIRS),
};

interface Spelt {
  readonly replacement: string;
  readonly from: number;
  readonly to: number;
}

const WORD = /(?<![\p{L}\p{N}@./-])\p{L}{4,12}(?![\p{L}\p{N}@/]|\.\p{L})/gu;

const spelt = looking((prose, _, terms): readonly Spelt[] =>
  [...prose.matchAll(WORD)].flatMap(({ 0: word, index }) => {
    const own = toOther[terms].get(word.toLowerCase());
    if (own === undefined) return [];
    const replacement = /^\p{Lu}/u.test(word) ? own.charAt(0).toUpperCase() + own.slice(1) : own;
    return [{ replacement, from: index, to: index + word.length }];
  }),
);

export const spellingOfOtherMarket: Rule = {
  code: 'spelling-of-other-market',
  severity: 'note',
  title: 'A word is spelt as in the other market',
  reason:
    'Spelling tells a reader which market a pattern is for, before the terms do. A mixed text makes its terms doubtful.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    return `${quote(voice.words || text(data, 'words'))} is the spelling of the other market in a pattern in ${text(data, 'own')} terms; write ${quote(text(data, 'replacement'))}`;
  },
  fix: (facts) => {
    const replacement = text(facts[0]!.fact.data, 'replacement');
    return { label: `Write ${quote(replacement)}`, replacement };
  },
  example: null,
  sample: { words: 'colour', replacement: 'color', own: 'US' },
  check: (study) =>
    spelt(study.pattern).flatMap(({ text: { node, text: words }, hits }) =>
      hits.map(({ replacement, from, to }) =>
        found(
          spellingOfOtherMarket,
          study,
          { node, text: words, from, to },
          { words: words.slice(from, to), replacement, own: study.pattern.terms.toUpperCase() },
        ),
      ),
    ),
};
