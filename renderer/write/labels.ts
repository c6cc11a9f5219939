/**
 * Labels that are typed where they are worked out: "Row 3:" at the start of a row goes as soon as its colon is
 * typed, and what it says of the row (a round, "Dec") stays with the row. Undoing brings the words back. It takes no
 * word that is said nowhere else.
 */
import { closeHistory } from 'prosemirror-history';
import { Plugin } from 'prosemirror-state';
import type { EditorView } from 'prosemirror-view';
import { FIGURE } from '../../core/document/pattern.ts';
import { readRow } from '../../core/notation/index.ts';

/** No label is longer. */
const LONGEST = 40;

const ROUND = /\b(?:rnd|round)s?\b/i;

export interface TypedLabel {
  readonly form: 'row' | 'round' | 'foundation';
  /** "Dec" of "Dec Row 5"; null for none. */
  readonly title: string | null;
}

/** What of a label is worked out, or stays with the row: its kind, its number and its side. */
const KNOWN =
  /\br(?=\d)|\d+(?:st|nd|rd|th)?|\b(?:next|foundation|fdn|base|chain|ch|row|rnd|round|rs|ws|right|wrong|side|facing)\b|[\p{P}\p{S}\s]/giu;

/**
 * What the words before a colon say when they are the label of one row and nothing else; null when they are not.
 * A label that says more ("Edging", "Rows 4–9") is none, because taking it would lose what it says.
 */
export function labelTyped(before: string): TypedLabel | null {
  const words = before.trim();
  if (words === '' || words.length > LONGEST || words.includes(FIGURE)) return null;
  const { label } = readRow(`${words}: ch 1, turn.`, { terms: 'us' });
  if (label === null || label.from > 0 || label.to < words.length) return null;
  if (label.rows !== undefined || (label.numbers !== null && label.numbers.kind !== 'one')) return null;
  const isRound = ROUND.test(words);
  const title = label.title ?? '';
  const at = title === '' ? -1 : words.toLowerCase().indexOf(title.toLowerCase());
  const rest = at < 0 ? words : words.slice(0, at) + words.slice(at + title.length);
  if (rest.replace(KNOWN, '') !== '') return null;
  return {
    form: isRound ? 'round' : label.kind === 'foundation' ? 'foundation' : 'row',
    title: title === '' ? null : title[0]!.toUpperCase() + title.slice(1),
  };
}

export interface TypedRange {
  readonly form: 'row' | 'round';
  /** How many rows it is for, two at least. */
  readonly rows: number;
  /** Where the words of the row begin behind it. */
  readonly length: number;
}

/**
 * The label of several rows at the start of a row's whole text: "Rows 4–9: ch 1, turn." Null for none, and where the
 * words repeat other rows, which are not to be worked once for each of these.
 */
export function rangeTyped(text: string): TypedRange | null {
  const words = /^[^:]*:\s*/u.exec(text)?.[0] ?? '';
  if (words === '' || words.length > LONGEST || words.includes(FIGURE) || words === text) return null;
  const { label, items } = readRow(text, { terms: 'us' });
  if (label === null || label.from > 0 || label.title !== undefined || label.numbers?.kind !== 'range')
    return null;
  const { first, last } = label.numbers;
  if (first.kind !== 'one' || last.kind !== 'one' || items.some(({ type }) => type === 'rows-again'))
    return null;
  const rows = last.value - first.value + 1;
  return rows < 2 ? null : { form: ROUND.test(words) ? 'round' : 'row', rows, length: words.length };
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
