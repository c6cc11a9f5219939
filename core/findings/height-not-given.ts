/** Nothing brings the work to the height of a row's first stitch. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { count, number, perSize, text } from './phrases.ts';

export const heightNotGiven: FindingKind = {
  code: 'height-not-given',
  severity: 'warning',
  title: 'Nothing brings the row to its height',
  reason:
    'A row of tall stitches begins with a turning chain, a standing stitch or something else as tall as they are. Without it the edge is pulled down, and the maker cannot know whether a chain was meant to count as a stitch.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const chains = number(data, 'chains');
      return `the row begins with ${voice.stitch(text(data, 'stitch'), 1)} and nothing brings the hook to that height; begin it with ${count(chains, 'ch', true)} and say whether that counts as a stitch`;
    }),
  example: `Ch 12.
Row 1: Sc in 2nd ch from hook and in each ch across, turn.
Row 2: Dc in each sc across.`,
};
