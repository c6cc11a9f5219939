/**
 * Gives every node that needs one an id of its own: a row split in two, a piece pasted twice. Looks only at what
 * a change touched, and at nothing while an input method composes a word.
 */
import type { Node } from 'prosemirror-model';
import { Plugin, type Transaction } from 'prosemirror-state';
import { ReplaceStep } from 'prosemirror-transform';

/** A fresh id: a letter first, so that it is one by the document's rules. */
export function freshId(): string {
  const words = crypto.getRandomValues(new Uint32Array(3));
  return `n${[...words].map((word) => word.toString(36)).join('')}`;
}

const hasId = (node: Node): boolean => 'id' in (node.type.spec.attrs ?? {}) && !node.isText;

/** Ranges of the new document that the transactions wrote. */
function touched(transactions: readonly Transaction[]): readonly (readonly [number, number])[] {
  const ranges: [number, number][] = [];
  transactions.forEach((transaction, t) => {
    transaction.mapping.maps.forEach((map, m) => {
      const rest = transaction.mapping.slice(m + 1);
      map.forEach((_, __, from, to) => {
        let [start, end] = [rest.map(from, -1), rest.map(to, 1)];
        for (const later of transactions.slice(t + 1)) {
          start = later.mapping.map(start, -1);
          end = later.mapping.map(end, 1);
        }
        ranges.push([start, end]);
      });
    });
  });
  return ranges;
}

/** Letters within one text, put in or taken out: no node comes or goes, and none can need another id. */
function isTyping({ steps, docs }: Transaction): boolean {
  return steps.every((step, i) => {
    if (!(step instanceof ReplaceStep) || step.slice.openStart > 0 || step.slice.openEnd > 0) return false;
    const from = docs[i]!.resolve(step.from);
    return (
      from.parent.isTextblock &&
      step.to <= from.end() &&
      step.slice.content.content.every(({ isText }) => isText)
    );
  });
}

export function identity(): Plugin {
  /** A word was composed since ids were looked at: what it changed besides its letters has not been seen. */
  let isComposed = false;
  return new Plugin({
    appendTransaction(transactions, _, state) {
      if (!transactions.some((transaction) => transaction.docChanged)) return null;
      if (transactions.some((transaction) => transaction.getMeta('composition') !== undefined)) {
        isComposed = true;
        return null;
      }
      if (!isComposed && transactions.every(isTyping)) return null;
      isComposed = false;
      const suspects: { node: Node; pos: number }[] = [];
      for (const [from, to] of touched(transactions)) {
        state.doc.nodesBetween(
          Math.max(0, from - 1),
          Math.min(state.doc.content.size, to + 1),
          (node, pos) => {
            if (hasId(node)) suspects.push({ node, pos });
            return !node.isTextblock;
          },
        );
      }
      if (suspects.length === 0) return null;
      const counts = new Map<string, number>();
      state.doc.descendants((node) => {
        if (hasId(node)) counts.set(node.attrs.id, (counts.get(node.attrs.id) ?? 0) + 1);
        return !node.isTextblock;
      });
      const transaction = state.tr;
      const seen = new Set<number>();
      // Of two equal ids the later one in the document gives way: the first half of a split keeps its name.
      for (const { node, pos } of suspects.sort((a, b) => b.pos - a.pos)) {
        if (seen.has(pos)) continue;
        seen.add(pos);
        const count = counts.get(node.attrs.id) ?? 0;
        if (node.attrs.id !== '' && count < 2) continue;
        counts.set(node.attrs.id, count - 1);
        transaction.setNodeAttribute(pos, 'id', freshId());
      }
      return transaction.docChanged ? transaction : null;
    },
  });
}
