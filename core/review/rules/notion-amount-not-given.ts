/** Something that is bought by the piece has no number, for all sizes or for some. */
import { quoted, sizesNamed } from '../../findings/phrases.ts';
import { foundIn, type Rule } from '../rule.ts';
import { THINGS } from '../things.ts';

export const notionAmountNotGiven: Rule = {
  code: 'notion-amount-not-given',
  severity: 'warning',
  title: 'It is not said how many of a notion are needed',
  reason: 'Buttons and the like are bought before the first row, and larger sizes often take more.',
  message: (facts, voice) => {
    const sizes = facts.flatMap(({ size }) => (size === null ? [] : [size]));
    return `it is not said how many of ${quoted(facts[0]!.fact.data, 'notion')} ${sizesNamed(sizes, voice)} take${sizes.length === 1 ? 's' : ''}; enter a number, or 0 where it takes none`;
  },
  example: null,
  sample: { notion: 'buttons' },
  check: (study) =>
    study.pattern.notions.flatMap(({ id, name, amount }) => {
      if (!THINGS.some(({ listed, counted }) => counted && listed.test(name))) return [];
      const sizes = study.pattern.sizes.map((size) => {
        const given = amount !== null && ('all' in amount || Object.hasOwn(amount.each, size.id));
        return given ? null : { notion: name };
      });
      return foundIn(notionAmountNotGiven, study, { node: id, text: name }, sizes);
    }),
};
