/** Edits of the lists of materials, by the place of an item in its list: abbreviations have no name of their own. */
import type { EditorState, Transaction } from 'prosemirror-state';
import type { Attributed, AttributesOf } from '../../core/document/attributes.ts';
import { metresOfYards } from '../../core/trade/units.ts';
import { begin } from '../desk/edits.ts';
import { type ListName, listAt } from '../desk/places.ts';

/** Sets attributes of the item at an index; nothing when there is none. */
export function setItem<K extends Attributed>(
  state: EditorState,
  list: ListName,
  index: number,
  attributes: Partial<AttributesOf<K>>,
): Transaction {
  const transaction = begin(state);
  const { node, pos } = listAt(state.doc, list);
  const child = node.maybeChild(index);
  if (!child) return transaction;
  let at = pos + 1;
  for (let i = 0; i < index; i++) at += node.child(i).nodeSize;
  for (const [name, value] of Object.entries(attributes)) {
    if (JSON.stringify(child.attrs[name]) !== JSON.stringify(value))
      transaction.setNodeAttribute(at, name, value);
  }
  return transaction;
}

/** Thousands set apart as in English: "1,200". */
const THOUSANDS = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/u;

/** A number above or at zero, with a comma or a point; null when it is none. Empty = undefined. */
export function readNumber(typed: string, most = 1_000_000): number | null | undefined {
  const bare = typed.trim();
  const text = THOUSANDS.test(bare) ? bare.replaceAll(',', '') : bare.replace(',', '.');
  if (text === '') return undefined;
  const number = Number(text);
  return Number.isFinite(number) && number >= 0 && number <= most ? number : null;
}

/** Metres of yarn; yards where the maker says so ("170 yd"), to a tenth of a metre. Null and undefined as above. */
export function readMetres(typed: string): number | null | undefined {
  const [, text, unit] = /^(.*?)\s*(m|met(?:re|er)s?|yds?\.?|yards?)?$/iu.exec(typed.trim()) ?? [];
  const number = readNumber(text ?? '');
  if (number == null || unit === undefined || /^m/iu.test(unit)) return number;
  return metresOfYards(number);
}
