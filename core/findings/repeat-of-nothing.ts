/** A repeat has no rows to repeat. Sentences only; `core/study` notices it. */
import type { FindingKind } from './kind.ts';
import { perSize } from './phrases.ts';

export const repeatOfNothing: FindingKind = {
  code: 'repeat-of-nothing',
  severity: 'error',
  title: 'A repeat has no rows to repeat',
  reason: 'A repeat names rows that stand above it in the same piece and that the size works.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      () =>
        'there are no rows for this to repeat; choose a first and a last row above it that the size works',
    ),
  example: null,
  sample: {},
};
