/** The rows of a piece jump in one size, or do not grow from one size to the next while all others do. */
import { perSize, quoted, text, words } from '../../findings/phrases.ts';
import { type LineResult, lineNamed } from '../../grading/index.ts';
import type { PieceStudy, Study } from '../../study/index.ts';
import { toNumber } from '../../trade/units.ts';
import { foundIn, type Rule } from '../rule.ts';
import { outOfLine } from '../steps.ts';

/** Rows of the greatest group that a piece repeats: its rows can only be a multiple of so many. */
function cycleOf({ piece, blocks }: PieceStudy): number {
  const order = piece.blocks.map(({ id }) => id);
  const groups = blocks.map(({ block }) =>
    block.type === 'repeat' ? order.indexOf(block.last) - order.indexOf(block.first) + 1 : 1,
  );
  return Math.max(1, ...groups);
}

/**
 * Index of the one size that has the rows of the size before it while all others grow by more than rounding can
 * hide; -1 where there is none. Three steps that grow are the fewest from which "all others" can be said.
 */
function repeated(rows: readonly number[], cycle: number): number {
  const steps = rows.slice(1).map((n, i) => n - rows[i]!);
  const still = steps.flatMap((step, i) => (step === 0 ? [i + 1] : []));
  const others = steps.filter((step) => step !== 0);
  const isEven = others.every((step) => Math.sign(step) === Math.sign(others[0]!));
  return still.length === 1 && others.length >= 3 && isEven && others.every((s) => Math.abs(s) >= 3 * cycle)
    ? still[0]!
    : -1;
}

/** Values that a maker typed and from which the rows of a piece come, by whatever way. */
function typedBehind({ sheet }: Study, { piece }: PieceStudy): readonly (readonly (number | null)[])[] {
  const asked = piece.blocks.flatMap((block) =>
    block.type === 'repeat' ? ['times' in block.until ? block.until.times : block.until.rows] : [],
  );
  const seen = new Set<LineResult>();
  const visit = (result: LineResult | null): void => {
    if (result === null || seen.has(result)) return;
    seen.add(result);
    for (const name of result.needs) visit(lineNamed(sheet, name));
  };
  for (const result of sheet.lines)
    if (asked.some((expression) => expression.includes(result.line.name))) visit(result);
  return [...seen].flatMap(({ line, sizes }) =>
    line.kind !== 'typed' || 'all' in line.values
      ? []
      : [sizes.map(({ value }) => (value !== null && 'value' in value ? toNumber(value.value) : null))],
  );
}

export const rowCountOutOfLine: Rule = {
  code: 'row-count-out-of-line',
  severity: 'warning',
  title: 'The rows of one size do not go with those of the others',
  reason:
    'A piece grows from size to size by rows that are alike, or change little by little. One size that jumps, or stays as the one before, has most often a wrong number or a rule that was left out.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const goes = words(data, 'values').join(', ');
      const what = `the rows of ${quoted(data, 'piece')} go ${goes} from size to size`;
      return text(data, 'how') === 'repeats'
        ? `${what}: it has no more than the size before it, while all others grow; see whether that is meant`
        : `${what}, which does not go with the steps of the others; about ${text(data, 'about')} would`;
    }),
  example: null,
  sample: { piece: 'Sleeve', how: 'jumps', values: ['40', '58', '46'], about: '43' },
  check: (study) => {
    if (study.pattern.sizes.length < 4) return [];
    return study.pieces.flatMap((own) => {
      const { piece, rows, fabrics } = own;
      if (fabrics.some((fabric) => fabric === null) || rows.some((n) => n === 0)) return [];
      // What is typed and jumps or stays is told at its own place, and the rows only follow.
      const typed = typedBehind(study, own);
      if (typed.some((values) => outOfLine(values).some((one) => one !== null))) return [];
      const again = repeated(rows, cycleOf(own));
      const still = typed.some((values) => again > 0 && values[again] === values[again - 1]) ? -1 : again;
      const data = outOfLine(rows).map((jump, i) => {
        if (jump !== null) {
          const about = String(Math.round(jump.about));
          return { piece: piece.name, how: 'jumps', values: jump.values.map(String), about };
        }
        const near = rows.slice(Math.max(0, i - 1), i + 2).map(String);
        return i === still ? { piece: piece.name, how: 'repeats', values: near, about: '' } : null;
      });
      return foundIn(rowCountOutOfLine, study, { node: piece.id }, data);
    });
  },
};
