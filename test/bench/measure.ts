/**
 * What every bench needs: timing, the middle and the far end of many timings, and a line of output. It
 * measures; it judges nothing.
 */

export interface Timed<T> {
  readonly ms: number;
  readonly value: T;
}

export function timed<T>(run: () => T): Timed<T> {
  const start = performance.now();
  const value = run();
  return { ms: performance.now() - start, value };
}

export function percentile(values: readonly number[], part: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))]!;
}

export function median(values: readonly number[]): number {
  return percentile(values, 0.5);
}

export const inMs = (value: number) => `${value < 10 ? value.toFixed(2) : value.toFixed(0)} ms`;
export const say = (line: string) => process.stdout.write(`${line}\n`);
