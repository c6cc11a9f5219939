/** Where a position of the document is, in the words of a pattern: which text, block, list, piece. */
import type { Node, ResolvedPos } from 'prosemirror-model';
import { type EditorState, NodeSelection } from 'prosemirror-state';
import { ELSEWHERE } from '../../desk/places.ts';

export interface At {
  readonly node: Node;
  /** Position before the node. */
  readonly pos: number;
  /** Index in its parent. */
  readonly index: number;
  readonly parent: Node;
}

/** Lists whose items a maker writes one after the other. */
const LISTS = new Set(['blocks', 'specials', 'notes', 'finishing', 'cautions']);

function ancestor($pos: ResolvedPos, depth: number): At {
  return {
    node: $pos.node(depth),
    pos: $pos.before(depth),
    index: $pos.index(depth - 1),
    parent: $pos.node(depth - 1),
  };
}

/** The nearest ancestor of a kind. */
export function within($pos: ResolvedPos, kinds: ReadonlySet<string> | string): At | null {
  for (let depth = $pos.depth; depth > 0; depth--) {
    const name = $pos.node(depth).type.name;
    if (typeof kinds === 'string' ? name === kinds : kinds.has(name)) return ancestor($pos, depth);
  }
  return null;
}

/** The text that the caret stands in; null when the selection is no text or reaches over several. */
export function textAt(state: EditorState): At | null {
  const { $from, $to } = state.selection;
  if (state.selection instanceof NodeSelection || !$from.sameParent($to) || !$from.parent.isTextblock)
    return null;
  return ancestor($from, $from.depth);
}

/** The item of a list (a block, a note) that a position is in, and the list. */
export function itemAt($pos: ResolvedPos): At | null {
  for (let depth = $pos.depth; depth > 0; depth--) {
    if (LISTS.has($pos.node(depth - 1).type.name)) return ancestor($pos, depth);
  }
  return null;
}

/** The item that is selected or that holds the caret. */
export function itemOf(state: EditorState): At | null {
  const { selection } = state;
  if (selection instanceof NodeSelection && LISTS.has(selection.$from.parent.type.name)) {
    const { $from, node, from } = selection;
    return { node, pos: from, index: $from.index(), parent: $from.parent };
  }
  return itemAt(selection.$from);
}

/** The piece that the selection begins in. */
export const pieceOf = (state: EditorState): At | null => within(state.selection.$from, 'piece');

/** Every text of the manuscript in order, from a position on (or back from it); null past the last. */
export function nextText(document: Node, from: number, by: 1 | -1): At | null {
  let found: At | null = null;
  const [start, end] = by === 1 ? [from, document.content.size] : [0, from];
  if (start >= end) return null;
  document.nodesBetween(start, end, (node, pos, parent, index) => {
    if (by === 1 && found !== null) return false;
    if (ELSEWHERE.has(node.type.name)) return false;
    if (!node.isTextblock) return true;
    const beyond = by === 1 ? pos >= from : pos + node.nodeSize <= from;
    if (beyond && parent !== null) found = { node, pos, parent, index };
    return false;
  });
  return found;
}
