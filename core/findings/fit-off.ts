/** A finished measurement is off by more than the tolerance. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { neighbours } from './measures.ts';
import { length, number, perSize, quoted } from './phrases.ts';

export const fitOff: FindingKind = {
  code: 'fit-off',
  severity: 'warning',
  title: 'A finished measurement is off by more than the tolerance',
  reason:
    'What the stitches make differs from what was asked by more than the maker allows, so the size does not measure what it should.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${quoted(data, 'line')} is asked to be ${length(data, 'asked')}, but ${number(data, 'number')} make ${length(data, 'got')}, ${length(data, 'off')} ${data.less === true ? 'less' : 'more'} where ${length(data, 'limit')} is allowed; ${neighbours(data)}`,
    ),
  example: null,
  sample: {
    line: 'back stitches',
    field: 'length',
    counts: 'stitches',
    number: 60,
    asked: '45 cm',
    askedIn: '17¾ in',
    askedCm: 45,
    got: '48 cm',
    gotIn: '19 in',
    gotCm: 48,
    off: '3 cm',
    offIn: '1¼ in',
    offCm: 3,
    less: false,
    limit: '2 cm',
    limitIn: '¾ in',
    limitCm: 2,
    fewer: 48,
    fewerMakes: '38.5 cm',
    fewerMakesIn: '15 in',
    more: 72,
    moreMakes: '57.5 cm',
    moreMakesIn: '22¾ in',
  },
};
