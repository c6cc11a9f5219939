/** The finishing joins a part that no piece of the pattern makes. */
import type { Pattern } from '../../document/pattern.ts';
import { quoted } from '../../findings/phrases.ts';
import { remembered } from '../remember.ts';
import { found, type Rule } from '../rule.ts';

/** Parts that are pieces of their own wherever they are sewn on. Common practice, no source. */
const PARTS =
  /(?<![\p{L}-])(sleeves?|pockets?|collar|hood|cuffs?|straps?|belt|ears?|arms?|legs?|tail|wings?|handles?|button band|gussets?|flaps?|linings?)(?![\p{L}-])(?! (?:edge|edges|opening|openings|seam|seams|hole|holes|cap|caps|length))/giu;
const SEWS = /\b(?:sew|sewn|join|attach|set|seam|whipstitch|stitch|fasten|pin)\b/iu;

interface Named {
  readonly part: string;
  readonly from: number;
  readonly to: number;
}

const partsIn = remembered((text): readonly Named[] => {
  let at = 0;
  return text.split(/(?<=[.!?])\s+/u).flatMap((sentence) => {
    const start = text.indexOf(sentence, at);
    at = start + sentence.length;
    if (!SEWS.test(sentence)) return [];
    return [...sentence.matchAll(PARTS)].map((match) => ({
      part: match[1]!,
      from: start + match.index,
      to: start + match.index + match[0].length,
    }));
  });
});

const stem = (word: string): string => word.toLowerCase().replace(/s$/u, '');

/** Everything that pieces are called, or tell of: their names, headings, row titles and words. */
function isMade({ pieces, notions }: Pattern, part: string): boolean {
  const word = stem(part);
  const says = (text: string | null) => text?.toLowerCase().includes(word) === true;
  return (
    notions.some(({ name }) => says(name)) ||
    pieces.some(
      ({ name, blocks }) =>
        says(name) ||
        blocks.some((block) => {
          switch (block.type) {
            case 'row':
              return says(block.title) || says(block.text.text);
            case 'prose':
              return says(block.text.text);
            case 'heading':
              return says(block.text);
            case 'shaping':
              return says(block.shaped.text.text) || says(block.even.text.text);
            default:
              return false;
          }
        }),
    )
  );
}

export const pieceInWordsNotThere: Rule = {
  code: 'piece-in-words-not-there',
  severity: 'error',
  title: 'The finishing names a part that no piece makes',
  reason:
    'It is left over from another pattern, or the piece was forgotten. Nobody can sew on what was never made.',
  message: (facts) =>
    `${quoted(facts[0]!.fact.data, 'part')} is to be sewn on here, but no piece of the pattern makes one; write the piece, or take the words out`,
  example: null,
  sample: { part: 'sleeves' },
  check: (study) =>
    study.pattern.finishing.flatMap(({ text }, i) =>
      partsIn(text, '').flatMap(({ part, from, to }) =>
        isMade(study.pattern, part)
          ? []
          : [found(pieceInWordsNotThere, study, { node: `finishing:${i}`, text, from, to }, { part })],
      ),
    ),
};
