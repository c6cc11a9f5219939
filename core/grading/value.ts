/**
 * Amounts that lines hold and formulas reckon with: lengths, counts, plain ratios and percentages, each
 * exact, and the rules by which they add, multiply and divide. Nothing is rounded here unless it is asked
 * for, and nothing knows lines or sizes.
 */
import Fraction from 'fraction.js';
import { formatLength, type Length, type Rational, roundTo, toNumber } from '../trade/units.ts';

/** What an amount is an amount of. A percentage applies to what it is added to. */
export type Dimension = 'length' | 'count' | 'ratio' | 'percent';

/** An exact amount. A length is in cm; a percentage is a part of one (5 % is 1/20). */
export interface Amount {
  readonly dimension: Dimension;
  readonly value: Rational;
}

/** Why two amounts do not go together. The slugs are the codes of facts. */
export type Misfit =
  | 'formula-mixed'
  | 'formula-area'
  | 'formula-divided-by-length'
  | 'formula-divided-by-zero'
  | 'formula-too-large';

/** Whole numbers past this in a fraction's top or bottom are no measurement; it keeps every sum quick. */
const LIMIT = 10n ** 40n;

const ONE = new Fraction(1);

const plain = (amount: Amount) => amount.dimension === 'count' || amount.dimension === 'ratio';

/** The amount, or a misfit when its fraction has grown past any use. */
export function bounded(dimension: Dimension, value: Rational): Amount | Misfit {
  return value.n > LIMIT || value.d > LIMIT ? 'formula-too-large' : { dimension, value };
}

/**
 * Adds, or takes away. Lengths go with lengths and plain numbers with plain numbers (a count and a ratio
 * give a count); nothing without a unit (0) goes with a length. A percentage applies to the other amount:
 * 100 cm − 5 % is 95 cm; two percentages add up.
 */
export function add(a: Amount, b: Amount, minus: boolean): Amount | Misfit {
  const term = minus ? b.value.neg() : b.value;
  if (b.dimension === 'percent' && a.dimension !== 'percent') {
    return bounded(a.dimension, a.value.mul(ONE.add(term)));
  }
  if (a.dimension === 'percent' && b.dimension !== 'percent') {
    return minus ? 'formula-mixed' : bounded(b.dimension, b.value.mul(ONE.add(a.value)));
  }
  if (a.dimension === b.dimension) return bounded(a.dimension, a.value.add(term));
  if (plain(a) && plain(b)) return bounded('count', a.value.add(term));
  if (a.dimension === 'length' && b.value.n === 0n) return a;
  if (b.dimension === 'length' && a.value.n === 0n) return { dimension: 'length', value: term };
  return 'formula-mixed';
}

/** Multiplies. A length takes plain numbers and percentages; two lengths would be an area. */
export function multiply(a: Amount, b: Amount): Amount | Misfit {
  const value = a.value.mul(b.value);
  if (a.dimension === 'length' || b.dimension === 'length') {
    return a.dimension === b.dimension ? 'formula-area' : bounded('length', value);
  }
  if (a.dimension === 'count' || b.dimension === 'count') return bounded('count', value);
  if (a.dimension === 'percent' && b.dimension === 'percent') return bounded('percent', value);
  return bounded(a.dimension === 'percent' || b.dimension === 'percent' ? 'percent' : 'ratio', value);
}

/** Divides. Like by like is a ratio; a length by a plain number stays a length. */
export function divide(a: Amount, b: Amount): Amount | Misfit {
  if (b.dimension === 'length' && a.dimension !== 'length') return 'formula-divided-by-length';
  if (b.value.n === 0n) return 'formula-divided-by-zero';
  const value = a.value.div(b.value);
  if (a.dimension === b.dimension) return bounded('ratio', value);
  return bounded(a.dimension, value);
}

/** Less than zero, zero or more than zero as `a` is smaller than, equal to or larger than `b`. */
export function compare(a: Amount, b: Amount): number | Misfit {
  const alike = a.dimension === b.dimension || (plain(a) && plain(b));
  const zero = (x: Amount, y: Amount) => x.dimension === 'length' && plain(y) && y.value.n === 0n;
  return alike || zero(a, b) || zero(b, a) ? a.value.compare(b.value) : 'formula-mixed';
}

/**
 * The multiple of `step` that is nearest (halves away from zero), or the next one up or down.
 * Both must be lengths, or both plain numbers or percentages.
 */
export function round(a: Amount, step: Amount, direction: 'nearest' | 'up' | 'down'): Amount | Misfit {
  const alike = a.dimension === step.dimension || (plain(a) && plain(step));
  if (!alike) return 'formula-mixed';
  if (step.value.n === 0n) return 'formula-divided-by-zero';
  const size = step.value.abs();
  if (direction === 'nearest') return bounded(a.dimension, roundTo(a.value, size));
  const steps = a.value.div(size);
  return bounded(a.dimension, (direction === 'up' ? steps.ceil() : steps.floor()).mul(size));
}

/** Whether the amount is a whole number of things. */
export function isWhole(value: Rational): boolean {
  return value.d === 1n;
}

/** The whole number as a plain one; null when it is not whole or too large to be exact. */
export function wholeNumber(value: Rational): number | null {
  const number = toNumber(value);
  return isWhole(value) && Number.isSafeInteger(number) ? number : null;
}

/**
 * A length as the data of a fact: under `key` as shown in cm ("99.5 cm"), under `keyIn` as shown in inches
 * ("39¼ in"), under `keyCm` the exact centimetres as a number.
 */
export function lengthData(key: string, length: Length): Record<string, string | number> {
  return {
    [key]: formatLength(length, 'metric'),
    [`${key}In`]: formatLength(length, 'imperial'),
    [`${key}Cm`]: toNumber(length),
  };
}

/** An amount as the data of a fact: its dimension, its plain number, and a length also as shown. */
export function amountData(key: string, amount: Amount): Record<string, string | number> {
  const dimension = { [`${key}Dimension`]: amount.dimension };
  return amount.dimension === 'length'
    ? { ...dimension, ...lengthData(key, amount.value) }
    : { ...dimension, [key]: toNumber(amount.value) };
}
