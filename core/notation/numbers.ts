/**
 * Reads amounts: plain numbers, numbers as words, one number for each size in the bracket styles of the
 * trade, and figures. It never guesses a number that is not written.
 */
import type { Cursor } from './cursor.ts';
import { OPENING } from './cursor.ts';
import type { Amount } from './tree.ts';

/** Above this a number is a slip of the pen. */
export const LARGEST = 1_000_000;

const NUMBER_WORDS: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  twenty: 20,
};

const ORDINAL_WORDS: Readonly<Record<string, number>> = {
  first: 1,
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  sixth: 6,
  seventh: 7,
  eighth: 8,
  ninth: 9,
  tenth: 10,
};

/** An amount of one, at an empty place: for words that leave the number out. */
export function one(c: Cursor, value = 1): Amount {
  return { kind: 'one', value, ...c.here() };
}

/** Value of a number word, or null. */
export function numberWord(word: string): number | null {
  return Object.hasOwn(NUMBER_WORDS, word) ? NUMBER_WORDS[word]! : null;
}

function clipped(c: Cursor, value: number, at: number): number {
  if (value <= LARGEST) return value;
  c.fact('number-too-large', c.tokens[at]!, { limit: LARGEST, words: c.tokens[at]!.text });
  return LARGEST;
}

interface Values {
  readonly values: (number | null)[];
  readonly next: number;
}

/** "26, 28, –" or "26:28" or "26-28-30" between token `from` and `to`. */
function listBetween(c: Cursor, from: number, to: number): (number | null)[] | null {
  let comma = false;
  for (let i = from; i < to; i++) if ([',', ';', ':', '/', '|'].includes(c.tokens[i]!.word)) comma = true;
  const values: (number | null)[] = [];
  let wantsValue = true;
  for (let i = from; i < to; i++) {
    const token = c.tokens[i]!;
    if (token.kind === 'number') {
      if (!wantsValue || !Number.isInteger(token.value)) return null;
      values.push(clipped(c, token.value, i));
      wantsValue = false;
    } else if (wantsValue && (numberWord(token.word) ?? -1) >= 0) {
      values.push(numberWord(token.word));
      wantsValue = false;
    } else if (wantsValue && (token.word === '-' || token.word === 'no' || token.word === 'none')) {
      values.push(null);
      wantsValue = false;
    } else if (!wantsValue && [',', ';', ':', '/', '|'].includes(token.word)) {
      wantsValue = true;
    } else if (!wantsValue && token.word === '-' && !comma) {
      wantsValue = true;
    } else return null;
  }
  return wantsValue || values.length === 0 ? null : values;
}

/** A bracket of numbers only that begins at token `open`. */
export function bracketValues(c: Cursor, open: number): Values | null {
  const token = c.tokens[open];
  if (!token || open >= c.end || !(token.word in OPENING)) return null;
  const close = c.partner[open]!;
  if (close < 0 || close >= c.end || close - open > 80) return null;
  const values = listBetween(c, open + 1, close);
  return values ? { values, next: close + 1 } : null;
}

/** Words after the last row of a piece. */
const ENDS_PIECE = ['fasten', 'fo', 'cut', 'weave', 'stuff', 'break', 'close'];

/** True when a lone "(24)" behind a number is rather the count of the row than a second size. */
function rathersCount(c: Cursor, values: Values, before: number, chains: boolean): boolean {
  if (values.values.length > 1) return false;
  if (c.sizes === 2) return false;
  if (c.sizes === 1) return true;
  const next = c.tokens[values.next];
  const here = c.tokens[values.next - 1]!.line;
  const stop = next?.word === '.';
  const after = stop ? c.tokens[values.next + 1] : next;
  const comma = next?.word === ',' ? c.tokens[values.next + 1] : undefined;
  const closes = ENDS_PIECE.includes((comma ?? after)?.word ?? '');
  // "(6)" at the end of a line, whatever "Fasten off" the lines after it say.
  const atEnd =
    values.next + (stop ? 1 : 0) >= c.end || closes || (after !== undefined && after.line !== here);
  if (c.sizes !== null) return atEnd;
  return atEnd && (!chains || values.values[0] === before);
}

function checkSizes(c: Cursor, start: number, got: number): void {
  if (c.sizes !== null && c.sizes !== got && c.allSizes !== got) {
    c.fact('sizes-differ-in-length', c.span(start), { expected: c.sizes, got });
  }
}

/** "31/35/39", "31-35-39" without blanks: three or more numbers are sizes even where no line names them. */
function gluedList(c: Cursor, first: number, mark: string): (number | null)[] | null {
  if (mark !== '/' && mark !== '-') return null;
  const values: number[] = [first];
  let ahead = 0;
  while (c.word(ahead) === mark && !c.peek(ahead)!.gap && values.length < 40) {
    const token = c.peek(ahead + 1);
    if (token?.kind !== 'number' || token.gap || !Number.isInteger(token.value)) return null;
    values.push(token.value);
    ahead += 2;
  }
  if (values.length < 3) return null;
  c.at += ahead;
  return values;
}

/** "12, 14, 16, 18" or "12/14/16" behind the first number, only where the number of sizes is known. */
function openList(c: Cursor, first: number): (number | null)[] | null {
  const mark = c.word();
  if (c.sizes === null) return gluedList(c, first, mark);
  const n = c.sizes;
  if (n < 2) return null;
  if (![',', '/', ':', '-'].includes(mark)) return null;
  // "Ch 1, 2 sc in next st" is no list for two sizes.
  if (n === 2 && mark === ',') return null;
  const values: (number | null)[] = [first];
  let ahead = 0;
  while (c.word(ahead) === mark && values.length < n) {
    const token = c.peek(ahead + 1);
    if (token?.kind === 'number' && Number.isInteger(token.value)) values.push(token.value);
    else if (token?.word === '-' && mark === ',') values.push(null);
    else return null;
    ahead += 2;
  }
  if (values.length !== n) return null;
  if (c.word(ahead) === mark && c.peek(ahead + 1)?.kind === 'number') return null;
  c.at += ahead;
  return values;
}

/** "61 (67) (73) 79": brackets around every other number only, so that the last stands bare. */
function bareLast(c: Cursor, start: number, got: number): number | null {
  const singles = got >= 3 && c.at - start === 1 + 3 * (got - 1);
  const token = c.peek();
  if (!singles || token?.kind !== 'number' || !token.gap || !Number.isInteger(token.value)) return null;
  if (c.sizes !== null && c.sizes !== got + 1) return null;
  c.at++;
  return token.value;
}

/** Does an amount begin here, in digits, in words or as a figure? Brackets of sizes are left aside. */
export function amountAhead(c: Cursor): boolean {
  const token = c.peek();
  return token?.kind === 'number' || token?.kind === 'figure' || numberWord(token?.word ?? '') !== null;
}

/** "S: 50, M: 60, L: 70": a number for each size behind its name, in the order in which the text tells its sizes. */
function eachNamed(c: Cursor): (number | null)[] | null {
  const { from } = c.peek()!;
  // Sizes called by numbers alone cannot be told from amounts.
  if (!c.text.startsWith(c.labels[0]!, from) || !/\p{L}/u.test(c.labels[0]!)) return null;
  return c.attempt(() => {
    const values: (number | null)[] = [];
    for (const label of c.labels) {
      if (values.length > 0) c.eatAny([', and', '; and', ',', ';', '/', '|', 'and']);
      const at = c.peek()?.from ?? -1;
      if (at < 0 || !c.text.startsWith(label, at)) return null;
      while (!c.done && c.peek()!.from < at + label.length) c.at++;
      if (c.tokens[c.at - 1]!.to !== at + label.length) return null;
      c.eatAny([':', '=', '-']);
      const token = c.peek();
      if (token?.word === '-') values.push(null);
      else if (token?.kind === 'number' && Number.isInteger(token.value))
        values.push(clipped(c, token.value, c.at));
      else return null;
      c.at++;
    }
    return values;
  });
}

/**
 * An amount at the position, or null. `lists` false keeps brackets behind a number for the caller;
 * `chains` true: of a chain, whose lone bracket at the end of a row is a second size and no count.
 */
export function readAmount(c: Cursor, lists = true, chains = false): Amount | null {
  const start = c.at;
  const token = c.peek();
  if (!token) return null;
  if (token.kind === 'figure') {
    c.at++;
    return { kind: 'figure', index: token.value, ...c.span(start) };
  }
  if (token.word in OPENING && lists && c.sizes !== null && c.sizes > 1) {
    const all = bracketValues(c, c.at);
    if (!all || all.values.length !== c.sizes) return null;
    c.at = all.next;
    return { kind: 'sizes', values: all.values, ...c.span(start) };
  }
  const named = lists && c.labels.length > 1 ? eachNamed(c) : null;
  if (named) return { kind: 'sizes', values: named, ...c.span(start) };
  const word = numberWord(token.word);
  if (word !== null) {
    c.at++;
    const more = lists && c.sizes !== null && c.sizes > 1 ? bracketValues(c, c.at) : null;
    if (more && more.values.length === c.sizes! - 1) {
      c.at = more.next;
      return { kind: 'sizes', values: [word, ...more.values], ...c.span(start) };
    }
    return { kind: 'one', value: word, ...c.span(start) };
  }
  const behindDash = token.word === '-' && lists ? bracketValues(c, c.at + 1) : null;
  const dash =
    behindDash !== null &&
    (c.sizes === null
      ? behindDash.next < c.end && c.tokens[behindDash.next]!.kind === 'word'
      : c.sizes === behindDash.values.length + 1 || c.allSizes === behindDash.values.length + 1);
  if (!dash && (token.kind !== 'number' || !Number.isInteger(token.value))) return null;
  const first = dash ? null : clipped(c, token.value, c.at);
  c.at++;
  if (!lists) return { kind: 'one', value: first ?? 0, ...c.span(start) };
  const values: (number | null)[] = [first];
  for (let n = 0; n < 40; n++) {
    const more = bracketValues(c, c.at);
    if (!more || (values.length === 1 && first !== null && rathersCount(c, more, first, chains))) break;
    if (values.length > 1 && c.sizes !== null && values.length >= c.sizes) break;
    values.push(...more.values);
    c.at = more.next;
  }
  if (values.length > 1) {
    const bare = bareLast(c, start, values.length);
    if (bare !== null) values.push(bare);
    checkSizes(c, start, values.length);
    return { kind: 'sizes', values, ...c.span(start) };
  }
  const open = first === null ? null : openList(c, first);
  if (open) return { kind: 'sizes', values: open, ...c.span(start) };
  return { kind: 'one', value: first ?? 0, ...c.span(start) };
}

/** "3rd", "third", "3rd (4th, 5th)" as an amount, or null. "first" only when asked. */
export function readOrdinal(c: Cursor, first = true): Amount | null {
  const start = c.at;
  const token = c.peek();
  if (!token) return null;
  if (token.kind === 'ordinal') {
    if (!first && token.value === 1) return null;
    const value = clipped(c, token.value, c.at);
    c.at++;
    const values: number[] = [value];
    const close = c.peek() && c.word() in OPENING ? c.partner[c.at]! : -1;
    if (close > 0 && close < c.end && close - c.at < 80) {
      let ok = true;
      for (let i = c.at + 1; i < close; i++) {
        const inner = c.tokens[i]!;
        if (inner.kind === 'ordinal') values.push(inner.value);
        else if (inner.word !== ',') ok = false;
      }
      if (ok && values.length > 1) {
        c.at = close + 1;
        checkSizes(c, start, values.length);
        return { kind: 'sizes', values, ...c.span(start) };
      }
    }
    return { kind: 'one', value, ...c.span(start) };
  }
  if (Object.hasOwn(ORDINAL_WORDS, token.word)) {
    const value = ORDINAL_WORDS[token.word]!;
    if (!first && value === 1) return null;
    c.at++;
    return { kind: 'one', value, ...c.span(start) };
  }
  return null;
}

/** "once", "twice", "thrice", "6 times", "six times", "x 6", "* 6", "6x": how often, without "more". */
export function readOften(c: Cursor): Amount | null {
  return c.attempt(() => {
    const start = c.at;
    const said = c.eatAny(['once', 'twice', 'thrice']);
    if (said) {
      return { kind: 'one', value: said === 'once' ? 1 : said === 'twice' ? 2 : 3, ...c.span(start) };
    }
    if (c.word() === 'x' || c.word() === '*') {
      c.at++;
      return readAmount(c);
    }
    const amount = readAmount(c);
    if (!amount) return null;
    if (c.eatAny(['times', 'time'])) return amount;
    if (c.word() === 'x' && !c.peek()!.gap && c.peek(1)?.kind !== 'number') {
      c.at++;
      return amount;
    }
    return null;
  });
}
