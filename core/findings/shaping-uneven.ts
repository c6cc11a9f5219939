/** A shaping cannot change that many stitches. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { count, number, perSize, quoted } from './phrases.ts';

export const shapingUneven: FindingKind = {
  code: 'shaping-uneven',
  severity: 'error',
  title: 'A shaping cannot change that many stitches',
  reason: 'Each shaping row changes the same number of stitches, so the change must be a multiple of it.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${quoted(data, 'line')} is to go from ${number(data, 'from')} to ${number(data, 'to')} stitches, a change of ${number(data, 'change')}, but each shaping row changes ${number(data, 'each')} (${number(data, 'perEnd')} at ${count(number(data, 'ends'), 'end')}), which leaves ${number(data, 'over')} over; ${number(data, 'nearest')} stitches at the end would work`,
    ),
  example: null,
  sample: {
    line: 'sleeve shaping',
    field: '',
    from: 40,
    to: 61,
    change: 21,
    each: 2,
    perEnd: 1,
    ends: 2,
    over: 1,
    nearest: 62,
  },
};
