/**
 * Corners: the spot of a row where a piece turns, which a pattern names without saying where it is. It is the
 * chain-space inside a corner group; where there are no spaces, the middle stitch of several made in one place.
 */
import type { Noun, Place } from '../notation/tree.ts';
import { type Meeting, matches } from './kinds.ts';
import { NOWHERE, type Progress } from './progress.ts';
import type { Site } from './site.ts';

/** How many stitches made in one place are taken for a corner at the least. */
const FEWEST = 3;

/** Of how many chains a row's corner spaces are at the least; null when the row has no spaces at all. */
const shortest = new WeakMap<readonly Site[], { readonly chains: number | null }>();

/** Spaces shorter than those inside the groups lie between them and are no corners. */
function shortestOf(below: readonly Site[]): number | null {
  const known = shortest.get(below);
  if (known !== undefined) return known.chains;
  let grouped = Number.POSITIVE_INFINITY;
  let spaces = 0;
  for (const site of below) {
    if (site.kind !== 'space') continue;
    spaces += 1;
    if (site.unit !== null) grouped = Math.min(grouped, site.chains);
  }
  const chains = spaces === 0 ? null : grouped === Number.POSITIVE_INFINITY ? 0 : grouped;
  shortest.set(below, { chains });
  return chains;
}

/** The middle one of an odd number of stitches made in one place. */
function isMiddle(site: Site): boolean {
  return site.unit !== null && site.unit.of >= FEWEST && site.unit.at * 2 === site.unit.of - 1;
}

/** Is the site the corner that the noun asks for? */
export function cornerFits(below: readonly Site[], site: Site, noun: Noun, meeting: Meeting): boolean {
  if (site.kind === 'ring') return true;
  if (noun.kind !== 'space') {
    const { corner: _, ...plain } = noun;
    return isMiddle(site) && matches(site, plain as Noun, null, false, meeting);
  }
  const chains = shortestOf(below);
  if (chains === null) return noun.corner === 'bare' && site.kind === 'stitch' && isMiddle(site);
  return site.kind === 'space' && site.chains >= chains;
}

/** Edges of a piece that a border goes along, one after another. */
const edgeOf = (site: Site): string => (site.kind === 'row-end' || site.kind === 'chain' ? site.kind : 'top');

/**
 * "3 sc in corner", of a piece worked in rows whose stitches make no corner: where one edge meets the next. The first
 * or last stitch of the top, or, past the end of an edge, a place that is no stitch (NOWHERE). Null when the hook is
 * not at such a place, or a corner of another sort lies ahead.
 */
export function edgeCorner(p: Progress, nouns: readonly Noun[]): number | null {
  if (p.env.rowEnds === 0 || p.tube || nouns.length !== 1 || nouns[0]!.corner !== 'bare') return null;
  if (p.seek(nouns, 0) >= 0) return null;
  const edge = p.pos < p.below.length ? edgeOf(p.below[p.pos]!) : null;
  const ahead: number[] = [];
  for (let i = p.pos; i < p.below.length && edgeOf(p.below[i]!) === edge; i++)
    if (p.owed(p.below[i]!) || edge !== 'top') ahead.push(i);
  const starts = edge === 'top' && p.made.every((site) => site.turning);
  if (starts && ahead.length > 0) {
    p.advance(ahead[0]!);
    return ahead[0]!;
  }
  // "sc in next 18 ch" between two corners of a foundation chain leaves one for each of them; so it is with the top of a
  // piece that the border does not begin on.
  const begun = edge === 'top' && p.below[0] !== undefined && edgeOf(p.below[0]) === 'top';
  if (ahead.length > 0 && ahead.length <= (begun ? 1 : 2)) {
    p.advance(ahead.at(-1)!);
    return ahead.at(-1)!;
  }
  const past = p.pos > 0 && (edge === null || ahead.length === 0 || edge !== edgeOf(p.below[p.pos - 1]!));
  return past ? NOWHERE : null;
}

/** Is the unit one that "each 3-sc corner", "each shell", "each corner" can mean? */
function meant(p: Progress, site: Site, unit: Noun): boolean {
  if (site.unit === null || site.unit.of < FEWEST) return false;
  if (unit.kind !== 'named') return true;
  return site.unit.name === 'group' || site.unit.name === p.meeting.nameOf(unit.stitch);
}

/**
 * Index of the next spot of the row below that `place` singles out ("each corner sc", "2nd sc of each 3-sc
 * corner"), -1 when none is ahead, or null when the place is no such spot. Uses up nothing.
 */
export function spotOf(p: Progress, place: Place): number | null {
  const from = p.inner > 0 ? p.pos + 1 : p.pos;
  if (place.kind === 'across') return place.nouns[0]?.corner === undefined ? null : p.seek(place.nouns, from);
  if (place.kind !== 'of-unit') return null;
  for (let i = from; i < p.below.length; i++) {
    p.spent += 1;
    const site = p.below[i]!;
    if (site.unit === null || !meant(p, site, place.unit)) continue;
    const { at, of } = site.unit;
    const opens = i - (p.meeting.backwards ? of - 1 - at : at);
    const index = inside(p, place, Math.max(0, opens), Math.min(opens + of, p.below.length));
    if (index !== null && index >= from) return index;
    i = Math.max(i, opens + of - 1);
  }
  return -1;
}

/** The site of a unit that lies from `from` up to `to`, or null when it has none. */
function inside(
  p: Progress,
  place: Extract<Place, { kind: 'of-unit' }>,
  from: number,
  to: number,
): number | null {
  const { nth } = place;
  if (nth === 'centre') return from + Math.floor((to - from) / 2);
  const found: number[] = [];
  for (let i = from; i < to; i++) if (p.isAt(i, [place.noun])) found.push(i);
  return (nth === 'last' ? found.at(-1) : found[(p.amount(nth) ?? 1) - 1]) ?? null;
}

/** Goes on to the spot and uses it up. */
export function takeSpot(p: Progress, index: number): void {
  p.uncover();
  p.gap = -1;
  p.advance(index);
  const space = p.below[index]!.kind === 'space';
  p.intoSpace = space;
  if (space) p.usedSpace = true;
}
