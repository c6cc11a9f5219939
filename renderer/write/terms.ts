/**
 * The manuscript read in the other market's terms: each converted word is shown over the authored one, which
 * stays in the document as it was typed. It changes no text, and the manuscript is not typed in meanwhile.
 */
import type { Node } from 'prosemirror-model';
import { Plugin, PluginKey } from 'prosemirror-state';
import { Decoration, DecorationSet, type EditorView } from 'prosemirror-view';
import { FIGURE } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import { type Replacement, translate } from '../../core/notation/translate.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import type { Desk } from '../desk/desk.ts';
import { ELSEWHERE } from '../desk/places.ts';
import { type OwnName, ownNames } from '../desk/terms.ts';
import { hearCaret } from './caret.ts';

interface Shown {
  /** Terms on screen; null while they are the pattern's own. */
  readonly terms: Terms | null;
  readonly set: DecorationSet;
}

const key = new PluginKey<Shown>('terms');
const NOTHING: Shown = { terms: null, set: DecorationSet.empty };
const ROWS = new Set(['row', 'special']);

/** Words replaced in a text, kept for as long as the node lives. */
const known = new WeakMap<Node, { to: Terms; own: readonly OwnName[]; spans: readonly Replacement[] }>();

function spansOf(node: Node, from: Terms, to: Terms, own: readonly OwnName[]): readonly Replacement[] {
  const before = known.get(node);
  if (before !== undefined && before.to === to && before.own === own) return before.spans;
  const text = node.textBetween(0, node.content.size, '', FIGURE);
  const { spans } = translate(text, from, to, { kind: ROWS.has(node.type.name) ? 'row' : 'prose', own });
  known.set(node, { to, own, spans });
  return spans;
}

/** The converted words of a whole document, as marks over the authored ones. */
export function convertedWords(document: Node, to: Terms): DecorationSet {
  const pattern = project(document);
  const own = ownNames(pattern);
  const marks: Decoration[] = [];
  document.descendants((node, pos) => {
    if (ELSEWHERE.has(node.type.name)) return false;
    if (!node.isTextblock) return true;
    for (const { from, to: end, replacement } of spansOf(node, pattern.terms, to, own)) {
      const attributes = { class: 'converted', 'data-shown': replacement };
      marks.push(Decoration.inline(pos + 1 + from, pos + 1 + end, attributes, { replacement }));
    }
    return false;
  });
  return DecorationSet.create(document, marks);
}

export function termsOnScreen(desk: () => Desk | null): Plugin {
  return new Plugin<Shown>({
    key,
    state: {
      init: () => NOTHING,
      apply(transaction, before, _, state) {
        const told = transaction.getMeta(key) as { readonly terms: Terms | null } | undefined;
        const terms = told === undefined ? before.terms : told.terms;
        if (terms === null) return before.terms === null ? before : NOTHING;
        if (terms === before.terms && !transaction.docChanged) return before;
        return { terms, set: convertedWords(state.doc, terms) };
      },
    },
    props: { decorations: (state) => key.getState(state)?.set },
    view: (editor) => new TermsTaker(editor, desk()),
  });
}

/** Hands the terms on screen to the state. */
class TermsTaker {
  readonly #editor: EditorView;
  readonly #desk: Desk | null;
  readonly #stop: (() => void) | undefined;

  constructor(editor: EditorView, desk: Desk | null) {
    this.#editor = editor;
    this.#desk = desk;
    this.#stop = desk?.subscribe(() => this.#later());
    this.#later();
  }

  destroy(): void {
    this.#stop?.();
  }

  /** After the step that told of it, so that no transaction is made within another. */
  #later(): void {
    if (this.#wanted() !== this.#given()) queueMicrotask(() => this.#take());
  }

  #wanted(): Terms | null {
    const view = this.#desk?.view();
    return view === undefined || view.reading.terms === view.pattern.terms ? null : view.reading.terms;
  }

  #given(): Terms | null {
    const state = this.#desk?.view().state;
    return state === undefined ? null : (key.getState(state)?.terms ?? null);
  }

  #take(): void {
    const terms = this.#wanted();
    if (this.#editor.isDestroyed || this.#desk === null || terms === this.#given()) return;
    hearCaret(this.#editor);
    this.#editor.dispatch(this.#desk.view().state.tr.setMeta(key, { terms }));
  }
}
