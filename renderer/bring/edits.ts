/** Edits that follow on bringing in: a doubt that was looked at, typed numbers that become figures. One undo step each. */
import { closeHistory } from 'prosemirror-history';
import type { EditorState, Transaction } from 'prosemirror-state';
import { schema } from '../../core/document/schema.ts';
import type { Offer } from '../../core/intake/offers.ts';
import { FORM } from '../desk/edits.ts';
import { partAt, placeOf } from '../desk/places.ts';

/** Takes a doubt off the list. */
export function settleDoubt(state: EditorState, index: number): Transaction {
  const { node, pos } = partAt(state.doc, ['workbook', 'doubts']);
  let at = pos + 1;
  for (let i = 0; i < index; i++) at += node.child(i).nodeSize;
  return closeHistory(state.tr)
    .delete(at, at + node.child(index).nodeSize)
    .setMeta(FORM, true);
}

/** Puts figures in the place of typed numbers; offers whose words changed meanwhile are left. Null when none is left. */
export function takeFigures(state: EditorState, offers: readonly Offer[]): Transaction | null {
  const transaction = closeHistory(state.tr);
  const places = offers.flatMap((offer) => {
    const place = placeOf(state.doc, offer.node);
    if (place === null) return [];
    const from = place.pos + 1 + offer.from;
    const to = place.pos + 1 + offer.to;
    const isSame =
      to <= place.pos + place.node.nodeSize - 1 && state.doc.textBetween(from, to) === offer.text;
    return isSame ? [{ from, to, line: offer.line }] : [];
  });
  // From the end, so that places before stay where they are.
  for (const { from, to, line } of places.sort((a, b) => b.from - a.from))
    transaction.replaceWith(from, to, schema.nodes.figure.create({ expression: line }));
  return places.length === 0 ? null : transaction;
}
