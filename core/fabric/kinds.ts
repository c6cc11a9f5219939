/**
 * Which stitch of the trade a written stitch is, and whether a site is what a noun asks for. Reads the tree,
 * holds no state and knows nothing of order or position.
 */
import type { Noun, Place, StitchRef } from '../notation/tree.ts';
import type { BaseStitch } from '../trade/stitches.ts';
import type { Site } from './site.ts';

/** Forms that make one stitch out of several loops or stitches, whatever is inside. */
export const GATHERED: ReadonlySet<string> = new Set(['cluster', 'bobble', 'popcorn', 'puff']);

/** Whatever way its loop is drawn up, a Tunisian stitch is closed like all others. */
const TUNISIAN = 'tun.t1';

const PREFIX: Readonly<Record<string, string>> = {
  extended: 'ext.',
  foundation: 'fnd.',
  linked: 'lnk.',
  reverse: 'rev.',
  spike: 'spike.',
};

/** Trade id of the stitch ("t3", "fp.t3", "tog2.t1", "cluster.t3"); `prevailing` stands in where no height is named. */
export function stitchId(ref: StitchRef, place: Place | null, prevailing: BaseStitch): string {
  if (GATHERED.has(ref.form)) return `${ref.form}.${ref.base ?? (ref.form === 'puff' ? 't2' : 't3')}`;
  const base = ref.base ?? prevailing;
  if (ref.form === 'tunisian') return TUNISIAN;
  const post = ref.post ?? place?.post ?? null;
  const side = post === null ? '' : post === 'front' ? 'fp.' : 'bp.';
  if (ref.together > 1) return `${side}tog${ref.together}.${base}`;
  return `${side}${PREFIX[ref.form] ?? ''}${base}`;
}

/** Other spellings under which a pattern may define a unit the trade names. */
const SYNONYMS: Readonly<Record<string, readonly string[]>> = {
  'v-stitch': ['v-stitch', 'v-st', 'v st', 'vst', 'v stitch'],
  shell: ['shell', 'sh', 'shell stitch', 'shell st', 'fan'],
  cluster: ['cluster', 'cl', 'cluster stitch', 'cluster st'],
  bobble: ['bobble', 'bo', 'mb', 'bobble stitch', 'bobble st'],
  popcorn: ['popcorn', 'pc', 'pop', 'popcorn stitch', 'popcorn st'],
  puff: ['puff', 'ps', 'pst', 'puff stitch', 'puff st'],
  picot: ['picot', 'p'],
  inc: ['inc', 'increase'],
  dec: ['dec', 'decrease'],
};

/** Names to look a written unit up by, best first. */
export function namesOf(ref: StitchRef): readonly string[] {
  const own = ref.special !== null ? [ref.special] : (SYNONYMS[ref.form] ?? [ref.form]);
  const qualified: string[] = [];
  for (const name of own) {
    if (ref.beginning) qualified.push(`beg ${name}`, `beginning ${name}`);
    if (ref.half) qualified.push(`half ${name}`);
  }
  return [...qualified, ...own];
}

/** The name that a unit is tallied and looked for under. */
export function unitName(ref: StitchRef): string {
  return ref.special ?? (ref.form === 'v-stitch' ? 'V-st' : ref.form);
}

/** How the row at hand meets units: the name that a ref goes by, and whether the row below is met backwards. */
export interface Meeting {
  readonly nameOf: (ref: StitchRef) => string;
  readonly backwards: boolean;
  /** The row below is of blocks, each beginning with a chain that is its edge stitch and its space at once. */
  blocks: boolean;
  /** The row below has no space at all. */
  spaceless: boolean;
  /** Names of the units that the row below has. */
  readonly units: ReadonlySet<string>;
}

const unitsIn = new WeakMap<readonly Site[], ReadonlySet<string>>();

/** The names of all units in a row. */
export function unitsOf(sites: readonly Site[]): ReadonlySet<string> {
  let known = unitsIn.get(sites);
  if (known === undefined) {
    known = new Set(sites.flatMap((site) => (site.unit === null ? [] : [site.unit.name])));
    unitsIn.set(sites, known);
  }
  return known;
}

/** Are all spaces of the row the chains that begin a block, behind the slip stitch that joins it on? */
export function ofBlocks(below: readonly Site[]): boolean {
  let spaces = 0;
  for (let i = 0; i < below.length; i++) {
    if (below[i]!.kind !== 'space') continue;
    if (below[i - 1]?.base !== 'slip' && below[i + 1]?.base !== 'slip') return false;
    spaces += 1;
  }
  return spaces > 0;
}

/** Is this site the first of a unit to be met? */
export function opensUnit(site: Site, meeting: Meeting): boolean {
  if (site.unit === null) return false;
  return site.unit.at === (meeting.backwards ? site.unit.of - 1 : 0);
}

/** Does this site begin the unit asked for? A group made in one place passes for a shell that has no name. */
export function beginsUnit(site: Site, ref: StitchRef, loosely: boolean, meeting: Meeting): boolean {
  if (site.unit === null || !opensUnit(site, meeting)) return false;
  const name = meeting.nameOf(ref);
  if (site.unit.name === name) return true;
  if (site.unit.name !== 'group') return false;
  // Where the row below has none by that name, its groups are what the words mean.
  return loosely || ((ref.form === 'shell' || ref.form === 'v-stitch') && !meeting.units.has(name));
}

/** Is this ref a unit (something of several sites) rather than one stitch? */
export function isUnit(ref: StitchRef): boolean {
  return ref.form === 'shell' || ref.form === 'v-stitch' || ref.form === 'special';
}

function namedMatches(site: Site, ref: StitchRef, meeting: Meeting): boolean {
  if (ref.form === 'picot') return site.kind === 'picot';
  if (isUnit(ref)) return beginsUnit(site, ref, false, meeting);
  if (site.kind !== 'stitch' || site.stitch === null) return false;
  if (GATHERED.has(ref.form)) {
    return site.stitch.startsWith(`${ref.form}.`) || (ref.form === 'cluster' && site.stitch.includes('tog'));
  }
  if (ref.form === 'dec') return site.stitch.includes('tog');
  if (ref.together > 1)
    return site.stitch.includes(`tog${ref.together}.`) && (ref.base === null || site.base === ref.base);
  if (ref.post !== null) {
    return (
      site.stitch.startsWith(ref.post === 'front' ? 'fp.' : 'bp.') &&
      (ref.base === null || site.base === ref.base)
    );
  }
  if (ref.base === null) return true;
  return site.base === ref.base;
}

/**
 * Is the site what the noun asks for? `chains` is the noun's own number for a space ("ch-2 sp"), already
 * taken for the size; `bare` says that the fabric is a foundation chain, whose chains serve as stitches.
 */
export function matches(
  site: Site,
  noun: Noun,
  chains: number | null,
  bare: boolean,
  meeting: Meeting,
): boolean {
  switch (noun.kind) {
    case 'stitch':
      return site.kind === 'stitch' || site.kind === 'seam' || (bare && site.kind === 'chain');
    case 'named':
      return namedMatches(site, noun.stitch, meeting);
    case 'chain':
    case 'loop-of-chain':
      return site.kind === 'chain' || site.kind === 'space';
    case 'space':
      if (site.kind === 'ring') return true;
      // A turning chain that is no stitch still has room under it for who asks for that.
      if (noun.turning && site.kind === 'turning') return site.chains > 1;
      if (noun.loop && meeting.spaceless) return site.kind === 'stitch' || (bare && site.kind === 'chain');
      if (meeting.blocks && site.kind === 'stitch' && site.turning)
        return chains === null || site.chains === chains;
      return site.kind === 'space' && (chains === null || site.chains === chains || site.turning);
    case 'row-end':
      return site.kind === 'row-end';
    case 'seam':
      return site.kind === 'seam';
    case 'turning-chain':
      return site.turning;
    case 'between':
      return false;
  }
}
