/**
 * Reads work whose place or loop is named before it ("in next sp work 3 dc", "in ring: ch 3, 11 dc") or for
 * several stitches behind them ("dc, ch 1, dc all in next st").
 */
import { readBracket } from './brackets.ts';
import { readChain } from './chains.ts';
import { type Cursor, OPENING } from './cursor.ts';
import { attachSaid, readItem } from './items.ts';
import { anyStitch, readNoun } from './nouns.ts';
import { bracketValues, one, readAmount } from './numbers.ts';
import { RINGS } from './place-kinds.ts';
import { readLoop } from './place-tails.ts';
import { readBarePlace, readPlaces } from './places.ts';
import { toTheEnd } from './stops.ts';
import type { Item, Place } from './tree.ts';
import { readStitch } from './words.ts';
import { impliedPlace, insideGroup, readWork } from './work.ts';

/** "Starting in 2nd ch from hook, sc in each ch across": the first place of the stitch behind it. */
export function readStartingIn(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    const said = c.eatAny(['beg in', 'beg with', 'beg from', 'beg at', 'start in', 'start with', 'start at']);
    // "2nd ch from hook: sc 4"
    if (!said) {
      c.eatAny(['in the', 'in', 'from the', 'from']);
      if (!c.isAny(['#th ch from', 'second ch from', 'third ch from'])) return null;
    }
    if (c.peek()?.kind === 'number') return null;
    const place = readBarePlace(c);
    if (!said && !c.eat(':')) return null;
    if (!place || !['from-hook', 'first', 'next', 'same', 'nth'].includes(place.kind)) return null;
    const at = c.at;
    if (c.isAny(['with', ', ch', ', with']))
      return [{ type: 'attach', stitch: null, place, ...c.span(start) }];
    c.eatAny([',', ':', ';', '.', '-']);
    c.eatAny(['work', 'make']);
    const work = readWork(c);
    if (!work || Array.isArray(work)) {
      // "Starting in any dc, ch 1": where the yarn is joined.
      c.at = at;
      return [{ type: 'attach', stitch: null, place, ...c.span(start) }];
    }
    const first = work.places[0]!;
    const all = { ...c.span(start) };
    if (first.kind === 'across') return [{ ...work, places: [place, ...work.places], ...all }];
    // "start in 2nd ch from hook, inc in this st"
    if (first.kind === 'same') return [{ ...work, places: [place, ...work.places.slice(1)], ...all }];
    const counted = first.kind === 'next' || (first.kind === 'first' && place.kind === 'from-hook');
    if (counted && first.amount.kind === 'one' && work.over === null) {
      // "starting in 2nd ch from hook, sc in next 5 ch": the first of the five.
      if (first.amount.value < 2) return [{ ...work, places: [place, ...work.places.slice(1)], ...all }];
      const amount = { ...first.amount, value: first.amount.value - 1 };
      const { loop, post, below, from, to } = first;
      const rest: Place =
        first.kind === 'next'
          ? { ...first, amount }
          : {
              kind: 'next',
              nouns: [first.noun],
              amount,
              every: 1,
              implied: false,
              loop,
              post,
              below,
              from,
              to,
            };
      return [{ ...work, places: [place, rest, ...work.places.slice(1)], ...all }];
    }
    return null;
  });
}

/** "work in dc across first 12 sts"; "work in dc" alone says only what the rows are worked in. */
export function readWorkIn(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    const all = c.attempt(() => {
      // "Work across in sc"
      if (!c.eatAny(['work', 'working', 'cont'])) return null;
      const at = c.at;
      const stop = c.eatAny(['across', 'around', 'to end', 'to the end']) ? toTheEnd(c) : null;
      const span = c.span(at);
      const stitch = stop && c.eat('in') ? readStitch(c) : null;
      if (!stop || !stitch || !(c.done || c.peek()!.kind === 'sign')) return null;
      const across = { kind: 'across', nouns: [anyStitch(c)], every: 1, stop } as const;
      const place: Place = { ...across, loop: null, post: null, below: 0, ...span };
      return { stitch, place };
    });
    if (all)
      return [
        {
          type: 'work',
          stitch: all.stitch,
          amount: one(c),
          places: [all.place],
          over: null,
          ...c.span(start),
        },
      ];
    if (!c.eatAny(['work in', 'working in', 'cont in', 'cont working in', 'cont to work in'])) return null;
    const stitch = readStitch(c);
    if (!stitch) return null;
    const places = readPlaces(c);
    if (places) return [{ type: 'work', stitch, amount: one(c), places, over: null, ...c.span(start) }];
    return c.done || c.peek()!.kind === 'sign' ? [{ type: 'aside', ...c.span(start) }] : null;
  });
}

/** "Work in pattern to last 4 sts": a stitch into each, of whatever sort the pattern has there. */
export function readInPattern(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    c.eatAny(['work', 'working', 'cont', 'cont working', 'cont to work', 'keep', 'keeping']);
    c.eat('in');
    c.eat('established');
    if (!c.eat('patt')) return null;
    c.eatAny(['as established', 'as set', 'as before']);
    const span = c.span(start);
    const places = readPlaces(c);
    if (places?.length !== 1 || !['across', 'next'].includes(places[0]!.kind)) return null;
    const { from, to } = span;
    const stitch = {
      form: 'plain',
      base: null,
      post: null,
      together: 1,
      parts: null,
      special: null,
      beginning: false,
      half: false,
      from,
      to,
    } as const;
    const whole = c.span(start);
    c.fact('pattern-counted-even', whole, {});
    return [{ type: 'work', stitch, amount: one(c), places, over: null, ...whole }];
  });
}

/** "BLO:", "back loops only," at the head of the row: holds for all of it. */
export function readLoopAlone(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    const loop = readLoop(c);
    // "FLO (sc 2, inc) x 6": what is in the bracket goes into it.
    const opens = c.word() in OPENING && bracketValues(c, c.at) === null;
    if (!loop || !(opens || c.done || [':', ',', ';', '-', ')'].includes(c.word()))) return null;
    return [{ type: 'loops', loop, post: null, below: 0, ...c.span(start) }];
  });
}

/** "of Rnd 2", "of sts of Rnd 2" behind the loops: an earlier row that left them. */
function rowOfLoops(c: Cursor): Item | null {
  const start = c.at;
  const row = c.attempt(() => {
    c.attempt(() =>
      c.eat('of') && (c.pass('each', 'the', 'all').eatAny(['st', 'sts']) ?? null) ? true : null,
    );
    c.eatAny(['left unworked', 'that were left', 'left', 'that were unworked', 'not worked']);
    if (!c.eatAny(['of row', 'of rnd', 'from row', 'from rnd', 'in row', 'in rnd', 'on row', 'on rnd']))
      return null;
    return readAmount(c, false);
  });
  if (row?.kind !== 'one') return null;
  c.eatAny(['across', 'around']);
  return { type: 'earlier', row: row.value, ...c.span(start) };
}

/** "In next ch-2 sp work (2 dc, ch 2, 2 dc)": the place first, the work behind it. */
export function readPlaceFirst(c: Cursor, before: readonly Item[]): Item[] | null {
  if (
    !c.isAny([
      'in',
      'on',
      'working in',
      'working',
      'around',
      'over',
      'work in',
      'work',
      'across',
      'along',
      'evenly',
      'under',
      'through',
    ])
  )
    return null;
  return c.attempt(() => {
    const start = c.at;
    const worked = c.eatAny(['working', 'work', 'worked']) !== null;
    // "working last tr in top of tch" is a stitch and its place.
    if (worked && c.isAny(['last', 'first', 'final', 'the last', 'through both'])) return null;
    let row: Item | null = null;
    let behind = c.at;
    const loop = c.attempt(() => {
      c.eatAny(['in', 'through', 'under', 'using', 'across']);
      const found = readLoop(c);
      if (!found) return null;
      behind = c.at;
      row = rowOfLoops(c);
      c.attempt(() => {
        if (!c.eat('of')) return null;
        c.eatAny(['each', 'every', 'all', 'the']);
        if (!readNoun(c)) return null;
        c.eatAny([
          'of prev row',
          'of prev rnd',
          'on prev row',
          'on prev rnd',
          'from prev row',
          'from prev rnd',
          'of row below',
          'in prev row',
        ]);
        c.eatAny(['across', 'around', 'only']);
        return c.done || c.peek()!.kind === 'sign' || c.is('sc') || c.is('work') ? true : null;
      });
      c.eatAny([
        'throughout',
        'of each st across',
        'of each st',
        'of every st',
        'of sts',
        'of all sts',
        'of prev row',
        'of prev rnd',
        'for this rnd',
        'for this row',
        'across',
        'around',
      ]);
      if (c.isAny(['of'])) return null;
      return found;
    });
    if (loop) {
      // "in blo sc in each st": from here to the end of the row.
      const { from } = c.span(start);
      if (row === null) return [{ type: 'loops', loop, post: null, below: 0, ...c.span(start) }];
      const { to } = c.tokens[behind - 1]!;
      return [{ type: 'loops', loop, post: null, below: 0, from, to }, row];
    }
    const places = readPlaces(c);
    if (!places) return null;
    const verbAt = c.at;
    c.eatAny([',', ':']);
    const verb = c.eatAny(['work', 'make', 'do', 'place', 'crochet']) !== null;
    c.eatAny([':', 'the foll', 'foll']);
    if (
      places[0]!.kind !== 'ring' &&
      !verb &&
      !worked &&
      !c.isAny(['(', '[', '#', '#fig', ':']) &&
      c.tokens[c.at - 1]?.word !== ':'
    ) {
      // "in next st sc": the stitch right behind the place.
      if (c.tokens[c.at - 1]?.word === ',') return null;
    }
    if (c.word() in OPENING) {
      const group = readBracket(c, before);
      const only = group.length === 1 ? group[0]! : null;
      if (only?.type === 'group') return group;
      // A count or a remark behind the place is no work for it.
      if (group.every((item) => item.type === 'aside')) return null;
      return [{ type: 'group', items: insideGroup(group), places, ...c.span(start) }];
    }
    if (places[0]!.kind === 'ring') return ringWork(c, start, places);
    if (
      worked &&
      !verb &&
      (c.done || c.tokens[c.at - 1]?.word === ',' || [',', ';', '.'].includes(c.word()))
    ) {
      // "working in ends of rows, sc in …": says beforehand where the row goes.
      if (c.tokens[c.at - 1]?.word === ',') c.at--;
      return [{ type: 'aside', ...c.span(start) }];
    }
    const items: Item[] = [];
    let end = c.at;
    while (!c.done && items.length < 40) {
      const more = c.attempt(() => {
        if (items.length > 0 && !c.eatAny([', and', ',', 'and'])) return null;
        const chain = readChain(c);
        if (chain) return [chain];
        const work = readWork(c);
        if (!work || Array.isArray(work)) return null;
        const place = work.places[0]!;
        return place.kind === 'next' && place.implied && work.over === null ? [work] : null;
      });
      if (!more) break;
      items.push(...more);
      const last = more.at(-1)!;
      if (last.type === 'work') end = c.at;
    }
    // A chain at the end belongs to what comes after the group.
    while (items.length > 0 && items.at(-1)!.type === 'chain') items.pop();
    c.at = end;
    const [first] = items;
    if (!first && worked) {
      // "working in row-ends, work 2 sc in end of each row": the place comes again.
      c.at = verbAt;
      return [{ type: 'aside', ...c.span(start) }];
    }
    if (first?.type !== 'work') return null;
    const made = insideGroup(items);
    if (made.length === 1 && made[0]!.type === 'work') {
      return [{ ...made[0]!, places, ...c.span(start) }];
    }
    return [{ type: 'group', items: made, places, ...c.span(start) }];
  });
}

const INTO_RING = RINGS.flatMap((ring) =>
  ['in', 'work in', 'working in'].flatMap((into) => [`${into} ${ring}`, `${into} the ${ring}`]),
);

/** "In ring work ch 3, 11 dc": all that follows up to a join, a turn or a full stop goes into the ring. */
function ringWork(c: Cursor, start: number, places: readonly Place[]): Item[] | null {
  const lead: Item[] = [];
  const items: Item[] = [];
  const first = c.at;
  let body = c.at;
  while (!c.done && items.length < 200) {
    const more = c.attempt(() => {
      while (c.eatAny([',', ';', ':', 'and', 'then']));
      // Another "in ring work" begins anew: it is no part of what goes into this one.
      if (c.isAny(INTO_RING)) return null;
      if (
        c.done ||
        c.isAny([
          '.',
          'turn',
          'join',
          'do not',
          'sl st',
          'ss',
          'fasten',
          'close',
          'pull',
          'place marker',
          'pm',
        ])
      )
        return null;
      return readItem(c, items);
    });
    if (!more || more.length === 0) break;
    if (items.length === 0 && more.every((item) => item.type === 'chain' || item.type === 'aside')) {
      lead.push(...more);
      body = c.at;
    } else items.push(...more);
  }
  if (c.at === first) return null;
  attachSaid(c, lead);
  const made = insideGroup(items);
  const [only] = made;
  if (made.length === 0) return lead;
  const span = { from: c.tokens[body]?.from ?? c.tokens[start]!.from, to: c.tokens[c.at - 1]!.to };
  if (made.length === 1 && only!.type === 'work') return [...lead, { ...only!, places, ...span } as Item];
  return [...lead, { type: 'group', items: made, places, ...span }];
}

/** "dc, ch 1, dc all in next st": the items before it belong together. */
export function readAllIn(c: Cursor, before: readonly Item[]): Item[] | null {
  if (!c.isAny(['all in', 'all at', 'both in'])) return null;
  return c.attempt(() => {
    c.at++;
    const places = readPlaces(c);
    if (!places) return null;
    let first = before.length;
    while (first > 0) {
      const item = before[first - 1]!;
      const bare =
        item.type === 'chain' ||
        (item.type === 'work' && item.places.every((p) => p.kind === 'next' && p.implied));
      if (!bare) break;
      if (first < before.length && /[;.]/u.test(c.text.slice(item.to, before[first]!.from))) break;
      first--;
    }
    if (first === before.length) return null;
    // "sc 3, 5 dc all in next st": only several of one kind go together when no chain joins them.
    const chained = before.slice(first).some((item) => item.type === 'chain');
    const several = before.at(-1)!;
    if (
      !chained &&
      several.type === 'work' &&
      several.places[0]!.kind === 'next' &&
      several.places[0]!.amount.kind === 'one' &&
      several.places[0]!.amount.value > 1
    )
      first = before.length - 1;
    const taken = insideGroup(before.slice(first));
    (before as Item[]).length = first;
    const alone = taken[0]!;
    if (taken.length === 1 && alone.type === 'work') {
      return [{ ...alone, places, from: alone.from, to: c.tokens[c.at - 1]!.to }];
    }
    return [{ type: 'group', items: taken, places, from: taken[0]!.from, to: c.tokens[c.at - 1]!.to }];
  });
}

/** May `place` hold several stitches side by side: a space, or the place of the work before? */
function holdsSeveral(place: Place): boolean {
  if (place.kind === 'same') return true;
  if (place.kind !== 'next' || place.implied) return false;
  return place.nouns.length === 1 && place.nouns[0]!.kind === 'space';
}

/** Yarn joined with a stitch of its own, which is the first of its group: "Standing dc in corner sp, 2 dc, ch 2, 3 dc". */
function stands(item: Item | undefined): boolean {
  if (item?.type === 'attach' || item?.type === 'join')
    return item.stitch !== null && item.stitch.base !== 'slip';
  return item?.type === 'work' && item.stitch.form === 'standing';
}

/**
 * "3 dc, ch 2, 3 dc in next sp" without brackets: as many of the same on both sides of the chain are made in one
 * place. Gathers the last items into a group when they say that.
 */
export function gatherMirrored(c: Cursor, items: Item[]): void {
  const last = items.at(-1);
  if (last?.type !== 'work' || last.places.length !== 1 || !holdsSeveral(last.places[0]!)) return;
  const { stitch, amount } = last;
  if (amount.kind !== 'one' || stitch.form !== 'plain' || stitch.base === 'slip') return;
  if (amount.value < 2 && (stitch.base === 't1' || stitch.base === null)) return;
  let first = items.length - 1;
  while (first >= 2) {
    const chain = items[first - 1]!;
    const before = items[first - 2]!;
    if (chain.type !== 'chain' || before.type !== 'work') break;
    const place = before.places[0]!;
    const mirrored =
      place.kind === 'next' &&
      place.implied &&
      place.amount.kind === 'one' &&
      (place.amount.value === amount.value ||
        (place.amount.value === amount.value - 1 && stands(items[first - 3]))) &&
      before.stitch.base === stitch.base &&
      before.stitch.form === 'plain' &&
      before.stitch.post === stitch.post;
    if (!mirrored || /[;.*]/u.test(c.text.slice(before.from, last.from))) break;
    first -= 2;
  }
  if (first === items.length - 1) return;
  const from = items[first]!.from;
  const closing: Item = { ...last, amount: one(c), places: [impliedPlace(c, amount)] };
  const made = insideGroup([...items.slice(first, -1), closing]);
  items.splice(first, items.length, { type: 'group', items: made, places: last.places, from, to: last.to });
}
