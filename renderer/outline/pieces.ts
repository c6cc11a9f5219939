/** What the outline does with pieces: a new one, another place for one. Each is one edit that can be undone. */
import type { EditorState, Transaction } from 'prosemirror-state';
import { insertItem, made, moveItem } from '../desk/edits.ts';
import { freshId } from '../desk/identity.ts';
import { listAt } from '../desk/places.ts';
import { outlineWords } from '../words/outline.ts';

/** Adds a piece with one empty row after the others. `id` is the new piece's. */
export function addPiece(state: EditorState): { readonly transaction: Transaction; readonly id: string } {
  const id = freshId();
  const title = state.schema.node('title', null, [state.schema.text(outlineWords.newPiece)]);
  const row = made('row', { id: freshId(), form: 'foundation' });
  const piece = made('piece', { id }, [title, state.schema.node('blocks', null, [row])]);
  return { transaction: insertItem(state, 'pieces', piece), id };
}

/** Puts a piece in another place; null when it is there already or there is no such place. */
export function movePiece(state: EditorState, from: number, to: number): Transaction | null {
  const count = listAt(state.doc, 'pieces').node.childCount;
  if (from === to || from < 0 || from >= count || to < 0 || to >= count) return null;
  return moveItem(state, 'pieces', from, to);
}
