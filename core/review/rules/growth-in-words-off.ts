/** A text says by how many stitches each round or row grows, and none grows by so many. */
import { number, quote, text } from '../../findings/phrases.ts';
import type { Study } from '../../study/index.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';

interface Told {
  readonly by: number;
  readonly from: number;
  readonly to: number;
}

const GROWS =
  /\b(?:grows?|increas(?:es|ed|ing)|decreas(?:es|ed|ing)|narrows|shrinks)\s+(?:evenly\s+)?(?:by\s+)?(\d{1,3}|two|three|four|five|six|seven|eight|ten|twelve)\s+(?:sts?|stitches)\s+(?:(?:in|on)\s+)?(?:each|every|a|per)\s+(?:round|rnd|row)\b/giu;
const WORDS: Readonly<Record<string, number>> = {
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  ten: 10,
  twelve: 12,
};

const told = looking((prose, kind): readonly Told[] =>
  kind === 'row'
    ? []
    : [...prose.matchAll(GROWS)].map((match) => ({
        by: WORDS[match[1]!.toLowerCase()] ?? Number(match[1]),
        from: match.index,
        to: match.index + match[0].length,
      })),
);

/** By how much the stitches change from a row to the next, in any size; of shapings what they do is in their lines. */
function changesIn({ pieces }: Study): ReadonlySet<number> | null {
  const changes = new Set<number>();
  for (const { blocks, piece } of pieces) {
    // How a shaping goes on is told by its line, and not by the blocks around it.
    if (piece.blocks.some(({ type }) => type === 'shaping')) return null;
    const before: (number | undefined)[] = [];
    for (const { sizes } of blocks)
      sizes.forEach((size, at) => {
        if (size === null) return;
        const { stitches } = size.tally;
        const change = Math.abs(stitches - (before[at] ?? stitches));
        changes.add(change);
        if (size.rows > 1 && change % size.rows === 0) changes.add(change / size.rows);
        before[at] = stitches;
      });
  }
  return changes;
}

export const growthInWordsOff: Rule = {
  code: 'growth-in-words-off',
  severity: 'warning',
  title: 'A text tells another growth than the rows have',
  reason:
    'How many stitches every round gains is what a maker counts by. If the words say another number, the maker who follows them counts wrong in every round.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    return `${quote(voice.words || text(data, 'words'))}: no row gains or loses ${number(data, 'by')} sts; put the number or the rows right`;
  },
  example: null,
  sample: { words: 'grows by 6 sts a round', by: 6 },
  check: (study) => {
    const all = told(study.pattern);
    if (all.length === 0) return [];
    const changes = changesIn(study);
    if (changes === null || changes.size === 0) return [];
    return all.flatMap(({ text: { node, text: words }, hits }) =>
      hits.flatMap(({ by, from, to }) =>
        changes.has(by)
          ? []
          : [
              found(
                growthInWordsOff,
                study,
                { node, text: words, from, to },
                { words: words.slice(from, to), by },
              ),
            ],
      ),
    );
  },
};
