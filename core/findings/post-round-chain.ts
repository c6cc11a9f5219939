/** A post stitch is to go round a chain of the foundation. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { perSize, text } from './phrases.ts';

export const postRoundChain: FindingKind = {
  code: 'post-round-chain',
  severity: 'warning',
  title: 'A post stitch has no post to go round',
  reason:
    'A post stitch is worked round the upright part of a stitch. A foundation chain has none, so a first row needs plain stitches before post stitches can follow.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const stitch = text(data, 'stitch');
      return `a post stitch goes round a stitch, and below is only the foundation chain; work ${voice.stitch(stitch, 2)} into the chain first, or say plain ${voice.stitch(stitch, 2)} here`;
    }),
  example: `Ch 20.
Row 1: Dc in 4th ch from hook, fpdc around each ch across.`,
};
