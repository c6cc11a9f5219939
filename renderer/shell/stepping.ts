/**
 * Undoing and doing again, from whatever place: the one way that every key and command goes. It tells what is not
 * seen, and changes nothing by itself.
 */
import { shellWords } from '../words/shell.ts';
import type { Place, Studio } from './studio.ts';

/** Where each part of the document is seen. */
const SEEN: Readonly<Record<string, readonly [Place, ...Place[]]>> = {
  cover: ['write', 'materials'],
  sizing: ['sizes'],
  materials: ['materials'],
  specials: ['write', 'materials'],
  closing: ['write', 'materials'],
  charts: ['drawings'],
  workbook: ['workbook', 'review'],
};

/** Undoes or does again. The history is one over all places: what is not seen from this one is told. */
export function step(studio: Studio, way: 'undo' | 'redo'): void {
  const { desk, place } = studio.view();
  if (desk === null) return;
  const before = desk.view().document;
  desk[way]();
  const after = desk.view().document;
  const seen = after.children
    .filter((part, at) => part !== before.child(at))
    .map(({ type }) => SEEN[type.name] ?? (['write'] as const));
  const [first] = seen;
  const isUnseen = first !== undefined && !seen.flat().includes(place);
  studio.tell(isUnseen ? shellWords.stepped(way, first[0]) : null);
}
