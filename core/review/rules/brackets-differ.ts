/** Repeats, or numbers for the sizes, stand now in one kind of bracket and now in another. */
import { quote, text } from '../../findings/phrases.ts';
import type { Study } from '../../study/index.ts';
import {
  anyListOfFigures,
  type Bracket,
  type BracketedText,
  bracketName,
  inOtherBrackets,
  listsInBrackets,
  repeatsInBrackets,
  sizeBrackets,
} from '../brackets.ts';
import { found, type Rule } from '../rule.ts';

/** The kind used most, of equals the one met first; null where there is only one. */
function usual(texts: readonly BracketedText[]): Bracket | null {
  const times = new Map<Bracket, number>();
  for (const { uses } of texts)
    for (const { bracket } of uses) times.set(bracket, (times.get(bracket) ?? 0) + 1);
  return times.size < 2 ? null : [...times].reduce((most, own) => (own[1] > most[1] ? own : most))[0];
}

/** The kind in which the pattern has its sizes: figures are printed in round ones. */
function usualOfSizes(study: Study, lists: readonly BracketedText[]): Bracket | null {
  const isOdd = lists.some(({ uses }) => uses.some(({ bracket }) => bracket !== '('));
  return isOdd && anyListOfFigures(study) ? '(' : usual(lists);
}

/** What a finding says that the brackets stand around. */
const AROUND: Readonly<Record<string, string>> = {
  repeats: 'repeats',
  sizes: 'numbers for the sizes',
};

export const bracketsDiffer: Rule = {
  code: 'brackets-differ',
  severity: 'note',
  title: 'The same thing stands in two kinds of brackets',
  reason:
    'Readers learn from the first rows which brackets are for sizes and which for repeats. Another kind later on makes them look for another meaning.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `${AROUND[text(data, 'what')] ?? ''} stand in ${text(data, 'usual')} brackets in this pattern, but here in ${text(data, 'kind')} ones; keep to one kind throughout`;
  },
  fix: (facts) => {
    const replacement = text(facts[0]!.fact.data, 'replacement');
    return replacement === '' ? null : { label: `Write ${quote(replacement)}`, replacement };
  },
  example: null,
  sample: { what: 'repeats', kind: 'round', usual: 'square', replacement: '[sc in next st, inc]' },
  check: (study) => {
    const { pattern } = study;
    const takenIn = sizeBrackets(study);
    const odd = (what: string, texts: readonly BracketedText[], own: Bracket | null) =>
      own === null
        ? []
        : texts.flatMap(({ text: { node, text: words }, uses }) =>
            uses.flatMap(({ bracket, from, to }) => {
              if (bracket === own) return [];
              // A repeat goes out of the way of sizes in its usual brackets; that it does not is another rule's.
              const taken = what === 'repeats' ? takenIn(node) : null;
              if (taken?.has(own) || taken?.has(bracket)) return [];
              const replacement = inOtherBrackets(words.slice(from, to), bracket, own) ?? '';
              const data = { what, kind: bracketName(bracket), usual: bracketName(own), replacement };
              return [found(bracketsDiffer, study, { node, text: words, from, to }, data)];
            }),
          );
    const repeats = repeatsInBrackets(pattern);
    const lists = listsInBrackets(pattern);
    return [...odd('sizes', lists, usualOfSizes(study, lists)), ...odd('repeats', repeats, usual(repeats))];
  },
};
