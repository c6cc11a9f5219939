/** A cord or tie is asked for while a size is for a child. */
import { quoted, sizesNamed, text } from '../../findings/phrases.ts';
import { cautionText } from '../../trade/cautions.ts';
import { ageOf, cautionsOf, mentionsOf, wordsOf } from '../cautions.ts';
import { foundIn, type Rule } from '../rule.ts';

export const cordOnChildSize: Rule = {
  code: 'cord-on-child-size',
  severity: 'warning',
  title: "A cord or tie on a child's size",
  reason:
    "Cords, ties and ribbons on children's clothes can catch and strangle, and public rules limit them. A caution is printed.",
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const sizes = facts.flatMap(({ size }) => (size === null ? [] : [size]));
    return `${quoted(data, 'thing')} stands in a pattern with ${sizesNamed(sizes, voice)} for children, so the caution ${quoted(data, 'caution')} is printed; leave it off or fasten it without a free end where you can`;
  },
  detail: (facts) => text(facts[0]!.fact.data, 'says') || null,
  example: null,
  sample: { thing: 'drawstring', caution: "Cords and ties on children's clothes", says: '' },
  check: (study) => {
    const caution = cautionsOf(study).find((each) => each.when.notion === 'cord');
    if (caution === undefined) return [];
    const says = cautionText(caution);
    return mentionsOf(study.pattern)
      .filter(({ thing }) => thing === 'cord')
      .flatMap((at) => {
        const data = { thing: wordsOf(at), caution: caution.title, says };
        return foundIn(
          cordOnChildSize,
          study,
          at,
          study.pattern.sizes.map((size) => (ageOf(size) === null ? null : data)),
        );
      });
  },
};
