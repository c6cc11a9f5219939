/**
 * The end of a row: what is left of the row below, how the row is closed, turned or cut, and the fabric that the next
 * one finds. Works no stitch.
 */
import type { Chain, Item, Join, RowTree } from '../notation/tree.ts';
import { backwards, withoutSlips } from './ahead.ts';
import { attach, isWork } from './beginning.ts';
import { type Carried, type Fabric, fabric, tally } from './fabric.ts';
import { Progress } from './progress.ts';
import type { Site } from './site.ts';
import { checkStated } from './stated.ts';
import type { RowTrace } from './trace.ts';
import { even, leftOver, one } from './work.ts';
import type { Worked } from './worked.ts';

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

interface Rejoining {
  readonly own: readonly Item[];
  /** Where the yarn is joined again once the row is done and cut, for the row to come; mostly nothing. */
  readonly onward: readonly Item[];
}

const rejoined = new WeakMap<readonly Item[], Rejoining>();

/** "Fasten off. Skip centre 14 sts, rejoin yarn to next st": what stands behind the row's own end. */
export function rejoining(items: readonly Item[]): Rejoining {
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

/** Does the work go into every space up to the end, and into nothing else? */
function intoEachSpace(item: Item | undefined): boolean {
  if ((item?.type !== 'work' && item?.type !== 'group') || item.places.length !== 1) return false;
  const place = item.places[0]!;
  if (place.kind !== 'across' || place.every > 1 || place.stop.kind !== 'end') return false;
  return place.nouns.every(({ kind }) => kind === 'space');
}

/** Closes the row: what it left, how it joins, turns or ends, and what the next row finds. */
export function finish(
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
  const over = leftOver(p);
  // "3 sc in each ch-3 sp across" says where all of it goes: the row's first stitch is passed over as well as its
  // last. Where a chain stands for the first one, the last is owed.
  const first = p.made[0];
  const stands = first?.kind === 'stitch' && first.turning;
  const closes = over.stitches === 1 && over.spaces === 0 && !stands && intoEachSpace(items[lastWork]);
  // "Sl st to ch-3 sp, (ch 3, 2 dc, ch 3, 3 dc) in same sp, turn": lace leaves at its end what it passed at its beginning.
  const passed = p.below.slice(0, Math.max(0, p.last)).filter((site) => p.owed(site)).length;
  const mirrored =
    !p.round &&
    p.travelled > 0 &&
    over.spaces === 0 &&
    over.stitches <= passed &&
    p.below[p.last]?.kind === 'space';
  if (!p.misfit && !p.exhausted && !even(p) && !closes && !mirrored) {
    const at = items[lastWork] ?? row;
    p.note('stitches-left-unworked', at, {
      left: over.stitches,
      spaces: over.spaces,
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
  // Of two short rows that go the same way, what the first left lies behind what the second leaves.
  const ahead = turnedBefore ? !below.restAhead : below.restAhead;
  const tookRest =
    ahead &&
    p.rest === null &&
    below.rest !== null &&
    (!p.round || below.form === 'flat') &&
    !wentBack &&
    !below.fastened;
  const rest =
    p.leaves && !p.unowed && !p.round && !p.misfit ? [...p.below.slice(p.pos), ...p.outside] : null;
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
    turned: turn?.type === 'turn' ? !turn.not : p.tunisian ? false : null,
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
          otherSide: p.recording.otherSide,
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
