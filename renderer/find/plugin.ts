/** Keeps what is looked for in the manuscript and marks it there. The bar asks; the document changes by `replace`. */
import { closeHistory } from 'prosemirror-history';
import { type EditorState, Plugin, PluginKey, TextSelection, type Transaction } from 'prosemirror-state';
import { Decoration, DecorationSet } from 'prosemirror-view';
import { type FindOptions, type Match, matchesIn, nextMatch } from './matches.ts';

export interface FindState {
  /** Null while nothing is looked for. */
  readonly options: FindOptions | null;
  readonly matches: readonly Match[];
  /** Index of the match that is selected; -1 for none. */
  readonly current: number;
}

const NOTHING: FindState = { options: null, matches: [], current: -1 };

export const finding = new PluginKey<FindState>('find');

function marks(state: EditorState): DecorationSet {
  const { matches, current } = finding.getState(state) ?? NOTHING;
  return DecorationSet.create(
    state.doc,
    matches.map(({ from, to }, at) =>
      Decoration.inline(from, to, { class: at === current ? 'found is-current' : 'found' }),
    ),
  );
}

export function find(): Plugin<FindState> {
  let drawn: { readonly found: FindState; readonly set: DecorationSet } | null = null;
  return new Plugin<FindState>({
    key: finding,
    state: {
      init: () => NOTHING,
      apply: (transaction, before, _, state) => {
        const asked: FindOptions | null | undefined = transaction.getMeta(finding);
        const options = asked === undefined ? before.options : asked;
        if (options === null) return before.options === null ? before : NOTHING;
        if (asked === undefined && !transaction.docChanged && !transaction.selectionSet) return before;
        const matches =
          asked === undefined && !transaction.docChanged ? before.matches : matchesIn(state.doc, options);
        const { from, to } = state.selection;
        const current = matches.findIndex((match) => match.from === from && match.to === to);
        return { options, matches, current };
      },
    },
    props: {
      decorations: (state) => {
        const found = finding.getState(state) ?? NOTHING;
        if (found.matches.length === 0) return null;
        if (drawn?.found !== found) drawn = { found, set: marks(state) };
        return drawn.set;
      },
    },
  });
}

/** Looks for words, from the selection on; null ends it. Selects the first match there. */
export function lookFor(state: EditorState, options: FindOptions | null): Transaction {
  const transaction = state.tr.setMeta(finding, options);
  if (options === null) return transaction;
  return selectMatch(transaction, matchesIn(state.doc, options), state.selection.from, 1);
}

/** Selects the next match, or the one before. */
export function goToMatch(state: EditorState, by: 1 | -1): Transaction {
  const { matches } = finding.getState(state) ?? NOTHING;
  const { from, to } = state.selection;
  return selectMatch(state.tr, matches, by === 1 ? to : from, by);
}

function selectMatch(
  transaction: Transaction,
  matches: readonly Match[],
  from: number,
  by: 1 | -1,
): Transaction {
  const match = matches[nextMatch(matches, from, by)];
  if (match === undefined) return transaction;
  const selection = TextSelection.create(transaction.doc, match.from, match.to);
  return transaction.setSelection(selection).scrollIntoView();
}

/** Puts other words in the place of the selected match and goes to the next; goes there when none is selected. */
export function replaceMatch(state: EditorState, words: string): Transaction {
  const { matches, current } = finding.getState(state) ?? NOTHING;
  const match = matches[current];
  if (match === undefined) return goToMatch(state, 1);
  const transaction = put(closeHistory(state.tr), match, words);
  const options = finding.getState(state)?.options ?? null;
  if (options === null) return transaction;
  return selectMatch(transaction, matchesIn(transaction.doc, options), match.from + words.length, 1);
}

/** Puts other words in the place of every match, as one step of undoing. */
export function replaceAll(state: EditorState, words: string): Transaction {
  const { matches } = finding.getState(state) ?? NOTHING;
  const transaction = closeHistory(state.tr);
  for (const match of [...matches].reverse()) put(transaction, match, words);
  return transaction;
}

function put(transaction: Transaction, { from, to }: Match, words: string): Transaction {
  return words === '' ? transaction.delete(from, to) : transaction.insertText(words, from, to);
}
