/** A text tells a multiple of stitches on which the rows do not work. */
import { number, quote, quoted, text } from '../../findings/phrases.ts';
import type { PieceStudy } from '../../study/index.ts';
import { isWrong, multipleOf, pieceOfNode, worksRepeats } from '../multiples.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { numberTold, ONE_NUMBER } from '../told-numbers.ts';

interface Told {
  readonly multiple: number;
  readonly plus: number;
  readonly from: number;
  readonly to: number;
}

const STITCHES = '(?: ?(?:sts?|stitches|chs?|chains?)(?!\\p{L}))?';
const MULTIPLE = new RegExp(
  String.raw`\bmultiples? of (${ONE_NUMBER})${STITCHES}(?:,? ?(?:plus|\+|and) (?:an? extra |another )?(${ONE_NUMBER})${STITCHES})?`,
  'giu',
);

const told = looking((prose, kind): readonly Told[] =>
  kind === 'row' || !/multiple/iu.test(prose)
    ? []
    : [...prose.matchAll(MULTIPLE)].flatMap((match) => {
        const multiple = numberTold(match[1]!);
        const plus = match[2] === undefined ? 0 : numberTold(match[2]);
        return multiple === null || plus === null || multiple < 2
          ? []
          : [{ multiple, plus, from: match.index, to: match.index + match[0].length }];
      }),
);

/** The told words with the right numbers; null where a number would have to be put in or taken out. */
function righted(words: string, { multiple, plus }: { multiple: number; plus: number }): string | null {
  const numbers = [...words.matchAll(/\d+/gu)];
  if (numbers.length !== 2 || plus === 0) return null;
  const by = [multiple, plus];
  return words.replace(/\d+/gu, () => String(by.shift()));
}

/** Whether a piece whose own multiple is not known begins on the told one in every size: then it may be meant. */
function stands({ starts, blocks }: PieceStudy, multiple: number, plus: number): boolean {
  const first = blocks.find(({ sizes }) => sizes.some((size) => size !== null && size.rows > 0));
  return starts.every((start, i) => {
    const count = start ?? first?.sizes[i]?.tally.stitches ?? null;
    return count === null || (count - plus) % multiple === 0;
  });
}

export const multipleInWordsOff: Rule = {
  code: 'multiple-in-words-off',
  severity: 'error',
  title: 'A text tells a multiple on which the rows do not work',
  reason:
    'Makers who want another width go by the multiple. On a wrong one the last repeat of the first patterned row does not come out, after a whole foundation has been worked.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const [multiple, plus] = [number(data, 'multiple'), number(data, 'plus')];
    const right = `a multiple of ${multiple} sts${plus === 0 ? '' : ` plus ${plus}`}`;
    return `${quote(voice.words || text(data, 'words'))} is not what the rows need: those of ${quoted(data, 'piece')} come out on ${right}; put the numbers or the rows right`;
  },
  fix: (facts) => {
    const by = text(facts[0]!.fact.data, 'by');
    return by === '' ? null : { label: `Write "${by}"`, replacement: by };
  },
  example: null,
  late: true,
  sample: { words: 'multiple of 4 sts plus 1', piece: 'Front', multiple: 3, plus: 2, by: '' },
  check: (study) =>
    told(study.pattern).flatMap(({ text: { node, text: words }, hits }) => {
      const own = pieceOfNode(study.pattern, node);
      const meant = study.pieces.filter(
        (piece) => worksRepeats(piece) && (own === null || piece.piece.id === own),
      );
      const all = meant.map((piece) => ({ piece, is: multipleOf(study, piece) }));
      const known = all.flatMap(({ piece, is }) => (is === null ? [] : [{ piece, is }]));
      const [first] = known;
      if (first === undefined || meant.some(isWrong)) return [];
      return hits.flatMap(({ multiple, plus, from, to }) => {
        const agrees = all.some(({ piece, is }) =>
          is === null
            ? stands(piece, multiple, plus)
            : multiple % is.multiple === 0 && is.rests.has(plus % is.multiple),
        );
        if (agrees) return [];
        const near = known.find(({ is }) => is.multiple === multiple) ?? first;
        const by = righted(words.slice(from, to), near.is);
        const data = {
          words: words.slice(from, to),
          piece: near.piece.piece.name,
          multiple: near.is.multiple,
          plus: near.is.plus,
          by: by ?? '',
        };
        return [found(multipleInWordsOff, study, { node, text: words, from, to }, data)];
      });
    }),
};
