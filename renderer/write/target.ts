/** Brings words into view that another part of the window asked for: the review, the outline. */
import type { Node } from 'prosemirror-model';
import { NodeSelection, TextSelection } from 'prosemirror-state';
import type { EditorView } from 'prosemirror-view';
import { useEffect } from 'react';
import { placeOf } from '../desk/places.ts';
import { useStudio, useStudioView } from '../shell/hooks.ts';
import type { Target } from '../shell/studio.ts';

/** Goes to the button that begins a part in which nothing stands yet: there is no place for the caret. */
function beginsAt(editor: EditorView, node: Node, pos: number): boolean {
  if (node.isTextblock || node.isAtom || node.childCount > 0) return false;
  const dom = editor.nodeDOM(pos);
  const button = dom instanceof Element ? dom.querySelector<HTMLButtonElement>(':scope > button') : null;
  if (button === null || button.disabled) return false;
  button.scrollIntoView({ block: 'center' });
  button.focus();
  return true;
}

/** Selects the words of a target, and scrolls to them; nothing when its node is gone. */
export function goToTarget(editor: EditorView, target: Target): void {
  const { doc, tr } = editor.state;
  const found = placeOf(doc, target.node);
  if (found === null) return;
  const isPiece = found.node.type.name === 'piece';
  const node = isPiece ? found.node.child(0) : found.node;
  const pos = isPiece ? found.pos + 1 : found.pos;
  if (beginsAt(editor, node, pos)) return;
  if (node.isTextblock) {
    const end = pos + 1 + node.content.size;
    const at = (offset: number) => doc.resolve(Math.min(pos + 1 + offset, end));
    tr.setSelection(TextSelection.between(at(target.from), at(target.to)));
  } else if (node.isAtom) {
    tr.setSelection(NodeSelection.create(doc, pos));
  } else {
    tr.setSelection(TextSelection.near(doc.resolve(pos + 1)));
  }
  editor.dispatch(tr);
  const dom = editor.nodeDOM(pos);
  if (dom instanceof Element) dom.scrollIntoView({ block: 'center' });
  editor.focus();
}

/** Follows the studio's targets while the editor is on screen; each is followed once, and then it is gone. */
export function useTarget(editor: EditorView | null): void {
  const studio = useStudio();
  const target = useStudioView((view) => view.target);
  useEffect(() => {
    if (editor === null || editor.isDestroyed || target === null) return;
    goToTarget(editor, target);
    studio.reached(target.serial);
  }, [studio, editor, target]);
}
