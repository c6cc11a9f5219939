/** A sign is missing in a formula. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace, quoted } from './phrases.ts';

export const formulaOperatorMissing: FindingKind = {
  code: 'formula-operator-missing',
  severity: 'error',
  title: 'A sign is missing in a formula',
  reason: 'Two values side by side do not say whether to add or to multiply.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `a sign (+ − × ÷) is missing between ${quoted(data, 'before')} and ${quoted(data, 'after')} in ${formulaPlace(data)}`;
  },
  example: null,
  sample: { line: 'finished bust', field: 'formula', before: 'bust', after: 'ease' },
};
