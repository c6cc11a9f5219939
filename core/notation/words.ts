/**
 * Which stitch of the trade a word or phrase names, in US or in UK terms. Recognition is compositional:
 * beginnings (front post, extended, half …), a stitch of the ladder, endings (2tog, dec, cluster …), glued
 * or apart, in any capitals and number. Nothing here reads places or amounts around the stitch.
 */
import type { BaseStitch } from '../trade/stitches.ts';
import type { Cursor } from './cursor.ts';
import { LONGEST_BASE, singular } from './lexicon.ts';
import { numberWord } from './numbers.ts';
import type { StitchForm, StitchRef } from './tree.ts';

/** Longest phrase of `map` at the position, hyphens and abbreviation stops passed: its value and length. */
export function longest<T>(
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
  ['herringbone', {}],
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
  c.attempt(() => {
    // "dc2inc": two in one.
    const token = c.peek();
    if (token?.kind !== 'number' || token.gap || c.word(1) !== 'inc' || c.peek(1)!.gap) return null;
    c.at += 2;
    found.form = 'inc';
    found.parts = token.value;
    return true;
  });
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

const TUNISIAN = [
  'simple sts',
  'simple st',
  'simple',
  'knit sts',
  'knit st',
  'knit',
  'purl sts',
  'purl st',
  'purl',
  'rev sts',
  'rev st',
  'rev',
  'full sts',
  'full st',
  'full',
  'ext sts',
  'ext st',
  'sts',
  'st',
];
const TUNISIAN_SHORT = 'tss tks tps trs tfs tes ttw'.split(' ');

/** "tss", "Tunisian knit stitch", "tks2tog". */
function readTunisianName(c: Cursor, found: Found): boolean {
  const short = TUNISIAN_SHORT.includes(c.word());
  if (short) c.at++;
  else if (!c.attempt(() => (c.eat('tunisian') ? c.eatAny(TUNISIAN) : null))) return false;
  found.form = 'tunisian';
  found.base = 't1';
  readTogether(c, found);
  return true;
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
  if (readTunisianName(c, found)) return true;
  if (c.eatAny(['waistcoat sts', 'waistcoat st', 'split sc', 'ksc'])) {
    // Between the legs of the stitch below, and so one into each.
    found.base = 't1';
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
  const stacked = c.eat('stacked');
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

/** "double crochet (dc) in next st", "invisible decrease (invdec)": the bracket names the same stitch once more. */
function eatItsAbbreviation(c: Cursor, start: number, said: Found): void {
  const close = c.word() === '(' ? c.partner[c.at]! : -1;
  if (close < 0 || close >= c.end || close - c.at > 4) return;
  // "sc (sc) twice" is work: an abbreviation is shorter than the name.
  const { from, to } = c.span(start);
  if (to - from <= c.tokens[close]!.from - c.tokens[c.at]!.to) return;
  c.attempt(() => {
    c.at++;
    const again = blank();
    if (!c.within(close, () => readTrade(c, again)) || c.at !== close) return null;
    const same = again.base === said.base && again.form === said.form && again.post === said.post;
    if (!same || again.together !== said.together || again.parts !== said.parts) return null;
    c.at = close + 1;
    return true;
  });
}

/** "*corner in next ch-2 sp", "loop st across": stitches of the pattern's own, though it may not tell which. */
function readUndefined(c: Cursor): string | null {
  if (c.eatAny(['loop sts', 'loop st'])) return 'loop st';
  const before = c.tokens[c.at - 1];
  if (c.word() !== 'corner' || (before?.kind === 'word' && before.word !== 'work')) return null;
  if (!c.isAny(['in next', 'in each', 'in first', 'in last', 'in same', 'in ch', 'in any', 'in corner'], 1))
    return null;
  c.at++;
  return 'corner';
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
    const unknown = readUndefined(c);
    if (unknown === null && !readTrade(c, trade)) return null;
    eatItsAbbreviation(c, start, trade);
    return {
      form: unknown === null ? trade.form : 'special',
      base: trade.base,
      post: trade.post,
      together: trade.together,
      parts: trade.parts,
      special: unknown,
      beginning: trade.beginning,
      half: trade.half,
      ...c.span(start),
    };
  });
}
