/**
 * Works out when to increase or decrease so that a piece goes from one stitch count to another over so many
 * rows, as evenly as whole steps allow. It makes schedules; working them row by row is the engine's, saying
 * them is `schedule-words`'.
 *
 * The spread is the handbooks' (common practice, no source): divide the rows by the shapings; the remainder
 * says how many intervals are one step longer. The longer ones come first.
 */

/** "every 4th row 8 times": `every` is null when there is only one shaping, which follows no other. */
export interface SchedulePart {
  readonly every: number | null;
  readonly times: number;
}

export interface Schedule {
  readonly direction: 'inc' | 'dec' | 'even';
  readonly from: number;
  readonly to: number;
  readonly perEnd: number;
  readonly ends: number;
  readonly rows: number;
  /** Rows that shape, counted from 1 within the block; the first is row 1. */
  readonly shapings: readonly number[];
  /** Stitches after each row of the block. */
  readonly counts: readonly number[];
  /** At most two; the times add up to the shapings, the first one (on row 1) among those of the first part. */
  readonly parts: readonly SchedulePart[];
  /** Rows worked even after the last shaping. */
  readonly evenAfter: number;
}

export interface ShapingTask {
  /** Stitches before and after: whole, not below zero. */
  readonly from: number;
  readonly to: number;
  /** Rows it may take. */
  readonly rows: number;
  readonly perEnd: number;
  readonly ends: number;
  /** Rows from one shaping to the next are a multiple of this. */
  readonly step: number;
}

/** Why there is no schedule, with the numbers that would make one. */
export type ShapingProblem =
  | { readonly code: 'shaping-invalid'; readonly data: Readonly<Record<string, number>> }
  | { readonly code: 'shaping-uneven'; readonly data: Readonly<Record<string, number>> }
  | { readonly code: 'shaping-too-many'; readonly data: Readonly<Record<string, number>> };

/** Longest block, and largest count, that is worked out: larger ones are a slip of the pen. */
export const MOST_ROWS = 10_000;

/**
 * The schedule for a task, or why there is none: the change is no whole number of shapings
 * (`shaping-uneven`), there are too few rows (`shaping-too-many`), or a number makes no sense
 * (`shaping-invalid`).
 */
export function scheduleOf(task: ShapingTask): Schedule | ShapingProblem {
  const { from, to, rows, perEnd, ends, step } = task;
  const isCount = (n: number) => Number.isSafeInteger(n) && n >= 0;
  if (
    ![from, to, rows].every(isCount) ||
    ![perEnd, ends, step].every((n) => isCount(n) && n >= 1 && n <= MOST_ROWS) ||
    rows > MOST_ROWS
  ) {
    return { code: 'shaping-invalid', data: { from, to, rows, perEnd, ends, step, limit: MOST_ROWS } };
  }
  const change = Math.abs(to - from);
  const each = perEnd * ends;
  const sign = to < from ? -1 : 1;
  if (change % each !== 0) {
    const fewer = Math.floor(change / each);
    const over = change - fewer * each;
    // Of two counts equally near, the one with the larger change: halves go away from zero.
    const nearest = over * 2 >= each && from + sign * (fewer + 1) * each >= 0 ? fewer + 1 : fewer;
    return {
      code: 'shaping-uneven',
      data: { from, to, change, each, perEnd, ends, over, nearest: from + sign * nearest * each },
    };
  }
  const shapings = change / each;
  const needed = shapings === 0 ? 0 : (shapings - 1) * step + 1;
  if (needed > rows) {
    const fits = rows === 0 ? 0 : Math.floor((rows - 1) / step) + 1;
    const reached = from + sign * fits * each;
    return { code: 'shaping-too-many', data: { from, to, rows, shapings, step, needed, fits, reached } };
  }
  const gaps = gapsOf(shapings, rows, step);
  const at = rowsOf(gaps, shapings);
  return {
    direction: shapings === 0 ? 'even' : to < from ? 'dec' : 'inc',
    from,
    to,
    perEnd,
    ends,
    rows,
    shapings: at,
    counts: countsOf(at, from, sign * each, rows),
    parts: partsOf(gaps, shapings),
    evenAfter: rows - (at.at(-1) ?? 0),
  };
}

/**
 * Rows from each shaping to the next. The rows are dealt out to all the shapings (the last keeps its share
 * as rows worked even), in whole steps; when they do not go once round, every gap is one step.
 */
function gapsOf(shapings: number, rows: number, step: number): readonly number[] {
  if (shapings < 2) return [];
  const steps = Math.floor(rows / step);
  const share = Math.floor(steps / shapings);
  if (share === 0) return new Array<number>(shapings - 1).fill(step);
  const longer = steps % shapings;
  return Array.from({ length: shapings - 1 }, (_, index) => (index < longer ? share + 1 : share) * step);
}

function rowsOf(gaps: readonly number[], shapings: number): readonly number[] {
  if (shapings === 0) return [];
  const rows = [1];
  for (const gap of gaps) rows.push(rows.at(-1)! + gap);
  return rows;
}

function countsOf(
  shapings: readonly number[],
  from: number,
  change: number,
  rows: number,
): readonly number[] {
  const counts: number[] = [];
  let next = 0;
  for (let row = 1; row <= rows; row++) {
    if (shapings[next] === row) next++;
    counts.push(from + next * change);
  }
  return counts;
}

function partsOf(gaps: readonly number[], shapings: number): readonly SchedulePart[] {
  if (shapings === 0) return [];
  if (gaps.length === 0) return [{ every: null, times: 1 }];
  const first = gaps[0]!;
  const longer = gaps.filter((gap) => gap === first).length;
  const parts: SchedulePart[] = [{ every: first, times: longer + 1 }];
  if (longer < gaps.length) parts.push({ every: gaps.at(-1)!, times: gaps.length - longer });
  return parts;
}
