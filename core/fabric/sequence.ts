/**
 * "sc in first 3 sts, 2 sc in 4th st", "*skip 2 sts, dc in 3rd st": an ordinal that goes on from what the words before
 * it have used up is the next stitch, not one so many further on. Reads the tree; works nothing.
 */
import type { Item, Place, Work } from '../notation/tree.ts';

const BESIDE: ReadonlySet<Item['type']> = new Set([
  'chain',
  'aside',
  'turn',
  'colour',
  'marker',
  'loops',
  'mark',
]);

/** Places of the row below that an item takes up, or null where its words do not tell. */
function takenBy(item: Item, before: number): number | null {
  if (item.type !== 'work' && item.type !== 'skip') return null;
  const [place, ...more] = item.places;
  if (place === undefined || more.length > 0 || place.below > 0) return null;
  const per = item.type === 'work' && place.kind === 'next' && place.implied ? item.stitch.together : 1;
  switch (place.kind) {
    case 'same':
      return 0;
    case 'next':
      if (place.amount.kind !== 'one' || place.every > 1 || place.nouns[0]?.kind === 'space') return null;
      return place.amount.value * Math.max(1, per);
    case 'first':
      return place.amount.kind === 'one' && before === 0 && place.noun.kind !== 'space'
        ? place.amount.value
        : null;
    case 'nth':
      return place.nth.kind === 'one' && place.nth.value > before ? place.nth.value - before : null;
    default:
      return null;
  }
}

/** The items with such ordinals as the next place that they mean. */
export function inSequence(items: readonly Item[]): readonly Item[] {
  let before: number | null = 0;
  const out: Item[] = [];
  for (const item of items) {
    out.push(before === null ? item : (asNext(item, before) ?? item));
    if (BESIDE.has(item.type) || before === null) continue;
    const taken: number | null = takenBy(item, before);
    before = taken === null ? null : before + taken;
  }
  return out.every((item, i) => item === items[i]) ? items : out;
}

function asNext(item: Item, before: number): Work | null {
  const place = item.type === 'work' ? item.places[0] : undefined;
  if (item.type !== 'work' || place?.kind !== 'nth' || before === 0 || item.places.length > 1) return null;
  if (place.nth.kind !== 'one' || place.nth.value !== before + 1 || place.noun.kind === 'chain') return null;
  const { from, to, loop, post, below } = place;
  const amount = { kind: 'one', value: 1, from: place.nth.from, to: place.nth.to } as const;
  const next: Place = {
    kind: 'next',
    amount,
    nouns: [place.noun],
    every: 1,
    implied: false,
    loop,
    post,
    below,
    from,
    to,
  };
  return { ...item, places: [next] };
}
