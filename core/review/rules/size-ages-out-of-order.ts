/** A size for older children stands before one for younger. */
import { listed, words } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';

export const sizeAgesOutOfOrder: Rule = {
  code: 'size-ages-out-of-order',
  severity: 'warning',
  title: 'The ages of two sizes are out of order',
  reason:
    'Sizes stand from the smallest up, in every list. Ages out of order mean that two sizes have changed places, or that one age is a slip; cautions and body measurements go by them.',
  message: (facts) =>
    `the sizes ${listed(words(facts[0]!.fact.data, 'sizes'), 'and')} are for ages that are not in order; put the ages right, or change the order of the sizes`,
  example: null,
  sample: { sizes: ['Toddler', 'Child'] },
  check: (study) => {
    const { sizes } = study.pattern;
    return sizes.slice(1).flatMap((size, i) => {
      const before = sizes[i]!;
      const isOff =
        size.age !== null &&
        before.age !== null &&
        (size.age[0] < before.age[0] || size.age[1] < before.age[1]);
      return isOff
        ? [
            found(
              sizeAgesOutOfOrder,
              study,
              { node: size.id, text: size.label },
              { sizes: [before.label, size.label] },
            ),
          ]
        : [];
    });
  },
};
