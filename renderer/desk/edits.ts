/**
 * Edits that forms and grids make, as functions from a state to a transaction. They name nodes by id, so that an
 * edit finds its node wherever it stands by then; an edit of a node that is gone changes nothing.
 */
import { closeHistory } from 'prosemirror-history';
import type { Node } from 'prosemirror-model';
import type { EditorState, Transaction } from 'prosemirror-state';
import type { Attributed, AttributesOf } from '../../core/document/attributes.ts';
import { FIGURE, type FigureText, type PieceStart } from '../../core/document/pattern.ts';
import { schema } from '../../core/document/schema.ts';
import { freshId } from './identity.ts';
import { type ListName, listAt, type Placed, partAt, placeOf } from './places.ts';

/** Marks a transaction of a form, which may change what typing in the manuscript may not. */
export const FORM = 'form';

/** A transaction of a form: one step of undoing by itself. */
export const begin = (state: EditorState): Transaction => closeHistory(state.tr.setMeta(FORM, true));

function setAt(transaction: Transaction, place: Placed | null, attributes: object): Transaction {
  if (place === null) return transaction;
  for (const [name, value] of Object.entries(attributes)) {
    if (place.node.attrs[name] !== value) transaction.setNodeAttribute(place.pos, name, value);
  }
  return transaction;
}

/** Sets attributes of the node with this id. */
export function setAttributes<K extends Attributed>(
  state: EditorState,
  id: string,
  attributes: Partial<AttributesOf<K>>,
): Transaction {
  return setAt(begin(state), placeOf(state.doc, id), attributes);
}

/** Sets what a piece starts with. A single row that nobody has written yet becomes what such a piece begins with. */
export function startPiece(state: EditorState, id: string, start: PieceStart): Transaction {
  const place = placeOf(state.doc, id);
  const transaction = setAt(begin(state), place, { start });
  if (place === null) return transaction;
  const [title, blocks] = place.node.children;
  const first = blocks?.childCount === 1 ? blocks.firstChild : null;
  if (first?.type !== schema.nodes.row || first.childCount > 0) return transaction;
  const edges = start.kind === 'edges' && start.round ? 'round' : 'row';
  return setAt(
    transaction,
    { node: first, pos: place.pos + 1 + title!.nodeSize + 1 },
    { form: start.kind === 'chain' ? 'foundation' : edges },
  );
}

/** Sets attributes of a part that stands once: the cover, the sizing. */
export function setPart<K extends Attributed>(
  state: EditorState,
  path: readonly string[],
  attributes: Partial<AttributesOf<K>>,
): Transaction {
  return setAt(begin(state), partAt(state.doc, path), attributes);
}

/** Sets attributes of the document itself: its terms, its units. */
export function setDocument(state: EditorState, attributes: Partial<AttributesOf<'doc'>>): Transaction {
  const transaction = begin(state);
  for (const [name, value] of Object.entries(attributes)) transaction.setDocAttribute(name, value);
  return transaction;
}

/** Text with a figure atom at each object character. */
export function written({ text, figures }: FigureText): readonly Node[] {
  return text
    .split(FIGURE)
    .flatMap((part, index) => [
      ...(index === 0 ? [] : [schema.nodes.figure.create({ expression: figures[index - 1] ?? '' })]),
      ...(part === '' ? [] : [schema.text(part)]),
    ]);
}

/** Replaces the text of a text-bearing node. */
export function setText(state: EditorState, name: string, text: string | FigureText): Transaction {
  const transaction = begin(state);
  const place = placeOf(state.doc, name);
  if (place === null) return transaction;
  const content = written(typeof text === 'string' ? { text, figures: [] } : text);
  const from = place.pos + 1;
  return transaction.replaceWith(from, from + place.node.content.size, [...content]);
}

/** Puts a new node into a list, at an index or at its end, and gives it an id when it has none. */
export function insertItem(state: EditorState, list: ListName, node: Node, index?: number): Transaction {
  const { node: parent, pos } = listAt(state.doc, list);
  const at = Math.min(index ?? parent.childCount, parent.childCount);
  let place = pos + 1;
  for (let i = 0; i < at; i++) place += parent.child(i).nodeSize;
  const named = 'id' in node.attrs && node.attrs.id === '' ? withAttributes(node, { id: freshId() }) : node;
  return begin(state).insert(place, named);
}

function withAttributes(node: Node, attributes: object): Node {
  return node.type.create({ ...node.attrs, ...attributes }, node.content, node.marks);
}

/** A new node of a kind that a form makes. */
export function made<K extends Attributed>(
  kind: K,
  attributes: Partial<AttributesOf<K>>,
  content: readonly Node[] = [],
): Node {
  return schema.nodes[kind].create({ ...attributes }, [...content]);
}

/** Takes away a node of a list by its index. */
export function removeItem(state: EditorState, list: ListName, index: number): Transaction {
  const { node, pos } = listAt(state.doc, list);
  const child = node.maybeChild(index);
  if (!child) return begin(state);
  let from = pos + 1;
  for (let i = 0; i < index; i++) from += node.child(i).nodeSize;
  return begin(state).delete(from, from + child.nodeSize);
}

/** Moves a node of a list to another index, as one edit. */
export function moveItem(state: EditorState, list: ListName, from: number, to: number): Transaction {
  const { node: parent, pos } = listAt(state.doc, list);
  const transaction = begin(state);
  const child = parent.maybeChild(from);
  if (!child || to < 0 || to >= parent.childCount || from === to) return transaction;
  const others = parent.children.filter((_, index) => index !== from);
  const ordered = [...others.slice(0, to), child, ...others.slice(to)];
  const [low, high] = from < to ? [from, to] : [to, from];
  let start = pos + 1;
  for (let i = 0; i < low; i++) start += parent.child(i).nodeSize;
  let end = start;
  for (let i = low; i <= high; i++) end += parent.child(i).nodeSize;
  return transaction.replaceWith(start, end, ordered.slice(low, high + 1));
}

/** Index of the node with this id in a list; -1 when it is not there. */
export function indexIn(document: Node, list: ListName, id: string): number {
  return listAt(document, list).node.children.findIndex((child) => child.attrs.id === id);
}

/** Takes the node with this id out, wherever it stands: a piece, a special stitch. */
export function removeNode(state: EditorState, id: string): Transaction {
  const place = placeOf(state.doc, id);
  const transaction = begin(state);
  return place === null ? transaction : transaction.delete(place.pos, place.pos + place.node.nodeSize);
}

/** What a block of text can be turned into. */
export type TextBlockKind = 'row' | 'round' | 'foundation' | 'prose' | 'heading';

/** Turns a row, a paragraph or a heading into another of them; its words stay, in a heading without their figures. */
export function turnBlock(state: EditorState, id: string, kind: TextBlockKind): Transaction {
  const place = placeOf(state.doc, id);
  const transaction = begin(state);
  if (place === null) return transaction;
  const { node, pos } = place;
  const isRow = kind === 'row' || kind === 'round' || kind === 'foundation';
  if (isRow && node.type.name === 'row') return setAt(transaction, place, { form: kind });
  const type = schema.nodes[isRow ? 'row' : kind];
  const sizes = kind === 'heading' ? {} : { sizes: node.attrs.sizes ?? null };
  const plain = node.textContent === '' ? [] : [schema.text(node.textContent)];
  const content = kind === 'heading' ? plain : node.content;
  const turned = type.create({ id, ...sizes, ...(isRow ? { form: kind } : {}) }, content);
  return transaction.replaceWith(pos, pos + node.nodeSize, turned);
}
