/**
 * The place where reading stands: tokens, a position, an end, and the facts gathered on the way. All the
 * readers of this folder take one. It holds no grammar. Trying a reading and going back is `attempt`.
 */
import type { Fact, FactValue, Span } from '../finding.ts';
import type { Terms } from '../trade/stitches.ts';
import { canonical, type Token } from './lexer.ts';
import type { Lexicon } from './lexicon.ts';
import type { CountsAs, Item, SizeFilter, StatedCount } from './tree.ts';

/** What the reader must be told about the document. */
export interface ReadOptions {
  readonly terms: Terms;
  /** Normalised names of the specials that the pattern defines (see `normaliseName`), abbreviations too. */
  readonly names?: readonly string[];
  /** Number of sizes when known; null or absent: unknown. */
  readonly sizes?: number | null;
  /** What the text calls its sizes, where it says so. */
  readonly labels?: readonly string[];
  /** True when U+FFFC stands for a figure. Without it the sign is read the same way. */
  readonly figures?: boolean;
}

const phrases = new Map<string, readonly string[]>();

function wordsOf(phrase: string): readonly string[] {
  let words = phrases.get(phrase);
  if (!words) {
    words = phrase.split(' ').map((w) => (w === '#' || w === '#th' ? w : canonical(w)));
    phrases.set(phrase, words);
  }
  return words;
}

/** A list of phrases, and those of them that begin with each word, in the list's order. */
interface Phrases {
  readonly list: readonly string[];
  readonly byFirst: ReadonlyMap<string, readonly string[]>;
}

/** Lists by their first phrase: most are written where they are used, and so come as a new array each time. */
let lists = new Map<string, Phrases[]>();
let listed = 0;

/** More lists than the reader has; past it the memory starts afresh. */
const LISTS = 5000;

function phrasesOf(list: readonly string[]): Phrases {
  const alike = lists.get(list[0]!);
  if (alike !== undefined) {
    for (const known of alike) if (sameList(known.list, list)) return known;
  }
  const byFirst = new Map<string, string[]>();
  for (const phrase of list) {
    const first = wordsOf(phrase)[0] ?? '';
    const same = byFirst.get(first);
    if (same) same.push(phrase);
    else byFirst.set(first, [phrase]);
  }
  if (listed >= LISTS) {
    lists = new Map();
    listed = 0;
  }
  const made: Phrases = { list, byFirst };
  const others = lists.get(list[0]!);
  if (others === undefined) lists.set(list[0]!, [made]);
  else others.push(made);
  listed += 1;
  return made;
}

function sameList(a: readonly string[], b: readonly string[]): boolean {
  if (a === b) return true;
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

/** Written out: a full stop behind them ends a sentence. */
const WHOLE = new Set(
  'across along around end row rows round rounds over turn join work each next same first last ring only back front stitch stitches chain chains loop loops space spaces'.split(
    ' ',
  ),
);

/** Does the full stop shorten the word before it ("Rep. from"), rather than end a sentence ("across. Ch 1")? */
function shortens(before: Token | undefined, stop: Token, after: Token | undefined): boolean {
  if (before === undefined || stop.gap || WHOLE.has(before.text.toLowerCase())) return false;
  const capital = (token: Token | undefined) => /^\p{Lu}/u.test(token?.text ?? '');
  return capital(before) || !capital(after);
}

/** The phrases of a list that begin with a word: most words begin none. */
function beginningWith(list: readonly string[], word: string): readonly string[] {
  return list.length < 2 ? list : (phrasesOf(list).byFirst.get(word) ?? NO_PHRASES);
}

const NO_PHRASES: readonly string[] = [];

export const OPENING: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}' };

export class Cursor {
  at = 0;
  end: number;
  depth = 0;
  /** Sizes of the whole document, also in a row for some of them. */
  readonly allSizes: number | null;
  /** Readings of items under way inside one another. */
  nesting = 0;
  private named: Set<string> | null = null;
  /** True in a row labelled as a round. */
  round = false;
  /** Sizes that the label names: "Row 2 (sizes M and L only):". */
  only: SizeFilter | null = null;
  /** True when the row writes bare numbers for stitches; null = not looked at yet. */
  short: boolean | null = null;
  /** True in the body of a definition. */
  definition = false;
  facts: Fact[] = [];
  /** Counts stated so far in this row. */
  readonly counts: StatedCount[] = [];
  /** What brackets said of a chain or of skipped chains: the reader of items attaches it. */
  readonly said: CountsAs[] = [];
  /** Items between marks, by sign, for a later "rep from * to *". */
  readonly marked = new Map<string, readonly Item[]>();
  /** Index of the matching bracket for each bracket token, or -1. */
  readonly partner: Int32Array;

  constructor(
    readonly text: string,
    readonly tokens: readonly Token[],
    readonly lexicon: Lexicon,
    /** Sizes that lists of numbers should have; null = not known. */
    public sizes: number | null,
    /** What the text calls its sizes: "Child and Adult only". */
    readonly labels: readonly string[] = [],
  ) {
    this.end = tokens.length;
    this.allSizes = sizes;
    this.partner = partners(tokens);
  }

  peek(ahead = 0): Token | undefined {
    const i = this.at + ahead;
    return i < this.end ? this.tokens[i] : undefined;
  }

  /** Canonical word at the position, '' past the end. */
  word(ahead = 0): string {
    return this.peek(ahead)?.word ?? '';
  }

  get done(): boolean {
    return this.at >= this.end;
  }

  /** Length in tokens of `phrase` here (glued hyphens between its words are passed), or 0. */
  measure(phrase: string, ahead = 0): number {
    const words = wordsOf(phrase);
    let i = ahead;
    for (let k = 0; k < words.length; k++) {
      let token = this.peek(i);
      if (k > 0 && token?.word === '-' && words[k] !== '-') token = this.peek(++i);
      else if (
        k > 0 &&
        token?.word === '.' &&
        words[k] !== '.' &&
        shortens(this.peek(i - 1), token, this.peek(i + 1))
      )
        token = this.peek(++i);
      if (!token || token.word !== words[k]) return 0;
      i++;
    }
    return i - ahead;
  }

  is(phrase: string, ahead = 0): boolean {
    return this.measure(phrase, ahead) > 0;
  }

  isAny(list: readonly string[], ahead = 0): boolean {
    return beginningWith(list, this.word(ahead)).some((phrase) => this.is(phrase, ahead));
  }

  eat(phrase: string): boolean {
    const n = this.measure(phrase);
    this.at += n;
    return n > 0;
  }

  /** Takes the first phrase of the list that stands here (put longer ones first). */
  eatAny(list: readonly string[]): string | null {
    for (const phrase of beginningWith(list, this.word())) if (this.eat(phrase)) return phrase;
    return null;
  }

  /** Takes the first of the phrases if one stands here, and goes on: for words that add nothing. */
  pass(...list: readonly string[]): this {
    this.eatAny(list);
    return this;
  }

  /** Runs `read`; when it yields null, position and facts are as before. */
  attempt<T>(read: () => T | null): T | null {
    const at = this.at;
    const facts = this.facts.length;
    const counts = this.counts.length;
    const said = this.said.length;
    const result = read();
    if (result === null) {
      this.at = at;
      // Setting a length, even to what it is, costs more than most trials.
      if (this.facts.length !== facts) this.facts.length = facts;
      if (this.counts.length !== counts) this.counts.length = counts;
      if (this.said.length !== said) this.said.length = said;
    }
    return result;
  }

  /** Reads with another end, then puts the end back. */
  within<T>(end: number, read: () => T): T {
    const old = this.end;
    this.end = end;
    const result = read();
    this.end = old;
    return result;
  }

  /** Span from token `start` to the last token taken. */
  span(start: number): Span {
    const first = this.tokens[start];
    const last = this.tokens[this.at - 1];
    if (!first) {
      const edge = this.text.length;
      return { from: edge, to: edge };
    }
    return { from: first.from, to: last && this.at > start ? last.to : first.from };
  }

  /** Empty span where the work stands, for a part that the words leave out. */
  here(): Span {
    const before = this.tokens[this.at - 1];
    const next = this.tokens[this.at];
    const edge = before?.to ?? next?.from ?? 0;
    return { from: edge, to: edge };
  }

  /** True when a "from" somewhere names this sign, so that it marks a spot. */
  isNamedMark(sign: string): boolean {
    if (!this.named) {
      this.named = new Set();
      for (let i = 1; i < this.tokens.length; i++) {
        if (this.tokens[i - 1]!.word === 'from' && this.tokens[i]!.kind === 'sign')
          this.named.add(this.tokens[i]!.word);
      }
    }
    return this.named.has(sign);
  }

  fact(code: string, span: Span, data: Record<string, FactValue> = {}): void {
    this.facts.push({ code, from: span.from, to: span.to, data });
  }

  words(span: Span): string {
    return this.text.slice(span.from, span.to);
  }
}

/** Pairs brackets: each with the nearest of its own sort, and of what is left, one that closes another sort. */
function partners(tokens: readonly Token[]): Int32Array {
  const partner = new Int32Array(tokens.length).fill(-1);
  const open: number[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const sign = tokens[i]!.word;
    if (sign in OPENING && tokens[i]!.kind === 'sign') open.push(i);
    else if (CLOSING.has(sign)) {
      for (let k = open.length - 1; k >= 0 && k >= open.length - 8; k--) {
        if (OPENING[tokens[open[k]!]!.word] === sign) {
          partner[i] = open[k]!;
          partner[open[k]!] = i;
          open.length = k;
          break;
        }
      }
    }
  }
  pairMismatched(tokens, partner);
  return partner;
}

/** "[sc in next 3 sts, inc) 6 times": what one slip of the pen closed with another sort. */
function pairMismatched(tokens: readonly Token[], partner: Int32Array): void {
  let waiting = -1;
  for (let i = 0; i < tokens.length; i++) {
    const { word, kind } = tokens[i]!;
    const to = partner[i]!;
    if (kind === 'sign' && word in OPENING) {
      if (to < 0) waiting = i;
      else i = to;
    } else if (CLOSING.has(word) && to < 0 && waiting >= 0) {
      partner[i] = waiting;
      partner[waiting] = i;
      waiting = -1;
    }
  }
}

const CLOSING = new Set(Object.values(OPENING));
