/**
 * Puts dimension lines round an outline so that no label touches another, a line or the outline: those across above
 * and below it, those up and down at its sides, each in the first tier that has room. It knows boxes and widths, not
 * what is measured.
 */

/** A length to be shown: from `from` to `to` along its axis (points of the sheet), at the outline's `edge` there. */
export interface Dimension {
  readonly key: string;
  readonly side: 'below' | 'above' | 'left' | 'right';
  readonly from: number;
  readonly to: number;
  /** How far out the outline reaches where the two leaders begin. */
  readonly reachFrom: number;
  readonly reachTo: number;
  readonly label: string;
  /** Size of the label along the line and away from it. */
  readonly along: number;
  readonly away: number;
}

export interface PlacedDimension {
  readonly dimension: Dimension;
  /** Where the line runs, across its axis. */
  readonly at: number;
  /** Middle of the label along the line; its near and far edge away from it. */
  readonly middle: number;
  readonly near: number;
  readonly far: number;
  /** Leaders that meet no label. */
  readonly leaders: readonly [boolean, boolean];
}

/** Between the outline and the first line; between a line and its label, and between tiers. */
const FIRST = 9;
const LABEL_GAP = 2.5;
const TIER_GAP = 5;
const SIDE_GAP = 4;

const out = (side: Dimension['side']) => (side === 'above' || side === 'right' ? 1 : -1);

interface Span {
  readonly from: number;
  readonly to: number;
}

const overlap = (a: Span, b: Span, gap = 0) => a.from < b.to + gap && b.from < a.to + gap;

/**
 * Places the dimensions of one side. Coordinates grow outwards from the outline for every side here: `reach` is how
 * far the outline comes at all.
 */
export function placeSide(dimensions: readonly Dimension[], reach: number): readonly PlacedDimension[] {
  const placed: PlacedDimension[] = [];
  const sorted = [...dimensions].sort(
    (a, b) => Math.max(a.to - a.from, a.along) - Math.max(b.to - b.from, b.along) || (a.key < b.key ? -1 : 1),
  );
  /** Tiers from the outline outwards: where each begins, how deep it is, what it holds. */
  const tiers: { items: { dimension: Dimension; label: Span; whole: Span }[]; deep: number }[] = [];
  const chosen: { dimension: Dimension; tier: number; label: Span }[] = [];
  for (const dimension of sorted) {
    const middle = (dimension.from + dimension.to) / 2;
    const label = { from: middle - dimension.along / 2, to: middle + dimension.along / 2 };
    const whole = { from: Math.min(label.from, dimension.from), to: Math.max(label.to, dimension.to) };
    let tier = 0;
    while (tiers[tier]?.items.some((other) => overlap(other.whole, whole, SIDE_GAP))) tier += 1;
    tiers[tier] ??= { items: [], deep: 0 };
    tiers[tier]!.items.push({ dimension, label, whole });
    tiers[tier]!.deep = Math.max(tiers[tier]!.deep, dimension.away + LABEL_GAP);
    chosen.push({ dimension, tier, label });
  }
  const starts: number[] = [];
  let at = reach + FIRST;
  for (const tier of tiers) {
    starts.push(at);
    at += tier.deep + TIER_GAP;
  }
  for (const { dimension, tier, label } of chosen) {
    const line = starts[tier]!;
    // A leader goes through the nearer tiers: where a label stands there, it is left out.
    const clear = (x: number) =>
      tiers
        .slice(0, tier)
        .every(({ items }) => items.every((other) => x < other.label.from - 1 || x > other.label.to + 1));
    placed.push({
      dimension,
      at: line,
      middle: (label.from + label.to) / 2,
      near: line + LABEL_GAP,
      far: line + LABEL_GAP + dimension.away,
      leaders: [clear(dimension.from), clear(dimension.to)],
    });
  }
  return placed;
}

/** How far outwards a side grows by its dimensions. */
export function depthOf(placed: readonly PlacedDimension[], reach: number): number {
  return Math.max(reach, ...placed.map(({ far }) => far));
}

export { out as outwards };
