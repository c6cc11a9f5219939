/**
 * Reads a stitch that goes into another piece, as motifs are joined while they are made: "sl st in corresponding
 * sp of first square". It takes hold there and makes nothing of this row, so it changes no count.
 */
import type { Cursor } from './cursor.ts';
import { readAmount } from './numbers.ts';
import type { Item } from './tree.ts';
import { readStitch } from './words.ts';

const PIECES = [
  'square',
  'motif',
  'hexagon',
  'pentagon',
  'octagon',
  'triangle',
  'block',
  'flower',
  'medallion',
  'snowflake',
  'granny',
  'granny square',
  'circle',
  'tile',
  'patch',
  'wheel',
  'daisy',
];

const WHICH = [
  'first',
  'second',
  'prev',
  'last',
  'other',
  'adjacent',
  'adjoining',
  'adj',
  'neighboring',
  'neighbouring',
  'opposite',
  'completed',
  'finished',
  'joined',
  'corresponding',
  '#th',
];

/** Words that make it a row worked along the other piece, or yarn joined there. */
const WORKED_ALONG = ['each', 'every', 'across', 'evenly', 'any', 'all', 'yarn'];

/** What has an opposite in the piece itself. */
const OWN = ['side', 'edge', 'end', 'leg', 'lp', 'layer'];

/** How many words the place takes up, or 0: they end with the other piece, or name what corresponds there. */
function placeLength(c: Cursor): number {
  let at = 0;
  let corresponding = false;
  for (; at < 16; at++) {
    const token = c.peek(at);
    if (!token || (token.kind === 'sign' && token.word !== '-')) break;
    if (WORKED_ALONG.includes(token.word)) return 0;
    // "opposite side of 3 ch" is the row's own work.
    if (token.word === 'corresponding' || (token.word === 'opposite' && !c.isAny(OWN, at + 1)))
      corresponding = true;
    if (!WHICH.includes(token.word)) continue;
    for (const piece of PIECES) {
      const taken = c.measure(piece, at + 1);
      if (taken > 0) return withSpot(c, at + 1 + taken);
    }
  }
  return corresponding ? at : 0;
}

/** "… of first square at corner": which spot, behind the piece. */
function withSpot(c: Cursor, end: number): number {
  if (!c.isAny(['at', 'in corresponding', 'in the corresponding'], end)) return end;
  let at = end;
  while (c.peek(at) && (c.peek(at)!.kind !== 'sign' || c.word(at) === '-')) at++;
  return at;
}

/**
 * "sl st in ch-3 sp of previous block, ch 3, 3 dc in same sp": a block that is hung on to one below it goes on in the
 * same space, after a chain that is as tall as its stitches. A motif that takes hold of another chains one or two.
 */
function isHungOn(c: Cursor): boolean {
  if (!['block', 'tile'].includes(c.tokens[c.at - 1]?.word ?? '')) return false;
  let at = [',', 'and'].includes(c.word()) ? 1 : 0;
  if (!c.isAny(['ch #'], at) || (c.peek(at + 1)?.value ?? 0) < 3) return false;
  for (at += 2; at < 14 && c.peek(at); at++)
    if (c.isAny(['in same', 'in the same', 'in that'], at)) return true;
  return false;
}

/** "… to last block, sl st in ch-3 sp of last block": the one that the row itself has come to. */
function isLastMet({ tokens }: Cursor, start: number): boolean {
  const [last, block, comma] = [3, 2, 1].map((back) => tokens[start - back]?.word ?? '');
  return last === 'last' && comma === ',' && ['block', 'tile'].includes(block!);
}

/** "sl st in corresponding ch-3 sp of first square", "join with sl st to prev motif", or null. */
export function readElsewhere(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    const joins = c.eatAny(['join with', 'join with a', 'join to', 'join', 'and join with']) !== null;
    if (!joins || !c.isAny(['in', 'to', 'corresponding'])) {
      const amount = readAmount(c, false);
      const stitch = readStitch(c);
      if (stitch?.form !== 'plain' || (stitch.base !== 'slip' && stitch.base !== 't1')) return null;
      if (amount?.kind === 'one' && amount.value > 1) return null;
    }
    c.eat('loosely');
    if (
      !c.isAny(['in', 'to', 'through', 'around', 'on', 'under', 'over', 'between', 'corresponding', 'with'])
    )
      return null;
    const length = placeLength(c);
    if (length === 0) return null;
    c.at += length;
    if (isHungOn(c) || isLastMet(c, start)) return null;
    return [{ type: 'aside', ...c.span(start) }];
  });
}
