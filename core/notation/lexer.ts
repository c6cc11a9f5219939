/**
 * Cuts a plain text into words, numbers, ordinals, figures and signs, each with its place. Spellings that
 * mean one thing ("stitch", "st"; "centre", "center"; "miss", "skip") get one canonical word, so that the
 * rest of the reader meets each idea once. It knows no grammar, drops nothing and never fails.
 */
import type { Span } from '../finding.ts';
import { readNumeral } from './numerals.ts';

export type TokenKind = 'word' | 'number' | 'ordinal' | 'figure' | 'sign';

export interface Token extends Span {
  readonly kind: TokenKind;
  /** As written. */
  readonly text: string;
  /** Canonical word; for other kinds the sign itself, '#' (number), '#th' (ordinal) or '#fig' (figure). */
  readonly word: string;
  /** Number or ordinal value, index of a figure; 0 otherwise. */
  readonly value: number;
  /** True when white space (or the start of the text) stands before it. */
  readonly gap: boolean;
  /** Physical line, from 0. */
  readonly line: number;
}

const SAME: Readonly<Record<string, string>> = {
  stitch: 'st',
  stitches: 'sts',
  stich: 'st',
  chain: 'ch',
  chains: 'chs',
  space: 'sp',
  spaces: 'sps',
  loop: 'lp',
  loops: 'lps',
  arch: 'lp',
  arches: 'lps',
  arc: 'lp',
  arcs: 'lps',
  repeat: 'rep',
  repeating: 'rep',
  repeats: 'reps',
  round: 'rnd',
  rounds: 'rnds',
  rd: 'rnd',
  rds: 'rnds',
  beginning: 'beg',
  begin: 'beg',
  starting: 'beg',
  initial: 'beg',
  together: 'tog',
  following: 'foll',
  follow: 'foll',
  remaining: 'rem',
  remain: 'rem',
  remains: 'rem',
  previous: 'prev',
  preceding: 'prev',
  increase: 'inc',
  increases: 'incs',
  decrease: 'dec',
  decreases: 'decs',
  skip: 'sk',
  skipping: 'sk',
  miss: 'sk',
  missing: 'sk',
  omit: 'omit',
  omitting: 'omit',
  skipped: 'skipped',
  missed: 'skipped',
  skpd: 'skipped',
  ea: 'each',
  continue: 'cont',
  alternate: 'alt',
  opp: 'opposite',
  pattern: 'patt',
  pat: 'patt',
  into: 'in',
  inside: 'in',
  onto: 'on',
  upon: 'on',
  centre: 'center',
  middle: 'center',
  colour: 'color',
  colours: 'colors',
  crochets: 'crochet',
  doubles: 'double',
  trebles: 'treble',
  tch: 'tch',
  hk: 'hook',
  ending: 'end',
  ends: 'ends',
  clusters: 'cls',
  cluster: 'cl',
  clus: 'cl',
  beg: 'beg',
  acr: 'across',
  btw: 'between',
  bet: 'between',
  btwn: 'between',
  rows: 'rows',
  leaving: 'leave',
  working: 'working',
  joining: 'join',
  decreasing: 'dec',
  increasing: 'inc',
  placing: 'place',
  joined: 'joined',
  attach: 'attach',
  rejoin: 'rejoin',
  til: 'until',
  till: 'until',
  tbl: 'blo',
  bl: 'blo',
  fl: 'flo',
  tfl: 'flo',
  cont: 'cont',
  invisible: 'inv',
  foundation: 'foundation',
  fdn: 'foundation',
  fnd: 'foundation',
  reverse: 'rev',
  extended: 'ext',
  crossed: 'crossed',
  crosses: 'crossed',
  twice: 'twice',
  ms: 'markers',
  mkr: 'marker',
  // Numbers written as words keep their word; numbers.ts knows them.
};

/** Canonical form of one written word. */
export function canonical(written: string): string {
  const low = written
    .toLowerCase()
    .replaceAll('’', "'")
    .replace(/\p{Cf}/gu, '');
  return Object.hasOwn(SAME, low) ? SAME[low]! : low;
}

// Invisible signs (a soft hyphen, a zero-width space) part nothing.
const SPACE = /(?:\s|\p{Cf})+/uy;
const ACRONYM = /(?:\p{L}\.){2,}(?!\p{L})/uy;
const WORD = /\p{L}(?:\p{L}|\p{M}|\p{Cf})*(?:['’](?:\p{L}|\p{M}|\p{Cf})+)*/uy;
/** Abbreviations that older houses write with a full stop, which ends no sentence. */
const STOPPED = new Set(
  'ch chs st sts sp sps lp lps sc dc tr htr hdc dtr trtr ss sl rep rnd rnds beg inc incs dec decs tog inv cl tch foll cont patt prev rem alt bet sk no'.split(
    ' ',
  ),
);
const LOOPED = /^(?:(sc|dc|hdc|htr|tr|dtr|ss)(blo|flo)|(blo?|flo?)(sc|hdc|htr|dc|tr))$/iu;
const GOES_ON = /\.(?=\s*(?:\p{Ll}|[,;:)\]]))/uy;
/** "w/", "w/ sl st". */
const WITH = /w\/(?![a-z]*\/)/iuy;
const PLURAL = /\(s\)/iy;
const ORDINAL = /(\d{1,9})(?:st|nd|rd|th)(?!\p{L})/iuy;
const NUMBER = /\d+(?:\.\d+)?/uy;
const FRACTIONS: Readonly<Record<string, number>> = { '½': 0.5, '¼': 0.25, '¾': 0.75 };
const SIGNS: Readonly<Record<string, string>> = {
  '–': '-',
  '—': '-',
  '‑': '-',
  '−': '-',
  '‐': '-',
  '×': 'x',
  '#': '♯',
  '：': ':',
  '；': ';',
  '，': ',',
  '、': ',',
  '。': '.',
  '（': '(',
  '）': ')',
  '［': '[',
  '］': ']',
  '【': '[',
  '】': ']',
  '＝': '=',
  '＋': '+',
  '－': '-',
  '～': '~',
  '〜': '~',
  '“': '"',
  '”': '"',
};
/** Signs that houses print where others have an asterisk. */
const STARS = /^[∗⁎＊★☆✶✱✲✻✽⋆✦✧]$/u;
const RUNS = new Set(['*', '†', '‡', '#', '^', '~', '+', '§', '.', '…']);

function match(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

/** "1st", "22nd", "13th": an ordinal only when the ending agrees with the number, so that "4st" stays 4 sts. */
function endingFits(written: string, value: number): boolean {
  const ending = written.slice(-2).toLowerCase();
  const teen = value % 100 > 10 && value % 100 < 14;
  const last = value % 10;
  if (ending === 'st') return last === 1 && !teen;
  return true;
}

/** All tokens of `text`, in order, covering every character that is not white space. */
export function lex(text: string): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  let gap = true;
  let line = 0;
  let figures = 0;
  const push = (kind: TokenKind, to: number, word: string, value: number): void => {
    tokens.push({ kind, text: text.slice(at, to), word, value, gap, line, from: at, to });
    at = to;
    gap = false;
  };
  while (at < text.length) {
    const blank = match(SPACE, text, at);
    if (blank) {
      for (const sign of blank[0]) if (sign === '\n') line++;
      at += blank[0].length;
      gap = true;
      continue;
    }
    const char = text[at]!;
    if (char === '\uFFFC') {
      push('figure', at + 1, '#fig', figures++);
      continue;
    }
    const ordinal = match(ORDINAL, text, at);
    if (ordinal && endingFits(ordinal[0], Number(ordinal[1]))) {
      push('ordinal', at + ordinal[0].length, '#th', Number(ordinal[1]));
      continue;
    }
    const number = match(NUMBER, text, at);
    if (number) {
      push('number', at + number[0].length, '#', Number(number[0]));
      continue;
    }
    if (Object.hasOwn(FRACTIONS, char)) {
      push('number', at + 1, '#', FRACTIONS[char]!);
      continue;
    }
    const acronym = match(ACRONYM, text, at);
    if (acronym) {
      // "d.c." is one word; its last full stop may also end the sentence and then belongs outside.
      const written = acronym[0].slice(0, -1);
      push('word', at + written.length, canonical(written.replaceAll('.', '')), 0);
      if (match(GOES_ON, text, at)) at++;
      continue;
    }
    const short = match(WITH, text, at);
    if (short) {
      push('word', at + short[0].length, 'with', 0);
      continue;
    }
    const numeral = readNumeral(text, at);
    if (numeral) {
      push(numeral.ordinal ? 'ordinal' : 'number', numeral.to, numeral.ordinal ? '#th' : '#', numeral.value);
      continue;
    }
    const word = match(WORD, text, at);
    if (word) {
      let to = at + word[0].length;
      let written = word[0];
      if (match(PLURAL, text, to)) {
        written += 's';
        to += 3;
      }
      const loop = LOOPED.exec(written);
      if (loop) {
        // "scblo": the stitch, and the loop it goes into.
        const first = loop[1] ?? loop[3]!;
        push('word', at + first.length, canonical(first), 0);
        push('word', to, canonical(loop[2] ?? loop[4]!), 0);
        continue;
      }
      push('word', to, canonical(written), 0);
      if (STOPPED.has(tokens.at(-1)!.word) && match(GOES_ON, text, at)) at++;
      continue;
    }
    const sign = String.fromCodePoint(text.codePointAt(at)!);
    let to = at + sign.length;
    const star = STARS.test(sign);
    if (star || RUNS.has(sign)) while (text.startsWith(sign, to)) to += sign.length;
    const written = text.slice(at, to);
    const meant = star ? '*'.repeat(written.length / sign.length) : (SIGNS[written] ?? written);
    push('sign', to, meant, 0);
  }
  return tokens;
}
