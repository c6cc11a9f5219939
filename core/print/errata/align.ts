/**
 * Finds what in two lists of items is the same, changed, new or gone: by the block they come from, then by their
 * words, then by their labels. It knows nothing of patterns.
 */
import type { Item } from './items.ts';

/** An item before and after; one of them is null where it is new or gone. */
export interface Pair {
  readonly was: Item | null;
  readonly now: Item | null;
}

/** More comparisons than two long pieces need; past them only ids and labels pair. */
const MOST = 4_000_000;

/** Indexes of a longest common subsequence by `same`. */
function common(
  a: readonly Item[],
  b: readonly Item[],
  same: (x: Item, y: Item) => boolean,
): readonly (readonly [number, number])[] {
  if (a.length * b.length > MOST) return [];
  const lengths = Array.from({ length: a.length + 1 }, () => new Uint32Array(b.length + 1));
  for (let i = a.length - 1; i >= 0; i--)
    for (let j = b.length - 1; j >= 0; j--)
      lengths[i]![j] = same(a[i]!, b[j]!)
        ? lengths[i + 1]![j + 1]! + 1
        : Math.max(lengths[i + 1]![j]!, lengths[i]![j + 1]!);
  const pairs: (readonly [number, number])[] = [];
  let [i, j] = [0, 0];
  while (i < a.length && j < b.length) {
    if (same(a[i]!, b[j]!)) pairs.push([i++, j++]);
    else if (lengths[i + 1]![j]! >= lengths[i]![j + 1]!) i++;
    else j++;
  }
  return pairs;
}

/**
 * Do the ids of two lists go on from one another? In one file that was edited a block keeps its id; in two that were
 * each brought in from words the ids only count, and one row more moves all behind it.
 */
function isOneFile(
  before: readonly Item[],
  after: readonly Item[],
  byId: ReadonlyMap<string, number>,
): boolean {
  const kept = before.filter(({ id, text }) => id !== null && after[byId.get(id) ?? -1]?.text === text);
  return common(before, after, (x, y) => x.text === y.text).length <= kept.length + 1;
}

/** Pairs in the order of the new list; what is gone stands where it stood. */
export function aligned(before: readonly Item[], after: readonly Item[]): readonly Pair[] {
  const partner = new Map<number, number>();
  const taken = new Set<number>();
  const pair = (i: number, j: number): void => {
    partner.set(i, j);
    taken.add(j);
  };
  const byId = new Map(after.flatMap(({ id }, j) => (id === null ? [] : [[id, j] as const])));
  const matchIds = (): void => {
    before.forEach(({ id }, i) => {
      const j = id === null ? undefined : byId.get(id);
      if (j !== undefined && !taken.has(j) && !partner.has(i)) pair(i, j);
    });
  };
  const rest = (list: readonly Item[], has: (n: number) => boolean) =>
    list.map((_, n) => n).filter((n) => !has(n));
  const match = (same: (x: Item, y: Item) => boolean): void => {
    const a = rest(before, (n) => partner.has(n));
    const b = rest(after, (n) => taken.has(n));
    const found = common(
      a.map((n) => before[n]!),
      b.map((n) => after[n]!),
      same,
    );
    for (const [i, j] of found) pair(a[i]!, b[j]!);
  };
  if (isOneFile(before, after, byId)) matchIds();
  match((x, y) => x.text === y.text && x.label === y.label);
  match((x, y) => x.text === y.text);
  matchIds();
  match((x, y) => x.label !== '' && x.label === y.label);
  // A sentence that was worded otherwise stands where the other stood.
  const gaps = (i: number, j: number) => before[i - 1] !== undefined && partner.get(i - 1) === j - 1;
  for (const i of rest(before, (n) => partner.has(n))) {
    const j = rest(after, (n) => taken.has(n)).find(
      (n) => before[i]!.label === after[n]!.label && (gaps(i, n) || i === n),
    );
    if (j !== undefined) pair(i, j);
  }
  const pairs: Pair[] = [];
  let i = 0;
  const gone = (to: number): void => {
    for (; i < to; i++) if (!partner.has(i)) pairs.push({ was: before[i]!, now: null });
  };
  const origin = new Map([...partner].map(([from, to]) => [to, from]));
  after.forEach((now, j) => {
    const from = origin.get(j);
    if (from !== undefined) gone(Math.max(i, from));
    pairs.push({ was: from === undefined ? null : before[from]!, now });
  });
  gone(before.length);
  return pairs;
}
