/**
 * The words of one terminology, those of the other, and the names that the pattern defines: tables for
 * `words`, which does the reading.
 */
import type { BaseStitch, Terms } from '../trade/stitches.ts';
import { canonical, lex } from './lexer.ts';
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
    // Herringbone: another way through the same loops.
    add(`hb${abbr}`, { base });
    if (base === 't2') add(`h${abbr}`, { base });
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

export const LONGEST_BASE = 3;

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
