/**
 * Pieces of an old pattern whose rows are counted on from one another: parts of one piece under headings of their own.
 * It goes by the numbers that were typed, and reads no words.
 */
import type { PastedBlock, PastedPiece } from './written.ts';

/** The number of a piece's last row as typed; null where that is not known. */
function lastNumber(blocks: readonly PastedBlock[]): number | null {
  let last: number | null = null;
  for (const block of blocks) {
    if (block.kind === 'row') {
      if (block.number !== null) last = block.number;
      else if (block.form !== 'foundation') last = last === null ? null : last + 1;
    } else if (block.kind === 'repeat')
      last = block.number === null || typeof block.rows !== 'number' ? null : block.number + block.rows - 1;
  }
  return last;
}

const isRow = ({ kind }: PastedBlock): boolean => kind === 'row';

/** Pieces whose rows go on in the numbers of the one before are one with it: "Brim" over Round 21 heads a part of it. */
export function goingOn(pieces: readonly PastedPiece[]): readonly PastedPiece[] {
  const out: PastedPiece[] = [];
  const heading = (text: string): PastedBlock => ({ kind: 'heading', text });
  /** Names of the parts that the last piece is made of. */
  let parts: readonly string[] = [];
  for (const piece of pieces) {
    const before = out.at(-1);
    const first = piece.blocks.find(({ kind }) => kind === 'row' || kind === 'repeat');
    const number = first?.kind === 'row' && first.form !== 'foundation' ? first.number : null;
    const isPart = piece.name !== null && piece.make === 1;
    const isCounted = number !== null && number > 1 && before !== undefined;
    // "Sides" over "Next round": it goes on from what is there, with no number of its own.
    const isNext = first?.kind === 'row' && first.isNext === true && before?.blocks.some(isRow) === true;
    const goesOn = isNext || (isCounted && lastNumber(before.blocks) === number - 1);
    if (before !== undefined && isPart && goesOn && piece.name !== null) {
      const isFirst = parts.length < 2 && before.name !== null;
      const blocks = isFirst ? [heading(before.name), ...before.blocks] : before.blocks;
      parts = [...parts, piece.name];
      const name =
        before.name === null ? null : `${parts.slice(0, -1).join(', ')} and ${parts[parts.length - 1]}`;
      out[out.length - 1] = { ...before, name, blocks: [...blocks, heading(piece.name), ...piece.blocks] };
    } else {
      out.push(piece);
      parts = piece.name === null ? [] : [piece.name];
    }
  }
  return out;
}
