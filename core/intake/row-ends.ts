/**
 * What stands at the end of an old pattern's row behind its work: the typed count, and words that end the piece. It
 * finds their places; whether a count is right is decided when the rows have been worked.
 */
import type { Span } from '../finding.ts';
import type { CountPart, Item, RowTree } from '../notation/tree.ts';

/** Things whose number the engine can always check. */
export function canBeChecked({ noun }: CountPart): boolean {
  if (noun === null || noun.kind === 'stitch' || noun.kind === 'chain' || noun.kind === 'space') return true;
  return noun.kind === 'named' && noun.stitch.form === 'plain' && noun.stitch.together === 1;
}

/** An item that does no work: it ends the yarn, or only remarks. */
export const endsWork = ({ type }: Item): boolean => type === 'fasten-off' || type === 'aside';

/** What may be said of the end of a piece besides, and is no work of its rows. */
const SAID_OF_END: ReadonlySet<Item['type']> = new Set(['unread', 'marker']);

/** "Fasten off. The last row is a WS row. For a longer vest …": whatever is said behind the end, nothing is worked. */
export const endsOnly = ([first, ...others]: readonly Item[]): boolean =>
  first?.type === 'fasten-off' && others.every((item) => endsWork(item) || SAID_OF_END.has(item.type));

/**
 * Words behind a row's count that do no work ("Fasten off, leaving a long tail."): they stand apart, so that the
 * count is at the row's end, and so that rows which are worked again do not end the yarn each time. Null where there
 * are none.
 */
export function closingOf(row: RowTree, text: string, isWorkedAgain: boolean): Span | null {
  const ended = row.items.find(({ type }) => type === 'fasten-off');
  const before = row.counts.filter(({ to }) => ended === undefined || to <= ended.from);
  // "… (62 sc) Fasten off. Count 14 sts from each end and place a marker": numbers behind the end are no count of it.
  const count = before.length > 0 ? before.at(-1) : row.counts.at(-1);
  if (count === undefined && isWorkedAgain) {
    const last = row.items.findLastIndex((item) => !endsWork(item));
    const first = row.items.slice(last + 1).find(({ type }) => type === 'fasten-off');
    return first === undefined || last < 0 ? null : { from: first.from, to: row.to };
  }
  if (count === undefined || !count.parts.every(canBeChecked)) return null;
  const after = text.slice(count.to, row.to);
  const from = count.to + (/^[\s.;)\]]*/u.exec(after)?.[0].length ?? 0);
  const behind = row.items.filter((item) => item.to > count.to);
  // A colour that is changed to behind rows is not changed to after each of them.
  const ends = (item: Item) => endsWork(item) || (isWorkedAgain && item.type === 'colour');
  // "Cut yarn, thread it through the stitches": what is said of the end is no work, however it is said.
  const isEnded = behind[0]?.type === 'fasten-off';
  const isClosing =
    behind.length > 0 && behind.every((item) => ends(item) || (isEnded && SAID_OF_END.has(item.type)));
  return isClosing && from < row.to ? { from, to: row.to } : null;
}

/** Where the count at a row's end begins, with the sign that leads to it; null when there is none to check. */
export function countOf(row: RowTree, text: string, from: number): number | null {
  const count = row.counts.at(-1);
  if (count === undefined || !count.parts.every(canBeChecked)) return null;
  // "(16 dc, counting ch 3)" says how the chain is meant, which the reader needs.
  if (count.turningChain !== null) return null;
  if (/[^\s.;)\]]/u.test(text.slice(count.to, row.to))) return null;
  const before = text.slice(from, count.from).replace(/[\s\-–—:;,=]+$/u, '');
  return from + before.length;
}
