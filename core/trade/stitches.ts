/**
 * The stitches of the trade by an identity that no terminology changes: the ladder of heights (slip stitch,
 * t1 = US single crochet = UK double crochet, … t7). Names live in `terms`; nothing here reads text.
 */
import data from '../../resources/trade/stitch-geometry.json' with { type: 'json' };

/** Ladder of plain stitches. `t3` is US double crochet, UK treble. */
export type BaseStitch = 'slip' | 't1' | 't2' | 't3' | 't4' | 't5' | 't6' | 't7';

export const LADDER: readonly BaseStitch[] = ['slip', 't1', 't2', 't3', 't4', 't5', 't6', 't7'];

/** Which English a text is written in. */
export type Terms = 'us' | 'uk';

/** Height in chains, which is also the usual turning chain. Source: stitch-geometry data (published ladder). */
export function height(stitch: BaseStitch): number {
  return LADDER.indexOf(stitch);
}

/** The ladder stitch that an id is built on: "t3" for "t3", "fp.t3", "5-shell.t3"; null for "picot" or "sp". */
export function baseOf(id: string): BaseStitch | null {
  const base = id.slice(id.lastIndexOf('.') + 1);
  return LADDER.includes(base as BaseStitch) ? (base as BaseStitch) : null;
}

/** One way of beginning a row of a stitch. */
export interface TurningChain {
  /** Chains made to turn. */
  readonly chains: number;
  /** Whether they stand for the row's first stitch; null where sources differ, so that a pattern must say. */
  readonly counts: boolean | null;
  /** Of a foundation chain, the chain from the hook that the first stitch goes into. */
  readonly firstStitchIn: number;
  /** Chains to make beyond the row's number of stitches. */
  readonly foundationAdd: number;
}

interface Geometry {
  readonly id: string;
  readonly turningChain: number;
  readonly counts: boolean | 'varies';
  readonly firstStitchIn: number;
  readonly foundationAdd: number;
  readonly variants: readonly TurningChain[];
}

const geometry: ReadonlyMap<string, Geometry> = new Map(
  (data.stitches as unknown as readonly Geometry[]).map((line) => [line.id, line]),
);

/**
 * The usual turning chain of a stitch. Sources: the published ladder up to t5; t6 and t7 follow from "each
 * taller stitch adds one chain" and the foundation rule (derived).
 */
export function turningChain(stitch: BaseStitch): TurningChain {
  const line = geometry.get(stitch);
  if (!line) {
    const chains = height(stitch);
    return { chains, counts: true, firstStitchIn: chains + 1, foundationAdd: chains - 1 };
  }
  return {
    chains: line.turningChain,
    counts: line.counts === 'varies' ? null : line.counts,
    firstStitchIn: line.firstStitchIn,
    foundationAdd: line.foundationAdd,
  };
}

/** Every way that is published for beginning a row of a stitch, the usual one first, none of them twice. */
export function turningChainVariants(stitch: BaseStitch): readonly TurningChain[] {
  const usual = turningChain(stitch);
  const others = geometry.get(stitch)?.variants ?? [];
  return usual.counts === null ? others : [usual, ...others];
}

/**
 * Chains of a foundation for a first row of so many stitches: stitches + turning chain, less one when the
 * turning chain counts as a stitch (derived; agrees with the published foundation lengths).
 */
export function foundationChains(
  stitches: number,
  turning: { readonly chains: number; readonly counts: boolean },
): number {
  return stitches + turning.chains - (turning.counts ? 1 : 0);
}

/** Stitches that lie flat in a circle. */
export interface FlatCircle {
  /** Stitches of the first round. */
  readonly start: number;
  /** Stitches that each further round adds. */
  readonly increase: number;
  /** What published tutorials use instead, lowest and highest. */
  readonly range: readonly [number, number];
}

/** How a flat circle of a stitch grows; null where no figure is known. */
export function flatCircle(stitch: BaseStitch): FlatCircle | null {
  const line = data.flatCircle.rounds.find((round) => round.id === stitch);
  return line
    ? { start: line.start, increase: line.increase, range: [line.range[0]!, line.range[1]!] }
    : null;
}
