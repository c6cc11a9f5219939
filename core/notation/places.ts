/**
 * Reads where the hook goes: "in next 2 sts", "in each st across", "in top of turning ch", "in 3rd dc of
 * next shell". It yields places in the order written and judges none of them.
 */

import { readBothEnds, readInBetween } from './both-ends.ts';
import { atRowEnd } from './closing.ts';
import { readBracketCount, readCountParts, readCountsAs, readSaid } from './counts.ts';
import { type Cursor, OPENING } from './cursor.ts';
import { anyStitch, eatAlong, eatWhose, readNoun, readNouns, readTurningChain } from './nouns.ts';
import { one, readAmount } from './numbers.ts';
import { readAtOpening } from './openings.ts';
import {
  type Bare,
  RINGS,
  readAcross,
  readBetween,
  readCenter,
  readEdge,
  readMarked,
  readNext,
  readNth,
  readPartOf,
  readSame,
  readSkipped,
  readSpaceFirst,
  readTopOf,
} from './place-kinds.ts';
import { type Draft, readLoop, readPart, readTail } from './place-tails.ts';
import { readStop, toTheEnd } from './stops.ts';
import type { Noun, Place, WhichOpening } from './tree.ts';
import { readStitch } from './words.ts';

/** "sts 4-6", "st 1": stitches by their number in the row below. */
function readNumbered(c: Cursor): Bare | null {
  return c.attempt(() => {
    if (!c.eatAny(['sts', 'st'])) return null;
    if (c.eatAny(['no', 'number', '♯'])) c.eat('.');
    const first = readAmount(c, false);
    if (first?.kind !== 'one' || first.value < 1) return null;
    const last = c.attempt(() => {
      const list = c.eatAny(['and', '&']) !== null;
      if (!list && !c.eatAny(['-', 'to', 'through'])) return null;
      const found = readAmount(c, false);
      return list && (found?.kind !== 'one' || found.value !== first.value + 1) ? null : found;
    });
    if (!(c.done || [',', ';', '.', ')', ']', '*', 'and', 'then', 'turn'].includes(c.word()))) return null;
    const value = last?.kind === 'one' ? last.value - first.value + 1 : 1;
    if (value < 1) return null;
    const amount = { kind: 'one', value, from: first.from, to: (last ?? first).to } as const;
    return { kind: 'next', amount, nouns: [anyStitch(c)], every: 1, implied: false, numbered: first };
  });
}

/** A place that starts with its own word (next, each, last …) or a bare noun when `bare`. */
function readCore(c: Cursor, bare: boolean, draft: Draft): Bare | null {
  c.eat('the');
  c.eat('very');
  if (bare && c.attempt(() => c.pass('a', 'an', 'your', 'this', 'center of the', 'center of').eatAny(RINGS)))
    return { kind: 'ring' };
  const numbered = bare ? readNumbered(c) : null;
  if (numbered) return numbered;
  const strict =
    readSame(c) ??
    readSkipped(c) ??
    readMarked(c) ??
    readBetween(c) ??
    readTopOf(c) ??
    readEdge(c) ??
    readNext(c) ??
    readNth(c) ??
    readCenter(c) ??
    readAcross(c, draft);
  if (strict || !bare) return strict;
  const own =
    c.attempt<Bare>(() => {
      // "beg sc", "beg cluster": the first such stitch.
      if (c.word() !== 'beg') return null;
      const noun = readNoun(c);
      return noun?.kind === 'named' ? { kind: 'first', amount: one(c), noun } : null;
    }) ??
    c.attempt<Bare>(() => {
      if (!c.eatAny(['ends of', 'end of', 'sides of', 'side of', 'edges of', 'edge of'])) return null;
      const at = c.at;
      c.eat('each of');
      if (!c.eatAny(['the next', 'next', 'the foll', 'foll'])) return null;
      const amount = readAmount(c) ?? one(c);
      if (!c.eatAny(['rows', 'row'])) return null;
      const rows: Noun = { kind: 'row-end', ...c.span(at) };
      eatAlong(c);
      return { kind: 'next', amount, nouns: [rows], every: 1, implied: false };
    });
  if (own) return own;
  return (
    c.attempt(() => {
      c.eat('corresponding');
      if (!c.eatAny(['place indicated', 'place', 'row below', 'st below', 'row directly below', 'rnd below']))
        return null;
      return { kind: 'next', amount: one(c), nouns: [anyStitch(c)], every: 1, implied: false };
    }) ??
    readPartOf(c) ??
    c.attempt(() => {
      const turning = readTurningChain(c);
      if (!turning || c.isAny(['sp', '- sp', 'lp'])) return null;
      return { kind: 'turning-chain', nth: null, beginning: turning.beginning };
    }) ??
    c.attempt(() => {
      c.eatAny(['any', 'a', 'an', 'this', 'that', 'corresponding']);
      const space = readSpaceFirst(c);
      const said = space ? null : readAmount(c);
      const amount = said ?? one(c);
      // "sc in 2, inc": the noun left out.
      const bareEnd = said !== null && (c.done || [',', '*', ')', ']', ';', '.'].includes(c.word()));
      const nouns = space ? [space] : (readNouns(c) ?? (bareEnd ? [anyStitch(c)] : null));
      if (!nouns) return null;
      const edge = nouns.every((noun) => ['row-end', 'loop-of-chain', 'seam'].includes(noun.kind));
      const stop = readStop(c);
      if (stop || edge) return { kind: 'across', nouns, every: 1, stop: stop ?? toTheEnd(c) };
      const bare = said === null ? ({ bare: true } as const) : {};
      return { kind: 'next', amount, nouns, every: 1, implied: false, ...bare };
    })
  );
}

const IN = [
  'in and around',
  'in',
  'on',
  'under',
  'through',
  'along',
  'over',
  'to',
  'at',
  'behind',
  'in front of',
];

/** Words of a post: "around post of", "around the stem of". */
const POST = [
  'around the post of',
  'around post of',
  'rnd the post of',
  'rnd post of',
  'around the stem of',
  'around stem of',
  'rnd stem of',
  'rnd the stem of',
  'around posts of',
  'around the posts of',
];

const BELOW_WHAT = ['next', 'the next', 'each', 'same', 'last', 'first', 'every'];

/** "third loop (behind the st) of each st": where that loop lies. */
function eatWhichLoop(c: Cursor): void {
  c.attempt(() => {
    const close = c.word() in OPENING ? c.partner[c.at]! : -1;
    if (close < 0 || close >= c.end - 1 || c.tokens[close + 1]!.word !== 'of') return null;
    if (!c.tokens.slice(c.at + 1, close).every(({ kind }) => kind === 'word')) return null;
    c.at = close + 1;
    return true;
  });
}

/** "Rnd 2" behind "front loops of". */
function namesRow(c: Cursor, draft: Draft): boolean {
  const row = c.attempt(() => (c.eatAny(['row', 'rnd']) ? readAmount(c, false) : null));
  if (row?.kind !== 'one') return false;
  draft.row = row.value;
  return true;
}

/** One place with what stands before and behind it; `bare` when a preposition stood before. */
function readPlaceFrom(c: Cursor, start: number, bare: boolean, preset: Partial<Draft>): Place | null {
  const draft: Draft = { loop: null, post: null, below: 0, ...preset };
  // "sl st in back of next sc": the stitch is the same, whatever side of it is taken.
  c.attempt(() =>
    c.eatAny(['back of', 'the back of']) && c.isAny(['next', 'each', 'same', 'first']) ? true : null,
  );
  const loop = c.attempt(() => {
    c.eat('any');
    const found = readLoop(c);
    if (!found) return null;
    eatWhichLoop(c);
    c.eatAny(['of the', 'of', 'in']);
    return found;
  });
  if (loop) draft.loop = loop;
  // "front loops of Rnd 2 around": all of them that an earlier row left.
  if (loop !== null && namesRow(c, draft))
    return {
      kind: 'across',
      nouns: [anyStitch(c)],
      every: 1,
      stop: readStop(c) ?? toTheEnd(c),
      ...draft,
      ...c.span(start),
    };
  if (c.eatAny(['front post of', 'the front post of'])) draft.post = 'front';
  else if (c.eatAny(['back post of', 'the back post of'])) draft.post = 'back';
  else if (c.eatAny(POST) || c.eatAny(['post of', 'the post of'])) draft.post ??= 'front';
  // "the st below next st", "st 2 rows below next st": a row further down.
  const below = c.attempt(() => {
    c.eat('the');
    const deep = c.attempt(() => {
      if (!c.eatAny(['st', 'sp'])) return null;
      const rows = readAmount(c, false);
      return rows?.kind === 'one' && c.eatAny(['rows below', 'row below', 'rnds below', 'rnd below'])
        ? rows.value
        : null;
    });
    if (deep !== null) return c.isAny(BELOW_WHAT) ? deep : null;
    if (
      !c.eatAny([
        'st directly below',
        'sp directly below',
        'row directly below',
        'st below',
        'sp below',
        'row below',
        'rnd below',
        'st under',
      ])
    )
      return null;
    return c.isAny(BELOW_WHAT) ? 1 : null;
  });
  if (below !== null) draft.below = below;
  const core = readCore(c, bare || loop !== null, draft);
  if (!core) {
    if (!loop) return null;
    const stop = readStop(c);
    if (stop) return { kind: 'across', nouns: [anyStitch(c)], every: 1, stop, ...draft, ...c.span(start) };
    return {
      kind: 'next',
      amount: one(c),
      nouns: [anyStitch(c)],
      every: 1,
      implied: true,
      ...draft,
      ...c.span(start),
    };
  }
  readTail(c, draft);
  if (core.kind === 'next' && (core.amount.kind !== 'one' || core.amount.value > 1)) {
    // "each of the 36 sts around": the number says how many; the end adds nothing.
    c.attempt(() => (c.isAny(['around post', 'around the']) || readStop(c)?.kind !== 'end' ? null : true));
  }
  // A stop may stand behind the tail: "each st of previous row across" is read; so is "next 2 sts across".
  return { ...core, ...draft, ...c.span(start) } as Place;
}

const AROUND_WHAT = [
  'next',
  'each',
  'the',
  'st',
  'same',
  'last',
  'first',
  'foll',
  'every',
  'corresponding',
  'marked',
  'dc',
  'tr',
  'fpdc',
  'bpdc',
  'fptr',
  'bptr',
  '#th',
  'second',
  'third',
  'fourth',
  'post',
  'skipped',
];

const OTHERS = ['in', 'in each of', 'in all of'].flatMap((to) =>
  [
    'the others',
    'all the others',
    'all others',
    'the other sts',
    'all the other sts',
    'all other sts',
    'others',
  ].map((which) => `${to} ${which}`),
);

/** "2 sc in every 4th st, sc in all others": the stitches that lie between those. */
function readOthers(c: Cursor): Place | null {
  return c.attempt(() => {
    const start = c.at;
    if (!c.eatAny(OTHERS) || c.isAny(['of'])) return null;
    const nouns = [anyStitch(c)];
    const stop = readStop(c) ?? toTheEnd(c);
    if (stop.kind !== 'end') return null;
    const draft: Draft = { loop: null, post: null, below: 0 };
    return { kind: 'across', nouns, every: 1, stop, others: true, ...draft, ...c.span(start) };
  });
}

/** One place at the position: with a preposition, or beginning with next, each, last … */
export function readPlace(c: Cursor): Place | null {
  return c.attempt(() => {
    const start = c.at;
    if (c.word() === '/' && c.isAny(['each', 'next', 'every', 'mr', 'ring', 'magic ring', 'st'], 1)) {
      // "2 sc/each st"
      c.at++;
      return readPlaceFrom(c, start, true, {});
    }
    const others = readOthers(c);
    if (others) return others;
    const evenly = readEvenly(c);
    if (evenly)
      return { ...evenly, loop: null, post: null, below: 0, ...roundOpening(c, start), ...c.span(start) };
    const part = readAroundPart(c);
    if (part) return { ...part, loop: null, post: null, below: 0, ...c.span(start) } as Place;
    const along = readAlongEdge(c);
    const edge = along === null ? readNamedEdge(c) : null;
    if (edge) return { ...edge, loop: null, post: null, below: 0, ...c.span(start) };
    if (along)
      return { ...along, loop: null, post: null, below: 0, ...roundOpening(c, start), ...c.span(start) };
    if (c.eatAny(POST)) return readPlaceFrom(c, start, true, { post: 'front' });
    if ((c.is('around') || c.is('rnd')) && c.isAny(AROUND_WHAT, 1)) {
      c.at++;
      return readPlaceFrom(c, start, true, {});
    }
    const round = c.attempt(() => {
      if (!c.eatAny(['around', 'rnd'])) return null;
      if (!c.isAny(['#', 'skipped', 'both', 'all', 'any', 'same'])) return null;
      return readPlaceFrom(c, start, true, {});
    });
    if (round) return round;
    if (c.is('across') && c.isAny(['next', 'each', 'the next', 'last', 'first', '#'], 1)) {
      c.at++;
      return readPlaceFrom(c, start, true, {});
    }
    const stop = c.attempt(() => {
      // "sl st to next st" goes into it; "sc to next corner" stops before it.
      if (c.isAny(['to next st', 'to the next st', 'to foll st'])) return null;
      const found = readStop(c);
      if (!found) return null;
      // "sc around in each st"
      const each = c.attempt(() => {
        const place = c.eat('in') && c.isAny(['each', 'every']) ? readPlaceFrom(c, start, true, {}) : null;
        return place?.kind === 'across' && found.kind === 'end' ? { ...place, stop: found } : null;
      });
      if (each) return each;
      const nouns = [anyStitch(c)];
      return { kind: 'across', nouns, every: 1, stop: found } as const;
    });
    if (stop && 'loop' in stop) return { ...stop, ...c.span(start) };
    if (stop) return { ...stop, loop: null, post: null, below: 0, ...c.span(start) };
    const told = c.attempt(() => {
      // "sc for 10 sts"
      if (!c.eat('for')) return null;
      const amount = readAmount(c);
      const noun = amount ? readNoun(c) : null;
      if (!amount || noun?.kind !== 'stitch' || !(c.done || c.peek()!.kind === 'sign')) return null;
      return { kind: 'next', amount, nouns: [noun], every: 1, implied: false } as const;
    });
    if (told) return { ...told, loop: null, post: null, below: 0, ...c.span(start) };
    // "7 dc from 2nd ch from hook": the chain that it goes into, named as the one it is counted from.
    if (c.is('from')) {
      return c.attempt(() => {
        c.eat('from');
        c.eat('the');
        const nth = readPlaceFrom(c, start, true, {});
        return nth?.kind === 'from-hook' ? nth : null;
      });
    }
    const preposition = c.eatAny(IN);
    if (preposition) {
      // "to" begins a place only for a slip stitch that travels: "sl st to next ch-sp".
      const place = readPlaceFrom(c, start, true, {});
      return place;
    }
    return readPlaceFrom(c, start, false, {});
  });
}

/** The opening named within the words read since `start`: "evenly around thumb opening". */
function roundOpening(c: Cursor, start: number): { readonly opening?: WhichOpening } {
  const behind = readAtOpening(c);
  const end = c.at;
  let opening: WhichOpening | null = behind;
  for (let at = start; at < end && opening === null; at++) {
    c.at = at;
    opening = readAtOpening(c);
  }
  c.at = end;
  return opening === null ? {} : { opening };
}

/** "around second leg", "along the ch", "across other side of ch": all of a part, or of a chain of the row's own. */
function readAroundPart(c: Cursor): (Bare & { readonly part?: string }) | null {
  return c.attempt(() => {
    c.eat('evenly');
    c.eat('all');
    if (!c.eatAny(['around', 'along', 'across', 'over', 'on'])) return null;
    const part = readPart(c);
    const nouns = part === null ? ownChain(c) : [anyStitch(c)];
    const next = c.peek();
    const ends = next === undefined || (next.kind === 'sign' && (next.gap || next.word !== '-'));
    if (nouns === null || !(ends || c.isAny(['and', 'then', 'turn']))) return null;
    return { kind: 'across', nouns, every: 1, stop: toTheEnd(c), ...(part === null ? {} : { part }) };
  });
}

function ownChain(c: Cursor): readonly Noun[] | null {
  const start = c.at;
  c.eat('the');
  const other = c.eatAny(['other side of', 'opposite side of', 'underside of']) !== null;
  c.eat('the');
  if (other) readAmount(c);
  if (!c.eatAny(['ch', 'chs', 'ch sts'])) return null;
  return [{ kind: other ? 'loop-of-chain' : 'chain', ...c.span(start) }];
}

const EDGES: readonly Noun['kind'][] = ['row-end', 'loop-of-chain', 'seam'];

/** "along side edge", "across row ends": an edge without "evenly". */
function readAlongEdge(c: Cursor): Bare | null {
  return c.attempt(() => {
    if (!c.eatAny(['across', 'along', 'up', 'down', 'around', 'over'])) return null;
    const whole = c.word() !== 'each';
    c.eatAny(['the', 'each', 'entire', 'all', 'first', 'second', 'next', 'other', 'left', 'right']);
    const nouns = readNouns(c);
    if (!nouns?.some((noun) => EDGES.includes(noun.kind))) return null;
    const stop = readStop(c) ?? toTheEnd(c);
    return { kind: 'across', nouns, every: 1, stop, ...(whole ? { whole: true as const } : {}) };
  });
}

/** What edges of a garment are called by. */
const EDGE_NAMES = [
  'right',
  'left',
  'front',
  'back',
  'neck',
  'neckline',
  'armhole',
  'lower',
  'upper',
  'bottom',
  'top',
  'shaped',
  'straight',
  'sloping',
  'side of neck',
  'hem',
  'cuff',
  'brim',
];

/** "up right front edge", "across back neck": an edge by its name, worked along as a whole. */
function readNamedEdge(c: Cursor): Bare | null {
  return c.attempt(() => {
    if (!c.eatAny(['across', 'along', 'around', 'up', 'down'])) return null;
    c.eatAny(['the', 'entire']);
    const start = c.at;
    while (c.at - start < 4 && c.eatAny(EDGE_NAMES));
    if (c.at === start) return null;
    const isNeck = c.tokens[c.at - 1]!.word.startsWith('neck');
    if (!c.eatAny(['edge', 'edges', 'opening']) && !isNeck) return null;
    const ends = c.done || c.peek()!.kind === 'sign' || c.isAny(['and', 'then', 'to', 'turn']);
    return ends ? { kind: 'evenly', nouns: [anyStitch(c)], stop: null } : null;
  });
}

/** "around top of cuff", "around neck opening", "along lower edge of body": which part of the piece that is. */
function eatOpening(c: Cursor): void {
  c.attempt(() => {
    c.eatAny(['the', 'entire', 'whole', 'each', 'outer', 'inner']);
    let parts = 0;
    while (parts < 4 && c.eatAny(OPENINGS)) parts++;
    if (parts === 0) return null;
    eatWhose(c);
    return c.done || c.peek()!.kind === 'sign' || c.isAny(['and', 'then', 'with', 'working']) ? true : null;
  });
}

const OPENINGS =
  'top bottom upper lower outer inner front back neck neckline armhole armholes opening edge edges hem brim cuff rim leg thumb wrist ankle blanket piece shawl square'.split(
    ' ',
  );

function readEvenly(c: Cursor): Bare | null {
  return c.attempt(() => {
    const even = c.attempt(() => (c.eat('even') && (c.done || c.peek()!.kind === 'sign') ? true : null));
    if (even === null && !c.eatAny(['evenly spaced', 'evenly'])) return null;
    // "evenly up front edge"
    const named = c.isAny(['up', 'down']) ? readNamedEdge(c) : null;
    if (named) return named;
    // "evenly across row ends" names what is worked along; "evenly across" only how far.
    const edge = c.attempt(() => {
      if (!c.eatAny(['across', 'along', 'around', 'over', 'in', 'up', 'down'])) return null;
      c.eatAny(['the', 'each', 'entire', 'all']);
      const nouns = readNouns(c);
      eatWhose(c);
      return nouns?.some((noun) => EDGES.includes(noun.kind)) ? nouns : null;
    });
    if (edge) return { kind: 'evenly', nouns: edge, stop: readStop(c) };
    const stopFirst = readStop(c);
    c.eatAny(['across', 'along', 'over', 'in', 'on', 'around', 'up', 'down']);
    c.eatAny(['the', 'each', 'entire', 'next']);
    const nouns = readNouns(c);
    c.eatAny(['of piece', 'of work', 'of the piece', 'of blanket']);
    if (nouns === null) eatOpening(c);
    const stop = stopFirst ?? readStop(c);
    return {
      kind: 'evenly',
      nouns: nouns ?? [anyStitch(c)],
      stop,
      ...(even === null ? {} : { plain: true }),
    };
  });
}

/** "in 8 skipped sts and 8 chs around": the chains over them are places as well, and not worked here. */
function chainsBeside(c: Cursor, places: readonly Place[]): Place | null {
  if (places.at(-1)?.kind !== 'skipped') return null;
  return c.attempt(() => {
    const start = c.at;
    c.eatAny(['in each of', 'in', 'each of']);
    c.eat('the');
    const amount = readAmount(c);
    if (amount === null || !c.eatAny(['chs', 'ch sts', 'ch'])) return null;
    const nouns: Noun[] = [{ kind: 'chain', ...c.span(start) }];
    c.attempt(() => (readStop(c)?.kind === 'end' ? true : null));
    const draft: Draft = { loop: null, post: null, below: 0 };
    readTail(c, draft);
    return { kind: 'next', amount, nouns, every: 1, implied: false, ...draft, ...c.span(start) };
  });
}

/** "in next st and in each st across": all the places of one stitch, or null when there is none. */
export function readPlaces(c: Cursor): Place[] | null {
  // "all in next st" gathers what stands before it: the reader of items does that.
  if (c.isAny(['all in', 'all at', 'both in'])) return null;
  // "sc-in next st"
  if (c.word() === '-' && !c.peek()!.gap && !c.peek(1)?.gap && c.isAny(['in', 'around'], 1)) c.at++;
  const ends = readBothEnds(c) ?? readInBetween(c);
  if (ends) return ends;
  const first = readPlace(c);
  if (!first) return null;
  const places = apart(c, first);
  while (places.length < 50) {
    saidBetween(c, places);
    const more = c.attempt(() => {
      const comma = c.eat(',');
      const and = c.eatAny(['and then', 'and', '&']) !== null;
      const chains = and ? chainsBeside(c, places) : null;
      if (chains) return chains;
      if (!and && !(comma && c.isAny(['in each', 'in next', 'in same', 'in last', 'in top', 'in first'])))
        return null;
      if (comma && !and && c.is('in next') && hasWork(c)) return null;
      const at = c.at;
      const begins = c.isAny(['in', 'over', 'on', 'under', 'around next', 'around post', 'around the post']);
      if (begins) {
        const place = readPlace(c);
        // "and in next sp work 3 dc" begins a group of its own.
        if (!place || c.isAny(['work', 'make']) || bringsWork(c, place)) return null;
        return c.is(':') && !countsBehind(c) ? null : place;
      }
      const across = readStop(c);
      if (across) {
        // "in 2nd ch from hook and across": into each from there on.
        if (across.kind === 'end' && !(c.done || c.peek()!.kind === 'sign' || c.is('turn'))) return null;
        return {
          kind: 'across',
          nouns: [anyStitch(c)],
          every: 1,
          stop: across,
          loop: null,
          post: null,
          below: 0,
          ...c.span(at),
        } as Place;
      }
      if (c.isAny(['ch', 'sk', 'turn', 'rep', 'join', 'work', 'end', 'sl', 'inc', 'dec'])) return null;
      const place = readPlaceFrom(c, at, false, {});
      if (!place || place.from === place.to || c.isAny(['work', 'make', 'in', 'unworked'])) return null;
      return place;
    });
    if (!more) return places;
    places.push(more);
  }
  return places;
}

/** ": 29 sc. Turn." behind "and in each ch across": what the row comes to, and no work for the place. */
function countsBehind(c: Cursor): boolean {
  const { at } = c;
  const facts = c.facts.length;
  c.at++;
  const count = readCountParts(c);
  const ends = count !== null && atRowEnd(c) && c.word() !== ',';
  c.at = at;
  c.facts.length = facts;
  return ends;
}

/** Is the bracket behind the place work for it, "(2 dc, ch 2, 2 dc)", and no count or remark of the whole row? */
function bringsWork(c: Cursor, place: Place): boolean {
  if (!(c.word() in OPENING)) return false;
  const at = c.at;
  const facts = c.facts.length;
  const inner = c.tokens[at + 1];
  const counted = readBracketCount(c) !== null;
  const ends = atRowEnd(c);
  c.at = at + 1;
  const said = !counted && (readSaid(c) ?? readCountsAs(c)) !== null;
  c.at = at + 1;
  const makes =
    inner?.kind === 'number' ||
    inner?.kind === 'figure' ||
    (inner !== undefined && inner.word in OPENING) ||
    c.isAny(['ch', 'sk', '*']) ||
    readStitch(c) !== null;
  c.at = at;
  c.facts.length = facts;
  if (counted) return place.kind === 'next' && !ends;
  return !said && makes;
}

const TOGETHER = /\b(?:and|&)\s[^,;]*?\b(?:sps|lps|spaces|loops|sts|stitches|chs|chains|dcs|scs)\b/iu;

/** "next dc and ch-1 sp", "next 2 dc and ch-1 sp": so many of the first and one of the other, two places. */
function apart(c: Cursor, place: Place): Place[] {
  if (place.kind !== 'next' || place.nouns.length !== 2 || place.every > 1) return [place];
  const [several, other] = place.nouns as [Noun, Noun];
  if (other.kind !== 'space' || several.kind === 'space') return [place];
  // "in st or sp indicated": either.
  if (!/\s(?:and|&)\s/iu.test(c.text.slice(place.from, place.to))) return [place];
  const single = place.amount.kind === 'one' && place.amount.value === 1;
  if (!single && TOGETHER.test(c.text.slice(place.from, place.to))) return [place];
  return [
    { ...place, nouns: [several], to: several.to },
    { ...place, nouns: [other], amount: one(c), from: other.from },
  ];
}

/** "(skipped ch count as a dc)" between two places of one stitch: said of the chains passed over. */
function saidBetween(c: Cursor, places: Place[]): void {
  const last = places.at(-1)!;
  if (last.kind !== 'from-hook' || !(c.word() in OPENING)) return;
  c.attempt(() => {
    const close = c.partner[c.at]!;
    if (close < 0 || close >= c.end) return null;
    c.at++;
    const inside = c.at;
    const counts = c.within(close, () => readSaid(c)?.convention.counts ?? readCountsAs(c));
    const told = counts !== null && c.at === close ? counts : null;
    c.at = inside;
    // "(counts as 2 dc)", "(first 2 dc made)" say what is so anyway.
    if (!told && !c.isAny(['counts as', 'count as', 'counting']) && c.tokens[close - 1]?.word !== 'made')
      return null;
    c.at = close + 1;
    if (!c.isAny(['and', ', and', '& ', '&'])) return null;
    if (told) places[places.length - 1] = { ...last, counts: told };
    return true;
  });
}

/** True when "in next sp" here is followed by work for it ("in next sp work 3 dc", "in next sp (2 dc)"). */
function hasWork(c: Cursor): boolean {
  const at = c.at;
  const facts = c.facts.length;
  const place = readPlace(c);
  const found = place !== null && c.isAny(['work', 'make', '(', ':', '[']);
  c.at = at;
  c.facts.length = facts;
  return found;
}

/** "2 sts", "ch-1 sp", "1" without any preposition, as behind "skip": the next such things. */
export function readBarePlace(c: Cursor): Place | null {
  return c.attempt(() => readPlaceFrom(c, c.at, true, {}) ?? bareNumber(c));
}

function bareNumber(c: Cursor): Place | null {
  const start = c.at;
  const amount = readAmount(c);
  if (!amount) return null;
  return {
    kind: 'next',
    amount,
    nouns: [anyStitch(c)],
    every: 1,
    implied: false,
    loop: null,
    post: null,
    below: 0,
    ...c.span(start),
  };
}

/** The next of a kind as the whole row of them: "sc in next" for "sc in each to the end". */
export function inEach({ nouns, loop, post, below, from, to }: Extract<Place, { kind: 'next' }>): Place {
  const stop = { kind: 'end', word: 'end', from: to, to } as const;
  return { kind: 'across', nouns, every: 1, stop, loop, post, below, from, to };
}
