/**
 * Measures tables: columns as wide as their words ask, numbers flush right; a table with many sizes first
 * shrinks to the style's limit and is then split into groups of columns, each a table with heads of its own.
 * In editions that avoid tables, the same content is told in labelled lines.
 */
import { plain, type Table, type Words } from './content.ts';
import { across, baselineOf, type Desk, lineMarks, span, textOf, textSlices } from './desk.ts';
import { breakLines, firmWidth, type Line, naturalWidth } from './lines.ts';
import { type Mark, type Tag, tag } from './page.ts';
import { BREAK, bindAll, bindFirst, type Slice, slice, withGap } from './slice.ts';
import type { Look } from './style.ts';

/** A table whose rows all have as many cells as there are heads. */
function squared(table: Table): Table {
  const columns = Math.max(table.heads.length, ...table.rows.map((row) => row.cells.length));
  const pad = (cells: readonly Words[]): readonly Words[] =>
    cells.length === columns
      ? cells
      : [...cells, ...Array.from({ length: columns - cells.length }, (): Words => [])];
  return {
    ...table,
    heads: pad(table.heads),
    rows: table.rows.map((row) => ({ ...row, cells: pad(row.cells) })),
  };
}

export function measureTable(table: Table, parent: Tag, desk: Desk): Slice[] {
  const whole = squared(table);
  if (desk.style.tablesTold) return tellTable(whole, parent, desk);
  const plan = planOf(whole, desk);
  const slices: Slice[] = [];
  for (const [i, group] of plan.groups.entries()) {
    const part = {
      ...whole,
      heads: group.map((c) => whole.heads[c]!),
      rows: whole.rows.map((row) => ({ ...row, cells: group.map((c) => row.cells[c]!) })),
    };
    const caption: Words =
      plan.groups.length === 1
        ? whole.caption
        : [...whole.caption, plain(` (${textOf(part.heads[0]!)} to ${textOf(part.heads.at(-1)!)})`)];
    const own = setTable({ ...part, caption }, plan, parent, desk);
    slices.push(...(i === 0 ? own : withGap(own, desk.style.spaces.block)));
  }
  if (whole.note) slices.push(...noteSlices(whole.note, parent, desk));
  return slices;
}

interface Plan {
  readonly groups: readonly (readonly number[])[];
  readonly size: number;
  readonly headWidth: number;
  /** Width of each column, by its place in the whole table. */
  readonly widths: readonly number[];
}

const scaled = (look: Look, size: number): Look => ({
  ...look,
  size,
  leading: (look.leading * size) / look.size,
});

/** Chooses the size of type, the widths and the groups of columns. */
function planOf(table: Table, desk: Desk): Plan {
  const { looks, tableLimit } = desk.style;
  const all = table.heads.map((_, c) => c);
  const full = looks.tableCell.size;
  for (let size = full; size >= tableLimit - 1e-9; size -= 0.25) {
    const widths = widthsOf(table, size, desk);
    if (sum(widths.columns) + widths.head <= desk.width) return settle(table, [all], size, widths, desk);
  }
  // Too many columns even at the limit: as few groups as will do, of even length, in the largest size that fits.
  for (let count = 2; count <= all.length; count++) {
    const each = Math.ceil(all.length / count);
    const groups = Array.from({ length: count }, (_, g) => all.slice(g * each, (g + 1) * each)).filter(
      (g) => g.length > 0,
    );
    for (let size = full; size >= tableLimit - 1e-9; size -= 0.25) {
      const widths = widthsOf(table, size, desk);
      const widest = Math.max(...groups.map((group) => sum(group.map((c) => widths.columns[c]!))));
      if (widest + widths.head <= desk.width) return settle(table, groups, size, widths, desk);
    }
  }
  // Even one column beside the row heads is too wide: give it what is there and let its words break.
  const head = desk.width * 0.35;
  const groups = all.length === 0 ? [[]] : all.map((c) => [c]);
  return { groups, size: tableLimit, headWidth: head, widths: all.map(() => desk.width - head) };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

interface Widths {
  /** Narrowest widths at which no cell breaks where it should not. */
  readonly head: number;
  readonly columns: readonly number[];
  /** Widths at which nothing breaks at all. */
  readonly naturalHead: number;
  readonly natural: readonly number[];
}

function widthsOf(table: Table, size: number, desk: Desk): Widths {
  const { looks, spaces } = desk.style;
  const headLook = scaled(looks.tableHead, size);
  const cellLook = scaled(looks.tableCell, size);
  const side = spaces.cellSide * 2;
  const cap = desk.width * 0.5;
  const heads = [span(table.corner, headLook), ...table.rows.map((row) => span(row.head, cellLook))];
  const column = (c: number) => [
    span(table.heads[c]!, headLook),
    ...table.rows.map((row) => span(row.cells[c]!, cellLook)),
  ];
  const firm = (spans: ReturnType<typeof span>[]) =>
    Math.min(cap, Math.max(0, ...spans.map((one) => firmWidth([one], desk.fonts))));
  const natural = (spans: ReturnType<typeof span>[]) =>
    Math.max(0, ...spans.map((one) => naturalWidth([one], desk.fonts)));
  return {
    head: Math.max(firm(heads), Math.min(natural(heads), desk.width * 0.2)) + side,
    columns: table.heads.map((_, c) => firm(column(c)) + side),
    naturalHead: natural(heads) + side,
    natural: table.heads.map((_, c) => natural(column(c)) + side),
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
    const wish = Math.max(0, ...widest.map((c) => widths.natural[c]!)) + desk.style.spaces.cellSide * 2;
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

function setTable(table: Table, plan: Plan, parent: Tag, desk: Desk): Slice[] {
  const { looks, spaces, colours, rules } = desk.style;
  const headLook = scaled(looks.tableHead, plan.size);
  const cellLook = scaled(looks.tableCell, plan.size);
  const widths = table.heads.map((_, c) => plan.widths[c]!);
  const right = desk.left + plan.headWidth + sum(widths);
  const own = tag('Table', { title: textOf(table.caption) });
  parent.children.push(own);

  const slices: Slice[] = [];
  const caption = textOf(table.caption);
  if (caption !== '') {
    const captionTag = tag('Caption');
    own.children.push(captionTag);
    slices.push(
      ...bindAll(
        textSlices(desk, [span(table.caption, looks.tableCaption)], desk.left, desk.width, [captionTag]),
        BREAK.strand,
      ),
    );
    slices.push(slice(4, [], { cost: BREAK.strand }));
  }

  const line = (
    cells: readonly Words[],
    look: Look,
    firstLook: Look,
    tags: readonly (Tag | null)[],
    above: Mark[],
    below: Mark[],
  ): Slice[] => {
    const room = (i: number): number => (i === 0 ? plan.headWidth : widths[i - 1]!) - 2 * spaces.cellSide;
    let broken = cells.map((words, i) =>
      breakLines([span(words, i === 0 ? firstLook : look)], room(i), desk.fonts),
    );
    if (table.align === 'numbers' && broken.some((lines, i) => i > 0 && lines.length > 1)) {
      // Where one number of a row breaks before its bracket, all of them do: the eye compares like with like.
      broken = broken.map((lines, i) => {
        const own = [span(cells[i]!, look)];
        return i === 0 || lines.length !== 1
          ? lines
          : breakLines(own, Math.min(room(i), firmWidth(own, desk.fonts) + 0.5), desk.fonts);
      });
    }
    const count = Math.max(1, ...broken.map((lines) => lines.length));
    return Array.from({ length: count }, (_, n) => {
      const top = n === 0 ? spaces.cellTop : 0;
      const bottom = n === count - 1 ? spaces.cellTop : 0;
      const marks: Mark[] = n === 0 ? [...above] : [];
      let x = desk.left;
      for (const [i, lines] of broken.entries()) {
        const width = i === 0 ? plan.headWidth : widths[i - 1]!;
        // Heads stand on the last lines of their row, cells hang from the first.
        const words: Line | undefined =
          tags === headTags || tags === repeated ? lines[n - (count - lines.length)] : lines[n];
        if (words) {
          const flush =
            i > 0 && table.align === 'numbers'
              ? width - spaces.cellSide - words.width
              : i === 0
                ? 0
                : spaces.cellSide;
          marks.push(...lineMarks(words, x + flush, top + baselineOf(look), [tags[i] ?? null]));
        }
        x += width;
      }
      const height = top + look.leading + bottom;
      if (n === count - 1)
        for (const mark of below)
          marks.push({ ...mark, ...(mark.kind === 'rule' ? { y: height, y2: height } : {}) } as Mark);
      return slice(height, marks, { cost: n === 0 ? BREAK.free : BREAK.lone });
    });
  };

  const headCells = [table.corner, ...table.heads];
  const headTags: (Tag | null)[] = headCells.map(() => tag('TH', { scope: 'Column' }));
  const repeated: (Tag | null)[] = headCells.map(() => null);
  const headBelow = across(desk.left, right, 0, rules.thin, colours.ink);
  own.children.push(tag('THead', {}, [tag('TR', {}, headTags as Tag[])]));
  const head = line(headCells, headLook, headLook, headTags, [], [headBelow]);
  const carry = line(headCells, headLook, headLook, repeated, [], [headBelow]);
  slices.push(...bindFirst(bindAll(head, BREAK.strand), slices.length > 0 ? BREAK.strand : BREAK.free));

  const body = tag('TBody');
  own.children.push(body);
  for (const [r, row] of table.rows.entries()) {
    const tags = [tag('TH', { scope: 'Row' }), ...row.cells.map(() => tag('TD'))];
    body.children.push(tag('TR', {}, tags));
    const above = r === 0 ? [] : [across(desk.left, right, 0, rules.hair, colours.rule)];
    const below = r === table.rows.length - 1 ? [across(desk.left, right, 0, rules.thin, colours.rule)] : [];
    const lines = line([row.head, ...row.cells], cellLook, cellLook, tags, above, below);
    const cost = r === 0 ? BREAK.strand : r === 1 || r === table.rows.length - 1 ? BREAK.lone : BREAK.inside;
    slices.push(...bindFirst(lines, cost).map((one) => ({ ...one, carry })));
  }
  return slices;
}

function noteSlices(note: Words, parent: Tag, desk: Desk): Slice[] {
  const own = tag('Note');
  parent.children.push(own);
  const slices = textSlices(desk, [span(note, desk.style.looks.caption)], desk.left, desk.width, [own]);
  return bindFirst(withGap(slices, 5), BREAK.strand);
}

/** The table in lines: for each row its head, then "column: cell" line by line; or for each column, by its wish. */
function tellTable(table: Table, parent: Tag, desk: Desk): Slice[] {
  const { looks, spaces } = desk.style;
  const slices: Slice[] = [];
  const caption = tag('P');
  parent.children.push(caption);
  slices.push(
    ...bindAll(
      textSlices(desk, [span(table.caption, looks.tableCaption)], desk.left, desk.width, [caption]),
      BREAK.strand,
    ),
  );
  const groups =
    table.told === 'by-row'
      ? table.rows.map((row) => ({
          title: row.head,
          lines: table.heads.map((head, c) => ({ label: head, value: row.cells[c]! })),
        }))
      : table.heads.map((head, c) => ({
          title: textOf(table.corner) === '' ? head : [...table.corner, plain(' '), ...head],
          lines: table.rows.map((row) => ({ label: row.head, value: row.cells[c]! })),
        }));
  for (const [g, group] of groups.entries()) {
    const title = tag('P');
    const list = tag('L');
    parent.children.push(title);
    const own = bindAll(
      textSlices(desk, [span(group.title, looks.label)], desk.left, desk.width, [title]),
      BREAK.strand,
    );
    slices.push(...bindFirst(withGap(own, spaces.row), g === 0 ? BREAK.strand : BREAK.free));
    const told = group.lines.filter((one) => textOf(one.value) !== '');
    if (told.length > 0) parent.children.push(list);
    for (const [i, one] of told.entries()) {
      const label = tag('Lbl');
      const value = tag('LBody');
      list.children.push(tag('LI', {}, [label, value]));
      const spans = [span([...one.label, plain(': ')], looks.tableCell), span(one.value, looks.label)];
      const lines = textSlices(desk, spans, desk.left + 18, desk.width - 18, [label, value]);
      const cost = i === 0 ? BREAK.strand : i === 1 || i === told.length - 1 ? BREAK.lone : BREAK.inside;
      slices.push(...bindFirst(lines, cost));
    }
  }
  if (table.note) slices.push(...noteSlices(table.note, parent, desk));
  return slices;
}
