/** A stated count is wrong. Sentences only; `core/fabric` notices it. */
import type { FindingKind, SizedFact } from './kind.ts';
import { count, number, perSize, shared, text } from './phrases.ts';

/**
 * What the numbers written should be: one number that is wrong alike in every size, or one for each size.
 * Null where the words hold other numbers too, so that nobody can be sure which one is meant.
 */
function replacements(
  facts: readonly SizedFact[],
  sizes: number,
  written: readonly number[],
): readonly number[] | null {
  if (written.length === 1) {
    const [worked, stated] = [shared(facts, 'worked'), shared(facts, 'stated')];
    const everywhere = facts.length >= sizes || facts[0]!.size === null;
    // None of what is counted: it is called by another name than it was worked by, and 0 is not what is meant.
    if (worked === 0) return null;
    return everywhere && typeof worked === 'number' && stated === written[0] ? [worked] : null;
  }
  if (written.length !== sizes || facts.some(({ size }) => size === null)) return null;
  const corrected = [...written];
  for (const { size, fact } of facts) {
    if (number(fact.data, 'stated') !== written[size!]) return null;
    const worked = number(fact.data, 'worked');
    if (worked === 0) return null;
    corrected[size!] = worked;
  }
  return corrected;
}

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
          ? ' (the turning chain counts as a stitch here; without it the count would be right: count it, or say that it does not count)'
          : '';
      return `the row says ${stated}, but working it gives ${count(worked, voice.stitch(noun, worked), true)}, ${by} ${stated > worked ? 'fewer' : 'more'}${hint}`;
    }),
  fix: (facts, voice) => {
    const numbers = [...voice.words.matchAll(/\d+/g)];
    const corrected = replacements(facts, voice.sizes, numbers.map(Number));
    if (corrected === null) return null;
    let at = 0;
    const replacement = voice.words.replace(/\d+/g, () => String(corrected[at++]));
    return { label: `Write ${corrected.length === 1 ? corrected[0] : `"${replacement}"`}`, replacement };
  },
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across. (11 sc)`,
};
