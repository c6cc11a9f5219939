/**
 * A chart on its sheet: the laid out stitches as shapes in named groups, row numbers where rows start, the bracket
 * of the repeat. Right- and wrong-side rows differ in tone, in weight and by their label. Decides no place of a
 * stitch, and says nothing that the graph does not say.
 */
import { hasSymbol } from '../../trade/symbols.ts';
import { group, type PathStep, path, type Role, type Scene, type Shape, words } from '../scene.ts';
import { cornersOf } from './corners.ts';
import type { ChartRow, Graph, Node } from './graph.ts';
import { alongArc, type Layout, middle, type Placed, type Point, plus, unit } from './layout.ts';
import { standsUnseen } from './rounds.ts';
import { chain, type Ink, oval, type Sign, slip, stitch, triangle } from './symbols.ts';

/** Size and ink of a chart. */
export interface SheetStyle {
  /** Width of a stitch, in points. */
  readonly unit: number;
  /** Height of the type, in points. */
  readonly type: number;
  /** Letters of stitches that have no symbol, by id. */
  readonly letters: ReadonlyMap<string, string>;
}

/** A part of a chart: what lies between two places along its rows. */
export interface Window {
  readonly from: number;
  readonly to: number;
  /** Up to here the part before has drawn it already. */
  readonly again: number;
}

/** How a row is inked: the second of two sorts is drawn thinner and in the softer tone. */
export function inkOf(row: ChartRow, index: number, unit: number): Ink {
  const second = row.side === null || isPlainRound(row) ? index % 2 === 1 : row.side === 'WS';
  const stroke = unit / 13;
  return second
    ? { role: 'other', stroke: stroke * 0.72, unit }
    : { role: 'outline', stroke: stroke * 1.08, unit };
}

function isPlainRound(row: ChartRow): boolean {
  return row.kind === 'round' && !row.trace.turned;
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

interface Extent {
  left: number;
  right: number;
  low: number;
  high: number;
}

function extentOf(layout: Layout, window: Window | null): Extent {
  const box: Extent = { left: Infinity, right: -Infinity, low: Infinity, high: -Infinity };
  const take = ({ x, y }: Point): void => {
    box.left = Math.min(box.left, x);
    box.right = Math.max(box.right, x);
    box.low = Math.min(box.low, y);
    box.high = Math.max(box.high, y);
  };
  for (const placed of layout.places.values()) {
    if (window !== null && !inWindow(placed, window)) continue;
    for (const point of [placed.top, ...placed.feet]) take(point);
    if (placed.arc !== null) {
      take(placed.arc.from);
      take(placed.arc.to);
    }
  }
  if (!Number.isFinite(box.left)) return { left: 0, right: 1, low: 0, high: 1 };
  return box;
}

const inWindow = ({ top }: Placed, { from, to }: Window): boolean => top.x >= from && top.x <= to;

/** Width of a whole layout, in widths of a stitch. */
export function spanOf(layout: Layout): { left: number; right: number; low: number; high: number } {
  return extentOf(layout, null);
}

/** Draws a layout, or the part of it in a window. The title and the words of the scene are the caller's. */
export function drawSheet(
  layout: Layout,
  style: SheetStyle,
  window: Window | null,
): Pick<Scene, 'width' | 'height' | 'shapes'> {
  const { unit: u, type } = style;
  const { graph } = layout;
  const box = extentOf(layout, window);
  const flat = graph.form === 'flat';
  const labels = flat ? 2.2 * u + type * 2.6 : 1.2 * u;
  const [before, after] = flat ? sidesOf(graph, window, box) : [true, true];
  const left = before ? labels : 1.2 * u;
  const right = after ? labels : 1.2 * u;
  const repeat = flat ? bracketOf(layout, window) : null;
  const arc = flat || cornersOf(graph.rows) !== null ? null : roundRepeat(layout);
  const under = repeat === null ? 0.9 * u : 1.6 * u + type * 1.4;
  const around = arc === null ? 0 : 1.2 * u + type * 1.2;
  const width = (box.right - box.left) * u + left + right + 2 * around;
  const top = 1.1 * u + around;
  const height = (box.high - box.low) * u + top + under + around;
  const to = ({ x, y }: Point): Point => ({
    x: round((x - box.left) * u + left + around),
    y: round((box.high - y) * u + top),
  });
  const shapes: Shape[] = [baseShapes(layout, style, to, window)];
  graph.rows.forEach((row, index) => {
    shapes.push(rowShapes(layout, row, index, style, to, window));
  });
  graph.rows.forEach((row, index) => {
    const label = rowLabel(layout, row, index, style, to, window, box);
    if (label !== null) shapes.push(label);
  });
  if (repeat !== null) shapes.push(bracket(repeat, box, style, to));
  if (arc !== null) shapes.push(roundBracket(arc, style, to));
  return { width: round(width), height: round(height), shapes };
}

const round = (x: number): number => Math.round(x * 100) / 100;

/** Are there row numbers at the left and at the right? */
function sidesOf(graph: Graph, window: Window | null, _box: Extent): [boolean, boolean] {
  void window;
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
      const at = to({ x: placed.top.x, y: placed.top.y - 0.24 });
      const one = chain(at, { x: 1, y: 0 }, 0.86 * u, ink);
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

type State = 'in' | 'again' | 'out';

function stateOf(placed: Placed, window: Window | null): State {
  if (window === null) return 'in';
  if (!inWindow(placed, window)) return 'out';
  return placed.top.x < window.again ? 'again' : 'in';
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
      made = space(node, placed, closes ? trace.closing : null, ink, style, to);
    } else if (node.kind === 'picot') made = picot(node, placed, ink, to);
    else if (node.kind === 'turning' || site.turning) {
      const upright = stood !== null && i === 0 ? stood.upright : site.chains;
      made =
        upright > 0 || node.kind === 'turning'
          ? stack(node, placed, upright, ink, to)
          : group([], 0, 0, 0, 'turning 0');
    } else if (node.kind === 'stitch') made = stitch(signOf(node, placed, style.letters, to), ink);
    else return;
    shapes.push(state === 'again' && made.kind === 'group' ? { ...made, name: `again ${made.name}` } : made);
  });
  if (window === null || window.again === Number.NEGATIVE_INFINITY) {
    shapes.push(...edges(layout, row, index, ink, to));
  }
  return group(shapes, 0, 0, 0, `row ${index}`);
}

/** What begins and ends a row besides its stitches: slip stitches, chains that do not count, yarn cut or joined. */
function edges(layout: Layout, row: ChartRow, index: number, ink: Ink, to: (p: Point) => Point): Shape[] {
  const { places, graph } = layout;
  const { trace } = row;
  const shapes: Shape[] = [];
  const start = layout.starts[index]!;
  const first = row.nodes.find((node) => node.kind !== 'picot');
  const placed = first === undefined ? undefined : places.get(first);
  const up = placed?.up ?? { x: 0, y: 1 };
  const back = { x: -start.toward.x, y: -start.toward.y };
  const { stood } = trace;
  const unseen = standsUnseen(row);
  if (unseen && stood !== null && placed !== undefined) {
    const under = middle(placed.feet.length > 0 ? placed.feet : [placed.top]);
    const tall = Math.min(stood.upright * 0.78, 4);
    let foot = plus(under, back, 0.62);
    let rising = up;
    if (graph.form === 'rounds') {
      // About a ring it stands on the same circle as the first stitch.
      rising = unit(plus(placed.top, back, 0.95));
      foot = plus({ x: 0, y: 0 }, rising, Math.hypot(under.x, under.y) + 0.08);
    }
    const top = plus(foot, rising, tall);
    shapes.push(...stackShapes(foot, top, stood.upright, `turning ${stood.upright}`, ink, to));
  }
  if (trace.joined && placed !== undefined && (trace.closing === 'slip' || trace.closing === null)) {
    const at = plus(
      plus(placed.top, back, unseen ? 1.15 : 0.62),
      placed.up,
      graph.form === 'rounds' ? -0.06 : -0.1,
    );
    shapes.push(group([slip(to(at), { x: back.x, y: -back.y }, ink)], 0, 0, 0, 'join'));
  }
  trace.travelled.forEach((making, k) => {
    const under = [...places.values()].find(({ node }) => node.site === making.feet[0]);
    if (under === undefined || under.node.row < -1) return;
    const at = plus(under.top, under.up, under.arc === null ? 0.2 : 0.26);
    const shifted = under.arc === null ? at : plus(at, back, 0.3 * (trace.travelled.length - k));
    shapes.push(group([slip(to(shifted), { x: back.x, y: -back.y }, ink)], 0, 0, 0, 'travel'));
  });
  const spiral = graph.form === 'rounds' && !trace.joined;
  if (spiral && placed !== undefined) {
    const foot = middle(placed.feet);
    const line = [plus(foot, back, 0.5), plus(placed.top, back, 0.62)].map(to);
    const shape = path(
      [
        ['M', line[0]!.x, line[0]!.y],
        ['L', line[1]!.x, line[1]!.y],
      ],
      {
        role: 'measure',
        stroke: ink.unit / 14,
        dash: [ink.unit / 9, ink.unit / 7],
      },
    );
    shapes.push(group([shape], 0, 0, 0, 'marker'));
  }
  const joinsYarn = trace.row.items.some((item) => item.type === 'attach');
  if (joinsYarn && placed !== undefined) {
    const foot = placed.feet[0] ?? placed.top;
    const at = plus(plus(foot, back, 0.55), up, 0.1);
    shapes.push(
      group(
        [triangle(to(at), { x: start.toward.x, y: -start.toward.y }, false, ink)],
        0,
        0,
        0,
        'yarn joined',
      ),
    );
  }
  const last = row.nodes.findLast((node) => node.kind !== 'picot');
  const end = last === undefined ? undefined : places.get(last);
  if (trace.fastened && end !== undefined) {
    const onward = start.toward;
    const at = plus(
      plus(end.top, end.up, 0.55),
      graph.form === 'flat' ? onward : back,
      graph.form === 'flat' ? 0.3 : 0,
    );
    shapes.push(group([triangle(to(at), { x: -end.up.x, y: end.up.y }, true, ink)], 0, 0, 0, 'yarn cut'));
  }
  return shapes;
}

function space(
  node: Node,
  placed: Placed,
  closing: string | null,
  ink: Ink,
  style: SheetStyle,
  to: (p: Point) => Point,
): Shape {
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
  void style;
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

function stack(node: Node, placed: Placed, upright: number, ink: Ink, to: (p: Point) => Point): Shape {
  const foot = middle(placed.feet.length > 0 ? placed.feet : [placed.top]);
  const counts = node.kind === 'stitch';
  const name = counts ? `turning ${upright} ${node.site.stitch}` : `turning ${upright}`;
  return group(stackShapes(foot, placed.top, upright, null, ink, to), 0, 0, 0, name);
}

/** Chains upon one another from a foot to a top. */
function stackShapes(
  foot: Point,
  top: Point,
  n: number,
  name: string | null,
  ink: Ink,
  to: (p: Point) => Point,
): Shape[] {
  const way = unit({ x: top.x - foot.x, y: top.y - foot.y });
  const height = Math.hypot(top.x - foot.x, top.y - foot.y);
  const each = Math.min(0.84, (height - 0.02) / Math.max(1, n));
  const lead = Math.max(0.04, height - each * n);
  const shapes: Shape[] = [];
  for (let i = 0; i < n; i++) {
    const at = plus(foot, way, lead + (i + 0.5) * each);
    shapes.push(chain(to(at), { x: way.x, y: -way.y }, each * ink.unit * 0.98, ink));
  }
  return name === null ? shapes : [group(shapes, 0, 0, 0, name)];
}

function rowLabel(
  layout: Layout,
  row: ChartRow,
  index: number,
  style: SheetStyle,
  to: (p: Point) => Point,
  window: Window | null,
  box: Extent,
): Shape | null {
  const { unit: u, type } = style;
  const start = layout.starts[index]!;
  const flat = layout.graph.form === 'flat';
  const shown = row.number === null ? '' : String(row.number);
  const name = `label ${row.number ?? ''} ${row.side ?? ''}`;
  const role: Role = 'outline';
  const at = to(start.at);
  const size = flat ? type : Math.min(type, u * 0.62);
  if (!flat) {
    const text =
      shown === ''
        ? []
        : [words(shown, at.x, at.y + size * 0.34, { size, anchor: 'middle', bold: true, role })];
    return group([...text], 0, 0, 0, name);
  }
  // In a part that does not hold the row's start the number stands at the part's edge.
  const x =
    window === null || (start.at.x >= window.from - 2 && start.at.x <= window.to + 2)
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
        size: type * 0.72,
        anchor,
        role: row.side === 'WS' ? 'other' : role,
      }),
    );
  }
  return group(shapes, 0, 0, 0, name);
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

interface Bracket {
  readonly left: number;
  readonly right: number;
  readonly stitches: number;
}

/** What one pass of the repeat spans, by the lowest row that has one. */
function bracketOf({ graph, places }: Layout, window: Window | null): Bracket | null {
  for (const row of graph.rows) {
    const passes = row.bounds.length - 1;
    if (passes < 2) continue;
    const at = (pass: number): number | null => {
      const nodes = row.nodes.slice(row.bounds[pass]!, row.bounds[pass + 1]!);
      const spots = nodes.flatMap((node) => places.get(node)?.top.x ?? []);
      return spots.length === 0 ? null : Math.min(...spots) + (Math.max(...spots) - Math.min(...spots)) / 2;
    };
    const middlePass = Math.floor((passes - 1) / 2);
    const own = at(middlePass);
    const next = at(middlePass + 1);
    if (own === null || next === null) continue;
    const half = Math.abs(next - own) / 2;
    const found = { left: own - half, right: own + half, stitches: taken(row, middlePass) };
    if (found.stitches < 1 || half < 0.4) continue;
    if (window !== null && (found.left < window.from - 1 || found.right > window.to + 1)) continue;
    return found;
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

function bracket(
  { left, right, stitches }: Bracket,
  box: Extent,
  { unit: u, type }: SheetStyle,
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
      size: type * 0.85,
      anchor: 'middle',
      role: 'measure',
    },
  );
  return group([line, said], 0, 0, 0, `repeat ${stitches}`);
}

interface RoundRepeat {
  readonly from: number;
  readonly to: number;
  readonly radius: number;
  readonly times: number;
}

/** The pass of the outermost round that has a repeat, as an arc outside all of them. */
function roundRepeat({ graph, places, starts }: Layout): RoundRepeat | null {
  void starts;
  const row = graph.rows[graph.rows.length - 1]!;
  const passes = row.bounds.length - 1;
  if (passes < 2 || passes > 40) return null;
  const pass = Math.floor(passes / 2);
  const nodes = row.nodes.slice(row.bounds[pass]!, row.bounds[pass + 1]!);
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

function roundBracket(arc: RoundRepeat, { unit: u, type }: SheetStyle, to: (p: Point) => Point): Shape {
  const at = (angle: number, r: number): Point => to({ x: Math.cos(angle) * r, y: Math.sin(angle) * r });
  const steps: PathStep[] = [];
  const n = 24;
  const begin = at(arc.from, arc.radius - 0.35);
  steps.push(['M', begin.x, begin.y]);
  for (let i = 0; i <= n; i++) {
    const p = at(arc.from + ((arc.to - arc.from) * i) / n, arc.radius);
    steps.push(['L', p.x, p.y]);
  }
  const end = at(arc.to, arc.radius - 0.35);
  steps.push(['L', end.x, end.y]);
  const mid = (arc.from + arc.to) / 2;
  const spot = at(mid, arc.radius + 0.9);
  const said = words(`${arc.times} times`, spot.x, spot.y + type * 0.35, {
    size: type * 0.85,
    anchor: Math.cos(mid) > 0.4 ? 'start' : Math.cos(mid) < -0.4 ? 'end' : 'middle',
    role: 'measure',
  });
  return group(
    [path(steps, { role: 'measure', stroke: u / 12 }), said],
    0,
    0,
    0,
    `repeat times ${arc.times}`,
  );
}
