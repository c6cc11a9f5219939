/**
 * Lengths that stand in running text, typed by hand: "30 cm", "4 to 6 in", "30 (32, 34½) cm". Figures are left
 * alone, because an edition writes them in both units by itself. It reads and compares; it judges nothing.
 */
import type { Span } from '../finding.ts';
import { looking } from './scan.ts';

export interface TypedLength extends Span {
  /** In centimetres: one, or one for each entry of a list; of a range its far end. */
  readonly cm: readonly number[];
  readonly system: 'metric' | 'imperial';
}

const GLYPHS: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};
const FRACTION = '[½¼¾⅓⅔⅛⅜⅝⅞]';
const ONE = String.raw`(?:\d{1,4}(?:\.\d{1,3})?(?: \d\/\d{1,2}|${FRACTION})?|\d\/\d{1,2}|${FRACTION})`;
const LIST = String.raw`${ONE}(?:[ \u00A0]?[([]${ONE}(?:, ?${ONE})*[)\]])*`;
const RANGE = String.raw`(?:${ONE}[ \u00A0]?(?:to|–|-)[ \u00A0]?)?`;
/** "in" is a unit only where what follows cannot be a place: "sc 2 in next st" is no length. */
const INCH = String.raw`(?:inch(?:es)?|ins?\.?(?=\s*(?:$|[.,;:)\]/(]|[x×]\s?\d|(?:from|long|wide|tall|deep|high|across|or|and|above|below|at|before|after|square|apart|for|larger|smaller)\b))|(?<!"[^"]{0,40})["″])`;
const LENGTH = new RegExp(
  String.raw`(?<![\p{L}\p{N}.,/½¼¾-])${RANGE}(${LIST})[ \u00A0-]?(?:(cm|centimet(?:re|er)s?|mm)(?![\p{L}])|${INCH}(?!\p{L}))`,
  'gu',
);

function numberIn(words: string): number {
  let sum = 0;
  const plain = words.replace(/[½¼¾⅓⅔⅛⅜⅝⅞]/u, (glyph) => {
    sum += GLYPHS[glyph]!;
    return '';
  });
  for (const part of plain.split(' ')) {
    const [above, below] = part.split('/');
    const value = below === undefined ? Number(above) : Number(above) / Number(below);
    if (Number.isFinite(value)) sum += value;
  }
  return sum;
}

/** Every typed length of a text, in order. Millimetres are left out: hooks are measured in them, not fabric. */
export function lengthsIn(text: string): readonly TypedLength[] {
  return /\d|[½¼¾]/u.test(text)
    ? [...text.matchAll(LENGTH)].flatMap((match): readonly TypedLength[] => {
        const [whole, list = '', metric] = match;
        if (metric === 'mm') return [];
        const step = metric === undefined ? 2.54 : 1;
        const cm = (list.match(new RegExp(ONE, 'gu')) ?? []).map((word) => numberIn(word) * step);
        return [
          {
            from: match.index,
            to: match.index + whole.length,
            cm,
            system: metric === undefined ? 'imperial' : 'metric',
          },
        ];
      })
    : [];
}

/** The typed lengths of a pattern's texts. */
export const typedLengths = looking(lengthsIn);

/** What may stand between a length and the same in the other unit. */
const BETWEEN = /^\s*(?:[(/=]|or)\s*(?:about|approx\.?|ca\.?|roughly|~|=)?\s*$/iu;

/** Whether the two are one length told in both units, by how they stand. */
export function isSameTold(text: string, first: TypedLength, second: TypedLength): boolean {
  return first.system !== second.system && BETWEEN.test(text.slice(first.to, second.from));
}
