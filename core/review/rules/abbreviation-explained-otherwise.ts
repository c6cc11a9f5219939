/** An abbreviation of the trade is explained as another stitch. */
import { quoted, text } from '../../findings/phrases.ts';
import { stitchTerms } from '../../trade/terms.ts';
import { found, type Rule } from '../rule.ts';

const plain = (words: string): string =>
  words
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

export const abbreviationExplainedOtherwise: Rule = {
  code: 'abbreviation-explained-otherwise',
  severity: 'error',
  title: 'An abbreviation is explained as another stitch',
  reason:
    'A maker who looks up the letters works what the list says. The letters of one market with the name of the other make every row wrong.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `${quoted(data, 'abbreviation')} is explained as ${quoted(data, 'said')}, but in ${text(data, 'own')} terms it is ${quoted(data, 'meant')}; put the list right, or take it out: the trade's own letters are explained by themselves`;
  },
  example: null,
  sample: { abbreviation: 'dc', said: 'treble', meant: 'double crochet', own: 'UK' },
  check: (study) => {
    const { abbreviations, terms } = study.pattern;
    const other = terms === 'us' ? 'uk' : 'us';
    return Object.entries(abbreviations).flatMap(([short, meaning]) => {
      const own = stitchTerms.find((term) => plain(term[terms].abbr) === plain(short));
      if (own === undefined) return [];
      const meant = own[terms].name;
      const isOther = stitchTerms.some(
        (term) =>
          term !== own &&
          (plain(term[terms].name) === plain(meaning) || plain(term[other].name) === plain(meaning)),
      );
      return plain(meaning) === plain(meant) || !(isOther || plain(own[other].name) === plain(meaning))
        ? []
        : [
            found(
              abbreviationExplainedOtherwise,
              study,
              { node: `abbreviation:${short}` },
              { abbreviation: short, said: meaning, meant, own: terms.toUpperCase() },
            ),
          ];
    });
  },
};
