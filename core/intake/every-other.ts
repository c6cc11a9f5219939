/**
 * Rows that are told once for all the others between: "Row 2 and all even rows". Each comes where its number is left
 * out by the rows that are told. It goes by typed numbers, and reads no words.
 */
import type { PastedBlock, PastedRow } from './written.ts';

/** A row that is worked again on every so manieth row from its own. */
interface Onward {
  readonly row: PastedRow;
  readonly start: number;
  readonly step: number;
}

const again = ({ row, start }: Onward, number: number): PastedBlock => ({
  kind: 'repeat',
  first: start,
  last: start,
  rows: 1,
  number,
  sizes: row.sizes,
  form: row.form,
  text: '',
  count: null,
});

/** The blocks with such rows put between the others, as far as a later row shows that they are meant. */
export function withEveryOther(blocks: readonly PastedBlock[]): readonly PastedBlock[] {
  if (!blocks.some((block) => block.kind === 'row' && block.onward !== undefined)) return blocks;
  const out: PastedBlock[] = [];
  let onward: Onward | null = null;
  let last: number | null = null;
  for (const block of blocks) {
    const number = block.kind === 'row' || block.kind === 'repeat' ? block.number : null;
    if (onward !== null && last !== null && number !== null) {
      const between: number = last + 1;
      const isDue = between > onward.start && (between - onward.start) % onward.step === 0;
      // Only the one row before this is left out, where it is the other's turn.
      if (isDue && number === between + 1) out.push(again(onward, between));
    }
    out.push(block);
    if (block.kind === 'row' && block.number === 1) onward = null;
    if (block.kind === 'row' && block.onward !== undefined && block.number !== null)
      onward = { row: block, start: block.number, step: block.onward };
    if (number !== null)
      last =
        block.kind === 'repeat' ? (typeof block.rows === 'number' ? number + block.rows - 1 : null) : number;
  }
  return out;
}
