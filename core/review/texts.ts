/**
 * Every text of a pattern with the node it stands at, for rules that look at words. A part of the document
 * that has no id of its own is named by its list and place: "notes:0", "cover:description". A colon never
 * stands in an id, so the two cannot be taken for one another. Judges no word.
 */
import type { Block, FigureText, Pattern } from '../document/pattern.ts';
import { rowBlocks } from '../study/index.ts';
import { remembered } from './remember.ts';

export interface Text {
  readonly node: string;
  readonly text: string;
  /** A written row or a special stitch's definition, or plain prose. */
  readonly kind: 'row' | 'prose';
  /** Id of the special stitch that it defines. */
  readonly defines: string | null;
}

const known = new WeakMap<Pattern, readonly Text[]>();
const byBlock = new WeakMap<Block, readonly Text[]>();

function ofBlock(block: Block): readonly Text[] {
  const before = byBlock.get(block);
  if (before !== undefined) return before;
  const text = (node: string, words: string, kind: Text['kind']): readonly Text[] =>
    words.trim() === '' ? [] : [textAt(node, words, kind)];
  const made =
    block.type === 'prose'
      ? text(block.id, block.text.text, 'prose')
      : block.type === 'heading'
        ? text(block.id, block.text, 'prose')
        : rowBlocks([block]).flatMap((row) => text(row.id, row.text.text, 'row'));
  byBlock.set(block, made);
  return made;
}

/** One object for a text as long as its node, words and kind are the same, for what is remembered of it. */
const textOf = remembered((words: string, under: string): Text => {
  const [node, kind, defines] = JSON.parse(under) as [string, Text['kind'], string | null];
  return { node, text: words, kind, defines };
});

const textAt = (node: string, words: string, kind: Text['kind'], defines: string | null = null): Text =>
  textOf(words, JSON.stringify([node, kind, defines]));

/** All texts of a pattern in the order in which they are printed; none that is empty. */
export function textsOf(pattern: Pattern): readonly Text[] {
  const before = known.get(pattern);
  if (before !== undefined) return before;
  const texts: Text[] = [];
  const add = (node: string, text: string, kind: Text['kind'], defines: string | null = null): void => {
    if (text.trim() !== '') texts.push(textAt(node, text, kind, defines));
  };
  const addAll = (list: string, all: readonly FigureText[]): void => {
    for (const [i, each] of all.entries()) add(`${list}:${i}`, each.text, 'prose');
  };
  const { about } = pattern;
  add('cover:title', about.title, 'prose');
  add('cover:description', about.description, 'prose');
  add('cover:construction', about.construction, 'prose');
  add('cover:fit', about.fit, 'prose');
  for (const gauge of pattern.gauges) add(gauge.id, gauge.pattern, 'prose');
  for (const hook of pattern.hooks) add(hook.id, hook.purpose, 'prose');
  for (const notion of pattern.notions) add(notion.id, notion.name, 'prose');
  for (const special of pattern.specials) add(special.id, special.text.text, 'row', special.id);
  addAll('notes', pattern.notes);
  for (const piece of pattern.pieces) for (const block of piece.blocks) texts.push(...ofBlock(block));
  addAll('finishing', pattern.finishing);
  add('cover:care', about.care, 'prose');
  known.set(pattern, texts);
  return texts;
}

/** Whether a node's text tells how it is made: no cover, and no name in the list of materials. */
export function tellsHow(pattern: Pattern): (node: string) => boolean {
  const before = how.get(pattern);
  if (before !== undefined) return before;
  const named = new Set(
    [...pattern.gauges, ...pattern.hooks, ...pattern.notions].map(({ id }): string => id),
  );
  const made = (node: string) => !node.startsWith('cover:') && !named.has(node);
  how.set(pattern, made);
  return made;
}

const how = new WeakMap<Pattern, (node: string) => boolean>();

const told = new WeakMap<Pattern, readonly Text[]>();

/** The texts that tell how it is made: rows, definitions, notes, paragraphs of pieces, finishing. */
export function instructionsOf(pattern: Pattern): readonly Text[] {
  const before = told.get(pattern);
  if (before !== undefined) return before;
  const isHow = tellsHow(pattern);
  const made = textsOf(pattern).filter(({ node }) => isHow(node));
  told.set(pattern, made);
  return made;
}

/**
 * What else is printed and is neither row nor prose: names, the maker's cautions, copyright and contact. `holds` =
 * the node's own text is this text, so that a place in it can be pointed at.
 */
export function smallPrintOf(
  pattern: Pattern,
): readonly { readonly node: string; readonly text: string; readonly holds: boolean }[] {
  const { about, yarns, pieces, cautions } = pattern;
  const holding = (node: string, text: string) => ({ node, text, holds: true });
  return [
    ...yarns.map(({ id, name }) => holding(id, name)),
    ...pieces.map(({ id, name }) => ({ node: id, text: name, holds: false })),
    ...cautions.map((text, i) => holding(`cautions:${i}`, text)),
    holding('cover:copyright', about.copyright),
    holding('cover:contact', about.contact),
  ];
}

/** The names that a pattern gives a special stitch in its own terms: name and abbreviation, those there are. */
export function namesOfSpecial(
  special: Pattern['specials'][number],
  terms: Pattern['terms'],
): readonly string[] {
  const names = terms === 'us' ? [special.nameUs, special.abbrUs] : [special.nameUk, special.abbrUk];
  return [...new Set(names.map((name) => name.trim()).filter((name) => name !== ''))];
}
