/** A repeat does not come out even. Sentences only; `core/fabric` notices it. */
import type { FindingKind, SizedFact } from './kind.ts';
import { are, capital, count, number, perSize, shared, text } from './phrases.ts';

/** "a multiple of 6 plus 1"; nothing when the sizes differ in it. */
function rule(facts: readonly SizedFact[]): string | null {
  const [multiple, plus] = [shared(facts, 'multiple'), shared(facts, 'plus')];
  if (typeof multiple !== 'number' || typeof plus !== 'number') return null;
  return `this row works on a multiple of ${multiple}${plus > 0 ? ` plus ${plus}` : ''}`;
}

export const repeatDoesNotFit: FindingKind = {
  code: 'repeat-does-not-fit',
  severity: 'error',
  title: 'A repeat does not come out even',
  reason:
    'A repeat worked across must use exactly the stitches there are. When it does not, whoever follows the row ends with stitches over, or runs out in the middle of a repeat.',
  message: (facts, voice) => {
    const works = rule(facts);
    const several = facts.length > 1 && new Set(facts.map(({ fact }) => number(fact.data, 'have'))).size > 1;
    const say = perSize(facts, voice, (fact) => {
      const { data } = fact;
      const unit = text(data, 'unit');
      const [left, have, passes] = [number(data, 'left'), number(data, 'have'), number(data, 'passes')];
      const near =
        data.lower === null
          ? `at least ${number(data, 'upper')} are needed`
          : `${number(data, 'lower')} or ${number(data, 'upper')} would fit`;
      const start =
        passes === 0
          ? 'there is not enough for one repeat'
          : `after ${count(passes, 'repeat')} ${count(left, voice.stitch(unit, left), true)} ${are(left)} left`;
      const own = several && works !== null ? '' : `; ${rule([{ size: null, fact }])}`;
      return `${start}${own}; you have ${have}; ${near}`;
    });
    return several && works !== null ? `${works}. ${capital(say)}` : say;
  },
  example: `Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across. (20 sc)
Row 2: Ch 1, *sc in next 2 sts, sk next st; rep from * across.`,
};
