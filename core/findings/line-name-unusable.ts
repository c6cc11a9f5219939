/** A line's name cannot be used in formulas. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted, text } from './phrases.ts';

export const lineNameUnusable: FindingKind = {
  code: 'line-name-unusable',
  severity: 'error',
  title: "A line's name cannot be used in formulas",
  reason: 'A name without a letter cannot be told from a number.',
  message: (facts) =>
    `${text(facts[0]!.fact.data, 'line').trim() === '' ? 'a line has no name' : `the name ${quoted(facts[0]!.fact.data, 'line')} has no letter in it`}, so no formula can use it; give it a name in words`,
  example: null,
  sample: { line: '12', field: '' },
};
