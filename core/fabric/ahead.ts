/**
 * What lies ahead of the hook where a row begins: the stitches below in the order they are come to, those an earlier
 * row left, and whether the work goes round. Works nothing.
 */
import type { Item, RowTree } from '../notation/tree.ts';
import type { BaseStitch } from '../trade/stitches.ts';
import { isWork, ringPlace } from './beginning.ts';
import type { EarlierRow } from './env.ts';
import type { Fabric } from './fabric.ts';
import type { Site } from './site.ts';

const reversed = new WeakMap<readonly Site[], readonly Site[]>();

/** The same stitches from the other end, the same array each time. */
export function backwards(sites: readonly Site[]): readonly Site[] {
  const known = reversed.get(sites);
  if (known !== undefined) return known;
  const made = sites.slice().reverse();
  reversed.set(sites, made);
  return made;
}

/** Slip stitches before what waits belong to the short row, not to what is gone back for. */
export function withoutSlips(rest: readonly Site[]): readonly Site[] {
  const first = rest.findIndex((site) => site.base !== 'slip');
  return first > 0 ? rest.slice(first) : rest;
}

/** The stitches of the row below in the order the hook comes to them. */
export function ordered(below: Fabric, turned: boolean): readonly Site[] {
  const { sites, start, form } = below;
  if (form === 'chain') return sites;
  if (form !== 'joined') return turned ? backwards(sites) : sites;
  const rotated = start === 0 ? sites : [...sites.slice(start), ...sites.slice(0, start)];
  if (!turned || rotated.length < 2) return rotated;
  return [rotated[0]!, ...rotated.slice(1).reverse()];
}

/** The earlier row that the row begins in, if it says so. */
export function earlierRow(items: readonly Item[], rows: ReadonlyMap<number, EarlierRow>): EarlierRow | null {
  for (const item of items) {
    if (item.type === 'earlier') return rows.get(item.row) ?? null;
    if (item.type === 'repeat') return earlierRow(item.items, rows);
    if (item.type !== 'work' && item.type !== 'group' && item.type !== 'attach') continue;
    const place = item.type === 'attach' ? item.place : item.places[0];
    if (place?.row !== undefined) return rows.get(place.row) ?? null;
    if (item.type !== 'attach') return null;
  }
  return null;
}

/** Whether the row is worked round: as its label says, else by what is below and how it ends. */
export function goesRound(row: RowTree, below: Fabric | null, items: readonly Item[]): boolean {
  const kind = row.label?.kind;
  const joins = items.some((item) => item.type === 'join' && !item.not);
  if (kind === 'round') return true;
  const turns = items.some((item) => item.type === 'turn' && !item.not);
  if (row.label?.short === true && !turns) {
    // Toy makers number their rounds R1, R2: begun in a ring or round a chain, and never turned.
    if (ringPlace(items) || items.some((item) => item.type === 'ring' || item.type === 'other-side'))
      return true;
    if (below !== null && (below.form === 'joined' || below.form === 'spiral')) return true;
  }
  if (kind === 'row')
    return joins && !items.some((item, i) => item.type === 'join' && items.slice(i + 1).some(isWork));
  if (below !== null && (below.form === 'joined' || below.form === 'spiral') && !below.ring) return true;
  return joins || (below?.ring === true && items.some((item) => item.type === 'join'));
}

/** Does the row begin in the place where the last one ended, with no yarn joined elsewhere? */
export function startsSame(items: readonly Item[]): boolean {
  const first = items.find((item) => item.type === 'attach' || isWork(item));
  return (first?.type === 'work' || first?.type === 'group') && first.places[0]?.kind === 'same';
}

/** The first real stitch of the row below tells what the piece is worked in. */
export function prevailing(below: Fabric): BaseStitch {
  for (const site of below.sites)
    if (site.kind === 'stitch' && site.base !== null && site.base !== 'slip') return site.base;
  return 't1';
}
