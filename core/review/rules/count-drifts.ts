/** Rows that are repeated gain or lose stitches each time, and none of their words says so. */
import type { Block, RowBlock } from '../../document/pattern.ts';
import { count, number, perSize } from '../../findings/phrases.ts';
import type { Item } from '../../notation/tree.ts';
import type { BlockStudy, PieceStudy } from '../../study/index.ts';
import { foundIn, type Rule } from '../rule.ts';

/** Forms that make as many stitches as they use: one into one. */
const LEVEL: ReadonlySet<string> = new Set([
  'plain',
  'extended',
  'linked',
  'crossed',
  'reverse',
  'spike',
  'standing',
  'surface',
]);

/**
 * Whether the words of a row change its count on purpose, or may: an increase, a decrease, several in one
 * place, a shell, slip stitches to begin further in, stitches left. Only where none does is a drift a slip.
 */
function maySayShaping(items: readonly Item[]): boolean {
  return items.some((item) => {
    switch (item.type) {
      case 'work': {
        const { stitch, amount, places } = item;
        return (
          !LEVEL.has(stitch.form) ||
          stitch.base === 'slip' ||
          stitch.together > 1 ||
          amount.kind !== 'one' ||
          amount.value !== 1 ||
          places.some((place) => place.kind === 'same' || place.kind === 'evenly')
        );
      }
      case 'repeat':
        return (
          maySayShaping(item.items) ||
          (item.last !== null && item.last.kind !== 'stop-at' && maySayShaping(item.last.items))
        );
      case 'again':
        return maySayShaping(item.items);
      case 'group':
      case 'unworked':
      case 'shaping':
      case 'rows-again':
      case 'as-piece':
      case 'other-side':
      case 'unread':
        return true;
      default:
        return false;
    }
  });
}

type Repeat = Extract<Block, { type: 'repeat' }>;

/** The rows that a repeat works again, when they stand right before it. */
function rowsOf(piece: PieceStudy, repeat: Repeat): readonly BlockStudy[] {
  const at = (id: string) => piece.blocks.findIndex(({ block }) => block.id === id);
  const [first, last, own] = [at(repeat.first), at(repeat.last), at(repeat.id)];
  if (first < 0 || last < first || own <= last) return [];
  const between = piece.blocks.slice(last + 1, own);
  const works = ['row', 'repeat', 'shaping'];
  if (between.some(({ block }) => works.includes(block.type))) return [];
  return piece.blocks.slice(first, last + 1).filter(({ block }) => block.type === 'row');
}

function worksIt(block: Block, size: string): boolean {
  const { sizes } = block as RowBlock;
  return sizes === null || sizes.includes(size);
}

export const countDrifts: Rule = {
  code: 'count-drifts',
  severity: 'warning',
  title: 'Rows that are repeated lose or gain stitches',
  reason:
    'Rows without an increase or a decrease keep their count however often they are worked. When they do not, most often the first or last stitch is missed, or worked twice.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const [before, after] = [number(data, 'before'), number(data, 'after')];
      const way = after < before ? 'loses' : 'gains';
      const by = Math.abs(after - before);
      return `this repeat ${way} ${count(by, 'stitch')} over its ${count(number(data, 'rows'), 'row')}, from ${before} to ${after}, though nothing in it says inc or dec; check the first and the last stitch of the rows that it repeats`;
    }),
  example: null,
  sample: { before: 40, after: 30, rows: 10 },
  check: (study) =>
    study.pieces.flatMap((piece) =>
      piece.blocks.flatMap((own) => {
        const { block } = own;
        if (block.type !== 'repeat') return [];
        const rows = rowsOf(piece, block);
        if (rows.length === 0 || rows.some(({ tree }) => tree === null || maySayShaping(tree.items)))
          return [];
        const sizes = study.pattern.sizes.map((size, i) => {
          const worked = own.sizes[i];
          const group = rows.filter((row) => worksIt(row.block, size.id));
          if (!worked || worked.rows === 0 || group.length === 0) return null;
          const same = group[(worked.rows - 1) % group.length]!.sizes[i];
          if (!same || same.tally.stitches === worked.tally.stitches) return null;
          return { before: same.tally.stitches, after: worked.tally.stitches, rows: worked.rows };
        });
        return foundIn(countDrifts, study, { node: block.id }, sizes);
      }),
    ),
};
