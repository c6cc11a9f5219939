/** A piece has no rows, or the pattern no piece. */
import { quoted, text } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { isUnwritten } from './rows-not-begun.ts';

export const pieceWithoutRows: Rule = {
  code: 'piece-without-rows',
  severity: 'warning',
  title: 'A piece has no rows',
  reason: 'A piece that only has a name cannot be made.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    if (data.any !== true) return 'the pattern has no piece; add one and write its rows';
    const name = text(data, 'piece').trim();
    return `${name === '' ? 'a piece without a name' : quoted(data, 'piece')} has no rows; write them, or take the piece out`;
  },
  example: null,
  sample: { any: true, piece: 'Pocket' },
  check: (study) => {
    const { pieces } = study.pattern;
    if (pieces.length === 0)
      return [found(pieceWithoutRows, study, { node: null }, { any: false, piece: '' })];
    // Where none has any, nothing is begun: that is told as such, once.
    if (pieces.every(isUnwritten)) return [];
    return pieces
      .filter(isUnwritten)
      .map((piece) =>
        found(
          pieceWithoutRows,
          study,
          { node: piece.id, text: piece.name },
          { any: true, piece: piece.name },
        ),
      );
  },
};
