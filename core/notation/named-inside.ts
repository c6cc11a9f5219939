/**
 * Finds stitches that a row names where it first works them: "(3 dc, ch 1, 3 dc) in next ch (shell made)". It only
 * tells which words are the name and which the stitch; rows and definitions are read elsewhere.
 */
import type { ReadOptions } from './cursor.ts';
import { over, type Range } from './definitions.ts';
import { readItems } from './items.ts';
import type { Token } from './lexer.ts';
import { normaliseName } from './lexicon.ts';
import type { Item } from './tree.ts';

/** A name and the words that it stands for. */
export interface NamedInside {
  readonly name: string;
  readonly body: Range;
}

const DONE = new Set(['made', 'formed', 'completed', 'complete', 'worked']);
const ARTICLES = new Set(['a', 'an', 'the', 'one', 'first', 'new']);
/** Words that name parts of the fabric, or one stitch whatever it is made of, so that there is nothing to define. */
const NO_NAMES =
  /^(?:ch|sp|lp|st|ring|row|rnd|loop|buttonhole|eyelet|block|mesh|picot|cl|cluster|bobble|popcorn|pop|pc|puff|join|turn|inc|dec|incs|decs|sc|hdc|dc|tr|dtr|htr|fpdc|bpdc|total|repeat|rep|strap|button)\b/u;
/** What may stand before a name where it is worked. */
const LEADS = new Set(['work', 'make', 'and', 'then', 'a', 'one', 'half', 'beg', 'working']);
const INTO = new Set(['in', 'over', 'around', 'across']);
const OPENS = new Set(['(', '[', '{']);
const CLOSES = new Set([')', ']', '}']);
const PARTS = new Set([',', ';', '.', ':', '*', '**']);
const MOST = 40;

/** The name in the remark that opens at `at`, or null: "(shell made)", "[first fan formed]". */
function nameIn(text: string, tokens: readonly Token[], at: number): { name: string; end: number } | null {
  let end = at + 1;
  while (end < tokens.length && end < at + 7 && !CLOSES.has(tokens[end]!.word)) end++;
  if (!CLOSES.has(tokens[end]?.word ?? '') || !DONE.has(tokens[end - 1]!.word)) return null;
  let from = at + 1;
  while (ARTICLES.has(tokens[from]!.word)) from++;
  const words = tokens.slice(from, end - 1);
  if (words.length === 0 || words.length > 4) return null;
  if (words.some(({ kind, word }) => kind !== 'word' && word !== '-')) return null;
  const name = normaliseName(text.slice(words[0]!.from, words.at(-1)!.to));
  return NO_NAMES.test(name) ? null : { name, end };
}

/** The phrase before `end`: back to the sign that parts it from the words before. */
function phraseBefore(tokens: readonly Token[], end: number, signs: ReadonlySet<string>): Range | null {
  let depth = 0;
  for (let i = end - 1; i >= 0 && i >= end - MOST; i--) {
    const { word } = tokens[i]!;
    if (CLOSES.has(word)) depth++;
    else if (OPENS.has(word)) {
      if (depth === 0) return i + 1 < end ? { from: i + 1, to: end } : null;
      depth--;
    } else if (depth === 0 && signs.has(word)) return i + 1 < end ? { from: i + 1, to: end } : null;
  }
  return null;
}

/** "Ch 3, (2 dc, ch 2, 3 dc) in same sp (corner made)": the chain is a part of this one, which is no pattern for others. */
function hasChainBefore(tokens: readonly Token[], body: Range): boolean {
  const [lead, one, two, comma] = [4, 3, 2, 1].map((back) => tokens[body.from - back]);
  if (comma?.word !== ',' || one === undefined || two === undefined) return false;
  if (one.word === 'ch') return two.kind === 'number';
  // "3ch, 2tr": but not "miss 2 ch, …".
  return two.word === 'ch' && one.kind === 'number' && (lead === undefined || lead.kind === 'sign');
}

/** Several stitches in one place: what only a name of its own can call by one word. */
function isSeveral(items: readonly Item[]): boolean {
  const [only, ...more] = items;
  if (more.length > 0) return false;
  if (only?.type === 'group') return only.items.length > 1;
  return only?.type === 'work' && only.amount.kind === 'one' && only.amount.value > 1;
}

/** Stitches with a skip among them: a crossing, or a cable. */
function isCrossing(items: readonly Item[]): boolean {
  const works = items.filter(({ type }) => type === 'work');
  return items.every(({ type }) => ['work', 'skip', 'chain', 'aside'].includes(type)) &&
    items[0]?.type === 'skip' &&
    works.length > 1
    ? works.some((item) => item.type === 'work' && item.places[0]?.kind === 'skipped')
    : false;
}

const STAR = new Set(['*', '**']);

/** Is the name worked as a stitch somewhere: "shell in next sp", and not only spoken of: "in next shell"? */
export function isNameWorked(tokens: readonly Token[], name: string): boolean {
  const parts = name.split(' ');
  return tokens.some((token, i) => {
    if (normaliseName(token.text) !== parts[0]) return false;
    let at = i;
    for (const part of parts) {
      if (tokens[at]?.word === '-') at++;
      if (tokens[at] === undefined || normaliseName(tokens[at]!.text) !== part) return false;
      at++;
    }
    const before = tokens[i - 1];
    const leads = before === undefined || before.kind !== 'word' || LEADS.has(before.word);
    return leads && INTO.has(tokens[at]?.word ?? '');
  });
}

/** The stitches that rows of the text name in passing, each at its first naming. */
export function namedInside(text: string, tokens: readonly Token[], options: ReadOptions): NamedInside[] {
  const found = new Map<string, NamedInside>();
  const known = new Set(options.names?.map(normaliseName));
  for (let at = 1; at < tokens.length; at++) {
    if (!OPENS.has(tokens[at]!.word)) continue;
    const said = nameIn(text, tokens, at);
    if (said === null || known.has(said.name) || found.has(said.name)) continue;
    if (!isNameWorked(tokens, said.name)) continue;
    const near = phraseBefore(tokens, at, PARTS);
    const wide = phraseBefore(tokens, at, STAR);
    const read = (body: Range) => readItems(over(text, tokens, body, options));
    if (near !== null && hasChainBefore(tokens, near)) continue;
    if (near !== null && isSeveral(read(near))) found.set(said.name, { name: said.name, body: near });
    else if (wide !== null && isCrossing(read(wide))) found.set(said.name, { name: said.name, body: wide });
  }
  return [...found.values()];
}
