/**
 * Edits of the sizing sheet, as functions from a state to a transaction: cells by the block, sizes and lines.
 * What a maker typed comes read; what cannot be done is told to the caller and not done.
 */
import type { Node } from 'prosemirror-model';
import type { EditorState, Transaction } from 'prosemirror-state';
import type { AttributesOf, LineRule } from '../../core/document/attributes.ts';
import type { Line, Pattern, PerSize, Quantity } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import type { Units } from '../../core/trade/units.ts';
import { begin, indexIn, insertItem, made, removeItem, setAttributes } from '../desk/edits.ts';
import { freshId } from '../desk/identity.ts';
import { listAt, partAt, placeOf } from '../desk/places.ts';
import { isTypedIn, ownQuantity, readCell } from './quantities.ts';

/** One cell's new amount; null empties it (a body line then reads its chart again). */
export interface CellChange {
  readonly line: string;
  readonly size: string;
  readonly value: Quantity | null;
}

function without<T>(table: Readonly<Record<string, T>>, key: string): Readonly<Record<string, T>> {
  const { [key]: _, ...rest } = table;
  return rest;
}

/** A line's rule with one cell changed. A line that is alike for all sizes becomes one amount a size. */
function ruleWith(rule: LineRule, size: string, value: Quantity | null, sizes: readonly string[]): LineRule {
  const put = (table: Readonly<Record<string, Quantity>>) =>
    value === null ? without(table, size) : { ...table, [size]: value };
  if (rule.kind === 'body') return { ...rule, overtyped: put(rule.overtyped) };
  if (rule.kind !== 'typed' && rule.kind !== 'ease') return rule;
  return { ...rule, values: { each: put(eachOf(rule.values, sizes)) } };
}

function eachOf(values: PerSize<Quantity>, sizes: readonly string[]): Readonly<Record<string, Quantity>> {
  return 'all' in values ? Object.fromEntries(sizes.map((id) => [id, values.all])) : values.each;
}

/** Changes cells of any number of lines in one step. */
export function setCells(state: EditorState, changes: readonly CellChange[]): Transaction {
  const transaction = begin(state);
  const sizes = project(state.doc).sizes.map(({ id }) => id);
  const rules = new Map<string, LineRule>();
  for (const { line, size, value } of changes) {
    const rule = rules.get(line) ?? (placeOf(state.doc, line)?.node.attrs.rule as LineRule | undefined);
    if (rule !== undefined) rules.set(line, ruleWith(rule, size, value, sizes));
  }
  for (const [id, rule] of rules) {
    const { pos, node } = placeOf(state.doc, id)!;
    if (JSON.stringify(node.attrs.rule) !== JSON.stringify(rule))
      transaction.setNodeAttribute(pos, 'rule', rule);
  }
  return transaction;
}

/** Where something begins in the grid. */
export interface Corner {
  readonly row: number;
  readonly column: number;
}

/** What a block of texts would do to cells, and what of it cannot be done. */
export interface Pasting {
  readonly changes: readonly CellChange[];
  /** Texts that are no amount, with the line and size they were for. */
  readonly unread: readonly { readonly text: string; readonly line: string; readonly size: string }[];
  /** Cells that are worked out from other lines and cannot be typed in. */
  readonly workedOut: number;
  /** Cells past the last line or size. */
  readonly outside: number;
}

/**
 * A block of texts laid over the grid from a corner. One single text fills the whole range; an empty text
 * empties its cell.
 */
export function pasted(
  pattern: Pattern,
  table: readonly (readonly string[])[],
  range: { readonly top: number; readonly bottom: number; readonly left: number; readonly right: number },
  units: Units,
): Pasting {
  const isOne = table.length === 1 && table[0]!.length === 1;
  const rows = isOne ? range.bottom - range.top + 1 : table.length;
  const changes: CellChange[] = [];
  const unread: { text: string; line: string; size: string }[] = [];
  let [workedOut, outside] = [0, 0];
  for (let r = 0; r < rows; r++) {
    const cells = isOne ? Array(range.right - range.left + 1).fill(table[0]![0]!) : table[r]!;
    cells.forEach((text: string, c) => {
      const line = pattern.lines[range.top + r];
      const size = pattern.sizes[range.left + c];
      if (line === undefined || size === undefined) {
        if (text.trim() !== '') outside++;
        return;
      }
      if (!isTypedIn(line)) {
        if (text.trim() !== '') workedOut++;
        return;
      }
      const value = text.trim() === '' ? null : readCell(text, line, size.id, units);
      if (value === null && text.trim() !== '') unread.push({ text, line: line.name, size: size.label });
      else changes.push({ line: line.id, size: size.id, value });
    });
  }
  return { changes, unread, workedOut, outside };
}

/** Copies the first column (or row) of a range over the rest of it; cells that are worked out stay. */
export function filled(
  pattern: Pattern,
  range: { readonly top: number; readonly bottom: number; readonly left: number; readonly right: number },
  way: 'right' | 'down',
): readonly CellChange[] {
  const changes: CellChange[] = [];
  const { lines, sizes } = pattern;
  for (let row = range.top; row <= range.bottom; row++) {
    for (let column = range.left; column <= range.right; column++) {
      const [fromRow, fromColumn] = way === 'right' ? [row, range.left] : [range.top, column];
      if (fromRow === row && fromColumn === column) continue;
      const [from, to] = [lines[fromRow], lines[row]];
      const [fromSize, toSize] = [sizes[fromColumn], sizes[column]];
      if (!from || !to || !fromSize || !toSize || !isTypedIn(from) || !isTypedIn(to)) continue;
      const value = ownQuantity(from, fromSize.id);
      if (value === null && from.kind === 'body') continue;
      changes.push({ line: to.id, size: toSize.id, value });
    }
  }
  return changes;
}

/** Gives every size the one amount, or each size its own, beginning with what they have. */
export function spreadValues(pattern: Pattern, line: Line, way: 'all' | 'each'): LineRule | null {
  if (line.kind !== 'typed' && line.kind !== 'ease') return null;
  const { kind, values } = line;
  if (way === 'each') {
    return {
      kind,
      values: {
        each: eachOf(
          values,
          pattern.sizes.map(({ id }) => id),
        ),
      },
    };
  }
  if ('all' in values) return null;
  const order = [pattern.sample, ...pattern.sizes.map(({ id }) => id)];
  const first = order.flatMap((id) => (id !== null && values.each[id] ? [values.each[id]] : []))[0];
  return { kind, values: { all: first ?? { value: 0, unit: 'none' } } };
}

/** Puts sizes at the end, in one step. The first sizes of a pattern make the first of them its sample. */
export function addSizes(state: EditorState, sizes: readonly Partial<AttributesOf<'size'>>[]): Transaction {
  const transaction = begin(state);
  const { node, pos } = listAt(state.doc, 'sizes');
  const nodes = sizes.map((size) => made('size', { ...size, id: freshId() }));
  transaction.insert(pos + 1 + node.content.size, nodes);
  const sizing = partAt(state.doc, ['sizing']);
  if (sizing.node.attrs.sample === null && nodes[0])
    transaction.setNodeAttribute(sizing.pos, 'sample', nodes[0].attrs.id);
  return transaction;
}

/** The attributes of a node that hold something of a size, without it; null for a node that holds nothing. */
function withoutSize(node: Node, size: string): Readonly<Record<string, unknown>> | null {
  const { attrs } = node;
  switch (node.type.name) {
    case 'line': {
      const rule: LineRule = attrs.rule;
      if (rule.kind === 'body') return { rule: { ...rule, overtyped: without(rule.overtyped, size) } };
      if ((rule.kind !== 'typed' && rule.kind !== 'ease') || 'all' in rule.values) return null;
      return { rule: { ...rule, values: { each: without(rule.values.each, size) } } };
    }
    case 'yarn':
      return { metres: without(attrs.metres, size) };
    case 'notion':
      return attrs.amount !== null && 'each' in attrs.amount
        ? { amount: { each: without(attrs.amount.each, size) } }
        : null;
    case 'sizing':
      return { sample: attrs.sample === size ? null : attrs.sample };
    default:
      return Array.isArray(attrs.sizes) ? { sizes: attrs.sizes.filter((id: string) => id !== size) } : null;
  }
}

/** Takes a size out, with all that was typed for it, in one step. */
export function removeSize(state: EditorState, id: string): Transaction {
  const transaction = begin(state);
  const place = placeOf(state.doc, id);
  if (place === null) return transaction;
  state.doc.descendants((node, pos) => {
    for (const [name, value] of Object.entries(withoutSize(node, id) ?? {})) {
      if (JSON.stringify(value) !== JSON.stringify(node.attrs[name]))
        transaction.setNodeAttribute(pos, name, value);
    }
    return !node.isTextblock;
  });
  return transaction.delete(place.pos, place.pos + place.node.nodeSize);
}

/** A line of a kind, with nothing filled in that the maker has to say. */
export function newRule(kind: LineRule['kind'], pattern: Pattern): LineRule {
  const gauge = pattern.gauges[0]?.id ?? '';
  switch (kind) {
    case 'body': {
      // Measured as the other bodies of the pattern are; as a blank one is where there is none.
      const other = pattern.lines.find((line) => line.kind === 'body');
      return { kind, measure: 'bust', bound: other?.bound ?? 'middle', overtyped: {} };
    }
    case 'typed':
    case 'ease':
      return { kind, values: { each: {} } };
    case 'formula':
      return { kind, formula: '' };
    case 'stitches':
      return {
        kind,
        length: '',
        gauge,
        state: 'relaxed',
        multiple: 1,
        plus: 0,
        rounding: 'nearest',
        parity: 'any',
        counts: 'stitches',
        extra: 0,
        tolerance: null,
      };
    case 'rows':
      return { kind, length: '', gauge, cycle: 1, endOn: 1, before: 0, rounding: 'nearest', tolerance: null };
    case 'shaping':
      return { kind, start: '', end: '', rows: '', perEnd: 1, ends: 2, step: 1 };
    case 'spread':
      return { kind, changes: '', over: '', change: 'inc', form: 'flat', stitch: 't1' };
  }
}

/** A name that no line has yet: "new line", "new line 2". */
export function freeName(pattern: Pattern, wanted: string): string {
  const taken = new Set(pattern.lines.map(({ name }) => name.toLowerCase()));
  if (!taken.has(wanted.toLowerCase())) return wanted;
  let number = 2;
  while (taken.has(`${wanted} ${number}`.toLowerCase())) number++;
  return `${wanted} ${number}`;
}

/** Puts a line of a kind behind another, or at the end. */
export function addLine(
  state: EditorState,
  kind: LineRule['kind'],
  name: string,
  behind: string | null,
): Transaction {
  const pattern = project(state.doc);
  const rule = newRule(kind, pattern);
  const index = behind === null ? -1 : indexIn(state.doc, 'lines', behind);
  return insertItem(
    state,
    'lines',
    made('line', { name: freeName(pattern, name), rule }),
    index < 0 ? undefined : index + 1,
  );
}

export function removeLine(state: EditorState, id: string): Transaction {
  return removeItem(state, 'lines', indexIn(state.doc, 'lines', id));
}

export function setRule(state: EditorState, id: string, rule: LineRule): Transaction {
  return setAttributes<'line'>(state, id, { rule });
}
