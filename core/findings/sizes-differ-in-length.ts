/** A list of numbers does not have one for each size. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { are, count, number } from './phrases.ts';

export const sizesDifferInLength: FindingKind = {
  code: 'sizes-differ-in-length',
  severity: 'error',
  title: 'A list of numbers does not have one for each size',
  reason:
    'The numbers in a bracketed list stand for the sizes in order; one missing or one too many gives every size after it a wrong number.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const [expected, got] = [number(data, 'expected'), number(data, 'got')];
    return `there ${are(got)} ${count(got, 'number')} here for ${count(expected, 'size')}; ${got < expected ? `${expected - got} ${are(expected - got)} missing` : `${got - expected} ${are(got - expected)} too many`} (write – for a size that has none)`;
  },
  example: `Sizes: S (M, L)
Ch 20 (22, 24, 26).
Row 1: Sc in 2nd ch from hook and in each ch across.`,
};
