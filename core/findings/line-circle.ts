/** Lines need one another in a circle. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace, listed, quote, words } from './phrases.ts';

export const lineCircle: FindingKind = {
  code: 'line-circle',
  severity: 'error',
  title: 'Lines need one another in a circle',
  reason: 'A line that is worked out from itself has no value.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const lines = words(data, 'lines').map(quote);
    return lines.length <= 1
      ? `${formulaPlace(data)} needs the line itself, so it has no value`
      : `${listed(lines)} need one another, so none of them has a value; work one of them out from something else`;
  },
  example: null,
  sample: { line: 'finished bust', field: 'formula', lines: ['finished bust', 'back width'] },
};
