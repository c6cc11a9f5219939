/** Most rows begin with their turning chain, and some end with the next one's; or the other way about. */

import type { RowBlock } from '../../document/pattern.ts';
import { count, number, text } from '../../findings/phrases.ts';
import type { RowTree } from '../../notation/tree.ts';
import { found, type Rule } from '../rule.ts';

interface Placed {
  readonly where: 'start' | 'end';
  readonly from: number;
  readonly to: number;
}

const byTree = new WeakMap<RowTree, readonly Placed[]>();

/** Where the turning chain of a row stands: its own at the start, the next row's beside its turn. */
function placedIn(tree: RowTree): readonly Placed[] {
  const before = byTree.get(tree);
  if (before !== undefined) return before;
  const { items } = tree;
  const made: Placed[] = [];
  const [first] = items;
  if (first?.type === 'chain' && items.length > 2)
    made.push({ where: 'start', from: first.from, to: first.to });
  items.forEach((item, i) => {
    if (item.type !== 'turn' || item.not || i < 2) return;
    const beside = [items[i - 1], items[i + 1]].find((other) => other?.type === 'chain');
    if (beside !== undefined && beside !== first)
      made.push({ where: 'end', from: beside.from, to: beside.to });
  });
  byTree.set(tree, made);
  return made;
}

export const turningChainPlacedTwoWays: Rule = {
  code: 'turning-chain-placed-two-ways',
  severity: 'warning',
  title: 'Turning chains stand now at the start, now at the end of a row',
  reason:
    'A maker who has chained at the end of one row and reads the chain again at the start of the next works it twice, or never. One place throughout.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const [here, there] = text(data, 'where') === 'end' ? ['end', 'start'] : ['start', 'end'];
    return `this turning chain stands at the ${here} of its row, but ${count(number(data, 'others'), 'row')} of the pattern ${number(data, 'others') === 1 ? 'has' : 'have'} it at the ${there}; write it in one place throughout`;
  },
  example: null,
  sample: { where: 'end', others: 12 },
  check: (study) => {
    const all: { readonly block: RowBlock; readonly placed: Placed }[] = [];
    for (const { blocks } of study.pieces) {
      for (const { block, tree } of blocks) {
        if (tree === null || block.type !== 'row' || block.form !== 'row') continue;
        for (const placed of placedIn(tree)) all.push({ block, placed });
      }
    }
    const starts = all.filter(({ placed }) => placed.where === 'start').length;
    const ends = all.length - starts;
    if (starts === 0 || ends === 0) return [];
    const rare = starts >= ends ? 'end' : 'start';
    const others = Math.max(starts, ends);
    return all.flatMap(({ block, placed: { where, from, to } }) =>
      where === rare
        ? [
            found(
              turningChainPlacedTwoWays,
              study,
              { node: block.id, text: block.text.text, from, to },
              { where, others },
            ),
          ]
        : [],
    );
  },
};
