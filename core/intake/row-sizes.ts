/** Which of a pattern's sizes a row is for, by the names that it gives them. It knows nothing of the row. */
import type { SizeFilter } from '../notation/tree.ts';

/** The pattern's labels of the sizes that a row is for; null for all, and when it names one that is not there. */
export function sizesOf(only: SizeFilter | null, sizes: readonly string[]): readonly string[] | null {
  if (only === null) return null;
  const named = only.labels.map((label) => sizeNamed(label, sizes));
  if (named.some((label) => label === undefined)) return null;
  return only.except ? sizes.filter((label) => !named.includes(label)) : (named as readonly string[]);
}

const PLACES = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'];

/** The label of a size as a row names it: by its label, or by its place ("2nd size only"). */
function sizeNamed(written: string, sizes: readonly string[]): string | undefined {
  const lower = written.toLowerCase();
  const own = sizes.find((label) => label.toLowerCase() === lower);
  if (own !== undefined) return own;
  const nth = /^(\d+)(?:st|nd|rd|th)$/u.exec(lower);
  if (nth !== null) return sizes[Number(nth[1]) - 1];
  return lower === 'last' ? sizes.at(-1) : sizes[PLACES.indexOf(lower)];
}
