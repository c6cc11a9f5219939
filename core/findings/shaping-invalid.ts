/** A shaping's numbers make no sense. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { count, number, ordinal, perSize, plain, quoted } from './phrases.ts';

export const shapingInvalid: FindingKind = {
  code: 'shaping-invalid',
  severity: 'error',
  title: "A shaping's numbers make no sense",
  reason: 'Counts and rows are whole and not below 0; at least 1 stitch changes at 1 end or more.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${quoted(data, 'line')} goes from ${plain(number(data, 'from'))} to ${plain(number(data, 'to'))} stitches in ${count(number(data, 'rows'), 'row')}, ${plain(number(data, 'perEnd'))} at ${count(number(data, 'ends'), 'end')}, every ${ordinal(number(data, 'step'))} row at the closest; these must be whole, the last three 1 or more, and none above ${number(data, 'limit')}`,
    ),
  example: null,
  sample: {
    line: 'sleeve shaping',
    field: '',
    from: 40,
    to: 60,
    rows: 50,
    perEnd: 0,
    ends: 2,
    step: 2,
    limit: 10000,
  },
};
