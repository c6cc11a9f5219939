/** A special stitch is defined by itself. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted } from './phrases.ts';

export const definitionInCircle: FindingKind = {
  code: 'definition-in-circle',
  severity: 'error',
  title: 'A special stitch is defined by itself',
  reason: 'A definition that uses its own name never comes to an end.',
  message: (facts) =>
    `the definition of ${quoted(facts[0]!.fact.data, 'name')} uses itself, directly or through another; define it in plain stitches`,
  example: `Shell: petal in next st.
Petal: shell in next st.
Ch 11.
Row 1: Sc in 2nd ch from hook, shell in next ch, sc in each ch across.`,
};
