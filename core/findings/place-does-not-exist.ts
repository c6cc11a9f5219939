/** The place to work into does not exist. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { count, number, perSize, text } from './phrases.ts';

export const placeDoesNotExist: FindingKind = {
  code: 'place-does-not-exist',
  severity: 'error',
  title: 'The place to work into does not exist',
  reason: 'The row sends the hook to a stitch or space that the row below does not have, or has no more of.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const noun = text(data, 'noun');
      const [wanted, found, left, have] = [
        number(data, 'wanted'),
        number(data, 'found'),
        number(data, 'left'),
        number(data, 'have'),
      ];
      const thing = voice.stitch(noun, Math.max(wanted, 1));
      const pass =
        data.pass === undefined ? '' : ` on repeat ${number(data, 'pass')} of ${number(data, 'passes')}`;
      if (noun === 'tch')
        return `there is no turning chain left to work into${pass}: the row below has none that counts, or it is used already`;
      if (noun === 'marked') return 'no stitch below is marked: place a marker in the row before';
      const what =
        found === 0
          ? `there is no ${voice.stitch(noun, 1)} to work into here${pass}`
          : `the row asks for ${count(wanted, thing, true)} here${pass}, but there ${found === 1 ? 'is' : 'are'} only ${found}`;
      return `${what}; ${count(left, voice.stitch('st', left), true)} of ${have} ${left === 1 ? 'is' : 'are'} left`;
    }),
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook and in each of next 12 ch.`,
};
