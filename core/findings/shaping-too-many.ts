/** A shaping needs more rows than it has. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { count, number, ordinal, perSize, quoted } from './phrases.ts';

export const shapingTooMany: FindingKind = {
  code: 'shaping-too-many',
  severity: 'error',
  title: 'A shaping needs more rows than it has',
  reason: 'The shaping rows do not fit into the length of the piece.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${quoted(data, 'line')} needs ${count(number(data, 'shapings'), 'shaping row')} to go from ${number(data, 'from')} to ${number(data, 'to')} stitches, which takes ${count(number(data, 'needed'), 'row')} at every ${ordinal(number(data, 'step'))} row, but it has ${number(data, 'rows')}; ${number(data, 'fits')} fit and reach ${number(data, 'reached')} stitches`,
    ),
  example: null,
  sample: {
    line: 'sleeve shaping',
    field: '',
    from: 40,
    to: 80,
    rows: 30,
    shapings: 20,
    step: 2,
    needed: 39,
    fits: 15,
    reached: 70,
  },
};
