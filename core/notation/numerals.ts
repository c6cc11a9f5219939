/**
 * Numbers above twenty written as words, which are several words for one number: "twenty-one", "one hundred and
 * twelve", "thirty-second". Single words up to twenty stay words; `numbers` knows them. Values only, no tokens.
 */

const UNITS = 'one two three four five six seven eight nine'.split(' ');
const TEENS = 'ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(' ');
/** "Twenty" to "ninety". */
export const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
/** "One" to "nineteen", each at the place below its value. */
export const BELOW_TWENTY: readonly string[] = [...UNITS, ...TEENS];
const ORDINALS = 'first second third fourth fifth sixth seventh eighth ninth'.split(' ');

const DASH = '(?:[-‐‑]|[ \\t\\u00A0]+)';
const SPACE = '[ \\t\\u00A0]+';
const UNDER_HUNDRED = `(?:(?<tens>${TENS.join('|')})(?:${DASH}(?:(?<unit>${UNITS.join('|')})|(?<nth>${ORDINALS.join('|')})))?|(?<teen>${TEENS.join('|')})|(?<low>${UNITS.join('|')}))`;
const NUMERAL = new RegExp(
  `(?:(?<hundreds>${UNITS.join('|')})${SPACE}hundred(?:${SPACE}(?:and${SPACE})?(?=${UNDER_HUNDRED.replaceAll(/\?<\w+>/g, '?:')}(?!\\p{L})))?)?(?:${UNDER_HUNDRED})?(?!\\p{L})`,
  'iuy',
);

/** A number in words and where it ends. */
export interface Numeral {
  readonly value: number;
  /** "Twenty-first": it counts places. */
  readonly ordinal: boolean;
  readonly to: number;
}

/** The number above twenty that begins in `text` at `at`, in words; null for any other words. */
export function readNumeral(text: string, at: number): Numeral | null {
  NUMERAL.lastIndex = at;
  const found = NUMERAL.exec(text);
  const parts = found?.groups;
  if (!found || !parts || found[0] === '') return null;
  const { hundreds, tens, unit, nth, teen, low } = parts;
  if (hundreds === undefined && tens === undefined) return null;
  // "Twenty" alone is a word that `numbers` knows.
  if (hundreds === undefined && tens!.toLowerCase() === 'twenty' && !unit && !nth) return null;
  const place = (list: readonly string[], word: string | undefined): number =>
    word === undefined ? -1 : list.indexOf(word.toLowerCase());
  const value =
    (place(UNITS, hundreds) + 1) * 100 +
    (tens === undefined ? 0 : (place(TENS, tens) + 2) * 10) +
    (place(UNITS, unit) + 1) +
    (place(ORDINALS, nth) + 1) +
    (teen === undefined ? 0 : place(TEENS, teen) + 10) +
    (place(UNITS, low) + 1);
  return { value, ordinal: nth !== undefined, to: at + found[0].length };
}
