/** Something is written in two ways: one of them is the pattern's, the other stands in a few places. */
import { quote, quoted, text } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { usualWays, wayName, waysUsed, writtenAs } from '../wording.ts';

export const wordingDiffers: Rule = {
  code: 'wording-differs',
  severity: 'note',
  title: 'The same thing is written in two ways',
  reason:
    'A reader who meets a second form looks for a second meaning. One form throughout is read without thinking.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const words = voice.words.trim() === '' ? quoted(data, 'words') : quote(voice.words);
    return `${words} is written here, but the pattern mostly has ${text(data, 'usual')}; write it in one way throughout`;
  },
  fix: (facts) => {
    const replacement = text(facts[0]!.fact.data, 'replacement');
    return replacement === '' ? null : { label: `Write ${quote(replacement)}`, replacement };
  },
  example: null,
  sample: { words: 'skip', usual: '"sk"', replacement: 'sk' },
  check: (study) => {
    const { terms } = study.pattern;
    const usual = usualWays(study.pattern);
    if (usual.every((way) => way === null)) return [];
    return waysUsed(study.pattern).flatMap(({ text: { node, text }, hits }) =>
      hits.flatMap(({ choice, way, from, to }) => {
        const own = usual[choice] ?? null;
        if (own === null || own === way) return [];
        const words = text.slice(from, to);
        const data = {
          words,
          usual: wayName(terms, choice, own),
          replacement: writtenAs(terms, choice, own, words) ?? '',
        };
        return [found(wordingDiffers, study, { node, text, from, to }, data)];
      }),
    );
  },
};
