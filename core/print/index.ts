/** The public face of printing. It only re-exports. */
export * from './content.ts';
export { FONT_FILES, type FontSource, fontsIn, typefacesOf } from './fonts.ts';
export { findUnprintable } from './glyphs.ts';
export { type DrawingPen, type Layout, layOut, type PrintOptions, type Resources } from './layout.ts';
export type { Mark, Page, Tag } from './page.ts';
export { type Watch, writePages, writePdf } from './pen.ts';
export { type Edition, type Paper, type Style, styleOf } from './style.ts';
