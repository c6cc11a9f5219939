/** A text adds up stitches of several parts, and the sum, or a part of it, is not what it says. */
import { listed, number, perSize, plain, text, words } from '../../findings/phrases.ts';
import type { PieceStudy, Study } from '../../study/index.ts';
import { blockAt } from '../blocks.ts';
import { foundIn, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { TOLD_NUMBER, valuesTold } from '../told-numbers.ts';

interface Part {
  readonly words: string;
  readonly at: number;
  /** What is said of it: " sts from the front". */
  readonly of: string;
}

interface Told {
  readonly parts: readonly Part[];
  readonly sum: Part;
  readonly from: number;
  readonly to: number;
}

const STS = String.raw`(?:sts?|stitches)(?!\p{L})`;
/** What is said of a part, up to the next number. */
const SAID = String.raw`(?: [^.;:=()\d\uFFFC]{1,45}?)?`;
const PART = `(${TOLD_NUMBER})(${SAID})`;
const SUM = new RegExp(
  String.raw`(?<![\p{L}\p{N}(,.-])${PART}(?:,? (?:and|plus)| ?\+|,) ${PART}(?:(?:,? (?:and|plus)| ?\+) ${PART})?(?:(:|=| –| =|,? (?:making|makes|to make|giving|gives|for a total of)) (${TOLD_NUMBER}) ${STS}(?: in (?:all|total)| altogether)?|(,| –|:)? \(?(${TOLD_NUMBER}) ${STS} (?:in (?:all|total)|altogether))(?=[.;,)]|$)`,
  'dgiu',
);
/** How often a part is meant: each front is there twice, each corner four times. */
const EACH = /\b(?:each|every|both|either|per)\b/iu;
const TIMES = [1, 2, 3, 4, 6, 8];

const told = looking((prose, kind): readonly Told[] => {
  if (kind === 'row' || !/\b(?:sts?|stitches)\b/iu.test(prose)) return [];
  return [...prose.matchAll(SUM)].flatMap((match) => {
    const part = (number: number, of: string): Part => ({
      words: match[number]!,
      at: match.indices![number]![0],
      of,
    });
    const parts = [1, 3, 5].flatMap((i) => (match[i] === undefined ? [] : [part(i, match[i + 1] ?? '')]));
    // Bare numbers are no parts of anything: "rows 2 and 4: 24 sts".
    const isOfParts = parts.every(({ of }) => /\b(?:from|of|on|along|at|across|for|in|over)\b/iu.test(of));
    const isOfStitches = /^ (?:sts?|stitches|sc|hdc|htr|dc|tr)(?!\p{L})/iu.test(parts[0]!.of);
    if (!isOfParts || !isOfStitches) return [];
    const sum = part(match[8] === undefined ? 10 : 8, '');
    return [{ parts, sum, from: match.index, to: match.index + match[0].length }];
  });
});

/** Whether parts, each taken as often as it may be meant, come to a sum. */
function comesTo(parts: readonly { readonly value: number; readonly each: boolean }[], sum: number): boolean {
  const [first, ...rest] = parts;
  if (first === undefined) return sum === 0;
  return (first.each ? TIMES : [1]).some((times) => comesTo(rest, sum - first.value * times));
}

/** The piece that a part is said to be all of: "74 sts of the Front". */
function wholeOf({ pieces }: Study, of: string): PieceStudy | null {
  const name = /^ (?:sts?|stitches)? ?(?:of|across) (?:the )?(.+?)$/iu.exec(of)?.[1]?.toLowerCase();
  return pieces.find(({ piece }) => piece.name.trim().toLowerCase() === name) ?? null;
}

/** Whether a piece has so many stitches anywhere: in a row, or in what a row leaves open. */
function everHas({ blocks, openings }: PieceStudy, size: number, count: number): boolean {
  return (
    blocks.some(({ sizes }) => sizes[size]?.tally.stitches === count) ||
    (openings[size] ?? []).some(({ sites }) => sites.length === count)
  );
}

export const sumInWordsOff: Rule = {
  code: 'sum-in-words-off',
  severity: 'error',
  title: 'A text adds up stitches, and they do not come to its sum',
  reason:
    'Where parts are joined, makers count the stitches against the sum. If the parts do not come to it, nobody knows which of the numbers to trust.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const piece = text(data, 'piece');
      if (piece !== '')
        return `these words take ${number(data, 'part')} sts of ${piece}, but no row of it has so many: its last has ${number(data, 'has')}; put the number or the rows right`;
      const parts = listed(words(data, 'parts'));
      return `${parts} are ${plain(number(data, 'makes'))} and not ${plain(number(data, 'sum'))}; put the sum or its parts right`;
    }),
  example: null,
  sample: { parts: [24, 26], makes: 50, sum: 52, piece: '', part: 0, has: 0 },
  check: (study) =>
    told(study.pattern).flatMap(({ text: { node, text: prose }, hits }) =>
      hits.flatMap(({ parts, sum, from, to }) => {
        const { sizes } = study.pattern;
        const place = blockAt(study, node);
        const own = place === null ? null : place.piece.blocks[place.at]!;
        const read = ({ words: number, at }: Part) =>
          valuesTold(number, sizes.length, { own, text: prose, from: at });
        const [sums, all] = [read(sum), parts.map(read)];
        if (sums === null || all.some((values) => values === null)) return [];
        const data = sizes.map((_, i) => {
          const total = sums[i] ?? null;
          const values = all.map((each) => each![i] ?? null);
          if (total === null || values.some((value) => value === null)) return null;
          const known = parts.map(({ of }, at) => ({ value: values[at]!, each: EACH.test(of) }));
          const makes = known.reduce((whole, { value }) => whole + value, 0);
          if (!comesTo(known, total))
            return { parts: values as number[], makes, sum: total, piece: '', part: 0, has: 0 };
          for (const [at, { of }] of parts.entries()) {
            const piece = wholeOf(study, of);
            if (piece === null || everHas(piece, i, values[at]!)) continue;
            const has = piece.blocks.findLast((block) => (block.sizes[i]?.rows ?? 0) > 0);
            if (has === undefined) continue;
            const name = piece.piece.name.trim();
            const counted = has.sizes[i]!.tally.stitches;
            return { parts: [], makes, sum: total, piece: name, part: values[at]!, has: counted };
          }
          return null;
        });
        return foundIn(sumInWordsOff, study, { node, text: prose, from, to }, data);
      }),
    ),
};
