/** A yarn of several is listed, and no row or note uses its letter. */
import { quoted } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { instructionsOf } from '../texts.ts';

export const yarnNotUsed: Rule = {
  code: 'yarn-not-used',
  severity: 'warning',
  title: 'A yarn is listed that no row uses',
  reason: 'A buyer pays for every yarn on the list.',
  message: (facts) =>
    `no row or note works with ${quoted(facts[0]!.fact.data, 'yarn')}; say where it is used, or take it off the list`,
  example: null,
  sample: { yarn: 'C' },
  check: (study) => {
    const { yarns } = study.pattern;
    if (yarns.length < 2) return [];
    return yarns.flatMap(({ id, key, name }) => {
      const word = key?.trim() ?? '';
      if (word === '') return [];
      const pattern = new RegExp(
        String.raw`(?<![\p{L}\p{N}])${word.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&')}(?![\p{L}\p{N}])`,
        'u',
      );
      const isUsed = instructionsOf(study.pattern).some(
        ({ text }) => pattern.test(text) || (name.trim() !== '' && text.includes(name.trim())),
      );
      return isUsed ? [] : [found(yarnNotUsed, study, { node: id, text: name }, { yarn: word })];
    });
  },
};
