/**
 * Keeps the editor's caret where the maker's is. The browser moves the caret by itself (Ctrl+End, an arrow, a
 * press) and tells of it in a task of its own, which may come after the next key: a letter would then be typed
 * where no text is (and be thrown away), or a drawing would put the caret back. So the editor hears of the caret
 * before it takes a key, and before anything is drawn that the maker did not ask for. It changes no text.
 */
import { Plugin } from 'prosemirror-state';
import type { EditorView } from 'prosemirror-view';

/** Lets the editor hear now where the browser has put the caret. May change its state: transactions come after. */
export function hearCaret(editor: EditorView): void {
  if (editor.isDestroyed || editor.composing) return;
  const at = document.getSelection()?.focusNode ?? null;
  // A form that closes gives the focus back before there is a caret again: the editor's own is put there.
  if (editor.hasFocus() && !editor.dom.contains(at)) editor.focus();
  else document.dispatchEvent(new Event('selectionchange'));
}

/**
 * For 200 ms after a focus that no press brought, the editor's library takes a caret at the document's very
 * beginning for the browser's doing, and puts its own back. Once the maker has pressed a key it is the maker's.
 */
function trustCaret(editor: EditorView): void {
  const { input } = editor as unknown as { readonly input?: { lastFocus: number } };
  if (input !== undefined) input.lastFocus = 0;
}

/** Goes before all plugins that answer keys. */
export function caretFirst(): Plugin {
  return new Plugin({
    props: {
      handleDOMEvents: {
        keydown: (view, event) => {
          // 229: the key belongs to an input method, which the editor lets begin by itself.
          if (!event.isComposing && event.keyCode !== 229) {
            hearCaret(view);
            trustCaret(view);
          }
          return false;
        },
      },
    },
  });
}
