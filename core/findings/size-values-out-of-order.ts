/** A larger size measures less than a smaller one. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { shownValues } from './measures.ts';
import { quoted, words } from './phrases.ts';

export const sizeValuesOutOfOrder: FindingKind = {
  code: 'size-values-out-of-order',
  severity: 'warning',
  title: 'A larger size measures less than a smaller one',
  reason: 'Sizes stand smallest first. A measurement that shrinks where the size grows is most often a slip.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const [smaller = '', larger = ''] = words(data, 'sizes');
    const [first, second] = shownValues(data);
    return `${quoted(data, 'line')} is ${second} for ${larger}, less than the ${first} of ${smaller} before it; check the value and the order of the sizes`;
  },
  example: null,
  sample: {
    line: 'finished bust',
    kind: 'typed',
    dimension: 'length',
    sizes: ['M', 'L'],
    values: [100, 96],
    shown: ['100 cm', '96 cm'],
    shownIn: ['39¼ in', '37¾ in'],
  },
};
