/**
 * Open ends: "across", "around", "to last 3 sts". The number of passes is the one for which the repeat and
 * everything after it use exactly what is left; it is found by working the passes, then trying what follows
 * from each moment, the most passes first. When none comes out even, the finding tells by how much.
 */
import type { Fact } from '../finding.ts';
import type { Again, Group, Item, Noun, Place, Repeat, Skip, Stop, Work } from '../notation/tree.ts';
import { spotOf } from './corners.ts';
import { demand, type Unit } from './demand.ts';
import { isUnit, opensUnit } from './kinds.ts';
import { missing, stopAhead } from './places.ts';
import type { Moment, Progress } from './progress.ts';
import { type Choice, repeatedSteps, type Step, steps, without } from './steps.ts';
import { one, run, workOnce } from './work.ts';

/** How many of the last passes are tried, from the most passes down. */
const TRIED = 40;

type Open = Repeat | Again | Work | Group | Choice;

function stopOf(item: Open): Stop | null {
  if (item.type === 'choice') return null;
  if (item.type === 'repeat' || item.type === 'again')
    return item.times.kind === 'to' ? item.times.stop : null;
  const place = item.places[0]!;
  return place.kind === 'across' || place.kind === 'of-unit' ? place.stop : null;
}

/** The middle stitch of the row below; of two, the first. */
function centreOf(p: Progress): number {
  const owed = p.below.flatMap((site, i) => (p.owed(site) ? [i] : []));
  return owed[Math.floor((owed.length - 1) / 2)] ?? -1;
}

/** Is the marked stitch next, or as many stitches ahead as the text stops before it? */
function atMarker(p: Progress, stop: Extract<Stop, { kind: 'marker' }>): boolean {
  let before = stop.before === null ? 0 : (p.amount(stop.before) ?? 0);
  const centre = stop.centre === true ? centreOf(p) : null;
  for (let i = p.pos; i < p.below.length; i++) {
    const site = p.below[i]!;
    if (centre === null ? site.marked : i === centre) return before === 0;
    if (!p.owed(site)) continue;
    if (before === 0) return false;
    before -= 1;
  }
  return false;
}

/** Index up to which "to ch-2 sp", "to 2 sts before ch-2 sp" go; -1 where there is none ahead. */
function endBefore(p: Progress, stop: Extract<Stop, { kind: 'before-next' }>): number {
  const at = p.seek([stop.noun]);
  let left = stop.before === undefined ? 0 : (p.amount(stop.before) ?? 0);
  let i = at;
  while (left > 0 && i > p.pos) {
    i -= 1;
    if (p.owed(p.below[i]!)) left -= 1;
  }
  return i;
}

/** Is the work where it stops before the next such thing? `goal`: where that is, when it is not the next. */
function atNext(p: Progress, stop: Extract<Stop, { kind: 'before-next' }>, goal: number | null): boolean {
  if (goal !== null) return goal >= 0 && p.pos >= goal;
  if (stop.before === undefined) return p.isAt(p.pos, [stop.noun]);
  const end = endBefore(p, stop);
  return end >= 0 && end <= p.pos;
}

/** "To 5th ch-1 sp" of 3. */
function tooFew(p: Progress, stop: Extract<Stop, { kind: 'before-next' }>): void {
  let found = 0;
  for (let at = p.seek([stop.noun]); at >= 0; at = p.seek([stop.noun], at + 1)) found += 1;
  missing(p, stop, stop.noun, stop.nth === undefined ? 1 : (p.amount(stop.nth) ?? 1), found);
}

/** Whether later items use any of the row below: if none does, a stop short of the end means to leave the rest. */
function worksOn(items: readonly Step[]): boolean {
  return items.some(
    (item) => item.type === 'work' || item.type === 'group' || item.type === 'repeat' || item.type === 'skip',
  );
}

/**
 * "Sk all sts to next ch-1 sp, hdc in each st to next ch-1 sp, ch 3": the hook is at the first of the two, the words
 * mean the one after it, and nothing goes into the first.
 */
function isWhereSkipped(p: Progress, noun: Noun, rest: readonly Step[]): boolean {
  const justSkipped = p.skips > 0 && p.skipAt === p.made.length && p.skipped[p.skips - 1] === p.pos - 1;
  if (!justSkipped || !p.isAt(p.pos, [noun])) return false;
  const next = rest[0]?.type;
  return next !== 'work' && next !== 'group' && next !== 'repeat' && p.seek([noun], p.pos + 1) >= 0;
}

/** Where the passes of a repeat lie in the row, for a chart's bracket. */
function recordPasses(p: Progress, tried: readonly Tried[], last: Tried): void {
  if (p.recording === null || last.passes === 0) return;
  const starts = tried.filter((t) => t.passes < last.passes).map((t) => t.moment.made);
  p.recording.passes.push({ starts, end: last.moment.made });
}

interface Tried {
  readonly passes: number;
  readonly moment: Moment;
}

/**
 * Works the open item and then `rest`, the items after it, through `then`. In a trial answers whether it all
 * came out; otherwise always leaves the row worked as far as it goes and reports.
 */
export function fitOpen(
  p: Progress,
  written: Open,
  rest: readonly Step[],
  then: () => boolean,
  top: boolean,
): boolean {
  const item = asGaps(p, written);
  const stop = stopOf(item);
  const asks =
    stop?.kind === 'before-last' && p.trials === 0 && (item.type === 'work' || item.type === 'group');
  const limit = asks ? lastIndexes(p, stop) : null;
  const told = p.facts.length;
  const ok = fitted(p, item, rest, then, top);
  // "To last 12 sts" of 10: nothing is worked, and what comes after need not miss anything.
  if (asks && limit !== null && limit.short !== null && p.facts.length === told)
    missing(p, stop, stop.noun, limit.n, limit.short);
  return ok;
}

/** "1 tr in sp between next 2 tr, 1 tr in each sp to end": where the row below has no other, such spaces are meant. */
function asGaps(p: Progress, item: Open): Open {
  if ((item.type !== 'work' && item.type !== 'group') || p.gap < 0 || !p.meeting.spaceless) return item;
  const place = item.places[0];
  const noun = place?.kind === 'across' ? place.nouns[0] : undefined;
  if (place?.kind !== 'across' || noun?.kind !== 'space' || noun.chains !== null) return item;
  const { from, to } = noun;
  return { ...item, places: [{ ...place, nouns: [{ kind: 'between', from, to }] }] };
}

function fitted(p: Progress, item: Open, rest: readonly Step[], then: () => boolean, top: boolean): boolean {
  const stop = stopOf(item);
  if (item.type === 'work' || item.type === 'group') p.enter(item.places[0]?.part);
  if (item.type === 'choice') reportUnmet(p, item.works);
  // "Sc in each ch to last ch" of a border: where its last lies shows only once the chain is there.
  if (stop?.kind === 'before-last' && stop.noun.kind === 'chain') p.layFoundation();
  const body = item.type === 'repeat' || item.type === 'again' ? repeatedSteps(item.items) : null;
  const pass = (): boolean =>
    body === null ? workOnce(p, item as Work | Group | Choice) : run(p, body, 0, false);
  if (stop?.kind === 'before-next' && isWhereSkipped(p, stop.noun, rest)) p.advance(p.pos);
  const goal = stop?.kind === 'before-next' && stop.nth !== undefined ? stopAhead(p, stop) : null;
  if (goal === -1 && stop?.kind === 'before-next') tooFew(p, stop);
  const begun = p.round && p.made.some((site) => site.kind === 'stitch');
  const start = p.moment();
  const before = { st: p.stitchesAhead(), sp: p.spacesAhead() };
  let used: { st: number; sp: number } | null = null;
  const tried: Tried[] = [{ passes: 0, moment: start }];
  let passes = 0;
  const limit = stop?.kind === 'before-last' ? lastIndexes(p, stop) : null;

  for (;;) {
    if (limit?.reached(p)) break;
    if (stop !== null && stop.kind === 'before-next' && atNext(p, stop, goal)) break;
    if (stop !== null && stop.kind === 'marker' && atMarker(p, stop)) break;
    const { pos, inner, covered, gap } = p;
    const moment = p.moment();
    // What the repeat stops before may lie behind stitches that it passes over on its way.
    const end = stop !== null && stop.kind === 'before-next' ? (goal ?? endBefore(p, stop)) : -1;
    p.trials += 1;
    const ok =
      pass() &&
      (end < 0 || p.pos <= end) &&
      !(p.pos === pos && p.inner === inner && p.covered === covered && p.gap === gap);
    p.trials -= 1;
    if (p.exhausted) {
      if (p.trials === 0) p.note('too-many-stitches', item, { limit: p.made.length });
      return false;
    }
    if (!ok) {
      p.restore(moment);
      break;
    }
    passes += 1;
    if (passes === 1) used = { st: before.st - p.stitchesAhead(), sp: before.sp - p.spacesAhead() };
    tried.push({ passes, moment: p.moment() });
    if (tried.length > TRIED * 2) tried.splice(1, TRIED);
  }

  const tail = worksOn(rest);
  // "to last 4 sts, turn" leaves them; "to last st." alone leaves in doubt what becomes of it.
  const leavesHere =
    stop?.kind === 'before-last' &&
    top &&
    !tail &&
    (item.type !== 'repeat' || rest.some((next) => next.type === 'turn' || next.type === 'unworked'));
  const accept = (k: number): boolean => {
    if (p.repeats === null && p.depth === 0 && body !== null && top) p.repeats = k;
    return true;
  };

  /** How much of what the passes made is still as they made it. */
  let intact = Number.POSITIVE_INFINITY;

  /** Works on from a moment; on success everything stays done. */
  const attempt = (chosenMoment: Tried, ending: (() => boolean) | null, partial: 0 | 1): boolean => {
    let from = chosenMoment;
    if (from.moment.made > intact) {
      // A try from fewer passes has worked over what these made.
      replay(from.passes);
      from = { passes: from.passes, moment: p.moment() };
    }
    intact = from.moment.made;
    p.restore(from.moment);
    const { leaves, repeats } = p;
    if (leavesHere) p.leaves = true;
    if (body !== null) recordPasses(p, tried, from);
    if (body !== null && top && p.repeats === null && p.depth === 0) p.repeats = from.passes + partial;
    p.trials += 1;
    const ok = (ending === null || ending()) && then();
    p.trials -= 1;
    if (!ok) {
      p.restore(from.moment);
      p.leaves = leaves;
      p.repeats = repeats;
    }
    return ok;
  };

  /** The first passes again from the start: the tries since have used up the moments after them. */
  const replay = (n: number): void => {
    p.restore(start);
    p.muted += 1;
    for (let k = 0; k < n && !p.exhausted; k++) pass();
    p.muted -= 1;
  };

  const last = item.type === 'repeat' ? item.last : null;
  const candidates = chosen(p, stop, limit, tried);
  if (last === null && limit !== null && candidates.some((t) => limit.withSpaces(t.moment.pos))) {
    // Whether the spaces count among "last 2 sts" shows in what comes out with nothing passed over.
    const { strict } = p;
    for (const from of candidates) {
      p.strict = true;
      const ok = from.passes > 0 && attempt(from, null, 0);
      p.strict = strict;
      if (ok) return accept(from.passes);
    }
  }
  if (last?.kind === 'ending' && last.replaces !== true && !p.sparing) {
    // "ending with sc in 3rd ch of ch-6" may stand for the end of the last pass: so it does where a space
    // would otherwise be left out.
    for (const from of candidates) {
      for (const { way, partial } of endings(p, item as Repeat, body!)) {
        p.sparing = true;
        const ok = attempt(from, way, partial);
        p.sparing = false;
        if (ok) return accept(from.passes + partial);
      }
    }
  }
  const gap = last === null && stop?.kind === 'end' && top ? gapBefore(begun, body) : null;
  for (const from of candidates) {
    if (last === null) {
      if (from.passes === 0 && body !== null && candidates.length > 1) continue;
      // "dc in each sp across, dc in last st" over a row without spaces has not come out with the last dc alone.
      if (from.passes === 0 && body === null && top && notThere(p, item)) continue;
      if (attempt(from, null, 0)) {
        if (gap !== null && from.passes > 0) tellGap(p, item, gap, rest);
        return accept(from.passes);
      }
      continue;
    }
    for (const { way, partial } of endings(p, item as Repeat, body!)) {
      if (attempt(from, way, partial)) return accept(from.passes + partial);
    }
  }
  if (gap !== null) {
    for (const from of candidates) {
      if (from.passes > 0 && attempt(from, () => one(p, gap), 0)) return accept(from.passes);
    }
  }
  if (p.trials > 0) return false;

  const misses = body === null ? null : shortfall(p, item, rest, before, used, limit);
  const none = passes === 0 && top && body !== null && (misses === null || misses.fits);
  const untaken = none ? whyNot(p, start, pass) : null;
  if (untaken !== null) {
    // "Sc in 6th dc of next shell" of five: not one pass can be worked, and that is why.
    p.facts.push(untaken);
    p.misfit = true;
    p.muted += 1;
    then();
    p.muted -= 1;
    return true;
  }
  if (top && !p.lenient && (passes === 0 || namesOne(item)) && overPassed(p, item, start, then)) return true;

  // Nothing comes out even: work it as far as it goes, and say by how much it misses.
  const best = candidates[0] ?? tried[tried.length - 1]!;
  const unmet = passes === 0 && item.type === 'repeat' && top ? unmetSpace(p, item) : null;
  if (unmet !== null) {
    replay(0);
    missing(p, unmet, unmet.nouns[0], 1, 0);
    p.misfit = true;
    return then();
  }
  if (misses === null || misses.fits) {
    const from = (misses === null ? null : tried.find((t) => t.passes === misses.passes)) ?? best;
    replay(from.passes);
    if (passes === 0 && top && (item.type === 'work' || item.type === 'group') && notThere(p, item)) {
      reportUnmet(p, [item]);
      p.misfit = true;
    }
    if (leavesHere) p.leaves = true;
    accept(from.passes);
    if (last !== null) endings(p, item as Repeat, body!)[0]!.way();
    return then();
  }
  const whole = tried.find((t) => t.passes === misses.passes) ?? best;
  replay(whole.passes);
  accept(whole.passes);
  p.note('repeat-does-not-fit', item, {
    passes: misses.passes,
    left: misses.left,
    unit: misses.unit === 'st' && p.bare ? 'ch' : misses.unit,
    multiple: misses.multiple,
    plus: misses.plus,
    have: misses.have,
    lower: misses.lower,
    upper: misses.upper,
  });
  p.misfit = true;
  p.muted += 1;
  then();
  p.muted -= 1;
  return true;
}

/**
 * "Ch 5, dc in same st, *sk 1 st, (dc, ch 2, dc) in next st; rep from * around, join": what begins the round ends its
 * last pass, so that only the stitches passed over before it are left. That gap, or null where no pass begins with one.
 */
function gapBefore(begun: boolean, body: readonly Step[] | null): Skip | null {
  const first = body?.[0];
  return begun && first?.type === 'skip' ? first : null;
}

/** Tells of a round that came out without that gap. Where more is worked or passed over behind it, it may be there. */
function tellGap(p: Progress, item: Open, gap: Skip, rest: readonly Step[]): void {
  const place = gap.places[0];
  const n = place?.kind === 'next' ? (p.amount(place.amount) ?? 0) : 0;
  if (
    n < 1 ||
    p.stitchesAhead() > 0 ||
    worksOn(rest) ||
    place?.kind !== 'next' ||
    place.nouns[0]?.kind === 'space'
  )
    return;
  p.note('gap-left-out', item, { gap: n, have: p.stitchesAhead(0) });
}

/**
 * Not one pass can be worked as written: works it once more, passing over what the words leave out, and tells
 * that. Answers whether it came out; if not, all is as before.
 */
function overPassed(p: Progress, item: Open, start: Moment, then: () => boolean): boolean {
  p.restore(start);
  const { leaves, repeats } = p;
  p.lenient = true;
  p.trials += 1;
  const ok = fitOpen(p, item, [], then, true);
  p.trials -= 1;
  p.lenient = false;
  if (ok) return true;
  p.restore(start);
  p.leaves = leaves;
  p.repeats = repeats;
  return false;
}

/** "*Sc in next sc, ch 3; rep from * around": each pass goes to one stitch of a kind, and what lies between is unsaid. */
function namesOne(item: Open): boolean {
  if (item.type !== 'repeat') return false;
  const works = item.items.filter((inner) => inner.type === 'work');
  const place = works[0]?.places[0];
  return (
    works.length === 1 &&
    item.items.every(({ type }) => type === 'work' || type === 'chain') &&
    place?.kind === 'next' &&
    place.nouns.length === 1 &&
    place.nouns[0]!.kind === 'named' &&
    place.amount.kind === 'one' &&
    place.amount.value === 1
  );
}

/** The place that keeps the first pass from being worked, as a fact; null where it is another thing. All is as before. */
function whyNot(p: Progress, start: Moment, pass: () => boolean): Fact | null {
  if (p.trials > 0) return null;
  p.restore(start);
  const told = p.facts.length;
  pass();
  const found = p.facts.slice(told).find(({ code }) => code === 'place-does-not-exist') ?? null;
  p.restore(start);
  return found;
}

/** "(…) in each ch-2 sp around" where the row below has none at all. */
function notThere(p: Progress, item: Open): boolean {
  if (item.type !== 'work' && item.type !== 'group') return false;
  const place = item.places[0]!;
  if (place.kind !== 'across' || place.below > 0 || p.below.length === 0) return false;
  const looked = place.nouns.every((noun) => ['named', 'space', 'chain'].includes(noun.kind));
  return looked && p.seek(place.nouns, 0) < 0;
}

/** Says which of the things that are to be worked into, each one met, are not there at all. */
function reportUnmet(p: Progress, works: readonly (Work | Group)[]): void {
  for (const work of works) {
    const place = work.places[0]!;
    const noun = place.kind === 'across' ? place.nouns[0] : place.kind === 'of-unit' ? place.unit : undefined;
    const spot = spotOf(p, place);
    const there = spot !== null ? spot >= 0 : place.kind === 'across' && p.seek(place.nouns) >= 0;
    if (!there && noun !== undefined) missing(p, place, noun, 1, 0);
  }
}

/** The space that a repeat which cannot be worked even once goes into, when the row below has none such. */
function unmetSpace(p: Progress, item: Repeat): Extract<Place, { kind: 'next' }> | null {
  for (const inner of item.items) {
    if (inner.type !== 'work' && inner.type !== 'group') continue;
    const place = inner.places[0];
    const noun = place?.kind === 'next' ? place.nouns[0] : undefined;
    if (place?.kind !== 'next' || noun?.kind !== 'space' || p.seek(place.nouns, 0) >= 0) continue;
    return place;
  }
  return null;
}

interface Limit {
  /** Has everything before the last n been used? */
  reached(p: Progress): boolean;
  exactly(at: Moment): boolean;
  /** One more than asked is left, the last being the turning chain, which "last 3 sts" may leave out. */
  withTurning(pos: number): boolean;
  /** As many are left when spaces are counted among the stitches. */
  withSpaces(pos: number): boolean;
  /** Only the rest of a group is left before them, in a row that goes from space to space over such stitches. */
  acrossLace(at: Moment): boolean;
  /** Of two ends that are right, the one to try first. */
  better(a: Tried, b: Tried): number;
  readonly n: number;
  /** How many there are, where they are fewer than it asks to leave; else null. */
  readonly short: number | null;
}

function lastIndexes(p: Progress, stop: Extract<Stop, { kind: 'before-last' }>): Limit {
  const n = p.amount(stop.amount) ?? 0;
  const indexes: number[] = [];
  for (let i = p.seek([stop.noun]); i >= 0; i = p.seek([stop.noun], i + 1)) indexes.push(i);
  // "To last shell" of shells that the row below makes without naming them.
  if (indexes.length === 0 && stop.noun.kind === 'named' && isUnit(stop.noun.stitch))
    for (let i = p.pos; i < p.below.length; i++) if (opensUnit(p.below[i]!, p.meeting)) indexes.push(i);
  if (stop.noun.kind === 'turning-chain' && indexes.length > 0)
    return beforeTurning(p, n, indexes[0]!, indexes.at(-1)!);
  const size = p.below.length;
  const at = indexes.length - n;
  const first = n === 0 ? size : (indexes[at] ?? -1);
  const previous = at > 0 ? indexes[at - 1]! : -1;
  const earlier = at > 1 ? indexes[at - 2]! : -1;
  const places: number[] = [];
  if (stop.noun.kind === 'stitch') {
    for (let i = p.pos; i < size; i++)
      if (p.owed(p.below[i]!) || p.below[i]!.kind === 'space') places.push(i);
  }
  const spaces = places.length > indexes.length && n > 0;
  const firstPlace = places[places.length - n] ?? -1;
  const beforePlace = places[places.length - n - 1] ?? -1;
  const turning = p.below[size - 1]?.turning === true && p.below[size - 1]?.kind === 'stitch';
  const there = Math.max(indexes.length, places.length);
  return {
    n,
    short: there + (turning ? 1 : 0) < n ? there : null,
    reached: (now) =>
      now.pos > previous &&
      (!spaces || now.pos > beforePlace) &&
      now.inner === 0 &&
      // "Each dc and sp to last sp": a stitch may lie between the last two spaces.
      !(first > now.pos && p.below.slice(now.pos, first).some((site) => p.owed(site))),
    exactly: ({ pos }) => first >= 0 && pos > previous && pos <= first,
    withSpaces: (pos) => spaces && firstPlace >= 0 && pos > beforePlace && pos <= firstPlace,
    withTurning: (pos) => turning && pos > earlier && pos <= previous,
    acrossLace: (at) => {
      if (!at.intoSpace || !at.passes || first < 0 || at.pos > first) return false;
      const over = p.below.slice(at.pos, first);
      return over.length <= at.hopped && over.every((site) => p.owed(site));
    },
    better: () => 0,
  };
}

/**
 * "To turning ch": up to the stitch before it, or, worked in spaces, up to the last space before it. The chain's own
 * space, between `first` and its stitch at `last`, may be used or not.
 */
function beforeTurning(p: Progress, n: number, first: number, last: number): Limit {
  const { below } = p;
  return {
    n,
    short: null,
    reached: (now) => now.pos >= first && now.inner === 0,
    exactly: (at) => {
      if (at.pos > last) return false;
      const inSpaces = below[at.last]?.kind === 'space';
      return below.slice(at.pos, first).every((site) => (inSpaces ? site.kind !== 'space' : !p.owed(site)));
    },
    withSpaces: () => false,
    withTurning: () => false,
    acrossLace: () => false,
    better: (a, b) => Number(a.moment.pos > first) - Number(b.moment.pos > first),
  };
}

/** The moments worth trying, best first. */
function chosen(
  p: Progress,
  stop: Stop | null,
  limit: Limit | null,
  tried: readonly Tried[],
): readonly Tried[] {
  const newest = tried[tried.length - 1]!;
  if (limit !== null) {
    const exact = tried.filter((t) => limit.exactly(t.moment)).reverse();
    const turning = tried.filter((t) => limit.withTurning(t.moment.pos));
    // Some houses count every chain-space as a stitch; what follows must then still come out.
    const spaced = stop?.kind === 'before-last' ? tried.filter((t) => limit.withSpaces(t.moment.pos)) : [];
    // None: the passes stop short of there, or go over it, which is told as a repeat that does not fit.
    const even = [...exact.sort(limit.better), ...turning.reverse(), ...spaced.reverse()];
    return even.length === 0 && limit.acrossLace(newest.moment) ? [newest] : even;
  }
  if (stop !== null && (stop.kind === 'before-next' || stop.kind === 'marker')) return [newest];
  p.step(tried.length);
  return tried.slice(-TRIED).reverse();
}

/** A way in which the last pass may end; `partial` = it is one more pass, if a short one. */
interface Ending {
  readonly way: () => boolean;
  readonly partial: 0 | 1;
}

/** The ways, most literal first: the words as they stand, then in place of more and more of the last pass. */
function endings(p: Progress, item: Repeat, body: readonly Step[]): readonly Ending[] {
  const last = item.last!;
  if (last.kind === 'stop-at') {
    const cut = steps(item.items.slice(0, last.index));
    return [{ way: () => run(p, cut, 0, false), partial: 1 }];
  }
  if (last.kind === 'omitting') {
    const cut = without(body, last.items);
    return [{ way: () => run(p, cut, 0, false), partial: 1 }];
  }
  const extra = steps(last.items);
  if (last.replaces) {
    const at = body.findLastIndex((part) => part.type === 'work' || part.type === 'group');
    const head = body.slice(0, Math.max(0, at));
    const shorter = at === body.length - 1 ? oneFewer(p, body) : null;
    const heads = shorter === null ? [head] : [shorter, head];
    return [
      ...heads.map((own): Ending => {
        return { way: () => own.every((part) => one(p, part)) && run(p, extra, 0, false), partial: 1 };
      }),
      // A space still open is owed its own chains or stitches: the last stitch may not leap over it.
      { way: () => p.spacesAhead() === 0 && run(p, extra, 0, false), partial: 0 },
    ];
  }
  const ways: Ending[] = [{ way: () => run(p, extra, 0, false), partial: 0 }];
  const shorter = besideTurningChain(p, body, extra);
  if (shorter !== null)
    ways.push({ way: () => shorter.every((part) => one(p, part)) && run(p, extra, 0, false), partial: 1 });
  const like = body.flatMap((step, i) => (sameStitch(step, extra[0]) ? [i] : []));
  for (let j = body.length; j > 0; j--) {
    // "*sk 3, sc in next, sk 3, 5 dc in next; …, ending with 3 dc in last st": they stand for the 5 dc, for no sc.
    if (j < body.length && like.length > 0 && !like.includes(j) && body[j]!.type === 'work') continue;
    for (const head of headsTo(p, body, j))
      ways.push({ way: () => head.every((part) => one(p, part)) && run(p, extra, 0, false), partial: 1 });
  }
  return ways;
}

/** Is the ending made of the stitch of that step? */
function sameStitch(step: Step, end: Step | undefined): boolean {
  if (step.type !== 'work' || end?.type !== 'work') return false;
  return (
    step.stitch.base !== null && step.stitch.base === end.stitch.base && step.stitch.form === end.stitch.form
  );
}

/**
 * "*Ch 2, dc in next 4 dc; … ending with dc in top of turning ch": the last pass with one stitch fewer at its end,
 * whose place the turning chain takes; null where the ending is another.
 */
function besideTurningChain(
  p: Progress,
  body: readonly Step[],
  extra: readonly Step[],
): readonly Step[] | null {
  const last = body.at(-1);
  const end = extra[0];
  if (extra.length !== 1 || end?.type !== 'work' || last?.type !== 'work') return null;
  if (end.places.length !== 1 || end.places[0]!.kind !== 'turning-chain') return null;
  return last.stitch.base === end.stitch.base ? oneFewer(p, body) : null;
}

/** The pass with one stitch fewer in its last step, "dc in next 4 dc"; null where that is no step of several. */
function oneFewer(p: Progress, body: readonly Step[]): readonly Step[] | null {
  const last = body.at(-1);
  const place = last?.type === 'work' ? last.places[0] : undefined;
  if (last?.type !== 'work' || last.places.length !== 1 || place?.kind !== 'next') return null;
  const n = p.amount(place.amount) ?? 0;
  if (n < 2) return null;
  const { from, to } = place.amount;
  const fewer = { ...place, amount: { kind: 'one', value: n - 1, from, to } as const };
  return [...body.slice(0, -1), { ...last, places: [fewer] }];
}

/** How many fewer passes of a repeat within the pass are tried. */
const INNER = 12;

/** The pass up to its `j`-th step; where that step is itself a repeat, also with fewer and fewer passes of it. */
function headsTo(p: Progress, body: readonly Step[], j: number): readonly (readonly Step[])[] {
  const head = body.slice(0, j);
  const last = body[j - 1]!;
  if (last.type !== 'repeat' || last.times.kind !== 'times' || last.times.more || last.last !== null)
    return [head];
  const { times } = last;
  const heads: (readonly Step[])[] = [head];
  for (let k = Math.min((p.amount(times.amount) ?? 1) - 1, INNER); k > 0; k--) {
    const amount = { kind: 'one', value: k, from: times.from, to: times.to } as const;
    heads.push([...head.slice(0, -1), { ...last, times: { ...times, amount } }]);
  }
  return heads;
}

interface Shortfall {
  readonly fits: boolean;
  readonly passes: number;
  readonly left: number;
  readonly unit: Unit;
  readonly multiple: number;
  readonly plus: number;
  readonly have: number;
  readonly lower: number | null;
  readonly upper: number;
}

/** What the last pass of a repeat works, where it stops early or leaves something out. */
function cutShort(item: Repeat): readonly Item[] {
  if (item.last?.kind === 'stop-at') return item.items.slice(0, item.last.index);
  if (item.last?.kind !== 'omitting') return [];
  return without(item.items, item.last.items).flatMap((step): readonly Item[] =>
    step.type === 'choice' ? step.works : [step],
  );
}

/** The arithmetic of a repeat that does not come out: what it works on and what there is. */
function shortfall(
  p: Progress,
  item: Open,
  rest: readonly Step[],
  before: { st: number; sp: number },
  used: { st: number; sp: number } | null,
  limit: Limit | null,
): Shortfall | null {
  const amount = (a: Parameters<Progress['amount']>[0]) => p.amount(a) ?? 0;
  const askedItems: readonly Item[] =
    item.type === 'repeat' || item.type === 'again'
      ? item.items
      : item.type === 'choice'
        ? item.works
        : [item];
  const restItems = rest.flatMap((step): readonly Item[] => (step.type === 'choice' ? step.works : [step]));
  const asked = {
    st: demand(askedItems, 'st', p.bare, amount),
    sp: demand(askedItems, 'sp', p.bare, amount),
  };
  const each = used ?? asked;
  const unit: Unit = each.st > 0 ? 'st' : 'sp';
  const multiple = each[unit];
  if (multiple <= 1) return null;
  const total = unit === 'st' ? p.stitchesAhead(0) : p.spacesAhead(0);
  const tail = Math.max(limit?.n ?? 0, demand(restItems, unit, p.bare, amount));
  const cut = item.type === 'repeat' ? demand(cutShort(item), unit, p.bare, amount) : 0;
  const plus = total - before[unit] + cut + tail;
  const free = total - plus;
  const passes = Math.max(0, Math.floor(free / multiple));
  const left = free - passes * multiple;
  const lower = plus + passes * multiple;
  return {
    fits: left === 0 && passes >= 1,
    passes,
    left,
    unit,
    multiple,
    plus,
    have: total,
    lower: passes >= 1 ? lower : null,
    upper: plus + (passes + 1) * multiple,
  };
}
