/** A spread's numbers make no sense. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { number, perSize, plain, quoted } from './phrases.ts';

export const spreadInvalid: FindingKind = {
  code: 'spread-invalid',
  severity: 'error',
  title: "A spread's numbers make no sense",
  reason: 'Changes and stitches are whole numbers from 0 up.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${quoted(data, 'line')} is to spread ${plain(number(data, 'changes'))} changes over ${plain(number(data, 'over'))} stitches; both must be whole and not below 0`,
    ),
  example: null,
  sample: { line: 'yoke increases', field: '', changes: -2, over: 60 },
};
