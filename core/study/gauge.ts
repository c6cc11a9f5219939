/**
 * The gauge that a piece is worked in, and the width that a row takes at it. The ledger, the drawings and the
 * estimates all ask here, so that they cannot disagree. Exact; it rounds and words nothing.
 */
import type { Gauge, Pattern } from '../document/pattern.ts';
import type { Tally } from '../fabric/index.ts';
import { compileExpression, densityOf, type FormulaNode, type Sheet } from '../grading/index.ts';
import { type Length, type Rational, rational } from '../trade/units.ts';
import type { PieceStudy } from './piece-study.ts';

/**
 * The gauge that the maker chose for the piece; else that of the first stitches line which its rows name; else the
 * pattern's first. Null where there is none that says how wide a stitch is.
 */
export function gaugeOf({ piece }: PieceStudy, pattern: Pattern, sheet: Sheet): Gauge | null {
  const usable = (id: string | null) =>
    pattern.gauges.find((gauge) => gauge.id === id && densityOf(gauge).stitches !== null) ?? null;
  const chosen = piece.gauge === '' ? null : usable(piece.gauge);
  if (chosen !== null) return chosen;
  for (const block of piece.blocks) {
    if (block.type !== 'row') continue;
    for (const expression of block.text.figures) {
      const formula = compileExpression(expression, sheet.vocabulary);
      const named = formula.read ? usable(gaugeNamed(formula.tree, pattern)) : null;
      if (named !== null) return named;
    }
  }
  const [first] = pattern.gauges;
  return first === undefined ? null : usable(first.id);
}

/** The gauge of the first stitches line that a formula names. */
function gaugeNamed(tree: FormulaNode, pattern: Pattern): string | null {
  const named: string[] = [];
  const visit = (node: unknown): void => {
    if (Array.isArray(node)) for (const part of node) visit(part);
    else if (typeof node === 'object' && node !== null) {
      if ('kind' in node && node.kind === 'line' && 'name' in node) named.push(String(node.name));
      for (const part of Object.values(node)) if (typeof part === 'object') visit(part);
    }
  };
  visit(tree);
  for (const name of named) {
    const line = pattern.lines.find((other) => other.name === name);
    if (line?.kind === 'stitches') return line.gauge;
  }
  return null;
}

/** Centimetres that one stitch takes across, and one row upwards; null where the gauge does not say. */
export function stepsOf(gauge: Gauge): { readonly stitch: Length | null; readonly row: Length | null } {
  const { stitches, rows } = densityOf(gauge);
  const one = rational(1)!;
  return { stitch: stitches && one.div(stitches), row: rows && one.div(rows) };
}

/**
 * How many stitches wide a row lies: its stitches. Where it has chain-spaces too, it is as wide as the row below it
 * as long as its stitches and chains can span that, since chains are made to fit what they cross (a corner's chain
 * takes no width, a mesh's chain that of the stitch it passes); else as its stitches, or its stitches and chains,
 * whichever comes nearer. `below` is the width of the row below, null for a first row.
 *
 * Common practice, no source: designers count a mesh by the stitches that it stands on.
 */
export function spanOf(
  { stitches, chains }: Pick<Tally, 'stitches' | 'chains'>,
  below: number | null,
): number {
  if (chains === 0) return stitches;
  if (below === null) return stitches + chains;
  return Math.max(stitches, Math.min(below, stitches + chains));
}

/** For each block of a piece, the width in stitches of the row it ends on, one a size; null where there is none. */
export function spansOf(piece: PieceStudy): readonly (readonly (number | null)[])[] {
  const known = spans.get(piece);
  if (known !== undefined) return known;
  const below: (number | null)[] = piece.starts.map((start) => start);
  const made = piece.blocks.map((block) =>
    block.sizes.map((size, i) => {
      if (size === null) return null;
      const span = spanOf(size.tally, below[i] ?? null);
      below[i] = span;
      return span;
    }),
  );
  spans.set(piece, made);
  return made;
}

const spans = new WeakMap<PieceStudy, readonly (readonly (number | null)[])[]>();

/** A number of stitches or rows as a length; halves are exact. */
export function lengthOfCount(count: number, step: Length): Length {
  return (rational(count) ?? (rational(0) as Rational)).mul(step);
}
