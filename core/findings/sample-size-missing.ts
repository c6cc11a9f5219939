/** No size is marked as the sample. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';

export const sampleSizeMissing: FindingKind = {
  code: 'sample-size-missing',
  severity: 'note',
  title: 'No size is marked as the sample',
  reason: 'The sample is the size that was really made; yarn and time for the others are reckoned from it.',
  message: (facts) =>
    facts[0]!.fact.data.chosen === true
      ? 'the size that was chosen as the sample is not in the pattern any more; choose the size that was really made'
      : 'no size is chosen as the sample; choose the size that was really made',
  example: null,
  sample: { chosen: false },
};
