/** A length typed by hand is told in centimetres or in inches alone. */
import { quote, quoted, text } from '../../findings/phrases.ts';
import { formatLength, rational, toCm } from '../../trade/units.ts';
import { found, type Rule } from '../rule.ts';
import { typedLengths } from '../typed-lengths.ts';

/** As near as the same length in the other unit may stand to be taken for it, in letters. */
const NEAR = 60;

export const lengthInOneUnit: Rule = {
  code: 'length-in-one-unit',
  severity: 'note',
  title: 'A length is told in one unit only',
  reason:
    'A pattern that is sold in more than one country gives centimetres and inches. Figures do it by themselves; a length typed by hand needs both.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const words = voice.words.trim() === '' ? quoted(data, 'words') : quote(voice.words);
    const other = text(data, 'other');
    return `${words} is told in one unit only; add the other${other === '' ? '' : ` (about ${other})`}`;
  },
  fix: (facts, voice) => {
    const other = text(facts[0]!.fact.data, 'other');
    return other === '' || voice.words === ''
      ? null
      : { label: `Add ${quote(other)}`, replacement: `${voice.words} (${other})` };
  },
  example: null,
  sample: { words: '30 cm', other: '11¾ in' },
  check: (study) =>
    typedLengths(study.pattern).flatMap(({ text: { node, text }, hits: lengths }) =>
      lengths.flatMap(({ from, to, cm, system }) => {
        const isTold = lengths.some(
          (other) => other.system !== system && other.from < to + NEAR && from < other.to + NEAR,
        );
        if (isTold) return [];
        const [one] = cm;
        const length = cm.length === 1 && one !== undefined ? rational(one) : null;
        const exact = length === null ? null : toCm(length, 'cm');
        const other = exact === null ? '' : formatLength(exact, system === 'metric' ? 'imperial' : 'metric');
        // A range, or a length in front of its noun ("a 20 cm tail"), wants more than words behind it.
        const isPlain = /^[\d½¼¾.]+[ \u00A0](?:cm|in|inch|inches)$/u.test(text.slice(from, to));
        const data = { words: text.slice(from, to), other: isPlain ? other : '' };
        return [found(lengthInOneUnit, study, { node, text, from, to }, data)];
      }),
    ),
};
