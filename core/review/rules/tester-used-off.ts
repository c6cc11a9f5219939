/** A tester used more or less yarn than the other makings say of that size. */
import { number, perSize, plain, quoted, text } from '../../findings/phrases.ts';
import { type Compared, yarnOf } from '../../study/yarn.ts';
import { foundIn, type Rule } from '../rule.ts';

/** Two makings agree no better than so, as a rule; where only one other is known, twice that. Common practice, no source. */
const LEAST = 0.05;

const limitOf = ({ others }: Compared): number => (others === null ? 2 * LEAST : Math.max(LEAST, 2 * others));

export const testerUsedOff: Rule = {
  code: 'tester-used-off',
  severity: 'note',
  title: 'A tester used more or less yarn than the others',
  reason:
    'One figure that is far from the rest is a slip of the scales, another hook or yarn, or a size that is not worked as it was meant; the estimate for every size rests on it.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const off = number(data, 'off');
      const yarn = text(data, 'yarn') === '' ? '' : ` of the yarn ${quoted(data, 'yarn')}`;
      const way = off > 0 ? 'more' : 'less';
      return `a tester used ${plain(number(data, 'used'))} ${text(data, 'unit')}${yarn}, ${plain(Math.abs(off))} % ${way} than the other makings say, where ${plain(number(data, 'limit'))} % is usual among them; ask for the weight again, and for the gauge and the hook`;
    }),
  example: null,
  late: true,
  sample: { yarn: 'A', used: 420, unit: 'm', off: 18, limit: 6 },
  check: (study) => {
    const { pattern } = study;
    if (!pattern.workbook.makings.some(({ kind, used }) => kind === 'tester' && used.length > 0)) return [];
    const { compared } = yarnOf(study);
    return [...pattern.yarns.keys(), null].flatMap((index) => {
      const yarn = index === null ? null : pattern.yarns[index]!;
      const worst = pattern.sizes.map(({ id }) => {
        const own = compared
          .filter(
            (one) =>
              one.yarn === index &&
              one.making.kind === 'tester' &&
              one.making.size === id &&
              one.off !== null &&
              Math.abs(one.off) > limitOf(one),
          )
          .sort((a, b) => Math.abs(b.off!) - Math.abs(a.off!))[0];
        return own === undefined
          ? null
          : {
              yarn: yarn === null || pattern.yarns.length < 2 ? '' : yarn.name.trim() || (yarn.key ?? ''),
              used: Math.round(own.amount),
              unit: own.unit === 'metres' ? 'm' : 'g',
              off: Math.round(own.off! * 100),
              limit: Math.round(limitOf(own) * 100),
            };
      });
      return foundIn(testerUsedOff, study, { node: yarn?.id ?? null, text: yarn?.name ?? '' }, worst);
    });
  },
};
