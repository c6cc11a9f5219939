/** The parts of a yarn's fibres do not make a hundred. */
import { number, quoted } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';

export const fibreNotWhole: Rule = {
  code: 'fibre-not-whole',
  severity: 'warning',
  title: "The parts of a yarn's fibres do not make 100%",
  reason:
    'Who looks for another yarn, or may not wear wool, goes by the fibres. Parts that come to more or less than the whole have a slip in one of them.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `the fibres ${quoted(data, 'fibre')} come to ${number(data, 'sum')}%, not 100%; put the parts right`;
  },
  example: null,
  sample: { fibre: '60% cotton, 50% viscose', sum: 110 },
  check: (study) =>
    study.pattern.yarns.flatMap(({ id, name, fibre }) => {
      const parts = [...fibre.matchAll(/(\d{1,3}(?:\.\d)?)\s?%/gu)].map((match) => Number(match[1]));
      const sum = parts.reduce((all, part) => all + part, 0);
      // Rounded parts may come to 99 or 101.
      return parts.length === 0 || Math.abs(sum - 100) <= 1
        ? []
        : [found(fibreNotWhole, study, { node: id, text: name }, { fibre, sum })];
    }),
};
