/** Something is missing in a formula. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace, text } from './phrases.ts';

export const formulaOperandMissing: FindingKind = {
  code: 'formula-operand-missing',
  severity: 'error',
  title: 'Something is missing in a formula',
  reason: 'A sign needs a number or a line on either side.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const after = text(data, 'after');
    return `${after === '' ? `${formulaPlace(data)} begins with a sign` : `a number or a line is missing after "${after}" in ${formulaPlace(data)}`}; write what belongs there`;
  },
  example: null,
  sample: { line: 'finished bust', field: 'formula', after: '+' },
};
