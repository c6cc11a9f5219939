/**
 * The written text of every node that findings point into: rows, prose, definitions, notes, the cover's parts,
 * names in lists, and of a line of the sizing sheet its formula. Figures stand in it as they are kept; nothing
 * is filled in or judged.
 */
import type { FigureText, Line, Pattern } from '../document/pattern.ts';

/** The words of a line that its findings point into. */
export function wordsOfLine(line: Line): string {
  if (line.kind === 'formula') return line.formula;
  return line.kind === 'stitches' || line.kind === 'rows' ? line.length : line.name;
}

const known = new WeakMap<Pattern, ReadonlyMap<string, FigureText>>();

/** Texts by their node; those without an id by list and place ("notes:0", "cover:title"). */
export function writtenTexts(pattern: Pattern): ReadonlyMap<string, FigureText> {
  const before = known.get(pattern);
  if (before !== undefined) return before;
  const found = new Map<string, FigureText>();
  const plain = (node: string, text: string) => found.set(node, { text, figures: [] });
  const { about } = pattern;
  for (const part of [
    'title',
    'description',
    'construction',
    'fit',
    'care',
    'copyright',
    'contact',
  ] as const) {
    plain(`cover:${part}`, about[part]);
  }
  for (const line of pattern.lines) plain(line.id, wordsOfLine(line));
  for (const gauge of pattern.gauges) plain(gauge.id, gauge.pattern);
  for (const yarn of pattern.yarns) plain(yarn.id, yarn.name);
  for (const hook of pattern.hooks) plain(hook.id, hook.purpose);
  for (const notion of pattern.notions) plain(notion.id, notion.name);
  for (const [i, note] of pattern.notes.entries()) found.set(`notes:${i}`, note);
  for (const [i, step] of pattern.finishing.entries()) found.set(`finishing:${i}`, step);
  for (const [i, caution] of pattern.cautions.entries()) plain(`cautions:${i}`, caution);
  for (const special of pattern.specials) found.set(special.id, special.text);
  for (const piece of pattern.pieces) {
    for (const block of piece.blocks) {
      if (block.type === 'row' || block.type === 'prose') found.set(block.id, block.text);
      if (block.type === 'heading') plain(block.id, block.text);
      if (block.type === 'shaping') {
        found.set(block.shaped.id, block.shaped.text);
        found.set(block.even.id, block.even.text);
      }
    }
  }
  known.set(pattern, found);
  return found;
}
