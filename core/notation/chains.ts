/**
 * Reads chains, what they are said to count as, chain rings and yarn rings.
 */
import { readCountsAs, readSaid } from './counts.ts';
import { type Cursor, OPENING } from './cursor.ts';
import { eatDash } from './nouns.ts';
import { one, readAmount } from './numbers.ts';
import type { Amount, Chain, CountsAs, Ring } from './tree.ts';

/** Counts words behind a chain: "(counts as dc)", ", counts as first dc", "does not count as a st". */
export function readChainCounts(c: Cursor): CountsAs | null {
  return c.attempt(() => {
    const open = c.at;
    if (c.word() in OPENING) {
      const close = c.partner[open]!;
      if (close < 0 || close >= c.end) return null;
      c.at++;
      const counts = c.within(close, () => {
        const said = readSaid(c);
        const found = said ? (said.skipped ? null : said.convention.counts) : readCountsAs(c);
        c.eat('.');
        return found;
      });
      if (!counts) return null;
      if (c.at !== close) {
        // "(counts as dc, now and on all later rows)": the rest changes nothing.
        c.at = close;
      }
      c.at = close + 1;
      return counts;
    }
    c.eatAny([',', '-', ';']);
    if (c.is('as') || c.is('=') || c.is('is'))
      return c.is('as first') || c.is('as #th') || c.is('as # ') ? readCountsAs(c) : null;
    return readCountsAs(c);
  });
}

const TURNING = [
  'for turning ch',
  'for turning',
  'to turn',
  'for the turning ch',
  'for the turn',
  'turning ch',
  'turning chs',
  'as turning ch',
  'for turn',
  'extra',
];

/** "Ch 30, plus 1 for turning", "ch 30 (+ 1 turning ch)", "ch 30 + 3": so many chains more. */
function readPlus(c: Cursor, amount: Amount): Amount {
  const sum = c.attempt<Amount>(() => {
    const comma = c.eat(',');
    const open = c.word() in OPENING ? c.at : -1;
    if (open >= 0) c.at++;
    if (!c.eatAny(['plus', '+', 'and'])) return null;
    const and = c.tokens[c.at - 1]!.word === 'and';
    const extra = readAmount(c);
    if (!extra) return null;
    c.eat('more');
    c.eatAny(['chs', 'ch']);
    const said = c.eatAny(TURNING) !== null;
    if (!said && (comma || and || open >= 0 || !(c.done || ['.', '(', ',', ';'].includes(c.word()))))
      return null;
    if (open >= 0 && !c.eat(')') && !c.eat(']')) return null;
    return added(amount, extra, c.span(c.at - 1).to);
  });
  return sum ?? amount;
}

const FOR_EXAMPLE = [
  'e.g.',
  'eg',
  'e . g',
  'for example',
  'such as',
  'say',
  'example',
  'for instance',
  'i used',
  'i made',
  'i did',
  'i ch',
  'i chained',
  'i started with',
  'i worked with',
  'i have',
  'i had',
  'mine is',
  'mine was',
  'mine has',
  'we chained',
  'sample uses',
  'the sample uses',
  'sample is',
  'we used',
  'sample',
  'sample shown',
  'my sample',
  'shown',
  'here',
];

/** Repeats of a chain that is told by its multiple alone: enough to see how the rows go on. */
const REPEATS = 4;

/**
 * "an even number, e.g. 20", "a multiple of 6 plus 4 (I used 40)", "multiple of 4 + 1": the number that stands for all.
 * Where none is named a few repeats are taken, and that is told.
 */
function readAnyNumber(c: Cursor): Amount | null {
  return c.attempt(() => {
    const start = c.at;
    const multiple =
      c.eatAny(['a multiple', 'any multiple', 'in multiples', 'multiples', 'multiple']) !== null;
    if (!multiple && !(c.pass('an', 'any', 'a').eatAny(['even', 'odd', 'number']) && c.pass('number')))
      return null;
    const told = multiple ? readMultiple(c) : null;
    const example = c.attempt(() => {
      for (let n = 0; n < 14 && !c.done; n++) {
        const open = c.word() in OPENING ? c.partner[c.at]! : -1;
        if (open > c.at && open < c.end) {
          c.at++;
          const found = c.attempt(() => exampleNumber(c));
          // What else the bracket says of the sample is the maker's.
          c.at = open + 1;
          if (found) return found;
          continue;
        }
        const found = c.attempt(() => exampleNumber(c));
        if (found) return found;
        c.at++;
      }
      return null;
    });
    if (example !== null || told === null) return example;
    if (!(c.done || c.peek()!.kind === 'sign')) return null;
    const span = c.span(start);
    c.fact('chain-by-multiple', span, { chains: told, repeats: REPEATS });
    return { kind: 'one', value: told, ...span };
  });
}

/** "e.g. 20", "I used 26", "26 shown". */
function exampleNumber(c: Cursor): Amount | null {
  if (c.eatAny(FOR_EXAMPLE)) {
    c.eatAny([',', ':', '.', 'is', 'has']);
    return readAmount(c, true, true);
  }
  const amount = readAmount(c, true, true);
  c.eatAny(['chs', 'ch']);
  return amount !== null && c.eatAny(['shown', 'in sample', 'in the sample', 'used', 'for sample'])
    ? amount
    : null;
}

/** "of 6 plus 2 (add 3 for turning)": the chains of a few repeats. */
function readMultiple(c: Cursor): number | null {
  return c.attempt(() => {
    if (!c.eat('of')) return null;
    const each = readAmount(c, false);
    if (each?.kind !== 'one' || each.value < 1 || each.value > 200) return null;
    c.eatAny(['sts', 'chs', 'ch']);
    let more = 0;
    for (let n = 0; n < 2; n++) {
      const extra = c.attempt(() => {
        c.eat(',');
        return c.eatAny(['plus', '+', 'and']) ? readAmount(c, false) : null;
      });
      if (extra?.kind !== 'one') break;
      more += extra.value;
      c.eatAny(['more', 'extra']);
      c.eatAny(['chs', 'ch', 'sts']);
      c.eatAny(TURNING);
    }
    return each.value * REPEATS + more;
  });
}

/** Both together, size by size; null where a number is not known here. */
function added(a: Amount, b: Amount, to: number): Amount | null {
  if (b.kind !== 'one') return null;
  if (a.kind === 'one') return { ...a, value: a.value + b.value, to };
  if (a.kind !== 'sizes') return null;
  return { ...a, values: a.values.map((n) => (n === null ? null : n + b.value)), to };
}

/** "Foundation chain: 24 stitches.": the label has said what is counted. */
function countsLabelledChain(c: Cursor, start: number): boolean {
  const label = [c.tokens[start - 2]?.word ?? '', c.tokens[start - 1]?.word];
  if (label[1] !== ':' || !['ch', 'chs'].includes(label[0]!)) return false;
  c.eatAny(['sts', 'st']);
  return c.done || ['.', ',', ';'].includes(c.word());
}

/** "ch 3", "3 ch", "ch-3", "make a ch of 40", "ch": a chain, or null when it is a space or no chain. */
export function readChain(c: Cursor): Chain | null {
  return c.attempt(() => {
    const start = c.at;
    let amount: Amount | null = null;
    c.eatAny(['commence with', 'cast on']);
    if (c.eatAny(['ch of', 'a ch of', 'foundation ch of', 'a foundation ch of', 'beg ch of'])) {
      amount = readAmount(c, true, true);
      if (!amount) return null;
      c.eatAny(['chs', 'ch', 'sts']);
    } else if (c.eatAny(['ch', 'chs'])) {
      amount = readAnyNumber(c);
      if (amount === null) {
        if (c.word() === '.' && c.peek(1)?.kind === 'number') c.at++;
        if (c.word() === '-' && (c.peek(1)?.kind === 'number' || c.peek(1)?.kind === 'figure')) c.at++;
        amount = readAmount(c, true, true);
      }
      if (!amount) {
        if (!(c.done || [',', ';', '.', ')', ']', '*', 'and', 'then', 'turn'].includes(c.word())))
          return null;
        amount = one(c);
      }
    } else if (
      ['make', 'work', ':'].includes(
        c.tokens[start - (['a', 'any'].includes(c.word(-1) ?? '') ? 2 : 1)]?.word ?? '',
      ) &&
      c.isAny(['a multiple of', 'any multiple of', 'multiple of'])
    ) {
      // "Multiple of 8 sts + 1" on its own is the heading of a stitch pattern.
      amount = readAnyNumber(c);
      if (!amount) return null;
      c.eatAny(['chs', 'ch']);
    } else {
      amount = readAmount(c, true, true);
      if (!amount) return null;
      if (c.word() === '-' && !c.peek()!.gap) c.at++;
      c.eat('more');
      if (!c.eatAny(['ch', 'chs', 'foundation ch']) && !countsLabelledChain(c, start)) return null;
    }
    amount = readPlus(c, amount);
    if (c.attempt(() => (eatDash(c).isAny(['sp', 'sps', 'lp', 'lps', 'picot', 'corner']) ? true : null)))
      return null;
    if (c.word() === 'from' || c.is('across')) return null;
    c.eatAny([
      'to turn',
      'for turning ch',
      'for turning',
      'loosely',
      'more',
      'for first st',
      'to count as first st',
      'sts',
      'st',
    ]);
    c.eatAny(['at the end of this row', 'at end of this row', 'at the end of row', 'at end of row']);
    c.attempt(() => (c.eatAny(['at the end', 'at end']) && !c.is('of') ? true : null));
    const counts = readChainCounts(c);
    return { type: 'chain', amount, counts, ...c.span(start) };
  });
}

/** "ch 4, sl st in first ch to form a ring": from behind the chain; true when it closes a ring. */
export function readRingClose(c: Cursor): boolean {
  return (
    c.attempt(() => {
      c.eatAny([',', ';', '.', '-', 'and']);
      c.eatAny(['and', 'then']);
      if (
        !c.isAny([
          'join',
          'sl st',
          'ss',
          'slst',
          'slip',
          'connect',
          'close',
          'form a ring',
          'form ring',
          'to form',
        ])
      )
        return null;
      if (c.eatAny(['join in a rnd', 'join in the rnd', 'join in rnd'])) {
        c.attempt(() => {
          if (!c.eatAny(['with', 'by', 'using'])) return null;
          c.eatAny(['a', 'an', '#']);
          if (!c.eatAny(['sl st', 'ss', 'slst', 'slip st'])) return null;
          return c.eatAny(['in', 'to']) && c.pass('the').eatAny(['first ch', '#th ch', 'first', 'beg ch']);
        });
        return true;
      }
      const slips = c.isAny(['sl st', 'ss', 'slst', 'slip']);
      for (let words = 0; words < 18 && !c.done; words++) {
        if (c.isAny([';', '*', '(', '[', ':']) || c.peek()!.word === '.') return null;
        if (c.isAny(['ring', 'circle', 'loop', 'lp']) && words > 0) {
          const before = [c.word(-1), c.word(-2)];
          if (c.word() === 'lp' && !before.includes('a')) return null;
          // "ch 3, sl st in ring" works into a ring that is there; "sl st into a ring" makes one.
          const into =
            before[0] === 'in' || before[0] === 'into' || (before[0] === 'the' && before[1] !== 'form');
          if (slips && into) return null;
          c.at++;
          c.attempt(() => {
            // "join in a ring with ss"
            if (slips || !c.eatAny(['with', 'by', 'using'])) return null;
            c.eatAny(['a', 'an', '#']);
            return c.eatAny(['sl st', 'ss', 'slst', 'slip st', 's st']);
          });
          return true;
        }
        if (c.word() === ',') {
          // "sl st in first ch, forming ring"
          if (!c.isAny([', form', ', forming', ', to form', ', making'])) return null;
        }
        c.at++;
      }
      return null;
    }) === true
  );
}

/** A yarn ring made on its own: "make a magic ring". */
export function readYarnRing(c: Cursor): Ring | null {
  return c.attempt(() => {
    const start = c.at;
    c.eatAny([
      'beg with',
      'start with',
      'begin with',
      'with',
      'using',
      'form',
      'create',
      'make',
      'wrap yarn around finger to form',
      'start',
      'beg',
    ]);
    c.eatAny(['a', 'an', 'your']);
    if (
      !c.eatAny([
        'magic ring',
        'magic circle',
        'magic lp',
        'adjustable ring',
        'adjustable lp',
        'sliding ring',
        'sliding lp',
        'slip ring',
        'yarn ring',
        'mr',
        'ring',
        'circle',
      ])
    )
      return null;
    if (!(c.done || c.peek()!.kind === 'sign' || c.isAny(['and', 'then', 'with']))) return null;
    return { type: 'ring', chains: null, ...c.span(start) };
  });
}
