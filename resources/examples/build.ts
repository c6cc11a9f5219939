/**
 * What the example patterns need besides the writer: values of their sheets, and amounts of yarn worked out from
 * area. They build plain pattern data; nothing here works a row or judges one.
 */
import type { Pattern } from '../../core/document/pattern.ts';
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

/** A part of the fabric as a rectangle: width and height by expressions, and how often it is made. */
export type Part = readonly [width: string, height: string, times: number];

/**
 * Metres of yarn for each size: the area of the parts in square centimetres by the metres that one square
 * metre takes, with a margin, rounded up to 10 m.
 */
export function metresFor(
  sheet: Sheet,
  parts: readonly Part[],
  perSquareMetre: number,
  margin: number,
): Readonly<Record<string, number>> {
  const areas = parts.map(([width, height, times]) => {
    const widths = valuesOf(sheet, width);
    const heights = valuesOf(sheet, height);
    return widths.map((value, i) => value * heights[i]! * times);
  });
  return Object.fromEntries(
    sheet.sizes.map(({ id }, i) => {
      const area = areas.reduce((sum, part) => sum + part[i]!, 0) / 10_000;
      return [id, Math.ceil((area * perSquareMetre * (1 + margin)) / 10) * 10];
    }),
  );
}
