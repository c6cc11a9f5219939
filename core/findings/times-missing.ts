/** Nothing says how often a part is worked. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { text } from './phrases.ts';

export const timesMissing: FindingKind = {
  code: 'times-missing',
  severity: 'warning',
  title: 'Nothing says how often a part is worked',
  reason: 'Stars at both ends mark a part to be worked again, so the row must say how often.',
  message: (facts) =>
    `the part between ${text(facts[0]!.fact.data, 'sign')} and ${text(facts[0]!.fact.data, 'sign')} is worked once here, because nothing says how often; add "twice" or "… times"`,
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across.
Row 2: Ch 1, *sc in next 5 sts*, sc in each st across.`,
};
