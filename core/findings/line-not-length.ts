/** A body measurement is typed as a percentage. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { number, perSize, plain, quoted } from './phrases.ts';

export const lineNotLength: FindingKind = {
  code: 'line-not-length',
  severity: 'error',
  title: 'A body measurement is typed as a percentage',
  reason: 'A body is measured in cm or in.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${quoted(data, 'line')} holds ${plain(number(data, 'number'))} %, but a body measurement is a length; type it in cm or in`,
    ),
  example: null,
  sample: { line: 'bust', field: '', number: 5, size: 'M' },
};
