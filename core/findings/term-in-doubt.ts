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
    return `${quote(text(data, 'words') || voice.words)} may be a term of the trade or plain English; as a term it would be "${term}" in the other edition, and it is left as it is: use the abbreviation, or other words, so that it is plain`;
  },
  example: null,
  sample: { words: 'double', readings: ['treble', 'double'] },
};
