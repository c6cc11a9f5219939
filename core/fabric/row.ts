/**
 * Works one row over the fabric below, for one size: where its words can be taken in more than one way, the way that
 * comes out right. Pure: the same row on the same fabric gives the same result. Knows nothing of row numbers or of
 * other rows.
 */
import type { Fact, Span } from '../finding.ts';
import type { Item, RowTree } from '../notation/tree.ts';
import { backwards } from './ahead.ts';
import { attemptRow, isOneNext } from './attempt.ts';
import { BESIDES, isWork } from './beginning.ts';
import type { Env, Figures } from './env.ts';
import type { Fabric } from './fabric.ts';
import { listAgain } from './listings.ts';
import { namesCorners, sameAsNext, spacesAsGaps } from './whole-rows.ts';
import { isWrong, type Worked } from './worked.ts';

/** Works `row` over `below` (null: nothing yet) in the env's size. Total: whatever the row says, it answers. */
export function workRow(row: RowTree, below: Fabric | null, env: Env, figures: Figures): Worked {
  if (below !== null && skipsWithChain(row.items)) {
    const under = attemptRow(row, below, env, figures, null, true);
    if (!isWrong(under.worked)) return under.worked;
  }
  const gaps = below !== null && partsGroups(below) ? spacesAsGaps(row) : null;
  if (gaps !== null && namesCorners(gaps) && alike(below!)) {
    // "3 dc in each sp to next corner", where every chain-space is a corner's.
    const between = attemptRow(gaps, below, env, figures, null, false);
    if (!isWrong(between.worked)) return between.worked;
  }
  const first = attemptRow(row, below, env, figures, null, false);
  if (!isWrong(first.worked)) return first.worked;
  if (first.assumed !== null) {
    // Nothing in the words decides about the turning chain; the row's own count, or what comes out even, may.
    const other = attemptRow(row, below, env, figures, !first.assumed, false);
    if (!isWrong(other.worked)) return { ...other.worked, settled: !first.assumed };
  }
  if (below !== null && skipsBehindChain(row.items)) {
    const other = attemptRow(row, below, env, figures, null, true);
    if (!isWrong(other.worked)) return other.worked;
  }
  const whole = row.counts.length > 0 ? overRest(below) : null;
  if (whole !== null) {
    // "Sc in each st across (20)" behind a short row: over what that left, too.
    const other = attemptRow(row, whole, env, figures, null, false);
    if (!isWrong(other.worked)) return other.worked;
  }
  const onward = row.counts.length > 0 ? sameAsNext(row) : null;
  if (onward !== null) {
    const { worked } = attemptRow(onward, below, env, figures, null, false);
    const at = placeSaidSame(row.items);
    const note: Fact = { code: 'same-taken-as-next', from: at.from, to: at.to, data: {} };
    if (!isWrong(worked)) return { ...worked, facts: [note, ...worked.facts] };
  }
  const listed = row.counts.length > 0 ? listAgain(row) : null;
  if (listed !== null) {
    const { worked } = attemptRow(listed.row, below, env, figures, null, false);
    const { from, to } = listed.last;
    const note: Fact = { code: 'repeat-start-not-said', from, to, data: {} };
    if (!isWrong(worked)) return { ...worked, facts: [note, ...worked.facts] };
  }
  if (gaps !== null) {
    const { worked } = attemptRow(gaps, below, env, figures, null, false);
    if (!isWrong(worked)) return worked;
  }
  return first.worked;
}

/** Does the row have two groups side by side, with no chain between them? */
function partsGroups({ sites }: Fabric): boolean {
  return sites.some(
    (site, i) =>
      !site.more &&
      site.kind === 'stitch' &&
      sites[i - 1]?.more === true &&
      sites[i - 1]!.kind === 'stitch' &&
      sites[i + 1]?.more === true,
  );
}

/** Are all chain-spaces of one length? */
function alike({ sites }: Fabric): boolean {
  const spaces = sites.filter((site) => site.kind === 'space');
  return spaces.every((site) => site.chains === spaces[0]!.chains);
}

/** The row below with what earlier short rows left beyond its end; null where nothing is left there. */
function overRest(below: Fabric | null): Fabric | null {
  if (below === null || below.rest === null || below.restAhead || below.form !== 'flat') return null;
  if (below.fastened || below.rejoined || below.turned === false) return null;
  return { ...below, sites: [...backwards(below.rest), ...below.sites], rest: null };
}

/** The first "in same st" behind other work. */
function placeSaidSame(items: readonly Item[]): Span {
  for (const item of items) {
    if (item.type === 'work' && item.places[0]?.kind === 'same') return item.places[0];
    if (item.type === 'repeat') return placeSaidSame(item.items);
  }
  return items[0] ?? { from: 0, to: 0 };
}

/**
 * "3 ch, miss 1 dc, 1 tr in each dc to end": a row that goes plainly to its end does not lose a stitch by the way;
 * the one missed is that under the chain. "Miss next dc" is another.
 */
function skipsWithChain(items: readonly Item[]): boolean {
  if (!skipsBehindChain(items)) return false;
  const [, skip, work, ...rest] = items.filter((item) => !BESIDES.has(item.type));
  if (skip?.type !== 'skip' || work?.type !== 'work') return false;
  const [last, ...more] = rest.filter(isWork);
  if (more.length > 0 || (last !== undefined && !endsRow(last))) return false;
  const from = skip.places[0];
  const to = work.places[0];
  const counted = from?.kind === 'next' && from.amount.from < from.amount.to;
  if (!counted || to?.kind !== 'across' || to.every > 1) return false;
  return to.stop.kind === 'end' || (last !== undefined && to.stop.kind === 'before-last');
}

/** "… 1 tr into top of 3 ch": one stitch in the row's last place. */
function endsRow(item: Item): boolean {
  if (item.type !== 'work' || item.places.length > 1) return false;
  const [amount, place] = [item.amount, item.places[0]!];
  return (
    amount.kind === 'one' && amount.value === 1 && (place.kind === 'turning-chain' || place.kind === 'last')
  );
}

/** "3 ch, miss 1 dc": in some houses the stitch that the chain stands on. */
function skipsBehindChain(items: readonly Item[]): boolean {
  const [chain, skip] = items.filter((item) => !BESIDES.has(item.type));
  // "Ch 4 (counts as dc, ch 1), sk next st": the space lies over the one skipped.
  const spaced = chain?.type === 'chain' && chain.counts?.kind === 'stitch' && chain.counts.chains !== null;
  return chain?.type === 'chain' && !spaced && skip?.type === 'skip' && isOneNext(skip);
}
