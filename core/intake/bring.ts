/**
 * From the plain text of an old pattern to a pattern: sizes, materials, gauge, words, pieces and rows, each in its
 * place; what is uncertain stays as words, with the reason in the workbook's doubts. Nothing is dropped: what was
 * left out on the way (page numbers) is told. Total: any text gives a pattern that can be saved.
 */
import type { Block, Pattern, Piece } from '../document/pattern.ts';
import { blankPattern } from '../outlines/blank.ts';
import { blockLabel, type Study, study } from '../study/index.ts';
import { levels } from '../trade/levels.ts';
import type { Terms } from '../trade/stitches.ts';
import { type Given, withRowsGiven } from './as-given.ts';
import { agrees, blocksOf, type MadeRepeat, type MadeRow, repeatAgrees, studyOf } from './blocks.ts';
import { bounded } from './bounds.ts';
import type { DoubtShown } from './doubt.ts';
import { type FrontMatter, frontMatter } from './front-matter.ts';
import { withTablesRead } from './laid-out.ts';
import { guessMarket, type MarketGuess } from './market.ts';
import { numbersIn } from './numbers.ts';
import { type Offer, offersIn } from './offers.ts';
import { type Passage, passageOfText } from './passage.ts';
import { type PictureMark, type PicturePlace, picturesApart, placesOf } from './pictures.ts';
import { mediaOf, type TakenPicture, withPictures } from './placed-pictures.ts';
import { type Section, sectionsOf, withNamesMarked } from './sections.ts';
import { intakeRefusals, intakeWords } from './sentences.ts';
import { withStarts } from './starts.ts';
import { joinedWords, readPassage, type Written } from './written.ts';

/** More letters than any pattern has. */
export const MOST_LETTERS = 400_000;

export interface BringOptions {
  /** The terms that the text is written in; null = they are guessed. */
  readonly terms: Terms | null;
  /** Title where the text has none: the name of the file. */
  readonly title: string;
  /** ISO date of the first version: the caller's. */
  readonly date: string;
  /** Pictures of a document, by the numbers that its text has for them. */
  readonly pictures?: readonly TakenPicture[];
  /** Lines at the edges of the document's pages, and remarks at its side: no words of the pattern. */
  readonly edges?: readonly string[];
  readonly remarks?: readonly string[];
}

export interface Brought {
  readonly pattern: Pattern;
  readonly market: MarketGuess;
  /** Rows and repeats written in the text, and how many of them can be followed. */
  readonly rows: { readonly written: number; readonly followed: number };
  readonly doubts: readonly DoubtShown[];
  readonly offers: readonly Offer[];
  /** Lines that only numbered or headed pages. */
  readonly leftOut: readonly string[];
}

export type Bringing =
  | { readonly ok: true; readonly brought: Brought }
  | { readonly ok: false; readonly message: string };

/** Ids in the order in which they are asked for. */
function counter(): () => string {
  let n = 0;
  return () => `b${++n}`;
}

/** Who holds the rights is said at the foot of pages, and belongs to the pattern all the same. */
const RIGHTS = /©|\(c\)\s|\bcopyright\b|\ball rights reserved\b/iu;

/** Brings a text in. */
export function bring(raw: string, options: BringOptions): Bringing {
  if (raw.length > MOST_LETTERS) return { ok: false, message: intakeRefusals.tooLong(MOST_LETTERS) };
  const edges = options.edges ?? [];
  const rights = edges.filter((line) => RIGHTS.test(line) && !raw.includes(line));
  const passage = passageOfText(withTablesRead([raw, ...rights].join('\n\n')));
  const { words, marks } =
    options.pictures === undefined ? { words: passage.text, marks: [] } : picturesApart(passage.text);
  if (words.trim() === '') return { ok: false, message: intakeRefusals.empty };
  return { ok: true, brought: broughtFrom({ ...passage, text: words }, marks, options) };
}

/** Brings in a passage whose lines are known already. */
function broughtFrom(passage: Passage, marks: readonly PictureMark[], options: BringOptions): Brought {
  const market = guessMarket(passage.text);
  const terms = options.terms ?? market.terms ?? 'us';
  const sections = sectionsOf(passage.text);
  const places = placesOf(passage.text, sections, marks);
  const pictures = options.pictures ?? [];
  const freshId = counter();
  const rowsText = rowsOf(sections);
  const front = frontMatter(sections, {
    terms,
    freshId,
    lists: listLengths(rowsText),
    heading:
      passage.leftOut.find(
        (line) =>
          /\p{L}{3}/u.test(line) && !/^(?:page|p\.)\s*\d|\b(?:no|issue|vol(?:ume)?)\.?\s*\d/iu.test(line),
      ) ?? null,
    fallback: options.title,
  });
  const read = (text: string) => {
    const written = readPassage(text, {
      terms,
      names: front.specials.flatMap(({ name, abbreviation }) =>
        [name, abbreviation].filter((word) => word !== ''),
      ),
      sizes: front.sizes.map(({ label }) => label),
      sizedRanges: true,
      pictures: linesOf(places, sections),
    });
    const drafted = draft(front, written, { date: options.date, terms, pictures, freshId });
    const started = withStarts(drafted.pattern);
    return { started, settled: settleCounts({ ...drafted, pattern: started.pattern }) };
  };
  const asWritten = read(rowsText);
  const counted = front.sizes.length === 2 ? countsMarked(rowsText) : rowsText;
  const asCounts = counted === rowsText ? asWritten : read(counted);
  const isBetter =
    followedRows(asCounts.settled.study).followed > followedRows(asWritten.settled.study).followed;
  const { started, settled } = isBetter ? asCounts : asWritten;
  const given = settled.given.map(({ at, words, other }): DoubtShown => {
    const { id, name } = settled.pattern.pieces[at]!;
    return { node: id, why: intakeWords.rowsGiven(words, other), where: name, words: '' };
  });
  const asides = (options.remarks ?? []).map(
    (words): DoubtShown => ({ node: '', why: intakeWords.remark(words), where: '', words: '' }),
  );
  const hung = withPictures(settled.study.pattern, { places, sections, pictures, freshId });
  const doubts = [
    ...front.doubts,
    ...given,
    ...started.doubts,
    ...rowDoubts(settled),
    ...hung.doubts,
    ...asides,
  ];
  const bound = bounded({
    ...hung.pattern,
    workbook: { ...hung.pattern.workbook, doubts: doubts.map(({ node, why }) => ({ node, why })) },
  });
  const studied = study(bound, settled.study);
  return {
    pattern: bound,
    market,
    rows: followedRows(studied),
    doubts,
    offers: offersIn(studied),
    leftOut: [...passage.leftOut, ...(options.edges ?? []).filter((line) => !RIGHTS.test(line))],
  };
}

/**
 * "inc x 6 [12]" at the end of a row as "inc x 6 (12 sts)": with two sizes it may be a list of both, or the number of
 * times and a count. What is meant shows in which of the two the rows come out.
 */
function countsMarked(text: string): string {
  return text.replace(
    /([x×]\s?\d{1,3}|\d{1,3}\stimes)\s*[([](\d{1,4})[)\]](?=[.\s]*$)/gmu,
    (_, times: string, count: string) => `${times} (${count} sts)`,
  );
}

/** The text of all parts with rows, gaps between them. */
function rowsOf(sections: readonly Section[]): string {
  return sections
    .filter(({ part }) => part === 'rows')
    .map(({ lines }) => joinedWords(withNamesMarked(lines).join('\n')))
    .join('\n\n');
}

/** The pictures that stand among the rows, by lines of `rowsOf` these parts. */
function linesOf(
  places: readonly PicturePlace[],
  sections: readonly Section[],
): readonly { readonly picture: number; readonly line: number }[] {
  let at = 0;
  const starts = sections.map(({ part, lines }) => {
    const start = at;
    if (part === 'rows') at += lines.length + 1;
    return start;
  });
  return places
    .filter(({ part }) => part === 'rows')
    .map(({ picture, section, line }) => ({ picture, line: starts[section]! + line + 1 }));
}

/** "Rnds 3-6:", "12:": a row's number at the head of its line, with the colon behind it. */
const LABEL = /^\W*(?:\p{L}+\.? ?)?\d{1,3}(?: ?(?:[-–—,&]|to|and) ?\d{1,3})*\s*:/iu;

/** How many numbers the lists of the rows have, where most of them agree; 1 where there are none. */
function listLengths(text: string): number {
  const counted = new Map<number, number>();
  for (const line of text.split('\n')) {
    // "Rnd 1: 6 sc" is a number and a count, and no list of two.
    const words = line.replace(LABEL, (label) => label.replace(':', ' '));
    for (const { values, unit, to } of numbersIn(words)) {
      // "inc x 6 (12)" ends with its count.
      const isLast = values.length === 2 && /^[\s.]*$/u.test(line.slice(to));
      if (values.length > 1 && unit === 'none' && !isLast)
        counted.set(values.length, (counted.get(values.length) ?? 0) + 1);
    }
  }
  // "(6) 12" is a count beside a number: a list of two is none until it is met often.
  const [most] = [...counted]
    .filter(([length, met]) => met > (length === 2 ? 4 : 1))
    .sort((a, b) => b[1] - a[1]);
  return most?.[0] ?? 1;
}

interface Draft {
  readonly pattern: Pattern;
  readonly made: readonly MadeRow[];
  readonly repeats: readonly MadeRepeat[];
  readonly given: readonly Given[];
}

interface Drafting {
  readonly terms: Terms;
  readonly date: string;
  readonly pictures: readonly TakenPicture[];
  readonly freshId: () => string;
}

/** The pattern as it was read, all typed counts still in the words of its rows. */
/** What the line of the sheet is called that holds how many rows of a piece are repeated in each size. */
function repeatedRowsOf(piece: string): string {
  const plain = piece
    .replace(/\([^()]*\)/gu, ' ')
    .replace(/[^\p{L}\p{N} ]/gu, '')
    .replace(/\s+/gu, ' ')
    .trim();
  return `${plain || 'piece'} repeated rows`.slice(0, 150).toLowerCase();
}

function draft(front: FrontMatter, written: Written, { terms, date, pictures, freshId }: Drafting): Draft {
  const made: MadeRow[] = [];
  const repeats: MadeRepeat[] = [];
  const lines = [...front.lines];
  const names = new Set(lines.map(({ name }) => name.toLowerCase()));
  const sizeIds = (labels: readonly string[] | null) =>
    labels?.flatMap((label) => front.sizes.find((size) => size.label === label)?.id ?? []) ?? null;
  const { pieces: named, notes: said } = withoutPreface(written.pieces);
  const withRows = withRowsGiven(named);
  const pieces = withRows.pieces.map((piece): Piece => {
    const name = (piece.name ?? front.title).slice(0, 200);
    const rowsFormula = (rows: readonly number[]): string => {
      let line = repeatedRowsOf(name);
      for (let n = 2; names.has(line); n++) line = line.replace(/(?: \d+)?$/u, ` ${n}`);
      names.add(line);
      const each = Object.fromEntries(
        front.sizes.map(({ id }, i) => [id, { value: rows[i] ?? 0, unit: 'none' as const }]),
      );
      lines.push({ id: freshId(), name: line, printed: null, note: null, kind: 'typed', values: { each } });
      return line;
    };
    const picture = (n: number) => mediaOf(pictures[n]);
    const own = blocksOf(piece, { freshId, sizeIds, rowsFormula, picture });
    made.push(...own.made);
    repeats.push(...own.repeats);
    return {
      id: freshId(),
      name,
      make: piece.make,
      start: { kind: 'chain' },
      firstSide: firstSideOf(own.made),
      gauge: front.gauges.length === 1 ? front.gauges[0]!.id : '',
      blocks: own.blocks,
      meets: [],
    };
  });
  const blank = blankPattern({ title: front.title, terms, units: front.units, date });
  const specials = [
    ...front.specials,
    ...written.specials.filter(({ name }) =>
      front.specials.every((own) => own.name.toLowerCase() !== name.toLowerCase()),
    ),
  ];
  const pattern: Pattern = {
    ...blank,
    about: { ...blank.about, ...front.about, level: front.level ?? levels[0]!.level },
    sizes: front.sizes,
    sample: front.sizes.length === 1 ? front.sizes[0]!.id : null,
    lines,
    gauges: front.gauges,
    yarns: front.yarns,
    hooks: front.hooks,
    notions: front.notions,
    abbreviations: front.abbreviations,
    specials: specials.map(({ name, abbreviation, text }) => ({
      id: freshId(),
      nameUs: name,
      nameUk: name,
      abbrUs: abbreviation,
      abbrUk: abbreviation,
      text: { text, figures: [] },
    })),
    notes: [...front.notes, ...written.notes, ...said].map((text) => ({ text, figures: [] })),
    pieces,
    finishing: front.finishing.map((text) => ({ text, figures: [] })),
  };
  return { pattern, made, repeats, given: withRows.given };
}

/** "The shawl is worked from one corner." before the first piece that has a name is a note, and no piece. */
function withoutPreface(pieces: Written['pieces']): {
  readonly pieces: Written['pieces'];
  readonly notes: readonly string[];
} {
  const [first, ...others] = pieces;
  const [next] = others;
  if (first === undefined || first.name !== null || next === undefined) return { pieces, notes: [] };
  const photos = first.blocks.filter(({ kind }) => kind === 'photo');
  const notes = first.blocks.flatMap((block) =>
    block.kind === 'prose' && !looksLikeWork(block.text) ? [block.text] : [],
  );
  if (notes.length + photos.length < first.blocks.length) return { pieces, notes: [] };
  // Its pictures go to the piece behind it.
  const begun = photos.length === 0 ? next : { ...next, blocks: [...photos, ...next.blocks] };
  return { pieces: [begun, ...others.slice(1)], notes };
}

/** The side that faces on the first row, from the first label that says a side. */
function firstSideOf(made: readonly MadeRow[]): 'RS' | 'WS' {
  const said = made.find(({ row }) => row.side !== null && row.number !== null)?.row;
  if (said == null) return 'RS';
  const isOdd = said.number! % 2 === 1;
  return (said.side === 'RS') === isOdd ? 'RS' : 'WS';
}

interface Settled extends Draft {
  readonly study: Study;
}

/** Takes out the typed counts that the rows really leave; the others stay where a finding points at them. */
function settleCounts(drafted: Draft): Settled {
  const first = study(drafted.pattern);
  const counted = new Map(
    drafted.made.flatMap(({ id, row }) =>
      row.count !== null && agrees(first, id) ? [[id, row.count] as const] : [],
    ),
  );
  const wrong = new Map(
    drafted.repeats.filter((repeat) => !repeatAgrees(first, repeat)).map((repeat) => [repeat.id, repeat]),
  );
  const settled = (): Study =>
    study({ ...drafted.pattern, pieces: drafted.pattern.pieces.map(without) }, first);
  const without = (piece: Piece): Piece => ({
    ...piece,
    blocks: piece.blocks.flatMap((block): Block[] => {
      const count = counted.get(block.id);
      if (count !== undefined && block.type === 'row') {
        const text = block.text.text.slice(0, count.from) + block.text.text.slice(count.to);
        return [{ ...block, text: { text: text.trim(), figures: [] } }];
      }
      const repeat = wrong.get(block.id);
      if (repeat === undefined) return [block];
      // A repeat has no words of its own: a count that stays stands in a paragraph behind it.
      const words = { text: repeat.words, figures: [] };
      return [block, { type: 'prose', id: `${block.id}-count`, text: words, sizes: null }];
    }),
  });
  // A count may be all that tells how a row is meant (does its chain count?): where a row comes out otherwise without
  // it, it stays.
  let now = settled();
  for (let kept = true; kept; ) {
    kept = false;
    for (const { blocks } of now.pieces) {
      const other = blocks.find(({ block, sizes }) => {
        const before = studyOf(first, block.id)?.block.sizes;
        return before?.some((size, i) => size?.tally.stitches !== sizes[i]?.tally.stitches) ?? false;
      });
      if (other === undefined) continue;
      const own = counted.has(other.block.id) ? [other] : blocks;
      for (const { block } of own) kept = counted.delete(block.id) || kept;
    }
    if (kept) now = settled();
  }
  return { ...drafted, study: now };
}

const GRAVITY = { error: 0, warning: 1, note: 2 } as const;

/** What in the rows needs the maker. */
function rowDoubts({ study: studied, made, repeats }: Settled): readonly DoubtShown[] {
  const doubts: DoubtShown[] = [];
  const asked = new Map(made.map(({ id, row }) => [id, row]));
  const counts = new Map(repeats.map((repeat) => [repeat.id, repeat]));
  for (const piece of studied.pieces) {
    for (const block of piece.blocks) {
      const { id, type } = block.block;
      const label = blockLabel(piece, block);
      const where = [piece.piece.name, label?.text ?? ''].filter((words) => words !== '').join(', ');
      const add = (why: string, words: string) => doubts.push({ node: id, why, where, words });
      if (block.block.type === 'prose') {
        const words = block.block.text.text;
        const repeat = counts.get(id.replace(/-count$/u, ''));
        if (repeat !== undefined && id.endsWith('-count')) add(intakeWords.countKept(repeat.words), words);
        else if (looksLikeWork(words)) add(intakeWords.looksLikeWork, words);
        continue;
      }
      if (type !== 'row' && type !== 'repeat') continue;
      const words = block.block.type === 'row' ? block.block.text.text : '';
      const [found] = studied.findings
        .filter(({ where: at, severity }) => at.node === id && severity !== 'note')
        .sort((a, b) => GRAVITY[a.severity] - GRAVITY[b.severity]);
      const row = asked.get(id);
      if (found !== undefined) add(found.message, words);
      else if (!isFollowed(studied, id)) add(intakeWords.notWorked, words);
      else {
        const first = block.sizes.find((size) => size !== null) ?? null;
        const number = first?.first ?? null;
        const sized = row?.numbers;
        const isOther = block.sizes.some(
          (size, i) => size !== null && size.first !== (sized?.[i] ?? size.first),
        );
        if (row?.number != null && number !== null && number !== row.number)
          add(intakeWords.renumbered(String(row.number), label?.text ?? ''), words);
        else if (sized !== undefined && isOther)
          add(intakeWords.renumbered(sized.map((each) => each ?? '–').join(', '), label?.text ?? ''), words);
        else if (row?.side != null && first?.side != null && first.side !== row.side)
          add(intakeWords.otherSide(SIDES[row.side], SIDES[first.side]), words);
      }
    }
  }
  return doubts;
}

const SIDES = { RS: 'right side', WS: 'wrong side' } as const;

/** Words of rows that the reader passed over: a label with words behind it, or several stitches with numbers. */
function looksLikeWork(words: string): boolean {
  if (/\brows?\b[^.]{0,20}\b(?:forms?|sets?|establish(?:es)?)\b[^.]*\.?$/iu.test(words)) return false;
  if (/^(?:(?:rows?|rnds?|rounds?)\s*\d|\d+(?:st|nd|rd|th)\s+(?:row|rnd|round)|R\d+\b)/iu.test(words))
    return true;
  const stitches = words.match(/\b(?:\d+\s?)?(?:sc|hdc|dc|htr|tr|dtr|ch|sl st|ss|inc|dec|sts?)\b/gu) ?? [];
  return stitches.length > 2 && /\d/u.test(words);
}

/** Whether a row or repeat can be followed in every size that works it. */
function isFollowed(studied: Study, id: string): boolean {
  const found = studyOf(studied, id);
  if (found === null || found.block.sizes.every((size) => size === null)) return false;
  if (found.block.tree !== null && !found.block.tree.read) return false;
  return !studied.findings.some(({ where, severity }) => where.node === id && severity === 'error');
}

function followedRows(studied: Study): Brought['rows'] {
  const rows = studied.pattern.pieces.flatMap(({ blocks }) =>
    blocks.filter(({ type }) => type === 'row' || type === 'repeat'),
  );
  return { written: rows.length, followed: rows.filter(({ id }) => isFollowed(studied, id)).length };
}
