/**
 * An assembly of pieces in one size as one outline on the sheet: parts standing on one another, turned the way they
 * are worn, and what is very long broken. Lengths stay those of the outlines; only places move.
 */
import type { Gauge } from '../document/pattern.ts';
import { gaugeOf, lengthOfCount, stepsOf } from '../study/gauge.ts';
import type { PieceStudy, Study } from '../study/index.ts';
import type { Length } from '../trade/units.ts';
import {
  type Assembly,
  grainOf,
  layOf,
  parentOf,
  type Standing,
  standingOf,
  standsUpright,
} from './assembly.ts';
import type { Grain, Lay, Point } from './flat-rows.ts';
import { type Measured, NOTHING, type Outline, outlineOf } from './outline.ts';

export interface Sketch extends Outline {
  /** Of all areas, in cm; the lower left corner is (0, 0). */
  readonly width: number;
  readonly height: number;
  /** Where a long piece is broken: lines across it. */
  readonly breaks: readonly (readonly [Point, Point])[];
  readonly notes: readonly SketchNote[];
}

export type SketchNote =
  | 'evenly' // shaping told by counts alone is drawn to both sides alike
  | 'short-rows'
  | 'broken'
  | 'half-round'
  | 'down'
  | 'down-rows'
  | 'opening-somewhere'
  | 'half-circle';

/** Longer than this for its breadth, a piece is broken. */
const LONG = 7;
const SHOWN = 5;
const EPS = 1e-6;

/** The sketch of an assembly in a size; null where its first piece has nothing to draw. */
export function sketchOf(assembly: Assembly, study: Study, size: number): Sketch | null {
  const notes = new Set<SketchNote>();
  const drawn = draw(assembly, null, study, size, notes);
  if (drawn === null) return null;
  const { standing } = drawn;
  const { shape } = standing;
  const down = shape.form === 'laid' && (shape.down || hangsFromCrown(assembly.piece, study, size));
  if (shape.form === 'half-circle') notes.add('half-circle');
  if (down) notes.add(shape.lay.strands[0]!.rows[0]!.round ? 'down' : 'down-rows');
  const total = totalOf(drawn, assembly.piece.piece.id);
  const outline = down ? turned(withTotal(drawn.outline, total)) : withTotal(drawn.outline, total);
  const broken = assembly.parts.length === 0 ? brokenOf(outline) : null;
  if (broken !== null) notes.add('broken');
  return placed(broken?.outline ?? outline, broken?.breaks ?? [], [...notes].sort());
}

/** The side of a hat, worked on from a crown that is a piece of its own, hangs from it. */
function hangsFromCrown(piece: PieceStudy, study: Study, size: number): boolean {
  const parent = parentOf(piece, study);
  if (parent === null || standsUpright(study.pattern)) return false;
  return standingOf({ piece: parent, place: 'all' }, null, study, size)?.shape.form === 'circle';
}

interface Drawn {
  readonly standing: Standing;
  readonly outline: Outline;
  /** Height to the uppermost edge, exact, and where that is. */
  readonly high: Length | null;
  readonly parts: boolean;
}

function draw(
  assembly: Assembly,
  under: Lay | null,
  study: Study,
  size: number,
  notes: Set<SketchNote>,
): Drawn | null {
  const { piece, parts } = assembly;
  const grain = grainOf(piece, study);
  const gauge = gaugeOf(piece, study.pattern, study.sheet);
  const standing = standingOf(assembly, under, study, size);
  if (grain === null || gauge === null || standing === null) return null;
  const lay = layOf(standing.shape);
  if (lay !== null) {
    if (lay.evenly) notes.add('evenly');
    if (lay.slanted) notes.add('short-rows');
    if (lay.strands.some((strand) => strand.rows.some((row) => row.round))) {
      notes.add('half-round');
      if (lay.slits.length > 0) notes.add('opening-somewhere');
    }
  }
  const above = lay === null ? [] : parts.flatMap((part) => draw(part, lay, study, size, notes) ?? []);
  const stood = above.flatMap(({ standing: { shape } }) => {
    const base = layOf(shape)?.strands[0]?.base;
    return base === undefined ? [] : [base];
  });
  const own = outlineOf(standing.shape, grain, gauge, piece.piece.id, stood);
  const join = (key: Exclude<keyof Outline, 'measures'>) =>
    [...own[key], ...above.flatMap(({ outline }) => outline[key] as never[])] as never[];
  const outline: Outline = {
    areas: join('areas'),
    edges: join('edges'),
    joins: join('joins'),
    openings: join('openings'),
    measures: [
      ...own.measures,
      ...above.flatMap(({ outline: { measures } }) => measures),
      ...(lay === null ? [] : betweenOf(above, piece.piece.id, grain, gauge)),
    ],
  };
  const heights = own.measures.filter(({ what, along }) => along === 'up' && what === 'height');
  const tallest = above.reduce<Length | null>(
    (a, { high }) => (a === null || (high !== null && high.compare(a) > 0) ? high : a),
    null,
  );
  const first = mainHeight(heights);
  return {
    standing,
    outline,
    high: first === null ? null : tallest === null ? first : first.add(tallest),
    parts: above.length > 0 || heights.length > 1,
  };
}

/** The stitches between pieces that stand beside one another: a neck between its shoulders. */
function betweenOf(above: readonly Drawn[], id: string, grain: Grain, gauge: Gauge): readonly Measured[] {
  const { stitch } = stepsOf(gauge);
  if (stitch === null) return [];
  const stood = above
    .flatMap(({ standing: { shape } }) => layOf(shape)?.strands.at(-1) ?? [])
    .sort((a, b) => a.base[0].x - b.base[0].x);
  const y = Math.max(0, ...stood.map(({ rows }) => rows.at(-1)!.yLeft));
  return stood.slice(1).flatMap((strand, i): readonly Measured[] => {
    const [from, to] = [stood[i]!.base[1].x, strand.base[0].x];
    const stitches = Math.round(((to - from) / grain.stitch) * 2) / 2;
    if (stitches < 1) return [];
    return [
      {
        key: `${id} ${i + 1} between`,
        along: 'across',
        what: 'between',
        part: i + 1,
        length: lengthOfCount(stitches, stitch),
        from: { x: from, y },
        to: { x: to, y },
        side: 'above',
      },
    ];
  });
}

/** Heights of the sections of the first strand, one upon another, and the tallest that stands on them. */
function mainHeight(heights: readonly Measured[]): Length | null {
  let best: { top: number; length: Length } | null = null;
  const up = (measure: Measured): Length => {
    const foot = heights.find(
      (other) =>
        other !== measure && Math.abs(other.to.y - measure.from.y) < EPS && other.from.y < measure.from.y,
    );
    return foot === undefined ? measure.length : measure.length.add(up(foot));
  };
  for (const measure of heights)
    if (best === null || measure.to.y > best.top + EPS) best = { top: measure.to.y, length: up(measure) };
  return best?.length ?? null;
}

function totalOf(drawn: Drawn, id: string): Measured | null {
  if (!drawn.parts || drawn.high === null) return null;
  const { left, bottom, top } = boundsOf(drawn.outline);
  return {
    key: `${id} total`,
    along: 'up',
    what: 'total',
    part: 0,
    length: drawn.high,
    from: { x: left, y: bottom },
    to: { x: left, y: top },
    side: 'left',
  };
}

function withTotal(outline: Outline, total: Measured | null): Outline {
  return total === null ? outline : { ...outline, measures: [...outline.measures, total] };
}

function boundsOf(outline: Outline): { left: number; right: number; bottom: number; top: number } {
  let [left, right] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let [bottom, top] = [left, right];
  for (const area of outline.areas) {
    for (const { x, y } of area) {
      left = Math.min(left, x);
      right = Math.max(right, x);
      bottom = Math.min(bottom, y);
      top = Math.max(top, y);
    }
  }
  return left > right ? { left: 0, right: 0, bottom: 0, top: 0 } : { left, right, bottom, top };
}

function moved(outline: Outline, move: (point: Point) => Point): Outline {
  return {
    areas: outline.areas.map((area) => area.map(move)),
    edges: outline.edges.map((edge) => edge.map(move)),
    joins: outline.joins.map((join) => join.map(move)),
    openings: outline.openings.map(([from, to]) => [move(from), move(to)] as const),
    measures: outline.measures.map((one) => ({ ...one, from: move(one.from), to: move(one.to) })),
  };
}

/** The first row at the top. */
function turned(outline: Outline): Outline {
  const over = moved(outline, ({ x, y }) => ({ x, y: -y }));
  return {
    ...over,
    measures: over.measures.map((one) => ({
      ...one,
      side: one.side === 'below' ? 'above' : one.side === 'above' ? 'below' : one.side,
    })),
  };
}

/** A band or cord that is the same breadth all along, with the middle of it left out. */
function brokenOf(
  outline: Outline,
): { outline: Outline; breaks: readonly (readonly [Point, Point])[] } | null {
  const { left, right, bottom, top } = boundsOf(outline);
  const [width, height] = [right - left, top - bottom];
  const lying = width >= height;
  const [long, broad] = lying ? [width, height] : [height, width];
  if (broad <= 0 || long / broad <= LONG) return null;
  const ends = (point: Point) => {
    const at = lying ? point.x - left : point.y - bottom;
    return at < long * 0.1 || at > long * 0.9;
  };
  // A shape that changes along the way cannot leave any of it out.
  const across = (point: Point) => {
    const at = lying ? point.y - bottom : point.x - left;
    return ends(point) || at < broad * 0.12 || at > broad * 0.88;
  };
  if (!outline.areas.every((area) => area.every(across))) return null;
  const out = long - SHOWN * broad;
  const middle = long / 2;
  const shift = (at: number) => (at > middle ? at - out : at);
  const move = ({ x, y }: Point): Point =>
    lying ? { x: left + shift(x - left), y } : { x, y: bottom + shift(y - bottom) };
  const made = moved(outline, move);
  const at = (SHOWN * broad) / 2;
  const gap = broad * 0.12;
  const [from, to] = [lying ? bottom : left, lying ? top : right];
  const line = (along: number): readonly [Point, Point] =>
    lying
      ? [
          { x: left + along, y: from },
          { x: left + along, y: to },
        ]
      : [
          { x: from, y: bottom + along },
          { x: to, y: bottom + along },
        ];
  return { outline: made, breaks: [line(at - gap), line(at + gap)] };
}

function placed(
  outline: Outline,
  breaks: readonly (readonly [Point, Point])[],
  notes: readonly SketchNote[],
): Sketch {
  const { left, right, bottom, top } = boundsOf(outline);
  const move = ({ x, y }: Point): Point => ({ x: x - left, y: y - bottom });
  return {
    ...NOTHING,
    ...moved(outline, move),
    breaks: breaks.map(([from, to]) => [move(from), move(to)] as const),
    width: right - left,
    height: top - bottom,
    notes,
  };
}
