/**
 * The labels of blocks, as every view shows them: "Row 3", "Rnds 4–9 (11, 13)", "Foundation", the side that
 * faces, and for which sizes a block is. Words only, from what the study worked out; nothing is worked here.
 */
import type { Block, Size } from '../document/pattern.ts';
import { sizeList } from '../grading/index.ts';
import type { BlockInSize, BlockStudy, PieceStudy } from './piece-study.ts';

export interface BlockLabel {
  /** "Row 3", "Dec Rnd 5", "Rows 4–9 (11, 13)"; without side and colon. */
  readonly text: string;
  /** "RS", "WS", or "RS (WS, WS)" where sizes differ; null for several rows, for rounds that all face the same way, and where the piece has no sides. */
  readonly side: string | null;
}

/** What each size has, told once when all the sizes that have something have the same. */
export function sharedList(values: readonly (string | number | null)[]): string {
  const [first, ...rest] = values.filter((value) => value !== null);
  if (first !== undefined && rest.every((value) => value === first)) return String(first);
  return sizeList(values);
}

/** A title that says itself what it is of. */
const NOUN = /\b(?:rows?|rnds?|rounds?|ch(?:ains?)?|ring|foundation)\b/iu;

/** Whether a block is told in rows or in rounds; a repeat goes by the first row it repeats. */
export function formOf(blocks: readonly Block[], block: Block): 'row' | 'round' | 'foundation' {
  if (block.type === 'row') return block.form;
  if (block.type === 'shaping') return block.shaped.form === 'round' ? 'round' : 'row';
  if (block.type === 'repeat') {
    const first = blocks.find((other) => other.id === block.first);
    if (first?.type === 'row' && first.form === 'round') return 'round';
  }
  return 'row';
}

/**
 * The label of a block that makes rows, for the sizes of the given indexes (all when left out). Null for
 * prose, headings and photos, and for a block that none of these sizes works.
 */
export function blockLabel(
  piece: PieceStudy,
  block: BlockStudy,
  sizes: readonly number[] = block.sizes.map((_, index) => index),
): BlockLabel | null {
  const worked = sizes.map((index) => block.sizes[index] ?? null);
  if (worked.every((size) => size === null)) return null;
  const form = formOf(piece.piece.blocks, block.block);
  const title = block.block.type === 'row' ? (block.block.title?.trim() ?? '') : '';
  const numbers = numbersOf(worked, block.block.type === 'row');
  const rows = worked.some((size) => size !== null && size.rows > 0);
  // A chain by itself at the start is no row, whatever it was entered as.
  const beginning = piece.piece.blocks.find(({ type }) => type === 'row') === block.block;
  const bare = beginning && !rows && worked.some((size) => size !== null && size.tally.stitches > 0);
  if (form === 'foundation' || bare) {
    const word = rows ? 'Foundation row' : 'Foundation';
    // "Set-up", of a row: "Set-up row".
    const own = rows && !NOUN.test(title) ? `${title} row` : title;
    return { text: title === '' ? word : own, side: null };
  }
  const noun = form === 'round' ? 'Rnd' : 'Row';
  const own = title.replace(/\s*\b(?:rows?|rnds?|rounds?)$/iu, '');
  const word = own === '' ? noun : `${own} ${noun}`;
  if (numbers === null) return { text: own === '' ? noun : `${own} ${noun.toLowerCase()}`, side: null };
  const text = `${word}${numbers.many ? 's' : ''} ${numbers.text}`;
  return { text, side: sideOf(worked, form) };
}

/** `one`: of a single row, which has its number while it has only been begun and makes none yet. */
function numbersOf(
  worked: readonly (BlockInSize | null)[],
  one: boolean,
): { text: string; many: boolean } | null {
  const pairs = worked.map((size) =>
    size === null || size.first === null || size.last === null
      ? null
      : ([size.first, one ? Math.max(size.first, size.last) : size.last] as const),
  );
  const there = pairs.filter((pair) => pair !== null);
  const [leading] = there;
  if (leading === undefined) return null;
  if (there.every(([first, last]) => first === last)) {
    return { text: sharedList(pairs.map((pair) => pair?.[0] ?? null)), many: false };
  }
  // A list that begins with a dash cannot follow one: such sizes have their rows written out.
  if (pairs[0] !== null && there.every(([first, last]) => first === leading[0] && last > first)) {
    return { text: `${leading[0]}–${sharedList(pairs.map((pair) => pair?.[1] ?? null))}`, many: true };
  }
  const each = pairs.map((pair) =>
    pair === null ? null : pair[0] === pair[1] ? String(pair[0]) : `${pair[0]}–${pair[1]}`,
  );
  return { text: sharedList(each), many: true };
}

function sideOf(worked: readonly (BlockInSize | null)[], form: 'row' | 'round'): string | null {
  const there = worked.filter((size) => size !== null);
  if (there.some((size) => size.side === null || size.rows !== 1)) return null;
  // Rounds that are never turned keep the right side out; saying so each time tells nothing.
  if (form === 'round' && there.every((size) => size.side === 'RS')) return null;
  return sharedList(worked.map((size) => size?.side ?? null));
}

/** "A", "A and B", "A, B and C". */
function listed(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/**
 * For which sizes something is: "Size L only", "Sizes L and XL only", "All sizes except XS". Null when it is for
 * every size; ids that no size has are passed over.
 */
export function onlySizes(ids: readonly string[] | null, sizes: readonly Size[]): string | null {
  if (ids === null) return null;
  const own = sizes.filter((size) => ids.includes(size.id));
  if (own.length === sizes.length) return null;
  const others = sizes.filter((size) => !ids.includes(size.id));
  if (own.length > 3 && others.length <= 2)
    return `All sizes except ${listed(others.map((size) => size.label))}`;
  return `${own.length === 1 ? 'Size' : 'Sizes'} ${listed(own.map((size) => size.label))} only`;
}

/** The sizes in the order of the lists: "XS (S, M, L)"; one alone stands by itself. */
export function sizeKeyOf(sizes: readonly Size[]): string {
  const [first, ...rest] = sizes.map((size) => size.label);
  if (first === undefined) return '';
  return rest.length === 0 ? first : `${first} (${rest.join(', ')})`;
}
