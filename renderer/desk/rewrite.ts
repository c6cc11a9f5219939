/**
 * Rewrites a pattern in the other market's terms, as one step: every row, prose, heading, and the words of forms
 * that are in terms. Names that the maker gave (the title, lines, special stitches in either market) stay. What
 * may or may not be a term stays too and is counted. This changes the document; reading in other terms does not.
 */
import type { Node } from 'prosemirror-model';
import type { EditorState, Transaction } from 'prosemirror-state';
import { FIGURE } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import { schema } from '../../core/document/schema.ts';
import { translate } from '../../core/notation/translate.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { begin } from './edits.ts';
import { ownNames } from './terms.ts';

export interface Rewriting {
  readonly transaction: Transaction;
  /** Terms that were changed. */
  readonly changed: number;
  /** Words that were left because they may be terms or not. */
  readonly doubts: number;
}

type TextKind = 'row' | 'prose';

/** Texts of the tree by the kind of their node; those that are names of the maker's own are not here. */
const TEXTS: Readonly<Record<string, TextKind>> = {
  row: 'row',
  special: 'row',
  description: 'prose',
  construction: 'prose',
  fit: 'prose',
  paragraph: 'prose',
  prose: 'prose',
  heading: 'prose',
  care: 'prose',
  caution: 'prose',
};

/** Attributes that hold words in terms. */
const ATTRIBUTES: Readonly<Record<string, readonly (readonly [name: string, kind: TextKind])[]>> = {
  cover: [['garment', 'prose']],
  line: [['printed', 'prose']],
  gauge: [['pattern', 'prose']],
  yarn: [
    ['name', 'prose'],
    ['fibre', 'prose'],
  ],
  hook: [['purpose', 'prose']],
  notion: [['name', 'prose']],
  abbreviation: [
    ['short', 'row'],
    ['meaning', 'prose'],
  ],
  row: [['title', 'prose']],
};

/** A node's text with a figure's character for each figure, so that places in it are places in the node. */
function textOf(node: Node): string {
  return node.children.map((child) => (child.isText ? (child.text ?? '') : FIGURE)).join('');
}

/** The pattern in `terms`; nothing when it is in them already. */
export function rewriteIn(state: EditorState, terms: Terms): Rewriting {
  const transaction = begin(state);
  const pattern = project(state.doc);
  if (pattern.terms === terms) return { transaction, changed: 0, doubts: 0 };
  const own = ownNames(pattern);
  let [changed, doubts] = [0, 0];
  const convert = (text: string, kind: TextKind) => {
    const done = translate(text, pattern.terms, terms, { kind, own });
    changed += done.spans.length;
    doubts += done.doubts.length;
    return done;
  };
  const texts: { readonly pos: number; readonly node: Node; readonly kind: TextKind }[] = [];
  state.doc.descendants((node, pos) => {
    const type = node.type.name;
    for (const [name, kind] of ATTRIBUTES[type] ?? []) {
      const words: string | null = node.attrs[name];
      const next = words === null ? null : convert(words, kind).text;
      if (next !== words) transaction.setNodeAttribute(pos, name, next);
    }
    const kind = TEXTS[type];
    if (kind !== undefined && node.isTextblock) texts.push({ pos, node, kind });
    const { media } = node.attrs;
    if (type === 'photo' && media !== null) {
      const alt = convert(media.alt, 'prose').text;
      const caption = media.caption === null ? null : convert(media.caption, 'prose').text;
      if (alt !== media.alt || caption !== media.caption)
        transaction.setNodeAttribute(pos, 'media', { ...media, alt, caption });
    }
    return true;
  });
  // From the last to the first, so that places further up stay where they are.
  for (const { pos, node, kind } of texts.reverse()) {
    const { spans } = convert(textOf(node), kind);
    for (const { from, to, replacement } of [...spans].reverse())
      transaction.replaceWith(pos + 1 + from, pos + 1 + to, schema.text(replacement));
  }
  transaction.setDocAttribute('terms', terms);
  return { transaction, changed, doubts };
}
