/**
 * The sizing sheet worked out: every line for every size, in the order in which lines need each other, and
 * again after an edit with as little work as the edit calls for. Results that come out the same keep their
 * identity. It decides nothing about a line's meaning: `lines` does.
 */
import type { Gauge, Line, Quantity, Size } from '../document/pattern.ts';
import type { Fact } from '../finding.ts';
import { type Formula, readFormula } from './formula.ts';
import { factsAt, formulasOf, offerOf, type SizeResult, workOut } from './lines.ts';
import type { Offer } from './reckon.ts';
import { isSame, sameMembers } from './same.ts';
import { sequenceOf } from './sequence.ts';
import { foldName, isUsableName, type Vocabulary, vocabularyOf } from './vocabulary.ts';

/** A line and what it came to. */
export interface LineResult {
  readonly line: Line;
  /** One for each size, in the order of the sizes. */
  readonly sizes: readonly SizeResult[];
  /** Facts that do not depend on the size: formulas that cannot be read, circles, names taken twice. */
  readonly facts: readonly Fact[];
  /** The lines its formulas name, as they are called. */
  readonly needs: readonly string[];
}

export interface Sheet {
  readonly sizes: readonly Size[];
  /** In the order of the lines given. */
  readonly lines: readonly LineResult[];
  readonly vocabulary: Vocabulary;
}

/** What a result was worked out from: when all of it is the same, so is the result. */
interface Basis {
  readonly line: Line;
  readonly sizes: readonly Size[];
  readonly formulas: readonly Formula[];
  readonly gauge: Gauge | null;
  readonly tolerance: Quantity;
  /** Of each line it needs the kind and then the outcomes. */
  readonly inputs: readonly (Line['kind'] | readonly SizeResult[])[];
  /** Names of the lines of the circle it is in. */
  readonly circle: readonly string[] | null;
  readonly repeated: boolean;
}

/** Kept apart from the results, so that these stay plain data. */
const bases = new WeakMap<LineResult, Basis>();

const byName = new WeakMap<Sheet, ReadonlyMap<string, LineResult>>();

const emptyResult: SizeResult = { value: null, fitted: null, facts: [], waitsFor: [] };

/**
 * Works out every line for every size. With the sheet before an edit, a line whose own object and inputs are
 * the same gives the identical `LineResult`, and one that is worked out again to the same values keeps the
 * identical `sizes`; with nothing changed at all, `previous` itself comes back. Never throws: what cannot be
 * worked out has no value and says why.
 */
export function gradeSheet(
  sizes: readonly Size[],
  lines: readonly Line[],
  gauges: readonly Gauge[],
  tolerance: Quantity,
  previous: Sheet | null = null,
): Sheet {
  const vocabulary = vocabularyOf(
    lines.map((line) => line.name),
    previous?.vocabulary,
  );
  const before = new Map(previous?.lines.map((result) => [result.line.id, result]));
  const indexes = indexesByName(lines);
  const formulas = lines.map((line) => readAll(line, vocabulary, before.get(line.id), previous));
  const needs = formulas.map((read) => namesIn(read).map((name) => indexes.get(name)!));
  const { order, circles } = sequenceOf(needs);
  const gaugeById = new Map(gauges.map((gauge) => [gauge.id, gauge]));
  const results = new Array<LineResult>(lines.length);
  for (const index of order) {
    const line = lines[index]!;
    const circle = circles[index]?.map((member) => lines[member]!.name) ?? null;
    const basis: Basis = {
      line,
      sizes,
      formulas: formulas[index]!,
      gauge: 'gauge' in line ? (gaugeById.get(line.gauge) ?? null) : null,
      tolerance,
      inputs: circle ? [] : needs[index]!.flatMap((need) => [lines[need]!.kind, results[need]!.sizes]),
      circle,
      repeated: isRepeated(lines, indexes, index),
    };
    const offers = (name: string, size: number): Offer | null => {
      const result = results[indexes.get(name)!];
      return result ? offerOf(result.line, result.sizes[size]!) : null;
    };
    results[index] = resultOf(basis, offers, before.get(line.id) ?? null);
  }
  if (
    previous &&
    previous.vocabulary === vocabulary &&
    sameMembers(previous.sizes, sizes) &&
    sameMembers(previous.lines, results)
  ) {
    return previous;
  }
  return { sizes, lines: results, vocabulary };
}

/** The line of a name (any case, hyphens and blanks do not count), or null. Of two, the first. */
export function lineNamed(sheet: Sheet, name: string): LineResult | null {
  let map = byName.get(sheet);
  if (!map) {
    map = new Map(sheet.lines.map((result) => [foldName(result.line.name), result] as const).reverse());
    byName.set(sheet, map);
  }
  return map.get(foldName(name)) ?? null;
}

/** The first line of each name, both as it is called and folded. */
function indexesByName(lines: readonly Line[]): Map<string, number> {
  const indexes = new Map<string, number>();
  for (const [index, line] of lines.entries()) {
    const folded = foldName(line.name);
    const first = indexes.get(folded) ?? index;
    indexes.set(folded, first);
    indexes.set(line.name, first);
  }
  return indexes;
}

function isRepeated(lines: readonly Line[], indexes: ReadonlyMap<string, number>, index: number): boolean {
  const { name } = lines[index]!;
  return isUsableName(name) && indexes.get(name) !== index;
}

/** The line's formulas as read before, where text and names are the same or the reading comes out the same. */
function readAll(
  line: Line,
  vocabulary: Vocabulary,
  before: LineResult | undefined,
  previous: Sheet | null,
): readonly Formula[] {
  const old = before && bases.get(before)?.formulas;
  if (old && before.line === line && previous?.vocabulary === vocabulary) return old;
  const read = formulasOf(line).map(({ text }, index) => {
    const was = old?.[index];
    if (was && was.text === text && previous?.vocabulary === vocabulary) return was;
    const formula = readFormula(text, vocabulary);
    return was && isSame(was, formula) ? was : formula;
  });
  return old && sameMembers(old, read) ? old : read;
}

function namesIn(formulas: readonly Formula[]): readonly string[] {
  return [...new Set(formulas.flatMap((formula) => formula.names))];
}

function isSameBasis(a: Basis, b: Basis): boolean {
  return (
    a.line === b.line &&
    a.formulas === b.formulas &&
    a.gauge === b.gauge &&
    isSame(a.tolerance, b.tolerance) &&
    a.repeated === b.repeated &&
    sameMembers(a.sizes, b.sizes) &&
    sameMembers(a.inputs, b.inputs) &&
    isSame(a.circle, b.circle)
  );
}

function resultOf(
  basis: Basis,
  offers: (name: string, size: number) => Offer | null,
  previous: LineResult | null,
): LineResult {
  const old = previous && bases.get(previous);
  if (old && isSameBasis(old, basis)) return previous;
  const { line, formulas, sizes } = basis;
  const input = { line, formulas, gauge: basis.gauge, tolerance: basis.tolerance };
  const isStopped = basis.circle !== null || formulas.some((formula) => !formula.read);
  const worked = sizes.map((size, index) =>
    isStopped ? emptyResult : workOut(input, size, (name) => offers(name, index)),
  );
  const result = settled({ line, sizes: worked, facts: factsOf(basis), needs: namesIn(formulas) }, previous);
  bases.set(result, basis);
  return result;
}

/** The new result in the old one's objects, as far as they are the same. */
function settled(result: LineResult, previous: LineResult | null): LineResult {
  if (!previous) return result;
  const each = result.sizes.map((size, index) => {
    const was = previous.sizes[index];
    return was && isSame(was, size) ? was : size;
  });
  const sizes = sameMembers(each, previous.sizes) ? previous.sizes : each;
  const facts = isSame(previous.facts, result.facts) ? previous.facts : result.facts;
  const needs = isSame(previous.needs, result.needs) ? previous.needs : result.needs;
  const isUnchanged =
    result.line === previous.line &&
    sizes === previous.sizes &&
    facts === previous.facts &&
    needs === previous.needs;
  return isUnchanged ? previous : { line: result.line, sizes, facts, needs };
}

function factsOf(basis: Basis): readonly Fact[] {
  const { line, formulas, circle, repeated } = basis;
  const fields = formulasOf(line);
  const facts = formulas.flatMap((formula, index) => factsAt(line, fields[index]!.field, formula.facts));
  const own = (code: string, data: Fact['data']): Fact[] =>
    factsAt(line, '', [{ code, from: 0, to: 0, data }]);
  if (!isUsableName(line.name)) facts.push(...own('line-name-unusable', {}));
  if (repeated) facts.push(...own('line-name-repeated', {}));
  if (circle) facts.push(...circleFacts(basis, circle));
  return facts;
}

/** A circle is told at each formula of the line that is part of it. */
function circleFacts({ line, formulas }: Basis, circle: readonly string[]): Fact[] {
  const fields = formulasOf(line);
  return formulas.flatMap((formula, index) =>
    formula.names.some((name) => circle.includes(name))
      ? factsAt(line, fields[index]!.field, [
          { code: 'line-circle', from: 0, to: formula.text.length, data: { lines: circle } },
        ])
      : [],
  );
}
