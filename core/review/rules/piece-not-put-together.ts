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
  /\b(?:sew|join|assemble|put|stitch)\s(?:it\s|them\s)?(?:all|everything)\b|\b(?:all|both|each|the|two|three|four|remaining|other) (?:the |of the )?(?:pieces|parts|panels|squares|motifs|strips|blocks)\b/iu;

/** Seams that take in the pieces of a body without naming them: "Sew the shoulder seams, then the sides." */
const BODY_SEAMS =
  /\b(?:shoulders?|sides?|raglans?|underarms?)\b[^.;]{0,40}\bseams?\b|\b(?:sew|seam|join|graft)\b[^.;]{0,40}\b(?:shoulders?|sides?|raglans?|underarms?)\b/iu;
const OF_BODY = /\b(?:backs?|fronts?|body|bodice)\b/iu;

/** Something is sewn or joined on to what stays: "Sew the ears to R7." */
const PUTS_ON =
  /\b(?:sew|attach|join|stitch|whip ?-?stitch|tack)\b[^.;]{1,60}\b(?:to|on|onto|between|at|over)\b/iu;

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
    const finishing = texts.filter(({ node }) => node.startsWith('finishing:'));
    const hasSeams = texts.some(({ text }) => BODY_SEAMS.test(text));
    const open = pattern.pieces.flatMap((piece) => {
      if (hasItsPlace(piece, pattern)) return [];
      const words = wordsOf(piece.name);
      if (words.length === 0 || (hasSeams && OF_BODY.test(piece.name))) return [];
      const own = new Set(piece.blocks.map(({ id }) => id));
      const isNamed = texts.some(({ node, text }) => {
        if (own.has(node)) return /\b(?:sew|join|attach|seam|whip)/iu.test(text) && node !== '';
        const low = text.toLowerCase();
        return (
          words.some((word) => low.includes(word)) || (node.startsWith('finishing:') && WHOLE.test(text))
        );
      });
      return isNamed ? [] : [piece];
    });
    // Where all others are put on to something, the one that is left is what they are put on to.
    const [last] = open;
    const isMain =
      open.length === 1 &&
      last!.make === 1 &&
      finishing.filter(({ text }) => PUTS_ON.test(text)).length >= pattern.pieces.length - 1;
    return isMain
      ? []
      : open.map((piece) => found(pieceNotPutTogether, study, { node: piece.id }, { piece: piece.name }));
  },
};
