/**
 * What a piece and its blocks came to in every size: the shapes that the study hands out. It works nothing.
 */
import type { Block, Piece } from '../document/pattern.ts';
import type { Fabric, Opening, Tally } from '../fabric/index.ts';
import type { Finding } from '../finding.ts';
import type { FigureResult } from '../grading/index.ts';
import type { RowTree } from '../notation/tree.ts';

export type Side = 'RS' | 'WS';

/** What a block came to in one size. */
export interface BlockInSize {
  /** Numbers of its first and last row; null when unnumbered. */
  readonly first: number | null;
  readonly last: number | null;
  /** Side that faces on its first row, where the piece has sides. */
  readonly side: Side | null;
  /** Counts after it. */
  readonly tally: Tally;
  readonly repeats: number | null;
  /** Rows it made. */
  readonly rows: number;
}

export interface BlockStudy {
  readonly block: Block;
  /** Tree of a row block, else null. */
  readonly tree: RowTree | null;
  /** One entry a size; null where the size does not work the block. Empty for prose. */
  readonly sizes: readonly (BlockInSize | null)[];
  /** Values of the text's figures: for each figure, one result a size. */
  readonly figures: readonly (readonly FigureResult[])[];
  readonly findings: readonly Finding[];
}

export interface PieceStudy {
  readonly piece: Piece;
  readonly blocks: readonly BlockStudy[];
  /** Per size: rows worked, the last fabric, chains of the foundation, stitches left waiting. */
  readonly rows: readonly number[];
  readonly fabrics: readonly (Fabric | null)[];
  readonly foundations: readonly number[];
  readonly openings: readonly (readonly Opening[])[];
  /** Stitches that the piece starts from, where it starts from others. */
  readonly starts: readonly (number | null)[];
  readonly findings: readonly Finding[];
}
