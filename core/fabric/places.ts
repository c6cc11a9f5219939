/**
 * Finding the place that words name, and using it up. Each function moves the row's position and answers the
 * index of the site to work into, or null when there is none (the reason is then reported, or, in a trial,
 * the trial refused). Makes no stitches.
 */
import type { Span } from '../finding.ts';
import type { Noun, Place, Stop } from '../notation/tree.ts';
import { beginsUnit, opensUnit } from './kinds.ts';
import { NOWHERE, type Progress } from './progress.ts';
import type { Site } from './site.ts';

/** A short id of what was looked for, which the sentence layer puts into the author's terms. */
export function nounId(noun: Noun | undefined): string {
  if (noun === undefined) return 'st';
  if (noun.corner === 'bare') return 'corner';
  switch (noun.kind) {
    case 'stitch':
      return 'st';
    case 'named': {
      const ref = noun.stitch;
      if (ref.special !== null) return `"${ref.special}"`;
      if (ref.together > 1)
        return `${ref.post === null ? '' : ref.post === 'front' ? 'fp.' : 'bp.'}tog${ref.together}.${ref.base ?? 't1'}`;
      if (ref.post !== null) return `${ref.post === 'front' ? 'fp' : 'bp'}.${ref.base ?? 't3'}`;
      if (ref.form !== 'plain' || ref.base === null) return `"${ref.form}"`;
      return ref.base;
    }
    case 'chain':
      return 'ch';
    case 'space':
      return noun.chains !== null && noun.chains.kind === 'one' ? `sp${noun.chains.value}` : 'sp';
    case 'between':
      return noun.groups ? 'group' : 'gap';
    case 'row-end':
      return 'row-end';
    case 'seam':
      return 'seam';
    case 'loop-of-chain':
      return 'ch';
    case 'turning-chain':
      return 'tch';
  }
}

/** Nouns that are reached over stitches without a word: the trade says "3 dc in next sp" and means it. */
function reachedOver(nouns: readonly Noun[]): boolean {
  return nouns.every((noun) => {
    if (noun.kind === 'named') {
      const form = noun.stitch.form;
      return (
        form === 'shell' ||
        form === 'v-stitch' ||
        form === 'special' ||
        form === 'picot' ||
        form === 'cluster' ||
        form === 'bobble' ||
        form === 'popcorn' ||
        form === 'puff'
      );
    }
    return (
      noun.kind === 'space' || noun.kind === 'between' || noun.kind === 'row-end' || noun.kind === 'seam'
    );
  });
}

function ofChain(nouns: readonly Noun[]): boolean {
  return nouns.some((noun) => noun.kind === 'chain' || noun.kind === 'loop-of-chain');
}

/** Takes the next place that the nouns ask for; null when none is left. */
export function take(p: Progress, nouns: readonly Noun[], span: Span): number | null {
  p.uncover();
  p.gap = -1;
  if (nouns.some((noun) => noun.kind === 'row-end')) p.layRowEnds();
  if (ofChain(nouns)) p.layFoundation();
  p.layTop(nouns);
  // "each dc and each ch": chains are taken one by one, unless a space is asked for by name.
  const chainwise =
    nouns.some((noun) => noun.kind === 'chain' || noun.kind === 'loop-of-chain') &&
    !nouns.some((noun) => noun.kind === 'space');
  if (chainwise && p.inner > 0) {
    const at = p.pos;
    p.inner += 1;
    if (p.inner >= p.below[at]!.chains) p.advance(at);
    p.intoSpace = false;
    return at;
  }
  const from = p.inner > 0 ? p.pos + 1 : p.pos;
  let i = p.seek(nouns, from);
  if (i < 0 && p.trials === 0 && p.rest !== null) {
    // A short row is behind: the work goes on into what it left.
    p.below = [...p.below, ...p.rest];
    p.rest = null;
    p.leaves = true;
    i = p.seek(nouns, from);
  }
  if (i < 0) return null;
  if (reachedOver(nouns)) {
    hop(p, from, i);
  } else if (leavesGroup(p, from, i)) hop(p, from, i);
  else if (!passOver(p, from, i, nouns[0], span)) return null;
  const site = p.below[i]!;
  const named = nouns[0]?.kind === 'named' && nouns.length === 1 ? nouns[0].stitch : null;
  if (named !== null && site.unit !== null && site.unit.of > 1 && beginsUnit(site, named, false, p.meeting)) {
    // "shell in next shell": into its middle, and all of it is used.
    const end = Math.min(i + site.unit.of, p.below.length);
    p.advance(end - 1);
    p.intoSpace = true;
    return Math.min(i + Math.floor(site.unit.of / 2), end - 1);
  }
  if (chainwise && site.kind === 'space' && site.chains > 1) {
    p.pos = i;
    p.inner = 1;
  } else if (site.kind === 'ring') {
    p.pos = i;
  } else p.advance(i);
  // A picot stands on a stitch that nobody works into, as a space lies over some.
  p.intoSpace = (site.kind === 'space' && !chainwise) || site.kind === 'picot';
  if (site.kind === 'space') p.usedSpace = true;
  return i;
}

/** The row goes over what lies between as a matter of course. */
function hop(p: Progress, from: number, to: number): void {
  let stitches = 0;
  let spaces = 0;
  for (let i = from; i < to; i++) {
    if (p.owed(p.below[i]!)) stitches += 1;
    else if (p.below[i]!.kind === 'space') spaces += 1;
  }
  if (stitches > 0) p.passes = true;
  p.hopped = Math.max(p.hopped, stitches);
  p.hoppedSpaces = Math.max(p.hoppedSpaces, spaces);
}

/**
 * "(2 dc, ch 2, 2 dc) in next ch-2 sp, ch 2, sc in next tr": what lies between is the rest of the group whose space was
 * worked into, and of another kind than the words name.
 */
function leavesGroup(p: Progress, from: number, to: number): boolean {
  if (!p.intoSpace || p.gap >= 0 || p.below[from - 1]?.kind !== 'space') return false;
  let before = nextStitch(p, from - 1, -1);
  // The round may have begun in the group's space: its head is then what comes last.
  if (before < 0 && p.round) before = p.below.length - 1;
  const first = before;
  for (let i = from; i < to; i++) {
    if (p.below[i]!.kind === 'space') continue;
    if (!p.owed(p.below[i]!) || !inOnePlace(p, before, i)) return false;
    before = i;
  }
  return before !== first;
}

/**
 * Is what lies ahead, up to the end of the round, the head of the group in whose space the round began? A round that
 * leaves groups behind it leaves that one too, and what lies before it as much as it left before the others.
 */
export function headOfGroup(p: Progress, from: number): boolean {
  const end = p.below.length - 1;
  if (!p.round || !p.passes || p.below[0]?.kind !== 'space' || !inOnePlace(p, end, 1)) return false;
  let head = end;
  while (head > from && inOnePlace(p, head - 1, head)) head -= 1;
  let stitches = 0;
  let spaces = 0;
  for (let i = from; i < head; i++) {
    if (p.owed(p.below[i]!)) stitches += 1;
    else if (p.below[i]!.kind === 'space') spaces += 1;
  }
  return stitches <= p.hopped && spaces <= p.hoppedSpaces;
}

/** Index of what "to ch-2 sp", or "to 3rd ch-2 sp", stops before, counted from `from`; -1 where there is none ahead. */
export function stopAhead(p: Progress, stop: Extract<Stop, { kind: 'before-next' }>, from = p.pos): number {
  let at = p.seek([stop.noun], from);
  for (let left = stop.nth === undefined ? 1 : (p.amount(stop.nth) ?? 1); left > 1 && at >= 0; left--)
    at = p.seek([stop.noun], at + 1);
  return at;
}

/** Reports stitches between `from` and `to` that nobody said are skipped. False when that refuses a trial. */
export function passOver(p: Progress, from: number, to: number, noun: Noun | undefined, span: Span): boolean {
  // Words not understood may have gone into what lies between; that they were not is told already.
  if (p.unowed || p.unreadAt === from) return true;
  let passed = 0;
  for (let i = from; i < to; i++) if (p.owed(p.below[i]!)) passed += 1;
  if (passed === 0) return true;
  if (p.lenient) p.passedUnsaid = Math.max(p.passedUnsaid, passed);
  return p.problem('stitches-passed-over', span, { passed, noun: nounId(noun) });
}

/** Reports that a place is not there. Answers null, for `return missing(…)`. */
export function missing(
  p: Progress,
  span: Span,
  noun: Noun | undefined,
  wanted: number,
  found: number,
): null {
  p.problem('place-does-not-exist', span, {
    noun: nounId(noun),
    wanted,
    found,
    left: p.stitchesAhead(),
    have: p.stitchesAhead(0),
  });
  return null;
}

/** Would going on to `to` leave out spaces, in a trial where each is to be used, or bridged by chains? */
function leavesSpaces(p: Progress, to: number): boolean {
  if (!p.sparing) return false;
  const bridged = !p.usedSpace && p.pending > 0 ? 1 : 0;
  return p.below.slice(p.pos, to).filter((site) => site.kind === 'space').length > bridged;
}

/** The turning chain of the row before, reached over spaces. */
export function takeTurningChain(p: Progress, span: Span): number | null {
  p.uncover();
  let i = -1;
  for (let at = p.pos; at < p.below.length; at++) {
    const site = p.below[at]!;
    if (site.turning && site.kind !== 'space') {
      i = at;
      break;
    }
  }
  if (i < 0) {
    for (let at = p.pos; at < p.below.length && i < 0; at++) if (p.below[at]!.turning) i = at;
  }
  if (i < 0) {
    p.problem('place-does-not-exist', span, {
      noun: 'tch',
      wanted: 1,
      found: 0,
      left: p.stitchesAhead(),
      have: p.stitchesAhead(0),
    });
    return null;
  }
  if (leavesSpaces(p, i)) return null;
  // From the last space or shell on, the edge is next, whatever lies between.
  if (!p.unsaid && !passOver(p, p.pos, i, undefined, span)) return null;
  p.advance(i);
  p.intoSpace = p.below[i]!.kind === 'space';
  return i;
}

/**
 * Going on to the last place of a kind. Lace goes from space to space over the stitches between; but it does not go
 * over spaces of the very kind it names without a word.
 */
function passToLast(p: Progress, to: number, noun: Noun, span: Span): boolean {
  if (!reachedOver([noun])) return p.unsaid || passOver(p, p.pos, to, noun, span);
  if (p.unowed) return true;
  let passed = 0;
  for (let i = p.pos; i < to; i++) if (p.isAt(i, [noun])) passed += 1;
  if (passed === 0) return true;
  return p.problem('stitches-passed-over', span, { passed, noun: nounId(noun), over: nounId(noun) });
}

/** The last `n` places of a kind; answers their indexes in working order. */
export function takeLast(p: Progress, noun: Noun, n: number, span: Span): readonly number[] | null {
  p.uncover();
  if (noun.kind === 'row-end') p.layRowEnds();
  if (ofChain([noun])) p.layFoundation();
  p.layTop([noun]);
  if (n < 1) return [];
  if (noun.kind === 'between' && n === 1) {
    for (let i = p.below.length - 1; i >= Math.max(p.pos, 1, p.gap + 1); i--)
      if (isGap(p, i)) return p.unsaid || passOver(p, p.pos, i - 1, noun, span) ? [enterGap(p, i)] : null;
  }
  const found: number[] = [];
  let to = p.below.length;
  if (p.turningApart && noun.kind !== 'turning-chain' && p.below[to - 1]?.turning) to -= 1;
  while (found.length < n) {
    let i = -1;
    for (let at = to - 1; at >= p.pos; at--) {
      if (p.isAt(at, [noun])) {
        i = at;
        break;
      }
    }
    if (i < 0) break;
    found.unshift(i);
    to = i;
  }
  if (found.length < n) {
    missing(p, span, noun, n, found.length);
    if (p.trials > 0 || found.length === 0) return null;
    // Those that there are, as with "next 5 sts" of 4: nothing is left over besides.
    p.misfit = true;
  }
  if (noun.kind !== 'space' && leavesSpaces(p, found[0]!)) return null;
  if (!passToLast(p, found[0]!, noun, span)) return null;
  p.advance(found[found.length - 1]!);
  p.intoSpace = p.below[found[0]!]!.kind === 'space';
  if (p.intoSpace) p.usedSpace = true;
  return found;
}

/** The first place of a kind, wherever the work stands; used up only when the work has not passed it. */
export function takeFirst(p: Progress, noun: Noun, nth: number, span: Span): number | null {
  if (ofChain([noun])) p.layFoundation();
  if (noun.kind === 'between') {
    for (let i = 1; i < p.below.length; i++) if (isGap(p, i)) return enterGap(p, i);
    return missing(p, span, noun, 1, 0);
  }
  const topped = p.top;
  p.layTop([noun]);
  // The first of the top is the first that a border meets there.
  let i = topped !== null && p.top === null ? p.pos - 1 : -1;
  for (let k = 0; k <= nth; k++) {
    i = p.seek([noun], i + 1);
    if (i < 0) return missing(p, span, noun, nth + 1, k);
  }
  if (p.pos <= i) {
    if (!reachedOver([noun]) && nth === 0 && !passOver(p, p.pos, i, noun, span)) return null;
    p.advance(i);
  }
  p.intoSpace = p.below[i]!.kind === 'space';
  if (p.intoSpace) p.usedSpace = true;
  return i;
}

/** In a round there is a gap between the last stitch and the first. */
function wrapsGap(p: Progress): boolean {
  if (!p.round || p.startsInGap || p.gap >= p.below.length || p.below.length < 2) return false;
  // A space there is the gap, and was come to already.
  if (p.below.at(-1)?.kind === 'space' || p.below[0]?.kind === 'space') return false;
  p.pos = p.below.length;
  p.gap = p.below.length;
  p.inner = 0;
  p.intoSpace = true;
  return true;
}

/** Were the sites at `i - 1` and `i` made in one place? */
function together(p: Progress, i: number): boolean {
  return (p.meeting.backwards ? p.below[i - 1] : p.below[i])?.more === true;
}

/** Is there a gap before the site at `i`: a space, or the place where two groups or stitches part? */
function isGap(p: Progress, i: number): boolean {
  p.spent += 1;
  const site = p.below[i]!;
  if (site.kind === 'space') return true;
  // Where a chain lies between two stitches, its space is their gap.
  if (p.below[i - 1]?.kind === 'space') return false;
  return site.kind !== 'turning' && (!together(p, i) || isWhole(p));
}

const whole = new WeakMap<readonly Site[], boolean>();

/** Was all of the row below made in one place, a ring? Then its stitches are no group, and all of them part. */
function isWhole(p: Progress): boolean {
  let known = whole.get(p.below);
  if (known === undefined) {
    const alone = p.below.filter((site) => !site.more).length;
    known = alone <= 1 && p.below.every((site) => site.kind === 'stitch');
    whole.set(p.below, known);
  }
  return known;
}

/** Does the gap lie between two groups, not between a group and the stitch at the edge? */
function partsGroups(p: Progress, i: number): boolean {
  if (!isGap(p, i)) return false;
  const before = nextStitch(p, i - 1, -1);
  const after = nextStitch(p, i, 1);
  return (
    !inOnePlace(p, before, after) &&
    inOnePlace(p, nextStitch(p, before - 1, -1), before) &&
    inOnePlace(p, after, nextStitch(p, after + 1, 1))
  );
}

/** The stitch at `i` or, past spaces, next in the direction; -1 where a row has no more. */
function nextStitch(p: Progress, i: number, step: 1 | -1): number {
  let at = i;
  while (at >= 0 && p.below[at]?.kind === 'space') at += step;
  return at >= 0 && at < p.below.length ? at : -1;
}

/** Were these two neighbours, with or without a space between them, made in one place? */
function inOnePlace(p: Progress, a: number, b: number): boolean {
  if (a < 0 || b < 0) return false;
  return (p.meeting.backwards ? p.below[a] : p.below[b])?.more === true;
}

const grouped = new WeakMap<readonly Site[], boolean>();

/** Does the row below have two groups side by side? Where it has none, any gap will do. */
function hasGroups(p: Progress): boolean {
  let known = grouped.get(p.below);
  if (known === undefined) {
    known = p.below.some((_, i) => i > 0 && partsGroups(p, i));
    grouped.set(p.below, known);
  }
  return known;
}

function enterGap(p: Progress, i: number): number {
  p.pos = p.below[i]!.kind === 'space' ? i + 1 : i;
  p.gap = i;
  p.inner = 0;
  p.intoSpace = true;
  return i;
}

/** "sp between clusters" where the row below has no cluster: those of a granny, which are groups. */
function asGroup(p: Progress, noun: Noun): Noun {
  if (noun.kind !== 'named' || noun.stitch.form !== 'cluster' || p.seek([noun], 0) >= 0) return noun;
  return { kind: 'between', groups: true, from: noun.from, to: noun.to };
}

/** The gap after the next stitch, or, between groups, the next gap outside a group. */
export function takeGap(p: Progress, named: Noun, span: Span): number | null {
  p.uncover();
  const noun = asGroup(p, named);
  if (noun.kind === 'between' || noun.kind === 'space') {
    const strictly = noun.kind === 'between' && noun.groups === true && !p.round && hasGroups(p);
    for (let i = Math.max(p.pos, 1, p.gap + 1); i < p.below.length; i++) {
      if (strictly ? partsGroups(p, i) : isGap(p, i)) return enterGap(p, i);
    }
    if (wrapsGap(p)) return 0;
    return missing(p, span, noun, 1, 0);
  }
  const first = p.seek([noun]);
  const second = first < 0 ? -1 : p.seek([noun], first + 1);
  if (second < 0 && wrapsGap(p)) return 0;
  if (second < 0) return missing(p, span, noun, 2, first < 0 ? 0 : 1);
  p.pos = first + 1;
  p.gap = first + 1;
  p.inner = 0;
  p.intoSpace = true;
  return second;
}

/** "sp before next dc": the gap before the stitch that is next, be it of one group with the one before. */
export function takeGapBefore(p: Progress, noun: Noun, span: Span): number | null {
  p.uncover();
  if (noun.kind === 'between' || noun.kind === 'space') return takeGap(p, noun, span);
  const next = p.seek([noun]);
  if (next < 0) return wrapsGap(p) ? 0 : missing(p, span, noun, 1, 0);
  if (!passOver(p, p.pos, next, noun, span)) return null;
  return enterGap(p, next);
}

/** A site inside the next unit: its centre, its n-th of a kind. The rest of the unit is passed. */
export function takeInUnit(
  p: Progress,
  place: Extract<Place, { kind: 'of-unit' }>,
  span: Span,
): number | null {
  p.uncover();
  const unit = place.unit;
  const ref = unit.kind === 'named' ? unit.stitch : null;
  let at = -1;
  const again = place.which === 'same' || place.which === 'first';
  const from = again ? 0 : p.inner > 0 ? p.pos + 1 : p.pos;
  for (const loosely of [false, true]) {
    for (let i = from; i < p.below.length; i++) {
      p.spent += 1;
      const site = p.below[i]!;
      if (ref !== null ? beginsUnit(site, ref, loosely, p.meeting) : loosely && opensUnit(site, p.meeting)) {
        at = i;
        if (place.which !== 'last') break;
      }
    }
    if (at >= 0) break;
  }
  if (at < 0 && ref !== null) {
    const pair = nextRun(p, from);
    if (pair !== null) return insideUnit(p, place, span, pair.at, pair.of, again);
  }
  if (at < 0) {
    // A repeat may hold its places in a plain run: "3rd ch of next ch-5 sp".
    const i = again ? p.seek([unit], 0) : p.seek([unit], from);
    if (i < 0) return missing(p, span, unit, 1, 0);
    p.advance(i);
    p.intoSpace = p.below[i]!.kind === 'space';
    if (p.intoSpace) p.usedSpace = true;
    return i;
  }
  if (!again) hop(p, from, at);
  return insideUnit(p, place, span, at, p.below[at]!.unit!.of, again);
}

/** The next stitches made in one place: a unit that the row below makes without naming it. */
function nextRun(p: Progress, from: number): { at: number; of: number } | null {
  for (let i = from + 1; i < p.below.length; i++) {
    p.spent += 1;
    if (!together(p, i)) continue;
    let end = i + 1;
    while (end < p.below.length && together(p, end)) end += 1;
    return { at: i - 1, of: end - i + 1 };
  }
  return null;
}

/** The site that the words mean inside the unit of `of` sites from `at` on. */
function insideUnit(
  p: Progress,
  place: Extract<Place, { kind: 'of-unit' }>,
  span: Span,
  at: number,
  of: number,
  again: boolean,
): number | null {
  const end = Math.min(at + of, p.below.length);
  const inside: number[] = [];
  for (let i = at; i < end; i++) if (p.isAt(i, [place.noun])) inside.push(i);
  let index: number | null = null;
  if (place.nth === 'centre') {
    const space = p.below.findIndex((site, i) => i >= at && i < end && site.kind === 'space');
    const odd = of % 2 === 1;
    const centre = odd ? at + (of - 1) / 2 : space >= 0 ? space : at + of / 2;
    // A unit cut short at the end of the row may have lost its centre.
    index = centre < end ? centre : null;
  } else if (place.nth === 'last') index = inside[inside.length - 1] ?? null;
  else index = inside[(p.amount(place.nth) ?? 1) - 1] ?? null;
  if (index === null)
    return missing(
      p,
      span,
      place.noun,
      place.nth === 'last' || place.nth === 'centre' ? 1 : (p.amount(place.nth) ?? 1),
      inside.length,
    );
  if (!again) p.advance(end - 1);
  p.intoSpace = true;
  if (p.below[index]!.kind === 'space') p.usedSpace = true;
  return index;
}

/** The marked stitch that lies ahead, or else anywhere. */
export function takeMarked(p: Progress, span: Span): number | null {
  let i = -1;
  for (let at = p.pos; at < p.below.length && i < 0; at++) if (p.below[at]!.marked) i = at;
  if (i < 0) i = p.below.findIndex((site) => site.marked);
  if (i < 0) {
    p.problem('place-does-not-exist', span, {
      noun: 'marked',
      wanted: 1,
      found: 0,
      left: p.stitchesAhead(),
      have: p.stitchesAhead(0),
    });
    return null;
  }
  if (i >= p.pos) p.advance(i);
  p.intoSpace = false;
  return i;
}

/** Where the last work went; at a row's start, the first place, which is then used. */
export function takeSame(p: Progress): number {
  if (p.here !== null) return p.here;
  if (p.last === NOWHERE && p.pos < p.below.length) {
    let i = p.pos;
    while (i < p.below.length - 1 && p.below[i]!.kind === 'turning') i += 1;
    if (p.below[i]!.kind !== 'ring') p.advance(i);
    p.last = i;
    p.intoSpace = p.below[i]!.kind === 'space';
    if (p.intoSpace) p.usedSpace = true;
  }
  return p.last;
}
