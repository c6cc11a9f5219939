/** A word may be a stitch, or may be plain English. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { quote, text, words } from './phrases.ts';

export const termInDoubt: FindingKind = {
  code: 'term-in-doubt',
  severity: 'warning',
  title: 'A word may be a stitch, or may be plain English',
  reason:
    '"Double", "treble" and "miss" are stitches in one sentence and ordinary words in the next. Where it cannot be told, the edition in the other terms keeps the words as they are.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const [term = ''] = words(data, 'readings');
    return `the edition in the other terms cannot tell whether ${quote(text(data, 'words') || voice.words)} is a term, which would become "${term}", or plain English, so it keeps the words; use the abbreviation, or other words, to make it plain`;
  },
  example: null,
  sample: { words: 'double', readings: ['treble', 'double'] },
};
