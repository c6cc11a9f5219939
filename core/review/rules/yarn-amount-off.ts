/** The amount of yarn that a pattern gives is not what finished pieces say its stitches take. */
import { number, perSize, plain, quoted, text } from '../../findings/phrases.ts';
import { yarnOf } from '../../study/yarn.ts';
import { foundIn, type Rule } from '../rule.ts';

/** Below this part of what is reckoned a maker runs out: the reckoning is not surer than that. Common practice, no source. */
const SHORT = 0.98;
/** Above this part of it, margin and all, a maker buys what is not needed. Common practice, no source. */
const LONG = 1.25;

export const yarnAmountOff: Rule = {
  code: 'yarn-amount-off',
  severity: 'warning',
  title: 'The amount of a yarn is not what finished pieces say',
  reason:
    'Whoever buys too little cannot finish, and often cannot buy more of the same dye; whoever buys far too much has paid for nothing.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const yarn = text(data, 'yarn') === '' ? 'the yarn' : `the yarn ${quoted(data, 'yarn')}`;
      const [given, needed, more] = ['given', 'needed', 'more'].map((key) => plain(number(data, key)));
      const way =
        data.short === true
          ? `${given} m is less than the ${needed} m that its stitches take`
          : `${given} m is much more than its stitches take, ${needed} m`;
      return `for ${yarn}, ${way}, going by what finished pieces used; with your margin that makes ${more} m. Enter that, or take the amount out and the estimate is printed`;
    }),
  example: null,
  late: true,
  sample: { yarn: 'A', given: 500, needed: 560, more: 616, short: true },
  check: (study) => {
    const { pattern } = study;
    if (pattern.workbook.makings.length === 0) return [];
    if (pattern.yarns.every(({ metres }) => Object.keys(metres).length === 0)) return [];
    return yarnOf(study).yarns.flatMap(({ yarn, sizes, basis }) => {
      const long = Math.max(LONG, 1 + 2 * (basis?.heldBack ?? 0));
      const off = pattern.sizes.map(({ id }, size) => {
        const given = Object.hasOwn(yarn.metres, id) ? yarn.metres[id]! : null;
        const needed = sizes[size]?.metres ?? null;
        const more = sizes[size]?.withMargin.metres ?? null;
        if (given === null || needed === null || more === null) return null;
        const short = given < needed * SHORT;
        if (!short && given <= more * long) return null;
        const name = yarn.name.trim() || (yarn.key ?? '');
        return { yarn: name, given, needed: Math.ceil(needed), more: Math.ceil(more), short };
      });
      return foundIn(yarnAmountOff, study, { node: yarn.id, text: yarn.name }, off);
    });
  },
};
