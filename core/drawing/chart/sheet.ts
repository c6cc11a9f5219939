/**
 * A chart on its sheet: the laid out stitches as shapes in named groups, row numbers where rows start, the bracket
 * of the repeat. Right- and wrong-side rows differ in tone, in weight and by their label. Decides no place of a
 * stitch, and says nothing that the graph does not say.
 */
import { hasSymbol } from '../../trade/symbols.ts';
import { group, path, type Scene, type Shape, toHundredth } from '../scene.ts';
import { type ChartRow, type Graph, isPlainRound, type Node } from './graph.ts';
import { alongArc, type Layout, middle, type Placed, type Point, plus, unit } from './layout.ts';
import {
  type Bracket,
  bracket,
  bracketOf,
  type RoundRepeat,
  roundBracket,
  roundLabels,
  roundReach,
  roundRepeat,
  rowLabel,
} from './margin.ts';
import { edgeShapes } from './row-edges.ts';
import { chain, type Ink, oval, type Sign, slip, stack, stitch } from './symbols.ts';
import { type Extent, extentOf, stateOf, stateOfNode, type Window } from './window.ts';

/** Size and ink of a chart. */
export interface SheetStyle {
  /** Width of a stitch, in points. */
  readonly unit: number;
  /** Height of the type, in points. */
  readonly type: number;
  /** No word is smaller than this, in points. */
  readonly smallest: number;
  /** Letters of stitches that have no symbol, by id. */
  readonly letters: ReadonlyMap<string, string>;
}

/** Strokes of the two sorts of rows, as parts of the usual one. */
export const THICK = 1.12;
export const THIN = 0.66;

/** How a row is inked: the second of two sorts is drawn thinner and in the softer tone. */
export function inkOf(row: ChartRow, index: number, unit: number): Ink {
  const second = row.side === null || isPlainRound(row) ? index % 2 === 1 : row.side === 'WS';
  const stroke = unit / 13;
  return second
    ? { role: 'other', stroke: stroke * THIN, unit }
    : { role: 'outline', stroke: stroke * THICK, unit };
}

/** How many strands are drawn where a text does not say: the usual ones (common practice, no source). */
const USUAL: Readonly<Record<string, number>> = { cluster: 3, bobble: 5, popcorn: 5, puff: 3 };

/** Stems of a stitch that share one foot and one top. */
export function strandsOf(node: Node): number {
  const id = node.site.stitch ?? '';
  const together = /tog(\d+)\./.exec(id);
  if (together !== null) return Number(together[1]);
  const gathered = /^(cluster|bobble|popcorn|puff)\./.exec(id);
  if (gathered === null) return 1;
  return node.making?.parts ?? USUAL[gathered[1]!]!;
}

export function signOf(
  node: Node,
  placed: Placed,
  letters: ReadonlyMap<string, string>,
  to: (p: Point) => Point,
): Sign {
  const id = node.site.stitch ?? node.site.base ?? 't1';
  const loop = node.making?.loop ?? null;
  return {
    id,
    top: to(placed.top),
    feet: placed.feet.map(to),
    up: { x: placed.up.x, y: -placed.up.y },
    strands: placed.feet.length > 1 ? 1 : strandsOf(node),
    loop: loop === 'both' ? null : loop,
    letter: hasSymbol(id) ? null : (letters.get(id) ?? '?'),
  };
}

/** Least room between what stands about the stitches and the edge of the sheet, in widths of a stitch. */
const EDGE = 0.2;

/** How a part lies on its sheet. */
interface Frame {
  readonly width: number;
  readonly height: number;
  readonly box: Extent;
  /** From widths of a stitch to points. */
  readonly to: (point: Point) => Point;
  readonly repeat: Bracket | null;
  readonly around: RoundRepeat | null;
}

function frameOf(layout: Layout, style: SheetStyle, window: Window | null): Frame {
  const { unit: u, type } = style;
  const { graph } = layout;
  const box = extentOf(layout, window);
  const flat = graph.form === 'flat';
  const labels = flat ? 2.2 * u + type * 2.6 : 1.2 * u;
  const [before, after] = flat ? sidesOf(graph) : [true, true];
  const repeat = flat ? bracketOf(layout, window) : null;
  const around = layout.shape === 'circle' || layout.shape === 'star' ? roundRepeat(layout, window) : null;
  const under = repeat === null ? 0.9 * u : 1.6 * u + type * 1.4;
  const ring = around === null ? 0 : 1.2 * u + type * 1.2;
  // The arc of a repeat is about all rounds, of which a part may show fewer.
  const reach = around === null ? box : roundReach(around, style);
  const beyond = (least: number, far: number): number => Math.max(least, far * u + EDGE * u);
  const left = beyond((before ? labels : 1.2 * u) + ring, box.left - reach.left);
  const right = beyond((after ? labels : 1.2 * u) + ring, reach.right - box.right);
  const top = beyond(1.1 * u + ring, reach.high - box.high);
  const foot = beyond(under + ring, box.low - reach.low);
  return {
    width: toHundredth((box.right - box.left) * u + left + right),
    height: toHundredth((box.high - box.low) * u + top + foot),
    box,
    to: ({ x, y }) => ({
      x: toHundredth((x - box.left) * u + left),
      y: toHundredth((box.high - y) * u + top),
    }),
    repeat,
    around,
  };
}

/** Size of a layout on its sheet, or of the part of it in a window. */
export function sheetSize(
  layout: Layout,
  style: SheetStyle,
  window: Window | null,
): { readonly width: number; readonly height: number } {
  return frameOf(layout, style, window);
}

/** Draws a layout, or the part of it in a window. The title and the words of the scene are the caller's. */
export function drawSheet(
  layout: Layout,
  style: SheetStyle,
  window: Window | null,
): Pick<Scene, 'width' | 'height' | 'shapes'> {
  const { graph } = layout;
  const { width, height, box, to, repeat, around } = frameOf(layout, style, window);
  const shapes: Shape[] = [baseShapes(layout, style, to, window)];
  graph.rows.forEach((row, index) => {
    shapes.push(rowShapes(layout, row, index, style, to, window));
  });
  if (graph.form === 'flat')
    graph.rows.forEach((row, index) => {
      const label = rowLabel(layout, row, index, style, to, window, box);
      if (label !== null) shapes.push(label);
    });
  else shapes.push(...roundLabels(layout, style, to, window, { width, height, shapes: [...shapes] }));
  if (repeat !== null) shapes.push(bracket(repeat, box, style, to));
  if (around !== null) shapes.push(roundBracket(around, style, to));
  return { width, height, shapes };
}

/** Are there row numbers at the left and at the right? */
function sidesOf(graph: Graph): [boolean, boolean] {
  return [graph.rows.some((row) => row.way === 1), graph.rows.some((row) => row.way === -1)];
}

function baseShapes(
  layout: Layout,
  style: SheetStyle,
  to: (p: Point) => Point,
  window: Window | null,
): Shape {
  const { graph, places } = layout;
  const u = style.unit;
  const ink: Ink = { role: 'outline', stroke: u / 13, unit: u };
  const shapes: Shape[] = [];
  if (graph.baseKind === 'ring') {
    if (graph.form === 'rounds') {
      const radius = holeOf(layout);
      if (graph.ring > 0) {
        const r = Math.max(0.28, radius - 0.2);
        for (let i = 0; i < graph.ring; i++) {
          const angle = (2 * Math.PI * i) / graph.ring - Math.PI / 2;
          const at = to({ x: Math.cos(angle) * r, y: Math.sin(angle) * r });
          const length = Math.min(0.82, ((2 * Math.PI * r) / graph.ring) * 0.95) * u;
          shapes.push(chain(at, { x: -Math.sin(angle), y: -Math.cos(angle) }, length, ink));
        }
      } else
        shapes.push(oval(to({ x: 0, y: 0 }), { x: 1, y: 0 }, (radius - 0.08) * u, (radius - 0.08) * u, ink));
    } else if (graph.rows[0]!.kind === 'round') {
      shapes.push(...openedRing(layout, ink, to, window));
    } else {
      const placed = places.get(graph.base[0]!);
      const at = to(placed?.top ?? { x: 0, y: 0 });
      shapes.push(oval({ x: at.x, y: at.y + 0.4 * u }, { x: 1, y: 0 }, 0.42 * u, 0.42 * u, ink));
    }
    return group(shapes, 0, 0, 0, `ring ${graph.ring}`);
  }
  const soft: Ink = { ...ink, role: 'other', stroke: ink.stroke * 0.72 };
  for (const [node, placed] of places) {
    if (node.row >= 0 || node.kind === 'ring') continue;
    const state = stateOf(placed, window);
    if (state === 'out') continue;
    if (node.kind === 'chain') {
      const at = to(plus(placed.top, placed.up, -0.24));
      const one = chain(at, { x: placed.up.y, y: placed.up.x }, 0.86 * u, ink);
      shapes.push(state === 'again' ? { ...one, name: 'again' } : one);
    } else if (placed.arc !== null) {
      shapes.push(
        ...alongArc(placed.arc, node.site.chains).map(({ at, way }) => ({
          ...chain(to(at), { x: way.x, y: -way.y }, placed.arc!.chain * u, soft),
          name: 'below',
        })),
      );
    } else {
      const at = to(placed.top);
      const half = 0.32 * u;
      shapes.push(
        group(
          [
            path(
              [
                ['M', at.x - half, at.y],
                ['L', at.x + half, at.y],
              ],
              { role: 'other', stroke: ink.stroke },
            ),
          ],
          0,
          0,
          0,
          'below',
        ),
      );
    }
  }
  return group(shapes, 0, 0, 0, graph.baseKind === 'chain' ? 'foundation' : 'row below');
}

/** A ring opened out under its round: its chains in a line, or a line for one of yarn. */
function openedRing(
  { graph, places }: Layout,
  ink: Ink,
  to: (p: Point) => Point,
  window: Window | null,
): Shape[] {
  const feet = graph.rows[0]!.nodes.flatMap((node) => places.get(node)?.feet ?? []);
  const shown = feet.filter((foot) => window === null || window.state(foot) !== 'out');
  const level = Math.min(...feet.map(({ y }) => y)) - (graph.ring === 0 ? 0.12 : 0.26);
  const ends = (points: readonly Point[]): readonly [number, number] => [
    Math.min(...points.map(({ x }) => x)) - 0.4,
    Math.max(...points.map(({ x }) => x)) + 0.4,
  ];
  if (shown.length === 0) return [];
  const [from, till] = ends(graph.ring === 0 ? shown : feet);
  if (graph.ring === 0) {
    const [a, b] = [to({ x: from, y: level }), to({ x: till, y: level })];
    return [
      path(
        [
          ['M', a.x, a.y],
          ['L', b.x, b.y],
        ],
        { role: ink.role, stroke: ink.stroke },
      ),
    ];
  }
  const step = (till - from) / graph.ring;
  return Array.from({ length: graph.ring }, (_, i) => ({ x: from + (i + 0.5) * step, y: level }))
    .filter((at) => window === null || window.state(at) !== 'out')
    .map((at) => chain(to(at), { x: 1, y: 0 }, Math.min(0.86, step * 0.95) * ink.unit, ink));
}

/** Radius of the hole that rounds are laid about. */
function holeOf(layout: Layout): number {
  let r = Number.POSITIVE_INFINITY;
  for (const node of layout.graph.rows[0]!.nodes) {
    const placed = layout.places.get(node);
    if (placed === undefined || node.feet[0]?.kind !== 'ring') continue;
    for (const foot of placed.feet) r = Math.min(r, Math.hypot(foot.x, foot.y));
  }
  return Number.isFinite(r) && r > 0.1 ? r : 0.5;
}

function rowShapes(
  layout: Layout,
  row: ChartRow,
  index: number,
  style: SheetStyle,
  to: (p: Point) => Point,
  window: Window | null,
): Shape {
  const { places } = layout;
  const u = style.unit;
  const ink = inkOf(row, index, u);
  const shapes: Shape[] = [];
  const { trace } = row;
  const stood = trace.stood;
  row.nodes.forEach((node, i) => {
    const placed = places.get(node);
    if (placed === undefined) return;
    const state = stateOf(placed, window);
    if (state === 'out') return;
    const { site } = node;
    let made: Shape;
    if (node.kind === 'space') {
      const closes =
        trace.round && trace.closing !== null && trace.closing !== 'slip' && i === row.nodes.length - 1;
      made = space(node, placed, closes ? trace.closing : null, ink, to);
    } else if (node.kind === 'picot') made = picot(node, placed, ink, to);
    else if (node.kind === 'turning' || site.turning) {
      const upright = stood !== null && i === 0 ? stood.upright : site.chains;
      made =
        upright > 0 || node.kind === 'turning'
          ? standing(node, placed, upright, ink, to)
          : group([], 0, 0, 0, 'turning 0');
    } else if (node.kind === 'stitch') made = stitch(signOf(node, placed, style.letters, to), ink);
    else return;
    shapes.push(state === 'again' && made.kind === 'group' ? { ...made, name: `again ${made.name}` } : made);
  });
  const begins = stateOfNode(row.nodes[0], places, window) === 'in';
  const ends = stateOfNode(row.nodes[row.nodes.length - 1], places, window) === 'in';
  shapes.push(...edgeShapes(layout, row, index, ink, to, begins, ends));
  return group(shapes, 0, 0, 0, `row ${index}`);
}

function space(node: Node, placed: Placed, closing: string | null, ink: Ink, to: (p: Point) => Point): Shape {
  const { arc } = placed;
  const total = node.site.chains;
  const name = `space ${total}`;
  if (arc === null) return group([], 0, 0, 0, name);
  const tall = closing === null ? 0 : Math.min(total, Number(/\d/.exec(closing)?.[0] ?? 0));
  const spots = alongArc(arc, total);
  const shapes: Shape[] = spots
    .slice(0, total - tall)
    .map(({ at, way }) => chain(to(at), { x: way.x, y: -way.y }, arc.chain * ink.unit, ink));
  if (closing !== null && tall > 0) {
    const [a, b] = [spots[total - tall]!.at, arc.to];
    const up = unit({ x: a.x - b.x, y: a.y - b.y });
    const sign: Sign = {
      id: closing,
      top: to(a),
      feet: [to(b)],
      up: { x: up.x, y: -up.y },
      strands: 1,
      loop: null,
      letter: null,
    };
    shapes.push({ ...stitch(sign, { ...ink, unit: ink.unit * 0.85 }), name: `closing ${closing}` });
  }
  return group(shapes, 0, 0, 0, name);
}

function picot(node: Node, placed: Placed, ink: Ink, to: (p: Point) => Point): Shape {
  const n = Math.max(1, node.site.chains);
  const foot = placed.feet[0] ?? placed.top;
  const up = placed.up;
  const r = Math.max(0.26, (n * 0.66) / (2 * Math.PI));
  const centre = plus(foot, up, r + 0.2);
  const start = Math.atan2(-up.y, -up.x);
  const shapes: Shape[] = [];
  for (let i = 0; i < n; i++) {
    const angle = start + ((i + 1) * 2 * Math.PI) / (n + 1);
    const at = plus(centre, { x: Math.cos(angle), y: Math.sin(angle) }, r);
    const way = { x: -Math.sin(angle), y: -Math.cos(angle) };
    shapes.push(chain(to(at), way, Math.min(0.62, ((2 * Math.PI * r) / (n + 1)) * 0.98) * ink.unit, ink));
  }
  shapes.push(slip(to(plus(foot, up, 0.16)), { x: up.y, y: up.x }, { ...ink, unit: ink.unit * 0.8 }));
  return group(shapes, 0, 0, 0, `picot ${node.site.chains}`);
}

function standing(node: Node, placed: Placed, upright: number, ink: Ink, to: (p: Point) => Point): Shape {
  const foot = middle(placed.feet.length > 0 ? placed.feet : [placed.top]);
  const counts = node.kind === 'stitch';
  const name = counts ? `turning ${upright} ${node.site.stitch}` : `turning ${upright}`;
  return group(stack(to(foot), to(placed.top), upright, ink), 0, 0, 0, name);
}
