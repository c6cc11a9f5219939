/**
 * Working the items of a row one after another: stitches into places, groups, skips, repeats. Open ends
 * ("across", "to last 3 sts") are fitted in `fitting`; the start and the end of a row are `row`'s concern.
 * Every function answers whether the work could go on; outside trials it always can, and says what is wrong.
 */
import type {
  Again,
  Among,
  Amount,
  Group,
  Item,
  Marker,
  Place,
  Repeat,
  Skip,
  Stop,
  Work,
} from '../notation/tree.ts';
import { height } from '../trade/stitches.ts';
import { spotOf, takeSpot } from './corners.ts';
import { fitOpen } from './fitting.ts';
import {
  headOfGroup,
  missing,
  stopAhead,
  take,
  takeFirst,
  takeInUnit,
  takeLast,
  takeMarked,
  takeTurningChain,
} from './places.ts';
import { MOST_STITCHES, NOWHERE, type Progress } from './progress.ts';
import { overBridge, reachEach } from './reach.ts';
import type { Site } from './site.ts';
import { stand } from './standing.ts';
import { type Choice, climbs, repeatedSteps, type Step, steps, without } from './steps.ts';
import {
  alongOwnChain,
  evenly,
  foundation,
  fromHook,
  makeIn,
  ownChain,
  picot,
  standEdge,
} from './stitching.ts';
import { isLegOf } from './turning.ts';
import { definitionOf, expand } from './units.ts';

function openEnded(p: Progress, item: Step): item is Repeat | Again | Work | Group | Choice {
  if (item.type === 'choice') return true;
  if (item.type === 'repeat' || item.type === 'again') return item.times.kind === 'to';
  if (item.type === 'work' || item.type === 'group') {
    const place = item.places[0];
    if (place === undefined) return false;
    if (overBridge(p, place) > 0) return false;
    if (place.kind === 'across') return !(p.here !== null && p.hereAlways);
    return place.kind === 'of-unit' && (place.which === 'each' || place.stop !== null);
  }
  return false;
}

/** Works items from `i` on. `top` = these are the row's own items, so in a trial the row must come out even. */
export function run(p: Progress, items: readonly Step[], i: number, top: boolean): boolean {
  for (let at = i; at < items.length; at++) {
    if (p.exhausted) return false;
    const item = items[at]!;
    if (item.type === 'repeat' && top && p.depth === 0) p.main ??= item.from;
    if (unsaid(item) && inAll(p, item, items, at, top)) return true;
    if (openEnded(p, item)) {
      const rest = items.slice(at + 1);
      return fitOpen(p, item, rest, () => run(p, items, at + 1, top), top);
    }
    if (!one(p, item)) return false;
  }
  return !top || p.trials === 0 || even(p);
}

function unsaid(item: Step): item is Repeat {
  return item.type === 'repeat' && item.times.kind === 'times' && item.times.unsaid === true;
}

/**
 * "rep from * 6 times" after one working is 7 in all. Some mean 6: where 7 do not come out and 6 do, 6 are
 * worked, and that is told. Answers whether the row has been worked so, to its end.
 */
function inAll(p: Progress, item: Repeat, items: readonly Step[], at: number, top: boolean): boolean {
  if (!top || item.times.kind !== 'times') return false;
  const start = p.moment();
  const { leaves } = p;
  const attempt = (as: Repeat): boolean => {
    p.trials += 1;
    const ok = one(p, as) && run(p, items, at + 1, true);
    p.trials -= 1;
    if (!ok) {
      p.restore(start);
      p.leaves = leaves;
    }
    return ok;
  };
  if (attempt(item)) return true;
  const { kind, amount, from, to } = item.times;
  if (!attempt({ ...item, times: { kind, amount, more: false, from, to } })) return false;
  p.note('repeat-in-all-assumed', item.times, { times: p.amount(amount) ?? 0 });
  return true;
}

/** Is everything below accounted for? */
export function even(p: Progress): boolean {
  if (p.leaves) return true;
  const left = leftOver(p);
  return left.stitches === 0 && left.spaces === 0;
}

/** What of the row below nobody has used or skipped. */
export function leftOver(p: Progress): { stitches: number; spaces: number } {
  let from = p.inner > 0 ? p.pos + 1 : p.pos;
  for (let covered = p.covered; covered > 0 && from < p.below.length; from++) {
    if (p.owed(p.below[from]!)) covered -= 1;
  }
  let stitches = p.stitchesAhead(from);
  // Past the last gap there is the stitch, or the group, that closes it.
  if (p.gap >= 0 && !p.below.slice(p.gap + 1).some((site) => p.owed(site) && !site.more)) stitches = 0;
  let spaces = p.usedSpace ? p.spacesAhead(from) : 0;
  // The chain that closes a round lies over as many stitches as each chain before it, said again or not.
  // A turning chain whose own space is used has been worked into.
  const before = p.below[from - 1];
  if (stitches === 1 && before?.kind === 'space' && before.turning && p.below[from]?.turning) stitches = 0;
  if (p.onJoin && stitches > p.skips) stitches -= 1;
  const closing = p.pending > 0 || p.made[p.made.length - 1]?.kind === 'space';
  const since = p.made.slice(p.skipAt).some((site) => site.kind === 'stitch');
  if (p.round && closing && since && stitches > 0 && stitches === p.skips) stitches = 0;
  // In a round that works into spaces, the stitches after the last one lie between it and the first.
  if (p.round && p.intoSpace && p.passes && spaces === 0) stitches = 0;
  // "*Sl st in next sc, ch 3; rep from * around": what lies between two of them lies behind the last one too.
  if (p.round && stitches <= p.passedUnsaid) stitches = 0;
  if ((stitches > 0 || spaces > 0) && headOfGroup(p, from)) stitches = spaces = 0;
  return { stitches, spaces };
}

/** Works one item that has no open end. */
export function one(p: Progress, item: Step): boolean {
  if (!p.step()) return false;
  p.words = item;
  switch (item.type) {
    case 'chain': {
      const n = p.amount(item.amount);
      if (n === null) return true;
      if (p.pending + n > MOST_STITCHES) {
        p.problem('too-many-stitches', item, { limit: MOST_STITCHES });
        return false;
      }
      p.pending += n;
      p.along = NOWHERE;
      if (p.env.parts !== null) p.bridge = n;
      return true;
    }
    case 'work':
      return work(p, item);
    case 'group':
      return group(p, item);
    case 'skip':
      return skip(p, item);
    case 'repeat':
    case 'again':
      return passes(p, item);
    case 'unworked': {
      p.leaves = true;
      const n = item.amount === null ? null : p.amount(item.amount);
      if (item.confines) {
        if (n !== null) p.confine(n);
        return true;
      }
      const left = leftOver(p).stitches;
      if (n !== null && n !== left && item.noun.kind !== 'space') {
        return p.problem('stitches-left-unworked', item, { left, said: n, have: p.stitchesAhead(0) });
      }
      return true;
    }
    case 'marker':
      if (item.action === 'place' || item.action === 'move') markAt(p, item);
      return true;
    case 'loops':
      if (p.recording !== null) p.recording.loop = item.loop;
      return true;
    case 'unread':
      p.unreadAt = p.pos;
      return true;
    case 'other-side':
      p.layOtherSide();
      return true;
    case 'layers':
      p.fold();
      return true;
    case 'join':
      if (item.not) return true;
      if (item.place?.kind === 'turning-chain') checkOwnChain(p, item.place);
      if (item.stitch !== null && item.stitch.base !== 'slip' && item.stitch.base !== null) {
        // The closing stitch stands for the rest of the last chain-space, or for all of it.
        if (p.pending > 0) p.pending += height(item.stitch.base);
        else if (item.place?.kind === 'turning-chain') p.pending = height(item.stitch.base) + 1;
        // The joining slip stitch stands on the round's first stitch.
        const { place } = item;
        if (place?.kind === 'same' || (place?.kind === 'first' && place.noun.kind === 'chain'))
          p.onJoin = true;
      }
      p.closeSpace();
      return true;
    case 'attach': {
      if (item.stitch === null || item.stitch.base === 'slip' || item.stitch.base === null) return true;
      const place: Place = item.place ?? {
        kind: 'same',
        from: item.from,
        to: item.to,
        loop: null,
        post: null,
        below: 0,
      };
      return work(p, {
        type: 'work',
        from: item.from,
        to: item.to,
        stitch: { ...item.stitch, form: 'plain' },
        amount: { kind: 'one', value: 1, from: item.from, to: item.to },
        places: [place],
        over: null,
      });
    }
    default:
      return true;
  }
}

/** Marks the stitch just made, one of those just made, or the ones that are named by their number in the row. */
function markAt(p: Progress, item: Marker): void {
  const place = item.place;
  const named = place?.kind === 'nth' ? [place.nth, ...(item.also ?? [])] : [];
  const made: number[] = [];
  p.made.forEach((site, i) => {
    if (site.kind === 'stitch') made.push(i);
  });
  if (item.among !== undefined) {
    p.mark(atAmong(p, made, item.among));
    return;
  }
  let marked = false;
  const noun = place?.kind === 'next' || place?.kind === 'across' ? place.nouns[0] : undefined;
  const space = noun?.kind === 'space' ? p.made.findLastIndex((site) => site.kind === 'space') : -1;
  if (space >= 0) {
    p.mark(space);
    marked = true;
  }
  for (const nth of named) {
    const at = made[(p.amount(nth) ?? 0) - 1];
    if (at === undefined) continue;
    p.mark(at);
    marked = true;
  }
  if (!marked) p.mark();
}

/** Index of the stitch that is named among those just made; of an even number, the first of the middle two. */
function atAmong(p: Progress, made: readonly number[], { nth, of }: Among): number | undefined {
  let several = 1;
  while (several < made.length && p.made[made.at(-several)!]!.more) several += 1;
  const group = made.slice(-Math.max(1, of === null ? several : (p.amount(of) ?? several)));
  if (nth === 'last') return group.at(-1);
  if (nth === 'centre') return group[(group.length - 1) >> 1];
  return group[(p.amount(nth) ?? group.length) - 1] ?? group.at(-1);
}

/** "join in 5th ch of beg ch-3": the round's own beginning chain has so many chains and no more. */
function checkOwnChain(p: Progress, place: Extract<Place, { kind: 'turning-chain' }>): void {
  const nth = place.nth === null ? null : p.amount(place.nth);
  const stood = p.made.find((site) => site.turning && site.kind !== 'space');
  const own = stood ?? (p.stood === null ? undefined : { chains: p.stood });
  // "Ch 4, 15 dc in 4th ch from hook; join in 4th ch of ch-4": counted from the chain that all of it went into.
  const ring = p.firstUsed > 0 ? 1 : 0;
  if (nth === null || own === undefined || own.chains === 0 || nth <= own.chains + ring) return;
  const left = p.stitchesAhead();
  p.note('place-does-not-exist', place, { noun: 'ch', wanted: nth, found: own.chains, left, have: left });
}

/** A repeat with a number of passes. */
function passes(p: Progress, item: Repeat | Again): boolean {
  if (item.times.kind !== 'times') return true;
  const said = p.amount(item.times.amount);
  if (said === null) return true;
  const times = said + (item.times.more && item.type === 'repeat' ? 1 : 0);
  const body = repeatedSteps(item.items);
  const last = item.type === 'repeat' ? item.last : null;
  const starts: number[] = [];
  for (let k = 0; k < times; k++) {
    if (p.exhausted) return false;
    starts.push(p.made.length);
    const cut = last !== null && k === times - 1;
    const before = p.facts.length;
    const ok = cut ? lastPass(p, item as Repeat, body) : run(p, body, 0, false);
    if (!ok) return false;
    if (p.trials === 0 && toldOnce(p, before, { pass: k + 1, passes: times })) {
      if (p.main === item.from) p.stated = k;
      p.misfit = true;
      return true;
    }
  }
  if (times > 0) p.recording?.passes.push({ starts, end: p.made.length });
  if (p.main === item.from) p.stated = times;
  return true;
}

/**
 * Where the places ran out in one pass of several, that is told once, at the words that found none, and not
 * for all words after them. Answers whether they did.
 */
function toldOnce(p: Progress, before: number, data: { pass: number; passes: number }): boolean {
  const at = p.facts.findIndex((fact, i) => i >= before && fact.code === 'place-does-not-exist');
  if (at < 0) return false;
  const fact = p.facts[at]!;
  p.facts.length = at;
  p.facts.push({ ...fact, data: { ...fact.data, ...data } });
  return true;
}

/** The last pass of a repeat, cut, changed or short as the text says. */
export function lastPass(p: Progress, item: Repeat, body: readonly Step[]): boolean {
  const last = item.last;
  if (last === null) return run(p, body, 0, false);
  if (last.kind === 'stop-at') return run(p, steps(item.items.slice(0, last.index)), 0, false);
  if (last.kind === 'omitting') return run(p, without(body, last.items), 0, false);
  return run(p, body, 0, false) && run(p, steps(last.items), 0, false);
}

/** "FPdc around next dc 2 rows below, sk next sc": the stitch skipped is the one that the long stitch covers. */
function coverSaid(p: Progress, item: Skip): void {
  const place = item.places[0];
  if (p.covered === 0 || place?.kind !== 'next') return;
  p.covered = Math.max(0, p.covered - (p.amount(place.amount) ?? 0));
}

function skip(p: Progress, item: Skip): boolean {
  if (item.behind) {
    if (p.covered > 0) p.uncover();
    return true;
  }
  const skipped: number[] = [];
  coverSaid(p, item);
  for (const place of item.places) {
    switch (place.kind) {
      case 'next':
      case 'nth': {
        const nouns = place.kind === 'next' ? place.nouns : [place.noun];
        const n = p.amount(place.kind === 'next' ? place.amount : place.nth);
        if (n === null) break;
        for (let k = 0; k < n; k++) {
          if (!p.step()) return false;
          const i = take(p, nouns, place);
          if (i === null) {
            if (p.trials > 0) return false;
            missing(p, place, nouns[0], n, k);
            break;
          }
          skipped.push(i);
        }
        break;
      }
      case 'first': {
        const n = p.amount(place.amount);
        if (n === null) break;
        for (let k = 0; k < n; k++) {
          const i = takeFirst(p, place.noun, k, place);
          if (i === null) return p.trials === 0;
        }
        break;
      }
      case 'last': {
        const n = p.amount(place.amount);
        if (n === null) break;
        if (takeLast(p, place.noun, n, place) === null) return p.trials === 0;
        break;
      }
      case 'turning-chain':
        if (takeTurningChain(p, place) === null) return p.trials === 0;
        break;
      case 'of-unit':
        if (takeInUnit(p, place, place) === null) return p.trials === 0;
        break;
      case 'marked':
        if (takeMarked(p, place) === null) return p.trials === 0;
        break;
      case 'across':
        if (place.stop.kind === 'before-next') skipped.push(...skipTo(p, place.stop));
        else p.leaves = true;
        break;
      default:
        break;
    }
  }
  p.skipped = skipped;
  p.skips = skipped.length;
  p.skipAt = p.made.length;
  const end = skipped[skipped.length - 1];
  p.intoSpace = end !== undefined && p.below[end]?.kind === 'space' && p.inner === 0;
  const owed = skipped.filter((i) => p.owed(p.below[i]!)).map((i) => p.below[i]!);
  if (owed.every((site) => site.base === 'slip') && p.made.every((site) => site.turning)) p.passed = owed;
  if (owed.length >= 4) p.waiting = [...p.waiting, ...owed];
  return true;
}

/**
 * "Sk all sts to next ch-1 sp": what lies before that place. With chains just made, one that the hook is at already
 * is passed over with the rest: chains lead somewhere.
 */
function skipTo(p: Progress, stop: Extract<Stop, { kind: 'before-next' }>): readonly number[] {
  const from = p.pending > 0 && p.isAt(p.pos, [stop.noun]) ? p.pos + 1 : p.pos;
  const to = stopAhead(p, stop, from);
  const passed: number[] = [];
  for (let i = p.pos; i < to; i++) passed.push(i);
  if (to > p.pos) p.advance(to - 1);
  return passed;
}

/** A group made in one place, once for each place. */
function group(p: Progress, item: Group): boolean {
  const place = item.places[0]!;
  const k = place.kind === 'from-hook' ? p.amount(place.nth) : null;
  if (k !== null && p.bare && p.made.length === 0 && p.pos === 0) {
    // A short stitch beside tall ones in the first place does not make the skipped chains an edge stitch.
    const first = item.items.find((inner) => inner.type === 'work');
    const base = first?.type === 'work' ? first.stitch.base : null;
    const spaced = item.items.some((inner) => inner.type === 'chain');
    const index = standEdge(p, k, base, place, item, false, false, spaced);
    return index === null ? p.trials === 0 : groupIn(p, item, index);
  }
  return reachEach(p, place, 1, (index) => groupIn(p, item, index));
}

/**
 * A row may begin inside a group or a definition: "(ch 3, 2 dc, ch 2, 3 dc) in corner sp". The chain is then
 * the row's turning chain. Answers how many of the items that takes.
 */
export function beginsHere(p: Progress, items: readonly Step[], index: number): number {
  const first = items[0];
  if (first?.type !== 'chain' || p.made.length > 0 || p.pending > 0) return 0;
  const n = p.amount(first.amount) ?? 0;
  if (n < 1 || n > MOST_STITCHES) return 0;
  p.last = index;
  const after = items
    .slice(1)
    .flatMap((item): readonly Item[] => (item.type === 'choice' ? item.works : [item]));
  const { from, to } = first;
  const leg = first.counts === null && isLegOf(after);
  stand(p, n, leg ? { kind: 'nothing', throughout: false, from, to } : first.counts, null, after, first);
  p.last = index;
  return 1;
}

/** Works a group into one place and makes a unit of it. */
export function groupIn(p: Progress, item: Group, index: number): boolean {
  const here = p.here;
  const from = p.made.length;
  const open = p.pending;
  p.here = index;
  const inner = steps(item.items);
  const slips = p.made.length === 0 && p.pending === 0 && climbs(item) ? 1 : 0;
  p.travelled += slips;
  const begun = slips + beginsHere(p, inner.slice(slips), index);
  const ok = run(p, inner, begun, false);
  p.here = here;
  if (!ok) return false;
  p.last = index;
  const start = open > 0 && p.made.length > from ? from + 1 : from;
  if (p.made.length - start >= 2) p.gather('group', start);
  return true;
}

/** "sc2tog over next 4 sts" is two of them; one where the words name their number apart. */
function decreasesOver(p: Progress, item: Work): number {
  const { together, form } = item.stitch;
  const place = item.places[0];
  if (item.over === null || form !== 'plain' || together < 2 || place?.kind !== 'next') return 1;
  if (place.amount.kind === 'one' && place.amount.value > 1) return 1;
  const n = p.amount(item.over) ?? 0;
  return n % together === 0 ? Math.max(1, n / together) : 1;
}

/** How many sites one making of the stitch takes. */
function span(p: Progress, item: Work, place: Place): number {
  const ref = item.stitch;
  if (item.over !== null) {
    const n = Math.max(1, p.amount(item.over) ?? 1);
    return ref.form === 'plain' && ref.together > 1 && n % ref.together === 0 ? ref.together : n;
  }
  if (ref.form === 'dec' && ref.together === 1) return 2;
  if (ref.form === 'crossed') return 2;
  if (ref.together === 1) return 1;
  if (place.kind === 'next' && !place.implied) {
    const n = p.amount(place.amount) ?? 1;
    return n >= ref.together && n % ref.together === 0 ? ref.together : n;
  }
  if (place.kind === 'last' || place.kind === 'first') {
    const n = p.amount(place.amount) ?? 1;
    return n >= ref.together ? ref.together : 1;
  }
  if (place.kind === 'next' || place.kind === 'across') return ref.together;
  return 1;
}

function work(p: Progress, item: Work): boolean {
  const per = p.amount(item.amount);
  if (per === null || per === 0) return true;
  if (per > MOST_STITCHES) {
    p.problem('too-many-stitches', item, { limit: MOST_STITCHES });
    return false;
  }
  if (item.layers) foldFor(p, item);
  if (item.legs) return onLegs(p, item);
  const place = item.places[0]!;
  const ref = item.stitch;
  if (ref.base !== null && ref.base !== 'slip' && ref.form !== 'foundation') p.prevailing = ref.base;
  if (ref.form === 'surface') return true;
  if (ref.form === 'picot' && definitionOf(p, ref) === null) return picot(p, ref.parts ?? 3);
  if (ref.form === 'foundation') return foundation(p, item, per);
  if (place.kind === 'own-chain')
    return ownChain(p, item, per, place.nth === null ? p.pending : (p.amount(place.nth) ?? 1));
  if (place.kind === 'from-hook') return fromHook(p, item, per, p.amount(place.nth) ?? 1);
  if (place.kind === 'nth' && place.noun.kind === 'chain' && p.bare && p.pos === 0 && p.made.length === 0) {
    return fromHook(p, item, per, p.amount(place.nth) ?? 1);
  }
  const stem = alongOwnChain(p, item, per, place);
  if (stem !== null) return stem;
  p.along = NOWHERE;
  if (place.kind === 'evenly') return evenly(p, item, per, place);
  // The slip stitch that finishes a spiral goes into the round's own first stitch.
  const finishing =
    ref.base === 'slip' &&
    ref.form === 'plain' &&
    p.round &&
    place.kind === 'next' &&
    p.made.length > 0 &&
    p.here === null;
  if (finishing && p.seek(place.nouns) < 0) return true;

  const defined = definitionOf(p, ref);
  if (defined !== null && (defined.kind === 'free' || ref.form === 'picot')) {
    // It stands on the stitch before it and uses nothing of the row below, wherever the words put it.
    for (let k = 0; k < per; k++) {
      if (defined.kind === 'words') picot(p, ref.parts ?? 3);
      else if (!expand(p, ref, defined, p.last, item)) return false;
    }
    return true;
  }
  if (defined !== null && defined.kind === 'running') {
    const times = per * (place.kind === 'next' ? (place.implied ? (p.amount(place.amount) ?? 1) : 1) : 1);
    for (let k = 0; k < times; k++) if (!expand(p, ref, defined, null, item)) return false;
    return true;
  }
  const crowded = p.here !== null && place.kind === 'next' && place.implied;
  const copies = per * decreasesOver(p, item) * (crowded ? (p.amount(place.amount) ?? 1) : 1);
  const each = crowded ? 1 : span(p, item, place);
  if (item.over !== null && !item.passing) checkTogether(p, item, item.over);
  const collapse = each > 1 && place.kind === 'next' && !place.implied;
  const target: Place = collapse
    ? {
        ...place,
        amount: {
          ...place.amount,
          kind: 'one',
          value: Math.max(1, Math.floor((p.amount(place.amount) ?? 1) / each)),
        },
      }
    : place;
  if (each > 1 && copies > 1 && place.kind === 'next') {
    // "2 sc2tog": each takes stitches of its own.
    for (let k = 0; k < copies; k++)
      if (!reachEach(p, target, each, (index) => makeIn(p, item, target, index, 1))) return false;
    return true;
  }
  return reachEach(p, target, each, (index) => makeIn(p, item, target, index, copies));
}

/** "sc3tog over next 2 sts": the stitch and the words for its place must name the same number. */
function checkTogether(p: Progress, item: Work, over: Amount): void {
  const { together, form } = item.stitch;
  const said = p.amount(over);
  if (form !== 'plain' || together < 2 || said === null || said % together === 0) return;
  p.note('together-differs', item, { together, said });
}

/** "around, through both layers" joins two pieces; only what goes across folds the tube. */
function foldFor(p: Progress, item: Work): void {
  const place = item.places[0];
  const around = place?.kind === 'across' && place.stop.kind === 'end' && place.stop.word === 'around';
  if (!around) p.fold();
}

/** One stitch over several places, each named: made where its last leg goes. */
function onLegs(p: Progress, item: Work): boolean {
  const head = item.places.slice(0, -1);
  const taken: Site[] = [];
  const reached = (index: number): boolean => {
    const site = p.below[index];
    if (site !== undefined) taken.push(site);
    return true;
  };
  for (const place of head) if (!reachEach(p, place, 1, reached)) return false;
  const last = item.places[item.places.length - 1]!;
  const legs = last.kind === 'next' ? (p.amount(last.amount) ?? 1) : 1;
  const one: Place =
    last.kind === 'next' ? { ...last, amount: { ...last.amount, kind: 'one', value: 1 } } : last;
  return reachEach(p, one, legs, (index) => {
    reached(index);
    p.recording?.over(taken);
    return makeIn(p, item, last, index, 1);
  });
}

/** One pass of work with an open end: into the next place that its nouns ask for. */
export function workOnce(p: Progress, item: Work | Group | Choice): boolean {
  if (item.type === 'choice') {
    let next: Work | Group | null = null;
    let at = Number.POSITIVE_INFINITY;
    for (const work of item.works) {
      const place = work.places[0]!;
      const spot = spotOf(p, place);
      if (spot !== null) {
        // The corner is a stitch like its neighbours: what is said of it alone goes before.
        if (spot >= 0 && spot <= at) {
          at = spot;
          next = work;
        }
        continue;
      }
      if (place.kind !== 'across') continue;
      // A space begun chain by chain is gone on with; nothing else can be met inside it.
      const chainwise = place.nouns.some((noun) => noun.kind === 'chain');
      const i = p.seek(place.nouns, p.inner > 0 && !chainwise ? p.pos + 1 : p.pos);
      if (i >= 0 && i < at) {
        at = i;
        next = work;
      }
    }
    if (next === null) return false;
    if (spotOf(p, next.places[0]!) === null) return workOnce(p, next);
    takeSpot(p, at);
    if (next.type === 'group') return groupIn(p, next, at);
    const made = p.amount(next.amount);
    return made !== null && made > 0 && makeIn(p, next, next.places[0]!, at, made);
  }
  if (item.type === 'work' && item.layers) foldFor(p, item);
  const place = item.places[0]!;
  if (item.type === 'group') return reachEach(p, place, 1, (index) => groupIn(p, item, index));
  const per = p.amount(item.amount);
  if (per === null || per === 0) return false;
  const ref = item.stitch;
  if (ref.base !== null && ref.base !== 'slip') p.prevailing = ref.base;
  const defined = definitionOf(p, ref);
  if (defined !== null && defined.kind === 'running') return expand(p, ref, defined, null, item);
  return reachEach(p, place, span(p, item, place), (index) => makeIn(p, item, place, index, per));
}
