/**
 * Sites: the places in finished work that a hook can go into. A site is an immutable value shared by all
 * stitches of the same sort, so that two fabrics can be compared site by site. Nothing here works a row.
 */
import type { BaseStitch } from '../trade/stitches.ts';

export type SiteKind =
  | 'stitch' // a worked stitch; the turning chain too, where it counts as one
  | 'space' // a chain-space of `chains` chains
  | 'chain' // one chain of a foundation chain
  | 'turning' // a turning chain that does not count: there, but not owed a stitch
  | 'picot'
  | 'ring'
  | 'row-end'
  | 'seam';

/** Membership of a shell, V-stitch or other unit: the `at`-th of its `of` sites. */
export interface Unit {
  readonly name: string;
  readonly at: number;
  readonly of: number;
}

export interface Site {
  readonly key: string;
  readonly kind: SiteKind;
  /** Trade id of a stitch ("t3", "fp.t3", "tog2.t1"); null for what is not a stitch. */
  readonly stitch: string | null;
  readonly base: BaseStitch | null;
  /** Chains of a space, picot or turning chain. */
  readonly chains: number;
  /** Made by a turning chain (a counting one is a stitch; what is left of a long one is a space). */
  readonly turning: boolean;
  /** Made in the same place as the site before it: the gap before this one is inside a group. */
  readonly more: boolean;
  readonly marked: boolean;
  readonly unit: Unit | null;
}

/** Beyond this many sorts the table starts afresh; only sharing is lost, since sites compare by key. */
const SORTS = 50_000;
const table = new Map<string, Site>();

function intern(site: Omit<Site, 'key'>): Site {
  const unit = site.unit === null ? '' : `${site.unit.name}/${site.unit.at}/${site.unit.of}`;
  const flags = (site.turning ? 1 : 0) + (site.more ? 2 : 0) + (site.marked ? 4 : 0);
  const key = `${site.kind}:${site.stitch ?? ''}:${site.base ?? ''}:${site.chains}:${flags}:${unit}`;
  const known = table.get(key);
  if (known !== undefined) return known;
  if (table.size > SORTS) table.clear();
  const made: Site = { key, ...site };
  table.set(key, made);
  return made;
}

const plain = { stitch: null, base: null, chains: 0, turning: false, more: false, marked: false, unit: null };

const stitches = new Map<string, Site>();

/** A stitch of a kind. Kinds are few, so each is made once. */
export function stitchSite(stitch: string, base: BaseStitch | null): Site {
  const known = stitches.get(stitch);
  if (known !== undefined && known.base === base) return known;
  const made = intern({ ...plain, kind: 'stitch', stitch, base });
  if (stitches.size > SORTS) stitches.clear();
  stitches.set(stitch, made);
  return made;
}

/** A turning chain that counts as `stitch`. */
export function turningStitch(stitch: string, base: BaseStitch | null, chains: number): Site {
  return intern({ ...plain, kind: 'stitch', stitch, base, chains, turning: true });
}

/** A turning chain that does not count. */
export function turningChain(chains: number): Site {
  return intern({ ...plain, kind: 'turning', chains, turning: true });
}

export function spaceSite(chains: number, turning = false): Site {
  return intern({ ...plain, kind: 'space', chains, turning });
}

export function picotSite(chains: number): Site {
  return intern({ ...plain, kind: 'picot', chains });
}

export const CHAIN_SITE: Site = intern({ ...plain, kind: 'chain', chains: 1 });
/** The chain that a walk round a foundation chain comes back to: it may be used again or left. */
export const OPEN_CHAIN_SITE: Site = intern({ ...plain, kind: 'chain', chains: 1, turning: true });
export const RING_SITE: Site = intern({ ...plain, kind: 'ring' });
export const SEAM_SITE: Site = intern({ ...plain, kind: 'seam' });
export const ROW_END_SITE: Site = intern({ ...plain, kind: 'row-end' });

const followers = new WeakMap<Site, Site>();

export function withMore(site: Site): Site {
  if (site.more) return site;
  const known = followers.get(site);
  if (known !== undefined) return known;
  const made = intern({ ...site, more: true });
  followers.set(site, made);
  return made;
}

export function withMark(site: Site, marked: boolean): Site {
  return site.marked === marked ? site : intern({ ...site, marked });
}

const members = new WeakMap<Site, Site[]>();

export function withUnit(site: Site, name: string, at: number, of: number): Site {
  const unit = site.unit;
  if (unit !== null && unit.name === name && unit.at === at && unit.of === of) return site;
  let known = members.get(site);
  if (known === undefined) {
    known = [];
    members.set(site, known);
  }
  for (const member of known) {
    const own = member.unit!;
    if (own.at === at && own.of === of && own.name === name) return member;
  }
  const made = intern({ ...site, unit: { name, at, of } });
  if (known.length > 200) known.length = 0;
  known.push(made);
  return made;
}

/** Is it one of the stitches that a row's count counts? */
export function counts(site: Site): boolean {
  return site.kind === 'stitch';
}
