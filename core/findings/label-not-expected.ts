/** A row's label is typed by hand. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted } from './phrases.ts';

export const labelNotExpected: FindingKind = {
  code: 'label-not-expected',
  severity: 'warning',
  title: "A row's label is typed by hand",
  reason:
    'The label of a row is worked out from the rows before it. One that is typed stands there twice, and is wrong as soon as a row is added.',
  message: (facts) =>
    `${quoted(facts[0]!.fact.data, 'words')} is typed here, but the row's label is worked out and printed before it; take the typed one out`,
  fix: () => ({ label: 'Take it out', replacement: '' }),
  example: null,
  sample: { words: 'Row 3:' },
};
