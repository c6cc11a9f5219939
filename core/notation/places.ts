/**
 * Reads where the hook goes: "in next 2 sts", "in each st across", "in top of turning ch", "in 3rd dc of
 * next shell". It yields places in the order written and judges none of them.
 */
import type { Span } from '../finding.ts';
import { readCountsAs, readSaid } from './counts.ts';
import { type Cursor, OPENING } from './cursor.ts';
import { anyStitch, readNoun, readNouns, readSpace, readTurningChain } from './nouns.ts';
import { one, readAmount, readOrdinal } from './numbers.ts';
import { readStop, toTheEnd } from './stops.ts';
import type { Amount, Into, Noun, Place, Stop } from './tree.ts';

/** A place before its loop, post and depth are known. */
type Bare = Place extends infer P ? (P extends Place ? Omit<P, keyof Into | keyof Span> : never) : never;

interface Draft {
  loop: Into['loop'];
  post: Into['post'];
  below: number;
}

const LOOPS: readonly (readonly [string, NonNullable<Into['loop']>])[] = [
  ['back lps only', 'back'],
  ['back lp only', 'back'],
  ['back lps', 'back'],
  ['back lp', 'back'],
  ['blo', 'back'],
  ['blos', 'back'],
  ['front lps only', 'front'],
  ['front lp only', 'front'],
  ['front lps', 'front'],
  ['front lp', 'front'],
  ['flo', 'front'],
  ['both lps', 'both'],
  ['third lps', 'third'],
  ['third lp only', 'third'],
  ['third lp', 'third'],
  ['#th lps', 'third'],
  ['#th lp only', 'third'],
  ['#th lp', 'third'],
  ['back bars', 'third'],
  ['back bar', 'third'],
  ['back bump', 'third'],
  ['back bumps', 'third'],
  ['horizontal bar', 'third'],
  ['bar below', 'third'],
  ['lp behind', 'third'],
  ['3lo', 'third'],
];

/** "back loop only", "blo", "3rd loop", "the bar below": the loop meant, or null. */
export function readLoop(c: Cursor): NonNullable<Into['loop']> | null {
  return c.attempt(() => {
    c.eat('the');
    c.eatAny(['unworked', 'unused', 'free', 'rem']);
    for (const [phrase, loop] of LOOPS) {
      if (!c.is(phrase)) continue;
      if (phrase.startsWith('#th') && c.peek()!.value !== 3) continue;
      if (phrase.startsWith('back bar') && c.is('back bars of')) continue;
      c.eat(phrase);
      c.eat('only');
      c.eat('(blo)');
      return loop;
    }
    return null;
  });
}

/** "2 rows below", "of previous row", "in blo", "made": words behind a noun that fix row, loop or nothing. */
function readTail(c: Cursor, draft: Draft): void {
  for (;;) {
    const took = c.attempt(() => {
      if (
        c.eatAny([
          'of prev row',
          'of prev rnd',
          'of the prev row',
          'of the prev rnd',
          'from prev row',
          'from prev rnd',
          'from the prev row',
          'from the prev rnd',
          'in prev row',
          'in prev rnd',
          'on prev row',
          'on prev rnd',
          'of last row',
          'of last rnd',
          'from last row',
          'from last rnd',
          'on last row',
          'on last rnd',
          'of row below',
          'from row below',
          'of previous',
          'of foundation ch',
          'of the foundation ch',
          'of foundation',
          'of base ch',
          'of each rnd',
          'of each row',
          'of every rnd',
          'at beg of prev row',
          'at beg of prev rnd',
          'at beg of last row',
          'at beg of row',
          'at beg of the row',
          'at beg of rnd',
          'at start of row',
          'at end of row',
          'of cuff',
          'of body',
          'of band',
          'as indicated',
          'indicated',
          'specified',
          'as specified',
          'designated',
          'stated',
          'as stated',
          'given',
          'shown',
          'just made',
          'just worked',
          'made',
          'worked',
        ])
      ) {
        return true;
      }
      if (c.eatAny(['in row below', 'in the row below', 'on row below', 'directly below', 'row below'])) {
        draft.below = Math.max(draft.below, 1);
        return true;
      }
      const deep = c.attempt(() => {
        const wrapped = c.eat('(');
        c.eatAny(['of', 'in', 'from', 'on']);
        c.eat('the');
        const amount = readAmount(c, false);
        if (
          amount?.kind !== 'one' ||
          !c.eatAny(['rows below', 'row below', 'rnds below', 'rnd below', 'rows down', 'rnds down'])
        ) {
          return null;
        }
        if (wrapped && !c.eat(')')) return null;
        return amount.value;
      });
      if (deep !== null) {
        // "1 row below" is said of the row below the usual one.
        draft.below = deep;
        return true;
      }
      if (c.eatAny(['of row', 'of rnd', 'from row', 'from rnd', 'in row', 'in rnd', 'on row', 'on rnd'])) {
        if (!readAmount(c, false)) return null;
        c.eat('below');
        return true;
      }
      if (c.word() === 'below') {
        c.at++;
        c.eat('it');
        draft.below = Math.max(draft.below, 1);
        return true;
      }
      const loop = c.attempt(() => {
        if (c.is('(blo') || c.is('( blo') || c.is('( flo')) {
          c.at++;
          const inner = readLoop(c);
          return inner && c.eat(')') ? inner : null;
        }
        c.eatAny(['through', 'in', 'under', 'using']);
        c.eat('the');
        return c.isAny(['blo of', 'flo of']) ? null : readLoop(c);
      });
      if (loop) {
        draft.loop = loop;
        return true;
      }
      if (c.eatAny(['from the front', 'from front'])) {
        draft.post = 'front';
        return true;
      }
      if (c.eatAny(['from the back', 'from back', 'from behind'])) {
        draft.post = 'back';
        return true;
      }
      return null;
    });
    if (!took) return;
  }
}

/** "as join", "as last dc", "as sl st": what "same" points at. Taken up to the next comma-like sign. */
export function readAs(c: Cursor): void {
  c.attempt(() => {
    if (!c.eatAny(['as', 'where', 'that', 'with', 'used for', 'at'])) return null;
    let words = 0;
    while (
      words < 7 &&
      c.peek() &&
      (c.peek()!.kind !== 'sign' || c.word() === '-') &&
      !c.isAny(['and', 'in', 'then', 'turn', 'across', 'around'])
    ) {
      c.at++;
      words++;
    }
    return words > 0 ? true : null;
  });
}

const JOINS = ['of join', 'of joining', 'of sl st', 'of beg', 'of last st'];

function readSame(c: Cursor): Bare | null {
  return c.attempt(() => {
    if (
      c.eatAny([
        'base of',
        'st at base of',
        'st at the base of',
        'first st at base of',
        'sp at base of',
        'ch at base of',
      ])
    ) {
      c.eat('the');
      const older = c.attempt(() =>
        readAmount(c, false) && (c.eat('-'), c.eatAny(['turning ch', 'ch', 'chs'])) ? true : null,
      );
      if (!older && !readTurningChain(c) && !readNoun(c)) return null;
      return { kind: 'same' };
    }
    if (
      c.eatAny([
        'join sl st',
        'join ss',
        'join st',
        'join sc',
        'join dc',
        'joined st',
        'this st',
        'this sp',
        'this ch',
        'that st',
        'that sp',
      ])
    ) {
      return { kind: 'same' };
    }
    if (!c.eat('same')) return null;
    c.eatAny(['place', 'spot']);
    readNoun(c);
    c.attempt(() => (c.eat('or') && readNoun(c) ? true : null));
    c.eatAny(['place', 'spot']);
    c.eatAny(JOINS);
    readAs(c);
    return { kind: 'same' };
  });
}

export const RINGS = [
  'magic ring',
  'magic circle',
  'magic lp',
  'adjustable ring',
  'adjustable lp',
  'adjustable circle',
  'sliding lp',
  'sliding ring',
  'slip ring',
  'yarn ring',
  'ch ring',
  'center of ring',
  'center of the ring',
  'center of lp',
  'center ring',
  'beg ring',
  'ring',
  'circle',
  'mr',
];

/** The unit behind "of": "of next shell", "of each V-st across", "of same sp". */
function readUnit(
  c: Cursor,
): { unit: Noun; which: 'next' | 'each' | 'same' | 'last' | 'first'; stop: Stop | null } | null {
  return c.attempt(() => {
    c.eat('the');
    const said = c.eatAny(['each of next', 'next', 'foll', 'each', 'every', 'same', 'last', 'first', '#th']);
    if (said === '#th' && c.tokens[c.at - 1]!.value !== 1) return null;
    const which =
      said === null || said === 'next' || said === 'foll' || said === 'each of next'
        ? 'next'
        : said === 'every'
          ? 'each'
          : said === '#th'
            ? 'first'
            : (said as 'each' | 'same' | 'last' | 'first');
    const many = c.attempt(() => {
      const amount = readAmount(c, false);
      return amount && !c.isAny(['ch', '- ch', 'tr', 'dc', '-']) ? amount : null;
    });
    const unit = readNoun(c) ?? partsNoun(c);
    if (!unit || (many && said === null)) return null;
    return { unit, which, stop: which === 'each' ? (readStop(c) ?? toTheEnd(c)) : null };
  });
}

/** "3-dc group", "5 tr group": a group without a name of its own. */
function partsNoun(c: Cursor): Noun | null {
  return c.attempt(() => {
    const start = c.at;
    if (!readAmount(c, false)) return null;
    if (c.word() === '-') c.at++;
    if (!readNoun(c)) return null;
    if (!c.eatAny(['group', 'groups', 'cl', 'grp', 'set', 'corners', 'corner', 'inc', 'incs', 'point']))
      return null;
    return { kind: 'between', ...c.span(start) };
  });
}

/** "top of turning ch", "3rd ch of beg ch-5", "turning ch". */
export function readTurningPlace(c: Cursor, nth: Amount | null): Bare | null {
  return c.attempt(() => {
    c.eatAny(['the', 'prev']);
    // "top of the skipped chs": the edge that skipping chains made.
    const skipped = c.attempt(() => {
      c.eat('beg');
      readAmount(c, false);
      return c.eatAny(['skipped']) && (readAmount(c, false), c.eatAny(['chs', 'ch'])) ? true : null;
    });
    if (skipped) return { kind: 'turning-chain', nth, beginning: true };
    if (nth) {
      // "3rd of 3 ch" of older books; "3rd ch of ch-3" says a chain of the edge, too.
      const older = c.attempt(() => {
        c.eat('turning');
        const n = readAmount(c, false);
        if (n) c.eat('-');
        return n && c.eatAny(['turning ch', 'ch', 'chs']) && !c.isAny(['sp', '- sp', 'lp']) ? n : null;
      });
      if (older) return { kind: 'turning-chain', nth, beginning: false };
    }
    const chain = readTurningChain(c);
    if (chain) {
      if (c.isAny(['sp', '- sp', 'lp'])) return null;
      return { kind: 'turning-chain', nth, beginning: chain.beginning };
    }
    const counted = c.attempt(() => {
      if (!readAmount(c, false)) return null;
      c.eat('-');
      c.eat('turning');
      return c.eatAny(['ch', 'chs']) && !c.isAny(['sp', '- sp', 'lp', 'sps']) ? true : null;
    });
    if (counted) return { kind: 'turning-chain', nth, beginning: false };
    if (c.eat('ch')) {
      if (c.word() === '-') c.at++;
      if (!readAmount(c, false)) return null;
      if (c.isAny(['sp', '- sp', 'lp', 'sps', 'picot'])) return null;
      const beginning =
        c.eatAny(['at beg of rnd', 'at beg of the rnd', 'at beg', 'at start of rnd']) !== null;
      c.eatAny(['at beg of row', 'at beg of prev row', 'of prev row', 'of prev rnd']);
      return { kind: 'turning-chain', nth, beginning };
    }
    return null;
  });
}

function readNth(c: Cursor): Bare | null {
  return c.attempt(() => {
    const nth = readOrdinal(c);
    if (!nth) return null;
    c.eatAny(['and final']);
    const noun = c.is('from hook') ? anyStitch(c) : readNoun(c);
    c.eat('away');
    if (c.eatAny(['from hook', 'from the hook', 'from your hook'])) {
      return { kind: 'from-hook', nth, counts: null };
    }
    if (c.attempt(() => (c.eat('of') ? true : null))) {
      const back = c.at;
      const turning = readTurningPlace(c, nth);
      if (turning && (!noun || noun.kind === 'chain' || noun.kind === 'stitch')) return turning;
      c.at = back;
      if (!c.isAny(['prev', 'the prev', 'row', 'rnd', 'last row', 'last rnd'])) {
        const of = readUnit(c);
        if (of) return { kind: 'of-unit', nth, noun: noun ?? anyStitch(c), ...of };
      }
      c.at = back - 1;
    }
    if (nth.kind === 'one' && nth.value === 1) return firstPlace(c, one(c), noun);
    return { kind: 'nth', nth, noun: noun ?? anyStitch(c) };
  });
}

function firstPlace(c: Cursor, amount: Amount, noun: Noun | null): Bare {
  return { kind: 'first', amount, noun: noun ?? anyStitch(c) };
}

/** "first st", "last 2 sts", "last dc of next shell". */
function readEdge(c: Cursor): Bare | null {
  return c.attempt(() => {
    const word = c.eatAny([
      'each of the first',
      'each of first',
      'first',
      'each of the last',
      'each of last',
      'last',
      'very first',
      'very last',
      'final',
    ]);
    if (!word) return null;
    const kind = word.includes('first') ? 'first' : 'last';
    // "first ch-3" at the row's edge is a space; "first turning ch" the turning chain.
    const amount = c.attempt(() => {
      const n = readAmount(c);
      return n && !c.isAny(['- ch', 'ch sp', 'ch - sp']) ? n : null;
    });
    const turning = readTurningChain(c);
    if (turning && !c.isAny(['sp', '- sp']))
      return { kind: 'turning-chain', nth: null, beginning: turning.beginning };
    const noun = readNoun(c);
    if (kind === 'last' && noun && c.eatAny(['just made', 'just worked', 'made', 'worked', 'completed'])) {
      // "sl st in last sc made": on top of the work itself, not the last of the row below.
      return { kind: 'own-chain', nth: null };
    }
    // "first of these 3 ch": a chain of the work's own.
    const chain = noun
      ? null
      : c.attempt(() => {
          if (!c.eatAny(['of these', 'of the', 'of those'])) return null;
          readAmount(c, false);
          const found = readNoun(c);
          return found?.kind === 'chain' ? found : null;
        });
    if (chain) return { kind, amount: amount ?? one(c), noun: chain };
    const of = c.attempt(() => {
      if (!c.eat('of')) return null;
      if (c.isAny(['prev', 'the prev', 'row', 'rnd', 'last row', 'last rnd', 'the row', 'the rnd', 'this']))
        return null;
      return readUnit(c);
    });
    if (of) {
      const nth: 'last' | Amount = kind === 'last' ? 'last' : one(c);
      return { kind: 'of-unit', nth, noun: noun ?? anyStitch(c), ...of };
    }
    return { kind, amount: amount ?? one(c), noun: noun ?? anyStitch(c) };
  });
}

/** "every other", "every 2nd", "alternate", "each", "all": how many apart, or null. */
function readEvery(c: Cursor): number | null {
  return c.attempt(() => {
    if (
      c.eatAny(['every other', 'each other', 'alt', 'every alt', 'each alt', 'every second', 'each second'])
    )
      return 2;
    if (c.eatAny(['every third', 'each third'])) return 3;
    if (c.eatAny(['every', 'each'])) {
      const nth = c.peek();
      if (nth?.kind === 'ordinal') {
        c.at++;
        return Math.max(1, nth.value);
      }
      c.eat('and every');
      c.eat('of');
      c.eat('the');
      c.eat('rem');
      return 1;
    }
    if (c.eatAny(['all of the', 'all the', 'all', 'the rem', 'rem', 'both'])) return 1;
    return null;
  });
}

/** "next st", "each of next 4 sts", "next 3 dc and next ch", "foll ch-2 sp". */
function readNext(c: Cursor): Bare | null {
  return c.attempt(() => {
    const every = c.attempt(() =>
      c.eatAny([
        'each of the next',
        'each of next',
        'each of foll',
        'each next',
        'each of the foll',
        'each foll',
        'all of next',
        'both of next',
      ])
        ? 1
        : null,
    );
    const other = every
      ? null
      : c.attempt(() => (c.eatAny(['every other of next', 'alt of next']) ? 2 : null));
    const all = c.attempt(() => {
      if (
        every ||
        other ||
        !c.eatAny(['all of the', 'all the', 'all of', 'all', 'both', 'each of', 'the rem', 'rem', 'center'])
      )
        return null;
      return c.peek()?.kind === 'number' || c.peek()?.kind === 'figure' ? true : null;
    });
    if (!every && !other && !all && !c.eatAny(['next', 'foll', 'the next', 'the foll'])) {
      const some = c.attempt(() => {
        if (!c.eat('each of')) return null;
        c.eat('the');
        return true;
      });
      if (!some) return null;
    }
    c.eatAny(['and each', 'unworked', 'free']);
    const space = readSpaceFirst(c);
    if (space) return { kind: 'next', amount: one(c), nouns: [space], every: other ?? 1, implied: false };
    const amount = readAmount(c) ?? one(c);
    c.eatAny(['consecutive', 'of the', 'of']);
    const nouns = readNouns(c) ?? [anyStitch(c)];
    return { kind: 'next', amount, nouns, every: other ?? 1, implied: false };
  });
}

/** "3ch-sp", "3-ch sp", "5-dc shell" behind "next": the number belongs to the noun. */
function readSpaceFirst(c: Cursor): Noun | null {
  return c.attempt(() => {
    const start = c.at;
    const number = c.peek();
    if (number?.kind !== 'number') return null;
    const after = c.peek(1);
    if (!after || after.gap || (after.word !== 'ch' && after.word !== '-')) {
      if (after?.word !== 'ch' || !c.isAny(['ch sp', 'ch lp', 'ch corner'], 1)) return null;
      // "next 3 ch sp" (singular): a space of 3 chains. In the plural the 3 counts the spaces.
    }
    if (after.word === '-') {
      const noun = readNoun(c);
      return noun && noun.kind !== 'chain' ? noun : null;
    }
    const space = readSpace(c);
    return space ? { kind: 'space', chains: space.chains, ...c.span(start) } : null;
  });
}

function readAcross(c: Cursor): Bare | null {
  return c.attempt(() => {
    const every = readEvery(c);
    if (every === null) return null;
    const edge = readEdge(c);
    if (edge) return edge;
    const nouns = readNouns(c, true) ?? [anyStitch(c)];
    // Tails such as "of previous row" may stand before the stop: "each st of prev row to last st".
    const draft: Draft = { loop: null, post: null, below: 0 };
    readTail(c, draft);
    c.eatAny(['unworked', 'left']);
    const stop = readStop(c) ?? toTheEnd(c);
    return { kind: 'across', nouns, every, stop };
  });
}

function readSkipped(c: Cursor): Bare | null {
  return c.attempt(() => {
    c.eatAny(['each of the', 'each of', 'the', 'last', 'first', 'next']);
    const before = readAmount(c);
    if (c.eat('skipped')) {
      const after = before ?? readAmount(c);
      const noun = readNoun(c) ?? anyStitch(c);
      return { kind: 'skipped', amount: after ?? one(c), noun };
    }
    const noun = readNoun(c);
    if (
      noun &&
      c.eatAny([
        'that was skipped',
        'that were skipped',
        'just skipped',
        'skipped',
        'you skipped',
        'previously skipped',
      ])
    ) {
      return { kind: 'skipped', amount: before ?? one(c), noun };
    }
    return null;
  });
}

function readMarked(c: Cursor): Bare | null {
  return c.attempt(() => {
    c.eatAny(['next', 'the', '#th', 'each']);
    if (c.eat('marked')) {
      readNoun(c);
      return { kind: 'marked' };
    }
    if (c.eatAny(['st with marker', 'st with the marker', 'st marked', 'marker st', 'marker']))
      return { kind: 'marked' };
    return null;
  });
}

function readCenter(c: Cursor): Bare | null {
  return c.attempt(() => {
    const word = c.eatAny(['very center', 'center', 'tip', 'top', 'st at tip', 'st at the tip', 'peak']);
    if (!word) return null;
    const noun = readNoun(c);
    if (c.eat('of')) {
      const of = readUnit(c);
      if (of) return { kind: 'of-unit', nth: 'centre', noun: noun ?? anyStitch(c), ...of };
      return null;
    }
    if (!noun || word === 'tip' || word === 'top') return null;
    return { kind: 'of-unit', nth: 'centre', noun, unit: anyStitch(c), which: 'next', stop: null };
  });
}

function readBetween(c: Cursor): Bare | null {
  return c.attempt(() => {
    const each = c.eatAny(['each', 'every', 'each of']);
    const next = c.eatAny(['next', 'foll', 'the', 'same']);
    const several = each || next ? c.attempt(() => readAmount(c, false)) : null;
    if (
      !c.eatAny([
        'sp between',
        'sps between',
        'gap between',
        'gaps between',
        'between',
        'in between',
        'sp before',
        'gap before',
        'sp after',
      ])
    ) {
      return null;
    }
    c.eatAny(['the', 'each of the', 'any']);
    c.eatAny(['next', 'foll', 'each', 'last', 'first']);
    const amount = readAmount(c);
    const noun: Noun = readNoun(c) ?? anyStitch(c);
    c.attempt(() =>
      c.eatAny(['and next', 'and the next', 'and first', 'and last', 'and the', 'and']) &&
      (readTurningChain(c) || readNoun(c))
        ? true
        : null,
    );
    const of = c.attempt(() =>
      c.eat('of') && !c.isAny(['prev', 'last row', 'last rnd', 'row', 'rnd']) ? readUnit(c) : null,
    );
    if (of) return { kind: 'of-unit', nth: 'centre', noun: { ...noun, kind: 'between' } as Noun, ...of };
    if (each) {
      return {
        kind: 'across',
        nouns: [{ ...noun, kind: 'between' } as Noun],
        every: 1,
        stop: readStop(c) ?? toTheEnd(c),
      };
    }
    // "between next 2 dc" names the two neighbours of one gap; "next 3 sps between" names three gaps.
    const stop = amount || several ? null : readStop(c);
    if (stop) return { kind: 'across', nouns: [{ ...noun, kind: 'between' } as Noun], every: 1, stop };
    return { kind: 'between', amount: several ?? one(c), noun };
  });
}

function readTopOf(c: Cursor): Bare | null {
  return c.attempt(() => {
    if (!c.eatAny(['top ch of', 'top st of', 'top of', 'top'])) return null;
    c.eat('the');
    const turning = readTurningPlace(c, null);
    if (turning) return turning;
    if (c.is('next') || c.is('each')) return null;
    return readEdge(c) ?? readNth(c) ?? readSame(c);
  });
}

/** "ch-2 sp of next V-st": a part of a unit, or null. */
function readPartOf(c: Cursor): Bare | null {
  return c.attempt(() => {
    const noun = readNoun(c);
    if (!noun || !c.eatAny(['of', 'in center of', 'at center of'])) return null;
    if (c.isAny(['last row', 'last rnd'])) return null;
    const said = c.isAny(['next', 'each', 'same', 'foll', 'every', 'the next', 'last', 'first']);
    const of = readUnit(c);
    return of && (said || (of.unit.kind === 'named' && of.unit.stitch.form !== 'plain'))
      ? { kind: 'of-unit', nth: 'centre', noun, ...of }
      : null;
  });
}

/** A place that starts with its own word (next, each, last …) or a bare noun when `bare`. */
function readCore(c: Cursor, bare: boolean): Bare | null {
  c.eat('the');
  c.eat('very');
  if (
    bare &&
    c.attempt(() => (c.eatAny(['a', 'an', 'your', 'this', 'center of', 'center of the']), c.eatAny(RINGS)))
  )
    return { kind: 'ring' };
  const strict =
    readSame(c) ??
    readSkipped(c) ??
    readMarked(c) ??
    readBetween(c) ??
    readTopOf(c) ??
    readEdge(c) ??
    readNext(c) ??
    readNth(c) ??
    readCenter(c) ??
    readAcross(c);
  if (strict || !bare) return strict;
  const own =
    c.attempt<Bare>(() => {
      // "beg sc", "beg cluster": the first such stitch.
      if (c.word() !== 'beg') return null;
      const noun = readNoun(c);
      return noun?.kind === 'named' ? { kind: 'first', amount: one(c), noun } : null;
    }) ??
    c.attempt<Bare>(() => {
      if (!c.eatAny(['ends of', 'end of', 'sides of', 'side of', 'edges of', 'edge of'])) return null;
      const at = c.at;
      c.eat('each of');
      if (!c.eatAny(['the next', 'next', 'the foll', 'foll'])) return null;
      const amount = readAmount(c) ?? one(c);
      if (!c.eatAny(['rows', 'row'])) return null;
      return { kind: 'next', amount, nouns: [{ kind: 'row-end', ...c.span(at) }], every: 1, implied: false };
    });
  if (own) return own;
  return (
    c.attempt(() => {
      c.eat('corresponding');
      if (!c.eatAny(['place indicated', 'place', 'row below', 'st below', 'row directly below', 'rnd below']))
        return null;
      return { kind: 'next', amount: one(c), nouns: [anyStitch(c)], every: 1, implied: false };
    }) ??
    readPartOf(c) ??
    c.attempt(() => {
      const turning = readTurningChain(c);
      if (!turning || c.isAny(['sp', '- sp', 'lp'])) return null;
      return { kind: 'turning-chain', nth: null, beginning: turning.beginning };
    }) ??
    c.attempt(() => {
      c.eatAny(['any', 'a', 'an', 'this', 'that', 'corresponding']);
      const space = readSpaceFirst(c);
      const said = space ? null : readAmount(c);
      const amount = said ?? one(c);
      // "sc in 2, inc": the noun left out.
      const bareEnd = said !== null && (c.done || [',', '*', ')', ']', ';'].includes(c.word()));
      const nouns = space ? [space] : (readNouns(c) ?? (bareEnd ? [anyStitch(c)] : null));
      if (!nouns) return null;
      const edge = nouns.every((noun) => ['row-end', 'loop-of-chain', 'seam'].includes(noun.kind));
      const stop = readStop(c);
      if (stop || edge) return { kind: 'across', nouns, every: 1, stop: stop ?? toTheEnd(c) };
      return { kind: 'next', amount, nouns, every: 1, implied: false };
    })
  );
}

const IN = [
  'in and around',
  'in',
  'on',
  'under',
  'through',
  'along',
  'over',
  'to',
  'at',
  'behind',
  'in front of',
];

/** Words of a post: "around post of", "around the stem of". */
const POST = [
  'around the post of',
  'around post of',
  'rnd the post of',
  'rnd post of',
  'around the stem of',
  'around stem of',
  'rnd stem of',
  'rnd the stem of',
  'around posts of',
  'around the posts of',
];

/** One place with what stands before and behind it; `bare` when a preposition stood before. */
function readPlaceFrom(c: Cursor, start: number, bare: boolean, preset: Partial<Draft>): Place | null {
  const draft: Draft = { loop: null, post: null, below: 0, ...preset };
  const loop = c.attempt(() => {
    const found = readLoop(c);
    if (!found) return null;
    c.eatAny(['of the', 'of', 'in']);
    return found;
  });
  if (loop) draft.loop = loop;
  if (c.eatAny(['front post of', 'the front post of'])) draft.post = 'front';
  else if (c.eatAny(['back post of', 'the back post of'])) draft.post = 'back';
  else if (c.eatAny(POST) || c.eatAny(['post of', 'the post of'])) draft.post ??= 'front';
  // "the st below next st": a row further down.
  const below = c.attempt(() => {
    c.eat('the');
    if (!c.eatAny(['st directly below', 'sp directly below', 'st below', 'sp below', 'st under']))
      return null;
    return c.isAny(['next', 'the next', 'each', 'same', 'last', 'first', 'every']) ? true : null;
  });
  if (below) draft.below = 1;
  const core = readCore(c, bare || loop !== null);
  if (!core) {
    if (!loop) return null;
    const stop = readStop(c);
    if (stop) return { kind: 'across', nouns: [anyStitch(c)], every: 1, stop, ...draft, ...c.span(start) };
    return {
      kind: 'next',
      amount: one(c),
      nouns: [anyStitch(c)],
      every: 1,
      implied: true,
      ...draft,
      ...c.span(start),
    };
  }
  readTail(c, draft);
  if (core.kind === 'next' && (core.amount.kind !== 'one' || core.amount.value > 1)) {
    // "each of the 36 sts around": the number says how many; the end adds nothing.
    c.attempt(() => (c.isAny(['around post', 'around the']) || readStop(c)?.kind !== 'end' ? null : true));
  }
  // A stop may stand behind the tail: "each st of previous row across" is read; so is "next 2 sts across".
  return { ...core, ...draft, ...c.span(start) } as Place;
}

const AROUND_WHAT = [
  'next',
  'each',
  'the',
  'st',
  'same',
  'last',
  'first',
  'foll',
  'every',
  'corresponding',
  'marked',
  'dc',
  'tr',
  'fpdc',
  'bpdc',
  'fptr',
  'bptr',
  '#th',
  'post',
  'skipped',
];

/** One place at the position: with a preposition, or beginning with next, each, last … */
export function readPlace(c: Cursor): Place | null {
  return c.attempt(() => {
    const start = c.at;
    if (c.word() === '/' && c.isAny(['each', 'next', 'every'], 1)) c.at++;
    const evenly = readEvenly(c);
    if (evenly) return { ...evenly, loop: null, post: null, below: 0, ...c.span(start) };
    const along = readAlongEdge(c);
    if (along) return { ...along, loop: null, post: null, below: 0, ...c.span(start) };
    if (c.eatAny(POST)) return readPlaceFrom(c, start, true, { post: 'front' });
    if ((c.is('around') || c.is('rnd')) && c.isAny(AROUND_WHAT, 1)) {
      c.at++;
      return readPlaceFrom(c, start, true, {});
    }
    const round = c.attempt(() => {
      if (!c.eatAny(['around', 'rnd'])) return null;
      if (!c.isAny(['#', 'skipped', 'both', 'all', 'any', 'same'])) return null;
      return readPlaceFrom(c, start, true, {});
    });
    if (round) return round;
    if (c.is('across') && c.isAny(['next', 'each', 'the next', 'last', 'first', '#'], 1)) {
      c.at++;
      return readPlaceFrom(c, start, true, {});
    }
    const stop = c.attempt(() => {
      // "sl st to next st" goes into it; "sc to next corner" stops before it.
      if (c.isAny(['to next st', 'to the next st', 'to foll st'])) return null;
      const found = readStop(c);
      if (!found) return null;
      const nouns = [anyStitch(c)];
      return { kind: 'across', nouns, every: 1, stop: found } as const;
    });
    if (stop) return { ...stop, loop: null, post: null, below: 0, ...c.span(start) };
    const preposition = c.eatAny(IN);
    if (preposition) {
      // "to" begins a place only for a slip stitch that travels: "sl st to next ch-sp".
      const place = readPlaceFrom(c, start, true, {});
      return place;
    }
    return readPlaceFrom(c, start, false, {});
  });
}

const EDGES: readonly Noun['kind'][] = ['row-end', 'loop-of-chain', 'seam'];

/** "of ribbing", "of the cuff": whose edge it is. */
function eatWhose(c: Cursor): void {
  c.attempt(() => {
    if (!c.eat('of')) return null;
    c.eatAny(['the', 'last', 'each']);
    if (c.peek()?.kind !== 'word' || c.isAny(['next', 'row', 'rnd', 'prev'])) return null;
    c.at++;
    return c.done || c.peek()!.kind === 'sign' || c.isAny(['across', 'working', 'and']) ? true : null;
  });
}

/** "along side edge", "across row ends": an edge without "evenly". */
function readAlongEdge(c: Cursor): Bare | null {
  return c.attempt(() => {
    if (!c.eatAny(['across', 'along', 'up', 'down', 'around', 'over'])) return null;
    c.eatAny(['the', 'each', 'entire', 'all', 'first', 'second', 'next', 'other', 'left', 'right']);
    const nouns = readNouns(c);
    if (!nouns || !nouns.some((noun) => EDGES.includes(noun.kind))) return null;
    return { kind: 'across', nouns, every: 1, stop: readStop(c) ?? toTheEnd(c) };
  });
}

function readEvenly(c: Cursor): Bare | null {
  return c.attempt(() => {
    if (!c.eatAny(['evenly spaced', 'evenly'])) return null;
    // "evenly across row ends" names what is worked along; "evenly across" only how far.
    const edge = c.attempt(() => {
      if (!c.eatAny(['across', 'along', 'around', 'over', 'in', 'up', 'down'])) return null;
      c.eatAny(['the', 'each', 'entire', 'all']);
      const nouns = readNouns(c);
      eatWhose(c);
      return nouns && nouns.some((noun) => EDGES.includes(noun.kind)) ? nouns : null;
    });
    if (edge) return { kind: 'evenly', nouns: edge, stop: readStop(c) };
    const stopFirst = readStop(c);
    c.eatAny(['across', 'along', 'over', 'in', 'on', 'around', 'up', 'down']);
    c.eatAny(['the', 'each', 'entire', 'next']);
    const nouns = readNouns(c);
    c.eatAny(['of piece', 'of work', 'of the piece', 'of blanket']);
    const stop = stopFirst ?? readStop(c);
    return { kind: 'evenly', nouns: nouns ?? [anyStitch(c)], stop };
  });
}

/** "in next st and in each st across": all the places of one stitch, or null when there is none. */
export function readPlaces(c: Cursor): Place[] | null {
  // "all in next st" gathers what stands before it: the reader of items does that.
  if (c.isAny(['all in', 'all at', 'both in'])) return null;
  const first = readPlace(c);
  if (!first) return null;
  const places = [first];
  while (places.length < 50) {
    saidBetween(c, places);
    const more = c.attempt(() => {
      const comma = c.eat(',');
      const and = c.eatAny(['and then', 'and', '&']) !== null;
      if (!and && !(comma && c.isAny(['in each', 'in next', 'in same', 'in last', 'in top', 'in first'])))
        return null;
      if (comma && !and && c.is('in next') && hasWork(c)) return null;
      const at = c.at;
      const begins = c.isAny(['in', 'over', 'on', 'under', 'around next', 'around post', 'around the post']);
      if (begins) {
        const place = readPlace(c);
        // "and in next sp work 3 dc" begins a group of its own.
        if (!place || c.isAny(['work', 'make', ':', '('])) return null;
        return place;
      }
      if (c.isAny(['ch', 'sk', 'turn', 'rep', 'join', 'work', 'end', 'sl', 'inc', 'dec'])) return null;
      const place = readPlaceFrom(c, at, false, {});
      if (!place || place.from === place.to || c.isAny(['work', 'make', 'in', 'unworked'])) return null;
      return place;
    });
    if (!more) return places;
    places.push(more);
  }
  return places;
}

/** "(skipped ch count as a dc)" between two places of one stitch: said of the chains passed over. */
function saidBetween(c: Cursor, places: Place[]): void {
  const last = places.at(-1)!;
  if (last.kind !== 'from-hook' || !(c.word() in OPENING)) return;
  c.attempt(() => {
    const close = c.partner[c.at]!;
    if (close < 0 || close >= c.end) return null;
    c.at++;
    const counts = c.within(close, () => readSaid(c)?.convention.counts ?? readCountsAs(c));
    if (!counts || c.at !== close) return null;
    c.at = close + 1;
    if (!c.isAny(['and', ', and', '& ', '&'])) return null;
    places[places.length - 1] = { ...last, counts };
    return true;
  });
}

/** True when "in next sp" here is followed by work for it ("in next sp work 3 dc", "in next sp (2 dc)"). */
function hasWork(c: Cursor): boolean {
  const at = c.at;
  const facts = c.facts.length;
  const place = readPlace(c);
  const found = place !== null && c.isAny(['work', 'make', '(', ':', '[']);
  c.at = at;
  c.facts.length = facts;
  return found;
}

/** "2 sts", "ch-1 sp", "1" without any preposition, as behind "skip": the next such things. */
export function readBarePlace(c: Cursor): Place | null {
  return c.attempt(() => readPlaceFrom(c, c.at, true, {}) ?? bareNumber(c));
}

function bareNumber(c: Cursor): Place | null {
  const start = c.at;
  const amount = readAmount(c);
  if (!amount) return null;
  return {
    kind: 'next',
    amount,
    nouns: [anyStitch(c)],
    every: 1,
    implied: false,
    loop: null,
    post: null,
    below: 0,
    ...c.span(start),
  };
}
