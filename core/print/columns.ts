/**
 * Decides how a table stands on the page: at which size of type, in how many groups of columns, and how wide
 * each column is. Measures words, sets nothing.
 */
import type { Table } from './content.ts';
import { type Desk, span } from './desk.ts';
import { firmWidth, naturalWidth, type Span } from './lines.ts';
import type { Look } from './style.ts';

export interface Plan {
  readonly groups: readonly (readonly number[])[];
  readonly size: number;
  readonly headWidth: number;
  /** Width of each column, by its place in the whole table. */
  readonly widths: readonly number[];
}

export const scaled = (look: Look, size: number): Look => ({
  ...look,
  size,
  leading: (look.leading * size) / look.size,
});

/** Chooses the size of type, the widths and the groups of columns. */
export function planOf(table: Table, desk: Desk): Plan {
  const { looks, tableLimit } = desk.style;
  const all = table.heads.map((_, c) => c);
  const full = looks.tableCell.size;
  const words = wordWidths(table, desk);
  for (let size = full; size >= tableLimit - 1e-9; size -= 0.25) {
    const widths = widthsAt(words, size, desk);
    if (sum(widths.columns) + widths.head <= desk.width) return settle(table, [all], size, widths, desk);
  }
  // Too many columns even at the limit: as few groups as will do, of even length, in the largest size that fits.
  for (let count = 2; count <= all.length; count++) {
    const each = Math.ceil(all.length / count);
    const groups = Array.from({ length: count }, (_, g) => all.slice(g * each, (g + 1) * each)).filter(
      (g) => g.length > 0,
    );
    for (let size = full; size >= tableLimit - 1e-9; size -= 0.25) {
      const widths = widthsAt(words, size, desk);
      const widest = Math.max(...groups.map((group) => sum(group.map((c) => widths.columns[c]!))));
      if (widest + widths.head <= desk.width) return settle(table, groups, size, widths, desk);
    }
  }
  // Even one column beside the row heads is too wide: give it what is there and let its words break.
  const head = desk.width * 0.35;
  const groups = all.length === 0 ? [[]] : all.map((c) => [c]);
  return { groups, size: tableLimit, headWidth: head, widths: all.map(() => desk.width - head) };
}

/** How far a column of numbers is widened so that its table ends with the text. */
const FILLS = 1.75;

export const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

interface Widths {
  /** Narrowest widths at which no cell breaks where it should not. */
  readonly head: number;
  readonly columns: readonly number[];
  /** Widths at which nothing breaks at all. */
  readonly naturalHead: number;
  readonly natural: readonly number[];
}

/** Widths of the words alone at the full size of type; other sizes follow in proportion. */
function wordWidths(table: Table, desk: Desk): Widths {
  const { looks } = desk.style;
  const firm = (spans: readonly Span[]): number =>
    Math.max(0, ...spans.map((one) => firmWidth([one], desk.fonts)));
  const natural = (spans: readonly Span[]): number =>
    Math.max(0, ...spans.map((one) => naturalWidth([one], desk.fonts)));
  const heads = [
    span(table.corner, looks.tableHead),
    ...table.rows.map((row) => span(row.head, looks.tableCell)),
  ];
  const columns = table.heads.map((head, c) => [
    span(head, looks.tableHead),
    ...table.rows.map((row) => span(row.cells[c]!, looks.tableCell)),
  ]);
  return {
    head: firm(heads),
    columns: columns.map(firm),
    naturalHead: natural(heads),
    natural: columns.map(natural),
  };
}

function widthsAt(words: Widths, size: number, desk: Desk): Widths {
  const { looks, spaces } = desk.style;
  const scale = size / looks.tableCell.size;
  const side = spaces.cellSide * 2;
  const cap = desk.width * 0.5;
  const head = Math.max(
    Math.min(cap, words.head * scale),
    Math.min(words.naturalHead * scale, desk.width * 0.2),
  );
  return {
    head: head + side,
    columns: words.columns.map((width) => Math.min(cap, width * scale) + side),
    naturalHead: words.naturalHead * scale + side,
    natural: words.natural.map((width) => width * scale + side),
  };
}

/** Gives out what is left of the page's width: to the row heads, then to columns that still break, then evenly. */
function settle(
  table: Table,
  groups: readonly (readonly number[])[],
  size: number,
  widths: Widths,
  desk: Desk,
): Plan {
  const columns = [...widths.columns];
  const widest = groups.reduce((a, b) =>
    sum(a.map((c) => columns[c]!)) > sum(b.map((c) => columns[c]!)) ? a : b,
  );
  let left = desk.width - widths.head - sum(widest.map((c) => columns[c]!));
  let head = widths.head;
  const take = (wish: number): number => {
    const given = Math.max(0, Math.min(wish, left));
    left -= given;
    return given;
  };
  head += take(Math.min(widths.naturalHead, desk.width * 0.45) - head);
  if (table.align === 'numbers') {
    // Equal columns read best; a little air, but no gulfs between few columns. Columns of unequal need share
    // what is left so that the narrow ones catch up first.
    const natural = Math.max(0, ...widest.map((c) => widths.natural[c]!)) + desk.style.spaces.cellSide * 2;
    // Nearly as wide as the text, a table is made quite as wide: tables under one another end alike.
    const whole = (desk.width - head) / Math.max(1, widest.length);
    const wish = whole <= natural * FILLS ? Math.max(natural, whole) : natural;
    const even = Math.min(
      wish,
      evenWidth(
        widest.map((c) => columns[c]!),
        left,
      ),
    );
    for (const c of widest) left -= Math.max(0, even - columns[c]!);
    for (const c of columns.keys()) columns[c] = Math.max(columns[c]!, even);
  } else if (widest.length > 0) {
    for (const c of widest) columns[c]! += take(widths.natural[c]! - columns[c]!);
    columns[widest.at(-1)!]! += left;
    left = 0;
  }
  // Row heads as wide as the hanging labels line the numbers up with the text, if there is room.
  if (desk.style.hang > head && left >= desk.style.hang - head) head = desk.style.hang;
  return { groups, size, headWidth: head, widths: columns };
}

/** The width to which columns can be brought, the narrowest first, with `spare` points to give. */
function evenWidth(columns: readonly number[], spare: number): number {
  const sorted = [...columns].sort((a, b) => a - b);
  let used = 0;
  for (let i = 1; i <= sorted.length; i++) {
    used += sorted[i - 1]!;
    const level = (used + spare) / i;
    if (i === sorted.length || level <= sorted[i]!) return level;
  }
  return 0;
}
