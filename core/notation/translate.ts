/**
 * Turns a text from one market's terms into the other's: each recognised term once, in place, by its span,
 * and nothing else. The author's phrasing, capitals, plurals and hyphens stay. What may or may not be a term
 * is left as it is and reported. It knows no sizes, reads no row for its meaning and never throws.
 */
import type { Fact, Span } from '../finding.ts';
import type { BaseStitch, Terms } from '../trade/stitches.ts';
import {
  judgeBare,
  judgeCapitals,
  judgeEven,
  judgeGauge,
  judgeName,
  judgeSkip,
  judgeSpelling,
  judgeWeight,
  judgeYarnOver,
  type Verdict,
} from './term-context.ts';
import { gapAfter, joined, type TermText, type TermToken, type TextKind, termText } from './term-tokens.ts';
import {
  abbreviation,
  beginsPhrase,
  cutRun,
  LONGEST_PHRASE,
  nameWords,
  type StitchPhrase,
  stitchPhrase,
  type WordPhrase,
  wordPhrase,
} from './term-words.ts';

/** One replacement: where it stood in the text given, what stood there, what stands there now. */
export interface Replacement extends Span {
  readonly original: string;
  readonly replacement: string;
}

export interface Translation {
  readonly text: string;
  /** In the order of the text, never overlapping. */
  readonly spans: readonly Replacement[];
  /** `term-in-doubt` facts; `readings` holds the words as a term and the words as they are. */
  readonly doubts: readonly Fact[];
}

export interface TranslateOptions {
  /** Whether every line is a row, or prose; "mixed" (the default) judges each line. */
  readonly kind?: TextKind;
  /** Names the pattern defines itself, with what each market calls them. They go before the trade's. */
  readonly own?: readonly { readonly us: string; readonly uk: string }[];
}

/** What stands at a place of the text: how many tokens it takes and what to do with them. */
interface Match {
  readonly tokens: number;
  readonly verdict: Verdict;
  readonly replacement: string;
}

interface Job {
  readonly source: TermText;
  readonly from: Terms;
  readonly to: Terms;
  readonly own: ReadonlyMap<string, readonly [string, string]>;
  readonly longestOwn: number;
}

/**
 * Converts a text's terms. Total and linear in the text. Spans refer to the text given.
 * Sources of the terms: resources/trade/terms; the rules of context are common practice.
 */
export function translate(text: string, from: Terms, to: Terms, options: TranslateOptions = {}): Translation {
  if (from === to || text === '') return { text, spans: [], doubts: [] };
  const source = termText(text, options.kind ?? 'mixed');
  const own = ownNames(options.own ?? [], from, to);
  const longestOwn = [...own.keys()].reduce((most, key) => Math.max(most, key.split(' ').length), 0);
  const job: Job = { source, from, to, own, longestOwn };
  const spans: Replacement[] = [];
  const doubts: Fact[] = [];
  for (let at = 0; at < source.tokens.length; ) {
    const match = source.tokens[at]!.address ? null : matchAt(job, at);
    const length = match?.tokens ?? 1;
    if (match && match.verdict !== 'word') {
      const span = { from: source.tokens[at]!.from, to: source.tokens[at + length - 1]!.to };
      const original = text.slice(span.from, span.to);
      if (match.replacement !== original) {
        if (match.verdict === 'term') spans.push({ ...span, original, replacement: match.replacement });
        else {
          const data = { words: original, readings: [match.replacement, original] };
          doubts.push({ code: 'term-in-doubt', ...span, data });
        }
      }
    }
    at += length;
  }
  return { text: splice(text, spans), spans, doubts };
}

function splice(text: string, spans: readonly Replacement[]): string {
  const parts: string[] = [];
  let end = 0;
  for (const span of spans) {
    parts.push(text.slice(end, span.from), span.replacement);
    end = span.to;
  }
  return spans.length === 0 ? text : parts.join('') + text.slice(end);
}

/** A pattern's own names by their words in lower case; of two the same the first holds. */
function ownNames(
  names: readonly { readonly us: string; readonly uk: string }[],
  from: Terms,
  to: Terms,
): Map<string, readonly [string, string]> {
  const map = new Map<string, readonly [string, string]>();
  for (const name of names) {
    const key = keyOf(termText(name[from], 'row').tokens);
    if (key !== '' && !map.has(key)) map.set(key, [name[from], name[to]]);
  }
  return map;
}

const keyOf = (tokens: readonly TermToken[]): string => tokens.map((token) => token.word).join(' ');

/** What stands at a token, the longest first; null when nothing is to be said of it. */
function matchAt(job: Job, at: number): Match | null {
  const own = ownAt(job, at);
  if (own) return own;
  const raised = raisedAt(job, at);
  if (raised) return settle(job, at, raised);
  const begins = beginsPhrase(job.source.tokens[at]!.word, job.from);
  for (let count = begins ? phraseReach(job.source, at) : 0; count > 0; count--) {
    const key = keyOf(job.source.tokens.slice(at, at + count));
    const stitch = stitchPhrase(key, job.from);
    if (stitch) return settle(job, at, stitchMatch(job, at, count, key, stitch));
    const word = wordPhrase(key, job.from);
    if (word) {
      const match = wordMatch(job, at, count, word);
      return word.kind !== 'spelling' && qualified(job, at, match) ? { ...match, verdict: 'word' } : match;
    }
  }
  const run = runMatch(job, at);
  return run && settle(job, at, run);
}

/** How many tokens from here on could be one phrase. */
function phraseReach(source: TermText, at: number): number {
  let count = 1;
  while (count < LONGEST_PHRASE && adjoins(source, at + count - 1)) count++;
  return count;
}

/** Joined, or a number and a word written as one ("4ply"). */
function adjoins(source: TermText, index: number): boolean {
  const next = source.tokens[index + 1];
  return next !== undefined && (joined(source, index) || next.from === source.tokens[index]!.to);
}

function ownAt(job: Job, at: number): Match | null {
  const { source, own } = job;
  if (own.size === 0) return null;
  let reach = 1;
  while (reach < job.longestOwn && adjoins(source, at + reach - 1)) reach++;
  for (let count = reach; count > 0; count--) {
    const tokens = source.tokens.slice(at, at + count);
    const key = keyOf(tokens);
    const single = own.get(key);
    const many = single ? undefined : key.endsWith('s') ? own.get(key.slice(0, -1)) : undefined;
    const pair = single ?? many;
    if (!pair) continue;
    const written = source.text.slice(tokens[0]!.from, tokens.at(-1)!.to);
    const target = many ? `${pair[1]}s` : pair[1];
    const same = written === pair[0] || pair[1].toLowerCase() === pair[0].toLowerCase();
    const replacement = pair[1] === pair[0] ? written : same ? target : likeCase(written, target);
    return { tokens: count, verdict: 'term', replacement };
  }
  return null;
}

/** A stitch named for a market ("UK treble", "dc (US)") stays; a line that compares both is in doubt. */
function settle(job: Job, at: number, match: Match): Match {
  if (match.verdict === 'word') return match;
  if (qualified(job, at, match)) return { ...match, verdict: 'word' };
  const line = job.source.lines[job.source.tokens[at]!.line]!;
  return line.compares ? { ...match, verdict: 'doubt' } : match;
}

/** Whether a market's name stands right before the words, or in brackets behind them. */
function qualified({ source }: Job, at: number, match: Match): boolean {
  const last = at + match.tokens - 1;
  const before = source.tokens[at - 1];
  const next = source.tokens[last + 1];
  const market = /^(?:US|UK|USA|American|British)$/;
  return (
    (before !== undefined && market.test(before.text) && /^[ \t\u00a0:]+$/.test(gapAfter(source, at - 1))) ||
    (next !== undefined && market.test(next.text) && /^ ?[([]$/.test(gapAfter(source, last)))
  );
}

const PREFIXES = new Set(
  'post extended foundation linked crossed reverse spike standing invisible raised elongated'.split(' '),
);
const SUFFIXES = new Set(
  (
    'cluster clusters bobble bobbles popcorn popcorns puff puffs shell shells fan fans decrease decreases ' +
    'increase increases dec inc v'
  ).split(' '),
);

/** Where a base stitch is part of a longer name: the separators on its sides, or null. */
function compound(
  source: TermText,
  at: number,
  last: number,
): { before: string; after: string; title: boolean } | null {
  const before = source.tokens[at - 1];
  const next = source.tokens[last + 1];
  const led = before !== undefined && joined(source, at - 1) && PREFIXES.has(before.word);
  const followed =
    next !== undefined &&
    joined(source, last) &&
    (SUFFIXES.has(next.word) ||
      (next.kind === 'number' && /^tog(?:ether)?$/.test(source.tokens[last + 2]?.word ?? '')));
  if (!led && !followed) return null;
  const word = followed && next.kind === 'number' ? source.tokens[last + 2]! : next;
  const beside = led ? before : word!;
  return {
    before: led ? gapAfter(source, at - 1) : '',
    after: followed ? gapAfter(source, last) : '',
    title: /^\p{Lu}/u.test(beside.text),
  };
}

function stitchMatch(job: Job, at: number, count: number, key: string, phrase: StitchPhrase): Match {
  const { source, to } = job;
  const tokens = source.tokens.slice(at, at + count);
  const last = at + count - 1;
  const whole = compound(source, at, last);
  const row = source.lines[tokens[0]!.line]!.row;
  const verdict =
    phrase.style === 'bare' && !whole ? judgeBare(source, at, row) : judgeName(source, last, key);
  const separators = tokens.slice(1).map((token, index) => source.text.slice(tokens[index]!.to, token.from));
  const replacement =
    phrase.style === 'abbr'
      ? abbreviated(phrase, tokens, separators, to)
      : named(phrase, tokens, separators, to, whole);
  return { tokens: count, verdict, replacement };
}

/** "half dc" → "half tr"; "double tr" → "trtr". */
function abbreviated(
  phrase: StitchPhrase,
  tokens: readonly TermToken[],
  separators: readonly string[],
  to: Terms,
): string {
  const ending = phrase.plural ? 's' : '';
  const [first, second] = [tokens[0]!, tokens.at(-1)!];
  const model = second.text.slice(0, second.text.length - ending.length);
  if (first.word === 'half') {
    return first.text + separators[0]! + likeCase(model, abbreviation('t3', to)) + ending;
  }
  return likeCase(model, abbreviation(phrase.base, to)) + ending;
}

/** A full name in the other terms, with the author's separators and capitals. */
function named(
  phrase: StitchPhrase,
  tokens: readonly TermToken[],
  separators: readonly string[],
  to: Terms,
  whole: { before: string; after: string; title: boolean } | null,
): string {
  const words = [...nameWords(phrase.base, to, whole !== null || phrase.style !== 'name')];
  if (phrase.plural) words.push(`${words.pop()!}s`);
  const closes = (word: string): boolean => /^crochets?$/.test(word);
  const had = closes(tokens.at(-1)!.word);
  const has = closes(words.at(-1)!);
  const inner = [...separators];
  const beforeCrochet = had ? inner.pop() : undefined;
  const wanted = words.length - (has ? 2 : 1);
  while (inner.length > wanted) inner.shift();
  while (inner.length < wanted) inner.unshift(inner[0] ?? beforeCrochet ?? ' ');
  if (has) inner.push(beforeCrochet ?? (whole?.before || whole?.after || ' '));
  const text = words.map((word, index) => (index === 0 ? word : inner[index - 1]! + word)).join('');
  const model = tokens.map((token) => token.text).join(' ');
  const capital = tokens.length === 1 && /^\p{Lu}/u.test(model);
  return capital && whole?.title && model !== model.toUpperCase() ? titled(text) : likeCase(model, text);
}

function wordMatch(job: Job, at: number, count: number, phrase: WordPhrase): Match {
  const { source } = job;
  const tokens = source.tokens.slice(at, at + count);
  const last = at + count - 1;
  const written = source.text.slice(tokens[0]!.from, tokens.at(-1)!.to);
  if (phrase.kind === 'system') {
    const [market] = phrase.replacement.split(' ');
    const verdict = !/^(?:US|UK|American|British)$/.test(tokens[0]!.text)
      ? 'word'
      : source.lines[tokens[0]!.line]!.compares
        ? 'doubt'
        : 'term';
    return { tokens: count, verdict, replacement: market! + written.slice(tokens[0]!.text.length) };
  }
  const words = phrase.replacement.split(' ');
  const separators = tokens.slice(1).map((token, index) => source.text.slice(tokens[index]!.to, token.from));
  const text =
    words.length === tokens.length
      ? words.map((word, index) => (index === 0 ? word : separators[index - 1]! + word)).join('')
      : words.join(separators.length > 0 && separators.every((gap) => gap === '-') ? '-' : ' ');
  return { tokens: count, verdict: judgeWord(job, at, last, phrase), replacement: likeCase(written, text) };
}

function judgeWord({ source }: Job, at: number, last: number, { entry, kind }: WordPhrase): Verdict {
  const row = source.lines[source.tokens[at]!.line]!.row;
  if (kind === 'weight') return judgeWeight(source, at, last);
  switch (entry) {
    case 'skip':
      return judgeSkip(source, at, row);
    case 'gauge':
      return judgeGauge(source, at);
    case 'yarn-over':
      return judgeYarnOver(source, last);
    case 'work-even':
      return judgeEven(source, last);
    default:
      return judgeSpelling(source, at);
  }
}

/** A run of letters with a base stitch in it: "fpdc", "dcs", "rtrf". */
function runMatch(job: Job, at: number): Match | null {
  const { source, from, to } = job;
  const token = source.tokens[at]!;
  if (token.kind !== 'word') return null;
  if (from === 'us' && /^tcs?$/.test(token.word)) {
    // Some print "tc" for a treble, some for a turning chain.
    return { tokens: 1, verdict: 'doubt', replacement: likeCase(token.text, abbreviation('t4', to)) };
  }
  const run = cutRun(token.word, from);
  if (!run) return null;
  const middle = token.text.slice(run.before.length, run.before.length + run.written.length);
  const replacement =
    token.text.slice(0, run.before.length) +
    likeCase(middle, abbreviation(run.base, to)) +
    token.text.slice(run.before.length + run.written.length);
  const capitals = run.before === '' && run.after === '' && /^(?:DC|SC|TR)$/.test(token.text);
  const row = source.lines[token.line]!.row;
  return { tokens: 1, verdict: capitals && !row ? judgeCapitals(source, at) : 'term', replacement };
}

/**
 * UK raised stitches, which US terms call post stitches: "rtrf", "rtr/f", "raised treble front", "front
 * raised tr". The other way round the post stays: UK terms read both.
 */
function raisedAt(job: Job, at: number): Match | null {
  const { source, from, to } = job;
  const token = source.tokens[at]!;
  if (from !== 'uk' || to !== 'us' || token.kind !== 'word' || !token.word.startsWith('r')) return null;
  const next = source.tokens[at + 1];
  const run = cutRun(token.word, from);
  if (run) {
    const sloped = gapAfter(source, at) === '/' && next !== undefined && /^[fb]$/.test(next.word);
    const side = /^r[fb]$/.test(run.before) ? run.before[1] : sloped ? next.word : run.after;
    const glued =
      run.before === 'r' ? side === 'f' || side === 'b' : /^r[fb]$/.test(run.before) && run.after === '';
    if (!glued) return null;
    const text = `${side}p${abbreviation(run.base, to)}`;
    return { tokens: sloped ? 2 : 1, verdict: 'term', replacement: likeCase(token.text, text) };
  }
  if (token.word !== 'raised' || !joined(source, at)) return null;
  const before = source.tokens[at - 1];
  const base = baseAfter(job, at);
  if (!base) return null;
  if (before && /^(?:front|back)$/.test(before.word) && joined(source, at - 1)) {
    return { tokens: 1, verdict: 'term', replacement: likeCase(token.text, 'post') };
  }
  const last = at + base.tokens;
  const side = source.tokens[last + 1];
  if (!side || !/^(?:front|back)$/.test(side.word) || !joined(source, last)) return null;
  const written = source.text.slice(token.from, side.to);
  return {
    tokens: base.tokens + 2,
    verdict: 'term',
    replacement: likeCase(written, `${side.word} post ${base.words}`),
  };
}

/** The ladder stitch named right after a token: how many tokens it takes and its words in the target's terms. */
function baseAfter({ source, from, to }: Job, at: number): { tokens: number; words: string } | null {
  for (let count = phraseReach(source, at + 1); count > 0; count--) {
    const tokens = source.tokens.slice(at + 1, at + 1 + count);
    const phrase = stitchPhrase(keyOf(tokens), from);
    if (phrase) return { tokens: count, words: words(phrase.base, to, phrase.plural) };
  }
  const next = source.tokens[at + 1];
  const run = next ? cutRun(next.word, from) : null;
  return run && run.before === '' ? { tokens: 1, words: abbreviation(run.base, to) + run.after } : null;
}

const words = (base: BaseStitch, to: Terms, plural: boolean): string =>
  nameWords(base, to, true).join(' ') + (plural ? 's' : '');

/** Gives a text the capitals of a model: all capitals, every word, the first letter, or none. */
function likeCase(model: string, text: string): string {
  const parts = model.match(/\p{L}[\p{L}\p{M}]*/gu) ?? [];
  const letters = parts.join('');
  if (letters.length > 1 && letters === letters.toUpperCase() && letters !== letters.toLowerCase()) {
    return text.toUpperCase();
  }
  if (parts.length > 1 && parts.every((part) => /^\p{Lu}/u.test(part))) return titled(text);
  if (parts[0] && /^\p{Lu}/u.test(parts[0])) return text.replace(/\p{L}/u, (letter) => letter.toUpperCase());
  return text;
}

const titled = (text: string): string =>
  text.replace(/\p{L}[\p{L}\p{M}]*/gu, (word) => word[0]!.toUpperCase() + word.slice(1));
