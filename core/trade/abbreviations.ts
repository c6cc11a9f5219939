/**
 * The abbreviation list at the front of a pattern: each abbreviation that is used, with what it means in the
 * edition's terms; nothing missing, nothing extra. It explains what it is told was used; finding that out is
 * the reader's work (see notation/abbreviations).
 */
import { baseOf, height, type Terms } from './stitches.ts';
import { namesOf } from './terms.ts';

/** One line of the list. */
export interface Abbreviation {
  readonly abbr: string;
  readonly meaning: string;
}

/** Something used: an id of a stitch or word, and the letters it was written with if they matter. */
export type Used = string | { readonly id: string; readonly as: string };

/**
 * Words of rows that are abbreviated, beside stitches. `upper`: only in capitals is it the abbreviation.
 * `row`: outside rows the letters are another word. Source: the Craft Yarn Council's list of crochet
 * abbreviations (from memory), and common practice.
 */
export interface TradeWord {
  readonly abbr: string;
  readonly meaning: string;
  readonly uk?: { readonly abbr?: string; readonly meaning?: string };
  /** Other letters for it. */
  readonly also?: readonly string[];
  readonly only?: 'upper' | 'row';
}

/** Every abbreviated word by its id. */
export const tradeWords: Readonly<Record<string, TradeWord>> = {
  alt: { abbr: 'alt', meaning: 'alternate', only: 'row' },
  approx: { abbr: 'approx', meaning: 'approximately' },
  beg: { abbr: 'beg', meaning: 'beginning', only: 'row' },
  bet: { abbr: 'bet', meaning: 'between', only: 'row' },
  blo: { abbr: 'BLO', meaning: 'back loop only', also: ['BL'] },
  bobble: { abbr: 'bo', meaning: 'bobble', only: 'row' },
  bp: { abbr: 'BP', meaning: 'back post' },
  cc: {
    abbr: 'CC',
    meaning: 'contrasting color',
    uk: { meaning: 'contrast colour' },
    only: 'upper',
  },
  chain: { abbr: 'ch', meaning: 'chain' },
  'ch-sp': { abbr: 'ch-sp', meaning: 'chain space' },
  cluster: { abbr: 'CL', meaning: 'cluster', only: 'row' },
  cont: { abbr: 'cont', meaning: 'continue' },
  dec: { abbr: 'dec', meaning: 'decrease' },
  flo: { abbr: 'FLO', meaning: 'front loop only', also: ['FL'] },
  foll: { abbr: 'foll', meaning: 'following' },
  fp: { abbr: 'FP', meaning: 'front post' },
  inc: { abbr: 'inc', meaning: 'increase' },
  invdec: { abbr: 'inv dec', meaning: 'invisible decrease' },
  lp: { abbr: 'lp', meaning: 'loop' },
  mc: { abbr: 'MC', meaning: 'main color', uk: { meaning: 'main colour' }, only: 'upper' },
  patt: { abbr: 'patt', meaning: 'pattern', also: ['pat'], only: 'row' },
  pm: { abbr: 'pm', meaning: 'place marker', only: 'row' },
  popcorn: { abbr: 'pc', meaning: 'popcorn', only: 'row' },
  prev: { abbr: 'prev', meaning: 'previous' },
  puff: { abbr: 'ps', meaning: 'puff stitch', uk: { abbr: 'PS' }, also: ['puff'], only: 'row' },
  rem: { abbr: 'rem', meaning: 'remaining' },
  rep: { abbr: 'rep', meaning: 'repeat' },
  rnd: { abbr: 'rnd', meaning: 'round' },
  rs: { abbr: 'RS', meaning: 'right side', only: 'upper' },
  shell: { abbr: 'sh', meaning: 'shell', only: 'row' },
  skip: { abbr: 'sk', meaning: 'skip', uk: { meaning: 'skip (miss)' } },
  sm: { abbr: 'sm', meaning: 'slip marker', also: ['sl m'], only: 'row' },
  sp: { abbr: 'sp', meaning: 'space' },
  st: { abbr: 'st', meaning: 'stitch' },
  tbl: { abbr: 'tbl', meaning: 'through back loop' },
  tch: { abbr: 'tch', meaning: 'turning chain', also: ['t-ch'] },
  third: { abbr: '3LO', meaning: 'third loop only' },
  tog: { abbr: 'tog', meaning: 'together' },
  vst: { abbr: 'V-st', meaning: 'V-stitch' },
  ws: { abbr: 'WS', meaning: 'wrong side', only: 'upper' },
  yo: { abbr: 'yo', meaning: 'yarn over' },
  yoh: { abbr: 'yoh', meaning: 'yarn over hook' },
  yrh: { abbr: 'yrh', meaning: 'yarn round hook' },
};

/** Ids that mean a word of the table under another name. */
const ALIASES: ReadonlyMap<string, string> = new Map([
  ['ch', 'chain'],
  ['chsp', 'ch-sp'],
  ['v-stitch', 'vst'],
  ['inv-dec', 'invdec'],
  ['turning-chain', 'tch'],
  ['yarn-over', 'yo'],
]);

/** The ids that a built-up id brings into the list: "5-shell.t3" brings "shell" and "t3". */
function parts(id: string): readonly string[] {
  const space = /^ch-\d+ sp$/.exec(id);
  if (space) return ['chain', 'sp'];
  const made = /^(?:\d+-)?(cluster|bobble|popcorn|puff|shell|vst|v-stitch|inc|dec)(?:\.|$)/.exec(id);
  if (!made) return [id];
  const base = baseOf(id);
  const counted = /^\d/.test(id);
  return counted && base ? [made[1]!, base] : [made[1]!];
}

function explain(id: string, as: string | null, terms: Terms): Abbreviation | null {
  const key = ALIASES.get(id) ?? id;
  const word = Object.hasOwn(tradeWords, key) ? tradeWords[key]! : null;
  if (word) {
    const local = terms === 'uk' ? word.uk : undefined;
    return { abbr: as ?? local?.abbr ?? word.abbr, meaning: local?.meaning ?? word.meaning };
  }
  const { name, abbr, alt } = namesOf(id, terms);
  const raised = as && /^r/i.test(as) ? alt?.find((words) => words.startsWith('raised ')) : undefined;
  if (raised) return { abbr: as!, meaning: raised };
  return name === id && abbr === id ? null : { abbr: as ?? abbr, meaning: name };
}

/**
 * The list for what was used, in alphabetical order (capitals apart), each abbreviation once. `own` holds the
 * pattern's own abbreviations with their meaning; one of them is listed when it was used, and its meaning
 * goes before the trade's. What neither the trade nor the pattern explains is left out.
 */
export function abbreviationList(
  used: Iterable<Used>,
  terms: Terms,
  own: Readonly<Record<string, string>> = {},
): readonly Abbreviation[] {
  const lines = new Map<string, Abbreviation>();
  const add = (line: Abbreviation | null): void => {
    const key = line?.abbr.toLowerCase();
    if (line && key !== undefined && !lines.has(key)) lines.set(key, line);
  };
  for (const item of used) {
    const id = typeof item === 'string' ? item : item.id;
    const as = typeof item === 'string' ? null : item.as;
    const letters = as ?? id;
    if (Object.hasOwn(own, letters)) {
      add({ abbr: letters, meaning: own[letters]! });
      continue;
    }
    const ids = parts(id);
    for (const part of ids) add(explain(part, ids.length === 1 ? as : null, terms));
  }
  return [...lines.values()].sort(byAbbreviation);
}

/**
 * The note beside the list: which terms the pattern is in, and what the stitches used are called in the
 * other market, in the ladder's order.
 */
export function termsNote(used: Iterable<Used>, terms: Terms): string {
  const other = terms === 'us' ? 'uk' : 'us';
  const pairs = new Map<string, { readonly words: string; readonly rank: number }>();
  for (const item of used) {
    const id = typeof item === 'string' ? item : item.id;
    const base = baseOf(id);
    if (!base || base === 'slip' || pairs.has(id)) continue;
    const here = namesOf(id, terms).abbr;
    const there = namesOf(id, other).abbr;
    if (here !== there) {
      pairs.set(id, { words: `${here} is ${there}`, rank: height(base) + (id === base ? 0 : 10) });
    }
  }
  const words = [...pairs.values()].sort((a, b) => a.rank - b.rank).map((pair) => pair.words);
  const last = words.pop();
  const list = last && (words.length > 0 ? `${words.join(', ')} and ${last}` : last);
  const note = `This pattern uses ${terms.toUpperCase()} crochet terms.`;
  return list ? `${note} In ${other.toUpperCase()} terms ${list}.` : note;
}

function byAbbreviation(a: Abbreviation, b: Abbreviation): number {
  const [left, right] = [a.abbr.toLowerCase(), b.abbr.toLowerCase()];
  return left < right ? -1 : left > right ? 1 : 0;
}
