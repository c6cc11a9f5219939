/** Moving rows and pieces up and down, with the caret in them. */
import { closeHistory } from 'prosemirror-history';
import { type Command, NodeSelection, TextSelection, type Transaction } from 'prosemirror-state';
import { type At, itemOf, pieceOf } from './where.ts';

/** What the keys move: the block of a piece, an item of a list, or the piece whose title has the caret. */
function movable(state: Parameters<Command>[0]): At | null {
  return itemOf(state) ?? pieceOf(state);
}

export function moveItem(by: 1 | -1): Command {
  return (state, dispatch) => {
    const at = movable(state);
    if (at === null) return false;
    const other = at.parent.maybeChild(at.index + by);
    if (other === null) return true; // at the end: the key is taken and nothing moves
    if (dispatch) dispatch(exchanged(closeHistory(state.tr), at, other.nodeSize, by));
    return true;
  };
}

/** Takes the neighbour out and puts it on the other side, so that the item and the caret in it stay as they are. */
function exchanged(transaction: Transaction, at: At, size: number, by: 1 | -1): Transaction {
  const { selection } = transaction;
  const pos = by === 1 ? at.pos + at.node.nodeSize : at.pos - size;
  const other = transaction.doc.nodeAt(pos);
  if (other === null) return transaction;
  transaction.delete(pos, pos + size).insert(by === 1 ? at.pos : pos + at.node.nodeSize, other);
  const shift = by === 1 ? size : -size;
  const [anchor, head] = [selection.anchor + shift, selection.head + shift];
  const moved =
    selection instanceof NodeSelection
      ? NodeSelection.create(transaction.doc, selection.from + shift)
      : TextSelection.create(transaction.doc, anchor, head);
  return transaction.setSelection(moved).scrollIntoView();
}
