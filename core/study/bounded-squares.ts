/**
 * Least squares with bounds: the x between its bounds for which the sum of the squares of (A x − b) is least. An
 * active-set method after Stark and Parker, "Bounded-variable least squares" (Computational Statistics 10, 1995):
 * unknowns rest at a bound or are free, and the free ones solve the normal equations. Total: whatever is given, it
 * answers with numbers inside the bounds. It knows nothing of yarn.
 */

export interface Bounds {
  readonly lower: readonly number[];
  readonly upper: readonly number[];
}

/** The free part of a symmetric system, by Cholesky's factors; null where it has no one answer. */
function solved(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
  free: readonly number[],
): number[] | null {
  const n = free.length;
  const lower: number[][] = [];
  for (let i = 0; i < n; i++) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      let sum = matrix[free[i]!]![free[j]!]!;
      const other = i === j ? row : lower[j]!;
      for (let k = 0; k < j; k++) sum -= row[k]! * other[k]!;
      if (i === j) {
        // What is left of the diagonal is lost in rounding: these unknowns cannot be told apart.
        if (!(sum > matrix[free[i]!]![free[i]!]! * 1e-13)) return null;
        row.push(Math.sqrt(sum));
      } else row.push(sum / other[j]!);
    }
    lower.push(row);
  }
  const half: number[] = [];
  for (let i = 0; i < n; i++) {
    let sum = right[i]!;
    for (let k = 0; k < i; k++) sum -= lower[i]![k]! * half[k]!;
    half.push(sum / lower[i]![i]!);
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let sum = half[i]!;
    for (let k = i + 1; k < n; k++) sum -= lower[k]![i]! * x[k]!;
    x[i] = sum / lower[i]![i]!;
  }
  return x.every(Number.isFinite) ? x : null;
}

/** Beyond this a number's square, times a few, is none. */
const MOST = 1e100;

const within = (value: number, low: number, high: number) => Math.min(Math.max(value, low), high);

/**
 * Solves min |A x − b|² with lower ≤ x ≤ upper. `given` are the rows of A, `wanted` is b. Where the data leave unknowns undecided,
 * those stay where they began: at `start`, brought within the bounds.
 */
export function boundedSquares(
  given: readonly (readonly number[])[],
  wanted: readonly number[],
  { lower, upper }: Bounds,
  start: readonly number[],
): readonly number[] {
  const n = lower.length;
  // A row that holds no number, or one whose square is none, tells nothing.
  const usable = (value: number | undefined) => Math.abs(value ?? 0) < MOST;
  const told = given.flatMap((_, r) => (given[r]!.every(usable) && usable(wanted[r]) ? [r] : []));
  const rows = told.map((r) => given[r]!);
  const right = told.map((r) => wanted[r] ?? 0);
  const normal = Array.from({ length: n }, (_, i) =>
    Array.from({ length: n }, (_, j) => rows.reduce((sum, row) => sum + (row[i] ?? 0) * (row[j] ?? 0), 0)),
  );
  const target = Array.from({ length: n }, (_, i) =>
    rows.reduce((sum, row, r) => sum + (row[i] ?? 0) * (right[r] ?? 0), 0),
  );
  const x = Array.from({ length: n }, (_, i) => within(start[i] ?? 0, lower[i]!, upper[i]!));
  const free = new Set<number>();
  /** Unknowns that cannot be told from the free ones. */
  const undecided = new Set<number>();
  /** Downhill along one unknown. */
  const slope = (i: number) => target[i]! - normal[i]!.reduce((sum, value, j) => sum + value * x[j]!, 0);
  /** Slopes that are nothing but rounding. */
  const noise = 1e-12 * Math.sqrt(right.reduce((sum, b) => sum + b * b, 0));
  // Each unknown is freed and bound a few times at most in practice; the limit only guards against rounding.
  for (let turn = 0; turn < 20 * n + 20; turn++) {
    let best = -1;
    let most = 0;
    for (let i = 0; i < n; i++) {
      if (free.has(i) || undecided.has(i)) continue;
      const down = slope(i);
      const scale = Math.sqrt(normal[i]![i]!) || 1;
      const gain = Math.abs(down) / scale;
      const open = down > 0 ? x[i]! < upper[i]! : x[i]! > lower[i]!;
      if (open && gain > most && gain > noise) {
        best = i;
        most = gain;
      }
    }
    if (best < 0) break;
    free.add(best);
    for (;;) {
      const order = [...free].sort((a, b) => a - b);
      const fixed = order.map(
        (i) =>
          target[i]! - normal[i]!.reduce((sum, value, j) => (free.has(j) ? sum : sum + value * x[j]!), 0),
      );
      const z = solved(normal, fixed, order);
      if (z === null) {
        free.delete(best);
        undecided.add(best);
        break;
      }
      // As far towards it as the first bound allows.
      let part = 1;
      let stop = -1;
      order.forEach((i, k) => {
        const step = z[k]! - x[i]!;
        const room = (step > 0 ? upper[i]! : lower[i]!) - x[i]!;
        if (step !== 0 && room / step < part) {
          part = Math.max(0, room / step);
          stop = i;
        }
      });
      order.forEach((i, k) => {
        x[i] = within(x[i]! + part * (z[k]! - x[i]!), lower[i]!, upper[i]!);
      });
      if (stop < 0) {
        undecided.clear();
        break;
      }
      x[stop] = z[order.indexOf(stop)]! > x[stop]! ? upper[stop]! : lower[stop]!;
      free.delete(stop);
      if (free.size === 0) break;
    }
  }
  return x;
}
