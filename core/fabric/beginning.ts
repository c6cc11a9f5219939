/**
 * How a row begins: foundation chains and rings, yarn attached, slip stitches that travel, chains skipped or
 * added before the first stitch. What follows is worked elsewhere.
 */
import type { Amount, Attach, CountsAs, Item, Label, RowTree, Skip, Work } from '../notation/tree.ts';
import { height } from '../trade/stitches.ts';
import { chainFabric, type Fabric, fabric, ringFabric } from './fabric.ts';
import { stopAhead, take, takeFirst, takeGap, takeLast, takeMarked } from './places.ts';
import { MOST_STITCHES, NOWHERE, type Progress } from './progress.ts';
import { spaceSite, turningStitch } from './site.ts';
import { climbs, steps } from './steps.ts';
import { standRecorded } from './stitching.ts';
import { edgeChains, leadBase, standsFor } from './turning.ts';
import { run } from './work.ts';

export function ringPlace(items: readonly Item[]): boolean {
  return items.some((item) => {
    if (item.type === 'work') return item.places.some((place) => place.kind === 'ring');
    if (item.type === 'group')
      return item.places.some((place) => place.kind === 'ring') || ringPlace(item.items);
    if (item.type === 'repeat' || item.type === 'again') return ringPlace(item.items);
    return false;
  });
}

export function isWork(item: Item): boolean {
  if (item.type === 'work') return !(item.stitch.base === 'slip' && item.places[0]?.kind === 'own-chain');
  return item.type === 'group' || item.type === 'repeat' || item.type === 'again';
}

/** Items that say nothing of where the hook is. */
export const BESIDES: ReadonlySet<Item['type']> = new Set([
  'aside',
  'colour',
  'marker',
  'loops',
  'mark',
  'unread',
  'earlier',
]);

/** What the text says of the chains that the first stitch into a foundation skips. */
export function saidOfEdge(items: readonly Item[]): CountsAs | null {
  for (const item of items) {
    if (item.type === 'chain' && item.counts !== null) return item.counts;
    if (item.type === 'work') break;
  }
  return null;
}

/** Does the row begin along the other side of the foundation, as its words say before or with its first place? */
export function alongFoundation(items: readonly Item[]): boolean {
  for (const item of items) {
    if (item.type === 'other-side') return true;
    if (item.type === 'repeat') return alongFoundation(item.items);
    const place =
      item.type === 'work' || item.type === 'group' || item.type === 'skip'
        ? item.places[0]
        : item.type === 'attach'
          ? item.place
          : null;
    if (!place) continue;
    const nouns = 'nouns' in place ? place.nouns : 'noun' in place ? [place.noun] : [];
    if (nouns.some((noun) => noun.kind === 'loop-of-chain')) return true;
    if (item.type !== 'attach') return false;
  }
  return false;
}

interface Foundation {
  readonly fabric: Fabric | null;
  /** Items used up. */
  readonly used: number;
  readonly chains: number;
  readonly said: CountsAs | null;
  readonly failed: boolean;
}

/** Is the next thing said that the chain is joined into a ring? */
function closesRing(items: readonly Item[], from: number): boolean {
  const after = items.slice(from).find((item) => !BESIDES.has(item.type));
  if (after === undefined) return false;
  if (after.type === 'join') return !after.not;
  if (after.type === 'ring') return true;
  if (after.type !== 'work' || after.stitch.base !== 'slip') return false;
  const place = after.places[0];
  return place?.kind === 'own-chain' || (place?.kind === 'first' && place.noun.kind === 'chain');
}

/** Does a row that begins with a chain go on in that chain, or is it a turning chain with nothing below? */
function worksChain(items: readonly Item[]): boolean {
  for (const item of items) {
    if (item.type === 'skip' || item.type === 'group' || item.type === 'work') {
      const place = item.places[0];
      if (place === undefined) return false;
      if (place.kind === 'from-hook' || place.kind === 'own-chain') return true;
      if (place.kind === 'next' || place.kind === 'across')
        return place.nouns.some((noun) => noun.kind === 'chain');
      if (place.kind === 'first' || place.kind === 'nth') return place.noun.kind === 'chain';
      return false;
    }
    if (item.type === 'repeat') return worksChain(item.items);
  }
  return true;
}

/** Begins a piece that has nothing below it yet. */
export function begin(items: readonly Item[], p: Pick<Progress, 'amount'>, label: Label | null): Foundation {
  const none: Foundation = { fabric: null, used: 0, chains: 0, said: null, failed: false };
  let i = 0;
  while (i < items.length && (BESIDES.has(items[i]!.type) || items[i]!.type === 'attach')) i += 1;
  const item = items[i];
  if (item === undefined) return none;
  if (item.type === 'ring') {
    const chains = item.chains === null ? null : p.amount(item.chains);
    return {
      ...none,
      fabric: ringFabric(chains === null ? null : Math.min(chains, MOST_STITCHES)),
      used: i + 1,
      chains: chains ?? 0,
    };
  }
  if (item.type === 'chain') {
    const n = p.amount(item.amount) ?? 0;
    // "Ch 3, 11 dc in ring": the ring is taken for granted, and the chain is the round's own.
    if (ringPlace(items.slice(i + 1)) && !closesRing(items, i + 1))
      return { ...none, fabric: ringFabric(null), used: i };
    if (n > MOST_STITCHES) return { ...none, failed: true, used: i + 1 };
    let next = i + 1;
    while (next < items.length && BESIDES.has(items[next]!.type)) next += 1;
    if (closesRing(items, i + 1)) return { ...none, fabric: ringFabric(n), used: next + 1, chains: n };
    const labelled = label?.kind === 'row' || label?.kind === 'round' || label?.kind === 'numbered';
    if ((labelled || n <= 4) && !worksChain(items.slice(i + 1))) return none;
    return { ...none, fabric: chainFabric(n), used: i + 1, chains: n, said: item.counts };
  }
  if (ringPlace([item])) return { ...none, fabric: ringFabric(null) };
  if (item.type === 'work' && item.stitch.form === 'foundation') return { ...none, fabric: fabric([]) };
  if (item.type === 'repeat' || item.type === 'group') {
    if (item.items.some((inner) => inner.type === 'work' && inner.stitch.form === 'foundation'))
      return { ...none, fabric: fabric([]) };
  }
  return none;
}

/** Does the row make its own beginning (a chain, a ring, foundation stitches), or repeat another piece's? */
export function beginsAfresh(row: RowTree): boolean {
  const { items } = row;
  if (items.some((item) => item.type === 'as-piece')) return true;
  const first = {
    amount: (of: Amount) => (of.kind === 'one' ? of.value : of.kind === 'sizes' ? (of.values[0] ?? 1) : 1),
  };
  const begun = begin(items, first, row.label);
  return begun.fabric !== null || begun.failed;
}

function rotate(p: Progress, to: number): void {
  if (to > 0) p.below = [...p.below.slice(to), ...p.below.slice(0, to)];
  p.pos = 0;
  p.inner = 0;
}

/** The yarn is joined somewhere: the row begins there. */
export function attach(p: Progress, item: Attach): void {
  const place = item.place;
  if (place === null) return;
  const before = p.pos;
  let index: number | null = null;
  p.trials += 1;
  switch (place.kind) {
    case 'next':
      index = p.seek(place.nouns);
      break;
    case 'first':
      index = takeFirst(p, place.noun, 0, place);
      break;
    case 'last':
      index = takeLast(p, place.noun, 1, place)?.[0] ?? null;
      break;
    case 'nth':
      for (let k = p.amount(place.nth) ?? 1; k > 0; k--) index = take(p, [place.noun], place);
      break;
    case 'marked':
      index = takeMarked(p, place);
      break;
    case 'across':
      index = p.seek(place.nouns);
      break;
    case 'between':
      // The hook stands in the gap, before the stitch behind it.
      if (item.stitch === null || item.stitch.base === 'slip') index = takeGap(p, place.noun, place);
      p.trials -= 1;
      if (index !== null) p.last = index;
      return;
    default:
      break;
  }
  p.trials -= 1;
  if (index === null || index < 0) {
    p.pos = before;
    return;
  }
  if (p.round) rotate(p, index);
  else p.pos = index;
  p.inner = 0;
  p.intoSpace = false;
}

/** Slip stitches that only bring the hook to where the row begins. */
export function travels(items: readonly Item[], i: number): boolean {
  const item = items[i]!;
  if (item.type !== 'work' || item.stitch.base !== 'slip' || item.stitch.form !== 'plain') return false;
  // "Sl st across first 6 sts, sc in each st": the first stitches are bound off, whatever follows.
  const place = item.places[0];
  // Nobody binds off in back loops: those are stitches of a ribbing.
  const boundOff =
    place?.kind === 'first' &&
    place.loop === null &&
    (place.amount.kind !== 'one' || place.amount.value > 1) &&
    items.slice(i + 1).some((next) => next.type === 'work' && next.stitch.base !== 'slip');
  if (boundOff) return true;
  for (let at = i + 1; at < items.length; at++) {
    const next = items[at]!;
    if (next.type === 'chain' || (next.type === 'group' && (next.items[0]?.type === 'chain' || climbs(next))))
      return true;
    if (BESIDES.has(next.type) || next.type === 'turn') continue;
    if (next.type === 'work' && next.stitch.base === 'slip' && next.stitch.form === 'plain') continue;
    return intoLoop(item, next);
  }
  return false;
}

/** "Sl st in next ch, sc in ch-3 lp": slip stitches along a chain lead into its loop. */
function intoLoop(slip: Work, next: Item): boolean {
  const along = slip.places[0];
  const first = next.type === 'repeat' ? next.items.find((item) => item.type === 'work') : next;
  if (along === undefined || (first?.type !== 'work' && first?.type !== 'group')) return false;
  const to = first.places[0];
  if (to === undefined) return false;
  const leads =
    along.kind === 'next'
      ? along.nouns.every((noun) => noun.kind === 'chain')
      : along.kind === 'of-unit' && along.unit.kind === 'space';
  const loops =
    (to.kind === 'next' || to.kind === 'across') && to.nouns.every((noun) => noun.kind === 'space');
  return leads && (loops || to.kind === 'same');
}

export function travel(p: Progress, item: Work): void {
  const place = item.places[0];
  // On the way there every stitch is passed over as a matter of course.
  p.muted += 1;
  if (place?.kind === 'across' && place.stop.kind === 'before-next') {
    const to = stopAhead(p, place.stop);
    if (to >= 0) {
      p.travelled += Math.max(0, to - p.pos);
      p.last = to;
      p.advance(to);
    }
  } else run(p, steps([item]), 0, false);
  p.muted -= 1;
  p.closeSpace();
  p.travelled += p.made.filter(({ kind }) => kind === 'stitch').length;
  p.made.length = 0;
  p.recording?.travel();
  p.madeAt = -2;
  if (p.round && p.last >= 0) {
    rotate(p, p.last);
    // A gap is no place that a chain could use up: the stitch behind it is still to be worked.
    p.startsInGap = place?.kind === 'between';
    if (p.startsInGap) p.gap = 0;
    p.last = p.startsInGap ? 0 : NOWHERE;
  }
  p.intoSpace = false;
}

/** "Skip 3 ch, dc in next ch": the skipped chains are the edge, as with "dc in 4th ch from hook". */
export function skipsEdge(p: Progress, item: Skip, rest: readonly Item[], row: RowTree): boolean {
  const place = item.places[0];
  if (item.places.length !== 1 || place === undefined || item.behind) return false;
  const nouns = place.kind === 'first' ? [place.noun] : place.kind === 'next' ? place.nouns : [];
  if (!nouns.some((noun) => noun.kind === 'chain' || noun.kind === 'stitch')) return false;
  const n = place.kind === 'first' || place.kind === 'next' ? (p.amount(place.amount) ?? 0) : 0;
  if (n < 1 || n >= p.below.length) return false;
  const base = leadBase(rest, p.env) ?? p.prevailing;
  const edge = edgeChains(n + 1, item.counts ?? p.edgeSaid, base, p.round, p.env, p.figures, p.forced);
  if (edge.odd)
    p.note('edge-chain-unclear', item, { chain: n + 1, stitch: base, skipped: n, rest: n - height(base) });
  if (edge.loosely) p.edgeLoose = edge.counts;
  if (edge.assumed)
    p.edgeAssumed = { chains: n, stitch: edge.base, counts: edge.counts, from: row.from, to: row.to };
  if (edge.counts) p.made.push(turningStitch(standsFor(edge), edge.base, n));
  if (edge.space > 0) p.made.push(spaceSite(edge.space, true));
  standRecorded(p, n, edge);
  p.advance(n - 1);
  p.firstUsed = n;
  return true;
}

/** Chains added at the hook: foundation for stitches beyond the edge. */
export function extend(p: Progress, n: number): void {
  // A block hung on to a single block: the chain that began that one is the space to join to.
  if (!p.below.some((site) => site.kind === 'space')) p.meeting.blocks = true;
  p.below = [...chainFabric(n).sites, ...p.below];
  p.bare = true;
}
