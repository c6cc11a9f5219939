/**
 * The grid's keys: which deed, or which way, a key means at a cell, at a head and inside a field. It does nothing to
 * the document itself.
 */
import type { KeyboardEvent } from 'react';
import { isMac } from '../commands/keys.ts';
import type { GridDeeds } from './grid-deeds.ts';
import { cellFrom, type GridFocus } from './grid-focus.ts';
import { at, type CellAt, moved } from './selection.ts';

export interface GridKeys {
  readonly at: GridFocus;
  readonly deeds: GridDeeds;
  /** Begins to type in a cell: over what stands there, or on with it. */
  begin(cell: CellAt, text: string | null): void;
  askSize(column: number): void;
  askRemoveSize(column: number): void;
  askRemoveLine(row: number): void;
}

/** Whether something takes its keys itself. */
export const isControl = (target: EventTarget): boolean =>
  /^(?:INPUT|SELECT|BUTTON|TEXTAREA)$/.test((target as Element).tagName) &&
  !(target as HTMLElement).dataset.cell;

/** Answers a key in the grid; what it does not know is left to the browser. */
export function answerKey(event: KeyboardEvent<HTMLTableElement>, keys: GridKeys): void {
  if (event.nativeEvent.isComposing || event.defaultPrevented) return;
  const cell = cellFrom(event.target);
  if (cell !== null && (isControl(event.target) ? inField : onCell)(event, cell, keys))
    event.preventDefault();
}

/** Inside a field or on a button of a head: the way out, and moving its line. */
function inField(event: KeyboardEvent, cell: CellAt, keys: GridKeys): boolean {
  if (movesLine(event, cell, keys)) return true;
  if (event.key !== 'Escape') return false;
  keys.at.focusOn(cell);
  return true;
}

function movesLine({ key, altKey }: KeyboardEvent, cell: CellAt, { deeds }: GridKeys): boolean {
  if (!altKey || (key !== 'ArrowUp' && key !== 'ArrowDown') || cell.row < 0) return false;
  deeds.moveLine(cell.row, key === 'ArrowUp' ? -1 : 1);
  return true;
}

function onCell(event: KeyboardEvent, cell: CellAt, keys: GridKeys): boolean {
  const { key, altKey, shiftKey, metaKey } = event;
  const mod = isMac() ? metaKey : event.ctrlKey;
  const { extent, selection, focus, choose, go, enterHead } = keys.at;
  const [isLine, isSize] = [cell.row >= 0, cell.column >= 0];
  if (movesLine(event, cell, keys)) return true;
  if (altKey && (key === 'ArrowLeft' || key === 'ArrowRight') && !isLine && isSize) {
    keys.deeds.moveSize(cell.column, key === 'ArrowLeft' ? -1 : 1);
    return true;
  }
  if (key === 'a' && mod && isLine && isSize) {
    const last = { row: extent.rows - 1, column: extent.columns - 1 };
    choose({ anchor: last, focus: { row: 0, column: 0 } });
    return true;
  }
  switch (key) {
    case 'Enter':
    case 'F2':
      if (isLine) {
        if (isSize) keys.begin(cell, null);
        else enterHead(cell.row);
        return true;
      }
      if (!isSize || key === 'Enter') return false; // a size's head is a button
      keys.askSize(cell.column);
      return true;
    case 'Delete':
    case 'Backspace':
      if (isLine && isSize) keys.deeds.clear();
      else if (isLine) keys.askRemoveLine(cell.row);
      else if (isSize) keys.askRemoveSize(cell.column);
      return true;
    case 'Escape':
      choose(at(focus.row, focus.column));
      return true;
  }
  if (key.length === 1 && key !== ' ' && !mod && !altKey && !metaKey && isLine && isSize) {
    keys.begin(cell, key);
    return true;
  }
  if (altKey || (metaKey && !isMac())) return false;
  const next = moved(selection, key, { extend: shiftKey, far: mod }, extent);
  if (next === null) return false;
  go(next);
  return true;
}
