/**
 * Figures that are typed out: "=back stitches + 1" becomes a figure when the words behind it go on, by a comma, a full
 * stop or the next row. Undoing brings the letters back. What names no line of the sheet stays as it is.
 */
import { closeHistory } from 'prosemirror-history';
import { type Command, type EditorState, Plugin } from 'prosemirror-state';
import { FIGURE } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import { schema } from '../../core/document/schema.ts';
import { readFormula, vocabularyOf } from '../../core/grading/index.ts';

/** Letters that are looked at. */
const REACH = 80;
/** What ends a figure that is typed out. */
const ENDS = /^[.,;:)]$/u;

/** The expression typed out at the end of a text, and where its "=" stands; null where there is none. */
export function figureTyped(
  before: string,
  names: readonly string[],
): { readonly at: number; readonly expression: string } | null {
  const found = /(?:^|[\s(*[,;])=([\p{L}\d(][^=.,;:\uFFFC]*)$/u.exec(before);
  if (found === null) return null;
  const expression = found[1]!.trim();
  const { read, names: named } = readFormula(expression, vocabularyOf(names));
  return read && named.length > 0 ? { at: before.length - found[1]!.length - 1, expression } : null;
}

/** The figure typed out before the caret, as places in the document. */
function figureBefore(state: EditorState): { from: number; to: number; expression: string } | null {
  const { $from, empty } = state.selection;
  if (!empty || $from.parent.type.contentMatch.matchType(schema.nodes.figure) === null) return null;
  const start = Math.max(0, $from.parentOffset - REACH);
  const before = $from.parent.textBetween(start, $from.parentOffset, '', FIGURE);
  if (!before.includes('=')) return null;
  const names = project(state.doc).lines.map(({ name }) => name);
  const typed = figureTyped(before, names);
  if (typed === null) return null;
  return { from: $from.start() + start + typed.at, to: $from.pos, expression: typed.expression };
}

/** A command that first makes a figure of what is typed out before the caret. */
export function withTypedFigure(command: Command): Command {
  return (state, dispatch, view) => {
    const typed = figureBefore(state);
    if (typed === null) return command(state, dispatch, view);
    const figure = schema.nodes.figure.create({ expression: typed.expression });
    const transaction = closeHistory(state.tr).replaceWith(typed.from, typed.to, figure);
    if (dispatch === undefined) return true;
    dispatch(transaction);
    return view === undefined || command(view.state, dispatch, view);
  };
}

export function typedFigures(): Plugin {
  return new Plugin({
    props: {
      handleTextInput(view, from, to, text) {
        if (view.composing || from !== to || !ENDS.test(text)) return false;
        const typed = figureBefore(view.state);
        if (typed === null) return false;
        // "0" of "× 0.5", and a bracket of the expression, are not its end.
        if (/[.,]/.test(text) && /[×*/÷]\s*\d+$/u.test(typed.expression)) return false;
        if (text === ')' && typed.expression.includes('(')) return false;
        const figure = schema.nodes.figure.create({ expression: typed.expression });
        view.dispatch(view.state.tr.insertText(text));
        view.dispatch(closeHistory(view.state.tr).replaceWith(typed.from, typed.to, figure));
        // What is typed next is undone by itself.
        view.dispatch(closeHistory(view.state.tr));
        return true;
      },
    },
  });
}
