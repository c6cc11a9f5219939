/** A formula reckons with a line that is no number. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace, quoted, text } from './phrases.ts';

export const formulaNoNumber: FindingKind = {
  code: 'formula-no-number',
  severity: 'error',
  title: 'A formula reckons with a line that is no number',
  reason: 'A shaping schedule or a spread is worked in rows, not reckoned with.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `${quoted(data, 'name')} is a ${text(data, 'kind')}, not a number, so ${formulaPlace(data)} cannot reckon with it`;
  },
  example: null,
  sample: { line: 'cuff stitches', field: 'formula', name: 'sleeve shaping', kind: 'shaping' },
};
