/**
 * Where the grid's focus is, and which cells are chosen: kept within the grid as it grows and shrinks, put where a
 * finding or a line just added asks for it. It changes no document.
 */
import { type RefObject, useEffect, useLayoutEffect, useRef, useState } from 'react';
import type { Line, Size } from '../../core/document/pattern.ts';
import { useStudio, useStudioView } from '../shell/hooks.ts';
import { at, type CellAt, type Extent, type Selection, within } from './selection.ts';

export interface GridFocus {
  readonly extent: Extent;
  readonly selection: Selection;
  /** The cell, or head, that has the focus or had it last. */
  readonly focus: CellAt;
  /** The line in whose head the focus is among its fields. */
  readonly inside: number | null;
  setInside(row: number | null): void;
  choose(selection: Selection): void;
  focusOn(cell: CellAt): void;
  /** Chooses, and takes the focus along. */
  go(selection: Selection): void;
  /** Goes to a cell that is drawn next; with `field`, into the first field of a line's head. */
  goSoon(cell: CellAt, field?: boolean): void;
  /** Goes into the fields of a line's head. */
  enterHead(row: number): void;
  /** The focus came to a cell by itself: by Tab, or by a press. */
  came(cell: CellAt): void;
}

export const isSame = (a: CellAt, b: CellAt): boolean => a.row === b.row && a.column === b.column;

/** The cell or head that something in the grid belongs to. */
export function cellFrom(target: EventTarget): CellAt | null {
  const cell = (target as Element).closest<HTMLElement>('[data-cell]')?.dataset.cell;
  if (cell === undefined) return null;
  const [row, column] = cell.split(' ').map(Number);
  return { row: row!, column: column! };
}

/** @param added Id of a line that was just added, to be named next. */
export function useGridFocus(
  grid: RefObject<HTMLTableElement | null>,
  lines: readonly Line[],
  sizes: readonly Size[],
  added: string | null,
): GridFocus {
  const studio = useStudio();
  const target = useStudioView((view) => view.target);
  const [chosen, choose] = useState<Selection>(() => at(0, 0));
  const [inside, setInside] = useState<number | null>(null);
  /** Cell, or the first field of a line's head, that gets the focus once it is drawn. */
  const pending = useRef<{ readonly cell: CellAt; readonly field: boolean } | null>(null);
  const extent = { rows: lines.length, columns: sizes.length };
  const selection = within(chosen, extent);

  const element = ({ row, column }: CellAt) =>
    grid.current?.querySelector<HTMLElement>(`[data-cell="${row} ${column}"]`) ?? null;
  const focusOn = (cell: CellAt) => element(cell)?.focus();

  useLayoutEffect(() => {
    if (pending.current === null) return;
    const { cell, field } = pending.current;
    const found = element(cell);
    if (found === null) return;
    pending.current = null;
    found.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    const first = field ? found.querySelector<HTMLInputElement>('input') : null;
    (first ?? found).focus();
    first?.select();
  });

  /** What was here when it was last drawn, and whether some of it went since, maybe with the focus. */
  const drawn = useRef(extent);
  const isShrunk = useRef(false);
  useLayoutEffect(() => {
    if (extent.rows < drawn.current.rows || extent.columns < drawn.current.columns) isShrunk.current = true;
    drawn.current = extent;
    // The question that was asked first gives the focus back when it closes, to what is no longer there.
    if (!isShrunk.current || document.querySelector('dialog[open]') !== null) return;
    isShrunk.current = false;
    if (document.activeElement === document.body) (element(selection.focus) ?? grid.current)?.focus();
  });

  useEffect(() => {
    if (target === null) return;
    const row = lines.findIndex(({ id }) => id === target.node);
    const column = sizes.findIndex(({ id }) => id === target.node);
    const cell = row >= 0 ? { row, column: -1 } : column >= 0 ? { row: -1, column } : null;
    if (cell === null) return;
    pending.current = { cell, field: false };
    choose(at(cell.row, cell.column));
    studio.reached(target.serial);
  }, [studio, target, lines, sizes]);

  const named = useRef<string | null>(null);
  // With the press that added it: letters that follow at once are its name.
  useLayoutEffect(() => {
    const row = added === null || added === named.current ? -1 : lines.findIndex(({ id }) => id === added);
    if (row < 0) return;
    named.current = added;
    choose(at(row, -1));
    pending.current = { cell: { row, column: -1 }, field: true };
    setInside(row);
  }, [added, lines]);

  return {
    extent,
    selection,
    focus: selection.focus,
    inside,
    setInside,
    choose,
    focusOn,
    go: (next) => {
      choose(next);
      focusOn(next.focus);
    },
    goSoon: (cell, field = false) => {
      choose(at(cell.row, cell.column));
      pending.current = { cell, field };
    },
    enterHead: (row) => {
      setInside(row);
      element({ row, column: -1 })?.querySelector<HTMLElement>('input, select, button')?.focus();
    },
    came: (cell) => {
      setInside(cell.row >= 0 && cell.column < 0 ? cell.row : null);
      choose((before) => (isSame(before.focus, cell) ? before : at(cell.row, cell.column)));
    },
  };
}
