/** The row does not say "each". Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { number, quote } from './phrases.ts';

export const eachNotSaid: FindingKind = {
  code: 'each-not-said',
  severity: 'warning',
  title: 'The row does not say "each"',
  reason: '"2 sc in next 2 sts" can mean 4 stitches or 2. "In each of" says which.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const [n, places] = [number(data, 'amount'), number(data, 'places')];
    const one = n === places && n > 2;
    const read = one ? '1 in each' : `${n} in each, ${n * places} in all`;
    const clear = one
      ? `in each of next ${places} ${voice.stitch('st', places)}`
      : `${n} in each of next ${places} ${voice.stitch('st', places)}`;
    return `${quote(voice.words)} is read as ${read}; say "${clear}" so that nobody has to guess`;
  },
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across.
Row 2: Ch 1, 2 sc in next 4 sts, sc in each st across.`,
};
