/**
 * From the words of a PDF, which a library tells with their places, to lines of text: words on one height make a line,
 * a wide gap between them stays one, and lines that stand apart have a gap between them. It opens no PDF.
 */

/** A run of characters as it stands on a page. Lengths in points, heights from below. */
export interface PlacedWords {
  readonly words: string;
  readonly left: number;
  readonly width: number;
  readonly base: number;
  /** Height of its letters. */
  readonly size: number;
}

/** Of the height of letters: how far words on one line may be apart in height, and what parts words and columns. */
const LEVEL = 0.4;
const BLANK = 0.15;
const COLUMN = 1.5;
/** Of the height of letters: lines further apart than this have a gap between them. */
const APART = 1.75;

interface Line {
  text: string;
  right: number;
  readonly base: number;
  readonly size: number;
}

/** The text of a page, line by line in the order in which the page has its words. */
export function textOfPage(page: readonly PlacedWords[]): string {
  const lines: Line[] = [];
  for (const { words, left, width, base, size } of page) {
    if (words.trim() === '') continue;
    const last = lines.at(-1);
    const right = left + width;
    if (last !== undefined && Math.abs(base - last.base) <= LEVEL * Math.max(size, last.size)) {
      const gap = (left - last.right) / Math.max(1, size);
      const between = gap > COLUMN || gap < -COLUMN ? '  ' : gap > BLANK ? ' ' : '';
      const isSpaced = /\s$/u.test(last.text) || /^\s/u.test(words);
      last.text += between === ' ' && isSpaced ? words : between + words;
      last.right = right;
      continue;
    }
    lines.push({ text: words, right, base, size });
  }
  return lines
    .map(({ text, base, size }, i) => {
      const before = lines[i - 1];
      const isApart =
        before !== undefined && Math.abs(before.base - base) > APART * Math.max(size, before.size);
      return isApart ? `\n${text.trim()}` : text.trim();
    })
    .join('\n');
}

/** The text of a PDF: its pages, a form feed between them. */
export const textOfPages = (pages: readonly (readonly PlacedWords[])[]): string =>
  pages.map(textOfPage).join('\n\f');
