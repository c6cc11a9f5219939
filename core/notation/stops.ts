/**
 * Reads where an across or a repeat stops: the end, the last few stitches, a marker, the next such thing.
 */
import type { Cursor } from './cursor.ts';
import { anyStitch, readNoun, readTurningChain } from './nouns.ts';
import { one, readAmount, readOrdinal } from './numbers.ts';
import type { Amount, Noun, Stop } from './tree.ts';

const ACROSS = [
  'all the way across',
  'evenly across',
  'across all of the sts',
  'across all the sts',
  'across all sts',
  'across row',
  'across the row',
  'across entire row',
  'across the rest',
  'across ch',
  'across the ch',
  'across foundation edge',
  'across the foundation edge',
  'along foundation edge',
  'along the foundation edge',
  'across foundation ch',
  'across the foundation ch',
  'across next side',
  'across each side',
  'across edge',
  'across top edge',
  'across the top edge',
  'across top',
  'across the top',
  'across bottom edge',
  'across bottom',
  'across the bottom',
  'across back',
  'across front',
  'across neck edge',
  'across neck',
  'across each',
  'across',
  'along foundation ch',
  'along the foundation ch',
  'along beg ch',
  'along the beg ch',
  'along starting ch',
  'along the starting ch',
  'across beg ch',
  'across starting ch',
  'along bottom edge',
  'along the bottom edge',
  'along bottom',
  'along the bottom',
  'along top edge',
  'along the top edge',
  'along top',
  'along the top',
  'along row',
  'along ch',
  'along the ch',
  'along',
];
const AROUND = [
  'all the way around',
  'around all four sides',
  'around all 4 sides',
  'around all sides',
  'around all four edges',
  'around all edges',
  'around all 3 sides',
  'around all three sides',
  'along all four sides',
  'along all sides',
  'around outer edge',
  'around the outer edge',
  'around outside edge',
  'around the outside edge',
  'around entire outer edge',
  'around the entire outer edge',
  'around the outside',
  'all the way rnd',
  'all the way around',
  'all around',
  'around the rnd',
  'around rnd',
  'around entire rnd',
  'around the ring',
  'around edge',
  'around',
  'around the whole rnd',
  'the whole rnd',
  'all rnd',
  'rnd',
  'in rnd',
];
const END = [
  'to end of short row',
  'to end of the short row',
  'to the end of the row',
  'to the end of row',
  'to end of the row',
  'to end of row',
  'to end of the rnd',
  'to end of rnd',
  'to the end of the rnd',
  'to the end of rnd',
  'to end of ch',
  'to the end of the ch',
  'to the end of ch',
  'to end of foundation ch',
  'until end of row',
  'until end of rnd',
  'until the end of the row',
  'until the end of the rnd',
  'until the end of row',
  'until the end of rnd',
  'until the end',
  'until end',
  'to the end',
  'to the beg of rnd',
  'to beg of rnd',
  'to end',
  'to row end',
  'to the very end',
  'along the whole row',
  'across the whole row',
  'the whole row',
  'of rnd',
  'of the rnd',
  'of row',
  'of the row',
  'in row',
  'in the row',
  'in the rnd',
];

const TO = [
  'except for',
  'except',
  'excluding',
  'but',
  'up to and including',
  'up to within',
  'to within',
  'until within',
  'up to',
  'until',
  'to',
  'before',
];

const MARKERS = ['marker', 'marked st', 'markers', 'st marker', 'marked sp', 'm', 'pm'];

/** "centre st", "center dc", "centre 2 sts": the middle of the row, and no space. */
function readCentre(c: Cursor): true | null {
  return c.attempt(() => {
    if (!c.eatAny(['very center', 'center'])) return null;
    readAmount(c, false);
    const noun = readNoun(c);
    return (noun?.kind === 'stitch' || noun?.kind === 'named') && !c.is('of') ? true : null;
  });
}

/** "to last 3 sts", "until 2 sts rem", "to within 2 sts of end", "to marker", "to next corner". */
function readBefore(c: Cursor): Stop | null {
  return c.attempt(() => {
    const start = c.at;
    if (!c.eatAny(TO)) return null;
    const offset = c.attempt(() => {
      const amount = readAmount(c);
      if (!amount) return null;
      readNoun(c);
      if (!c.eatAny(['before', 'from'])) return null;
      c.eatAny(['the next', 'the first', 'the', 'next', 'first', '#th']);
      const centre = readCentre(c);
      if (centre || c.eatAny(MARKERS)) return { amount, centre, noun: null };
      const said = ['next', 'first'].includes(c.tokens[c.at - 1]!.word);
      c.eat('center');
      const space = c.is('ch') || c.is('corner') || c.peek()?.kind === 'number';
      const noun = said || space ? readNoun(c) : null;
      return noun === null || noun.kind === 'stitch' || c.is('of') ? null : { amount, centre: null, noun };
    });
    if (offset !== null && offset.noun !== null)
      return { kind: 'before-next', noun: offset.noun, before: offset.amount, ...c.span(start) };
    if (offset) {
      const { amount, centre } = offset;
      return { kind: 'marker', before: amount, ...(centre ? { centre } : {}), ...c.span(start) };
    }
    if (c.attempt(() => (c.pass('the') && readCentre(c) ? true : null)))
      return { kind: 'marker', before: null, centre: true, ...c.span(start) };
    c.eatAny(['you reach', 'you have', 'you come to']);
    c.eatAny(['there are', 'there is']);
    c.eat('only');
    c.eat('the');
    if (c.eat('last')) {
      const amount = readAmount(c) ?? one(c);
      const at = c.at;
      const noun: Noun = c.eatAny(['blocks', 'block', 'tiles', 'tile'])
        ? { kind: 'space', chains: null, ...c.span(at) }
        : (readNoun(c) ?? anyStitch(c));
      c.eatAny(['of row', 'of rnd', 'before turning ch', 'rem', 'are left', 'is left']);
      return { kind: 'before-last', amount, noun, ...c.span(start) };
    }
    if (
      c.attempt(() => {
        c.eatAny(['next', 'first', 'the', 'second', 'last', '#th']);
        if (c.eatAny(MARKERS)) return true;
        return null;
      })
    ) {
      return { kind: 'marker', before: null, ...c.span(start) };
    }
    const left = c.attempt(() => {
      const amount = readAmount(c);
      if (!amount) return null;
      const noun = readNoun(c) ?? anyStitch(c);
      c.eatAny(['are', 'is']);
      if (
        !c.eatAny([
          'from the end',
          'from end',
          'before the end',
          'before end of row',
          'before end of rnd',
          'before end',
          'of the end',
          'of end',
          'rem unworked',
          'rem',
          'left unworked',
          'left',
          'unworked',
        ])
      ) {
        return null;
      }
      c.eatAny(['in rnd', 'in row', 'of row', 'of rnd', 'on row', 'in the row', 'in the rnd']);
      return { kind: 'before-last', amount, noun, ...c.span(start) } as Stop;
    });
    if (left) return left;
    if (
      c.attempt(() => {
        const turning = readTurningChain(c);
        return turning && !c.isAny(['sp', '- sp', 'lp']) ? true : null;
      })
    ) {
      const span = c.span(start);
      const amount: Amount = { kind: 'one', value: 1, from: span.to, to: span.to };
      return { kind: 'before-last', amount, noun: { kind: 'turning-chain', ...span }, ...span };
    }
    // "to 3rd ch-1 sp": the third from here.
    const counted = c.attempt(() => {
      const nth = readOrdinal(c, false);
      const noun = nth ? readNoun(c) : null;
      if (nth?.kind !== 'one' || nth.value < 2 || noun === null || c.is('of') || c.is('from hook'))
        return null;
      return noun.kind === 'stitch' || noun.kind === 'chain' ? null : { nth, noun };
    });
    if (counted) return { kind: 'before-next', ...counted, ...c.span(start) };
    const first = c.is('first') && c.isAny(['ch', 'sp', 'corner', 'shell', 'lp', '#', 'marked', 'v'], 1);
    if (first || c.isAny(['next', 'foll'])) c.at++;
    // "dc in each st to ch-2 sp"
    const space = c.attempt(() => {
      c.eat('center');
      const noun = c.is('ch') || c.peek()?.kind === 'number' ? readNoun(c) : null;
      return noun?.kind === 'space' && !c.isAny(['of']) ? noun : null;
    });
    if (space) return { kind: 'before-next', noun: space, ...c.span(start) };
    if (first || ['next', 'foll'].includes(c.tokens[c.at - 1]!.word) || c.isAny(['corner'])) {
      const noun = readNoun(c);
      return noun ? { kind: 'before-next', noun, ...c.span(start) } : null;
    }
    return null;
  });
}

/** A stop at the position, or null. */
export function readStop(c: Cursor): Stop | null {
  return c.attempt(() => {
    const start = c.at;
    const across = c.eatAny(ACROSS) ? 'across' : c.eatAny(AROUND) ? 'around' : null;
    const before = readBefore(c);
    if (before) return { ...before, ...c.span(start) };
    const end = c.attempt(() =>
      c.eatAny(END) &&
      !c.isAny(['below', '#', 'ends', 'end', 'edges', 'edge']) &&
      !(c.word() === '-' && !c.peek()!.gap) &&
      !(c.word() === '(' && c.tokens[c.at - 1]!.word === 'row' && c.peek(1)?.kind === 'word')
        ? true
        : null,
    );
    if (across) {
      c.attempt(() => (c.eatAny(['of row', 'of rnd', 'of the row', 'the row']) ? true : null));
      return { kind: 'end', word: across, ...c.span(start) };
    }
    if (end) return { kind: 'end', word: 'end', ...c.span(start) };
    return null;
  });
}

/** The stop of "each st" that does not say: the end. */
export function toTheEnd(c: Cursor): Stop {
  return { kind: 'end', word: 'end', ...c.here() };
}
