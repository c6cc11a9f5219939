/** Nothing says that the yarn of a piece is cut, or a yarn is joined while the one before still hangs on the hook. */
import type { Finding } from '../../finding.ts';
import { quoted, text } from '../../findings/phrases.ts';
import type { PieceStudy, Study } from '../../study/index.ts';
import { fastens, goOnFrom, joinsYarn, nodesOnYarn, works } from '../ends.ts';
import { found, type Rule } from '../rule.ts';

/** Whether a row goes by the words of another piece: what that one says of the yarn holds for it, too. */
const isAsAnother = ({ blocks }: PieceStudy): boolean =>
  blocks.some(({ tree }) => tree?.items.some(({ type }) => type === 'as-piece') ?? false);

/** A yarn joined within a piece, with nothing before it that ends the yarn there was. */
function joinedWithin(study: Study, { blocks }: PieceStudy, told: ReadonlySet<string>): readonly Finding[] {
  let hangs = false;
  return blocks.flatMap((own): readonly Finding[] => {
    const { block, tree } = own;
    const joins = block.type === 'row' && block.sizes === null ? joinsYarn(tree) : null;
    // With several yarns, or a new colour, the one before may be carried along.
    const isOther =
      study.pattern.yarns.length > 1 || (tree?.items.some(({ type }) => type === 'colour') ?? false);
    const findings =
      joins !== null && hangs && !isOther && block.type === 'row'
        ? [
            found(
              yarnNotFastenedOff,
              study,
              { node: block.id, text: block.text.text, ...joins },
              { how: 'joined', piece: '' },
            ),
          ]
        : [];
    if (works(own)) hangs = true;
    if (told.has(block.id) || fastens(tree)) hangs = false;
    return findings;
  });
}

export const yarnNotFastenedOff: Rule = {
  code: 'yarn-not-fastened-off',
  severity: 'warning',
  title: 'Nothing says that the yarn is fastened off',
  reason:
    'A maker with the last stitch on the hook needs to know whether the yarn is cut or goes on. What is not fastened off comes undone, and a yarn cut too early must be joined again.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return text(data, 'how') === 'joined'
      ? 'a yarn is joined here, but nothing before says that the yarn so far is fastened off; say so before this row, or let the row go on with the yarn it has'
      : `nothing says what becomes of the yarn at the end of ${quoted(data, 'piece')}; write "Fasten off." there, or "Do not fasten off." if the work goes on`;
  },
  example: null,
  sample: { how: 'end', piece: 'Back' },
  check: (study) => {
    const told = nodesOnYarn(study.pattern);
    const isToldForAll = [...told].some((node) => /^(?:notes|finishing):/u.test(node));
    return study.pieces.flatMap((own, i): readonly Finding[] => {
      const { piece, blocks } = own;
      const last = blocks.findLast(works);
      if (last === undefined) return [];
      const within = joinedWithin(study, own, told);
      if (isToldForAll || isAsAnother(own)) return within;
      if (blocks.some(({ block, tree }) => told.has(block.id) || fastens(tree))) return within;
      // The work goes on into the next piece where that begins on this one without a yarn of its own.
      const next = study.pieces[i + 1];
      const goesOn =
        next !== undefined &&
        goOnFrom(study, piece.id).includes(next) &&
        next.blocks.every(({ tree }) => joinsYarn(tree) === null);
      return goesOn
        ? within
        : [
            ...within,
            found(yarnNotFastenedOff, study, { node: last.block.id }, { how: 'end', piece: piece.name }),
          ];
    });
  },
};
