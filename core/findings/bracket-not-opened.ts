/** A bracket is closed that was never opened. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted } from './phrases.ts';

export const bracketNotOpened: FindingKind = {
  code: 'bracket-not-opened',
  severity: 'warning',
  title: 'A bracket is closed that was never opened',
  reason: 'Without its beginning nobody knows what belongs together, or what is repeated.',
  message: (facts) =>
    `this ${quoted(facts[0]!.fact.data, 'sign')} has no partner; open it where what belongs together begins, or take it out`,
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook), sc in each ch across.`,
};
