/**
 * Reads instructions for whole rows: "Rep Rows 2 and 3 five more times", "work 10 rows even", "dec 1 st at
 * each end of every 4th row", "work as for Back to **". It works none of them.
 */
import { type Cursor, OPENING } from './cursor.ts';
import { bracketValues, one, readAmount, readOrdinal } from './numbers.ts';
import { isMark } from './repeats.ts';
import { readTimes } from './times.ts';
import type { Amount, AsPiece, Even, Item, Length, RowsAgain, RowsRef, Shaping, StitchRef } from './tree.ts';
import { readStitch } from './words.ts';

const ROW = ['rows', 'row', 'rnds', 'rnd'];

function isRound(word: string | null): boolean {
  return word === 'rnd' || word === 'rnds';
}

/** "Row 2", "Rows 2 and 3", "Rows 2-5", "rows 2, 4 and 6", "last 2 rows", "2nd row". */
export function readRowsRef(c: Cursor): RowsRef | null {
  return c.attempt(() => {
    const start = c.at;
    c.eatAny(['the', 'all of', 'these']);
    if (c.eatAny(['last', 'prev', 'these', 'those'])) {
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
      const word = numbers.length > 0 ? c.eatAny(ROW) : null;
      return word ? { numbers, word } : null;
    });
    if (nth) return refOf(c, start, nth.numbers, isRound(nth.word));
    const short = c.peek()?.text === 'R' && c.peek(1)?.kind === 'number';
    const word = short ? (c.at++, 'row') : c.eatAny(ROW);
    if (!word) return null;
    const round = isRound(word);
    const first = readRowNumber(c);
    if (!first) return null;
    const last = c.attempt(() => {
      if (!c.eatAny(['-', 'to', 'through', 'thru'])) return null;
      c.eatAny(ROW);
      return readRowNumber(c);
    });
    if (last) return { kind: 'numbers', first, last, round, ...c.span(start) };
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

const UNITS: Readonly<Record<string, Length['unit']>> = {
  cm: 'cm',
  cms: 'cm',
  centimetres: 'cm',
  centimeters: 'cm',
  mm: 'mm',
  in: 'in',
  ins: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
};

/** "30 (32, 34) cm", "12½ in", "30.5cm": a length, or null. */
export function readLength(c: Cursor, second = false): Length | null {
  return c.attempt(() => {
    const start = c.at;
    const values: number[] = [];
    const value = (): number | null => {
      const token = c.peek();
      if (token?.kind !== 'number') return null;
      c.at++;
      let sum = token.value;
      const fraction = c.peek();
      if (fraction?.kind === 'number' && fraction.value < 1) {
        sum += fraction.value;
        c.at++;
      } else if (
        fraction?.kind === 'number' &&
        c.word(1) === '/' &&
        c.peek(2)?.kind === 'number' &&
        c.peek(2)!.value > 0
      ) {
        sum += fraction.value / c.peek(2)!.value;
        c.at += 3;
      }
      return Math.min(sum, 1e6);
    };
    const first = value();
    if (first === null) return null;
    values.push(first);
    while (c.word() in OPENING) {
      const close = c.partner[c.at]!;
      if (close < 0 || close >= c.end) break;
      const inside = c.attempt(() => {
        c.at++;
        const found: number[] = [];
        while (c.at < close) {
          const next = value();
          if (next === null) return null;
          found.push(next);
          c.eatAny([',', ':', ';', '-', '/']);
        }
        if (c.at !== close) return null;
        c.at++;
        return found;
      });
      if (!inside) break;
      values.push(...inside);
    }
    const unit = c.word();
    if (!Object.hasOwn(UNITS, unit)) return null;
    c.at++;
    if (c.word() === '.' && c.peek(1) && c.peek(1)!.word in OPENING) c.at++;
    else if (
      c.word() === '.' &&
      unit !== '"' &&
      !c.done &&
      c.peek(1) &&
      c.peek(1)!.kind === 'word' &&
      c.peek(1)!.text[0] === c.peek(1)!.word[0]
    )
      c.at++;
    const length: Length = { values, unit: UNITS[unit]!, ...c.span(start) };
    // "30 cm / 12 in", "30 cm (12 in)": the same once more in the other unit.
    c.attempt(() => {
      if (second) return null;
      const wrapped = c.word() in OPENING;
      if (!wrapped && !c.isAny(['/', 'or'])) return null;
      c.at++;
      return readLength(c, true) && (!wrapped || c.eatAny([')', ']'])) ? true : null;
    });
    return length;
  });
}

/** "until piece measures 30 (32, 34) cm from beg". */
function readUntil(c: Cursor): Length | null {
  return c.attempt(() => {
    c.eat(',');
    if (!c.eatAny(['until', 'for', 'to'])) return null;
    for (let words = 0; words < 8; words++) {
      const length = readLength(c);
      if (length) {
        c.attempt(() => {
          if (!c.eatAny(['from', 'in length', 'long', 'wide', 'or', 'total'])) return null;
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
    }
    return null;
  });
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

function readEndingWith(c: Cursor): RowsAgain['endingWith'] {
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

/** Takes ", working in pattern", "for pattern", "alternately": words that add nothing. */
function eatForPattern(c: Cursor): void {
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
  let times: Amount | null = null;
  let until: Length | null = null;
  const often = takesTimes
    ? c.attempt(() => {
        c.eatAny([',', ':']);
        const found = readTimes(c);
        return found;
      })
    : null;
  if (often) times = often.said === 'total' ? less(often.amount, 1) : often.amount;
  else {
    const total = c.attempt(() => {
      if (!c.eatAny(['for', 'over next', 'over'])) return null;
      c.eatAny(['the', 'next', 'a total of', 'another']);
      const amount = readAmount(c);
      if (!amount) return null;
      c.eat('more');
      return c.eatAny(ROW) ? amount : null;
    });
    if (total) times = divide(total, lengthOf(rows)) ?? null;
    until = readUntil(c);
  }
  const left = times || until ? null : readUntilCount(c);
  eatForPattern(c);
  const endingWith = readEndingWith(c);
  const list: RowsAgain[] = [{ type: 'rows-again', rows, times, until, left, endingWith, ...c.span(start) }];
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
    if (pattern && !c.isAny(['for #', 'even', 'from'])) {
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
      return often ?? null;
    });
    const rows = readRowsRef(c);
    if (!rows) return null;
    const list = again(c, start, rows, !early);
    if (!early) return list;
    const [first, ...rest] = list;
    return [{ ...first!, times: early.said === 'total' ? less(early.amount, 1) : early.amount }, ...rest];
  });
}

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

/** "Work 10 rows even", "work even for 8 rows", "work straight until piece measures 30 cm". */
export function readEven(c: Cursor): Even | null {
  return c.attempt(() => {
    const start = c.at;
    if (!c.eatAny(['work', 'cont', 'cont to work', 'cont working', 'working'])) {
      if (!c.isAny(['even'])) return null;
    }
    c.eatAny(['a further', 'another', 'next']);
    const rows = c.attempt(() => {
      const amount = readAmount(c);
      if (!amount) return null;
      c.eat('more');
      return c.eatAny(ROW) ? amount : null;
    });
    if (rows) {
      const stitch = readInStitch(c);
      if (!c.eatAny(EVEN) && !(stitch && rows)) return null;
      eatForPattern(c);
      return { type: 'even', rows, stitch: stitch ?? readInStitch(c), until: null, ...c.span(start) };
    }
    if (!c.eatAny(EVEN)) return null;
    c.eatAny(['in patt', 'as established', 'in established patt', 'as set']);
    c.eat(',');
    const after = c.attempt(() => {
      c.eatAny(['for', 'over', 'a further']);
      c.eatAny(['next', 'the next', 'a further', 'another']);
      const amount = readAmount(c);
      if (!amount) return null;
      c.eat('more');
      return c.eatAny(ROW) ? amount : null;
    });
    const until = after ? null : readUntil(c);
    const stitch = readInStitch(c);
    if (!after && !until && !(c.done || c.peek()!.kind === 'sign')) return null;
    readEndingWith(c);
    return { type: 'even', rows: after, stitch, until, ...c.span(start) };
  });
}

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

/** "dec 1 st at each end of every 4th row 5 times, then every 2nd row 3 times", "dec 6 sts evenly around". */
export function readShaping(c: Cursor): Shaping | null {
  return c.attempt(() => {
    const start = c.at;
    const word = c.eatAny(['inc', 'dec']);
    if (!word) return null;
    const change = word === 'inc' ? 'inc' : 'dec';
    const amount = readAmount(c) ?? one(c);
    c.eatAny(['sts', 'st', 'sc', 'dc', 'tr', 'hdc', 'htr']);
    c.eatAny(['at', 'on', ',']);
    let ends: Shaping['ends'] | null = null;
    if (
      c.eatAny([
        'each end',
        'both ends',
        'each side',
        'both sides',
        'each edge',
        'both edges',
        'beg and end',
        'beg and the end',
        'the beg and end',
        'either end',
        'each end of row',
        'start and end',
      ])
    )
      ends = 'each';
    else if (c.eatAny(['beg', 'start', 'the beg', 'the start', 'neck edge', 'armhole edge', 'side edge']))
      ends = 'start';
    else if (c.eatAny(['end', 'the end'])) ends = 'finish';
    else if (c.eatAny(['evenly spaced', 'evenly'])) {
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
    if (!ends) return null;
    let now = false;
    c.attempt(() => {
      c.eatAny(['of', 'on', 'in', 'at']);
      c.eat('the');
      if (!c.eatAny(['this', 'next']) || c.peek()?.kind === 'number') return null;
      c.eatAny(ROW);
      c.eatAny([', and', 'and', 'then', ',']);
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
      c.attempt(() => (c.eat('of') && c.eatAny(ROW) ? true : null));
    }
    return { type: 'shaping', change, amount, ends, now, schedule, until, ...c.span(start) };
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
      !c.eatAny(['as given for', 'as for', 'same as for', 'to match']) &&
      !(led && c.eatAny(['same as', 'the same as', 'as', 'like']))
    )
      return null;
    c.eatAny(['the', 'of']);
    const from = c.at;
    let words = 0;
    while (
      words < 5 &&
      c.peek()?.kind === 'word' &&
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
  return readRowsAgain(c) ?? wrap(readEven(c)) ?? wrap(readShaping(c)) ?? wrap(readAsPiece(c));
}

function wrap(item: Item | null): Item[] | null {
  return item ? [item] : null;
}
