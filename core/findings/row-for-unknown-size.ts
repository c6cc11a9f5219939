/** A row is for a size that the text does not name. Sentences only; `core/study` notices it. */
import type { FindingKind } from './kind.ts';
import { listed, quote, words } from './phrases.ts';

export const rowForUnknownSize: FindingKind = {
  code: 'row-for-unknown-size',
  severity: 'error',
  title: 'A row is for a size that is not one of the sizes',
  reason: '"Size XL only" is followed by nobody when no size goes by that name.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const missing = words(data, 'missing').map((label) => quote(label));
    const named = words(data, 'sizes');
    const what = `no size is called ${listed(missing, 'or')}`;
    return named.length === 0
      ? `${what}: the text does not say what its sizes are called; begin it with a line such as "Sizes S (M, L)"`
      : `${what}; the sizes are ${listed(named)}: write one of these here, or add the size`;
  },
  example: `Sizes: S (M, L)
Ch 20 (22, 24).
Row 1: Sc in 2nd ch from hook and in each ch across.
Row 2 (Size XL only): Ch 1, turn, sc in each st across.`,
};
