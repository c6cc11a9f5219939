/**
 * Reads what stands for itself in a row: turning, joining, markers, stitches left unworked, seams.
 */
import { isAside, isRotation } from './asides.ts';
import { eatWhen } from './closing.ts';
import type { Cursor } from './cursor.ts';
import { readAmong } from './marked.ts';
import { anyStitch, readNoun } from './nouns.ts';
import { readAmount, readOrdinal } from './numbers.ts';
import { readPart } from './place-tails.ts';
import { readBarePlace, readPlace } from './places.ts';
import type { Amount, Item, Marker, Place, StitchRef } from './tree.ts';
import { readUnworked } from './unworked.ts';
import { readStitch } from './words.ts';
import { readAttach, readColour, readColourPrefix, readFastenOff } from './yarn.ts';

function readTurn(c: Cursor): Item[] | null {
  const start = c.at;
  if (
    c.eatAny([
      'do not turn work',
      'do not turn',
      "don't turn",
      'do not turn your work',
      'without turning',
      'no turn',
      'never turn',
      'not turning',
      'dnt',
    ])
  ) {
    eatWhen(c);
    return [{ type: 'turn', not: true, ...c.span(start) }];
  }
  if (c.word() === 't' && c.peek()!.kind === 'word' && (!c.peek(1) || c.peek(1)!.kind === 'sign')) {
    // "ch 1, t"
    c.at++;
    return [{ type: 'turn', not: false, ...c.span(start) }];
  }
  const chained = c.is('turn ch') && !c.is('turn ch #');
  if (chained || c.isAny(['turning ch', 'turn each', 'turn back']) || isRotation(c)) return null;
  if (c.eatAny(['turn the work', 'turn your work', 'turn work', 'turned', 'turning', 'turn'])) {
    c.eatAny([
      'around',
      'over',
      'the piece',
      'work',
      'the work',
      'now',
      'back on ch',
      'back on the ch',
      'after ch',
      'after the ch',
      'piece',
      'clockwise',
      'to ws',
      'to rs',
      'every row',
    ]);
    eatWhen(c);
    return [{ type: 'turn', not: false, ...c.span(start) }];
  }
  return null;
}

/** The closing stitch and place behind "join": "with sl st in first sc", "to top of beg ch-3". */
function readJoinHow(c: Cursor): { stitch: StitchRef | null; place: Place | null } {
  // "with an invisible join": the same, done with a needle.
  c.attempt(() =>
    c.pass('with', 'using', 'an', 'a').eatAny(['inv join', 'needle join', 'seamless join']) ? true : null,
  );
  const stitch = c.attempt(() => {
    c.eatAny(['with', 'by', 'using', 'w']);
    c.eatAny(['working']);
    c.eatAny(['a', 'an', '#']);
    return readStitch(c);
  });
  c.eatAny(['the rnd', 'rnd', 'work']);
  const place = c.attempt(() => {
    const found = c.eat('to') ? readBarePlace(c) : readPlace(c);
    if (!found) return null;
    if (found.kind === 'evenly' || (found.kind === 'across' && found.from === c.tokens[c.at - 1]!.from))
      return null;
    return found;
  });
  c.eatAny([
    'to join',
    'to form a ring',
    'to form ring',
    'to close lp',
    'to close the lp',
    'to close rnd',
    'to close',
    'to complete rnd',
    'as before',
    'as usual',
  ]);
  const late = stitch
    ? null
    : c.attempt(() => {
        if (!c.eatAny(['with', 'using', 'by'])) return null;
        c.eatAny(['a', 'an', '#']);
        return readStitch(c);
      });
  return { stitch: stitch ?? late, place };
}

/** "With second leg,", "join to first leg with sc in any st": the part that the work goes on with. */
function readOnPart(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    const joins = c.eatAny(['join', 'joining', 'attach']) !== null;
    if (
      !c.eatAny(
        joins
          ? ['to', 'with']
          : ['with', 'on', 'starting with', 'using', 'holding', 'pick up', 'cont with', 'cont on'],
      )
    )
      return null;
    const part = readPart(c);
    if (part === null) return null;
    const with_ = joins && c.eatAny(['with', 'by']) !== null;
    c.eatAny(['a', 'an', '#']);
    const stitch = with_ ? readStitch(c) : null;
    const place = stitch ? readPlace(c) : null;
    if (!stitch) {
      const ends = c.done || c.peek()!.kind === 'sign' || c.is('only');
      c.eat('only');
      return ends ? [{ type: 'aside', ...c.span(start) }] : null;
    }
    const span = c.span(start);
    // A slip stitch only takes hold; any other is the first of the round there.
    if (stitch.base === 'slip' || stitch.base === null) return [{ type: 'aside', ...span }];
    const one: Amount = { kind: 'one', value: 1, from: span.to, to: span.to };
    const next: Place = {
      kind: 'next',
      amount: one,
      nouns: place?.kind === 'next' ? place.nouns : [anyStitch(c)],
      every: 1,
      implied: false,
      loop: null,
      post: null,
      below: 0,
      part,
      ...span,
    };
    return [{ type: 'work', stitch, amount: one, places: [next], over: null, ...span }];
  });
}

/** "join into a ring", "join in the round": what the joined ends come to. */
function eatIntoRing(c: Cursor): void {
  c.attempt(() => {
    if (!c.eat('in') && !c.eatAny(['to form', 'to make', 'forming'])) return null;
    c.eatAny(['a', 'the']);
    return c.eatAny(['rnd', 'ring', 'circle', 'tube']) && !c.isAny(['of', 'and']) ? true : null;
  });
}

function readJoin(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    if (c.isAny(['inv join', 'needle join', 'seamless join'])) c.at++;
    if (
      c.eatAny([
        'do not join',
        "don't join",
        'without joining',
        'without join',
        'do not close',
        'no join',
        'not joining',
      ])
    ) {
      c.eatAny(['rnds', 'rnd', 'or turn']);
      eatWhen(c);
      const both = c.tokens[c.at - 1]!.word === 'turn';
      const join: Item = { type: 'join', not: true, stitch: null, place: null, ...c.span(start) };
      return both ? [join, { type: 'turn', not: true, ...c.span(start) }] : [join];
    }
    const attach = c.attempt(() => readAttach(c));
    if (attach) return attach;
    if (!c.eatAny(['join', 'close', 'joined'])) return null;
    if (c.tokens[start]!.word === 'close' && !c.isAny(['rnd', 'the rnd', 'with'])) return null;
    c.eatAny(['the rnd', 'rnd', 'work', 'as before', 'as usual', 'as established', 'in same way']);
    eatIntoRing(c);
    c.attempt(() => (c.eat('last') && c.eat('ch') && readAmount(c.pass('-'), false) ? true : null));
    const how = readJoinHow(c);
    c.eatAny(['as before', 'as usual']);
    eatWhen(c);
    if (
      how.stitch === null &&
      how.place === null &&
      !(
        c.done ||
        c.peek()!.kind === 'sign' ||
        c.isAny(['and', 'then', 'turn', 'but', 'ch', 'fasten']) ||
        isAside(c)
      )
    )
      return null;
    const { stitch, place } = how;
    if (place?.part !== undefined && place.kind === 'next' && stitch?.base && stitch.base !== 'slip') {
      // "join with a sc to any st of first leg": the first of the round there.
      const span = c.span(start);
      const one: Amount = { kind: 'one', value: 1, from: span.to, to: span.to };
      return [{ type: 'work', stitch, amount: one, places: [place], over: null, ...span }];
    }
    return [{ type: 'join', not: false, ...how, ...c.span(start) }];
  });
}

/** ", 24th and 36th sts" behind "in the 12th". */
function readMore(c: Cursor): Amount[] {
  const also: Amount[] = [];
  for (;;) {
    const nth = c.attempt(() => {
      if (!c.eatAny([', and', ',', 'and', '&'])) return null;
      c.eat('the');
      return readOrdinal(c);
    });
    if (!nth) break;
    also.push(nth);
  }
  if (also.length > 0) readNoun(c);
  return also;
}

function readMarker(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    let action: Marker['action'] | null = null;
    if (
      c.eatAny([
        'place st marker',
        'place a marker',
        'place marker',
        'place markers',
        'place st markers',
        'place m',
        'pm',
        'put a marker',
        'put marker',
        'add marker',
        'add a marker',
        'insert marker',
        'replace marker',
        'attach marker',
        'place the marker',
      ])
    )
      action = 'place';
    else if (
      c.eatAny([
        'move markers up',
        'move the markers up',
        'move markers',
        'moving markers up',
        'moving the markers up',
        'moving markers',
        'carry markers up',
        'carrying markers up',
        'move all markers up',
        'moving all markers up',
      ])
    )
      action = 'carry';
    else if (
      c.eatAny([
        'move st marker up',
        'move st marker',
        'move marker up',
        'move marker',
        'move the marker',
        'slip marker',
        'sl m',
        'sm',
        'mm',
        'carry marker up',
        'move pm up',
        'moving marker up',
        'moving marker',
      ])
    )
      action = 'move';
    else if (c.eatAny(['remove marker', 'remove the marker', 'remove markers', 'rm', 'remove st marker']))
      action = 'remove';
    else if (c.eatAny(['work to marker', 'work in patt to marker', 'cont to marker', 'work even to marker']))
      action = 'work-to';
    else if (
      c.is('mark') &&
      !c.isAny([
        'mark this row',
        'mark this side',
        'mark this rnd',
        'mark row',
        'mark rs',
        'mark ws',
        'mark as',
      ]) &&
      c.isAny(['this', 'last', 'first', 'the', 'center', 'next', 'each', 'st', 'same', 'that', '#th'], 1)
    ) {
      c.at++;
      action = 'place';
    }
    if (!action) return null;
    c.eatAny(['up']);
    c.eatAny(['to']);
    const among = readAmong(c);
    const place = among
      ? null
      : c.attempt(() => {
          c.eatAny(['in', 'on', 'at', 'to', 'through']);
          c.eatAny(['the', 'this', 'that']);
          const found = readPlace(c) ?? readMarkedSpace(c);
          if (found) return found.kind === 'evenly' || found.kind === 'across' ? null : found;
          return null;
        });
    const also = place?.kind === 'nth' ? readMore(c) : [];
    if (!place && !among) {
      c.attempt(() => {
        c.eatAny(['in', 'on', 'at', 'to', 'for']);
        c.eatAny(['the', 'this', 'that', 'beg', 'end', 'center']);
        c.eatAny(['of', 'just made']);
        c.eatAny(['the', 'new']);
        if (!readNoun(c) && !c.eatAny(['rnd', 'row', 'beg of rnd', 'beg', 'here', 'end', 'work']))
          return null;
        c.eatAny(['just made', 'made', 'of rnd', 'of row', 'of the rnd', 'up', 'as you work', 'each rnd']);
        return true;
      });
    }
    c.eatAny([
      'made',
      'just made',
      'to mark beg of rnd',
      'to mark beg',
      'for beg of rnd',
      'as you go',
      'up each rnd',
      'each rnd',
    ]);
    c.attempt(() => {
      // "… and move it up each rnd": how it is kept changes nothing.
      if (!c.eatAny([', and', 'and', ',', ';'])) return null;
      if (!c.isAny(['move', 'moving', 'carry', 'carrying', 'bring', 'slip', 'leave it', 'replace']))
        return null;
      if (!c.isAny(['it', 'this', 'them', 'up'], 1) && !c.is('leave it')) return null;
      while (c.peek() && c.peek()!.kind !== 'sign') c.at++;
      return true;
    });
    // "… and move it up as each rnd is completed": how it is kept changes nothing.
    c.attempt(() => {
      if (!c.eatAny(['as', 'to mark', 'for', 'so that', 'at end of', 'at the end of', 'every', 'with']))
        return null;
      while (c.peek() && c.peek()!.kind !== 'sign') c.at++;
      return true;
    });
    // "Move markers to first and last st": to other stitches than those above their own.
    if (action === 'carry' && (place || among)) action = 'move';
    const more = { ...(also.length > 0 && { also }), ...(among && { among }) };
    return [{ type: 'marker', action, place, ...more, ...c.span(start) }];
  });
}

/** "placing marker in ch-2 sp": the space just made, with neither "next" nor "last". */
function readMarkedSpace(c: Cursor): Place | null {
  return c.attempt(() => {
    const place = c.isAny(['ch', 'corner', '#']) ? readBarePlace(c) : null;
    return place?.kind === 'next' && place.nouns.every(({ kind }) => kind === 'space') ? place : null;
  });
}

/** "Sl st short ends together": a seam, which works nothing into the row. */
function readSeam(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    if (!c.eatAny(['sl st', 'ss', 'sc', 'dc', 'sew', 'slip st', 'whipst'])) return null;
    for (let n = 0; n < 5; n++) {
      if (
        !c.eatAny([
          'short',
          'long',
          'the',
          'two',
          'both',
          'side',
          'sides',
          'row',
          'ends',
          'edges',
          'edge',
          'seam',
          'seams',
          '-',
        ])
      )
        break;
    }
    if (c.at - start < 3 || !c.eat('tog')) return null;
    c.eatAny(['to form a ring', 'to form ring', 'to form a tube', 'to join']);
    return [{ type: 'aside', ...c.span(start) }];
  });
}

/** Turn, join, fasten off, attach, colour, marker, unworked: the first that stands here. */
export function readSimple(c: Cursor): Item[] | null {
  return (
    readSeam(c) ??
    readTurn(c) ??
    readUnworked(c) ??
    readFastenOff(c) ??
    readOnPart(c) ??
    readAttach(c) ??
    readJoin(c) ??
    readMarker(c) ??
    readColourPrefix(c) ??
    readColour(c)
  );
}
