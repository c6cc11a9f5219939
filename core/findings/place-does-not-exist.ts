/** The place to work into does not exist. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { are, count, number, perSize, text } from './phrases.ts';

export const placeDoesNotExist: FindingKind = {
  code: 'place-does-not-exist',
  severity: 'error',
  title: 'The place to work into does not exist',
  reason: 'The row sends the hook to a stitch or space that the row below does not have, or has no more of.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const noun = text(data, 'noun');
      const pass = typeof data.pass === 'number' && number(data, 'passes') > 1 ? data.pass : null;
      const when = pass === null ? '' : `, in repeat ${pass} of ${number(data, 'passes')}`;
      const [wanted, found, left, have] = [
        number(data, 'wanted'),
        number(data, 'found'),
        number(data, 'left'),
        number(data, 'have'),
      ];
      if (noun === 'tch')
        return 'there is no turning chain left to work into: the row below has none that counts, or it is used already';
      if (noun === 'marked') return 'no stitch below is marked: place a marker in the row before';
      if (typeof data.used === 'number') {
        const st = voice.stitch('st', 1);
        return `${st} ${data.used} is used already; the next is ${st} ${number(data, 'next')}`;
      }
      if (found > 0) {
        const missing = wanted - found;
        return `the row asks for ${count(wanted, voice.stitch(noun, wanted), true)} here${when}, but there ${are(found)} only ${found}; ask for ${missing} fewer here, or make ${missing} more before`;
      }
      const none = `there is no ${voice.stitch(noun, 1)} to work into here${when}`;
      if (have === 0) return none;
      return left === 0
        ? `${none}: all ${count(have, voice.stitch('st', have), true)} of the row below are used`
        : `${none}: of the ${count(have, voice.stitch('st', have), true)} of the row below ${left} ${are(left)} left`;
    }),
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook and in each of next 12 ch.`,
};
