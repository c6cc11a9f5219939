/** What all drawn parts of the manuscript share: what they are made with, and their conduct towards the editor. */
import type { Node } from 'prosemirror-model';
import type { EditorView, NodeView, ViewMutationRecord } from 'prosemirror-view';
import type { DeskView } from '../../desk/desk.ts';
import type { LivePart, LiveParts } from '../live.ts';
import type { Popups } from '../popups.ts';

/** What every drawn part may use. */
export interface DrawingParts {
  readonly live: LiveParts;
  readonly popups: Popups;
}

export type GetPos = () => number | undefined;

/** A drawn node. Subclasses build the elements; the rest is the same for all. */
export abstract class DrawnNode implements NodeView, LivePart {
  abstract readonly dom: HTMLElement;
  abstract readonly contentDOM?: HTMLElement;
  protected node: Node;
  protected readonly editor: EditorView;
  protected readonly getPos: GetPos;
  protected readonly parts: DrawingParts;
  #leave: (() => void) | null = null;

  constructor(node: Node, editor: EditorView, getPos: GetPos, parts: DrawingParts) {
    this.node = node;
    this.editor = editor;
    this.getPos = getPos;
    this.parts = parts;
  }

  /** Called when the elements are there. */
  protected begin(): void {
    this.drawn();
    this.#leave = this.parts.live.add(this);
  }

  /** Draws what depends on the node alone. */
  protected drawn(): void {}

  /** Draws what is derived. */
  refresh(_view: DeskView): void {}

  update(node: Node): boolean {
    if (node.type !== this.node.type) return false;
    this.node = node;
    this.drawn();
    if (!this.editor.composing) this.refresh(this.parts.live.desk.view());
    return true;
  }

  /** Whatever changes outside the text is ours: the editor need not read it. */
  ignoreMutation(mutation: ViewMutationRecord): boolean {
    if (this.contentDOM === undefined) return true;
    return mutation.type !== 'selection' && !this.contentDOM.contains(mutation.target);
  }

  /** Keys and clicks on a button beside the text are the button's. */
  stopEvent(event: Event): boolean {
    const { target } = event;
    return target instanceof Element && target.closest('button') !== null;
  }

  destroy(): void {
    this.#leave?.();
  }
}
