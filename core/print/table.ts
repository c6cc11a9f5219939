/**
 * Sets tables: row heads at the left, numbers flush right under their heads, thin rules between rows. A table
 * too wide for the page comes in groups of columns, each a table with heads of its own; see `columns.ts` for
 * how that is decided.
 */
import { type Plan, planOf, scaled, sum } from './columns.ts';
import { plain, type Table, type Words } from './content.ts';
import { across, baselineOf, type Desk, lineMarks, span, textOf, textSlices } from './desk.ts';
import { breakLines, firmWidth, type Line } from './lines.ts';
import { type Mark, type Tag, tag } from './page.ts';
import { BREAK, bindAll, bindFirst, type Slice, slice, withGap } from './slice.ts';
import type { Look } from './style.ts';
import { noteSlices, tellTable } from './told.ts';

/** A table of so few rows is seen at one glance: better not parted. */
const SHORT = 6;

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
    const widths = group.map((c) => plan.widths[c]!);
    const own = setTable({ ...part, caption }, { ...plan, widths }, parent, desk);
    slices.push(...(i === 0 ? own : withGap(own, desk.style.spaces.block)));
  }
  if (whole.note) slices.push(...noteSlices(whole.note, parent, desk));
  return slices;
}

function setTable(table: Table, plan: Plan, parent: Tag, desk: Desk): Slice[] {
  const { looks, colours, rules } = desk.style;
  const own = tag('Table', { title: textOf(table.caption) });
  parent.children.push(own);
  const slices: Slice[] = [];
  if (textOf(table.caption) !== '') {
    const caption = tag('Caption');
    own.children.push(caption);
    const words = textSlices(desk, [span(table.caption, looks.tableCaption)], desk.left, desk.width, [
      caption,
    ]);
    slices.push(...bindAll(words, BREAK.strand), slice(4, [], { cost: BREAK.strand }));
  }

  const row = new RowSetter(table, plan, desk);
  const headCells = [table.corner, ...table.heads];
  const headTags = headCells.map(() => tag('TH', { scope: 'Column' }));
  const under = { below: { weight: rules.thin, colour: colours.ink } };
  own.children.push(tag('THead', {}, [tag('TR', {}, headTags)]));
  const head = bindAll(row.set(headCells, true, headTags, under), BREAK.strand);
  slices.push(...bindFirst(head, slices.length > 0 ? BREAK.strand : BREAK.free));
  // Above a page's first row caption and head come again, for the eye only: the caption may hold the unit.
  const again = textSlices(desk, [span(table.caption, looks.tableCaption)], desk.left, desk.width, [null]);
  const carry = [
    ...again,
    ...(again.length > 0 ? [slice(4, [])] : []),
    ...row.set(
      headCells,
      true,
      headCells.map(() => null),
      under,
    ),
  ];

  const body = tag('TBody');
  if (table.rows.length > 0) own.children.push(body);
  const last = table.rows.length - 1;
  for (const [r, { head: rowHead, cells }] of table.rows.entries()) {
    const tags = [tag('TH', { scope: 'Row' }), ...cells.map(() => tag('TD'))];
    body.children.push(tag('TR', {}, tags));
    const lines = row.set([rowHead, ...cells], false, tags, {
      ...(r > 0 ? { above: { weight: rules.hair, colour: colours.rule } } : {}),
      ...(r === last ? { below: { weight: rules.thin, colour: colours.rule } } : {}),
    });
    const inside = table.rows.length <= SHORT ? BREAK.together : BREAK.inside;
    const cost = r === 0 ? BREAK.strand : r === 1 || r === last ? BREAK.lone : inside;
    slices.push(...bindFirst(lines, cost).map((one) => ({ ...one, carry })));
  }
  return slices;
}

interface Edge {
  readonly weight: number;
  readonly colour: string;
}

/** Sets rows of one table: the same columns, the same alignment. */
class RowSetter {
  readonly #table: Table;
  readonly #widths: readonly number[];
  readonly #size: number;
  readonly #desk: Desk;

  constructor(table: Table, plan: Plan, desk: Desk) {
    this.#table = table;
    this.#widths = [plan.headWidth, ...table.heads.map((_, c) => plan.widths[c]!)];
    this.#size = plan.size;
    this.#desk = desk;
  }

  /** One slice, cell after cell; a row that would fill most of a page goes line by line. */
  set(
    cells: readonly Words[],
    isHead: boolean,
    tags: readonly (Tag | null)[],
    edges: { readonly above?: Edge; readonly below?: Edge },
  ): Slice[] {
    const { looks, spaces } = this.#desk.style;
    const look = scaled(isHead ? looks.tableHead : looks.tableCell, this.#size);
    const broken = this.#break(cells, look);
    const count = Math.max(1, ...broken.map((lines) => lines.length));
    const height = count * look.leading + 2 * spaces.cellTop;
    const right = this.#desk.left + sum(this.#widths);
    const edge = (one: Edge | undefined, y: number): Mark[] =>
      one ? [across(this.#desk.left, right, y, one.weight, one.colour)] : [];
    // Heads stand on the last line of their row, cells hang from the first.
    const lineY = (i: number, n: number): number =>
      spaces.cellTop + (n + (isHead ? count - broken[i]!.length : 0)) * look.leading;
    if (height <= this.#desk.height * 0.5) {
      const marks = broken.flatMap((lines, i) =>
        lines.flatMap((line, n) => this.#cell(line, i, lineY(i, n) + baselineOf(look), tags[i] ?? null)),
      );
      return [slice(height, [...edge(edges.above, 0), ...marks, ...edge(edges.below, height)])];
    }
    return Array.from({ length: count }, (_, n) => {
      const top = n === 0 ? spaces.cellTop : 0;
      const tall = top + look.leading + (n === count - 1 ? spaces.cellTop : 0);
      const marks = broken.flatMap((lines, i) =>
        lines[n] ? this.#cell(lines[n], i, top + baselineOf(look), tags[i] ?? null) : [],
      );
      const above = n === 0 ? edge(edges.above, 0) : [];
      const below = n === count - 1 ? edge(edges.below, tall) : [];
      return slice(tall, [...above, ...marks, ...below], { cost: n === 0 ? BREAK.free : BREAK.inside });
    });
  }

  #break(cells: readonly Words[], look: Look): readonly (readonly Line[])[] {
    const { fonts } = this.#desk;
    const room = (i: number): number => this.#widths[i]! - 2 * this.#desk.style.spaces.cellSide;
    const spans = cells.map((words) => [span(words, look)]);
    const broken = spans.map((own, i) => breakLines(own, room(i), fonts));
    if (this.#table.align !== 'numbers' || !broken.some((lines, i) => i > 0 && lines.length > 1))
      return broken;
    // Where one number of a row breaks before its bracket, all of them do: the eye compares like with like.
    return broken.map((lines, i) =>
      i === 0 || lines.length !== 1
        ? lines
        : breakLines(spans[i]!, Math.min(room(i), firmWidth(spans[i]!, fonts) + 0.5), fonts),
    );
  }

  #cell(line: Line, column: number, baseline: number, own: Tag | null): Mark[] {
    const side = this.#desk.style.spaces.cellSide;
    const x = this.#desk.left + sum(this.#widths.slice(0, column));
    const indent =
      column === 0 ? 0 : this.#table.align === 'numbers' ? this.#widths[column]! - side - line.width : side;
    return lineMarks(line, x + indent, baseline, [own]);
  }
}
