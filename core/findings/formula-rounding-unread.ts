/** A formula does not say what to round to. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace } from './phrases.ts';

export const formulaRoundingUnread: FindingKind = {
  code: 'formula-rounding-unread',
  severity: 'error',
  title: 'A formula does not say what to round to',
  reason: '"Rounded to" needs the step: 2 stitches, 0.5 cm.',
  message: (facts) =>
    `${formulaPlace(facts[0]!.fact.data)} says "rounded", but not to what; write for example "rounded to 2" or "rounded up to 0.5 cm"`,
  example: null,
  sample: { line: 'cuff stitches', field: 'formula' },
};
