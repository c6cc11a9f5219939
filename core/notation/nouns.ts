/**
 * Reads what is looked for in the row below: a stitch of any or of one kind, a chain, a chain-space, a
 * turning chain, a row-end. Which of them is meant (next, each, last) is the business of `places`.
 */
import type { Cursor } from './cursor.ts';
import { readAmount } from './numbers.ts';
import type { Amount, Noun, StitchForm } from './tree.ts';
import { isTunisian } from './tunisian-words.ts';
import { readStitch } from './words.ts';

const ADJECTIVES = [
  'indicated',
  'specified',
  'designated',
  'stated',
  'unworked',
  'unused',
  'free',
  'empty',
  'available',
  'open',
  'rem',
  'whole',
  'large',
  'small',
  'little',
  'new',
  'actual',
  'foundation',
  'base',
  'worked',
  'resulting',
  'same',
  'adjacent',
  'existing',
  'underarm',
];

/** What a Tunisian stitch shows on its face. */
const BARS = [
  'front vertical bars',
  'front vertical bar',
  'vertical bars',
  'vertical bar',
  'vertical threads',
  'vertical thread',
];
const LOOPS = ['lp', 'lps'];
const SPACES = [
  'sp',
  'sps',
  'lp',
  'lps',
  'gap',
  'gaps',
  'hole',
  'holes',
  'eyelet',
  'eyelets',
  'mesh',
  'meshes',
];
const CORNERS = ['corner sp', 'corner sps', 'corner', 'corners'];

const ROW_ENDS = [
  'row ends',
  'row end',
  'ends of rows',
  'end of rows',
  'end of each row',
  'ends of each row',
  'row edges',
  'row edge',
  'sides of rows',
  'side of rows',
  'side of each row',
  'side of row',
  'side edge',
  'long edges',
  'long edge',
  'long sides',
  'long side',
  'edge',
  'sides',
  'side',
];

/** Loops of the chain that its first row left free. */
const FREE_LOOPS = ['rem', 'free', 'unused', 'unworked'].flatMap((left) =>
  ['lps', 'lp'].flatMap((lp) => ['foundation', 'beg', 'base'].map((which) => `${left} ${lp} of ${which} ch`)),
);

const OTHER_SIDE = [
  ...FREE_LOOPS,
  'lps of foundation ch',
  'lp of foundation ch',
  'lps of beg ch',
  'lp of beg ch',
  'opposite side of foundation ch',
  'other side of foundation ch',
  'opposite side of beg ch',
  'other side of beg ch',
  'opposite side of ch',
  'other side of ch',
  'bottom of foundation ch',
  'underside of foundation ch',
  'underside of ch',
  'base ch',
];

const TURNING = [
  'turning chs',
  'tchs',
  't chs',
  'turning ch',
  'turn ch',
  't ch',
  'tch',
  'beg turning ch',
  'beg tch',
  'beg ch',
  'beg chs',
];

/** "down the left side", "along other edge" behind the ends of rows: which way they are met. */
export function eatAlong(c: Cursor): void {
  c.attempt(() => {
    const to = c.eat('to');
    if (!to && !c.eatAny(['down', 'up', 'along', 'across', 'on'])) return null;
    c.eatAny(['the', 'this', 'that', 'each']);
    c.eatAny(['first', 'second', 'left', 'right', 'other', 'next', 'opposite', 'long', 'short']);
    if (to)
      return c.eatAny(['corner', 'top corner', 'bottom corner', 'top', 'bottom', 'foundation']) ? true : null;
    return c.eatAny(['side edge', 'side edges', 'side', 'sides', 'edge', 'edges']) ? true : null;
  });
}

/** "of ribbing", "of the cuff": whose edge it is. */
export function eatWhose(c: Cursor): void {
  c.attempt(() => {
    if (!c.eat('of')) return null;
    c.eatAny(['the', 'last', 'each']);
    if (c.peek()?.kind !== 'word' || c.isAny(['next', 'row', 'rnd', 'prev'])) return null;
    c.at++;
    return c.done ||
      c.peek()!.kind === 'sign' ||
      c.isAny(['across', 'around', 'along', 'working', 'and', 'with'])
      ? true
      : null;
  });
}

/** Takes "-" glued between two parts of one word. */
export function eatDash(c: Cursor): Cursor {
  if (c.word() === '-' && c.peek(1) && !c.peek(1)!.gap) c.at++;
  return c;
}

/** "turning ch", "tch", "beg ch-3", "beg 3-ch": the chains it names (null when it does not say), or null. */
export function readTurningChain(c: Cursor): { chains: Amount | null; beginning: boolean } | null {
  return c.attempt(() => {
    const first = c.word();
    if (first === 'beg') {
      const turned = c.attempt(() => {
        c.at++;
        const chains = readAmount(c, false);
        if (!chains) return null;
        eatDash(c);
        return c.eat('ch') ? chains : null;
      });
      if (turned) return { chains: turned, beginning: true };
    }
    if (
      c.word() === '#' &&
      c.attempt(() => (readAmount(c, false) && c.isAny(['turning ch', 'tch']) ? true : null))
    ) {
      const amount = c.tokens[c.at - 1]!;
      c.eatAny(TURNING);
      return {
        chains: { kind: 'one', value: amount.value, from: amount.from, to: amount.to },
        beginning: false,
      };
    }
    if (!c.eatAny(TURNING)) return null;
    const chains = c.attempt(() => {
      if (c.word() === '-' || c.word() === '#' || c.word() === '#fig') {
        const dash = c.word() === '-';
        if (dash) {
          if (c.peek(1)?.gap) return null;
          c.at++;
        }
        return readAmount(c, false);
      }
      return null;
    });
    return { chains, beginning: first === 'beg' };
  });
}

/** "ch-2 sp", "ch 2 sp", "2-ch sp", "3ch-lp", "ch-sp", "sp", "ch-3" (after "next"): a space, or null. */
export function readSpace(c: Cursor): { chains: Amount | null; turning?: true; open?: true } | null {
  const space = (): boolean => {
    if (!c.attempt(() => (eatDash(c).eatAny(CORNERS) || c.eatAny(SPACES) ? true : null))) return false;
    return true;
  };
  return (
    c.attempt(() => {
      c.eat('corner');
      c.eat('turning');
      if (!c.eat('ch')) return null;
      const dash = c.word() === '-';
      // "in each of next 19 ch - 20 sc": a dash that stands by itself parts the count.
      const apart = dash && c.peek()!.gap && c.peek(1)?.gap === true;
      if (dash) c.at++;
      const chains = readAmount(c, false);
      if (!chains) return space() ? { chains: null } : null;
      if (space()) return { chains };
      if (c.is('corner')) c.at++;
      // "next ch-3": the hyphen makes it a thing, not an action.
      return dash && !apart && chains.from > 0 && !c.peek()?.word.startsWith('picot') ? { chains } : null;
    }) ??
    c.attempt(() => {
      c.eat('corner');
      const chains = readAmount(c, false);
      if (!chains) return null;
      eatDash(c);
      if (!c.eat('ch') && !c.eat('chs')) return null;
      return space() ? { chains } : null;
    }) ??
    c.attempt(() => {
      const corner = c.eat('corner') || c.eat('corners');
      if (c.eatAny(['chsp', 'chsps', 'chlp'])) return { chains: null };
      const word = c.eatAny(SPACES);
      if (word !== null) {
        const turning = c.attempt(() =>
          c.eatAny(['formed by', 'made by', 'of', 'formed from']) && readTurningChain(c.pass('the'))
            ? true
            : null,
        );
        // "sp formed by joining sc": the last of the round below, where the hook is.
        c.attempt(() => {
          if (turning || !c.eatAny(['just formed by', 'formed by', 'made by', 'created by', 'under']))
            return null;
          const which = c.pass('the').eatAny(['join', 'closing', 'last']);
          if (which === null && c.tokens[c.at - 1]!.word === 'under') return null;
          return readStitch(c);
        });
        const open = !corner && !turning && !LOOPS.includes(word);
        return { chains: null, ...(turning ? { turning } : {}), ...(open ? { open } : {}) };
      }
      return corner && !c.isAny(['st', 'sts', 'dc', 'sc', 'tr', 'hdc', 'htr']) ? { chains: null } : null;
    }) ??
    c.attempt(() => {
      if (!readTurningChain(c)) return null;
      return space() ? { chains: null, turning: true } : null;
    })
  );
}

/** One noun at the position, or null. A corner's is marked so, unless its chains say which space it is. */
export function readNoun(c: Cursor, inner = false): Noun | null {
  const start = c.at;
  const noun = readPlainNoun(c, inner);
  if (noun === null || !['space', 'stitch', 'named'].includes(noun.kind)) return noun;
  if (noun.kind === 'space' && noun.chains !== null) return noun;
  const words = c.tokens.slice(start, c.at).map((token) => token.word);
  if (!words.some((word) => word.startsWith('corner'))) return noun;
  return { ...noun, corner: words.at(-1)!.startsWith('corner') && !words.includes('ch') ? 'bare' : 'said' };
}

function readPlainNoun(c: Cursor, inner: boolean): Noun | null {
  return c.attempt(() => {
    const start = c.at;
    for (
      let n = 0;
      n < 4 &&
      c.isAny(ADJECTIVES) &&
      !c.isAny(['base ch', 'foundation sc', 'foundation dc', 'foundation hdc', 'foundation tr']) &&
      !c.isAny(FREE_LOOPS);
      n++
    ) {
      c.at++;
    }
    if (c.eatAny(OTHER_SIDE)) {
      // "opposite side of ch-8"
      c.attempt(() =>
        c.tokens[c.at - 1]!.word === 'ch' && c.eat('-') && readAmount(c, false) ? true : null,
      );
      return { kind: 'loop-of-chain', ...c.span(start) };
    }
    if (c.eatAny(ROW_ENDS)) {
      eatAlong(c);
      eatWhose(c);
      return { kind: 'row-end', ...c.span(start) };
    }
    if (c.eatAny(BARS) || (c.isAny(['bars', 'bar']) && isTunisian(c) && ++c.at > 0))
      return { kind: 'stitch', ...c.span(start) };
    if (c.eatAny(['seams', 'seam'])) return { kind: 'seam', ...c.span(start) };
    const between = c.attempt(() => {
      if (inner || !c.eatAny(['sps between', 'sp between', 'gaps between', 'gap between'])) return null;
      c.eat('the');
      c.eatAny(['first', 'last', 'next', 'each']);
      const noun = partsNoun(c) ?? readNoun(c, true);
      const edge = c.attempt(() => {
        if (!c.eat('and')) return null;
        c.eatAny(['the', 'first', 'last', 'next']);
        return readTurningChain(c) ?? readNoun(c, true);
      });
      return noun?.kind === 'between' && edge === null ? 'groups' : 'stitches';
    });
    if (between === 'groups') return { kind: 'between', groups: true, ...c.span(start) };
    const group = readGroup(c);
    if (group) return group;
    if (between) return { kind: 'between', ...c.span(start) };
    const at = c.at;
    const space = readSpace(c);
    if (space) {
      const alone = space.chains === null && c.at === at + 1 && ['lp', 'lps'].includes(c.tokens[at]!.word);
      // "ch-1 sp before next group" is the one that the hook comes to anyway.
      c.attempt(() => {
        if (!c.eatAny(['before', 'after'])) return null;
        c.eatAny(['the next', 'the', 'next', 'foll', 'first', 'last']);
        return partsNoun(c) ?? readTurningChain(c);
      });
      return {
        kind: 'space',
        chains: space.chains,
        ...(alone ? { loop: true } : {}),
        ...(space.turning ? { turning: true } : {}),
        ...(space.open ? { open: true } : {}),
        ...c.span(start),
      };
    }
    if (readTurningChain(c)) return { kind: 'turning-chain', ...c.span(start) };
    // A name of the pattern may begin with "st" or "ch"; names go first.
    const named = c.lexicon.names.size > 0 ? readStitch(c) : null;
    if (named?.special) return withSpace(c, start, named);
    if (named) c.at = start;
    if (c.is('corner')) c.at++;
    if (c.eatAny(['sts', 'st'])) return { kind: 'stitch', ...c.span(start) };
    const picot = c.attempt(() => {
      if (!c.eat('ch')) return null;
      eatDash(c);
      return readAmount(c, false) && eatDash(c).isAny(['picot', 'picots']) ? true : null;
    });
    if (!picot && c.eatAny(['chs', 'ch'])) return { kind: 'chain', ...c.span(start) };
    const stitch = readStitch(c);
    if (stitch) return withSpace(c, start, stitch);
    return null;
  });
}

/** "3-dc group", "5 tr group": "group of 3 tr", "petal": a group without a name of its own. */
export function partsNoun(c: Cursor): Noun | null {
  return c.attempt(() => {
    const start = c.at;
    const named = c.word().replace(/s$/u, '');
    if (!c.lexicon.names.has(named) && c.eatAny(['petals', 'petal', 'scallops', 'scallop', 'pairs']))
      return { kind: 'between', groups: true, ...c.span(start) };
    const noun = readGroup(c);
    if (noun) return noun;
    if (!readAmount(c, false)) return null;
    if (c.word() === '-') c.at++;
    if (!readNoun(c)) return null;
    if (
      !c.eatAny([
        'group',
        'groups',
        'cl',
        'grp',
        'set',
        'corners',
        'corner',
        'inc',
        'incs',
        'point',
        'pair',
        'pairs',
      ])
    )
      return null;
    return { kind: 'between', groups: true, ...c.span(start) };
  });
}

/** "group", "groups of 3 dc": what a row below made in one place. */
function readGroup(c: Cursor): Noun | null {
  const start = c.at;
  if (!c.eatAny(['groups', 'group'])) return null;
  c.attempt(() => (c.eat('of') && readAmount(c, false) && readNoun(c, true) ? true : null));
  return { kind: 'between', groups: true, ...c.span(start) };
}

/** "shell sp": the space of a shell is a space. */
function withSpace(c: Cursor, start: number, stitch: Extract<Noun, { kind: 'named' }>['stitch']): Noun {
  if (c.attempt(() => (eatDash(c).eatAny(['ch sp', 'ch sps', 'sp', 'sps']) ? true : null))) {
    return { kind: 'space', chains: null, ...c.span(start) };
  }
  return { kind: 'named', stitch, ...c.span(start) };
}

/** Stitches that "st" means as well. */
const WORKED: readonly StitchForm[] = ['plain', 'extended', 'inc', 'dec'];

/** "dc", "dc and ch-1 sp", "sc, ch and ch-sp": nouns looked for together. At least one, or null. */
export function readNouns(c: Cursor, each = false): Noun[] | null {
  const first = readNoun(c);
  if (!first) return null;
  const nouns = [first];
  while (nouns.length < 20) {
    const more = c.attempt(() => {
      c.eat(',');
      const joined = c.eatAny(['and', '&', 'or', '/']);
      if (!joined) return null;
      // "each dc and in each ch-1 sp" are looked for together; "next dc and each ch" are two places.
      if (each) {
        c.eatAny(['in each', 'each', 'in']);
        c.eat('the');
      }
      // "and ch 3" begins new work; "and ch-1 sp" is a noun.
      if (c.is('ch') && c.peek(1)?.kind === 'number') {
        const space = c.attempt(() => readSpace(c));
        if (!space) return null;
        return { kind: 'space', chains: space.chains, ...c.here() } as Noun;
      }
      if (c.isAny(['next', 'last', 'first', 'same', 'turn'])) return null;
      const noun = readNoun(c);
      // A noun followed by a place of its own is new work: "and sc in next".
      if (
        !noun ||
        c.isAny([
          'in',
          'around next',
          'around post',
          'around the',
          'around each',
          'next',
          'each',
          'over',
          '#',
        ])
      )
        return null;
      // "over next 3 sts and dc3tog": any stitch is looked for already, so the stitch named is the next work.
      const any = nouns.some((other) => other.kind === 'stitch') && (joined === 'and' || joined === '&');
      if (any && !each && noun.kind === 'named' && WORKED.includes(noun.stitch.form)) return null;
      return noun;
    });
    if (!more) break;
    nouns.push(more);
  }
  return nouns;
}

/** The noun of a place that leaves it out: any stitch. */
export function anyStitch(c: Cursor): Noun {
  return { kind: 'stitch', ...c.here() };
}
