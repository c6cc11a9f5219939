/**
 * Tells the slip stitch that closes a round from one that is worked, and where the work of a row ends.
 */
import { type Cursor, OPENING } from './cursor.ts';
import { readNoun } from './nouns.ts';
import { readAmount } from './numbers.ts';
import { readPlace } from './places.ts';
import type { Amount, Join, Place, Work } from './tree.ts';

/** True at the end of the work: nothing follows, or a turn, a join, an end of yarn, a count. */
export function atRowEnd(c: Cursor): boolean {
  let ahead = 0;
  while (c.peek(ahead) && [',', ';', '.', 'and', 'then', '-', '='].includes(c.word(ahead))) ahead++;
  const next = c.peek(ahead);
  if (!next) return true;
  if (next.word in OPENING) {
    const close = c.partner[c.at + ahead]!;
    const inner = c.peek(ahead + 1);
    const counts = inner?.kind === 'number' || inner?.kind === 'figure' || inner?.word === 'total';
    return (
      counts &&
      close >= 0 &&
      (close + 1 >= c.end || [',', '.', ';', 'turn'].includes(c.tokens[close + 1]!.word))
    );
  }
  if (next.kind === 'number') {
    // A count after the end: "… – 24 sts."
    if (c.isAny(['# sts', '# st'], ahead) || ['-', '='].includes(c.word(ahead - 1))) return true;
    // "…. 24 dc": a sentence of its own, and nothing behind it.
    const after = c.peek(ahead + 2);
    const alone = c.peek(ahead + 1)?.kind === 'word' && (!after || after.word === '.');
    return alone && c.word(ahead - 1) === '.';
  }
  return c.isAny(
    [
      'turn',
      'do not turn',
      'fasten',
      'finish',
      'break',
      'cut',
      'to join',
      'ch # turn',
      'ch # , turn',
      'without turning',
      "don't turn",
      'weave',
      'end off',
      'total',
      'place marker',
      'pm',
      'change',
    ],
    ahead,
  );
}

/** "at end of last row", "after Row 6": when it is done, which the order of the words says already. */
export function eatWhen(c: Cursor): void {
  c.attempt(() => {
    if (c.eatAny(['after row', 'after rnd', 'at end of row', 'at end of rnd']))
      return c.done || c.peek()!.kind === 'sign' || readAmount(c, false) ? true : null;
    if (!c.eatAny(['at the end', 'at end', 'at the start', 'at start', 'at the beg', 'at beg'])) return null;
    if (!c.eat('of')) return true;
    c.eat('the');
    if (c.attempt(() => (c.eatAny(['row', 'rnd']) && readAmount(c, false) ? true : null))) return true;
    c.eatAny(['last', 'each', 'every', 'this', 'next', 'these', 'final', 'prev', 'any', 'all']);
    return c.eatAny(['row', 'rows', 'rnd', 'rnds']) ? true : null;
  });
}

const CLOSES = [
  'to join rnd',
  'to join the rnd',
  'to join',
  'to close lp',
  'to close the lp',
  'to close rnd',
  'to close the rnd',
  'to close',
  'to complete rnd',
  'to complete the rnd',
  'to form ring',
  'join',
];

/** "to 3rd ch" (the third), "to 3 ch" (the chain as a whole, null); undefined where no such chain is named. */
function chainNumber(place: Place): Amount | null | undefined {
  if (place.kind === 'nth' && place.noun.kind === 'chain') return place.nth;
  if (place.kind !== 'next' || place.implied || place.amount.kind !== 'one') return undefined;
  const chains = place.nouns.length === 1 && place.nouns[0]!.kind === 'chain' && place.amount.value > 1;
  return chains ? null : undefined;
}

/** "to form last ch-5 lp", "for last sp". */
function eatLastLoop(c: Cursor): boolean {
  return (
    c.attempt(() => {
      if (!c.eatAny(['to form', 'to make', 'forming', 'for'])) return null;
      c.eat('the');
      if (!c.eatAny(['last', 'final'])) return null;
      const noun = readNoun(c);
      return noun?.kind === 'space' ? true : null;
    }) === true
  );
}

/** Do the words behind a stitch say that it closes the round, or its last loop? */
export function closes(c: Cursor): boolean {
  const at = c.at;
  const said = c.isAny(CLOSES) || eatLastLoop(c);
  c.at = at;
  return said;
}

/** The stitch that closes the round, if `work` (just read) is one; `chained`: a chain stands before it. */
export function asJoin(c: Cursor, work: Work, start: number, round: boolean, chained: boolean): Join | null {
  const said = c.eatAny(CLOSES) !== null || eatLastLoop(c);
  const place = work.places[0]!;
  const bare = place.kind === 'next' && place.implied;
  if (said) {
    const after = bare ? readPlace(c) : null;
    return {
      type: 'join',
      not: false,
      stitch: work.stitch,
      place: after ?? (bare ? null : place),
      ...c.span(start),
    };
  }
  if (work.stitch.form !== 'plain' || work.places.length > 1) return null;
  // "ch 2, dc in joining sl st": a taller stitch closes the round's last loop.
  const onJoin = place.kind === 'same' && /\bjoin/iu.test(c.words(place));
  if (onJoin && round && work.stitch.base !== null && chained && atRowEnd(c))
    return { type: 'join', not: false, stitch: work.stitch, place, ...c.span(start) };
  // "ch 1, sc in top of beg ch-3": the same, at the top of the round's own chain.
  const onTop = place.kind === 'turning-chain' && work.amount.kind === 'one' && work.amount.value === 1;
  if (onTop && round && work.stitch.base !== null && work.stitch.base !== 'slip' && chained && atRowEnd(c)) {
    const top: Place = { ...place, beginning: true };
    return { type: 'join', not: false, stitch: work.stitch, place: top, ...c.span(start) };
  }
  if (work.stitch.base !== 'slip') return null;
  // "…; rep from * to end, ss.": with neither number nor place it closes the round.
  if (
    c.nesting < 2 &&
    round &&
    bare &&
    place.amount.from === place.amount.to &&
    work.amount.from === work.amount.to &&
    atRowEnd(c)
  )
    return { type: 'join', not: false, stitch: work.stitch, place: null, ...c.span(start) };
  // "ss to 3rd ch" at the end of a round: of its own beginning chain.
  const nth = round && atRowEnd(c) ? chainNumber(place) : undefined;
  if (nth !== undefined) {
    const { loop, post, below, from, to } = place;
    const top: Place = { kind: 'turning-chain', nth, beginning: true, loop, post, below, from, to };
    return { type: 'join', not: false, stitch: work.stitch, place: top, ...c.span(start) };
  }
  // "sl st in base of first ch-4": where the round began with a chain.
  const base = round && place.kind === 'same' && /\bbase of (?:the )?(?:first|beg)/iu.test(c.words(place));
  const closes =
    base || place.kind === 'first' || (place.kind === 'turning-chain' && (place.beginning || round));
  if (!closes || !atRowEnd(c)) return null;
  return { type: 'join', not: false, stitch: work.stitch, place, ...c.span(start) };
}
