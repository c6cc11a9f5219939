/**
 * Works every piece of a pattern in every size: blocks in order, rows numbered, repeats and shaping carried
 * out, sides followed. The one place that runs the engine for a pattern. Judges nothing itself: facts come
 * from the engine and from what a block asks that cannot be done.
 */
import type { Block, Edge, FigureText, Pattern, Piece, RowBlock } from '../document/pattern.ts';
import { FIGURE } from '../document/pattern.ts';
import {
  type Env,
  type Fabric,
  type Opening,
  PieceWork,
  type RowResult,
  type Tally,
  type Written,
} from '../fabric/index.ts';
import type { Fact, Finding } from '../finding.ts';
import { type SizedFact, tell } from '../findings/index.ts';
import { evaluate, type FigureResult, lineNamed, type Sheet } from '../grading/index.ts';
import type { Convention, Definition, RowTree } from '../notation/tree.ts';
import { type EdgeSource, edgeFabric } from './edges.ts';
import type { Memory } from './memory.ts';
import { type Readings, rowBlocks } from './reading.ts';
import { conventionsIn, worksTurningChain } from './rows.ts';

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

/** Facts of a text's figures, at the figure that they concern. */
function reportFigures(
  node: string,
  text: FigureText,
  at: (expression: string) => readonly FigureResult[],
  report: (node: string, size: number | null, fact: Fact) => void,
  numbersOnly: boolean,
): void {
  let from = -1;
  text.figures.forEach((expression) => {
    from = text.text.indexOf(FIGURE, from + 1);
    if (from < 0) return;
    at(expression).forEach((result, size) => {
      for (const fact of result.facts)
        report(node, size, { ...fact, from, to: from + 1, data: { ...fact.data, figure: expression } });
      if (result.waitsFor.length > 0) {
        report(node, size, {
          code: 'figure-waits',
          from,
          to: from + 1,
          data: { figure: expression, lines: result.waitsFor },
        });
      } else if (numbersOnly && result.count === null && result.value !== null) {
        report(node, size, { code: 'figure-not-a-count', from, to: from + 1, data: { figure: expression } });
      }
    });
  });
}

interface SizeWork {
  readonly work: PieceWork;
  readonly blocks: readonly (BlockInSize | null)[];
}

function workSize(
  piece: Piece,
  size: number,
  sizeId: string,
  start: Fabric | null,
  env: Env,
  readings: Readings,
  sheet: Sheet,
  at: (expression: string) => readonly FigureResult[],
  memory: Memory,
  report: (node: string, size: number | null, fact: Fact) => void,
): SizeWork {
  const work = new PieceWork(start, env, memory.work);
  const written = new Map<string, Written>();
  let side: Side | null = piece.firstSide;
  const flip = (n: number): void => {
    if (side !== null && n % 2 === 1) side = side === 'RS' ? 'WS' : 'RS';
  };
  const writtenOf = (block: RowBlock): Written => {
    const tree = readings.row(block);
    if (block.text.figures.length === 0) return plainly(tree);
    const known = written.get(block.id);
    if (known !== undefined) return known;
    const made = {
      row: tree,
      figures: block.text.figures.map((expression) => at(expression)[size]?.count ?? null),
    };
    written.set(block.id, made);
    return made;
  };
  const inSize = (result: RowResult, facing: Side | null): BlockInSize | null =>
    result.tally === null
      ? null
      : {
          first: result.first,
          last: result.last,
          side: facing,
          tally: result.tally,
          repeats: result.repeats,
          rows: result.times,
        };
  const worksIt = (sizes: readonly string[] | null) => sizes === null || sizes.includes(sizeId);
  const count = (node: string, expression: string): number | null => {
    const result = at(expression)[size];
    for (const fact of result?.facts ?? [])
      report(node, size, { ...fact, from: 0, to: 0, data: { ...fact.data, figure: expression } });
    if (result !== undefined && result.waitsFor.length > 0) {
      report(node, size, {
        code: 'figure-waits',
        from: 0,
        to: 0,
        data: { figure: expression, lines: result.waitsFor },
      });
    }
    return result?.count ?? null;
  };

  const blocks = piece.blocks.map((block): BlockInSize | null => {
    switch (block.type) {
      case 'row': {
        if (!worksIt(block.sizes)) return null;
        if (block.text.figures.length > 0) {
          const own = (expression: string) => at(expression).map((r, i) => (i === size ? r : SILENT));
          reportFigures(block.id, block.text, own, report, true);
        }
        const facing = side;
        const before = work.rows;
        const result = work.workOne(writtenOf(block));
        for (const fact of result.facts) report(block.id, size, fact);
        if (work.fabric?.form === 'flat') flip(work.rows - before);
        return inSize(result, work.rows > before ? facing : null);
      }
      case 'repeat': {
        if (!worksIt(block.sizes)) return null;
        const group = groupOf(piece, block, sizeId).map(writtenOf);
        if (group.length === 0) {
          report(block.id, size, { code: 'repeat-of-nothing', from: 0, to: 0, data: {} });
          return null;
        }
        const asked = count(block.id, 'times' in block.until ? block.until.times : block.until.rows);
        if (asked === null) return null;
        const rows =
          block.until.kind === 'times'
            ? asked * group.length
            : block.until.kind === 'rows'
              ? asked
              : asked - work.rows;
        if (rows < 0) {
          report(block.id, size, {
            code: 'repeat-beyond-total',
            from: 0,
            to: 0,
            data: { total: asked, rows: work.rows },
          });
          return null;
        }
        return several(work, rows, side, flip, () => {
          const facts: Fact[] = [];
          const worked = work.again(group, Math.ceil(rows / group.length), rows, { from: 0, to: 0 }, facts);
          for (const fact of facts) report(block.id, size, fact);
          return worked?.repeats ?? null;
        });
      }
      case 'shaping': {
        if (!worksIt(block.sizes)) return null;
        const value = lineNamed(sheet, block.line)?.sizes[size]?.value ?? null;
        if (value === null || value.dimension !== 'schedule') {
          report(block.id, size, {
            code: 'shaping-without-line',
            from: 0,
            to: 0,
            data: { line: block.line },
          });
          return null;
        }
        const { schedule } = value;
        const have = work.fabric === null ? 0 : stitchesOf(work.fabric, work);
        if (have !== schedule.from) {
          report(block.id, size, {
            code: 'shaping-not-as-planned',
            from: 0,
            to: 0,
            data: { line: block.line, at: 'start', planned: schedule.from, worked: have },
          });
        }
        const shaped = new Set(schedule.shapings);
        return several(work, schedule.rows, side, flip, () => {
          const facts: Fact[] = [];
          for (let row = 1; row <= schedule.rows; row++) {
            const one = shaped.has(row) ? block.shaped : block.even;
            const own: Fact[] = [];
            work.again([writtenOf(one)], 1, 1, { from: 0, to: one.text.text.length }, own);
            for (const fact of own) report(one.id, size, fact);
          }
          const after = work.fabric === null ? 0 : stitchesOf(work.fabric, work);
          if (have === schedule.from && after !== schedule.to) {
            facts.push({
              code: 'shaping-not-as-planned',
              from: 0,
              to: 0,
              data: { line: block.line, at: 'end', planned: schedule.to, worked: after },
            });
          }
          for (const fact of facts) report(block.id, size, fact);
          return null;
        });
      }
      default:
        return null;
    }
  });
  return { work, blocks };
}

const withoutFigures = new WeakMap<RowTree, Written>();

/** A row without figures is the same in every size. */
function plainly(row: RowTree): Written {
  let made = withoutFigures.get(row);
  if (made === undefined) {
    made = { row, figures: [] };
    withoutFigures.set(row, made);
  }
  return made;
}

const SILENT: FigureResult = { value: null, count: 0, facts: [], waitsFor: [] };

function stitchesOf(fabric: Fabric, work: PieceWork): number {
  return work.tallyOf(fabric).stitches;
}

/** Runs what makes several rows and sums it up. */
function several(
  work: PieceWork,
  rows: number,
  side: Side | null,
  flip: (n: number) => void,
  run: () => number | null,
): BlockInSize | null {
  const before = work.rows;
  const first = work.number + 1;
  const repeats = rows === 0 ? null : run();
  const made = work.rows - before;
  if (work.fabric === null) return null;
  if (work.fabric.form === 'flat') flip(made);
  return {
    first: made === 0 ? null : first,
    last: made === 0 ? null : work.number,
    side: made === 0 ? null : side,
    tally: work.tallyOf(work.fabric),
    repeats,
    rows: made,
  };
}

/** The row blocks that a repeat names, as far as the size works them. */
function groupOf(
  piece: Piece,
  repeat: Extract<Block, { type: 'repeat' }>,
  sizeId: string,
): readonly RowBlock[] {
  const first = piece.blocks.findIndex((block) => block.id === repeat.first);
  const last = piece.blocks.findIndex((block) => block.id === repeat.last);
  const own = piece.blocks.findIndex((block) => block.id === repeat.id);
  if (first < 0 || last < first || own <= last) return [];
  return piece.blocks
    .slice(first, last + 1)
    .filter(
      (block): block is RowBlock =>
        block.type === 'row' && (block.sizes === null || block.sizes.includes(sizeId)),
    );
}
