/** Prose names a row by a number that no piece reaches. */
import { number, quote, text } from '../../findings/phrases.ts';
import type { PieceStudy } from '../../study/index.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { tellsHow } from '../texts.ts';

interface Named {
  readonly number: number;
  readonly from: number;
  readonly to: number;
}

const ROW =
  /(?<![\d)] )(?<!every )(?<!\p{L})(?:Row|Rnd|Round|row|rnd|round)s? (\d{1,4})(?!\d|[.,]\d| (?:more )?times| (?:sts|st|stitches|cm|in)(?!\p{L}))/gu;

const rowsNamed = looking((text, kind): readonly Named[] =>
  kind === 'row'
    ? []
    : [...text.matchAll(ROW)].map((match) => ({
        number: Number(match[1]),
        from: match.index,
        to: match.index + match[0].length,
      })),
);

/** The highest number that a row of a piece has in any size. */
function lastOf({ blocks }: PieceStudy): number {
  let last = 0;
  for (const { sizes } of blocks) for (const size of sizes) last = Math.max(last, size?.last ?? 0);
  return last;
}

export const rowInWordsNotThere: Rule = {
  code: 'row-in-words-not-there',
  severity: 'error',
  title: 'A paragraph names a row that is not there',
  reason:
    'Rows were added or taken out, and the words kept the old number. The reader looks for a row and finds none.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const words = voice.words.trim() === '' ? text(data, 'words') : quote(voice.words);
    return `${words} is named here, but the longest piece has ${number(data, 'last')} rows; put the number right`;
  },
  example: null,
  sample: { words: 'Row 48', last: 44 },
  check: (study) => {
    const isHow = tellsHow(study.pattern);
    const named = rowsNamed(study.pattern).flatMap(({ text, hits }) =>
      isHow(text.node) ? hits.map((row) => ({ text, row })) : [],
    );
    if (named.length === 0) return [];
    const last = Math.max(0, ...study.pieces.map(lastOf));
    if (last === 0) return [];
    return named.flatMap(({ text: { node, text }, row: { number: n, from, to } }) =>
      n > last
        ? [found(rowInWordsNotThere, study, { node, text, from, to }, { words: text.slice(from, to), last })]
        : [],
    );
  },
};
