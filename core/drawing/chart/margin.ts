/**
 * What stands about the stitches of a chart: row numbers where rows start, with the way they are worked, and the
 * bracket of the repeat. Draws no stitch.
 */
import {
  group,
  type PathStep,
  path,
  type Role,
  type Scene,
  type Shape,
  toHundredth,
  words,
} from '../scene.ts';
import { textWidth } from '../text-width.ts';
import { clearSpots } from './clear-spots.ts';
import { type ChartRow, isPlainRound, type Node } from './graph.ts';
import type { Layout, Point } from './layout.ts';
import type { SheetStyle } from './sheet.ts';
import { type Extent, stateOfNode, type Window } from './window.ts';

/** The number of a row worked flat, where it starts, with its side and the way it goes; null where none of it shows. */
export function rowLabel(
  layout: Layout,
  row: ChartRow,
  index: number,
  style: SheetStyle,
  to: (p: Point) => Point,
  window: Window | null,
  box: Extent,
): Shape | null {
  const { unit: u, type, smallest } = style;
  const start = layout.starts[index]!;
  const shownNodes = (nodes: readonly Node[]): boolean =>
    nodes.some((node) => stateOfNode(node, layout.places, window) !== 'out');
  if (!shownNodes(row.nodes)) return null;
  const shown = row.number === null ? '' : String(row.number);
  const name = `label ${row.number ?? ''} ${row.side ?? ''}`;
  const role: Role = 'outline';
  const at = to(start.at);
  // In a part that does not hold the row's start the number stands at the part's edge.
  const inward = { x: start.at.x + row.way * 1.4, y: start.at.y };
  const x =
    window === null || window.state(inward) !== 'out'
      ? at.x
      : to({ x: row.way === 1 ? box.left - 0.9 : box.right + 0.9, y: 0 }).x;
  const arrow = arrowShape({ x, y: at.y }, { x: row.way, y: 0 }, u);
  const side = row.side === null || isPlainRound(row) ? '' : row.side;
  const anchor = row.way === 1 ? 'end' : 'start';
  const tx = x - row.way * 0.55 * u;
  const shapes: Shape[] = [arrow];
  if (shown !== '')
    shapes.push(words(shown, tx, at.y + type * 0.34, { size: type, anchor, bold: true, role }));
  if (side !== '') {
    const off = shown === '' ? 0 : type * (0.62 * shown.length + 0.3);
    shapes.push(
      words(side, tx - row.way * off, at.y + type * 0.34, {
        size: Math.max(type * 0.72, smallest),
        anchor,
        role: row.side === 'WS' ? 'other' : role,
      }),
    );
  }
  return group(shapes, 0, 0, 0, name);
}

/** The numbers of rounds that are not laid out flat, each as near to where its round begins as it can be read. */
export function roundLabels(
  layout: Layout,
  style: SheetStyle,
  to: (p: Point) => Point,
  window: Window | null,
  drawn: Pick<Scene, 'width' | 'height' | 'shapes'>,
): readonly Shape[] {
  const { unit: u, type, smallest } = style;
  const size = Math.max(Math.min(type, u * 0.85), smallest);
  const rounds = layout.graph.rows.flatMap((row, index) => {
    const [first] = row.nodes;
    const isShown = first === undefined || stateOfNode(first, layout.places, window) !== 'out';
    return row.number === null || !isShown ? [] : [{ row, at: to(layout.starts[index]!.at) }];
  });
  const spots = clearSpots(
    rounds.map(({ row, at }) => ({ words: String(row.number), at, size })),
    drawn,
    u,
  );
  return rounds.map(({ row }, i) => {
    const { x, y } = spots[i]!;
    const said = words(String(row.number), toHundredth(x), toHundredth(y + size * 0.34), {
      size,
      anchor: 'middle',
      bold: true,
      role: 'outline',
    });
    return group([said], 0, 0, 0, `label ${row.number} ${row.side ?? ''}`);
  });
}

function arrowShape(at: Point, way: Point, u: number): Shape {
  const tail: Point = { x: at.x - way.x * 0.32 * u, y: at.y };
  const tip: Point = { x: at.x + way.x * 0.32 * u, y: at.y };
  const steps: PathStep[] = [
    ['M', tail.x, tail.y],
    ['L', tip.x, tip.y],
    ['M', tip.x - way.x * 0.2 * u, tip.y - 0.14 * u],
    ['L', tip.x, tip.y],
    ['L', tip.x - way.x * 0.2 * u, tip.y + 0.14 * u],
  ];
  return path(steps, { role: 'measure', stroke: u / 16 });
}

export interface Bracket {
  readonly left: number;
  readonly right: number;
  readonly stitches: number;
}

/** A row that is wider than the lowest line by this has fanned out. */
const FANNED = 1.4;

/** What one pass of the repeat spans, by the lowest row that has one. */
export function bracketOf({ graph, places }: Layout, window: Window | null): Bracket | null {
  const widthOf = (nodes: readonly Node[]): number => {
    const spots = nodes.flatMap((node) => places.get(node)?.top.x ?? []);
    return spots.length === 0 ? 0 : Math.max(...spots) - Math.min(...spots);
  };
  const lowest = widthOf(graph.baseKind === 'ring' ? graph.rows[0]!.nodes : graph.base);
  for (const row of graph.rows) {
    const passes = row.bounds.length - 1;
    // Under a row that has fanned out, a bracket at the foot of the chart would point at other stitches.
    if (passes < 2 || widthOf(row.nodes) > FANNED * lowest + 2) continue;
    const at = (pass: number): number | null => {
      const nodes = row.nodes.slice(row.bounds[pass]!, row.bounds[pass + 1]!);
      const spots = nodes.flatMap((node) => places.get(node)?.top.x ?? []);
      return spots.length === 0 ? null : Math.min(...spots) + (Math.max(...spots) - Math.min(...spots)) / 2;
    };
    const shown = (x: number): boolean => window === null || window.state({ x, y: 0 }) !== 'out';
    // The middle one, or else the first that lies whole in the part.
    const order = Array.from(
      { length: passes - 1 },
      (_, k) => (k + Math.floor((passes - 1) / 2)) % (passes - 1),
    );
    for (const pass of order) {
      const [own, next] = [at(pass), at(pass + 1)];
      if (own === null || next === null) continue;
      const half = Math.abs(next - own) / 2;
      const found = { left: own - half, right: own + half, stitches: taken(row, pass) };
      if (found.stitches >= 1 && half >= 0.4 && shown(found.left) && shown(found.right)) return found;
    }
  }
  return null;
}

/** Stitches or chains of the row below that one pass takes. */
function taken(row: ChartRow, pass: number): number {
  const { below } = row.trace;
  const spot = (from: number, to: number): number => {
    for (const node of row.nodes.slice(from, to)) {
      const at = node.feet[0] === undefined ? -1 : below.indexOf(node.feet[0].site);
      if (at >= 0) return at;
    }
    return -1;
  };
  const a = spot(row.bounds[pass]!, row.bounds[pass + 1]!);
  const b = spot(row.bounds[pass + 1]!, row.bounds[pass + 2] ?? row.nodes.length);
  if (a < 0 || b < 0) return 0;
  let n = 0;
  for (let i = Math.min(a, b); i < Math.max(a, b); i++) {
    const site = below[i]!;
    n += site.kind === 'space' ? site.chains : site.kind === 'stitch' || site.kind === 'chain' ? 1 : 0;
  }
  return n;
}

export function bracket(
  { left, right, stitches }: Bracket,
  box: Extent,
  { unit: u, type, smallest }: SheetStyle,
  to: (p: Point) => Point,
): Shape {
  const y = to({ x: 0, y: box.low }).y + 0.9 * u;
  const [a, b] = [to({ x: left, y: 0 }).x, to({ x: right, y: 0 }).x];
  const line = path(
    [
      ['M', a, y - 0.35 * u],
      ['L', a, y],
      ['L', b, y],
      ['L', b, y - 0.35 * u],
    ],
    { role: 'measure', stroke: u / 12 },
  );
  const said = words(
    `repeat of ${stitches} ${stitches === 1 ? 'stitch' : 'stitches'}`,
    (a + b) / 2,
    y + type * 1.15,
    {
      size: Math.max(type * 0.85, smallest),
      anchor: 'middle',
      role: 'measure',
    },
  );
  return group([line, said], 0, 0, 0, `repeat ${stitches}`);
}

export interface RoundRepeat {
  readonly from: number;
  readonly to: number;
  readonly radius: number;
  readonly times: number;
}

/** A pass of the outermost round that has a repeat, one of those that are drawn, as an arc outside all rounds. */
export function roundRepeat({ graph, places }: Layout, window: Window | null): RoundRepeat | null {
  const row = graph.rows[graph.rows.length - 1]!;
  const passes = row.bounds.length - 1;
  if (passes < 2 || passes > 40) return null;
  const nodesOf = (pass: number): readonly Node[] =>
    row.nodes.slice(row.bounds[pass]!, row.bounds[pass + 1]!);
  const isDrawn = (node: Node | undefined): boolean => stateOfNode(node, places, window) === 'in';
  // In the middle of the round it is clear of where the rounds begin.
  const pass = [Math.floor(passes / 2), ...Array.from({ length: passes }, (_, i) => i)].find(
    (i) => isDrawn(nodesOf(i)[0]) && isDrawn(nodesOf(i).at(-1)),
  );
  if (pass === undefined) return null;
  const nodes = nodesOf(pass);
  const angle = (node: Node | undefined): number | null => {
    const placed = node === undefined ? undefined : places.get(node);
    return placed === undefined ? null : Math.atan2(placed.top.y, placed.top.x);
  };
  const a = angle(nodes[0]);
  let b = angle(nodes[nodes.length - 1]);
  if (a === null || b === null) return null;
  const way = row.way;
  while (way * (b - a) < 0) b += way * 2 * Math.PI;
  let radius = 0;
  for (const { top } of places.values()) radius = Math.max(radius, Math.hypot(top.x, top.y));
  const pad = 0.45 / radius;
  return { from: a - way * pad, to: b + way * pad, radius: radius + 0.9, times: passes };
}

/** Steps in which the arc of a repeat is drawn. */
const STEPS = 24;

/** What is said beside an arc, where, and from which end. */
function saidOf(arc: RoundRepeat, { type, smallest }: SheetStyle) {
  const mid = (arc.from + arc.to) / 2;
  return {
    words: `${arc.times} times`,
    size: Math.max(type * 0.85, smallest),
    at: polar(mid, arc.radius + 0.9),
    anchor: Math.cos(mid) > 0.4 ? 'start' : Math.cos(mid) < -0.4 ? 'end' : 'middle',
  } as const;
}

const polar = (angle: number, r: number): Point => ({ x: Math.cos(angle) * r, y: Math.sin(angle) * r });

const arcPoints = ({ from, to, radius }: RoundRepeat): readonly Point[] =>
  Array.from({ length: STEPS + 1 }, (_, i) => polar(from + ((to - from) * i) / STEPS, radius));

/** How far the arc of a repeat and its words reach, in widths of a stitch. */
export function roundReach(arc: RoundRepeat, style: SheetStyle): Extent {
  const { words: said, size, at, anchor } = saidOf(arc, style);
  const wide = textWidth(said, size) / style.unit;
  const left = at.x - (anchor === 'start' ? 0 : anchor === 'end' ? wide : wide / 2);
  const high = size / style.unit;
  const points = [...arcPoints(arc), { x: left, y: at.y - high / 2 }, { x: left + wide, y: at.y + high / 2 }];
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) };
}

export function roundBracket(arc: RoundRepeat, style: SheetStyle, to: (p: Point) => Point): Shape {
  const ends = [polar(arc.from, arc.radius - 0.35), polar(arc.to, arc.radius - 0.35)] as const;
  const points = [ends[0], ...arcPoints(arc), ends[1]].map(to);
  const steps = points.map(({ x, y }, i): PathStep => [i === 0 ? 'M' : 'L', x, y]);
  const { words: said, size, at, anchor } = saidOf(arc, style);
  const spot = to(at);
  return group(
    [
      path(steps, { role: 'measure', stroke: style.unit / 12 }),
      words(said, spot.x, spot.y + style.type * 0.35, { size, anchor, role: 'measure' }),
    ],
    0,
    0,
    0,
    `repeat times ${arc.times}`,
  );
}
