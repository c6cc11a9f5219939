/** Names of lines that could go on at the caret of a formula. It reads no formula: the names alone. */
import { foldName } from '../../core/grading/index.ts';

export interface Completion {
  /** Where the begun name begins. */
  readonly from: number;
  readonly options: readonly string[];
}

/** What ends the words before a name: a sign, or a word of formulas. */
const BEFORE = /(?:[+\-−–×÷*/(),]|\b(?:of|and|the|plus|minus|times|by|than)\b)\s*/giu;
const MOST = 8;

/** What could be meant by the words before the caret; the names that begin so come first. */
export function completionsAt(text: string, caret: number, names: readonly string[]): Completion {
  const before = text.slice(0, caret);
  const ends = [...before.matchAll(BEFORE)];
  // Names may hold such words themselves ("width of neck"): the longest beginning that some name goes on from wins.
  const starts = [0, ...ends.map(({ index, 0: sign }) => index + sign.length)];
  for (const start of starts) {
    const from = start + (before.slice(start).length - before.slice(start).trimStart().length);
    const begun = foldName(before.slice(from));
    if (begun === '' && caret > 0 && from < caret) continue;
    const isNext = start === starts.at(-1);
    if (begun === '' && !isNext) continue;
    const first = names.filter((name) => foldName(name).startsWith(begun));
    const inside = begun === '' ? [] : names.filter((name) => foldName(name).includes(` ${begun}`));
    const options = [...new Set([...first, ...inside])].filter((name) => foldName(name) !== begun);
    if (options.length > 0) return { from, options: options.slice(0, MOST) };
  }
  return { from: caret, options: [] };
}
