/** A line is taken for prose. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted } from './phrases.ts';

export const prosePassedOver: FindingKind = {
  code: 'prose-passed-over',
  severity: 'note',
  title: 'A line is taken for prose',
  reason: 'What does not read as a row is passed over, so nothing in it is worked or counted.',
  message: (facts) =>
    `${quoted(facts[0]!.fact.data, 'words')} is taken for prose and not worked; if it is a row, begin it with "Row" or "Rnd" and its number`,
  example: `This panel is worked from the hem up.
Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across.`,
};
