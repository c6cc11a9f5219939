/** There are rows, and no size that works them. */
import { found, type Rule } from '../rule.ts';

export const sizesNotGiven: Rule = {
  code: 'sizes-not-given',
  severity: 'error',
  title: 'The pattern has no size',
  reason:
    'Every count, measurement and amount of yarn is of a size. Without one no row is worked, nothing is checked, and the pages are printed with gaps for their numbers.',
  message: () =>
    'the pattern has no size, so no row is worked and nothing can be checked; add one under Sizes, if it is only "One size"',
  example: null,
  sample: {},
  check: (study) =>
    study.pattern.sizes.length === 0 &&
    study.pattern.pieces.some(({ blocks }) => blocks.some(({ type }) => type === 'row'))
      ? [found(sizesNotGiven, study, { node: null })]
      : [],
};
