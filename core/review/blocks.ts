/** Where a block of a piece stands, by its id. It knows nothing of what the block says. */
import type { PieceStudy, Study } from '../study/index.ts';

export interface BlockPlace {
  readonly piece: PieceStudy;
  /** Index among the piece's blocks. */
  readonly at: number;
}

const known = new WeakMap<PieceStudy, ReadonlyMap<string, number>>();

function indexOf(piece: PieceStudy): ReadonlyMap<string, number> {
  const before = known.get(piece);
  if (before !== undefined) return before;
  const made = new Map(piece.blocks.map(({ block }, at) => [block.id, at]));
  known.set(piece, made);
  return made;
}

/** The block of a node; null for what is no block of its own (a note, a row inside a shaping). */
export function blockAt({ pieces }: Study, node: string): BlockPlace | null {
  for (const piece of pieces) {
    const at = indexOf(piece).get(node);
    if (at !== undefined) return { piece, at };
  }
  return null;
}

/** The block of rows that stands last before a place; null when there is none. */
export function rowsBefore({ piece, at }: BlockPlace): PieceStudy['blocks'][number] | null {
  for (let i = at - 1; i >= 0; i--) {
    const own = piece.blocks[i]!;
    if (own.sizes.some((size) => size !== null && size.rows > 0)) return own;
  }
  return null;
}
