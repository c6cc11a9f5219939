/**
 * Reads "at each end", "at beg and end of row" behind a stitch: the first and the last place of the row. What is
 * worked between them is said by the words before or behind, and is not looked at here.
 */
import type { Cursor } from './cursor.ts';
import { anyStitch } from './nouns.ts';
import { one } from './numbers.ts';
import { ROW } from './rows-again.ts';
import { toTheEnd } from './stops.ts';
import type { Place } from './tree.ts';

/** Words for both ends of a row. */
export const EACH_END = [
  'each end',
  'both ends',
  'either end',
  'each side',
  'both sides',
  'each edge',
  'both edges',
  'the beg and the end',
  'the beg and end',
  'beg and the end',
  'beg and end',
  'the start and end',
  'start and end',
];
const FIRST = ['the beg', 'beg', 'the start', 'start', 'the start edge'];
const LAST = ['the end', 'end'];

/** The first place, the last one, or both; null where the words name no end of the row. */
export function readBothEnds(c: Cursor): Place[] | null {
  return c.attempt(() => {
    const start = c.at;
    // "2 sc in st at each end"
    if (c.isAny(['in st at', 'in st on', 'in the st at'])) c.at += c.is('in the') ? 3 : 2;
    if (!c.eatAny(['at', 'on'])) return null;
    const which = c.eatAny(EACH_END) ? 'each' : c.eatAny(FIRST) ? 'first' : c.eatAny(LAST) ? 'last' : null;
    if (which === null) return null;
    const of = c.attempt(() => {
      if (!c.eatAny(['of', 'on', 'in'])) return null;
      c.eatAny(['the', 'this', 'next']);
      return c.eatAny(ROW);
    });
    // "at each end of every 4th row" is a schedule.
    if (of === null && !(c.done || c.peek()!.kind === 'sign')) return null;
    // "10 fsc at end of row" are new stitches; only what gathers needs a place there.
    if (which !== 'each' && !/(?:tog|dec)$/u.test(c.tokens[start - 1]?.word ?? '')) return null;
    const place = (kind: 'first' | 'last'): Place => ({
      kind,
      amount: one(c),
      noun: anyStitch(c),
      loop: null,
      post: null,
      below: 0,
      ...c.span(start),
    });
    return which === 'each' ? [place('first'), place('last')] : [place(which)];
  });
}

/** "dc2tog at each end, dc in between": each stitch between those ends. */
export function readInBetween(c: Cursor): Place[] | null {
  return c.attempt(() => {
    const start = c.at;
    if (!c.eatAny(['in between', 'between']) || !(c.done || c.peek()!.kind === 'sign')) return null;
    const into = { loop: null, post: null, below: 0, ...c.span(start) };
    return [{ kind: 'across', nouns: [anyStitch(c)], every: 1, stop: toTheEnd(c), ...into }];
  });
}
