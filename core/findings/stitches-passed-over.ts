/** Stitches are passed over without a word. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { count, number, perSize, text } from './phrases.ts';

export const stitchesPassedOver: FindingKind = {
  code: 'stitches-passed-over',
  severity: 'warning',
  title: 'Stitches are passed over without a word',
  reason:
    'A row that goes to a stitch further on without saying "skip" leaves the reader wondering whether the stitches between were forgotten.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const passed = number(data, 'passed');
      const over = count(passed, voice.stitch(text(data, 'over') || 'st', passed), true);
      return `going to this ${voice.stitch(text(data, 'noun'), 1)} passes over ${over} that the row does not mention; say "${voice.skip} ${over}" if that is meant`;
    }),
  example: `Ch 13.
Row 1: Dc in 4th ch from hook, hdc in next 2 ch, dc in each of next 7 ch.
Row 2: Ch 3, dc in next hdc, dc in each st across.`,
};
