/**
 * Places along a line: as near as can be to where each would stand, none nearer to its neighbour than it may be.
 * The least sum of squares, found exactly by pooling neighbours that press on one another. Knows nothing of
 * stitches.
 *
 * Isotonic regression by the pool-adjacent-violators algorithm (Barlow, Bartholomew, Bremner and Brunk,
 * Statistical Inference under Order Restrictions, 1972; from memory).
 */

/** One thing to be placed: where it would stand, how much that weighs, and its least distance to the one before. */
export interface Wanted {
  readonly at: number;
  readonly weight: number;
  readonly apart: number;
}

interface Pool {
  sum: number;
  weight: number;
  size: number;
}

/** Their places in order, in the unit of `at`. The first one's `apart` is not used. Linear in time. */
export function spread(wanted: readonly Wanted[]): number[] {
  let offset = 0;
  const offsets: number[] = [];
  const pools: Pool[] = [];
  wanted.forEach(({ at, weight, apart }, i) => {
    if (i > 0) offset += apart;
    offsets.push(offset);
    pools.push({ sum: (at - offset) * weight, weight, size: 1 });
    for (;;) {
      const last = pools[pools.length - 1]!;
      const before = pools[pools.length - 2];
      if (before === undefined || before.sum / before.weight <= last.sum / last.weight) break;
      pools.pop();
      before.sum += last.sum;
      before.weight += last.weight;
      before.size += last.size;
    }
  });
  const places: number[] = [];
  for (const { sum, weight, size } of pools)
    for (let k = 0; k < size; k++) places.push(sum / weight + offsets[places.length]!);
  return places;
}

/** The same round a circle of length `length`: the last one is a neighbour of the first. */
export function spreadRound(wanted: readonly Wanted[], length: number): number[] {
  const n = wanted.length;
  if (n === 0) return [];
  const needed = wanted.reduce((sum, { apart }) => sum + apart, 0);
  const shrunk = needed > length ? wanted.map((w) => ({ ...w, apart: (w.apart * length) / needed })) : wanted;
  // Three times round; in the middle one both neighbours press as on a circle.
  const thrice = [-length, 0, length].flatMap((turn) => shrunk.map((w) => ({ ...w, at: w.at + turn })));
  return spread(thrice).slice(n, 2 * n);
}
