/**
 * What part of a laid out chart is drawn, and how far it reaches. Holds no shape.
 */
import type { Node } from './graph.ts';
import type { Layout, Placed, Point } from './layout.ts';

export type State = 'in' | 'again' | 'out';

/** A part of a chart. */
export interface Window {
  /** Is a point drawn in this part, or has the part before drawn it already? */
  readonly state: (at: Point) => State;
}

export const stateOf = ({ top }: Placed, window: Window | null): State =>
  window === null ? 'in' : window.state(top);

export function stateOfNode(
  node: Node | undefined,
  places: ReadonlyMap<Node, Placed>,
  window: Window | null,
): State {
  const placed = node === undefined ? undefined : places.get(node);
  return placed === undefined ? 'in' : stateOf(placed, window);
}

export interface Extent {
  left: number;
  right: number;
  low: number;
  high: number;
}

/** How far the nodes reach that a part draws, in widths of a stitch. */
export function extentOf(layout: Layout, window: Window | null): Extent {
  const box: Extent = { left: Infinity, right: -Infinity, low: Infinity, high: -Infinity };
  const take = ({ x, y }: Point): void => {
    box.left = Math.min(box.left, x);
    box.right = Math.max(box.right, x);
    box.low = Math.min(box.low, y);
    box.high = Math.max(box.high, y);
  };
  for (const placed of layout.places.values()) {
    if (stateOf(placed, window) === 'out') continue;
    for (const point of [placed.top, ...placed.feet]) take(point);
    if (placed.arc !== null) {
      take(placed.arc.from);
      take(placed.arc.to);
    }
  }
  if (!Number.isFinite(box.left)) return { left: 0, right: 1, low: 0, high: 1 };
  return box;
}
