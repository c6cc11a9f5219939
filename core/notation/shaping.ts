/**
 * Reads shaping told in words: "dec 1 st at each end of every 4th row 5 times, then every 2nd row".
 */
import { EACH_END } from './both-ends.ts';
import type { Cursor } from './cursor.ts';
import { one, readAmount, readOrdinal } from './numbers.ts';
import { ROW } from './rows-again.ts';
import { readTimes } from './times.ts';
import type { Amount, Shaping } from './tree.ts';

/** "every 4th row 5 (6, 6) times", "every other row", "foll alt rows", "every row". */
function readSchedule(c: Cursor): { every: Amount; times: Amount | null } | null {
  return c.attempt(() => {
    c.eatAny(['at', 'on', 'of', 'in']);
    c.eat('the');
    c.eatAny(['on', 'of']);
    const start = c.at;
    let every: Amount | null = null;
    c.eat('foll');
    if (
      c.eatAny([
        'every other',
        'every alt',
        'each alt',
        'alt',
        'every foll alt',
        'each other',
        'every second',
        'every rs',
        'every ws',
        'each rs',
        'each ws',
        'rs',
        'ws',
      ])
    ) {
      every = { kind: 'one', value: 2, ...c.span(start) };
    } else if (c.eatAny(['every foll', 'each foll', 'every', 'each', 'foll'])) {
      every = readOrdinal(c) ?? c.attempt(() => readAmount(c)) ?? { kind: 'one', value: 1, ...c.span(start) };
    } else if (c.eat('next')) {
      const amount = readAmount(c);
      if (!amount || !c.eatAny(ROW)) return null;
      return { every: { kind: 'one', value: 1, ...c.span(start) }, times: amount };
    } else {
      // "and 2 foll alt rows", "3 foll 4th rows": so many of them.
      const times = readAmount(c);
      if (!times || !c.eat('foll')) return null;
      const at = c.at;
      const gap = c.eat('alt') ? ({ kind: 'one', value: 2, ...c.span(at) } as Amount) : readOrdinal(c);
      if (!c.eatAny(ROW)) return null;
      return { every: gap ?? { kind: 'one', value: 1, ...c.span(at) }, times };
    }
    c.eat('foll');
    if (!c.eatAny(ROW)) return null;
    c.eat(',');
    const times = c.attempt(() => readTimes(c)?.amount ?? null);
    return { every, times };
  });
}

/** "dec 1 st in centre of row": one place that the words name no better; "in centre st" is a place of its own. */
function atCentre(c: Cursor): true | null {
  return c.attempt(() => {
    if (!c.eatAny(['in the center', 'in center', 'the center', 'center'])) return null;
    c.attempt(() => (c.eat('of') && c.pass('the') && c.eatAny(ROW) ? true : null));
    return c.done || c.peek()!.kind === 'sign' ? true : null;
  });
}

function eatEdge(c: Cursor): true | null {
  c.eatAny(['each', 'both', 'the']);
  return c.eatAny(['edge', 'edges', 'end', 'ends', 'side', 'sides']) ? true : null;
}

/** "2 sts in from each edge": where in from the edge the shaping lies changes no count. */
function readInFrom(c: Cursor): true | null {
  return c.attempt(() => {
    if (!readAmount(c) || !c.eatAny(['sts', 'st'])) return null;
    if (!c.eatAny(['in', 'inside']) || !c.pass('from', 'the')) return null;
    return c.isAny(['each', 'both', 'edge', 'the edge', 'neck', 'armhole', 'end']) ? true : null;
  });
}

/** "sc evenly around, increasing 6 sts": how they lie is said before. */
function spreadBefore(c: Cursor, start: number): boolean {
  return c.tokens.slice(Math.max(0, start - 5), start).some((token) => token.word === 'evenly');
}

/** "inc evenly 4 times", "dec 1 st 4 times evenly": one stitch so often is so many. */
function readOften(c: Cursor, spread: boolean): { readonly amount: Amount; readonly evenly: boolean } | null {
  return c.attempt(() => {
    c.attempt(() => {
      const each = readAmount(c);
      return each?.kind === 'one' && each.value === 1 && c.eatAny(['st', 'sc', 'dc', 'hdc']) ? true : null;
    });
    const evenly = c.eatAny(['evenly spaced', 'evenly']) !== null;
    const often = readTimes(c);
    if (often === null || often.said === 'more') return null;
    return evenly || spread || c.isAny(['evenly', 'evenly spaced', ', evenly'])
      ? { amount: often.amount, evenly }
      : null;
  });
}

/** "dec 1 st at each end of every 4th row 5 times, then every 2nd row 3 times", "dec 6 sts evenly around". */
export function readShaping(c: Cursor): Shaping | null {
  return c.attempt(() => {
    const start = c.at;
    const spread = c.eat('evenly');
    c.attempt(() => {
      // "sc across, making a decrease at each end"
      if (!c.eatAny(['making', 'working', 'with', 'make', 'work'])) return null;
      c.eatAny(['a', 'an', 'one']);
      return c.isAny(['inc', 'dec']) ? true : null;
    });
    const word = c.eatAny(['inc', 'dec', 'adding']);
    if (!word) return null;
    const change = word === 'dec' ? 'dec' : 'inc';
    const target = c.attempt(() => {
      // "dec to 20 sts", "inc evenly to 30 sts", "dec as needed to have 20 sts"
      c.eatAny(['evenly', 'as needed', 'as required', 'as necessary']);
      if (!c.eatAny(['to have', 'to get', 'to make', 'until there are', 'until you have', 'to'])) return null;
      const there = readAmount(c);
      if (!there || !c.eatAny(['sts', 'sc', 'dc', 'tr', 'hdc', 'htr'])) return null;
      c.eatAny(['in all', 'in total', 'evenly', 'altogether']);
      return c.done || c.peek()!.kind === 'sign' ? there : null;
    });
    if (target)
      return {
        type: 'shaping',
        change,
        amount: one(c),
        ends: 'evenly',
        now: true,
        schedule: [],
        until: target,
        ...c.span(start),
      };
    const often = readOften(c, spread);
    const amount = often?.amount ?? readAmount(c) ?? one(c);
    if (!often) c.eatAny(['sts', 'st', 'sc', 'dc', 'tr', 'hdc', 'htr']);
    c.eatAny(['at', 'on', ',']);
    readInFrom(c);
    let ends: Shaping['ends'] | null = null;
    if (c.eatAny(EACH_END)) ends = 'each';
    else if (c.eatAny(['beg', 'start', 'the beg', 'the start'])) ends = 'start';
    else if (c.eatAny(['neck edge', 'armhole edge', 'side edge'])) {
      // "sc to last 2 sts, dec 1 st at neck edge": the row has gone as far as that edge, and it is the next stitch.
      const before = c.text.slice(Math.max(0, c.tokens[start]!.from - 40), c.tokens[start]!.from);
      if (/\blast (?:\S+ )?\S+[,;]?\s*(?:and )?$/iu.test(before)) return null;
      ends = 'start';
    } else if (c.eatAny(['end', 'the end']) || atCentre(c)) ends = 'finish';
    else if (often?.evenly || c.eatAny(['evenly spaced', 'evenly'])) {
      ends = 'evenly';
      c.eatAny([
        'across row',
        'across the row',
        'across',
        'around rnd',
        'around',
        'along row',
        'in rnd',
        'over row',
      ]);
    }
    c.attempt(() => (c.eat(',') && readInFrom(c) && eatEdge(c) ? true : null));
    if (!ends && (spread || spreadBefore(c, start)) && (c.done || c.peek()!.kind === 'sign')) ends = 'evenly';
    if (!ends) return null;
    let now = false;
    c.attempt(() => {
      c.eatAny(['of', 'on', 'in', 'at']);
      c.eat('the');
      if (!c.eatAny(['this', 'next']) || c.peek()?.kind === 'number') return null;
      c.eatAny(ROW);
      c.eatAny([', and then', ', then', ', and', 'and then', 'and', 'then', ',']);
      now = true;
      return true;
    });
    const schedule: { every: Amount; times: Amount | null }[] = [];
    for (let n = 0; n < 20; n++) {
      const next = c.attempt(() => {
        if (n > 0) {
          c.eatAny([',', ';']);
          c.eatAny(['and then', 'then', 'and']);
          c.eatAny(['dec', 'inc']);
        }
        return readSchedule(c);
      });
      if (!next) break;
      schedule.push(next);
    }
    const until = c.attempt(() => {
      c.eat(',');
      const there = c.eatAny(['until there are', 'until you have', 'until']);
      if (!there && !c.eat('to')) return null;
      const left = readAmount(c);
      if (!left) return null;
      c.eatAny(['sts', 'st', 'sc', 'dc', 'tr', 'hdc', 'htr']);
      c.eatAny(['are', 'is']);
      return c.eatAny(['rem', 'left']) || (there && there !== 'until') ? left : null;
    });
    if (schedule.length === 0 && !now) {
      now = true;
      c.attempt(() => (c.eat('of') && c.pass('the') && c.eatAny(ROW) ? true : null));
    }
    return { type: 'shaping', change, amount, ends, now, schedule, until, ...c.span(start) };
  });
}
