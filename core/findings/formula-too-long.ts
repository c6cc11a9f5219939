/** A formula is too long to be read. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace, number } from './phrases.ts';

export const formulaTooLong: FindingKind = {
  code: 'formula-too-long',
  severity: 'error',
  title: 'A formula is too long to be read',
  reason: 'A formula of that length is a slip, or is better made of several lines.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `${formulaPlace(data)} is ${number(data, 'length')} letters long, and up to ${number(data, 'limit')} are read; make lines of its parts and name them here`;
  },
  example: null,
  sample: { line: 'finished bust', field: 'formula', length: 1400, limit: 1000 },
};
