/**
 * Whether a plan of shaping is told in rows or in rounds. The plan itself does not know: the blocks that are shaped by
 * it do. It words nothing.
 */
import type { Pattern } from '../document/pattern.ts';
import { foldName } from '../grading/index.ts';

const ofPieces = new WeakMap<Pattern['pieces'], ReadonlySet<string>>();

/** Folded names of the plans by which rounds are shaped, and no rows. In the order they are first used in. */
export function roundPlans({ pieces }: Pattern): ReadonlySet<string> {
  const known = ofPieces.get(pieces);
  if (known !== undefined) return known;
  const shapings = pieces.flatMap(({ blocks }) => blocks.filter((block) => block.type === 'shaping'));
  const inRows = new Set(
    shapings.filter(({ shaped }) => shaped.form !== 'round').map(({ line }) => foldName(line)),
  );
  const found = new Set(shapings.map(({ line }) => foldName(line)).filter((name) => !inRows.has(name)));
  ofPieces.set(pieces, found);
  return found;
}

/** How the plan of this name is told. A name that is no plan, or shapes nothing yet, is told in rows. */
export function planForm(name: string, pattern: Pattern): 'row' | 'round' {
  return roundPlans(pattern).has(foldName(name)) ? 'round' : 'row';
}
