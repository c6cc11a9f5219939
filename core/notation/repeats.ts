/**
 * Reads what is worked several times or all in one place: brackets, stars, daggers, "rep from *", and how
 * their last pass differs. It pairs the marks first, so that a full stop inside a repeat ends nothing.
 */
import type { Span } from '../finding.ts';
import { readBracketCount, readCountsAs, readSaid } from './counts.ts';
import { type Cursor, OPENING } from './cursor.ts';
import { readItem, readItems } from './items.ts';
import { readPlaces } from './places.ts';
import { readStop } from './stops.ts';
import { type Often, readTimes } from './times.ts';
import type { Item, LastPass, Times } from './tree.ts';
import { atRowEnd, insideGroup, readWork } from './work.ts';

/** Brackets and stars nested deeper than this are not read. */
export const DEEPEST = 24;

const MARK = /^(?:\*+|†+|‡+|§+|♯+|\++|\^+|~+)$/u;
const REFERS = ['from', 'to', 'at', 'between', 'until', 'after', 'before', 'rep', 'last', 'first'];

/** True for a sign that can mark a spot: *, **, †, ‡ … ("+" and "#" only where a "from" names them). */
export function isMark(c: Cursor, i: number): boolean {
  const token = c.tokens[i];
  if (token?.kind !== 'sign' || !MARK.test(token.word)) return false;
  if (token.word[0] === '+' || token.word[0] === '♯' || token.word[0] === '^' || token.word[0] === '~') {
    return c.isNamedMark(token.word);
  }
  return true;
}

/** "from *", "to **", "between * and *": a sign that points at a mark, and marks nothing itself. */
function refers(c: Cursor, i: number): boolean {
  const before = c.tokens[i - 1]?.word ?? '';
  if (REFERS.includes(before)) return true;
  if (before === 'the' || before === '"' || before === "'" || before === '(')
    return REFERS.includes(c.tokens[i - 2]?.word ?? '') && before !== '(';
  if (before === 'and' || before === '-' || before === '&') {
    // "between * and *", "from *-*": the second sign refers when the first does.
    const first = c.tokens[i - 3]?.word ?? '';
    return isMark(c, i - 2) && REFERS.includes(first);
  }
  return false;
}

/** ") * 6": a sign of multiplication. */
function multiplies(c: Cursor, i: number): boolean {
  const before = c.tokens[i - 1]?.word ?? '';
  const after = c.tokens[i + 1];
  if (c.tokens[i]?.word !== '*') return false;
  if (![')', ']', '}'].includes(before) || (after?.kind !== 'number' && after?.kind !== 'figure'))
    return false;
  const next = c.tokens[i + 2]?.word ?? '';
  return (
    next === '' ||
    [',', '.', ';', ')', ']', '}', '(', 'times', '-', '='].includes(next) ||
    c.tokens[i + 2]!.line > after.line
  );
}

/** Start of the clause whose "from" (or "between", "to") names the mark at `i`: its "rep", or -1. */
function clauseStart(c: Cursor, i: number): number {
  for (let k = i - 1; k >= 0 && k >= i - 9; k--) {
    const word = c.tokens[k]!.word;
    if (word === 'rep' || word === 'cont') return k;
    if (word === 'work' && c.tokens[k + 1]?.word === 'from') return k;
    if ([',', ';', '(', '*'].includes(word) && word !== c.tokens[i]!.word) break;
  }
  const from = c.tokens[i - 1]?.word === 'from' ? i - 1 : -1;
  return from;
}

interface Event {
  readonly kind: 'clause' | 'mark';
  /** First token of the clause, or the mark. */
  readonly at: number;
}

/** "repeat to end", "rep 5 more times" with no "from": said of the star that is open. */
function repeatsPlainly(c: Cursor, k: number): boolean {
  const at = c.at;
  const facts = c.facts.length;
  c.at = k + 1;
  const found =
    (readStop(c) ?? readTimes(c)) !== null &&
    (c.done || c.peek()!.kind === 'sign' || c.isAny(['and', 'then', 'turn', 'join', 'end']));
  c.at = at;
  c.facts.length = facts;
  return found;
}

/** Next thing said of `sign` after token `i`: a clause that repeats from it, or another such mark. */
function nextEvent(c: Cursor, i: number): Event | null {
  const sign = c.tokens[i]!.word;
  for (let k = i + 1; k < c.end; k++) {
    if (sign === '*' && c.tokens[k]!.word === 'rep' && repeatsPlainly(c, k)) return { kind: 'clause', at: k };
    if (c.tokens[k]!.word !== sign || c.tokens[k]!.kind !== 'sign') continue;
    if (multiplies(c, k)) continue;
    if (refers(c, k)) {
      const before = c.tokens[k - 1]!.word;
      if (before === 'at' || before === 'until' || before === 'before') continue;
      const start = clauseStart(c, k);
      if (start > i) return { kind: 'clause', at: start };
      continue;
    }
    return { kind: 'mark', at: k };
  }
  return null;
}

/** Where a repeat ends: before the work of its "ending with", which stands on its own. */
function endBefore(c: Cursor, start: number, tail: readonly Item[]): number {
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
    const stop = readStop(c);
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
function timesOf(c: Cursor, start: number, often: Often, rep: boolean): Times {
  const more = often.said === 'more' || (rep && often.said === null);
  return { kind: 'times', amount: often.amount, more, ...c.span(start) };
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
      if (!c.eatAny(['to', 'and', '-', '&', 'until', 'through'])) return null;
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
function readLast(c: Cursor, items: readonly Item[]): Ending {
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
          if (!c.eatAny(['working', 'work', 'with', 'placing', 'making', 'end with', 'end'])) return null;
          c.eat('the');
          if (!c.isAny(['last', 'final']) || c.isAny(['last rep', 'last patt', 'final rep', 'last time']))
            return null;
          c.at++;
          const work = readWork(c);
          if (!work || Array.isArray(work)) return null;
          return work.places[0]!.kind === 'next' && work.places[0]!.implied ? null : work;
        });
        if (final) return { last: { kind: 'ending', items: [final], ...c.span(start) }, tail: [] };
        if (!c.eatAny(['end', 'ends', 'stop', 'finish', 'finishing', 'stopping'])) return null;
        const rep =
          c.eatAny([
            'the last rep',
            'last rep',
            'the final rep',
            'final rep',
            'on last rep',
            'last patt rep',
            'last time',
            'rep',
          ]) !== null;
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
        if (rep) return { last: { kind: 'ending', items: tail, ...c.span(start) }, tail: [] };
        return { last: null, tail };
      };
      const result = close >= 0 ? c.within(close, read) : read();
      if (close >= 0 && result) c.at = close + 1;
      return result && c.at > wrapped ? result : null;
    }) ?? { last: null, tail: [] }
  );
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

function tooDeep(c: Cursor, start: number, end: number): Item[] {
  c.at = end;
  const span = c.span(start);
  c.fact('too-deep', span, { limit: DEEPEST });
  return [{ type: 'unread', ...span }];
}

/** True when the brackets hold a remark: "(see note)", "(corner made)", "(RS)". */
function isRemark(c: Cursor, close: number, touching: boolean): boolean {
  const first = c.at + 1;
  const words = close - first;
  if (words <= 0) return true;
  for (let i = first; i < close; i++)
    if (c.tokens[i]!.word === 'made' || c.tokens[i]!.word === 'completed' || c.tokens[i]!.word === 'formed')
      return true;
  if (
    words === 1 &&
    touching &&
    ['inc', 'dec', 'incs', 'invdec', 'corner', 'rs', 'ws', 'cl', 'shell', 'v', 'picot'].includes(
      c.tokens[first]!.word,
    )
  )
    return true;
  return ['see', 'rs', 'ws', 'note', 'optional', 'now', 'you', 'this', 'if', 'right', 'wrong'].includes(
    c.tokens[first]!.word,
  );
}

/** Everything a bracket can be at the start of an item. */
export function readBracket(c: Cursor, before: readonly Item[]): Item[] {
  const start = c.at;
  const open = c.tokens[start]!;
  const close = c.partner[start]!;
  if (close < 0 || close >= c.end) {
    c.at++;
    c.fact('bracket-not-closed', open, { sign: open.word });
    return [{ type: 'unread', from: open.from, to: open.to }];
  }
  if (c.depth >= DEEPEST) return tooDeep(c, start, close + 1);
  const previous = c.tokens[start - 1];
  const touching =
    before.length > 0 &&
    previous?.kind !== 'sign' &&
    previous?.word !== 'and' &&
    previous?.word !== 'then' &&
    previous?.word !== 'work' &&
    previous?.word !== 'rep';
  const aside = (): Item[] => {
    c.at = close + 1;
    return [{ type: 'aside', ...c.span(start) }];
  };
  const said = c.attempt(() => {
    c.at++;
    const found = c.within(close, () => {
      const sentence = readSaid(c);
      if (sentence) return sentence.convention.counts;
      return c.isAny([
        'counts',
        'count',
        'counting',
        'counted',
        'does not',
        "doesn't",
        'do not',
        'not',
        'stands',
        'equals',
        'here',
        'now',
        'throughout',
        'this',
        'to stand',
        'standing for',
        'to count',
      ])
        ? readCountsAs(c)
        : null;
    });
    return found;
  });
  if (!said && c.isAny(['counts as', 'count as', 'counting'], 1)) return aside();
  if (said) {
    c.at = close + 1;
    c.said.push(said);
    return [{ type: 'aside', ...c.span(start) }];
  }
  const worksAfter = worksBehind(c, close);
  if (!worksAfter) {
    const count = readBracketCount(c);
    if (count) {
      c.counts.push(count);
      return [];
    }
    if (isRemark(c, close, touching)) return aside();
  }
  const facts = c.facts.length;
  const counted = c.counts.length;
  c.at = start + 1;
  const items = readInside(c, close);
  c.at = close + 1;
  if (!worksAfter) {
    const works = items.filter((item) => item.type !== 'unread' && item.type !== 'aside').length;
    const unread = items.some((item) => item.type === 'unread');
    const last = before.at(-1);
    const explains =
      touching && last?.type === 'work' && last.stitch.form !== 'plain' && last.to === previous!.to;
    if ((unread && works === 0) || items.length === 0 || explains) {
      c.facts.length = facts;
      c.counts.length = counted;
      return aside();
    }
    return items;
  }
  let result: Item[] = items;
  const often = c.attempt(() => {
    c.eatAny([',', ';']);
    const rep = c.eatAny(['rep', 'work']) !== null;
    c.eatAny([',', 'this', 'these', 'all']);
    const at = c.at;
    const stop = readStop(c);
    if (stop && !c.isAny(['post', 'next', 'stem'])) {
      return { kind: 'to', stop, ...c.span(at) } as Times;
    }
    const found = readTimes(c, true);
    return found ? timesOf(c, at, found, rep && found.said === 'more') : null;
  });
  if (often) {
    // "[…] 5 times across": the end adds nothing.
    c.attempt(() => (often.kind === 'times' && readStop(c)?.kind === 'end' ? true : null));
    const ending = readLast(c, items);
    result = [
      {
        type: 'repeat',
        items,
        mark: 'bracket',
        times: often,
        last: ending.last,
        from: c.tokens[start]!.from,
        to: endBefore(c, start, ending.tail),
      },
      ...ending.tail,
    ];
  }
  const places = c.attempt(() => {
    c.eat(',');
    c.eatAny(['all', 'each', 'both']);
    c.eat('worked');
    if (
      !c.isAny([
        'in',
        'around',
        'rnd',
        'over',
        'on',
        'evenly',
        'to',
        'at',
        'across',
        'under',
        'between',
        'along',
      ])
    )
      return c.eat('next') ? (c.at--, readPlaces(c)) : null;
    return readPlaces(c);
  });
  if (!places) return result;
  const group: Item = { type: 'group', items: insideGroup(result), places, ...c.span(start) };
  const again = c.attempt(() => {
    const at = c.at;
    const found = readTimes(c);
    return found && found.said !== 'more' ? timesOf(c, at, found, false) : null;
  });
  if (!again) return [group];
  return [{ type: 'repeat', items: [group], mark: 'bracket', times: again, last: null, ...c.span(start) }];
}

/** True when a place or a number of times follows the closing bracket. */
function worksBehind(c: Cursor, close: number): boolean {
  const at = c.at;
  const facts = c.facts.length;
  c.at = close + 1;
  let ahead = 0;
  const comma = c.isAny([',', ';']);
  if (comma) ahead++;
  let found = false;
  if (c.isAny(['in', 'all in', 'both in', 'each in', 'worked in'], ahead) && !comma) found = true;
  else if (c.isAny(['all in'], ahead)) found = true;
  else if (
    !comma &&
    c.isAny(
      [
        'evenly',
        'between',
        'under',
        'around the post',
        'around post',
        'around next',
        'on next',
        'over next',
        'next',
      ],
      ahead,
    )
  )
    found = true;
  else {
    c.at += ahead;
    const rep = c.eatAny(['rep from', 'rep']);
    if (rep !== 'rep from') {
      const stop = readStop(c);
      if (stop) found = true;
      else found = readTimes(c, !comma) !== null;
    }
  }
  c.at = at;
  c.facts.length = facts;
  return found;
}

/** "rep (…) 5 times", "rep [..] across": the bracket behind "rep". */
export function readRepBracket(c: Cursor, before: readonly Item[]): Item[] | null {
  return c.attempt(() => {
    if (!c.eatAny(['rep', 'work'])) return null;
    c.eat('the');
    if (!(c.word() in OPENING)) return null;
    return readBracket(c, before);
  });
}

/** "Repeat around", "; rep 5 more times" with no star: repeats the row's work so far, and says so. */
export function readRepeatOfAll(c: Cursor, before: readonly Item[]): Item[] | null {
  // ", x 6" behind a plain list says how often all of it is worked.
  const multiplied = c.word() === 'x' && c.peek(1)?.kind === 'number';
  if (!c.is('rep') && !multiplied) return null;
  return c.attempt(() => {
    const start = c.at;
    if (!multiplied) c.at++;
    c.eatAny(['this', 'these', 'all', 'above', 'the']);
    c.eatAny(['patt', 'sequence', 'steps', 'instructions', 'process']);
    const at = c.at;
    const stop = readStop(c);
    const often = stop ? null : readTimes(c);
    if (!stop && !often) return null;
    if (!(c.done || c.peek()!.kind === 'sign' || c.isAny(['and', 'then', 'turn', 'join']))) return null;
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
  return times.kind === 'times' ? { ...times, more: false } : times;
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
