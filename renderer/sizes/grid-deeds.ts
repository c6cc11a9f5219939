/**
 * What is done to the sheet from its grid: amounts given, emptied, filled, copied and pasted; lines and sizes moved.
 * Each is one transaction, and is told in words. It draws nothing and works nothing out.
 */
import { moveItem } from '../desk/edits.ts';
import { useDesk, useDeskView } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { sizesWords } from '../words/sizes.ts';
import { filled, type Pasting, pasted, setCells } from './edits.ts';
import type { GridFocus } from './grid-focus.ts';
import { isTypedIn, ownQuantity, quantityText, readCell } from './quantities.ts';
import { type CellAt, rangeOf } from './selection.ts';
import { readTable, writeTable } from './tsv.ts';

export interface GridDeeds {
  /** What stands in a cell for typing; null where nothing is typed, which is told. */
  textOf(cell: CellAt): string | null;
  /** Takes what was typed; false when it is no amount. */
  give(cell: CellAt, text: string): boolean;
  /** Tells that what was typed is no amount. */
  refuse(text: string): void;
  /** Empties the chosen cells. */
  clear(): void;
  fill(way: 'right' | 'down'): void;
  moveLine(row: number, by: number): void;
  moveSize(column: number, by: number): void;
  /** The chosen cells as a spreadsheet takes them. */
  copied(): string;
  /** Puts a spreadsheet's cells down at the chosen ones. */
  paste(text: string): void;
}

export function useGridDeeds(
  { selection, focus, extent, choose, focusOn, goSoon }: GridFocus,
  reported: readonly number[],
  onTell: (words: string) => void,
): GridDeeds {
  const desk = useDesk();
  const pattern = useDeskView((view) => view.pattern);
  const report = useDeskView((view) => view.report);
  const reader = useReader();
  const { lines, sizes } = pattern;

  const cellsIn = () => {
    const { top, bottom, left, right } = rangeOf(selection);
    return lines
      .slice(Math.max(0, top), bottom + 1)
      .map((line) =>
        sizes
          .slice(Math.max(0, left), right + 1)
          .map((size, c) => ({ line, size, column: Math.max(0, left) + c })),
      );
  };

  const clear = () => {
    const changes = cellsIn()
      .flat()
      .filter(({ line, size }) => isTypedIn(line) && ownQuantity(line, size.id) !== null)
      .map(({ line, size }) => ({ line: line.id, size: size.id, value: null }));
    if (changes.length > 0) desk.dispatch(setCells(desk.view().state, changes));
    onTell(changes.length > 0 ? sizesWords.cleared(changes.length) : sizesWords.workedOut);
  };

  return {
    textOf: (cell) => {
      const [line, size] = [lines[cell.row], sizes[cell.column]];
      if (line === undefined || size === undefined) return null;
      if (!isTypedIn(line)) {
        onTell(sizesWords.workedOut);
        return null;
      }
      const own = ownQuantity(line, size.id);
      return own === null ? '' : quantityText(own);
    },
    give: (cell, text) => {
      const [line, size] = [lines[cell.row], sizes[cell.column]];
      if (line === undefined || size === undefined) return true;
      const own = ownQuantity(line, size.id);
      if (text === (own === null ? '' : quantityText(own))) return true;
      const value = text.trim() === '' ? null : readCell(text, line, size.id, reader.units);
      if (value === null && text.trim() !== '') return false;
      desk.dispatch(setCells(desk.view().state, [{ line: line.id, size: size.id, value }]));
      const wasAlike = 'values' in line && 'all' in line.values && sizes.length > 1;
      onTell(wasAlike ? sizesWords.noLongerAlike(line.name, size.label) : '');
      return true;
    },
    refuse: (text) => onTell(sizesWords.notAnAmount(text)),
    clear,
    fill: (way) => {
      const changes = filled(pattern, rangeOf(selection), way);
      if (changes.length > 0) desk.dispatch(setCells(desk.view().state, changes));
      const done = way === 'right' ? sizesWords.filledRight : sizesWords.filledDown;
      onTell(changes.length > 0 ? done : sizesWords.nothingToFill);
    },
    moveLine: (row, by) => {
      const to = row + by;
      const line = lines[row];
      if (line === undefined || to < 0 || to >= extent.rows) return;
      desk.dispatch(moveItem(desk.view().state, 'lines', row, to));
      goSoon({ row: to, column: focus.row === row ? focus.column : -1 });
      onTell(sizesWords.moved(line.name, to + 1, extent.rows));
    },
    moveSize: (column, by) => {
      const to = column + by;
      const size = sizes[column];
      if (size === undefined || to < 0 || to >= extent.columns) return;
      desk.dispatch(moveItem(desk.view().state, 'sizes', column, to));
      goSoon({ row: focus.row, column: to });
      onTell(sizesWords.moved(size.label, to + 1, extent.columns));
    },
    copied: () =>
      writeTable(
        cellsIn().map((cells) =>
          cells.map(({ line, size, column }) => {
            const own = ownQuantity(line, size.id);
            if (own !== null) return quantityText(own);
            const cell = report.lines.get(line.id)?.cells[reported[column] ?? -1];
            return reader.say(cell?.value?.[reader.units] ?? '', 'row');
          }),
        ),
      ),
    paste: (text) => {
      const table = readTable(text);
      const range = rangeOf(selection);
      const done = pasted(pattern, table, range, reader.units);
      if (done.changes.length > 0) desk.dispatch(setCells(desk.view().state, done.changes));
      onTell(pastingWords(done));
      const first = { row: range.top, column: range.left };
      const widest = Math.max(...table.map((row) => row.length));
      if (table.length > 1 || widest > 1) {
        const row = Math.min(extent.rows - 1, range.top + table.length - 1);
        const column = Math.min(extent.columns - 1, range.left + widest - 1);
        choose({ anchor: { row, column }, focus: first });
      }
      focusOn(first);
    },
  };
}

function pastingWords({ changes, unread, workedOut, outside }: Pasting): string {
  return [
    sizesWords.pasted(changes.length),
    unread.length > 0 ? sizesWords.unread(unread) : '',
    workedOut > 0 ? sizesWords.skipped(workedOut) : '',
    outside > 0 ? sizesWords.outside(outside) : '',
  ]
    .filter(Boolean)
    .join(' ');
}
