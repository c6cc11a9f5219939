/** Letters that look like an abbreviation stand in a text, and neither the trade's list nor the pattern explains them. */
import type { Pattern } from '../../document/pattern.ts';
import { quoted } from '../../findings/phrases.ts';
import { abbreviationsIn } from '../../notation/abbreviations.ts';
import type { Study } from '../../study/index.ts';
import { abbreviationList } from '../../trade/abbreviations.ts';
import { onlyIn } from '../../trade/terms.ts';
import { remembered } from '../remember.ts';
import { type At, found, type Rule } from '../rule.ts';
import { type TextUse, usesOf } from '../usage.ts';

/** Short forms that any reader knows: units, ordinals, titles, markets, yarn trade, standards. Lower case. */
const PLAIN: ReadonlySet<string> = new Set(
  (
    'cm mm km m g kg mg ml oz lb lbs ft yd yds in pt px st nd rd th nth vs mr mrs ms dr jr sr tv pdf usa uk us eu ' +
    'dk wpi ply nb ps pm am ft hr hrs pcs pc pkg diy faq iso en cpsc astm cfr bs din www http https html md ph pvc ' +
    'hmm shh psst pfft brr tsk gsm led sl'
  ).split(' '),
);

/** Designers' own short forms that have a vowel, and so look like words. Common practice, no source. */
const KNOWN = /^(?:BOR|EOR|BOW|EOW|LOR)$/u;

const WORD = /(?<![\p{L}\p{N}\-.@/'’])\p{L}[\p{L}\p{N}]{1,6}(?![\p{L}\p{N}@/])/gu;

/** Letters that can hardly be an English word: no vowel, or capitals with a number in them ("M1L"). */
function looksShort(word: string): boolean {
  if (KNOWN.test(word)) return true;
  if (/^[MDCLXVI]+$/u.test(word)) return false;
  // "between R5 and R6", "v2", "x6": rows by their numbers, the version of the pattern, and how often.
  if (/^(?:R|v|x)\d{1,3}$/iu.test(word)) return false;
  if (/^\p{Lu}{1,3}\d\p{Lu}*$/u.test(word)) return true;
  return word.length <= 5 && /^[a-z]+\d?$/iu.test(word) && !/[aeiouy]/iu.test(word);
}

interface Unexplained {
  readonly words: string;
  readonly at: At;
}

function explainedBy(study: Study): ReadonlySet<string> {
  const { pattern } = study;
  const other = pattern.terms === 'us' ? 'uk' : 'us';
  const words = [
    ...Object.keys(pattern.abbreviations),
    ...pattern.specials.flatMap(({ nameUs, nameUk, abbrUs, abbrUk }) => [nameUs, nameUk, abbrUs, abbrUk]),
    ...pattern.yarns.flatMap((yarn) => [yarn.key ?? '', yarn.name, yarn.fibre]),
    ...pattern.sizes.map((size) => size.label),
    ...pattern.lines.flatMap((line) => [line.name, line.printed ?? '']),
    ...pattern.pieces.map((piece) => piece.name),
    pattern.about.title,
    pattern.about.designer,
    // Terms of the other market are told by a rule of their own.
    ...onlyIn[other],
  ];
  return new Set(words.flatMap((each) => each.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []));
}

/** Spans of a row that the reader could not read; those are told already. */
function unreadIn(study: Study): ReadonlyMap<string, readonly { from: number; to: number }[]> {
  const spans = new Map<string, { from: number; to: number }[]>();
  for (const finding of study.findings) {
    const { node, from, to } = finding.where;
    if (finding.code !== 'word-not-read' || node === null) continue;
    spans.set(node, [...(spans.get(node) ?? []), { from, to }]);
  }
  return spans;
}

const byUse = new WeakMap<
  TextUse,
  { readonly explained: Pattern['abbreviations']; readonly found: readonly Unexplained[] }
>();

/** What a text writes that may want explaining. What a text uses is of one text in one system of terms. */
function candidates(use: TextUse, { terms, abbreviations }: Pattern): readonly Unexplained[] {
  const before = byUse.get(use);
  if (before?.explained === abbreviations) return before.found;
  const { text, used, own } = use;
  const place = (words: string, from: number): Unexplained => ({
    words,
    at: { node: text.node, text: text.text, from, to: from + words.length },
  });
  const unlisted = used.flatMap((each) => {
    const as = typeof each === 'string' ? each : each.as;
    if (own.has(as) || abbreviationList([each], terms, abbreviations).length > 0) return [];
    const from = text.text.toLowerCase().indexOf(as.toLowerCase());
    return from < 0 ? [] : [place(as, from)];
  });
  const found = [...unlisted, ...shortWords(text.text, terms).map(({ words, from }) => place(words, from))];
  byUse.set(use, { explained: abbreviations, found });
  return found;
}

/** Letters in a text that look like an abbreviation that the trade does not know. Under: the terms. */
const shortWords = remembered((text, terms): readonly { words: string; from: number }[] =>
  [...text.matchAll(WORD)].flatMap((match) => {
    const [words] = match;
    const bare = words.toLowerCase().replace(/s$/u, '');
    if (!looksShort(words) || PLAIN.has(words.toLowerCase()) || PLAIN.has(bare)) return [];
    // Whether the trade knows it is asked as of a row, where more letters are abbreviations than in prose.
    const known = abbreviationsIn([`Row 1: ${words}`], terms === 'us' ? 'us' : 'uk').length > 0;
    return known ? [] : [{ words, from: match.index }];
  }),
);

export const abbreviationNotExplained: Rule = {
  code: 'abbreviation-not-explained',
  severity: 'warning',
  title: 'An abbreviation is not explained',
  reason:
    'Abbreviations of the trade are explained at the front by themselves; all others only if the maker does it.',
  message: (facts) =>
    `${quoted(facts[0]!.fact.data, 'abbreviation')} is neither an abbreviation of the trade nor explained; add it to the abbreviations, or write it out`,
  example: null,
  sample: { abbreviation: 'BOR' },
  check: (study) => {
    const all = usesOf(study.pattern).flatMap((use) => candidates(use, study.pattern));
    if (all.length === 0) return [];
    const explained = explainedBy(study);
    const unread = unreadIn(study);
    const told = new Set<string>();
    return all.flatMap(({ words, at }) => {
      const key = words.toLowerCase().replace(/s$/u, '');
      const { node, from = 0, to = 0 } = at;
      const inUnread = unread.get(node ?? '')?.some((span) => span.from < to && from < span.to) ?? false;
      if (told.has(key) || explained.has(words.toLowerCase()) || explained.has(key) || inUnread) return [];
      told.add(key);
      return [found(abbreviationNotExplained, study, at, { abbreviation: words })];
    });
  },
};
