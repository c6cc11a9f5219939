/**
 * Keeps typing out of what has a place of its own: the sizing, the materials and the like change by forms, by
 * undoing them, and by nothing else. It compares those parts by identity, so that it costs nothing on a key.
 */
import { isHistoryTransaction } from 'prosemirror-history';
import type { Node } from 'prosemirror-model';
import { Plugin, type Transaction } from 'prosemirror-state';
import { AttrStep } from 'prosemirror-transform';
import { FORM } from '../desk/edits.ts';
import { ELSEWHERE } from '../desk/places.ts';

const same = (before: Node, after: Node): boolean =>
  before.childCount === after.childCount &&
  before.children.every((part, at) => !ELSEWHERE.has(part.type.name) || part === after.child(at));

/** Forms, undoing, and giving new nodes their ids. */
const isAllowed = (transaction: Transaction): boolean =>
  transaction.getMeta(FORM) === true ||
  isHistoryTransaction(transaction) ||
  transaction.steps.every((step) => step instanceof AttrStep);

export function guard(): Plugin {
  return new Plugin({
    filterTransaction: (transaction, state) =>
      !transaction.docChanged || same(state.doc, transaction.doc) || isAllowed(transaction),
  });
}
