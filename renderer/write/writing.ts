/** What belongs to one editor on screen, found by the editor: forms over it. */
import type { EditorView } from 'prosemirror-view';
import type { Popups } from './popups.ts';

const popups = new WeakMap<EditorView, Popups>();

/** Remembers the forms of an editor. */
export function lendPopups(editor: EditorView, own: Popups): void {
  popups.set(editor, own);
}

export const popupsOf = (editor: EditorView): Popups | undefined => popups.get(editor);
