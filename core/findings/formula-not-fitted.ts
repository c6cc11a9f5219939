/** A width is asked of a line that has none. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace, quoted } from './phrases.ts';

export const formulaNotFitted: FindingKind = {
  code: 'formula-not-fitted',
  severity: 'error',
  title: 'A width is asked of a line that has none',
  reason: '"Width of" is what a fitted line of stitches or rows really makes.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `${formulaPlace(data)} asks for the width of ${quoted(data, 'name')}, but only a line of stitches or rows has one; name the line by itself`;
  },
  example: null,
  sample: { line: 'finished bust', field: 'formula', name: 'ease' },
};
