/**
 * Fits a length to a whole number of stitches or rows: so many repeats and a few over, even or odd, ending on
 * the right row. Says what was asked, what the number really makes and how far off it is. Exact throughout;
 * the number is the only thing rounded. It knows no formulas and no sheet.
 *
 * Rounding "nearest" takes the larger of two numbers equally near (halves go away from zero; lengths asked
 * for are above zero), so that metric and imperial editions agree.
 */
import Fraction from 'fraction.js';
import type { Gauge, Line, Quantity } from '../document/pattern.ts';
import type { Fact, FactValue } from '../finding.ts';
import { type Length, type Rational, rational, toCm, toNumber } from '../trade/units.ts';
import { lengthData } from './value.ts';

export type StitchesLine = Extract<Line, { kind: 'stitches' }>;
export type RowsLine = Extract<Line, { kind: 'rows' }>;

/** What became of a length that was fitted. Lengths are in the line's own state (as worn when stretched). */
export interface Fitted {
  readonly asked: Length;
  readonly got: Length;
  /** got − asked: less than zero when it came out narrower or shorter. */
  readonly difference: Length;
  /** Differences larger than this are a fact. */
  readonly limit: Length;
  readonly state: 'relaxed' | 'stretched';
  /** The number that goes into the rows: stitches, spaces, chains, repeats or rows, extras included. */
  readonly number: number;
  /** Stitches in the row, extras included (the same as `number` unless repeats are counted); rows for rows. */
  readonly total: number;
  /** Repeats of the multiple, or of the cycle of rows, begun or whole. */
  readonly repeats: number;
}

export interface Fit {
  readonly fitted: Fitted | null;
  readonly facts: readonly Fact[];
}

/** What a gauge comes to: stitches and rows in one centimetre, and how much longer it is when worn. */
export interface Density {
  readonly stitches: Rational | null;
  readonly rows: Rational | null;
  /** Worn ÷ lying; null when the gauge states no stretch. */
  readonly stretch: Rational | null;
}

const ONE = new Fraction(1);
const TWO = new Fraction(2);

/** Past this a fitted number is no piece of crochet but a slip in the gauge or the length. */
export const MOST_STITCHES = 100_000;

/** Default for how far a fitted length may be off: 2 cm (the owner's rule; no source). */
export const TOLERANCE: Quantity = { value: 2, unit: 'cm' };

/** Exact cm of a quantity that is a length; null for one that is not, or is no number. */
export function lengthOf(quantity: Quantity): Length | null {
  return quantity.unit === '%' || quantity.unit === 'none' ? null : toCm(quantity.value, quantity.unit);
}

const densities = new WeakMap<Gauge, Density>();

/**
 * Stitches and rows per centimetre, exactly: 16 stitches over 4 in are 16 ÷ 10.16 per cm, not 1.6. Null
 * where the gauge gives no number or no length above zero. The same gauge gives the identical object.
 */
export function densityOf(gauge: Gauge): Density {
  const known = densities.get(gauge);
  if (known) return known;
  const density = {
    stitches: perCm(gauge.stitches, gauge.width),
    rows: perCm(gauge.rows, gauge.height),
    stretch: gauge.stretch && stretchOf(gauge.stretch),
  };
  densities.set(gauge, density);
  return density;
}

function perCm(count: number, over: Quantity): Rational | null {
  const number = rational(count);
  const length = lengthOf(over);
  return number && length && number.compare(0) > 0 && length.compare(0) > 0 ? number.div(length) : null;
}

function stretchOf(stretch: NonNullable<Gauge['stretch']>): Rational | null {
  const lies = lengthOf(stretch.lies);
  const worn = lengthOf(stretch.worn);
  return lies && worn && lies.compare(0) > 0 && worn.compare(0) > 0 ? worn.div(lies) : null;
}

interface Series {
  /** Smallest number allowed, and the step to the next. */
  readonly first: number;
  readonly step: number;
}

interface Choice extends Series {
  readonly n: number;
  /** The length asked for is below the smallest number that fits. */
  readonly tooSmall: boolean;
}

/** The number of the series that is nearest to `ideal`, or the next one up or down; never below the first. */
export function nearestOf(series: Series, ideal: Rational, rounding: 'nearest' | 'up' | 'down'): Choice {
  const steps = ideal.sub(series.first).div(series.step);
  const whole =
    rounding === 'nearest'
      ? steps.add(new Fraction(1, 2)).floor()
      : rounding === 'up'
        ? steps.ceil()
        : steps.floor();
  const n = series.first + Math.max(0, toNumber(whole)) * series.step;
  return { ...series, n, tooSmall: whole.compare(0) < 0 };
}

/**
 * The stitch counts `k × multiple + plus` (k at least 1) that are even or odd as asked. Null when there is
 * none: a multiple of 2 plus 1 is never even. When repeats are counted, their number is what is even or odd.
 */
export function validCounts(
  line: Pick<StitchesLine, 'multiple' | 'plus' | 'parity' | 'counts'>,
): Series | null {
  const { multiple, plus, parity } = line;
  // Below one repeat, or one stitch, there is nothing to work.
  const fewest = Math.max(1, Math.ceil((1 - plus) / multiple));
  const at = (k: number) => k * multiple + plus;
  if (parity === 'any') return { first: at(fewest), step: multiple };
  const odd = parity === 'odd' ? 1 : 0;
  const isRight = (k: number) => Math.abs((line.counts === 'repeats' ? k : at(k)) % 2) === odd;
  const k = [fewest, fewest + 1].find(isRight);
  if (k === undefined) return null;
  return isRight(k + 1) ? { first: at(k), step: multiple } : { first: at(k), step: 2 * multiple };
}

/**
 * Fits a width to stitches. In the state "stretched" the width is the one in wear: the stitches are those of
 * the lying width (asked × lies ÷ worn), and what they make is stated as worn. `extra` stitches take no width
 * and are added afterwards; even and odd is decided without them.
 */
export function fitStitches(asked: Length, line: StitchesLine, gauge: Gauge, tolerance: Quantity): Fit {
  const facts: Fact[] = [];
  const note = (code: string, data: Readonly<Record<string, FactValue>>) =>
    void facts.push(factOn(line.length, code, data));
  const { multiple, plus, extra } = line;
  if (![multiple, plus, extra].every(Number.isSafeInteger) || multiple < 1 || extra < 0) {
    note('fit-multiple-invalid', { multiple, plus, extra });
    return { fitted: null, facts };
  }
  const density = densityOf(gauge);
  if (!density.stitches) {
    note('gauge-incomplete', { gauge: gauge.pattern, missing: 'stitches' });
    return { fitted: null, facts };
  }
  const stretched = line.state === 'stretched';
  if (stretched && !density.stretch) note('gauge-no-stretch', { gauge: gauge.pattern });
  const stretch = (stretched && density.stretch) || ONE;
  let series = validCounts(line);
  if (!series) {
    note('fit-parity-impossible', { multiple, plus, parity: line.parity });
    series = validCounts({ ...line, parity: 'any' })!;
  }
  const perCentimetre = density.stitches.div(stretch);
  const made = madeOf(asked, series, perCentimetre, line, tolerance);
  if (typeof made === 'string') {
    note(made, { ...lengthData('asked', asked), limit: MOST_STITCHES });
    return { fitted: null, facts };
  }
  const repeats = (made.choice.n - plus) / multiple;
  const total = made.choice.n + extra;
  const number = line.counts === 'repeats' ? repeats : total;
  const fitted = { ...made.lengths, state: line.state, number, total, repeats };
  const data = { counts: line.counts, multiple, plus, parity: line.parity, extra, state: line.state };
  const numberAt = (n: number) => (line.counts === 'repeats' ? (n - plus) / multiple : n + extra);
  facts.push(...offFacts(fitted, made.choice, perCentimetre, numberAt, line.length, data));
  return { fitted, facts };
}

/**
 * Fits a length to rows: `before` rows, then whole cycles of `cycle` rows of which the last ends on row
 * `endOn`. The fewest are `before + endOn`.
 */
export function fitRows(asked: Length, line: RowsLine, gauge: Gauge, tolerance: Quantity): Fit {
  const facts: Fact[] = [];
  const note = (code: string, data: Readonly<Record<string, FactValue>>) =>
    void facts.push(factOn(line.length, code, data));
  const { cycle, endOn, before } = line;
  if (
    ![cycle, endOn, before].every(Number.isSafeInteger) ||
    cycle < 1 ||
    endOn < 1 ||
    endOn > cycle ||
    before < 0
  ) {
    note('fit-cycle-invalid', { cycle, endOn, before });
    return { fitted: null, facts };
  }
  const { rows: perCentimetre } = densityOf(gauge);
  if (!perCentimetre) {
    note('gauge-incomplete', { gauge: gauge.pattern, missing: 'rows' });
    return { fitted: null, facts };
  }
  const made = madeOf(asked, { first: before + endOn, step: cycle }, perCentimetre, line, tolerance);
  if (typeof made === 'string') {
    note(made, { ...lengthData('asked', asked), limit: MOST_STITCHES });
    return { fitted: null, facts };
  }
  const total = made.choice.n;
  const repeats = (total - before - endOn) / cycle + 1;
  const fitted = { ...made.lengths, state: 'relaxed' as const, number: total, total, repeats };
  const data = { counts: 'rows', cycle, endOn, before };
  facts.push(...offFacts(fitted, made.choice, perCentimetre, (n) => n, line.length, data));
  return { fitted, facts };
}

interface Made {
  readonly choice: Choice;
  readonly lengths: Pick<Fitted, 'asked' | 'got' | 'difference' | 'limit'>;
}

function madeOf(
  asked: Length,
  series: Series,
  perCentimetre: Rational,
  line: StitchesLine | RowsLine,
  tolerance: Quantity,
): Made | 'fit-not-positive' | 'fit-too-many' {
  if (asked.compare(0) <= 0) return 'fit-not-positive';
  const ideal = asked.mul(perCentimetre);
  if (ideal.compare(MOST_STITCHES) > 0 || series.first > MOST_STITCHES) return 'fit-too-many';
  const choice = nearestOf(series, ideal, line.rounding);
  const got = new Fraction(choice.n).div(perCentimetre);
  const step = new Fraction(series.step).div(perCentimetre);
  const limit = limitOf(asked, step, line.tolerance, tolerance);
  return { choice, lengths: { asked, got, difference: got.sub(asked), limit } };
}

/**
 * How far off a fitted length may be. A line's own tolerance holds as it is. The pattern's gives way to half
 * the step between two numbers that fit (half a repeat) when that is larger: nearer than that no number comes.
 */
function limitOf(asked: Length, step: Length, own: Quantity | null, general: Quantity): Length {
  const stated = own && allowance(own, asked);
  if (stated) return stated;
  const usual = allowance(general, asked) ?? lengthOf(TOLERANCE)!;
  const half = step.div(TWO);
  return half.compare(usual) > 0 ? half : usual;
}

function allowance(tolerance: Quantity, asked: Length): Length | null {
  if (tolerance.unit === '%') return rational(tolerance.value)?.abs().div(100).mul(asked) ?? null;
  return lengthOf(tolerance)?.abs() ?? null;
}

function offFacts(
  fitted: Fitted,
  choice: Choice,
  perCentimetre: Rational,
  numberAt: (n: number) => number,
  text: string,
  data: Readonly<Record<string, FactValue>>,
): Fact[] {
  if (fitted.difference.abs().compare(fitted.limit) <= 0) return [];
  const lengthAt = (n: number) => new Fraction(n).div(perCentimetre);
  const side = (key: string, n: number) =>
    n < choice.first ? { [key]: null } : { [key]: numberAt(n), ...lengthData(`${key}Makes`, lengthAt(n)) };
  return [
    factOn(text, choice.tooSmall ? 'fit-below-smallest' : 'fit-off', {
      ...data,
      number: fitted.number,
      ...lengthData('asked', fitted.asked),
      ...lengthData('got', fitted.got),
      ...lengthData('off', fitted.difference.abs()),
      less: fitted.difference.compare(0) < 0,
      ...lengthData('limit', fitted.limit),
      ...side('fewer', choice.n - choice.step),
      ...side('more', choice.n + choice.step),
    }),
  ];
}

function factOn(text: string, code: string, data: Readonly<Record<string, FactValue>>): Fact {
  return { code, from: 0, to: text.length, data };
}
