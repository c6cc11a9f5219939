/** A piece is made on its own, and nothing says what becomes of it. */
import type { Pattern, Piece } from '../../document/pattern.ts';
import { quoted } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { instructionsOf } from '../texts.ts';

/** Whether another piece begins at it, or it meets one: then it has its place by that. */
function hasItsPlace(piece: Piece, { pieces }: Pattern): boolean {
  if (piece.start.kind === 'edges' || piece.meets.length > 0) return true;
  return pieces.some(
    (other) =>
      other !== piece &&
      ((other.start.kind === 'edges' && other.start.edges.some((edge) => edge.piece === piece.id)) ||
        other.meets.some(({ mine, other: met }) => mine.piece === piece.id || met.piece === piece.id)),
  );
}

const WHOLE =
  /\b(?:all|both|each|the|two|three|four|remaining|other) (?:the |of the )?(?:pieces|parts|panels|squares|motifs|strips|blocks)\b/iu;

/** The words of a name that stand for the piece: "Left Front Shoulder" is found as "shoulder". */
function wordsOf(name: string): readonly string[] {
  return (name.toLowerCase().match(/\p{L}{3,}/gu) ?? []).map((word) => word.replace(/s$/u, ''));
}

export const pieceNotPutTogether: Rule = {
  code: 'piece-not-put-together',
  severity: 'warning',
  title: 'Nothing says what becomes of a piece',
  reason: 'A maker has it in hand when the pattern ends, and does not know where it goes.',
  message: (facts) =>
    `nothing says what becomes of ${quoted(facts[0]!.fact.data, 'piece')}: no piece goes on from it, it meets none, and the finishing does not name it; say where it is sewn or joined`,
  example: null,
  sample: { piece: 'Pocket' },
  check: (study) => {
    const { pattern } = study;
    if (pattern.pieces.length < 2) return [];
    const texts = instructionsOf(pattern);
    return pattern.pieces.flatMap((piece) => {
      if (hasItsPlace(piece, pattern)) return [];
      const words = wordsOf(piece.name);
      if (words.length === 0) return [];
      const own = new Set(piece.blocks.map(({ id }) => id));
      const isNamed = texts.some(({ node, text }) => {
        if (own.has(node)) return /\b(?:sew|join|attach|seam|whip)/iu.test(text) && node !== '';
        const low = text.toLowerCase();
        return (
          words.some((word) => low.includes(word)) || (node.startsWith('finishing:') && WHOLE.test(text))
        );
      });
      return isNamed ? [] : [found(pieceNotPutTogether, study, { node: piece.id }, { piece: piece.name })];
    });
  },
};
