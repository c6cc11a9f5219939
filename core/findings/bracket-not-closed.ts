/** A bracket is not closed. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted } from './phrases.ts';

export const bracketNotClosed: FindingKind = {
  code: 'bracket-not-closed',
  severity: 'error',
  title: 'A bracket is not closed',
  reason: 'Without its end nobody knows what belongs together, or what is repeated.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return data.closed === undefined
      ? `this ${quoted(data, 'sign')} has no partner; close it where what belongs together ends`
      : `this ${quoted(data, 'sign')} is closed by ${quoted(data, 'closed')}; use the same sort of bracket at both ends`;
  },
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across.
Row 2: Ch 1, (sc in next 2 sts, sc in each st across.`,
};
