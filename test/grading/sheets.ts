/** Builders of small sheets for the tests of grading. They hold no expectations. */
import type { Gauge, LengthUnit, Line, PerSize, Quantity, Size } from '../../core/document/pattern.ts';
import { gradeSheet, type Sheet } from '../../core/grading/sheet.ts';
import { toNumber } from '../../core/trade/units.ts';

export const cm = (value: number): Quantity => ({ value, unit: 'cm' });
export const inches = (value: number): Quantity => ({ value, unit: 'in' });
export const percent = (value: number): Quantity => ({ value, unit: '%' });
export const bare = (value: number): Quantity => ({ value, unit: 'none' });

export const all = (value: Quantity): PerSize<Quantity> => ({ all: value });
export const each = (...values: readonly Quantity[]): PerSize<Quantity> => ({
  each: Object.fromEntries(values.map((value, index) => [`z${index}`, value])),
});

/** Sizes of the women's chart, by its own labels. */
export function women(...labels: readonly string[]): Size[] {
  return labels.map((label, index) => ({
    id: `z${index}`,
    label,
    audience: 'woman',
    chart: label,
    age: null,
  }));
}

type Kind<K extends Line['kind']> = Omit<
  Extract<Line, { kind: K }>,
  'id' | 'name' | 'printed' | 'note' | 'kind'
>;

function line<K extends Line['kind']>(kind: K, name: string, rest: Kind<K>): Line {
  return { id: name, name, printed: null, note: null, kind, ...rest } as unknown as Line;
}

export const printed = (of: Line): Line => ({ ...of, printed: of.name });

export const body = (
  name: string,
  measure: string,
  bound: 'lower' | 'middle' | 'upper' = 'lower',
  overtyped: Readonly<Record<string, Quantity>> = {},
) => line('body', name, { measure, bound, overtyped });
export const typed = (name: string, values: PerSize<Quantity>) => line('typed', name, { values });
export const ease = (name: string, values: PerSize<Quantity>) => line('ease', name, { values });
export const formula = (name: string, text: string) => line('formula', name, { formula: text });
export const stitches = (name: string, length: string, rest: Partial<Kind<'stitches'>> = {}) =>
  line('stitches', name, {
    length,
    gauge: 'g',
    state: 'relaxed',
    multiple: 1,
    plus: 0,
    rounding: 'nearest',
    parity: 'any',
    counts: 'stitches',
    extra: 0,
    tolerance: null,
    ...rest,
  });
export const rows = (name: string, length: string, rest: Partial<Kind<'rows'>> = {}) =>
  line('rows', name, {
    length,
    gauge: 'g',
    cycle: 1,
    endOn: 1,
    before: 0,
    rounding: 'nearest',
    tolerance: null,
    ...rest,
  });
export const shaping = (name: string, rest: Partial<Kind<'shaping'>> = {}) =>
  line('shaping', name, { start: '40', end: '20', rows: '40', perEnd: 1, ends: 2, step: 2, ...rest });
export const spread = (name: string, rest: Partial<Kind<'spread'>> = {}) =>
  line('spread', name, { changes: '5', over: '39', change: 'inc', form: 'round', stitch: 't1', ...rest });

/** So many stitches and rows over a square of so many units. */
export function gauge(
  count: number,
  over: number,
  unit: LengthUnit,
  rowCount = count,
  stretch: Gauge['stretch'] = null,
): Gauge {
  const side = { value: over, unit };
  return {
    id: 'g',
    pattern: 'single crochet',
    stitches: count,
    rows: rowCount,
    width: side,
    height: side,
    blocked: true,
    stretch,
    hook: null,
    rounds: false,
  };
}

export const grade = (
  lines: readonly Line[],
  sizes: readonly Size[] = women('M'),
  gauges: readonly Gauge[] = [gauge(16, 4, 'in')],
): Sheet => gradeSheet(sizes, lines, gauges, cm(2));

/** The plain numbers of a line for all sizes (cm for lengths); null where there is none. */
export function numbers(sheet: Sheet, name: string): (number | null)[] {
  return sheet.lines
    .find((result) => result.line.name === name)!
    .sizes.map(({ value }) => (value && 'value' in value ? toNumber(value.value) : null));
}

/** Codes of all the facts at a line, those of every size included. */
export function codes(sheet: Sheet, name: string): string[] {
  const result = sheet.lines.find((each) => each.line.name === name)!;
  return [...result.facts, ...result.sizes.flatMap((size) => size.facts)].map((fact) => fact.code);
}
