/**
 * Which rows the ledger has: the blocks of all pieces that make rows, with their places in the document. Kept
 * per piece, so that an edit costs its own piece. It knows no counts and no screen.
 */
import type { Node } from 'prosemirror-model';
import { listAt } from '../desk/places.ts';

/** A row of the ledger: a block that makes rows. */
export interface LedgerRow {
  readonly id: string;
  /** Position before the block, in the document that the rows were asked of. */
  readonly pos: number;
  /** Whether the block is text of its own; else it is a form (a repeat, a shaping). */
  readonly isText: boolean;
  readonly piece: string;
  /** Ids that findings of this row may name: its own, and those of the rows within a shaping. */
  readonly nodes: readonly string[];
}

type Inner = Omit<LedgerRow, 'pos' | 'piece'> & { readonly offset: number };

const MAKES_ROWS = new Set(['row', 'repeat', 'shaping']);
const inPieces = new WeakMap<Node, readonly Inner[]>();
const inDocuments = new WeakMap<Node, readonly LedgerRow[]>();

function rowsInPiece(piece: Node): readonly Inner[] {
  const known = inPieces.get(piece);
  if (known !== undefined) return known;
  const rows: Inner[] = [];
  const blocks = piece.child(1);
  // Offsets from the piece: its own opening, its title, the opening of its blocks.
  const start = 1 + piece.child(0).nodeSize + 1;
  blocks.forEach((block, offset) => {
    if (!MAKES_ROWS.has(block.type.name)) return;
    const id: string = block.attrs.id;
    rows.push({
      id,
      offset: start + offset,
      isText: block.isTextblock,
      nodes: block.type.name === 'shaping' ? [id, block.child(0).attrs.id, block.child(1).attrs.id] : [id],
    });
  });
  inPieces.set(piece, rows);
  return rows;
}

/** The rows of a document, in order. The same document gives the same list. */
export function rowsOf(document: Node): readonly LedgerRow[] {
  const known = inDocuments.get(document);
  if (known !== undefined) return known;
  const rows: LedgerRow[] = [];
  const { node, pos } = listAt(document, 'pieces');
  node.forEach((piece, offset) => {
    const at = pos + 1 + offset;
    for (const { offset: within, ...row } of rowsInPiece(piece))
      rows.push({ ...row, pos: at + within, piece: piece.attrs.id });
  });
  inDocuments.set(document, rows);
  return rows;
}

/** Index of the row that a position of the document lies in; -1 when it lies in none. */
export function rowAt(document: Node, position: number): number {
  const rows = rowsOf(document);
  let [low, high] = [0, rows.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rows[middle]!.pos <= position) low = middle + 1;
    else high = middle;
  }
  const row = rows[low - 1];
  if (row === undefined) return -1;
  const node = document.nodeAt(row.pos);
  return node !== null && position <= row.pos + node.nodeSize ? low - 1 : -1;
}
