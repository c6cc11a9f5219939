/** A row between others has a label and nothing to work. */
import { isBlankRow } from '../../document/blank.ts';
import { quoted, text } from '../../findings/phrases.ts';
import { rowBlocks } from '../../study/index.ts';
import { found, type Rule } from '../rule.ts';

export const rowWithoutWords: Rule = {
  code: 'row-without-words',
  severity: 'warning',
  title: 'A row is empty',
  reason: 'Its label is printed, and nobody knows what to work.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `a row${text(data, 'piece').trim() === '' ? '' : ` of ${quoted(data, 'piece')}`} is empty, but its label would be printed; write it, or take it out`;
  },
  example: null,
  sample: { piece: 'Back' },
  check: (study) =>
    study.pattern.pieces.flatMap((piece) => {
      const rows = rowBlocks(piece.blocks);
      const empty = rows.filter(isBlankRow);
      // A piece with no written row at all is told as such.
      if (empty.length === rows.length) return [];
      return empty.map((row) => found(rowWithoutWords, study, { node: row.id }, { piece: piece.name }));
    }),
};
