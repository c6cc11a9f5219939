/**
 * Works the blocks of a piece in one size: rows numbered, repeats and shaping carried out, sides followed. After
 * an edit it begins at the first block that changed, and ends where the work stands as it stood before. It
 * reports facts and judges nothing.
 */
import { type Block, FIGURE, type FigureText, type Piece, type RowBlock } from '../document/pattern.ts';
import {
  APART,
  type Env,
  type Fabric,
  type Opening,
  PieceWork,
  type RowResult,
  type RowWatcher,
  type Settling,
  type Standing,
  type Written,
} from '../fabric/index.ts';
import type { Fact } from '../finding.ts';
import { type FigureResult, lineNamed, type Sheet } from '../grading/index.ts';
import type { RowTree } from '../notation/tree.ts';
import type { Memory } from './memory.ts';
import type { BlockInSize, Side } from './piece-study.ts';
import type { Readings } from './reading.ts';

/** Facts of a text's figures, at the figure that they concern. */
export function reportFigures(
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
        const data = { figure: expression, gives: result.value.dimension };
        report(node, size, { code: 'figure-not-a-count', from, to: from + 1, data });
      }
    });
  });
}

/** A fact and the node that it is about. */
export interface NodeFact {
  readonly node: string;
  readonly fact: Fact;
}

/**
 * Where the work stands before a block, and the side that faces then. A study keeps the stands of the one before for
 * blocks that come to the same: the same stand is the same block asking and making the same.
 */
export interface Stand extends Standing {
  readonly facing: Side | null;
}

export interface SizeWork {
  readonly rows: number;
  readonly fabric: Fabric | null;
  readonly foundation: number;
  readonly openings: readonly Opening[];
  readonly settlings: readonly Settling[];
  /** One entry a block. */
  readonly blocks: readonly (BlockInSize | null)[];
  readonly facts: readonly (readonly NodeFact[])[];
  /** Before each block, and at the end. */
  readonly stands: readonly Stand[];
  /** The blocks from `from` to `to` were worked; those before and after are as they were. */
  readonly from: number;
  readonly to: number;
}

/** How the size was worked before an edit that changed some of the blocks and nothing else. */
export interface Before {
  readonly blocks: readonly Block[];
  readonly work: SizeWork;
  /** How many blocks at the beginning and at the end ask and say the same as before. */
  readonly head: number;
  readonly tail: number;
}

const NO_FACTS: readonly NodeFact[] = [];

export function workSize(
  piece: Piece,
  size: number,
  sizeId: string,
  start: Fabric | null,
  env: Env,
  readings: Readings,
  sheet: Sheet,
  at: (expression: string) => readonly FigureResult[],
  memory: Pick<Memory, 'work'>,
  before: Before | null,
  /** Told of every row and, before its rows, of each block by its index. */
  watcher: (RowWatcher & { readonly block: (index: number) => void }) | null = null,
): SizeWork {
  const work = new PieceWork(start, env, memory.work, APART, watcher);
  let side: Side | null = piece.firstSide;
  const from = before?.head ?? 0;
  if (before !== null) {
    const stand = before.work.stands[from]!;
    work.resume(stand, before.work.openings, before.work.settlings);
    side = stand.facing;
  }
  let facts: NodeFact[] = [];
  const report = (node: string, _: number | null, fact: Fact) => {
    facts.push({ node, fact });
  };
  const written = new Map<string, Written>();
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

  const workBlock = (block: Block): BlockInSize | null => {
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
  };

  const { length } = piece.blocks;
  const blocks = before === null ? [] : before.work.blocks.slice(0, from);
  const told = before === null ? [] : before.work.facts.slice(0, from);
  const stands = before === null ? [] : before.work.stands.slice(0, from);
  const joinFrom = before === null ? length + 1 : earliestJoin(piece, before);
  for (let i = from; i <= length; i++) {
    const stand: Stand = { ...work.standing(), facing: side };
    if (before !== null && i >= joinFrom) {
      const index = before.blocks.length - length + i;
      if (joins(stand, work, before.work, index)) {
        return joined({ blocks, facts: told, stands, from, to: i }, work, before.work, index);
      }
    }
    stands.push(stand);
    if (i === length) break;
    watcher?.block(i);
    blocks.push(workBlock(piece.blocks[i]!));
    told.push(facts.length === 0 ? NO_FACTS : facts);
    if (facts.length > 0) facts = [];
  }
  const { rows, fabric, foundation, openings, settlings } = work;
  return {
    rows,
    fabric,
    foundation,
    openings,
    settlings,
    blocks,
    facts: told,
    stands,
    from,
    to: length,
  };
}

/**
 * The first block from which on the work can be what it was: behind the edit, and behind the last repeat of a
 * row that the edit reached.
 */
function earliestJoin(piece: Piece, { blocks, head, tail }: Before): number {
  const first = piece.blocks.length - tail;
  const shift = piece.blocks.length - blocks.length;
  for (let i = piece.blocks.length - 1; i >= first; i--) {
    const block = piece.blocks[i]!;
    if (block.type !== 'repeat') continue;
    const [now, then] = [spanOf(piece.blocks, block), spanOf(blocks, block)];
    const untouched = now.last < head || now.first >= first;
    const alike = (['first', 'last', 'own'] as const).every(
      (end) => now[end] === then[end] + (now[end] >= first ? shift : 0),
    );
    if (!untouched || !alike) return i + 1;
  }
  return first;
}

/** Does the work stand where it stood before, so that the same blocks will come to the same? */
function joins(stand: Stand, { settlings }: PieceWork, before: SizeWork, index: number): boolean {
  const other = before.stands[index]!;
  return (
    stand.fabric === other.fabric &&
    stand.number === other.number &&
    stand.rows === other.rows &&
    stand.foundation === other.foundation &&
    stand.unworkedChain === other.unworkedChain &&
    stand.facing === other.facing &&
    stand.settlings === other.settlings &&
    settlings.every(([row, counts], i) => {
      const [otherRow, otherCounts] = before.settlings[i]!;
      return row === otherRow && counts === otherCounts;
    })
  );
}

/** The work up to a block, and from there on what it was before, where it was the block at `index`. */
function joined(
  done: Pick<SizeWork, 'blocks' | 'facts' | 'stands' | 'from' | 'to'>,
  { openings }: PieceWork,
  before: SizeWork,
  index: number,
): SizeWork {
  const had = before.stands[index]!.openings;
  const more = openings.length - had;
  const rest = before.stands.slice(index);
  return {
    ...before,
    openings: [...openings, ...before.openings.slice(had)],
    blocks: [...done.blocks, ...before.blocks.slice(index)],
    facts: [...done.facts, ...before.facts.slice(index)],
    stands: [
      ...done.stands,
      ...(more === 0 ? rest : rest.map((stand) => ({ ...stand, openings: stand.openings + more }))),
    ],
    from: done.from,
    to: done.to,
  };
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

/** Where the blocks stand that a repeat names, and where it stands itself; -1 = nowhere. */
function spanOf(
  blocks: readonly Block[],
  repeat: Extract<Block, { type: 'repeat' }>,
): { first: number; last: number; own: number } {
  return {
    first: blocks.findIndex((block) => block.id === repeat.first),
    last: blocks.findIndex((block) => block.id === repeat.last),
    own: blocks.findIndex((block) => block.id === repeat.id),
  };
}

/** The row blocks that a repeat names, as far as the size works them. */
function groupOf(
  piece: Piece,
  repeat: Extract<Block, { type: 'repeat' }>,
  sizeId: string,
): readonly RowBlock[] {
  const { first, last, own } = spanOf(piece.blocks, repeat);
  if (first < 0 || last < first || own <= last) return [];
  return piece.blocks
    .slice(first, last + 1)
    .filter(
      (block): block is RowBlock =>
        block.type === 'row' && (block.sizes === null || block.sizes.includes(sizeId)),
    );
}
