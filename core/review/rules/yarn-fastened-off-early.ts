/** A yarn is fastened off, and the next piece goes on with it from the same edge. */
import { quoted } from '../../findings/phrases.ts';
import type { PieceStudy } from '../../study/index.ts';
import { fastens, works } from '../ends.ts';
import { found, type Rule } from '../rule.ts';

const CUT = /\b(?<!not )(?<!n['’]t )(?:fasten(?:ed)? off|finish off|end off|(?:cut|break) (?:the )?yarn)\b/iu;
const JOINS =
  /\b(?:join(?:ing)?|rejoin(?:ing)?|re-join|attach(?:ing)?|new yarn|with (?:colou?r |yarn )?[A-H]\b|pick up|standing|insert (?:the )?hook)\b/iu;

/** Whether a yarn is joined before a piece's first row, or in it before the round is closed. */
function joins({ blocks }: PieceStudy): boolean {
  const first = blocks.findIndex(works);
  const isSaid = blocks
    .slice(0, first)
    .some(({ block }) => block.type === 'prose' && JOINS.test(block.text.text));
  const items = blocks[first]?.tree?.items ?? [];
  return isSaid || items.some(({ type }) => type === 'attach' || type === 'colour' || type === 'unread');
}

/** Whether the last words of a piece cut its yarn. */
function endsCut({ blocks }: PieceStudy): boolean {
  const last = blocks.findLastIndex(works);
  if (last < 0) return false;
  if (fastens(blocks[last]!.tree)) return true;
  return blocks.slice(last + 1).some(({ block }) => block.type === 'prose' && CUT.test(block.text.text));
}

export const yarnFastenedOffEarly: Rule = {
  code: 'yarn-fastened-off-early',
  severity: 'warning',
  title: 'A piece goes on with a yarn that is fastened off',
  reason:
    'After "Fasten off" there is no yarn on the hook. A piece that begins on that edge must join one, or the yarn must not be cut before it.',
  message: (facts) =>
    `${quoted(facts[0]!.fact.data, 'piece')} goes on from ${quoted(facts[0]!.fact.data, 'before')}, where the yarn is fastened off, and no yarn is joined; write where it is joined, or "Do not fasten off." there`,
  example: null,
  sample: { piece: 'Body', before: 'Yoke' },
  check: (study) =>
    study.pieces.flatMap((own, i) => {
      const { start } = own.piece;
      if (start.kind !== 'edges' || i === 0) return [];
      const before = study.pieces[i - 1]!;
      const [edge] = start.edges;
      // Only the piece right before it can have left its yarn on the hook.
      const goesOn = edge?.piece === before.piece.id && edge.kind === 'top' && before.piece.make === 1;
      if (!goesOn || !own.blocks.some(works) || !endsCut(before) || joins(own)) return [];
      const first = own.blocks.find(works)!.block;
      return [
        found(
          yarnFastenedOffEarly,
          study,
          { node: first.id },
          { piece: own.piece.name, before: before.piece.name },
        ),
      ];
    }),
};
