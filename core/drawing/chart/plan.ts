/**
 * Which rows of a pattern a chart shows, worked once more to see what every stitch went into: its rows, on as few
 * stitches as show the repeat with its edges where the same words work on fewer. Lays nothing out and draws nothing.
 */
import type { Block, Chart, RowBlock } from '../../document/pattern.ts';
import { type Fabric, fabric, type TracedRow, Tracer, workedAgain } from '../../fabric/index.ts';
import type { RowTree } from '../../notation/tree.ts';
import { rowBlocks, type Study } from '../../study/index.ts';
import { spoils, withChain } from '../../study/multiple.ts';
import type { PieceStudy } from '../../study/piece-study.ts';
import { startFabric, type TracedBlocks, type TracedWork, traceBlocks } from '../../study/traces.ts';
import type { Side } from './graph.ts';

/** Something that the reader of a chart has to know of it. */
export type ChartNote =
  /** Drawn on fewer stitches than the size has. */
  | { readonly kind: 'fewer'; readonly full: number; readonly drawn: number; readonly chains: boolean }
  /** Rows that only repeat others, and which those are. */
  | {
      readonly kind: 'repeated';
      readonly first: number;
      readonly last: number;
      readonly from: number;
      readonly to: number;
      readonly rounds: boolean;
    }
  /** More rows than a chart holds. */
  | {
      readonly kind: 'rows-left-out';
      readonly drawn: number;
      readonly rows: number;
      readonly rounds: boolean;
    }
  /** A row along the row-ends, which has no place in a chart of rows. */
  | { readonly kind: 'along-edge'; readonly number: number | null; readonly rounds: boolean }
  /** Rounds that are drawn though the chart begins after them, because the others stand on them. */
  | { readonly kind: 'from-ring'; readonly asked: number | null }
  /** A row whose words do not come out. */
  | { readonly kind: 'not-right'; readonly number: number | null; readonly rounds: boolean }
  /** One of several sizes. */
  | { readonly kind: 'size'; readonly label: string };

/** Why there is no chart. */
export type ChartProblem = 'piece-gone' | 'rows-gone' | 'not-in-size' | 'nothing-worked' | 'too-wide';

export interface ChartPlan {
  readonly chart: Chart;
  readonly rows: readonly TracedRow[];
  readonly sides: readonly (Side | null)[];
  readonly notes: readonly ChartNote[];
  readonly problem: ChartProblem | null;
}

/** Rows that one chart draws at the most, and stitches that all of them have together. */
const MOST_ROWS = 40;
const MOST_SITES = 4000;
/** Rounds that are drawn under those asked for at the most, so that all of them lie about their ring. */
const MOST_UNDER = 6;
/** A row of as many is drawn as it is. */
const FEW = 26;
/** Longest start that is tried for fewer stitches, and how much work all tries may take. */
const LONGEST = 90;
const MOST_TRIED = 12_000;

const NONE: ReadonlyMap<string, RowTree> = new Map();

interface Traced {
  readonly rows: readonly TracedRow[];
  readonly work: TracedWork;
  readonly blocks: readonly Block[];
}

/** Plans a chart. Total: what cannot be drawn is said in `problem` or in a note. */
export function planChart(study: Study, chart: Chart): ChartPlan {
  const nothing = (problem: ChartProblem): ChartPlan => ({ chart, rows: [], sides: [], notes: [], problem });
  const piece = study.pieces.find((one) => one.piece.id === chart.piece);
  if (piece === undefined) return nothing('piece-gone');
  const size = sizeOfChart(study, chart);
  const { blocks } = piece.piece;
  const from = blocks.findIndex((block) => block.id === chart.first);
  const to = blocks.findIndex((block) => block.id === chart.last);
  if (from < 0 || to < from) return nothing('rows-gone');
  const notes: ChartNote[] = [];
  const full = traceRange(piece, size, from, to, notes);
  if (full === null) return nothing('not-in-size');
  const under = roundsUnder(full, chart.first);
  if (under !== null) {
    const plan = planChart(study, { ...chart, first: under });
    const asked = inSize(piece, size, chart.first)?.first ?? null;
    if (plan.problem === null)
      return { ...plan, chart, notes: [{ kind: 'from-ring', asked }, ...plan.notes] };
  }
  const drawn = cutRows(piece, size, full, blocks[from]!.id, notes);
  if (drawn.length === 0) return nothing(full.rows.length === 0 ? 'not-in-size' : 'nothing-worked');
  const fewer = onFewer(study, piece, size, full, from, drawn, notes);
  const rows = fewer ?? drawn;
  if (rows.reduce((sum, { trace }) => sum + trace.sites.length, 0) > MOST_SITES) return nothing('too-wide');
  if (study.pattern.sizes.length > 1) notes.push({ kind: 'size', label: study.pattern.sizes[size]!.label });
  return { chart, rows, sides: sidesOf(piece, size, drawn, full), notes, problem: null };
}

/** Index of the size that a chart shows: its own, the sample, or the first. */
export function sizeOfChart({ pattern }: Study, chart: Chart): number {
  const own = pattern.sizes.findIndex(({ id }) => id === chart.size);
  if (own >= 0) return own;
  return Math.max(
    0,
    pattern.sizes.findIndex(({ id }) => id === pattern.sample),
  );
}

function trace(piece: PieceStudy, size: number, of: TracedBlocks): Traced | null {
  const tracer = new Tracer();
  const work = traceBlocks(piece, size, of, tracer);
  return work === null ? null : { rows: tracer.rows, work, blocks: of.blocks };
}

/** Works the blocks up to the last one drawn. Repeats among the rows are left out where the rows do without. */
function traceRange(
  piece: PieceStudy,
  size: number,
  from: number,
  to: number,
  notes: ChartNote[],
): Traced | null {
  const { blocks, firstSide } = piece.piece;
  const start = startFabric(piece, size);
  const whole = blocks.slice(0, to + 1);
  const once = whole.filter((block, i) => i <= from || block.type !== 'repeat');
  const of = (chosen: readonly Block[]): TracedBlocks => ({
    blocks: chosen,
    instead: NONE,
    start,
    firstSide,
  });
  const all = once.length === whole.length ? null : trace(piece, size, of(once));
  if (all !== null && !all.work.facts.some((facts) => facts.some(spoils))) {
    for (const block of whole.slice(from + 1)) {
      if (block.type !== 'repeat') continue;
      const note = repeatedNote(piece, size, block);
      if (note !== null) notes.push(note);
    }
    return all;
  }
  return trace(piece, size, of(whole));
}

function repeatedNote(
  piece: PieceStudy,
  size: number,
  block: Extract<Block, { type: 'repeat' }>,
): ChartNote | null {
  const made = inSize(piece, size, block.id);
  const first = inSize(piece, size, block.first)?.first ?? null;
  const last = inSize(piece, size, block.last)?.last ?? null;
  if (made === null || made.first === null || made.last === null || first === null || last === null)
    return null;
  const named = piece.piece.blocks.find(({ id }) => id === block.first);
  const rounds = named?.type === 'row' && named.form === 'round';
  return { kind: 'repeated', first: made.first, last: made.last, from: first, to: last, rounds };
}

const inSize = (piece: PieceStudy, size: number, id: string) =>
  piece.blocks.find(({ block }) => block.id === id)?.sizes[size] ?? null;

/**
 * The block of the round in the ring, where a chart begins a few rounds after it: opened out in a line, rounds of a
 * square or a flower would not be known again. Null where it begins there, or far from it.
 */
function roundsUnder({ rows, blocks }: Traced, first: string): string | null {
  const from = blocks.findIndex(({ id }) => id === first);
  const before = rows.filter(({ block, trace: t }) => block < from && t.sites.length > 0 && t.round);
  const at = before.findIndex(({ trace: t }) => isAroundHole(t));
  const own = rows.find(({ block }) => block === from);
  if (at < 0 || own === undefined || !own.trace.round || before.length - at > MOST_UNDER) return null;
  const follows = rows.filter(({ block }) => block >= before[at]!.block);
  return follows.every(({ trace: t }) => t.round) ? blocks[before[at]!.block]!.id : null;
}

/** The rows to be drawn, with the numbers that the study gives them. */
function cutRows(
  piece: PieceStudy,
  size: number,
  { rows, blocks }: Traced,
  first: string,
  notes: ChartNote[],
): readonly TracedRow[] {
  const from = blocks.findIndex(({ id }) => id === first);
  const wanted = rows.filter(({ block }) => block >= from);
  const met = new Map<number, number>();
  const drawn: TracedRow[] = [];
  let sites = 0;
  for (const row of wanted) {
    const before = met.get(row.block) ?? 0;
    met.set(row.block, before + 1);
    const block = blocks[row.block]!;
    const made = inSize(piece, size, block.id);
    const number = made === null || made.first === null ? null : made.first + before;
    if (row.trace.makings.some(({ feet }) => feet.some(({ kind }) => kind === 'row-end'))) {
      notes.push({ kind: 'along-edge', number, rounds: row.trace.round });
      break;
    }
    sites += row.trace.sites.length;
    if (drawn.length >= MOST_ROWS || (sites > MOST_SITES && drawn.length > 0)) {
      notes.push({
        kind: 'rows-left-out',
        drawn: drawn.length,
        rows: wanted.length,
        rounds: row.trace.round,
      });
      break;
    }
    const wrong = piece.blocks.find((one) => one.block.id === block.id)?.findings ?? [];
    if (before === 0 && wrong.some(({ severity }) => severity === 'error')) {
      notes.push({ kind: 'not-right', number, rounds: row.trace.round });
    }
    if (row.trace.sites.length > 0) drawn.push({ ...row, number });
  }
  return drawn;
}

/** Sides of the rows: the study's at the first of a block, and turned from row to row within it. */
function sidesOf(
  piece: PieceStudy,
  size: number,
  rows: readonly TracedRow[],
  { blocks }: Traced,
): readonly (Side | null)[] {
  let block = -1;
  let side: Side | null = null;
  return rows.map((row) => {
    if (row.block !== block) {
      block = row.block;
      side = inSize(piece, size, blocks[block]!.id)?.side ?? null;
    } else if (side !== null && !row.trace.round) side = side === 'RS' ? 'WS' : 'RS';
    return side;
  });
}

const widest = (rows: readonly TracedRow[]): number =>
  Math.max(...rows.map(({ trace: t }) => t.sites.length));

const passesOf = ({ trace: t }: TracedRow): number =>
  Math.max(0, ...t.passes.map(({ starts }) => starts.length));

/** Do two workings of a row begin and end alike, about their repeats? The last of these may have been cut short. */
function sameEdges(a: TracedRow, b: TracedRow): boolean {
  const edges = ({ trace: { passes, sites } }: TracedRow) =>
    passes.length === 0
      ? null
      : [
          Math.min(...passes.map(({ starts, end }) => starts[0] ?? end)),
          sites.length - Math.max(...passes.map(({ end }) => end)),
        ];
  const [own, other] = [edges(a), edges(b)];
  return own === null || other === null || (own[0] === other[0] && own[1] === other[1]);
}

/** The same rows on fewer stitches, where their words work on them; null where they do not. */
function onFewer(
  study: Study,
  piece: PieceStudy,
  size: number,
  full: Traced,
  from: number,
  drawn: readonly TracedRow[],
  notes: ChartNote[],
): readonly TracedRow[] | null {
  const first = drawn[0]!.trace;
  if (widest(drawn) <= FEW || isAroundHole(first)) return null;
  const whole = first.below.length;
  const instead = uncounted(study, full);
  const fits = (tried: Traced | null, skip: number): readonly TracedRow[] | null => {
    if (tried === null || tried.work.facts.some((facts) => facts.some(spoils))) return null;
    const rows = tried.rows.filter(({ block }) => block >= skip).slice(0, drawn.length);
    if (rows.length < drawn.length) return null;
    // A ring, or a chain that only turns, is no ground of so many stitches: another number leaves the rows as wide.
    if (rows[0]!.trace.below.length >= whole) return null;
    const repeats = drawn.some((row) => passesOf(row) > 1);
    const enough = rows.every((row, i) => passesOf(drawn[i]!) < 2 || passesOf(row) >= 2);
    const alike = rows.every((row, i) => sameEdges(row, drawn[i]!));
    if (!enough || !alike || widest(rows) > FEW * 2 || (!repeats && widest(rows) < 10)) return null;
    return rows.map((row, i) => ({ ...row, number: drawn[i]!.number, block: drawn[i]!.block }));
  };
  let spent = 0;
  const search = (attempt: (n: number) => readonly TracedRow[] | null): readonly TracedRow[] | null => {
    for (let n = 2; n < Math.min(whole, LONGEST) && spent < MOST_TRIED; n++) {
      const found = attempt(n);
      if (found !== null) {
        notes.push({
          kind: 'fewer',
          full: whole,
          drawn: n,
          chains: first.belowForm === 'chain' || first.ring !== null,
        });
        return found;
      }
    }
    return null;
  };
  const below = belowOf(first);
  if (below !== null) {
    const blocks = full.blocks.slice(full.blocks.findIndex(({ id }) => id === piece.piece.blocks[from]!.id));
    const firstSide = inSize(piece, size, blocks[0]!.id)?.side ?? piece.piece.firstSide;
    return search((n) => {
      const start: Fabric = { ...below, sites: below.sites.slice(0, n) };
      const tried = trace(piece, size, { blocks, instead, start, firstSide });
      spent += 1 + (tried?.rows.reduce((sum, { trace: t }) => sum + t.sites.length, 0) ?? 0);
      return fits(tried, 0);
    });
  }
  // What begins on another piece has no chain of its own; its first chain turns.
  if (piece.piece.start.kind !== 'chain') return null;
  const rows = rowBlocks(full.blocks);
  const trees = rows.map((row) => instead.get(row.id) ?? study.readings.row(row));
  const skip = full.blocks.findIndex(({ id }) => id === piece.piece.blocks[from]!.id);
  return search((n) => {
    const changed = withChain(trees, n);
    if (changed === null) {
      spent = MOST_TRIED;
      return null;
    }
    const own = new Map(instead);
    rows.forEach((row, i) => {
      if (changed[i] !== trees[i]) own.set(row.id, changed[i]!);
    });
    const tried = trace(piece, size, {
      blocks: full.blocks,
      instead: own,
      start: startFabric(piece, size),
      firstSide: piece.piece.firstSide,
    });
    spent += 1 + (tried?.rows.reduce((sum, { trace: t }) => sum + t.sites.length, 0) ?? 0);
    return fits(tried, skip);
  });
}

/** Does a row go into the hole of a ring, of yarn or of chains? Its stitches are not those of the ring. */
const isAroundHole = ({ below, makings }: TracedRow['trace']): boolean =>
  below.some(({ kind }) => kind === 'ring') ||
  makings.some(({ feet }) => feet.some(({ kind }) => kind === 'ring'));

/** The fabric below the first row, where it is of one sort of stitch, so that fewer of them are the same ground. */
function belowOf(first: TracedRow['trace']): Fabric | null {
  const [one] = first.below;
  if (one === undefined || first.belowForm === 'chain') return null;
  if (first.below.some(({ key }) => key !== one.key)) return null;
  return fabric(first.below, { form: first.belowForm });
}

/** Rows without the counts stated for the full size; what those settled about a turning chain is kept. */
function uncounted(study: Study, { rows, blocks }: Traced): ReadonlyMap<string, RowTree> {
  const out = new Map<string, RowTree>();
  for (const block of rowBlocks(blocks)) {
    const tree = study.readings.row(block as RowBlock);
    if (tree.counts.length === 0) continue;
    const stood = rows.find(({ trace: t }) => t.row === tree)?.trace.stood ?? null;
    out.set(block.id, workedAgain(tree, stood === null || stood.on === null ? null : stood.counts));
  }
  return out;
}
