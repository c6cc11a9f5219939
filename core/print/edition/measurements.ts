/**
 * The part that tells the sizes: how size lists are read, the body each size is to fit, what each finished size
 * measures, which size was made, and the place of the schematic. Rounds to the market's half centimetre and
 * quarter inch, as the last step; the lengths themselves are the study's.
 */

import { type Measurement, measurementsOf, sharedList, sizeKeyOf } from '../../study/index.ts';
import { lengthList } from '../../study/length-list.ts';
import { displayLength, formatNumber, type Length, rational, toCm } from '../../trade/units.ts';
import {
  type Block,
  bold,
  drawing,
  entries,
  figure,
  heading,
  numbers,
  type Part,
  paragraph,
  part,
  plain,
  sizeKey,
  type Text,
  table,
  together,
  type Words,
  withNext,
} from '../content.ts';
import type { Drawing } from './drawings.ts';
import type { Reader } from './reader.ts';
import { capitalised, listRuns, plainWords, uncapitalised } from './text.ts';

/** A measurement's heading as it stands beside its numbers. */
export function measurementHeading(measurement: Measurement, reader: Reader): string {
  const words = reader.say(measurement.heading, measurement.line);
  const named = measurement.of === 'piece' || /\bfits?\b|\bbody\b/iu.test(words);
  const worn = measurement.stretched ? ', stretched' : '';
  return `${named ? words : `To fit ${uncapitalised(words)}`}${worn}`;
}

/** Body measurements first, then the finished ones, each in the order of the sheet. */
export function measurementsFor(reader: Reader): readonly Measurement[] {
  const all = measurementsOf(reader.study.sheet).filter((one) =>
    reader.sizes.some((size) => one.values[size] != null),
  );
  return [...all.filter((one) => one.of === 'body'), ...all.filter((one) => one.of === 'piece')];
}

/** A measurement of the sizes shown, in both units, the reader's first. */
export function measurementWords(measurement: Measurement, reader: Reader): Words {
  const values = reader.sizes.map((size) => measurement.values[size] ?? null);
  if (values.some((value) => value !== null && 'count' in value)) {
    return [
      numbers(
        sharedList(
          values.map((value) => (value !== null && 'count' in value ? formatNumber(value.count) : null)),
        ),
      ),
    ];
  }
  return listRuns(lengthList(values.map(lengthOf), reader.units));
}

function lengthOf(value: Measurement['values'][number]): Length | null {
  return value !== null && 'length' in value ? value.length : null;
}

/** How to read the lists; null where there is only one size. */
function keyBlock(reader: Reader): Block | null {
  const { pattern, sizes, alone, madeFor } = reader;
  if (madeFor !== null) {
    return paragraph([
      'This sheet is for ',
      bold(madeFor.name),
      ' alone: every number, row and amount in it follows from the measurements below. It is made for one person and is not for sale.',
    ]);
  }
  if (pattern.sizes.length < 2) return null;
  if (alone) {
    const label = pattern.sizes[sizes[0]!]!.label;
    return paragraph([
      'This edition is for ',
      bold(`size ${label}`),
      ' alone: every number, row and amount in it is the one for that size.',
    ]);
  }
  return sizeKey('How to read sizes', [
    'Numbers for the smallest size come first, those for larger sizes follow in parentheses: ',
    numbers(sizeKeyOf(pattern.sizes), 'bold'),
    '. A number that stands alone is for every size; a dash stands in the place of a size that has nothing to work there.',
  ]);
}

/** The part of sizes and measurements; its schematics are those that are given. */
export function sizesPart(reader: Reader, schematics: readonly Drawing[]): Part {
  const key = keyBlock(reader);
  const measurements = measurementsFor(reader);
  return part(reader.madeFor === null ? 'Sizes and finished measurements' : 'Measurements', [
    ...(key === null ? [] : [key]),
    ...ownBlocks(measurements, reader),
    ...(reader.sizes.length === 1 ? factsOf(measurements, reader) : tablesOf(measurements, reader)),
    ...fitBlocks(measurements, reader),
    ...schematicFigures(schematics, reader),
  ]);
}

/** What was measured of the person and is printed nowhere else. */
function ownBlocks(measurements: readonly Measurement[], { madeFor, units }: Reader): readonly Block[] {
  const told = new Set(measurements.map(({ line }) => line));
  const items = (madeFor?.values ?? [])
    .filter(({ line }) => !told.has(line))
    .flatMap(({ name, value }): (readonly [Text, Text])[] => {
      const { unit } = value;
      const number = rational(value.value);
      if (number === null || unit === 'none')
        return number === null ? [] : [[capitalised(name), formatNumber(number)]];
      if (unit === '%') return [[capitalised(name), `${formatNumber(number)}%`]];
      return [[capitalised(name), listRuns(lengthList([toCm(number, unit)], units))]];
    });
  return items.length === 0 ? [] : [entries('facts', items)];
}

/** Of one size, a list: a table of one column would say no more. */
function factsOf(measurements: readonly Measurement[], reader: Reader): readonly Block[] {
  if (measurements.length === 0) return [];
  return [
    entries(
      'facts',
      measurements.map((one) => [measurementHeading(one, reader), measurementWords(one, reader)] as const),
    ),
  ];
}

function tablesOf(measurements: readonly Measurement[], reader: Reader): readonly Block[] {
  const { wording, units, pattern, sizes } = reader;
  const lengths = measurements.filter((one) =>
    sizes.some((size) => lengthOf(one.values[size] ?? null) !== null),
  );
  if (lengths.length === 0) return [];
  const heads = sizes.map((size) => pattern.sizes[size]!.label);
  const heading = (one: Measurement) => measurementHeading(one, reader);
  const leading = units === 'metric' ? 'cm' : 'in';
  const inBoth = lengths.map((one): readonly [Text, ...Text[]] => [
    heading(one),
    ...sizes.map((size) => {
      const length = lengthOf(one.values[size] ?? null);
      return length === null ? '–' : listRuns(lengthList([length], units));
    }),
  ]);
  const inUnit = (unit: 'cm' | 'in'): Block =>
    table({
      caption: `Measurements in ${unit === 'cm' ? wording.centimetres : 'inches'}`,
      corner: 'Size',
      heads,
      rows: lengths.map((one): readonly [Text, ...Text[]] => [
        heading(one),
        ...sizes.map((size) => {
          const length = lengthOf(one.values[size] ?? null);
          const style = unit === 'cm' ? 'decimal' : 'glyph';
          return length === null ? '–' : formatNumber(displayLength(length, unit), style, 3);
        }),
      ]),
      // A line has room for both units, so the lines of the first table tell the second as well.
      told: unit === leading ? 'by-column' : 'elsewhere',
      lines: unit === leading ? { caption: 'Measurements', rows: inBoth } : null,
    });
  return leading === 'cm' ? [inUnit('cm'), inUnit('in')] : [inUnit('in'), inUnit('cm')];
}

/** The maker's advice on fit, the ease that the numbers give, the size that was made. */
function fitBlocks(measurements: readonly Measurement[], reader: Reader): readonly Block[] {
  const { pattern } = reader;
  const items: (readonly [Text, Text])[] = [];
  if (pattern.about.fit.trim() !== '' && reader.madeFor === null)
    items.push(['Fit', plainWords(pattern.about.fit, reader)]);
  const eases = measurements.flatMap((one) => {
    const words = one.ease === null ? null : easeWords(one.ease, reader);
    return words === null ? [] : [[one, words] as const];
  });
  for (const [one, words] of eases) {
    const at = measurementHeading(one, reader).replace(/^finished /iu, '');
    items.push([eases.length === 1 ? 'Ease' : `Ease at ${uncapitalised(at)}`, words]);
  }
  const sample = pattern.sizes.find((size) => size.id === pattern.sample);
  if (sample !== undefined && pattern.sizes.length > 1)
    items.push(['Sample', `The sample was made in size ${sample.label}.`]);
  return items.length === 0 ? [] : [entries('facts', items)];
}

/** "10 cm / 4 in", or from the least to the most where the sizes differ; less than the body has a minus sign. */
function easeWords(ease: readonly (Length | null)[], reader: Reader): Words | null {
  const there = reader.sizes.flatMap((size) => ease[size] ?? []);
  const [first] = there;
  if (first === undefined) return null;
  const least = there.reduce((a, b) => (a.compare(b) < 0 ? a : b));
  const most = there.reduce((a, b) => (a.compare(b) > 0 ? a : b));
  const inUnit = (unit: 'cm' | 'in'): string => {
    const [from, to] = [least, most].map((length) =>
      formatNumber(displayLength(length, unit), unit === 'cm' ? 'decimal' : 'glyph', 3),
    );
    return `${from === to ? from : `${from} to ${to}`}\u00A0${unit}`;
  };
  const both = reader.units === 'metric' ? ['cm', 'in'] : ['in', 'cm'];
  return [plain(both.map((unit) => inUnit(unit as 'cm' | 'in')).join('\u00A0/ '))];
}

/** A list in both units; no line begins with the stroke between them. */
const keptRuns = (words: string): Words =>
  words.split(' / ').flatMap((list, i) => (i === 0 ? [numbers(list)] : [plain('\u00A0/ '), numbers(list)]));

/** The place of the schematics: after the numbers that they show. */
export function schematicFigures(drawings: readonly Drawing[], reader: Reader): readonly Block[] {
  if (drawings.length === 0) return [];
  return [
    heading(2, drawings.length === 1 ? 'Schematic' : 'Schematics'),
    ...drawings.flatMap((one): readonly Block[] => {
      const caption = one.caption === null ? null : reader.say(one.caption, null);
      // What is said of the drawing stands under it, so that it never goes overleaf behind the numbers alone.
      const shown = figure(drawing(one.name, one.aspect, one.width ?? null), one.alt, caption);
      const said = (one.notes ?? []).length === 0 ? null : paragraph(one.notes!.join(' '), 'small');
      const numbers = entries(
        'facts',
        (one.key ?? []).map(({ letter, label, numbers: words }) => [
          letter,
          [plain(`${label}: `), ...keptRuns(words)],
        ]),
      );
      return [
        ...(one.title === undefined || one.title === '' ? [] : [heading(3, one.title)]),
        together(...(said === null ? [shown] : [withNext(shown), said]), numbers),
      ];
    }),
  ];
}
