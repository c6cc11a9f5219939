/** A size has no value typed. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { sizesOf } from './measures.ts';
import { quoted } from './phrases.ts';

export const lineValueMissing: FindingKind = {
  code: 'line-value-missing',
  severity: 'warning',
  title: 'A size has no value typed',
  reason: 'Everything worked out from the line has no value in that size either.',
  message: (facts) => `${quoted(facts[0]!.fact.data, 'line')} has no value for ${sizesOf(facts)}; type one`,
  example: null,
  sample: { line: 'length to waist', field: '', size: 'M' },
};
