/** A word in prose may be a term or plain English, so the edition in the other terms cannot be sure of it. */
import type { Fact } from '../../finding.ts';
import { kindOf, tell } from '../../findings/index.ts';
import { translate } from '../../notation/translate.ts';
import type { Terms } from '../../trade/stitches.ts';
import { remembered } from '../remember.ts';
import type { Rule } from '../rule.ts';
import { textsOf } from '../texts.ts';

type Own = readonly { readonly us: string; readonly uk: string }[];

/** Under: the terms and the pattern's own names, as JSON. */
const doubtsIn = remembered((text, under): readonly Fact[] => {
  const [terms, own] = JSON.parse(under) as [Terms, Own];
  return translate(text, terms, terms === 'us' ? 'uk' : 'us', { kind: 'prose', own }).doubts;
});

export const termInDoubt: Rule = {
  ...kindOf('term-in-doubt'),
  check: (study) => {
    const { terms, sizes, specials } = study.pattern;
    const own: Own = specials.flatMap(({ nameUs, nameUk, abbrUs, abbrUk }) => [
      { us: nameUs, uk: nameUk },
      { us: abbrUs, uk: abbrUk },
    ]);
    const under = JSON.stringify([terms, own]);
    const labels = sizes.map((size) => size.label);
    return textsOf(study.pattern).flatMap(({ node, text, kind }) => {
      if (kind !== 'prose') return [];
      const facts = doubtsIn(text, under).map((fact) => ({ size: null, fact }));
      return tell(facts, { terms, labels, node, text });
    });
  },
};
