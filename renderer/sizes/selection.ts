/**
 * The grid's cells by row and column, and where its keys lead. Row −1 holds the sizes' heads, column −1 the lines'
 * heads. Knows no document and draws nothing.
 */

export interface CellAt {
  readonly row: number;
  readonly column: number;
}

/** A range of cells: it was begun at the anchor, and the focus is at its other end. */
export interface Selection {
  readonly anchor: CellAt;
  readonly focus: CellAt;
}

export interface Extent {
  readonly rows: number;
  readonly columns: number;
}

export const at = (row: number, column: number): Selection => ({
  anchor: { row, column },
  focus: { row, column },
});

const between = (least: number, value: number, most: number) => Math.max(least, Math.min(most, value));

/** The selection within a grid that became smaller. */
export function within({ anchor, focus }: Selection, { rows, columns }: Extent): Selection {
  const inside = (cell: CellAt): CellAt => ({
    row: between(-1, cell.row, rows - 1),
    column: between(-1, cell.column, columns - 1),
  });
  return { anchor: inside(anchor), focus: inside(focus) };
}

/** First and last row and column of a range; heads are never part of a range. */
export function rangeOf({ anchor, focus }: Selection): {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
} {
  return {
    top: Math.min(anchor.row, focus.row),
    bottom: Math.max(anchor.row, focus.row),
    left: Math.min(anchor.column, focus.column),
    right: Math.max(anchor.column, focus.column),
  };
}

export function isInRange(selection: Selection, row: number, column: number): boolean {
  const { top, bottom, left, right } = rangeOf(selection);
  return row >= top && row <= bottom && column >= left && column <= right;
}

/** Rows that Page Up and Page Down go. */
const PAGE = 8;

/** The selection after a key that moves; null for other keys. With `extend` the anchor stays. */
export function moved(
  selection: Selection,
  key: string,
  { extend, far }: { readonly extend: boolean; readonly far: boolean },
  { rows, columns }: Extent,
): Selection | null {
  const { row, column } = selection.focus;
  const isCell = row >= 0 && column >= 0;
  // A range holds cells only: extending never reaches the heads.
  const first = extend && isCell ? 0 : -1;
  const to = (nextRow: number, nextColumn: number): Selection => {
    const focus = {
      row: between(first, nextRow, rows - 1),
      column: between(first, nextColumn, columns - 1),
    };
    return extend && isCell ? { anchor: selection.anchor, focus } : { anchor: focus, focus };
  };
  switch (key) {
    case 'ArrowUp':
      return to(far ? 0 : row - 1, column);
    case 'ArrowDown':
      return to(far ? rows - 1 : row + 1, column);
    case 'ArrowLeft':
      return to(row, far ? 0 : column - 1);
    case 'ArrowRight':
      return to(row, far ? columns - 1 : column + 1);
    case 'Home':
      return to(far ? first : row, first);
    case 'End':
      return to(far ? rows - 1 : row, columns - 1);
    case 'PageUp':
      return to(row - PAGE, column);
    case 'PageDown':
      return to(row + PAGE, column);
    default:
      return null;
  }
}
