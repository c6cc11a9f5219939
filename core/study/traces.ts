/**
 * Works blocks of a piece that was studied once more, for whoever watches the rows or what each stitch goes into. What
 * the study keeps is not changed by it.
 */
import type { Block, RowBlock } from '../document/pattern.ts';
import { type Fabric, type Tracer, workRow } from '../fabric/index.ts';
import type { Fact } from '../finding.ts';
import type { RowTree } from '../notation/tree.ts';
import type { PieceStudy, Side } from './piece-study.ts';
import { speaksOfRows, workingOf } from './pieces.ts';
import { rowBlocks } from './reading.ts';
import { figuresOn } from './sheet-figures.ts';
import { type Stand, workSize } from './size-work.ts';

const goingBack = new WeakMap<PieceStudy, boolean>();

/** Does any row of the piece speak of rows far before it? */
function goesBack(piece: PieceStudy): boolean {
  let known = goingBack.get(piece);
  if (known === undefined) {
    const readings = workingOf(piece)?.readings;
    known =
      readings !== undefined &&
      rowBlocks(piece.piece.blocks).some((block) => speaksOfRows(readings.row(block)));
    goingBack.set(piece, known);
  }
  return known;
}

/** Where the work of each block of a piece begins in a size; null for a study that was not made here. */
export function standsOf(piece: PieceStudy, size: number): readonly Stand[] | null {
  return workingOf(piece)?.sizes[size]?.stands ?? null;
}

/**
 * Works blocks of a piece once more in one size, as they were worked, and tells the watcher of every row: those from
 * `from` to before `to`, or, where rows speak of rows far before them, all. What the study keeps is not changed by it,
 * and rows that it remembers are not worked again.
 */
export function watchBlocks(
  piece: PieceStudy,
  size: number,
  from: number,
  to: number,
  watcher: NonNullable<Parameters<typeof workSize>[10]>,
): void {
  const working = workingOf(piece);
  const env = working?.envs[size];
  if (working === undefined || env === undefined) return;
  const { basis, readings, memory } = working;
  const { sheet, sizes, started } = basis;
  const { blocks } = piece.piece;
  const work = working.sizes[size]!;
  const before =
    from === 0 || goesBack(piece) ? null : { blocks, work, head: from, tail: blocks.length - to };
  workSize(
    piece.piece,
    size,
    sizes[size]!.id,
    started[size]!.fabric,
    env,
    readings,
    sheet,
    figuresOn(sheet),
    memory,
    before,
    watcher,
  );
}

/** What is worked otherwise than in the study, when some blocks of a piece are worked to be drawn. */
export interface TracedBlocks {
  readonly blocks: readonly Block[];
  /** Tree of a row that takes the place of its own. */
  readonly instead: ReadonlyMap<string, RowTree>;
  readonly start: Fabric | null;
  readonly firstSide: Side | null;
}

/** What tracing some blocks came to. */
export interface TracedWork {
  /** For each block, the facts of working it. */
  readonly facts: readonly (readonly Fact[])[];
  /** For each block, the side that faces before it. */
  readonly facing: readonly (Side | null)[];
  readonly fabric: Fabric | null;
}

/** Works blocks of a piece in one size and records in `tracer` what every stitch went into. The study keeps nothing of it. */
export function traceBlocks(
  piece: PieceStudy,
  size: number,
  of: TracedBlocks,
  tracer: Tracer,
): TracedWork | null {
  const working = workingOf(piece);
  const env = working?.envs[size];
  if (working === undefined || env === undefined) return null;
  const { basis, readings } = working;
  const { sheet, sizes } = basis;
  const row = (block: RowBlock): RowTree => of.instead.get(block.id) ?? readings.row(block);
  const watcher = {
    block: (index: number) => {
      tracer.block = index;
    },
    row: () => undefined,
    again: () => undefined,
    told: () => undefined,
  };
  const worked = workSize(
    { ...piece.piece, blocks: of.blocks, firstSide: of.firstSide },
    size,
    sizes[size]!.id,
    of.start,
    { ...env, trace: tracer },
    { ...readings, row },
    sheet,
    figuresOn(sheet),
    { work: workRow },
    null,
    watcher,
  );
  return {
    facts: worked.facts.map((facts) => facts.map(({ fact }) => fact)),
    facing: worked.stands.map(({ facing }) => facing),
    fabric: worked.fabric,
  };
}

/** The fabric that a piece starts from in a size, where it starts from others. */
export function startFabric(piece: PieceStudy, size: number): Fabric | null {
  return workingOf(piece)?.basis.started[size]?.fabric ?? null;
}
