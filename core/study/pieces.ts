/**
 * Works every piece of a pattern in every size: blocks in order, rows numbered, repeats and shaping carried
 * out, sides followed. The one place that runs the engine for a pattern. Judges nothing itself: facts come
 * from the engine and from what a block asks that cannot be done.
 */
import type { Block, Edge, FigureText, Pattern, Piece, RowBlock } from '../document/pattern.ts';
import {
  type Env,
  type Fabric,
  type Opening,
  parted,
  roundOpening,
  rowsNamed,
  type Tally,
  type Tracer,
  workRow,
  worksTurningChain,
} from '../fabric/index.ts';
import type { Fact, Finding } from '../finding.ts';
import { type SizedFact, tell } from '../findings/index.ts';
import { evaluate, type FigureResult, lineNamed, type Sheet } from '../grading/index.ts';
import type { Convention, Definition, RowTree } from '../notation/tree.ts';
import { type EdgeSource, edgeFabric } from './edges.ts';
import type { Memory } from './memory.ts';
import { type Readings, rowBlocks } from './reading.ts';
import { conventionsIn } from './rows.ts';
import { reportFigures, type SizeWork, type Stand, workSize } from './size-work.ts';

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

interface PieceBasis {
  readonly piece: Piece;
  readonly sheet: Sheet;
  readonly terms: Pattern['terms'];
  readonly sizes: Pattern['sizes'];
  readonly definitions: Readings['definitions'];
  readonly conventions: Readings['conventions'];
  readonly names: readonly string[];
  readonly asked: Asked;
  readonly started: readonly Start[];
}

/** What a piece starts from in one size. */
interface Start {
  readonly fabric: Fabric | null;
  readonly stitches: number | null;
  readonly facts: readonly Fact[];
}

/** For each block what it asks of the sheet, in each size, to be compared; null where it asks nothing. */
type Asked = readonly (readonly (readonly unknown[])[] | null)[];

/** How a piece was worked, kept apart from what it came to. */
interface Working {
  readonly basis: PieceBasis;
  readonly envs: readonly Env[];
  readonly sizes: readonly SizeWork[];
  readonly readings: Readings;
  readonly memory: Memory;
}

const workings = new WeakMap<PieceStudy, Working>();
const envs = new WeakMap<
  ReadonlyMap<string, Definition>,
  { conventions: readonly Convention[]; key: string; made: readonly Env[] }[]
>();

function sameList(a: readonly unknown[], b: readonly unknown[]): boolean {
  if (a === b) return true;
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

/** Whether the blocks that did not change would come to the same, but for what they ask and start from. */
function sameGround(a: PieceBasis, b: PieceBasis): boolean {
  return (
    a.piece.firstSide === b.piece.firstSide &&
    a.terms === b.terms &&
    a.definitions === b.definitions &&
    a.conventions === b.conventions &&
    (a.sizes === b.sizes ||
      (a.sizes.length === b.sizes.length &&
        a.sizes.every(({ id, label }, i) => id === b.sizes[i]!.id && label === b.sizes[i]!.label))) &&
    sameList(a.names, b.names)
  );
}

/** What a start lacks is part of what the piece came to, even where the fabric is the same. */
function sameStart(a: Start, b: Start): boolean {
  return (
    a === b ||
    (a.fabric === b.fabric &&
      a.stitches === b.stitches &&
      JSON.stringify(a.facts) === JSON.stringify(b.facts))
  );
}

function sameBasis(a: PieceBasis, b: PieceBasis): boolean {
  return (
    a.piece === b.piece &&
    sameGround(a, b) &&
    a.started.every((start, size) => sameStart(start, b.started[size]!)) &&
    (a.sheet === b.sheet || a.asked.every((asked, i) => sameAsked(asked, b.asked[i]!, null)))
  );
}

/** Whether a block asked the same, in one size or (null) in all. */
function sameAsked(a: Asked[number], b: Asked[number], size: number | null): boolean {
  if (a === null || b === null) return a === b;
  if (size !== null) return sameList(a[size]!, b[size]!);
  return a.length === b.length && a.every((own, i) => sameList(own, b[i]!));
}

type At = (expression: string) => readonly FigureResult[];

const figures = new WeakMap<Sheet, At>();

/** Expressions of one sheet remembered; past it the memory starts afresh. */
const EXPRESSIONS = 5000;

/** What an expression comes to in each size of a sheet. */
function figuresOn(sheet: Sheet): At {
  const before = figures.get(sheet);
  if (before !== undefined) return before;
  const known = new Map<string, readonly FigureResult[]>();
  const at: At = (expression) => {
    let results = known.get(expression);
    if (results === undefined) {
      results = sheet.sizes.map((_, size) => evaluate(expression, sheet, size));
      if (known.size >= EXPRESSIONS) known.clear();
      known.set(expression, results);
    }
    return results;
  };
  figures.set(sheet, at);
  return at;
}

/** A figure's result as one value that is the same when the result is. */
function keyOf({ count, value, facts, waitsFor }: FigureResult): unknown {
  if (count !== null) return count;
  // The findings tell the numbers that the facts carry.
  if (value === null) return `${JSON.stringify(facts)}|${waitsFor}`;
  if (value.dimension === 'schedule') return value.schedule;
  if (value.dimension === 'spread') return value.spread;
  return `${value.dimension}:${value.value.toFraction()}`;
}

/** The expressions of a block. */
function expressionsOf(block: Block): readonly string[] {
  switch (block.type) {
    case 'row':
    case 'prose':
      return block.text.figures;
    case 'repeat':
      return ['times' in block.until ? block.until.times : block.until.rows];
    case 'shaping':
      return [...block.shaped.text.figures, ...block.even.text.figures];
    default:
      return NOTHING;
  }
}

const NOTHING: readonly string[] = [];

/** Everything of the sheet that the blocks ask for. */
function askedBy(piece: Piece, sheet: Sheet, at: At): Asked {
  return piece.blocks.map((block) => {
    const expressions = expressionsOf(block);
    const line = block.type === 'shaping' ? (lineNamed(sheet, block.line)?.sizes ?? null) : null;
    if (expressions.length === 0 && block.type !== 'shaping') return null;
    return sheet.sizes.map((_, size) => [
      line?.[size] ?? null,
      ...expressions.map((expression) => keyOf(at(expression)[size]!)),
    ]);
  });
}

const turning = new WeakMap<RowTree, boolean>();

function rowWorksTurningChain(tree: RowTree): boolean {
  const known = turning.get(tree);
  if (known !== undefined) return known;
  const works = worksTurningChain(tree.items);
  turning.set(tree, works);
  return works;
}

function envsFor(pattern: Pattern, readings: Readings, trees: readonly RowTree[]): readonly Env[] {
  const conventions = [...conventionsIn(trees), ...readings.conventions];
  const turningChainWorked = trees.some(rowWorksTurningChain);
  const key = `${pattern.sizes.length}|${turningChainWorked}`;
  let known = envs.get(readings.definitions);
  if (known === undefined) {
    known = [];
    envs.set(readings.definitions, known);
  }
  const same = known.find(
    (entry) =>
      entry.key === key &&
      entry.conventions.length === conventions.length &&
      entry.conventions.every((convention, i) => sameConvention(convention, conventions[i]!)),
  );
  if (same !== undefined) return same.made;
  const made = pattern.sizes.map(
    (_, size): Env => ({
      size,
      sizes: pattern.sizes.length,
      only: null,
      names: readings.definitions,
      conventions,
      turningChainWorked,
      rowEnds: 0,
      foundation: 0,
      earlier: null,
      parts: null,
      trace: null,
      of: null,
    }),
  );
  known.push({ conventions, key, made });
  if (known.length > 40) known.shift();
  return made;
}

/** Do two conventions say the same, wherever they stand in the text? */
function sameConvention(a: Convention, b: Convention): boolean {
  if (a === b) return true;
  const say = (convention: Convention) =>
    JSON.stringify([convention.chains, convention.counts], (key, value) =>
      key === 'from' || key === 'to' ? undefined : value,
    );
  return say(a) === say(b);
}

/** How many blocks at the beginning and at the end are the same and ask the same in a size. */
function keptBlocks(now: PieceBasis, then: PieceBasis, size: number): { head: number; tail: number } {
  const [blocks, others] = [now.piece.blocks, then.piece.blocks];
  const isSame = (i: number, j: number) =>
    blocks[i] === others[j] && (now.sheet === then.sheet || sameAsked(now.asked[i]!, then.asked[j]!, size));
  const most = Math.min(blocks.length, others.length);
  let head = 0;
  while (head < most && isSame(head, head)) head += 1;
  let tail = 0;
  while (tail < most - head && isSame(blocks.length - 1 - tail, others.length - 1 - tail)) tail += 1;
  return { head, tail };
}

/** Whether a row speaks of rows before the one below it, or goes into them, so that it cannot be worked without them. */
const speaksOfRows = (tree: RowTree): boolean =>
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

const goingBack = new WeakMap<PieceStudy, boolean>();

/** Does any row of the piece speak of rows far before it? */
function goesBack(piece: PieceStudy): boolean {
  let known = goingBack.get(piece);
  if (known === undefined) {
    const readings = workings.get(piece)?.readings;
    known =
      readings !== undefined &&
      rowBlocks(piece.piece.blocks).some((block) => speaksOfRows(readings.row(block)));
    goingBack.set(piece, known);
  }
  return known;
}

/** Where the work of each block of a piece begins in a size; null for a study that was not made here. */
export function standsOf(piece: PieceStudy, size: number): readonly Stand[] | null {
  return workings.get(piece)?.sizes[size]?.stands ?? null;
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
  const working = workings.get(piece);
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
  const working = workings.get(piece);
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
  return workings.get(piece)?.basis.started[size]?.fabric ?? null;
}

/** Brings together what a block came to in every size, and tells what was noticed. */
function blockStudy(
  block: Block,
  index: number,
  sizes: readonly SizeWork[],
  readings: Readings,
  at: At,
  telling: { readonly terms: Pattern['terms']; readonly labels: readonly string[] },
): BlockStudy {
  const isWords = block.type === 'prose' || block.type === 'heading' || block.type === 'photo';
  const text = block.type === 'row' || block.type === 'prose' ? block.text : null;
  const facts = new Map<string, SizedFact[]>();
  const report = (node: string, size: number | null, fact: Fact) => {
    const list = facts.get(node);
    if (list === undefined) facts.set(node, [{ size, fact }]);
    else list.push({ size, fact });
  };
  sizes.forEach((size, i) => {
    for (const { node, fact } of size.facts[index]!) report(node, i, fact);
  });
  for (const row of rowBlocks([block]))
    for (const fact of readings.row(row).facts) report(row.id, null, fact);
  if (block.type === 'prose') reportFigures(block.id, block.text, at, report, false);
  const nodes = block.type === 'shaping' ? [block.id, block.shaped.id, block.even.id] : [block.id];
  return {
    block,
    tree: block.type === 'row' ? readings.row(block) : null,
    sizes: isWords ? [] : sizes.map((size) => size.blocks[index] ?? null),
    figures: text === null ? [] : text.figures.map(at),
    findings:
      facts.size === 0
        ? []
        : nodes.flatMap((node) => tell(facts.get(node) ?? [], { ...telling, node, ...textOf(block, node) })),
  };
}

function textOf(block: Block, node: string): { readonly text: string; readonly figures?: readonly string[] } {
  if (block.type === 'row' || block.type === 'prose') return withFigures(block.text);
  if (block.type !== 'shaping') return { text: '' };
  if (node === block.shaped.id) return withFigures(block.shaped.text);
  return node === block.even.id ? withFigures(block.even.text) : { text: block.line };
}

const withFigures = ({ text, figures }: FigureText) => (figures.length === 0 ? { text } : { text, figures });

function sameBlock(a: BlockStudy, b: BlockStudy): boolean {
  return (
    a.tree === b.tree &&
    a.findings.length === 0 &&
    b.findings.length === 0 &&
    a.sizes.length === b.sizes.length &&
    a.sizes.every((size, i) => sameInSize(size, b.sizes[i]!)) &&
    a.figures.length === b.figures.length &&
    a.figures.every((values, i) =>
      values.every((value, size) => value.count !== null && value.count === b.figures[i]![size]?.count),
    )
  );
}

function sameInSize(a: BlockInSize | null, b: BlockInSize | null): boolean {
  if (a === null || b === null) return a === b;
  return (
    a.first === b.first &&
    a.last === b.last &&
    a.side === b.side &&
    a.tally === b.tally &&
    a.repeats === b.repeats &&
    a.rows === b.rows
  );
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
