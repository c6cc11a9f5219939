/**
 * Finds the marks of repeats (*, **, daggers) and what the row says of each: whether it opens, closes, is
 * pointed at, or multiplies. It reads no work.
 */
import type { Cursor } from './cursor.ts';
import { readStop } from './stops.ts';
import { readTimes } from './times.ts';

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
  // "between * *"
  return isMark(c, i - 1) && c.tokens[i - 2]?.word === 'between';
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
export function repeatsPlainly(c: Cursor, k: number): boolean {
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
export function nextEvent(c: Cursor, i: number): Event | null {
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
