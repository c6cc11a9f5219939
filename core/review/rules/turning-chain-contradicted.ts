/** A row says of its turning chain the contrary of what the notes say once for all rows, or works so. */
import { number, text } from '../../findings/phrases.ts';
import type { Amount, Convention, CountsAs, Item, RowTree } from '../../notation/tree.ts';
import { found, type Rule } from '../rule.ts';

type Said = 'stitch' | 'nothing';

const saidBy = (counts: CountsAs): Said | null => (counts.kind === 'space' ? null : counts.kind);
const plain = (amount: Amount): number | null => (amount.kind === 'one' ? amount.value : null);

/** What the notes say of chains of each length; a length of which they say both is left out: they part it by place. */
function settledBy(conventions: readonly Convention[]): ReadonlyMap<number, Said> {
  const said = new Map<number, Set<Said>>();
  for (const { chains, counts } of conventions) {
    const n = chains === null ? null : plain(chains);
    const own = saidBy(counts);
    if (n === null || own === null) continue;
    said.set(n, (said.get(n) ?? new Set()).add(own));
  }
  return new Map([...said].flatMap(([n, all]) => (all.size === 1 ? [[n, [...all][0]!] as const] : [])));
}

interface Contrary {
  readonly chains: number;
  readonly how: 'says' | 'skips' | 'works';
  readonly said: Said;
  readonly from: number;
  readonly to: number;
}

const isFirst = (item: Item | undefined, type: 'skip' | 'work'): boolean =>
  item?.type === type &&
  item.places.some((place) => place.kind === 'first' || (type === 'work' && place.kind === 'same'));

/** What a row says or shows of its turning chain, as long as the notes settle a chain of its length. */
function contraryIn({ items }: RowTree, settled: ReadonlyMap<number, Said>): Contrary | null {
  const at = items.findIndex(({ type }) => type === 'chain');
  const chain = items[at];
  if (chain?.type !== 'chain' || items.slice(0, at).some(({ type }) => type !== 'aside' && type !== 'attach'))
    return null;
  const chains = plain(chain.amount);
  const said = chains === null ? undefined : settled.get(chains);
  if (chains === null || said === undefined) return null;
  const next = items[at + 1];
  if (chain.counts !== null) {
    const own = saidBy(chain.counts);
    return own === null || own === said
      ? null
      : { chains, how: 'says', said, from: chain.counts.from, to: chain.counts.to };
  }
  if (said === 'nothing' && isFirst(next, 'skip'))
    return { chains, how: 'skips', said, from: next!.from, to: next!.to };
  if (
    said === 'stitch' &&
    next?.type === 'work' &&
    next.stitch.base !== 'slip' &&
    isFirst(next, 'work') &&
    plain(next.amount) === 1
  )
    return { chains, how: 'works', said, from: next.from, to: next.to };
  return null;
}

const SHOWS: Readonly<Record<Contrary['how'], string>> = {
  says: 'here it says the contrary',
  skips: 'here the first stitch is skipped, as if it did count',
  works: 'here a stitch is worked beside it, as if it did not count',
};

export const turningChainContradicted: Rule = {
  code: 'turning-chain-contradicted',
  severity: 'warning',
  title: 'A row and the notes say different things of the turning chain',
  reason:
    'Whether the chain at the beginning counts decides where the first and the last stitch go. With two answers each maker takes another, and the edge grows or shrinks.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const counts = text(data, 'said') === 'stitch' ? 'counts as a stitch' : 'does not count as a stitch';
    return `the notes say that ch ${number(data, 'chains')} at the beginning ${counts}; ${SHOWS[text(data, 'how') as Contrary['how']] ?? SHOWS.says}. Change the row, or say in the notes for which rows they hold`;
  },
  example: null,
  sample: { chains: 3, said: 'stitch', how: 'says' },
  check: (study) => {
    const settled = settledBy(study.readings.conventions);
    if (settled.size === 0) return [];
    return study.pieces.flatMap(({ blocks }) =>
      blocks.flatMap(({ block, tree }) => {
        const contrary = tree === null ? null : contraryIn(tree, settled);
        if (contrary === null) return [];
        const { from, to, chains, how, said } = contrary;
        const at = { node: block.id, text: block.type === 'row' ? block.text.text : '', from, to };
        return [found(turningChainContradicted, study, at, { chains, how, said })];
      }),
    );
  },
};
