/**
 * What a booklet says, before anybody decides where it stands on paper: a neutral tree of blocks and runs,
 * with small constructors to fill it. It knows nothing of sizes of type, pages, fonts or patterns, and it
 * holds finished words only: every number and label has been worked out before it comes here.
 */

/** How a run differs from the text around it. Large print shows `italic` as bold. */
export type Emphasis = 'plain' | 'bold' | 'italic';

/**
 * How firmly a run holds together: `loose` breaks at spaces (inside brackets only where it must), `firm`
 * never breaks unless it is wider than the line, `numbers` is a firm list of numbers that, when it is wider
 * than the line, breaks after a bracket or a comma.
 */
export type Hold = 'loose' | 'firm' | 'numbers';

export interface Run {
  readonly text: string;
  readonly emphasis: Emphasis;
  readonly hold: Hold;
}

/** Text of one paragraph, cell, label or item. A no-break space (U+00A0) in a run is honoured. */
export type Words = readonly Run[];

/** What the constructors take for text: a string is one plain run. */
export type Text = string | Run | readonly (string | Run)[];

export interface Heading {
  readonly kind: 'heading';
  readonly level: 1 | 2 | 3;
  readonly words: Words;
}

export interface Paragraph {
  readonly kind: 'paragraph';
  readonly words: Words;
  /** `lead` opens a part in larger type; `small` is for copyright and contact. */
  readonly look: 'body' | 'lead' | 'small';
}

/** One row or round of a pattern, or a step that is read in the same way. */
export interface Row {
  readonly kind: 'row';
  /** "Row 3", "Rnds 4–9"; without colon. */
  readonly label: string;
  /** "RS", "WS" or null. */
  readonly side: string | null;
  /** "Sizes L, XL only": printed before the body; null when every size works it. */
  readonly only: string | null;
  readonly body: Words;
  /** "(64 (70, 76) sts)": stays on the line of the body's last words. */
  readonly count: Words | null;
}

export interface List {
  readonly kind: 'list';
  readonly form: 'bulleted' | 'numbered';
  readonly items: readonly Words[];
}

/** A term or label and what it means: abbreviations, materials, sizes at a glance. */
export interface Entry {
  readonly label: Words;
  readonly value: Words;
}

export interface Entries {
  readonly kind: 'entries';
  /** `terms` (abbreviations: label as it stands) or `facts` (label followed by a colon). */
  readonly form: 'terms' | 'facts';
  readonly items: readonly Entry[];
}

export interface TableRow {
  readonly head: Words;
  readonly cells: readonly Words[];
}

export interface Table {
  readonly kind: 'table';
  readonly caption: Words;
  /** Head of the column that holds the row heads. */
  readonly corner: Words;
  /** Heads of the other columns, in order: one per size as a rule. */
  readonly heads: readonly Words[];
  readonly rows: readonly TableRow[];
  /** Numbers stand flush right under their heads, words flush left. */
  readonly align: 'numbers' | 'words';
  /** A remark under the table; null for none. */
  readonly note: Words | null;
  /**
   * Where a table is told in lines (large print): one group of lines for each row, or for each column; or
   * nothing, because another table's lines tell it.
   */
  readonly told: 'by-row' | 'by-column' | 'elsewhere';
  /** What the lines tell instead, where they can hold more than the cells of a table; null for the same. */
  readonly lines: Pick<Table, 'caption' | 'rows'> | null;
}

/** A picture by the name the caller's resources know, or a drawing that is painted into a reserved place. */
export type Image =
  | { readonly source: 'picture'; readonly name: string }
  | {
      readonly source: 'drawing';
      readonly name: string;
      /** Width of the drawing divided by its height. */
      readonly aspect: number;
      /** How wide it is meant to be, in points; null for as wide as there is room. */
      readonly width: number | null;
    };

export interface Figure {
  readonly kind: 'figure';
  readonly image: Image;
  /** What the picture shows, for those who do not see it. */
  readonly alt: string;
  readonly caption: Words | null;
  /** Across the page, across the text column, or half of it. */
  readonly width: 'page' | 'column' | 'half';
}

export interface Caution {
  readonly kind: 'caution';
  /** Says in words that this is a caution ("Caution: cords"), for nobody should have to see a colour. */
  readonly title: string;
  readonly paragraphs: readonly Words[];
}

/** The size key: how to read `64 (70, 76)`. */
export interface SizeKey {
  readonly kind: 'key';
  readonly title: string;
  readonly words: Words;
}

/** Blocks that stay on one page if one page can hold them. */
export interface Together {
  readonly kind: 'together';
  readonly blocks: readonly Block[];
  /** They are read at one glance: rather half a page is left empty. */
  readonly glance: boolean;
}

/** A block that is not parted from the block after it. */
export interface WithNext {
  readonly kind: 'with-next';
  readonly block: Block;
}

export interface Space {
  readonly kind: 'space';
  readonly amount: 'small' | 'large';
}

export interface PageBreak {
  readonly kind: 'page-break';
}

export type Block =
  | Heading
  | Paragraph
  | Row
  | List
  | Entries
  | Table
  | Figure
  | Caution
  | SizeKey
  | Together
  | WithNext
  | Space
  | PageBreak;

/** A chapter: its title is a heading of level 1 and a bookmark. */
export interface Part {
  readonly title: string;
  /** Begins a page, unless the page before would be left nearly empty; the ink-saving edition runs on. */
  readonly newPage: boolean;
  readonly blocks: readonly Block[];
}

export interface Cover {
  readonly subtitle: Words | null;
  readonly byline: Words | null;
  readonly image: Image | null;
  /** Alternative text of the image; empty when there is none. */
  readonly alt: string;
  readonly summary: readonly Words[];
  /** Skill level, sizes, terms, yarn … in order. */
  readonly glance: readonly Entry[];
}

export interface Meta {
  readonly title: string;
  readonly author: string;
  /** BCP 47: "en-US", "en-GB". */
  readonly language: string;
  readonly subject: string;
  readonly keywords: readonly string[];
  /** The document's own date, ISO 8601 ("2026-04-18"): nothing here reads the clock. */
  readonly date: string;
  /** "US terms", "UK terms". Printed on every page. */
  readonly termsNote: string;
  /** Printed on every page: "Version 1.2". */
  readonly version: string;
  /** The size key for every page's foot: "Sizes XS (S, M, L)" or "Size M". */
  readonly sizeKey: string;
}

export interface Booklet {
  readonly meta: Meta;
  readonly cover: Cover | null;
  readonly parts: readonly Part[];
}

export const plain = (text: string): Run => ({ text, emphasis: 'plain', hold: 'loose' });
export const bold = (text: string): Run => ({ text, emphasis: 'bold', hold: 'loose' });
export const italic = (text: string): Run => ({ text, emphasis: 'italic', hold: 'loose' });
/** A list of numbers, one per size, with its unit if it has one: `64 (70, 76, 82) sts`. */
export const numbers = (text: string, emphasis: Emphasis = 'plain'): Run => ({
  text,
  emphasis,
  hold: 'numbers',
});
/** A run that does not break: a term of several words, a short bracket. */
export const firm = (text: string, emphasis: Emphasis = 'plain'): Run => ({ text, emphasis, hold: 'firm' });

/** Runs of whatever the maker of the content has at hand. */
export function words(text: Text): Words {
  if (typeof text === 'string') return text === '' ? [] : [plain(text)];
  if ('emphasis' in text) return [text];
  return text.map((part) => (typeof part === 'string' ? plain(part) : part));
}

/**
 * Holds phrases together inside running text: every space inside an occurrence of one of `phrases` becomes a
 * no-break space. Longest phrases first, whole words only.
 */
export function holdPhrases(text: string, phrases: readonly string[]): string {
  const wanted = phrases.filter((phrase) => phrase.includes(' ')).sort((a, b) => b.length - a.length);
  if (wanted.length === 0) return text;
  const pattern = wanted.map((phrase) => phrase.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('|');
  return text.replace(new RegExp(`(?<![\\p{L}\\p{N}])(?:${pattern})(?![\\p{L}\\p{N}])`, 'gu'), (hit) =>
    hit.replaceAll(' ', '\u00A0'),
  );
}

/**
 * Holds a number to what it counts or measures, and a short word to its number: "ch 3", "3 ch", "64 sts",
 * "5 mm", "Row 7", "7 times". Lists of numbers belong in `numbers` runs; this is for prose.
 */
export function holdNumbers(text: string): string {
  return text
    .replace(/(\d|[½¼¾⅛⅜⅝⅞⅓⅔]) (?=[\p{L}%])/gu, '$1\u00A0')
    .replace(/(?<![\p{L}\p{N}])(\p{L}{1,5}\.?) (?=\d)/gu, '$1\u00A0');
}

export const heading = (level: Heading['level'], text: Text): Heading => ({
  kind: 'heading',
  level,
  words: words(text),
});
export const paragraph = (text: Text, look: Paragraph['look'] = 'body'): Paragraph => ({
  kind: 'paragraph',
  words: words(text),
  look,
});
export const row = (
  label: string,
  body: Text,
  more: { side?: string | null; only?: string | null; count?: Text | null } = {},
): Row => ({
  kind: 'row',
  label,
  side: more.side ?? null,
  only: more.only ?? null,
  body: words(body),
  count: more.count == null ? null : words(more.count),
});
export const list = (form: List['form'], items: readonly Text[]): List => ({
  kind: 'list',
  form,
  items: items.map(words),
});
export const entry = (label: Text, value: Text): Entry => ({ label: words(label), value: words(value) });
export const entries = (form: Entries['form'], items: readonly (readonly [Text, Text])[]): Entries => ({
  kind: 'entries',
  form,
  items: items.map(([label, value]) => entry(label, value)),
});
export const table = (shape: {
  caption: Text;
  corner?: Text;
  heads: readonly Text[];
  rows: readonly (readonly [Text, ...Text[]])[];
  align?: Table['align'];
  note?: Text | null;
  told?: Table['told'];
  lines?: { caption: Text; rows: readonly (readonly [Text, ...Text[]])[] } | null;
}): Table => ({
  kind: 'table',
  caption: words(shape.caption),
  corner: words(shape.corner ?? ''),
  heads: shape.heads.map(words),
  rows: tableRows(shape.rows),
  align: shape.align ?? 'numbers',
  note: shape.note == null ? null : words(shape.note),
  told: shape.told ?? 'by-row',
  lines: shape.lines ? { caption: words(shape.lines.caption), rows: tableRows(shape.lines.rows) } : null,
});
const tableRows = (rows: readonly (readonly [Text, ...Text[]])[]): readonly TableRow[] =>
  rows.map(([head, ...cells]) => ({ head: words(head), cells: cells.map(words) }));
export const picture = (name: string): Image => ({ source: 'picture', name });
export const drawing = (name: string, aspect: number, width: number | null = null): Image => ({
  source: 'drawing',
  name,
  aspect,
  width,
});
export const figure = (
  image: Image,
  alt: string,
  caption: Text | null = null,
  width: Figure['width'] = 'column',
): Figure => ({ kind: 'figure', image, alt, caption: caption === null ? null : words(caption), width });
export const caution = (title: string, paragraphs: readonly Text[]): Caution => ({
  kind: 'caution',
  title,
  paragraphs: paragraphs.map(words),
});
export const sizeKey = (title: string, text: Text): SizeKey => ({ kind: 'key', title, words: words(text) });
export const together = (...blocks: readonly Block[]): Together => ({
  kind: 'together',
  blocks,
  glance: false,
});
export const atOneGlance = (...blocks: readonly Block[]): Together => ({
  kind: 'together',
  blocks,
  glance: true,
});
export const withNext = (block: Block): WithNext => ({ kind: 'with-next', block });
export const space = (amount: Space['amount']): Space => ({ kind: 'space', amount });
export const pageBreak: PageBreak = { kind: 'page-break' };
export const part = (title: string, blocks: readonly Block[], newPage = false): Part => ({
  title,
  blocks,
  newPage,
});

/** All text of a booklet that may be printed, with its emphasis, in reading order. */
export function* allRuns(booklet: Booklet): Generator<Run> {
  const { meta, cover } = booklet;
  yield* [bold(meta.title), plain(meta.termsNote), plain(meta.sizeKey), plain(meta.version)];
  if (cover) {
    if (cover.image) yield plain(cover.alt);
    if (cover.subtitle) yield* cover.subtitle;
    if (cover.byline) yield* cover.byline;
    for (const text of cover.summary) yield* text;
    for (const item of cover.glance) yield* [...item.label, ...item.value];
  }
  for (const one of booklet.parts) {
    yield bold(one.title);
    for (const block of one.blocks) yield* runsOf(block);
  }
}

function* runsOf(block: Block): Generator<Run> {
  switch (block.kind) {
    case 'heading':
    case 'paragraph':
      yield* block.words;
      break;
    case 'row':
      yield bold(block.label);
      if (block.side !== null) yield plain(block.side);
      if (block.only !== null) yield bold(block.only);
      yield* block.body;
      if (block.count) yield* block.count;
      break;
    case 'list':
      for (const item of block.items) yield* item;
      break;
    case 'entries':
      for (const item of block.items) yield* [...item.label, ...item.value];
      break;
    case 'table':
      yield* block.caption;
      yield* block.corner;
      for (const head of block.heads) yield* head;
      for (const line of [...block.rows, ...(block.lines?.rows ?? [])])
        yield* [...line.head, ...line.cells.flat()];
      if (block.lines) yield* block.lines.caption;
      if (block.note) yield* block.note;
      break;
    case 'figure':
      yield plain(block.alt);
      if (block.caption) yield* block.caption;
      break;
    case 'caution':
      yield bold(block.title);
      for (const text of block.paragraphs) yield* text;
      break;
    case 'key':
      yield bold(block.title);
      yield* block.words;
      break;
    case 'together':
      for (const inner of block.blocks) yield* runsOf(inner);
      break;
    case 'with-next':
      yield* runsOf(block.block);
      break;
    case 'space':
    case 'page-break':
      break;
  }
}
