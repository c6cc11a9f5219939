/**
 * Works out one line of the sizing sheet for one size: what it holds, how it was fitted, and the facts about
 * it. The formulas come read and the other lines' values come given; order and caching are the sheet's.
 */
import type { Gauge, Line, PerSize, Quantity, Size } from '../document/pattern.ts';
import type { Fact, FactValue } from '../finding.ts';
import { bodyChart, bodyMeasure, chartMeasure } from '../trade/bodies.ts';
import { type Length, rational } from '../trade/units.ts';
import { type Fit, type Fitted, fitRows, fitStitches } from './fit.ts';
import type { Formula } from './formula.ts';
import { amountOfNumber, type Offer, reckon } from './reckon.ts';
import { type Schedule, scheduleOf } from './shaping.ts';
import { type Spread, spreadOf } from './spread.ts';
import { type Amount, amountData, isWhole, lengthData, wholeNumber } from './value.ts';

/** What a line holds for one size. A length is in exact cm, a percentage a part of one. */
export type LineValue =
  | Amount
  | { readonly dimension: 'schedule'; readonly schedule: Schedule }
  | { readonly dimension: 'spread'; readonly spread: Spread };

/** A line's outcome for one size. */
export interface SizeResult {
  /** Null when there is none; the facts, or the lines waited for, say why. */
  readonly value: LineValue | null;
  /** For a stitches or rows line that was fitted. */
  readonly fitted: Fitted | null;
  readonly facts: readonly Fact[];
  /** Lines without a value that this one needs, by name. */
  readonly waitsFor: readonly string[];
}

/** What a line is worked out from. */
export interface LineInput {
  readonly line: Line;
  /** Its read formulas, in the order of `formulasOf`. */
  readonly formulas: readonly Formula[];
  /** The gauge it names, or null when there is none of that id. */
  readonly gauge: Gauge | null;
  /** The pattern's tolerance. */
  readonly tolerance: Quantity;
}

/** A formula of a line: which part of the line it is, and its text. */
export interface FormulaField {
  readonly field: string;
  readonly text: string;
}

/** The formulas that a line holds, by the names of their fields. */
export function formulasOf(line: Line): readonly FormulaField[] {
  switch (line.kind) {
    case 'formula':
      return [{ field: 'formula', text: line.formula }];
    case 'stitches':
    case 'rows':
      return [{ field: 'length', text: line.length }];
    case 'shaping':
      return [
        { field: 'start', text: line.start },
        { field: 'end', text: line.end },
        { field: 'rows', text: line.rows },
      ];
    case 'spread':
      return [
        { field: 'changes', text: line.changes },
        { field: 'over', text: line.over },
      ];
    default:
      return [];
  }
}

/** The facts of a formula, with the line and field they belong to. */
export function factsAt(line: Line, field: string, facts: readonly Fact[]): Fact[] {
  return facts.map((fact) => ({ ...fact, data: { line: line.name, field, ...fact.data } }));
}

/** Works the line out for one size. `offers` answers for the lines that its formulas name. */
export function workOut(input: LineInput, size: Size, offers: (name: string) => Offer | null): SizeResult {
  return new Work(input, size, offers).result();
}

/** What a line's outcome offers to the formulas that name it. */
export function offerOf(line: Line, result: SizeResult): Offer {
  const { value, fitted } = result;
  const isFitted = line.kind === 'stitches' || line.kind === 'rows';
  const made: Amount | null = fitted && { dimension: 'length', value: fitted.got };
  const wordy = line.kind === 'shaping' || line.kind === 'spread' ? line.kind : null;
  const amount = value && value.dimension !== 'schedule' && value.dimension !== 'spread' ? value : null;
  return { amount, wordy, made, isFitted };
}

/** Whether a line of amounts is one of lengths: one size's is, and what the others lack is their unit. */
const holdsLengths = (values: PerSize<Quantity>): boolean =>
  'each' in values && Object.values(values.each).some(({ unit }) => unit !== 'none' && unit !== '%');

class Work {
  readonly #input: LineInput;
  readonly #size: Size;
  readonly #offers: (name: string) => Offer | null;
  readonly #facts: Fact[] = [];
  readonly #waitsFor = new Set<string>();
  #fitted: Fitted | null = null;

  constructor(input: LineInput, size: Size, offers: (name: string) => Offer | null) {
    this.#input = input;
    this.#size = size;
    this.#offers = offers;
  }

  result(): SizeResult {
    const value = this.#value();
    return { value, fitted: this.#fitted, facts: this.#facts, waitsFor: [...this.#waitsFor] };
  }

  #value(): LineValue | null {
    const { line } = this.#input;
    switch (line.kind) {
      case 'body':
        return this.#body(line);
      case 'typed':
        return this.#typed(valueFor(line.values, this.#size), holdsLengths(line.values) ? 'length' : 'any');
      case 'ease':
        return this.#typed(valueFor(line.values, this.#size), 'ease');
      case 'formula':
        return this.#formula(0);
      case 'stitches':
      case 'rows':
        return this.#fit(line);
      case 'shaping':
        return this.#schedule(line);
      case 'spread':
        return this.#spread(line);
    }
  }

  #body(line: Extract<Line, { kind: 'body' }>): LineValue | null {
    const { id, audience, chart, label } = this.#size;
    const own = Object.hasOwn(line.overtyped, id) ? line.overtyped[id] : undefined;
    if (own) return this.#typed(own, 'length');
    const data = { size: label, measure: line.measure, audience, chart };
    if (chart === null || !bodyChart(audience)?.sizes.includes(chart))
      return this.#fact('body-size-missing', data);
    if (!chartMeasure(audience, line.measure)) return this.#fact('body-measure-missing', data);
    const found = bodyMeasure(audience, chart, line.measure, line.bound);
    return found ? { dimension: 'length', value: found.length } : this.#fact('body-figure-missing', data);
  }

  /** A typed quantity. A bare number is a plain number, but no length and no ease unless it is 0. */
  #typed(quantity: Quantity | null, wanted: 'any' | 'length' | 'ease'): Amount | null {
    const value = quantity && rational(quantity.value);
    if (!quantity || !value) return this.#fact('line-value-missing', { size: this.#size.label });
    const { unit } = quantity;
    if (unit === 'none' && wanted !== 'any') {
      if (value.n === 0n) return { dimension: 'length', value };
      return this.#fact('line-missing-unit', { number: quantity.value, size: this.#size.label });
    }
    if (unit === '%' && wanted === 'length') {
      return this.#fact('line-not-length', { number: quantity.value, size: this.#size.label });
    }
    return amountOfNumber({ value, unit: unit === 'none' && isWhole(value) ? 'count' : unit });
  }

  #formula(index: number): Amount | null {
    const { line, formulas } = this.#input;
    const { amount, facts, waitsFor } = reckon(formulas[index]!, this.#offers);
    this.#facts.push(...factsAt(line, formulasOf(line)[index]!.field, facts));
    for (const name of waitsFor) this.#waitsFor.add(name);
    return amount;
  }

  #fit(line: Extract<Line, { kind: 'stitches' | 'rows' }>): LineValue | null {
    const { gauge, tolerance } = this.#input;
    const asked = this.#length(0);
    if (!gauge) return this.#fact('gauge-missing', { gauge: line.gauge });
    if (!asked) return null;
    const fit: Fit =
      line.kind === 'stitches'
        ? fitStitches(asked, line, gauge, tolerance)
        : fitRows(asked, line, gauge, tolerance);
    this.#facts.push(...factsAt(line, 'length', fit.facts));
    this.#fitted = fit.fitted;
    return fit.fitted && countOf(fit.fitted.number);
  }

  #schedule(line: Extract<Line, { kind: 'shaping' }>): LineValue | null {
    const [from, to, rows] = [this.#count(0), this.#count(1), this.#count(2)];
    if (from === null || to === null || rows === null) return null;
    const { perEnd, ends, step } = line;
    const schedule = scheduleOf({ from, to, rows, perEnd, ends, step });
    if ('code' in schedule) return this.#fact(schedule.code, schedule.data);
    return { dimension: 'schedule', schedule };
  }

  #spread(line: Extract<Line, { kind: 'spread' }>): LineValue | null {
    const [changes, over] = [this.#count(0), this.#count(1)];
    if (changes === null || over === null) return null;
    const { change, form, stitch } = line;
    const spread = spreadOf({ change, form, stitch, changes, over });
    if ('code' in spread) return this.#fact(spread.code, spread.data);
    return { dimension: 'spread', spread };
  }

  #length(index: number): Length | null {
    const amount = this.#formula(index);
    if (!amount) return null;
    if (amount.dimension === 'length') return amount.value;
    return this.#atFormula(index, 'asked-not-length', amountData('value', amount));
  }

  #count(index: number): number | null {
    const amount = this.#formula(index);
    const whole = amount && asCount(amount);
    if (whole === null || typeof whole === 'number') return whole;
    return this.#atFormula(index, whole.code, whole.data);
  }

  #atFormula(index: number, code: string, data: Readonly<Record<string, FactValue>>): null {
    const { line, formulas } = this.#input;
    const to = formulas[index]!.text.length;
    this.#facts.push(...factsAt(line, formulasOf(line)[index]!.field, [{ code, from: 0, to, data }]));
    return null;
  }

  #fact(code: string, data: Readonly<Record<string, FactValue>>): null {
    this.#facts.push(...factsAt(this.#input.line, '', [{ code, from: 0, to: 0, data }]));
    return null;
  }
}

/** A whole number of stitches or rows; else the fact that says why it is none. */
export function asCount(amount: Amount): number | Omit<Fact, 'from' | 'to'> {
  if (amount.dimension === 'length')
    return { code: 'count-is-length', data: lengthData('value', amount.value) };
  const data = amountData('value', amount);
  if (amount.dimension === 'percent') return { code: 'count-is-percent', data };
  const whole = wholeNumber(amount.value);
  if (whole === null) return { code: 'count-not-whole', data };
  return whole < 0 ? { code: 'count-negative', data } : whole;
}

function countOf(number: number): Amount {
  return { dimension: 'count', value: rational(number)! };
}

function valueFor(values: PerSize<Quantity>, size: Size): Quantity | null {
  if ('all' in values) return values.all;
  return Object.hasOwn(values.each, size.id) ? (values.each[size.id] ?? null) : null;
}
