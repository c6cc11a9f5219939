/**
 * What working a row depends on besides the row and the fabric below: the size, the pattern's definitions and
 * its habits. One env serves all rows of a piece in one size. Holds no state.
 */
import type { Amount, Convention, Definition } from '../notation/tree.ts';
import { type Fabric, sameFabric } from './fabric.ts';
import type { Tracer } from './trace.ts';

/** A row before the row below, as a row that goes back into it meets it. */
export interface EarlierRow {
  readonly fabric: Fabric;
  /** The work has been turned an odd number of times since. */
  readonly turned: boolean;
}

export interface Env {
  /** Index of the size being worked. */
  readonly size: number;
  /** How many values a list for all sizes has. */
  readonly sizes: number;
  /** Which sizes the row at hand is written for, in order; null = all. Lists of that length are read by it. */
  readonly only: readonly number[] | null;
  /** Definitions by every name they go by. */
  readonly names: ReadonlyMap<string, Definition>;
  /** What is said once about turning chains. */
  readonly conventions: readonly Convention[];
  /** Some row of the piece works into the top of a turning chain, which shows that it counts. */
  readonly turningChainWorked: boolean;
  /** Rows so far, for an edge worked along their ends. */
  readonly rowEnds: number;
  /** Chains of the foundation, for work along its other side. */
  readonly foundation: number;
  /** The earlier rows that the row at hand names, by number; null = it names none. */
  readonly earlier: ReadonlyMap<number, EarlierRow> | null;
  /** Last rounds of the parts that the row at hand joins, by the name it gives them; null = it joins none. */
  readonly parts: ReadonlyMap<string, Fabric> | null;
  /** Records what each stitch went into; null = nothing is recorded. */
  readonly trace: Tracer | null;
  /** The env that this one varies for a single row, or null. */
  readonly of: Env | null;
}

export const PLAIN_ENV: Env = {
  size: 0,
  sizes: 1,
  only: null,
  names: new Map(),
  conventions: [],
  turningChainWorked: false,
  rowEnds: 0,
  foundation: 0,
  earlier: null,
  parts: null,
  trace: null,
  of: null,
};

/** Values of a row's figures for one size, in order; null = not in this size. */
export type Figures = readonly (number | null)[];

/** An amount for the env's size; null when this size has none. A list of another length gives its nearest entry. */
export function amountOf(amount: Amount, env: Env, figures: Figures): number | null {
  if (amount.kind === 'one') return amount.value;
  if (amount.kind === 'figure') return figures[amount.index] ?? null;
  const values = amount.values;
  if (values.length === 0) return null;
  if (values.length !== env.sizes && env.only !== null) {
    const at = env.only.indexOf(env.size);
    if (at >= 0 && at < values.length) return values[at] ?? null;
  }
  return values[Math.min(env.size, values.length - 1)] ?? null;
}

/** Do both know the same earlier rows? */
export function sameEarlier(a: Env['earlier'], b: Env['earlier']): boolean {
  if (a === b) return true;
  if (a === null || b === null || a.size !== b.size) return false;
  for (const [number, row] of a) {
    const other = b.get(number);
    if (other === undefined || other.turned !== row.turned || !sameFabric(other.fabric, row.fabric))
      return false;
  }
  return true;
}

/** Do both join the same parts? */
export function sameParts(a: Env['parts'], b: Env['parts']): boolean {
  if (a === b) return true;
  if (a === null || b === null || a.size !== b.size) return false;
  for (const [name, fabric] of a) {
    const other = b.get(name);
    if (other === undefined || !sameFabric(other, fabric)) return false;
  }
  return true;
}
