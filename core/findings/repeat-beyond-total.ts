/** A repeat is to end before it begins. Sentences only; `core/study` notices it. */
import type { FindingKind } from './kind.ts';
import { count, number, perSize } from './phrases.ts';

export const repeatBeyondTotal: FindingKind = {
  code: 'repeat-beyond-total',
  severity: 'error',
  title: 'A repeat is to end before it begins',
  reason: '"Until there are 40 rows" cannot be followed when more are worked already.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const [total, rows] = [number(data, 'total'), number(data, 'rows')];
      return `this goes on until there are ${count(total, 'row')}, but ${rows} are worked by here, ${rows - total} too many; raise the total, or leave rows out above`;
    }),
  example: null,
  sample: { total: 40, rows: 46 },
};
