/** A formula multiplies two lengths. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace } from './phrases.ts';

export const formulaArea: FindingKind = {
  code: 'formula-area',
  severity: 'error',
  title: 'A formula multiplies two lengths',
  reason: 'That makes an area, which no line holds.',
  message: (facts) =>
    `${formulaPlace(facts[0]!.fact.data)} multiplies a length by a length, which makes an area; multiply by a plain number`,
  example: null,
  sample: { line: 'finished bust', field: 'formula' },
};
