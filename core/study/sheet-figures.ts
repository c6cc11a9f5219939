/**
 * What expressions come to on a sheet, in every size, each worked out once while the sheet is the same. It judges
 * nothing.
 */
import { evaluate, type FigureResult, type Sheet } from '../grading/index.ts';

/** What an expression comes to in each size. */
export type At = (expression: string) => readonly FigureResult[];

const figures = new WeakMap<Sheet, At>();

/** Expressions of one sheet remembered; past it the memory starts afresh. */
const EXPRESSIONS = 5000;

/** The same for the same sheet. */
export function figuresOn(sheet: Sheet): At {
  const before = figures.get(sheet);
  if (before !== undefined) return before;
  const known = new Map<string, readonly FigureResult[]>();
  const at: At = (expression) => {
    let results = known.get(expression);
    if (results === undefined) {
      results = sheet.sizes.map((_, size) => evaluate(expression, sheet, size));
      if (known.size >= EXPRESSIONS) known.clear();
      known.set(expression, results);
    }
    return results;
  };
  figures.set(sheet, at);
  return at;
}
