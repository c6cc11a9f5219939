/**
 * Cuts a formula, or the name of a line, into words, numbers and signs with their places in the text. It
 * reads fractions ("2½", "2 1/2", "1/4") as one number. It knows no names and judges nothing.
 */
import Fraction from 'fraction.js';
import type { Span } from '../finding.ts';
import type { Rational } from '../trade/units.ts';

/** `spaced`: a blank stands before it. Signs come in one form: "-" for every dash, "*" for ×, "/" for ÷. */
export type Token = Span & { readonly text: string; readonly spaced: boolean } & (
    | { readonly kind: 'number'; readonly value: Rational }
    | { readonly kind: 'word' }
    | { readonly kind: 'sign' }
  );

const WORD = /[\p{L}_][\p{L}\p{M}\p{N}'’_]*/uy;
/** Digits with an optional decimal part; a comma counts as a decimal sign unless three digits follow it. */
const NUMBER = /\d+(?:\.\d+|,(?!\d{3}(?!\d))\d+)?|\.\d+/y;
/** The fraction after a whole number, or alone: "½", "1/2". */
const GLYPH = /[¼-¾⅐-⅞]/uy;
const SLASHED = /\s*[¼-¾⅐-⅞]|\s+(\d{1,4})[/⁄](\d{1,4})(?![\d.,]*\d)|[/⁄](\d{1,4})(?![\d.,]*\d)/uy;

const SIGNS: Readonly<Record<string, string>> = {
  '−': '-',
  '–': '-',
  '—': '-',
  '‐': '-',
  '‑': '-',
  '×': '*',
  '·': '*',
  '÷': '/',
  '⁄': '/',
  '″': '"',
  '”': '"',
};

/** Cuts the text. Every character that is neither blank nor part of a word or number becomes a sign. */
export function tokenise(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    const start = at;
    while (at < text.length && /\s/u.test(text[at]!)) at++;
    if (at >= text.length) break;
    const spaced = at > start;
    const token =
      numberAt(text, at, spaced) ?? wordAt(text, at, spaced, tokens.at(-1)) ?? signAt(text, at, spaced);
    tokens.push(token);
    at = token.to;
  }
  return tokens;
}

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

function numberAt(text: string, at: number, spaced: boolean): Token | null {
  const glyph = matchAt(GLYPH, text, at);
  if (glyph) return numberToken(text, at, at + 1, spaced, glyphValue(glyph[0]));
  const match = matchAt(NUMBER, text, at);
  if (!match) return null;
  const digits = match[0].replace(',', '.');
  const value = new Fraction(digits.startsWith('.') ? `0${digits}` : digits);
  const end = at + match[0].length;
  const fraction = /^\d+$/.test(digits) ? matchAt(SLASHED, text, end) : null;
  if (!fraction) return numberToken(text, at, end, spaced, value);
  const [whole, top, bottom, under] = fraction;
  const to = end + whole.length;
  if (under !== undefined) {
    return Number(under) === 0
      ? numberToken(text, at, end, spaced, value)
      : numberToken(text, at, to, spaced, value.div(new Fraction(Number(under))));
  }
  if (top !== undefined) {
    return Number(bottom) === 0
      ? numberToken(text, at, end, spaced, value)
      : numberToken(text, at, to, spaced, value.add(new Fraction(Number(top), Number(bottom))));
  }
  return numberToken(text, at, to, spaced, value.add(glyphValue(whole.trim())));
}

/** The value of a printed fraction: its compatibility form is two numbers with a fraction slash. */
function glyphValue(glyph: string): Rational {
  const [top, bottom] = glyph.normalize('NFKC').split('⁄');
  return new Fraction(Number(top), Number(bottom));
}

function numberToken(text: string, from: number, to: number, spaced: boolean, value: Rational): Token {
  return { kind: 'number', text: text.slice(from, to), from, to, spaced, value };
}

function wordAt(text: string, at: number, spaced: boolean, before: Token | undefined): Token | null {
  const match = matchAt(WORD, text, at);
  if (!match) return null;
  // "2x3": a sign of multiplication, not a word.
  if (/^x\d/i.test(match[0]) && !spaced && before && (before.kind === 'number' || before.text === ')')) {
    return { kind: 'sign', text: '*', from: at, to: at + 1, spaced };
  }
  return { kind: 'word', text: match[0], from: at, to: at + match[0].length, spaced };
}

function signAt(text: string, at: number, spaced: boolean): Token {
  const sign = String.fromCodePoint(text.codePointAt(at)!);
  return { kind: 'sign', text: SIGNS[sign] ?? sign, from: at, to: at + sign.length, spaced };
}
