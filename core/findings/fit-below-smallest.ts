/** A length is smaller than the least that can be worked. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { length, number, perSize, quoted } from './phrases.ts';

export const fitBelowSmallest: FindingKind = {
  code: 'fit-below-smallest',
  severity: 'warning',
  title: 'A length is smaller than the least that can be worked',
  reason: 'One repeat is the least there is; it comes out larger than asked.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${quoted(data, 'line')} is asked to be ${length(data, 'asked')}, but the fewest that can be worked, ${number(data, 'number')}, make ${length(data, 'got')}, ${length(data, 'off')} more where ${length(data, 'limit')} is allowed; a smaller multiple or a closer ${voice.gauge} would fit`,
    ),
  example: null,
  sample: {
    line: 'cuff stitches',
    field: 'length',
    counts: 'stitches',
    number: 24,
    asked: '12 cm',
    askedIn: '4¾ in',
    askedCm: 12,
    got: '19 cm',
    gotIn: '7½ in',
    gotCm: 19,
    off: '7 cm',
    offIn: '2¾ in',
    offCm: 7,
    less: false,
    limit: '6 cm',
    limitIn: '2¼ in',
    limitCm: 6,
    fewer: null,
    more: 48,
    moreMakes: '38.5 cm',
    moreMakesIn: '15 in',
  },
};
