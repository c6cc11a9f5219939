/**
 * Edges that are to meet, and how many stitches or rows each has in every size. A meeting that both pieces
 * name counts once. It judges nothing.
 */
import type { Edge, Meeting, Piece } from '../document/pattern.ts';
import { evaluate } from '../grading/index.ts';
import { edgeCount, edgeSites, type Study } from '../study/index.ts';

/** One edge in one size: what it has, and what is asked of it (null = all). Null where it is not there. */
export interface EdgeInSize {
  readonly have: number;
  readonly wanted: number | null;
}

export interface Met {
  readonly piece: Piece;
  readonly mine: Edge;
  readonly other: Edge;
  /** Per size; null where the size works neither piece. */
  readonly sizes: readonly ({ readonly mine: EdgeInSize | null; readonly other: EdgeInSize | null } | null)[];
}

function edgeIn(study: Study, edge: Edge, size: number): EdgeInSize | null {
  const sites = edgeSites(edge, (id) => {
    const found = study.pieces.find(({ piece }) => piece.id === id);
    if (found === undefined) return null;
    return {
      name: found.piece.name,
      fabric: found.fabrics[size] ?? null,
      rows: found.rows[size] ?? 0,
      foundation: found.foundations[size] ?? 0,
      openings: found.openings[size] ?? [],
    };
  });
  if (sites === null) return null;
  const wanted = edge.amount === null ? null : evaluate(edge.amount, study.sheet, size).count;
  return { have: edgeCount(sites), wanted };
}

function isWorked(study: Study, edge: Edge, size: number): boolean {
  const found = study.pieces.find(({ piece }) => piece.id === edge.piece);
  return found === undefined || (found.fabrics[size] ?? null) !== null;
}

const keyOf = ({ piece, kind, which, amount }: Edge) => `${piece}|${kind}|${which}|${amount ?? ''}`;

/** A meeting's edges with the piece that names it in the place of an edge's empty piece. */
function settled(piece: Piece, { mine, other }: Meeting): Meeting {
  const own = (edge: Edge): Edge => (edge.piece === '' ? { ...edge, piece: piece.id } : edge);
  return { mine: own(mine), other: own(other) };
}

/** A meeting that a piece names, in every size: what each edge gives of what it has. */
export function meetingInSizes(study: Study, piece: Piece, meeting: Meeting): Met['sizes'] {
  const { mine, other } = settled(piece, meeting);
  return study.pattern.sizes.map((_, size) =>
    isWorked(study, mine, size) || isWorked(study, other, size)
      ? { mine: edgeIn(study, mine, size), other: edgeIn(study, other, size) }
      : null,
  );
}

/** Every meeting of the pattern's pieces, in every size. */
export function meetingsOf(study: Study): readonly Met[] {
  const seen = new Set<string>();
  return study.pattern.pieces.flatMap((piece) =>
    piece.meets.flatMap((meeting): readonly Met[] => {
      const { mine, other } = settled(piece, meeting);
      const key = [keyOf(mine), keyOf(other)].sort().join(' ');
      if (seen.has(key)) return [];
      seen.add(key);
      return [{ piece, mine, other, sizes: meetingInSizes(study, piece, meeting) }];
    }),
  );
}

/** Name of the piece that an edge belongs to. */
export function pieceOf(study: Study, edge: Edge): string {
  return study.pattern.pieces.find(({ id }) => id === edge.piece)?.name ?? edge.piece;
}
