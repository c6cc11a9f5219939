/**
 * Where a key leads in the ledger. The head is row -1. Keys follow the grid pattern of the ARIA Authoring
 * Practices Guide (W3C): arrows by one cell, Home and End within the row, with Control to the corners.
 */

export interface CellAt {
  /** Index of the row; -1 is the head. */
  readonly row: number;
  /** Index of the size. */
  readonly size: number;
}

export interface GridShape {
  readonly rows: number;
  readonly sizes: number;
  /** Rows that a page holds. */
  readonly page: number;
}

const between = (low: number, high: number, value: number): number => Math.min(high, Math.max(low, value));

/** The cell that `key` leads to; null when the key does not move. */
export function moved(key: string, withControl: boolean, at: CellAt, shape: GridShape): CellAt | null {
  const row = (to: number): CellAt => ({ ...at, row: between(-1, shape.rows - 1, to) });
  const size = (to: number): CellAt => ({ ...at, size: between(0, shape.sizes - 1, to) });
  switch (key) {
    case 'ArrowUp':
      return row(withControl ? -1 : at.row - 1);
    case 'ArrowDown':
      return row(withControl ? shape.rows - 1 : at.row + 1);
    case 'ArrowLeft':
      return size(withControl ? 0 : at.size - 1);
    case 'ArrowRight':
      return size(withControl ? shape.sizes - 1 : at.size + 1);
    case 'PageUp':
      return row(Math.max(at.row === -1 ? -1 : 0, at.row - shape.page));
    case 'PageDown':
      return row(at.row + shape.page);
    case 'Home':
      return withControl ? { row: Math.min(0, shape.rows - 1), size: 0 } : size(0);
    case 'End':
      return withControl ? { row: shape.rows - 1, size: shape.sizes - 1 } : size(shape.sizes - 1);
    default:
      return null;
  }
}
