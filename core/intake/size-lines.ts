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
  !/\b(?:is|are|was|were)\b/iu.test(words) &&
  !/\b(?:cm|mm|in|ins|inches)\s(?:across|wide|high|tall|long|deep|round)\b/iu.test(words);

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
  const named = namedBehind(words);
  if (named !== null) return named;
  const parts = words
    .replace(/\.$/u, '')
    .split(/\s*;\s*|,\s+(?:and\s+)?(?=\p{L}[^\d,;]*\d)|(?<!\d)\.\s+(?=\p{Lu}[^\d.;]*\d)/u);
  if (parts.length < 2) return null;
  const found = parts.map(measuredIn);
  const isWhole = (one: Measured | null): one is Measured =>
    one !== null && one.rest === '' && /\p{L}{3}/u.test(one.name);
  if (!found.every(isWhole)) return null;
  return found.map((one) => ({ ...one, name: one.name.charAt(0).toUpperCase() + one.name.slice(1) }));
}

/** What a length is called by the word behind it. */
const BEHIND: readonly (readonly [RegExp, string])[] = [
  [/^across$/iu, 'Across'],
  [/^in diameter$/iu, 'Diameter'],
  [/^(?:wide|in width)$/iu, 'Width'],
  [/^(?:high|tall|in height)$/iu, 'Height'],
  [/^(?:long|in length)$/iu, 'Length'],
  [/^(?:deep|in depth)$/iu, 'Depth'],
  [/^(?:round|around)$/iu, 'Circumference'],
];

/** "about 15 (20) cm across and 10 (14) cm high": every length with its name behind it; else null. */
function namedBehind(words: string): readonly Measured[] | null {
  const parts = words.replace(/\.$/u, '').split(/\s*[;,]\s+(?:and\s+)?(?=\d)|\s+(?:and|by|x)\s+(?=\d)/iu);
  const found = parts.map((part): Measured | null => {
    const told = part.replace(/^(?:about|approx(?:imately)?\.?)\s+/iu, '');
    const one = measuredIn(told);
    if (one === null || one.name !== '') return null;
    const behind = told.slice((one.other ?? one.list).to).trim();
    const name = BEHIND.find(([word]) => word.test(behind))?.[1];
    return name === undefined ? null : { ...one, name, rest: '' };
  });
  return found.length > 1 && found.every((one) => one !== null) ? found : null;
}

const BULLET = /^(?:[-–*•]\s*)?/u;
/** "Baby (head 40 cm)", "- Child: head 48 cm / 19 in". */
const LABELLED = /^(\p{L}[\p{L}\d /–-]{0,24}?)\s*(?:\(([^()]*\d[^()]*)\)|:\s*(\D.*\d.*))$/u;

/** A list of the sizes, each on a line with the same measurement, and the lines behind it; null when there is none. */
export function sizesListed(lines: readonly string[]): {
  readonly labels: string;
  readonly measured: readonly string[];
  readonly rest: readonly string[];
} | null {
  const told = lines.map((line) => {
    const match = LABELLED.exec(line.replace(BULLET, '').replace(/\.$/u, ''));
    const one = match === null ? null : measuredIn(match[2] ?? match[3] ?? '');
    const isOne = one !== null && one.rest === '' && one.list.values.length === 1;
    return isOne ? { label: match![1]!.trim(), one } : null;
  });
  const first = told[0]?.one ?? null;
  if (first === null || !/\p{L}{3}/u.test(first.name)) return null;
  const isLike = ({ name, list, other }: Measured) =>
    name.toLowerCase() === first.name.toLowerCase() &&
    list.unit === first.list.unit &&
    other?.unit === first.other?.unit;
  const end = told.findIndex((each) => each === null || !isLike(each.one));
  const own = told.slice(0, end < 0 ? told.length : end).flatMap((each) => each ?? []);
  if (own.length < 2) return null;
  const parts = own.map(({ one }) => one);
  const listed = ([one, ...more]: readonly (string | number | null)[]) => `${one} (${more.join(', ')})`;
  const value = (of: (one: Measured) => number | null) => listed(parts.map(of));
  const second =
    first.other === null ? '' : ` / ${value((one) => one.other!.values[0]!)} ${first.other.unit}`;
  return {
    labels: listed(own.map(({ label }) => label)),
    measured: [`${first.name}: ${value((one) => one.list.values[0]!)} ${first.list.unit}${second}`],
    rest: lines.slice(own.length),
  };
}

const RANGE = /(\d{1,3}(?:\.\d)?[½¼¾]?)\s?[–-]\s?(\d{1,3}(?:\.\d)?[½¼¾]?)(?![\d/–-])/gu;

/** "28–30 (32–34, 36–38) in": from and to, each a list with a number for every size; null when it has no such ranges. */
export function rangesIn(words: string): readonly Measured[] | null {
  const found = words.match(RANGE) ?? [];
  if (found.length < 2 || /\d/u.test(words.replace(RANGE, ''))) return null;
  const ends = [' from', ' up to'].map((end, i) => {
    const one = measuredIn(words.replace(RANGE, (_, from: string, to: string) => (i === 0 ? from : to)));
    return one === null || one.list.values.length < 2 || one.rest !== ''
      ? null
      : { ...one, name: `${one.name}${end}`.trim() };
  });
  return ends.every((one) => one !== null) ? ends : null;
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
