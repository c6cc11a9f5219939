/**
 * The wave of a ripple: where rows increase and decrease at the same places all the way up, their stitches drift from
 * the increases to the decreases, and the rows lie in peaks and valleys. Finds whether a chart is one and the line that
 * all its rows follow; everything else has none. Draws nothing.
 */
import { type ChartRow, type Graph, heightsOf, inLine, type Node, roomOf } from './graph.ts';

/** Where the rows of a ripple lie, in widths of a stitch. */
export interface Wave {
  readonly x: ReadonlyMap<Node, number>;
  /** How much higher than the middle of its row a node lies. */
  readonly lift: ReadonlyMap<Node, number>;
  /** Steepness of the line at a node, as the angle by which it falls to the right. */
  readonly fall: ReadonlyMap<Node, number>;
  /** How far each row stands above the one below it. */
  readonly rises: readonly number[];
}

/** No line of a row falls by more than this, or its stitches could not be told apart. */
const STEEPEST = (38 * Math.PI) / 180;
/** Least that stitches lean from an increase to a decrease, as so many stitches. */
const LEANING = 0.4;
/** Least part of a row that lies in runs of plain stitches that lean. */
const IN_RUNS = 0.35;
/** Rows of one ripple are no more different in width than by this part. */
const ALIKE = 0.15;
/** Beyond this a foot lies at the other end of a round that is drawn opened out. */
const FARTHEST = 12;
/** The line is found at points this far apart. */
const STEP = 0.25;

/** A row as it drifts: the place of each node along it, and how far that is from the place of its feet. */
interface Drift {
  readonly line: readonly Node[];
  readonly at: readonly number[];
  /** Null where a node has no feet in the row below. */
  readonly lean: readonly (number | null)[];
  readonly height: number;
  readonly shaped: boolean;
}

/** The wave that the rows of a chart lie in; null for every other fabric. */
export function waveOf(graph: Graph): Wave | null {
  if (graph.baseKind === 'ring' || graph.base.length < 6) return null;
  const first = graph.rows[0]!;
  const base = first.way === 1 ? graph.base : graph.base.slice().reverse();
  const places = new Map<Node, number>(base.map((node, i) => [node, i]));
  const drifts: Drift[] = [];
  for (const row of graph.rows) {
    const drift = driftOf(row, places);
    if (drift === null) return null;
    drifts.push(drift);
    drift.line.forEach((node, i) => {
      places.set(node, drift.at[i]!);
    });
  }
  const widths = [base.length, ...drifts.map(({ line }) => line.length)];
  if (Math.max(...widths) - Math.min(...widths) > ALIKE * Math.max(...widths) + 2) return null;
  if (!drifts.some(({ shaped }) => shaped)) return null;
  const steepness = fallOf(drifts);
  // Where rows lean one way and then the other, as shells do, no line is common to them.
  if (drifts.some((drift) => drift.shaped && agreement(drift, steepness) < 0.5)) return null;
  return laid(places, drifts, steepness);
}

/** How a row drifts; null where it cannot lie in a wave. */
function driftOf(row: ChartRow, below: ReadonlyMap<Node, number>): Drift | null {
  const line = inLine(row);
  const height = heightsOf(row.nodes);
  const tall = line.filter(({ kind, site }) => kind === 'stitch' && site.base !== 'slip').map(height);
  if (tall.length < 6 || Math.max(...tall) - Math.min(...tall) > 0.3) return null;
  const along: number[] = [];
  line.forEach((node, i) => {
    along.push(i === 0 ? 0 : along[i - 1]! + (roomOf(line[i - 1]!) + roomOf(node)) / 2);
  });
  const used = new Map<Node, number>();
  for (const node of line) for (const foot of node.feet) used.set(foot, (used.get(foot) ?? 0) + 1);
  const over = line.map((node) => {
    const feet = node.feet.map((foot) => below.get(foot));
    if (feet.some((foot) => foot === undefined) || feet.length === 0) return null;
    return feet.reduce((sum: number, foot) => sum + foot!, 0) / feet.length;
  });
  const strange = line.some((node, i) => over[i] === null && node.feet.length > 0 && !node.site.turning);
  if (strange) return null;
  const apart = over.map((foot, i) => (foot === null ? null : along[i]! - foot));
  const own = median(apart);
  const near = apart.map((lean) => (lean === null || Math.abs(lean - own) > FARTHEST ? null : lean - own));
  const known = near.filter((lean) => lean !== null);
  if (known.length < 6) return null;
  // Half of a ripple leans to each side: its middle is where neither does.
  const middle = (quantile(known, 0.1) + quantile(known, 0.9)) / 2;
  const lean = near.map((one) => (one === null ? null : one - middle));
  const isPlain = line.map(
    ({ kind, feet }) => kind === 'stitch' && feet.length === 1 && used.get(feet[0]!) === 1,
  );
  const inRun = lean.filter((one, i) => {
    const leans = (k: number): boolean => {
      const other = lean[k];
      return isPlain[k] === true && other != null && one !== null && Math.abs(other - one) < 0.3;
    };
    return one !== null && Math.abs(one) >= LEANING && leans(i) && (leans(i - 1) || leans(i + 1));
  });
  const shaped =
    inRun.length >= IN_RUNS * known.length &&
    inRun.some((one) => one! < 0) &&
    inRun.some((one) => one! > 0) &&
    turnsOf(lean) >= 2;
  return { line, at: along.map((at) => at - own - middle), lean, height: Math.max(...tall), shaped };
}

/** How often a row goes from leaning one way to leaning the other. */
function turnsOf(lean: readonly (number | null)[]): number {
  const signs = lean.flatMap((one) => (one === null || Math.abs(one) < LEANING ? [] : [Math.sign(one)]));
  return signs.filter((sign, i) => i > 0 && sign !== signs[i - 1]).length;
}

function quantile(values: readonly number[], part: number): number {
  const sorted = values.slice().sort((a, b) => a - b);
  return sorted[Math.round(part * (sorted.length - 1))] ?? 0;
}

const median = (values: readonly (number | null)[]): number =>
  quantile(
    values.filter((value) => value !== null),
    0.5,
  );

/** The angle at a place along the rows by which their common line falls. */
type Fall = (at: number) => number;

/** A stitch that leans stands square on its row: over all rows, the line falls as far as their stitches lean. */
function fallOf(drifts: readonly Drift[]): Fall {
  const high = drifts.reduce((sum, { height }) => sum + height, 0);
  const leans = drifts.map(leanAlong);
  return (at) => {
    const lean = leans.reduce((sum, of) => sum + of(at), 0);
    return Math.max(-STEEPEST, Math.min(STEEPEST, Math.atan2(lean, high)));
  };
}

/** How far a row leans at any place along it. */
function leanAlong({ at, lean }: Drift): (place: number) => number {
  const known = at.flatMap((place, i) => (lean[i] === null ? [] : [{ place, lean: lean[i]! }]));
  return (place) => {
    // The first that is not before the place.
    let [next, end] = [0, known.length];
    while (next < end) {
      const half = (next + end) >> 1;
      if (known[half]!.place < place) next = half + 1;
      else end = half;
    }
    if (next === 0 || next === known.length) return known[Math.min(next, known.length - 1)]?.lean ?? 0;
    const [a, b] = [known[next - 1]!, known[next]!];
    return a.lean + ((b.lean - a.lean) * (place - a.place)) / (b.place - a.place || 1);
  };
}

/** How well a row leans the way that the common line says, from -1 to 1. */
function agreement({ at, lean }: Drift, fall: Fall): number {
  let [both, own, common] = [0, 0, 0];
  at.forEach((place, i) => {
    const [a, b] = [lean[i] ?? 0, Math.tan(fall(place))];
    both += a * b;
    own += a * a;
    common += b * b;
  });
  return own === 0 || common === 0 ? 0 : both / Math.sqrt(own * common);
}

function laid(places: ReadonlyMap<Node, number>, drifts: readonly Drift[], fall: Fall): Wave {
  const all = [...places.values()];
  const [from, to] = [Math.min(...all), Math.max(...all)];
  const points: { x: number; y: number }[] = [{ x: 0, y: 0 }];
  let steepest = 0;
  for (let k = 0; from + k * STEP < to; k++) {
    const angle = fall(from + (k + 0.5) * STEP);
    steepest = Math.max(steepest, Math.abs(angle));
    const last = points[k]!;
    points.push({ x: last.x + STEP * Math.cos(angle), y: last.y - STEP * Math.sin(angle) });
  }
  const end = points[points.length - 1]!;
  const on = (at: number): { x: number; y: number } => {
    const k = Math.min(points.length - 2, Math.max(0, Math.floor((at - from) / STEP)));
    const part = (at - from) / STEP - k;
    const [a, b] = [points[k]!, points[k + 1]!];
    const x = a.x + (b.x - a.x) * part;
    // The two ends of a piece lie level.
    return { x, y: a.y + (b.y - a.y) * part - (end.y * x) / (end.x || 1) };
  };
  const x = new Map<Node, number>();
  const lift = new Map<Node, number>();
  const falls = new Map<Node, number>();
  for (const [node, at] of places) {
    const point = on(at);
    x.set(node, point.x);
    lift.set(node, point.y);
    falls.set(node, fall(at));
  }
  return { x, lift, fall: falls, rises: drifts.map(({ height }) => height / Math.cos(steepest)) };
}
