/**
 * The points and valleys of a ripple worked in rounds: places that every round widens at and, between them, places that
 * it narrows at, above one another to the outermost round, with stitches between that stand each on one. Looks only;
 * lays nothing out.
 */
import { type ChartRow, heightsOf, type Node } from './graph.ts';

/** Where a round has its points and valleys. */
export interface PointedRound {
  /** Places in the line of the round, in the order made; a half lies between two of the line. */
  readonly points: readonly number[];
  /** The valley behind each point, likewise. */
  readonly valleys: readonly number[];
  /** Which point each of them is, counted anticlockwise from the first of the first pointed round. */
  readonly rays: readonly number[];
  /** Stitches that a round gains on either side of a point, and loses on either side of a valley. */
  readonly gain: number;
  readonly loss: number;
}

export interface Points {
  readonly count: number;
  /** The first round with points; those before it lie as circles. */
  readonly from: number;
  /** From that round on, one each. */
  readonly rounds: readonly PointedRound[];
}

const FEWEST = 4;
const MOST = 24;
/** Stitches made or lost in places no further from one another than this belong to one point or valley. */
const NEAR = 3;
/** Least part of the outermost round that stands each stitch on one. */
const PLAIN = 0.3;

/** The line of a round: what takes room in it. */
export const lineOf = (row: ChartRow): readonly Node[] => row.nodes.filter(({ kind }) => kind !== 'picot');

/** The points of rounds; null when they have none that hold to the outermost. */
export function pointsOf(rows: readonly ChartRow[]): Points | null {
  const rounds: PointedRound[] = [];
  let above: Found | null = null;
  let from = rows.length;
  for (let index = rows.length - 1; index > 0; index--) {
    const found = foundIn(rows[index]!, rows[index - 1]!);
    if (found === null || (above !== null && !standsOn(above, found))) break;
    above = found;
    from = index;
  }
  if (rows.length - from < 2 || above === null) return null;
  const last = rows[rows.length - 1]!;
  let below: { readonly found: Found; readonly rays: readonly number[] } | null = null;
  for (const [index, row] of rows.entries()) {
    if (index < from) continue;
    const found = foundIn(row, rows[index - 1]!)!;
    const rays: readonly number[] =
      below === null ? found.points.map((_, k) => k) : found.points.map((point) => rayUnder(point, below!));
    if (rays.some((ray) => ray < 0)) return null;
    below = { found, rays };
    const { count } = found;
    const sum = (parts: readonly { readonly by: number }[]) => parts.reduce((all, { by }) => all + by, 0);
    rounds.push({
      points: found.points.map(({ at }) => at),
      valleys: found.valleys.map(({ at }) => at),
      rays,
      gain: sum(found.points) / (2 * count),
      loss: -sum(found.valleys) / (2 * count),
    });
  }
  return plainIn(last) >= PLAIN ? { count: above.count, from, rounds } : null;
}

/** What part of a round are stitches that stand alone on one? */
function plainIn(row: ChartRow): number {
  const stitches = lineOf(row).filter(({ kind }) => kind === 'stitch');
  const used = new Map<Node, number>();
  for (const { feet } of stitches) for (const foot of feet) used.set(foot, (used.get(foot) ?? 0) + 1);
  const plain = stitches.filter(({ feet }) => feet.length === 1 && used.get(feet[0]!) === 1);
  return plain.length / Math.max(1, stitches.length);
}

/** A point or a valley of a round. */
interface Part {
  readonly at: number;
  /** Stitches gained, or lost as a number below zero. */
  readonly by: number;
  /** Nodes of the round below that it takes. */
  readonly under: ReadonlySet<Node>;
  /** Nodes of its own round that are it, or lie beside it. */
  readonly own: ReadonlySet<Node>;
}

interface Found {
  readonly count: number;
  readonly points: readonly Part[];
  readonly valleys: readonly Part[];
}

const meets = (a: ReadonlySet<Node>, b: ReadonlySet<Node>): boolean => [...a].some((node) => b.has(node));

/** Are the points and valleys of a round above those of the one below? */
function standsOn(above: Found, below: Found): boolean {
  return (
    above.count === below.count &&
    above.points.every((part) => below.points.some(({ own }) => meets(part.under, own))) &&
    above.valleys.every((part) => below.valleys.some(({ own }) => meets(part.under, own)))
  );
}

function rayUnder(point: Part, below: { readonly found: Found; readonly rays: readonly number[] }): number {
  const at = below.found.points.findIndex(({ own }) => meets(point.under, own));
  return below.rays[at] ?? -1;
}

/** A run of places below that a round widens at, or one that it narrows at. */
interface Run {
  readonly widens: boolean;
  readonly from: number;
  /** As far on from `from` as the run goes; may be past the end of the round. */
  readonly to: number;
  readonly by: number;
}

function foundIn(row: ChartRow, under: ChartRow): Found | null {
  const line = lineOf(row);
  const below = row.way === under.way ? lineOf(under) : lineOf(under).slice().reverse();
  const tall = line
    .filter(({ kind, site }) => kind === 'stitch' && site.base !== 'slip')
    .map(heightsOf(line));
  if (tall.length < 8 || Math.max(...tall) - Math.min(...tall) > 0.3) return null;
  const places = new Map(below.map((node, i) => [node, i]));
  const feet = line.map((node) => node.feet.map((foot) => places.get(foot)));
  const isStrange = (node: Node, i: number) =>
    node.beside !== null || (!node.site.turning && feet[i]!.some((foot) => foot === undefined));
  if (line.some(isStrange)) return null;
  const runs = runsOf(growthOf(line, below, places), below.length);
  if (runs === null) return null;
  const points: Part[] = [];
  const valleys: Part[] = [];
  const wides = runs.filter(({ widens }) => widens);
  for (const run of wides) {
    const own = line.flatMap((node, i) => {
      const foot = node.feet.length === 1 ? feet[i]![0] : undefined;
      return foot !== undefined && isWithin(foot, run, below.length) ? [i] : [];
    });
    const span = spanOf(own, line.length);
    if (span === null) return null;
    points.push(partOf(run, span.at, span.nodes, line, below));
  }
  const order = points.map((_, k) => k).sort((a, b) => points[a]!.at - points[b]!.at);
  for (const [n, k] of order.entries()) {
    const next = order[(n + 1) % order.length]!;
    const narrow = runs[(runs.indexOf(wides[k]!) + 1) % runs.length]!;
    const valley = valleyOf(
      narrow,
      { from: wides[k]!.to, a: points[k]!.at, b: points[next]!.at },
      line,
      feet,
      below.length,
    );
    if (valley === null) return null;
    valleys.push(partOf(narrow, valley.at, valley.nodes, line, below));
  }
  return { count: points.length, points: order.map((k) => points[k]!), valleys };
}

function partOf(
  run: Run,
  at: number,
  nodes: readonly number[],
  line: readonly Node[],
  below: readonly Node[],
): Part {
  const under = new Set<Node>();
  for (let i = run.from; i <= run.to; i++) under.add(below[i % below.length]!);
  return { at, by: run.by, under, own: new Set(nodes.map((i) => line[i]!)) };
}

/** How many more or fewer stitches a round has at each place of the one below. */
function growthOf(
  line: readonly Node[],
  below: readonly Node[],
  places: ReadonlyMap<Node, number>,
): readonly number[] {
  const made: number[] = below.map(() => 0);
  const gathered: number[] = below.map(() => 0);
  for (const { kind, feet } of line) {
    if (kind !== 'stitch') continue;
    for (const foot of feet) {
      const at = places.get(foot);
      if (at === undefined) continue;
      if (feet.length === 1) made[at] = made[at]! + 1;
      else gathered[at] = gathered[at]! + (feet.length - 1) / feet.length;
    }
  }
  return below.map(({ kind }, i) => {
    if (gathered[i]! > 0) return -gathered[i]!;
    return kind === 'stitch' ? made[i]! - 1 : made[i]!;
  });
}

/** The runs of a round in turn, one that widens first; null where they do not alternate or are too few or too small. */
function runsOf(growth: readonly number[], length: number): readonly Run[] | null {
  const changes = growth.flatMap((by, at) => (by === 0 ? [] : [{ at, by }]));
  const start = changes.findIndex(
    ({ by }, i) => by > 0 && changes[(i - 1 + changes.length) % changes.length]!.by < 0,
  );
  if (start < 0) return null;
  const runs: Run[] = [];
  changes.forEach((_, i) => {
    const { at, by } = changes[(start + i) % changes.length]!;
    const last = runs[runs.length - 1];
    const on = last === undefined ? at : at + (at < last.to % length ? length : 0);
    const to = last === undefined ? at : on + Math.floor(last.to / length) * length;
    if (last !== undefined && last.widens === by > 0)
      runs[runs.length - 1] = { ...last, to, by: last.by + by };
    else runs.push({ widens: by > 0, from: to, to, by });
  });
  const count = runs.length / 2;
  if (!Number.isInteger(count) || count < FEWEST || count > MOST) return null;
  const isPart = ({ widens, from, to, by }: Run) => (widens ? by >= 2 : by <= -0.9) && to - from <= NEAR;
  return runs.every(isPart) ? runs : null;
}

const isWithin = (place: number, { from, to }: Run, length: number): boolean =>
  (place >= from && place <= to) || (place + length >= from && place + length <= to);

/** The middle of some places of a ring, and all places between the first and the last of them. */
function spanOf(
  places: readonly number[],
  length: number,
): { readonly at: number; readonly nodes: readonly number[] } | null {
  if (places.length === 0) return null;
  let [widest, begin] = [-1, 0];
  places.forEach((place, i) => {
    const before = places[(i - 1 + places.length) % places.length]!;
    const gap = (place - before + length) % length || length;
    if (gap > widest) [widest, begin] = [gap, place];
  });
  const size = length - widest;
  const nodes = Array.from({ length: size + 1 }, (_, i) => (begin + i) % length);
  return { at: (begin + size / 2) % length, nodes };
}

/** Where the stitches between two points go from one side of a valley to the other. */
function valleyOf(
  narrow: Run,
  between: { readonly from: number; readonly a: number; readonly b: number },
  line: readonly Node[],
  feet: readonly (readonly (number | undefined)[])[],
  length: number,
): { readonly at: number; readonly nodes: readonly number[] } | null {
  const { length: size } = line;
  const onward = (place: number): number => (place - between.from + 2 * length) % length;
  const middle = (onward(narrow.from) + onward(narrow.from) + narrow.to - narrow.from) / 2;
  const reach = (between.b - between.a + size) % size || size;
  let [left, right]: [number | null, number | null] = [null, null];
  for (let k = 1; k < reach; k++) {
    const i = Math.ceil(between.a + k - 1e-9) % size;
    const own = feet[i]!.filter((foot) => foot !== undefined).map(onward);
    if (own.length === 0 || line[i]!.kind !== 'stitch') continue;
    const foot = own.reduce((a, b) => a + b, 0) / own.length;
    const step = Math.ceil(between.a + k - 1e-9);
    if (Math.abs(foot - middle) < 0.01) return { at: i, nodes: [i] };
    if (foot < middle) left = step;
    else if (right === null) right = step;
  }
  if (left === null || right === null || right <= left) return null;
  return { at: ((left + right) / 2) % size, nodes: [left % size, right % size] };
}
