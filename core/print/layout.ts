/**
 * From a booklet to finished pages, in four steps: foot, slices, page breaks, places. Pure: the same booklet,
 * choices and fonts give the same pages. Nothing is drawn here.
 */
import type { Fact } from '../finding.ts';
import type { Booklet } from './content.ts';
import { measureCover } from './cover.ts';
import { deskOf } from './desk.ts';
import { placePages } from './flow.ts';
import { type FontSource, typefacesOf } from './fonts.ts';
import { measureFoot } from './foot.ts';
import { findUnprintable } from './glyphs.ts';
import { measureParts } from './measure.ts';
import { type Bookmark, type Page, type Tag, tag } from './page.ts';
import { type Picture, readPicture } from './pictures.ts';
import { heightOf } from './slice.ts';
import { type Edition, type Paper, type Style, styleOf } from './style.ts';

export interface PrintOptions {
  readonly paper: Paper;
  readonly edition: Edition;
}

/** A drawing's own pen: draws into the box (points from the page's upper left corner) with pdfkit. */
export type DrawingPen = (
  document: PDFKit.PDFDocument,
  box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
  style: Style,
) => void;

/** Everything that does not stand in the booklet itself. */
export interface Resources {
  readonly fonts: FontSource;
  /** Bytes of a picture (JPEG or PNG) by its name, or null. The same name must give the same bytes. */
  readonly picture: (name: string) => Uint8Array | null;
  /** The pen of a drawing by its name, or null to leave its place with its alternative text. */
  readonly drawing?: (name: string) => DrawingPen | null;
}

export interface Layout {
  readonly style: Style;
  readonly pages: readonly Page[];
  readonly bookmarks: readonly Bookmark[];
  /** The tag tree, of type Document. */
  readonly tags: Tag;
  /** Pictures that were asked for, by name; null for one that cannot be printed. */
  readonly pictures: ReadonlyMap<string, Picture | null>;
  /**
   * What the maker should know before printing: `character-not-printable` {character, codePoint, words,
   * instead} and `picture-not-readable` {name}.
   */
  readonly facts: readonly Fact[];
}

export function layOut(booklet: Booklet, options: PrintOptions, resources: Resources): Layout {
  const style = styleOf(options.paper, options.edition);
  const fonts = typefacesOf(resources.fonts);
  const facts: Fact[] = findUnprintable(booklet, style, fonts);
  const pictures = new Map<string, Picture | null>();
  const pictureOf = (name: string): Picture | null => {
    let picture = pictures.get(name);
    if (picture === undefined) {
      const bytes = resources.picture(name);
      picture = bytes ? readPicture(bytes) : null;
      pictures.set(name, picture);
      if (!picture) facts.push({ code: 'picture-not-readable', from: 0, to: 0, data: { name } });
    }
    return picture;
  };
  const hasDrawing = (name: string): boolean => (resources.drawing?.(name) ?? null) !== null;

  const foot = measureFoot(booklet.meta, style, fonts);
  const desk = deskOf(style, fonts, foot.height, { pictureSize: pictureOf, hasDrawing });
  const root = tag('Document');
  const cover = measureCover(booklet, root, desk);
  const parts = measureParts(booklet.parts, root, desk);
  if (cover.length > 0 && parts.length > 0 && style.coverPage) {
    // A cover that goes over its page (large print) may leave only a few lines on the next: text follows them.
    const whole = heightOf(cover) <= desk.height;
    parts[0] = { ...parts[0]!, ...(whole ? { forced: true } : { opens: true }) };
  }
  const area = {
    top: style.margin.top,
    height: desk.height,
    width: style.page.width,
    paper: style.page.height,
  };
  const placed = placePages([...cover, ...parts], area, foot.marks);
  return { style, pages: placed.pages, bookmarks: placed.bookmarks, tags: root, pictures, facts };
}
