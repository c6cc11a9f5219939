/** A repeat does not say where it begins. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { quote } from './phrases.ts';

export const repeatStartNotSaid: FindingKind = {
  code: 'repeat-start-not-said',
  severity: 'warning',
  title: 'A repeat does not say where it begins',
  reason: '"Repeat around" without a star leaves the reader to guess which part of the row is meant.',
  message: (_, voice) =>
    `nothing says where ${quote(voice.words)} begins, so everything that the row works before it is repeated; put * where the repeat begins and say "rep from *"`,
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across.
Row 2: Ch 1, sc in next st, dc in next st, rep across.`,
};
