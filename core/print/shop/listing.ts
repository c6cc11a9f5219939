/**
 * The text of a shop's listing, plain words in one market's terms: what the files are, sizes and measurements in both
 * units, materials, level, what is in the files. Everything is the study's or the maker's own words: no claims are
 * made up, and no words of law (these depend on the seller's country). Facts that a listing tells: common practice.
 */
import type { Study } from '../../study/index.ts';
import type { Terms } from '../../trade/stitches.ts';
import type { Block, Booklet, Image, Words } from '../content.ts';
import { amountsOf, amountWords, estimateNote, yarnLabel } from '../edition/amounts.ts';
import { dateWords } from '../edition/closing.ts';
import { materialsPart } from '../edition/materials.ts';
import { measurementHeading, measurementsFor, measurementWords } from '../edition/measurements.ts';
import { type Reader, readerOf } from '../edition/reader.ts';
import type { Edition, Paper } from '../style.ts';

/** A file that a buyer gets. */
export interface ListedFile {
  readonly file: string;
  readonly paper: Paper;
  readonly edition: Edition;
  /** Label of the size it is for; null = all. */
  readonly size: string | null;
  readonly pages: number;
}

export interface ListingOptions {
  readonly terms: Terms;
  readonly files: readonly ListedFile[];
  /** The booklet of all sizes, for what is drawn and shown in it. */
  readonly booklet: Booklet;
}

const PAPERS: Readonly<Record<Paper, string>> = { a4: 'A4', letter: 'US Letter' };
const EDITIONS: Readonly<Record<Edition, string>> = {
  standard: 'standard edition',
  'large-print': 'large print',
  'ink-saving': 'ink-saving edition',
};

const say = (words: Words): string =>
  words
    .map(({ text }) => text)
    .join('')
    .replaceAll('\u00A0', ' ')
    .trim();

/** The listing. */
export function listingOf(study: Study, { terms, files, booklet }: ListingOptions): string {
  const all = study.pattern.sizes.map((_, i) => i);
  const { reader } = readerOf(study, terms, study.pattern.units, all);
  const { about } = study.pattern;
  const garment = reader.say(about.garment.trim(), null);
  const title = booklet.meta.title;
  const parts: (readonly string[])[] = [
    [title, 'Crochet pattern, PDF to download'],
    [
      `This is a crochet pattern: instructions to make ${garment === '' ? 'the item' : `the ${garment}`} yourself. It is not a finished item.`,
    ],
    (booklet.cover?.summary ?? []).map(say),
    facts(reader, booklet),
    measurements(reader),
    materials(reader),
    contents(reader, files, booklet),
  ];
  const text = parts.filter((lines) => lines.length > 0).map((lines) => lines.join('\n'));
  return `${text.join('\n\n').replaceAll('\u00A0', ' ')}\n`;
}

function facts(reader: Reader, { cover, meta }: Booklet): readonly string[] {
  const told = new Set(['Level', 'Size', 'Sizes']);
  return [
    `Terms: ${meta.termsNote}`,
    'Language: English',
    ...(cover?.glance ?? [])
      .filter(({ label }) => told.has(say(label)))
      .map(({ label, value }) => `${say(label)}: ${say(value)}`),
    ...(reader.pattern.about.fit.trim() === ''
      ? []
      : [`Fit: ${reader.say(reader.pattern.about.fit.trim(), null)}`]),
  ];
}

function measurements(reader: Reader): readonly string[] {
  const lines = measurementsFor(reader).map(
    (one) => `${measurementHeading(one, reader)}: ${say(measurementWords(one, reader))}`,
  );
  return lines.length === 0 ? [] : ['Measurements', ...lines];
}

/** The lines of a part's facts and lists; tables have a line of their own below. */
function linesOf(block: Block): readonly string[] {
  switch (block.kind) {
    case 'entries':
      return block.items.map(({ label, value }) => `${say(label)}: ${say(value)}`);
    case 'list':
      return block.items.map(say);
    case 'together':
      return block.blocks.flatMap(linesOf);
    case 'with-next':
      return linesOf(block.block);
    default:
      return [];
  }
}

function materials(reader: Reader): readonly string[] {
  const own = materialsPart(reader);
  if (own === null) return [];
  const blocks = own.blocks.flatMap((block) => (block.kind === 'together' ? block.blocks : [block]));
  const gauge = blocks.findIndex(
    (block) => block.kind === 'heading' && say(block.words) === reader.wording.gauge,
  );
  const before = gauge < 0 ? blocks : blocks.slice(0, gauge);
  const counted = reader.pattern.gauges.length === 0 || gauge < 0 ? [] : blocks.slice(gauge + 1);
  const gauges = counted
    .flatMap((block) => (block.kind === 'paragraph' ? [say(block.words)] : linesOf(block)))
    .filter((line) => line !== reader.wording.gaugeAdvice);
  const lines = [
    ...before.flatMap(linesOf),
    ...amounts(reader),
    ...gauges.map((line) =>
      line.startsWith(reader.wording.gauge) ? line : `${reader.wording.gauge}: ${line}`,
    ),
  ];
  return lines.length === 0 ? [] : ['Materials', ...lines];
}

/** Yarn of every size in both units; of one size it stands with the yarn. */
function amounts(reader: Reader): readonly string[] {
  if (reader.sizes.length < 2) return [];
  const all = reader.pattern.yarns.map((yarn) => ({ yarn, amounts: amountsOf(yarn, reader) }));
  // Where all of them are estimates it is said once, behind them.
  const known = all.flatMap(({ amounts: own }) => own.filter((amount) => amount !== null));
  const areEstimates = known.length > 0 && known.every(({ estimated }) => estimated);
  const lines = all.flatMap(({ yarn, amounts: own }) => {
    const each = own.flatMap((amount, i) => {
      const words =
        amount === null ? null : amountWords(areEstimates ? { ...amount, estimated: false } : amount, reader);
      return words === null ? [] : [`${reader.pattern.sizes[reader.sizes[i]!]!.label}: ${words}`];
    });
    return each.length === 0 ? [] : [`${yarnLabel(yarn)} for each size: ${each.join('; ')}`];
  });
  const note = areEstimates && lines.length > 0 ? estimateNote('Amounts of yarn', reader) : null;
  return [...lines, ...(note === null ? [] : [note])];
}

const some = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

function contents(reader: Reader, files: readonly ListedFile[], booklet: Booklet): readonly string[] {
  const images = booklet.parts.flatMap(({ blocks }) => blocks.flatMap(imagesIn));
  const drawn = images.flatMap(({ source, name }) => (source === 'drawing' ? [name] : []));
  // A chart's parts and its key are one chart to a buyer: their names differ in their last number.
  const charts = new Set(drawn.filter(isOfChart).map((name) => name.slice(0, name.lastIndexOf(' '))));
  const schematics = drawn.filter((name) => !isOfChart(name)).length;
  const shown = images.length - drawn.length + (booklet.cover?.image == null ? 0 : 1);
  const { about, sizes } = reader.pattern;
  const version = [
    about.version.trim() === '' ? '' : `Version ${about.version.trim()}`,
    dateWords(about.date, reader),
  ];
  return [
    'In the files',
    sizes.length > 1 ? `Written instructions for ${sizes.length} sizes` : 'Written instructions',
    ...(schematics === 0 ? [] : [some(schematics, 'schematic', 'schematics')]),
    ...(charts.size === 0 ? [] : [some(charts.size, 'stitch chart', 'stitch charts')]),
    ...(shown === 0 ? [] : [some(shown, 'photograph', 'photographs')]),
    ...files.map(({ file, paper, edition, size, pages }) => {
      const whom = sizes.length < 2 ? '' : size === null ? ', all sizes' : `, size ${size}`;
      return `${file}: ${some(pages, 'page', 'pages')}, ${PAPERS[paper]}, ${EDITIONS[edition]}${whom}`;
    }),
    ...(version.some((words) => words !== '') ? [version.filter((words) => words !== '').join(', ')] : []),
  ];
}

const isOfChart = (name: string): boolean => name.startsWith('chart ');

function imagesIn(block: Block): readonly Image[] {
  if (block.kind === 'figure') return [block.image];
  if (block.kind === 'together') return block.blocks.flatMap(imagesIn);
  return block.kind === 'with-next' ? imagesIn(block.block) : [];
}
