/**
 * Writes finished pages as a PDF with pdfkit: PDF 1.7, tagged for PDF/UA-1, fonts embedded as subsets. It
 * places nothing: positions, words and structure are those of the layout. No disk, no clock, no chance.
 */
import PDFDocument from 'pdfkit';
import type { Booklet } from './content.ts';
import { FACES, typefacesOf } from './fonts.ts';
import { type Layout, layOut, type PrintOptions, type Resources } from './layout.ts';
import { fileIdOf, infoOf, xmpOf } from './metadata.ts';
import type { Bookmark, ImageMark, Mark, Page } from './page.ts';
import { type TaggedDocument, TagWriter } from './tags.ts';

export interface Watch {
  /** Called after each page that is written. */
  readonly progress?: (page: number, pages: number) => void;
  /** Stops the writing; the promise is then rejected with the signal's reason. */
  readonly signal?: AbortSignal;
}

/** Lays a booklet out and writes it. See `layOut` for what to ask before (unprintable characters, pages). */
export async function writePdf(
  booklet: Booklet,
  options: PrintOptions,
  resources: Resources,
  watch: Watch = {},
): Promise<Uint8Array> {
  watch.signal?.throwIfAborted();
  return writePages(layOut(booklet, options, resources), booklet, resources, watch);
}

/** Writes pages that were laid out from `booklet` with the same `resources`. */
export async function writePages(
  layout: Layout,
  booklet: Booklet,
  resources: Resources,
  watch: Watch = {},
): Promise<Uint8Array> {
  const { meta } = booklet;
  const paper = layout.style.page;
  const document = new PDFDocument({
    pdfVersion: '1.7',
    subset: 'PDF/UA' as never,
    tagged: true,
    lang: meta.language,
    displayTitle: true,
    autoFirstPage: false,
    // No default font: the fourteen standard ones are never embedded.
    font: null as unknown as string,
    size: [paper.width, paper.height],
    margin: 0,
    info: infoOf(meta),
  });
  amend(document, fileIdOf(partsOf(layout, booklet)), xmpOf(meta));
  const chunks: Uint8Array[] = [];
  const ended = new Promise<void>((resolve, reject) => {
    document.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    document.on('end', resolve);
    document.on('error', reject);
  });
  const typefaces = typefacesOf(resources.fonts);
  for (const face of FACES) document.registerFont(face, typefaces.opened(face) as unknown as Uint8Array);

  const tags = new TagWriter(document as unknown as TaggedDocument, layout.tags, paper.height);
  const pen = new Pen(document, tags, resources, layout);
  const outline = new OutlineWriter(document, paper.width);
  for (const page of layout.pages) {
    watch.signal?.throwIfAborted();
    document.addPage();
    for (const bookmark of layout.bookmarks) if (bookmark.page === page.number) outline.add(bookmark);
    pen.page(page);
    watch.progress?.(page.number, layout.pages.length);
    // Lets a cancelling hand or a progress bar have its turn.
    await new Promise((resolve) => setImmediate(resolve));
  }
  watch.signal?.throwIfAborted();
  tags.finish();
  outline.finish();
  document.end();
  await ended;
  return new Uint8Array(Buffer.concat(chunks));
}

function* partsOf(layout: Layout, booklet: Booklet): Generator<string | Uint8Array> {
  yield JSON.stringify([layout.style.paper, layout.style.edition, booklet]);
  for (const [name, picture] of layout.pictures) {
    yield name;
    if (picture) yield picture.bytes;
  }
}

/**
 * What pdfkit does not offer: a file id of our own; metadata that are escaped; and PDF/UA without a CIDSet.
 * pdfkit writes a CIDSet whenever its `subset` is the number 1, and that set misses the parts of composed
 * letters (é is e and an accent), which ISO 14289-1, 7.21.4.2, forbids; a set is optional, so none is
 * written. As text, `subset` is printed the same and is no number.
 */
function amend(document: PDFKit.PDFDocument, id: Uint8Array, xmp: string): void {
  const inside = document as unknown as {
    _id: Uint8Array;
    subset: unknown;
    _addInfo: () => void;
    appendXML: (xml: string) => void;
  };
  inside._id = id;
  inside.subset = '1';
  inside._addInfo = () => inside.appendXML(xmp);
}

/** Draws marks; what follows one another under the same tag is bracketed once. */
class Pen {
  readonly #document: PDFKit.PDFDocument;
  readonly #tags: TagWriter;
  readonly #resources: Resources;
  readonly #layout: Layout;
  readonly #images = new Map<string, unknown>();
  #colour = '';

  constructor(document: PDFKit.PDFDocument, tags: TagWriter, resources: Resources, layout: Layout) {
    this.#document = document;
    this.#tags = tags;
    this.#resources = resources;
    this.#layout = layout;
  }

  page(page: Page): void {
    this.#colour = '';
    let from = 0;
    while (from < page.marks.length) {
      const tag = page.marks[from]!.tag;
      let to = from + 1;
      while (to < page.marks.length && page.marks[to]!.tag === tag) to++;
      const marks = page.marks.slice(from, to);
      this.#tags.content(tag, () => {
        for (const mark of marks) this.#draw(mark);
      });
      for (const mark of marks) this.#tags.box(mark);
      from = to;
    }
  }

  #draw(mark: Mark): void {
    const document = this.#document;
    switch (mark.kind) {
      case 'text':
        this.#fill(mark.colour);
        // Options that change widths are absent here as they were absent while measuring.
        document
          .font(mark.face, mark.size)
          .text(mark.text, mark.x, mark.y, { lineBreak: false, baseline: 'alphabetic' });
        break;
      case 'rule':
        document
          .lineWidth(mark.weight)
          .strokeColor(mark.colour)
          .moveTo(mark.x, mark.y)
          .lineTo(mark.x2, mark.y2)
          .stroke();
        break;
      case 'fill':
        document.rect(mark.x, mark.y, mark.width, mark.height).fill(mark.colour);
        this.#colour = mark.colour;
        break;
      case 'image':
        this.#image(mark);
        break;
    }
  }

  #fill(colour: string): void {
    if (colour !== this.#colour) this.#document.fillColor(colour);
    this.#colour = colour;
  }

  #image(mark: ImageMark): void {
    const document = this.#document;
    if (mark.source === 'drawing') {
      document.save();
      this.#resources.drawing?.(mark.name)?.(document, mark, this.#layout.style);
      document.restore();
      this.#colour = '';
      return;
    }
    let image = this.#images.get(mark.name);
    if (!image) {
      const bytes = this.#layout.pictures.get(mark.name)?.bytes;
      if (!bytes) return;
      image = (document as unknown as { openImage(src: Uint8Array): unknown }).openImage(bytes);
      this.#images.set(mark.name, image);
    }
    document.image(image as Uint8Array as never, mark.x, mark.y, { width: mark.width, height: mark.height });
  }
}

/** Bookmarks, nested by the levels of their headings; those of level 1 stand open. */
class OutlineWriter {
  #visible = 0;
  readonly #open: { level: number; item: PDFKit.PDFOutline }[] = [];
  readonly #document: PDFKit.PDFDocument;
  readonly #width: number;

  constructor(document: PDFKit.PDFDocument, width: number) {
    this.#document = document;
    this.#width = width;
  }

  /** Adds a bookmark to the page that is being written. */
  add(bookmark: Bookmark): void {
    while (this.#open.length > 0 && this.#open.at(-1)!.level >= bookmark.level) this.#open.pop();
    const parent = this.#open.at(-1)?.item ?? this.#document.outline;
    // pdfkit counts `left` from the right edge of the page.
    const options = { top: Math.max(0, bookmark.y - 8), left: this.#width, expanded: bookmark.level < 2 };
    if (this.#open.length === 0 || (this.#open.length === 1 && this.#open[0]!.level < 2)) this.#visible++;
    this.#open.push({ level: bookmark.level, item: parent.addItem(bookmark.title, options as never) });
  }

  /** Tells how many bookmarks show when the list is opened (ISO 32000-1, table 152); pdfkit leaves it out. */
  finish(): void {
    if (this.#visible === 0) return;
    const root = this.#document.outline as unknown as { outlineData: Record<string, unknown> };
    root.outlineData.Count = this.#visible;
  }
}
