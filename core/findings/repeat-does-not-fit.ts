/** A repeat does not come out even. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { count, number, perSize, text } from './phrases.ts';

export const repeatDoesNotFit: FindingKind = {
  code: 'repeat-does-not-fit',
  severity: 'error',
  title: 'A repeat does not come out even',
  reason:
    'A repeat worked across must use exactly the stitches there are. When it does not, whoever follows the row ends with stitches over, or runs out in the middle of a repeat.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const unit = text(data, 'unit');
      const [left, have, multiple, plus] = [
        number(data, 'left'),
        number(data, 'have'),
        number(data, 'multiple'),
        number(data, 'plus'),
      ];
      const passes = number(data, 'passes');
      const works = `this row works on a multiple of ${multiple}${plus > 0 ? ` plus ${plus}` : ''}`;
      const near =
        data.lower === null
          ? `at least ${number(data, 'upper')} are needed`
          : `${number(data, 'lower')} or ${number(data, 'upper')} would fit`;
      const start =
        passes === 0
          ? 'there is not enough for one repeat'
          : `after ${count(passes, 'repeat')} ${count(left, voice.stitch(unit, left), true)} ${left === 1 ? 'is' : 'are'} left`;
      return `${start}; ${works}; you have ${have}; ${near}`;
    }),
  example: `Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across. (20 sc)
Row 2: Ch 1, *sc in next 2 sts, sk next st; rep from * across.`,
};
