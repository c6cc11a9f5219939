/** A percentage stands where a number is needed. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { amount, formulaPlace, perSize } from './phrases.ts';

export const countIsPercent: FindingKind = {
  code: 'count-is-percent',
  severity: 'error',
  title: 'A percentage stands where a number is needed',
  reason: 'Stitches and rows are counted.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${formulaPlace(data)} comes to ${amount(data, 'value')}, where a number of stitches or rows is needed`,
    ),
  example: null,
  sample: { line: 'sleeve shaping', field: 'start', valueDimension: 'percent', value: 0.05 },
};
