/**
 * The row whose plain list is meant over and over: "sc 1, inc around (18)" on 12 stitches. Read word for word only its
 * last stitch is worked to the end; which of the two is right is for the row's own count to say, and not decided here.
 */
import type { Item, Place, Repeat, RowTree } from '../notation/tree.ts';

/** Where a list of the row's own work begins anew. */
const PARTS: readonly Item['type'][] = ['turn', 'join', 'ring', 'attach', 'loops', 'repeat', 'fasten-off'];
/** What stands before the first stitch of a list. */
const BEFORE: readonly Item['type'][] = ['chain', 'aside', 'colour', 'marker', 'mark'];

type Across = Extract<Place, { kind: 'across' }>;

/** "inc around", "dc 1 across": a stitch to the end, with no word that it goes into each. */
function reach(item: Item | undefined): Across | null {
  if (item?.type !== 'work' || item.places.length > 1) return null;
  const place = item.places[0]!;
  const noun = place.kind === 'across' ? place.nouns[0] : undefined;
  if (place.kind !== 'across' || place.every > 1 || place.stop.kind !== 'end' || place.others) return null;
  return place.nouns.length === 1 && noun?.kind === 'stitch' && place.from === place.stop.from ? place : null;
}

/** One of the list: so many of the next stitches, and nothing that can only be said once. */
function listed(item: Item): boolean {
  if (item.type !== 'work' && item.type !== 'skip' && item.type !== 'group') return item.type === 'chain';
  return item.places.every((place) => place.kind === 'next' || place.kind === 'same');
}

const known = new WeakMap<RowTree, { row: RowTree; last: Across } | null>();

/**
 * The row with its list repeated to the end, and the words that say how far; null where it has no such list. The same
 * row gives the identical object.
 */
export function listAgain(row: RowTree): { readonly row: RowTree; readonly last: Across } | null {
  const before = known.get(row);
  if (before !== undefined) return before;
  const made = repeated(row);
  known.set(row, made);
  return made;
}

function repeated(row: RowTree): { row: RowTree; last: Across } | null {
  const { items } = row;
  const end = items.findIndex((item) => reach(item) !== null);
  const work = items[end];
  const place = reach(work);
  if (place === null || work?.type !== 'work') return null;
  let first = end;
  while (first > 0 && !PARTS.includes(items[first - 1]!.type)) first -= 1;
  while (first < end && BEFORE.includes(items[first]!.type)) first += 1;
  const list = items.slice(first, end);
  if (!list.some(({ type }) => type === 'work' || type === 'skip') || !list.every(listed)) return null;
  const { from, to, loop, post, below, nouns, stop } = place;
  const one = { kind: 'one', value: 1, from, to: from } as const;
  const next: Place = {
    kind: 'next',
    amount: work.amount,
    nouns,
    every: 1,
    implied: true,
    loop,
    post,
    below,
    from,
    to: from,
  };
  const repeat: Repeat = {
    type: 'repeat',
    mark: 'bracket',
    items: [...list, { ...work, amount: one, places: [next] }],
    times: { kind: 'to', stop, from: stop.from, to: stop.to },
    last: null,
    from: list[0]!.from,
    to,
  };
  return { row: { ...row, items: [...items.slice(0, first), repeat, ...items.slice(end + 1)] }, last: place };
}
