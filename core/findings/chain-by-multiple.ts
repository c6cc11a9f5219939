/** A foundation chain is told by its multiple alone. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { number } from './phrases.ts';

export const chainByMultiple: FindingKind = {
  code: 'chain-by-multiple',
  severity: 'note',
  title: 'A chain is told by its multiple alone',
  reason: 'A multiple says which chains fit, and no maker knows from it how many make the size.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `how many chains is not said, and ${number(data, 'chains')} ch are taken, for ${number(data, 'repeats')} repeats; write the number, for each size`;
  },
  example: `Ch a multiple of 6 plus 2.
Row 1: Sc in 2nd ch from hook and in each ch across.`,
};
