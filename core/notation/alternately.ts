/**
 * Reads stitches worked by turns: "sc, dc alternately across", "alternate sc and dc to end". They are a repeat
 * that names no mark. What goes by turns is only what stands side by side and goes into the next stitches.
 */
import type { Cursor } from './cursor.ts';
import { one } from './numbers.ts';
import { readStop, toTheEnd } from './stops.ts';
import { readTimes } from './times.ts';
import type { Item, Place, Repeat, Stop, Times, Work } from './tree.ts';
import { impliedPlace, readWork } from './work.ts';

const BEFORE = [
  'work alternately',
  'alternately work',
  'alternately',
  'alternating between',
  'alternating',
  'alt between',
  'alt',
];

/** Into the next stitch, or stitches, without a word of where. */
function implied(item: Item): item is Work {
  return item.type === 'work' && item.places.every((place) => place.kind === 'next' && place.implied);
}

function byTurns(items: readonly Item[], times: Times, to: number): Repeat {
  return { type: 'repeat', items, mark: 'bracket', times, last: null, from: items[0]!.from, to };
}

/** How far, or how often, it goes on: to the end where nothing is said. */
function readReach(c: Cursor): Times {
  const start = c.at;
  const stop = readStop(c);
  if (stop) return { kind: 'to', stop, ...c.span(start) };
  const often = readTimes(c);
  if (often) return { kind: 'times', amount: often.amount, more: false, ...c.span(start) };
  return { kind: 'to', stop: toTheEnd(c), ...c.here() };
}

/** "… sc, dc alternately across": the stitches right before it, by turns. */
function readBehind(c: Cursor, before: readonly Item[]): Item[] | null {
  let first = before.length;
  while (first > 0 && (implied(before[first - 1]!) || before[first - 1]!.type === 'skip')) {
    const next = before[first];
    if (next && /[;.]/u.test(c.text.slice(before[first - 1]!.to, next.from))) break;
    first -= 1;
  }
  const items = before.slice(first);
  if (items.length < 2) return null;
  const start = c.at;
  c.at += 1;
  const times = readReach(c);
  (before as Item[]).length = first;
  return [byTurns(items, times, c.span(start).to)];
}

/** The last stitch said, with the reach that its words took for a place: "1 dc across". */
function partReach(c: Cursor, work: Work): { work: Work; stop: Stop } | null {
  const place = work.places[0]!;
  if (work.places.length > 1 || place.kind !== 'across' || place.every > 1) return null;
  const next: Place = {
    ...impliedPlace(c, work.amount, place.loop),
    from: work.stitch.to,
    to: work.stitch.to,
  };
  return { work: { ...work, amount: one(c), places: [next] }, stop: place.stop };
}

/** "alternate sc and dc to end", "work alternately 1 sc and 1 dc across": the stitches behind it, by turns. */
function readAhead(c: Cursor): Item[] | null {
  return c.attempt(() => {
    if (!c.eatAny(BEFORE)) return null;
    c.eatAny(['work', 'working', 'making', ':']);
    const items: Work[] = [];
    while (items.length < 12) {
      const got = c.attempt(() => {
        if (items.length > 0 && !c.eatAny([', and', ', then', ',', 'and', 'then', '&', 'with'])) return null;
        const work = readWork(c);
        return work === null || Array.isArray(work) ? null : work;
      });
      if (!got) break;
      const part = partReach(c, got);
      if (part) {
        items.push(part.work);
        const { from, to } = part.stop;
        return items.length < 2 ? null : [byTurns(items, { kind: 'to', stop: part.stop, from, to }, to)];
      }
      if (!implied(got)) return null;
      items.push(got);
    }
    if (items.length < 2) return null;
    const { to } = items.at(-1)!;
    const times = readReach(c);
    return [byTurns(items, times, Math.max(to, times.to))];
  });
}

/** Stitches by turns, with the word before or behind them; null where that is not what the words say. */
export function readAlternately(c: Cursor, before: readonly Item[]): Item[] | null {
  if (c.is('alternately')) {
    const behind = readBehind(c, before);
    if (behind) return behind;
  }
  return c.isAny(BEFORE) ? readAhead(c) : null;
}
