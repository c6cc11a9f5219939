/**
 * Keeps the drawn parts of the manuscript that show derived things (labels, figures, heads of pieces) up to date
 * with the desk, beside the editor's own drawing: nothing is dispatched for them. While an input method composes,
 * nothing is touched; what came in the meantime is drawn afterwards.
 */
import type { EditorView } from 'prosemirror-view';
import type { Desk, DeskView } from '../desk/desk.ts';

/** A drawn part. `refresh` compares for itself and touches the page only where something differs. */
export interface LivePart {
  refresh(view: DeskView): void;
  /** Shows something of the pieces as they are written, and so is drawn at every key, not only at a report. */
  readonly followsPieces?: boolean;
}

export class LiveParts {
  readonly #desk: Desk;
  readonly #parts = new Set<LivePart>();
  readonly #followers = new Set<LivePart>();
  readonly #stop: () => void;
  #editor: EditorView | null = null;
  #drawn: DeskView | null = null;
  #waiting = false;

  constructor(desk: Desk) {
    this.#desk = desk;
    this.#stop = desk.subscribe(() => this.#changed());
  }

  get desk(): Desk {
    return this.#desk;
  }

  /** The editor whose composing is waited for. */
  attach(editor: EditorView): void {
    this.#editor = editor;
    editor.dom.addEventListener('compositionend', this.#composed);
  }

  /** Adds a part and draws it; the function given back takes it away. */
  add(part: LivePart): () => void {
    this.#parts.add(part);
    if (part.followsPieces) this.#followers.add(part);
    part.refresh(this.#desk.view());
    return () => {
      this.#parts.delete(part);
      this.#followers.delete(part);
    };
  }

  stop(): void {
    this.#stop();
    this.#editor?.dom.removeEventListener('compositionend', this.#composed);
    this.#parts.clear();
    this.#followers.clear();
  }

  #changed(): void {
    if (this.#editor?.composing) {
      this.#waiting = true;
      return;
    }
    const view = this.#desk.view();
    const drawn = this.#drawn;
    this.#drawn = view;
    const isNew = <K extends keyof DeskView>(name: K) => drawn === null || drawn[name] !== view[name];
    const areNew = (name: 'sizes' | 'specials' | 'pieces') =>
      drawn === null || drawn.pattern[name] !== view.pattern[name];
    if (isNew('report') || isNew('reading') || areNew('sizes') || areNew('specials')) {
      for (const part of this.#parts) part.refresh(view);
    } else if (areNew('pieces')) {
      for (const part of this.#followers) part.refresh(view);
    }
  }

  readonly #composed = (): void => {
    // The editor takes the composed words in shortly after the event.
    setTimeout(() => {
      if (!this.#waiting || this.#editor?.isDestroyed) return;
      if (this.#editor?.composing) return this.#composed();
      this.#waiting = false;
      this.#changed();
    }, 60);
  };
}
