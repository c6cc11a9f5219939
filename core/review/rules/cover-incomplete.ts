/** The cover lacks its title, its designer or its description. */
import { listed, words } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';

export const coverIncomplete: Rule = {
  code: 'cover-incomplete',
  severity: 'warning',
  title: 'The cover is not complete',
  reason: 'A pattern for sale says what it is called, whose it is and what it makes, before anything else.',
  message: (facts) =>
    `the pattern has no ${listed(words(facts[0]!.fact.data, 'missing'), 'and no')} yet; write ${words(facts[0]!.fact.data, 'missing').length === 1 ? 'it' : 'them'} on the cover`,
  example: null,
  sample: { missing: ['title', 'description'] },
  check: (study) => {
    const { about } = study.pattern;
    const missing = (['title', 'designer', 'description'] as const).filter(
      (part) => about[part].trim() === '',
    );
    const first = missing[0];
    return first === undefined
      ? []
      : [found(coverIncomplete, study, { node: `cover:${first}` }, { missing })];
  },
};
