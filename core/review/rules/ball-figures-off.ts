/** The weight or the length of a ball is nothing, or no yarn of its weight is so long. */
import type { Yarn } from '../../document/pattern.ts';
import { number, quoted, text } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';

/**
 * Metres of 100 g of yarn, from the thinnest to the thickest of each weight, with as much again to either side: fibres
 * differ, and only a slip of the keys is to be told. Common practice, no source.
 */
const METRES: readonly (readonly [least: number, most: number])[] = [
  [250, 1600],
  [160, 1000],
  [130, 700],
  [100, 560],
  [75, 450],
  [45, 320],
  [25, 220],
  [8, 140],
];

function faultOf({
  ballGrams,
  ballMetres,
  weight,
}: Yarn): { readonly how: string; readonly per: number } | null {
  if (ballGrams !== null && ballGrams <= 0) return { how: 'grams', per: 0 };
  if (ballMetres !== null && ballMetres <= 0) return { how: 'metres', per: 0 };
  if (ballGrams === null || ballMetres === null || weight === null) return null;
  const range = METRES[weight];
  const per = (ballMetres / ballGrams) * 100;
  if (range === undefined || (per >= range[0] && per <= range[1])) return null;
  return { how: per < range[0] ? 'short' : 'long', per };
}

export const ballFiguresOff: Rule = {
  code: 'ball-figures-off',
  severity: 'warning',
  title: 'The weight and the length of a ball cannot be',
  reason:
    'Balls to buy, grams and prices are all reckoned from the weight and the length of a ball. A slip there goes through every size.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const how = text(data, 'how');
    const name = quoted(data, 'yarn');
    if (how === 'grams' || how === 'metres')
      return `a ball of ${name} has 0 ${how === 'grams' ? 'g' : 'm'}; enter what its band says, or leave it open`;
    return `a ball of ${name} would have ${number(data, 'per')} m in 100 g, which is far too ${how} for its weight; look at its band again`;
  },
  example: null,
  sample: { yarn: 'Fen DK', how: 'short', per: 22 },
  check: (study) =>
    study.pattern.yarns.flatMap((yarn) => {
      const fault = faultOf(yarn);
      return fault === null
        ? []
        : [
            found(
              ballFiguresOff,
              study,
              { node: yarn.id, text: yarn.name },
              { yarn: yarn.name || (yarn.key ?? ''), how: fault.how, per: Math.round(fault.per) },
            ),
          ];
    }),
};
