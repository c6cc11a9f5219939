/**
 * Where pictures stand in a text that is brought in. In it each is a line of its own; that line is taken out before any
 * words are read, and what stood above it is remembered, so that it comes out in the same place. It looks at no picture.
 */
import type { PartName, Section } from './sections.ts';

/** A sign for private use (Unicode, 23.5), which no words have. */
const SIGN = '\uE000';
const LINE = new RegExp(`^${SIGN}(\\d+)${SIGN}$`, 'u');

/** The line that stands for a picture, by its number. */
export const pictureLine = (picture: number): string => `${SIGN}${picture}${SIGN}`;

export interface PictureMark {
  readonly picture: number;
  /** How many lines with words stand above it. */
  readonly after: number;
}

/** The words without the pictures, and where these stood. */
export function picturesApart(text: string): {
  readonly words: string;
  readonly marks: readonly PictureMark[];
} {
  const marks: PictureMark[] = [];
  const lines: string[] = [];
  let after = 0;
  for (const line of text.split('\n')) {
    const found = LINE.exec(line.trim());
    if (found !== null) {
      marks.push({ picture: Number(found[1]), after });
      continue;
    }
    if (line.trim() !== '') after += 1;
    lines.push(line);
  }
  const words = lines
    .join('\n')
    .replace(/\n{3,}/gu, '\n\n')
    .replace(/^\n+|\n+$/gu, '');
  return { words, marks };
}

/** A picture below a line of a part. */
export interface PicturePlace {
  readonly picture: number;
  readonly part: PartName;
  /** Index of the part; -1 above all of them. */
  readonly section: number;
  /** Index of the line in it that the picture stands below; -1 above its first. */
  readonly line: number;
}

/** Parts may lose their head to a field of its own, and a line be parted in two: how far on a line is looked for. */
const LOOKED_ON = 6;

/** In which part of the text, and below which of its lines, each picture stands. */
export function placesOf(
  text: string,
  sections: readonly Section[],
  marks: readonly PictureMark[],
): readonly PicturePlace[] {
  if (marks.length === 0) return [];
  const source = text.split('\n').flatMap((line) => (line.trim() === '' ? [] : [line.trim()]));
  const found: { readonly at: number; readonly section: number; readonly line: number }[] = [];
  let at = 0;
  sections.forEach(({ head, lines }, section) => {
    const seek = (words: string, line: number): void => {
      const sought = words.trim();
      if (sought === '') return;
      const near = source.slice(at, at + LOOKED_ON);
      const whole = near.indexOf(sought);
      // Of a line that was parted, the next words may stand in it too.
      const i = whole >= 0 ? whole : near.findIndex((own) => own.includes(sought));
      if (i < 0) return;
      found.push({ at: at + i, section, line });
      at += whole >= 0 ? i + 1 : i;
    };
    seek(head, -1);
    lines.forEach(seek);
  });
  return marks.map(({ picture, after }): PicturePlace => {
    const above = found.findLast((one) => one.at < after);
    if (above === undefined) return { picture, part: 'opening', section: -1, line: -1 };
    const { section, line } = above;
    return { picture, part: sections[section]!.part, section, line };
  });
}
