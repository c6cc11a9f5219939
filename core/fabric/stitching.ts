/**
 * Making stitches in a place that has been found: plain ones, increases and decreases, units without a
 * definition, picots, foundation stitches, work into the row's own chains, totals spread evenly. Where the
 * hook goes next is not decided here.
 */
import type { Span } from '../finding.ts';
import type { Place, StitchRef, Work } from '../notation/tree.ts';
import { type BaseStitch, height } from '../trade/stitches.ts';
import { GATHERED, isUnit, stitchId } from './kinds.ts';
import { nounId } from './places.ts';
import { MOST_STITCHES, NOWHERE, type Progress } from './progress.ts';
import { picotSite, type Site, spaceSite, stitchSite, turningChain, turningStitch } from './site.ts';
import { type Decision, edgeChains, standsFor } from './turning.ts';
import { definitionOf, expand } from './units.ts';

/** The stitch, made `n` times into the place. */
export function makeIn(p: Progress, item: Work, place: Place, index: number, n: number): boolean {
  const ref = item.stitch;
  const post = ref.post ?? place.post;
  if (post !== null && p.bare && p.below[index]?.kind === 'chain')
    p.note('post-round-chain', item, { stitch: ref.base ?? p.prevailing });
  const defined = definitionOf(p, ref);
  if (defined !== null) {
    for (let k = 0; k < n; k++) if (!expand(p, ref, defined, index, item)) return false;
    return true;
  }
  p.recording?.by(ref, place);
  if (isUnit(ref)) return unit(p, ref, index, n, item);
  if (ref.form === 'inc') {
    if (ref.parts === null)
      p.note('definition-assumed', ref, { name: 'inc', stitch: ref.base ?? p.prevailing, parts: 2 });
    return p.make(
      stitchSite(stitchId({ ...ref, form: 'plain' }, place, p.prevailing), ref.base ?? p.prevailing),
      n * (ref.parts ?? 2),
      index,
    );
  }
  if (ref.form === 'dec') {
    const together = Math.max(2, ref.together);
    if (ref.base === null)
      p.note('definition-assumed', ref, { name: 'dec', stitch: ref.base ?? p.prevailing, parts: 2 });
    return p.make(
      stitchSite(stitchId({ ...ref, together }, place, p.prevailing), ref.base ?? p.prevailing),
      n,
      index,
    );
  }
  if (GATHERED.has(ref.form) && ref.parts === null) {
    p.note('definition-assumed', ref, { name: ref.form, stitch: ref.base ?? 't3', parts: 1 });
  }
  const base: BaseStitch = ref.base ?? p.prevailing;
  const site: Site = stitchSite(
    stitchId(ref, place, p.prevailing),
    GATHERED.has(ref.form) ? (ref.base ?? 't3') : base,
  );
  if (ref.form === 'crossed') return p.make(site, 2 * n, index);
  const from = p.made.length + (p.pending > 0 ? 1 : 0);
  if (!p.make(site, n, index)) return false;
  // A fan made in one place can be met again as "next shell", whatever its author calls it.
  if (n >= 3 && p.here === null && p.below[index]?.kind !== 'ring') p.gather('group', from);
  return true;
}

/** A unit that the pattern does not define, in its usual meaning where there is one. */
function unit(p: Progress, ref: StitchRef, index: number, n: number, item: Work): boolean {
  const base = ref.base ?? 't3';
  for (let k = 0; k < n; k++) {
    const from = p.made.length;
    const open = p.pending;
    if (ref.form === 'v-stitch') {
      p.note('definition-assumed', ref, { name: 'V-st', stitch: base, parts: 2 });
      if (!p.make(stitchSite(base, base), 1, index)) return false;
      p.pending += 1;
      if (!p.make(stitchSite(base, base), 1, index)) return false;
    } else if (ref.form === 'shell' && ref.parts !== null) {
      if (!p.make(stitchSite(base, base), ref.parts, index)) return false;
    } else {
      p.note('special-not-defined', item.stitch, { name: p.nameOf(ref) });
      if (!p.make(stitchSite(`special.${p.nameOf(ref)}`, base), 1, index)) return false;
    }
    const start = open > 0 ? from + 1 : from;
    p.gather(p.nameOf(ref), start);
  }
  return true;
}

export function picot(p: Progress, chains: number): boolean {
  p.closeSpace();
  if (!p.step()) return false;
  p.made.push(picotSite(chains));
  p.recording?.bare(null);
  return true;
}

/** Foundation stitches: chain and stitch in one, so nothing below is used. */
export function foundation(p: Progress, item: Work, per: number): boolean {
  const place = item.places[0]!;
  const n = place.kind === 'next' ? per * (p.amount(place.amount) ?? 1) : per;
  const site = stitchSite(stitchId(item.stitch, null, p.prevailing), item.stitch.base ?? 't1');
  p.recording?.by(item.stitch, null);
  for (let k = 0; k < n; k++) {
    if (!p.make(site, 1, NOWHERE)) {
      p.problem('too-many-stitches', item, { limit: MOST_STITCHES });
      return false;
    }
    p.madeAt = -2;
  }
  return true;
}

/** Work into a chain that the row itself has just made: a picot, a petal. */
export function ownChain(p: Progress, item: Work, per: number, nth: number): boolean {
  const base = item.stitch.base ?? p.prevailing;
  if (p.pending === 0) {
    const closing = base === 'slip' && p.made.length > 0;
    if (closing) return true;
    return p.problem('place-does-not-exist', item, { noun: 'ch', wanted: nth, found: 0, left: 0, have: 0 });
  }
  const used = Math.min(Math.max(1, nth), p.pending);
  p.pending -= used;
  if (base === 'slip') {
    // "Ch 6, sl st in 2nd ch from hook, sc in next ch": a point is worked back along what is left of its chain.
    const along = p.pending > 0 ? p.made.length : NOWHERE;
    const ok = picot(p, used);
    p.along = along;
    return ok;
  }
  p.along = p.pending > 0 ? p.made.length : NOWHERE;
  p.recording?.by(item.stitch, null);
  return p.make(stitchSite(stitchId(item.stitch, item.places[0]!, p.prevailing), base), per, NOWHERE);
}

/** "… and in next 4 ch" behind work into the row's own chain: on along that chain. Null when it is not that. */
export function alongOwnChain(p: Progress, item: Work, per: number, place: Place): boolean | null {
  if (p.along === NOWHERE || place.kind !== 'next' || place.implied) return null;
  if (!place.nouns.every((noun) => noun.kind === 'chain')) return null;
  const at = p.along;
  const stem = p.made[at];
  const n = p.amount(place.amount);
  if (stem?.kind !== 'space' || n === null || n > stem.chains) return null;
  if (n < stem.chains) p.made[at] = spaceSite(stem.chains - n);
  else {
    p.made.splice(at, 1);
    p.recording?.makings.splice(at, 1);
    p.along = NOWHERE;
  }
  const base = item.stitch.base ?? p.prevailing;
  p.recording?.by(item.stitch, null);
  return p.make(stitchSite(stitchId(item.stitch, place, p.prevailing), base), n * per, NOWHERE);
}

/**
 * The edge that "4th ch from hook" leaves on a foundation chain: makes its sites and answers the index of that
 * chain; null when the chain is not that long. In a group or a unit an odd chain over is just one skipped.
 */
export function standEdge(
  p: Progress,
  k: number,
  named: BaseStitch | null,
  place: Place | undefined,
  at: Span,
  whole: boolean,
  extended = false,
  /** A group with a chain-space of its own, so that rows after it speak of those spaces. */
  spaced = false,
): number | null {
  if (k < 1 || k > p.below.length) {
    p.problem('place-does-not-exist', at, {
      noun: 'ch',
      wanted: k,
      found: p.below.length,
      left: p.below.length,
      have: p.below.length,
    });
    return null;
  }
  const base = named ?? p.edgeBase ?? p.prevailing;
  const said = place?.kind === 'from-hook' ? place.counts : null;
  p.firstUsed = k - 1;
  const counts = said ?? p.edgeSaid;
  const plain = edgeChains(k, counts, base, p.round, p.env, p.figures, p.forced, extended, p.edgeJoined);
  // "Shell in 6th ch from hook": what a group passes over beside the edge is the half of its own width.
  const beside = spaced && counts === null && plain.counts && k - 1 - height(plain.base) <= FEW_BESIDE;
  const edge = beside ? { ...plain, space: 0 } : plain;
  if (edge.odd && whole) {
    p.note('edge-chain-unclear', place ?? at, {
      chain: k,
      stitch: base,
      skipped: k - 1,
      rest: k - 1 - height(base),
    });
  }
  if (edge.loosely) p.edgeLoose = edge.counts;
  p.edgeAssumed = edge.assumed
    ? { chains: k - 1, stitch: edge.base, counts: edge.counts, from: at.from, to: at.to }
    : null;
  if (edge.counts) p.made.push(turningStitch(standsFor(edge), edge.base, k - 1));
  else if (!p.round && edge.space === 0 && k > 1) p.made.push(turningChain(k - 1));
  if (edge.space > 0) p.made.push(spaceSite(edge.space, true));
  standRecorded(p, k - 1, edge);
  p.advance(k - 1);
  p.last = k - 1;
  p.madeAt = -2;
  return k - 1;
}

/** Chains that a group may pass over beside the edge without a space there. */
const FEW_BESIDE = 3;

/** Records the edge that `n` chains of a foundation make, and whatever sites it has made. */
export function standRecorded(p: Progress, n: number, edge: Decision): void {
  if (p.recording === null) return;
  while (p.recording.makings.length < p.made.length) p.recording.bare(null);
  const { counts, space } = edge;
  const tall = height(edge.base) + (edge.extended ? 1 : 0);
  const upright = counts ? Math.min(n - Math.min(space, n), tall) : space > 0 ? 0 : n;
  p.recording.stood = { upright, counts, space, laid: Math.max(0, n - upright - space), on: null };
}

/** "in 4th ch from hook": on a foundation chain the chains before it are the edge. */
export function fromHook(p: Progress, item: Work, per: number, k: number): boolean {
  if (!p.bare || p.made.length > 0 || p.pos > 0) return ownChain(p, item, per, k);
  const place = item.places[0]!;
  if (item.stitch.form === 'tunisian' && k > 1 && k <= p.below.length) {
    // The loop on the hook stands on the chain next to it.
    if (!makeIn(p, item, place, k - 2, 1)) return false;
    p.advance(k - 1);
    p.last = k - 1;
    p.firstUsed = k - 2;
    p.madeAt = -2;
    return makeIn(p, item, place, k - 1, per);
  }
  const index = standEdge(
    p,
    k,
    item.stitch.base,
    place,
    item,
    !isUnit(item.stitch) && per === 1,
    item.stitch.form === 'extended',
  );
  if (index === null) return p.trials === 0;
  return makeIn(p, item, place, index, per);
}

/** "work 60 sc evenly across", "dec 6 sts evenly around": a total, spread by the maker. */
export function evenly(
  p: Progress,
  item: Work,
  per: number,
  place: Extract<Place, { kind: 'evenly' }>,
): boolean {
  // "Down the side, work 18 sc evenly": past the last stitch of a piece worked in rows there is its side.
  const past = !p.tube && p.made.some((site) => site.kind === 'stitch') && p.stitchesAhead() === 0;
  if (past || place.nouns.some((noun) => noun.kind === 'row-end')) p.layRowEnds();
  const keep = place.stop?.kind === 'before-last' ? (p.amount(place.stop.amount) ?? 0) : 0;
  let to = p.below.length;
  for (let k = 0; k < keep; k++) {
    to -= 1;
    while (to > p.pos && !p.owed(p.below[to]!)) to -= 1;
  }
  let have = 0;
  for (let i = p.pos; i < to; i++) if (p.owed(p.below[i]!)) have += 1;
  const taken = p.recording === null ? [] : p.below.slice(p.pos, to).filter((site) => p.owed(site));
  const ref = item.stitch;
  const change =
    ref.form === 'inc'
      ? per * ((ref.parts ?? 2) - 1)
      : ref.form === 'dec' || ref.together > 1
        ? -per * (Math.max(2, ref.together) - 1)
        : null;
  const unsaid = change === null && item.amount.from === item.amount.to;
  const counted = p.made.filter((site) => site.kind === 'stitch').length;
  // "Sc even" is one for each place below, whatever count is stated.
  const rest = p.evenTotal === null || place.plain ? null : Math.max(0, p.evenTotal - counted);
  // Over stitches alone, with nothing round the corner of a flat piece, one for each is what it can only mean.
  const plainly =
    place.plain ||
    (have === to - p.pos && (p.tube || !p.round) && place.nouns.every(({ kind }) => kind === 'stitch'));
  if (unsaid && rest === null && !plainly)
    p.note('number-not-given', item, { stitch: ref.base ?? p.prevailing, taken: have });
  const n = change !== null ? have + change : unsaid ? (rest ?? have) : per;
  if (n < 0)
    return p.problem('place-does-not-exist', item, {
      noun: nounId(place.nouns[0]),
      wanted: -2 * (change ?? 0),
      found: have,
      left: have,
      have,
    });
  const base = ref.base ?? p.prevailing;
  p.pos = Math.max(p.pos, to);
  p.inner = 0;
  p.madeAt = -2;
  p.recording?.by({ ...ref, form: 'plain', together: 1, parts: null }, place);
  for (let k = 0; k < n; k++) {
    p.madeAt = -2;
    if (have > 0) p.recording?.lean(taken.slice(Math.floor((k * have) / n), Math.floor((k * have) / n) + 1));
    if (!p.make(stitchSite(base, base), 1, NOWHERE)) return false;
  }
  return true;
}
