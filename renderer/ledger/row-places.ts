/**
 * Where the manuscript's rows stand on screen, measured from the editor's own drawing, so that the ledger's rows
 * stand in line with them while typing, wrapping, scrolling and zooming. Only rows near the view are measured.
 * It reads the page's layout and changes nothing in it.
 */
import type { EditorView } from 'prosemirror-view';
import { type LedgerRow, rowsOf } from './rows.ts';

/** A row of the ledger in its place; its `pos` may be that of an older document. Lengths in CSS pixels, from the ledger's top edge. */
export interface RowPlace {
  readonly row: LedgerRow;
  readonly index: number;
  readonly top: number;
  readonly height: number;
  /** From `top` to the middle of the row's first line. */
  readonly line: number;
  /** It stands at the upper edge of the view, or will as soon as the maker scrolls a little. */
  readonly atEdge: boolean;
}

export interface PlacesView {
  /** Those near the view, and the one that is held; in order. */
  readonly rows: readonly RowPlace[];
  /** All rows of the document; those of an older one while only their `pos` differs. */
  readonly all: readonly LedgerRow[];
  /** Width that the parts beside the text may take. */
  readonly room: number;
  /** Width of a column. */
  readonly cell: number;
  /** Height of the manuscript from the ledger's top edge. */
  readonly length: number;
  /** Rows that are fully in view. */
  readonly page: number;
}

/** How far below the upper edge of the view a row already counts as at it, in pixels: more than a turn of a wheel. */
const EDGE = 240;

const NONE: PlacesView = { rows: [], all: [], room: 0, cell: 1, length: 0, page: 1 };

/** The nearest element around `element` that scrolls up and down, or the page's own. */
function scrollerOf(element: Element): Element {
  for (let at = element.parentElement; at !== null; at = at.parentElement) {
    if (/auto|scroll/.test(getComputedStyle(at).overflowY)) return at;
  }
  return document.documentElement;
}

/** A length token of the stylesheet ("3.25rem"), as it holds for an element, in pixels. */
function lengthToken(name: string, element: Element): number {
  const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  return Number.parseFloat(getComputedStyle(element).getPropertyValue(name)) * rem;
}

export class RowPlaces {
  #view: PlacesView = NONE;
  /** Index of a row that stays measured wherever it is: the one that has the ledger's focus. */
  #held = -1;
  /** The room and the width of a column: they change when something here changes its size, and not with words. */
  #widths: Pick<PlacesView, 'room' | 'cell'> | null = null;
  readonly scroller: Element;
  readonly #editor: EditorView;
  readonly #ledger: HTMLElement;
  readonly #listeners = new Set<() => void>();
  readonly #stop: () => void;

  /** Measures against `ledger`, which stands beside the editor in one scroller. */
  constructor(editor: EditorView, ledger: HTMLElement) {
    this.#editor = editor;
    this.#ledger = ledger;
    this.scroller = scrollerOf(ledger);
    const measure = () => this.measure();
    const resizes = new ResizeObserver(() => {
      this.#widths = null;
      this.measure();
    });
    for (const element of [editor.dom, ledger.parentElement ?? ledger, this.scroller])
      resizes.observe(element);
    // Before the next frame is laid out, once for all that a key changes: each reading makes the page lay out.
    let frame = 0;
    const measureSoon = () => {
      cancelAnimationFrame(frame);
      frame = requestAnimationFrame(measure);
    };
    // The editor's drawing is watched, not its transactions: words under a row change its height, too.
    const changes = new MutationObserver(measureSoon);
    changes.observe(editor.dom, { subtree: true, childList: true, characterData: true, attributes: true });
    const target = this.scroller === document.documentElement ? document : this.scroller;
    target.addEventListener('scroll', measureSoon, { passive: true });
    this.#stop = () => {
      cancelAnimationFrame(frame);
      resizes.disconnect();
      changes.disconnect();
      target.removeEventListener('scroll', measureSoon);
    };
    this.measure();
  }

  readonly view = (): PlacesView => this.#view;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  stop(): void {
    this.#stop();
    this.#listeners.clear();
  }

  /** Keeps a row measured wherever it is; -1 for none. */
  hold(index: number): void {
    if (this.#held === index) return;
    this.#held = index;
    this.measure();
  }

  /** Brings a row into view, below the edge where the ledger's head ends on screen, moving no further than needed. */
  reveal(index: number, edge: number): void {
    const row = rowsOf(this.#editor.state.doc)[index];
    const box = row === undefined ? null : this.#boxOf(row);
    if (box === null) return;
    const port = this.scroller.getBoundingClientRect();
    const top = Math.max(0, port.top, edge);
    const bottom = Math.min(window.innerHeight, port.bottom);
    if (box.top < top) this.scroller.scrollTop += box.top - top;
    else if (box.bottom > bottom) this.scroller.scrollTop += Math.min(box.bottom - bottom, box.top - top);
    this.measure();
  }

  /** Reads the layout again and tells when something moved. */
  measure(): void {
    if (this.#editor.isDestroyed) return;
    const all = rowsOf(this.#editor.state.doc);
    const port = this.scroller.getBoundingClientRect();
    const origin = this.#ledger.getBoundingClientRect().top;
    const before = new Map(this.#view.rows.map((place) => [place.row.id, place]));
    const rows: RowPlace[] = [];
    const add = (index: number, box: DOMRect): void => {
      const old = before.get(all[index]!.id);
      const atEdge = box.bottom > port.top && box.top < port.top + EDGE;
      const place: RowPlace = { ...this.#place(all[index]!, index, box, origin, old), atEdge };
      rows.push(old !== undefined && samePlace(old, place) ? old : place);
    };
    // A screenful more on either side, so that scrolling meets rows that are drawn already.
    const [low, high] = [port.top - port.height, port.bottom + port.height];
    const first = this.#firstBelow(all, low);
    if (this.#held >= 0 && this.#held < first) {
      const box = this.#boxOf(all[this.#held]!);
      if (box !== null) add(this.#held, box);
    }
    let page = 0;
    let index = first;
    for (; index < all.length; index++) {
      const box = this.#boxOf(all[index]!);
      if (box === null) continue;
      if (box.top > high) break;
      if (box.top >= port.top && box.bottom <= port.bottom) page += 1;
      add(index, box);
    }
    if (this.#held >= index && this.#held < all.length) {
      const box = this.#boxOf(all[this.#held]!);
      if (box !== null) add(this.#held, box);
    }
    this.#widths ??= { room: this.#room(), cell: lengthToken('--ledger-cell', this.#ledger) };
    this.#change({
      rows,
      all: areSame(this.#view.all, all) ? this.#view.all : all,
      ...this.#widths,
      length: this.#editor.dom.getBoundingClientRect().bottom - origin,
      page: Math.max(1, page - 1),
    });
  }

  #change(next: PlacesView): void {
    const now = this.#view;
    const same =
      now.all === next.all &&
      now.room === next.room &&
      now.cell === next.cell &&
      now.length === next.length &&
      now.page === next.page &&
      now.rows.length === next.rows.length &&
      now.rows.every((place, i) => place === next.rows[i]);
    if (same) return;
    this.#view = next;
    for (const listener of this.#listeners) listener();
  }

  /** Width beside the text when the text has its least measure. */
  #room(): number {
    const parent = this.#ledger.parentElement;
    if (parent === null) return 0;
    const style = getComputedStyle(parent);
    const inner =
      parent.clientWidth - Number.parseFloat(style.paddingLeft) - Number.parseFloat(style.paddingRight);
    return inner - lengthToken('--label-width', this.#ledger) - lengthToken('--measure-least', this.#ledger);
  }

  #boxOf(row: LedgerRow): DOMRect | null {
    const dom = this.#editor.nodeDOM(row.pos);
    return dom instanceof Element ? dom.getBoundingClientRect() : null;
  }

  /** Index of the first row whose lower edge is below `edge`. */
  #firstBelow(all: readonly LedgerRow[], edge: number): number {
    let [low, high] = [0, all.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      const box = this.#boxOf(all[middle]!);
      if (box !== null && box.bottom < edge) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** A row as high as before has its first line where it was: asking for a line costs far more than for a box. */
  #place(
    row: LedgerRow,
    index: number,
    box: DOMRect,
    origin: number,
    old?: RowPlace,
  ): Omit<RowPlace, 'atEdge'> {
    const { height } = box;
    const line = old?.height === height ? old.line : this.#lineOf(row, box);
    return { row, index, top: box.top - origin, height, line };
  }

  /** Middle of a row's first line. A form has no line of its own: what it marks as its line, or its top. */
  #lineOf(row: LedgerRow, box: DOMRect): number {
    if (row.isText) {
      const { top, bottom } = this.#editor.coordsAtPos(row.pos + 1);
      return (top + bottom) / 2 - box.top;
    }
    const dom = this.#editor.nodeDOM(row.pos);
    const marked = dom instanceof Element ? dom.querySelector('[data-line]') : null;
    if (marked !== null) {
      const { top, height } = marked.getBoundingClientRect();
      const first = Number.parseFloat(getComputedStyle(marked).lineHeight);
      return top - box.top + Math.min(height, Number.isNaN(first) ? height : first) / 2;
    }
    return Math.min(box.height, lengthToken('--target', this.#ledger)) / 2;
  }
}

/** Whether two lists are of the same rows, wherever these stand now. */
function areSame(a: readonly LedgerRow[], b: readonly LedgerRow[]): boolean {
  return a.length === b.length && a.every((row, i) => isSame(row, b[i]!));
}

function isSame(a: LedgerRow, b: LedgerRow): boolean {
  if (a.id !== b.id || a.piece !== b.piece) return false;
  return (
    a.nodes === b.nodes || (a.nodes.length === b.nodes.length && a.nodes.every((id, i) => id === b.nodes[i]))
  );
}

function samePlace(a: RowPlace, b: RowPlace): boolean {
  return (
    a.index === b.index &&
    a.top === b.top &&
    a.height === b.height &&
    a.line === b.line &&
    a.atEdge === b.atEdge &&
    isSame(a.row, b.row)
  );
}
