/**
 * From a study to the booklet that a buyer reads: one edition, in one market's terms, for all sizes or for one.
 * It puts the parts in order; what each says is in `edition/`. Pure: no clock, no disk; the date and the version
 * are the document's. Nothing is laid out here.
 */

import { titleOf } from '../document/title.ts';
import type { Study } from '../study/index.ts';
import { sizeKeyOf } from '../study/index.ts';
import type { YarnReport } from '../study/yarn.ts';
import type { Abbreviation } from '../trade/abbreviations.ts';
import type { Terms } from '../trade/stitches.ts';
import type { Block, Booklet, Meta, Part, Words } from './content.ts';
import { chartsPart, type EditionChart } from './edition/charts.ts';
import {
  aboutPart,
  cautionsPart,
  finishingPart,
  type GivenCaution,
  versionWords,
} from './edition/closing.ts';
import { coverOf } from './edition/cover.ts';
import type { Drawing } from './edition/drawings.ts';
import { materialsPart } from './edition/materials.ts';
import { sizesPart } from './edition/measurements.ts';
import { piecePart } from './edition/pieces.ts';
import {
  type EditionChoice,
  type EditionFact,
  type MadeFor,
  type Reader,
  readerFor,
} from './edition/reader.ts';
import { abbreviationsOf, notesPart, specialBlocks, termsPart } from './edition/terms.ts';

export type { EditionChart } from './edition/charts.ts';
export type { GivenCaution } from './edition/closing.ts';
export type { Drawing } from './edition/drawings.ts';
export type { EditionFact, MadeFor } from './edition/reader.ts';

export interface EditionOptions extends EditionChoice {
  /** Cautions that follow from sizes, garment and notions; those the maker wrote are printed after them. */
  readonly cautions?: readonly GivenCaution[];
  /** The person whose own sheet this is, printed from that person's column alone; never for sale. */
  readonly madeFor?: MadeFor;
  /** Amounts of yarn reckoned elsewhere: of the pattern that a sheet comes from. */
  readonly yarn?: YarnReport;
  /** Drawings of the finished pieces, for their place after the measurements. */
  readonly schematics?: readonly Drawing[];
  /** Stitch charts, for their place after the pieces. */
  readonly charts?: readonly EditionChart[];
}

export interface EditionOfPattern {
  readonly booklet: Booklet;
  /**
   * What could not be printed as it should: `term-in-doubt` {words, readings}, `figure-without-number` {figure,
   * sizes}, `size-without-number` {list, size}, `size-not-known` {size}.
   */
  readonly facts: readonly EditionFact[];
}

/** The booklet of an edition. A size that the pattern does not have gives all sizes, and a fact. */
export function bookletOf(study: Study, options: EditionOptions): EditionOfPattern {
  const { reader, facts, known } = readerFor(study, options, options.madeFor, options.yarn);
  if (!known) {
    reader.report(null, { code: 'size-not-known', from: 0, to: 0, data: { size: options.sizes } });
  }
  const { cover, sizes, materials, specials, notes, pieces, finishing, about, texts } = written(
    study,
    reader,
    options,
  );
  const terms = termsPart(reader, specials, texts);
  const parts: readonly (Part | null)[] = [
    sizes,
    materials,
    terms,
    notes,
    ...pieces,
    chartsPart(options.charts ?? []),
    finishing,
    cautionsPart(reader, options.cautions ?? []),
    about,
  ];
  return {
    booklet: {
      meta: metaOf(reader),
      cover,
      parts: parts.filter((part) => part !== null && part.blocks.length > 0) as Part[],
    },
    facts,
  };
}

/** The list of abbreviations that an edition for all sizes prints, in the terms of a market. */
export function printedAbbreviations(study: Study, terms: Terms): readonly Abbreviation[] {
  const options = { terms, sizes: 'all', units: study.pattern.units } as const;
  const { reader } = readerFor(study, options);
  return abbreviationsOf(reader, written(study, reader, options).texts).lines;
}

/** The parts whose words are the pattern's, and all those words: one text for each row, paragraph or cell. */
function written(study: Study, reader: Reader, options: EditionOptions) {
  const { pattern } = study;
  const cover = coverOf(reader);
  const sizes = sizesPart(reader, options.schematics ?? []);
  const materials = materialsPart(reader);
  const specials = specialBlocks(reader);
  const notes = notesPart(reader);
  const pieces = study.pieces.map((piece, i) => piecePart(piece, reader, i === 0));
  const finishing = finishingPart(reader);
  const about = aboutPart(reader);
  const others = [sizes, materials, notes, ...pieces, finishing, about].filter((part) => part !== null);
  const texts = [
    ...cover.summary.map(textOf),
    ...others.flatMap((part) => [part.title, ...part.blocks.flatMap(textsOf)]),
    ...specials.flatMap(definitionsOf),
    // The trade's cautions name rules, whose letters are no abbreviations of crochet.
    ...pattern.cautions.map((text) => reader.say(text, null)),
  ];
  return { cover, sizes, materials, specials, notes, pieces, finishing, about, texts };
}

function metaOf(reader: Reader): Meta {
  const { pattern, wording, alone, sizes, madeFor } = reader;
  const { about } = pattern;
  const garment = reader.say(about.garment.trim(), null);
  const key = sizeKeyOf(pattern.sizes);
  const single = alone || pattern.sizes.length === 1;
  return {
    title: reader.say(titleOf(about), null),
    author: about.designer.trim(),
    language: wording.language,
    subject: garment === '' ? 'Crochet pattern' : `Crochet pattern: ${garment}`,
    keywords: ['crochet', 'pattern', garment, wording.termsNote].filter((word) => word !== ''),
    date: about.date.trim(),
    termsNote: wording.termsNote,
    version: versionWords(about, reader.terms),
    sizeKey:
      madeFor !== null
        ? `Made to measure for ${madeFor.name} · not for sale`
        : key === ''
          ? ''
          : single
            ? `Size ${pattern.sizes[sizes[0]!]!.label}`
            : `Sizes ${key}`,
  };
}

const textOf = (words: Words): string =>
  words
    .map((run) => run.text)
    .join('')
    .replaceAll('\u00A0', ' ');

/** How special stitches are made. Their short names are used only where rows use them. */
function definitionsOf(block: Block): readonly string[] {
  return block.kind === 'entries' ? block.items.map((item) => textOf(item.value)) : [];
}

/** The words of a block as they are read, one text for each line of thought. */
function textsOf(block: Block): readonly string[] {
  switch (block.kind) {
    case 'heading':
    case 'paragraph':
    case 'key':
      return [textOf(block.words)];
    case 'row': {
      const label = block.side === null ? block.label : `${block.label} (${block.side})`;
      const count = block.count === null ? [] : [`${block.label}: ${textOf(block.count)}`];
      return [`${label}: ${textOf(block.body)}`, ...count];
    }
    case 'list':
      return block.items.map(textOf);
    case 'entries':
      return block.items.flatMap((item) => [textOf(item.label), textOf(item.value)]);
    case 'table':
      return [textOf(block.caption), ...block.rows.flatMap((row) => [row.head, ...row.cells].map(textOf))];
    case 'figure':
      return [block.alt, ...(block.caption === null ? [] : [textOf(block.caption)])];
    case 'caution':
      return [block.title, ...block.paragraphs.map(textOf)];
    case 'together':
      return block.blocks.flatMap(textsOf);
    case 'with-next':
      return textsOf(block.block);
    case 'space':
    case 'page-break':
      return [];
  }
}
