/**
 * From a shape to lines: areas, edges, joins and openings as points in centimetres, and the lengths that are measured
 * on it, each exact from counts and gauge. The points are where the lengths are measured, so that a drawing cannot say
 * one thing and show another. It places no label and knows no sheet.
 */
import type { Gauge } from '../document/pattern.ts';
import { lengthOfCount, stepsOf } from '../study/gauge.ts';
import { type Length, rational } from '../trade/units.ts';
import type { Grain, LaidRow, Lay, Point, Strand } from './flat-rows.ts';
import { STEP } from './flat-rows.ts';
import type { PieceShape } from './shape.ts';

/** A length measured between two points. Its key is the same in every size that has it. */
export interface Measured {
  readonly key: string;
  readonly along: 'across' | 'up';
  readonly what: What;
  /** Which part of the piece, from 1, where several differ; 0 = the piece as a whole. */
  readonly part: number;
  readonly length: Length;
  readonly from: Point;
  readonly to: Point;
  /** Where its line goes best. */
  readonly side: 'below' | 'above' | 'left' | 'right';
}

export type What =
  | 'width' // of rows
  | 'width-end' // of the last row, where it differs
  | 'width-most'
  | 'width-least'
  | 'half-round' // of rounds lying double
  | 'half-round-end'
  | 'half-round-most'
  | 'half-round-least'
  | 'height'
  | 'height-left' // of the left edge, where short rows make it another
  | 'between' // stitches between two parts
  | 'opening'
  | 'across' // a circle or a figure with corners
  | 'side' // of a figure with corners
  | 'spine'
  | 'length'
  | 'total'; // height of pieces that stand on one another

export interface Outline {
  readonly areas: readonly (readonly Point[])[];
  /** Open or closed lines of the edge. */
  readonly edges: readonly (readonly Point[])[];
  /** Where one part stands on another. */
  readonly joins: readonly (readonly Point[])[];
  readonly openings: readonly (readonly [Point, Point])[];
  readonly measures: readonly Measured[];
}

type Base = readonly [Point, Point];

const EPS = 1e-6;

/** Widths that differ by no more than this many stitches, or this part, are not told apart. */
const SAME_STITCHES = 1;
const SAME_PART = 0.01;

/** The outline of a shape worked at a gauge. `stood` are the lines that other pieces stand on. */
export function outlineOf(
  shape: PieceShape,
  grain: Grain,
  gauge: Gauge,
  id: string,
  stood: readonly Base[] = [],
): Outline {
  const { stitch, row } = stepsOf(gauge);
  if (stitch === null || row === null) return NOTHING;
  switch (shape.form) {
    case 'laid':
      return laid(shape.lay, shape.crown, grain, stitch, row, id, stood);
    case 'circle': {
      const r = shape.rounds * grain.row;
      const edge = arc({ x: 0, y: r }, r, r, 0, 2 * Math.PI);
      return closed(edge, [
        measured(
          id,
          'across',
          'across',
          0,
          lengthOfCount(2 * shape.rounds, row),
          { x: -r, y: r },
          { x: r, y: r },
          'below',
        ),
      ]);
    }
    case 'half-circle': {
      const r = shape.rows * grain.row;
      const edge = arc({ x: 0, y: r }, r, r, Math.PI, 2 * Math.PI);
      edge.push(edge[0]!);
      return closed(edge, [
        measured(
          id,
          'across',
          'across',
          0,
          lengthOfCount(2 * shape.rows, row),
          { x: -r, y: r },
          { x: r, y: r },
          'above',
        ),
        measured(
          id,
          'up',
          'height',
          0,
          lengthOfCount(shape.rows, row),
          { x: r, y: 0 },
          { x: r, y: r },
          'right',
        ),
      ]);
    }
    case 'corners':
      return cornered(shape, grain, stitch, row, id);
    case 'oval': {
      const r = shape.rounds * grain.row;
      const half = (shape.chains * grain.stitch) / 2;
      const edge = [
        ...arc({ x: half, y: r }, r, r, -Math.PI / 2, Math.PI / 2),
        ...arc({ x: -half, y: r }, r, r, Math.PI / 2, (3 * Math.PI) / 2),
      ];
      edge.push(edge[0]!);
      const wide = lengthOfCount(2 * shape.rounds, row);
      return closed(edge, [
        measured(
          id,
          'across',
          'length',
          0,
          wide.add(lengthOfCount(shape.chains, stitch)),
          { x: -half - r, y: r },
          { x: half + r, y: r },
          'below',
        ),
        measured(id, 'up', 'across', 0, wide, { x: half, y: 0 }, { x: half, y: 2 * r }, 'right'),
      ]);
    }
    case 'wings':
      return winged(shape, grain, id);
    case 'cord': {
      const long = shape.chains * grain.stitch;
      const high = grain.row / 3;
      const edge = box(0, 0, long, high);
      return closed(edge, [
        measured(
          id,
          'across',
          'length',
          0,
          lengthOfCount(shape.chains, stitch),
          { x: 0, y: 0 },
          { x: long, y: 0 },
          'below',
        ),
      ]);
    }
  }
}

export const NOTHING: Outline = { areas: [], edges: [], joins: [], openings: [], measures: [] };

/** The outline of one area whose edge is all its own. */
function closed(
  edge: readonly Point[],
  measures: readonly Measured[],
  joins: readonly (readonly Point[])[] = [],
): Outline {
  return { areas: [edge], edges: [edge], joins, openings: [], measures };
}

function measured(
  id: string,
  along: Measured['along'],
  what: What,
  part: number,
  length: Length,
  from: Point,
  to: Point,
  side: Measured['side'],
): Measured {
  return { key: `${id} ${part} ${what}`, along, what, part, length, from, to, side };
}

const box = (x: number, y: number, width: number, height: number): readonly Point[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
  { x, y },
];

/** Points of an arc, every six degrees or so. */
function arc(middle: Point, rx: number, ry: number, from: number, to: number): Point[] {
  const steps = Math.max(4, Math.ceil((Math.abs(to - from) * 30) / Math.PI));
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = from + ((to - from) * i) / steps;
    return { x: middle.x + rx * Math.cos(angle), y: middle.y + ry * Math.sin(angle) };
  });
}

function cornered(
  shape: Extract<PieceShape, { form: 'corners' }>,
  grain: Grain,
  stitch: Length,
  row: Length,
  id: string,
): Outline {
  const { corners, span, rounds } = shape;
  const side = (span / corners) * grain.stitch;
  const radius = side / 2 / Math.sin(Math.PI / corners);
  const flat = radius * Math.cos(Math.PI / corners);
  const edge = Array.from({ length: corners + 1 }, (_, i) => {
    const angle = -Math.PI / 2 + Math.PI / corners + (2 * Math.PI * i) / corners;
    return { x: radius * Math.cos(angle), y: flat + radius * Math.sin(angle) };
  });
  const along = lengthOfCount(span, stitch).div(corners);
  return closed(edge, [
    measured(id, 'across', 'side', 0, along, { x: -side / 2, y: 0 }, { x: side / 2, y: 0 }, 'below'),
    ...(corners === 4 || corners % 2 === 1
      ? []
      : [
          measured(
            id,
            'up',
            'across',
            0,
            lengthOfCount(2 * rounds, row),
            { x: radius, y: 0 },
            { x: radius, y: 2 * flat },
            'right',
          ),
        ]),
  ]);
}

/** Two wings, each sheared by what is added at its ends, and turned so that they meet at the spine. */
function winged(shape: Extract<PieceShape, { form: 'wings' }>, grain: Grain, id: string): Outline {
  const high = shape.rows * grain.row;
  const total = (shape.span / 2) * grain.stitch;
  const gain = shape.spine + shape.edge;
  const toSpine = (total * shape.spine) / gain;
  // Along the last row from the foot of the begin: the spine's end on one side, the tip on the other.
  const turn = Math.atan2(toSpine, high);
  const at = (along: number): Point => {
    // The row lies across (along, −high); turned so that the spine hangs straight down.
    const [x, y] = [along, -high];
    return { x: x * Math.cos(turn) - y * Math.sin(turn), y: x * Math.sin(turn) + y * Math.cos(turn) };
  };
  const foot = at(-toSpine);
  const tip = at(total - toSpine);
  const shift = -Math.min(foot.y, tip.y, 0);
  const up = (point: Point, sign: 1 | -1): Point => ({ x: sign * (point.x - foot.x), y: point.y + shift });
  const begin: Point = { x: 0, y: shift };
  const [spineEnd, right, left] = [up(foot, 1), up(tip, 1), up(tip, -1)];
  const edge = [begin, right, spineEnd, left, begin];
  const spine = Math.hypot(toSpine, high);
  // The square root is the only number here that no fraction is; it is taken to a thousandth of a millimetre.
  const spineLength = rational(Math.round(spine * 1e4) / 1e4)!;
  const across = rational(Math.round((right.x - left.x) * 1e4) / 1e4)!;
  return closed(
    edge,
    [
      measured(
        id,
        'across',
        'across',
        0,
        across,
        { x: left.x, y: left.y },
        { x: right.x, y: right.y },
        'above',
      ),
      measured(
        id,
        'up',
        'spine',
        0,
        spineLength,
        { x: right.x, y: spineEnd.y },
        { x: right.x, y: begin.y },
        'right',
      ),
    ],
    [[begin, spineEnd]],
  );
}

function laid(
  lay: Lay,
  crown: number,
  grain: Grain,
  stitch: Length,
  row: Length,
  id: string,
  stood: readonly Base[],
): Outline {
  const areas: Point[][] = [];
  const edges: (readonly Point[])[] = [];
  const joins: (readonly Point[])[] = [];
  const measures: Measured[] = [];
  const bases = [...stood, ...lay.strands.filter((strand) => strand.joined).map((strand) => strand.base)];
  lay.strands.forEach((strand, at) => {
    const round = crown > 0 && at === 0;
    const [smoothLeft, smoothRight] = round
      ? domed(strand, crown, grain)
      : [smooth(strand.left, grain, isRound(strand)), smooth(strand.right, grain, isRound(strand))];
    areas.push([...smoothLeft, ...strand.top, ...[...smoothRight].reverse()]);
    if (strand.joined) joins.push([...strand.base]);
    else if (!round) edges.push([...strand.base]);
    // Where another strand stands, there is no edge.
    for (const line of [smoothLeft, smoothRight, strand.top]) edges.push(...without(line, bases));
    measures.push(...strandMeasures(strand, at, lay, grain, stitch, row, id, crown));
  });
  return {
    areas,
    edges,
    joins: [...joins, ...lay.seams],
    openings: lay.slits.map(({ from, to }) => [from, to] as const),
    measures: [...measures, ...betweenMeasures(lay, stitch, id), ...openingMeasures(lay, stitch, id)],
  };
}

const isRound = ({ rows }: Strand): boolean => rows.every(({ round }) => round);

/** An edge is drawn as the line that its shaping makes, when no row ends further from it than this (in stitches). */
const SLACK = 1.25;

/** Steps of like size near to one another are a slope: so many others at least about each of them. */
const AGAIN = 2;
/**
 * How near, in rows, and how much alike. All of a round widens at once, as in a yoke, with plain rounds between (every
 * fourth to tenth round: common practice, no source).
 */
const LIKE = { rows: { near: 2, ratio: 0.7 }, rounds: { near: 10, ratio: 0.4 } } as const;

/** Is one step out of many, each at its height, met again in like size just below and above? Then it is a slope. */
function isOfSlope(
  step: { by: number; y: number },
  all: readonly { by: number; y: number }[],
  grain: Grain,
  round: boolean,
): boolean {
  const { near, ratio } = round ? LIKE.rounds : LIKE.rows;
  const like = all.filter(
    (other) =>
      other !== step &&
      Math.abs(other.y - step.y) < near * grain.row + EPS &&
      other.by / step.by > ratio &&
      other.by / step.by < 1 / ratio,
  );
  return like.length >= AGAIN;
}

/** The line without the corners of steps that come again, and without what is plain between rounds that widen. */
function sloped(line: readonly Point[], grain: Grain, round: boolean): readonly Point[] {
  const jump = STEP * grain.stitch - EPS;
  const moves: { at: number; tip: number; isStep: boolean; by: number; y: number }[] = [];
  for (let i = 1; i < line.length; i++) {
    const [before, point] = [line[i - 1]!, line[i]!];
    const by = point.x - before.x;
    const isStep = Math.abs(point.y - before.y) < EPS && Math.abs(by) > jump;
    const leans = round && Math.abs(by) > EPS && Math.abs(point.y - before.y) > EPS;
    // A step goes out and then up to its tip, where a lean ends at once.
    if (isStep || leans) moves.push({ at: i, tip: isStep ? i + 1 : i, isStep, by, y: before.y });
  }
  if (moves.length === 0) return line;
  const slopes = moves.filter((move) => isOfSlope(move, moves, grain, round));
  const out = new Set(slopes.flatMap(({ at, isStep }) => (isStep ? [at] : [])));
  slopes.forEach((move, k) => {
    const next = slopes[k + 1];
    if (!round || next === undefined || next.by * move.by < 0) return;
    if (next.y - move.y > LIKE.rounds.near * grain.row + EPS) return;
    for (let i = move.tip + 1; i < next.at; i++) out.add(i);
  });
  return line.filter((_, i) => !out.has(i));
}

/** The line through as few of the points as stay close to all of them. Steps stay. */
function smooth(rough: readonly Point[], grain: Grain, round: boolean): readonly Point[] {
  const line = sloped(rough, grain, round);
  const jump = STEP * grain.stitch - EPS;
  const out: Point[] = [];
  let from = 0;
  const flush = (to: number): void => {
    out.push(...straightened(line.slice(from, to + 1), SLACK * grain.stitch));
    from = to + 1;
  };
  for (let i = 1; i < line.length; i++) {
    const isStep =
      Math.abs(line[i]!.y - line[i - 1]!.y) < EPS && Math.abs(line[i]!.x - line[i - 1]!.x) > jump;
    if (isStep) flush(i - 1);
  }
  flush(line.length - 1);
  return out;
}

/** The way of Ramer, Douglas and Peucker: the farthest point stays while it is farther off than `slack`. */
function straightened(line: readonly Point[], slack: number): readonly Point[] {
  if (line.length < 3) return line;
  const keep = new Set([0, line.length - 1]);
  const open: (readonly [number, number])[] = [[0, line.length - 1]];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const [from, to] = next;
    const [a, b] = [line[from]!, line[to]!];
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    let [most, at] = [slack, -1];
    for (let i = from + 1; i < to; i++) {
      const { x, y } = line[i]!;
      const off =
        long < EPS
          ? Math.hypot(x - a.x, y - a.y)
          : Math.abs((b.x - a.x) * (a.y - y) - (a.x - x) * (b.y - a.y)) / long;
      if (off > most) [most, at] = [off, i];
    }
    if (at < 0) continue;
    keep.add(at);
    open.push([from, at], [at, to]);
  }
  return line.filter((_, i) => keep.has(i));
}

/** A flat crown is folded when the piece lies double: it is drawn as the round end that it makes. */
function domed(strand: Strand, crown: number, grain: Grain): readonly [readonly Point[], readonly Point[]] {
  const until = strand.rows[Math.min(crown, strand.rows.length) - 1]!;
  const high = until.yLeft;
  const curve = (out: 1 | -1): readonly Point[] => {
    const reach = out * ((until.right - until.left) / 2);
    const middle = (until.left + until.right) / 2;
    const dome = arc({ x: middle, y: high }, reach, high, -Math.PI / 2, 0);
    const side = out === 1 ? strand.right : strand.left;
    const rest = [dome.at(-1)!, ...side.filter((point) => point.y > high + EPS)];
    return [...dome.slice(0, -1), ...smooth(rest, grain, true)];
  };
  return [curve(-1), curve(1)];
}

/** The line without its level parts that a base covers. */
function without(line: readonly Point[], bases: readonly (readonly [Point, Point])[]): readonly Point[][] {
  const out: Point[][] = [];
  let open: Point[] = [];
  for (let i = 0; i < line.length; i++) {
    const here = line[i]!;
    const before = line[i - 1];
    if (before === undefined) {
      open = [here];
      continue;
    }
    const level = Math.abs(here.y - before.y) < EPS;
    let gaps: readonly (readonly [number, number])[] = [];
    if (level) {
      gaps = bases
        .filter((base) => Math.abs(base[0].y - here.y) < EPS && Math.abs(base[1].y - here.y) < EPS)
        .map((base) => [base[0].x, base[1].x] as const);
    }
    const [a, b] = [Math.min(before.x, here.x), Math.max(before.x, here.x)];
    const cuts = gaps.filter(([from, to]) => from < b - EPS && to > a + EPS);
    if (cuts.length === 0) {
      open.push(here);
      continue;
    }
    // Level and in part covered: the free parts, in the direction of the line.
    const free: (readonly [number, number])[] = [];
    let at = a;
    for (const [from, to] of [...cuts].sort((x, y) => x[0] - y[0])) {
      if (from > at + EPS) free.push([at, from]);
      at = Math.max(at, to);
    }
    if (at < b - EPS) free.push([at, b]);
    const onwards = here.x > before.x;
    const parts = (onwards ? free : [...free].reverse()).map(([from, to]) =>
      (onwards ? [from, to] : [to, from]).map((x): Point => ({ x, y: here.y })),
    );
    for (const part of parts) {
      if (Math.abs(part[0]!.x - open.at(-1)!.x) < EPS) open.push(part[1]!);
      else {
        if (open.length > 1) out.push(open);
        open = [...part];
      }
    }
    if (Math.abs(open.at(-1)!.x - here.x) > EPS || open.length === 1) {
      if (open.length > 1) out.push(open);
      open = [here];
    }
  }
  if (open.length > 1) out.push(open);
  return out;
}

/** Rows of a strand between two steps of its edge. */
interface Section {
  readonly rows: readonly LaidRow[];
  readonly low: number;
  readonly high: number;
}

function sectionsOf(strand: Strand, grain: Grain): readonly Section[] {
  const starts = [0];
  const jump = STEP * grain.stitch - EPS;
  const round = isRound(strand);
  /** Rows whose edge lies elsewhere than that of the row before; most stand straight. */
  const moves = (side: 'left' | 'right') => {
    const found = new Map<number, { readonly by: number; readonly y: number }>();
    let before = strand.rows[0]!;
    for (const [i, row] of strand.rows.entries()) {
      if (row[side] !== before[side]) found.set(i, { by: row[side] - before[side], y: row.yLeft });
      before = row;
    }
    return { found, all: [...found.values()] };
  };
  const [lefts, rights] = [moves('left'), moves('right')];
  const isStep = ({ found, all }: typeof lefts, i: number): boolean => {
    const move = found.get(i);
    return move !== undefined && Math.abs(move.by) > jump && !isOfSlope(move, all, grain, round);
  };
  strand.rows.forEach((row, i) => {
    const before = strand.rows[i - 1];
    if (before === undefined) return;
    const steps = row.parts === true || isStep(lefts, i) || isStep(rights, i);
    // Short rows turn where they turn: what is passed over is worked later.
    const short = Math.abs(row.yLeft - row.yRight) > EPS || Math.abs(before.yLeft - before.yRight) > EPS;
    if (!steps || short) return;
    // Both sides of a neck or of armholes are shaped within a row or two of each other.
    if (i - starts.at(-1)! <= 2 && starts.length > 1) starts[starts.length - 1] = i;
    else starts.push(i);
  });
  const low = Math.min(strand.base[0].y, strand.base[1].y);
  return starts.map((from, at) => {
    const rows = strand.rows.slice(from, starts[at + 1] ?? strand.rows.length);
    const before = strand.rows[from - 1];
    return {
      rows,
      low: before === undefined ? low : Math.max(before.yLeft, before.yRight),
      high: Math.max(rows.at(-1)!.yLeft, rows.at(-1)!.yRight),
    };
  });
}

function strandMeasures(
  strand: Strand,
  at: number,
  lay: Lay,
  grain: Grain,
  stitch: Length,
  row: Length,
  id: string,
  crown: number,
): readonly Measured[] {
  const sections = sectionsOf(strand, grain);
  const many = lay.strands.length > 1 || sections.length > 1;
  const out: Measured[] = [];
  sections.forEach((section, number) => {
    const part = many ? at * 10 + number + 1 : 0;
    const { rows } = section;
    const first = rows[0]!;
    const last = rows.at(-1)!;
    const round = first.round;
    const most = rows.reduce((a, b) => (b.span > a.span ? b : a));
    const least = rows.reduce((a, b) => (b.span < a.span ? b : a));
    const width = (of: LaidRow) => {
      const length = lengthOfCount(of.span, stitch);
      return of.round ? length.div(2) : length;
    };
    const add = (of: LaidRow, what: What, y: number, side: Measured['side']) =>
      out.push(measured(id, 'across', what, part, width(of), { x: of.left, y }, { x: of.right, y }, side));
    const low = number === 0 && !strand.joined ? 'below' : 'above';
    if (crown === 0 || crown < rows.length) {
      if (crown === 0)
        add(first, round ? 'half-round' : 'width', number === 0 ? section.low : first.yLeft, low);
      if (crown > 0 || differs(first, last))
        add(last, round ? 'half-round-end' : 'width-end', section.high, 'above');
    }
    if (differs(most, first) && differs(most, last))
      add(most, round ? 'half-round-most' : 'width-most', most.yLeft, 'below');
    if (differs(least, first) && differs(least, last))
      add(least, round ? 'half-round-least' : 'width-least', least.yLeft, 'above');
    const x = Math.max(...rows.map((one) => one.right));
    const rightEdge = last.yRight - strandLow(section, strand, number, 1);
    const leftEdge = last.yLeft - strandLow(section, strand, number, 0);
    const up = (high: number) => lengthOfCount(Math.round(high / grain.row), row);
    out.push(
      measured(
        id,
        'up',
        'height',
        part,
        up(rightEdge),
        { x, y: last.yRight - rightEdge },
        { x, y: last.yRight },
        'right',
      ),
    );
    if (Math.abs(rightEdge - leftEdge) > EPS) {
      const left = Math.min(...rows.map((one) => one.left));
      out.push(
        measured(
          id,
          'up',
          'height-left',
          part,
          up(leftEdge),
          { x: left, y: last.yLeft - leftEdge },
          { x: left, y: last.yLeft },
          'left',
        ),
      );
    }
  });
  return out;
}

function strandLow(section: Section, strand: Strand, number: number, end: 0 | 1): number {
  return number === 0 ? strand.base[end].y : section.low;
}

function differs(a: LaidRow, b: LaidRow): boolean {
  const by = Math.abs(a.span - b.span);
  return by > SAME_STITCHES && by > SAME_PART * Math.max(a.span, b.span);
}

/** The way between two strands that stand beside one another: a neck. */
function betweenMeasures(lay: Lay, stitch: Length, id: string): readonly Measured[] {
  const out: Measured[] = [];
  const tops = lay.strands.map((strand) => strand.rows.at(-1)!).sort((a, b) => a.left - b.left);
  for (let i = 1; i < tops.length; i++) {
    const [a, b] = [tops[i - 1]!, tops[i]!];
    const stitches = Math.round(((b.left - a.right) / (a.right - a.left)) * a.span * 2) / 2;
    if (stitches < STEP || !Number.isFinite(stitches)) continue;
    const y = Math.max(a.yRight, b.yLeft);
    out.push(
      measured(
        id,
        'across',
        'between',
        i,
        lengthOfCount(stitches, stitch),
        { x: a.right, y },
        { x: b.left, y },
        'above',
      ),
    );
  }
  return out;
}

function openingMeasures(lay: Lay, stitch: Length, id: string): readonly Measured[] {
  return lay.slits.map(({ from, to, stitches }, i) =>
    measured(id, 'across', 'opening', i + 1, lengthOfCount(stitches, stitch), from, to, 'below'),
  );
}
