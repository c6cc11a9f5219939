/**
 * Which foundation chains a stitch pattern works on, found by working its rows over chains of every length:
 * nothing is declared, and no number is read off the text. Plain text only; the study has its own entry.
 */
import { type Env, PieceWork, type Written, worksTurningChain } from '../fabric/index.ts';
import type { Fact } from '../finding.ts';
import { kindOf } from '../findings/index.ts';
import { readText } from '../notation/index.ts';
import type { Amount, Chain, Item, Ring, RowTree } from '../notation/tree.ts';
import type { Terms } from '../trade/stitches.ts';
import { conventionsIn } from './rows.ts';

export interface Multiple {
  /** Chains that one repeat takes. */
  readonly multiple: number;
  /** Chains beyond the repeats. */
  readonly plus: number;
  /** Smallest chain that works and makes at least one whole repeat. */
  readonly from: number;
}

/** Longest chain tried, and how many that work are enough to see the rule. */
const LONGEST = 400;
const ENOUGH = 12;

/** Facts about the foundation's own number and the counts stated for it say nothing of other numbers. */
const ABOUT_ONE_NUMBER = new Set(['stated-count-wrong']);

/** Does a fact show that rows do not come out on a number of chains? */
export function spoils({ code }: Fact): boolean {
  return code === 'gap-left-out' || (kindOf(code).severity !== 'note' && !ABOUT_ONE_NUMBER.has(code));
}

/** The chain that begins a piece: a chain, or one joined into a ring. */
function begins(item: Item): item is Chain | (Ring & { readonly chains: Amount }) {
  return item.type === 'chain' || (item.type === 'ring' && item.chains !== null);
}

/** The rows with the foundation chain's number replaced by `n`; null when they do not begin with a chain. */
export function withChain(rows: readonly RowTree[], n: number): readonly RowTree[] | null {
  const at = rows.findIndex((row) => row.items.some(begins));
  if (at < 0) return null;
  const row = rows[at]!;
  const index = row.items.findIndex(begins);
  const working = (item: Item) => item.type === 'work' || item.type === 'repeat' || item.type === 'group';
  if (rows.slice(0, at).some((other) => other.items.some(working)) || row.items.slice(0, index).some(working))
    return null;
  const items: Item[] = row.items.slice();
  const { from, to } = row.items[index]!;
  const amount: Amount = { from, to, kind: 'one', value: n };
  const item = row.items[index]!;
  items[index] = item.type === 'chain' ? { ...item, amount } : { ...(item as Ring), chains: amount };
  return rows.map((other, i) => (i === at ? { ...row, items, counts: [] } : other));
}

/** A foundation chain on which rows work, and what each row has on it. */
export interface WorkingChain {
  readonly n: number;
  /** One entry a row that is worked. */
  readonly rows: readonly {
    readonly stitches: number;
    readonly chains: number;
    /** Shells, V-stitches and the like by their names. */
    readonly units: ReadonlyMap<string, number>;
  }[];
}

/** What rows make on a foundation of `n` chains; null where they do not come out on it. */
export function worksOn(rows: readonly RowTree[], n: number, env: Env): WorkingChain | null {
  const changed = withChain(rows, n);
  if (changed === null) return null;
  const work = new PieceWork(null, env);
  const entries: Written[] = changed.map((row) => ({ row, figures: [] }));
  const results = work.workAll(entries, () => null);
  if (results.some((result) => result.facts.some(spoils))) return null;
  const worked = results.filter((result) => result.times > 0);
  return {
    n,
    rows: worked.map(({ tally }) => ({
      stitches: tally?.stitches ?? 0,
      chains: tally?.chains ?? 0,
      units: tally?.units ?? new Map(),
    })),
  };
}

/** The foundation chains on which rows work, the shortest first: as many as show the rule, or fewer. */
export function chainsThatWork(rows: readonly RowTree[], env: Env): readonly WorkingChain[] {
  const found: WorkingChain[] = [];
  for (let n = 1; n <= LONGEST && found.length < ENOUGH; n++) {
    const works = worksOn(rows, n, env);
    if (works !== null) found.push(works);
  }
  return found;
}

/**
 * The part of the chains that work which goes by a multiple: all but the first one or two, which may be chance, a
 * chain so short that a row never reaches its repeat. Null when they go by none.
 */
export function seriesOf(
  found: readonly WorkingChain[],
): { readonly multiple: number; readonly series: readonly WorkingChain[] } | null {
  for (let skip = 0; skip <= 2 && found.length - skip >= 3; skip++) {
    const series = found.slice(skip);
    const multiple = series[1]!.n - series[0]!.n;
    if (series.every((entry, i) => i === 0 || entry.n - series[i - 1]!.n === multiple))
      return { multiple, series };
  }
  return null;
}

/**
 * Finds the multiple of a plain text's first piece with rows. Null when the piece does not begin with a chain,
 * or when no chain, or no regular series of chains, works. Chains are counted as written, turning chain and all.
 */
export function findMultiple(text: string, terms: Terms): Multiple | null {
  const tree = readText(text, { terms });
  const piece = tree.pieces.find((p) => p.rows.length > 0);
  if (piece === undefined) return null;
  const definitions = tree.pieces.flatMap((p) => p.definitions);
  const env: Env = {
    size: 0,
    sizes: 1,
    only: null,
    names: new Map(
      definitions.flatMap((definition) => definition.names.map((name) => [name, definition] as const)),
    ),
    conventions: [...conventionsIn(piece.rows), ...tree.pieces.flatMap((p) => p.conventions)],
    turningChainWorked: piece.rows.some((row) => worksTurningChain(row.items)),
    rowEnds: 0,
    foundation: 0,
    earlier: null,
    parts: null,
    trace: null,
    of: null,
  };
  const regular = seriesOf(chainsThatWork(piece.rows, env));
  if (regular === null) return null;
  const { multiple, series } = regular;
  const plus = plusOf(multiple, series[0]!.n, series[0]!.rows[0]?.stitches ?? 0);
  return { multiple, plus, from: series.find((entry) => entry.n >= multiple + plus)!.n };
}

/**
 * The number after "plus" as the trade gives it: what is left when whole repeats are taken off. With every
 * number working, it is the chains that make no stitch of their own.
 */
function plusOf(multiple: number, from: number, stitches: number): number {
  if (multiple === 1) return Math.max(0, from - stitches);
  return from >= multiple ? from - multiple : from;
}
