/**
 * The typefaces of the printed pattern: where their files come from, how wide a word is, and whether a
 * character can be printed. Widths come from the same tables and the same cuts that the pen draws with, so
 * what is measured is what is drawn. This is one of two modules in the core that touch the disk, and only
 * in `fontsIn`.
 *
 * Faces: Source Serif 4 (reading) and Source Sans 3 (numbers and labels), both under the SIL Open Font
 * Licence 1.1; their figures are tabular and lining as they stand, so no font feature has to be asked for.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { create, type Font } from 'fontkit';
import type { Emphasis } from './content.ts';
import type { Face, Look } from './style.ts';

/** File of each face, as it stands in `resources/fonts`. */
export const FONT_FILES: Readonly<Record<Face, string>> = {
  serif: 'source-serif-regular.ttf',
  'serif-italic': 'source-serif-italic.ttf',
  'serif-semibold': 'source-serif-semibold.ttf',
  sans: 'source-sans-regular.ttf',
  'sans-semibold': 'source-sans-semibold.ttf',
};

export const FACES = Object.keys(FONT_FILES) as readonly Face[];

/** The one way fonts come in. `read` gives the bytes of a file named in `FONT_FILES`; it throws if there is none. */
export interface FontSource {
  readonly read: (file: string) => Uint8Array;
}

/** Fonts from a folder on disk, read when first needed. */
export function fontsIn(folder: string): FontSource {
  return { read: (file) => readFileSync(join(folder, file)) };
}

export class Typefaces {
  readonly #fonts = new Map<Face, Font>();
  readonly #bytes = new Map<Face, Uint8Array>();
  readonly #widths = new Map<Face, Map<string, number>>();
  readonly #source: FontSource;

  constructor(source: FontSource) {
    this.#source = source;
  }

  /** The opened font, for measuring. */
  font(face: Face): Font {
    let font = this.#fonts.get(face);
    if (!font) {
      font = this.opened(face);
      this.#fonts.set(face, font);
    }
    return font;
  }

  /**
   * The font opened anew, for the pen. Embedding a subset leaves glyphs in a font that have forgotten their
   * characters (the dots of a colon), and the next document could not tell a reader its full stops.
   */
  opened(face: Face): Font {
    let bytes = this.#bytes.get(face);
    if (!bytes) {
      bytes = this.#source.read(FONT_FILES[face]);
      this.#bytes.set(face, bytes);
    }
    return create(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)) as Font;
  }

  /**
   * Width in points. The text is cut after every space and each piece measured alone, as the pen does:
   * pairs across a space are not kerned, and widths of words simply add up.
   */
  width(text: string, face: Face, size: number): number {
    let cache = this.#widths.get(face);
    if (!cache) {
      cache = new Map();
      this.#widths.set(face, cache);
    }
    let total = 0;
    let from = 0;
    while (from < text.length) {
      const space = text.indexOf(' ', from);
      const to = space < 0 ? text.length : space + 1;
      const piece = text.slice(from, to);
      let width = cache.get(piece);
      if (width === undefined) {
        const font = this.font(face);
        width = (font.layout(piece).advanceWidth * 1000) / font.unitsPerEm;
        cache.set(piece, width);
      }
      total += width;
      from = to;
    }
    return (total * size) / 1000;
  }

  has(face: Face, codePoint: number): boolean {
    return this.font(face).hasGlyphForCodePoint(codePoint);
  }

  /** The face that prints a character where `face` is wanted: itself, else the sans of its weight; null if neither can. */
  faceFor(face: Face, codePoint: number): Face | null {
    if (this.has(face, codePoint)) return face;
    const other: Face = face.endsWith('semibold') ? 'sans-semibold' : 'sans';
    return this.has(other, codePoint) ? other : null;
  }
}

/** Face of a look with an emphasis. The sans has no italic: it shows emphasis by weight. */
export function faceOf(look: Look, emphasis: Emphasis): Face {
  if (look.family === 'sans')
    return look.weight === 'semibold' || emphasis !== 'plain' ? 'sans-semibold' : 'sans';
  if (look.weight === 'semibold' || emphasis === 'bold') return 'serif-semibold';
  return emphasis === 'italic' ? 'serif-italic' : 'serif';
}

const opened = new WeakMap<FontSource, Typefaces>();

/** Opens the faces of a source once; the same source gives the same typefaces with their measured widths. */
export function typefacesOf(source: FontSource): Typefaces {
  let faces = opened.get(source);
  if (!faces) {
    faces = new Typefaces(source);
    opened.set(source, faces);
  }
  return faces;
}
