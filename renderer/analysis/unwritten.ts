/**
 * Findings that say only that something is not written yet. Whoever begins a piece or a line knows it: they are told
 * by F8 and in the review, and neither open where the caret comes by nor are tallied beside what is being written.
 */
export const UNWRITTEN: ReadonlySet<string> = new Set([
  'rows-not-begun',
  'piece-without-rows',
  'row-without-words',
  'line-value-missing',
]);
