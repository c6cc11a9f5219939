/** A text sends the reader to a page by its number. */
import { quote, text } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';

const PAGE =
  /\b(?:on|see|to|from|overleaf on)\s+(?:page|p\.|pp\.|pages)\s?\d{1,3}(?:\s?[-–]\s?\d{1,3})?\b/giu;

const pages = looking((prose) =>
  [...prose.matchAll(PAGE)].map((match) => ({ from: match.index, to: match.index + match[0].length })),
);

export const pageInWords: Rule = {
  code: 'page-in-words',
  severity: 'warning',
  title: 'A text names a page by its number',
  reason:
    'The same pattern is printed on A4 and on Letter, in large print and for single sizes: its pages have other numbers in each.',
  message: (facts, voice) =>
    `${quote(voice.words || text(facts[0]!.fact.data, 'words'))} is right in one edition only; name the section, the piece or the row instead`,
  example: null,
  sample: { words: 'on page 3' },
  check: (study) =>
    pages(study.pattern).flatMap(({ text: { node, text: words }, hits }) =>
      hits.map(({ from, to }) =>
        found(pageInWords, study, { node, text: words, from, to }, { words: words.slice(from, to) }),
      ),
    ),
};
