/** Words are not understood. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted, text } from './phrases.ts';

export const wordNotRead: FindingKind = {
  code: 'word-not-read',
  severity: 'error',
  title: 'Words are not understood',
  reason: 'What is not understood cannot be worked or counted, and the counts after it may be wrong.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const near = text(data, 'suggestion');
    if (data.expected === 'place')
      return `${quoted(data, 'words')} is not understood; the row is worked as if it said "${near}", one letter away`;
    const what = `${quoted(data, 'words')} is not understood here, where a stitch or an instruction is expected`;
    return near === '' ? `${what}; the row is worked without it` : `${what}; is "${near}" meant?`;
  },
  fix: (facts, voice) => {
    const near = text(facts[0]!.fact.data, 'suggestion');
    return near === '' || /\s/.test(voice.words.trim())
      ? null
      : { label: `Write ${near}`, replacement: near };
  },
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across.
Row 2: Ch 1, ddc in next st, sc in each st across.`,
};
