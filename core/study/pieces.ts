/**
 * Works every piece of a pattern in every size: blocks in order, rows numbered, repeats and shaping carried
 * out, sides followed; what stands as it was is not worked again. Judges nothing itself: facts come from the engine
 * and from what a block asks that cannot be done.
 */
import type { Edge, Pattern, Piece } from '../document/pattern.ts';
import { type Env, type Fabric, parted, roundOpening, rowsNamed } from '../fabric/index.ts';
import { tell } from '../findings/index.ts';
import type { Sheet } from '../grading/index.ts';
import type { RowTree } from '../notation/tree.ts';
import { blockStudy, sameBlock } from './block-study.ts';
import { type EdgeSource, edgeFabric } from './edges.ts';
import { envsFor } from './envs.ts';
import type { Memory } from './memory.ts';
import { askedBy, keptBlocks, type PieceBasis, type Start, sameBasis, sameGround } from './piece-basis.ts';
import type { BlockStudy, PieceStudy } from './piece-study.ts';
import { type Readings, rowBlocks } from './reading.ts';
import { type At, figuresOn } from './sheet-figures.ts';
import { type SizeWork, workSize } from './size-work.ts';

/** Works all pieces, in order; a piece that starts from another finds it among those before. */
export function workPieces(
  pattern: Pattern,
  sheet: Sheet,
  readings: Readings,
  memory: Memory,
  previous: readonly PieceStudy[],
): readonly PieceStudy[] {
  const done: PieceStudy[] = [];
  const before = new Map(previous.map((piece) => [piece.piece.id, piece]));
  for (const piece of pattern.pieces) {
    done.push(workPiece(pattern, piece, sheet, readings, memory, done, before.get(piece.id) ?? null));
  }
  return done.length === previous.length && done.every((piece, i) => piece === previous[i]) ? previous : done;
}

/** How a piece was worked, kept apart from what it came to. */
export interface Working {
  readonly basis: PieceBasis;
  readonly envs: readonly Env[];
  readonly sizes: readonly SizeWork[];
  readonly readings: Readings;
  readonly memory: Memory;
}

const workings = new WeakMap<PieceStudy, Working>();

/** How a piece was worked; undefined for a study that was not made here. */
export const workingOf = (piece: PieceStudy): Working | undefined => workings.get(piece);

/** Whether a row speaks of rows before the one below it, or goes into them, so that it cannot be worked without them. */
export const speaksOfRows = (tree: RowTree): boolean =>
  parted(tree).whole.length > 0 || rowsNamed(tree).length > 0 || roundOpening(tree);

function workPiece(
  pattern: Pattern,
  piece: Piece,
  sheet: Sheet,
  readings: Readings,
  memory: Memory,
  done: readonly PieceStudy[],
  previous: PieceStudy | null,
): PieceStudy {
  const at = figuresOn(sheet);
  const old = previous === null ? undefined : workings.get(previous);
  const basis: PieceBasis = {
    piece,
    sheet,
    terms: pattern.terms,
    sizes: pattern.sizes,
    definitions: readings.definitions,
    conventions: readings.conventions,
    names: readings.names,
    asked:
      old !== undefined && old.basis.piece === piece && old.basis.sheet === sheet
        ? old.basis.asked
        : askedBy(piece, sheet, at),
    started: pattern.sizes.map((_, size) =>
      startOf(piece, size, at, sourcesOf(done, size), old?.basis.started[size]?.fabric ?? null),
    ),
  };
  if (previous !== null && old !== undefined && sameBasis(old.basis, basis)) return previous;

  const trees = rowBlocks(piece.blocks).map(readings.row);
  const envs = envsFor(pattern, readings, trees);
  const resumable =
    old !== undefined && pattern.sizes.length > 0 && sameGround(old.basis, basis) && !trees.some(speaksOfRows)
      ? old
      : null;
  const sizes = pattern.sizes.map(({ id }, size): SizeWork => {
    const { fabric } = basis.started[size]!;
    const isAlike =
      resumable !== null &&
      envs[size] === resumable.envs[size] &&
      fabric === resumable.basis.started[size]!.fabric;
    const before = isAlike
      ? {
          blocks: resumable.basis.piece.blocks,
          work: resumable.sizes[size]!,
          ...keptBlocks(basis, resumable.basis, size),
        }
      : null;
    return workSize(piece, size, id, fabric, envs[size]!, readings, sheet, at, memory, before);
  });

  // Blocks that no size worked anew and that ask nothing, or of the same sheet, are what they were.
  const from = Math.min(piece.blocks.length, ...sizes.map((size) => size.from));
  const to = Math.max(0, ...sizes.map((size) => size.to));
  const shift = resumable === null ? 0 : resumable.basis.piece.blocks.length - piece.blocks.length;
  const earlier = new Map(previous?.blocks.map((other) => [other.block, other]));
  const telling = { terms: pattern.terms, labels: pattern.sizes.map((size) => size.label) };
  const blocks = piece.blocks.map((block, i): BlockStudy => {
    if (resumable !== null && (i < from || i >= to)) {
      const kept = previous!.blocks[i < from ? i : i + shift]!;
      if (basis.asked[i] === null || resumable.basis.sheet === sheet) return kept;
    }
    const made = blockStudy(block, i, sizes, readings, at, telling);
    const before = earlier.get(block);
    return before !== undefined && sameBlock(before, made) ? before : made;
  });
  const atPiece = tell(
    basis.started.flatMap((start, size) => start.facts.map((fact) => ({ size, fact }))),
    { ...telling, node: piece.id, text: piece.name },
  );
  const made: PieceStudy = {
    piece,
    blocks,
    rows: sizes.map((size) => size.rows),
    fabrics: sizes.map((size) => size.fabric),
    foundations: sizes.map((size) => size.foundation),
    openings: sizes.map((size) => size.openings),
    starts: basis.started.map((start) => start.stitches),
    findings: [...atPiece, ...blocks.flatMap((block) => block.findings)],
  };
  workings.set(made, { basis, envs, sizes, readings, memory });
  return made;
}

function sourcesOf(done: readonly PieceStudy[], size: number): EdgeSource {
  return (id) => {
    const found = done.find((piece) => piece.piece.id === id);
    if (found === undefined) return null;
    return {
      name: found.piece.name,
      fabric: found.fabrics[size] ?? null,
      rows: found.rows[size] ?? 0,
      foundation: found.foundations[size] ?? 0,
      openings: found.openings[size] ?? [],
    };
  };
}

function startOf(piece: Piece, size: number, at: At, source: EdgeSource, before: Fabric | null): Start {
  if (piece.start.kind === 'chain') return AT_A_CHAIN;
  const amount = (edge: Edge) => (edge.amount === null ? null : (at(edge.amount)[size]?.count ?? null));
  return edgeFabric(piece.start.edges, piece.start.round, amount, source, before);
}

const AT_A_CHAIN: Start = { fabric: null, stitches: null, facts: [] };
