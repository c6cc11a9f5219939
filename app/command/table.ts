/**
 * Sets rows of counts in columns, one for each size, within the width of a terminal. A long head is stacked,
 * a long label has a line of its own, and where there are more sizes than fit, every row takes as many lines
 * as the heads do. It knows nothing of crochet.
 */
import { cut, flushRight, type Paint, padded, widthOf, wrap } from './words.ts';

export interface TableLine {
  readonly label: string;
  readonly cells: readonly string[];
  /** What stands after the cells, where there is room, else below. */
  readonly remark: string;
  /** Finished lines that belong under this one. */
  readonly under: readonly string[];
}

const LABEL_WIDEST = 24;
const REMARK_LEAST = 12;
const INDENT = '    ';

interface Columns {
  readonly label: number;
  readonly cell: number;
  readonly gap: number;
  /** Cells in a line. */
  readonly across: number;
}

function columnsFor(
  heads: readonly (readonly string[])[],
  lines: readonly TableLine[],
  width: number,
): Columns {
  const label = lines
    .map((line) => widthOf(line.label))
    .reduce((most, own) => (own <= LABEL_WIDEST ? Math.max(most, own) : most), 0);
  const cell = [...heads.flat(), ...lines.flatMap((line) => line.cells)].reduce(
    (most, text) => Math.max(most, widthOf(text)),
    1,
  );
  const sizes = lines.reduce((most, line) => Math.max(most, line.cells.length), heads.length);
  const gap = label + sizes * (cell + 2) <= width ? 2 : 1;
  return { label, cell, gap, across: Math.max(1, Math.floor((width - label) / (cell + gap))) };
}

/** The cells in groups that fit side by side. */
function inGroups(cells: readonly string[], columns: Columns): string[] {
  const groups: string[] = [];
  for (let at = 0; at < cells.length; at += columns.across) {
    const group = cells.slice(at, at + columns.across);
    groups.push(group.map((cell) => ' '.repeat(columns.gap) + flushRight(cell, columns.cell)).join(''));
  }
  return groups;
}

/** A head's words, one under the other; one that is still too wide is cut. */
function wordsOf(head: string, widest: number): readonly string[] {
  return head.split(/ +/).map((word) => cut(word, widest));
}

/** Heads stacked so that their last words stand on one line, group under group as the cells. */
function headLines(stacks: readonly (readonly string[])[], columns: Columns): readonly string[] {
  const out: string[] = [];
  for (let at = 0; at < stacks.length; at += columns.across) {
    const group = stacks.slice(at, at + columns.across);
    const height = Math.max(...group.map((stack) => stack.length));
    for (let line = 0; line < height; line++) {
      out.push(
        ...inGroups(
          group.map((stack) => stack[line - height + stack.length] ?? ''),
          columns,
        ),
      );
    }
  }
  return out;
}

/** The lines of a table with `heads` over its cells; no heads, no head line. */
export function table(
  heads: readonly string[],
  lines: readonly TableLine[],
  width: number,
  paint: Paint,
): string[] {
  const stacks = heads.map((head) => wordsOf(head, Math.max(8, Math.floor(width / 5))));
  const columns = columnsFor(stacks, lines, width);
  const blank = ' '.repeat(columns.label);
  const out = headLines(stacks, columns).map((text) => paint('strong', (blank + text).trimEnd()));
  for (const line of lines) {
    const [first = '', ...more] = inGroups(line.cells, columns);
    const own = widthOf(line.label) > columns.label;
    if (own) out.push(...wrap(line.label, width));
    let start = (own ? blank : padded(line.label, columns.label)) + first;
    let below = line.remark;
    if (more.length === 0 && line.remark !== '') {
      const room = width - widthOf(start) - 2;
      if (widthOf(line.remark) <= room || (room >= REMARK_LEAST && line.cells.length <= 1)) {
        const [beside = '', ...rest] = wrap(line.remark, room);
        start += `  ${beside}`;
        below = rest.join(' ');
      }
    }
    out.push(start.trimEnd(), ...more.map((group) => blank + group));
    if (below !== '') out.push(...wrap(below, width - INDENT.length).map((text) => INDENT + text));
    for (const under of line.under) out.push(under);
  }
  return out;
}
