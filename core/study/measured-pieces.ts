/**
 * What finished makings measured, beside what the pattern says of that size. It compares and judges nothing: the
 * tolerance is told with each difference.
 */
import type { Making } from '../document/workbook.ts';
import { lengthOf, TOLERANCE } from '../grading/index.ts';
import { type Length, rational, ZERO } from '../trade/units.ts';
import { measurementsOf } from './measurements.ts';
import type { Study } from './study.ts';

export interface MeasuredPiece {
  readonly making: Making;
  readonly line: string; // id
  readonly name: string;
  readonly size: number;
  readonly taken: Length;
  /** What the finished size comes to by the pattern. */
  readonly said: Length;
  /** How far a finished measurement may be off. */
  readonly allowed: Length;
}

const known = new WeakMap<Study, readonly MeasuredPiece[]>();

/** Every length that was taken of a finished making, by making and then by line. The same study gives the same list. */
export function measuredPieces(study: Study): readonly MeasuredPiece[] {
  const before = known.get(study);
  if (before !== undefined) return before;
  const made = compared(study);
  known.set(study, made);
  return made;
}

function compared({ pattern, sheet }: Study): readonly MeasuredPiece[] {
  const { makings } = pattern.workbook;
  if (!makings.some(({ measured }) => Object.keys(measured).length > 0)) return [];
  const printed = new Map(measurementsOf(sheet).map((one) => [one.line, one]));
  return makings.flatMap((making) => {
    const size = pattern.sizes.findIndex(({ id }) => id === making.size);
    if (size < 0 || making.state !== 'finished') return [];
    return sheet.lines.flatMap(({ line, sizes }): readonly MeasuredPiece[] => {
      const quantity = Object.hasOwn(making.measured, line.id) ? making.measured[line.id]! : null;
      const taken = quantity === null ? null : lengthOf(quantity);
      if (taken === null) return [];
      const shown = printed.get(line.id)?.values[size];
      const own = sizes[size];
      const said =
        shown != null && 'length' in shown
          ? shown.length
          : (own?.fitted?.got ?? (own?.value?.dimension === 'length' ? own.value.value : null));
      if (said === null) return [];
      const { tolerance } = pattern;
      const allowed =
        tolerance.unit === '%'
          ? (rational(tolerance.value)?.abs().div(100).mul(said) ?? ZERO)
          : (lengthOf(tolerance)?.abs() ?? lengthOf(TOLERANCE) ?? ZERO);
      return [{ making, line: line.id, name: line.name, size, taken, said, allowed }];
    });
  });
}
