/**
 * Labels that are typed where they are worked out: "Row 3:" at the start of a row goes as soon as its colon is
 * typed, and what it says of the row (a round, "Dec") stays with the row. Undoing brings the words back.
 */
import { closeHistory } from 'prosemirror-history';
import { Plugin } from 'prosemirror-state';
import type { EditorView } from 'prosemirror-view';
import { FIGURE } from '../../core/document/pattern.ts';
import { readRow } from '../../core/notation/index.ts';

/** No label is longer. */
const LONGEST = 40;

export interface TypedLabel {
  readonly form: 'row' | 'round' | 'foundation';
  /** "Dec" of "Dec Row 5"; null for none. */
  readonly title: string | null;
}

/** What the words before a colon say when they are a label and nothing else; null when they are not. */
export function labelTyped(before: string): TypedLabel | null {
  const words = before.trim();
  if (words === '' || words.length > LONGEST || words.includes(FIGURE)) return null;
  const { label } = readRow(`${words}: ch 1, turn.`, { terms: 'us' });
  if (label === null || label.from > 0 || label.to < words.length) return null;
  const isRound = /\b(?:rnd|round)s?\b/i.test(words);
  const title = label.title ?? '';
  return {
    form: isRound ? 'round' : label.kind === 'foundation' ? 'foundation' : 'row',
    title: title === '' ? null : title[0]!.toUpperCase() + title.slice(1),
  };
}

export function typedLabels(): Plugin {
  return new Plugin({
    props: {
      handleTextInput(view, from, to, text) {
        const { $from } = view.state.selection;
        if (view.composing || from !== to || $from.parent.type.name !== 'row') return false;
        // Rows begin with a word: the space that follows a label's colon is not kept.
        if (text === ' ' && $from.parentOffset === 0) return true;
        if (text !== ':' || $from.node(-1).type.name === 'shaping') return false;
        const label = labelTyped($from.parent.textBetween(0, $from.parentOffset, '', FIGURE));
        if (label === null) return false;
        take(view, label);
        return true;
      },
    },
  });
}

/** The colon first, as a step of its own, so that undoing leaves the words as they were typed. */
function take(view: EditorView, { form, title }: TypedLabel): void {
  view.dispatch(view.state.tr.insertText(':'));
  const { $from } = view.state.selection;
  const transaction = closeHistory(view.state.tr).delete($from.start(), $from.pos);
  const row = $from.before();
  if ($from.parent.attrs.form !== form) transaction.setNodeAttribute(row, 'form', form);
  if (title !== null) transaction.setNodeAttribute(row, 'title', title);
  view.dispatch(transaction);
  // What is typed next is undone by itself.
  view.dispatch(closeHistory(view.state.tr));
}
