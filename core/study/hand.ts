/**
 * A maker's hand, fitted: how much of something (yarn, time) each kind of stitch takes, from things that were really
 * made. Begins from the trade's proportions, finds the scale, and moves single kinds away from them only as far as
 * several makings bear out. It knows neither grams nor hours, and reads no pattern.
 *
 * The model: amount = Σ count × proportion × (scale + own), one `own` a kind. Residuals are weighed by the amounts
 * (a hundredth off is as bad in a hat as in a coat); `own` is drawn to nothing by a small ridge, which is the most
 * likely answer when makings are measured to NOISE and proportions are known to DOUBT; and it is bounded, so
 * that no kind takes less than half or more than twice its proportion. Both numbers are common practice, no source.
 */
import type { YarnKind } from '../trade/stitch-use.ts';
import { boundedSquares } from './bounded-squares.ts';
import { type Counts, weightOf } from './yarn-counts.ts';

/** How surely a finished thing is weighed or timed: a fiftieth. */
const NOISE = 0.02;
/** How far a hand's proportions may be from the trade's, as a rule: a quarter. */
const DOUBT = 0.25;

/** Something that was made, and what it took. */
export interface Observation {
  /** Who it comes from: observations of one making are held back together. */
  readonly making: string;
  readonly counts: Counts;
  readonly amount: number;
}

export interface Hand {
  /** What so many stitches take. */
  readonly takes: (counts: Counts) => number;
  readonly observations: readonly Observation[];
  /** Typical part by which the makings are off what is fitted to them; null for a single one. */
  readonly spread: number | null;
  /** Typical part by which a making is off what the others say of it; null for a single one. */
  readonly heldBack: number | null;
  /** For each observation the part by which it is off what the other makings say; null where there is none. */
  readonly off: readonly (number | null)[];
}

const rms = (parts: readonly number[]): number | null =>
  parts.length === 0 ? null : Math.sqrt(parts.reduce((sum, part) => sum + part * part, 0) / parts.length);

type Takes = Hand['takes'];

/** The hand behind the observations; null when there is nothing to go by. */
export function handOf(
  observations: readonly Observation[],
  proportion: (kind: YarnKind) => number,
): Hand | null {
  const usable = observations.filter(
    ({ counts, amount }) => Number.isFinite(amount) && amount > 0 && weightOf(counts, proportion) > 0,
  );
  const takes = fitted(usable, proportion);
  if (takes === null) return null;
  const groups = new Set(usable.map(({ making }) => making));
  const off = usable.map((one, i) => {
    const others = usable.filter((other, k) => (groups.size > 1 ? other.making !== one.making : k !== i));
    const told = fitted(others, proportion)?.(one.counts);
    return told === undefined || told <= 0 ? null : one.amount / told - 1;
  });
  return {
    takes,
    observations: usable,
    spread: usable.length < 2 ? null : rms(usable.map((one) => one.amount / takes(one.counts) - 1)),
    heldBack: rms(off.filter((part) => part !== null)),
    off,
  };
}

function fitted(observations: readonly Observation[], proportion: (kind: YarnKind) => number): Takes | null {
  if (observations.length === 0) return null;
  // The scale alone, residuals weighed by amounts: Σ w / Σ w² for w = proportion ÷ amount.
  const weights = observations.map(({ counts, amount }) => weightOf(counts, proportion) / amount);
  const scale = weights.reduce((sum, w) => sum + w, 0) / weights.reduce((sum, w) => sum + w * w, 0);
  if (!Number.isFinite(scale) || scale <= 0) return null;
  const kinds = [...new Set(observations.flatMap(({ counts }) => [...counts.keys()]))].sort();
  // Unknowns in units of that scale: the scale itself, then what each kind takes beside it.
  const rows = observations.map(({ counts, amount }, i) => [
    weights[i]! * scale,
    ...kinds.map((kind) => ((counts.get(kind) ?? 0) * proportion(kind) * scale) / amount),
  ]);
  const ridge = NOISE / DOUBT;
  const drawn = kinds.map((_, k) => [0, ...kinds.map((__, j) => (j === k ? ridge : 0))]);
  const [own = 1, ...beside] = boundedSquares(
    [...rows, ...drawn],
    [...observations.map(() => 1), ...kinds.map(() => 0)],
    {
      lower: [0.25, ...kinds.map(() => -0.5)],
      upper: [4, ...kinds.map(() => 1)],
    },
    [1, ...kinds.map(() => 0)],
  );
  const each = new Map(
    kinds.map((kind, k) => [kind, proportion(kind) * scale * Math.max(0, own + beside[k]!)]),
  );
  return (counts) => weightOf(counts, (kind) => each.get(kind) ?? proportion(kind) * scale * own);
}
