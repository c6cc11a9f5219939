/** A shaping has no schedule. Sentences only; `core/study` notices it. */
import type { FindingKind } from './kind.ts';
import { perSize, quoted, text } from './phrases.ts';

export const shapingWithoutLine: FindingKind = {
  code: 'shaping-without-line',
  severity: 'error',
  title: 'A shaping has no schedule',
  reason: 'Shaping rows are worked by the schedule of a shaping line of the sizing sheet.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) =>
      text(data, 'line') === ''
        ? 'this shaping names no line of the sizing sheet; choose the shaping line that it follows'
        : `there is no schedule called ${quoted(data, 'line')} to work by; make a shaping line of that name in the sizing sheet, or see the findings there`,
    ),
  example: null,
  sample: { line: 'armhole shaping' },
};
