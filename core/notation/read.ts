/**
 * The reader's front door for one row and for one definition: text in, tree and facts out. It never throws
 * and never stops half way. Whole texts are read in `text`.
 */
import type { Fact } from '../finding.ts';
import { Cursor, type ReadOptions } from './cursor.ts';
import { readItems } from './items.ts';
import { readLabel, readSizeFilter } from './labels.ts';
import { lex, type Token } from './lexer.ts';
import { type Lexicon, lexiconOf } from './lexicon.ts';
import { mended } from './mistyped.ts';
import { inEach } from './places.ts';
import { settle } from './spans.ts';
import type { Item, Label, RowTree, SizeFilter } from './tree.ts';

export type { ReadOptions } from './cursor.ts';
export { normaliseName } from './lexicon.ts';

/** A cursor over tokens of `text`; `lexicon` saves looking up the same words again and again. */
export function cursorOver(
  text: string,
  tokens: readonly Token[],
  options: ReadOptions,
  lexicon: Lexicon = lexiconOf(options.terms, options.names ?? []),
): Cursor {
  return new Cursor(text, tokens, lexicon, options.sizes ?? null, options.labels);
}

/**
 * Reads the row that the cursor holds, from its position to its end. `above`: sizes that a line before it
 * named for it; its span is then outside the row's. A mistyped word of a place is read as the word meant, and
 * told.
 */
export function readRowAt(c: Cursor, label: boolean, above: SizeFilter | null = null): RowTree {
  const { at, end, sizes } = c;
  const first = readOnce(c, label, above);
  if (first.read) return first;
  const isStitch = (word: string) => c.lexicon.bases.has(word);
  const better = mended(c.tokens.slice(0, end), first, isStitch, (tokens) => {
    const again = new Cursor(c.text, tokens, c.lexicon, sizes, c.labels);
    again.at = at;
    return readOnce(again, label, above);
  });
  if (better === null) return first;
  const told = better.mistyped.map(({ token, meant }): Fact => {
    const { from, to } = token;
    return {
      code: 'word-not-read',
      from,
      to,
      data: { words: token.text, expected: 'place', suggestion: meant },
    };
  });
  return { ...better.reading, read: false, facts: [...told, ...better.reading.facts] };
}

function readOnce(c: Cursor, label: boolean, above: SizeFilter | null = null): RowTree {
  const start = c.at;
  const first = c.peek();
  let filter = readSizeFilter(c);
  const typed: Label | null = readLabel(c);
  if (!filter && typed) filter = readSizeFilter(c);
  // "Sizes M (L) only: … 30 (34) sc" lists its own sizes only.
  filter ??= c.only ?? above;
  if (filter && filter !== 'all' && c.sizes !== null) c.sizes = filter.except ? null : filter.labels.length;
  if (typed && !label) c.fact('label-not-expected', typed, { words: c.words(typed) });
  c.round = typed?.kind === 'round' || /\b(?:rnd|round)/iu.test(typed ? c.words(typed) : '');
  const own = joinedFirst(readItems(c));
  const items = typed ? aroundAlone(own) : own;
  c.at = c.end;
  const last = c.tokens[c.end - 1];
  const read = !hasUnread(items);
  const row: RowTree = {
    label: typed && label ? typed : null,
    items,
    counts: [...c.counts],
    only: filter === 'all' ? null : filter,
    read,
    facts: [...c.facts],
    from: first?.from ?? 0,
    to: last && c.end > start ? last.to : (first?.from ?? 0),
  };
  return settle(row, row);
}

/** "Join with sc in any ch-2 sp, …": at the head of a row nothing is there to close; yarn is joined in that place. */
function joinedFirst(items: readonly Item[]): readonly Item[] {
  const at = items.findIndex(({ type }) => !['aside', 'colour', 'loops', 'marker'].includes(type));
  const join = items[at];
  if (join?.type !== 'join' || join.not || join.place === null) return items;
  if (!items.slice(at + 1).some(({ type }) => ['work', 'group', 'repeat'].includes(type))) return items;
  const { stitch, place, from, to } = join;
  return items.map((item) => (item === join ? { type: 'attach', stitch, place, from, to } : item));
}

/** "Rnds 4-6: dc": a stitch alone, with no number and no place, is worked all the way. */
function aroundAlone(items: readonly Item[]): readonly Item[] {
  const beside: readonly Item['type'][] = [
    'aside',
    'turn',
    'join',
    'chain',
    'colour',
    'marker',
    'loops',
    'fasten-off',
  ];
  const works = items.filter((item) => !beside.includes(item.type));
  const [only] = works;
  if (works.length !== 1 || only?.type !== 'work' || only.places.length !== 1 || only.over) return items;
  const place = only.places[0]!;
  const bare = place.kind === 'next' && place.implied && place.amount.from === place.amount.to;
  if (!bare || (only.stitch.form !== 'plain' && only.stitch.form !== 'inc' && only.stitch.form !== 'dec'))
    return items;
  const all = inEach(place);
  return items.map((item) => (item === only ? { ...only, places: [all] } : item));
}

/** True when some words in the items, however deep, were not understood. */
export function hasUnread(items: readonly Item[]): boolean {
  return items.some((item) => {
    switch (item.type) {
      case 'unread':
        return true;
      case 'group':
      case 'again':
        return hasUnread(item.items);
      case 'repeat':
        return (
          hasUnread(item.items) ||
          (item.last !== null && item.last.kind !== 'stop-at' && hasUnread(item.last.items))
        );
      default:
        return false;
    }
  });
}

/**
 * One written row. `label` false: the text has none, and a typed one is a fact (`label-not-expected`).
 * Spans are offsets into `text` in UTF-16 units.
 */
export function readRow(text: string, options: ReadOptions & { readonly label?: boolean }): RowTree {
  return readRowAt(cursorOver(text, lex(text), options), options.label ?? true);
}

/** The body of a definition ("5 dc in next st"): its items and what was noticed. */
export function readDefinitionItems(
  text: string,
  options: ReadOptions,
): { items: readonly Item[]; facts: readonly Fact[] } {
  const c = cursorOver(text, lex(text), options);
  c.definition = true;
  const items = settle(readItems(c), { from: 0, to: text.length });
  return { items, facts: [...c.facts] };
}
