/**
 * Rows laid upon one another as the stitches say: where each row begins and ends across, and how high it lies, in
 * centimetres. A row stands where most of its stitches stand on those below, so that increases and decreases show on
 * the side where they are made; short rows raise their own part only. It knows no sheet and no words.
 */
import type { Fabric, Opening } from '../fabric/index.ts';
import { spanOf } from '../study/gauge.ts';
import { type Origins, originsOf } from '../study/origins.ts';
import type { WorkedRow } from '../study/worked.ts';

/** x grows to the right as the right side is looked at, y upwards from the first row, in cm. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Where the stitches of a row lie, in the order made: the middle of each, its half width, and its upper edge. */
export interface Spots {
  readonly x: readonly number[];
  readonly half: readonly number[];
  readonly y: readonly number[];
}

/** A row on the sheet. */
export interface LaidRow {
  /** Stitches that it is wide. */
  readonly span: number;
  readonly left: number;
  readonly right: number;
  /** Height of its upper corners. */
  readonly yLeft: number;
  readonly yRight: number;
  readonly round: boolean;
  /** It leaves stitches waiting, and goes on without them: whatever it is wide, something else begins here. */
  readonly parts?: true;
}

/** Rows of which each stands on the one before: a piece, or the part of one that is worked apart. */
export interface Strand {
  /** What it stands on: left and right end. */
  readonly base: readonly [Point, Point];
  /** It stands on stitches that are there already. */
  readonly joined: boolean;
  readonly rows: LaidRow[];
  readonly left: Point[];
  readonly right: Point[];
  /** Upper edge of its last row, from left to right. */
  top: readonly Point[];
}

/** A hole that a row leaves: stitches passed over under chains. */
export interface Slit {
  readonly from: Point;
  readonly to: Point;
  readonly stitches: number;
}

export interface Lay {
  readonly strands: readonly Strand[];
  readonly slits: readonly Slit[];
  /** Lines along which rounds grow at corners, on either side of the widest part between two of them. */
  readonly seams: readonly (readonly Point[])[];
  /** Where the last row's stitches lie, for what is worked on from them. */
  readonly end: Spots;
  /** Rows that are told only by their counts were laid evenly to both sides. */
  readonly evenly: boolean;
  readonly slanted: boolean;
}

/** Size of a stitch and of a row. */
export interface Grain {
  readonly stitch: number;
  readonly row: number;
}

/** More than this at once is no shaping but an edge of its own: an armhole, a neck, stitches left (in stitches). */
export const STEP = 3;

const EPS = 1e-6;

const stitchesOf = ({ sites }: Opening): number => sites.filter((site) => site.kind === 'stitch').length;

/** An opening that few chains or none bridge: what it leaves waiting is no longer part of the tube. */
export function isPassedOver(opening: Opening): boolean {
  const stitches = stitchesOf(opening);
  return stitches > 0 && opening.chains < stitches / 2;
}

/** A row below as far as it is needed: most rows stand straight on it, and nobody asks for its stitches. */
interface Lying {
  readonly left: number;
  readonly right: number;
  /** The height of all its stitches; null where they differ. */
  readonly level: number | null;
  readonly spots: () => Spots;
}

/** A row that stands straight on the one below. */
class Straight implements Lying {
  readonly left: number;
  readonly right: number;
  level: number;
  #fabric: Fabric;
  #width: number;
  #direction: 1 | -1;

  constructor(left: number, right: number, level: number, fabric: Fabric, width: number, direction: 1 | -1) {
    this.left = left;
    this.right = right;
    this.level = level;
    this.#fabric = fabric;
    this.#width = width;
    this.#direction = direction;
  }

  /** It becomes the row that stands straight on it. */
  next(level: number, fabric: Fabric, width: number, direction: 1 | -1): void {
    this.level = level;
    this.#fabric = fabric;
    this.#width = width;
    this.#direction = direction;
  }

  spots(): Spots {
    const { middles, halves } = spread(this.#fabric, this.#width);
    const origin = this.#direction === 1 ? this.left : this.right;
    return {
      x: middles.map((middle) => origin + this.#direction * middle),
      half: halves,
      y: middles.map(() => this.level),
    };
  }
}

/** What a piece is worked onto; its first row goes from right to left when the right side faces. */
export interface Ground {
  readonly left: number;
  readonly right: number;
  /** Height at a place across. */
  readonly at: (x: number) => number;
}

/** Lays the rows of a piece. Null when it has none that makes anything. */
export function layRows(rows: readonly WorkedRow[], grain: Grain, ground: Ground | null): Lay | null {
  const work = new Laying(grain, ground);
  for (const row of rows) work.add(row);
  return work.done();
}

class Laying {
  readonly #grain: Grain;
  readonly #ground: Ground | null;
  readonly #strands: Strand[] = [];
  readonly #slits: Slit[] = [];
  readonly #corners: Cornered[] = [];
  #spots: Lying | null = null;
  #rest: Spots | null = null;
  #direction: 1 | -1 = -1;
  #span: number | null = null;
  #evenly = false;
  #slanted = false;
  #first = true;

  constructor(grain: Grain, ground: Ground | null) {
    this.#grain = grain;
    this.#ground = ground;
  }

  add(row: WorkedRow): void {
    if (row.onlyFoundation) {
      this.#span = row.foundation > 0 ? row.foundation : null;
      return;
    }
    const span = spanOf(row.tally, this.#span);
    this.#span = span;
    if (row.round) this.#round(row, span);
    else this.#flat(row, span);
    this.#first = false;
  }

  done(): Lay | null {
    if (this.#strands.length === 0 || this.#spots === null) return null;
    for (const strand of this.#strands) if (strand.top === LEVEL) strand.top = cornersOf(strand.rows.at(-1)!);
    return {
      strands: this.#strands,
      slits: this.#slits,
      seams: seamsOf(this.#corners),
      end: this.#spots.spots(),
      evenly: this.#evenly,
      slanted: this.#slanted,
    };
  }

  /** A round lies double: half of it is seen, with its middle where the middle of what it stands on is. */
  #round(row: WorkedRow, span: number): void {
    const width = (span * this.#grain.stitch) / 2;
    let strand = this.#strands.at(-1);
    const top = strand?.rows.at(-1);
    const [low, middle] =
      top !== undefined
        ? [Math.max(top.yLeft, top.yRight), (top.left + top.right) / 2]
        : this.#ground === null
          ? [0, 0]
          : [
              this.#ground.at((this.#ground.left + this.#ground.right) / 2),
              (this.#ground.left + this.#ground.right) / 2,
            ];
    const [left, right, y] = [middle - width / 2, middle + width / 2, low + this.#grain.row];
    if (strand === undefined) {
      strand = this.#begin(
        [
          { x: left, y: low },
          { x: right, y: low },
        ],
        this.#ground !== null,
      );
    }
    const parts = row.openings.some(isPassedOver) ? { parts: true as const } : {};
    this.#put(strand, { span, left, right, yLeft: y, yRight: y, round: true, ...parts }, null);
    const count = row.fabric.sites.length;
    this.#spots = {
      left,
      right,
      level: y,
      spots: () => {
        const x = Array.from({ length: count }, (_, i) => left + (width * (i + 0.5)) / Math.max(1, count));
        return { x, half: x.map(() => width / Math.max(1, count) / 2), y: x.map(() => y) };
      },
    };
    const at = row.fabric.sites.flatMap((site, i) => (site.kind === 'space' ? [i / count] : []));
    this.#corners.push({ at, middle, width, y });
    this.#rest = null;
    strand.top = LEVEL;
    for (const opening of row.openings) {
      const size = stitchesOf(opening);
      // An opening bridged by about as many chains is a hole in the side of the tube; where it lies round it is not known.
      if (size === 0 || isPassedOver(opening)) continue;
      const wide = Math.min(size * this.#grain.stitch, width * 0.8);
      const to = right - (width - wide) / 4;
      this.#slits.push({ from: { x: to - wide, y: low }, to: { x: to, y: low }, stitches: size });
    }
  }

  #flat(row: WorkedRow, span: number): void {
    const { stitch } = this.#grain;
    if (row.side !== null) this.#direction = row.side === 'RS' ? -1 : 1;
    else if (!this.#first && (row.seen?.worked.turned ?? true))
      this.#direction = this.#direction === 1 ? -1 : 1;
    const width = span * stitch;
    if (this.#straight(row, span, width)) return;
    const origins = originsOf(row);
    const { middles, halves } = spread(row.fabric, width);
    const below = this.#below(row);
    const feet = feetOf(origins, below);
    const stood = middles.flatMap((middle, i) => {
      const foot = feet[i] ?? null;
      return foot === null || row.fabric.sites[i]!.kind !== 'stitch'
        ? []
        : [foot.x - this.#direction * middle];
    });
    let origin: number;
    if (stood.length > 0 && below !== null) origin = median(stood);
    else {
      const center = below === null ? width / 2 : (extent(below).left + extent(below).right) / 2;
      origin = center - (this.#direction * width) / 2;
      if (below !== null && row.seen === null) this.#evenly = true;
    }
    const left = this.#direction === 1 ? origin : origin - width;
    const right = left + width;
    const x = middles.map((middle) => origin + this.#direction * middle);
    const y = heights(feet, middles.length, this.#grain.row, below === null ? 0 : Math.max(...below.y, 0));
    // The corners that it stands on: where its outermost stitches stand.
    const used = feet.flatMap((foot) => foot ?? []);
    const edge = below === null ? null : extent(below);
    const low = used.reduce<Foot | null>((a, b) => (a === null || b.left < a.left ? b : a), null);
    const high = used.reduce<Foot | null>((a, b) => (a === null || b.right > a.right ? b : a), null);
    const flatY = below === null ? 0 : Math.min(...below.y);
    const near = STEP * stitch - EPS;
    const from: Point = {
      x: edge === null ? left : low === null || low.left - edge.left < near ? edge.left : low.left,
      y: low?.y ?? flatY,
    };
    const to: Point = {
      x: edge === null ? right : high === null || edge.right - high.right < near ? edge.right : high.right,
      y: high?.y ?? flatY,
    };
    const count = this.#spots?.spots().x.length ?? 0;
    const apart =
      this.#rest &&
      origins?.feet.some((own) => own.length > 0) &&
      origins.feet.every((own) => own.every((index) => index >= count));
    let strand = this.#strands.at(-1);
    if (strand === undefined || apart)
      strand = this.#begin([from, to], strand !== undefined || this.#ground !== null);
    const laid: LaidRow = {
      span,
      left,
      right,
      yLeft: from.y + this.#grain.row,
      yRight: to.y + this.#grain.row,
      round: false,
    };
    if (Math.abs(laid.yLeft - laid.yRight) > EPS) this.#slanted = true;
    this.#put(strand, laid, [from, to]);
    this.#open(row, origins, below);
    const waiting = origins?.waiting ?? null;
    this.#rest =
      waiting === null || below === null
        ? null
        : {
            x: waiting.map((i) => below.x[i]!),
            half: waiting.map((i) => below.half[i]!),
            y: waiting.map((i) => below.y[i]!),
          };
    const level = y.every((one) => Math.abs(one - laid.yLeft) < EPS) ? laid.yLeft : null;
    this.#spots = { left, right, level, spots: () => ({ x, half: halves, y }) };
    strand.top = upper(laid, x, y);
  }

  /**
   * A row as wide as the one below, on all of it and without a decrease, stands straight on it: its stitches need not
   * be followed. Most rows are of this kind.
   */
  #straight(row: WorkedRow, span: number, width: number): boolean {
    const below = this.#spots;
    const strand = this.#strands.at(-1);
    const last = strand?.rows.at(-1);
    if (below === null || strand === undefined || last === undefined || below.level === null) return false;
    if (!row.plain || this.#rest !== null || last.round || span !== last.span) return false;
    const { left, right, level } = below;
    const y = level + this.#grain.row;
    // Its ends stand on those of the row below, so nothing of an edge is covered.
    upright(strand.left, left, y);
    upright(strand.right, right, y);
    strand.rows.push({ span, left, right, yLeft: y, yRight: y, round: false });
    strand.top = LEVEL;
    // Thousands of rows in a long piece: the one that stood straight before is not asked for any more.
    if (below instanceof Straight) below.next(y, row.fabric, width, this.#direction);
    else this.#spots = new Straight(left, right, y, row.fabric, width, this.#direction);
    return true;
  }

  #begin(base: readonly [Point, Point], joined: boolean): Strand {
    const strand: Strand = { base, joined, rows: [], left: [base[0]], right: [base[1]], top: [] };
    this.#strands.push(strand);
    return strand;
  }

  #put(strand: Strand, row: LaidRow, feet: readonly [Point, Point] | null): void {
    const flat = row.yLeft - this.#grain.row;
    const [from, to] = feet ?? [
      { x: strand.left.at(-1)!.x, y: flat },
      { x: strand.right.at(-1)!.x, y: flat },
    ];
    const jump = STEP * this.#grain.stitch - EPS;
    raise(strand.left, from, { x: row.left, y: row.yLeft }, -1, jump);
    raise(strand.right, to, { x: row.right, y: row.yRight }, 1, jump);
    strand.rows.push(row);
  }

  /** Sites of the row below, and behind them those that wait. */
  #below(row: WorkedRow): Spots | null {
    if (this.#spots === null) {
      const ground = this.#ground;
      if (ground === null || row.below === null) return null;
      const width = ground.right - ground.left;
      const { middles, halves } = spread(row.below, width);
      const x = middles.map((middle) =>
        this.#direction === 1 ? ground.left + middle : ground.right - middle,
      );
      return { x, half: halves, y: x.map(ground.at) };
    }
    const rest = this.#rest;
    const own = this.#spots.spots();
    if (rest === null) return own;
    const both = (key: keyof Spots) => [...own[key], ...rest[key]];
    return { x: both('x'), half: both('half'), y: both('y') };
  }

  #open(row: WorkedRow, origins: Origins | null, below: Spots | null): void {
    if (origins === null || below === null) return;
    origins.openings.forEach((places, i) => {
      const size = row.openings[i]?.sites.filter((site) => site.kind === 'stitch').length ?? 0;
      if (size === 0 || places.length === 0) return;
      const y = below.y[places[0]!]!;
      const left = Math.min(...places.map((at) => below.x[at]! - below.half[at]!));
      const right = Math.max(...places.map((at) => below.x[at]! + below.half[at]!));
      this.#slits.push({ from: { x: left, y }, to: { x: right, y }, stitches: size });
    });
  }
}

/** Stands for the upper edge of a row that runs level, which is told of the last row alone. */
const LEVEL: readonly Point[] = [];

const cornersOf = ({ left, right, yLeft, yRight }: LaidRow): readonly Point[] => [
  { x: left, y: yLeft },
  { x: right, y: yRight },
];

/** The middles of the sites of a fabric laid over a width, in the order made. Chains of a space lie side by side. */
function spread(fabric: Fabric, width: number): { middles: readonly number[]; halves: readonly number[] } {
  const weights = fabric.sites.map((site) =>
    site.kind === 'space' ? site.chains : site.kind === 'picot' || site.kind === 'turning' ? 0 : 1,
  );
  const sum = weights.reduce((a, b) => a + b, 0);
  const each = sum === 0 ? 0 : width / sum;
  let at = 0;
  const middles = weights.map((weight) => {
    at += weight * each;
    return at - (weight * each) / 2;
  });
  return { middles, halves: weights.map((weight) => (weight * each) / 2) };
}

/** Where the spaces of a round lie, as parts of the way round. */
interface Cornered {
  readonly at: readonly number[];
  readonly middle: number;
  readonly width: number;
  readonly y: number;
}

/**
 * The corners of a yoke: rounds with the same few spaces, growing. The widest part between two corners lies in the
 * middle, as a front does; its corners are seen to the left and right of it.
 */
function seamsOf(rounds: readonly Cornered[]): readonly (readonly Point[])[] {
  const [first, last] = [rounds.find(({ at }) => at.length > 0), rounds.findLast(({ at }) => at.length > 0)];
  if (first === undefined || last === undefined || last.width < first.width * 1.15) return [];
  const count = first.at.length;
  if (count < 3 || count > 8) return [];
  const cornered = rounds.filter(({ at }) => at.length === count);
  if (cornered.length < 4 || cornered.length < rounds.length * 0.6) return [];
  const partOf = (at: readonly number[], i: number) => (at[(i + 1) % count]! - at[i]! + 1) % 1;
  const widest = last.at.reduce(
    (best, _, i) => (partOf(last.at, i) > partOf(last.at, best) + 1e-9 ? i : best),
    0,
  );
  const sides = [-1, 1].map((side) =>
    cornered.map(({ at, middle, width, y }) => ({ x: middle + side * partOf(at, widest) * width, y })),
  );
  return sides.map((side) => [side[0]!, side.at(-1)!]);
}

interface Foot {
  readonly x: number;
  readonly y: number;
  readonly left: number;
  readonly right: number;
}

function feetOf(origins: Origins | null, below: Spots | null): readonly (Foot | null)[] {
  if (origins === null || below === null) return [];
  return origins.feet.map((places) => {
    const there = places.filter((at) => at < below.x.length);
    if (there.length === 0) return null;
    const xs = there.map((at) => below.x[at]!);
    return {
      x: xs.reduce((a, b) => a + b, 0) / xs.length,
      y: Math.max(...there.map((at) => below.y[at]!)),
      left: Math.min(...there.map((at) => below.x[at]! - below.half[at]!)),
      right: Math.max(...there.map((at) => below.x[at]! + below.half[at]!)),
    };
  });
}

/** The upper edge of each stitch: a row above its foot; what has no foot lies beside the one before it. */
function heights(
  feet: readonly (Foot | null)[],
  sites: number,
  row: number,
  flat: number,
): readonly number[] {
  const first = feet.find((foot) => foot !== null)?.y ?? flat;
  let last = first;
  return Array.from({ length: sites }, (_, i) => {
    last = feet[i]?.y ?? last;
    return last + row;
  });
}

function extent(spots: Spots): { left: number; right: number } {
  let [left, right] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  spots.x.forEach((x, i) => {
    left = Math.min(left, x - spots.half[i]!);
    right = Math.max(right, x + spots.half[i]!);
  });
  return left > right ? { left: 0, right: 0 } : { left, right };
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** One side of a strand grows by a row that stands at `foot` and ends at `tip`; `out` is the way outwards. */
function raise(side: Point[], foot: Point, tip: Point, out: 1 | -1, jump: number): void {
  // Short rows that this row covers are no edge any more.
  while (side.length > 1) {
    const last = side.at(-1)!;
    const covered = last.y > foot.y + EPS || (last.y > foot.y - EPS && (foot.x - last.x) * out > EPS);
    if (!covered) break;
    side.pop();
  }
  const last = side.at(-1)!;
  if (Math.abs(last.x - foot.x) > EPS || Math.abs(last.y - foot.y) > EPS) side.push(foot);
  // An edge that moves by many stitches at once is a step; by few, a slope.
  if (Math.abs(tip.x - foot.x) > jump) side.push({ x: tip.x, y: foot.y });
  side.push(tip);
}

/** One side of a strand goes straight up to `y`: two points tell an upright part, however many rows it has. */
function upright(side: Point[], x: number, y: number): void {
  const end = side.length - 1;
  if (end > 0 && side[end]!.x === x && side[end - 1]!.x === x) side[end] = { x, y };
  else side.push({ x, y });
}

/** The upper edge of a row; where it runs level, its two corners. */
function upper(row: LaidRow, x: readonly number[], y: readonly number[]): readonly Point[] {
  const corners = cornersOf(row);
  const level = y.every((value) => Math.abs(value - row.yLeft) < EPS);
  if (level && Math.abs(row.yLeft - row.yRight) < EPS) return corners;
  const between = x
    .map((at, i) => ({ x: at, y: y[i]! }))
    .filter((point) => point.x > row.left + EPS && point.x < row.right - EPS)
    .sort((a, b) => a.x - b.x);
  return [corners[0]!, ...between, corners[1]!];
}
