/**
 * Writes the tag tree of a tagged PDF through pdfkit, and works round what pdfkit leaves out: attributes of
 * several kinds on one element, the box of a figure, element ids for notes with the table of ids. It decides
 * nothing about structure; that was done while measuring.
 */
import type { Mark, Tag } from './page.ts';

/** The part of pdfkit used here that its type declarations do not have. */
interface Dictionary {
  readonly data: Record<string, unknown>;
}
interface Element {
  readonly dictionary: Dictionary;
  add(child: unknown): Element;
  end(): void;
}
export interface TaggedDocument {
  struct(type: string, options?: Record<string, unknown>): Element;
  addStructure(element: Element): unknown;
  markStructureContent(type: string): unknown;
  markContent(type: string, options: Record<string, unknown>): unknown;
  endMarkedContent(): unknown;
  getStructTreeRoot(): Dictionary;
}

export class TagWriter {
  readonly #document: TaggedDocument;
  readonly #elements = new Map<Tag, Element>();
  readonly #boxes = new Map<Tag, number[]>();
  readonly #ids: [string, Dictionary][] = [];
  readonly #paper: number;

  /** `root` is the whole tree, of type Document; `paper` the height of every page in points. */
  constructor(document: TaggedDocument, root: Tag, paper: number) {
    this.#document = document;
    this.#paper = paper;
    document.addStructure(this.#build(root));
  }

  /** Brackets what `draw` draws as content of a tag, or as an artifact. */
  content(tag: Tag | null, draw: () => void): void {
    if (tag) {
      const content = this.#document.markStructureContent(tag.type);
      draw();
      this.#document.endMarkedContent();
      this.#elements.get(tag)?.add(content);
    } else {
      this.#document.markContent('Artifact', { type: 'Layout' });
      draw();
      this.#document.endMarkedContent();
    }
  }

  /** Notes the box that a mark of a figure takes. */
  box(mark: Mark): void {
    if (mark.kind === 'rule' || mark.kind === 'fill' || mark.tag?.type !== 'Figure') return;
    const [x, y, x2, y2] =
      mark.kind === 'text'
        ? [mark.x, mark.y - mark.size, mark.x + mark.width, mark.y + mark.size * 0.3]
        : [mark.x, mark.y, mark.x + mark.width, mark.y + mark.height];
    const before = this.#boxes.get(mark.tag);
    this.#boxes.set(
      mark.tag,
      before
        ? [
            Math.min(before[0]!, x),
            Math.min(before[1]!, y),
            Math.max(before[2]!, x2),
            Math.max(before[3]!, y2),
          ]
        : [x, y, x2, y2],
    );
  }

  /** To be called once, after the last page and before the document ends. */
  finish(): void {
    for (const [tag, [x, y, x2, y2]] of this.#boxes) {
      const element = this.#elements.get(tag)!;
      element.dictionary.data.A = {
        O: 'Layout',
        Placement: 'Block',
        BBox: [x, this.#paper - y2!, x2, this.#paper - y!].map((n) => Math.round(n! * 100) / 100),
      };
    }
    if (this.#ids.length > 0) {
      // Required as soon as one element has an id (ISO 32000-1, table 322).
      this.#document.getStructTreeRoot().data.IDTree = {
        Names: this.#ids.flatMap(([id, dictionary]) => [new String(id), dictionary]),
      };
    }
  }

  #build(tag: Tag): Element {
    const options: Record<string, unknown> = {};
    if (tag.alt !== undefined) options.alt = tag.alt;
    if (tag.title !== undefined && tag.title !== '') options.title = tag.title;
    const element = this.#document.struct(tag.type, options);
    const { data } = element.dictionary;
    if (tag.scope) data.A = { O: 'Table', Scope: tag.scope };
    if (tag.numbering) data.A = { O: 'List', ListNumbering: tag.numbering };
    if (tag.type === 'Note') {
      // A note needs an id of its own (ISO 14289-1, 7.9).
      const id = `note-${String(this.#ids.length + 1).padStart(4, '0')}`;
      data.ID = new String(id);
      this.#ids.push([id, element.dictionary]);
    }
    this.#elements.set(tag, element);
    for (const child of tag.children) element.add(this.#build(child));
    return element;
  }
}
