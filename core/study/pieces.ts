/**
 * Works every piece of a pattern in every size: blocks in order, rows numbered, repeats and shaping carried
 * out, sides followed. The one place that runs the engine for a pattern. Judges nothing itself: facts come
 * from the engine and from what a block asks that cannot be done.
 */
import type { Block, Edge, FigureText, Pattern, Piece } from '../document/pattern.ts';
import type { Env, Fabric, Opening, Tally } from '../fabric/index.ts';
import type { Fact, Finding } from '../finding.ts';
import { type SizedFact, tell } from '../findings/index.ts';
import { evaluate, type FigureResult, lineNamed, type Sheet } from '../grading/index.ts';
import type { Convention, Definition, RowTree } from '../notation/tree.ts';
import { type EdgeSource, edgeFabric } from './edges.ts';
import type { Memory } from './memory.ts';
import { type Readings, rowBlocks } from './reading.ts';
import { conventionsIn, worksTurningChain } from './rows.ts';
import { reportFigures, workSize } from './size-work.ts';

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
  readonly terms: Pattern['terms'];
  readonly labels: readonly string[];
  readonly definitions: Readings['definitions'];
  readonly conventions: Readings['conventions'];
  readonly names: readonly string[];
  readonly values: readonly unknown[];
  readonly starts: readonly (Fabric | null)[];
}

const bases = new WeakMap<PieceStudy, PieceBasis>();
const envs = new WeakMap<
  ReadonlyMap<string, Definition>,
  { conventions: readonly Convention[]; key: string; made: readonly Env[] }[]
>();

function sameBasis(a: PieceBasis, b: PieceBasis): boolean {
  const same = (x: readonly unknown[], y: readonly unknown[]) =>
    x.length === y.length && x.every((value, i) => value === y[i]);
  return (
    a.piece === b.piece &&
    a.terms === b.terms &&
    a.definitions === b.definitions &&
    a.conventions === b.conventions &&
    same(a.names, b.names) &&
    same(a.labels, b.labels) &&
    same(a.values, b.values) &&
    same(a.starts, b.starts)
  );
}

/** Everything of the sheet that the piece's words and blocks ask for, as a flat list to compare. */
function valuesFor(
  piece: Piece,
  sheet: Sheet,
): { values: unknown[]; at: (expression: string) => readonly FigureResult[] } {
  const values: unknown[] = [];
  const known = new Map<string, readonly FigureResult[]>();
  const at = (expression: string): readonly FigureResult[] => {
    let results = known.get(expression);
    if (results === undefined) {
      results = sheet.sizes.map((_, size) => evaluate(expression, sheet, size));
      known.set(expression, results);
    }
    return results;
  };
  const ask = (expression: string) => {
    for (const result of at(expression)) {
      if (result.count !== null) values.push(result.count);
      else if (result.value === null)
        values.push(`${result.facts.map((fact) => fact.code)}|${result.waitsFor}`);
      else if (result.value.dimension === 'schedule') values.push(result.value.schedule);
      else if (result.value.dimension === 'spread') values.push(result.value.spread);
      else values.push(`${result.value.dimension}:${result.value.value.toFraction()}`);
    }
  };
  const askText = (text: FigureText) => text.figures.forEach(ask);
  for (const block of piece.blocks) {
    if (block.type === 'row' || block.type === 'prose') askText(block.text);
    else if (block.type === 'repeat') ask('times' in block.until ? block.until.times : block.until.rows);
    else if (block.type === 'shaping') {
      askText(block.shaped.text);
      askText(block.even.text);
      values.push(lineNamed(sheet, block.line)?.sizes ?? null);
    }
  }
  if (piece.start.kind === 'edges')
    for (const edge of piece.start.edges) if (edge.amount !== null) ask(edge.amount);
  return { values, at };
}

function envsFor(pattern: Pattern, readings: Readings, trees: readonly RowTree[]): readonly Env[] {
  const conventions = [...conventionsIn(trees), ...readings.conventions];
  const turningChainWorked = trees.some((tree) => worksTurningChain(tree.items));
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
      trace: false,
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

function workPiece(
  pattern: Pattern,
  piece: Piece,
  sheet: Sheet,
  readings: Readings,
  memory: Memory,
  done: readonly PieceStudy[],
  previous: PieceStudy | null,
): PieceStudy {
  const { values, at } = valuesFor(piece, sheet);
  const labels = pattern.sizes.map((size) => size.label);
  const started = pattern.sizes.map((_, size) => startOf(piece, size, at, sourcesOf(done, size), previous));
  const basis: PieceBasis = {
    piece,
    terms: pattern.terms,
    labels,
    definitions: readings.definitions,
    conventions: readings.conventions,
    names: readings.names,
    // What a start lacks is part of what the piece came to, even where the fabric is the same.
    values: [...values, ...started.map((start) => `${start.stitches}|${JSON.stringify(start.facts)}`)],
    starts: started.map((start) => start.fabric),
  };
  const old = previous === null ? undefined : bases.get(previous);
  if (previous !== null && old !== undefined && sameBasis(old, basis)) return previous;

  const trees = rowBlocks(piece.blocks).map(readings.row);
  const env = envsFor(pattern, readings, trees);
  const facts = new Map<string, SizedFact[]>();
  const report = (node: string, size: number | null, fact: Fact) => {
    const list = facts.get(node);
    if (list === undefined) facts.set(node, [{ size, fact }]);
    else list.push({ size, fact });
  };
  started.forEach((start, size) => {
    for (const fact of start.facts) report(piece.id, size, fact);
  });
  const sizes = pattern.sizes.map((size, index) =>
    workSize(piece, index, size.id, started[index]!.fabric, env[index]!, readings, sheet, at, memory, report),
  );
  for (const tree of rowBlocks(piece.blocks))
    for (const fact of readings.row(tree).facts) report(tree.id, null, fact);

  const earlier = new Map(previous?.blocks.map((other) => [other.block, other]));
  const blocks = piece.blocks.map((block, i): BlockStudy => {
    const tree = block.type === 'row' ? readings.row(block) : null;
    const inSizes =
      block.type === 'prose' || block.type === 'heading' || block.type === 'photo'
        ? []
        : sizes.map((size) => size.blocks[i] ?? null);
    const text = block.type === 'row' || block.type === 'prose' ? block.text : null;
    const figures = text === null ? [] : text.figures.map(at);
    if (block.type === 'prose') reportFigures(block.id, block.text, at, report, false);
    const own = [block.id, ...(block.type === 'shaping' ? [block.shaped.id, block.even.id] : [])];
    const findings = own.flatMap((node) =>
      tell(facts.get(node) ?? [], { terms: pattern.terms, labels, node, text: textOf(block, node) }),
    );
    const before = earlier.get(block);
    const made: BlockStudy = { block, tree, sizes: inSizes, figures, findings };
    return before !== undefined && sameBlock(before, made) ? before : made;
  });
  const atPiece = tell(facts.get(piece.id) ?? [], {
    terms: pattern.terms,
    labels,
    node: piece.id,
    text: piece.name,
  });
  const made: PieceStudy = {
    piece,
    blocks,
    rows: sizes.map((size) => size.work.rows),
    fabrics: sizes.map((size) => size.work.fabric),
    foundations: sizes.map((size) => size.work.foundation),
    openings: sizes.map((size) => size.work.openings),
    starts: started.map((start) => start.stitches),
    findings: [...atPiece, ...blocks.flatMap((block) => block.findings)],
  };
  bases.set(made, basis);
  return made;
}

function textOf(block: Block, node: string): string {
  if (block.type === 'row' || block.type === 'prose') return block.text.text;
  if (block.type === 'shaping') {
    return node === block.shaped.id
      ? block.shaped.text.text
      : node === block.even.id
        ? block.even.text.text
        : block.line;
  }
  return '';
}

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

function startOf(
  piece: Piece,
  size: number,
  at: (expression: string) => readonly FigureResult[],
  source: EdgeSource,
  previous: PieceStudy | null,
): { fabric: Fabric | null; stitches: number | null; facts: readonly Fact[] } {
  if (piece.start.kind === 'chain') return { fabric: null, stitches: null, facts: [] };
  const amount = (edge: Edge) => (edge.amount === null ? null : (at(edge.amount)[size]?.count ?? null));
  const old = previous === null ? undefined : bases.get(previous)?.starts[size];
  return edgeFabric(piece.start.edges, piece.start.round, amount, source, old ?? null);
}
