/** A round is joined to its first stitch, and calls it by the name of another. */
import { quote, text } from '../../findings/phrases.ts';
import { placeName } from '../../findings/voice.ts';
import type { Item, Place, RowTree, StitchRef } from '../../notation/tree.ts';
import { found, type Rule } from '../rule.ts';

interface Slip {
  readonly named: StitchRef;
  readonly really: StitchRef;
  readonly from: number;
  readonly to: number;
}

const isSame = (a: StitchRef, b: StitchRef): boolean =>
  a.base === b.base &&
  a.form === b.form &&
  a.together === b.together &&
  (a.post ?? null) === (b.post ?? null);

/** The first stitch that a row works, into groups and repeats; null where a stitch of the maker's own comes first. */
function firstWorked(items: readonly Item[]): StitchRef | null {
  for (const item of items) {
    if (item.type === 'work') return item.stitch.base === 'slip' ? null : item.stitch;
    if (item.type === 'repeat' || item.type === 'group') {
      const inner = firstWorked(item.items);
      if (inner !== null) return inner;
      continue;
    }
    // A chain that counts is a first stitch of its own.
    if (item.type === 'chain' && item.counts?.kind === 'stitch') return null;
    if (item.type === 'unread' || item.type === 'attach') return null;
  }
  return null;
}

const namedIn = (place: Place | null): StitchRef | null => {
  if (place?.kind !== 'first') return null;
  return place.noun.kind === 'named' ? place.noun.stitch : null;
};

function slipIn({ items }: RowTree): Slip | null {
  const join = items.findLast(({ type }) => type === 'join');
  if (join?.type !== 'join' || join.not || join.place === null) return null;
  const named = namedIn(join.place);
  const really = firstWorked(items);
  if (named === null || really === null || isSame(named, really)) return null;
  const isPlain = (stitch: StitchRef) => stitch.base !== null && stitch.together === 1;
  if (!isPlain(named) || !isPlain(really)) return null;
  return { named, really, from: join.place.from, to: join.place.to };
}

export const joinNamesOtherStitch: Rule = {
  code: 'join-names-other-stitch',
  severity: 'warning',
  title: 'A round is joined to a stitch that is not its first',
  reason:
    'Rounds are joined to the first stitch worked in them. A name left over from another round sends the hook to a wrong place, and the seam of the rounds wanders.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    return `${quote(voice.words || text(data, 'words'))} names another stitch than the first of this round, which is ${quote(text(data, 'really'))}; put the name right`;
  },
  example: null,
  sample: { words: 'in first htr', really: 'tr' },
  check: (study) =>
    study.pieces.flatMap(({ blocks }) =>
      blocks.flatMap(({ block, tree }) => {
        const slip = block.type !== 'row' || tree === null ? null : slipIn(tree);
        if (slip === null || block.type !== 'row') return [];
        const { really, from, to } = slip;
        const id = really.base ?? '';
        const name = `${really.post === 'front' ? 'FP' : really.post === 'back' ? 'BP' : ''}${placeName(id, 1, study.pattern.terms)}`;
        const at = { node: block.id, text: block.text.text, from, to };
        return [
          found(joinNamesOtherStitch, study, at, { words: block.text.text.slice(from, to), really: name }),
        ];
      }),
    ),
};
