/**
 * The fabric that a row leaves: its sites in the order in which they were made, how the row was closed, and
 * what still waits. Immutable; equal fabrics can replace one another, which is what makes an edit's
 * recomputation stop. Nothing here knows how a row is worked.
 */
import type { BaseStitch } from '../trade/stitches.ts';
import { CHAIN_SITE, counts, RING_SITE, type Site, stitchSite } from './site.ts';

/** A turning chain made at the end of a row, for the next one. */
export interface Carried {
  readonly chains: number;
  /** What the text said it stands for, if it did: the tree node is carried so the next row can weigh it. */
  readonly said: 'stitch' | 'nothing' | null;
  readonly saidBase: BaseStitch | null;
  readonly saidChains: number | null;
}

/** Stitches that a row passed over under a chain and that nothing has used: the sleeve of a yoke. */
export interface Opening {
  readonly sites: readonly Site[];
  /** Chains that bridge it. */
  readonly chains: number;
}

export interface Fabric {
  /** In the order made. For a foundation chain: first chain made first. */
  readonly sites: readonly Site[];
  /** 'chain' = a foundation chain not worked yet; 'flat' rows; 'joined' and 'spiral' rounds. */
  readonly form: 'chain' | 'flat' | 'joined' | 'spiral';
  /** For a joined round: index of the site that the join went into. */
  readonly start: number;
  /** What the row said about turning at its end; null = nothing. */
  readonly turned: boolean | null;
  readonly carried: Carried | null;
  /** The yarn was cut at its end. */
  readonly fastened: boolean;
  /** Sites of an earlier row left for a row that goes back, in the direction of the row that left them. */
  readonly rest: readonly Site[] | null;
  /** The row just made goes the way of the row that left `rest`; a short row of that way leaves it waiting behind its own. */
  readonly restAhead: boolean;
  /** The yarn has been joined again to what waits: the next row begins there. */
  readonly rejoined: boolean;
  /** A chain closed into a ring: it can be worked into as a ring or chain by chain. */
  readonly ring: boolean;
}

/** A fabric of `sites`, flat, unless said otherwise. */
export function fabric(sites: readonly Site[], rest: Partial<Fabric> = {}): Fabric {
  return {
    sites,
    form: 'flat',
    start: 0,
    turned: null,
    carried: null,
    fastened: false,
    rest: null,
    restAhead: true,
    rejoined: false,
    ring: false,
    ...rest,
  };
}

/** A foundation chain of `n` chains. */
export function chainFabric(n: number): Fabric {
  return fabric(new Array<Site>(n).fill(CHAIN_SITE), { form: 'chain' });
}

/** A yarn ring, or `n` chains joined into one. */
export function ringFabric(n: number | null): Fabric {
  return n === null
    ? fabric([RING_SITE], { form: 'joined', ring: true })
    : fabric(new Array<Site>(n).fill(CHAIN_SITE), { form: 'joined', ring: true });
}

/** `n` plain stitches: what a row that is only counted, not worked stitch by stitch, leaves. */
export function plainFabric(n: number, base: BaseStitch, form: 'flat' | 'joined' | 'spiral'): Fabric {
  return fabric(new Array<Site>(n).fill(stitchSite(base, base)), { form });
}

function sameSites(a: readonly Site[], b: readonly Site[]): boolean {
  if (a === b) return true;
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) {
    const x = a[i]!;
    const y = b[i]!;
    if (x !== y && x.key !== y.key) return false;
  }
  return true;
}

function sameCarried(a: Carried | null, b: Carried | null): boolean {
  if (a === null || b === null) return a === b;
  return (
    a.chains === b.chains && a.said === b.said && a.saidBase === b.saidBase && a.saidChains === b.saidChains
  );
}

/** Would the next row work out the same on both? */
export function sameFabric(a: Fabric | null, b: Fabric | null): boolean {
  if (a === b) return true;
  if (a === null || b === null) return false;
  return (
    a.form === b.form &&
    a.start === b.start &&
    a.turned === b.turned &&
    a.fastened === b.fastened &&
    a.rejoined === b.rejoined &&
    a.restAhead === b.restAhead &&
    a.ring === b.ring &&
    sameCarried(a.carried, b.carried) &&
    (a.rest === b.rest || (a.rest !== null && b.rest !== null && sameSites(a.rest, b.rest))) &&
    sameSites(a.sites, b.sites)
  );
}

/** What a row's count counts. */
export interface Tally {
  /** Stitches, a counting turning chain among them. For a bare foundation chain: its chains. */
  readonly stitches: number;
  /** Chain-spaces. */
  readonly spaces: number;
  /** Chains in those spaces. */
  readonly chains: number;
  /** Stitches by trade id; the values add up to `stitches`. */
  readonly byKind: ReadonlyMap<string, number>;
  /** The same for stitches that belong to no unit. */
  readonly loose: ReadonlyMap<string, number>;
  /** The same for stitches made in a place of their own, in no unit or group. */
  readonly single: ReadonlyMap<string, number>;
  /** Units (shells, V-stitches …) by name. */
  readonly units: ReadonlyMap<string, number>;
  /** Spaces by their chains. */
  readonly spacesOf: ReadonlyMap<number, number>;
  /** Groups made in one place that no name says. */
  readonly groups: number;
  /** Places that hold two stitches or more. */
  readonly shared: number;
  /** Two stitches or more of one place with no space between them. */
  readonly runs: number;
  readonly picots: number;
  /** Does a turning chain count among the stitches? */
  readonly turning: boolean;
}

const tallies = new WeakMap<readonly Site[], Tally>();

/** Counts of a fabric. Memoised by the sites' identity. */
export function tally(of: Fabric): Tally {
  const known = tallies.get(of.sites);
  if (known !== undefined) return known;
  const byKind = new Map<string, number>();
  const alone = new Map<string, number>();
  const single = new Map<string, number>();
  const units = new Map<string, number>();
  const spacesOf = new Map<number, number>();
  let stitches = 0;
  let spaces = 0;
  let chains = 0;
  let loose = 0;
  let picots = 0;
  let turning = false;
  let together = 0;
  let beside = 0;
  let shared = 0;
  let runs = 0;
  let last: string | null = null;
  let run = 0;
  const flush = () => {
    if (last !== null && run > 0) byKind.set(last, (byKind.get(last) ?? 0) + run);
    run = 0;
  };
  for (const site of of.sites) {
    if (counts(site)) {
      stitches += 1;
      turning ||= site.turning;
      together = site.more ? together + 1 : 1;
      beside = site.more ? beside + 1 : 1;
      if (together === 2) shared += 1;
      if (beside === 2) runs += 1;
      if (site.stitch !== last) {
        flush();
        last = site.stitch;
      }
      run += 1;
      if (site.stitch !== null && (site.unit === null || site.unit.name === 'group')) {
        alone.set(site.stitch, (alone.get(site.stitch) ?? 0) + 1);
      }
      if (site.stitch !== null && site.unit === null)
        single.set(site.stitch, (single.get(site.stitch) ?? 0) + 1);
    } else if (site.kind === 'space') {
      spaces += 1;
      beside = 0;
      chains += site.chains;
      spacesOf.set(site.chains, (spacesOf.get(site.chains) ?? 0) + 1);
    } else if (site.kind === 'chain') loose += 1;
    else if (site.kind === 'picot') picots += 1;
    if (site.unit !== null && site.unit.at === 0)
      units.set(site.unit.name, (units.get(site.unit.name) ?? 0) + 1);
  }
  flush();
  if (stitches === 0 && loose > 0) {
    stitches = loose;
    byKind.set('chain', loose);
  }
  const groups = units.get('group') ?? 0;
  units.delete('group');
  const made: Tally = {
    stitches,
    spaces,
    chains,
    byKind,
    loose: alone,
    single,
    units,
    spacesOf,
    groups,
    shared,
    runs,
    picots,
    turning,
  };
  tallies.set(of.sites, made);
  return made;
}
