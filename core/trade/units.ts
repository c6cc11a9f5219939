/**
 * Lengths, weights and their display. Every value is exact until it is shown: an inch is 2.54 cm, and a
 * shown number is rounded once from the exact one, never from another shown number. No document and no
 * market data is known here.
 *
 * Factors: 16 CFR 500.19 (inch, yard: exact). The ounce is the exact avoirdupois ounce, of which that rule
 * prints 28.3495 g. Rounding steps of the display: common practice (quarter inch, half centimetre).
 */
import Fraction from 'fraction.js';

/** An exact ratio of whole numbers. Never changed in place. */
export type Rational = Fraction;

/** A length, as exact centimetres. */
export type Length = Rational;

export type LengthUnit = 'cm' | 'mm' | 'in';

/** Which units lead in an edition. */
export type Units = 'metric' | 'imperial';

/** A number with the unit it was typed in, as a document keeps it. */
export interface Quantity {
  readonly value: number;
  readonly unit: LengthUnit | '%' | 'none';
}

const CM_PER_INCH = new Fraction(254, 100);
const METRES_PER_YARD = new Fraction(9144, 10000);
const GRAMS_PER_OUNCE = new Fraction('28.349523125');
const CM_PER: Readonly<Record<LengthUnit, Fraction>> = {
  cm: new Fraction(1),
  mm: new Fraction(1, 10),
  in: CM_PER_INCH,
};

/** Nothing, as an exact number. */
export const ZERO: Rational = new Fraction(0);

/**
 * The exact value of a number as it reads in decimals (0.1 is one tenth), or of a whole ratio
 * `numerator / denominator`. Null for what is no number (NaN, infinite, a denominator of 0).
 */
export function rational(numerator: number, denominator = 1): Rational | null {
  const top = decimal(numerator);
  if (denominator === 1 || !top) return top;
  const bottom = decimal(denominator);
  return bottom && bottom.n !== 0n ? top.div(bottom) : null;
}

/** Exact reading of a finite number's shortest decimal form. */
function decimal(value: number): Rational | null {
  if (!Number.isFinite(value)) return null;
  if (Number.isSafeInteger(value)) return new Fraction(BigInt(value));
  const [digits = '0', exponent = '0'] = String(value).split('e');
  const mantissa = new Fraction(digits);
  const power = Number(exponent);
  const scale = new Fraction(10n ** BigInt(Math.abs(power)));
  return power < 0 ? mantissa.div(scale) : mantissa.mul(scale);
}

/** Above this a whole number may not fit a double. */
const MOST_EXACT = 2n ** 53n;

/** Nearest floating-point number, for drawing and for comparing with what a document holds. */
export function toNumber(value: Rational): number {
  if (value.n < MOST_EXACT && value.d < MOST_EXACT) return value.valueOf();
  // The two numbers do not fit a double each, so their quotient would be rounded twice: by its digits instead.
  const places = 25 + String(value.d).length - String(value.n).length;
  const digits = places > 0 ? (value.n * 10n ** BigInt(places)) / value.d : value.n / value.d;
  return Number(value.s) * Number(places > 0 ? `${digits}e-${places}` : String(digits));
}

/** A length typed in a unit, as exact centimetres. Null only for a number that is none (NaN, infinite). */
export function toCm(value: Rational, unit: LengthUnit): Length;
export function toCm(value: number, unit: LengthUnit): Length | null;
export function toCm(value: number | Rational, unit: LengthUnit): Length | null {
  const exact = typeof value === 'number' ? rational(value) : value;
  return exact?.mul(CM_PER[unit]) ?? null;
}

/** A length in inches as exact centimetres: 1 in = 2.54 cm. */
export function fromInches(value: Rational): Length;
export function fromInches(value: number): Length | null;
export function fromInches(value: number | Rational): Length | null {
  return typeof value === 'number' ? toCm(value, 'in') : toCm(value, 'in');
}

/** The exact number of `unit` in a length. */
export function inUnit(length: Length, unit: LengthUnit): Rational {
  return length.div(CM_PER[unit]);
}

/** The nearest multiple of `step` (above zero); halves go away from zero, so that both editions agree. */
export function roundTo(value: Rational, step: Rational): Rational {
  if (step.n === 0n) return value;
  const steps = value.div(step);
  const whole = steps.abs().add(new Fraction(1, 2)).floor();
  return (steps.s < 0n ? whole.neg() : whole).mul(step.abs());
}

/** Next multiple of `step` at or above the value: for amounts to buy. */
export function roundUpTo(value: Rational, step: Rational): Rational {
  return step.n === 0n ? value : value.div(step.abs()).ceil().mul(step.abs());
}

/** How finely lengths are shown (common practice): "small" is for babies' and other small items. */
export type Fineness = 'garment' | 'small' | 'large';

const STEP: Readonly<Record<'cm' | 'in', Readonly<Record<Fineness, Fraction>>>> = {
  cm: { garment: new Fraction(1, 2), small: new Fraction(1, 2), large: new Fraction(1) },
  in: { garment: new Fraction(1, 4), small: new Fraction(1, 8), large: new Fraction(1, 2) },
};

/**
 * A length as the number that is shown in cm or inches: to the nearest half centimetre or quarter inch
 * (small items an eighth; large ones 1 cm or half an inch), halves away from zero, from the exact value.
 */
export function displayLength(length: Length, unit: 'cm' | 'in', fineness: Fineness = 'garment'): Rational {
  return roundTo(inUnit(length, unit), STEP[unit][fineness]);
}

/** How a fraction is written: "36½", "36 1/2" or "36.5" (accessible edition). */
export type FractionStyle = 'glyph' | 'slash' | 'decimal';

const GLYPHS: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/3': '⅓',
  '2/3': '⅔',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};

/**
 * Writes an exact number. "glyph" and "slash" show a fraction in the printers' halves, thirds, quarters
 * and eighths; any other fraction, and the style "decimal", is written in decimals (at most `places`,
 * halves away from zero). Below zero it begins with a minus sign "−".
 */
export function formatNumber(value: Rational, style: FractionStyle = 'decimal', places = 2): string {
  const size = value.abs();
  const whole = size.n / size.d;
  const rest = `${size.n % size.d}/${size.d}`;
  const glyph = GLYPHS[rest];
  let text: string;
  if (size.d === 1n) text = String(whole);
  else if (style !== 'decimal' && glyph) {
    const part = style === 'glyph' ? glyph : rest;
    text = whole === 0n ? part : style === 'glyph' ? `${whole}${part}` : `${whole} ${part}`;
  } else text = decimals(size, places);
  return value.s < 0n && /[^0.]/.test(text) ? `−${text}` : text;
}

/** A number at or above zero in decimals, without trailing zeros. */
function decimals(value: Rational, places: number): string {
  const scale = 10n ** BigInt(Math.max(0, Math.min(12, Math.trunc(places) || 0)));
  const scaled = roundTo(value.mul(scale), new Fraction(1));
  const digits = (scaled.n / scale).toString();
  const rest = (scaled.n % scale).toString().padStart(scale.toString().length - 1, '0');
  const kept = rest.replace(/0+$/, '');
  return scale === 1n || kept === '' ? digits : `${digits}.${kept}`;
}

export interface LengthFormat {
  readonly fineness?: Fineness;
  /** How inch fractions are written; centimetres are always decimal. */
  readonly style?: FractionStyle;
}

/** A length with its unit as an edition prints it: "92.5 cm" or "36½ in". */
export function formatLength(length: Length, units: Units, format: LengthFormat = {}): string {
  const unit = units === 'metric' ? 'cm' : 'in';
  const shown = displayLength(length, unit, format.fineness ?? 'garment');
  return `${formatNumber(shown, unit === 'cm' ? 'decimal' : (format.style ?? 'glyph'), 3)} ${unit}`;
}

/** Both units, the edition's own first: "92.5 cm / 36½ in". Each is rounded from the exact length. */
export function formatBothLengths(length: Length, units: Units, format: LengthFormat = {}): string {
  const other = units === 'metric' ? 'imperial' : 'metric';
  return `${formatLength(length, units, format)} / ${formatLength(length, other, format)}`;
}

/** Yards in a length of yarn given in metres: 1 yd = 0.9144 m. */
export function metresToYards(metres: Rational): Rational {
  return metres.div(METRES_PER_YARD);
}

/** Metres in a length of yarn given in yards. */
export function yardsToMetres(yards: Rational): Rational {
  return yards.mul(METRES_PER_YARD);
}

/** Metres of yarn that are told in yards, to a tenth of a metre, as a document keeps them. */
export function metresOfYards(yards: number): number {
  const exact = rational(yards);
  return exact === null ? Number.NaN : roundTo(yardsToMetres(exact), new Fraction(1, 10)).valueOf();
}

/** Avoirdupois ounces in a weight in grams. */
export function gramsToOunces(grams: Rational): Rational {
  return grams.div(GRAMS_PER_OUNCE);
}

/** Grams in a weight in avoirdupois ounces. */
export function ouncesToGrams(ounces: Rational): Rational {
  return ounces.mul(GRAMS_PER_OUNCE);
}

/** Half a tenth of a metre, in either unit: documents keep lengths of yarn to a tenth of a metre. */
const KEPT = new Fraction(6, 100);

/** A yarn's length as printed, up to the next 5 of the unit (common practice): "365 m", "400 yd". 400 yd typed are 400 yd. */
export function formatYarnLength(metres: Rational, units: Units): string {
  const value = units === 'metric' ? metres : metresToYards(metres);
  return `${formatNumber(roundUpTo(value.compare(KEPT) > 0 ? value.sub(KEPT) : value, new Fraction(5)))} ${units === 'metric' ? 'm' : 'yd'}`;
}

/** A yarn's weight as printed: whole grams, ounces to two decimals. */
export function formatWeight(grams: Rational, units: Units): string {
  return units === 'metric'
    ? `${formatNumber(roundTo(grams, new Fraction(1)))} g`
    : `${formatNumber(gramsToOunces(grams))} oz`;
}

/**
 * A gauge count carried to another length: 16 stitches over 4 in are 15.748… over 10 cm, since 4 in is
 * 10.16 cm. Null when the length counted over is nothing.
 */
export function countOver(count: Rational, over: Length, target: Length): Rational | null {
  return over.n === 0n ? null : count.mul(target).div(over);
}

const FRACTION_VALUES: ReadonlyMap<string, Fraction> = new Map(
  Object.entries(GLYPHS).map(([ratio, glyph]) => [glyph, new Fraction(ratio)]),
);

const QUANTITY =
  /^([+\-−–])?\s*(?:(\d{1,9})(?:[.,](\d{1,9}))?(?:\s*([½⅓⅔¼¾⅛⅜⅝⅞])|[\s-]+(\d{1,4})\s*[/⁄]\s*(\d{1,4})|\s*[/⁄]\s*(\d{1,4}))?|([½⅓⅔¼¾⅛⅜⅝⅞])|\.(\d{1,9}))\s*([a-z%"″”]+(?: ?cent)?)?\.?$/iu;

const UNIT_WORDS: ReadonlyMap<string, Quantity['unit']> = new Map([
  ...['cm', 'cms', 'centimetre', 'centimetres', 'centimeter', 'centimeters'].map((w) => [w, 'cm'] as const),
  ...['mm', 'mms', 'millimetre', 'millimetres', 'millimeter', 'millimeters'].map((w) => [w, 'mm'] as const),
  ...['in', 'ins', 'inch', 'inches', '"', '″', '”'].map((w) => [w, 'in'] as const),
  ...['%', 'percent', 'per cent'].map((w) => [w, '%'] as const),
]);

/**
 * Reads a quantity as a maker types it: "14 cm", "5½ in", `36 1/2"`, "-5 %", "3", "7.25 inches", "2,5 cm".
 * A comma with three digits after it could be either a decimal or a thousand, so it is not read. Null when
 * the text is no quantity.
 */
export function parseQuantity(text: string): Quantity | null {
  if (text.length > 64) return null;
  const match = QUANTITY.exec(text.trim());
  if (!match) return null;
  const [, sign, whole, digits, glyph, top, bottom, under, alone, after, word] = match;
  const unit = word === undefined ? 'none' : UNIT_WORDS.get(word.toLowerCase());
  if (!unit) return null;
  if (digits !== undefined && (glyph ?? top ?? under) !== undefined) return null;
  if (/,\d{3}(?!\d)/.test(text)) return null;
  let value: Fraction;
  if (alone) value = FRACTION_VALUES.get(alone)!;
  else if (after) value = new Fraction(`0.${after}`);
  else if (under !== undefined) {
    if (Number(under) === 0) return null;
    value = new Fraction(Number(whole), Number(under));
  } else {
    value = new Fraction(digits === undefined ? whole! : `${whole}.${digits}`);
    if (glyph) value = value.add(FRACTION_VALUES.get(glyph)!);
    if (top !== undefined) {
      if (Number(bottom) === 0) return null;
      value = value.add(new Fraction(Number(top), Number(bottom)));
    }
  }
  const amount = toNumber(value);
  return { value: sign && sign !== '+' && amount !== 0 ? -amount : amount, unit };
}
