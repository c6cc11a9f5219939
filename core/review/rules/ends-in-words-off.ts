/** A text counts stitches from each end of a row, and the row is not so long, or has another middle. */
import { number, perSize } from '../../findings/phrases.ts';
import type { PieceStudy, Study } from '../../study/index.ts';
import { blockAt, rowsBefore } from '../blocks.ts';
import { isWrong } from '../multiples.ts';
import { foundIn, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { TOLD_NUMBER, valuesTold } from '../told-numbers.ts';

interface Number {
  readonly words: string;
  readonly at: number;
}

interface Told {
  readonly ends: Number;
  /** The last of them is named, as one that is marked: the middle may be told with the marked stitches or without. */
  readonly isMarked: boolean;
  readonly middle: Number | null;
  /** The sentence that it stands in. */
  readonly sentence: string;
  readonly from: number;
  readonly to: number;
}

const STITCH = String.raw`(?:sts?|stitch(?:es)?|sc|hdc|htr|dc|tr)(?!\p{L})`;
const EACH_END = String.raw`(?:in )?from (?:each|both|either) (?:ends?|edges?|sides?)(?![\p{L}-])`;
const ENDS = new RegExp(
  String.raw`(?<![\p{L}\p{N}(,.-])(?:(${TOLD_NUMBER}) ${STITCH} ${EACH_END}|(\d{1,4})(?:st|nd|rd|th) ${STITCH} ${EACH_END})`,
  'dgiu',
);
const MIDDLE = new RegExp(
  String.raw`(?:\b(?:cent(?:re|er|ral)|middle) (${TOLD_NUMBER}) ${STITCH}|(?<![\p{L}\p{N}(,.-])(${TOLD_NUMBER}) ${STITCH} (?:(?:are |is )?left )?(?:between (?:the )?(?:markers|marks|marked)|in the (?:middle|cent(?:re|er))))`,
  'diu',
);

/** Letters behind the words in which the middle may be told. */
const NEAR = 160;

const told = looking((prose, kind): readonly Told[] => {
  if (kind === 'row' || !/\bfrom (?:each|both|either)\b/iu.test(prose)) return [];
  return [...prose.matchAll(ENDS)].map((match, i, all) => {
    const own = match.indices![1] ?? match.indices![2]!;
    const end = match.index + match[0].length;
    const before = /[^.!?]*$/u.exec(prose.slice(0, match.index))![0];
    const after = prose.slice(end, Math.min(end + NEAR, all[i + 1]?.index ?? prose.length));
    const found = MIDDLE.exec(after);
    const at = found === null ? undefined : (found.indices![1] ?? found.indices![2]);
    return {
      ends: { words: prose.slice(...own), at: own[0] },
      isMarked: match[2] !== undefined,
      middle: at === undefined ? null : { words: after.slice(...at), at: end + at[0] },
      sentence: `${before}${match[0]}${/^[^.!?]*/u.exec(after)![0]}`,
      from: match.index,
      to: end,
    };
  });
});

/** The pieces that a sentence names; all of them where it names none. */
function piecesIn({ pieces }: Study, sentence: string): readonly PieceStudy[] {
  const low = sentence.toLowerCase();
  const named = pieces.filter(({ piece: { name } }) => {
    const word = name.trim().toLowerCase();
    return word !== '' && low.includes(word);
  });
  return (named.length > 0 ? named : pieces).filter((piece) => !isWrong(piece));
}

/** The rows that words may be meant for, by their counts in a size: the one before, or any of the pieces named. */
function countsFor(study: Study, node: string, sentence: string, size: number): readonly number[] {
  const place = blockAt(study, node);
  if (place !== null) {
    if (isWrong(place.piece)) return [];
    const count = rowsBefore(place)?.sizes[size]?.tally.stitches;
    return count === undefined ? [] : [count];
  }
  return piecesIn(study, sentence).flatMap(({ blocks }) =>
    blocks.flatMap(({ sizes }) => {
      const own = sizes[size];
      return own == null || own.rows === 0 ? [] : [own.tally.stitches];
    }),
  );
}

export const endsInWordsOff: Rule = {
  code: 'ends-in-words-off',
  severity: 'error',
  title: 'Stitches are counted from each end of a row that has not so many',
  reason:
    'Makers mark shoulders, necks and bands by counting in from both ends. If the numbers do not go into the row, the two marks cross, or the middle has another width than the words promise.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const [ends, count] = [number(data, 'ends'), number(data, 'count')];
      if (data.middle === null)
        return `${ends} sts from each end are ${2 * ends}, but the row has ${count}; put the number or the row right`;
      const left = count - 2 * ends;
      return `${ends} sts from each end of ${count} leave ${left} in the middle and not ${number(data, 'middle')}; put the numbers or the row right`;
    }),
  example: null,
  sample: { ends: 40, count: 72, middle: null },
  check: (study) =>
    told(study.pattern).flatMap(({ text: { node, text: prose }, hits }) => {
      const place = blockAt(study, node);
      const own = place === null ? null : place.piece.blocks[place.at]!;
      const { sizes } = study.pattern;
      const read = ({ words, at }: Number) => valuesTold(words, sizes.length, { own, text: prose, from: at });
      return hits.flatMap(({ ends, isMarked, middle, sentence, from, to }) => {
        const values = read(ends);
        const middles = middle === null ? null : read(middle);
        if (values === null) return [];
        const data = sizes.map((_, i) => {
          const value = values[i] ?? null;
          const counts = countsFor(study, node, sentence, i);
          if (value === null || counts.length === 0) return null;
          const most = Math.max(...counts);
          if (2 * value > most) return { ends: value, count: most, middle: null };
          const left = middles?.[i] ?? null;
          const withMarked = isMarked && counts.includes(2 * (value - 1) + (left ?? 0));
          if (left === null || withMarked || counts.includes(2 * value + left)) return null;
          return { ends: value, count: counts.at(-1)!, middle: left };
        });
        return foundIn(endsInWordsOff, study, { node, text: prose, from, to }, data);
      });
    }),
};
