/**
 * What each stitch of a worked row stands on, as places in the row below: for drawings that follow where a piece grows
 * or narrows. Found by working the row once more with a tracer, and remembered for the same row on the same fabric.
 */
import { type Fabric, type Figures, type Site, Tracer, workRow } from '../fabric/index.ts';
import type { RowTree } from '../notation/tree.ts';
import type { WorkedRow } from './worked.ts';

export interface Origins {
  /**
   * For each site of the row, in the order made: the places it went into, as indexes of the sites of the row below,
   * and behind them of the stitches that wait beside it. Empty where it went into none of them.
   */
  readonly feet: readonly (readonly number[])[];
  /** The same places of stitches that wait after the row; null where none do. */
  readonly waiting: readonly number[] | null;
  /** For each opening that the row leaves: the places passed over. */
  readonly openings: readonly (readonly number[])[];
  readonly turned: boolean;
}

interface Entry {
  readonly below: Fabric;
  readonly definitions: unknown;
  readonly figures: Figures;
  readonly fabric: Fabric;
  readonly origins: Origins;
}

/** Workings of one row that are kept; a row repeated through shaping has many. */
const KEPT = 64;

const known = new WeakMap<RowTree, Entry[]>();

const sameFigures = (a: Figures, b: Figures) =>
  a === b || (a.length === b.length && a.every((value, i) => value === b[i]));

/** Where a row's stitches stand; null for a first row, and for one that the text gives no words for. */
export function originsOf({ seen, below, fabric }: WorkedRow): Origins | null {
  if (seen === null || below === null) return null;
  const { row, figures, env } = seen;
  let entries = known.get(row);
  if (entries === undefined) {
    entries = [];
    known.set(row, entries);
  }
  const definitions = env.of ?? env;
  const before = entries.find(
    (entry) =>
      entry.below === below &&
      entry.fabric === fabric &&
      entry.definitions === definitions &&
      sameFigures(entry.figures, figures),
  );
  if (before !== undefined) return before.origins;
  const tracer = new Tracer();
  const rest = below.rest === null ? null : tracer.copy(below.rest);
  const own = { ...tracer.own(below), rest };
  const worked = workRow(row, own, { ...env, trace: tracer }, figures);
  const places = new Map<Site, number>();
  for (const site of own.sites) places.set(site, places.size);
  for (const site of rest ?? []) places.set(site, places.size);
  const indexes = (sites: readonly Site[]) => sites.flatMap((site) => places.get(site) ?? []);
  const origins: Origins = {
    feet: worked.trace === null ? [] : worked.trace.makings.map((making) => indexes(making.feet)),
    waiting: worked.fabric.rest === null ? null : indexes(worked.fabric.rest),
    openings: worked.openings.map((opening) => indexes(opening.sites)),
    turned: worked.turned,
  };
  entries.push({ below, definitions, figures, fabric, origins });
  if (entries.length > KEPT) entries.shift();
  return origins;
}
