/** A choice has only one value to choose from. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace, text } from './phrases.ts';

export const formulaChoiceOfOne: FindingKind = {
  code: 'formula-choice-of-one',
  severity: 'error',
  title: 'A choice has only one value to choose from',
  reason: '"Larger of" needs at least two values, with "and" between them.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `"${text(data, 'pick')} of" in ${formulaPlace(data)} has only one value; write "${text(data, 'pick')} of A and B"`;
  },
  example: null,
  sample: { line: 'cuff stitches', field: 'formula', pick: 'larger' },
};
