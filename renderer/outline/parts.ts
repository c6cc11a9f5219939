/**
 * The parts of a pattern in the order of its pages, as the outline lists them: the cover, special stitches, notes,
 * each piece with its headings, finishing, the closing page. Names, places and findings of each; nothing drawn.
 */

import type { Node } from 'prosemirror-model';
import type { Block, Pattern } from '../../core/document/pattern.ts';
import type { FindingReport } from '../analysis/report.ts';
import { UNWRITTEN } from '../analysis/unwritten.ts';
import { listAt, partAt, placeOf } from '../desk/places.ts';
import { outlineWords } from '../words/outline.ts';

export interface OutlinePart {
  /** Key of the part, and the node to go to. */
  readonly node: string;
  readonly name: string;
  readonly level: 1 | 2;
  /** Index among the pieces; null for what is no piece. */
  readonly piece: number | null;
  /** Nodes whose findings are counted here. */
  readonly nodes: ReadonlySet<string>;
}

const COVER = ['cover:title', 'cover:description', 'cover:construction', 'cover:fit'];
const CLOSING = ['cover:care', 'cover:copyright', 'cover:contact'];

const named = (list: string, items: readonly unknown[]): readonly string[] =>
  items.map((_, i) => `${list}:${i}`);

/** Parts of a pattern, in order. */
export function outlineOf(pattern: Pattern): readonly OutlinePart[] {
  const part = (node: string, name: string, nodes: readonly string[]): OutlinePart => ({
    node,
    name,
    level: 1,
    piece: null,
    nodes: new Set(nodes),
  });
  return [
    part('part:cover', outlineWords.cover, COVER),
    part(
      'part:specials',
      outlineWords.specials,
      pattern.specials.map(({ id }) => id),
    ),
    part('part:notes', outlineWords.notes, named('notes', pattern.notes)),
    ...pattern.pieces.flatMap(({ id, name, blocks }, piece): OutlinePart[] => [
      {
        node: id,
        name: name.trim() === '' ? outlineWords.unnamed(piece + 1) : name,
        level: 1,
        piece,
        nodes: nodesOf(id, blocks),
      },
      ...blocks.flatMap((block): OutlinePart[] =>
        block.type === 'heading' && block.text.trim() !== ''
          ? [{ node: block.id, name: block.text, level: 2, piece: null, nodes: new Set() }]
          : [],
      ),
    ]),
    part('part:finishing', outlineWords.finishing, named('finishing', pattern.finishing)),
    part('part:closing', outlineWords.closing, CLOSING),
  ];
}

/** A piece and its blocks. Made anew after every key, so nothing is made on the way to it. */
function nodesOf(piece: string, blocks: readonly Block[]): ReadonlySet<string> {
  const nodes = new Set([piece]);
  for (const block of blocks) {
    nodes.add(block.id);
    if (block.type === 'shaping') nodes.add(block.shaped.id).add(block.even.id);
  }
  return nodes;
}

/** How many findings of a part ask for the maker: errors and warnings, not notes, nor what is only not written yet. */
export function findingsOf(
  part: OutlinePart,
  byNode: ReadonlyMap<string | null, readonly FindingReport[]>,
): { readonly errors: number; readonly warnings: number } {
  let [errors, warnings] = [0, 0];
  for (const node of part.nodes) {
    const findings = byNode.get(node);
    if (findings === undefined) continue;
    for (const { code, severity } of findings) {
      if (UNWRITTEN.has(code)) continue;
      if (severity === 'error') errors += 1;
      if (severity === 'warning') warnings += 1;
    }
  }
  return { errors, warnings };
}

/** Index of the part that holds a position of the document; -1 when it is in a part that is not listed. */
export function partAtPosition(parts: readonly OutlinePart[], document: Node, position: number): number {
  let found = -1;
  let at = -1;
  parts.forEach((part, index) => {
    const place = placeOf(document, part.node);
    if (place === null || place.pos > position || place.pos < at) return;
    // A heading goes on to the next one; every other part ends with its node.
    const end = part.level === 2 ? Number.POSITIVE_INFINITY : place.pos + place.node.nodeSize;
    if (position > end) return;
    found = index;
    at = place.pos;
  });
  const part = parts[found];
  if (part?.level !== 2) return found;
  // The heading's piece may have ended before the position.
  const owner = parts.slice(0, found).findLastIndex(({ piece }) => piece !== null);
  const piece = owner === -1 ? null : placeOf(document, parts[owner]!.node);
  return piece !== null && position <= piece.pos + piece.node.nodeSize ? found : -1;
}

/** Where the caret goes for a part: into its first text, or into the part itself. */
export function firstText(document: Node, node: string): string {
  if (node === 'part:cover') return 'cover:title';
  if (node === 'part:closing') return 'cover:care';
  if (node === 'part:specials') return listAt(document, 'specials').node.firstChild?.attrs.id ?? node;
  if (node === 'part:notes' || node === 'part:finishing') {
    const list = node.slice('part:'.length);
    return partAt(document, [list]).node.childCount > 0 ? `${list}:0` : node;
  }
  return node;
}
