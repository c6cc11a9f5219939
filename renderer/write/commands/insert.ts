/** New parts of the manuscript, put where the caret is, with the caret in them. Each is one step of undoing. */
import { closeHistory } from 'prosemirror-history';
import type { Node } from 'prosemirror-model';
import { type Command, NodeSelection, Selection, TextSelection, type Transaction } from 'prosemirror-state';
import type { EditorView } from 'prosemirror-view';
import { FIGURE } from '../../../core/document/pattern.ts';
import { schema } from '../../../core/document/schema.ts';
import { readRow } from '../../../core/notation/index.ts';
import { freshId } from '../../desk/identity.ts';
import { listAt } from '../../desk/places.ts';
import { type At, itemOf, pieceOf, within } from './where.ts';

const { nodes } = schema;

export type BlockKind = 'row' | 'round' | 'foundation' | 'repeat' | 'shaping' | 'prose' | 'heading';

/** Whether a foundation is a ring, or a chain that is joined, and nobody turns on it. */
function isRing(foundation: Node): boolean {
  const { items } = readRow(foundation.textBetween(0, foundation.content.size, '', FIGURE), { terms: 'us' });
  const closes = items.some((item) => item.type === 'ring' || (item.type === 'join' && !item.not));
  return closes && !items.some(({ type }) => type === 'turn');
}

/** What a new row of a list of blocks is worked as: rounds go on as rounds, and begin on a ring. */
export function nextForm(blocks: Node, index: number): 'row' | 'round' {
  for (let at = Math.min(index, blocks.childCount - 1); at >= 0; at--) {
    const block = blocks.child(at);
    const form = block.type.name === 'shaping' ? block.firstChild?.attrs.form : block.attrs.form;
    if (form === 'row' || form === 'round') return form;
    if (form === 'foundation' && isRing(block)) return 'round';
  }
  return 'row';
}

const row = (form: string): Node => nodes.row.create({ id: freshId(), form });

/**
 * Ids of the row or rows that a new repeat most likely repeats: the last two rows before it. The first row of a piece
 * is worked into its foundation, and only that once; it is repeated where there is no other.
 */
function lastRows(blocks: Node, index: number): readonly [string, string] {
  const rows: string[] = [];
  for (let at = index - 1; at >= 0 && rows.length < 2; at--) {
    const block = blocks.child(at);
    if (block.type.name !== 'row' || block.attrs.form === 'foundation') break;
    const isFirst = at > 0 && blocks.child(at - 1).attrs.form === 'foundation';
    if (!isFirst || rows.length === 0) rows.unshift(block.attrs.id);
  }
  return [rows[0] ?? '', rows.at(-1) ?? ''];
}

function made(kind: BlockKind, blocks: Node, index: number): Node {
  switch (kind) {
    case 'repeat': {
      const [first, last] = lastRows(blocks, index);
      return nodes.repeat.create({ id: freshId(), first, last });
    }
    case 'shaping': {
      const form = nextForm(blocks, index - 1);
      return nodes.shaping.create({ id: freshId() }, [row(form), row(form)]);
    }
    case 'prose':
      return nodes.prose.create({ id: freshId() });
    case 'heading':
      return nodes.heading.create({ id: freshId() });
    default:
      return row(kind);
  }
}

/** Puts the caret into a node that was just put in at a position, or selects it where it has no text. */
export function enter(transaction: Transaction, pos: number): Transaction {
  const node = transaction.doc.nodeAt(pos);
  if (node === null) return transaction;
  const selection = node.isAtom
    ? NodeSelection.create(transaction.doc, pos)
    : Selection.findFrom(transaction.doc.resolve(pos + 1), 1, true);
  return (selection === null ? transaction : transaction.setSelection(selection)).scrollIntoView();
}

/** The blocks that a new block goes into, and the index: after the caret's block, else at the end of its piece. */
function placeForBlock(at: At | null, piece: At | null): { blocks: Node; pos: number; index: number } | null {
  if (at !== null && at.parent.type.name === 'blocks') {
    return { blocks: at.parent, pos: at.pos + at.node.nodeSize, index: at.index + 1 };
  }
  if (piece === null) return null;
  const blocks = piece.node.child(1);
  return { blocks, pos: piece.pos + 1 + piece.node.child(0).nodeSize + 1, index: 0 };
}

/** An empty row where the caret is gives way to what is put in. */
const isEmptyRow = (at: At | null): at is At => at?.node.type.name === 'row' && at.node.childCount === 0;

/** Puts a block after the caret's. */
export function insertBlock(kind: BlockKind): Command {
  return (state, dispatch) => {
    const item = itemOf(state);
    const last = listAt(state.doc, 'pieces');
    const lastPiece = last.node.lastChild;
    const piece =
      pieceOf(state) ??
      (lastPiece === null
        ? null
        : {
            node: lastPiece,
            pos: last.pos + last.node.nodeSize - 1 - lastPiece.nodeSize,
            index: last.node.childCount - 1,
            parent: last.node,
          });
    const inBlocks = item !== null && item.parent.type.name === 'blocks' ? item : null;
    const place = placeForBlock(inBlocks, piece);
    if (place === null) return false;
    if (dispatch) {
      const transaction = closeHistory(state.tr);
      if (isEmptyRow(inBlocks) && kind !== 'row') {
        const node = made(kind, place.blocks, inBlocks.index);
        transaction.replaceWith(inBlocks.pos, inBlocks.pos + inBlocks.node.nodeSize, node);
        dispatch(enter(transaction, inBlocks.pos));
      } else {
        const form = kind === 'row' ? nextForm(place.blocks, place.index - 1) : kind;
        transaction.insert(place.pos, made(form, place.blocks, place.index));
        dispatch(enter(transaction, place.pos));
      }
    }
    return true;
  };
}

/** A new piece with an empty first row: after the caret's piece, else at the end. */
export const insertPiece: Command = (state, dispatch) => {
  if (dispatch) {
    const here = pieceOf(state);
    const list = listAt(state.doc, 'pieces');
    const pos = here === null ? list.pos + list.node.nodeSize - 1 : here.pos + here.node.nodeSize;
    dispatch(enter(closeHistory(state.tr).insert(pos, newPiece()), pos));
  }
  return true;
};

const newPiece = (): Node =>
  nodes.piece.create({ id: freshId() }, [
    nodes.title.create(),
    nodes.blocks.create(null, [row('foundation')]),
  ]);

/** A figure in place of a range, with the caret behind it. */
export function putFigure(from: number, to: number, expression: string): Command {
  return (state, dispatch) => {
    const $from = state.doc.resolve(from);
    const allowed = $from.parent.type.contentMatch.matchType(nodes.figure) !== null;
    if (!allowed || $from.parent !== state.doc.resolve(to).parent) return false;
    if (dispatch) {
      const figure = nodes.figure.create({ expression });
      const transaction = closeHistory(state.tr).replaceWith(from, to, figure);
      dispatch(transaction.setSelection(TextSelection.create(transaction.doc, from + 1)).scrollIntoView());
    }
    return true;
  };
}

/** Whether a figure can stand at the caret. */
export const takesFigure: Command = (state) => {
  const { $from, $to } = state.selection;
  return $from.sameParent($to) && $from.parent.type.contentMatch.matchType(nodes.figure) !== null;
};

/** A new item at the end of the list that stands at a position. For the buttons below the lists. */
export function addTo(editor: EditorView, pos: number, kind: 'row' | 'repeat' = 'row'): void {
  const list = editor.state.doc.nodeAt(pos);
  if (list === null || !editor.editable) return;
  const at = pos + list.nodeSize - 1;
  const items: Readonly<Record<string, () => Node>> = {
    specials: () => nodes.special.create({ id: freshId() }),
    notes: () => nodes.paragraph.create(),
    finishing: () => nodes.paragraph.create(),
    cautions: () => nodes.caution.create(),
    pieces: newPiece,
    blocks: () => {
      const last = list.childCount - 1;
      if (kind === 'repeat') return made('repeat', list, last + 1);
      return row(last < 0 ? 'foundation' : nextForm(list, last));
    },
  };
  const item = items[list.type.name]?.();
  if (item === undefined) return;
  editor.dispatch(enter(closeHistory(editor.state.tr).insert(at, item), at));
  editor.focus();
}

/** The special stitch, or the block or piece, that a form can be opened for at the caret. */
export function formAt(
  state: Parameters<Command>[0],
): { readonly kind: 'block' | 'piece' | 'special' | 'cover'; readonly id: string } | null {
  const item = itemOf(state);
  if (item?.node.type.name === 'special') return { kind: 'special', id: item.node.attrs.id };
  if (item !== null && item.parent.type.name === 'blocks') return { kind: 'block', id: item.node.attrs.id };
  const piece = pieceOf(state);
  if (piece !== null) return { kind: 'piece', id: piece.node.attrs.id };
  return within(state.selection.$from, 'cover') === null ? null : { kind: 'cover', id: '' };
}
