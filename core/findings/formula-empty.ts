/** A formula is empty. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace } from './phrases.ts';

export const formulaEmpty: FindingKind = {
  code: 'formula-empty',
  severity: 'error',
  title: 'A formula is empty',
  reason: 'A line without a formula has no value.',
  message: (facts) =>
    `${formulaPlace(facts[0]!.fact.data)} is empty; write what it is worked out from, for example "bust + ease"`,
  example: null,
  sample: { line: 'finished bust', field: 'formula' },
};
