/** A typed measurement lacks its unit. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { number, perSize, plain, quoted } from './phrases.ts';

export const lineMissingUnit: FindingKind = {
  code: 'line-missing-unit',
  severity: 'error',
  title: 'A typed measurement lacks its unit',
  reason: 'A bare number could be centimetres or inches.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${quoted(data, 'line')} holds ${plain(number(data, 'number'))} without a unit; write "${plain(number(data, 'number'))} cm" or "${plain(number(data, 'number'))} in"`,
    ),
  example: null,
  sample: { line: 'ease', field: '', number: 5, size: 'M' },
};
