/**
 * What the example patterns need besides the writer: values of their sheets, and the sample that their amounts of
 * yarn follow from. They build plain pattern data; nothing here works a row or judges one.
 */
import type { Pattern } from '../../core/document/pattern.ts';
import type { Making } from '../../core/document/workbook.ts';
import { evaluate, gradeSheet, type Sheet } from '../../core/grading/index.ts';
import { toNumber } from '../../core/trade/units.ts';

export * from '../../core/document/writer.ts';

/** The sheet of a pattern's lines. */
export function sheetOf({
  sizes,
  lines,
  gauges,
  tolerance,
}: Pick<Pattern, 'sizes' | 'lines' | 'gauges' | 'tolerance'>): Sheet {
  return gradeSheet(sizes, lines, gauges, tolerance, null);
}

/** What an expression comes to in each size: a count, or a length in centimetres. */
export function valuesOf(sheet: Sheet, expression: string): readonly number[] {
  return sheet.sizes.map((_, size) => {
    const { value } = evaluate(expression, sheet, size);
    if (value === null || !('value' in value)) throw new Error(`“${expression}” has no value`);
    return toNumber(value.value);
  });
}

/** The ids of the sizes in which a condition on an expression's value holds. */
export function sizesWhere(
  sheet: Sheet,
  expression: string,
  holds: (value: number) => boolean,
): readonly string[] {
  return valuesOf(sheet, expression).flatMap((value, i) => (holds(value) ? [sheet.sizes[i]!.id] : []));
}

/**
 * The designer's own sample of an example: invented demo data, of a weight and a time that a piece of its size and
 * yarn may well take. The amounts that the example prints follow from it.
 */
export function sampleOf(size: string, grams: number, hours: number): Making {
  return {
    id: 'making-sample',
    kind: 'sample',
    by: '',
    size,
    state: 'finished',
    used: [{ yarn: 'yarn-main', piece: '', grams, metres: null }],
    hours,
    swatch: null,
    measured: {},
    note: 'Invented for this example.',
  };
}
