/** There is nothing to work into. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';

export const nothingToWorkInto: FindingKind = {
  code: 'nothing-to-work-into',
  severity: 'error',
  title: 'There is nothing to work into',
  reason: 'A piece begins with a chain, a ring or foundation stitches.',
  message: () =>
    'there is nothing to work into yet; begin with a chain ("Ch 24."), a ring ("Make a magic ring.") or foundation stitches',
  example: `Row 1: Sc in each st across.`,
};
