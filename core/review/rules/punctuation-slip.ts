/** A slip of the keys: two spaces, two stops, a space before a comma, half a bracket, a sentence without its stop. */
import type { Pattern } from '../../document/pattern.ts';
import { text } from '../../findings/phrases.ts';
import { isTradeWord } from '../../trade/known-words.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';

interface Slip {
  readonly what: string;
  readonly replacement: string;
  readonly from: number;
  readonly to: number;
}

const SLIPS: readonly {
  readonly pattern: RegExp;
  readonly what: string;
  readonly write: (match: string) => string;
}[] = [
  { pattern: /(?<=\S)[ \u00A0]{2,}(?=\S)/gu, what: 'more than one space', write: () => ' ' },
  { pattern: /(?<![.…])\.\.(?![.…])/gu, what: 'two full stops', write: () => '.' },
  { pattern: /,(?:[ \u00A0]*,)+/gu, what: 'two commas', write: () => ',' },
  { pattern: /;(?:[ \u00A0]*;)+/gu, what: 'two semicolons', write: () => ';' },
  {
    pattern: /(?<=[\p{L}\p{N})\]]) +(?:,|;(?!\))|\.(?=\s|$))(?!\.)/gu,
    what: 'a space before a stop',
    write: (match) => match.trim(),
  },
  {
    pattern: /,\.(?=\s|$)|\.,(?=\s)(?<!\b(?:e\.g|i\.e|etc|sts?|in|approx|no)\.,)/gu,
    what: 'a comma and a full stop together',
    write: () => '',
  },
  { pattern: /(?<=\p{Ll}{2}),(?=\p{Ll}{2})/gu, what: 'no space after a comma', write: () => ', ' },
];

const PAIRS: Readonly<Record<string, string>> = { '(': ')', '[': ']' };

/** Brackets of prose without their other half. "1)" and "a)" number a list. In rows the reader tells them. */
function looseBrackets(text: string): readonly Slip[] {
  const open: { readonly sign: string; readonly at: number }[] = [];
  const loose: Slip[] = [];
  const slip = (what: string, at: number): Slip => ({ what, replacement: '', from: at, to: at + 1 });
  for (let at = 0; at < text.length; at++) {
    const sign = text[at]!;
    if (sign in PAIRS) open.push({ sign, at });
    else if (sign === ')' || sign === ']') {
      const match = open.findLastIndex((one) => PAIRS[one.sign] === sign);
      if (match >= 0) open.splice(match);
      else if (!/(?:^|[\s(])[\p{L}\p{N}]{1,2}$|[:;]-?$/u.test(text.slice(Math.max(0, at - 4), at)))
        loose.push(slip('a bracket that does not open', at));
    }
  }
  return [...loose, ...open.map(({ at }) => slip('a bracket that does not close', at))];
}

/** Slips of a text, in order. */
const slips = looking((text, kind): readonly Slip[] =>
  [...(kind === 'prose' ? looseBrackets(text) : []), ...slipsIn(text)].sort((a, b) => a.from - b.from),
);

const slipsIn = (text: string): readonly Slip[] =>
  SLIPS.flatMap(({ pattern, what, write }) =>
    [...text.matchAll(pattern)].map((match) => ({
      what,
      replacement: write(match[0]),
      from: match.index,
      to: match.index + match[0].length,
    })),
  );

/** Most of the sentences that a pattern sets in a list, so that one which does otherwise is a slip. */
const MOST = 0.75;

/** Notes and finishing, where one begins small or lacks its stop and the others do not. */
function unlikeOthers({
  notes,
  finishing,
  abbreviations,
}: Pattern): readonly (Slip & { readonly node: string; readonly text: string })[] {
  const texts = [
    ...notes.map(({ text }, i) => ({ node: `notes:${i}`, text: text.trimEnd() })),
    ...finishing.map(({ text }, i) => ({ node: `finishing:${i}`, text: text.trimEnd() })),
  ].filter(({ text }) => text.split(/\s+/u).length > 3);
  const stops = (text: string) => /[.!?…:)\]”"’]$/u.test(text);
  const capital = (text: string) => !/^\p{Ll}/u.test(text);
  const isShort = (text: string) => {
    const [first = ''] = text.match(/^\p{L}+/u) ?? [];
    return isTradeWord(first) || first in abbreviations;
  };
  const usual = (is: (text: string) => boolean) =>
    texts.length > 2 && texts.filter(({ text }) => is(text)).length >= MOST * texts.length;
  return texts.flatMap(({ node, text }) => [
    ...(usual(capital) && !capital(text) && !isShort(text)
      ? [
          {
            node,
            text,
            what: 'a small letter at the beginning',
            replacement: text.charAt(0).toUpperCase(),
            from: 0,
            to: 1,
          },
        ]
      : []),
    ...(usual(stops) && !stops(text)
      ? [
          {
            node,
            text,
            what: 'no stop at the end',
            replacement: `${text.at(-1)!}.`,
            from: text.length - 1,
            to: text.length,
          },
        ]
      : []),
  ]);
}

export const punctuationSlip: Rule = {
  code: 'punctuation-slip',
  severity: 'note',
  title: 'A slip of the keys in spaces, stops, brackets or capitals',
  reason:
    'Doubled spaces and stops are read aloud as pauses, part lines in odd places and make a careful text look careless.',
  message: (facts) =>
    `there ${/^two/.test(text(facts[0]!.fact.data, 'what')) ? 'are' : 'is'} ${text(facts[0]!.fact.data, 'what')} here`,
  fix: (facts) => {
    const replacement = text(facts[0]!.fact.data, 'replacement');
    return replacement === '' ? null : { label: 'Put it right', replacement };
  },
  example: null,
  sample: { what: 'more than one space', replacement: ' ' },
  check: (study) => [
    ...slips(study.pattern).flatMap(({ text: { node, text }, hits }) =>
      hits.map(({ what, replacement, from, to }) =>
        found(punctuationSlip, study, { node, text, from, to }, { what, replacement }),
      ),
    ),
    ...unlikeOthers(study.pattern).map(({ node, text, what, replacement, from, to }) =>
      found(punctuationSlip, study, { node, text, from, to }, { what, replacement }),
    ),
  ],
};
