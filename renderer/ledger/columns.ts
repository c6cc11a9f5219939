/**
 * Which columns of the ledger are in view: all where there is room, a stretch of them around the size in focus
 * where there is less, and the size in focus alone in a narrow window. Numbers only.
 */

/** Columns in view: from `first`, `count` of them. */
export interface Columns {
  readonly first: number;
  readonly count: number;
}

/** With fewer than this in view beside others that are not, the one in focus alone tells more. */
const FEWEST = 3;

/** How many of `sizes` columns, each `cell` wide, fit into `room`; 1 when it folds. All lengths in one unit. */
export function columnsThatFit(room: number, cell: number, sizes: number): number {
  const fit = Math.floor(room / cell);
  if (fit >= sizes) return sizes;
  return fit < FEWEST ? 1 : fit;
}

/** The stretch of columns to show: the one before, moved no further than needed to hold `wanted`. */
export function columnsInView(before: number, count: number, sizes: number, wanted: number): Columns {
  const shown = Math.min(count, sizes);
  let first = Math.min(Math.max(0, before), Math.max(0, sizes - shown));
  if (wanted >= 0 && wanted < first) first = wanted;
  if (wanted >= first + shown) first = wanted - shown + 1;
  return { first, count: shown };
}
