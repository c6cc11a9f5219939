/**
 * A text cut into words and numbers for the conversion of terms, with what stands between them, and each of
 * its lines judged to be a written row or prose. It recognises no term and changes nothing.
 */
import type { Span } from '../finding.ts';

/** A run of letters, or of digits (a figure's stand-in counts as a number). */
export interface TermToken extends Span {
  readonly kind: 'word' | 'number';
  readonly text: string;
  /** The text in lower case. */
  readonly word: string;
  /** Index of the line it stands on. */
  readonly line: number;
  /** Part of an address (web, mail), which is never converted. */
  readonly address: boolean;
}

export interface TermLine {
  readonly row: boolean;
  /** It names both markets, so it compares their terms. */
  readonly compares: boolean;
}

export interface TermText {
  readonly text: string;
  readonly tokens: readonly TermToken[];
  readonly lines: readonly TermLine[];
}

export type TextKind = 'row' | 'prose' | 'mixed';

const LABEL =
  /^[\s*•–—-]*(?:(?:next|foundation|set-?up|dec|inc|border|edging)\s+)?(?:rows?|rnds?|rounds?|r)\b\s*(?:\d|[:(.–—-]|\ufffc)|^\s*\d{1,3}(?:st|nd|rd|th)\s+(?:row|rnd|round)\b/i;

/** Words of which rows are made; two of them in three words or so make a row of an unlabelled line. */
const ROW_WORDS: ReadonlySet<string> = new Set(
  (
    'ch chs st sts sc hdc dc tr htr dtr trtr ss sp sps lp lps sl sk rep rnd rnds tog inc dec beg turn join ' +
    'next each across around blo flo tch yo yoh yrh fpdc bpdc fptr bptr pm rem foll fsc fdc esc edc shell cl'
  ).split(' '),
);

/** A market named for its terms, not for a hook's size ("US H-8"). */
const NO_HOOK = String.raw`(?!\s*(?:sizes?|nos?\.?|#|steel)?\s*[A-Z]?[-–/]?\s?\d)`;
const US = new RegExp(String.raw`\b(?:US|U\.S\.|USA|American)(?!\p{L})${NO_HOOK}`, 'u');
const UK = new RegExp(String.raw`\b(?:UK|U\.K\.|British)(?!\p{L})${NO_HOOK}`, 'u');

function isRow(line: string, words: readonly string[]): boolean {
  if (LABEL.test(line) || /\brep(?:eat)?\s+from\s+\*/i.test(line)) return true;
  const known = words.filter((word) => ROW_WORDS.has(word)).length;
  return known >= 2 && known * 3 >= words.length;
}

/** Cuts a text into tokens and judges its lines (`kind` "mixed"), or takes them all for rows or for prose. */
export function termText(text: string, kind: TextKind): TermText {
  const addresses = addressSpans(text);
  const tokens: TermToken[] = [];
  const lines: TermLine[] = [];
  let start = 0;
  let address = 0;
  for (const line of text.split('\n')) {
    const words: string[] = [];
    for (const match of line.matchAll(/\p{L}[\p{L}\p{M}]*|\p{N}+|\ufffc/gu)) {
      const from = start + match.index;
      const to = from + match[0].length;
      while (address < addresses.length && addresses[address]!.to <= from) address++;
      const inside = addresses[address] !== undefined && addresses[address]!.from <= from;
      const letters = /^\p{L}/u.test(match[0]);
      const word = match[0].toLowerCase();
      if (letters) words.push(word);
      tokens.push({
        kind: letters ? 'word' : 'number',
        text: match[0],
        word,
        from,
        to,
        line: lines.length,
        address: inside,
      });
    }
    lines.push({
      row: kind === 'mixed' ? isRow(line, words) : kind === 'row',
      compares: US.test(line) && UK.test(line),
    });
    start += line.length + 1;
  }
  return { text, tokens, lines };
}

/** Stretches without a space that hold an address. */
function addressSpans(text: string): Span[] {
  const spans: Span[] = [];
  for (const match of text.matchAll(/\S+/gu)) {
    const chunk = match[0];
    if (
      chunk.includes('://') ||
      chunk.toLowerCase().includes('www.') ||
      /[\p{L}\p{N}]@[\p{L}\p{N}]/u.test(chunk)
    ) {
      spans.push({ from: match.index, to: match.index + chunk.length });
    }
  }
  return spans;
}

/** What stands between a token and the one after it (up to the end of the text for the last). */
export function gapAfter(source: TermText, index: number): string {
  const token = source.tokens[index];
  if (!token) return '';
  return source.text.slice(token.to, source.tokens[index + 1]?.from ?? source.text.length);
}

/** Whether two tokens belong to one phrase: a space, a hyphen or one line break between them. */
export function joined(source: TermText, index: number): boolean {
  const left = source.tokens[index];
  const right = source.tokens[index + 1];
  if (!left || !right) return false;
  const length = right.from - left.to;
  if (length === 0 || length > 8) return false;
  return /^(?:[ \t\u00a0]+|[-\u2010\u2011]|[ \t]*\r?\n[ \t]*)$/.test(source.text.slice(left.to, right.from));
}

/** Joined, or a number and a word written as one ("4ply"). */
function adjoins(source: TermText, index: number): boolean {
  const next = source.tokens[index + 1];
  return next !== undefined && (joined(source, index) || next.from === source.tokens[index]!.to);
}

/** How many tokens from one on could be one phrase, up to a limit. */
export function reachFrom(source: TermText, at: number, limit: number): number {
  let count = 1;
  while (count < limit && adjoins(source, at + count - 1)) count++;
  return count;
}

/** Tokens as the key of a phrase: lower case, single spaces. */
export function keyOf(tokens: readonly TermToken[]): string {
  return tokens.map((token) => token.word).join(' ');
}

/** The key of a phrase given as text; "" when it holds no word. */
export function phraseKey(words: string): string {
  return keyOf(termText(words, 'row').tokens);
}
