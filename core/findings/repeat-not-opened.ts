/** A repeat has an end but no beginning. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted, text } from './phrases.ts';

export const repeatNotOpened: FindingKind = {
  code: 'repeat-not-opened',
  severity: 'error',
  title: 'A repeat has an end but no beginning',
  reason: '"Rep from *" needs a star where the repeat begins.',
  message: (facts) =>
    `nothing is marked with ${quoted(facts[0]!.fact.data, 'sign')} to repeat from; put ${text(facts[0]!.fact.data, 'sign')} where the repeat begins`,
  example: `Ch 5.
Row 1: Sc in 2nd ch from hook, ch 2, sk 2 ch, sc in next ch; rep from * across.`,
};
