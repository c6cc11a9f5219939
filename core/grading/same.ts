/**
 * Whether two results are the same in every part. It lets a result that was worked out again keep its old
 * identity, on which the caches above rely. Plain data only: numbers, words, lists, records, fractions.
 */

/** Deep equality of plain data. Fractions compare by their whole parts, which are kept in lowest terms. */
export function isSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  const left = a as Record<string, unknown>;
  const right = b as Record<string, unknown>;
  return keys.every((key) => Object.hasOwn(right, key) && isSame(left[key], right[key]));
}

/** The old list when every member is still the same object; otherwise the new one. */
export function sameMembers<T>(a: readonly T[], b: readonly T[]): boolean {
  return a.length === b.length && a.every((member, index) => member === b[index]);
}
