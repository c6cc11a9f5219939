/** A special stitch is told by its loops. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted } from './phrases.ts';

export const definitionInLoops: FindingKind = {
  code: 'definition-in-loops',
  severity: 'note',
  title: 'A special stitch is told by its loops',
  reason:
    '"Yarn over, pull up a loop" tells the hand what to do, but not how many stitches come of it. Until it says so, the stitch counts as one.',
  message: (facts) =>
    `${quoted(facts[0]!.fact.data, 'name')} is told by what the hook does, so it counts as 1 stitch made in 1 place; if it makes or uses more, say in stitches what it comes to`,
  example: `Puff st: (Yo, insert hook, pull up a loop) 3 times in same st, yo, pull through all loops on hook.
Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across.`,
};
