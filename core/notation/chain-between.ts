/**
 * Reads "with 1 ch between each" behind stitches, as older books write a mesh, a V or spokes: the chain stands
 * between the stitches just named. It reads no stitch of its own.
 */

import { height } from '../trade/stitches.ts';
import type { Cursor } from './cursor.ts';
import { readNoun } from './nouns.ts';
import { one, readAmount } from './numbers.ts';
import type { Chain, Item, LastPass, Place, Repeat, Work } from './tree.ts';

/** "with 2 ch between each", ", 1 chain between": the chain, or null. */
function readBetweenChain(c: Cursor): Chain | null {
  return c.attempt(() => {
    c.eat(',');
    const start = c.at;
    if (!c.eatAny(['with', 'having', 'and'])) return null;
    const at = c.at;
    const chained = c.eatAny(['ch', 'a ch of']) !== null;
    c.eat('-');
    const amount = readAmount(c, false);
    if (!amount) return null;
    c.eat('-');
    if (!chained && !c.eatAny(['ch', 'chs'])) return null;
    const span = c.span(at);
    if (!c.eatAny(['between', 'in between', 'separating', 'after'])) return null;
    c.eatAny(['each of them', 'each one', 'each', 'them', 'every', 'the two', 'the']);
    c.attempt(() => readNoun(c));
    return c.at > start ? { type: 'chain', amount, counts: null, ...span } : null;
  });
}

/** Inside a group each stitch stands by itself. */
function single(c: Cursor, work: Work, place: Place): Work {
  return { ...work, amount: one(c), places: [place] };
}

function repeat(work: Work, chain: Chain, times: Repeat['times'], open: boolean): Repeat {
  const { from } = work;
  const to = chain.to;
  const last: LastPass | null = open ? { kind: 'omitting', items: [chain], from: to, to } : null;
  return { type: 'repeat', mark: 'bracket', items: [work, chain], times, last, from, to };
}

/** Is there a beginning chain of a stitch's height before it, which has the chain behind it as well? */
function begun(before: readonly Item[], work: Work): boolean {
  const last = before.at(-1);
  if (last?.type !== 'chain' || work.stitch.base === null || last.amount.kind !== 'one') return false;
  if (last.counts?.kind === 'stitch' && last.counts.chains !== null) return false;
  return last.amount.value === height(work.stitch.base);
}

/**
 * The stitches of `work` with the chain that the words behind it put between them, or null. `before`: the items
 * read so far.
 */
export function withChainsBetween(c: Cursor, work: Work, before: readonly Item[]): Item[] | null {
  const place = work.places[0]!;
  if (work.places.length !== 1 || work.amount.kind !== 'one') return null;
  if (!c.isAny(['with', ', with', 'having', ', having'])) return null;
  const n = work.amount.value;
  return c.attempt(() => {
    const chain = readBetweenChain(c);
    if (!chain) return null;
    const { from, to, loop, post, below } = place;
    const times = { kind: 'times', amount: work.amount, more: false, from, to } as const;
    const lead = begun(before, work) ? [chain] : [];
    if (place.kind === 'ring') return [...lead, repeat(single(c, work, place), chain, times, !c.round)];
    if (n > 1) {
      const here: Place = { kind: 'same', loop, post, below, from: to, to };
      const items: Item[] = [];
      for (let k = 0; k < Math.min(n, 100); k++) items.push(...(k > 0 ? [chain] : []), single(c, work, here));
      return [{ type: 'group', items, places: work.places, from: work.from, to: chain.to }];
    }
    if (place.kind === 'across') {
      const next: Place = { ...place, kind: 'next', amount: one(c), implied: false };
      return [
        ...lead,
        repeat({ ...work, places: [next] }, chain, { kind: 'to', stop: place.stop, from, to }, !c.round),
      ];
    }
    if (place.kind !== 'next') return null;
    const each: Place = { ...place, amount: one(c) };
    return [repeat({ ...work, places: [each] }, chain, { ...times, amount: place.amount }, true)];
  });
}
