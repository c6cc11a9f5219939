/** Stitches are left at the end of the row. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { are, count, number, perSize, text } from './phrases.ts';

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
        return `the row says that ${number(data, 'said')} stay unworked, but ${left} of ${have} ${left === 1 ? 'does' : 'do'}`;
      const n = left > 0 ? left : spaces;
      const what = count(n, voice.stitch(left > 0 ? unit : 'sp', n), true);
      const it = n === 1 ? 'it' : 'them';
      return `${what}${left > 0 ? ` of ${have}` : ''} ${are(n)} left at the end and the row does not say so; work ${it}, ${voice.skip} ${it}, or say "leave rem sts unworked"`;
    }),
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across.
Row 2: Ch 1, sc in each of next 8 sts, turn.`,
};
