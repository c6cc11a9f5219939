/**
 * Reads stitches with their amounts and places, before, behind and between each other. Groups and repeats
 * around them are read in `brackets` and `repeats`.
 */
import type { Cursor } from './cursor.ts';
import { anyStitch, eatDash } from './nouns.ts';
import { one, readAmount } from './numbers.ts';
import { readTurningPlace } from './place-kinds.ts';
import { readLoop } from './place-tails.ts';
import { readBarePlace, readPlace, readPlaces } from './places.ts';
import { readStop } from './stops.ts';
import { readTimes } from './times.ts';
import type { Amount, Into, Item, Noun, Place, StitchRef, Work } from './tree.ts';
import { readStitch } from './words.ts';

const LAYERS = [
  'through both layers',
  'through both thicknesses',
  'through both sides',
  'through all layers',
  'in both layers',
  'in both thicknesses',
  'of both layers',
  'working through both layers',
  'working through both thicknesses',
];

const GATHERED = ['cluster', 'bobble', 'popcorn', 'puff'];
const MADE_OF_SEVERAL = [...GATHERED, 'shell'];

function isChain(noun: Noun): boolean {
  return noun.kind === 'chain' || noun.kind === 'loop-of-chain';
}

/** How many stitches the places are; null where their number is not told. */
function placesIn(places: readonly Place[]): number | null {
  let sum = 0;
  for (const place of places) {
    if (place.kind === 'same' || place.kind === 'turning-chain' || place.kind === 'marked') sum += 1;
    else if (!('amount' in place) || place.amount.kind !== 'one') return null;
    else sum += place.amount.value;
  }
  return sum;
}

/** One stitch made of several: "cl over next 7 sts", also where the pattern defines "cl" itself. */
function gathers(stitch: StitchRef): boolean {
  return GATHERED.includes(stitch.form) || /(?:^|[ -])(?:cl|cluster)$/u.test(stitch.special ?? '');
}

/** The place of a stitch that names none: the next ones. */
export function impliedPlace(
  c: Cursor,
  amount: Amount,
  loop: Into['loop'] = null,
  noun?: Noun,
): Extract<Place, { kind: 'next' }> {
  return {
    kind: 'next',
    amount,
    nouns: [noun ?? anyStitch(c)],
    every: 1,
    implied: true,
    loop,
    post: null,
    below: 0,
    from: amount.from,
    to: amount.to,
  };
}

/** "dc next 2 tog", "sc in next 2 sts tog": the span of a decrease written round its number. */
function readNextTogether(c: Cursor): { over: Amount; together: number; noun: Noun | null } | null {
  return c.attempt(() => {
    const place = readPlace(c);
    if (place?.kind !== 'next' || place.amount.kind !== 'one' || place.amount.value < 2) return null;
    if (!c.eat('tog')) return null;
    return { over: place.amount, together: Math.min(place.amount.value, 1000), noun: place.nouns[0] ?? null };
  });
}

/** "Work last 2 sts tog", "work next 3 sts together": a decrease in the stitch of the row. */
export function readWorkTogether(c: Cursor): Work | null {
  return c.attempt(() => {
    const start = c.at;
    if (!c.eatAny(['work', 'working', 'crochet'])) return null;
    const at = c.span(start);
    const place = readPlace(c);
    if (place?.kind !== 'next' && place?.kind !== 'last' && place?.kind !== 'first') return null;
    if (place.amount.kind !== 'one' || place.amount.value < 2 || !c.eatAny(['tog', 'as one'])) return null;
    const together = Math.min(place.amount.value, 1000);
    const stitch: StitchRef = {
      form: 'dec',
      base: null,
      post: null,
      together,
      parts: null,
      special: null,
      beginning: false,
      half: false,
      ...at,
    };
    const over = place.amount;
    const places = place.kind === 'next' ? [impliedPlace(c, one(c), place.loop, place.nouns[0])] : [place];
    return { type: 'work', stitch, amount: one(c), places, over, ...c.span(start) };
  });
}

/** A single piece of stitch work, or null. */
export function readWork(c: Cursor): Work | Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    // "last dc in top of turning ch": says which, not how many.
    c.attempt(() => {
      if (!c.eatAny(['the last', 'last', 'the first', 'first', 'final', 'the final'])) return null;
      const at = c.at;
      const named = readStitch(c) && c.isAny(['in', 'around', 'on']) ? true : null;
      c.at = at;
      return named;
    });
    let loop: Into['loop'] = c.attempt(() => {
      const found = readLoop(c);
      return found && !c.isAny([',', 'of']) ? found : null;
    });
    let stitch = readStitch(c);
    let before: Amount | null = null;
    if (!stitch) {
      before = readAmount(c);
      if (!before) return null;
      if (c.word() === 'x' && !c.lexicon.names.has('x')) c.at++;
      // "3-sc in next st"
      if (c.word() === '-' && !c.peek()!.gap) eatDash(c);
      c.eatAny(['more', 'extra', 'additional', 'rows of']);
      loop ??= c.attempt(() => readLoop(c));
      stitch = readStitch(c);
      if (!stitch) return null;
      if (stitch.base && stitch.together === 1 && stitch.form === 'plain' && c.eat('tog')) {
        // "2 sc tog"
        stitch = {
          ...stitch,
          together: before.kind === 'one' ? Math.max(2, Math.min(before.value, 1000)) : 2,
        };
        before = null;
      } else if (
        stitch.base &&
        stitch.parts === null &&
        MADE_OF_SEVERAL.includes(stitch.form) &&
        before.kind === 'one' &&
        !c.tokens[c.at - 1]!.word.endsWith('s')
      ) {
        // "5 dc shell": made of five.
        stitch = { ...stitch, parts: Math.min(before.value, 1000), from: before.from };
        before = null;
      }
    }
    return finishWork(c, start, stitch, before, loop);
  });
}

/** "sl st to beg sc", "sl st to top of ch-3": a slip stitch goes into it, any other would stop before it. */
function readTravel(c: Cursor): Place[] | null {
  return c.attempt(() => {
    if (!c.eatAny(['over to', 'to'])) return null;
    c.eat('the');
    if (
      !c.isAny([
        'beg',
        'top',
        'turning',
        'tch',
        'first',
        '#th',
        'second',
        'third',
        'fourth',
        'same',
        'ch',
        'starting',
      ])
    )
      return null;
    const at = c.at;
    const turning = readTurningPlace(c, null);
    if (turning) return [{ ...turning, loop: null, post: null, below: 0, ...c.span(at) } as Place];
    const place = readBarePlace(c);
    return place ? [place] : null;
  });
}

/** ", working first leg in same st and second leg in next st": a place for each leg. */
function readLegs(c: Cursor): Place[] | null {
  return c.attempt(() => {
    const wrapped = c.attempt(() =>
      c.word() === '(' && c.partner[c.at]! > 0 && c.partner[c.at]! < c.end ? c.partner[c.at]! : null,
    );
    if (wrapped !== null) c.at++;
    else c.eatAny([',', ':', '-']);
    const plain = legsInTurning(c, wrapped);
    if (plain) return plain;
    if (
      !c.eatAny([
        'working',
        'work',
        'with',
        'placing',
        'inserting hook',
        'insert hook',
        'making',
        'worked',
        'beg',
      ])
    )
      return null;
    const places: Place[] = [];
    for (let n = 0; n < 20; n++) {
      const place = c.attempt(() => {
        if (n > 0) c.eatAny([', and', ',', 'and', ';', '&']);
        c.eat('the');
        const leg = c.eatAny(['first', '#th', 'second', 'third', 'last', 'next', 'other', 'final']);
        if (leg && !c.eatAny(['leg', 'half', 'part', 'st', 'lp', 'insertion'])) c.at--;
        return readPlace(c);
      });
      if (!place) break;
      places.push(place);
    }
    if (places.length < 2) return null;
    if (wrapped !== null) {
      if (c.at !== wrapped) return null;
      c.at = wrapped + 1;
    }
    return places;
  });
}

function turningPlace({ from, to }: Noun): Place {
  return { kind: 'turning-chain', nth: null, beginning: false, loop: null, post: null, below: 0, from, to };
}

/** "over last dc and turning ch", "(next dc and top of tch)": the last leg in the turning chain. */
function legsInTurning(c: Cursor, close: number | null): Place[] | null {
  return c.attempt(() => {
    if (!c.eatAny(['over', 'using', 'across', 'in', 'working']) && close === null) return null;
    const leg = readPlace(c) ?? readBarePlace(c);
    // "next dc and turning ch" may have been read as one place.
    const both = leg?.kind === 'next' && leg.nouns[1]?.kind === 'turning-chain' ? leg : null;
    if (!leg || !(both || c.eatAny([', and', 'and', '&', '+']))) return null;
    const turning = both ? turningPlace(both.nouns[1]!) : (readPlace(c) ?? readBarePlace(c));
    if (turning?.kind !== 'turning-chain' || (close !== null && c.at !== close)) return null;
    if (close !== null) c.at++;
    if (both) return [{ ...both, nouns: both.nouns.slice(0, 1) }, turning];
    // "last dc" is the one before the chain, whether that counts as a dc or not.
    const first: Place | null =
      leg.kind === 'last' ? { ...leg, kind: 'next', nouns: [leg.noun], every: 1, implied: false } : leg;
    return first.kind === 'next' ? [first, turning] : null;
  });
}

/** "sc2tog beginning in same st": the other legs go into the next stitches. */
function readFirstLeg(c: Cursor, together: number): Place[] | null {
  return c.attempt(() => {
    c.eat(',');
    if (!c.eatAny(['beg', 'start', 'working first leg', 'with first leg', 'placing first leg'])) return null;
    const place = readPlace(c);
    if (place?.kind !== 'same') return null;
    const rest = impliedPlace(c, { kind: 'one', value: together - 1, ...c.here() });
    return [place, { ...rest, implied: false }];
  });
}

/** ", taking up the back loop only, to end" behind the place. */
function readLoopBehind(c: Cursor): Into['loop'] {
  return c.attempt(() => {
    const comma = c.eat(',');
    const said = c.eatAny([
      'taking up',
      'taking',
      'picking up',
      'going through',
      'going in',
      'inserting hook in',
      'inserting hook through',
      'worked in',
      'working in',
      'working through',
      'through',
      'using',
      'in',
    ]);
    if (!said) return null;
    const found = readLoop(c);
    if (!found || c.isAny(['of', 'st', 'sts'])) return null;
    c.attempt(() => (readStop(c.pass(','))?.kind === 'end' ? true : null));
    // ", working in blo, sc in next": said of what comes after it.
    const taking = said.startsWith('t') || said === 'picking up';
    if (comma && !taking && !(c.done || c.isAny(['.', ';', 'turn', ', turn', '(', '-']))) return null;
    return found;
  });
}

function withLoop(places: readonly Place[], loop: Into['loop']): readonly Place[] {
  return loop === null ? places : places.map((place) => (place.loop === null ? { ...place, loop } : place));
}

function finishWork(
  c: Cursor,
  start: number,
  named: StitchRef,
  before: Amount | null,
  loopBefore: Into['loop'],
): Work | Item[] | null {
  let stitch = named;
  let amount = before;
  let over: Amount | null = null;
  let loop =
    loopBefore ??
    c.attempt(() => {
      const wrapped = c.word() === '(' ? c.eat('(') : false;
      if (c.word() === '-' && !c.peek()!.gap) c.at++;
      const found = readLoop(c);
      if (!found || (wrapped && !c.eat(')'))) return null;
      return found;
    });
  c.eatAny(['each into', 'st']);
  const made = (places: readonly Place[]): Work => ({
    type: 'work',
    stitch,
    amount: amount ?? one(c),
    places: postOf(withLoop(places, loop), stitch),
    over,
    ...c.span(start),
  });
  // "sc next 2 tog"
  if (stitch.together === 1 && stitch.base && stitch.form === 'plain') {
    const together = readNextTogether(c);
    if (together) {
      stitch = { ...stitch, together: together.together };
      over = together.over;
      const implied = impliedPlace(c, before ?? one(c), loop, together.noun ?? undefined);
      amount = null;
      return made([implied]);
    }
  }
  if (stitch.together === 1 && stitch.base && stitch.form === 'plain') {
    // "dc last 2 dc tog": at the end of the row.
    const edge = c.attempt(() => {
      const place = readPlace(c);
      if ((place?.kind !== 'last' && place?.kind !== 'first') || place.amount.kind !== 'one') return null;
      return place.amount.value > 1 && c.eat('tog') ? place : null;
    });
    if (edge && edge.amount.kind === 'one') {
      stitch = { ...stitch, together: Math.min(edge.amount.value, 1000) };
      over = edge.amount;
      return made([edge]);
    }
  }
  if (stitch.form !== 'plain' && c.word() === '(') {
    // "inc (2 sc in same st) in next st": the bracket explains the word before it.
    const close = c.partner[c.at]!;
    const next = close > 0 && close + 1 < c.end ? c.tokens[close + 1]!.word : '';
    if (['in', 'next', 'over', 'around'].includes(next)) c.at = close + 1;
  }
  // A number behind the stitch: "sc 4", "sc x 4", "dc 4 times in next", "dc twice in next".
  let behind: Amount | null = null;
  let noun: Noun | null = null;
  if (before === null) {
    const often = c.attempt(() => {
      const found = readTimes(c);
      return found && found.said === null ? found.amount : null;
    });
    if (often) behind = often;
    else {
      behind = c.attempt(() => {
        if (c.word() === '-' && !c.peek()!.gap) eatDash(c);
        const number = readAmount(c);
        // "sc 3 - 9 sts": a dash that stands apart leads to the count of the row.
        const apart = c.word() === '-' && c.peek()!.gap;
        if (!number || (!apart && c.isAny(['ch', '-', 'more', 'times']))) return null;
        return number;
      });
      if (behind) {
        if (c.isAny(['sts', 'st'])) {
          noun = anyStitch(c);
          c.at++;
        }
      }
    }
  }
  loop ??= c.attempt(() => readLoop(c));
  const decreases = stitch.together > 1 || stitch.form === 'dec';
  const legs = decreases ? (readLegs(c) ?? readFirstLeg(c, Math.max(2, stitch.together))) : null;
  if (legs) {
    amount = behind ?? before;
    return { ...made(legs), legs: true };
  }
  const placeAt = c.at;
  const saidOver = c.isAny(['over', 'across']);
  const together = decreases || behind ? null : readNextTogether(c);
  if (together) {
    stitch = { ...stitch, together: together.together };
    over = together.over;
    return made([impliedPlace(c, amount ?? one(c), loop, together.noun ?? undefined)]);
  }
  const layers = c.eatAny(LAYERS) !== null;
  // "through both loops" fixes nothing; "through both loops of last st" is a place.
  if (!c.is('through both lps of')) c.eatAny(['through both lps', 'through both sts', 'through both pieces']);
  if (loop !== null && c.isAny(['of each', 'of next', 'of the', 'of every', 'of last', 'of first', 'of all']))
    c.at++;
  // "6 sc in MC" at the start of a first round is a magic circle; elsewhere MC is a colour.
  if (before && c.is('in mc') && beginsRound(c, start)) {
    const at = c.at;
    c.eat('in mc');
    c.attempt(() => (c.eat('(') && c.eatAny(['magic circle', 'magic ring']) && c.eat(')') ? true : null));
    return made([{ kind: 'ring', loop: null, post: null, below: 0, ...c.span(at) }]);
  }
  const places = (stitch.base === 'slip' ? readTravel(c) : null) ?? readPlaces(c);
  // "Hdc2tog over same st and next st": the places are those of its legs.
  if (places && places.length > 1 && stitch.together > 1 && placesIn(places) === stitch.together) {
    amount = behind ?? before;
    return { ...made(places), legs: true };
  }
  if (places) loop ??= readLoopBehind(c);
  if (places) {
    const only = places.length === 1 ? places[0]! : null;
    const overSeveral = saidOver && before === null && gathers(stitch);
    if ((only?.kind === 'first' || only?.kind === 'last') && (decreases || overSeveral)) {
      if (only.amount.kind !== 'one' || only.amount.value > 1) over = only.amount;
      return made(places);
    }
    if (only?.kind === 'next' && !only.implied && (decreases || overSeveral)) {
      const many = only.amount.kind !== 'one' || only.amount.value > 1;
      if (many || saidOver) {
        over = only.amount;
        const workings = behind ?? before ?? trailingTimes(c) ?? one(c);
        amount = null;
        const noun = only.nouns[0];
        const implied = impliedPlace(c, workings, only.loop ?? loop, noun);
        return made([{ ...implied, nouns: only.nouns, post: only.post, below: only.below }]);
      }
    }
    if (only?.kind === 'next' && only.implied) {
      // "sc in blo": the loop, and no place.
      loop ??= only.loop;
      amount = null;
      return made([impliedPlace(c, behind ?? before ?? one(c), loop)]);
    }
    // "6 sc around second leg", "3 sc along ch": so many of its stitches, one in each.
    const number = behind ?? before;
    const all = only?.kind === 'across' && !saysEach(c, placeAt) ? only : null;
    if (number && all && (all.part !== undefined || all.nouns.every(isChain))) {
      amount = null;
      const { nouns, loop, post, below, part, from, to } = all;
      const whose = part === undefined ? {} : { part };
      return made([
        {
          kind: 'next',
          amount: number,
          nouns,
          every: 1,
          implied: false,
          loop,
          post,
          below,
          ...whose,
          from,
          to,
        },
      ]);
    }
    if (behind) {
      if (only?.kind === 'next' && saidOver) return made([{ ...only, amount: behind }]);
      amount = behind;
    }
    const n = amount?.kind === 'one' ? amount.value : 1;
    if (
      only?.kind === 'next' &&
      !saysEach(c, placeAt) &&
      only.amount.kind === 'one' &&
      only.amount.value > 1 &&
      n > 1
    ) {
      if (saidOver && n === only.amount.value) {
        amount = null;
        return made(places);
      }
      c.fact('each-not-said', c.span(start), { amount: n, places: only.amount.value });
      // "10 sc in next 10 sts" is one in each; "2 sc in next 2 sts" is two in each.
      if (n === only.amount.value && n > 2) amount = null;
    } else if (
      only?.kind === 'next' &&
      !saysEach(c, placeAt) &&
      only.amount.kind === 'sizes' &&
      amount?.kind === 'sizes' &&
      sameValues(only.amount.values, amount.values)
    ) {
      amount = null;
    }
    if (only && !decreases && c.eat('tog') && only.kind === 'next' && only.amount.kind === 'one') {
      stitch = { ...stitch, together: Math.max(1, Math.min(only.amount.value, 1000)) };
      over = only.amount;
      return made([impliedPlace(c, one(c), loop, only.nouns[0])]);
    }
    const along = alongInAll(c, only, amount, placeAt);
    if (along) return made([along]);
    if (only?.kind === 'evenly') {
      // ", working 1 sc in end of each row": how to come to the number, not more of it.
      c.attempt(() => {
        c.eatAny([',', '(']);
        if (!c.eatAny(['working', 'work'])) return null;
        if (!readWork(c)) return null;
        c.eat(')');
        return true;
      });
    }
    const work = made(places);
    if (layers || c.attempt(() => c.pass(',').eatAny(LAYERS)))
      return { ...work, layers: true, ...c.span(start) };
    const times = trailingTimes(c);
    if (!times) return work;
    if (only?.kind === 'same' || only?.kind === 'ring') return { ...work, amount: times, ...c.span(start) };
    return [
      {
        type: 'repeat',
        items: [work],
        mark: 'bracket',
        times: { kind: 'times', amount: times, more: false, from: times.from, to: times.to },
        last: null,
        ...c.span(start),
      },
    ];
  }
  const number = behind ?? before ?? one(c);
  c.eatAny([
    'at end of the row',
    'at end of row',
    'at the end of the row',
    'at the end of row',
    'at beg of row',
  ]);
  amount = null;
  const work = made([impliedPlace(c, number, loop, noun ?? undefined)]);
  return layers ? { ...work, layers: true } : work;
}

/** "98 sc up side": so many along an edge, where no "each" says that they go into every row. */
function alongInAll(c: Cursor, only: Place | null, amount: Amount | null, from: number): Place | null {
  if (only?.kind !== 'across' || only.every > 1 || saysEach(c, from)) return null;
  if (!only.nouns.every(({ kind }) => kind === 'row-end')) return null;
  if (amount === null || (amount.kind === 'one' && amount.value < FEWEST_ALONG)) return null;
  const { nouns, stop, loop, post, below, from: start, to } = only;
  return { kind: 'evenly', nouns, stop, loop, post, below, from: start, to };
}

/** "2 sc along row ends" are two in each; so many or more are all of them. */
const FEWEST_ALONG = 5;

/** True for the first work of a row that names no other colour. */
function beginsRound(c: Cursor, start: number): boolean {
  const before = c.tokens[start - 1]?.word ?? ':';
  return [':', '.', '-', 'work', 'make'].includes(before) && !c.tokens.some((token) => token.word === 'cc');
}

/** The stitch says front or back; "around post of" behind it says nothing more. */
function postOf(places: readonly Place[], stitch: StitchRef): readonly Place[] {
  if (!stitch.post) return places;
  return places.map((place) => (place.post ? { ...place, post: null } : place));
}

/** Work inside brackets that go into one place: "2 dc" there is two in it, not the next two. */
export function insideGroup(items: readonly Item[]): Item[] {
  return items.map((item) => {
    if (item.type === 'work') return unplaced(item);
    if (item.type === 'repeat') return { ...item, items: insideGroup(item.items) };
    return item;
  });
}

function unplaced(work: Work): Work {
  const place = work.places[0]!;
  if (place.kind !== 'next' || !place.implied || work.places.length > 1) return work;
  const single: Place = { ...place, amount: { kind: 'one', value: 1, from: place.to, to: place.to } };
  return { ...work, amount: place.amount, places: [single] };
}

function sameValues(a: readonly (number | null)[], b: readonly (number | null)[]): boolean {
  return a.length === b.length && a.every((value, i) => value === b[i]);
}

/** "… 3 times", "… twice" right behind a place. */
function trailingTimes(c: Cursor): Amount | null {
  return c.attempt(() => {
    const often = readTimes(c);
    return often && often.said !== 'more' ? often.amount : null;
  });
}

function saysEach(c: Cursor, from: number): boolean {
  for (let i = from; i < c.at && i < from + 5; i++) {
    if (['each', 'every', 'all'].includes(c.tokens[i]!.word)) return true;
  }
  return false;
}
