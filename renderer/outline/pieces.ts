/** What the outline does with pieces: another place for one, as one edit that can be undone. */
import type { EditorState, Transaction } from 'prosemirror-state';
import { moveItem } from '../desk/edits.ts';
import { listAt } from '../desk/places.ts';

/** Puts a piece in another place; null when it is there already or there is no such place. */
export function movePiece(state: EditorState, from: number, to: number): Transaction | null {
  const count = listAt(state.doc, 'pieces').node.childCount;
  if (from === to || from < 0 || from >= count || to < 0 || to >= count) return null;
  return moveItem(state, 'pieces', from, to);
}
