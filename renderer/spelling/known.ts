/** Words that are right in one pattern: its title and designer, its names of pieces, stitches, lines, sizes and yarns, and those the maker added. */
import type { Node } from 'prosemirror-model';
import type { Pattern } from '../../core/document/pattern.ts';
import { wordsIn } from '../../core/trade/known-words.ts';

/** The words, in lower case, each once. */
export function knownWords(pattern: Pattern, document: Node): readonly string[] {
  const own: readonly string[] = document.attrs.words;
  const names = [
    ...pattern.specials.flatMap(({ nameUs, nameUk, abbrUs, abbrUk }) => [nameUs, nameUk, abbrUs, abbrUk]),
    ...Object.keys(pattern.abbreviations),
    ...pattern.lines.map(({ name }) => name),
    ...pattern.sizes.map(({ label }) => label),
    ...pattern.yarns.flatMap(({ key, name }) => [key ?? '', name]),
    ...pattern.pieces.map(({ name }) => name),
    pattern.about.title,
    pattern.about.designer,
  ];
  return [...new Set([...own.map((word) => word.toLowerCase()), ...names.flatMap(wordsIn)])];
}
