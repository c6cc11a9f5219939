/** A stated count is wrong. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { count, number, perSize, text } from './phrases.ts';

export const statedCountWrong: FindingKind = {
  code: 'stated-count-wrong',
  severity: 'error',
  title: 'A stated count is wrong',
  reason:
    'The count at the end of a row is what makers check themselves against. A wrong one makes them undo right work, or go on with wrong work.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const noun = text(data, 'noun');
      const [stated, worked] = [number(data, 'stated'), number(data, 'worked')];
      const by = Math.abs(stated - worked);
      const hint =
        data.turning === true
          ? ' (without the turning chain, which counts here, it would be right: say so, or count it)'
          : '';
      return `the row says ${stated}, but working it gives ${count(worked, voice.stitch(noun, worked), true)}, ${by} ${stated > worked ? 'fewer' : 'more'}${hint}`;
    }),
  fix: (fact) => {
    const worked = fact.data.worked;
    return typeof worked === 'number' && fact.data.single === true
      ? { label: `Write ${worked}`, replacement: String(worked) }
      : null;
  },
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across. (11 sc)`,
};
