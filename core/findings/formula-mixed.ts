/** A formula adds things that do not add. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { dimension, formulaPlace, perSize } from './phrases.ts';

export const formulaMixed: FindingKind = {
  code: 'formula-mixed',
  severity: 'error',
  title: 'A formula adds things that do not add',
  reason: 'A length and a number of stitches have no sum.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${formulaPlace(data)} puts ${dimension(data, 'first')} and ${dimension(data, 'second')} together, which do not add up or compare; "width of …" turns stitches into a length`,
    ),
  example: null,
  sample: { line: 'finished bust', field: 'formula', first: 'length', second: 'count' },
};
