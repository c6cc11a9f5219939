/** Two lines have one name. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted } from './phrases.ts';

export const lineNameRepeated: FindingKind = {
  code: 'line-name-repeated',
  severity: 'error',
  title: 'Two lines have one name',
  reason: 'A formula that uses the name could mean either; the first is taken.',
  message: (facts) =>
    `another line is called ${quoted(facts[0]!.fact.data, 'line')} too, and formulas take the first; give one of them another name`,
  example: null,
  sample: { line: 'back length', field: '' },
};
