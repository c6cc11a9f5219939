/** Brackets in a formula stand inside one another too deeply. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace, number } from './phrases.ts';

export const formulaTooDeep: FindingKind = {
  code: 'formula-too-deep',
  severity: 'error',
  title: 'Brackets in a formula stand inside one another too deeply',
  reason: 'Nobody can check such a formula; it is not read.',
  message: (facts) =>
    `brackets in ${formulaPlace(facts[0]!.fact.data)} stand inside one another more than ${number(facts[0]!.fact.data, 'limit')} deep; make lines of its parts and name them here`,
  example: null,
  sample: { line: 'finished bust', field: 'formula', limit: 50 },
};
