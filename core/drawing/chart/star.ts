/**
 * Layout of the rounds of a ripple about a centre: each lies in straight lines from its valleys to its points, which
 * stand out as far as the stitches made there and lost in the valleys have them do. Draws nothing.
 */
import { apart, type ChartRow, heightsOf, type Node } from './graph.ts';
import {
  dot,
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
import { lineOf, type PointedRound, type Points } from './points.ts';
import { layRoundSpaces } from './round-spaces.ts';
import { isRaised, standsUnseen, underOf } from './standing.ts';

/** Steepest that a line falls off from its point, as the angle from square to the ray of the point. */
const STEEPEST = (54 * Math.PI) / 180;
/** Least by which it goes on falling at its valley. */
const FLATTEST = (6 * Math.PI) / 180;
/**
 * Where the number of a round stands, in widths of a stitch: behind the first stitch and a little in from the line, with
 * the room that is kept for it; where a chain that counts as nothing stands between, farther off.
 */
const NUMBER = { behind: 1.15, low: 0.42, room: 0.85 } as const;
const UNSEEN = { behind: 2.2, low: 0, room: 2.3 } as const;

/** A star as far as it is laid. */
export interface Star {
  readonly points: Points;
  /** The angle of the first point. */
  readonly begin: number;
  /** How far its points and its valleys are from the centre. */
  readonly point: number;
  readonly valley: number;
}

/** A round of a star, as laid. */
export interface PointedTurn {
  /** The star with the round. */
  readonly star: Star;
  /** By how much the round is too small for its stitches. */
  readonly short: number;
  readonly start: RowStart;
}

const FULL = 2 * Math.PI;
const polar = (angle: number, r: number): Point => ({ x: Math.cos(angle) * r, y: Math.sin(angle) * r });
const between = (a: Point, b: Point, part: number): Point => plus(a, minus(b, a), part);

/** The star upon the rounds laid so far: each point above the place that it is made in. */
export function starOn(points: Points, first: ChartRow, places: ReadonlyMap<Node, Placed>): Star {
  const line = lineOf(first);
  let turned: Point = { x: 0, y: 0 };
  points.rounds[0]!.points.forEach((at, k) => {
    const near = Number.isInteger(at) ? [at - 1, at, at + 1] : [at - 0.5, at + 0.5];
    const feet = near.flatMap((i) => line[(i + line.length) % line.length]!.feet);
    const spots = feet.flatMap((foot) => places.get(foot)?.top ?? []);
    if (spots.length === 0) return;
    const spot = middle(spots);
    const angle = Math.atan2(spot.y, spot.x) - (first.way * k * FULL) / points.count;
    turned = plus(turned, polar(angle, 1));
  });
  const reach = Math.max(0, ...[...places.values()].map(({ node, top }) => (node.row < 0 ? 0 : long(top))));
  return { points, begin: Math.atan2(turned.y, turned.x), point: reach, valley: reach };
}

/** Lays the next round of a star. */
export function layPointed(
  row: ChartRow,
  index: number,
  before: Star,
  places: Map<Node, Placed>,
): PointedTurn {
  const { points, begin } = before;
  const round = points.rounds[index - points.from]!;
  const half = Math.PI / points.count;
  const line = lineOf(row);
  const height = heightsOf(line);
  const tall = Math.max(...line.map((node) => (node.kind === 'stitch' ? height(node) : 0)));
  const along = alongOf(row, line, round);
  const fall = fallOf(round, tall, half);
  let point = before.point + tall / Math.cos(fall);
  let valley = before.valley + tall / Math.cos(fall - half);
  const reach = Math.sqrt(point * point + valley * valley - 2 * point * valley * Math.cos(half));
  const short = Math.max(0, along.longest / reach - 1) * ((point + valley) / 2);
  if (along.longest > reach) {
    point *= along.longest / reach;
    valley *= along.longest / reach;
  }
  // First as the rays stand, in the order made.
  const rayOf = (k: number): number => begin + (round.rays[k % points.count]! * FULL) / points.count;
  const spotAt = (place: number): Spot => {
    const { arm, part, rises } = along.at(place);
    const ray = rayOf(arm);
    const low = polar(ray + row.way * half, valley);
    const high = polar(rises ? ray + row.way * 2 * half : ray, point);
    const [from, to] = rises ? [low, high] : [high, low];
    const way = unit(minus(to, from));
    const across = row.way === 1 ? { x: way.y, y: -way.x } : { x: -way.y, y: way.x };
    const atEnd = part < 1e-6 ? from : part > 1 - 1e-6 ? to : null;
    return { at: between(from, to, part), out: atEnd === null ? across : unit(atEnd), way };
  };
  const spots = line.map((_, i) => spotAt(along.places[i]!));
  line.forEach((node, i) => {
    if (node.kind === 'space') return;
    places.set(node, standing(node, spots[i]!, places, height(node)));
  });
  layRoundSpaces(line, row, places, (i) => spots[i]!.at);
  return { star: { points, begin, point, valley }, short, start: startOf(row, line, along, spotAt) };
}

interface Spot {
  readonly at: Point;
  /** Outwards here, and onwards along the round. */
  readonly out: Point;
  readonly way: Point;
}

/**
 * How far a line falls off from square to the ray of its point. Stitches made at a point and lost in a valley push the
 * line aside as far as they are wide while it rises by a stitch; the rays leave `half` between the two, and where that
 * is not what the stitches say, both give way alike.
 */
function fallOf({ gain, loss }: PointedRound, tall: number, half: number): number {
  const fall = (Math.atan(gain / tall) + Math.atan(loss / tall) + half) / 2;
  return Math.min(Math.max(STEEPEST, half + FLATTEST), Math.max(half + FLATTEST, fall));
}

interface Along {
  /** The place of each of the line, in widths of a stitch. */
  readonly places: readonly number[];
  /** The longest way from a point to a valley. */
  readonly longest: number;
  /** Which line from a point to a valley, or on from there to the next point, a place is on, and how far. */
  readonly at: (place: number) => { readonly arm: number; readonly part: number; readonly rises: boolean };
}

function alongOf(row: ChartRow, line: readonly Node[], { points, valleys }: PointedRound): Along {
  const places: number[] = [];
  line.forEach((node, i) => {
    places.push(i === 0 ? 0 : places[i - 1]! + apart(line[i - 1]!, node));
  });
  const { room } = standsUnseen(row) ? UNSEEN : NUMBER;
  const whole = places[places.length - 1]! + apart(line[line.length - 1]!, line[0]!) + room;
  const placeOf = (at: number): number => {
    const i = Math.floor(at);
    const next = i + 1 < line.length ? places[i + 1]! : whole;
    return places[i]! + (next - places[i]!) * (at - i);
  };
  const onward = (from: number, to: number): number => (to - from + 2 * whole) % whole;
  const tops = points.map(placeOf);
  const arms = tops.map((from, k) => {
    const down = onward(from, placeOf(valleys[k]!));
    return { from, down, up: onward(from, tops[(k + 1) % tops.length]!) - down };
  });
  return {
    places,
    longest: Math.max(...arms.flatMap(({ down, up }) => [down, up])),
    at: (place) => {
      const arm = arms.findIndex(({ from, down, up }) => onward(from, place) < down + up - 1e-9);
      const { from, down, up } = arms[Math.max(0, arm)]!;
      const on = onward(from, place);
      return on < down - 1e-9
        ? { arm: Math.max(0, arm), part: on / down, rises: false }
        : { arm: Math.max(0, arm), part: Math.min(1, (on - down) / (up || 1)), rises: true };
    },
  };
}

/** A stitch of a star: its top lies on the line of its round, wherever that is from its feet. */
function standing(
  node: Node,
  { at, out, way }: Spot,
  places: ReadonlyMap<Node, Placed>,
  height: number,
): Placed {
  const feet = node.feet.map((foot) => {
    const placed = places.get(foot);
    if (placed === undefined) return plus(at, out, -height);
    if (isRaised(node)) return onPost(placed);
    const aside = Math.max(-1, Math.min(1, dot(minus(at, placed.top), way) / 2));
    return standOn(node, underOf(node, foot), places, aside, way);
  });
  const all = feet.length === 0 ? [plus(at, out, -height)] : feet;
  return { node, top: at, feet: all, up: all.length === 1 ? unit(minus(at, all[0]!), out) : out, arc: null };
}

/** Where the number of a round stands: before its first stitch, near its line. */
function startOf(
  row: ChartRow,
  line: readonly Node[],
  along: Along,
  spotAt: (place: number) => Spot,
): RowStart {
  const first = Math.max(
    0,
    line.findIndex(({ kind }) => kind !== 'space'),
  );
  const { at, out, way } = spotAt(along.places[first]! - 0.01);
  // What ends the round may stand on the first stitches of the one below, and passes under the number.
  const { behind, low } = standsUnseen(row) ? UNSEEN : NUMBER;
  return { at: plus(plus(at, way, -behind), out, -low), toward: way };
}
