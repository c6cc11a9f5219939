/** Stitches are left at the end of the row. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { count, number, perSize, text } from './phrases.ts';

export const stitchesLeftUnworked: FindingKind = {
  code: 'stitches-left-unworked',
  severity: 'error',
  title: 'Stitches are left at the end of the row',
  reason:
    'Everything the row below left must be worked, skipped in words, or left in words. Otherwise the count at the end is not what it seems.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const [left, spaces, have] = [number(data, 'left'), number(data, 'spaces'), number(data, 'have')];
      const unit = text(data, 'unit') || 'st';
      if (data.said !== undefined)
        return `the row says that ${number(data, 'said')} stay unworked, but ${left} of ${have} do`;
      const what =
        left > 0
          ? count(left, voice.stitch(unit, left), true)
          : count(spaces, voice.stitch('sp', spaces), true);
      const one = left > 0 ? left === 1 : spaces === 1;
      return `${what}${left > 0 ? ` of ${have}` : ''} ${one ? 'is' : 'are'} left at the end and the row does not say so; work ${one ? 'it' : 'them'}, ${voice.skip} ${one ? 'it' : 'them'}, or say "leaving rem sts unworked"`;
    }),
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across.
Row 2: Ch 1, sc in each of next 8 sts, turn.`,
};
