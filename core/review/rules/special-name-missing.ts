/** A special stitch has a name in one market's terms and none in the other's. */
import { quoted, text } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';

export const specialNameMissing: Rule = {
  code: 'special-name-missing',
  severity: 'warning',
  title: "A special stitch has no name in the other market's terms",
  reason:
    'The edition in the other terms would explain a stitch without a name, and its rows would use the name of the first.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `${quoted(data, 'name')} has no ${text(data, 'market')} name; give it one, the same if both markets call it so`;
  },
  example: null,
  sample: { name: 'fan stitch', market: 'UK' },
  check: (study) =>
    study.pattern.specials.flatMap((special) => {
      const us = special.nameUs.trim() || special.abbrUs.trim();
      const uk = special.nameUk.trim() || special.abbrUk.trim();
      if ((us === '') === (uk === '')) return [];
      const at = { node: special.id, text: special.text.text };
      return [
        found(
          specialNameMissing,
          study,
          at,
          us === '' ? { name: uk, market: 'US' } : { name: us, market: 'UK' },
        ),
      ];
    }),
};
