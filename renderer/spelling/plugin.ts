/**
 * Marks words of the manuscript that are spelt as no dictionary has them. Looks after typing rests, at the texts
 * that changed; marks move with the text until then. Nothing is marked while an input method composes, nor while
 * the pattern is read in the other terms.
 */
import type { Node } from 'prosemirror-model';
import { type EditorState, Plugin, PluginKey, type Transaction } from 'prosemirror-state';
import { Decoration, DecorationSet, type EditorView } from 'prosemirror-view';
import { setDocument } from '../desk/edits.ts';
import { ELSEWHERE } from '../desk/places.ts';
import type { Studio } from '../shell/studio.ts';
import { hearCaret } from '../write/caret.ts';
import { knownWords } from './known.ts';
import type { WordAt } from './protocol.ts';
import { Speller } from './speller.ts';

/** How long typing rests before words are looked up. */
const REST = 500;

/** Texts that hold sentences. Titles, names of pieces, addresses and the bodies of stitches do not. */
const SENTENCES = new Set([
  'description',
  'construction',
  'fit',
  'paragraph',
  'prose',
  'heading',
  'care',
  'caution',
]);

const key = new PluginKey<DecorationSet>('spelling');

/** The misspelt word that the selection is in; null when there is none. */
export function misspeltAt(state: EditorState): { readonly from: number; readonly to: number } | null {
  const { from, to } = state.selection;
  const [mark] = key.getState(state)?.find(from, to) ?? [];
  return mark === undefined ? null : { from: mark.from, to: mark.to };
}

/** Takes a word for right in this pattern from now on. */
export function addWord(state: EditorState, word: string): Transaction {
  const words: readonly string[] = state.doc.attrs.words;
  return setDocument(state, { words: [...words, word] });
}

/** One for the window: its dictionaries stay loaded from one pattern to the next. */
const speller = new Speller();
export const suggestionsFor = (word: string): Promise<readonly string[]> => speller.suggest(word);

const isChecked = (node: Node): boolean => node.type.name === 'row' || SENTENCES.has(node.type.name);

function textsOf(document: Node): readonly { readonly node: Node; readonly pos: number }[] {
  const texts: { node: Node; pos: number }[] = [];
  document.descendants((node, pos) => {
    if (node.isTextblock && isChecked(node) && node.childCount > 0) texts.push({ node, pos });
    return !node.isTextblock && !ELSEWHERE.has(node.type.name);
  });
  return texts;
}

export function spelling(studio: Studio): Plugin<DecorationSet> {
  return new Plugin<DecorationSet>({
    key,
    state: {
      init: () => DecorationSet.empty,
      apply: (transaction, set) =>
        (transaction.getMeta(key) as DecorationSet | undefined) ??
        set.map(transaction.mapping, transaction.doc),
    },
    props: { decorations: (state) => key.getState(state) },
    view: (view) => new Looking(view, studio),
  });
}

/** Looks through the texts of one editor. */
class Looking {
  readonly #view: EditorView;
  readonly #studio: Studio;
  /** Misspelt words by text, while what is known stays the same. */
  #found = new WeakMap<Node, readonly WordAt[]>();
  #known = '';
  #rest = 0;
  #isOn = false;
  readonly #leave: () => void;

  constructor(view: EditorView, studio: Studio) {
    this.#view = view;
    this.#studio = studio;
    this.#leave = studio.subscribe(() => {
      if (studio.view().settings.spelling !== this.#isOn) this.#soon(0);
    });
    this.#soon(REST);
  }

  update(view: EditorView, before: EditorState): void {
    if (view.state.doc !== before.doc) this.#soon(REST);
  }

  destroy(): void {
    window.clearTimeout(this.#rest);
    this.#leave();
  }

  #soon(after: number): void {
    window.clearTimeout(this.#rest);
    this.#rest = window.setTimeout(() => void this.#look(), after);
  }

  async #look(): Promise<void> {
    const desk = this.#studio.view().desk;
    this.#isOn = this.#studio.view().settings.spelling;
    if (desk === null || this.#view.isDestroyed) return;
    if (this.#view.composing) {
      this.#soon(REST);
      return;
    }
    if (!this.#isOn) {
      this.#mark(DecorationSet.empty);
      return;
    }
    const { pattern, document } = desk.view();
    const known = knownWords(pattern, document);
    const knownKey = `${pattern.terms} ${known.join(' ')}`;
    if (knownKey !== this.#known) {
      this.#known = knownKey;
      this.#found = new WeakMap();
      speller.learn(pattern.terms, known);
    }
    const fresh = textsOf(document).filter(({ node }) => !this.#found.has(node));
    const found = this.#found;
    if (fresh.length > 0) {
      const wrong = await speller.check(
        fresh.map(({ node }) => ({
          text: node.textBetween(0, node.content.size, undefined, '\uFFFC'),
          isRow: node.type.name === 'row',
        })),
      );
      fresh.forEach(({ node }, i) => {
        found.set(node, wrong[i] ?? []);
      });
    }
    // What was typed meanwhile is looked at when it rests.
    if (this.#view.isDestroyed || this.#view.state.doc !== document || found !== this.#found) return;
    const marks = textsOf(document).flatMap(({ node, pos }) =>
      (found.get(node) ?? []).map(([from, to]) =>
        Decoration.inline(pos + 1 + from, pos + 1 + to, { class: 'misspelt' }),
      ),
    );
    this.#mark(DecorationSet.create(document, marks));
  }

  #mark(set: DecorationSet): void {
    const now = key.getState(this.#view.state)?.find() ?? [];
    const next = set.find();
    const same =
      now.length === next.length &&
      now.every((mark, i) => mark.from === next[i]!.from && mark.to === next[i]!.to);
    if (same) return;
    hearCaret(this.#view);
    this.#view.dispatch(this.#view.state.tr.setMeta(key, set).setMeta('addToHistory', false));
  }
}
