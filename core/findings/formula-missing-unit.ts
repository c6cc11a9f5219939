/** A number lacks its unit. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { amount, formulaPlace, number, perSize, plain } from './phrases.ts';

export const formulaMissingUnit: FindingKind = {
  code: 'formula-missing-unit',
  severity: 'error',
  title: 'A number lacks its unit',
  reason: 'A bare number beside a length could be centimetres or inches.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${plain(number(data, 'number'))} stands beside ${amount(data, 'beside')} in ${formulaPlace(data)} and has no unit; write "${plain(number(data, 'number'))} cm" or "${plain(number(data, 'number'))} in"`,
    ),
  example: null,
  sample: {
    line: 'finished bust',
    field: 'formula',
    number: 5,
    besideDimension: 'length',
    beside: '86.5 cm',
    besideIn: '34 in',
    besideCm: 86.36,
  },
};
