/**
 * Layout of rounds about a ring, from the centre outwards and anticlockwise for a right-hander. A round with corners
 * is laid out along its sides, so that the corners stand in the corners, one of a ripple between its points and valleys;
 * any other one as a circle. Draws nothing.
 */
import { type Corners, cornersOf } from './corners.ts';
import { layPicots } from './flat.ts';
import { apart, type ChartRow, type Graph, heightsOf, type Node, roomOf } from './graph.ts';
import {
  dot,
  type Layout,
  long,
  middle,
  minus,
  onPost,
  type Placed,
  type Point,
  plus,
  type RowStart,
  standOn,
  unit,
} from './layout.ts';
import { type Points, pointsOf } from './points.ts';
import { layRoundSpaces } from './round-spaces.ts';
import { spread, spreadRound, type Wanted } from './spread.ts';
import { isRaised, risen, standsUnseen, underOf } from './standing.ts';
import { layPointed, type Star, starOn } from './star.ts';

const FULL = 2 * Math.PI;
/** Angle at which rounds begin: below the centre. */
const BEGIN = -Math.PI / 2;
/** Room for the number of the round and its join, in widths of a stitch. */
const SEAM = 1.25;
/** Room for the number of a round that begins along a side, and for a chain there that counts as nothing. */
const NUMBER = 0.8;
const UNSEEN = 0.7;
/** Radius of a ring of yarn. */
const HOLE = 0.5;
/** Room for each chain of a ring; of a large one, which lies loose in the stitches, the further ones take less. */
const RING = { few: 16, chain: 0.8, further: 0.45 } as const;

/** Radius of a ring of so many chains. */
function radiusOfRing(chains: number): number {
  if (chains === 0) return 0;
  const few = Math.min(chains, RING.few);
  return (few * RING.chain + (chains - few) * RING.further) / FULL + 0.15;
}

const polar = (angle: number, r: number): Point => ({ x: Math.cos(angle) * r, y: Math.sin(angle) * r });

/** Lays out rounds. Total. */
export function layRounds(graph: Graph): Layout {
  const points = pointsOf(graph.rows);
  const corners = points === null ? cornersOf(graph.rows) : null;
  let hole = Math.max(HOLE, radiusOfRing(graph.ring));
  let made = attempt(graph, corners, points, hole);
  // Rounds that are too full for their radius are given a wider hole first.
  for (let k = 0; k < 4 && made.short > 0.02 && hole < 3; k++) {
    hole = Math.min(3, hole + made.short);
    made = attempt(graph, corners, points, hole);
  }
  return made.layout;
}

/** The middle of rounds: from where they are laid, and where the stems of the first begin. */
interface Middle {
  readonly hole: number;
  readonly ring: number;
}

interface Attempt {
  readonly layout: Layout;
  /** By how much the fullest round is too small. */
  readonly short: number;
}

function attempt(graph: Graph, corners: Corners | null, points: Points | null, hole: number): Attempt {
  const places = new Map<Node, Placed>();
  const starts: RowStart[] = [];
  const centre: Point = { x: 0, y: 0 };
  // The stems of a full round reach further in, to a ring that stays small, but not into its chains.
  const small = Math.min(hole, Math.max(HOLE + 0.1 * hole, hole * 0.6));
  const ring = Math.max(small, radiusOfRing(graph.ring));
  for (const node of graph.base)
    places.set(node, { node, top: centre, feet: [centre], up: { x: 0, y: 1 }, arc: null });
  let short = 0;
  let begin = BEGIN;
  let star: Star | null = null;
  const lay = (row: ChartRow, index: number): Turn => {
    if (corners !== null) return laySides(row, index, corners, places, hole);
    if (points === null || index < points.from) return layCircle(row, places, { hole, ring }, begin);
    const turn = layPointed(row, index, star ?? starOn(points, row, places), places);
    star = turn.star;
    return { ...turn, begin };
  };
  graph.rows.forEach((row, index) => {
    const turn = lay(row, index);
    short = Math.max(short, turn.short);
    begin = turn.begin;
    layPicots(row, places);
    starts.push(turn.start);
  });
  const shape = corners !== null ? 'sides' : points !== null ? 'star' : 'circle';
  return { layout: { graph, shape, places, starts }, short };
}

interface Turn {
  readonly short: number;
  readonly begin: number;
  readonly start: RowStart;
}

const angleOf = (point: Point): number => Math.atan2(point.y, point.x);

/** The same angle, brought next to `near`. */
function toward(angle: number, near: number): number {
  return angle + Math.round((near - angle) / FULL) * FULL;
}

interface Stance {
  readonly angle: number | null;
  readonly radius: number;
}

/** Where a node would stand by its feet. */
function stance(node: Node, places: ReadonlyMap<Node, Placed>, hole: number, right: Point): Stance {
  const spots = node.feet.map((foot) => {
    const placed = places.get(foot);
    if (placed === undefined) return null;
    return foot.kind === 'ring' ? null : standOn(node, foot, places, 0, right);
  });
  const known = spots.filter((spot) => spot !== null);
  if (known.length === 0) return { angle: null, radius: node.feet.some((f) => f.kind === 'ring') ? hole : 0 };
  const at = middle(known);
  const radius = known.reduce((sum, spot) => sum + long(spot), 0) / known.length;
  return { angle: long(at) < 1e-6 ? null : angleOf(at), radius };
}

function layCircle(row: ChartRow, places: Map<Node, Placed>, at: Middle, begin: number): Turn {
  const { hole } = at;
  const line = row.nodes.filter((node) => node.kind !== 'picot');
  const stances = line.map((node) => stance(node, places, hole, { x: 1, y: 0 }));
  const radii = filledRadii(
    stances.map(({ radius }) => radius),
    hole,
  );
  const height = heightsOf(line);
  const tops = line.map((node, i) => radii[i]! + (node.kind === 'space' ? 1 : height(node)));
  // Half of the room to the next, as an angle, on either side.
  const steps = line.map((node, i) => {
    const next = line[(i + 1) % line.length]!;
    return apart(node, next) / Math.max(0.5, (tops[i]! + tops[(i + 1) % line.length]!) / 2);
  });
  const unseen = standsUnseen(row);
  const average = tops.length === 0 ? hole : tops.reduce((sum, r) => sum + r, 0) / tops.length;
  const seam = (SEAM + (unseen ? 1.4 : 0) - (row.trace.joined ? 0 : 0.25)) / Math.max(0.5, average);
  const used = steps.reduce((sum, step) => sum + step, 0) + seam;
  // Radius that is lacking: with so much more, all would stand at their own distance.
  const short = used > FULL ? average * (used / FULL - 1) : 0;
  // The seam comes first, then the stitches in the order made.
  const sign = row.way;
  const wanted: Wanted[] = [];
  const firstAngle = stances.find(({ angle }) => angle !== null)?.angle ?? null;
  const origin = firstAngle === null ? begin : toward(firstAngle, begin);
  const asked: (number | null)[] = [];
  let near = 0;
  for (const { angle } of stances) {
    if (angle === null) {
      asked.push(null);
      continue;
    }
    const turned = sign * (toward(angle, origin + sign * near) - origin);
    asked.push(turned);
    near = turned;
  }
  // Where each would stand if all shared the round by the room they need, turned to fit what is asked best.
  const share = (FULL - seam) / Math.max(1e-9, used - seam);
  const even: number[] = [];
  line.forEach((_, i) => {
    even.push(i === 0 ? 0 : even[i - 1]! + steps[i - 1]! * share);
  });
  const known = line.flatMap((_, i) => (asked[i] === null ? [] : asked[i]! - even[i]!));
  const shift = known.length === 0 ? 0 : known.reduce((sum, x) => sum + x, 0) / known.length;
  const plain = line.every((node) => node.kind === 'stitch');
  const loose = plain ? 0.75 : 0.35;
  line.forEach((_, i) => {
    const own = asked[i] ?? null;
    const shared = even[i]! + shift;
    wanted.push({
      at: own === null ? shared : own * (1 - loose) + shared * loose,
      weight: own === null ? 0.05 : 1,
      apart: i === 0 ? steps[line.length - 1]! + seam : steps[i - 1]!,
    });
  });
  const angles = spreadRound(wanted, FULL).map((angle) => origin + sign * angle);
  line.forEach((node, i) => {
    if (node.kind === 'space') return;
    place(node, angles[i]!, radii[i]! + short, places, at, height(node));
  });
  layRoundSpaces(line, row, places, (i) => polar(angles[i]!, radii[i]! + short + 0.8));
  const first = angles[0] ?? begin;
  const low = (radii[0] ?? hole) + short;
  const high = low + (line[0] === undefined ? 1 : Math.min(height(line[0]), 2.4));
  const number = first - sign * ((0.55 + (unseen ? 1.35 : 0) + SEAM * 0.42) / Math.max(0.8, high - 0.3));
  return {
    short,
    begin: first,
    start: {
      at: polar(
        number,
        line[line.length - 1]?.kind === 'space'
          ? low + 0.3 * (high - low)
          : Math.max((low + high) / 2, high - 0.62),
      ),
      toward: { x: -Math.sin(number) * sign, y: Math.cos(number) * sign },
    },
  };
}

function filledRadii(radii: readonly number[], hole: number): readonly number[] {
  return radii.map((radius, i) => {
    if (radius > 0) return radius;
    const known = [...radii.slice(i + 1), ...radii.slice(0, i).reverse()].find((other) => other > 0);
    return known ?? hole;
  });
}

/** Puts a stitch of a circle where it stands. */
function place(
  node: Node,
  angle: number,
  base: number,
  places: Map<Node, Placed>,
  inner: Middle,
  height: number,
): void {
  const out = polar(angle, 1);
  const right = { x: out.y, y: -out.x };
  const feet = node.feet.map((foot) => footOf(node, foot, out, right, places, inner, base));
  places.set(node, risen(node, feet, polar(angle, base), out, right, height));
}

function footOf(
  node: Node,
  foot: Node,
  out: Point,
  right: Point,
  places: ReadonlyMap<Node, Placed>,
  { hole, ring }: Middle,
  base: number,
): Point {
  const placed = places.get(foot);
  if (placed === undefined) return { x: out.x * base, y: out.y * base };
  if (foot.kind === 'ring') return { x: out.x * ring, y: out.y * ring };
  if (isRaised(node)) return onPost(placed);
  const under = underOf(node, foot);
  if (under.kind === 'ring') return { x: out.x * hole, y: out.y * hole };
  const aside = Math.max(
    -1,
    Math.min(1, dot(minus({ x: out.x * base, y: out.y * base }, placed.top), right) / 2),
  );
  return standOn(node, under, places, aside, right);
}

/** Rounds along sides: a stitch of a side stands straight above its foot, as in a row worked flat. */
function laySides(
  row: ChartRow,
  index: number,
  corners: Corners,
  places: Map<Node, Placed>,
  hole: number,
): Turn {
  const { count } = corners;
  const line = row.nodes.filter((node) => node.kind !== 'picot');
  const ats = corners.rounds[index]!.map((node) => line.indexOf(node));
  const sign = row.way;
  const sector = FULL / count;
  /** Direction of the corner `k`, and outwards from the side behind it. */
  const cornerAngle = (k: number): number => BEGIN + sector / 2 + k * sector;
  const sideOut = (k: number): Point => polar(cornerAngle(k) + sector / 2, 1);
  const feetOn = (node: Node, out: Point, right: Point): { t: number; a: number } | null => {
    const spots = node.feet.flatMap((foot) => {
      if (foot.kind === 'ring') return [{ t: 0, a: hole }];
      if (!places.has(foot)) return [];
      const at = standOn(node, foot, places, 0, right);
      return [{ t: dot(at, right), a: dot(at, out) }];
    });
    if (spots.length === 0) return null;
    const sum = spots.reduce((s, spot) => ({ t: s.t + spot.t, a: s.a + spot.a }), { t: 0, a: 0 });
    return { t: sum.t / spots.length, a: sum.a / spots.length };
  };
  // A corner's number follows the corner below it, whichever way the round goes.
  const order = corners.order[index]!;
  const sides = order.map((k, j) => {
    const from = ats[j]!;
    const to = ats[(j + 1) % count]!;
    const nodes: number[] = [];
    for (let i = (from + 1) % line.length; i !== to; i = (i + 1) % line.length) nodes.push(i);
    const side = sign === 1 ? k : (k - 1 + count) % count;
    return { side, nodes };
  });
  const height = heightsOf(line);
  const number = NUMBER + (standsUnseen(row) ? UNSEEN : 0);
  let apothem = 0;
  /** The sides of a round are straight: all of it stands on one line. */
  let lowest = 0;
  let needed = 0;
  const measured = sides.map(({ side, nodes }) => {
    const out = sideOut(side);
    // Along the side in the order made.
    const right = sign === 1 ? { x: -out.y, y: out.x } : { x: out.y, y: -out.x };
    const spots = nodes.map((i) => feetOn(line[i]!, out, right));
    nodes.forEach((i, n) => {
      const node = line[i]!;
      if (node.kind === 'space') return;
      apothem = Math.max(apothem, (spots[n]?.a ?? hole) + height(node));
      lowest = Math.max(lowest, spots[n]?.a ?? hole);
    });
    const room = nodes.reduce((sum, i) => sum + roomOf(line[i]!) + (i === 0 ? number : 0), 0);
    const cornerRoom = roomOf(line[ats[0]!]!);
    needed = Math.max(needed, room + cornerRoom * 0.75);
    return { out, right, nodes, spots };
  });
  const wide = needed / (2 * Math.tan(sector / 2));
  if (wide > apothem) lowest += wide - apothem;
  apothem = Math.max(apothem, wide);
  const half = apothem * Math.tan(sector / 2);
  for (const { out, right, nodes, spots } of measured) {
    const wanted: Wanted[] = [];
    const edge = roomOf(line[ats[0]!]!) / 2;
    wanted.push({ at: -half, weight: 1000, apart: 0 });
    nodes.forEach((i, n) => {
      const node = line[i]!;
      // The round's number stands before its first stitch.
      const between = n === 0 ? edge * 0.6 : roomOf(line[nodes[n - 1]!]!) / 2;
      const before = between + (i === 0 ? number : 0);
      const own = spots[n] ?? null;
      wanted.push({ at: own?.t ?? 0, weight: own === null ? 0.02 : 1, apart: before + roomOf(node) / 2 });
    });
    fillWanted(wanted, spots);
    const last = nodes.length === 0 ? edge : roomOf(line[nodes[nodes.length - 1]!]!) / 2 + edge * 0.6;
    wanted.push({ at: half, weight: 1000, apart: last });
    const ts = spread(wanted).slice(1, -1);
    nodes.forEach((i, n) => {
      const node = line[i]!;
      if (node.kind === 'space') return;
      const base = lowest;
      const foot = (at: number): Point => plus(plus({ x: 0, y: 0 }, out, at), right, ts[n]!);
      const feet = node.feet.map((one) => {
        if (one.kind === 'ring') return plus({ x: 0, y: 0 }, unit(foot(base + height(node)), out), hole);
        const placed = places.get(one);
        if (placed === undefined) return foot(base);
        if (isRaised(node)) return onPost(placed);
        const aside = Math.max(-1, Math.min(1, (ts[n]! - (spots[n]?.t ?? ts[n]!)) / 2));
        return standOn(node, one, places, aside, right);
      });
      places.set(node, risen(node, feet, foot(base), out, right, height(node)));
    });
  }
  order.forEach((k, j) => {
    const node = line[ats[j]!]!;
    if (node.kind === 'space') return;
    const out = polar(cornerAngle(k), 1);
    const top = plus({ x: 0, y: 0 }, out, apothem / Math.cos(sector / 2));
    const feet = node.feet.map((one) => {
      const placed = places.get(one);
      return placed === undefined || one.kind === 'ring' ? plus({ x: 0, y: 0 }, out, hole) : placed.top;
    });
    const tall = height(node);
    if (feet.length === 0) feet.push(plus(top, out, -tall));
    const near = plus(middle(feet), unit(minus(top, middle(feet)), out), tall * 1.15);
    const far = long(minus(top, middle(feet))) > tall * 1.6 ? near : top;
    places.set(node, { node, top: far, feet, up: out, arc: null });
  });
  layRoundSpaces(line, row, places, (i) => {
    const j = ats.indexOf(i);
    if (j >= 0) return polar(cornerAngle(order[j]!), apothem / Math.cos(sector / 2));
    return { x: 0, y: apothem };
  });
  const first = line.find((node) => node.kind !== 'space');
  const placed = first === undefined ? undefined : places.get(first);
  const top = placed?.top ?? { x: 0, y: -apothem };
  const up = placed?.up ?? { x: 0, y: -1 };
  const back = sign === 1 ? { x: up.y, y: -up.x } : { x: -up.y, y: up.x };
  const foot = placed?.feet[0] ?? top;
  return {
    short: 0,
    begin: angleOf(top),
    start: { at: plus(middle([top, foot]), back, number), toward: { x: -back.x, y: -back.y } },
  };
}

/** What nothing below asks for, the spaces of a side, goes midway between its neighbours. */
function fillWanted(wanted: Wanted[], spots: readonly ({ t: number } | null)[]): void {
  spots.forEach((spot, n) => {
    if (spot !== null) return;
    const left = spots.slice(0, n).findLast((other) => other !== null)?.t;
    const right = spots.slice(n + 1).find((other) => other !== null)?.t;
    const at = left !== undefined && right !== undefined ? (left + right) / 2 : (left ?? right ?? 0);
    wanted[n + 1] = { ...wanted[n + 1]!, at };
  });
}
