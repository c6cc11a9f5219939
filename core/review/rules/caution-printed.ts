/** A caution that follows from what the pattern makes, besides those for cords and small parts. */
import { quoted, text } from '../../findings/phrases.ts';
import { cautionText } from '../../trade/cautions.ts';
import { cautionsOf } from '../cautions.ts';
import { found, type Rule } from '../rule.ts';

export const cautionPrinted: Rule = {
  code: 'caution-printed',
  severity: 'note',
  title: 'A caution is printed',
  reason:
    'Some sizes, garments, yarns and fabrics call for a caution. It is printed with the pattern; the rules of the place where the item is sold still decide.',
  message: (facts) =>
    `the caution ${quoted(facts[0]!.fact.data, 'caution')} is printed, because of what this pattern makes, for whom and of what`,
  detail: (facts) => text(facts[0]!.fact.data, 'says') || null,
  example: null,
  sample: { caution: 'Hats for babies', says: '' },
  check: (study) =>
    cautionsOf(study)
      .filter(({ when }) => when.notion === undefined)
      .map((caution) =>
        found(cautionPrinted, study, { node: null }, { caution: caution.title, says: cautionText(caution) }),
      ),
};
