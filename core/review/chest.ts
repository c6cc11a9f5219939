/**
 * The room that a garment has at the chest of a grown-up, in every size, as its printed measurements tell it. It
 * judges no word of it.
 */
import { lineNamed } from '../grading/index.ts';
import type { Study } from '../study/index.ts';
import { measurementsOf } from '../study/measurements.ts';
import type { Length } from '../trade/units.ts';

export interface ChestEase {
  /** Heading of the printed measurement. */
  readonly heading: string;
  /** Finished less body; null for a size of a child, or where it is not known. */
  readonly ease: readonly (Length | null)[];
}

/** The printed measurement at the chest that tells its ease; null when there is none. */
export function chestEase({ pattern, sheet }: Study): ChestEase | null {
  for (const { line, heading, ease } of measurementsOf(sheet)) {
    const note = pattern.lines.find(({ id }) => id === line)?.note ?? null;
    const body = note === null ? null : lineNamed(sheet, note)?.line;
    if (ease === null || body?.kind !== 'body' || !/^(?:bust|chest)$/u.test(body.measure)) continue;
    // The bands of fit and most advice are those of grown-ups.
    const own = ease.map((one, i) => (['child', 'baby'].includes(pattern.sizes[i]!.audience) ? null : one));
    return { heading, ease: own };
  }
  return null;
}
