/**
 * Which rows the ledger has: the blocks of all pieces that make rows, with their places in the document. What a
 * row has of its own is kept for its block, so that an edit costs one walk over the blocks. It knows no counts and no screen.
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

/** What a row has of its own, wherever it stands. */
type Own = Pick<LedgerRow, 'id' | 'isText' | 'nodes'>;

const MAKES_ROWS = new Set(['row', 'repeat', 'shaping']);
const own = new WeakMap<Node, Own>();
const inDocuments = new WeakMap<Node, readonly LedgerRow[]>();

function ownOf(block: Node): Own {
  const known = own.get(block);
  if (known !== undefined) return known;
  const { id } = block.attrs;
  const isShaping = block.type.name === 'shaping';
  const nodes = isShaping ? [id, block.child(0).attrs.id, block.child(1).attrs.id] : [id];
  const row = { id, isText: block.isTextblock, nodes };
  own.set(block, row);
  return row;
}

/** The rows of a document, in order. The same document gives the same list. */
export function rowsOf(document: Node): readonly LedgerRow[] {
  const known = inDocuments.get(document);
  if (known !== undefined) return known;
  const rows: LedgerRow[] = [];
  const { node: pieces, pos } = listAt(document, 'pieces');
  let before = pos + 1;
  for (const piece of pieces.children) {
    // Past the piece's own opening, its title, the opening of its blocks.
    let at = before + 1 + piece.child(0).nodeSize + 1;
    for (const block of piece.child(1).children) {
      if (MAKES_ROWS.has(block.type.name)) {
        const { id, isText, nodes } = ownOf(block);
        rows.push({ id, pos: at, isText, piece: piece.attrs.id, nodes });
      }
      at += block.nodeSize;
    }
    before += piece.nodeSize;
  }
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
