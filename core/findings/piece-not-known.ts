/** A piece that is referred to does not exist. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted } from './phrases.ts';

export const pieceNotKnown: FindingKind = {
  code: 'piece-not-known',
  severity: 'error',
  title: 'A piece that is referred to does not exist',
  reason: '"Work as for Back" needs a piece of that name before it.',
  message: (facts) =>
    facts[0]!.fact.data.apart === true
      ? `the rows of ${quoted(facts[0]!.fact.data, 'name')} are not worked from these words, because every piece has rows of its own here; write them out, or let one piece be made twice`
      : `there is no piece called ${quoted(facts[0]!.fact.data, 'name')} before this one; name a piece that is worked earlier, or write its rows out here`,
  example: `Sleeve
Row 1: Work as for Back.`,
};
