/**
 * Reads what the author states beside the work: the count of the row ("(24 sts)", "– 24 (26, 28) sc",
 * "Total 48") and what a chain counts as. It compares nothing with the work.
 */
import { type Cursor, OPENING } from './cursor.ts';
import { eatDash, readNoun, readTurningChain } from './nouns.ts';
import { bracketValues, one, readAmount } from './numbers.ts';
import type { Amount, Convention, CountPart, CountsAs, Noun, StatedCount } from './tree.ts';
import { isTunisian } from './tunisian-words.ts';
import { readStitch } from './words.ts';

const INTRO = [
  'there should now be',
  'there should be',
  'there are now',
  'there will now be',
  'you will now have',
  'you should now have',
  'you should have',
  'you will have',
  'you now have',
  'now you have',
  'you have',
  'there are',
  'there will be',
  'makes',
  'made',
  'total st count',
  'st count',
  'sts count',
  'sts :',
  'sts =',
  'giving',
  'to give',
  'gives',
  'leaves',
  'total of',
  'total sts',
  'total',
  'for a total of',
  'for total of',
  'a total of',
  'count',
];

const OUTRO = [
  'at end of row',
  'at end of rnd',
  'at end',
  'in total',
  'in all',
  'total',
  'altogether',
  'in rnd',
  'in row',
  'made',
  'rem',
  'now',
  'on row',
  'in each rnd',
  'in each row',
  'on each rnd',
  'on each row',
  'for each rnd',
  'for each row',
  'each rnd',
  'each row',
  'every rnd',
  'every row',
  'per rnd',
  'per row',
  'each',
  'around',
  'across',
  'worked',
  'for each sleeve',
  'each side',
];

/** Parts of a garment that a count may be of: "(12 sts for right shoulder)". */
const PART = new Set([
  ...['shoulder', 'side', 'half', 'front', 'back', 'neck', 'sleeve', 'armhole', 'strap', 'ear', 'leg', 'arm'],
  ...['left', 'right', 'first', 'second', 'other', 'each', 'one', 'this', 'the', 'of', 'panel', 'flap'],
]);

/** "at end of Row 8", "in total": words behind a count that change nothing of it. */
function readOutro(c: Cursor): void {
  c.attempt(() => {
    if (!c.eat('for')) return null;
    const { at } = c;
    while (PART.has(c.word())) c.at++;
    return c.at > at && (c.done || c.peek()!.kind === 'sign') ? true : null;
  });
  // "after last row", "at the end of this rnd"
  const when = c.attempt(() => {
    if (!c.eatAny(['after', 'at the end of', 'at end of', 'by the end of', 'by end of', 'on'])) return null;
    if (!c.eatAny(['the last', 'the final', 'last', 'final', 'this', 'the', 'each'])) return null;
    return c.eatAny(['rows', 'row', 'rnds', 'rnd', 'rep', 'inc', 'dec']);
  });
  const said = when === null ? c.eatAny(OUTRO) : null;
  if (said === 'at end of row' || said === 'at end of rnd') {
    c.attempt(() => (c.peek()?.kind === 'number' && readAmount(c, false) ? true : null));
  }
}

/** "ch", "ch-3": chains of the edge named without "turning". */
function eatChains(c: Cursor): boolean {
  if (!c.eat('ch')) return false;
  c.attempt(() => readAmount(c.pass('-')));
  return true;
}

/** "not counting turning ch", "including beg ch", "+ turning ch". */
function readWithTurning(c: Cursor): 'with' | 'without' | null {
  return c.attempt(() => {
    c.eat(',');
    const said = c.eatAny([
      'not counting',
      'not including',
      'without',
      'excluding',
      'excl',
      'counting',
      'including',
      'incl',
      'includes',
      'plus',
      '+',
      'and',
      'with',
    ]);
    if (!said) return null;
    c.eat('the');
    c.eatAny(['first', '#']);
    if (!readTurningChain(c)) {
      if (!c.attempt(() => (eatChains(c) ? true : null))) return null;
      if (c.isAny(['sp', 'sps', '- sp', 'lp', 'lps'])) return null;
      if (said === 'plus' || said === '+' || said === 'and' || said === 'with') return null;
    }
    c.attempt(() => {
      if (!c.eat('as')) return null;
      const one = c.eatAny(['a', '#', 'one', 'first']) !== null;
      return readStitch(c) || c.eatAny(['sts', 'st']) || (one && c.done) ? true : null;
    });
    return ['counting', 'including', 'incl', 'includes'].includes(said) ? 'with' : 'without';
  });
}

const BLOCKS = [
  ...['filled', 'solid', 'closed', 'full'].flatMap((full) =>
    ['mesh', 'meshes', 'blocks', 'block', 'squares', 'square'].map((cell) => `${full} ${cell}`),
  ),
  ...['blocks', 'block', 'bl', 'bls', 'blk', 'blks', 'cm', 'tiles', 'tile', 'squares', 'bars', 'lacets'],
];

/** "3-dc groups", "V-sts", "ch-2 sps", "incs": the noun of a count. */
function readCountNoun(c: Cursor): Noun | null {
  const start = c.at;
  // "2 edge dc": some of the dc, not all of them.
  if (c.attempt(() => (c.eatAny(['edge', 'border', 'end', 'outer']) && readNoun(c) ? true : null)))
    return { kind: 'between', ...c.span(start) };
  // "3-dc groups", "groups of 3 dc": what they are made of is not what is counted.
  const made = c.attempt(() => {
    readAmount(c, false);
    if (c.word() === '-') c.at++;
    return readStitch(c) && c.pass('-').eatAny(['groups', 'group', 'grps', 'grp']) ? true : null;
  });
  if (made) return { kind: 'between', groups: true, ...c.span(start) };
  // Filet: an open mesh is a space; how many stitches a block is, the words do not say.
  if (c.eatAny(['open mesh', 'open meshes', 'om', 'oms', 'open squares', 'open square', 'open blocks']))
    return { kind: 'space', chains: null, ...c.span(start) };
  // Tunisian: a loop on the hook is a stitch of the row.
  if (c.eatAny(['lps on the hook', 'lps on your hook', 'lps on hook', 'lps now on hook']))
    return { kind: 'stitch', ...c.span(start) };
  if (c.is('lps') && isTunisian(c)) {
    c.at++;
    return { kind: 'stitch', ...c.span(start) };
  }
  if (c.eatAny(BLOCKS)) return { kind: 'between', ...c.span(start) };
  const gaps = c.isAny(['sps', 'sp', 'gaps', 'gap']);
  const noun = readNoun(c);
  if (gaps && noun?.kind === 'between') return { kind: 'between', from: noun.from, to: noun.to };
  if (noun) return noun;
  if (c.eatAny(['lps', 'pattern reps', 'reps', 'patt reps'])) return { kind: 'between', ...c.span(start) };
  return null;
}

/** "12 hdc + ch-12": one space, without saying that it is one. */
function readOneSpace(c: Cursor): Noun | null {
  return c.attempt(() => {
    const start = c.at;
    c.eatAny(['a', 'one']);
    if (!c.eat('ch') || c.word() !== '-' || c.peek(1)?.kind !== 'number') return null;
    c.at++;
    const chains = readAmount(c, false);
    if (!chains || c.peek()?.kind === 'number') return null;
    c.eatAny(['sp', 'lp']);
    return c.isAny(['sps', 'lps']) ? null : { kind: 'space', chains, ...c.span(start) };
  });
}

function saysOneSpace(c: Cursor): boolean {
  const at = c.at;
  const found = readOneSpace(c) !== null;
  c.at = at;
  return found;
}

function readPart(c: Cursor): CountPart | null {
  return c.attempt(() => {
    const start = c.at;
    const gap = readOneSpace(c);
    if (gap) return { amount: one(c), noun: gap, ...c.span(start) };
    let amount = readAmount(c);
    if (!amount) {
      const all = c.word() in OPENING ? bracketValues(c, c.at) : null;
      if (!all || all.values.length < 2) return null;
      c.at = all.next;
      amount = { kind: 'sizes', values: all.values, ...c.span(start) };
    }
    c.eat('x');
    let noun = readCountNoun(c);
    if (noun && c.is('sts') && noun.kind === 'named') c.at++;
    if (!noun && amount.kind === 'one') {
      // "24 (26, 28 sts)": the noun inside the bracket.
      const inside = c.attempt(() => {
        const close = c.word() in OPENING ? c.partner[c.at]! : -1;
        if (close < 0 || close >= c.end) return null;
        c.at++;
        const values: (number | null)[] = [amount?.kind === 'one' ? amount.value : null];
        for (;;) {
          const next = readAmount(c, false);
          if (next?.kind !== 'one') return null;
          values.push(next.value);
          if (!c.eatAny([',', ':', ';', '-', '/'])) break;
        }
        const named = readCountNoun(c);
        if (!named || c.at !== close) return null;
        c.at++;
        return { values, named };
      });
      if (inside) {
        amount = { kind: 'sizes', values: inside.values, ...c.span(start) };
        noun = inside.named;
      }
    }
    readOutro(c);
    return { amount, noun, ...c.span(start) };
  });
}

/** The parts of a count up to `c.end` or to a sign that ends it; null when there is none. */
export function readCountParts(c: Cursor): StatedCount | null {
  return c.attempt(() => {
    const start = c.at;
    for (
      let n = 0;
      n < 6 &&
      !(c.word() === '-' && bracketValues(c, c.at + 1)) &&
      (c.eatAny(INTRO) || c.eatAny([':', '=', '-', '.', 'is']));
      n++
    );
    const parts: CountPart[] = [];
    let turningChain: 'with' | 'without' | null = null;
    while (parts.length < 12) {
      turningChain ??= readWithTurning(c);
      const part = readPart(c);
      if (!part) break;
      parts.push(part);
      turningChain ??= readWithTurning(c);
      const more = c.attempt(() => {
        const joined = c.eatAny([', and', ', plus', ',', ':', ';', 'and', '&', '+', 'plus', '=', '/']);
        if (!joined && !(parts[0]?.noun?.kind === 'stitch' && c.eat('-'))) return null;
        return c.peek()?.kind === 'number' || c.peek()?.kind === 'figure' || saysOneSpace(c) ? true : null;
      });
      if (!more) break;
    }
    if (parts.length === 0) return null;
    readOutro(c);
    return { parts, turningChain, ...c.span(start) };
  });
}

/**
 * "(41, 45 sc)", "(30, 34, 38 sc)": one number for each size and the noun behind the last. Two numbers are that only
 * where the pattern has two sizes; three or more without a noun can be nothing else.
 */
function forSizes(c: Cursor, count: StatedCount | null): StatedCount | null {
  if (count === null || count.parts.length < 2) return count;
  if (count.parts.length === 2 ? c.sizes !== 2 : c.sizes !== null && c.sizes !== count.parts.length)
    return count;
  const values: number[] = [];
  const last = count.parts.at(-1)!;
  for (const [i, part] of count.parts.entries()) {
    if (part.amount.kind !== 'one' || (part.noun === null) !== (part !== last)) return count;
    const before = count.parts[i - 1];
    // "(24, 6 incs)", "(24 = 20 sc …)": the second tells of what the first is made.
    if (before && !/^\s*[,:;/-]\s*$/u.test(c.text.slice(before.to, part.from))) return count;
    values.push(part.amount.value);
  }
  const { noun } = last;
  if (
    count.parts.length === 2 &&
    noun?.kind !== 'stitch' &&
    (noun?.kind !== 'named' || noun.stitch.form === 'inc')
  )
    return count;
  const span = { from: count.parts[0]!.from, to: last.to };
  const amount: Amount = { kind: 'sizes', values, from: span.from, to: last.amount.to };
  return { ...count, parts: [{ amount, noun, ...span }] };
}

/** A count in brackets that begins here: "(24 sts)", "[24]", "{22 ch-2 sps}"; the bracket holds nothing else. */
export function readBracketCount(c: Cursor): StatedCount | null {
  if (!(c.word() in OPENING)) return null;
  const close = c.partner[c.at]!;
  if (close < 0 || close >= c.end) return null;
  return c.attempt(() => {
    const start = c.at;
    c.at++;
    const all = bracketValues(c, start);
    const count =
      all && all.values.length > 1
        ? ((): StatedCount => {
            c.at = close;
            const span = { from: c.tokens[start + 1]!.from, to: c.tokens[close - 1]!.to };
            const amount: Amount = { kind: 'sizes', values: all.values, ...span };
            if (c.sizes !== null && c.sizes !== all.values.length) {
              c.fact('sizes-differ-in-length', span, { expected: c.sizes, got: all.values.length });
            }
            return { parts: [{ amount, noun: null, ...span }], turningChain: null, ...span };
          })()
        : forSizes(
            c,
            c.within(close, () => readCountParts(c)),
          );
    if (!count) return null;
    c.within(close, () => {
      c.eatAny(['.', ',']);
      readOutro(c);
      c.attempt(() => {
        // "(11 sc; ch 1 does not count as a st)"
        c.eatAny([',', ';', '-', ':']);
        const said = readSaid(c);
        if (!said || c.at !== close) return null;
        c.said.push(said.convention.counts);
        return said;
      });
    });
    if (
      c.at < close &&
      c.isAny([
        'of',
        '>',
        ', including',
        ', counting',
        'including',
        'counting',
        ', not',
        'not',
        ', excluding',
        ', with',
        ', plus',
        ', incl',
        'incl',
        ', made',
        ', each',
      ])
    ) {
      // "(25 sts, including ch-1 sps)": the rest says how it was counted.
      c.at = close;
    }
    if (c.at !== close) return null;
    c.at = close + 1;
    return { ...count, ...c.span(start) };
  });
}

/** "throughout", "here and throughout": a bracket's rest that changes nothing but the reach. */
function eatThroughout(c: Cursor): boolean {
  c.eat(',');
  const said = c.eatAny([
    'here and throughout',
    'now and throughout',
    'throughout patt',
    'throughout the patt',
    'throughout',
    'from now on',
    'always',
    'on every row',
    'on all rows',
    'on each row',
    'in every row',
    'for entire patt',
    'now and always',
  ]);
  if (!said) c.eatAny(['here', 'now']);
  return said !== null;
}

/** ", ch 2", "and 2 ch", "plus ch-1 sp": chains beside the stitch that a chain counts as. */
function readBeside(c: Cursor): Amount | null {
  return c.attempt(() => {
    if (!c.eatAny([', and', ', plus', 'and', ',', '+', 'plus', '&', 'with'])) return null;
    c.eatAny(['a', 'first', 'one']);
    const before = c.attempt(() => {
      const amount = readAmount(c, false);
      if (!amount) return null;
      eatDash(c);
      return c.eatAny(['ch', 'chs']) ? amount : null;
    });
    const amount =
      before ??
      c.attempt(() => {
        if (!c.eat('ch')) return null;
        eatDash(c);
        return readAmount(c, false);
      });
    if (!amount) return null;
    eatDash(c);
    c.eatAny(['sp', 'lp']);
    return amount;
  });
}

/** "counts as first dc and ch 2", "does not count as a st", "counts as ch-3 sp"; the subject is read. */
export function readCountsAs(c: Cursor): CountsAs | null {
  return c.attempt(() => {
    const start = c.at;
    let throughout = eatThroughout(c);
    c.eatAny(['it', 'this', 'which', 'that', 'and']);
    c.eatAny(['will', 'always', 'should']);
    throughout = eatThroughout(c) || throughout;
    if (
      c.eatAny([
        'does not count',
        'do not count',
        "doesn't count",
        "don't count",
        'not counted',
        'is not counted',
        'are not counted',
        'not counting',
        'never counts',
        'will not count',
        'not count',
        'does not counts',
        'is not a st',
        'not a st',
      ])
    ) {
      c.attempt(() => {
        c.eatAny(['as', 'in']);
        c.eatAny(['a', 'an', 'the', 'first', 'one', 'your']);
        c.eat('first');
        const took = readStitch(c) || c.eatAny(['sts', 'st', 'st count', 'count']);
        c.eat('count');
        return took ? true : null;
      });
      throughout = eatThroughout(c) || throughout;
      return { kind: 'nothing', throughout, ...c.span(start) };
    }
    const verb = c.eatAny([
      'counts as',
      'count as',
      'counting as',
      'counted as',
      'is counted as',
      'are counted as',
      'to stand for',
      'standing for',
      'to count as',
      'to replace',
      'stands for',
      'stand for',
      'stands as',
      'equals',
      'equal',
      'is',
      'replaces',
      'acts as',
      'serves as',
      'counts for',
      'represents',
      'as',
      '=',
    ]);
    if (!verb) {
      // "(first dc made)" behind a chain says the same.
      const made = c.attempt(() => {
        const nth = c.peek();
        if (!c.eatAny(['first', '#th', 'beg']) || (nth?.kind === 'ordinal' && nth.value !== 1)) return null;
        const stitch = readStitch(c);
        if (!stitch) return null;
        if (c.eat('made')) return { stitch, chains: null };
        // "(1st tr and 2 ch)": nothing but what it stands for.
        const chains = readBeside(c);
        return c.done ? { stitch, chains } : null;
      });
      if (made) return { kind: 'stitch', ...made, throughout, ...c.span(start) };
      if (
        c.attempt(() => (c.eatAny(['counts', 'count']) && (c.done || c.isAny([',', '.', ')'])) ? true : null))
      ) {
        return { kind: 'stitch', stitch: null, chains: null, throughout, ...c.span(start) };
      }
      return null;
    }
    c.eatAny(['a', 'an', 'the', 'your', 'one']);
    if (c.eat('#th') || c.eat('first') || c.eat('beg') || c.eat('one') || c.peek()?.value === 1) {
      // "first 2-dc cl" names a cluster of two.
      if (c.peek()?.kind === 'number' && c.word(1) !== '-') c.at++;
    }
    c.eatAny(['a', 'one']);
    const space = c.attempt(() => {
      const noun = readNoun(c);
      return noun?.kind === 'space' ? noun : null;
    });
    if (space) {
      // "as ch-1 sp and sc": the same two things as "sc and ch-1 sp".
      const beside = c.attempt(() => {
        if (space.chains === null || !c.eatAny([', plus', 'and', 'plus', '+', '&'])) return null;
        c.eatAny(['a', 'an', 'one', 'first', 'the first']);
        if (c.peek()?.value === 1) c.at++;
        const stitch = readStitch(c);
        // "… as ch-1 sp and sc in next st": the stitch is work, and nothing that the chain counts as.
        return c.isAny(['in', 'into', 'around', 'next', 'each']) ? null : stitch;
      });
      if (beside) {
        throughout = eatThroughout(c) || throughout;
        return { kind: 'stitch', stitch: beside, chains: space.chains, throughout, ...c.span(start) };
      }
      throughout = eatThroughout(c) || throughout;
      return { kind: 'space', throughout, ...c.span(start) };
    }
    const stitch = readStitch(c);
    if (!stitch) {
      if (!c.eatAny(['sts', 'st'])) return null;
    } else c.eat('st');
    const chains = readBeside(c);
    throughout = eatThroughout(c) || throughout;
    return { kind: 'stitch', stitch, chains, throughout, ...c.span(start) };
  });
}

const EARLIER = ['from prev row', 'from last row', 'at end of prev row', 'at end of last row', 'over'];

/** What a sentence such as "The 3 skipped ch count as a dc" speaks of. */
export interface Said {
  readonly convention: Convention;
  /** True when it speaks of the chains passed over at the start. */
  readonly skipped: boolean;
}

/** "Ch 3 counts as first dc throughout", "turning ch does not count as a st", "the skipped ch count as dc". */
export function readSaid(c: Cursor): Said | null {
  return c.attempt(() => {
    const start = c.at;
    c.eatAny(['note', 'notes']);
    c.eatAny([':', '-']);
    c.eatAny([
      'throughout',
      'in this patt',
      'in this',
      'for this patt',
      'unless otherwise noted',
      'unless otherwise stated',
    ]);
    c.eat(',');
    c.eatAny(['each', 'every', 'all']);
    c.eat('the');
    c.eatAny(['first', 'unworked', 'beg']);
    let skipped = c.eatAny(['skipped', 'unused', 'missing']) !== null;
    let chains: Amount | null = null;
    if (c.peek()?.kind === 'number' || c.peek()?.word === 'first') {
      c.eat('first');
      chains = readAmount(c, false);
      if (!chains) return null;
      eatDash(c);
      if (c.eat('skipped') || c.eat('unworked')) skipped = true;
      c.eat('beg');
      if (!c.eatAny(['turning ch', 'foundation ch', 'ch', 'chs', 'foundation chs', 'base chs'])) return null;
    } else if (c.is('turning ch') || c.is('turning chs') || c.is('tch') || c.is('turn ch') || c.is('t ch')) {
      chains = readTurningChain(c)?.chains ?? null;
    } else if (c.eatAny(['foundation ch', 'foundation chs', 'chs', 'ch'])) {
      const dash = c.word() === '-';
      if (dash) c.at++;
      chains = readAmount(c, false);
      if (c.attempt(() => (eatDash(c).is('sp') ? true : null))) return null;
    } else return null;
    if (c.eatAny(['skipped', 'that are skipped', 'just skipped'])) skipped = true;
    c.attempt(() =>
      c.eatAny(['at', 'from']) && c.pass('the').eatAny(['very beg', 'beg', 'start', 'end', 'edge'])
        ? true
        : null,
    );
    c.attempt(() => {
      if (!c.eat('of')) return null;
      c.eatAny(['the', 'each', 'every', 'a', 'all']);
      return c.eatAny(['rows and rnds', 'row', 'rnd', 'rows', 'rnds']) ? true : null;
    });
    c.attempt(() => (c.eat('(') && readStitch(c) && c.eat(')') ? true : null));
    // "Turning ch carried from previous row counts as dc": where it was made changes nothing.
    c.attempt(() => (c.eatAny(['carried', 'made', 'worked', 'left']) && c.eatAny(EARLIER) ? true : null));
    const counts = readCountsAs(c);
    if (!counts) return null;
    return { convention: { chains, counts, ...c.span(start) }, skipped };
  });
}
