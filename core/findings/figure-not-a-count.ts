/** A figure in a row is not a whole number. Sentences only; `core/study` notices it. */
import type { FindingKind } from './kind.ts';
import { perSize, quoted, text } from './phrases.ts';

export const figureNotACount: FindingKind = {
  code: 'figure-not-a-count',
  severity: 'error',
  title: 'A figure in a row is not a whole number',
  reason: 'Rows are worked in stitches and rows; a length or a schedule is no number of them.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) =>
      text(data, 'gives') === 'schedule'
        ? `${quoted(data, 'figure')} plans a shaping over many rows, which one row cannot hold; put "Shaping over rows" in its place and choose the line there`
        : `the figure ${quoted(data, 'figure')} gives no number of stitches or rows, but a row needs a whole number; name a stitches or rows line`,
    ),
  example: null,
  sample: { figure: 'finished bust', gives: 'length' },
};
