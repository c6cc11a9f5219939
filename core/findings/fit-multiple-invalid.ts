/** A multiple makes no sense. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { number, plain, quoted } from './phrases.ts';

export const fitMultipleInvalid: FindingKind = {
  code: 'fit-multiple-invalid',
  severity: 'error',
  title: 'A multiple makes no sense',
  reason: 'A stitch pattern repeats over at least 1 stitch.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `${quoted(data, 'line')} is fitted to a multiple of ${plain(number(data, 'multiple'))} plus ${plain(number(data, 'plus'))} with ${plain(number(data, 'extra'))} extra; the multiple must be 1 or more and the extra stitches 0 or more, all of them whole`;
  },
  example: null,
  sample: { line: 'back stitches', field: 'length', multiple: 0, plus: 1, extra: 0 },
};
