/** No yarn is given, or one that nobody could find another for. */
import { listed, quoted, text, words } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';

export const yarnNotGiven: Rule = {
  code: 'yarn-not-given',
  severity: 'warning',
  title: 'The yarn is not given',
  reason:
    'A maker must be able to find the yarn, or another like it: by its name or weight, its fibre, and the length and weight of a ball.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const missing = words(data, 'missing');
    if (missing.length === 0) return 'the pattern names no yarn; enter it under Materials';
    return `${text(data, 'yarn') === '' ? 'a yarn' : `the yarn ${quoted(data, 'yarn')}`} lacks ${listed(missing)}; whoever wants another yarn needs ${missing.length === 1 ? 'it' : 'them'}`;
  },
  example: null,
  sample: { yarn: 'A', missing: ['its weight'] },
  check: (study) => {
    const { yarns } = study.pattern;
    if (yarns.length === 0) return [found(yarnNotGiven, study, { node: null }, { yarn: '', missing: [] })];
    return yarns.flatMap((yarn) => {
      const missing = [
        ...(yarn.name.trim() === '' && yarn.weight === null ? ['a name'] : []),
        ...(yarn.weight === null ? ['its weight'] : []),
        ...(yarn.fibre.trim() === '' ? ['its fibre'] : []),
        ...(yarn.ballMetres === null || yarn.ballGrams === null ? ['the length and weight of a ball'] : []),
      ];
      const name = yarn.name.trim() || (yarn.key ?? '');
      return missing.length === 0
        ? []
        : [found(yarnNotGiven, study, { node: yarn.id, text: yarn.name }, { yarn: name, missing })];
    });
  },
};
