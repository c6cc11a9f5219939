/**
 * What working a row depends on besides the row and the fabric below: the size, the pattern's definitions and
 * its habits. One env serves all rows of a piece in one size. Holds no state.
 */
import type { Amount, Convention, Definition } from '../notation/tree.ts';

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
  /** Record what each stitch went into. */
  readonly trace: boolean;
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
  trace: false,
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
