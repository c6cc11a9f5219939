/**
 * Reads the kinds of places one by one, from behind the preposition: same, next, each, first, last, turning
 * chain, part of a unit, between, skipped, marked. `places` tries them in order.
 */
import type { Span } from '../finding.ts';
import type { Cursor } from './cursor.ts';
import { anyStitch, partsNoun, readNoun, readNouns, readSpace, readTurningChain } from './nouns.ts';
import { amountAhead, one, readAmount, readOrdinal } from './numbers.ts';
import { type Draft, readTail } from './place-tails.ts';
import { readStop, toTheEnd } from './stops.ts';
import type { Amount, Into, Noun, Place, Stop } from './tree.ts';

/** A place before its loop, post and depth are known. */
export type Bare = Place extends infer P
  ? P extends Place
    ? Omit<P, keyof Into | keyof Span>
    : never
  : never;

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

const BASES = [
  'base of',
  'bases of',
  'bottom of',
  'underside of',
  'undersides of',
  'bottom lps of',
  'bottom lp of',
];

const JOINS = ['of join', 'of joining', 'of sl st', 'of beg', 'of last st'];

/** "base of each st", "base of next 2 dc": the chains that the first row was worked into, from the other side. */
function readBases(c: Cursor): Bare | null {
  return c.attempt(() => {
    const other = c.eatAny(['other side of', 'opposite side of']);
    if (!other && !c.eatAny(BASES)) return null;
    const at = c.at;
    if (other) {
      // "other side of 3 ch", "of each of 3 ch": chains that the row itself has made.
      c.eatAny(['each of', 'the', 'these', 'those']);
      c.eatAny(['the', 'these', 'those', 'next']);
      const amount = readAmount(c);
      const noun = readNoun(c);
      if (!amount || noun?.kind !== 'chain') return null;
      const chains: Noun = { kind: 'loop-of-chain', ...c.span(at) };
      return { kind: 'next', amount, nouns: [chains], every: 1, implied: false };
    }
    const place = readNext(c) ?? readAcross(c);
    if (place?.kind !== 'next' && place?.kind !== 'across') return null;
    if (place.nouns.some((noun) => noun.kind === 'space')) return null;
    return { ...place, nouns: [{ kind: 'loop-of-chain', ...c.span(at) }] };
  });
}

export function readSame(c: Cursor): Bare | null {
  const bases = readBases(c);
  if (bases) return bases;
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
      c.eatAny(['first', 'prev', 'last']);
      const older = c.attempt(() =>
        readAmount(c, false) && c.pass('-').eatAny(['turning ch', 'ch', 'chs']) ? true : null,
      );
      if (!older && !readTurningChain(c) && !readNoun(c)) return null;
      // "base of ch 3": which chain is said by its length.
      c.attempt(() => {
        if (c.tokens[c.at - 1]!.word !== 'ch' || c.peek()?.kind !== 'number' || !readAmount(c)) return null;
        return c.done || c.peek()!.kind === 'sign' || c.is('and') ? true : null;
      });
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
    if (c.attempt(() => (c.eat('base') && (c.done || c.peek()!.kind === 'sign') ? true : null)))
      return { kind: 'same' };
    if (!c.eat('same')) return null;
    c.eatAny(['place', 'spot']);
    const noun = readNoun(c);
    c.attempt(() => (c.eat('or') && readNoun(c) ? true : null));
    c.eatAny(['place', 'spot']);
    c.eatAny(JOINS);
    // "2 sc in same st around": each stitch in turn, since one cannot be gone around.
    const stop = c.isAny(['around the', 'around post']) ? null : c.attempt(() => readStop(c));
    if (stop?.kind === 'end') return { kind: 'across', nouns: [noun ?? anyStitch(c)], every: 1, stop };
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
    const said = c.eatAny([
      'each of next',
      'next',
      'foll',
      'any',
      'each',
      'every',
      'same',
      'last',
      'first',
      '#th',
    ]);
    if (said === '#th' && c.tokens[c.at - 1]!.value !== 1) return null;
    const which =
      said === null || ['next', 'foll', 'any', 'each of next'].includes(said)
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
    const at = c.at;
    const unit = readNoun(c) ?? partsNoun(c) ?? (c.eatAny(['pair', 'set']) ? pairAt(c, at) : null);
    if (!unit || (many && said === null)) return null;
    return { unit, which, stop: which === 'each' ? (readStop(c) ?? toTheEnd(c)) : null };
  });
}

/** "of any pair": two stitches that nothing else tells from their neighbours. */
function pairAt(c: Cursor, start: number): Noun {
  return { kind: 'stitch', ...c.span(start) };
}

/** "top of turning ch", "3rd ch of beg ch-5", "turning ch". */
export function readTurningPlace(c: Cursor, nth: Amount | null): Bare | null {
  return c.attempt(() => {
    c.eatAny(['the', 'prev']);
    // "top of the skipped chs": the edge that skipping chains made.
    const skipped = c.attempt(() => {
      c.eat('beg');
      readAmount(c, false);
      if (!c.eat('skipped')) return null;
      readAmount(c, false);
      if (!c.eatAny(['chs', 'ch'])) return null;
      if (c.word() === '-' && !c.peek()!.gap) c.at++;
      readAmount(c, false);
      return true;
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

export function readNth(c: Cursor): Bare | null {
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
export function readEdge(c: Cursor): Bare | null {
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
      return n && !c.isAny(['- ch', 'ch sp', 'ch - sp', 'ch lp', 'ch - lp']) ? n : null;
    });
    const turning = readTurningChain(c);
    if (turning && !c.isAny(['sp', '- sp']))
      return { kind: 'turning-chain', nth: null, beginning: turning.beginning };
    const noun = readNoun(c);
    if (
      kind === 'last' &&
      noun &&
      c.eatAny(['just made', 'just worked', 'just formed', 'made', 'worked', 'formed', 'completed'])
    ) {
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
    if (c.eatAny(['every', 'each', 'per'])) {
      const nth = readOrdinal(c, false);
      if (nth !== null) {
        // "dec every 3rd and 4th st": the two that go together end so many apart.
        const next = c.attempt(() => {
          if (!c.eatAny(['and', '&'])) return null;
          const other = readOrdinal(c, false);
          return other?.kind === 'one' && nth.kind === 'one' && other.value === nth.value + 1 ? other : null;
        });
        return nth.kind === 'one' ? Math.max(1, next?.value ?? nth.value) : null;
      }
      c.eat('and every');
      c.eat('of');
      c.eat('the');
      c.eat('rem');
      return 1;
    }
    if (
      c.eatAny([
        'each of the rem',
        'each of rem',
        'all of the',
        'all the other',
        'all other',
        'all the',
        'all',
        'the rem',
        'rem',
        'both',
      ])
    )
      return 1;
    return null;
  });
}

/** "next st", "each of next 4 sts", "next 3 dc and next ch", "foll ch-2 sp". */
export function readNext(c: Cursor): Bare | null {
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
        !c.eatAny([
          'all of the',
          'all the',
          'all of',
          'all',
          'both',
          'each of the rem',
          'each of rem',
          'each of',
          'the rem',
          'rem',
          'center',
        ])
      )
        return null;
      return amountAhead(c) ? true : null;
    });
    let each = false;
    if (!every && !other && !all && !c.eatAny(['next', 'foll', 'the next', 'the foll'])) {
      const some = c.attempt(() => {
        if (!c.eat('each of')) return null;
        c.eat('the');
        // "each of the previous 12 sts": how many there are, not which.
        c.attempt(() => (c.eat('prev') && amountAhead(c) ? true : null));
        return c.is('rem') ? null : true;
      });
      if (!some) return null;
      each = true;
    }
    c.eatAny(['and each', 'unworked', 'free']);
    const space = readSpaceFirst(c);
    if (space) return { kind: 'next', amount: one(c), nouns: [space], every: other ?? 1, implied: false };
    const said = readAmount(c);
    const amount = said ?? one(c);
    c.eatAny(['consecutive', 'of the', 'of']);
    const unworked = c.at > 0 && c.tokens[c.at - 1]!.word === 'unworked';
    const nouns = readNouns(c) ?? [anyStitch(c)];
    if (each && said === null) {
      // "in each of the unworked sts", "in each of the sts around", "in each of the dc across": all of them.
      const several = c.tokens[c.at - 1]!.word.endsWith('s');
      const stop = unworked || several || c.isAny(['around', 'across']) ? readStop(c) : null;
      if (stop !== null || several) return { kind: 'across', nouns, every: 1, stop: stop ?? toTheEnd(c) };
    }
    return { kind: 'next', amount, nouns, every: other ?? 1, implied: false };
  });
}

/** "3ch-sp", "3-ch sp", "5-dc shell" behind "next": the number belongs to the noun. */
export function readSpaceFirst(c: Cursor): Noun | null {
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
    return space ? { kind: 'space', ...space, ...c.span(start) } : null;
  });
}

/** "each st across", "each dc of second leg": what a tail before the stop says goes to `into`. */
export function readAcross(c: Cursor, into: Draft | null = null): Bare | null {
  return c.attempt(() => {
    const every = readEvery(c);
    if (every === null) return null;
    const edge = readEdge(c);
    if (edge) return edge;
    c.eat('one');
    const nouns = readNouns(c, true) ?? [anyStitch(c)];
    // Tails such as "of previous row" may stand before the stop: "each st of prev row to last st".
    const draft: Draft = { loop: null, post: null, below: 0 };
    readTail(c, draft);
    c.eatAny(['unworked', 'left']);
    // "2 sc in first st, sc in each st between": as far as the next phrase goes on.
    c.attempt(() =>
      c.eatAny(['in between', 'between']) && (c.done || c.peek()!.kind === 'sign') ? true : null,
    );
    const stop = readStop(c) ?? toTheEnd(c);
    if (into !== null) {
      into.loop ??= draft.loop;
      into.post ??= draft.post;
      into.below = Math.max(into.below, draft.below);
      if (draft.row !== undefined) into.row = draft.row;
      if (draft.part !== undefined) into.part = draft.part;
    }
    return { kind: 'across', nouns, every, stop };
  });
}

export function readSkipped(c: Cursor): Bare | null {
  return c.attempt(() => {
    const each = c.eatAny(['each of the', 'each of', 'each', 'every', 'all', 'the', 'next']);
    if (each !== 'next') c.eat('next');
    const all = ['each', 'every', 'all'].includes(each ?? '') ? ({ all: true } as const) : {};
    const nth = readWhichSkipped(c);
    if (nth === null) c.eatAny(['last', 'first']);
    c.eat('rem');
    const before = nth === null ? readAmount(c) : null;
    if (c.eat('skipped') || eatSkip(c)) {
      const after = before ?? readAmount(c);
      const noun = readNoun(c) ?? anyStitch(c);
      // "8 skipped sts around": the number says how many; the end adds nothing.
      c.attempt(() => (readStop(c)?.kind === 'end' ? true : null));
      return {
        kind: 'skipped',
        amount: after ?? one(c),
        noun,
        ...(nth !== null && after === null ? { nth } : {}),
        ...(after === null ? all : {}),
      };
    }
    if (nth !== null) return null;
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
      return { kind: 'skipped', amount: before ?? one(c), noun, ...(before === null ? all : {}) };
    }
    return null;
  });
}

/** "dc in sk st", "tr in 3 sk sts": the short word for skipped, right before what was skipped. */
function eatSkip(c: Cursor): boolean {
  return c.isAny(['sk st', 'sk sts', 'sk ch', 'sk chs', 'sk sc', 'sk hdc', 'sk dc', 'sk tr']) && c.eat('sk');
}

/** "2nd skipped ch", "last skipped st": which of those passed over. "First 2 skipped sts" are two. */
function readWhichSkipped(c: Cursor): Amount | 'last' | null {
  return c.attempt(() => {
    const which = c.eat('last') ? ('last' as const) : c.eat('first') ? one(c) : readOrdinal(c);
    c.eat('of');
    c.eat('the');
    return which !== null && c.is('skipped') ? which : null;
  });
}

export function readMarked(c: Cursor): Bare | null {
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

export function readCenter(c: Cursor): Bare | null {
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
    // "in center sp": the space that the words before lead to.
    if (noun.kind === 'space')
      return { kind: 'next', nouns: [noun], amount: one(c), every: 1, implied: false };
    return { kind: 'of-unit', nth: 'centre', noun, unit: anyStitch(c), which: 'next', stop: null };
  });
}

export function readBetween(c: Cursor): Bare | null {
  return c.attempt(() => {
    const each = c.eatAny(['each', 'every', 'each of']);
    const next = c.eatAny(['next', 'foll', 'the', 'same']);
    if (!each && !next) c.eatAny(['any', 'a', 'an', 'any one']);
    const several = each || next ? c.attempt(() => readAmount(c, false)) : null;
    const how = c.eatAny([
      'sp between',
      'sps between',
      'gap between',
      'gaps between',
      'between',
      'in between',
      'sp before',
      'gap before',
      'sp after',
    ]);
    if (how === null) return null;
    c.eatAny(['the', 'each of the', 'any']);
    // "between 3ch and next tr": the chain that the row below began with, and its neighbour.
    const chain = c.attempt(() => {
      if (
        !readTurningChain(c) &&
        !(c.eat('ch') ? readAmount(c.pass('-'), false) : readAmount(c, false) && c.eat('ch'))
      )
        return null;
      if (!c.eatAny(['and', '&'])) return null;
      c.eatAny(['the next', 'the first', 'next', 'first', 'the']);
      return readNoun(c);
    });
    if (chain !== null && !each) return { kind: 'between', amount: one(c), noun: anyStitch(c) };
    // "between 1st and 2nd tr"
    const nth = c.attempt(() => (readOrdinal(c)?.kind === 'one' && c.isAny(['and', '&']) ? 'first' : null));
    const which = nth ?? c.eatAny(['next', 'foll', 'each', 'last', 'first']);
    // The number of "next 3-dc group" is the group's own.
    const group = partsNoun(c);
    const amount = group === null ? readAmount(c) : null;
    const noun: Noun = group ?? partsNoun(c) ?? readNoun(c) ?? anyStitch(c);
    c.attempt(() => {
      if (!c.eatAny(['and next', 'and the next', 'and first', 'and last', 'and the', 'and', '&']))
        return null;
      // "between first and second dc": the noun stands behind.
      const nth = c.eatAny(['second', '#th']) !== null;
      return readTurningChain(c) || readNoun(c) || nth ? true : null;
    });
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
    // "between first 2 sts": the gap at that end, wherever the work stands.
    if ((which === 'first' || which === 'last') && !several)
      return { kind: which, amount: one(c), noun: { ...noun, kind: 'between' } as Noun };
    // "between next 2 dc" names the two neighbours of one gap; "next 3 sps between" names three gaps.
    const stop = amount || several ? null : readStop(c);
    if (stop) return { kind: 'across', nouns: [{ ...noun, kind: 'between' } as Noun], every: 1, stop };
    const before = how.endsWith('before') && which === 'next' && !several ? ({ before: true } as const) : {};
    return { kind: 'between', amount: several ?? one(c), noun, ...before };
  });
}

export function readTopOf(c: Cursor): Bare | null {
  return c.attempt(() => {
    if (!c.eatAny(['top ch of', 'top st of', 'top of', 'top'])) return null;
    c.eat('the');
    if (c.isAny(['first # ch', 'first ch - #', 'first ch #'])) c.at++;
    const turning = readTurningPlace(c, null);
    if (turning) return turning;
    if (c.is('next') || c.is('each')) return null;
    // "sl st in top of ch": no other chain has a top.
    if (
      c.attempt(() =>
        c.eat('ch') && (c.done || c.peek()!.kind === 'sign') && c.word() !== '-' ? true : null,
      )
    )
      return { kind: 'turning-chain', nth: null, beginning: c.round };
    return readEdge(c) ?? readNth(c) ?? readSame(c);
  });
}

/** "ch-2 sp of next V-st": a part of a unit, or null. */
export function readPartOf(c: Cursor): Bare | null {
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
