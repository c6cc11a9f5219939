/**
 * How a round is closed when its last words join it without saying so: "ss to 1st dc", "ch 2, dc in first sc to
 * form last lp". Rewrites the row's list of items, not its text; works nothing.
 */
import type { Item, Join, Place } from '../notation/tree.ts';
import { isWork } from './beginning.ts';

const joined = new WeakMap<readonly Item[], readonly Item[]>();

function atFirst(place: Place): boolean {
  if (place.kind === 'first') return true;
  return place.kind === 'nth' && place.nth.kind === 'one' && place.nth.value === 1;
}

/** Where a round that is closed there begins again. */
function startOf(place: Place): Place {
  if (place.kind !== 'nth') return place;
  const { from, to, loop, post, below, noun, nth } = place;
  return { kind: 'first', amount: nth, from, to, loop, post, below, noun };
}

/** "ch 2, sk 3 sts, dc in first sc": a chain behind which nothing but a skip comes. */
function closesChain(items: readonly Item[], last: number): boolean {
  const before = items.slice(0, last).findLast((item) => item.type !== 'skip');
  return before?.type === 'chain';
}

function joinOf(items: readonly Item[], last: number): Join | null {
  const item = items[last];
  if (item?.type !== 'work' || item.places.length !== 1 || !items.slice(0, last).some(isWork)) return null;
  if (item.amount.kind !== 'one' || item.amount.value !== 1 || item.stitch.form !== 'plain') return null;
  const place = item.places[0]!;
  const slip = item.stitch.base === 'slip';
  const closes = slip
    ? atFirst(place) || place.kind === 'turning-chain' || place.kind === 'own-chain'
    : (atFirst(place) && closesChain(items, last)) || place.kind === 'turning-chain';
  if (!closes) return null;
  const { from, to, stitch } = item;
  return { type: 'join', not: false, from, to, stitch, place: startOf(place) };
}

/** What stands for the last work of a round when that, or the end of its last pass, joins the round. */
function closingOf(items: readonly Item[], last: number): readonly Item[] | null {
  const whole = joinOf(items, last);
  if (whole !== null) return [whole];
  // "Rep from * around, ending with ch 3, dc in first sc": the repeat's own last words.
  const item = items[last]!;
  if (
    item.type !== 'repeat' ||
    item.last === null ||
    !('items' in item.last) ||
    item.last.kind === 'omitting'
  )
    return null;
  const own = item.last.items;
  const end = own.findLastIndex(isWork);
  const join = end < 1 ? null : joinOf([...item.items, ...own], item.items.length + end);
  if (join === null) return null;
  return [{ ...item, last: { ...item.last, items: own.slice(0, end) } }, join];
}

/** The items of a round, its last words turned into the join that they are. The same items give the same list. */
export function withJoin(items: readonly Item[]): readonly Item[] {
  const known = joined.get(items);
  if (known !== undefined) return known;
  const last = items.findLastIndex(isWork);
  const said = items.some((item) => item.type === 'join' && !item.not);
  const closing = last < 0 || said ? null : closingOf(items, last);
  const made = closing === null ? items : [...items.slice(0, last), ...closing, ...items.slice(last + 1)];
  joined.set(items, made);
  return made;
}
