/**
 * Tables in plain text: cells between tabs, between bars, or set apart by wide gaps. A table of what the sizes measure
 * becomes lines, as one of a word processor does; any other keeps its words. It looks for tables and reads no numbers.
 */
import { sizesOfTable, textOfTable } from './table.ts';

/** What separates the cells of a line. */
type Way = 'bars' | 'tabs' | 'gaps';

const RULED = /^\s*\|?(?:\s*:?-{2,}:?\s*\|)+\s*(?::?-{2,}:?)?\s*$/u;
const VALUE = /^(?:[-–—]|\d[\d.,½¼¾⅛⅜⅝⅞/-]*(?:["”]|cm|in|mm|g|m)?)$/iu;
const UNIT = /^(?:cms?|mm|ins?\.?|inches|yds?|yards|m|g|balls?|oz)$/iu;

function wayOf(line: string): Way | null {
  if (/^\s*\|.*\|\s*$/u.test(line)) return 'bars';
  if (/\t.*\S.*\t/u.test(line)) return 'tabs';
  return /\S\s{2,}\S+\s{2,}\S/u.test(line) || /^\s{4,}\S+(?:\s{2,}\S+)+/u.test(line) ? 'gaps' : null;
}

function cellsOf(line: string, way: Way): readonly string[] {
  const trimmed = (cells: readonly string[]) => cells.map((cell) => cell.trim());
  if (way === 'bars')
    return trimmed(
      line
        .trim()
        .replace(/^\||\|$/gu, '')
        .split('|'),
    );
  if (way === 'tabs') return trimmed(line.replace(/\s+$/u, '').split('\t'));
  return line.trim().split(/\s{2,}|\t/u);
}

/** A line of a table by its labels: name, unit, one value for each; null when it has not as many. */
function valuesOf(cells: readonly string[], sizes: number): readonly string[] | null {
  // Values that stand close are parted by one blank only; a name of several words may stand close to the first.
  const close = /^(.*\p{L})\s(cms?|mm|ins?\.?|inches)(?:\s(\d\S*))?$/iu.exec(cells[0] ?? '');
  const [first, ...more] = cells;
  const told =
    close === null ? [first ?? ''] : [close[1]!, close[2]!, ...(close[3] === undefined ? [] : [close[3]])];
  const words = [...told, ...more].flatMap((cell, i) =>
    i > 0 && !/\p{L}{3}/u.test(cell) ? cell.split(/\s+/u) : [cell],
  );
  const values = words.slice(-sizes);
  if (values.length < sizes || !values.every((value) => VALUE.test(value))) return null;
  const before = words.slice(0, -sizes);
  const unit = UNIT.test(before.at(-1) ?? '') ? before.at(-1)! : '';
  const name = (unit === '' ? before : before.slice(0, -1)).join(' ');
  return [name, unit, ...values];
}

/** Lines set apart by gaps, under a line of the sizes' labels: a row for every name, the other unit behind it. */
function gapTable(rows: readonly (readonly string[])[]): readonly (readonly string[])[] | null {
  const [head = [], ...others] = rows;
  const named = /^(?:sizes?|to fit)\b/iu.test(head[0] ?? '');
  const labels = named ? head.slice(1) : head;
  if (labels.length < 2 || others.length === 0) return null;
  const found: string[][] = [];
  for (const cells of others) {
    const values = valuesOf(cells, labels.length);
    if (values === null) return null;
    const [name = '', unit = '', ...own] = values;
    const last = found.at(-1);
    const words = own.map((value) => (unit === '' ? value : `${value} ${unit}`));
    if (name !== '') found.push([name, ...words]);
    else if (last !== undefined && last.length === words.length + 1)
      for (const [i, word] of words.entries()) last[i + 1] += ` / ${word}`;
    else return null;
  }
  return [[named ? 'Size' : '', ...labels], ...found];
}

/** The text with its tables of sizes as lines. */
export function withTablesRead(text: string): string {
  const lines = text.replace(/\r\n?/gu, '\n').split('\n');
  const out: string[] = [];
  let sizes = 0;
  for (let at = 0; at < lines.length; ) {
    const way = wayOf(lines[at]!);
    let end = at;
    while (way !== null && end < lines.length && wayOf(lines[end]!) === way) end += 1;
    const run = lines.slice(at, end);
    const cells = run.filter((line) => !RULED.test(line)).map((line) => cellsOf(line, way ?? 'gaps'));
    const table = way === 'gaps' ? gapTable(cells) : cells;
    const read =
      cells.length < 2 || table === null
        ? null
        : (sizesOfTable(table) ?? (way === 'bars' ? textOfTable(table).split('\n') : null));
    if (read === null) {
      // "10  11  12  14" under a thing of the materials: as many as there are sizes.
      const numbers = lines[at]!.trim().split(/\s+/u);
      const isList =
        sizes > 1 && numbers.length === sizes && numbers.every((number) => /^\d+(?:\.\d+)?$/u.test(number));
      const last = out.at(-1) ?? '';
      if (isList && last.trim() !== '') out[out.length - 1] = `${last.trimEnd()} ${listed(numbers)}`;
      else out.push(lines[at]!);
      at += 1;
      continue;
    }
    sizes = (table![0]?.length ?? 1) - 1;
    out.push('', ...read, '');
    at = end;
  }
  return out.join('\n');
}

const listed = ([first = '', ...more]: readonly string[]): string => `${first} (${more.join(', ')})`;
