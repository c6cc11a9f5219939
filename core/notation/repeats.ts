/**
 * Reads what a star or dagger marks and what "rep from *" makes of it, and how the last pass differs. A full
 * stop inside a repeat ends nothing.
 */
import type { Span } from '../finding.ts';
import { atRowEnd } from './closing.ts';
import { type Cursor, OPENING } from './cursor.ts';
import { readItem, readItems } from './items.ts';
import { DEEPEST, isMark, nextEvent, repeatsPlainly } from './marks.ts';
import { one } from './numbers.ts';
import { readPlace, readPlaces } from './places.ts';
import { readStop, toTheEnd } from './stops.ts';
import { type Often, readTimes } from './times.ts';
import type { Item, LastPass, Times, Work } from './tree.ts';
import { insideGroup, readWork } from './work.ts';

/** Where a repeat ends: before the work of its "ending with", which stands on its own. */
export function endBefore(c: Cursor, start: number, tail: readonly Item[]): number {
  const { to } = c.span(start);
  return tail.length > 0 ? Math.min(to, tail[0]!.from) : to;
}

export function readInside(c: Cursor, end: number): Item[] {
  c.depth++;
  const items = c.within(end, () => readItems(c));
  c.depth--;
  c.at = end;
  return items;
}

/** Everything from a star or dagger on: a repeat, a pair, or a mark for others. */
export function readStar(c: Cursor): Item[] {
  const start = c.at;
  const sign = c.tokens[start]!.word;
  const here: Span = { from: c.tokens[start]!.from, to: c.tokens[start]!.to };
  if (c.depth >= DEEPEST) return tooDeep(c, start, c.end);
  const event = nextEvent(c, start);
  c.at = start + 1;
  if (!event) {
    if (sign === '*') c.fact('repeat-not-closed', here, { sign });
    return [{ type: 'mark', sign, ...here }];
  }
  if (event.kind === 'clause') {
    const items = readInside(c, event.at);
    const bodyEnd = c.tokens[event.at - 1]!.to;
    const clause = readClause(c, items);
    if (!clause) {
      const clauseSpan = c.tokens[event.at]!;
      c.fact('repeat-not-opened', clauseSpan, { sign });
      return items;
    }
    if (clause.to && clause.to !== sign) {
      const index = items.findIndex((item) => item.type === 'mark' && item.sign === clause.to);
      if (index >= 0) {
        const again = items.slice(0, index);
        return [
          ...items,
          {
            type: 'again',
            items: again,
            times: plainTimes(clause.times),
            from: c.tokens[event.at]!.from,
            to: clause.end,
          },
        ];
      }
    }
    c.marked.set(sign, items);
    return [
      {
        type: 'repeat',
        items,
        mark: 'star',
        times: clause.times,
        last: clause.last,
        from: here.from,
        to: Math.max(bodyEnd, clause.end),
      },
      ...clause.tail,
    ];
  }
  const items = readInside(c, event.at);
  c.at = event.at + 1;
  const times = readPairTimes(c, items);
  c.marked.set(sign, items);
  if (times) {
    return [
      {
        type: 'repeat',
        items,
        mark: 'star',
        times: times.times,
        last: times.last,
        from: here.from,
        to: times.end,
      },
      ...times.tail,
    ];
  }
  // "*sc, dc* in each st across": what stands between the marks goes into one place together.
  const places = c.attempt(() => (c.pass('all', 'both').isAny(['in', 'over']) ? readPlaces(c) : null));
  if (places) return [{ type: 'group', items: insideGroup(items), places, ...c.span(start) }];
  const later = nextEvent(c, event.at);
  const close = c.tokens[event.at]!;
  if (!later && sign === '*') c.fact('times-missing', { from: here.from, to: close.to }, { sign });
  return [{ type: 'mark', sign, ...here }, ...items, { type: 'mark', sign, from: close.from, to: close.to }];
}

interface Clause {
  readonly times: Times;
  readonly last: LastPass | null;
  /** Work after "ending with": not part of the repeat. */
  readonly tail: readonly Item[];
  /** The second sign of "from * to **". */
  readonly to: string | null;
  readonly end: number;
}

/** What follows a pair `*…*`: "twice", "; rep from * to * 3 more times", "across". */
function readPairTimes(c: Cursor, items: readonly Item[]): Clause | null {
  return c.attempt(() => {
    c.eatAny([',', ';', '.', ':']);
    if (c.isAny(['rep', 'work', 'cont']) || c.is('from')) {
      // "*…* rep 6 times": six in all, since nothing says "from".
      const clause = repeatsPlainly(c, c.at) ? null : c.attempt(() => readClause(c, items));
      if (clause) return clause;
      c.eatAny(['rep', 'work']);
      c.eatAny([
        'between asterisks',
        'between stars',
        'between the stars',
        'between the asterisks',
        'instructions',
        'this',
        'these',
      ]);
    }
    const start = c.at;
    // "*1 sc, inc*, rep (18)": as often as it goes.
    const bare = c.tokens[c.at - 1]?.word === 'rep' && (c.done || c.word() === '.' || c.word() in OPENING);
    const stop = bare ? toTheEnd(c) : readStop(c);
    if (stop) {
      const last = readLast(c, items);
      return {
        times: { kind: 'to', stop, from: stop.from, to: stop.to },
        ...last,
        to: null,
        end: endBefore(c, start, last.tail),
      };
    }
    const often = readTimes(c, true);
    if (!often) return null;
    const times = timesOf(c, start, often, false);
    const last = readLast(c, items);
    return { times, ...last, to: null, end: endBefore(c, start, last.tail) };
  });
}

/** `rep`: said with "rep from", where a bare number means that many more. */
export function timesOf(c: Cursor, start: number, often: Often, rep: boolean): Times {
  const more = often.said === 'more' || (rep && often.said === null);
  const times: Times = { kind: 'times', amount: often.amount, more, ...c.span(start) };
  return rep && often.said === null ? { ...times, unsaid: true } : times;
}

/** "rep from * across, ending last rep with …" from its "rep" on, whose body is `items`. */
function readClause(c: Cursor, items: readonly Item[]): Clause | null {
  return c.attempt(() => {
    const start = c.at;
    c.eatAny(['rep', 'cont', 'work']);
    c.eat('.');
    c.eatAny(['rep', 'instructions', 'in', 'this', 'patt']);
    const early = c.attempt(() => {
      const at = c.at;
      const often = readTimes(c);
      return often ? timesOf(c, at, often, true) : null;
    });
    c.eat('patt');
    const plain = repeatsPlainly(c, start);
    if (plain) {
      const times = readClauseTimes(c, early);
      const last = readLast(c, items);
      return { times, ...last, to: null, end: endBefore(c, start, last.tail) };
    }
    if (!c.eatAny(['from', 'between', 'instructions between', 'what is between', 'bet'])) {
      if (!isMark(c, c.at)) return null;
    }
    c.eatAny(['the', 'last', 'first', '"', "'"]);
    if (!isMark(c, c.at)) return null;
    c.at++;
    c.eatAny(['"', "'"]);
    if (c.word() === 's' && !c.peek()!.gap) c.at++;
    let to: string | null = null;
    c.attempt(() => {
      // "rep between * *" leaves out the "and".
      if (!c.eatAny(['to', 'and', '-', '&', 'until', 'through']) && !isMark(c, c.at)) return null;
      c.eatAny(['the', 'next', 'last', 'second']);
      if (!isMark(c, c.at)) return null;
      to = c.word();
      c.at++;
      return true;
    });
    const times = readClauseTimes(c, early);
    const last = readLast(c, items);
    return { times, ...last, to, end: endBefore(c, start, last.tail) };
  });
}

function readClauseTimes(c: Cursor, early: Times | null): Times {
  const separated = c.attempt(() => {
    c.eatAny([',', ';', ':', '-']);
    c.eatAny(['for', 'a further']);
    const start = c.at;
    const stop = readStop(c);
    const often = c.attempt(() => {
      const comma = c.at;
      if (stop) c.eat(',');
      const found = readTimes(c, !stop);
      if (found && comma !== c.at) return found;
      return null;
    });
    if (!stop && !often) return null;
    if (often && (!stop || stop.kind === 'end')) {
      const times = timesOf(c, start, often, true);
      if (!stop) {
        // "5 times across", "twice more to end": the end adds nothing.
        c.attempt(() => (readStop(c)?.kind === 'end' ? true : null));
      }
      return times;
    }
    return { kind: 'to', stop: stop!, ...c.span(start) } as Times;
  });
  if (separated) return separated;
  if (early) return early;
  const here = c.here();
  return { kind: 'to', stop: { kind: 'end', word: 'end', ...here }, ...here };
}

interface Ending {
  readonly last: LastPass | null;
  readonly tail: readonly Item[];
}

/** ", ending last rep with …", "ending at **", "omitting last ch 2", ", ending with …". */
export function readLast(c: Cursor, items: readonly Item[]): Ending {
  return (
    c.attempt<Ending>(() => {
      const wrapped = c.at;
      let close = -1;
      c.eatAny([',', ';', '.', '-']);
      c.eatAny(['and', 'but', 'then']);
      if (c.word() === '(' && c.isAny(['end', 'omit', 'stop'], 1)) {
        close = c.partner[c.at]!;
        if (close < 0 || close >= c.end) return null;
        c.at++;
      }
      const start = c.at;
      // Tunisian: the stitch at the edge, by its name.
      if (c.is('end st')) return null;
      const read = (): Ending | null => {
        if (c.eatAny(['omit', 'leave off', 'leave out', 'eliminating', 'without'])) {
          c.eatAny(['the', 'final', 'last']);
          c.eatAny(['final', 'last']);
          const omitted = readTail(c, true);
          for (let n = 0; n < 4 && omitted.length > 0; n++) {
            const more = c.attempt(() => {
              if (!c.eatAny([', and', 'and', ','])) return null;
              c.eatAny(['the', 'final', 'last']);
              const next = readTail(c, true);
              return next.length > 0 && next.every((item) => item.type === 'work' || item.type === 'chain')
                ? next
                : null;
            });
            if (!more) break;
            omitted.push(...more);
          }
          if (omitted.length === 0 || !omitted.some((item) => item.type !== 'unread')) return null;
          c.eatAny([
            'at end of last rep',
            'on last rep',
            'in last rep',
            'on the last rep',
            'in final rep',
            'on final rep',
            'at end',
            'of last rep',
            'from last rep',
          ]);
          return { last: { kind: 'omitting', items: omitted, ...c.span(start) }, tail: [] };
        }
        const final = c.attempt(() => {
          // "working last dc in top of turning ch": the last pass ends there.
          const said = c.eatAny([
            'working',
            'work',
            'with',
            'placing',
            'making',
            'having',
            'end with',
            'end',
          ]);
          c.eat('the');
          if (!c.isAny(['last', 'final']) || c.isAny(['last rep', 'last patt', 'final rep', 'last time']))
            return null;
          c.at++;
          const like = said === null ? null : lastStitch(c, items);
          if (like) return like;
          const work = readWork(c);
          if (!work || Array.isArray(work)) return null;
          const place = work.places[0]!;
          // "to end, last dc in turning ch" says so too; "last 3 sts in dc" may be work of its own.
          if (said === null && place.kind !== 'turning-chain') return null;
          return place.kind === 'next' && place.implied ? null : work;
        });
        if (final)
          return { last: { kind: 'ending', items: [final], replaces: true, ...c.span(start) }, tail: [] };
        if (!c.eatAny(['end', 'ends', 'stop', 'finish', 'finishing', 'stopping'])) return null;
        c.eatAny([
          'the last rep',
          'last rep',
          'the final rep',
          'final rep',
          'on last rep',
          'last patt rep',
          'last time',
          'rep',
        ]);
        const own = endingPlace(c, items);
        if (own)
          return { last: { kind: 'ending', items: [own], replaces: true, ...c.span(start) }, tail: [] };
        if (c.eatAny(['at', 'on'])) {
          c.eat('the');
          if (!isMark(c, c.at)) return null;
          const sign = c.word();
          c.at++;
          c.eatAny([
            'on last rep',
            'on the last rep',
            'on final rep',
            'of last rep',
            'last time',
            'in last rep',
          ]);
          const index = items.findIndex((item) => item.type === 'mark' && item.sign === sign);
          if (index < 0) {
            c.fact('mark-not-found', c.span(start), { sign });
            return { last: null, tail: [] };
          }
          return { last: { kind: 'stop-at', index, ...c.span(start) }, tail: [] };
        }
        c.eatAny(['with', 'by', 'in', ':', ',']);
        c.eatAny(['working', 'work']);
        const tail = readTail(c, false);
        if (tail.length === 0) return null;
        // A slip stitch closes the round; it is no part of the last pass.
        const works = tail.some(
          (item) => item.type === 'group' || (item.type === 'work' && item.stitch.base !== 'slip'),
        );
        if (!works) return { last: null, tail };
        return { last: { kind: 'ending', items: tail, ...c.span(start) }, tail: [] };
      };
      const result = close >= 0 ? c.within(close, read) : read();
      if (close >= 0 && result) c.at = close + 1;
      return result && c.at > wrapped ? result : null;
    }) ?? { last: null, tail: [] }
  );
}

/** "working last st in top of tch": the stitch that the work before it is made of, in a place of its own. */
export function lastStitch(c: Cursor, items: readonly Item[]): Work | null {
  const work = items.findLast((item) => item.type === 'work');
  if (work?.type !== 'work' || work.stitch.together > 1) return null;
  return c.attempt(() => {
    const start = c.at;
    if (!c.eat('st') || !c.isAny(['in', 'on', 'around', 'at'])) return null;
    const place = readPlace(c);
    const amount = one(c);
    return place ? { ...work, amount, places: [place], ...c.span(start) } : null;
  });
}

/** "ending in top of tch", "ending in last st": the stitch that ends every pass, in a place of its own the last time. */
export function endingPlace(c: Cursor, items: readonly Item[]): Work | null {
  const work = items.findLast((item) => item.type === 'work' || item.type === 'group');
  if (work?.type !== 'work' || work.stitch.together > 1) return null;
  return c.attempt(() => {
    const start = c.at;
    if (!c.isAny(['in', 'on'])) return null;
    if (c.is('on')) c.at++;
    const place = readPlace(c);
    if (place?.kind !== 'turning-chain' && place?.kind !== 'last') return null;
    if (!c.done && c.peek()!.kind !== 'sign' && !c.is('turn')) return null;
    return { ...work, places: [place], ...c.span(start) };
  });
}

/** Items of an ending: up to a full stop or semicolon, a turn, a join, a count. */
function readTail(c: Cursor, single: boolean): Item[] {
  const items: Item[] = [];
  for (let n = 0; n < 40; n++) {
    if (c.done) break;
    const more = c.attempt(() => {
      if (single && c.word() in OPENING) return null;
      if (items.length > 0) {
        if (!c.eatAny([', and', ',', 'and', 'then'])) return null;
        if (
          single ||
          c.isAny(['turn', 'join', 'fasten', 'do not', 'ch # turn', 'ch # , turn', 'sl st', 'ss'])
        )
          return null;
      }
      const got = readItem(c, items);
      if (!got || (single && got.some((item) => item.type === 'unread'))) return null;
      return got;
    });
    if (!more) break;
    items.push(...more);
    if (items.length > 0 && (c.isAny(['.', ';']) || atRowEnd(c))) break;
  }
  return items;
}

export function tooDeep(c: Cursor, start: number, end: number): Item[] {
  c.at = end;
  const span = c.span(start);
  c.fact('too-deep', span, { limit: DEEPEST });
  return [{ type: 'unread', ...span }];
}

/** "sc 5, dec, around", "sc in next 2 sts, inc in next st around": behind a plain list, how far all of it is worked. */
function isBareEnd(c: Cursor, before: readonly Item[]): boolean {
  if (!c.isAny(['around', 'across', 'to end', 'all the way around', 'all the way across'])) return false;
  const works = before.filter(
    (item) => item.type === 'work' || item.type === 'skip' || item.type === 'group',
  );
  return (
    works.length >= 2 &&
    works.some(({ type }) => type !== 'skip') &&
    works.every(({ places }) => places.every((place) => place.kind === 'next' || place.kind === 'same'))
  );
}

/** "sc in next 3 sts, 2 sc in next st, 3 times": behind a comma, how often the whole list is worked. */
function isBareTimes(c: Cursor, before: readonly Item[]): boolean {
  if (c.tokens[c.at - 1]?.word !== ',' || before.filter(({ type }) => type === 'work').length < 2)
    return false;
  const { at } = c;
  const often = readTimes(c);
  const ends = c.done || ['.', ';', '(', '['].includes(c.word());
  c.at = at;
  return often !== null && often.said !== 'more' && ends;
}

const FROM_BEGINNING = ['from the beg', 'from beg', 'from the start', 'from start'].flatMap((from) => [
  ...['the row', 'the rnd', 'row', 'rnd'].map((of) => `${from} of ${of}`),
  from,
]);

const ALIKE = [
  'cont in this way',
  'cont in this manner',
  'cont in the same way',
  'cont in same way',
  'cont in the same manner',
  'cont like this',
  'and so on',
];

/** "Repeat around", "; rep 5 more times" with no star: repeats the row's work so far, and says so. */
export function readRepeatOfAll(c: Cursor, before: readonly Item[]): Item[] | null {
  // ", x 6" behind a plain list says how often all of it is worked.
  const multiplied = c.word() === 'x' && c.peek(1)?.kind === 'number';
  const bare = isBareEnd(c, before) || isBareTimes(c, before);
  // "… continue in this way to end of round": the same in other words.
  const alike = c.isAny(ALIKE);
  if (!c.is('rep') && !alike && !multiplied && !bare) return null;
  return c.attempt(() => {
    const start = c.at;
    if (alike) c.eatAny(ALIKE);
    else if (!multiplied && !bare) c.at++;
    c.eatAny(['this', 'these', 'all', 'above', 'the']);
    c.eatAny(['patt', 'sequence', 'steps', 'instructions', 'process']);
    c.eatAny(FROM_BEGINNING);
    const at = c.at;
    // "…, 2 sc in next st; repeat.": as often as there is room for it.
    const open = c.is('.') || c.done ? toTheEnd(c) : null;
    const stop = readStop(c) ?? (multiplied || bare || before.length === 0 ? null : open);
    const often = stop ? null : readTimes(c);
    if (!stop && !often) return null;
    const goesOn = ['and', 'then', 'turn', 'join', 'end with', 'ending with', 'finishing with'];
    if (!(c.done || c.peek()!.kind === 'sign' || c.isAny(goesOn))) return null;
    let first = before.length;
    while (
      first > 0 &&
      !['turn', 'join', 'ring', 'attach', 'loops', 'repeat'].includes(before[first - 1]!.type)
    )
      first--;
    while (first < before.length && ['chain', 'aside', 'colour', 'marker'].includes(before[first]!.type))
      first++;
    const items = before.slice(first);
    if (items.length === 0) return null;
    c.fact('repeat-start-not-said', c.span(start), {});
    (before as Item[]).length = first;
    const times: Times = stop ? { kind: 'to', stop, ...c.span(at) } : timesOf(c, at, often!, !multiplied);
    const last = readLast(c, items);
    return [
      {
        type: 'repeat',
        items,
        mark: 'star',
        times,
        last: last.last,
        from: items[0]!.from,
        to: endBefore(c, start, last.tail),
      },
      ...last.tail,
    ];
  });
}

/** Items worked again are counted from here on: "once more" is once. */
function plainTimes(times: Times): Times {
  if (times.kind !== 'times') return times;
  const { kind, amount, from, to } = times;
  return { kind, amount, more: false, from, to };
}

/** "rep from * …" with no such mark open: works marked items again, or a fact. */
export function readLooseRepeat(c: Cursor): Item[] | null {
  const start = c.at;
  const clause = c.attempt(() => (c.isAny(['rep', 'cont', 'work', 'from']) ? readClause(c, []) : null));
  if (!clause) return null;
  const span = { from: c.tokens[start]!.from, to: clause.end };
  let sign = '';
  for (let i = start; i < c.at && sign === ''; i++) if (isMark(c, i)) sign = c.tokens[i]!.word;
  if (sign === '') {
    // "Repeat around" names no mark: `readRepeatOfAll` knows what it repeats.
    c.at = start;
    return null;
  }
  const items = c.marked.get(sign);
  if (items) {
    return [{ type: 'again', items, times: plainTimes(clause.times), ...span }, ...clause.tail];
  }
  c.fact('repeat-not-opened', span, { sign });
  return [{ type: 'unread', ...span }, ...clause.tail];
}
