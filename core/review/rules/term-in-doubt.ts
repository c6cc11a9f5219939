/** A word in prose may be a term or plain English, so the edition in the other terms cannot be sure of it. */
import { kindOf, tell } from '../../findings/index.ts';
import { translate } from '../../notation/translate.ts';
import type { Rule } from '../rule.ts';
import { textsOf } from '../texts.ts';

export const termInDoubt: Rule = {
  ...kindOf('term-in-doubt'),
  check: (study) => {
    const { terms, sizes, specials } = study.pattern;
    const other = terms === 'us' ? 'uk' : 'us';
    const own = specials.flatMap(({ nameUs, nameUk, abbrUs, abbrUk }) => [
      { us: nameUs, uk: nameUk },
      { us: abbrUs, uk: abbrUk },
    ]);
    const labels = sizes.map((size) => size.label);
    return textsOf(study.pattern).flatMap(({ node, text, kind }) => {
      if (kind !== 'prose') return [];
      const { doubts } = translate(text, terms, other, { kind: 'prose', own });
      const facts = doubts.map((fact) => ({ size: null, fact }));
      return tell(facts, { terms, labels, node, text });
    });
  },
};
