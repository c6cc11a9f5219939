/** A bracket in a formula was never opened. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace } from './phrases.ts';

export const formulaBracketClose: FindingKind = {
  code: 'formula-bracket-close',
  severity: 'error',
  title: 'A bracket in a formula was never opened',
  reason: 'What belongs together has no beginning.',
  message: (facts) =>
    `a bracket in ${formulaPlace(facts[0]!.fact.data)} is closed but was never opened; add "(" where it begins, or take the ")" out`,
  example: null,
  sample: { line: 'finished bust', field: 'formula' },
};
