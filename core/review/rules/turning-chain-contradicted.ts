/** A row says of its turning chain the contrary of what the notes say once for all rows, or works so. */
import type { Finding, Span } from '../../finding.ts';
import { number, text } from '../../findings/phrases.ts';
import type { Amount, CountsAs, Item, RowTree } from '../../notation/tree.ts';
import type { Study } from '../../study/index.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';

type Said = 'stitch' | 'nothing';

const saidBy = (counts: CountsAs): Said | null => (counts.kind === 'space' ? null : counts.kind);
const plain = (amount: Amount): number | null => (amount.kind === 'one' ? amount.value : null);

/** What a sentence of the notes says of turning chains: of those of one length, or (null) of all. */
interface Told extends Span {
  readonly chains: number | null;
  readonly said: Said;
}

const CHAIN =
  /\b(?:(?:turning|beginning|beg|starting) )?ch(?:ain)?s?[- ]?(\d{1,2})\b|\b(\d{1,2})[- ]ch(?:ain)?\b|\b(?:turning|beginning|beg|starting) ch(?:ain)?s?\b|\bch(?:ain)?s? at the (?:beginning|start)\b/iu;
const COUNTS =
  /\b(?:(never counts?|(?:does|do) not count|is not counted|are not counted|not counting)|(counts? as|is counted as|are counted as))\b/iu;

/** Sentences of prose that settle whether a turning chain counts. */
const told = looking((text, kind): readonly Told[] => {
  if (kind === 'row' || !/count/iu.test(text)) return [];
  let at = 0;
  return text.split(/(?<=[.;!])\s+/u).flatMap((sentence) => {
    const from = text.indexOf(sentence, at);
    at = from + sentence.length;
    const chain = CHAIN.exec(sentence);
    const counts = chain === null ? null : COUNTS.exec(sentence.slice(chain.index));
    if (chain === null || counts === null || /\bch-\d+ sps?\b/iu.test(sentence)) return [];
    const digits = chain[1] ?? chain[2];
    const said: Said = counts[1] === undefined ? 'stitch' : 'nothing';
    return [{ chains: digits === undefined ? null : Number(digits), said, from, to: at }];
  });
});

/** What the notes say of a chain of a length; null where they say nothing, or both: then they part it by place. */
type Settled = (chains: number) => Said | null;

function settledBy(study: Study): Settled | null {
  const said = new Map<number | null, Set<Said>>();
  const add = (chains: number | null, own: Said) => {
    said.set(chains, (said.get(chains) ?? new Set()).add(own));
  };
  for (const { text, hits } of told(study.pattern))
    if (text.node.startsWith('notes:')) for (const each of hits) add(each.chains, each.said);
  for (const { chains, counts } of study.readings.conventions) {
    const own = saidBy(counts);
    if (own !== null) add(chains === null ? null : plain(chains), own);
  }
  if (said.size === 0) return null;
  return (chains) => {
    const own = said.get(chains) ?? said.get(null);
    return own?.size === 1 ? [...own][0]! : null;
  };
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

/** Several stitches in one place, or a stitch that is an increase. */
function increases(item: Item): boolean {
  if (item.type === 'repeat' || item.type === 'group') return item.items.some(increases);
  if (item.type !== 'work') return false;
  if (item.stitch.form === 'inc') return true;
  const many = item.amount.kind === 'one' ? item.amount.value > 1 : item.amount.kind === 'sizes';
  return (
    many &&
    item.places.some(
      (place) =>
        place.kind !== 'next' || (place.amount.kind === 'one' && place.amount.value === 1 && !place.implied),
    )
  );
}

/** What a row says or shows of its turning chain, as long as the notes settle a chain of its length. */
function contraryIn({ items }: RowTree, settled: Settled): Contrary | null {
  const at = items.findIndex(({ type }) => type === 'chain');
  const chain = items[at];
  if (chain?.type !== 'chain' || items.slice(0, at).some(({ type }) => type !== 'aside' && type !== 'attach'))
    return null;
  const chains = plain(chain.amount);
  const said = chains === null ? null : settled(chains);
  if (chains === null || said === null) return null;
  const next = items[at + 1];
  if (chain.counts !== null) {
    const own = saidBy(chain.counts);
    return own === null || own === said
      ? null
      : { chains, how: 'says', said, from: chain.counts.from, to: chain.counts.to };
  }
  if (said === 'nothing' && isFirst(next, 'skip'))
    return { chains, how: 'skips', said, from: next!.from, to: next!.to };
  // "Ch 3, dc in first st, …, 2 dc in last st": a stitch more at the beginning, as at the end.
  if (said === 'stitch' && items.slice(at + 2).some(increases)) return null;
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
    const settled = settledBy(study);
    if (settled === null) return [];
    const findings: Finding[] = [];
    for (const { blocks } of study.pieces) {
      for (const { block, tree } of blocks) {
        const contrary = tree === null ? null : contraryIn(tree, settled);
        if (contrary === null) continue;
        const { from, to, chains, how, said } = contrary;
        const at = { node: block.id, text: block.type === 'row' ? block.text.text : '', from, to };
        findings.push(found(turningChainContradicted, study, at, { chains, how, said }));
      }
    }
    return findings;
  },
};
