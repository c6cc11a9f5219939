/**
 * From what was read of a passage to blocks of a pattern: rows, repeats that find their rows by the numbers these
 * had, paragraphs. It makes blocks and judges none; whether a typed count agrees is asked of the study.
 */
import type { Block, Media, RowBlock } from '../document/pattern.ts';
import { tidyText } from '../document/words.ts';
import { PLAIN_ENV } from '../fabric/index.ts';
import { checkStated } from '../fabric/stated.ts';
import type { StatedCount } from '../notation/tree.ts';
import type { BlockStudy, PieceStudy, Study } from '../study/index.ts';
import type { PastedBlock, PastedPiece, PastedRow } from './written.ts';

/** A row that was made, with what it said of itself. */
export interface MadeRow {
  readonly id: string;
  readonly row: PastedRow;
}

/** A repeat that was made, with the count typed behind it. */
export interface MadeRepeat {
  readonly id: string;
  readonly stated: StatedCount;
  readonly words: string;
}

/** What blocks are made with. */
export interface Making {
  /** A new id, never the same twice. */
  readonly freshId: () => string;
  /** Ids of sizes by their labels; null for all. */
  readonly sizeIds: (labels: readonly string[] | null) => readonly string[] | null;
  /** Formula for how many rows a repeat adds where the sizes differ; null where there can be none. */
  readonly rowsFormula: (rows: readonly number[]) => string | null;
  /** A picture by its number; null where it could not be taken over. */
  readonly picture: (picture: number) => Media | null;
}

/** Text of a block: one line of plain characters. */
export const blockText = (text: string): string => tidyText(text).trim();

type PastedRepeat = Extract<PastedBlock, { kind: 'repeat' }>;

/** The blocks of one piece, and its rows in the order in which they were made. */
export function blocksOf(
  piece: PastedPiece,
  making: Making,
): {
  readonly blocks: readonly Block[];
  readonly made: readonly MadeRow[];
  readonly repeats: readonly MadeRepeat[];
} {
  const { freshId, sizeIds } = making;
  const made: MadeRow[] = [];
  const repeats: MadeRepeat[] = [];
  const byNumber = new Map<number, string>();
  let last = '';
  let next = 1;
  const row = (from: PastedRow): RowBlock => {
    const id = freshId();
    last = id;
    if (from.number !== null) next = from.number;
    if (from.form !== 'foundation' || from.number !== null) byNumber.set(next++, id);
    made.push({ id, row: from });
    const { form, title } = from;
    const text = { text: blockText(from.text), figures: [] };
    return { type: 'row', id, form, title, sizes: sizeIds(from.sizes), text };
  };
  const repeat = (from: PastedRepeat): Block | null => {
    const [first, end] = Number.isNaN(from.first)
      ? [last, last]
      : [byNumber.get(from.first), byNumber.get(from.last)];
    const rows = typeof from.rows === 'number' ? String(from.rows) : making.rowsFormula(from.rows);
    if (first === undefined || end === undefined || first === '' || rows === null) return null;
    const id = freshId();
    if (from.count !== null) repeats.push({ id, ...from.count });
    if (from.number !== null && typeof from.rows === 'number') {
      for (let n = from.number; n < from.number + from.rows; n++) byNumber.set(n, id);
      next = from.number + from.rows;
    }
    return {
      type: 'repeat',
      id,
      first,
      last: end,
      until: { kind: 'rows', rows },
      sizes: sizeIds(from.sizes),
    };
  };
  const photo = (media: Media | null): readonly Block[] =>
    media === null ? [] : [{ type: 'photo', id: freshId(), media }];
  const blocks = piece.blocks.flatMap((block): readonly Block[] => {
    if (block.kind === 'row') return [row(block)];
    if (block.kind === 'repeat') return [repeat(block) ?? row(asRow(block))];
    if (block.kind === 'photo') return photo(making.picture(block.picture));
    const id = freshId();
    const text = blockText(block.text);
    return block.kind === 'heading'
      ? [{ type: 'heading', id, text }]
      : [{ type: 'prose', id, text: { text, figures: [] }, sizes: null }];
  });
  return { blocks, made, repeats };
}

/** A repeat of rows that are not there keeps its words, where the reader asks about them. */
function asRow({ sizes, text, form }: PastedRepeat): PastedRow {
  return { kind: 'row', text, form, title: null, sizes, number: null, side: null, count: null };
}

/** The study of a block by its id; null when there is none. */
export function studyOf(
  studied: Study,
  id: string,
): { readonly piece: PieceStudy; readonly block: BlockStudy } | null {
  for (const piece of studied.pieces)
    for (const block of piece.blocks) if (block.block.id === id) return { piece, block };
  return null;
}

/** Whether a row was read whole, worked in each of its sizes, and nothing in it is wrong or in doubt. */
export function agrees(studied: Study, id: string): boolean {
  const block = studyOf(studied, id)?.block;
  if (block?.tree == null || !block.tree.read || block.sizes.every((size) => size === null)) return false;
  return !studied.findings.some(({ where, severity }) => where.node === id && severity !== 'note');
}

/** Whether the count behind a repeat is what its last row leaves, in every size that works it. */
export function repeatAgrees(studied: Study, { id, stated }: MadeRepeat): boolean {
  const block = studyOf(studied, id)?.block;
  if (block === undefined || block.sizes.every((size) => size === null)) return false;
  const { definitions } = studied.readings;
  const sizes = studied.pattern.sizes.length;
  return block.sizes.every(
    (found, size) =>
      found === null ||
      checkStated([stated], found.tally, { ...PLAIN_ENV, size, sizes, names: definitions }, []).length === 0,
  );
}
