/**
 * What working a row came to, whether that is what its words say, and the row as it is worked again later. How a row
 * is worked is not its concern.
 */
import type { Fact } from '../finding.ts';
import type { CountsAs, RowTree } from '../notation/tree.ts';
import type { Fabric, Opening, Tally } from './fabric.ts';
import type { RowTrace } from './trace.ts';

/** What working a row came to. */
export interface Worked {
  readonly fabric: Fabric;
  readonly tally: Tally;
  /** Passes of the row's main repeat, one with an open end before one with a number; null when it has none. */
  readonly repeats: number | null;
  readonly facts: readonly Fact[];
  readonly openings: readonly Opening[];
  /** What everything made went into; null unless traced. */
  readonly trace: RowTrace | null;
  /** The row makes only the foundation, or does no work at all. */
  readonly idle: boolean;
  /** Chains of the foundation, when this row made it. */
  readonly foundation: number;
  /** Slip stitches that only brought the hook to where the row begins: they take yarn and make nothing. */
  readonly travelled: number;
  readonly round: boolean;
  /** The work was turned before it. */
  readonly turned: boolean;
  /** What the row's own stated count settled about a doubtful turning chain; null = nothing. */
  readonly settled: boolean | null;
}

const WRONG: ReadonlySet<string> = new Set([
  'stated-count-wrong',
  'repeat-does-not-fit',
  'stitches-left-unworked',
  'place-does-not-exist',
]);

/** Does the row come out otherwise than its words say? */
export function isWrong(worked: Worked): boolean {
  return worked.facts.some((fact) => WRONG.has(fact.code));
}

const unstated = new WeakMap<RowTree, Map<boolean | null, RowTree>>();

/**
 * The row as it is worked again later: without the counts stated for its first working, and with what those
 * settled about its turning chain said. The same row gives the identical object.
 */
export function workedAgain(row: RowTree, settled: boolean | null): RowTree {
  if (row.counts.length === 0 && settled === null) return row;
  let known = unstated.get(row);
  if (known === undefined) {
    known = new Map();
    unstated.set(row, known);
  }
  const same = known.get(settled);
  if (same !== undefined) return same;
  let items = row.items;
  if (settled !== null) {
    const span = { from: row.from, to: row.from };
    const counts: CountsAs = settled
      ? { ...span, kind: 'stitch', stitch: null, chains: null, throughout: false }
      : { ...span, kind: 'nothing', throughout: false };
    const at = items.findIndex((item) => item.type === 'chain');
    items = items.map((item, i) => (i === at && item.type === 'chain' ? { ...item, counts } : item));
  }
  const made: RowTree = { ...row, items, counts: [] };
  known.set(settled, made);
  return made;
}
