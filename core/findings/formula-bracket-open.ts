/** A bracket in a formula is not closed. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace } from './phrases.ts';

export const formulaBracketOpen: FindingKind = {
  code: 'formula-bracket-open',
  severity: 'error',
  title: 'A bracket in a formula is not closed',
  reason: 'What belongs together has no end.',
  message: (facts) =>
    `a bracket in ${formulaPlace(facts[0]!.fact.data)} is opened but not closed; add ")" where it ends`,
  example: null,
  sample: { line: 'finished bust', field: 'formula' },
};
