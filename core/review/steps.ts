/**
 * Steps from size to size: finds the one value that jumps out and falls back among values that otherwise grow
 * evenly. It knows nothing of what the values are. Common practice, no source: editors look for a step that is
 * unlike the others; how unlike is this program's own choice, made so that standard charts pass.
 */

export interface OutOfLine {
  /** The value with the one before and the one after. */
  readonly values: readonly [number, number, number];
  /** Half way between its neighbours. */
  readonly about: number;
}

const middle = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return sorted.length % 2 === 1 ? sorted[Math.floor(half)]! : (sorted[half - 1]! + sorted[half]!) / 2;
};

/** Greatest number that all differences are multiples of, to a hundredth; what values are rounded to. */
function grainOf(steps: readonly number[]): number {
  const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));
  return steps.map((step) => Math.round(Math.abs(step) * 100)).reduce(gcd, 0) / 100;
}

/**
 * One entry a value: null where it goes with its neighbours or has none on one side. A value is out of line when
 * it lies further from half way between its neighbours than twice what the others do, one usual step and what
 * values are rounded to.
 */
export function outOfLine(values: readonly (number | null)[]): readonly (OutOfLine | null)[] {
  const nothing = values.map(() => null);
  if (values.length < 4 || values.some((value) => value === null)) return nothing;
  const own = values as readonly number[];
  const steps = own.slice(1).map((value, i) => value - own[i]!);
  const bends = own.map((value, i) =>
    i === 0 || i === own.length - 1 ? 0 : value - (own[i - 1]! + own[i + 1]!) / 2,
  );
  const worst = bends.reduce((at, bend, i) => (Math.abs(bend) > Math.abs(bends[at]!) ? i : at), 0);
  const bend = Math.abs(bends[worst]!);
  const others = bends
    .slice(1, -1)
    .filter((_, i) => Math.abs(i + 1 - worst) > 1)
    .map(Math.abs);
  const step = middle(steps.map(Math.abs));
  const limit = Math.max(2 * Math.max(0, ...others), step, grainOf(steps));
  if (worst === 0 || bend <= limit) return nothing;
  return own.map((value, i) =>
    i === worst
      ? { values: [own[i - 1]!, value, own[i + 1]!], about: (own[i - 1]! + own[i + 1]!) / 2 }
      : null,
  );
}
