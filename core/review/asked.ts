/**
 * The sizing sheet as it would be if every fitted line came out as some other length: what was asked of it,
 * for example. With it a printed measurement that is put together from fitted lines can be held against what
 * was asked. It fits nothing and changes no sheet.
 */

import {
  evaluate,
  type Fitted,
  type LineResult,
  lengthOf,
  lineNamed,
  type Sheet,
  type SizeResult,
  TOLERANCE,
} from '../grading/index.ts';
import type { Study } from '../study/index.ts';
import { type Length, rational, ZERO } from '../trade/units.ts';

/** Whether a line's value comes, by whatever way, from what a fitted line makes. */
export function restsOnFitted(sheet: Sheet, line: LineResult): readonly LineResult[] {
  const seen = new Set<LineResult>();
  const found: LineResult[] = [];
  const visit = (result: LineResult): void => {
    if (seen.has(result)) return;
    seen.add(result);
    if (result.line.kind === 'stitches' || result.line.kind === 'rows') {
      found.push(result);
      return;
    }
    for (const name of result.needs) {
      const next = lineNamed(sheet, name);
      if (next !== null) visit(next);
    }
  };
  visit(line);
  return found;
}

/** The sheet with every fitted length replaced, and the formulas over it worked out again. */
export function sheetWith(sheet: Sheet, lengthOf: (fitted: Fitted) => Length): Sheet {
  const copies = sheet.lines.map((result) => ({
    ...result,
    sizes: result.sizes.map(
      (size): SizeResult =>
        size.fitted === null ? size : { ...size, fitted: { ...size.fitted, got: lengthOf(size.fitted) } },
    ),
  }));
  const copy: Sheet = { ...sheet, lines: copies };
  const done = new Set<string>();
  const visit = (result: (typeof copies)[number]): void => {
    if (done.has(result.line.id)) return;
    done.add(result.line.id);
    for (const name of result.needs) {
      const next = copies.find(({ line }) => line.id === lineNamed(copy, name)?.line.id);
      if (next !== undefined) visit(next);
    }
    const { line } = result;
    if (line.kind !== 'formula' || restsOnFitted(sheet, result).length === 0) return;
    result.sizes.forEach((size, i) => {
      const { value } = evaluate(line.formula, copy, i);
      if (value !== null) result.sizes[i] = { ...size, value };
    });
  };
  copies.forEach(visit);
  return copy;
}

/** The pattern's tolerance for a length asked for. */
export function toleranceFor({ pattern }: Study, asked: Length): Length {
  const { value, unit } = pattern.tolerance;
  const percent = unit === '%' ? rational(value)?.abs().div(100).mul(asked) : null;
  return percent ?? lengthOf(pattern.tolerance)?.abs() ?? lengthOf(TOLERANCE) ?? ZERO;
}
