/**
 * Which pieces lie on the table as one: those worked on from the last row of another are drawn with it, each at the
 * end that is free. A piece that two others begin from in the same place was made twice, and is drawn with each. It
 * decides by counts alone and draws nothing.
 */
import type { Pattern } from '../document/pattern.ts';
import { densityOf } from '../grading/index.ts';
import { gaugeOf } from '../study/gauge.ts';
import type { PieceStudy, Study } from '../study/index.ts';
import { toNumber } from '../trade/units.ts';
import type { Grain, Ground, Lay } from './flat-rows.ts';
import { type PieceShape, risesFromOpening, shapeOf } from './shape.ts';

/** Pieces that lie together: the first, and what is worked on from it. */
export interface Assembly {
  readonly piece: PieceStudy;
  /** Where it stands on the one before: over all of it, in its middle, or at an end. */
  readonly place: Place;
  readonly parts: readonly Assembly[];
}

type Place = 'all' | 'left' | 'right' | 'middle';

/** Centimetres of a stitch and of a row of a piece; null where its gauge does not tell both. */
export function grainOf(
  piece: PieceStudy,
  { pattern, sheet }: Pick<Study, 'pattern' | 'sheet'>,
): Grain | null {
  const gauge = gaugeOf(piece, pattern, sheet);
  if (gauge === null) return null;
  const { stitches, rows } = densityOf(gauge);
  if (stitches === null || rows === null) return null;
  return { stitch: 1 / toNumber(stitches), row: 1 / toNumber(rows) };
}

const UPRIGHT = /\b(?:bag|basket|bowl|purse|tote|pouch|pot|cosy|cozy|toy|doll|amigurumi|vase)s?\b/iu;

/** Bags, baskets and toys stand on their closed end. */
export function standsUpright(pattern: Pattern): boolean {
  return UPRIGHT.test(`${pattern.about.garment} ${pattern.about.title}`);
}

/** The piece that another is worked on from; null for one that begins by itself or along several edges. */
export function parentOf(piece: PieceStudy, study: Study): PieceStudy | null {
  const { start } = piece.piece;
  if (start.kind !== 'edges' || start.edges.length === 0) return null;
  const [first] = start.edges;
  if (start.edges.some((edge) => edge.kind !== 'top' || edge.piece !== first!.piece)) return null;
  return study.pieces.find((other) => other.piece.id === first!.piece && other !== piece) ?? null;
}

/** A shape with what is needed to stand others on it. */
export interface Standing {
  readonly shape: PieceShape;
  readonly ground: Ground | null;
}

/** The shape of a piece of an assembly in a size, standing where its place says on what `under` left. */
export function standingOf(
  { piece, place }: Pick<Assembly, 'piece' | 'place'>,
  under: Lay | null,
  study: Study,
  size: number,
): Standing | null {
  const grain = grainOf(piece, study);
  if (grain === null) return null;
  const ground = under === null ? null : groundOn(under, piece, place, size);
  const rises = risesFromOpening(piece, study.pieces);
  const shape = shapeOf(piece, size, { grain, ground, upright: standsUpright(study.pattern), rises });
  return shape === null ? null : { shape, ground };
}

/** The part of the last row that a piece begins from. */
function groundOn(under: Lay, piece: PieceStudy, place: Place, size: number): Ground {
  const strand = under.strands.at(-1)!;
  const row = strand.rows.at(-1)!;
  const [left, right] = [row.left, row.right];
  const stitches = row.span;
  const wanted = piece.starts[size] ?? stitches;
  const width = ((right - left) * Math.min(wanted, stitches)) / Math.max(1, stitches);
  const at = (x: number): number =>
    right - left < 1e-9 ? row.yLeft : row.yLeft + ((row.yRight - row.yLeft) * (x - left)) / (right - left);
  if (place === 'left') return { left, right: left + width, at };
  if (place === 'right') return { left: right - width, right, at };
  if (place === 'middle') {
    const middle = (left + right) / 2;
    return { left: middle - width / 2, right: middle + width / 2, at };
  }
  return { left, right, at };
}

/** What a shape leaves for others to stand on; null where nothing can. */
export const layOf = (shape: PieceShape): Lay | null => (shape.form === 'laid' ? shape.lay : null);

interface Taken {
  readonly parts: Assembly[];
  readonly ways: (readonly [number, number])[];
}

const isFree = ({ ways }: Taken, from: number, to: number): boolean =>
  ways.every(([left, right]) => to <= left + 1e-6 || from >= right - 1e-6);

/** All assemblies of a pattern, in the order of its pieces, as they lie in one size. */
export function assembliesOf(study: Study, size: number): readonly Assembly[] {
  const children = new Map<PieceStudy, PieceStudy[]>();
  const roots: PieceStudy[] = [];
  for (const piece of study.pieces) {
    const parent = parentOf(piece, study);
    if (parent === null) roots.push(piece);
    else children.set(parent, [...(children.get(parent) ?? []), piece]);
  }
  const arrange = (
    piece: PieceStudy,
    place: Place,
    under: Lay | null,
    depth: number,
  ): readonly Assembly[] => {
    const own = children.get(piece) ?? [];
    const standing = depth > 40 ? null : standingOf({ piece, place }, under, study, size);
    const lay = standing === null ? null : layOf(standing.shape);
    if (own.length === 0) return [{ piece, place, parts: [] }];
    if (lay === null)
      return [{ piece, place, parts: [] }, ...own.flatMap((part) => arrange(part, 'all', null, depth + 1))];
    const copies: Taken[] = [{ parts: [], ways: [] }];
    const alone: Assembly[] = [];
    for (const part of own) {
      const [first, ...more] = placed(part, lay, copies, depth);
      if (first === undefined) alone.push(...arrange(part, 'all', null, depth + 1));
      for (const other of more) copies.push({ parts: [other], ways: [] });
    }
    return [...copies.map(({ parts }) => ({ piece, place, parts })), ...alone];
  };
  /** Stands a part on the first copy where it is free; its arrangements, of which the first is placed. */
  const placed = (part: PieceStudy, lay: Lay, copies: Taken[], depth: number): readonly Assembly[] => {
    const row = lay.strands.at(-1)!.rows.at(-1)!;
    const whole = (part.starts[size] ?? row.span) >= row.span;
    const round = part.piece.start.kind === 'edges' && part.piece.start.round;
    const places: readonly Place[] = row.round && !round ? ['middle'] : whole ? ['all'] : ['right', 'left'];
    for (let at = 0; at <= copies.length && at < 8; at++) {
      copies[at] ??= { parts: [], ways: [] };
      const copy = copies[at]!;
      // What is left of an edge lies where nothing stands yet.
      const clear = (place: Place): boolean => {
        const ground = groundOn(lay, part, place, size);
        return isFree(copy, ground.left, ground.right);
      };
      for (const place of [...places].sort((a, b) => Number(clear(b)) - Number(clear(a)))) {
        const standing = standingOf({ piece: part, place }, lay, study, size);
        if (standing === null || standing.shape.form !== 'laid') return [];
        const [strand] = standing.shape.lay.strands;
        const first = strand!.rows[0]!;
        if (!isFree(copy, first.left, first.right)) continue;
        copy.ways.push([first.left, first.right]);
        const made = arrange(part, place, lay, depth + 1);
        copy.parts.push(made[0]!);
        return made;
      }
    }
    return [];
  };
  const drawn = new Set<PieceStudy>();
  const mark = ({ piece, parts }: Assembly): void => {
    drawn.add(piece);
    for (const part of parts) mark(part);
  };
  const made = roots.flatMap((root) => arrange(root, 'all', null, 0));
  for (const one of made) mark(one);
  // Pieces that begin from one another in a circle, which the study tells as an error.
  const rest = study.pieces.filter((piece) => !drawn.has(piece));
  return [...made, ...rest.map((piece): Assembly => ({ piece, place: 'all', parts: [] }))];
}
