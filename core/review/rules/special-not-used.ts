/** A special stitch is explained, and no row or note uses it. */
import { quoted, text } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { namesOfSpecial } from '../texts.ts';
import { usesOf } from '../usage.ts';

export const specialNotUsed: Rule = {
  code: 'special-not-used',
  severity: 'note',
  title: 'A special stitch is not used',
  reason: 'Readers learn a special stitch before they begin, and look for it in the rows.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return text(data, 'name') === ''
      ? 'a special stitch has no name, so no row can use it; name it, or take it out'
      : `${quoted(data, 'name')} is explained under Special Stitches, but nothing uses it; take it out, or use its name in the rows`;
  },
  example: null,
  sample: { name: 'fan' },
  check: (study) => {
    const { specials, terms } = study.pattern;
    const uses = usesOf(study.pattern);
    return specials
      .filter((special) => {
        const names = namesOfSpecial(special, terms);
        return !uses.some(
          ({ text, own }) => text.defines !== special.id && names.some((name) => own.has(name)),
        );
      })
      .map((special) => {
        const [name = ''] = namesOfSpecial(special, terms);
        return found(specialNotUsed, study, { node: special.id, text: special.text.text }, { name });
      });
  },
};
