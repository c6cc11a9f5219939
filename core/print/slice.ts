/**
 * A slice is a strip of the booklet that no page break can go through: a line of text, a line of a table, a
 * picture. Measuring turns blocks into slices; the flow deals slices out to pages. Making and joining slices
 * is all this module does.
 */
import type { Mark } from './page.ts';

/**
 * What a page break before a slice costs. The unused part of a page costs up to 100, so a page is left a
 * quarter empty rather than split a short paragraph, and nearly empty rather than strand a heading.
 */
export const BREAK = {
  free: 0,
  /** Inside a row or paragraph of many lines. */
  inside: 5,
  /** Inside blocks that should stay together. */
  together: 45,
  /** Inside what is read at one glance: a chart and what is said of it. */
  glance: 120,
  /** Leaves one line of a paragraph, one row of a table, one item of a list alone. */
  lone: 160,
  /** Parts a heading from its text, a head from its table, a picture from its caption. */
  strand: 4000,
} as const;

export interface Slice {
  readonly height: number;
  /** Space above, dropped at the top of a page. */
  readonly gap: number;
  /** Cost of a page break before it. */
  readonly cost: number;
  /** A page begins with it in any case. */
  readonly forced: boolean;
  /** A page should begin with it, unless the page before would be left nearly empty. */
  readonly opens: boolean;
  /** `x` is from the left edge of the paper, `y` from the top of the slice. */
  readonly marks: readonly Mark[];
  /** Marks that stand in the gap, `y` from the top of the slice, dropped with it at the top of a page. */
  readonly above: readonly Mark[];
  /** Repeated above it when a page begins with it: the head of its table. Artifacts. */
  readonly carry: readonly Slice[] | null;
  readonly bookmark: { readonly title: string; readonly level: 1 | 2 | 3 } | null;
}

export const slice = (height: number, marks: readonly Mark[], more: Partial<Slice> = {}): Slice => ({
  height,
  gap: 0,
  cost: BREAK.free,
  forced: false,
  opens: false,
  marks,
  above: [],
  carry: null,
  bookmark: null,
  ...more,
});

/** Costs for breaks within a paragraph-like run of slices: no line alone at a foot or at a head. */
export function holdLines(slices: readonly Slice[], inside: number = BREAK.inside): Slice[] {
  return slices.map((one, i) => {
    if (i === 0) return one;
    const lone = i === 1 || i === slices.length - 1;
    return { ...one, cost: Math.max(one.cost, lone ? BREAK.lone : inside) };
  });
}

/** Raises the cost of the break before the first slice. */
export function bindFirst(slices: readonly Slice[], cost: number): Slice[] {
  return slices.map((one, i) => (i === 0 ? { ...one, cost: Math.max(one.cost, cost) } : one));
}

/** Raises the cost of every break inside. */
export function bindAll(slices: readonly Slice[], cost: number): Slice[] {
  return slices.map((one, i) => (i === 0 ? one : { ...one, cost: Math.max(one.cost, cost) }));
}

/**
 * Holds the end of every section together: its last row and its "Fasten off" are not turned over for alone. A
 * section is what stands between two headings of level 1 or 2; `most` is the height of an end.
 */
export function holdEnds(slices: readonly Slice[], most: number): Slice[] {
  const held = [...slices];
  let left = 0;
  for (let i = slices.length - 1; i > 0; i--) {
    const one = slices[i]!;
    if (one.bookmark !== null && one.bookmark.level < 3) {
      left = 0;
      continue;
    }
    left += one.height;
    if (left <= most) held[i] = { ...one, cost: Math.max(one.cost, BREAK.together) };
    left += one.gap;
  }
  return held;
}

/** The space above the first slice. */
export function withGap(slices: readonly Slice[], gap: number): Slice[] {
  return slices.map((one, i) => (i === 0 ? { ...one, gap: Math.max(one.gap, gap) } : one));
}

export const heightOf = (slices: readonly Slice[]): number =>
  slices.reduce((sum, one, i) => sum + one.height + (i === 0 ? 0 : one.gap), 0);
