/**
 * What measuring works with: the style, the typefaces, the page's columns, and what is known of pictures; and
 * the small steps every block shares, from words to lines to slices.
 */
import type { Words } from './content.ts';
import { plain } from './content.ts';
import type { Typefaces } from './fonts.ts';
import { breakLines, type Line, type Span } from './lines.ts';
import type { Mark, Tag, TextMark } from './page.ts';
import { holdLines, type Slice, slice } from './slice.ts';
import type { Look, Style } from './style.ts';

export interface Desk {
  readonly style: Style;
  readonly fonts: Typefaces;
  /** Left edge and width of everything between the margins. */
  readonly left: number;
  readonly width: number;
  /** The text column, right of the hanging labels. */
  readonly bodyX: number;
  readonly bodyWidth: number;
  /** Height between the margins, the foot taken off. */
  readonly height: number;
  /** Pixels of a picture, or null when there is none that can be read. */
  readonly pictureSize: (name: string) => { readonly width: number; readonly height: number } | null;
  readonly hasDrawing: (name: string) => boolean;
}

export function deskOf(
  style: Style,
  fonts: Typefaces,
  footHeight: number,
  images: Pick<Desk, 'pictureSize' | 'hasDrawing'>,
): Desk {
  const { page, margin } = style;
  const width = page.width - margin.left - margin.right;
  const bottom = Math.max(margin.bottom, style.footRise + footHeight);
  return {
    style,
    fonts,
    left: margin.left,
    width,
    bodyX: margin.left + style.hang,
    bodyWidth: width - style.hang,
    height: page.height - margin.top - bottom,
    pictureSize: images.pictureSize,
    hasDrawing: images.hasDrawing,
  };
}

/** Baseline of a line from its top: the x-height sits in the middle of the leading. */
export const baselineOf = (look: Look): number => look.leading * 0.5 + look.size * 0.33;

/** Marks of one line; `tags` has one tag for each span, or one for all. */
export function lineMarks(
  line: Line,
  x: number,
  baseline: number,
  tags: readonly (Tag | null)[],
): TextMark[] {
  return line.segments.map((segment) => ({
    kind: 'text',
    tag: tags[Math.min(segment.span, tags.length - 1)] ?? null,
    x: x + segment.x,
    y: baseline,
    text: segment.text,
    face: segment.face,
    size: segment.size,
    colour: segment.colour,
    width: segment.width,
  }));
}

/** Slices of a paragraph: spans broken to a width, one slice a line, its lone lines held. */
export function textSlices(
  desk: Desk,
  spans: readonly Span[],
  x: number,
  width: number,
  tags: readonly (Tag | null)[],
): Slice[] {
  const look = spans[0]!.look;
  const lines = breakLines(spans, width, desk.fonts);
  return holdLines(lines.map((line) => slice(look.leading, lineMarks(line, x, baselineOf(look), tags))));
}

/** Two texts beside each other on the same baselines: a hanging label and its body. */
export function besideSlices(
  desk: Desk,
  label: { readonly lines: readonly Line[]; readonly tags: readonly (Tag | null)[]; readonly x: number },
  body: { readonly lines: readonly Line[]; readonly tags: readonly (Tag | null)[]; readonly x: number },
): Slice[] {
  const look = desk.style.looks.body;
  const count = Math.max(label.lines.length, body.lines.length);
  const out: Slice[] = [];
  for (let i = 0; i < count; i++) {
    const marks: Mark[] = [];
    const left = label.lines[i];
    const right = body.lines[i];
    if (left) marks.push(...lineMarks(left, label.x, baselineOf(look), label.tags));
    if (right) marks.push(...lineMarks(right, body.x, baselineOf(look), body.tags));
    out.push(slice(look.leading, marks));
  }
  return holdLines(out);
}

/** Words in the given look as one span. */
export const span = (words: Words | string, look: Look): Span => ({
  words: typeof words === 'string' ? [plain(words)] : words,
  look,
});

/** Words as they read in a bookmark or a title. */
export const textOf = (words: Words): string =>
  words
    .map((run) => run.text)
    .join('')
    .replace(/\s+/g, ' ')
    .trim();

/** A thin line across, part of no text. */
export const across = (x: number, x2: number, y: number, weight: number, colour: string): Mark => ({
  kind: 'rule',
  tag: null,
  x,
  y,
  x2,
  y2: y,
  weight,
  colour,
});
