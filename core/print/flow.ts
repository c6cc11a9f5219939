/**
 * Deals slices out to pages and puts them in place. All page breaks are chosen together, by what each costs
 * and how much of a page it leaves empty; the head of a table is repeated where a page begins inside it.
 */
import { type Bookmark, type Mark, moved, type Page } from './page.ts';
import { BREAK, type Slice } from './slice.ts';

/** What a page costs for being there: two half pages are worse than one. */
const PAGE = 3;
const WASTE = 100;
/** Text that goes on overleaf fills its page: what it leaves empty costs so much more. */
const WASTE_INSIDE = 300;
/** What it costs not to begin a page where a part asks for one; more is only what leaves a page nearly empty before it. */
const UNOPENED = 40;
const NEARLY_EMPTY = { part: 0.4, cost: 45 } as const;
/** A slice taller than a page has nowhere to go; it stands alone. */
const OVERFULL = 1e7;

/** Numbers of the slices that begin a page. */
export function breakPages(slices: readonly Slice[], height: number): number[] {
  const n = slices.length;
  if (n === 0) return [];
  const best = new Float64Array(n + 1).fill(Number.POSITIVE_INFINITY);
  const next = new Int32Array(n + 1).fill(n);
  best[n] = 0;
  for (let i = n - 1; i >= 0; i--) {
    let used = (slices[i]!.carry ?? []).reduce((sum, one) => sum + one.height, 0);
    let unopened = 0;
    for (let j = i + 1; j <= n; j++) {
      const one = slices[j - 1]!;
      used += one.height + (j - 1 === i ? 0 : one.gap);
      if (one.opens && j - 1 > i) unopened += UNOPENED;
      const over = used > height + 0.01;
      if (over && j > i + 1) break;
      const after = slices[j];
      const cost =
        PAGE +
        unopened +
        (after ? breakCost(after, Math.min(1, used / height)) : endCost(i, used / height)) +
        (over ? OVERFULL : 0) +
        best[j]!;
      if (cost < best[i]!) {
        best[i] = cost;
        next[i] = j;
      }
      if (after?.forced) break;
    }
  }
  const starts: number[] = [];
  for (let i = 0; i < n; i = next[i]!) starts.push(i);
  return starts;
}

/** Cost of ending a page, `filled` (0–1) so far, before `after`. */
function breakCost(after: Slice, filled: number): number {
  if (after.forced) return 0;
  if (after.opens) return after.cost + (filled < NEARLY_EMPTY.part ? NEARLY_EMPTY.cost : 0);
  const inside = after.cost > BREAK.free && after.cost < BREAK.together;
  return after.cost + (inside ? WASTE_INSIDE : WASTE) * (1 - filled) ** 2;
}

/** The last page, too, should have something on it: it takes more over from the page before. */
function endCost(first: number, filled: number): number {
  return first > 0 && filled < NEARLY_EMPTY.part ? NEARLY_EMPTY.cost : 0;
}

export interface Placed {
  readonly pages: readonly Page[];
  readonly bookmarks: readonly Bookmark[];
}

/** Finished pages: every slice at its place, the foot under it. */
export function placePages(
  slices: readonly Slice[],
  area: { readonly top: number; readonly height: number; readonly width: number; readonly paper: number },
  foot: (page: number, pages: number) => readonly Mark[],
): Placed {
  const starts = breakPages(slices, area.height);
  const pages: Page[] = [];
  const bookmarks: Bookmark[] = [];
  const count = Math.max(1, starts.length);
  for (let p = 0; p < count; p++) {
    const from = starts[p] ?? 0;
    const to = starts[p + 1] ?? slices.length;
    const marks: Mark[] = [];
    let y = area.top;
    const put = (one: Slice): void => {
      for (const mark of one.marks) marks.push(moved(mark, 0, y));
      if (one.bookmark) bookmarks.push({ ...one.bookmark, page: p + 1, y });
      y += one.height;
    };
    for (const one of slices[from]?.carry ?? []) put(one);
    for (let i = from; i < to; i++) {
      if (i > from) {
        y += slices[i]!.gap;
        for (const mark of slices[i]!.above) marks.push(moved(mark, 0, y));
      }
      put(slices[i]!);
    }
    pages.push({
      number: p + 1,
      width: area.width,
      height: area.paper,
      marks: [...joinFills(marks), ...foot(p + 1, count)],
    });
  }
  return { pages, bookmarks };
}

/** Fills that meet become one, behind everything else, so that no seam shows between them. */
function joinFills(marks: readonly Mark[]): Mark[] {
  const fills: Extract<Mark, { kind: 'fill' }>[] = [];
  const rest: Mark[] = [];
  for (const mark of marks) {
    if (mark.kind !== 'fill') {
      rest.push(mark);
      continue;
    }
    const at = fills.findIndex(
      (one) =>
        one.x === mark.x &&
        one.width === mark.width &&
        one.colour === mark.colour &&
        Math.abs(one.y + one.height - mark.y) < 0.01,
    );
    if (at < 0) fills.push(mark);
    else fills[at] = { ...fills[at]!, height: mark.y + mark.height - fills[at]!.y };
  }
  // Broad fills lie under narrow ones.
  fills.sort((a, b) => b.width - a.width);
  return [...fills, ...rest];
}
