/**
 * Layout of rows worked flat: rows upon one another, every stitch over what it went into. Increases spread from
 * their place, decreases gather over theirs. Positions are settled by a fixed number of passes up and down, so that
 * the same rows give the same picture; the rows of a ripple lie on its wave. Draws nothing.
 */
import { apart, type ChartRow, type Graph, heightsOf, inLine, type Node, roomOf } from './graph.ts';
import {
  arcOf,
  type Layout,
  minus,
  onPost,
  overArc,
  type Placed,
  type Point,
  plus,
  type RowStart,
  standOn,
  unit,
} from './layout.ts';
import { spread, type Wanted } from './spread.ts';
import { isRaised, risen, underOf } from './standing.ts';
import { type Wave, waveOf } from './wave.ts';

/** Passes down and up in which neighbouring rows settle: more for lace, few for what is plain and large. */
const PASSES = { few: 8, many: 30, upTo: 900 } as const;

const UP: Point = { x: 0, y: 1 };
const RIGHT: Point = { x: 1, y: 0 };

/** Weight of what stands at a row's edge. */
const EDGE = 4;

/** Beyond this a foot lies at the other end of a round that is drawn opened out. */
const FARTHEST = 12;

type Places = Map<Node, number>;

/** Where a node would stand by its feet; null when nothing below says so. */
function byFeet(node: Node, way: number, at: Places): number | null {
  const over: number[] = [];
  for (const foot of node.feet) {
    const x = at.get(foot);
    if (x === undefined) continue;
    const beside = node.beside === null ? undefined : at.get(node.beside);
    const chain = node.making?.chain ?? null;
    if (beside !== undefined) over.push((x + beside) / 2);
    else if (chain !== null) over.push(x + way * ((chain - 0.5) / foot.site.chains - 0.5) * roomOf(foot));
    else over.push(x);
  }
  return over.length === 0 ? null : over.reduce((sum, x) => sum + x, 0) / over.length;
}

/** Puts a line where it would stand; what nothing draws anywhere goes between its neighbours. */
function settle(line: readonly Node[], asked: readonly (number | null)[], at: Places): void {
  const reached: number[] = [];
  line.forEach((node, i) => {
    reached.push(i === 0 ? 0 : reached[i - 1]! + apart(line[i - 1]!, node));
  });
  let left = -1;
  const wanted: Wanted[] = line.map((node, i) => {
    const own = asked[i] ?? null;
    const room = i === 0 ? 0 : apart(line[i - 1]!, node);
    if (own !== null) {
      left = i;
      // The edges of a piece keep their line; what is between them gives way.
      const edge = i === 0 || i === line.length - 1;
      return { at: own, weight: edge ? EDGE : 1, apart: room };
    }
    let right = i + 1;
    while (right < line.length && (asked[right] ?? null) === null) right += 1;
    const [a, b] = [left < 0 ? null : asked[left]!, right < line.length ? asked[right]! : null];
    let x = reached[i]!;
    if (a !== null && b !== null) {
      const way = reached[right]! - reached[left]!;
      x = a + ((b - a) * (reached[i]! - reached[left]!)) / (way || 1);
    } else if (a !== null) x = a + reached[i]! - reached[left]!;
    else if (b !== null) x = b - (reached[right]! - reached[i]!);
    return { at: x, weight: 0.02, apart: room };
  });
  spread(wanted).forEach((x, i) => {
    at.set(line[i]!, x);
  });
}

/** Most that a foundation is drawn apart for the rows upon it. */
const WIDEST = 1.8;

/**
 * Distance of the foundation's places to begin with: lace that spreads above it and comes back needs it wider. Where
 * rows grow to the end, the piece itself widens, and the foundation stays as it is.
 */
function pitchOf(graph: Graph): number {
  const widths = graph.rows.map((row) => {
    const line = inLine(row);
    return line.reduce((sum, node, i) => (i === 0 ? 0 : sum + apart(line[i - 1]!, node)), 0);
  });
  const widest = Math.max(...widths);
  const own = graph.base.length - 1;
  const grows = widths.length > 1 && widths.indexOf(widest) === widths.length - 1;
  if (graph.baseKind === 'ring' || own < 2 || grows) return 1;
  return Math.min(WIDEST, Math.max(1, widest / own));
}

function settledPlaces(graph: Graph): Places {
  const at: Places = new Map();
  const first = graph.rows[0]!;
  const pitch = pitchOf(graph);
  graph.base.forEach((node, i) => {
    at.set(node, first.way * i * pitch);
  });
  const base = first.way === 1 ? graph.base : graph.base.slice().reverse();
  const lines = graph.rows.map(inLine);
  const above = new Map<Node, Node[]>();
  for (const line of lines) {
    for (const node of line) {
      for (const foot of node.feet) {
        const list = above.get(foot);
        if (list === undefined) above.set(foot, [node]);
        else list.push(node);
      }
    }
  }
  // What lies beyond a row's edge, chains added at the hook, follows its last place.
  for (const node of above.keys()) if (node.row < 0 && !at.has(node)) at.set(node, first.way * at.size);
  const hook = graph.baseKind === 'chain' ? graph.base[0] : undefined;
  const isRound = graph.rows.map((row) => row.kind === 'round');
  // In a round drawn opened out, what goes into the other end of the row below says nothing of where it stands.
  const ranks = lines.map((line) => new Map(line.map((node, i) => [node, i / Math.max(1, line.length - 1)])));
  const across = (own: number, node: Node, r: number): number | null => {
    const under = r === 0 ? base : lines[r - 1]!;
    const [left, right] = [at.get(under[0]!) ?? own, at.get(under[under.length - 1]!) ?? own];
    const usual = left + (right - left) * (ranks[r]!.get(node) ?? 0.5);
    return Math.abs(own - usual) > Math.max(4, 0.5 * Math.abs(right - left)) ? null : own;
  };
  const fromBelow = (r: number) =>
    lines[r]!.map((node) => {
      // The chains that rise at the hook stand beyond the last chain that lies.
      const rises = r === 0 && hook !== undefined && node.site.turning && node.feet.length === 0;
      if (rises && node.kind !== 'space') return at.get(hook)! - graph.rows[0]!.way * 0.9;
      const own = byFeet(node, graph.rows[r]!.way, at);
      if (own === null || !isRound[r]) return own;
      return node.feet.some(({ kind }) => kind === 'ring') ? null : across(own, node, r);
    });
  const fromAbove = (line: readonly Node[]) =>
    line.map((node) => {
      const over = above.get(node)?.map((one) => at.get(one)!) ?? [];
      return over.length === 0 ? null : over.reduce((sum, x) => sum + x, 0) / over.length;
    });
  lines.forEach((line, r) => {
    settle(line, fromBelow(r), at);
  });
  const sites = lines.reduce((sum, line) => sum + line.length, 0);
  const passes = sites <= PASSES.upTo ? PASSES.many : PASSES.few;
  for (let pass = 0; pass < passes; pass++) {
    for (let r = lines.length - 1; r >= 0; r--) {
      const [low, high] = [fromBelow(r), fromAbove(lines[r]!)];
      settle(
        lines[r]!,
        low.map((x, i) => mean(x, high[i]!)),
        at,
      );
    }
    if (graph.baseKind !== 'ring' && base.length > 0) settle(base, fromAbove(base), at);
    lines.forEach((line, r) => {
      const [low, high] = [fromBelow(r), fromAbove(line)];
      settle(
        line,
        low.map((x, i) => mean(x, pass === passes - 1 ? null : high[i]!)),
        at,
      );
    });
  }
  return at;
}

function mean(a: number | null, b: number | null): number | null {
  if (a === null) return b;
  return b === null ? a : (a + b) / 2;
}

/** Values of a line with gaps, filled in from the neighbours. */
function filled(values: readonly (number | null)[], otherwise: number): readonly number[] {
  const left: (number | null)[] = [];
  values.forEach((value, i) => {
    left.push(value ?? left[i - 1] ?? null);
  });
  let right: number | null = null;
  const out: number[] = new Array(values.length);
  for (let i = values.length - 1; i >= 0; i--) {
    const value = values[i] ?? null;
    right = value ?? right;
    out[i] = value ?? mean(left[i] ?? null, right) ?? otherwise;
  }
  return out;
}

/** Low places of a row are lifted a little, so that what is worked in them stands clear of its tall neighbours. */
function raised(levels: readonly number[]): readonly number[] {
  const most = Math.max(...levels);
  return levels.map((level) => level + 0.35 * Math.min(1.6, most - level));
}

/** Lays out rows that are worked flat, or rounds opened out. Total. */
export function layFlat(graph: Graph): Layout {
  const wave = waveOf(graph);
  const at: Places = wave === null ? settledPlaces(graph) : new Map(wave.x);
  const places = new Map<Node, Placed>();
  const starts: RowStart[] = [];
  for (const [node, x] of at) {
    if (node.row >= 0) continue;
    const y = node.kind === 'ring' ? 0.5 : node.kind === 'chain' ? 0.24 : 0;
    const low = wave?.lift.get(node) ?? 0;
    places.set(node, {
      node,
      top: { x, y: low + y },
      feet: [{ x, y: low }],
      up: wave === null ? UP : squareTo(wave, node),
      arc: null,
    });
  }
  if (graph.baseKind === 'row') arcsOf(inOrder(graph.base, at), at, places, () => 0);
  let level = 0;
  let middle = graph.baseKind === 'chain' ? 0.24 : 0;
  for (const [index, row] of graph.rows.entries()) {
    const line = inLine(row);
    layOrphans(line, at, places);
    const levels = line.map((node) => levelOf(node, places));
    const above = middle;
    const base =
      wave === null ? raised(filled(levels, level)) : line.map((node) => above + (wave.lift.get(node) ?? 0));
    middle += wave?.rises[index] ?? 0;
    const height = heightsOf(row.nodes);
    const alone = onlyOnes(row);
    const opened = row.kind === 'round';
    line.forEach((node, i) => {
      if (node.kind === 'space') return;
      const placed = standing(node, at.get(node)!, base[i]!, places, at, height(node), alone, opened);
      places.set(node, wave === null ? placed : onWave(placed, wave, base[i]!, wave.rises[index]!));
    });
    arcsOf(line, at, places, (i) => base[i]!);
    layPicots(row, places);
    const begin = row.way === 1 ? 0 : line.length - 1;
    const first = line[begin];
    const edge = first === undefined ? 0 : at.get(first)! - (row.way * roomOf(first)) / 2;
    const tops = line.map((node) => places.get(node)!.top.y);
    level = tops.length === 0 ? level : Math.max(...tops);
    const low = base[begin] ?? level;
    const high = tops[begin] ?? level;
    starts.push({
      at: { x: edge - row.way * 0.75, y: (low + Math.max(high, low + 0.6)) / 2 },
      toward: { x: row.way, y: 0 },
    });
  }
  return { graph, shape: 'rows', places, starts };
}

/** The way out from the line of a wave at a node. */
function squareTo(wave: Wave, node: Node): Point {
  const fall = wave.fall.get(node) ?? 0;
  return { x: Math.sin(fall), y: Math.cos(fall) };
}

/** A stitch of a ripple: its top lies on the line of its row, wherever that is from its feet. */
function onWave(placed: Placed, wave: Wave, base: number, rise: number): Placed {
  const { node, feet } = placed;
  const x = wave.x.get(node)!;
  const top = { x, y: base + rise };
  const up = feet.length === 1 && node.feet.length === 1 ? unit(minus(top, feet[0]!)) : squareTo(wave, node);
  return { ...placed, top, up };
}

function inOrder(nodes: readonly Node[], at: Places): readonly Node[] {
  return nodes.slice().sort((a, b) => at.get(a)! - at.get(b)!);
}

/** Chains added at a row's edge, beyond the row below, lie level with its top. */
function layOrphans(line: readonly Node[], at: Places, places: Map<Node, Placed>): void {
  const known = line.flatMap((node) => node.feet).flatMap((foot) => places.get(foot)?.top.y ?? []);
  const y = known.length === 0 ? 0 : Math.max(...known);
  for (const node of line) {
    for (const foot of node.feet) {
      if (places.has(foot)) continue;
      const x = at.get(foot) ?? at.get(node)!;
      places.set(foot, { node: foot, top: { x, y }, feet: [{ x, y: y - 0.24 }], up: UP, arc: null });
    }
  }
}

/** Height that a node stands at: the mean of its feet's tops; null when it has none in the row below. */
function levelOf(node: Node, places: ReadonlyMap<Node, Placed>): number | null {
  const tops = node.feet.filter((foot) => foot.row === node.row - 1).map((foot) => places.get(foot)!.top.y);
  return tops.length === 0 ? null : tops.reduce((sum, y) => sum + y, 0) / tops.length;
}

function standing(
  node: Node,
  x: number,
  base: number,
  places: ReadonlyMap<Node, Placed>,
  at: Places,
  height: number,
  alone: ReadonlySet<Node>,
  opened: boolean,
): Placed {
  const feet = node.feet.map((foot) => {
    if (isRaised(node)) return onPost(places.get(foot)!);
    const under = underOf(node, foot);
    const off = x - (at.get(under) ?? x);
    const lean = under.kind === 'space' && alone.has(under) ? (1.8 * off) / roomOf(under) : off / 2;
    if (Math.abs(off) > FARTHEST) return { x, y: base };
    // A ring that is drawn opened out lies under all that goes into it.
    if (under.kind === 'ring' && (opened || at.get(under) === undefined)) return { x, y: base };
    return standOn(node, under, places, Math.max(-1, Math.min(1, lean)), RIGHT);
  });
  return risen(node, feet, { x, y: base }, UP, RIGHT, height);
}

/** Places that only one thing of the row goes into. */
function onlyOnes(row: ChartRow): ReadonlySet<Node> {
  const met = new Map<Node, number>();
  for (const node of row.nodes) for (const foot of node.feet) met.set(foot, (met.get(foot) ?? 0) + 1);
  return new Set([...met].filter(([, times]) => times === 1).map(([foot]) => foot));
}

function arcsOf(
  line: readonly Node[],
  at: Places,
  places: Map<Node, Placed>,
  base: (i: number) => number,
): void {
  line.forEach((node, i) => {
    if (node.kind !== 'space') return;
    const x = at.get(node)!;
    const end = (other: Node | undefined, way: number): Point => {
      const placed = other === undefined ? undefined : places.get(other);
      if (placed !== undefined && other!.kind !== 'space') return topOf(placed);
      return { x: x + way * (roomOf(node) / 2 + 0.3), y: base(i) + 0.1 };
    };
    const [left, right] = [end(line[i - 1], -1), end(line[i + 1], 1)];
    const arc =
      node.way === 1 ? arcOf(left, right, UP, node.site.chains) : arcOf(right, left, UP, node.site.chains);
    places.set(node, { node, top: overArc(arc, UP), feet: [], up: UP, arc });
  });
}

/** Where chains hang from a stitch: a little below the bar of its top. */
function topOf({ top, up }: Placed): Point {
  return plus(top, up, -0.12);
}

/** Picots stand on the stitch made before them. */
export function layPicots(row: ChartRow, places: Map<Node, Placed>): void {
  row.nodes.forEach((node, i) => {
    if (node.kind !== 'picot') return;
    const under = row.nodes.slice(0, i).findLast((other) => other.kind !== 'picot') ?? row.nodes[i + 1];
    const placed = under === undefined ? undefined : places.get(under);
    if (placed === undefined) {
      places.set(node, { node, top: { x: 0, y: 0 }, feet: [{ x: 0, y: 0 }], up: UP, arc: null });
      return;
    }
    places.set(node, {
      node,
      top: plus(placed.top, placed.up, 0.9),
      feet: [placed.top],
      up: placed.up,
      arc: null,
    });
  });
}
