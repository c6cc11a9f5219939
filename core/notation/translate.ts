/**
 * Turns a text from one market's terms into the other's: each recognised term once, in place, by its span,
 * and nothing else. The author's phrasing, capitals, plurals and hyphens stay. What may or may not be a term
 * is left as it is and reported. It knows no sizes, reads no row for its meaning and never throws.
 */
import type { Fact, Span } from '../finding.ts';
import type { BaseStitch, Terms } from '../trade/stitches.ts';
import { articleBefore } from './articles.ts';
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
  shapesTwice,
  type Verdict,
} from './term-context.ts';
import { abbreviated, compoundAt, likeCase, named } from './term-spelling.ts';
import {
  gapAfter,
  joined,
  keyOf,
  phraseKey,
  reachFrom,
  type TermText,
  type TextKind,
  termText,
} from './term-tokens.ts';
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
        if (match.verdict === 'term') {
          const article = articleBefore(source, at, match.replacement);
          spans.push({
            from: article?.from ?? span.from,
            to: span.to,
            original: (article?.original ?? '') + original,
            replacement: (article?.replacement ?? '') + match.replacement,
          });
        } else {
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
    const key = phraseKey(name[from]);
    if (key !== '' && !map.has(key)) map.set(key, [name[from], name[to]]);
  }
  return map;
}

/** What stands at a token, the longest first; null when nothing is to be said of it. */
function matchAt(job: Job, at: number): Match | null {
  const own = ownAt(job, at);
  if (own) return own;
  const raised = raisedAt(job, at);
  if (raised) return settle(job, at, raised);
  const begins = beginsPhrase(job.source.tokens[at]!.word, job.from);
  for (let count = begins ? reachFrom(job.source, at, LONGEST_PHRASE) : 0; count > 0; count--) {
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

function ownAt(job: Job, at: number): Match | null {
  const { source, own } = job;
  if (own.size === 0) return null;
  for (let count = reachFrom(source, at, job.longestOwn); count > 0; count--) {
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

function stitchMatch(job: Job, at: number, count: number, key: string, phrase: StitchPhrase): Match {
  const { source, to } = job;
  const tokens = source.tokens.slice(at, at + count);
  const last = at + count - 1;
  const whole = compoundAt(source, at, last);
  const row = source.lines[tokens[0]!.line]!.row;
  const verdict =
    phrase.style === 'bare' && (!whole || shapesTwice(source, at, last))
      ? judgeBare(source, at, row)
      : judgeName(source, last, key);
  const separators = tokens.slice(1).map((token, index) => source.text.slice(tokens[index]!.to, token.from));
  const replacement =
    phrase.style === 'abbr'
      ? abbreviated(phrase, tokens, separators, to)
      : named(phrase, tokens, separators, to, whole);
  return { tokens: count, verdict, replacement };
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
  for (let count = reachFrom(source, at + 1, LONGEST_PHRASE); count > 0; count--) {
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
