/** A spread has more changes than the stitches allow. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { number, perSize, quoted } from './phrases.ts';

export const spreadTooMany: FindingKind = {
  code: 'spread-too-many',
  severity: 'error',
  title: 'A spread has more changes than the stitches allow',
  reason: 'An increase uses 1 stitch of the row below, a decrease 2.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${quoted(data, 'line')} is to spread ${number(data, 'changes')} ${data.change === 'inc' ? 'increases' : 'decreases'} over ${number(data, 'over')} stitches, where ${number(data, 'most')} at most have room; spread the rest over another row`,
    ),
  example: null,
  sample: { line: 'cuff decreases', field: '', change: 'dec', changes: 30, over: 48, most: 24 },
};
