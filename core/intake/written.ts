/**
 * From a passage to what a pattern is made of: pieces, rows, repeats, paragraphs. Typed labels and typed counts
 * are found here, with their places; what becomes of the counts is decided when the rows have been worked. All
 * words of the passage come out again: what the reader passes over is a paragraph.
 */
import type { Span } from '../finding.ts';
import { readText } from '../notation/index.ts';
import type { Item, RowTree, StatedCount } from '../notation/tree.ts';
import { isTradeWord } from '../trade/known-words.ts';
import type { Terms } from '../trade/stitches.ts';
import { copiesOf } from './copies.ts';
import { withEveryOther } from './every-other.ts';
import { goingOn } from './going-on.ts';
import { canBeChecked, closingOf, countOf, endsOnly, endsWork } from './row-ends.ts';
import { calledIn, isNext, plainNumber, type Range, rangeOf, titleOf } from './row-labels.ts';
import { sizesOf } from './row-sizes.ts';

export type RowForm = 'row' | 'round' | 'foundation';

export interface PastedRow {
  readonly kind: 'row';
  readonly text: string;
  readonly form: RowForm;
  readonly title: string | null;
  /** Labels of the sizes that work it; null = all. */
  readonly sizes: readonly string[] | null;
  /** Number of its first row as typed; null when it had none. */
  readonly number: number | null;
  /** The same where it differs by size: "Row 81 (81, 83)". */
  readonly numbers?: readonly (number | null)[];
  /** "Next row": it goes on from what is there. */
  readonly isNext?: true;
  /** It is worked again on every so manieth row from there: 2 for "Row 2 and all even rows". */
  readonly onward?: number;
  /** Side that its label says faces; null when it says none. */
  readonly side: 'RS' | 'WS' | null;
  /** Where the typed count at its end stands, with what leads to it; null when it has none that can be checked. */
  readonly count: { readonly from: number; readonly to: number } | null;
}

export type PastedBlock =
  | PastedRow
  /** Rows of these typed numbers, worked again for so many rows. */
  | {
      readonly kind: 'repeat';
      readonly first: number;
      readonly last: number;
      /** For all sizes, or one for each. */
      readonly rows: number | readonly number[];
      readonly number: number | null;
      readonly sizes: readonly string[] | null;
      readonly form: RowForm;
      /** The words, for when there are no such rows. */
      readonly text: string;
      /** The count typed behind it, with its words; null when it has none. */
      readonly count: { readonly stated: StatedCount; readonly words: string } | null;
    }
  | { readonly kind: 'prose' | 'heading'; readonly text: string }
  /** A picture, by its number. */
  | { readonly kind: 'photo'; readonly picture: number };

export interface PastedPiece {
  /** Its heading; null for what stands before any. */
  readonly name: string | null;
  readonly make: number;
  readonly blocks: readonly PastedBlock[];
}

export interface Written {
  readonly pieces: readonly PastedPiece[];
  readonly specials: readonly {
    readonly name: string;
    readonly abbreviation: string;
    readonly text: string;
  }[];
  /** Sentences that settle something for all rows. */
  readonly notes: readonly string[];
}

/** Lines that name a part of a pattern, not a piece. */
const SECTION =
  /^(?:special st|stitch guide|abbreviation|pattern note|notes?$|material|gauge|tension|instruction|finishing|sizes?$|yarn|hook|notion|suppl|measurement|terms)/iu;

/** Headings of stitches and notes, which a pattern keeps in lists of their own. */
const MOVED = /^(?:special st|stitch guide|pattern note|notes?\b)/iu;

/** "Work exactly as given for Back.": a piece that has the rows of another. */
export const AS_PIECE =
  /^(?:(?:work|make|made|worked|crochet)\s+)?(?:exactly\s+)?(?:(?:the )?same\s+as|as)\s+(?:(?:given|described|instructed|worked)\s+)?(?:for\s+)?(?:the\s+)?(\p{L}[\p{L}\p{N}’' -]{0,40}?)\s*\.?\s*$/iu;

/** "Shape armholes" goes on with the piece that it stands in. */
const SHAPES = /^(?:shape|shaping|divide for)\b/iu;

interface Part {
  readonly from: number;
  readonly to: number;
  readonly make: (() => readonly PastedBlock[]) | { readonly piece: string } | null;
}

/** Words of a passage over several lines as one line. A word parted at a line's end is put together again. */
export function oneLine(text: string): string {
  return text
    .replace(/(\p{L}+)-\s*\n\s*(\p{Ll}+)/gu, (_, before: string, after: string) =>
      isTradeWord(before) && isTradeWord(after) ? `${before}-${after}` : `${before}${after}`,
    )
    .replace(/(\d|\p{L})-\s*\n\s*/gu, '$1-')
    .replace(/\s*\n\s*/g, ' ')
    .replace(/\s{2,}/g, ' ')
    .trim();
}

/** Words parted at the end of a line, each put together on the line where it begins; the lines stay. */
export const joinedWords = (text: string): string =>
  text.replace(
    /(\p{L}{2,})-[ ]*\n[ ]*(\p{Ll}{2,}[^\s\p{L}]*)[ ]?/gu,
    (whole, before: string, after: string) =>
      isTradeWord(before) && isTradeWord(after.replace(/\P{L}+$/u, '')) ? whole : `${before}${after}\n`,
  );

/** What a passage is read with. */
export interface PassageOptions {
  readonly terms: Terms;
  /** Names of the pattern's own stitches, as the reader takes them. */
  readonly names: readonly string[];
  /** Labels of the pattern's sizes. */
  readonly sizes: readonly string[];
  /** Whether "Rows 4–60 (62, 64)" can become a repeat that differs by size. */
  readonly sizedRanges?: boolean;
  /** Pictures, and above which line of the passage each stands (from 0), in order. */
  readonly pictures?: readonly { readonly picture: number; readonly line: number }[];
}

/** Reads a passage. */
export function readPassage(text: string, options: PassageOptions): Written {
  const { terms, names, sizes } = options;
  const ranged = options.sizedRanges === true ? sizes.length : 1;
  const tree = readText(text, {
    terms,
    names,
    ...(sizes.length > 1 ? { sizes: sizes.length, labels: sizes } : {}),
  });
  const parts: Part[] = [];
  const specials: Written['specials'][number][] = [];
  const notes: string[] = [];
  let form: RowForm = 'row';
  for (const piece of tree.pieces) {
    if (piece.heading !== null)
      parts.push({ from: piece.heading.from, to: piece.heading.to, make: { piece: piece.heading.text } });
    for (const { from, to, names, inside } of piece.definitions) {
      if (inside) {
        specials.push({ name: names[0] ?? '', abbreviation: '', text: oneLine(text.slice(from, to)) });
        continue;
      }
      specials.push(specialOf(oneLine(text.slice(from, to)), names));
      parts.push({ from, to, make: null });
    }
    for (const { from, to } of piece.conventions) {
      notes.push(oneLine(text.slice(from, to)));
      parts.push({ from, to, make: null });
    }
    if (piece.rows[0] !== undefined && startsAfresh(piece.rows[0])) form = 'row';
    for (const row of piece.rows) {
      form = formOf(row, form);
      const own = form;
      const only = sizesOf(row.only, sizes);
      parts.push({ from: row.from, to: row.to, make: () => blocksOf(row, text, own, only, ranged) });
      if (row.only !== null && only !== null && !isWithin(row.only, row))
        parts.push({ from: row.only.from, to: row.only.to, make: null });
    }
  }
  for (const { picture, line } of options.pictures ?? []) {
    const at = startOfLine(text, line);
    parts.push({ from: at, to: at, make: () => [{ kind: 'photo', picture }] });
  }
  return { pieces: assembled(parts, text), specials, notes };
}

function startOfLine(text: string, line: number): number {
  let at = 0;
  for (let i = 0; i < line; i++) {
    const end = text.indexOf('\n', at);
    if (end < 0) return text.length;
    at = end + 1;
  }
  return at;
}

/** Parts in order, with all the words between them as paragraphs. */
function assembled(parts: readonly Part[], text: string): readonly PastedPiece[] {
  const pieces: { name: string | null; make: number; blocks: PastedBlock[] }[] = [];
  const piece = () => {
    if (pieces.length === 0) pieces.push({ name: null, make: 1, blocks: [] });
    return pieces.at(-1)!;
  };
  let at = 0;
  const between = (to: number): void => {
    for (const words of paragraphs(text.slice(at, to)))
      if (words.startsWith('## ')) pieces.push({ ...copiesOf(words.slice(3)), blocks: [] });
      else
        piece().blocks.push({
          kind: SECTION.test(words) && words.length < 40 ? 'heading' : 'prose',
          text: words,
        });
  };
  for (const { from, to, make } of [...parts].sort((a, b) => a.from - b.from || a.to - b.to)) {
    if (from < at) {
      // The same size line stands above several rows; a picture within the words of a row comes behind it.
      if (from === to && typeof make === 'function') piece().blocks.push(...make());
      continue;
    }
    between(from);
    at = to;
    if (make === null) continue;
    if (typeof make === 'function') piece().blocks.push(...make());
    else if (AS_PIECE.test(make.piece)) piece().blocks.push({ kind: 'prose', text: oneLine(make.piece) });
    else if (SHAPES.test(make.piece) && pieces.at(-1)?.blocks.some(({ kind }) => kind === 'row'))
      piece().blocks.push({ kind: 'heading', text: oneLine(make.piece) });
    else pieces.push({ ...copiesOf(oneLine(make.piece)), blocks: [] });
  }
  between(text.length);
  // What stood under these headings has gone to lists of its own.
  const isLeft = (block: PastedBlock, i: number, all: readonly PastedBlock[]) =>
    block.kind === 'heading' && MOVED.test(block.text) && (all[i + 1]?.kind ?? 'heading') === 'heading';
  // "Thank you!" behind everything is no piece.
  const last = pieces.at(-1);
  if (pieces.length > 1 && last!.blocks.length === 0 && last!.name !== null) {
    pieces.pop();
    pieces.at(-1)!.blocks.push({ kind: 'prose', text: last!.name });
  }
  return goingOn(pieces).map(({ blocks, ...piece }) => ({
    ...piece,
    blocks: withEveryOther(blocks.filter((block, i) => !isLeft(block, i, blocks))),
  }));
}

/** Paragraphs of running text: a line that does not end a sentence goes on in the next. */
function paragraphs(text: string): readonly string[] {
  const found: string[] = [];
  for (const group of text.split(/\n\s*\n/)) {
    let open = '';
    for (const line of group.split('\n')) {
      // The stop, colon or dash behind a label or a definition belongs to it.
      const words = line.trim().replace(/^[.:;,\s]+/u, '');
      if (words === '') continue;
      const goesOn = !words.startsWith('## ') && open.length > 40 && !/[.!?:;)\]”"]$/u.test(open);
      if (open !== '' && !goesOn) found.push(oneLine(open));
      open = open !== '' && goesOn ? `${open}\n${words}` : words;
    }
    if (open !== '') found.push(oneLine(open));
  }
  return found;
}

function specialOf(words: string, names: readonly string[]): Written['specials'][number] {
  const at = /\s*(?::|=|\s[-–—]\s)\s*/u.exec(words);
  const head = at === null ? (names[0] ?? '') : words.slice(0, at.index);
  const text = at === null ? words : words.slice(at.index + at[0].length);
  const both = /^(.*?)\s*[([](.+?)[)\]]$/u.exec(head);
  return { name: both?.[1] ?? head, abbreviation: both?.[2] ?? '', text };
}

const MAKES_START: readonly Item['type'][] = ['chain', 'ring', 'aside', 'colour', 'turn'];

/** "Row 1", or a row without a number: whether it is a row or a round is not to be taken from the piece before. */
function startsAfresh({ label }: RowTree): boolean {
  const numbers = label?.numbers;
  return (
    numbers == null || (numbers.kind === 'one' && numbers.number.kind === 'one' && numbers.number.value === 1)
  );
}

/** Work that goes into a ring. */
function isInRing(items: readonly Item[]): boolean {
  return items.some(
    (item) =>
      item.type === 'ring' ||
      ((item.type === 'work' || item.type === 'group') && item.places.some(({ kind }) => kind === 'ring')),
  );
}

function formOf({ label, items }: RowTree, before: RowForm): RowForm {
  // "R1" is a row or a round, which the work shows.
  if (label?.short === true && (before === 'round' || isInRing(items))) return 'round';
  if (label?.kind === 'round') return 'round';
  // A set-up row comes before the numbered ones.
  if (label?.kind === 'foundation' || (label?.kind === 'set-up' && label.numbers === null))
    return 'foundation';
  if (label?.kind === 'row' || label?.kind === 'set-up' || label?.kind === 'numbered')
    return label.kind === 'numbered' && before === 'round' ? 'round' : 'row';
  if (label === null && items.some(({ type }) => type === 'chain' || type === 'ring')) {
    if (items.every(({ type }) => MAKES_START.includes(type))) return 'foundation';
  }
  return before === 'foundation' ? 'row' : before;
}

const isWithin = (inner: Span, outer: Span): boolean => inner.from >= outer.from && inner.to <= outer.to;

function blocksOf(
  row: RowTree,
  text: string,
  form: RowForm,
  sizes: readonly string[] | null,
  ranged: number,
): readonly PastedBlock[] {
  const told = rangeOf(row.label, sizes === null ? ranged : 1);
  const inside = row.only !== null && isWithin(row.only, row);
  const whole = oneLine(text.slice(row.from, row.to));
  const isMany = told !== null && told.rows !== 1;
  const closing = closingOf(row, text, isMany);
  if (closing !== null) {
    const items = row.items.filter(({ to }) => to <= closing.from);
    const counts = row.counts.filter(({ to }) => to <= closing.from);
    const own = blocksOf({ ...row, items, counts, to: closing.from }, text, form, sizes, ranged);
    const words = oneLine(text.slice(closing.from, row.to));
    return [...own, { kind: 'prose', text: words.charAt(0).toUpperCase() + words.slice(1) }];
  }
  const again = repeatOf(row, told, sizes, form, whole, text);
  if (again !== null) return [again];
  if (row.label === null && row.items.length > 0 && (row.items.every(endsWork) || endsOnly(row.items)))
    return [{ kind: 'prose', text: whole }];
  // Rows that repeat others in a way that no block has are not to be worked once for each of them.
  const range = told?.rows !== 1 && row.items.some(({ type }) => type === 'rows-again') ? null : told;
  // A label that says more than a block can ("Rows 2, 4 and 6") stays in the words, where the reader asks about it.
  const startAt =
    range === null
      ? row.from
      : Math.max(row.label?.to ?? row.from, inside && sizes !== null ? row.only!.to : row.from);
  const signs = /^[\s:.)\]\-–—]+/u.exec(text.slice(startAt, row.to));
  const from = startAt + (startAt > row.from ? (signs?.[0].length ?? 0) : 0);
  const written = text.slice(from, row.to);
  const count = countOf(row, text, from);
  const lead = leadOf(row, text, startAt, inside && sizes !== null);
  const body = `${lead}${oneLine(written)}`;
  const kept = count === null ? body : `${lead}${oneLine(text.slice(from, count))}`;
  const first: PastedRow = {
    kind: 'row',
    text: body,
    form,
    title: titleOf(range === null ? null : row.label, text),
    sizes,
    number: range?.first ?? null,
    ...(range?.firsts === undefined ? {} : { numbers: range.firsts }),
    ...(isNext(row.label, text) ? { isNext: true } : {}),
    ...(range?.onward === undefined ? {} : { onward: range.onward }),
    side: range === null ? null : (row.label?.side ?? null),
    count: count === null || !body.startsWith(kept) ? null : { from: kept.length, to: body.length },
  };
  const called = range === null ? '' : calledIn(row.label, text);
  if (called !== '') return [{ kind: 'heading', text: called }, ...repeated(first, range, sizes, form)];
  return repeated(first, range, sizes, form);
}

/** Words of a row before its label: "Join yarn at lower edge. Row 1: …" is all one row. */
function leadOf({ from, label, only }: RowTree, text: string, startAt: number, isOnlySaid: boolean): string {
  if (label === null || startAt <= from || label.from <= from) return '';
  const isBefore = only !== null && isOnlySaid && only.from >= from && only.to <= label.from;
  const words = isBefore
    ? `${text.slice(from, only.from)} ${text.slice(only.to, label.from)}`
    : text.slice(from, label.from);
  const lead = oneLine(words.replace(/^[\s:.,;]+/u, ''));
  return /\p{L}/u.test(lead) ? `${lead} ` : '';
}

/** A row, and behind it the repeat of it that its label asks for. */
function repeated(
  first: PastedRow,
  range: Range | null,
  sizes: readonly string[] | null,
  form: RowForm,
): readonly PastedBlock[] {
  if (range === null || range.rows === 1) return [first];
  const next = range.first === null ? null : range.first + 1;
  return [
    first,
    {
      kind: 'repeat',
      first: range.first ?? Number.NaN,
      last: range.first ?? Number.NaN,
      rows: typeof range.rows === 'number' ? range.rows - 1 : range.rows.map((n) => n - 1),
      number: next,
      sizes,
      form,
      text: '',
      count: null,
    },
  ];
}

/** "Rows 4–9: rep Rows 2 and 3" as a repeat; null when the words ask for more than that. */
function repeatOf(
  row: RowTree,
  range: Range | null,
  sizes: readonly string[] | null,
  form: RowForm,
  text: string,
  source: string,
): PastedBlock | null {
  const [item, ...others] = row.items.filter(({ type }) => type !== 'aside');
  // "Next 6 (6, 8) rnds: as Rnd 2." has no number of its own, and says how many they are.
  const isCounted =
    range !== null && (range.first !== null || range.firsts !== undefined || range.rows !== 1);
  if (range === null || !isCounted || item?.type !== 'rows-again' || others.length > 0) return null;
  const [count, more] = row.counts;
  if (more !== undefined || (count !== undefined && !count.parts.every(canBeChecked))) return null;
  const { rows, times, every, until, left, endingWith } = item;
  if (every !== undefined || until !== null || left !== null || endingWith !== null) return null;
  const numbers =
    rows.kind === 'numbers' ? [rows.first, rows.last] : rows.kind === 'list' ? rows.numbers : [];
  const listed = numbers.map(plainNumber);
  if (listed.length === 0 || listed.some((n) => n === null)) return null;
  const known = listed as readonly number[];
  const climbs = rows.kind === 'numbers' || known.every((n, i) => i === 0 || n === known[i - 1]! + 1);
  if (!climbs) return null;
  // "Rows 4–9: rep Rows 2 and 3 three times" says it twice; said otherwise it is for the reader to ask.
  const often = times === null ? null : plainNumber(times);
  const group = known.at(-1)! - known[0]! + 1;
  if (times !== null && (often === null || often * group !== range.rows)) return null;
  return {
    kind: 'repeat',
    first: known[0]!,
    last: known.at(-1)!,
    rows: range.rows,
    number: range.first,
    sizes,
    form,
    text,
    count: count === undefined ? null : { stated: count, words: oneLine(source.slice(count.from, count.to)) },
  };
}
