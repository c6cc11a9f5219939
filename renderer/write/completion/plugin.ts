/**
 * The list of words while typing. It opens at a real beginning of something, chooses no word by itself, and goes
 * away at the first key that is not for it. It is closed while an input method composes.
 */
import { closeHistory, isHistoryTransaction } from 'prosemirror-history';
import { type EditorState, Plugin, PluginKey, type Transaction } from 'prosemirror-state';
import type { EditorView } from 'prosemirror-view';
import { FIGURE } from '../../../core/document/pattern.ts';
import { project } from '../../../core/document/project.ts';
import { schema } from '../../../core/document/schema.ts';
import { type Proposal, proposals, typedAt } from './words.ts';

export interface Completion {
  readonly proposals: readonly Proposal[];
  /** What the proposal replaces. */
  readonly from: number;
  readonly to: number;
  /** Index of the chosen one; -1 while none is. */
  readonly chosen: number;
}

type Told = { readonly chosen: number } | 'close';

const key = new PluginKey<Completion | null>('completion');

/** Id of the list, and of a proposal in it, for screen readers. */
export const LIST = 'completion';
export const optionId = (at: number): string => `${LIST}-${at}`;

/** Texts that are written in the language of rows. */
const ROWS = new Set(['row', 'special']);
/** Longest piece of text that is looked at. */
const REACH = 60;

function beginning(state: EditorState): Completion | null {
  const { $from, empty } = state.selection;
  if (!empty || !$from.parent.isTextblock) return null;
  const kind = $from.parent.type.name;
  const takesFigures = $from.parent.type.contentMatch.matchType(schema.nodes.figure) !== null;
  if (!ROWS.has(kind) && !takesFigures) return null;
  const after = $from.parent.textBetween(
    $from.parentOffset,
    Math.min($from.parentOffset + 1, $from.parent.content.size),
    '',
    FIGURE,
  );
  if (/[\p{L}\p{N}]/u.test(after)) return null;
  const start = Math.max(0, $from.parentOffset - REACH);
  const typed = typedAt($from.parent.textBetween(start, $from.parentOffset, '', FIGURE));
  if (typed === null || (!typed.isFigure && !ROWS.has(kind))) return null;
  const found = proposals(typed, project(state.doc));
  if (found.length === 0) return null;
  // Behind "=" nothing but a line can be meant; a word of a row may be as it was wanted.
  const chosen = typed.isFigure ? 0 : -1;
  return { proposals: found, from: $from.pos - typed.length, to: $from.pos, chosen };
}

/** Whether a transaction is a letter typed: one short insertion at the caret. */
function isTyping(transaction: Transaction): boolean {
  if (transaction.getMeta('paste') || transaction.getMeta('uiEvent') || transaction.steps.length !== 1)
    return false;
  let short = true;
  transaction.mapping.maps[0]?.forEach((from, to, start, end) => {
    if (to - from > 1 || end - start > 2) short = false;
  });
  return short;
}

export function completion(): Plugin {
  return new Plugin<Completion | null>({
    key,
    state: {
      init: () => null,
      apply(transaction, before, _, state) {
        const told = transaction.getMeta(key) as Told | undefined;
        if (told === 'close') return null;
        if (told !== undefined) return before === null ? null : { ...before, chosen: told.chosen };
        if (transaction.getMeta('composition') !== undefined) return null;
        if (transaction.docChanged) {
          if (transaction.getMeta('appendedTransaction') || isHistoryTransaction(transaction)) return null;
          return isTyping(transaction) ? beginning(state) : null;
        }
        return transaction.selectionSet ? null : before;
      },
    },
    props: {
      attributes: (state): Record<string, string> => {
        const open = key.getState(state) ?? null;
        if (open === null) return {};
        return {
          'aria-autocomplete': 'list',
          'aria-controls': LIST,
          ...(open.chosen < 0 ? {} : { 'aria-activedescendant': optionId(open.chosen) }),
        };
      },
      handleKeyDown: (view, event) => onKey(view, event),
      handleDOMEvents: {
        blur: (view) => {
          if (openCompletion(view.state) !== null) view.dispatch(view.state.tr.setMeta(key, 'close'));
          return false;
        },
      },
    },
  });
}

function onKey(view: EditorView, event: KeyboardEvent): boolean {
  const open = openCompletion(view.state);
  if (open === null || event.isComposing || event.ctrlKey || event.metaKey || event.altKey) return false;
  const choose = (chosen: number): boolean => {
    view.dispatch(view.state.tr.setMeta(key, { chosen }));
    return true;
  };
  const last = open.proposals.length - 1;
  switch (event.key) {
    case 'ArrowDown':
      return choose(open.chosen >= last ? 0 : open.chosen + 1);
    case 'ArrowUp':
      return choose(open.chosen <= 0 ? last : open.chosen - 1);
    case 'Enter':
      // No word is chosen unless the maker chose it: Enter alone makes the next row.
      if (open.chosen < 0) return false;
      return accept(view, open, open.chosen);
    case 'Tab':
      return !event.shiftKey && accept(view, open, Math.max(0, open.chosen));
    case 'Escape':
      view.dispatch(view.state.tr.setMeta(key, 'close'));
      return true;
    default:
      return false;
  }
}

/** The list that is open; null for none. */
export const openCompletion = (state: EditorState): Completion | null => key.getState(state) ?? null;

/** Puts a proposal in. A word keeps the capital it was begun with. */
export function accept(view: EditorView, open: Completion, at: number): boolean {
  const proposal = open.proposals[at];
  if (proposal === undefined) return false;
  const { from, to } = open;
  const transaction = closeHistory(view.state.tr);
  if (proposal.isFigure) {
    transaction.replaceWith(from, to, schema.nodes.figure.create({ expression: proposal.words }));
  } else {
    const typed = view.state.doc.textBetween(from, to);
    const isCapital = /^\p{Lu}/u.test(typed);
    const words = isCapital ? proposal.words[0]!.toUpperCase() + proposal.words.slice(1) : proposal.words;
    transaction.insertText(words, from, to);
  }
  view.dispatch(transaction.setMeta(key, 'close').scrollIntoView());
  view.focus();
  return true;
}
