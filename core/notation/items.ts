/**
 * Reads the body of a row: one item after another, each by the reader that knows it, and what none of them
 * knows as words not read. It never stops before the end and never skips a word in silence.
 */
import { readAlternately } from './alternately.ts';
import { readBracket, readRepBracket } from './brackets.ts';
import { withChainsBetween } from './chain-between.ts';
import { readChain, readRingClose, readYarnRing } from './chains.ts';
import { asJoin, closes } from './closing.ts';
import { readColoured } from './coloured.ts';
import { type Cursor, OPENING } from './cursor.ts';
import { readElsewhere } from './elsewhere.ts';
import { gatheredBehind, readHeldBack } from './gathered.ts';
import type { Token } from './lexer.ts';
import { DEEPEST, isMark } from './marks.ts';
import { bracketValues, one } from './numbers.ts';
import {
  gatherMirrored,
  readAllIn,
  readInPattern,
  readLoopAlone,
  readPlaceFirst,
  readStartingIn,
  readWorkIn,
} from './place-first.ts';
import { inEach, readPlace, readPlaces } from './places.ts';
import {
  readOtherSide,
  readOtherSideBehind,
  readRemark,
  readSentence,
  readSentenceOfProse,
  readSum,
} from './prose.ts';
import { endingPlace, lastStitch, readLooseRepeat, readRepeatOfAll, readStar } from './repeats.ts';
import { readCountBehind, readOpenCount, readStarredCount } from './row-counts.ts';
import { readBareNumber, readTimesBefore } from './shorthand.ts';
import { readSimple } from './simple.ts';
import { readExcept, readSkip } from './skips.ts';
import { readSpelled } from './spelled.ts';
import { suggestion, suggestionBehindNumber } from './suggestions.ts';
import type { Amount, CountsAs, Item, Place, StitchForm, Work } from './tree.ts';
import { readTunisian } from './tunisian.ts';
import { readWhole } from './wholes.ts';
import { readWork, readWorkTogether } from './work.ts';
import { readColourBehind } from './yarn.ts';

const FILLERS = [
  'end with',
  'ends with',
  'finishing with',
  'finish with',
  'end',
  ', and then',
  'and then',
  'then',
  'and',
  '&',
  'now',
  'work',
  'make',
  'making',
  'except for',
  'except that',
  'except',
  'do',
  'crochet',
  'place',
  'also',
  'next',
  'by',
  'cont',
  'with',
  'to',
  'plus',
  'another',
  'working',
  'using',
  'beg',
  'start',
  'just',
  'followed by',
  'add',
  'but',
  'all',
  'a',
  'an',
  'the',
  'each',
];

const SEPARATORS = [
  '<',
  ',',
  ';',
  '.',
  ':',
  '-',
  '/',
  '…',
  '..',
  '...',
  '"',
  '=',
  '·',
  '•',
  '|',
  '>',
  '→',
  '+',
  '~',
  '♯',
  '_',
  '!',
  '?',
];

/** All items to the end of the cursor. */
export function readItems(c: Cursor): Item[] {
  const items: Item[] = [];
  while (!c.done) {
    if (c.peek()!.kind === 'sign' && SEPARATORS.includes(c.word()) && !isMark(c, c.at)) {
      if (!readCountBehind(c, items)) c.at++;
      continue;
    }
    const before = c.at;
    const got = readItem(c, items);
    if (got) {
      items.push(...got);
      attachSaid(c, items);
      gatherMirrored(c, items);
    }
    if (c.at === before) c.at++;
  }
  return items;
}

/** A bracket's "(counts as dc)" belongs to the chain, or to the chains that "4th ch from hook" passes over. */
export function attachSaid(c: Cursor, items: Item[]): void {
  const counts = c.said.pop();
  if (!counts) return;
  c.said.length = 0;
  const made = gatheredWork(items, counts);
  if (made !== null) {
    items.splice(-2, 2, made);
    const chain = items.findIndex((item) => item.type === 'chain');
    const begins = items[chain];
    if (begins?.type === 'chain' && begins.counts === null) {
      const span = { from: begins.to, to: begins.to };
      items[chain] = { ...begins, counts: { kind: 'nothing', throughout: false, ...span } };
    }
    return;
  }
  for (let i = items.length - 1; i >= 0 && i >= items.length - 4; i--) {
    const item = items[i]!;
    // Right behind it, the bracket becomes part of the item; further off only its meaning does.
    const next = items[i + 1];
    const adjacent = i === items.length - 2 && next?.type === 'aside' && next.to >= counts.to;
    const to = adjacent ? next.to : item.to;
    const said: CountsAs = adjacent ? counts : { ...counts, from: item.to, to: item.to };
    if (item.type === 'chain' && item.counts === null) {
      items[i] = { ...item, counts: said, to };
      if (adjacent) items.pop();
      return;
    }
    if (item.type === 'skip' && item.counts === null && item.places.some((p) => p.kind !== 'across')) {
      items[i] = { ...item, counts: said, to };
      if (adjacent) items.pop();
      return;
    }
    if (item.type === 'skip' && item.counts === null) {
      items[i] = { ...item, counts: said, to };
      if (adjacent) items.pop();
      return;
    }
    if (item.type === 'work') {
      const at = item.places.findIndex((place) => place.kind === 'from-hook' && place.counts === null);
      if (at < 0) continue;
      items[i] = { ...item, places: withCounts(item.places, at, said), to };
      if (adjacent) items.pop();
      return;
    }
  }
}

const GATHERED: readonly StitchForm[] = ['cluster', 'bobble', 'popcorn', 'puff'];

/** "Ch 3, dc2tog in same st (counts as first cluster)": the stitch behind the beginning chain is one with it. */
function gatheredWork(items: readonly Item[], counts: CountsAs): Item | null {
  const work = items.at(-2);
  if (items.at(-1)?.type !== 'aside' || work?.type !== 'work' || items.at(-3)?.type !== 'chain') return null;
  if (counts.kind !== 'stitch' || counts.stitch === null || counts.chains !== null) return null;
  if (!GATHERED.includes(counts.stitch.form)) return null;
  const { from, to } = work.stitch;
  return {
    ...work,
    stitch: { ...counts.stitch, from, to },
    amount: { kind: 'one', value: 1, from, to: from },
    to: counts.to,
  };
}

function withCounts(places: readonly Place[], at: number, counts: CountsAs): Place[] {
  return places.map((place, i) =>
    i === at && place.kind === 'from-hook' ? { ...place, counts, to: Math.max(place.to, counts.to) } : place,
  );
}

/** One thing at the position: its items (none when it was a count), or null when only separators were taken. */
export function readItem(c: Cursor, before: readonly Item[]): Item[] | null {
  const token = c.peek();
  if (!token) return null;
  if (c.nesting >= DEEPEST * 2) return readUnread(c);
  c.nesting++;
  const items = readItemHere(c, token, before);
  c.nesting--;
  return items;
}

function readItemHere(c: Cursor, token: Token, before: readonly Item[]): Item[] | null {
  const spelled = readTunisian(c) ?? readSpelled(c) ?? readHeldBack(c);
  if (spelled) return spelled;
  if (token.kind === 'sign' && isMark(c, c.at)) return readStarredCount(c, before) ? [] : readStar(c);
  if (token.kind === 'sign' && token.word in OPENING) {
    const colour = readColourBehind(c, before) ?? (before.at(-1)?.type === 'chain' ? readSum(c) : null);
    if (colour) return colour;
    const coloured = readColoured(c, before);
    if (coloured) return coloured;
    const sizes = bracketValues(c, c.at);
    const amounts = sizes !== null && c.sizes !== null && c.sizes > 1 && sizes.values.length === c.sizes;
    const next = sizes ? c.tokens[sizes.next] : undefined;
    if (!amounts || sizes!.next >= c.end || next?.kind === 'sign' || next?.word === 'turn')
      return readBracket(c, before);
  }
  if (token.word === ')' || token.word === ']' || token.word === '}') {
    c.at++;
    c.fact('bracket-not-opened', token, { sign: token.word });
    return [{ type: 'unread', from: token.from, to: token.to }];
  }
  const found = readKnown(c, before);
  if (found) return found;
  const filler = c.attempt(() => {
    if (!c.eatAny(FILLERS)) return null;
    for (let n = 0; n < 4 && c.eatAny(FILLERS); n++);
    if (c.done || c.peek()!.kind === 'sign') {
      if (c.peek() && (isMark(c, c.at) || c.word() in OPENING)) return readItem(c, before);
      return c.done || [',', ';', '.', ':'].includes(c.word()) ? [] : null;
    }
    return readKnown(c, before);
  });
  if (filler) return filler;
  return readUnread(c);
}

function readKnown(c: Cursor, before: readonly Item[]): Item[] | null {
  return (
    readOtherSide(c) ??
    readSentenceOfProse(c, before) ??
    readTimesBefore(c) ??
    readExcept(c, before) ??
    readAlternately(c, before) ??
    (c.peek()!.kind === 'number' || c.word(1) === 'x' ? readColoured(c, before) : null) ??
    readBareNumber(c, before) ??
    readOpenCount(c, before) ??
    readRepBracket(c, before) ??
    readWhole(c) ??
    (c.isAny(['rep', 'cont', 'from', 'work from']) ? readLooseRepeat(c) : null) ??
    readElsewhere(c) ??
    readRepeatOfAll(c, before) ??
    readColourBehind(c, before) ??
    readSimple(c) ??
    wrap(readWorkTogether(c)) ??
    readStartingIn(c) ??
    readWorkIn(c) ??
    readInPattern(c) ??
    readLoopAlone(c) ??
    readPlaceFirst(c, before) ??
    readRing(c) ??
    readLastStitch(c, before) ??
    wrap(readSkip(c)) ??
    readAllIn(c, before) ??
    readStitches(c, before) ??
    readSentence(c) ??
    readRemark(c)
  );
}

function wrap(item: Item | null): Item[] | null {
  return item ? [item] : null;
}

/** "…, working last st in top of tch" behind a stitch in each: the last of them, said once more with its place. */
function readLastStitch(c: Cursor, before: readonly Item[]): Item[] | null {
  return c.attempt(() => {
    if (c.eatAny(['ending', 'end', 'finishing'])) {
      const own = endingPlace(c, before);
      return own === null ? null : [{ ...own, amount: one(c) }];
    }
    if (!c.eatAny(['working', 'work', 'placing', 'making', 'with'])) return null;
    c.eat('the');
    return c.eatAny(['last', 'final']) ? wrap(lastStitch(c, before)) : null;
  });
}

/** A chain, a chain ring or a yarn ring. */
function readRing(c: Cursor): Item[] | null {
  const start = c.at;
  const yarn = readYarnRing(c);
  if (yarn) return [yarn];
  const made = c.attempt(() => {
    c.eatAny(['make', 'work', 'form', 'beg with', 'start with', 'begin with', 'with']);
    c.eatAny(['a', 'an']);
    return readChain(c);
  });
  if (!made) return null;
  if (made.counts === null && readRingClose(c))
    return [{ type: 'ring', chains: made.amount, ...c.span(start) }];
  return [made];
}

/** What may stand before the first stitch of a row. */
const BEFORE_WORK: readonly Item['type'][] = ['chain', 'aside', 'colour', 'attach'];

/** The stitch with its place on the chain that the row itself has just made. */
function onOwnChain(work: Work, place: Place, nth: Amount | null): Work {
  const { loop, from, to } = place;
  return { ...work, places: [{ kind: 'own-chain', nth, loop, post: null, below: 0, from, to }] };
}

const isMore = (token: Token): boolean => ['more', 'extra', 'additional'].includes(token.word);

/** "in ch-4 sp", which says neither which nor how many; a corner is one of its own. */
const isBareSpace = (place: Place): place is Extract<Place, { kind: 'next' }> =>
  place.kind === 'next' &&
  place.bare === true &&
  place.nouns.every((noun) => noun.kind === 'space' && noun.chains !== null);

/** A stitch in each stitch all the way, so that the spaces between are still to be told. */
const goesOverStitches = (item: Item | undefined): boolean => {
  const place = item?.type === 'work' ? item.places[0] : undefined;
  return (
    isAcross(item) &&
    place?.kind === 'across' &&
    place.nouns.every(({ kind }) => kind === 'stitch' || kind === 'named')
  );
};

function isAcross(item: Item | undefined): boolean {
  const place = item?.type === 'work' ? item.places[0] : undefined;
  return place?.kind === 'across' && place.stop.kind === 'end';
}

const JUST_MADE = /\b(?:just|last [a-z]+) (?:made|worked)$|\btop of (?:last|previous|same) [a-z]+$/iu;

/** "make bobble as follows: (yo, insert hook in next st …": how the stitch is made, loop by loop, behind its name. */
function toldBehind(c: Cursor, work: Work, start: number): Work | null {
  return c.attempt(() => {
    c.eatAny([',', '-']);
    if (!c.eatAny(['as follows', 'as foll', 'thus', 'this way', 'in this way', 'like this'])) return null;
    c.eatAny([':', ',', '-']);
    const [made] = readSpelled(c) ?? readHeldBack(c) ?? [];
    if (made?.type !== 'work') return null;
    const place = work.places[0]!;
    const said = place.kind !== 'next' || !place.implied;
    const stitch = work.stitch.form === 'plain' ? made.stitch : { ...work.stitch, parts: made.stitch.parts };
    return { ...work, stitch, places: said ? work.places : made.places, ...c.span(start) };
  });
}

/** Stitches with places; a slip stitch that closes the round; a stitch into the work's own chain. */
function readStitches(c: Cursor, before: readonly Item[]): Item[] | null {
  const start = c.at;
  const work = readWork(c);
  if (!work) return null;
  if (Array.isArray(work)) return work;
  const gathered = gatheredBehind(c, work, start);
  if (gathered) return [gathered];
  const told = toldBehind(c, work, start);
  if (told) return [told];
  const last = before.at(-1);
  const place = work.places[0]!;
  if (place.kind === 'last' && isAcross(last) && c.tokens.slice(start, start + 2).some(isMore)) {
    // "sc in each st across, 1 more sc in last st": the last has one already.
    const { loop, post, below, from, to } = place;
    return [{ ...work, places: [{ kind: 'same', loop, post, below, from, to }] }];
  }
  // "sc evenly around, working 3 sc in each corner": they are among those that are worked evenly.
  const worked = before.findLast((item) => item.type !== 'aside');
  const spread = worked?.type === 'work' && worked.places[0]?.kind === 'evenly';
  if (spread && place.kind === 'across' && place.nouns[0]?.corner !== undefined)
    return [{ type: 'aside', ...c.span(start) }];
  // "sc in each dc around, working 4 sc in ch-4 sp": in each of them, as far as the stitches go.
  if (work.places.length === 1 && isBareSpace(place) && goesOverStitches(last))
    return [{ ...work, places: [inEach(place)] }];
  if (last?.type === 'chain' && work.places.length === 1) {
    // "ch 3, sl st in first ch": a picot, or a stitch on the chain just made.
    if (place.kind === 'first' && place.noun.kind === 'chain' && !(c.round && closes(c)))
      return [onOwnChain(work, place, null)];
    const working = c.definition || before.some((item) => !BEFORE_WORK.includes(item.type));
    if (place.kind === 'from-hook' && work.stitch.base === 'slip' && working) {
      return [onOwnChain(work, place, place.nth)];
    }
    // "*sc in next 3 sts, ch 3, sl st in last sc; rep …", "… sl st in last sc (picot)": closed on it, too.
    const closesOn =
      place.kind === 'last' && place.noun.kind === 'named' && one(c).kind === place.amount.kind;
    const named = c.isAny(['(picot', '( picot', 'to form picot', 'for picot', 'to make picot']);
    if (work.stitch.base === 'slip' && working && closesOn && (c.depth > 0 || named))
      return [onOwnChain(work, place, null)];
    // "ch 3, sl st in sc just made": closed on the stitch it stands on.
    if (work.stitch.base === 'slip' && working && JUST_MADE.test(c.words(c.span(start))))
      return [onOwnChain(work, place, null)];
  }
  const side = place.kind === 'next' && place.implied ? readOtherSideBehind(c) : null;
  if (side)
    return [
      { ...side, from: work.from, to: work.from },
      { ...work, to: side.to },
    ];
  const spaced = withChainsBetween(c, work, before);
  if (spaced) return spaced;
  const join = asJoin(c, work, start, c.round, last?.type === 'chain');
  return [join ?? work];
}

/** Words that nothing above knows: up to a separator, or to where something known begins. */
function readUnread(c: Cursor): Item[] {
  const before = c.tokens[c.at - 1]?.word ?? ',';
  if (
    c.peek()!.kind === 'number' &&
    c.at + 2 >= c.end - 1 &&
    before === '.' &&
    c.at > 1 &&
    ['.', undefined].includes(c.peek(2)?.word)
  ) {
    // "… 5 petals.": a count of things that no row can check.
    const start = c.at;
    c.at = Math.min(c.end, c.at + 2);
    return [{ type: 'aside', ...c.span(start) }];
  }
  if (c.peek()!.kind === 'number' && c.peek(1)?.kind === 'word' && c.at + 1 < c.end) {
    // The number before an unknown stitch is understood; the finding is about the stitch.
    const number = c.at;
    c.at++;
    return [{ type: 'aside', ...c.span(number) }, ...readUnread(c)];
  }
  const start = c.at;
  c.at++;
  let words = 1;
  while (!c.done && words < 60) {
    const token = c.peek()!;
    if (token.kind === 'sign' && (token.gap || (token.word !== "'" && token.word !== '-'))) break;
    if (token.kind !== 'sign' && token.gap && startsKnown(c)) break;
    c.at++;
    words++;
  }
  const span = c.span(start);
  const first = c.tokens[start]!;
  const single = c.at === start + 1 && first.kind === 'word';
  const isBehindNumber = !first.gap && c.tokens[start - 1]?.kind === 'number';
  c.fact('word-not-read', span, {
    words: c.words(span),
    expected: 'stitch',
    suggestion: !single
      ? null
      : isBehindNumber
        ? suggestionBehindNumber(first.word)
        : suggestion(first.word, c.lexicon),
  });
  const unread: Item = { type: 'unread', ...span };
  // The place behind an unknown stitch is understood, but there is nothing to put in it.
  const at = c.at;
  const place = c.attempt(() => (c.isAny(['across', 'and']) ? null : readPlaces(c)));
  return place && c.at > at ? [unread, { type: 'aside', ...c.span(at) }] : [unread];
}

/** True where a place, or work, surely begins after unread words. */
function startsKnown(c: Cursor): boolean {
  if (c.isAny(['then', 'and', 'turn', 'rep', 'join', 'fasten'])) return true;
  const at = c.at;
  const facts = c.facts.length;
  const counts = c.counts.length;
  const known =
    readPlace(c) !== null || readChain(c) !== null || readSkip(c) !== null || readWork(c) !== null;
  c.at = at;
  c.facts.length = facts;
  c.counts.length = counts;
  return known;
}
