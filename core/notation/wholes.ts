/**
 * Reads instructions for whole rows. It works none of them.
 */
import type { Cursor } from './cursor.ts';
import { isMark } from './marks.ts';
import { one, readAmount } from './numbers.ts';
import {
  eatForPattern,
  ROW,
  readEndingWith,
  readRowsAgain,
  readRowsRef,
  readTotalRows,
  readUntil,
  readUntilRows,
} from './rows-again.ts';
import { readShaping } from './shaping.ts';
import type { AsPiece, Even, Item, StitchRef } from './tree.ts';
import { readStitch } from './words.ts';

const EVEN = [
  'even in patt',
  'evenly in patt',
  'straight in patt',
  'even',
  'straight',
  'without shaping',
  'without further shaping',
  'without inc',
  'without incs',
  'without dec',
  'without any shaping',
  'without further inc',
  'without further dec',
  'without any inc',
  'without any dec',
  'in patt',
  'plain',
];

/** "in dc", "of sc": the stitch that rows are worked in. */
function readInStitch(c: Cursor): StitchRef | null {
  return c.attempt(() => {
    c.eatAny(['in', 'of']);
    return readStitch(c);
  });
}

/** "In dc.", "in sc across": all that the row says. */
function readAloneInStitch(c: Cursor): StitchRef | null {
  return c.attempt(() => {
    if (!c.eat('in')) return null;
    const stitch = readStitch(c);
    c.eatAny(['across row', 'across', 'around', 'throughout', 'to end of row', 'to end']);
    return c.done || c.is('.') ? stitch : null;
  });
}

/** "on these 6 sts", "over these sts only": those that the rows go on with anyway. */
function eatOnThese(c: Cursor): void {
  c.attempt(() => {
    if (!c.eatAny(['on', 'over', 'across', 'for'])) return null;
    if (!c.eatAny(['these', 'those', 'all', 'the rem', 'rem'])) return null;
    readAmount(c);
    return c.eatAny(['sts', 'st']) ? c.pass('only') : null;
  });
}

/** ", 1 sc in each st around" behind rows worked even: how they are worked, and no row more. */
function readOneInEach(c: Cursor): StitchRef | null {
  return c.attempt(() => {
    if (!c.eatAny([',', ':', '-'])) return null;
    c.eatAny(['working', 'with', 'making']);
    if (c.peek()?.kind === 'number' && c.peek()!.value === 1) c.at++;
    else c.eat('one');
    const stitch = readStitch(c);
    if (stitch === null || !c.eatAny(['in each st', 'in every st', 'in all sts'])) return null;
    c.eatAny(['across', 'around', 'to end']);
    return c.done || c.is('.') || c.is('(') ? stitch : null;
  });
}

/** "Sc around for 5 more rnds", "1 sc in each st for 5 rnds": at the head of a row that has no other words. */
function readStitchForRows(c: Cursor): Even | null {
  if (c.at !== 0) return null;
  return c.attempt(() => {
    c.eatAny(['then', 'now']);
    const start = c.at;
    c.eatAny(['work', 'cont', 'cont working', '1', 'one']);
    if (c.peek()?.kind === 'number' && c.peek()!.value === 1) c.at++;
    const stitch = readStitch(c);
    if (stitch === null) return null;
    c.eatAny(['in each st', 'in every st', 'in all sts', 'even', 'evenly']);
    c.eatAny(['across', 'around']);
    c.eat(',');
    const inAll = readTotalRows(c);
    if (inAll) return { type: 'even', rows: inAll, inAll: true, stitch, until: null, ...c.span(start) };
    if (!c.eatAny(['for', 'over'])) return null;
    c.eatAny(['another', 'a further', 'next', 'the next', 'a total of']);
    const rows = readAmount(c);
    c.eatAny(['more', 'further']);
    if (rows === null || !c.eatAny(ROW) || !(c.done || c.peek()!.kind === 'sign')) return null;
    return { type: 'even', rows, stitch, until: null, ...c.span(start) };
  });
}

/** "Work 10 rows even", "work even for 8 rows", "work straight until piece measures 30 cm". */
export function readEven(c: Cursor): Even | null {
  return c.attempt(() => {
    const start = c.at;
    const begins = c.at === 0 || [':', '.', '-'].includes(c.tokens[c.at - 1]!.word);
    if (begins) c.eatAny(['then', 'now', 'next']);
    const alone = begins ? readAloneInStitch(c) : null;
    if (alone) return { type: 'even', rows: null, stitch: alone, until: null, ...c.span(start) };
    if (!c.eatAny(['work', 'cont', 'cont to work', 'cont working', 'working'])) {
      // "One round sc.", "8 rows of sc": told by its number of rows alone.
      const told = c.is('even') || ((c.is('one') || c.peek()?.kind === 'number') && c.isAny(ROW, 1));
      if (!told || !begins) return null;
    }
    c.eatAny(['a further', 'another', 'next']);
    const rows = c.attempt(() => {
      // "Work a round of sc."
      const amount = readAmount(c) ?? (c.eatAny(['a', 'one']) ? one(c) : null);
      if (!amount) return null;
      c.eat('more');
      return c.eatAny(ROW) ? amount : null;
    });
    if (rows) {
      const stitch = readInStitch(c);
      if (!c.eatAny(EVEN) && !(stitch && rows)) return null;
      eatOnThese(c);
      eatForPattern(c);
      const own = stitch ?? readInStitch(c) ?? readOneInEach(c);
      return { type: 'even', rows, stitch: own, until: null, ...c.span(start) };
    }
    // "Cont in dc until work measures 36 cm": no more is said than the stitch and how far.
    const inCloth = c.attempt(() => {
      if (!c.is('in')) return null;
      const stitch = readInStitch(c);
      // "Cont in sc without increasing for 5 rnds", "cont in sc for 5 rnds": the rows behind the stitch.
      const even = c.eatAny(EVEN) !== null;
      return stitch !== null && (even || c.isAny(['until', 'for #', 'for another', 'for a further']))
        ? stitch
        : null;
    });
    if (inCloth === null && !c.eatAny(EVEN)) return null;
    c.eatAny(['in patt', 'as established', 'in established patt', 'as set']);
    const inStitch = inCloth ?? readInStitch(c);
    c.eatAny([
      'across all sts',
      'over all sts',
      'on all sts',
      'across row',
      'across',
      'around',
      'to end of row',
      'to end',
    ]);
    const before = c.at;
    const inAll = readUntilRows(c) ?? readTotalRows(c);
    if (inAll === null) c.eat(',');
    const after = c.attempt(() => {
      if (inAll) return inAll;
      c.eatAny(['for', 'over', 'a further']);
      c.eatAny(['next', 'the next', 'a further', 'another']);
      const amount = readAmount(c);
      if (!amount) return null;
      c.eat('more');
      return c.eatAny(ROW) ? amount : null;
    });
    const until = after ? null : readUntil(c);
    // "Work even in dc, at the same time …": the comma leads on to something else.
    if (!after && !until) c.at = before;
    const stitch = inStitch ?? readInStitch(c);
    if (!after && !until && !(c.done || c.peek()!.kind === 'sign')) return null;
    readEndingWith(c);
    const all = inAll ? { inAll: true as const } : {};
    return { type: 'even', rows: after, ...all, stitch, until, ...c.span(start) };
  });
}

/** "Work as for Back to **", "work same as Front to Row 20, reversing shaping". */
export function readAsPiece(c: Cursor): AsPiece | null {
  return c.attempt(() => {
    const start = c.at;
    c.eatAny(['work', 'make', 'complete', 'cont', 'finish']);
    c.eatAny(['second', 'other', 'this']);
    c.attempt(() => (c.eatAny(['side', 'sleeve', 'half', 'piece']) ? true : null));
    const led = c.at > start;
    if (
      !c.eatAny(['as given for', 'as for', 'same as for', 'to match', 'same as', 'the same as']) &&
      !(led && c.eatAny(['as', 'like']))
    )
      return null;
    c.eatAny(['the', 'of']);
    const from = c.at;
    let words = 0;
    while (
      words < 5 &&
      (c.peek()?.kind === 'word' || (words > 0 && c.peek()?.kind === 'number' && c.word(1) !== 'times')) &&
      !c.isAny([
        'to',
        'until',
        'through',
        'up',
        'rev',
        'reversing',
        'but',
        'and',
        'with',
        'for',
        'of',
        'from',
        'follow',
        'foll',
        'row',
        'rnd',
        'rows',
        'rnds',
        'est',
        'established',
        'before',
        'set',
        'a',
        'in',
        'counts',
        'first',
      ])
    ) {
      c.at++;
      words++;
    }
    if (words === 0) return null;
    const piece = c.words(c.span(from));
    let upTo: AsPiece['upTo'] = null;
    c.attempt(() => {
      if (!c.eatAny(['up to', 'through', 'until', 'to end of', 'to the end of', 'to'])) return null;
      c.eatAny(['and including', 'end of', 'the']);
      if (isMark(c, c.at)) {
        c.at++;
        upTo = 'mark';
        return true;
      }
      const ref = readRowsRef(c);
      if (!ref) return null;
      upTo = ref;
      return true;
    });
    const reversed =
      c.attempt(() => {
        c.eatAny([',', 'but', 'and', ';']);
        c.eat('but');
        if (!c.eatAny(['reversing', 'rev'])) return null;
        c.eatAny(['all', 'the']);
        c.eatAny(['shaping', 'shapings']);
        return true;
      }) === true;
    if (!(c.done || c.peek()!.kind === 'sign')) return null;
    return { type: 'as-piece', piece, upTo, reversed, ...c.span(start) };
  });
}

/** Any instruction for whole rows, or null. */
export function readWhole(c: Cursor): Item[] | null {
  return (
    readRowsAgain(c) ??
    wrap(readStitchForRows(c)) ??
    wrap(readEven(c)) ??
    wrap(readShaping(c)) ??
    wrap(readAsPiece(c))
  );
}

function wrap(item: Item | null): Item[] | null {
  return item ? [item] : null;
}
