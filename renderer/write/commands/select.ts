/** Selecting more and more with one key: the text, the form it is in, the list, the piece, the manuscript. */
import {
  AllSelection,
  type Command,
  type EditorState,
  NodeSelection,
  TextSelection,
} from 'prosemirror-state';
import { within } from './where.ts';

interface Range {
  readonly from: number;
  readonly to: number;
}

/** Ranges around the selection, the smallest first. */
function around({ selection }: EditorState): readonly Range[] {
  const { $from, from, to } = selection;
  const ranges: Range[] = [];
  const inner = ($from.parent.isTextblock && selection instanceof NodeSelection) || $from.parent.isTextblock;
  if (inner) ranges.push({ from: $from.start(), to: $from.end() });
  for (const kind of ['shaping', 'blocks', 'specials', 'notes', 'finishing', 'cautions', 'cover', 'piece']) {
    const at = within($from, kind);
    if (at !== null) ranges.push({ from: at.pos + 1, to: at.pos + at.node.nodeSize - 1 });
  }
  return ranges.filter((range) => range.from <= from && range.to >= to);
}

/** The next larger part than the one that is selected. */
export const selectMore: Command = (state, dispatch) => {
  const { selection, doc } = state;
  for (const { from, to } of around(state)) {
    const chosen = TextSelection.between(doc.resolve(from), doc.resolve(to));
    const grows =
      chosen.from <= selection.from &&
      chosen.to >= selection.to &&
      (chosen.from < selection.from || chosen.to > selection.to);
    if (!grows) continue;
    dispatch?.(state.tr.setSelection(chosen));
    return true;
  }
  dispatch?.(state.tr.setSelection(new AllSelection(doc)));
  return true;
};
