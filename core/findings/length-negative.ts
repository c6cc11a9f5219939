/** A length is below 0. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { formulaPlace, length, perSize } from './phrases.ts';

export const lengthNegative: FindingKind = {
  code: 'length-negative',
  severity: 'error',
  title: 'A length is below 0',
  reason: 'A piece cannot be shorter than nothing.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) => `${formulaPlace(data)} comes to ${length(data, 'value')}, and no length is below 0`,
    ),
  example: null,
  sample: { figure: 'ease − 10 cm', value: '−5 cm', valueIn: '−2 in', valueCm: -5 },
};
