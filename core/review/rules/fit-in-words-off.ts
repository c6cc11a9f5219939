/** The words say how the garment fits, and its finished measurements come out otherwise. */
import { length, number, perSize, quote, quoted, text } from '../../findings/phrases.ts';
import { type Fit, fitOf, fits } from '../../trade/ease.ts';
import { formatLength, fromInches, type Length, ZERO } from '../../trade/units.ts';
import { chestEase } from '../chest.ts';
import { fitWords } from '../fit-words.ts';
import { foundIn, type Rule } from '../rule.ts';

/** Ease that lies no further than this outside a band may be called by its name: this program's own choice. */
const SLACK = fromInches(1)!;

const [, , CLASSIC] = fits as readonly Fit[];

/** What the word promises and an ease does not keep; what is closer than close is close, and so with loose. */
function missed(fit: Fit, ease: Length): { readonly most: boolean; readonly limit: Length } | null {
  const at = fits.indexOf(fit) - fits.indexOf(CLASSIC!);
  if (at <= 0 && fit.most !== null && ease.compare(fit.most.add(SLACK)) > 0)
    return { most: true, limit: fit.most };
  if (at >= 0 && fit.least !== null && ease.compare(fit.least.sub(SLACK)) < 0)
    return { most: false, limit: fit.least };
  return null;
}

const shown = (key: string, value: Length) => ({
  [key]: formatLength(value, 'metric'),
  [`${key}In`]: formatLength(value, 'imperial'),
});

export const fitInWordsOff: Rule = {
  code: 'fit-in-words-off',
  severity: 'warning',
  title: 'The words say another fit than the measurements make',
  reason:
    'A maker who reads "oversized" chooses a size by it. The word and the room that the finished measurements give have to say the same.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const limit = number(data, 'most') === 1 ? 'no more than' : 'at least';
      const than =
        text(data, 'limit') === '0 cm'
          ? 'as wide as the body'
          : `${length(data, 'limit')} wider than the body`;
      const way = number(data, 'less') === 1 ? 'narrower' : 'wider';
      return `${quoted(data, 'words')} is said of what is ${limit} ${than} at the chest, but ${quoted(data, 'heading')} comes out ${length(data, 'made')} ${way}; change the word, or the ease`;
    }),
  fix: (facts) => {
    const replacement = text(facts[0]!.fact.data, 'replacement');
    return replacement === '' ? null : { label: `Write ${quote(replacement)}`, replacement };
  },
  example: null,
  sample: {
    words: 'Oversized',
    heading: 'Finished bust',
    most: 0,
    less: 0,
    limit: '15 cm',
    limitIn: '6 in',
    made: '5 cm',
    madeIn: '2 in',
    replacement: 'Classic',
  },
  check: (study) => {
    const seen = fitWords(study.pattern).filter(
      ({ text: { node } }) => node.startsWith('cover:') || node.startsWith('notes:'),
    );
    const chest = seen.length === 0 ? null : chestEase(study);
    if (chest === null) return [];
    const real = new Set(chest.ease.flatMap((ease) => (ease === null ? [] : [fitOf(ease)])));
    return seen.flatMap(({ text: { node, text }, hits }) =>
      hits.flatMap(({ fit, from, to, alone }) => {
        if (alone && node !== 'cover:fit') return [];
        const [name] = real.size === 1 ? [...real][0]!.names : [];
        const replacement =
          alone && name !== undefined ? `${name.charAt(0).toUpperCase()}${name.slice(1)}` : '';
        const data = chest.ease.map((ease) => {
          const off = ease === null ? null : missed(fit, ease);
          if (ease === null || off === null) return null;
          return {
            words: text.slice(from, to),
            heading: chest.heading,
            most: off.most ? 1 : 0,
            less: ease.compare(ZERO) < 0 ? 1 : 0,
            ...shown('limit', off.limit),
            ...shown('made', ease.abs()),
            replacement,
          };
        });
        return foundIn(fitInWordsOff, study, { node, text, from, to }, data);
      }),
    );
  },
};
