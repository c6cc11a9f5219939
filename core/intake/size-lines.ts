/**
 * What a line among the sizes of an old pattern is: labels, several measurements, two lengths of an area. It says
 * what stands there; the forms of a pattern are made elsewhere.
 */
import { numbersIn } from './numbers.ts';
import { type Measured, measuredIn, sizesFrom } from './sizes.ts';

/** Whether both lines name the same sizes. */
export const sameLabels = (a: string, b: string): boolean => {
  const [left, right] = [sizesFrom(a, ''), sizesFrom(b, '')];
  return left !== null && right !== null && left.every(({ label }, i) => label === right[i]?.label);
};

/** Whether words may be the labels of sizes: short, no sentence. */
export const isLabels = (words: string): boolean =>
  words.length < 160 &&
  !/\b(?:multiple|pattern|hook|yarn|gauge|tension)\b/iu.test(words) &&
  !/[.!?]\s+\p{Lu}/u.test(words) &&
  !/\b(?:is|are|was|were)\b/iu.test(words);

/** "Women's S, M, L. Instructions are given for S, with M and L in parentheses.": the labels before such a sentence. */
export function labelsFirst(words: string): string | null {
  const found =
    /^([^.]{1,120})\.\s+(?:the\s+)?(?:instructions|directions|pattern|numbers|changes|larger sizes)\b/iu.exec(
      words,
    );
  return found !== null && isLabels(found[1]!) ? found[1]! : null;
}

/** "Wingspan 60 in (152 cm), depth 28 in (71 cm)": several measurements on a line, each with its name; else null. */
export function severalIn(words: string): readonly Measured[] | null {
  const parts = words.split(/\s*;\s*|,\s+(?:and\s+)?(?=\p{L}[^\d,;]*\d)/u);
  if (parts.length < 2) return null;
  const found = parts.map(measuredIn);
  const isWhole = (one: Measured | null): one is Measured =>
    one !== null && one.rest === '' && /\p{L}{3}/u.test(one.name);
  if (!found.every(isWhole)) return null;
  return found.map((one) => ({ ...one, name: one.name.charAt(0).toUpperCase() + one.name.slice(1) }));
}

/** "90 x 120 cm (35 x 47 in)": two lengths without names; null when it is none. */
export function areaIn(words: string): readonly Measured[] | null {
  const found =
    /^([^\d]*)(\d[\d.½¼¾ /]*?)\s*(cm|mm|in|inches|["”])?\s*(?:wide\s*|long\s*|high\s*)?[x×]\s*(\d[\d.½¼¾ /]*?)\s*(cms?|mm|ins?|inches|["”])(?=\W|$)(.*)$/iu.exec(
      words,
    );
  if (found === null) return null;
  const [, before = '', width = '', , length = '', unit = '', after = ''] = found;
  const rest = `${before} ${after}`;
  const list = (number: string) => numbersIn(`${number.trim()} ${unit}`)[0];
  const [a, b] = [list(width), list(length)];
  if (a === undefined || b === undefined) return null;
  return [
    { name: 'Width', list: a, other: null, rest },
    { name: 'Length', list: b, other: null, rest: '' },
  ];
}
