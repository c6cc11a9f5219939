/** A piece is worked in rounds and its gauge was measured in rows, or the other way. */
import { quoted, text } from '../../findings/phrases.ts';
import { gaugeOf } from '../../study/gauge.ts';
import { formOf, type PieceStudy } from '../../study/index.ts';
import { works } from '../ends.ts';
import { found, type Rule } from '../rule.ts';

/** Whether a piece is worked to a gauge: one is chosen for it, or its rows ask the sheet for their numbers. */
const isFitted = ({ piece }: PieceStudy): boolean =>
  piece.gauge !== '' || piece.blocks.some((block) => block.type === 'row' && block.text.figures.length > 0);

/** Whether the work of a piece ends as a round does, whatever its rows are called. */
const isAround = ({ fabrics }: PieceStudy): boolean =>
  fabrics.some((fabric) => fabric !== null && (fabric.form === 'joined' || fabric.form === 'spiral'));

export const gaugeWorkedOtherwise: Rule = {
  code: 'gauge-worked-otherwise',
  severity: 'note',
  title: 'A gauge is measured in rows and the piece worked in rounds, or the other way',
  reason:
    'Rounds that are not turned stack otherwise than rows that are: the same hand gets another number of them to the length, and often another width.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const [piece, swatch] = text(data, 'worked') === 'rounds' ? ['rounds', 'rows'] : ['rows', 'rounds'];
    return `${quoted(data, 'piece')} is worked in ${piece}, but its gauge ${quoted(data, 'gauge')} is of a swatch in ${swatch}; measure one in ${piece} and give that gauge for the piece`;
  },
  example: null,
  sample: { piece: 'Body', gauge: 'single crochet', worked: 'rounds' },
  check: (study) =>
    study.pieces.flatMap((own) => {
      const { piece, blocks } = own;
      const gauge = isFitted(own) ? gaugeOf(own, study.pattern, study.sheet) : null;
      if (gauge === null || gauge.rows === null) return [];
      const forms = new Set(blocks.filter(works).map(({ block }) => formOf(piece.blocks, block) === 'round'));
      // A piece of both is nothing that one swatch could show, and what is called rows may be worked around.
      const [inRounds] = forms;
      return forms.size !== 1 || inRounds === gauge.rounds || (inRounds === false && isAround(own))
        ? []
        : [
            found(
              gaugeWorkedOtherwise,
              study,
              { node: piece.id },
              { piece: piece.name, gauge: gauge.pattern, worked: inRounds === true ? 'rounds' : 'rows' },
            ),
          ];
    }),
};
