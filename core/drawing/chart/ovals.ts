/**
 * Layout of rounds about a foundation chain, worked along both of its sides: the chain lies in the middle, and every
 * round goes about it along two straight sides and two ends. Draws nothing.
 */
import { layPicots } from './flat.ts';
import { apart, type ChartRow, type Graph, heightsOf, type Node } from './graph.ts';
import {
  arcOf,
  dot,
  type Layout,
  middle,
  minus,
  onPost,
  overArc,
  type Placed,
  type Point,
  plus,
  type RowStart,
  standOn,
} from './layout.ts';
import { spreadRound, type Wanted } from './spread.ts';
import { isRaised, risen, standsUnseen } from './standing.ts';

/** Distance of the foundation's chains, and how far from their middle a stitch stands on them. */
const PITCH = 1;
const HALF = 0.24;
/** Room for the number of the round and its join, in widths of a stitch. */
const SEAM = 1.6;

/**
 * A place about the chain, whatever the radius: 0–1 along the upper side from the hook's end, 1–2 about the far end,
 * 2–3 back along the lower side, 3–4 about the hook's end.
 */
type Way = number;

interface Track {
  /** Half of the straight part. */
  readonly half: number;
  readonly radius: number;
}

const lengthOf = ({ half, radius }: Track): number => 4 * half + 2 * Math.PI * radius;

/** Lengths of the four parts of a track. */
const partsOf = ({ half, radius }: Track): readonly number[] => [
  2 * half,
  Math.PI * radius,
  2 * half,
  Math.PI * radius,
];

function alongOf(way: Way, track: Track): number {
  const turns = Math.floor(way / 4);
  const within = way - 4 * turns;
  const part = Math.min(3, Math.floor(within));
  const parts = partsOf(track);
  const before = parts.slice(0, part).reduce((sum, length) => sum + length, 0);
  return turns * lengthOf(track) + before + (within - part) * parts[part]!;
}

function wayOf(along: number, track: Track): Way {
  const whole = lengthOf(track);
  const turns = Math.floor(along / whole);
  let rest = along - turns * whole;
  const parts = partsOf(track);
  let part = 0;
  while (part < 3 && rest > parts[part]!) rest -= parts[part++]!;
  return 4 * turns + part + (parts[part]! === 0 ? 0 : Math.min(1, rest / parts[part]!));
}

/** A point of a track, with outwards there. */
function spot(way: Way, { half, radius }: Track): { readonly at: Point; readonly out: Point } {
  const within = way - 4 * Math.floor(way / 4);
  const part = Math.min(3, Math.floor(within));
  const t = within - part;
  if (part === 0 || part === 2) {
    const out = { x: 0, y: part === 0 ? 1 : -1 };
    const x = part === 0 ? half - 2 * half * t : -half + 2 * half * t;
    return { at: { x, y: out.y * radius }, out };
  }
  const angle = (part === 1 ? Math.PI / 2 : -Math.PI / 2) + Math.PI * t;
  const out = { x: Math.cos(angle), y: Math.sin(angle) };
  return { at: { x: (part === 1 ? -half : half) + out.x * radius, y: out.y * radius }, out };
}

/** Where the stitches of the first round would stand; null for what stands on no chain. */
function firstWays(base: readonly Node[], line: readonly Node[]): readonly (Way | null)[] {
  const last = base.length - 1;
  // A chain that is not among them is the first one, come to again at the end.
  const ats = line.map((node) => (node.feet.length === 0 ? null : Math.max(0, base.indexOf(node.feet[0]!))));
  const far = ats.flatMap((at, i) => (at === last ? [i] : []));
  const end = far.at(-1) ?? ats.length - 1;
  const begins = ats.flatMap((at, i) => (at === 0 && i < end ? [i] : []));
  const comes = ats.flatMap((at, i) => (at === 0 && i > end ? [i] : []));
  const atHook = begins.length + comes.length;
  return ats.map((at, i): Way | null => {
    if (at === null) return null;
    if (at === last) return 1 + (far.indexOf(i) + 0.5) / far.length;
    if (at > 0) return i < end ? at / last : 3 - at / last;
    const k = i < end ? comes.length + begins.indexOf(i) : comes.indexOf(i);
    return (i < end ? -1 : 3) + (k + 0.5) / atHook;
  });
}

/** Lays out rounds about a chain. Total. */
export function layOvals(graph: Graph): Layout {
  const places = new Map<Node, Placed>();
  const ways = new Map<Node, Way>();
  const starts: RowStart[] = [];
  const half = ((graph.base.length - 1) * PITCH) / 2;
  graph.base.forEach((node, i) => {
    const x = half - i * PITCH;
    // A chain is drawn so far below its top.
    places.set(node, { node, top: { x, y: HALF }, feet: [{ x, y: -HALF }], up: { x: 0, y: 1 }, arc: null });
  });
  let radius = HALF;
  graph.rows.forEach((row, index) => {
    const made = row.nodes.filter((node) => node.kind !== 'picot');
    const line = row.way === 1 ? made : made.slice().reverse();
    const asked =
      index === 0
        ? firstWays(graph.base, line)
        : line.map((node) => meanWay(node.feet.flatMap((foot) => ways.get(foot) ?? [])));
    const laid = layRound(row, line, asked, { half, radius }, places, ways);
    layPicots(row, places);
    radius = laid.radius;
    starts.push(laid.start);
  });
  return { graph, shape: 'oval', places, starts };
}

/** The middle of ways that lie beside one another, whichever side of the beginning they are on. */
function meanWay(ways: readonly Way[]): Way | null {
  const [first] = ways;
  if (first === undefined) return null;
  const near = ways.map((way) => way + 4 * Math.round((first - way) / 4));
  return near.reduce((sum, way) => sum + way, 0) / near.length;
}

function layRound(
  row: ChartRow,
  line: readonly Node[],
  asked: readonly (Way | null)[],
  below: Track,
  places: Map<Node, Placed>,
  ways: Map<Node, Way>,
): { readonly radius: number; readonly start: RowStart } {
  const height = heightsOf(line);
  const tall = Math.max(0.6, ...line.map((node) => (node.kind === 'space' ? 0.6 : height(node))));
  const gaps = line.map((node, i) => apart(line[(i - 1 + line.length) % line.length]!, node));
  const unseen = standsUnseen(row);
  const seam = (row.trace.joined ? SEAM : SEAM * 0.6) + (unseen ? 1.2 : 0);
  // Where a round or one of its ends is too full, it is given so much more radius.
  const plain: Track = { ...below, radius: below.radius + tall };
  const isAt = (i: number, part: number): boolean => {
    const way = asked[i] ?? null;
    return way !== null && Math.floor(way - 4 * Math.floor(way / 4)) === part;
  };
  const roomAt = (part: number): number => gaps.reduce((sum, gap, i) => sum + (isAt(i, part) ? gap : 0), 0);
  const lacks = [
    (gaps.reduce((sum, gap) => sum + gap, 0) + seam - lengthOf(plain)) / (2 * Math.PI),
    roomAt(1) / Math.PI - plain.radius,
    (roomAt(3) + seam) / Math.PI - plain.radius,
  ];
  const short = Math.max(0, ...lacks);
  const foot: Track = { ...below, radius: below.radius + short };
  const top: Track = { ...below, radius: plain.radius + short };
  let near: Way = asked.find((way) => way !== null) ?? 0;
  const known = asked.map((way) => {
    if (way === null) return null;
    near = way + 4 * Math.round((near - way) / 4);
    return near;
  });
  const wanted = line.map((_, i): Wanted => {
    const own = known[i] ?? null;
    const way = own ?? between(known, i);
    // The number and the join stand between the last stitch and the first.
    return { at: alongOf(way, top), weight: own === null ? 0.05 : 1, apart: gaps[i]! + (i === 0 ? seam : 0) };
  });
  const along = spreadRound(wanted, lengthOf(top));
  line.forEach((node, i) => {
    const way = wayOf(along[i]!, top);
    ways.set(node, way);
    if (node.kind !== 'space') places.set(node, standing(node, way, foot, height(node), places));
  });
  spaces(line, places, (i) => spot(ways.get(line[i]!)!, { ...foot, radius: foot.radius + 0.8 }));
  const first = row.way === 1 ? 0 : line.length - 1;
  const begin = (along[first] ?? 0) - row.way * (0.95 + (unseen ? 0.7 : 0));
  const at = spot(wayOf(begin, top), { ...foot, radius: foot.radius + 0.75 * tall });
  const toward = { x: -at.out.y * row.way, y: at.out.x * row.way };
  return { radius: top.radius, start: { at: at.at, toward } };
}

/** Between the nearest known ways on both sides. */
function between(known: readonly (Way | null)[], i: number): Way {
  const left = known.slice(0, i).findLast((way) => way !== null) ?? null;
  const right = known.slice(i + 1).find((way) => way !== null) ?? null;
  if (left !== null && right !== null) return (left + right) / 2;
  return left ?? right ?? 0;
}

function standing(
  node: Node,
  way: Way,
  foot: Track,
  height: number,
  places: ReadonlyMap<Node, Placed>,
): Placed {
  const { at: base, out } = spot(way, foot);
  const right = { x: out.y, y: -out.x };
  const feet = node.feet.map((one): Point => {
    const placed = places.get(one);
    if (placed === undefined) return base;
    // On either side of a chain, from its middle outwards.
    if (one.row < 0) return plus({ x: placed.top.x, y: 0 }, out, HALF);
    if (isRaised(node)) return onPost(placed);
    const aside = Math.max(-1, Math.min(1, dot(minus(base, placed.top), right) / 2));
    return standOn(node, one, places, aside, right);
  });
  return risen(node, feet, base, out, right, height);
}

function spaces(
  line: readonly Node[],
  places: Map<Node, Placed>,
  otherwise: (i: number) => { readonly at: Point; readonly out: Point },
): void {
  const n = line.length;
  const end = (i: number): Point => {
    const at = (i + n) % n;
    const placed = places.get(line[at]!);
    return placed === undefined || placed.arc !== null
      ? otherwise(at).at
      : plus(placed.top, placed.up, -0.12);
  };
  line.forEach((node, i) => {
    if (node.kind !== 'space') return;
    const { out } = otherwise(i);
    const arc = arcOf(end(i - 1), end(i + 1), out, node.site.chains);
    places.set(node, { node, top: overArc(arc, out), feet: [middle([arc.from, arc.to])], up: out, arc });
  });
}
