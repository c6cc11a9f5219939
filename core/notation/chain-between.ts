/**
 * Reads "with 1 ch between each" behind stitches, as older books write a mesh, a V or spokes: the chain stands
 * between the stitches just named. It reads no stitch of its own.
 */

import { height } from '../trade/stitches.ts';
import type { Cursor } from './cursor.ts';
import { readNoun } from './nouns.ts';
import { readAmount } from './numbers.ts';
import type { Amount, Chain, Item, LastPass, Place, Repeat, Work } from './tree.ts';

/** "with 2 ch between each", ", 1 chain between": the chain, or null. */
function readBetweenChain(c: Cursor): Chain | null {
  return c.attempt(() => {
    c.eat(',');
    const start = c.at;
    const led = c.eatAny(['with', 'having', 'and']) !== null;
    const at = c.at;
    const chained = c.eatAny(['ch', 'a ch of', 'chaining', 'making ch', 'working ch']) !== null;
    if (!led && !chained) return null;
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

/** The same at an empty place: for what the words say once and mean again. */
function chainAt(chain: Chain, at: number): Chain {
  const span = { from: at, to: at };
  return { ...chain, amount: { ...chain.amount, ...span }, ...span };
}

/** A one that no word says, at `at`. */
function lone(at: number): Amount {
  return { kind: 'one', value: 1, from: at, to: at };
}

function repeat(work: Work, chain: Chain, times: Repeat['times'], open: boolean): Repeat {
  const { from } = work;
  const { to } = chain;
  const last: LastPass | null = open ? { kind: 'omitting', items: [chainAt(chain, to)], from: to, to } : null;
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
  const leads = [', with', 'with', ', having', 'having', ', ch # between', ', ch # in between'];
  if (!c.isAny([...leads, ', chaining', 'chaining', ', making ch', ', working ch'])) return null;
  const n = work.amount.value;
  return c.attempt(() => {
    const chain = readBetweenChain(c);
    if (!chain) return null;
    const { to, loop, post, below } = place;
    const alone: Work = { ...work, amount: lone(work.amount.from) };
    const often = (amount: Amount): Repeat['times'] => ({
      kind: 'times',
      amount,
      more: false,
      from: amount.from,
      to: amount.to,
    });
    const lead = begun(before, work) ? [chainAt(chain, work.from)] : [];
    if (place.kind === 'ring') return [...lead, repeat(alone, chain, often(work.amount), !c.round)];
    if (n > 1) {
      const items: Item[] = [
        { ...alone, places: [{ kind: 'same', loop, post, below, from: to, to }] },
        chain,
      ];
      // What the words leave out stands at an empty place behind them.
      const end = { from: chain.to, to: chain.to };
      const more: Work = {
        ...alone,
        ...end,
        stitch: { ...work.stitch, ...end },
        amount: lone(chain.to),
        places: [{ kind: 'same', loop, post, below, ...end }],
      };
      for (let k = 1; k < Math.min(n, 100); k++)
        items.push(more, ...(k < n - 1 ? [chainAt(chain, chain.to)] : []));
      return [{ type: 'group', items, places: work.places, from: work.from, to: chain.to }];
    }
    if (place.kind === 'across') {
      const { stop } = place;
      const next: Place = { ...place, kind: 'next', amount: lone(to), implied: false };
      const times: Repeat['times'] = { kind: 'to', stop, from: stop.from, to: stop.to };
      return [...lead, repeat({ ...work, places: [next] }, chain, times, !c.round)];
    }
    if (place.kind !== 'next') return null;
    const each: Place = { ...place, amount: lone(to) };
    return [repeat({ ...work, places: [each] }, chain, often(place.amount), true)];
  });
}
