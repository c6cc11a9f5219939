/**
 * What a study remembers from one edit to the next, all of it by identity: rows read, rows worked. It can be
 * thrown away at any time and only speed is lost. No result depends on it (a property test compares a study
 * with memory to one without).
 */
import {
  type Env,
  type Fabric,
  type Figures,
  type RowWorker,
  sameEarlier,
  sameFabric,
  sameParts,
  type Worked,
  workRow,
} from '../fabric/index.ts';
import type { RowTree } from '../notation/tree.ts';

interface Entry {
  readonly below: Fabric | null;
  readonly figures: Figures;
  readonly worked: Worked;
}

/** Workings of one row in one env that are kept; a row repeated through shaping has many states. */
const KEPT = 64;

function sameFigures(a: Figures, b: Figures): boolean {
  if (a === b) return true;
  return a.length === b.length && a.every((value, i) => value === b[i]);
}

export class Memory {
  private readonly worked = new WeakMap<RowTree, WeakMap<Env, Entry[]>>();
  private readonly variants = new WeakMap<Env, Env[]>();

  /** `workRow`, remembered. A fabric equal to an earlier one comes back as that one, so that identities hold. */
  readonly work: RowWorker = (row, below, env, figures): Worked => {
    const own = this.settled(env);
    let byEnv = this.worked.get(row);
    if (byEnv === undefined) {
      byEnv = new WeakMap();
      this.worked.set(row, byEnv);
    }
    let entries = byEnv.get(own);
    if (entries === undefined) {
      entries = [];
      byEnv.set(own, entries);
    }
    for (let i = entries.length - 1; i >= 0; i--) {
      const entry = entries[i]!;
      if (entry.below === below && sameFigures(entry.figures, figures)) return entry.worked;
    }
    for (const entry of entries) {
      if (sameFabric(entry.below, below) && sameFigures(entry.figures, figures)) {
        entries.push({ below, figures, worked: entry.worked });
        if (entries.length > KEPT) entries.shift();
        return entry.worked;
      }
    }
    let worked = workRow(row, below, own, figures);
    for (const entry of entries) {
      if (entry.worked.fabric !== worked.fabric && sameFabric(entry.worked.fabric, worked.fabric)) {
        worked = { ...worked, fabric: entry.worked.fabric };
        break;
      }
    }
    entries.push({ below, figures, worked });
    if (entries.length > KEPT) entries.shift();
    return worked;
  };

  /** Envs that a piece varies for single rows, told apart by what varies, so that they too keep an identity. */
  private settled(env: Env): Env {
    const from = env.of;
    if (from === null) return env;
    let known = this.variants.get(from);
    if (known === undefined) {
      known = [];
      this.variants.set(from, known);
    }
    const same = known.find(
      (other) =>
        other.rowEnds === env.rowEnds &&
        other.foundation === env.foundation &&
        String(other.only) === String(env.only) &&
        sameEarlier(other.earlier, env.earlier) &&
        sameParts(other.parts, env.parts),
    );
    if (same !== undefined) return same;
    known.push(env);
    return env;
  }
}
