/** A bare number is taken for stitches. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { text } from './phrases.ts';

export const stitchAssumed: FindingKind = {
  code: 'stitch-assumed',
  severity: 'note',
  title: 'A bare number is taken for stitches',
  reason:
    'Toy makers write "3, inc" for three single crochets and an increase. Who learns from the pattern may not know.',
  message: (facts, voice) =>
    `"${voice.words}" names no stitch and is read as ${voice.words} ${voice.stitch(text(facts[0]!.fact.data, 'taken'), 2)}; a pattern for sale names the stitch`,
  example: 'R1: MR 6 (6)',
};
