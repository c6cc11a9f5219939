/**
 * Reads Tunisian rows: loops drawn up on the way out ("pull up a loop in each ch across"), and the way back, which
 * closes them one by one and makes nothing. The stitches by their names ("tss") are read in `words`.
 */
import { type Cursor, OPENING } from './cursor.ts';
import { anyStitch } from './nouns.ts';
import { one } from './numbers.ts';
import { readPlaces } from './places.ts';
import { readBracketCountAhead } from './row-counts.ts';
import type { Item, Place, StitchRef, Work } from './tree.ts';
import { isTunisian } from './tunisian-words.ts';
import { readStitch } from './words.ts';

const RETURNS = [
  'return pass',
  'return row',
  'return',
  'retp',
  'ret pass',
  'retpass',
  'rtp',
  'rp',
  'work return pass',
  'work a return pass',
  'work the return pass',
  'work return',
  'closing pass',
  'reverse pass',
];
const FORWARD = ['forward pass', 'forward row', 'forward', 'fwp', 'fwd', 'forp'];
const UP = ['pull up', 'draw up', 'pick up', 'pull', 'draw'];
const LOOP = ['lps', 'lp'];
const YARN_OVER = ['yo', 'yoh', 'yrh', 'yarnover', 'yarn over hook', 'yarn over', 'yarn round hook'];
const ref = (at: number): StitchRef => ({
  form: 'tunisian',
  base: 't1',
  post: null,
  together: 1,
  parts: null,
  special: null,
  beginning: false,
  half: false,
  from: at,
  to: at,
});

function workIn(c: Cursor, start: number, places: readonly Place[]): Work {
  const span = c.span(start);
  return { type: 'work', stitch: ref(span.from), amount: one(c), places, over: null, ...span };
}

/** "pull up a loop in each ch across", "insert hook in next ch, yo and pull up a loop". */
function readLoops(c: Cursor): Work | null {
  return c.attempt(() => {
    const start = c.at;
    if (c.eatAny(['insert hook', 'insert the hook', 'insert'])) {
      const places = readPlaces(c);
      if (!places) return null;
      c.eatAny([',', ';']);
      c.eatAny(['and', 'then']);
      c.eatAny(YARN_OVER);
      c.eatAny([',', ';']);
      c.eatAny(['and', 'then']);
      if (!c.eatAny(UP)) return null;
      c.eatAny(['a', 'up a', 'one', 'the']);
      if (!c.eatAny(LOOP)) return null;
      return workIn(c, start, places);
    }
    if (!c.eatAny(UP)) return null;
    c.eatAny(['a', 'one', '#']);
    if (!c.eatAny(LOOP)) return null;
    const places = readPlaces(c);
    return places ? workIn(c, start, places) : null;
  });
}

/** "Return pass: yo, pull through 1 loop, *yo, pull through 2 loops; rep from * across": all of it, up to the row's count. */
function readReturn(c: Cursor): Item | null {
  return c.attempt(() => {
    const start = c.at;
    c.attempt(() => {
      if (!c.eatAny(['row', 'rnd'])) return null;
      return c.peek()?.kind === 'number' ? c.at++ >= 0 : null;
    });
    const wrapped = c.word() in OPENING && c.isAny(RETURNS, 1);
    if (wrapped) c.at++;
    if (!c.eatAny(RETURNS)) return null;
    if (wrapped && !c.eatAny([')', ']'])) return null;
    while (!c.done) {
      if (c.word() in OPENING && readBracketCountAhead(c)) break;
      if (c.word() === '.' && c.isAny(['fasten', 'bind', 'do not', 'change', 'with'], 1)) break;
      c.at++;
    }
    return { type: 'aside', ...c.span(start) };
  });
}

/** The loops of a Tunisian row, its way back, or what names the way out; null for anything else. */
export function readTunisian(c: Cursor): Item[] | null {
  if (!isTunisian(c)) return null;
  const back = readReturn(c);
  if (back) return [back];
  const loops = readLoops(c);
  if (loops) return [loops];
  // "sl st in each st across as for tks": how the hook goes in.
  const manner = c.attempt((): Item | null => {
    const start = c.at;
    if (!c.eatAny(['as for', 'as if to work', 'as if working', 'as if for', 'as in'])) return null;
    c.eatAny(['a', 'the']);
    return readStitch(c) ? { type: 'aside', ...c.span(start) } : null;
  });
  if (manner) return [manner];
  return c.attempt(() => {
    const start = c.at;
    if (c.eatAny(FORWARD)) {
      c.eat(':');
      return [{ type: 'aside', ...c.span(start) }];
    }
    // "end st", "work last st": the edge is taken up whatever it is called.
    c.eatAny(['work', 'with', 'end with']);
    if (!c.eatAny(['end st', 'edge st', 'last st', 'end stitch'])) return null;
    if (!(c.done || c.peek()!.kind === 'sign')) return null;
    const span = c.span(start);
    const last: Place = {
      kind: 'last',
      amount: one(c),
      noun: anyStitch(c),
      loop: null,
      post: null,
      below: 0,
      ...span,
    };
    return [{ ...workIn(c, start, [last]), ...span }];
  });
}
