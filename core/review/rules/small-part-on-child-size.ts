/** A small part is asked for while a size is for a child under three. */
import { quoted, sizesNamed, text } from '../../findings/phrases.ts';
import { cautionText } from '../../trade/cautions.ts';
import { ageOf, cautionsOf, mentionsOf, wordsOf } from '../cautions.ts';
import { foundIn, type Rule } from '../rule.ts';

export const smallPartOnChildSize: Rule = {
  code: 'small-part-on-child-size',
  severity: 'warning',
  title: 'A small part on a size for a child under three',
  reason:
    'Buttons, beads, eyes and pom-poms can come off and choke a small child, and public rules limit them. A caution is printed.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const sizes = facts.flatMap(({ size }) => (size === null ? [] : [size]));
    return `${quoted(data, 'thing')} stands in a pattern with ${sizesNamed(sizes, voice)} for a child under three, so the caution ${quoted(data, 'caution')} is printed; embroider or crochet it instead where that will do`;
  },
  detail: (facts) => text(facts[0]!.fact.data, 'says') || null,
  example: null,
  sample: { thing: 'buttons', caution: 'Small parts for children under three', says: '' },
  check: (study) => {
    const caution = cautionsOf(study).find((each) => each.when.notion === 'small-part');
    if (caution === undefined) return [];
    const says = cautionText(caution);
    const limit = caution.when.ageUnder ?? 0;
    return mentionsOf(study.pattern)
      .filter(({ thing }) => thing === 'small-part')
      .flatMap((at) => {
        const data = { thing: wordsOf(at), caution: caution.title, says };
        const sizes = study.pattern.sizes.map((size) => {
          const age = ageOf(size);
          return age !== null && age < limit ? data : null;
        });
        return foundIn(smallPartOnChildSize, study, at, sizes);
      });
  },
};
