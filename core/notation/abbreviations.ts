/**
 * Which abbreviations a text uses, and with which letters, so that the list at the front of a pattern can be
 * made from the very words that are printed. It explains none of them (see trade/abbreviations).
 */
import { tradeWords, type Used } from '../trade/abbreviations.ts';
import type { Terms } from '../trade/stitches.ts';
import { stitchAbbreviation } from '../trade/terms.ts';
import {
  gapAfter,
  keyOf,
  phraseKey,
  reachFrom,
  type TermText,
  type TermToken,
  termText,
} from './term-tokens.ts';
import { cutRun } from './term-words.ts';

/** An id for what stands glued before a base stitch ("fp", "e", "blo"); null when it adds nothing to name. */
const LED: Readonly<Record<string, string>> = {
  fp: 'fp',
  bp: 'bp',
  rf: 'fp',
  rb: 'bp',
  e: 'ext',
  ex: 'ext',
  ext: 'ext',
  f: 'fnd',
  fnd: 'fnd',
  fdn: 'fnd',
  l: 'lnk',
  lk: 'lnk',
  lnk: 'lnk',
  r: 'rev',
  rev: 'rev',
  x: 'crs',
  cr: 'crs',
  sp: 'spike',
  std: 'standing',
};

/** Glued before or behind a base stitch, these are words of their own: "dcblo" is "dc" and "BLO". */
const APART: Readonly<Record<string, string>> = {
  blo: 'blo',
  bl: 'blo',
  flo: 'flo',
  fl: 'flo',
  tbl: 'tbl',
  inc: 'inc',
  incs: 'inc',
  dec: 'dec',
  decs: 'dec',
  cl: 'cluster',
  cls: 'cluster',
  bo: 'bobble',
  pc: 'popcorn',
  sh: 'shell',
  sp: 'sp',
  sps: 'sp',
};

interface WordForm {
  readonly id: string;
  readonly canonical: string;
  readonly only: 'upper' | 'row' | null;
}

/** Every way to write a trade word, by its tokens in lower case ("inv dec", "v st"), singular and plural. */
const FORMS: ReadonlyMap<string, WordForm> = new Map(
  Object.entries(tradeWords).flatMap(([id, word]) =>
    [word.abbr, ...(word.also ?? [])].flatMap((abbr) => {
      const form: WordForm = { id, canonical: abbr, only: word.only ?? null };
      const key = phraseKey(abbr);
      return [[key, form] as const, [`${key}s`, form] as const];
    }),
  ),
);

const SLIP: ReadonlyMap<string, WordForm> = new Map(
  ['sl st', 'ss', 's st'].flatMap((abbr) => {
    const form: WordForm = { id: 'slip', canonical: abbr, only: null };
    return [[abbr, form] as const, [`${abbr}s`, form] as const];
  }),
);

/** The letters to list: as written, but the usual ones when only a sentence's capital differs. */
function letters(written: string, usual: string): string {
  const sentence = /^\p{Lu}[^\p{Lu}]*$/u.test(written) && written.length > 1;
  if (!sentence) return written;
  return written.toLowerCase() === usual.toLowerCase() ? usual : written.toLowerCase();
}

/**
 * The abbreviations of the trade and of the pattern (`own`) that texts use, each id with each spelling once,
 * in the order they are met. Total; linear in the texts.
 */
export function abbreviationsIn(
  texts: Iterable<string>,
  terms: Terms,
  own: readonly string[] = [],
): readonly Used[] {
  const found = new Map<string, Used>();
  const add = (id: string, as: string): void => {
    const key = `${id}\n${as}`;
    if (!found.has(key)) found.set(key, { id, as });
  };
  const mine = new Map(own.map((abbr) => [phraseKey(abbr), abbr]));
  mine.delete('');
  const most = Math.max(2, ...[...mine.keys()].map((key) => key.split(' ').length));
  for (const text of texts) {
    const source = termText(text, 'mixed');
    for (let at = 0; at < source.tokens.length; ) {
      at += source.tokens[at]!.address ? 1 : readAt(source, at, terms, mine, most, add);
    }
  }
  return [...found.values()];
}

/** Reads one abbreviation at a token, reports it, and says how many tokens it took (one when there is none). */
function readAt(
  source: TermText,
  at: number,
  terms: Terms,
  mine: ReadonlyMap<string, string>,
  most: number,
  add: (id: string, as: string) => void,
): number {
  for (let count = reachFrom(source, at, most); count > 0; count--) {
    const tokens = source.tokens.slice(at, at + count);
    const key = keyOf(tokens);
    const own = mine.get(key) ?? (key.endsWith('s') ? mine.get(key.slice(0, -1)) : undefined);
    if (own !== undefined) {
      add(own, own);
      return count;
    }
    const form = FORMS.get(key) ?? SLIP.get(key);
    if (form && fits(source, tokens, form)) {
      const written = source.text.slice(tokens[0]!.from, tokens.at(-1)!.to);
      const single =
        written.toLowerCase() === `${form.canonical.toLowerCase()}s` ? written.slice(0, -1) : written;
      add(form.id, letters(single, form.canonical));
      return count;
    }
  }
  return runAt(source, at, terms, add);
}

function fits(source: TermText, tokens: readonly TermToken[], form: WordForm): boolean {
  if (form.only === 'upper')
    return tokens.every(
      (token) => token.text.replace(/s$/, '') === token.text.replace(/s$/, '').toUpperCase(),
    );
  return form.only !== 'row' || source.lines[tokens[0]!.line]!.row;
}

/** A run with a base stitch: "dc", "FPdc", "dc2tog", "scblo". */
function runAt(source: TermText, at: number, terms: Terms, add: (id: string, as: string) => void): number {
  const token = source.tokens[at]!;
  const run = token.kind === 'word' ? cutRun(token.word, terms) : null;
  if (!run) return 1;
  const bare = token.text.slice(run.before.length, run.before.length + run.written.length);
  const together = togetherAt(source, at);
  if (together > 0 && run.before === '' && run.after === '') {
    const written = source.text.slice(token.from, source.tokens[at + 2]!.to);
    const id = `tog${together}.${run.base}`;
    add(id, letters(written, stitchAbbreviation(id, terms)));
    return 3;
  }
  for (const piece of [run.before, run.after]) {
    if (Object.hasOwn(APART, piece) && !(piece === 'sp' && piece === run.before)) {
      add(APART[piece]!, tradeWords[APART[piece]!]!.abbr);
    }
  }
  const post = run.before === 'r' && /^[fb]$/.test(run.after) ? run.after : run.after.slice(0, 2);
  const prefix = /^(?:f|b|fp|bp|rf|rb)$/.test(post)
    ? /f/.test(post)
      ? 'fp'
      : 'bp'
    : Object.hasOwn(LED, run.before)
      ? LED[run.before]!
      : null;
  const plural = run.after === 's' ? token.text.slice(0, -1) : token.text;
  const id = prefix ? `${prefix}.${run.base}` : run.base;
  add(id, letters(prefix ? plural : bare, stitchAbbreviation(id, terms)));
  return 1;
}

/** How many stitches "dc2tog" or "dc 2 tog" works together; 0 when it is none. */
function togetherAt(source: TermText, at: number): number {
  const [number, word] = [source.tokens[at + 1], source.tokens[at + 2]];
  if (number?.kind !== 'number' || word?.word !== 'tog') return 0;
  const glued = (index: number) => /^(?:|-| )$/.test(gapAfter(source, index));
  return glued(at) && glued(at + 1) && /^\d{1,3}$/.test(number.text) ? Number(number.text) : 0;
}
