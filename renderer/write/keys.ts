/** The keys of the manuscript. What each does stands in the commands. */
import { chainCommands, selectNodeBackward, selectNodeForward } from 'prosemirror-commands';
import { keymap } from 'prosemirror-keymap';
import { type Command, Plugin } from 'prosemirror-state';
import type { EditorView } from 'prosemirror-view';
import { step } from '../shell/stepping.ts';
import type { Studio } from '../shell/studio.ts';
import { writeWords } from '../words/write.ts';
import { chosenFigure, nextFigure } from './commands/figures.ts';
import { formAt, takesFigure } from './commands/insert.ts';
import { deleteSelected, joinAfter, joinBefore, splitText } from './commands/lines.ts';
import { moveItem } from './commands/move.ts';
import { selectMore } from './commands/select.ts';
import { openFindingOf, showFinding } from './findings/marks.ts';
import { withTypedFigure } from './typed-figures.ts';
import { popupsOf } from './writing.ts';

/** Opens the form of the figure that is chosen. */
const editFigure: Command = (state, _, view) => {
  const chosen = chosenFigure(state);
  if (chosen === null || view === undefined) return false;
  popupsOf(view)?.open({
    kind: 'figure',
    from: chosen.from,
    to: chosen.from + 1,
    expression: chosen.expression,
  });
  return true;
};

/** Opens the form for a new figure at the caret, or for the chosen one. */
export const openFigure: Command = (state, dispatch, view) => {
  if (editFigure(state, dispatch, view)) return true;
  if (view === undefined || !takesFigure(state)) return false;
  const { from, to } = state.selection;
  popupsOf(view)?.open({ kind: 'figure', from, to, expression: '' });
  return true;
};

/** Opens the form of the block, piece or special stitch that the caret is in. */
export const openForm: Command = (state, _, view) => {
  const form = formAt(state);
  if (form === null || view === undefined) return false;
  popupsOf(view)?.open(form.kind === 'cover' ? { kind: 'cover' } : { kind: form.kind, id: form.id });
  return true;
};

/** Enter on a block without text opens its form. */
const openChosen: Command = (state, dispatch, view) =>
  'node' in state.selection ? openForm(state, dispatch, view) : false;

export function manuscriptKeys(studio: Studio): readonly Plugin[] {
  const refused = () => studio.tell(writeWords.acrossParts);
  const remove = deleteSelected(refused);
  /** Set by Escape: the next Tab goes on to what stands after the manuscript. */
  let leaves = false;
  const toFigure = (by: 1 | -1): Command => {
    const go = nextFigure(by);
    return (state, dispatch, view) => !leaves && go(state, dispatch, view);
  };
  /** Takes the key also where there is nothing to do: the same key without Shift would be tried next. */
  const stepping =
    (way: 'undo' | 'redo'): Command =>
    () => {
      step(studio, way);
      return true;
    };
  const leave: Command = (state, dispatch) => {
    if (openFindingOf(state) !== null) {
      dispatch?.(showFinding(state.tr, null));
      return true;
    }
    leaves = true;
    studio.tell(writeWords.canLeave);
    return true;
  };
  const keys = keymap({
    Enter: chainCommands(editFigure, openChosen, withTypedFigure(splitText)),
    'Shift-Enter': splitText,
    'Mod-Enter': openFigure,
    'Mod-Shift-Enter': openForm,
    Backspace: chainCommands(remove, joinBefore, selectNodeBackward),
    'Mod-Backspace': chainCommands(remove, joinBefore),
    'Shift-Backspace': chainCommands(remove, joinBefore),
    Delete: chainCommands(remove, joinAfter, selectNodeForward),
    'Mod-Delete': chainCommands(remove, joinAfter),
    'Mod-a': selectMore,
    'Alt-ArrowUp': moveItem(-1),
    'Alt-ArrowDown': moveItem(1),
    Tab: toFigure(1),
    'Shift-Tab': toFigure(-1),
    Escape: leave,
    // The editor keeps these keys from the window, so they are its own.
    'Mod-z': stepping('undo'),
    'Mod-Shift-z': stepping('redo'),
    'Mod-y': stepping('redo'),
  });
  const leaving = new Plugin({
    props: {
      handleDOMEvents: {
        keydown: (_, event) => {
          if (!['Tab', 'Escape', 'Shift'].includes(event.key)) leaves = false;
          return false;
        },
        focus: () => {
          leaves = false;
          return false;
        },
      },
      handleTextInput: (view) => overParts(view, refused),
      handlePaste: (view) => overParts(view, refused),
    },
  });
  return [leaving, keys];
}

/** Typing over a selection that reaches over several texts: it goes only where deleting may. */
function overParts(view: EditorView, refused: () => void): boolean {
  const { selection } = view.state;
  const { $from, $to } = selection;
  if (selection.empty || ($from.sameParent($to) && $from.parent.isTextblock)) return false;
  let isRefused = false;
  deleteSelected(() => {
    isRefused = true;
    refused();
  })(view.state, view.dispatch, view);
  return isRefused;
}
