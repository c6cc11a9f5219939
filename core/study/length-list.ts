/**
 * Lengths of all sizes as a pattern lists them, in both units. The booklet and the drawings word them alike; each is
 * rounded once, from the exact length.
 */
import { sizeList } from '../grading/index.ts';
import { displayLength, formatNumber, type Length, type Units } from '../trade/units.ts';

/** "30 (32, 34) cm / 11¾ (12½, 13½) in", the reader's units first. */
export function lengthList(
  lengths: readonly (Length | null)[],
  units: Units,
  list: (values: readonly (string | null)[]) => string = sizeList,
): string {
  const both = [lengthsIn(lengths, 'cm', list), lengthsIn(lengths, 'in', list)];
  return (units === 'metric' ? both : both.reverse()).join(' / ');
}

/** The same in one unit. */
export function lengthsIn(
  lengths: readonly (Length | null)[],
  unit: 'cm' | 'in',
  list: (values: readonly (string | null)[]) => string = sizeList,
): string {
  const style = unit === 'cm' ? 'decimal' : 'glyph';
  const words = lengths.map((length) =>
    length === null ? null : formatNumber(displayLength(length, unit), style, 3),
  );
  return `${list(words)}\u00A0${unit}`;
}
