/** Two sizes come out equal. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { listed, number, words } from './phrases.ts';

export const sizesComeOutEqual: FindingKind = {
  code: 'sizes-come-out-equal',
  severity: 'warning',
  title: 'Two sizes come out equal',
  reason: 'When every printed measurement is the same, one of the two sizes is not needed.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const lines = number(data, 'lines');
    return `${listed(words(data, 'sizes'))} come out the same in ${lines === 1 ? 'the one printed measurement' : `all ${lines} printed measurements`}; leave one out, or fit them to a finer multiple`;
  },
  example: null,
  sample: { sizes: ['M', 'L'], lines: 4 },
};
