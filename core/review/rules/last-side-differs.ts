/** A piece in rows ends after a right-side row in one size and after a wrong-side row in another, unsaid. */
import { sizesNamed } from '../../findings/phrases.ts';
import type { BlockStudy, PieceStudy, Side } from '../../study/index.ts';
import { foundIn, type Rule } from '../rule.ts';
import { endsTold, lastSide } from '../sides.ts';

const works = (block: BlockStudy, size: number): boolean => (block.sizes[size]?.rows ?? 0) > 0;

interface End {
  readonly block: BlockStudy;
  readonly side: Side;
  /** Rows of the blocks that every size of the piece works: the others are told to their sizes alone. */
  readonly shared: number;
}

/** How a piece ends in each size; null where the size does not work it, or in rounds. */
function endsOf({ piece, blocks, fabrics }: PieceStudy): readonly (End | null)[] {
  if (piece.firstSide === null) return [];
  const working = fabrics.map((_, size) => blocks.some((block) => works(block, size)));
  const forAll = blocks.filter(
    ({ sizes }) => sizes.length > 0 && sizes.every((size, i) => size !== null || !working[i]),
  );
  return fabrics.map((fabric, size) => {
    const block = blocks.findLast((own) => works(own, size));
    const side = block === undefined ? null : lastSide(block.sizes[size]!, true);
    if (fabric?.form !== 'flat' || block === undefined || side === null) return null;
    return { block, side, shared: forAll.reduce((sum, { sizes }) => sum + (sizes[size]?.rows ?? 0), 0) };
  });
}

const SIDES: Readonly<Record<string, string>> = { RS: 'right-side', WS: 'wrong-side' };

export const lastSideDiffers: Rule = {
  code: 'last-side-differs',
  severity: 'note',
  title: 'A piece ends on the right side in some sizes and on the wrong side in others',
  reason:
    'What comes after the last row, a seam, an edging or the next piece, is told for one side. Rows all even or all odd from size to size end alike; where they cannot, the words have to say it.',
  message: (facts, voice) => {
    const { side, other } = facts[0]!.fact.data as { side: string; other: string };
    const sizes = facts.flatMap(({ size }) => (size === null ? [] : [size]));
    return `in ${sizes.length === 0 ? 'some sizes' : sizesNamed(sizes, voice)} this piece ends after a ${SIDES[side]} row, in the others after a ${SIDES[other]} one, and nothing says so; give every size an even number of rows, or every size an odd one, or say which sizes end on which side`;
  },
  example: null,
  sample: { side: 'WS', other: 'RS' },
  check: (study) => {
    const told = new Set(endsTold(study.pattern).map(({ text: { node } }) => node));
    return study.pieces.flatMap((piece) => {
      const ends = endsOf(piece);
      const there = ends.flatMap((end) => end ?? []);
      const [first] = there;
      if (first === undefined || there.every(({ side }) => side === first.side)) return [];
      if (there.every(({ shared }) => shared % 2 === first.shared % 2)) return [];
      if (piece.blocks.some(({ block }) => told.has(block.id))) return [];
      const unlike = there.filter(({ side }) => side !== first.side);
      const side = unlike.length * 2 > there.length ? first.side : unlike[0]!.side;
      const other = there.find((end) => end.side !== side)!.side;
      const { block } = there.find((end) => end.side === side)!.block;
      return foundIn(
        lastSideDiffers,
        study,
        { node: block.id },
        ends.map((end) => (end?.side === side ? { side, other } : null)),
      );
    });
  },
};
