/** The chains before the first stitch cannot be told apart. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { number, ordinal, perSize, text } from './phrases.ts';

export const edgeChainUnclear: FindingKind = {
  code: 'edge-chain-unclear',
  severity: 'error',
  title: 'The chains before the first stitch cannot be told apart',
  reason:
    'Chains skipped at the start of a first row are the edge stitch, and beyond that half skipped foundation and half chain-space. An odd number left over cannot be halved, so the reader cannot know what is meant.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const stitch = voice.stitch(text(data, 'stitch'), 1);
      const [chain, skipped, rest] = [number(data, 'chain'), number(data, 'skipped'), number(data, 'rest')];
      return `working into the ${ordinal(chain)} ch leaves ${skipped} ch before it: ${skipped - rest} stand for the edge ${stitch}, and the other ${rest} cannot be half skipped foundation and half space; the ${ordinal(chain - 1)} or ${ordinal(chain + 1)} ch would be clear`;
    }),
  example: `Ch 25.
Row 1: Dc in 7th ch from hook, *ch 1, sk 1 ch, dc in next ch; rep from * across.`,
};
