/**
 * A row that turns on its way: "sc in first 5 sts, turn, ch 1, sc in 5 sts, turn, …" is told as one and worked as
 * several, each over the one before it. Only takes the words apart; works nothing.
 */
import type { Item, RowTree, Unworked } from '../notation/tree.ts';
import { BESIDES, isWork } from './beginning.ts';

const known = new WeakMap<RowTree, readonly RowTree[]>();

/** Does what stands behind a turn go on as a row does: with its chain, a slip stitch, or a place that it names? */
function goesOn(items: readonly Item[]): boolean {
  const next = items.find((item) => !BESIDES.has(item.type));
  if (!items.some(isWork)) return false;
  if (next?.type === 'chain') return true;
  if (next?.type !== 'work') return false;
  const place = next.places[0]!;
  return next.stitch.base === 'slip' || place.kind !== 'next' || !place.implied;
}

/** Index of the first turn with work before it and a row behind it; -1 where there is none. */
function turnWithin(items: readonly Item[]): number {
  return items.findIndex(
    (item, i) =>
      item.type === 'turn' && !item.not && items.slice(0, i).some(isWork) && goesOn(items.slice(i + 1)),
  );
}

/**
 * The rows that a written row is worked in, one where it does not turn on its way. What the row states is of its last;
 * those before it leave what lies beyond their turn. The same row gives the identical objects.
 */
export function rowsWithin(row: RowTree): readonly RowTree[] {
  const before = known.get(row);
  if (before !== undefined) return before;
  const rows: RowTree[] = [];
  let items = row.items;
  // What a part row leaves of a round is not kept for the round after it.
  const parts = row.label?.kind !== 'round';
  for (let at = parts ? turnWithin(items) : -1; at >= 0 && rows.length < MOST; at = turnWithin(items)) {
    const { from, to } = items[at]!;
    const leaves: Unworked = {
      type: 'unworked',
      amount: null,
      noun: { kind: 'stitch', from: to, to },
      from,
      to,
    };
    rows.push({ ...row, items: [...items.slice(0, at), leaves, items[at]!], counts: [], to });
    items = items.slice(at + 1);
  }
  rows.push(rows.length === 0 ? row : { ...row, items, from: items[0]!.from });
  known.set(row, rows);
  return rows;
}

/** More turns in one row than any maker writes. */
const MOST = 200;
