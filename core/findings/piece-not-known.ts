/** A piece that is referred to does not exist. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted } from './phrases.ts';

export const pieceNotKnown: FindingKind = {
  code: 'piece-not-known',
  severity: 'error',
  title: 'A piece that is referred to does not exist',
  reason: '"Work as for Back" needs a piece of that name before it.',
  message: (facts) =>
    `there is no piece called ${quoted(facts[0]!.fact.data, 'name')} before this one; name a piece that is worked earlier, or write its rows out here`,
  example: `Sleeve
Row 1: Work as for Back.`,
};
