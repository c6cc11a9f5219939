/** A text names a size that the pattern does not have, or counts its sizes otherwise. */
import { listed, number, quote, text } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { NUMBER_WORD, numberTold } from '../told-numbers.ts';

interface Said {
  /** How many sizes; null where labels are named. */
  readonly count: number | null;
  readonly labels: readonly string[];
  /** Whether the labels are the first and the last of all, or stand as a list. */
  readonly isRange: boolean;
  readonly isList?: true;
  readonly from: number;
  readonly to: number;
}

const COUNT = new RegExp(
  String.raw`\b(?:in|comes? in|for|has|with|all)\s+(\d{1,2}|${NUMBER_WORD})\s+sizes\b`,
  'giu',
);
/** Labels in the letters of the trade; others are words of any text. */
const LABEL = String.raw`(?:XXS|XS|S|M|L|XL|XXL|XXXL|\d{1,2}X|\d{1,2}XL)`;
const RANGE = new RegExp(
  String.raw`\b[Ss]izes\s+(${LABEL})\s*(?:to|–|-|through)\s*(${LABEL})(?![\p{L}\p{N}])`,
  'gu',
);
/** "Sizes S (XS, M, L)", "sizes XS, S, M and L": three or more. */
const LIST = new RegExp(
  String.raw`\b[Ss]izes:?\s+(${LABEL}(?:\s?[,([/{]\s?(?:and\s)?${LABEL}|\s(?:and|or)\s${LABEL}|[)\]}]){2,})(?![\p{L}\p{N}])`,
  'gu',
);
const ONE = new RegExp(String.raw`\b[Ss]izes?\s+(${LABEL})(?![\p{L}\p{N}/–-])(?!\s+(?:to|through)\b)`, 'gu');

const said = looking((prose, kind): readonly Said[] => {
  if (kind === 'row' || !/sizes?/iu.test(prose)) return [];
  const at = (match: RegExpExecArray) => ({ from: match.index, to: match.index + match[0].length });
  return [
    ...[...prose.matchAll(COUNT)].map((match) => ({
      count: numberTold(match[1]!),
      labels: [],
      isRange: false,
      ...at(match),
    })),
    ...[...prose.matchAll(LIST)].flatMap((match) => {
      const labels = match[1]!.match(new RegExp(LABEL, 'gu')) ?? [];
      return labels.length < 3
        ? []
        : [{ count: null, labels, isRange: false, isList: true as const, ...at(match) }];
    }),
    ...[...prose.matchAll(RANGE)].map((match) => ({
      count: null,
      labels: [match[1]!, match[2]!],
      isRange: true,
      ...at(match),
    })),
    ...[...prose.matchAll(ONE)].map((match) => ({
      count: null,
      labels: [match[1]!],
      isRange: false,
      ...at(match),
    })),
  ].sort((a, b) => a.from - b.from);
});

export const sizesInWordsOff: Rule = {
  code: 'sizes-in-words-off',
  severity: 'warning',
  title: 'A text tells of other sizes than there are',
  reason:
    'Sizes are added and taken out while a pattern grows. Who reads of a size that is not there buys what does not fit.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const words = quote(voice.words || text(data, 'words'));
    const sizes = number(data, 'sizes');
    if (text(data, 'how') === 'order')
      return `${words} tells the sizes in another order than the pattern, which goes from ${text(data, 'all')}; numbers stand in the order of the pattern, so put these in it`;
    return text(data, 'how') === 'count'
      ? `${words} is not so: there ${sizes === 1 ? 'is 1 size' : `are ${sizes} sizes`}; put the number right`
      : `${words} does not go with the sizes, which are ${text(data, 'all')}; put the words or the sizes right`;
  },
  example: null,
  sample: { words: 'in nine sizes', how: 'count', sizes: 10, all: 'XS to 6X' },
  check: (study) => {
    const { sizes } = study.pattern;
    const labels = sizes.map(({ label }) => label.trim().toUpperCase());
    const isLettered = labels.some((label) => new RegExp(`^${LABEL}$`, 'u').test(label));
    const all =
      sizes.length > 3
        ? `${sizes[0]!.label} to ${sizes.at(-1)!.label}`
        : listed(
            sizes.map(({ label }) => label),
            'and',
          );
    return said(study.pattern).flatMap(({ text: { node, text: words }, hits }) =>
      hits.flatMap(({ count, labels: named, isRange, isList, from, to }) => {
        const upper = named.map((label) => label.toUpperCase());
        const places = upper.map((label) => labels.indexOf(label));
        const isOutOfOrder =
          isList === true &&
          places.every((place) => place >= 0) &&
          places.some((place, i) => i > 0 && place < places[i - 1]!);
        const isRight =
          count !== null
            ? // "For 2 sizes work …" among the rows is of some of them.
              count === sizes.length || (count < sizes.length && !node.startsWith('cover:'))
            : sizes.length === 0 ||
              // Where the sizes have names of their own, only what no hook is called is surely a size.
              (!isLettered && !upper.every((label) => label.includes('X'))) ||
              (isRange && node.startsWith('cover:')
                ? upper[0] === labels[0] && upper[1] === labels.at(-1)
                : upper.every((label) => labels.includes(label)));
        return isRight && !isOutOfOrder
          ? []
          : [
              found(
                sizesInWordsOff,
                study,
                { node, text: words, from, to },
                {
                  words: words.slice(from, to),
                  how: isOutOfOrder ? 'order' : count === null ? 'label' : 'count',
                  sizes: sizes.length,
                  all,
                },
              ),
            ];
      }),
    );
  },
};
