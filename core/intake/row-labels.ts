/**
 * What the label of an old pattern's row says: which rows it is for, in every size, and what it calls them. It works
 * no row and decides no number.
 */
import type { Amount, Label } from '../notation/tree.ts';

/** The one number of an amount; null where it has several. */
export const plainNumber = (amount: Amount): number | null => (amount.kind === 'one' ? amount.value : null);

/** The number that an amount is, or one for each size; none where a size has none, or a figure tells it. */
function numbersOf(amount: Amount): readonly number[] {
  if (amount.kind === 'one') return [amount.value];
  if (amount.kind !== 'sizes') return [];
  return amount.values.some((value) => value === null) ? [] : (amount.values as readonly number[]);
}

/** Rows that a label is for: a number for all sizes, or one for each. */
export interface Range {
  readonly first: number | null;
  readonly rows: number | readonly number[];
  /** It is worked again on every so manieth row from there: "Row 2 and all even rows". */
  readonly onward?: number;
  /** The number of its one row in every size, where they differ. */
  readonly firsts?: readonly (number | null)[];
}

/**
 * First row of a label and how many it is for; null when it says it otherwise than a block can. `sizes`: how many
 * numbers a list for all sizes has; 1 where ranges may not differ by size.
 */
export function rangeOf(label: Label | null, sizes: number): Range | null {
  if (label === null) return { first: null, rows: 1 };
  if (label.numbers === null) {
    if (label.rows === undefined) return { first: null, rows: 1 };
    const [rows = null, ...more] = numbersOf(label.rows);
    if (rows === null || more.length === 0) return rows === null ? null : { first: null, rows };
    // "Next 7 (9, 11) rounds": at least two in each, since a repeat follows the first.
    const all = [rows, ...more];
    return sizes === all.length && all.every((n) => n > 1) ? { first: null, rows: all } : null;
  }
  if (label.numbers.kind === 'one') {
    const { number } = label.numbers;
    if (number.kind === 'sizes' && sizes > 1 && number.values.length === sizes)
      return { first: null, rows: 1, firsts: number.values };
    const first = plainNumber(number);
    return first === null ? null : { first, rows: 1 };
  }
  if (label.numbers.kind === 'onward') {
    const first = plainNumber(label.numbers.start);
    return first === null ? null : { first, rows: 1, onward: label.numbers.step };
  }
  if (label.numbers.kind === 'list') {
    // "Rounds 3 & 4" are two rows like a range; "Rows 2, 4 and 6" are told by the reader.
    const listed = label.numbers.numbers.map(plainNumber);
    const [first = null] = listed;
    const climbs = first !== null && listed.every((number, i) => number === first + i);
    return climbs ? { first, rows: listed.length } : null;
  }
  if (label.numbers.kind === 'range') {
    const [firsts, lasts] = [numbersOf(label.numbers.first), numbersOf(label.numbers.last)];
    if (firsts.length === 0 || lasts.length === 0) return null;
    if (firsts.length === 1 && lasts.length === 1) {
      const [first, last] = [firsts[0]!, lasts[0]!];
      return last < first ? null : { first, rows: last - first + 1 };
    }
    // "Rows 2–20 (2–22, 2–24)", or with a first row of its own in each size.
    if (sizes < 2 || [firsts, lasts].some(({ length }) => length !== 1 && length !== sizes)) return null;
    const at = (all: readonly number[], size: number) => all[all.length === 1 ? 0 : size]!;
    const every = Array.from({ length: sizes }, (_, size) => [at(firsts, size), at(lasts, size)] as const);
    const rows = every.map(([first, last]) => last - first + 1);
    if (!rows.every((n) => n > 1)) return null;
    const isAlike = every.every(([first]) => first === every[0]![0]);
    return isAlike
      ? { first: every[0]![0], rows }
      : { first: null, rows, firsts: every.map(([first]) => first) };
  }
  return null;
}

/** "Edging Row": what stands before the word in a label without a number. */
function calledBefore(words: string): string {
  const found = /^(\p{L}[\p{L} -]{1,30}?)\s+(?:row|rnd|round)\b/iu.exec(words)?.[1] ?? '';
  return /^(?:next|this|following|foll|same)$/iu.test(found) ? '' : found;
}

/** "Next row", "Next 4 rounds": not the "Edging" that stands for a row as well. */
export const isNext = (label: Label | null, text: string): boolean =>
  label?.kind === 'next' && /^\W*next\b/iu.test(text.slice(label.from, label.to));

/** "Edging:", "Border:": a row that is called by what it makes. */
const MAKES = /^(edging|border|trim)\W*$/iu;

/** A label's short title ("Dec") as it was written. */
export function titleOf(label: Label | null, text: string): string | null {
  if (label?.kind === 'set-up') return 'Set-up';
  if (label === null) return null;
  const words = text.slice(label.from, label.to);
  const made = MAKES.exec(words.trim())?.[1];
  if (made !== undefined) return made.charAt(0).toUpperCase() + made.slice(1).toLowerCase();
  const title =
    label.title ??
    (label.numbers === null && (label.kind === 'row' || label.kind === 'round') ? calledBefore(words) : '');
  if (title === '') return null;
  const at = words.toLowerCase().indexOf(title.toLowerCase());
  const written = at === -1 ? title : words.slice(at, at + title.length);
  return written.charAt(0).toUpperCase() + written.slice(1);
}

/** "Rnd 21 (thumb gusset)": what a label says of its row in brackets, beside its side. */
export function calledIn(label: Label | null, text: string): string {
  if (label === null || label.title !== undefined) return '';
  const inside = /[([]([^()[\]]{3,40})[)\]]\s*[:.]?$/u.exec(text.slice(label.from, label.to))?.[1] ?? '';
  const isSide = /^(?:(?:RS|WS|right side|wrong side)(?: row| facing)?|[\d\s,–-]+)$/iu.test(inside.trim());
  return isSide || !/\p{L}{3}/u.test(inside) ? '' : inside.charAt(0).toUpperCase() + inside.slice(1);
}
