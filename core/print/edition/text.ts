/**
 * The author's text as it is printed: figures and typed size lists as the reader's numbers, terms converted, what
 * belongs together held together, a capital at the start and a full stop at the end. Beyond that the words stay
 * the author's. It knows nothing of rows' counts or labels.
 */
import { FIGURE, type FigureText } from '../../document/pattern.ts';
import type { Fact, Span } from '../../finding.ts';
import { evaluate, type FigureResult, scheduleWords, sizeList, spreadWords } from '../../grading/index.ts';
import { planForm, sharedList } from '../../study/index.ts';
import { lengthList } from '../../study/length-list.ts';
import { typedLists } from '../../study/typed-lists.ts';
import type { Length } from '../../trade/units.ts';
import { holdNumbers, numbers, plain, type Run, type Words } from '../content.ts';
import type { Reader } from './reader.ts';

export interface TextOptions {
  readonly node: string | null;
  readonly kind: 'row' | 'prose';
  /** Ids of the sizes that the text is for; null = all. */
  readonly only?: readonly string[] | null;
  /** Spans to leave out, in order: a count that is printed apart. */
  readonly cuts?: readonly Span[];
  /** Lists of one number a size that the reader of rows found, beyond those in brackets. */
  readonly lists?: readonly (Span & { readonly values: readonly (number | null)[] })[];
}

/** Something in the text that is not words: its place, and what stands there for the reader. */
interface Atom extends Span {
  readonly text: string;
  /** A unit that the author typed after a length goes with it. */
  readonly takesUnit: boolean;
}

const UNIT_AFTER = /^[ \u00A0]*(?:cms?|mm|ins?|inch(?:es)?|centimet(?:re|er)s?)(?!\p{L})\.?/iu;

/** The text as words to print; empty when nothing is in it. */
export function textWords(text: FigureText, reader: Reader, options: TextOptions): Words {
  const { template, atoms } = templateOf(text, reader, options);
  const said = reader.say(template, options.node, options.kind);
  return assemble(said, atoms);
}

/** Plain words without figures: names, captions, sentences. */
export function plainWords(
  text: string,
  reader: Reader,
  node: string | null = null,
  kind: 'row' | 'prose' = 'prose',
): Words {
  return textWords({ text, figures: [] }, reader, { node, kind });
}

function templateOf(
  source: FigureText,
  reader: Reader,
  options: TextOptions,
): { template: string; atoms: readonly Atom[] } {
  const { text } = source;
  const cuts = options.cuts ?? [];
  const atoms = [...figureAtoms(source, reader, options), ...listAtoms(text, reader, options)]
    .filter((atom) => !cuts.some((cut) => atom.from < cut.to && cut.from < atom.to))
    .sort((a, b) => a.from - b.from);
  const parts: string[] = [];
  const kept: Atom[] = [];
  let at = 0;
  for (const span of [
    ...cuts.map((cut) => ({ ...cut, atom: null })),
    ...atoms.map((atom) => ({ ...atom, atom })),
  ].sort((a, b) => a.from - b.from)) {
    if (span.from < at) continue;
    parts.push(text.slice(at, span.from));
    at = span.to;
    if (span.atom === null) continue;
    parts.push(FIGURE);
    kept.push(span.atom);
    if (span.atom.takesUnit) at += UNIT_AFTER.exec(text.slice(at))?.[0].length ?? 0;
  }
  parts.push(text.slice(at));
  return { template: parts.join(''), atoms: kept };
}

function figureAtoms(source: FigureText, reader: Reader, options: TextOptions): readonly Atom[] {
  const atoms: Atom[] = [];
  let from = -1;
  for (const expression of source.figures) {
    from = source.text.indexOf(FIGURE, from + 1);
    if (from < 0) break;
    atoms.push({ from, to: from + 1, ...figureWords(expression, { from, to: from + 1 }, reader, options) });
  }
  return atoms;
}

function figureWords(
  expression: string,
  span: Span,
  reader: Reader,
  options: TextOptions,
): Pick<Atom, 'text' | 'takesUnit'> {
  const { study, pattern, sizes } = reader;
  const worked = sizes.map((size) => {
    const own = options.only ?? null;
    if (own !== null && !own.includes(pattern.sizes[size]!.id)) return null;
    return evaluate(expression, study.sheet, size);
  });
  const missing = sizes.filter((_, i) => worked[i] !== null && worked[i]!.value === null);
  if (missing.length > 0) {
    reader.report(options.node, {
      code: 'figure-without-number',
      ...span,
      data: { figure: expression, sizes: missing.map((size) => pattern.sizes[size]!.label) },
    });
  }
  const list = options.only == null ? sizeList : sharedList;
  const lengths = worked.map((result) => lengthIn(result));
  if (lengths.some((length) => length !== null)) {
    return { text: lengthList(lengths, reader.units, list), takesUnit: true };
  }
  const wordy = worked.map((result) => wordsIn(result));
  if (wordy.some((words) => words !== null)) {
    return { text: wordyList(expression, worked, wordy, reader), takesUnit: false };
  }
  return { text: list(worked.map((result) => result?.count ?? null)), takesUnit: false };

  function wordsIn(result: FigureResult | null): string | null {
    const value = result?.value ?? null;
    if (value?.dimension === 'spread') return spreadWords(value.spread, reader.terms);
    return value?.dimension === 'schedule'
      ? scheduleWords([value.schedule], planForm(expression, pattern))
      : null;
  }
}

function lengthIn(result: FigureResult | null): Length | null {
  return result?.value?.dimension === 'length' ? result.value.value : null;
}

/** A schedule is told once for all sizes; spreads stand size by size where they differ. */
function wordyList(
  expression: string,
  worked: readonly (FigureResult | null)[],
  wordy: readonly (string | null)[],
  reader: Reader,
): string {
  const schedules = worked.map((result) => {
    const value = result?.value ?? null;
    return value?.dimension === 'schedule' ? value.schedule : null;
  });
  if (schedules.some((schedule) => schedule !== null))
    return scheduleWords(schedules, planForm(expression, reader.pattern));
  const different = new Map<string, string[]>();
  reader.sizes.forEach((size, i) => {
    const words = wordy[i] ?? null;
    if (words === null) return;
    different.set(words, [...(different.get(words) ?? []), reader.pattern.sizes[size]!.label]);
  });
  if (different.size === 1 && wordy.every((words) => words !== null)) return wordy[0]!;
  return [...different].map(([words, labels]) => `${labels.join(', ')}: ${words}`).join('; ');
}

/** Typed lists: as typed for all sizes; for one size alone, that size's number. */
function listAtoms(text: string, reader: Reader, options: TextOptions): readonly Atom[] {
  const count = reader.pattern.sizes.length;
  if (count < 2) return [];
  const read = (options.lists ?? [])
    .filter((list) => list.values.length === count)
    .map((list) => ({
      from: list.from,
      to: list.to,
      values: list.values.map((n) => (n === null ? null : String(n))),
    }));
  const typed = typedLists(text, count).filter(
    (list) => !read.some((other) => other.from < list.to && list.from < other.to),
  );
  return [...read, ...typed].flatMap((list): Atom[] => {
    const { from, to } = list;
    if (!reader.alone) return [{ from, to, text: text.slice(from, to), takesUnit: false }];
    const own = list.values[reader.sizes[0]!] ?? null;
    if (own !== null) return [{ from, to, text: own, takesUnit: false }];
    const fact: Fact = {
      code: 'size-without-number',
      from,
      to,
      data: { list: text.slice(from, to), size: reader.pattern.sizes[reader.sizes[0]!]!.label },
    };
    reader.report(options.node, fact);
    return [{ from, to, text: text.slice(from, to), takesUnit: false }];
  });
}

/** A list as runs that do not break inside it; in two units, one run for each. */
export function listRuns(words: string): Words {
  return words.split(' / ').flatMap((list, i) => (i === 0 ? [numbers(list)] : [plain(' / '), numbers(list)]));
}

/** A word that numbers count, as it follows them: "sts", "ch-2 sps". */
const COUNTED = /^ ((?:ch-\d+[ \u00A0]sps?|\p{L}[\p{L}\p{N}]{0,9})(?![\p{L}\p{N}-]))/u;

function assemble(said: string, atoms: readonly Atom[]): Words {
  const pieces = said.trim().split(FIGURE);
  const runs: Run[] = [];
  let open = pieces[0] ?? '';
  let afterList = false;
  const close = (beforeList: boolean): void => {
    // A list is long: only a short word ("ch") is held to it, or lines would come out ragged.
    const text = hold(
      open,
      afterList,
      beforeList && /(?<!\p{L})\p{L}{1,3} $/u.test(open) && !EVERY.test(open),
    );
    if (text !== '') runs.push(plain(text));
  };
  atoms.forEach((atom, i) => {
    const rest = pieces[i + 1] ?? '';
    if (!/[(,[]/.test(atom.text)) {
      open += atom.text + rest;
      return;
    }
    close(true);
    const counted = COUNTED.exec(rest)?.[1] ?? null;
    runs.push(
      ...listRuns(counted === null ? atom.text : `${atom.text}\u00A0${counted.replaceAll(' ', '\u00A0')}`),
    );
    open = counted === null ? rest : rest.slice(counted.length + 1);
    // A counted word or a unit already stands with its numbers.
    afterList = counted === null && !atom.takesUnit;
  });
  close(false);
  return finished(runs);
}

/** Words of ours with lists of numbers in them, set as the author's are. */
export function ownWords(text: string, reader: Reader): Words {
  const atoms = typedLists(text, reader.sizes.length).map(
    ({ from, to }): Atom => ({ from, to, text: text.slice(from, to), takesUnit: false }),
  );
  let at = 0;
  const parts = atoms.map((atom) => {
    const before = text.slice(at, atom.from);
    at = atom.to;
    return before;
  });
  return assemble([...parts, text.slice(at)].join(FIGURE), atoms);
}

/** "every 2nd rnd 9 (7, 5) more times": the rnd belongs to what is before it, not to the times. */
const EVERY = /(?:every|\d(?:st|nd|rd|th)) (?:row|rnd) $/u;

const STITCH = String.raw`(?:sts?|st\(s\)|ch|sps?|lps?|rows?|rnds?|sc|hdc|dc|tr|htr|dtr|trtr|ss|sl)`;
const GLUED: readonly (readonly [RegExp, string])[] = [
  [/(ch-\d+) (?=sps?\b|lps?\b|loops?\b|spaces?\b)/giu, '$1\u00A0'],
  [/\b(sl|inv|turning|beg|magic|inv) (?=st\b|sts\b|dec\b|ch\b|ring\b)/giu, '$1\u00A0'],
  [new RegExp(String.raw`\b(next|first|last|same|each|prev|skipped) (?=${STITCH}\b)`, 'giu'), '$1\u00A0'],
  [/(\bevery|\d(?:st|nd|rd|th)) (?=(?:rows?|rnds?)\b)/gu, '$1\u00A0'],
  [/\b(rep|from) (?=from \*|\*)/giu, '$1\u00A0'],
  // "4 to 10 cm / 1½ to 4 in": no line begins with the stroke.
  [/ (\/) (?=[\d½¼¾⅛])/gu, '\u00A0$1 '],
  [/\b(RS|WS) (?=facing\b)/gu, '$1\u00A0'],
];

/** Holds numbers to what they count, and terms of several words together. */
export function hold(text: string, afterList = false, beforeList = false): string {
  // A digit stands in for the list on either side, so that the word next to it is held to it.
  const framed = `${afterList ? '0' : ''}${text}${beforeList ? '0' : ''}`;
  let held = holdNumbers(framed);
  for (const [pattern, replacement] of GLUED) held = held.replace(pattern, replacement);
  return held.slice(afterList ? 1 : 0, beforeList ? held.length - 1 : held.length);
}

/** A capital at the start and a full stop at the end. */
function finished(runs: readonly Run[]): Words {
  if (runs.length === 0) return runs;
  const out = runs.map((run) => ({ ...run }));
  const first = out[0]!;
  const last = out.at(-1)!;
  if (first.hold !== 'numbers') first.text = capitalised(first.text);
  last.text = last.text.replace(/[\s\u00A0,;–—-]+$/u, '');
  if (/[\p{L}\p{N}\])%*½¼¾"”’']$/u.test(last.text)) last.text += '.';
  return out;
}

/** With a capital where the text begins with a small letter. */
export function capitalised(text: string): string {
  return /^\p{Ll}/u.test(text) ? text.charAt(0).toUpperCase() + text.slice(1) : text;
}

/** For the middle of a sentence; a word all in capitals keeps them. */
export function uncapitalised(text: string): string {
  return /^\p{Lu}\p{Ll}/u.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}
