/**
 * Reads rows worked again: "Rep Rows 2 and 3 five more times", "as Row 2", "until piece measures 30 cm".
 */
import { type Cursor, OPENING } from './cursor.ts';
import { readTitle } from './labels.ts';
import { readLength } from './lengths.ts';
import { bracketValues, one, readAmount, readOrdinal } from './numbers.ts';
import { readTimes } from './times.ts';
import type { Amount, Length, RowsAgain, RowsRef } from './tree.ts';
import { readStitch } from './words.ts';

export const ROW = ['rows', 'row', 'rnds', 'rnd'];

function isRound(word: string | null): boolean {
  return word === 'rnd' || word === 'rnds';
}

/** "Row 2", "Rows 2 and 3", "Rows 2-5", "rows 2, 4 and 6", "last 2 rows", "2nd row". */
export function readRowsRef(c: Cursor): RowsRef | null {
  return c.attempt(() => {
    const start = c.at;
    // "Rep [Rows 2 and 3] 5 times": the bracket only holds them together.
    const close = c.word() in OPENING ? c.partner[c.at]! : -1;
    if (close > 0 && close < c.end) {
      c.at++;
      const held = readRowsRef(c);
      if (held === null || c.at !== close) return null;
      c.at++;
      return { ...held, ...c.span(start) };
    }
    c.eatAny(c.is('these last') ? ['these'] : ['the', 'all of']);
    if (c.eatAny(['last', 'prev', 'these', 'those', 'this'])) {
      const amount = readAmount(c) ?? one(c);
      const word = c.eatAny(ROW);
      if (!word) return null;
      return { kind: 'last', amount, round: isRound(word), ...c.span(start) };
    }
    const nth = c.attempt(() => {
      const numbers: Amount[] = [];
      for (;;) {
        const number = readOrdinal(c);
        if (!number) break;
        numbers.push(number);
        if (!c.eatAny([', and', ',', 'and', '&'])) break;
      }
      if (numbers.length === 0) return null;
      const word = c.eatAny(ROW);
      if (word) return { numbers, word };
      // "3rd row: As 2nd."
      const bare = c.tokens[start - 1]?.word === 'as' && (c.done || c.word() === '.');
      return bare ? { numbers, word: c.round ? 'rnd' : 'row' } : null;
    });
    if (nth) return refOf(c, start, nth.numbers, isRound(nth.word));
    const titled = readTitle(c);
    if (titled)
      return c.peek()?.kind === 'number' && !readsTimes(c)
        ? null
        : { kind: 'titled', ...titled, words: c.words(c.span(start)), ...c.span(start) };
    const short = isShort(c);
    if (short) c.at++;
    const word = short ? 'row' : c.eatAny(ROW);
    if (!word) return null;
    const round = isRound(word);
    const first = readRowNumber(c);
    if (!first) return null;
    let again = false;
    const last = c.attempt(() => {
      const sign = c.eatAny(['-', 'to', 'through', 'thru']);
      if (!sign) return null;
      // "R2-R3" as well as "Rows 2-3".
      if (short && isShort(c)) c.at++;
      again = c.eatAny(['row', 'rnd']) !== null;
      const named = again || c.eatAny(ROW) !== null;
      const number = readRowNumber(c);
      // "Rep Rnd 2—172 (184, 196) hdc": behind the dash stands the count.
      const isCount = sign === '-' && !named && (c.isAny(['st', 'sts']) || c.lexicon.bases.has(c.word()));
      return isCount ? null : number;
    });
    const through = again && !word.endsWith('s') ? ({ through: true } as const) : {};
    if (last) return { kind: 'numbers', first, last, ...through, round, ...c.span(start) };
    const numbers = [first];
    while (numbers.length < 60) {
      const more = c.attempt(() => {
        if (!c.eatAny([', and', ', then', ',', 'and then', 'and', '&'])) return null;
        const again = c.eatAny(ROW);
        const number = readRowNumber(c);
        if (!number || (!again && c.isAny(['times', 'time', 'more', 'ch', 'sts', 'sc', 'dc']))) return null;
        return number;
      });
      if (!more) break;
      numbers.push(more);
    }
    return refOf(c, start, numbers, round);
  });
}

/** "R2", "r2": a row by its letter. */
function isShort(c: Cursor): boolean {
  const number = c.peek(1);
  const letter = c.peek()?.text;
  return number?.kind === 'number' && (letter === 'R' || (letter === 'r' && !number.gap));
}

/** Whether what follows says how often: "3 more times" behind "Dec Row". */
function readsTimes(c: Cursor): boolean {
  const at = c.at;
  const often = readTimes(c);
  c.at = at;
  return often !== null;
}

/** "every other row", "on every 4th row", "every RS row": how many rows each working takes. */
function readEveryRow(c: Cursor): Amount | null {
  return c.attempt(() => {
    c.eat(',');
    c.eatAny(['on', 'in']);
    const start = c.at;
    let every: Amount | null = null;
    if (
      c.eatAny([
        'every other',
        'every alt',
        'each alt',
        'alt',
        'every second',
        'every rs',
        'every ws',
        'each rs',
        'each ws',
        'foll alt',
      ])
    ) {
      every = { kind: 'one', value: 2, ...c.span(start) };
    } else if (c.eatAny(['every foll', 'every', 'each foll', 'each', 'foll'])) {
      every = readOrdinal(c) ?? c.attempt(() => readAmount(c)) ?? one(c);
    }
    if (!every) return null;
    c.eat('foll');
    return c.eatAny(ROW) ? every : null;
  });
}

function readRowNumber(c: Cursor): Amount | null {
  // "Rows 2, 4": the comma lists rows, not sizes.
  const start = c.at;
  const token = c.peek();
  if (token?.kind === 'ordinal') return null;
  const plain = readAmount(c, false);
  if (!plain || plain.kind === 'figure') return plain;
  const more = bracketValues(c, c.at);
  if (more && more.values.length >= 1 && (more.values.length > 1 || c.sizes === 2)) {
    const values = [plain.kind === 'one' ? plain.value : null, ...more.values];
    c.at = more.next;
    return { kind: 'sizes', values, ...c.span(start) };
  }
  return plain;
}

function refOf(c: Cursor, start: number, numbers: readonly Amount[], round: boolean): RowsRef {
  const span = c.span(start);
  const [first, second] = numbers;
  if (numbers.length === 1) return { kind: 'numbers', first: first!, last: first!, round, ...span };
  if (
    numbers.length === 2 &&
    first!.kind === 'one' &&
    second!.kind === 'one' &&
    second!.value === first!.value + 1
  ) {
    return { kind: 'numbers', first: first!, last: second!, round, ...span };
  }
  return { kind: 'list', numbers, round, ...span };
}

/** "until piece measures 30 (32, 34) cm from beg". */
export function readUntil(c: Cursor): Length | null {
  return c.attempt(() => {
    c.eat(',');
    if (!c.eatAny(['until', 'for', 'to'])) return null;
    for (let words = 0; words < 8; words++) {
      const length = readLength(c);
      if (length) {
        c.attempt(() => {
          if (
            !c.eatAny(['from', 'in length', 'long', 'wide', 'tall', 'high', 'square', 'deep', 'or', 'total'])
          )
            return null;
          for (let n = 0; n < 8 && c.peek() && c.peek()!.kind !== 'sign'; n++) {
            if (c.isAny(['end', 'and', 'then'])) break;
            c.at++;
          }
          return true;
        });
        return length;
      }
      if (!c.peek() || c.peek()!.kind === 'sign') return null;
      c.at++;
      if (c.word() === '.' && c.tokens[c.at - 1]!.word === 'approx') c.at++;
    }
    return null;
  });
}

/** Words of a wish, not of a measure. */
const AS_WISHED =
  /\b(?:desired|wanted|required|preferred|needed|like|likes|want|wish|please|choose|prefer|desire|fits?|run out|long enough|wide enough|big enough|large enough|out of yarn|reached|reaches|comfortabl[ey]|happy|square|same length|as long|covers?|covered)\b/iu;

/** "until your scarf is as long as you like, or about 60 inches": how far, which the maker's own wish decides. */
function eatAsWished(c: Cursor): boolean {
  const took = c.attempt(() => {
    c.eat(',');
    const start = c.at;
    if (!c.eatAny(['until', 'to', 'for', 'as many times as', 'as often as', 'as many rows as', 'as long as']))
      return null;
    while (c.peek() && c.peek()!.kind === 'word' && c.at - start < 16) c.at++;
    if (!AS_WISHED.test(c.words(c.span(start)))) return null;
    c.attempt(() => {
      c.eat(',');
      if (!c.eatAny(['or', 'about', 'approximately', 'approx'])) return null;
      c.eatAny(['about', 'approximately', 'approx', 'around', 'until', 'for']);
      c.eatAny(['it measures', 'piece measures', 'it is']);
      return readLength(c);
    });
    return c.done || c.peek()!.kind === 'sign' ? true : null;
  });
  return took !== null;
}

/** "until 5 sts remain", "until there are 22 dc": how many stitches there are then. */
function readUntilCount(c: Cursor): Amount | null {
  return c.attempt(() => {
    c.eat(',');
    const there = c.eatAny(['until there are', 'until you have', 'until']);
    if (!there) return null;
    c.eat('only');
    const amount = readAmount(c);
    if (!amount) return null;
    if (!readStitch(c) && !c.eatAny(['sts', 'st'])) return null;
    c.eatAny(['are', 'is']);
    return c.eatAny(['rem', 'left', 'in total', 'in all', 'on the row']) || there !== 'until' ? amount : null;
  });
}

const THERE_ARE = [
  'until there are',
  'until you have worked',
  'until you have completed',
  'until you have made',
  'until you have',
  'until piece has',
  'until the piece has',
  'until work has',
  'until the work has',
];
/** "until the heel flap has 16 rows": a piece by what it is called. */
function untilSomethingHas(c: Cursor): boolean {
  return (
    c.attempt(() => {
      if (!c.eat('until')) return null;
      c.eat('the');
      for (let words = 0; words < 3 && c.word() !== 'has'; words++) {
        if (c.peek()?.kind !== 'word' || c.lexicon.bases.has(c.word())) return null;
        c.at++;
      }
      return c.eat('has') ? true : null;
    }) ?? false
  );
}
const ARE_WORKED = ['have been', 'are', 'were', 'is', 'has been'];
const WORKED = ['worked', 'completed', 'complete', 'made', 'done', 'finished'];

/** "until there are 22 rows", "until 12 rows have been worked in all": rows of the piece then. */
export function readUntilRows(c: Cursor): Amount | null {
  return c.attempt(() => {
    c.eat(',');
    const there = c.eatAny(THERE_ARE) !== null || untilSomethingHas(c);
    if (!there && !c.eat('until')) return null;
    const total = c.eatAny(['a total of', 'in all']);
    const amount = readAmount(c);
    if (!amount || !c.eatAny(ROW)) return null;
    const worked = c.attempt(() => (c.eatAny(ARE_WORKED) ? c.eatAny(WORKED) : null));
    const all = c.eatAny(['in all', 'in total', 'altogether', 'total']);
    // "until 12 rows remain" says something else.
    return there || total || worked || all ? amount : null;
  });
}

/**
 * "for a total of 40 rows", "for 40 rows in all": rows of the piece altogether. "A total of 8 more rows" are so many
 * from here.
 */
export function readTotalRows(c: Cursor): Amount | null {
  return c.attempt(() => {
    c.eat(',');
    const reaches = c.eatAny(['until', 'for', 'to']);
    const total = c.eatAny(['a total of', 'total of', 'the total of', 'a total', 'total']);
    const amount = readAmount(c);
    if (!amount) return null;
    const before = c.eatAny(IN_ALL);
    if (c.eat('more') || !c.eatAny(ROW)) return null;
    const after = c.eatAny(IN_ALL);
    // "Two rows total" with no word of reaching them says how many there were.
    return (total && reaches) || ((before || after) && reaches) ? amount : null;
  });
}

const IN_ALL = ['in total', 'in all', 'all told', 'altogether', 'overall', 'total'];

/** "to Row 40", "through Row 40", "until Row 40 is completed": the number of the last row. */
function readUpToRow(c: Cursor): Amount | null {
  return c.attempt(() => {
    c.eat(',');
    if (
      !c.eatAny([
        'up to and including',
        'to and including',
        'up through',
        'up to',
        'until you reach',
        'until you have completed',
        'until you have worked',
        'until you finish',
        'until',
        'through',
        'thru',
        'to',
      ])
    )
      return null;
    c.eatAny(['the end of', 'end of']);
    if (!c.eatAny(['row', 'rnd'])) {
      if (!isShort(c)) return null;
      c.at++;
    }
    const row = readRowNumber(c);
    if (!row) return null;
    c.attempt(() => (c.eatAny(ARE_WORKED) ? c.eatAny(WORKED) : null));
    c.eatAny(['inclusive', 'included', ...WORKED]);
    return row;
  });
}

/** ", working 3 rows even between": how many rows each working takes, its own among them. */
function readEvenBetween(c: Cursor): Amount | null {
  return c.attempt(() => {
    const start = c.at;
    c.eatAny([',', ';', '(']);
    if (!c.eatAny(['working', 'work', 'with'])) return null;
    const rows = readAmount(c, false);
    if (rows?.kind !== 'one' || !c.eatAny(ROW)) return null;
    c.eatAny(['even', 'straight', 'plain', 'without shaping', 'in patt']);
    if (!c.eatAny(['in between', 'between'])) return null;
    c.eatAny(['each rep', 'each inc', 'each dec', 'reps', 'incs', 'decs', 'each', 'them']);
    c.eat(')');
    return { ...rows, value: rows.value + 1, ...c.span(start) };
  });
}

export function readEndingWith(c: Cursor): RowsAgain['endingWith'] {
  return c.attempt(() => {
    c.eat(',');
    c.eat('and');
    if (!c.eatAny(['end', 'finishing', 'finish'])) return null;
    c.eatAny(['after', 'with', 'on', 'by']);
    c.eatAny(['working', 'completing', 'having']);
    c.eatAny(['a', 'the']);
    const side = c.eatAny(['rs', 'ws', 'right side', 'wrong side']);
    if (side) {
      c.eatAny(['facing']);
      c.eatAny(ROW);
      c.eat('facing');
      return side === 'rs' || side === 'right side' ? 'RS' : 'WS';
    }
    c.eatAny(['patt', 'rep']);
    if (!c.eatAny(ROW)) {
      const nth = readOrdinal(c);
      return nth && c.eatAny(ROW) ? nth : null;
    }
    return readRowNumber(c);
  });
}

/** ", increasing 1 st each row", ", adding one block on every row": what the rows do that are worked again. */
function eatPerRow(c: Cursor): void {
  c.attempt(() => {
    if (!c.eatAny([',', ';', '-'])) return null;
    if (!c.eatAny(['inc', 'dec', 'adding', 'losing', 'gaining', 'removing'])) return null;
    c.pass('by');
    if (!readAmount(c) && !c.eatAny(['a', 'one'])) return null;
    if (!readStitch(c))
      c.eatAny(['sts', 'st', 'blocks', 'block', 'tiles', 'tile', 'shells', 'more st', 'more sts']);
    c.eatAny(['at', 'on', 'in']);
    c.eatAny(['each end of', 'each side of']);
    if (c.eatAny(['per', 'each', 'every'])) return c.eatAny(ROW);
    return c.eat('each time') ? true : null;
  });
}

/** Takes ", working in pattern", "for pattern", "alternately": words that add nothing. */
export function eatForPattern(c: Cursor): void {
  c.eatAny([
    'for patt',
    'for the patt',
    'to form patt',
    'for st patt',
    'form patt',
    'in sequence',
    'consecutively',
    'in order',
    'as patt',
    'for pattern st',
    'alternately',
    'throughout',
    'in that order',
    'as established',
    'for body',
    'as before',
  ]);
}

function again(c: Cursor, start: number, rows: RowsRef, takesTimes: boolean, chained = 0): RowsAgain[] {
  eatForPattern(c);
  const every = readEveryRow(c);
  let times: Amount | null = null;
  let until: Length | null = null;
  const reached = readUntilRows(c) ?? readTotalRows(c) ?? readUpToRow(c);
  const often =
    takesTimes && reached === null
      ? c.attempt(() => {
          c.eatAny([',', ':']);
          const found = readTimes(c);
          // "for a total of 8 more rows" says how many rows, not how often.
          return found && !c.isAny(ROW) ? found : null;
        })
      : null;
  if (often) {
    times = often.said === 'total' ? less(often.amount, 1) : often.amount;
    // "19 more times, for a total of 40 rows": the same told once more.
    readTotalRows(c);
  } else if (reached === null) {
    const total = c.attempt(() => {
      if (!c.eatAny(['for', 'over next', 'over'])) return null;
      c.eatAny(['the', 'next', 'a total of', 'another']);
      const amount = readAmount(c);
      if (!amount) return null;
      c.eatAny(['more', 'additional', 'further']);
      return c.eatAny(ROW) ? amount : null;
    });
    if (total) times = divide(total, lengthOf(rows)) ?? null;
    until = readUntil(c);
  }
  const inAll = times || until ? null : reached;
  const left = times || until || inAll ? null : readUntilCount(c);
  const wished = !times && !until && !inAll && !left && eatAsWished(c);
  eatForPattern(c);
  const between = readEvenBetween(c);
  const endingWith = readEndingWith(c);
  eatPerRow(c);
  const apart = every ?? between;
  const spaced = {
    ...(apart ? { every: apart } : {}),
    ...(inAll ? { inAll } : {}),
    ...(wished ? { asWished: true as const } : {}),
  };
  const list: RowsAgain[] = [
    { type: 'rows-again', rows, times, ...spaced, until, left, endingWith, ...c.span(start) },
  ];
  const then = c.attempt(() => {
    c.eatAny([',', ';']);
    if (chained > 8 || !c.eatAny(['and then', 'then', 'and'])) return null;
    c.eatAny(['rep', 'work']);
    const at = c.at;
    const ref = readRowsRef(c);
    return ref ? again(c, at, ref, true, chained + 1) : null;
  });
  if (then) list.push(...then);
  return list;
}

/** "Repeat for 8 more rows", "rep until piece measures 20 cm": which row is not said, and so the last. */
function lastRowAgain(c: Cursor, start: number): RowsAgain[] | null {
  if (!c.isAny(['for', 'until'])) return null;
  const rows: RowsRef = { kind: 'last', amount: one(c), round: false, ...c.here() };
  const list = again(c, start, rows, false);
  const [{ times, until, inAll }] = list as [RowsAgain];
  return times || until || inAll ? list : null;
}

function less(amount: Amount, by: number): Amount {
  if (amount.kind === 'one') return { ...amount, value: Math.max(0, amount.value - by) };
  if (amount.kind === 'sizes') {
    return { ...amount, values: amount.values.map((v) => (v === null ? null : Math.max(0, v - by))) };
  }
  return amount;
}

/** How many rows one working of `rows` takes, or null when that is not one number. */
function lengthOf(rows: RowsRef): number | null {
  if (rows.kind === 'numbers' && rows.first.kind === 'one' && rows.last.kind === 'one') {
    return rows.last.value - rows.first.value + 1;
  }
  if (rows.kind === 'list') return rows.numbers.length;
  if (rows.kind === 'last' && rows.amount.kind === 'one') return rows.amount.value;
  return null;
}

function divide(amount: Amount, by: number | null): Amount | null {
  if (by === null || by < 1) return null;
  if (amount.kind === 'one') return amount.value % by === 0 ? { ...amount, value: amount.value / by } : null;
  if (amount.kind === 'sizes' && amount.values.every((v) => v === null || v % by === 0)) {
    return { ...amount, values: amount.values.map((v) => (v === null ? null : v / by)) };
  }
  return by === 1 ? amount : null;
}

/** "Rep Rows 2 and 3 …", "as Row 2", "Same as Row 1", "cont in pattern". */
export function readRowsAgain(c: Cursor): RowsAgain[] | null {
  return c.attempt(() => {
    const start = c.at;
    const pattern = c.attempt(() => {
      if (!c.eatAny(['cont', 'keep', 'keeping', 'work', 'working', 'rep', 'cont to work', 'cont working']))
        return null;
      c.eatAny(['even', 'working']);
      if (
        !c.eatAny([
          'in patt as established',
          'in established patt',
          'in patt as set',
          'in patt as before',
          'in the established patt',
          'in patt',
          'patt as established',
          'patt',
          'as established',
          'as set',
          'in this manner',
          'in same manner',
          'in this way',
          'in the same way',
          'in same way',
        ])
      )
        return null;
      eatForPattern(c);
      return c.span(start);
    });
    // "Work in pattern to last 2 sts" is one row's work.
    const within = [
      'to last',
      'to within',
      'to marker',
      'to next',
      'across',
      'over next',
      'over first',
      'to end',
    ];
    if (pattern && !c.isAny(['for #', 'even', 'from', ...within])) {
      return again(c, start, { kind: 'pattern', ...pattern }, true);
    }
    if (pattern) return null;
    if (
      c.eatAny([
        'work same as for',
        'work same as',
        'work the same as',
        'same as for',
        'same as',
        'the same as',
        'work as for',
        'work as',
        'work like',
        'as for',
        'as in',
        'as per',
        'as',
        'like',
        'identical to',
        'see',
      ])
    ) {
      const rows = readRowsRef(c);
      return rows ? again(c, start, rows, false) : null;
    }
    if (
      !c.eatAny([
        'rep',
        'work',
        'alternate',
        'alt',
        'alternating',
        'cont to rep',
        'cont rep',
        'cont',
        'cont alternating',
      ])
    )
      return null;
    c.eatAny(['.', 'in', 'as for', 'as']);
    c.eat('patt');
    const early = c.attempt(() => {
      const often = readTimes(c);
      // "for 8 more rows" says how many rows, not how often.
      return often && !c.isAny(ROW) ? often : null;
    });
    const rows = readRowsRef(c);
    if (!rows) return early ? null : lastRowAgain(c, start);
    const list = again(c, start, rows, !early);
    if (!early) return list;
    const [first, ...rest] = list;
    return [{ ...first!, times: early.said === 'total' ? less(early.amount, 1) : early.amount }, ...rest];
  });
}
