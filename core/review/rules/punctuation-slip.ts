/** A slip of the keys: two spaces, two full stops or commas, a space before a comma. */
import { text } from '../../findings/phrases.ts';
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

/** Slips of a text, in order. */
const slips = looking((text): readonly Slip[] =>
  SLIPS.flatMap(({ pattern, what, write }) =>
    [...text.matchAll(pattern)].map((match) => ({
      what,
      replacement: write(match[0]),
      from: match.index,
      to: match.index + match[0].length,
    })),
  ).sort((a, b) => a.from - b.from),
);

export const punctuationSlip: Rule = {
  code: 'punctuation-slip',
  severity: 'note',
  title: 'A slip of the keys in spaces or stops',
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
  check: (study) =>
    slips(study.pattern).flatMap(({ text: { node, text }, hits }) =>
      hits.map(({ what, replacement, from, to }) =>
        found(punctuationSlip, study, { node, text, from, to }, { what, replacement }),
      ),
    ),
};
