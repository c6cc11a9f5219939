/** Figures of a sample or a tester are there, and no estimate can rest on them. */
import { text } from '../../findings/phrases.ts';
import { unusedWords } from '../../study/basis-words.ts';
import type { WhyUnused } from '../../study/unused.ts';
import { unusedFigures } from '../../study/unused.ts';
import { found, type Rule } from '../rule.ts';

export const makingNotUsed: Rule = {
  code: 'making-not-used',
  severity: 'warning',
  title: 'Figures of a sample or a tester are not reckoned with',
  reason:
    'Yarn, hours and prices rest on what samples and testers used. When a size, a yarn or a piece is taken out, or a figure cannot be, its figures fall out of the estimate without anybody noticing.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return unusedWords(text(data, 'kind'), text(data, 'why') as WhyUnused);
  },
  example: null,
  sample: { kind: 'tester', why: 'size' },
  check: (study) =>
    unusedFigures(study).map(({ making: { kind }, why }) =>
      found(makingNotUsed, study, { node: null }, { kind, why }),
    ),
};
