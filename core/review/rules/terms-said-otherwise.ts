/** A text says that the pattern is written in the terms of the other market. */
import { quote, text } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';

interface Said {
  readonly terms: 'us' | 'uk';
  readonly from: number;
  readonly to: number;
}

const SAID =
  /\b(?:written|given|worked|pattern|instructions|abbreviations)\b[^.;()]{0,24}?\b(?:in|uses?|are)\s+(?:standard\s+)?(?:(U\.?S\.?A?|American)|(U\.?K|British))\.?\s+(?:crochet\s+)?(?:terms|terminology|abbreviations)\b/giu;

const said = looking((prose, kind): readonly Said[] =>
  kind === 'row'
    ? []
    : [...prose.matchAll(SAID)].map((match) => ({
        terms: match[1] === undefined ? 'uk' : 'us',
        from: match.index,
        to: match.index + match[0].length,
      })),
);

export const termsSaidOtherwise: Rule = {
  code: 'terms-said-otherwise',
  severity: 'error',
  title: 'A text says that the pattern is in the other terms',
  reason:
    'The same letters are other stitches in US and in UK terms. Each edition prints by itself in which terms it is; a sentence that says otherwise makes every row wrong.',
  message: (facts, voice) =>
    `${quote(voice.words || text(facts[0]!.fact.data, 'words'))} is not so: this pattern is written in ${text(facts[0]!.fact.data, 'own')} terms, and every edition says by itself in which it is printed; take the sentence out`,
  example: null,
  sample: { words: 'written in US terms', own: 'UK' },
  check: (study) =>
    said(study.pattern).flatMap(({ text: { node, text: words }, hits }) =>
      hits.flatMap(({ terms, from, to }) =>
        terms === study.pattern.terms
          ? []
          : [
              found(
                termsSaidOtherwise,
                study,
                { node, text: words, from, to },
                {
                  words: words.slice(from, to),
                  own: study.pattern.terms.toUpperCase(),
                },
              ),
            ],
      ),
    ),
};
