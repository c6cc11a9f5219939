/** A special stitch is not defined. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { quote, text } from './phrases.ts';

export const specialNotDefined: FindingKind = {
  code: 'special-not-defined',
  severity: 'error',
  title: 'A special stitch is not defined',
  reason:
    'Houses differ on what a shell or a fan is. A pattern must say it once, before the first use, or nobody can count the row.',
  message: (facts, voice) =>
    `${quote(text(facts[0]!.fact.data, 'name') || voice.words)} is not defined; say under Special Stitches what it is, for example "Shell: 5 ${voice.stitch('t3', 1)} in same st"`,
  example: `Ch 20.
Row 1: Sc in 2nd ch from hook, *sk 2 ch, shell in next ch, sk 2 ch, sc in next ch; rep from * across.`,
};
