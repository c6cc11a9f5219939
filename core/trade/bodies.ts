/**
 * Charts of body measurements: what a body of a named size measures, without ease. Values are given as the
 * charts print them, in exact inches with the chart's own rounded centimetres beside; nothing is graded here
 * and no gap is filled.
 */
import data from '../../resources/trade/body-sizes.json' with { type: 'json' };
import type { Terms } from './stitches.ts';
import type { Certainty } from './terms.ts';
import { fromInches, type Length, type Rational, rational } from './units.ts';

/** Whose measurements a chart holds. */
export type ChartAudience = 'woman' | 'man' | 'child' | 'youth' | 'baby' | 'head' | 'hand' | 'foot';

/** [lower, upper]; both the same where the chart gives one figure. */
export type Cell = readonly [number, number];

/** One line of a chart: a cell per size, null where the figure is not confirmed. */
export interface Measure {
  /** "bust", "upper_arm". */
  readonly id: string;
  readonly in: readonly (Cell | null)[];
  /** The issuer's own rounded column; absent where it prints none. */
  readonly cm: readonly (Cell | null)[] | null;
  readonly certainty: { readonly in: Certainty; readonly cm: Certainty };
  readonly source: readonly string[];
}

export interface Chart {
  readonly audience: ChartAudience;
  /** Who issued the chart or, for ranges met in print, what they are. */
  readonly issuer: string;
  readonly note: string | null;
  readonly sizes: readonly string[];
  readonly measures: readonly Measure[];
}

/** One value out of a chart. */
export interface BodyMeasure {
  /** The exact length of the chart's inches. */
  readonly length: Length;
  /** The chart's inches. */
  readonly inches: Rational;
  /** The chart's own centimetres for the same bound, as printed; null where it prints none. */
  readonly cm: number | null;
  readonly certainty: { readonly in: Certainty; readonly cm: Certainty };
  readonly source: readonly string[];
}

export type Bound = 'lower' | 'middle' | 'upper';

interface ChartData {
  readonly issuer: string;
  readonly note?: string;
  readonly sizes: readonly string[];
  readonly measures: readonly Measure[];
}

interface RangeData {
  readonly label: string;
  readonly in: readonly number[];
  readonly certainty: string;
  readonly source: readonly string[];
}

/** A chart of one measure from the ranges met in print. */
function rangeChart(audience: ChartAudience, measure: string, ranges: readonly RangeData[]): Chart {
  return {
    audience,
    issuer: 'ranges met in print',
    note: null,
    sizes: ranges.map((range) => range.label),
    measures: [
      {
        id: measure,
        in: ranges.map((range) => [range.in[0]!, range.in[1]!]),
        cm: null,
        certainty: { in: ranges[0]!.certainty as Certainty, cm: 'gap' },
        source: [...new Set(ranges.flatMap((range) => range.source))],
      },
    ],
  };
}

/** The sock chart, whose columns are lists of single figures. */
function footChart(): Chart {
  const { rows, note, certainty } = data.foot;
  const column = (id: string, of: (row: (typeof rows)[number]) => number): Measure => ({
    id,
    in: rows.map((row) => [of(row), of(row)]),
    cm: null,
    certainty: { in: certainty as Certainty, cm: 'gap' },
    source: [],
  });
  return {
    audience: 'foot',
    issuer: 'Craft Yarn Council',
    note,
    sizes: rows.map((row) => `${row.group} ${row.usShoe}`),
    measures: [
      column('foot_circumference', (row) => row.circumferenceIn),
      column('sock_height', (row) => row.sockHeightIn),
      column('foot_length', (row) => row.lengthIn),
    ],
  };
}

const printed = data.charts as unknown as Readonly<Record<string, ChartData>>;

const chart = (audience: 'woman' | 'man' | 'child' | 'youth' | 'baby'): Chart => ({
  audience,
  note: null,
  ...printed[audience]!,
});

/** Every chart by its audience. */
export const bodyCharts: Readonly<Record<ChartAudience, Chart>> = {
  woman: chart('woman'),
  man: chart('man'),
  child: chart('child'),
  youth: chart('youth'),
  baby: chart('baby'),
  head: rangeChart('head', 'head', data.head.ranges),
  hand: rangeChart('hand', 'hand_circumference', data.hand.ranges),
  foot: footChart(),
};

/** The council's long-standing head figures in inches, one per label (from memory; see their certainty). */
export const councilHeads: readonly { readonly label: string; readonly inches: number }[] =
  data.head.council.labels.map((label, index) => ({ label, inches: data.head.council.in[index]! }));

/** The chart of an audience; null for an audience that has none ("other"). */
export function bodyChart(audience: string): Chart | null {
  return Object.hasOwn(bodyCharts, audience) ? bodyCharts[audience as ChartAudience] : null;
}

/** Bust and chest are one measure: women's charts print the one word, the others the other. */
const SAME: Readonly<Record<string, string>> = { bust: 'chest', chest: 'bust' };

/** One line of an audience's chart, by id; "bust" and "chest" find each other. */
export function chartMeasure(audience: string, measure: string): Measure | null {
  const measures = bodyChart(audience)?.measures;
  const named = (id: string | undefined) => measures?.find((line) => line.id === id) ?? null;
  return named(measure) ?? (Object.hasOwn(SAME, measure) ? named(SAME[measure]) : null);
}

/**
 * What a body of a chart's size measures: the lower or upper end of the chart's range, or its middle. Null
 * where the chart has no such size or measure, or the figure is not confirmed.
 */
export function bodyMeasure(
  audience: string,
  chartSize: string,
  measure: string,
  bound: Bound,
): BodyMeasure | null {
  const line = chartMeasure(audience, measure);
  const index = bodyChart(audience)?.sizes.indexOf(chartSize) ?? -1;
  const cell = line?.in[index];
  if (!line || !cell) return null;
  const inches = rational(at(cell, bound));
  const centimetres = line.cm?.[index];
  return inches === null
    ? null
    : {
        length: fromInches(inches),
        inches,
        cm: centimetres ? at(centimetres, bound) : null,
        certainty: line.certainty,
        source: line.source,
      };
}

function at([lower, upper]: Cell, bound: Bound): number {
  if (bound === 'lower') return lower;
  return bound === 'upper' ? upper : (lower + upper) / 2;
}

/** A measure's name in words: "upper arm", "centre back neck to cuff" ("center …" in US terms). */
export function measureName(measure: string, terms: Terms): string {
  const words = measure.split('_').join(' ');
  return terms === 'uk' ? words.replace(/\bcenter\b/g, 'centre') : words;
}

/** How a measure is taken on the body, in words; null for one that has no definition. */
export function measureDefinition(measure: string): string | null {
  const definitions: Readonly<Record<string, string>> = data.measuring.definitions;
  const id = measure === 'bust' || measure === 'chest' ? 'bust_chest' : measure;
  return Object.hasOwn(definitions, id) ? definitions[id]! : null;
}
