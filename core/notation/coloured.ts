/**
 * Reads stitches told by their colour alone, as charts in words have them: "4 A, 8 B", "(A) x 6, (B) x 12". The stitch
 * is the row's own; which that is, where the row names none, shows in the row below.
 */
import { type Cursor, OPENING } from './cursor.ts';
import { readAmount, readOften } from './numbers.ts';
import type { Amount, Item, StitchRef, Work } from './tree.ts';
import { impliedPlace } from './work.ts';
import { readColourName } from './yarn.ts';

/** The stitch that the row was worked in so far; one without a name where it was in none. */
function stitchBefore(before: readonly Item[], at: number): StitchRef {
  const last = before.findLast((item): item is Work => item.type === 'work');
  const span = { from: at, to: at };
  if (last !== undefined && last.stitch.form === 'plain' && last.stitch.together === 1)
    return { ...last.stitch, ...span };
  return {
    form: 'plain',
    base: null,
    post: null,
    together: 1,
    parts: null,
    special: null,
    beginning: false,
    half: false,
    ...span,
  };
}

function isWorkedAcross(before: readonly Item[]): boolean {
  const last = before.findLast(({ type }) => type !== 'aside' && type !== 'colour');
  const place = last?.type === 'work' ? last.places[0] : undefined;
  return place?.kind === 'across' && place.stop.kind === 'end';
}

/** A bracket that holds nothing but what `read` takes. */
function held<T>(c: Cursor, read: () => T | null): T | null {
  return c.attempt(() => {
    const close = c.word() in OPENING ? c.partner[c.at]! : -1;
    if (close < 0 || close >= c.end) return null;
    c.at++;
    const found = c.within(close, read);
    if (found === null || c.at !== close) return null;
    c.at++;
    return found;
  });
}

/** Behind it the next colour, or nothing of the kind, may stand; a place or a noun may not. */
function ends(c: Cursor): boolean {
  const next = c.peek();
  if (next?.word === '/') return false;
  return !next || next.kind === 'sign' || next.kind === 'number' || c.isAny(['and', 'then', 'turn']);
}

/** "4 A", "(6) B", "12 white", "(A) x 6": so many stitches in a colour, or null. */
export function readColoured(c: Cursor, before: readonly Item[]): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    let name: string | null = null;
    let amount: Amount | null = c.peek()!.kind === 'number' ? readAmount(c, false) : null;
    // "… sc in each st. (24) B": behind a sentence a bracket is the row's count.
    const listed = [',', ':', '(', '[', '*'].includes(c.tokens[c.at - 1]?.word ?? ',');
    if (listed) amount ??= held(c, () => readAmount(c, false));
    if (amount !== null) {
      c.eatAny(['in', 'with']);
      name = readColourName(c);
    } else {
      // "(A) x 6", and "A x 6" with nothing around the letter.
      const bare = c.peek()!.kind === 'word' && c.word(1) === 'x';
      name = held(c, () => readColourName(c)) ?? (bare ? readColourName(c) : null);
      amount = name === null ? null : readOften(c);
    }
    if (name === null || amount === null || amount.kind !== 'one' || amount.value < 1 || !ends(c))
      return null;
    if (c.lexicon.names.has(name.toLowerCase())) return null;
    const span = c.span(start);
    // "1 sc in each st: 3 in A, 18 in B": the colours of what is worked already.
    if (isWorkedAcross(before)) return [{ type: 'aside', ...span }];
    const { from } = c.tokens[start]!;
    const each: Amount = { kind: 'one', value: 1, from, to: from };
    const stitch = stitchBefore(before, from);
    const place = impliedPlace(c, amount);
    const work: Work = { type: 'work', stitch, amount: each, places: [place], over: null, ...span };
    return [work, { type: 'colour', name, behind: true, from: span.to, to: span.to }];
  });
}
