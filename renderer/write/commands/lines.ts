/**
 * Enter, Backspace and Delete where they go past one text: the next row, joining two rows, taking an empty one
 * away. Whatever is not said here changes no structure: the key is taken and nothing happens.
 */
import { closeHistory } from 'prosemirror-history';
import { Fragment, type Node } from 'prosemirror-model';
import {
  type Command,
  type EditorState,
  NodeSelection,
  Selection,
  TextSelection,
  type Transaction,
} from 'prosemirror-state';
import { FIGURE } from '../../../core/document/pattern.ts';
import { schema } from '../../../core/document/schema.ts';
import { freshId } from '../../desk/identity.ts';
import { rangeTyped, type TypedRange } from '../labels.ts';
import { enter, nextForm } from './insert.ts';
import { type At, itemAt, nextText, textAt, within } from './where.ts';

const { nodes } = schema;
/** Texts that split in two; in all others Enter goes to the next text. */
const SPLITS = new Set(['row', 'prose', 'paragraph', 'special', 'caution']);

/** Enter: the rest of the text goes on in a new one of the same kind. */
export const splitText: Command = (state, dispatch) => {
  const at = textAt(state);
  if (at === null) return false;
  const { $from } = state.selection;
  const shaping = within($from, 'shaping');
  const isRow = at.node.type.name === 'row';
  if ((isRow && shaping !== null) || !SPLITS.has(at.node.type.name)) return goOn(at)(state, dispatch);
  if (at.node.childCount === 0 && !isRow) {
    if (at.node.type.name !== 'prose') return true;
    // An empty paragraph between rows becomes the row that was meant.
    if (dispatch) dispatch(turnInto(state.tr, at, row(at)));
    return true;
  }
  const range = isRow ? rangeBefore(state, at) : null;
  if (range !== null) {
    if (dispatch) dispatch(asMany(closeHistory(state.tr), at, range));
    return true;
  }
  if (dispatch) {
    const { from, to } = state.selection;
    const end = at.pos + 1 + at.node.content.size;
    const rest = at.node.slice(to - at.pos - 1).content;
    const next = successor(at, rest, to < end);
    const transaction = closeHistory(state.tr).delete(from, end);
    transaction.insert(from + 1, next);
    dispatch(enter(transaction, from + 1));
  }
  return true;
};

/** The label of several rows that a row begins with, when the caret is at the row's end. */
function rangeBefore({ selection, doc }: EditorState, { node, pos }: At): TypedRange | null {
  if (!selection.empty || selection.from < pos + 1 + node.content.size) return null;
  return rangeTyped(doc.textBetween(pos + 1, selection.from, '', FIGURE));
}

/** "Rows 4–9: …" becomes its first row and a repeat of it for the others. The next row begins behind them. */
function asMany(transaction: Transaction, at: At, { form, rows, length }: TypedRange): Transaction {
  const { id, sizes } = at.node.attrs;
  const until = { kind: 'rows', rows: String(rows - 1) };
  transaction.delete(at.pos + 1, at.pos + 1 + length).setNodeAttribute(at.pos, 'form', form);
  const end = transaction.mapping.map(at.pos + at.node.nodeSize);
  const repeat = nodes.repeat.create({ id: freshId(), first: id, last: id, until, sizes });
  transaction.insert(end, [repeat, nodes.row.create({ id: freshId(), form })]);
  return enter(transaction, end + repeat.nodeSize);
}

const row = (at: At): Node => nodes.row.create({ id: freshId(), form: nextForm(at.parent, at.index) });

/** The text after one that was split. Behind a row's end a plain new row begins; a cut row keeps its sizes. */
function successor({ node, parent, index }: At, rest: Fragment, isCut: boolean): Node {
  if (node.type.name === 'row') {
    const form = nextForm(parent, index);
    return nodes.row.create({ id: freshId(), form, sizes: isCut ? node.attrs.sizes : null }, rest);
  }
  if (node.type.name === 'special') return nodes.special.create({ id: freshId() }, rest);
  const attributes = 'id' in node.attrs ? { ...node.attrs, id: freshId() } : node.attrs;
  return node.type.create(attributes, rest);
}

/** To the start of the next text. From the last row of a piece, and from a heading, a new row begins. */
function goOn(at: At): Command {
  return (state, dispatch) => {
    const { $from } = state.selection;
    const shaping = within($from, 'shaping');
    const block = shaping !== null && at.index === 1 ? shaping : at.node.type.name === 'heading' ? at : null;
    if (block !== null) {
      if (dispatch) {
        const pos = block.pos + block.node.nodeSize;
        const next = nodes.row.create({ id: freshId(), form: nextForm(block.parent, block.index) });
        dispatch(enter(closeHistory(state.tr).insert(pos, next), pos));
      }
      return true;
    }
    const piece = at.node.type.name === 'title' ? within($from, 'piece') : null;
    if (piece !== null && piece.node.child(1).childCount === 0) {
      const pos = piece.pos + 1 + piece.node.child(0).nodeSize + 1;
      const first = nodes.row.create({ id: freshId(), form: 'foundation' });
      if (dispatch) dispatch(enter(closeHistory(state.tr).insert(pos, first), pos));
      return true;
    }
    const next = nextText(state.doc, at.pos + at.node.nodeSize, 1);
    if (next !== null && dispatch)
      dispatch(state.tr.setSelection(TextSelection.create(state.doc, next.pos + 1)).scrollIntoView());
    return true;
  };
}

function turnInto(transaction: Transaction, at: At, node: Node): Transaction {
  closeHistory(transaction).replaceWith(at.pos, at.pos + at.node.nodeSize, node);
  return transaction.setSelection(TextSelection.create(transaction.doc, at.pos + 1)).scrollIntoView();
}

/** Whether the second text can go on at the end of the first. */
const joins = (first: Node, second: Node): boolean =>
  first.isTextblock && first.type.validContent(first.content.append(second.content));

/** Backspace at the start of a text. */
export const joinBefore: Command = (state, dispatch) => {
  const at = textAt(state);
  if (at === null || !state.selection.empty || state.selection.$from.parentOffset > 0) return false;
  const item = itemAt(state.selection.$from);
  if (item === null || item.node !== at.node) return true; // a field, a title, a row of a shaping: it stays
  const before = item.index === 0 ? null : item.parent.child(item.index - 1);
  if (dispatch) {
    const transaction = closeHistory(state.tr);
    if (at.node.childCount === 0 && (before !== null || item.parent.type.name !== 'blocks')) {
      transaction.delete(at.pos, at.pos + at.node.nodeSize);
      dispatch(endBefore(transaction, at.pos, before));
    } else if (before?.isTextblock && joins(before, at.node)) {
      const keepsFirst = before.childCount > 0;
      dispatch(joined(transaction, at.pos - before.nodeSize, before, at.node, keepsFirst));
    } else if (before?.isAtom) {
      dispatch(transaction.setSelection(NodeSelection.create(state.doc, at.pos - before.nodeSize)));
    }
  }
  return true;
};

/** Delete at the end of a text. */
export const joinAfter: Command = (state, dispatch) => {
  const at = textAt(state);
  const { $from, empty } = state.selection;
  if (at === null || !empty || $from.parentOffset < $from.parent.content.size) return false;
  const item = itemAt($from);
  if (item === null || item.node !== at.node) return true;
  const after = item.parent.maybeChild(item.index + 1);
  if (after === null) return true;
  if (dispatch) {
    const transaction = closeHistory(state.tr);
    if (after.isTextblock && joins(at.node, after)) {
      dispatch(joined(transaction, at.pos, at.node, after, at.node.childCount > 0));
    } else if (after.isAtom) {
      dispatch(transaction.setSelection(NodeSelection.create(state.doc, at.pos + at.node.nodeSize)));
    }
  }
  return true;
};

/** Two neighbouring texts as one: the first's kind and details, unless it was empty. */
function joined(
  transaction: Transaction,
  pos: number,
  first: Node,
  second: Node,
  keepsFirst: boolean,
): Transaction {
  const kept = keepsFirst ? first : second;
  const both = kept.type.create(kept.attrs, first.content.append(second.content));
  transaction.replaceWith(pos, pos + first.nodeSize + second.nodeSize, both);
  const caret = pos + 1 + first.content.size;
  return transaction.setSelection(TextSelection.create(transaction.doc, caret)).scrollIntoView();
}

/** The caret at the end of what stood before a text that was taken away. */
function endBefore(transaction: Transaction, pos: number, before: Node | null): Transaction {
  if (before?.isAtom)
    return transaction.setSelection(NodeSelection.create(transaction.doc, pos - before.nodeSize));
  const selection = Selection.findFrom(transaction.doc.resolve(pos), -1, true);
  return selection === null ? transaction : transaction.setSelection(selection).scrollIntoView();
}

/**
 * Deleting what is selected. Within one text it is the editor's own; over several items of one list, the words
 * go and the items between with them; over more than one part of the pattern it is refused.
 */
export function deleteSelected(refused: () => void): Command {
  return (state, dispatch) => {
    const { selection } = state;
    if (selection.empty) return false;
    const { $from, $to } = selection;
    if (selection instanceof NodeSelection) return deleteNode(state, dispatch);
    if ($from.sameParent($to) && $from.parent.isTextblock) return false;
    const [first, last] = [itemAt($from), itemAt($to)];
    if (first === null || last === null || first.parent !== last.parent) {
      refused();
      return true;
    }
    if (dispatch) dispatch(withoutItems(closeHistory(state.tr), first, last, $from.pos, $to.pos));
    return true;
  };
}

const deleteNode: Command = (state, dispatch) => {
  const { selection } = state;
  if (!(selection instanceof NodeSelection)) return false;
  if (selection.node.type.name === 'figure') return false;
  if (selection.$from.parent.type.name !== 'blocks') return true;
  if (dispatch) {
    const before = selection.$from.nodeBefore;
    const transaction = closeHistory(state.tr).deleteSelection();
    dispatch(endBefore(transaction, selection.from, before));
  }
  return true;
};

function withoutItems(transaction: Transaction, first: At, last: At, from: number, to: number): Transaction {
  // Of a shaping whose two rows are both in it the words go: the rows, and the line that plans them, stay.
  if (first.node === last.node && first.node.type.name === 'shaping') {
    const [$from, $to] = [transaction.doc.resolve(from), transaction.doc.resolve(to)];
    transaction.delete($to.start(), to).delete(from, $from.end());
    return transaction.setSelection(TextSelection.create(transaction.doc, from)).scrollIntoView();
  }
  const head = first.node.isTextblock ? first.node.content.cut(0, from - first.pos - 1) : Fragment.empty;
  const tail = last.node.isTextblock ? last.node.content.cut(to - last.pos - 1) : Fragment.empty;
  const kept = first.node.isTextblock ? first.node : last.node.isTextblock ? last.node : null;
  const end = last.pos + last.node.nodeSize;
  if (kept === null) {
    const form = nextForm(first.parent, first.index - 1);
    transaction.replaceWith(first.pos, end, nodes.row.create({ id: freshId(), form }));
  } else {
    const content = head.append(tail);
    const fits = kept.type.validContent(content) ? content : head;
    transaction.replaceWith(first.pos, end, kept.type.create(kept.attrs, fits));
  }
  return transaction
    .setSelection(TextSelection.create(transaction.doc, first.pos + 1 + head.size))
    .scrollIntoView();
}
