/** The counts that the lines of a sizing sheet have in every size, remembered with the sheet. It judges none. */
import type { Sheet } from '../grading/index.ts';
import { toNumber } from '../trade/units.ts';

export interface LineCounts {
  readonly name: string;
  /** One a size. */
  readonly counts: readonly number[];
}

const known = new WeakMap<Sheet, readonly LineCounts[]>();

/** Lines with a count in every size. Lines that all sizes share are left out. */
export function countsOfLines(sheet: Sheet): readonly LineCounts[] {
  const before = known.get(sheet);
  if (before !== undefined) return before;
  const found = sheet.lines.flatMap(({ line, sizes }): readonly LineCounts[] => {
    const counts = sizes.map(({ value }) =>
      value?.dimension === 'count' || value?.dimension === 'ratio' ? toNumber(value.value) : null,
    );
    const isWhole = counts.every((count) => count !== null) && !counts.every((count) => count === counts[0]);
    return isWhole ? [{ name: line.name, counts: counts as readonly number[] }] : [];
  });
  known.set(sheet, found);
  return found;
}
