/**
 * Reads the words that say that a row stops before its end: "leave rem sts unworked", "do not work the last 12 sts",
 * "turn here", "over first 12 sts only". How many stitches that leaves is counted by the fabric, not here.
 */
import type { Cursor } from './cursor.ts';
import { anyStitch, readNoun } from './nouns.ts';
import { readAmount } from './numbers.ts';
import type { Item, Unworked } from './tree.ts';

const LEAVE = ['leave', 'and leave', 'but leave', 'then leave', 'ignore', 'ignoring', 'and ignore'];

/** Words that name what is not worked into; a place has to be named behind them. */
const NOT_WORKED = [
  'do not work in',
  'do not work over',
  'do not work across',
  'do not work to',
  'do not work',
  "don't work in",
  "don't work",
  'do not crochet in',
  'not working in',
  'not working',
  'without working in',
  'without working',
];

const WHICH = [
  'all rem',
  'rest of the',
  'rest of',
  'rest',
  'these last',
  'those last',
  'other',
  'rem',
  'last',
  'final',
  'next',
  'these',
  'those',
  'them',
  'it',
  'this',
];

const UNWORKED = [
  'unworked',
  'unused',
  'free',
  'un - worked',
  'not worked',
  'for now',
  'for neck',
  'for sleeve',
  'for sleeves',
  'for armhole',
  'as they are',
  'alone',
  'on hold',
  'waiting',
  'hanging',
  'aside',
  'for later',
];

const AT_END = [
  'at end of row',
  'at end of rnd',
  'at end',
  'at the end of row',
  'at the end',
  'at this end',
  'for now',
];

const ends = (c: Cursor): boolean => c.done || c.peek()!.kind === 'sign';

/** "leave rem sts unworked", "leaving last 4 sts unworked", "leave these sts", "rem sts are left unworked". */
function readLeft(c: Cursor): Unworked | null {
  return c.attempt(() => {
    const start = c.at;
    const leave = c.eatAny(LEAVE);
    c.eatAny(['the', 'all', 'all of']);
    c.eat('the');
    const which = c.eatAny(WHICH);
    const amount = readAmount(c);
    if (!leave && !which && !amount) return null;
    const noun = readNoun(c);
    if (!leave && amount && !which) {
      // "12 sts remain unworked", "(12 sts left unworked)"
      if (!noun || !c.eatAny(['rem unworked', 'left unworked', 'are left unworked', 'rem', 'unworked']))
        return null;
      c.eatAny(AT_END);
      return ends(c) ? { type: 'unworked', amount, noun, ...c.span(start) } : null;
    }
    c.eatAny(['of row', 'of rnd', 'of the row', 'on row', 'rem', 'are', 'is']);
    c.eat('left');
    const waits = c.attempt(() => {
      // "leaving remaining 25 sts for second side", "leave rem sts."
      if (leave && ends(c)) return true;
      if (!c.eat('for')) return null;
      while (c.peek()?.kind === 'word' && !c.isAny(['turn', 'and', 'then'])) c.at++;
      return true;
    });
    if (!waits && !c.eatAny(UNWORKED)) return null;
    c.eatAny(AT_END);
    return { type: 'unworked', amount, noun: noun ?? anyStitch(c), ...c.span(start) };
  });
}

/** "do not work the last 12 sts", "turn without working the rest". */
function readNotWorked(c: Cursor): Unworked | null {
  return c.attempt(() => {
    const start = c.at;
    if (!c.eatAny(NOT_WORKED)) return null;
    c.eatAny(['any of the', 'all', 'the']);
    if (!c.eatAny(WHICH)) return null;
    const amount = readAmount(c);
    const noun = readNoun(c) ?? anyStitch(c);
    c.eatAny(['of row', 'of the row', 'of rnd']);
    c.eatAny(AT_END);
    return ends(c) ? { type: 'unworked', amount, noun, ...c.span(start) } : null;
  });
}

/** "Stop here.", "turn before the end of the row": nothing says how many are left. */
function readStopHere(c: Cursor): Unworked | null {
  return c.attempt(() => {
    const start = c.at;
    if (
      !c.eatAny([
        'stop here',
        'here',
        'before end of row',
        'before the end of the row',
        'before the end of row',
        'before reaching the end',
        'before the end',
        'before end',
        'at this point',
      ])
    )
      return null;
    const before = c.tokens[start - 1]?.word;
    if (c.tokens[start]!.word !== 'stop' && before !== 'turn') return null;
    return ends(c) || c.is('leave')
      ? { type: 'unworked', amount: null, noun: anyStitch(c), ...c.span(start) }
      : null;
  });
}

/** What a row may still say behind its last stitch. */
const AFTER_WORK = ['turn', 'ch 1 turn', 'fasten', 'join', 'then turn', 'and turn', '(', '['];

/** "sc in next 12 sts only": the last work of a row leaves what lies behind it; before more work it says nothing. */
function readOnly(c: Cursor): Item | null {
  return c.attempt(() => {
    const start = c.at;
    if (!c.eat('only')) return null;
    const { at } = c;
    while (!c.done && [',', '.', ';', '-'].includes(c.word())) c.at++;
    const last = c.done || c.isAny(AFTER_WORK) || c.is('ch #');
    c.at = at;
    if (!last) return { type: 'aside', ...c.span(start) };
    return { type: 'unworked', amount: null, noun: anyStitch(c), ...c.span(start) };
  });
}

/** "Working over first 12 sts only, sc in each st": the row is worked over so many, whatever it says behind that. */
function readConfined(c: Cursor): Unworked | null {
  return c.attempt(() => {
    const start = c.at;
    if (!c.eatAny(['working', 'work', 'cont', 'cont working', 'cont to work'])) return null;
    if (!c.eatAny(['over', 'on', 'across', 'in'])) return null;
    c.eat('the');
    const first = c.eatAny(['first', 'next']);
    const amount = readAmount(c);
    if (!amount) return null;
    const noun = readNoun(c);
    if (noun?.kind !== 'stitch') return null;
    c.eatAny(['of row', 'of the row']);
    if (!c.eat('only') && !(first && c.is(','))) return null;
    if (!ends(c)) return null;
    return { type: 'unworked', amount, noun, confines: true, ...c.span(start) };
  });
}

/** "turn and work on these 12 sts only", "cont on these sts for right shoulder": the row has gone as far as it goes. */
function readOnThese(c: Cursor): Unworked | null {
  return c.attempt(() => {
    const start = c.at;
    c.eatAny(['and', 'then', 'now']);
    const goes = c.eatAny([
      'cont working',
      'cont to work',
      'cont work',
      'working',
      'work',
      'cont',
      'go on',
      'proceed',
    ]);
    c.eatAny(['back and forth', 'in rows', 'straight']);
    if (!goes || !c.eatAny(['only on', 'just on', 'on only', 'on just', 'on', 'over', 'across'])) return null;
    c.eat('just');
    if (!c.eatAny(['these', 'those', 'these last', 'these first', 'only these'])) return null;
    // How many there are is not how many are left.
    readAmount(c);
    const noun = readNoun(c);
    if (noun?.kind !== 'stitch' && noun?.kind !== 'named') return null;
    c.eatAny(['only', 'alone', 'for now']);
    c.attempt(() => {
      if (!c.eatAny(['for', 'to make', 'to form', 'to complete'])) return null;
      while (c.peek()?.kind === 'word' && !c.isAny(['turn', 'and', 'then'])) c.at++;
      return true;
    });
    c.eat('only');
    return ends(c) ? { type: 'unworked', amount: null, noun, ...c.span(start) } : null;
  });
}

/** "Work each side separately.", "finish one side at a time": the row is of one side alone. */
function readEachSide(c: Cursor): Unworked | null {
  return c.attempt(() => {
    const start = c.at;
    c.eatAny(['and', 'then', 'now']);
    if (!c.eatAny(['working', 'work', 'cont', 'finish', 'finishing', 'complete', 'completing'])) return null;
    if (!c.eatAny(['each side', 'each shoulder', 'both sides', 'one side', 'sides', 'shoulders', 'each']))
      return null;
    c.eatAny(['of neck', 'of the neck', 'of front', 'of the front']);
    if (!c.eatAny(['separately', 'at a time', 'individually', 'on its own', 'in turn', 'in the same way']))
      return null;
    return ends(c) ? { type: 'unworked', amount: null, noun: anyStitch(c), ...c.span(start) } : null;
  });
}

/** What stands here of all that, or null. */
export function readUnworked(c: Cursor): Item[] | null {
  const item =
    readLeft(c) ??
    readNotWorked(c) ??
    readStopHere(c) ??
    readOnly(c) ??
    readConfined(c) ??
    readOnThese(c) ??
    readEachSide(c);
  return item === null ? null : [item];
}
