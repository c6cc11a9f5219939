/**
 * Working the items of a row one after another: stitches into places, groups, skips, repeats. Open ends
 * ("across", "to last 3 sts") are fitted in `fitting`; the start and the end of a row are `row`'s concern.
 * Every function answers whether the work could go on; outside trials it always can, and says what is wrong.
 */

import type { Span } from '../finding.ts';
import type { Again, Group, Item, Noun, Place, Repeat, Skip, StitchRef, Work } from '../notation/tree.ts';
import { type BaseStitch, height } from '../trade/stitches.ts';
import { fitOpen } from './fitting.ts';
import { GATHERED, isUnit, stitchId } from './kinds.ts';
import {
  missing,
  nounId,
  take,
  takeFirst,
  takeGap,
  takeInUnit,
  takeLast,
  takeMarked,
  takeSame,
  takeTurningChain,
} from './places.ts';
import { MOST_STITCHES, NOWHERE, type Progress } from './progress.ts';
import { picotSite, type Site, spaceSite, stitchSite, turningChain, turningStitch } from './site.ts';
import { stand } from './standing.ts';
import { edgeChains } from './turning.ts';
import { definitionOf, expand } from './units.ts';

/**
 * "2 sc in each sp, sc in each dc across": each thing met on the way across is worked as the phrase that names
 * it says.
 */
export interface Choice extends Span {
  readonly type: 'choice';
  readonly works: readonly Work[];
}

/** What a row is worked in: its items, taken apart or joined where the words of several make one step. */
export type Step = Item | Choice;

const flattened = new WeakMap<readonly Item[], readonly Step[]>();

/** The items with work in several places taken apart into work in one place each. Memoised. */
export function steps(items: readonly Item[]): readonly Step[] {
  const known = flattened.get(items);
  if (known !== undefined) return known;
  const apart: Item[] = [];
  for (const item of items) {
    if ((item.type === 'work' || item.type === 'group') && item.places.length > 1) {
      for (const place of item.places) apart.push({ ...item, places: [place] });
    } else apart.push(item);
  }
  const joined = chosenAcross(spreadShaping(apart));
  const made =
    joined.length === items.length && joined.every((item, i) => item === items[i]) ? items : joined;
  flattened.set(items, made);
  return made;
}

/**
 * "sc across, inc in every 3rd st" is one row told in two phrases: two stitches plain, then one increased, to
 * the end. Said so, it can be worked.
 */
function spreadShaping(items: readonly Item[]): readonly Item[] {
  const out: Item[] = [];
  for (const item of items) {
    const before = out[out.length - 1];
    const place = item.type === 'work' ? item.places[0] : undefined;
    const changes = item.type === 'work' && (item.stitch.form === 'inc' || item.stitch.form === 'dec');
    if (
      item.type === 'work' &&
      changes &&
      place?.kind === 'across' &&
      place.every > 1 &&
      before?.type === 'work' &&
      before.places[0]?.kind === 'across' &&
      before.stitch.form === 'plain'
    ) {
      const plainPlace = before.places[0];
      const span = { from: item.from, to: item.to };
      const next = (value: number): Place => ({
        ...span,
        kind: 'next',
        loop: null,
        post: null,
        below: 0,
        amount: { ...span, kind: 'one', value },
        nouns: plainPlace.nouns,
        every: 1,
        implied: false,
      });
      const taken = item.stitch.form === 'dec' ? 2 : 1;
      out.pop();
      out.push({
        ...span,
        type: 'repeat',
        mark: 'bracket',
        last: null,
        times: { ...span, kind: 'to', stop: place.stop },
        items: [
          { ...before, places: [next(Math.max(1, place.every - taken))] },
          { ...item, places: [{ ...(next(1) as Extract<Place, { kind: 'next' }>), implied: true }] },
        ],
      });
      out.push(before);
      continue;
    }
    out.push(item);
  }
  return out;
}

function reaches(item: Item | undefined): item is Work {
  if (item?.type !== 'work') return false;
  const place = item.places[0];
  return place?.kind === 'across' && place.stop.kind === 'end' && place.every === 1;
}

/** Phrases that each go all the way across, for different things, are one way across. */
function chosenAcross(items: readonly Item[]): readonly Step[] {
  const out: Step[] = [];
  for (let i = 0; i < items.length; i++) {
    const first = items[i]!;
    const works: Work[] = [];
    for (let at = i; reaches(items[at]); at++) works.push(items[at] as Work);
    const kinds = works.map((work) =>
      work.places[0]?.kind === 'across' ? nounId(work.places[0].nouns[0]) : '',
    );
    if (
      works.length > 1 &&
      new Set(kinds).size === kinds.length &&
      kinds.some((kind) => kind.startsWith('sp'))
    ) {
      out.push({ type: 'choice', from: first.from, to: works[works.length - 1]!.to, works });
      i += works.length - 1;
    } else out.push(first);
  }
  return out;
}

function openEnded(p: Progress, item: Step): item is Repeat | Again | Work | Group | Choice {
  if (item.type === 'choice') return true;
  if (item.type === 'repeat' || item.type === 'again') return item.times.kind === 'to';
  if (item.type === 'work' || item.type === 'group') {
    const place = item.places[0];
    if (place === undefined) return false;
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
    if (openEnded(p, item)) {
      const rest = items.slice(at + 1);
      return fitOpen(p, item, rest, () => run(p, items, at + 1, top), top);
    }
    if (!one(p, item)) return false;
  }
  return !top || p.trials === 0 || even(p);
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
  const spaces = p.usedSpace ? p.spacesAhead(from) : 0;
  // In a round that works into spaces, the stitches after the last one lie between it and the first.
  if (p.round && p.intoSpace && spaces === 0) stitches = 0;
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
      const left = leftOver(p).stitches;
      if (n !== null && n !== left && item.noun.kind !== 'space') {
        return p.problem('stitches-left-unworked', item, { left, said: n, have: p.stitchesAhead(0) });
      }
      return true;
    }
    case 'marker':
      if (item.action !== 'remove' && item.action !== 'work-to') p.mark();
      return true;
    case 'other-side':
      p.layOtherSide();
      return true;
    case 'join':
      if (item.not) return true;
      if (item.stitch !== null && item.stitch.base !== 'slip' && item.stitch.base !== null && p.pending > 0) {
        // The closing stitch stands for the rest of the last chain-space.
        p.pending += height(item.stitch.base);
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

/** A repeat with a number of passes. */
function passes(p: Progress, item: Repeat | Again): boolean {
  if (item.times.kind !== 'times') return true;
  const said = p.amount(item.times.amount);
  if (said === null) return true;
  const times = said + (item.times.more && item.type === 'repeat' ? 1 : 0);
  const body = steps(item.items);
  const last = item.type === 'repeat' ? item.last : null;
  for (let k = 0; k < times; k++) {
    if (p.exhausted) return false;
    const cut = last !== null && k === times - 1;
    const before = p.facts.length;
    const ok = cut ? lastPass(p, item as Repeat, body) : run(p, body, 0, false);
    if (!ok) return false;
    if (
      p.trials === 0 &&
      p.facts.length > before &&
      p.facts.some((f, i) => i >= before && f.code === 'place-does-not-exist')
    ) {
      // Tell once, with where it ran out, instead of once a pass.
      const fact = p.facts[p.facts.length - 1]!;
      p.facts[p.facts.length - 1] = { ...fact, data: { ...fact.data, pass: k + 1, passes: times } };
      p.muted += 1;
      for (let rest = k + 1; rest < times && !p.exhausted; rest++) run(p, body, 0, false);
      p.muted -= 1;
      p.misfit = true;
      return true;
    }
  }
  return true;
}

/** The last pass of a repeat, cut, changed or short as the text says. */
export function lastPass(p: Progress, item: Repeat, body: readonly Step[]): boolean {
  const last = item.last;
  if (last === null) return run(p, body, 0, false);
  if (last.kind === 'stop-at') return run(p, steps(item.items.slice(0, last.index)), 0, false);
  if (last.kind === 'omitting') {
    return run(p, body.slice(0, Math.max(0, body.length - Math.max(1, last.items.length))), 0, false);
  }
  return run(p, body, 0, false) && run(p, steps(last.items), 0, false);
}

function skip(p: Progress, item: Skip): boolean {
  if (item.behind) {
    if (p.covered > 0) p.uncover();
    return true;
  }
  const skipped: number[] = [];
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
        p.leaves = true;
        break;
      default:
        break;
    }
  }
  p.skipped = skipped;
  p.intoSpace = false;
  const owed = skipped.filter((i) => p.owed(p.below[i]!)).map((i) => p.below[i]!);
  if (owed.length >= 4) p.waiting = [...p.waiting, ...owed];
  return true;
}

/** A group made in one place, once for each place. */
function group(p: Progress, item: Group): boolean {
  const place = item.places[0]!;
  return atEach(p, place, 1, (index) => groupIn(p, item, index));
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
  stand(
    p,
    n,
    first.counts,
    null,
    items.slice(1).flatMap((item): readonly Item[] => (item.type === 'choice' ? item.works : [item])),
    first,
  );
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
  const begun = beginsHere(p, inner, index);
  const ok = run(p, inner, begun, false);
  p.here = here;
  if (!ok) return false;
  p.last = index;
  const start = open > 0 && p.made.length > from ? from + 1 : from;
  if (p.made.length - start >= 2) p.gather('group', start);
  return true;
}

/**
 * Finds each place that `place` names (no open ends here) and calls `make` with it. `each` is how many sites
 * one making takes (stitches worked together).
 */
function atEach(p: Progress, place: Place, each: number, make: (index: number) => boolean): boolean {
  if (
    p.here !== null &&
    (p.hereAlways || place.kind === 'same' || (place.kind === 'next' && place.implied))
  ) {
    return make(p.here);
  }
  const only = (index: number | null): boolean => (index === null ? p.trials === 0 : make(index));
  switch (place.kind) {
    case 'next': {
      const n = p.amount(place.amount);
      if (n === null) return true;
      for (let k = 0; k < n; k++) {
        const index = takeEach(p, place.nouns, each, place);
        if (index === null) {
          if (p.trials > 0) return false;
          missing(p, place, place.nouns[0], n * each, k * each);
          p.misfit = true;
          return true;
        }
        if (!make(index)) return false;
        if (place.every > 1) passEvery(p, place.nouns, place.every, place);
      }
      return true;
    }
    case 'across': {
      const index = takeEach(p, place.nouns, each, place);
      if (index === null) return p.trials === 0;
      if (!make(index)) return false;
      if (place.every > 1) passEvery(p, place.nouns, place.every, place);
      return true;
    }
    case 'same':
      return make(takeSame(p));
    case 'first': {
      const n = p.amount(place.amount) ?? 0;
      for (let k = 0; k < n; k++) {
        const index = takeFirst(p, place.noun, k, place);
        if (index === null) return p.trials === 0;
        if ((k + 1) % each === 0 || (k === n - 1 && n < each)) if (!make(index)) return false;
      }
      return true;
    }
    case 'last': {
      const n = p.amount(place.amount);
      if (n === null) return true;
      const indexes = takeLast(p, place.noun, n, place);
      if (indexes === null) return p.trials === 0;
      for (const index of each > 1 ? indexes.slice(-1) : indexes) if (!make(index)) return false;
      return true;
    }
    case 'nth': {
      const n = p.amount(place.nth);
      if (n === null) return true;
      let index: number | null = null;
      for (let k = 0; k < n; k++) index = take(p, [place.noun], place);
      if (index === null && p.trials === 0) missing(p, place, place.noun, n, 0);
      return only(index);
    }
    case 'turning-chain': {
      if (place.beginning && !p.below.slice(p.pos).some((site) => site.turning)) {
        const own = p.made.findIndex((site) => site.turning);
        if (own >= 0) return make(NOWHERE);
      }
      const nth = place.nth === null ? null : p.amount(place.nth);
      const index = takeTurningChain(p, place);
      const site = index === null ? undefined : p.below[index];
      if (site !== undefined && nth !== null && site.chains > 0 && nth > site.chains) {
        if (
          !p.problem('place-does-not-exist', place, {
            noun: 'ch',
            wanted: nth,
            found: site.chains,
            left: p.stitchesAhead(),
            have: p.stitchesAhead(0),
          })
        )
          return false;
      }
      return only(index);
    }
    case 'ring':
      p.pos = p.below.length;
      p.inner = 0;
      return make(0);
    case 'skipped': {
      const n = p.amount(place.amount) ?? 1;
      const waiting = p.skipped;
      if (waiting.length < n) return only(missing(p, place, place.noun, n, waiting.length));
      for (let k = 0; k < n; k++) if (!make(waiting[k]!)) return false;
      p.skipped = waiting.slice(n);
      return true;
    }
    case 'marked':
      return only(takeMarked(p, place));
    case 'between': {
      const n = Math.max(1, (p.amount(place.amount) ?? 1) - (place.noun.kind === 'between' ? 0 : 1));
      for (let k = 0; k < n; k++) {
        const index = takeGap(p, place.noun, place);
        if (index === null) return p.trials === 0;
        if (!make(index)) return false;
      }
      return true;
    }
    case 'of-unit':
      return only(takeInUnit(p, place, place));
    default:
      return make(NOWHERE);
  }
}

function takeEach(p: Progress, nouns: readonly Noun[], each: number, place: Place): number | null {
  // A hole in the middle of a ring takes any number of stitches.
  if (p.below.length === 1 && p.below[0]!.kind === 'ring') return 0;
  let index: number | null = null;
  for (let k = 0; k < each; k++) {
    if (place.below > 0) {
      index = nextOwed(p);
      if (index < 0) return null;
      p.covered += 1;
      let at = index;
      for (let c = p.covered - 1; c > 0 && at >= 0; c--) at = nextOwed(p, at + 1);
      return at < 0 ? null : at;
    }
    if (nouns.some((noun) => noun.kind === 'between')) index = takeGap(p, nouns[0]!, place);
    else index = take(p, nouns, place);
    if (index === null) return null;
  }
  return index;
}

/** Next stitch of the row below, whatever it is: what work further down stands over. */
function nextOwed(p: Progress, from = p.pos): number {
  for (let i = from; i < p.below.length; i++) if (p.owed(p.below[i]!)) return i;
  return -1;
}

function passEvery(p: Progress, nouns: readonly Noun[], every: number, place: Place): void {
  for (let k = 1; k < every; k++) {
    if (p.seek(nouns) < 0) return;
    take(p, nouns, place);
  }
}

/** How many sites one making of the stitch takes. */
function span(p: Progress, item: Work, place: Place): number {
  if (item.over !== null) return Math.max(1, p.amount(item.over) ?? 1);
  const ref = item.stitch;
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
  if (place.kind === 'evenly') return evenly(p, item, per, place);

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
  const copies = per * (crowded ? (p.amount(place.amount) ?? 1) : 1);
  const each = crowded ? 1 : span(p, item, place);
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
      if (!atEach(p, target, each, (index) => makeIn(p, item, target, index, 1))) return false;
    return true;
  }
  return atEach(p, target, each, (index) => makeIn(p, item, target, index, copies));
}

/** One pass of work with an open end: into the next place that its nouns ask for. */
export function workOnce(p: Progress, item: Work | Group | Choice): boolean {
  if (item.type === 'choice') {
    let next: Work | null = null;
    let at = Number.POSITIVE_INFINITY;
    for (const work of item.works) {
      const place = work.places[0]!;
      if (place.kind !== 'across') continue;
      const i = p.seek(place.nouns, p.inner > 0 ? p.pos + 1 : p.pos);
      if (i >= 0 && i < at) {
        at = i;
        next = work;
      }
    }
    return next !== null && workOnce(p, next);
  }
  const place = item.places[0]!;
  if (item.type === 'group') return atEach(p, place, 1, (index) => groupIn(p, item, index));
  const per = p.amount(item.amount);
  if (per === null || per === 0) return false;
  const ref = item.stitch;
  if (ref.base !== null && ref.base !== 'slip') p.prevailing = ref.base;
  const defined = definitionOf(p, ref);
  if (defined !== null && defined.kind === 'running') return expand(p, ref, defined, null, item);
  return atEach(p, place, span(p, item, place), (index) => makeIn(p, item, place, index, per));
}

/** The stitch, made `n` times into the place. */
function makeIn(p: Progress, item: Work, place: Place, index: number, n: number): boolean {
  const ref = item.stitch;
  const defined = definitionOf(p, ref);
  if (defined !== null) {
    for (let k = 0; k < n; k++) if (!expand(p, ref, defined, index, item)) return false;
    return true;
  }
  if (isUnit(ref)) return unit(p, ref, index, n, item);
  if (ref.form === 'inc') {
    if (ref.parts === null)
      p.note('definition-assumed', ref, { name: 'inc', stitch: ref.base ?? p.prevailing, parts: 2 });
    return p.make(
      stitchSite(stitchId({ ...ref, form: 'plain' }, place, p.prevailing), ref.base ?? p.prevailing),
      n * (ref.parts ?? 2),
      index,
    );
  }
  if (ref.form === 'dec') {
    const together = Math.max(2, ref.together);
    if (ref.base === null)
      p.note('definition-assumed', ref, { name: 'dec', stitch: ref.base ?? p.prevailing, parts: 2 });
    return p.make(
      stitchSite(stitchId({ ...ref, together }, place, p.prevailing), ref.base ?? p.prevailing),
      n,
      index,
    );
  }
  if (GATHERED.has(ref.form) && ref.parts === null) {
    p.note('definition-assumed', ref, { name: ref.form, stitch: ref.base ?? 't3', parts: 1 });
  }
  const base: BaseStitch = ref.base ?? p.prevailing;
  const site: Site = stitchSite(
    stitchId(ref, place, p.prevailing),
    GATHERED.has(ref.form) ? (ref.base ?? 't3') : base,
  );
  if (ref.form === 'crossed') return p.make(site, 2 * n, index);
  const from = p.made.length + (p.pending > 0 ? 1 : 0);
  if (!p.make(site, n, index)) return false;
  // A fan made in one place can be met again as "next shell", whatever its author calls it.
  if (n >= 3 && p.here === null && p.below[index]?.kind !== 'ring') p.gather('group', from);
  return true;
}

/** A unit that the pattern does not define, in its usual meaning where there is one. */
function unit(p: Progress, ref: StitchRef, index: number, n: number, item: Work): boolean {
  const base = ref.base ?? 't3';
  for (let k = 0; k < n; k++) {
    const from = p.made.length;
    const open = p.pending;
    if (ref.form === 'v-stitch') {
      p.note('definition-assumed', ref, { name: 'V-st', stitch: base, parts: 2 });
      if (!p.make(stitchSite(base, base), 1, index)) return false;
      p.pending += 1;
      if (!p.make(stitchSite(base, base), 1, index)) return false;
    } else if (ref.form === 'shell' && ref.parts !== null) {
      if (!p.make(stitchSite(base, base), ref.parts, index)) return false;
    } else {
      p.note('special-not-defined', item.stitch, { name: p.nameOf(ref) });
      if (!p.make(stitchSite(`special.${p.nameOf(ref)}`, base), 1, index)) return false;
    }
    const start = open > 0 ? from + 1 : from;
    p.gather(p.nameOf(ref), start);
  }
  return true;
}

function picot(p: Progress, chains: number): boolean {
  p.closeSpace();
  if (!p.step()) return false;
  p.made.push(picotSite(chains));
  if (p.env.trace) p.into.push(NOWHERE);
  return true;
}

/** Foundation stitches: chain and stitch in one, so nothing below is used. */
function foundation(p: Progress, item: Work, per: number): boolean {
  const place = item.places[0]!;
  const n = place.kind === 'next' ? per * (p.amount(place.amount) ?? 1) : per;
  const site = stitchSite(stitchId(item.stitch, null, p.prevailing), item.stitch.base ?? 't1');
  for (let k = 0; k < n; k++) {
    if (!p.make(site, 1, NOWHERE)) {
      p.problem('too-many-stitches', item, { limit: MOST_STITCHES });
      return false;
    }
    p.madeAt = -2;
  }
  return true;
}

/** Work into a chain that the row itself has just made: a picot, a petal. */
function ownChain(p: Progress, item: Work, per: number, nth: number): boolean {
  const base = item.stitch.base ?? p.prevailing;
  if (p.pending === 0) {
    const closing = base === 'slip' && p.made.length > 0;
    if (closing) return true;
    return p.problem('place-does-not-exist', item, { noun: 'ch', wanted: nth, found: 0, left: 0, have: 0 });
  }
  const used = Math.min(Math.max(1, nth), p.pending);
  p.pending -= used;
  if (base === 'slip') return picot(p, used);
  return p.make(stitchSite(stitchId(item.stitch, item.places[0]!, p.prevailing), base), per, NOWHERE);
}

/** "in 4th ch from hook": on a foundation chain the chains before it are the edge. */
function fromHook(p: Progress, item: Work, per: number, k: number): boolean {
  if (!p.bare || p.made.length > 0 || p.pos > 0) return ownChain(p, item, per, k);
  if (k < 1 || k > p.below.length) {
    return p.problem('place-does-not-exist', item, {
      noun: 'ch',
      wanted: k,
      found: p.below.length,
      left: p.below.length,
      have: p.below.length,
    });
  }
  const base = item.stitch.base ?? p.edgeBase ?? p.prevailing;
  const own = item.places[0];
  const said = own?.kind === 'from-hook' ? own.counts : null;
  p.firstUsed = k - 1;
  const edge = edgeChains(k, said ?? p.edgeSaid, base, p.round, p.env, p.figures, p.forced);
  if (edge.odd) {
    p.note('edge-chain-unclear', item.places[0] ?? item, {
      chain: k,
      stitch: base,
      skipped: k - 1,
      rest: k - 1 - height(base),
    });
  }
  p.edgeAssumed = edge.assumed
    ? { chains: k - 1, stitch: edge.base, counts: edge.counts, from: item.from, to: item.to }
    : null;
  if (edge.counts) p.made.push(turningStitch(edge.base, edge.base, k - 1));
  else if (!p.round && edge.space === 0 && k > 1) p.made.push(turningChain(k - 1));
  if (edge.space > 0) p.made.push(spaceSite(edge.space, true));
  if (p.env.trace) while (p.into.length < p.made.length) p.into.push(NOWHERE);
  p.advance(k - 1);
  p.last = k - 1;
  p.madeAt = -2;
  const place = item.places[0]!;
  return makeIn(p, item, place, k - 1, per);
}

/** "work 60 sc evenly across", "dec 6 sts evenly around": a total, spread by the maker. */
function evenly(p: Progress, item: Work, per: number, place: Extract<Place, { kind: 'evenly' }>): boolean {
  if (place.nouns.some((noun) => noun.kind === 'row-end')) p.layRowEnds();
  const keep = place.stop?.kind === 'before-last' ? (p.amount(place.stop.amount) ?? 0) : 0;
  let to = p.below.length;
  for (let k = 0; k < keep; k++) {
    to -= 1;
    while (to > p.pos && !p.owed(p.below[to]!)) to -= 1;
  }
  let have = 0;
  for (let i = p.pos; i < to; i++) if (p.owed(p.below[i]!)) have += 1;
  const ref = item.stitch;
  const change =
    ref.form === 'inc'
      ? per * ((ref.parts ?? 2) - 1)
      : ref.form === 'dec' || ref.together > 1
        ? -per * (Math.max(2, ref.together) - 1)
        : null;
  const n = change === null ? per : have + change;
  if (n < 0)
    return p.problem('place-does-not-exist', item, {
      noun: nounId(place.nouns[0]),
      wanted: -2 * (change ?? 0),
      found: have,
      left: have,
      have,
    });
  const base = ref.base ?? p.prevailing;
  p.pos = Math.max(p.pos, to);
  p.inner = 0;
  p.madeAt = -2;
  for (let k = 0; k < n; k++) {
    p.madeAt = -2;
    if (!p.make(stitchSite(base, base), 1, NOWHERE)) return false;
  }
  return true;
}
