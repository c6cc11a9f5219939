/** Part of a formula is not understood. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace, quoted } from './phrases.ts';

export const formulaUnread: FindingKind = {
  code: 'formula-unread',
  severity: 'error',
  title: 'Part of a formula is not understood',
  reason: 'A formula is made of lines, numbers with cm, mm, in or %, the signs + − × ÷ and brackets.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `${quoted(data, 'found')} is not understood in ${formulaPlace(data)}; use lines, numbers with cm, mm, in or %, + − × ÷ and brackets`;
  },
  example: null,
  sample: { line: 'finished bust', field: 'formula', found: '&' },
};
