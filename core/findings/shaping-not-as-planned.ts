/** A shaping does not come to the planned count. Sentences only; `core/study` notices it. */
import type { FindingKind } from './kind.ts';
import { count, number, perSize, quoted } from './phrases.ts';

export const shapingNotAsPlanned: FindingKind = {
  code: 'shaping-not-as-planned',
  severity: 'error',
  title: 'A shaping does not come to the planned count',
  reason:
    'The schedule is worked out from the counts at its start and end; if the rows make other counts, the pieces after it do not fit.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const [planned, worked] = [number(data, 'planned'), number(data, 'worked')];
      const by = `${Math.abs(planned - worked)} ${worked > planned ? 'more' : 'fewer'}`;
      return data.at === 'start'
        ? `${quoted(data, 'line')} is planned from ${count(planned, 'stitch')}, but the rows before leave ${worked}, ${by}; put one of the two right`
        : `${quoted(data, 'line')} is planned to end at ${count(planned, 'stitch')}, but working it gives ${worked}, ${by}; the shaping row must change as many stitches at each end as the line says`;
    }),
  example: null,
  sample: { line: 'armhole shaping', at: 'end', planned: 52, worked: 54 },
};
