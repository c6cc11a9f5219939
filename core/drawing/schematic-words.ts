/**
 * What a schematic says in words: the names of its lengths, its notes, and the whole of it for those who do not see it.
 * Sentences alone; every number comes with its words already made.
 */
import type { What } from './outline.ts';
import type { Hindrance } from './shape.ts';
import type { SketchNote } from './sketch.ts';

/** Names of lengths as they stand behind the name of a piece. `ends` says that the other end has one of its own. */
export function nameOf(what: What, ends: boolean): string {
  switch (what) {
    case 'width':
      return ends ? 'width at the start' : 'width';
    case 'width-end':
      return 'width at the end';
    case 'width-most':
      return 'greatest width';
    case 'width-least':
      return 'least width';
    case 'half-round':
      return ends ? 'width at the start, lying flat' : 'width, lying flat';
    case 'half-round-end':
      return ends ? 'width at the end, lying flat' : 'width, lying flat';
    case 'half-round-most':
      return 'greatest width, lying flat';
    case 'half-round-least':
      return 'least width, lying flat';
    case 'height':
      return 'height';
    case 'height-left':
      return 'height of the left edge';
    case 'between':
      return 'between the parts';
    case 'opening':
      return 'opening';
    case 'across':
      return 'across';
    case 'side':
      return 'side';
    case 'spine':
      return 'middle';
    case 'length':
      return 'length';
    case 'total':
      return 'whole height';
  }
}

/** "Back: height", "Back, part 2: height"; of a piece alone, "Height". */
export function labelOf(piece: string | null, part: number | null, name: string): string {
  const of = [...(piece === null ? [] : [piece]), ...(part === null ? [] : [`part ${part}`])].join(', ');
  const label = of === '' ? name : `${of}: ${name}`;
  return label.charAt(0).toUpperCase() + label.slice(1);
}

/** "A", "A and B", "A, B and C". */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

export function titleOf(pieces: readonly string[]): string {
  return listed(pieces);
}

const NOTES: Readonly<Record<SketchNote, string>> = {
  evenly: 'Where the rows do not say at which side they are shaped, half is drawn at each.',
  'short-rows': 'Short rows make one edge higher than another.',
  broken: 'The piece is longer than it is drawn.',
  'half-round': 'Rounds are drawn lying flat: each width is half of the way round.',
  down: 'The first round lies at the top.',
  'down-rows': 'The first row lies at the top.',
  'half-circle': 'The rows grow as half a circle does, and are drawn as one.',
  'opening-somewhere': 'An opening is drawn at the side; the rows say where it comes.',
};

export const noteOf = (note: SketchNote): string => NOTES[note];

/** Whose sizes the numbers are of and in which the outline is drawn. */
export function drawnIn(size: string | null, nested: boolean): string | null {
  if (size === null) return null;
  return nested
    ? `The whole line is size ${size}; broken lines are the other sizes.`
    : `Drawn in size ${size}.`;
}

/** The drawing for those who do not see it. */
export function altOf(
  title: string,
  lengths: readonly { readonly letter: string | null; readonly label: string; readonly words: string }[],
  notes: readonly string[],
): string {
  const told = lengths.map(
    ({ letter, label, words }) => `${letter === null ? '' : `${letter}, `}${label}: ${words}.`,
  );
  return [`Schematic of ${title}.`, ...told, ...notes].join(' ').replaceAll('\u00A0', ' ');
}

/** "row 4"; of a row without a number, "a row". */
export function rowNamed(number: number | null, round: boolean): string {
  const what = round ? 'round' : 'row';
  return number === null ? `a ${what}` : `${what} ${number}`;
}

/** Why a row keeps a piece from having an outline in some sizes, or in the only one, where `sizes` is null. */
export function hindered(
  piece: string,
  row: string,
  why: Hindrance['why'],
  sizes: readonly string[] | null,
): string {
  const what =
    why === 'leaves-nothing'
      ? `${row} leaves no stitches`
      : `${row} goes on until a length is measured, and how many rows that is cannot be reckoned`;
  if (sizes !== null) {
    const named = `${sizes.length === 1 ? 'size' : 'sizes'} ${listed(sizes)}`;
    return `${piece} is not drawn in ${named}: ${what}${why === 'leaves-nothing' ? ' there' : ''}.`;
  }
  const fix = why === 'leaves-nothing' ? 'Put that row right.' : 'Write how many rows they are.';
  return `${piece} cannot be drawn yet: ${what}. ${fix}`;
}

/** Why there is nothing to draw. */
export function missing(piece: string, why: 'gauge' | 'rows' | 'too-long'): string {
  switch (why) {
    case 'gauge':
      return `${piece} cannot be drawn yet: give its gauge, in stitches and in rows, under Materials.`;
    case 'rows':
      return `${piece} has no rows to draw yet.`;
    case 'too-long':
      return `${piece} has more rows than can be drawn.`;
  }
}
