/** A decrease and the places named for it differ in number. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { number, perSize } from './phrases.ts';

export const togetherDiffers: FindingKind = {
  code: 'together-differs',
  severity: 'warning',
  title: 'A decrease is given other than its own number of stitches',
  reason:
    'The number in the name of a decrease says how many stitches it works together. Where the words name more or fewer, one of the two is wrong, or a stitch is passed over that should be said.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const [together, said] = [number(data, 'together'), number(data, 'said')];
      return said > together
        ? `this works ${together} sts together, but ${said} are named; say "over next ${together} sts", or how many are passed over between them ("${voice.skip} 1")`
        : `this works ${together} sts together, but only ${said} ${said === 1 ? 'is' : 'are'} named; say "over next ${together} sts", or choose a decrease of ${said}`;
    }),
  example: `Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)
Row 2: Ch 1, sc3tog over next 2 sts, sc in each st to end.`,
};
