/**
 * Materials and gauge: yarn by its weight's name in the reader's market and amounts for each size, hooks, notions,
 * and the gauge as it was counted. Amounts of yarn are told by `amounts`.
 */
import type { Gauge, Notion, PerSize, Quantity, Yarn } from '../../document/pattern.ts';
import { sharedList } from '../../study/index.ts';
import { hookLabel } from '../../trade/hooks.ts';
import {
  displayLength,
  formatNumber,
  type Length,
  metresToYards,
  type Rational,
  rational,
  roundTo,
  toCm,
} from '../../trade/units.ts';
import { yarnWeight } from '../../trade/yarn-weights.ts';
import {
  type Block,
  entries,
  heading,
  list,
  numbers,
  type Part,
  paragraph,
  part,
  type Run,
  type Text,
  together,
} from '../content.ts';
import { amountsOf, amountTable, amountWords, yarnLabel } from './amounts.ts';
import type { Reader } from './reader.ts';
import { capitalised, hold, uncapitalised } from './text.ts';

const ONE = rational(1)!;

/** The part with yarn, hooks, notions and gauge; null when the pattern names none of them. */
export function materialsPart(reader: Reader): Part | null {
  const materials = materialBlocks(reader);
  const gauge = gaugeBlocks(reader);
  if (materials.length === 0 && gauge.length === 0) return null;
  const title =
    materials.length === 0 ? reader.wording.gauge : `Materials and ${reader.wording.gauge.toLowerCase()}`;
  return part(title, [
    ...(materials.length === 0 ? [] : [heading(2, 'Materials'), ...materials]),
    ...(gauge.length === 0 ? [] : [together(heading(2, reader.wording.gauge), ...gauge)]),
  ]);
}

function materialBlocks(reader: Reader): readonly Block[] {
  const { pattern } = reader;
  const items: (readonly [Text, Text])[] = pattern.yarns.map((yarn) => [
    yarnLabel(yarn),
    yarnWords(yarn, reader),
  ]);
  if (pattern.hooks.length > 0) {
    items.push([pattern.hooks.length === 1 ? 'Hook' : 'Hooks', hookWords(reader)]);
  }
  if (pattern.notions.length > 0) {
    items.push(['Notions', joined(pattern.notions.map((notion) => notionWords(notion, reader)))]);
  }
  const amounts = amountTable(reader);
  return [...(items.length === 0 ? [] : [entries('facts', items)]), ...(amounts === null ? [] : [amounts])];
}

/** "worsted (4, Medium), 100 % wool; 100 g = 180 m / 197 yd": weight, fibre and ball, then the amount if there is one size. */
function yarnWords(yarn: Yarn, reader: Reader): Text {
  const facts = [
    reader.say(yarn.name.trim(), yarn.id),
    weightWords(yarn.weight, reader),
    reader.say(yarn.fibre.trim(), yarn.id),
  ].filter((words) => words !== '');
  const ball = ballWords(yarn, reader);
  const runs: (Run | string)[] = [hold(capitalised(facts.join('; ')))];
  if (ball !== null) runs.push(`${facts.length > 0 ? '; ' : ''}${ball}`);
  if (reader.sizes.length === 1) {
    const [amount] = amountsOf(yarn, reader);
    const words = amount == null ? null : amountWords(amount, reader);
    if (words !== null) runs.push(`. Amount: ${words}`);
  }
  return [...runs, '.'];
}

/**
 * "worsted weight (category 4: Medium)". With a colon, since a number and a word in parentheses after a comma
 * would look like a list of sizes.
 */
export function weightWords(weight: number | null, reader: Reader): string {
  const known = weight === null ? null : yarnWeight(weight);
  return known === null
    ? ''
    : `${known.usual[reader.terms]} weight (category ${known.number}: ${known.name})`;
}

/** A ball's own figures are the maker's of the yarn: whole metres and yards. */
function ballWords(yarn: Yarn, reader: Reader): string | null {
  const metres = yarn.ballMetres === null ? null : rational(yarn.ballMetres);
  const length =
    metres === null
      ? null
      : bothLengths(metres, reader, (value, unit) => `${formatNumber(roundTo(value, ONE))}\u00A0${unit}`);
  const grams = yarn.ballGrams === null ? null : `${formatNumber(rational(yarn.ballGrams) ?? ONE)}\u00A0g`;
  if (grams !== null && length !== null) return `${length} per ${grams} ball`;
  return length === null ? (grams === null ? null : `balls of ${grams}`) : `${length} per ball`;
}

function bothLengths(
  metres: Rational,
  reader: Reader,
  one: (value: Rational, unit: 'm' | 'yd') => string,
): string {
  const words = [one(metres, 'm'), one(metresToYards(metres), 'yd')];
  return (reader.units === 'metric' ? words : words.reverse()).join('\u00A0/ ');
}

function hookWords(reader: Reader): Text {
  return joined(
    reader.pattern.hooks.map((hook) => {
      const purpose = reader.say(hook.purpose.trim(), hook.id);
      return [
        `${hookLabel(hook.mm, reader.terms).replaceAll(' ', '\u00A0')}${purpose === '' ? '' : ` ${purpose}`}`,
      ];
    }),
  );
}

/** "5 (5, 6) buttons, 15 mm across"; a notion without an amount by its name. */
function notionWords(notion: Notion, reader: Reader): readonly (Run | string)[] {
  const name = reader.say(notion.name.trim(), notion.id);
  const amounts =
    notion.amount === null ? null : reader.sizes.map((size) => amountFor(notion.amount!, reader, size));
  if (amounts === null || amounts.every((amount) => amount === null)) return [uncapitalised(name)];
  const listed = sharedList(
    amounts.map((amount) => (amount === null ? null : formatNumber(rational(amount)!))),
  );
  const [first] = amounts;
  const isOne = amounts.every((amount) => amount === first) && first === 1;
  return [numbers(listed), ` ${counted(uncapitalised(name), isOne)}`];
}

/** Small things that are counted, by the last word of what they are called. */
const COUNTED =
  /^([^,;(]*?\b(?:button|marker|eye|needle|bead|toggle|snap|fastener|stud|pin|zip|zipper|ring|clasp|bell|pompom|magnet|buckle))(s?)(?![\p{L}-])/iu;

/** "1 button", "4 stitch markers": the thing in the number that it is listed in, whichever its maker wrote. */
const counted = (name: string, isOne: boolean): string =>
  name.replace(COUNTED, (_, thing: string) => `${thing}${isOne ? '' : 's'}`);

function amountFor(amount: PerSize<number>, reader: Reader, size: number): number | null {
  const value = 'all' in amount ? amount.all : (amount.each[reader.pattern.sizes[size]!.id] ?? null);
  return value !== null && Number.isFinite(value) ? value : null;
}

/** Items after one another with semicolons; the first with a capital, a full stop at the end. */
function joined(items: readonly (readonly (Run | string)[])[]): Text {
  const runs = items.flatMap((item, i) => (i === 0 ? item : ['; ', ...item]));
  return [
    ...runs.map((run, i) => (typeof run === 'string' ? hold(i === 0 ? capitalised(run) : run) : run)),
    '.',
  ];
}

/** Each gauge: what was counted over what, in which stitch, with which hook, before or after blocking. */
function gaugeBlocks(reader: Reader): readonly Block[] {
  const { gauges } = reader.pattern;
  if (gauges.length === 0) return [];
  const texts = gauges.map((gauge) => gaugeText(gauge, reader));
  return [
    texts.length === 1 ? paragraph(texts[0]!) : list('bulleted', texts),
    paragraph(hold(reader.wording.gaugeAdvice)),
  ];
}

function gaugeText(gauge: Gauge, reader: Reader): string {
  const noun = gauge.rounds ? 'rnds' : 'rows';
  const counted = [
    gauge.stitches > 0 ? `${formatNumber(rational(gauge.stitches)!)} sts` : '',
    gauge.rows > 0 ? `${formatNumber(rational(gauge.rows)!)} ${noun}` : '',
  ].filter((words) => words !== '');
  const hook = reader.pattern.hooks.find((one) => one.id === gauge.hook);
  const sentences = [
    [
      `${counted.join(' and ')} = ${areaWords(gauge, reader)}`,
      gauge.pattern.trim() === '' ? '' : ` in ${uncapitalised(reader.say(gauge.pattern.trim(), gauge.id))}`,
      hook === undefined ? '' : ` with the ${hookLabel(hook.mm, reader.terms)} hook`,
      `, worked ${gauge.rounds ? 'in rounds' : 'in rows'}, measured ${gauge.blocked ? 'after' : 'before'} blocking`,
    ].join(''),
    gauge.stretch === null ? '' : stretchWords(gauge.stretch, reader),
  ].filter((words) => words !== '');
  return hold(`${sentences.join('. ')}.`);
}

const lengthOf = (quantity: Quantity): Length | null =>
  quantity.unit === '%' || quantity.unit === 'none' ? null : toCm(quantity.value, quantity.unit);

/** "10 × 10 cm (4 × 4 in)". */
function areaWords(gauge: Gauge, reader: Reader): string {
  const [width, height] = [lengthOf(gauge.width), lengthOf(gauge.height)];
  if (width === null || height === null) return 'the square measured';
  const area = (unit: 'cm' | 'in') => `${numberIn(width, unit)} × ${numberIn(height, unit)} ${unit}`;
  const words = [area('cm'), area('in')];
  const [first, second] = reader.units === 'metric' ? words : words.reverse();
  return `${first} (${second})`.replaceAll(' × ', '\u00A0×\u00A0');
}

function numberIn(length: Length, unit: 'cm' | 'in'): string {
  return formatNumber(displayLength(length, unit), unit === 'cm' ? 'decimal' : 'glyph', 3);
}

function stretchWords(stretch: NonNullable<Gauge['stretch']>, reader: Reader): string {
  const [lies, worn] = [lengthOf(stretch.lies), lengthOf(stretch.worn)];
  if (lies === null || worn === null) return '';
  const both = (length: Length) => {
    const words = [`${numberIn(length, 'cm')} cm`, `${numberIn(length, 'in')} in`];
    return (reader.units === 'metric' ? words : words.reverse()).join('\u00A0/ ');
  };
  return `The fabric stretches: ${both(lies)} lying flat is worn at ${both(worn)}`;
}
