/**
 * Edits of the small pattern, as a maker might make them in any order: rows reworded, added, moved and left out, lines,
 * notes and sizes changed. For tests that hold that what is worked out after edits is what is worked out afresh.
 */
import fc from 'fast-check';
import type { Block, Pattern, Piece, RowBlock } from '../../core/document/pattern.ts';
import { panelLines, row, smallPattern, written } from './builder.ts';

const TEXTS = [
  'Ch 3, dc in next st and in each st across, turn.',
  'Ch 3, *dc in next st, ch 1, sk 1 st, dc in next st; rep from * across, turn.',
  'Ch 3, dc in each st and ch-1 sp across, turn.',
  'Ch 1, sc in each st across, turn.',
  'Ch 2, hdc in each st across, turn. (52 hdc)',
  'Ch 3, dc2tog, dc in each st to last 3 sts, dc2tog, dc in last st, turn.',
  'Ch 3, fan in next st, sk 1 st, *fan in next st, sk 2 sts; rep from * across, dc in last st, turn.',
  'Ch 3, dc in next {panel stitches − 1} sts, turn.',
  'Ch 3, dc in next {nonsense} sts, turn.',
  'Ch 3, ddc in each st across.',
  '',
];

export type Edit = (pattern: Pattern) => Pattern;

const inPiece =
  (at: number, change: (piece: Piece) => Piece): Edit =>
  (pattern) => ({
    ...pattern,
    pieces: pattern.pieces.map((piece, i) =>
      i === at % Math.max(1, pattern.pieces.length) ? change(piece) : piece,
    ),
  });

export const edits: fc.Arbitrary<Edit> = fc.oneof(
  fc.tuple(fc.nat(1), fc.nat(9), fc.constantFrom(...TEXTS)).map(([p, b, text]) =>
    inPiece(p, (piece) => ({
      ...piece,
      blocks: piece.blocks.map((block, i): Block => {
        if (i !== b % Math.max(1, piece.blocks.length)) return block;
        if (block.type === 'row') return { ...block, text: written(text) };
        if (block.type === 'shaping') return { ...block, shaped: { ...block.shaped, text: written(text) } };
        return block;
      }),
    })),
  ),
  fc.tuple(fc.nat(1), fc.nat(9), fc.nat(999), fc.constantFrom(...TEXTS)).map(([p, b, id, text]) =>
    inPiece(p, (piece) => {
      const fresh: RowBlock = row(`n-${id}`, text);
      return {
        ...piece,
        blocks: [...piece.blocks.slice(0, b), fresh, ...piece.blocks.slice(b)].filter(
          (block, i, all) => all.findIndex((other) => other.id === block.id) === i,
        ),
      };
    }),
  ),
  // Words between the rows: the blocks behind them are the same in another place.
  fc.tuple(fc.nat(1), fc.nat(9), fc.nat(999)).map(([p, b, id]) =>
    inPiece(p, (piece) => {
      const fresh: Block = { type: 'prose', id: `w-${id}`, text: written('Place a marker.'), sizes: null };
      const others = piece.blocks.filter((block) => block.id !== fresh.id);
      return { ...piece, blocks: [...others.slice(0, b), fresh, ...others.slice(b)] };
    }),
  ),
  fc
    .tuple(fc.nat(1), fc.nat(9))
    .map(([p, b]) => inPiece(p, (piece) => ({ ...piece, blocks: piece.blocks.filter((_, i) => i !== b) }))),
  fc.tuple(fc.nat(1), fc.nat(9), fc.nat(9)).map(([p, a, b]) =>
    inPiece(p, (piece) => {
      const blocks = piece.blocks.slice();
      const [moved] = blocks.splice(a % Math.max(1, blocks.length), 1);
      if (moved) blocks.splice(b, 0, moved);
      return { ...piece, blocks };
    }),
  ),
  fc.tuple(fc.nat(1), fc.nat(9), fc.constantFrom(null, ['s-s'], ['s-m', 's-l'])).map(([p, b, sizes]) =>
    inPiece(p, (piece) => ({
      ...piece,
      blocks: piece.blocks.map((block, i) => (i === b && block.type === 'row' ? { ...block, sizes } : block)),
    })),
  ),
  fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 40 })).map(
    ([width, length]): Edit =>
      (pattern) => ({ ...pattern, lines: panelLines(width, length) }),
  ),
  fc.constantFrom<Edit>(
    (pattern) => ({ ...pattern, notes: [] }),
    (pattern) => ({ ...pattern, notes: [written('Ch 3 does not count as a st throughout.')] }),
    (pattern) => ({ ...pattern, terms: pattern.terms === 'us' ? 'uk' : 'us' }),
    (pattern) => ({ ...pattern, specials: [] }),
    (pattern) => ({
      ...pattern,
      specials: pattern.specials.map((special) => ({ ...special, text: written('3 dc in same st') })),
    }),
    (pattern) => ({ ...pattern, sizes: pattern.sizes.slice(0, 2) }),
    (pattern) => ({ ...pattern, sizes: smallPattern().sizes }),
    (pattern) => ({ ...pattern, pieces: pattern.pieces.toReversed() }),
    (pattern) => ({ ...pattern, pieces: smallPattern().pieces }),
    (pattern) => ({ ...pattern, abbreviations: { inc: '2 dc in next st' } }),
    (pattern) => ({
      ...pattern,
      notes: [written('Ch 3 counts as dc. Work a tight tension square, hdc and bdfx.')],
    }),
    (pattern) => ({ ...pattern, about: { ...pattern.about, title: `${pattern.about.title} 2` } }),
    (pattern) => ({ ...pattern, about: { ...pattern.about, description: 'With buttons and a cord.' } }),
    (pattern) => ({
      ...pattern,
      sizes: pattern.sizes.map((size, i) =>
        i === 0 ? { ...size, label: 'Tot', age: [1, 2] as const } : size,
      ),
    }),
    (pattern) => ({
      ...pattern,
      pieces: pattern.pieces.map((piece) => ({
        ...piece,
        meets: [
          {
            mine: { piece: '', kind: 'row-ends' as const, amount: null, which: 1 },
            other: { piece: 'p-band', kind: 'row-ends' as const, amount: null, which: 1 },
          },
        ],
      })),
    }),
  ),
);
