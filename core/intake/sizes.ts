/**
 * Sizes and measurements from the lines over a pattern: labels in whatever brackets they stand, whom they are for,
 * and lines of the sizing sheet with the lengths as they were typed. What is no measurement comes back as words.
 */
import type { Audience, Line, Quantity, Size } from '../document/pattern.ts';
import { toCm } from '../trade/units.ts';
import { type NumberList, numbersIn } from './numbers.ts';
import { intakeWords } from './sentences.ts';

/** Labels between brackets and separators, as written; units that stand behind all of them are not labels. */
function labelsOf(words: string): readonly string[] {
  const list = words
    .replace(/\s*[.;]\s*$/u, '')
    .split(/\s*[([{)\]},;|]\s*|\s*:\s*|\s+\/\s+|\s+(?:and|&)\s+/u)
    .map((label) => label.replace(/^(?:and|to fit)\s+/iu, '').trim())
    .filter(
      (label) =>
        label !== '' && !/^(?:cm|in|inch(?:es)?|mm|"|only|years?|yrs?|months?|mths?)(?: old)?$/iu.test(label),
    );
  if (list.length > 1) return list;
  const [one = ''] = list;
  const dashed = one.split(/\s+[-–—]\s+/u);
  if (dashed.length > 2) return dashed;
  if (/^[^/\s]+(?:\/[^/\s]+)+$/u.test(one) && !/^\d+\/\d+\s*(?:months|mths|m|years|yrs)$/iu.test(one))
    return one.split('/');
  if (/^\p{Lu}+(?:[-–]\p{Lu}+){2,}$/u.test(one)) return one.split(/[-–]/u);
  return list;
}

const AUDIENCES: readonly (readonly [RegExp, Audience])[] = [
  [/\b(?:bab(?:y|ies)|newborn|infant|preemie|months?|mths?)\b/iu, 'baby'],
  [/\b(?:child(?:ren)?|kids?|toddlers?|girls?|boys?|years?|yrs?)\b/iu, 'child'],
  [/\b(?:teens?|youths?)\b/iu, 'youth'],
  [/\b(?:wom[ae]n|lad(?:y|ies))\b/iu, 'woman'],
  [/(?<!wo)\bm[ae]n(?:['’]?s)?\b/iu, 'man'],
];

const audienceIn = (words: string): Audience | null =>
  AUDIENCES.find(([pattern]) => pattern.test(words))?.[1] ?? null;

/** Age in years that a label names: "6–12 months", "4 years", "2T"; null when it names none. */
function ageOf(label: string, about: string): readonly [number, number] | null {
  const found = /(\d{1,2})\s*(?:[-–/]|to)?\s*(\d{1,2})?\s*(months?|mths?|mos?|m\b|years?|yrs?|y\b)?/iu.exec(
    label,
  );
  if (found === null) return /newborn/iu.test(label) ? [0, 0.25] : null;
  const unit = found[3] ?? /\b(months?|mths?|years?|yrs?)\b/iu.exec(about)?.[1];
  if (unit === undefined) return null;
  const per = /^y/iu.test(unit) ? 1 : 12;
  const from = Number(found[1]) / per;
  const to = found[2] === undefined ? from : Number(found[2]) / per;
  return from <= to && to <= 18 ? [from, to] : null;
}

/** The sizes that a line of labels names; null when it names fewer than one. */
export function sizesFrom(words: string, about: string): readonly Size[] | null {
  const key =
    /^((?:wom[ae]n|m[ae]n|lad(?:y|ies)|child(?:ren)?|bab(?:y|ies)|kids?|adults?|teens?|youths?)(?:['’]?s)?['’]?)\s+(?:sizes?\s+)?(?![/,;|]|[([{][^)\]}]*\b(?:child|adult|wom[ae]n|m[ae]n|bab|teen|kid|youth|toddler))(?=\S)/iu.exec(
      words,
    );
  const list = labelsOf(key === null ? words : words.slice(key[0].length));
  if (list.length === 0 || list.length > 40 || list.some((label) => label.length > 32)) return null;
  if (new Set(list.map((label) => label.toLowerCase())).size < list.length) return null;
  const whom = audienceIn(words) ?? audienceIn(about);
  return list.map((label, i) => {
    const age = whom === 'baby' || whom === 'child' ? ageOf(label, words) : null;
    const own = audienceIn(label) ?? whom;
    return { id: `size-${i + 1}`, label, audience: own ?? 'other', chart: null, age };
  });
}

/** A measurement as a line of text gives it. */
export interface Measured {
  /** "To fit bust", "Length". */
  readonly name: string;
  readonly list: NumberList;
  /** The same in the other unit, where it is given. */
  readonly other: NumberList | null;
  /** Words that are neither name nor numbers. */
  readonly rest: string;
}

const isLength = (list: NumberList): boolean => list.unit !== 'none';

/** The measurement in a line; null when it has no numbers with a unit. */
export function measuredIn(words: string): Measured | null {
  const lists = numbersIn(words);
  const first = lists.find(isLength);
  if (first === undefined) return null;
  const other = lists.find(
    (list) =>
      isLength(list) &&
      list.from > first.to &&
      list.unit !== first.unit &&
      list.values.length === first.values.length,
  );
  const beyond = lists.filter((list) => list !== first && list !== other && isLength(list));
  if (beyond.length > 0) return null;
  const name = words
    .slice(0, first.from)
    .replace(/[\s:=,(–-]+$/u, '')
    .trim();
  const between = other === undefined ? '' : words.slice(first.to, other.from);
  const after = words.slice((other ?? first).to);
  const rest = `${between} ${after}`
    .replace(/[\s/()[\],.;=:–-]+|\b(?:or|approx(?:imately)?|about|around)\b/giu, ' ')
    .trim();
  return { name, list: first, other: other ?? null, rest };
}

/** What a body's measurement is called in the charts. */
const BODY: readonly (readonly [RegExp, string])[] = [
  [/\bbust\b/iu, 'bust'],
  [/\bchest\b/iu, 'chest'],
  [/\bwaist\b/iu, 'waist'],
  [/\bhips?\b/iu, 'hip'],
  [/\bhead\b/iu, 'head'],
  [/\bfoot\b/iu, 'foot_length'],
  [/\bhand\b/iu, 'hand_circumference'],
];

/** Whether both lists tell the same lengths, as far as makers round them: half a centimetre, half an inch. */
function tellsSame(a: NumberList, b: NumberList): boolean {
  return a.values.every((value, i) => {
    const same = b.values[i];
    if (value === null || same == null) return value === same;
    const [left, right] = [toCm(value, a.unit as 'cm'), toCm(same, b.unit as 'cm')];
    return left !== null && right !== null && Math.abs(left.sub(right).valueOf()) <= 1.3;
  });
}

/** A line of the sheet, or the reason why it is none; with what is doubtful about it. */
export function lineOf(
  measured: Measured,
  sizes: readonly Size[],
  id: string,
  taken: ReadonlySet<string>,
): { readonly line: Line; readonly doubt: string | null } | { readonly line: null; readonly doubt: string } {
  const { list, other, name } = measured;
  const words = `${name} ${list.values.join(', ')}`;
  const { unit } = list;
  if (unit === 'none') return { line: null, doubt: intakeWords.otherLength(words, 0, sizes.length) };
  if (list.values.length !== 1 && list.values.length !== sizes.length)
    return { line: null, doubt: intakeWords.otherLength(words, list.values.length, sizes.length) };
  const doubt = other !== null && !tellsSame(list, other) ? intakeWords.otherUnit(words) : null;
  const quantity = (value: number): Quantity => ({ value, unit });
  const each = Object.fromEntries(
    sizes.flatMap(({ id: size }, i) => {
      const value = list.values[list.values.length === 1 ? 0 : i] ?? null;
      return value === null ? [] : [[size, quantity(value)] as const];
    }),
  );
  const heading = name === '' ? 'Measurement' : name.slice(0, 120);
  const toFit = /\bfits?\b|\bbody\b/iu.test(heading);
  const called = uniqueName(heading.replace(/^to fit\s+/iu, toFit ? 'body ' : '').toLowerCase(), taken);
  const body = toFit ? (BODY.find(([pattern]) => pattern.test(heading))?.[1] ?? null) : null;
  const common = { id, name: called, printed: heading, note: null };
  const line: Line =
    body === null
      ? {
          ...common,
          kind: 'typed',
          values: list.values.length === 1 ? { all: quantity(list.values[0]!) } : { each },
        }
      : { ...common, kind: 'body', measure: body, bound: 'middle', overtyped: each };
  return { line, doubt };
}

/** A name that no line has yet, and that formulas can tell from a number. */
export function uniqueName(wanted: string, taken: ReadonlySet<string>): string {
  const base = /\p{L}/u.test(wanted) ? wanted.slice(0, 150) : `measurement ${wanted}`.trim();
  let name = base;
  for (let n = 2; taken.has(name.toLowerCase()); n++) name = `${base} ${n}`;
  return name;
}
