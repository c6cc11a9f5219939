/** Stitches are to be spread evenly, and not said how many. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { count, number, perSize, text } from './phrases.ts';

export const numberNotGiven: FindingKind = {
  code: 'number-not-given',
  severity: 'warning',
  title: 'How many stitches are spread evenly is not said',
  reason:
    '"Evenly" says how stitches lie, and not how many there are. Makers then come to different numbers, and nothing that follows can be counted.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const taken = number(data, 'taken');
      return `how many ${voice.stitch(text(data, 'stitch'), 2)} are worked evenly is not said, and ${count(taken, voice.stitch('st', taken), true)} ${taken === 1 ? 'is' : 'are'} taken, one for each place below; say the number here, or give the count at the end of the row`;
    }),
  example: `Ch 12.
Row 1: Sc in 2nd ch from hook and in each ch across, turn.
Row 2: Ch 1, sc evenly across.`,
};
