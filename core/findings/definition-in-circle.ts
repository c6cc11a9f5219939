/** A special stitch is defined by itself. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { text } from './phrases.ts';

export const definitionInCircle: FindingKind = {
  code: 'definition-in-circle',
  severity: 'error',
  title: 'A special stitch is defined by itself',
  reason: 'A definition that uses its own name never comes to an end.',
  message: (facts, voice) =>
    `the definition of "${text(facts[0]!.fact.data, 'name') || voice.words}" uses itself; define it in plain stitches`,
  example: null,
};
