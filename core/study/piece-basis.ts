/**
 * What a piece is worked from, so that work of before can be told to hold still: its blocks, what they ask of the
 * sheet, what it starts from. It compares, and works nothing.
 */
import type { Block, Pattern, Piece } from '../document/pattern.ts';
import type { Fabric } from '../fabric/index.ts';
import type { Fact } from '../finding.ts';
import { type FigureResult, lineNamed, type Sheet } from '../grading/index.ts';
import type { Readings } from './reading.ts';
import type { At } from './sheet-figures.ts';

/** All that decides what a piece comes to. */
export interface PieceBasis {
  readonly piece: Piece;
  readonly sheet: Sheet;
  readonly terms: Pattern['terms'];
  readonly sizes: Pattern['sizes'];
  readonly definitions: Readings['definitions'];
  readonly conventions: Readings['conventions'];
  readonly names: readonly string[];
  readonly asked: Asked;
  readonly started: readonly Start[];
}

/** What a piece starts from in one size. */
export interface Start {
  readonly fabric: Fabric | null;
  readonly stitches: number | null;
  readonly facts: readonly Fact[];
}

/** For each block what it asks of the sheet, in each size, to be compared; null where it asks nothing. */
type Asked = readonly (readonly (readonly unknown[])[] | null)[];

function sameList(a: readonly unknown[], b: readonly unknown[]): boolean {
  if (a === b) return true;
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

/** Whether the blocks that did not change would come to the same, but for what they ask and start from. */
export function sameGround(a: PieceBasis, b: PieceBasis): boolean {
  return (
    a.piece.firstSide === b.piece.firstSide &&
    a.terms === b.terms &&
    a.definitions === b.definitions &&
    a.conventions === b.conventions &&
    (a.sizes === b.sizes ||
      (a.sizes.length === b.sizes.length &&
        a.sizes.every(({ id, label }, i) => id === b.sizes[i]!.id && label === b.sizes[i]!.label))) &&
    sameList(a.names, b.names)
  );
}

/** What a start lacks is part of what the piece came to, even where the fabric is the same. */
function sameStart(a: Start, b: Start): boolean {
  return (
    a === b ||
    (a.fabric === b.fabric &&
      a.stitches === b.stitches &&
      JSON.stringify(a.facts) === JSON.stringify(b.facts))
  );
}

/** Whether a piece would come to the same throughout. */
export function sameBasis(a: PieceBasis, b: PieceBasis): boolean {
  return (
    a.piece === b.piece &&
    sameGround(a, b) &&
    a.started.every((start, size) => sameStart(start, b.started[size]!)) &&
    (a.sheet === b.sheet || a.asked.every((asked, i) => sameAsked(asked, b.asked[i]!, null)))
  );
}

/** Whether a block asked the same, in one size or (null) in all. */
function sameAsked(a: Asked[number], b: Asked[number], size: number | null): boolean {
  if (a === null || b === null) return a === b;
  if (size !== null) return sameList(a[size]!, b[size]!);
  return a.length === b.length && a.every((own, i) => sameList(own, b[i]!));
}

/** A figure's result as one value that is the same when the result is. */
function keyOf({ count, value, facts, waitsFor }: FigureResult): unknown {
  if (count !== null) return count;
  // The findings tell the numbers that the facts carry.
  if (value === null) return `${JSON.stringify(facts)}|${waitsFor}`;
  if (value.dimension === 'schedule') return value.schedule;
  if (value.dimension === 'spread') return value.spread;
  return `${value.dimension}:${value.value.toFraction()}`;
}

/** The expressions of a block. */
function expressionsOf(block: Block): readonly string[] {
  switch (block.type) {
    case 'row':
    case 'prose':
      return block.text.figures;
    case 'repeat':
      return ['times' in block.until ? block.until.times : block.until.rows];
    case 'shaping':
      return [...block.shaped.text.figures, ...block.even.text.figures];
    default:
      return NOTHING;
  }
}

const NOTHING: readonly string[] = [];

/** Everything of the sheet that the blocks ask for. */
export function askedBy(piece: Piece, sheet: Sheet, at: At): Asked {
  return piece.blocks.map((block) => {
    const expressions = expressionsOf(block);
    const line = block.type === 'shaping' ? (lineNamed(sheet, block.line)?.sizes ?? null) : null;
    if (expressions.length === 0 && block.type !== 'shaping') return null;
    return sheet.sizes.map((_, size) => [
      line?.[size] ?? null,
      ...expressions.map((expression) => keyOf(at(expression)[size]!)),
    ]);
  });
}

/** How many blocks at the beginning and at the end are the same and ask the same in a size. */
export function keptBlocks(now: PieceBasis, then: PieceBasis, size: number): { head: number; tail: number } {
  const [blocks, others] = [now.piece.blocks, then.piece.blocks];
  const isSame = (i: number, j: number) =>
    blocks[i] === others[j] && (now.sheet === then.sheet || sameAsked(now.asked[i]!, then.asked[j]!, size));
  const most = Math.min(blocks.length, others.length);
  let head = 0;
  while (head < most && isSame(head, head)) head += 1;
  let tail = 0;
  while (tail < most - head && isSame(blocks.length - 1 - tail, others.length - 1 - tail)) tail += 1;
  return { head, tail };
}
