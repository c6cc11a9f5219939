/**
 * Reads the short forms of toy makers: "6x (sc, inc)", "MR 6", "[1, inc]". What it assumes, it says.
 */
import { type Cursor, OPENING } from './cursor.ts';
import { DEEPEST } from './marks.ts';
import { bracketValues, readAmount } from './numbers.ts';
import { RINGS } from './place-kinds.ts';
import { readInside } from './repeats.ts';
import type { Amount, Item, Place, Times, Work } from './tree.ts';
import { impliedPlace, readWork } from './work.ts';

/** "6x (sc, inc)", "6 (1 sc, 1 inc)": the number of times before the bracket. */
export function readTimesBefore(c: Cursor): Item[] | null {
  if (c.peek()!.kind !== 'number') return null;
  return c.attempt(() => {
    const start = c.at;
    const amount = readAmount(c);
    if (!amount) return null;
    c.eatAny(['times', 'x']);
    if (!(c.word() in OPENING) || bracketValues(c, c.at)) return null;
    const inner = c.peek(1)?.word ?? '';
    if (['counts', 'does', 'see', 'do', 'not'].includes(inner)) return null;
    const open = c.at;
    const close = c.partner[open]!;
    if (close < 0 || close >= c.end || c.depth >= DEEPEST || isCountOf(c, close)) return null;
    c.at++;
    const items = readInside(c, close);
    c.at = close + 1;
    if (!items.some((item) => item.type === 'work' || item.type === 'repeat' || item.type === 'group'))
      return null;
    const times: Times = { kind: 'times', amount, more: false, from: amount.from, to: c.tokens[open]!.from };
    return [{ type: 'repeat', items, mark: 'bracket', times, last: null, ...c.span(start) }];
  });
}

/** "(24 sts)", "(18 sc)": a count, and no work to repeat. */
function isCountOf(c: Cursor, close: number): boolean {
  for (let i = c.at + 1; i < close; i++) {
    if ([',', 'in', 'inc', 'dec', 'ch', 'next'].includes(c.tokens[i]!.word)) return false;
  }
  return true;
}

/** "[1, inc]", "MR 6": a number alone where toys are written shortly; single crochets, and the reader says so. */
export function readBareNumber(c: Cursor, before: readonly Item[]): Item[] | null {
  const ring = c.attempt(() => {
    const start = c.at;
    if (!c.eatAny(RINGS)) return null;
    const said = c.eat('with');
    // "magic ring with 6 sc", "MR 6sc"
    const named = c.attempt(() => {
      const work = readWork(c);
      if (!work || Array.isArray(work)) return null;
      const place = work.places[0]!;
      return place.kind === 'next' && place.implied ? { ...work, amount: place.amount } : null;
    });
    if (named) {
      const ring: Place = { kind: 'ring', loop: null, post: null, below: 0, ...c.span(start) };
      return { ...named, places: [ring], ...c.span(start) };
    }
    if (said) return null;
    c.eat(',');
    const amount = readAmount(c);
    if (!amount || !(c.done || ['(', '[', '-', '.', '=', ','].includes(c.word()))) return null;
    return assumed(c, start, amount, { kind: 'ring', loop: null, post: null, below: 0, ...c.span(start) });
  });
  if (ring) return [ring];
  const alone = before.length === 0 ? readNumberAlone(c) : null;
  if (alone) return [alone];
  if (c.peek()!.kind !== 'number' || !shortRow(c)) return null;
  const previous = c.tokens[c.at - 1]?.word ?? ':';
  if (![':', ',', '(', '[', '*', '.'].includes(previous) || (before.length === 0 && previous === '.'))
    return null;
  return c.attempt(() => {
    const start = c.at;
    const amount = readAmount(c, false);
    if (!amount || ![',', ')', ']', '*'].includes(c.word())) return null;
    return [assumed(c, start, amount, impliedPlace(c, amount))];
  });
}

/** "Rnds 5-9: 32": nothing but a number, so many stitches as they come. */
function readNumberAlone(c: Cursor): Work | null {
  if (c.peek()!.kind !== 'number' || c.tokens[c.at - 1]?.word !== ':') return null;
  // "Starting chain: 30": the label has said what is counted.
  if (['ch', 'chs'].includes(c.tokens[c.at - 2]?.word ?? '')) return null;
  return c.attempt(() => {
    const start = c.at;
    const amount = readAmount(c, false);
    if (amount === null || !(c.done || (c.word() === '.' && c.at + 1 === c.end))) return null;
    return assumed(c, start, amount, impliedPlace(c, amount));
  });
}

/** True when the row names increases or decreases and no stitch at all. */
function shortRow(c: Cursor): boolean {
  if (c.short === null) {
    const words = c.tokens.map((token) => token.word);
    const changes = words.some((word) => ['inc', 'dec', 'incs', 'decs', 'invdec'].includes(word));
    const named = words.some((word) => ['sc', 'dc', 'hdc', 'htr', 'tr', 'ch', 'sts', 'st'].includes(word));
    c.short = changes && !named;
  }
  return c.short;
}

function assumed(c: Cursor, start: number, amount: Amount, place: Place): Work {
  const span = c.span(start);
  c.fact('stitch-assumed', span, { words: c.words(span), taken: 't1' });
  const stitch: Work['stitch'] = {
    form: 'plain',
    base: 't1',
    post: null,
    together: 1,
    parts: null,
    special: null,
    beginning: false,
    half: false,
    from: span.to,
    to: span.to,
  };
  const each: Amount = place.kind === 'ring' ? amount : { kind: 'one', value: 1, from: span.to, to: span.to };
  return { type: 'work', stitch, amount: each, places: [place], over: null, ...span };
}
