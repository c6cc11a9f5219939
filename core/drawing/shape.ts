/**
 * What a piece is as it lies on the table: rows laid upon one another, a tube lying double, a cap, a circle, a figure
 * with corners, an oval, a cord. Told from how its rows begin and grow, in one size. It draws nothing and rounds
 * nothing.
 */

import { spansOf } from '../study/gauge.ts';
import type { PieceStudy } from '../study/index.ts';
import { originsOf } from '../study/origins.ts';
import { type FollowedRows, followedRows } from '../study/taped.ts';
import type { WorkedRow } from '../study/worked.ts';
import { type Grain, type Ground, isPassedOver, type Lay, layRows } from './flat-rows.ts';

export type PieceShape =
  | {
      readonly form: 'laid';
      readonly lay: Lay;
      /** Rounds from the middle that lie flat before the sides begin: a crown; 0 for what has none. */
      readonly crown: number;
      /** The first row lies at the top. */
      readonly down: boolean;
    }
  /** Rounds about a middle that lie flat. */
  | { readonly form: 'circle'; readonly rounds: number }
  /** The same with corners; `span` is the stitches of the last round. */
  | { readonly form: 'corners'; readonly corners: number; readonly span: number; readonly rounds: number }
  /** Rows about a middle that lie flat, half round it. */
  | { readonly form: 'half-circle'; readonly rows: number }
  /** Rounds about a chain. */
  | { readonly form: 'oval'; readonly chains: number; readonly rounds: number }
  /** Two wings at a spine: `span` is the stitches of the last row, `spine` and `edge` what each row adds to a wing there. */
  | {
      readonly form: 'wings';
      readonly span: number;
      readonly rows: number;
      readonly spine: number;
      readonly edge: number;
    }
  | { readonly form: 'cord'; readonly chains: number };

/** A round may be this much shorter than the way round a flat circle and still lie flat (common practice, no source). */
const FLAT = 0.75;
/** A tube that grows by more than this from a chain is begun at its narrow upper end: a yoke, a skirt. */
const YOKE = 1.4;

/** A round along both sides of a chain has so many stitches for each of its chains; a tube begun flat has one. */
const BOTH = 1.4;

export interface ShapeOptions {
  readonly grain: Grain;
  readonly ground: Ground | null;
  /** Caps stand with the closed end below: bags and baskets, not hats. */
  readonly upright: boolean;
  /** What it is worked on from rises, and it with that: a thumb, not a sleeve. */
  readonly rises: boolean;
}

/** A row that keeps its piece from being drawn: it leaves no stitches, or goes on for nobody knows how many rows. */
export interface Hindrance {
  readonly why: 'leaves-nothing' | 'unreckoned';
  readonly row: WorkedRow;
}

/** What keeps a piece from being drawn in a size; null where nothing in its rows does. */
export function hindranceIn(piece: PieceStudy, size: number, grain: Grain): Hindrance | null {
  const followed = followedRows(piece, size, grain.row);
  if (followed === null) return null;
  const { made, spans, unreckoned } = followed;
  const at = spans.indexOf(0);
  if (at >= 0) return { why: 'leaves-nothing', row: made[at]! };
  return unreckoned === null ? null : { why: 'unreckoned', row: unreckoned };
}

interface Known {
  readonly stitch: number;
  readonly upright: boolean;
  readonly rises: boolean;
  readonly shape: PieceShape | null;
}

/** Shapes that stand on nothing. */
const known = new WeakMap<FollowedRows, Known>();

/**
 * The shape of a piece in a size; null where no row of it is worked, where a row hinders it, or where there are more
 * than can be followed. What is arranged is asked for more than once, so the last is remembered.
 */
export function shapeOf(piece: PieceStudy, size: number, options: ShapeOptions): PieceShape | null {
  const { grain, ground, upright, rises } = options;
  const followed = followedRows(piece, size, grain.row);
  if (followed === null) return null;
  if (ground !== null) return shapeFrom(followed, piece, size, options);
  const before = known.get(followed);
  const isSame = before?.stitch === grain.stitch && before.upright === upright && before.rises === rises;
  if (before !== undefined && isSame) return before.shape;
  const shape = shapeFrom(followed, piece, size, options);
  known.set(followed, { stitch: grain.stitch, upright, rises, shape });
  return shape;
}

function shapeFrom(
  { rows: all, made: rows, spans }: FollowedRows,
  piece: PieceStudy,
  size: number,
  { grain, ground, upright, rises }: ShapeOptions,
): PieceShape | null {
  const chains = all.find((row) => row.foundation > 0)?.foundation ?? 0;
  if (rows.length === 0) return chains > 1 ? { form: 'cord', chains } : null;
  if (hindranceIn(piece, size, grain) !== null) return null;
  if (ground === null && rows.every((row) => row.round) && isClosed(rows[0]!, chains)) {
    const crown = flatRounds(rows, spans, grain);
    if (crown >= spans.length - 1 && spans.length > 1 && spans.at(-1)! > spans[0]!) {
      const corners = cornersOf(rows);
      const rounds = rows.length;
      return corners === null
        ? { form: 'circle', rounds }
        : { form: 'corners', corners, span: spans.at(-1)!, rounds };
    }
    const lay = layRows(all, grain, null);
    return lay === null ? null : { form: 'laid', lay, crown, down: !upright };
  }
  if (
    ground === null &&
    rows.every((row) => row.round) &&
    rows[0]!.seen?.below?.form === 'chain' &&
    chains > 2 &&
    spans[0]! >= BOTH * chains
  ) {
    const along = chainsUnder(rows[0]!) ?? chains;
    const crown = flatRounds(rows, spans, grain, along);
    if (crown >= spans.length - 1) return { form: 'oval', chains: along, rounds: rows.length };
    const lay = layRows(all, grain, null);
    return lay === null ? null : { form: 'laid', lay, crown: Math.max(1, crown), down: !upright };
  }
  if (ground === null && rows.every((row) => !row.round)) {
    const wings = wingsOf(rows, spans);
    if (wings !== null) return wings;
    if (chains <= 10 && liesHalfRound(rows, spans, grain)) return { form: 'half-circle', rows: rows.length };
  }
  const lay = layRows(all, grain, ground);
  return lay === null ? null : { form: 'laid', lay, crown: 0, down: !rises && growsDown(piece, lay, rows) };
}

/** Begun in a ring, of yarn or of few chains. */
function isClosed(first: WorkedRow, chains: number): boolean {
  if (first.seen === null) return false;
  const { below } = first.seen;
  // Foundation stitches that are joined are the edge of a tube.
  if (below === null)
    return first.round && !first.fabric.sites.some(({ stitch }) => stitch?.includes('fnd.'));
  return below.ring && (below.sites[0]?.kind === 'ring' || chains <= 10);
}

/** Is a round long enough to lie flat about so many rounds, on both sides of `chains` where they go about a chain? */
function liesFlat(span: number, rounds: number, grain: Grain, chains = 0): boolean {
  const about = 2 * Math.PI * rounds * grain.row + 2 * chains * grain.stitch;
  return span * grain.stitch >= FLAT * about;
}

/** Rounds that lie flat from the middle on. Loops of chain reach as far as the rounds after them ask. */
function flatRounds(rows: readonly WorkedRow[], spans: readonly number[], grain: Grain, chains = 0): number {
  let flat = 0;
  for (const [i, span] of spans.entries()) {
    if (liesFlat(span, i + 1, grain, chains)) flat = i + 1;
    else if (rows[i]!.tally.chains === 0) break;
  }
  return flat;
}

/** Chains that a first round goes into; those that only turn it are not among them. */
function chainsUnder(first: WorkedRow): number | null {
  const origins = originsOf(first);
  return origins === null ? null : new Set(origins.feet.flat()).size;
}

/** Rows whose ends are no further from half of the way round than this part lie as a half circle. */
const HALF_ROUND = 0.25;

/** Does a fan from a few chains grow all along its rows, as fast as half a circle does? */
function liesHalfRound(rows: readonly WorkedRow[], spans: readonly number[], grain: Grain): boolean {
  if (rows.length < 4 || spans[0]! > 12) return false;
  const outer = spans.map((span, i) => (span * grain.stitch) / (Math.PI * (i + 1) * grain.row));
  const isHalf = outer.slice(Math.floor(rows.length / 3)).every((part) => Math.abs(part - 1) <= HALF_ROUND);
  if (!isHalf) return false;
  const growing = rows.filter((_, i) => i > 0 && spans[i]! > spans[i - 1]!);
  const spread = growing.filter((row) => {
    const origins = originsOf(row);
    if (origins === null) return false;
    const made = new Map<number, number>();
    for (const feet of origins.feet) if (feet.length === 1) made.set(feet[0]!, (made.get(feet[0]!) ?? 0) + 1);
    return [...made.values()].filter((n) => n > 1).length >= 4;
  });
  return spread.length * 2 > growing.length;
}

/** How many corners the last rounds have: places that several stitches go into with a space between, or three. */
function cornersOf(rows: readonly WorkedRow[]): number | null {
  for (const row of rows.slice(-3).reverse()) {
    const origins = originsOf(row);
    if (origins === null) continue;
    const spaced = new Set<number>();
    const tripled = new Set<number>();
    const { sites } = row.fabric;
    const places = new Map<number, number[]>();
    origins.feet.forEach((feet, i) => {
      if (feet.length !== 1 || sites[i]!.kind !== 'stitch') return;
      const list = places.get(feet[0]!) ?? [];
      list.push(i);
      places.set(feet[0]!, list);
    });
    for (const [place, made] of places) {
      const inside = sites.slice(made[0]! + 1, made.at(-1)!);
      if (made.length > 1 && made.at(-1)! - made[0]! < 12 && inside.some((site) => site.kind === 'space'))
        spaced.add(place);
      if (made.length === 3 && made[2]! - made[0]! === 2) tripled.add(place);
    }
    const usual = [...places.values()].map((made) => made.length).sort((a, b) => a - b);
    const most = usual[usual.length >> 1] ?? 1;
    if (spaced.size >= 3 && spaced.size <= 8) return spaced.size;
    if (most === 1 && (tripled.size === 3 || tripled.size === 4)) return tripled.size;
  }
  return null;
}

/** Places this near to the ends of a row, as parts of it, are its edges. */
const EDGE = 0.25;

/** A piece begun at the middle of its longest edge, that grows at a spine and at both ends of every row. */
function wingsOf(rows: readonly WorkedRow[], spans: readonly number[]): PieceShape | null {
  if (rows.length < 4 || rows[0]!.tally.stitches > 12) return null;
  const spines: number[] = [];
  const edges: number[] = [];
  for (const [index, row] of rows.entries()) {
    // A row that does not widen, as an edging, says nothing of where the piece grows.
    if (index < 2 || spans[index]! <= spans[index - 1]!) continue;
    const growth = growthAt(row);
    if (growth === null) return null;
    let [spine, edge] = [0, 0];
    for (const { at, by, most } of growth) {
      const near = Math.abs(at - 0.5) < Math.max(0.08, 1.5 / growth.length);
      if (near) spine += Math.max(0, by);
      else if (at < EDGE || at > 1 - EDGE) edge += by;
      else if (most > 1) return null;
    }
    spines.push(spine);
    edges.push(Math.max(0, edge));
  }
  const grown = spines.filter((spine) => spine >= 2).length;
  const steps = spines.length;
  if (steps < 2 || grown < steps * 0.4) return null;
  const span = spans[spans.length - 1]!;
  // What a wing gains in all, shared between its two ends as the rows share it.
  const gain = (span - rows[0]!.tally.stitches) / 2 / (rows.length - 1);
  const atSpine = spines.reduce((a, b) => a + b, 0);
  const atEdges = edges.reduce((a, b) => a + b, 0);
  const sum = atSpine + atEdges;
  if (sum === 0 || gain <= 0 || atEdges === 0) return null;
  return {
    form: 'wings',
    span,
    rows: rows.length,
    spine: (gain * atSpine) / sum,
    edge: (gain * atEdges) / sum,
  };
}

interface Growth {
  /** A place of the row below, as a part of the way along it. */
  readonly at: number;
  /** Stitches more than it was. A space that is worked into takes the place of none. */
  readonly by: number;
  /** Stitches and spaces that went into it. */
  readonly most: number;
}

/** What a row makes of each place of the one below that it goes into alone, and of stitches passed over. */
function growthAt(row: WorkedRow): readonly Growth[] | null {
  const origins = originsOf(row);
  if (origins === null || row.below === null) return null;
  const { sites } = row.fabric;
  const below = row.below.sites;
  const stitches = below.map(() => 0);
  const all = below.map(() => 0);
  const taken = below.map(() => false);
  origins.feet.forEach((feet, i) => {
    for (const foot of feet) if (foot < below.length) taken[foot] = true;
    const [foot] = feet;
    if (feet.length !== 1 || foot === undefined || foot >= below.length) return;
    const { kind } = sites[i]!;
    if (kind === 'stitch') stitches[foot]! += 1;
    if (kind === 'stitch' || kind === 'space') all[foot]! += 1;
  });
  return below.map(({ kind }, i) => {
    const own = kind === 'stitch' ? 1 : 0;
    const by = stitches[i]! === 0 && taken[i]! ? 0 : stitches[i]! - own;
    return { at: (i + 0.5) / below.length, by, most: all[i]! };
  });
}

/**
 * Sleeves worked on from a body, and what widens from a chain like a yoke, go downwards as they are worn. A yoke parts
 * at openings for the sleeves, and the body below it is narrower than its widest round.
 */
function growsDown(piece: PieceStudy, lay: Lay, worked: readonly WorkedRow[]): boolean {
  const { start } = piece.piece;
  if (start.kind === 'edges') return start.edges.some((edge) => edge.kind === 'opening');
  const [first, last] = [lay.strands[0]!.rows[0]!, lay.strands.at(-1)!.rows.at(-1)!];
  const round = first.round && last.round;
  const [begin, widest, end] = widthsOf(piece);
  const parts = round && end >= begin && piece.openings.some((openings) => openings.length > 0);
  return (parts ? widest : end) >= begin * YOKE && (round || keepsCorners(worked));
}

/**
 * Whether a piece is worked on from an opening in the side of a tube that rises as it is worked: the thumb of a mitten.
 * A tube with sleeves widens to its openings as a yoke does, or is worked on from one.
 */
export function risesFromOpening({ piece }: PieceStudy, pieces: readonly PieceStudy[]): boolean {
  const { start } = piece;
  const edge = start.kind === 'edges' ? start.edges.find(({ kind }) => kind === 'opening') : undefined;
  const owner = edge && pieces.find((other) => other.piece.id === edge.piece);
  if (owner === undefined) return false;
  const openings = owner.openings.flatMap((all) => all[edge!.which - 1] ?? []);
  if (openings.length === 0 || !openings.every(isPassedOver)) return false;
  const on = owner.piece.start;
  if (on.kind === 'edges' && on.edges.some(({ kind }) => kind === 'top')) return false;
  const [begin, widest, end] = widthsOf(owner);
  return end < begin || widest < begin * YOKE;
}

type Widths = readonly [begin: number, widest: number, end: number];

const widths = new WeakMap<PieceStudy, Widths>();

/** Stitches across of the first, the widest and the last row of a piece in all sizes, which all lie one way. */
function widthsOf(piece: PieceStudy): Widths {
  const known = widths.get(piece);
  if (known !== undefined) return known;
  const spans = spansOf(piece);
  let [begin, widest, end] = [0, 0, 0];
  for (let size = 0; size < piece.rows.length; size++) {
    let [first, most, last]: [number | null, number, number] = [null, 0, 0];
    for (const [i, { sizes }] of piece.blocks.entries()) {
      const span = spans[i]![size] ?? null;
      if (span === null || (sizes[size]?.rows ?? 0) === 0) continue;
      first ??= span;
      most = Math.max(most, span);
      last = span;
    }
    begin += first ?? 0;
    widest += most;
    end += last;
  }
  const made: Widths = [begin, widest, end];
  widths.set(piece, made);
  return made;
}

/** Do most rows have the same few spaces, as a yoke that grows at its corners, until it parts? */
function keepsCorners(rows: readonly WorkedRow[]): boolean {
  const spaces = rows.map(({ fabric }) => fabric.sites.filter(({ kind }) => kind === 'space').length);
  const until = spaces.findLastIndex((n) => n >= 3 && n <= 8);
  const grown = spaces.slice(0, until + 1);
  return grown.filter((n) => n === grown[until]).length >= Math.max(4, grown.length * 0.6);
}
