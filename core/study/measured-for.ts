/**
 * A pattern made to measure: the same pattern with one person's own measurements in the place of the size that lends
 * the rest. The other sizes stay where they are, because a typed list ("64 (70, 76)") is read by its places; only the
 * person's own column is meant to be shown. Nothing of this is ever part of a pattern for sale.
 */
import type { Block, Line, Pattern, PerSize, Quantity, Size } from '../document/pattern.ts';
import { NO_WORKBOOK, type Person } from '../document/workbook.ts';
import { type Study, study } from './study.ts';

export interface MeasuredPattern {
  readonly pattern: Pattern;
  /** Index of the person's column; its size has the person's id. */
  readonly size: number;
  /** The size that lends what the person has no number of. */
  readonly base: Size;
}

/** Kinds of line that a person may have a number of. */
export function takesOwnValue({ kind }: Line): boolean {
  return kind === 'body' || kind === 'typed' || kind === 'ease';
}

/** The size that lends a person the rest: the one chosen, else the sample, else the first; null without sizes. */
export function baseOfPerson(pattern: Pattern, person: Person): Size | null {
  const { sizes } = pattern;
  return (
    sizes.find(({ id }) => id === person.base) ??
    sizes.find(({ id }) => id === pattern.sample) ??
    sizes[0] ??
    null
  );
}

type Each<T> = Readonly<Record<string, T>>;

/** A value of the base size under the person's id, or the person's own. */
function renamed<T>(each: Each<T>, from: string, to: string, own: T | undefined): Each<T> {
  const rest = Object.fromEntries(Object.entries(each).filter(([id]) => id !== from));
  const value = own ?? (Object.hasOwn(each, from) ? each[from] : undefined);
  return value === undefined ? rest : { ...rest, [to]: value };
}

const made = new WeakMap<Pattern, WeakMap<Person, MeasuredPattern | null>>();

/** The pattern for one person; null for a pattern without sizes. The same pattern and person give the same object. */
export function measuredFor(pattern: Pattern, person: Person): MeasuredPattern | null {
  let known = made.get(pattern);
  if (known === undefined) {
    known = new WeakMap();
    made.set(pattern, known);
  }
  const before = known.get(person);
  if (before !== undefined) return before;
  const base = baseOfPerson(pattern, person);
  const result = base === null ? null : measured(pattern, person, base);
  known.set(person, result);
  return result;
}

function measured(pattern: Pattern, person: Person, base: Size): MeasuredPattern {
  const [from, to] = [base.id, person.id];
  const perSize = <T>(values: PerSize<T>, own: T | undefined): PerSize<T> => {
    if ('each' in values) return { each: renamed(values.each, from, to, own) };
    if (own === undefined) return values;
    const others = pattern.sizes.filter(({ id }) => id !== from).map(({ id }) => [id, values.all] as const);
    return { each: { ...Object.fromEntries(others), [to]: own } };
  };
  const line = (one: Line): Line => {
    const own: Quantity | undefined = Object.hasOwn(person.values, one.id)
      ? person.values[one.id]
      : undefined;
    switch (one.kind) {
      case 'body':
        return { ...one, overtyped: renamed(one.overtyped, from, to, own) };
      case 'typed':
      case 'ease':
        return { ...one, values: perSize(one.values, own) };
      default:
        return one;
    }
  };
  const ids = (sizes: readonly string[] | null) => sizes?.map((id) => (id === from ? to : id)) ?? null;
  const block = (one: Block): Block => {
    switch (one.type) {
      case 'row':
      case 'repeat':
      case 'prose':
        return one.sizes === null ? one : { ...one, sizes: ids(one.sizes) };
      case 'shaping':
        return {
          ...one,
          sizes: ids(one.sizes),
          shaped: { ...one.shaped, sizes: ids(one.shaped.sizes) },
          even: { ...one.even, sizes: ids(one.even.sizes) },
        };
      default:
        return one;
    }
  };
  const size = pattern.sizes.indexOf(base);
  return {
    base,
    size,
    pattern: {
      ...pattern,
      sizes: pattern.sizes.map((one, i) =>
        i === size ? { ...one, id: to, label: person.name.trim() || 'Made to measure' } : one,
      ),
      // Nobody made a sample in these measurements, and the size it was made in is no matter here.
      sample: null,
      lines: pattern.lines.map(line),
      // What the maker typed is for the size, not for the person.
      yarns: pattern.yarns.map((yarn) => ({
        ...yarn,
        metres: Object.fromEntries(Object.entries(yarn.metres).filter(([id]) => id !== from)),
      })),
      notions: pattern.notions.map((notion) =>
        notion.amount === null ? notion : { ...notion, amount: perSize(notion.amount, undefined) },
      ),
      pieces: pattern.pieces.map((piece) => ({ ...piece, blocks: piece.blocks.map(block) })),
      charts: pattern.charts.map((chart) => (chart.size === from ? { ...chart, size: to } : chart)),
      workbook: {
        ...NO_WORKBOOK,
        yarnMargin: pattern.workbook.yarnMargin,
        pricing: pattern.workbook.pricing,
      },
    },
  };
}

const sheets = new WeakMap<Study, Map<string, Study>>();

/** The study of a pattern with one person's measurements; null where there is no such person, or no size. */
export function studyFor(of: Study, personId: string): { readonly own: Study; readonly size: number } | null {
  const person = of.pattern.workbook.people.find(({ id }) => id === personId);
  const measured = person === undefined ? null : measuredFor(of.pattern, person);
  if (measured === null) return null;
  let known = sheets.get(of);
  if (known === undefined) {
    known = new Map();
    sheets.set(of, known);
  }
  const own = known.get(personId) ?? study(measured.pattern);
  known.set(personId, own);
  return { own, size: measured.size };
}
