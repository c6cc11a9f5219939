/** Nothing says whether a turning chain counts. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { are, number, perSize, text } from './phrases.ts';

export const turningChainAssumed: FindingKind = {
  code: 'turning-chain-assumed',
  severity: 'note',
  title: 'Nothing says whether a turning chain counts',
  reason:
    'Whether a turning chain counts as a stitch differs from house to house, most of all for half double crochet. A pattern says it once.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const stitch = voice.stitch(text(data, 'stitch'), 1);
      const n = number(data, 'chains');
      const taken = data.counts === true ? `to count as 1 ${stitch}` : 'not to count as a stitch';
      return `the ${n} ch here ${are(n)} taken ${taken}; nothing in the text says so, and makers differ: add "counts as ${stitch}" or "does not count as a st"`;
    }),
  example: `Ch 12.
Row 1: Hdc in 3rd ch from hook and in each ch across.`,
};
