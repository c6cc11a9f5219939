/** Parts of the pattern as they are drawn: a heading, what is in them, and a way to begin where nothing is. */
import type { Node } from 'prosemirror-model';
import type { EditorView } from 'prosemirror-view';
import { aside, asideButton, element } from './element.ts';
import { type DrawingParts, DrawnNode, type GetPos } from './view.ts';

export interface SectionWords {
  /** Null for a list that stands under another part's heading. */
  readonly heading: string | null;
  /** Words of the button that adds to it; null where its parts are fixed. */
  readonly add: string | null;
}

export class SectionView extends DrawnNode {
  readonly dom: HTMLElement;
  readonly contentDOM = element('div', 'section-body');
  readonly #add: HTMLButtonElement | null;

  constructor(
    node: Node,
    editor: EditorView,
    getPos: GetPos,
    parts: DrawingParts,
    words: SectionWords,
    add: (editor: EditorView, pos: number) => void,
  ) {
    super(node, editor, getPos, parts);
    this.dom = element('div', `section ${node.type.name}`);
    if (words.heading !== null) this.dom.append(aside('h2', 'section-heading', words.heading));
    this.dom.append(this.contentDOM);
    this.#add = words.add === null ? null : this.#button(words.add, add);
    this.begin();
  }

  #button(words: string, add: (editor: EditorView, pos: number) => void): HTMLButtonElement {
    const button = asideButton('add', words, () => {
      const pos = this.getPos();
      if (pos !== undefined) add(this.editor, pos);
    });
    this.dom.append(button);
    return button;
  }

  protected override drawn(): void {
    this.#add?.classList.toggle('first', this.node.childCount === 0);
  }

  override refresh(): void {
    if (this.#add !== null) this.#add.disabled = !this.editor.editable;
  }
}

/** A part that has a place of its own: nothing of it is drawn here. */
export class HiddenView extends DrawnNode {
  readonly dom = aside('div', 'elsewhere');
  readonly contentDOM?: never;

  constructor(node: Node, editor: EditorView, getPos: GetPos, parts: DrawingParts) {
    super(node, editor, getPos, parts);
    this.dom.hidden = true;
  }
}
