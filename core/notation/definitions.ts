/**
 * Reads the heads of lines that define: names before a colon or "=", size lists, and whether a definition is
 * told in loops on the hook. Bodies are read as items.
 */
import type { Cursor, ReadOptions } from './cursor.ts';
import type { Token } from './lexer.ts';
import { type Lexicon, normaliseName } from './lexicon.ts';
import { cursorOver } from './read.ts';

/** A run of tokens: one line, or one row within a line. */
export interface Range {
  readonly from: number;
  readonly to: number;
}

/** Lines of tokens. */
export function linesOf(tokens: readonly Token[]): Range[] {
  const lines: Range[] = [];
  let from = 0;
  for (let i = 1; i <= tokens.length; i++) {
    if (i === tokens.length || tokens[i]!.line !== tokens[from]!.line) {
      lines.push({ from, to: i });
      from = i;
    }
  }
  return lines;
}

/** A cursor of its own over tokens `from` … `to`, with facts of its own. */
export function over(
  text: string,
  tokens: readonly Token[],
  range: Range,
  options: ReadOptions,
  lexicon?: Lexicon,
): Cursor {
  return cursorOver(text, tokens.slice(range.from, range.to), options, lexicon);
}

const MEASURED = /^(?:cm|cms|mm|in|ins|inch|inches|years?|yrs?|months?|mths?)$/u;

/** "Sizes: S (M, L, XL)": the labels, or null. */
export function readSizes(text: string, tokens: readonly Token[], range: Range): string[] | null {
  const first = tokens[range.from]!.word;
  const second = tokens[range.from + 1]?.word ?? '';
  let at = range.from;
  if (first === 'for' && second === 'sizes') at += 2;
  else if (first === 'sizes' || first === 'size') at += 1;
  else if (first === 'to' && second === 'fit') at += 2;
  else return null;
  if (tokens[at - 1]!.word === 'fit' || tokens[at]?.word === 'included' || tokens[at]?.word === 'available') {
    if (tokens[at - 1]!.word === 'fit') return null;
    at++;
  }
  if (tokens[at] && [':', '-', '='].includes(tokens[at]!.word)) at++;
  else if (first !== 'for' && first !== 'sizes') return null;
  const labels: string[] = [];
  let label = '';
  let end = -1;
  const flush = (): void => {
    if (label !== '') labels.push(label);
    label = '';
    end = -1;
  };
  for (let i = at; i < range.to; i++) {
    const token = tokens[i]!;
    if (token.word === 'only') return null;
    // "81 (86, 91) cm": the unit of all of them.
    if (label === '' && labels.length > 1 && MEASURED.test(token.word)) break;
    if (
      [',', '(', ')', '[', ']', '{', '}', ';', ':', '|'].includes(token.word) ||
      token.word === 'and' ||
      token.word === '&'
    )
      flush();
    else if (token.word === '/' && label !== '' && token.gap) flush();
    else if (token.word === '.') {
      if (i === range.to - 1) break;
      return labels.length > 0 ? labels : null;
    } else {
      label += (end >= 0 && token.from > end ? ' ' : '') + text.slice(token.from, token.to);
      end = token.to;
    }
  }
  flush();
  if (labels.length === 1 && /^[^/]+(?:\/[^/]+){2,}$/u.test(labels[0]!))
    labels.splice(0, 1, ...labels[0]!.split('/'));
  if (labels.length === 1 && /^[A-Z0-9]+(?:[-–][A-Z0-9]+){2,}$/u.test(labels[0]!))
    labels.splice(0, 1, ...labels[0]!.split(/[-–]/u));
  // "S (M-L-XL)": dashes part the sizes in the bracket, as they part the numbers later on.
  if (labels.length === 2 && !/[-–]/u.test(labels[0]!) && DASHED.test(labels[1]!))
    labels.splice(1, 1, ...labels[1]!.split(/[-–]/u));
  if (labels.length === 0 || labels.length > 40) return null;
  if (labels.some((found) => found.length > 24)) return null;
  return labels;
}

/** Letters or numbers of sizes, parted by dashes. */
const DASHED = /^(?:\d?x*[sml]|\d+x|\d+)(?:[-–](?:\d?x*[sml]|\d+x|\d+))+$/iu;

interface Named {
  readonly names: readonly string[];
  /** The first of them as written. */
  readonly written: string;
  /** Where the first of them stands. */
  readonly name: Range;
  readonly body: Range;
  /** True when "=" or an abbreviation in brackets leaves no doubt that it is a definition. */
  readonly sure: boolean;
}

/** "Shell (sh): …", "V-st = …", "sh (shell) – …", "To make shell: …": names and body, or null. */
export function readNames(text: string, tokens: readonly Token[], range: Range): Named | null {
  let at = range.from;
  while (at < range.to && ['•', '-', '*', '·'].includes(tokens[at]!.word)) at++;
  if (tokens[at]?.word === 'to' && ['make', 'work'].includes(tokens[at + 1]?.word ?? '')) at += 2;
  else if (tokens[at]?.word === 'make' || tokens[at]?.word === 'work') return null;
  if (['a', 'an', 'the', 'one'].includes(tokens[at]?.word ?? '') || tokens[at]?.text === '1') at++;
  const start = at;
  let bracket: Range | null = null;
  let nameEnd = -1;
  let sure = false;
  for (let i = start; i < range.to && i < start + 14; i++) {
    const token = tokens[i]!;
    if (token.word === '(' || token.word === '[') {
      if (bracket) return null;
      nameEnd = i;
      let close = i + 1;
      while (close < range.to && close < i + 8 && tokens[close]!.word !== ')' && tokens[close]!.word !== ']')
        close++;
      if (close >= range.to || (tokens[close]!.word !== ')' && tokens[close]!.word !== ']')) return null;
      bracket = { from: i + 1, to: close };
      i = close;
      continue;
    }
    const dash = token.word === '-' && token.gap && (tokens[i + 1]?.gap ?? true);
    if (token.word === ':' || token.word === '=' || dash) {
      if (nameEnd < 0) nameEnd = i;
      if (token.word === '=') sure = true;
      const first = text.slice(tokens[start]!.from, tokens[Math.max(start, nameEnd - 1)]!.to);
      if (nameEnd <= start || nameEnd - start > 6) return null;
      const names = [normaliseName(first)];
      if (bracket) {
        const short = normaliseName(text.slice(tokens[bracket.from]!.from, tokens[bracket.to - 1]!.to));
        if (short !== '' && !/^(?:make|worked|rs|ws|\d)/u.test(short)) {
          names.push(short);
          sure = true;
        }
      }
      let body = i + 1;
      while (body < range.to && ['-', ':', '='].includes(tokens[body]!.word)) body++;
      if (body >= range.to) return null;
      return {
        names: [...new Set(names)].filter((name) => name !== ''),
        written: first,
        name: { from: start, to: Math.max(start + 1, nameEnd) },
        body: { from: body, to: range.to },
        sure,
      };
    }
    if (token.kind === 'sign' && !['-', '/', "'", '"'].includes(token.word)) return null;
  }
  return null;
}

/** True when the words of a definition tell how loops are drawn, not what is worked where. */
export function onTheHook(c: Cursor): boolean {
  for (let i = 0; i < c.tokens.length; i++) {
    const word = c.tokens[i]!.word;
    if (['yo', 'yrh', 'yoh', 'yarnover'].includes(word)) return true;
    if (word === 'insert' || (word === 'pull' && ['up', 'through'].includes(c.tokens[i + 1]?.word ?? '')))
      return true;
    if (word === 'draw' && ['up', 'through'].includes(c.tokens[i + 1]?.word ?? '')) return true;
  }
  return false;
}
