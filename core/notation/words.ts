/**
 * Which stitch of the trade a word or phrase names, in US or in UK terms. Recognition is compositional:
 * beginnings (front post, extended, half …), a stitch of the ladder, endings (2tog, dec, cluster …), glued
 * or apart, in any capitals and number. Nothing here reads places or amounts around the stitch.
 */
import type { BaseStitch, Terms } from '../trade/stitches.ts';
import type { Cursor } from './cursor.ts';
import { canonical, lex } from './lexer.ts';
import { numberWord } from './numbers.ts';
import type { StitchForm, StitchRef } from './tree.ts';

/** What one word contributes to a stitch. */
interface Shape {
  readonly base: BaseStitch;
  readonly form?: StitchForm;
  readonly post?: 'front' | 'back';
}

/** The words of one terminology, those of the other, and the names that the pattern defines. */
export interface Lexicon {
  readonly terms: Terms;
  readonly bases: ReadonlyMap<string, BaseStitch>;
  readonly runs: ReadonlyMap<string, Shape>;
  readonly foreignBases: ReadonlyMap<string, BaseStitch>;
  readonly foreignRuns: ReadonlyMap<string, Shape>;
  readonly names: ReadonlySet<string>;
  /** Names that only stand for a stitch of the trade: "X = sc". */
  readonly aliases: ReadonlyMap<string, StitchRef>;
  /** Longest name in words. */
  readonly longest: number;
}

const LADDER_NAMES: Readonly<Record<Terms, Readonly<Record<BaseStitch, readonly string[]>>>> = {
  us: {
    slip: ['sl st', 'ss', 'slip st', 'slst', 's st', 'slip'],
    t1: ['sc', 'single crochet', 's c'],
    t2: ['hdc', 'half double crochet', 'half double', 'half dc', 'h dc', 'h d c'],
    t3: ['dc', 'double crochet', 'double', 'd c'],
    t4: ['tr', 'treble crochet', 'treble', 'triple crochet', 'triple', 'trc', 'tc', 'tr crochet'],
    t5: ['dtr', 'double treble crochet', 'double treble', 'double triple crochet', 'double tr', 'd tr'],
    t6: [
      'trtr',
      'ttr',
      'triple treble crochet',
      'triple treble',
      'triple triple crochet',
      'tr tr',
      'trip tr',
    ],
    t7: ['quadtr', 'qtr', 'quad tr', 'quadruple treble crochet', 'quadruple treble'],
  },
  uk: {
    slip: ['sl st', 'ss', 'slip st', 'slst', 's st', 'slip'],
    t1: ['dc', 'double crochet', 'double', 'd c'],
    t2: ['htr', 'half treble crochet', 'half treble', 'htc', 'half tr', 'h tr'],
    t3: ['tr', 'treble crochet', 'treble', 'tr crochet'],
    t4: ['dtr', 'double treble crochet', 'double treble', 'double tr', 'long treble', 'd tr'],
    t5: ['trtr', 'ttr', 'triple treble crochet', 'triple treble', 'tr tr', 'trip tr', 'triple tr'],
    t6: ['quadtr', 'qtr', 'quad tr', 'quadruple treble crochet', 'quadruple treble'],
    t7: ['quintr', 'quin tr', 'quintuple treble crochet', 'quintuple treble'],
  },
};

/** Single-word abbreviations that take glued beginnings and endings. */
const ABBREVIATIONS: Readonly<Record<Terms, Readonly<Record<string, BaseStitch>>>> = {
  us: { sc: 't1', hdc: 't2', dc: 't3', tr: 't4', trc: 't4', dtr: 't5', trtr: 't6', ttr: 't6' },
  uk: { dc: 't1', htr: 't2', tr: 't3', dtr: 't4', trtr: 't5', ttr: 't5', qtr: 't6' },
};

function basesOf(terms: Terms): Map<string, BaseStitch> {
  const bases = new Map<string, BaseStitch>();
  for (const [base, names] of Object.entries(LADDER_NAMES[terms])) {
    for (const name of names) bases.set(name, base as BaseStitch);
  }
  return bases;
}

function runsOf(terms: Terms): Map<string, Shape> {
  const runs = new Map<string, Shape>();
  const add = (run: string, shape: Shape): void => {
    if (!runs.has(run)) runs.set(run, shape);
  };
  for (const [abbr, base] of Object.entries(ABBREVIATIONS[terms])) add(abbr, { base });
  for (const [abbr, base] of Object.entries(ABBREVIATIONS[terms])) {
    for (const [mark, post] of [
      ['fp', 'front'],
      ['bp', 'back'],
    ] as const) {
      add(mark + abbr, { base, post });
      add(abbr + mark, { base, post });
    }
    for (const [mark, post] of [
      ['f', 'front'],
      ['b', 'back'],
    ] as const) {
      add(`r${abbr}${mark}`, { base, post });
      add(`r${mark}${abbr}`, { base, post });
    }
    for (const [mark, form] of [
      ['e', 'extended'],
      ['ex', 'extended'],
      ['ext', 'extended'],
      ['f', 'foundation'],
      ['fnd', 'foundation'],
      ['fdn', 'foundation'],
      ['l', 'linked'],
      ['lk', 'linked'],
      ['lnk', 'linked'],
      ['r', 'reverse'],
      ['rev', 'reverse'],
      ['x', 'crossed'],
      ['cr', 'crossed'],
      ['sp', 'spike'],
      ['std', 'standing'],
      ['cs', 'standing'],
      ['css', 'standing'],
    ] as const) {
      add(mark + abbr, { base, form });
    }
  }
  return runs;
}

const BASES: Readonly<Record<Terms, Map<string, BaseStitch>>> = { us: basesOf('us'), uk: basesOf('uk') };
const RUNS: Readonly<Record<Terms, Map<string, Shape>>> = { us: runsOf('us'), uk: runsOf('uk') };
const LONGEST_BASE = 3;

/** One spelling for all spellings of a name: canonical words, single spaces, singular, no hyphens. */
export function normaliseName(words: string): string {
  const parts: string[] = [];
  for (const token of lex(words)) {
    if (token.kind === 'sign') continue;
    parts.push(token.kind === 'word' ? singular(token.word) : token.text.toLowerCase());
  }
  return parts.join(' ');
}

/** Canonical word without its plural ending. */
export function singular(word: string): string {
  if (word === 'sts' || word === 'sps' || word === 'lps' || word === 'chs' || word === 'cls') {
    return word.slice(0, -1);
  }
  if (word.length > 3 && /(?:sh|ch|x|z)es$/u.test(word)) return canonical(word.slice(0, -2));
  if (word.length > 2 && word.endsWith('s') && !word.endsWith('ss') && !word.endsWith('us')) {
    return canonical(word.slice(0, -1));
  }
  return word;
}

const NO_ALIASES: ReadonlyMap<string, StitchRef> = new Map();
const lexicons = new Map<string, Lexicon>();

/** The lexicon for one terminology and the pattern's own names. */
export function lexiconOf(
  terms: Terms,
  names: readonly string[],
  aliases: ReadonlyMap<string, StitchRef> = NO_ALIASES,
): Lexicon {
  const set = new Set([...names.map(normaliseName), ...aliases.keys()].filter((name) => name !== ''));
  const stands = [...aliases].map(([name, to]) => `${name}=${to.form} ${to.base}`);
  const key = `${terms}\n${[...set].join('\n')}\n${stands.join('\n')}`;
  let lexicon = lexicons.get(key);
  if (!lexicon) {
    if (lexicons.size > 50) lexicons.clear();
    const other = terms === 'us' ? 'uk' : 'us';
    lexicon = {
      terms,
      bases: BASES[terms],
      runs: RUNS[terms],
      foreignBases: BASES[other],
      foreignRuns: RUNS[other],
      names: set,
      aliases,
      longest: Math.max(0, ...[...set].map((name) => name.split(' ').length)),
    };
    lexicons.set(key, lexicon);
  }
  return lexicon;
}

/** Longest phrase of `map` at the position, hyphens and abbreviation stops passed: its value and length. */
function longest<T>(
  c: Cursor,
  map: ReadonlyMap<string, T>,
  words: number,
): { value: T; length: number } | null {
  let key = '';
  let taken = 0;
  let ahead = 0;
  let best: { value: T; length: number } | null = null;
  while (taken < words) {
    let token = c.peek(ahead);
    if (taken > 0 && (token?.word === '-' || (token?.word === '.' && !c.peek(ahead + 1)?.gap))) {
      token = c.peek(++ahead);
    } else if (taken === 1 && key === 'sl' && token?.word === '.') token = c.peek(++ahead);
    if (token?.kind !== 'word') break;
    key = key === '' ? token.word : `${key} ${token.word}`;
    ahead++;
    taken++;
    let value = map.get(key);
    if (value === undefined) {
      const one = singular(token.word);
      if (one !== token.word) value = map.get(key.slice(0, key.length - token.word.length) + one);
    }
    if (value !== undefined) best = { value, length: ahead };
  }
  return best;
}

/** A name that the pattern defines, at the position: its normalised form and length. */
function ownName(c: Cursor): { name: string; length: number } | null {
  const { names, longest: most } = c.lexicon;
  if (names.size === 0) return null;
  let key = '';
  let taken = 0;
  let ahead = 0;
  let best: { name: string; length: number } | null = null;
  while (taken < most) {
    let token = c.peek(ahead);
    if (taken > 0 && token && ['-', '/', '.'].includes(token.word)) token = c.peek(++ahead);
    if (!token || token.kind === 'sign' || token.kind === 'figure') break;
    const word = token.kind === 'word' ? singular(token.word) : token.text.toLowerCase();
    key = key === '' ? word : `${key} ${word}`;
    ahead++;
    taken++;
    if (names.has(key)) best = { name: key, length: ahead };
  }
  return best;
}

const MADE: readonly (readonly [string, StitchForm])[] = [
  ['popcorn st', 'popcorn'],
  ['popcorn', 'popcorn'],
  ['popcorns', 'popcorn'],
  ['pop', 'popcorn'],
  ['pops', 'popcorn'],
  ['pc', 'popcorn'],
  ['pcs', 'popcorn'],
  ['cl st', 'cluster'],
  ['cl', 'cluster'],
  ['cls', 'cluster'],
  ['bobble st', 'bobble'],
  ['bobbles', 'bobble'],
  ['bobble', 'bobble'],
  ['bob', 'bobble'],
  ['bo', 'bobble'],
  ['mb', 'bobble'],
  ['puff st', 'puff'],
  ['puff sts', 'puff'],
  ['puffs', 'puff'],
  ['puff', 'puff'],
  ['ps', 'puff'],
  ['pst', 'puff'],
  ['shell st', 'shell'],
  ['shells', 'shell'],
  ['shell', 'shell'],
  ['sh', 'shell'],
  ['fans', 'shell'],
  ['fan', 'shell'],
  ['v st', 'v-stitch'],
  ['v sts', 'v-stitch'],
  ['vst', 'v-stitch'],
  ['vsts', 'v-stitch'],
  ['picots', 'picot'],
  ['picot', 'picot'],
  ['pic', 'picot'],
];

interface Found {
  form: StitchForm;
  base: BaseStitch | null;
  post: 'front' | 'back' | null;
  together: number;
  parts: number | null;
  beginning: boolean;
  half: boolean;
  decrease: boolean;
}

const PREFIXES: readonly (readonly [string, Partial<Pick<Found, 'post' | 'form'>>])[] = [
  ['front post', { post: 'front' }],
  ['back post', { post: 'back' }],
  ['front raised', { post: 'front' }],
  ['back raised', { post: 'back' }],
  ['raised front', { post: 'front' }],
  ['raised back', { post: 'back' }],
  ['fp', { post: 'front' }],
  ['bp', { post: 'back' }],
  ['rf', { post: 'front' }],
  ['rb', { post: 'back' }],
  ['inv', {}],
  ['standing', { form: 'standing' }],
  ['foundation', { form: 'foundation' }],
  ['ext', { form: 'extended' }],
  ['elongated', { form: 'extended' }],
  ['linked', { form: 'linked' }],
  ['rev', { form: 'reverse' }],
  ['crossed', { form: 'crossed' }],
  ['spike', { form: 'spike' }],
  ['long', { form: 'spike' }],
  ['surface', { form: 'surface' }],
  ['chainless beg', { form: 'standing' }],
  ['chainless', { form: 'standing' }],
  ['modified', {}],
  ['regular', {}],
];

function blank(): Found {
  return {
    form: 'plain',
    base: null,
    post: null,
    together: 1,
    parts: null,
    beginning: false,
    half: false,
    decrease: false,
  };
}

/** A ladder stitch or a glued composite at the position; `foreign` looks in the other terminology. */
function readBase(c: Cursor, found: Found, foreign: boolean): boolean {
  const bases = foreign ? c.lexicon.foreignBases : c.lexicon.bases;
  const runs = foreign ? c.lexicon.foreignRuns : c.lexicon.runs;
  const named = longest(c, bases, LONGEST_BASE);
  const run = longest(c, runs, 1);
  // "slip" alone and "double" alone are words of other phrases too: take them only as stitches of work.
  if (named && (!run || named.length >= run.length)) {
    found.base = named.value;
    c.at += named.length;
    return true;
  }
  if (run) {
    found.base = run.value.base;
    if (run.value.form) found.form = run.value.form;
    if (run.value.post) found.post = run.value.post;
    c.at += run.length;
    return true;
  }
  return false;
}

/** "-" between parts of one word: "sc-inc", "dc-cluster". */
function eatHyphen(c: Cursor): void {
  if (c.word() === '-' && !c.peek()!.gap && c.peek(1) && !c.peek(1)!.gap) c.at++;
}

/** "2tog", "2 tog", "-2-tog", "two together", "tog" (the number stood before): endings of a decrease. */
function readTogether(c: Cursor, found: Found): boolean {
  return (
    c.attempt(() => {
      eatHyphen(c);
      if (c.eat('tog') && found.together > 1) return true;
      const token = c.peek();
      const value = token?.kind === 'number' ? token.value : token ? numberWord(token.word) : null;
      if (value === null || value === undefined || !Number.isInteger(value)) return null;
      c.at++;
      eatHyphen(c);
      c.eatAny(['sts', 'st']);
      if (!c.eat('tog')) return null;
      found.together = Math.min(value, 1000);
      return true;
    }) === true
  );
}

/** "dc/fp", "dc/rf", "tr front post", "rtr/f". */
function readPostSuffix(c: Cursor, found: Found, raised: boolean): void {
  c.attempt(() => {
    if (c.word() === '/') {
      c.at++;
      if (c.eatAny(['fp', 'rf']) || (raised && c.eat('f'))) found.post = 'front';
      else if (c.eatAny(['bp', 'rb']) || (raised && c.eat('b'))) found.post = 'back';
      else return null;
      if (found.form === 'reverse') found.form = 'plain';
      return true;
    }
    if (c.eatAny(['front post', 'fp'])) found.post = 'front';
    else if (c.eatAny(['back post', 'bp'])) found.post = 'back';
    else if (raised && c.eat('front')) found.post = 'front';
    else if (raised && c.eat('back')) found.post = 'back';
    else return null;
    if (found.form === 'reverse') found.form = 'plain';
    return true;
  });
}

/** Endings behind a ladder stitch. */
function readSuffixes(c: Cursor, found: Found, raised: boolean): void {
  readPostSuffix(c, found, raised);
  readTogether(c, found);
  c.attempt(() => {
    const before = c.at;
    eatHyphen(c);
    if (c.eatAny(['dec', 'decs'])) {
      if (found.together === 1) {
        found.form = 'dec';
        found.together = 2;
      }
      return true;
    }
    if (c.eatAny(['inc', 'incs'])) {
      found.form = 'inc';
      return true;
    }
    for (const [phrase, form] of MADE) {
      if (c.eat(phrase)) {
        found.form = form;
        return true;
      }
    }
    c.at = before;
    return null;
  });
  if (found.form === 'plain' && c.word() === 'st' && c.tokens[c.at - 1]?.word !== 'st') {
    // "the dc st": the noun adds nothing, unless a place follows it ("st in next").
    if (!c.is('st in')) c.at++;
  }
}

/** Stitches with a name and no ladder word: inc, dec, shell, picot, crab st. */
function readMade(c: Cursor, found: Found): boolean {
  if (c.eatAny(['crab st', 'crab'])) {
    found.form = 'reverse';
    found.base = 't1';
    return true;
  }
  if (c.eatAny(['x sts', 'x st', 'crossed sts', 'crossed st', 'cross sts', 'cross st'])) {
    found.form = 'crossed';
    return true;
  }
  if (c.eatAny(['spike st', 'spike'])) {
    found.form = 'spike';
    found.base = 't1';
    return true;
  }
  if (c.eatAny(['invdec', 'dec', 'decs', 'sdec', 'scdec'])) {
    found.form = 'dec';
    found.together = 2;
    return true;
  }
  if (c.eatAny(['inc', 'incs'])) {
    found.form = 'inc';
    return true;
  }
  for (const [phrase, form] of MADE) {
    if (c.eat(phrase)) {
      found.form = form;
      return true;
    }
  }
  return false;
}

/** "cluster of 3 dc", "shell of 5 tr": what it is made of, behind it. */
function readMadeOf(c: Cursor, found: Found): void {
  if (found.base !== null || !['cluster', 'bobble', 'popcorn', 'puff', 'shell'].includes(found.form)) return;
  c.attempt(() => {
    if (!c.eat('of')) return null;
    const token = c.peek();
    const value = token?.kind === 'number' ? token.value : null;
    if (value === null) return null;
    c.at++;
    const inner = blank();
    if (!readBase(c, inner, false) || inner.post) return null;
    found.base = inner.base;
    found.parts = value;
    return true;
  });
}

/** "3-dc", "5 dc" before a cluster or shell; "3-in-1". Leaves the position behind the number. */
function readParts(c: Cursor): number | null {
  return c.attempt(() => {
    const token = c.peek();
    if (token?.kind !== 'number' || !Number.isInteger(token.value)) return null;
    c.at++;
    if (c.word() !== '-' || c.peek()!.gap) return null;
    c.at++;
    if (c.is('in - 1') || c.word() === 'in') {
      c.at++;
      if (c.word() === '-') c.at++;
      if (c.peek()?.kind !== 'number') return null;
      c.at++;
    } else c.eat('st');
    return Math.min(token.value, 1000);
  });
}

function readTrade(c: Cursor, found: Found): boolean {
  const start = c.at;
  let raised = false;
  const parts = readParts(c);
  for (let steps = 0; steps < 6; steps++) {
    if (longest(c, c.lexicon.bases, LONGEST_BASE)) break;
    if (c.is('half') && !longest(c, c.lexicon.foreignBases, LONGEST_BASE)) {
      c.at++;
      found.half = true;
      eatHyphen(c);
      continue;
    }
    if (c.word() === 'beg') {
      c.at++;
      found.beginning = true;
      eatHyphen(c);
      continue;
    }
    if (c.word() === 'raised' && !c.isAny(['raised front', 'raised back'])) {
      c.at++;
      raised = true;
      continue;
    }
    const prefix = PREFIXES.find(([phrase]) => c.is(phrase));
    if (!prefix || (prefix[0] === 'spike' && c.is('spike st'))) break;
    c.eat(prefix[0]);
    Object.assign(found, prefix[1]);
    if (c.word() === '.' && !c.peek()!.gap && prefix[0].length <= 4) c.at++;
    eatHyphen(c);
  }
  const stacked = c.is('stacked') ? (c.at++, true) : false;
  const baseAt = c.at;
  let foreign = false;
  let has = readBase(c, found, false);
  if (!has && c.lexicon.foreignBases !== c.lexicon.bases) {
    has = readBase(c, found, true);
    foreign = has;
  }
  if (has) {
    if (raised && found.post === null && !c.isAny(['front', 'back', '/'])) found.post = 'front';
    const run = c.tokens[c.at - 1]!.word;
    readSuffixes(c, found, raised || (run.startsWith('r') && run.length > 2));
  } else if (found.form === 'spike') {
    found.base = 't1';
    has = c.eat('st');
  } else has = readMade(c, found);
  if (stacked && found.base !== 't1') has = false;
  if (!has) {
    c.at = start;
    return false;
  }
  if (stacked) {
    // Two single crochets one on the other stand for a chain of 3 at the edge.
    found.base = 't3';
    found.form = 'standing';
  }
  if (foreign) {
    const span = { from: c.tokens[baseAt]!.from, to: c.tokens[c.at - 1]!.to };
    c.fact('other-terms', span, { words: c.words(span), taken: found.base, terms: c.lexicon.terms });
  }
  readMadeOf(c, found);
  if (parts !== null) {
    if (found.form === 'plain' && found.together === 1) {
      // "3-dc" with nothing after it names no stitch.
      c.at = start;
      return false;
    }
    found.parts = parts;
  }
  return true;
}

/** The stitch named at the position, or null (position and facts unchanged). */
export function readStitch(c: Cursor): StitchRef | null {
  return c.attempt(() => {
    const start = c.at;
    const found = blank();
    const own = c.attempt(() => {
      for (let steps = 0; steps < 2; steps++) {
        const name = ownName(c);
        if (name) {
          c.at += name.length;
          return name.name;
        }
        if (c.word() === 'beg') found.beginning = true;
        else if (c.word() === 'half') found.half = true;
        else return null;
        c.at++;
        eatHyphen(c);
      }
      const name = ownName(c);
      if (!name) return null;
      c.at += name.length;
      return name.name;
    });
    const alias = own === null ? undefined : c.lexicon.aliases.get(own);
    if (alias) return { ...alias, ...c.span(start) };
    if (own !== null) {
      if (!own.endsWith('st') && c.word() === 'st' && !c.is('st in')) c.at++;
      return {
        form: 'special',
        base: null,
        post: null,
        together: 1,
        parts: null,
        special: own,
        beginning: found.beginning,
        half: found.half,
        ...c.span(start),
      };
    }
    const trade = blank();
    if (!readTrade(c, trade)) return null;
    return {
      form: trade.form,
      base: trade.base,
      post: trade.post,
      together: trade.together,
      parts: trade.parts,
      special: null,
      beginning: trade.beginning,
      half: trade.half,
      ...c.span(start),
    };
  });
}

/** Nearest known word to a mistyped one, one edit away, or null. */
export function suggestion(word: string, lexicon: Lexicon): string | null {
  if (word.length < 2 || word.length > 24) return null;
  const single = word.replace(/(.)\1/u, '$1');
  const known = [...lexicon.bases.keys(), ...PLAIN_WORDS, ...lexicon.names, ...lexicon.runs.keys()];
  // A letter typed twice is the likeliest slip; then two letters exchanged; then any one letter.
  if (single !== word && known.includes(single)) return single;
  const near = known.filter((candidate) => oneEdit(word, candidate));
  return (
    near.find((candidate) => candidate.length === word.length && sameLetters(candidate, word)) ??
    near[0] ??
    null
  );
}

function sameLetters(a: string, b: string): boolean {
  return [...a].sort().join('') === [...b].sort().join('');
}

const PLAIN_WORDS = [
  'ch',
  'sl st',
  'inc',
  'dec',
  'next',
  'each',
  'rep',
  'turn',
  'join',
  'across',
  'around',
  'skip',
  'same',
  'last',
  'first',
  'cluster',
  'shell',
  'picot',
  'bobble',
  'popcorn',
  'puff',
  'single',
  'double',
  'treble',
  'crochet',
  'times',
  'ring',
];

/** True when one letter more, less, other, or two neighbours exchanged makes `a` into `b`. */
function oneEdit(a: string, b: string): boolean {
  if (a === b || Math.abs(a.length - b.length) > 1) return false;
  let head = 0;
  while (head < a.length && head < b.length && a[head] === b[head]) head++;
  let tail = 0;
  while (
    tail < a.length - head &&
    tail < b.length - head &&
    a[a.length - 1 - tail] === b[b.length - 1 - tail]
  ) {
    tail++;
  }
  const left = a.length - head - tail;
  const right = b.length - head - tail;
  if (left <= 1 && right <= 1) return true;
  return left === 2 && right === 2 && a[head] === b[head + 1] && a[head + 1] === b[head];
}
