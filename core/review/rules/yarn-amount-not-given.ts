/** A size has no amount of a yarn. */
import { quoted, sizesNamed, text } from '../../findings/phrases.ts';
import { foundIn, type Rule } from '../rule.ts';

export const yarnAmountNotGiven: Rule = {
  code: 'yarn-amount-not-given',
  severity: 'warning',
  title: 'The amount of a yarn is not given',
  reason: 'A maker buys the yarn for one size before beginning, and often cannot buy more of the same dye.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const sizes = facts.flatMap(({ size }) => (size === null ? [] : [size]));
    const yarn = text(data, 'yarn') === '' ? 'the yarn' : `the yarn ${quoted(data, 'yarn')}`;
    return `${yarn} has no amount for ${sizesNamed(sizes, voice)}; enter the metres that each takes, or 0 where it takes none`;
  },
  example: null,
  sample: { yarn: 'A' },
  check: (study) =>
    study.pattern.yarns.flatMap((yarn) => {
      const name = yarn.name.trim() || (yarn.key ?? '');
      const sizes = study.pattern.sizes.map((size) =>
        Object.hasOwn(yarn.metres, size.id) ? null : { yarn: name },
      );
      return foundIn(yarnAmountNotGiven, study, { node: yarn.id, text: yarn.name }, sizes);
    }),
};
