/**
 * A row that goes round an opening of the piece: the stitches that an earlier row passed over, and the chains that
 * bridge them, seen from below. It finds such a row, the opening that it means and the fabric it is worked over; it
 * works nothing.
 */
import type { Item, Noun, Place, RowTree, WhichOpening, Work } from '../notation/tree.ts';
import { type Fabric, fabric, type Opening } from './fabric.ts';
import { CHAIN_SITE, type Site, stitchSite } from './site.ts';

interface Named {
  readonly which: WhichOpening;
  /** The row as it is worked over the opening's own fabric: its skipped stitches are simply the next ones. */
  readonly row: RowTree;
  /** It begins at the chains. */
  readonly chainsFirst: boolean;
  /** It speaks of the chains. */
  readonly chains: boolean;
}

function placesOf(item: Item): readonly Place[] {
  switch (item.type) {
    case 'work':
    case 'group':
    case 'skip':
      return item.places;
    case 'attach':
      return item.place === null ? [] : [item.place];
    default:
      return [];
  }
}

/** Items in the order written, those within repeats and groups in their place. */
function* flat(items: readonly Item[]): Iterable<Item> {
  for (const item of items) {
    yield item;
    if (item.type === 'repeat' || item.type === 'group') yield* flat(item.items);
  }
}

/** Which opening the words speak of; null where they speak of none. */
function spokenOf(items: readonly Item[]): WhichOpening | null {
  let attached = false;
  let skips = false;
  let which: WhichOpening | null = null;
  for (const item of flat(items)) {
    if (item.type === 'attach') {
      attached = true;
      which ??= item.opening ?? null;
    }
    if (item.type === 'skip' && item.places[0]?.kind !== 'skipped') skips = true;
    for (const place of placesOf(item)) {
      if (place.opening !== undefined && (which === null || which === 'any')) which = place.opening;
      // Where the row itself has skipped nothing yet, the skipped stitches are those of an earlier one.
      if (place.kind === 'skipped' && attached && !skips && place.below === 0) which ??= 'any';
    }
  }
  return which;
}

function nounsOf(place: Place): readonly Noun[] {
  return 'nouns' in place ? place.nouns : 'noun' in place ? [place.noun] : [];
}

const CHAINS: readonly Noun['kind'][] = ['chain', 'loop-of-chain'];

/** Is the first place named one of the chains? */
function beginsAtChains(items: readonly Item[]): boolean {
  for (const item of flat(items)) {
    const place = placesOf(item)[0];
    if (place === undefined) continue;
    // "Join yarn in base of first ch" is read as a place that has been met.
    if (item.type === 'attach' && place.kind === 'same') continue;
    const nouns = nounsOf(place);
    return nouns.length > 0 && nouns.every((noun) => CHAINS.includes(noun.kind));
  }
  return false;
}

/** Do the words speak of the chains at all? Where they do not, a chain is a stitch like the others. */
function namesChains(items: readonly Item[]): boolean {
  for (const item of flat(items)) {
    if (item.type === 'other-side') return true;
    if (placesOf(item).some((place) => nounsOf(place).some((noun) => CHAINS.includes(noun.kind))))
      return true;
  }
  return false;
}

/** "Sc2tog over 2 skipped sts": what is now said of the next ones gathers as many. */
function gathered(work: Work): Work {
  const place = work.places[0]!;
  if (work.stitch.together < 2 || work.over !== null || work.places.length > 1 || place.kind !== 'next')
    return work;
  if (place.implied || (place.amount.kind === 'one' && place.amount.value < 2)) return work;
  const one = { kind: 'one', value: 1, from: place.from, to: place.from } as const;
  return { ...work, over: place.amount, places: [{ ...place, amount: one, implied: true }] };
}

function plain(_: string, value: unknown): unknown {
  const node = value as { kind?: string; type?: string; from: number; to: number } | null;
  if (node?.type === 'work') return gathered(node as Work);
  if (node?.kind === 'loop-of-chain') return { ...node, kind: 'chain' };
  if (node?.type === 'other-side') return { type: 'aside', from: node.from, to: node.to };
  if (node?.kind !== 'skipped') return value;
  const place = value as Extract<Place, { kind: 'skipped' }>;
  const { noun, amount, loop, post, below, from, to } = place;
  const into = { loop, post, below, from, to };
  if (place.nth !== undefined) {
    return place.nth === 'last'
      ? { kind: 'last', amount, noun, ...into }
      : { kind: 'nth', nth: place.nth, noun, ...into };
  }
  // "Each skipped st" has no number.
  if (amount.from < amount.to || place.all !== true)
    return { kind: 'next', amount, nouns: [noun], every: 1, implied: false, ...into };
  const chain = { kind: 'chain', from: to, to } as const;
  const stop = { kind: 'before-next', noun: chain, from: to, to } as const;
  return { kind: 'across', nouns: [noun], every: 1, stop, ...into };
}

const known = new WeakMap<RowTree, Named | null>();

function named(row: RowTree): Named | null {
  let found = known.get(row);
  if (found !== undefined) return found;
  const which = spokenOf(row.items);
  found =
    which === null
      ? null
      : {
          which,
          row: { ...row, items: JSON.parse(JSON.stringify(row.items), plain) as readonly Item[] },
          chainsFirst: beginsAtChains(row.items),
          chains: namesChains(row.items),
        };
  known.set(row, found);
  return found;
}

/** Does the row go round an opening, as its words say? */
export function roundOpening(row: RowTree): boolean {
  return named(row) !== null;
}

const fabrics = new WeakMap<Opening, Map<string, Fabric>>();

function fabricOf(opening: Opening, { chains, chainsFirst }: Named): Fabric {
  let made = fabrics.get(opening);
  if (made === undefined) {
    made = new Map();
    fabrics.set(opening, made);
  }
  const key = `${chains} ${chainsFirst}`;
  let found = made.get(key);
  if (found === undefined) {
    const base = opening.sites.find((site) => site.kind === 'stitch')?.base ?? 't1';
    const bridge = new Array<Site>(opening.chains).fill(chains ? CHAIN_SITE : stitchSite(base, base));
    const sites = chainsFirst ? [...bridge, ...opening.sites] : [...opening.sites, ...bridge];
    found = fabric(sites, { form: 'joined', turned: false });
    made.set(key, found);
  }
  return found;
}

/**
 * The row and the fabric below it where it goes round one of the `openings`; null where it goes round none. The same
 * row and opening give the identical objects. Small openings beside a larger one are eyelets and buttonholes.
 */
export function overOpening(
  row: RowTree,
  openings: readonly Opening[],
): { readonly row: RowTree; readonly below: Fabric } | null {
  if (openings.length === 0) return null;
  const found = named(row);
  if (found === null) return null;
  const most = Math.max(...openings.map(({ sites }) => sites.length));
  const large = openings.filter(({ sites }) => sites.length * 2 > most);
  const opening = large[found.which === 'second' ? 1 : 0] ?? large[0]!;
  return { row: found.row, below: fabricOf(opening, found) };
}
