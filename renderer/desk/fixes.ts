/**
 * Puts a finding's fix in place of its words, from outside the manuscript. The words must be what the finding was
 * told of; when they are not, nothing is done.
 */
import type { EditorState, Transaction } from 'prosemirror-state';
import type { LineRule } from '../../core/document/attributes.ts';
import type { Finding } from '../../core/finding.ts';
import { begin, setAttributes, written } from './edits.ts';
import { placeOf } from './places.ts';

/** The text field of a line's rule that its findings point into. */
function fieldOf(rule: LineRule): 'formula' | 'length' | null {
  if (rule.kind === 'formula') return 'formula';
  return rule.kind === 'stitches' || rule.kind === 'rows' ? 'length' : null;
}

/** Attributes of forms that findings point into. */
const WORDS_OF: Readonly<Record<string, string>> = {
  gauge: 'pattern',
  hook: 'purpose',
  notion: 'name',
  yarn: 'name',
};

/** The transaction that fixes; null when there is no fix, or its node is gone. `current` = the finding is of this very state. */
export function fixOf(state: EditorState, finding: Finding, current: boolean): Transaction | null {
  const { fix, where } = finding;
  if (fix === null || where.node === null || !current) return null;
  const place = placeOf(state.doc, where.node);
  if (place === null) return null;
  if (place.node.type.name === 'line') {
    const rule: LineRule = place.node.attrs.rule;
    const field = fieldOf(rule);
    if (field === null) return null;
    const text = (rule as unknown as Record<string, string>)[field]!;
    const fixed = text.slice(0, where.from) + fix.replacement + text.slice(where.to);
    return setAttributes<'line'>(state, where.node, { rule: { ...rule, [field]: fixed } as LineRule });
  }
  const attribute = WORDS_OF[place.node.type.name];
  if (attribute !== undefined) {
    const text: string = place.node.attrs[attribute];
    const fixed = text.slice(0, where.from) + fix.replacement + text.slice(where.to);
    return begin(state).setNodeAttribute(place.pos, attribute, fixed);
  }
  if (!place.node.isTextblock || where.to > place.node.content.size) return null;
  const from = place.pos + 1;
  const figures: string[] = [];
  state.doc.nodesBetween(from + where.from, from + where.to, (node) => {
    if (node.type.name === 'figure') figures.push(node.attrs.expression);
  });
  const content = written({ text: fix.replacement, figures });
  return state.tr.replaceWith(from + where.from, from + where.to, [...content]);
}
