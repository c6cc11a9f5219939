/**
 * Reads what fixes the loop, the post or the row of a place: "in back loops only", "2 rows below", "from the
 * front", "of previous row". It reads no place.
 */
import type { Cursor } from './cursor.ts';
import { readTurningChain } from './nouns.ts';
import { readAmount } from './numbers.ts';
import { readAtOpening } from './openings.ts';
import type { Into, WhichOpening } from './tree.ts';
import { readStitch } from './words.ts';

export interface Draft {
  loop: Into['loop'];
  post: Into['post'];
  below: number;
  row?: number;
  part?: string;
  opening?: WhichOpening;
}

/** Parts that a toy or a garment has several of, and that one round joins. */
const PARTS = 'leg foot paw arm ear finger toe horn wing tail sleeve half sock ball'.split(' ');
const WHICH = ['first', 'second', 'third', 'other', 'left', 'right', 'next', '#th', 'front', 'back'];

/** "first leg", "leg 2", "the other ear": which of several parts, in lower case; null where it does not say which. */
export function readPart(c: Cursor): string | null {
  return c.attempt(() => {
    c.eat('the');
    const nth = c.peek();
    const which = c.eatAny(WHICH);
    const word = c
      .word()
      .replace(/s$/u, '')
      .replace(/^feet$/u, 'foot');
    if (c.peek()?.kind !== 'word' || !PARTS.includes(word)) return null;
    c.at++;
    const label = c.peek();
    const labelled =
      which === null && (label?.kind === 'number' || (label?.kind === 'word' && /^[A-D]$/u.test(label.text)));
    if (labelled) c.at++;
    if (which === null && !labelled) return null;
    return labelled
      ? `${word} ${label.text.toLowerCase()}`
      : `${which === '#th' ? nth!.value : which} ${word}`;
  });
}

const LOOPS: readonly (readonly [string, NonNullable<Into['loop']>])[] = [
  ['back lps only', 'back'],
  ['back lp only', 'back'],
  ['back lps', 'back'],
  ['back lp', 'back'],
  ['blo', 'back'],
  ['blos', 'back'],
  ['front lps only', 'front'],
  ['front lp only', 'front'],
  ['front lps', 'front'],
  ['front lp', 'front'],
  ['flo', 'front'],
  ['both lps', 'both'],
  ['third lps', 'third'],
  ['third lp only', 'third'],
  ['third lp', 'third'],
  ['#th lps', 'third'],
  ['#th lp only', 'third'],
  ['#th lp', 'third'],
  ['back bars', 'third'],
  ['back bar', 'third'],
  ['back bump', 'third'],
  ['back bumps', 'third'],
  ['horizontal bar', 'third'],
  ['bar below', 'third'],
  ['lp behind', 'third'],
  ['3lo', 'third'],
];

/** "back loop only", "blo", "3rd loop", "the bar below": the loop meant, or null. */
export function readLoop(c: Cursor): NonNullable<Into['loop']> | null {
  return c.attempt(() => {
    c.eat('the');
    c.eatAny(['unworked', 'unused', 'free', 'rem']);
    for (const [phrase, loop] of LOOPS) {
      if (!c.is(phrase)) continue;
      if (phrase.startsWith('#th') && c.peek()!.value !== 3) continue;
      if (phrase.startsWith('back bar') && c.is('back bars of')) continue;
      c.eat(phrase);
      c.eat('only');
      c.eat('(blo)');
      return loop;
    }
    return null;
  });
}

/** "skip all dc of sleeve", "in each st of the cuff": whose stitches they are, where that is no other row's. */
const OF_PIECE =
  'cuff body band sleeve sleeves yoke brim crown neckband collar hem rib ribbing heel foot gusset palm hood strap'
    .split(' ')
    .flatMap((piece) => [`of ${piece}`, `of the ${piece}`]);

const BLOCKS = ['blocks', 'block', 'tiles', 'tile'];

/** "of next", "of each", "of previous": which block it is adds nothing to which space is next. */
function eatWhich(c: Cursor): boolean {
  c.eat('the');
  c.eatAny(['next', 'each', 'every', 'foll', 'prev', 'same', 'last', 'first']);
  return true;
}

function ofTurningChain(c: Cursor): boolean {
  const took = c.attempt(() => {
    if (!c.eat('of')) return null;
    c.eat('the');
    return readTurningChain(c) && !c.isAny(['sp', '- sp', 'lp']) ? true : null;
  });
  return took !== null;
}

/** "at the end", "at end of row": where the place lies anyway. */
function atEnd(c: Cursor): boolean {
  return (
    c.attempt(() => {
      if (!c.eatAny(['at the very end', 'at the end', 'at end'])) return null;
      if (!c.eat('of')) return true;
      c.eatAny(['the', 'this', 'each']);
      return c.eatAny(['row', 'rnd']) && !c.is('#') ? true : null;
    }) === true
  );
}

/** "2 rows below", "of previous row", "in blo", "made": words behind a noun that fix row, loop or nothing. */
export function readTail(c: Cursor, draft: Draft): void {
  for (;;) {
    const took = c.attempt(() => {
      const part = c.attempt(() => {
        const met = ['around', 'across', 'along'].includes(c.tokens[c.at - 1]?.word ?? '');
        if (!c.eatAny(['of', 'on', 'around', 'along', 'across', 'in', 'from']) && !met) return null;
        return readPart(c);
      });
      if (part !== null) {
        draft.part = part;
        return true;
      }
      const opening = readAtOpening(c);
      if (opening !== null) {
        draft.opening = opening;
        return true;
      }
      if (c.attempt(() => (c.eat('of') && eatWhich(c) && c.eatAny(BLOCKS) ? true : null))) {
        // "of tile below": every block that is met lies below.
        c.eatAny(['below', 'in row below', 'from row below']);
        return true;
      }
      // "skip 2 ch of turning ch": the chains ahead are that one's anyway.
      if (['ch', 'chs'].includes(c.tokens[c.at - 1]?.word ?? '') && ofTurningChain(c)) return true;
      if (
        c.eatAny([
          'of prev row',
          'of prev rnd',
          'of the prev row',
          'of the prev rnd',
          'from prev row',
          'from prev rnd',
          'from the prev row',
          'from the prev rnd',
          'in prev row',
          'in prev rnd',
          'on prev row',
          'on prev rnd',
          'of last row',
          'of last rnd',
          'from last row',
          'from last rnd',
          'on last row',
          'on last rnd',
          'of row below',
          'from row below',
          'of previous',
          'of foundation ch',
          'of the foundation ch',
          'of foundation',
          'of base ch',
          'of pineapple',
          'of the pineapple',
          'of each pineapple',
          'between petals',
          'between the petals',
          'between scallops',
          'of petal',
          'of the petal',
          'of flower',
          'of the flower',
          'of leg',
          'of the leg',
          'of head',
          'of crown',
          'of the crown',
          'of brim',
          'of the brim',
          'of base',
          'of the base',
          'of each rnd',
          'of each row',
          'of every rnd',
          'at beg of prev row',
          'at beg of prev rnd',
          'at beg of last row',
          'at beg of row',
          'at beg of the row',
          'at beg of rnd',
          'at start of row',
          'on current row',
          'on current rnd',
          'of current row',
          'of current rnd',
          'in current row',
          'in current rnd',
          'on working row',
          'of working row',
          'on this row',
          'of this row',
          ...OF_PIECE,
          'as indicated',
          'indicated',
          'specified',
          'as specified',
          'designated',
          'stated',
          'as stated',
          'given',
          'shown',
          'just made',
          'just worked',
          'just formed',
          'just completed',
          'made',
          'formed',
          'worked',
        ])
      ) {
        return true;
      }
      if (atEnd(c)) return true;
      if (
        c.attempt(() => {
          // "of other side of foundation": the attach or the remark before it says that already.
          if (!c.eatAny(['of', 'on', 'along', 'in', 'from'])) return null;
          c.eat('the');
          if (!c.eatAny(['other side', 'opposite side', 'bottom', 'lower edge', 'free lps'])) return null;
          if (!c.eat('of')) return true;
          c.eatAny(['the', 'your']);
          return c.eatAny(['foundation ch', 'foundation row', 'foundation', 'beg ch', 'base ch', 'ch'])
            ? true
            : null;
        })
      ) {
        return true;
      }
      if (c.eatAny(['in row below', 'in the row below', 'on row below', 'directly below', 'row below'])) {
        draft.below = Math.max(draft.below, 1);
        // "in row below the sc row": which row that is, once more.
        c.attempt(() => (c.pass('the', 'last') && readStitch(c) && c.eatAny(['row', 'rnd']) ? true : null));
        return true;
      }
      if (
        c.attempt(() => {
          // "of previous block": whose, not which row.
          if (!c.eat('of prev') || c.peek()?.kind !== 'word') return null;
          c.at++;
          return c.done || c.peek()!.kind === 'sign' ? true : null;
        })
      ) {
        return true;
      }
      const deep = c.attempt(() => {
        const wrapped = c.eat('(');
        c.eatAny(['of', 'in', 'from', 'on']);
        c.eat('the');
        const amount = readAmount(c, false);
        if (
          amount?.kind !== 'one' ||
          !c.eatAny(['rows below', 'row below', 'rnds below', 'rnd below', 'rows down', 'rnds down'])
        ) {
          return null;
        }
        if (wrapped && !c.eat(')')) return null;
        return amount.value;
      });
      if (deep !== null) {
        // "1 row below" is said of the row below the usual one.
        draft.below = deep;
        return true;
      }
      if (c.eatAny(['of row', 'of rnd', 'from row', 'from rnd', 'in row', 'in rnd', 'on row', 'on rnd'])) {
        const row = readAmount(c, false);
        if (!row) return null;
        c.eat('below');
        if (row.kind === 'one') draft.row = row.value;
        return true;
      }
      if (c.word() === 'below') {
        c.at++;
        c.eat('it');
        draft.below = Math.max(draft.below, 1);
        return true;
      }
      const loop = c.attempt(() => {
        if (c.is('(blo') || c.is('( blo') || c.is('( flo')) {
          c.at++;
          const inner = readLoop(c);
          return inner && c.eat(')') ? inner : null;
        }
        c.eatAny(['through', 'in', 'under', 'using']);
        c.eat('the');
        return c.isAny(['blo of', 'flo of']) ? null : readLoop(c);
      });
      if (loop) {
        draft.loop = loop;
        return true;
      }
      if (c.eatAny(['from the front', 'from front'])) {
        draft.post = 'front';
        return true;
      }
      if (c.eatAny(['from the back', 'from back', 'from behind'])) {
        draft.post = 'back';
        return true;
      }
      return null;
    });
    if (!took) return;
  }
}
