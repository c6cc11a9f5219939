/**
 * Works one row over the fabric below, for one size, the way a hook does: how the work is turned, what the
 * turning chain is, the items, and how the row is closed. Pure: the same row on the same fabric gives the
 * same result. Knows nothing of row numbers or of other rows.
 */
import type { Fact } from '../finding.ts';
import type {
  Attach,
  Chain,
  CountsAs,
  Item,
  Join,
  Label,
  Place,
  RowTree,
  Skip,
  Work,
} from '../notation/tree.ts';
import { type BaseStitch, height } from '../trade/stitches.ts';
import type { Env, Figures } from './env.ts';
import {
  type Carried,
  chainFabric,
  type Fabric,
  fabric,
  type Opening,
  ringFabric,
  type Tally,
  tally,
} from './fabric.ts';
import { take, takeFirst, takeLast, takeMarked } from './places.ts';
import { MOST_STITCHES, NOWHERE, Progress } from './progress.ts';
import { RING_SITE, type Site, spaceSite, turningStitch } from './site.ts';
import { stand } from './standing.ts';
import { checkStated } from './stated.ts';
import { edgeChains, evidenceOf, leadBase } from './turning.ts';
import { even, leftOver, one, run, steps } from './work.ts';

/** What working a row came to. */
export interface Worked {
  readonly fabric: Fabric;
  readonly tally: Tally;
  /** Passes of the row's main repeat; null when it has none. */
  readonly repeats: number | null;
  readonly facts: readonly Fact[];
  readonly openings: readonly Opening[];
  /** Index below (in working order) that each site of the fabric went into; null unless traced. */
  readonly into: readonly number[] | null;
  /** The row makes only the foundation, or does no work at all. */
  readonly idle: boolean;
  /** Chains of the foundation, when this row made it. */
  readonly foundation: number;
  readonly round: boolean;
  /** The work was turned before it. */
  readonly turned: boolean;
  /** What the row's own stated count settled about a doubtful turning chain; null = nothing. */
  readonly settled: boolean | null;
}

const unstated = new WeakMap<RowTree, Map<boolean | null, RowTree>>();

/**
 * The row as it is worked again later: without the counts stated for its first working, and with what those
 * settled about its turning chain said. The same row gives the identical object.
 */
export function workedAgain(row: RowTree, settled: boolean | null): RowTree {
  if (row.counts.length === 0 && settled === null) return row;
  let known = unstated.get(row);
  if (known === undefined) {
    known = new Map();
    unstated.set(row, known);
  }
  const same = known.get(settled);
  if (same !== undefined) return same;
  let items = row.items;
  if (settled !== null) {
    const span = { from: row.from, to: row.from };
    const counts: CountsAs = settled
      ? { ...span, kind: 'stitch', stitch: null, chains: null, throughout: false }
      : { ...span, kind: 'nothing', throughout: false };
    const at = items.findIndex((item) => item.type === 'chain');
    items = items.map((item, i) => (i === at && item.type === 'chain' ? { ...item, counts } : item));
  }
  const made: RowTree = { ...row, items, counts: [] };
  known.set(settled, made);
  return made;
}

const reversed = new WeakMap<readonly Site[], readonly Site[]>();

const tails = new WeakMap<readonly Item[], Map<number, readonly Item[]>>();

/** The items from `i` on, the same array each time. */
function tailOf(items: readonly Item[], i: number): readonly Item[] {
  if (i === 0) return items;
  let known = tails.get(items);
  if (known === undefined) {
    known = new Map();
    tails.set(items, known);
  }
  let tail = known.get(i);
  if (tail === undefined) {
    tail = items.slice(i);
    known.set(i, tail);
  }
  return tail;
}

function backwards(sites: readonly Site[]): readonly Site[] {
  const known = reversed.get(sites);
  if (known !== undefined) return known;
  const made = sites.slice().reverse();
  reversed.set(sites, made);
  return made;
}

function ordered(below: Fabric, turned: boolean): readonly Site[] {
  const { sites, start, form } = below;
  if (form === 'chain') return sites;
  if (form !== 'joined') return turned ? backwards(sites) : sites;
  const rotated = start === 0 ? sites : [...sites.slice(start), ...sites.slice(0, start)];
  if (!turned || rotated.length < 2) return rotated;
  return [rotated[0]!, ...rotated.slice(1).reverse()];
}

function ringPlace(items: readonly Item[]): boolean {
  return items.some((item) => {
    if (item.type === 'work') return item.places.some((place) => place.kind === 'ring');
    if (item.type === 'group')
      return item.places.some((place) => place.kind === 'ring') || ringPlace(item.items);
    if (item.type === 'repeat' || item.type === 'again') return ringPlace(item.items);
    return false;
  });
}

function isWork(item: Item): boolean {
  if (item.type === 'work') return !(item.stitch.base === 'slip' && item.places[0]?.kind === 'own-chain');
  return item.type === 'group' || item.type === 'repeat' || item.type === 'again';
}

/** Items that say nothing of where the hook is. */
const BESIDES: ReadonlySet<Item['type']> = new Set(['aside', 'colour', 'marker', 'loops', 'mark', 'unread']);

/** What the text says of the chains that the first stitch into a foundation skips. */
function saidOfEdge(items: readonly Item[]): CountsAs | null {
  for (const item of items) {
    if (item.type === 'chain' && item.counts !== null) return item.counts;
    if (item.type === 'work') break;
  }
  return null;
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
function begin(items: readonly Item[], p: Pick<Progress, 'amount'>, label: Label | null): Foundation {
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

function rotate(p: Progress, to: number): void {
  if (to > 0) p.below = [...p.below.slice(to), ...p.below.slice(0, to)];
  p.pos = 0;
  p.inner = 0;
}

/** The yarn is joined somewhere: the row begins there. */
function attach(p: Progress, item: Attach): void {
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
function travels(items: readonly Item[], i: number): boolean {
  const item = items[i]!;
  if (item.type !== 'work' || item.stitch.base !== 'slip' || item.stitch.form !== 'plain') return false;
  for (let at = i + 1; at < items.length; at++) {
    const next = items[at]!;
    if (next.type === 'chain') return true;
    if (BESIDES.has(next.type) || next.type === 'turn') continue;
    if (next.type === 'work' && next.stitch.base === 'slip' && next.stitch.form === 'plain') continue;
    return false;
  }
  return false;
}

function travel(p: Progress, item: Work): void {
  const place = item.places[0];
  // On the way there every stitch is passed over as a matter of course.
  p.muted += 1;
  if (place?.kind === 'across' && place.stop.kind === 'before-next') {
    const to = p.seek([place.stop.noun]);
    if (to >= 0) {
      p.last = to;
      p.advance(to);
    }
  } else run(p, steps([item]), 0, false);
  p.muted -= 1;
  p.closeSpace();
  p.made.length = 0;
  p.into.length = 0;
  p.madeAt = -2;
  if (p.round && p.last >= 0) {
    rotate(p, p.last);
    p.last = NOWHERE;
  }
  p.intoSpace = false;
}

function joinStart(p: Progress, item: Join, made: readonly Site[]): number {
  const place = item.place;
  if (
    item.stitch !== null &&
    item.stitch.base !== null &&
    item.stitch.base !== 'slip' &&
    made[made.length - 1]?.kind === 'space'
  ) {
    return made.length - 1;
  }
  const nouns =
    place === null ? [] : place.kind === 'first' ? [place.noun] : place.kind === 'next' ? place.nouns : [];
  if (nouns.length > 0) {
    const seeker = new Progress(made, false, true, p.env, p.figures);
    const i = seeker.seek(nouns, 0);
    if (i >= 0) return i;
  }
  return Math.max(
    0,
    made.findIndex((site) => site.kind !== 'turning'),
  );
}

/** Whether the row is worked round: as its label says, else by what is below and how it ends. */
function goesRound(row: RowTree, below: Fabric | null, items: readonly Item[]): boolean {
  const kind = row.label?.kind;
  const joins = items.some((item) => item.type === 'join' && !item.not);
  if (kind === 'round') return true;
  if (kind === 'row')
    return joins && !items.some((item, i) => item.type === 'join' && items.slice(i + 1).some(isWork));
  if (below !== null && (below.form === 'joined' || below.form === 'spiral') && !below.ring) return true;
  return joins || (below?.ring === true && items.some((item) => item.type === 'join'));
}

/** Works `row` over `below` (null: nothing yet) in the env's size. Total: whatever the row says, it answers. */
export function workRow(row: RowTree, below: Fabric | null, env: Env, figures: Figures): Worked {
  const first = attemptRow(row, below, env, figures, null);
  if (first.assumed === null || first.worked.facts.every((fact) => fact.code !== 'stated-count-wrong'))
    return first.worked;
  // Nothing in the words decides about the turning chain; the row's own count may.
  const other = attemptRow(row, below, env, figures, !first.assumed);
  return other.worked.facts.some((fact) => fact.code === 'stated-count-wrong')
    ? first.worked
    : { ...other.worked, settled: !first.assumed };
}

function attemptRow(
  row: RowTree,
  under: Fabric | null,
  env: Env,
  figures: Figures,
  forced: boolean | null,
): { worked: Worked; assumed: boolean | null } {
  const { items } = row;
  const round = goesRound(row, under, items);
  const scratch = new Progress([], false, round, env, figures);
  let below = under;
  let i = 0;
  let chains = 0;
  let said: CountsAs | null = null;
  const facts: Fact[] = [];

  if (below === null) {
    const begun = begin(items, scratch, row.label);
    below = begun.fabric;
    i = begun.used;
    chains = begun.chains;
    said = begun.said;
    const worksHere = items.slice(i).some(isWork);
    if (begun.failed)
      facts.push({ code: 'too-many-stitches', from: row.from, to: row.to, data: { limit: MOST_STITCHES } });
    else if (below === null && worksHere) {
      const at = items.find(isWork)!;
      facts.push({ code: 'nothing-to-work-into', from: at.from, to: at.to, data: {} });
    }
    if (below === null || !worksHere) {
      const made = below ?? fabric([]);
      const of = tally(made);
      return {
        worked: {
          fabric: made,
          tally: of,
          repeats: null,
          facts: [...facts, ...(facts.length === 0 ? checkStated(row.counts, of, env, figures) : [])],
          openings: [],
          into: null,
          idle: true,
          foundation: chains,
          round,
          turned: false,
          settled: null,
        },
        assumed: null,
      };
    }
  }

  if (!items.slice(i).some((item) => isWork(item) || item.type === 'attach')) {
    return { worked: idle(row, below, items, env, figures, round), assumed: null };
  }

  const usesRing = below.ring && (ringPlace(items) || below.sites[0]?.kind === 'ring');
  const lead = items.slice(i).find((item) => item.type === 'turn' || isWork(item));
  const turned =
    lead?.type === 'turn' && items.indexOf(lead) >= i
      ? !lead.not
      : (below.turned ?? (!round && below.form === 'flat'));
  const goesBack =
    below.rest !== null &&
    below.fastened &&
    items.slice(i).some((item, k, all) => item.type === 'attach' && !all.slice(0, k).some(isWork));
  const bare = below.form === 'chain' || (below.ring && !usesRing);
  const sites = goesBack ? below.rest! : usesRing ? [RING_SITE] : ordered(below, turned);
  const p = new Progress(sites, bare, round, env, figures, turned && !bare && !goesBack);
  p.forced = forced;
  p.edgeSaid = said ?? (below.form === 'chain' ? saidOfEdge(items.slice(i)) : null);
  const evidence = evidenceOf(items.slice(i), env);
  p.edgeBase = evidence.base;
  p.prevailing = evidence.base ?? prevailing(below);

  // What stands before the first stitch.
  let carried = below.carried;
  let stood = false;
  for (; i < items.length; i++) {
    const item = items[i]!;
    if (BESIDES.has(item.type) || item.type === 'turn' || item.type === 'mark' || item.type === 'fasten-off')
      continue;
    if (item.type === 'join' && (item.not || !stood)) continue;
    if (item.type === 'attach') {
      attach(p, item);
      if (item.stitch !== null && item.stitch.base !== null && item.stitch.base !== 'slip') break;
      continue;
    }
    if (travels(items, i)) {
      travel(p, item as Work);
      continue;
    }
    if (
      item.type === 'skip' &&
      !stood &&
      items.slice(i + 1).find((next) => !BESIDES.has(next.type))?.type === 'attach'
    ) {
      one(p, item);
      p.waiting = [];
      continue;
    }
    if (
      item.type === 'skip' &&
      !stood &&
      below.form === 'chain' &&
      skipsEdge(p, item, items.slice(i + 1), row)
    ) {
      stood = true;
      continue;
    }
    if (item.type === 'chain' && !stood && p.made.length === 0) {
      const n = p.amount(item.amount) ?? 0;
      const next = items.slice(i + 1).find((after) => !BESIDES.has(after.type) && after.type !== 'turn');
      const fromHook = next?.type === 'work' && next.places[0]?.kind === 'from-hook';
      if (fromHook && n > 0) {
        if (n > MOST_STITCHES) {
          p.problem('too-many-stitches', item, { limit: MOST_STITCHES });
          break;
        }
        extend(p, n);
      } else if (n > 0 && n <= MOST_STITCHES) stand(p, n, item.counts, null, items.slice(i + 1), item);
      stood = true;
      carried = null;
      continue;
    }
    break;
  }
  if (carried !== null && !stood) {
    const next = items.slice(i).find((after) => !BESIDES.has(after.type));
    if (next?.type === 'work' && next.places[0]?.kind === 'from-hook') extend(p, carried.chains);
    else stand(p, carried.chains, null, carried, items.slice(i), row);
  }

  run(p, steps(tailOf(items, i)), 0, true);
  if (p.exhausted) p.note('too-many-stitches', row, { limit: p.made.length });
  return finish(row, items, below, p, chains, turned, goesBack);
}

/** "Skip 3 ch, dc in next ch": the skipped chains are the edge, as with "dc in 4th ch from hook". */
function skipsEdge(p: Progress, item: Skip, rest: readonly Item[], row: RowTree): boolean {
  const place = item.places[0];
  if (item.places.length !== 1 || place === undefined || item.behind) return false;
  const nouns = place.kind === 'first' ? [place.noun] : place.kind === 'next' ? place.nouns : [];
  if (!nouns.some((noun) => noun.kind === 'chain' || noun.kind === 'stitch')) return false;
  const n = place.kind === 'first' || place.kind === 'next' ? (p.amount(place.amount) ?? 0) : 0;
  if (n < 1 || n >= p.below.length) return false;
  const base = leadBase(rest, p.env) ?? p.prevailing;
  const edge = edgeChains(n + 1, p.edgeSaid, base, p.round, p.env, p.figures, p.forced);
  if (edge.odd)
    p.note('edge-chain-unclear', item, { chain: n + 1, stitch: base, skipped: n, rest: n - height(base) });
  if (edge.assumed)
    p.edgeAssumed = { chains: n, stitch: edge.base, counts: edge.counts, from: row.from, to: row.to };
  if (edge.counts) p.made.push(turningStitch(edge.base, edge.base, n));
  if (edge.space > 0) p.made.push(spaceSite(edge.space, true));
  if (p.env.trace) while (p.into.length < p.made.length) p.into.push(NOWHERE);
  p.advance(n - 1);
  p.firstUsed = n;
  return true;
}

/** Chains added at the hook: foundation for stitches beyond the edge. */
function extend(p: Progress, n: number): void {
  p.below = [...chainFabric(n).sites, ...p.below];
  p.bare = true;
}

function prevailing(below: Fabric): BaseStitch {
  for (const site of below.sites)
    if (site.kind === 'stitch' && site.base !== null && site.base !== 'slip') return site.base;
  return 't1';
}

/** A row that works nothing: "Turn.", "Fasten off.", "Ch 3, turn.". */
function idle(
  row: RowTree,
  below: Fabric,
  items: readonly Item[],
  env: Env,
  figures: Figures,
  round: boolean,
): Worked {
  const turn = items.findLast((item) => item.type === 'turn');
  const chain = items.findLast((item) => item.type === 'chain');
  const fastened = items.some((item) => item.type === 'fasten-off');
  const closes =
    below.form === 'chain' &&
    items.some(
      (item) =>
        (item.type === 'join' && !item.not) ||
        item.type === 'ring' ||
        (item.type === 'work' && item.stitch.base === 'slip'),
    );
  const n = chain?.type === 'chain' ? (chain.amount.kind === 'one' ? chain.amount.value : 0) : 0;
  const made: Fabric = closes
    ? ringFabric(below.sites.length)
    : {
        ...below,
        turned: turn?.type === 'turn' ? !turn.not : below.turned,
        fastened: fastened || below.fastened,
        carried:
          n > 0 && n <= MOST_STITCHES && below.form !== 'chain'
            ? { chains: n, said: null, saidBase: null, saidChains: null }
            : below.carried,
      };
  const changed =
    closes ||
    made.turned !== below.turned ||
    made.fastened !== below.fastened ||
    made.carried !== below.carried;
  const of = tally(below);
  return {
    fabric: changed ? made : below,
    tally: of,
    repeats: null,
    facts: checkStated(row.counts, of, env, figures),
    openings: [],
    into: null,
    idle: true,
    foundation: 0,
    round,
    turned: false,
    settled: null,
  };
}

function carriedOf(items: readonly Item[], p: Progress): Carried | null {
  if (p.pending === 0) return null;
  const chain = items.findLast((item): item is Chain => item.type === 'chain');
  const counts = chain?.counts ?? null;
  return {
    chains: p.pending,
    said:
      counts === null
        ? null
        : counts.kind === 'nothing'
          ? 'nothing'
          : counts.kind === 'stitch'
            ? 'stitch'
            : null,
    saidBase: counts?.kind === 'stitch' ? (counts.stitch?.base ?? null) : null,
    saidChains: counts?.kind === 'stitch' && counts.chains !== null ? p.amount(counts.chains) : null,
  };
}

function finish(
  row: RowTree,
  items: readonly Item[],
  below: Fabric,
  p: Progress,
  chains: number,
  turnedBefore: boolean,
  wentBack: boolean,
): { worked: Worked; assumed: boolean | null } {
  if (p.edgeAssumed !== null) {
    const { chains: n, stitch, counts, from, to } = p.edgeAssumed;
    p.note('turning-chain-assumed', { from, to }, { chains: n, stitch, counts });
  }
  const lastWork = items.findLastIndex(isWork);
  if (!p.misfit && !p.exhausted && !even(p)) {
    const left = leftOver(p);
    const at = items[lastWork] ?? row;
    p.note('stitches-left-unworked', at, {
      left: left.stitches,
      spaces: left.spaces,
      have: p.stitchesAhead(0),
      unit: p.bare ? 'ch' : 'st',
    });
  }
  const after = items.slice(lastWork + 1);
  const join =
    after.find((item): item is Join => item.type === 'join' && !item.not) ??
    items.findLast((item): item is Join => item.type === 'join' && !item.not);
  const turn = after.findLast((item) => item.type === 'turn');
  const fastened = after.some((item) => item.type === 'fasten-off');
  // A chain after the last stitch of a flat row is the next row's; in a round it closes the round's last space.
  let carried: Carried | null = null;
  const chainAfterJoin =
    join !== undefined && after.indexOf(join) < after.findLastIndex((item) => item.type === 'chain');
  if (!p.round || chainAfterJoin) {
    carried = carriedOf(after, p);
    p.pending = 0;
  } else p.closeSpace();
  const closing = p.round && join === undefined ? slipClosing(items, lastWork) : null;
  if (closing && p.made[p.made.length - 1]?.base === 'slip') p.made.pop();
  const joined = join !== undefined || closing;
  const rest = p.leaves && !p.round && !p.misfit ? p.below.slice(p.pos) : null;
  const made: Fabric = fabric(p.made, {
    form: p.round ? (joined ? 'joined' : 'spiral') : 'flat',
    start:
      p.round && join !== undefined
        ? joinStart(p, join, p.made)
        : p.round
          ? Math.max(
              0,
              p.made.findIndex((site) => site.kind !== 'turning'),
            )
          : 0,
    turned: turn?.type === 'turn' ? !turn.not : null,
    carried,
    fastened,
    rest: rest?.some((site) => p.owed(site)) ? rest : wentBack ? null : below.rest,
  });
  const of = tally(made);
  const facts = [...p.facts, ...checkStated(row.counts, of, p.env, p.figures)];
  return {
    worked: {
      fabric: made,
      tally: of,
      repeats: p.repeats,
      facts,
      openings: p.openings,
      into: p.env.trace ? p.into : null,
      idle: false,
      foundation: chains,
      round: p.round,
      turned: turnedBefore,
      settled: null,
    },
    assumed: p.edgeAssumed?.counts ?? null,
  };
}

/** A round whose last words are "sl st in first st" joins by them. */
function slipClosing(items: readonly Item[], lastWork: number): boolean {
  const item = items[lastWork];
  if (item === undefined || item.type !== 'work' || item.stitch.base !== 'slip') return false;
  const place: Place | undefined = item.places[0];
  return (
    place !== undefined &&
    (place.kind === 'turning-chain' || place.kind === 'first' || place.kind === 'own-chain')
  );
}
