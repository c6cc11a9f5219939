/** Repeats of rows and shapings as they are drawn: sentences made of what the form holds, with what they come to. */
import type { Node } from 'prosemirror-model';
import type { EditorView } from 'prosemirror-view';
import { onlySizes } from '../../../core/study/labels.ts';
import type { DeskView } from '../../desk/desk.ts';
import { inTerms } from '../../desk/terms.ts';
import { blockWords } from '../../words/blocks.ts';
import { writeWords } from '../../words/write.ts';
import { aside, asideButton, element, setMark, setWords } from './element.ts';
import { type DrawingParts, DrawnNode, type GetPos } from './view.ts';

/** A block that is a form: its label and a sentence, both of which open the form. */
abstract class FormBlockView extends DrawnNode {
  readonly dom: HTMLElement;
  readonly contentDOM?: HTMLElement;
  protected readonly head = aside('div', 'block-head');
  readonly #label: HTMLButtonElement;
  readonly #words = element('span', 'label-words');
  readonly #sizes = element('span', 'label-sizes');
  readonly #sentence: HTMLButtonElement;

  constructor(node: Node, editor: EditorView, getPos: GetPos, parts: DrawingParts, kind: string) {
    super(node, editor, getPos, parts);
    this.dom = element('div', `form-block ${kind}`);
    const open = () => parts.popups.open({ kind: 'block', id: this.node.attrs.id });
    this.#label = asideButton('label', '', open);
    this.#label.tabIndex = -1;
    this.#label.append(this.#words, this.#sizes);
    this.#sentence = asideButton('sentence', '', open);
    this.#sentence.tabIndex = -1;
    this.head.append(this.#label, this.#sentence);
    this.#sentence.dataset.line = '';
    this.dom.append(this.head);
  }

  protected abstract fallback(): string;
  protected abstract sentenceOf(view: DeskView): string;

  protected override drawn(): void {
    setMark(this.dom, 'data-block', this.node.attrs.id);
  }

  override refresh(view: DeskView): void {
    const block = view.report.blocks.get(this.node.attrs.id);
    const label = block?.label == null ? this.fallback() : writeWords.withSide(block.label, block.side);
    setWords(this.#words, label);
    setWords(this.#sizes, onlySizes(this.node.attrs.sizes ?? null, view.pattern.sizes) ?? '');
    setWords(this.#sentence, this.sentenceOf(view));
    setMark(this.#label, 'title', writeWords.changeBlock(label));
  }
}

export class RepeatView extends FormBlockView {
  constructor(node: Node, editor: EditorView, getPos: GetPos, parts: DrawingParts) {
    super(node, editor, getPos, parts, 'repeat');
    this.dom.contentEditable = 'false';
    this.begin();
  }

  protected override fallback(): string {
    return writeWords.labels.repeat;
  }

  protected override sentenceOf({ report, reading }: DeskView): string {
    const { first, last, until } = this.node.attrs;
    const label = (id: string) => report.blocks.get(id)?.label ?? null;
    const expression: string = until.kind === 'times' ? until.times : until.rows;
    const size = report.sizes.findIndex(({ id }) => id === reading.size);
    const value = report.figures.get(expression)?.[size]?.[reading.units] ?? null;
    return blockWords.repeat(label(first), label(last), until.kind, value ?? expression);
  }
}

export class ShapingView extends FormBlockView {
  override readonly contentDOM = element('div', 'shaping-rows');

  constructor(node: Node, editor: EditorView, getPos: GetPos, parts: DrawingParts) {
    super(node, editor, getPos, parts, 'shaping');
    this.dom.append(this.contentDOM);
    this.begin();
  }

  protected override fallback(): string {
    return writeWords.labels.shaping;
  }

  protected override sentenceOf({ report, reading, pattern }: DeskView): string {
    const name: string = this.node.attrs.line;
    const size = report.sizes.findIndex(({ id }) => id === reading.size);
    const line = pattern.lines.find((other) => other.name === name);
    const value = line === undefined ? null : report.lines.get(line.id)?.cells[size]?.value?.[reading.units];
    const words = value == null ? null : inTerms(value, pattern, reading.terms, 'row');
    return blockWords.shaping(name, words);
  }
}
