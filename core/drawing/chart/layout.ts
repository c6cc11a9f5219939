/**
 * What a layout of a chart is: for every node its top, its feet and which way is up there, in widths of a stitch,
 * y growing upwards. Also the arcs that chains make. Lays nothing out itself.
 */
import type { Graph, Node } from './graph.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The way of some chains as they are made: from the top of one neighbour over an apex to the other. */
export interface Arc {
  readonly from: Point;
  readonly to: Point;
  /** Control point of the curve, a parabola. */
  readonly bend: Point;
  /** Length of one chain on it. */
  readonly chain: number;
}

export interface Placed {
  readonly node: Node;
  readonly top: Point;
  /** Where its stems begin, one for each foot, in the order of the feet; never empty for a stitch. */
  readonly feet: readonly Point[];
  /** Outwards or upwards here, of length 1. */
  readonly up: Point;
  /** Of a space. */
  readonly arc: Arc | null;
}

/** Where a row begins: its number stands there. */
export interface RowStart {
  readonly at: Point;
  /** From the number to the row's first stitch. */
  readonly toward: Point;
}

export interface Layout {
  readonly graph: Graph;
  /** Along lines, about a centre, along the sides of a shape with corners, between points and valleys, or about a chain. */
  readonly shape: 'rows' | 'circle' | 'sides' | 'star' | 'oval';
  readonly places: ReadonlyMap<Node, Placed>;
  readonly starts: readonly RowStart[];
}

/** Length of a chain where there is room. */
export const CHAIN = 0.82;

export const plus = (a: Point, b: Point, k = 1): Point => ({ x: a.x + b.x * k, y: a.y + b.y * k });
export const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;
export const long = (a: Point): number => Math.hypot(a.x, a.y);

export function unit(a: Point, otherwise: Point = { x: 0, y: 1 }): Point {
  const length = long(a);
  return length < 1e-9 ? otherwise : { x: a.x / length, y: a.y / length };
}

export function middle(points: readonly Point[]): Point {
  const n = Math.max(1, points.length);
  return {
    x: points.reduce((sum, point) => sum + point.x, 0) / n,
    y: points.reduce((sum, point) => sum + point.y, 0) / n,
  };
}

/** The arc of `chains` chains between two tops: it rises as far as the chains are longer than the way. */
export function arcOf(from: Point, to: Point, up: Point, chains: number): Arc {
  const way = minus(to, from);
  const between = long(way);
  const along = unit(way, { x: 1, y: 0 });
  // The ends of the arc lie beside the tops that it hangs from.
  const gap = Math.min(0.42, between * 0.22);
  const [a, b] = [plus(from, along, gap), plus(to, along, -gap)];
  const open = Math.max(0.05, between - 2 * gap);
  const wanted = chains * CHAIN;
  // Length of a shallow parabola: l = d + 8h²/3d.
  const rise = wanted > open ? Math.min(Math.sqrt((3 * open * (wanted - open)) / 8), 0.42 * chains) : 0;
  const straight = minus(up, { x: along.x * dot(up, along), y: along.y * dot(up, along) });
  const outward = unit(straight, up);
  const bend = plus(middle([a, b]), outward, 2 * rise);
  const length = arcLength({ from: a, to: b, bend, chain: 0 });
  return { from: a, to: b, bend, chain: Math.min(CHAIN, length / Math.max(1, chains)) };
}

/** Where the row above stands on an arc: at its highest, and no lower than the tops that it hangs from. */
export function overArc(arc: Arc, up: Point): Point {
  const apex = onArc(arc, 0.5);
  const ends = (dot(arc.from, up) + dot(arc.to, up)) / 2 + 0.12;
  return plus(apex, up, Math.max(0.05, ends - dot(apex, up)));
}

export function onArc({ from, to, bend }: Arc, t: number): Point {
  const s = 1 - t;
  return {
    x: s * s * from.x + 2 * s * t * bend.x + t * t * to.x,
    y: s * s * from.y + 2 * s * t * bend.y + t * t * to.y,
  };
}

const STEPS = 24;

function arcLength(arc: Arc): number {
  let length = 0;
  for (let i = 1; i <= STEPS; i++) length += long(minus(onArc(arc, i / STEPS), onArc(arc, (i - 1) / STEPS)));
  return length;
}

/** A few chains over a long way stay together in its middle: the room that each takes there. */
const LOOSE = 1.12;

/** Middles of `chains` chains on an arc, evenly along it, each with the direction in which it lies. */
export function alongArc(arc: Arc, chains: number): readonly { at: Point; way: Point }[] {
  const whole = arcLength(arc);
  const total = Math.min(whole, chains * LOOSE);
  const lead = (whole - total) / 2;
  const points: { at: Point; way: Point }[] = [];
  let done = 0;
  let before = arc.from;
  let next = 0;
  for (let i = 1; i <= STEPS * 4 && next < chains; i++) {
    const at = onArc(arc, i / (STEPS * 4));
    const step = long(minus(at, before));
    const target = lead + ((next + 0.5) / chains) * total;
    if (done + step >= target - 1e-9) {
      points.push({ at, way: unit(minus(at, before), { x: 1, y: 0 }) });
      next += 1;
    }
    done += step;
    before = at;
  }
  while (points.length < chains)
    points.push({ at: arc.to, way: unit(minus(arc.to, arc.from), { x: 1, y: 0 }) });
  return points;
}

/** Where on a foot a stitch stands: on its top, in the gap beside it, or on its own chain of a space. */
export function standOn(
  node: Node,
  foot: Node,
  places: ReadonlyMap<Node, Placed>,
  /** Place of the node among those on the same foot, from -1 to 1 in the direction of `right`. */
  aside: number,
  right: Point,
): Point {
  const placed = places.get(foot);
  if (placed === undefined) return { x: 0, y: 0 };
  if (node.beside !== null) {
    const other = places.get(node.beside);
    if (other !== undefined) {
      const at = middle([placed.top, other.top]);
      return plus(at, placed.up, foot.kind === 'stitch' ? -0.25 : 0);
    }
  }
  if (placed.arc !== null) {
    const forwards = dot(minus(placed.arc.to, placed.arc.from), right) >= 0;
    const { chain } = node.making ?? { chain: null };
    const { chains } = foot.site;
    if (chain !== null) {
      // A row that goes back meets the last chain first.
      const nth = node.way === foot.way ? chain - 1 : chains - chain;
      const spot = alongArc(placed.arc, chains)[nth];
      if (spot !== undefined) return plus(spot.at, placed.up, 0.16);
    }
    const taken = Math.min(1, (chains * LOOSE) / arcLength(placed.arc));
    const t = 0.5 + (forwards ? 1 : -1) * aside * 0.24 * taken;
    return plus(onArc(placed.arc, t), placed.up, 0.16);
  }
  if (foot.kind === 'ring') return plus(placed.top, right, aside * 0.3);
  return plus(placed.top, right, aside * 0.1);
}

/** How far below the top of a stitch the next one hooks around its post, in widths of a stitch, and as a part of it. */
const HOOKED = { far: 0.7, part: 0.58 } as const;

/**
 * The point on a stitch that a post stitch hooks around. On a tall one it is near the top: stems that hook around one
 * another row by row would else lie along each other.
 */
export function onPost(placed: Placed): Point {
  const foot = middle(placed.feet.length > 0 ? placed.feet : [placed.top]);
  const stem = minus(foot, placed.top);
  return plus(placed.top, stem, Math.min(HOOKED.part, HOOKED.far / Math.max(1e-6, long(stem))));
}

/** How far a stitch with this much lean still reaches: the ends of a fan stand a little lower. */
export function reach(height: number, lean: number): number {
  const bent = Math.min(1, Math.abs(lean) / (1.7 * height));
  return height * (0.72 + 0.28 * Math.sqrt(1 - bent * bent));
}
