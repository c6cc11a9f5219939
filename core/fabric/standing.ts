/**
 * Standing a turning chain (or a group's own beginning chain) on the place where the row begins: decides with
 * `turning` what it counts as and makes the sites. Nothing else is worked here.
 */
import type { Span } from '../finding.ts';
import type { CountsAs, Item, Work } from '../notation/tree.ts';
import type { Carried } from './fabric.ts';
import { NOWHERE, type Progress } from './progress.ts';
import { type Site, spaceSite, turningChain, turningStitch } from './site.ts';
import { makeIn } from './stitching.ts';
import { decide, evidenceOf, standsFor } from './turning.ts';

function firstWork(items: readonly Item[]): Work | null {
  for (const item of items) {
    if (item.type === 'work') return item;
    if (item.type === 'repeat' || item.type === 'group') return firstWork(item.items);
  }
  return null;
}

/** Is the first work of the row a Tunisian stitch? */
export const isTunisian = (items: readonly Item[]): boolean => firstWork(items)?.stitch.form === 'tunisian';

/**
 * The loop that is on the hook at the beginning of a Tunisian row: its first stitch, on the first of the row below.
 * Answers the item to go on with: "skip first vertical bar" says the same.
 */
export function standLoop(p: Progress, items: readonly Item[], i: number): number {
  const first = firstWork(items.slice(i));
  const place = first?.places[0];
  // Into a chain it is told from the hook; "in first st" leaves no room for it.
  if (first === null || place === undefined || place.kind === 'from-hook' || place.kind === 'first') return i;
  if (p.pos >= p.below.length) return i;
  makeIn(p, { ...first, stitch: { ...first.stitch, together: 1 } }, place, p.pos, 1);
  p.last = p.pos;
  p.advance(p.pos);
  p.madeAt = -2;
  const skip = items[i];
  const under = skip?.type === 'skip' ? skip.places[0] : undefined;
  const one = under?.kind === 'first' || under?.kind === 'next';
  return one && under.amount.kind === 'one' && under.amount.value === 1 ? i + 1 : i;
}

/**
 * Puts a turning chain of `n` chains where it stands. `items` are those after it, whose words are weighed;
 * `said` is what the text says it counts as.
 */
export function stand(
  p: Progress,
  n: number,
  said: CountsAs | null,
  carried: Carried | null,
  items: readonly Item[],
  span: Span,
): void {
  p.stood = n;
  const shown = evidenceOf(items, p.env);
  // Words that name no height ("inc", "4 A") go on in that of the row below.
  const evidence = { ...shown, base: shown.base ?? p.prevailing };
  const decision = decide(n, said, carried, evidence, p.round, p.env, p.figures, p.forced);
  const onSite = (): number => {
    if (p.last !== NOWHERE) return p.last;
    let i = p.pos;
    while (i < p.below.length && p.below[i]!.kind === 'turning') i += 1;
    if (i >= p.below.length) return NOWHERE;
    const site = p.below[i]!;
    if (site.kind !== 'ring') {
      p.advance(i);
      p.intoSpace = site.kind === 'space';
      if (site.kind === 'space') p.usedSpace = true;
    }
    p.last = i;
    return i;
  };
  if (decision.loosely) p.edgeLoose = decision.counts;
  if (decision.assumed) {
    p.edgeAssumed = {
      chains: n,
      stitch: decision.base,
      counts: decision.counts,
      from: span.from,
      to: span.to,
    };
  }
  const push = (site: Site, at: number) => {
    p.made.push(site);
    p.recording?.bare(p.below[at] ?? null);
  };
  if (p.recording !== null) {
    const { counts, space } = decision;
    const on = p.below[p.last] ?? p.below.slice(p.pos).find((site) => site.kind !== 'turning') ?? null;
    p.recording.stood = {
      upright: counts || space === 0 ? Math.max(0, n - space) : 0,
      counts,
      space,
      laid: 0,
      on,
    };
  }
  if (decision.counts) {
    const at = onSite();
    push(turningStitch(standsFor(decision), decision.base, n), at);
    p.madeAt = at === NOWHERE ? -2 : at;
    if (decision.space > 0) push(spaceSite(decision.space, true), NOWHERE);
  } else if (decision.space > 0) {
    onSite();
    push(spaceSite(decision.space, true), NOWHERE);
  } else if (decision.leg) onSite();
  else if (!p.round) push(turningChain(n), NOWHERE);
}
