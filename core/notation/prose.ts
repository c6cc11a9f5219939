/**
 * Reads what is no work in a row: remarks, sentences of prose, what a chain is said to count as, and the words
 * that send the work to the other side of the foundation. It must not swallow work.
 */
import { isAside } from './asides.ts';
import { readChain } from './chains.ts';
import { readCountsAs, readSaid } from './counts.ts';
import { type Cursor, OPENING } from './cursor.ts';
import { readLength } from './lengths.ts';
import { isMark } from './marks.ts';
import { readPlace } from './places.ts';
import { readBracketCountAhead } from './row-counts.ts';
import { readSkip } from './skips.ts';
import type { CountsAs, Item } from './tree.ts';
import { readStitch } from './words.ts';
import { readWork } from './work.ts';

/** "work along the other side of the foundation chain": from here the free loops of it are met. */
export function readOtherSide(c: Cursor): Item[] | null {
  if (
    !c.isAny([
      'work',
      'working',
      'cont',
      'on',
      'along',
      'now',
      'rotate',
      'turn',
      'in',
      'across',
      'do not',
      'other side',
      'opposite side',
      'the other side',
    ])
  )
    return null;
  // Most words that begin so lead elsewhere: only those that name a side are looked at one by one.
  const ahead = wordsAhead(c);
  if (!OTHER_SIDE.test(ahead) && !FOUNDATION_EDGE.test(ahead)) return null;
  return c.attempt(() => {
    const start = c.at;
    while (!c.done && c.peek()!.kind !== 'sign') {
      if (c.at > start && beginsWork(c)) break;
      c.at++;
    }
    if (c.at === start) return null;
    const item = asideOf(c, start);
    return item.type === 'other-side' ? [item] : null;
  });
}

/** The words up to the next sign, as far as a remark is searched. */
function wordsAhead(c: Cursor): string {
  const from = c.peek()!.from;
  let to = from;
  for (let n = 0; ; n++) {
    const token = c.peek(n);
    if (!token || token.kind === 'sign' || token.to - from > LONGEST_REMARK) break;
    to = token.to;
  }
  return c.text.slice(from, to);
}

/** "sc 2 on the other side": the words behind the stitches that go there. */
export function readOtherSideBehind(c: Cursor): Item | null {
  return c.attempt<Item>(() => {
    const start = c.at;
    if (!c.eatAny(['on', 'along', 'down', 'up', 'in'])) return null;
    c.eat('the');
    if (!c.eatAny(['other side', 'opposite side'])) return null;
    c.attempt(() => {
      if (!c.eat('of')) return null;
      c.eatAny(['the', 'beg', 'foundation', 'base', 'the foundation', 'the beg']);
      return c.eatAny(['ch', 'chs']) ? true : null;
    });
    return { type: 'other-side', ...c.span(start) };
  });
}

/** "Circle should measure 12 cm across." inside a row: a sentence with no work in it. */
export function readSentenceOfProse(c: Cursor, before: readonly Item[]): Item[] | null {
  const previous = c.tokens[c.at - 1]?.word ?? '';
  if (before.length === 0 || !['.', ')', ']', '!'].includes(previous)) return null;
  if (!/^\p{Lu}\p{Ll}/u.test(c.peek()!.text) || c.isAny(OPENERS) || isAside(c)) return null;
  if (stitchThenPlace(c)) return null;
  return c.attempt(() => {
    const start = c.at;
    let words = 0;
    while (!c.done) {
      // "5 in. (13 cm) wide": the full stop and the bracket are the length's own.
      if (readLength(c)) continue;
      const token = c.peek()!;
      if (token.word === '.' || token.word === '!') break;
      if (isMark(c, c.at) || token.word in OPENING || words > 60) return null;
      if (c.at > start && (beginsWork(c) || c.isAny(WORK_WORDS))) return null;
      c.at++;
      words++;
    }
    if (words < 3 || (c.at === start + 1 && readPlace(c))) return null;
    const span = c.span(start);
    c.fact('prose-passed-over', span, { words: c.words(span) });
    return [{ type: 'aside', ...span }];
  });
}

/** "Single crochet into the back loop": work, whatever the words behind it say. */
function stitchThenPlace(c: Cursor): boolean {
  const { at } = c;
  const facts = c.facts.length;
  const works = readStitch(c) !== null && c.isAny(['in', 'into', 'through', 'around', 'over', 'under', 'on']);
  c.at = at;
  c.facts.length = facts;
  return works;
}

/** Words that begin work or a known instruction, so that a sentence with them in front is no prose. */
const OPENERS = [
  'ch',
  'chs',
  'sk',
  'rep',
  'turn',
  'join',
  'fasten',
  'work',
  'do not',
  'change',
  'place',
  'move',
  'with',
  'sl',
  'ss',
  'inc',
  'dec',
  'in',
  'cont',
  'leave',
  'end',
  'total',
  'sc',
  'dc',
  'hdc',
  'tr',
  'htr',
  'dtr',
  'make',
  'next',
  'now',
  'then',
  'mark',
  'remove',
  'finish',
  'weave',
  'cut',
  'break',
  'attach',
  'rejoin',
  'using',
  'you',
];

const WORK_WORDS = [
  'in next',
  'in each',
  'in same',
  'in last',
  'in first',
  'rep from',
  'across to',
  'turn',
  'in ea',
];

/** "The 3 skipped ch count as a dc", "turning ch counts as st" said in the row itself. */
export function readSentence(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    const said = readSaid(c);
    const counts: CountsAs | null = said ? said.convention.counts : readCountsAs(c);
    if (!counts || (counts.kind === 'stitch' && !said && c.words(c.span(start)).length < 5)) return null;
    c.said.push(counts);
    return [asideOf(c, start)];
  });
}

/** Words that change nothing, up to the next separator. */
export function readRemark(c: Cursor): Item[] | null {
  if (!isAside(c)) return null;
  const start = c.at;
  while (!c.done) {
    if (readLength(c)) continue;
    const sign = c.word();
    if ([',', ';', '.'].includes(sign) && c.at > start) break;
    if (sign in OPENING && c.at > start) {
      const close = c.partner[c.at]!;
      if (close < 0 || close >= c.end || readBracketCountAhead(c)) break;
      c.at = close + 1;
      continue;
    }
    if (isMark(c, c.at) || sign === ')' || sign === ']' || sign === '}') break;
    if (c.at > start && beginsWork(c)) break;
    // "Using 3 mm hook make 24 ch": behind the tool the work begins, with no comma between.
    if (c.at > start && c.isAny(['make #', 'ch #']) && ['hook', 'hooks'].includes(c.tokens[c.at - 1]!.word))
      break;
    c.at++;
  }
  return c.at > start ? [asideOf(c, start)] : null;
}

/** "(11 × 4 + 1, plus 1)": how a number comes about, in a bracket of its own. */
export function readSum(c: Cursor): Item[] | null {
  const close = c.word() in OPENING ? c.partner[c.at]! : -1;
  if (close < 0 || close >= c.end) return null;
  let signs = 0;
  for (let i = c.at + 1; i < close; i++) {
    const { word, kind } = c.tokens[i]!;
    if (SUM_SIGNS.includes(word)) signs++;
    else if (
      kind !== 'number' &&
      ![',', '=', 'ch', 'chs', 'st', 'sts', 'turning', 'edge', 'for', 'extra'].includes(word)
    )
      return null;
  }
  if (signs === 0) return null;
  const start = c.at;
  c.at = close + 1;
  return [{ type: 'aside', ...c.span(start) }];
}

const SUM_SIGNS = ['×', 'x', '+', '-', '−', '÷', 'plus', 'minus', 'times'];

/** "sc in next", "2 dc", "ch 3", "sk 2": work that a remark must not swallow. */
function beginsWork(c: Cursor): boolean {
  const before = c.tokens[c.at - 1]!.word;
  if (
    [
      'of',
      'from',
      'to',
      'behind',
      'over',
      'under',
      'each',
      'the',
      'for',
      'last',
      'first',
      'this',
      'these',
      'in',
      'on',
      'with',
      'between',
      'above',
      'below',
      'around',
      'along',
      'across',
      'without',
      'any',
      'or',
    ].includes(before)
  )
    return false;
  const at = c.at;
  const facts = c.facts.length;
  const begins = c.isAny(['ch #', 'make #', 'make a ch', 'work #', 'make ch']);
  const chain = begins ? readChain(c.pass('make a', 'make', 'work')) : null;
  if (chain === null) c.at = at;
  const skip = !chain && c.is('sk #') ? readSkip(c) : null;
  const work = chain || skip ? null : readWork(c);
  c.at = at;
  c.facts.length = facts;
  if (chain || skip) return true;
  if (!work) return false;
  if (Array.isArray(work)) return true;
  const place = work.places[0]!;
  return place.kind !== 'next' || !place.implied || place.amount.from < place.amount.to;
}

/** Words that say a row goes no further: the rest waits for its own side. */
const PART_ROW =
  /\b(?:complete|finish|work(?:ing)?|continue|cont)\b.*\b(?:this|first|one|each) (?:side|shoulder)\b|\b(?:on|over) these (?:sts|stitches)(?: only)?\b/iu;

/** A remark with more letters is no maker's, and is not searched for more than that it is one. */
const LONGEST_REMARK = 200;

const OTHER_SIDE =
  /\b(?:other|opposite|opp|under|bottom|second|free|unused|remaining|rem)\W?\s?(?:side|edge|loops?|lps?)\b.*\b(?:ch|chain|foundation|base)\b|\b(?:other|opposite|opp) side\b|\brotate\b/iu;

/** "along foundation chain", "in base of Row 1": that edge by its own name. */
const FOUNDATION_EDGE =
  /\b(?:along|across|into|in|at) (?:the )?(?:(?:base|bottom|foot|edge) of (?:the )?)?(?:(?:foundation|base|beginning|beg|starting) (?:ch|chs|chain|chains|edge)|foundation row)\b|\b(?:along|across|into|in) (?:the )?(?:base|bottom|foot) of (?:the )?(?:row|rnd|round) 1\b/iu;

const LAYERS = /\bthrough (?:both|all|the two) (?:layers|thicknesses)\b/iu;

/** "working behind petals into sts of Rnd 1", not "working in front of Rnd 2". */
const EARLIER =
  /\bin(?:to)?\s+(?!front\b|back\b)[^,;.]*?\b(?:of|on|from)\s+(?:rnd|round|row)\s+(\d{1,4})\b|\binto\s+(?:rnd|round|row)\s+(\d{1,4})\b/iu;

/** An aside, unless it sends the work elsewhere: round a chain's other side, through layers, into an earlier row. */
function asideOf(c: Cursor, start: number): Item {
  const span = c.span(start);
  if (span.to - span.from > LONGEST_REMARK) return { type: 'aside', ...span };
  if (PART_ROW.test(c.words(span)))
    return { type: 'unworked', amount: null, noun: { kind: 'stitch', ...span }, ...span };
  if (LAYERS.test(c.words(span))) return { type: 'layers', ...span };
  if (FOUNDATION_EDGE.test(c.words(span))) return { type: 'other-side', ...span };
  const earlier = EARLIER.exec(c.words(span));
  if (earlier) return { type: 'earlier', row: Number(earlier[1] ?? earlier[2]), ...span };
  return { type: OTHER_SIDE.test(c.words(span)) ? 'other-side' : 'aside', ...span };
}
