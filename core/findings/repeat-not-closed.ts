/** A repeat has a beginning but no end. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted, text } from './phrases.ts';

export const repeatNotClosed: FindingKind = {
  code: 'repeat-not-closed',
  severity: 'error',
  title: 'A repeat has a beginning but no end',
  reason: 'A star marks what is repeated; without "rep from *" nobody knows how often.',
  message: (facts) =>
    `this ${quoted(facts[0]!.fact.data, 'sign')} begins a repeat, but nothing says where it ends and how often it is worked; add "rep from ${text(facts[0]!.fact.data, 'sign')} across" or "… times"`,
  example: `Ch 5.
Row 1: Sc in 2nd ch from hook, *ch 2, sk 2 ch, sc in next ch.`,
};
