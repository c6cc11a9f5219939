/**
 * Reads stitches that the words gather into one: "leaving last loop of each on hook, 3 dc in next st, yo and draw
 * through all loops" is a cluster, "5 dc in next st, drop loop from hook, insert hook in first dc, draw loop through"
 * a popcorn. Loops drawn up one by one are the business of `spelled`.
 */
import type { Cursor } from './cursor.ts';
import { anyStitch } from './nouns.ts';
import { one } from './numbers.ts';
import { drawThrough, HOOK, LOOP } from './spelled.ts';
import type { Item, Place, StitchRef, Work } from './tree.ts';
import { readStitch } from './words.ts';
import { readWork } from './work.ts';

const HOLD = [
  'leave the last',
  'leave last',
  'leave one',
  'holding back the last',
  'holding back last',
  'hold back last',
  'holding the last',
  'holding last',
  'keeping the last',
  'keeping last',
  'keep last',
  'retaining last',
  'retaining the last',
];

/** "leaving last loop of each dc on hook". */
function heldBack(c: Cursor): true | null {
  return c.attempt(() => {
    if (!c.eatAny(HOLD) || !c.eatAny(LOOP)) return null;
    const each = c.attempt(() => {
      if (!c.eatAny(['of each', 'of every', 'from each', 'for each', 'of'])) return null;
      if (!readStitch(c)) c.eatAny(['sts', 'st']);
      return true;
    });
    return c.eatAny(HOOK) || each ? true : null;
  });
}

function separate(c: Cursor): void {
  while (c.eatAny([',', ';', 'and then', 'then', 'and', 'work', 'make']) !== null);
}

/** How many stitches the work is, and whether they lie in one place; null where that is not one number. */
function gatheredOf(work: Work): { n: number; together: boolean } | null {
  const place = work.places[0];
  if (work.places.length !== 1 || place === undefined || work.stitch.form !== 'plain') return null;
  if (work.stitch.base === null || work.stitch.base === 'slip' || work.amount.kind !== 'one') return null;
  if (work.amount.value > 1) return { n: work.amount.value, together: true };
  if (place.kind !== 'next' || place.amount.kind !== 'one' || place.amount.value < 2) return null;
  return { n: place.amount.value, together: false };
}

/** The work as the one stitch that it comes to. */
function asOne(work: Work, form: 'cluster' | 'popcorn', c: Cursor, start: number): Work | null {
  const of = gatheredOf(work);
  if (of === null || of.n > 20) return null;
  const span = c.span(start);
  const stitch: StitchRef = of.together
    ? { ...work.stitch, form, parts: of.n }
    : { ...work.stitch, together: of.n };
  const place = work.places[0] as Extract<Place, { kind: 'next' }>;
  const places: readonly Place[] = of.together
    ? work.places
    : [{ ...place, amount: one(c), nouns: [anyStitch(c)], implied: true }];
  return {
    ...work,
    stitch,
    amount: { kind: 'one', value: 1, from: work.amount.from, to: work.amount.to },
    places,
    ...span,
  };
}

/** "leaving last loop of each on hook, work 3 dc in next st, yo and draw through all 4 loops". */
export function readHeldBack(c: Cursor): Item[] | null {
  if (!c.isAny(HOLD)) return null;
  return c.attempt(() => {
    const start = c.at;
    if (!heldBack(c)) return null;
    separate(c);
    const work = readWork(c);
    if (!work || Array.isArray(work)) return null;
    separate(c);
    if (drawThrough(c) === null) return null;
    const made = asOne(work, 'cluster', c, start);
    return made === null ? null : [made];
  });
}

const DROPS =
  /^[\s,;.]*(?:then )?(?:drop|remove|take)\b[^()[\]{}*]{0,130}?\b(?:through|thru)\b(?: (?:it|the st|first st|first dc|first tr|top of first dc))?/iu;

/** What gathers the stitches just read, behind them; null where nothing does. */
export function gatheredBehind(c: Cursor, work: Work, start: number): Work | null {
  if (gatheredOf(work) === null) return null;
  const held = c.attempt(() => {
    c.eat(',');
    if (!heldBack(c)) return null;
    separate(c);
    return drawThrough(c) === null ? null : asOne(work, 'cluster', c, start);
  });
  if (held) return held;
  return c.attempt(() => {
    const from = c.tokens[c.at - 1]!.to;
    const found = DROPS.exec(c.text.slice(from, from + 180))?.[0];
    if (found === undefined || !/\bhook\b/iu.test(found) || !/\b(?:loop|lp)\b/iu.test(found)) return null;
    while (!c.done && c.peek()!.to <= from + found.length) c.at++;
    c.attempt(() =>
      c.eat(',') && c.eatAny(['ch 1 to close', 'ch 1 to secure', 'ch 1 closes popcorn']) ? true : null,
    );
    return asOne(work, 'popcorn', c, start);
  });
}
