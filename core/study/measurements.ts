/**
 * The measurements that a pattern tells its reader: the body it is to fit, and what the fitted stitches and rows
 * really make, exactly, for every size. It rounds nothing and words nothing; the market's units come later.
 */
import type { Line } from '../document/pattern.ts';
import {
  compileExpression,
  type FormulaNode,
  type LineResult,
  lineNamed,
  type Sheet,
} from '../grading/index.ts';
import { type Length, type Rational, rational } from '../trade/units.ts';

export interface Measurement {
  readonly line: string; // id
  /** As the maker heads it in the table. */
  readonly heading: string;
  /** Of the body, or of the finished piece. */
  readonly of: 'body' | 'piece';
  /** One a size; null where there is none. A count is a number of stitches, rows or repeats. */
  readonly values: readonly ({ readonly length: Length } | { readonly count: Rational } | null)[];
  /** Measured as worn, stretched, and not lying flat. */
  readonly stretched: boolean;
  /** For a finished measurement that names the body's: finished less body, one a size. */
  readonly ease: readonly (Length | null)[] | null;
}

const ONE = rational(1)!;

/** Every line that the maker has printed, in the order of the sheet. */
export function measurementsOf(sheet: Sheet): readonly Measurement[] {
  return sheet.lines
    .filter((result) => (result.line.printed ?? '').trim() !== '')
    .flatMap((result) => measurementOf(result, sheet) ?? []);
}

function measurementOf(result: LineResult, sheet: Sheet): Measurement | null {
  const { line } = result;
  if (line.kind === 'shaping' || line.kind === 'spread') return null;
  const fitting = line.kind === 'body' ? [] : fittedTo(line, sheet);
  const values = sheet.sizes.map((_, size) => valueAt(result, fitting, size));
  const body = line.note === null || line.kind === 'body' ? null : lineNamed(sheet, line.note);
  return {
    line: line.id,
    heading: line.printed!.trim(),
    of: line.kind === 'body' ? 'body' : 'piece',
    values,
    stretched:
      line.kind === 'stitches'
        ? line.state === 'stretched'
        : fitting.some(({ result: own }) => own.line.kind === 'stitches' && own.line.state === 'stretched'),
    ease:
      body?.line.kind === 'body'
        ? values.map((value, size) => {
            const worn = body.sizes[size]?.value;
            return value !== null && 'length' in value && worn?.dimension === 'length'
              ? value.length.sub(worn.value)
              : null;
          })
        : null,
  };
}

interface Fitting {
  readonly result: LineResult;
  /** The fitted line's length is this part of the printed one: a half for a front and a back. */
  readonly part: Rational;
}

/**
 * The stitches and rows lines that are fitted to a length, or to a part of it ("finished chest ÷ 2"), and
 * nothing else: what they make is what the length really comes to.
 */
function fittedTo(line: Line, sheet: Sheet): readonly Fitting[] {
  if (line.kind === 'stitches' || line.kind === 'rows') return [];
  return sheet.lines.flatMap((result) => {
    if (result.line.kind !== 'stitches' && result.line.kind !== 'rows') return [];
    const formula = compileExpression(result.line.length, sheet.vocabulary);
    const part = formula.read ? partOf(formula.tree, line.name) : null;
    return part === null || part.n === 0n ? [] : [{ result, part }];
  });
}

/** The part when a formula is a line's name, times or divided by plain numbers; else null. */
function partOf(node: FormulaNode, name: string): Rational | null {
  switch (node.kind) {
    case 'line':
      return node.name === name ? ONE : null;
    case 'part': {
      const inner = partOf(node.node, name);
      return inner === null ? null : inner.mul(node.factor);
    }
    case 'product': {
      let part: Rational = ONE;
      let named = false;
      for (const { divide, node: factor } of node.factors) {
        if (factor.kind === 'number' && factor.unit === 'none' && factor.value.n !== 0n) {
          part = divide ? part.div(factor.value) : part.mul(factor.value);
          continue;
        }
        const own = divide || named ? null : partOf(factor, name);
        if (own === null) return null;
        part = part.mul(own);
        named = true;
      }
      return named ? part : null;
    }
    default:
      return null;
  }
}

function valueAt(
  { line, sizes }: LineResult,
  fitting: readonly Fitting[],
  size: number,
): Measurement['values'][number] {
  const own = sizes[size];
  if (own === undefined) return null;
  if (own.fitted !== null) return { length: own.fitted.got };
  if (line.kind === 'stitches' || line.kind === 'rows' || own.value === null) return null;
  if (own.value.dimension === 'count' || own.value.dimension === 'ratio') return { count: own.value.value };
  if (own.value.dimension !== 'length') return null;
  const real = realLength(fitting, size);
  return { length: real ?? own.value.value };
}

/**
 * Parts that together make the whole (a front and a back, each fitted to a half) are added up; otherwise the
 * first part stands for all of them.
 */
function realLength(fitting: readonly Fitting[], size: number): Length | null {
  const made = fitting.flatMap(({ result, part }) => {
    const got = result.sizes[size]?.fitted?.got;
    return got === undefined ? [] : [{ got, part }];
  });
  const [first] = made;
  if (first === undefined) return null;
  const parts = made.map(({ part }) => part).reduce((sum, part) => sum.add(part));
  return parts.equals(ONE)
    ? made.map(({ got }) => got).reduce((sum, got) => sum.add(got))
    : first.got.div(first.part);
}
