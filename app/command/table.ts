/**
 * Sets rows of counts in columns, one for each size, within the width of a terminal. Where there are more
 * sizes than fit, every row takes as many lines as the heads do. It knows nothing of crochet.
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

const LABEL_WIDEST = 30;
const REMARK_LEAST = 12;
const INDENT = '    ';

interface Columns {
  readonly label: number;
  readonly cell: number;
  readonly gap: number;
  /** Cells in a line. */
  readonly across: number;
}

function columnsFor(heads: readonly string[], lines: readonly TableLine[], width: number): Columns {
  const longest = lines.reduce((most, line) => Math.max(most, widthOf(line.label)), 0);
  const label = Math.min(longest, LABEL_WIDEST, Math.floor(width / 2));
  const cell = [...heads, ...lines.flatMap((line) => line.cells)].reduce(
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

/** The lines of a table with `heads` over its cells; no heads, no head line. */
export function table(
  heads: readonly string[],
  lines: readonly TableLine[],
  width: number,
  paint: Paint,
): string[] {
  const shortest = heads.map((head) => cut(head, Math.max(8, Math.floor(width / 4))));
  const columns = columnsFor(shortest, lines, width);
  const out = inGroups(shortest, columns).map((group) => paint('strong', ' '.repeat(columns.label) + group));
  for (const line of lines) {
    const [first = '', ...more] = inGroups(line.cells, columns);
    let start = padded(cut(line.label, columns.label), columns.label) + first;
    let below = line.remark;
    if (more.length === 0 && line.remark !== '') {
      const room = width - widthOf(start) - 2;
      if (widthOf(line.remark) <= room || (room >= REMARK_LEAST && line.cells.length <= 1)) {
        const [beside = '', ...rest] = wrap(line.remark, room);
        start += `  ${beside}`;
        below = rest.join(' ');
      }
    }
    out.push(start.trimEnd(), ...more.map((group) => ' '.repeat(columns.label) + group));
    if (below !== '') out.push(...wrap(below, width - INDENT.length).map((text) => INDENT + text));
    for (const under of line.under) out.push(under);
  }
  return out;
}
