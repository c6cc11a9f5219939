/**
 * Reads which of the stitches just made a marker goes into: "in 2nd of the 3 sc just made", "up to center sc". Stitches
 * that are counted along the row, and places of the row below, are not its concern.
 */
import type { Cursor } from './cursor.ts';
import { readNoun } from './nouns.ts';
import { readAmount, readOrdinal } from './numbers.ts';
import type { Among, Noun } from './tree.ts';

const isStitch = (noun: Noun): boolean => noun.kind === 'stitch' || noun.kind === 'named';

/** Which of the stitches just made; null where the words say something else. */
export function readAmong(c: Cursor): Among | null {
  return c.attempt(() => {
    c.eatAny(['in', 'on', 'at', 'to', 'through', 'into']);
    c.eatAny(['the', 'this', 'that']);
    const nth = readWhich(c);
    if (nth === null) return null;
    const noun = readNoun(c);
    if (noun && !isStitch(noun)) return null;
    const of = c.attempt(() => {
      if (!c.eatAny(['of these', 'of those', 'of the', 'of'])) return null;
      const amount = readAmount(c, false);
      const made = readNoun(c);
      if (made && !isStitch(made)) return null;
      return amount || made || c.eatAny(['inc', 'incs', 'pair']) ? { amount } : null;
    });
    if (of) return { nth, of: of.amount };
    // "up to center sc", with nothing behind it that says of what.
    return nth === 'centre' && noun && !c.is('of') ? { nth, of: null } : null;
  });
}

function readWhich(c: Cursor): Among['nth'] | null {
  if (c.eat('center')) return 'centre';
  if (c.eat('last')) return 'last';
  return readOrdinal(c);
}
