/**
 * Works one row over the fabric below, for one size, the way a hook does: how the work is turned, what the
 * turning chain is, the items, and how the row is closed. Pure: the same row on the same fabric gives the
 * same result. Knows nothing of row numbers or of other rows.
 */
import type { Fact, Span } from '../finding.ts';
import type { Chain, CountsAs, Item, Join, RowTree, Skip, Work } from '../notation/tree.ts';
import type { BaseStitch } from '../trade/stitches.ts';
import {
  alongFoundation,
  attach,
  BESIDES,
  begin,
  extend,
  isWork,
  ringPlace,
  saidOfEdge,
  skipsEdge,
  travel,
  travels,
} from './beginning.ts';
import type { EarlierRow, Env, Figures } from './env.ts';
import { type Carried, type Fabric, fabric, type Opening, ringFabric, type Tally, tally } from './fabric.ts';
import { withJoin } from './joining.ts';
import { MOST_STITCHES, NOWHERE, Progress } from './progress.ts';
import { checkHeight } from './rising.ts';
import { RING_SITE, type Site } from './site.ts';
import { stand } from './standing.ts';
import { checkStated } from './stated.ts';
import { type Step, steps } from './steps.ts';
import type { RowTrace } from './trace.ts';
import { evidenceOf, worksTurningChain } from './turning.ts';
import { sameAsNext } from './whole-rows.ts';
import { even, leftOver, one, run } from './work.ts';

/** What working a row came to. */
export interface Worked {
  readonly fabric: Fabric;
  readonly tally: Tally;
  /** Passes of the row's main repeat, one with an open end before one with a number; null when it has none. */
  readonly repeats: number | null;
  readonly facts: readonly Fact[];
  readonly openings: readonly Opening[];
  /** What everything made went into; null unless traced. */
  readonly trace: RowTrace | null;
  /** The row makes only the foundation, or does no work at all. */
  readonly idle: boolean;
  /** Chains of the foundation, when this row made it. */
  readonly foundation: number;
  /** Slip stitches that only brought the hook to where the row begins: they take yarn and make nothing. */
  readonly travelled: number;
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

/** Slip stitches before what waits belong to the short row, not to what is gone back for. */
function withoutSlips(rest: readonly Site[]): readonly Site[] {
  const first = rest.findIndex((site) => site.base !== 'slip');
  return first > 0 ? rest.slice(first) : rest;
}

function ordered(below: Fabric, turned: boolean): readonly Site[] {
  const { sites, start, form } = below;
  if (form === 'chain') return sites;
  if (form !== 'joined') return turned ? backwards(sites) : sites;
  const rotated = start === 0 ? sites : [...sites.slice(start), ...sites.slice(0, start)];
  if (!turned || rotated.length < 2) return rotated;
  return [rotated[0]!, ...rotated.slice(1).reverse()];
}

/** The earlier row that the row begins in, if it says so. */
function earlierRow(items: readonly Item[], rows: ReadonlyMap<number, EarlierRow>): EarlierRow | null {
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

/** Works `row` over `below` (null: nothing yet) in the env's size. Total: whatever the row says, it answers. */
export function workRow(row: RowTree, below: Fabric | null, env: Env, figures: Figures): Worked {
  if (below !== null && skipsWithChain(row.items)) {
    const under = attemptRow(row, below, env, figures, null, true);
    if (!isWrong(under.worked)) return under.worked;
  }
  const first = attemptRow(row, below, env, figures, null, false);
  if (!isWrong(first.worked)) return first.worked;
  if (first.assumed !== null) {
    // Nothing in the words decides about the turning chain; the row's own count, or what comes out even, may.
    const other = attemptRow(row, below, env, figures, !first.assumed, false);
    if (!isWrong(other.worked)) return { ...other.worked, settled: !first.assumed };
  }
  if (below !== null && skipsBehindChain(row.items)) {
    const other = attemptRow(row, below, env, figures, null, true);
    if (!isWrong(other.worked)) return other.worked;
  }
  const whole = row.counts.length > 0 ? overRest(below) : null;
  if (whole !== null) {
    // "Sc in each st across (20)" behind a short row: over what that left, too.
    const other = attemptRow(row, whole, env, figures, null, false);
    if (!isWrong(other.worked)) return other.worked;
  }
  const onward = row.counts.length > 0 ? sameAsNext(row) : null;
  if (onward !== null) {
    const { worked } = attemptRow(onward, below, env, figures, null, false);
    const at = placeSaidSame(row.items);
    const note: Fact = { code: 'same-taken-as-next', from: at.from, to: at.to, data: {} };
    if (!isWrong(worked)) return { ...worked, facts: [note, ...worked.facts] };
  }
  return first.worked;
}

/** The row below with what earlier short rows left beyond its end; null where nothing is left there. */
function overRest(below: Fabric | null): Fabric | null {
  if (below === null || below.rest === null || below.restAhead || below.form !== 'flat') return null;
  if (below.fastened || below.rejoined || below.turned === false) return null;
  return { ...below, sites: [...backwards(below.rest), ...below.sites], rest: null };
}

/** The first "in same st" behind other work. */
function placeSaidSame(items: readonly Item[]): Span {
  for (const item of items) {
    if (item.type === 'work' && item.places[0]?.kind === 'same') return item.places[0];
    if (item.type === 'repeat') return placeSaidSame(item.items);
  }
  return items[0] ?? { from: 0, to: 0 };
}

/**
 * "3 ch, miss 1 dc, 1 tr in each dc to end": a row that goes plainly to its end does not lose a stitch by the way;
 * the one missed is that under the chain. "Miss next dc" is another.
 */
function skipsWithChain(items: readonly Item[]): boolean {
  if (!skipsBehindChain(items)) return false;
  const [, skip, work, ...rest] = items.filter((item) => !BESIDES.has(item.type));
  if (skip?.type !== 'skip' || work?.type !== 'work' || rest.some(isWork)) return false;
  const from = skip.places[0];
  const to = work.places[0];
  const counted = from?.kind === 'next' && from.amount.from < from.amount.to;
  return counted && to?.kind === 'across' && to.every === 1 && to.stop.kind === 'end';
}

/** "3 ch, miss 1 dc": in some houses the stitch that the chain stands on. */
function skipsBehindChain(items: readonly Item[]): boolean {
  const [chain, skip] = items.filter((item) => !BESIDES.has(item.type));
  return chain?.type === 'chain' && skip?.type === 'skip' && isOneNext(skip);
}

function isOneNext(skip: Skip): boolean {
  const place = skip.places[0];
  if (skip.places.length !== 1 || skip.behind || place?.kind !== 'next') return false;
  return (
    place.amount.kind === 'one' &&
    place.amount.value === 1 &&
    place.nouns.every((noun) => noun.kind !== 'space')
  );
}

const WRONG: ReadonlySet<string> = new Set([
  'stated-count-wrong',
  'repeat-does-not-fit',
  'stitches-left-unworked',
  'place-does-not-exist',
]);

/** Does the row come out otherwise than its words say? */
export function isWrong(worked: Worked): boolean {
  return worked.facts.some((fact) => WRONG.has(fact.code));
}

function attemptRow(
  row: RowTree,
  fabricBelow: Fabric | null,
  env: Env,
  figures: Figures,
  forced: boolean | null,
  /** The one stitch skipped behind the turning chain is the one under it. */
  under: boolean,
): { worked: Worked; assumed: boolean | null } {
  const round = goesRound(row, fabricBelow, row.items);
  const { own, onward } = rejoining(row.items);
  const items = round ? withJoin(own) : own;
  const scratch = new Progress([], false, round, env, figures);
  let below = fabricBelow !== null && env.trace !== null ? env.trace.own(fabricBelow) : fabricBelow;
  let i = 0;
  let chains = 0;
  let said: CountsAs | null = null;
  const facts: Fact[] = [];

  if (below === null) {
    const begun = begin(items, scratch, row.label);
    below = begun.fabric !== null && env.trace !== null ? env.trace.own(begun.fabric) : begun.fabric;
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
          trace: null,
          idle: true,
          foundation: chains,
          travelled: 0,
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
    (below.rejoined ||
      items.slice(i).some((item, k, all) => item.type === 'attach' && !all.slice(0, k).some(isWork)));
  const earlier = env.earlier === null ? null : earlierRow(items.slice(i), env.earlier);
  const bare = earlier === null && (below.form === 'chain' || (below.ring && !usesRing));
  // "Do not turn. Ch 1, 3 sc in same st": the hook is at the last stitch made.
  const unturned = below.turned === false && !turned && below.form === 'flat' && startsSame(items.slice(i));
  const sites = earlier
    ? ordered(env.trace === null ? earlier.fabric : env.trace.own(earlier.fabric), earlier.turned)
    : goesBack
      ? withoutSlips(below.rest!)
      : usesRing
        ? (env.trace?.ringOf(below) ?? [RING_SITE])
        : ordered(below, turned || unturned);
  const p = new Progress(sites, bare, round, env, figures, (turned || unturned) && !bare && !goesBack);
  p.unturned = unturned;
  const otherSide = !bare && earlier === null && alongFoundation(items.slice(i));
  if (otherSide) p.beginOtherSide();
  p.forced = forced;
  // What a row further down has to offer is nobody's debt: others have worked over it.
  p.leaves = p.unowed = earlier !== null;
  p.tube = !bare && (below.form === 'joined' || below.form === 'spiral');
  p.rest = !round && !goesBack && !below.fastened ? below.rest : null;
  p.turningApart = p.meeting.backwards && worksTurningChain(items.slice(i));
  p.edgeSaid = said ?? (below.form === 'chain' ? saidOfEdge(items.slice(i)) : null);
  const evidence = evidenceOf(items.slice(i), env);
  p.edgeBase = evidence.base;
  p.prevailing = evidence.base ?? prevailing(below);
  p.evenTotal = evenTotal(row, items.slice(i), p);

  // What stands before the first stitch.
  let carried = below.carried;
  let stood = false;
  for (; i < items.length; i++) {
    const item = items[i]!;
    if (item.type === 'loops' && p.recording !== null) p.recording.loop = item.loop;
    if (BESIDES.has(item.type) || item.type === 'turn' || item.type === 'mark' || item.type === 'fasten-off')
      continue;
    if (item.type === 'join' && (item.not || !stood)) continue;
    if (item.type === 'layers') {
      p.fold();
      continue;
    }
    if (item.type === 'other-side' && otherSide) continue;
    if (item.type === 'attach') {
      attach(p, item);
      if (item.stitch !== null && item.stitch.base !== null && item.stitch.base !== 'slip') break;
      continue;
    }
    if (under && item.type === 'skip' && stood && isOneNext(item) && p.pos > 0) {
      p.note('skip-under-chain', item, {});
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
      if (env.parts !== null && n > 1) {
        // "Ch 3, sc in next 12 sts of first leg": it leads from one part to the other.
        p.bridge = Math.min(n, MOST_STITCHES);
        stood = true;
        continue;
      }
      const next = items.slice(i + 1).find((after) => !BESIDES.has(after.type) && after.type !== 'turn');
      const fromHook = next?.type === 'work' && next.places[0]?.kind === 'from-hook';
      if (round && leavesSpiral(below, item, next, p, evidence.base)) break;
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

  const rises = stood || carried !== null || bare || goesBack || usesRing || earlier !== null;
  if (!rises) checkHeight(p, below, items.slice(i), evidence);
  run(p, fromSpace(p, steps(tailOf(items, i))), 0, true);
  if (p.exhausted) p.note('too-many-stitches', row, { limit: p.made.length });
  return finish(row, items, below, p, chains, turned, goesBack, onward, usesRing);
}

/** "Sl st to corner, ch 3, (2 dc, ch 2, 3 dc) in corner sp": the space that the chain stands in, not the one after it. */
function fromSpace(p: Progress, list: readonly Step[]): readonly Step[] {
  const [first, ...rest] = list;
  if (p.last === NOWHERE || p.below[p.last]?.kind !== 'space') return list;
  if (first?.type !== 'work' && first?.type !== 'group') return list;
  const place = first.places[0];
  if (first.places.length !== 1 || place?.kind !== 'next' || place.bare !== true) return list;
  if (!p.isAt(p.last, place.nouns)) return list;
  const { loop, post, below, from, to } = place;
  return [{ ...first, places: [{ kind: 'same', loop, post, below, from, to }] }, ...rest];
}

/** Does the row begin in the place where the last one ended, with no yarn joined elsewhere? */
function startsSame(items: readonly Item[]): boolean {
  const first = items.find((item) => item.type === 'attach' || isWork(item));
  return (first?.type === 'work' || first?.type === 'group') && first.places[0]?.kind === 'same';
}

/** What the row states at its end, when a single "sc evenly across" that names no number is all its work. */
function evenTotal(row: RowTree, items: readonly Item[], p: Progress): number | null {
  const works = items.filter(isWork);
  const [only] = works;
  if (works.length !== 1 || only?.type !== 'work' || only.places[0]?.kind !== 'evenly') return null;
  const part = row.counts[0]?.parts[0];
  return part === undefined || (part.noun !== null && !['stitch', 'named'].includes(part.noun.kind))
    ? null
    : p.amount(part.amount);
}

interface Rejoining {
  readonly own: readonly Item[];
  /** Where the yarn is joined again once the row is done and cut, for the row to come; mostly nothing. */
  readonly onward: readonly Item[];
}

const rejoined = new WeakMap<readonly Item[], Rejoining>();

/** "Fasten off. Skip centre 14 sts, rejoin yarn to next st": what stands behind the row's own end. */
function rejoining(items: readonly Item[]): Rejoining {
  const known = rejoined.get(items);
  if (known !== undefined) return known;
  const cut = items.findIndex((item) => item.type === 'fasten-off');
  const after = cut < 0 ? [] : items.slice(cut + 1);
  const at = after.findIndex((item) => item.type === 'skip' || item.type === 'attach');
  const onward =
    at >= 0 &&
    items.slice(0, cut).some(isWork) &&
    after.some((item) => item.type === 'attach') &&
    !after.some(isWork)
      ? after.slice(at)
      : [];
  const made = { own: onward.length > 0 ? items.slice(0, cut + 1 + at) : items, onward };
  rejoined.set(items, made);
  return made;
}

/** What waits, from the place on where the yarn is joined to it again. */
function fromJoin(rest: readonly Site[], onward: readonly Item[], like: Progress): readonly Site[] {
  const p = new Progress(withoutSlips(rest), false, false, like.env, like.figures);
  p.trials = 1;
  for (const item of onward) {
    if (item.type === 'skip') one(p, item);
    else if (item.type === 'attach') attach(p, item);
  }
  return p.below.slice(p.pos);
}

/**
 * A spiral has no turning chain: "Ch 6, sk next 6 sts" at its start hangs from the last stitch, and the skip
 * begins with the first.
 */
function leavesSpiral(
  below: Fabric,
  chain: Chain,
  next: Item | undefined,
  p: Progress,
  base: BaseStitch | null,
): boolean {
  if (below.form !== 'spiral' || below.ring || chain.counts !== null || next?.type !== 'skip') return false;
  const place = next.places[0];
  if (place?.kind !== 'next') return false;
  const n = p.amount(chain.amount) ?? 0;
  return n > 1 && (base === 't1' || base === null || p.amount(place.amount) === n);
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
    trace: null,
    idle: true,
    foundation: 0,
    travelled: 0,
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

/** What waits for a row that goes back; a slip stitch that this row passed over lies before it. */
function waiting(below: Fabric, p: Progress): readonly Site[] | null {
  if (below.rest === null || p.passed.length === 0) return below.rest;
  return [...backwards(p.passed), ...below.rest];
}

function finish(
  row: RowTree,
  items: readonly Item[],
  below: Fabric,
  p: Progress,
  chains: number,
  turnedBefore: boolean,
  wentBack: boolean,
  onward: readonly Item[],
  inRing: boolean,
): { worked: Worked; assumed: boolean | null } {
  if (p.edgeAssumed !== null) {
    const { chains: n, stitch, counts, from, to } = p.edgeAssumed;
    p.note('turning-chain-assumed', { from, to }, { chains: n, stitch, counts });
  }
  const lastWork = items.findLastIndex(isWork);
  const turnsBack = items.slice(lastWork + 1).some((item) => item.type === 'turn' && !item.not);
  if (
    turnsBack &&
    row.counts.length > 0 &&
    !p.misfit &&
    !p.round &&
    checkStated(row.counts, tally(fabric(p.made.slice())), p.env, p.figures).length === 0
  ) {
    // A part row that says where it turns and counts right leaves nothing in doubt.
    p.leaves = true;
  }
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
  const joined = join !== undefined;
  const tookRest = p.rest === null && below.rest !== null && !p.round && !wentBack && !below.fastened;
  const rest = p.leaves && !p.unowed && !p.round && !p.misfit ? p.below.slice(p.pos) : null;
  // Of two short rows that go the same way, what the first left lies behind what the second leaves.
  const ahead = turnedBefore ? !below.restAhead : below.restAhead;
  const left = rest?.some((site) => p.owed(site)) === true;
  const behind = wentBack || tookRest ? null : waiting(below, p);
  const waits = !left ? behind : ahead && behind !== null ? [...rest!, ...behind] : rest;
  const sites = p.env.trace === null ? p.made : p.env.trace.copy(p.made);
  const made: Fabric = fabric(sites, {
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
    rest: onward.length > 0 && waits !== null ? fromJoin(waits, onward, p) : waits,
    restAhead: left || ahead,
    rejoined: onward.length > 0 && waits !== null,
  });
  const trace: RowTrace | null =
    p.recording === null
      ? null
      : {
          row,
          sites,
          makings: p.recording.makings,
          below: below.sites,
          belowForm: below.form,
          ring: !inRing ? null : below.sites[0]?.kind === 'ring' ? 0 : below.sites.length,
          round: p.round,
          turned: turnedBefore,
          joined: made.form === 'joined',
          start: made.start,
          closing: p.round ? (join?.stitch?.base ?? (joined ? 'slip' : null)) : null,
          stood: p.recording.stood,
          travelled: p.recording.travelled,
          passes: p.recording.passes,
          fastened,
        };
  const of = tally(made);
  const facts = [...p.facts, ...checkStated(row.counts, of, p.env, p.figures)];
  return {
    worked: {
      fabric: made,
      tally: of,
      repeats: p.repeats ?? p.stated,
      facts,
      openings: p.openings,
      trace,
      idle: false,
      foundation: chains,
      travelled: p.travelled,
      round: p.round,
      turned: turnedBefore,
      settled: null,
    },
    assumed: p.edgeAssumed?.counts ?? p.edgeLoose,
  };
}
