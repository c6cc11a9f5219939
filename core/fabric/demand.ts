/**
 * How many stitches (or spaces) of the row below some items use, read off the words. It serves only to say
 * by how much a repeat misses; what a row really uses comes from working it.
 */
import type { Amount, Item, Noun, Place } from '../notation/tree.ts';

export type Unit = 'st' | 'sp';

function uses(nouns: readonly Noun[], unit: Unit, bare: boolean): boolean {
  return nouns.some((noun) =>
    unit === 'sp'
      ? noun.kind === 'space'
      : noun.kind === 'stitch' || noun.kind === 'named' || (bare && noun.kind === 'chain'),
  );
}

function ofPlace(
  place: Place,
  together: number,
  unit: Unit,
  bare: boolean,
  amount: (a: Amount) => number,
): number {
  switch (place.kind) {
    case 'next': {
      if (!uses(place.nouns, unit, bare)) return 0;
      const n = amount(place.amount);
      return place.implied ? n * together : Math.max(n, together);
    }
    case 'last':
    case 'first':
      return uses([place.noun], unit, bare) ? amount(place.amount) : 0;
    case 'turning-chain':
      return unit === 'st' ? 1 : 0;
    case 'nth':
      return uses([place.noun], unit, bare) ? amount(place.nth) : 0;
    default:
      return 0;
  }
}

/** Stitches (or spaces) that the items use, an open end counted as nothing. */
export function demand(
  items: readonly Item[],
  unit: Unit,
  bare: boolean,
  amount: (a: Amount) => number,
): number {
  let n = 0;
  for (const item of items) {
    switch (item.type) {
      case 'work': {
        const together = item.over === null ? Math.max(1, item.stitch.together) : amount(item.over);
        for (const place of item.places) {
          const times = place.kind === 'next' && place.implied ? Math.max(1, amount(item.amount)) : 1;
          n += ofPlace(place, together, unit, bare, amount) * (together > 1 ? times : 1);
        }
        break;
      }
      case 'group':
      case 'skip':
        for (const place of item.places) n += ofPlace(place, 1, unit, bare, amount);
        break;
      case 'repeat':
      case 'again': {
        if (item.times.kind !== 'times') break;
        const passes = amount(item.times.amount) + (item.times.more && item.type === 'repeat' ? 1 : 0);
        n += passes * demand(item.items, unit, bare, amount);
        break;
      }
      default:
        break;
    }
  }
  return n;
}
