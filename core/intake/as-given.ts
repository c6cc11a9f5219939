/**
 * Pieces of an old pattern that only send to another: "Work as given for Back." A pattern here has the rows of every
 * piece, so they are written out. It copies what was written and works nothing.
 */
import { AS_PIECE, type PastedBlock, type PastedPiece } from './written.ts';

/** A piece whose rows are those of another. */
export interface Given {
  /** Its place among the pieces. */
  readonly at: number;
  /** The sentence that said so. */
  readonly words: string;
  /** Name of the piece whose rows were written out. */
  readonly other: string;
}

const plain = (name: string): string =>
  name
    .toLowerCase()
    .replace(/\(.*?\)|[^\p{L}\p{N} ]/gu, ' ')
    .replace(/\b(?:the|piece|make|side)\b/gu, ' ')
    .replace(/s?\s+/gu, ' ')
    .replace(/s?$/u, '')
    .trim();

const sentenceOf = (block: PastedBlock): string | null =>
  block.kind === 'row' || block.kind === 'prose' ? (AS_PIECE.exec(block.text.trim())?.[1] ?? null) : null;

const hasRows = ({ blocks }: { readonly blocks: readonly PastedBlock[] }): boolean =>
  blocks.some((block) => (block.kind === 'row' && sentenceOf(block) === null) || block.kind === 'repeat');

/** The pieces with the rows of those they send to, and which these are. */
export function withRowsGiven(pieces: readonly PastedPiece[]): {
  readonly pieces: readonly PastedPiece[];
  readonly given: readonly Given[];
} {
  const out: PastedPiece[] = [];
  const given: Given[] = [];
  for (const piece of pieces) {
    const at = piece.blocks.findIndex((block) => sentenceOf(block) !== null);
    const name = at === -1 ? '' : plain(sentenceOf(piece.blocks[at]!)!);
    const other =
      at === -1 || hasRows(piece)
        ? undefined
        : out.findLast((before) => before.name !== null && plain(before.name) === name && hasRows(before));
    if (other === undefined) out.push(piece);
    else {
      const sentence = piece.blocks[at]!;
      given.push({ at: out.length, words: 'text' in sentence ? sentence.text : '', other: other.name! });
      out.push({
        ...piece,
        blocks: [...piece.blocks.slice(0, at), ...other.blocks, ...piece.blocks.slice(at + 1)],
      });
    }
  }
  return { pieces: out, given };
}
