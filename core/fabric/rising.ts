/**
 * Does anything bring the work to the height of a row's first stitch? Told only where nothing at all does: no
 * turning chain at either end of the turn, no note about one, no standing stitch, no yarn joined. It changes
 * nothing of what is worked.
 */
import type { Item, Work } from '../notation/tree.ts';
import { height } from '../trade/stitches.ts';
import type { Fabric } from './fabric.ts';
import type { Progress } from './progress.ts';
import type { Evidence } from './turning.ts';

/** Chains of height from which a row is pulled down without one; a short stitch is often begun with none. */
const TALL = 2;

/** The first stitch of the row where it stands on its own, or null where something else begins the row. */
function firstWork(items: readonly Item[]): Work | null {
  for (const item of items) {
    if (item.type === 'work') return item;
    if (item.type === 'repeat' || item.type === 'again') return firstWork(item.items);
    if (item.type === 'group' || item.type === 'chain' || item.type === 'attach' || item.type === 'skip')
      return null;
  }
  return null;
}

/** Tells of a row of tall stitches that begins with nothing as tall. `items` are those from its first work on. */
export function checkHeight(p: Progress, below: Fabric, items: readonly Item[], evidence: Evidence): void {
  if (p.env.conventions.length > 0 || below.fastened || below.ring) return;
  // A spiral climbs by itself.
  if (below.form !== 'flat' && below.form !== 'joined') return;
  const first = firstWork(items);
  if (first === null || evidence.firstBegins) return;
  const { base, form } = first.stitch;
  if (form !== 'plain' || base === null || height(base) < TALL) return;
  const place = first.places[0]!;
  if (place.below > 0 || !['next', 'across', 'first', 'same'].includes(place.kind)) return;
  p.note('height-not-given', first, { stitch: base, chains: height(base) });
}
