/** Two sizes in a row measure the same. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { shownValues } from './measures.ts';
import { listed, quoted, text, words } from './phrases.ts';

export const sizeValuesEqual: FindingKind = {
  code: 'size-values-equal',
  severity: 'warning',
  title: 'Two sizes in a row measure the same',
  reason: 'A size that measures what its neighbour does is no size of its own in that measurement.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const fix =
      text(data, 'kind') === 'typed'
        ? 'put the number right, if one of them is meant to be larger'
        : 'a finer multiple or another ease would tell them apart';
    return `${quoted(data, 'line')} is the same for ${listed(words(data, 'sizes'))}: ${shownValues(data)[0]}; ${fix}`;
  },
  example: null,
  sample: {
    line: 'finished bust',
    kind: 'stitches',
    dimension: 'length',
    sizes: ['M', 'L'],
    values: [100, 100],
    shown: ['100 cm', '100 cm'],
    shownIn: ['39¼ in', '39¼ in'],
  },
};
