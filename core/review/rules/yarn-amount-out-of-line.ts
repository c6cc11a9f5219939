/** The yarn of one size does not go with its stitches, compared with the other sizes. */
import { number, perSize } from '../../findings/phrases.ts';
import { stitchesBySize } from '../cautions.ts';
import { foundIn, type Rule } from '../rule.ts';

/** As far as metres a stitch may part from the middle of all sizes: rounding, and edgings that all sizes share. */
const APART = 0.25;

/** Where rows cannot be worked, their stitches say nothing of the yarn. */
const UNWORKED: ReadonlySet<string> = new Set([
  'too-many-stitches',
  'too-many-rows',
  'repeat-does-not-fit',
  'place-does-not-exist',
  'nothing-to-work-into',
  'edge-not-there',
  'figure-waits',
]);

const middle = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
};

export const yarnAmountOutOfLine: Rule = {
  code: 'yarn-amount-out-of-line',
  severity: 'warning',
  title: 'The yarn of one size does not go with its stitches',
  reason:
    'Each size takes yarn for its own stitches. An amount that stands out from the others is most often a slip, and whoever makes that size runs out or pays too much.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const [metres, about] = [number(data, 'metres'), number(data, 'about')];
      return `${metres} m of yarn is ${metres < about ? 'little' : 'much'} for its ${number(data, 'stitches')} stitches; at what the other sizes take a stitch it would be about ${about} m`;
    }),
  example: null,
  sample: { metres: 90, about: 900, stitches: 24000 },
  check: (study) => {
    const { sizes, yarns } = study.pattern;
    const [first] = yarns;
    const isWorked = !study.findings.some(({ code }) => UNWORKED.has(code));
    if (first === undefined || sizes.length < 3 || !isWorked) return [];
    const metres = sizes.map(({ id }) => {
      const each = yarns.map((yarn) => yarn.metres[id]);
      return each.some((amount) => amount === undefined)
        ? null
        : each.reduce<number>((sum, amount) => sum + amount!, 0);
    });
    const stitches = stitchesBySize(study);
    const rates = sizes.flatMap((_, i) =>
      metres[i] !== null && metres[i]! > 0 && stitches[i]! > 0 ? [metres[i]! / stitches[i]!] : [],
    );
    if (rates.length < 3) return [];
    const usual = middle(rates);
    const { ballMetres } = first;
    const isInBalls =
      yarns.length === 1 &&
      ballMetres !== null &&
      ballMetres > 0 &&
      metres.every((own) => own !== null && own % ballMetres === 0);
    const ball = isInBalls ? ballMetres : 0;
    const data = sizes.map((_, i) => {
      const own = metres[i];
      const worked = stitches[i]!;
      if (own === null || own === undefined || own === 0 || worked === 0) return null;
      const about = usual * worked;
      // Amounts in whole balls step by a ball.
      return Math.abs(own - about) <= Math.max(APART * about, ball)
        ? null
        : { metres: Math.round(own), about: Math.round(about / 10) * 10, stitches: worked };
    });
    return foundIn(yarnAmountOutOfLine, study, { node: first.id, text: first.name }, data);
  },
};
