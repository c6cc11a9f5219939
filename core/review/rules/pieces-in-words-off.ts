/** A text tells of another number of a piece than is made. */
import { number, quote, quoted } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { NUMBER_WORD, numberTold } from '../told-numbers.ts';

/** "Three straight panels", "both sleeves", "4 pockets": a number right before a plural, with at most two words between. */
const COUNTED = new RegExp(
  String.raw`(?<![\p{L}\p{N}.,/–-])(both|\d{1,2}|${NUMBER_WORD})\s+((?:\p{Ll}[\p{L}-]*\s+){0,2})(\p{L}{3,}s)(?![\p{L}-])`,
  'giu',
);

interface Counted {
  readonly from: number;
  readonly to: number;
  readonly count: number;
  readonly noun: string;
  /** Words between the number and the noun. */
  readonly between: string;
}

const counted = looking((prose, kind): readonly Counted[] =>
  kind === 'row'
    ? []
    : [...prose.matchAll(COUNTED)].flatMap((match): readonly Counted[] => {
        const [whole, told = '', between = '', noun = ''] = match;
        const count = /^both$/iu.test(told) ? 2 : numberTold(told);
        return count === null
          ? []
          : [{ from: match.index, to: match.index + whole.length, count, noun, between }];
      }),
);

const singular = (word: string): string => word.toLowerCase().replace(/(?<!s)s$/u, '');

export const piecesInWordsOff: Rule = {
  code: 'pieces-in-words-off',
  severity: 'warning',
  title: 'A text tells of another number of a piece than is made',
  reason:
    'How many are made is printed beside the name of the piece, and yarn and hours are reckoned for so many.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    return `${quote(voice.words)} is told here, but ${quoted(data, 'piece')} is made ${times(number(data, 'made'))}; put the number right, or how many are made`;
  },
  example: null,
  sample: { piece: 'Panels', made: 2 },
  check: (study) => {
    const { pieces } = study.pattern;
    return counted(study.pattern).flatMap(({ text: { node, text }, hits }) =>
      hits.flatMap(({ from, to, count, noun, between }) => {
        const own = singular(noun);
        const named = pieces.filter(({ name }) => singular(name.trim().split(/\s+/u).at(-1) ?? '') === own);
        const [piece] = named;
        // "Two front panels" of several pieces are some of them; what is cut or left is no piece.
        if (
          piece === undefined ||
          named.length > 1 ||
          /\b(?:of|more|other|last|first|next)\b/iu.test(between)
        )
          return [];
        const isWhole = piece.name.trim().split(/\s+/u).length === 1;
        if (!isWhole || piece.make === count) return [];
        return [
          found(piecesInWordsOff, study, { node, text, from, to }, { piece: piece.name, made: piece.make }),
        ];
      }),
    );
  },
};

const times = (n: number): string => (n === 1 ? 'once' : n === 2 ? 'twice' : `${n} times`);
