/**
 * The yarn weight system 0 to 7: what each weight is called in each market, the gauges and hooks it is
 * usually worked at. Guidelines of the issuer; a pattern's own gauge always wins, and no weight is inferred
 * from a gauge.
 */
import data from '../../resources/trade/yarn-weights.json' with { type: 'json' };
import type { BaseStitch, Terms } from './stitches.ts';

/** [lower, upper]; null is an open end. */
export type Range = readonly [number | null, number | null];

export interface YarnWeight {
  readonly number: number;
  /** The issuer's name: "Medium". */
  readonly name: string;
  /** What a shop in each market usually calls it: "worsted", "aran" (common practice). */
  readonly usual: { readonly us: string; readonly uk: string };
  readonly usTypes: readonly string[];
  readonly ukNames: readonly string[];
  readonly auPly: readonly string[];
  /** Stitches of `gaugeStitch` in 4 in. */
  readonly scGauge: Range;
  /** What the gauge is counted in: t1, but t3 for lace. */
  readonly gaugeStitch: BaseStitch;
  readonly hookMm: Range;
  readonly hookUs: string;
  /** Stitches of plain knitting in 4 in. */
  readonly knitGauge: Range;
  /** Wraps in an inch. */
  readonly wpi: Range;
  readonly metresPer100g: Range;
  readonly notes: readonly string[];
}

/** All weights, the finest first; a weight's number is its index. */
export const yarnWeights: readonly YarnWeight[] = data.weights as unknown as readonly YarnWeight[];

/** The weight of a number from 0 to 7; null for any other number. */
export function yarnWeight(number: number): YarnWeight | null {
  return yarnWeights.find((weight) => weight.number === number) ?? null;
}

/** A weight as an edition prints it: "worsted (4, Medium)" for the US, "aran (4, Medium)" for the UK. */
export function yarnWeightLabel(number: number, terms: Terms): string | null {
  const weight = yarnWeight(number);
  return weight && `${weight.usual[terms]} (${weight.number}, ${weight.name})`;
}
