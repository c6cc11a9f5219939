/**
 * Letting a finding stand with a reason, taking that back, and confirming what was brought in: edits of the
 * workbook, each one step of undoing.
 */
import type { EditorState, Transaction } from 'prosemirror-state';
import type { Pattern } from '../../core/document/pattern.ts';
import type { Acceptance } from '../../core/document/workbook.ts';
import type { Finding } from '../../core/finding.ts';
import { acceptanceOf, keyOfAcceptance } from '../../core/review/accepted.ts';
import { begin, made } from '../desk/edits.ts';
import { listAt } from '../desk/places.ts';

/** Lets a finding stand; what was accepted of it before is taken out. `date` is an ISO date. */
export function accept(
  state: EditorState,
  pattern: Pattern,
  finding: Finding,
  reason: string,
  date: string,
): Transaction {
  const acceptance = acceptanceOf(pattern, finding, reason, date);
  const key = keyOfAcceptance(acceptance);
  const transaction = without(
    state,
    'accepted',
    (own) => keyOfAcceptance(own as unknown as Acceptance) === key,
  );
  const { node, pos } = listAt(transaction.doc, 'accepted');
  return transaction.insert(pos + 1 + node.content.size, made('acceptance', acceptance));
}

/** Takes out the nodes of a list of the workbook that `out` holds of, in one step. */
function without(
  state: EditorState,
  list: 'accepted' | 'doubts',
  out: (attributes: Record<string, unknown>) => boolean,
): Transaction {
  const { node, pos } = listAt(state.doc, list);
  const transaction = begin(state);
  let end = pos + 1 + node.content.size;
  for (let i = node.childCount - 1; i >= 0; i--) {
    const child = node.child(i);
    const start = end - child.nodeSize;
    if (out(child.attrs)) transaction.delete(start, end);
    end = start;
  }
  return transaction;
}

/** Takes an acceptance back: what it was given for is told again. */
export function takeBack(state: EditorState, acceptance: Acceptance): Transaction {
  const key = keyOfAcceptance(acceptance);
  return without(state, 'accepted', (own) => keyOfAcceptance(own as unknown as Acceptance) === key);
}

/** Takes away the acceptances that belong to no finding any more. `standing` are those that do. */
export function clearStale(state: EditorState, standing: readonly Acceptance[]): Transaction {
  const kept = new Set(standing.map(keyOfAcceptance));
  return without(state, 'accepted', (own) => !kept.has(keyOfAcceptance(own as unknown as Acceptance)));
}

/** Confirms what was brought in at a node. */
export function confirmBroughtIn(state: EditorState, node: string): Transaction {
  return without(state, 'doubts', (own) => own.node === node);
}
