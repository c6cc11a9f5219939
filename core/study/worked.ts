/**
 * Every row of a piece in one size, one after the other as the hook makes them: what the row leaves, which block its
 * words stand in, and the side that faces. The study keeps only what each block came to; drawings need the rows
 * between. Asked for by views, never by typing; remembered with where the work of each block begins, so that after an
 * edit only the blocks that it reached are followed again.
 */
import type { Fabric, Opening, SeenRow, Tally } from '../fabric/index.ts';
import { tally } from '../fabric/index.ts';
import type { PieceStudy, Side } from './piece-study.ts';
import type { Stand } from './size-work.ts';
import { standsOf, watchBlocks } from './traces.ts';

export interface WorkedRow {
  /** Index of its block in the piece. */
  readonly block: number;
  /** Its number; null when it has none. Of a foundation, null. */
  readonly number: number | null;
  /** The side that faces while it is worked, where the piece has sides. */
  readonly side: Side | null;
  readonly below: Fabric | null;
  readonly fabric: Fabric;
  readonly tally: Tally;
  readonly round: boolean;
  readonly openings: readonly Opening[];
  /** Chains of a foundation that the row makes; a row that makes nothing else has no height. */
  readonly foundation: number;
  readonly onlyFoundation: boolean;
  /** Worked to and fro on all of the row below, without an opening and without stitches taken together. */
  readonly plain: boolean;
  /** How it was worked; null for a row that the text gives no words for, of which only the count is known. */
  readonly seen: SeenRow | null;
}

/** Rows of a piece that are followed one by one; a longer piece is not drawn. */
export const MOST_FOLLOWED = 5000;

const known = new WeakMap<PieceStudy, Map<number, readonly WorkedRow[] | null>>();

/** The rows of a piece in a size, in order; null when there are more than can be followed. */
export function workedRows(piece: PieceStudy, size: number): readonly WorkedRow[] | null {
  let sizes = known.get(piece);
  if (sizes === undefined) {
    sizes = new Map();
    known.set(piece, sizes);
  }
  const before = sizes.get(size);
  if (before !== undefined) return before;
  const rows = (piece.rows[size] ?? 0) > MOST_FOLLOWED ? null : follow(piece, size);
  sizes.set(size, rows);
  return rows;
}

/** The rows of the block that begins at a stand. */
const ofBlocks = new WeakMap<Stand, readonly WorkedRow[]>();

function follow(piece: PieceStudy, size: number): readonly WorkedRow[] {
  const stands = standsOf(piece, size);
  if (stands === null) return [];
  const { length } = piece.blocks;
  const made = Array.from({ length }, (_, block) => rowsAt(stands[block]!, block));
  for (let from = 0; from < length; from++) {
    if (made[from] !== null) continue;
    let to = from + 1;
    while (to < length && made[to] === null) to += 1;
    const followed = followBlocks(piece, size, from, to);
    for (let block = from; block < to; block++) {
      const rows = withSides(followed.get(block) ?? [], stands[block]!.facing);
      ofBlocks.set(stands[block]!, rows);
      made[block] = rows;
    }
  }
  const all: WorkedRow[] = [];
  for (const rows of made) if (rows !== null) for (const row of rows) all.push(row);
  return all;
}

/** What is remembered of a block; another index than it had says only that blocks before it came or went. */
function rowsAt(stand: Stand, block: number): readonly WorkedRow[] | null {
  const rows = ofBlocks.get(stand) ?? null;
  if (rows === null || rows.length === 0 || rows[0]!.block === block) return rows;
  const moved = rows.map((row) => ({ ...row, block }));
  ofBlocks.set(stand, moved);
  return moved;
}

/** Does a row take stitches together? Then it may lean to a side although its count stays. */
function gathers({ byKind }: Tally): boolean {
  for (const kind of byKind.keys()) if (kind.includes('tog')) return true;
  return false;
}

type Bare = Omit<WorkedRow, 'side'>;

/** The rows of the blocks from `from` to before `to`, by their blocks. */
function followBlocks(
  piece: PieceStudy,
  size: number,
  from: number,
  to: number,
): ReadonlyMap<number, readonly Bare[]> {
  const blocks = new Map<number, Bare[]>();
  let rows: Bare[] = [];
  let block = from;
  watchBlocks(piece, size, from, to, {
    block: (index) => {
      block = index;
      rows = [];
      blocks.set(index, rows);
    },
    row: (seen) => {
      const { worked, below, number } = seen;
      rows.push({
        block,
        number: worked.idle ? null : number,
        below,
        fabric: worked.fabric,
        tally: worked.tally,
        round: worked.round,
        openings: worked.openings,
        foundation: worked.foundation,
        onlyFoundation: worked.idle,
        plain:
          !worked.round &&
          worked.fabric.rest === null &&
          worked.openings.length === 0 &&
          !gathers(worked.tally),
        seen,
      });
    },
    again: (count, times) => {
      const last = count > 0 ? rows.slice(-count) : [];
      for (let k = 0; k < times && rows.length <= MOST_FOLLOWED; k++)
        for (const row of last)
          rows.push({ ...row, number: row.number === null ? null : rows.at(-1)!.number! + 1 });
    },
    told: (count, before, after) => {
      const [start, end] = [tally(before), tally(after)];
      for (let k = 1; k <= count && rows.length <= MOST_FOLLOWED; k++) {
        const last = k === count;
        const part = start.stitches + ((end.stitches - start.stitches) * k) / count;
        rows.push({
          block,
          number: null,
          below: k === 1 ? before : null,
          fabric: after,
          // Between the first and the last only the pace is known.
          tally: last ? end : { ...end, stitches: Math.round(part) },
          round: after.form !== 'flat',
          openings: [],
          foundation: 0,
          onlyFoundation: false,
          plain: false,
          seen: null,
        });
      }
    },
  });
  return blocks;
}

function withSides(rows: readonly Bare[], facing: Side | null): readonly WorkedRow[] {
  let side = facing;
  return rows.map((row) => {
    const own = side;
    if (side !== null && row.fabric.form === 'flat' && !row.onlyFoundation)
      side = side === 'RS' ? 'WS' : 'RS';
    return { ...row, side: row.onlyFoundation ? null : own };
  });
}
