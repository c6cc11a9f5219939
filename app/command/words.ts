/**
 * Text for a terminal: how wide it is, wrapped, cut, coloured, and made harmless (a pattern's text may hold
 * characters that would move the cursor). It knows nothing of rows.
 */
import stringWidth from 'string-width';
import type { Io, Sink } from './io.ts';

/** Widest that lines get, however wide the terminal: longer ones are hard to read. */
const WIDEST = 80;
const NARROWEST = 40;

/** Printable ASCII, one column each: most text, and quick to tell. */
const PLAIN = /^[ -~]*$/;

export const widthOf = (text: string): number => (PLAIN.test(text) ? text.length : stringWidth(text));

/** Columns to fill. */
export function columnsOf(sink: Sink): number {
  return sink.isTTY ? Math.min(WIDEST, Math.max(NARROWEST, sink.columns ?? WIDEST)) : WIDEST;
}

/**
 * The same text without what a terminal would obey: each such character becomes one other, so that places
 * in it stay where they are. Breaks and tabs become spaces.
 */
export function harmless(text: string): string {
  return text
    .replace(/[\t\n\v\f\r\u0085\u2028\u2029]/g, ' ')
    .replace(/[\p{Cc}\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/gu, '\uFFFD');
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** As much of the text's beginning as `columns` hold. Only that much of it is looked at. */
export function headOf(text: string, columns: number): string {
  const near = text.slice(0, columns * 8);
  if (PLAIN.test(near)) return near.slice(0, Math.max(0, columns));
  let kept = '';
  let used = 0;
  for (const { segment } of graphemes.segment(near)) {
    used += stringWidth(segment);
    if (used > columns) break;
    kept += segment;
  }
  return kept;
}

/** As much of the text's end as `columns` hold. */
export function tailOf(text: string, columns: number): string {
  if (columns <= 0) return '';
  const near = text.slice(-columns * 8);
  if (PLAIN.test(near)) return near.slice(-columns);
  let kept = '';
  let used = 0;
  for (const { segment } of [...graphemes.segment(near)].reverse()) {
    used += stringWidth(segment);
    if (used > columns) break;
    kept = segment + kept;
  }
  return kept;
}

/** The text, or its beginning and an ellipsis when it is wider than `columns`. */
export function cut(text: string, columns: number): string {
  return text.length <= columns * 8 && widthOf(text) <= columns ? text : `${headOf(text, columns - 1)}…`;
}

/** Fills up with spaces on the right. */
export const padded = (text: string, columns: number): string =>
  text + ' '.repeat(Math.max(0, columns - widthOf(text)));

/** Fills up with spaces on the left. */
export const flushRight = (text: string, columns: number): string =>
  ' '.repeat(Math.max(0, columns - widthOf(text))) + text;

/** Lines of at most `columns`, broken at spaces; a word that is wider is broken where it must be. */
export function wrap(text: string, columns: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (let word of text.split(/ +/)) {
    const joined = line === '' ? word : `${line} ${word}`;
    if (widthOf(joined) <= columns) {
      line = joined;
      continue;
    }
    if (line !== '') lines.push(line);
    while (widthOf(word) > columns) {
      const head = headOf(word, columns);
      if (head === '') break;
      lines.push(head);
      word = word.slice(head.length);
    }
    line = word;
  }
  if (line !== '') lines.push(line);
  return lines;
}

export type Tone = 'error' | 'warning' | 'note' | 'quiet' | 'strong';

/** ECMA-48 graphic renditions. */
const RENDITION: Readonly<Record<Tone, number>> = { error: 31, warning: 33, note: 36, quiet: 2, strong: 1 };

export type Paint = (tone: Tone, text: string) => string;

/** Colour where a person reads it and has not asked for none (NO_COLOR set to anything); else the text as it is. */
export function paintFor(sink: Sink, env: Io['env']): Paint {
  const colourless = (env.NO_COLOR ?? '') !== '' || env.TERM === 'dumb';
  if (!sink.isTTY || colourless) return (_tone, text) => text;
  return (tone, text) => `\u001B[${RENDITION[tone]}m${text}\u001B[0m`;
}
