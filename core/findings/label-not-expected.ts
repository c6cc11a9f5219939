/** A row's label is typed by hand. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted, text } from './phrases.ts';

/** Whether the words are for more rows than the one that they stand in. */
const isForMany = (words: string): boolean => /\b(?:rows|rnds|rounds)\b/iu.test(words);

export const labelNotExpected: FindingKind = {
  code: 'label-not-expected',
  severity: 'warning',
  title: "A row's label is typed by hand",
  reason:
    'The label of a row is worked out from the rows before it. One that is typed stands there twice, and is wrong as soon as a row is added.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return isForMany(text(data, 'words'))
      ? `${quoted(data, 'words')} names several rows, but what stands here is worked as one; add a repeat of rows for the others, then take these words out`
      : `${quoted(data, 'words')} is typed here, but the row's label is worked out and printed before it; take the typed one out`;
  },
  // Taking out the label of several rows would leave one of them.
  fix: (facts) =>
    isForMany(text(facts[0]!.fact.data, 'words')) ? null : { label: 'Take it out', replacement: '' },
  example: null,
  sample: { words: 'Row 3:' },
};
