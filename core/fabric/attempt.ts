/**
 * Works one row over the fabric below, in one reading of its doubtful words, the way a hook does: how the work is
 * turned, what the turning chain is, the items, and how the row is closed. Which reading is right is not its concern.
 */
import type { Fact } from '../finding.ts';
import type { Chain, CountsAs, Item, RowTree, Skip, Work } from '../notation/tree.ts';
import type { BaseStitch } from '../trade/stitches.ts';
import { earlierRow, goesRound, ordered, prevailing, startsSame, withoutSlips } from './ahead.ts';
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
import type { Env, Figures } from './env.ts';
import { type Fabric, fabric, tally } from './fabric.ts';
import { idle } from './idle.ts';
import { withJoin } from './joining.ts';
import { MOST_STITCHES, NOWHERE, Progress } from './progress.ts';
import { checkHeight } from './rising.ts';
import { finish, rejoining } from './row-end.ts';
import { RING_SITE } from './site.ts';
import { isTunisian, stand, standLoop } from './standing.ts';
import { checkStated } from './stated.ts';
import { type Step, steps } from './steps.ts';
import { evidenceOf, worksTurningChain } from './turning.ts';
import { one, run } from './work.ts';
import type { Worked } from './worked.ts';

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

interface Beginning {
  readonly below: Fabric;
  /** The item to begin with; those before it made the foundation. */
  readonly from: number;
  /** The row goes along the other side of the foundation. */
  readonly otherSide: boolean;
  readonly under: boolean;
  /** The stitch that the row is worked in, as far as its words tell. */
  readonly base: BaseStitch | null;
}

/**
 * What stands before the first stitch: yarn joined, a turning chain, slip stitches to where the row begins. `next` is
 * the item that the row itself begins with, `stood` whether anything rose to its height.
 */
function beforeFirst(
  p: Progress,
  row: RowTree,
  items: readonly Item[],
  { below, from, otherSide, under, base }: Beginning,
): { next: number; stood: boolean } {
  const { env, round } = p;
  let carried = below.carried;
  let i = from;
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
      // "Ch 1, turn, sl st in first 4 sts, ch 1, sc …": the row begins with the chain behind them.
      const after = items.slice(i + 1).find((next) => !BESIDES.has(next.type) && next.type !== 'turn');
      if (after?.type === 'chain') stood = false;
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
      const hook = next?.type === 'work' ? next.places[0] : undefined;
      // "Ch 1, sc in 3rd ch from hook": the row has made no such chain, which is told where that is worked.
      const fromHook = hook?.kind === 'from-hook' && (p.amount(hook.nth) ?? 0) <= n + 1;
      if (round && leavesSpiral(below, item, next, p, base)) break;
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
  return { next: i, stood: stood || carried !== null };
}

/** Works the row in one reading of what is in doubt; `assumed` is what was taken of its turning chain where nothing says so. */
export function attemptRow(
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
  const tunisian = isTunisian(items.slice(i));
  const turned =
    lead?.type === 'turn' && items.indexOf(lead) >= i
      ? !lead.not
      : !tunisian && (below.turned ?? (!round && below.form === 'flat'));
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
  p.carries = !movesMarkers(items);
  const otherSide = !bare && earlier === null && alongFoundation(items.slice(i));
  if (otherSide) p.beginOtherSide();
  p.forced = forced;
  // What a row further down has to offer is nobody's debt: others have worked over it.
  p.leaves = p.unowed = earlier !== null;
  p.tube = !bare && (below.form === 'joined' || below.form === 'spiral');
  // What a short row left lies ahead of the row that comes back to it, not of the one that goes back from it.
  const ahead = turned ? !below.restAhead : below.restAhead;
  const closes = !round || below.form === 'flat';
  p.rest = closes && !goesBack && !below.fastened && ahead ? below.rest : null;
  p.turningApart = p.meeting.backwards && worksTurningChain(items.slice(i));
  p.edgeSaid = said ?? (below.form === 'chain' ? saidOfEdge(items.slice(i)) : null);
  const evidence = evidenceOf(items.slice(i), env);
  p.edgeBase = evidence.base;
  p.tunisian = tunisian;
  p.edgeJoined = round && evidence.joinsChain;
  p.prevailing = evidence.base ?? prevailing(below);
  p.evenTotal = evenTotal(row, items.slice(i), p);

  const { next, stood } = beforeFirst(p, row, items, {
    below,
    from: i,
    otherSide,
    under,
    base: evidence.base,
  });
  i = next;
  if (tunisian && !stood) i = standLoop(p, items, i);
  const rises = stood || tunisian || bare || goesBack || usesRing || earlier !== null;
  if (!rises) checkHeight(p, below, items.slice(i), evidence);
  run(p, fromSpace(p, steps(tailOf(items, i))), 0, true);
  if (p.exhausted) p.note('too-many-stitches', row, { limit: p.made.length });
  return finish(row, items, below, p, chains, turned, goesBack, onward, usesRing);
}

/** Whether the row says where a marker goes. */
const movesMarkers = (items: readonly Item[]): boolean =>
  items.some((item) =>
    item.type === 'marker' ? item.action !== 'carry' : 'items' in item && movesMarkers(item.items),
  );

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

/** "Skip 1 st", and nothing more than that. */
export function isOneNext(skip: Skip): boolean {
  const place = skip.places[0];
  if (skip.places.length !== 1 || skip.behind || place?.kind !== 'next') return false;
  return (
    place.amount.kind === 'one' &&
    place.amount.value === 1 &&
    place.nouns.every((noun) => noun.kind !== 'space')
  );
}
