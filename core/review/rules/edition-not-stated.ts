/** The pattern does not say which version it is, from when, whose right it is or where to write to. */
import { listed, words } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';

const PARTS = [
  ['version', 'its version'],
  ['date', 'the date of this version'],
  ['copyright', 'a line on copyright and use'],
  ['contact', 'where to write to for help'],
  ['care', 'how to wash what is made'],
] as const;

export const editionNotStated: Rule = {
  code: 'edition-not-stated',
  severity: 'warning',
  title: 'Version, date, copyright, contact or care are not given',
  reason:
    'Buyers with a question, a mistake that is put right, a reader who wants to sell what was made: each needs to know which version it is, what is allowed and whom to ask.',
  message: (facts) => {
    const missing = words(facts[0]!.fact.data, 'missing');
    return `the pattern does not give ${listed(missing, 'and')}; add ${missing.length === 1 ? 'it' : 'them'}`;
  },
  example: null,
  sample: { missing: ['its version', 'the date of this version'] },
  check: (study) => {
    const { about } = study.pattern;
    const missing = PARTS.filter(([part]) => about[part].trim() === '');
    const [first] = missing;
    if (first === undefined) return [];
    const [part] = first;
    const node = part === 'version' || part === 'date' ? 'cover:title' : `cover:${part}`;
    return [found(editionNotStated, study, { node }, { missing: missing.map(([, words]) => words) })];
  },
};
