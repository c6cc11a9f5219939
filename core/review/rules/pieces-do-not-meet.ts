/** Two edges that are to be joined have different counts. */
import { edgeName } from '../../findings/measures.ts';
import { number, perSize, quoted, text } from '../../findings/phrases.ts';
import { meetingsOf, pieceOf } from '../meetings.ts';
import { foundIn, type Rule } from '../rule.ts';

export const piecesDoNotMeet: Rule = {
  code: 'pieces-do-not-meet',
  severity: 'error',
  title: 'Pieces that meet have different counts',
  reason:
    'A seam joins stitch to stitch or row to row. When the counts differ, one edge puckers or the maker guesses.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const [mine, other] = [number(data, 'mine'), number(data, 'other')];
      const [fewer, by] = [mine < other ? 'minePiece' : 'otherPiece', Math.abs(mine - other)];
      const edge = (kind: string, piece: string) => `${edgeName(text(data, kind))} of ${quoted(data, piece)}`;
      return `${edge('mineKind', 'minePiece')} and ${edge('otherKind', 'otherPiece')} are to meet, but have ${mine} and ${other}; ${quoted(data, fewer)} has ${by} fewer`;
    }),
  example: null,
  sample: {
    minePiece: 'Front',
    mineKind: 'row-ends',
    mine: 60,
    otherPiece: 'Back',
    otherKind: 'row-ends',
    other: 62,
  },
  check: (study) =>
    meetingsOf(study).flatMap(({ piece, mine, other, sizes }) => {
      const differing = sizes.map((size) => {
        if (size === null || size.mine === null || size.other === null) return null;
        const [a, b] = [size.mine.wanted ?? size.mine.have, size.other.wanted ?? size.other.have];
        if (a === b) return null;
        return {
          minePiece: pieceOf(study, mine),
          mineKind: mine.kind,
          mine: a,
          otherPiece: pieceOf(study, other),
          otherKind: other.kind,
          other: b,
        };
      });
      return foundIn(piecesDoNotMeet, study, { node: piece.id, text: piece.name }, differing);
    }),
};
