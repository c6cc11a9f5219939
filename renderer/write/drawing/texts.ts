/**
 * The texts of the manuscript as they are drawn: what stands left of the words, and what asks for words where
 * there are none yet. Prompts are drawn by the stylesheet from an attribute; they are no text.
 */
import type { Node } from 'prosemirror-model';
import type { EditorView } from 'prosemirror-view';
import { onlySizes } from '../../../core/study/labels.ts';
import type { DeskView } from '../../desk/desk.ts';
import { writeWords } from '../../words/write.ts';
import { asideButton, element, setMark, setWords } from './element.ts';
import { type DrawingParts, DrawnNode, type GetPos } from './view.ts';

/** A text with words at its left; subclasses say which. */
abstract class TextView extends DrawnNode {
  readonly dom: HTMLElement;
  readonly contentDOM: HTMLElement;

  constructor(node: Node, editor: EditorView, getPos: GetPos, parts: DrawingParts, kind: string) {
    super(node, editor, getPos, parts);
    this.dom = element('div', `text ${kind}`);
    this.contentDOM = element('div', 'words');
  }

  protected abstract prompt(): string;

  protected override drawn(): void {
    setMark(this.contentDOM, 'data-prompt', this.node.childCount === 0 ? this.prompt() : null);
  }
}

/** A field of the cover or of the last page, a note, a step: its label does not change. */
export class FieldView extends TextView {
  readonly #prompt: string;

  constructor(
    node: Node,
    editor: EditorView,
    getPos: GetPos,
    parts: DrawingParts,
    { label, prompt }: { readonly label: string; readonly prompt: string },
  ) {
    super(node, editor, getPos, parts, node.type.name);
    this.#prompt = prompt;
    const mark = element('span', 'label', label);
    mark.contentEditable = 'false';
    this.dom.append(mark, this.contentDOM);
    this.begin();
  }

  protected override prompt(): string {
    return this.#prompt;
  }
}

/** A text whose label opens a form: a row, a paragraph between rows, a heading, a special stitch. */
abstract class LabelledView extends TextView {
  readonly #label: HTMLButtonElement;
  readonly #words = element('span', 'label-words');
  readonly #sizes = element('span', 'label-sizes');
  /** What the label on screen was made of. */
  #drawn: readonly unknown[] = [];

  constructor(node: Node, editor: EditorView, getPos: GetPos, parts: DrawingParts, kind: string) {
    super(node, editor, getPos, parts, kind);
    this.#label = asideButton('label', '', () => this.open());
    this.#label.tabIndex = -1;
    this.#label.append(this.#words, this.#sizes);
    this.dom.append(this.#label, this.contentDOM);
  }

  protected abstract labelOf(view: DeskView): string;
  protected abstract open(): void;

  protected override drawn(): void {
    super.drawn();
    setMark(this.dom, 'data-block', this.node.attrs.id);
  }

  override refresh(view: DeskView): void {
    const { attrs } = this.node;
    const report = view.report.blocks.get(attrs.id);
    const { sizes: all } = view.pattern;
    // Hundreds of rows are asked after every key: nothing is made for those that stay as they are.
    const before = this.#drawn;
    if (before[0] === attrs && before[1] === report && before[2] === all && before[3] === view.reading)
      return;
    this.#drawn = [attrs, report, all, view.reading];
    const label = this.labelOf(view);
    const sizes = onlySizes(this.node.attrs.sizes ?? null, view.pattern.sizes) ?? '';
    setWords(this.#words, label);
    setWords(this.#sizes, sizes);
    setMark(this.#label, 'title', writeWords.changeBlock(label));
  }
}

const FORM_WORDS = {
  row: writeWords.labels.noRow,
  round: writeWords.labels.noRound,
  foundation: writeWords.labels.noFoundation,
} as const;

export class RowView extends LabelledView {
  constructor(node: Node, editor: EditorView, getPos: GetPos, parts: DrawingParts) {
    super(node, editor, getPos, parts, 'row');
    this.begin();
  }

  protected override prompt(): string {
    const { prompts } = writeWords;
    const { form } = this.node.attrs;
    if (form === 'foundation') return prompts.foundation;
    const { terms } = this.parts.live.desk.view().pattern;
    return form === 'round' ? prompts.round(terms) : prompts.row(terms);
  }

  override refresh(view: DeskView): void {
    // The example in the prompt is in the pattern's terms, which may have changed.
    if (this.node.childCount === 0) this.drawn();
    super.refresh(view);
  }

  /** Which of a shaping's two rows this is; null for a row of its own. */
  #inShaping(): 'shaped' | 'even' | null {
    const pos = this.getPos();
    if (pos === undefined) return null;
    const at = this.editor.state.doc.resolve(pos);
    return at.parent.type.name !== 'shaping' ? null : at.index() === 0 ? 'shaped' : 'even';
  }

  protected override labelOf({ report }: DeskView): string {
    const inner = this.#inShaping();
    if (inner !== null) return writeWords.ofShaping(inner, this.node.attrs.form === 'round');
    const block = report.blocks.get(this.node.attrs.id);
    if (block?.label == null) return FORM_WORDS[this.node.attrs.form as keyof typeof FORM_WORDS];
    return writeWords.withSide(block.label, block.side);
  }

  protected override open(): void {
    this.parts.popups.open({ kind: 'block', id: this.node.attrs.id });
  }
}

/** A paragraph or a heading between the rows. */
export class BetweenView extends LabelledView {
  constructor(node: Node, editor: EditorView, getPos: GetPos, parts: DrawingParts) {
    super(node, editor, getPos, parts, node.type.name);
    this.begin();
  }

  protected override prompt(): string {
    return writeWords.prompts[this.node.type.name === 'heading' ? 'heading' : 'prose'];
  }

  protected override labelOf(): string {
    return writeWords.labels[this.node.type.name === 'heading' ? 'heading' : 'prose'];
  }

  protected override open(): void {
    this.parts.popups.open({ kind: 'block', id: this.node.attrs.id });
  }
}

export class SpecialView extends LabelledView {
  constructor(node: Node, editor: EditorView, getPos: GetPos, parts: DrawingParts) {
    super(node, editor, getPos, parts, 'special');
    this.begin();
  }

  protected override prompt(): string {
    return writeWords.prompts.special;
  }

  protected override labelOf({ reading }: DeskView): string {
    const { nameUs, nameUk, abbrUs, abbrUk } = this.node.attrs;
    const [name, abbr] = reading.terms === 'us' ? [nameUs, abbrUs] : [nameUk, abbrUk];
    if (name === '' && abbr === '') return writeWords.labels.unnamedSpecial;
    return name === '' || abbr === '' ? name || abbr : `${name} (${abbr})`;
  }

  protected override open(): void {
    this.parts.popups.open({ kind: 'special', id: this.node.attrs.id });
  }
}
