/** A figure as it is drawn: its value in the size in focus, and in all sizes when it is pointed at or chosen. */
import type { Node } from 'prosemirror-model';
import type { EditorView } from 'prosemirror-view';
import type { DeskView } from '../../desk/desk.ts';
import { inTerms } from '../../desk/terms.ts';
import { writeWords } from '../../words/write.ts';
import { element, setMark, setWords } from './element.ts';
import { type DrawingParts, DrawnNode, type GetPos } from './view.ts';

export class FigureView extends DrawnNode {
  readonly dom = element('span', 'figure');
  readonly contentDOM?: never;
  /** What the value on screen was made of. */
  #drawn: readonly unknown[] = [];
  readonly #value = element('span', 'figure-value');

  constructor(node: Node, editor: EditorView, getPos: GetPos, parts: DrawingParts) {
    super(node, editor, getPos, parts);
    this.dom.append(this.#value);
    this.dom.setAttribute('role', 'img');
    this.dom.addEventListener('dblclick', () => this.#edit());
    this.begin();
  }

  #edit(): void {
    const from = this.getPos();
    if (from === undefined || !this.editor.editable) return;
    this.parts.popups.open({ kind: 'figure', from, to: from + 1, expression: this.node.attrs.expression });
  }

  override refresh({ report, reading, pattern }: DeskView): void {
    const expression: string = this.node.attrs.expression;
    const values = report.figures.get(expression);
    const drawn = [expression, values, reading, report.sizes, pattern.specials];
    if (drawn.every((part, at) => part === this.#drawn[at])) return;
    this.#drawn = drawn;
    const words = (size: number): string | null => {
      const value = values?.[size]?.[reading.units] ?? null;
      return value === null ? null : inTerms(value, pattern, reading.terms, 'row');
    };
    const own = words(report.sizes.findIndex(({ id }) => id === reading.size));
    const shown = own ?? (expression.trim() === '' ? writeWords.figureEmpty : expression);
    setWords(this.#value, shown);
    setMark(this.dom, 'data-missing', own === null ? '' : null);
    setMark(this.dom, 'aria-label', writeWords.figure(expression, own));
    const all = report.sizes.map(({ label }, size) => [label, words(size)] as const);
    setMark(this.dom, 'data-all', `${expression}\n${writeWords.inAllSizes(all)}`);
  }
}
