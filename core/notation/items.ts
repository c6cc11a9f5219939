/**
 * Reads the body of a row: one item after another, each by the reader that knows it, and what none of them
 * knows as words not read. It never stops before the end and never skips a word in silence.
 */
import { readBracketCount, readCountParts, readCountsAs, readSaid } from './counts.ts';
import { type Cursor, OPENING } from './cursor.ts';
import type { Token } from './lexer.ts';
import { readNoun } from './nouns.ts';
import { bracketValues, one, readAmount } from './numbers.ts';
import { RINGS, readBarePlace, readLoop, readPlace, readPlaces } from './places.ts';
import {
  DEEPEST,
  isMark,
  readBracket,
  readInside,
  readLooseRepeat,
  readRepBracket,
  readRepeatOfAll,
  readStar,
} from './repeats.ts';
import { isAside, readSimple } from './simple.ts';
import type { Amount, Convention, CountsAs, Item, Place, StatedCount, Times, Work } from './tree.ts';
import { readWhole } from './wholes.ts';
import { readStitch, suggestion } from './words.ts';
import {
  asJoin,
  impliedPlace,
  insideGroup,
  readChain,
  readRingClose,
  readSkip,
  readWork,
  readYarnRing,
} from './work.ts';

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
    }
    if (c.at === before) c.at++;
  }
  return items;
}

/** A bracket's "(counts as dc)" belongs to the chain, or to the chains that "4th ch from hook" passes over. */
function attachSaid(c: Cursor, items: Item[]): void {
  const counts = c.said.pop();
  if (!counts) return;
  c.said.length = 0;
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

function withCounts(places: readonly Place[], at: number, counts: CountsAs): Place[] {
  return places.map((place, i) =>
    i === at && place.kind === 'from-hook' ? { ...place, counts, to: Math.max(place.to, counts.to) } : place,
  );
}

const COUNT_WORDS = [
  'total',
  'you will',
  'you should',
  'you now',
  'you have',
  'now you have',
  'there are',
  'there should',
  'there will',
  'st count',
  'for a total',
  'a total of',
];

/** "– 24 sts", "= 24", ". 24 (26, 28) sc" at the end of the row: a count behind a separator. */
function readCountBehind(c: Cursor, items: readonly Item[]): boolean {
  if (items.length === 0 && c.counts.length === 0) return false;
  return (
    c.attempt(() => {
      const sign = c.word();
      const dashed = c.attempt(() => {
        // "-12-" at the end.
        const start = c.at;
        c.at++;
        const amount = sign === '-' && c.peek() && !c.peek()!.gap ? readAmount(c) : null;
        if (!amount || c.word() !== '-') return null;
        c.at++;
        if (!countMayEnd(c)) return null;
        const span = c.span(start);
        return { parts: [{ amount, noun: null, ...amount }], turningChain: null, ...span } as StatedCount;
      });
      if (dashed) {
        c.counts.push(dashed);
        return true;
      }
      const glued = sign === '-' && !c.peek()!.gap;
      if (sign === '-' && bracketValues(c, c.at + 1)) {
        const count = readCountParts(c);
        if (!count || !countMayEnd(c)) return null;
        c.counts.push(count);
        return true;
      }
      c.at++;
      if (glued && c.peek() && !c.peek()!.gap) return null;
      while (['-', '=', ':', '.', ','].includes(c.word()) && !c.done) c.at++;
      const number = c.peek();
      const intro = c.isAny(COUNT_WORDS);
      if (
        !intro &&
        number?.kind !== 'number' &&
        number?.kind !== 'figure' &&
        !(number && number.word in OPENING)
      )
        return null;
      if (number && number.word in OPENING) return null;
      const start = c.at;
      const count = readCountParts(c);
      if (!count) return null;
      // Trailing words such as "at end" are taken; only separators, asides or a turn may follow.
      const firm =
        intro ||
        sign === '=' ||
        sign === '<' ||
        sign === '…' ||
        sign === '...' ||
        sign === '..' ||
        sign === '→' ||
        (sign === '-' && !glued) ||
        count.parts.every(
          (part) => part.noun?.kind === 'stitch' && part.amount.from === count.parts[0]!.amount.from,
        );
      if (!countMayEnd(c)) return null;
      if (!firm) {
        // ". 24 sc" is a count only where nothing but the end follows and something stood before it.
        if (sign !== '.' && sign !== ';' && sign !== ':') return null;
        if (count.parts[0]!.noun?.kind === 'chain') return null;
        const bare = count.parts.some((part) => part.noun === null);
        if (bare && count.parts.length > 1) return null;
      }
      if (c.at === start) return null;
      c.counts.push(count);
      return true;
    }) === true
  );
}

function countMayEnd(c: Cursor): boolean {
  let ahead = 0;
  while (c.peek(ahead) && [',', ';', '.', ')', ']', '>'].includes(c.word(ahead))) ahead++;
  // A sentence of its own behind the count.
  if (ahead > 0 && c.word(ahead - 1) === '.' && /^\p{Lu}\p{Ll}/u.test(c.peek(ahead)?.text ?? '')) return true;
  return (
    !c.peek(ahead) ||
    c.isAny(
      ['turn', 'fasten', 'do not', 'join', 'finish', 'cut', 'break', '(', 'place', 'now', 'change', 'rep'],
      ahead,
    )
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
  if (token.kind === 'sign' && isMark(c, c.at)) return readStar(c);
  if (token.kind === 'sign' && token.word in OPENING) {
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
    readBareNumber(c, before) ??
    readOpenCount(c, before) ??
    readRepBracket(c, before) ??
    readWhole(c) ??
    (c.isAny(['rep', 'cont', 'from', 'work from']) ? readLooseRepeat(c) : null) ??
    readRepeatOfAll(c, before) ??
    readSimple(c) ??
    readStartingIn(c) ??
    readWorkIn(c) ??
    readLoopAlone(c) ??
    readPlaceFirst(c, before) ??
    readRing(c) ??
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

/** "Total 48 dc", "24 sts", "24 sts at end": a count with no separator or bracket to show it. */
function readOpenCount(c: Cursor, before: readonly Item[]): Item[] | null {
  const token = c.peek()!;
  const intro = c.isAny(COUNT_WORDS);
  if (
    before.length > 0 &&
    token.kind === 'number' &&
    c.at + 1 === c.end &&
    /\t/u.test(c.text.slice(c.tokens[c.at - 1]?.to ?? 0, token.from))
  ) {
    // A count in a column of its own.
    const amount = readAmount(c)!;
    c.counts.push({
      parts: [{ amount, noun: null, from: amount.from, to: amount.to }],
      turningChain: null,
      from: amount.from,
      to: amount.to,
    });
    return [];
  }
  if (!intro && token.kind !== 'number' && token.kind !== 'figure') return null;
  if (!intro && before.length === 0) return null;
  return c.attempt(() => {
    const count = readCountParts(c);
    if (!count) return null;
    const only = count.parts[0]!;
    if (!intro && only.noun?.kind !== 'stitch') {
      const last = c.words({ from: only.from, to: c.tokens[c.at - 1]!.to });
      if (!/\b(?:at end|in total|in all|total|altogether)\b/iu.test(last)) return null;
    }
    if (!countMayEnd(c) || c.isAny(['rep'])) return null;
    c.counts.push(count);
    return [];
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

/** "Starting in 2nd ch from hook, sc in each ch across": the first place of the stitch behind it. */
function readStartingIn(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    if (!c.eatAny(['beg in', 'beg with', 'beg from', 'beg at', 'start in', 'start with', 'start at']))
      return null;
    const place = readBarePlace(c);
    if (!place || !['from-hook', 'first', 'next', 'same', 'nth'].includes(place.kind)) return null;
    const at = c.at;
    if (c.isAny(['with', ', ch', ', with']))
      return [{ type: 'attach', stitch: null, place, ...c.span(start) }];
    c.eat(',');
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
    if (first.kind === 'next' && first.amount.kind === 'one' && work.over === null) {
      // "starting in 2nd ch from hook, sc in next 5 ch": the first of the five.
      if (first.amount.value < 2) return [{ ...work, places: [place, ...work.places.slice(1)], ...all }];
      const rest: Place = { ...first, amount: { ...first.amount, value: first.amount.value - 1 } };
      return [{ ...work, places: [place, rest, ...work.places.slice(1)], ...all }];
    }
    return null;
  });
}

/** "work in dc across first 12 sts"; "work in dc" alone says only what the rows are worked in. */
function readWorkIn(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    if (!c.eatAny(['work in', 'working in', 'cont in', 'cont working in', 'cont to work in'])) return null;
    const stitch = readStitch(c);
    if (!stitch) return null;
    const places = readPlaces(c);
    if (places) return [{ type: 'work', stitch, amount: one(c), places, over: null, ...c.span(start) }];
    return c.done || c.peek()!.kind === 'sign' ? [{ type: 'aside', ...c.span(start) }] : null;
  });
}

/** "BLO:", "back loops only," at the head of the row: holds for all of it. */
function readLoopAlone(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    const loop = readLoop(c);
    if (!loop || !(c.done || [':', ',', ';', '-', ')'].includes(c.word()))) return null;
    return [{ type: 'loops', loop, post: null, below: 0, ...c.span(start) }];
  });
}

/** "work along the other side of the foundation chain": from here the free loops of it are met. */
function readOtherSide(c: Cursor): Item[] | null {
  if (!c.isAny(['work', 'working', 'cont', 'on', 'along', 'now', 'rotate', 'turn', 'in', 'across', 'do not']))
    return null;
  return c.attempt(() => {
    const start = c.at;
    while (!c.done && c.peek()!.kind !== 'sign') {
      if (c.at > start && beginsWork(c)) break;
      c.at++;
    }
    if (c.at === start) return null;
    const item = asideOf(c, start);
    return item.type === 'other-side' ? [item] : null;
  });
}

/** "Circle should measure 12 cm across." inside a row: a sentence with no work in it. */
function readSentenceOfProse(c: Cursor, before: readonly Item[]): Item[] | null {
  const previous = c.tokens[c.at - 1]?.word ?? '';
  if (before.length === 0 || !['.', ')', ']', '!'].includes(previous)) return null;
  if (!/^\p{Lu}\p{Ll}/u.test(c.peek()!.text) || c.isAny(OPENERS) || isAside(c)) return null;
  return c.attempt(() => {
    const start = c.at;
    let words = 0;
    while (!c.done) {
      const token = c.peek()!;
      if (token.word === '.' || token.word === '!') break;
      if (isMark(c, c.at) || token.word in OPENING || words > 60) return null;
      if (c.at > start && (beginsWork(c) || c.isAny(WORK_WORDS))) return null;
      c.at++;
      words++;
    }
    if (words < 3 || (c.at === start + 1 && readPlace(c))) return null;
    const span = c.span(start);
    c.fact('prose-passed-over', span, { words: c.words(span) });
    return [{ type: 'aside', ...span }];
  });
}

/** Words that begin work or a known instruction, so that a sentence with them in front is no prose. */
const OPENERS = [
  'ch',
  'chs',
  'sk',
  'rep',
  'turn',
  'join',
  'fasten',
  'work',
  'do not',
  'change',
  'place',
  'move',
  'with',
  'sl',
  'ss',
  'inc',
  'dec',
  'in',
  'cont',
  'leave',
  'end',
  'total',
  'sc',
  'dc',
  'hdc',
  'tr',
  'htr',
  'dtr',
  'make',
  'next',
  'now',
  'then',
  'mark',
  'remove',
  'finish',
  'weave',
  'cut',
  'break',
  'attach',
  'rejoin',
  'using',
  'you',
];
const WORK_WORDS = [
  'in next',
  'in each',
  'in same',
  'in last',
  'in first',
  'rep from',
  'across to',
  'turn',
  'in ea',
];

/** "6x (sc, inc)", "6 (1 sc, 1 inc)": the number of times before the bracket. */
function readTimesBefore(c: Cursor): Item[] | null {
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
function readBareNumber(c: Cursor, before: readonly Item[]): Item[] | null {
  const ring = c.attempt(() => {
    const start = c.at;
    if (!c.eatAny(RINGS)) return null;
    c.eat(',');
    const amount = readAmount(c);
    if (!amount || !(c.done || ['(', '[', '-', '.', '=', ','].includes(c.word()))) return null;
    return assumed(c, start, amount, { kind: 'ring', loop: null, post: null, below: 0, ...c.span(start) });
  });
  if (ring) return [ring];
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

/** "In next ch-2 sp work (2 dc, ch 2, 2 dc)": the place first, the work behind it. */
function readPlaceFirst(c: Cursor, before: readonly Item[]): Item[] | null {
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
    const loop = c.attempt(() => {
      c.eatAny(['in', 'through', 'under', 'using', 'across']);
      const found = readLoop(c);
      if (!found) return null;
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
      return [{ type: 'loops', loop, post: null, below: 0, ...c.span(start) }];
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
    if (!first || first.type !== 'work') return null;
    const made = insideGroup(items);
    if (made.length === 1 && made[0]!.type === 'work') {
      return [{ ...made[0]!, places, ...c.span(start) }];
    }
    return [{ type: 'group', items: made, places, ...c.span(start) }];
  });
}

/** "In ring work ch 3, 11 dc": all that follows up to a join, a turn or a full stop goes into the ring. */
function ringWork(c: Cursor, start: number, places: readonly Place[]): Item[] | null {
  const lead: Item[] = [];
  const items: Item[] = [];
  const first = c.at;
  let body = c.at;
  while (!c.done && items.length < 200) {
    const more = c.attempt(() => {
      while (c.eatAny([',', ';', ':', 'and', 'then']));
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
function readAllIn(c: Cursor, before: readonly Item[]): Item[] | null {
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

/** What may stand before the first stitch of a row. */
const BEFORE_WORK: readonly Item['type'][] = ['chain', 'aside', 'colour', 'attach'];

/** The stitch with its place on the chain that the row itself has just made. */
function onOwnChain(work: Work, place: Place, nth: Amount | null): Work {
  const { loop, from, to } = place;
  return { ...work, places: [{ kind: 'own-chain', nth, loop, post: null, below: 0, from, to }] };
}

/** Stitches with places; a slip stitch that closes the round; a stitch into the work's own chain. */
function readStitches(c: Cursor, before: readonly Item[]): Item[] | null {
  const start = c.at;
  const work = readWork(c);
  if (!work) return null;
  if (Array.isArray(work)) return work;
  const last = before.at(-1);
  const place = work.places[0]!;
  if (last?.type === 'chain' && work.places.length === 1) {
    // "ch 3, sl st in first ch": a picot, or a stitch on the chain just made.
    if (place.kind === 'first' && place.noun.kind === 'chain') return [onOwnChain(work, place, null)];
    const working = c.definition || before.some((item) => !BEFORE_WORK.includes(item.type));
    if (place.kind === 'from-hook' && work.stitch.base === 'slip' && working) {
      return [onOwnChain(work, place, place.nth)];
    }
  }
  const join = asJoin(c, work, start, c.round);
  return [join ?? work];
}

/** "The 3 skipped ch count as a dc", "turning ch counts as st" said in the row itself. */
function readSentence(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    const said = readSaid(c);
    const counts: CountsAs | null = said ? said.convention.counts : readCountsAs(c);
    if (!counts || (counts.kind === 'stitch' && !said && c.words(c.span(start)).length < 5)) return null;
    c.said.push(counts);
    return [asideOf(c, start)];
  });
}

/** Words that change nothing, up to the next separator. */
function readRemark(c: Cursor): Item[] | null {
  if (!isAside(c)) return null;
  const start = c.at;
  while (!c.done) {
    const sign = c.word();
    if ([',', ';', '.'].includes(sign) && c.at > start) break;
    if (sign in OPENING && c.at > start) {
      const close = c.partner[c.at]!;
      if (close < 0 || close >= c.end || readBracketCountAhead(c)) break;
      c.at = close + 1;
      continue;
    }
    if (isMark(c, c.at) || sign === ')' || sign === ']' || sign === '}') break;
    if (c.at > start && beginsWork(c)) break;
    c.at++;
  }
  return c.at > start ? [asideOf(c, start)] : null;
}

/** "sc in next", "2 dc", "ch 3", "sk 2": work that a remark must not swallow. */
function beginsWork(c: Cursor): boolean {
  const before = c.tokens[c.at - 1]!.word;
  if (
    [
      'of',
      'from',
      'to',
      'behind',
      'over',
      'under',
      'each',
      'the',
      'for',
      'last',
      'first',
      'this',
      'these',
      'in',
      'on',
      'with',
      'between',
      'above',
      'below',
      'around',
    ].includes(before)
  )
    return false;
  const at = c.at;
  const facts = c.facts.length;
  const chain = c.peek()!.word === 'ch' && c.peek(1)?.kind === 'number' ? readChain(c) : null;
  const skip = !chain && c.is('sk #') ? readSkip(c) : null;
  const work = chain || skip ? null : readWork(c);
  c.at = at;
  c.facts.length = facts;
  if (chain || skip) return true;
  if (!work) return false;
  if (Array.isArray(work)) return true;
  const place = work.places[0]!;
  return place.kind !== 'next' || !place.implied || place.amount.from < place.amount.to;
}

function readBracketCountAhead(c: Cursor): boolean {
  const at = c.at;
  const facts = c.facts.length;
  const found = readBracketCount(c) !== null;
  c.at = at;
  c.facts.length = facts;
  return found;
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
  c.fact('word-not-read', span, {
    words: c.words(span),
    expected: 'stitch',
    suggestion: single ? suggestion(first.word, c.lexicon) : null,
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

/** A sentence such as "Ch 3 counts as first dc throughout" that fills the cursor, or null. */
export function readConvention(c: Cursor): Convention | null {
  return c.attempt(() => {
    const said = readSaid(c);
    if (!said || said.skipped) return null;
    return c.done ? said.convention : null;
  });
}

const OTHER_SIDE =
  /\b(?:other|opposite|under|bottom|second|free|unused|remaining|rem)\W?\s?(?:side|edge|loops?|lps?)\b.*\b(?:ch|chain|foundation|base)\b|\b(?:other|opposite) side\b|\brotate\b/iu;

/** An aside, unless it sends the work to the other side of the foundation chain. */
function asideOf(c: Cursor, start: number): Item {
  const span = c.span(start);
  return { type: OTHER_SIDE.test(c.words(span)) ? 'other-side' : 'aside', ...span };
}
