/**
 * Reads a whole plain text into pieces with their rows, definitions and conventions. Which line is what is
 * found in `lines`, the rows are read by `read`.
 */
import type { Fact } from '../finding.ts';
import type { ReadOptions } from './cursor.ts';
import { linesOf, onTheHook, over, readSizes } from './definitions.ts';
import { readItems } from './items.ts';
import { lex, type Token } from './lexer.ts';
import { lexiconOf, normaliseName } from './lexicon.ts';
import { type Part, Sorter } from './lines.ts';
import { namedInside } from './named-inside.ts';
import { readRowAt } from './read.ts';
import { settle } from './spans.ts';
import type { Convention, Definition, PieceTree, RowTree, SizeFilter, TextTree } from './tree.ts';

interface Draft {
  heading: PieceTree['heading'];
  definitions: Definition[];
  conventions: Convention[];
  rows: RowTree[];
  from: number;
  to: number;
}

/** True for "Row 1", "Rnd 1", a foundation, or a chain that begins a piece. */
function beginsAfresh(row: RowTree): boolean {
  const numbers = row.label?.numbers;
  if (numbers) {
    const first =
      numbers.kind === 'one'
        ? numbers.number
        : numbers.kind === 'range'
          ? numbers.first
          : numbers.kind === 'list'
            ? numbers.numbers[0]
            : numbers.start;
    return first?.kind === 'one' && first.value === 1;
  }
  if (row.label?.kind === 'foundation') return true;
  if (row.label) return false;
  const first = row.items.find((item) => item.type !== 'aside' && item.type !== 'colour');
  return (
    first?.type === 'ring' ||
    (first?.type === 'chain' &&
      row.items.every((item) => ['chain', 'aside', 'colour', 'turn'].includes(item.type)))
  );
}

/** True when the piece has a row that a new Row 1 cannot follow: a numbered one, or a finished edge. */
function isUnderway(draft: Draft, row: RowTree): boolean {
  if (draft.rows.length === 0) return false;
  if (row.label?.numbers) return draft.rows.some((done) => done.label?.numbers);
  return true;
}

const COUNTED = /^(?:sts?|chs?|sps?|lps?|sc|dc|tr|hdc|htr|dtr|times|more|shells?|cls?|reps?)$/u;

/** True when the text writes "60 (68) sts" and never three numbers: two sizes that no line announces. */
function seemsTwoSizes(tokens: readonly Token[]): boolean {
  let pairs = 0;
  for (let i = 0; i + 4 < tokens.length; i++) {
    if (tokens[i]!.kind !== 'number' || !['(', '['].includes(tokens[i + 1]!.word)) continue;
    if (tokens[i + 2]!.kind !== 'number') continue;
    if (tokens[i + 3]!.word === ',' && tokens[i + 4]!.kind === 'number') return false;
    const closes = tokens[i + 3]!.word === ')' || tokens[i + 3]!.word === ']';
    if (closes && tokens[i + 4]!.line === tokens[i]!.line && COUNTED.test(tokens[i + 4]!.word)) pairs++;
  }
  return pairs > 0;
}

/** "Ch 61, 67, 73, 79." as a line of its own: so many sizes that no other line announces; null for none. */
function sizesOfChain(tokens: readonly Token[]): number | null {
  for (const line of linesOf(tokens)) {
    const words = tokens.slice(line.from, line.to);
    if (words[0]?.word !== 'ch' || words[1]?.kind !== 'number') continue;
    let n = 1;
    let at = 2;
    while (words[at]?.word === ',' && words[at + 1]?.kind === 'number') {
      n += 1;
      at += 2;
    }
    const ends = words[at] === undefined || ['.', 'ch', 'sts', 'turn'].includes(words[at]!.word);
    if (n >= 3 && ends) return n;
  }
  return null;
}

/** "With RS facing, sk next 22 sts, join yarn in next st.": says only where the row below it begins. */
function onlyJoins(row: RowTree): boolean {
  return (
    row.label === null &&
    row.counts.length === 0 &&
    row.items.some((item) => item.type === 'attach') &&
    row.items.every((item) => ['attach', 'skip', 'aside', 'colour', 'marker'].includes(item.type))
  );
}

function joined(before: RowTree, row: RowTree): RowTree {
  const facts = [...before.facts, ...row.facts];
  return { ...row, items: [...before.items, ...row.items], facts, from: before.from };
}

/** A whole plain text: pieces with their rows, definitions and conventions. Spans are offsets into `text`. */
export function readText(text: string, options: ReadOptions): TextTree {
  const tokens = lex(text);
  if (tokens.length === 0) return { sizes: null, pieces: [], facts: [] };
  const sizesFirst =
    linesOf(tokens)
      .map((line) => readSizes(text, tokens, line))
      .find((found) => found !== null) ?? null;
  const sizes =
    options.sizes ?? sizesFirst?.length ?? sizesOfChain(tokens) ?? (seemsTwoSizes(tokens) ? 2 : null);
  const known: ReadOptions = { ...options, sizes, ...(sizesFirst === null ? {} : { labels: sizesFirst }) };
  const named = namedInside(text, tokens, known);
  const naming = [...(options.names ?? []), ...named.map(({ name }) => name)];
  const sorter = new Sorter(text, tokens, { ...known, names: naming });
  sorter.sort();
  // What a line of its own defines is taken from there.
  const inside = named.filter(({ name }) => !sorter.names.has(name));
  const full: ReadOptions = { ...known, names: [...naming, ...sorter.names] };
  const lexicon = lexiconOf(full.terms, full.names ?? [], sorter.aliases);
  const facts: Fact[] = [...sorter.facts];
  const drafts: Draft[] = [];
  let draft: Draft = {
    heading: null,
    definitions: [],
    conventions: [],
    rows: [],
    from: tokens[0]!.from,
    to: tokens[0]!.from,
  };
  /** What the piece knew at the last empty line, while no row or heading has come since. */
  let afterBlank: { readonly conventions: number; readonly definitions: number } | null = null;
  /** Sizes that a line of its own names for the rows below it. */
  let filter: SizeFilter | null = null;
  const begin = (from: number): void => {
    if (
      draft.rows.length > 0 ||
      draft.heading ||
      draft.definitions.length > 0 ||
      draft.conventions.length > 0
    )
      drafts.push(draft);
    draft = { heading: null, definitions: [], conventions: [], rows: [], from, to: from };
  };
  for (const part of sorter.parts) {
    if (part.kind === 'blank') {
      afterBlank = { conventions: draft.conventions.length, definitions: draft.definitions.length };
      continue;
    }
    const blank = afterBlank;
    if (part.kind === 'heading' || part.kind === 'row') afterBlank = null;
    if (part.kind === 'filter') {
      filter = part.filter;
      continue;
    }
    if (part.kind === 'heading') {
      filter = null;
      if (part.section) continue;
      const span = { from: tokens[part.range.from]!.from, to: tokens[part.range.to - 1]!.to };
      if (draft.rows.length > 0) begin(span.from);
      draft.heading = { ...span, text: part.text };
      draft.to = span.to;
    } else if (part.kind === 'convention') {
      draft.conventions.push(part.convention);
      draft.to = part.convention.to;
    } else if (part.kind === 'definition') {
      const definition = readDefinition(text, tokens, part, full);
      draft.definitions.push(definition);
      draft.to = definition.to;
    } else if (part.kind === 'prose') {
      const span = { from: tokens[part.range.from]!.from, to: tokens[part.range.to - 1]!.to };
      facts.push({ code: 'prose-passed-over', ...span, data: { words: text.slice(span.from, span.to) } });
    } else {
      for (const { name, body } of inside) {
        if (body.from < part.range.from || body.to > part.range.to) continue;
        const defined = readDefinition(text, tokens, { names: [name], range: body, body }, full);
        draft.definitions.push({ ...defined, facts: [], inside: true });
      }
      const c = over(text, tokens, part.range, full, lexicon);
      const own = readRowAt(c, true, filter);
      const before = draft.rows.at(-1);
      const row = before !== undefined && onlyJoins(before) && blank === null ? joined(before, own) : own;
      if (row !== own) draft.rows.pop();
      if (blank !== null && beginsAfresh(row) && isUnderway(draft, row)) {
        // What was said since the empty line belongs to the rows that follow it.
        const conventions = draft.conventions.splice(blank.conventions);
        const definitions = draft.definitions.splice(blank.definitions);
        begin(Math.min(row.from, ...[...conventions, ...definitions].map(({ from }) => from)));
        draft.conventions.push(...conventions);
        draft.definitions.push(...definitions);
      }
      draft.rows.push(row);
      draft.to = Math.max(draft.to, row.to);
    }
  }
  begin(0);
  return { sizes: sorter.sizes, pieces: drafts, facts };
}

function readDefinition(
  text: string,
  tokens: readonly Token[],
  part: Pick<Extract<Part, { kind: 'definition' }>, 'names' | 'range' | 'body'>,
  options: ReadOptions,
): Definition {
  const span = { from: tokens[part.range.from]!.from, to: tokens[part.range.to - 1]!.to };
  // Inside its own body a name means the trade's word: "inc: inc in next st" would define nothing.
  const names = (options.names ?? []).filter((name) => !part.names.includes(normaliseName(name)));
  const c = over(text, tokens, part.body, { ...options, names });
  if (onTheHook(c)) {
    const body = { from: tokens[part.body.from]!.from, to: tokens[part.body.to - 1]!.to };
    return {
      names: part.names,
      items: [{ type: 'unread', ...body }],
      facts: [{ code: 'definition-in-loops', ...body, data: { name: part.names[0] ?? '' } }],
      ...span,
    };
  }
  c.definition = true;
  const items = settle(readItems(c), span);
  return { names: part.names, items, facts: [...c.facts], ...span };
}
