/**
 * From words to sites: finds each place that a phrase names and hands it to whoever makes the stitch. Open ends
 * are fitted elsewhere; nothing is made here.
 */
import type { Noun, Place } from '../notation/tree.ts';
import { edgeCorner } from './corners.ts';
import {
  missing,
  passOver,
  take,
  takeFirst,
  takeGap,
  takeGapBefore,
  takeInUnit,
  takeLast,
  takeMarked,
  takeSame,
  takeTurningChain,
} from './places.ts';
import { NOWHERE, type Progress } from './progress.ts';
import type { Site } from './site.ts';

/**
 * Finds each place that `place` names (no open ends here) and calls `make` with it. `each` is how many sites
 * one making takes (stitches worked together).
 */
export function reachEach(
  p: Progress,
  place: Place,
  each: number,
  make: (index: number) => boolean,
): boolean {
  p.recording?.over([]);
  if (
    p.here !== null &&
    (p.hereAlways || place.kind === 'same' || (place.kind === 'next' && place.implied))
  ) {
    return make(p.here);
  }
  p.enter(place.part);
  const bridge = overBridge(p, place);
  if (bridge > 0) {
    for (let k = 0; k < bridge; k++) if (!make(NOWHERE)) return false;
    return true;
  }
  const only = (index: number | null): boolean => (index === null ? p.trials === 0 : make(index));
  switch (place.kind) {
    case 'next': {
      const n = p.amount(place.amount);
      if (n === null) return true;
      if (place.numbered !== undefined && !goTo(p, p.amount(place.numbered) ?? 1, place))
        return p.trials === 0;
      for (let k = 0; k < n; k++) {
        const index = edgeCorner(p, place.nouns) ?? takeEach(p, place.nouns, each, place);
        if (index === null) {
          if (p.trials > 0) return false;
          missing(p, place.implied ? p.words : place, place.nouns[0], n * each, k * each);
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
      const legs: Site[] = [];
      for (let k = 0; k < n; k++) {
        const index = takeFirst(p, place.noun, k, place);
        if (index === null) return p.trials === 0;
        legs.push(p.below[index]!);
        if ((k + 1) % each === 0 || (k === n - 1 && n < each)) {
          if (each > 1) p.recording?.over(legs.splice(0));
          if (!make(index)) return false;
        }
      }
      return true;
    }
    case 'last': {
      const n = p.amount(place.amount);
      if (n === null) return true;
      const corner = n === 1 ? edgeCorner(p, [place.noun]) : null;
      if (corner !== null) return make(corner);
      const indexes = takeLast(p, place.noun, n, place);
      if (indexes === null) return p.trials === 0;
      if (each > 1) p.recording?.over(indexes.map((index) => p.below[index]!));
      for (const index of each > 1 ? indexes.slice(-1) : indexes) if (!make(index)) return false;
      return true;
    }
    case 'nth': {
      const n = p.amount(place.nth);
      if (n === null) return true;
      // At the row's start "2nd dc" is the row's second, whatever the turning chain stands on.
      const starts = p.made.every((site) => site.turning) && place.noun.kind !== 'chain' && n > 1;
      if (starts) return only(takeFirst(p, place.noun, n - 1, place));
      let index: number | null = null;
      // "Ch 3 (counts as dc), dc in next 2 sts, 2 dc in 4th st": the row's fourth, which is the next.
      const goesOn = n > 1 && place.noun.kind !== 'chain' && usedUp(p) === n - 1;
      const from = p.pos;
      for (let k = goesOn ? n - 1 : 0; k < n; k++) index = take(p, [place.noun], place);
      // Only a chain leads over stitches as a matter of course.
      const silent = !goesOn && p.pending === 0 && place.noun.kind !== 'chain' && index !== null;
      if (silent && !passOver(p, from, index!, place.noun, place)) return false;
      if (index === null && p.trials === 0) missing(p, place, place.noun, n, 0);
      return only(index);
    }
    case 'turning-chain': {
      // In rows "beg ch-6" is the chain that the row below began with, even when the work has passed it.
      if (place.beginning && !p.below.slice(p.round ? p.pos : 0).some((site) => site.turning)) {
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
      if (place.nth !== undefined) {
        // The others keep their numbers: "dc in 2nd skipped ch, dc in first skipped ch".
        const nth = place.nth === 'last' ? waiting.length : (p.amount(place.nth) ?? 1);
        const at = waiting[nth - 1];
        return at === undefined ? only(missing(p, place, place.noun, nth, waiting.length)) : make(at);
      }
      if (place.below > 0 && waiting.length < n) {
        for (let k = 0; k < n; k++) {
          const over = standOver(p);
          if (over === null) return only(missing(p, place, place.noun, n, k));
          if (!make(over)) return false;
        }
        return true;
      }
      if (waiting.length < n) return only(missing(p, place, place.noun, n, waiting.length));
      for (let k = 0; k < n; k++) if (!make(waiting[k]!)) return false;
      p.skipped = waiting.slice(n);
      return true;
    }
    case 'marked':
      return only(takeMarked(p, place));
    case 'between': {
      if (place.before) return only(takeGapBefore(p, place.noun, place));
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

/** "In sts 4-6": on to the stitch of that number. One that is behind the hook is told, and the next is taken. */
function goTo(p: Progress, number: number, place: Extract<Place, { kind: 'next' }>): boolean {
  const gone = usedUp(p);
  if (gone >= number) {
    const left = p.stitchesAhead();
    const data = { noun: 'st', wanted: 1, found: 0, left, have: p.stitchesAhead(0) };
    return p.problem('place-does-not-exist', place, { ...data, used: number, next: gone + 1 });
  }
  let at = p.pos;
  for (let left = number - gone; at < p.below.length; at++) if (p.owed(p.below[at]!) && --left === 0) break;
  if (at >= p.below.length) {
    missing(p, place, place.nouns[0], number, p.stitchesAhead(0));
    return false;
  }
  if (!passOver(p, p.pos, at, place.nouns[0], place)) return false;
  if (at > p.pos) p.advance(at - 1);
  return true;
}

/** How many chains of the row's own, between two parts, the place names; 0 = it names none. */
export function overBridge(p: Progress, place: Place): number {
  if (p.bridge === 0 || (place.kind !== 'next' && place.kind !== 'across')) return 0;
  if (!place.nouns.every((noun) => noun.kind === 'chain' || noun.kind === 'loop-of-chain')) return 0;
  return place.kind === 'across' ? p.bridge : Math.min(p.bridge, p.amount(place.amount) ?? 0);
}

function takeEach(p: Progress, nouns: readonly Noun[], each: number, place: Place): number | null {
  // A hole in the middle of a ring takes any number of stitches.
  if (p.below.length === 1 && p.below[0]!.kind === 'ring') return 0;
  let index: number | null = null;
  const legs: Site[] | null = p.recording === null ? null : [];
  let chain: number | null = null;
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
    legs?.push(p.below[index]!);
    if (legs !== null) chain = chainOf(p, nouns, index);
  }
  if (legs !== null) p.recording?.over(legs, chain);
  return index;
}

/** Which chain of a space has just been taken, when the words go chain by chain. */
function chainOf(p: Progress, nouns: readonly Noun[], index: number): number | null {
  const site = p.below[index]!;
  const chainwise =
    nouns.some((noun) => noun.kind === 'chain' || noun.kind === 'loop-of-chain') &&
    !nouns.some((noun) => noun.kind === 'space');
  if (!chainwise || site.kind !== 'space') return null;
  return p.pos === index ? p.inner : site.chains;
}

/** What a long stitch into a skipped one lower down stands over: the chain that bridges it, or else a stitch. */
function standOver(p: Progress): number | null {
  p.uncover();
  const index = p.below[p.pos]?.kind === 'space' ? p.pos : nextOwed(p);
  if (index < 0) return null;
  p.advance(index);
  p.intoSpace = false;
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

/** Stitches of the row below that lie behind the hook. */
function usedUp(p: Progress): number {
  let used = 0;
  for (let i = 0; i < p.pos; i++) if (p.owed(p.below[i]!)) used += 1;
  return used;
}
