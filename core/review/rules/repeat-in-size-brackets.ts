/** A repeat stands in the kind of bracket in which the same row has its numbers for the sizes. */
import { quote, text } from '../../findings/phrases.ts';
import { type Bracket, bracketName, inOtherBrackets, repeatsInBrackets, sizeBrackets } from '../brackets.ts';
import { found, type Rule } from '../rule.ts';

export const repeatInSizeBrackets: Rule = {
  code: 'repeat-in-size-brackets',
  severity: 'warning',
  title: 'A repeat and the sizes stand in the same brackets',
  reason:
    'In a row with numbers for several sizes the eye looks for its own number in the brackets. Where a repeat stands in the same kind, one is taken for the other.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `this repeat stands in ${text(data, 'kind')} brackets, in which the numbers for the sizes stand in the same row; put the repeat in ${text(data, 'other')} ones, or write it with *`;
  },
  fix: (facts) => {
    const replacement = text(facts[0]!.fact.data, 'replacement');
    return replacement === '' ? null : { label: `Write ${quote(replacement)}`, replacement };
  },
  example: null,
  sample: { kind: 'round', other: 'square', replacement: '[sc in next 3 sts, 2 sc in next st]' },
  check: (study) => {
    const { pattern } = study;
    if (pattern.sizes.length < 2) return [];
    const takenIn = sizeBrackets(study);
    return repeatsInBrackets(pattern).flatMap(({ text: { node, text: words }, uses }) => {
      const taken = takenIn(node);
      return uses.flatMap(({ bracket, from, to }) => {
        if (!taken.has(bracket)) return [];
        const other: Bracket = bracket === '[' ? '(' : '[';
        const data = {
          kind: bracketName(bracket),
          other: bracketName(other),
          replacement: taken.has(other) ? '' : (inOtherBrackets(words.slice(from, to), bracket, other) ?? ''),
        };
        return [found(repeatInSizeBrackets, study, { node, text: words, from, to }, data)];
      });
    });
  },
};
