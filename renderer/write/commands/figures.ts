/** Going through the figures of a row, and on to the next row. */
import {
  type Command,
  type EditorState,
  NodeSelection,
  type Selection,
  TextSelection,
} from 'prosemirror-state';
import { nextText } from './where.ts';

/** Positions of the figures in the text that the selection begins in. */
function figuresHere({ selection: { $from } }: EditorState): readonly number[] {
  const found: number[] = [];
  if ($from.parent.isTextblock)
    $from.parent.forEach((node, offset) => {
      if (node.type.name === 'figure') found.push($from.start() + offset);
    });
  return found;
}

/** The next figure of the text, else the next text: its end when it was left backwards. */
export function nextFigure(by: 1 | -1): Command {
  return (state, dispatch) => {
    const { selection, doc } = state;
    const { $from } = selection;
    const chosen = selection instanceof NodeSelection;
    const here = figuresHere(state);
    const figure =
      by === 1
        ? here.find((pos) => (chosen ? pos > selection.from : pos >= selection.to))
        : here.findLast((pos) => pos < selection.from);
    let next: Selection | null = null;
    if (figure !== undefined) next = NodeSelection.create(doc, figure);
    else {
      const edge = $from.parent.isTextblock
        ? by === 1
          ? $from.after()
          : $from.before()
        : by === 1
          ? selection.to
          : selection.from;
      const text = nextText(doc, edge, by);
      if (text !== null)
        next = TextSelection.create(doc, by === 1 ? text.pos + 1 : text.pos + text.node.nodeSize - 1);
    }
    if (next === null) return false;
    dispatch?.(state.tr.setSelection(next).scrollIntoView());
    return true;
  };
}

/** The figure that is chosen. */
export function chosenFigure({ selection }: EditorState): { from: number; expression: string } | null {
  if (!(selection instanceof NodeSelection) || selection.node.type.name !== 'figure') return null;
  return { from: selection.from, expression: selection.node.attrs.expression };
}
