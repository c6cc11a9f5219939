/**
 * Reads how often: "twice", "5 more times", "6 times in total", "x 6", "(7 in all)".
 */
import { type Cursor, OPENING } from './cursor.ts';
import { readAmount } from './numbers.ts';
import type { Amount } from './tree.ts';

export interface Often {
  readonly amount: Amount;
  /** What the words say about a first working: more of them, all of them, or nothing. */
  readonly said: 'more' | 'total' | null;
}

const TOTAL = ['in total', 'in all', 'total', 'altogether', 'all told'];

/** The words of a bracket that tells how often once more. */
const OFTEN = new Set([
  'in',
  'a',
  'of',
  'total',
  'all',
  'altogether',
  'told',
  'time',
  'times',
  'rep',
  'reps',
  'repeats',
  ',',
]);

/** "(6 in total)", "(7 times in all)" behind the number: says the same once more. */
function eatTotalInBrackets(c: Cursor): void {
  c.attempt(() => {
    if (!(c.word() in OPENING)) return null;
    const close = c.partner[c.at]!;
    if (close < 0 || close >= c.end || close - c.at > 24) return null;
    const inside = c.tokens.slice(c.at + 1, close);
    // "(20 sc total)" is the row's count.
    if (!inside.every((token) => token.kind === 'number' || OFTEN.has(token.word))) return null;
    if (!inside.some((token) => ['total', 'all', 'altogether'].includes(token.word))) return null;
    c.at = close + 1;
    return true;
  });
}

function inWords(word: string): number {
  return word === 'twice' ? 2 : word === 'thrice' ? 3 : 1;
}

/** "(twice, three times)" behind "once": how often in the other sizes. */
function readMoreTimes(c: Cursor): (number | null)[] | null {
  return c.attempt(() => {
    const close = c.word() in OPENING ? c.partner[c.at]! : -1;
    if (close < 0 || close >= c.end) return null;
    c.at++;
    const values: (number | null)[] = [];
    // "twice (12)" states a count: a list of times says so in a word.
    let said = false;
    while (c.at < close) {
      const word = c.eatAny(['once', 'twice', 'thrice']);
      const none = word === null && c.eatAny(['-', 'not', 'no', 'never']) !== null;
      const number = word === null && !none ? c.within(close, () => readAmount(c)) : null;
      if (word !== null) values.push(inWords(word));
      else if (number?.kind === 'one') values.push(number.value);
      else if (none) values.push(null);
      else return null;
      said = c.eatAny(['times', 'time']) !== null || word !== null || said;
      if (!c.eatAny([',', ';', ':', '-', '/']) && c.at < close) return null;
    }
    if (values.length === 0 || !said) return null;
    c.at = close + 1;
    return values;
  });
}

/** How often, or null. `bare` also takes a number without "times". */
export function readTimes(c: Cursor, bare = false): Often | null {
  return c.attempt(() => {
    const start = c.at;
    c.eat('for');
    let total = c.eatAny(['a total of', 'total of', 'total']) !== null;
    const another = c.eat('another');
    let amount: Amount | null = null;
    let more = another;
    const word = c.eatAny(['once', 'twice', 'thrice', 'one time']);
    if (word) {
      const rest = readMoreTimes(c);
      const value = inWords(word);
      amount = rest
        ? { kind: 'sizes', values: [value, ...rest], ...c.span(start) }
        : { kind: 'one', value, ...c.span(start) };
      more = c.eat('more') || c.eat('again') || more;
    } else if (
      (c.word() === 'x' || (c.word() === '*' && c.tokens[c.at - 1]?.word !== ',')) &&
      (c.peek(1)?.kind === 'number' || c.peek(1)?.kind === 'figure')
    ) {
      c.at++;
      amount = readAmount(c);
      c.eatAny(['times', 'time']);
    } else {
      amount = readAmount(c);
      if (!amount) return null;
      if (c.eat('more')) {
        more = true;
        c.eatAny(['times', 'time']);
      } else if (c.eatAny(['times', 'time', 'x'])) {
        more = c.eat('more') || more;
      } else if (c.eatAny(['additional times', 'extra times', 'further times', 'other times'])) {
        more = true;
      } else if (!bare || !ends(c)) return null;
    }
    if (!amount) return null;
    if (c.eatAny(TOTAL)) total = true;
    eatTotalInBrackets(c);
    return { amount, said: more ? 'more' : total ? 'total' : null };
  });
}

/** True where a bare number may stand for "times": before a separator or the end. */
function ends(c: Cursor): boolean {
  return c.done || [',', '.', ';', ')', ']', '}', '-', '='].includes(c.word());
}
