/** Going from finding to finding, and putting the words of a fix in place, where they stand today. */
import { closeHistory } from 'prosemirror-history';
import {
  type Command,
  type EditorState,
  NodeSelection,
  type Selection,
  TextSelection,
} from 'prosemirror-state';
import { FIGURE } from '../../../core/document/pattern.ts';
import { written } from '../../desk/edits.ts';
import { allMarked, findingsIn, type Marked, openFinding, showFinding, wordsAt } from './marks.ts';

function selectionAt(state: EditorState, { from, to }: Marked): Selection {
  const node = state.doc.nodeAt(from);
  if (node !== null && !node.isText && from + node.nodeSize === to && !node.isTextblock && node.isAtom)
    return NodeSelection.create(state.doc, from);
  return TextSelection.between(state.doc.resolve(from), state.doc.resolve(to));
}

/** Goes to the next finding of the manuscript, or back; from the last to the first. `told` hears of it. */
export function goToFinding(by: 1 | -1, told: (marked: Marked | null) => void): Command {
  return (state, dispatch) => {
    const all = allMarked(state);
    if (all.length === 0) {
      told(null);
      return true;
    }
    const { from, to } = state.selection;
    const current = openFinding(state);
    const at = current === null ? -1 : all.findIndex(({ finding }) => finding === current.finding);
    let next: Marked | undefined;
    if (at >= 0) next = all[(at + by + all.length) % all.length];
    // What is at the caret and not open was never looked at: words just typed open nothing.
    else if (by === 1) next = all.find((marked) => marked.to >= from) ?? all[0];
    else next = all.findLast((marked) => marked.from <= to) ?? all.at(-1);
    if (next === undefined) return false;
    if (dispatch) {
      const transaction = state.tr.setSelection(selectionAt(state, next));
      dispatch(showFinding(transaction, next.finding).scrollIntoView());
    }
    told(next);
    return true;
  };
}

export type FixOutcome = 'fixed' | 'no-fix' | 'changed';

/** The finding that a fix at the caret is for: the one that is open, else the first there with a fix. */
export function findingToFix(state: EditorState): Marked | null {
  const open = openFinding(state);
  if (open !== null) return open;
  const here = findingsIn(state, state.selection.from, state.selection.to);
  return here.find(({ finding }) => finding.fix !== null) ?? here[0] ?? null;
}

/** Puts a finding's fix in place of its words. Refused when the words are not what the finding was about. */
export function applyFix(marked: Marked, told: (outcome: FixOutcome) => void): Command {
  return (state, dispatch) => {
    const { fix } = marked.finding;
    if (fix === null) {
      told('no-fix');
      return false;
    }
    const there = wordsAt(state.doc, marked.from, marked.to);
    if (there !== marked.words) {
      told('changed');
      return false;
    }
    if (dispatch) {
      const figures: string[] = [];
      state.doc.nodesBetween(marked.from, marked.to, (node) => {
        if (node.type.name === 'figure') figures.push(node.attrs.expression);
      });
      const keeps = fix.replacement.split(FIGURE).length - 1 <= figures.length;
      const content = keeps
        ? written({ text: fix.replacement, figures })
        : [state.schema.text(fix.replacement)];
      const transaction = closeHistory(state.tr).replaceWith(marked.from, marked.to, [...content]);
      const end = Math.min(
        marked.from + content.reduce((sum, node) => sum + node.nodeSize, 0),
        transaction.doc.content.size,
      );
      dispatch(transaction.setSelection(TextSelection.create(transaction.doc, end)).scrollIntoView());
    }
    told('fixed');
    return true;
  };
}
