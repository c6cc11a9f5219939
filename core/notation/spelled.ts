/**
 * Reads a stitch told loop by loop: "(insert hook in next st, yo, pull up a loop) twice, yo, pull through all 3
 * loops". What the loops come to is one stitch that gathers so many; how it is named is not asked.
 */
import type { BaseStitch } from '../trade/stitches.ts';
import { type Cursor, OPENING } from './cursor.ts';
import { anyStitch } from './nouns.ts';
import { one, readAmount } from './numbers.ts';
import { readPlace } from './places.ts';
import { readTimes } from './times.ts';
import type { Item, Place } from './tree.ts';

const YARN_OVER = [
  'yo',
  'yoh',
  'yrh',
  'yarnover',
  'yarn over hook',
  'yarn over',
  'yarn round hook',
  'wrap yarn',
];
export const LOOP = ['loops', 'loop', 'lps', 'lp'];
export const HOOK = ['on the hook', 'on your hook', 'on hook'];

/** One leg, or several alike: what has been drawn up and where. */
interface Leg {
  /** Yarn overs before the hook goes in. */
  readonly overs: number;
  /** Times two loops are closed while the leg is made. */
  readonly closed: number;
  readonly place: Place;
  readonly legs: number;
  /** All legs lie in one place. */
  readonly together: boolean;
}

function between(c: Cursor): void {
  while (c.eatAny([',', ';', '.', 'and then', 'then', 'and', '&', 'again']) !== null);
}

function yarnOver(c: Cursor): number {
  if (!c.eatAny(YARN_OVER)) return 0;
  return c.eatAny(['twice', '2 times', '2x']) ? 2 : c.eatAny(['3 times', 'three times']) ? 3 : 1;
}

/** "draw up a loop". */
function drawUp(c: Cursor): boolean {
  return (
    c.attempt(() => {
      if (!c.eatAny(['pull up', 'draw up', 'pull', 'draw'])) return null;
      c.eatAny(['a', 'the', 'up a', 'through a', 'yarn through', 'one', '1']);
      if (c.eatAny(LOOP)) {
        c.eatAny(['through st', 'through the st', 'through']);
        return true;
      }
      return c.tokens[c.at - 1]?.word === 'through' ? true : null;
    }) ?? false
  );
}

/** "yo, pull through 2 loops": how many loops; 0 = all that there are; null = nothing of the kind. */
export function drawThrough(c: Cursor): number | null {
  return c.attempt(() => {
    const over = yarnOver(c) > 0;
    between(c);
    const drawn = c.eatAny(['pull', 'draw', 'bring', 'go', 'pass']) !== null;
    if (!over && !drawn) return null;
    c.eatAny(['yarn', 'the yarn', 'hook', 'up']);
    if (!c.eatAny(['through', 'thru', 'off'])) return null;
    const all = c.eatAny(['all of the', 'all of', 'all the', 'all', 'the', 'both']);
    c.eatAny(['rem', 'first']);
    const amount = readAmount(c, false);
    c.eat('rem');
    if (!c.eatAny(LOOP)) return null;
    c.eatAny(['left', 'rem']);
    c.eatAny(HOOK);
    if (all === 'both') return 2;
    return amount?.kind === 'one' ? amount.value : all !== null ? 0 : null;
  });
}

/** "(yo, pull through 2 loops) twice": how often two loops are closed here. */
function closings(c: Cursor): number | null {
  const close = c.word() in OPENING ? c.partner[c.at]! : -1;
  if (close < 0 || close >= c.end) return drawThrough(c) === 2 ? 1 : null;
  return c.attempt(() => {
    c.at++;
    if (c.within(close, () => drawThrough(c)) !== 2 || c.at !== close) return null;
    c.at = close + 1;
    const often = readTimes(c, true);
    return often?.amount.kind === 'one' ? Math.min(often.amount.value, 9) : null;
  });
}

/** One leg without what closes the stitch. */
function leg(c: Cursor): Omit<Leg, 'legs' | 'together'> | null {
  return c.attempt(() => {
    const overs = yarnOver(c);
    between(c);
    const inserted = c.eatAny(['insert hook', 'insert the hook', 'insert your hook', 'insert']) !== null;
    let place: Place | null = null;
    if (inserted) {
      place = readPlace(c);
      if (place === null) return null;
      between(c);
      yarnOver(c);
      between(c);
    }
    if (!drawUp(c)) return null;
    place ??= readPlace(c);
    if (place === null) return null;
    let closed = 0;
    for (let n = 0; n < 6; n++) {
      const pairs = c.attempt(() => {
        between(c);
        return closings(c);
      });
      if (!pairs) break;
      closed += pairs;
    }
    return { overs, closed, place };
  });
}

/** How many places "each of next 2 sts" is. */
function placesIn(place: Place): number | null {
  if (!('amount' in place)) return place.kind === 'same' ? 1 : null;
  return place.amount.kind === 'one' ? place.amount.value : null;
}

/** Legs alike in brackets, with how often; or one leg, or one for each of several stitches. */
function legs(c: Cursor): Leg | null {
  return c.attempt(() => {
    const starred = c.eat('*');
    const close = c.word() in OPENING ? c.partner[c.at]! : -1;
    if (starred || (close > 0 && close < c.end)) {
      if (!starred) c.at++;
      const made = starred ? leg(c) : c.within(close, () => leg(c));
      if (made === null) return null;
      between(c);
      if (!starred) {
        if (c.at !== close) return null;
        c.at = close + 1;
      } else if (!c.eatAny(['rep from *', '* rep from *', '* rep'])) return null;
      const often = readTimes(c, true);
      if (often?.amount.kind !== 'one') return null;
      // "Twice in next st": the legs lie in one place.
      const shared = c.attempt(() => (c.isAny(['in', 'into']) ? readPlace(c) : null));
      const times = often.amount.value + (starred || often.said === 'more' ? 1 : 0);
      const here = made.place.kind === 'same' || shared !== null;
      // "in next st …) 4 times in same st": the same as the first leg's.
      const place = shared === null || shared.kind === 'same' ? made.place : shared;
      return { ...made, place, legs: times, together: here };
    }
    const made = leg(c);
    if (made === null) return null;
    const again = c.attempt(() => {
      // "…, rep 4 more times in same st"
      between(c);
      if (!c.eatAny(['rep this', 'rep', 'do this'])) return null;
      const often = readTimes(c, true);
      if (often?.amount.kind !== 'one') return null;
      const shared = c.attempt(() => (c.isAny(['in', 'into']) ? readPlace(c) : null));
      if (shared !== null && shared.kind !== 'same') return null;
      return { times: often.amount.value + (often.said === 'more' ? 1 : 0), together: shared !== null };
    });
    if (again) return { ...made, legs: again.times, together: again.together };
    const n = placesIn(made.place);
    return n === null || n < 1 ? null : { ...made, legs: n, together: false };
  });
}

/** Two loops closed once more than it has yarn overs: nothing is left on the hook. */
function isWhole(first: Leg): boolean {
  return first.legs === 1 && first.overs > 0 && first.closed === first.overs + 1;
}

/** Height by the yarn overs before the hook goes in; null where the closing does not go with them. */
function heightOf(first: Leg): BaseStitch | null {
  const pairs = first.closed - (isWhole(first) ? 1 : 0);
  if (first.overs === 0) return pairs === 0 ? 't1' : null;
  if (first.overs === 1) return pairs === 0 ? 't2' : pairs === 1 ? 't3' : null;
  return first.overs === 2 && pairs === 2 ? 't4' : null;
}

/** A stitch told loop by loop, or null. Nothing is read where the words stop before the last loop is drawn through. */
export function readSpelled(c: Cursor): Item[] | null {
  if (!c.isAny(STARTS, c.word() in OPENING || c.word() === '*' ? 1 : 0)) return null;
  return c.attempt(() => {
    const start = c.at;
    const first = legs(c);
    if (first === null) return null;
    const base = heightOf(first);
    if (base === null) return null;
    let { legs: n, together } = first;
    let closed = isWhole(first);
    for (let k = 0; k < 8 && !closed; k++) {
      between(c);
      const through = drawThrough(c);
      if (through !== null) {
        closed = true;
        break;
      }
      const more = legs(c);
      if (more === null || more.overs !== first.overs || more.closed !== first.closed) return null;
      if (more.place.kind === 'same') together = true;
      n += more.legs;
    }
    if (!closed || n < 1 || n > 20) return null;
    const span = c.span(start);
    const gathers = n > 1 && !together;
    const here = { from: span.from, to: span.from };
    const stitch = {
      form: together && n > 1 ? ('cluster' as const) : ('plain' as const),
      base,
      post: first.place.post,
      together: gathers ? n : 1,
      parts: together && n > 1 ? n : null,
      special: null,
      beginning: false,
      half: false,
      ...span,
    };
    const { loop, below, post } = first.place;
    const place: Place = gathers
      ? {
          kind: 'next',
          amount: { kind: 'one', value: 1, ...here },
          nouns: [anyStitch(c)],
          every: 1,
          implied: true,
          loop,
          post,
          below,
          from: span.to,
          to: span.to,
        }
      : first.place;
    return [{ type: 'work', stitch, amount: one(c), places: [place], over: null, ...span }];
  });
}

const STARTS = [...YARN_OVER, 'insert', 'pull up', 'draw up', 'pull a', 'draw a'];
