/**
 * Numbers of several sizes in running text, with their unit: "81 (86, 91) cm", "32[34:36]in", "10/12/14 cm". For
 * what stands before the rows; rows have a reader of their own. It finds lists and does not say what they measure.
 */
import type { Span } from '../finding.ts';
import { parseQuantity, type Quantity } from '../trade/units.ts';

/** Numbers that belong together. */
export interface NumberList extends Span {
  /** One for each entry as written; null for a dash. */
  readonly values: readonly (number | null)[];
  readonly unit: Exclude<Quantity['unit'], '%'>;
}

/** A line of materials with more is none: what stands behind is not searched. */
const MOST_SEARCHED = 4_000;

const GLYPHS = '¼½¾⅛⅜⅝⅞⅓⅔';
const NUMBER = `(?:\\d{1,5}(?:\\.\\d{1,3})?(?:\\s?[${GLYPHS}]|[ -]\\d\\/\\d{1,2})?|[${GLYPHS}])`;
const UNIT = `(?:centimet(?:re|er)s?|cms?|mm|inch(?:es)?|ins?\\b\\.?|["”″])`;
const ENTRY = `(?:${NUMBER}|[-–—])(?:\\s?${UNIT})?`;
const LIST = new RegExp(
  `(?<![\\p{L}\\d.])(${NUMBER})(?:\\s?(${UNIT}))?((?:\\s*[([{]\\s*${ENTRY}(?:\\s*[,;:/|–-]\\s*${ENTRY})*\\s*[)\\]}])*)((?:\\s+[-–—]\\s+${NUMBER}){2,}|(?:\\s*[:/|]\\s*${NUMBER})*)(?:\\s?(${UNIT}))?`,
  'giu',
);
const EACH = new RegExp(`(${NUMBER})|[-–—]`, 'gu');

/** The value of one number as it is written: "36½", "36 1/2", "36.5". */
export function numberOf(text: string): number | null {
  const quantity = parseQuantity(text.trim().replace(/(\d)-(?=\d\/)/u, '$1 '));
  return quantity === null ? null : quantity.value;
}

function unitOf(word: string | undefined): NumberList['unit'] | null {
  if (word === undefined) return null;
  const lower = word.toLowerCase();
  if (lower.startsWith('c')) return 'cm';
  return lower === 'mm' ? 'mm' : 'in';
}

/** Entries between brackets; separators between them are no dashes. */
function entriesOf(text: string): readonly (number | null)[] {
  return text
    .replace(/(?<=\d)\s+[-–—]\s+(?=\d)/gu, ', ')
    .split(/[()[\]{},;:/|]+(?!\d{1,2}\b(?<=\d\/\d{1,2}))/u)
    .flatMap((part) => (part.trim() === '' ? [] : [part.trim()]))
    .flatMap((part): (number | null)[] => {
      if (/^[-–—]$/u.test(part)) return [null];
      const inner = [...part.matchAll(EACH)].filter(([, number]) => number !== undefined);
      return inner.map(([found]) => numberOf(found));
    });
}

/** Every number or list of numbers in a text, in order. A number alone is a list of one. */
export function numbersIn(text: string): readonly NumberList[] {
  const found: NumberList[] = [];
  const list = new RegExp(LIST.source, LIST.flags);
  const searched = text.slice(0, MOST_SEARCHED);
  for (let match = list.exec(searched); match !== null; match = list.exec(searched)) {
    const [whole, first = '', unitFirst, brackets = '', open = '', unitLast] = match;
    const from = match.index;
    const inner = brackets === '' ? undefined : new RegExp(UNIT, 'iu').exec(brackets)?.[0];
    const own = unitOf(unitFirst);
    // "10 cm (4 in)", "120 cm / 47 in": the same length in another unit, no second size.
    const alone = brackets === '' && open === '';
    // "10 cm in dc" too: behind its unit a number is whole, and "in" is a word.
    const apart =
      own !== null &&
      ((inner !== undefined && unitOf(inner) !== own) ||
        (brackets === '' && open !== '') ||
        (alone && unitLast !== undefined));
    const words = apart
      ? whole.slice(0, first.length + whole.slice(first.length).indexOf(unitFirst!) + unitFirst!.length)
      : whole;
    const to = from + words.trimEnd().length;
    list.lastIndex = Math.max(to, from + 1);
    const value = numberOf(first);
    if (value === null) continue;
    const more = apart ? [] : entriesOf(brackets === '' ? open : brackets);
    const unit = (apart ? null : unitOf(unitLast)) ?? own ?? unitOf(inner) ?? 'none';
    found.push({ values: [value, ...more], unit, from, to });
  }
  return found;
}
