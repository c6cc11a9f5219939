/** A size has no amount of a yarn. */
import { quoted, sizesNamed, text } from '../../findings/phrases.ts';
import { yarnOf } from '../../study/yarn.ts';
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
    return `${yarn} has no amount for ${sizesNamed(sizes, voice)}; enter the metres that each takes, 0 where it takes none, or weigh what a finished piece used`;
  },
  example: null,
  late: true,
  sample: { yarn: 'A' },
  check: (study) => {
    const { pattern } = study;
    return pattern.yarns.flatMap((yarn, index) => {
      const name = yarn.name.trim() || (yarn.key ?? '');
      const missing = pattern.sizes.map(({ id }) => !Object.hasOwn(yarn.metres, id));
      // What was really made tells the amount, and that is printed.
      const reckoned =
        missing.includes(true) && pattern.workbook.makings.length > 0
          ? yarnOf(study).yarns[index]!.sizes
          : pattern.sizes.map(() => null);
      const sizes = missing.map((isMissing, size) =>
        isMissing && reckoned[size] === null ? { yarn: name } : null,
      );
      return foundIn(yarnAmountNotGiven, study, { node: yarn.id, text: yarn.name }, sizes);
    });
  },
};
