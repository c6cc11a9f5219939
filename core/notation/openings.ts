/**
 * Reads which opening is worked round: "at thumb opening", "around second armhole". It knows no fabric; whether there
 * is such an opening is the engine's concern.
 */
import type { Cursor } from './cursor.ts';
import type { WhichOpening } from './tree.ts';

const OPENINGS = [
  'opening',
  'armhole',
  'armholes',
  'arm hole',
  'thumbhole',
  'thumb hole',
  'leg hole',
  'ear hole',
  'hole',
  'underarm',
];

const WHICH: Readonly<Record<string, WhichOpening>> = {
  first: 'first',
  second: 'second',
  other: 'second',
  opposite: 'second',
  remaining: 'second',
  rem: 'second',
};

/** What may stand before it. A neck, the front of a cardigan and a face have openings that no stitches were left under. */
const BEFORE: ReadonlySet<string> = new Set(
  `the a an any each one of for first second other opposite rem left right body yoke hand mitten glove foot sock tail
  thumb arm sleeve heel leg ear toe afterthought side st sts ch chs edge corner base bottom lower middle
  center point begin beg unworked skipped`.split(/\s+/u),
);

/** "thumb opening", "any st of the second armhole", "center of underarm": which opening is meant, or null. */
export function readOpening(c: Cursor): WhichOpening | null {
  return c.attempt(() => {
    let which: WhichOpening = 'any';
    for (let words = 0; words < 8; words++) {
      if (c.eatAny(OPENINGS)) {
        // "hole of underarm", "armhole opening", "underarm of first armhole".
        const more = c.attempt(() => {
          c.eatAny(['of the', 'of', 'for the', 'for']);
          return readOpening(c);
        });
        if (more !== null && more !== 'any') which = more;
        c.eatAny(['edge', 'seam']);
        return which;
      }
      const token = c.peek();
      if (token?.kind !== 'word' || !BEFORE.has(token.word)) return null;
      which = WHICH[token.word] ?? which;
      c.at++;
    }
    return null;
  });
}

/** "at thumb opening", "around second armhole" behind a preposition, or null. */
export function readAtOpening(c: Cursor): WhichOpening | null {
  return c.attempt(() => {
    const met = ['around', 'across', 'along'].includes(c.tokens[c.at - 1]?.word ?? '');
    const said = c.eatAny(['at', 'of', 'in', 'to', 'on', 'around', 'along', 'for', 'from', 'round', 'rnd']);
    if (!said && !met) return null;
    return readOpening(c);
  });
}
